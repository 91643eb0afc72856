"""Names for plants on record that have none yet: 'the cattleya is called Sunny'."""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence

from bot.conversation import answer as out
from bot.conversation.collection import kind_of, labels, pick
from bot.conversation.turn import Turn
from bot.conversation.turns.splitting import split
from bot.records import plants
from bot.records.errors import ChangedSince
from bot.records.models import Plant
from grammar import PlantSaid, Target


async def named(turn: Turn) -> out.Answer | list[Plant] | None:
    """Names for plants that are on record, where it was said what those are called.

    Returns
    -------
    Answer, list of Plant or None
        Several entries that one name could be for are left to who asks which; None where
        nothing nameless of these kinds is on record, so that the plants are new.
    """
    said = turn.order.plants
    if turn.order.standing != "called" or not all(p.name and p.genus for p in said):
        return None
    meant = [_nameless(p, turn) for p in said]
    if not any(meant):
        return None
    if len(said) == 1 and len(meant[0]) > 1:
        return meant[0]
    given = _given(meant)
    if given is None:
        there = list({p.id: p for some in meant for p in some}.values())
        kind, known = kind_of(there[0], turn.words), labels(there, turn.words)
        return turn.ask("ask-name-one", known=known, kind=kind, name=said[0].name or "")
    return await _name(turn, list(zip(given, (p.name or "" for p in said), strict=True)))


def _nameless(said: PlantSaid, turn: Turn) -> list[Plant]:
    """The plants on record without a name that are of a kind, in a place, as it was said."""
    if turn.chosen is not None:
        return [p for p in turn.collection.plants if p.id in turn.chosen]
    target = Target(
        genera=(said.genus,) if said.genus else (),
        traits=said.traits,
        place=said.place,
        medium=said.medium,
    )
    return [p for p in pick(target, turn.collection) if p.name is None]


def _given(meant: Sequence[Sequence[Plant]]) -> list[Plant] | None:
    """For each name the plant that gets it; None where they do not come out even."""
    left = Counter({p.id: p.count for some in meant for p in some})
    given: list[Plant] = []
    for some in meant:
        open_ = [p for p in some if left[p.id]]
        if not open_ or (len(open_) > 1 and sum(left[p.id] for p in some) != len(meant)):
            return None
        given.append(open_[0])
        left[open_[0].id] -= 1
    return given


async def _name(turn: Turn, pairs: list[tuple[Plant, str]]) -> out.Answer:
    """Give each plant its name; of several alike it becomes an entry of its own."""
    lines: list[str] = []
    ids: list[int] = []
    async with turn.writing() as told:
        for plant, name in pairs:
            (held,) = await plants.standing(told, [plant.id])
            if held.name is not None:
                raise ChangedSince("it was named")
            one = await split(told, held, 1) if held.count > 1 else held
            await plants.rename(told, one.id, name)
            ids.append(one.id)
            kind = kind_of(plant, turn.words)
            before = turn.words.say("plant-label", count=1, kind=kind or "none")
            lines.append(turn.words.say("plants-renamed", before=before, name=name))
        turn.remembered["plants"] = ids
    for plant in {p.id: p for p, _ in pairs}.values():
        left = plant.count - sum(p.id == plant.id for p, _ in pairs)
        if left:
            kind = kind_of(plant, turn.words)
            lines.append(turn.words.say("plants-split", left=left, kind=kind))
    return turn.tell("plants", lines, choices=("undo",))
