"""Spoons and spoonfuls of powder, against NIST, and against two bulletins' own spoons."""

from __future__ import annotations

import pytest

from bot.dosing.concentration import element_mg_l
from grammar.words.units import to_canonical

from . import conversion
from .checks import Check, Inputs, Result, published


def _spoonful(inputs: Inputs) -> float:
    grams = to_canonical(inputs["weight"], inputs["weight_unit"])
    bulk_g_ml = grams / to_canonical(inputs["volume"], inputs["volume_unit"]) / 1000
    return bulk_g_ml * to_canonical(1.0, inputs["spoon"])


def _element_from_spoons(inputs: Inputs) -> float:
    grams = inputs["spoons"] * inputs["g_per_spoon"]
    litres = to_canonical(inputs["volume"], inputs["volume_unit"])
    return element_mg_l(grams / litres, inputs["percent"])


RESULTS: dict[str, Result] = {
    **conversion.RESULTS,
    "spoonful": _spoonful,
    "element_from_spoons": _element_from_spoons,
}


@pytest.mark.parametrize("check", published("spoons"), ids=str)
def test_a_spoon_holds_the_published_amount(check: Check) -> None:
    assert RESULTS[check.kind](check.inputs) == check.printed
