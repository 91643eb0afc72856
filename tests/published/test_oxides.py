"""Oxides on labels and the elements in them, against agencies, and against atomic weights."""

from __future__ import annotations

import pytest
from molmass import Formula

from bot.dosing.label import OXIDE_FACTOR, elemental_percent

from .checks import Check, Inputs, Result, published


def _factor(inputs: Inputs) -> float:
    return OXIDE_FACTOR[inputs["oxide"]]


def _factor_back(inputs: Inputs) -> float:
    return 1 / OXIDE_FACTOR[inputs["oxide"]]


def _element_percent(inputs: Inputs) -> float:
    return float(inputs["percent"]) * _factor(inputs)


def _oxide_percent(inputs: Inputs) -> float:
    return float(inputs["percent"]) * _factor_back(inputs)


def _label(inputs: Inputs) -> float:
    return elemental_percent(inputs["n"], inputs["p2o5"], inputs["k2o"], {})[inputs["element"]]


RESULTS: dict[str, Result] = {
    "factor": _factor,
    "factor_back": _factor_back,
    "element_percent": _element_percent,
    "oxide_percent": _oxide_percent,
    "label": _label,
}


@pytest.mark.parametrize("check", published("oxides"), ids=str)
def test_an_oxide_holds_the_published_share_of_its_element(check: Check) -> None:
    assert RESULTS[check.kind](check.inputs) == check.printed


# The reference library's own atomic weights (molmass); 1e-4 covers the spread between editions.
@pytest.mark.parametrize("oxide", sorted(OXIDE_FACTOR))
def test_a_factor_follows_from_atomic_weights(oxide: str) -> None:
    composition = Formula(oxide).composition()
    (element,) = set(composition) - {"O"}
    assert OXIDE_FACTOR[oxide] == pytest.approx(composition[element].fraction, rel=1e-4)
