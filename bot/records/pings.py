"""What is due, over all owners; what was promised for it, and all the SQL of both.

What it promises:

- `due` gives each owner to one worker at a time: it takes the owner's row until the end of the
  transaction. PostgreSQL: FOR UPDATE SKIP LOCKED, so that others take the next ones; SQLite: the
  transaction has the file for itself from its start (BEGIN IMMEDIATE).
- What it gives is read after the row was taken, so nobody has promised it meanwhile.
- `promise` writes the pings and when the reminders come next. In one transaction with `due` and
  the outbox (`post.promise`) a crash keeps all of it or none of it, and then it is due again.
- No occurrence has two pings (the unique key of a ping); `due` says where there is one already.
- Looking for what is due walks a partial index of what is active, in the order of its moments,
  from the start and no further than now: it does not matter how much is stored.

Times are milliseconds since 1970.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from typing import Any, cast

from sqlalchemy import (
    ColumnClause,
    CursorResult,
    Integer,
    Table,
    bindparam,
    delete,
    exists,
    func,
    insert,
    literal_column,
    select,
    update,
)
from sqlalchemy.ext.asyncio import AsyncSession

from .kinds import PingState, ReminderKind, ReminderState
from .ledger import keep_place
from .models import Owner, Ping, Reminder
from .owners import Address, get
from .values import MAX_ID

#: How long a ping is kept [ms]: ninety days (ours).
KEPT_MS = 90 * 24 * 3600 * 1000

# Written by the hundred a second: as tables, without the mapper's work.
_OWNER, _REMINDER, _PING = (cast(Table, model.__table__) for model in (Owner, Reminder, Ping))
_ACTIVE: ColumnClause[str] = literal_column("'active'")
"""As the partial index has it: a bound value could not be matched with its condition."""
_ANSWERED = (PingState.DONE, PingState.SKIPPED, PingState.LATER)
_UNANSWERED = (PingState.OPEN, PingState.SENT)


@dataclass(frozen=True, slots=True)
class DueReminder:
    """A reminder that is due; `ping_id` is the number of its ping, should one be promised.

    `pinged`: a ping for this very moment was promised before. The rest is as in the model.
    """

    owner_id: int
    id: int
    ping_id: int
    person: str | None
    topic: int | None
    kind: ReminderKind
    text: str | None
    target: dict[str, Any]
    rule: str | None
    start: str
    zone: str
    due_ms: int
    due_local: str | None
    moved: bool
    offered: bool
    pinged: bool


@dataclass(frozen=True, slots=True)
class DueOwner:
    """An owner to whom something is due, and all that is, in the order of its moments.

    `quiet_min`: from when to when they want no ping, where they said so [minutes of the day].
    """

    owner_id: int
    address: Address
    reminders: tuple[DueReminder, ...]
    quiet_min: tuple[int, int] | None = None


@dataclass(frozen=True, slots=True)
class Promised:
    """What became of a reminder that was due.

    Attributes
    ----------
    owner_id, reminder_id, ping_id, due_ms
        From `DueReminder`.
    pings
        Whether a message was promised for it.
    next_ms, next_local
        When it comes next; None: it has ended.
    moved
        Whether what comes next is the same occurrence, moved by hand.
    """

    owner_id: int
    reminder_id: int
    ping_id: int
    due_ms: int
    pings: bool
    next_ms: int | None
    next_local: str | None
    moved: bool = False


# --- claiming ------------------------------------------------------------------------------------

_WHO = (
    select(
        _OWNER.c.id,
        _OWNER.c.kind,
        _OWNER.c.channel,
        _OWNER.c.external_id,
        _OWNER.c.quiet_from_min,
        _OWNER.c.quiet_until_min,
    )
    .join(_REMINDER, _REMINDER.c.owner_id == _OWNER.c.id)
    .where(
        _REMINDER.c.channel == bindparam("channel"),
        _REMINDER.c.state == _ACTIVE,
        _REMINDER.c.due_ms <= bindparam("now"),
    )
    .order_by(_REMINDER.c.due_ms)
    .limit(bindparam("most", type_=Integer))
    .with_for_update(of=_OWNER, skip_locked=True)
)
_SAME = _PING.alias()
_WHAT = (
    select(
        *(_REMINDER.c[name] for name in DueReminder.__slots__ if name in _REMINDER.c),
        select(func.max(_PING.c.id))
        .where(_PING.c.owner_id == _REMINDER.c.owner_id)
        .scalar_subquery()
        .label("last_ping"),
        exists()
        .where(
            _SAME.c.owner_id == _REMINDER.c.owner_id,
            _SAME.c.reminder_id == _REMINDER.c.id,
            _SAME.c.due_ms == _REMINDER.c.due_ms,
        )
        .label("pinged"),
    )
    .where(
        _REMINDER.c.owner_id.in_(bindparam("owners", expanding=True)),
        _REMINDER.c.state == _ACTIVE,
        _REMINDER.c.due_ms <= bindparam("now"),
    )
    .order_by(_REMINDER.c.owner_id, _REMINDER.c.due_ms, _REMINDER.c.id)
)
_PROMISE = insert(_PING)
_GO_ON = (
    update(_REMINDER)
    .where(_REMINDER.c.owner_id == bindparam("of_owner"), _REMINDER.c.id == bindparam("number"))
    .values(
        due_ms=bindparam("next_ms"),
        due_local=bindparam("next_local"),
        moved=bindparam("still_moved"),
        state=bindparam("becomes"),
    )
)


async def due(session: AsyncSession, channel: str, *, now_ms: int, most: int) -> list[DueOwner]:
    """Take owners of a channel to whom something is due, until the end of the transaction.

    Parameters
    ----------
    session
        A session of `Records.writing`, in which `promise` follows.
    channel
        The channel that sends.
    now_ms
        The instant.
    most
        The most reminders to look for; all that is due to their owners comes with them.
    """
    found = await session.execute(_WHO, {"channel": channel, "now": now_ms, "most": most})
    return await _due_to(session, {row.id: row for row in found}, now_ms)


async def due_of(session: AsyncSession, owner_id: int, *, now_ms: int) -> DueOwner | None:
    """As `due` for one owner, for a channel that cannot send of its own accord; None: nothing is.

    Raises
    ------
    UnknownOwner
        There is no such owner.
    """
    await keep_place(session, owner_id)
    owner = await get(session, owner_id)
    found = await _due_to(session, {owner_id: owner}, now_ms)
    return found[0] if found else None


async def is_due(session: AsyncSession, owner_id: int, *, now_ms: int) -> bool:
    """Whether anything is due to an owner; asked before `due_of`, which waits for writers."""
    query = exists().where(
        Reminder.owner_id == owner_id, Reminder.state == _ACTIVE, Reminder.due_ms <= now_ms
    )
    return bool(await session.scalar(select(query)))


async def oldest(session: AsyncSession, channel: str) -> int | None:
    """When the first of all active reminders of a channel comes, or should have come [ms]."""
    query = select(func.min(Reminder.due_ms)).where(
        Reminder.channel == channel, Reminder.state == _ACTIVE
    )
    found: int | None = await session.scalar(query)
    return found


async def promise(session: AsyncSession, promised: Sequence[Promised]) -> None:
    """Write down the pings that a message was promised for, and when each reminder comes next.

    In the transaction of `due`, before anything else is.
    """
    pings = [
        {
            "owner_id": p.owner_id, "id": p.ping_id, "reminder_id": p.reminder_id,
            "due_ms": p.due_ms, "state": PingState.OPEN,
        }
        for p in promised
        if p.pings
    ]  # fmt: skip
    if pings:
        await session.execute(_PROMISE, pings)
    rows = [
        {
            "of_owner": p.owner_id, "number": p.reminder_id, "next_ms": p.next_ms,
            "next_local": p.next_local, "still_moved": p.moved,
            "becomes": ReminderState.ENDED if p.next_ms is None else ReminderState.ACTIVE,
        }
        for p in promised
    ]  # fmt: skip
    if rows:
        await session.execute(_GO_ON, rows)


async def _due_to(session: AsyncSession, taken: Mapping[int, Any], now_ms: int) -> list[DueOwner]:
    """All that is due to owners whose rows are taken, in their order."""
    if not taken:
        return []
    found = await session.execute(_WHAT, {"owners": list(taken), "now": now_ms})
    due_to: dict[int, list[Any]] = {}
    for row in found:
        due_to.setdefault(row.owner_id, []).append(row)
    return [
        DueOwner(
            owner_id,
            Address(row.kind, row.channel, row.external_id),
            tuple(map(_due_reminder, rows, range(len(rows)))),
            None if row.quiet_from_min is None else (row.quiet_from_min, row.quiet_until_min),
        )
        for owner_id, row in taken.items()
        if (rows := due_to.get(owner_id, []))
    ]


def _due_reminder(row: Any, place: int) -> DueReminder:
    fields = dict(row._mapping)
    return DueReminder(ping_id=(fields.pop("last_ping") or 0) + 1 + place, **fields)


# --- one owner's pings ---------------------------------------------------------------------------


async def unanswered(session: AsyncSession, owner_id: int, *, since_ms: int) -> list[Ping]:
    """Return an owner's pings due since then that got no answer, the newest first."""
    query = select(Ping).where(
        Ping.owner_id == owner_id, Ping.due_ms >= since_ms, Ping.state.in_(_UNANSWERED)
    )
    return list(await session.scalars(query.order_by(Ping.due_ms.desc(), Ping.id.desc())))


async def shown_by(session: AsyncSession, owner_id: int, message_id: int) -> bool:
    """Whether a message showed pings of an owner, answered or not."""
    query = exists().where(Ping.owner_id == owner_id, Ping.message_id == message_id)
    return bool(await session.scalar(select(query)))


async def settle(
    session: AsyncSession, owner_id: int, ping_id: int, state: PingState, *, now_ms: int
) -> Ping | None:
    """Note what a person answered to a ping: done, skipped, later.

    Returns
    -------
    Ping or None
        None where it was answered before, or there is none: nothing is to be done then.
    """
    if state not in _ANSWERED:
        raise ValueError(f"{state} is no answer")
    await keep_place(session, owner_id)
    if not 0 < ping_id <= MAX_ID:
        return None
    # Fresh: another may have answered before the row was taken.
    ping = await session.get(Ping, (owner_id, ping_id), populate_existing=True)
    if ping is None or ping.state in _ANSWERED:
        return None
    ping.state, ping.settled_ms = state, now_ms
    await session.flush()
    return ping


async def note_sent(
    session: AsyncSession, owner_id: int, ping_ids: Iterable[int], *, message_id: int | None = None
) -> int:
    """Note that a message with these pings was accepted; an answer that was quicker stays.

    Returns
    -------
    int
        How many were open.
    """
    return await _close(session, owner_id, ping_ids, state=PingState.SENT, message_id=message_id)


async def note_failed(
    session: AsyncSession, owner_id: int, ping_ids: Iterable[int], *, now_ms: int
) -> int:
    """Note that the message with these pings can never be sent.

    Returns
    -------
    int
        How many were open.
    """
    return await _close(session, owner_id, ping_ids, state=PingState.FAILED, settled_ms=now_ms)


async def clear_out(session: AsyncSession, *, now_ms: int) -> int:
    """Delete pings that are older than they are kept for; over all owners.

    The newest of each owner stays, so that its number is not given again.

    Returns
    -------
    int
        How many.
    """
    newest = select(func.max(_SAME.c.id)).where(_SAME.c.owner_id == _PING.c.owner_id)
    result = await session.execute(
        delete(_PING).where(
            _PING.c.due_ms < now_ms - KEPT_MS,
            _PING.c.state != PingState.OPEN,
            _PING.c.id < newest.scalar_subquery(),
        )
    )
    return cast(CursorResult[Any], result).rowcount


async def _close(
    session: AsyncSession, owner_id: int, ping_ids: Iterable[int], **values: Any
) -> int:
    result = await session.execute(
        update(_PING)
        .where(
            _PING.c.owner_id == owner_id,
            _PING.c.id.in_(list(ping_ids)),
            _PING.c.state == PingState.OPEN,
        )
        .values(**values)
    )
    return cast(CursorResult[Any], result).rowcount
