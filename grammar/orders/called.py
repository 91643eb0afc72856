"""What new plants are called where no 'called' says so: 'Hugo, a phal', '2 phals, Rita and Max'."""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

from grammar.folding import plain
from grammar.lexicon import settings_of, words_under
from grammar.orders import agreeing
from grammar.orders.facts import Facts
from grammar.words.spelling import guess

#: A name has no more words than this, and so many stand between an article and a kind.
_MOST_WORDS = 3
#: Orders that are everyday words and can be a name that is written large: 'Cat', 'Honey'.
_EVERYDAY = frozenset({"pets", "remedy", "food", "harm"})
#: What ends a name.
_ENDS = frozenset({
    "IN", "FOR", "AND", "MEDIUM", "GENUS", "TO", "OF", "POT", "ARTICLE", "NUMBER", "FILLER",
})  # fmt: skip


class Called(NamedTuple):
    """A name and the words that say it."""

    name: str
    at: frozenset[int]


def before_kind(facts: Facts, span: range) -> Called | None:
    """The name before the kind of a plant: 'Hugo, a phal', 'hugo a phal', 'Hugo phal'."""
    kind = _kind(facts, span)
    if kind is None:
        return None
    head = _article(facts, span, kind.start)
    apart = head is not None or facts.raws[kind.start].after_break
    end = kind.start if head is None else head
    run = _run_before(facts, span, end)
    if not run:
        return None
    large = _large(facts, run.start)
    lead = facts.words.type_at(run.start - 1) if run.start > span.start else ""
    counted = run.start > span.start and facts.raws[run.start - 1].kind == "number"
    if counted or lead in ("ARTICLE", "NUMBER"):
        return None  # 'a Sogo phal' is of a kind
    alone = len(run) == 1 and not come_by(facts, facts.raws[run.start].text)
    if not (large or (apart and alone)) or (not apart and _slip(facts, run)):
        return None
    return _called(facts, run)


def behind_kind(facts: Facts, span: range) -> Called | None:
    """The name right behind the kind of one plant: 'add Vanda Lola'; written large."""
    kind = _kind(facts, span)
    if kind is None or kind.stop not in span or facts.raws[kind.stop].after_break:
        return None
    end = kind.stop
    while end in span and end - kind.stop < _MOST_WORDS and _large(facts, end):
        if not _name_like(facts, end) or (end > kind.stop and facts.raws[end].after_break):
            break
        end += 1
    run = range(kind.stop, end)
    further = end in span and _large(facts, end) and not facts.raws[end].after_break
    if further and facts.words.type_at(end) not in _ENDS:
        return None  # a name of several words, one of which is no name
    several = (facts.read_rest(span, without=frozenset(run)).count or 1) > 1
    if not run or several or _slip(facts, run):
        return None
    return _called(facts, run)


def several(facts: Facts, span: range) -> list[Called]:
    """The names of several plants of a kind: '3 phals called Otto, Rita and Belle'."""
    kind = _kind(facts, span)
    if kind is None:
        return []
    cue = next((m for m in facts.found if m.type == "ORDER" and m.at in span
                and "naming" in m.value.split() and m.at >= kind.stop), None)  # fmt: skip
    count = facts.read_rest(span).count or 1
    counted = count > 1
    start = cue.end if cue is not None else kind.stop
    if cue is None and (start >= span.stop or not facts.raws[start].after_break):
        return _in_a_part(facts, range(start, span.stop)) if counted else []
    most = count if cue is not None and counted else 0
    found = _listed(facts, range(start, span.stop), most)
    by_and = any(facts.is_and(i) for i in range(start, max((max(c.at) for c in found), default=0)))
    if len(found) > 1 and (counted or by_and):
        return found
    return _in_a_part(facts, range(start, span.stop)) if counted and cue is None else []


def _in_a_part(facts: Facts, span: range) -> list[Called]:
    """Names that are a part by themselves further on: '2 phals in bark, Otto and Rita, 12 cm'."""
    for start in span:
        if not facts.raws[start].after_break:
            continue
        found = _listed(facts, range(start, span.stop))
        end = max((max(c.at) + 1 for c in found), default=start)
        whole = end == span.stop or facts.raws[end].after_break
        if len(found) > 1 and whole:
            return found
    return []


def passed_over(facts: Facts, span: range) -> Called | None:
    """A word right before a kind that would be passed over as a slip, and says which it is."""
    kind = _kind(facts, span)
    if kind is None or kind.start - 1 not in span or facts.raws[kind.start].after_break:
        return None
    at = kind.start - 1
    raw = facts.raws[at]
    if not _name_like(facts, at) or not guess(raw, facts.words.lexicon, counted=False).silent:
        return None
    return Called(facts.folded.written(raw.start, raw.end), frozenset({at}))


def joined(facts: Facts) -> tuple[str, ...]:
    """Words joined to plants by 'and' that would be passed over as slips: 'the phals and hugo'."""
    plants = [range(m.at, m.end) for m in facts.found if m.type in ("PLANT", "GONE")]
    plants += [range(i, i + 1) for i, _ in facts.genus_places]
    count = len(facts.raws)
    by_and: set[int] = set()
    for plant in plants:
        behind, before = plant.stop + 1, plant.start - 2
        if behind < count and facts.is_and(plant.stop) and _closes(facts, behind + 1):
            by_and.add(behind)
        if before >= 0 and facts.is_and(before + 1):
            by_and.add(before)
    return _silent(facts, sorted(by_and))


def overlooked(facts: Facts, span: range) -> tuple[str, ...]:
    """Words here that would be passed over as slips, and could be names: 'all except Lidy'."""
    return _silent(facts, [i for i in span if i not in facts.held])


def strange(facts: Facts) -> str:
    """A name behind 'for' that nobody on record bears: '2 l for lotte'; empty where none is."""
    for index in range(len(facts.raws) - 1):
        joined = facts.is_and(index) and index - 1 in facts.named  # 'for Ruby and lotte'
        if facts.words.type_at(index) != "FOR" and not joined:
            continue
        start = index + 1
        while facts.words.type_at(start) in ("ARTICLE", "FILLER") and start not in facts.held:
            start += 1
        end = start
        while end < len(facts.raws) and end - start < _MOST_WORDS and _nobody(facts, end):
            if facts.raws[end].after_break:
                break
            end += 1
        run = range(start, end)
        others = facts.words.type_at(end) in ("GENUS", "PLANTS", "POT")
        surely = start == index + 1 or not _silent(facts, run)
        if run and surely and not others and not _slip(facts, run):
            return facts.folded.written(facts.raws[start].start, facts.raws[end - 1].end)
    return ""


def behind_volume(facts: Facts) -> str:
    """What is to be mixed and nobody knows, right behind a volume: '3 l lemon', '3 l of lemon'."""
    for index in range(1, len(facts.raws) - 1):
        if facts.words.type_at(index) != "VOLUME_UNIT" or facts.raws[index - 1].kind != "number":
            continue
        start = index + 1
        small = ("OF", "ARTICLE", "FILLER")
        while facts.words.type_at(start) in small:
            start += 1
        end = start
        while end < len(facts.raws) and end - start < _MOST_WORDS and end not in facts.held:
            if not _name_like(facts, end):
                break
            end += 1
        run = range(start, end)
        if not run or any(facts.raws[i].after_break for i in (*run, start)):
            continue
        ends = end == len(facts.raws) or facts.raws[end].after_break
        ends = ends or facts.words.type_at(end) == "FOR"
        if ends and not _silent(facts, run) and not _slip(facts, run):
            return facts.folded.written(facts.raws[start].start, facts.raws[end - 1].end)
    return ""


def _nobody(facts: Facts, index: int) -> bool:
    """Whether a word means nothing here, and could be a name."""
    everyday = facts.raws[index].text in facts.words.lexicon.plain
    return index not in facts.held and not everyday and _name_like(facts, index)


def _silent(facts: Facts, places: Sequence[int]) -> tuple[str, ...]:
    """Of these words, as written, those that could be names and would be passed over as slips."""
    raws = (facts.raws[i] for i in places if _name_like(facts, i))
    passed = (r for r in raws if guess(r, facts.words.lexicon, counted=False).silent)
    return tuple(facts.folded.written(raw.start, raw.end) for raw in passed)


def _closes(facts: Facts, index: int) -> bool:
    """Whether a list of plants is over here."""
    if index >= len(facts.raws) or facts.raws[index].after_break or index in facts.when[1]:
        return True
    return facts.words.type_at(index) in ("IN", "TO", "AND", "FOR")


def begins_before(facts: Facts, before: int, cut: int) -> int | None:
    """Where a name stands before a further kind, in a part of its own: '; Bella, a vanda'."""
    run = _run_before(facts, range(before + 1, cut), cut)
    if not run or not facts.raws[cut].after_break or not facts.raws[run.start].after_break:
        return None
    return run.start if _large(facts, run.start) else None


def _kind(facts: Facts, span: range) -> range | None:
    """The words of the first kind of plant here."""
    starts = {raw.start: i for i, raw in enumerate(facts.raws)}
    last = next((i for i, _ in facts.genus_places if i in span), None)
    if last is None:
        return None
    said = next(t for t in facts.tokens
                if t.type == "GENUS" and starts[t.raws[-1].start] == last)  # fmt: skip
    return range(starts[said.raws[0].start], last + 1)


def _article(facts: Facts, span: range, kind: int) -> int | None:
    """Where an article stands before a kind and what tells it apart: 'a small phal'."""
    index = kind - 1
    while index in span and kind - index <= _MOST_WORDS + 1:
        raw = facts.raws[index]
        if raw.kind != "word":
            return None
        if facts.words.type_at(index) == "ARTICLE":
            return index
        if facts.raws[index + 1].after_break or raw.after_break:
            return None
        index -= 1
    return None


def _run_before(facts: Facts, span: range, end: int) -> range:
    """The words of a name that end here."""
    start = end
    while start - 1 in span and end - start < _MOST_WORDS and _name_like(facts, start - 1):
        start -= 1
        if facts.raws[start].after_break:
            break
    large = [i for i in range(start, end) if _large(facts, i)]
    return range(large[0] if large else max(start, end - 1), end)


def _listed(facts: Facts, span: range, most: int = 0) -> list[Called]:
    """Names that are joined by commas and 'and', from the first word on.

    With a number of them (`most`) 'called' stands before: small words are names too, and large
    ones that otherwise carry nothing, as long as one is lacking ('Ruby and Rose').
    """
    found: list[Called] = []
    small = most > 0
    index = span.start
    while index in span:
        if facts.is_and(index):
            index += 1
            continue
        end = index
        while end in span and end - index < _MOST_WORDS and _name_like(facts, end, loose=small):
            if end > index and facts.raws[end].after_break:
                break
            end += 1
        if end == index and len(found) < most and _filler_alone(facts, index, span):
            end += 1
        if end == index or not (small or _large(facts, index)):
            return found
        found.append(_called(facts, range(index, end)))
        if end in span and not (facts.is_and(end) or facts.raws[end].after_break):
            return found
        index = end
    return found


def _filler_alone(facts: Facts, index: int, span: range) -> bool:
    """Whether a large word that carries little makes up a part of a list by itself."""
    if facts.words.type_at(index) != "FILLER" or not _large(facts, index):
        return False
    marks = [m for m in facts.found if m.at <= index < m.end]
    if any(m.size > 1 or (m.type != "TRAIT" and m.value != "my") for m in marks):
        return False  # 'Rosa' is a colour, 'Mia' is 'mine'
    behind = index + 1
    if behind not in span or facts.is_and(behind) or facts.raws[behind].after_break:
        return True
    return any(m.type == "ORDER" and m.at == behind for m in facts.found)  # 'Rosa hinzufügen'


def _called(facts: Facts, run: range) -> Called:
    raws = facts.raws
    text = facts.folded.written(raws[run.start].start, raws[run.stop - 1].end)
    return Called(agreeing.name(text, facts.words.lexicon.language), frozenset(run))


def _name_like(facts: Facts, index: int, *, loose: bool = False) -> bool:
    """Whether a word carries no meaning of its own, or is written large and could be a name.

    Behind 'called' (`loose`) a large word is one unless it ends a name: 'April', 'Max'.
    """
    raw = facts.raws[index]
    joins = words_under(facts.words.lexicon.language, "joins")
    if raw.kind != "word" or any(c.isdigit() for c in raw.text) or raw.text in joins:
        return False
    mark = next((m for m in facts.found if m.at <= index < m.end), None)
    if mark is not None:
        everyday = mark.type == "ORDER" and mark.size == 1 and mark.value in _EVERYDAY
        return mark.type == "GONE" or (everyday and _large(facts, index))
    type_ = facts.words.type_at(index)
    if type_ and _large(facts, index):
        return type_ == "BOUND" or (loose and type_ not in _ENDS)
    if type_:
        return False
    return raw.text not in facts.words.lexicon.parts or _large(facts, index)


def _large(facts: Facts, index: int) -> bool:
    raw = facts.raws[index]
    return facts.folded.written(raw.start, raw.end)[:1].isupper()


def come_by(facts: Facts, word: str) -> bool:
    """Whether a word says how a plant was come by: 'I have inherited a phal'."""
    settings = settings_of(facts.words.lexicon.language)
    words = (*settings.get("come_by", ()), *settings.get("had", ()))
    return plain(word) in map(plain, words)


def come_from(facts: Facts, text: str) -> bool:
    """Whether words say where a plant was got: 'a phal from the supermarket'."""
    first = text.split()[0]
    words = (i for i, r in enumerate(facts.raws) if facts.folded.written(r.start, r.end) == first)
    at = next(words, 0) - 1
    while at > 0 and facts.words.type_at(at) in ("ARTICLE", "FILLER") and not _from(facts, at):
        at -= 1
    return at >= 0 and _from(facts, at)


def _from(facts: Facts, at: int) -> bool:
    return facts.raws[at].text in words_under(facts.words.lexicon.language, "come_from")


def _slip(facts: Facts, run: range) -> bool:
    """Whether a word is more likely a slip for one that means something."""
    guesses = (guess(facts.raws[i], facts.words.lexicon, counted=False) for i in run)
    return any(g.word is not None and not g.silent for g in guesses)
