"""The plants of a message that puts plants on record, each kind with what is said of it."""

from __future__ import annotations

from dataclasses import replace
from itertools import pairwise

from grammar.order import PlantSaid
from grammar.orders import agreeing
from grammar.orders.facts import Facts
from grammar.words.marks import Mark


def plants(facts: Facts) -> tuple[PlantSaid, ...]:
    """Each kind in a message that puts plants on record, with what is said of it."""
    said = [_plant(facts, span) for span in borders(facts)]
    if len(said) > 1 and len(facts.place_runs) == 1:
        place = facts.place
        said = [replace(p, place=p.place or place) for p in said]
    if len(said) > 1 and facts.has("both"):
        last = said[-1]
        said = [
            replace(p, medium=p.medium or last.medium, pot_cm=p.pot_cm or last.pot_cm) for p in said
        ]
    return tuple(said)


def borders(facts: Facts) -> list[range]:
    places = [i for i, _ in facts.genus_places]
    if len(places) < 2:
        return [range(len(facts.raws))]
    cuts = [0]
    for before, place in pairwise(places):
        cut = place
        while cut > before + 1 and not _begins(facts, cut):
            cut -= 1
        cuts.append(_with_name_before(facts, before, cut))
    return [range(a, b) for a, b in zip(cuts, [*cuts[1:], len(facts.raws)], strict=True)]


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
    return raw.after_break or kind in ("AND", "PLUS") or raw.text == "+"


def _plant(facts: Facts, span: range) -> PlantSaid:
    # Each part may have a name of its own: 'a masdevallia called Anna, a vanda called Bella'.
    name, held = facts.part(span).new_name
    name_at = frozenset(i + span.start for i in held) | facts.new_name[1]
    named = name or None
    reading = facts.read_rest(span, without=name_at)
    known = next((m.value for m in facts.found if m.type == "PLANT" and m.at in span), None)
    named = named or known
    genus = reading.genera[0] if reading.genera else None
    traits = [agreeing.trait(facts.words, m, genus) for m in facts.found
              if m.at in span and m.at not in name_at and _is_trait(facts, m)]  # fmt: skip
    for unknown in reading.unknown:
        text = unknown.text.strip("\"'")
        lone = text[:1].isupper() and named is None and not any(c.isdigit() for c in text)
        if lone and _stands_alone(facts, span, text):
            named = agreeing.name(text, facts.words.lexicon.language)
        elif not any(c.isdigit() for c in text):
            traits.append(text)
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


def _is_trait(facts: Facts, mark: Mark) -> bool:
    if mark.type == "TRAIT":
        return True
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
