"""How long a year of pots takes. By hand: python -m tests.benchmarks.bench_pot_salts."""

from __future__ import annotations

import random
import timeit
from datetime import date, timedelta

from bot.dosing.pot_salts import (
    Pot,
    PotEvent,
    PotEventKind,
    flush_due,
    flush_plan,
    pot_of,
    simulate,
)

PLANTS = 500
WEEKS = 52


def _collection() -> list[tuple[Pot, list[PotEvent]]]:
    """Weekly feeds with a flush a month and now and then a reading, each plant its own."""
    chance = random.Random(PLANTS)
    plants = []
    for _ in range(PLANTS):
        pot = pot_of(chance.choice(["bark", "sphagnum", "mixed"]), chance.uniform(8, 20))
        log = []
        for week in range(WEEKS):
            on = date(2023, 1, 1) + timedelta(days=7 * week + chance.randrange(3))
            kind = PotEventKind.FLUSH if week % 4 == 3 else PotEventKind.FED
            log.append(PotEvent(on, kind, chance.uniform(0.2, 0.9)))
            if week % 13 == 12:
                log.append(PotEvent(on, PotEventKind.READING, chance.uniform(0.3, 2)))
        plants.append((pot, log))
    return plants


def main() -> None:
    """Print the best of several runs: a year of all plants [s], one due date and plan [us]."""
    plants = _collection()
    best_s = min(
        timeit.repeat(lambda: [simulate(pot, log) for pot, log in plants], number=1, repeat=3)
    )
    print(f"a year of {PLANTS} plants: {best_s:.2f} s")
    pot, log = plants[0]
    state = simulate(pot, log)[-1]
    today = log[-1].on
    best_s = min(
        timeit.repeat(
            lambda: flush_due(pot, log, feeding_class="moderate", today=today), number=1, repeat=20
        )
    )
    print(f"when a flush is due, from a year's log: {1e6 * best_s:.0f} us")
    best_s = min(
        timeit.repeat(
            lambda: flush_plan(pot, state, target_ec=0.5, water_ec=0.2), number=100, repeat=5
        )
    )
    best_s /= 100
    print(f"a plan for a flush: {1e6 * best_s:.0f} us")


if __name__ == "__main__":
    main()
