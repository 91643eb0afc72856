"""What a label says, in elements: oxides are converted.

References
----------
Factors from IUPAC atomic weights; held against Virginia Tech SPES-201 table 1 and others in
fixtures/published/oxides.toml.
"""

from __future__ import annotations

from collections.abc import Mapping

from bot.almanac.reference import elements

#: Element in its oxide [mass fraction], by the oxide's formula.
OXIDE_FACTOR: dict[str, float] = {e.oxide: e.oxide_fraction for e in elements().values() if e.oxide}


def elemental_percent(
    n: float, p2o5: float, k2o: float, extras: Mapping[str, float]
) -> dict[str, float]:
    """Elements of a product from its label.

    Parameters
    ----------
    n, p2o5, k2o : as printed [% of mass]
    extras : further elements by symbol [% of mass]

    Returns
    -------
    dict of str to float
        By element symbol [% of mass].
    """
    return {
        "N": n,
        "P": p2o5 * OXIDE_FACTOR["P2O5"],
        "K": k2o * OXIDE_FACTOR["K2O"],
        **extras,
    }
