"""The bot's processes: started, ended, killed, weighed; and what they logged."""

from __future__ import annotations

import asyncio
import contextlib
import json
import os
import signal
import subprocess
import sys
import time
from collections import Counter
from dataclasses import dataclass, field
from pathlib import Path
from statistics import median

from tests.channels.loopback import TOKEN
from tests.soak.clock import BotClock
from tests.soak.process import CLAIM, CLOCK

ROOT = Path(__file__).parents[2]
#: How long a process may take to end when it is told to [s].
_ENDS_WITHIN_S = 30.0
#: A start takes no longer than this [s], on a busy machine (ours).
_STARTS_S = 30.0
#: What the faults that we make may bring to the log: polling goes on, a menu is set at the next
#: start, and the library says of each 429 that it was one.
EXPECTED = (
    "warning: polling failed:",
    "warning: the messenger cannot be reached:",
    "warning: the menu of commands was not set:",
    "error: Rate limit hit after maximum of retries",
)
#: A life is weighed that lasted so much of the whole soak at least.
_LONG = 0.3


@dataclass
class LifeOf:
    """One process, from its start to its end.

    `weighed` are samples of its memory: seconds after the beginning of the soak, MB.
    """

    name: str
    process: subprocess.Popen[bytes]
    log: Path
    begun_s: float
    ended_s: float | None = None
    how: str = "running"
    weighed: list[tuple[float, float]] = field(default_factory=list)

    @property
    def ended_well(self) -> bool:
        """As it was meant; who is told to end while still starting has no time for manners."""
        starting = self.ended_s is not None and self.ended_s - self.begun_s < _STARTS_S
        fine = ("running", "killed", "ended with 0", *(["ended with -15"] if starting else []))
        return self.how in fine

    def flat(self) -> tuple[float, float, float] | None:
        """Memory after warming up, at the end [MB], and their ratio; None without samples.

        Warming up is the first fifth of a life; what follows it is held against the last fifth.
        """
        if len(self.weighed) < 10:
            return None
        fifth = len(self.weighed) // 5
        early = median(mb for _, mb in self.weighed[fifth : 2 * fifth])
        late = median(mb for _, mb in self.weighed[-fifth:])
        return early, late, late / early


@dataclass
class Bots:
    """Processes of one bot on one database."""

    api_url: str
    database: str
    folder: Path
    clock: BotClock
    claim_s: float = 60.0
    lives: list[LifeOf] = field(default_factory=list)
    running: dict[str, LifeOf] = field(default_factory=dict)
    kills: list[float] = field(default_factory=list)
    begun_s: float = field(default_factory=time.monotonic)

    def start(self, name: str) -> None:
        """Start `serve` or `remind`."""
        log = self.folder / f"{len(self.lives):03}-{name}.log"
        with log.open("wb") as out:
            process = subprocess.Popen(
                [sys.executable, "-m", "tests.soak.process", name, "--database", self.database],
                cwd=ROOT, stdout=out, stderr=out, env=self._environment(self.clock),
                start_new_session=True,  # as a service of its own
            )  # fmt: skip
        life = LifeOf(name, process, log, time.monotonic() - self.begun_s)
        self.lives.append(life)
        self.running[name] = life

    def _environment(self, clock: BotClock) -> dict[str, str]:
        kept = {n: v for n, v in os.environ.items() if not n.startswith("SINKSIDE_")}
        return {
            **kept,
            CLOCK: clock.as_text(),
            CLAIM: str(self.claim_s),
            "TZ": "UTC",
            "SINKSIDE_TELEGRAM_TOKEN": TOKEN,
            "SINKSIDE_TELEGRAM_API_URL": self.api_url,
            "SINKSIDE_LOG_FORMAT": "json",
        }

    async def kill(self, name: str) -> None:
        """`kill -9`, as a machine that goes dark."""
        life = self.running.pop(name)
        self.kills.append(time.monotonic())
        life.process.kill()
        await asyncio.to_thread(life.process.wait)
        self._ended(life, "killed")

    async def end(self, name: str) -> None:
        """As an operator ends it."""
        life = self.running.pop(name)
        life.process.send_signal(signal.SIGTERM)
        try:
            code = await asyncio.to_thread(life.process.wait, _ENDS_WITHIN_S)
            self._ended(life, f"ended with {code}")
        except subprocess.TimeoutExpired:
            life.process.kill()
            self._ended(life, "did not end")

    def _ended(self, life: LifeOf, how: str) -> None:
        life.ended_s, life.how = time.monotonic() - self.begun_s, how

    def weigh(self) -> None:
        """Take a sample of each process's memory; one that ended by itself is noted."""
        for name, life in list(self.running.items()):
            code = life.process.poll()
            if code is not None:
                del self.running[name]
                self._ended(life, f"broke off with {code}")
                self.start(name)  # as a machine's own supervisor does
                continue
            with contextlib.suppress(OSError):
                mb = _resident_mb(life.process.pid)
                life.weighed.append((time.monotonic() - self.begun_s, mb))

    def long_lives(self, whole_s: float) -> list[LifeOf]:
        """Those that lasted long enough to say whether memory grows."""
        found = []
        for life in self.lives:
            end = life.ended_s if life.ended_s is not None else time.monotonic() - self.begun_s
            if end - life.begun_s >= _LONG * whole_s:
                found.append(life)
        return found

    def doctor(self) -> tuple[int, str]:
        """`sinkside doctor`, at the bot's present moment, which stands meanwhile."""
        done = subprocess.run(
            [sys.executable, "-m", "tests.soak.process", "doctor", "--database", self.database],
            cwd=ROOT, env=self._environment(self.clock.standing()), capture_output=True, text=True,
        )  # fmt: skip
        return done.returncode, (done.stdout + done.stderr).strip()

    def logged(self) -> tuple[Counter[str], list[str]]:
        """Lines of the logs that warn, by kind; and those that no fault of ours explains."""
        warned: Counter[str] = Counter()
        wrong: list[str] = []
        for life in self.lives:
            for line in life.log.read_text("utf-8", errors="replace").splitlines():
                kind = _kind(line)
                if kind is None:
                    continue
                warned[kind] += 1
                if not kind.startswith(EXPECTED):
                    wrong.append(f"{life.log.name}: {line[:500]}")
            if not life.ended_well:
                wrong.append(f"{life.log.name}: {life.how}")
        return warned, wrong


def _kind(line: str) -> str | None:
    """What a line of the log is about, None where it is only told."""
    try:
        told = json.loads(line)
        level, event = str(told["level"]), str(told["event"])
    except (ValueError, KeyError, TypeError):
        return f"no line of a log: {line[:60]}" if line.strip() else None
    if level in ("debug", "info"):
        return None
    words = [w for w in event.split() if not w.rstrip(",").isdecimal()]
    return f"{level}: {' '.join(words)}"


def _resident_mb(pid: int) -> float:
    for line in Path(f"/proc/{pid}/status").read_text().splitlines():
        if line.startswith("VmRSS:"):
            return int(line.split()[1]) / 1024
    raise OSError("no such process")
