"""Forgetting deletes everything of one owner, says how much, and touches nobody else."""

from __future__ import annotations

import asyncio
from pathlib import Path

import pytest
from sqlalchemy import make_url, select, text
from sqlalchemy.ext.asyncio import AsyncSession

from bot.records import (
    Records,
    errors,
    forget,
    log,
    memory,
    open_records,
    owners,
    pings,
    places,
    plants,
    products,
    reminders,
    transfer,
    waters,
)
from bot.records.kinds import EventKind, OwnerKind, ReminderKind
from bot.records.log import Entry
from bot.records.models import Base, Reminder
from bot.records.owners import Address

from .records_kit import ADDRESS, NOW, Databases, begin


async def grow(records: Records, owner_id: int) -> None:
    async with records.writing() as session:
        said = await begin(session, owner_id)
        sill = await places.find_or_add(session, owner_id, "sill")
        rain = await waters.add(said, kind="rain")
        tub = await products.add(said, name="blue tub")
        await products.make_default(said, tub.id)
        plant = await plants.add(said, name="Ruby", place_id=sill.id, water_id=rain.id)
        await log.record(said, [Entry(EventKind.FED, plant.id, product_id=tub.id)])
        await memory.remember(session, owner_id, "anna", request={"a": 1}, said_at=NOW)
    async with records.writing() as session:
        await log.undo(session, owner_id, said_at=NOW)
        await remind(session, owner_id)


ABOUT = reminders.ReminderFields(
    kind=ReminderKind.FLUSH, target={"everything": True}, rule="FREQ=WEEKLY", zone="UTC",
    start="2026-03-01T09:00:00", due_ms=1_772_355_600_000, due_local="2026-03-01T09:00:00",
)  # fmt: skip


async def remind(session: AsyncSession, owner_id: int, person: str | None = None) -> None:
    """A reminder with a ping."""
    await reminders.add(await begin(session, owner_id), person=person, **ABOUT)
    due = await pings.due_of(session, owner_id, now_ms=1_772_355_600_000)
    assert due is not None
    [one] = due.reminders
    promised = pings.Promised(owner_id, one.id, one.ping_id, one.due_ms, True, None, None)
    await pings.promise(session, [promised])


COUNTS = {
    "place": 1, "water": 1, "product": 1, "plant": 1, "event": 11, "memory": 1, "reminder": 1,
    "ping": 1,
}  # fmt: skip


async def test_forgetting_says_what_it_deleted_and_leaves_nothing(
    records: Records, owner_id: int
) -> None:
    await grow(records, owner_id)
    async with records.reading() as session:
        assert await forget.count_owned(session, owner_id) == COUNTS
    async with records.writing() as session:
        assert await forget.forget(session, owner_id) == {**COUNTS, "owner": 1}
    async with records.reading() as session:
        for table in Base.metadata.tables:
            assert await session.scalar(text(f"SELECT count(*) FROM {table}")) == 0, table
        assert await owners.find(session, ADDRESS) is None


async def test_forgetting_leaves_the_neighbour_alone(
    records: Records, owner_id: int, neighbour_id: int
) -> None:
    await grow(records, owner_id)
    await grow(records, neighbour_id)
    async with records.reading() as session:
        before = await transfer.export_json(session, neighbour_id)
    async with records.writing() as session:
        await forget.forget(session, owner_id)
    async with records.reading() as session:
        assert await transfer.export_json(session, neighbour_id) == before


async def test_groups_forget_what_the_person_asked_for(records: Records, owner_id: int) -> None:
    async with records.writing() as session:
        group = await owners.find_or_add(
            session, Address(OwnerKind.GROUP, "terminal", "club"), created_at=NOW
        )
        elsewhere = await owners.find_or_add(
            session, Address(OwnerKind.GROUP, "telegram", "club"), created_at=NOW
        )
        for chat, person in ((group, "anna"), (group, "ben"), (elsewhere, "anna")):
            await memory.remember(session, chat.id, person, request={"a": 1}, said_at=NOW)
        assert await forget.forget(session, owner_id) == {"memory": 1, "owner": 1}
        assert await memory.recall(session, group.id, "anna") is None
        # Another person of the group, and whoever has the same name in another channel.
        assert await memory.recall(session, group.id, "ben") is not None
        assert await memory.recall(session, elsewhere.id, "anna") is not None


async def test_groups_keep_a_reminder_and_not_whose_it_was(records: Records, owner_id: int) -> None:
    async with records.writing() as session:
        for channel in ("terminal", "telegram"):
            for number, person in enumerate(("anna", "ben")):
                address = Address(OwnerKind.GROUP, channel, f"club {number}")
                group = await owners.find_or_add(session, address, created_at=NOW)
                await remind(session, group.id, person)
        await forget.forget(session, owner_id)
    async with records.reading() as session:
        left = await session.execute(select(Reminder.channel, Reminder.person))
        assert sorted(left, key=str) == [
            ("telegram", "anna"), ("telegram", "ben"), ("terminal", "ben"), ("terminal", None),
        ]  # fmt: skip


async def test_forgetting_a_group_leaves_its_people(records: Records, owner_id: int) -> None:
    async with records.writing() as session:
        address = Address(OwnerKind.GROUP, "terminal", "anna")
        group = await owners.find_or_add(session, address, created_at=NOW)
        await memory.remember(session, owner_id, "anna", request={"a": 1}, said_at=NOW)
        assert await forget.forget(session, group.id) == {"owner": 1}
        assert await memory.recall(session, owner_id, "anna") is not None


async def test_a_number_is_never_given_to_a_second_owner(records: Records, owner_id: int) -> None:
    async with records.writing() as session:
        await forget.forget(session, owner_id)
    async with records.writing() as session:
        again = await owners.find_or_add(session, ADDRESS, created_at=NOW)
    assert again.id > owner_id
    with pytest.raises(errors.UnknownOwner):
        async with records.writing() as session:
            await forget.forget(session, owner_id)


async def test_what_was_forgotten_does_not_stay_behind_in_the_file(
    sqlite_databases: Databases,
) -> None:
    url = await sqlite_databases.migrated()
    file = Path(make_url(url).database or "")

    def remains() -> int:
        return sum(
            found.read_bytes().count(b"Marmalade") for found in file.parent.glob(f"{file.name}*")
        )

    records = await open_records(url)
    async with records.writing() as session:
        owner = await owners.find_or_add(session, ADDRESS, created_at=NOW)
        said = await begin(session, owner.id)
        for number in range(50):
            await plants.add(said, name=f"Marmalade {number}")
    assert await asyncio.to_thread(remains) > 0
    async with records.writing() as session:
        await forget.forget(session, owner.id)
    await records.close()
    assert await asyncio.to_thread(remains) == 0
