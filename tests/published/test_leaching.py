"""Leaching requirement and the blending of two waters, against textbooks on irrigation."""

from __future__ import annotations

import pytest

from bot.dosing.concentration import blend

from .by_hand import leaching_requirement
from .checks import Check, Inputs, Result, published


def _leaching_requirement(inputs: Inputs) -> float:
    return leaching_requirement(inputs["water_ec"], inputs["soil_ec"])


def _applied_water(inputs: Inputs) -> float:
    return float(inputs["crop_water"]) / (1 - _leaching_requirement(inputs))


def _blend(inputs: Inputs) -> float:
    return blend(inputs["fraction"], inputs["first"], inputs["second"])


RESULTS: dict[str, Result] = {
    "leaching_requirement": _leaching_requirement,
    "applied_water": _applied_water,
    "blend": _blend,
}


@pytest.mark.parametrize("check", published("leaching"), ids=str)
def test_leaching_and_blending_are_the_published_ones(check: Check) -> None:
    assert RESULTS[check.kind](check.inputs) == check.printed
