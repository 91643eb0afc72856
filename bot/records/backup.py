"""A consistent copy of a SQLite file while others write to it.

The library's own backup call reads one moment of the source and keeps nobody from writing.
The copy is made beside its place, looked over, and only then given its name: a file of that
name is a whole backup.
"""

from __future__ import annotations

import os
import sqlite3
from contextlib import closing, suppress
from dataclasses import dataclass
from pathlib import Path
from urllib.parse import quote

from .engines import BUSY_TIMEOUT_MS, file_of, is_sqlite, parse
from .errors import (
    CutOff,
    DatabaseBusy,
    DatabaseProblem,
    DatabaseUnreachable,
    ForeignDatabase,
)
from .files import name_new, settle
from .schema import VERSION_TABLE

#: What a SQLite file has beside it while it is in use.
_COMPANIONS = ("-wal", "-shm", "-journal")


class NoFile(DatabaseProblem):
    """The records are not in a file that could be copied: PostgreSQL has its own tool."""


class InTheWay(DatabaseProblem):
    """There is a file of this name already."""


class InUse(DatabaseProblem):
    """The file to be written is a database somebody uses, or the records themselves."""


class BrokenCopy(DatabaseProblem):
    """The copy is not what it should be; it was thrown away."""


@dataclass(frozen=True, slots=True)
class Copy:
    """A backup that was made and looked over.

    Attributes
    ----------
    rows : of each table, as many as the source had at the moment of the copy
    size : of the file [bytes]
    """

    rows: dict[str, int]
    size: int


def back_up(url: str, target: Path, *, replace: bool = False) -> Copy:
    """Copy the records to a file.

    Parameters
    ----------
    url : of the records, as `open_records` takes it
    target : the file to write
    replace : overwrite a file that is there

    Raises
    ------
    NoFile
        The records are in PostgreSQL.
    InTheWay, InUse
        The file is there already, or must not be replaced.
    BrokenCopy
        The copy was damaged, or lacks rows.
    DatabaseProblem
        The source cannot be read, or the copy not be written.
    """
    parsed = parse(url)
    if not is_sqlite(parsed):
        raise NoFile("the records are not in a file")
    source = file_of(parsed)
    if not source.is_file():
        raise DatabaseUnreachable("there is no file of records there")
    _check_place(source, target, replace)
    part = target.with_name(f".{target.name}.{os.getpid()}.part")
    try:
        rows = _copied(source, part)
        _look_over(part, rows)
        settle(part)
        _name(part, target, replace)
    except sqlite3.Error as error:
        raise _problem(error) from error
    except OSError as error:
        raise DatabaseUnreachable(error.strerror or type(error).__name__) from error
    finally:
        with suppress(OSError):
            part.unlink(missing_ok=True)
    return Copy(rows, target.stat().st_size)


def _check_place(source: Path, target: Path, replace: bool) -> None:
    if not target.parent.is_dir():
        raise DatabaseUnreachable("the folder of the copy does not exist")
    if target.is_dir():
        raise InUse("that is a folder")
    beside = [target.with_name(target.name + end) for end in _COMPANIONS]
    own = [source, *(source.with_name(source.name + end) for end in _COMPANIONS)]
    if any(target.resolve() == path.resolve() for path in own):
        raise InUse("those are the records themselves")
    # Such a file left beside a new database would be read into it and destroy it.
    if any(path.exists() for path in beside):
        raise InUse("a program has that file open as its database")
    if target.exists() and not replace:
        raise InTheWay("there is a file of this name")


def _copied(source: Path, part: Path) -> dict[str, int]:
    """Copy all of it; return the rows of each table at that moment."""
    os.close(os.open(part, os.O_CREAT | os.O_EXCL | os.O_WRONLY, 0o600))
    where = f"file:{quote(str(source.absolute()))}?mode=ro"
    with (
        closing(sqlite3.connect(where, uri=True, isolation_level=None)) as reader,
        closing(sqlite3.connect(part, isolation_level=None)) as writer,
    ):
        reader.execute(f"PRAGMA busy_timeout = {BUSY_TIMEOUT_MS}")
        reader.execute("BEGIN")  # rows are counted, and copied, as of one moment
        rows = _count(reader)
        if VERSION_TABLE not in rows:
            raise ForeignDatabase("the file does not hold records of ours")
        # In one step: a copy in several begins anew with every write of somebody else.
        reader.backup(writer, pages=-1)
        reader.execute("ROLLBACK")
        # One file without companions; opening it for the bot turns write-ahead on again.
        writer.execute("PRAGMA journal_mode = DELETE")
    return rows


def _count(connection: sqlite3.Connection) -> dict[str, int]:
    """Return the rows of each table."""
    found = connection.execute(
        "SELECT name FROM sqlite_master WHERE type = 'table' AND name NOT LIKE 'sqlite\\_%'"
        " ESCAPE '\\' ORDER BY name"
    )
    quoted = {name: '"' + name.replace('"', '""') + '"' for (name,) in found.fetchall()}
    return {
        name: int(connection.execute(f"SELECT count(*) FROM {table}").fetchone()[0])
        for name, table in quoted.items()
    }


def _look_over(part: Path, rows: dict[str, int]) -> None:
    with closing(sqlite3.connect(part, isolation_level=None)) as copy:
        found = copy.execute("PRAGMA integrity_check(1)").fetchone()[0]
        if found != "ok":
            raise BrokenCopy(f"the copy is damaged, and so may be the records: {found}")
        if _count(copy) != rows:
            raise BrokenCopy("the copy lacks rows")


def _name(part: Path, target: Path, replace: bool) -> None:
    if not replace:
        try:
            name_new(part, target)
        except FileExistsError as error:
            raise InTheWay("there is a file of this name") from error
        return
    os.replace(part, target)
    with suppress(OSError):
        settle(target.parent)


def _problem(error: sqlite3.Error) -> DatabaseProblem:
    if getattr(error, "sqlite_errorcode", 0) == sqlite3.SQLITE_READONLY_ROLLBACK:
        return CutOff()
    code = getattr(error, "sqlite_errorcode", 0) & 0xFF
    if code in (sqlite3.SQLITE_BUSY, sqlite3.SQLITE_LOCKED):
        return DatabaseBusy("another program keeps the database file from us")
    if code == sqlite3.SQLITE_CORRUPT:
        return BrokenCopy("the records are damaged")
    if code == sqlite3.SQLITE_FULL:
        return DatabaseUnreachable("the disk is full")
    if code == sqlite3.SQLITE_NOTADB:
        return ForeignDatabase("the file is not a database")
    return DatabaseUnreachable(str(error))
