"""The mixing order for one can on a watering day.

Several groups of plants get different strengths from one can. Clear water goes first; then, for
each product, the strongest mix is weighed once and thinned down with clear water from group to
group. Everything here is numbers and plain data: the sentences are made elsewhere.

Notation: group i (strongest first) needs v_i litres at s_i g or ml of product in a litre.

- Fill mark before group i: V_i = (sum over j >= i of v_j s_j) / s_i. Filling up to V_i and using
  v_i leaves exactly what the weaker groups need.
- Fewest weighings: B = ceil(max V_i / can). From one weighing on, the can only gets weaker; when
  it first stands at s_i or below it holds at most s_i x can of product, so B weighings serve
  groups i, i+1, ... with at most B x s_i x can. That bound is reached: see `_share_out`.
- Rounding: what is weighed is a whole number of scale or syringe steps, what is filled up to is a
  mark of the can (or its brim). Each mark is set for the product that is really in the can, so
  errors do not add up from group to group.
"""

from __future__ import annotations

import math
from bisect import bisect_right, insort
from collections.abc import Callable, Iterable, Mapping, Sequence
from dataclasses import dataclass, replace
from itertools import accumulate

__all__ = [
    "Contents",
    "GroupResult",
    "Kit",
    "Mix",
    "MixingPlan",
    "Portion",
    "PourClear",
    "PourOff",
    "Step",
    "TopUp",
    "Water",
    "plan_mixing",
    "recompute_after",
]

MAX_FILLINGS = 1000
"""Can-fulls of one liquid beyond which a plan is refused: nobody carries a thousand cans."""

SMALLEST, LARGEST = 1e-6, 1e4
"""Bounds of any volume [L], strength [g/L or ml/L] and step that is worked with; 0 apart."""

_EPS = 1e-9
_DIGITS = 9
_BEAM = 4
_MANY_POURS = 60  # of one product, from which on only one way is followed, for speed
_PARTS_KEPT = (1.0, 0.97, 0.9, 0.8, 0.6, 0.3, 0.0)  # of a mix in the can, until ceilings allow it
_REST_WEIGHT = 0.2  # a litre left over weighs as much as 20 % of strength: 0.05 L as 1 %
_BEYOND_ERROR_COST = 1000.0  # a strength no reading error explains: where nothing else fits


@dataclass(frozen=True, slots=True)
class Portion:
    """What one group of plants is to get.

    Parameters
    ----------
    key : str
        Name of the group, unique in a plan.
    volume_l : float
        Water it takes [L]; 0 is left out of the plan.
    per_litre : float
        Product in a litre [g/L or ml/L]; 0 is clear water.
    product : str
        Name of the product, empty for clear water.
    ceiling_per_litre : float or None
        Strength it must never exceed [g/L or ml/L].
    """

    key: str
    volume_l: float
    per_litre: float
    product: str = ""
    ceiling_per_litre: float | None = None


@dataclass(frozen=True, slots=True)
class Contents:
    """What is in the can: volume [L], strength [g/L or ml/L] and product (empty: clear water)."""

    volume_l: float = 0.0
    per_litre: float = 0.0
    product: str = ""

    @property
    def amount(self) -> float:
        """Product in the can [g or ml]."""
        return self.volume_l * self.per_litre


@dataclass(frozen=True, slots=True)
class PourClear:
    """Fill the can with clear water and pour it for these keys, `volumes_l` each [L]."""

    keys: tuple[str, ...]
    volumes_l: tuple[float, ...]
    volume_l: float
    can: int
    cans: int
    in_can: Contents


@dataclass(frozen=True, slots=True)
class Mix:
    """Measure `amount` [g or ml] of the product into the can and fill up to `fill_to_l` [L].

    `batch` of `batches` counts the weighings of this product. `per_litre` is the strength made.
    """

    product: str
    amount: float
    fill_to_l: float
    batch: int
    batches: int
    per_litre: float
    in_can: Contents


@dataclass(frozen=True, slots=True)
class TopUp:
    """Add `add_l` of clear water, up to the mark `to_l` [L]; `per_litre` is the strength made."""

    add_l: float
    to_l: float
    per_litre: float
    in_can: Contents


@dataclass(frozen=True, slots=True)
class Water:
    """Pour `volume_l` [L] for these keys, `volumes_l` each.

    `per_litre` is the strength poured, `target_per_litre` the one aimed at [g/L or ml/L].
    `measuring_error` is the relative error of that strength when every reading before it (scale,
    marks) is off by what it was rounded by at most; 0 in the exact plan. From 1 on the strength is
    beyond control: a few drops of a weak mix after much of a strong one, or less than one step.
    """

    keys: tuple[str, ...]
    volumes_l: tuple[float, ...]
    volume_l: float
    per_litre: float
    target_per_litre: float
    measuring_error: float
    product: str
    batch: int
    batches: int
    in_can: Contents


@dataclass(frozen=True, slots=True)
class PourOff:
    """Pour `volume_l` [L] away: more is in the can than the rest of the plan can use.

    Only a recomputed plan has this step.
    """

    volume_l: float
    per_litre: float
    product: str
    in_can: Contents


Step = PourClear | Mix | TopUp | Water | PourOff


@dataclass(frozen=True, slots=True)
class Kit:
    """What is measured with.

    Parameters
    ----------
    can_l : float
        Size of the can [L]. Its brim counts as a mark.
    measuring_steps : tuple of (str, float)
        Smallest step of the scale [g] or syringe [ml], by product.
    mark_l : float
        Distance of the marks that can be read on the can [L].
    leftover_l : float
        Most that may be left in the can at the end [L].
    tolerance : float
        Relative deviation of a strength that does not matter.
    """

    can_l: float
    measuring_steps: tuple[tuple[str, float], ...]
    mark_l: float
    leftover_l: float
    tolerance: float

    def measuring_step(self, product: str) -> float:
        """Smallest step of what measures this product [g or ml]."""
        return dict(self.measuring_steps)[product]

    def mark_from(self, volume_l: float) -> float:
        """Lowest mark that holds this volume [L]; infinite where the can does not."""
        if volume_l > self.can_l * (1 + _EPS):
            return math.inf
        marks = max(math.ceil(volume_l / self.mark_l - _EPS), 1 if volume_l > 0 else 0)
        return min(round(marks * self.mark_l, _DIGITS), self.can_l)

    def mark_to(self, volume_l: float) -> float:
        """Highest mark not above this volume [L]."""
        if volume_l >= self.can_l * (1 - _EPS):
            return self.can_l
        return round(math.floor(volume_l / self.mark_l + _EPS) * self.mark_l, _DIGITS)


@dataclass(frozen=True, slots=True)
class GroupResult:
    """What the portions of one product and one strength get by the shown plan.

    Volumes in litres, strengths in g or ml of product in a litre. `asked_l` is what the pours of
    this plan were to bring, `poured_l` what they bring (more by less than one mark where a rest
    too small to read goes to the last group of a product).
    """

    keys: tuple[str, ...]
    product: str
    target_per_litre: float
    lowest_per_litre: float
    highest_per_litre: float
    asked_l: float
    poured_l: float
    measuring_error: float

    @property
    def deviation(self) -> float:
        """Largest relative deviation from the target, with its sign."""
        low = self.lowest_per_litre / self.target_per_litre - 1
        high = self.highest_per_litre / self.target_per_litre - 1
        return high if abs(high) >= abs(low) else low


@dataclass(frozen=True, slots=True)
class MixingPlan:
    """The plan of one watering day.

    Attributes
    ----------
    steps : tuple of Step
        The shown plan: amounts and marks that can be measured.
    exact_steps : tuple of Step
        The same order of work before rounding.
    results : tuple of GroupResult
        What each strength gets by the shown plan; clear water is not listed.
    leftover : Contents
        What the shown plan leaves in the can; volume 0 where nothing is.
    weighings : int
        Times a product is measured in the shown plan.
    too_coarse : tuple of str
        Products whose scale, syringe or marks are too coarse to stay within the tolerance;
        a stock solution (a smaller measuring step) helps. Where even one step is too much the
        shown plan has no `Mix` for that batch, and its groups get water without the product.
        Without ceilings each strength is still within its measuring error as long as that is
        below 1 for all groups of the product; ceilings may make it weaker than that where a
        little of a weak mix follows much of a strong one.
    portions : tuple of Portion
        What was asked.
    kit : Kit
        What is measured with.
    """

    steps: tuple[Step, ...]
    exact_steps: tuple[Step, ...]
    results: tuple[GroupResult, ...]
    leftover: Contents
    weighings: int
    too_coarse: tuple[str, ...]
    portions: tuple[Portion, ...]
    kit: Kit


@dataclass(frozen=True, slots=True)
class _Group:
    """Portions that are poured as one: at the lowest of their strengths, under all ceilings."""

    members: tuple[Portion, ...]
    target: float
    highest: float
    ceiling: float
    volume_l: float


@dataclass(frozen=True, slots=True)
class _Pour:
    """One pour of one group out of one batch."""

    keys: tuple[str, ...]
    volumes_l: tuple[float, ...]
    volume_l: float
    target: float
    highest: float
    ceiling: float

    def with_volume(self, volume_l: float) -> _Pour:
        factor = volume_l / self.volume_l
        return replace(self, volume_l=volume_l, volumes_l=tuple(v * factor for v in self.volumes_l))


@dataclass(frozen=True, slots=True)
class _Batch:
    """What one weighing serves, strongest first."""

    number: int
    pours: tuple[_Pour, ...]

    @property
    def needed(self) -> float:
        """Product for all pours [g or ml]."""
        return sum(pour.volume_l * pour.target for pour in self.pours)

    @property
    def first_mark_l(self) -> float:
        """Exact fill mark of the strongest mix [L]."""
        return self.needed / self.pours[0].target


@dataclass(frozen=True, slots=True)
class _Run:
    """All batches of one product; `start` is what the can holds of it before."""

    product: str
    batches: tuple[_Batch, ...]
    total: int
    start: Contents


@dataclass(frozen=True, slots=True)
class _Bench:
    """The kit with the batches already rounded: alike batches are worked out once."""

    kit: Kit
    fits: dict[tuple[object, ...], tuple[_Task, tuple[float, _Way] | None]]


@dataclass(frozen=True, slots=True)
class _Done:
    """A run worked out in steps, with its price (deviation and rest) for comparing."""

    steps: tuple[Step, ...]
    cost: float
    rest: Contents


# ---------------------------------------------------------------- public functions


def plan_mixing(
    portions: Iterable[Portion],
    can_l: float,
    measuring_steps: Mapping[str, float],
    *,
    mark_l: float = 0.05,
    leftover_l: float = 0.2,
    tolerance: float = 0.02,
) -> MixingPlan:
    """Order the work of one watering day with one can.

    Parameters
    ----------
    portions : iterable of Portion
        What each group of plants gets.
    can_l : float
        Size of the can [L].
    measuring_steps : mapping of str to float
        Smallest step of the scale [g] or syringe [ml] for each product.
    mark_l : float
        Distance of the marks that can be read on the can [L].
    leftover_l : float
        Most that may be left in the can at the end [L].
    tolerance : float
        Relative deviation that does not matter; strengths closer than this may share a pour.

    Returns
    -------
    MixingPlan
        The shown and the exact steps, and what every group gets.

    Raises
    ------
    ValueError
        A volume, strength, ceiling, step or size that cannot be worked with.

    References
    ----------
    Conservation of mass; the fill marks and the proof of the fewest weighings stand in the
    module's docstring.
    """
    asked = tuple(portions)
    kit = Kit(can_l, tuple(measuring_steps.items()), mark_l, leftover_l, tolerance)
    _check_kit(kit)
    _check_portions(asked, kit)
    wet = [portion for portion in asked if portion.volume_l > 0]
    clear = _clear_steps([p for p in wet if p.per_litre == 0], kit)
    fed: dict[str, list[Portion]] = {}
    for portion in wet:
        if portion.per_litre > 0:
            fed.setdefault(portion.product, []).append(portion)
    bench = _Bench(kit, {})
    runs = [_best_run(product, members, bench) for product, members in fed.items()]
    return _assemble(clear, runs, asked, bench, Contents())


def recompute_after(plan: MixingPlan, step: int, used_l: float) -> MixingPlan:
    """Recompute what remains when a pour used another volume than planned.

    The group counts as served. What stayed in the can is thinned down for the groups that follow
    and lessens the next weighing of the product; only what the can could not hold when thinned,
    or the next product must not meet, is poured off. Where what stayed cannot serve the rest
    within the tolerance (more was used, or the plan was too coarse before) product is measured in
    once more.

    Parameters
    ----------
    plan : MixingPlan
        The plan that was followed.
    step : int
        Index in `plan.steps` of the `Water` or `PourClear` that was just done.
    used_l : float
        What it really used [L].

    Returns
    -------
    MixingPlan
        The steps that remain; its results and portions are those of the remaining pours. Its
        leftover may exceed the kit's limit: what was weighed is in the can.

    Raises
    ------
    ValueError
        No such pour, or a volume below zero or above what was in the can.
    """
    if not 0 <= step < len(plan.steps):
        raise ValueError(f"The plan has no step {step}.")
    done = plan.steps[step]
    if not isinstance(done, Water | PourClear):
        raise ValueError(f"Step {step} of the plan is not a pour.")
    held_l = done.in_can.volume_l + done.volume_l
    if not 0 <= used_l <= held_l * (1 + _EPS):
        raise ValueError(f"The volume used must be from 0 to {held_l:g} litres, not {used_l!r}.")
    ahead = plan.steps[step + 1 :]
    left = {key for s in ahead if isinstance(s, PourClear | Water) for key in s.keys}
    portions = tuple(p for p in plan.portions if p.key in left)
    if isinstance(done, PourClear) or math.isclose(used_l, done.volume_l, rel_tol=_EPS):
        pours = sum(isinstance(s, PourClear | Water) for s in plan.steps[: step + 1])
        return _plan(ahead, _after_pours(plan.exact_steps, pours), portions, plan.kit, done.in_can)
    start = _contents(held_l - used_l, done.per_litre, done.product)
    runs = _runs_ahead(ahead, {p.key: p for p in portions}, start)
    return _assemble((), runs, portions, _Bench(plan.kit, {}), start)


def _after_pours(steps: Sequence[Step], pours: int) -> Sequence[Step]:
    """The steps after so many pours."""
    indices = [n for n, step in enumerate(steps) if isinstance(step, PourClear | Water)]
    return steps[indices[pours - 1] + 1 :]


# ---------------------------------------------------------------- checks


def _check_size(name: str, value: float, unit: str, or_zero: bool = False) -> None:
    if not (SMALLEST <= value <= LARGEST or (or_zero and value == 0)):
        allowed = f"{'0 or ' if or_zero else ''}from {SMALLEST:g} to {LARGEST:g} {unit}"
        raise ValueError(f"The {name} must be {allowed}, not {value!r}.")


def _check_kit(kit: Kit) -> None:
    _check_size("can", kit.can_l, "litres")
    _check_size("distance of the can's marks", kit.mark_l, "litres")
    if kit.mark_l > kit.can_l:
        raise ValueError("The can's marks must not be farther apart than the can is large.")
    if not 0 <= kit.leftover_l <= LARGEST:
        raise ValueError(f"The leftover must be 0 litres or more, not {kit.leftover_l!r}.")
    if not 0 <= kit.tolerance < 1:
        raise ValueError(f"The tolerance must be from 0 to below 1, not {kit.tolerance!r}.")
    for product, step in kit.measuring_steps:
        _check_size(f"measuring step of {product!r}", step, "g or ml")


def _check_portions(portions: Sequence[Portion], kit: Kit) -> None:
    known = dict(kit.measuring_steps)
    seen: set[str] = set()
    for portion in portions:
        if portion.key in seen:
            raise ValueError(f"The key {portion.key!r} appears twice.")
        seen.add(portion.key)
        _check_portion(portion)
        if portion.per_litre > 0 and portion.product not in known:
            raise ValueError(f"No measuring step is given for the product {portion.product!r}.")


def _check_portion(portion: Portion) -> None:
    key, strength, ceiling = portion.key, portion.per_litre, portion.ceiling_per_litre
    _check_size(f"volume of {key!r}", portion.volume_l, "litres", or_zero=True)
    _check_size(f"strength of {key!r}", strength, "g or ml in a litre", or_zero=True)
    if (strength > 0) != bool(portion.product):
        raise ValueError(f"{key!r} needs a strength and a product, or neither for clear water.")
    if ceiling is None:
        return
    if math.isnan(ceiling) or ceiling < 0:
        raise ValueError(f"The ceiling of {key!r} must be 0 or more, not {ceiling!r}.")
    if strength > ceiling * (1 + _EPS):
        raise ValueError(f"The strength of {key!r} is above its own ceiling.")


# ---------------------------------------------------------------- clear water


def _clear_steps(portions: Sequence[Portion], kit: Kit) -> tuple[PourClear, ...]:
    total_l = sum(portion.volume_l for portion in portions)
    cans = _fillings(total_l, kit.can_l)
    sizes = [kit.can_l] * (cans - 1) + [total_l - kit.can_l * (cans - 1)] if cans else []
    slices = _slices(portions, sizes)
    return tuple(
        PourClear(keys, volumes, sum(volumes), number, cans, Contents())
        for number, (keys, volumes) in enumerate(slices, start=1)
    )


def _fillings(volume_l: float, can_l: float) -> int:
    fillings = volume_l / can_l
    if not fillings <= MAX_FILLINGS:
        raise ValueError(f"The can is too small: more than {MAX_FILLINGS} fillings of one liquid.")
    return max(math.ceil(fillings - _EPS), 1 if volume_l > 0 else 0)


def _slices(
    portions: Sequence[Portion], sizes_l: Sequence[float]
) -> list[tuple[tuple[str, ...], tuple[float, ...]]]:
    """Deal the portions out over pours of these sizes, in order; only a border splits a key."""
    slices: list[tuple[tuple[str, ...], tuple[float, ...]]] = []
    queue = [(portion.key, portion.volume_l) for portion in reversed(portions)]
    for number, size_l in enumerate(sizes_l):
        keys: list[str] = []
        volumes: list[float] = []
        last = number == len(sizes_l) - 1
        while queue and (last or size_l > _EPS):
            key, volume_l = queue.pop()
            part_l = _tidy(volume_l if last else min(volume_l, size_l))
            keys.append(key)
            volumes.append(part_l)
            size_l -= part_l
            if volume_l - part_l > _EPS:
                queue.append((key, volume_l - part_l))
        slices.append((tuple(keys), tuple(volumes)))
    return slices


def _tidy(volume_l: float) -> float:
    """Drop the digits that only come from adding up."""
    short_l = round(volume_l, _DIGITS)
    return short_l if short_l and math.isclose(short_l, volume_l, rel_tol=1e-13) else volume_l


# ---------------------------------------------------------------- groups and batches


def _groups(portions: Sequence[Portion], window: float) -> list[_Group]:
    """Groups, strongest first; strengths less than `window` apart share the lowest of them."""
    gathered: list[list[Portion]] = []
    for portion in sorted(portions, key=lambda p: p.per_litre):
        lowest = gathered[-1][0].per_litre if gathered else 0.0
        # Equal strengths from different sums differ in the last digits.
        apart = (portion.per_litre - lowest) / portion.per_litre
        if apart < window or apart <= _EPS:
            gathered[-1].append(portion)
        else:
            gathered.append([portion])
    return [_group(members) for members in reversed(gathered)]


def _group(members: Sequence[Portion]) -> _Group:
    ceilings = [p.ceiling_per_litre for p in members if p.ceiling_per_litre is not None]
    return _Group(
        members=tuple(members),
        target=members[0].per_litre,
        highest=members[-1].per_litre,
        ceiling=min(ceilings, default=math.inf),
        volume_l=sum(p.volume_l for p in members),
    )


def _fill_marks(volumes_l: Sequence[float], strengths: Sequence[float]) -> list[float]:
    """V_i of the module's docstring [L]; strongest first."""
    needed = 0.0
    marks: list[float] = []
    for volume_l, strength in zip(reversed(volumes_l), reversed(strengths), strict=True):
        needed += volume_l * strength
        marks.append(needed / strength)
    return marks[::-1]


def _weighings(groups: Sequence[_Group], can_l: float) -> int:
    marks = _fill_marks([g.volume_l for g in groups], [g.target for g in groups])
    return _fillings(max(marks), can_l)


def _share_out(groups: Sequence[_Group], kit: Kit) -> list[dict[int, float]]:
    """Volumes [L] of each group by batch for the fewest weighings, each group in few pours.

    From the weakest group up: each batch already holds m_b of product for weaker groups, which
    takes m_b / s_i of the can when the can stands at s_i; the rest of the can is free for group
    i. The free room of all batches is B x can - (V_i - v_i), so v_i always fits, wherever the
    weaker groups went. A group goes whole into the fullest batch that takes it; otherwise in even
    shares into as few batches as hold it.
    """
    count = _weighings(groups, kit.can_l)
    shares: list[dict[int, float]] = [{} for _ in groups]
    held = [(0.0, batch) for batch in range(count)]
    for index in range(len(groups) - 1, -1, -1):
        volume_l, strength = groups[index].volume_l, groups[index].target
        room = (kit.can_l - volume_l) * strength + kit.can_l * strength * _EPS
        fits = bisect_right(held, (room, count)) - 1
        chosen = [held.pop(fits)] if fits >= 0 else _emptiest(held, volume_l, strength, kit)
        rooms = [kit.can_l - mass / strength for mass, _ in chosen]
        for (mass, batch), part_l in zip(chosen, _even(volume_l, rooms, kit), strict=True):
            shares[index][batch] = part_l
            insort(held, (mass + part_l * strength, batch))
    return shares


def _emptiest(
    held: list[tuple[float, int]], volume_l: float, strength: float, kit: Kit
) -> list[tuple[float, int]]:
    """Take out of `held` the emptiest batches that together take the volume, fullest first."""
    chosen: list[tuple[float, int]] = []
    while held and volume_l > kit.can_l * _EPS:
        chosen.append(held.pop(0))
        volume_l -= kit.can_l - chosen[-1][0] / strength
    return chosen[::-1]


def _even(volume_l: float, rooms_l: Sequence[float], kit: Kit) -> list[float]:
    """Even shares within the rooms (smallest first), all but one a whole number of marks."""
    for whole_marks in (True, False):
        shares: list[float] = []
        left_l = volume_l
        for number, room_l in enumerate(rooms_l[:-1]):
            share_l = min(room_l, left_l / (len(rooms_l) - number))
            shares.append(kit.mark_to(share_l) if whole_marks else share_l)
            left_l -= shares[-1]
        shares.append(_tidy(left_l))
        if left_l <= rooms_l[-1] + kit.can_l * _EPS:
            break
    return shares


def _run(product: str, groups: Sequence[_Group], kit: Kit) -> _Run:
    shares = _share_out(groups, kit)
    batches: dict[int, list[_Pour]] = {}
    for group, row in zip(groups, shares, strict=True):
        used = sorted(batch for batch, part_l in row.items() if part_l > 0)
        slices = _slices(group.members, [row[batch] for batch in used])
        for batch, (keys, volumes) in zip(used, slices, strict=True):
            batches.setdefault(batch, []).append(
                _Pour(keys, volumes, sum(volumes), group.target, group.highest, group.ceiling)
            )
    filled = sorted(batches.values(), key=lambda pours: -pours[0].target)
    numbered = tuple(_Batch(n, tuple(b)) for n, b in enumerate(filled, start=1))
    return _Run(product, numbered, len(numbered), Contents())


def _best_run(product: str, portions: Sequence[Portion], bench: _Bench) -> _Run:
    """Merge near strengths where it costs no weighing and nobody leaves the tolerance."""
    kit = bench.kit
    single = _groups(portions, 0.0)
    fewest = _weighings(single, kit.can_l)
    for window in (kit.tolerance, kit.tolerance / 2):
        groups = _groups(portions, window)
        if len(groups) == len(single):
            break
        if _weighings(groups, kit.can_l) > fewest:
            continue
        run = _run(product, groups, kit)
        if _within(_work(run, bench, kit.leftover_l).steps, run, kit):
            return run
    return _run(product, single, kit)


def _within(steps: Iterable[Step], run: _Run, kit: Kit) -> bool:
    """Whether the weakest and the strongest of each merged group both get what they may."""
    waters = (step for step in steps if isinstance(step, Water))
    pours = (pour for batch in run.batches for pour in batch.pours)
    return all(
        max(water.per_litre / pour.target - 1, 1 - water.per_litre / pour.highest)
        <= max(kit.tolerance, water.measuring_error)
        for water, pour in zip(waters, pours, strict=True)
    )


# ---------------------------------------------------------------- rounding


@dataclass(frozen=True, slots=True)
class _Task:
    """One batch to be rounded: what it starts from and how finely it can be measured.

    By pour: `needs` and `volumes_l` are the product and the water for it and all weaker ones,
    `errors` its measuring error. `scale_error` is that of the amount alone. `rest_l` is the most
    that may stay in the can, `spare_l` the most of it that the can has room for all along.
    """

    pours: tuple[_Pour, ...]
    held: Contents
    rest_l: float
    spare_l: float
    kit: Kit
    scale_step: float
    scale_error: float
    needs: tuple[float, ...]
    volumes_l: tuple[float, ...]
    errors: tuple[float, ...]
    beam: int


def _task(run: _Run, batch: _Batch, held: Contents, rest_l: float, kit: Kit) -> _Task:
    pours, weakest = batch.pours, batch.pours[-1]
    scale_step = kit.measuring_step(run.product)
    needs = tuple(accumulate(p.volume_l * p.target for p in pours[::-1]))[::-1]
    volumes_l = tuple(accumulate(p.volume_l for p in pours[::-1]))[::-1]
    # A rest takes room already when the can stands at its fullest.
    room = min(kit.can_l * pour.target - need for pour, need in zip(pours, needs, strict=True))
    spare_l = min(rest_l, max(0.0, room / weakest.target))
    one_sided = any(math.isfinite(pour.ceiling) for pour in pours)
    weighed = held.amount < needs[0] * (1 - kit.tolerance)
    scale_error = (1.0 if one_sided else 0.5) * scale_step / needs[0] if weighed else 0.0
    error = scale_error
    errors: list[float] = []
    for pour, need, volume_l in zip(pours, needs, volumes_l, strict=True):
        mark_l = need / pour.target
        # Half a mark off at most, but a whole one where only one of the two next marks will do.
        free = kit.mark_to(mark_l) >= pour.volume_l and kit.mark_from(mark_l) <= volume_l + rest_l
        off_l = kit.mark_l * (0.5 if free and not one_sided else 1.0)
        errors.append(_both(error, off_l / mark_l))
        # A mark set wrong also leaves too much or too little for the weaker groups.
        error = _both(error, off_l / max(mark_l - pour.volume_l, _EPS))
    return _Task(
        pours=pours,
        held=held,
        rest_l=rest_l,
        spare_l=spare_l,
        kit=kit,
        scale_step=scale_step,
        scale_error=scale_error,
        needs=needs,
        volumes_l=volumes_l,
        errors=tuple(errors),
        beam=_BEAM if sum(len(each.pours) for each in run.batches) <= _MANY_POURS else 1,
    )


def _both(error: float, other: float) -> float:
    """Relative error of a product of two factors that are both off."""
    return (1 + error) * (1 + other) - 1


@dataclass(slots=True)
class _Way:
    """A way through the first pours of a batch while marks are being chosen."""

    price: float
    cost: float
    mass: float
    level_l: float
    mark_l: float = 0.0
    before: _Way | None = None

    def marks(self) -> tuple[float, ...]:
        """Fill marks chosen so far [L]."""
        marks: list[float] = []
        way: _Way | None = self
        while way and way.before:
            marks.append(way.mark_l)
            way = way.before
        return tuple(reversed(marks))


def _bounds(way: _Way, number: int, task: _Task) -> tuple[float, float]:
    """Least and most that the can may hold [L] for the pour, its ceiling and the pours ahead."""
    pour = task.pours[number]
    least_l = max(pour.volume_l, way.level_l, way.mass / pour.ceiling * (1 - _EPS))
    return least_l, min(task.kit.can_l, task.volumes_l[number] + task.rest_l)


def _even_aim(way: _Way, number: int, task: _Task) -> float:
    """Volume [L] at which what is too much or too little is shared evenly by the pours ahead."""
    need, weakest = task.needs[number], task.pours[-1].target
    spare_l = min(max((way.mass - need) / weakest, 0.0), task.spare_l)
    return (need + weakest * spare_l) / task.pours[number].target


def _mark_choices(way: _Way, number: int, task: _Task) -> set[float]:
    """Marks around the target and around the even share; or no topping up."""
    kit = task.kit
    least_l, most_l = _bounds(way, number, task)
    low, high = kit.mark_from(least_l), kit.mark_to(most_l)
    choices: set[float] = set()
    if 0 < way.level_l <= most_l and least_l <= way.level_l * (1 + _EPS):
        choices.add(way.level_l)
    if low > high:
        return choices
    aim_l, even_l = way.mass / task.pours[number].target, _even_aim(way, number, task)
    for wanted_l in (aim_l,) if abs(aim_l - even_l) < _EPS else (aim_l, even_l):
        below = high if wanted_l >= high else max(low, kit.mark_to(wanted_l))
        above = below + kit.mark_l
        choices.add(below)
        choices.add(high if above >= high else round(above, _DIGITS))
    return choices


def _nearest_even(way: _Way, number: int, task: _Task) -> set[float]:
    """The one choice that keeps every strength within its measuring error without ceilings."""
    aim_l = _even_aim(way, number, task)
    choices = _mark_choices(way, number, task)
    return {min(choices, key=lambda mark: abs(aim_l / mark - 1))} if choices else choices


def _pour_cost(strength: float, pour: _Pour, error: float, tolerance: float) -> float:
    relative = strength / pour.target - 1
    away = max(relative, 1 - strength / pour.highest)
    beyond = away - max(tolerance, error)
    penalty = _BEYOND_ERROR_COST * (1 + beyond) if beyond > _EPS else 0.0
    return _outside_cost(away - tolerance) + penalty + abs(relative)


def _outside_cost(outside: float) -> float:
    """Price of leaving the tolerance: squared, so that a large error is spread over all groups."""
    return 10 * outside + 100 * outside**2 if outside > 0 else 0.0


def _extended(way: _Way, number: int, mark: float, task: _Task) -> _Way:
    """The way with one more pour, priced with what it leaves for the weaker groups."""
    pour, tolerance = task.pours[number], task.kit.tolerance
    strength = way.mass / mark
    left_l = max(mark - pour.volume_l, 0.0)
    cost = way.cost + _pour_cost(strength, pour, task.errors[number], tolerance)
    weaker = len(task.pours) - 1 - number
    if weaker:
        need = task.needs[number + 1]
        excess = strength * left_l - need
        off = max(-excess, excess - task.pours[-1].target * task.rest_l, 0.0) / need
        price = cost + weaker * (off + _outside_cost(off - tolerance))
    else:
        price = cost = cost + _REST_WEIGHT * left_l
    return _Way(price, cost, strength * left_l, left_l, mark, way)


def _search(
    amount: float,
    task: _Task,
    choices: Callable[[_Way, int, _Task], set[float]],
    width: int,
) -> _Way | None:
    """Beam search through the pours: the `width` cheapest ways are followed."""
    ways = [_Way(0.0, 0.0, task.held.amount + amount, task.held.volume_l)]
    for number in range(len(task.pours)):
        longer = [
            _extended(way, number, mark, task)
            for way in ways
            for mark in choices(way, number, task)
        ]
        longer.sort(key=lambda way: way.price)
        ways = longer[:width]
    return ways[0] if ways else None


def _choose_marks(amount: float, task: _Task) -> _Way | None:
    """Fill marks for the product in the can; None where none keep the ceilings."""
    way = _search(amount, task, _mark_choices, task.beam)
    if way and way.cost < _BEYOND_ERROR_COST:
        return way
    even = _search(amount, task, _nearest_even, 1)
    return min(filter(None, (way, even)), key=lambda way: way.cost, default=None)


def _amount_choices(task: _Task) -> list[int]:
    """Numbers of measuring steps worth trying: around the need, the rest, and whole marks."""
    if task.scale_error == 0:
        return [0]
    strongest, weakest, kit = task.pours[0].target, task.pours[-1].target, task.kit
    first_l = task.needs[0] / strongest
    wanted = (
        task.needs[0],
        task.needs[0] + weakest * task.spare_l,
        strongest * kit.mark_to(first_l),
        strongest * kit.mark_from(min(first_l, kit.can_l)),
    )
    lower = [
        max(0, math.floor((mass - task.held.amount) / task.scale_step + _EPS)) for mass in wanted
    ]
    return list(dict.fromkeys(count + more for count in lower for more in (0, 1)))


def _fit(task: _Task) -> tuple[float, _Way] | None:
    """Amount [g or ml] and marks of one batch, as near to the targets as can be measured.

    None where what is held is too much for the ceilings; never with an empty can.
    """
    step = task.scale_step
    best: tuple[int, _Way] | None = None
    counts = _amount_choices(task)
    good_enough = 0.0 if task.beam > 1 else task.kit.tolerance / 2 * len(task.pours)
    for count in counts:
        if best and best[1].cost <= good_enough:
            break
        way = _choose_marks(count * step, task)
        if way and (best is None or way.cost < best[1].cost - _EPS):
            best = (count, way)
    count = min(counts)
    while best is None and count > 0:
        # Ceilings leave no way at the wanted amount: take less until there is one.
        count = min(count - 1, int(count * 0.98))
        way = _choose_marks(count * step, task)
        best = (count, way) if way else None
    if best is None and task.held.volume_l == 0:
        best = (0, _without_product(task))
    return (round(best[0] * step, _DIGITS), best[1]) if best else None


def _without_product(task: _Task) -> _Way:
    """Lowest marks for a batch too small for one measuring step: its groups get clear water."""
    way = _Way(0.0, 0.0, 0.0, 0.0)
    for number, pour in enumerate(task.pours):
        mark = max(task.kit.mark_from(pour.volume_l), way.level_l)
        way = _extended(way, number, mark, task)
    return way


# ---------------------------------------------------------------- working out the steps


def _rest_limit(run: _Run, index: int, leftover_l: float, carry: bool = True) -> float:
    """Most that a batch may leave in the can [L]: the leftover, or what the next one takes in."""
    if index == len(run.batches) - 1:
        return leftover_l
    if not carry:
        return 0.0
    following = run.batches[index + 1]
    return min(following.first_mark_l, following.needed / run.batches[index].pours[-1].target / 2)


def _make_room(batch: _Batch, held: Contents, rest_l: float, kit: Kit) -> Contents:
    """What may stay of the mix in the can so that it can be thinned down for this batch."""
    if held.volume_l <= 0:
        return Contents()
    most = batch.needed + batch.pours[-1].target * rest_l
    used = 0.0
    for pour in batch.pours:
        most = min(most, pour.target * kit.can_l + used)
        used += pour.target * pour.volume_l
    keep_l = held.volume_l
    if held.amount > most * (1 + kit.tolerance / 2):
        keep_l = most / held.per_litre
    if held.per_litre < batch.pours[0].target * (1 - kit.tolerance):
        keep_l = min(keep_l, batch.first_mark_l)
    if keep_l < held.volume_l and kit.mark_to(keep_l) * held.per_litre >= batch.needed:
        keep_l = kit.mark_to(keep_l)
    return _contents(keep_l, held.per_litre, held.product)


def _contents(volume_l: float, per_litre: float, product: str) -> Contents:
    return Contents(volume_l, per_litre, product) if volume_l > _EPS else Contents()


def _work(run: _Run, bench: _Bench, leftover_l: float, carry: bool = True) -> _Done:
    """The shown steps of a run: measurable amounts and marks.

    With `carry` a batch may leave a rest in the can for the next one.
    """
    steps: list[Step] = []
    cost, held = 0.0, run.start
    for index, batch in enumerate(run.batches):
        rest_l = _rest_limit(run, index, leftover_l, carry)
        batch = _rounded_up(batch, rest_l, bench.kit)
        room = _make_room(batch, held, rest_l, bench.kit)
        for part in _PARTS_KEPT:
            kept = _contents(room.volume_l * part, room.per_litre, room.product)
            task, fit = _rounded(run, batch, kept, rest_l, bench)
            if fit:
                break
        assert fit is not None  # an empty can always has a way: water without product
        amount, way = fit
        steps += _pour_off(held, kept)
        steps += _batch_steps(run, batch, kept, amount, way.marks(), task.errors)
        held = steps[-1].in_can
        cost += way.cost
    if carry and not run.start.volume_l and any(isinstance(step, PourOff) for step in steps):
        return _work(run, bench, leftover_l, carry=False)
    return _Done(tuple(steps), cost, held)


def _rounded(
    run: _Run, batch: _Batch, held: Contents, rest_l: float, bench: _Bench
) -> tuple[_Task, tuple[float, _Way] | None]:
    pours = tuple((p.volume_l, p.target, p.highest, p.ceiling) for p in batch.pours)
    key = (run.product, pours, held, rest_l)
    if key not in bench.fits:
        task = _task(run, batch, held, rest_l, bench.kit)
        bench.fits[key] = task, _fit(task)
    return bench.fits[key]


def _work_exactly(run: _Run, kit: Kit, leftover_l: float) -> _Done:
    """The same order of work before rounding."""
    steps: list[Step] = []
    held = run.start
    for index, batch in enumerate(run.batches):
        kept = _make_room(batch, held, _rest_limit(run, index, leftover_l), kit)
        amount = max(0.0, batch.needed - kept.amount)
        spare = kept.amount + amount - batch.needed
        volumes = [pour.volume_l for pour in batch.pours]
        strengths = [pour.target for pour in batch.pours]
        marks = [
            mark + spare / strength
            for mark, strength in zip(_fill_marks(volumes, strengths), strengths, strict=True)
        ]
        steps += _pour_off(held, kept)
        steps += _batch_steps(run, batch, kept, amount, marks, [0.0] * len(marks))
        held = steps[-1].in_can
    return _Done(tuple(steps), 0.0, held)


def _rounded_up(batch: _Batch, rest_l: float, kit: Kit) -> _Batch:
    """Where no rest may stay, the last group gets what the marks cannot show (under one mark)."""
    last = batch.pours[-1]
    mark_l = kit.mark_from(last.volume_l)
    if mark_l - last.volume_l <= rest_l + _EPS:
        return batch
    return replace(batch, pours=(*batch.pours[:-1], last.with_volume(mark_l)))


def _pour_off(held: Contents, kept: Contents) -> list[Step]:
    gone_l = held.volume_l - kept.volume_l
    if gone_l <= _EPS:
        return []
    return [PourOff(gone_l, held.per_litre, held.product, kept)]


def _batch_steps(
    run: _Run,
    batch: _Batch,
    held: Contents,
    amount: float,
    marks: Sequence[float],
    errors: Sequence[float],
) -> list[Step]:
    steps: list[Step] = []
    mass, level_l = held.amount + amount, held.volume_l
    for number, (pour, mark, error) in enumerate(zip(batch.pours, marks, errors, strict=True)):
        strength = mass / mark
        full = Contents(mark, strength, run.product)
        if number == 0 and amount > 0:
            steps.append(Mix(run.product, amount, mark, batch.number, run.total, strength, full))
        elif mark - level_l > _EPS:
            steps.append(TopUp(mark - level_l, mark, strength, full))
        level_l = max(mark - pour.volume_l, 0.0)
        mass = strength * level_l
        steps.append(
            Water(
                keys=pour.keys,
                volumes_l=pour.volumes_l,
                volume_l=pour.volume_l,
                per_litre=strength,
                target_per_litre=pour.target,
                measuring_error=error,
                product=run.product,
                batch=batch.number,
                batches=run.total,
                in_can=_contents(level_l, strength, run.product),
            )
        )
    return steps


# ---------------------------------------------------------------- the whole plan


def _leaving(runs: Sequence[_Run], bench: _Bench) -> int | None:
    """Which run may leave a rest in the can: the one whose strengths gain most by it."""
    if len(runs) == 1:
        return 0
    most_l = bench.kit.leftover_l
    gains = [_work(run, bench, 0.0).cost - _work(run, bench, most_l).cost for run in runs]
    best = max(range(len(runs)), key=gains.__getitem__, default=None)
    return best if best is not None and gains[best] > _EPS else None


def _assemble(
    clear: Sequence[PourClear],
    runs: Sequence[_Run],
    portions: tuple[Portion, ...],
    bench: _Bench,
    start: Contents,
) -> MixingPlan:
    """Put clear water, runs and the leftover in order; `start` is in the can before."""
    kit = bench.kit
    begun = [run for run in runs if run.start.volume_l > 0]
    others = [run for run in runs if run.start.volume_l <= 0]
    leaving = _leaving(others, bench)
    if leaving is not None:
        others.append(others.pop(leaving))
    limits = [kit.can_l for _ in begun]
    limits += [0.0 for _ in others[1:]]
    limits += [kit.leftover_l if leaving is not None else 0.0 for _ in others[:1]]
    shown: list[Step] = list(clear)
    exact: list[Step] = list(clear)
    shown_held = exact_held = start
    for run, limit_l in zip([*begun, *others], limits, strict=True):
        shown += _pour_off(shown_held, run.start)
        exact += _pour_off(exact_held, run.start)
        done, exactly = _work(run, bench, limit_l), _work_exactly(run, kit, limit_l)
        shown += done.steps
        exact += exactly.steps
        shown_held, exact_held = done.rest, exactly.rest
    return _plan(shown, exact, portions, kit, start)


def _plan(
    shown: Sequence[Step],
    exact: Sequence[Step],
    portions: tuple[Portion, ...],
    kit: Kit,
    start: Contents,
) -> MixingPlan:
    """The plan with its results; `start` is in the can before the steps."""
    results = _results(shown, exact, portions)
    coarse = (r.product for r in results if abs(r.deviation) > kit.tolerance + _EPS)
    return MixingPlan(
        steps=tuple(shown),
        exact_steps=tuple(exact),
        results=results,
        leftover=shown[-1].in_can if shown else start,
        weighings=sum(isinstance(step, Mix) for step in shown),
        too_coarse=tuple(dict.fromkeys(coarse)),
        portions=portions,
        kit=kit,
    )


def _results(
    shown: Iterable[Step], exact: Iterable[Step], portions: Iterable[Portion]
) -> tuple[GroupResult, ...]:
    """Gather the pours by product and the strength that was asked for."""
    group_of = {p.key: (p.product, p.per_litre) for p in portions if p.per_litre > 0}
    keys: dict[tuple[str, float], list[str]] = {}
    for key, group in group_of.items():
        keys.setdefault(group, []).append(key)
    asked, poured = dict.fromkeys(keys, 0.0), dict.fromkeys(keys, 0.0)
    pours: dict[tuple[str, float], list[Water]] = {group: [] for group in keys}
    for volumes, steps in ((asked, exact), (poured, shown)):
        for step in steps:
            if not isinstance(step, Water):
                continue
            for key, volume_l in zip(step.keys, step.volumes_l, strict=True):
                volumes[group_of[key]] += volume_l
            if volumes is poured:
                for group in {group_of[key] for key in step.keys}:
                    pours[group].append(step)
    return tuple(
        GroupResult(
            keys=tuple(keys[group]),
            product=group[0],
            target_per_litre=group[1],
            lowest_per_litre=min(water.per_litre for water in pours[group]),
            highest_per_litre=max(water.per_litre for water in pours[group]),
            asked_l=asked[group],
            poured_l=poured[group],
            measuring_error=max(water.measuring_error for water in pours[group]),
        )
        for group in keys
        if pours[group]
    )


def _runs_ahead(
    steps: Iterable[Step], portions: Mapping[str, Portion], start: Contents
) -> list[_Run]:
    """The pours that remain, by product and batch; the product in the can comes first."""
    ahead: dict[str, dict[int, list[_Pour]]] = {}
    totals: dict[str, int] = {}
    for step in steps:
        if not isinstance(step, Water):
            continue
        members = [portions[key] for key in step.keys]
        group = _group(sorted(members, key=lambda p: p.per_litre))
        pour = _Pour(
            step.keys,
            step.volumes_l,
            step.volume_l,
            step.target_per_litre,
            group.highest,
            group.ceiling,
        )
        ahead.setdefault(step.product, {}).setdefault(step.batch, []).append(pour)
        totals[step.product] = step.batches
    return [
        _Run(
            product=product,
            batches=tuple(_Batch(number, tuple(pours)) for number, pours in batches.items()),
            total=totals[product],
            start=start if product == start.product else Contents(),
        )
        for product, batches in ahead.items()
    ]
