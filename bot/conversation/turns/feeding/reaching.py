"""For how much water an amount of feed is enough: a dose the other way round."""

from __future__ import annotations

from dataclasses import replace

from bot.conversation import answer as out
from bot.conversation.answering import respond
from bot.conversation.turn import Turn
from bot.conversation.turns.feeding import doses
from grammar import Order


async def reach(turn: Turn) -> out.Answer:
    """The dose whose amount is the one that was named."""
    order = turn.order
    asked = Order("dose", target=order.target, products=order.products)
    litre = replace(turn.reading, volume_l=1.0, weight_g=None, order=asked)
    found = doses.figures(turn, litre)
    if found is None and not turn.incoming.person:
        return respond(litre, turn.setting)
    if found is None:  # what is lacking, or that nothing is fed now
        return await doses.answered(turn, litre)
    if found.dose.unit != order.unit:
        return turn.ask("ask-reach-unit", unit=found.dose.unit)
    whole = replace(litre, volume_l=(order.amount or 0.0) / found.dose.per_litre)
    if not turn.incoming.person:  # with nothing remembered
        enough = doses.figures(turn, whole)
        return enough.answer if enough is not None else found.answer
    return await doses.answered(turn, whole)
