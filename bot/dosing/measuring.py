"""Measuring little with kitchen tools: the error of one weighing, and a stock solution instead.

References
----------
Readings at tare and gross, each uniform within half a step: the expanded relative
uncertainty (k = 2) of their difference is 0.82 d/m (JCGM 100:2008, clause 4.3.7).
"""

from __future__ import annotations

from dataclasses import dataclass
from math import hypot, sqrt

from bot.almanac.reference import measures

#: Steps taken where the person's tools are not known.
SCALE_STEP_G = measures()["scale_step"].value
SYRINGE_STEP_ML = measures()["syringe_step"].value
#: Above this relative error a stock solution is proposed [1].
TOLERABLE_ERROR = measures()["tolerable_error"].value

_SPREAD = 2 * sqrt(2 / 12)  # k = 2, two readings
#: Amounts that are easy to say [g] or [mL], and bottles that are easy to have [mL].
NICE = (1.0, 2.0, 2.5, 5.0, 10.0, 20.0, 25.0, 50.0)
BOTTLES_ML = (100.0, 200.0, 250.0, 500.0, 1000.0)
#: A stock no stronger than this stays dissolved in the cold [g/L].
STRONGEST_STOCK_G_L = measures()["strongest_stock"].value
_USE_ML = (5.0, 100.0)
#: A stock keeps so long, cool, dark and labelled [d].
KEEPS_DAYS = int(measures()["stock_keeps"].value)
#: Product in a level US teaspoon of soluble powder, roughly [g].
LEVEL_TEASPOON_G = measures()["level_teaspoon_of_powder"].value


@dataclass(frozen=True, slots=True)
class Stock:
    """A stock solution: so much product made up to a bottle, so much of it into the can.

    Parameters
    ----------
    product_amount : [g] or [mL], as `unit`
    in_ml : made up to this volume [mL]
    use_ml : into the can [mL]
    relative_error : of the product in the can, k = 2 [1]
    """

    product_amount: float
    unit: str
    in_ml: float
    use_ml: float
    relative_error: float
    keeps_days: int = KEEPS_DAYS


def relative_error(amount: float, step: float) -> float:
    """Relative error (k = 2) [1] of measuring an amount with a tool of this step, same unit."""
    return _SPREAD * step / amount


def stock_for(amount: float, unit: str, step: float) -> Stock | None:
    """The smallest easy stock solution that measures `amount` well.

    Parameters
    ----------
    amount : product wanted in the can [g] or [mL]
    unit : 'g' or 'ml'
    step : of the scale [g] or syringe [mL]

    Returns
    -------
    Stock or None
        None where none of the usual bottles does it better than 5 %.
    """
    found = []
    for product in NICE:
        if product < 2 * amount:
            continue
        for bottle_ml in BOTTLES_ML:
            use_ml = amount / product * bottle_ml
            if product / bottle_ml * 1000 > STRONGEST_STOCK_G_L or not _fits(use_ml):
                continue
            error = hypot(relative_error(product, step), relative_error(use_ml, SYRINGE_STEP_ML))
            found.append(Stock(product, unit, bottle_ml, use_ml, error))
    good = [s for s in found if s.relative_error <= TOLERABLE_ERROR / 2]
    return min(good, key=lambda s: (s.product_amount, s.in_ml), default=None)


@dataclass(frozen=True, slots=True)
class SpoonStock:
    """So many level teaspoons made up to `in_ml`, of which `use_ml` go into the can [mL]."""

    teaspoons: float
    in_ml: float
    use_ml: float


#: The smallest spoon of a kitchen set, and those a stock is made with [tsp] (ours).
SMALLEST_SPOON_TSP = 1 / 8
_SPOONS_TSP = (0.25, 0.5, 1.0)


def spoon_stock(teaspoons: float) -> SpoonStock | None:
    """A stock by whole spoons for an amount that no spoon holds.

    Parameters
    ----------
    teaspoons : wanted in the can [tsp]

    Returns
    -------
    SpoonStock or None
        None where a spoon measures it, and where no usual bottle does.
    """
    if teaspoons >= SMALLEST_SPOON_TSP:
        return None
    for spoons in _SPOONS_TSP:
        for bottle_ml in BOTTLES_ML:
            use_ml = teaspoons / spoons * bottle_ml
            strong = spoons * LEVEL_TEASPOON_G / bottle_ml * 1000 > STRONGEST_STOCK_G_L
            if _fits(use_ml) and not strong:
                return SpoonStock(spoons, bottle_ml, use_ml)
    return None


def _fits(use_ml: float) -> bool:
    return _USE_ML[0] <= use_ml <= _USE_ML[1]


@dataclass(frozen=True, slots=True)
class Measured:
    """How an amount is measured; the names are those of a dose.

    Parameters
    ----------
    amount, unit : of product [g] or [mL]
    measuring_step : of the scale or syringe, same unit
    relative_error : of measuring it at once, k = 2 [1]
    stock : what to do instead where that is too large, None where it need not or cannot be
    batch_l : volume from which measuring at once would do [L]; None where it does already
    """

    amount: float
    unit: str
    measuring_step: float
    relative_error: float
    stock: Stock | None
    batch_l: float | None


def measured(
    amount: float, unit: str, volume_l: float, *, step: float | None = None, stocks: bool = True
) -> Measured:
    """How to measure an amount for a volume with a tool.

    Parameters
    ----------
    amount : above 0 [g] or [mL], as `unit`
    unit : 'g' or 'ml'
    volume_l : of the ready feed [L]
    step : of the scale or syringe, None for a usual one
    stocks : whether it may be kept dissolved

    Returns
    -------
    Measured
    """
    used = step or (SCALE_STEP_G if unit == "g" else SYRINGE_STEP_ML)
    error = relative_error(amount, used)
    coarse = error > TOLERABLE_ERROR
    return Measured(
        amount=amount,
        unit=unit,
        measuring_step=used,
        relative_error=error,
        stock=stock_for(amount, unit, used) if coarse and stocks else None,
        batch_l=larger_batch_l(volume_l, error) if coarse else None,
    )


def larger_batch_l(volume_l: float, error: float) -> float:
    """Volume [L] at which the same strength is weighed within the tolerable error."""
    return volume_l * error / TOLERABLE_ERROR


def level_teaspoons(amount_g: float) -> float | None:
    """A rough cross-check: level teaspoons to the nearest eighth, None below one eighth."""
    eighths = round(8 * amount_g / LEVEL_TEASPOON_G)
    return eighths / 8 if eighths else None
