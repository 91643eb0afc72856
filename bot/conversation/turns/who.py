"""Which plants: those that rest, those that are due for a flush."""

from __future__ import annotations

from datetime import date

from bot.conversation import answer as out
from bot.conversation.collection import labels, pick
from bot.conversation.turn import Turn, day_ahead
from bot.conversation.turns.standing.advice import Logged, advice_for
from bot.conversation.turns.standing.pot_logs import logged
from bot.records.models import Plant

#: The middle month of a season in the north.
_MIDDLE = {"winter": 1, "spring": 4, "summer": 7, "autumn": 10}


async def who(turn: Turn) -> out.Answer:
    """Who rests, today or in a season; who is due for a flush today."""
    if not turn.collection.plants:
        return turn.say("plan", "plan-no-plants")
    if turn.order.text == "flush":
        return await _flush(turn)
    day, when, said = _when(turn)
    found = [p for p in _meant(turn) if _rests(p, day, turn)]
    code = "who-rests" if found else "who-rests-none"
    plants = labels(found, turn.words) or "none"
    return turn.say("plants", code, plants=plants, when=when, month=said)


def _when(turn: Turn) -> tuple[date, str, str]:
    """The day that was asked about, what it stands for, and its name; today where none was said.

    Raises
    ------
    UnfitDay
        A stretch was said that is no month: 'last week'.
    """
    month, asked = _month(turn), turn.order.when
    if month is not None and turn.reading.season is not None:
        return date(turn.today.year, month, 15), turn.reading.season, "none"
    if asked is not None and asked.kind == "of_month":
        month = asked.value
    if month is not None:
        name = turn.words.months("wide")[month - 1]
        return date(turn.today.year, month, 15), "month", name
    day = day_ahead(asked, turn.today)
    if day == turn.today:
        return day, "now", "none"
    return day, "day", turn.words.day(day, turn.today)


async def _flush(turn: Turn) -> out.Answer:
    plants = _meant(turn)
    known = await logged(turn, turn.collection, plants, turn.today)
    found = [
        p for p in plants
        if advice_for(
            p, turn.today, south=turn.south, logged=known.get(p.id, Logged())
        ).action == "flush"
    ]  # fmt: skip
    if not found:
        return turn.say("plants", "who-flush-none")
    return turn.say("plants", "who-flush", plants=labels(found, turn.words))


def _meant(turn: Turn) -> list[Plant]:
    target = turn.order.target
    named = target.named_one or target.excepts
    return pick(target, turn.collection) if named else list(turn.collection.plants)


def _month(turn: Turn) -> int | None:
    """The month that was asked about, the middle one of a season."""
    reading = turn.reading
    if reading.month is not None or reading.season is None:
        return reading.month
    middle = _MIDDLE.get(reading.season)
    return None if middle is None else (middle + 5) % 12 + 1 if turn.south else middle


def _rests(plant: Plant, day: date, turn: Turn) -> bool:
    reasons = advice_for(plant, day, south=turn.south).reasons
    return any(r.code.startswith("rest") for r in reasons)
