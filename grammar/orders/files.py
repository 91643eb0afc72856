"""Files: forms for exporting, importing and the calendar."""

from __future__ import annotations

from grammar.order import Order
from grammar.orders.facts import Facts
from grammar.words.marks import Mark


def give_out(facts: Facts) -> Order | None:
    asked = facts.has("export") or (facts.has("csv") and not facts.has("import"))
    if not asked or facts.asks_dose:
        return None
    return Order("export", text="csv" if facts.has("csv") else "json")


def calendar(facts: Facts) -> Order | None:
    """'calendar', 'calendar for the vandas'; a calendar that is spoken of is none."""
    if not facts.has("calendar") or facts.asks_dose or facts.has("fed", "gave", "repot", "import"):
        return None
    meant = facts.starts("calendar") or facts.alone
    return Order("calendar", target=facts.target) if meant else None


def take_in(facts: Facts) -> Order | None:
    cue = facts.first("import")
    if cue is None or facts.asks_dose:
        return None
    return Order("import", text=text_after(facts, cue))


def text_after(facts: Facts, cue: Mark) -> str:
    """The words behind a cue as they were written, signs among them."""
    if cue.end >= len(facts.raws):
        return ""
    start = facts.raws[cue.end].start
    return facts.folded.written(start, len(facts.folded.text)).strip().rstrip(".!?")
