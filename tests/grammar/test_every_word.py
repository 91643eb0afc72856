"""Every word of every vocabulary, in the shortest message around it: it is read, or it is shown."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction
from typing import Any

import pytest

from grammar import Reading, read
from grammar.lexicon import COMMON, sections
from tests.grammar.told import is_open, same

#: Sections whose words say something of a dose by themselves, and the slot they fill.
SLOTS = {
    "form": "form", "medium": "medium", "season": "season", "month": "month", "growth": "growth",
    "regime": "regime", "fraction": "strength", "level": "strength", "water": "water",
    "genus": "genera",
}  # fmt: skip
#: German: an article before a plant's short name, and Den. for Dendrobium.
KNOWN = {"de": {"den phalaenopsis", "den phal", "den phals"}}


def _words(code: str) -> Iterator[tuple[str, str, str]]:
    for name in (code, COMMON):
        for section, table in sections(name).items():
            if section in SLOTS:
                yield from ((section, value, p) for value, ps in table.items() for p in ps)


def _wanted(section: str, value: str) -> Any:
    if section in ("fraction", "level"):
        return float(Fraction(value))
    return int(value) if section == "month" else [value] if section == "genus" else value


def _found(reading: Reading, section: str) -> Any:
    found = getattr(reading, SLOTS[section])
    if section == "water":
        return found.kind if found is not None else None
    return list(found) if section == "genus" else found


@pytest.mark.parametrize("code", ["en", "de", "es", "pl"])
def test_no_word_is_read_as_something_else_in_silence(code: str) -> None:
    wrong = {}
    for section, value, phrase in _words(code):
        reading = read(f"2 l, 20-20-20, {phrase}", code)
        right = same(_found(reading, section), _wanted(section, value))
        if not (right and reading.volume_l == 2.0) and not is_open(reading):
            wrong[phrase] = _found(reading, section)
    assert set(wrong) == KNOWN.get(code, set()), wrong


@pytest.mark.parametrize("code", ["en", "de", "es", "pl"])
def test_nearly_every_word_is_read(code: str) -> None:
    words = list(_words(code))
    missed = [
        phrase
        for section, value, phrase in words
        if not same(
            _found(read(f"2 l, 20-20-20, {phrase}", code), section), _wanted(section, value)
        )
    ]
    assert len(missed) <= 0.02 * len(words), missed
