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
from grammar.rhythms.days import whole
from grammar.rhythms.often import (
    read_every,
    read_except,
    read_months,
    read_nth_day,
    read_often,
    read_span,
)
from grammar.rhythms.walk import MOST, Found, Reader, Walk
from grammar.words.marks import Words, phrases
from grammar.words.scan import fold, raws_of
from grammar.words.spelling import rhythm_slip

_CARRIES_NOTHING = frozenset({
    "FILLER", "AND", "ARTICLE", "TO", "OF", "FOR", "IN", "EVERY", "OR", "ASIDE", "BY",
    "PER",
})  # fmt: skip


#: So many words behind a rhythm a task is still next to it: 'jeden Sonntag ans Düngen'.
_NEAR = 2


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
            behind = _unread(walk, index)
            if behind:
                found.doubt = found.doubt or "vague"
            if behind and _beside_a_task(words, index, behind):
                held |= set(range(index, behind))  # 'feed every blorp': no words of the task
            index += 1
    return _together(found), frozenset(held)


def _unread(walk: Walk, index: int) -> int:
    """The place behind an 'every' and what is no word known, or nothing: a rhythm not read.

    0 where 'every' counts something else: 'every phal'.
    """
    if walk.kind(index) not in ("every", "every_other"):
        return 0
    place = walk.skip(index, "every", "every_other", "other", "nth", "suffix")
    place += whole(walk.words, place) is not None
    if walk.strange(place):
        return place + 1
    cut_off = (
        place >= walk.size or walk.words.raws[place].after_break or walk.kind(place)[:2] == "at"
    )
    told = walk.kind(walk.at(index)[1]) == "other" or walk.kind(index) == "every_other"
    return place if told and cut_off else 0  # 'every other at 9'


def _beside_a_task(words: Words, index: int, behind: int) -> bool:
    """Whether a word for feeding, flushing or watering stands next to these words."""
    before = phrases(words.raws[:index], words.lexicon.rhythms)
    after = phrases(words.raws[behind : behind + _NEAR], words.lexicon.rhythms)
    ends = [m for m in before if m.end == index]
    return any(m.type == "TASK" and m.value != "look" for m in (*ends, *after))


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
    read_every, read_often, read_except, read_months, read_from, read_until, read_nth_day,
    read_date, read_clock, read_ahead, read_near, read_part, read_weekday, read_span,
)  # fmt: skip


# --- what it makes together ---------------------------------------------------------------------


def _left_over(found: Found) -> list[int]:
    """The months it holds in, without those that were excepted."""
    if not found.not_months:
        return list(found.months)
    left = [m for m in found.months or range(1, 13) if m not in found.not_months]
    if not left:
        found.doubt = found.doubt or "exception"
    return left


def _together(found: Found) -> Rhythm | None:
    """The rhythm of all that was found; None where nothing was."""
    if found == Found(whole_day=found.whole_day):
        return None
    every, unit = found.every, found.unit
    weekdays, day, months = sorted(found.weekdays), found.day, _left_over(found)
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
    if found.not_weekdays and unit == "week" and weekdays:
        weekdays = [d for d in weekdays if d not in found.not_weekdays]
        found.not_weekdays, emptied = [], not weekdays
    else:
        emptied = bool(found.not_weekdays) and unit != "day"
    if emptied or ((found.not_months or found.not_season) and unit == "year"):
        found.doubt = found.doubt or "exception"
    clock, half_guessed = hour_of(found)
    return Rhythm(
        every=every,
        unit=unit,
        weekdays=tuple(weekdays),
        nth=tuple(found.nth),
        month_days=tuple(found.month_days),
        months=tuple(months),
        season=found.season,
        not_weekdays=tuple(sorted(set(found.not_weekdays))),
        not_season=found.not_season,
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
