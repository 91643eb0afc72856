"""Turning what was written into canonical floats, once, at the edge.

The lexicon maps words to the unit ids below; pint converts ids and never sees a
person's text. Canonical units: litres, grams, millilitres for spoons,
mg/L of CaCO3 for hardness, mS/cm for conductivity.

References
----------
Volumes: NIST Handbook 44 (US customary) and the UK Units of Measurement
Regulations 1995 (imperial gallon 4.54609 L); an imperial cup is half a pint by common
practice, no source. Hardness: molar mass of CaCO3
100.087 g/mol (IUPAC atomic weights); one German degree is 10 mg/L CaO,
one English degree one grain a gallon (imperial), one French degree 10 mg/L CaCO3.
"""

from __future__ import annotations

from functools import cache
from typing import TYPE_CHECKING, Any

if TYPE_CHECKING:
    import pint

#: Measures whose size depends on the country: 'us_' or 'imperial_' goes before the id.
COUNTRYLESS = ("gallon", "quart", "pint", "fluid_ounce", "cup")
#: Written before the id of a measure that took its country from elsewhere in the message.
TAKEN = "taken_"
#: What a unit id converts to; ids not listed here are unknown on purpose.
CANONICAL: dict[str, str] = {
    unit: canonical
    for canonical, units in {
        "litre": (
            "litre", "millilitre", "centilitre", "decilitre", "cubic_decimetre",
            "cubic_centimetre", "us_gallon", "imperial_gallon", "us_quart", "imperial_quart",
            "us_pint", "imperial_pint", "us_fluid_ounce", "imperial_fluid_ounce",
            "us_cup", "imperial_cup",
            "half_litre", "quarter_litre", "three_quarter_litre",
        ),
        "gram": ("gram", "kilogram", "milligram", "ounce", "pound", "metric_pound"),
        "millilitre": (
            "us_teaspoon", "us_tablespoon", "metric_teaspoon", "metric_tablespoon",
        ),
        "mg_l_caco3": (
            "mg_l_caco3", "german_degree", "french_degree", "english_degree",
            "us_grain_per_gallon", "mmol_l_caco3", "meq_l_caco3",
        ),
        "ms_cm": ("ms_cm", "us_cm", "ds_m", "ms_m", "us_m"),
        "centimetre": ("millimetre", "centimetre", "inch"),
    }.items()
    for unit in units
}  # fmt: skip

# Only the units of this trade: pint's own definitions take forty times as long to load.
_DEFINITIONS = """
metre = [length]
kilogram = [mass]
siemens = [conductance]
mole = [substance]
centimetre = metre / 100
millimetre = metre / 1000
inch = 0.0254 * metre
gram = kilogram / 1000
milligram = gram / 1000
pound = 0.45359237 * kilogram
ounce = pound / 16
metric_pound = kilogram / 2
grain = pound / 7000
litre = metre ** 3 / 1000
decilitre = litre / 10
cubic_decimetre = litre
half_litre = litre / 2
quarter_litre = litre / 4
three_quarter_litre = litre * 3 / 4
centilitre = litre / 100
millilitre = litre / 1000
cubic_centimetre = centimetre ** 3
us_gallon = 231 * inch ** 3
us_quart = us_gallon / 4
us_pint = us_gallon / 8
us_fluid_ounce = us_gallon / 128
us_cup = us_gallon / 16
us_tablespoon = us_fluid_ounce / 2
us_teaspoon = us_fluid_ounce / 6
imperial_gallon = 4.54609 * litre
imperial_quart = imperial_gallon / 4
imperial_pint = imperial_gallon / 8
imperial_fluid_ounce = imperial_gallon / 160
imperial_cup = imperial_pint / 2
metric_teaspoon = 5 * millilitre
metric_tablespoon = 15 * millilitre
mg_l_caco3 = milligram / litre
mmol_l_caco3 = 100.087 * mg_l_caco3
meq_l_caco3 = mmol_l_caco3 / 2
german_degree = 10 * 100.087 / 56.077 * mg_l_caco3
french_degree = 10 * mg_l_caco3
english_degree = grain / imperial_gallon
us_grain_per_gallon = grain / us_gallon
ms_cm = siemens / metre / 10
us_cm = ms_cm / 1000
ds_m = ms_cm
ms_m = ms_cm / 100
us_m = us_cm / 100
"""


@cache
def _factor(unit: str) -> float:
    """How many canonical units one `unit` is."""
    if unit == CANONICAL[unit]:
        return 1.0
    return float(_registry().Quantity(1.0, unit).to(CANONICAL[unit]).magnitude)


@cache
def _registry() -> pint.UnitRegistry[Any]:
    import pint  # costs 0.2 s: only when needed

    registry: pint.UnitRegistry[Any] = pint.UnitRegistry(None)
    registry.load_definitions(_DEFINITIONS.strip().splitlines())
    return registry


def to_canonical(value: float, unit: str) -> float:
    """Convert a number in a unit of the lexicon to its canonical unit.

    Parameters
    ----------
    value : number as written
    unit : unit id, a key of `CANONICAL`

    Returns
    -------
    float in [L], [g], [mL], [mg/L CaCO3], [mS/cm] or [cm], by the kind of the unit

    Raises
    ------
    KeyError
        For an id that is not one of ours.
    """
    return value * _factor(unit)
