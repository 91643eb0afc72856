"""People and groups: one address is one owner, and their settings can be undone."""

from __future__ import annotations

from dataclasses import replace
from datetime import datetime
from typing import Any

import pytest

from bot.records import Records, errors, log, owners
from bot.records.kinds import EventKind, Hemisphere, OwnerKind, Units

from .records_kit import ADDRESS, NEIGHBOUR, NOW, TODAY, begin


async def test_the_same_address_is_the_same_owner(records: Records, owner_id: int) -> None:
    async with records.writing() as session:
        again = await owners.find_or_add(session, ADDRESS, created_at=NOW)
    assert again.id == owner_id
    assert again.created_at == NOW


@pytest.mark.parametrize(
    "other",
    [
        replace(ADDRESS, kind=OwnerKind.GROUP),
        replace(ADDRESS, channel="telegram"),
        replace(ADDRESS, external_id="Anna"),
    ],
)
async def test_another_kind_channel_or_name_is_another_owner(
    records: Records, owner_id: int, other: owners.Address
) -> None:
    async with records.writing() as session:
        assert await owners.find(session, other) is None
        assert (await owners.find_or_add(session, other, created_at=NOW)).id != owner_id


@pytest.mark.parametrize(
    ("part", "value"),
    [
        ("external_id", ""),
        ("external_id", "x" * 129),
        ("external_id", "a\x00b"),
        ("external_id", "\ud800"),
        ("channel", "Not a code"),
    ],
)
async def test_an_address_that_cannot_be_kept_is_refused(
    records: Records, part: str, value: str
) -> None:
    changes: dict[str, Any] = {part: value}
    with pytest.raises(errors.BadValue) as caught:
        async with records.writing() as session:
            await owners.find_or_add(session, replace(ADDRESS, **changes), created_at=NOW)
    assert caught.value.field == part


async def test_settings_are_kept_and_undone(records: Records, owner_id: int) -> None:
    async with records.writing() as session:
        said = await begin(session, owner_id)
        await owners.change_settings(said, zone="Europe/Lisbon", hemisphere=Hemisphere.NORTH)
    async with records.writing() as session:
        said = await begin(session, owner_id)
        await owners.change_settings(said, units=Units.US, scale_step_g=0.1, spoon=True, can_l=5)
    async with records.writing() as session:
        owner = await owners.get(session, owner_id)
        assert (owner.units, owner.scale_step_g, owner.spoon) == (Units.US, 0.1, True)
        await log.undo(session, owner_id, said_at=NOW)
    async with records.reading() as session:
        owner = await owners.get(session, owner_id)
    assert (owner.units, owner.scale_step_g, owner.spoon, owner.can_l) == (None,) * 4
    assert (owner.zone, owner.hemisphere) == ("Europe/Lisbon", Hemisphere.NORTH)


@pytest.mark.parametrize(
    ("setting", "value"),
    [
        ("scale_step_g", -0.1),
        ("scale_step_g", float("nan")),
        ("can_l", float("inf")),
        ("can_l", True),
        ("can_l", 10**400),
        ("spoon", 1),
        ("units", "stones"),
        ("zone", "x" * 65),
        ("language", "   "),
        ("place_name", "two\nlines"),
    ],
)
async def test_a_setting_that_does_not_fit_is_refused(
    records: Records, owner_id: int, setting: str, value: object
) -> None:
    given: dict[str, Any] = {setting: value}
    with pytest.raises(errors.BadValue) as caught:
        async with records.writing() as session:
            await owners.change_settings(await begin(session, owner_id), **given)
    assert (caught.value.table, caught.value.field) == ("owner", setting)
    async with records.reading() as session:
        assert await log.entries(session, owner_id) == []


@pytest.mark.parametrize("name", ["external_id", "channel", "id", "colour"])
async def test_an_address_is_not_a_setting(records: Records, owner_id: int, name: str) -> None:
    given: dict[str, Any] = {name: "x"}
    with pytest.raises(ValueError, match=name):
        async with records.writing() as session:
            await owners.change_settings(await begin(session, owner_id), **given)


async def test_an_unknown_owner_is_refused(records: Records) -> None:
    async with records.reading() as session:
        with pytest.raises(errors.UnknownOwner):
            await owners.get(session, 77)
    async with records.writing() as session:
        with pytest.raises(errors.UnknownOwner):
            await begin(session, 77)


async def test_an_instant_without_a_zone_is_refused(records: Records, owner_id: int) -> None:
    async with records.writing() as session:
        with pytest.raises(errors.BadValue):
            await log.begin(session, owner_id, on=TODAY, said_at=datetime(2026, 3, 1))


async def test_a_group_keeps_its_records_under_a_new_address(
    records: Records, owner_id: int, neighbour_id: int
) -> None:
    new = owners.Address(OwnerKind.GROUP, "telegram", "-100123")
    async with records.writing() as session:
        await owners.readdress(session, owner_id, new)
    async with records.writing() as session:
        moved = await owners.find(session, new)
        assert moved is not None
        assert moved.id == owner_id
        assert await owners.find(session, ADDRESS) is None
        with pytest.raises(errors.OwnerExists) as caught:
            await owners.readdress(session, owner_id, NEIGHBOUR)
    assert caught.value.owner_id == neighbour_id


async def test_settings_stand_in_the_log(records: Records, owner_id: int) -> None:
    async with records.writing() as session:
        await owners.change_settings(await begin(session, owner_id), can_l=5)
    async with records.reading() as session:
        (entry,) = await log.entries(session, owner_id)
    assert (entry.kind, entry.before, entry.after) == (
        EventKind.SETTINGS,
        {"can_l": None},
        {"can_l": 5.0},
    )
