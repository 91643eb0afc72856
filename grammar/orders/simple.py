"""Forms that a phrase alone decides."""

from __future__ import annotations

from collections.abc import Callable
from typing import TypeAlias

from grammar.lexicon import words_under
from grammar.order import Order
from grammar.orders import meant
from grammar.orders.facts import Facts

Form: TypeAlias = Callable[[Facts], Order | None]


#: A 'no' beside these denies them, and answers no question.
_CHANGES = ("fed", "clear", "flush", "repot", "move", "lose", "done")


def phrase(verb: str, *cues: str) -> Form:
    """A form of its own phrase, with nothing beside it that a dose needs."""

    def form(facts: Facts) -> Order | None:
        if not facts.has(*cues) or facts.asks_dose or facts.rest.genera:
            return None
        return Order(verb, target=facts.target, when=facts.when[0], products=facts.products)

    return form


def bare(verb: str, *cues: str, text: str = "") -> Form:
    """A form that is the whole message."""

    def form(facts: Facts) -> Order | None:
        told = verb == "skip" and facts.has("fed", "clear", "flush")  # 'fed all, not sure'
        denies = verb == "no" and (facts.has(*_CHANGES) or (facts.has("use") and facts.products))
        tells = verb == "yes" and facts.has("fed", "clear", "flush") and facts.target.named
        # 'done except Hugo', 'not done': see care.done
        some = verb == "done" and (facts.target.named or meant.is_denied(facts, "done"))
        # 'no, no feed tomorrow' and 'ok, feed today?' speak of feed, and answer no question
        feeds = verb in ("yes", "no") and (facts.rest.mentions_feeding or facts.has("dose"))
        said = told or denies or tells or some or feeds
        bare = facts.starts(*cues) and facts.alone and not said
        return Order(verb, text=text) if bare else None

    return form


def left(facts: Facts) -> Order | None:
    """'never mind': it denies nothing, and puts a question aside."""
    if is_one_of(facts, "declines"):
        return Order("no", text="thanks")
    if is_one_of(facts, "not_now"):
        return Order("no", text="now")
    return Order("no", text="leave") if _puts_aside(facts) else None


def _puts_aside(facts: Facts) -> bool:
    """'forget it', 'no, cancel that', 'nvm stop it': nothing but such words."""
    leads = words_under(facts.words.lexicon.language, "instead_leads")
    stops = {m.at: m.size for m in facts.found if m.value == "stop"}
    index, left_aside = 0, False
    while index < len(facts.raws):
        aside = facts.phrase_at(index, "leaves")
        left_aside = left_aside or aside > 0
        size = max(aside, stops.get(index, 0), int(facts.raws[index].text in leads))
        if not size:
            return False
        index += size
    return left_aside


def undone(facts: Facts) -> Order | None:
    """'I did not': nothing else is said, so it is the last entry that is denied."""
    return Order("undo") if is_one_of(facts, "undoes") else None


#: What was done by the words that name it as work.
_WORK = {"feed": "fed", "water": "clear", "flush": "flush"}
#: What was done by the words of an order.
_DONE = ("fed", "clear", "flush", "repot", "move", "lose", "add")


def undo(facts: Facts) -> Order | None:
    """'Undo', 'undo the feeding of Ruby', 'forget the repotting': the last entry, if it is that."""
    if facts.has("alive") and facts.alone and not facts.question:
        return Order("undo", target=facts.target, asks_kind="lose")  # 'not dead after all'
    if not facts.starts("undo", "undo_of") or not facts.alone:
        return None
    kind = next((k for k in _DONE if facts.has(k)), None)
    kind = kind or next((_WORK[m.value] for m in facts.tasks if m.value in _WORK), None)
    if kind is None and not facts.has("undo"):
        return None  # 'forget about Ruby'
    return Order("undo", target=facts.target, asks_kind=kind)


def is_one_of(facts: Facts, key: str) -> bool:
    """Whether the whole message is one of the phrases that the settings of the language list."""
    said = " ".join(raw.text for raw in facts.raws if raw.kind == "word")
    return said in words_under(facts.words.lexicon.language, key)


def only(verb: str, *cues: str) -> Form:
    """A form that says nothing else: no other order phrase stands beside it."""

    def form(facts: Facts) -> Order | None:
        said = [m for m in facts.found if m.value in cues]
        return Order(verb) if said and len(said) == len(facts.found) and facts.alone else None

    return form
