"""All records go from one database to another, either way, or none do."""

from __future__ import annotations

import asyncio
import signal
import subprocess
import sys
from collections.abc import Sequence
from datetime import UTC, date, datetime
from pathlib import Path
from typing import Any

import pytest
from sqlalchemy import Table, delete, select, text

from bot.records import (
    Records,
    copying,
    log,
    memory,
    open_records,
    owners,
    places,
    plants,
    post,
    products,
    reminders,
    waters,
)
from bot.records.copying import NotEmpty, NothingThere, NotTheSame, SameDatabase, Tally
from bot.records.errors import DatabaseUnreachable, UnsupportedUrl
from bot.records.kinds import EventKind, Hemisphere, OwnerKind, PingState, ReminderKind
from bot.records.log import Entry
from bot.records.models import Base, Card, Inbox, Outbox, Owner, Pace, Ping, Plant
from bot.records.owners import Address

from .records_kit import ADDRESS, NEIGHBOUR, NOW, TODAY, Databases, begin
from .test_backup import everything

TOP = Path(__file__).parents[2]
BOTH = ("sqlite", "postgresql")
SOURCE = "telegram:4242"
#: Everything a text can be that both databases take.
ODD = "Süße 🌸 'quoted' \"twice\" back\\slash\ttab\nline; DROP TABLE plant; -- %s :x {} \u202e é"
BIG = ODD * 40_000  # some megabytes


@pytest.fixture
def kinds(sqlite_databases: Databases, postgres_databases: Databases) -> dict[str, Databases]:
    return {"sqlite": sqlite_databases, "postgresql": postgres_databases}


async def fill(url: str) -> None:
    """Two owners, one more that is forgotten, and a row of every kind of table and value."""
    records = await open_records(url)
    async with records.writing() as session:
        await _fill_owners(session)
        await _fill_post(session)
    async with records.writing() as session:
        await log.undo(session, 1, said_at=NOW)
    async with records.writing() as session:
        gone = Address(OwnerKind.GROUP, "telegram", "-100")
        owner = await owners.find_or_add(session, gone, created_at=NOW)
        await session.execute(delete(Owner).where(Owner.id == owner.id))
    await records.close()


async def _fill_owners(session: Any) -> None:
    for address in (ADDRESS, NEIGHBOUR):
        owner = await owners.find_or_add(
            session, address, created_at=datetime(2026, 3, 1, 8, 30, 1, 123456, tzinfo=UTC)
        )
        said = await begin(session, owner.id)
        await owners.change_settings(said, hemisphere=Hemisphere.SOUTH, scale_step_g=0.1)
        sill = await places.find_or_add(session, owner.id, "Süd-Fenster 🪟")
        rain = await waters.add(said, kind="rain", ions={"ca": 0.1})
        await waters.make_default(said, rain.id)
        await products.add(said, name="blue tub", n=20, extras={"mg": 1.5}, trace_elements=False)
        plant = await plants.add(
            said, name="Süße 🌸", pot_cm=1 / 3, water_ml=0.1 + 0.2, growth_since=date(1999, 12, 31),
            place_id=sill.id, water_id=rain.id,
        )  # fmt: skip
        details = {"text": ODD, "null": None, "deep": {"z": [1, 1.0, 0.1, True, 2**60], "a": {}}}
        await log.record(said, [Entry(EventKind.FED, plant.id, details=details)])
        await log.record(said, [Entry(EventKind.CLEAR, plant.id, on=TODAY)])
        reminder = await reminders.add(
            said, person="anna", kind=ReminderKind.OTHER, text="Süße wässern", zone="Asia/Tokyo",
            target={"plants": [plant.id], "place": None}, rule="FREQ=WEEKLY", offered=True,
            start="2026-03-01T09:00:00", due_ms=2**42, due_local="2109-05-15T07:35:11",
        )  # fmt: skip
        session.add(Ping(owner_id=owner.id, id=1, reminder_id=reminder.id, due_ms=2**41,
                         state=PingState.SENT, message_id=2**52))  # fmt: skip
        await memory.remember(session, owner.id, "anna", request={"": ODD}, said_at=NOW)


async def _fill_post(session: Any) -> None:
    bodies = [{"update_id": n, "message": {"text": ODD, "surrogate": "\ud83c"}} for n in range(5)]
    arrived = [post.Arrived(n, "1:1" if n else "2:2", body) for n, body in enumerate(bodies)]
    await post.take_in(session, SOURCE, arrived, now_ms=2**41)
    first = await post.claim(session, SOURCE, "w", now_ms=2**41, until_ms=2**42, most=1)
    await post.finish(session, first[0].id, "w")
    letters = [post.Letter("1", "sendMessage", {"chat_id": 2**52, "text": ODD}, a)
               for a in (None, {"kind": "dose"})]  # fmt: skip
    await post.promise(session, SOURCE, letters, now_ms=1)
    await post.lose(session, SOURCE, -(2**52), now_ms=2)
    answer = {"chat_id": 1, "message_id": 2, "answer_id": 3, "person": "anna", "kind": "dose"}
    await post.note_answers(session, SOURCE, [answer], now_ms=3)
    session.add(Pace(source=SOURCE, lane="*", free_ms=0.1, full_ms=2.0**41 + 0.3))
    await post.tap(session, SOURCE, 1, 2, "more", now_ms=4)
    for name, text_ in (("big", BIG), ("empty", ""), ("odd", ODD)):
        await post.keep_card(session, name, text_, ADDRESS, now_ms=5)


@pytest.mark.parametrize("to", BOTH)
@pytest.mark.parametrize("from_", BOTH)
async def test_everything_arrives_whichever_way(
    kinds: dict[str, Databases], from_: str, to: str
) -> None:
    source, target = await kinds[from_].migrated(), await kinds[to].empty()
    await fill(source)
    before = await everything(source)
    copied = await copying.copy_records(source, target)
    after = await everything(target)
    assert after == before == await everything(source)
    assert {name: tally.rows for name, tally in copied.items()} == {
        name: len(rows) for name, rows in before.items()
    }
    assert all(before.values())  # a new table has a row in `fill`
    assert BIG in [row.text for row in await rows_of(target, Card)]


async def rows_of(url: str, model: type[Base]) -> Sequence[Any]:
    records = await open_records(url)
    async with records.reading() as session:
        rows = (await session.scalars(select(model))).all()
    await records.close()
    return rows


@pytest.mark.parametrize("to", BOTH)
@pytest.mark.parametrize("from_", BOTH)
async def test_no_number_is_given_again(kinds: dict[str, Databases], from_: str, to: str) -> None:
    source, target = await kinds[from_].migrated(), await kinds[to].migrated()
    await fill(source)
    await copying.copy_records(source, target)
    last = {m: max(r.id for r in await rows_of(source, m)) for m in (Inbox, Outbox)}
    records = await open_records(target)
    async with records.writing() as session:
        new = Address(OwnerKind.PERSON, "terminal", "cleo")
        owner = await owners.find_or_add(session, new, created_at=NOW)
        await post.take_in(session, SOURCE, [post.Arrived(99, "9:9", {})], now_ms=1)
        await post.promise(session, SOURCE, [post.Letter("9", "sendMessage", {})], now_ms=1)
    await records.close()
    # The third owner was forgotten, and had a number: whoever quicker, none has it again.
    assert owner.id > 3
    for model, number in last.items():
        assert max(r.id for r in await rows_of(target, model)) > number


@pytest.mark.parametrize("to", BOTH)
async def test_what_was_copied_serves_like_the_original(
    kinds: dict[str, Databases], to: str
) -> None:
    source, target = await kinds["sqlite"].migrated(), await kinds[to].empty()
    await fill(source)
    await copying.copy_records(source, target)
    records = await open_records(target)
    async with records.writing() as session:
        assert len((await log.undo(session, 2, said_at=NOW)).events) > 1
    async with records.writing() as session:
        claimed = await post.claim(session, SOURCE, "w", now_ms=2**43, until_ms=2**44, most=9)
        assert [c.body["message"]["text"] for c in claimed] == [ODD]
    with pytest.raises(Exception, match="append-only"):
        async with records.writing() as session:
            await session.execute(text("UPDATE event SET batch = 7"))
    await records.close()


@pytest.mark.parametrize("to", BOTH)
async def test_small_batches_carry_the_same(
    kinds: dict[str, Databases], to: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    source, target = await kinds[to].migrated(), await kinds["sqlite"].empty()
    await fill(source)
    whole = await copying.copy_records(source, await kinds[to].empty())
    monkeypatch.setattr(copying, "BATCH_ROWS", 1)
    assert await copying.copy_records(source, target) == whole
    assert await everything(target) == await everything(source)


@pytest.mark.parametrize("kind", BOTH)
async def test_a_batch_is_bounded_by_the_longest_row(
    kinds: dict[str, Databases], kind: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    source = await kinds[kind].migrated()
    records = await open_records(source)
    async with records.writing() as session:
        for number in range(12):
            await post.keep_card(session, f"c{number}", "x" * 100_000, ADDRESS, now_ms=5)
        for number in range(12):
            await post.take_in(session, SOURCE, [post.Arrived(number, "1", {})], now_ms=1)
    monkeypatch.setattr(copying, "BATCH_BYTES", 500_000)
    sizes: dict[str, list[int]] = {"card": [], "inbox": []}
    async with records.reading() as session:
        for name, found in sizes.items():
            async for rows in copying._batches(session, Base.metadata.tables[name]):
                found.append(len(rows))
    await records.close()
    assert sizes == {"card": [4, 4, 4], "inbox": [12]}


# --- refusals ------------------------------------------------------------------------------------


@pytest.mark.parametrize("to", BOTH)
async def test_a_target_with_records_is_left_as_it_is(kinds: dict[str, Databases], to: str) -> None:
    source, target = await kinds["sqlite"].migrated(), await kinds[to].migrated()
    await fill(source)
    records = await open_records(target)
    async with records.writing() as session:
        await owners.find_or_add(session, NEIGHBOUR, created_at=NOW)
    await records.close()
    with pytest.raises(NotEmpty) as refused:
        await copying.copy_records(source, target)
    assert refused.value.rows == {"owner": 1}
    assert [row.external_id for row in await rows_of(target, Owner)] == ["ben"]


async def test_a_source_without_records_is_refused_and_not_made(
    kinds: dict[str, Databases], tmp_path: Path
) -> None:
    target = await kinds["sqlite"].migrated()
    for url in (f"sqlite:///{tmp_path / 'none.db'}", await kinds["postgresql"].empty()):
        with pytest.raises(NothingThere):
            await copying.copy_records(url, target)
    assert list(tmp_path.iterdir()) == []


@pytest.mark.parametrize("kind", BOTH)
async def test_a_database_is_not_copied_onto_itself(kinds: dict[str, Databases], kind: str) -> None:
    url = await kinds[kind].migrated()
    with pytest.raises(SameDatabase):
        await copying.copy_records(url, url.replace("postgresql://", "postgresql+asyncpg://"))


async def test_databases_that_cannot_serve_are_named(kinds: dict[str, Databases]) -> None:
    source = await kinds["sqlite"].migrated()
    with pytest.raises(UnsupportedUrl):
        await copying.copy_records(source, "mysql://x")
    with pytest.raises(DatabaseUnreachable):
        await copying.copy_records(source, "postgresql://a@127.0.0.1:1/x")


# --- breaks --------------------------------------------------------------------------------------


async def is_empty(url: str) -> bool:
    return not any((await everything(url)).values())


async def test_a_row_that_does_not_fit_copies_nothing(kinds: dict[str, Databases]) -> None:
    source, target = await kinds["sqlite"].migrated(), await kinds["postgresql"].empty()
    await fill(source)
    records = await open_records(source)
    async with records.writing() as session:
        await post.keep_card(session, "nul", "a secret\x00text", ADDRESS, now_ms=1)
    await records.close()
    with pytest.raises(copying.DoesNotFit) as refused:
        await copying.copy_records(source, target)
    assert refused.value.table == "card"
    assert "secret" not in str(refused.value)
    assert await is_empty(target)


@pytest.mark.parametrize("to", BOTH)
async def test_what_came_back_changed_is_not_kept(
    kinds: dict[str, Databases], to: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    source, target = await kinds["sqlite"].migrated(), await kinds[to].empty()
    await fill(source)
    as_it_is = copying.tally

    async def spoilt(session: Any, table: Table) -> Tally:
        # Between the writing and the reading back somebody changes one letter of one plant.
        if table.name == "plant":
            await session.execute(text("UPDATE plant SET name = 'Süsse 🌸' WHERE owner_id = 2"))
        return await as_it_is(session, table)

    monkeypatch.setattr(copying, "tally", spoilt)
    with pytest.raises(NotTheSame) as refused:
        await copying.copy_records(source, target)
    assert refused.value.table == "plant"
    monkeypatch.undo()
    assert await is_empty(target)


@pytest.mark.parametrize("to", BOTH)
async def test_a_kill_in_the_middle_leaves_the_target_empty_and_the_next_try_succeeds(
    kinds: dict[str, Databases], to: str
) -> None:
    source, target = await kinds["sqlite"].migrated(), await kinds[to].migrated()
    await fill(source)
    program = (
        "import asyncio, os, signal, sys\n"
        "from bot.records.copying import copy_records\n"
        "def told(table, tally):\n"
        "    if table == 'plant': os.kill(os.getpid(), signal.SIGKILL)\n"
        "asyncio.run(copy_records(sys.argv[1], sys.argv[2], told))\n"
    )
    command = [sys.executable, "-c", program, source, target]
    done = await asyncio.to_thread(subprocess.run, command, cwd=TOP, timeout=60)
    assert done.returncode == -signal.SIGKILL
    assert await is_empty(target)
    await copying.copy_records(source, target)
    assert await everything(target) == await everything(source)


# --- checksums -----------------------------------------------------------------------------------


async def tally_of(records: Records) -> Tally:
    async with records.reading() as session:
        return await copying.tally(session, Base.metadata.tables["plant"])


async def test_a_checksum_knows_no_order_and_every_change(records: Records, owner_id: int) -> None:
    async with records.writing() as session:
        said = await begin(session, owner_id)
        await plants.add(said, name="Ruby", count=1, pot_cm=8.0)
        await plants.add(said, name="Opal", count=2)
    before = await tally_of(records)
    assert before.rows == 2
    table = Base.metadata.tables["plant"]
    async with records.reading() as session:
        rows = (await session.execute(select(table))).all()
    canon = copying._canon(table)
    assert Tally().with_more(rows[::-1], canon) == before
    assert Tally().with_more(rows[:1], canon).with_more(rows[1:], canon) == before
    assert Tally().with_more([rows[0]] * 2, canon) != Tally().with_more([rows[1]] * 2, canon)
    # A row that is there twice does not cancel itself out.
    assert Tally().with_more([rows[0]] * 2, canon).checksum != 0
    seen = {before.checksum}
    for column, value in (("pot_cm", 8.000000000000002), ("count", 3), ("name", "ruby"),
                          ("lost_on", TODAY), ("present", False)):  # fmt: skip
        async with records.writing() as session:
            plant = await session.get(Plant, (owner_id, 1))
            setattr(plant, column, value)
        seen.add((await tally_of(records)).checksum)
    assert len(seen) == 6
