"""What a reading means, against PHREEQC 3.7.3 and mass balances.

Shown as a table with: pytest -s tests/dosing/test_meter.py
"""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import dataclass
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from molmass import Formula
from phreeqpython import PhreeqPython  # type: ignore[import-untyped]

from bot.dosing.conductivity import EcRange, NitrogenForms, temperature_to_25
from bot.dosing.impossible import Impossible
from bot.dosing.label import elemental_percent
from bot.dosing.meter import (
    Feed,
    ec_at_100_mg_l_n,
    excess,
    meaning,
    mixed_ec_ms_cm,
    product_g_l,
    reading_ms_cm,
    water_to_add_l,
)
from bot.dosing.water import Range, Water, softened, water_of_report

from .test_conductivity_phreeqc import Composition, phreeqc_ec_ms_cm, together

DANISH = water_of_report(
    # weighted mean of Danish tap water, BMJ Open 2015 (PMC4420976), table 1
    {"Ca": 91.2, "Mg": 14.5, "Na": 33.7, "K": 3.6, "HCO3": 287.0, "SO4": 50.7, "Cl": 54.7,
     "NO3": 4.15}
)  # fmt: skip
UTILITY = water_of_report({"Ca": 80.0, "Mg": 12.0, "HCO3": 240.0, "Na": 20.0, "Cl": 35.0})
SOFT = water_of_report({"Ca": 15.0, "Mg": 4.1, "Na": 6.3, "K": 2.3, "HCO3": 58.4, "SO4": 11.2,
                        "Cl": 7.8})  # fmt: skip
WATERS = {"pure": Water(), "soft": SOFT, "utility": UTILITY, "Danish tap": DANISH}

#: Ions and urea that one formula unit of a salt brings.
SALTS = {
    "KNO3": {"K+": 1, "NO3-": 1},
    "KH2PO4": {"K+": 1, "H2PO4-": 1},
    "NH4NO3": {"NH4+": 1, "NO3-": 1},
    "(NH4)2SO4": {"NH4+": 2, "SO4-2": 1},
    "Ca(NO3)2": {"Ca+2": 1, "NO3-": 2},
    "Mg(NO3)2": {"Mg+2": 1, "NO3-": 2},
    "MgSO4": {"Mg+2": 1, "SO4-2": 1},
    "CO(NH2)2": {"urea": 1},
}
#: Feeds by what they are made of, grams in 100 g.
RECIPES = {
    "20-20-20": {"KNO3": 19.0, "KH2PO4": 38.3, "NH4NO3": 10.0, "CO(NH2)2": 30.0},
    "all nitrate and calcium": {"KNO3": 40.0, "Ca(NO3)2": 45.0, "Mg(NO3)2": 15.0},
    "sulphate": {"(NH4)2SO4": 45.0, "KNO3": 35.0, "KH2PO4": 20.0},
}


@dataclass(frozen=True)
class Made:
    """A feed with its label, and the ions a gram of it brings [mmol]."""

    feed: Feed
    unknown: Feed  # the same label without forms of nitrogen
    per_gram: dict[str, float]


def made(recipe: dict[str, float]) -> Made:
    ions: dict[str, float] = {}
    for salt, percent in recipe.items():
        for ion, count in SALTS[salt].items():
            ions[ion] = ions.get(ion, 0.0) + 10 * percent / Formula(salt).mass * count
    nitrate, ammonium = ions.get("NO3-", 0.0), ions.get("NH4+", 0.0)
    urea = 2 * ions.pop("urea", 0.0)
    n = nitrate + ammonium + urea
    of = {"P": "H2PO4-", "K": "K+", "Ca": "Ca+2", "Mg": "Mg+2", "S": "SO4-2"}
    percent = {"N": n * Formula("N").mass / 10}
    percent |= {e: ions[i] * Formula(e).mass / 10 for e, i in of.items() if i in ions}
    forms = NitrogenForms(nitrate / n, ammonium / n, urea / n)
    return Made(Feed(percent, forms), Feed(percent), ions)


FEEDS = {name: made(recipe) for name, recipe in RECIPES.items()}
BALANCED = Feed(elemental_percent(20, 20, 20, {}), NitrogenForms(0.28, 0.195, 0.525))
GRAMS = (0.25, 0.5, 1.0)


@pytest.fixture(scope="module")
def program() -> PhreeqPython:
    return PhreeqPython()


def read_by_phreeqc(program: PhreeqPython, per_gram: dict[str, float], g: float, w: Water) -> float:
    ions = together({i: g * v for i, v in per_gram.items()}, w.ions_mmol_l)
    return phreeqc_ec_ms_cm(program, Composition(ions))


# ------------------------------------------------------------------------------ the reading itself


@pytest.mark.parametrize(
    ("value", "unit", "scale", "expected"),
    [
        (0.9, "mS/cm", None, 0.9),
        (900, "µS/cm", None, 0.9),  # the sign
        (900, "μS/cm", None, 0.9),  # the Greek letter
        (900, "uS/cm", None, 0.9),
        (0.9, "dS/m", None, 0.9),
        (90, "mS/m", None, 0.9),
        (0.09, "S/m", None, 0.9),
        (9, "CF", None, 0.9),
        (450, "ppm", 500, 0.9),
        (630, "ppm", 700, 0.9),
        (576, "ppm", 640, 0.9),
    ],
)
def test_a_reading_in_any_unit_is_one_ec(
    value: float, unit: str, scale: int | None, expected: float
) -> None:
    found = reading_ms_cm(value, unit, scale=scale)
    assert (found.low, found.high) == pytest.approx((expected, expected))


def test_ppm_of_an_unknown_scale_are_a_range() -> None:
    found = reading_ms_cm(700, "ppm")
    assert (found.low, found.high) == pytest.approx((1.0, 1.4))


def test_a_cold_reading_is_corrected_where_the_meter_does_not() -> None:
    # ISO 7888: 1.116 at 20 °C
    plain = reading_ms_cm(1.0, "mS/cm", temp_c=20.0, compensated=False)
    assert (plain.low, plain.high) == pytest.approx((1.116, 1.116))
    assert reading_ms_cm(1.0, "mS/cm", temp_c=20.0, compensated=True) == EcRange(1.0, 1.0)
    unsure = reading_ms_cm(1.0, "mS/cm", temp_c=20.0)
    assert (unsure.low, unsure.high) == pytest.approx((1.0, 1.116))


@given(st.floats(0.01, 5), st.floats(0, 50))
def test_a_meter_without_correction_is_corrected_as_by_the_table(ec: float, temp: float) -> None:
    found = reading_ms_cm(ec, "mS/cm", temp_c=temp, compensated=False)
    assert found.low == found.high == pytest.approx(temperature_to_25(ec, temp))


@pytest.mark.parametrize(
    ("value", "unit", "options", "told"),
    [
        (1.0, "bars", {}, "meter-unit: unit bars"),
        (1.0, "ppm", {"scale": 550}, "scale of 550"),
        (900.0, "mS/cm", {}, "reading-range: ec 900.0, most 60.0"),
        (-1.0, "mS/cm", {}, "reading-negative"),
        (1.0, "mS/cm", {"temp_c": 60.0}, "temperature: temp 60"),
        (1.0, "mS/cm", {"temp_c": 60.0, "compensated": True}, "temperature: temp 60"),
        (1.0, "mS/cm", {"compensated": False}, "meter-temperature"),
    ],
)
def test_a_reading_that_cannot_be_is_refused(
    value: float, unit: str, options: dict[str, float], told: str
) -> None:
    with pytest.raises(ValueError, match=told):
        reading_ms_cm(value, unit, **options)  # type: ignore[arg-type]


# --------------------------------------------------------------------- strength, against PHREEQC


@pytest.mark.parametrize("feed", FEEDS)
@pytest.mark.parametrize("water", WATERS)
def test_the_strength_really_mixed_lies_in_the_range(
    feed: str, water: str, program: PhreeqPython
) -> None:
    one, own = FEEDS[feed], WATERS[water]
    for grams in GRAMS:
        ec = read_by_phreeqc(program, one.per_gram, grams, own)
        reading = EcRange(ec, ec)
        exact = meaning(reading, one.feed, own, meant_g_l=grams).strength
        wide = meaning(reading, one.unknown, own, meant_g_l=grams).strength
        by_ec = meaning(reading, one.feed, own.ec_ms_cm, meant_g_l=grams).strength
        assert exact
        assert wide
        assert by_ec
        print(
            f"{feed:24} {water:11} {grams:5} g/L  read {ec:5.2f}  forms {exact.low:5.2f} to "
            f"{exact.high:4.2f}  label alone {wide.low:5.2f} to {wide.high:4.2f}  "
            f"water by its EC {by_ec.low:5.2f} to {by_ec.high:4.2f}"
        )
        # the composition of the water known: to 2 % beside the range
        assert exact.low - 0.02 <= 1 <= exact.high + 0.02
        assert wide.low <= 1 <= wide.high
        assert by_ec.low - 0.02 <= 1 <= by_ec.high + 0.02
        assert exact.high / exact.low < 1.25


@pytest.mark.parametrize("feed", FEEDS)
def test_the_difference_formula_is_low_in_hard_water(feed: str, program: PhreeqPython) -> None:
    # what the head of the module says, by PHREEQC alone
    one = FEEDS[feed]
    pure = read_by_phreeqc(program, one.per_gram, 0.5, Water())
    added = read_by_phreeqc(program, one.per_gram, 0.5, DANISH)
    added -= read_by_phreeqc(program, {}, 0.5, DANISH)
    print(f"{feed:24} adds {added / pure:.3f} of what it adds to pure water")
    assert 0.78 < added / pure < 0.93


def test_softened_water_takes_less_off_than_hard_water() -> None:
    hard, soft = (mixed_ec_ms_cm(BALANCED, 0.5, w) for w in (DANISH, softened(DANISH)))
    assert soft.high - softened(DANISH).ec_ms_cm > hard.high - DANISH.ec_ms_cm


# ---------------------------------------------------------------------------------- strength, laws


@settings(max_examples=40, deadline=None)
@given(st.floats(0.05, 2.0), st.sampled_from([*WATERS]), st.sampled_from([*FEEDS]))
def test_mixing_and_reading_goes_there_and_back(grams: float, water: str, feed: str) -> None:
    one, own = FEEDS[feed].feed, WATERS[water]
    ec = mixed_ec_ms_cm(one, grams, own)
    found = product_g_l(one, ec, own)
    assert found.low == pytest.approx(grams, rel=0.12)  # the far end of the error of the EC
    assert found.low <= grams * 1.001
    assert found.high >= grams * 0.999
    assert product_g_l(one, EcRange(ec.high, ec.high), own).low == pytest.approx(grams, rel=1e-3)


@settings(max_examples=25, deadline=None)
@given(st.floats(0.75, 2.5), st.floats(1.01, 2), st.sampled_from([*FEEDS]))
def test_a_higher_reading_means_more_feed(ec: float, times: float, feed: str) -> None:
    less, more = (
        meaning(EcRange(e, e), FEEDS[feed].feed, DANISH).product_g_l for e in (ec, ec * times)
    )
    assert more.low > less.low
    assert more.high > less.high


def test_the_meaning_of_a_reading_tells_elements_and_strength() -> None:
    # 0.41 and 0.46 mS/cm at 100 mg/L N of 20-20-20, Univ. of Delaware 2008: 0.5 g/L
    for ec in (0.41, 0.46):
        found = meaning(EcRange(ec, ec), BALANCED, meant_g_l=1.0)
        assert found.elements_mg_l["N"].low - 5 <= 100 <= found.elements_mg_l["N"].high + 5
        assert found.strength == pytest.approx(tuple(g / 1.0 for g in found.product_g_l))
        assert found.elements_mg_l["N"] == pytest.approx([200 * g for g in found.product_g_l])


@pytest.mark.parametrize("feed", FEEDS)
def test_less_known_of_the_feed_or_the_water_never_narrows_the_answer(feed: str) -> None:
    reading, one = EcRange(1.2, 1.2), FEEDS[feed]
    exact = meaning(reading, one.feed, DANISH).product_g_l
    for label, water in ((one.unknown, DANISH), (one.feed, DANISH.ec_ms_cm)):
        wider = meaning(reading, label, water).product_g_l
        assert wider.low <= exact.low * 1.01
        assert wider.high >= exact.high * 0.99


def test_a_feed_that_may_read_as_its_water_may_be_none() -> None:
    found = meaning(EcRange(0.25, 0.4), BALANCED, 0.3)
    assert found.product_g_l.low == 0
    assert found.product_g_l.high > 0


@pytest.mark.parametrize(
    ("feed", "ec", "water", "told"),
    [
        (BALANCED, 0.2, 0.3, "feed-under-water"),
        (Feed({"N": 46.0}, NitrogenForms(0, 0, 1)), 0.5, 0.1, "hardly-conducts"),
        (BALANCED, 1.0, 50.0, "feed-under-water"),
        (BALANCED, 9.0, 6.0, "water-ec-range"),
        (BALANCED, 1.0, -0.1, "water-ec-range"),
    ],
)
def test_a_meaning_that_cannot_be_is_refused(
    feed: Feed, ec: float, water: float, told: str
) -> None:
    with pytest.raises(ValueError, match=told):
        meaning(EcRange(ec, ec), feed, water)


def test_an_amount_that_cannot_have_been_meant_is_refused() -> None:
    with pytest.raises(ValueError, match="cannot have been meant"):
        meaning(EcRange(1, 1), BALANCED, meant_g_l=0.0)


# ---------------------------------------------------------------------- difference, limit, thinning


def test_ec_at_100_holds_the_published_readings() -> None:
    # Univ. of Delaware 2008, citing Univ. of Massachusetts: two makers of 20-20-20
    found = ec_at_100_mg_l_n(Feed(BALANCED.percent))
    assert found.low < 0.41 < 0.46 < found.high
    with pytest.raises(ValueError, match="without nitrogen"):
        ec_at_100_mg_l_n(Feed({"P": 20.0}))


@pytest.mark.parametrize(
    ("low", "high", "verdict"),
    [(130, 160, "over"), (90, 125, "under"), (120, 130, "unsure"), (0, 0, "under")],
)
def test_too_strong_is_said_only_where_it_is_sure(low: float, high: float, verdict: str) -> None:
    found = excess(Range(low, high), 125.0)
    assert found.verdict == verdict
    assert found.factor == (low / 125, high / 125)


@pytest.mark.parametrize("limit", [0.0, -1.0, math.inf, math.nan])
def test_a_limit_must_be_one(limit: float) -> None:
    with pytest.raises(ValueError, match="cannot be held to"):
        excess(Range(1, 2), limit)


@given(st.floats(0.1, 50), st.floats(0.5, 4), st.floats(0.05, 0.95), st.floats(0, 0.9))
def test_thinning_conserves_salt(volume: float, reading: float, way: float, pure: float) -> None:
    water = pure * reading * 0.9
    wanted = water + way * (reading - water)
    added = water_to_add_l(volume, reading, wanted, water)
    mixed = (volume * reading + added * water) / (volume + added)
    assert mixed == pytest.approx(wanted)
    assert added > 0


def test_thinned_feed_reads_a_little_more_than_wanted() -> None:
    # the linear rule against the ions: 1 g/L to half its EC with pure water
    reading = mixed_ec_ms_cm(BALANCED, 1.0).high
    added = water_to_add_l(2.0, reading, reading / 2, 0.0)
    assert added == pytest.approx(2.0)
    thinned = mixed_ec_ms_cm(BALANCED, 1.0 * 2.0 / (2.0 + added)).high
    assert 1.0 < thinned / (reading / 2) < 1.04


def test_a_feed_that_is_thin_enough_needs_no_water() -> None:
    assert water_to_add_l(5.0, 0.8, 0.9, 0.3) == 0


@pytest.mark.parametrize(
    ("figures", "told"),
    [
        ((5.0, 1.0, 0.3, 0.3), "thinning-water"),
        ((5.0, 1.0, 0.2, 0.3), "thinning-water"),
        ((-5.0, 1.0, 0.5, 0.3), "from 0 upwards"),
        ((5.0, math.inf, 0.5, 0.3), "from 0 upwards"),
    ],
)
def test_thinning_that_cannot_be_is_refused(
    figures: tuple[float, float, float, float], told: str
) -> None:
    with pytest.raises(ValueError, match=told):
        water_to_add_l(*figures)


# ---------------------------------------------------------------------- what a refusal tells, ends


@pytest.mark.parametrize(
    ("call", "code", "values"),
    [
        (lambda: reading_ms_cm(-0.5, "mS/cm"), "reading-negative", {"value": -0.5}),
        (lambda: reading_ms_cm(1.0, "bars"), "meter-unit", {"unit": "bars"}),
        (lambda: reading_ms_cm(61.0, "mS/cm"), "reading-range", {"ec": 61.0, "most": 60.0}),
        (lambda: reading_ms_cm(1.0, "mS/cm", compensated=False), "meter-temperature", {}),
        (lambda: reading_ms_cm(1.0, "mS/cm", temp_c=-1.0), "temperature", {"temp": -1.0}),
        (
            lambda: meaning(EcRange(0.1, 0.2), BALANCED, 0.3),
            "feed-under-water",
            {"reading": 0.2, "water": 0.3},
        ),
        (
            lambda: water_to_add_l(5.0, 1.0, 0.3, 0.4),
            "thinning-water",
            {"water": 0.4, "wanted": 0.3},
        ),
        (
            lambda: meaning(EcRange(0.5, 0.5), Feed({"N": 46.0}, NitrogenForms(0, 0, 1))),
            "hardly-conducts",
            {},
        ),
    ],
)
def test_a_refusal_tells_the_figures_for_its_sentence(
    call: Callable[[], Any], code: str, values: dict[str, float | str]
) -> None:
    with pytest.raises(Impossible) as caught:
        call()
    assert (caught.value.code, dict(caught.value.values)) == (code, values)


@pytest.mark.parametrize("water", [0.3, DANISH])
def test_a_reading_of_the_water_itself_is_no_feed(water: Water | float) -> None:
    own = water.ec_ms_cm if isinstance(water, Water) else water
    found = meaning(EcRange(own, own), BALANCED, water)
    assert found.product_g_l == (0.0, 0.0)
    assert found.elements_mg_l["N"] == (0.0, 0.0)
    assert found.added == EcRange(0.0, 0.0)


def test_a_meaning_repeats_what_was_read_of_feed_and_water() -> None:
    found = meaning(EcRange(1.0, 1.2), BALANCED, 0.3)
    assert (found.reading, found.water) == (EcRange(1.0, 1.2), EcRange(0.3, 0.3))
    assert (found.added.low, found.added.high) == pytest.approx((0.7, 0.9))
    assert found.strength is None


def test_endless_amounts_are_refused() -> None:
    with pytest.raises(ValueError, match="cannot have been meant"):
        meaning(EcRange(1, 1), BALANCED, meant_g_l=math.inf)


def test_the_ec_at_100_mg_l_is_that_of_the_weight_that_holds_it() -> None:
    # half a gram of 20 % N in a litre
    assert ec_at_100_mg_l_n(BALANCED) == mixed_ec_ms_cm(BALANCED, 0.5)


def test_a_limit_may_be_below_one() -> None:
    assert excess(Range(0.4, 0.4), 0.8) == excess(Range(0.5, 0.5), 1.0)


def test_a_reading_of_nothing_is_nothing() -> None:
    assert reading_ms_cm(0.0, "ppm") == EcRange(0.0, 0.0)


def test_little_nitrogen_has_an_ec_at_100_mg_l_too() -> None:
    # half as much nitrogen beside the same potassium: twice the product for 100 mg/L
    weak = ec_at_100_mg_l_n(Feed({"N": 0.5, "K": 5.0}, NitrogenForms(1, 0, 0)))
    more = ec_at_100_mg_l_n(Feed({"N": 1.0, "K": 5.0}, NitrogenForms(1, 0, 0)))
    assert 1.5 < weak.high / more.high < 2.0


def test_a_feed_at_its_limit_is_not_over_it() -> None:
    assert excess(Range(125.0, 125.0), 125.0).verdict == "under"
    assert excess(Range(125.0, 126.0), 125.0).verdict == "unsure"


def test_a_feed_at_the_wanted_ec_needs_no_water() -> None:
    assert water_to_add_l(5.0, 0.8, 0.8, 0.8) == 0.0


@pytest.mark.parametrize("water", [0.0, 0.5, DANISH])
@pytest.mark.parametrize("grams", [40.0, 1500.0])
def test_beyond_the_model_a_feed_reads_in_proportion(grams: float, water: Water | float) -> None:
    # 40 g/L is over 0.1 mol/L, 1500 over what a litre holds: far too strong, and said to be
    own = water.ec_ms_cm if isinstance(water, Water) else water
    once, twice = (mixed_ec_ms_cm(BALANCED, g, water) for g in (grams, 2 * grams))
    for low, high in ((once.low, twice.low), (once.high, twice.high)):
        assert (high - own) / (low - own) == pytest.approx(2.0, rel=1e-3)
    # not far from what it adds where the model holds
    thin = mixed_ec_ms_cm(BALANCED, 5.0, water)
    assert (once.high - own) / grams == pytest.approx((thin.high - own) / 5.0, rel=0.05)


def test_what_no_thinning_brings_into_the_model_is_refused() -> None:
    with pytest.raises(Impossible, match="solution-strong"):
        mixed_ec_ms_cm(BALANCED, 1e5)
