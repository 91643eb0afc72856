"""The messenger road beside a bare echo bot, on the same loopback server, in one run.

    python -m tests.benchmarks.bench_messenger

Prints CPU time per update, time to ready, memory, latency at 200 updates a second, and what
becomes of a thousand people who ask in the same second.
"""

from __future__ import annotations

import asyncio
import compileall
import logging
import os
import subprocess
import sys
import tempfile
import time
from pathlib import Path
from typing import Any

from bot.records import open_records
from tests.channels.chatting import LINE
from tests.channels.loopback import Loopback

#: With compiled modules, as from the second start on, whatever the shell says.
_AS_INSTALLED = {k: v for k, v in os.environ.items() if k != "PYTHONDONTWRITEBYTECODE"}
_TICKS = os.sysconf("SC_CLK_TCK")


def _cpu_s(pid: int) -> float:
    fields = Path(f"/proc/{pid}/stat").read_text().rpartition(")")[2].split()
    return (int(fields[11]) + int(fields[12])) / _TICKS


def _memory_mb(pid: int) -> float:
    lines = Path(f"/proc/{pid}/status").read_text().splitlines()
    return next(int(x.split()[1]) for x in lines if x.startswith("VmRSS")) / 1024


def _message(loopback: Loopback, person: int, text: str) -> dict[str, Any]:
    user = {"id": person, "is_bot": False, "first_name": "p"}
    return {
        "message_id": loopback.message_id(), "date": int(time.time()), "text": text, "from": user,
        "chat": {"id": person, "type": "private", "first_name": "p"},
    }  # fmt: skip


async def _until(loopback: Loopback, count: int, seconds: float) -> bool:
    end = time.monotonic() + seconds
    while time.monotonic() < end:
        if len(loopback.of("sendMessage")) >= count:
            return True
        await asyncio.sleep(0.005)
    return False


async def _measured(name: str, database: str) -> dict[str, float]:
    loopback = Loopback()
    await loopback.start()
    begun = time.monotonic()
    process = subprocess.Popen(
        [sys.executable, "-m", "tests.benchmarks.messenger_bots", name, loopback.url, database],
        stderr=subprocess.DEVNULL,
        env=_AS_INSTALLED,
    )
    loopback.push("message", _message(loopback, 1, LINE))
    assert await _until(loopback, 1, 30)
    found = {"ready [s]": time.monotonic() - begun}
    for n in range(100):  # warm
        loopback.push("message", _message(loopback, 10 + n, LINE))
    assert await _until(loopback, 101, 60)
    before, count = _cpu_s(process.pid), 1000
    for n in range(count):
        loopback.push("message", _message(loopback, 1000 + n, LINE))
    asked = time.monotonic()
    assert await _until(loopback, 101 + count, 120)
    found["1000 at once, all answered after [s]"] = time.monotonic() - asked
    found["CPU per update [ms]"] = 1000 * (_cpu_s(process.pid) - before) / count
    found["memory [MB]"] = _memory_mb(process.pid)
    done = len(loopback.of("sendMessage"))
    at: dict[int, float] = {}
    for n in range(1000):
        at[5000 + n] = time.monotonic()
        loopback.push("message", _message(loopback, 5000 + n, LINE))
        await asyncio.sleep(max(0.0, at[5000] + (n + 1) / 200 - time.monotonic()))
    assert await _until(loopback, done + 1000, 60)
    waits = sorted(r.at - at[r.values["chat_id"]] for r in loopback.of("sendMessage")[done:])
    found["200 a second, p50 [ms]"] = 1000 * waits[500]
    found["200 a second, p99 [ms]"] = 1000 * waits[990]
    process.terminate()
    process.wait(20)
    await loopback.stop()
    return found


async def main() -> None:
    logging.disable(logging.CRITICAL)
    with tempfile.TemporaryDirectory() as folder:
        # As from the second start on: the tables are there, and what makes them is not loaded.
        await (await open_records(f"sqlite:///{folder}/bench.db")).close()
        for name in ("bot", "grammar"):
            compileall.compile_dir(name, quiet=1)
        echo = await _measured("echo", "none")
        ours = await _measured("sinkside", f"sqlite:///{folder}/bench.db")
    print(f"{'':40} {'echo':>10} {'sinkside':>10} {'ratio':>8}")
    for key, value in echo.items():
        print(f"{key:40} {value:10.2f} {ours[key]:10.2f} {ours[key] / value:8.2f}")


if __name__ == "__main__":
    asyncio.run(main())
