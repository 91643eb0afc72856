"""How many of several alike are meant: '2 of the phals', 'una de mis vandas'."""

from __future__ import annotations

from grammar.lexicon import words_under
from grammar.orders.facts import Facts
from grammar.rhythms.days import whole

#: So many words stand between a number and the kind that it is of: '2 of my old phals'.
_WITHIN = 4


def some_of(facts: Facts) -> tuple[int, str] | None:
    """How many of a kind, with the word that says so; None where it is not said of a part."""
    language = facts.words.lexicon.language
    of, own = words_under(language, "part_of"), words_under(language, "first_person")
    kinds = {at for at, _ in facts.genus_places}
    for index in range(len(facts.raws) - 1):
        number = number_at(facts, index)
        if number is None or facts.raws[index + 1].text not in of:
            continue
        for at in range(index + 1, min(index + 1 + _WITHIN, len(facts.raws))):
            raw = facts.raws[at]
            if raw.after_break:
                break
            both = "both" in facts.words.cue_at(at).split()
            if at in kinds or both:  # 'eine der beiden'
                said = facts.raws[index]
                return number, facts.folded.written(said.start, said.end)
            small = facts.is_filler(at) or raw.text in of or raw.text in own
            if not (small or number_at(facts, at)):  # 'one of the two phals'
                break
    return None


def number_at(facts: Facts, index: int) -> int | None:
    """The number of plants that a word says; 'a' and 'one of' are one."""
    if index in facts.named or index in facts.when[1]:
        return None
    entry = facts.words.lexicon.words.get(facts.raws[index].text)
    one = facts.raws[index].text in words_under(facts.words.lexicon.language, "one_of")
    if one or (entry is not None and (entry.type, entry.value) == ("ARTICLE", "one")):
        return 1
    number = whole(facts.words, index)
    return number if number and number > 0 else None
