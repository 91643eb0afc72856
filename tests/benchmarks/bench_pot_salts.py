"""How long a year of pots takes. By hand: python -m tests.benchmarks.bench_pot_salts."""

from __future__ import annotations

import random
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
from tests.benchmarks.command import alone
from tests.benchmarks.figures import Asked, Figure
from tests.benchmarks.measuring import in_turn, took_ms

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


def bench(asked: Asked) -> list[Figure]:
    """A year of all plants [ms], one of them, one due date and one plan [us]."""
    plants = _collection()
    pot, log = plants[0]
    state = simulate(pot, log)[-1]
    today = log[-1].on

    def due() -> object:
        return flush_due(pot, log, feeding_class="moderate", today=today)

    def plan() -> object:
        return flush_plan(pot, state, target_ec=0.5, water_ec=0.2)

    acts = {
        "a year of one plant": lambda: 1000 * took_ms(lambda: simulate(pot, log), 50),
        f"a year of {PLANTS} plants": lambda: took_ms(lambda: [simulate(*one) for one in plants]),
        "when a flush is due, from a year's log": lambda: 1000 * took_ms(due, 20),
        "a plan for a flush": lambda: 1000 * took_ms(plan, 500),
    }
    found = in_turn(3 if asked.quick else 7, acts)
    return [
        Figure(name, "ms" if "plants" in name else "us", values) for name, values in found.items()
    ]


if __name__ == "__main__":
    alone("pot_salts", bench)
