"""The salt index of a feed whose salts are not told: the range that its label leaves possible."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from bot.almanac.rescue import SaltIndex, salt_indices
from bot.dosing.choice import Candidate
from bot.dosing.label import elemental_percent

#: What a label prints may be so far from what is in it [% of mass]: half of the last digit and
#: what makers round; ours.
_ROUNDING = 0.5
_TINY = 1e-9
_MOST_PIVOTS = 200


def index_from_label(label: Candidate) -> tuple[float, float] | None:
    """Least and highest salt index of a feed by weight, from its label alone.

    All mixes of the salts in the list that bring its nitrogen (by its forms where they are told),
    phosphorus and potassium, weigh no more than the product and agree with what the label tells of
    calcium, magnesium, sulphur and chlorine: the lowest and the highest of them. Salts that are
    not in the list (urea phosphate, magnesium nitrate) are left out.

    Parameters
    ----------
    label : percentages in % of mass

    Returns
    -------
    tuple of float, or None
        None where no such mix makes the label.

    References
    ----------
    Salts and their indices in ``salt_index.toml``, after Rader, White and Whittaker 1943; the
    extremes by the simplex method (Dantzig), pivots after Bland.
    """
    rows = _rows(label)
    used = [s for s in salt_indices().values() if s.percent and _may_hold(s, rows)]
    low = _extreme(used, rows, [s.low for s in used])
    high = _extreme(used, rows, [-s.high for s in used])
    return None if low is None or high is None else (low, -high)


def _rows(label: Candidate) -> dict[str, float]:
    """What a mix has to bring, by part [% of mass]: 0 for what cannot be in it."""
    elements = elemental_percent(*label.analysis, label.extras)
    rows = {"P": elements.get("P", 0.0), "K": elements.get("K", 0.0)}
    forms = {"nitrate": label.n_nitrate, "ammonium": label.n_ammonium, "urea": label.n_urea}
    told = {name: share for name, share in forms.items() if share is not None}
    if len(told) == len(forms) and abs(sum(told.values()) - elements["N"]) <= _ROUNDING:
        rows |= told
    rows["N"] = elements["N"]
    rows["Na"] = elements.get("Na", 0.0)
    rows["Ca"] = elements.get("Ca", 0.0)  # a label shows its calcium: it is sold for it
    if "Mg" in elements and not rows["Ca"]:
        rows["Mg"] = elements["Mg"]
    else:
        rows["Mg"] = 0.0  # beside calcium as nitrate, which is not in the list
    if rows["Ca"]:
        rows["S"] = 0.0  # the two do not share one soluble product
    elif "S" in elements:
        rows["S"] = elements["S"]
    if "Cl" in elements:
        rows["Cl"] = elements["Cl"]
    return rows


def _brings(salt: SaltIndex, part: str) -> float:
    if part == "N":
        return sum(salt.percent.get(form, 0.0) for form in ("nitrate", "ammonium", "urea"))
    return salt.percent.get(part, 0.0)


def _may_hold(salt: SaltIndex, rows: Mapping[str, float]) -> bool:
    """Whether a salt brings nothing that is not there."""
    return all(wanted > _TINY or _brings(salt, part) <= _TINY for part, wanted in rows.items())


def _extreme(
    used: Sequence[SaltIndex], rows: Mapping[str, float], cost: Sequence[float]
) -> float | None:
    """Least cost of a mix, shares of mass times `cost`; None where no mix does it.

    Each part may be off by the rounding of a label, and all shares add to at most 1.
    """
    wanted = {part: value for part, value in rows.items() if value > _TINY}
    table: list[list[float]] = []
    for part, value in wanted.items():
        row = [_brings(salt, part) for salt in used]
        table.append([*row, value + _ROUNDING])
        table.append([*(-v for v in row), min(_ROUNDING - value, -_TINY)])
    table.append([*[1.0] * len(used), 1.0])
    return minimum(table, cost)


def minimum(at_most: Sequence[Sequence[float]], cost: Sequence[float]) -> float | None:
    """Least cost of amounts, none negative, under rows of `a x <= b`.

    Parameters
    ----------
    at_most : rows of coefficients, the limit last; a negative limit asks for at least so much
    cost : of one unit of each amount

    Returns
    -------
    float, or None
        None where no amounts keep all rows; the cost must have a least.

    References
    ----------
    The simplex method in two phases, Dantzig 1951; Bland 1977 for the choice of pivots (both from
    memory); held to scipy in tests.
    """
    amounts, rows = len(cost), len(at_most)
    short = [i for i, row in enumerate(at_most) if row[-1] < 0]
    width = amounts + rows + len(short)
    table, basis = [], []
    for i, row in enumerate(at_most):
        sign = -1.0 if row[-1] < 0 else 1.0
        line = [sign * v for v in row[:-1]] + [0.0] * (rows + len(short))
        line[amounts + i] = sign
        if sign < 0:
            line[amounts + rows + short.index(i)] = 1.0
        basis.append(amounts + (rows + short.index(i) if sign < 0 else i))
        table.append([*line, sign * row[-1]])
    if short:
        first = [0.0] * (amounts + rows) + [1.0] * len(short)
        if _solve(table, basis, first, width) > 1e-7:
            return None
    second = [*cost, *[0.0] * (rows + len(short))]
    return _solve(table, basis, second, amounts + rows)


def _solve(table: list[list[float]], basis: list[int], cost: Sequence[float], width: int) -> float:
    """Pivot in place until no column helps; the least cost. Columns from `width` on stay out."""
    for _ in range(_MOST_PIVOTS):
        prices = [cost[b] for b in basis]
        entering = next(
            (
                j
                for j in range(width)
                if cost[j] - sum(p * row[j] for p, row in zip(prices, table, strict=True)) < -_TINY
            ),
            None,
        )
        if entering is None:
            break
        ratios = [
            (row[-1] / row[entering], basis[i], i)
            for i, row in enumerate(table)
            if row[entering] > _TINY
        ]
        if not ratios:
            break
        _pivot(table, basis, min(ratios)[2], entering)
    return sum(cost[b] * row[-1] for b, row in zip(basis, table, strict=True))


def _pivot(table: list[list[float]], basis: list[int], leaving: int, entering: int) -> None:
    head = table[leaving]
    scale = head[entering]
    head[:] = [v / scale for v in head]
    for i, row in enumerate(table):
        if i != leaving and row[entering]:
            factor = row[entering]
            row[:] = [v - factor * h for v, h in zip(row, head, strict=True)]
    basis[leaving] = entering
