"""Taking everything along: what is exported comes back exactly, and nothing half."""

from __future__ import annotations

import asyncio
import contextlib
import csv
import io
import json
from collections.abc import Callable
from datetime import date, timedelta
from typing import Any

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from sqlalchemy import func, select

from bot.records import (
    Records,
    errors,
    export_files,
    log,
    memory,
    owners,
    places,
    plants,
    products,
    reminders,
    transfer,
    waters,
)
from bot.records.kinds import EventKind, LabelUnit, OwnerKind, ReminderKind, Units
from bot.records.log import Entry
from bot.records.models import Owner

from .records_kit import ADDRESS, NOW, TODAY, begin

Document = dict[str, Any]

COUNTS = {"places": 1, "waters": 1, "products": 2, "plants": 3, "reminders": 3, "events": 33}


async def grow(records: Records, owner_id: int) -> None:
    """Put something of every kind on record, with undone things among them."""
    async with records.writing() as session:
        said = await begin(session, owner_id)
        await owners.change_settings(
            said, zone="Europe/Lisbon", units=Units.US, can_l=5, spoon=True
        )
        sill = await places.find_or_add(session, owner_id, "kitchen sill")
        tap = await waters.add(said, kind="tap", hardness_mg_l_caco3=250.2, ions={"Ca": 80.1})
        await waters.make_default(said, tap.id)
        tub = await products.add(
            said,
            name="=blue tub",
            n=20,
            p2o5=19.9,
            k2o=20,
            extras={"Mg": 0.1},
            label_per_litre=1,
            label_unit=LabelUnit.GRAM,
        )
        await products.make_default(said, tub.id)
        ruby = await plants.add(said, name='\'Ruby, "the" great', medium="bark", place_id=sill.id)
        opal = await plants.add(said, name="Opal", count=3, pot_cm=12.5, water_id=tap.id)
    for day in range(4):
        async with records.writing() as session:
            said = await begin(session, owner_id, TODAY + timedelta(7 * day))
            details = {"strength": 0.25, "note": "größer; \u2028"}
            fed = [
                Entry(EventKind.FED, id_, product_id=tub.id, water_id=tap.id, details=details)
                for id_ in (ruby.id, opal.id)
            ]
            await log.record(said, fed)
            await plants.repot(said, [opal.id], medium="sphagnum")
    async with records.writing() as session:
        await log.undo(session, owner_id, said_at=NOW)
    async with records.writing() as session:
        said = await begin(session, owner_id)
        await plants.add(said, name="gone at once")
        await products.add(said, name="gone too")
    async with records.writing() as session:
        await log.undo(session, owner_id, said_at=NOW)
    async with records.writing() as session:
        await plants.lose(await begin(session, owner_id), [ruby.id])
    await remind(records, owner_id, opal.id)


async def remind(records: Records, owner_id: int, plant_id: int) -> None:
    """Put one reminder on record that was moved, one that ended and one that was undone."""
    about = reminders.ReminderFields(
        kind=ReminderKind.OTHER, text="=look at Opal", target={"plants": [plant_id], "place": None},
        start="2026-03-02T09:00:00", zone="Europe/Lisbon", due_ms=1_772_442_000_000,
        due_local="2026-03-02T09:00:00",
    )  # fmt: skip
    async with records.writing() as session:
        said = await begin(session, owner_id)
        first = await reminders.add(said, rule="FREQ=DAILY;INTERVAL=10", person="ben", **about)
        second = await reminders.add(said, **about)
    async with records.writing() as session:
        said = await begin(session, owner_id)
        await reminders.change(said, first.id, due_ms=1_772_528_400_000, moved=True)
        await reminders.end(said, [second.id])
    async with records.writing() as session:
        await reminders.add(await begin(session, owner_id), **about)
    async with records.writing() as session:
        await log.undo(session, owner_id, said_at=NOW)


async def export(records: Records, owner_id: int) -> str:
    async with records.reading() as session:
        return await transfer.export_json(session, owner_id)


@pytest.fixture
async def exported(records: Records, owner_id: int) -> str:
    await grow(records, owner_id)
    return await export(records, owner_id)


async def test_a_document_comes_back_exactly(
    records: Records, neighbour_id: int, exported: str
) -> None:
    preview = transfer.read_export(exported)
    assert preview.problems == ()
    async with records.writing() as session:
        counts = await transfer.import_export(session, neighbour_id, preview)
    assert counts == COUNTS
    assert await export(records, neighbour_id) == exported


async def test_csv_files_come_back_exactly(
    records: Records, owner_id: int, neighbour_id: int, exported: str
) -> None:
    async with records.reading() as session:
        files = await transfer.export_csv(session, owner_id)
    preview = transfer.read_csv_export(files)
    assert preview.problems == ()
    async with records.writing() as session:
        await transfer.import_export(session, neighbour_id, preview)
    assert await export(records, neighbour_id) == exported


async def test_undo_goes_on_after_an_import(
    records: Records, neighbour_id: int, exported: str
) -> None:
    async with records.writing() as session:
        await transfer.import_export(session, neighbour_id, transfer.read_export(exported))
    async with records.writing() as session:
        undone = [await log.undo(session, neighbour_id, said_at=NOW) for _ in range(3)]
    assert [[event.kind for event in utterance.events] for utterance in undone] == [
        [EventKind.REMINDER] * 2, [EventKind.REMINDER] * 2, [EventKind.LOST],
    ]  # fmt: skip
    async with records.reading() as session:
        assert await reminders.listing(session, neighbour_id) == []
        found = await plants.by_name(session, neighbour_id, '\'ruby, "THE" great')
    assert found is not None
    assert found.lost_on is None


async def test_the_preview_counts_before_anything_is_written(
    records: Records, owner_id: int, exported: str
) -> None:
    preview = transfer.read_export(exported)
    assert preview.counts == COUNTS
    assert (preview.first_on, preview.last_on) == (TODAY, TODAY + timedelta(21))
    assert await export(records, owner_id) == exported


async def test_an_export_holds_no_address_and_no_memory(
    records: Records, owner_id: int, exported: str
) -> None:
    async with records.writing() as session:
        await memory.remember(session, owner_id, "anna", request={"a": 1}, said_at=NOW)
    assert await export(records, owner_id) == exported
    assert "anna" not in exported


async def test_records_are_only_replaced_when_asked(
    records: Records, owner_id: int, exported: str
) -> None:
    preview = transfer.read_export(exported)
    async with records.writing() as session:
        await plants.add(await begin(session, owner_id), name="bought since")
    grown = await export(records, owner_id)
    with pytest.raises(errors.AlreadyHasRecords) as caught:
        async with records.writing() as session:
            await transfer.import_export(session, owner_id, preview)
    assert caught.value.counts["plant"] == 4
    assert await export(records, owner_id) == grown
    async with records.writing() as session:
        await transfer.import_export(session, owner_id, preview, replace=True)
        assert await plants.by_name(session, owner_id, "bought since") is None
    assert await export(records, owner_id) == exported


async def test_an_import_that_fails_half_way_leaves_everything_as_it_was(
    records: Records, owner_id: int, exported: str
) -> None:
    preview = transfer.read_export(exported)
    # Behind the back of the check: the database refuses the last list.
    preview.rows["events"][-1]["plant_id"] = 99
    with pytest.raises(Exception, match=r"(?i)foreign key"):
        async with records.writing() as session:
            await transfer.import_export(session, owner_id, preview, replace=True)
    assert await export(records, owner_id) == exported


async def test_an_import_of_somebody_elses_file_leaves_their_records_alone(
    records: Records, owner_id: int, neighbour_id: int, exported: str
) -> None:
    async with records.writing() as session:
        await transfer.import_export(session, neighbour_id, transfer.read_export(exported))
    async with records.writing() as session:
        await plants.add(await begin(session, neighbour_id), name="mine alone")
    assert await export(records, owner_id) == exported


def test_an_empty_collection_is_a_document_too() -> None:
    preview = transfer.read_export('{"format": "sinkside-records", "version": 1}')
    assert (preview.counts, preview.problems, preview.first_on) == ({}, (), None)


@pytest.mark.parametrize(
    ("text", "error"),
    [
        ("", errors.BrokenFile),
        ("{", errors.BrokenFile),
        ('{"format": NaN}', errors.BrokenFile),
        ('{"format": 1, "format": 2}', errors.BrokenFile),
        ("[" * 100_000, errors.BrokenFile),
        ("1" * 5_000, errors.BrokenFile),
        ("[]", errors.ForeignFile),
        ('"text"', errors.ForeignFile),
        ("{}", errors.ForeignFile),
        ('{"format": "another", "version": 1}', errors.ForeignFile),
        ('{"format": "sinkside-records"}', errors.BrokenFile),
        ('{"format": "sinkside-records", "version": true}', errors.BrokenFile),
        ('{"format": "sinkside-records", "version": 0}', errors.BrokenFile),
        ('{"format": "sinkside-records", "version": 3, "new": []}', errors.NewerFile),
        ('{"format": "sinkside-records", "version": 1, "new": []}', errors.BrokenFile),
        ('{"format": "sinkside-records", "version": 1, "plants": {}}', errors.BrokenFile),
        ('{"format": "sinkside-records", "version": 1, "plants": [1]}', errors.BrokenFile),
        ('{"format": "sinkside-records", "version": 1, "settings": []}', errors.BrokenFile),
    ],
    ids=lambda value: value[:60] if isinstance(value, str) else value.__name__,
)
def test_a_broken_or_foreign_document_is_refused(
    text: str, error: type[errors.ImportRefused]
) -> None:
    with pytest.raises(error):
        transfer.read_export(text)


def test_a_document_that_is_too_large_is_not_read(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(export_files, "MAX_CHARACTERS", 30)
    with pytest.raises(errors.FileTooLarge) as caught:
        transfer.read_export('{"format": "sinkside-records", "version": 1}')
    assert (caught.value.size, caught.value.most) == (44, 30)
    with pytest.raises(errors.FileTooLarge):
        transfer.read_csv_export({"settings.csv": "x" * 20, "plants.csv": "x" * 20})


def change(path: str, value: object) -> Callable[[Document], None]:
    """Return what sets one value of a document: `plants.0.name`."""

    def apply(document: Document) -> None:
        *way, last = path.split(".")
        at: Any = document
        for step in way:
            at = at[int(step)] if isinstance(at, list) else at[step]
        at[last] = value

    return apply


def all_of(*changes: Callable[[Document], None]) -> Callable[[Document], None]:
    def apply(document: Document) -> None:
        for one in changes:
            one(document)

    return apply


def payload(before: object, after: object) -> Callable[[Document], None]:
    return change("events.5.payload", {"before": before, "after": after})


@pytest.fixture
async def document(sqlite_records: Records) -> Document:
    """A whole collection: waters 1; products 1, 2 (undone); plants 1 (lost), 2, 3 (undone).

    Events: 1 settings, 2 and 3 water, 4 and 5 product, 6 and 7 added, 8 to 19 care, 20 to 22
    the reverse of 17 to 19, 23 and 24 added, 25 and 26 their reverse, 27 lost, 28 to 33
    reminders: 1 (moved), 2 (ended), 3 (undone), the last the reverse of its adding.
    """
    async with sqlite_records.writing() as session:
        owner = await owners.find_or_add(session, ADDRESS, created_at=NOW)
    await grow(sqlite_records, owner.id)
    read: Document = json.loads(await export(sqlite_records, owner.id))
    return read


PROBLEMS: list[tuple[Callable[[Document], None], str, str]] = [
    (change("plants.0.pot_cm", -1), "plants[1].pot_cm", "must be from"),
    (change("plants.0.pot_cm", "12"), "plants[1].pot_cm", "must be a number"),
    (change("plants.0.colour", "red"), "plants[1].colour", "no such field"),
    (change("plants.0.owner_id", 2), "plants[1].owner_id", "no such field"),
    (change("plants.0.count", None), "plants[1].count", "needed"),
    (change("plants.0.added_on", "yesterday"), "plants[1].added_on", "not a date"),
    (change("plants.0.medium", "lava"), "plants[1].medium", "'lava' is not known"),
    (change("plants.1.name", "x\ud800"), "plants[2].name", "cannot be shown"),
    (change("plants.1.place_id", 9), "plants id 2.place_id", "no row 9"),
    (change("plants.2.id", 10**9), "plants id 1000000000", "larger than"),
    (change("plants.2.id", 2), "plants id 2", "more than once"),
    (
        all_of(change("plants.2.present", True), change("plants.2.name", "OPAL")),
        "plants",
        "2 rows are called 'opal'",
    ),
    (change("products.0.n", 90), "products id 1", "over 100"),
    (change("products.1.is_default", True), "products", "more than one default"),
    (change("reminders.0.rule", "FREQ=SECONDLY"), "reminders id 1", "rule: not a rule"),
    (change("reminders.0.start", "2026-02-30T09:00:00"), "reminders id 1", "start: not a clock"),
    (change("reminders.0.zone", "Atlantis/Centre"), "reminders[1].zone", "not a zone"),
    (change("reminders.0.due_ms", None), "reminders id 1", "due_ms: what comes"),
    (change("reminders.0.due_ms", 1.5), "reminders[1].due_ms", "whole number"),
    (change("reminders.1.state", "active"), "reminders id 2", "due_ms: what comes"),
    (change("reminders.1.due_local", "2026-03-02T09:00:00"), "reminders id 2", "without a moment"),
    (change("reminders.1.state", "asleep"), "reminders[2].state", "one of"),
    (change("reminders.0.target", {"plants": [9]}), "reminders id 1.target", "plant that is not"),
    (change("reminders.0.target", {"plants": ["1"]}), "reminders id 1", "plants are numbers"),
    (change("reminders.0.target", {"birds": []}), "reminders id 1", "cannot take 'birds'"),
    (change("reminders.0.person", "ben"), "reminders[1].person", "no such field"),
    (change("reminders.0.channel", "terminal"), "reminders[1].channel", "no such field"),
    (change("events.27.reminder_id", 9), "events id 28.reminder_id", "no row 9"),
    (change("events.27.reminder_id", None), "events id 28.payload", "what changed"),
    (change("settings.units", "stones"), "settings.units", "one of"),
    (change("settings.external_id", "ben"), "settings.external_id", "no such field"),
    (change("events.0.kind", "danced"), "events[1].kind", "one of"),
    (change("events.0.said_at", "2026-03-01T08:00:00"), "events[1].said_at", "zone"),
    (change("events.0.said_at", "0001-01-01T00:00:00+14:00"), "events[1].said_at", "too long ago"),
    (change("events.8.batch", 99), "events id 9.batch", "first entry"),
    (change("events.8.batch", 2), "events id 9.batch", "first entry"),
    (change("settings.kind", "group"), "settings.kind", "no such field"),
    (change("events.7.reverses", 9), "events id 8.reverses", "earlier entry"),
    (change("events.26.reverses", 20), "events id 27.reverses", "earlier entry"),
    (change("events.26.reverses", 17), "events id 27.reverses", "reversed already"),
    (change("events.0.payload", {"x": 1}), "events id 1.payload", "wrong shape"),
    (change("events.0.payload", {"before": 1}), "events id 1.payload", "wrong shape"),
    (change("events.0.payload.before", {}), "events id 1.payload", "what changed"),
    (change("events.6.plant_id", None), "events id 7.payload", "what changed"),
    (payload({"count": None}, {"count": 1}), "events id 6.payload.count", "needed"),
    (payload({"place_id": 9}, {"place_id": 1}), "events id 6.payload.place_id", "no row 9"),
    (payload({"owner_id": 2}, {"owner_id": 1}), "events id 6.payload", "changes 'owner_id'"),
    (
        change(
            "events.0.payload", {"before": {"external_id": "ben"}, "after": {"external_id": "a"}}
        ),
        "events id 1.payload",
        "changes 'external_id'",
    ),
]


@pytest.mark.parametrize(("spoil", "where", "what"), PROBLEMS, ids=[row[2] for row in PROBLEMS])
def test_what_is_wrong_with_a_file_is_told_by_place(
    spoil: Callable[[Document], None], where: str, what: str, document: Document
) -> None:
    codes = {"plant.medium": {"bark", "sphagnum"}}
    assert transfer.read_export(json.dumps(document), codes=codes).problems == ()
    spoil(document)
    problems = transfer.read_export(json.dumps(document), codes=codes).problems
    assert {one.where for one in problems if what in one.what} == {where}


async def test_a_file_with_problems_is_not_taken_in(
    records: Records, owner_id: int, exported: str
) -> None:
    spoilt = transfer.read_export(exported.replace('"bark"', '"BARK"'))
    assert spoilt.problems[0].where == "plants[1].medium"
    with pytest.raises(errors.HasProblems):
        async with records.writing() as session:
            await transfer.import_export(session, owner_id, spoilt, replace=True)
    assert await export(records, owner_id) == exported


def test_problems_are_not_listed_without_end(document: Document) -> None:
    document["plants"] = [{}] * 500
    assert len(transfer.read_export(json.dumps(document)).problems) == 50


def csv_files(document: Document) -> dict[str, str]:
    return export_files.to_csv_texts(export_files.from_json_text(json.dumps(document)))


def test_a_spreadsheet_finds_no_formula_in_a_text(document: Document) -> None:
    files = csv_files(document)
    assert set(files) == {
        *("settings.csv", "places.csv", "waters.csv", "products.csv", "plants.csv"),
        *("reminders.csv", "events.csv"),
    }
    names = [row["name"] for row in csv.DictReader(io.StringIO(files["products.csv"]))]
    assert names == ["'=blue tub", "gone too"]
    cells = [
        cell for text in files.values() for row in csv.reader(io.StringIO(text)) for cell in row
    ]
    assert not [cell for cell in cells if cell.startswith(("=", "+", "-", "@", "\t", "\r"))]


@pytest.mark.parametrize(
    ("spoil", "error"),
    [
        (lambda files: files.pop("settings.csv"), errors.ForeignFile),
        (lambda files: files.update({"virus.exe": ""}), errors.ForeignFile),
        (lambda files: files.update({"plants.csv": "a,b\n1,2\n"}), errors.ForeignFile),
        (lambda files: files.update({"plants.csv": "id,id\n1,2\n"}), errors.ForeignFile),
        (lambda files: files.update({"plants.csv": "id,name\n1\n"}), errors.BrokenFile),
        (lambda files: files.update({"plants.csv": 'id,name\n1,"x\n'}), errors.BrokenFile),
        (lambda files: files.update({"settings.csv": "format,version\n"}), errors.BrokenFile),
        (lambda files: files.update({"settings.csv": "format\nother\n"}), errors.ForeignFile),
        (
            lambda files: files.update({"settings.csv": "format,version\nsinkside-records,3\n"}),
            errors.NewerFile,
        ),
    ],
)
def test_broken_or_foreign_csv_files_are_refused(
    spoil: Callable[[dict[str, str]], object],
    error: type[errors.ImportRefused],
    document: Document,
) -> None:
    files = csv_files(document)
    spoil(files)
    with pytest.raises(error):
        transfer.read_csv_export(files)


def test_a_cell_of_the_wrong_kind_is_a_problem(document: Document) -> None:
    files = csv_files(document)
    files["plants.csv"] = "id,count,added_on,present\n1,many,2026-03-01,maybe\n"
    problems = transfer.read_csv_export(files).problems
    assert [problem.where for problem in problems] == ["plants[1].count", "plants[1].present"]


def run_examples(strategy: Any, example: Any, number: int) -> Any:
    """Let hypothesis, which is not asynchronous, run examples on the loop of a test."""
    loop = asyncio.get_running_loop()

    @settings(max_examples=number, deadline=None, suppress_health_check=[HealthCheck.too_slow])
    @given(strategy)
    def test(value: Any) -> None:
        asyncio.run_coroutine_threadsafe(example(value), loop).result()

    return asyncio.to_thread(test)


TEXT = st.text(min_size=1, max_size=30).filter(lambda t: t.isprintable() and t == t.strip() and t)
AMOUNT = st.floats(0, 100)
DAY = st.dates(date(1900, 1, 1), date(9000, 1, 1))
JSON_VALUES = st.recursive(
    st.none() | st.booleans() | st.integers() | st.floats(allow_nan=False) | st.text(max_size=5),
    lambda inner: st.lists(inner, max_size=3) | st.dictionaries(st.text(max_size=5), inner),
    max_leaves=8,
)


async def new_owner(records: Records) -> int:
    async with records.writing() as session:
        name = f"grower {await session.scalar(select(func.count()).select_from(Owner))}"
        address = owners.Address(OwnerKind.PERSON, "terminal", name)
        return (await owners.find_or_add(session, address, created_at=NOW)).id


# Law: whatever can be put on record comes back from JSON and from CSV exactly.
async def test_whatever_is_on_record_comes_back_exactly(records: Records) -> None:
    async def example(values: tuple[str, float, date, dict[str, Any], dict[str, float]]) -> None:
        name, amount, day, details, extras = values
        first = await new_owner(records)
        async with records.writing() as session:
            said = await log.begin(session, first, on=day, said_at=NOW + timedelta(microseconds=7))
            await places.find_or_add(session, first, name)
            plant = await plants.add(said, name=name, water_ml=amount + 1, detail=name)
            await products.add(said, n=amount, extras=extras, name=name, price=amount / 3)
            await log.record(said, [Entry(EventKind.READING, plant.id, details=details)])
        text = await export(records, first)
        async with records.reading() as session:
            files = await transfer.export_csv(session, first)
        for preview in (transfer.read_export(text), transfer.read_csv_export(files)):
            other = await new_owner(records)
            async with records.writing() as session:
                await transfer.import_export(session, other, preview)
            assert await export(records, other) == text

    details = st.dictionaries(TEXT, JSON_VALUES.filter(can_be_written), max_size=3)
    values = st.tuples(TEXT, AMOUNT, DAY, details, st.dictionaries(TEXT, AMOUNT, max_size=3))
    await run_examples(values.map(no_more_than_all), example, 30)


def no_more_than_all(
    values: tuple[str, float, date, dict[str, Any], dict[str, float]],
) -> tuple[str, float, date, dict[str, Any], dict[str, float]]:
    """The same with a label that adds up to less than 100 %."""
    name, amount, day, details, extras = values
    whole = max(1.0, (amount + sum(extras.values())) / 99)
    return name, amount / whole, day, details, {k: v / whole for k, v in extras.items()}


def can_be_written(value: object) -> bool:
    try:
        json.dumps(value, allow_nan=False, ensure_ascii=False).encode()
    except ValueError:
        return False
    return True


# Law: a file is either refused, or can be kept and undone to its beginning without a fault.
async def test_a_spoilt_file_is_refused_or_harmless(
    sqlite_records: Records, document: Document
) -> None:
    taken = 0

    async def example(spoil: tuple[list[int], object]) -> None:
        nonlocal taken
        way, value = spoil
        spoilt = json.loads(json.dumps(document))
        at: Any = spoilt
        # Walk to some value, and put another one in its place.
        for place, step in enumerate(way, 1):
            keys = list(at) if isinstance(at, dict) else list(range(len(at)))
            key = keys[step % len(keys)]
            here = step % 10 == 0 or place == len(way)
            if here or not isinstance(at[key], dict | list) or not at[key]:
                break
            at = at[key]
        at[key] = value
        try:
            preview = transfer.read_export(json.dumps(spoilt))
        except errors.ImportRefused:
            return
        if preview.problems:
            return
        taken += 1
        owner_id = await new_owner(sqlite_records)
        async with sqlite_records.writing() as session:
            await transfer.import_export(session, owner_id, preview)
        with contextlib.suppress(errors.NothingToUndo, errors.CannotUndo):
            while True:
                async with sqlite_records.writing() as session:
                    await log.undo(session, owner_id, said_at=NOW)

    small = st.integers(-1, 30) | st.booleans() | st.sampled_from([*EventKind, "2026-02-03"])
    way = st.lists(st.integers(0, 10**6), min_size=6, max_size=6)
    await example(([0], transfer.FORMAT))  # what it was: this one gets through, and is undone
    assert taken == 1
    await run_examples(st.tuples(way, small | JSON_VALUES), example, 150)
