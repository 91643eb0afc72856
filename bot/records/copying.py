"""All records from one database to another, of whichever kind, and the proof that they arrived.

What it promises:

- The source is read as of one moment, and is not changed.
- The target is written in one transaction, with its tables locked: a break leaves it empty.
- That transaction is kept only after every table was read back and has the rows and the
  checksum of the source. A checksum is a sum over the rows, so their order is no matter, of
  their values as Python has them, so the kind of database is none either.
- Numbers that were given once are not given again: the counters come along.
- Memory is bounded by a batch, sized by the longest row of the table.
"""

from __future__ import annotations

import enum
import hashlib
import json
from collections.abc import AsyncIterator, Callable, Sequence
from dataclasses import dataclass
from datetime import date, datetime
from typing import Any

from sqlalchemy import (
    JSON,
    URL,
    Column,
    Double,
    String,
    Table,
    Text,
    cast,
    func,
    insert,
    inspect,
    select,
    text,
    tuple_,
)
from sqlalchemy.exc import DBAPIError
from sqlalchemy.ext.asyncio import AsyncSession

from . import schema
from .database import connecting, told_in_our_words
from .engines import file_of, is_sqlite, make_engines, make_onlooker, parse
from .errors import DatabaseProblem
from .models import Base

#: A batch takes about so much [bytes], and at most so many rows.
BATCH_BYTES = 8_000_000
BATCH_ROWS = 1_000
#: A row is taken as this much longer than its texts [bytes].
_ROW_BYTES = 200

_SUM = 2**128


class SameDatabase(DatabaseProblem):
    """Source and target are one."""


class NothingThere(DatabaseProblem):
    """The source holds no records."""


class NotEmpty(DatabaseProblem):
    """The target has records, which would be mixed with those that come."""

    def __init__(self, rows: dict[str, int]) -> None:
        super().__init__("the target already has records")
        self.rows = rows


class DoesNotFit(DatabaseProblem):
    """The target does not take a row, such as a text with a character it cannot keep."""

    def __init__(self, table: str, reason: str) -> None:
        super().__init__(f"{table}: {reason}")
        self.table = table


class NotTheSame(DatabaseProblem):
    """What was read back from the target is not what was sent."""

    def __init__(self, table: str, sent: Tally, found: Tally) -> None:
        super().__init__(f"{table}: {sent} was sent, {found} came back")
        self.table = table


@dataclass(frozen=True, slots=True)
class Tally:
    """How many rows a table has, and their checksum, whatever their order."""

    rows: int = 0
    checksum: int = 0

    def with_more(self, rows: Sequence[Any], canon: Callable[[Any], bytes]) -> Tally:
        """Take in more rows."""
        total = self.checksum
        for row in rows:
            total += int.from_bytes(hashlib.blake2b(canon(row), digest_size=16).digest(), "big")
        return Tally(self.rows + len(rows), total % _SUM)

    def __str__(self) -> str:
        return f"{self.rows} rows, {self.checksum:032x}"


async def copy_records(
    source: str, target: str, told: Callable[[str, Tally], None] | None = None
) -> dict[str, Tally]:
    """Copy all records to an empty database.

    Parameters
    ----------
    source, target : URLs, as `open_records` takes them
    told : is told of each table that has been copied, in the order of copying

    Returns
    -------
    dict
        What each table holds now, in both.

    Raises
    ------
    SameDatabase, NothingThere, NotEmpty
        It cannot be done with these two; nothing was written.
    DoesNotFit, NotTheSame
        It did not succeed; the target is as empty as it was.
    DatabaseProblem
        One of them cannot serve; the target is as empty as it was.
    """
    a, b = parse(source), parse(target)
    if _same(a, b):
        raise SameDatabase("both are the same database")
    with told_in_our_words(), connecting():
        await _check_source(a)
        for url in (a, b):  # before either is upgraded
            await schema.check(url)
        await schema.bring_up(a)
        await schema.bring_up(b)
        from_engines, to_engines = make_engines(a), make_engines(b)
        try:
            async with (
                AsyncSession(from_engines.reading) as reader,
                AsyncSession(to_engines.writing) as to,
                to.begin(),
            ):
                return await _copied(reader, to, told or (lambda _table, _tally: None))
        finally:
            await from_engines.dispose()
            await to_engines.dispose()


async def tally(session: AsyncSession, table: Table) -> Tally:
    """Count and sum a table, batch by batch."""
    found, canon = Tally(), _canon(table)
    async for rows in _batches(session, table):
        found = found.with_more(rows, canon)
    return found


# --- before --------------------------------------------------------------------------------------


def _same(a: URL, b: URL) -> bool:
    if is_sqlite(a) and is_sqlite(b):
        return file_of(a).resolve() == file_of(b).resolve()
    return (a.host, a.port, a.database, dict(a.query)) == (
        b.host, b.port, b.database, dict(b.query),
    ) and is_sqlite(a) == is_sqlite(b)  # fmt: skip


async def _check_source(url: URL) -> None:
    """Make sure that there is something to copy, before anything could be created there."""
    if is_sqlite(url) and not file_of(url).is_file():
        raise NothingThere("there is no such file")
    engine = make_onlooker(url)
    try:
        async with engine.connect() as connection:
            tables = await connection.run_sync(lambda sync: inspect(sync).get_table_names())
    finally:
        await engine.dispose()
    if schema.VERSION_TABLE not in tables:
        raise NothingThere("there are no records of ours in it")


async def _lock_empty(to: AsyncSession) -> None:
    """Keep others out of the target until the end, and make sure that it is empty.

    On SQLite the transaction began with the lock already.
    """
    tables = Base.metadata.sorted_tables
    if dialect_of(to) == "postgresql":
        names = ", ".join(f'"{table.name}"' for table in tables)
        await to.execute(text(f"LOCK TABLE {names} IN SHARE ROW EXCLUSIVE MODE"))
    found = {}
    for table in tables:
        if number := await to.scalar(select(func.count()).select_from(table)):
            found[table.name] = number
    if found:
        raise NotEmpty(found)


# --- copying -------------------------------------------------------------------------------------


async def _copied(
    reader: AsyncSession, to: AsyncSession, told: Callable[[str, Tally], None]
) -> dict[str, Tally]:
    await _lock_empty(to)
    sent: dict[str, Tally] = {}
    for table in Base.metadata.sorted_tables:  # those that others point to come first
        sent[table.name] = await _send(reader, to, table)
        found = await tally(to, table)
        if found != sent[table.name]:
            raise NotTheSame(table.name, sent[table.name], found)
        told(table.name, found)
    for column in counted_keys():
        await _carry_counter(reader, to, column)
    return sent


async def _send(reader: AsyncSession, to: AsyncSession, table: Table) -> Tally:
    sent, canon, statement = Tally(), _canon(table), insert(table)
    async for rows in _batches(reader, table):
        try:
            await to.execute(statement, [dict(row._mapping) for row in rows])
        except DBAPIError as error:
            if error.connection_invalidated or not _is_of_the_row(error):
                raise
            raise DoesNotFit(table.name, _reason(error)) from error
        sent = sent.with_more(rows, canon)
    return sent


async def _batches(session: AsyncSession, table: Table) -> AsyncIterator[Sequence[Any]]:
    """Give all rows by their key, so that a batch begins where the last one ended.

    On both databases this walks the index of the key, without a cursor that would be kept.
    """
    key = list(table.primary_key.columns)
    most = await _rows_a_batch(session, table)
    query = select(table).order_by(*key).limit(most)
    step = query
    while True:
        rows = (await session.execute(step)).all()
        if rows:
            yield rows
        if len(rows) < most:
            return
        last = [rows[-1]._mapping[column] for column in key]
        step = query.where(tuple_(*key) > tuple_(*last))


async def _rows_a_batch(session: AsyncSession, table: Table) -> int:
    """How many rows are read at once, by the longest of them."""
    texts = [c for c in table.columns if isinstance(c.type, String | Text | JSON)]
    if not texts:
        return BATCH_ROWS
    # By the column's own text: JSON is not to be read for its length.
    length = sum((func.coalesce(func.length(cast(c, Text)), 0) for c in texts[1:]),
                 func.coalesce(func.length(cast(texts[0], Text)), 0))  # fmt: skip
    longest = await session.scalar(select(func.max(length)).select_from(table)) or 0
    return max(1, min(BATCH_ROWS, BATCH_BYTES // (int(longest) + _ROW_BYTES)))


# --- checksums -----------------------------------------------------------------------------------


def _canon(table: Table) -> Callable[[Any], bytes]:
    """Return what writes a row of the table as bytes, the same for both databases."""
    writers = [_writer(column) for column in table.columns]

    def canon(row: Any) -> bytes:
        values = [w(v) for w, v in zip(writers, row, strict=True)]
        return json.dumps(values, sort_keys=True, separators=(",", ":")).encode()

    return canon


def _writer(column: Column[Any]) -> Callable[[Any], Any]:
    if isinstance(column.type, Double):
        return lambda value: None if value is None else repr(float(value))
    if isinstance(column.type, JSON):
        return lambda value: value
    return _plain


def _plain(value: Any) -> Any:
    if isinstance(value, enum.Enum):
        return value.value
    if isinstance(value, datetime | date):
        return value.isoformat()  # instants come in UTC from both
    return value


# --- counters ------------------------------------------------------------------------------------


def counted_keys() -> list[Column[Any]]:
    """The keys whose numbers the database gives."""
    return [
        column
        for table in Base.metadata.sorted_tables
        if (column := table.autoincrement_column) is not None
    ]


async def _carry_counter(reader: AsyncSession, to: AsyncSession, column: Column[Any]) -> None:
    """No number that the source has given is given again, not even that of a row long gone."""
    name = column.table.name
    given = max(await last_given(reader, column), await to.scalar(select(func.max(column))) or 0)
    if given < 1:
        return
    if dialect_of(to) == "postgresql":
        await to.execute(
            text("SELECT setval(pg_get_serial_sequence(:table, :column), :given)"),
            {"table": f'"{name}"', "column": column.name, "given": given},
        )
        return
    await to.execute(text("DELETE FROM sqlite_sequence WHERE name = :name"), {"name": name})
    await to.execute(
        text("INSERT INTO sqlite_sequence (name, seq) VALUES (:name, :given)"),
        {"name": name, "given": given},
    )


def dialect_of(session: AsyncSession) -> str:
    """Which of the two databases a session is with."""
    return session.get_bind().dialect.name


async def last_given(reader: AsyncSession, column: Column[Any]) -> int:
    """The last number that the database gave, 0 where it gave none."""
    name = column.table.name
    if dialect_of(reader) != "postgresql":
        query = text("SELECT seq FROM sqlite_sequence WHERE name = :name")
        return await reader.scalar(query, {"name": name}) or 0
    query = text("SELECT pg_get_serial_sequence(:table, :column)")
    sequence = await reader.scalar(query, {"table": f'"{name}"', "column": column.name})
    last = text(f"SELECT CASE WHEN is_called THEN last_value ELSE 0 END FROM {sequence}")
    return await reader.scalar(last) or 0


# --- errors --------------------------------------------------------------------------------------


def _is_of_the_row(error: DBAPIError) -> bool:
    """Whether a value was refused, rather than the database in trouble.

    PostgreSQL: data exception (22), integrity (23); the driver itself raises its own DataError.
    """
    state = getattr(error.orig, "sqlstate", None) or ""
    kind = type(error).__name__
    return state[:2] in {"22", "23"} or kind in {"DataError", "IntegrityError"}


def _reason(error: DBAPIError) -> str:
    """What was wrong, without the values, which are people's own."""
    state = getattr(error.orig, "sqlstate", None)
    kind = type(getattr(error.orig, "__cause__", None) or error.orig).__name__
    return f"a row does not fit ({kind}{f', {state}' if state else ''})"


__all__ = [
    "BATCH_BYTES", "BATCH_ROWS", "DoesNotFit", "NotEmpty", "NotTheSame", "NothingThere",
    "SameDatabase", "Tally", "copy_records", "counted_keys", "dialect_of",
    "last_given", "tally",
]  # fmt: skip
