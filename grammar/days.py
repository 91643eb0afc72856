"""Days in a message: 'yesterday', '3 days ago', 'on 3 march', 'since october'."""

from __future__ import annotations

import re

from grammar.marks import Mark, Words
from grammar.order import When


def when(words: Words) -> tuple[When | None, frozenset[int]]:
    """The day or stretch of time that was said, with the places of its words."""
    for mark in words.found:
        if mark.type == "WHEN":
            found = _from_mark(words, mark)
            if found is not None:
                return found
    return _date(words)


def _from_mark(words: Words, mark: Mark) -> tuple[When, frozenset[int]] | None:
    kind, _, value = mark.value.partition(" ")
    indices = frozenset(range(mark.at, mark.end))
    if kind != "ago":
        return When(kind, int(value)), indices
    before = mark.at - 1
    number = whole(words, before)
    if number is None:
        return None
    each = {"day": 1, "week": 7, "month": 30}[value]
    return When("day", number * each), indices | {before}


def whole(words: Words, index: int) -> int | None:
    """A whole number at this place, in figures or as a word."""
    if not 0 <= index < len(words.raws):
        return None
    raw = words.raws[index]
    entry = words.lexicon.words.get(raw.text)
    text = entry.value if entry is not None and entry.type == "NUMBER" else raw.text
    return int(text) if text.isdecimal() and len(text) < 5 else None


def month_at(words: Words, index: int) -> int | None:
    """A month by its name at this place."""
    if not 0 <= index < len(words.raws):
        return None
    entry = words.lexicon.words.get(words.raws[index].text)
    return int(entry.value) if entry is not None and entry.type == "MONTH" else None


def _date(words: Words) -> tuple[When | None, frozenset[int]]:
    """'3 march', 'march 3rd', '2026-03-14', '14.3.2026', 'since october'."""
    for index, raw in enumerate(words.raws):
        if raw.kind == "analysis" and re.fullmatch(r"2\d{3}-\d{2}-\d{2}", raw.text):
            year, month, day = map(int, raw.text.split("-"))
            return When("date", month, day, year), frozenset({index})
        month_named = month_at(words, index)
        if month_named is None:
            continue
        before, after = index - 1, index + 1
        while words.type_at(before) == "OF" or words.cue_at(before) == "ordinal":
            before -= 1  # '3rd of march'
        for day_at in (before, after):
            day_said = whole(words, day_at)
            if day_said is not None and 1 <= day_said <= 31:
                spread = range(min(day_at, index), max(day_at, index) + 1)
                year_said = whole(words, max(spread) + 1)
                if year_said is None or not 2000 <= year_said < 2200:
                    return When("date", month_named, day_said), frozenset(spread)
                taken = frozenset({*spread, max(spread) + 1})
                return When("date", month_named, day_said, year_said), taken
        return When("of_month", month_named), frozenset({index})
    return None, frozenset()
