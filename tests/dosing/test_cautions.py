"""Which cautions stand before which (common practice where strength.py names no source)."""

from __future__ import annotations

from itertools import product

import pytest

from bot.almanac.reference import caution_severities
from bot.dosing.cautions import Caution, cautions

PLAIN: dict[str, object] = {
    "form": "powder",
    "spoons": False,
    "plant_known": True,
    "feeding_class": "moderate",
    "regime": None,
    "growth": None,
    "types_rest": False,
    "winter_target": False,
    "water_kind": None,
    "hardness_mg_l_caco3": None,
    "called_hard": False,
    "water_ec_ms_cm": None,
    "alkalinity_mg_l_caco3": None,
    "ailing": False,
    "has_calcium": False,
    "has_magnesium": False,
}
ALWAYS = {
    "wet-roots-first",
    "too-much-signs",
    "children-and-pets",
    "never-mix-concentrates",
    "label-first",
    "not-for-food",
    "not-down-the-drain",
    "ask-a-society",
}


def found(**said: object) -> tuple[Caution, ...]:
    return cautions(**{**PLAIN, **said})  # type: ignore[arg-type]


def codes(**said: object) -> list[str]:
    return [caution.code for caution in found(**said)]


@pytest.mark.parametrize(
    ("said", "code"),
    [
        ({"plant_known": False}, "plant-unknown"),
        ({"water_kind": "softened"}, "softened-water"),
        ({"spoons": True}, "spoon-is-rough"),
        ({"types_rest": True}, "types-rest"),
        ({"feeding_class": "sensitive"}, "sensitive-roots"),
        ({"winter_target": True}, "winter-half"),
        ({"growth": "slow"}, "slow-growth"),
        ({"hardness_mg_l_caco3": 300.0}, "hard-water"),
        ({"water_kind": "rain"}, "no-calcium-in-water"),
        ({"water_kind": "reverse_osmosis"}, "no-calcium-in-water"),
        ({"water_kind": "distilled", "has_calcium": True}, "no-calcium-in-water"),
        ({"water_kind": "distilled", "has_magnesium": True}, "no-calcium-in-water"),
        ({"hardness_mg_l_caco3": 250.1}, "hard-water"),
        ({"called_hard": True}, "hard-water"),
        ({"ailing": True}, "ailing"),
        # twice an EC of 0.5 mS/cm, an alkalinity of 100 mg/l: waters.toml, moderate plants
        ({"water_ec_ms_cm": 1.01}, "salty-water"),
        ({"alkalinity_mg_l_caco3": 201.0}, "salty-water"),
        ({"has_calcium": True}, "calcium-apart"),
        ({"form": "liquid"}, "no-splash"),
    ],
)
def test_a_fact_brings_its_caution(said: dict[str, object], code: str) -> None:
    assert code in codes(**said)
    assert code not in codes()


@pytest.mark.parametrize(
    ("said", "code"),
    [
        ({"hardness_mg_l_caco3": 250.0}, "hard-water"),  # the German act's limit itself
        ({"water_ec_ms_cm": 1.0, "alkalinity_mg_l_caco3": 200.0}, "salty-water"),
        ({"water_ec_ms_cm": 1.5, "feeding_class": "hungry"}, "salty-water"),
        ({"water_kind": "tap"}, "no-calcium-in-water"),
        ({"water_kind": "rain", "has_calcium": True, "has_magnesium": True}, "no-calcium-in-water"),
        ({"regime": "fortnightly"}, "clear-water-monthly"),
        ({"regime": "monthly"}, "clear-water-monthly"),
        ({"hardness_mg_l_caco3": 0.0}, "hard-water"),
        ({"growth": "seedling"}, "slow-growth"),
        ({"feeding_class": "hungry"}, "sensitive-roots"),
        ({"form": "liquid"}, "no-dust"),
    ],
)
def test_a_fact_keeps_a_caution_away(said: dict[str, object], code: str) -> None:
    assert code not in codes(**said)


@pytest.mark.parametrize("regime", [None, "every_watering", "weekly"])
def test_those_fed_often_get_clear_water_once_a_month(regime: str | None) -> None:
    assert "clear-water-monthly" in codes(regime=regime)


VARIED = (
    "form", "spoons", "plant_known", "feeding_class", "regime", "growth", "types_rest",
    "winter_target", "water_kind", "hardness_mg_l_caco3", "has_calcium", "ailing",
)  # fmt: skip
CASES = [
    dict(zip(VARIED, values, strict=True))
    for values in product(
        ["powder", "liquid"], [False, True], [False, True], ["moderate", "sensitive"],
        [None, "monthly"], [None, "slow"], [False, True], [False, True], ["softened", "rain"],
        [None, 300.0],
        [False, True], [False, True],
    )
]  # fmt: skip


def test_the_most_severe_come_first_whatever_is_said() -> None:
    for case in CASES:
        severities = [caution.severity for caution in found(**case)]
        assert severities == sorted(severities, reverse=True), case


def test_house_rules_are_always_within_reach_and_none_stands_twice() -> None:
    for case in CASES:
        listed = codes(**case)
        assert set(listed) >= ALWAYS, case
        assert len(listed) == len(set(listed)), case


def test_softened_water_is_the_first_of_all() -> None:
    assert codes(water_kind="softened", plant_known=False, spoons=True)[0] == "softened-water"


def test_a_caution_has_the_severity_of_the_almanac() -> None:
    for case in CASES:
        known = {code: entry.severity for code, entry in caution_severities().items()}
        assert all(caution.severity == known[caution.code] for caution in found(**case)), case


def test_where_nothing_speaks_only_what_holds_for_all_is_told() -> None:
    assert set(codes(regime="monthly")) == ALWAYS | {"no-dust"}
    assert set(codes(regime="monthly", form=None)) == ALWAYS | {"no-splash"}
