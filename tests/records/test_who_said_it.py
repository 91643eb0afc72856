"""Which member of a group said what: kept with each entry, and taken back by them alone."""

from __future__ import annotations

from datetime import timedelta

import pytest

from bot.records import Records, log, owners, plants, products, reminders, waters
from bot.records.errors import NothingToUndo, OthersSince
from bot.records.kinds import EventKind, ReminderKind
from bot.records.ledger import append
from bot.records.log import Entry, Said

from .records_kit import NOW, TODAY


async def added(records: Records, owner_id: int, name: str, by: str | None) -> int:
    async with records.writing() as session:
        said = await log.begin(session, owner_id, on=TODAY, said_at=NOW, by=by)
        return (await plants.add(said, name=name)).id


async def undone(records: Records, owner_id: int, by: str | None) -> None:
    async with records.writing() as session:
        await log.undo(session, owner_id, said_at=NOW + timedelta(minutes=1), by=by)


async def standing(records: Records, owner_id: int) -> list[str | None]:
    async with records.reading() as session:
        return [p.name for p in await plants.listing(session, owner_id)]


async def test_entries_keep_who_said_them(records: Records, owner_id: int) -> None:
    await added(records, owner_id, "Ruby", "anna")
    await added(records, owner_id, "Dot", None)
    async with records.reading() as session:
        entries = await log.entries(session, owner_id)
    assert [e.details.get("by") for e in entries] == ["anna", None]


async def test_each_takes_back_their_own_last(records: Records, owner_id: int) -> None:
    await added(records, owner_id, "Ruby", "anna")
    await added(records, owner_id, "Dot", "ben")
    await undone(records, owner_id, "anna")
    assert await standing(records, owner_id) == ["Dot"]
    with pytest.raises(NothingToUndo):
        await undone(records, owner_id, "anna")
    await undone(records, owner_id, None)
    assert await standing(records, owner_id) == []


@pytest.mark.parametrize("by", ["a'n\"na", "#12ab", "ana%"])
async def test_who_it_was_may_be_written_in_any_way(
    records: Records, owner_id: int, by: str
) -> None:
    await added(records, owner_id, "Ruby", by)
    with pytest.raises(NothingToUndo):
        await undone(records, owner_id, "anna")
    await undone(records, owner_id, by)
    assert await standing(records, owner_id) == []


async def test_what_others_did_to_the_same_since_is_in_the_way(
    records: Records, owner_id: int
) -> None:
    ruby = await added(records, owner_id, "Ruby", "anna")
    async with records.writing() as session:
        said = await log.begin(session, owner_id, on=TODAY, said_at=NOW, by="ben")
        await log.record(said, [Entry(EventKind.FED, ruby)])
    with pytest.raises(OthersSince):
        await undone(records, owner_id, "anna")
    await undone(records, owner_id, "ben")
    await undone(records, owner_id, "anna")
    assert await standing(records, owner_id) == []


@pytest.mark.parametrize("kind", EventKind)
async def test_what_others_did_since_to_something_else_is_not_in_the_way(
    records: Records, owner_id: int, kind: EventKind
) -> None:
    opal = await added(records, owner_id, "Opal", "ben")
    await added(records, owner_id, "Ruby", "anna")
    async with records.writing() as session:
        said = await log.begin(session, owner_id, on=TODAY, said_at=NOW, by="ben")
        await someone_said(said, kind, opal)
    await undone(records, owner_id, "anna")
    assert "Ruby" not in await standing(records, owner_id)


async def someone_said(said: Said, kind: EventKind, plant_id: int) -> None:
    """One entry of each kind, about another plant than the one that is undone."""
    if kind is EventKind.REMINDER:
        await reminders.add(
            said, kind=ReminderKind.FLUSH, target={}, rule="FREQ=DAILY", zone="UTC",
            start="2026-03-08T09:00:00", due_ms=1_772_960_400_000, due_local="2026-03-08T09:00:00",
        )  # fmt: skip
    elif kind is EventKind.PRODUCT:
        await products.add(said, n=20.0, p2o5=20.0, k2o=20.0)
    elif kind is EventKind.WATER_SOURCE:
        await waters.add(said, kind="tap")
    elif kind is EventKind.SETTINGS:
        await owners.change_settings(said, can_l=5.0)
    elif kind is EventKind.ADDED:
        await plants.add(said, name="Dot")
    else:
        await append(said, [Entry(kind, plant_id)])
