"""Harm to people, pets and fish: whom to call and what to do first; and where no feed may go."""

from __future__ import annotations

from dataclasses import replace
from datetime import datetime

from bot.conversation import answer as out
from bot.conversation.turn import Turn
from bot.conversation.turns.feeding.doses import FOLLOW_UP
from grammar import Order

#: Under this name it is remembered of what harm was told.
_URGENT = "urgent"
#: Verbs of harm: answered before any question of ours that is open.
VERBS = frozenset({"pets", "hurt", "spill"})
#: What is not understood, or answers nothing, right behind an emergency is still about that.
_ASKS_ON = frozenset({"dose", "yes", "no", "skip"})


async def told(turn: Turn) -> out.Answer | None:
    """What to do at once; the same again to who asks on within the half hour; else None."""
    order = turn.order
    if order.verb in VERBS:
        answer = _answer(turn)
        if order.verb != "pets" or order.given or order.text == "anyone":
            said_at = turn.incoming.said_at.isoformat()
            kept = {"verb": order.verb, "text": order.text, "given": order.given}
            await turn.keep(urgent={**kept, "said_at": said_at})
        return answer
    return again(turn) if order.worried else None


def again(turn: Turn) -> out.Answer | None:
    """What they were told to do a moment ago, where somebody had come to harm."""
    kept = turn.recalled.get(_URGENT)
    if not isinstance(kept, dict):
        return None
    since = turn.incoming.said_at - datetime.fromisoformat(kept["said_at"])
    if since > FOLLOW_UP:
        return None
    order = Order(str(kept["verb"]), text=str(kept["text"]), given=bool(kept["given"]))
    silent = replace(turn.reading, order=order, unknown=(), read_as=())
    return _answer(replace(turn, reading=silent))


def asked_on(turn: Turn, answer: out.Answer) -> out.Answer:
    """An answer that helps nobody gives way to what is urgent."""
    lost = answer.kind == "help" and turn.order.verb in _ASKS_ON
    return (again(turn) if lost else None) or answer


def _answer(turn: Turn) -> out.Answer:
    order, words = turn.order, turn.words
    if order.text == "touch":
        gloves = words.say("caution-no-dust")
        return turn.tell("cautions", [gloves, words.say("hurt-call", how="other")])
    if order.verb == "hurt":
        return turn.say("cautions", "hurt-call", how=order.text or "other")
    if order.verb == "spill":
        return turn.say("cautions", "spill-wipe")
    who = order.text or "other"
    if order.given:
        who = "told_child" if who == "child" else "told_pet"
    return turn.tell("cautions", [words.say("pets-call", who=who), words.say("pets-keep")])


async def urgent(turn: Turn) -> out.Answer:
    """What to do where somebody got some of it, or where it was spilled, and whom to call."""
    return _answer(turn)


async def alarm(turn: Turn) -> out.Answer:
    """To who is alarmed and does not say of what."""
    return turn.say("cautions", "alarm-what")


async def food(turn: Turn) -> out.Answer:
    """Feed is nothing to eat or drink, nor for what is eaten."""
    return turn.refuse("refuse-food", how=turn.order.text or "other")


async def leftover(turn: Turn) -> out.Answer:
    """Where the rest of a mix goes, and how long it keeps."""
    return turn.say("cautions", "leftover-goes")
