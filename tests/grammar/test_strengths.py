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
