"""A ping in words: what it is time for, how much, and what to leave out."""

from __future__ import annotations

import logging
from collections.abc import Sequence

from bot.conversation import answer as out
from bot.conversation.collection import labels
from bot.conversation.reminding import Due, Pinging
from bot.conversation.turn import Turn
from bot.conversation.turns.day.can import can_plan, whom
from bot.conversation.turns.reminders.said import plants_of, what
from bot.conversation.turns.reminders.work import Work, work_for
from bot.conversation.turns.standing.advice import genus_of
from bot.records.kinds import ReminderKind
from bot.records.models import Plant

_log = logging.getLogger("sinkside")
_ORDER = (
    ReminderKind.FLUSH, ReminderKind.FEED, ReminderKind.WATER, ReminderKind.LOOK,
    ReminderKind.OTHER,
)  # fmt: skip


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
