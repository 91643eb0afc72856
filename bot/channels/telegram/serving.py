"""The running channel: updates in by polling or webhook, workers, the sender, and the end."""

from __future__ import annotations

import asyncio
import hashlib
import hmac
import json
import logging
import warnings
from collections.abc import Callable, Coroutine
from contextlib import suppress
from dataclasses import dataclass, field
from typing import Any
from urllib.parse import urlsplit

from telegram import BotCommand, BotCommandScopeAllGroupChats, BotCommandScopeDefault, Update
from telegram.error import Conflict, InvalidToken, NetworkError, RetryAfter, TelegramError
from telegram.ext import AIORateLimiter, Application, ApplicationBuilder
from telegram.warnings import PTBUserWarning

from bot.channels.telegram.carrying import FAULT, WORK, Carrier
from bot.channels.telegram.hearing import COMMANDS, asked_by_command, lane_of, words_of
from bot.channels.telegram.menu import ALLOWED_UPDATES, set_out
from bot.channels.telegram.requests import Requests
from bot.channels.telegram.sending import as_sent, send
from bot.conversation.postbox import (
    MOST_TRIES,
    Arrived,
    Claimed,
    DatabaseProblem,
    Letter,
    Limits,
    LostClaim,
    Postbox,
    Settled,
    TappedMeanwhile,
    now_ms,
)
from bot.conversation.wording import languages, wording

log = logging.getLogger("sinkside.telegram")

#: Updates worked on at once, and requests on their way at once.
WORKERS = 16
SENDERS = 32
#: Reminders that are promised in one transaction.
REMINDERS = 50
#: One long poll [s], and the wait after one that failed [s].
POLL_S = 30
_POLL_AGAIN_S = 3.0
#: Where nothing happens, what failed is looked for so often [s].
_IDLE_S = 1.0
_CLEAR_OUT_S = 3600.0
#: Where requests wait only for their turn, the next is looked for so often [s].
_TURN_S = 0.02
#: What another process has put on record is seen so soon [s].
_LOOK_S = 1.0
#: What comes within this time is claimed or written down together [s].
_GATHER_S = 0.004
#: Running work may end so long after we are told to stop [s].
_STOP_S = 10.0
_LARGEST_UPDATE = 1_000_000
_PATH = "/telegram"

# Updates are asked for as they come, so that one that cannot be read spoils no other.
warnings.filterwarnings("ignore", category=PTBUserWarning, message=".*do_api_request.*")


class NoToken(Exception):
    """The messenger does not know the token."""


@dataclass(frozen=True, slots=True)
class Channel:
    """How to reach the messenger.

    Attributes
    ----------
    token : of the bot
    api_url : of another Bot API server than the messenger's own, None for that
    webhook_url : where updates are delivered to, None to poll for them
    listen : host and port of the webhook
    limits : how much the messenger takes, over all processes
    receives : whether this process takes updates in; if not, it only reminds and sends
    """

    token: str
    api_url: str | None = None
    webhook_url: str | None = None
    listen: tuple[str, int] = ("127.0.0.1", 8080)
    limits: Limits = field(default_factory=Limits)
    receives: bool = True

    @property
    def secret(self) -> str:
        """What the messenger sends along, so that nobody else can deliver updates."""
        key, url = self.token.encode(), (self.webhook_url or "").encode()
        return hmac.new(key, b"webhook " + url, hashlib.sha256).hexdigest()


@dataclass(slots=True)
class _Going:
    """Requests of one rank on their way: a crash repeats at most so many as go at once."""

    rank: int
    at_once: int
    woken: asyncio.Event = field(default_factory=asyncio.Event)
    settled: Settled = field(default_factory=Settled)  # since it was last written down


class Service:
    """One process that serves one bot.

    Parameters
    ----------
    channel : how to reach the messenger
    open_postbox : the post of a bot by its name
    beat : told with each poll that polling lives
    """

    def __init__(
        self,
        channel: Channel,
        open_postbox: Callable[[str], Postbox],
        beat: Callable[[str], None] = lambda _: None,
    ) -> None:
        self._channel = channel
        self._beat = beat
        self._application = _application(channel)
        self._open_postbox = open_postbox
        self._arrived = asyncio.Event()
        self._answers, self._pings = _Going(0, SENDERS), _Going(1, 1)
        self._stopping = asyncio.Event()
        self._postbox: Postbox | None = None

    @property
    def postbox(self) -> Postbox:
        """The post of the bot; there once `run` has begun."""
        assert self._postbox is not None
        return self._postbox

    def stop(self) -> None:
        """Take no more updates, and end what runs."""
        self._stopping.set()
        self._arrived.set()
        self._answers.woken.set()
        self._pings.woken.set()

    async def run(self, ready: asyncio.Event | None = None) -> None:
        """Serve until told to stop.

        Raises
        ------
        NoToken
            The messenger does not know the token.
        """
        if not await self._reached():
            return
        me = self._application.bot
        reads_all = bool(me.bot.can_read_all_group_messages)
        heard = "commands, replies and mentions" if reads_all else "commands and replies"
        log.info("the messenger knows it as @%s; of a group it gets %s", me.username, heard)
        self._postbox = self._open_postbox(f"telegram:{me.id}")
        self.postbox.limits = self._channel.limits
        self._carrier = Carrier(me)
        set_out(self._application, self._carrier)
        self._application.add_error_handler(self._carrier.broken)
        receiving = self._webhook if self._channel.webhook_url else self._poll
        loops = [self._send(self._answers), self._send(self._pings)]
        loops += [self._remind(), self._clear_out()]
        if self._channel.receives:
            loops += [self._work(), self._introduce(), receiving(ready)]
        elif ready is not None:
            ready.set()
        try:
            await _together(loops, self._stopping)
        finally:
            with suppress(TelegramError):
                await self._application.shutdown()

    async def _reached(self) -> bool:
        """Wait until the messenger has told who we are; false where we are told to stop before."""
        while not self._stopping.is_set():
            try:
                await self._application.initialize()
                return True
            except InvalidToken as error:
                raise NoToken("the messenger does not know this token") from error
            except (NetworkError, RetryAfter) as error:  # away just now: as when it goes later
                log.warning("the messenger cannot be reached: %s", type(error).__name__)
                await _first(self._stopping.wait(), asyncio.sleep(_POLL_AGAIN_S))
        return False

    async def _introduce(self) -> None:
        """Set the menu of commands in each language, beside the service; then wait for its end.

        A messenger without menus is served as well.
        """
        bot = self._application.bot
        for language in languages():
            words = wording(language)
            menu = [BotCommand(c, words.say(f"menu-{c}")) for c in COMMANDS]
            for scope in (BotCommandScopeDefault(), BotCommandScopeAllGroupChats()):
                if self._stopping.is_set():
                    return
                code = None if language == "en" else language
                try:
                    await self._unless_stopped(bot.set_my_commands(menu, scope, code))
                except TelegramError as error:
                    log.warning("the menu of commands was not set: %s", type(error).__name__)
        await self._stopping.wait()

    # --- in ---

    async def _poll(self, ready: asyncio.Event | None) -> None:
        bot, offset = self._application.bot, 0
        await self._polled_only()
        if ready is not None:
            ready.set()
        while not self._stopping.is_set():
            self._beat("polling")
            try:
                raw = await self._unless_stopped(
                    bot.do_api_request(
                        "getUpdates",
                        {
                            "offset": offset,
                            "timeout": POLL_S,
                            "allowed_updates": list(ALLOWED_UPDATES),
                        },
                        read_timeout=POLL_S + 10,
                    )
                )
                updates = [u for u in raw or () if isinstance(u, dict)]
                if updates:
                    await self._take_in(updates)
                    # Only now: the next call tells the messenger that it may forget them.
                    offset = max(int(u["update_id"]) for u in updates) + 1
            except Exception as error:  # whatever it was, the next poll may go well
                log.warning("polling failed: %s", type(error).__name__)
                if isinstance(error, Conflict):
                    await self._polled_only()
                await _first(self._stopping.wait(), asyncio.sleep(_POLL_AGAIN_S))

    async def _polled_only(self) -> None:
        """Take a webhook back, with which nothing can be polled for; a failure shows there."""
        with suppress(TelegramError):
            await self._unless_stopped(self._application.bot.delete_webhook())

    async def _unless_stopped(self, asking: Coroutine[Any, Any, Any]) -> Any:
        """What a long request gives, None where we are told to stop meanwhile."""
        asked = asyncio.create_task(asking)
        stopped = asyncio.create_task(self._stopping.wait())
        await asyncio.wait([asked, stopped], return_when=asyncio.FIRST_COMPLETED)
        stopped.cancel()
        if not asked.done():
            asked.cancel()  # what it would have brought comes again
            return None
        return asked.result()

    async def _take_in(self, updates: list[dict[str, Any]]) -> None:
        arrived = [Arrived(int(u["update_id"]), lane_of(u), u) for u in updates]
        await self.postbox.take_in(arrived)
        self._arrived.set()

    async def _webhook(self, ready: asyncio.Event | None) -> None:
        from aiohttp import web

        channel = self._channel

        async def delivered(request: web.Request) -> web.Response:
            given = request.headers.get("X-Telegram-Bot-Api-Secret-Token", "")
            # What is no UTF-8 comes as surrogates.
            if not hmac.compare_digest(given.encode(errors="replace"), channel.secret.encode()):
                return web.Response(status=403)
            try:
                update = json.loads(await request.read(), parse_constant=_no_number)
                number = update["update_id"]
            except (ValueError, TypeError, KeyError, RecursionError):
                return web.Response(status=400)
            if type(number) is not int or not 0 <= number < 2**63:
                return web.Response(status=400)
            await self._take_in([update])  # answered only once it is kept
            return web.Response()

        served = web.Application(client_max_size=_LARGEST_UPDATE)
        served.router.add_post(urlsplit(channel.webhook_url or "").path or _PATH, delivered)
        runner = web.AppRunner(served, access_log=None)
        await runner.setup()
        try:
            site = web.TCPSite(runner, *channel.listen, reuse_port=True)
            await site.start()
            await self._application.bot.set_webhook(
                channel.webhook_url or "",
                allowed_updates=list(ALLOWED_UPDATES),
                secret_token=channel.secret,
            )
            if ready is not None:
                ready.set()
            await self._stopping.wait()
        finally:
            await runner.cleanup()

    # --- work ---

    async def _work(self) -> None:
        await self._busy(self._arrived, self._claimed, self._work_on, WORKERS, _no)

    async def _busy(
        self,
        woken: asyncio.Event,
        claim: Callable[[int], Coroutine[Any, Any, list[Claimed]]],
        act: Callable[[Claimed], Coroutine[Any, Any, None]],
        most: int,
        waits: Callable[[], Coroutine[Any, Any, bool]],
    ) -> None:
        """Claim what there is and act on it, so much at once, until told to stop.

        `waits` tells whether something could not be claimed yet that can be in a moment.
        """
        running: set[asyncio.Task[None]] = set()
        while not self._stopping.is_set():
            woken.clear()
            claimed = await claim(most - len(running))
            for each in claimed:
                task = asyncio.create_task(act(each))
                running.add(task)
                task.add_done_callback(running.discard)
                task.add_done_callback(lambda _: woken.set())
            if len(running) >= most:  # the next one begins where one ends
                idle_s = _IDLE_S
            elif claimed:
                idle_s = _GATHER_S
            else:
                idle_s = _TURN_S if await waits() else _IDLE_S
            await _wait(woken, idle_s, _GATHER_S if most > 1 else 0.0)
        if running:
            _, late = await asyncio.wait(running, timeout=_STOP_S)
            for task in late:
                task.cancel()
            await asyncio.gather(*late, return_exceptions=True)

    async def _claimed(self, most: int) -> list[Claimed]:
        if most < 1:
            return []
        try:
            return await self.postbox.claim(most)
        except Exception as error:  # the database may serve again in a moment
            log.error("no update could be claimed: %s", type(error).__name__)
            return []

    async def _work_on(self, claimed: Claimed) -> None:
        if claimed.tries > MOST_TRIES:
            log.error("update %d ended the process each time, and is given up", claimed.id)
            await self._put_back(claimed)
            return
        faults: list[BaseException] = []
        try:
            async with self.postbox.work(claimed) as work:
                WORK.set(work)
                FAULT.set(faults)
                update = Update.de_json(claimed.body, self._application.bot)
                await self._application.process_update(update)
                if faults:
                    raise faults[0]
            if work.letters:
                self._answers.woken.set()
        except LostClaim:
            log.warning("update %d was taken over by another worker", claimed.id)
        except TappedMeanwhile:  # what is pressed is noted by now: so they are told
            await self._work_on(claimed)
        except asyncio.CancelledError:  # we are told to stop: that is no fault of the update
            await asyncio.shield(self._given_back(claimed))
            raise
        except Exception:  # whatever broke, the update is tried again and the next one is served
            log.exception("update %d failed, try %d", claimed.id, claimed.tries)
            await self._put_back(claimed)

    async def _given_back(self, claimed: Claimed) -> None:
        try:
            await self.postbox.give_back(claimed)
        except Exception as error:  # its claim ends by itself
            log.error("update %d could not be given back: %s", claimed.id, type(error).__name__)

    async def _put_back(self, claimed: Claimed) -> None:
        chat = claimed.lane.partition(":")[0]
        apology = None
        private = chat.isdecimal() and chat != "0"
        called = asked_by_command(claimed.body)  # else it may not have been meant for us
        if private or called:
            text = words_of(claimed.body).say("post-interrupted")
            body: dict[str, Any] = {"text": text, **called}
            apology = Letter(chat, "sendMessage", {"chat_id": int(chat), **body})
        try:
            await self.postbox.failed(claimed, apology)
            self._answers.woken.set()
        except Exception as error:  # its claim ends by itself
            log.error("update %d could not be put back: %s", claimed.id, type(error).__name__)

    # --- out ---

    async def _send(self, going: _Going) -> None:
        async def settle(most: int) -> list[Claimed]:
            """Write down what became of requests, and take the next ones."""
            settled, going.settled = going.settled, Settled()
            try:
                return await self.postbox.claim_letters(settled, max(0, most), going.rank)
            except Exception as error:  # the database may serve again in a moment
                log.error("nothing could be sent: %s", type(error).__name__)
                going.settled = settled.with_more(going.settled)
                return []

        async def deliver(letter: Claimed) -> None:
            settled = Settled()
            await send(self._application.bot, as_sent(letter), settled)
            # Only now: what was gathered when it was sent off has been written down meanwhile.
            going.settled = going.settled.with_more(settled)

        async def waits() -> bool:
            try:
                return await self.postbox.waits(going.rank)
            except Exception:  # the database may serve again in a moment
                return False

        await self._busy(going.woken, settle, deliver, going.at_once, waits)
        await settle(0)

    # --- reminders ---

    async def _remind(self) -> None:
        """Promise what is due, and sleep until something is; look again now and then."""
        while not self._stopping.is_set():
            idle_s = _LOOK_S
            try:
                due_ms = await self.postbox.next_due_ms()
                if due_ms is not None and due_ms <= now_ms():
                    found = await self.postbox.remind(self._carrier.ping, REMINDERS)
                    idle_s = 0.0 if found else _TURN_S  # another process is at it
                    if found:
                        self._pings.woken.set()
                elif due_ms is not None:
                    idle_s = min(_LOOK_S, (due_ms - now_ms()) / 1000)
            except DatabaseProblem as problem:  # it may serve again in a moment
                log.error("what is due could not be promised: %s", type(problem).__name__)
                idle_s = _POLL_AGAIN_S
            except Exception:  # what is due stays due
                log.exception("what is due could not be promised")
                idle_s = _POLL_AGAIN_S
            await _first(self._stopping.wait(), asyncio.sleep(idle_s))

    async def _clear_out(self) -> None:
        while not self._stopping.is_set():
            try:
                await self.postbox.clear_out()
            except Exception as error:
                log.error("nothing was cleared out: %s", type(error).__name__)
            await _first(self._stopping.wait(), asyncio.sleep(_CLEAR_OUT_S))


def _application(channel: Channel) -> Application[Any, Any, Any, Any, Any, Any]:
    limits = AIORateLimiter(
        overall_max_rate=channel.limits.a_second,
        overall_time_period=1,
        group_max_rate=channel.limits.a_minute_per_group,
        group_time_period=60,
        max_retries=0,  # what is refused waits in the outbox, and nothing else with it
    )
    builder = ApplicationBuilder().token(channel.token).updater(None).rate_limiter(limits)
    builder = builder.request(Requests(SENDERS + WORKERS)).get_updates_request(Requests(1))
    if channel.api_url is not None:
        builder = builder.base_url(f"{channel.api_url}/bot").base_file_url(
            f"{channel.api_url}/file/bot"
        )
    return builder.build()


def _no_number(constant: str) -> None:
    raise ValueError(f"{constant} is not a number")


async def _no() -> bool:
    return False


async def _wait(event: asyncio.Event, longest_s: float, gather_s: float) -> None:
    """Wait for an event, and a moment more for what comes with it."""
    with suppress(TimeoutError):
        await asyncio.wait_for(event.wait(), longest_s)
    await asyncio.sleep(gather_s)


async def _first(*awaited: Coroutine[Any, Any, Any]) -> None:
    """Wait until one of several is there."""
    tasks = [asyncio.create_task(a) for a in awaited]
    await asyncio.wait(tasks, return_when=asyncio.FIRST_COMPLETED)
    for task in tasks:
        task.cancel()


async def _together(loops: list[Coroutine[Any, Any, None]], stopping: asyncio.Event) -> None:
    """Run until told to stop; what breaks in one of them ends all."""
    tasks = [asyncio.create_task(loop) for loop in loops]
    stopped = asyncio.create_task(stopping.wait())
    done, _ = await asyncio.wait([*tasks, stopped], return_when=asyncio.FIRST_COMPLETED)
    stopping.set()
    broken = next((t.exception() for t in done if t is not stopped and t.exception()), None)
    _, late = await asyncio.wait(tasks, timeout=_STOP_S + 1)
    for task in (*late, stopped):
        task.cancel()
    if broken is not None:
        raise broken
