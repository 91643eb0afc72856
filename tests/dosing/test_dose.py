"""Doses worked by hand, and the sums that hold for every one of them."""

from __future__ import annotations

from dataclasses import replace
from math import prod

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.almanac.plants import Genus, genera
from bot.dosing.conductivity import NitrogenForms
from bot.dosing.dose import (
    US_TEASPOON_ML,
    Dose,
    DoseRequest,
    Rate,
    pure_water_ec_ms_cm,
    work_out,
)
from bot.dosing.label import elemental_percent
from bot.dosing.measuring import SCALE_STEP_G, SYRINGE_STEP_ML, relative_error, stock_for
from bot.dosing.meter import Feed, mixed_ec_ms_cm
from bot.dosing.water import Water, ec_of_hardness

EVEN = (20.0, 20.0, 20.0)


def dose(volume_l: float, analysis: tuple[float, float, float] = EVEN, **said: object) -> Dose:
    return work_out(DoseRequest(volume_l=volume_l, analysis=analysis, **said))  # type: ignore[arg-type]


def test_the_contract_example_comes_out_as_worked_by_hand() -> None:
    # 200 mg/L N is 1 g/L of 20 % N; x 1/4 asked x 1/2 winter x 3/4 sphagnum = 0.09375 g/L
    result = dose(5.0, form="powder", strength=0.25, season="winter", medium="sphagnum")
    assert result.amount == pytest.approx(0.46875)
    assert result.unit == "g"
    assert result.full_strength_source == "assumed"
    # P = 0.436 x P2O5 and K = 0.830 x K2O: source oxides.toml in fixtures/published
    assert result.elements_mg_l == pytest.approx({"N": 18.75, "P": 8.18, "K": 15.57}, abs=0.01)


@pytest.mark.parametrize(
    ("analysis", "rate", "form", "strength", "volume_l", "amount", "unit", "n_mg_l"),
    [
        # 1 g/L x 1/2 x 3 L; 20 % N of 0.5 g/L
        (EVEN, Rate(1.0, "g"), "powder", 0.5, 3.0, 1.5, "g", 100.0),
        # 0.8 g/L x 1/4 x 10 L; 15 % N of 0.2 g/L
        ((15.0, 5.0, 15.0), Rate(0.8, "g"), "powder", 0.25, 10.0, 2.0, "g", 30.0),
        # 2 ml/L x 1/2 x 2 L; 1 ml/L is 1.2 g/L of 10 % N
        ((10.0, 5.0, 5.0), Rate(2.0, "ml"), "liquid", 0.5, 2.0, 2.0, "ml", 120.0),
        # without nitrogen the label rate alone decides
        ((0.0, 30.0, 20.0), Rate(1.0, "g"), "powder", 0.5, 2.0, 1.0, "g", 0.0),
    ],
)
def test_a_label_rate_is_full_strength(
    analysis: tuple[float, float, float],
    rate: Rate,
    form: str,
    strength: float,
    volume_l: float,
    amount: float,
    unit: str,
    n_mg_l: float,
) -> None:
    result = dose(volume_l, analysis, label_rate=rate, form=form, strength=strength)
    assert result.amount == pytest.approx(amount)
    assert result.unit == unit
    assert result.full_strength_source == "label"
    assert result.elements_mg_l.get("N", 0.0) == pytest.approx(n_mg_l)


def test_a_rate_from_the_shelf_says_so() -> None:
    result = dose(1.0, label_rate=Rate(1.0, "g"), label_from="product")
    assert result.full_strength_source == "product"
    assert result.steps[0].rule == "full.product"


def test_spoons_of_powder_are_counted_and_not_weighed() -> None:
    # 1 tsp in a US gallon of 3.785 L: 0.2642 tsp/L x 1/4 x 4 L
    result = dose(4.0, label_rate=Rate(0.264172, "tsp"), form="powder", strength=0.25)
    assert result.amount == pytest.approx(0.264172)
    assert result.unit == "tsp"
    assert not result.elements_mg_l
    assert (result.ec, result.relative_error, result.stock) == (None, None, None)


def test_spoons_of_a_liquid_are_millilitres() -> None:
    # a US teaspoon is 4.929 ml (NIST Handbook 44, appendix C)
    result = dose(1.0, (4.0, 4.0, 4.0), label_rate=Rate(1.0, "tsp"), form="liquid", strength=0.25)
    assert result.unit == "ml"
    assert result.amount == pytest.approx(4.929 / 4, abs=1e-3)
    assert pytest.approx(4.929, abs=1e-3) == US_TEASPOON_ML


@pytest.mark.parametrize(
    ("density_kg_l", "amount_ml", "said"),
    # 200 mg/L of 10 % N is 2 g/L; x 1/4 x 3 L = 1.5 g, over the density
    [(None, 1.25, True), (1.2, 1.25, False), (1.0, 1.5, False), (1.5, 1.0, False)],
)
def test_a_liquid_in_per_cent_of_mass_is_divided_by_its_density(
    density_kg_l: float | None, amount_ml: float, said: bool
) -> None:
    result = dose(3.0, (10.0, 5.0, 5.0), form="liquid", density_kg_l=density_kg_l)
    assert result.amount == pytest.approx(amount_ml)
    assert ("density.assumed" in [s.rule for s in result.steps]) == said
    assert result.elements_mg_l["N"] == pytest.approx(50.0)


@pytest.mark.parametrize(
    ("target_n_mg_l", "n_percent", "volume_l", "amount_g"),
    # mass_g = mg/L x L / (10 x %): Univ. of Massachusetts Extension, see concentration.toml
    [(100.0, 20.0, 2.0, 1.0), (75.0, 15.0, 4.0, 2.0), (60.0, 13.0, 2.0, 0.923)],
)
def test_a_nitrogen_target_is_met(
    target_n_mg_l: float, n_percent: float, volume_l: float, amount_g: float
) -> None:
    result = dose(volume_l, (n_percent, 5.0, 10.0), form="powder", target_n_mg_l=target_n_mg_l)
    assert result.amount == pytest.approx(amount_g, abs=5e-4)
    assert result.elements_mg_l["N"] == pytest.approx(target_n_mg_l)
    assert result.full_strength_source == "target"
    assert result.strength == 1.0


def test_a_nitrogen_target_is_not_halved_in_winter_but_warned_of() -> None:
    result = dose(1.0, target_n_mg_l=100.0, season="winter", medium="sphagnum")
    assert result.elements_mg_l["N"] == pytest.approx(100.0)
    assert "winter-half" in [c.code for c in result.cautions]


def test_a_nitrogen_target_over_the_ceiling_is_cut() -> None:
    result = dose(1.0, target_n_mg_l=150.0)
    assert result.elements_mg_l["N"] == pytest.approx(125.0)
    assert result.steps[-1].rule == "ceiling.moderate"
    assert result.steps[-1].factor == pytest.approx(125 / 150)


@given(target=st.floats(0.1, 3.0), water=st.floats(0.0, 0.09), n=st.floats(5.0, 25.0))
def test_an_ec_target_is_never_passed_by_the_upper_estimate(
    target: float, water: float, n: float
) -> None:
    result = dose(2.0, (n, 10.0, 15.0), target_ec_ms_cm=target, water_ec_ms_cm=water)
    feed = Feed(elemental_percent(n, 10.0, 15.0, {}))
    assert mixed_ec_ms_cm(feed, result.per_litre, water).high <= target * (1 + 1e-3)


@pytest.mark.parametrize("target", [0.8, 1.2])
def test_in_hard_water_an_ec_target_takes_more_feed_than_subtraction_says(target: float) -> None:
    # Salts slow each other: 8 to 16 % at 0.5 g/L, held against PHREEQC in test_meter.py
    hard = Water(ca_mg_l=80.0, mg_mg_l=12.0, hco3_mg_l=240.0, na_mg_l=20.0, cl_mg_l=35.0)
    forms = NitrogenForms(0.5, 0.5, 0.0)
    grown = tuple(g for g in genera().values() if g.feeding_class == "hungry")[:1]
    said = {"nitrogen": forms, "plants": grown, "label_rate": Rate(5.0, "g"), "strength": None}
    by_ions = dose(1.0, target_ec_ms_cm=target, water=hard, **said)
    subtracted = dose(1.0, target_ec_ms_cm=target - hard.ec_ms_cm, **said)
    assert 1.02 < by_ions.per_litre / subtracted.per_litre < 1.25
    feed = Feed(elemental_percent(*EVEN, {}), forms)
    mixed = mixed_ec_ms_cm(feed, by_ions.per_litre, hard)
    assert mixed.high == pytest.approx(target, rel=1e-4)


def test_an_ec_target_within_the_ceilings_is_met_by_the_upper_end() -> None:
    result = dose(5.0, (15.0, 5.0, 20.0), target_ec_ms_cm=0.4, water_ec_ms_cm=0.02)
    assert result.ec is not None
    assert not [s for s in result.steps if s.rule.startswith("ceiling")]
    # the few salts of the water slow those of the feed by a thousandth
    assert result.ec.high == pytest.approx(0.38, rel=3e-3)
    assert result.ec.low < result.ec.high


@pytest.mark.parametrize("label_g_l", [0.5, 1.0, 5.0, 30.0, 90.0])
def test_an_ec_target_does_not_depend_on_a_strong_label(label_g_l: float) -> None:
    # far over the strength that the EC model holds for, the search must still come down
    result = dose(
        5.0,
        label_rate=Rate(label_g_l, "g"),
        regime="fortnightly",
        target_ec_ms_cm=0.5,
        water_ec_ms_cm=0.02,
    )
    assert result.ec is not None
    assert result.ec.high <= 0.48 * (1 + 1e-3)


def test_an_ec_target_is_what_the_feed_adds_where_the_water_is_unknown() -> None:
    result = dose(5.0, (15.0, 5.0, 20.0), target_ec_ms_cm=0.4)
    assert result.ec is not None
    assert result.ec.high == pytest.approx(0.4, rel=1e-3)
    assert "ec.water_unknown" in [s.rule for s in result.steps]


def test_extras_stand_among_the_elements() -> None:
    # 100 mg/L of 13 % N is 0.769 g/L: 8 % Ca is 61.5 mg/L, 2 % Mg 15.4 mg/L
    result = dose(2.0, (13.0, 3.0, 15.0), extras={"Ca": 8.0, "Mg": 2.0}, target_n_mg_l=100.0)
    assert result.elements_mg_l["Ca"] == pytest.approx(61.54, abs=0.01)
    assert result.elements_mg_l["Mg"] == pytest.approx(15.38, abs=0.01)


@pytest.mark.parametrize(
    "said",
    [
        {"analysis": (0.0, 30.0, 20.0)},
        {"analysis": (0.0, 30.0, 20.0), "label_rate": Rate(1.0, "g"), "target_n_mg_l": 50.0},
        {"analysis": EVEN, "target_ec_ms_cm": 0.8, "water_ec_ms_cm": 0.8},
    ],
)
def test_no_full_strength_is_an_error(said: dict[str, object]) -> None:
    with pytest.raises(ValueError, match=r"nitrogen|EC"):
        work_out(DoseRequest(volume_l=1.0, **said))  # type: ignore[arg-type]


REQUESTS = st.builds(
    DoseRequest,
    volume_l=st.floats(0.01, 10_000),
    analysis=st.tuples(st.floats(0.5, 30), st.floats(0, 30), st.floats(0, 30)),
    form=st.sampled_from([None, "powder", "liquid"]),
    label_rate=st.none()
    | st.builds(Rate, st.floats(0.01, 20), st.sampled_from(["g", "ml", "tsp"])),
    strength=st.none() | st.floats(0.01, 5),
    exact=st.booleans(),
    regime=st.sampled_from([None, "every_watering", "weekly", "fortnightly", "monthly"]),
    season=st.sampled_from(["spring", "summer", "autumn", "winter"]),
    medium=st.sampled_from([None, "bark", "sphagnum", "clay_pellets"]),
    growth=st.sampled_from([None, "growing", "slow", "seedling"]),
    plants=st.lists(
        st.sampled_from(sorted(genera().values(), key=lambda g: g.name)), max_size=3
    ).map(tuple),
    target_n_mg_l=st.none() | st.floats(1, 500),
)


@given(REQUESTS)
def test_the_steps_multiply_to_the_strength(request: DoseRequest) -> None:
    result = work_out(request)
    assert prod(s.factor for s in result.steps) == pytest.approx(result.strength)
    assert all(s.source for s in result.steps)


@given(REQUESTS)
def test_the_amount_is_the_rate_times_the_volume(request: DoseRequest) -> None:
    result = work_out(request)
    assert result.amount == result.per_litre * request.volume_l
    assert result.amount > 0


@given(REQUESTS)
def test_the_label_rate_is_never_passed(request: DoseRequest) -> None:
    result = work_out(request)
    rate = request.label_rate
    if rate is not None:
        spoons_of_liquid = rate.unit == "tsp" and result.unit == "ml"
        most = rate.per_litre * (US_TEASPOON_ML if spoons_of_liquid else 1.0)
        assert result.per_litre <= most * (1 + 1e-9)


# --- an EC target where the hardness of the water alone is known ---------------------------------


def ec_dose(**more: object) -> Dose:
    request = {"volume_l": 5.0, "analysis": (20.0, 20.0, 20.0), "target_ec_ms_cm": 1.0, **more}
    return work_out(DoseRequest(**request))  # type: ignore[arg-type]


def test_an_ec_target_subtracts_what_the_hardness_makes() -> None:
    hard = ec_dose(hardness_mg_l_caco3=140.0)
    # the types of water, held to PHREEQC in test_water; the middle of them is taken
    own = ec_of_hardness(140.0)
    assert 0.2 < own.low < own.high < 0.75
    told = ec_dose(water_ec_ms_cm=own.middle)
    assert hard.amount == pytest.approx(told.amount, rel=1e-6)
    assert hard.amount < ec_dose().amount
    assert "ec.water_hardness" in {s.rule for s in hard.steps}
    assert "ec.water_unknown" not in {s.rule for s in hard.steps}


def test_an_ec_that_was_told_goes_before_the_hardness() -> None:
    both = ec_dose(hardness_mg_l_caco3=140.0, water_ec_ms_cm=0.3)
    assert both.amount == pytest.approx(ec_dose(water_ec_ms_cm=0.3).amount)
    assert not {"ec.water_hardness", "ec.water_unknown"} & {s.rule for s in both.steps}


def test_softened_water_is_taken_at_the_ec_of_a_softened_one() -> None:
    soft = ec_dose(hardness_mg_l_caco3=140.0, water_kind="softened")
    own = ec_of_hardness(140.0, soft=True)
    assert own.middle != pytest.approx(ec_of_hardness(140.0).middle, rel=1e-3)
    assert soft.amount == pytest.approx(ec_dose(water_ec_ms_cm=own.middle).amount, rel=1e-6)


# --- what was said reaches the chain, what was not is told ---------------------------------------


@pytest.mark.parametrize(
    ("said", "rules"),
    [
        ({}, ["full.assumed", "form.weighed", "strength.default"]),
        ({"form": "powder"}, ["full.assumed", "strength.default"]),
        ({"form": "liquid"}, ["full.assumed", "density.assumed", "strength.default"]),
        ({"label_rate": Rate(0.5, "g")}, ["strength.default"]),
        ({"label_rate": Rate(0.1, "tsp")}, ["strength.default"]),
        (
            {"label_rate": Rate(0.5, "g"), "label_from": "product"},
            ["full.product", "strength.default"],
        ),
        ({"form": "powder", "regime": "monthly"}, ["full.assumed", "strength.monthly"]),
        (
            {"form": "powder", "season": "winter"},
            ["full.assumed", "strength.default", "season.winter"],
        ),
        (
            {"form": "powder", "season": "winter", "growth": "new_roots"},
            ["full.assumed", "strength.default"],
        ),
        (
            {"form": "powder", "season": "winter", "medium": "sphagnum", "exact": True},
            ["full.assumed", "strength.default"],
        ),
        (
            {"form": "powder", "growth": "seedling"},
            ["full.assumed", "strength.default", "seedling"],
        ),
        ({"form": "powder", "target_n_mg_l": 50.0}, ["full.target", "strength.target"]),
        (
            {"form": "powder", "target_ec_ms_cm": 0.3},
            ["full.target", "ec.water_unknown", "strength.target"],
        ),
        (
            {"form": "powder", "target_ec_ms_cm": 0.5, "hardness_mg_l_caco3": 100.0},
            ["full.target", "ec.water_hardness", "strength.target"],
        ),
        (
            {"form": "powder", "target_ec_ms_cm": 0.3, "water": Water(ca_mg_l=5.0, cl_mg_l=8.8)},
            ["full.target", "strength.target"],
        ),
    ],
)
def test_the_steps_tell_what_was_said_and_what_was_taken(
    said: dict[str, object], rules: list[str]
) -> None:
    found = dose(1.0, **said).steps
    assert [s.rule for s in found] == rules
    assert all(s.source for s in found)
    # what was taken to be is told, but changes nothing by itself
    assert {s.factor for s in found if s.rule.startswith(("full", "form", "density", "ec"))} <= {1}


def of_class(feeding_class: str) -> tuple[Genus, ...]:
    return tuple(g for g in genera().values() if g.feeding_class == feeding_class)[:1]


@pytest.mark.parametrize(
    ("some_unknown", "n_mg_l", "rule"),
    # hungry plants bear 200 mg/L N, those that are not known count as moderate: 125
    [(False, 200.0, "ceiling.hungry"), (True, 125.0, "ceiling.moderate")],
)
def test_plants_not_known_beside_hungry_ones_count_as_moderate(
    some_unknown: bool, n_mg_l: float, rule: str
) -> None:
    result = dose(
        1.0,
        label_rate=Rate(2.0, "g"),
        plants=of_class("hungry"),
        some_unknown=some_unknown,
        target_n_mg_l=300.0,
    )
    assert result.elements_mg_l["N"] == pytest.approx(n_mg_l)
    assert result.steps[-1].rule == rule


def test_plants_not_known_do_not_loosen_the_ceiling_of_sensitive_ones() -> None:
    result = dose(1.0, plants=of_class("sensitive"), some_unknown=True, target_n_mg_l=300.0)
    assert result.elements_mg_l["N"] == pytest.approx(50.0)
    assert "sensitive-roots" in [c.code for c in result.cautions]


@given(REQUESTS)
def test_the_most_is_what_any_strength_is_cut_to(request: DoseRequest) -> None:
    much = work_out(replace(request, strength=1e4, exact=True))
    assert much.amount == pytest.approx(much.most)
    assert work_out(request).amount <= work_out(request).most * (1 + 1e-9)


def test_a_spoon_of_powder_is_held_to_the_ceiling_as_if_it_were_the_heaviest() -> None:
    # 7 g a spoon (ours, measures.toml) of 20 % N are 1400 mg; sensitive roots bear 50 mg/L
    result = dose(2.0, label_rate=Rate(1.0, "tsp"), form="powder", plants=of_class("sensitive"))
    assert result.unit == "tsp"
    assert result.amount == pytest.approx(2 * 50 / 1400)
    assert result.steps[-1].rule == "ceiling.sensitive"


def test_a_product_with_a_trace_of_nitrogen_can_be_dosed_by_it() -> None:
    # 0.05 % N is 0.5 mg in a gram
    result = dose(1.0, (0.05, 0.0, 0.0), form="powder", target_n_mg_l=2.0, label_rate=Rate(9, "g"))
    assert result.amount == pytest.approx(4.0)


@pytest.mark.parametrize(
    ("rate", "said"),
    [
        (Rate(50.0, "g"), {"form": "powder"}),
        (Rate(50.0, "ml"), {"form": "liquid"}),
        (Rate(10.0, "tsp"), {"form": "powder"}),
    ],
)
def test_forms_of_nitrogen_that_are_told_let_more_be_fed_to_an_ec(
    rate: Rate, said: dict[str, object]
) -> None:
    # urea conducts nothing (conductivity.py), so the upper end of the estimate comes down
    weak = (2.0, 1.0, 1.0)
    open_ = dose(1.0, weak, label_rate=rate, target_ec_ms_cm=0.3, **said)
    told = dose(
        1.0, weak, label_rate=rate, target_ec_ms_cm=0.3, nitrogen=NitrogenForms(0, 0, 1), **said
    )
    assert told.amount > 1.2 * open_.amount


@pytest.mark.parametrize("water", [{}, {"water_ec_ms_cm": 0.3}])
def test_a_liquid_conducts_as_its_weight_does(water: dict[str, object]) -> None:
    said = {"target_ec_ms_cm": 0.7, "regime": "monthly", **water}
    liquid = dose(
        1.0, (5.0, 5.0, 5.0), label_rate=Rate(9.0, "ml"), form="liquid", density_kg_l=1.25, **said
    )
    powder = dose(1.0, (5.0, 5.0, 5.0), label_rate=Rate(9.0, "g"), form="powder", **said)
    assert (liquid.unit, powder.unit) == ("ml", "g")
    assert 1.25 * liquid.amount == pytest.approx(powder.amount, rel=1e-6)
    assert liquid.ec is not None
    assert powder.ec is not None
    assert liquid.ec.high == pytest.approx(powder.ec.high, rel=1e-6)


@pytest.mark.parametrize("water_ec_ms_cm", [None, 0.1])
@pytest.mark.parametrize(
    ("unit", "said", "most"),
    [("g", {}, 20.0), ("ml", {"form": "liquid", "density_kg_l": 1.25}, 16.0)],
)
def test_no_ec_asks_for_more_than_20_g_in_a_litre(
    unit: str, said: dict[str, object], most: float, water_ec_ms_cm: float | None
) -> None:
    # ours: half a per cent of nitrogen never makes 3 mS/cm
    result = dose(
        1.0,
        (0.5, 0.0, 0.0),
        label_rate=Rate(30.0, unit),
        target_ec_ms_cm=3.0,
        water_ec_ms_cm=water_ec_ms_cm,
        **said,
    )
    assert result.per_litre == pytest.approx(most, rel=1e-9)


def test_an_ec_hardly_over_that_of_the_water_takes_hardly_any_feed() -> None:
    result = dose(1.0, target_ec_ms_cm=0.5 + 1e-15, water_ec_ms_cm=0.5)
    assert 0 < result.amount < 1e-6


def test_an_ec_beyond_the_model_is_cut_to_the_ceiling() -> None:
    result = dose(1.0, target_ec_ms_cm=20.0, water_ec_ms_cm=0.5)
    assert result.elements_mg_l["N"] == pytest.approx(125.0)


def test_in_water_that_is_no_fresh_water_an_ec_target_is_reckoned_as_in_pure_water() -> None:
    # 6 mS/cm is beyond the types of water (5 at most), so nothing is known of its ions
    said = {"label_rate": Rate(9.0, "g"), "regime": "monthly"}
    salty = dose(1.0, target_ec_ms_cm=6.5, water_ec_ms_cm=6.0, **said)
    assert salty.amount == pytest.approx(dose(1.0, target_ec_ms_cm=0.5, **said).amount, rel=1e-6)


@pytest.mark.parametrize("target", [0.0, 0.5])
def test_an_ec_the_water_has_already_is_an_error(target: float) -> None:
    with pytest.raises(ValueError, match="EC"):
        dose(1.0, target_ec_ms_cm=target, water_ec_ms_cm=target)


@pytest.mark.parametrize(
    ("kind", "ec_ms_cm"),
    # measures.toml: rain by its upper end
    [
        ("rain", 0.05),
        ("reverse_osmosis", 0.02),
        ("distilled", 0.02),
        ("tap", None),
        ("softened", None),
    ],
)
def test_only_a_water_without_salts_has_an_ec_by_its_kind(
    kind: str, ec_ms_cm: float | None
) -> None:
    assert pure_water_ec_ms_cm(kind) == ec_ms_cm


# --- how it is measured --------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("said", "unit", "step"),
    [
        ({"form": "powder"}, "g", SCALE_STEP_G),
        ({}, "g", SCALE_STEP_G),
        ({"form": "powder", "scale_step_g": 0.01, "syringe_step_ml": 0.2}, "g", 0.01),
        ({"form": "liquid"}, "ml", SYRINGE_STEP_ML),
        ({"form": "liquid", "scale_step_g": 0.01, "syringe_step_ml": 0.2}, "ml", 0.2),
        ({"label_rate": Rate(1.0, "ml"), "syringe_step_ml": 0.05}, "ml", 0.05),
    ],
)
def test_a_dose_is_measured_with_the_tool_of_its_unit(
    said: dict[str, object], unit: str, step: float
) -> None:
    result = dose(1.0, **said)
    assert (result.unit, result.measuring_step) == (unit, step)
    assert result.relative_error == pytest.approx(relative_error(result.amount, step))


@pytest.mark.parametrize("said", [{"form": "powder"}, {"form": "liquid"}])
def test_what_is_too_little_to_measure_gets_a_stock_and_a_larger_batch(
    said: dict[str, object],
) -> None:
    # a tenth of a step off in ten is tolerable (measures.toml)
    little, enough = dose(1.0, **said), dose(20.0, **said)
    assert little.relative_error is not None
    assert little.relative_error > 0.10
    assert little.stock == stock_for(little.amount, little.unit, 0.1)
    assert little.stock is not None
    assert little.batch_l == pytest.approx(1.0 * little.relative_error / 0.10)
    assert enough.relative_error is not None
    assert enough.relative_error < 0.10
    assert (enough.stock, enough.batch_l) == (None, None)


# --- which cautions it brings --------------------------------------------------------------------

CA_MG = {"Ca": 5.0, "Mg": 2.0}


@pytest.mark.parametrize(
    ("said", "code", "there"),
    [
        ({"form": "powder"}, "no-dust", True),
        ({"form": "powder"}, "no-splash", False),
        ({"form": "liquid"}, "no-splash", True),
        ({"form": "liquid"}, "no-dust", False),
        # the label's unit tells where nothing was said; what was said goes before it
        ({"label_rate": Rate(1.0, "ml")}, "no-splash", True),
        ({"label_rate": Rate(1.0, "g")}, "no-dust", True),
        ({"label_rate": Rate(0.1, "tsp")}, "no-dust", True),
        ({"form": "powder", "label_rate": Rate(1.0, "ml")}, "no-dust", True),
        ({"label_rate": Rate(0.1, "tsp")}, "spoon-is-rough", True),
        ({"label_rate": Rate(1.0, "g")}, "spoon-is-rough", False),
        ({}, "plant-unknown", True),
        ({"plants": of_class("moderate")}, "plant-unknown", False),
        ({"plants": of_class("sensitive")}, "sensitive-roots", True),
        ({"plants": of_class("moderate")}, "sensitive-roots", False),
        ({"types_rest": True}, "types-rest", True),
        ({}, "types-rest", False),
        ({"growth": "slow"}, "slow-growth", True),
        ({"growth": "growing"}, "slow-growth", False),
        ({"season": "winter"}, "winter-half", False),
        ({"season": "summer", "target_n_mg_l": 50.0}, "winter-half", False),
        ({"season": "winter", "target_ec_ms_cm": 0.5}, "winter-half", True),
        ({"regime": "weekly"}, "clear-water-monthly", True),
        ({"regime": "monthly"}, "clear-water-monthly", False),
        ({"water_kind": "softened"}, "softened-water", True),
        ({"water_kind": "rain"}, "no-calcium-in-water", True),
        ({"water_kind": "rain", "extras": {"Ca": 5.0}}, "no-calcium-in-water", True),
        ({"water_kind": "rain", "extras": {"Mg": 5.0}}, "no-calcium-in-water", True),
        ({"water_kind": "rain", "extras": CA_MG}, "no-calcium-in-water", False),
        ({"hardness_mg_l_caco3": 300.0}, "hard-water", True),
        ({"hardness_mg_l_caco3": 100.0}, "hard-water", False),
        ({"called_hard": True}, "hard-water", True),
        ({"ailing": True}, "ailing", True),
        ({"water_ec_ms_cm": 1.2}, "salty-water", True),
        ({"water_ec_ms_cm": 0.3}, "salty-water", False),
        ({"alkalinity_mg_l_caco3": 300.0}, "salty-water", True),
        ({"extras": {"Ca": 5.0}}, "calcium-apart", True),
        ({"extras": {"Mg": 5.0}}, "calcium-apart", False),
    ],
)
def test_what_was_said_brings_its_caution(said: dict[str, object], code: str, there: bool) -> None:
    assert (code in [caution.code for caution in dose(1.0, **said).cautions]) is there
