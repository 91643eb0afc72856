"""Contradictions, ranges, open bounds, negations: a question, never a choice."""

from __future__ import annotations

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
