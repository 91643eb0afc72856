"""The version of a database, and how it is brought up to ours.

A database that is newer than the program, or not ours at all, is looked at through a
connection that cannot write, and left as it is.
"""

from __future__ import annotations

import asyncio
import os
import sqlite3
from contextlib import closing
from pathlib import Path
from typing import TYPE_CHECKING

from sqlalchemy import URL, Connection, inspect, text

from .engines import file_of, is_sqlite, make_migrator, make_onlooker
from .errors import DatabaseBusy, DatabaseUnreachable, ForeignDatabase, NewerDatabase
from .models import Base

if TYPE_CHECKING:
    from alembic.config import Config

HEAD = "0006"
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
        _make_private(file_of(url))
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


def _make_private(file: Path) -> None:
    """Create the file if it is missing, readable by nobody else, and its folder."""
    file.parent.mkdir(parents=True, exist_ok=True, mode=0o700)
    if not file.exists():
        os.close(os.open(file, os.O_CREAT | os.O_WRONLY, 0o600))


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
            return _known(str(version))
    # PostgreSQL databases are shared with others; a file with tables in it is somebody else's.
    clash = tables if connection.dialect.name == "sqlite" else tables & set(Base.metadata.tables)
    if clash - {VERSION_TABLE}:
        raise ForeignDatabase("the database holds tables that are not ours")
    return None


def _known(version: str) -> str:
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
