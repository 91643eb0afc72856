"""Calcium and magnesium that water and feed leave missing, and the dose that fills them."""

from __future__ import annotations

import math
from collections.abc import Mapping
from dataclasses import dataclass

from bot.almanac.waters import ec_ceilings_ms_cm, feed_targets_per_n
from bot.dosing.conductivity import EcRange
from bot.dosing.impossible import Impossible
from bot.dosing.meter import Feed, mixed_ec_ms_cm, product_g_l
from bot.dosing.strength import limits
from bot.dosing.water import Known, Range

_NONE = Range(0.0, 0.0)


@dataclass(frozen=True, slots=True)
class Missing:
    """One element against its target, all [mg/L].

    Parameters
    ----------
    target : that the feed should reach at its nitrogen
    has : in water and feed
    missing : from the target; negative where there is more
    source : of the target
    """

    target: float
    has: Range
    missing: Range
    source: str


@dataclass(frozen=True, slots=True)
class Supplement:
    """A dose of a supplement and what it does.

    Parameters
    ----------
    product_g_l : to dissolve in the ready feed [g/L]
    brings_mg_l : by element [mg/L]
    left_mg_l : calcium and magnesium still missing; negative where there is more [mg/L]
    ec : that it adds to pure water [mS/cm]
    total_ec : at most, with water and feed [mS/cm]
    limited_by : '' or what cut the dose: 'ec_ceiling', 'nitrogen_ceiling'
    wanted_g_l : dose without that cut [g/L]
    """

    product_g_l: float
    brings_mg_l: Mapping[str, float]
    left_mg_l: Mapping[str, Range]
    ec: EcRange
    total_ec: float
    limited_by: str
    wanted_g_l: float


def ec_ceiling(feeding_class: str) -> tuple[float, str]:
    """EC that plants of a class bear in the ready feed [mS/cm], and its source."""
    ceiling = ec_ceilings_ms_cm()[feeding_class]
    return ceiling.value, ceiling.source


def missing(
    n_mg_l: float, water: Known, feed_elements_mg_l: Mapping[str, float]
) -> dict[str, Missing]:
    """Calcium and magnesium missing from a feed in its water.

    Parameters
    ----------
    n_mg_l : nitrogen of the ready feed; the targets go with it [mg/L]
    water : `Water.known` or `estimate`; what it does not tell of calcium and magnesium counts as 0
    feed_elements_mg_l : what the feed brings by symbol [mg/L]

    Returns
    -------
    dict of str to Missing
        By symbol: Ca, Mg.

    Raises
    ------
    ValueError
        For a nitrogen that is negative or endless.

    References
    ----------
    100 mg/L Ca and 50 mg/L Mg at 200 mg/L N: Wang, HortScience 42 (2007); see ``waters.toml``.
    """
    if not 0 <= n_mg_l < math.inf:
        raise ValueError(f"A feed cannot hold {n_mg_l:g} mg/L of nitrogen.")
    found = {}
    for symbol, per_n in feed_targets_per_n().items():
        own, fed = water.get(f"{symbol.lower()}_mg_l", _NONE), feed_elements_mg_l.get(symbol, 0.0)
        target = per_n.value * n_mg_l
        has = Range(own.low + fed, own.high + fed)
        gap = Range(target - has.high, target - has.low)
        found[symbol] = Missing(target, has, gap, per_n.source)
    return found


def fill(
    lacking: Mapping[str, Missing],
    product: Feed,
    *,
    feeding_class: str,
    present_ec_ms_cm: float,
    present_n_mg_l: float,
    regime: str | None = None,
) -> Supplement:
    """The dose of a supplement that brings calcium and magnesium nearest to their targets.

    Nearest by least squares of the shares of the targets, from the middle of what may be missing: a
    product with one of the two fills that one; with both it parts the error between them. The dose
    is cut where the ready feed would pass the EC ceiling of the class, or its nitrogen ceiling as
    for any feed. The EC is counted as if the water took nothing off, so it is an upper bound.

    Parameters
    ----------
    lacking : from `missing`
    product : the supplement
    feeding_class : of the most sensitive plant: sensitive, moderate or hungry
    present_ec_ms_cm : of water and feed together, at most [mS/cm]
    present_n_mg_l : nitrogen of the feed [mg/L]
    regime : how often it is fed, as in `strength.limits`

    Returns
    -------
    Supplement

    Raises
    ------
    ValueError
        For a product without calcium and magnesium, or figures out of range.

    References
    ----------
    EC ceilings: ``waters.toml``; nitrogen ceilings: `strength.CEILINGS`.
    """
    per_gram = {e: product.elements_mg_l(1.0).get(e, 0.0) for e in lacking}
    if not any(per_gram.values()):
        raise Impossible("supplement-neither")
    if not all(0 <= figure < math.inf for figure in (present_ec_ms_cm, present_n_mg_l)):
        raise ValueError("The EC and the nitrogen of a feed are figures from 0 upwards.")
    wanted = _nearest_g_l(lacking, per_gram)
    rooms = {
        "ec_ceiling": _ec_room_g_l(product, feeding_class, present_ec_ms_cm),
        "nitrogen_ceiling": _n_room_g_l(product, feeding_class, regime, present_n_mg_l),
    }
    tightest = min(rooms, key=lambda name: rooms[name])
    grams = min(wanted, rooms[tightest])
    brings = product.elements_mg_l(grams)
    ec = mixed_ec_ms_cm(product, grams)
    return Supplement(
        product_g_l=grams,
        brings_mg_l=brings,
        left_mg_l={
            e: Range(gap.missing.low - brings.get(e, 0.0), gap.missing.high - brings.get(e, 0.0))
            for e, gap in lacking.items()
        },
        ec=ec,
        total_ec=present_ec_ms_cm + ec.high,
        limited_by=tightest if grams < wanted else "",
        wanted_g_l=wanted,
    )


def _nearest_g_l(lacking: Mapping[str, Missing], per_gram: Mapping[str, float]) -> float:
    """Least squares in one unknown, each element weighed by its target [g/L]."""
    weights = {e: 1 / gap.target**2 for e, gap in lacking.items() if gap.target > 0}
    over = sum(w * per_gram[e] * lacking[e].missing.middle for e, w in weights.items())
    under = sum(w * per_gram[e] ** 2 for e, w in weights.items())
    return max(over / under, 0.0) if under else 0.0


def _ec_room_g_l(product: Feed, feeding_class: str, present_ec_ms_cm: float) -> float:
    room = ec_ceilings_ms_cm()[feeding_class].value - present_ec_ms_cm
    if room <= 0:
        return 0.0
    return product_g_l(product, EcRange(room, room)).low


def _n_room_g_l(
    product: Feed, feeding_class: str, regime: str | None, present_n_mg_l: float
) -> float:
    n_per_gram = product.elements_mg_l(1.0).get("N", 0.0)
    if not n_per_gram:
        return math.inf
    # with 1 mg/L N as full strength and no label rate, the ceiling of the class is in mg/L
    _, (_, ceiling) = limits(
        label_fraction=math.inf, n_mg_l_at_full=1.0, feeding_class=feeding_class, regime=regime
    )
    return max(ceiling - present_n_mg_l, 0.0) / n_per_gram
