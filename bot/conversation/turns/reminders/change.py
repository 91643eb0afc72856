"""Reminders that are there: moved, passed over, stopped; `HANDLERS` has them all."""

from __future__ import annotations

from collections.abc import Awaitable, Callable
from dataclasses import replace
from datetime import UTC, date, datetime, time, timedelta

from bot.conversation import answer as out
from bot.conversation.reminding import instant
from bot.conversation.turn import Turn, UnfitDay
from bot.conversation.turns.reminders.open import newest_open
from bot.conversation.turns.reminders.pause import occurrence_of, pause, quiet_hours, resume
from bot.conversation.turns.reminders.rules import (
    at_day,
    clock_of,
    fit,
    make,
    moment,
    next_day,
    shifted,
)
from bot.conversation.turns.reminders.said import comes, plants_of, what
from bot.conversation.turns.reminders.setting import last_done, line, listed
from bot.conversation.turns.reminders.which import on, which
from bot.records import log, pings, reminders
from bot.records.kinds import PingState
from bot.records.models import Reminder
from bot.reminders.catching_up import following
from bot.reminders.rhythm import Due, Rhythm, to_local, to_utc
from grammar import Order, When


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
    order = turn.read_again(asked).order or Order("reminders")
    handler = HANDLERS.get(order.verb, stop)  # a bare 'stop' is one
    question = {"ids": ids, "text": asked}
    reading = replace(turn.reading, order=order, unknown=(), read_as=())
    return await handler(replace(turn, reading=reading, question=question))


# --- stop ---------------------------------------------------------------------------------------


async def stop(turn: Turn) -> out.Answer:
    """End reminders."""
    return await on(turn, _stop, several=True)


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
    return await on(turn, _move, several=False)


async def _move(turn: Turn, found: list[Reminder]) -> out.Answer:
    row, said = found[0], turn.order.rhythm
    if len(found) > 1:
        return which(turn, found, "ask-reminder-which")
    assert said is not None  # `move` asked
    if said.recurs:
        return await _anew(turn, row)
    if not said.says_when:
        return await _at_another_hour(turn, row)
    opened = [p for p in await newest_open(turn) if p.reminder_id == row.id]
    occurrence = occurrence_of(row, opened[0].due_ms if opened else None)
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


async def _anew(turn: Turn, row: Reminder) -> out.Answer:
    """Another rhythm, for good."""
    said = turn.order.rhythm
    assert said is not None
    kept = said.clock is None and not said.part
    if kept:
        before = datetime.fromisoformat(row.start)
        said = replace(said, clock=(before.hour, before.minute))
    last = last_done(str(row.kind), plants_of(row.target, turn.collection))
    made = make(
        said, turn.incoming.said_at, row.zone, south=turn.south, last=last, quiet=turn.quiet
    )
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


async def not_then(turn: Turn) -> out.Answer:
    """Days on which none shall come: said as those on which it shall."""
    return turn.ask(
        "ask-reminder-not-then" if await listed(turn) else "reminders-none", whose=turn.whose
    )


# --- pass over ----------------------------------------------------------------------------------


async def skip(turn: Turn) -> out.Answer:
    """Pass the coming one over, or the one that was just pinged."""
    said = turn.order.rhythm
    if turn.order.text == "on" and said is not None and said.day is not None:
        return await _skip_on(turn, said.day)
    return await on(turn, _skip, several=False)


async def _skip_on(turn: Turn, said: When) -> out.Answer:
    """Pass over what comes on that day; where nothing does, say what comes next."""
    found = await listed(turn)
    if not found:
        return turn.say("reminder", "reminders-none", whose=turn.whose)

    def local(row: Reminder) -> datetime:
        return to_local(instant(row.due_ms or 0), row.zone)

    here = to_local(turn.incoming.said_at, found[0].zone)
    day = next_day(said, datetime.combine(here.date(), time()), time(23, 59))
    then = [r for r in found if r.due_ms is not None and local(r).date() == day]
    if not then:
        row = found[0]
        coming = comes(row.due_ms or 0, row.zone, turn)
        return turn.say("reminder", "reminder-not-due", what=what(row, turn), next=coming)
    async with turn.writing() as told:
        lines = [await _skip_one(turn, told, row, None) for row in then]
    return turn.tell("reminder", lines, choices=("undo",))


async def _skip(turn: Turn, found: list[Reminder]) -> out.Answer:
    if len(found) > 1 and turn.question.get("ids") is None:
        return which(turn, found, "ask-reminder-which")
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
    after = to_utc(occurrence_of(row, None), row.zone)
    end = _end_of(turn.order.text, to_local(turn.incoming.said_at, row.zone).date())
    if end is not None:
        limit = to_utc(datetime.combine(end, time()), row.zone)
        if instant(row.due_ms or 0) >= limit:
            return turn.words.say(
                "reminder-not-due", what=about, next=comes(row.due_ms or 0, row.zone, turn)
            )
        after = max(after, limit - timedelta(microseconds=1))
    rhythm = Rhythm(row.rule, datetime.fromisoformat(row.start), row.zone)
    then = following(rhythm, after, as_said=not row.offered, quiet=turn.quiet)
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


HANDLERS: dict[str, Callable[[Turn], Awaitable[out.Answer]]] = {
    "reminder_stop": stop,
    "reminder_skip": skip,
    "reminder_move": move,
    "reminder_pause": pause,
    "reminder_resume": resume,
    "reminder_quiet": quiet_hours,
    "reminder_not_then": not_then,
}
