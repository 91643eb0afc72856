"""Whether a figure is asked about, or told of a time or a person that is not meant.

'0.5 g blue per litre gives what EC', 'is 12 dH hard', 'my neighbour's tap is 20 dH' and 'last
year my tap was 20 dH' name figures as a label or a report does, and put nothing on record.
"""

from __future__ import annotations

from grammar.lexicon import words_under
from grammar.orders.facts import Facts

#: So many small words stand before a word that begins a question.
_HEAD = 3
#: What was measured less long ago is still so [days].
_LONG_AGO = 300


def queries(facts: Facts) -> bool:
    """Whether something is asked, with or without a sign for it."""
    if "?" in facts.folded.text:
        return True
    places = [i for i in range(len(facts.raws)) if i not in facts.named | facts.new_name[1]]
    for index in places:
        if facts.phrase_at(index, "query_not"):
            continue
        if facts.phrase_at(index, "query_words"):
            return True
        if facts.phrase_at(index, "query_heads") and _begins_clause(facts, index):
            return True
    return False


def _begins_clause(facts: Facts, index: int) -> bool:
    """Whether only 'and', 'yes' and the like stand between here and the head of the clause."""
    for at in range(index, max(index - _HEAD, -1), -1):
        if at == 0 or facts.raws[at].after_break:
            return True
        if not (facts.is_and(at - 1) or facts.words.cue_at(at - 1) in ("yes", "no", "hail")):
            return False
    return False


def rates_bare(facts: Facts) -> bool:
    """'12 dH is hard', of no water: asked, where '12 dH, my water is hard' tells."""
    watery = any(t.type in ("WATER", "WATER_WORD") for t in facts.tokens)
    if watery or facts.has("my", "have", "default", "settings"):
        return False
    return facts.says_any("rates_bare")


def of_another_time(facts: Facts) -> bool:
    """'last year my tap was 20 dH': what is over tells nothing of what is."""
    when = facts.when[0]
    if when is not None and when.value > {"year": 0, "day": _LONG_AGO}.get(when.kind, when.value):
        return not _since(facts)
    return facts.says_any("used_to")


def _since(facts: Facts) -> bool:
    since = words_under(facts.words.lexicon.language, "since")
    return any(raw.text in since for raw in facts.raws)


def of_somebody_else(facts: Facts) -> bool:
    """'my neighbour's tap is 20 dH', 'el grifo de mi vecina tiene 20 dH'."""
    others = words_under(facts.words.lexicon.language, "others")

    def owner(index: int) -> bool:
        word = facts.raws[index].text
        stems = (word, word.removesuffix("s"), word.removesuffix("s").removesuffix("'"))
        return not others.isdisjoint(stems)

    return any(owner(i) for i in range(len(facts.raws)) if i not in facts.named)
