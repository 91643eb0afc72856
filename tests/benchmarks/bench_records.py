"""How long typical answers of the records take: 10,000 owners, one with 500 plants.

Run by hand: `python tests/benchmarks/bench_records.py [URL]`; without a URL on a SQLite file
that is deleted afterwards. A URL must name an empty database. Prints medians in ms; each line
opens its own session, as an answer does.
"""

from __future__ import annotations

import asyncio
import statistics
import sys
import tempfile
import time
from collections.abc import Awaitable, Callable
from datetime import UTC, date, datetime, timedelta
from typing import Any

from sqlalchemy import insert
from sqlalchemy.ext.asyncio import AsyncSession

from bot.records import Records, forget, log, memory, open_records, owners, plants, transfer
from bot.records import products as shelf
from bot.records.kinds import EventKind, OwnerKind
from bot.records.log import Entry
from bot.records.models import Event, Owner, Plant
from bot.records.owners import Address

OWNERS = 10_000
PLANTS = 500
EVENTS = 20_000
DAY = date(2026, 3, 1)
NOW = datetime(2026, 3, 1, 8, tzinfo=UTC)
BIG = Address(OwnerKind.PERSON, "bench", "grower 5000")


def owner_rows() -> list[dict[str, Any]]:
    return [
        {
            "id": number,
            "kind": OwnerKind.PERSON,
            "channel": "bench",
            "external_id": f"grower {number}",
            "created_at": NOW,
        }
        for number in range(1, OWNERS + 1)
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


async def fill(records: Records) -> None:
    async with records.writing() as session:
        await session.execute(insert(Owner), owner_rows())
    for start in range(1, OWNERS + 1, 500):
        async with records.writing() as session:
            some = range(start, start + 500)
            sizes = {o: (PLANTS, EVENTS) if o == 5_000 else (5, 20) for o in some}
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


async def measure(of: Callable[[], Any], answer: Answer, owner_id: int, times: int) -> float:
    taken = []
    for _ in range(times + 1):
        start = time.perf_counter()
        async with of() as session:
            await answer(session, owner_id)
        taken.append((time.perf_counter() - start) * 1000)
    return statistics.median(taken[1:])


async def once(name: str, run: Callable[[], Awaitable[Any]]) -> Any:
    start = time.perf_counter()
    result = await run()
    print(f"{name:36} {(time.perf_counter() - start) * 1000:9.1f} ms, once")
    return result


async def main(url: str) -> None:
    records = await open_records(url)
    await once("filling", lambda: fill(records))
    async with records.reading() as session:
        owner = await owners.find(session, BIG)
    assert owner is not None
    for name, answer in READS.items():
        print(f"{name:36} {await measure(records.reading, answer, owner.id, 31):9.1f} ms")
    for name, answer in WRITES.items():
        print(f"{name:36} {await measure(records.writing, answer, owner.id, 11):9.1f} ms")

    async def export() -> str:
        async with records.reading() as session:
            return await transfer.export_json(session, owner.id)

    async def take_in(preview: transfer.Preview) -> None:
        async with records.writing() as session:
            await transfer.import_export(session, owner.id, preview, replace=True)

    async def forget_it() -> None:
        async with records.writing() as session:
            await forget.forget(session, owner.id)

    text = await once("export", export)
    print(f"{'its size':36} {len(text) / 1e6:9.1f} million characters")
    preview = await once("read_export", lambda: asyncio.to_thread(transfer.read_export, text))
    await once("import_export, replacing", lambda: take_in(preview))
    await once("forget", forget_it)
    await records.close()


if __name__ == "__main__":
    if len(sys.argv) > 1:
        asyncio.run(main(sys.argv[1]))
    else:
        with tempfile.TemporaryDirectory() as folder:
            asyncio.run(main(f"sqlite:///{folder}/bench.sqlite3"))
