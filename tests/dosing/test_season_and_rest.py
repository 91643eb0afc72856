"""Which season a month lies in, and who rests in it."""

from __future__ import annotations

import pytest

from bot.almanac.plants import genera
from bot.dosing.plants import known_names, named, of_name, rest_span, resting, types_of
from bot.dosing.season import season_of

#: Meteorological seasons of the northern hemisphere: WMO convention, from memory.
NORTH = {
    "winter": (12, 1, 2),
    "spring": (3, 4, 5),
    "summer": (6, 7, 8),
    "autumn": (9, 10, 11),
}
OPPOSITE = {"winter": "summer", "summer": "winter", "spring": "autumn", "autumn": "spring"}
MONTHS = [(month, season) for season, months in NORTH.items() for month in months]
RESTERS = sorted(name for name, plant in genera().items() if plant.rest_months)
OTHERS = sorted(name for name, plant in genera().items() if not plant.rest_months)


@pytest.mark.parametrize(("month", "season"), MONTHS)
def test_a_month_has_its_season(month: int, season: str) -> None:
    assert season_of(month, south=False) == season
    assert season_of(month, south=True) == OPPOSITE[season]


def asleep(name: str, month: int, *, south: bool = False, season: str | None = None) -> bool:
    meant = season or season_of(month, south=south)
    return bool(resting(named([name]), month=month, season=meant, south=south))


@pytest.mark.parametrize("name", RESTERS)
def test_a_plant_rests_in_the_months_of_the_almanac(name: str) -> None:
    months = {month for month in range(1, 13) if asleep(name, month)}
    assert months == set(genera()[name].rest_months)


@pytest.mark.parametrize("name", RESTERS)
def test_in_the_south_it_rests_half_a_year_later(name: str) -> None:
    months = {month for month in range(1, 13) if asleep(name, month, south=True)}
    assert months == {(m + 5) % 12 + 1 for m in genera()[name].rest_months}


@pytest.mark.parametrize("name", OTHERS)
def test_the_others_never_rest(name: str) -> None:
    assert not [month for month in range(1, 13) if asleep(name, month)]


@pytest.mark.parametrize(
    ("name", "season", "rests"),
    [
        ("Dendrobium nobile", "winter", True),
        ("Catasetum", "winter", True),
        ("Dendrobium nobile", "summer", False),
        ("Dendrobium nobile", "autumn", True),  # October and November
        ("Catasetum", "autumn", False),  # November alone
        ("Phalaenopsis", "winter", False),
    ],
)
@pytest.mark.parametrize("south", [False, True])
def test_a_season_said_against_the_month_needs_two_months_of_rest(
    name: str, season: str, rests: bool, south: bool
) -> None:
    elsewhere = next(m for m in range(1, 13) if season_of(m, south=south) != season)
    assert asleep(name, elsewhere, season=season, south=south) == rests


def test_only_those_that_rest_are_returned() -> None:
    plants = named(["Phalaenopsis", "Catasetum", "Cattleya"])
    found = resting(plants, month=1, season="winter", south=False)
    assert [plant.name for plant in found] == ["Catasetum"]


def test_a_name_outside_the_almanac_is_an_error() -> None:
    with pytest.raises(KeyError):
        named(["Rosa"])


@pytest.mark.parametrize(
    ("genus", "types"),
    [("Dendrobium", True), ("Dendrobium nobile", False), ("Phalaenopsis", False)],
)
def test_only_a_plain_genus_stands_for_its_types(genus: str, types: bool) -> None:
    assert bool(types_of(named([genus]))) is types


def test_the_types_of_a_genus_begin_with_its_name() -> None:
    found = {plant.name for plant in types_of(named(["Dendrobium"]))}
    assert found == {name for name in genera() if name.startswith("Dendrobium ")}
    assert found
    assert types_of([]) == ()


def test_a_name_is_looked_up_or_not_known() -> None:
    assert of_name("Phalaenopsis") == genera()["Phalaenopsis"]
    assert [of_name(name) for name in ("Rosa", "", None)] == [None, None, None]
    assert known_names() == tuple(genera())


def test_more_than_one_month_but_two_of_a_season_must_be_of_rest() -> None:
    # by the almanac's months, for every plant and season said against the month
    for name, plant in genera().items():
        for season, months in NORTH.items():
            elsewhere = NORTH[OPPOSITE[season]][0]
            resting_months = sum(month in plant.rest_months for month in months)
            assert asleep(name, elsewhere, season=season) == (resting_months >= 2), (name, season)


def test_the_months_of_a_rest_are_told_on_both_hemispheres() -> None:
    # the almanac's months, November to April, turned by half a year in the south
    (catasetum,) = named(("Catasetum",))
    assert rest_span((catasetum,), month=1, south=False) == (11, 4)
    assert rest_span((catasetum,), month=12, south=False) == (11, 4)
    assert rest_span((catasetum,), month=7, south=True) == (5, 10)
    assert rest_span((catasetum,), month=7, south=False) is None


def test_rests_that_differ_have_no_months_in_common() -> None:
    both = named(("Catasetum", "Dendrobium nobile"))
    assert rest_span(both, month=1, south=False) is None
