"""A reader sees one moment and changes nothing; a writer's changes are kept whole or not at all."""

from __future__ import annotations

import asyncio
from datetime import timedelta

import pytest
from sqlalchemy import text
from sqlalchemy.exc import DBAPIError

from bot.records import Records, engines, errors, log, open_records, owners, plants
from bot.records.kinds import EventKind, OwnerKind
from bot.records.log import Entry
from bot.records.owners import Address

from .records_kit import ADDRESS, NEIGHBOUR, NOW, TODAY, Databases, begin


async def test_a_reading_session_cannot_write(records: Records, owner_id: int) -> None:
    with pytest.raises(errors.CannotWrite):
        async with records.reading() as session:
            await owners.find_or_add(session, NEIGHBOUR, created_at=NOW)
    async with records.reading() as session:
        assert await owners.find(session, NEIGHBOUR) is None


async def test_an_error_inside_undoes_the_whole_block(records: Records, owner_id: int) -> None:
    async def add_twice() -> None:
        async with records.writing() as session:
            said = await begin(session, owner_id)
            await plants.add(said, name="Ruby")
            await plants.add(said, name="ruby ")

    with pytest.raises(errors.NameTaken):
        await add_twice()
    async with records.reading() as session:
        assert await plants.listing(session, owner_id) == []
        assert await log.entries(session, owner_id) == []


async def test_a_reader_sees_one_moment(records: Records, owner_id: int) -> None:
    async with records.reading() as reader:
        assert await plants.count(reader, owner_id) == 0
        async with records.writing() as writer:
            await plants.add(await begin(writer, owner_id), name="Ruby")
        assert await plants.count(reader, owner_id) == 0
    async with records.reading() as reader:
        assert await plants.count(reader, owner_id) == 1


async def test_twenty_people_at_once_all_get_through(records: Records) -> None:
    async def one(number: int) -> int:
        address = Address(OwnerKind.PERSON, "terminal", f"person {number}")
        async with records.writing() as session:
            owner = await owners.find_or_add(session, address, created_at=NOW)
            plant = await plants.add(await begin(session, owner.id), name="Ruby")
        for day in range(20):
            async with records.writing() as session:
                said = await begin(session, owner.id, TODAY + timedelta(day))
                await log.record(said, [Entry(EventKind.FED, plant.id)])
            async with records.reading() as session:
                await plants.listing(session, owner.id)
        async with records.reading() as session:
            return len(await log.history(session, owner.id, plant.id, kinds=[EventKind.FED]))

    assert await asyncio.gather(*map(one, range(20))) == [20] * 20


async def test_writers_of_one_owner_stand_in_line(records: Records, owner_id: int) -> None:
    async def one(number: int) -> None:
        async with records.writing() as session:
            await plants.add(await begin(session, owner_id), name=f"plant {number}")

    await asyncio.gather(*map(one, range(20)))
    async with records.reading() as session:
        found = await plants.listing(session, owner_id)
        batches = {event.batch for event in await log.entries(session, owner_id)}
    assert [plant.id for plant in found] == list(range(1, 21))
    assert len(batches) == 20


async def test_two_who_meet_us_at_once_are_one_owner(records: Records) -> None:
    async def one() -> int:
        async with records.writing() as session:
            return (await owners.find_or_add(session, ADDRESS, created_at=NOW)).id

    assert len(set(await asyncio.gather(*(one() for _ in range(8))))) == 1


async def test_a_writer_that_is_cancelled_lets_the_next_one_in(
    records: Records, owner_id: int
) -> None:
    begun, written = asyncio.Event(), asyncio.Event()

    async def stuck() -> None:
        begun.set()
        async with records.writing() as session:
            await plants.add(await begin(session, owner_id), name="never")
            written.set()
            await asyncio.sleep(3600)

    writer = asyncio.create_task(stuck())
    await written.wait()
    begun.clear()
    waiting = asyncio.create_task(stuck())
    await begun.wait()
    for task in (waiting, writer):
        task.cancel()
    await asyncio.wait([writer, waiting])
    async with records.writing() as session:
        await plants.add(await begin(session, owner_id), name="Ruby")
    async with records.reading() as session:
        assert [plant.name for plant in await plants.listing(session, owner_id)] == ["Ruby"]


async def test_a_lock_that_is_kept_too_long_is_told_in_our_words(
    sqlite_databases: Databases, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(engines, "BUSY_TIMEOUT_MS", 50)
    url = await sqlite_databases.migrated()
    first, second = await open_records(url), await open_records(url)
    async with first.writing():
        with pytest.raises(errors.DatabaseBusy):
            async with second.writing():
                raise AssertionError("two writers at once")
    await first.close()
    await second.close()


async def test_a_writer_inside_a_writer_ends_in_an_error(
    sqlite_databases: Databases, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(engines, "WRITER_WAIT_S", 0.05)
    records = await open_records(await sqlite_databases.migrated())
    async with records.writing():
        with pytest.raises(errors.DatabaseBusy):
            async with records.writing():
                raise AssertionError("two writers at once")
    await records.close()


async def test_an_error_of_the_database_does_not_repeat_the_parameters(
    records: Records, owner_id: int
) -> None:
    with pytest.raises(DBAPIError) as caught:
        async with records.writing() as session:
            await session.execute(
                text("INSERT INTO place (owner_id, id, name) VALUES (:o, 1, :n)"),
                {"o": owner_id, "n": "a secret place"},
            )
    # PostgreSQL itself repeats the refused row under DETAIL; ours is what comes before.
    assert "secret" not in str(caught.value).partition("DETAIL")[0]


async def test_a_server_that_goes_away_is_told_in_our_words(
    postgres_databases: Databases,
) -> None:
    records = await open_records(await postgres_databases.migrated())
    with pytest.raises(errors.DatabaseUnreachable):
        async with records.writing() as session:
            await session.execute(text("SELECT pg_terminate_backend(pg_backend_pid())"))
    async with records.writing() as session:
        assert await session.scalar(text("SELECT 1")) == 1
    await records.close()
