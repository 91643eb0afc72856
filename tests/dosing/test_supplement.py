"""Calcium and magnesium still missing, and the dose that fills them."""

from __future__ import annotations

import math

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from molmass import Formula

from bot.almanac.waters import ec_ceilings_ms_cm
from bot.dosing.conductivity import NitrogenForms
from bot.dosing.meter import Feed, mixed_ec_ms_cm
from bot.dosing.strength import CEILINGS
from bot.dosing.supplement import Missing, Supplement, ec_ceiling, fill, missing
from bot.dosing.water import Known, Range, Water, estimate, water_of_report

EPSOM = Feed({"Mg": 9.86, "S": 13.0})  # MgSO4.7H2O
LIME_SALTPETRE = Feed({"N": 15.5, "Ca": 19.0}, NitrogenForms(0.93, 0.07, 0.0))
BOTH = Feed({"N": 2.0, "Ca": 3.2, "Mg": 1.2}, NitrogenForms(1.0, 0.0, 0.0))
GYPSUM = Feed({"Ca": 23.3, "S": 18.6})
PURE: Known = Water().known()


def filled(
    product: Feed,
    lacking: dict[str, Missing],
    *,
    to: str = "hungry",
    ec: float = 0.1,
    n: float = 0.0,
    regime: str | None = None,
) -> Supplement:
    return fill(
        lacking,
        product,
        feeding_class=to,
        present_ec_ms_cm=ec,
        present_n_mg_l=n,
        regime=regime,
    )


# ---------------------------------------------------------------------------------------- missing


def test_pure_water_and_a_feed_without_them_miss_the_whole_target() -> None:
    # Wang, HortScience 42 (2007): 100 mg/L Ca and 50 mg/L Mg at 200 mg/L N
    found = missing(200.0, PURE, {"N": 200.0})
    assert found["Ca"].missing == (100.0, 100.0)
    assert found["Mg"].missing == (50.0, 50.0)
    assert all("Wang" in gap.source for gap in found.values())


def test_water_and_feed_both_count() -> None:
    water = water_of_report({"Ca": 20.0, "HCO3": 60.9})
    found = missing(100.0, water.known(), {"Ca": 10.0, "Mg": 25.0})
    assert found["Ca"].has == (30.0, 30.0)
    assert found["Ca"].missing == (20.0, 20.0)
    assert found["Mg"].missing == (0.0, 0.0)


def test_hard_water_has_more_calcium_than_a_weak_feed_wants() -> None:
    water = estimate(hardness_mg_l_caco3=250.0)
    found = missing(50.0, water, {})
    assert found["Ca"].missing.high < 0


def test_a_range_of_water_leaves_a_range_missing() -> None:
    found = missing(100.0, estimate(hardness_mg_l_caco3=100.0), {})["Ca"]
    # 100 mg/L CaCO3: 20 to 40 mg/L Ca, dolomite to limestone
    assert found.missing == pytest.approx((10.0, 30.0), abs=0.1)


@given(st.floats(1, 300), st.floats(0, 60), st.floats(0, 60))
def test_what_is_there_and_what_is_missing_make_the_target(n: float, ca: float, fed: float) -> None:
    found = missing(n, {"ca_mg_l": Range(ca, ca)}, {"Ca": fed})["Ca"]
    assert found.has.low + found.missing.high == pytest.approx(found.target)
    assert found.target == pytest.approx(missing(2 * n, {}, {})["Ca"].target / 2)


@pytest.mark.parametrize("n", [0.0, 0.5])
def test_the_targets_go_with_the_nitrogen_down_to_none(n: float) -> None:
    found = missing(n, PURE, {})
    assert found["Ca"].missing == (n / 2, n / 2)
    assert found["Mg"].missing == (n / 4, n / 4)
    dose = filled(EPSOM, found)
    assert dose.brings_mg_l["Mg"] == pytest.approx(n / 4)
    assert dose.limited_by == ""


@pytest.mark.parametrize("n", [-1.0, math.inf, math.nan])
def test_an_impossible_nitrogen_is_refused(n: float) -> None:
    with pytest.raises(ValueError, match="of nitrogen"):
        missing(n, PURE, {})


# -------------------------------------------------------------------------------------- filling it


def test_a_product_with_one_of_the_two_fills_that_one() -> None:
    found = filled(EPSOM, missing(100.0, PURE, {}), to="moderate", ec=0.5, n=100.0)
    # 25 mg/L Mg at 9.86 % of MgSO4.7H2O
    share = Formula("Mg").mass / Formula("MgSO4(H2O)7").mass
    assert found.product_g_l == pytest.approx(0.025 / share, rel=1e-3)
    assert found.left_mg_l["Mg"] == pytest.approx((0, 0), abs=1e-9)
    assert found.left_mg_l["Ca"] == (50.0, 50.0)
    assert found.limited_by == ""


def test_a_product_with_both_parts_the_error() -> None:
    lacking = missing(100.0, PURE, {})
    found = filled(BOTH, lacking, to="hungry", ec=0.4, n=100.0)
    assert found.left_mg_l["Ca"].low < 0 < found.left_mg_l["Mg"].low

    # no other dose comes nearer to both, in shares of the targets
    def error(grams: float) -> float:
        return sum(
            ((gap.missing.middle - BOTH.elements_mg_l(grams)[e]) / gap.target) ** 2
            for e, gap in lacking.items()
        )

    best = error(found.product_g_l)
    assert all(error(found.product_g_l * f) > best for f in (0.9, 0.98, 1.02, 1.1))


def test_the_ec_of_the_supplement_is_charged_against_the_ceiling() -> None:
    ceiling = ec_ceilings_ms_cm()["sensitive"].value
    found = filled(EPSOM, missing(50.0, PURE, {}), to="sensitive", ec=ceiling - 0.02, n=50.0)
    assert found.limited_by == "ec_ceiling"
    assert found.product_g_l < found.wanted_g_l
    assert found.total_ec == pytest.approx(ceiling, rel=1e-6)
    assert found.left_mg_l["Mg"].low > 0


@pytest.mark.parametrize("n", [3.9, 5.0])
def test_targets_of_a_milligram_are_filled_as_well(n: float) -> None:
    # a quarter of the nitrogen as magnesium: 0.98 and 1.25 mg/L
    found = filled(EPSOM, missing(n, PURE, {}))
    assert found.brings_mg_l["Mg"] == pytest.approx(n / 4)


def test_at_the_ceiling_itself_there_is_no_room() -> None:
    ceiling = ec_ceilings_ms_cm()["sensitive"].value
    found = filled(EPSOM, missing(50.0, PURE, {}), to="sensitive", ec=ceiling, n=50.0)
    assert (found.product_g_l, found.limited_by) == (0.0, "ec_ceiling")


def test_nothing_is_given_where_the_ec_has_no_room() -> None:
    found = filled(EPSOM, missing(50.0, PURE, {}), to="sensitive", ec=0.8, n=50.0)
    assert found.product_g_l == 0
    assert found.limited_by == "ec_ceiling"
    assert found.wanted_g_l > 0
    assert found.total_ec == 0.8


def test_its_nitrogen_counts_against_the_ceiling_of_the_class() -> None:
    found = filled(LIME_SALTPETRE, missing(120.0, PURE, {}), to="moderate", ec=0.3, n=120.0)
    assert found.limited_by == "nitrogen_ceiling"
    assert 120.0 + found.brings_mg_l["N"] == pytest.approx(CEILINGS["moderate"].n_mg_l)


def test_seldom_feeding_lifts_the_nitrogen_ceiling_only() -> None:
    lacking = missing(190.0, PURE, {})
    assert filled(LIME_SALTPETRE, lacking, n=190.0).limited_by == "nitrogen_ceiling"
    assert filled(LIME_SALTPETRE, lacking, n=190.0, regime="monthly").limited_by == ""
    full = filled(LIME_SALTPETRE, lacking, ec=1.5, n=190.0, regime="monthly")
    assert full.limited_by == "ec_ceiling"


def test_nothing_missing_means_no_dose() -> None:
    lacking = missing(50.0, estimate(hardness_mg_l_caco3=250.0), {"Mg": 20.0})
    found = filled(EPSOM, lacking, to="hungry", ec=0.6, n=50.0)
    assert found.product_g_l == 0
    assert found.limited_by == ""


def test_a_surplus_of_one_speaks_against_a_product_with_both() -> None:
    # hard water without magnesium: calcium and magnesium together would add to the surplus
    lacking = missing(100.0, {"ca_mg_l": Range(150.0, 150.0)}, {})
    together = filled(BOTH, lacking, to="hungry", ec=0.7, n=100.0)
    alone = filled(EPSOM, lacking, to="hungry", ec=0.7, n=100.0)
    assert together.product_g_l == 0
    assert alone.left_mg_l["Mg"] == pytest.approx((0, 0), abs=1e-9)


PRODUCTS = {
    "Epsom salt": EPSOM,
    "calcium nitrate": LIME_SALTPETRE,
    "both": BOTH,
    "gypsum": GYPSUM,
}


@settings(max_examples=60, deadline=None)
@given(
    st.sampled_from([*PRODUCTS]),
    st.sampled_from([*CEILINGS]),
    st.floats(5, 250),
    st.floats(0, 400),
    st.floats(0, 1.6),
)
def test_no_ceiling_is_passed_and_mass_is_conserved(
    name: str, feeding_class: str, n: float, hardness: float, present: float
) -> None:
    product = PRODUCTS[name]
    lacking = missing(n, estimate(hardness_mg_l_caco3=hardness), {})
    found = filled(product, lacking, to=feeding_class, ec=present, n=n)
    assert 0 <= found.product_g_l <= found.wanted_g_l
    ceiling = ec_ceilings_ms_cm()[feeding_class].value
    assert found.total_ec <= max(ceiling, present) * 1.0005
    n_after = n + found.brings_mg_l.get("N", 0.0)
    assert n_after <= max(CEILINGS[feeding_class].n_mg_l, n) + 1e-6
    for symbol, gap in lacking.items():
        brought = 10 * found.product_g_l * product.percent.get(symbol, 0.0)
        assert found.left_mg_l[symbol].high == pytest.approx(gap.missing.high - brought)
    # what it adds to pure water is the most it adds to any
    in_hard = mixed_ec_ms_cm(product, found.product_g_l, Water(ca_mg_l=80.0, hco3_mg_l=243.6))
    own = Water(ca_mg_l=80.0, hco3_mg_l=243.6).ec_ms_cm
    assert in_hard.high - own <= found.ec.high + 1e-9


@settings(max_examples=30, deadline=None)
@given(st.floats(10, 200), st.floats(0, 300), st.floats(1, 100))
def test_harder_water_never_takes_more_supplement(n: float, hard: float, more: float) -> None:
    doses = [
        filled(
            BOTH, missing(n, estimate(hardness_mg_l_caco3=h), {}), to="hungry", ec=0.2, n=0.0
        ).product_g_l
        for h in (hard, hard + more)
    ]
    assert doses[1] <= doses[0] + 1e-9


@pytest.mark.parametrize(
    ("product", "present", "told"),
    [
        (Feed({"N": 20.0, "K": 16.6}), 0.1, r"^supplement-neither$"),
        (EPSOM, -0.1, "from 0 upwards"),
        (EPSOM, math.nan, "from 0 upwards"),
        (EPSOM, math.inf, "from 0 upwards"),
    ],
)
def test_a_supplement_that_cannot_be_is_refused(product: Feed, present: float, told: str) -> None:
    with pytest.raises(ValueError, match=told):
        filled(product, missing(50.0, PURE, {}), to="moderate", ec=present, n=0.0)


@pytest.mark.parametrize("feeding_class", [*CEILINGS])
def test_a_ceiling_is_told_with_its_source(feeding_class: str) -> None:
    found, source = ec_ceiling(feeding_class)
    assert found == ec_ceilings_ms_cm()[feeding_class].value
    assert source


def test_the_ec_of_what_is_there_already_may_be_none() -> None:
    found = filled(EPSOM, missing(100.0, PURE, {}), ec=0.0)
    assert found.total_ec == found.ec.high
