"""INSERT ... ON CONFLICT, which both databases have and SQLAlchemy spells once for each."""

from __future__ import annotations

from collections.abc import Callable
from functools import cache
from typing import TYPE_CHECKING, Any, TypeAlias, cast

from sqlalchemy import Table
from sqlalchemy.dialects import sqlite
from sqlalchemy.ext.asyncio import AsyncSession

from .models import Base

if TYPE_CHECKING:  # 2 MB that SQLite has no use for
    from sqlalchemy.dialects import postgresql

Upsert: TypeAlias = "sqlite.Insert | postgresql.Insert"


def upserting(session: AsyncSession, model: type[Base]) -> sqlite.Insert | postgresql.Insert:
    """Return an insert into a table that can say what to do where the row exists."""
    return _insert(model, session.get_bind().dialect.name)


def _insert(into: Any, dialect: str) -> Upsert:
    if dialect == "sqlite":
        return sqlite.insert(into)
    from sqlalchemy.dialects import postgresql

    return postgresql.insert(into)


def prepared(model: type[Base]) -> Callable[[Callable[[Upsert], Any]], Callable[..., Any]]:
    """Make a statement once for each database, for what is written with every message.

    The decorated function completes an insert into the table; call it with the session.
    Rows are given to `execute`.
    """

    def decorate(complete: Callable[[Upsert], Any]) -> Callable[..., Any]:
        table = cast(Table, model.__table__)

        @cache
        def made(dialect: str) -> Any:
            return complete(_insert(table, dialect))

        return lambda session: made(session.get_bind().dialect.name)

    return decorate
