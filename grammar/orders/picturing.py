"""What is asked for as a picture: the year, the salts of a pot, a dose as a card."""

from __future__ import annotations

from grammar.order import Order, Target
from grammar.orders.facts import Facts


def year(facts: Facts) -> Order | None:
    """The year of the plants: 'show my year', 'the year of the vandas as a picture'."""
    seen = facts.has("year") and (facts.has("pictured", "show") or facts.alone)
    if not seen or facts.asks_dose or facts.has("fed", "flush", "gave", "history", "calendar"):
        return None
    return Order("picture_year", target=facts.target)


def salts(facts: Facts) -> Order | None:
    """The salts of a pot over its log: 'chart of the salts in Ruby'."""
    about = facts.has("salts", "salts_of") and facts.has("pictured", "show")
    if not about or facts.rest.analysis or facts.asks_dose:
        return None
    target = facts.target
    return Order("picture_salts", target=Target(everything=True) if target.empty else target)


def card(facts: Facts) -> Order | None:
    """A dose as a card: 'dose card', 'card for 3 litres', '5 l 20-20-20, quarter, as a card'."""
    if not facts.has("card") or facts.has("naming", "rename", "lose", "add", "import"):
        return None
    if not (facts.starts("card") or facts.alone or facts.asks_dose):
        return None
    return Order("picture_card", target=facts.target, products=facts.products)
