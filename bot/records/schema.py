"""The version of a database, and how it is brought up to ours.

A database that is newer than the program, or not ours at all, is looked at through a
connection that cannot write, and left as it is. A SQLite file gets its name only once all its
tables are in it: an empty file is never one that we began, and is refused rather than filled.
"""

from __future__ import annotations

import asyncio
import os
import secrets
import sqlite3
from contextlib import closing, suppress
from pathlib import Path
from typing import TYPE_CHECKING

from sqlalchemy import URL, Connection, inspect, text

from .engines import file_of, is_sqlite, make_migrator, make_onlooker
from .errors import (
    DatabaseBusy,
    DatabaseUnreachable,
    EmptyFile,
    ForeignDatabase,
    NewerDatabase,
)
from .files import name_new
from .models import Base

if TYPE_CHECKING:
    from alembic.config import Config

HEAD = "0009"
"""The version this program writes: the newest file in migrations/versions."""

VERSION_TABLE = "records_version"
"""Where a database keeps its version; a name of our own, so that others can share it."""

MIGRATIONS = Path(__file__).parent / "migrations"

_OPENING_MS = 60_000
"""How long opening waits for other programs that open the same new file."""

_ONE_AT_A_TIME = 0x5163_1D3E
"""Key of the PostgreSQL advisory lock that migrations take."""


async def bring_up(url: URL) -> None:
    """Bring the database to our version; create it where there is none.

    An upgrade is one transaction: a program that is killed in it leaves the old version.

    Parameters
    ----------
    url
        A URL that `engines.parse` returned.

    Raises
    ------
    NewerDatabase, ForeignDatabase
        The database is not one we can use; it was not touched.
    """
    if is_sqlite(url):
        await _have_file(url)
    if await _version(url) != HEAD:
        await _migrate(url)
    if is_sqlite(url):
        await _write_ahead(file_of(url))


def config() -> Config:
    """Return what Alembic needs to find our migrations."""
    from alembic.config import Config

    made = Config()
    made.set_main_option("script_location", str(MIGRATIONS).replace("%", "%%"))
    return made


async def check(url: URL) -> None:
    """Refuse a database that is newer or not ours, without a change; a new one is fine.

    Raises
    ------
    NewerDatabase, ForeignDatabase
        The database is not one we can use.
    """
    if is_sqlite(url):
        if not file_of(url).exists():
            return
        _refuse_empty(file_of(url))
    await _version(url)


async def _have_file(url: URL) -> None:
    file = file_of(url)
    if not file.exists():
        await _create(url.set(database=str(file.resolve())))
    elif file.with_name(file.name + "-journal").exists():
        await asyncio.to_thread(_take_back, file)
    _refuse_empty(file)


async def _create(url: URL) -> None:
    """Make the file of a database, readable by nobody else, and its folder.

    Several programs may do so at once: the first one's gets the name.
    """
    file = file_of(url)
    file.parent.mkdir(parents=True, exist_ok=True, mode=0o700)
    part = file.with_name(f".sinkside-{os.getpid()}-{secrets.token_hex(4)}.new")
    os.close(os.open(part, os.O_CREAT | os.O_EXCL | os.O_WRONLY, 0o600))
    try:
        await _migrate(url.set(database=str(part)))
        with suppress(FileExistsError):
            name_new(part, file)
    finally:
        part.unlink(missing_ok=True)
        part.with_name(part.name + "-journal").unlink(missing_ok=True)


def _take_back(file: Path) -> None:
    """Let SQLite take back what a killed program left half-written; looking on cannot do it."""
    with closing(sqlite3.connect(file)) as connection, suppress(sqlite3.Error):
        # What else may be wrong is told by who looks at it next.
        connection.execute("SELECT count(*) FROM sqlite_master").fetchone()


def _refuse_empty(file: Path) -> None:
    if file.stat().st_size == 0:
        raise EmptyFile("the file is empty")


async def _version(url: URL) -> str | None:
    engine = make_onlooker(url)
    try:
        async with engine.connect() as connection:
            return await connection.run_sync(_version_within)
    finally:
        await engine.dispose()


def _version_within(connection: Connection) -> str | None:
    """Return the version of a database, None for an empty one."""
    tables = set(inspect(connection).get_table_names())
    if VERSION_TABLE in tables:
        version = connection.scalar(text(f"SELECT version_num FROM {VERSION_TABLE}"))
        if version is not None:
            return known(str(version))
    # PostgreSQL databases are shared with others; a file with tables in it is somebody else's.
    clash = tables if connection.dialect.name == "sqlite" else tables & set(Base.metadata.tables)
    if clash - {VERSION_TABLE}:
        raise ForeignDatabase("the database holds tables that are not ours")
    return None


def known(version: str) -> str:
    """Return a version that we have a migration for.

    Raises
    ------
    NewerDatabase
        We have none: a later program wrote it.
    """
    if version != HEAD:
        from alembic.script import ScriptDirectory

        ours = {
            script.revision for script in ScriptDirectory.from_config(config()).walk_revisions()
        }
        if version not in ours:
            raise NewerDatabase(version, HEAD)
    return version


async def _migrate(url: URL) -> None:
    engine = make_migrator(url)
    try:
        async with engine.begin() as connection:
            await connection.run_sync(_upgrade)
    finally:
        await engine.dispose()


def _upgrade(connection: Connection) -> None:
    """Upgrade within the caller's transaction: all of it or nothing, and one program at a time."""
    from alembic import command

    if connection.dialect.name == "postgresql":
        connection.execute(text(f"SELECT pg_advisory_xact_lock({_ONE_AT_A_TIME})"))
    # Asked again under the lock: another program may have been quicker.
    if _version_within(connection) == HEAD:
        return
    settings = config()
    settings.attributes["connection"] = connection
    command.upgrade(settings, HEAD)
    if connection.dialect.name == "sqlite":
        broken = connection.exec_driver_sql("PRAGMA foreign_key_check").first()
        if broken is not None:
            raise ForeignDatabase(f"rows of {broken[0]} point to nothing")


async def _write_ahead(file: Path) -> None:
    """Switch a SQLite file to write-ahead logging, which it then keeps.

    The switch needs the file for itself and is refused at once while another program has it
    open, whatever the busy timeout; so it is tried again while many programs start at once.
    """
    for _ in range(_OPENING_MS // 50):
        if await asyncio.to_thread(_switch, file):
            return
        await asyncio.sleep(0.05)
    raise DatabaseBusy("another program keeps the database file from us")


def _switch(file: Path) -> bool:
    with closing(sqlite3.connect(file)) as connection:
        try:
            mode = connection.execute("PRAGMA journal_mode = WAL").fetchone()[0]
        except sqlite3.OperationalError as error:
            if error.sqlite_errorcode != sqlite3.SQLITE_BUSY:
                raise DatabaseUnreachable(str(error)) from error
            return False
    if mode != "wal":
        raise DatabaseUnreachable("the file system cannot do write-ahead logging")
    return True
