"""Deleting everything of an owner."""

from __future__ import annotations

from typing import Any

from sqlalchemy import (
    CursorResult,
    Result,
    Table,
    delete,
    exists,
    func,
    literal,
    select,
    union_all,
    update,
)
from sqlalchemy.ext.asyncio import AsyncSession

from . import post
from .kinds import OwnerKind
from .ledger import hold
from .models import Base, Event, Memory, Owner, Reminder


async def count_owned(
    session: AsyncSession, owner_id: int, *, undone: bool = True
) -> dict[str, int]:
    """Return how many rows of each table the owner has, for the question before `forget`.

    Parameters
    ----------
    session
        Any session of the records.
    owner_id
        The owner.
    undone
        Whether rows count whose addition was undone: the owner no longer sees them.

    Returns
    -------
    dict
        By table; tables without a row of theirs are left out.
    """
    counts = [
        select(literal(table.name), func.count()).where(
            table.c.owner_id == owner_id,
            *([table.c.present] if "present" in table.c and not undone else []),
        )
        for table in _owned_tables()
    ]
    rows = await session.execute(union_all(*counts))
    return {name: number for name, number in rows if number}


async def forget(session: AsyncSession, owner_id: int) -> dict[str, int]:
    """Delete an owner and everything of theirs, the log too; for good.

    What groups remember of a person's last request goes as well, who it was that set a group's
    reminder, and what the messenger's post still keeps. What a group owns stays the group's.

    Parameters
    ----------
    session
        A session of `Records.writing`.
    owner_id
        The owner.

    Returns
    -------
    dict
        How many rows of each table were deleted; tables without one are left out.

    Raises
    ------
    UnknownOwner
        There is no such owner.
    """
    owner = await hold(session, owner_id)
    deleted = {}
    # Rows that point to others first.
    for table in reversed(_owned_tables()):
        result = await session.execute(delete(table).where(table.c.owner_id == owner_id))
        deleted[table.name] = _rows_in(result)
    deleted["memory"] += await _forget_in_groups(session, owner)
    await _forget_below(session, owner)
    await _forget_in_post(session, owner)
    await session.execute(delete(Owner).where(Owner.id == owner_id))
    deleted["owner"] = 1
    return {name: number for name, number in deleted.items() if number}


async def delete_collection(session: AsyncSession, owner_id: int) -> None:
    """Delete what an owner has on record, but not the owner; for an import that replaces it."""
    await hold(session, owner_id)
    for table in reversed(_owned_tables()):
        await session.execute(delete(table).where(table.c.owner_id == owner_id))
    # The session must not answer from what it had loaded.
    session.expire_all()


async def drop_empty(session: AsyncSession, owner_id: int) -> bool:
    """Delete an owner in whose log nothing stands; says whether it was so.

    What the messenger's post keeps of them stays.
    """
    if await session.scalar(select(exists().where(Event.owner_id == owner_id))):
        return False
    await delete_collection(session, owner_id)
    await session.execute(delete(Owner).where(Owner.id == owner_id))
    return True


def _owned_tables() -> list[Table]:
    """Return every table whose rows have an owner, those that others point to first."""
    return [table for table in Base.metadata.sorted_tables if "owner_id" in table.c]


async def _forget_in_groups(session: AsyncSession, owner: Owner) -> int:
    if owner.kind is not OwnerKind.PERSON:
        return 0
    # Promise: only rows about this person, in groups of the channel where they have this name.
    same_channel = exists().where(Owner.id == Memory.owner_id, Owner.channel == owner.channel)
    result = await session.execute(
        delete(Memory)
        .where(Memory.person == owner.external_id, same_channel)
        .execution_options(synchronize_session=False)
    )
    await session.execute(
        update(Reminder)
        .where(Reminder.person == owner.external_id, Reminder.channel == owner.channel)
        .values(person=None)
        .execution_options(synchronize_session=False)
    )
    return _rows_in(result)


async def _forget_below(session: AsyncSession, owner: Owner) -> None:
    """What a group had at its former number, where it could not go to the new one's owner."""
    if owner.kind is not OwnerKind.GROUP:
        return
    below = await session.scalars(
        select(Owner.id).where(
            Owner.channel == owner.channel,
            Owner.kind == owner.kind,
            Owner.external_id.startswith(f"{owner.external_id}:", autoescape=True),
        )
    )
    for former in below.all():
        await forget(session, former)


async def _forget_in_post(session: AsyncSession, owner: Owner) -> None:
    """What the messenger's post keeps for a while of a person or group."""
    is_person = owner.kind is OwnerKind.PERSON
    await post.forget(session, owner.channel, owner.external_id, person=is_person)


def _rows_in(result: Result[Any]) -> int:
    return result.rowcount if isinstance(result, CursorResult) else 0
