"""What is asked of salts, bottles and mixes: forms for `orders`."""

from __future__ import annotations

from grammar.order import Order, Target
from grammar.orders import queried
from grammar.orders.facts import Facts


def salts(facts: Facts) -> Order | None:
    """How salty pots are, and how to flush them: 'how salty is Ruby', 'how do I flush Ruby'."""
    target = facts.target
    of_pots = facts.has("salts", "how_flush") or (facts.starts("salts_of") and target.named)
    if facts.rest.analysis or facts.asks_dose or not of_pots:
        return None
    return Order("salts", target=Target(everything=True) if target.empty else target)


def stock(facts: Facts) -> Order | None:
    """A stock solution of products: 'make 500 ml stock of blue tub', 'stock 1:100'."""
    asked = facts.has("stock") or facts.starts("concentrate")
    cue = facts.first("concentrate")
    if cue is not None:  # 'a litre of concentrate 1:100', and not 'with 1:100 concentrate'
        start = facts.raws[cue.at].start
        asked = asked or any(t.type == "RATIO" and t.start > start for t in facts.tokens)
    if not asked or facts.rest.genera or facts.target.named:
        return None
    return Order("stock", products=facts.products)


def together(facts: Facts) -> Order | None:
    """Whether products may share a bottle."""
    asked = queried.queries(facts) and facts.says_any("mixing")
    asked = asked and facts.rest.volume_l is None and facts.rest.water is None
    if not facts.products or facts.target.named or not (facts.has("share_bottle") or asked):
        return None
    if len(facts.products) < 2 and not (asked or queried.queries(facts)):
        return None
    return Order("together", products=facts.products)


def blend(facts: Facts) -> Order | None:
    """A mix of products for a target: 'blend blue tub and red box for bloom in 5 l'."""
    if not facts.has("blend") or facts.rest.analysis:
        return None
    if len(facts.products) == 1 or facts.rest.water is not None:
        return None
    goal = "bloom" if facts.has("bloom_goal") or facts.rest.growth == "flowering" else "growth"
    return Order("blend", target=facts.target, products=facts.products, text=goal)
