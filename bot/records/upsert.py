"""INSERT ... ON CONFLICT, which both databases have and SQLAlchemy spells once for each."""

from __future__ import annotations

from sqlalchemy.dialects import postgresql, sqlite
from sqlalchemy.ext.asyncio import AsyncSession

from .models import Base


def upserting(session: AsyncSession, model: type[Base]) -> sqlite.Insert | postgresql.Insert:
    """Return an insert into a table that can say what to do where the row exists."""
    if session.get_bind().dialect.name == "sqlite":
        return sqlite.insert(model)
    return postgresql.insert(model)
