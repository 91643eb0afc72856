"""Reminders: to set one, and to list them."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from datetime import date
from typing import Any

from bot.conversation import answer as out
from bot.conversation.collection import labels, pick, places_meant, plants_said
from bot.conversation.turn import Turn
from bot.conversation.turns.reminders.rules import Made, make
from bot.conversation.turns.reminders.said import cadence, comes, plants_of, what, whom
from bot.records import reminders
from bot.records.kinds import ReminderKind, ReminderState
from bot.records.models import Plant, Reminder
from grammar import Order, Rhythm

#: Where somebody does not say where they live, their clock is taken to be this one.
UTC = "Etc/UTC"
#: What is to be done again is counted from when it was done last.
_LAST = {"flush": "last_flush_on", "feed": "last_fed_on"}


async def listed(turn: Turn) -> list[Reminder]:
    """The owner's reminders in the order in which they are numbered: what comes next first."""
    if turn.owner is None:
        return []
    async with turn.records.reading() as session:
        return await reminders.listing(session, turn.owner_id)


async def listing(turn: Turn) -> out.Answer:
    """The reminders, numbered, with what comes when."""
    found = await listed(turn)
    if not found:
        return turn.say("reminder", "reminders-none", whose=turn.whose)
    lines = [turn.words.say("reminders-head", count=len(found))]
    lines += [f"{n}. {line(row, turn)}" for n, row in enumerate(found, 1)]
    lines.append(turn.words.say("reminders-hint"))
    rows = [
        {
            "id": r.id, "kind": str(r.kind), "rule": r.rule, "zone": r.zone, "due_ms": r.due_ms,
            "plants": [p.id for p in plants_of(r.target, turn.collection)],
        }
        for r in found
    ]  # fmt: skip
    return turn.tell("reminder", lines, details={"reminders": rows})


def line(row: Reminder, turn: Turn) -> str:
    """One reminder: what, how often, and when next."""
    often = cadence(row, turn.words)
    about = what(row, turn)
    if row.due_ms is None:
        return about
    return turn.words.say(
        "reminder-line",
        what=about,
        often=often or "none",
        next=comes(row.due_ms, row.zone, turn),
        state=str(row.state) if row.state is ReminderState.PAUSED else "active",
    )


# --- setting one --------------------------------------------------------------------------------


async def remind(turn: Turn) -> out.Answer:
    """Set a reminder; what is missing is asked for, one thing after the other."""
    # A question about another one is over; what only waits to know where they live is kept.
    waiting = turn.question if turn.question.get("step") == "home" else {}
    one = {k: waiting[k] for k in ("text", "rhythm", "about") if k in waiting}
    earlier = [*waiting.get("earlier", ()), *([one] if one else [])]
    asked = replace(turn, question={"earlier": earlier} if earlier else {})
    return await settled(asked, turn.order, await zone_of(turn))


async def wished(turn: Turn) -> out.Answer:
    """A rhythm of one's own: whether to be reminded of it."""
    words = turn.words
    answer = turn.ask("ask-remind-wish", choices=(words.say("offer-yes"), words.say("offer-no")))
    waiting = {"kind": "reminder_wish", "text": turn.incoming.text}
    return answer.model_copy(update={"details": {"waiting": waiting}})


async def wish_answered(turn: Turn) -> out.Answer | None:
    """Yes or no to that."""
    if turn.order.verb in ("no", "skip"):
        return turn.say("reminder", "reminder-dropped")
    if turn.order.verb != "yes":
        return None
    if not await turn.administers():
        return turn.refuse("refuse-administrators-reminders")
    wish = turn.read_again(str(turn.question["text"])).order
    if wish is None or wish.rhythm is None:
        return None
    order = replace(wish, verb="remind", text="")
    question = {"text": str(turn.question["text"])}
    reading = replace(turn.reading, order=order, unknown=(), read_as=())
    return await settled(
        replace(turn, reading=reading, question=question), order, await zone_of(turn)
    )


async def zone_of(turn: Turn) -> str | None:
    """Where they live; UTC where they would not say before; None where it is to be asked."""
    if turn.owner is not None and turn.owner.zone:
        return turn.owner.zone
    return UTC if any(r.zone == UTC for r in await listed(turn)) else None


async def settled(turn: Turn, order: Order, zone: str | None) -> out.Answer:
    said = order.rhythm
    if said is not None and said.doubt:
        return _wait(turn, turn.ask(f"ask-rhythm-{said.doubt.replace('_', '-')}"), "when")
    if said is None and not order.task:
        return _what(turn)
    if said is None or not (said.says_when or said.clock or said.part):
        choices = tuple(turn.words.say(f"rhythm-choice-{n}") for n in (1, 2, 3))
        return _wait(turn, turn.ask("ask-remind-when", choices=choices), "when")
    if not order.task:
        return _what(turn)
    if zone is None:
        skip = turn.words.say("meet-skip")
        return _wait(turn, turn.ask("ask-remind-home", choices=(skip,)), "home")
    target = _target(turn, order)
    if isinstance(target, out.Answer):
        return target
    return await _keep(turn, order, said, target, zone)


def _what(turn: Turn) -> out.Answer:
    choices = tuple(turn.words.say(f"task-{t}") for t in ("flush", "feed", "water"))
    return _wait(turn, turn.ask("ask-remind-what", choices=choices), "what")


def _wait(turn: Turn, question: out.Answer, step: str, **more: Any) -> out.Answer:
    """A question that goes on with this message once it is answered."""
    text = turn.question.get("text", turn.incoming.text)
    kept = {k: v for k, v in turn.question.items() if k in ("rhythm", "about", "earlier")}
    waiting = {"kind": "reminder", "step": step, "text": text, **kept, **more}
    return question.model_copy(update={"details": {"waiting": waiting}})


async def _keep(
    turn: Turn, order: Order, said: Rhythm, target: dict[str, Any], zone: str
) -> out.Answer:
    plants = plants_of(target, turn.collection)
    made = make(
        said,
        turn.incoming.said_at,
        zone,
        south=turn.south,
        last=last_done(order.task, plants),
        quiet=turn.quiet,
    )
    same = await _same(turn, order, target, made)
    if same is not None:
        return turn.say("reminder", "reminder-already", line=line(same, turn))
    fields = made.fields
    fields["kind"], fields["target"] = ReminderKind(order.task), target
    fields["text"] = order.text or None
    async with turn.writing() as told:
        row = await reminders.add(told, person=setter(turn), topic=turn.incoming.topic, **fields)
        turn.remembered["reminder"] = row.id
        lines = [turn.words.say("reminder-set", line=line(row, turn))]
    lines += _notes(turn, said, zone, target, plants)
    return turn.tell("reminder", lines, choices=("undo",), details=_details(row))


def setter(turn: Turn) -> str | None:
    """Which member of a group sets it; None in private."""
    return turn.incoming.person if turn.incoming.group is not None else None


def _details(row: Reminder) -> dict[str, Any]:
    return {
        "reminder": row.id,
        "kind": str(row.kind),
        "rule": row.rule,
        "start": row.start,
        "zone": row.zone,
        "due_ms": row.due_ms,
    }


def last_done(task: str, plants: Sequence[Plant]) -> date | None:
    """When it was done last for all of them."""
    field = _LAST.get(task)
    days = [getattr(p, field) for p in plants] if field else []
    return min(days) if days and all(days) else None


async def _same(turn: Turn, order: Order, target: dict[str, Any], made: Made) -> Reminder | None:
    """The reminder that is set already, where it is the same in all that was said."""
    return next(
        (
            r
            for r in await listed(turn)
            if (str(r.kind), r.text, r.rule) == (order.task, order.text or None, made.rhythm.rule)
            and r.target == target
            and r.start[11:] == made.fields["start"][11:]
            and (r.rule is not None or r.start == made.fields["start"])
        ),
        None,
    )


def _notes(
    turn: Turn, said: Rhythm, zone: str, target: dict[str, Any], plants: Sequence[Plant]
) -> list[str]:
    """What was taken one way and could be meant in another, and what to know."""
    notes = []
    if said.half_guessed and said.clock is not None:
        half = "afternoon" if said.clock[0] >= 12 else "morning"
        hour = said.clock[0] % 12 or 12
        notes.append(turn.words.say("reminder-half", half=half, hour=hour))
    if said.guess:
        notes.append(turn.words.say(f"reminder-guess-{said.guess.replace('_', '-')}"))
    if zone == UTC and (turn.owner is None or turn.owner.zone is None):
        notes.append(turn.words.say("reminder-utc"))
    named = bool(target.get("genera") or target.get("place"))
    if named and not plants:
        notes.append(turn.words.say("reminder-none-yet", plants=whom(target, turn)))
    return notes


def _target(turn: Turn, order: Order) -> dict[str, Any] | out.Answer:
    """Which plants, as the records keep it; a question where they are not known."""
    meant, collection = order.target, turn.collection
    if meant.again and not meant.named:
        ids = turn.last_plants
        if ids:
            return {"plants": list(ids)}
        return {} if order.task in ("look", "other") else turn.ask("ask-which-plants")
    if not meant.named and not meant.traits and not meant.medium:
        return {} if order.task in ("look", "other") else {"everything": True}
    excepted = meant.excepts
    if meant.everything and not (meant.named_one or excepted):
        return {"everything": True}
    plain = not (meant.traits or meant.medium or meant.names or excepted or meant.more_places)
    if plain and meant.genera and not meant.place:
        return {"genera": list(meant.genera)}
    if plain and meant.place and not meant.genera and places_meant(meant.place, collection):
        return {"place": meant.place}
    found = pick(meant, collection, turn.last_plants)
    if found:
        return {"plants": [p.id for p in found]}
    if order.text:
        return {}
    known = labels(collection.plants[:5], turn.words)
    said = plants_said(meant, turn.words)
    return turn.ask("ask-not-on-record", meant=said, known=known or "none")
