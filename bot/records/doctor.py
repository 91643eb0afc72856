"""What must hold of a database, checked without changing anything.

Every check is one query that counts what breaks it. Times are milliseconds since 1970.
"""

from __future__ import annotations

import sqlite3
import time
from collections.abc import AsyncIterator, Iterator
from dataclasses import dataclass
from typing import Any, cast

from sqlalchemy import (
    Connection,
    ForeignKeyConstraint,
    Select,
    Table,
    and_,
    exists,
    func,
    inspect,
    or_,
    select,
    text,
)
from sqlalchemy.exc import DatabaseError
from sqlalchemy.ext.asyncio import AsyncSession

from . import schema
from .copying import counted_keys, dialect_of, last_given
from .database import connecting, told_in_our_words
from .engines import file_of, is_sqlite, make_onlooker, parse
from .errors import DatabaseUnreachable, ForeignDatabase
from .kinds import LAST_DONE, EventKind, PingState, ReminderState
from .models import Base, Chat, Event, Inbox, Outbox, Owner, Ping, Plant, Reminder

#: An update that waits longer than all its tries take [ms] (ours).
UPDATE_STUCK_MS = 10 * 60_000
#: A letter that waits longer than all its tries take, half an hour [ms] (ours).
LETTER_STUCK_MS = 60 * 60_000
#: A ping that nobody has made into a letter so long after it was due [ms] (ours).
PING_STUCK_MS = 10 * 60_000

_MOST_DAMAGES = 5
_WITHOUT_PUSH = ("terminal",)
"""Channels that show what is due when somebody next speaks."""


@dataclass(frozen=True, slots=True)
class Finding:
    """Something that does not hold.

    Attributes
    ----------
    code : what does not hold
    table : where
    rows : how many break it
    detail : a column, another table, or what the database itself says
    harmless : worth knowing, and nothing wrong
    """

    code: str
    table: str = ""
    rows: int = 0
    detail: str = ""
    harmless: bool = False


@dataclass(frozen=True, slots=True)
class Report:
    """What was looked at, and what was found."""

    tables: int
    owners: int
    findings: list[Finding]

    @property
    def sound(self) -> bool:
        """Nothing is wrong."""
        return all(finding.harmless for finding in self.findings)


async def examine(url: str) -> Report:
    """Look a database over; it is not changed, nor upgraded.

    Raises
    ------
    DatabaseProblem
        It cannot be read, or is not ours.
    """
    parsed = parse(url)
    if is_sqlite(parsed) and not file_of(parsed).is_file():
        raise DatabaseUnreachable("there is no file of records there")
    engine = make_onlooker(parsed)
    try:
        with told_in_our_words(), connecting():
            async with AsyncSession(engine) as session:
                return await _examined(session)
    finally:
        await engine.dispose()


async def _examined(session: AsyncSession) -> Report:
    connection = await session.connection()
    present = set(await connection.run_sync(lambda sync: inspect(sync).get_table_names()))
    if schema.VERSION_TABLE not in present:
        raise ForeignDatabase("there are no records of ours in it")
    findings = [f async for f in _damages(session)]
    if any(f.code == "damaged" for f in findings):
        return Report(len(present), 0, findings)  # further queries would stumble over it
    version = await session.scalar(text(f"SELECT version_num FROM {schema.VERSION_TABLE}"))
    if version is None:
        raise ForeignDatabase("there are no records of ours in it")
    if schema.known(str(version)) != schema.HEAD:
        # The checks know the tables as they are now.
        findings.append(Finding("older", detail=str(version), harmless=True))
        return Report(len(present), 0, findings)
    tables = Base.metadata.sorted_tables
    missing = [table.name for table in tables if table.name not in present]
    if missing:
        return Report(len(present), 0, [*findings, *(Finding("no-table", n) for n in missing)])
    if lacking := await connection.run_sync(_lacking):
        return Report(len(present), 0, [*findings, *lacking])
    for finding, query in _checks(time.time_ns() // 1_000_000):
        if rows := await session.scalar(query):
            findings.append(Finding(finding.code, finding.table, rows, finding.detail,
                                    finding.harmless))  # fmt: skip
    findings += [f async for f in _counters(session)]
    owners = await session.scalar(_count(_table(Owner)))
    return Report(len(tables), owners or 0, findings)


def _lacking(connection: Connection) -> list[Finding]:
    """Columns that our tables should have; no query of ours would get by without them."""
    present = {
        (table, column["name"])
        for (_, table), columns in inspect(connection).get_multi_columns().items()
        for column in columns
    }
    return [
        Finding("no-column", table.name, detail=column.name)
        for table in Base.metadata.sorted_tables
        for column in table.columns
        if (table.name, column.name) not in present
    ]


# --- what the database knows of itself ----------------------------------------------------------


async def _damages(session: AsyncSession) -> AsyncIterator[Finding]:
    """SQLite reads its whole file; PostgreSQL has tools of its own for that."""
    if dialect_of(session) == "sqlite":
        query = text(f"PRAGMA integrity_check({_MOST_DAMAGES})")
        try:
            said = [str(line) for (line,) in (await session.execute(query)).all()]
        except DatabaseError as error:  # so damaged that it cannot even be checked
            if getattr(error.orig, "sqlite_errorcode", 0) & 0xFF != sqlite3.SQLITE_CORRUPT:
                raise
            said = [str(error.orig)]
        for line in said:
            if line != "ok":
                yield Finding("damaged", detail=line)


async def _counters(session: AsyncSession) -> AsyncIterator[Finding]:
    """PostgreSQL would give a number again that a row has; SQLite looks for itself."""
    if dialect_of(session) == "postgresql":
        for column in counted_keys():
            highest = await session.scalar(select(func.max(column))) or 0
            if highest > await last_given(session, column):
                yield Finding("counter-behind", column.table.name, highest)


# --- what our tables promise --------------------------------------------------------------------


def _checks(now_ms: int) -> Iterator[tuple[Finding, Select[Any]]]:
    """Each check: what to say, and how many rows break it."""
    for table in Base.metadata.sorted_tables:
        yield from _pointers(table)
    yield from _log()
    yield from _post(now_ms)
    yield from _pings(now_ms)


def _pointers(table: Table) -> Iterator[tuple[Finding, Select[Any]]]:
    """What a row points to is there: its owner, and what it names."""
    for constraint in table.foreign_key_constraints:
        other = constraint.referred_table
        own = list(constraint.columns)
        code = "ownerless" if other.name == "owner" else "points-nowhere"
        detail = "" if other.name == "owner" else f"{own[-1].name} of {other.name}"
        query = _count(table).where(
            *(column.is_not(None) for column in own), ~_found(constraint, other)
        )
        yield Finding(code, table.name, detail=detail), query


def _found(constraint: ForeignKeyConstraint, other: Table) -> Any:
    """That the row which is pointed to exists; a table may point to itself."""
    target = other.alias()
    pairs = [(e.parent, target.c[e.column.name]) for e in constraint.elements]
    return exists().where(and_(*(own == there for own, there in pairs)))


def _log() -> Iterator[tuple[Finding, Select[Any]]]:
    """An utterance is named after its first entry; a plant's dates follow its entries.

    What takes back comes after what it takes back. That every plant was added by an entry, and
    that each date has one, holds of all but a file without its log that somebody took in.
    """
    event, plant = _table(Event), _table(Plant)
    first, reversal = event.alias(), event.alias()
    named = exists().where(
        first.c.owner_id == event.c.owner_id,
        first.c.id == event.c.batch,
        first.c.batch == first.c.id,
        first.c.id <= event.c.id,
    )
    yield Finding("no-utterance", "event"), _count(event).where(~named)
    undone = exists().where(
        reversal.c.owner_id == event.c.owner_id, reversal.c.reverses == event.c.id
    )
    earlier = exists().where(
        first.c.owner_id == event.c.owner_id,
        first.c.id == event.c.reverses,
        first.c.id < event.c.id,
        first.c.reverses.is_(None),
    )
    back = _count(event).where(event.c.reverses.is_not(None), ~earlier)
    yield Finding("takes-back-wrongly", "event"), back
    theirs = (event.c.owner_id == plant.c.owner_id, event.c.plant_id == plant.c.id)
    added = exists().where(*theirs, event.c.kind == EventKind.ADDED)
    yield Finding("no-entry", "plant", harmless=True), _count(plant).where(~added)
    for kind, name in LAST_DONE.items():
        column = plant.c[name]
        counts = (*theirs, event.c.kind == kind, event.c.reverses.is_(None), ~undone)
        later = exists().where(*counts, or_(column.is_(None), event.c.happened_on > column))
        yield Finding("date-behind-log", "plant", detail=name), _count(plant).where(later)
        as_late = exists().where(*counts, event.c.happened_on >= column)
        ahead = _count(plant).where(column.is_not(None), ~as_late)
        yield Finding("date-ahead-of-log", "plant", detail=name, harmless=True), ahead


def _post(now_ms: int) -> Iterator[tuple[Finding, Select[Any]]]:
    """States that there are, nothing given up, nothing that waits for longer than it may."""
    inbox, outbox = _table(Inbox), _table(Outbox)
    chat = _table(Chat)
    for table, states in ((inbox, ("open", "done", "dead")), (outbox, ("open", "dead"))):
        yield (
            Finding("no-such-state", table.name),
            _count(table).where(table.c.state.not_in(states)),
        )
        yield Finding("dead", table.name), _count(table).where(table.c.state == "dead")
    waiting = inbox.c.state == "open"
    yield Finding("empty", "inbox"), _count(inbox).where(waiting, inbox.c.body.is_(None))
    yield (
        Finding("text-kept", "inbox"),
        _count(inbox).where(inbox.c.state == "done", inbox.c.body.is_not(None)),
    )
    yield (
        Finding("stuck", "inbox"),
        _count(inbox).where(waiting, inbox.c.received_ms < now_ms - UPDATE_STUCK_MS),
    )
    yield (
        Finding("stuck", "outbox"),
        _count(outbox).where(
            outbox.c.state == "open", outbox.c.created_ms < now_ms - LETTER_STUCK_MS
        ),
    )
    yield Finding("unreachable", "chat", harmless=True), _count(chat)


def _pings(now_ms: int) -> Iterator[tuple[Finding, Select[Any]]]:
    """What comes has a moment; every ping that is due becomes a letter soon."""
    reminder, ping, owner = _table(Reminder), _table(Ping), _table(Owner)
    for table, states in ((reminder, ReminderState), (ping, PingState)):
        known = list(states)
        yield Finding("no-such-state", table.name), _count(table).where(table.c.state.not_in(known))
    ended = reminder.c.state == ReminderState.ENDED
    yield (
        Finding("no-moment", "reminder"),
        _count(reminder).where(
            or_(
                and_(ended, reminder.c.due_ms.is_not(None)),
                and_(~ended, reminder.c.due_ms.is_(None)),
            )
        ),
    )
    own = exists().where(owner.c.id == reminder.c.owner_id, owner.c.channel != reminder.c.channel)
    yield Finding("other-channel", "reminder"), _count(reminder).where(own)
    before = now_ms - PING_STUCK_MS
    sending = reminder.c.channel.not_in(_WITHOUT_PUSH)
    yield (
        Finding("stuck", "reminder"),
        _count(reminder).where(
            sending, reminder.c.state == ReminderState.ACTIVE, reminder.c.due_ms < before
        ),
    )
    yield (
        Finding("stuck", "ping"),
        _count(ping).where(ping.c.state == PingState.OPEN, ping.c.due_ms < before),
    )
    # Mostly to chats that have blocked us: whatever else it was, its letter is dead as well.
    failed = _count(ping).where(ping.c.state == PingState.FAILED)
    yield Finding("dead", "ping", harmless=True), failed


def _count(table: Table) -> Select[Any]:
    return select(func.count()).select_from(table)


def _table(model: type[Base]) -> Table:
    return cast(Table, model.__table__)
