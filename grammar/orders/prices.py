"""What feeds cost and how they compare: forms for `orders`."""

from __future__ import annotations

from grammar.order import Order
from grammar.orders.facts import Facts


def compare(facts: Facts) -> Order | None:
    """Feeds side by side: 'compare blue tub and red box', 'what costs 100 litres'."""
    rest = facts.rest
    asked = facts.has("compare", "cheaper") or _asks_a_price(facts)
    if not asked or facts.has("fed", "flush", "clear", "add"):
        return None
    labels = rest.analysis or any(c.slot == "analysis" for c in rest.conflicts)
    if labels and not facts.products:
        return None if rest.volume_l is not None else Order("compare_labels")
    if rest.form and facts.has("compare") and not facts.products and rest.volume_l is not None:
        return None
    text = "price" if not facts.has("compare") else ""
    return Order("compare", products=facts.products, text=text)


def _asks_a_price(facts: Facts) -> bool:
    """Whether it is asked what something costs; a price that is told names its money."""
    said = {(m.type, m.value) for m in facts.found}
    priced = ("LABEL_PART", "price") in said and not any(t == "CURRENCY" for t, _ in said)
    so_much = facts.rest.volume_l is not None and not facts.products
    asks = facts.has("which", "dose", "dose_word") or "?" in facts.folded.text
    return priced and (asks or so_much)
