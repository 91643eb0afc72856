"""What is said right after a reminder was set: another time for it, no reminder, or one more."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from datetime import datetime

from bot.conversation import answer as out
from bot.conversation.turn import Turn
from bot.conversation.turns import diary
from bot.conversation.turns.reminders import answers, change, setting
from bot.conversation.turns.reminders.after import after_log
from bot.conversation.turns.reminders.open import newest_open
from bot.conversation.turns.reminders.rules import as_often
from bot.conversation.turns.reminders.said import plants_of
from bot.conversation.turns.reminders.which import JUST
from bot.records.models import Ping, Reminder
from grammar import Instead, Order, Rhythm, When, after_yes, read_instead

_UNITS = {"DAILY": "day", "WEEKLY": "week", "MONTHLY": "month"}


async def heard(turn: Turn) -> out.Answer | None:
    """The answer to what is about the reminder that was just set; None where it is not."""
    waits = turn.question.get("kind") == "reminder"
    if (turn.question and not waits) or turn.incoming.tapped_at is not None:
        return None
    dropped = turn.order.verb == "no" and turn.order.text == "leave"
    if waits:
        if dropped:
            return turn.say("reminder", "reminder-dropped")
        told = read_instead(turn.incoming.text, turn.reading.tongue)
        return _other_time(turn, told) if told is not None else None
    row = await _just_set(turn)
    opened = await newest_open(turn) if row is None else []
    if (row is None and not opened) or not await turn.administers():
        return None
    if dropped:
        return await change.stop(_with(turn, Order("reminder_stop"))) if row is not None else None
    if opened and (turn.order.verb, turn.order.text) == ("no", "now"):
        return await answers.bare(_with(turn, Order("skip", text="later")))
    told = read_instead(turn.incoming.text, turn.reading.tongue)
    if told is not None:
        rhythm = _as_before(told.rhythm, row) if row is not None else _this_once(told.rhythm)
        return await change.move(_with(turn, Order("reminder_move", rhythm=rhythm)))
    if row is not None:
        return await _one_more(turn)
    return await _done_in_part(turn, opened)


async def _done_in_part(turn: Turn, opened: Sequence[Ping]) -> out.Answer | None:
    """'yes, fed yesterday', 'only watered this time': of the plants that the reminder is about."""
    order, reading = turn.order, turn.reading
    rest = after_yes(turn.incoming.text, turn.reading.tongue)
    if rest and order.verb in ("yes", "fed", "clear", "flush"):
        reading = turn.read_again(rest)
        order = reading.order or order
    plain = order.target.empty and not (order.also or order.steps or turn.chosen)
    if order.verb not in ("fed", "clear", "flush") or not plain:
        return None
    rows = {p.reminder_id for p in opened}
    about = [r for r in await setting.listed(turn) if r.id in rows]
    ids = {p.id for r in about for p in plants_of(r.target, turn.collection)}
    if not ids or reading.problems or reading.conflicts:
        return None
    again = replace(turn, reading=reading, chosen=tuple(sorted(ids)))
    return await after_log(again, await diary.given(again))


def _with(turn: Turn, order: Order) -> Turn:
    return replace(turn, reading=replace(turn.reading, order=order, unknown=(), read_as=()))


async def _just_set(turn: Turn) -> Reminder | None:
    """The reminder that was set within the half hour, where no dose was told since."""
    wanted = turn.recalled.get("reminder")
    if wanted is None:
        return None
    row = next((r for r in await setting.listed(turn) if r.id == wanted), None)
    if row is None or row.created < turn.incoming.said_at - JUST:
        return None
    dose = turn.recalled.get("dose")
    said_at = str(dose.get("said_at", "")) if isinstance(dose, dict) else ""
    return None if said_at and datetime.fromisoformat(said_at) > row.created else row


def _other_time(turn: Turn, told: Instead) -> out.Answer | None:
    """The time of a reminder that waits to know where they live."""
    if turn.question.get("step") != "home":
        return None
    skip = turn.words.say("meet-skip")
    again = turn.ask("ask-remind-home-changed", choices=(skip,))
    waiting = {**turn.question, "rhythm": told.text}
    return again.model_copy(update={"details": {"waiting": waiting}})


def _this_once(said: Rhythm) -> Rhythm:
    """An hour alone, of what was just pinged: today at that hour."""
    return said if said.says_when else replace(said, day=When("day", 0))


def _as_before(said: Rhythm, row: Reminder) -> Rhythm:
    """A day that is named for what comes every week or month is that of each."""
    parts = dict(p.split("=", 1) for p in (row.rule or "").split(";") if p)
    unit = _UNITS.get(parts.get("FREQ", ""), "")
    if not unit or "COUNT" in parts:
        return said
    return as_often(said, int(parts.get("INTERVAL", "1")), unit)


async def _one_more(turn: Turn) -> out.Answer | None:
    """'and once a month a flush': a further reminder, said without a word for it."""
    first, _, rest = turn.incoming.text.strip().partition(" ")
    if first.casefold() not in turn.words.say("reminder-and").split():
        return None
    cue = turn.words.say("reminder-cue")
    reading = turn.read_again(f"{cue} {rest}")
    order = reading.order
    whole = order is not None and order.verb == "remind" and order.task not in ("", "look", "other")
    if order is None or not whole or order.rhythm is None or order.unused:
        return None
    if order.rhythm.doubt or not order.rhythm.says_when:
        return None
    return await setting.remind(replace(turn, reading=reading))
