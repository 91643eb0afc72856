"""The year, the salts of a pot and a dose as pictures, each with its text beside it.

The figures are those of `salts`, `advice` and `doses`; what is drawn says nothing else. Nothing
is written before a picture is drawn, and no session is open meanwhile.
"""

from __future__ import annotations

import asyncio
import math
from collections.abc import Callable, Iterable, Sequence
from dataclasses import replace
from datetime import date, timedelta
from typing import TypeVar

from bot import pictures
from bot.conversation import answer as out
from bot.conversation.collection import Collection, label, labels
from bot.conversation.replies import (
    SHOWN_CAUTIONS,
    makes_line,
    measure_line,
    product_text,
    shown_amount,
    volume_text,
)
from bot.conversation.turn import Turn
from bot.conversation.turns.feeding import doses
from bot.conversation.turns.plants import on_target
from bot.conversation.turns.pots import salts as salts_told
from bot.conversation.turns.pots.year import year_of
from bot.conversation.turns.standing import rescue_log
from bot.conversation.turns.standing.pot_logs import PotLog, pot_logs
from bot.dosing.pot_salts import PotEvent, PotState, between, simulate, wet_ec
from bot.pictures import card as card_drawn
from bot.pictures import salts as salts_drawn
from bot.pictures import year as year_drawn
from bot.records.models import Plant
from grammar import Target

Drawn = TypeVar("Drawn")
#: In this order the months of a row are told: what was done, then what is to come.
_TOLD = (
    year_drawn.Cell.FED, year_drawn.Cell.WATERED, year_drawn.FLUSHED, year_drawn.Cell.FEED,
    year_drawn.Cell.LESS, year_drawn.Cell.CLEAR, year_drawn.Cell.REST, year_drawn.Cell.DIFFER,
)  # fmt: skip
#: From line to line of a scale [mS/cm]; the first that needs no more lines than this.
_STEPS, _MOST_STEPS = (0.1, 0.2, 0.5, 1.0, 2.0, 5.0), 5
#: A band that goes higher than this times the line and the limit is cut [1].
_HEADROOM = 3.0
#: A longer time has a mark a month, a shorter one so many marks at most [d].
_BY_MONTH, _MOST_DAYS = 60, 4


async def _with_picture(
    turn: Turn, answer: out.Answer, draw: Callable[[Drawn], bytes], data: Drawn, name: str, alt: str
) -> out.Answer:
    """An answer with its picture; without what draws it, that is said below the text."""
    try:
        content = await asyncio.to_thread(draw, data)
    except pictures.PicturesMissing:
        missing = turn.words.say("picture-missing")
        return answer.model_copy(update={"reply": f"{answer.reply}\n{missing}"})
    picture = out.Picture(name=name, content=content, alt=alt)
    return answer.model_copy(update={"picture": picture})


# --- the year ------------------------------------------------------------------------------------


async def year(turn: Turn) -> out.Answer:
    """The year of all plants, or of those that are meant."""
    collection = turn.collection
    if not collection.plants:
        return turn.ask("ask-no-plants-yet")
    if turn.order.target != Target():
        return await on_target(turn, _year)
    return await _year(turn, collection, list(collection.plants))


async def _year(turn: Turn, collection: Collection, found: list[Plant]) -> out.Answer:
    drawn = await year_of(turn, found)
    words, owner = turn.words, turn.owner
    count = sum(p.count for p in found)
    lines = [words.say("picture-year-head", year=drawn.title, count=count)]
    lines += [_row_told(turn, row) for row in drawn.rows]
    if not turn.incoming.south and (owner is None or owner.hemisphere is None):
        lines.append(words.say("picture-north"))
    answer = turn.tell("year", lines, details={"rows": [_row_figures(r) for r in drawn.rows]})
    alt = words.say("picture-year-alt", year=drawn.title, count=len(drawn.rows))
    name = f"sinkside-year-{drawn.title}.png"
    return await _with_picture(turn, answer, year_drawn.draw, drawn, name, alt)


def _row_told(turn: Turn, row: year_drawn.Row) -> str:
    words = turn.words
    told: dict[str, list[int]] = {}
    for month, (cell, flushed) in enumerate(zip(row.cells, row.flushed, strict=True)):
        if cell is not year_drawn.Cell.BLANK:
            told.setdefault(cell, []).append(month)
        if flushed:
            told.setdefault(year_drawn.FLUSHED, []).append(month)
    parts = [
        words.say(
            "picture-year-part",
            what=words.say("picture-cell", cell=str(cell)),
            months=_stretches(months, words.months("abbreviated")),
        )
        for cell, months in sorted(told.items(), key=lambda pair: _TOLD.index(pair[0]))
    ]
    nothing = words.say("picture-cell", cell="blank")
    return words.say("picture-year-line", plants=row.label, parts="; ".join(parts) or nothing)


def _stretches(months: Iterable[int], names: Sequence[str]) -> str:
    """Months in a row as one: 'Jan–Mar, May'."""
    runs: list[list[int]] = []
    for month in months:
        if runs and runs[-1][-1] == month - 1:
            runs[-1].append(month)
        else:
            runs.append([month])
    ends = (names[r[0]] if len(r) == 1 else f"{names[r[0]]}–{names[r[-1]]}" for r in runs)
    return ", ".join(ends)


def _row_figures(row: year_drawn.Row) -> dict[str, object]:
    return {
        "plants": row.label,
        "months": [str(cell) for cell in row.cells],
        "flushed": [number for number, flushed in enumerate(row.flushed, 1) if flushed],
    }


# --- the salts -----------------------------------------------------------------------------------


async def salts(turn: Turn) -> out.Answer:
    """What `salts` tells, with the log of the pot drawn; of several the saltiest."""
    answer = await salts_told.salts(turn)
    pots = (answer.details or {}).get("pots")
    if answer.kind != "salts" or not pots:
        return answer
    plant = next(p for p in turn.collection.plants if p.id == pots[0]["plant"])
    (recent,) = await pot_logs(turn, turn.collection, [plant], turn.today)
    (whole,) = await pot_logs(turn, turn.collection, [plant], turn.today, whole=True)
    drawn = salts_of(turn, recent, whole)
    number, first = turn.words.number, drawn.points[0].on
    alt = turn.words.say(
        "picture-salts-alt",
        plant=drawn.title,
        first="none" if first == turn.today else turn.words.day(first, turn.today),
        ec=number(drawn.points[-1].ec, 1),
        limit=number(drawn.ceiling, 1),
    )
    return await _with_picture(turn, answer, salts_drawn.draw, drawn, "sinkside-salts.png", alt)


def salts_of(turn: Turn, recent: PotLog, whole: PotLog) -> salts_drawn.Salts:
    """A pot's log to draw.

    From its last flush on as it is told (`recent`), before that as far as the log goes back.
    """
    words, number = turn.words, turn.words.number
    begins = recent.events[0].on if recent.events else turn.today
    earlier = replace(whole, events=tuple(e for e in whole.events if e.on < begins))
    points = _course(earlier, begins) if earlier.events else []
    points += _course(recent, turn.today)
    last = points[-1]
    kinds = dict.fromkeys(salts_drawn.Done)
    events = tuple(_event(e, turn) for e in (*earlier.events, *recent.events))
    return salts_drawn.Salts(
        title=label(recent.plant, words),
        figure=number(last.ec, 1),
        unit=words.say("picture-salts-unit"),
        between=words.say(
            "picture-salts-between", low=number(last.low, 1), high=number(last.high, 1)
        ),
        points=tuple(points),
        ceiling=recent.ceiling_ec,
        ceiling_told=words.say("picture-salts-limit", limit=number(recent.ceiling_ec, 1)),
        events=events,
        lanes=tuple((k, words.say("picture-salts-lane", kind=str(k))) for k in kinds),
        scale=tuple((value, number(value, 1)) for value in _scale(points, recent.ceiling_ec)),
        days=_days(turn, points[0].on),
    )


def _event(event: PotEvent, turn: Turn) -> salts_drawn.Event:
    kind = salts_drawn.Done(str(event.kind))
    reading = kind is salts_drawn.Done.READING
    return salts_drawn.Event(event.on, kind, turn.words.number(event.ec, 1) if reading else "")


def _course(found: PotLog, until: date) -> list[salts_drawn.Point]:
    """The wet pot before and after each event, and at the end."""
    pot, start = found.pot, found.start

    def point(on: date, state: PotState) -> salts_drawn.Point:
        ec, spread = wet_ec(pot, state), 2 * state.salt_sd / pot.held_l
        return salts_drawn.Point(on, max(0.0, ec - spread), ec, ec + spread)

    points: list[salts_drawn.Point] = []
    before: tuple[date, PotState] | None = None
    for event, state in zip(found.events, simulate(pot, found.events, start=start), strict=True):
        if before is not None and before[0] < event.on:
            points.append(point(event.on, between(pot, before[1], before[0], event.on)))
        points.append(point(event.on, state))
        before = event.on, state
    if before is None or before[0] < until:
        points.append(point(until, found.state(until, start)))
    return points


def _scale(points: Sequence[salts_drawn.Point], ceiling_ec: float) -> list[float]:
    """Where the scale has its lines [mS/cm]: from nothing to over all that is drawn."""
    least = max(ceiling_ec * 1.1, *(p.ec * 1.05 for p in points), 0.1)
    top = min(max(least, *(p.high for p in points)), _HEADROOM * least)
    step = next((s for s in _STEPS if top / s <= _MOST_STEPS), top / _MOST_STEPS)
    return [number * step for number in range(math.ceil(top / step - 1e-9) + 1)]


def _days(turn: Turn, first: date) -> tuple[tuple[date, str], ...]:
    """Where the time has its marks: the months, or some days of a short time."""
    last = turn.today
    if (last - first).days >= _BY_MONTH:
        names = turn.words.months("abbreviated")
        days = (first + timedelta(days=n) for n in range((last - first).days + 1))
        return tuple((d, names[d.month - 1]) for d in days if d.day == 1)
    step = max(7 * math.ceil((last - first).days / 7 / _MOST_DAYS), 7)
    back = range(max((last - first).days, 1) // step + 1)
    days_back = [last - timedelta(days=step * n) for n in reversed(back)]
    return tuple((d, turn.words.axis_day(d)) for d in days_back)


# --- the card ------------------------------------------------------------------------------------


async def card(turn: Turn) -> out.Answer:
    """The last dose, or the one that is asked for, as a card to share."""
    reading = doses.meant(turn)
    if reading is None:
        return turn.ask("ask-no-last")
    asked = replace(turn, reading=reading)
    found = doses.figures(asked, reading)
    if found is None:
        return await doses.answered(asked, reading)
    recovers = await rescue_log.note(turn, found.plants)
    drawn = card_of(turn, found, recovers)
    alt = turn.words.say("picture-card-alt", amount=drawn.amount, of=drawn.of)
    shown = await _with_picture(
        turn, found.answer, card_drawn.draw, drawn, "sinkside-dose.png", alt
    )
    answer = await doses.answered(asked, reading)  # kept for follow-ups
    missing = "" if shown.picture is not None else f"\n{turn.words.say('picture-missing')}"
    return answer.model_copy(update={"picture": shown.picture, "reply": f"{answer.reply}{missing}"})


def card_of(turn: Turn, found: doses.Figures, recovers: str) -> card_drawn.Card:
    """A dose to draw; `recovers` is what to mind of plants that were ill."""
    words, request, dose = turn.words, found.request, found.dose
    answer = found.answer
    strength = f"{words.significant(dose.strength * 100)} %"
    parts = {
        card_drawn.Part.MEASURE: [measure_line(dose, words), makes_line(dose, words)],
        card_drawn.Part.WHY: [
            *(why.text for why in answer.why),
            words.say("picture-card-sum", strength=strength),
            labels(found.plants, words) if found.plants else "",
            *found.notes,
        ],
        card_drawn.Part.MIND: [recovers, *(c.text for c in answer.cautions[:SHOWN_CAUTIONS])],
    }
    return card_drawn.Card(
        amount=words.say("picture-card-amount", amount=shown_amount(dose, words), unit=dose.unit),
        of=words.say(
            "picture-card-of",
            product=product_text(request, found.name, words),
            volume=volume_text(request.volume_l, words),
        ),
        sections=tuple(
            card_drawn.Section(
                part,
                words.say("picture-card-heading", part=str(part)),
                tuple(line for line in lines if line),
            )
            for part, lines in parts.items()
        ),
    )
