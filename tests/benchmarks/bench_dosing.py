"""How long the computations take. By hand: python -m tests.benchmarks.bench_dosing."""

from __future__ import annotations

import random
import timeit

from bot.dosing.conductivity import ec_ms_cm
from bot.dosing.mixing import Portion, plan_mixing

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


def main() -> None:
    """Print the best of several runs: one EC [us], one plan of 500 portions [ms]."""
    mix = dict(MIX)
    mix["Cl-"] += 2 * 2.4 + 2 * 0.8 + 1.0 + 2.0 + 3.5 - 5.0 - 2.4 - 2 * 0.6 - 1.4 - 2.9
    best_s = min(timeit.repeat(lambda: ec_ms_cm(mix), number=100, repeat=20)) / 100
    print(f"EC of one mix: {1e6 * best_s:.0f} us")
    portions = _day(500)
    steps = {"powder": 0.1, "drops": 0.1}
    best_s = min(timeit.repeat(lambda: plan_mixing(portions, 10, steps), number=1, repeat=7))
    print(f"mixing order of 500 portions: {1e3 * best_s:.1f} ms")


if __name__ == "__main__":
    main()
