"""EC against primary standards, measured salts, ISO 7888 and published readings of feeds.

The pair constants of the computation are those of the reference program it is compared with
elsewhere; these checks do not depend on that program. One constant (b_a in ions.toml) was chosen
from three values with the measured salts in view; the standards and the feeds were not used for it.
"""

from __future__ import annotations

import pytest

from bot.dosing.conductivity import (
    EcRange,
    NitrogenForms,
    ec_ms_cm,
    ec_to_ppm,
    feed_ec_ms_cm,
    temperature_factor,
    temperature_to_25,
)

from .checks import Check, Inputs, Result, published

P_IN_P2O5, K_IN_K2O = 0.43643, 0.83015  # from IUPAC atomic weights

RESULTS: dict[str, Result] = {
    "ec_of_ions": lambda inputs: ec_ms_cm(inputs),
    "temperature_factor": lambda inputs: temperature_factor(inputs["temp_c"]),
    "linear_to_25": lambda inputs: temperature_to_25(
        inputs["reading_ms_cm"], inputs["temp_c"], linear_per_k=inputs["linear_per_k"]
    ),
    "natural_water_to_25": lambda inputs: temperature_to_25(
        inputs["reading_ms_cm"], inputs["temp_c"]
    ),
    "ppm_on_scale": lambda inputs: ec_to_ppm(inputs["ec_ms_cm"], inputs["scale"]),
}

CHECKS = published("conductivity")


def of_kind(*kinds: str) -> list[Check]:
    return [check for check in CHECKS if check.kind in kinds]


def feed_of(inputs: Inputs) -> tuple[dict[str, float], float]:
    """Elements of a label at its dose, and the weight of the product in that [mg/L]."""
    n_percent, p2o5_percent, k2o_percent = inputs["label"]
    product_mg_l = inputs["n_mg_l"] * 100 / n_percent
    elements = {
        "N": float(inputs["n_mg_l"]),
        "P": product_mg_l * p2o5_percent / 100 * P_IN_P2O5,
        "K": product_mg_l * k2o_percent / 100 * K_IN_K2O,
    }
    return elements, product_mg_l


def holds(ec: EcRange, check: Check) -> bool:
    return (
        ec.low <= check.expected + check.tolerance and check.expected - check.tolerance <= ec.high
    )


@pytest.mark.parametrize("check", of_kind(*RESULTS), ids=str)
def test_a_figure_is_the_published_one(check: Check) -> None:
    assert RESULTS[check.kind](check.inputs) == check.printed


@pytest.mark.parametrize("check", of_kind("feed_holds"), ids=str)
def test_without_nitrogen_forms_the_range_holds_the_published_reading(check: Check) -> None:
    elements, product_mg_l = feed_of(check.inputs)
    assert holds(feed_ec_ms_cm(elements, None), check)
    assert holds(feed_ec_ms_cm(elements, None, product_mg_l=product_mg_l), check)


@pytest.mark.parametrize("check", of_kind("feed_with_forms_near"), ids=str)
def test_with_nitrogen_forms_the_range_is_narrow_and_at_the_published_reading(check: Check) -> None:
    elements, _ = feed_of(check.inputs)
    forms = NitrogenForms(*(check.inputs[form] for form in ("nitrate", "ammonium", "urea")))
    ec = feed_ec_ms_cm(elements, forms)
    assert holds(ec, check)
    assert (ec.high - ec.low) / (ec.high + ec.low) < 0.075


def test_every_check_is_used() -> None:
    assert {check.kind for check in CHECKS} == {*RESULTS, "feed_holds", "feed_with_forms_near"}
