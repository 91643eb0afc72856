"""How long typical answers of the records take: 10,000 owners, one with 500 plants.

By hand: python -m tests.benchmarks.bench_records; on a SQLite file that is deleted afterwards.
Each act opens its own session, as an answer does. Quick: 1,000 owners.
"""

from __future__ import annotations

import asyncio
import tempfile
import time
from collections.abc import Awaitable, Callable
from datetime import UTC, date, datetime, timedelta
from functools import partial
from typing import Any

from sqlalchemy import insert
from sqlalchemy.ext.asyncio import AsyncSession

from bot.records import Records, forget, log, memory, open_records, owners, plants, transfer
from bot.records import products as shelf
from bot.records.kinds import EventKind, OwnerKind
from bot.records.log import Entry
from bot.records.models import Event, Owner, Plant
from bot.records.owners import Address
from tests.benchmarks.command import alone
from tests.benchmarks.figures import Asked, Figure

OWNERS = 10_000
PLANTS = 500
EVENTS = 20_000
DAY = date(2026, 3, 1)
NOW = datetime(2026, 3, 1, 8, tzinfo=UTC)
BIG_ID = 500
BIG = Address(OwnerKind.PERSON, "bench", f"grower {BIG_ID}")


def owner_rows(owners_: int) -> list[dict[str, Any]]:
    return [
        {
            "id": number,
            "kind": OwnerKind.PERSON,
            "channel": "bench",
            "external_id": f"grower {number}",
            "created_at": NOW,
        }
        for number in range(1, owners_ + 1)
    ]


def plant_rows(owner_id: int, number: int) -> list[dict[str, Any]]:
    return [
        {
            "owner_id": owner_id,
            "id": plant_id,
            "name": f"plant {plant_id}",
            "name_key": f"plant {plant_id}",
            "genus": "Phalaenopsis",
            "count": 1,
            "medium": "bark",
            "pot_cm": 12.0,
            "added_on": DAY,
            "last_fed_on": DAY,
            "present": True,
        }
        for plant_id in range(1, number + 1)
    ]


def event_rows(owner_id: int, number: int, of_plants: int) -> list[dict[str, Any]]:
    return [
        {
            "owner_id": owner_id,
            "id": event_id,
            "batch": event_id - (event_id - 1) % of_plants,
            "kind": EventKind.FED,
            "on": DAY - timedelta((number - event_id) // of_plants * 7),
            "said_at": NOW,
            "plant_id": (event_id - 1) % of_plants + 1,
            "payload": {
                "details": {"strength": 0.25, "water_ml": 150},
                "before": {"last_fed_on": None},
                "after": {"last_fed_on": DAY.isoformat()},
            },
        }
        for event_id in range(1, number + 1)
    ]


async def fill(records: Records, owners_: int = OWNERS) -> None:
    async with records.writing() as session:
        await session.execute(insert(Owner), owner_rows(owners_))
    for start in range(1, owners_ + 1, 500):
        async with records.writing() as session:
            some = range(start, start + 500)
            sizes = {o: (PLANTS, EVENTS) if o == BIG_ID else (5, 20) for o in some}
            plants_ = [row for o, (number, _) in sizes.items() for row in plant_rows(o, number)]
            events = [row for o, (of, number) in sizes.items() for row in event_rows(o, number, of)]
            await session.execute(insert(Plant), plants_)
            await session.execute(insert(Event), events)


Answer = Callable[[AsyncSession, int], Awaitable[Any]]


async def feed_everything(session: AsyncSession, owner_id: int) -> None:
    said = await log.begin(session, owner_id, on=DAY, said_at=NOW)
    await log.record(said, [Entry(EventKind.FED, number) for number in range(1, PLANTS + 1)])


async def feed_one(session: AsyncSession, owner_id: int) -> None:
    said = await log.begin(session, owner_id, on=DAY, said_at=NOW)
    await log.record(said, [Entry(EventKind.FED, 7)])


async def what_an_answer_reads(session: AsyncSession, _owner_id: int) -> None:
    owner = await owners.find(session, BIG)
    assert owner is not None
    await memory.recall(session, owner.id, "anna")
    await plants.listing(session, owner.id)
    await shelf.listing(session, owner.id)


READS: dict[str, Answer] = {
    "owner by address": lambda s, _: owners.find(s, BIG),
    "one plant by name": lambda s, o: plants.by_name(s, o, "Plant 250"),
    "500 plants": plants.listing,
    "history of a plant": lambda s, o: log.history(s, o, 250, since=DAY - timedelta(150)),
    "last batch (500 entries)": log.last_batch,
    "last 1,000 entries": log.entries,
    "owner, memory, plants, products": what_an_answer_reads,
    "counts before forgetting": forget.count_owned,
}

WRITES: dict[str, Answer] = {
    "remember a request": lambda s, o: memory.remember(s, o, "anna", request={}, said_at=NOW),
    "feed one plant": feed_one,
    "feed 500 plants": feed_everything,
    "undo that": lambda s, o: log.undo(s, o, said_at=NOW),
}


async def taken_ms(of: Callable[[], Any], answer: Answer, owner_id: int) -> float:
    """Time of one act in a session of its own [ms]."""
    start = time.perf_counter()
    async with of() as session:
        await answer(session, owner_id)
    return 1000 * (time.perf_counter() - start)


async def measured(url: str, quick: bool) -> list[Figure]:
    records = await open_records(url)
    start = time.perf_counter()
    await fill(records, 1_000 if quick else OWNERS)
    figures = [Figure("filling", "s", (time.perf_counter() - start,))]
    async with records.reading() as session:
        owner = await owners.find(session, BIG)
    assert owner is not None
    for acts, of, rounds in (
        (READS, records.reading, 7 if quick else 31),
        (WRITES, records.writing, 3 if quick else 11),
    ):
        for name, answer in acts.items():
            # The first fills the caches.
            taken = [await taken_ms(of, answer, owner.id) for _ in range(rounds + 1)][1:]
            figures.append(Figure(name, "ms", tuple(taken)))
    figures += await _whole(records, owner.id, 1 if quick else 3)
    await records.close()
    return figures


async def _whole(records: Records, owner_id: int, rounds: int) -> list[Figure]:
    """A collection out, in again, and forgotten [ms]."""
    times: dict[str, list[float]] = {}

    async def timed(name: str, act: Callable[[], Awaitable[Any]]) -> Any:
        start = time.perf_counter()
        result = await act()
        times.setdefault(name, []).append(1000 * (time.perf_counter() - start))
        return result

    async def export() -> str:
        async with records.reading() as session:
            return await transfer.export_json(session, owner_id)

    async def take_in(preview: transfer.Preview) -> None:
        async with records.writing() as session:
            await transfer.import_export(session, owner_id, preview, replace=True)

    async def forget_it() -> None:
        async with records.writing() as session:
            await forget.forget(session, owner_id)

    text = ""
    for _ in range(rounds):
        text = await timed("export", export)
        preview = await timed("read_export", partial(asyncio.to_thread, transfer.read_export, text))
        await timed("import_export, replacing", partial(take_in, preview))
    await timed("forget", forget_it)
    return [
        Figure("size of the export", "MB", (len(text) / 1e6,)),
        *(Figure(name, "ms", tuple(taken)) for name, taken in times.items()),
    ]


def bench(asked: Asked) -> list[Figure]:
    """Reads and writes [ms], and a whole collection."""
    with tempfile.TemporaryDirectory() as folder:
        return asyncio.run(measured(f"sqlite:///{folder}/bench.sqlite3", asked.quick))


if __name__ == "__main__":
    alone("records", bench)
