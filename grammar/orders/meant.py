"""Whether a change that a message speaks of is meant: not where it is denied, asked or planned.

'didn't flush Ruby', 'do not remove Ruby', 'should I repot Ruby', 'need to flush them', 'would have
fed Ruby' speak of a change as 'flushed Ruby' does, and nothing may come of them.
"""

from __future__ import annotations

from dataclasses import replace

from grammar.folding import plain
from grammar.lexicon import phrases_under, settings_of, words_under
from grammar.order import Order
from grammar.orders.facts import Facts
from grammar.words.marks import Mark, Words, phrases
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
    "add": ("add", "have", "having"),
}
_CARE = frozenset({"fed", "clear", "flush", "repot"})
#: What is planned of these is asked for all the same: 'I want to add a vanda'.
_WANTED = frozenset({"add", "reminder_stop", "product_remove"})
#: What is put on record with each of these; none for all that a message says.
_PLANT_SAID = frozenset({"growth", "medium", "genera", "count", "water"})
_LABEL_SAID = frozenset({"analysis", "form", "label_rate", "volume_l"})
_RECORDED: dict[str, frozenset[str]] = {
    "growth": _PLANT_SAID, "correct": _PLANT_SAID, "add": _PLANT_SAID, "repot": _PLANT_SAID,
    "water": frozenset({"water"}), "water_for": frozenset({"water"}),
    "product": _LABEL_SAID, "product_change": _LABEL_SAID, "kit": frozenset({"volume_l"}),
    "fed": frozenset({"strength"}), "home": frozenset(),
}  # fmt: skip
#: A question begins behind so many words that carry nothing.
_HEAD = 3


def held_back(facts: Facts, order: Order) -> Order | None:
    """What is meant instead of a change, None where the change is.

    Parameters
    ----------
    facts : the message
    order : the change that it speaks of
    """
    if order.verb == "move" and _not_yet(facts, order):
        return Order("not_told", text=order.verb)
    care = facts.first(*_CARE) if order.verb == "not_given" else None
    if care is not None and _doubted(facts, care, _clause(facts, care)):  # 'not sure if I fed'
        verb = next(v for v in care.value.split() if v in _CARE)
        return Order("not_told", text=verb, asks_kind="doubt")
    said = _SAID.get(order.verb)
    cue = facts.first(*said) if said is not None else None
    if cue is None:
        return None
    begin = _clause(facts, cue)
    if order.verb in _CARE and _doubted(facts, cue, begin):
        return Order("not_told", text=order.verb, asks_kind="doubt")
    if order.verb in _CARE and facts.says_any("from_now"):  # 'fed every 2 weeks from now on'
        return Order("not_told", text=order.verb)
    unmade = order.verb != "add" and _did_not_happen(facts, cue, begin)
    if order.also:
        return Order("not_told", text=order.verb) if unmade else None
    if unmade or (order.verb != "add" and _denied(facts, cue, begin)):
        return Order("not_given" if order.verb in _CARE else "not_changed", text=order.verb)
    asked = _begins(facts, begin, "asks") or _ends(facts, "asks_last")
    back = _begins(facts, begin, "asks_back")
    if order.verb in _CARE and cue.at == begin and "?" not in facts.folded.text:
        back = back and not settings_of(facts.words.lexicon.language).get("verb_last")
    if back and order.verb == "add":  # 'hab ich eine Vanda' asks, 'dazu hab ich eine Vanda' tells
        back = facts.phrase_at(begin, "asks_back") > 0
    planned = _planned(facts, begin, cue.at) or _planned_behind(facts, cue)
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


def denies_figures(facts: Facts, order: Order) -> bool:
    """Whether what would go on record is denied: 'Ruby is not in bark', 'Hugo nie kwitnie'.

    A word that denies is one of the records as well ('no', 'all but'), and not read for figures.
    """
    slots = _RECORDED.get(order.verb)
    all_but = order.target.everything and order.target.excepts
    if slots is None or order.also or all_but:
        return False
    words = words_under(facts.words.lexicon.language, "denials")
    denying = frozenset(
        i for i in facts.held if facts.raws[i].text in words or facts.words.type_at(i) == "NOT"
    )
    if not denying:
        return False
    if order.verb == "home":
        return True
    if order.verb == "growth" and any(_leads_on(facts, i) for i in denying):
        return True  # 'nie wypuściła pędu': with a verb between
    found = facts.read_rest(kept=denying).conflicts
    return any(c.code == "negation" and c.slot in slots | {"number"} for c in found)


def _leads_on(facts: Facts, index: int) -> bool:
    """Whether a clause goes on behind a word: not 'no, Ruby is flowering'."""
    return index + 1 < len(facts.raws) and not facts.raws[index + 1].after_break


def begins_with(facts: Facts, key: str) -> bool:
    """Whether a message begins with a phrase of the settings, behind words that carry nothing."""
    index = 0
    while index < min(_HEAD, len(facts.raws)):
        if facts.phrase_at(index, key):
            return True
        if not facts.is_filler(index) and facts.words.cue_at(index) not in ("yes", "no", "hail"):
            return False
        index += 1
    return False


def is_denied(facts: Facts, cue: str) -> bool:
    """Whether a phrase is denied: 'not done yet', 'nie zrobione'."""
    said = facts.first(cue)
    return said is not None and _denied(facts, said, _clause(facts, said))


def _not_yet(facts: Facts, order: Order) -> bool:
    """Whether a day to come was said, or a month that it did not begin in: 'moves in May'."""
    when = order.when
    if when is None or when.kind not in ("day", "of_month"):
        return False
    if when.kind == "day":
        return when.value < 0
    since = words_under(facts.words.lexicon.language, "since")
    return not any(raw.text in since for raw in facts.raws)


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
    if not had and (_none_done(facts, done) or _neither(facts, done)):
        return Order("not_given")
    if not denied or not had or min(had) < done.at or not not_done(facts, done.value.split()[0]):
        return None
    return Order("not_given")


def _neither(facts: Facts, done: Mark) -> bool:
    """'weder gegossen noch gedüngt', of no plant."""
    words = words_under(facts.words.lexicon.language, "neither")
    return any(facts.raws[i].text in words for i in range(max(done.at - 2, 0), done.at))


def _none_done(facts: Facts, done: Mark) -> bool:
    """'today nothing fed', 'heute nix gedüngt': of no plant, and nothing else was done."""
    language = facts.words.lexicon.language
    words = words_under(language, "denials") | words_under(language, "none")
    near = range(max(done.at - 1, 0), done.at)
    said = {facts.raws[i].text for i in near}
    denied = not words.isdisjoint(said) or any(facts.words.type_at(i) == "NOT" for i in near)
    cues = (m for m in facts.found if m.type == "ORDER" and m.at != done.at)
    others = any(not _CARE.isdisjoint(m.value.split()) for m in cues)
    return denied and not others and not facts.has("everything")


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
    done = facts.first("fed", "gave") if verb == "fed" else facts.first(verb)
    if done is None:
        return False
    if cue is not None and (cue.size > 1 or facts.raws[cue.at].text not in denying):
        denials = words_under(lexicon.language, "denials")  # 'regué a Ruby y no aboné a Hugo'
        said = any(facts.raws[i].text in denials for i in range(cue.at, cue.end))
        close = all(_small(facts, i) for i in range(cue.end, done.at))
        return said and cue.end <= done.at and close
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
    but = words_under(facts.words.lexicon.language, "but_then")
    orders = (m for m in facts.found if m.type == "ORDER")
    said = [m.end for m in orders if not _CARE.isdisjoint(m.value.split())]
    for index in range(cue.at, 0, -1):
        if facts.raws[index].after_break:
            return index
        if facts.raws[index].text in but and any(end <= index for end in said):
            return index  # 'nearly fed Ruby but took only water'
    return 0


def _denied(facts: Facts, cue: Mark, begin: int) -> bool:
    """Whether it is denied: before the phrase, or at the very end ('topfe Ruby nicht um')."""
    words = words_under(facts.words.lexicon.language, "denials")
    inside = {i for m in facts.found
              if m.type == "ORDER" and m.value not in ("except", "no") and not _is_unsure(m)
              for i in range(m.at, m.end)}  # fmt: skip
    for index in range(begin, cue.at):
        if index in facts.named or index in inside or facts.raws[index].text not in words:
            continue
        between = range(index + 1, cue.at)
        if not any(facts.is_and(i) for i in between):
            return True
    last = len(facts.raws) - 1
    more = phrases_under(facts.words.lexicon.language, "any_more")
    if any((facts.raws[last - 1].text, facts.raws[last].text) == phrase for phrase in more):
        last -= 1  # 'benutze Leitungswasser nicht mehr'
    return last >= cue.end and facts.raws[last].text in words and last not in inside


def _is_marked(facts: Facts, index: int) -> bool:
    """Whether a word is written with its marks."""
    raw = facts.raws[index]
    return not facts.folded.written(raw.start, raw.end).isascii()


def _typed(facts: Facts, index: int) -> str:
    """A word as it was typed, without its marks; a slip is put right in the words."""
    raw = facts.raws[index]
    return plain(facts.folded.written(raw.start, raw.end))


def _is_unsure(mark: Mark) -> bool:
    """'no se murió' is written as 'no sé' is."""
    return "unsure" in mark.value.split()


def _doubted(facts: Facts, cue: Mark, begin: int) -> bool:
    """Whether it may have been done: 'maybe I fed Ruby', 'fed Ruby, not sure'."""
    for index in range(len(facts.raws)):
        size = 0 if index in facts.named else facts.phrase_at(index, "doubts")
        last = index + size == len(facts.raws) and facts.raws[index].after_break
        head = index == 0 and size == begin
        if size and (begin <= index < cue.at or last or head):
            return True
    return False


def _did_not_happen(facts: Facts, cue: Mark, begin: int) -> bool:
    """Whether it was wished for, nearly done or forgotten: 'would have fed', 'forgot to flush'."""
    language = facts.words.lexicon.language
    spoken, marked = words_under(language, "tells"), words_under(language, "marked")
    last = settings_of(language).get("verb_last") and cue.end < len(facts.raws)
    behind = (cue.end,) if last else ()  # 'umtopfen wollte ich Ruby'
    for index in (*range(begin, cue.at), *behind):
        size = 0 if index in facts.named else facts.phrase_at(index, "not_so")
        if facts.raws[index].text in marked and not _is_marked(facts, index):
            continue  # 'hatte umgetopft' is past
        if size and all(facts.raws[i].text not in spoken for i in range(index + size, cue.at)):
            return True
    typed = [_typed(facts, i) for i in range(cue.at, cue.end)]
    would = tuple(words_under(language, "would_endings"))  # 'regalaría', read as 'regalada'
    if would and any(word.endswith(would) for word in typed):
        return True
    endings = tuple(words_under(language, "not_so_endings"))
    if not endings:
        return False
    written = facts.folded.text  # a slip of 'podlałam' is put right in the words, not here
    return any(written[r.start : r.end].endswith(endings) for r in facts.raws[begin : cue.end])


def _ends(facts: Facts, key: str) -> bool:
    """Whether one of the phrases closes the message: 'flush it how'."""
    phrases = phrases_under(facts.words.lexicon.language, key)
    size = len(facts.raws)
    return any(len(p) < size and facts.stands_at(size - len(p), p) for p in phrases)


def _begins(facts: Facts, begin: int, key: str) -> bool:
    """Whether one of the phrases stands at the head of the clause, and is none of its verb.

    'was fed: Ruby' does not ask.
    """
    stops = people(facts) | words_under(facts.words.lexicon.language, "opines")
    held = {m.at for m in facts.found if m.type == "ORDER" and m.size > 1 and m.value != "having"}
    for index in range(begin, min(begin + _HEAD, len(facts.raws))):
        if index not in held and facts.phrase_at(index, key):
            return True
        if facts.raws[index].text in stops:
            return False  # 'mein Mann hat gedüngt', 'creo que aboné'
        small = facts.is_filler(index) or facts.words.cue_at(index) in ("yes", "no", "hail")
        if not small:
            return False
    return False


def _stands(facts: Facts, begin: int, end: int, key: str) -> bool:
    """Whether one of the phrases stands somewhere in a stretch."""
    places = (i for i in range(begin, end) if i not in facts.named)
    return any(facts.phrase_at(i, key) for i in places)


def _planned(facts: Facts, begin: int, end: int) -> bool:
    """Whether it is only planned: 'need to flush Ruby', and not 'she needs water, so I flushed'."""
    language = facts.words.lexicon.language
    speakers = words_under(language, "speakers")
    for index in range(end - 1, begin - 1, -1):
        if index in facts.named:
            continue
        if facts.phrase_at(index, "intends"):
            return True
        if facts.raws[index].text in speakers:  # 'should I flush' asks
            return index > begin and facts.phrase_at(index - 1, "intends") > 0
    return False


def _planned_behind(facts: Facts, cue: Mark) -> bool:
    """'bevor Ruby gedüngt wird', in a language whose verb stands last."""
    language = facts.words.lexicon.language
    typed = {_typed(facts, i) for i in range(cue.at, cue.end)}
    if words_under(language, "to_do") & typed:
        return True  # 'vergessen, Ruby umzutopfen'
    last = settings_of(language).get("verb_last") and cue.end < len(facts.raws)
    if not last or facts.raws[cue.end].after_break:
        return False
    return facts.phrase_at(cue.end, "intends") > 0


def rather(facts: Facts) -> Facts:
    """What holds of 'not Mia but Hugo got feed': the words behind 'but'."""
    done = facts.first("fed", "clear", "flush", "repot", "moved")
    if done is None:
        return facts
    replaced = in_place_of(facts)
    if replaced is not None:
        return replaced[0]
    denials = words_under(facts.words.lexicon.language, "denials")
    if denials.isdisjoint(raw.text for raw in facts.raws):
        return facts
    but = [m for m in phrases(facts.raws, facts.words.lexicon.amends) if m.value == "but"]
    for mark in but:
        before = [i for i in range(mark.at) if i in facts.named]
        after = [i for i in range(mark.end, len(facts.raws)) if i in facts.named]
        denied = before and any(facts.raws[i].text in denials for i in range(min(before)))
        if denied and after and done.at > mark.at:
            return facts.part(range(mark.end, len(facts.raws)))
    return facts


def people(facts: Facts) -> frozenset[str]:
    """Words for somebody who does something, at home or elsewhere."""
    language = facts.words.lexicon.language
    strangers = {phrase[-1] for phrase in phrases_under(language, "strangers")}
    return words_under(language, "others") | words_under(language, "household") | strangers


def by_somebody(facts: Facts) -> Facts:
    """The message with what somebody did, in a form that is another word elsewhere.

    'mi marido abono las phals' is 'abonó'; alone, 'abono' is feed. So is what has its accent.
    """
    forms = settings_of(facts.words.lexicon.language).get("done_by", {})
    held = {i for m in facts.found for i in range(m.at, m.end)}
    told = [
        Mark("ORDER", forms[raw.text], i, 1)
        for i, raw in enumerate(facts.raws)
        if raw.text in forms and i not in held and (_is_marked(facts, i) or _by_person(facts, i))
    ]
    if not told:
        return facts
    words = facts.words
    found = sorted((*facts.found, *told), key=lambda m: m.at)
    return replace(facts, words=Words(words.folded, words.raws, words.lexicon, found))


def _by_person(facts: Facts, index: int) -> bool:
    """Whether a word for a person stands before a verb, with pronouns between at most."""
    between = words_under(facts.words.lexicon.language, "before_verb")
    index -= 1
    while index >= 0 and facts.raws[index].text in between:
        index -= 1
    near = index >= 0 and not facts.raws[index + 1].after_break
    return near and facts.raws[index].text in people(facts)


def then_done(facts: Facts) -> Facts:
    """The message without a repotting that only says when: 'after repotting Hugo I watered'."""
    cue = facts.first("repot")
    if cue is None or not facts.has("fed", "clear", "flush"):
        return facts
    for index in range(cue.at):
        size = facts.phrase_at(index, "afterwards")
        behind = range(index + size, cue.at)
        if size and all(i in facts.named or facts.is_filler(i) for i in behind):
            words = facts.words
            found = [m._replace(value="before") if m == cue else m for m in facts.found]
            return replace(facts, words=Words(words.folded, words.raws, words.lexicon, found))
    return facts


def but_not(facts: Facts) -> Facts:
    """What was done, without a last clause that says who got none: 'aboné, pero la vanda no'.

    Those stand in `spares` of what is left.
    """
    done = facts.first("fed", "clear", "flush", "done")
    language = facts.words.lexicon.language
    denials = words_under(language, "denials")
    last = len(facts.raws) - 1
    if done is None or "?" in facts.folded.text or facts.raws[last].text not in denials:
        return facts
    however = words_under(language, "however")
    heads = (
        i for i in range(last - 1, done.end - 1, -1)
        if facts.raws[i].after_break or facts.raws[i].text in however or facts.is_and(i)
    )  # fmt: skip
    begin = next(heads, None)
    if begin is None:
        return facts
    spared = facts.part(range(begin, last))
    plants = spared.named | {i for i, _ in spared.genus_places}
    small = all(
        i in plants or spared.is_filler(i) or raw.text in however
        for i, raw in enumerate(spared.raws)
    )
    if not (spared.target.names or spared.target.genera) or not small:
        return facts
    return replace(facts.part(range(begin)), spares=spared.target)


#: What was done by the words of a phrase.
_DID = frozenset({"fed", "flush", "clear", "watered", "gave", "repot"})


def done_all_the_same(facts: Facts) -> Facts:
    """What was done, without 'I forgot that', 'before I left' at its head."""
    if facts.question or not facts.has(*_DID):
        return facts
    plants = facts.named | {i for i, _ in facts.genus_places}
    for index in range(min(_HEAD + 1, len(facts.raws))):
        size = facts.phrase_at(index, "all_the_same")
        if size and plants.isdisjoint(range(index)):
            end = index + size
            if any(m.at < index and _DID & set(m.value.split()) for m in facts.found):
                return facts.cut(range(index, end))  # 'watered before I left'
            return facts.cut(range(end + facts.phrase_at(end, "asks_back")))  # 'hab ich gegossen'
    return facts


def no_longer(facts: Facts) -> Facts:
    """What holds of 'no longer in moss but in bark': without the medium or place that was."""
    but = [m for m in phrases(facts.raws, facts.words.lexicon.amends) if "but" in m.value.split()]
    index = next((i for i in range(len(facts.raws)) if facts.phrase_at(i, "not_there")), None)
    turn = next((m for m in but if index is not None and m.at > index), None)
    if index is None or turn is None:
        return facts
    was, now = facts.part(range(index, turn.at)), facts.part(range(turn.end, len(facts.raws)))
    moved = (was.rest.medium and now.rest.medium) or (was.place_runs and now.rest.medium is None)
    if not moved:
        return facts
    left = facts.cut(range(index, turn.at))
    words, said = left.words, Mark("ORDER", "be", index, 1)  # the 'but' says that it is
    found = sorted((*left.found, said), key=lambda m: m.at)
    return replace(left, words=Words(words.folded, words.raws, words.lexicon, found))


def in_place_of(facts: Facts) -> tuple[Facts, tuple[str, ...]] | None:
    """A message without its 'instead of Ruby', and who that was; None where nobody was."""
    phrases_ = phrases_under(facts.words.lexicon.language, "in_place_of")
    begins = {phrase[0] for phrase in phrases_}
    for index, raw in enumerate(facts.raws):
        if raw.text not in begins or index in facts.named:
            continue
        size = facts.phrase_at(index, "in_place_of")
        end = index + size
        while size and end < len(facts.raws) and facts.words.type_at(end) in ("ARTICLE", "TO"):
            end += 1
        plant = next((m for m in facts.found if m.type == "PLANT" and m.at == end), None)
        if size and plant is not None and len(facts.target.names + facts.target.not_names) > 1:
            return facts.cut(range(index, plant.end)), (plant.value,)
    return None


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
