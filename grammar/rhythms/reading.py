"""How often and when something is wanted: 'every first sunday at 9', 'in 3 weeks', 'in may'.

`said` walks over the raw words of a message and asks the readers of `_READERS` at each place;
what they find is put together to a `Rhythm`. Clock and calendar are somebody else's.
"""

from __future__ import annotations

from grammar.lexicon import load
from grammar.order import Rhythm, When
from grammar.rhythms.clock import hour_of, read_clock, read_part
from grammar.rhythms.dates import (
    read_ahead,
    read_date,
    read_from,
    read_near,
    read_until,
    read_weekday,
)
from grammar.rhythms.often import read_every, read_months, read_nth_day, read_often, read_span
from grammar.rhythms.walk import MOST, Found, Reader, Walk
from grammar.words.marks import Words
from grammar.words.scan import fold, raws_of
from grammar.words.spelling import rhythm_slip

_CARRIES_NOTHING = frozenset({
    "FILLER", "AND", "ARTICLE", "TO", "OF", "FOR", "IN", "EVERY", "OR", "ASIDE", "BY",
    "PER",
})  # fmt: skip


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
    walk, found = Walk(words), Found(whole_day=words.lexicon.whole_day)
    held: set[int] = set()
    index = 0
    while index < walk.size:
        begin = walk.skip(index, "glue", "once")
        starts = (begin, index) if index < begin < walk.size else (index,)
        for reader in _READERS:
            end = next((e for i in starts if (e := reader(walk, i, found)) > i), 0)
            if end:
                held |= set(range(index, end))
                found.part = found.part or walk.part_said(index, end)
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
    walk = Walk(words)
    for index in range(walk.size):
        number = walk.number(index)
        unit = walk.unit(number[1]) if number is not None else None
        if number is not None and unit is not None and 1 <= number[0] * unit[0] <= MOST:
            return (number[0] * unit[0], unit[1]), frozenset(range(index, unit[2]))
    return None, frozenset()


#: In this order; the first that takes something has it.
_READERS: tuple[Reader, ...] = (
    read_every, read_often, read_months, read_from, read_until, read_nth_day, read_date,
    read_clock, read_ahead, read_near, read_part, read_weekday, read_span,
)  # fmt: skip


# --- what it makes together ---------------------------------------------------------------------


def _together(found: Found) -> Rhythm | None:
    """The rhythm of all that was found; None where nothing was."""
    if found == Found(whole_day=found.whole_day):
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
    clock, half_guessed = hour_of(found)
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
