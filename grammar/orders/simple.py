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
        denies = verb == "no" and facts.has(*_CHANGES)
        tells = verb == "yes" and facts.has("fed", "clear", "flush") and facts.target.named
        # 'done except Hugo', 'not done': see care.done
        some = verb == "done" and (facts.target.named or meant.is_denied(facts, "done"))
        said = told or denies or tells or some
        bare = facts.starts(*cues) and facts.alone and not said
        return Order(verb, text=text) if bare else None

    return form


def left(facts: Facts) -> Order | None:
    """'never mind': it denies nothing, and puts a question aside."""
    return Order("no", text="leave") if _is_one_of(facts, "leaves") else None


def undone(facts: Facts) -> Order | None:
    """'I did not': nothing else is said, so it is the last entry that is denied."""
    return Order("undo") if _is_one_of(facts, "undoes") else None


def _is_one_of(facts: Facts, key: str) -> bool:
    """Whether the whole message is one of the phrases that the settings of the language list."""
    said = " ".join(raw.text for raw in facts.raws if raw.kind == "word")
    return said in words_under(facts.words.lexicon.language, key)


def only(verb: str, *cues: str) -> Form:
    """A form that says nothing else: no other order phrase stands beside it."""

    def form(facts: Facts) -> Order | None:
        said = [m for m in facts.found if m.value in cues]
        return Order(verb) if said and len(said) == len(facts.found) and facts.alone else None

    return form
