"""How long a blend takes. By hand: python -m tests.benchmarks.bench_blending."""

from __future__ import annotations

import random
import timeit
from functools import partial

from bot.dosing.blending import Goal, blend
from bot.dosing.conductivity import NitrogenForms
from bot.dosing.stock import Product

#: Twelve nutrients [mg/L].
GOAL = Goal(
    {
        "N": 125.0, "nitrate": 94.0, "P": 14.0, "K": 125.0, "Ca": 62.0, "Mg": 31.0, "S": 30.0,
        "Fe": 1.0, "Mn": 0.4, "Zn": 0.2, "Cu": 0.05, "B": 0.2,
    }
)  # fmt: skip


#: The same with more boron and copper than any mix may hold.
TOXIC = Goal({**GOAL.mg_l, "Cu": 1.0, "B": 2.0})


def _shelf(seed: int) -> list[Product]:
    """Six products that each hold about half of everything."""
    chance = random.Random(seed)
    most = {"N": 25.0, "P": 10.0, "K": 20.0, "Ca": 10.0, "Mg": 5.0, "S": 8.0}
    most |= dict.fromkeys(("Fe", "Mn", "Zn", "Cu", "B"), 0.3)
    shelf = []
    for number in range(6):
        held = {s: chance.uniform(0, p) for s, p in most.items() if chance.random() < 0.5}
        nitrate = chance.random()
        forms = NitrogenForms(nitrate, 1 - nitrate, 0.0)
        shelf.append(Product(f"product {number}", {"N": 5.0} | held, forms))
    return shelf


def main() -> None:
    """Print the median and the slowest of 200 blends, each the best of several runs [ms]."""
    for name, goal in (("free", GOAL), ("at a toxic limit", TOXIC)):
        times_ms, capped = [], 0
        for seed in range(200):
            shelf = _shelf(seed)
            capped += bool(blend(shelf, goal).capped)
            runs_s = timeit.repeat(partial(blend, shelf, goal), number=1, repeat=7)
            times_ms.append(1e3 * min(runs_s))
        times_ms.sort()
        print(
            f"6 products, 12 nutrients, {name}: median {times_ms[100]:.2f} ms, "
            f"slowest {times_ms[-1]:.2f} ms, {capped} of 200 capped"
        )


if __name__ == "__main__":
    main()
