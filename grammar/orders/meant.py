"""Whether a change that a message speaks of is meant: not where it is denied, asked or planned.

'didn't flush Ruby', 'do not remove Ruby', 'should I repot Ruby', 'need to flush them' speak of a
change as 'flushed Ruby' does, and nothing may come of them.
"""

from __future__ import annotations

from grammar.lexicon import phrases_under, settings_of, words_under
from grammar.order import Order
from grammar.orders.facts import Facts
from grammar.words.marks import Mark
from grammar.words.spelling import denies_by_a_slip

#: The phrases that speak of each change.
_SAID: dict[str, tuple[str, ...]] = {
    "fed": ("fed", "gave", "with_feed"),
    "clear": ("clear", "watered", "gave"),
    "flush": ("flush",),
    "repot": ("repot",),
    "move": ("move", "be"),
    "lose": ("lose",),
    "product_remove": ("empty", "lose"),
    "reminder_stop": ("reminder_stop", "reminder_stop_all", "reminder_off", "stop", "cancel"),
    "add": ("add", "have"),
}
_CARE = frozenset({"fed", "clear", "flush", "repot"})
#: What is planned of these is asked for all the same: 'I want to add a vanda'.
_WANTED = frozenset({"add", "reminder_stop", "product_remove"})
#: A question begins behind so many words that carry nothing.
_HEAD = 3

Phrases = tuple[tuple[str, ...], ...]


def held_back(facts: Facts, order: Order) -> Order | None:
    """What is meant instead of a change, None where the change is.

    Parameters
    ----------
    facts : the message
    order : the change that it speaks of
    """
    said = _SAID.get(order.verb)
    cue = facts.first(*said) if said is not None else None
    if cue is None or order.also:
        return None
    begin = _clause(facts, cue)
    if order.verb != "add" and _denied(facts, cue, begin):
        return Order("not_given" if order.verb in _CARE else "not_changed", text=order.verb)
    asked = _begins(facts, begin, "asks")
    back = _begins(facts, begin, "asks_back")
    planned = _planned(facts, begin, cue.at)
    if order.verb == "add":
        return Order("plants", target=facts.target) if asked or back else None
    unsure = order.verb == "lose" and _stands(facts, begin, len(facts.raws), "unsure")
    if unsure or asked or (planned and order.verb not in _WANTED):
        if order.verb == "flush" and not facts.target.empty and not facts.target.everything:
            return Order("salts", target=facts.target)
        return Order("not_told", text=order.verb)
    if back and order.verb in _CARE:
        return Order("history", target=facts.target, when=facts.when[0], asks_kind=order.verb)
    return Order("not_told", text=order.verb) if back else None


def asked_back(facts: Facts) -> Order | None:
    """'has Ruby been fed?', 'should I flush Mia?': a question about care, not about a dose."""
    if not facts.question or facts.asks_dose or facts.has("dose", "dose_word"):
        return None
    if facts.target.empty or facts.target.everything:
        return None
    for verb in ("flush", "fed", "clear", "repot"):
        if facts.first(*_SAID[verb]) is not None:
            told = Order(verb, target=facts.target, when=facts.when[0])
            order = held_back(facts, told)
            asked = facts.asks_first or "?" in facts.folded.text
            if order is None and asked:  # '¿ha recibido abono Ruby?'
                return Order("history", target=told.target, when=told.when, asks_kind=verb)
            return order if order is not None and order.verb != "not_given" else None
    return None


def nothing_given(facts: Facts) -> Order | None:
    """'I have not fed the phals': before 'I have ...' puts them on record."""
    done = facts.first("fed", "clear", "flush")
    if done is None or facts.question or facts.asks_dose:
        return None
    before = range(max(done.at - 2, 0), done.at)
    denied = any(facts.words.type_at(i) == "NOT" for i in before)
    had = [m.at for m in facts.found if m.type == "PLANT"] + [i for i, _ in facts.genus_places]
    if not denied or not had or min(had) < done.at or not not_done(facts, done.value.split()[0]):
        return None
    return Order("not_given")


def unfed(facts: Facts) -> Order | None:
    """'did not feed Ruby', 'nobody got feed today': nothing was given, and no dose is asked for."""
    cue = facts.first("not_fed")
    if cue is None or facts.question or facts.asks_dose or facts.rest.volume_l is not None:
        return None
    done = facts.first("fed", "gave", "clear", "flush")
    near = done is not None and cue.end <= done.at <= cue.end + 1
    apart = done is not None and not (near and not facts.raws[done.at].after_break)
    return None if apart else Order("not_given")


def not_done(facts: Facts, verb: str) -> bool:
    """'I have not fed Ruby', 'havnt fed', 'should have fed': nothing was given."""
    lexicon = facts.words.lexicon
    cue = facts.first("except")
    denying = settings_of(lexicon.language).get("denies", ())
    if cue is not None and (cue.size > 1 or facts.raws[cue.at].text not in denying):
        return False
    done = facts.first("fed", "gave") if verb == "fed" else facts.first(verb)
    if done is None:
        return False
    passed = facts.spared
    denied = [i for i in range(done.at) if facts.words.type_at(i) == "NOT" and i not in passed]
    if cue is not None and not denied:  # 'fed the phals, not Ruby'; 'gedüngt habe ich Ruby nicht'
        last = all(_small(facts, i) for i in range(cue.end, len(facts.raws)))
        return last and not facts.target.excepts and not facts.has("everything")
    if verb != "fed":  # 'no feed, clear water for Ruby' is none of these
        near = (range(i + 1, done.at + 1) for i in denied)
        return any(
            all(_small(facts, j) or j == done.at for j in run)
            and not any(facts.raws[j].after_break for j in run)  # 'no, flushed Ruby'
            for run in near
        )
    before = (facts.raws[i] for i in range(done.at) if i not in facts.named)
    slips = (denies_by_a_slip(raw, lexicon) for raw in before)
    none = facts.words.type_at(done.end) == "NOT"  # 'fed no phals'
    return bool(denied) or none or facts.has("not_done") or any(slips)


def _small(facts: Facts, index: int) -> bool:
    """Whether a word carries nothing, not even that it is about feed."""
    entry = facts.words.lexicon.words.get(facts.raws[index].text)
    return facts.is_filler(index) and (entry is None or not entry.value.startswith("feeding"))


def _clause(facts: Facts, cue: Mark) -> int:
    """Where the clause of a phrase begins."""
    for index in range(cue.at, 0, -1):
        if facts.raws[index].after_break:
            return index
    return 0


def _denied(facts: Facts, cue: Mark, begin: int) -> bool:
    """Whether it is denied: before the phrase, or at the very end ('topfe Ruby nicht um')."""
    words = words_under(facts.words.lexicon.language, "denials")
    inside = {i for m in facts.found if m.type == "ORDER" and m.value not in ("except", "no")
              for i in range(m.at, m.end)}  # fmt: skip
    for index in range(begin, cue.at):
        if index in facts.named or index in inside or facts.raws[index].text not in words:
            continue
        between = range(index + 1, cue.at)
        if not any(facts.is_and(i) for i in between):
            return True
    last = len(facts.raws) - 1
    return last >= cue.end and facts.raws[last].text in words and last not in inside


def _begins(facts: Facts, begin: int, key: str) -> bool:
    """Whether one of the phrases stands at the head of the clause."""
    phrases = phrases_under(facts.words.lexicon.language, key)
    held = {m.at for m in facts.found if m.type == "ORDER" and m.size > 1}  # 'was fed: Ruby'
    for index in range(begin, min(begin + _HEAD, len(facts.raws))):
        if index not in held and _phrase_at(facts, index, phrases):
            return True
        small = facts.is_filler(index) or facts.words.cue_at(index) in ("yes", "no", "hail")
        if not small:
            return False
    return False


def _stands(facts: Facts, begin: int, end: int, key: str) -> bool:
    """Whether one of the phrases stands somewhere in a stretch."""
    phrases = phrases_under(facts.words.lexicon.language, key)
    places = (i for i in range(begin, end) if i not in facts.named)
    return any(_phrase_at(facts, i, phrases) for i in places)


def _planned(facts: Facts, begin: int, end: int) -> bool:
    """Whether it is only planned: 'need to flush Ruby', and not 'she needs water, so I flushed'."""
    language = facts.words.lexicon.language
    speakers = words_under(language, "speakers")
    phrases = phrases_under(language, "intends")
    for index in range(end - 1, begin - 1, -1):
        if index in facts.named:
            continue
        if _phrase_at(facts, index, phrases):
            return True
        if facts.raws[index].text in speakers:  # 'should I flush' asks
            return index > begin and _phrase_at(facts, index - 1, phrases)
    return False


def told_of(facts: Facts) -> Facts:
    """A message without a clause at its end, or its head, that only tells a plan."""
    breaks = [i for i, raw in enumerate(facts.raws) if i and raw.after_break]
    if not breaks or not facts.has("fed", "clear", "flush", "watered", "gave") or facts.question:
        return facts
    last, first = breaks[-1], breaks[0]
    if _only_plans(facts, range(last, len(facts.raws))):
        return facts.part(range(last))
    if _only_plans(facts, range(first)):
        return facts.part(range(first, len(facts.raws)))
    return facts


def _only_plans(facts: Facts, span: range) -> bool:
    cared = any(m.type == "ORDER" and m.at in span and not _CARE.isdisjoint(m.value.split())
                for m in facts.found)  # fmt: skip
    return not cared and _stands(facts, span.start, span.stop, "intends")


def _phrase_at(facts: Facts, index: int, phrases: Phrases) -> bool:
    first = facts.raws[index].text
    for phrase in phrases:
        if phrase[0] != first:
            continue
        raws = facts.raws[index : index + len(phrase)]
        if tuple(raw.text for raw in raws) == phrase:
            return True
    return False
