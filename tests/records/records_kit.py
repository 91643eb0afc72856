"""What the tests of the records share: databases to test on, an owner, a day."""

from __future__ import annotations

import shutil
import uuid
from datetime import UTC, date, datetime
from pathlib import Path

import asyncpg  # type: ignore[import-untyped]
from sqlalchemy import make_url
from sqlalchemy.ext.asyncio import AsyncSession

from bot.records import log, open_records
from bot.records.kinds import OwnerKind
from bot.records.log import Said
from bot.records.owners import Address

TODAY = date(2026, 3, 1)
NOW = datetime(2026, 3, 1, 8, 30, tzinfo=UTC)
ADDRESS = Address(OwnerKind.PERSON, "terminal", "anna")
NEIGHBOUR = Address(OwnerKind.PERSON, "terminal", "ben")


class Databases:
    """Makes databases of one kind: empty ones, and copies of a migrated one."""

    def __init__(self, folder: Path, server: str | None) -> None:
        self._folder = folder
        self._server = server
        self._template: str | None = None
        self._made: list[str] = []

    async def empty(self) -> str:
        """Return the URL of a database without tables."""
        name = "t" + uuid.uuid4().hex
        if self._server is None:
            return f"sqlite:///{self._folder / name}.sqlite3"
        self._made.append(name)
        await self._execute(f"CREATE DATABASE {name}")
        return self._url(name)

    async def migrated(self) -> str:
        """Return the URL of a database with our tables and nothing in them."""
        if self._template is None:
            self._template = await self.empty()
            await (await open_records(self._template)).close()
        if self._server is None:
            url = await self.empty()
            shutil.copy(str(make_url(self._template).database), str(make_url(url).database))
            return url
        name = "t" + uuid.uuid4().hex
        template = make_url(self._template).database
        self._made.append(name)
        await self._execute(f"CREATE DATABASE {name} TEMPLATE {template}")
        return self._url(name)

    async def drop_all(self) -> None:
        """Leave the server as it was found."""
        for name in self._made:
            await self._execute(f"DROP DATABASE IF EXISTS {name} WITH (FORCE)")

    async def _execute(self, statement: str) -> None:
        connection = await asyncpg.connect(self._server)
        try:
            await connection.execute(statement)
        finally:
            await connection.close()

    def _url(self, name: str) -> str:
        assert self._server is not None
        url = make_url(self._server).set(database=name)
        return url.render_as_string(hide_password=False)


async def begin(session: AsyncSession, owner_id: int, on: date = TODAY) -> Said:
    return await log.begin(session, owner_id, on=on, said_at=NOW)
