"""The log: what was given, measured and changed. Nothing in it is ever overwritten.

An utterance is begun with `begin`, and everything written through it is one batch; `undo`
adds the reverse of the last batch that was not reversed yet.
"""

from __future__ import annotations

import json
from collections.abc import Collection, Iterable, Sequence
from dataclasses import dataclass
from datetime import date, datetime
from typing import Any, NamedTuple

from sqlalchemy import ColumnElement, Row, Text, cast, exists, func, or_, select
from sqlalchemy.exc import IntegrityError
from sqlalchemy.ext.asyncio import AsyncSession
from sqlalchemy.orm import aliased

from .errors import CannotUndo, NothingToUndo, OthersSince
from .kinds import CARE, EventKind
from .ledger import Entry, Said, append, hold, next_id, reverse, subject_of
from .models import Event, Place, Plant, Product, Water
from .values import MAX_ID, Unfit, checked

__all__ = [
    "Entry", "Passed", "Poured", "Said", "Undone", "anything", "begin", "entries", "history",
    "last_batch", "newest", "passed_from", "poured", "record", "undo",
]  # fmt: skip


@dataclass(frozen=True, slots=True)
class Undone:
    """What `undo` reversed: the entries of one utterance, first to last."""

    events: tuple[Event, ...]


@dataclass(frozen=True, slots=True)
class Poured:
    """Entries of one utterance that are alike but for their plants.

    `told` is what was said of them, as the database holds it (JSON).
    """

    kind: EventKind
    on: date
    product_id: int | None
    told: str | None
    plant_ids: tuple[int, ...]

    @property
    def details(self) -> dict[str, Any]:
        """What was said of it."""
        details = json.loads(self.told) if self.told else {}
        return details if isinstance(details, dict) else {}


async def begin(
    session: AsyncSession,
    owner_id: int,
    *,
    on: date,
    said_at: datetime,
    by: str | None = None,
    batch: int | None = None,
) -> Said:
    """Begin to write what was said; the owner's other writers wait until the session ends.

    Parameters
    ----------
    session
        A session of `Records.writing`.
    owner_id
        The owner.
    on
        The day it speaks of, where an entry does not say otherwise.
    said_at
        The instant it was said, with a zone.
    by
        Which member of a group says it.
    batch
        The batch that this goes on with, where nothing was written since; None for a new one.

    Raises
    ------
    UnknownOwner
        There is no such owner.
    BadValue
        A date out of range, or an instant without a zone.
    """
    fit = checked(Event, {"on": on, "said_at": said_at})
    await hold(session, owner_id)
    if batch is None or batch != await newest_batch(session, owner_id):
        batch = await next_id(session, owner_id, Event)
    return Said(session, owner_id, batch, fit["on"], fit["said_at"], by)


async def newest_batch(session: AsyncSession, owner_id: int) -> int | None:
    """The batch of the newest entry; None where there is none."""
    newest = select(Event.batch).where(Event.owner_id == owner_id).order_by(Event.id.desc())
    found: int | None = await session.scalar(newest.limit(1))
    return found


async def record(said: Said, entries: Iterable[Entry]) -> list[int]:
    """Write down what was done or measured: feed, clear water, a flush, a reading.

    A date that is earlier than the plant's last one of the kind does not set it back.

    Parameters
    ----------
    said
        The utterance.
    entries
        Of the kinds in `kinds.CARE`, without `after`.

    Returns
    -------
    list of int
        The ids of the entries.

    Raises
    ------
    NotOnRecord
        A plant, product or water is not this owner's.
    BadValue
        The details are not JSON, or a date is out of range.
    """
    listed = list(entries)
    for entry in listed:
        if entry.kind not in CARE or entry.after:
            raise ValueError(f"{entry.kind} changes what is on record: use its own function")
    return await append(said, listed)


async def undo(
    session: AsyncSession, owner_id: int, *, said_at: datetime, by: str | None = None
) -> Undone:
    """Add the reverse of the last utterance that was not reversed, and restore what it changed.

    Parameters
    ----------
    session
        A session of `Records.writing`.
    owner_id
        The owner.
    said_at
        The instant the undo was said, with a zone.
    by
        Only what this member of a group said; None for the last of all.

    Raises
    ------
    NothingToUndo
        Everything was reversed already, or nothing was ever said.
    OthersSince
        Somebody else changed the same since.
    CannotUndo
        The log came from an import that somebody edited, and does not fit.
    """
    said = await begin(session, owner_id, on=said_at.date(), said_at=said_at)
    events = await last_batch(session, owner_id, by=by)
    if not events:
        raise NothingToUndo("nothing is left to undo")
    if by is not None and await _touched_since(session, owner_id, events):
        raise OthersSince("somebody else changed the same since")
    try:
        await reverse(said, events)
    except (IntegrityError, Unfit) as error:
        raise CannotUndo(f"entry {events[0].id} and those after it do not fit") from error
    return Undone(tuple(events))


async def last_batch(session: AsyncSession, owner_id: int, *, by: str | None = None) -> list[Event]:
    """Return the entries that `undo` would reverse, first to last; empty where there are none."""
    # Promise: the newest entry that is no reversal and has none. Walks the owner's entries
    # from the newest, so it stops at the first that fits.
    newest = (
        select(Event.batch)
        .where(Event.owner_id == owner_id, *_standing())
        .order_by(Event.id.desc())
        .limit(1)
    )
    if by is not None:
        newest = newest.where(Event.payload["details", "by"].as_string() == by)
    batch = await session.scalar(newest)
    if batch is None:
        return []
    # A batch is named after its first entry, so the range starts there.
    query = (
        select(Event)
        .where(Event.owner_id == owner_id, Event.id >= batch, Event.batch == batch)
        .order_by(Event.id)
    )
    return list(await session.scalars(query))


async def _touched_since(session: AsyncSession, owner_id: int, events: Sequence[Event]) -> bool:
    """Whether a later entry that stands is about what these are about: its `before` is theirs."""
    query = select(
        Event.kind, Event.plant_id, Event.product_id, Event.water_id, Event.reminder_id
    ).where(Event.owner_id == owner_id, Event.id > events[-1].id, *_standing())
    about = {_about(event) for event in events}
    return any(_about(row) in about for row in await session.execute(query))


def _about(
    entry: Event | Row[EventKind, int | None, int | None, int | None, int | None],
) -> tuple[str, int | None]:
    """What an entry changed: the table and the row."""
    model, field = subject_of(entry.kind)
    return model.__tablename__, getattr(entry, field) if field is not None else None


class Passed(NamedTuple):
    """An entry as it passed by: its number, when it was said, its kind and plant."""

    id: int
    said_at: datetime
    kind: EventKind
    plant_id: int | None


async def anything(session: AsyncSession, owner_id: int) -> bool:
    """Say whether an owner has anything at all on record."""
    rows = (Event, Plant, Product, Water, Place)
    found = or_(*(exists().where(model.owner_id == owner_id) for model in rows))
    return bool(await session.scalar(select(found)))


async def any_of(session: AsyncSession, owner_id: int, kinds: Iterable[EventKind]) -> bool:
    """Say whether an entry of one of these kinds stands in an owner's log."""
    query = exists().where(Event.owner_id == owner_id, Event.kind.in_(tuple(kinds)), *_standing())
    return bool(await session.scalar(select(query)))


async def passed_from(
    session: AsyncSession, owner_id: int, entry_id: int, *, limit: int
) -> list[Passed]:
    """Return the owner's entries from a number on, reversals too, oldest first.

    All that an owner has changes through the log, but for an import that replaces it
    (`Owner.replaced`): else what was seen at an entry still stands while none came after it.
    """
    query = select(Event.id, Event.said_at, Event.kind, Event.plant_id)
    query = query.where(Event.owner_id == owner_id, Event.id >= entry_id)
    rows = await session.execute(query.order_by(Event.id).limit(limit))
    return [Passed(*row) for row in rows]


async def newest(session: AsyncSession, owner_id: int) -> Passed | None:
    """Return the owner's newest entry, None where there is none."""
    query = select(Event.id, Event.said_at, Event.kind, Event.plant_id)
    query = query.where(Event.owner_id == owner_id).order_by(Event.id.desc()).limit(1)
    row = (await session.execute(query)).first()
    return None if row is None else Passed(*row)


async def history(
    session: AsyncSession,
    owner_id: int,
    plant_id: int,
    *,
    since: date | None = None,
    kinds: Collection[EventKind] | None = None,
    limit: int = 1_000,
) -> list[Event]:
    """Return what stands in the log about a plant: undone entries and their reverse are left out.

    Parameters
    ----------
    session
        Any session of the records.
    owner_id, plant_id
        The plant.
    since
        The first day; None for all.
    kinds
        Only these kinds; None for all.
    limit
        The most entries; the newest are kept.

    Returns
    -------
    list of Event
        By day and then as said, oldest first.
    """
    if not 0 < plant_id <= MAX_ID:
        return []
    about = (Event.owner_id == owner_id, Event.plant_id == plant_id)
    return await _standing_entries(session, about, since, kinds, limit)


async def entries(
    session: AsyncSession,
    owner_id: int,
    *,
    since: date | None = None,
    kinds: Collection[EventKind] | None = None,
    limit: int = 1_000,
) -> list[Event]:
    """Return what stands in the owner's log; as `history`, for everything the owner has."""
    return await _standing_entries(session, (Event.owner_id == owner_id,), since, kinds, limit)


async def poured(
    session: AsyncSession, owner_id: int, *, since: date, until: date, only: int | None = None
) -> list[Poured]:
    """Return what was given and read of plants, by day and then as said.

    Gathered by utterance in the database: 'fed everything' comes back as one row.

    Parameters
    ----------
    session
        Any session of the records.
    owner_id
        The owner.
    since, until
        The first and the last day.
    only
        Of this plant; None for all.
    """
    details = cast(Event.payload["details"], Text)
    whom = func.aggregate_strings(cast(Event.plant_id, Text), ",")
    query = (
        select(Event.kind, Event.on, Event.product_id, details, whom)
        .where(
            Event.owner_id == owner_id,
            Event.on >= since,
            Event.on <= until,
            Event.kind.in_(CARE),
            Event.plant_id.is_not(None),
            *_standing(),
        )
        .group_by(Event.batch, Event.kind, Event.on, Event.product_id, details)
        .order_by(Event.on, func.min(Event.id))
    )
    if only is not None:
        query = query.where(Event.plant_id == only)
    return [
        Poured(kind, on, product_id, told, tuple(map(int, ids.split(","))))
        for kind, on, product_id, told, ids in await session.execute(query)
    ]


async def _standing_entries(
    session: AsyncSession,
    about: tuple[ColumnElement[bool], ...],
    since: date | None,
    kinds: Collection[EventKind] | None,
    limit: int,
) -> list[Event]:
    query = select(Event).where(*about, *_standing())
    if since is not None:
        query = query.where(Event.on >= since)
    if kinds is not None:
        query = query.where(Event.kind.in_(kinds))
    newest_first = query.order_by(Event.on.desc(), Event.id.desc()).limit(limit)
    return list(reversed((await session.scalars(newest_first)).all()))


def _standing() -> tuple[ColumnElement[bool], ColumnElement[bool]]:
    """Promise: the entry is not a reversal, and no reversal of it exists."""
    reversal = aliased(Event)
    undone = exists().where(reversal.owner_id == Event.owner_id, reversal.reverses == Event.id)
    return Event.reverses.is_(None), ~undone
