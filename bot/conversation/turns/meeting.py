"""The first meeting: three short questions, each of which may be skipped."""

from __future__ import annotations

from dataclasses import replace

from bot.conversation import answer as out
from bot.conversation.turn import Turn
from bot.conversation.turns import guide
from bot.conversation.turns.plants import add
from grammar import Order, PlantSaid, Reading

#: What is asked, in this order, by the verb that puts it on record.
STEPS = ("home", "product", "add")
#: A place is not longer than this [characters].
_LONGEST_PLACE = 60
#: Nor has it more words: 'San Miguel de Tucumán, Argentina'.
_MOST_WORDS = 6


async def begin(turn: Turn) -> out.Answer:
    """Greet; somebody new is asked the first question."""
    if turn.incoming.group is not None:
        return await guide.helping(turn)
    known = turn.owner is not None and (
        turn.owner.zone or turn.collection.plants or turn.collection.products
    )
    if known:
        return await guide.helping(turn)
    question = ask(turn, 0)
    return question.model_copy(
        update={"reply": f"{turn.words.say('meet-hello')}\n\n{question.reply}"}
    )


def ask(turn: Turn, step: int) -> out.Answer:
    """The question of a step, or the end of the meeting."""
    if step >= len(STEPS):
        return turn.say("help", "meet-done")
    skip = turn.words.say("meet-skip")
    answer = turn.ask(f"meet-{STEPS[step]}", choices=(skip,))
    return answer.model_copy(update={"details": {"waiting": {"kind": "meeting", "step": step}}})


def meant(turn: Turn, step: int) -> Order | None:
    """What an answer asks for; None where it is no answer, but something else that is wanted."""
    verb, reading, wanted = turn.order.verb, turn.reading, STEPS[step]
    if verb in ("skip", "no"):
        return Order("skip")
    if verb == wanted:
        return turn.order
    if verb == "add_offer" and wanted == "add":  # it was asked for
        return replace(turn.order, verb="add")
    if verb != "dose" or reading.volume_l is not None:
        return None
    if wanted == "home":
        text = turn.incoming.text.strip()
        return Order("home", text=text) if _like_a_place(text, reading) else None
    if wanted == "product":
        return Order("product") if reading.analysis else None
    plants = plants_of(reading)
    return Order("add", plants=plants) if plants else None


def _like_a_place(text: str, reading: Reading) -> bool:
    """Whether a text can be the name of a place: short, and nothing else was said with it."""
    said = (
        reading.analysis, reading.genera, reading.mentions_feeding, reading.strength,
        reading.regime, reading.season, reading.month, reading.growth, reading.water,
        reading.label_rate, reading.conflicts, reading.problems,
    )  # fmt: skip
    named = any(c.isalpha() for unknown in reading.unknown for c in unknown.text)
    if any(said) or "?" in text or (any(c.isdigit() for c in text) and not named):
        return False
    return len(text) <= _LONGEST_PLACE and len(text.split()) <= _MOST_WORDS


async def save(turn: Turn) -> out.Answer:
    """Put the plants on record that a shared answer was about."""
    plants = plants_of(turn.reading)
    if not plants:
        return turn.say("help", "post-card-no-plants")
    if _saved_today(turn, plants):  # the link was followed twice
        return turn.say("plants", "post-saved-already")
    order = Order("add", plants=plants)
    return await add(replace(turn, reading=replace(turn.reading, order=order)))


def _saved_today(turn: Turn, plants: tuple[PlantSaid, ...]) -> bool:
    """Whether all of these were put on record today, just so."""
    there = {
        (p.genus, p.count, p.medium, p.pot_cm)
        for p in turn.collection.plants
        if p.added_on == turn.today
    }
    return all((s.genus, s.count or 1, s.medium, s.pot_cm) in there for s in plants)


def plants_of(reading: Reading) -> tuple[PlantSaid, ...]:
    """The plants that a message speaks of, to be put on record."""
    one = len(reading.genera) == 1
    return tuple(
        PlantSaid(
            genus=genus,
            count=reading.count if one else None,
            medium=reading.medium,
            pot_cm=reading.pot_cm if one else None,
        )
        for genus in reading.genera
    )
