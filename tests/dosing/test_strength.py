"""Every rule of the chain and every ceiling.

The factors are the project's rules: common practice, no source (strength.py marks each).
"""

from __future__ import annotations

from math import prod

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.dosing.strength import Step, ceilings, chain, most_sensitive

NOTHING: dict[str, object] = {
    "strength": None,
    "exact": False,
    "target": False,
    "regime": None,
    "season": "summer",
    "medium": None,
    "growth": None,
}


def steps(**said: object) -> list[tuple[str, float]]:
    return [(s.rule, s.factor) for s in chain(**{**NOTHING, **said})]  # type: ignore[arg-type]


def cut(fraction: float, feeding_class: str, **given_: object) -> list[Step]:
    """Cuts of a product that brings 200 mg/L N at its label rate."""
    usual: dict[str, object] = {"label_fraction": 1.0, "n_mg_l_at_full": 200.0, "regime": None}
    return ceilings(fraction, feeding_class=feeding_class, **{**usual, **given_})  # type: ignore[arg-type]


@pytest.mark.parametrize(
    ("regime", "rule", "factor"),
    [
        (None, "strength.default", 1 / 4),
        ("every_watering", "strength.every_watering", 1 / 4),
        ("weekly", "strength.weekly", 1 / 4),
        ("fortnightly", "strength.fortnightly", 1 / 2),
        ("monthly", "strength.monthly", 1 / 2),
    ],
)
def test_the_rhythm_decides_where_no_strength_was_asked(
    regime: str | None, rule: str, factor: float
) -> None:
    assert steps(regime=regime) == [(rule, factor)]


def test_a_strength_asked_goes_before_the_rhythm() -> None:
    assert steps(strength=0.75, regime="monthly") == [("strength.asked", 0.75)]


@pytest.mark.parametrize(
    ("season", "growth", "halved"),
    [
        ("winter", None, True),
        ("winter", "slow", True),
        ("winter", "flowering", True),
        ("winter", "seedling", True),
        ("winter", "growing", False),
        ("winter", "new_roots", False),
        ("winter", "new_leaves", False),
        ("winter", "new_pseudobulbs", False),
        ("spring", None, False),
        ("summer", None, False),
        ("autumn", None, False),
    ],
)
def test_winter_halves_unless_it_grows(season: str, growth: str | None, halved: bool) -> None:
    assert (("season.winter", 0.5) in steps(season=season, growth=growth)) == halved


@pytest.mark.parametrize(
    ("medium", "found"),
    [
        ("sphagnum", [("medium.sphagnum", 0.75)]),
        ("clay_pellets", [("medium.clay_pellets", 0.75)]),
        ("bark", []),
        ("coconut", []),
        ("mounted", []),
        ("perlite", []),
        ("stone", []),
        (None, []),
    ],
)
def test_media_that_hold_salts_get_three_quarters(
    medium: str | None, found: list[tuple[str, float]]
) -> None:
    assert steps(medium=medium)[1:] == found


def test_seedlings_get_half() -> None:
    assert steps(growth="seedling")[1:] == [("seedling", 0.5)]


def test_the_steps_stand_in_their_order() -> None:
    found = steps(strength=0.5, season="winter", medium="sphagnum", growth="seedling")
    assert found == [
        ("strength.asked", 0.5),
        ("season.winter", 0.5),
        ("medium.sphagnum", 0.75),
        ("seedling", 0.5),
    ]


def test_exactly_drops_season_medium_and_seedling() -> None:
    found = steps(strength=0.5, exact=True, season="winter", medium="sphagnum", growth="seedling")
    assert found == [("strength.asked", 0.5)]


def test_a_concentration_asked_for_is_taken_as_it_is() -> None:
    assert steps(target=True, season="winter", medium="sphagnum") == [("strength.target", 1.0)]


def test_part_of_a_concentration_goes_through_the_chain() -> None:
    assert steps(target=True, strength=0.5, season="winter") == [
        ("strength.asked", 0.5),
        ("season.winter", 0.5),
    ]


SELDOM = ("fortnightly", "monthly")
OFTEN = (None, "every_watering", "weekly")


@pytest.mark.parametrize("regime", OFTEN)
@pytest.mark.parametrize(
    ("feeding_class", "most"),
    # of 200 mg/L N: hungry 200, moderate 125, sensitive 50 mg/L N and a quarter of the label
    [("hungry", 1.0), ("moderate", 0.625), ("sensitive", 0.25)],
)
def test_a_class_has_its_ceiling(feeding_class: str, most: float, regime: str | None) -> None:
    found = cut(3.0, feeding_class, regime=regime)
    assert 3.0 * prod(s.factor for s in found) == pytest.approx(most)


@pytest.mark.parametrize("regime", SELDOM)
@pytest.mark.parametrize(
    ("feeding_class", "most"), [("hungry", 1.0), ("moderate", 1.0), ("sensitive", 0.25)]
)
def test_seldom_fed_plants_may_have_the_label_but_sensitive_ones_a_quarter(
    feeding_class: str, most: float, regime: str
) -> None:
    # 400 mg/L N at full strength is over every limit in mg/L
    found = cut(3.0, feeding_class, regime=regime, n_mg_l_at_full=400.0)
    assert 3.0 * prod(s.factor for s in found) == pytest.approx(most)


def test_a_weak_label_is_the_ceiling_for_sensitive_roots() -> None:
    # a quarter of 100 mg/L N is 25 mg/L, below the 50
    found = cut(1.0, "sensitive", n_mg_l_at_full=100.0)
    assert [(s.rule, s.factor) for s in found] == [("ceiling.sensitive", 0.25)]


def test_a_strong_label_is_cut_by_nitrogen() -> None:
    found = cut(0.25, "sensitive", n_mg_l_at_full=400.0)
    assert [(s.rule, s.factor) for s in found] == [("ceiling.sensitive", 0.5)]


def test_a_product_without_nitrogen_has_the_label_as_its_ceiling() -> None:
    found = cut(3.0, "moderate", n_mg_l_at_full=0.0)
    assert [(s.rule, s.factor) for s in found] == [("ceiling.label", pytest.approx(1 / 3))]


@pytest.mark.parametrize(
    ("feeding_class", "at"), [("hungry", 1.0), ("moderate", 0.625), ("sensitive", 0.25)]
)
def test_at_the_ceiling_nothing_is_cut(feeding_class: str, at: float) -> None:
    assert cut(at, feeding_class) == []


@pytest.mark.parametrize(
    ("classes", "decides"),
    [
        ((), "moderate"),
        (("hungry",), "hungry"),
        (("hungry", "moderate"), "moderate"),
        (("moderate", "sensitive", "hungry"), "sensitive"),
        (("sensitive", "hungry"), "sensitive"),
    ],
)
def test_the_most_sensitive_plant_decides(classes: tuple[str, ...], decides: str) -> None:
    assert most_sensitive(classes) == decides


@given(
    fraction=st.floats(1e-3, 100),
    label_fraction=st.floats(1e-3, 10),
    n_mg_l=st.floats(0, 2000),
    feeding_class=st.sampled_from(["hungry", "moderate", "sensitive"]),
    regime=st.sampled_from([*OFTEN, *SELDOM]),
)
def test_no_fraction_is_left_over_a_ceiling(
    fraction: float, label_fraction: float, n_mg_l: float, feeding_class: str, regime: str | None
) -> None:
    found = ceilings(
        fraction,
        label_fraction=label_fraction,
        n_mg_l_at_full=n_mg_l,
        feeding_class=feeding_class,
        regime=regime,
    )
    left = fraction * prod(s.factor for s in found)
    share = {"hungry": 1.0, "moderate": 1.0, "sensitive": 0.25}[feeding_class]
    most_n_mg_l = {"hungry": 200.0, "moderate": 125.0, "sensitive": 50.0}[feeding_class]
    assert left <= label_fraction * share * (1 + 1e-9)
    if regime in OFTEN:
        assert left * n_mg_l <= most_n_mg_l * (1 + 1e-9)
    assert all(0 < s.factor < 1 for s in found)
