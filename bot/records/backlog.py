"""How much waits, and for how long: what an operator watches. Cheap enough to ask every second.

Each query walks the partial index of what is open, or a table that stays small; none of them
depends on how much has been done before. Times are milliseconds since 1970.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import cast

from sqlalchemy import ColumnClause, Table, func, literal_column, select
from sqlalchemy.ext.asyncio import AsyncSession

from .models import Chat, Inbox, Outbox

_IN, _OUT = cast(Table, Inbox.__table__), cast(Table, Outbox.__table__)
_OPEN: ColumnClause[str] = literal_column("'open'")
"""As the partial index has it: a bound value could not be matched with its condition."""


@dataclass(frozen=True, slots=True)
class Backlog:
    """What waits at one moment.

    Attributes
    ----------
    updates, letters : that are open
    update_ms, letter_ms : when the oldest of each came [ms since 1970], None where none waits
    dead_letters : that can never be sent
    unreachable : chats that cannot be written to
    """

    updates: int
    update_ms: int | None
    letters: int
    letter_ms: int | None
    dead_letters: int
    unreachable: int


async def backlog(session: AsyncSession) -> Backlog:
    """Count what waits, over all bots of the database."""
    updates, update_ms = await _open(session, _IN, "received_ms")
    letters, letter_ms = await _open(session, _OUT, "created_ms")
    dead = select(func.count()).select_from(_OUT).where(_OUT.c.state == "dead")
    chats = select(func.count()).select_from(Chat)
    return Backlog(
        updates=updates,
        update_ms=update_ms,
        letters=letters,
        letter_ms=letter_ms,
        dead_letters=await session.scalar(dead) or 0,
        unreachable=await session.scalar(chats) or 0,
    )


async def _open(session: AsyncSession, table: Table, when: str) -> tuple[int, int | None]:
    """How many rows are open, and the time of the first of them: ids follow the time."""
    is_open = table.c.state == _OPEN
    number, first = (
        await session.execute(select(func.count(), func.min(table.c.id)).where(is_open))
    ).one()
    if not number:
        return 0, None
    came: int | None = await session.scalar(select(table.c[when]).where(table.c.id == first))
    return number, came
