"""The log: nothing is overwritten, and undo takes back one utterance, exactly."""

from __future__ import annotations

import json
from collections.abc import Sequence
from datetime import date, timedelta
from typing import Any

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from sqlalchemy import text
from sqlalchemy.exc import DBAPIError
from sqlalchemy.ext.asyncio import AsyncSession

from bot.records import (
    Records,
    errors,
    log,
    open_records,
    owners,
    places,
    plants,
    products,
    transfer,
    waters,
)
from bot.records.kinds import CARE, EventKind, OwnerKind, Units
from bot.records.log import Entry, Said
from bot.records.owners import Address

from .records_kit import NOW, TODAY, Databases, begin


async def two_plants(records: Records, owner_id: int) -> tuple[int, int]:
    async with records.writing() as session:
        said = await begin(session, owner_id)
        return (await plants.add(said, name="Ruby")).id, (await plants.add(said, name="Opal")).id


async def test_care_moves_the_last_date_of_its_kind(records: Records, owner_id: int) -> None:
    ruby, opal = await two_plants(records, owner_id)
    async with records.writing() as session:
        said = await begin(session, owner_id)
        await log.record(said, [Entry(EventKind.FED, ruby), Entry(EventKind.CLEAR, opal)])
        await log.record(said, [Entry(EventKind.FLUSH, ruby, on=TODAY - timedelta(1))])
        await log.record(said, [Entry(EventKind.READING, ruby, details={"ec_ms_cm": 0.9})])
    async with records.reading() as session:
        found = await plants.listing(session, owner_id)
    last = [(p.last_fed_on, p.last_clear_on, p.last_flush_on, p.last_repot_on) for p in found]
    assert last == [(TODAY, None, TODAY - timedelta(1), None), (None, TODAY, None, None)]


async def test_what_is_told_late_does_not_set_the_last_date_back(
    records: Records, owner_id: int
) -> None:
    ruby, _ = await two_plants(records, owner_id)
    async with records.writing() as session:
        said = await begin(session, owner_id)
        week_ago = TODAY - timedelta(7)
        await log.record(
            said, [Entry(EventKind.FED, ruby), Entry(EventKind.FED, ruby, on=week_ago)]
        )
    async with records.reading() as session:
        assert (await plants.get(session, owner_id, ruby)).last_fed_on == TODAY
        days = [event.on for event in await log.history(session, owner_id, ruby)]
    assert days == [week_ago, TODAY, TODAY]


async def test_a_feed_keeps_with_what_it_was_made(records: Records, owner_id: int) -> None:
    ruby, _ = await two_plants(records, owner_id)
    async with records.writing() as session:
        said = await begin(session, owner_id)
        tub = await products.add(said, name="blue tub")
        rain = await waters.add(said, kind="rain")
        details = {"strength": 0.25, "water_ml": 150, "note": "größer", "steps": [1, 2.5, None]}
        entry = Entry(EventKind.FED, ruby, product_id=tub.id, water_id=rain.id, details=details)
        await log.record(said, [entry])
    async with records.reading() as session:
        (fed,) = await log.history(session, owner_id, ruby, kinds=[EventKind.FED])
    assert (fed.product_id, fed.water_id, fed.details) == (tub.id, rain.id, details)
    assert (fed.on, fed.said_at, fed.reverses) == (TODAY, NOW, None)


@pytest.mark.parametrize(
    "entry",
    [
        Entry(EventKind.FED, 99),
        Entry(EventKind.FED, 1, product_id=99),
        Entry(EventKind.FED, 1, water_id=99),
    ],
)
async def test_what_is_not_on_record_cannot_be_logged(
    records: Records, owner_id: int, entry: Entry
) -> None:
    await two_plants(records, owner_id)
    async with records.writing() as session:
        with pytest.raises(errors.NotOnRecord) as caught:
            await log.record(await begin(session, owner_id), [entry])
    assert caught.value.row_id == 99


@pytest.mark.parametrize(
    "details",
    [{"x": float("nan")}, {"x": {1, 2}}, {"x": "\ud800"}, {"x": "long" * 20_000}],
)
async def test_details_must_be_json_of_some_length(
    records: Records, owner_id: int, details: dict[str, Any]
) -> None:
    ruby, _ = await two_plants(records, owner_id)
    async with records.writing() as session:
        said = await begin(session, owner_id)
        with pytest.raises(errors.BadValue):
            await log.record(said, [Entry(EventKind.READING, ruby, details=details)])


@pytest.mark.parametrize("kind", sorted(set(EventKind) - CARE))
async def test_only_care_is_recorded_without_its_own_function(
    records: Records, owner_id: int, kind: EventKind
) -> None:
    async with records.writing() as session:
        with pytest.raises(ValueError, match=kind):
            await log.record(await begin(session, owner_id), [Entry(kind, 1)])


async def test_undo_takes_back_one_utterance_and_then_the_one_before(
    records: Records, owner_id: int
) -> None:
    ruby, opal = await two_plants(records, owner_id)
    for number, fed in enumerate(([ruby, opal], [ruby])):
        async with records.writing() as session:
            said = await begin(session, owner_id, TODAY + timedelta(number))
            await log.record(said, [Entry(EventKind.FED, plant_id) for plant_id in fed])

    async def undo() -> tuple[list[int | None], list[date | None]]:
        async with records.writing() as session:
            undone = await log.undo(session, owner_id, said_at=NOW)
        async with records.reading() as session:
            last = [plant.last_fed_on for plant in await plants.listing(session, owner_id)]
        return [event.plant_id for event in undone.events], last

    assert await undo() == ([ruby], [TODAY, TODAY])
    assert await undo() == ([ruby, opal], [None, None])
    assert await undo() == ([ruby, opal], [])
    with pytest.raises(errors.NothingToUndo):
        await undo()


async def test_what_was_undone_is_left_out_of_the_history_but_stays_in_the_log(
    records: Records, owner_id: int
) -> None:
    ruby, _ = await two_plants(records, owner_id)
    async with records.writing() as session:
        await log.record(await begin(session, owner_id), [Entry(EventKind.FED, ruby)])
    async with records.writing() as session:
        await log.undo(session, owner_id, said_at=NOW)
    async with records.reading() as session:
        standing = [event.kind for event in await log.history(session, owner_id, ruby)]
        every = json.loads(await transfer.export_json(session, owner_id))["events"]
    assert standing == [EventKind.ADDED]
    assert [(row["kind"], row.get("reverses")) for row in every[2:]] == [("fed", None), ("fed", 3)]


async def test_after_an_undo_the_next_utterance_is_the_last_one(
    records: Records, owner_id: int
) -> None:
    ruby, _ = await two_plants(records, owner_id)
    for kind in (EventKind.FED, EventKind.CLEAR):
        async with records.writing() as session:
            await log.record(await begin(session, owner_id), [Entry(kind, ruby)])
        if kind is EventKind.FED:
            async with records.writing() as session:
                await log.undo(session, owner_id, said_at=NOW)
    async with records.reading() as session:
        assert [event.kind for event in await log.last_batch(session, owner_id)] == ["clear"]


@pytest.mark.parametrize(
    ("since", "kinds", "limit", "days"),
    [
        (None, None, 100, [0, 0, 3, 6, 9]),
        (3, None, 100, [3, 6, 9]),
        (4, [EventKind.FED], 100, [6]),
        (None, [EventKind.CLEAR], 100, [3, 9]),
        (None, None, 2, [6, 9]),
    ],
)
async def test_history_is_asked_by_day_kind_and_number(
    records: Records,
    owner_id: int,
    since: int | None,
    kinds: Sequence[EventKind] | None,
    limit: int,
    days: list[int],
) -> None:
    ruby, opal = await two_plants(records, owner_id)
    for day in range(0, 12, 3):
        async with records.writing() as session:
            said = await begin(session, owner_id, TODAY + timedelta(day))
            kind = EventKind.CLEAR if day % 2 else EventKind.FED
            await log.record(said, [Entry(kind, ruby), Entry(kind, opal)])
    first = None if since is None else TODAY + timedelta(since)
    async with records.reading() as session:
        found = await log.history(session, owner_id, ruby, since=first, kinds=kinds, limit=limit)
        whole = await log.entries(session, owner_id, since=first, kinds=kinds, limit=2 * limit)
    assert [(event.on - TODAY).days for event in found] == days
    assert {event.plant_id for event in found} == {ruby}
    assert len(whole) == 2 * len(days)


async def test_the_database_itself_refuses_to_change_the_log(
    records: Records, owner_id: int
) -> None:
    await two_plants(records, owner_id)
    with pytest.raises((DBAPIError, errors.RecordsError), match="append-only"):
        async with records.writing() as session:
            await session.execute(text("UPDATE event SET kind = 'fed'"))


async def test_the_database_itself_refuses_a_second_reversal(
    records: Records, owner_id: int
) -> None:
    await two_plants(records, owner_id)
    async with records.writing() as session:
        await log.undo(session, owner_id, said_at=NOW)
    copy = (
        "INSERT INTO event (owner_id, id, batch, kind, happened_on, said_at, payload, reverses) "
        "SELECT owner_id, 99, 99, kind, happened_on, said_at, payload, reverses FROM event "
        "WHERE reverses = 1"
    )
    with pytest.raises(DBAPIError, match=r"(?i)unique"):
        async with records.writing() as session:
            await session.execute(text(copy))


# Law: undo takes the collection back to exactly what it was before the utterance, as often as
# there is something to undo, and the log only ever grows.

MEDIA = st.sampled_from(["bark", "sphagnum", "stone"])
NUMBER = st.integers(1, 6)
DAY = st.integers(-20, 20).map(lambda days: TODAY + timedelta(days))
NAME = st.sampled_from(["Ruby", "Opal", "Onyx"])
ACTIONS = st.one_of(
    st.tuples(st.just("add"), st.one_of(st.none(), NAME), st.none()),
    st.tuples(st.sampled_from(["fed", "clear", "flush"]), NUMBER, DAY),
    st.tuples(st.just("repot"), NUMBER, MEDIA),
    st.tuples(st.just("growth"), NUMBER, st.sampled_from(["resting", "new_roots", None])),
    st.tuples(st.just("rename"), NUMBER, st.one_of(st.none(), NAME)),
    st.tuples(st.just("lose"), NUMBER, DAY),
    st.tuples(st.just("product"), st.one_of(st.none(), NAME), st.none()),
    st.tuples(st.just("default"), NUMBER, st.none()),
    st.tuples(st.just("remove"), NUMBER, DAY),
    st.tuples(st.just("water"), NUMBER, st.booleans()),
    st.tuples(st.just("settings"), st.sampled_from([*Units, None]), st.none()),
)
UTTERANCES = st.lists(st.one_of(st.just("undo"), st.lists(ACTIONS, min_size=1, max_size=4)))


async def act(said: Said, action: tuple[str, Any, Any]) -> None:
    name, of, how = action
    match name:
        case "add":
            await plants.add(said, name=of)
        case "fed" | "clear" | "flush":
            await log.record(said, [Entry(EventKind(name), of, on=how)])
        case "repot":
            await plants.repot(said, [of], medium=how)
        case "growth":
            await plants.set_growth(said, [of], how)
        case "rename":
            await plants.rename(said, of, how)
        case "lose":
            await plants.lose(said, [of], on=how)
        case "product":
            await products.add(said, name=of)
        case "default":
            await products.make_default(said, of)
        case "remove":
            await products.remove(said, of, on=how)
        case "water":
            water = await waters.add(said, kind="tap", hardness_mg_l_caco3=of)
            if how:
                await waters.make_default(said, water.id)
        case "settings":
            await owners.change_settings(said, units=of)
        case _:
            raise AssertionError(name)


async def state(session: AsyncSession, owner_id: int) -> tuple[Any, list[Any]]:
    """Return everything that is there, and the log."""
    document = json.loads(await transfer.export_json(session, owner_id))
    events = document.pop("events")
    for part in ("plants", "products", "waters"):
        document[part] = [row for row in document[part] if row["present"]]
    return document, events


@pytest.mark.parametrize("kind", ["sqlite_databases", "postgres_databases"])
async def test_undo_restores_exactly_what_was(kind: str, request: pytest.FixtureRequest) -> None:
    databases: Databases = request.getfixturevalue(kind)
    records = await open_records(await databases.migrated())
    try:
        await every_undo_restores(records)
    finally:
        await records.close()


async def every_undo_restores(records: Records) -> None:
    number = 0

    async def example(utterances: list[Any]) -> None:
        nonlocal number
        number += 1
        address = Address(OwnerKind.PERSON, "terminal", f"grower {number}")
        async with records.writing() as session:
            owner_id = (await owners.find_or_add(session, address, created_at=NOW)).id
        before: list[Any] = []
        for utterance in [*utterances, *["undo"] * len(utterances)]:
            async with records.reading() as session:
                now, events = await state(session, owner_id)
            try:
                async with records.writing() as session:
                    if utterance == "undo":
                        await log.undo(session, owner_id, said_at=NOW)
                    else:
                        said = await begin(session, owner_id)
                        for action in utterance:
                            await act(said, action)
            except errors.NothingToUndo:
                assert before == []
                continue
            except errors.Refused:
                async with records.reading() as session:
                    assert await state(session, owner_id) == (now, events)
                continue
            async with records.reading() as session:
                then, longer = await state(session, owner_id)
            assert longer[: len(events)] == events
            if utterance == "undo":
                assert then == before.pop()
            elif len(longer) > len(events):
                before.append(now)
        assert before == []

    await run_examples(example)


async def run_examples(example: Any) -> None:
    """Let hypothesis, which is not asynchronous, run examples on the loop of this test."""
    import asyncio

    loop = asyncio.get_running_loop()

    @settings(
        max_examples=40,
        deadline=None,
        suppress_health_check=[HealthCheck.too_slow, HealthCheck.function_scoped_fixture],
    )
    @given(UTTERANCES)
    def test(utterances: list[Any]) -> None:
        asyncio.run_coroutine_threadsafe(example(utterances), loop).result()

    await asyncio.to_thread(test)


async def test_places_are_not_undone(records: Records, owner_id: int) -> None:
    async with records.writing() as session:
        said = await begin(session, owner_id)
        kitchen = await places.find_or_add(session, owner_id, "kitchen")
        await plants.add(said, place_id=kitchen.id)
    async with records.writing() as session:
        await log.undo(session, owner_id, said_at=NOW)
    async with records.reading() as session:
        assert [place.name for place in await places.listing(session, owner_id)] == ["kitchen"]
