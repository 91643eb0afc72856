"""The plants of a message that puts plants on record, each kind with what is said of it."""

from __future__ import annotations

from dataclasses import replace
from itertools import pairwise

from grammar.folding import plain
from grammar.lexicon import words_under
from grammar.order import PlantSaid
from grammar.orders import agreeing, called, counting
from grammar.orders.facts import Facts
from grammar.words.marks import Mark

#: A number of plants stands so near before what they grow in: 'one is in bark' [words].
_MEDIUM_WITHIN = 3


def plants(facts: Facts) -> tuple[PlantSaid, ...]:
    """Each kind in a message that puts plants on record, with what is said of it."""
    spans = borders(facts)
    said = [_plant(facts, span) for span in spans]
    if len(said) > 1 and _place_of_all(facts, spans, said):
        place = facts.place
        said = [replace(p, place=p.place or place) for p in said]
    if len(said) > 1 and facts.has("both"):
        last = said[-1]
        said = [
            replace(p, medium=p.medium or last.medium, pot_cm=p.pot_cm or last.pot_cm) for p in said
        ]
    each = (_apart(facts, span, p) for span, p in zip(spans, said, strict=True))
    return tuple(p for part in each for p in part)


def names_at(facts: Facts) -> frozenset[int]:
    """The words that are names of new plants, without a 'called' that says so."""
    found: set[int] = set()
    for span in borders(facts):
        before = called.before_kind(facts, span)
        found |= before.at if before is not None else frozenset()
        found |= {i for c in called.several(facts, span) for i in c.at}
    return frozenset(found)


def too_many_names(facts: Facts) -> tuple[int, tuple[str, ...]] | None:
    """A number of plants and more names than that: '2 phals called Otto, Rita and Belle'."""
    for span in borders(facts):
        names = [c.name for c in called.several(facts, span)]
        count = _plant(facts, span).count if names else None
        if count is not None and len(names) > count:
            return count, tuple(names)
    return None


def _place_of_all(facts: Facts, spans: list[range], said: list[PlantSaid]) -> bool:
    """Whether the one place holds for all: at the head, or at the end of a plain list."""
    if len(facts.place_runs) != 1:
        return False
    small = ("IN", "ARTICLE", "FILLER", "OF")
    at = min(facts.place_runs[0][1])
    if facts.has("both") or all(
        facts.words.type_at(i) in small or facts.words.cue_at(i) for i in range(at)
    ):
        return True
    starts = (facts.raws[span.start] for span in spans[1:])
    apart = any(_parted(facts, raw.start) for raw in starts)
    plain = not any(p.medium or p.pot_cm or p.growth for p in said[:-1])

    def broken(index: int) -> bool:
        return facts.raws[index].after_break

    lead = at
    first = spans[-1].start
    while lead > first and facts.words.type_at(lead - 1) in small and not broken(lead):
        lead -= 1
    return at in spans[-1] and (plain or broken(lead)) and not apart


def _parted(facts: Facts, start: int) -> bool:
    """Whether a semicolon, a full stop or a new line stands before this place in the text."""
    before = facts.folded.text[:start].rstrip(" \t")
    return before[-1:] in (";", ".", "\n")


def _apart(facts: Facts, span: range, plant: PlantSaid) -> list[PlantSaid]:
    """A plant for each of several names or media, and those that are left without a name."""
    names = called.several(facts, span)
    if not names:
        media = _by_medium(facts, span)
        even = bool(media) and sum(media.values()) == plant.count
        return [replace(plant, medium=m, count=n) for m, n in media.items()] if even else [plant]
    each = [replace(plant, name=c.name, count=1) for c in names]
    left = (plant.count or 0) - len(names)
    return [*each, replace(plant, name=None, count=left)] if left > 0 else each


def _by_medium(facts: Facts, span: range) -> dict[str, int]:
    """How many stand in which medium: 'two phals, one in bark, one in moss'; {} of fewer than two.

    One that is not counted is one: 'the other in moss'.
    """
    starts = {raw.start: i for i, raw in enumerate(facts.raws)}
    said = [t for t in facts.tokens if t.type == "MEDIUM" and starts[t.raws[0].start] in span]
    found: dict[str, int] = {}
    for token in said:
        at = starts[token.raws[0].start]
        near = range(max(at - _MEDIUM_WITHIN, span.start), at)
        counted = [n for i in near if (n := counting.number_at(facts, i))]
        found[token.value] = found.get(token.value, 0) + (counted[-1] if counted else 1)
    return found if len(found) > 1 else {}


def borders(facts: Facts) -> list[range]:
    places = [i for i, _ in facts.genus_places]
    if len(places) < 2:
        return [range(len(facts.raws))]
    cuts = [0]
    for before, place in pairwise(places):
        cut = place
        while cut > before + 1 and not _begins(facts, cut):
            cut -= 1
        apart = called.begins_before(facts, before, cut)
        if apart is not None and _named_before(facts, cuts[-1], before, apart):
            cuts.append(apart)
        else:
            cuts.append(_with_name_before(facts, before, cut))
    return [range(a, b) for a, b in zip(cuts, [*cuts[1:], len(facts.raws)], strict=True)]


def _named_before(facts: Facts, start: int, kind: int, name: int) -> bool:
    """Whether a name in a part of its own goes with the kind behind it: 'Ruby, a phal; Bella, a'.

    So it is where the plant before has its name before its kind as well, or another sentence
    begins: 'a phal, Bella, a vanda' says nothing of the kind.
    """
    return _parted(facts, facts.raws[name].start) or (
        called.before_kind(facts, range(start, kind + 1)) is not None
    )


def _with_name_before(facts: Facts, before: int, cut: int) -> int:
    """Where a further plant begins whose name stands before its kind: 'and Bella, a vanda'."""
    joined = next((i for i in range(cut - 1, before, -1) if facts.is_and(i)), None)
    if joined is None or not facts.raws[cut].after_break:
        return cut
    between = [facts.raws[i] for i in range(joined + 1, cut)]
    written = [facts.folded.written(raw.start, raw.end) for raw in between]
    return joined if between and all(w[:1].isupper() for w in written) else cut


def _begins(facts: Facts, index: int) -> bool:
    """Whether a further plant begins with this word: behind a comma, 'and', or a number."""
    raw = facts.raws[index]
    entry = facts.words.lexicon.words.get(raw.text)
    kind = entry.type if entry is not None else ""
    joins = words_under(facts.words.lexicon.language, "joins")
    return raw.after_break or kind in ("AND", "PLUS") or raw.text == "+" or raw.text in joins


def _plant(facts: Facts, span: range) -> PlantSaid:
    # Each part may have a name of its own: 'a masdevallia called Anna, a vanda called Bella'.
    name, held = facts.part(span).new_name
    name_at = frozenset(i + span.start for i in held) | facts.new_name[1]
    several = called.several(facts, span)
    before = called.before_kind(facts, span) if not name and not several else None
    if before is None and not name and not several:
        before = called.behind_kind(facts, span)
    name_at = name_at.union(*(c.at for c in several), before.at if before else ())
    named = name or (before.name if before else None)
    reading = facts.read_rest(span, without=name_at)
    if before is not None and reading.count is not None and reading.count > 1:
        before, named = None, name or None  # '3 Otto phals' are of a kind
        name_at = facts.new_name[1]
        reading = facts.read_rest(span, without=name_at)
    plants = [m for m in facts.found if m.type == "PLANT" and m.at in span]
    known = next((m.value for m in plants if not m.told), None)
    named = named or known
    genus = reading.genera[0] if reading.genera else None
    traits = [agreeing.trait(facts.words, m, genus) for m in facts.found
              if m.at in span and m.at not in name_at and _is_trait(facts, m)]  # fmt: skip
    traits += [m.value for m in plants if m.told and m.at not in name_at]
    joins = words_under(facts.words.lexicon.language, "joins")
    for unknown in reading.unknown:
        text = _without_states(facts, unknown.text.strip("\"'"))
        if not text:
            continue
        lone = text[:1].isupper() and named is None and not any(c.isdigit() for c in text)
        if lone and _stands_alone(facts, span, text):
            named = agreeing.name(text, facts.words.lexicon.language)
        elif any(c.isdigit() for c in text) or called.come_by(facts, text):
            continue
        elif not (called.come_from(facts, text) or plain(text) in joins):
            traits.append(text)
    lost = called.passed_over(facts, span)
    passed = _without_states(facts, lost.name) if lost is not None else ""
    if lost is not None and lost.at.isdisjoint(name_at) and passed and passed not in traits:
        traits.append(passed)
    places = [text for text, run in facts.place_runs if min(run) in span]
    return PlantSaid(
        genus=genus,
        count=reading.count,
        name=named,
        traits=tuple(traits),
        medium=reading.medium,
        pot_cm=reading.pot_cm,
        place=places[-1] if places else None,
        growth=reading.growth,
        water=reading.water.kind if reading.water else None,
    )


def _without_states(facts: Facts, text: str) -> str:
    """Words that tell a plant apart, without how it or its place is today: 'sick', 'cold'."""
    out = words_under(facts.words.lexicon.language, "no_trait")
    return " ".join(word for word in text.split() if plain(word) not in out)


def _is_trait(facts: Facts, mark: Mark) -> bool:
    if facts.of_a_pot(mark):
        return False
    if mark.type == "TRAIT":
        return True
    if facts.raws[mark.at].text in words_under(facts.words.lexicon.language, "no_trait"):
        return False  # 'my first orchid'
    lone = not any(mark.at in run for _, run in facts.place_runs)
    return mark.type == "PLACE" and agreeing.kind(mark) == "mark" and lone


def _stands_alone(facts: Facts, span: range, text: str) -> bool:
    """Whether these words fill a part of their own: 'Ruby, a masdevallia'."""
    raws, folded = facts.raws, facts.folded
    parts = text.split()
    words = [i for i in span if folded.written(raws[i].start, raws[i].end) in parts]
    if not words:
        return False
    after = words[-1] + 1
    ends = after >= len(facts.raws) or facts.raws[after].after_break
    quoted = words[0] > 0 and facts.folded.text[facts.raws[words[0]].start - 1] in "'\""
    before = words[0] - 1
    begins = facts.raws[words[0]].after_break or before < 0 or before in facts.held
    begins = begins or (facts.is_and(before) and after < span.stop)  # 'and Bella, a vanda'
    return quoted or (ends and begins)
