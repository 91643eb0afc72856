"""A ping in words, and what is answered to it: done, later, skip."""

from __future__ import annotations

import logging
from collections.abc import Sequence
from dataclasses import dataclass, field
from datetime import date, datetime, timedelta
from typing import Any

from bot.conversation import answer as out
from bot.conversation.collection import Collection, labels
from bot.conversation.reminding import Due, Pinging, instant
from bot.conversation.turn import Turn
from bot.conversation.turns import day as days
from bot.conversation.turns.advice import genus_of, growth_on
from bot.conversation.turns.can import CanPlan, can_plan, whom
from bot.conversation.turns.groups import Group, groups_of
from bot.conversation.turns.pot_logs import too_salty
from bot.conversation.turns.reminders_rules import moment
from bot.conversation.turns.reminders_said import comes, plants_of, what
from bot.dosing.pot_water import flush_volume_l
from bot.records import log, owners, pings, reminders
from bot.records.kinds import CARE, EventKind, PingState, ReminderKind
from bot.records.models import Event, Ping, Plant, Product, Reminder
from bot.reminders.early import done_early
from bot.reminders.quiet import later as later_at
from bot.reminders.rhythm import Due as Moment
from bot.reminders.rhythm import Rhythm, to_local, to_utc

_log = logging.getLogger("sinkside")
#: A ping can be answered for so long (ours).
OPEN_FOR = timedelta(days=14)
#: Where a channel cannot send, pings are numbered by the moment they were shown [ms].
_A_MOMENT = 10**12
#: What a log entry of a kind is the doing of.
_DONE_BY = {
    ReminderKind.FLUSH: frozenset({EventKind.FLUSH}),
    ReminderKind.FEED: frozenset({EventKind.FED}),
    ReminderKind.WATER: frozenset({EventKind.FED, EventKind.CLEAR, EventKind.FLUSH}),
}
_ORDER = (
    ReminderKind.FLUSH, ReminderKind.FEED, ReminderKind.WATER, ReminderKind.LOOK,
    ReminderKind.OTHER,
)  # fmt: skip


@dataclass(frozen=True, slots=True)
class Work:
    """What is to be done for reminders that are due together, as of a day.

    `asleep` and `mounted` are left out of a flush.
    """

    flushed: tuple[Group, ...] = ()
    groups: tuple[Group, ...] = ()
    can: CanPlan = field(default_factory=lambda: CanPlan(()))
    product: Product | None = None
    asleep: tuple[Plant, ...] = ()
    mounted: tuple[Plant, ...] = ()

    def entries(self, on: date) -> list[log.Entry]:
        """What the log keeps where all of it is done."""
        made = [log.Entry(EventKind.FLUSH, p.id, on=on) for g in self.flushed for p in g.plants]
        for group in self.groups:
            action = "clear" if group.key in self.can.unfed else group.action
            kind = days._ENTRIES.get(action)
            if kind is None:
                continue
            fed = kind is EventKind.FED
            product = self.product.id if fed and self.product is not None else None
            details = {"strength": group.strength} if fed and group.strength else {}
            made += [log.Entry(kind, p.id, product, on=on, details=details) for p in group.plants]
        return made


# --- what is to be done -------------------------------------------------------------------------


async def work_for(due: Sequence[Any], turn: Turn, on: date) -> Work:
    """Flushes apart, feed and water in one can; who gets a flush needs no more.

    Parameters
    ----------
    due : reminders, as the records or what is due have them
    turn : for the collection, the kit and the words
    on : the day
    """
    collection = turn.collection
    to_flush = _plants([r for r in due if r.kind == ReminderKind.FLUSH], collection)
    asleep = tuple(p for p in to_flush if _rests(p, on, south=turn.south))
    mounted = tuple(p for p in to_flush if p.medium == "mounted" and p not in asleep)
    wet = [p for p in to_flush if p not in asleep and p not in mounted]
    flushed = _flushes(wet, collection)
    wanted = [r for r in due if r.kind in (ReminderKind.FEED, ReminderKind.WATER)]
    rest = [p for p in _plants(wanted, collection) if p not in wet]
    if not rest:
        return Work(flushed, asleep=asleep, mounted=mounted)
    product = _product(collection)
    salty = await too_salty(turn, collection, rest, on)
    groups = groups_of(rest, collection, product, on, turn, too_salty=salty)
    can = can_plan(groups, collection, product, turn)
    return Work(flushed, tuple(groups), can, product, asleep, mounted)


def _plants(due: Sequence[Any], collection: Collection) -> list[Plant]:
    found = {p.id: p for r in due for p in plants_of(r.target, collection)}
    return [p for p in collection.plants if p.id in found]


def _rests(plant: Plant, on: date, *, south: bool) -> bool:
    genus = genus_of(plant)
    asleep = genus is not None and genus.rests_in(on.month, south=south)
    return asleep or growth_on(plant, on) == "resting"


def _flushes(plants: Sequence[Plant], collection: Collection) -> tuple[Group, ...]:
    """Those that are flushed, by their water."""
    by_water: dict[int | None, list[Plant]] = {}
    for plant in plants:
        water = collection.water_of(plant)
        by_water.setdefault(water.id if water is not None else None, []).append(plant)
    return tuple(
        Group(
            key=f"f{number}",
            action="flush",
            plants=tuple(members),
            reasons=((tuple(members), ()),),
            volume_l=sum(flush_volume_l(p.pot_cm) * p.count for p in members),
            water_id=water_id,
        )
        for number, (water_id, members) in enumerate(by_water.items())
    )


def _product(collection: Collection) -> Product | None:
    if collection.default_product is not None:
        return collection.default_product
    return collection.products[0] if collection.products else None


# --- the ping -----------------------------------------------------------------------------------


async def compose(turn: Turn, due: Due) -> out.Answer:
    """One message for all that is due to an owner, with dose and litres as of today.

    Parameters
    ----------
    turn : of nobody's message: the owner, their collection and their words
    due : from `reminding.reckon`; something in it is said now
    """
    said = sorted(due.pinging, key=lambda p: _ORDER.index(p.reminder.kind))
    lines = _heads(said, turn)
    try:
        work = await work_for([p.reminder for p in said], turn, turn.today)
        lines += _work_lines(work, turn)
    except Exception:  # whatever broke, a reminder is better without its litres than lost
        _log.exception("no plan for a reminder")
    lines += [line for p in said for line in _rest_lines(p, turn)]
    if turn.incoming.pulls:
        lines.append(turn.words.say("ping-hint"))
    choices = tuple(turn.words.say(f"ping-{choice}") for choice in ("done", "later", "skip"))
    rows = [
        {"reminder": p.reminder.id, "ping": p.reminder.ping_id, "kind": str(p.reminder.kind),
         "plants": [x.id for x in plants_of(p.reminder.target, turn.collection)]}
        for p in said
    ]  # fmt: skip
    return turn.tell("reminder", lines, choices=choices, details={"pings": rows})


def _heads(said: Sequence[Pinging], turn: Turn) -> list[str]:
    """What is due, and quietly where it comes late."""
    abouts = [f"{what(p.reminder, turn)}{_late(p, turn)}" for p in said]
    if len(abouts) == 1:
        return [turn.words.say("ping-head", what=abouts[0])]
    return [turn.words.say("ping-head-several", count=len(abouts)), *(f"- {a}" for a in abouts)]


def _late(pinging: Pinging, turn: Turn) -> str:
    step = pinging.step
    if not step.missed and (not step.late or step.due.local.date() >= turn.today):
        return ""
    day = turn.words.day(step.due.local.date(), turn.today)
    return turn.words.say("ping-late", day=day, missed=step.missed)


def _work_lines(work: Work, turn: Turn) -> list[str]:
    words = turn.words
    parts = [*_flush_lines(work, turn), *(p.text for p in work.can.parts)]
    numbered = [f"{n}. {text}" for n, text in enumerate(parts, 1)] if len(parts) > 1 else parts
    lines = [work.can.note, *numbered]
    nothing = [g for g in work.groups if g.action == "nothing"]
    lines += [words.say("plan-nothing", plants=whom([g], turn)) for g in nothing]
    if work.asleep:
        lines.append(words.say("ping-asleep", plants=labels(work.asleep, words)))
    if work.mounted:
        lines.append(words.say("ping-mounted", plants=labels(work.mounted, words)))
    fed = any(g.action == "feed" for g in work.groups)
    if fed and work.product is None:
        lines.append(words.say("plan-no-product"))
    if fed:
        lines.append(words.say("plan-wet-first"))
    return lines


def _flush_lines(work: Work, turn: Turn) -> list[str]:
    return [p.text for p in can_plan(list(work.flushed), turn.collection, None, turn).parts]


def _rest_lines(pinging: Pinging, turn: Turn) -> list[str]:
    """That a rest begins or ends, where it is that of which a kind was to be looked at."""
    row = pinging.reminder
    if row.kind != ReminderKind.LOOK or row.text or not row.target.get("genera"):
        return []
    lines = []
    month = turn.today.month
    for plant in _one_each(plants_of(row.target, turn.collection)):
        genus = genus_of(plant)
        if genus is None or not genus.rest_months:
            continue
        now = genus.rests_in(month, south=turn.south)
        before = genus.rests_in((month + 10) % 12 + 1, south=turn.south)
        if now != before:
            code = "ping-rest-begins" if now else "ping-rest-ends"
            dry = "yes" if genus.rest_kind == "dry" else "no"
            lines.append(turn.words.say(code, plants=genus.name, dry=dry))
    return lines


def _one_each(plants: Sequence[Plant]) -> list[Plant]:
    return list({p.genus: p for p in plants if p.genus}.values())


# --- what is answered ---------------------------------------------------------------------------


async def newest_open(turn: Turn, *, and_new: bool = False) -> list[Ping]:
    """The pings of the last message that got no answer yet.

    Those that come with this very answer were not seen yet; `and_new` where they count too.
    """
    if turn.owner is None:
        return []
    now_ms = _ms(turn.incoming.said_at)
    async with turn.records.reading() as session:
        found = await pings.unanswered(session, turn.owner_id, since_ms=now_ms - pings.KEPT_MS)
    since = now_ms - _ms_of(OPEN_FOR)
    found = [
        p
        for p in found
        if (and_new or p.id not in turn.just_pinged)
        and since <= _shown_ms(p)
        and p.due_ms <= now_ms
    ]
    if not found:
        return []
    newest = max(found, key=lambda p: p.id)
    if newest.message_id is None:
        return [p for p in found if p.message_id is None and p.due_ms >= newest.due_ms]
    return [p for p in found if p.message_id == newest.message_id]


def _shown_ms(ping: Ping) -> int:
    """When it was shown, as far as is known; otherwise when it was due."""
    moment_ms = ping.message_id or 0
    return moment_ms if moment_ms > _A_MOMENT else ping.due_ms


async def done(turn: Turn) -> out.Answer:
    """Log what a ping was for; where none waits, tick off the plan."""
    narrowed = bool(turn.order.steps) or not turn.order.target.empty
    opened = [] if narrowed else await newest_open(turn)
    if not opened or _plan_is_newer(turn, opened):
        return await days.done(turn)
    found = await _reminders_of(turn, opened)
    work = await work_for(found, turn, turn.today)
    entries = work.entries(turn.today)
    settled = []
    async with turn.writing() as told:
        for ping in opened:
            state = PingState.DONE
            kept = await pings.settle(
                told.session, told.owner_id, ping.id, state, now_ms=_ms(told.said_at)
            )
            settled += [kept] if kept is not None else []
        if settled:
            await log.record(told, entries)
    if not settled:
        return turn.say("log", "done-nothing")
    lines = [_logged(entries, turn)] if entries else [turn.words.say("ping-noted")]
    lines += _next_lines(found, turn)
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


def _next_lines(found: Sequence[Reminder], turn: Turn) -> list[str]:
    coming = [r for r in found if r.due_ms is not None]
    if len(coming) != 1:
        return []
    row = coming[0]
    then = comes(row.due_ms or 0, row.zone, turn)
    return [turn.words.say("reminder-next", what=what(row, turn), next=then)]


def _plan_is_newer(turn: Turn, opened: Sequence[Ping]) -> bool:
    """Whether a plan of today was asked for after the ping, and is not all done."""
    kept = turn.recalled.get("plan")
    if not isinstance(kept, dict) or kept.get("day") != turn.today.isoformat():
        return False
    ids = {i for g in kept["groups"].values() for i in g["ids"]}
    if turn.incoming.tapped_at is not None or not ids - set(kept["ticked"]):
        return False
    pinged_ms = max(map(_shown_ms, opened))
    return turn.recalled_at is not None and _ms(turn.recalled_at) > pinged_ms


async def bare(turn: Turn) -> out.Answer | None:
    """'later', 'skip' and 'stop' to a ping; None where there is none to answer."""
    verb, text = turn.order.verb, turn.order.text
    if verb not in ("skip", "no") or (verb == "no" and text != "stop"):
        return None
    if text == "stop":
        from bot.conversation.turns import reminders_change

        if not await newest_open(turn) and not await _any(turn):
            return None
        if not await turn.administers():
            return turn.refuse("refuse-administrators-reminders")
        return await reminders_change.stop(turn)
    opened = await newest_open(turn)
    if not opened:
        return None
    return await (_later if text == "later" else _skip)(turn, opened)


async def _any(turn: Turn) -> bool:
    async with turn.records.reading() as session:
        return turn.owner is not None and bool(await reminders.listing(session, turn.owner_id))


async def _later(turn: Turn, opened: Sequence[Ping]) -> out.Answer:
    found = {r.id: r for r in await _reminders_of(turn, opened)}
    when = ""
    async with turn.writing() as told:
        for ping in opened:
            row = found[ping.reminder_id]
            at = later_at(turn.incoming.said_at, row.zone)
            kept = await pings.settle(
                told.session, told.owner_id, ping.id, PingState.LATER, now_ms=_ms(told.said_at)
            )
            if kept is None:
                continue
            due = Moment(at, to_local(instant(ping.due_ms), row.zone))
            await reminders.change(told, row.id, **moment(due, moved=True))
            when = comes(_ms(at), row.zone, turn)
    if not when:
        return turn.say("reminder", "ping-answered")
    return turn.say("reminder", "ping-again", next=when)


async def _skip(turn: Turn, opened: Sequence[Ping]) -> out.Answer:
    from bot.conversation.turns.reminders_change import skipped

    found = {r.id: r for r in await _reminders_of(turn, opened)}
    lines = []
    async with turn.writing() as told:
        for ping in opened:
            kept = await pings.settle(
                told.session, told.owner_id, ping.id, PingState.SKIPPED, now_ms=_ms(told.said_at)
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


# --- done without being asked -------------------------------------------------------------------


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
                now_ms = _ms(told.said_at)
                await pings.settle(session, turn.owner_id, ping_id, PingState.DONE, now_ms=now_ms)
            elif (shifted := await _shifted(told, row, events)) is not None:
                lines += _next_lines([shifted], turn)
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
            if p.medium != "mounted" and not _rests(p, turn.today, south=turn.south)
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
    if shift is None or shift.next is None or _ms(shift.next.at) == row.due_ms:
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


def _ms(at: datetime) -> int:
    return round(at.timestamp() * 1000)


def _ms_of(span: timedelta) -> int:
    return round(span.total_seconds() * 1000)
