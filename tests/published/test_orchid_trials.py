"""What orchids were given in published trials: our arithmetic returns the trial's own figures."""

from __future__ import annotations

import pytest

from bot.dosing.concentration import element_mg_l, mass_g
from bot.dosing.label import elemental_percent
from grammar.words.units import to_canonical

from .checks import Check, Inputs, Result, published


def _element_in_water(inputs: Inputs) -> float:
    grams = to_canonical(inputs["mass"], inputs["mass_unit"])
    litres = to_canonical(inputs["volume"], inputs["volume_unit"])
    return element_mg_l(grams / litres, inputs["percent"])


def _element_at_target_n(inputs: Inputs) -> float:
    label = elemental_percent(inputs["n"], inputs["p2o5"], inputs["k2o"], {})
    product_g_l = mass_g(inputs["target_n_mg_l"], 1.0, label["N"])
    return element_mg_l(product_g_l, label[inputs["element"]])


def _element_per_feed(inputs: Inputs) -> float:
    # All of the mass is the element itself, hence 100 %.
    return mass_g(inputs["mg_l"], inputs["volume_ml"] / 1000, 100.0) * 1000


RESULTS: dict[str, Result] = {
    "element_in_water": _element_in_water,
    "element_at_target_n": _element_at_target_n,
    "element_per_feed": _element_per_feed,
}


@pytest.mark.parametrize("check", published("orchid_trials"), ids=str)
def test_a_trial_s_doses_give_the_trial_s_concentrations(check: Check) -> None:
    assert RESULTS[check.kind](check.inputs) == check.printed
