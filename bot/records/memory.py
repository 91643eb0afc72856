"""What a person last asked for, for follow-ups, and what we asked back.

Kept per person within a chat: in a group, 'half that' means what this person asked for. How
long it counts is for the reader to judge, by `said_at` and `asked_at`.
"""

from __future__ import annotations

from collections.abc import Mapping
from datetime import datetime
from typing import Any

from sqlalchemy import bindparam, delete, select
from sqlalchemy.ext.asyncio import AsyncSession

from .ledger import keep_place
from .models import Memory
from .upsert import Upsert, prepared
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
    values = {"owner": owner_id, "who": fit["person"]}
    found: Memory | None = await session.scalar(_RECALL, values)
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
    await keep_place(session, owner_id)
    fit = checked(Memory, {"person": person})
    await session.execute(
        delete(Memory).where(Memory.owner_id == owner_id, Memory.person == fit["person"])
    )


async def _keep(
    session: AsyncSession, owner_id: int, person: str, changes: dict[str, object]
) -> None:
    await keep_place(session, owner_id)
    fit = checked(Memory, {"person": person, **changes})
    statement = _KEEP_REQUEST if "request" in changes else _KEEP_QUESTION
    await session.execute(statement(session), {"owner_id": owner_id, **fit})


def _replacing(insert: Upsert, *fields: str) -> Upsert:
    return insert.on_conflict_do_update(
        index_elements=["owner_id", "person"], set_={f: insert.excluded[f] for f in fields}
    )


# Promise: one row a person and chat; only the given half of it is replaced.
_KEEP_REQUEST = prepared(Memory)(lambda insert: _replacing(insert, "request", "said_at"))
_KEEP_QUESTION = prepared(Memory)(lambda insert: _replacing(insert, "question", "asked_at"))
_RECALL = (
    select(Memory)
    .where(Memory.owner_id == bindparam("owner"), Memory.person == bindparam("who"))
    .execution_options(populate_existing=True)
)
