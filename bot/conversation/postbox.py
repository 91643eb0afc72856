"""Between a messenger and the conversation: what came in is answered once, whatever breaks.

A channel takes updates in, claims them, and works on each within `work`: everything that was
written, the answer that is promised and that the update is done are kept together or not at all.
"""

from __future__ import annotations

import hashlib
import hmac
import logging
import secrets
import time
from collections.abc import AsyncIterator, Awaitable, Callable, Sequence
from contextlib import asynccontextmanager
from dataclasses import dataclass, field, replace
from typing import Any, TypeAlias

from sqlalchemy.ext.asyncio import AsyncSession

from bot.conversation import reminding
from bot.conversation.answer import Answer
from bot.conversation.answering import Setting
from bot.conversation.talk import Conversation
from bot.conversation.turn import Incoming, setting_of
from bot.records import Records, owners, pings, post, reminders
from bot.records import forget as forgetting
from bot.records.errors import DatabaseProblem
from bot.records.kinds import OwnerKind
from bot.records.models import Posted
from bot.records.post import MOST_TRIES, Arrived, Claimed, Letter, Limits, LostClaim

__all__ = [
    "MOST_TRIES",
    "Arrived",
    "Claimed",
    "DatabaseProblem",
    "Letter",
    "Limits",
    "LostClaim",
    "Postbox",
    "Settled",
    "TappedMeanwhile",
    "Work",
]

log = logging.getLogger("sinkside")

#: How long a claim holds [ms]: longer than any update takes, short enough to wait for.
CLAIM_MS = 60_000
#: The first wait after a failure [ms]; it doubles with each.
FIRST_WAIT_MS = 1_000
#: An answer of these kinds changed nothing: the message may be edited and answered anew.
ASKED_ONLY = frozenset({
    "dose", "no_feed", "ask", "help", "refused", "fault", "plan", "history", "why", "cautions",
    "year",
})  # fmt: skip


#: Answers of these kinds are what a short message goes on from.
DOSES = ("dose", "no_feed")


def now_ms() -> int:
    """The clock [ms since 1970]."""
    return time.time_ns() // 1_000_000


#: Of this process: the same text has the same name here, and nobody can work it out.
_KEY = secrets.token_bytes(32)


def card_id(text: str, address: owners.Address) -> str:
    """A short name for somebody's text, the same each time, that others cannot guess [80 bits]."""
    said = "\x1f".join((address.kind, address.channel, address.external_id, text))
    made = hmac.new(_KEY, said.encode("utf-8", "surrogatepass"), hashlib.sha256)
    return made.hexdigest()[:20]


@dataclass(slots=True)
class Settled:
    """What became of requests.

    Attributes
    ----------
    sent : accepted, with the number of the message that was made
    later : to be sent at a time [ms], with the tries so far; `again` where it may have gone out
    moved : for a group that has a new number
    dead : given up
    lost : chats that cannot be reached
    """

    sent: list[tuple[Claimed, int | None]] = field(default_factory=list)
    later: list[tuple[Claimed, int, int]] = field(default_factory=list)
    moved: list[tuple[Claimed, int]] = field(default_factory=list)
    dead: list[Claimed] = field(default_factory=list)
    lost: list[int] = field(default_factory=list)

    def with_more(self, other: Settled) -> Settled:
        """This and what came since."""
        return Settled(
            self.sent + other.sent,
            self.later + other.later,
            self.moved + other.moved,
            self.dead + other.dead,
            self.lost + other.lost,
        )


class TappedMeanwhile(Exception):
    """Another worker was quicker at the same button: nothing of this update may be kept."""


class Work:
    """One update while it is worked on."""

    def __init__(self, conversation: Conversation, records: Records, source: str) -> None:
        self._conversation = conversation
        self.records = records
        self.source = source
        self.letters: list[Letter] = []
        # By chat, message and data; whether the work is nothing where another was quicker.
        self._taps: dict[tuple[int, int, str], bool] = {}

    async def answer(self, incoming: Incoming) -> Answer:
        """Answer a message; what it changes is kept with the update."""
        return await self._conversation.answer(incoming, self.records)

    def send(self, letter: Letter) -> None:
        """Promise a request."""
        self.letters.append(letter)

    async def first_tap(self, chat_id: int, message_id: int, data: str) -> bool:
        """Whether a button is pressed for the first time.

        It is noted when the work ends, so that nobody's write waits for ours until then.
        """
        async with self.records.reading() as session:
            if await post.tapped(session, self.source, chat_id, message_id, data):
                return False
        self._taps[(chat_id, message_id, data)] = True
        return True

    def note_tap(self, chat_id: int, message_id: int, data: str) -> None:
        """Note a button as pressed, whether it was before or not."""
        self._taps.setdefault((chat_id, message_id, data), False)

    def forget_taps(self) -> None:
        """Note nothing of who is forgotten: whose a button is stands in its data."""
        self._taps.clear()

    async def keep_taps(self, session: AsyncSession) -> None:
        """Note what was pressed.

        Raises
        ------
        TappedMeanwhile
            Somebody pressed the same button, and their work has ended.
        """
        for (chat_id, message_id, data), first in self._taps.items():
            tap = post.tap(session, self.source, chat_id, message_id, data, now_ms=now_ms())
            if not await tap and first:
                raise TappedMeanwhile

    async def setting(self, incoming: Incoming) -> Setting:
        """The day, the hemisphere and the measures where somebody lives, for another's words."""
        async with self.records.reading() as session:
            return setting_of(await owners.find(session, incoming.address), incoming.said_at)

    async def answered(self, chat_id: int, message_id: int) -> Posted | None:
        """The answer that a message got."""
        async with self.records.reading() as session:
            return await post.answer_to(session, self.source, chat_id, message_id)

    async def asker(self, chat_id: int, answer_id: int) -> tuple[str | None, bool]:
        """Who asked what a message of ours answers, and whether no later dose was told them."""
        async with self.records.reading() as session:
            found = await post.posted_as(session, self.source, chat_id, answer_id)
            if found is None:
                return None, True
            if found.kind not in DOSES:
                return found.person, True
            newest = await post.newest_of(session, self.source, chat_id, found.person, DOSES)
            return found.person, newest == answer_id

    async def knows(self, chat_id: int) -> bool:
        """Whether a chat has anything on record."""
        address = address_of(self.source.partition(":")[0], chat_id)
        async with self.records.reading() as session:
            return await owners.find(session, address) is not None

    async def keep_card(self, text: str, *, person: str, group: str | None = None) -> str:
        """Keep a text for a link or a further page, as theirs who asked; gives its short name."""
        channel = self.source.partition(":")[0]
        address = owners.Address(OwnerKind.PERSON, channel, person)
        if group is not None:  # both can have it forgotten
            address = owners.Address(OwnerKind.GROUP, channel, f"{group}:{person}")
        name = card_id(text, address)
        async with self.records.writing() as session:
            await post.keep_card(session, name, text, address, now_ms=now_ms())
        return name

    async def card(self, name: str) -> str | None:
        """A text that was kept."""
        async with self.records.reading() as session:
            return await post.card(session, name)

    async def is_quiet(self, incoming: Incoming) -> bool:
        """Whether a group wants answers to commands only."""
        async with self.records.reading() as session:
            owner = await owners.find(session, incoming.address)
            return bool(owner is not None and owner.quiet)

    async def leave(self, chat_id: int) -> None:
        """The chat has removed or blocked us: nothing more is sent there."""
        self.letters = [n for n in self.letters if n.lane != str(chat_id)]
        async with self.records.writing() as session:
            await _lose(session, self.source, chat_id, now_ms())

    async def come_back(self, chat_id: int) -> None:
        """The chat can be written to again."""
        async with self.records.writing() as session:
            await _regain(session, self.source, [chat_id])

    async def move_group(self, channel: str, old_id: int, new_id: int) -> None:
        """A group has a new number: its records and what waits for it go along."""
        async with self.records.writing() as session:
            await _move_group(session, self.source, channel, old_id, new_id)


#: Makes the requests that show pings in the chat, and the topic of it, that they are for.
WritePing: TypeAlias = Callable[[Work, str, Answer, int | None], Awaitable[list[Letter]]]


class Postbox:
    """The post of one bot, as one process sees it."""

    def __init__(
        self,
        records: Records,
        conversation: Conversation,
        source: str,
        worker: str,
        limits: Limits | None = None,
    ) -> None:
        self._records = records
        self._conversation = conversation
        self.source = source
        self.worker = worker
        self.limits = limits or post.Limits()
        self._channel = source.partition(":")[0]

    # --- in ---

    async def take_in(self, arrived: Sequence[Arrived]) -> None:
        """Keep updates; from here on they will be answered."""
        async with self._records.writing() as session:
            await post.take_in(session, self.source, arrived, now_ms=now_ms())

    async def claim(self, most: int) -> list[Claimed]:
        """Updates to work on now, one a lane."""
        at = now_ms()
        async with self._records.writing() as session:
            return await post.claim(
                session, self.source, self.worker, now_ms=at, until_ms=at + CLAIM_MS, most=most
            )

    @asynccontextmanager
    async def work(self, claimed: Claimed) -> AsyncIterator[Work]:
        """Work on an update.

        Raises
        ------
        LostClaim
            Another worker has it meanwhile; nothing was kept.
        TappedMeanwhile
            It is to be worked on anew; nothing was kept.
        """
        try:
            async with self._records.together() as records:
                work = Work(self._conversation, records, self.source)
                yield work
                async with records.closing() as session:
                    await work.keep_taps(session)
                    await post.finish(session, claimed.id, self.worker)
                    await post.promise(session, self.source, work.letters, now_ms=now_ms())
        except BaseException:
            self._conversation.unsee()
            raise

    async def failed(self, claimed: Claimed, apology: Letter | None) -> bool:
        """Try an update again later; where it is given up, apologise. Says whether it was."""
        free = now_ms() + FIRST_WAIT_MS * 2 ** (claimed.tries - 1)
        async with self._records.writing() as session:
            dead = await post.put_back(
                session, claimed.id, self.worker, tries=claimed.tries, free_ms=free
            )
            if dead and apology is not None:
                await post.promise(session, self.source, [apology], now_ms=now_ms())
        return dead

    async def give_back(self, claimed: Claimed) -> None:
        """Leave an update to who comes next, as if it had not been claimed."""
        tries = claimed.tries - 1
        async with self._records.writing() as session:
            await post.put_back(session, claimed.id, self.worker, tries=tries, free_ms=0)

    # --- out ---

    async def claim_letters(self, settled: Settled, most: int, rank: int = 0) -> list[Claimed]:
        """Write down what became of requests, and take further ones, one a lane."""
        at = now_ms()
        async with self._records.writing() as session:
            await post.sent(session, [c.id for c, _ in settled.sent])
            await self._note(session, settled, at)
            for letter, free_ms, tries in settled.later:
                await post.postpone(
                    session, letter.id, free_ms=free_ms, tries=tries, again=letter.again
                )
            for letter, new_id in settled.moved:
                await _move_group(session, self.source, self._channel, int(letter.lane), new_id)
                await post.postpone(
                    session, letter.id, free_ms=at, tries=letter.tries, again=letter.again
                )
            for letter in settled.dead:
                await post.postpone(session, letter.id, free_ms=at, tries=letter.tries, dead=True)
            for chat_id in settled.lost:
                await _lose(session, self.source, chat_id, at)
            if rank == 0:  # what answers somebody: who wrote to us can be reached
                reached = [int(n.lane) for n, _ in settled.sent if post.is_chat(n.lane)]
                await _regain(session, self.source, reached)
            if most < 1:
                return []
            await session.connection()  # the write has begun: what was waited for it is over
            at = now_ms()
            return await post.claim_letters(
                session, self.source, self.worker,
                now_ms=at, until_ms=at + CLAIM_MS, most=most, rank=rank, limits=self.limits,
            )  # fmt: skip

    async def waits(self, rank: int = 0) -> bool:
        """Whether a request waits for nothing but its turn, which comes in a moment."""
        async with self._records.reading() as session:
            return await post.waits(
                session, self.source, now_ms=now_ms(), rank=rank, limits=self.limits
            )

    async def _note(self, session: AsyncSession, settled: Settled, at: int) -> None:
        """Remember which message answers which, and what became of pings."""
        answers = []
        for letter, made in settled.sent:
            if letter.answers is None:
                continue
            if "pings" in letter.answers:
                owner_id, ping_ids = letter.answers["pings"]
                await pings.note_sent(session, owner_id, ping_ids, message_id=made)
            elif made is not None:
                answers.append({**letter.answers, "answer_id": made})
        await post.note_answers(session, self.source, answers, now_ms=at)
        for letter in settled.dead:
            if letter.answers is not None and "pings" in letter.answers:
                owner_id, ping_ids = letter.answers["pings"]
                await pings.note_failed(session, owner_id, ping_ids, now_ms=at)

    # --- reminders ---

    async def next_due_ms(self) -> int | None:
        """When the first of all reminders comes, or should have come [ms]; None: there is none."""
        async with self._records.reading() as session:
            return await pings.oldest(session, self._channel)

    async def remind(self, write: WritePing, most: int) -> int:
        """Promise messages for what is due, and say when each reminder comes next.

        In one transaction: after a crash what was due is promised, or still due.

        Parameters
        ----------
        write : makes the requests that show an owner's pings
        most : reminders to look for at once

        Returns
        -------
        int
            How many owners something was due to.
        """
        at = now_ms()
        async with self._records.together() as records:
            work = Work(self._conversation, records, self.source)
            async with records.writing() as session:
                found = await pings.due(session, self._channel, now_ms=at, most=most)
                due = [_reckoned(owner, at) for owner in found]
                await pings.promise(session, [p for one in due for p in one.promised])
            failed: list[reminding.Due] = []
            for one in (part for each in due for part in each.by_topic()):
                try:
                    answer = await self._conversation.ping(one, records)
                    chat = one.owner.address.external_id
                    letters = await write(work, chat, answer, one.topic)
                except DatabaseProblem:
                    raise
                except Exception:  # whatever broke, the others are reminded
                    log.exception("a ping could not be put into words")
                    failed.append(one)
                    continue
                answers = {"pings": [one.owner.owner_id, one.ping_ids]}
                for letter in letters:
                    work.send(replace(letter, answers=answers, rank=1))
            async with records.closing() as session:
                await post.promise(session, self.source, work.letters, now_ms=at)
                for one in failed:
                    await pings.note_failed(session, one.owner.owner_id, one.ping_ids, now_ms=at)
        return len(found)

    async def clear_out(self) -> None:
        """Delete what is kept no longer."""
        async with self._records.writing() as session:
            await post.clear_out(session, self.source, now_ms=now_ms())
            await pings.clear_out(session, now_ms=now_ms())


def _reckoned(owner: pings.DueOwner, at: int) -> reminding.Due:
    """What is due to one owner; their records, whatever is in them, keep it from nobody else."""
    try:
        return reminding.reckon(owner, at)
    except Exception:  # a fault of ours or a row that makes no sense: tried again, and logged again
        log.exception("reminders could not be reckoned: tried again in an hour")
        return reminding.put_off(owner, at)


async def _lose(session: AsyncSession, source: str, chat_id: int, at: int) -> None:
    """A chat cannot be reached: nothing waits for it, and its reminders pause."""
    for answers in await post.lose(session, source, chat_id, now_ms=at):
        if "pings" in answers:
            owner_id, ping_ids = answers["pings"]
            await pings.note_failed(session, owner_id, ping_ids, now_ms=at)
    await reminders.pause_all(session, address_of(source.partition(":")[0], chat_id))


async def _regain(session: AsyncSession, source: str, chat_ids: Sequence[int]) -> None:
    """Chats can be reached: the reminders of those that could not be come again."""
    for chat_id in await post.regain(session, source, chat_ids):
        await reminders.resume_all(session, address_of(source.partition(":")[0], chat_id))


def address_of(channel: str, chat_id: int) -> owners.Address:
    """Whose chat a number is: groups have negative ones."""
    kind = OwnerKind.GROUP if chat_id < 0 else OwnerKind.PERSON
    return owners.Address(kind, channel, str(chat_id))


async def _move_group(
    session: AsyncSession, source: str, channel: str, old_id: int, new_id: int
) -> None:
    old = owners.Address(OwnerKind.GROUP, channel, str(old_id))
    new = owners.Address(OwnerKind.GROUP, channel, str(new_id))
    await post.moved(session, source, old_id, new_id)
    await post.readdress_cards(session, old, new)
    owner = await owners.find(session, old)
    if owner is None:  # nothing on record, or told from the other side already
        return
    used = await owners.find(session, new)
    if used is not None and not await forgetting.drop_empty(session, used.id):
        # Both keep what they have: the new number's stands, the old one's rests below its address,
        # where `forget` finds it.
        log.error("a moved group has records at both numbers: those of owner %d rest", owner.id)
        await reminders.pause_all(session, old)
        new = owners.Address(OwnerKind.GROUP, channel, f"{new_id}:{old_id}")
    await owners.readdress(session, owner.id, new)


def edited_anew(kind: str) -> bool:
    """Whether a message with this kind of answer may be answered anew when it is edited."""
    return kind in ASKED_ONLY


def plain(values: dict[str, Any]) -> dict[str, Any]:
    """Without what is None."""
    return {k: v for k, v in values.items() if v is not None}
