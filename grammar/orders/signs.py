"""What ails a plant: the signs in a message, and the form that asks for its rescue.

The words are found apart from all others, so that they change no dose and no other order.
"""

from __future__ import annotations

from dataclasses import dataclass, replace

from grammar.order import Order
from grammar.orders import collection
from grammar.orders.facts import Facts
from grammar.orders.others import theirs
from grammar.reading import Ails, ReadAs, Reading
from grammar.words.marks import Mark, longest
from grammar.words.spelling import sign_slip

#: Says that something is wrong, and not what.
_TROUBLE = "trouble"
#: Words that tell a sign without any other beside them, and the sign.
_TELLS = {"overfed": "fed_strong"}
#: Beside a plain sign they tell something; alone they ask for nothing ('Ruby is in dry bark').
_ONLY_BESIDE = frozenset({
    "firm_roots", "one_old_leaf", "new_growth_sound", "medium_stays_wet", "dry_light_pot",
    "many_plants", "fed_strong", "sudden_after_cold", "watered_little", "watered_well",
})  # fmt: skip
#: A state that is told of the whole plant too: 'Ruby is rotting'.
_ROTTEN = "rotten"
#: Told of a plant by its name or kind, it asks what to do: 'my cattleya got frost'.
_CHILLED = "sudden_after_cold"
#: Orders that are meant where they are said before the signs: 'flushed Ruby, white crust'.
_GO_FIRST = ("fed", "flush", "clear", "repot", "lose", "history", "add", "rename", "runoff")
#: Slots that only a dose needs; a strength is also that of a feed that was given.
_DOSE_SLOTS = ("volume_l", "analysis", "label_rate", "target_n_mg_l")
#: What stands between a word that denies and what it denies [words].
_DENIES_WITHIN = 2
#: A state may stand so far behind its part, and so far before it [words].
_BEHIND, _BEFORE = 8, 4
_FILLERS = frozenset({"FILLER", "ARTICLE", "OF", "IN"})
_JOINS = frozenset({"AND", "OR"})


@dataclass(frozen=True, slots=True)
class Seen:
    """Signs in a message: those there, those denied, where the first stands, words taken."""

    there: tuple[str, ...] = ()
    denied: tuple[str, ...] = ()
    first: int | None = None
    held: frozenset[int] = frozenset()
    slips: tuple[ReadAs, ...] = ()
    states: tuple[tuple[str, bool], ...] = ()


def rescue(facts: Facts) -> Order | None:
    """An ailing plant: 'brown root tips and white crust on Ruby', 'what is wrong with Ruby'."""
    seen = look(facts)
    answers = "yes" if facts.starts("yes") else "no" if facts.starts("no") else ""
    if _fed_too_much(facts):
        return Order("rescue", target=facts.target, when=facts.when[0], signs=("fed_strong",),
                     asks_kind="fed")  # fmt: skip
    if not seen.held or _says_first(facts, seen):
        return None
    if facts.says_any("thrown_out"):  # 'crown rot took one of my phals, had to bin it'
        return None
    if facts.has("lacking") and facts.products and facts.target.empty:
        return None  # 'was fehlt der blauen Dose'
    if set(seen.there) == {_TROUBLE} and facts.has("lose") and facts.target.empty:
        return Order("not_told", text="lose")  # 'the sick one died'
    if seen.first is None:  # 'yes, they are soft'
        said_besides = facts.target.named or facts.rest.mentions_feeding  # 'ok so feed today?'
        fits = bool(answers) and not said_besides and not _doses(facts, seen)
        return Order("rescue", text=answers) if fits else None
    said = tuple(dict.fromkeys(_TELLS.get(s, s) for s in seen.there if s != _TROUBLE))
    plain = any(s not in _ONLY_BESIDE for s in seen.there)
    chilled = _CHILLED in seen.there and facts.target.named_one and not facts.question
    if not (plain or chilled or _too_much(facts, seen)) and not (answers and (said or seen.denied)):
        return _of_sound_roots(facts, seen)
    if _doses(facts, seen) and not _only_their_rate(facts):
        return None
    target = facts.target
    if target.everything and not _every_plant(facts):
        target = replace(target, everything=False)
    elif target.everything:
        said = tuple(dict.fromkeys((*said, "many_plants")))
    return Order(
        "rescue", target=target, when=facts.when[0], signs=said, denied=seen.denied, text=answers,
        value=_runoff(facts), asks_kind="fed" if facts.has("fed", "gave") else None,
        place=_moved_to(facts, seen),
    )  # fmt: skip


#: What is told of roots that are as they should be, silver where they are dry.
_SOUND = frozenset({"firm_roots", "dry_light_pot"})
#: Words of orders that want nothing by themselves.
_NO_WISH = frozenset({"be", "them", "relative", "ask"})


def _of_sound_roots(facts: Facts, seen: Seen) -> Order | None:
    """'vanda roots white and dry': what that means, where nothing else is told."""
    rest = facts.rest
    described = rest.medium or rest.pot_cm or rest.growth or rest.mentions_feeding
    wants = any(m.type == "ORDER" and _NO_WISH.isdisjoint(m.value.split()) for m in facts.found)
    of_colour = {("SIGN", "firm_roots"), ("SIGN_STATE", "pale")}
    found = (longest(facts.raws, i, facts.words.lexicon.signs)[0] for i in sorted(seen.held))
    coloured = any(e is not None and (e.type, e.value) in of_colour for e in found)
    sound = "firm_roots" in seen.there and _SOUND.issuperset(seen.there) and coloured
    if not sound or described or wants or _doses(facts, seen):
        return None
    return Order("tell", text="dry_roots", target=facts.target)


def _only_their_rate(facts: Facts) -> bool:
    """How much somebody else gives: 'a lady's cattleya has black tips, she feeds 2 g/l'."""
    return facts.rest.volume_l is None and theirs(facts, Order("rescue", target=facts.target))


def _too_much(facts: Facts, seen: Seen) -> bool:
    """'gave Ruby too much feed', 'too much feed, what now': the cure is no plan, and no feed."""
    given = facts.target.named and facts.has("fed", "gave") and not facts.question
    return "fed_strong" in seen.there and (given or facts.has("plan"))


def _fed_too_much(facts: Facts) -> bool:
    """'fed Ruby too much', 'gave Ruby a feed that was too strong'."""
    if not facts.has("fed", "gave") or facts.question:
        return False
    if not any((t.type, t.value) == ("JUDGED", "too_much") for t in facts.tokens):
        return False
    known = {facts.raws[i].start for m in facts.found for i in range(m.at, m.end)}
    # 'the light was too strong' is not of the feed
    other = any(t.type in ("UNKNOWN", "LAMP") and t.start not in known for t in facts.tokens)
    denied = other or any(t.type == "NOT" for t in facts.tokens)
    about_feed = facts.has("fed") or facts.rest.mentions_feeding
    return facts.target.named and about_feed and not denied and not facts.asks_dose


def beside_a_dose(facts: Facts) -> tuple[tuple[str, ...], frozenset[str]]:
    """Signs that a request for a dose tells of its plant, and the words that say so."""
    seen = look(facts)
    if not any(s not in _ONLY_BESIDE for s in seen.there):
        return (), frozenset()
    held = (facts.raws[i] for i in seen.held)
    return seen.there, frozenset(facts.folded.written(raw.start, raw.end) for raw in held)


def ails_in(facts: Facts) -> Ails:
    """All that is told of an ailing plant, in a message that may want something else."""
    seen = look(facts)
    return Ails(tuple(s for s in seen.there if s != _TROUBLE), seen.denied, seen.states)


def ails(facts: Facts) -> bool:
    """Whether a sign is told that asks for a rescue by itself."""
    return any(s != _TROUBLE and s not in _ONLY_BESIDE for s in look(facts).there)


def rest(facts: Facts) -> Reading:
    """The figures of a rescue, without the words of its signs."""
    seen = look(facts)
    read = facts.read_rest(without=seen.held)
    doubts = tuple(c for c in read.conflicts if c.code != "lone_number")
    figure = _runoff(facts) is not None
    unknown = tuple(u for u in read.unknown if not (figure and _is_number(u.text)))
    said = (*seen.slips, *read.read_as)
    return replace(read, read_as=said, conflicts=doubts, unknown=unknown)


def _is_number(text: str) -> bool:
    return text.strip().replace(".", "", 1).isdecimal()


def look(facts: Facts) -> Seen:
    """The signs in a message."""
    slips: list[ReadAs] = []
    raws = list(facts.raws)
    lexicon = facts.words.lexicon
    for index, raw in enumerate(raws):
        word = sign_slip(raw, lexicon) if index not in facts.named else None
        if word is not None:
            raws[index] = raw._replace(text=word)
            shown = lexicon.spelled.get(word, word)
            slips.append(ReadAs(facts.folded.written(raw.start, raw.end), shown))
    marks: list[Mark] = []
    index = 0
    while index < len(raws):
        entry, size = longest(raws, index, lexicon.signs)
        if entry is None or index in facts.named:
            index += 1
            continue
        marks.append(Mark(entry.type, entry.value, index, size))
        index += size
    signs = [(m.value, m, m) for m in marks if m.type == "SIGN"]
    parts = [m for m in marks if m.type == "SIGN_PART"]
    bare: list[tuple[str, bool]] = []
    for state in (m for m in marks if m.type == "SIGN_STATE"):
        part = _part_of(facts, state, parts, marks)
        sign = lexicon.sign_pairs.get((part.value, state.value)) if part is not None else None
        if sign is not None and part is not None:
            signs.append((_of_what(sign, part, parts), part, state))
        elif state.value == _ROTTEN and (part is None or part.at > state.end):
            signs.append(("rot", state, state))  # 'it has rot', and not 'rotten bark'
        if part is None:
            bare.append((state.value, not _denied(facts, state)))
    if not signs:
        held = frozenset(i for m in marks for i in range(m.at, m.end))
        return Seen(held=held, states=tuple(bare))
    signs.sort(key=lambda found: min(found[1].at, found[2].at))
    return replace(_sorted_out(facts, signs, marks, tuple(slips)), states=tuple(bare))


def _sorted_out(
    facts: Facts,
    signs: list[tuple[str, Mark, Mark]],
    marks: list[Mark],
    slips: tuple[ReadAs, ...],
) -> Seen:
    there: list[str] = []
    denied: list[str] = []
    after_denied = -1
    for sign, part, state in signs:
        first, last = sorted((part, state), key=lambda m: m.at)
        no = _denied(facts, part) or _denied(facts, state)
        no = no or (after_denied >= 0 and _only_or(facts, after_denied, first.at))
        after_denied = last.end if no else -1
        (denied if no else there).append(sign)
    held = frozenset(i for m in marks for i in range(m.at, m.end))
    return Seen(
        tuple(dict.fromkeys(there)),
        tuple(s for s in dict.fromkeys(denied) if s not in there and s != _TROUBLE),
        min(min(part.at, state.at) for _, part, state in signs),
        held,
        tuple(s for s in slips if any(facts.folded.written(facts.raws[i].start, facts.raws[i].end)
                                      == s.text for i in held)),
    )  # fmt: skip


def _part_of(facts: Facts, state: Mark, parts: list[Mark], marks: list[Mark]) -> Mark | None:
    """The part a state is said of: right behind it, else the last before it, else one near."""
    index = state.end
    joined = {m.at: m for m in marks if m.type == "SIGN_STATE"}
    while index < len(facts.raws):
        part = next((p for p in parts if p.at == index), None)
        if part is not None and not facts.raws[index].after_break:
            return part
        if index in joined:
            index = joined[index].end
        elif facts.words.type_at(index) in _JOINS:
            index += 1
        else:
            break
    before = [p for p in parts if p.end <= state.at and state.at - p.end <= _BEHIND]
    if before and not _sentence_ends(facts, before[-1].end, state.at):
        return _subject(facts, before)
    behind = [p for p in parts if p.at >= state.end and p.at - state.end <= _BEFORE]
    return behind[0] if behind and not _sentence_ends(facts, state.end, behind[0].at) else None


def _subject(facts: Facts, before: list[Mark]) -> Mark:
    """The last part, but what a spot is on, and the whole that tips are of, is not meant."""
    last = before[-1]
    if len(before) == 1:
        return last
    joined = {facts.words.type_at(i) for i in range(before[-2].end, last.at)}
    if "OF" in joined and before[-2].value == "tips":
        return last._replace(value=f"{'root' if last.value == 'roots' else 'leaf'}_tips")
    return before[-2] if "IN" in joined else last


def _sentence_ends(facts: Facts, start: int, end: int) -> bool:
    if end >= len(facts.raws) or start >= end:
        return False
    between = facts.folded.text[facts.raws[start - 1].end : facts.raws[end].start]
    return any(sign in between for sign in ".;!?")


def _of_what(sign: str, part: Mark, parts: list[Mark]) -> str:
    """Tips or a spot of what: 'roots with brown tips', 'a black spot on the leaf that grows'."""
    near = {p.value for p in parts if abs(p.at - part.at) <= _BEFORE}
    if part.value == "black_spot" and near & {"leaves", "new_leaves", "old_leaf"}:
        return "leaf_rot"
    return "brown_root_tips" if part.value == "tips" and "roots" in near else sign


def _denied(facts: Facts, mark: Mark) -> bool:
    """Whether 'no' or 'not' stands before it."""
    for index in range(mark.at - 1, max(mark.at - 2 - _DENIES_WITHIN, -1), -1):
        kind = facts.words.type_at(index)
        if kind == "NOT":
            answering = index == 0 and facts.folded.text[facts.raws[0].end :].startswith(",")
            return not answering  # 'no, the roots are firm'
        if kind not in _FILLERS or facts.raws[index + 1].after_break:
            return False
    return False


def _only_or(facts: Facts, start: int, end: int) -> bool:
    """Whether only 'or' joins what was denied to this."""
    kinds = [facts.words.type_at(i) for i in range(start, end)]
    return bool(kinds) and "OR" in kinds and all(k in _FILLERS | {"OR"} for k in kinds)


def _doses(facts: Facts, seen: Seen) -> bool:
    read = facts.read_rest(without=seen.held)
    asked = any(getattr(read, slot) is not None for slot in _DOSE_SLOTS)
    strong = read.strength is not None and not facts.has("fed", "gave")
    wanted = read.target_ec_ms_cm is not None and _runoff(facts) is None
    return asked or strong or (wanted and not facts.has("runoff", "salts"))


def _runoff(facts: Facts) -> float | None:
    """What ran out of the pot, where it was told beside the signs."""
    if not facts.has("runoff"):
        return None
    taken = facts.when[1] | facts.named
    found = [r.text for i, r in enumerate(facts.raws) if r.kind == "number" and i not in taken]
    return float(found[0]) if len(found) == 1 and found[0].count(".") <= 1 else None


def _says_first(facts: Facts, seen: Seen) -> bool:
    """Whether something was done, or asked of the log, before the signs are said."""
    cue = next(
        (m for m in facts.found if m.type == "ORDER" and m.value.split()[0] in _GO_FIRST
         and seen.held.isdisjoint(range(m.at, m.end))),
        None,
    )  # fmt: skip
    named = bool(facts.new_name[0]) and facts.has("add", "have")
    lost = facts.first("lose")
    only_rot = set(seen.there) <= {"rot", _TROUBLE}
    if only_rot and _is_gone(facts):
        return True  # '1 cattleya rotted, threw it out'
    if lost is not None and only_rot and not seen.held.isdisjoint(range(lost.at, lost.end)):
        return True  # 'rot took Ruby'
    return named or (cue is not None and seen.first is not None and cue.at < seen.first)


def _is_gone(facts: Facts) -> bool:
    """Whether a plant is told to be gone, and not only feared to be."""
    gone = collection.lose(facts)
    return gone is not None and gone.verb == "lose" and not facts.says_any("unsure")


def _moved_to(facts: Facts, seen: Seen) -> str | None:
    """Where a plant was moved to before its signs were said: 'moved Ruby out, leaves yellow'."""
    cue = facts.first("move")
    if cue is None or seen.first is None or cue.at > seen.first or not facts.target.named:
        return None
    return facts.place


def _every_plant(facts: Facts) -> bool:
    """Whether 'all' is said of plants, and not of all roots or leaves."""
    cue = facts.first("everything", "both")
    if cue is None or cue.size > 1 or cue.end >= len(facts.raws):
        return True
    starts = {t.raws[0].start for t in facts.tokens if t.type in ("GENUS", "PLANTS")}
    return any(raw.start in starts for raw in facts.raws[cue.end : cue.end + 3])
