"""INSERT ... ON CONFLICT, which both databases have and SQLAlchemy spells once for each."""

from __future__ import annotations

from collections.abc import Callable
from functools import cache
from typing import Any, TypeAlias, cast

from sqlalchemy import Table
from sqlalchemy.dialects import postgresql, sqlite
from sqlalchemy.ext.asyncio import AsyncSession

from .models import Base

Upsert: TypeAlias = sqlite.Insert | postgresql.Insert


def upserting(session: AsyncSession, model: type[Base]) -> sqlite.Insert | postgresql.Insert:
    """Return an insert into a table that can say what to do where the row exists."""
    if session.get_bind().dialect.name == "sqlite":
        return sqlite.insert(model)
    return postgresql.insert(model)


def prepared(model: type[Base]) -> Callable[[Callable[[Upsert], Any]], Callable[..., Any]]:
    """Make a statement once for each database, for what is written with every message.

    The decorated function completes an insert into the table; call it with the session.
    Rows are given to `execute`.
    """

    def decorate(complete: Callable[[Upsert], Any]) -> Callable[..., Any]:
        table = cast(Table, model.__table__)

        @cache
        def made(dialect: str) -> Any:
            insert = sqlite.insert(table) if dialect == "sqlite" else postgresql.insert(table)
            return complete(insert)

        return lambda session: made(session.get_bind().dialect.name)

    return decorate
