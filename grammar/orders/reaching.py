"""How far an amount of feed goes: 'how many litres can I make with 5 g of 20-20-20?'."""

from __future__ import annotations

from grammar.order import Order
from grammar.orders.facts import Facts

#: A volume up to this is feed, and not the water it goes into [L].
_MOST_FEED_L = 0.2


def reach(facts: Facts) -> Order | None:
    """For how much water an amount of feed is enough."""
    if not facts.has("how_far") or facts.has("fed", "clear", "flush", "plan", "stock"):
        return None
    rest = facts.rest
    if not (rest.analysis or facts.products or facts.question):
        return None
    if rest.weight_g is not None and rest.volume_l is None:
        return _order(facts, rest.weight_g, "g")
    if rest.weight_g is None and rest.volume_l is not None and rest.volume_l <= _MOST_FEED_L:
        return _order(facts, 1000 * rest.volume_l, "ml")
    return None


def _order(facts: Facts, amount: float, unit: str) -> Order:
    return Order("reach", target=facts.target, products=facts.products, amount=amount, unit=unit)
