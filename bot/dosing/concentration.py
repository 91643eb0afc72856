"""Concentrations: what a weight in a volume gives, and the other way round.

References
----------
Univ. of Massachusetts Extension, Fertilizer Calculations for Greenhouse Crops;
Ayers and Westcot, FAO Irrigation and Drainage Paper 29 (1985), for leaching.
"""

from __future__ import annotations


def mass_g(n_mg_l: float, volume_l: float, n_percent: float) -> float:
    """Weight of product that brings a concentration of nitrogen.

    Parameters
    ----------
    n_mg_l : nitrogen wanted [mg/L]
    volume_l : ready feed [L]
    n_percent : nitrogen on the label [% of mass]

    Returns
    -------
    float [g]

    Raises
    ------
    ValueError
        If the product holds no nitrogen.
    """
    if n_percent <= 0:
        raise ValueError("a product without nitrogen cannot be dosed by nitrogen")
    return n_mg_l * volume_l / (10 * n_percent)


def element_mg_l(product_g_l: float, percent: float) -> float:
    """Concentration of an element [mg/L] from product [g/L] holding `percent` [% of mass]."""
    return product_g_l * percent * 10


def liquid_ml(mass_g: float, density_kg_l: float) -> float:
    """Volume [mL] of a liquid product of this weight [g] and density [kg/L]."""
    return mass_g / density_kg_l


def dilution_ml(stock_mg_l: float, target_mg_l: float, volume_l: float) -> float:
    """Stock [mL] for a final volume [L] at the target, both concentrations in [mg/L]."""
    return 1000 * volume_l * target_mg_l / stock_mg_l


def leaching_requirement(water_ec: float, soil_ec: float) -> float:
    """Share of the water that must drain to hold a salinity [1], conductivities in one unit.

    References
    ----------
    FAO Irrigation and Drainage Paper 29: LR = ECw / (5 ECe - ECw).
    """
    return water_ec / (5 * soil_ec - water_ec)


def blend(a_fraction: float, first: float, second: float) -> float:
    """A quantity of two waters mixed, `a_fraction` [1] of the first."""
    return a_fraction * first + (1 - a_fraction) * second
