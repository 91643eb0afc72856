"""Plants that are on record already or no longer: 'I have 2 phals' again, 'I had 2 vandas'."""

from __future__ import annotations

from dataclasses import replace

from bot.conversation import answer as out
from bot.conversation.collection import is_of, labels, plant_said
from bot.conversation.turn import Turn
from bot.records.models import Plant
from bot.records.names import fold
from grammar import PlantSaid

#: What cannot be done to a plant that is gone, or asked of it.
_OF_PLANTS = frozenset({
    "dose", "follow_up", "fed", "clear", "flush", "repot", "move", "growth", "correct", "lose",
    "rename", "reading", "plan", "salts", "picture_year", "picture_salts", "picture_card",
    "remind", "water_for", "exception", "rescue", "tell", "import", "two_things", "all_or_some",
    "done",
})  # fmt: skip


def no_longer(turn: Turn) -> out.Answer | None:
    """What is said of a plant that was taken off the list; None where nothing is."""
    if not turn.order.gone or turn.order.verb not in _OF_PLANTS:
        return None
    meant = {fold(name) for name in turn.order.gone}
    plants = [p for p in turn.collection.gone if p.name_key in meant]
    if not plants:
        return None
    last = max(plants, key=lambda p: p.id)
    turn = replace(turn, reading=replace(turn.reading, unknown=(), read_as=()))
    return turn.ask(
        "ask-gone",
        plants=turn.words.listed(list(turn.order.gone)),
        count=len(turn.order.gone),
        day=turn.words.day(last.lost_on or turn.today, turn.today),
        name=last.name or "",
        kind=last.genus or "none",
    )


async def had(turn: Turn) -> out.Answer:
    """Plants that somebody had: nothing is put on record."""
    said = turn.words.listed([plant_said(p, turn.words) for p in turn.order.plants])
    return turn.ask("ask-had", plants=said)


async def names_unclear(turn: Turn) -> out.Answer:
    """More names than plants were said: nothing is put on record."""
    return turn.ask("ask-names-count", count=turn.order.count or 0, names=turn.order.text)


def asked_first(turn: Turn) -> out.Answer | tuple[tuple[PlantSaid, ...], list[str]]:
    """The plants to put on record of those somebody has; a question where it is not clear.

    Returns
    -------
    Answer, or the plants to add and what to say of them
        Of what is said to be all of them, only those that are not on record.
    """
    said = turn.order.plants
    if not turn.order.standing:
        return said, []
    known = [_on_record(p, turn) for p in said]
    if not any(known):
        return said, []
    if turn.order.standing != "total":
        nameless = [p for p in said if p.name]
        if nameless:
            return _or_named(turn, nameless[0], [p for some in known for p in some])
        return _offer(turn, [p for some in known for p in some])
    further: list[PlantSaid] = []
    notes: list[str] = []
    for plant, there in zip(said, known, strict=True):
        count, held = plant.count or 1, sum(p.count for p in there)
        kind = plant.genus or ""
        if count < held:
            shown = labels(there, turn.words)
            return turn.ask("ask-fewer-than", plants=shown, count=count, gone=held - count,
                            kind=kind)  # fmt: skip
        if there:
            notes.append(turn.words.say("plants-in-all", count=count, kind=kind))
        if count > held:
            further.append(replace(plant, count=count - held))
    if not further:
        return turn.tell("plants", notes)
    return tuple(further), notes


def _offer(turn: Turn, there: list[Plant]) -> out.Answer:
    """Ask whether plants are further ones; 'yes' puts them on record."""
    shown = [p for i, p in enumerate(there) if p not in there[:i]]
    said = turn.words.listed([plant_said(p, turn.words) for p in turn.order.plants])
    asked = turn.ask(
        "ask-further", known=labels(shown, turn.words), plants=said, choices=("yes", "no")
    )
    waiting = {"kind": "add", "text": turn.incoming.text}
    return asked.model_copy(update={"details": {"waiting": waiting}})


def _or_named(turn: Turn, said: PlantSaid, there: list[Plant]) -> out.Answer:
    """Ask whether a named plant is the one that is on record without a name, or a further one."""
    known = labels([p for i, p in enumerate(there) if p not in there[:i]], turn.words)
    kind, name = said.genus or "", said.name or ""
    asked = turn.ask("ask-further-named", known=known, kind=kind, name=name, choices=("yes", "no"))
    waiting = {"kind": "add", "text": turn.incoming.text}
    return asked.model_copy(update={"details": {"waiting": waiting}})


def _on_record(said: PlantSaid, turn: Turn) -> list[Plant]:
    """The plants of a kind that are on record, where it was not said which new one is meant.

    Of a kind with a name, those that have none.
    """
    if not said.genus:
        return []
    if said.name:
        if turn.order.standing != "some":  # 'the vanda is called Bluey' names the one there
            return []
        return [p for p in turn.collection.plants if is_of(p, (said.genus,)) and not p.name]
    traits = {word for t in said.traits for word in fold(t).split()}
    return [
        p
        for p in turn.collection.plants
        if is_of(p, (said.genus,)) and traits <= set(fold(p.detail or "").split())
    ]
