"""How fast what is due is claimed and promised, and what an idle look at the clock costs.

By hand: python -m tests.benchmarks.bench_reminders; 1,000,000 reminders stored and 10,000 due in
the same minute (quick: 20,000 and 400), on SQLite and on the PostgreSQL of the pgserver wheel. A
database of its own each, deleted afterwards.

Claiming is `pings.due` and, in the same transaction, `pings.promise` and a letter for each owner:
what a worker does but for the words. The idle tick is `pings.due` where nothing is due, once with
few stored and once with all; it opens its own session, as a worker does.
"""

from __future__ import annotations

import asyncio
import tempfile
import time
from dataclasses import dataclass
from datetime import UTC, datetime
from statistics import median
from typing import Any

from sqlalchemy import insert, text

from bot.records import Records, open_records, pings, post
from bot.records.kinds import OwnerKind, ReminderKind, ReminderState
from bot.records.models import Owner, Ping, Reminder
from bot.records.pings import Promised
from tests.benchmarks.command import alone
from tests.benchmarks.figures import Asked, Figure
from tests.benchmarks.measuring import postgres

NOW_MS = 1_772_355_600_000
WEEK_MS = 7 * 24 * 3600 * 1000
CHANNEL = "bench"
CREATED = datetime(2026, 3, 1, tzinfo=UTC)
EACH = 4  # reminders of an owner; one of them is due
TICKS = 100  # of a round


def rows_of(first: int, last: int, stored: int, due: int) -> tuple[list[Any], list[Any]]:
    """Owners from one number to another, and their reminders."""
    owners = [
        {
            "id": number, "kind": OwnerKind.PERSON, "channel": CHANNEL,
            "external_id": f"grower {number}", "created_at": CREATED,
        }
        for number in range(first, last)
    ]  # fmt: skip
    every = max(1, stored // EACH // due)
    reminders = [
        {
            "owner_id": number, "id": place, "channel": CHANNEL, "kind": ReminderKind.FLUSH,
            "target": {"everything": True}, "rule": "FREQ=WEEKLY", "zone": "Europe/Warsaw",
            "start": "2026-03-01T10:00:00", "state": ReminderState.ACTIVE,
            "due_local": "2026-03-01T10:00:00", "created": CREATED,
            # Due in one minute for some, over the next weeks for the rest.
            "due_ms": NOW_MS - number % 60_000
            if place == 1 and number % every == 0 and number // every <= due
            else NOW_MS + 60_000 + (number * EACH + place) * 1_009 % (4 * WEEK_MS),
        }
        for number in range(first, last)
        for place in range(1, EACH + 1)
    ]  # fmt: skip
    return owners, reminders


async def store(records: Records, stored: int, due: int, *, first: int = 1) -> None:
    """Put reminders on record, up to so many."""
    last = stored // EACH + 1
    for start in range(first, last, 2_500):
        owners, reminders = rows_of(start, min(start + 2_500, last), stored, due)
        async with records.writing() as session:
            await session.execute(insert(Owner), owners)
            await session.execute(insert(Reminder), reminders)
    async with records.writing() as session:
        await session.execute(text("ANALYZE"))


@dataclass(frozen=True, slots=True)
class Size:
    """How many are stored, in the small database and in the other, how many are due; rounds."""

    few: int
    stored: int
    due: int
    rounds: int


FULL, QUICK = Size(10_000, 1_000_000, 10_000, 3), Size(2_000, 20_000, 400, 3)


async def idle(*several: Records, now_ms: int) -> list[float]:
    """The median of a look at the clock where nothing is due [ms], for each of the records.

    In turn, so that what else the machine does falls on all of them.
    """
    took: list[list[float]] = [[] for _ in several]
    for _ in range(TICKS):
        for records, times in zip(several, took, strict=True):
            start = time.perf_counter()
            async with records.writing() as session:
                assert await pings.due(session, CHANNEL, now_ms=now_ms, most=200) == []
            times.append(time.perf_counter() - start)
    return [median(times) * 1000 for times in took]


async def work(records: Records, batch: int) -> int:
    """Promise what is due, batch by batch, until nothing is. Returns how many."""
    done = 0
    while True:
        async with records.writing() as session:
            found = await pings.due(session, CHANNEL, now_ms=NOW_MS, most=batch)
            promised = [
                Promised(
                    one.owner_id, one.id, one.ping_id, one.due_ms, True,
                    one.due_ms + WEEK_MS, "2026-03-08T10:00:00",
                )
                for owner in found
                for one in owner.reminders
            ]  # fmt: skip
            await pings.promise(session, promised)
            letters = [
                post.Letter(owner.address.external_id, "sendMessage", {"text": "Clear water today"})
                for owner in found
            ]
            await post.promise(session, "bench:1", letters, now_ms=NOW_MS)
        if not promised:
            return done
        done += len(promised)


async def claiming(url: str, due: int, batch: int, workers: int) -> float:
    """Claims a second, with several workers on connections of their own."""
    opened = [await open_records(url) for _ in range(workers)]
    start = time.perf_counter()
    done = await asyncio.gather(*(work(records, batch) for records in opened))
    took = time.perf_counter() - start
    assert sum(done) == due, (done, due)
    async with opened[0].writing() as session:
        # As it was before, for the next figure.
        await session.execute(text("DELETE FROM outbox"))
        await session.execute(Ping.__table__.delete())  # type: ignore[attr-defined]
        await session.execute(
            text(f"UPDATE reminder SET due_ms = due_ms - {WEEK_MS} WHERE id = 1 AND due_ms > :now "
                 "AND due_local = '2026-03-08T10:00:00'"),
            {"now": NOW_MS},
        )  # fmt: skip
        await session.execute(
            text("UPDATE reminder SET due_local = '2026-03-01T10:00:00' WHERE due_local <> "
                 "'2026-03-01T10:00:00'")
        )  # fmt: skip
    for records in opened:
        await records.close()
    return due / took


async def measured(kind: str, few_url: str, url: str, size: Size) -> list[Figure]:
    few, many = await open_records(few_url), await open_records(url)
    await store(few, size.few, 1)
    start = time.perf_counter()
    await store(many, size.stored, size.due)
    stored_s = time.perf_counter() - start
    ticks = [await idle(few, many, now_ms=NOW_MS - WEEK_MS) for _ in range(size.rounds)]
    little, much = (tuple(values) for values in zip(*ticks, strict=True))
    await few.close()
    await many.close()
    small = f"{kind}: idle tick, {size.few:,} stored"
    figures = [
        Figure(f"{kind}: storing them", "s", (stored_s,)),
        Figure(small, "ms", little),
        Figure(f"{kind}: idle tick, {size.stored:,} stored", "ms", much, small),
    ]
    for batch in (20, 200):
        one = f"{kind}: claims of 1 worker, batches of {batch}"
        two = f"{kind}: claims of 2 workers, batches of {batch}"
        found: dict[str, list[float]] = {one: [], two: []}
        for _ in range(size.rounds):
            found[one].append(await claiming(url, size.due, batch, 1))
            found[two].append(await claiming(url, size.due, batch, 2))
        figures.append(Figure(one, "a second", tuple(found[one])))
        figures.append(Figure(two, "a second", tuple(found[two]), one))
    return figures


async def both(size: Size) -> list[Figure]:
    with tempfile.TemporaryDirectory() as folder:
        few, many = (f"sqlite:///{folder}/{name}.sqlite3" for name in ("few", "many"))
        figures = await measured("SQLite", few, many, size)
    with tempfile.TemporaryDirectory() as folder, postgres(folder) as server:
        for name in ("few", "many"):
            server.psql(f"CREATE DATABASE {name}")
        figures += await measured("PostgreSQL", server.get_uri("few"), server.get_uri("many"), size)
    return figures


def bench(asked: Asked) -> list[Figure]:
    """Idle ticks [ms] and claims a second on both databases."""
    return asyncio.run(both(QUICK if asked.quick else FULL))


if __name__ == "__main__":
    alone("reminders", bench)
