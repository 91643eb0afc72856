"""The one way in which an owner's rows change: together with an entry of the log.

Each entry keeps what it changed as `before` and `after`, so that it can be reversed.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, field
from datetime import date, datetime
from typing import Any

from sqlalchemy import bindparam, func, insert, select
from sqlalchemy.ext.asyncio import AsyncSession

from .errors import NotOnRecord, TooMany, UnknownOwner
from .kinds import LAST_DONE, EventKind
from .models import Base, Event, Owned, Owner, Place, Plant, Product, Reminder, Water
from .reminder_sense import reminder_problem, sense_of
from .values import MAX_ID, Unfit, changeable, checked, from_json, to_json

CHUNK = 500
"""Rows that are asked for in one statement; SQLite takes some thousand parameters at most."""

MOST: Mapping[type[Owned], int] = {
    Place: 1_000,
    Water: 1_000,
    Product: 1_000,
    Plant: 10_000,
    Reminder: 10_000,
    Event: 200_000,
}
"""The most rows an owner may have; 200,000 entries are 500 plants watered weekly for 7 years.

Of reminders these are all that there ever were; how many may come is in `reminders`.
"""

SHELF = frozenset({EventKind.PRODUCT, EventKind.WATER_SOURCE})

_NAMED: Sequence[tuple[type[Owned], str]] = (
    (Plant, "plant_id"),
    (Product, "product_id"),
    (Water, "water_id"),
    (Reminder, "reminder_id"),
)
"""What an entry can be about, and its field that says which row."""

Key = tuple[type[Base], int | None]


@dataclass(frozen=True, slots=True)
class Said:
    """One utterance, open to be written: everything it changes is undone together.

    Attributes
    ----------
    session
        The session that holds the owner's row until the end of the transaction.
    owner_id
        The owner.
    batch
        The id of its first entry in the log.
    on
        The day it speaks of, unless an entry says otherwise.
    said_at
        The instant it was said.
    by
        Which member of a group said it; each entry keeps it in its details. None for a person.
    """

    session: AsyncSession
    owner_id: int
    batch: int
    on: date
    said_at: datetime
    by: str | None = None


@dataclass(frozen=True, slots=True)
class Entry:
    """One thing to put in the log.

    Attributes
    ----------
    kind
        What happened.
    plant_id, product_id, water_id, reminder_id
        What it happened to, or what it was done with.
    on
        The day, where it is not the day of the utterance.
    details
        What else was said of it, as JSON: the strength, the volume, a measured value.
    after
        New values for the fields of its subject.
    """

    kind: EventKind
    plant_id: int | None = None
    product_id: int | None = None
    water_id: int | None = None
    on: date | None = None
    details: Mapping[str, Any] = field(default_factory=dict)
    after: Mapping[str, Any] = field(default_factory=dict)
    reminder_id: int | None = None


async def hold(session: AsyncSession, owner_id: int) -> Owner:
    """Take the owner's row until the end of the transaction, and return it fresh.

    Whoever writes for the owner takes it first, so an owner's writes happen one after
    another. On SQLite the whole transaction does that already.

    Raises
    ------
    UnknownOwner
        There is no such owner.
    """
    query = (
        select(Owner)
        .where(Owner.id == owner_id)
        .with_for_update()
        .execution_options(populate_existing=True)
    )
    owner = await session.scalar(query)
    if owner is None:
        raise UnknownOwner(owner_id)
    return owner


_KEEP_PLACE = (
    select(Owner.__table__.c.id).where(Owner.__table__.c.id == bindparam("owner")).with_for_update()
)


async def keep_place(session: AsyncSession, owner_id: int) -> None:
    """As `hold`, for who does not need what stands in the row.

    Raises
    ------
    UnknownOwner
        There is no such owner.
    """
    if await session.scalar(_KEEP_PLACE, {"owner": owner_id}) is None:
        raise UnknownOwner(owner_id)


async def next_id(session: AsyncSession, owner_id: int, model: type[Owned]) -> int:
    """Return the owner's next free row number of a table. The owner's row must be held."""
    last = await session.scalar(select(func.max(model.id)).where(model.owner_id == owner_id))
    return (last or 0) + 1


async def require_room(
    session: AsyncSession, owner_id: int, model: type[Owned], more: int = 1
) -> int:
    """Return the owner's next free row number where so many more rows are allowed.

    Raises
    ------
    TooMany
        The owner would have more rows than are allowed.
    """
    first = await next_id(session, owner_id, model)
    most = MOST[model]
    if first + more - 1 > most:
        raise TooMany(model.__tablename__, most)
    return first


async def append(said: Said, entries: Iterable[Entry]) -> list[int]:
    """Change the subjects of the entries and write the entries to the log.

    Parameters
    ----------
    said
        The utterance they belong to.
    entries
        In the order in which they happened.

    Returns
    -------
    list of int
        The ids of the entries.

    Raises
    ------
    NotOnRecord
        A plant, product or water is not this owner's.
    BadValue
        A new value does not fit its field.
    TooMany
        The log is full.
    """
    listed = list(entries)
    known = await _load(said, listed)
    first = await require_room(said.session, said.owner_id, Event, len(listed))
    rows = [_enter(said, first + place, entry, known) for place, entry in enumerate(listed)]
    # The rows first: the entries point to them.
    await said.session.flush()
    if rows:
        await said.session.execute(insert(Event), rows)
    return [row["id"] for row in rows]


async def reverse(said: Said, events: Sequence[Event]) -> None:
    """Write the reverse of each entry, last first, and set its subject back to `before`."""
    known = await _load(said, events)
    first = await next_id(said.session, said.owner_id, Event)
    rows = []
    for place, event in enumerate(reversed(events)):
        subject = known.get(_subject_key(event, said.owner_id))
        if subject is not None:
            _restore(subject, event.before)
            if isinstance(subject, Reminder):
                _restore_sense(subject, event.before, said.said_at)
        rows.append(_reversal(said, first + place, event))
        if event.kind in SHELF:
            # The one-default index is judged after every statement, so the order counts.
            await said.session.flush()
    await said.session.flush()
    await said.session.execute(insert(Event), rows)


async def _load(said: Said, entries: Sequence[Entry | Event]) -> dict[Key, Base]:
    """Return every row that the entries name, fresh from the database."""
    known: dict[Key, Base] = {}
    if any(entry.kind is EventKind.SETTINGS for entry in entries):
        known[Owner, said.owner_id] = await hold(said.session, said.owner_id)
    for model, named in _NAMED:
        ids = sorted({getattr(entry, named) for entry in entries} - {None})
        # A number that no row can have may be longer than the database takes.
        if ids and not 0 < ids[0] <= ids[-1] <= MAX_ID:
            raise NotOnRecord(model.__tablename__, ids[0] if ids[0] < 1 else ids[-1])
        for start in range(0, len(ids), CHUNK):
            query = (
                select(model)
                .where(model.owner_id == said.owner_id, model.id.in_(ids[start : start + CHUNK]))
                .execution_options(populate_existing=True)
            )
            rows = await said.session.scalars(query)
            known.update({(model, row.id): row for row in rows})
        missing = [row_id for row_id in ids if (model, row_id) not in known]
        if missing:
            raise NotOnRecord(model.__tablename__, missing[0])
    return known


def subject_of(kind: EventKind) -> tuple[type[Base], str | None]:
    """Return the table that an entry of a kind changes, and its field that says which row.

    The other rows it names were used: the product and the water of a feed.
    """
    if kind is EventKind.SETTINGS:
        return Owner, None
    if kind is EventKind.PRODUCT:
        return Product, "product_id"
    if kind is EventKind.WATER_SOURCE:
        return Water, "water_id"
    if kind is EventKind.REMINDER:
        return Reminder, "reminder_id"
    return Plant, "plant_id"


def _subject_key(entry: Entry | Event, owner_id: int) -> Key:
    model, field_name = subject_of(entry.kind)
    return model, owner_id if field_name is None else getattr(entry, field_name)


def _enter(said: Said, event_id: int, entry: Entry, known: Mapping[Key, Base]) -> dict[str, Any]:
    """Change the subject of an entry, and return the entry as a row of the log."""
    on = said.on if entry.on is None else entry.on
    _require_present(entry, known)
    details = {**entry.details, "by": said.by} if said.by is not None else entry.details
    payload: dict[str, Any] = {"details": details} if details else {}
    subject = known.get(_subject_key(entry, said.owner_id))
    if subject is not None:
        after = checked(type(subject), {**entry.after, **_last_done(entry.kind, subject, on)})
        if after:
            payload["before"] = {name: to_json(getattr(subject, name)) for name in after}
            payload["after"] = {name: to_json(value) for name, value in after.items()}
        for name, value in after.items():
            setattr(subject, name, value)
    return {
        "owner_id": said.owner_id,
        "id": event_id,
        "batch": said.batch,
        "kind": entry.kind,
        "said_at": said.said_at,
        "plant_id": entry.plant_id,
        "product_id": entry.product_id,
        "water_id": entry.water_id,
        "reminder_id": entry.reminder_id,
        **checked(Event, {"on": on, "payload": payload}),
    }


def _restore(subject: Base, before: Mapping[str, Any]) -> None:
    for name, raw in before.items():
        # An imported log is somebody's file: it must not reach beyond what a log can change.
        if name not in changeable(type(subject)):
            raise Unfit(f"{name} cannot be changed")
        setattr(subject, name, from_json(type(subject), name, raw))


def _restore_sense(reminder: Reminder, before: Mapping[str, Any], now: datetime) -> None:
    """A moment that passed while it did not stand is no reason to ping: only the next one is."""
    passed = reminder.due_ms is not None and reminder.due_ms <= now.timestamp() * 1000
    if "due_ms" in before and passed:
        reminder.due_local = None
    problem = reminder_problem(sense_of(reminder))
    if problem is not None:
        raise Unfit(problem)


def _require_present(entry: Entry, known: Mapping[Key, Base]) -> None:
    """Refuse to use or change a row whose addition was undone."""
    if entry.after.get("present"):
        return
    named = ((Plant, entry.plant_id), (Product, entry.product_id), (Water, entry.water_id))
    for model, row_id in named:
        row = known.get((model, row_id))
        if isinstance(row, Plant | Product | Water) and not row.present:
            raise NotOnRecord(model.__tablename__, row.id)


def _last_done(kind: EventKind, subject: Base, on: date) -> dict[str, date]:
    """Return the 'last done' date of a plant where the entry moves it on."""
    field_name = LAST_DONE.get(kind)
    if field_name is None or not isinstance(subject, Plant):
        return {}
    last: date | None = getattr(subject, field_name)
    return {field_name: on} if last is None or last < on else {}


def _reversal(said: Said, event_id: int, event: Event) -> dict[str, Any]:
    payload = dict(event.payload)
    if "after" in payload:
        payload |= {"before": event.after, "after": event.before}
    return {
        "owner_id": said.owner_id,
        "id": event_id,
        "batch": said.batch,
        "kind": event.kind,
        "on": event.on,
        "said_at": said.said_at,
        "plant_id": event.plant_id,
        "product_id": event.product_id,
        "water_id": event.water_id,
        "reminder_id": event.reminder_id,
        "payload": payload,
        "reverses": event.id,
    }
