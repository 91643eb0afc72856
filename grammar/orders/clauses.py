"""Messages that say several things of one kind: 'fed all but Ruby, Ruby only watered'."""

from __future__ import annotations

from itertools import pairwise

from grammar.order import Target, When
from grammar.orders.facts import Facts
from grammar.words.marks import Mark

#: What was given, by the word that says so.
_GIVEN = frozenset({"fed", "clear", "flush"})


def given_apart(facts: Facts) -> list[Facts] | None:
    """What was given to whom, a part for each word that says so.

    Parameters
    ----------
    facts : the message

    Returns
    -------
    list of Facts or None
        Empty where it says one thing only; None where it says several and it cannot be told
        which plants belong to which.
    """
    said = [m for m in facts.found if m.type == "ORDER" and not _GIVEN.isdisjoint(m.value.split())]
    if len(said) < 2 or facts.question:
        return [] if facts.question or not said else days_apart(facts)
    cuts = [0]
    for before, mark in pairwise(said):
        cut = _border(facts, before, mark)
        if cut is None:
            fed = {"fed" in m.value.split() for m in said}
            return None if len(fed) > 1 and _names_plants(facts, said) else []
        cuts.append(cut)
    parts = [
        facts.part(range(a, b)) for a, b in zip(cuts, [*cuts[1:], len(facts.raws)], strict=True)
    ]
    return [] if any(_nobody(i, parts) for i in range(len(parts))) else parts


def days_apart(facts: Facts) -> list[Facts]:
    """What was done on several days, a part for each: 'fed Hugo yesterday and Ruby today'.

    Empty where one day was said, or where they do not part the plants.
    """
    days = days_said(facts)
    if len({when for when, _ in days}) < 2:
        return []
    cuts = [0]
    for (_, before), (_, mark) in pairwise(days):
        cut = _border(facts, before, mark)
        if cut is None:
            return []
        cuts.append(cut)
    spans = zip(cuts, [*cuts[1:], len(facts.raws)], strict=True)
    parts = [facts.part(range(a, b)) for a, b in spans]
    return [] if any(p.target.empty for p in parts) else parts


def days_in_a_row(facts: Facts) -> bool:
    """Whether two days were said of the same: 'yesterday and today', 'on monday and thursday'."""
    days = days_said(facts)
    return any(
        first != second
        and any(facts.is_and(i) for i in range(before.end, mark.at))
        and all(facts.is_filler(i) for i in range(before.end, mark.at))
        for (first, before), (second, mark) in pairwise(days)
    )


def days_said(facts: Facts) -> list[tuple[When, Mark]]:
    """The days that were said, in order, with their words."""
    found: list[tuple[When, Mark]] = []
    start = 0
    while start < len(facts.raws):
        day, held = facts.part(range(start, len(facts.raws))).when
        if day is None or not held:
            break
        at, end = start + min(held), start + max(held) + 1
        if day.kind in ("day", "weekday", "date"):
            found.append((day, Mark("WHEN", day.kind, at, end - at)))
        start = end
    return found


def feeds_apart(facts: Facts) -> list[Facts]:
    """What was told of several feeds on record, a part for each; empty where it is one."""
    named = [m for m in facts.found if m.type == "PRODUCT"]
    if len({m.value for m in named}) < 2 or len(named) != len({m.value for m in named}):
        return []
    cuts = [0]
    for before, mark in pairwise(named):
        cut = _border(facts, before, mark)
        if cut is None:
            return []
        cuts.append(cut)
    money = facts.label[0].currency or ""
    spans = zip(cuts, [*cuts[1:], len(facts.raws)], strict=True)
    return [facts.part(range(a, b), money) for a, b in spans]


def _border(facts: Facts, before: Mark, mark: Mark) -> int | None:
    """Where the second of two things begins; None where several places are as likely."""
    between = range(before.end, mark.at + 1)
    breaks = [i for i in between if facts.raws[i].after_break]
    joins = [i for i in between if facts.is_and(i)]
    near = [
        i for i in sorted({*breaks, *joins})
        if all(facts.is_filler(j) and j not in facts.named for j in range(i, mark.at))
    ]  # fmt: skip
    found = breaks or joins
    if near:
        return near[-1]
    if not found:
        return _second_of(facts, before, mark)
    return found[0] if len(found) == 1 else None


def _second_of(facts: Facts, before: Mark, mark: Mark) -> int | None:
    """Where plants stand before each of two words: 'Hugo fed today Ruby only water'."""
    plants = facts.named | {i for i, _ in facts.genus_places}
    between = sorted(plants & set(range(before.end, mark.at)))
    others = (i for i in range(before.end, mark.at) if i not in plants | facts.when[1])
    if not between or any(not facts.is_filler(i) for i in others):
        return None
    behind = plants & set(range(mark.end, len(facts.raws)))
    return between[0] if plants & set(range(before.at)) and not behind else None


def feed_and_water(facts: Facts) -> bool:
    """'Today feed for Hugo and Ruby, Mia just water': two things, and one of them only named."""
    water = facts.first("clear")
    if water is None or facts.has("fed", "flush", "gave", "watered", "except", "not_fed"):
        return False
    starts = [i for i in range(1, water.at + 1) if facts.raws[i].after_break]
    if not starts:
        return False
    first, second = facts.part(range(starts[-1])), facts.part(range(starts[-1], len(facts.raws)))
    denied = any(t.type == "NOT" for t in facts.tokens)
    both = first.target.named_one and second.target.named_one
    return both and first.rest.mentions_feeding and not denied


def wetted_and_fed(facts: Facts) -> bool:
    """'watered and fed Ruby': wetted first, as feed should be given."""
    clear, fed = facts.first("clear"), facts.first("fed")
    if clear is None or fed is None:
        return False
    first, last = sorted((clear, fed), key=lambda m: m.at)
    between = range(first.end, last.at)
    joined = any(facts.is_and(i) for i in between)
    return joined and all(facts.is_filler(i) and i not in facts.named for i in between)


def _names_plants(facts: Facts, said: list[Mark]) -> bool:
    """Whether plants stand on both sides of the last of these words' first border."""
    first = facts.part(range(said[0].at, said[1].at))
    return not first.target.empty


def _nobody(index: int, parts: list[Facts]) -> bool:
    """Whether a part says nobody it could be about."""
    return parts[index].target.empty and not (index and parts[index - 1].target.excepts)


def meant_by(part: Facts, before: Target | None) -> Target:
    """The plants of a part; those that were excepted just before, where it names none."""
    target = part.target
    if target.named or before is None or not before.excepts:
        return target
    return Target(
        names=before.not_names,
        genera=before.not_genera,
        traits=before.not_traits,
        medium=before.not_media[0] if before.not_media else None,
        place=before.not_places[-1] if before.not_places else None,
        more_places=before.not_places[:-1],
    )
