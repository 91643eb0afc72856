"""The messenger road beside a bare echo bot, on a loopback server of the same kind, in one run.

    python -m tests.benchmarks.bench_messenger

Time to ready, processor time of an update, updates a second when hundreds ask at once, memory,
and latency at a steady load. The bots take turns, round by round, each in a process that is
started afresh for every round.
"""

from __future__ import annotations

import asyncio
import compileall
import contextlib
import logging
import subprocess
import sys
import tempfile
import time
from collections.abc import AsyncIterator
from dataclasses import dataclass
from typing import Any

from bot.records import open_records
from tests.benchmarks.command import alone
from tests.benchmarks.figures import ROOT, Asked, Figure
from tests.benchmarks.measuring import AS_INSTALLED, cpu_s, memory_mb
from tests.channels.chatting import LINE
from tests.channels.loopback import TOKEN, Loopback


@dataclass(frozen=True, slots=True)
class Load:
    """How many rounds, and in each: to warm up, asking at once, at a steady rate [a second]."""

    rounds: int
    warm: int
    at_once: int
    steady: int
    rate: int


FULL, QUICK = Load(3, 100, 500, 500, 100), Load(1, 30, 100, 60, 40)
READY, RATE, CPU, MEMORY, P50, P99 = (
    "start to first answer", "updates answered, all at once", "processor time of an update",
    "memory", "steady load, p50", "steady load, p99",
)  # fmt: skip
UNITS = {READY: "s", RATE: "a second", CPU: "ms", MEMORY: "MB", P50: "ms", P99: "ms"}


def _message(loopback: Loopback, person: int, text: str) -> dict[str, Any]:
    user = {"id": person, "is_bot": False, "first_name": "p"}
    return {
        "message_id": loopback.message_id(), "date": int(time.time()), "text": text, "from": user,
        "chat": {"id": person, "type": "private", "first_name": "p"},
    }  # fmt: skip


async def _until(loopback: Loopback, count: int) -> None:
    end = time.monotonic() + 120
    while len(loopback.of("sendMessage")) < count:
        if time.monotonic() > end:
            raise RuntimeError(f"{count} answers did not come")
        await asyncio.sleep(0.005)


@contextlib.asynccontextmanager
async def _running(name: str, database: str) -> AsyncIterator[tuple[Loopback, int]]:
    """One of the bots, and the messenger that it serves."""
    loopback = Loopback()
    await loopback.start()
    process = subprocess.Popen(
        [
            sys.executable,
            "-m",
            "tests.benchmarks.messenger_bots",
            name,
            TOKEN,
            loopback.url,
            database,
        ],
        stderr=subprocess.DEVNULL,
        env=AS_INSTALLED,
        cwd=ROOT,
    )
    try:
        yield loopback, process.pid
    finally:
        process.terminate()
        process.wait(20)
        await loopback.stop()


async def _round(name: str, database: str, load: Load) -> dict[str, float]:
    begun = time.monotonic()
    async with _running(name, database) as (loopback, pid):
        loopback.push("message", _message(loopback, 1, LINE))
        await _until(loopback, 1)
        found = {READY: time.monotonic() - begun}
        for n in range(load.warm):
            loopback.push("message", _message(loopback, 10 + n, LINE))
        done = 1 + load.warm
        await _until(loopback, done)
        used, asked = cpu_s(pid), time.monotonic()
        for n in range(load.at_once):
            loopback.push("message", _message(loopback, 1000 + n, LINE))
        done += load.at_once
        await _until(loopback, done)
        found[RATE] = load.at_once / (time.monotonic() - asked)
        found[CPU] = 1000 * (cpu_s(pid) - used) / load.at_once
        found[MEMORY] = memory_mb(pid)
        waits = await _steady(loopback, done, load)
        found[P50] = 1000 * waits[len(waits) // 2]
        found[P99] = 1000 * waits[len(waits) * 99 // 100]
        return found


async def _steady(loopback: Loopback, done: int, load: Load) -> list[float]:
    """How long each waits who asks at a steady rate [s]."""
    at: dict[int, float] = {}
    first = 5000
    for n in range(load.steady):
        at[first + n] = time.monotonic()
        loopback.push("message", _message(loopback, first + n, LINE))
        await asyncio.sleep(max(0.0, at[first] + (n + 1) / load.rate - time.monotonic()))
    await _until(loopback, done + load.steady)
    return sorted(r.at - at[r.values["chat_id"]] for r in loopback.of("sendMessage")[done:])


async def measured(load: Load) -> list[Figure]:
    logging.disable(logging.CRITICAL)
    found: dict[str, list[dict[str, float]]] = {"echo": [], "sinkside": []}
    for name in ("bot", "grammar"):
        compileall.compile_dir(ROOT / name, quiet=1)
    for _ in range(load.rounds):
        with tempfile.TemporaryDirectory() as folder:
            # As from the second start on: the tables are there, what makes them is not loaded.
            url = f"sqlite:///{folder}/bench.db"
            await (await open_records(url)).close()
            for name, database in (("echo", "none"), ("sinkside", url)):
                found[name].append(await _round(name, database, load))
    figures = []
    for key, unit in UNITS.items():
        for name, rounds in found.items():
            beside = None if name == "echo" else f"echo: {key}"
            values = tuple(one[key] for one in rounds)
            figures.append(Figure(f"{name}: {key}", unit, values, beside))
    return figures


def bench(asked: Asked) -> list[Figure]:
    """Both bots under the same load."""
    return asyncio.run(measured(QUICK if asked.quick else FULL))


if __name__ == "__main__":
    alone("messenger", bench)
