"""Formulas of bulletins that nothing in the house reckons with; theirs stand beside ours."""

from __future__ import annotations


def leaching_requirement(water_ec: float, soil_ec: float) -> float:
    """Share of the water that must drain to hold a salinity [1], conductivities in one unit.

    References
    ----------
    FAO Irrigation and Drainage Paper 29: LR = ECw / (5 ECe - ECw).
    """
    return water_ec / (5 * soil_ec - water_ec)


def nitrogen_by_difference_mg_l(
    reading_ms_cm: float, water_ms_cm: float, at_100_mg_l_ms_cm: float
) -> float:
    """Nitrogen of a feed [mg/L] from two readings, as growers work it out.

    References
    ----------
    Purdue Extension HO-286-W: N = 100 (EC feed - EC water) / EC at 100 mg/L N.
    """
    return 100 * (reading_ms_cm - water_ms_cm) / at_100_mg_l_ms_cm
