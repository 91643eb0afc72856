"""How often a label wants to be used, beside how often the person feeds."""

from __future__ import annotations

from grammar.words.tokens import QUANTITY_UNITS, Tokens
from grammar.words.tokens import type_at as _type

_RHYTHMS = frozenset({"REGIME", "OTHER_REGIME"})
#: Between what a label says and how often it says so nothing else stands than these.
_SMALL = frozenset({
    "LABEL", "FILLER", "ASIDE", "ARTICLE", "OF", "IN", "TO", "FOR", "AND", "OR", "FORM",
    "WATER_WORD", "PLANTS", "EVERY", "GROWING_VERB", "TIMES", "STRENGTH", "PERCENT",
})  # fmt: skip
_OWN = ("speaker", "speaker_gives", "feeding_own")


def label_intervals(tokens: Tokens) -> Tokens:
    """'label: 2 g per litre monthly' tells how often the label wants it, not the person.

    It is shown where nothing is said of the person's own rhythm.
    """
    stretches = _stretches(tokens)
    of_label = {at for stretch in stretches for at in stretch if tokens[at].type in _RHYTHMS}
    told = any(t.type in _RHYTHMS and i not in of_label for i, t in enumerate(tokens))
    type_ = "FILLER" if told else "UNKNOWN"
    return [
        t._replace(type=type_, value="interval") if i in of_label else t
        for i, t in enumerate(tokens)
    ]


def _stretches(tokens: Tokens) -> list[list[int]]:
    """The places of each stretch of words in which a label speaks of a rate and how often."""
    rates = _rates(tokens)
    found: list[list[int]] = []
    current: list[int] = []
    for index, token in enumerate(tokens):
        fits = index in rates or token.type in _SMALL | _RHYTHMS
        own = token.type == "FILLER" and token.value in _OWN
        if (token.after_break and not _opens(tokens, current)) or not fits or own:
            found.append(current)
            current = []
        if fits and not own:
            current.append(index)
    found.append(current)
    return [_labelled(tokens, stretch, rates) for stretch in found]


def _opens(tokens: Tokens, before: list[int]) -> bool:
    """Whether what stands before a break is only a label: 'Label: 15 g per 10 l'."""
    kinds = {tokens[at].type for at in before}
    return "LABEL" in kinds and kinds <= {"LABEL", "FILLER", "ARTICLE"}


def _labelled(tokens: Tokens, stretch: list[int], rates: set[int]) -> list[int]:
    """The part of a stretch that a label says, empty where it says none."""
    labels = [at for at in stretch if tokens[at].type == "LABEL"]
    rated = [at for at in stretch if at in rates]
    if not labels:
        return []
    first, last = labels[0], labels[-1]
    if rated:
        # 'weekly, label 1 g/l': what stands before both is not the label's
        start = min(first, rated[0]) if rated[0] > first else stretch[0]
        return [at for at in stretch if at >= start]
    says = [at for at in labels if tokens[at].value == "says"]
    return [at for at in stretch if says and (at > says[0] or last < at)]


def _rates(tokens: Tokens) -> set[int]:
    """The places of the words that a rate is made of."""
    out: set[int] = set()
    for index, token in enumerate(tokens):
        if token.type == "RATIO":
            out.add(index)
        elif token.type in ("PER", "EACH"):
            ahead = _unit_ahead(tokens, index + 1)
            if token.type == "EACH" and ahead is not None:
                ahead = _unit_ahead(tokens, ahead + 1)
            start = index if token.type == "EACH" else _amount_before(tokens, index)
            if ahead is not None and start is not None:
                out.update(range(start, ahead + 1))
    return out


def _unit_ahead(tokens: Tokens, index: int) -> int | None:
    for at in range(index, min(index + 6, len(tokens))):
        if tokens[at].type in QUANTITY_UNITS:
            return at
    return None


def _amount_before(tokens: Tokens, index: int) -> int | None:
    for at in range(index - 1, max(index - 6, -1), -1):
        if tokens[at].type == "AMOUNT" and _type(tokens, at + 1) in QUANTITY_UNITS:
            return at
    return None
