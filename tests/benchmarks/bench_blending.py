"""How long a blend takes. By hand: python -m tests.benchmarks.bench_blending."""

from __future__ import annotations

import random
from functools import partial
from statistics import median

from bot.dosing.blending import Goal, blend
from bot.dosing.conductivity import NitrogenForms
from bot.dosing.stock import Product
from tests.benchmarks.command import alone
from tests.benchmarks.figures import Asked, Figure
from tests.benchmarks.measuring import took_ms

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


def bench(asked: Asked) -> list[Figure]:
    """The median and the slowest of many blends [ms]."""
    shelves = [_shelf(seed) for seed in range(50 if asked.quick else 200)]
    goals = {"free": GOAL, "at a toxic limit": TOXIC}
    rounds: dict[str, list[list[float]]] = {name: [] for name in goals}
    for _ in range(7):
        for name, goal in goals.items():
            rounds[name].append([took_ms(partial(blend, shelf, goal)) for shelf in shelves])
    figures = []
    for name, times in rounds.items():
        usual, most = f"a blend, {name}", f"the slowest of them, {name}"
        figures.append(Figure(usual, "ms", tuple(median(taken) for taken in times)))
        # Of each shelf the best round, so that what else the machine does is not the slowest.
        best = max(map(min, zip(*times, strict=True)))
        figures.append(Figure(most, "ms", (best,), usual))
    return figures


if __name__ == "__main__":
    alone("blending", bench)
