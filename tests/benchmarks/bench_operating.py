"""What watching costs, and the chores of an operator on a database that is not small.

By hand: python -m tests.benchmarks.bench_operating; 100,000 reminders (quick: 3,000), the copy goes
to a second SQLite file.
"""

from __future__ import annotations

import asyncio
import tempfile
import time
from functools import partial
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
from tests.benchmarks.command import alone
from tests.benchmarks.figures import Asked, Figure
from tests.benchmarks.measuring import in_turn, took_ms

A_TIME = 10_000


def counting() -> list[Figure]:
    """What an update and a letter pay for being counted [us]."""
    metrics, pulse = Metrics(), Pulse()
    update = Claimed(1, "1:1", 0, now_ms())
    answers = [Letter("1", "sendMessage", {}, {"kind": "dose"})]
    letter = Claimed(1, "1", 0, 1, method="sendMessage")
    settled = Settled(sent=[(letter, 3)] * 20)
    acts = {
        "say in the log what is worked on": lambda: bind_contextvars(update=1, owner="person"),
        "count an update that was answered":
            lambda: postbox._count_done(metrics, update, answers),
        "count 20 letters that were sent": lambda: postbox._count_settled(metrics, settled),
        "a loop comes round": lambda: pulse.beat("working"),
    }  # fmt: skip
    timed = {name: partial(took_ms, act, A_TIME) for name, act in acts.items()}
    found = in_turn(5, timed)
    return [Figure(n, "us", tuple(1000 * ms for ms in values)) for n, values in found.items()]


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


async def looking(url: str, rounds: int) -> Figure:
    """What a look at /metrics costs [ms]."""
    records = await open_records(url)
    metrics = Metrics(lambda session: pings.oldest(session, "telegram"))
    took = []
    for _ in range(rounds):
        metrics._looked = 0.0
        start = time.perf_counter()
        await metrics.page(records)
        took.append(1000 * (time.perf_counter() - start))
    await records.close()
    return Figure("a look at /metrics", "ms", tuple(took))


async def chores(folder: str, rows: int, rounds: int) -> list[Figure]:
    source = f"sqlite:///{folder}/a.db"
    await fill(source, rows)
    figures = [await looking(source, 20)]
    backups, copies, looks = [], [], []
    for turn in range(rounds):
        start = time.perf_counter()
        file = Path(folder) / f"copy{turn}.db"
        made = await asyncio.to_thread(backup.back_up, source, file)
        backups.append(made.size / 1e6 / (time.perf_counter() - start))
        start = time.perf_counter()
        copied = await copying.copy_records(source, f"sqlite:///{folder}/b{turn}.db")
        copies.append(sum(t.rows for t in copied.values()) / (time.perf_counter() - start))
        start = time.perf_counter()
        report = await doctor.examine(source)
        looks.append(1000 * (time.perf_counter() - start))
        assert report.sound
    return [
        *figures,
        Figure("backup, checked: MB", "a second", tuple(backups)),
        Figure("migrate-data, checked: rows", "a second", tuple(copies)),
        Figure("doctor", "ms", tuple(looks)),
    ]


def bench(asked: Asked) -> list[Figure]:
    """Counting [us], a look [ms], chores."""
    with tempfile.TemporaryDirectory() as folder:
        rows, rounds = (3_000, 2) if asked.quick else (100_000, 3)
        return counting() + asyncio.run(chores(folder, rows, rounds))


if __name__ == "__main__":
    alone("operating", bench)
