"""Concentrations: what a weight in a volume gives, and the other way round.

References
----------
Univ. of Massachusetts Extension, Fertilizer Calculations for Greenhouse Crops.
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


def blend(a_fraction: float, first: float, second: float) -> float:
    """A quantity of two waters mixed, `a_fraction` [1] of the first."""
    return a_fraction * first + (1 - a_fraction) * second
