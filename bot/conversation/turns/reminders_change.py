"""Reminders that are there: moved, passed over, paused, stopped."""

from __future__ import annotations

from collections.abc import Awaitable, Callable, Sequence
from dataclasses import replace
from datetime import UTC, date, datetime, time, timedelta
from typing import Any, TypeAlias

from bot.conversation import answer as out
from bot.conversation.collection import names_in
from bot.conversation.reminding import instant
from bot.conversation.turn import Turn, UnfitDay
from bot.conversation.turns.reminders import last_done, line, listed
from bot.conversation.turns.reminders_pings import newest_open
from bot.conversation.turns.reminders_rules import (
    USUAL,
    at_day,
    clock_of,
    fit,
    make,
    moment,
    next_day,
    shifted,
)
from bot.conversation.turns.reminders_said import clock, comes, plants_of, what
from bot.records import log, pings, reminders
from bot.records.kinds import PingState
from bot.records.models import Reminder
from bot.reminders.catching_up import following
from bot.reminders.quiet import USUAL as USUAL_QUIET
from bot.reminders.rhythm import Due, Rhythm, to_local, to_utc
from grammar import Order, Target, read, read_rhythm

#: What was set so lately is what 'stop' and 'move it' mean.
JUST = timedelta(minutes=30)

Act: TypeAlias = Callable[[Turn, list[Reminder]], Awaitable[out.Answer]]


# --- which --------------------------------------------------------------------------------------


async def _on(turn: Turn, act: Act, *, several: bool) -> out.Answer:
    """Do something with the reminders that are meant; ask where it is not clear which.

    `several` where it can be done to more than one at once.
    """
    found = await listed(turn)
    if not found:
        return turn.say("reminder", "reminders-none", whose=turn.whose)
    ids = turn.question.get("ids")
    if ids is not None:
        chosen = [r for r in found if r.id in ids]
        return await act(turn, chosen) if chosen else turn.say("reminder", "reminder-gone")
    order = turn.order
    if any(not 1 <= n <= len(found) for n in order.steps):
        return turn.ask("ask-reminder-number", count=len(found))
    if order.steps:
        return await act(turn, [found[n - 1] for n in dict.fromkeys(order.steps)])
    if order.target.everything and not order.target.named_one and not order.task:
        return await act(turn, found)
    fitting = [r for r in found if _fits(r, turn)]
    if not fitting:
        return _which(turn, found, "ask-reminder-none-such")
    said = bool(order.task) or order.target.named_one
    if len(fitting) > 1 and not said:
        fitting = await _lately(turn, fitting) or fitting
    if len(fitting) > 1 and not (several and said):
        return _which(turn, fitting, "ask-reminder-which")
    return await act(turn, fitting)


def _fits(row: Reminder, turn: Turn) -> bool:
    """Whether a reminder is one of those that were meant by their task or plants."""
    order = turn.order
    if order.task and str(row.kind) != order.task:
        return False
    target = order.target
    if not target.named_one:
        return True
    meant = {p.id for p in plants_of(_as_kept(target, turn), turn.collection)}
    own = set(row.target.get("genera", ())) & set(target.genera)
    place = target.place is not None and row.target.get("place") == target.place
    ids = {p.id for p in plants_of(row.target, turn.collection)}
    narrow = not row.target.get("everything")
    return bool(own or place or (narrow and meant & ids) or (meant and meant == ids))


def _as_kept(target: Target, turn: Turn) -> dict[str, Any]:
    names = {n.casefold() for n in target.names}
    ids = [p.id for p in turn.collection.plants if p.name and p.name.casefold() in names]
    return {"plants": ids, "genera": list(target.genera), "place": target.place}


async def _lately(turn: Turn, found: Sequence[Reminder]) -> list[Reminder]:
    """The one that was pinged last and not answered, or else the one that was just set."""
    opened = {p.reminder_id for p in await newest_open(turn)}
    pinged = [r for r in found if r.id in opened]
    if pinged:
        return pinged
    since = turn.incoming.said_at - JUST
    return [r for r in found if r.id == turn.recalled.get("reminder") and r.created >= since]


def _which(turn: Turn, found: Sequence[Reminder], code: str) -> out.Answer:
    lines = [turn.words.say(code), *(f"{n}. {line(r, turn)}" for n, r in enumerate(found, 1))]
    numbers = tuple(str(n) for n in range(1, len(found) + 1))
    choices = (*numbers[:8], turn.words.say("reminder-all"))
    answer = turn.tell("ask", lines, choices=choices)
    waiting = {
        "kind": "reminder_which",
        "text": turn.question.get("text", turn.incoming.text),
        "shown": [r.id for r in found],
    }
    return answer.model_copy(update={"ask": answer.reply, "details": {"waiting": waiting}})


async def picked(turn: Turn) -> out.Answer | None:
    """The answer to 'which one?'; None where it is something else."""
    text = turn.incoming.text.strip().casefold().rstrip(".!")
    shown: list[int] = turn.question["shown"]
    if turn.order.verb == "no" and text != turn.words.say("reminder-all"):
        return turn.say("reminder", "reminder-kept")
    if text.isdecimal() and 1 <= int(text) <= len(shown):
        ids = [shown[int(text) - 1]]
    elif turn.order.target.everything and not turn.order.target.named_one:
        ids = shown
    else:
        return None
    asked = str(turn.question["text"])
    order = read(asked, turn.reading.language, names=names_in(turn.collection)).order or Order(
        "reminders"
    )
    handler = HANDLERS.get(order.verb, stop)  # a bare 'stop' is one
    question = {"ids": ids, "text": asked}
    reading = replace(turn.reading, order=order, unknown=(), read_as=())
    return await handler(replace(turn, reading=reading, question=question))


# --- stop ---------------------------------------------------------------------------------------


async def stop(turn: Turn) -> out.Answer:
    """End reminders."""
    return await _on(turn, _stop, several=True)


async def _stop(turn: Turn, found: list[Reminder]) -> out.Answer:
    listed_ = turn.words.listed([what(r, turn) for r in found[:6]])
    async with turn.writing() as told:
        await reminders.end(told, [r.id for r in found])
    return turn.say(
        "reminder", "reminder-stopped", what=listed_, count=len(found), choices=("undo",)
    )


# --- move ---------------------------------------------------------------------------------------


async def move(turn: Turn) -> out.Answer:
    """Move one to another day this once, or change its rhythm for good."""
    said = turn.order.rhythm
    if said is not None and said.doubt:
        return turn.ask(f"ask-rhythm-{said.doubt.replace('_', '-')}")
    if said is None:
        return turn.ask("ask-reminder-move")
    return await _on(turn, _move, several=False)


async def _move(turn: Turn, found: list[Reminder]) -> out.Answer:
    row, said = found[0], turn.order.rhythm
    if len(found) > 1:
        return _which(turn, found, "ask-reminder-which")
    assert said is not None  # `move` asked
    if said.recurs:
        return await _anew(turn, row)
    if not said.says_when:
        return await _at_another_hour(turn, row)
    opened = [p for p in await newest_open(turn) if p.reminder_id == row.id]
    occurrence = _occurrence(row, opened[0].due_ms if opened else None)
    local = to_local(turn.incoming.said_at, row.zone)
    at = clock_of(said) if said.clock or said.part else occurrence.time()
    if said.ahead is not None and said.ahead[1] in ("hour", "minute"):
        hours = said.ahead[0] * (3600 if said.ahead[1] == "hour" else 60)
        base = max(to_utc(occurrence, row.zone), turn.incoming.said_at)
        due = Due((base + timedelta(seconds=hours)).astimezone(UTC), occurrence)
    elif said.ahead is not None:
        base_day = max(occurrence.date(), local.date())
        due = at_day(shifted(base_day, *said.ahead), at, occurrence, row.zone)
    elif said.day is not None:
        due = at_day(next_day(said.day, local, at), at, occurrence, row.zone)
    else:
        made = make(replace(said, clock=(at.hour, at.minute)), turn.incoming.said_at, row.zone)
        due = Due(made.due.at, occurrence)
    if due.at <= turn.incoming.said_at:
        raise UnfitDay("refuse-reminder-past")
    async with turn.writing() as told:
        for ping in opened:
            await _settle(told, ping.id, PingState.LATER)
        row = await reminders.change(told, row.id, **moment(due, moved=True))
    again = row.rule is not None and "COUNT=1" not in row.rule
    return turn.say(
        "reminder",
        "reminder-moved",
        what=what(row, turn),
        next=comes(row.due_ms or 0, row.zone, turn),
        again="yes" if again else "no",
        choices=("undo",),
    )


def _occurrence(row: Reminder, pinged_ms: int | None) -> datetime:
    """What is moved: the one that was pinged and not answered, otherwise the coming one."""
    if pinged_ms is not None:
        return to_local(instant(pinged_ms), row.zone)
    if row.due_local is not None:
        return datetime.fromisoformat(row.due_local)
    return to_local(instant(row.due_ms or 0), row.zone)


async def _anew(turn: Turn, row: Reminder) -> out.Answer:
    """Another rhythm, for good."""
    said = turn.order.rhythm
    assert said is not None
    kept = said.clock is None and not said.part
    if kept:
        before = datetime.fromisoformat(row.start)
        said = replace(said, clock=(before.hour, before.minute))
    last = last_done(str(row.kind), plants_of(row.target, turn.collection))
    made = make(said, turn.incoming.said_at, row.zone, south=turn.south, last=last)
    fields = made.fields
    fields["offered"] = row.offered if kept else not made.as_said
    async with turn.writing() as told:
        row = await reminders.change(told, row.id, **fields)
    return turn.say("reminder", "reminder-changed", line=line(row, turn), choices=("undo",))


async def _at_another_hour(turn: Turn, row: Reminder) -> out.Answer:
    """Another clock time, for good."""
    said = turn.order.rhythm
    assert said is not None
    start = datetime.combine(datetime.fromisoformat(row.start).date(), clock_of(said))
    if row.rule is None and row.due_local is not None:
        day = datetime.fromisoformat(row.due_local).date()
        start = datetime.combine(day, clock_of(said))
    made = fit(row.rule, start, row.zone, turn.incoming.said_at, as_said=True)
    async with turn.writing() as told:
        row = await reminders.change(told, row.id, **made.fields)
    return turn.say("reminder", "reminder-changed", line=line(row, turn), choices=("undo",))


# --- pass over ----------------------------------------------------------------------------------


async def skip(turn: Turn) -> out.Answer:
    """Pass the coming one over, or the one that was just pinged."""
    return await _on(turn, _skip, several=False)


async def _skip(turn: Turn, found: list[Reminder]) -> out.Answer:
    if len(found) > 1 and turn.question.get("ids") is None:
        return _which(turn, found, "ask-reminder-which")
    opened = {p.reminder_id: p.id for p in await newest_open(turn)}
    lines = []
    async with turn.writing() as told:
        for row in found:
            lines.append(await _skip_one(turn, told, row, opened.get(row.id)))
    return turn.tell("reminder", lines, choices=("undo",))


async def _skip_one(turn: Turn, told: log.Said, row: Reminder, ping_id: int | None) -> str:
    about = what(row, turn)
    if ping_id is not None:
        await _settle(told, ping_id, PingState.SKIPPED)
        return skipped(turn, about, row)
    after = to_utc(_occurrence(row, None), row.zone)
    end = _end_of(turn.order.text, to_local(turn.incoming.said_at, row.zone).date())
    if end is not None:
        limit = to_utc(datetime.combine(end, time()), row.zone)
        if instant(row.due_ms or 0) >= limit:
            return turn.words.say(
                "reminder-not-due", what=about, next=comes(row.due_ms or 0, row.zone, turn)
            )
        after = max(after, limit - timedelta(microseconds=1))
    rhythm = Rhythm(row.rule, datetime.fromisoformat(row.start), row.zone)
    then = following(rhythm, after, as_said=not row.offered)
    if then is None:
        await reminders.end(told, [row.id])
        return turn.words.say("reminder-skipped", what=about, next="none")
    return skipped(turn, about, await reminders.change(told, row.id, **moment(then)))


def skipped(turn: Turn, about: str, row: Reminder) -> str:
    """That it passes this time, and when it comes next."""
    then = comes(row.due_ms, row.zone, turn) if row.due_ms is not None else "none"
    return turn.words.say("reminder-skipped", what=about, next=then)


def _end_of(stretch: str, today: date) -> date | None:
    """The first day after a stretch that is passed over; None for one occurrence."""
    if stretch == "week":
        return today + timedelta(days=8 - today.isoweekday())
    if stretch == "month":
        return shifted(today.replace(day=1), 1, "month")
    return today + timedelta(days=1) if stretch == "day" else None


async def _settle(told: log.Said, ping_id: int, state: PingState) -> None:
    now_ms = round(told.said_at.timestamp() * 1000)
    await pings.settle(told.session, told.owner_id, ping_id, state, now_ms=now_ms)


# --- pause --------------------------------------------------------------------------------------


async def pause(turn: Turn) -> out.Answer:
    """Let reminders wait until a day."""
    if _until(turn) is None:
        answer = turn.ask("ask-reminder-until")
        waiting = {"kind": "reminder_until", "text": turn.incoming.text}
        return answer.model_copy(update={"details": {"waiting": waiting}})
    if not (turn.order.task or turn.order.target.named_one or turn.order.steps):
        return await _pause(turn, await listed(turn))
    return await _on(turn, _pause, several=True)


async def until_told(turn: Turn) -> out.Answer | None:
    """The answer to 'until when?'; None where it is something else."""
    if turn.order.verb in ("no", "skip"):
        return turn.say("reminder", "reminder-kept")
    rhythm, whole = read_rhythm(turn.incoming.text, turn.reading.language)
    if rhythm is None or not whole:
        return None
    asked = read(
        str(turn.question["text"]), turn.reading.language, names=names_in(turn.collection)
    ).order
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
            then = following(rhythm, just_before, as_said=not row.offered)
            moved = then is None
            if then is None:  # what comes once comes then
                at = datetime.fromisoformat(row.start).time()
                then = at_day(until, at or USUAL, _occurrence(row, None), row.zone)
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
            then = following(rhythm, turn.incoming.said_at, as_said=not row.offered)
            if then is None or row.due_ms is None or then.at >= instant(row.due_ms):
                continue
            again += 1
            await reminders.change(told, row.id, **moment(then))
    code = "reminders-resumed" if again else "reminders-not-paused"
    return turn.say("reminder", code, count=again, choices=("undo",) if again else ())


async def quiet_hours(turn: Turn) -> out.Answer:
    """The hours in which nobody is woken."""
    start, end = turn.order.hours or (None, None)
    usual = (USUAL_QUIET.start, USUAL_QUIET.end)
    wanted = (time(*_hour(start)) if start else usual[0], time(*_hour(end)) if end else usual[1])
    code = "reminder-quiet-so" if wanted == usual else "reminder-quiet-fixed"
    begin, finish = (clock(at, turn.words) for at in usual)
    return turn.say("reminder", code, start=begin, end=finish)


def _hour(said: tuple[int, int]) -> tuple[int, int]:
    return said[0] % 24, said[1]


HANDLERS: dict[str, Callable[[Turn], Awaitable[out.Answer]]] = {
    "reminder_stop": stop,
    "reminder_skip": skip,
    "reminder_move": move,
    "reminder_pause": pause,
    "reminder_resume": resume,
    "reminder_quiet": quiet_hours,
}
