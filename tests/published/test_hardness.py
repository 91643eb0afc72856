"""Units of hardness, against agencies and suppliers, and against the definitions of the units."""

from __future__ import annotations

import pytest
from molmass import Formula

from .checks import Check, published
from .conversion import RESULTS, converted

# Molar masses of the reference library [g/mol]; a grain is 64.79891 mg by the international
# yard and pound agreement of 1959, the gallons are those of the law [L].
CACO3_G_MOL = Formula("CaCO3").mass
CAO_G_MOL = Formula("CaO").mass
GRAIN_MG = 64.79891
IMPERIAL_GALLON_L = 4.54609
US_GALLON_L = 3.785411784

#: mg/L of CaCO3 in one unit, from what the unit means.
DEFINITIONS = {
    "mg_l_caco3": 1.0,
    "mmol_l_caco3": CACO3_G_MOL,
    "meq_l_caco3": CACO3_G_MOL / 2,
    "german_degree": 10 * CACO3_G_MOL / CAO_G_MOL,
    "french_degree": 10.0,
    "english_degree": GRAIN_MG / IMPERIAL_GALLON_L,
    "us_grain_per_gallon": GRAIN_MG / US_GALLON_L,
}


@pytest.mark.parametrize("check", published("hardness"), ids=str)
def test_a_hardness_is_the_published_one(check: Check) -> None:
    assert RESULTS[check.kind](check.inputs) == check.printed


@pytest.mark.parametrize(("unit", "mg_l_caco3"), DEFINITIONS.items(), ids=list(DEFINITIONS))
def test_a_unit_of_hardness_follows_from_its_definition(unit: str, mg_l_caco3: float) -> None:
    assert converted(1.0, unit) == pytest.approx(mg_l_caco3, rel=1e-5)
