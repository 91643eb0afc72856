"""Strengths: fractions, percentages and multiples of full strength."""

from __future__ import annotations

from typing import Any

import pytest

from grammar import read
from tests.grammar.told import same, value

SAID: list[tuple[str, float]] = [
    ("half strength", 0.5), ("½ strength", 0.5), ("half", 0.5), ("quarter strength", 0.25),
    ("1/4 strength", 0.25), ("a third of the label", 1 / 3), ("25 %", 0.25), ("25 percent", 0.25),
    ("75% strength", 0.75), ("full strength", 1), ("full", 1), ("double strength", 2),
    ("0.25 strength", 0.25), ("point two five strength", 0.25),
    ("strength .5", 0.5), ("0.5x", 0.5), ("an eighth", 0.125),
    ("one half strength", 0.5), ("1/16 strength", 0.0625),
    ("full weekly", 1), ("full in winter", 1),
    ("full winter", 1), ("double sphagnum", 2),
    ("half of half strength", 0.25), ("half of quarter strength", 0.125),
    ("75% less than the label", 0.25), ("80 % weaker than label", 0.2),
    ("three quarters less than label strength", 0.25), ("a third less than label", 2 / 3),
    ("reduce by 75%", 0.25), ("label 1 g/l, reduce the dose by three quarters", 0.25),
    ("reduce to 25%", 0.25), ("cut in half", 0.5),
]  # fmt: skip


@pytest.mark.parametrize(("text", "strength"), SAID)
def test_strength_is_a_fraction_of_full(text: str, strength: float) -> None:
    assert same(value(read(f"2 l, 20-20-20 powder, {text}", "en"), "strength"), strength)


NONE = [
    "half the can", "twice weekly",
    "the can is full", "tank full", "half of them", "double the water",
    "half of a cup", "half the bag is gone",

    "full sun", "full of roots", "half shade", "half of my phals look sad", "15 % off",
    "humidity 60 %", "under 50 % shade cloth", "lights on 24/7", "my eyes are 20/20",
    "1/32 strength", "3/2 strength", "every quarter", "half past ten", "double spike",
    "triple 20", "last time I gave half", "I gave a double dose last week", "my weak little phal",
    "half left in the bottle", "half dead phal", "third week", "half my phals look sad",
    "half the phals burned", "half a 10 l can", "half a bucket", "a full 10 l can",
]  # fmt: skip


@pytest.mark.parametrize("text", NONE)
def test_fraction_of_something_else_is_no_strength(text: str) -> None:
    assert value(read(f"2 l, 20-20-20 powder, {text}", "en"), "strength") is None


def test_vague_word_is_shown() -> None:
    reading = read("2 l, 20-20-20 powder, weakly", "en")
    assert same(reading.strength, 0.25)
    assert reading.read_as


EXACT = [("exactly half strength", True), ("exactly what I need", False), ("exactly right", False),
         ("exactly how much", False), ("not exactly", False)]  # fmt: skip


@pytest.mark.parametrize(("text", "exact"), EXACT)
def test_exactly_asks_for_no_reductions(text: str, exact: Any) -> None:
    assert read(f"2 l, 20-20-20, {text}", "en").exact is exact


@pytest.mark.parametrize(
    "text", ["1/8th strength", "1/8th", "1/8 th strength", "1/8tel Dosis Pulver"]
)
def test_the_ending_of_a_number_belongs_to_it(text: str) -> None:
    reading = read(f"{text}, 2 l 20-20-20")
    assert reading.strength == 0.125
    assert bool(reading.unknown) == ("8 th" in text)


@pytest.mark.parametrize(
    ("language", "text", "strength"),
    [
        ("en", "a tenth of full", 0.1), ("en", "half of full", 0.5), ("en", "25% of full", 0.25),
        ("de", "ein Viertel von voll", 0.25),
        ("en", "one and a half strength", 1.5), ("en", "1 1/2 strength", 1.5),
        ("en", "one and a half times strength", 1.5), ("en", "1, 1/2 strength", 0.5),
    ],
)  # fmt: skip
def test_a_part_of_full_and_one_and_a_half(language: str, text: str, strength: float) -> None:
    powder = {"en": "powder", "de": "Pulver"}[language]
    assert read(f"2 l 20-20-20 {powder}, {text}", language).strength == strength


@pytest.mark.parametrize("text", ["half of a full can", "half of full bucket"])
def test_a_part_of_what_is_full_is_none_of_the_dose(text: str) -> None:
    reading = read(f"2 l 20-20-20 powder, {text}", "en")
    assert reading.strength is None
    assert [u.text for u in reading.unknown] == [text]


@pytest.mark.parametrize(
    "text",
    ["third feed of the year", "its the fourth of July", "fifth of may", "my third vanda",
     "third watering since may", "the sixth year"],
)  # fmt: skip
def test_one_of_a_row_is_no_fraction(text: str) -> None:
    assert read(f"{text}, 2 l 20-20-20 powder", "en").strength is None


@pytest.mark.parametrize("text", ["third strength", "a third", "one fourth", "a third for phals"])
def test_the_same_words_are_fractions_of_a_dose(text: str) -> None:
    assert read(f"2 l 20-20-20 powder {text}", "en").strength in (1 / 3, 0.25)


def test_a_dose_before_a_clause_with_an_article_is_no_part_of_it() -> None:
    assert read("1 l 20-20-20 Pulver halb, der Winter ist vorbei", "de").strength == 0.5


@pytest.mark.parametrize(
    ("language", "text", "exact"),
    [
        ("en", "exactly the half, 2 l 20-20-20 powder", True),
        ("es", "exactamente la mitad, 2 l, 20-20-20 polvo", True),
        ("es", "exactamente la phal que tengo, 2 l 20-20-20 polvo, la mitad", False),
        ("de", "genau die Hälfte, 2 l 20-20-20 Pulver", True),
        ("de", "genau die halbe Dosis, 2 l 20-20-20 Pulver", True),
        ("de", "genau die Vanda, 2 l 20-20-20 Pulver, halbe Dosis", False),
        ("pl", "dokładnie połowa, 2 l 20-20-20 proszek", True),
    ],
)
def test_exactly_is_said_of_a_strength(language: str, text: str, exact: bool) -> None:
    reading = read(text, language)
    assert (reading.strength, reading.exact) == (0.5, exact)


@pytest.mark.parametrize(
    ("language", "text", "shown"),
    [
        ("en", "4x diluted", "4x diluted"), ("en", "diluted 4x", "diluted 4x"),
        ("en", "4 fold dilution", "4 fold dilution"), ("en", "double diluted", "double diluted"),
        ("en", "ten times less than label", "ten times less than"),
        ("de", "4-fach verdünnt", "4-fach verdünnt"),
        ("de", "doppelt verdünnt", "doppelt verdünnt"),
        ("pl", "10x mniej niż na etykiecie", "10x mniej niż"),
    ],
)  # fmt: skip
def test_so_many_times_weaker_is_no_multiple(language: str, text: str, shown: str) -> None:
    """Read as a multiple it would be sixteen times what is meant."""
    powder = {"en": "powder", "de": "Pulver", "pl": "proszek"}[language]
    reading = read(f"20-20-20 {powder} {text}, 2 l", language)
    assert reading.strength is None
    assert [(c.code, c.slot, c.texts) for c in reading.conflicts] == [
        ("range", "strength", (shown,))
    ]


def test_times_in_german_are_no_slip_of_a_fraction() -> None:
    reading = read("20-20-20 Pulver zehnmal weniger als auf dem Etikett, 2 l", "de")
    assert reading.strength is None
    assert "zehnmal" in [u.text for u in reading.unknown]


def test_a_word_for_minus_at_the_end_of_a_clause_makes_no_number_negative() -> None:
    assert read("20-20-20 polvo cuatro veces menos, 2 l", "es").volume_l == 2


@pytest.mark.parametrize(
    ("language", "text", "strength"),
    [
        ("en", "fed hugo twice this week", None), ("en", "fed hugo twice", None),
        ("de", "hugo zweimal gedüngt", None), ("es", "aboné a hugo dos veces", None),
        ("pl", "nawiozłam hugo dwa razy", None),
        ("en", "twice the dose, 2 l 20-20-20 powder", 2.0),
        ("de", "zweimal die Dosis, 2 l 20-20-20 Pulver", 2.0),
        ("es", "dos veces la dosis, 2 l 20-20-20 polvo", 2.0),
    ],
)  # fmt: skip
def test_twice_is_a_strength_only_of_one(language: str, text: str, strength: float | None) -> None:
    assert read(text, language).strength == strength


@pytest.mark.parametrize(
    ("language", "text", "shown"),
    [
        ("en", "half a per mille, 3 l 20-20-20 powder", "half a per mille"),
        ("de", "halbes Promille, 3 l 20-20-20 Pulver", "halbes Promille"),
        ("es", "medio por mil, 3 l 20-20-20 polvo", "medio por mil"),
        ("pl", "pół promila, 3 l, 20-20-20 proszek", "pół promila"),
        ("pl", "pół ampułki, 3 l, 3-2-4 płyn", "pół ampułki"),
    ],
)
def test_a_part_of_something_without_a_size_is_no_strength(
    language: str, text: str, shown: str
) -> None:
    reading = read(text, language)
    assert [u.text for u in reading.unknown] == [shown]
    assert (reading.strength, reading.volume_l) == (None, 3)
