"""How long the computations take. By hand: python -m tests.benchmarks.bench_dosing."""

from __future__ import annotations

import random

from bot.dosing.conductivity import ec_ms_cm
from bot.dosing.mixing import Portion, plan_mixing
from tests.benchmarks.command import alone
from tests.benchmarks.figures import Asked, Figure
from tests.benchmarks.measuring import in_turn, took_ms

#: A hard tap with a complete feed in it [mmol/L].
MIX = {
    "Ca+2": 2.4, "Mg+2": 0.8, "Na+": 1.0, "HCO3-": 5.0, "Cl-": 2.4, "SO4-2": 0.6,
    "NH4+": 2.0, "H2PO4-": 1.4, "NO3-": 2.9, "K+": 3.5,
}  # fmt: skip


def _day(count: int) -> list[Portion]:
    chance = random.Random(count)
    portions = []
    for number in range(count):
        strength = chance.choice([1, 0.75, 0.5, 0.375, 0.25, 0.1875, 0.125, 0])
        product = chance.choice(["powder", "drops"]) if strength else ""
        volume_l = chance.uniform(0.05, 0.6)
        portions.append(Portion(f"k{number}", volume_l, strength, product, strength * 1.1))
    return portions


def bench(asked: Asked) -> list[Figure]:
    """One EC [us], one plan of 500 portions and of 50 [ms]."""
    mix = dict(MIX)
    mix["Cl-"] += 2 * 2.4 + 2 * 0.8 + 1.0 + 2.0 + 3.5 - 5.0 - 2.4 - 2 * 0.6 - 1.4 - 2.9
    steps = {"powder": 0.1, "drops": 0.1}
    few, many = _day(50), _day(500)
    found = in_turn(
        5 if asked.quick else 15,
        {
            "EC of one mix": lambda: 1000 * took_ms(lambda: ec_ms_cm(mix), 500),
            "plan of 50 plants": lambda: took_ms(lambda: plan_mixing(few, 10, steps), 10),
            "plan of 500 plants": lambda: took_ms(lambda: plan_mixing(many, 10, steps), 5),
        },
    )
    return [
        Figure("EC of one mix", "us", found["EC of one mix"]),
        Figure("plan of 50 plants", "ms", found["plan of 50 plants"]),
        Figure("plan of 500 plants", "ms", found["plan of 500 plants"], "plan of 50 plants"),
    ]


if __name__ == "__main__":
    alone("dosing", bench)
