"""The stored samples of old databases: reading them, loading them, what tables they are for."""

from __future__ import annotations

import hashlib
from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path

from alembic import command
from sqlalchemy import Connection, inspect

from bot.records import schema
from bot.records.engines import make_migrator, parse
from bot.records.schema import VERSION_TABLE

FOLDER = Path(__file__).parents[2] / "fixtures" / "upgrades"
SUMS = FOLDER / "SHA256SUMS"

_SHAPE = "-- table "


@dataclass(frozen=True, slots=True)
class Sample:
    """A database as an old program left it: SQL for both databases."""

    path: Path

    @property
    def name(self) -> str:
        """Its revision; `0003_first` is of a form of 0003 that was changed afterwards."""
        return self.path.stem

    @property
    def revision(self) -> str:
        """The version that such a database says it has."""
        return self.name.partition("_")[0]

    def statements(self) -> Iterator[str]:
        """What fills a database of this revision."""
        statement: list[str] = []
        for line in self.path.read_text(encoding="utf-8").splitlines():
            if line.startswith("--"):
                continue
            statement.append(line.removesuffix(";"))
            if line.endswith(";"):
                yield "\n".join(statement)
                statement = []

    def shape(self) -> list[str]:
        """The tables that it was written for."""
        lines = self.path.read_text(encoding="utf-8").splitlines()
        return [line.removeprefix(_SHAPE) for line in lines if line.startswith(_SHAPE)]

    def checksum(self) -> str:
        """Of its bytes."""
        return hashlib.sha256(self.path.read_bytes()).hexdigest()


def stored() -> list[Sample]:
    """Every sample, oldest first."""
    return [Sample(path) for path in sorted(FOLDER.glob("*.sql"))]


def kept_sums() -> dict[str, str]:
    """The checksums that the samples had when they were stored, by file name."""
    lines = SUMS.read_text(encoding="utf-8").splitlines()
    return {name: checksum for checksum, name in (line.split("  ") for line in lines)}


async def load(url: str, sample: Sample) -> None:
    """Make an empty database what the sample holds, at its revision."""
    engine = make_migrator(parse(url))
    async with engine.begin() as connection:
        await connection.run_sync(upgrade_to, sample.revision)
        await connection.run_sync(fill, list(sample.statements()))
    await engine.dispose()


def upgrade_to(connection: Connection, revision: str) -> None:
    """Make the tables of a revision."""
    settings = schema.config()
    settings.attributes["connection"] = connection
    command.upgrade(settings, revision)


def fill(connection: Connection, statements: list[str]) -> None:
    """Run statements; an instant without a zone is one in UTC, as SQLite keeps it."""
    if connection.dialect.name == "postgresql":
        connection.exec_driver_sql("SET LOCAL TIME ZONE 'UTC'")
    for statement in statements:
        connection.exec_driver_sql(statement)


def shape_of(connection: Connection) -> list[str]:
    """The tables with their columns and indices, a line a table; for SQLite."""
    there = inspect(connection)
    lines = []
    for table in sorted(set(there.get_table_names()) - {VERSION_TABLE}):
        columns = [
            f"{column['name']} {column['type']}{'' if column['nullable'] else '!'}"
            for column in there.get_columns(table)
        ]
        points = [
            f"{'+'.join(key['constrained_columns'])}>{key['referred_table']}"
            for key in there.get_foreign_keys(table)
        ]
        indices = [
            f"{index['name']}({'+'.join(str(name) for name in index['column_names'])})"
            for index in there.get_indexes(table)
        ]
        parts = (columns, sorted(points), sorted(indices))
        lines.append(f"{table}: " + "; ".join(", ".join(part) for part in parts if part))
    return lines
