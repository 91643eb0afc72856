"""Volumes of water. Gallons and pints: NIST Handbook 44 and the UK regulations of 1995."""

from __future__ import annotations

import pytest

from grammar import read
from tests.grammar.told import same, value

SAID: list[tuple[str, float]] = [
    ("make up to 2 l", 2),
    ("5 l", 5), ("5l", 5), ("5 litres", 5), ("5 liters", 5), ("five litres", 5), ("2.5 l", 2.5),
    ("2,5 l", 2.5), (".5 l", 0.5), ("500 ml", 0.5), ("1500ml", 1.5), ("50 cl", 0.5),
    ("5 dl", 0.5), ("3 dm³", 3), ("half a litre", 0.5), ("a litre and a half", 1.5),
    ("one and a half litres", 1.5), ("2 1/2 l", 2.5), ("2½ l", 2.5), ("1/2 l", 0.5),
    ("a litre", 1), ("two point five litres", 2.5), ("one half litre", 0.5),
    ("twenty five litres", 25), ("1 us gallon", 3.785411784), ("1 imperial gallon", 4.54609),
    ("2 us pints", 0.946352946), ("2 pints (uk)", 1.1365225),
    ("2 imperial pints", 1.1365225), ("12 us fl oz", 0.354882355),
]  # fmt: skip


@pytest.mark.parametrize(("text", "volume_l"), SAID)
def test_volume_is_read_in_litres(text: str, volume_l: float) -> None:
    assert read(f"{text}, 20-20-20 powder", "en").volume_l == pytest.approx(volume_l, rel=1e-6)


@pytest.mark.parametrize(("measure", "volume_l"), [("us", 3.785411784), ("imperial", 4.54609)])
def test_gallon_without_a_country_takes_the_persons(measure: str, volume_l: float) -> None:
    reading = read("a gallon of 20-20-20", "en", measure=measure)
    assert reading.volume_l == pytest.approx(volume_l, rel=1e-9)
    assert reading.measure_taken == measure


NOT_WATER = [
    "cymbidium in a 5 l pot", "5 lb of powder", "20 °C", "phal with 2 leaves", "3000 lx",
    "2 l for each plant", "100 ml per plant", "12 cm pot",
]  # fmt: skip


@pytest.mark.parametrize("text", NOT_WATER)
def test_other_quantity_is_no_volume(text: str) -> None:
    assert value(read(text, "en"), "volume_l") is None


def test_same_volume_said_twice_is_one() -> None:
    assert same(value(read("2 l, that is 2000 ml", "en"), "volume_l"), 2)
