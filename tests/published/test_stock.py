"""What dissolves, what falls out and how stocks are thinned, against handbooks and bulletins."""

from __future__ import annotations

import pytest

from bot.dosing.stock import (
    Product,
    Ratio,
    first_to_fall,
    saturation_indices,
    solubility_g_l,
)

from .checks import Check, Inputs, Result, published


def _mass_percent(inputs: Inputs) -> float:
    return solubility_g_l(inputs["salt"], inputs["celsius"]) / 10


def _grams_in_100_g_of_water(inputs: Inputs) -> float:
    percent = _mass_percent(inputs)
    return 100 * percent / (100 - percent)


def _saturated_g_l(inputs: Inputs) -> float:
    # the mixtures were made without sulphates
    product = Product.of_label("mixture", tuple(inputs["analysis"]), {"S": 0.0})
    found = first_to_fall(product, inputs["celsius"])
    assert found is not None
    assert found[0] == "KNO3"
    return found[1]


def _gypsum_saturates(inputs: Inputs) -> float:
    low, high = 1.0, 100.0
    while high - low > 1e-6:
        middle = (low + high) / 2
        elements = {"Ca": 40.078 * middle, "S": 32.06 * middle}
        falls = saturation_indices(elements, ph=inputs["ph"])["gypsum"] > 0
        low, high = (low, middle) if falls else (middle, high)
    return low


def _percent_of_one_in(inputs: Inputs) -> float:
    return Ratio.one_in(inputs["n"]).percent


def _times_of_percent(inputs: Inputs) -> float:
    return Ratio.one_in(100 / inputs["percent"]).times


def _feed_of_one_in(inputs: Inputs) -> float:
    return Ratio.one_in(inputs["n"]).feed_l(1.0)


def _feed_of_one_to(inputs: Inputs) -> float:
    return Ratio.one_in(1 + inputs["n"]).feed_l(1.0)


def _stock_for_feed(inputs: Inputs) -> float:
    strength = Ratio.one_in(inputs["n"]).stock_g_l(inputs["mass"] / inputs["in_feed"])
    return strength * float(inputs["stock"])


RESULTS: dict[str, Result] = {
    "mass_percent": _mass_percent,
    "grams_in_100_g_of_water": _grams_in_100_g_of_water,
    "saturated_g_l": _saturated_g_l,
    "gypsum_saturates": _gypsum_saturates,
    "percent_of_one_in": _percent_of_one_in,
    "times_of_percent": _times_of_percent,
    "feed_of_one_in": _feed_of_one_in,
    "feed_of_one_to": _feed_of_one_to,
    "stock_for_feed": _stock_for_feed,
}


@pytest.mark.parametrize("check", published("stock"), ids=str)
def test_a_stock_is_the_published_one(check: Check) -> None:
    assert RESULTS[check.kind](check.inputs) == check.printed
