"""What watching costs, and the chores of an operator on a database that is not small.

Run by hand: `python -m tests.benchmarks.bench_operating [ROWS] [URL]`; ROWS reminders (default
200,000), URL an empty PostgreSQL database (without it the records go to a second SQLite file).
The memory is that of the whole process, before and at its highest.
"""

from __future__ import annotations

import asyncio
import resource
import sys
import tempfile
import time
import timeit
from pathlib import Path
from typing import Any

from sqlalchemy import insert
from structlog.contextvars import bind_contextvars

from bot.conversation.postbox import Claimed, Letter, Settled, now_ms
from bot.operating import postbox
from bot.operating.health import Pulse
from bot.operating.metrics import Metrics
from bot.records import backup, copying, doctor, open_records, pings
from bot.records.kinds import OwnerKind, ReminderKind, ReminderState
from bot.records.models import Inbox, Outbox, Owner, Reminder
from tests.benchmarks.bench_records import NOW

A_TIME = 10_000


def counting() -> None:
    """What an update and a letter pay for being counted [µs]."""
    metrics, pulse = Metrics(), Pulse()
    update = Claimed(1, "1:1", 0, now_ms())
    answers = [Letter("1", "sendMessage", {}, {"kind": "dose"})]
    letter = Claimed(1, "1", 0, 1, method="sendMessage")
    settled = Settled(sent=[(letter, 3)] * 20)
    for name, act, each in (
        ("say in the log what is worked on", lambda: bind_contextvars(update=1, owner="person"), 1),
        ("count an update that was answered",
         lambda: postbox._count_done(metrics, update, answers), 1),
        ("count a letter that was sent", lambda: postbox._count_settled(metrics, settled), 20),
        ("a loop comes round", lambda: pulse.beat("working"), 1),
    ):  # fmt: skip
        took = min(timeit.repeat(act, number=A_TIME, repeat=5)) / A_TIME / each
        print(f"{name}: {took * 1e6:.2f} µs")


def reminder_rows(first: int, last: int) -> list[dict[str, Any]]:
    return [
        {
            "owner_id": n, "id": 1, "channel": "telegram", "kind": ReminderKind.FLUSH,
            "target": {"everything": True}, "rule": "FREQ=WEEKLY", "start": "2026-03-01T09:00:00",
            "zone": "Europe/Lisbon", "state": ReminderState.ACTIVE, "due_ms": 2**42 + n,
            "due_local": "2026-03-08T09:00:00", "moved": False, "offered": False, "created": NOW,
        }
        for n in range(first, last)
    ]  # fmt: skip


async def fill(url: str, rows: int) -> None:
    records = await open_records(url)
    at = now_ms()
    for first in range(1, rows + 1, A_TIME):
        last = min(first + A_TIME, rows + 1)
        owners = [
            {"id": n, "kind": OwnerKind.PERSON, "channel": "telegram", "external_id": str(n),
             "created_at": NOW}
            for n in range(first, last)
        ]  # fmt: skip
        claim = {"free_ms": 0, "tries": 0}
        done = [
            {"source": "telegram:1", "update_id": n, "lane": f"{n}:{n}", "body": None,
             "received_ms": at, "state": "done", **claim}
            for n in range(first, last)
        ]  # fmt: skip
        waiting = [
            {"source": "telegram:1", "lane": str(n), "method": "sendMessage", "created_ms": at,
             "body": {"chat_id": n, "text": "x" * 400}, "answers": None, "state": "open", **claim}
            for n in range(first, last, 10)
        ]  # fmt: skip
        async with records.writing() as session:
            await session.execute(insert(Owner), owners)
            await session.execute(insert(Reminder), reminder_rows(first, last))
            await session.execute(insert(Inbox), done)
            await session.execute(insert(Outbox), waiting)
    await records.close()


async def looking(url: str) -> None:
    """What a look at /metrics costs [ms]."""
    records = await open_records(url)
    metrics = Metrics(lambda session: pings.oldest(session, "telegram"))
    took = []
    for _ in range(20):
        metrics._looked = 0.0
        start = time.perf_counter()
        await metrics.page(records)
        took.append(time.perf_counter() - start)
    await records.close()
    print(f"a look at /metrics: {sorted(took)[10] * 1000:.1f} ms")


def memory_mb() -> float:
    return resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1000


async def main(rows: int, url: str | None) -> None:
    counting()
    with tempfile.TemporaryDirectory() as folder:
        source = f"sqlite:///{folder}/a.db"
        await fill(source, rows)
        print(f"{rows} reminders and owners, {rows} updates done, {rows // 10} letters waiting")
        await looking(source)
        start = time.perf_counter()
        made = await asyncio.to_thread(backup.back_up, source, Path(folder) / "copy.db")
        took = time.perf_counter() - start
        print(f"backup, checked: {took:.2f} s for {made.size / 1e6:.0f} MB")
        before, start = memory_mb(), time.perf_counter()
        copied = await copying.copy_records(source, url or f"sqlite:///{folder}/b.db")
        took, number = time.perf_counter() - start, sum(t.rows for t in copied.values())
        print(
            f"migrate-data, checked: {took:.1f} s for {number} rows ({number / took:.0f} a second),"
            f" {before:.0f} MB before, {memory_mb():.0f} MB at most"
        )
        start = time.perf_counter()
        report = await doctor.examine(source)
        print(f"doctor: {time.perf_counter() - start:.2f} s, sound: {report.sound}")


if __name__ == "__main__":
    arguments = sys.argv[1:]
    asyncio.run(
        main(int(arguments[0]) if arguments else 200_000, arguments[1] if arguments[1:] else None)
    )
