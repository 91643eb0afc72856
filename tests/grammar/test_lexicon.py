"""The vocabulary files: consistent with the almanac and with themselves."""

from __future__ import annotations

import re
import tomllib
from collections import defaultdict
from pathlib import Path

import pytest

import grammar.lexicon as lexicon
from grammar.lexicon import COMMON, heard_by, languages, sections
from grammar.words.units import CANONICAL

GENERA = Path(__file__).parents[2] / "bot" / "almanac" / "genera.toml"
UNIT_SECTIONS = ("volume_unit", "mass_unit", "ec_unit", "hardness_unit", "alkalinity_unit")
COUNTRYLESS = {"gallon", "quart", "pint", "fluid_ounce", "cup"}


def test_genera_are_those_of_the_almanac() -> None:
    almanac = tomllib.loads(GENERA.read_text(encoding="utf-8"))["genus"]
    assert set(sections(COMMON)["genus"]) == {entry["name"] for entry in almanac}


@pytest.mark.parametrize("name", [COMMON, *languages()])
def test_no_phrase_has_two_values_in_one_section(name: str) -> None:
    for section, table in sections(name).items():
        if section in ("meta", "not_a_slip"):
            continue
        values = defaultdict(set)
        for value, phrases in table.items():
            for phrase in phrases:
                values[phrase].add(value)
        assert {p: v for p, v in values.items() if len(v) > 1} == {}, section


@pytest.mark.parametrize("name", languages())
def test_vernacular_genera_are_accepted_names(name: str) -> None:
    assert set(sections(name).get("genus", {})) <= set(sections(COMMON)["genus"])


@pytest.mark.parametrize("name", languages())
def test_every_unit_can_be_converted(name: str) -> None:
    own, common = sections(name), sections(COMMON)
    units = {u for s in UNIT_SECTIONS for f in (own, common) for u in f.get(s, {})}
    assert len(units) > 10
    assert units - COUNTRYLESS <= set(CANONICAL)


#: Sections that a language need not have: its settings, lists for the speller, names of its own.
OWN = frozenset({"meta", "not_a_slip", "genus"})


@pytest.mark.parametrize("name", [code for code in languages() if code != "en"])
def test_every_concept_has_words_in_every_language(name: str) -> None:
    english, other = sections("en"), sections(name)
    lacking = [
        f"{section}.{concept}"
        for section, table in english.items()
        if section not in OWN
        for concept in table
        if not other.get(section, {}).get(concept)
    ]
    assert lacking == []


@pytest.mark.parametrize("name", languages())
def test_a_language_is_heard_by_every_word_of_its_file(name: str) -> None:
    """`heard_by` reads the text of the file; parsing it must find the same words."""
    tables = {s: t for s, t in lexicon._written(sections(name)).items() if s != "meta"}
    phrases = [p for table in tables.values() for listed in table.values() for p in listed]
    parsed = {word for phrase in phrases for word in re.findall(r"[^\W\d_]+", phrase)}
    words, letters = heard_by(name)
    kinds = sections("common")["genus"].values()
    latin = {kind for named in kinds for kind in named if kind.isalpha()}
    assert words == parsed - latin - lexicon.words_under(name, "loans")
    assert letters == set(sections(name)["meta"].get("letters", []))
