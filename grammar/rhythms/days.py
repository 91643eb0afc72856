"""Days in a message: 'yesterday', '3 days ago', 'on 3 march', 'since october'."""

from __future__ import annotations

import re
from functools import cache

from grammar.lexicon import settings_of, words_under
from grammar.order import When
from grammar.words.marks import Mark, Words
from grammar.words.tokens import UNITS


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
    if kind == "before":
        return _before(words, mark)
    if kind == "count":
        return None
    if kind != "ago":
        return When(kind, int(value)), indices
    before = mark.at - 1
    number = whole(words, before)
    if number is None:
        return _SOME, indices | _vague_to(words, mark.at)
    return When("day", number * _DAYS[value]), indices | {before}


_DAYS = {"day": 1, "week": 7, "month": 30, "year": 365}
#: A day that has been, nobody knows which.
_SOME = When("some", 0)
#: What a number that is not whole can be of: 'vor anderthalb Wochen'.
_NUMBERS = frozenset({"ARTICLE", "NUMBER", "FRACTION", "STRENGTH", "AND", "OR", "OF", "FILLER"})
_LONGEST_NUMBER = 4


def _counts_vaguely(language: str) -> frozenset[str]:
    """The words of a language for a number that is not said: 'a few', 'ein paar'."""
    return words_under(language, "so_many")


def _vague_to(words: Words, end: int) -> frozenset[int]:
    """Such words that stand right before a place, and parts: 'half a', 'a couple of'."""
    vague, begin = _counts_vaguely(words.lexicon.language), end
    while begin and (
        words.raws[begin - 1].text in vague
        or words.type_at(begin - 1) in ("ARTICLE", "FRACTION", "OF")
    ):
        begin -= 1
        if words.raws[begin].after_break:
            break
    return frozenset(range(begin, end))


def _before(words: Words, mark: Mark) -> tuple[When, frozenset[int]] | None:
    """'vor 3 Tagen', 'hace un mes': a word for 'ago' that stands before its number."""
    units = (m for m in words.found if m.type == "WHEN" and m.value.startswith("count "))
    unit = next((m for m in units if mark.end <= m.at <= mark.end + _LONGEST_NUMBER), None)
    if unit is None:
        return None
    said = frozenset(range(mark.at, unit.end))
    between, vague = range(mark.end, unit.at), _counts_vaguely(words.lexicon.language)
    if len(between) == 1 and words.raws[mark.end].text not in vague:
        article = words.type_at(mark.end) == "ARTICLE"
        number = 1 if article else whole(words, mark.end)
        if number is not None:
            return When("day", number * _DAYS[unit.value.split()[1]]), said
    counted = all(
        words.raws[i].text in vague
        or words.raws[i].kind == "number"
        or words.type_at(i) in _NUMBERS
        for i in between
    )
    return (_SOME, said) if counted else None


def whole(words: Words, index: int) -> int | None:
    """A whole number at this place, in figures or as a word."""
    if not 0 <= index < len(words.raws):
        return None
    raw = words.raws[index]
    entry = words.lexicon.words.get(raw.text)
    text = entry.value if entry is not None and entry.type == "NUMBER" else raw.text
    return int(text) if text.isdecimal() and len(text) < 5 else None


@cache
def dotted(language: str) -> bool:
    """Whether a number with a dot behind it counts a day: '3. März', '3.11.'."""
    return bool(settings_of(language).get("dotted_dates"))


@cache
def _leads(language: str) -> frozenset[str]:
    """Words of a language behind which '3.11' is a date without its last dot."""
    return frozenset(settings_of(language).get("date_leads", ()))


_DOTTED = re.compile(r"(\d{1,2})\.(\d{1,2})(?:\.(\d{4}|\d{2}))?")


def dotted_date(words: Words, index: int) -> When | None:
    """'14.3.2026', '3.11.' and 'am 3.11', in a language that writes dates so."""
    raws, language = words.raws, words.lexicon.language
    if not dotted(language) or raws[index].kind != "number":
        return None
    found = _DOTTED.fullmatch(raws[index].text)
    if found is None or not (1 <= int(found[1]) <= 31 and 1 <= int(found[2]) <= 12):
        return None
    led = index > 0 and raws[index - 1].text in _leads(language)
    counted = words.type_at(index + 1) in UNITS and not raws[index].dotted
    if found[3] is None and (counted or not (led or raws[index].dotted)):
        return None
    if found[3] is None and raws[index].dotted and not led and index + 1 == len(raws):
        return None  # the end of a sentence: 'Ablauf von Ruby 1.6.'
    year = int(found[3]) if found[3] else None
    return When("date", int(found[2]), int(found[1]), year + 2000 if year and year < 100 else year)


def month_at(words: Words, index: int) -> int | None:
    """A month by its name at this place."""
    if not 0 <= index < len(words.raws):
        return None
    entry = words.lexicon.words.get(words.raws[index].text)
    if entry is not None and entry.type == "DATED_MONTH" and _is_dated(words, index):
        return int(entry.value)
    return int(entry.value) if entry is not None and entry.type == "MONTH" else None


def _is_dated(words: Words, index: int) -> bool:
    """Whether a word that could be a verb is a month: '3 maja', 'pierwszego maja', 'od maja'."""
    raw = words.raws[index]
    accented = words.folded.written(raw.start, raw.end).casefold() != raw.text
    if accented or index == 0:
        return False
    before = words.raws[index - 1]
    said = words.lexicon.rhythms.next.get(before.text)
    entry = said.entry if said is not None else None
    counted = entry is not None and entry.value.partition(" ")[0] in ("nth", "end", "from", "until")
    known = words.type_at(index - 1) in ("NUMBER", "BETWEEN", "TO")
    return before.kind == "number" or counted or known


def _date(words: Words) -> tuple[When | None, frozenset[int]]:
    """'3 march', 'march 3rd', '2026-03-14', '14.3.2026', 'since october'."""
    for index, raw in enumerate(words.raws):
        if raw.kind == "analysis" and re.fullmatch(r"2\d{3}-\d{2}-\d{2}", raw.text):
            year, month, day = map(int, raw.text.split("-"))
            return When("date", month, day, year), frozenset({index})
        written = dotted_date(words, index)
        if written is not None:
            return written, frozenset({index})
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
                last = max(spread) + 1
                last += words.type_at(last) == "OF"  # '3 de marzo de 2026'
                year_said = whole(words, last)
                if year_said is None or not 2000 <= year_said < 2200:
                    return When("date", month_named, day_said), frozenset(spread)
                taken = frozenset({*spread, *range(max(spread) + 1, last + 1)})
                return When("date", month_named, day_said, year_said), taken
        return When("of_month", month_named), frozenset({index})
    return None, frozenset()
