"""Waters, readings and supplements against FAO 29, analyses and extension services."""

from __future__ import annotations

import pytest

from bot.almanac.waters import sea_water_na_mg_l
from bot.dosing.conductivity import EcRange, NitrogenForms
from bot.dosing.label import elemental_percent
from bot.dosing.meter import Feed, meaning, reading_ms_cm
from bot.dosing.supplement import missing
from bot.dosing.water import (
    RESTRICTIONS,
    Range,
    Water,
    blend_to,
    softened,
    suitability,
    water_of_report,
)

from .by_hand import nitrogen_by_difference_mg_l
from .checks import Check, Inputs, Result, published

CACO3_MG_PER_MEQ, HCO3_MG_PER_MEQ, CL_MG_PER_MEQ = 50.043, 61.017, 35.453  # IUPAC weights
CA_MG_PER_MEQ, NA_MG_PER_MEQ = 20.039, 22.990

FULL = {"Ca": 2, "Mg": 2, "Na": 1, "K": 1}
WEIGHTS = {"Ca": 40.078, "Mg": 24.305, "Na": 22.990, "K": 39.098}


def _balanced(inputs: Inputs) -> Water:
    """The ions of a check, with chloride or sodium for the balance where they stand alone."""
    if set(inputs) & {"HCO3", "Cl", "SO4"} and set(inputs) & set(FULL):
        return water_of_report(inputs)
    cations = sum(FULL[s] * v / WEIGHTS[s] for s, v in inputs.items() if s in FULL)
    anions = inputs.get("HCO3", 0.0) / HCO3_MG_PER_MEQ
    partner = {"Cl": cations * CL_MG_PER_MEQ} if cations else {"Na": anions * NA_MG_PER_MEQ}
    return water_of_report({**inputs, **partner})


def _meq(inputs: Inputs) -> float:
    [symbol] = inputs
    return _balanced(inputs).meq_l(f"{symbol.lower()}_mg_l")


def _softened_na(inputs: Inputs) -> float:
    meq = inputs["hardness"] / CACO3_MG_PER_MEQ
    hard = water_of_report({"Ca": meq * CA_MG_PER_MEQ, "HCO3": meq * HCO3_MG_PER_MEQ})
    return softened(hard).na_mg_l


def _restriction_from(inputs: Inputs) -> float:
    """Where a restriction begins, found from the answers alone."""
    wanted = RESTRICTIONS.index(inputs["restriction"])
    low, high = 0.0, 100.0
    for _ in range(50):
        middle = (low + high) / 2
        known = {inputs["quantity"]: Range(middle, middle)}
        [finding] = suitability(known, "moderate").findings
        assert finding.restrictions is not None
        if RESTRICTIONS.index(finding.restrictions[0]) < wanted:
            low = middle
        else:
            high = middle
    return high


def _restriction_from_mg_l(inputs: Inputs) -> float:
    mg_per_meq = {"Cl": CL_MG_PER_MEQ, "HCO3": HCO3_MG_PER_MEQ}[inputs["ion"]]
    return mg_per_meq * _restriction_from(inputs)


def _most_sodium(inputs: Inputs) -> float:
    """The most sodium that is still taken for a water [mg/L], found from what is refused."""
    low, high = 1000.0, 100_000.0
    for _ in range(50):
        middle = (low + high) / 2
        try:
            Water(na_mg_l=middle, cl_mg_l=middle / NA_MG_PER_MEQ * CL_MG_PER_MEQ)
        except ValueError:
            high = middle
        else:
            low = middle
    assert low == pytest.approx(sea_water_na_mg_l().value)
    return low


def _blend_fraction(inputs: Inputs) -> float:
    return blend_to(
        "ec_ms_cm", inputs["target"], float(inputs["first"]), float(inputs["second"]), volume_l=1.0
    ).first_fraction


def _added_ec(inputs: Inputs) -> float:
    feed = Feed(elemental_percent(15, 4, 15, {}), NitrogenForms(0.8, 0.2, 0.0))
    reading = EcRange(inputs["reading"], inputs["reading"])
    return meaning(reading, feed, float(inputs["water"])).added.low


def _calcium_brought(inputs: Inputs) -> float:
    feed = Feed({"N": inputs["n_percent"], "Ca": inputs["ca_percent"]})
    return feed.elements_mg_l(inputs["n_mg_l"] / (10 * inputs["n_percent"]))["Ca"]


RESULTS: dict[str, Result] = {
    "hardness": lambda inputs: _balanced(inputs).hardness_mg_l_caco3,
    "alkalinity": lambda inputs: _balanced(inputs).alkalinity_mg_l_caco3,
    "meq": _meq,
    "sar": lambda inputs: _balanced(inputs).sar,
    "imbalance": lambda inputs: _balanced(inputs).imbalance,
    "meq_per_ms_cm": lambda inputs: _balanced(inputs).cations_meq_l / _balanced(inputs).ec_ms_cm,
    "softened_na": _softened_na,
    "restriction_from": _restriction_from,
    "restriction_from_mg_l": _restriction_from_mg_l,
    "most_sodium": _most_sodium,
    "blend_fraction": _blend_fraction,
    "calcium_target": lambda inputs: missing(inputs["n_mg_l"], {}, {})["Ca"].target,
    "magnesium_target": lambda inputs: missing(inputs["n_mg_l"], {}, {})["Mg"].target,
    "calcium_brought": _calcium_brought,
    "added_ec": _added_ec,
    "nitrogen_by_difference": lambda inputs: nitrogen_by_difference_mg_l(
        inputs["reading"], inputs["water"], inputs["at_100"]
    ),
    "reading": lambda inputs: reading_ms_cm(inputs["value"], "ppm", scale=inputs["scale"]).low,
}

CHECKS = published("water")


@pytest.mark.parametrize("check", CHECKS, ids=str)
def test_a_figure_is_the_published_one(check: Check) -> None:
    assert RESULTS[check.kind](check.inputs) == check.printed


def test_every_kind_of_check_is_used() -> None:
    assert {check.kind for check in CHECKS} == set(RESULTS)
