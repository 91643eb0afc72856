"""Databases of every version that there was come up to ours, with all that is in them.

The samples are in fixtures/upgrades; `make_samples` writes the one that a new migration needs.
"""

from __future__ import annotations

import asyncio
import hashlib
import os
import signal
import sqlite3
import subprocess
import sys
from collections.abc import Callable
from contextlib import closing
from datetime import UTC, datetime
from pathlib import Path

import pytest
from alembic.script import ScriptDirectory
from click.testing import CliRunner, Result
from sqlalchemy import Connection, create_engine, inspect, make_url, text

from bot.cli import cli
from bot.conversation.answer import Answer
from bot.conversation.talk import Conversation
from bot.conversation.turn import Incoming
from bot.records import (
    Records,
    copying,
    doctor,
    forget,
    log,
    open_records,
    owners,
    plants,
    transfer,
)
from bot.records.engines import make_migrator, parse
from bot.records.kinds import OwnerKind
from bot.records.models import Base
from bot.records.owners import Address
from bot.records.schema import HEAD, VERSION_TABLE, config

from . import samples
from .make_samples import ANNA, BEN, CLUB
from .records_kit import NOW, Databases
from .samples import Sample, load

SAMPLES = samples.stored()
TOP = Path(__file__).parents[2]
#: What the first form of 0003 kept, of which it cannot be told whose it was.
NOBODYS = {"0003_first": {"posted", "card"}}

Rows = dict[str, tuple[list[str], list[tuple[object, ...]]]]

each_sample = pytest.mark.parametrize("sample", SAMPLES, ids=[s.name for s in SAMPLES])


def file_of(url: str) -> Path:
    return Path(make_url(url).database or "")


async def within(url: str, ask: Callable[[Connection], object]) -> object:
    engine = make_migrator(parse(url))
    async with engine.begin() as connection:
        found = await connection.run_sync(ask)
    await engine.dispose()
    return found


async def rows_of(url: str, wanted: Rows | None = None) -> Rows:
    """All rows as the driver has them; of a later version, the columns that were wanted before."""

    def ask(connection: Connection) -> Rows:
        there = inspect(connection)
        columns = {
            table: [column["name"] for column in columns]
            for (_, table), columns in there.get_multi_columns().items()
            if table != VERSION_TABLE
        }
        if wanted is not None:
            columns = {table: names for table, (names, _) in wanted.items()}
        return {
            table: (names, sorted(map(tuple, _select(connection, table, names)), key=repr))
            for table, names in columns.items()
        }

    found = await within(url, ask)
    assert isinstance(found, dict)
    return found


def _select(connection: Connection, table: str, names: list[str]) -> list[tuple[object, ...]]:
    quoted = ", ".join(f'"{name}"' for name in names)
    return [tuple(row) for row in connection.exec_driver_sql(f"SELECT {quoted} FROM {table}")]


async def version(url: str) -> object:
    return await within(url, lambda c: c.scalar(text(f"SELECT version_num FROM {VERSION_TABLE}")))


async def old(databases: Databases, sample: Sample) -> str:
    """The URL of a database as the sample has it."""
    url = await databases.empty()
    await load(url, sample)
    return url


async def sinkside(*call: str, send: str = "") -> Result:
    """A command of the program, as somebody calls it."""
    return await asyncio.to_thread(CliRunner().invoke, cli, call, input=send)


async def says(records: Records, line: str, person: str, group: str | None = None) -> Answer:
    now = datetime(2026, 3, 20, 9, tzinfo=UTC)
    incoming = Incoming(
        text=line, person=person, channel="telegram", said_at=now, group=group, language="en"
    )
    return await Conversation(records).answer(incoming)


# --- the samples ---------------------------------------------------------------------------------


def test_every_version_that_there_was_has_a_sample() -> None:
    scripts = ScriptDirectory.from_config(config()).walk_revisions()
    assert {sample.revision for sample in SAMPLES} == {script.revision for script in scripts}


def test_a_sample_that_was_stored_is_never_changed() -> None:
    assert {s.path.name: s.checksum() for s in SAMPLES} == samples.kept_sums()


@each_sample
def test_the_migrations_of_a_version_still_make_the_tables_of_its_sample(
    sample: Sample, tmp_path: Path
) -> None:
    engine = create_engine(f"sqlite:///{tmp_path / 'x.sqlite3'}")
    with engine.begin() as connection:
        samples.upgrade_to(connection, sample.revision)
        changes = [s for s in sample.statements() if not s.startswith("INSERT")]
        samples.fill(connection, changes)
        assert samples.shape_of(connection) == sample.shape()
    engine.dispose()


@each_sample
def test_a_sample_has_rows_in_every_table_of_its_version(sample: Sample) -> None:
    tables = {line.partition(":")[0] for line in sample.shape()}
    filled = {s.split()[2] for s in sample.statements() if s.startswith("INSERT")}
    assert filled == tables


# --- up ------------------------------------------------------------------------------------------


@each_sample
async def test_a_sample_comes_up_whole_and_life_goes_on_with_it(
    sqlite_databases: Databases, postgres_databases: Databases, sample: Sample
) -> None:
    found = []
    for databases in (sqlite_databases, postgres_databases):
        url = await old(databases, sample)
        await every_row_comes_up(url, sample)
        records = await open_records(url)
        async with records.reading() as session:
            tables = Base.metadata.sorted_tables
            found.append({table.name: await copying.tally(session, table) for table in tables})
        await a_person_goes_on(url)
        await a_group_goes_on(records)
        await all_is_taken_along(records)
        await somebody_is_forgotten(url, records)
        await records.close()
    assert found[0] == found[1]
    assert (found[0]["owner"].rows, found[0]["plant"].rows) == (3, 6)


async def every_row_comes_up(url: str, sample: Sample) -> None:
    before = await rows_of(url)
    await look_at(url, as_old=sample.revision != HEAD)
    assert await version(url) == sample.revision
    await (await open_records(url)).close()
    assert await version(url) == HEAD
    expected = {t: rows for t, rows in before.items() if t not in NOBODYS.get(sample.name, ())}
    assert await rows_of(url, expected) == expected
    await look_at(url, as_old=False)


async def look_at(url: str, *, as_old: bool) -> None:
    """The doctor finds nothing wrong, and does not look closely at what is to be upgraded."""
    done = await sinkside("doctor", "--database", url)
    assert done.exit_code == 0, done.output
    assert ("of an older program; the next start upgrades" in done.output) == as_old
    assert f"owners: {0 if as_old else 3}. Nothing is wrong." in done.output


async def a_person_goes_on(url: str) -> None:
    call = ("say", "--as", "anna", "--today", "2026-03-20", "--database", url)
    done = await sinkside(*call, send="my plants\nundo\n")
    assert done.exit_code == 0, done.output
    for word in ("3 Phalaenopsis", "Red Ruby", "Łazienka", "Taken back: clear water"):
        assert word in done.output
    assert "Żółty" not in done.output  # lost in February
    names, rows = (await rows_of(url))["plant"]
    clear = {
        row[names.index("id")]: str(row[names.index("last_clear_on")])
        for row in rows
        if row[names.index("owner_id")] == ANNA
    }
    assert (clear[1], clear[2]) == ("None", "2026-03-05")


async def a_group_goes_on(records: Records) -> None:
    assert "4 Vanda" in (await says(records, "my plants", "4012", group="-5077")).reply
    await says(records, "watered the vandas", "4012", group="-5077")
    async with records.reading() as session:
        newest = await log.newest(session, CLUB)
        vandas = await plants.get(session, CLUB, 1)
    assert newest is not None
    assert (newest.id, str(vandas.last_clear_on)) == (4, "2026-03-20")


async def all_is_taken_along(records: Records) -> None:
    async with records.writing() as session:
        exported = await transfer.export_json(session, ANNA)
        preview = transfer.read_export(exported)
        assert preview.problems == ()
        someone = Address(OwnerKind.PERSON, "terminal", "carla")
        other = await owners.find_or_add(session, someone, created_at=NOW)
        await transfer.import_export(session, other.id, preview)
        again = await transfer.export_json(session, other.id)
    assert preview.counts["plants"] == 4
    assert again == exported
    assert other.id == 4  # the counter goes on


async def somebody_is_forgotten(url: str, records: Records) -> None:
    async with records.writing() as session:
        await forget.forget(session, BEN)
    left = await rows_of(url)
    found = {
        (table, row[0])
        for table in ("owner", "card", "posted", "outbox", "memory")
        for row in left[table][1]
        if "4012" in map(str, row)
    }
    assert found == set()


# --- back ----------------------------------------------------------------------------------------

COMMANDS = (
    ("say", "--as", "anna"),
    ("chat",),
    ("serve",),
    ("remind",),
    ("doctor",),
)


@pytest.mark.parametrize("command", COMMANDS, ids=[command[0] for command in COMMANDS])
async def test_a_newer_database_is_refused_in_one_sentence_and_left_alone(
    databases: Databases, command: tuple[str, ...], monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setenv("SINKSIDE_TELEGRAM_TOKEN", "1:nobody")
    url = await databases.migrated()
    await within(url, lambda c: c.execute(text(f"UPDATE {VERSION_TABLE} SET version_num = '0099'")))
    before = await everything(url)
    done = await sinkside(*command, "--database", url, send="my plants\n")
    assert done.exit_code == 2
    assert done.output == (
        "Error: the records at this --database have version 0099 of a newer program, this one "
        f"knows up to {HEAD}: update this program and start it again; nothing was changed\n"
    )
    assert await everything(url) == before


async def everything(url: str) -> object:
    """All that could change: the bytes of a file, the rows of a server."""
    if not url.startswith("sqlite"):
        return await version(url), await rows_of(url)
    return hashlib.sha256(file_of(url).read_bytes()).hexdigest()


async def test_a_newer_database_is_neither_copied_nor_copied_to(databases: Databases) -> None:
    newer, ours, old_one = (
        await databases.migrated(), await databases.migrated(), await old(databases, SAMPLES[0]),
    )  # fmt: skip
    await within(newer, lambda c: c.execute(text(f"UPDATE {VERSION_TABLE} SET version_num = 'x'")))
    for pair in ((newer, ours), (old_one, newer)):
        done = await sinkside("migrate-data", *pair)
        assert done.exit_code == 2
        assert "nothing was copied" in done.output
        assert "update this program" in done.output
    assert await version(old_one) == SAMPLES[0].revision  # not even upgraded on the way


def _text(file: Path) -> None:
    file.write_text("Dear diary, " * 100)


def _empty(file: Path) -> None:
    file.touch()


def _foreign(file: Path) -> None:
    with closing(sqlite3.connect(file)) as made, made:
        made.execute("CREATE TABLE stamps (country text)")


def _versionless(file: Path) -> None:
    with closing(sqlite3.connect(file)) as made, made:
        made.execute("CREATE TABLE plant (id int)")
        made.execute(f"CREATE TABLE {VERSION_TABLE} (version_num text)")


OTHERS = {
    _text: "cannot be used (the file is not a database): send another URL",
    _empty: "are an empty file: put a backup in its place, or delete it to begin anew",
    _foreign: "cannot be used (the database holds tables that are not ours): send another URL",
    _versionless: "cannot be used (the database holds tables that are not ours): send another URL",
}


@pytest.mark.parametrize("make", OTHERS, ids=[make.__name__ for make in OTHERS])
@pytest.mark.parametrize("command", COMMANDS[:3], ids=[command[0] for command in COMMANDS[:3]])
async def test_a_file_that_is_something_else_is_refused_in_one_sentence_and_left_alone(
    tmp_path: Path,
    make: Callable[[Path], None],
    command: tuple[str, ...],
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    monkeypatch.setenv("SINKSIDE_TELEGRAM_TOKEN", "1:nobody")
    file = tmp_path / "x.db"
    make(file)
    before = file.read_bytes()
    done = await sinkside(*command, "--database", f"sqlite:///{file}", send="my plants\n")
    assert done.exit_code == 2
    assert OTHERS[make] in done.output
    assert done.output.endswith("nothing was changed\n")
    assert done.output.count("\n") == 1
    assert file.read_bytes() == before
    assert [path.name for path in tmp_path.iterdir()] == ["x.db"]


@pytest.mark.parametrize("make", OTHERS, ids=[make.__name__ for make in OTHERS])
async def test_the_doctor_refuses_a_file_that_is_something_else(
    tmp_path: Path, make: Callable[[Path], None]
) -> None:
    make(tmp_path / "x.db")
    before = (tmp_path / "x.db").read_bytes()
    done = await sinkside("doctor", "--database", f"sqlite:///{tmp_path / 'x.db'}")
    assert done.exit_code == 2
    assert done.output.startswith("Error: the records at this --database cannot be used (")
    assert done.output.count("\n") == 1
    assert (tmp_path / "x.db").read_bytes() == before


# --- cut off -------------------------------------------------------------------------------------

#: Opens the records, and dies once the version is written down that comes before the last ones.
#: With a cache this small SQLite writes to the file long before the end, as with a large one.
DYING = """
import asyncio, os, signal, sys
from sqlalchemy import event
from sqlalchemy.engine import Engine
from sqlalchemy.pool import Pool
from bot.records import open_records

@event.listens_for(Pool, "connect")
def small(raw, _record):
    raw.execute("PRAGMA cache_size = 1")

@event.listens_for(Engine, "after_cursor_execute")
def die(_connection, _cursor, statement, parameters, _context, _many):
    if statement.startswith("UPDATE records_version") and sys.argv[2] in statement:
        os.kill(os.getpid(), signal.SIGKILL)

asyncio.run(open_records(sys.argv[1]))
"""


async def killed_in_upgrade(url: str, after: str) -> None:
    done = await asyncio.to_thread(
        subprocess.run,
        [sys.executable, "-c", DYING, url, after],
        cwd=TOP,
        env={**os.environ, "PYTHONPATH": str(TOP)},
        capture_output=True,
        timeout=60,
        check=False,
    )
    assert done.returncode == -signal.SIGKILL, done.stderr.decode()


@pytest.mark.parametrize(
    ("mode", "beside", "after"),
    [
        ("delete", "-journal", "0005"),  # a backup that was put back
        ("wal", "-wal", "0002"),  # one that was in use
    ],
)
async def test_an_upgrade_that_was_killed_is_done_by_the_next_start(
    sqlite_databases: Databases, tmp_path: Path, mode: str, beside: str, after: str
) -> None:
    url = await old(sqlite_databases, SAMPLES[0])
    rows = await rows_of(url)
    with closing(sqlite3.connect(file_of(url))) as connection:
        connection.execute(f"PRAGMA journal_mode = {mode}")
    await killed_in_upgrade(url, after)
    left = file_of(url).with_name(file_of(url).name + beside)
    assert left.stat().st_size > 4096  # it really had begun to write
    if mode == "delete":
        await who_only_looks_says_what_to_do(url, tmp_path)
    else:
        await look_at(url, as_old=True)
    await (await open_records(url)).close()
    assert await version(url) == HEAD
    assert await rows_of(url, rows) == rows
    await look_at(url, as_old=False)


async def who_only_looks_says_what_to_do(url: str, folder: Path) -> None:
    before = await everything(url)
    for call in (("doctor",), ("backup", str(folder / "copy.db"))):
        done = await sinkside(*call, "--database", url)
        assert done.exit_code == 2
        assert "start `sinkside chat` or `sinkside serve` once" in done.output
        assert done.output.count("\n") == 1
    assert await everything(url) == before
    assert list(folder.iterdir()) == []


async def test_a_first_start_that_was_killed_leaves_no_file_that_the_next_one_refuses(
    tmp_path: Path,
) -> None:
    url = f"sqlite:///{tmp_path / 'records.db'}"
    await killed_in_upgrade(url, "0004")
    assert not (tmp_path / "records.db").exists()
    done = await sinkside("say", "--as", "anna", "--database", url, send="my plants\n")
    assert done.exit_code == 0, done.output
    assert (await doctor.examine(url)).sound
