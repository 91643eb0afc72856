"""Pings on their way: one process against two, and how late they are at the messenger's limit.

    python -m tests.benchmarks.bench_pings

A stand-in for the messenger takes 20 ms for each message. First 400 pings (quick: 40) are due at
once, sent by one process and by two, without limits; SQLite and PostgreSQL. Then 25 fall due in
each second for 40 s (quick: 2), the messenger's own limits on; the lag is from the moment a ping
was due to its arrival there.
"""

from __future__ import annotations

import asyncio
import logging
import subprocess
import sys
import tempfile
import time
from typing import Any

from aiohttp import web
from sqlalchemy import update

from bot.records import open_records
from bot.records.models import Reminder
from bot.records.post import Limits
from tests.benchmarks.command import alone
from tests.benchmarks.figures import ROOT, Asked, Figure
from tests.benchmarks.measuring import AS_INSTALLED, postgres
from tests.channels.chatting import served
from tests.channels.loopback import Loopback
from tests.reminders.test_faults import FIRST_CHAT, store

SEND_S = 0.02


class Slow(Loopback):
    """Takes its time for each message; counts who has said hello."""

    greeted = 0

    async def _served(self, method: str, values: dict[str, Any]) -> web.StreamResponse:
        self.greeted += method == "getMe"
        if method == "sendMessage":
            await asyncio.sleep(SEND_S)
        return await super()._served(method, values)


async def throughput(url: str, pings: int, workers: int) -> float:
    """Pings a second."""
    loopback = Slow()
    await loopback.start()
    records = await open_records(url)
    await store(records, pings, int(time.time() * 1000) + 3_600_000)
    running = [
        subprocess.Popen(
            [sys.executable, "-m", "tests.reminders.pinging_process", loopback.url, url, f"w{n}"],
            stderr=subprocess.DEVNULL,
            env=AS_INSTALLED,
            cwd=ROOT,
        )
        for n in range(workers)
    ]
    while loopback.greeted < workers:
        await asyncio.sleep(0.05)
    await asyncio.sleep(1)  # all are up and idle
    async with records.writing() as session:
        await session.execute(update(Reminder).values(due_ms=int(time.time() * 1000)))
    while len(loopback.of("sendMessage")) < pings:
        await asyncio.sleep(0.01)
    first, last = (loopback.of("sendMessage")[n].at for n in (0, -1))
    for process in running:
        process.terminate()
    for process in running:
        process.wait()
    await records.close()
    await loopback.stop()
    return (pings - 1) / (last - first)


async def lags(url: str, seconds: int) -> list[float]:
    """How late each ping is, 25 a second [s]."""
    loopback = Slow()
    await loopback.start()
    records = await open_records(url)
    begin_ms = int(time.time() * 1000) + 3000
    count = 25 * seconds
    await store(records, count, begin_ms)
    async with records.writing() as session:
        for n in range(1, count + 1):
            await session.execute(
                update(Reminder).where(Reminder.owner_id == n).values(due_ms=begin_ms + 40 * n)
            )
    offset = time.time() - time.monotonic()
    async with served(records, loopback, receives=False, limits=Limits()):
        while len(loopback.of("sendMessage")) < count:
            await asyncio.sleep(0.1)
    await records.close()
    await loopback.stop()
    found = []
    for request in loopback.of("sendMessage"):
        n = request.values["chat_id"] - FIRST_CHAT
        found.append(request.at + offset - (begin_ms + 40 * n) / 1000)
    return sorted(found)


async def measured(pings: int, seconds: int, rounds: int) -> list[Figure]:
    logging.disable(logging.CRITICAL)
    figures = []
    with tempfile.TemporaryDirectory() as folder, postgres(folder) as server:

        def empty(kind: str, name: str) -> str:
            if kind == "SQLite":
                return f"sqlite:///{folder}/{name}.db"
            server.psql(f"CREATE DATABASE {name}")
            return str(server.get_uri(name))

        for kind in ("SQLite", "PostgreSQL"):
            found: dict[int, list[float]] = {1: [], 2: []}
            for turn in range(rounds):
                for workers, values in found.items():
                    url = empty(kind, f"t{turn}w{workers}")
                    values.append(await throughput(url, pings, workers))
            one, two = f"{kind}: pings of 1 process", f"{kind}: pings of 2 processes"
            figures.append(Figure(one, "a second", tuple(found[1])))
            figures.append(Figure(two, "a second", tuple(found[2]), one))
        late = await lags(f"sqlite:///{folder}/lag.db", seconds)
    p50, p99 = late[len(late) // 2], late[len(late) * 99 // 100]
    figures.append(Figure("25 a second at the limit: lag, p50", "s", (p50,)))
    figures.append(Figure("25 a second at the limit: lag, p99", "s", (p99,)))
    return figures


def bench(asked: Asked) -> list[Figure]:
    """Pings a second on both databases, and their lag [s]."""
    return asyncio.run(measured(40, 2, 1) if asked.quick else measured(400, 40, 3))


if __name__ == "__main__":
    alone("pings", bench)
