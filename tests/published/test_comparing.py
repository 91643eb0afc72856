"""What nutrients cost and what a feed takes, against extension services' worked examples."""

from __future__ import annotations

import pytest

from bot.dosing.choice import Candidate
from bot.dosing.comparing import (
    FEED_L,
    Compared,
    Offer,
    compare,
    nutrients_per_money,
    salt_index_per_n,
)
from bot.dosing.label import OXIDE_FACTOR
from grammar.words.units import to_canonical

from .checks import Check, Inputs, Result, published

N_MG_L = 200.0
POUND_G = to_canonical(1.0, "pound")
GALLON_L = to_canonical(1.0, "us_gallon")


def _offer(inputs: Inputs) -> Offer:
    """The product of a check; without a price 1, without a pack none."""
    liquid = "pounds_a_gallon" in inputs
    unit = inputs.get("pack_unit")
    pack = to_canonical(inputs["pack"], unit) if unit else None
    in_ml = unit == "us_gallon"
    return Offer(
        Candidate(
            "this",
            (inputs.get("n", 0), inputs.get("p2o5", 0), 0),
            form="liquid" if liquid else "powder",
        ),
        density_kg_l=inputs["pounds_a_gallon"] * POUND_G / GALLON_L / 1000 if liquid else None,
        price=inputs.get("price", 1.0),
        pack=None if pack is None else pack * (1000 if in_ml else 1),
        pack_unit="ml" if in_ml else "g",
    )


def _compared(inputs: Inputs, n_mg_l: float = N_MG_L) -> Compared:
    other = Offer(Candidate("other", (20, 20, 20), form="powder"))
    comparison = compare([_offer(inputs), other], n_mg_l=n_mg_l)
    return next(feed for feed in comparison.feeds if feed.key == "this")


def _nitrogen_in_feed_pounds(n_mg_l: float = N_MG_L) -> float:
    return n_mg_l * FEED_L / 1000 / POUND_G


def _cost_of_nitrogen(inputs: Inputs) -> float:
    cost = _compared(inputs).cost
    assert cost is not None
    return cost * float(inputs["nitrogen"]) / _nitrogen_in_feed_pounds()


def _cost_of_phosphate(inputs: Inputs) -> float:
    bought = nutrients_per_money(_offer(inputs))
    assert bought is not None
    return POUND_G / (bought["P"] / OXIDE_FACTOR["P2O5"])


def _nutrient_in_pack(inputs: Inputs) -> float:
    bought = nutrients_per_money(_offer(inputs))
    assert bought is not None
    return bought["N"] / POUND_G


def _powder_for_feed(inputs: Inputs) -> float:
    grams = _compared(inputs, inputs["n_mg_l"]).product_g
    assert grams is not None
    feed_l = float(inputs["us_gallons"]) * GALLON_L
    return grams / FEED_L * feed_l / to_canonical(1.0, "ounce")


def _liquid_for_nitrogen(inputs: Inputs) -> float:
    millilitres = _compared(inputs).product_ml
    assert millilitres is not None
    gallons = millilitres / 1000 / GALLON_L
    return gallons * float(inputs["nitrogen"]) / _nitrogen_in_feed_pounds()


def _salt_index_per_n(inputs: Inputs) -> float:
    label = Candidate(inputs["salt"], (inputs["n"], 0, 0), form="powder")
    found = salt_index_per_n(Offer(label, salts={inputs["salt"]: 100.0}))
    assert found is not None
    return found[0]


RESULTS: dict[str, Result] = {
    "salt_index_per_n": _salt_index_per_n,
    "cost_of_nitrogen": _cost_of_nitrogen,
    "cost_of_phosphate": _cost_of_phosphate,
    "nutrient_in_pack": _nutrient_in_pack,
    "powder_for_feed": _powder_for_feed,
    "liquid_for_nitrogen": _liquid_for_nitrogen,
}


@pytest.mark.parametrize("check", published("comparing"), ids=str)
def test_costs_and_amounts_are_the_published_ones(check: Check) -> None:
    assert RESULTS[check.kind](check.inputs) == check.printed
