"""A calendar file of the coming year: the reminders that are set, and the rests by genus."""

from __future__ import annotations

import asyncio
from collections.abc import Sequence
from dataclasses import replace
from datetime import date, datetime, time

from bot.conversation import answer as out
from bot.conversation.collection import labels, pick, plants_said
from bot.conversation.reminding import instant
from bot.conversation.turn import Turn
from bot.conversation.turns.reminders.asked import home_told
from bot.conversation.turns.reminders.offer import FLUSH, fitting, turns_of
from bot.conversation.turns.reminders.rules import USUAL, fit, shifted
from bot.conversation.turns.reminders.said import cadence, plants_of, whom
from bot.conversation.turns.reminders.setting import UTC, listed
from bot.conversation.turns.standing.advice import genus_of
from bot.dosing.plants import Genus
from bot.records import owners
from bot.records.kinds import ReminderKind, ReminderState
from bot.records.models import Owner, Plant, Reminder
from bot.reminders import ics
from bot.reminders.catching_up import Waiting
from bot.reminders.rhythm import Rhythm, UnfitRule, to_local, to_utc


async def calendar(turn: Turn) -> out.Answer:
    """The file; where rests are to be in it, it is asked first on which side of the equator."""
    plants = _meant(turn)
    if isinstance(plants, out.Answer):
        return plants
    if _by_genus(plants, south=turn.south) and not _side_known(turn) and await turn.administers():
        skip = turn.words.say("meet-skip")
        answer = turn.ask("ask-calendar-home", choices=(skip,))
        chosen = [p.id for p in plants] if _named(turn) else None
        waiting = {"kind": "reminder_calendar", "plants": chosen}
        return answer.model_copy(update={"details": {"waiting": waiting}})
    return await _given(turn, plants)


async def answered(turn: Turn) -> out.Answer | None:
    """What the answer to 'where do you live?' leads to; None where it is none."""
    await turn.administers()  # which the file asks after the home is written
    answer = await home_told(turn, _after_home)
    if answer is None or answer.kind != "ask":
        return answer
    async with turn.records.reading() as session:
        owner = await owners.find(session, turn.incoming.address)
    if owner is None or owner.hemisphere is None:
        return answer
    return await _after_home(replace(turn, owner=owner), None)  # the side is all it needs


async def _after_home(turn: Turn, _zone: str | None) -> out.Answer:
    ids = turn.question.get("plants")
    plants = [p for p in turn.collection.plants if ids is None or p.id in ids]
    reading = replace(turn.reading, unknown=(), read_as=())
    return await _given(replace(turn, reading=reading), plants, only=ids is not None)


# --- whose --------------------------------------------------------------------------------------


def _named(turn: Turn) -> bool:
    """Whether only some of the plants are meant."""
    target = turn.order.target
    return target.named_one or bool(target.traits or target.medium)


def _meant(turn: Turn) -> list[Plant] | out.Answer:
    target, collection = turn.order.target, turn.collection
    if not _named(turn):
        return list(collection.plants)
    found = pick(target, collection, turn.last_plants)
    if found:
        return found
    known = labels(collection.plants[:5], turn.words)
    return turn.ask(
        "ask-not-on-record", meant=plants_said(target, turn.words), known=known or "none"
    )


def _side_known(turn: Turn) -> bool:
    owner = turn.owner
    told = owner is not None and (owner.zone is not None or owner.hemisphere is not None)
    return told or turn.incoming.south


# --- the file -----------------------------------------------------------------------------------


async def _given(turn: Turn, plants: Sequence[Plant], *, only: bool | None = None) -> out.Answer:
    """The file with what is said beside it."""
    only = _named(turn) if only is None else only
    kept = {p.id for p in plants}
    rows = [r for r in await listed(turn) if not only or _concerns(r, turn, kept)]
    active = [r for r in rows if r.state is ReminderState.ACTIVE]
    until = shifted(turn.today, 1, "year")
    owner = turn.owner
    series: list[ics.Series] = []
    days: list[ics.Day] = []
    if owner is not None:
        series = [one for r in active if (one := _series(r, turn, owner, until)) is not None]
        days = _rests(turn, owner, plants, until)
    notes, choices = await _notes(turn, rows, plants, rests=bool(days))
    if not (series or days):
        none = turn.words.say("calendar-none", whose=turn.whose)
        return turn.tell("calendar", [none, *notes], choices=choices)
    content = await asyncio.to_thread(ics.calendar_of, series, days, turn.incoming.said_at)
    name = f"sinkside-{turn.today.isoformat()}.ics"
    file = out.File(name=name, media_type="text/calendar", content=content)
    counts = {"reminders": len(series), "rests": len(days)}
    what = turn.words.listed(
        [turn.words.say(f"calendar-{code}", count=n) for code, n in counts.items() if n]
    )
    head = turn.words.say("calendar-done", until=turn.words.day(until, turn.today), what=what)
    lines = [head, *notes, turn.words.say("calendar-copy")]
    return turn.tell("calendar", lines, choices=choices, details=dict(counts), file=file)


def _concerns(row: Reminder, turn: Turn, kept: set[int]) -> bool:
    return not kept.isdisjoint(p.id for p in plants_of(row.target, turn.collection))


def _uid(owner: Owner, *parts: str | int) -> str:
    """Of the owner's number and when they came, which tells two installations apart."""
    return ics.uid_of(owner.id, int(owner.created_at.timestamp()), *parts)


# --- reminders ------------------------------------------------------------------------------------


def _series(row: Reminder, turn: Turn, owner: Owner, until: date) -> ics.Series | None:
    """A reminder with what comes of it in the year; None where nothing does."""
    if row.due_ms is None:
        return None
    try:
        rhythm = Rhythm.of(row.rule, row.start, row.zone)
        waiting = Waiting(
            row.id,
            rhythm,
            instant(row.due_ms),
            datetime.fromisoformat(row.due_local) if row.due_local is not None else None,
            as_said=not row.offered,
            moved=row.moved,
        )
        before = to_utc(datetime.combine(until, time()), row.zone)
        dues = ics.occurrences(waiting, turn.incoming.said_at, before, turn.quiet)
    except UnfitRule:  # of an import that was edited: it ends where it is due
        return None
    if not dues:
        return None
    return ics.Series(
        _uid(owner, "reminder", row.id), _title(row, turn), _described(row, turn), rhythm, dues
    )


def _title(row: Reminder, turn: Turn) -> str:
    if row.text:
        return row.text
    plants = whom(row.target, turn) or "none"
    return turn.words.say("calendar-title", kind=str(row.kind), plants=plants)


def _described(row: Reminder, turn: Turn) -> str:
    """How often it comes, which plants it is about now, and where the amounts are."""
    words = turn.words
    often = cadence(row, words)
    plants = labels(plants_of(row.target, turn.collection), words)
    dosed = row.kind in (ReminderKind.FLUSH, ReminderKind.FEED, ReminderKind.WATER)
    lines = [
        words.say("calendar-often", often=often) if often else "",
        words.say("calendar-plants", plants=plants) if plants else "",
        words.say("calendar-amounts") if dosed else "",
    ]
    return "\n".join(line for line in lines if line)


# --- rests ----------------------------------------------------------------------------------------


def _by_genus(plants: Sequence[Plant], *, south: bool) -> dict[Genus, list[Plant]]:
    """The plants by the kinds that rest for a part of the year."""
    found: dict[Genus, list[Plant]] = {}
    for plant in plants:
        genus = genus_of(plant)
        if genus is not None and turns_of(genus, south=south):
            found.setdefault(genus, []).append(plant)
    return found


def _rests(turn: Turn, owner: Owner, plants: Sequence[Plant], until: date) -> list[ics.Day]:
    """The days on which a rest begins or ends, from today until a year has passed."""
    made = []
    for genus, of_it in _by_genus(plants, south=turn.south).items():
        named = labels(of_it, turn.words)
        for month in turns_of(genus, south=turn.south):
            on = date(turn.today.year, month, 1)
            on = on if on >= turn.today else on.replace(year=on.year + 1)
            if on >= until:
                continue
            begins = genus.rests_in(month, south=turn.south)
            code = "rest-begins" if begins else "rest-ends"
            dry = "yes" if genus.rest_kind == "dry" else "no"
            said = {"plants": genus.name, "dry": dry} if begins else {"plants": genus.name}
            day = ics.Day(
                _uid(owner, "rest", genus.name, on.isoformat()),
                turn.words.say(f"calendar-{code}", plants=named),
                turn.words.say(f"ping-{code}", **said),
                on,
            )
            made.append(day)
    return sorted(made, key=lambda day: (day.on, day.title))


# --- what is said beside it -----------------------------------------------------------------------


async def _notes(
    turn: Turn, rows: Sequence[Reminder], plants: Sequence[Plant], *, rests: bool
) -> tuple[list[str], tuple[str, ...]]:
    """What is not in it and would be due, and what was taken for lack of knowing."""
    words, notes = turn.words, []
    choices: tuple[str, ...] = ()
    held = sum(r.state is ReminderState.PAUSED for r in rows)
    flushes = any(r.kind is ReminderKind.FLUSH for r in rows)
    wanted = any(o.kind is ReminderKind.FLUSH for o in fitting(plants, south=turn.south))
    if wanted and not flushes:
        day = words.day(_next_flush(turn), turn.today)
        notes.append(words.say("calendar-flush", day=day, whose=turn.whose))
        if await turn.administers():
            choices = (words.say("calendar-flush-choice", whose=turn.whose),)
    if held:
        notes.append(words.say("calendar-held", count=held))
    if any(r.zone == UTC for r in rows) and (turn.owner is None or turn.owner.zone is None):
        notes.append(words.say("reminder-utc"))
    if rests and not _side_known(turn):
        notes.append(words.say("calendar-north"))
    return notes, choices


def _next_flush(turn: Turn) -> date:
    """When the rhythm that is offered would come first."""
    now = turn.incoming.said_at
    zone = turn.owner.zone if turn.owner is not None and turn.owner.zone else UTC
    start = datetime.combine(to_local(now, zone).date(), USUAL)
    return fit(FLUSH, start, zone, now, as_said=False, quiet=turn.quiet).due.local.date()
