"""Pings on their way: one process against two, and how late they are at the messenger's limit.

    python -m tests.benchmarks.bench_pings [pings] [seconds]

A stand-in for the messenger takes 20 ms for each message. First so many pings (400) are due at
once, sent by one process and by two, without limits; SQLite and PostgreSQL. Then 25 fall due in
each second for so many seconds (120), the messenger's own limits on; the lag is from the moment a
ping was due to its arrival there.
"""

from __future__ import annotations

import asyncio
import logging
import subprocess
import sys
import tempfile
import time
from pathlib import Path
from typing import Any

from aiohttp import web
from sqlalchemy import update

from bot.records import open_records
from bot.records.models import Reminder
from tests.channels.chatting import Limits, served
from tests.channels.loopback import Loopback
from tests.reminders.test_faults import FIRST_CHAT, store

SEND_S = 0.02


class Slow(Loopback):
    """Takes its time for each message."""

    async def _served(self, method: str, values: dict[str, Any]) -> web.StreamResponse:
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
        )
        for n in range(workers)
    ]
    await asyncio.sleep(4)  # all are up and idle
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


async def main(pings: int, seconds: int) -> None:
    logging.disable(logging.CRITICAL)
    from pgserver.postgres_server import get_server

    with tempfile.TemporaryDirectory() as folder:
        place = Path(folder) / "deep" / "postgres"
        place.mkdir(parents=True)
        Path(folder).chmod(0o755)
        server = get_server(place / "data", cleanup_mode="delete")
        urls = {}
        for workers in (1, 2):
            urls["SQLite", workers] = f"sqlite:///{folder}/{workers}.db"
            server.psql(f"CREATE DATABASE w{workers}")
            urls["PostgreSQL", workers] = server.get_uri(f"w{workers}")
        for name in ("SQLite", "PostgreSQL"):
            one, two = [await throughput(urls[name, n], pings, n) for n in (1, 2)]
            print(
                f"{name}: {one:.0f} pings a second, two processes {two:.0f}: {two / one:.2f} times"
            )
        late = await lags(f"sqlite:///{folder}/lag.db", seconds)
        p50, p99 = late[len(late) // 2], late[len(late) * 99 // 100]
        print(f"25 a second for {seconds} s: lag p50 {p50:.2f} s, p99 {p99:.2f} s")
        server.cleanup()


if __name__ == "__main__":
    asyncio.run(main(*(int(a) for a in sys.argv[1:]), *((400, 120)[len(sys.argv) - 1 :])))
