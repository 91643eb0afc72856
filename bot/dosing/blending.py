"""The mix of feeds on the shelf that best meets a target: non-negative least squares.

Every subset of at most six products is tried, and the best that needs no negative amount is the
global optimum. What the target asks for is relative: missing a tenth of the calcium counts as much
as missing a tenth of the potassium, times the weights in ``blends.toml``.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from itertools import combinations
from math import inf, sqrt
from operator import mul

from bot.almanac.recipes import blend_targets, toxic_limits
from bot.almanac.reference import elements as known_elements
from bot.dosing.completeness import MICRO
from bot.dosing.concentration import element_mg_l
from bot.dosing.measuring import TOLERABLE_ERROR
from bot.dosing.stock import Product

MOST_PRODUCTS = 6
#: Nitrogen as nitrate, a nutrient beside the elements.
NITRATE = "nitrate"
#: Listed for every blend, whether the target names them or not.
LISTED = (*MICRO, "Si")
MOST_N_MG_L = 1000.0

_DEPENDENT = 1e-10  # of a column's square that is not in the columns before it
_NO_BETTER = 1e-12  # of the wanted square: a larger mix must explain more than this
_MOST_SWAPS = 20  # of columns in and out before all subsets are tried
_NO_HELP = 1e-12  # of the wanted length: a slope that leads nowhere
_CAP_WEIGHT = 1e3  # of a cap that is met, beside what is wanted most
_BROKEN_BY_WEIGHT = 1e-5  # of a cap that stands as an equation by weight


_Cap = tuple[list[float], float]  # what one unit of each column adds, and the most of it in all


@dataclass(frozen=True, slots=True)
class Goal:
    """What a blend is to reach.

    Parameters
    ----------
    mg_l : by nutrient: element symbols, and 'nitrate' for nitrogen as nitrate [mg/L]
    weights : how much missing it counts, 1 where not given
    sources : by nutrient
    """

    mg_l: Mapping[str, float]
    weights: Mapping[str, float] = field(default_factory=dict)
    sources: Mapping[str, str] = field(default_factory=dict)

    def __post_init__(self) -> None:
        if not self.mg_l:
            raise ValueError("A target names at least one nutrient.")
        for nutrient, wanted in self.mg_l.items():
            if nutrient != NITRATE and nutrient not in known_elements():
                raise ValueError(f"{nutrient!r} is not a nutrient known here.")
            if not 0 < wanted < inf or not 0 < self.weights.get(nutrient, 1.0) < inf:
                raise ValueError(f"A target of {wanted} mg/L {nutrient} cannot be aimed at.")


@dataclass(frozen=True, slots=True)
class Miss:
    """A nutrient of the target and what the blend brings of it, with the water [mg/L]."""

    nutrient: str
    wanted_mg_l: float
    brought_mg_l: float
    weight: float

    @property
    def relative(self) -> float:
        """Too much (positive) or too little, over what was wanted [1]."""
        return self.brought_mg_l / self.wanted_mg_l - 1

    @property
    def counts(self) -> float:
        """How much it is missed, less for what matters less [1]."""
        return abs(self.relative) * min(1.0, self.weight)


@dataclass(frozen=True, slots=True)
class Blend:
    """The nearest mix.

    Parameters
    ----------
    g_l : by product, those of the mix only [g per litre of ready feed]
    misses : every nutrient that was aimed at, worst first
    listed_mg_l : micro elements and silicon with the water, 0 where no label shows any [mg/L]
    capped : elements that stand at their toxic limit and hold the mix down
    left_out : nutrients that could not be aimed at, as a product does not tell them: 'nitrate'
    """

    g_l: Mapping[str, float]
    misses: tuple[Miss, ...]
    listed_mg_l: Mapping[str, float]
    capped: tuple[str, ...]
    left_out: tuple[str, ...]

    @property
    def reached(self) -> bool:
        """Whether nothing that counts is missed by more than is tolerated when measuring."""
        return all(miss.counts <= TOLERABLE_ERROR for miss in self.misses)


def goal(name: str, n_mg_l: float) -> Goal:
    """A target by name at a strength.

    Parameters
    ----------
    name : 'growth' or 'bloom'
    n_mg_l : nitrogen [mg/L]

    Returns
    -------
    Goal

    Raises
    ------
    ValueError
        For an unknown target or a strength outside 0 to 1000 mg/L.

    References
    ----------
    Beside each ratio in ``blends.toml``.
    """
    wanted = blend_targets().get(name)
    if wanted is None:
        raise ValueError(f"{name!r} is not a target: {', '.join(blend_targets())} are.")
    if not 0 < n_mg_l <= MOST_N_MG_L:
        raise ValueError(
            f"{n_mg_l:g} mg/L N is no feed: a target takes up to {MOST_N_MG_L:g} mg/L."
        )
    return Goal(
        {nutrient: w.per_n * n_mg_l for nutrient, w in wanted.items()},
        {nutrient: w.weight for nutrient, w in wanted.items()},
        {nutrient: w.source for nutrient, w in wanted.items()},
    )


def blend(
    products: Sequence[Product],
    target: Goal,
    *,
    water_mg_l: Mapping[str, float] | None = None,
) -> Blend:
    """The mix of some products that comes nearest to a target.

    Parameters
    ----------
    products : one to six; for a liquid the amount is its weight
    target : from `goal`, or own figures
    water_mg_l : what the water brings, by nutrient [mg/L]

    Returns
    -------
    Blend
        The nearest mix, whether it reaches the target or not. As all nutrients share the blame it
        may hold a few per cent more nitrogen than the target: ceilings of a dose still come after.

    Raises
    ------
    ValueError
        For no product, more than six or one twice, products that bring nothing that is aimed at,
        a negative amount in the water, or water that is over a toxic limit by itself.

    References
    ----------
    Lawson and Hanson, Solving Least Squares Problems, 1974 (from memory), for the optimum; limits
    of boron and copper in ``blends.toml``.
    """
    water = dict(water_mg_l or {})
    _check(products, water)
    left_out = _not_told(products, target)
    aimed = [nutrient for nutrient in target.mg_l if nutrient not in left_out]
    scale = [target.weights.get(n, 1.0) / target.mg_l[n] for n in aimed]
    looked_at = dict.fromkeys((*aimed, *LISTED, *toxic_limits()))
    brings = {n: [_brings(product, n) for product in products] for n in looked_at}
    rows = [[s * each for each in brings[n]] for s, n in zip(scale, aimed, strict=True)]
    columns = [list(column) for column in zip(*rows, strict=True)]
    if not any(map(any, columns)):
        raise ValueError(
            f"None of {', '.join(p.key for p in products)} brings {', '.join(aimed)}: add a "
            "product that does."
        )
    lacking = [target.mg_l[n] - water.get(n, 0.0) for n in aimed]
    wanted = [s * amount for s, amount in zip(scale, lacking, strict=True)]
    caps = _caps(brings, water)
    amounts = least_squares(columns, wanted, list(caps.values()))
    brought = {
        nutrient: water.get(nutrient, 0.0) + sum(map(mul, amounts, brings[nutrient]))
        for nutrient in (*aimed, *LISTED)
    }
    misses = (Miss(n, target.mg_l[n], brought[n], target.weights.get(n, 1.0)) for n in aimed)
    return Blend(
        {p.key: amount for p, amount in zip(products, amounts, strict=True) if amount > 0},
        tuple(sorted(misses, key=lambda miss: -miss.counts)),
        {symbol: brought[symbol] for symbol in LISTED},
        tuple(
            symbol
            for symbol, (row, most) in caps.items()
            if most > 0 and sum(map(mul, amounts, row)) > most * (1 - 1 / _CAP_WEIGHT)
        ),
        left_out,
    )


def _check(products: Sequence[Product], water: Mapping[str, float]) -> None:
    if not 1 <= len(products) <= MOST_PRODUCTS:
        raise ValueError(
            f"A blend takes 1 to {MOST_PRODUCTS} products, not {len(products)}: choose among them."
        )
    if len({product.key for product in products}) < len(products):
        raise ValueError("A product stands twice in the blend.")
    for nutrient, amount in water.items():
        if not 0 <= amount < inf:
            raise ValueError(f"Water cannot hold {amount} mg/L {nutrient}.")


def _brings(product: Product, nutrient: str) -> float:
    """Of a gram in a litre [mg/L]."""
    return element_mg_l(1.0, product.percent(nutrient))


def _not_told(products: Sequence[Product], target: Goal) -> tuple[str, ...]:
    silent = any(p.nitrogen is None and p.elements.get("N") for p in products)
    return (NITRATE,) if silent and NITRATE in target.mg_l else ()


def _caps(brings: Mapping[str, list[float]], water: Mapping[str, float]) -> dict[str, _Cap]:
    """Toxic limits that some product could break, less what the water brings [mg/L]."""
    caps: dict[str, _Cap] = {}
    for symbol, limit in toxic_limits().items():
        most = limit.value - water.get(symbol, 0.0)
        if most < 0:
            raise ValueError(
                f"The water alone brings {water[symbol]:g} mg/L {symbol}, over the limit of "
                f"{limit.value:g}: use rain or reverse-osmosis water."
            )
        if any(brings[symbol]):
            caps[symbol] = (brings[symbol], most)
    return caps


# ---------------------------------------------------------------------- non-negative least squares


def least_squares(
    columns: Sequence[Sequence[float]],
    wanted: Sequence[float],
    caps: Sequence[tuple[Sequence[float], float]] = (),
) -> list[float]:
    """Amounts of columns, none negative, whose sum comes nearest to what is wanted.

    Where that breaks a cap, the cap becomes an equation, of a weight that leaves it broken by a
    millionth, and all amounts are lowered by that millionth.

    Parameters
    ----------
    columns : what one unit of each brings of every row; each doubles the work
    wanted : of every row
    caps : what one unit of each column adds to a capped sum, and the most it may be

    Returns
    -------
    list of float
        One amount for each column.

    References
    ----------
    Lawson and Hanson, Solving Least Squares Problems, 1974 (from memory): equations by weight.
    """
    shut = {j for row, most in caps if most <= 0 for j, each in enumerate(row) if each > 0}
    used = [j for j, column in enumerate(columns) if any(column) and j not in shut]
    room = [([row[j] for j in used], most) for row, most in caps if most > 0]
    chosen = [list(columns[j]) for j in used]
    found = _best_subset(chosen, list(wanted))
    if any(_over(found, cap) > 1 for cap in room):
        found = _under_caps(chosen, list(wanted), room, found)
    amounts = [0.0] * len(columns)
    for j, amount in zip(used, found, strict=True):
        amounts[j] = amount
    return amounts


def _over(amounts: Sequence[float], cap: _Cap) -> float:
    """What the amounts add to a capped sum, over the most it may be [1]."""
    row, most = cap
    return float(sum(map(mul, row, amounts)) / most)


def _under_caps(
    columns: list[list[float]], wanted: list[float], caps: list[_Cap], free: list[float]
) -> list[float]:
    """The optimum that stands at one cap or more, from the optimum without caps.

    Where one cap alone, of those that are broken, leads to a mix under all of them, it is that.
    """
    heavy = _CAP_WEIGHT * max(map(abs, wanted))
    worst = max(_over(free, cap) for cap in caps)
    best, nearest = [amount / worst for amount in free], inf
    caps = sorted(caps, key=lambda cap: -_over(free, cap))  # the worst alone does it most often
    likely = [amount > 0 for amount in free]  # a cap mostly changes amounts, not products
    for size in range(1, len(caps) + 1):
        for active in combinations(caps, size):
            if size == 1 and _over(free, active[0]) <= 1:
                continue
            extended = [
                [*column, *(heavy * row[j] / most for row, most in active)]
                for j, column in enumerate(columns)
            ]
            found = _best_subset(extended, wanted + [heavy] * size, likely)
            over = max(1.0, *(_over(found, cap) for cap in caps))
            if over > 1 + _BROKEN_BY_WEIGHT:
                continue
            found = [amount / over for amount in found]
            if size == 1:
                return found
            distance = _distance(columns, wanted, found)
            if distance < nearest:
                best, nearest = found, distance
    return best


def _distance(columns: list[list[float]], wanted: list[float], amounts: list[float]) -> float:
    """Sum of squares that is missed."""
    missed = (
        goal - sum(map(mul, amounts, row))
        for goal, row in zip(wanted, zip(*columns, strict=True), strict=True)
    )
    return float(sum(miss * miss for miss in missed))


def _best_subset(
    columns: list[list[float]], wanted: list[float], likely: Sequence[bool] = ()
) -> list[float]:
    """The best amounts of all subsets that need no negative amount.

    An active set finds them, from the columns that are `likely` in the optimum on. Where it does
    not settle, all subsets are tried: they grow by one column at a time with the Cholesky factor
    of their normal equations, so that each costs one row of it, until no column left out would
    help (the conditions of Karush, Kuhn and Tucker). Columns are scaled to length 1 first.
    """
    lengths = [sqrt(sum(map(mul, column, column))) for column in columns]
    units = [[v / length for v in c] for c, length in zip(columns, lengths, strict=True)]
    gram = [[sum(map(mul, a, b)) for b in units] for a in units]
    right = [sum(map(mul, unit, wanted)) for unit in units]
    square = sum(map(mul, wanted, wanted))
    no_better, no_help = _NO_BETTER * square, _NO_HELP * sqrt(square)
    begin = [j for j, is_likely in enumerate(likely) if is_likely]
    settled = _active_set(gram, right, begin, no_help)
    if settled is not None:
        return [settled.get(j, 0.0) / length for j, length in enumerate(lengths)]
    by_promise = sorted(range(len(units)), key=lambda j: -right[j])
    best: list[float] = [0.0] * len(units)
    explained = 0.0

    def grow(
        first: int,
        chosen: list[int],
        factor: list[list[float]],
        forward: list[float],
        so_far: float,
    ) -> bool:
        """Try all that begins with `chosen`; whether the optimum is found."""
        nonlocal best, explained
        for k in range(first, len(units)):
            j = by_promise[k]
            row: list[float] = []
            for i, above in zip(chosen, factor, strict=True):
                row.append((gram[j][i] - sum(map(mul, row, above))) / above[-1])
            rest = 1.0 - sum(map(mul, row, row))
            if rest <= _DEPENDENT:
                continue
            pivot = sqrt(rest)
            value = (right[j] - sum(map(mul, row, forward))) / pivot
            row.append(pivot)
            mine, rows, values = [*chosen, j], [*factor, row], [*forward, value]
            now = so_far + value * value
            if now > explained + no_better:
                amounts = _back(rows, values)
                if min(amounts) >= 0:
                    best, explained = [0.0] * len(units), now
                    for i, amount in zip(mine, amounts, strict=True):
                        best[i] = amount
                    helps = (r - sum(map(mul, g, best)) for r, g in zip(right, gram, strict=True))
                    if max(helps) <= no_help:
                        return True
            if grow(k + 1, mine, rows, values, now):
                return True
        return False

    grow(0, [], [], [], 0.0)
    return [amount / length for amount, length in zip(best, lengths, strict=True)]


def _active_set(
    gram: list[list[float]], right: list[float], chosen: list[int], no_help: float
) -> dict[int, float] | None:
    """Amounts at the optimum by column: one column in or out at a time, from those `chosen`.

    As Lawson and Hanson, without their care for ties: None where it does not settle, or where
    columns depend on each other. What it finds meets the conditions of Karush, Kuhn and Tucker,
    so it is the optimum.
    """
    for _ in range(_MOST_SWAPS):
        amounts = _solved(
            [[gram[i][j] for j in chosen] for i in chosen], [right[i] for i in chosen]
        )
        if amounts is None:
            return None
        least = min(range(len(chosen)), key=amounts.__getitem__, default=None)
        if least is not None and amounts[least] < 0:
            del chosen[least]
            continue
        steepest, slope = -1, no_help
        for j, row in enumerate(gram):
            if j not in chosen:
                mine = right[j] - sum([row[i] * x for i, x in zip(chosen, amounts, strict=True)])
                if mine > slope:
                    steepest, slope = j, mine
        if steepest < 0:
            return dict(zip(chosen, amounts, strict=True))
        chosen.append(steepest)
    return None


def _solved(square: list[list[float]], right: list[float]) -> list[float] | None:
    """Solution of some equations by elimination, None where they depend on each other; in place."""
    count = len(right)
    for k in range(count):
        pivot = square[k][k]
        if pivot <= _DEPENDENT:
            return None
        for i in range(k + 1, count):
            factor = square[i][k] / pivot
            if factor:
                square[i] = [a - factor * b for a, b in zip(square[i], square[k], strict=True)]
                right[i] -= factor * right[k]
    return _back_up(square, right)


def _back_up(upper: list[list[float]], right: list[float]) -> list[float]:
    """Solve an upper triangle, from the last row up; in place."""
    for k in range(len(right) - 1, -1, -1):
        right[k] /= upper[k][k]
        for i in range(k):
            right[i] -= upper[i][k] * right[k]
    return right


def _back(factor: list[list[float]], forward: list[float]) -> list[float]:
    """Solve the transpose of a lower triangle, from the last row up."""
    left = list(forward)
    for k in range(len(left) - 1, -1, -1):
        left[k] /= factor[k][k]
        for i in range(k):
            left[i] -= factor[k][i] * left[k]
    return left
