"""What a benchmark found: a value for each round, and the file it is kept in."""

from __future__ import annotations

import dataclasses
import json
import os
import platform
import subprocess
from collections.abc import Callable, Iterable
from dataclasses import dataclass
from pathlib import Path
from statistics import median, quantiles

ROOT = Path(__file__).parents[2]


@dataclass(frozen=True, slots=True)
class Figure:
    """One thing that was measured.

    Attributes
    ----------
    name : what, the only one of its benchmark
    unit : of the values; 'a second' for a rate
    rounds : a value for each round
    beside : name of the figure of the same benchmark that it is a ratio to
    """

    name: str
    unit: str
    rounds: tuple[float, ...]
    beside: str | None = None

    @property
    def value(self) -> float:
        """The median round."""
        return median(self.rounds)

    @property
    def noise(self) -> float | None:
        """How far rounds lie apart, as a share of the median; None of one round.

        The middle half of them, so that one busy moment does not hide a change; of fewer than
        five all.
        """
        if len(self.rounds) < 2 or not self.value:
            return None
        low, high = min(self.rounds), max(self.rounds)
        if len(self.rounds) >= 5:
            low, _, high = quantiles(self.rounds, n=4, method="inclusive")
        return (high - low) / self.value

    def ratio_to(self, other: Figure) -> float:
        """How many times the other: round by round where there are as many, and the median."""
        if len(self.rounds) == len(other.rounds) and all(other.rounds):
            return median(a / b for a, b in zip(self.rounds, other.rounds, strict=True))
        return self.value / other.value


@dataclass(frozen=True, slots=True)
class Asked:
    """How one wants it measured: `quick` in about ten seconds, `others` an interpreter."""

    quick: bool = False
    others: str | None = None


Bench = Callable[[Asked], list[Figure]]


@dataclass(frozen=True, slots=True)
class Measured:
    """All figures of one run, by benchmark, and where it was made."""

    figures: dict[str, list[Figure]]
    quick: bool
    yardstick_ms: tuple[float, ...]
    cores: int = 0
    memory_gb: float = 0.0
    python: str = ""
    commit: str | None = None


def here(figures: dict[str, list[Figure]], asked: Asked, yardstick: Iterable[float]) -> Measured:
    """A run on this machine, named by cores and memory only."""
    page_bytes, pages = os.sysconf("SC_PAGE_SIZE"), os.sysconf("SC_PHYS_PAGES")
    return Measured(
        figures=figures,
        quick=asked.quick,
        yardstick_ms=tuple(yardstick),
        cores=os.cpu_count() or 0,
        memory_gb=round(page_bytes * pages / 2**30, 1),
        python=platform.python_version(),
        commit=_commit(),
    )


def _commit() -> str | None:
    command = ["git", "describe", "--always", "--dirty"]
    try:
        done = subprocess.run(command, cwd=ROOT, capture_output=True, text=True, check=True)
    except (OSError, subprocess.CalledProcessError):
        return None
    return done.stdout.strip()


def save(measured: Measured, path: Path) -> None:
    """Write a run to a file."""
    path.write_text(json.dumps(dataclasses.asdict(measured), indent=1) + "\n", encoding="utf-8")


def load(path: Path) -> Measured:
    """A run from its file."""
    held = json.loads(path.read_text(encoding="utf-8"))
    held["yardstick_ms"] = tuple(held["yardstick_ms"])
    held["figures"] = {
        bench: [Figure(**{**figure, "rounds": tuple(figure["rounds"])}) for figure in figures]
        for bench, figures in held["figures"].items()
    }
    return Measured(**held)
