"""How we speak to the two databases: one way to read, one way to write.

SQLite: a reader sees one moment and cannot write; writers stand in line, within a process for
the one writing connection, between processes for the lock that BEGIN IMMEDIATE takes. A lock
that is taken at the start is never refused half-way, which is what a deferred one is.
PostgreSQL: a reader sees one moment (REPEATABLE READ, READ ONLY); writers of one owner stand
in line for the owner's row (`log.hold`).
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path
from typing import Any
from urllib.parse import quote

from sqlalchemy import URL, Connection, event, make_url
from sqlalchemy.exc import ArgumentError
from sqlalchemy.ext.asyncio import AsyncEngine, create_async_engine
from sqlalchemy.pool import NullPool

from . import inline_sqlite
from .errors import UnsupportedUrl

BUSY_TIMEOUT_MS = 10_000
"""How long another process's write is waited for [ms]."""

WRITER_WAIT_S = 30.0
"""How long this process's own writers are waited for [s]."""

_DRIVERS = {
    "sqlite": inline_sqlite.DRIVER,
    "sqlite+aiosqlite": inline_sqlite.DRIVER,
    inline_sqlite.DRIVER: inline_sqlite.DRIVER,
    "postgres": "postgresql+asyncpg",
    "postgresql": "postgresql+asyncpg",
    "postgresql+asyncpg": "postgresql+asyncpg",
}

_EVERY_CONNECTION = (
    f"PRAGMA busy_timeout = {BUSY_TIMEOUT_MS}",
    "PRAGMA synchronous = FULL",  # an acknowledged write survives a power cut
    "PRAGMA secure_delete = ON",  # what is forgotten does not stay behind in the file
)
_NO_WAIT = "PRAGMA busy_timeout = 0"
"""For those that begin with the lock: they wait for it themselves, and then for nothing."""


@dataclass(frozen=True, slots=True)
class Engines:
    """One engine to read and one to write; on PostgreSQL they share their connections."""

    reading: AsyncEngine
    writing: AsyncEngine

    async def dispose(self) -> None:
        """Close every connection."""
        await self.reading.dispose()
        await self.writing.dispose()


def parse(url: str) -> URL:
    """Return a database URL with the driver we use.

    Raises
    ------
    UnsupportedUrl
        Neither a SQLite file nor PostgreSQL. The message does not repeat the URL, which may
        hold a password.
    """
    try:
        parsed = make_url(url)
    except ArgumentError:
        raise UnsupportedUrl("the database URL cannot be read") from None
    driver = _DRIVERS.get(parsed.drivername)
    if driver is None:
        raise UnsupportedUrl(f"no support for databases of the kind {parsed.drivername!r}")
    if is_sqlite(parsed) and _in_memory(parsed):
        raise UnsupportedUrl("SQLite needs a file: a database in memory has one connection")
    return parsed.set(drivername=driver)


def is_sqlite(url: URL) -> bool:
    """Say whether the URL means SQLite."""
    return url.get_backend_name() == "sqlite"


def file_of(url: URL) -> Path:
    """Return the file of a SQLite URL."""
    return Path(url.database or "")


def make_engines(url: URL) -> Engines:
    """Return the engines that serve sessions."""
    if is_sqlite(url):
        reading = create_async_engine(url, hide_parameters=True)
        _prepare_sqlite(reading, _begin, ("PRAGMA foreign_keys = ON", "PRAGMA query_only = ON"))
        # One connection to write: the pool gives it out in the order of asking.
        writing = create_async_engine(
            url, pool_size=1, max_overflow=0, pool_timeout=WRITER_WAIT_S, hide_parameters=True
        )
        _prepare_sqlite(writing, _begin_to_write, ("PRAGMA foreign_keys = ON", _NO_WAIT))
        return Engines(reading, writing)
    engine = create_async_engine(url, pool_pre_ping=True, hide_parameters=True)
    snapshot = engine.execution_options(isolation_level="REPEATABLE READ", postgresql_readonly=True)
    return Engines(snapshot, engine)


def make_migrator(url: URL) -> AsyncEngine:
    """Return an engine whose transactions take in a change of the tables as a whole.

    Foreign keys are off on SQLite, where changing a table means to copy it; the migration
    checks them before it commits.
    """
    engine = create_async_engine(url, poolclass=NullPool, hide_parameters=True)
    if is_sqlite(url):
        _prepare_sqlite(engine, _begin_to_write, ("PRAGMA foreign_keys = OFF", _NO_WAIT))
    return engine


def make_onlooker(url: URL) -> AsyncEngine:
    """Return an engine that looks at a database that may not be ours, and cannot change it."""
    if not is_sqlite(url):
        engine = create_async_engine(url, poolclass=NullPool, hide_parameters=True)
        return engine.execution_options(postgresql_readonly=True)
    database = "file:" + quote(str(file_of(url).absolute()))
    read_only = url.set(database=database, query={"mode": "ro", "uri": "true"})
    engine = create_async_engine(read_only, poolclass=NullPool, hide_parameters=True)
    event.listen(engine.sync_engine, "connect", _on_connect((_EVERY_CONNECTION[0],)))
    return engine


def _in_memory(url: URL) -> bool:
    name = url.database or ""
    return not name or ":memory:" in name or name.startswith("file:")


def _begin(connection: Connection) -> None:
    raw: Any = connection.connection.dbapi_connection
    raw.execute("BEGIN")  # it waits for nobody: a quarter of what a session costs is spared


def _begin_to_write(connection: Connection) -> None:
    inline_sqlite.begin_immediate(connection, BUSY_TIMEOUT_MS / 1000)


def _prepare_sqlite(
    engine: AsyncEngine, begin: Callable[[Connection], None], pragmas: tuple[str, ...]
) -> None:
    event.listen(engine.sync_engine, "connect", _on_connect((*_EVERY_CONNECTION, *pragmas)))
    event.listen(engine.sync_engine, "begin", begin)


def _on_connect(pragmas: tuple[str, ...]) -> Callable[[Any, Any], None]:
    def prepare(connection: Any, _record: Any) -> None:
        # The driver starts no transactions of its own: it would start them late and deferred.
        connection.isolation_level = None
        cursor = connection.cursor()
        for pragma in pragmas:
            cursor.execute(pragma)
        cursor.close()

    return prepare
