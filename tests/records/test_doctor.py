"""Whatever does not hold of a database is found, named and counted; nothing is changed."""

from __future__ import annotations

import sqlite3
import time
from collections.abc import Iterable
from contextlib import closing
from dataclasses import replace
from pathlib import Path

import asyncpg  # type: ignore[import-untyped]
import pytest

from bot.records import doctor
from bot.records.doctor import Finding
from bot.records.errors import DatabaseUnreachable, ForeignDatabase, NewerDatabase

from .records_kit import Databases
from .test_backup import damage, file_of
from .test_copying import fill

NOW_MS = time.time_ns() // 1_000_000
LONG_AGO = 1_000


async def meddle(url: str, *statements: str) -> None:
    """Change a database behind the program's back, past its foreign keys and triggers."""
    if url.startswith("sqlite"):
        with closing(sqlite3.connect(file_of(url))) as connection, connection:
            for statement in statements:
                connection.execute(statement)
        return
    connection = await asyncpg.connect(url)
    try:
        await connection.execute("SET session_replication_role = replica")
        for statement in statements:
            await connection.execute(statement)
    finally:
        await connection.close()


async def wrong(url: str) -> set[tuple[str, str, int]]:
    report = await doctor.examine(url)
    assert report.sound is not any(not f.harmless for f in report.findings)
    return {(f.code, f.table, f.rows) for f in report.findings if not f.harmless}


@pytest.fixture
async def url(databases: Databases) -> str:
    """Records as they are in use: nothing in the post is old."""
    made = await databases.migrated()
    await fill(made)
    await meddle(
        made,
        f"UPDATE inbox SET received_ms = {NOW_MS}",
        f"UPDATE outbox SET created_ms = {NOW_MS}",
    )
    return made


async def test_records_in_use_are_sound(url: str) -> None:
    report = await doctor.examine(url)
    assert report.sound
    assert report.owners == 2
    assert [(f.code, f.rows) for f in report.findings] == [("unreachable", 1)]


CASES: dict[str, tuple[Iterable[str], tuple[str, str, int]]] = {
    "an owner is gone": (
        [f"DELETE FROM {table} WHERE owner_id = 2"
         for table in ("ping", "memory", "event", "reminder", "plant", "place", "water")]
        + ["DELETE FROM owner WHERE id = 2"],
        ("ownerless", "product", 1),
    ),
    "a plant that the log names is gone": (
        ["DELETE FROM plant WHERE owner_id = 2"], ("points-nowhere", "event", 3),
    ),
    "a plant stands nowhere": (
        ["UPDATE plant SET place_id = 77 WHERE owner_id = 1"], ("points-nowhere", "plant", 1),
    ),
    "the first entry of an utterance is gone": (
        ["DELETE FROM event WHERE owner_id = 2 AND id = 1"], ("no-utterance", "event", 7),
    ),
    "a plant was fed and does not know": (
        ["UPDATE plant SET last_fed_on = NULL WHERE owner_id = 2"], ("date-behind-log", "plant", 1),
    ),
    "a plant knows only an earlier watering": (
        ["UPDATE plant SET last_clear_on = '2020-01-01' WHERE owner_id = 2"],
        ("date-behind-log", "plant", 1),
    ),
    "an entry takes itself back": (
        ["INSERT INTO event (owner_id, id, batch, kind, happened_on, said_at, payload, reverses) "
         "VALUES (2, 90, 90, 'moved', '2026-03-01', '2026-03-01 08:00:00', '{}', 90)"],
        ("takes-back-wrongly", "event", 1),
    ),
    "an entry takes back a taking back": (
        ["INSERT INTO event (owner_id, id, batch, kind, happened_on, said_at, payload, reverses) "
         "SELECT 1, 90, 90, 'moved', '2026-03-01', '2026-03-01 08:00:00', '{}', max(id) "
         "FROM event WHERE owner_id = 1 AND reverses IS NOT NULL"],
        ("takes-back-wrongly", "event", 1),
    ),
    "an utterance is named after one that is not its first": (
        ["INSERT INTO event (owner_id, id, batch, kind, happened_on, said_at, payload) "
         "VALUES (2, 90, 2, 'moved', '2026-03-01', '2026-03-01 08:00:00', '{}')"],
        ("no-utterance", "event", 1),
    ),
    "an update is in no state": (
        ["UPDATE inbox SET state = 'lost' WHERE update_id = 3"], ("no-such-state", "inbox", 1),
    ),
    "a letter is in no state": (
        ["UPDATE outbox SET state = 'done' WHERE id = 1"], ("no-such-state", "outbox", 1),
    ),
    "updates were given up": (
        ["UPDATE inbox SET state = 'dead' WHERE update_id > 2"], ("dead", "inbox", 2),
    ),
    "a letter was given up": (
        ["UPDATE outbox SET state = 'dead' WHERE id = 1"], ("dead", "outbox", 1),
    ),
    "an open update lost its text": (
        ["UPDATE inbox SET body = NULL WHERE update_id = 4"], ("empty", "inbox", 1),
    ),
    "an update is done and its text was kept": (
        ["UPDATE inbox SET state = 'done' WHERE update_id = 4"], ("text-kept", "inbox", 1),
    ),
    "a reminder comes and nobody knows when": (
        ["UPDATE reminder SET due_ms = NULL WHERE owner_id = 2"], ("no-moment", "reminder", 1),
    ),
    "a reminder has ended and still comes": (
        ["UPDATE reminder SET state = 'ended' WHERE owner_id = 2"], ("no-moment", "reminder", 1),
    ),
    "a reminder is in no state": (
        ["UPDATE reminder SET state = 'asleep' WHERE owner_id = 2"],
        ("no-such-state", "reminder", 1),
    ),
    "a reminder is of another channel": (
        ["UPDATE reminder SET channel = 'telegram' WHERE owner_id = 2"],
        ("other-channel", "reminder", 1),
    ),
    "nobody reminds": (
        ["UPDATE owner SET channel = 'telegram'", "UPDATE reminder SET channel = 'telegram'",
         f"UPDATE reminder SET due_ms = {LONG_AGO} WHERE owner_id = 2"],
        ("stuck", "reminder", 1),
    ),
    "a ping is in no state": (
        ["UPDATE ping SET state = 'gone' WHERE owner_id = 2"], ("no-such-state", "ping", 1),
    ),
    "a ping was promised and not sent": (
        [f"UPDATE ping SET state = 'open', due_ms = {LONG_AGO} WHERE owner_id = 2"],
        ("stuck", "ping", 1),
    ),
    "a ping is of no reminder": (
        ["UPDATE ping SET reminder_id = 9 WHERE owner_id = 2"], ("points-nowhere", "ping", 1),
    ),
    "nobody works": (
        [f"UPDATE inbox SET received_ms = {LONG_AGO} WHERE state = 'open'"], ("stuck", "inbox", 4),
    ),
    "nobody sends": (
        [f"UPDATE outbox SET created_ms = {LONG_AGO}"], ("stuck", "outbox", 2),
    ),
}  # fmt: skip


@pytest.mark.parametrize("case", CASES)
async def test_what_does_not_hold_is_found_and_counted(url: str, case: str) -> None:
    statements, expected = CASES[case]
    await meddle(url, *statements)
    assert await wrong(url) == {expected}


async def test_several_things_are_found_at_once(url: str) -> None:
    cases = [
        CASES[case]
        for case in (
            "a plant stands nowhere", "a plant was fed and does not know",
            "an update is in no state", "a letter was given up",
        )
    ]  # fmt: skip
    for statements, _expected in cases:
        await meddle(url, *statements)
    assert await wrong(url) == {expected for _statements, expected in cases}


NOTES = {
    "a ping could not be sent, as its chat was blocked": (
        "UPDATE ping SET state = 'failed' WHERE owner_id = 1", Finding("dead", "ping", 1),
    ),
    "a plant knows of a flush that nobody logged": (
        "UPDATE plant SET last_flush_on = '2031-01-01' WHERE owner_id = 2",
        Finding("date-ahead-of-log", "plant", 1, "last_flush_on"),
    ),
    "a plant was added by nobody": (
        "INSERT INTO plant (owner_id, id, count, added_on, present) "
        "VALUES (2, 90, 1, '2026-03-01', true)",
        Finding("no-entry", "plant", 1),
    ),
}  # fmt: skip


@pytest.mark.parametrize("case", NOTES)
async def test_what_people_can_bring_about_is_worth_knowing_and_nothing_wrong(
    url: str, case: str
) -> None:
    statement, expected = NOTES[case]
    await meddle(url, statement)
    report = await doctor.examine(url)
    assert report.sound
    assert replace(expected, harmless=True) in report.findings


async def test_what_was_undone_sets_no_date(url: str) -> None:
    # `fill` took back what was said to owner 1, the feed with it.
    await meddle(url, "UPDATE plant SET last_fed_on = NULL WHERE owner_id = 1")
    assert await wrong(url) == set()


async def test_what_waits_for_somebody_to_speak_is_not_stuck(url: str) -> None:
    await meddle(url, f"UPDATE reminder SET due_ms = {LONG_AGO} WHERE owner_id = 2")
    assert await wrong(url) == set()  # the terminal cannot send of its own accord


async def test_a_counter_that_is_behind_is_found(postgres_databases: Databases) -> None:
    made = await postgres_databases.migrated()
    await fill(made)
    await meddle(
        made,
        f"UPDATE inbox SET received_ms = {NOW_MS}",
        f"UPDATE outbox SET created_ms = {NOW_MS}",
        "SELECT setval('owner_id_seq', 1)",
    )
    assert await wrong(made) == {("counter-behind", "owner", 2)}


@pytest.mark.parametrize("part", ["event", "plant", "ix_inbox_open"])
async def test_a_damaged_file_is_said_to_be_damaged(
    sqlite_databases: Databases, tmp_path: Path, part: str
) -> None:
    made = await sqlite_databases.migrated()
    await fill(made)
    damage(file_of(made), tmp_path / "damaged.db", part)
    report = await doctor.examine(f"sqlite:///{tmp_path / 'damaged.db'}")
    assert not report.sound
    assert {f.code for f in report.findings} == {"damaged"}


async def test_looking_changes_nothing(sqlite_databases: Databases) -> None:
    made = await sqlite_databases.migrated()
    await fill(made)
    before = file_of(made).read_bytes()
    await doctor.examine(made)
    assert file_of(made).read_bytes() == before


async def test_an_older_database_is_left_as_old_as_it_is(databases: Databases) -> None:
    made = await databases.migrated()
    await meddle(made, "UPDATE records_version SET version_num = '0002'")
    for _ in range(2):
        report = await doctor.examine(made)
        assert report.findings == [Finding("older", detail="0002", harmless=True)]
        assert report.sound


async def test_what_cannot_be_looked_over_is_said(databases: Databases, tmp_path: Path) -> None:
    made = await databases.migrated()
    await meddle(made, "UPDATE records_version SET version_num = '0999'")
    with pytest.raises(NewerDatabase):
        await doctor.examine(made)
    if made.startswith("sqlite"):
        with pytest.raises(DatabaseUnreachable):
            await doctor.examine(f"sqlite:///{tmp_path / 'none.db'}")
        assert list(tmp_path.iterdir()) == []
    else:
        with pytest.raises(ForeignDatabase):
            await doctor.examine(await databases.empty())


async def test_a_column_that_is_missing_is_found(databases: Databases) -> None:
    made = await databases.migrated()
    await meddle(made, "ALTER TABLE plant DROP COLUMN detail")
    assert await wrong(made) == {("no-column", "plant", 0)}


async def test_a_table_that_is_missing_is_found(databases: Databases) -> None:
    made = await databases.migrated()
    await meddle(made, "DROP TABLE tap")
    assert await wrong(made) == {("no-table", "tap", 0)}
