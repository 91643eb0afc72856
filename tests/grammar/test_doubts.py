"""Contradictions, ranges, open bounds, negations: a question, never a choice."""

from __future__ import annotations

from typing import Any

import pytest

from grammar import read
from tests.grammar.told import SLOTS, slots

ASKED = [
    ("2 to 3 litres, 20-20-20", "range", "volume_l"),
    ("between 1 and 2 litres of 20-20-20", "range", "volume_l"),
    ("1/2 - 1 l, 20-20-20", "range", "volume_l"), ("2-3 l, 20-20-20", "range", "volume_l"),
    ("less than 2 l, 20-20-20", "range", "volume_l"),
    ("more than 2 l, 20-20-20", "range", "volume_l"),
    ("less than half strength, 2 l", "range", "strength"),
    ("at most 1/4 strength, 2 l", "range", "strength"),
    ("25-50 % strength, 2 l", "range", "strength"), ("half or a quarter, 2 l", "range", "strength"),
    ("1,500 ml, 20-20-20", "ambiguous_number", "volume_l"),
    ("1.500 l, 20-20-20", "ambiguous_number", "volume_l"),
    ("1 250 ml, 20-20-20", "ambiguous_number", "volume_l"),
    ("o.5 l, 20-20-20", "ambiguous_number", "volume_l"),
    ("5O0 ml, 20-20-20", "ambiguous_number", "volume_l"),
    ("1. 5 l, 20-20-20", "ambiguous_number", "volume_l"),
    ("2..5 l, 20-20-20", "ambiguous_number", "volume_l"),
    ("2² l, 20-20-20", "ambiguous_number", "volume_l"),
    ("2 l and 3 l, 20-20-20", "several", "volume_l"),
    ("20-20-20 or rather 10-10-10, 2 l", "several", "analysis"),
    ("half strength, quarter strength", "several", "strength"),
    ("powder, liquid, 2 l", "several", "form"), ("winter, summer, 2 l", "several", "season"),
    ("3 x 2 l, 20-20-20", "product_of_numbers", "number"),
    ("two half litre bottles, 20-20-20", "product_of_numbers", "number"),
    ("2 l each for 4 phals, 20-20-20", "product_of_numbers", "number"),
    ("2 l or less, 20-20-20", "range", "volume_l"), ("half or less, 2 l", "range", "strength"),
    ("up to half strength, 2 l", "range", "strength"),
    ("1 l + 1 l of 20-20-20", "product_of_numbers", "number"),
    ("10 litre can but only half full", "product_of_numbers", "number"),
    ("10 l can filled to half, 20-20-20", "product_of_numbers", "number"),
    ("my can holds 5 litres, I fill two thirds", "product_of_numbers", "number"),
    ("I only fill my 10 litre can half way", "product_of_numbers", "number"),
    ("fill my 10 l can 80%, 20-20-20", "product_of_numbers", "number"),
    ("20-20-20 powder half my 5 l can", "product_of_numbers", "number"),
    ("half 10 l bucket, 20-20-20", "product_of_numbers", "number"),
    ("one and a half 10 l cans, 20-20-20", "product_of_numbers", "number"),
    ("2 x cans of 5 l, 20-20-20", "product_of_numbers", "number"),
    ("4 phals 2 l each 20-20-20 powder quarter", "product_of_numbers", "number"),
    ("6 vandas half a litre each 20-20-20 powder", "product_of_numbers", "number"),
    ("2 l each quarter strength 20-20-20", "product_of_numbers", "number"),
    ("half strength is too much, 2 l", "range", "strength"),
    ("half strength burned them, 2 l", "range", "strength"),
    ("full strength was too strong, 2 l", "range", "strength"),
    ("weaker than half, 2 l", "range", "strength"),
    ("lower than half strength, 2 l", "range", "strength"),
    ("nothing stronger than quarter, 2 l", "range", "strength"),
    ("1/2 strength minus a bit, 2 l", "range", "strength"),
    ("half strength or weaker, 2 l", "range", "strength"),
    ("25% stronger than label, 2 l", "range", "strength"),
    ("reduce my dose by 75%, 2 l", "range", "strength"),
    ("2 l, 3 l, no wait 4 l, 20-20-20", "several", "volume_l"),
    ("label 5 ml per l, no wait 3 ml per l, 2 l", "several", "label_rate"),
    ("no sphagnum here, 2 l", "negation", "medium"),
    ("not winter yet, 2 l", "negation", "season"),
    ("not half strength, 2 l", "negation", "strength"),
    ("winter, no new roots, 2 l", "negation", "growth"),
]  # fmt: skip


@pytest.mark.parametrize(("text", "code", "slot"), ASKED)
def test_doubt_is_asked_about(text: str, code: str, slot: str) -> None:
    reading = read(text, "en")
    assert (code, slot) in [(c.code, c.slot) for c in reading.conflicts]
    assert slot not in SLOTS or slot not in slots(reading)


TOLD = ["I used 5 l yesterday", "last week I gave 5 l", "5 l last time", "I gave 5 l a month ago"]


@pytest.mark.parametrize("text", TOLD)
def test_what_was_is_not_what_is_wanted(text: str) -> None:
    reading = read(f"{text}, today 2 l, 20-20-20 powder", "en")
    assert reading.volume_l == 2
    assert any("5 l" in u.text for u in reading.unknown)


def test_past_in_one_clause_with_the_present() -> None:
    reading = read("yesterday 5 l today 2 l, 20-20-20 powder", "en")
    assert reading.volume_l == 2
    assert [u.text for u in reading.unknown] == ["5 l"]


def test_gift_is_no_past_dose() -> None:
    reading = read("2 l of 20-20-20 for the phal my aunt gave me", "en")
    assert reading.volume_l == 2
    assert reading.analysis == (20, 20, 20)


@pytest.mark.parametrize("measure", ["half a cup", "a capful", "2 scoops", "half a scoop"])
def test_measure_without_a_size_is_shown_and_no_strength(measure: str) -> None:
    reading = read(f"{measure} of 20-20-20 powder in 2 l", "en")
    assert reading.strength is None
    assert reading.volume_l == 2


def test_product_bought_is_still_the_product() -> None:
    assert read("I bought 20-20-20 powder, 2 l", "en").analysis == (20, 20, 20)


CORRECTED = [
    ("2 L at half, sorry I mean 3 L", "volume_l", 3, ("2 L", "3 L")),
    ("5 litres no wait 4 litres, quarter", "volume_l", 4, ("5 litres", "4 litres")),
    ("1 gallon.. actually make that 2 litres", "volume_l", 2, ("1 gallon", "2 litres")),
    ("2 l, scratch that, 3 l", "volume_l", 3, ("2 l", "3 l")),
    ("1 l, or rather 5 l", "volume_l", 5, ("1 l", "5 l")),
    ("half strength, oops quarter i meant, 3 l", "strength", 0.25, ("half", "quarter")),
    ("2 l half, no wait 25%", "strength", 0.25, ("half", "25%")),
    ("liquid - oops, powder, 2 l", "form", "powder", ("liquid", "powder")),
    ("in bark. scratch that, sphagnum, 2 l", "medium", "sphagnum", ("bark", "sphagnum")),
    ("2 l, winter, no wait, spring", "season", "spring", ("winter", "spring")),
    ("2 l weekly, sorry I mean monthly", "regime", "monthly", ("weekly", "monthly")),
    ("2 l, phal, sorry I mean vanda", "genera", ("Vanda",), ("phal", "vanda")),
    ("2 l, the phals, oops I mean the paphs", "genera", ("Paphiopedilum",), ("phals", "paphs")),
    ("2 l liquid, no hang on, powder", "form", "powder", ("liquid", "powder")),
]  # fmt: skip


@pytest.mark.parametrize(("text", "slot", "value", "shown"), CORRECTED)
def test_corrected_value_stands_and_is_shown(
    text: str, slot: str, value: Any, shown: tuple[str, str]
) -> None:
    reading = read(f"{text}, 20-20-20{'' if slot == 'form' else ' powder'}", "en")
    assert getattr(reading, slot) == value
    assert shown in [(r.text, r.meaning) for r in reading.read_as]
    assert not reading.conflicts


def test_correction_of_a_label_is_not_taken_for_one_of_the_water() -> None:
    reading = read("label 5 ml per 2 l, sorry I mean 3 l, 7-7-7 liquid", "en")
    assert any("sorry" in u.text for u in reading.unknown)


def test_a_further_plant_is_no_correction() -> None:
    reading = read("2 l, phal, sorry, also a vanda, 20-20-20 powder", "en")
    assert reading.genera == ("Phalaenopsis", "Vanda")


def test_a_capful_of_the_feed_is_shown() -> None:
    reading = read("a capful of 20-20-20 powder in 2 l", "en")
    assert [u.text for u in reading.unknown] == ["a capful"]


HEARD = [
    ("en", "my friend gives 5 g per litre and hers grow, I have 2 l and 20-20-20 powder",
     "5 g per litre"),
    ("en", "on youtube they say 5 g per litre, 2 l 20-20-20 powder", "5 g per litre"),
    ("en", "mum recommends 5 g per litre, 2 l 20-20-20 powder", "5 g per litre"),
    ("de", "mein Nachbar gibt 5 g pro Liter, ich habe 2 l, 20-20-20 Pulver", "5 g pro Liter"),
    ("es", "mi amiga usa 5 g por litro, yo tengo 2 l, 20-20-20 polvo", "5 g por litro"),
    ("es", "mi abuela echa 5 g por litro, tengo 2 l, 20-20-20 polvo", "5 g por litro"),
    ("pl", "kolega daje 5 g na litr i mu rosną, ja mam 2 l, 20-20-20 proszek", "5 g na litr"),
    ("pl", "kolezanka mowi ze 5 g na litr, mam 2 l, 20-20-20 proszek", "5 g na litr"),
    ("pl", "w internecie piszą 5 g na litr, mam 2 l 20-20-20 proszek", "5 g na litr"),
    ("pl", "mama daje pełną dawkę, ja mam 2 l 20-20-20 proszek", "pełną dawkę"),
]  # fmt: skip


@pytest.mark.parametrize(("language", "text", "shown"), HEARD)
def test_what_somebody_else_does_is_shown_and_not_taken(
    language: str, text: str, shown: str
) -> None:
    reading = read(text, language)
    assert shown in [u.text for u in reading.unknown]
    assert reading.label_rate is None
    assert reading.strength is None
    assert reading.growth is None
    assert reading.volume_l == 2


@pytest.mark.parametrize(
    ("language", "text"),
    [
        ("en", "my friend and I use 1 g per litre, 2 l 20-20-20 powder"),
        ("en", "my friend says the label has 1 g per litre, 2 l 20-20-20 powder"),
        ("pl", "daje 1 g na litr, 2 l 20-20-20 proszek"),
        ("pl", "kolega i ja dajemy 1 g na litr, 2 l 20-20-20 proszek"),
        ("pl", "dla mamy 1 g na litr, 2 l 20-20-20 proszek"),
    ],
)
def test_one_s_own_rate_is_taken_whoever_is_named(language: str, text: str) -> None:
    rate = read(text, language).label_rate
    assert rate is not None
    assert (rate.per_litre, rate.unit) == (1, "g")


@pytest.mark.parametrize(
    ("language", "text", "shown"),
    [
        ("en", "minimum dose, 3 l 20-20-20 powder", "minimum dose"),
        ("en", "maximum dose 20-20-20 powder 3 l", "maximum dose"),
        ("pl", "minimalna dawka, 3 l, 20-20-20 proszek", "minimalna dawka"),
        ("pl", "max dawka, 3 l, 20-20-20 proszek", "max dawka"),
    ],
)
def test_an_extreme_without_a_figure_is_shown(language: str, text: str, shown: str) -> None:
    reading = read(text, language)
    assert [u.text for u in reading.unknown] == [shown]
    assert (reading.strength, reading.volume_l) == (None, 3)


def test_an_extreme_with_a_rate_is_what_the_label_says() -> None:
    rate = read("max dawka 1 g/l, proszek 20-20-20, 3 l", "pl").label_rate
    assert rate is not None
    assert rate.per_litre == 1
