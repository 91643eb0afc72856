"""How fast what is due is claimed and promised, and what an idle look at the clock costs.

Run by hand: `python -m tests.benchmarks.bench_reminders [stored] [due]`; without numbers 1,000,000
reminders stored and 10,000 due in the same minute, on SQLite and on the PostgreSQL of the pgserver
wheel. A database of its own each, deleted afterwards.

Claiming is `pings.due` and, in the same transaction, `pings.promise` and a letter for each owner:
what a worker does but for the words. The idle tick is `pings.due` where nothing is due, once with
10,000 stored and once with all; it opens its own session, as a worker does.
"""

from __future__ import annotations

import asyncio
import resource
import statistics
import sys
import tempfile
import time
from collections.abc import AsyncIterator, Iterator
from contextlib import asynccontextmanager, contextmanager
from datetime import UTC, datetime
from pathlib import Path
from typing import Any

from sqlalchemy import insert, text

from bot.records import Records, open_records, pings, post
from bot.records.kinds import OwnerKind, ReminderKind, ReminderState
from bot.records.models import Owner, Ping, Reminder
from bot.records.pings import Promised

NOW_MS = 1_772_355_600_000
WEEK_MS = 7 * 24 * 3600 * 1000
CHANNEL = "bench"
CREATED = datetime(2026, 3, 1, tzinfo=UTC)
FEW = 10_000
EACH = 4  # reminders of an owner; one of them is due
TICKS = 500


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
    return [statistics.median(times) * 1000 for times in took]


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
    [after] = await idle(opened[0], now_ms=NOW_MS)
    print(f"  an idle tick right after them {after:.3f} ms")
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


async def measure(kind: str, few_url: str, url: str, stored: int, due: int) -> None:
    few, many = await open_records(few_url), await open_records(url)
    await store(few, FEW, 1)
    start = time.perf_counter()
    await store(many, stored, due)
    print(f"{kind}: {stored:,} stored in {time.perf_counter() - start:.0f} s, {due:,} due")
    little, much = await idle(few, many, now_ms=NOW_MS - WEEK_MS)
    print(f"  idle tick     {little:8.3f} ms with {FEW:,}, {much:.3f} ms with {stored:,}: "
          f"{much / little:.2f} times")  # fmt: skip
    await few.close()
    await many.close()
    for batch in (20, 200):
        for workers in (1, 2):
            rate = await claiming(url, due, batch, workers)
            print(f"  {workers} worker(s), batches of {batch:3}: {rate:10,.0f} claims a second")
    print(
        f"  largest memory so far {resource.getrusage(resource.RUSAGE_SELF).ru_maxrss // 1024} MB"
    )


@contextmanager
def sqlite_urls() -> Iterator[tuple[str, str]]:
    with tempfile.TemporaryDirectory() as folder:
        yield f"sqlite:///{folder}/few.sqlite3", f"sqlite:///{folder}/many.sqlite3"


@asynccontextmanager
async def postgres_urls() -> AsyncIterator[tuple[str, str]]:
    from pgserver.postgres_server import get_server

    from tests.records.records_kit import Databases

    with tempfile.TemporaryDirectory(prefix="records-") as top:
        place = Path(top) / "deep" / "postgres"
        place.mkdir(parents=True)
        server = get_server(place / "data", cleanup_mode="stop")
        databases = Databases(Path(top), server.get_uri())
        try:
            yield await databases.empty(), await databases.empty()
        finally:
            server.cleanup()


async def main(stored: int = 1_000_000, due: int = 10_000) -> None:
    with sqlite_urls() as urls:
        await measure("SQLite", *urls, stored, due)
    async with postgres_urls() as urls:
        await measure("PostgreSQL", *urls, stored, due)


if __name__ == "__main__":
    asyncio.run(main(*(int(argument) for argument in sys.argv[1:])))
