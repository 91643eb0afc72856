"""What an owner is reminded of. Every change that somebody says is an entry of the log.

When a reminder comes is reckoned by `bot.reminders`; here it is a number. What is due over all
owners, and what was promised for it, stands in `pings`.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from typing import Any, TypedDict, Unpack

from sqlalchemy import func, select
from sqlalchemy.ext.asyncio import AsyncSession

from . import owners
from .errors import BadValue, NotOnRecord, TooMany
from .kinds import EventKind, ReminderKind, ReminderState
from .ledger import Entry, Said, append, keep_place, require_room
from .models import Reminder
from .owners import Address
from .reminder_sense import reminder_problem, sense_of
from .values import MAX_ID, checked, to_json

MOST_LIVE = 200
"""The most reminders of an owner that have not ended (ours)."""

_LIVE = Reminder.state != ReminderState.ENDED


class ReminderFields(TypedDict, total=False):
    """What a reminder is about and when it comes; what is left out stays as it is.

    kind : what to do
    text : their own words, of the kind `other`
    target : {"plants": [ids], "genera": [names], "everything": bool, "place": name or None}
    rule : RRULE without DTSTART; None for once
    start, due_local : clock times on the wall, as 2026-03-01T09:00:00
    zone : IANA name
    due_ms : when it comes next [ms since 1970]; None: it has ended
    moved : whether that one was moved by hand
    offered : whether we chose the clock time, so that quiet hours hold
    """

    kind: ReminderKind
    text: str | None
    target: dict[str, Any]
    rule: str | None
    start: str
    zone: str
    due_ms: int | None
    due_local: str | None
    moved: bool
    offered: bool


async def get(session: AsyncSession, owner_id: int, reminder_id: int) -> Reminder:
    """Return a reminder, also one that has ended.

    Raises
    ------
    NotOnRecord
        The owner has no such reminder.
    """
    key = (owner_id, reminder_id)
    row = await session.get(Reminder, key) if 0 < reminder_id <= MAX_ID else None
    if row is None:
        raise NotOnRecord(Reminder.__tablename__, reminder_id)
    return row


async def listing(
    session: AsyncSession, owner_id: int, *, include_ended: bool = False
) -> list[Reminder]:
    """Return the owner's reminders, the one that comes next first."""
    query = select(Reminder).where(Reminder.owner_id == owner_id)
    if not include_ended:
        query = query.where(_LIVE)
    return list(await session.scalars(query.order_by(Reminder.due_ms, Reminder.id)))


async def topics(session: AsyncSession, owner_id: int) -> dict[int, int | None]:
    """In which topic each of the owner's reminders is heard, also of those that have ended."""
    found = await session.execute(
        select(Reminder.id, Reminder.topic).where(Reminder.owner_id == owner_id)
    )
    return {row.id: row.topic for row in found}


async def add(
    said: Said,
    *,
    person: str | None = None,
    topic: int | None = None,
    **fields: Unpack[ReminderFields],
) -> Reminder:
    """Put a reminder on record.

    The row is made as one that has ended and the entry makes it come, so that undoing needs no
    deletion.

    Parameters
    ----------
    said
        The utterance.
    person
        Which member of a group sets it; None for the owner.
    topic
        Of the group's chat, where it is to be heard; None for the general one.
    **fields
        `kind`, `target`, `start`, `zone`, `due_ms` and `due_local` are needed.

    Raises
    ------
    BadValue, TooMany
        Nothing was written.
    """
    if not {"kind", "target", "start", "zone", "due_ms", "due_local"} <= set(fields):
        raise ValueError(f"a reminder needs more than {set(fields)}")
    owner = await owners.get(said.session, said.owner_id)
    fit = checked(Reminder, _only_fields(fields))
    await _require_room_to_come(said)
    reminder_id = await require_room(said.session, said.owner_id, Reminder)
    comes = {name: fit.pop(name, None) for name in ("due_ms", "due_local")}
    row = Reminder(
        owner_id=said.owner_id, id=reminder_id, channel=owner.channel,
        state=ReminderState.ENDED, due_ms=None, due_local=None, created=said.said_at,
        **checked(Reminder, {"person": person, "topic": topic}),
        **{"text": None, "rule": None, "moved": False, "offered": False, **fit},
    )  # fmt: skip
    after = {**comes, "state": ReminderState.ACTIVE}
    _require_sense({**sense_of(row), **after})
    said.session.add(row)
    await said.session.flush()
    details = {name: to_json(value) for name, value in fit.items() if value is not None}
    await append(said, [_entry(row.id, after, details)])
    return row


async def change(said: Said, reminder_id: int, **fields: Unpack[ReminderFields]) -> Reminder:
    """Change a reminder: what it says, its rule, or only when it comes next.

    Without a due moment (`due_ms=None`) it has ended, and with one it comes again.

    Raises
    ------
    NotOnRecord, BadValue, TooMany
        Nothing was written.
    """
    row = await get(said.session, said.owner_id, reminder_id)
    after: dict[str, Any] = checked(Reminder, _only_fields(fields))
    if "due_ms" in after:
        if after["due_ms"] is None:
            after |= {"state": ReminderState.ENDED, "due_local": None, "moved": False}
        elif row.state is ReminderState.ENDED:
            await _require_room_to_come(said)
            after["state"] = ReminderState.ACTIVE
    _require_sense({**sense_of(row), **after})
    await append(said, [_entry(row.id, after)])
    return row


async def end(said: Said, reminder_ids: Iterable[int]) -> list[int]:
    """Let reminders come no more; those that have ended stay as they are.

    Returns
    -------
    list of int
        Those that came until now.

    Raises
    ------
    NotOnRecord
        One is not this owner's; nothing was written.
    """
    rows = [await get(said.session, said.owner_id, reminder_id) for reminder_id in reminder_ids]
    live = [row.id for row in rows if row.state is not ReminderState.ENDED]
    after = {"state": ReminderState.ENDED, "due_ms": None, "due_local": None, "moved": False}
    await append(said, [_entry(reminder_id, after) for reminder_id in live])
    return live


async def pause_all(session: AsyncSession, address: Address) -> int:
    """Keep the reminders of an owner who cannot be reached; no entry of the log, nobody said it.

    Returns
    -------
    int
        How many were active.
    """
    return await _switch(session, address, ReminderState.ACTIVE, ReminderState.PAUSED)


async def resume_all(session: AsyncSession, address: Address) -> int:
    """Let the reminders of an owner come again, who can be reached again.

    What passed meanwhile is due at once: catching up makes one message of it.

    Returns
    -------
    int
        How many were paused.
    """
    return await _switch(session, address, ReminderState.PAUSED, ReminderState.ACTIVE)


async def _switch(
    session: AsyncSession, address: Address, before: ReminderState, after: ReminderState
) -> int:
    owner = await owners.find(session, address)
    if owner is None:
        return 0
    await keep_place(session, owner.id)
    query = select(Reminder).where(Reminder.owner_id == owner.id, Reminder.state == before)
    rows = (await session.scalars(query.execution_options(populate_existing=True))).all()
    for row in rows:
        row.state = after
    await session.flush()
    return len(rows)


async def _require_room_to_come(said: Said) -> None:
    query = select(func.count()).where(Reminder.owner_id == said.owner_id, _LIVE)
    if (await said.session.scalar(query) or 0) >= MOST_LIVE:
        raise TooMany(Reminder.__tablename__, MOST_LIVE)


def _require_sense(values: Mapping[str, Any]) -> None:
    problem = reminder_problem(values)
    if problem is not None:
        field, _, reason = problem.partition(": ")
        raise BadValue(Reminder.__tablename__, field, reason)


def _entry(
    reminder_id: int, after: Mapping[str, Any], details: Mapping[str, Any] | None = None
) -> Entry:
    return Entry(EventKind.REMINDER, reminder_id=reminder_id, after=after, details=details or {})


def _only_fields(fields: ReminderFields) -> dict[str, Any]:
    unknown = set(fields) - set(ReminderFields.__annotations__)
    if unknown:
        raise ValueError(f"not fields of a reminder: {unknown}")
    return dict(fields)
