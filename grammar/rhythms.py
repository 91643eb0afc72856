"""How often and when something is wanted: 'every first sunday at 9', 'in 3 weeks', 'in may'.

`said` walks over the raw words of a message and asks the readers of `_READERS` at each place;
what they find is put together to a `Rhythm`. Clock and calendar are somebody else's.
"""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import dataclass, field
from typing import TypeAlias

from grammar.days import month_at, whole
from grammar.lexicon import load
from grammar.marks import Words, longest
from grammar.order import Rhythm, When
from grammar.scan import fold, raws_of
from grammar.spelling import rhythm_slip
from grammar.tokens import UNITS

#: Hours that mean the afternoon where nothing else is said: nobody waters at three at night.
_AFTERNOON = range(1, 6)
#: What a name of a part of the day makes of an hour: from here on it is the second half.
_LATE_PARTS = frozenset({"afternoon", "evening"})
_CLOCK = re.compile(r"([01]?\d|2[0-4])\s?[:.]\s?([0-5]\d)")
_MOST = 999
_CARRIES_NOTHING = frozenset({
    "FILLER", "AND", "ARTICLE", "TO", "OF", "FOR", "IN", "EVERY", "OR", "ASIDE",
})  # fmt: skip


@dataclass(slots=True)
class _Found:
    """What was found up to here."""

    every: int | None = None
    unit: str = ""
    weekdays: list[int] = field(default_factory=list)
    recurring: bool = False  # 'mondays', 'every monday'
    nth: list[int] = field(default_factory=list)
    month_days: list[int] = field(default_factory=list)
    months: list[int] = field(default_factory=list)
    season: str = ""
    clock: tuple[int, int] | None = None
    clocks: int = 0
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

    def often(self, every: int, unit: str) -> None:
        """How often; said twice in different ways it is a doubt."""
        if self.every is not None and (self.every, self.unit) != (every, unit):
            self.doubt = self.doubt or "two_rhythms"
        self.every, self.unit = every, unit


#: A reader: takes what begins at a place, and returns the place behind it.
_Reader: TypeAlias = Callable[["_Walk", int, _Found], int]


class _Walk:
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

    def ordinal(self, index: int) -> tuple[int, int] | None:
        """'first', '3rd', 'last'."""
        value, end = self.at(index)
        if value.startswith("nth "):
            return int(value[4:]), end
        number = whole(self.words, index)
        if number is not None and self.kind(index + 1) == "suffix":
            return number, self.at(index + 1)[1]
        return None

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
            if kind == "weekend":
                digits, kind = "6", "weekday"
            if kind not in ("weekday", "weekdays"):
                break
            days += [int(d) for d in digits]
            recurring = recurring or kind == "weekdays"
            end = behind
            index = self.skip(behind, "and", "glue")
            if self.kind(behind) == "to" and self.kind(self.at(behind)[1]) == "weekday":
                until = int(self.at(self.at(behind)[1])[0].split()[1])
                days += [d % 7 or 7 for d in range(days[-1] + 1, until + 7 * (until < days[-1]))]
                recurring, index = True, self.at(behind)[1]
        return (list(dict.fromkeys(days)), recurring, end) if days else None

    def month(self, index: int) -> int | None:
        """A month by its name."""
        return month_at(self.words, index)

    def season(self, index: int) -> str:
        """A season by its name."""
        entry = self.words.lexicon.words.get(self._text(index))
        return entry.value if entry is not None and entry.type == "SEASON" else ""

    def _text(self, index: int) -> str:
        return self.words.raws[index].text if 0 <= index < self.size else ""


def said(words: Words) -> tuple[Rhythm | None, frozenset[int]]:
    """The rhythm of a message, with the places of its words.

    Parameters
    ----------
    words : the message

    Returns
    -------
    Rhythm or None, frozenset of int
        None where none was said. A rhythm with a `doubt` cannot be kept as it is.
    """
    walk, found = _Walk(words), _Found()
    held: set[int] = set()
    index = 0
    while index < walk.size:
        begin = walk.skip(index, "glue", "once")
        starts = (begin, index) if index < begin < walk.size else (index,)
        for reader in _READERS:
            end = next((e for i in starts if (e := reader(walk, i, found)) > i), 0)
            if end:
                held |= set(range(index, end))
                index = end
                break
        else:
            index += 1
    return _together(found), frozenset(held)


def read_rhythm(text: str, language: str) -> tuple[Rhythm | None, bool]:
    """A rhythm as an answer by itself, and whether nothing else stands in it.

    Parameters
    ----------
    text : as typed
    language : code of a lexicon
    """
    lexicon, folded = load(language), fold(text)
    raws = [
        raw._replace(text=rhythm_slip(raw, lexicon) or raw.text) for raw in raws_of(folded, lexicon)
    ]
    words = Words(folded, raws, lexicon, [])
    rhythm, held = said(words)
    if rhythm is None:  # 'two weeks': in so long
        span, held = lone_span(words)
        rhythm = Rhythm(ahead=span) if span is not None else None
    others = (i for i in range(len(raws)) if i not in held)
    return rhythm, all(words.type_at(i) in _CARRIES_NOTHING for i in others)


def lone_span(words: Words) -> tuple[tuple[int, str] | None, frozenset[int]]:
    """'two days' wherever it stands, for what is put off by so much."""
    walk = _Walk(words)
    for index in range(walk.size):
        number = walk.number(index)
        unit = walk.unit(number[1]) if number is not None else None
        if number is not None and unit is not None and 1 <= number[0] * unit[0] <= _MOST:
            return (number[0] * unit[0], unit[1]), frozenset(range(index, unit[2]))
    return None, frozenset()


def hours(words: Words, start: int) -> tuple[list[tuple[int, int, bool]], frozenset[int]]:
    """Clock times from a place on: hour, minute, and whether its half of the day was said."""
    walk, found, held = _Walk(words), [], set()
    index = start
    while index < walk.size:
        one = _Found()
        end = _clock(walk, index, one)
        raw = words.raws[index]
        if end == index and raw.kind == "number" and raw.text.isdecimal() and int(raw.text) <= 24:
            end = _half(walk, one, int(raw.text), 0, index + 1, doubtful=True)
        if end > index and one.clock is not None:
            clock, _ = _hour(one)
            said_half = one.half in ("am", "pm", "as_said") or one.clock[0] > 12
            found.append((*(clock if said_half and clock else one.clock), said_half))
            held |= set(range(index, end))
        index = max(end, index + 1)
    return found, frozenset(held)


# --- readers: each takes what begins at a place, and returns the place behind it ----------------


def _every(walk: _Walk, index: int, found: _Found) -> int:
    if walk.kind(index) != "every":
        return index
    place = walk.at(index)[1]
    if walk.kind(place) == "other":
        return _every_so_many(walk, walk.at(place)[1], 2, found) or index
    ordinal = walk.ordinal(place)
    if ordinal is not None:
        return _every_nth(walk, place, found) or index
    number = walk.number(place)
    if number is not None:
        month = walk.month(number[1])
        if month is not None:  # 'every 3 march'
            found.often(1, "year")
            found.months, found.month_days = [month], [number[0]]
            return number[1] + 1
        second = _ranged(walk, number[1])
        if second:
            found.doubt = found.doubt or "range"
            end = walk.unit(second)
            return end[2] if end is not None else second
        return _every_so_many(walk, number[1], number[0], found) or index
    if walk.kind(place) == "part":
        found.often(1, "day")
        return place
    return _every_so_many(walk, place, 1, found) or index


def _ranged(walk: _Walk, index: int) -> int:
    """The place behind the second number of '2-3' or '10 to 14'; 0 where there is none."""
    raws = walk.words.raws
    joins = index < walk.size and (
        raws[index].text == "-" or walk.kind(index) == "to" or walk.words.type_at(index) == "OR"
    )
    if not joins or walk.number(index + 1) is None:
        return 0
    return index + 2


def _every_so_many(walk: _Walk, index: int, number: int, found: _Found) -> int:
    """A unit or a day of the week behind 'every 2'; 0 where neither follows."""
    unit = walk.unit(index)
    if unit is not None:
        times, name, end = unit
        if name in ("hour", "minute"):
            found.doubt = found.doubt or "too_often"
            return end
        if not 1 <= number * times <= _MOST:
            found.doubt = found.doubt or "number"
            return end
        found.often(number * times, name)
        return end
    days = walk.weekdays(index)
    if days is not None:
        found.often(number, "week")
        found.weekdays, found.recurring = days[0], True
        return days[2]
    month = walk.month(index)
    if month is not None and number == 1:
        found.often(1, "year")
        found.months, end = _month_list(walk, index)
        found.month_days = found.month_days or [1]
        return end
    if walk.season(index) and number == 1:
        found.often(1, "year")
        found.season = walk.season(index)
        return index + 1
    return 0


def _every_nth(walk: _Walk, index: int, found: _Found) -> int:
    """'every first sunday', 'every second week', 'every 1st and 15th'; 0 for anything else."""
    nths, end = _ordinals(walk, index)
    unit = walk.unit(end)
    if unit is not None and len(nths) == 1:
        if unit[1] == "day" and _of_month(walk, unit[2]) > unit[2]:
            found.often(1, "month")
            found.month_days = nths
            return _of_month(walk, unit[2])
        return _every_so_many(walk, end, nths[0], found) if nths[0] > 0 else 0
    days = walk.weekdays(end)
    if days is not None:
        behind = _of_month(walk, days[2])
        if nths == [2] and behind == days[2]:
            found.guess = "every_second"  # 'every second sunday': more often every other one
            return _every_so_many(walk, end, 2, found)
        found.often(1, "month")
        found.nth, found.weekdays, found.recurring = nths, days[0], True
        return behind
    month = walk.month(end)
    if month is not None:
        found.often(1, "year")
        found.months, found.month_days = [month], nths
        return end + 1
    if all(1 <= n <= 31 for n in nths):
        found.often(1, "month")
        found.month_days = nths
        return _of_month(walk, end)
    return 0


def _ordinals(walk: _Walk, index: int) -> tuple[list[int], int]:
    """'first and third', '1st, 15th'."""
    nths: list[int] = []
    end = index
    while (ordinal := walk.ordinal(index)) is not None:
        nths.append(ordinal[0])
        end = ordinal[1]
        index = walk.skip(end, "and", "glue")
    return nths, end


def _of_month(walk: _Walk, index: int) -> int:
    """The place behind 'of the month', 'of each month', 'in every month'; else where it began."""
    place = walk.skip(index, "glue", "every", "in")
    unit = walk.unit(place)
    return unit[2] if unit is not None and unit[:2] == (1, "month") else index


def _often(walk: _Walk, index: int, found: _Found) -> int:
    value, end = walk.at(index)
    if value.startswith("often "):
        _, unit, every = value.split()
        found.often(int(every), unit)
    elif value == "halfmonthly":
        found.often(1, "month")
        found.month_days = found.month_days or [1, 15]
    elif value.startswith("doubt "):
        found.doubt = found.doubt or value.split()[1]
    elif value == "vague":
        found.doubt = found.doubt or "vague"
    else:
        return index
    return end


def _nth_day(walk: _Walk, index: int, found: _Found) -> int:
    """'the first sunday of the month', 'on the last saturday', 'first sunday of june'."""
    nths, end = _ordinals(walk, index)
    days = walk.weekdays(end) if nths else None
    if days is None or not all(-1 <= n <= 5 for n in nths):
        return index
    found.nth, found.weekdays = nths, days[0]
    end = days[2]
    behind = _of_month(walk, end)
    if behind > end:
        found.often(1, "month")
        return behind
    month = walk.month(walk.skip(end, "glue", "in"))
    if month is not None:
        found.months = [month]
        return walk.skip(end, "glue", "in") + 1
    return end


def _weekday(walk: _Walk, index: int, found: _Found) -> int:
    place = walk.skip(index, "next")
    days = walk.weekdays(place)
    if days is None:
        return index
    found.weekdays = [*found.weekdays, *(d for d in days[0] if d not in found.weekdays)]
    found.recurring = found.recurring or days[1]
    return days[2]


def _date(walk: _Walk, index: int, found: _Found) -> int:
    """'3 march', 'march 3rd', '2026-03-14', 'the 15th', 'the 1st of each month'."""
    raws = walk.words.raws
    if raws[index].kind == "analysis" and re.fullmatch(r"2\d{3}-\d{2}-\d{2}", raws[index].text):
        year, month, day = map(int, raws[index].text.split("-"))
        return _take_date(found, month, day, year) and index + 1
    named = walk.month(index)
    if named is not None:
        following = walk.ordinal(index + 1) or walk.number(index + 1)
        bare = walk.ordinal(index + 1) is None
        if following is None or not 1 <= following[0] <= 31 or (bare and _timed(walk, index + 1)):
            return index
        return _year(walk, following[1], found, named, following[0])
    nths, end = _ordinals(walk, index)
    if not nths:
        number = walk.number(index)
        month_said = walk.month(index + 1) if number is not None else None
        if number is None or month_said is None or not 1 <= number[0] <= 31:
            return index
        return _year(walk, index + 2, found, month_said, number[0])
    month_said = walk.month(walk.skip(end, "glue"))
    if month_said is not None and len(nths) == 1:
        return _year(walk, walk.skip(end, "glue") + 1, found, month_said, nths[0])
    unit = walk.unit(end)  # 'the last day of the month'
    end = unit[2] if unit is not None and unit[1] == "day" else end
    named_by_sign = whole(walk.words, index) is not None or end != _ordinals(walk, index)[1]
    if not named_by_sign or not all(n == -1 or 1 <= n <= 31 for n in nths):
        return index
    found.month_days = nths
    behind = _of_month(walk, end)
    if behind > end:
        recurs = any(walk.at(i)[0] == "every" or " " in _glued(walk, i) for i in range(end, behind))
        if recurs or len(nths) > 1:
            found.often(1, "month")
    return behind


def _glued(walk: _Walk, index: int) -> str:
    """'of each' and the like, which say that it comes again."""
    value, end = walk.at(index)
    text = " ".join(r.text for r in walk.words.raws[index:end])
    return text if value == "glue" and text.endswith(("each", "every")) else ""


def _timed(walk: _Walk, index: int) -> bool:
    """Whether a number is an hour: 'march 9 am'."""
    return walk.kind(index + 1) in ("am", "pm", "oclock")


def _year(walk: _Walk, index: int, found: _Found, month: int, day: int) -> int:
    year = whole(walk.words, index)
    if year is not None and 2000 <= year < 2200:
        return _take_date(found, month, day, year) and index + 1
    return _take_date(found, month, day) and index


def _take_date(found: _Found, month: int, day: int, year: int | None = None) -> bool:
    if found.day is not None:
        found.doubt = found.doubt or "two_days"
    found.day = When("date", month, day, year)
    return True


def _ahead(walk: _Walk, index: int, found: _Found) -> int:
    """'in 3 weeks', 'in a month', '3 weeks from now', 'next week', 'by two days'."""
    value, end = walk.at(index)
    if value == "next":
        unit = walk.unit(end)
        if unit is None or walk.words.raws[index].text == "this":
            return index
        found.ahead = (unit[0], unit[1])
        return unit[2]
    place = end if value == "in" else index
    half = [r.text for r in walk.words.raws[place : place + 3]] == ["half", "an", "hour"]
    if half and value == "in":
        found.ahead = (30, "minute")
        return place + 3
    number = walk.number(place)
    unit = walk.unit(number[1]) if number is not None else None
    if number is None or unit is None:
        if value == "in" and number is not None and (second := _ranged(walk, number[1])):
            unit = walk.unit(second)
            if unit is not None:
                found.doubt = found.doubt or "range"
                return unit[2]
        return index
    hence = walk.kind(unit[2]) == "hence"
    if value != "in" and not hence:
        return index
    if not 1 <= number[0] * unit[0] <= _MOST:
        found.doubt = found.doubt or "number"
    found.ahead = (number[0] * unit[0], unit[1])
    return walk.at(unit[2])[1] if hence else unit[2]


def _near(walk: _Walk, index: int, found: _Found) -> int:
    value, end = walk.at(index)
    if value.startswith("day "):
        found.day = When("day", int(value[4:]))
        return end
    if value == "tonight":
        found.day, found.part = When("day", 0), "evening"
        return end
    return index


def _clock(walk: _Walk, index: int, found: _Found) -> int:
    """'at 9', '9:30', 'six pm', 'half past eight', 'at noon', 'at 18h'."""
    end = _one_clock(walk, index, found)
    if end > index and _and_another(walk, end):
        found.doubt = found.doubt or "two_times"
        return end + 2
    return end


def _one_clock(walk: _Walk, index: int, found: _Found) -> int:
    value, end = walk.at(index)
    led = value == "at"
    place = end if led else index
    led = led or _at_sign(walk, index)
    value, end = walk.at(place)
    if value.startswith("clock "):
        return _take_clock(found, int(value[6:]), 0, end)
    for phrase, minute in (("half_past", 30), ("quarter_past", 15), ("quarter_to", 45)):
        if value == phrase:
            hour = whole(walk.words, end)
            if hour is None or not 1 <= hour <= 24:
                return index
            hour = hour - (phrase == "quarter_to")
            return _half(walk, found, hour, minute, end + 1, doubtful=True)
    raw = walk.words.raws[place] if place < walk.size else None
    if raw is None:
        return index
    written = _CLOCK.fullmatch(raw.text)
    behind = place + 1
    marked = walk.kind(behind) in ("am", "pm", "oclock")
    if written and (raw.kind == "ratio" or (raw.kind == "number" and (led or marked))):
        hour, minute = int(written[1]), int(written[2])
        return _half(walk, found, hour, minute, behind, doubtful=False)
    number = whole(walk.words, place)
    if number is None:
        return _no_clock(found, place + 1) if led and raw.kind == "ratio" else index
    part = walk.kind(behind) in ("part", "tonight") or walk.at(behind)[0] == "pm"
    if not (led or marked or part) or walk.words.type_at(behind) in UNITS or number > 2400:
        return index
    if walk.unit(behind) is not None and not marked:
        return index
    if number > 24:  # 'at 1830'
        ok = number >= 100 and number % 100 < 60 and raw.text.isdecimal()
        if ok:
            return _take_clock(found, number // 100, number % 100, behind)
        return _no_clock(found, behind)
    past = whole(walk.words, behind)
    if led and raw.kind == "word" and past is not None and 5 <= past < 60:
        return _half(walk, found, number, past, behind + 1, doubtful=True)  # 'nine thirty'
    return _half(walk, found, number, 0, behind, doubtful=not raw.text.startswith("0"))


def _no_clock(found: _Found, end: int) -> int:
    """A clock time that there is not: 'at 25:00'."""
    found.doubt = found.doubt or "clock"
    return end


def _at_sign(walk: _Walk, index: int) -> bool:
    """Whether an '@' stands before this word, which is no word of its own."""
    raws = walk.words.raws
    before = raws[index - 1].end if index else 0
    return "@" in walk.words.folded.text[before : raws[index].start]


def _half(walk: _Walk, found: _Found, hour: int, minute: int, end: int, *, doubtful: bool) -> int:
    """An hour with what is said of its half of the day."""
    kind = walk.kind(end)
    if kind == "oclock":
        end = walk.at(end)[1]
        doubtful = doubtful and walk.words.raws[end - 1].text != "h"
        kind = walk.kind(end)
    if kind in ("am", "pm") and hour <= 12:
        found.half = kind
        return _take_clock(found, hour, minute, walk.at(end)[1])
    found.half = "" if doubtful and hour <= 12 else "as_said"
    return _take_clock(found, hour, minute, end)


def _and_another(walk: _Walk, index: int) -> bool:
    """Whether a second hour follows: 'at 8 and 18'."""
    joins = walk.kind(index) == "and" or walk.words.type_at(index) == "OR"
    number = whole(walk.words, index + 1) if joins else None
    if number is None or number > 24 or walk.unit(index + 2) is not None:
        return False
    return walk.month(index + 2) is None and walk.words.type_at(index + 2) not in UNITS


def _take_clock(found: _Found, hour: int, minute: int, end: int) -> int:
    if found.clock is not None and found.clock != (hour, minute):
        found.doubt = found.doubt or "two_times"
    found.clock = (hour, minute)
    return end


def _part(walk: _Walk, index: int, found: _Found) -> int:
    value, end = walk.at(walk.skip(index, "in", "glue", "next", "at"))
    if value == "am" or value == "pm":
        text = " ".join(r.text for r in walk.words.raws[end - 3 : end])
        value = f"part {text.split()[-1]}" if value == "pm" or "morning" in text else ""
        value = value.replace("night", "evening")
    if not value.startswith("part "):
        return index
    found.part = value[5:]
    return end


def _month_list(walk: _Walk, index: int) -> tuple[list[int], int]:
    """'may', 'may and june', 'may to september'; and the place behind it."""
    months: list[int] = []
    end = index
    while (month := walk.month(index)) is not None:
        months.append(month)
        end = index + 1
        behind = walk.skip(end, "and")
        joint = walk.at(end)[1] if walk.kind(end) in ("to", "until") else behind
        ranged = walk.kind(end) in ("to", "until") or walk.words.raws[end - 1 : end + 1] == []
        other = walk.month(joint)
        if ranged and other is not None:
            months += _from_to(month, other)[1:]
            return months, joint + 1
        index = behind
    return list(dict.fromkeys(months)), end


def _from_to(first: int, last: int) -> list[int]:
    return [(first + i - 1) % 12 + 1 for i in range((last - first) % 12 + 1)]


def _months(walk: _Walk, index: int, found: _Found) -> int:
    """'from may to september', 'between may and july', 'may-september', 'in summer'."""
    kind, end = walk.kind(index), walk.at(index)[1]
    led = kind in ("from", "in", "during")
    place = walk.skip(end, "glue", "end") if led else index
    first = walk.month(place)
    if first is not None:
        joint = place + 1
        if walk.kind(joint) in ("to", "until") or (kind == "from" and walk.kind(joint) == "and"):
            joint = walk.at(joint)[1]
        last = walk.month(joint)
        if last is not None:
            found.months = _from_to(first, last)
            return joint + 1
        if not led:
            return index
        if kind == "from":
            found.start = When("of_month", first)
            return place + 1
        found.months, behind = _month_list(walk, place)
        return behind
    if led and kind != "from" and walk.season(place):
        found.season = walk.season(place)
        return place + 1
    return index


def _until(walk: _Walk, index: int, found: _Found) -> int:
    if walk.kind(index) != "until":
        return index
    place = walk.at(index)[1]
    at_end = walk.kind(place) == "end"
    place = walk.skip(place, "end", "glue")
    day = _Found()
    for reader in (_date, _near, _ahead, _weekday):
        end = reader(walk, place, day) if place < walk.size else place
        if end > place:
            break
    else:
        month = walk.month(place)
        if month is None:
            return index
        found.until = When("of_month", month % 12 + 1 if at_end else month)
        return place + 1
    found.until = _as_day(day)
    return end if found.until is not None else index


def _from(walk: _Walk, index: int, found: _Found) -> int:
    """'from tomorrow', 'starting monday', 'starting on 3 march'."""
    if walk.kind(index) != "from":
        return index
    place = walk.skip(walk.at(index)[1], "glue")
    day = _Found()
    for reader in (_date, _near, _ahead, _weekday):
        end = reader(walk, place, day) if place < walk.size else place
        if end > place:
            found.start = _as_day(day)
            return end if found.start is not None else index
    return index


def _as_day(day: _Found) -> When | None:
    if day.day is not None:
        return day.day
    if day.ahead is not None:
        days = {"day": 1, "week": 7, "month": 30, "year": 365}.get(day.ahead[1])
        return None if days is None else When("day", -days * day.ahead[0])
    return When("weekday", day.weekdays[0]) if day.weekdays else None


def _span(walk: _Walk, index: int, found: _Found) -> int:
    """'for 6 weeks', '5 times'."""
    led = walk.kind(index) == "for"
    place = walk.at(index)[1] if led else index
    number = walk.number(place)
    if number is None or not 1 <= number[0] <= _MOST:
        return index
    if walk.kind(number[1]) == "times":
        found.times = number[0]
        return walk.at(number[1])[1]
    unit = walk.unit(number[1]) if led else None
    if unit is None:
        return index
    found.span = (number[0] * unit[0], unit[1])
    return unit[2]


#: In this order; the first that takes something has it.
_READERS: tuple[_Reader, ...] = (
    _every, _often, _months, _from, _until, _nth_day, _date, _clock, _ahead, _near, _part, _weekday,
    _span,
)  # fmt: skip


# --- what it makes together ---------------------------------------------------------------------


def _together(found: _Found) -> Rhythm | None:
    """The rhythm of all that was found; None where nothing was."""
    if found == _Found():
        return None
    every, unit = found.every, found.unit
    weekdays, day, months = sorted(found.weekdays), found.day, list(found.months)
    guess = found.guess
    if weekdays and every is None and not found.nth and (found.recurring or len(weekdays) > 1):
        every, unit = 1, "week"
    if weekdays and unit == "month" and not found.nth:
        found.nth, guess = [1], guess or "first_of_month"
    if every is None and len(found.month_days) > 1:
        every, unit = 1, "month"
    if weekdays and every is None and not found.nth:
        day = day or When("weekday", weekdays[0])
        weekdays = []
    elif weekdays and unit in ("day", "year") and not found.nth:
        found.start, weekdays = found.start or When("weekday", weekdays[0]), []
    if months and every is None and not found.nth and not found.month_days and day is None:
        day, months = When("of_month", months[0]), months[1:]
    if day is not None and every is not None:
        if day.kind == "date" and unit == "year":
            months, found.month_days, day = [day.value], [day.day or 1], None
        else:
            found.start, day = found.start or day, None
    clock, half_guessed = _hour(found)
    return Rhythm(
        every=every,
        unit=unit,
        weekdays=tuple(weekdays),
        nth=tuple(found.nth),
        month_days=tuple(found.month_days),
        months=tuple(months),
        season=found.season,
        clock=clock,
        half_guessed=half_guessed,
        part=found.part,
        ahead=found.ahead,
        day=day,
        start=found.start,
        until=found.until,
        span=found.span,
        times=found.times,
        doubt=found.doubt,
        guess=guess,
    )


def _hour(found: _Found) -> tuple[tuple[int, int] | None, bool]:
    """The clock time on 24 hours, and whether its half of the day was ours to guess."""
    if found.clock is None:
        return None, False
    hour, minute = found.clock
    late = found.half == "pm" or (found.half != "am" and found.part in _LATE_PARTS)
    if found.half == "am" or (found.half == "" and found.part == "morning"):
        return (hour % 12, minute), False
    if late and hour <= 12:
        return (hour % 12 + 12, minute), False
    if found.half == "" and not found.part and 1 <= hour < 12:
        return (hour + 12 if hour in _AFTERNOON else hour, minute), True
    return (hour % 24, minute), False
