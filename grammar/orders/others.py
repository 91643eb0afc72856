"""Plants of somebody else: what is told of them is no change to one's own."""

from __future__ import annotations

from grammar.lexicon import words_under
from grammar.order import Order
from grammar.orders.facts import Facts

#: Changes that a story about somebody else's plants could be taken for.
_TOLD = frozenset({"growth", "fed", "clear", "flush", "repot", "move", "lose", "correct"})
#: An owner stands this close to the plants [words].
_NEAR = 3


def of_others(facts: Facts, order: Order) -> Order | None:
    """What is meant instead of a change, where the plants are somebody else's; else None.

    'my friend's vanda is in flower', 'vanda koleżanki kwitnie', 'mum repotted her phals'. A plant
    that was called by its name is one's own, whoever fed it.

    Parameters
    ----------
    facts : the message
    order : the change that it speaks of
    """
    target = order.target
    kinds = bool(target.genera) and not (target.names or target.place or target.everything)
    if order.verb not in _TOLD or not kinds or order.also or not facts.genus_places:
        return None
    genus = facts.genus_places[0][0]
    theirs = _owner_before(facts, genus) or _of_them(facts, genus)
    if order.verb != "lose" or facts.rest.growth:  # else 'die Vanda meiner Freundin' says to whom
        theirs = theirs or _owner_behind(facts, genus)
    return Order("not_changed", text="others") if theirs else None


def _others(facts: Facts) -> frozenset[str]:
    return words_under(facts.words.lexicon.language, "others")


def _owner_before(facts: Facts, genus: int) -> bool:
    """'my friend's vanda', 'my friends vanda', 'Omas Vanda'."""
    others = _others(facts)
    for index in range(genus - 1, max(genus - _NEAR, 0) - 1, -1):
        if facts.raws[index + 1].after_break:
            return False
        word = facts.raws[index].text
        stem = word.removesuffix("s").removesuffix("'")
        if stem != word and stem in others:
            return True
    return False


def _owner_behind(facts: Facts, genus: int) -> bool:
    """'vanda koleżanki', 'die Vanda meiner Freundin', 'la vanda de mi amiga'."""
    links = words_under(facts.words.lexicon.language, "owned_by")
    for raw in facts.raws[genus + 1 : genus + 1 + _NEAR]:
        if raw.after_break:
            return False
        if raw.text in _others(facts):
            return True
        if raw.text not in links:
            return False
    return False


def _of_them(facts: Facts, genus: int) -> bool:
    """'my friend fed her vanda', 'my neighbour has a phal', 'u koleżanki kwitnie vanda'."""
    language = facts.words.lexicon.language
    theirs, at = words_under(language, "theirs"), words_under(language, "at_theirs")
    words = [raw.text for raw in facts.raws[:genus]]
    someone = False
    for index, raw in enumerate(facts.raws[:genus]):
        if raw.after_break:
            someone = False
        if someone and raw.text in theirs:
            return True
        if raw.text in _others(facts):
            someone = True
            if not at.isdisjoint(words[max(index - 2, 0) : index]):
                return True
    return False
