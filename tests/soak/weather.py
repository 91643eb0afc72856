"""When the messenger suffers from what, and when processes end: drawn from a seed. Pure."""

from __future__ import annotations

import random
from collections.abc import Iterator
from dataclasses import dataclass

#: Between two ends of a process pass so many seconds at least.
_LEAST_S = 15.0
#: Each fault: its name, how long it lasts [s], how much of the requests it takes.
FAULTS: tuple[tuple[str, float, float], ...] = (
    ("flood", 8.0, 0.3), ("broken", 8.0, 0.5), ("dropped", 8.0, 0.3), ("slow", 12.0, 0.3),
    ("repeats", 20.0, 0.5), ("away", 30.0, 1.0),
)  # fmt: skip


@dataclass(frozen=True, slots=True)
class Event:
    """Something that happens at a time [s after the beginning].

    `what` is a fault (then for `lasts_s`, of a `share` of requests), `kill` or `end`; the last two
    of a process by its `name`, which is started again after `lasts_s`.
    """

    at_s: float
    what: str
    lasts_s: float
    share: float = 1.0
    name: str = ""


def faults(whole_s: float, pick: random.Random) -> Iterator[Event]:
    """Faults of the messenger, one after another, with fair weather between."""
    shrink = min(1.0, whole_s / 600)
    at = 20.0 * shrink
    names = list(FAULTS)
    while True:
        pick.shuffle(names)
        for what, lasts_s, share in names:
            lasts_s *= shrink
            if at + lasts_s > whole_s - 10 * shrink:
                return
            yield Event(at, what, lasts_s, share)
            at += lasts_s + pick.uniform(20, 50) * shrink


def restarts(whole_s: float, pick: random.Random) -> Iterator[Event]:
    """Ends of processes, two of three by `kill -9`.

    `serve` lives undisturbed in the first and in the last two fifths, so that its memory can be
    looked at; between it is killed often. `remind` is killed while `serve` lives, and lives when
    `serve` does not.
    """
    spans = (
        ("remind", 0.05, 0.42, whole_s / 22),
        ("serve", 0.43, 0.57, whole_s / 36),
        ("remind", 0.87, 0.97, whole_s / 36),
    )
    count = 0
    for name, begin, end, every_s in spans:
        at, every_s = begin * whole_s, max(_LEAST_S, every_s)
        while at < end * whole_s:
            count += 1
            down_s = pick.uniform(0.0, min(3.0, every_s / 8))
            yield Event(at, "end" if count % 3 == 0 else "kill", down_s, name=name)
            at += every_s * pick.uniform(0.7, 1.3)


def plan(whole_s: float, seed: int) -> list[Event]:
    """All that happens, in its order."""
    pick = random.Random(seed)
    return sorted([*faults(whole_s, pick), *restarts(whole_s, pick)], key=lambda e: e.at_s)
