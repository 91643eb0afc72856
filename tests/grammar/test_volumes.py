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
    ("litre and a half", 1.5),
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


PARTS: list[tuple[str, float, float | None]] = [
    ("half a 10 litre bucket", 5, None), ("half a 10 l bucket at 1/4", 5, 0.25),
    ("half of my 5 litre can, label 1 g/l", 2.5, None), ("quarter of a 20 litre barrel", 5, None),
    ("fill half my 8 l sprayer", 4, None), ("I use 3/4 of a 2 litre bottle", 1.5, None),
    ("half fill a 10 l can", 5, None), ("half the 2 l bottle", 1, None),
    ("half a 20l bucket label 1g/l", 10, None), ("50 % of a 10 l bucket", 5, None),
    ("half a 5 us gallon bucket, half strength", 9.46352946, 0.5),
    ("half a can of 10 l", 5, None), ("half strength in my 5 l can", 5, 0.5),
    ("half, 5 l can", 5, 0.5), ("half the dose in a 10 l bucket", 10, 0.5),
    ("half of the label in a 5 l can", 5, 0.5), ("fill my 5 l can at half strength", 5, 0.5),
]  # fmt: skip


@pytest.mark.parametrize(("text", "volume_l", "strength"), PARTS)
def test_part_of_a_can_is_a_volume_and_no_strength(
    text: str, volume_l: float, strength: float | None
) -> None:
    reading = read(f"{text}, 20-20-20 powder", "en")
    assert reading.volume_l == pytest.approx(volume_l, rel=1e-6)
    assert reading.strength == strength
    assert not reading.conflicts


SUMS = [
    ("two watering cans of 5 litres each", 10), ("3 x 2L bottles", 6), ("two 5 l cans", 10),
    ("2l 500ml", 2.5), ("1 litre 250 ml", 1.25),
]  # fmt: skip


@pytest.mark.parametrize(("text", "volume_l"), SUMS)
def test_several_cans_are_counted_together(text: str, volume_l: float) -> None:
    reading = read(f"{text}, 20-20-20 powder, half", "en")
    assert reading.volume_l == pytest.approx(volume_l)
    assert reading.strength == 0.5
    assert not reading.conflicts


NOT_FILLED = [
    "got a 5 litre watering can but only filling 2 litres", "my can is 5 litres, making 2 litres",
    "I fill 2 l into my 5 l can", "5 l bucket, fill to 2 l",
]  # fmt: skip


@pytest.mark.parametrize("text", NOT_FILLED)
def test_what_is_filled_counts_and_the_size_is_shown(text: str) -> None:
    reading = read(f"{text}, 20-20-20 powder", "en")
    assert reading.volume_l == 2
    assert any("5" in u.text for u in reading.unknown)
    assert not reading.conflicts


US_PINT, UK_PINT = 0.473176473, 0.56826125
US_GALLON, UK_GALLON = 3.785411784, 4.54609


@pytest.mark.parametrize(
    ("text", "volume_l", "per_litre"),
    [
        ("2 g per litre in a 3 pint jug? (uk pints)", 3 * UK_PINT, 2),
        ("1 gallon, uk gallons not us", UK_GALLON, None),
        ("1 gallon, us gallons not uk", US_GALLON, None),
        ("3 UK pints, label 1 g per gallon", 3 * UK_PINT, 1 / UK_GALLON),
        ("label 1 g per pint (uk pints), 3 pints", 3 * UK_PINT, 1 / UK_PINT),
        ("6 pints of rainwater uk", 6 * UK_PINT, None),
        ("a gallon, im in the uk", UK_GALLON, None),
        ("UK here, 1 gallon", UK_GALLON, None),
        ("i'm in england, 1 gallon", UK_GALLON, None),
        ("1 g per 3 gallons on the tub, making 2 gallons (US both)",
         2 * US_GALLON, 1 / (3 * US_GALLON)),
        ("1 us gallon, label 1 g per uk gallon", US_GALLON, 1 / UK_GALLON),
        ("1 american quart", 2 * US_PINT, None), ("2 pints (british)", 2 * UK_PINT, None),
        ("1 gallon, british measures", UK_GALLON, None),
        ("eine Gallone, ich bin in England", UK_GALLON, None),
        ("un galón, estoy en Inglaterra", UK_GALLON, None),
        ("jeden galon, jestem w Anglii", UK_GALLON, None),
    ],
)  # fmt: skip
@pytest.mark.parametrize("measure", ["us", "imperial"])
def test_a_country_said_once_holds_for_all_measures(
    text: str, volume_l: float, per_litre: float | None, measure: str
) -> None:
    reading = read(f"{text}, 20-20-20", measure=measure)
    assert reading.volume_l == pytest.approx(volume_l, rel=1e-6)
    told = reading.label_rate.per_litre if reading.label_rate else None
    assert told == (pytest.approx(per_litre, rel=1e-6) if per_litre else None)
    assert not reading.unknown
    assert not reading.conflicts


def test_a_country_from_elsewhere_in_the_message_is_shown() -> None:
    assert read("a gallon of 20-20-20, im in the uk").measure_taken == "imperial"
    assert read("3 UK pints, label 1 g per gallon, 20-20-20").measure_taken == "imperial"
    assert read("2 pints (uk) of 20-20-20").measure_taken is None


def test_between_two_countries_a_measure_without_one_is_the_persons() -> None:
    text = "label 1 g per uk gallon, 5 g per us gallon, 1 gallon, 20-20-20"
    reading = read(text, measure="imperial")
    assert reading.volume_l == pytest.approx(UK_GALLON)
    assert reading.measure_taken == "imperial"


@pytest.mark.parametrize(
    "text", ["my american hybrid, 1 gallon", "meine amerikanische Hybride, 1 Gallone"]
)
def test_a_plant_of_a_country_says_nothing_of_measures(text: str) -> None:
    reading = read(f"{text}, 20-20-20", measure="imperial")
    assert reading.volume_l == pytest.approx(UK_GALLON)
    assert reading.unknown[0].text.startswith("ameri")


def test_microsiemens_are_no_country() -> None:
    reading = read("1 gallon, tap EC 400 us, 20-20-20 powder", measure="imperial")
    assert reading.volume_l == pytest.approx(UK_GALLON)
    assert reading.water is not None
    assert reading.water.ec_ms_cm == pytest.approx(0.4)


@pytest.mark.parametrize(
    ("text", "volume_l"),
    [
        ("32 oz spray bottle", 2 * US_PINT), ("32 oz of water", 2 * US_PINT),
        ("2 cups water", US_PINT), ("2 cups", US_PINT), ("a cup of water", US_PINT / 2),
        ("gallon jug of distilled", US_GALLON), ("my gallon jug", US_GALLON),
        ("a gallon jug", US_GALLON), ("litre bottle", 1.0),
    ],
)  # fmt: skip
def test_measures_of_a_kitchen_are_water(text: str, volume_l: float) -> None:
    reading = read(f"{text}, 20-20-20 powder, half strength")
    assert reading.volume_l == pytest.approx(volume_l, rel=1e-6)
    assert reading.measure_taken == (None if volume_l == 1.0 else "us")
    assert not reading.unknown
    assert not reading.conflicts


@pytest.mark.parametrize(
    ("text", "shown"),
    [
        ("32 oz", "32 oz"), ("5 oz of powder", "5 oz"), ("2 oz bottle", "2 oz"),
        ("32 oz bottle of 7-3-6 liquid", "32 oz"), ("1 cup of powder", "1 cup"),
    ],
)  # fmt: skip
def test_what_is_not_water_is_no_volume(text: str, shown: str) -> None:
    reading = read(f"{text}, half strength", "en")
    assert reading.volume_l is None
    assert shown in [u.text for u in reading.unknown]


def test_word_for_filling_at_the_end_leaves_the_size() -> None:
    assert read("20-20-20 powder, my 5 l can, I fill", "en").volume_l == 5


@pytest.mark.parametrize(
    ("language", "text", "volume_l"),
    [
        ("en", "how much 20-20-20 powder per litre at half strength", 1),
        ("en", "how many grams per litre, 20-20-20 powder", 1),
        ("en", "how much 20-20-20 powder per gallon", 3.785411784),
        ("en", "20-20-20 powder half strength per litre", 1),
        ("en", "label 2 g per 5 litres, how much per litre, 20-20-20 powder", 1),
        ("de", "wie viel 20-20-20 Pulver pro Liter", 1),
        ("de", "wie viel Gramm pro Liter, 20-20-20 Pulver", 1),
        ("es", "cuánto 20-20-20 polvo por litro", 1),
        ("es", "cuántos gramos por litro, 20-20-20 polvo", 1),
        ("pl", "ile 20-20-20 proszek na litr", 1),
        ("pl", "ile gramów na litr, 20-20-20 proszek", 1),
    ],
)
def test_how_much_per_litre_asks_for_one(language: str, text: str, volume_l: float) -> None:
    reading = read(text, language)
    assert reading.volume_l == pytest.approx(volume_l)
    assert not reading.unknown


@pytest.mark.parametrize(
    "text", ["how much per litre for 5 l", "how much for 5 l, label 1 g per litre"]
)
def test_how_much_per_litre_beside_a_volume_asks_for_that(text: str) -> None:
    assert read(f"{text}, 20-20-20 powder", "en").volume_l == 5


@pytest.mark.parametrize(
    ("language", "text", "shown", "volume_l"),
    [
        ("en", "2 l of bark, 20-20-20 powder", "2 l of bark", None),
        ("en", "5 l of perlite and 2 l water, 20-20-20 powder", "5 l of perlite", 2),
        ("es", "2 l de corteza, polvo 20-20-20", "2 l de corteza", None),
        ("pl", "2l kory, proszek 20-20-20", "2l kory", None),
        ("pl", "5 l keramzytu i 3 l wody, proszek 20-20-20", "5 l keramzytu", 3),
    ],
)
def test_a_volume_of_a_medium_is_none_of_the_can(
    language: str, text: str, shown: str, volume_l: float | None
) -> None:
    reading = read(text, language)
    assert [u.text for u in reading.unknown] == [shown]
    assert reading.volume_l == volume_l
    assert reading.medium is not None


@pytest.mark.parametrize(
    ("language", "text"),
    [
        ("en", "2 l bark 20-20-20 powder"),
        ("pl", "2 l kora proszek 20-20-20"),
        ("pl", "2 l wody do kory, proszek 20-20-20"),
    ],
)
def test_a_medium_beside_a_volume_takes_nothing_from_it(language: str, text: str) -> None:
    reading = read(text, language)
    assert (reading.volume_l, reading.medium) == (2, "bark")


@pytest.mark.parametrize(
    ("language", "text"),
    [("en", "1 can of 5 litres, 20-20-20 powder"), ("es", "1 garrafa de 5 litros, 20-20-20 polvo"),
     ("de", "1 Kanne mit 5 Litern, 20-20-20 Pulver"),
     ("pl", "1 konewka 5 litrów, 20-20-20 proszek")],
)  # fmt: skip
def test_one_can_is_a_can(language: str, text: str) -> None:
    reading = read(text, language)
    assert (reading.volume_l, reading.unknown, reading.conflicts) == (5, (), ())


@pytest.mark.parametrize(
    ("language", "text"),
    [
        ("en", "each pot takes half a litre and I have 8 pots, 20-20-20 powder"),
        ("en", "every plant gets 100 ml, 20-20-20 powder"),
        ("es", "cada maceta lleva medio litro y tengo 8 macetas, 20-20-20 polvo"),
        ("de", "jeder Topf braucht einen halben Liter, 8 Töpfe, 20-20-20 Pulver"),
        ("pl", "każda doniczka potrzebuje pół litra, 20-20-20 proszek"),
    ],
)
def test_what_each_pot_takes_is_no_volume(language: str, text: str) -> None:
    reading = read(text, language)
    assert reading.volume_l is None
    assert reading.unknown
