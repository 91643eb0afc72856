"""No query without its owner, none that scans a table, and nobody sees what is not theirs.

Every public function that asks the database is called once on a world of two owners with the
same numbers and names; what it sends is looked at. A new function without a call here fails.
"""

from __future__ import annotations

import asyncio
import inspect
import re
import shutil
import sqlite3
from collections.abc import AsyncIterator, Awaitable, Callable, Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Any

import pytest
from sqlalchemy import event, make_url
from sqlalchemy.ext.asyncio import AsyncSession

from bot.records import (
    Records,
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
from bot.records.kinds import EventKind, OwnerKind, PingState, ReminderKind, Units
from bot.records.log import Entry
from bot.records.models import (
    Base,
    Card,
    Chat,
    Inbox,
    Memory,
    Outbox,
    Owned,
    Owner,
    Pace,
    Ping,
    Posted,
    Tap,
)
from bot.records.owners import Address

from .records_kit import ADDRESS, NEIGHBOUR, NOW, TODAY, Databases, begin

#: The messenger's post belongs to nobody: it is there for a moment, and asked for by its chat.
POST = (Inbox, Outbox, Chat, Posted, Tap, Card, Pace)
MODULES = (
    forget, log, memory, owners, pings, places, plants, products, reminders, transfer, waters,
)  # fmt: skip
#: What is due is looked for over all owners of a channel, and so is what is old.
OVER_ALL = {"pings.due", "pings.promise", "pings.oldest", "pings.clear_out"}


def public_queries() -> dict[str, Callable[..., Any]]:
    """Return every function of the rooms that asks the database."""
    return {
        f"{module.__name__.rpartition('.')[2]}.{name}": function
        for module in MODULES
        for name, function in vars(module).items()
        if inspect.iscoroutinefunction(function)
        and function.__module__ == module.__name__
        and not name.startswith("_")
        and f"{module.__name__.rpartition('.')[2]}.{name}" not in OVER_ALL
    }


DUE_MS = 1_772_355_600_000
REMINDER = reminders.ReminderFields(
    kind=ReminderKind.FLUSH, target={"plants": [1]}, rule="FREQ=WEEKLY", zone="UTC",
    start="2026-03-01T09:00:00", due_ms=DUE_MS, due_local="2026-03-01T09:00:00",
)  # fmt: skip

Call = Callable[[AsyncSession, int], Awaitable[Any]]


def saying(call: Callable[[log.Said], Awaitable[Any]]) -> Call:
    async def begun(session: AsyncSession, owner_id: int) -> Any:
        return await call(await begin(session, owner_id))

    return begun


async def take_in(session: AsyncSession, owner_id: int) -> None:
    preview = transfer.read_export(await transfer.export_json(session, owner_id))
    await transfer.import_export(session, owner_id, preview, replace=True)


READS: dict[str, Call] = {
    "forget.count_owned": forget.count_owned,
    "log.last_batch": log.last_batch,
    "log.newest": log.newest,
    "log.newest_batch": log.newest_batch,
    "log.anything": log.anything,
    "log.any_of": lambda s, o: log.any_of(s, o, (EventKind.FED, EventKind.CLEAR)),
    "log.passed_from": lambda s, o: log.passed_from(s, o, 1, limit=1_000),
    "log.history": lambda s, o: log.history(s, o, 1, since=TODAY, kinds=[EventKind.FED]),
    "log.poured": lambda s, o: log.poured(s, o, since=TODAY, until=TODAY),
    "log.entries": lambda s, o: log.entries(s, o, since=TODAY),
    "memory.recall": lambda s, o: memory.recall(s, o, "anna"),
    "owners.find": lambda s, _: owners.find(s, ADDRESS),
    "owners.get": owners.get,
    "pings.is_due": lambda s, o: pings.is_due(s, o, now_ms=DUE_MS),
    "pings.shown_by": lambda s, o: pings.shown_by(s, o, 1),
    "pings.unanswered": lambda s, o: pings.unanswered(s, o, since_ms=0),
    "places.listing": places.listing,
    "places.by_name": lambda s, o: places.by_name(s, o, "sill"),
    "places.exists": lambda s, o: places.exists(s, o, 1),
    "plants.get": lambda s, o: plants.get(s, o, 1),
    "plants.listing": plants.listing,
    "plants.count": plants.count,
    "plants.some": lambda s, o: plants.some(s, o, range(1, 100)),
    "plants.by_name": lambda s, o: plants.by_name(s, o, "Ruby"),
    "products.get": lambda s, o: products.get(s, o, 1),
    "products.listing": products.listing,
    "products.by_name": lambda s, o: products.by_name(s, o, "blue tub"),
    "products.default": products.default,
    "reminders.get": lambda s, o: reminders.get(s, o, 1),
    "reminders.listing": reminders.listing,
    "reminders.topics": reminders.topics,
    "transfer.export_json": transfer.export_json,
    "transfer.export_csv": transfer.export_csv,
    "waters.get": lambda s, o: waters.get(s, o, 1),
    "waters.listing": lambda s, o: waters.listing(s, o, kind="tap"),
    "waters.by_name": lambda s, o: waters.by_name(s, o, "barrel"),
    "waters.default": waters.default,
}

# In an order in which each finds what it needs.
WRITES: dict[str, Call] = {
    "owners.id_or_add": lambda s, _: owners.id_or_add(
        s, Address(OwnerKind.PERSON, "terminal", "eve"), created_at=NOW
    ),
    "owners.find_or_add": lambda s, _: owners.find_or_add(
        s, Address(OwnerKind.PERSON, "terminal", "new"), created_at=NOW
    ),
    "owners.hear": lambda s, o: owners.hear(s, o, "pl"),
    "log.begin": begin,
    "log.record": saying(
        lambda said: log.record(said, [Entry(EventKind.FED, 1, product_id=1, water_id=1)])
    ),
    "log.undo": lambda s, o: log.undo(s, o, said_at=NOW),
    "memory.remember": lambda s, o: memory.remember(s, o, "anna", request={}, said_at=NOW),
    "memory.ask": lambda s, o: memory.ask(s, o, "anna", question={}, asked_at=NOW),
    "memory.clear": lambda s, o: memory.clear(s, o, "anna"),
    "owners.change_settings": saying(lambda said: owners.change_settings(said, units=Units.US)),
    "places.find_or_add": lambda s, o: places.find_or_add(s, o, "bath"),
    "plants.add": saying(lambda said: plants.add(said, name="Onyx", place_id=1, water_id=1)),
    "plants.rename": saying(lambda said: plants.rename(said, 1, "Rubina")),
    "plants.move": saying(lambda said: plants.move(said, [1, 2], 1)),
    "plants.repot": saying(lambda said: plants.repot(said, [1], medium="bark")),
    "plants.set_growth": saying(lambda said: plants.set_growth(said, [1], "resting")),
    "plants.set_water": saying(lambda said: plants.set_water(said, [1], 1)),
    "plants.correct": saying(lambda said: plants.correct(said, [1], name="Rosa", count=2)),
    "plants.lose": saying(lambda said: plants.lose(said, [2])),
    "plants.standing": saying(lambda said: plants.standing(said, [1])),
    "products.add": saying(lambda said: products.add(said, name="green bottle")),
    "products.change": saying(lambda said: products.change(said, 1, name="tub", n=10)),
    "products.make_default": saying(lambda said: products.make_default(said, 2)),
    "products.remove": saying(lambda said: products.remove(said, 1)),
    "waters.add": saying(lambda said: waters.add(said, kind="rain", name="butt")),
    "waters.change": saying(lambda said: waters.change(said, 1, name="main", ec_ms_cm=0.4)),
    "waters.make_default": saying(lambda said: waters.make_default(said, 2)),
    "reminders.add": saying(lambda said: reminders.add(said, **REMINDER)),
    "reminders.change": saying(lambda said: reminders.change(said, 1, due_ms=DUE_MS, moved=True)),
    "pings.due_of": lambda s, o: pings.due_of(s, o, now_ms=DUE_MS),
    "pings.note_sent": lambda s, o: pings.note_sent(s, o, [1], message_id=1),
    "pings.note_failed": lambda s, o: pings.note_failed(s, o, [1], now_ms=DUE_MS),
    "pings.settle": lambda s, o: pings.settle(s, o, 1, PingState.DONE, now_ms=DUE_MS),
    "reminders.pause_all": lambda s, _: reminders.pause_all(s, ADDRESS),
    "reminders.resume_all": lambda s, _: reminders.resume_all(s, ADDRESS),
    "reminders.end": saying(lambda said: reminders.end(said, [1])),
    "owners.readdress": lambda s, o: owners.readdress(
        s, o, Address(OwnerKind.PERSON, "terminal", "anna 2")
    ),
    "transfer.import_export": take_in,
    "forget.drop_empty": forget.drop_empty,
    "forget.delete_collection": forget.delete_collection,
    "forget.forget": forget.forget,
}


async def grow(session: AsyncSession, address: Address) -> int:
    owner = await owners.find_or_add(session, address, created_at=NOW)
    said = await begin(session, owner.id)
    await places.find_or_add(session, owner.id, "sill")
    for water in ("tap", "barrel"):
        await waters.add(said, kind="tap", name=water)
    await waters.make_default(said, 1)
    for product in ("blue tub", "red box"):
        await products.add(said, name=product)
    await products.make_default(said, 1)
    for plant in ("Ruby", "Opal"):
        await plants.add(said, name=plant)
    await log.record(said, [Entry(EventKind.FED, plant_id) for plant_id in (1, 2)])
    await memory.remember(session, owner.id, "anna", request={}, said_at=NOW)
    await reminders.add(said, **REMINDER)
    due = await pings.due_of(session, owner.id, now_ms=DUE_MS)
    assert due is not None
    [one] = due.reminders
    promised = pings.Promised(owner.id, 1, one.ping_id, DUE_MS, True, DUE_MS, one.due_local)
    await pings.promise(session, [promised])
    shown = await session.get(Ping, (owner.id, one.ping_id))
    assert shown is not None
    shown.message_id = 1
    return owner.id


class World:
    """Two owners who have the same, and an ear on what is sent to the database."""

    def __init__(self, records: Records, file: str, mine: int, theirs: int) -> None:
        self.records = records
        self.file = file
        self.mine = mine
        self.theirs = theirs

    @contextmanager
    def listening(self) -> Iterator[list[tuple[str, Any]]]:
        heard: list[tuple[str, Any]] = []

        def hear(_c: Any, _cursor: Any, sent: str, given: Any, _x: Any, many: bool) -> None:
            if not sent.startswith(("BEGIN", "PRAGMA")):
                heard.append((sent, given[0] if many else given))

        engines = self.records._engines
        for engine in (engines.reading, engines.writing):
            event.listen(engine.sync_engine, "before_cursor_execute", hear)
        yield heard
        for engine in (engines.reading, engines.writing):
            event.remove(engine.sync_engine, "before_cursor_execute", hear)

    async def call(self, name: str) -> tuple[Any, list[tuple[str, Any]]]:
        with self.listening() as heard:
            if name in READS:
                async with self.records.reading() as session:
                    return await READS[name](session, self.mine), heard
            async with self.records.writing() as session:
                return await WRITES[name](session, self.mine), heard


@pytest.fixture(scope="module")
def grown(sqlite_databases: Databases) -> tuple[str, int, int]:
    """A file in which the two owners are on record, and their numbers."""

    async def make() -> tuple[str, int, int]:
        url = await sqlite_databases.migrated()
        records = await open_records(url)
        async with records.writing() as session:
            mine, theirs = await grow(session, ADDRESS), await grow(session, NEIGHBOUR)
        await records.close()
        return str(make_url(url).database), mine, theirs

    return asyncio.run(make())


@pytest.fixture
async def world(grown: tuple[str, int, int], tmp_path: Path) -> AsyncIterator[World]:
    file, mine, theirs = grown
    copy = shutil.copy(file, tmp_path / "world.sqlite3")
    records = await open_records(f"sqlite:///{copy}")
    yield World(records, str(copy), mine, theirs)
    await records.close()


def test_every_query_is_called_here() -> None:
    assert set(public_queries()) == {*READS, *WRITES}


@pytest.mark.parametrize(("name", "function"), public_queries().items())
def test_every_query_takes_its_owner(name: str, function: Callable[..., Any]) -> None:
    # `Said` holds the owner's id; an address is how an owner is found.
    parameters = inspect.signature(function).parameters.values()
    of_owner = {("owner_id", "int"), ("said", "Said"), ("address", "Address")}
    assert of_owner & {(parameter.name, parameter.annotation) for parameter in parameters}


@pytest.mark.parametrize("mapper", sorted(Base.registry.mappers, key=str), ids=str)
def test_every_table_has_an_owner_first_in_its_key(mapper: Any) -> None:
    model = mapper.class_
    key = [column.name for column in mapper.primary_key]
    if model is Owner:
        assert key == ["id"]
        return
    if model in POST:
        assert "owner_id" not in mapper.columns
        return
    assert key[0] == "owner_id"
    assert issubclass(model, Owned) or model is Memory
    # And whatever it points to is the same owner's.
    for constraint in mapper.local_table.foreign_key_constraints:
        assert constraint.column_keys[0] == "owner_id"


TABLES = "|".join(Base.metadata.tables)
NAMED = re.compile(rf"\b(?:FROM|JOIN|UPDATE|INTO) ({TABLES})\b(?: AS (\w+))?")

# The queries about a person and not about one owner's rows: what groups remember of them, and
# what the post keeps of them for a while.
BY_PERSON = re.compile(
    r"DELETE FROM memory WHERE memory\.person = \? AND \(?EXISTS"
    r"|UPDATE reminder SET person=\? WHERE reminder\.person = \? AND reminder\.channel = \?$"
    r"|DELETE FROM card WHERE card\.channel = \? AND \(card\.external_id = \? OR "
    r"|DELETE FROM posted WHERE posted\.person = \? AND "
    r"|DELETE FROM tap WHERE \(tap\.data LIKE '%' \|\| \? \|\| '%'"
    r"|DELETE FROM pace WHERE \(pace\.source LIKE .* AND pace\.lane = \?$"
    # Looked through for lanes and answers of the person; only those rows are deleted.
    r"|SELECT inbox\.id, inbox\.lane FROM inbox WHERE \(inbox\.source LIKE "
    r"|SELECT outbox\.id, outbox\.lane, outbox\.answers FROM outbox WHERE \(outbox\.source LIKE "
)
# Forgetting is rare and the post is short: that it reaches all of it counts more.
WALKED = {"forget.forget": {f"SCAN {model.__tablename__}" for model in POST}}


def without_owner(sent: str) -> list[str]:
    """Return the tables that a statement asks without saying whose rows."""
    if BY_PERSON.match(sent):
        return []
    missing = []
    for table, alias in NAMED.findall(sent):
        called = alias or table
        if table == "owner":
            found = re.search(r"INTO owner|owner\.id = \?|owner\.channel = \? AND", sent)
        elif sent.startswith("INSERT"):
            found = re.search(r"INTO \w+ \([^)]*\bowner_id\b", sent)
        else:
            found = re.search(rf"\b{called}\.owner_id (= (\?|\w+\.owner_id)|IN \(\?\))", sent)
        if not found:
            missing.append(called)
    return missing


@pytest.mark.parametrize(
    ("sent", "missing"),
    [
        ("SELECT plant.id FROM plant WHERE plant.owner_id = ? AND plant.id = ?", []),
        ("SELECT plant.id FROM plant WHERE plant.id = ?", ["plant"]),
        ("SELECT plant.owner_id FROM plant", ["plant"]),
        ("SELECT plant.id FROM plant WHERE plant.owner_id IN (?) AND plant.id = ?", []),
        ("SELECT plant.id FROM plant WHERE plant.owner_id IN (?, ?)", ["plant"]),
        ("DELETE FROM event", ["event"]),
        ("UPDATE water SET name=? WHERE water.id = ?", ["water"]),
        ("SELECT 1 FROM event AS event_1 WHERE event_1.id = ? AND event.owner_id = ?", ["event_1"]),
        ("SELECT owner.id FROM owner", ["owner"]),
        ("INSERT INTO place (id, name) VALUES (?, ?)", ["place"]),
    ],
)
def test_the_check_itself_sees_a_query_without_its_owner(sent: str, missing: list[str]) -> None:
    assert without_owner(sent) == missing


@pytest.mark.parametrize("name", [*READS, *WRITES])
async def test_every_statement_names_its_owner(name: str, world: World) -> None:
    _, heard = await world.call(name)
    flat = [re.sub(r"\s+", " ", sent) for sent, _ in heard]
    assert flat
    assert [sent for sent in flat if NAMED.search(sent)] == flat
    assert {sent: without_owner(sent) for sent in flat} == {sent: [] for sent in flat}


def plan(file: str, sent: str, given: Any) -> list[str]:
    with sqlite3.connect(file) as connection:
        found = [row[3] for row in connection.execute(f"EXPLAIN QUERY PLAN {sent}", given)]
    connection.close()
    return found


def test_the_check_itself_sees_a_scan(world: World) -> None:
    sent = "SELECT * FROM plant WHERE name = ?"
    assert any(step.startswith("SCAN") for step in plan(world.file, sent, ("Ruby",)))


@pytest.mark.parametrize("name", [*READS, *WRITES])
async def test_no_query_scans_a_table(name: str, world: World) -> None:
    _, heard = await world.call(name)
    scans = {
        sent: [
            step
            for step in plan(world.file, sent, given)
            if re.match(r"SCAN (?!CONST)", step) and step not in WALKED.get(name, ())
        ]
        for sent, given in heard
    }
    assert scans == {sent: [] for sent, _ in heard}


@pytest.mark.parametrize("name", READS)
async def test_nobody_reads_what_is_not_theirs(name: str, world: World) -> None:
    found, _ = await world.call(name)
    rows = found if isinstance(found, list) else [found]
    owned = [row for row in rows if isinstance(row, Owned | Memory)]
    assert {row.owner_id for row in owned} <= {world.mine}
    assert found


async def test_nobody_changes_what_is_not_theirs(world: World) -> None:
    async with world.records.reading() as session:
        before = await transfer.export_json(session, world.theirs)
        counts = await forget.count_owned(session, world.theirs)
    for name in WRITES:
        await world.call(name)
        async with world.records.reading() as session:
            assert await transfer.export_json(session, world.theirs) == before, name
            assert await forget.count_owned(session, world.theirs) == counts, name


@pytest.mark.parametrize("name", sorted({*WRITES} - {"forget.forget", "forget.delete_collection"}))
async def test_nothing_but_forgetting_changes_or_deletes_an_entry_of_the_log(
    name: str, world: World
) -> None:
    _, heard = await world.call(name)
    touching = [sent for sent, _ in heard if re.match(r"(UPDATE|DELETE FROM) event\b", sent)]
    # An import that replaces a collection was asked for as such.
    assert touching == [] or name == "transfer.import_export"
