"""Whether a message only picks: a number of a list, a name, a kind or a place, and no more."""

from __future__ import annotations

from grammar.lexicon import words_under
from grammar.orders.facts import Facts

#: Words that join what is picked.
_JOINING = frozenset({"ARTICLE", "IN", "OF", "AND", "PLUS", "TO"})
_PICKING = frozenset({"everything", "both", "them"})


def numbers(facts: Facts) -> tuple[int, ...]:
    """The numbers of a list that were picked: '2', '1 and 3', 'number 2'."""
    raws = facts.raws
    said = [i for i, raw in enumerate(raws) if raw.kind == "number"]
    whole = all(raws[i].text.isdecimal() for i in said)
    rest = (i for i in range(len(raws)) if i not in said)
    alone = all(_small(facts, i) or facts.words.cue_at(i) == "step" for i in rest)
    if not (said and whole and alone) or "?" in facts.folded.text:
        return ()
    return tuple(int(raws[i].text) for i in said)


def only_plants(facts: Facts) -> bool:
    """Whether plants were said and nothing else: 'Ruby', 'the one on the balcony, please'."""
    target = facts.target
    said = not target.empty or target.medium or target.traits
    if not said or facts.question or facts.products:
        return False
    held = set(facts.named) | {i for _, run in facts.place_runs for i in run}
    for mark in facts.found:
        picks = mark.type == "ORDER" and _PICKING.issuperset(mark.value.split())
        if mark.type == "TRAIT" or picks:
            held |= set(range(mark.at, mark.end))
    starts = {raw.start: i for i, raw in enumerate(facts.raws)}
    for token in facts.tokens:
        if token.type in ("GENUS", "MEDIUM", "PLANTS"):
            held |= {starts[raw.start] for raw in token.raws}
    return all(i in held or _small(facts, i) for i in range(len(facts.raws)))


def _small(facts: Facts, index: int) -> bool:
    """Whether a word carries nothing where something is picked: 'please', 'the one'."""
    raw = facts.raws[index]
    joins = raw.kind == "sign" or facts.words.type_at(index) in _JOINING
    return joins or raw.text in words_under(facts.words.lexicon.language, "picking")
