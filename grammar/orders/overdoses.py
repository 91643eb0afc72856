"""More feed than usual that was given, told without a figure: 'gave them double by accident'."""

from __future__ import annotations

from grammar.lexicon import phrases_under
from grammar.order import Order
from grammar.orders import requested
from grammar.orders.facts import Facts

#: Behind a bare 'double' these leave it one of the feed: 'a double spike' is another.
_AFTER = frozenset({
    "FILLER", "ASIDE", "PAST", "PRESENT", "FOR", "TO", "IN", "STRENGTH", "LABEL", "AND", "SHARE",
    "EVENT",
})  # fmt: skip


def overdone(facts: Facts) -> Order | None:
    """A strength over the full one that was given, and no dose that is asked for."""
    told = facts.has("gave", "put_in", "fed") or any(t.type == "PAST" for t in facts.tokens)
    rest = facts.rest
    compared = rest.strength is None and _over_usual(facts)  # a log would not keep it
    logged = facts.has("fed") and not facts.target.empty and not compared
    figures = rest.volume_l is not None or rest.analysis is not None or rest.label_rate is not None
    if not told or logged or figures or facts.question or rest.growth or facts.has("tell_missed"):
        return None
    if any(t.type in ("WATER", "WATER_WORD", "NOT") for t in facts.tokens):
        return None  # 'gave them double the water'
    return Order("overdone", target=facts.target, when=facts.when[0]) if _over(facts) else None


def _over(facts: Facts) -> bool:
    """Whether more than full strength, or than the usual, was said of the feed."""
    if _over_usual(facts):
        return True
    tokens = facts.tokens
    for index, token in enumerate(tokens):
        if token.type == "LEVEL" and _times(token.value) > 1:
            return True
        if token.type == "MULTIPLE" and _times(token.value) > 1:
            behind = tokens[index + 1] if index + 1 < len(tokens) else None
            if behind is None or behind.after_break or behind.type in _AFTER:
                return True
    return False


def _over_usual(facts: Facts) -> bool:
    """'twice as much as usual' of the feed, and not 'twice as much light'."""
    if not facts.says_any("than_usual"):
        return False
    language = facts.words.lexicon.language
    ends = {p[0] for p in phrases_under(language, "than_usual")}
    for phrase in phrases_under(language, "times_over"):
        for index in range(len(facts.raws)):
            behind = index + len(phrase)
            if facts.stands_at(index, phrase) and (
                behind >= len(facts.raws)
                or facts.raws[behind].after_break
                or facts.raws[behind].text in ends
                or facts.is_filler(behind)
                or facts.words.type_at(behind) in _AFTER | {"EVERY"}  # 'tyle co zwykle'
                or requested.feeds_at(facts, behind)
                or behind in facts.named
            ):
                return True
    return False


def _times(value: str) -> float:
    above, _, below = value.partition("/")
    return float(above) / float(below or 1)
