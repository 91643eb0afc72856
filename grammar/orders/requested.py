"""Whether a message without a figure asks for an amount, or only speaks of feed and plants.

'The dog knocked over the feed', 'I was going to feed them but it rained' and 'no feed tomorrow'
name feed as 'feed for the phals' does; an amount would answer what nobody asked.
"""

from __future__ import annotations

from grammar.lexicon import words_under
from grammar.orders.facts import Facts
from grammar.reading import Reading

#: What only an amount needs: a message that says any of these asks for one.
_FIGURES = (
    "volume_l", "analysis", "extras", "strength", "regime", "label_rate", "target_n_mg_l",
    "target_ec_ms_cm", "scale_step_g", "problems",
)  # fmt: skip
#: In a phrase for clear water, what says so.
_SAYS_PURE = frozenset({"WATER", "WATER_WORD", "NOT"})
#: Around plants that are named and no more, so many words may carry nothing: 'and for the phals'.
_MOST_SMALL = 2


def only_told(facts: Facts, reading: Reading, held: frozenset[str]) -> str:
    """How it only speaks of feed or plants, '' where it asks: ceased, denied, planned or unclear.

    Parameters
    ----------
    facts : the message
    reading : its figures
    held : words that were understood besides, such as signs of an ailing plant
    """
    if any(getattr(reading, slot) not in (None, (), {}, False) for slot in _FIGURES):
        return ""
    if facts.has("dose", "dose_word") or not (facts.products or _speaks(facts, reading)):
        return ""
    if facts.says_any("ceases") or for_good(facts):
        return "ceased"
    target = facts.target  # of 'the phals, not Ruby' the phals are asked for
    some = target.excepts and (target.everything or target.named_one)
    if not some and _is_denied(facts):
        return "denied"
    if reading.conflicts:  # asked about
        return ""
    when = facts.when[0]
    if when is not None and when.kind == "day" and when.value < 0:
        return "planned"
    if any(u.text not in held for u in reading.unknown) or facts.says_any("asks_where"):
        return "unclear"
    if reading.mentions_feeding and _somebody(facts):
        return "unclear"
    return "unclear" if _by_the_way(facts, reading) else ""


def for_good(facts: Facts) -> bool:
    """'Ruby never gets feed': a pause that lasts, where nothing tells of the past."""
    return facts.says_any("never") and not (facts.has("gave") or facts.been or facts.question)


def water_alone(facts: Facts, reading: Reading) -> bool:
    """Whether so much water is asked for and no feed in it: '2 l clear water for the phals'."""
    dosed = (getattr(reading, slot) for slot in _FIGURES if slot not in ("volume_l", "problems"))
    if reading.volume_l is None or reading.problems or any(v not in (None, (), {}) for v in dosed):
        return False
    if facts.products or facts.been or facts.has("dose", "dose_word", "gave", "fed", "since"):
        return False
    clear = {i for m in facts.found if "clear" in m.value.split() for i in range(m.at, m.end)}
    denied = {i for at in range(len(facts.raws)) if _no_feed(facts, at) for i in (at, at + 1)}
    pure = any(facts.words.type_at(i) in _SAYS_PURE for i in clear)  # 'wet' alone is no water
    feeds = (i for i in range(len(facts.raws)) if feeds_at(facts, i))
    return (pure or bool(denied)) and all(i in clear or i in denied for i in feeds)


def feeds_at(facts: Facts, index: int) -> bool:
    """Whether this word is one for feed."""
    entry = facts.words.lexicon.words.get(facts.raws[index].text)
    return entry is not None and entry.value.startswith("feeding")


def _speaks(facts: Facts, reading: Reading) -> bool:
    """Whether feed or plants are named at all."""
    return reading.mentions_feeding or bool(reading.genera) or not facts.target.empty


def _is_denied(facts: Facts) -> bool:
    """'dont feed', 'was going to feed': said not to be, wherever in the message."""
    language = facts.words.lexicon.language
    denials = words_under(language, "denials")
    for index, raw in enumerate(facts.raws):
        if index in facts.named:
            continue
        answers = index == 0 and len(facts.raws) > 1 and facts.raws[1].after_break  # 'no, for Ruby'
        if (raw.text in denials and not answers) or _no_feed(facts, index):
            return True
        if facts.phrase_at(index, "not_so"):
            return True
    return False


def _somebody(facts: Facts) -> bool:
    """Whether somebody else is spoken of: 'can my neighbour feed them'."""
    others = words_under(facts.words.lexicon.language, "others")
    return any(raw.text in others for raw in facts.raws)


def _no_feed(facts: Facts, index: int) -> bool:
    """'no feed' begins here."""
    if facts.words.type_at(index) != "NOT" or index + 1 >= len(facts.raws):
        return False
    return feeds_at(facts, index + 1)


def _by_the_way(facts: Facts, reading: Reading) -> bool:
    """Whether plants are named among other words, and feed is not: 'the phals look nice there'."""
    if reading.mentions_feeding or facts.products or reading.growth or reading.season:
        return False
    small = [i for i in range(len(facts.raws)) if facts.words.type_at(i) == "FILLER"]
    return len([i for i in small if i not in facts.named]) > _MOST_SMALL
