"""Readers of clock times and parts of the day: 'at 9', 'half past eight', 'in the evening'."""

from __future__ import annotations

import re

from grammar.rhythms.days import whole
from grammar.rhythms.walk import Found, Walk
from grammar.words.marks import Words
from grammar.words.tokens import UNITS

#: Hours that mean the afternoon where nothing else is said: nobody waters at three at night.
_AFTERNOON = range(1, 6)
#: What a name of a part of the day makes of an hour: from here on it is the second half.
_LATE_PARTS = frozenset({"afternoon", "evening"})
#: Up to this hour a night is that after midnight.
_NIGHT_ENDS = 7
_CLOCK = re.compile(r"([01]?\d|2[0-4])\s?[:.]\s?([0-5]\d)")


def hours(words: Words, start: int) -> tuple[list[tuple[int, int, bool]], frozenset[int]]:
    """Clock times from a place on: hour, minute, and whether its half of the day was said."""
    walk, found, held = Walk(words), [], set()
    index = start
    while index < walk.size:
        one = Found()
        end = read_clock(walk, index, one)
        raw = words.raws[index]
        if end == index and raw.kind == "number" and raw.text.isdecimal() and int(raw.text) <= 24:
            end = _half(walk, one, int(raw.text), 0, index + 1, doubtful=True)
        if end > index and one.clock is not None:
            clock, _ = hour_of(one)
            said_half = one.half in ("am", "pm", "as_said") or one.clock[0] > 12
            found.append((*(clock if said_half and clock else one.clock), said_half))
            held |= set(range(index, end))
        index = max(end, index + 1)
    return found, frozenset(held)


def lone_hour(words: Words) -> tuple[tuple[int, int], bool, int] | None:
    """The bare hour that a message ends with, whether its half was guessed, and its place.

    'move it to 9': behind a word that leads there.
    """
    walk, last = Walk(words), len(words.raws) - 1
    raw = words.raws[last] if last > 0 else None
    if raw is None or not raw.text.isdecimal() or int(raw.text) > 24:
        return None
    led = words.type_at(last - 1) in ("TO", "FOR", "IN") or walk.kind(last - 1) in ("to", "at")
    if not led:
        return None
    found = Found(whole_day=words.lexicon.whole_day)
    _half(walk, found, int(raw.text), 0, last + 1, doubtful=True)
    clock, guessed = hour_of(found)
    return (clock, guessed, last) if clock is not None else None


def bare_hour(words: Words) -> tuple[tuple[int, int], bool] | None:
    """A number that is all that is said, as an hour, and whether its half was guessed."""
    raw = words.raws[0] if len(words.raws) == 1 else None
    if raw is None or not raw.text.isdecimal() or not 1 <= int(raw.text) <= 24:
        return None
    found = Found(whole_day=words.lexicon.whole_day)
    _half(Walk(words), found, int(raw.text), 0, 1, doubtful=True)
    clock, guessed = hour_of(found)
    return (clock, guessed) if clock is not None else None


def read_clock(walk: Walk, index: int, found: Found) -> int:
    """'at 9', '9:30', 'six pm', 'half past eight', 'at noon', 'at 18h'."""
    end = _one_clock(walk, index, found)
    if end > index and _and_another(walk, end):
        found.doubt = found.doubt or "two_times"
        return end + 2
    return end


def _one_clock(walk: Walk, index: int, found: Found) -> int:
    value, end = walk.at(index)
    led = value in ("at", "at_about")
    place = end if led else index
    led = led or _at_sign(walk, index)
    value, end = walk.at(place)
    if value.startswith("clock "):
        minute = whole(walk.words, end) if end < walk.size else None
        spoken = minute is not None and walk.words.raws[end].kind == "word"
        if spoken and minute is not None and 5 <= minute < 60 and walk.unit(end + 1) is None:
            return _half(walk, found, int(value[6:]), minute, end + 1, doubtful=True)
        return _take_clock(found, int(value[6:]), 0, end)
    for phrase, minute, back in _PARTS_OF_AN_HOUR:
        if value == phrase:
            hour, behind = _hour(walk, end)
            if hour is None or not 1 <= hour <= 24:
                return index
            return _half(walk, found, hour - back or 12, minute, behind, doubtful=True)
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
    unit = walk.unit(behind)
    if led and unit is not None and unit[1] == "hour" and number <= 24:  # 'a las 18 horas'
        return _half(walk, found, number, 0, unit[2], doubtful=True)
    if not (led or marked or part) or walk.words.type_at(behind) in UNITS or number > 2400:
        return index
    if unit is not None and not marked:
        return index
    if number > 24:  # 'at 1830'
        ok = number >= 100 and number % 100 < 60 and raw.text.isdecimal()
        if ok:
            return _take_clock(found, number // 100, number % 100, behind)
        return _no_clock(found, behind)
    for phrase, minute, back in _PARTS_OF_AN_HOUR:  # 'a las ocho y media'
        value, end = walk.at(behind)
        if led and value == phrase and whole(walk.words, end) is None:
            return _half(walk, found, number - back or 12, minute, end, doubtful=True)
    past = whole(walk.words, behind)
    if led and raw.kind == "word" and past is not None and 5 <= past < 60:
        return _half(walk, found, number, past, behind + 1, doubtful=True)  # 'nine thirty'
    return _half(walk, found, number, 0, behind, doubtful=not raw.text.startswith("0"))


#: Phrase, minutes, and how many hours before the one that is named.
_PARTS_OF_AN_HOUR = (
    ("half_past", 30, 0), ("quarter_past", 15, 0), ("quarter_to", 45, 1), ("half_to", 30, 1),
    ("quarter_into", 15, 1),  # 'viertel neun'
)  # fmt: skip


def _hour(walk: Walk, index: int) -> tuple[int | None, int]:
    """An hour in figures, as a number, or as 'ósmej', and the place behind it."""
    value, end = walk.at(index)
    if value.startswith("clock "):
        return int(value[6:]), end
    return whole(walk.words, index), index + 1


def _no_clock(found: Found, end: int) -> int:
    """A clock time that there is not: 'at 25:00'."""
    found.doubt = found.doubt or "clock"
    return end


def _at_sign(walk: Walk, index: int) -> bool:
    """Whether an '@' stands before this word, which is no word of its own."""
    raws = walk.words.raws
    before = raws[index - 1].end if index else 0
    return "@" in walk.words.folded.text[before : raws[index].start]


def _half(walk: Walk, found: Found, hour: int, minute: int, end: int, *, doubtful: bool) -> int:
    """An hour with what is said of its half of the day."""
    kind = walk.kind(end)
    if kind == "oclock":
        end = walk.at(end)[1]
        doubtful = doubtful and walk.words.raws[end - 1].text != "h"
        minute, end = _minutes(walk, minute, end)
        kind = walk.kind(end)
    if kind in ("am", "pm") and hour <= 12:
        found.half = kind
        return _take_clock(found, hour, minute, walk.at(end)[1])
    found.half = "" if doubtful and hour <= 12 else "as_said"
    return _take_clock(found, hour, minute, end)


def _minutes(walk: Walk, minute: int, index: int) -> tuple[int, int]:
    """The minutes of '18 Uhr 30', and the place behind them."""
    raw = walk.words.raws[index] if index < walk.size else None
    if raw is None or raw.kind != "number" or raw.after_break or not re.fullmatch(
        r"[0-5]\d", raw.text
    ):  # fmt: skip
        return minute, index
    counts = walk.words.type_at(index + 1) in UNITS | {"GENUS", "PLANTS"}
    other = counts or walk.unit(index + 1) is not None or walk.month(index + 1) is not None
    return (minute, index) if other else (int(raw.text), index + 1)


def _and_another(walk: Walk, index: int) -> bool:
    """Whether a second hour follows: 'at 8 and 18'."""
    joins = walk.kind(index) == "and" or walk.words.type_at(index) == "OR"
    number = whole(walk.words, index + 1) if joins else None
    if number is None or number > 24 or walk.unit(index + 2) is not None:
        return False
    return walk.month(index + 2) is None and walk.words.type_at(index + 2) not in UNITS


def _take_clock(found: Found, hour: int, minute: int, end: int) -> int:
    if found.clock is not None and found.clock != (hour, minute):
        found.doubt = found.doubt or "two_times"
    found.clock = (hour, minute)
    return end


def read_part(walk: Walk, index: int, found: Found) -> int:
    """'in the morning', 'evening'."""
    value, end = walk.at(walk.skip(index, "in", "glue", "next", "at"))
    if value in ("am", "pm"):  # 'in the morning', 'de la tarde': its last words name the part
        value = next((v for i in (end - 1, end - 2) if (v := walk.at(i)[0])[:5] == "part "), "")
    if not value.startswith("part "):
        return index
    found.part = value[5:]
    return end


def hour_of(found: Found) -> tuple[tuple[int, int] | None, bool]:
    """The clock time on 24 hours, and whether its half of the day was ours to guess."""
    if found.clock is None:
        return None, False
    hour, minute = found.clock
    if found.part == "night" and hour <= 12:  # 'um 2 Uhr nachts', 'um 11 Uhr nachts'
        return ((hour % 12 + 12 * (hour % 12 > _NIGHT_ENDS)), minute), False
    late = found.half == "pm" or (found.half != "am" and found.part in _LATE_PARTS)
    if found.half == "am" or (found.half == "" and found.part == "morning"):
        return (hour % 12, minute), False
    if late and hour <= 12:
        return (hour % 12 + 12, minute), False
    if found.half == "" and not found.part and 1 <= hour < 12:
        afternoon = hour in _AFTERNOON
        return (hour + 12 if afternoon else hour, minute), afternoon or not found.whole_day
    return (hour % 24, minute), False
