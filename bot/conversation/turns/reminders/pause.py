"""Reminders that wait until a day, and the hours in which nobody is woken."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, datetime, time, timedelta

from bot.conversation import answer as out
from bot.conversation.reminding import instant
from bot.conversation.turn import Turn, UnfitDay
from bot.conversation.turns.reminders.rules import USUAL, at_day, moment, next_day, shifted
from bot.conversation.turns.reminders.setting import listed
from bot.conversation.turns.reminders.which import on
from bot.records import owners, reminders
from bot.records.models import Reminder
from bot.reminders.catching_up import following
from bot.reminders.quiet import Quiet, awake
from bot.reminders.rhythm import Due, Rhythm, to_local, to_utc
from grammar import Order, read_rhythm


def occurrence_of(row: Reminder, pinged_ms: int | None) -> datetime:
    """What is moved: the one that was pinged and not answered, otherwise the coming one."""
    if pinged_ms is not None:
        return to_local(instant(pinged_ms), row.zone)
    if row.due_local is not None:
        return datetime.fromisoformat(row.due_local)
    return to_local(instant(row.due_ms or 0), row.zone)


async def pause(turn: Turn) -> out.Answer:
    """Let reminders wait until a day."""
    if _until(turn) is None:
        answer = turn.ask("ask-reminder-until")
        waiting = {"kind": "reminder_until", "text": turn.incoming.text}
        return answer.model_copy(update={"details": {"waiting": waiting}})
    if not (turn.order.task or turn.order.target.named_one or turn.order.steps):
        return await _pause(turn, await listed(turn))
    return await on(turn, _pause, several=True)


async def until_told(turn: Turn) -> out.Answer | None:
    """The answer to 'until when?'; None where it is something else."""
    if turn.order.verb in ("no", "skip"):
        return turn.say("reminder", "reminder-kept")
    rhythm, whole = read_rhythm(turn.incoming.text, turn.reading.tongue)
    if rhythm is None or not whole:
        return None
    asked = turn.read_again(str(turn.question["text"])).order
    order = replace(asked or Order("reminder_pause"), rhythm=rhythm)
    reading = replace(turn.reading, order=order, unknown=(), read_as=())
    return await pause(replace(turn, reading=reading, question={}))


def _until(turn: Turn) -> date | None:
    """The day on which reminders come again."""
    said = turn.order.rhythm
    if said is None:
        return None
    today = turn.today
    span = said.span or said.ahead
    if span is not None:
        return shifted(today, *span) if span[1] not in ("hour", "minute") else None
    when = said.until or said.day
    if when is None:
        return None
    local = datetime.combine(today, time())
    return next_day(when, local, time(23, 59))


async def _pause(turn: Turn, found: list[Reminder]) -> out.Answer:
    until = _until(turn)
    if not found or until is None:
        if turn.order.text == "away":  # nothing to pause, and still something to know
            return turn.say("explain", "tell-away")
        return turn.say("reminder", "reminders-none", whose=turn.whose)
    if until <= turn.today:
        raise UnfitDay("refuse-reminder-past")
    waiting = 0
    async with turn.writing() as told:
        for row in found:
            begin = to_utc(datetime.combine(until, time()), row.zone)
            if row.due_ms is None or instant(row.due_ms) >= begin:
                continue
            waiting += 1
            rhythm = Rhythm(row.rule, datetime.fromisoformat(row.start), row.zone)
            just_before = begin - timedelta(microseconds=1)
            then = following(rhythm, just_before, as_said=not row.offered, quiet=turn.quiet)
            moved = then is None
            if then is None:  # what comes once comes then
                at = datetime.fromisoformat(row.start).time()
                then = at_day(until, at or USUAL, occurrence_of(row, None), row.zone)
            await reminders.change(told, row.id, **moment(then, moved=moved))
    return turn.say(
        "reminder",
        "reminders-paused",
        day=turn.words.day(until, turn.today),
        count=waiting,
        choices=("undo",),
    )


async def resume(turn: Turn) -> out.Answer:
    """Let reminders that were put off come again as their rules have it."""
    found = await listed(turn)
    if not found:
        return turn.say("reminder", "reminders-none", whose=turn.whose)
    again = 0
    async with turn.writing() as told:
        for row in found:
            rhythm = Rhythm(row.rule, datetime.fromisoformat(row.start), row.zone)
            then = following(
                rhythm, turn.incoming.said_at, as_said=not row.offered, quiet=turn.quiet
            )
            if then is None or row.due_ms is None or then.at >= instant(row.due_ms):
                continue
            again += 1
            await reminders.change(told, row.id, **moment(then))
    code = "reminders-resumed" if again else "reminders-not-paused"
    return turn.say("reminder", code, count=again, choices=("undo",) if again else ())


async def quiet_hours(turn: Turn) -> out.Answer:
    """Set the hours in which nobody is woken; what we chose in them waits for their end."""
    start, end = turn.order.hours or (None, None)
    quiet = Quiet(
        time(*_hour(start)) if start else turn.quiet.start,
        time(*_hour(end)) if end else turn.quiet.end,
    )
    waiting = [r for r in await listed(turn) if r.offered and r.due_ms is not None]
    async with turn.writing() as told:
        await owners.change_settings(
            told, quiet_from_min=_minute(quiet.start), quiet_until_min=_minute(quiet.end)
        )
        for row in waiting:
            local = occurrence_of(row, None)
            at = instant(row.due_ms or 0) if row.moved else to_utc(local, row.zone)
            then = awake(Due(at, local), row.zone, quiet)
            if then.at != instant(row.due_ms or 0):
                await reminders.change(told, row.id, **moment(then, moved=row.moved))
    if quiet.start == quiet.end:
        return turn.say("reminder", "reminder-quiet-none", choices=("undo",))
    begin, finish = (turn.words.clock(at) for at in (quiet.start, quiet.end))
    return turn.say("reminder", "reminder-quiet-so", start=begin, end=finish, choices=("undo",))


def _minute(at: time) -> int:
    """The minute of the day."""
    return at.hour * 60 + at.minute


def _hour(said: tuple[int, int]) -> tuple[int, int]:
    return said[0] % 24, said[1]
