"""`sinkside serve` and `remind`: settings, logs, records, the channel until a signal ends it."""

from __future__ import annotations

import asyncio
import gc
import logging
import os
import re
import secrets
import signal
import socket
from collections.abc import AsyncIterator
from concurrent.futures import ThreadPoolExecutor
from contextlib import asynccontextmanager
from dataclasses import dataclass
from typing import TYPE_CHECKING

import click
from pydantic import ValidationError

from bot.channels.telegram.hearing import CHANNEL
from bot.channels.telegram.serving import Channel, NoToken, Service
from bot.conversation.postbox import Postbox
from bot.conversation.talk import Conversation
from bot.conversation.wording import wording
from bot.folders import default_database
from bot.operating.health import Pulse
from bot.operating.logs import log_to, quiet_loop
from bot.operating.postbox import WatchedPostbox
from bot.operating.unusable import unusable
from bot.records import Records, open_records, pings
from bot.records.errors import DatabaseProblem
from bot.settings import Messenger

if TYPE_CHECKING:
    from bot.operating.metrics import Metrics

log = logging.getLogger("sinkside")
#: A poll lasts half a minute; one that is silent for longer hangs [s] (ours).
POLLS_WITHIN_S = 90.0
#: Threads for what would hold the loop: a picture, a file, a name looked up (ours).
THREADS = 2

NO_TOKEN = (
    "SINKSIDE_TELEGRAM_TOKEN is missing: in the messenger, write to @BotFather, send /newbot, "
    "choose a name, and set the variable to the token it answers with"
)

NOT_A_TOKEN = (
    "SINKSIDE_TELEGRAM_TOKEN is no token: it is a number, a colon and a long word, as @BotFather "
    "answered it; set the variable to that alone, without quotes"
)

WRONG_TOKEN = (
    "the messenger does not know the token in SINKSIDE_TELEGRAM_TOKEN: in the messenger, send "
    "/token to @BotFather, and set the variable to what it answers; a token that was revoked, or "
    "that of a bot that was deleted, counts no longer"
)
_TOKEN = re.compile(r"\d+:[\w-]+", re.ASCII)


def serve(database: str | None, *, receives: bool = True) -> None:
    """Serve until a signal ends it; unusable settings end with 2.

    Parameters
    ----------
    database : URL of the records, None for the file in the user's data folder
    receives : whether updates are taken in; if not, this process only reminds and sends
    """
    try:
        settings = Messenger()
    except ValidationError as error:
        wrong = error.errors()[0]
        name = f"SINKSIDE_{wrong['loc'][0]}".upper()
        raise click.UsageError(f"{name} cannot be used: {wrong['msg']}") from error
    token = settings.telegram_token.get_secret_value().strip()
    if not token:
        raise click.UsageError(NO_TOKEN)
    if _TOKEN.fullmatch(token) is None:
        raise click.UsageError(NOT_A_TOKEN)
    log_to(None, as_json=settings.log_format == "json", secrets=[token])
    channel = Channel(
        token=token,
        api_url=settings.telegram_api_url,
        webhook_url=settings.webhook_url,
        listen=settings.listen,
        receives=receives,
    )
    try:
        asyncio.run(served(channel, database or default_database(), settings.operator))
    except NoToken as error:
        raise click.UsageError(WRONG_TOKEN) from error
    except DatabaseProblem as problem:
        raise unusable(problem) from problem
    except click.ClickException:
        raise
    except Exception:  # told as every fault is, without what it may quote
        log.critical("stopped by a fault", exc_info=True)
        raise SystemExit(1) from None


async def served(channel: Channel, url: str, operator: tuple[str, int] | None = None) -> None:
    """Serve a channel from the records at a URL until a signal ends it.

    `operator` is where the operator's pages are shown, None for nowhere.
    """
    loop = asyncio.get_running_loop()
    loop.set_exception_handler(quiet_loop)
    # What goes to threads takes turns anyway, and each thread keeps a heap of its own.
    loop.set_default_executor(ThreadPoolExecutor(THREADS, thread_name_prefix="beside"))
    records = await open_records(url)
    try:
        async with _watched(operator, records) as watch:
            await _run(channel, records, watch)
    finally:
        await records.close()


async def _run(channel: Channel, records: Records, watch: _Watch) -> None:
    worker = f"{socket.gethostname()[:20]}-{os.getpid()}-{secrets.token_hex(4)}"
    conversation = Conversation(records)

    def open_postbox(source: str) -> Postbox:
        return WatchedPostbox(
            records,
            conversation,
            source,
            worker,
            owner_kind=_owner_kind,
            metrics=watch.metrics,
            pulse=watch.pulse,
            receives=channel.receives,
        )

    service = Service(channel, open_postbox, watch.pulse.beat)
    if channel.receives and channel.webhook_url is None:
        watch.pulse.expect("polling", POLLS_WITHIN_S)
    wording("en")
    gc.freeze()  # what is loaded by now stays: the collector need not walk it with every row

    def stop() -> None:
        watch.pulse.stopping = True
        service.stop()

    loop = asyncio.get_running_loop()
    for number in (signal.SIGINT, signal.SIGTERM):
        loop.add_signal_handler(number, stop)
    ready = asyncio.Event()

    async def announce() -> None:
        await ready.wait()
        watch.pulse.starting = False
        log.info("serving")

    announcing = asyncio.create_task(announce())
    try:
        await service.run(ready)
    finally:
        announcing.cancel()


def _owner_kind(lane: str) -> str:
    """Of a lane of the messenger: the numbers of groups are negative."""
    return "group" if lane.startswith("-") else "person"


@dataclass(frozen=True, slots=True)
class _Watch:
    """What is watched; nothing is counted where nobody can look."""

    pulse: Pulse
    metrics: Metrics | None = None


@asynccontextmanager
async def _watched(operator: tuple[str, int] | None, records: Records) -> AsyncIterator[_Watch]:
    """Show the operator's pages, where they are wanted, as long as the block runs."""
    pulse = Pulse()
    if operator is None:
        yield _Watch(pulse)
        return
    from bot.operating.metrics import Metrics
    from bot.operating.page import CannotListen, shown

    metrics = Metrics(lambda session: pings.oldest(session, CHANNEL))
    try:
        async with shown(operator, records, pulse, metrics):
            yield _Watch(pulse, metrics)
    except CannotListen as error:
        raise click.UsageError(
            f"SINKSIDE_OPERATOR_LISTEN cannot be used: {error}; send a free port of this machine, "
            "like 127.0.0.1:9464"
        ) from error
