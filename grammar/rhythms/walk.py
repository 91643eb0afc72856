"""The words of a message with what each can mean in a rhythm, and what was found of it."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, field
from typing import TypeAlias

from grammar.lexicon import settings_of
from grammar.order import When
from grammar.rhythms.days import dotted, month_at, whole
from grammar.words.marks import Words, longest

MOST = 999
#: Words behind which a day of the week may be shortened to what could be another word.
_BEFORE_A_DAY = frozenset({"every", "other", "every_other", "next", "nth", "suffix"})


@dataclass(slots=True)
class Found:
    """What was found up to here."""

    every: int | None = None
    unit: str = ""
    weekdays: list[int] = field(default_factory=list)
    recurring: bool = False  # 'mondays', 'every monday'
    nth: list[int] = field(default_factory=list)
    month_days: list[int] = field(default_factory=list)
    months: list[int] = field(default_factory=list)
    season: str = ""
    not_weekdays: list[int] = field(default_factory=list)
    not_months: list[int] = field(default_factory=list)
    not_season: str = ""
    clock: tuple[int, int] | None = None
    half: str = ""  # am or pm, as said
    part: str = ""
    ahead: tuple[int, str] | None = None
    day: When | None = None
    start: When | None = None
    until: When | None = None
    span: tuple[int, str] | None = None
    times: int | None = None
    doubt: str = ""
    guess: str = ""
    whole_day: bool = False  # whether people count the hours of a day to 24

    def often(self, every: int, unit: str) -> None:
        """How often; said twice in different ways it is a doubt."""
        if self.every is not None and (self.every, self.unit) != (every, unit):
            self.doubt = self.doubt or "two_rhythms"
        self.every, self.unit = every, unit


#: A reader: takes what begins at a place, and returns the place behind it.
Reader: TypeAlias = Callable[["Walk", int, Found], int]


class Walk:
    """The words of a message with what each can mean here."""

    def __init__(self, words: Words) -> None:
        self.words = words
        self.size = len(words.raws)
        self._known: dict[int, tuple[str, int]] = {}

    def at(self, index: int) -> tuple[str, int]:
        """The longest phrase that begins here: its value and the place behind it."""
        if index not in self._known:
            raws = self.words.raws
            known = ("", index)
            if 0 <= index < self.size:
                entry, size = longest(raws, index, self.words.lexicon.rhythms)
                if raws[index].dotted and len(raws[index].text) == 1:  # 'a.m.' is one word
                    pair = [r._replace(after_break=False) for r in raws[index : index + 2]]
                    entry, size = longest(pair, 0, self.words.lexicon.rhythms)
                quarter = entry is not None and entry.value == "quarter_to"
                if quarter and self.kind(index + size) == "unit":  # 'za 15 minut' is no clock time
                    entry, size = longest(raws[index : index + 1], 0, self.words.lexicon.rhythms)
                if entry is not None and entry.type == "RHYTHM":
                    known = (entry.value, index + size)
            self._known[index] = known
        return self._known[index]

    def kind(self, index: int) -> str:
        """The first word of that value: every, unit, weekday ..."""
        return self.at(index)[0].partition(" ")[0]

    def skip(self, index: int, *kinds: str) -> int:
        """The place behind words of these kinds."""
        while self.kind(index) in kinds:
            index = self.at(index)[1]
        return index

    def number(self, index: int) -> tuple[int, int] | None:
        """A whole number, or an article before a unit: its value and the place behind it."""
        article = self.words.type_at(index) == "ARTICLE"
        if article and self.kind(index + 1) == "unit":
            return 1, index + 1
        index += article
        value = whole(self.words, index)
        if value is None:
            return None
        behind = index + 1
        of = self.words.type_at(behind) == "OF" and self.kind(behind + 1) == "unit"
        return value, behind + of  # 'a couple of weeks'

    def behind_of(self, index: int) -> int:
        """The place behind an 'of': '3 de marzo'."""
        return index + (self.words.type_at(index) == "OF")

    def ordinal(self, index: int) -> tuple[int, int] | None:
        """'first', '3rd', 'last'."""
        value, end = self.at(index)
        if value.startswith("nth "):
            return int(value[4:]), end
        number = whole(self.words, index)
        if number is not None and self.kind(index + 1) == "suffix":
            return number, self.at(index + 1)[1]
        return (number, index + 1) if number is not None and self._counts_a_day(index) else None

    def _counts_a_day(self, index: int) -> bool:
        """Whether the dot behind a number makes it 'the 3rd', and ends no sentence."""
        raw = self.words.raws[index]
        if not raw.dotted or raw.kind != "number" or not dotted(self.words.lexicon.language):
            return False
        led = ("glue", "from", "until", "every", "and", "next")
        return index + 1 < self.size or self.kind(index - 1) in led

    def reaches(self, index: int) -> bool:
        """Whether a word here says 'to', as between two days."""
        return self.at(index)[0] in ("to", "until to")

    def part_said(self, start: int, end: int) -> str:
        """The part of the day in a word for a day of the week, as in 'Sonntagabend'."""
        values = (self.at(i)[0].split() for i in range(start, end))
        return next((v[2] for v in values if v[:1] == ["weekday"] and len(v) > 2), "")

    def unit(self, index: int) -> tuple[int, str, int] | None:
        """A unit of time: how many of which it is, and the place behind it."""
        value, end = self.at(index)
        if not value.startswith("unit "):
            return None
        _, unit, times = value.split()
        return int(times), unit, end

    def weekdays(self, index: int) -> tuple[list[int], bool, int] | None:
        """Days of the week in a row; whether they were said as ones that come again."""
        days: list[int] = []
        recurring, end = False, index
        while True:
            value, behind = self.at(index)
            kind, _, digits = value.partition(" ")
            digits = digits.partition(" ")[0]
            if kind == "weekend":
                digits, kind = "6", "weekday"
            if kind not in ("weekday", "weekdays"):
                digits = self._short_day(index, joined=bool(days))
                if not digits:
                    break
                kind, behind = "weekday", index + 1
            days += [int(d) for d in digits]
            recurring = recurring or kind == "weekdays"
            end = behind
            index = self.skip(behind, "and", "glue")
            if self.reaches(behind) and self.kind(self.at(behind)[1]) == "weekday":
                until = int(self.at(self.at(behind)[1])[0].split()[1])
                days += [d % 7 or 7 for d in range(days[-1] + 1, until + 7 * (until < days[-1]))]
                recurring, index = True, self.at(behind)[1]
        return (list(dict.fromkeys(days)), recurring, end) if days else None

    def _short_day(self, index: int, *, joined: bool) -> str:
        """A day of the week in few letters, where it can be nothing else: 'every other sat'."""
        text = self._text(index)
        short = settings_of(self.words.lexicon.language).get("short_days", {}).get(text)
        if short is None or self.words.raws[index].kind != "word":
            return ""
        counted = whole(self.words, index - 1) is not None and self.kind(index - 2) == "every"
        led = joined or counted or self.kind(index - 1) in _BEFORE_A_DAY or self._task(index - 1)
        return str(short) if led else ""

    def _task(self, index: int) -> bool:
        """Whether a word for feeding, flushing or watering stands here: 'feed sat and sun'."""
        node = self.words.lexicon.rhythms.next.get(self._text(index))
        entry = node.entry if node is not None else None
        return entry is not None and entry.type == "TASK" and entry.value != "look"

    def strange(self, index: int) -> bool:
        """Whether a word stands here, in the same breath, that means nothing known."""
        raw = self.words.raws[index] if 0 <= index < self.size else None
        if raw is None or raw.kind != "word" or raw.after_break:
            return False
        held = any(m.at <= index < m.end for m in self.words.found)
        return not (held or self.words.type_at(index) or self.kind(index))

    def month(self, index: int) -> int | None:
        """A month by its name."""
        return month_at(self.words, index)

    def season(self, index: int) -> str:
        """A season by its name."""
        entry = self.words.lexicon.words.get(self._text(index))
        return entry.value if entry is not None and entry.type == "SEASON" else ""

    def _text(self, index: int) -> str:
        return self.words.raws[index].text if 0 <= index < self.size else ""
