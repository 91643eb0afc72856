"""Readers of how often: 'every 10 days', 'every first sunday', 'from may to september'."""

from __future__ import annotations

from grammar.order import When
from grammar.rhythms.days import whole
from grammar.rhythms.walk import MOST, Found, Walk


def read_every(walk: Walk, index: int, found: Found) -> int:
    """'every 10 days', 'every other friday', 'every morning'."""
    if walk.kind(index) == "every_other":  # 'co drugi piątek'
        return _every_so_many(walk, walk.at(index)[1], 2, found) or index
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
        second = ranged(walk, number[1])
        if second:
            found.doubt = found.doubt or "range"
            end = walk.unit(second)
            return end[2] if end is not None else second
        unit = walk.unit(number[1])
        dated = walk.words.raws[place].dotted and unit is not None and unit[1] == "day"
        if dated and unit is not None and of_month(walk, unit[2]) > unit[2]:
            found.often(1, "month")  # 'każdego 1. dnia miesiąca'
            found.month_days = [number[0]]
            return of_month(walk, unit[2])
        return _every_so_many(walk, number[1], number[0], found) or index
    if walk.kind(place) == "part":
        found.often(1, "day")
        return place
    return _every_so_many(walk, place, 1, found) or index


def ranged(walk: Walk, index: int) -> int:
    """The place behind the second number of '2-3' or '10 to 14'; 0 where there is none."""
    raws = walk.words.raws
    joins = index < walk.size and (
        raws[index].text == "-" or walk.reaches(index) or walk.words.type_at(index) == "OR"
    )
    if not joins or walk.number(index + 1) is None:
        return 0
    return index + 2


def _every_so_many(walk: Walk, index: int, number: int, found: Found) -> int:
    """A unit or a day of the week behind 'every 2'; 0 where neither follows."""
    unit = walk.unit(index)
    if unit is not None:
        times, name, end = unit
        if name in ("hour", "minute"):
            found.doubt = found.doubt or "too_often"
            return end
        if not 1 <= number * times <= MOST:
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


def _every_nth(walk: Walk, index: int, found: Found) -> int:
    """'every first sunday', 'every second week', 'every 1st and 15th'; 0 for anything else."""
    nths, end = ordinals(walk, index)
    unit = walk.unit(end)
    if unit is not None and len(nths) == 1:
        if unit[1] == "day" and of_month(walk, unit[2]) > unit[2]:
            found.often(1, "month")
            found.month_days = nths
            return of_month(walk, unit[2])
        return _every_so_many(walk, end, nths[0], found) if nths[0] > 0 else 0
    days = walk.weekdays(end)
    if days is not None:
        behind = of_month(walk, days[2])
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
        behind = of_month(walk, end)
        if walk.strange(behind):
            found.doubt = found.doubt or "vague"  # 'every 3rd blorp'
            return behind + 1
        return behind
    return 0


def ordinals(walk: Walk, index: int) -> tuple[list[int], int]:
    """'first and third', '1st, 15th'."""
    nths: list[int] = []
    end = index
    while (ordinal := walk.ordinal(index)) is not None:
        nths.append(ordinal[0])
        end = ordinal[1]
        index = walk.skip(end, "and", "glue")
    return nths, end


def of_month(walk: Walk, index: int) -> int:
    """The place behind 'of the month', 'of each month', 'in every month'; else where it began."""
    place = walk.skip(index, "glue", "every", "in")
    unit = walk.unit(place)
    return unit[2] if unit is not None and unit[:2] == (1, "month") else index


def read_often(walk: Walk, index: int, found: Found) -> int:
    """'daily', 'twice a month', and what leaves it open."""
    value, end = walk.at(index)
    if value.startswith("often "):
        _, unit, every = value.split()
        found.often(int(every), unit)
    elif value.startswith("daily "):  # 'jeden Morgen', which could also be 'every tomorrow'
        found.often(1, "day")
        found.part = value[6:]
    elif value == "halfmonthly":
        found.often(1, "month")
        found.month_days = found.month_days or [1, 15]
    elif value.startswith("monthday "):  # 'Monatsende', 'jedes Monatsende'
        found.month_days = [int(value.split()[1])]
        if value.endswith(" every"):
            found.often(1, "month")
    elif value.startswith("doubt "):
        found.doubt = found.doubt or value.split()[1]
    elif value == "vague":
        found.doubt = found.doubt or "vague"
    else:
        return index
    return end


def read_nth_day(walk: Walk, index: int, found: Found) -> int:
    """'the first sunday of the month', 'on the last saturday', 'first sunday of june'."""
    nths, end = ordinals(walk, index)
    days = walk.weekdays(end) if nths else None
    if days is None or not all(-1 <= n <= 5 for n in nths):
        return index
    found.nth, found.weekdays = nths, days[0]
    end = days[2]
    behind = of_month(walk, end)
    if behind > end:
        found.often(1, "month")
        return behind
    month = walk.month(walk.skip(end, "glue", "in"))
    if month is not None:
        found.months = [month]
        return walk.skip(end, "glue", "in") + 1
    return end


def _month_list(walk: Walk, index: int) -> tuple[list[int], int]:
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


def read_months(walk: Walk, index: int, found: Found) -> int:
    """'from may to september', 'between may and july', 'may-september', 'in summer'."""
    kind, end = walk.kind(index), walk.at(index)[1]
    if kind == "season":  # 'zimą': a season that says 'in' by its ending
        found.season = walk.at(index)[0].partition(" ")[2]
        return end
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


def read_except(walk: Walk, index: int, found: Found) -> int:
    """'except in december', 'but not on sundays', behind what comes again and again."""
    again = found.every is not None or found.recurring or found.month_days or found.nth
    if walk.kind(index) != "except" or not again:
        return index
    place = walk.at(index)[1]
    part = Found()
    end = read_months(walk, place, part)
    if end > place:
        found.not_months += part.months
        found.not_season = part.season
        if part.start is not None:  # 'not from november': until when?
            found.doubt = found.doubt or "exception"
        dated = part.months and whole(walk.words, end) is not None  # 'except in december 24'
        found.doubt = found.doubt or ("exception" if dated else "")
        return end
    place = walk.skip(place, "glue", "in", "during", "on_day", "every")
    months, end = _month_list(walk, place)
    if months and whole(walk.words, end) is None:
        found.not_months += months
        return end
    if walk.season(place):
        found.not_season = walk.season(place)
        return place + 1
    days = walk.weekdays(place)
    if days is not None:
        found.not_weekdays += days[0]
        return days[2]
    one = months or walk.number(place) or walk.ordinal(place)
    if one or walk.kind(place) in ("day", "next", "unit", "part"):  # 'except on the 24th'
        found.doubt = found.doubt or "exception"
        return max(place, walk.at(index)[1])
    return index


def read_span(walk: Walk, index: int, found: Found) -> int:
    """'for 6 weeks', '6 Wochen lang', '5 times'."""
    led = walk.kind(index) == "for"
    place = walk.at(index)[1] if led else index
    number = walk.number(place)
    if number is None or not 1 <= number[0] <= MOST:
        return index
    if walk.kind(number[1]) == "times":
        found.times = number[0]
        return walk.at(number[1])[1]
    unit = walk.unit(number[1])
    lasting = unit is not None and walk.kind(unit[2]) == "lasting"
    if unit is None or not (led or lasting):
        return index
    found.span = (number[0] * unit[0], unit[1])
    return walk.at(unit[2])[1] if lasting else unit[2]
