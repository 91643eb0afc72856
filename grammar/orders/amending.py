"""What puts the last entry of the log right: 'no, Ruby', 'that was Ruby not Hugo', 'yesterday'.

Only right after an entry does it mean that; whether there is one the records know. So this stands
beside what the message means by itself, in `Order.amends`.
"""

from __future__ import annotations

from dataclasses import dataclass, replace

from grammar.lexicon import words_under
from grammar.order import Order, Target
from grammar.orders.care import given_in
from grammar.orders.clauses import days_said
from grammar.orders.facts import Facts
from grammar.orders.meant import in_place_of
from grammar.words.marks import Mark, longest, phrases

#: Orders that can stand in a correction; any other is a wish of its own.
_BESIDE = frozenset({
    "fed", "clear", "flush", "watered", "gave", "give", "be", "them", "everything", "both", "yes",
    "no", "except", "with_feed", "make_it", "relative", "having", "have", "takes", "use",
    "reminder_skip_day", "poured", "received", "and_for", "may", "undo", "last", "plan", "argues",
})  # fmt: skip
#: Values of the phrases that a correction can be led by.
_LEADS = frozenset({"begins", "wrong", "only"})
#: What is said of a feed that an entry of the log does not keep; with a volume, a whole request.
_OF_A_DOSE = ("analysis", "label_rate", "target_n_mg_l", "target_ec_ms_cm")


@dataclass(frozen=True, slots=True)
class _Split:
    """A correction taken apart: what holds, and what was denied; `led` by a word for it.

    `said_no` where it is led by 'no', `apart` where a break stands behind that; `only` where
    nothing but 'only' leads it; `admits` where it begins with who was wrong.
    """

    right: tuple[Facts, ...]
    wrong: Facts | None
    led: bool
    said_no: bool = False
    apart: bool = True
    only: bool = False
    admits: bool = False


def amends(facts: Facts) -> Order | None:
    """How a message would put the last entry right; None where it is none.

    Parameters
    ----------
    facts : the message

    Returns
    -------
    Order or None
        `target` whom it holds for and, as excepted, whom it does not; `when` the day; `asks_kind`
        what was given instead. `text` is 'unclear' where it cannot be told what was wrong,
        'either' where whom it is for may be whom it is not for: 'no Ruby', and 'whole' where it
        says by itself who got what: 'I was wrong, Ruby got only water'.
    """
    neither = words_under(facts.words.lexicon.language, "neither")
    if facts.question or not neither.isdisjoint(raw.text for raw in facts.raws):
        return None
    replaced = in_place_of(facts)
    if replaced is not None:  # 'fed Hugo instead of Ruby'
        right, names = replaced
        target = replace(right.target, not_names=names)
        return Order("amend", target=target, when=right.when[0], asks_kind=given_in(right))
    marks = [m for m in phrases(facts.raws, facts.words.lexicon.amends) if not _named(facts, m)]
    moved = _another_day(facts, marks)
    if moved is not None:
        return moved
    if not marks and facts.been and facts.only_a_day:
        return Order("amend", when=facts.when[0])  # 'yesterday'
    if not (marks or facts.starts("undo")) or not _only_care(facts, marks):
        return None
    split = _split(facts, marks)
    rest = facts.rest
    figures = any(getattr(rest, slot) is not None for slot in _OF_A_DOSE)
    if split is None or (figures and rest.volume_l is not None):
        return None
    found = _said(split)
    if split.said_no and not split.apart and split.wrong is None and found.asks_kind is not None:
        return None  # 'no regué a Mia' denies, 'no, regué a Mia' puts right
    held = frozenset(i for m in marks for i in range(m.at, m.end))
    unknown = bool(facts.read_rest(without=held).unknown)
    doubtful = unknown or figures or rest.volume_l is not None
    wrong = split.wrong
    kind = given_in(wrong) if wrong is not None else None
    blank = wrong is not None and wrong.target.empty and not _day_in(wrong)
    if blank and (kind is None or found.asks_kind in (None, kind)):  # 'Hugo wasn't fed, Ruby was'
        return Order("amend", text="unclear") if facts.target.named else None
    if not split.led:
        own = found.asks_kind is not None and (found.target.named or kind is None)
        says = found.target.named or found.when or found.target.excepts or found.asks_kind
        return None if own or doubtful or not says else found
    nothing = found == Order("amend", text="unclear")
    if nothing and (any("wrong" in m.value.split() for m in marks) or blamed(facts)):
        return found
    if nothing and (_small(facts, marks) or (split.said_no and not split.apart)):
        return None  # 'no', 'sorry', 'no problem'
    if split.only and (doubtful or not found.target.named or found.asks_kind):
        return None  # 'only 3 l', 'only watered'
    whole = found.asks_kind is not None and found.target.named
    if whole and not (split.said_no or split.wrong):  # 'sorry, fed Ruby yesterday': one more entry
        return replace(found, text="whole") if split.admits and not doubtful else None
    if doubtful:
        return Order("amend", text="unclear")
    either = split.said_no and not split.apart and wrong is None
    return replace(found, text="either") if either else found


def _another_day(facts: Facts, marks: list[Mark]) -> Order | None:
    """'I did not feed yesterday, it was the day before': of the same plants."""
    days = days_said(facts)
    if len(days) != 2 or days[0][0] == days[1][0] or facts.target.named_one:
        return None
    words = words_under(facts.words.lexicon.language, "denials")
    denied = [i for i, raw in enumerate(facts.raws) if raw.text in words]
    if denied and denied[0] == 0 and facts.raws[1].after_break:
        del denied[0]  # 'no' as an answer
    (_, _), (day, said) = days
    kept = [m for m in facts.found if m.value != "not_fed"]
    care = replace(facts, words=replace(facts.words, found=kept))
    if not denied or max(denied) > said.at or not _only_care(care, marks):
        return None
    return Order("amend", when=day)


def _named(facts: Facts, mark: Mark) -> bool:
    """Whether a name on record holds these words."""
    return not facts.named.isdisjoint(range(mark.at, mark.end))


def _only_care(facts: Facts, marks: list[Mark]) -> bool:
    """Whether no order stands in it but what was given to whom."""
    held = {i for m in marks for i in range(m.at, m.end)}
    others = (
        m for m in facts.found if m.type == "ORDER" and not held.issuperset(range(m.at, m.end))
    )
    return all(not _BESIDE.isdisjoint(m.value.split()) for m in others)


def _split(facts: Facts, marks: list[Mark]) -> _Split | None:
    """What holds and what was denied; None where nothing says that it is a correction."""
    at = {m.at: m for m in marks}
    index, led, only = 0, False, True
    taken_back = _taken_back(facts)
    lead: Mark | None = None
    admits = False
    while index < len(facts.raws):
        mark = at.get(index)
        if mark is not None and not _LEADS.isdisjoint(mark.value.split()):
            index, led, lead = mark.end, True, mark
            only = only and mark.value == "only"
            admits = admits or "admits" in mark.value.split()
        elif index == 0 and taken_back:  # 'scratch that, Ruby'
            index, led, only = taken_back, True, False
        elif index not in at and index not in facts.named and facts.is_filler(index):
            index += 1
        else:
            break
    denial = next((m for m in marks if m.at >= index and "denies" in m.value.split()), None)
    if denial is None and lead is not None and _denies(facts, lead, marks):
        denial = lead
    only = only and led
    led = led or any("instead" in m.value.split() for m in marks)
    led = led or (denial is not None and any("but" in m.value.split() and m.at > denial.at
                                             for m in marks))  # fmt: skip
    said_no = lead is not None and _is_no(facts, lead)
    apart = lead is None or lead.end >= len(facts.raws) or facts.raws[lead.end].after_break
    if denial is None:
        return _Split((facts,), None, led, said_no, apart, only, admits) if led else None
    if denial.end == len(facts.raws):  # 'Mia nicht'
        begin = max(
            (i for i in range(index, denial.at) if facts.raws[i].after_break), default=index
        )
        kept = (facts.part(range(begin)),) if begin else ()
        return _Split(kept, facts.part(range(begin, denial.at)), led, said_no, apart, only)
    end = _denied_to(facts, denial, marks)
    if _denied_before(facts, range(index, denial.at), range(denial.end, end), marks):
        behind = facts.part(range(end, len(facts.raws)))
        return _Split((behind,), facts.part(range(index, denial.at)), True, said_no)
    spans = (range(denial.at), range(end, len(facts.raws)))
    right = tuple(facts.part(s) for s in spans if s)
    wrong = facts.part(range(denial.end, end)) if denial.end < end else None
    return _Split(right, wrong, led, said_no, apart, only)


def _taken_back(facts: Facts) -> int:
    """The place behind a first 'undo' where a break parts it from the rest; 0 for none."""
    cue = facts.first("undo")
    if cue is None or cue.at or cue.end >= len(facts.raws):
        return 0
    return cue.end if facts.raws[cue.end].after_break else 0


def _is_no(facts: Facts, lead: Mark) -> bool:
    """Whether a correction is led by 'no' itself."""
    said = "no" in facts.words.cue_at(lead.at).split() or facts.words.type_at(lead.at) == "NOT"
    return lead.size == 1 and said


def _day_in(wrong: Facts) -> bool:
    """Whether a day was denied, also as a part of another phrase: the 'today' of 'not today'."""
    if wrong.when[0] is not None:
        return True
    order = wrong.words.lexicon.orders
    entries = (longest(wrong.raws, i, order)[0] for i in range(len(wrong.raws)))
    return any(e is not None and e.type == "WHEN" for e in entries)


def _denies(facts: Facts, lead: Mark, marks: list[Mark]) -> bool:
    """Whether the word it begins with denies what follows: 'no hoy, ayer', 'nie Ruby, tylko'."""
    if "denies" not in lead.value.split() or lead.end >= len(facts.raws):
        return False
    if facts.raws[lead.end].after_break:
        return False
    return _denied_to(facts, lead, marks) < len(facts.raws)


def _denied_to(facts: Facts, denial: Mark, marks: list[Mark]) -> int:
    """The place where what is denied ends: at the next break, or at 'but'."""
    others = {m.at for m in marks if not {"but", *_LEADS}.isdisjoint(m.value.split())}
    for index in range(denial.end + 1, len(facts.raws)):
        if facts.raws[index].after_break or index in others:
            return index
    return len(facts.raws)


def _denied_before(facts: Facts, before: range, behind: range, marks: list[Mark]) -> bool:
    """'Ruby I did not water, only the phals': who is denied stands before the denial."""
    if not before or behind.stop >= len(facts.raws):
        return False
    turns = any(m.at == behind.stop and not {"but", "only"}.isdisjoint(m.value.split())
                for m in marks)  # fmt: skip
    return (
        turns
        and not facts.part(behind).target.named
        and facts.part(before).target.named_one
        and facts.part(range(behind.stop, len(facts.raws))).target.named
    )


def put_right(facts: Facts) -> Facts:
    """A message without 'I was wrong' at its head, where it goes on: 'I was wrong, fed Ruby'."""
    marks = {m.at: m for m in phrases(facts.raws, facts.words.lexicon.amends)}
    index = 0
    while index < len(facts.raws):
        mark = marks.get(index)
        if mark is not None and "admits" in mark.value.split() and not _named(facts, mark):
            rest = facts.cut(range(mark.end))
            return facts if _small(rest, []) and rest.target.empty else rest
        if not facts.is_filler(index) and mark is None:
            break
        index += 1 if mark is None else mark.size
    return facts


def blamed(facts: Facts) -> Order | None:
    """'You were wrong', 'I was wrong', and no word of what."""
    marks = phrases(facts.raws, facts.words.lexicon.amends)
    blames = any("blames" in m.value.split() for m in marks)
    admits = any("admits" in m.value.split() for m in marks) and not facts.has("undo")
    said = (blames or admits) and not facts.question
    return Order("blame") if said and _small(facts, marks) and facts.target.empty else None


def _said(split: _Split) -> Order:
    """What holds and what does not, put together."""
    target = Target()
    for part in split.right:
        meant = part.target
        target = replace(
            target,
            names=(*target.names, *meant.names),
            genera=(*target.genera, *meant.genera),
            traits=(*target.traits, *meant.traits),
            place=meant.place or target.place,
            more_places=(*target.more_places, *meant.more_places),
            everything=target.everything or meant.everything,
            again=target.again or meant.again,
            not_names=(*target.not_names, *meant.not_names),
            not_genera=(*target.not_genera, *meant.not_genera),
            not_places=(*target.not_places, *meant.not_places),
            not_traits=(*target.not_traits, *meant.not_traits),
            not_media=(*target.not_media, *meant.not_media),
        )
    if split.wrong is not None:
        over = split.wrong.target
        places = (*over.more_places, over.place) if over.place else ()
        names, genera = (*over.names, *over.not_names), (*over.genera, *over.not_genera)
        target = replace(
            target,
            not_names=(*target.not_names, *names),
            not_genera=(*target.not_genera, *genera),
            not_places=(*target.not_places, *places),
        )
    when = next((p.when[0] for p in split.right if p.when[0] is not None), None)
    kind = next((k for p in split.right if (k := given_in(p)) is not None), None)
    strong = any(p.rest.strength is not None for p in split.right)
    products = tuple(n for p in split.right for n in p.products)
    says = target.named or target.excepts or when or kind or strong or products
    return Order(
        "amend",
        target=target,
        when=when,
        asks_kind=kind,
        products=products,
        text="" if says else "unclear",
    )


def _small(facts: Facts, marks: list[Mark]) -> bool:
    """Whether nothing stands in it but words that carry nothing."""
    held = {i for m in marks for i in range(m.at, m.end)}
    held |= {i for m in facts.found for i in range(m.at, m.end)}
    return all(i in held or facts.is_filler(i) for i in range(len(facts.raws)))
