"""The order of work with one can, as sentences for wet hands."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass

from bot.conversation.collection import Collection, labels
from bot.conversation.turn import Turn
from bot.conversation.turns.day.groups import Group
from bot.conversation.turns.shelf import title
from bot.dosing.measuring import (
    BOTTLES_ML,
    NICE,
    SCALE_STEP_G,
    STRONGEST_STOCK_G_L,
    SYRINGE_STEP_ML,
    TOLERABLE_ERROR,
    relative_error,
)
from bot.dosing.mixing import Mix, MixingPlan, Portion, PourClear, TopUp, Water, plan_mixing
from bot.records.models import Plant, Product

#: Taken where the size of the can was not said [L].
ASSUMED_CAN_L = 5.0
#: Less than this left in the can is not worth a word [L].
_TOLD_L = 0.1
#: So little is mixed in a measuring jug, with marks nearer to each other than a can's [L].
_JUG_L = 1.0
_JUG_MARK_L = 0.01
_CAN_MARK_L = 0.05
#: With more different reasons than this only the plants are said.
_MOST_REASONS = 4
#: The smallest part of a spoon that can be told apart [tsp].
_SPOON_STEP = 0.125


@dataclass(frozen=True, slots=True)
class Part:
    """One numbered part of the plan: what to do with the can, and for which groups."""

    text: str
    keys: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class CanPlan:
    """The parts in order of work, and what to know before: a stock to make, a coarse scale.

    `unfed` are groups whose feed is too little to measure: they get clear water.
    """

    parts: tuple[Part, ...]
    note: str = ""
    unfed: frozenset[str] = frozenset()


@dataclass(frozen=True, slots=True)
class _Bench:
    """What the can is filled with: the product, its unit, and how it is measured.

    `stock_per_ml` is product in a ml of stock [g or ml], None where it is measured straight.
    """

    turn: Turn
    collection: Collection
    product: Product
    unit: str
    stock_per_ml: float | None = None


def can_of(turn: Turn) -> float | None:
    """The can a day is planned with [L]: the one said with the plan, otherwise that on record."""
    if turn.order.verb == "plan" and turn.reading.volume_l is not None:
        return turn.reading.volume_l
    return turn.owner.can_l if turn.owner is not None else None


def can_plan(
    groups: list[Group], collection: Collection, product: Product | None, turn: Turn
) -> CanPlan:
    """How to serve all groups from one can.

    Parameters
    ----------
    groups : as `groups_of` gives them
    collection : for the waters
    product : what is fed, None where nothing is on the shelf
    turn : for the kit and the words

    Returns
    -------
    CanPlan
        Flushes first, then clear water, then the feeds from the strongest down.
    """
    flushed = [
        Part(_line("plan-flush", [g], g.volume_l, collection, turn), (g.key,))
        for g in groups
        if g.action == "flush"
    ]
    wet = [g for g in groups if g.action in ("clear", "feed") and g.volume_l > 0]
    mixable = [g for g in wet if g.action == "clear" or (product is not None and g.per_litre > 0)]
    loose = [
        Part(_line("plan-feed-no-product", [g], g.volume_l, collection, turn), (g.key,))
        for g in wet
        if g not in mixable
    ]
    if product is None:
        clear = [
            Part(_line("plan-clear", [g], g.volume_l, collection, turn), (g.key,)) for g in mixable
        ]
        return CanPlan((*flushed, *clear, *loose))
    if not mixable:
        return CanPlan((*flushed, *loose))
    made, bench, note = _mixed(mixable, collection, product, turn)
    parts = _instructions(made, {g.key: g for g in mixable}, bench)
    unfed = (k for s in made.steps if isinstance(s, Water) and s.per_litre <= 0 for k in s.keys)
    return CanPlan((*flushed, *parts, *loose), note, frozenset(unfed))


def _mixed(
    groups: list[Group], collection: Collection, product: Product, turn: Turn
) -> tuple[MixingPlan, _Bench, str]:
    """The mixing order; with a stock solution where the scale is too coarse."""
    owner = turn.owner
    unit = next((g.unit for g in groups if g.per_litre), "g")
    syringe = (owner.syringe_step_ml if owner else None) or SYRINGE_STEP_ML
    scale = (owner.scale_step_g if owner else None) or SCALE_STEP_G
    step = {"g": scale, "ml": syringe}.get(unit, _SPOON_STEP)
    can_l = can_of(turn) or ASSUMED_CAN_L
    # Mixes with different waters never meet: to the plan they are different products.
    portions = [
        Portion(g.key, g.volume_l, g.per_litre, f"{g.water_id}" if g.per_litre else "", g.ceiling)
        for g in groups
    ]
    steps = {p.product: step for p in portions if p.product}
    small = sum(g.volume_l for g in groups) <= _JUG_L
    mark_l = _JUG_MARK_L if small else _CAN_MARK_L
    made = plan_mixing(portions, can_l, steps, mark_l=mark_l)
    bench = _Bench(turn, collection, product, unit)
    if _measured_well(made, step):
        return made, bench, ""
    words = turn.words
    for product_g, bottle_ml in _stocks(step) if unit != "tsp" else ():
        finest = syringe * product_g / bottle_ml
        finer = plan_mixing(portions, can_l, dict.fromkeys(steps, finest), mark_l=mark_l)
        if not _measured_well(finer, finest):
            continue
        note = words.say(
            "plan-stock",
            product=words.number(product_g),
            unit=unit,
            name=title(product, turn),
            bottle=words.number(bottle_ml, 0),
        )
        per_ml = product_g / bottle_ml
        return finer, _Bench(turn, collection, product, unit, per_ml), note
    return made, bench, words.say("plan-too-coarse", step=words.number(step, 3), unit=unit)


def _measured_well(made: MixingPlan, step: float) -> bool:
    """Whether every amount is measured well with a tool of this step, and no group goes without."""
    amounts = (s.amount for s in made.steps if isinstance(s, Mix))
    fed = all(s.per_litre > 0 for s in made.steps if isinstance(s, Water))
    return fed and all(relative_error(a, step) <= TOLERABLE_ERROR for a in amounts)


def _stocks(step: float) -> Iterator[tuple[float, float]]:
    """Stock solutions that are measured well with a tool of this step, the strongest first."""
    least = next((p for p in NICE if relative_error(p, step) <= TOLERABLE_ERROR / 2), None)
    if least is None:
        return
    for bottle_ml in BOTTLES_ML:
        if least / bottle_ml * 1000 <= STRONGEST_STOCK_G_L:
            yield least, bottle_ml


def _instructions(made: MixingPlan, groups: Mapping[str, Group], bench: _Bench) -> list[Part]:
    """The steps as sentences, one part for each pour."""
    words, turn = bench.turn.words, bench.turn
    parts: list[Part] = []
    before: list[str] = []
    poured = ""
    pours = Counter(s.keys for s in made.steps if isinstance(s, Water))
    served: dict[tuple[str, ...], int] = {}
    for step in made.steps:
        if isinstance(step, PourClear):
            parts += _clear_parts(step, groups, bench)
        elif isinstance(step, Mix):
            poured = step.product
            before.append(_mix_line(step, bench))
        elif isinstance(step, TopUp):
            water = _water_named(poured, bench.collection, turn)
            before.append(words.say("plan-top-up", to=litres(step.to_l, turn), water=water))
        elif isinstance(step, Water):
            chosen = [groups[k] for k in step.keys]
            fed = step.per_litre > 0
            code = "plan-feed" if fed else "plan-too-little"
            served[step.keys] = served.get(step.keys, 0) + 1
            cans = (served[step.keys], pours[step.keys])
            text = _line(code, chosen, step.volume_l, bench.collection, turn, cans)
            before = before if fed else []
            parts.append(Part(" ".join([*before, text]), step.keys))
            before = []
        else:
            before.append(words.say("plan-pour-off", volume=litres(step.volume_l, turn)))
    if made.leftover.volume_l >= _TOLD_L:
        last = parts.pop()
        rest = words.say("plan-left-over", volume=litres(made.leftover.volume_l, turn))
        parts.append(Part(f"{last.text} {rest}", last.keys))
    return parts


def _clear_parts(step: PourClear, groups: Mapping[str, Group], bench: _Bench) -> list[Part]:
    """Clear water, each water by itself."""
    by_water: dict[int | None, list[tuple[str, float]]] = {}
    for key, volume_l in zip(step.keys, step.volumes_l, strict=True):
        by_water.setdefault(groups[key].water_id, []).append((key, volume_l))
    return [
        Part(
            _line(
                "plan-clear",
                [groups[k] for k, _ in pours],
                sum(v for _, v in pours),
                bench.collection,
                bench.turn,
            ),
            tuple(k for k, _ in pours),
        )
        for pours in by_water.values()
    ]


def _mix_line(step: Mix, bench: _Bench) -> str:
    turn, words = bench.turn, bench.turn.words
    name = title(bench.product, turn)
    to = litres(step.fill_to_l, turn)
    water = _water_named(step.product, bench.collection, turn)
    if bench.stock_per_ml is not None:
        return words.say(
            "plan-mix-stock",
            amount=words.number(step.amount / bench.stock_per_ml, 1),
            holds=words.significant(step.amount),
            unit=bench.unit,
            name=name,
            to=to,
            water=water,
        )
    return words.say(
        "plan-mix",
        amount=words.number(step.amount, 4),
        unit=bench.unit,
        name=name,
        to=to,
        water=water,
    )


def _line(
    code: str,
    groups: list[Group],
    volume_l: float,
    collection: Collection,
    turn: Turn,
    cans: tuple[int, int] = (1, 1),
) -> str:
    """What some groups get, which plants they are, and why; `cans` says which of how many."""
    strengths = [g.strength for g in groups if g.strength is not None]
    strength = f"{turn.words.significant(100 * min(strengths))} %" if strengths else ""
    return turn.words.say(
        code,
        volume=litres(volume_l, turn),
        plants=whom(groups, turn) if cans[0] == 1 else turn.words.say("plan-same-plants"),
        strength=strength,
        can=cans[0],
        of=cans[1],
        water=_water(groups, collection, turn) or "none",
    )


def _water(groups: list[Group], collection: Collection, turn: Turn) -> str:
    """The water of some groups, where it is not the usual one."""
    named = (_water_named(str(g.water_id), collection, turn) for g in groups)
    return next((n for n in named if n != "none"), "")


def _water_named(key: str, collection: Collection, turn: Turn) -> str:
    """A water by its number as text; 'none' for the usual one."""
    row = next((w for w in collection.waters if str(w.id) == key and not w.is_default), None)
    if row is None:
        return "none"
    return row.name or turn.words.say(f"water-{row.kind}")


def whom(groups: Iterable[Group], turn: Turn) -> str:
    """The plants of some groups, each kind with its reasons."""
    by_reasons: dict[tuple[str, ...], list[Plant]] = {}
    for group in groups:
        for plants, reasons in group.reasons:
            by_reasons.setdefault(reasons, []).extend(plants)
    words = turn.words
    if len(by_reasons) > _MOST_REASONS:
        return labels([p for plants in by_reasons.values() for p in plants], words)
    return "; ".join(
        f"{labels(plants, words)} ({words.listed(list(reasons))})"
        if reasons
        else labels(plants, words)
        for reasons, plants in by_reasons.items()
    )


def litres(volume_l: float, turn: Turn) -> str:
    """A volume as it is poured: to 10 ml below a litre, to 50 ml above."""
    if volume_l < 0.995:
        return turn.words.volume(max(round(volume_l * 100) * 10, 10) / 1000)
    return turn.words.volume(round(volume_l * 20) / 20)
