"""What a meter reading means: EC at 25 °C, the strength really mixed, the water that thins it.

A meter sees salts, not nitrogen: with the label alone the answer is a range. In hard tap water a
feed adds 8 to 16 % less to the reading than in pure water (0.5 g/L, by PHREEQC), in the hardest a
fifth less: the ions slow each other, pair with calcium, and phosphate takes bicarbonate away.
Where that is left out, a feed reads weaker than it is.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Mapping
from dataclasses import dataclass
from functools import partial

from bot.almanac.ions import elements_not_counted, ions
from bot.dosing.concentration import element_mg_l
from bot.dosing.conductivity import (
    PPM_SCALES,
    EcRange,
    NitrogenForms,
    ec_ms_cm,
    feed_ec_ms_cm,
    ppm_to_ec,
    temperature_to_25,
)
from bot.dosing.impossible import Impossible
from bot.dosing.water import Range, Water, types_of_water

#: Conductivity units that meters show, in mS/cm; CF is ten times mS/cm.
UNITS = {"mS/cm": 1.0, "dS/m": 1.0, "µS/cm": 0.001, "mS/m": 0.01, "S/m": 10.0, "CF": 0.1}
#: Where the forms of nitrogen are unknown, what the water takes off is worked out for both ends.
_ENDS = (NitrogenForms(1.0, 0.0, 0.0), NitrogenForms(0.0, 1.0, 0.0))
_ION_OF_ELEMENT = {
    "K": "K+",
    "Ca": "Ca+2",
    "Mg": "Mg+2",
    "Na": "Na+",
    "P": "H2PO4-",
    "S": "SO4-2",
    "Cl": "Cl-",
}
_PURE = Water()
_THINNEST = 1e-3  # of a feed that is still looked at where the whole is too strong [1]
_ALIKE_MS_CM = 1e-6  # no meter parts two readings so near; a water scaled to an EC is nearer to it
_MICRO_SIGNS = str.maketrans({"μ": "µ"})  # the Greek letter stands for the sign


@dataclass(frozen=True, slots=True)
class Feed:
    """A product as its label shows it.

    Parameters
    ----------
    percent : elements by symbol, oxides converted (`label.elemental_percent`) [% of mass]
    forms : of its nitrogen, None where the label has none
    """

    percent: Mapping[str, float]
    forms: NitrogenForms | None = None

    def elements_mg_l(self, product_g_l: float) -> dict[str, float]:
        """What so much product [g/L] brings, by element [mg/L]."""
        return {e: element_mg_l(product_g_l, percent) for e, percent in self.percent.items()}


@dataclass(frozen=True, slots=True)
class Meaning:
    """What a reading says of a feed.

    Parameters
    ----------
    reading, water, added : EC of the feed, of its water, and the difference [mS/cm]
    product_g_l : dissolved [g/L]
    elements_mg_l : what that brings, without the water's own [mg/L]
    strength : of what was meant to be dissolved [1], None where that was not told
    """

    reading: EcRange
    water: EcRange
    added: EcRange
    product_g_l: Range
    elements_mg_l: Mapping[str, Range]
    strength: Range | None


@dataclass(frozen=True, slots=True)
class Excess:
    """How far something lies over a limit.

    Parameters
    ----------
    factor : of the limit, least and most [1]
    verdict : 'over', 'under', or 'unsure' where the limit lies within the range
    """

    factor: Range
    verdict: str


def reading_ms_cm(
    value: float,
    unit: str,
    *,
    scale: int | None = None,
    temp_c: float | None = None,
    compensated: bool | None = None,
) -> EcRange:
    """EC at 25 °C behind what a meter shows.

    Parameters
    ----------
    value : as shown, in `unit`
    unit : one of `UNITS`, or ppm
    scale : ppm that the meter shows for 1 mS/cm; None takes all of 500, 640 and 700
    temp_c : temperature of the water, 0 to 50 [°C]
    compensated : whether the meter corrects to 25 °C itself; None with a temperature allows both,
        without one takes it as corrected, as most are

    Returns
    -------
    EcRange
        Both ends alike where scale and compensation are known [mS/cm].

    Raises
    ------
    ValueError
        For an unknown unit or scale, a reading or a temperature out of range, or a meter that does
        not correct and no temperature.

    References
    ----------
    ISO 7888:1985 for the temperature; the scales as in `conductivity.ec_to_ppm`.
    """
    if compensated is False and temp_c is None:
        raise Impossible("meter-temperature")
    if value < 0:
        raise Impossible("reading-negative", value=value)
    found = []
    for as_shown in _as_shown(value, unit, scale):
        temps = {True: (25.0,), False: (temp_c,), None: (25.0, temp_c)}[compensated]
        found += [temperature_to_25(as_shown, temp) for temp in temps if temp is not None]
        if temp_c is not None:
            temperature_to_25(as_shown, temp_c)  # an impossible temperature is told either way
    return EcRange(min(found), max(found))


def _as_shown(value: float, unit: str, scale: int | None) -> list[float]:
    name = unit.strip().translate(_MICRO_SIGNS).lower()
    name = name.replace("us/", "µs/")
    if name == "ppm":
        return [ppm_to_ec(value, s) for s in (PPM_SCALES if scale is None else (scale,))]
    for known, in_ms_cm in UNITS.items():
        if known.lower() == name:
            return [value * in_ms_cm]
    raise Impossible("meter-unit", unit=unit)


# ----------------------------------------------------------------------------- EC of feed in water


def mixed_ec_ms_cm(feed: Feed, product_g_l: float, water: Water | float = _PURE) -> EcRange:
    """EC of a feed in its water.

    Parameters
    ----------
    feed : the product
    product_g_l : dissolved [g/L]
    water : by its ions, or only its EC [mS/cm], which stands for every type of water

    Returns
    -------
    EcRange
        [mS/cm]

    Raises
    ------
    ValueError
        As `conductivity.feed_ec_ms_cm`, and for an EC of the water out of range.

    References
    ----------
    What the water takes off is held against PHREEQC 3.7.3 in tests/dosing/test_meter.py.
    """
    waters = _waters(water)
    return EcRange(_mixed(feed, waters, min, product_g_l), _mixed(feed, waters, max, product_g_l))


_Pick = Callable[..., float]  # min or max


def _mixed(feed: Feed, waters: list[Water], pick: _Pick, product_g_l: float) -> float:
    """Least or most of a feed in some waters of the same EC [mS/cm]."""
    own = waters[0].ec_ms_cm
    if not product_g_l:
        return own
    thinned = 1.0
    while True:  # beyond what the model holds for, in proportion: far too strong in any case
        grams = thinned * product_g_l
        try:
            added = _added_ms_cm(feed, waters, pick, grams)
        except Impossible as error:
            if error.code not in ("solution-strong", "nutrients-many") or thinned < _THINNEST:
                raise
            thinned /= 2
            continue
        return own + added / thinned


def _added_ms_cm(feed: Feed, waters: list[Water], pick: _Pick, product_g_l: float) -> float:
    elements = feed.elements_mg_l(product_g_l)
    pure = feed_ec_ms_cm(elements, feed.forms, product_mg_l=1000 * product_g_l)
    feeds = [_plausible_ions(elements, f) for f in ((feed.forms,) if feed.forms else _ENDS)]
    shares = [_share_kept(parts, water) for parts in feeds for water in waters]
    return pick(pure.low, pure.high) * pick(shares)


def _share_kept(feed_mmol_l: Mapping[str, float], water: Water) -> float:
    """What a feed adds to the EC of a water, over what it makes in pure water [1]."""
    own = water.ions_mmol_l
    mix = {i: own.get(i, 0.0) + feed_mmol_l.get(i, 0.0) for i in {*own, *feed_mmol_l}}
    alone = ec_ms_cm(feed_mmol_l)
    return (ec_ms_cm(mix) - water.ec_ms_cm) / alone if alone else 1.0


def _plausible_ions(elements: Mapping[str, float], forms: NitrogenForms) -> dict[str, float]:
    """Ions of a label, balanced by the likeliest counter-ion [mmol/L].

    Only for what the water takes off, which hardly depends on that ion.
    """
    n = elements.get("N", 0.0) / ions()["NO3-"].reported_as["N"]
    found = {"NO3-": n * forms.nitrate, "NH4+": n * forms.ammonium}
    for element, amount in elements.items():
        if element != "N" and element not in elements_not_counted():
            ion = ions()[_ION_OF_ELEMENT[element]]
            found[ion.name] = amount / ion.reported_as[element]
    surplus = sum(ions()[name].charge * amount for name, amount in found.items())
    filler = "Na+" if surplus < 0 else "Cl-" if elements.get("Ca") else "SO4-2"
    found[filler] = found.get(filler, 0.0) + abs(surplus / ions()[filler].charge)
    return found


def _waters(water: Water | float) -> list[Water]:
    if isinstance(water, Water):
        return [water]
    return types_of_water("ec_ms_cm", water)


def product_g_l(feed: Feed, ec: EcRange, water: Water | float = _PURE) -> Range:
    """Product that makes an EC in a water.

    Parameters
    ----------
    feed : the product
    ec : of the ready feed [mS/cm]
    water : by its ions, or only its EC [mS/cm]

    Returns
    -------
    Range
        [g/L]; 0 at the low end where the EC may be the water's own.

    Raises
    ------
    ValueError
        Where the product hardly conducts (urea), so that a meter cannot tell, and as
        `mixed_ec_ms_cm` does.
    """
    waters = _waters(water)
    least = _solve(partial(_mixed, feed, waters, max), ec.low)
    return Range(least, _solve(partial(_mixed, feed, waters, min), ec.high))


def _solve(ec_of: Callable[[float], float], ec: float) -> float:
    """Product [g/L] that makes an EC; EC grows almost in proportion to it."""
    own = ec_of(0.0)
    if ec <= own + _ALIKE_MS_CM:
        return 0.0
    grams = 1.0
    for _ in range(60):
        added = ec_of(grams) - own
        if added < 1e-3 * grams:  # a common salt adds 1 mS/cm for a gram
            raise Impossible("hardly-conducts")
        if abs(added / (ec - own) - 1) < 1e-9:
            break
        grams *= (ec - own) / added
    return grams


# ------------------------------------------------------------------------------------ what it means


def meaning(
    reading: EcRange, feed: Feed, water: Water | float = _PURE, *, meant_g_l: float | None = None
) -> Meaning:
    """Strength really mixed, from a reading of the ready feed.

    Parameters
    ----------
    reading : of the ready feed at 25 °C (`reading_ms_cm`) [mS/cm]
    feed : the product
    water : by its ions, or only its EC [mS/cm]
    meant_g_l : product that was to be dissolved [g/L]

    Returns
    -------
    Meaning
        The meter is taken at its word.

    Raises
    ------
    ValueError
        Where the feed reads less than its water, an amount is not above 0, and as `product_g_l`
        does.
    """
    if meant_g_l is not None and not 0 < meant_g_l < math.inf:
        raise ValueError(f"An amount of {meant_g_l:g} g/L cannot have been meant.")
    own = water.ec_ms_cm if isinstance(water, Water) else water
    added = _added(reading, own)
    grams = product_g_l(feed, reading, water)
    low, high = (feed.elements_mg_l(g) for g in grams)
    return Meaning(
        reading,
        EcRange(own, own),
        added,
        grams,
        {e: Range(low[e], high[e]) for e in low},
        Range(grams.low / meant_g_l, grams.high / meant_g_l) if meant_g_l else None,
    )


def _added(reading: EcRange, water_ms_cm: float) -> EcRange:
    if reading.high < water_ms_cm:
        raise Impossible("feed-under-water", reading=reading.high, water=water_ms_cm)
    return EcRange(max(reading.low - water_ms_cm, 0.0), reading.high - water_ms_cm)


def ec_at_100_mg_l_n(feed: Feed) -> EcRange:
    """EC that a product adds to pure water at 100 mg/L N [mS/cm].

    Raises
    ------
    ValueError
        For a product without nitrogen.
    """
    n = feed.percent.get("N", 0.0)
    if n <= 0:
        raise ValueError("A product without nitrogen has no EC at 100 mg/L N.")
    return mixed_ec_ms_cm(feed, 100 / element_mg_l(1.0, n))


def excess(found: Range, limit: float) -> Excess:
    """How far something lies over a limit, both in the same unit.

    Raises
    ------
    ValueError
        For a limit that is not above 0.
    """
    if not 0 < limit < math.inf:
        raise ValueError(f"A limit of {limit:g} cannot be held to.")
    factor = Range(found.low / limit, found.high / limit)
    verdict = "over" if factor.low > 1 else "under" if factor.high <= 1 else "unsure"
    return Excess(factor, verdict)


def water_to_add_l(
    volume_l: float, reading_ms_cm: float, wanted_ms_cm: float, water_ms_cm: float
) -> float:
    """Water that brings a feed down to an EC, 0 where it is there already.

    Both are taken to mix in proportion; thinned feed then reads up to a few per cent more than
    wanted, as ions hinder each other less.

    Parameters
    ----------
    volume_l : ready feed [L]
    reading_ms_cm, wanted_ms_cm : its EC now and then [mS/cm]
    water_ms_cm : EC of the water added [mS/cm]

    Returns
    -------
    float
        Water to add [L].

    Raises
    ------
    ValueError
        For a figure out of range, or a wanted EC that is no more than the water's own.

    References
    ----------
    Mass balance of two waters, FAO Irrigation and Drainage Paper 29.
    """
    figures = (volume_l, reading_ms_cm, wanted_ms_cm, water_ms_cm)
    if not all(0 <= figure < math.inf for figure in figures):
        raise ValueError("Volumes and ECs are figures from 0 upwards.")
    if reading_ms_cm <= wanted_ms_cm:
        return 0.0
    if wanted_ms_cm <= water_ms_cm:
        raise Impossible("thinning-water", water=water_ms_cm, wanted=wanted_ms_cm)
    return volume_l * (reading_ms_cm - wanted_ms_cm) / (wanted_ms_cm - water_ms_cm)
