"""What else moves reminders: what was logged without being asked, and another home."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime, timedelta

from bot.conversation import answer as out
from bot.conversation.reminding import instant
from bot.conversation.turn import Turn
from bot.conversation.turns.reminders.answers import next_lines
from bot.conversation.turns.reminders.open import ms, newest_open
from bot.conversation.turns.reminders.rules import moment
from bot.conversation.turns.reminders.said import plants_of
from bot.conversation.turns.reminders.work import rests
from bot.records import log, owners, pings, reminders
from bot.records.kinds import CARE, EventKind, PingState, ReminderKind
from bot.records.models import Event, Reminder
from bot.reminders.early import done_early
from bot.reminders.rhythm import Due as Moment
from bot.reminders.rhythm import Rhythm, to_local, to_utc

#: What a log entry of a kind is the doing of.
_DONE_BY = {
    ReminderKind.FLUSH: frozenset({EventKind.FLUSH}),
    ReminderKind.FEED: frozenset({EventKind.FED}),
    ReminderKind.WATER: frozenset({EventKind.FED, EventKind.CLEAR, EventKind.FLUSH}),
}


async def after_log(turn: Turn, answer: out.Answer) -> out.Answer:
    """What was logged answers a ping that waits, or moves a reminder that is coming soon.

    It is one with what was logged: one undo takes both back.
    """
    if turn.owner is None or answer.kind != "log":
        return answer
    async with turn.records.reading() as session:
        live = await reminders.listing(session, turn.owner_id)
        events = await log.last_batch(session, turn.owner_id) if live else []
    events = [e for e in events if e.kind in CARE and e.said_at == turn.incoming.said_at]
    if not events:
        return answer
    opened = {p.reminder_id: p for p in await newest_open(turn, and_new=True)}
    lines = []
    async with turn.records.writing() as session:
        told = log.Said(
            session, turn.owner_id, events[0].batch, turn.today, events[0].said_at, turn.member
        )
        for row in live:
            if not _covered(row, events, turn):
                continue
            if row.id in opened:
                ping_id = opened[row.id].id
                now_ms = ms(told.said_at)
                await pings.settle(session, turn.owner_id, ping_id, PingState.DONE, now_ms=now_ms)
            elif (shifted := await _shifted(told, row, events)) is not None:
                lines += next_lines([shifted], turn)
    if not lines:
        return answer
    return answer.model_copy(update={"reply": "\n".join([answer.reply, *lines])})


def _covered(row: Reminder, events: Sequence[Event], turn: Turn) -> bool:
    """Whether all plants of a reminder that can get it got what it is for."""
    kinds = _DONE_BY.get(row.kind)
    wanted = plants_of(row.target, turn.collection)
    if kinds is None or not wanted:
        return False
    if row.kind is ReminderKind.FLUSH:
        awake = [
            p
            for p in wanted
            if p.medium != "mounted" and not rests(p, turn.today, south=turn.south)
        ]
        wanted = awake or wanted
    got = {e.plant_id for e in events if e.kind in kinds}
    return {p.id for p in wanted} <= got


async def _shifted(told: log.Said, row: Reminder, events: Sequence[Event]) -> Reminder | None:
    """Let a reminder go on from when it was done, where it was done shortly before its due."""
    if row.due_local is None or row.due_ms is None or row.rule is None:
        return None
    rhythm = Rhythm(row.rule, datetime.fromisoformat(row.start), row.zone)
    local = datetime.fromisoformat(row.due_local)
    on = events[0].on
    at = told.said_at
    if on < to_local(at, row.zone).date():
        at = at - timedelta(days=(to_local(at, row.zone).date() - on).days)
    shift = done_early(rhythm, local, at)
    if shift is None or shift.next is None or ms(shift.next.at) == row.due_ms:
        return None
    fields = moment(shift.next)
    fields["start"] = shift.rhythm.start.isoformat(timespec="seconds")
    return await reminders.change(told, row.id, **fields)


async def after_home(turn: Turn, answer: out.Answer) -> out.Answer:
    """Reminders go along to another clock: nine o'clock stays nine o'clock; one with the home."""
    async with turn.records.reading() as session:
        owner = await owners.find(session, turn.incoming.address)
        live = await reminders.listing(session, owner.id) if owner is not None else []
        batch = await log.last_batch(session, owner.id) if owner is not None and live else []
    zone = owner.zone if owner is not None else None
    along = [r for r in live if zone is not None and r.zone != zone]
    if owner is None or zone is None or not along or not batch:
        return answer
    async with turn.records.writing() as session:
        told = log.Said(
            session, owner.id, batch[0].batch, turn.today, batch[0].said_at, turn.member
        )
        for row in along:
            local = to_local(instant(row.due_ms or 0), row.zone)
            occurrence = datetime.fromisoformat(row.due_local) if row.due_local else local
            fields = moment(Moment(to_utc(local, zone), occurrence), moved=row.moved)
            fields["zone"] = zone
            await reminders.change(told, row.id, **fields)
    line = turn.words.say("reminders-moved-along", count=len(along))
    return answer.model_copy(update={"reply": f"{answer.reply}\n{line}"})
