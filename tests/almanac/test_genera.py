"""The almanac's plants: complete, and with a source beside every figure."""

from __future__ import annotations

import pytest

from bot.almanac.plants import Genus, genera
from bot.dosing.strength import CEILINGS

PLANTS = sorted(genera().values(), key=lambda plant: plant.name)


def name(plant: Genus) -> str:
    return plant.name


def test_about_sixty_genera_are_known() -> None:
    assert len({plant.name.split()[0] for plant in PLANTS}) >= 60


@pytest.mark.parametrize("plant", PLANTS, ids=name)
def test_a_plant_has_a_class_with_a_ceiling_and_a_source(plant: Genus) -> None:
    assert plant.feeding_class in CEILINGS
    assert plant.class_source


@pytest.mark.parametrize("plant", PLANTS, ids=name)
def test_a_rest_has_its_months_kind_and_source(plant: Genus) -> None:
    assert bool(plant.rest_months) == bool(plant.rest_source) == bool(plant.rest_kind)
    assert set(plant.rest_months) <= set(range(1, 13))
    assert len(set(plant.rest_months)) == len(plant.rest_months)
    assert plant.rest_kind in ("", "dry", "no_feed")


@pytest.mark.parametrize("plant", [p for p in PLANTS if " " in p.name], ids=name)
def test_a_type_stands_beside_its_genus(plant: Genus) -> None:
    assert plant.name.split()[0] in genera()


@pytest.mark.parametrize(
    ("plant", "feeding_class"),
    # common practice, no source
    [
        ("Cymbidium", "hungry"),
        ("Catasetum", "hungry"),
        ("Phalaenopsis", "hungry"),
        ("Vanda", "hungry"),
        ("Miltoniopsis", "sensitive"),
        ("Masdevallia", "sensitive"),
        ("Dracula", "sensitive"),
        ("Phragmipedium", "sensitive"),
        ("Cattleya", "moderate"),
        ("Paphiopedilum", "moderate"),
    ],
)
def test_well_known_plants_have_their_class(plant: str, feeding_class: str) -> None:
    assert genera()[plant].feeding_class == feeding_class


@pytest.mark.parametrize("plant", ["Dendrobium nobile", "Catasetum", "Cycnoches", "Mormodes"])
def test_those_that_rest_in_winter_rest_at_new_year(plant: str) -> None:
    # common practice; Yen 2008 and Clarke 2012 are named in the almanac
    assert {12, 1} <= set(genera()[plant].rest_months)


@pytest.mark.parametrize("month", range(1, 13))
def test_the_south_is_half_a_year_away(month: int) -> None:
    for plant in PLANTS:
        assert plant.rests_in(month, south=True) == plant.rests_in(
            (month + 5) % 12 + 1, south=False
        )
