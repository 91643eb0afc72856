"""One message in a conversation that remembers: what came in, and what a handler gets."""

from __future__ import annotations

import hashlib
from collections.abc import AsyncIterator, Awaitable, Callable, Sequence
from contextlib import asynccontextmanager
from dataclasses import dataclass, field, replace
from datetime import UTC, date, datetime, time, timedelta
from typing import Any, TypeAlias
from zoneinfo import ZoneInfo

from sqlalchemy.ext.asyncio import AsyncSession

from bot.conversation import answer as out
from bot.conversation.answering import Setting, answer_to, asking
from bot.conversation.collection import Collection, names_in
from bot.conversation.listening import listen
from bot.conversation.reminding import quiet_of
from bot.conversation.wording import Wording
from bot.dosing.season import season_of
from bot.records import Records, log, memory, owners
from bot.records.kinds import Hemisphere, OwnerKind
from bot.records.models import Owner, Plant
from bot.reminders.quiet import Quiet
from grammar import Names, Order, Reading, When

#: Plants of one message that are remembered for 'them' in the next.
_MOST_REMEMBERED = 600
#: Begins what stands for a member whose name is not ours to keep.
_MARK = "#"
#: What opening gives: a text, several by file name, or nothing.
Opened: TypeAlias = str | dict[str, str] | None


@dataclass(frozen=True, slots=True)
class Incoming:
    """A message with who sent it and when.

    Attributes
    ----------
    text : as typed
    person : how the channel names them
    channel : the channel's code
    said_at : the instant, with a zone
    today : the day it is taken to be; None: that of the instant, where the person lives
    group : how the channel names the group it was said in, None in private
    open_file : gives the text of a file that was named, the texts of a folder by name, or None;
        None where the channel has no files; raises TimeoutError where it did not come in time
    may_set : tells whether this person may change what holds for the whole group; None: they may
    opening : whether they only opened the conversation, and said nothing yet
    saving : whether the plants the message speaks of are to be put on record
    shared : whether the words are somebody else's, from a link: a dose of them, and nothing more
    tapped_at : of an answer that was tapped, when its question was asked
    follows : whose request this goes on from, where it is not their own
    overtaken : whether it replies to a dose after which they were told another
    menu : a command of the channel's menu; its words come before the text, in the language that
        was set, otherwise in that of the phone
    phone_language : what the channel knows of the person's language
    topic : of the group's chat in which it was said, None for the general one
    below : the number of our message that was tapped or replied to
    pulls : whether the channel cannot send of its own accord: what is due comes before an answer
    """

    text: str
    person: str
    channel: str
    said_at: datetime
    today: date | None = None
    group: str | None = None
    language: str | None = None
    south: bool = False
    open_file: Callable[[str], Awaitable[Opened]] | None = None
    may_set: Callable[[], Awaitable[bool]] | None = None
    opening: bool = False
    saving: bool = False
    shared: bool = False
    tapped_at: datetime | None = None
    follows: str | None = None
    menu: str = ""
    phone_language: str | None = None
    topic: int | None = None
    below: int | None = None
    overtaken: bool = False
    pulls: bool = False

    @property
    def address(self) -> owners.Address:
        """Whose records are meant: the group's in a group, the person's own otherwise."""
        if self.group is not None:
            return owners.Address(OwnerKind.GROUP, self.channel, self.group)
        return owners.Address(OwnerKind.PERSON, self.channel, self.person)


@dataclass(frozen=True, slots=True)
class Turn:
    """All a handler needs to answer one message."""

    records: Records
    incoming: Incoming
    owner: Owner | None
    reading: Reading
    words: Wording
    collection: Collection = field(default_factory=Collection)
    recalled: dict[str, Any] = field(default_factory=dict)  # as it was before this message
    remembered: dict[str, Any] = field(default_factory=dict)
    question: dict[str, Any] = field(default_factory=dict)
    lapsed: bool = False  # a question was asked, and is too old to be answered
    chosen: tuple[int, ...] | None = None  # plants picked in answer to 'which one?'
    recalled_at: datetime | None = None  # when that was last remembered
    just_pinged: frozenset[int] = frozenset()  # pings that come with this answer
    told: log.Said | None = None  # what is being written already: all of it is one batch
    batch: int | None = None  # of what this message has written already

    @property
    def order(self) -> Order:
        """What is wanted."""
        return self.reading.order or Order("dose")

    @property
    def today(self) -> date:
        """The person's day: on their own clock, where they said where they live."""
        if self.incoming.today is not None:
            return self.incoming.today
        return setting_of(self.owner, self.incoming.said_at).today

    @property
    def by_now(self) -> datetime:
        """By when what is due has come: now, or the end of the day that it is taken to be."""
        said_at = self.incoming.said_at
        if self.incoming.today is None:
            return said_at
        zone = self.owner.zone if self.owner is not None else None
        end = datetime.combine(self.incoming.today, time(23, 59, 59))
        return max(said_at, end.replace(tzinfo=ZoneInfo(zone or "UTC")).astimezone(UTC))

    @property
    def south(self) -> bool:
        """Whether they live south of the equator."""
        if self.incoming.south:
            return True
        return self.owner is not None and self.owner.hemisphere is Hemisphere.SOUTH

    @property
    def quiet(self) -> Quiet:
        """The hours in which they are not woken."""
        owner = self.owner
        if owner is None or owner.quiet_from_min is None or owner.quiet_until_min is None:
            return quiet_of(None)
        return quiet_of((owner.quiet_from_min, owner.quiet_until_min))

    @property
    def whose(self) -> str:
        """Whose records these are, for wording: 'group' or 'own'."""
        return "own" if self.incoming.group is None else "group"

    @property
    def member(self) -> str | None:
        """Who says it, as the group's log keeps it; None in private."""
        return _member(self.incoming, self.owner_id)

    async def administers(self) -> bool:
        """Whether who says it may change what holds for everybody here.

        The channel remembers it for one message. Ask before the first write: others wait for a
        write, and the messenger may be slow to tell.
        """
        may_set = self.incoming.may_set
        return may_set is None or await may_set()

    @property
    def setting(self) -> Setting:
        """What holds for a dose."""
        theirs = setting_of(self.owner, self.incoming.said_at)
        language = self.reading.language
        return replace(theirs, today=self.today, south=self.south, language=language)

    @property
    def last_plants(self) -> list[int]:
        """The plants of the message before; where there is but one entry, that.

        None where the message before was about a plant that is not on record.
        """
        kept = self.remembered.get("plants")
        if isinstance(kept, list):
            return kept
        return [p.id for p in self.collection.plants] if len(self.collection.plants) == 1 else []

    @property
    def about_others(self) -> bool:
        """Whether the message before was about a plant that is not on record."""
        return self.remembered.get("plants") == []

    @property
    def owner_id(self) -> int:
        """Of the owner; 0, which nobody has, where they were never met."""
        return self.owner.id if self.owner is not None else 0

    @asynccontextmanager
    async def writing(self, on: date | None = None) -> AsyncIterator[log.Said]:
        """Write what was said as one batch that `undo` takes back as a whole."""
        if self.told is not None:
            yield self.told
            return
        at, person = self.incoming.said_at, self.incoming.person
        async with self.records.writing() as session:
            owner_id = await self._owner_id(session)
            by = _member(self.incoming, owner_id)
            yield await log.begin(
                session, owner_id, on=on or self.today, said_at=at, by=by, batch=self.batch
            )
            if self.remembered != self.recalled:
                await memory.remember(
                    session, owner_id, person, request=self.remembered, said_at=at
                )

    async def _owner_id(self, session: AsyncSession) -> int:
        """The owner, put on record at the first thing that is kept of them."""
        if self.owner is not None:
            return self.owner.id
        return await owners.id_or_add(
            session,
            self.incoming.address,
            created_at=self.incoming.said_at,
            heard=self.reading.tongue,
        )

    async def keep(self, *, question: dict[str, Any] | None = None, **kept: Any) -> None:
        """Remember something for follow-ups, beside what is remembered already.

        With a question, that it waits for an answer too.
        """
        at, person = self.incoming.said_at, self.incoming.person
        async with self.records.writing() as session:
            owner_id = await self._owner_id(session)
            request = {**self.remembered, **kept}
            await memory.remember(session, owner_id, person, request=request, said_at=at)
            if question is not None:
                await memory.ask(session, owner_id, person, question=question, asked_at=at)

    def keep_plants(self, plants: Sequence[Plant]) -> None:
        """Remember which plants this message was about, for 'them' in the next.

        Written with what the message writes; a message that only asks leaves it as it was.
        """
        self.remembered["plants"] = [p.id for p in plants][:_MOST_REMEMBERED]

    async def wait_for(self, question: dict[str, Any] | None) -> None:
        """Remember the question that waits for an answer; None where none does."""
        at, person = self.incoming.said_at, self.incoming.person
        async with self.records.writing() as session:
            owner_id = await self._owner_id(session)
            await memory.ask(session, owner_id, person, question=question, asked_at=at)

    def read_again(self, text: str, names: Names | None = None) -> Reading:
        """What a text means that was said before, or a part of one, to who says this."""
        return listen(
            text,
            usual=self.reading.tongue,
            chosen=self.reading.language,
            names=names_in(self.collection) if names is None else names,
        )

    # --- answers ---

    def say(
        self, kind: str, code: str, /, *, choices: tuple[str, ...] = (), **values: Any
    ) -> out.Answer:
        """An answer of one sentence."""
        return answer_to(self.reading, kind, self.words.say(code, **values), choices=choices)

    def tell(
        self,
        kind: str,
        lines: list[str],
        *,
        choices: tuple[str, ...] = (),
        details: dict[str, Any] | None = None,
        file: out.File | None = None,
    ) -> out.Answer:
        """An answer of several lines; empty ones are left out."""
        text = "\n".join(line for line in lines if line)
        return answer_to(self.reading, kind, text, choices=choices, details=details, file=file)

    def ask(self, code: str, *, choices: tuple[str, ...] = (), **values: Any) -> out.Answer:
        """A question."""
        return asking(self.reading, self.words.say(code, **values), self.words, choices)

    def refuse(self, code: str, **values: Any) -> out.Answer:
        """A refusal that says what to send instead."""
        return answer_to(self.reading, "refused", self.words.say(code, **values))


def setting_of(owner: Owner | None, at: datetime) -> Setting:
    """What holds where somebody lives at an instant: the day, the hemisphere, the measures."""
    if owner is None:
        return Setting(at.astimezone(None).date())
    day = at.astimezone(ZoneInfo(owner.zone) if owner.zone else None).date()
    south = owner.hemisphere is Hemisphere.SOUTH
    measure = "imperial" if owner.units == "imperial" else "us"
    return Setting(day, south, None, measure, owner.units)


def _member(incoming: Incoming, owner_id: int) -> str | None:
    """How a group's log names who says something; None in private.

    By name, where the channel names people readably; otherwise by a mark that tells the members
    of this group apart and nothing else: no number of a person stays in a log.
    """
    if incoming.group is None:
        return None
    if readable(incoming.person):
        return incoming.person
    said = f"{owner_id}:{incoming.channel}:{incoming.person}"
    return f"{_MARK}{hashlib.sha256(said.encode()).hexdigest()[:12]}"


def readable(person: str) -> bool:
    """Whether this is a name, and not a number or mark of a channel."""
    return any(c.isalpha() for c in person) and not any(c.isdigit() or c == _MARK for c in person)


class UnfitDay(Exception):
    """A day that something cannot have been done on; `code` is the sentence that says why."""

    def __init__(self, code: str) -> None:
        super().__init__(code)
        self.code = code


#: A date without its year that lies so far ahead is a slip, and not last year's.
SOON = timedelta(weeks=8)


def _dated(when: When, year: int) -> date:
    """The day a date means, in this year where none was said.

    Raises
    ------
    UnfitDay
        There is no such day.
    """
    try:
        return date(when.year or year, when.value, when.day or 1)
    except ValueError as error:
        raise UnfitDay("refuse-no-such-day") from error


def day_past(when: When | None, today: date) -> date:
    """The day on which something was done.

    Raises
    ------
    UnfitDay
        It is yet to come, there is no such day, or more than one day was said.
    """
    if when is None:
        return today
    if when.kind == "weekday":
        return today - timedelta(days=(today.isoweekday() - when.value) % 7)
    if when.kind == "day":
        said = today - timedelta(days=when.value)
    elif when.kind == "date":
        said = _dated(when, today.year)
        if said > today and when.year is None:
            if said - today <= SOON:
                raise UnfitDay("refuse-date-ahead")
            said = _dated(when, today.year - 1)
    else:
        raise UnfitDay("refuse-which-day")
    if said > today:
        raise UnfitDay("refuse-future")
    return said


def day_done(turn: Turn, when: When | None) -> date:
    """As `day_past`; a season that it is not now is no day: 'fed Ruby in summer'.

    Raises
    ------
    UnfitDay
        As there, and where only such a season was said.
    """
    season = turn.reading.season
    if when is None and season not in (None, season_of(turn.today.month, south=turn.south)):
        raise UnfitDay("refuse-which-day")
    return day_past(when, turn.today)


def day_ahead(when: When | None, today: date) -> date:
    """The day of a plan: today, or the next such day.

    Raises
    ------
    UnfitDay
        There is no such day, or more than one day was said.
    """
    if when is None:
        return today
    if when.kind == "day":
        return today - timedelta(days=when.value)
    if when.kind == "weekday":
        return today + timedelta(days=(when.value - today.isoweekday()) % 7)
    if when.kind != "date":
        raise UnfitDay("refuse-which-day")
    said = _dated(when, today.year)
    if said < today and when.year is None:
        said = _dated(when, today.year + 1)
    return said


def day_since(when: When | None, today: date) -> date | None:
    """The first day of a stretch: 'since october', 'this month'; None for all time.

    Raises
    ------
    UnfitDay
        It is yet to come, or there is no such day.
    """
    if when is None:
        return None
    if when.kind == "of_month":
        year = today.year if when.value <= today.month else today.year - 1
        return date(year, when.value, 1)
    if when.kind == "month":
        months = today.year * 12 + today.month - 1 - when.value
        return date(months // 12, months % 12 + 1, 1)
    if when.kind == "week":
        return today - timedelta(days=today.isoweekday() - 1 + 7 * when.value)
    if when.kind == "year":
        return date(today.year - when.value, 1, 1)
    if when.kind == "some":
        return None
    if when.kind == "date" and when.year is None and _dated(when, today.year) > today:
        return _dated(when, today.year - 1)
    return day_past(when, today)
