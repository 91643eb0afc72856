"""Liquid feeds whose label is in percent of mass, against extension bulletins."""

from __future__ import annotations

import pytest

from bot.dosing.concentration import element_mg_l, liquid_ml, mass_g
from grammar.words.units import to_canonical

from .checks import Check, Inputs, Result, published


def _density_kg_l(inputs: Inputs) -> float:
    grams = to_canonical(inputs["weight"], inputs["weight_unit"])
    return grams / to_canonical(inputs["volume"], inputs["volume_unit"]) / 1000


def _element_in_a_measure(inputs: Inputs) -> float:
    product_g_l = _density_kg_l(inputs) * 1000
    element_g_l = element_mg_l(product_g_l, inputs["percent"]) / 1000
    measure_l = to_canonical(1.0, inputs["per"])
    return element_g_l * measure_l / to_canonical(1.0, inputs["mass_unit"])


def _volume_for_an_amount(inputs: Inputs) -> float:
    wanted_mg = to_canonical(inputs["amount"], inputs["amount_unit"]) * 1000
    product_g = mass_g(wanted_mg, 1.0, inputs["percent"])
    litres = liquid_ml(product_g, _density_kg_l(inputs)) / 1000
    return litres / to_canonical(1.0, inputs["result_unit"])


RESULTS: dict[str, Result] = {
    "density": _density_kg_l,
    "element_in_a_measure": _element_in_a_measure,
    "volume_for_an_amount": _volume_for_an_amount,
}


@pytest.mark.parametrize("check", published("liquids"), ids=str)
def test_a_liquid_gives_the_published_amount(check: Check) -> None:
    assert RESULTS[check.kind](check.inputs) == check.printed
