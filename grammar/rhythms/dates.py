"""Readers of days: 'on 3 march', 'in 3 weeks', 'next friday', 'until october'."""

from __future__ import annotations

import re

from grammar.order import When
from grammar.rhythms.days import dotted_date, whole
from grammar.rhythms.often import of_month, ordinals, ranged
from grammar.rhythms.walk import MOST, Found, Walk
from grammar.words.tokens import UNITS


def read_weekday(walk: Walk, index: int, found: Found) -> int:
    """'monday', 'next friday', 'on mondays and thursdays'."""
    place = walk.skip(index, "next")
    days = walk.weekdays(place)
    if days is None:
        return index
    found.weekdays = [*found.weekdays, *(d for d in days[0] if d not in found.weekdays)]
    found.recurring = found.recurring or days[1]
    return days[2]


def read_date(walk: Walk, index: int, found: Found) -> int:
    """'3 march', 'march 3rd', '2026-03-14', 'the 15th', 'the 1st of each month'."""
    raws = walk.words.raws
    if raws[index].kind == "analysis" and re.fullmatch(r"2\d{3}-\d{2}-\d{2}", raws[index].text):
        year, month, day = map(int, raws[index].text.split("-"))
        return _take_date(found, month, day, year) and index + 1
    written = dotted_date(walk.words, index)
    if written is not None and written.day is not None:
        return _take_date(found, written.value, written.day, written.year) and index + 1
    named = walk.month(index)
    if named is not None:
        following = walk.ordinal(index + 1) or walk.number(index + 1)
        bare = walk.ordinal(index + 1) is None
        if following is None or not 1 <= following[0] <= 31 or (bare and _timed(walk, index + 1)):
            return index
        return _year(walk, following[1], found, named, following[0])
    nths, end = ordinals(walk, index)
    if not nths:
        number = walk.number(index)
        place = walk.behind_of(number[1]) if number is not None else index
        month_said = walk.month(place) if number is not None else None
        if number is None or month_said is None or not 1 <= number[0] <= 31:
            return _days_of_month(walk, index, found)
        return _year(walk, place + 1, found, month_said, number[0])
    month_said = walk.month(walk.skip(end, "glue"))
    if month_said is not None and len(nths) == 1:
        return _year(walk, walk.skip(end, "glue") + 1, found, month_said, nths[0])
    unit = walk.unit(end)  # 'the last day of the month'
    end = unit[2] if unit is not None and unit[1] == "day" else end
    named_by_sign = whole(walk.words, index) is not None or end != ordinals(walk, index)[1]
    if not named_by_sign or not all(n == -1 or 1 <= n <= 31 for n in nths):
        return index
    found.month_days = nths
    behind = of_month(walk, end)
    if behind > end:
        recurs = any(walk.at(i)[0] == "every" or " " in _glued(walk, i) for i in range(end, behind))
        if recurs or len(nths) > 1:
            found.often(1, "month")
    return behind


def _days_of_month(walk: Walk, index: int, found: Found) -> int:
    """'el 15', 'los días 1 y 15', 'el 1 y el 15 de cada mes': days by their numbers alone."""
    days: list[int] = []
    led = walk.kind(index) == "on_day"
    end = place = walk.skip(index, "on_day")
    while (day := whole(walk.words, place)) is not None and 1 <= day <= 31:
        days.append(day)
        end = place + 1
        place = walk.skip(end, "and", "on_day", "glue")
    counts = walk.words.type_at(end) in UNITS or walk.unit(end) is not None or _timed(walk, end - 1)
    behind = of_month(walk, end)
    if not days or counts or not (led or behind > end):
        return index
    month_said = walk.month(walk.behind_of(end))
    if month_said is not None and len(days) == 1:
        return _year(walk, walk.behind_of(end) + 1, found, month_said, days[0])
    found.month_days = days
    if len(days) > 1 or any(walk.at(i)[0] == "every" for i in range(end, behind)):
        found.often(1, "month")
    return behind


def _glued(walk: Walk, index: int) -> str:
    """'of each' and the like, which say that it comes again."""
    value, end = walk.at(index)
    text = " ".join(r.text for r in walk.words.raws[index:end])
    return text if value == "glue" and text.endswith(("each", "every")) else ""


def _timed(walk: Walk, index: int) -> bool:
    """Whether a number is an hour: 'march 9 am'."""
    return walk.kind(index + 1) in ("am", "pm", "oclock")


def _year(walk: Walk, index: int, found: Found, month: int, day: int) -> int:
    place = walk.behind_of(index)
    year = whole(walk.words, place)
    if year is not None and 2000 <= year < 2200:
        return _take_date(found, month, day, year) and place + 1
    return _take_date(found, month, day) and index


def _take_date(found: Found, month: int, day: int, year: int | None = None) -> bool:
    if found.day is not None:
        found.doubt = found.doubt or "two_days"
    found.day = When("date", month, day, year)
    return True


def read_ahead(walk: Walk, index: int, found: Found) -> int:
    """'in 3 weeks', 'in a month', '3 weeks from now', 'next week', 'by two days'."""
    value, end = walk.at(index)
    if value.startswith("ahead "):  # 'za tydzień', without a number
        _, many, name = value.split()
        found.ahead = (int(many), name)
        return end
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
        if value == "in" and number is not None and (second := ranged(walk, number[1])):
            unit = walk.unit(second)
            if unit is not None:
                found.doubt = found.doubt or "range"
                return unit[2]
        return index
    hence = walk.kind(unit[2]) == "hence"
    if value != "in" and not hence:
        return index
    if not 1 <= number[0] * unit[0] <= MOST:
        found.doubt = found.doubt or "number"
    found.ahead = (number[0] * unit[0], unit[1])
    return walk.at(unit[2])[1] if hence else unit[2]


def read_near(walk: Walk, index: int, found: Found) -> int:
    """'today', 'tomorrow', 'tonight'."""
    value, end = walk.at(index)
    if value.startswith("day "):
        found.day = When("day", int(value[4:]))
        return end
    if value == "tonight":
        found.day, found.part = When("day", 0), "evening"
        return end
    return index


def read_until(walk: Walk, index: int, found: Found) -> int:
    """'until october', 'until 3 march'."""
    if walk.kind(index) != "until":
        return index
    place = walk.at(index)[1]
    at_end = walk.kind(place) == "end"
    place = walk.skip(place, "end", "glue")
    day = Found()
    for reader in (read_date, read_near, read_ahead, read_weekday):
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


def read_from(walk: Walk, index: int, found: Found) -> int:
    """'from tomorrow', 'starting monday', 'starting on 3 march'."""
    if walk.kind(index) != "from":
        return index
    place = walk.skip(walk.at(index)[1], "glue")
    day = Found()
    for reader in (read_date, read_near, read_ahead, read_weekday):
        end = reader(walk, place, day) if place < walk.size else place
        if end > place:
            found.start = _as_day(day)
            return end if found.start is not None else index
    return index


def _as_day(day: Found) -> When | None:
    if day.day is not None:
        return day.day
    if day.ahead is not None:
        days = {"day": 1, "week": 7, "month": 30, "year": 365}.get(day.ahead[1])
        return None if days is None else When("day", -days * day.ahead[0])
    return When("weekday", day.weekdays[0]) if day.weekdays else None
