"""Opening the records, and sessions to read and to write."""

from __future__ import annotations

import asyncio
import sqlite3
from collections.abc import AsyncIterator, Iterator
from contextlib import AsyncExitStack, asynccontextmanager, contextmanager

from sqlalchemy.exc import (
    DBAPIError,
    InterfaceError,
    OperationalError,
)
from sqlalchemy.exc import TimeoutError as PoolTimeout
from sqlalchemy.ext.asyncio import AsyncEngine, AsyncSession
from sqlalchemy.orm import Session

from .engines import Engines, make_engines, parse
from .errors import (
    CannotWrite,
    CutOff,
    DatabaseBusy,
    DatabaseProblem,
    DatabaseUnreachable,
    DiskFull,
    ForeignDatabase,
)
from .schema import bring_up

_BUSY_STATES = frozenset({"40001", "40P01", "55P03"})
"""PostgreSQL: serialization failure, deadlock, lock not available."""

_FULL_STATE = "53100"
"""PostgreSQL: disk full."""

_READ_ONLY_STATE = "25006"
"""PostgreSQL: the transaction is one for reading."""

_AWAY_CLASSES = frozenset({"08", "28", "3D", "53", "57"})
"""PostgreSQL: connection, authorization, no such database, out of resources, shutting down."""

_CLOSED_STATE = "55000"
"""PostgreSQL: among others, a database that takes no connections for now."""


class Records:
    """The open records. Made by `open_records`."""

    def __init__(self, engines: Engines) -> None:
        self._engines = engines

    @asynccontextmanager
    async def reading(self) -> AsyncIterator[AsyncSession]:
        """Give a session that sees one moment of the database, and cannot change it.

        Raises
        ------
        CannotWrite
            Something in the block tried to write.
        DatabaseUnreachable
            The connection could not be made or was lost.
        """
        async with _session(self._engines.reading) as session:
            yield session

    @asynccontextmanager
    async def writing(self) -> AsyncIterator[AsyncSession]:
        """Give a session whose changes are kept as a whole at the end, or not at all.

        An exception that leaves the block undoes all of it: let `errors.Refused` leave. On
        SQLite one writes at a time: keep the block short, never open a second one inside, and
        never wait for a person or the network in it.

        Raises
        ------
        DatabaseBusy
            Another writer did not finish in time; nothing was written.
        DatabaseUnreachable
            The connection could not be made or was lost.
        """
        async with _session(self._engines.writing) as session:
            yield session

    @asynccontextmanager
    async def together(self) -> AsyncIterator[Records]:
        """Give records whose writing blocks are kept together at the end, or none of them.

        Each writing block still is all or nothing by itself. The write begins with the first of
        them, and what was written is read from then on.

        Raises
        ------
        DatabaseBusy, DatabaseUnreachable
            As `writing`; nothing was written.
        """
        async with AsyncExitStack() as stack:
            yield _Together(self._engines, stack)

    @asynccontextmanager
    async def closing(self) -> AsyncIterator[AsyncSession]:
        """Give the session for the last write of a block of `together`.

        What is refused in it takes all of the block back.
        """
        async with self.writing() as session:
            yield session

    async def close(self) -> None:
        """Close every connection. Sessions must have ended."""
        await self._engines.dispose()


class _Together(Records):
    """Records of one piece of work, with one write for all of it."""

    def __init__(self, engines: Engines, stack: AsyncExitStack) -> None:
        super().__init__(engines)
        self._stack = stack
        self._session: AsyncSession | None = None

    @asynccontextmanager
    async def reading(self) -> AsyncIterator[AsyncSession]:
        if self._session is not None:
            yield self._session
            return
        async with super().reading() as session:
            yield session

    @asynccontextmanager
    async def writing(self) -> AsyncIterator[AsyncSession]:
        if self._session is not None:
            with told_in_our_words():
                async with self._session.begin_nested():
                    yield self._session
            return
        # The first block needs no savepoint: with nothing before it, all is taken back.
        async with AsyncExitStack() as unfinished:
            session = await unfinished.enter_async_context(_session(self._engines.writing))
            yield session
            self._session = session
            self._stack.push_async_exit(unfinished.pop_all())

    @asynccontextmanager
    async def closing(self) -> AsyncIterator[AsyncSession]:
        if self._session is None:
            async with self.writing() as session:
                yield session
        else:
            with told_in_our_words():
                yield self._session


async def open_records(url: str) -> Records:
    """Open the records, creating or upgrading their tables first.

    Parameters
    ----------
    url
        A SQLAlchemy URL: `sqlite:///file` or `postgresql://user@host/database`, with or
        without the name of the driver.

    Returns
    -------
    Records
        To be closed with `Records.close`.

    Raises
    ------
    UnsupportedUrl
        Another kind of database, or SQLite without a file.
    NewerDatabase, ForeignDatabase
        A database we cannot use; it was not touched.
    DatabaseBusy, DatabaseUnreachable
        The database cannot serve now.
    """
    parsed = parse(url)
    with told_in_our_words(), connecting():
        await bring_up(parsed)
    return Records(make_engines(parsed))


@asynccontextmanager
async def _session(engine: AsyncEngine) -> AsyncIterator[AsyncSession]:
    session = AsyncSession(engine, expire_on_commit=False)
    with told_in_our_words():
        try:
            # Begun here and not with the first query, so that waiting is done before the work.
            with connecting():
                await session.run_sync(_begun)
            yield session
            await session.run_sync(_kept)
        except BaseException:
            await asyncio.shield(session.close())  # takes all of it back
            raise


def _begun(session: Session) -> None:
    session.connection()


def _kept(session: Session) -> None:
    session.commit()
    session.close()


@contextmanager
def connecting() -> Iterator[None]:
    """Name what goes wrong while a connection is made, which SQLAlchemy does not wrap."""
    try:
        yield
    except (OSError, sqlite3.Error) as error:
        raise DatabaseUnreachable(str(error)) from error
    except Exception as error:
        if type(error).__module__.partition(".")[0] == "asyncpg":
            raise DatabaseUnreachable(str(error)) from error
        raise


@contextmanager
def told_in_our_words() -> Iterator[None]:
    """Turn a database's failure to serve into our own error; let programming errors through."""
    try:
        yield
    except PoolTimeout as error:
        raise DatabaseBusy("too many are waiting for a connection") from error
    except DBAPIError as error:
        problem = _problem(error)
        if problem is None:
            raise
        raise problem from error


def _problem(error: DBAPIError) -> DatabaseProblem | None:
    message = str(error.orig)
    if getattr(error.orig, "sqlite_errorcode", 0) == sqlite3.SQLITE_READONLY_ROLLBACK:
        return CutOff()
    sqlite_code = getattr(error.orig, "sqlite_errorcode", 0) & 0xFF
    if sqlite_code in (sqlite3.SQLITE_BUSY, sqlite3.SQLITE_LOCKED):
        return DatabaseBusy("another program keeps the database file from us")
    if sqlite_code == sqlite3.SQLITE_FULL:
        return DiskFull("the disk of the database is full")
    if sqlite_code == sqlite3.SQLITE_NOTADB:
        return ForeignDatabase("the file is not a database")
    state = getattr(error.orig, "sqlstate", None) or ""
    if state == _FULL_STATE:
        return DiskFull("the disk of the database is full")
    if sqlite_code == sqlite3.SQLITE_READONLY or state == _READ_ONLY_STATE:
        return CannotWrite(message)
    if state in _BUSY_STATES:
        return DatabaseBusy(message)
    away = error.connection_invalidated or state == _CLOSED_STATE or state[:2] in _AWAY_CLASSES
    if away or isinstance(error, OperationalError | InterfaceError):
        return DatabaseUnreachable(message)
    return None
