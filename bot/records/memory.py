"""What a person last asked for, for follow-ups, and what we asked back.

Kept per person within a chat: in a group, 'half that' means what this person asked for. How
long it counts is for the reader to judge, by `said_at` and `asked_at`.
"""

from __future__ import annotations

from collections.abc import Mapping
from datetime import datetime
from typing import Any

from sqlalchemy import delete, select
from sqlalchemy.ext.asyncio import AsyncSession

from .ledger import hold
from .models import Memory
from .upsert import upserting
from .values import checked


async def recall(session: AsyncSession, owner_id: int, person: str) -> Memory | None:
    """Return what is remembered of a person in a chat, None where nothing is.

    Parameters
    ----------
    session
        Any session of the records.
    owner_id
        The owner: the person, or the group they spoke in.
    person
        How the channel names the person.

    Raises
    ------
    BadValue
        The person's name is empty or too long.
    """
    fit = checked(Memory, {"person": person})
    query = (
        select(Memory)
        .where(Memory.owner_id == owner_id, Memory.person == fit["person"])
        .execution_options(populate_existing=True)
    )
    found: Memory | None = await session.scalar(query)
    return found


async def remember(
    session: AsyncSession,
    owner_id: int,
    person: str,
    *,
    request: Mapping[str, Any] | None,
    said_at: datetime,
) -> None:
    """Remember a person's last request, in place of the one before.

    Raises
    ------
    UnknownOwner
        There is no such owner.
    BadValue
        The request is not JSON, or longer than `values.MAX_DOCUMENT` characters.
    """
    await _keep(session, owner_id, person, {"request": request, "said_at": said_at})


async def ask(
    session: AsyncSession,
    owner_id: int,
    person: str,
    *,
    question: Mapping[str, Any] | None,
    asked_at: datetime,
) -> None:
    """Keep the question that waits for a person's answer; None where it was answered.

    Raises
    ------
    UnknownOwner
        There is no such owner.
    BadValue
        The question is not JSON, or longer than `values.MAX_DOCUMENT` characters.
    """
    await _keep(session, owner_id, person, {"question": question, "asked_at": asked_at})


async def clear(session: AsyncSession, owner_id: int, person: str) -> None:
    """Drop what is remembered of a person in a chat."""
    await hold(session, owner_id)
    fit = checked(Memory, {"person": person})
    await session.execute(
        delete(Memory).where(Memory.owner_id == owner_id, Memory.person == fit["person"])
    )


async def _keep(
    session: AsyncSession, owner_id: int, person: str, changes: dict[str, object]
) -> None:
    await hold(session, owner_id)
    fit = checked(Memory, {"person": person, **changes})
    key = {"owner_id": owner_id, "person": fit.pop("person")}
    # Promise: one row a person and chat; only the given half of it is replaced.
    statement = (
        upserting(session, Memory)
        .values({**key, **fit})
        .on_conflict_do_update(index_elements=list(key), set_=fit)
    )
    await session.execute(statement)
