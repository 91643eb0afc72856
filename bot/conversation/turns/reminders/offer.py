"""After the first plants: the rhythm that fits them is offered once, and never set unasked."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import datetime

from bot.conversation import answer as out
from bot.conversation.collection import Collection, load
from bot.conversation.turn import Turn
from bot.conversation.turns.reminders.asked import home_told
from bot.conversation.turns.reminders.rules import USUAL, fit
from bot.conversation.turns.reminders.setting import line, setter
from bot.conversation.turns.standing.advice import genus_of
from bot.dosing.plants import Genus
from bot.records import reminders
from bot.records.kinds import ReminderKind
from bot.records.models import Plant
from bot.reminders.rhythm import to_local

#: Once a month clear water (common practice, no source); which Sunday is ours.
FLUSH = "FREQ=MONTHLY;BYDAY=1SU"
#: Those that bear little are fed once a month (common practice, no source), two weeks after that.
FEED = "FREQ=MONTHLY;BYDAY=3SU"


@dataclass(frozen=True, slots=True)
class Offered:
    """One reminder that fits: what for, for which kinds (none: all), and how often."""

    kind: ReminderKind
    genera: tuple[str, ...]
    rule: str


def fitting(plants: Sequence[Plant], *, south: bool) -> list[Offered]:
    """The reminders that fit a collection.

    A flush a month where there are pots, feed once a month for those that bear little, and the
    months in which a rest begins and ends.
    """
    found = []
    if any(p.medium != "mounted" for p in plants):
        found.append(Offered(ReminderKind.FLUSH, (), FLUSH))
    genera = list(dict.fromkeys(g for p in plants if (g := genus_of(p)) is not None))
    weak = tuple(g.name for g in genera if g.feeding_class == "sensitive")
    if weak:
        found.append(Offered(ReminderKind.FEED, weak, FEED))
    for genus in genera:
        months = turns_of(genus, south=south)
        if months:
            rule = f"FREQ=YEARLY;BYMONTH={','.join(map(str, sorted(months)))};BYMONTHDAY=1"
            found.append(Offered(ReminderKind.LOOK, (genus.name,), rule))
    return found


def turns_of(genus: Genus, *, south: bool) -> list[int]:
    """The months with whose first day a rest begins or ends."""
    return [
        m
        for m in range(1, 13)
        if genus.rests_in(m, south=south) != genus.rests_in((m + 10) % 12 + 1, south=south)
    ]


async def with_offer(turn: Turn, answer: out.Answer) -> out.Answer:
    """An answer that put the first plants on record, with the offer behind it."""
    if turn.collection.plants or turn.remembered.get("reminder_offer"):
        return answer
    if not await turn.administers():
        return answer
    found, collection = await _found(turn)
    if not found or collection is None:
        return answer
    words = turn.words
    items = []
    for one in found[:4]:
        plants = words.listed(list(one.genera)) or "none"
        items.append(words.say(f"offer-{one.kind}", plants=plants))
    text = words.say("offer", items=words.listed(items), more=max(len(found) - 4, 0))
    details = {**(answer.details or {}), "waiting": {"kind": "reminder_offer"}}
    return answer.model_copy(
        update={
            "reply": f"{answer.reply}\n{text}",
            "choices": [words.say("offer-yes"), words.say("offer-no"), *answer.choices],
            "details": details,
        }
    )


async def _found(turn: Turn) -> tuple[list[Offered], Collection | None]:
    from bot.records import owners

    async with turn.records.reading() as session:
        owner = await owners.find(session, turn.incoming.address)
        if owner is None or await reminders.listing(session, owner.id, include_ended=True):
            return [], None
        collection = await load(session, owner.id)
    return fitting(collection.plants, south=turn.south), collection


async def answered(turn: Turn) -> out.Answer | None:
    """Yes or no to the offer, or where they live; None where it is something else."""
    if turn.question.get("step") == "home":
        return await home_told(turn, take)
    if turn.order.verb == "no":
        await turn.keep(reminder_offer="no")
        return turn.say("reminder", "offer-declined")
    if turn.order.verb != "yes":
        return None
    zone = turn.owner.zone if turn.owner is not None else None
    if zone is None:
        skip = turn.words.say("meet-skip")
        answer = turn.ask("ask-remind-home", choices=(skip,))
        waiting = {"kind": "reminder_offer", "step": "home"}
        return answer.model_copy(update={"details": {"waiting": waiting}})
    return await take(turn, zone)


async def take(turn: Turn, zone: str | None) -> out.Answer | None:
    """Set what was offered."""
    assert zone is not None  # it was asked for
    found = fitting(turn.collection.plants, south=turn.south)
    now = turn.incoming.said_at
    start = datetime.combine(to_local(now, zone).date(), USUAL)
    lines = []
    turn.remembered["reminder_offer"] = "yes"
    async with turn.writing() as told:
        for one in found:
            fields = fit(one.rule, start, zone, now, as_said=False, quiet=turn.quiet).fields
            fields["kind"] = one.kind
            fields["target"] = {"genera": list(one.genera)} if one.genera else {"everything": True}
            row = await reminders.add(
                told, person=setter(turn), topic=turn.incoming.topic, **fields
            )
            lines.append(f"- {line(row, turn)}")
    turn = replace(turn, reading=replace(turn.reading, unknown=(), read_as=()))
    head = turn.words.say("offer-taken", time=turn.words.clock(USUAL))
    return turn.tell("reminder", [head, *lines], choices=("undo",))
