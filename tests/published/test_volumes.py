"""Volumes of water, against the law and against pint's own table of units."""

from __future__ import annotations

import pint
import pytest

from .checks import Check, published
from .conversion import RESULTS, converted

#: Our unit id and the name in pint's default registry, which is not the one we load.
REFERENCE_NAMES = {
    "us_gallon": "gallon",
    "us_quart": "quart",
    "us_pint": "pint",
    "us_fluid_ounce": "fluid_ounce",
    "imperial_gallon": "imperial_gallon",
    "imperial_quart": "imperial_quart",
    "imperial_pint": "imperial_pint",
    "imperial_fluid_ounce": "imperial_fluid_ounce",
    "cubic_centimetre": "cubic_centimeter",
}


@pytest.fixture(scope="module")
def reference() -> pint.UnitRegistry[float]:
    return pint.UnitRegistry()


@pytest.mark.parametrize("check", published("volumes"), ids=str)
def test_a_volume_is_the_published_one(check: Check) -> None:
    assert RESULTS[check.kind](check.inputs) == check.printed


@pytest.mark.parametrize(("unit", "name"), REFERENCE_NAMES.items(), ids=list(REFERENCE_NAMES))
def test_a_volume_agrees_with_a_general_unit_library(
    unit: str, name: str, reference: pint.UnitRegistry[float]
) -> None:
    litres = reference.Quantity(1.0, name).to("litre").magnitude
    assert converted(1.0, unit) == pytest.approx(litres, rel=1e-9)
