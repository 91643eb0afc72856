"""How much to weigh and what it gives, against extension bulletins and teaching notes."""

from __future__ import annotations

import pytest

from bot.dosing.concentration import element_mg_l, mass_g
from bot.dosing.stock import Ratio
from grammar.words.units import to_canonical

from .checks import Check, Inputs, Result, published


def _volume_l(inputs: Inputs) -> float:
    return to_canonical(inputs["volume"] * inputs.get("injector", 1), inputs["volume_unit"])


def _mass_to_weigh(inputs: Inputs) -> float:
    grams = mass_g(inputs["mg_l"], _volume_l(inputs), inputs["percent"])
    return grams / to_canonical(1.0, inputs["mass_unit"])


def _element_in_water(inputs: Inputs) -> float:
    grams = to_canonical(inputs["mass"], inputs["mass_unit"])
    return element_mg_l(grams / _volume_l(inputs), inputs["percent"])


def _stock_to_measure(inputs: Inputs) -> float:
    ratio = Ratio.one_in(inputs["stock_mg_l"] / inputs["target_mg_l"])
    return 1000 * float(inputs["volume_l"]) * ratio.percent / 100


RESULTS: dict[str, Result] = {
    "mass_to_weigh": _mass_to_weigh,
    "element_in_water": _element_in_water,
    "stock_to_measure": _stock_to_measure,
}


@pytest.mark.parametrize("check", published("concentration"), ids=str)
def test_a_concentration_is_the_published_one(check: Check) -> None:
    assert RESULTS[check.kind](check.inputs) == check.printed
