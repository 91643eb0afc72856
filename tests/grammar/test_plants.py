"""Plants, media, growth, form: accepted names, trade names, counts."""

from __future__ import annotations

from typing import Any

import pytest

from grammar import read
from tests.grammar.told import same, value

SAID: list[tuple[str, str, Any]] = [
    ("phal", "genera", ["Phalaenopsis"]), ("moth orchid", "genera", ["Phalaenopsis"]),
    ("catts", "genera", ["Cattleya"]), ("cym", "genera", ["Cymbidium"]),
    ("phals and a vanda", "genera", ["Phalaenopsis", "Vanda"]),
    ("dendrobium nobile", "genera", ["Dendrobium nobile"]), ("3 phals", "count", 3),
    ("x3 phals", "count", None), ("fir bark", "medium", "bark"), ("moss", "medium", "sphagnum"),
    ("leca", "medium", "clay_pellets"), ("on cork", "medium", "mounted"),
    ("coco chips", "medium", "coconut"), ("bark and perlite mix", "medium", "mixed"),
    ("bark and perlite", "medium", "mixed"), ("bark + some coco", "medium", "mixed"),
    ("miltonias (the pansy ones)", "genera", ["Miltonia", "Miltoniopsis"]),
    ("new roots", "growth", "new_roots"), ("in flower", "growth", "flowering"),
    ("dormant", "growth", "resting"), ("seedlings", "growth", "seedling"),
    ("new bulb on my catt", "growth", "new_pseudobulbs"), ("liquid", "form", "liquid"),
    ("crystals", "form", "powder"), ("slow release", "form", "granules"),
]  # fmt: skip


@pytest.mark.parametrize(("text", "slot", "wanted"), SAID)
def test_word_is_read(text: str, slot: str, wanted: Any) -> None:
    assert same(value(read(f"2 l, 20-20-20, {text}", "en"), slot), wanted)


NONE: list[tuple[str, str]] = [
    ("my cats knocked the can over", "genera"),
    ("Vanda from the club says hello", "genera"),
    ("my dog will bark at you", "medium"),
    ("in a clay pot", "medium"),
    ("I fitted a new bulb in the lamp", "growth"),
    ("the rest of the bag", "growth"),
]


@pytest.mark.parametrize(("text", "slot"), NONE)
def test_word_of_another_matter_is_not_taken(text: str, slot: str) -> None:
    assert not value(read(f"{text}, 2 l, 20-20-20", "en"), slot)


@pytest.mark.parametrize(
    "text", ["bark and moss", "cork and bark", "phals in bark and catts in perlite"]
)
def test_media_that_are_none_of_one_mix_are_asked_about(text: str) -> None:
    reading = read(f"2 l, 20-20-20 powder, {text}", "en")
    assert reading.medium is None
    assert [(c.code, c.slot) for c in reading.conflicts] == [("several", "medium")]
