"""Slips of the thumb: one clear candidate is taken and shown, others are only listed."""

from __future__ import annotations

import pytest
from rapidfuzz.distance import OSA

from grammar import read
from grammar.lexicon import load
from grammar.words.spelling import reach

SLIPS = [
    ("sphagnim", "medium", "sphagnum"), ("wintr", "season", "winter"), ("liqiud", "form", "liquid"),
    ("powdre", "form", "powder"), ("weekley", "regime", "weekly"), ("summmer", "season", "summer"),
    ("distileld", "water", "distilled"),
]  # fmt: skip


@pytest.mark.parametrize(("slip", "slot", "meant"), SLIPS)
def test_slip_is_taken_and_shown(slip: str, slot: str, meant: str) -> None:
    reading = read(f"2 l, 20-20-20, {slip}", "en")
    found = getattr(reading, slot)
    assert (found if isinstance(found, str) else found.kind) == meant
    assert [r.text for r in reading.read_as] == [slip]


def test_plant_name_with_a_slip_is_taken_and_shown() -> None:
    reading = read("2 l, 20-20-20, phalenopsys", "en")
    assert reading.genus == "Phalaenopsis"
    assert [r.text for r in reading.read_as] == ["phalenopsys"]


@pytest.mark.parametrize("unit", ["litters", "gramms of salt", "galons"])
def test_unit_is_never_corrected(unit: str) -> None:
    reading = read(f"3 {unit}, 20-20-20 powder", "en")
    assert reading.volume_l is None
    assert reading.unknown


EVERYDAY = ["cats", "dogs", "bank", "dark", "park", "train", "main", "brain", "boss", "cost",
            "lost", "wash", "runoff", "humidity", "repot", "lunch", "mask", "vandal",
            "dead", "bulb", "aphids", "watt", "sleep", "syringe", "weather", "wilted"]  # fmt: skip


@pytest.mark.parametrize("word", EVERYDAY)
def test_everyday_word_is_no_slip(word: str) -> None:
    plain = read("2 l, 20-20-20 powder", "en")
    reading = read(f"{word}, 2 l, 20-20-20 powder", "en")
    assert not reading.read_as
    assert (reading.genera, reading.medium, reading.growth) == (
        plain.genera, plain.medium, plain.growth,
    )  # fmt: skip


def test_everyday_words_are_within_reach_of_ours_and_none_of_them() -> None:
    lexicon = load("en")
    assert len(lexicon.plain) > 150
    assert not lexicon.plain & set(lexicon.words)


@pytest.mark.parametrize(("length", "edits"), [(3, 0), (4, 1), (5, 1), (6, 2), (8, 2), (9, 3)])
def test_reach_grows_with_the_word(length: int, edits: int) -> None:
    assert reach(length) == edits


def test_swap_of_neighbours_is_one_edit() -> None:
    assert OSA.distance("liqiud", "liquid") == 1
