"""Clocks and processes that the benchmarks measure with."""

from __future__ import annotations

import os
import subprocess
import sys
import time
from collections.abc import Callable, Iterator, Mapping
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from tests.benchmarks.figures import ROOT

#: For child processes: with compiled modules, as from the second start on, whatever the shell says.
AS_INSTALLED = {k: v for k, v in os.environ.items() if k != "PYTHONDONTWRITEBYTECODE"}


def in_turn(rounds: int, acts: Mapping[str, Callable[[], float]]) -> dict[str, tuple[float, ...]]:
    """Values of several acts, one of each a round: a busy moment falls on all of them."""
    found: dict[str, list[float]] = {name: [] for name in acts}
    for _ in range(rounds):
        for name, act in acts.items():
            found[name].append(act())
    return {name: tuple(values) for name, values in found.items()}


def took_ms(act: Callable[[], object], number: int = 1) -> float:
    """Time of the processor for one act, over so many of them [ms].

    For what computes and waits for nothing: what else the machine does hardly counts.
    """
    start = time.process_time()
    for _ in range(number):
        act()
    return 1000 * (time.process_time() - start) / number


def yardstick_ms() -> float:
    """Time of the same plain work in every run [ms]: what it says of the machine, not of us."""

    def work() -> None:
        held: dict[int, str] = {}
        for number in range(20_000):
            held[number % 997] = str(number * 7)

    return min(took_ms(work) for _ in range(5))


@dataclass(frozen=True, slots=True)
class Ended:
    """What a child process cost: time by the clock and of the processor [s], memory [MB]."""

    wall_s: float
    cpu_s: float
    most_mb: float


#: A small process starts it: the system counts a child's memory from that of its parent.
_LAUNCHER = """
import os, subprocess, sys, time
start = time.perf_counter()
child = subprocess.Popen([sys.executable, *sys.argv[1:]], stdout=subprocess.DEVNULL)
_, status, used = os.wait4(child.pid, 0)
wall_s = time.perf_counter() - start
print(wall_s, used.ru_utime + used.ru_stime, used.ru_maxrss / 1024)
sys.exit(os.waitstatus_to_exitcode(status))
"""


def ran(*command: str) -> Ended:
    """Run a command of the interpreter to its end, without its output."""
    done = subprocess.run(
        [sys.executable, "-S", "-c", _LAUNCHER, *command],
        stdout=subprocess.PIPE,
        text=True,
        check=True,
        env=AS_INSTALLED,
        cwd=ROOT,
    )
    return Ended(*map(float, done.stdout.split()))


def memory_mb(pid: int) -> float:
    """What a process holds in memory now [MB]."""
    lines = Path(f"/proc/{pid}/status").read_text().splitlines()
    return next(int(line.split()[1]) for line in lines if line.startswith("VmRSS")) / 1024


def cpu_s(pid: int) -> float:
    """Time of the processor that a process has used [s]."""
    fields = Path(f"/proc/{pid}/stat").read_text().rpartition(")")[2].split()
    return (int(fields[11]) + int(fields[12])) / os.sysconf("SC_CLK_TCK")


@contextmanager
def postgres(folder: str) -> Iterator[Any]:
    """A server of PostgreSQL out of the wheel, for as long as it is needed."""
    import warnings

    warnings.filterwarnings("ignore", "XDG_RUNTIME_DIR")  # of a folder that is not used
    from pgserver.postgres_server import get_server

    # It runs as a user of its own, who has to reach the folder.
    Path(folder).chmod(0o755)
    place = Path(folder) / "deep" / "postgres"
    place.mkdir(parents=True)
    server = get_server(place / "data", cleanup_mode="delete")
    try:
        yield server
    finally:
        server.cleanup()
