"""What is answered to a ping: done, later, skip, stop."""

from __future__ import annotations

from collections.abc import Sequence

from bot.conversation import answer as out
from bot.conversation.collection import labels
from bot.conversation.reminding import instant
from bot.conversation.turn import Turn
from bot.conversation.turns import diary
from bot.conversation.turns.day import day as days
from bot.conversation.turns.reminders.open import ms, newest_open, shown_ms
from bot.conversation.turns.reminders.rules import moment
from bot.conversation.turns.reminders.said import comes, what
from bot.conversation.turns.reminders.work import work_for
from bot.records import log, pings, reminders
from bot.records.kinds import EventKind, PingState
from bot.records.models import Ping, Plant, Reminder
from bot.reminders.quiet import later as later_at
from bot.reminders.rhythm import Due as Moment
from bot.reminders.rhythm import to_local


async def done(turn: Turn) -> out.Answer:
    """Log what a ping was for; where none waits, tick off the plan, or log a dose told just now."""
    narrowed = bool(turn.order.steps) or not turn.order.target.empty
    opened = [] if narrowed else await newest_open(turn)
    if not opened or _plan_is_newer(turn, opened):
        dosed = await diary.dose_given(turn) if not _plan_is_open(turn) else None
        return dosed if dosed is not None else await days.done(turn)
    found = await _reminders_of(turn, opened)
    work = await work_for(found, turn, turn.today)
    entries = work.entries(turn.today)
    settled = []
    async with turn.writing() as told:
        for ping in opened:
            state = PingState.DONE
            kept = await pings.settle(
                told.session, told.owner_id, ping.id, state, now_ms=ms(told.said_at)
            )
            settled += [kept] if kept is not None else []
        if settled:
            await log.record(told, entries)
    if not settled:
        return turn.say("log", "done-nothing")
    lines = [_logged(entries, turn)] if entries else [turn.words.say("ping-noted")]
    lines += next_lines(found, turn)
    return turn.tell("log", lines, choices=("undo",) if entries else ())


def _logged(entries: Sequence[log.Entry], turn: Turn) -> str:
    by_kind: dict[EventKind, list[Plant]] = {}
    standing = {p.id: p for p in turn.collection.plants}
    for entry in entries:
        by_kind.setdefault(entry.kind, []).append(standing[entry.plant_id or 0])
    facts = [
        turn.words.say(f"done-{kind}", plants=labels(plants, turn.words))
        for kind, plants in by_kind.items()
    ]
    return turn.words.say("done-logged", what="; ".join(facts))


def next_lines(found: Sequence[Reminder], turn: Turn) -> list[str]:
    coming = [r for r in found if r.due_ms is not None]
    if len(coming) != 1:
        return []
    row = coming[0]
    then = comes(row.due_ms or 0, row.zone, turn)
    return [turn.words.say("reminder-next", what=what(row, turn), next=then)]


def _plan_is_open(turn: Turn) -> bool:
    """Whether a plan of today was asked for and is not all done."""
    plan = turn.remembered.get("plan")
    if not isinstance(plan, dict) or plan.get("day") != turn.today.isoformat():
        return False
    return bool({i for g in plan["groups"].values() for i in g["ids"]} - set(plan["ticked"]))


def _plan_is_newer(turn: Turn, opened: Sequence[Ping]) -> bool:
    """Whether a plan of today was asked for after the ping, and is not all done."""
    kept = turn.recalled.get("plan")
    if not isinstance(kept, dict) or kept.get("day") != turn.today.isoformat():
        return False
    ids = {i for g in kept["groups"].values() for i in g["ids"]}
    if turn.incoming.tapped_at is not None or not ids - set(kept["ticked"]):
        return False
    pinged_ms = max(map(shown_ms, opened))
    return turn.recalled_at is not None and ms(turn.recalled_at) > pinged_ms


async def bare(turn: Turn) -> out.Answer | None:
    """'later', 'skip' and 'stop' to a ping; None where there is none to answer."""
    verb, text = turn.order.verb, turn.order.text
    if verb not in ("skip", "no") or (verb == "no" and text != "stop"):
        return None
    if text == "stop":
        from bot.conversation.turns.reminders import change as reminders_change

        if not await newest_open(turn) and not await _any(turn):
            return None
        if not await turn.administers():
            return turn.refuse("refuse-administrators-reminders")
        return await reminders_change.stop(turn)
    opened = await newest_open(turn)
    if not opened:
        return turn.say("reminder", "reminder-not-now") if text == "now" else None
    if not await turn.administers():  # as at the buttons: when all are reminded is not theirs
        return turn.refuse("refuse-administrators-reminders")
    return await (_later if text in ("later", "now") else _skip)(turn, opened)


async def _any(turn: Turn) -> bool:
    async with turn.records.reading() as session:
        return turn.owner is not None and bool(await reminders.listing(session, turn.owner_id))


async def _later(turn: Turn, opened: Sequence[Ping]) -> out.Answer:
    found = {r.id: r for r in await _reminders_of(turn, opened)}
    when = ""
    async with turn.writing() as told:
        for ping in opened:
            row = found[ping.reminder_id]
            at = later_at(turn.by_now, row.zone, turn.quiet)
            kept = await pings.settle(
                told.session, told.owner_id, ping.id, PingState.LATER, now_ms=ms(told.said_at)
            )
            if kept is None:
                continue
            due = Moment(at, to_local(instant(ping.due_ms), row.zone))
            await reminders.change(told, row.id, **moment(due, moved=True))
            when = comes(ms(at), row.zone, turn)
    if not when:
        return turn.say("reminder", "ping-answered")
    return turn.say("reminder", "ping-again", next=when)


async def _skip(turn: Turn, opened: Sequence[Ping]) -> out.Answer:
    from bot.conversation.turns.reminders.change import skipped

    found = {r.id: r for r in await _reminders_of(turn, opened)}
    lines = []
    async with turn.writing() as told:
        for ping in opened:
            kept = await pings.settle(
                told.session, told.owner_id, ping.id, PingState.SKIPPED, now_ms=ms(told.said_at)
            )
            if kept is not None:
                row = found[ping.reminder_id]
                lines.append(skipped(turn, what(row, turn), row))
    return turn.tell("reminder", lines or [turn.words.say("ping-answered")])


async def _reminders_of(turn: Turn, opened: Sequence[Ping]) -> list[Reminder]:
    async with turn.records.reading() as session:
        return [
            await reminders.get(session, turn.owner_id, number)
            for number in dict.fromkeys(p.reminder_id for p in opened)
        ]
