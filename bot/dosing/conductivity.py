"""Electrical conductivity (EC): of a mix from its ions, of a feed from its label, of a reading.

Everything is at 25 °C in mS/cm (the same number as dS/m) unless a name says otherwise.
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from functools import cache, lru_cache
from itertools import combinations
from operator import mul
from typing import NamedTuple

from bot.almanac.ions import (
    conductance_law,
    elements_not_counted,
    ion_pairs,
    ions,
    water_temperature,
)
from bot.dosing.impossible import Impossible

MODEL_ERROR = 0.05
"""Relative error allowed on either side of a feed's EC: the computation, label rounding."""

MAX_IONIC_STRENGTH_MOL_L = 0.1
MAX_CHARGE_IMBALANCE = 0.10
TRACE_MMOL_L = 1e-9  # less is nothing: far below what water itself holds
MAX_NUTRIENTS_MG_L = 1e6
MAX_READING_MS_CM = 60.0  # a little over sea water
PPM_SCALES = (500, 640, 700)  # ppm for 1 mS/cm

MAX_STEPS = 12  # of the fixed point for ion pairs; two or three are usual
SETTLED = 3e-3  # relative change of ionic strength that no longer matters to the EC

_LABEL_ROUNDING = 0.03
_NOTHING = 1e-9  # of an amount in a recipe for 1 mg of nutrients [mmol]
_UREA_MG_PER_MMOL_N = 30.028
_CATION_OF_ELEMENT = {"K": "K+", "Ca": "Ca+2", "Mg": "Mg+2", "Na": "Na+"}
_ANION_OF_ELEMENT = {"P": "H2PO4-", "S": "SO4-2", "Cl": "Cl-"}
_ION_OF_ELEMENT = _CATION_OF_ELEMENT | _ANION_OF_ELEMENT


@dataclass(frozen=True, slots=True)
class EcRange:
    """Lowest and highest EC that the facts given allow [mS/cm]."""

    low: float
    high: float

    def __post_init__(self) -> None:
        if not 0 <= self.low <= self.high < math.inf:
            raise ValueError(f"An EC range cannot go from {self.low} to {self.high} mS/cm.")


@dataclass(frozen=True, slots=True)
class NitrogenForms:
    """How a feed's nitrogen is split, as fractions of the total that add to 1."""

    nitrate: float
    ammonium: float
    urea: float

    def __post_init__(self) -> None:
        shares = (self.nitrate, self.ammonium, self.urea)
        if not all(0 <= share <= 1 for share in shares):
            raise ValueError(f"Each share of nitrogen must lie between 0 and 1, not {shares}.")
        if abs(sum(shares) - 1) > 0.02:
            raise ValueError(
                f"The shares of nitrogen must add to 1, and {shares} add to {sum(shares):.2f}."
            )


# ------------------------------------------------------------------------------ EC from ions


def ec_ms_cm(ions_mmol_l: Mapping[str, float]) -> float:
    """EC of a solution from its ions at 25 °C.

    Each ion carries current in proportion to its charge and mobility; other ions slow it down, and
    calcium and magnesium travel partly bound to sulphate, bicarbonate and phosphate. Acid is taken
    up by bicarbonate, and dihydrogen phosphate shares its proton with it; the water is taken as
    closed, without carbon dioxide of its own.

    Parameters
    ----------
    ions_mmol_l : total concentration by ion, names as in ``ions.toml`` (``Ca+2``) [mmol/L]

    Returns
    -------
    EC at 25 °C [mS/cm]; 0 for water without ions

    Raises
    ------
    ValueError
        for an unknown ion, a negative or endless amount, charges out of balance by over 10 %, or a
        solution too strong for the equation (ionic strength over 0.1 mol/L)

    References
    ----------
    Robinson and Stokes, Electrolyte Solutions, 1959, for the equation; Davies, Ion Association,
    1962, for activities; the constants' sources stand in ``ions.toml``.
    """
    total_mol_l = _checked_mol_l(ions_mmol_l)
    co2_mol_l = _take_up_acid(total_mol_l)
    carriers, strength_mol_l = _speciate(total_mol_l, co2_mol_l)
    return _conduct(carriers, strength_mol_l)


def _checked_mol_l(ions_mmol_l: Mapping[str, float]) -> dict[str, float]:
    known = ions()
    total_mol_l: dict[str, float] = {}
    positive = negative = strength = 0.0
    for name, amount in ions_mmol_l.items():
        ion = known.get(name)
        if ion is None:
            raise ValueError(f"{name!r} is not an ion known here; known are {', '.join(known)}.")
        if not 0 <= amount < math.inf:
            raise ValueError(f"{name} cannot be {amount} mmol/L.")
        if amount <= TRACE_MMOL_L:
            continue
        total_mol_l[name] = amount / 1000
        charge = ion.charge
        if charge > 0:
            positive += charge * amount
        else:
            negative -= charge * amount
        strength += charge * charge * amount / 2000
    if abs(positive - negative) > MAX_CHARGE_IMBALANCE * (positive + negative):
        raise ValueError(
            f"The charges do not balance: {positive:.2f} meq/L of cations stand against "
            f"{negative:.2f} meq/L of anions."
        )
    if strength > MAX_IONIC_STRENGTH_MOL_L:
        raise Impossible("solution-strong", strength=strength, most=MAX_IONIC_STRENGTH_MOL_L)
    return total_mol_l


def _take_up_acid(total_mol_l: dict[str, float]) -> float:
    """Let bases bind free acid, in place; return the carbon dioxide set free [mol/L]."""
    spent = min(total_mol_l.get("H+", 0.0), total_mol_l.get("HPO4-2", 0.0))
    if spent:
        total_mol_l["H+"] -= spent
        total_mol_l["HPO4-2"] -= spent
        total_mol_l["H2PO4-"] = total_mol_l.get("H2PO4-", 0.0) + spent
    co2 = min(total_mol_l.get("H+", 0.0), total_mol_l.get("HCO3-", 0.0))
    if co2:
        total_mol_l["H+"] -= co2
        total_mol_l["HCO3-"] -= co2
    for name in ("H+", "HPO4-2", "HCO3-"):
        if total_mol_l.get(name, 1.0) <= TRACE_MMOL_L / 1000:
            del total_mol_l[name]
    return co2


class _Pair(NamedTuple):
    cation: int  # place in the layout
    anion: int
    constant: float  # [L/mol]
    exponent: int  # of the activity coefficient of a single charge
    charge: int
    limiting_conductivity: float  # [S cm2/eq]


_Links = tuple[tuple[int, tuple[tuple[int, int], ...]], ...]  # ion: (partner, pair), ...
_Carrier = tuple[int, float, float]  # charge, limiting conductivity [S cm2/eq], amount [mol/L]


class _Layout(NamedTuple):
    """Which ions a solution has and which of them pair, worked out once for each set of ions."""

    kinds: tuple[tuple[int, float], ...]  # charge, limiting conductivity of ions, then of pairs
    pairs: tuple[_Pair, ...]
    half_exponents: tuple[float, ...]  # what a mole of each pair takes off the ionic strength
    by_cation: _Links
    by_anion: _Links
    proton_sharers: tuple[int, int, int] | None  # H2PO4-, HCO3-, HPO4-2


@lru_cache(maxsize=256)
def _layout(names: tuple[str, ...]) -> _Layout:
    known = [ions()[name] for name in names]
    place = {name: i for i, name in enumerate(names)}
    pairs = []
    for entry in ion_pairs():
        if entry.cation in place and entry.anion in place:
            cation, anion = place[entry.cation], place[entry.anion]
            z_cation, z_anion = known[cation].charge, known[anion].charge
            exponent = -2 * z_cation * z_anion  # z1^2 + z2^2 - (z1 + z2)^2, as log g goes with z^2
            charge, limiting = z_cation + z_anion, entry.limiting_conductivity
            pairs.append(_Pair(cation, anion, 10**entry.log_k, exponent, charge, limiting))
    by_ion: list[list[tuple[int, int]]] = [[] for _ in names]
    for i, pair in enumerate(pairs):
        by_ion[pair.cation].append((pair.anion, i))
        by_ion[pair.anion].append((pair.cation, i))
    links = [(i, tuple(partners)) for i, partners in enumerate(by_ion) if partners]
    sharers = ("H2PO4-", "HCO3-", "HPO4-2")
    return _Layout(
        (
            *((ion.charge, ion.limiting_conductivity) for ion in known),
            *((pair.charge, pair.limiting_conductivity) for pair in pairs),
        ),
        tuple(pairs),
        tuple(pair.exponent / 2 for pair in pairs),
        tuple(link for link in links if known[link[0]].charge > 0),
        tuple(link for link in links if known[link[0]].charge < 0),
        (place[sharers[0]], place[sharers[1]], place[sharers[2]])
        if all(name in place for name in sharers)
        else None,
    )


def _speciate(total_mol_l: dict[str, float], co2_mol_l: float) -> tuple[list[_Carrier], float]:
    """Carriers of current after pairing, and the ionic strength [mol/L]."""
    carbon = total_mol_l.get("HCO3-", 0.0) + co2_mol_l
    if "HCO3-" in total_mol_l and "H2PO4-" in total_mol_l:
        total_mol_l.setdefault("HPO4-2", 0.0)
    layout = _layout(tuple(total_mol_l))
    total = list(total_mol_l.values())
    free, bound = total[:], [0.0] * len(layout.pairs)
    strength = unpaired = _ionic_strength(layout, total)
    for _ in range(MAX_STEPS if layout.pairs or layout.proton_sharers else 0):
        activity = _single_charge_activity(strength)
        if layout.proton_sharers:
            # two singly charged ions become a doubly charged one: the strength grows by the amount
            unpaired += _share_proton(layout.proton_sharers, total, free, carbon, activity)
        bound = _pair_up(layout, total, free, activity)
        before = strength
        strength = unpaired - sum(map(mul, layout.half_exponents, bound))
        if abs(strength - before) <= SETTLED * strength:
            break
    amounts = zip(layout.kinds, free + bound, strict=True)
    return [(charge, limiting, amount) for (charge, limiting), amount in amounts], strength


def _ionic_strength(layout: _Layout, total: list[float]) -> float:
    return sum([z * z * amount for (z, _), amount in zip(layout.kinds, total, strict=False)]) / 2


def _single_charge_activity(strength_mol_l: float) -> float:
    law = conductance_law()
    root = math.sqrt(strength_mol_l)
    exponent = root / (1 + root) - law.davies_b * strength_mol_l
    return float(10 ** (-law.debye_hueckel_a * exponent))


def _pair_up(
    layout: _Layout, total: list[float], free: list[float], activity: float
) -> list[float]:
    """One step of the fixed point: cations against the present anions, then the reverse.

    Changes the free ions in place and returns the amount of each pair [mol/L].
    """
    constants = [k * activity**exponent for _, _, k, exponent, _, _ in layout.pairs]
    for links in (layout.by_cation, layout.by_anion):
        for ion, partners in links:
            load = 1.0
            for partner, pair in partners:
                load += constants[pair] * free[partner]
            free[ion] = total[ion] / load
    return [
        constants[i] * free[cation] * free[anion]
        for i, (cation, anion, _, _, _, _) in enumerate(layout.pairs)
    ]


def _share_proton(
    sharers: tuple[int, int, int],
    total: list[float],
    free: list[float],
    carbon_mol_l: float,
    activity: float,
) -> float:
    """Move H2PO4- + HCO3- to HPO4-2 + CO2 until they are in balance, in place.

    Returns the amount moved by this step [mol/L].
    """
    i, j, m = sharers
    acid, base, spent = total[i], total[j], total[m]
    acid_free, base_free = free[i] / acid, free[j] / base
    spent_free = free[m] / spent if spent else 1.0
    co2 = carbon_mol_l - base
    k = _phosphate_bicarbonate_constant() / activity**2 * acid_free * base_free / spent_free
    # (spent + x)(co2 + x) = k (acid - x)(base - x), by the root that stays exact for small x
    a, b, c = 1 - k, spent + co2 + k * (acid + base), spent * co2 - k * acid * base
    x = -2 * c / (b + math.sqrt(b * b - 4 * a * c))
    total[i], total[j], total[m] = acid - x, base - x, spent + x
    free[i], free[j], free[m] = acid_free * total[i], base_free * total[j], spent_free * total[m]
    return x


@cache
def _phosphate_bicarbonate_constant() -> float:
    return float(10 ** conductance_law().log_k_phosphate_bicarbonate)


def _conduct(carriers: list[_Carrier], strength_mol_l: float) -> float:
    """Sum the current of all carriers, each slowed by the atmosphere of the other charges."""
    law = conductance_law()
    root = math.sqrt(strength_mol_l)
    slowing = root / (1 + law.b_a * root)
    # by sign: equivalents, squares of charge, conductivity, conductivity times charge
    cation, anion = [0.0] * 4, [0.0] * 4
    for charge, limiting, amount in carriers:
        side, z = (cation, charge) if charge > 0 else (anion, -charge)
        equivalents = z * amount
        side[0] += equivalents
        side[1] += z * equivalents
        side[2] += equivalents * limiting
        side[3] += z * equivalents * limiting
    if not (cation[0] and anion[0]):
        return 0.0
    mean_cation, mean_anion = cation[1] / cation[0], anion[1] / anion[0]
    drag = law.electrophoretic * (cation[1] + anion[1])
    drag += law.relaxation * (mean_anion * cation[3] + mean_cation * anion[3])
    return cation[2] + anion[2] - drag * slowing


# ------------------------------------------------------------------------------ EC of a feed


def feed_ec_ms_cm(
    elements_mg_l: Mapping[str, float],
    nitrogen_forms: NitrogenForms | None = None,
    *,
    product_mg_l: float | None = None,
) -> EcRange:
    """EC that a feed adds to water without ions, from the elements of its label.

    Where the forms of nitrogen are known, the range is the error of the computation: what the
    charges lack is taken as one counter-ion, so a salt that the label leaves out altogether
    (calcium with chloride) goes unseen. Where the forms are not known, the range spans what a maker
    could have used: from as much urea as the charges allow, to ammonium and nitrate with sulphate
    and chloride. The weight of the product narrows this a great deal: salts that would weigh more
    than the product itself are ruled out.

    A key that is present, even with 0, is taken as declared; what is absent may be there.
    Phosphorus counts as dihydrogen phosphate. Calcium rules out sulphate, as the two do not share
    one product. Chloride that is not declared comes with potassium or sodium (with calcium or
    magnesium for want of another partner), calcium that is not declared only as nitrate and without
    phosphorus. Free acid (urea phosphate) is assumed only where phosphorus is short of cations. In
    hard water the same feed adds less, by up to a fifth (see `meter`): for the mixture use
    `ec_ms_cm`.

    Parameters
    ----------
    elements_mg_l : concentration in the ready feed by element: N, P, K, Ca, Mg, S, Na, Cl; micro
        elements and silicon may be there and are left out [mg/L]
    nitrogen_forms : shares of nitrate, ammonium and urea, or None where the label has none
    product_mg_l : weight of the product in a litre of the ready feed, or None [mg/L]

    Returns
    -------
    range of the EC the feed adds [mS/cm]

    Raises
    ------
    ValueError
        for an unknown element, a negative or endless amount, elements that weigh more than the
        product, or a solution too strong to compute

    References
    ----------
    Held to published EC of feeds at 100 mg/L N: Univ. of Delaware Cooperative Extension, 2008,
    citing Univ. of Massachusetts.
    """
    elements = _checked_elements(elements_mg_l, product_mg_l)
    if nitrogen_forms is not None or not elements.get("N"):
        forms = nitrogen_forms or NitrogenForms(0, 0, 1)
        candidates = _balanced(_ions_of_label(elements, forms), elements)
    else:
        candidates = _extreme_recipes(elements, product_mg_l)
    found = [ec_ms_cm(candidate) for candidate in candidates]
    return EcRange(min(found) * (1 - MODEL_ERROR), max(found) * (1 + MODEL_ERROR))


def _checked_elements(
    elements_mg_l: Mapping[str, float], product_mg_l: float | None
) -> dict[str, float]:
    """Elements that count, after checking all of them [mg/L]."""
    ignored = elements_not_counted()
    for name, amount in elements_mg_l.items():
        if name != "N" and name not in _ION_OF_ELEMENT and name not in ignored:
            raise ValueError(f"{name!r} is not an element whose conductivity is known here.")
        if not 0 <= amount < math.inf:
            raise ValueError(f"{name} cannot be {amount} mg/L.")
    total = sum(elements_mg_l.values())
    if total > MAX_NUTRIENTS_MG_L:
        raise Impossible("nutrients-many", mg_l=total)
    if product_mg_l is not None and not total <= product_mg_l < math.inf:
        raise ValueError(
            f"A feed of {product_mg_l} mg/L cannot hold {total:.0f} mg/L of nutrients."
        )
    return {name: amount for name, amount in elements_mg_l.items() if name not in ignored}


def _ions_of_label(elements: Mapping[str, float], forms: NitrogenForms) -> dict[str, float]:
    """Ions that the label states, whether their charges balance or not [mmol/L]."""
    n_mmol_l = elements.get("N", 0.0) / ions()["NO3-"].reported_as["N"]
    stated = {"NO3-": n_mmol_l * forms.nitrate, "NH4+": n_mmol_l * forms.ammonium}
    for element, name in _ION_OF_ELEMENT.items():
        if element in elements:
            stated[name] = elements[element] / ions()[name].reported_as[element]
    return stated


def _surplus_meq_l(stated: Mapping[str, float]) -> float:
    """Cations less anions."""
    return sum(ions()[name].charge * amount for name, amount in stated.items())


def _may_hold(elements: Mapping[str, float]) -> tuple[str, ...]:
    """Ions that a label which does not name their element leaves open."""
    calcium, phosphorus = elements.get("Ca", 0.0), elements.get("P", 0.0)
    open_ions = []
    if "S" not in elements and not calcium:
        open_ions.append("SO4-2")
    if "Cl" not in elements:
        open_ions.append("Cl-")
    if "Ca" not in elements and not phosphorus:
        open_ions.append("Ca+2")
    return tuple(open_ions)


# ------------------------------------------------------ forms of nitrogen known: balance the rest


def _balanced(stated: dict[str, float], elements: Mapping[str, float]) -> list[dict[str, float]]:
    """The label's ions, completed in each plausible way to equal charges."""
    surplus = _surplus_meq_l(stated)
    charges = sum(abs(ions()[name].charge) * amount for name, amount in stated.items())
    if abs(surplus) <= 1e-9 * charges:
        return [stated]
    if surplus > 0:
        fillers = [name for name in _may_hold(elements) if ions()[name].charge < 0]
        if not fillers or not (elements.get("N") or elements.get("P")):
            fillers.append("HCO3-")  # a silicate, a carbonate, an organic acid
        completed = [_with(stated, name, surplus) for name in fillers]
        if stated.get("H2PO4-", 0.0) >= surplus:
            completed.append(_with(_with(stated, "H2PO4-", -surplus), "HPO4-2", 2 * surplus))
        return completed
    shortage = -surplus
    fillers = [_CATION_OF_ELEMENT[name] for name in ("Na", "Mg") if name not in elements]
    fillers += [name for name in _may_hold(elements) if name == "Ca+2"]
    if _LABEL_ROUNDING * charges < shortage <= stated.get("H2PO4-", 0.0):
        fillers.append("H+")
    return [_with(stated, name, shortage) for name in fillers or ["Na+"]]


def _with(stated: Mapping[str, float], name: str, meq_l: float) -> dict[str, float]:
    more = meq_l / abs(ions()[name].charge)
    return {**stated, name: stated.get(name, 0.0) + more}


# ---------------------------------------------- forms unknown: the extremes of what a maker can do


def _extreme_recipes(
    elements: Mapping[str, float], product_mg_l: float | None
) -> list[dict[str, float]]:
    """Least and most conductive ions that meet the label [mmol/L].

    What is least or most does not depend on the dilution, so it is worked out once a label.
    """
    total = sum(elements.values())
    label = tuple(sorted((name, round(amount / total, 6)) for name, amount in elements.items()))
    product = None if product_mg_l is None else round(product_mg_l / total, 6)
    return [
        {name: amount * total for name, amount in recipe}
        for recipe in _extremes_of_label(label, product)
    ]


_Recipe = tuple[tuple[str, float], ...]


@lru_cache(maxsize=1024)
def _extremes_of_label(
    label: tuple[tuple[str, float], ...], product: float | None
) -> tuple[_Recipe, _Recipe]:
    """Least and most conductive recipe, for 1 mg of the label's elements."""
    elements = dict(label)
    open_ions = _may_hold(elements)
    potash_only, any_salt = ("K+", "Na+"), tuple(_CATION_OF_ELEMENT.values())
    for weight, may_hold, chloride_with in (
        (product, open_ions, potash_only),
        (product, open_ions, any_salt),  # calcium or magnesium chloride, for want of nitrogen
        (None, open_ions, any_salt),  # a label that rounds up, or counts acids
        (None, (*open_ions, "HCO3-"), any_salt),  # a potash, a silicate
        (None, ("H+", "Na+"), any_salt),  # an acid
    ):
        recipes = list(_recipes(elements, weight, may_hold, chloride_with))
        if recipes:
            break
    by_ec = sorted(recipes, key=_ec_at_feed_strength)
    return tuple(by_ec[0].items()), tuple(by_ec[-1].items())


def _ec_at_feed_strength(recipe: Mapping[str, float]) -> float:
    return ec_ms_cm({name: 200 * amount for name, amount in recipe.items()})


def _recipes(
    elements: Mapping[str, float],
    product: float | None,
    open_ions: tuple[str, ...],
    chloride_with: tuple[str, ...],
) -> Iterator[dict[str, float]]:
    """Every corner of what meets the label: as many materials used as there are conditions.

    Corners hold the least and the most of any quantity that is linear in the amounts, as EC nearly
    is.
    """
    stated = _ions_of_label(elements, NitrogenForms(0, 0, 1))
    materials = ["NO3-", "NH4+", "urea", *open_ions]
    nitrogen = elements["N"] / ions()["NO3-"].reported_as["N"]
    chloride = sum(ions()[n].charge * stated.get(n, 0.0) for n in chloride_with)
    conditions = _conditions(stated, nitrogen, chloride, product, materials)
    slacks = [i for i, (_, _, at_most) in enumerate(conditions) if at_most]
    rows = [
        [*weights, *(1.0 if i == slack else 0.0 for slack in slacks)]
        for i, (weights, _, _) in enumerate(conditions)
    ]
    goal = [amount for _, amount, _ in conditions]
    for used in combinations(range(len(rows[0])), len(rows)):
        amounts = _solve([[row[i] for i in used] for row in rows], goal)
        if amounts is None or min(amounts) < -_NOTHING:
            continue
        recipe = {name: amount for name, amount in stated.items() if amount}
        for i, amount in zip(used, amounts, strict=True):
            if i < len(materials) and materials[i] != "urea" and amount > _NOTHING:
                recipe[materials[i]] = recipe.get(materials[i], 0.0) + amount
        yield recipe


_Condition = tuple[list[float], float, bool]  # weight by material, amount, at most or exactly


def _conditions(
    stated: Mapping[str, float],
    nitrogen: float,
    chloride: float,
    product: float | None,
    materials: list[str],
) -> list[_Condition]:
    """What a recipe must meet [mmol, meq, mg]."""
    charge = {name: ion.charge for name, ion in ions().items()} | {"urea": 0}
    weight = {name: ion.molar_mass for name, ion in ions().items()} | {"urea": _UREA_MG_PER_MMOL_N}
    found: list[_Condition] = [
        ([float(m in ("NO3-", "NH4+", "urea")) for m in materials], nitrogen, False),
        ([float(charge[m]) for m in materials], -_surplus_meq_l(stated), False),
    ]
    if "Cl-" in materials:
        found.append(([float(m == "Cl-") for m in materials], chloride, True))
    if "Ca+2" in materials:  # as nitrate only
        found.append(([{"Ca+2": 2.0, "NO3-": -1.0}.get(m, 0.0) for m in materials], 0.0, True))
    if product is not None:
        room = product - sum(weight[n] * amount for n, amount in stated.items())
        found.append(([weight[m] for m in materials], room, True))
    return found


def _solve(rows: list[list[float]], goal: list[float]) -> list[float] | None:
    """Solve a small square system by elimination; None where it has no single solution."""
    size = len(goal)
    work = [[*row, value] for row, value in zip(rows, goal, strict=True)]
    for column in range(size):
        _, best = max((abs(work[r][column]), r) for r in range(column, size))
        if abs(work[best][column]) < 1e-12:
            return None
        work[column], work[best] = work[best], work[column]
        for r in range(size):
            if r != column and work[r][column]:
                factor = work[r][column] / work[column][column]
                work[r] = [a - factor * b for a, b in zip(work[r], work[column], strict=True)]
    return [work[i][size] / work[i][i] for i in range(size)]


# ------------------------------------------------------------------------------ meter readings


def temperature_to_25(
    reading_ms_cm: float, temp_c: float, *, linear_per_k: float | None = None
) -> float:
    """EC at 25 °C from a reading without compensation at another temperature.

    Parameters
    ----------
    reading_ms_cm : what the meter shows [mS/cm]
    temp_c : temperature of the water, 0 to 50 [°C]
    linear_per_k : take this linear coefficient, such as 0.02 [1/K]; None takes the table for
        natural water from 0 to 35 °C and the usual 0.02 above it

    Returns
    -------
    EC at 25 °C [mS/cm]

    Raises
    ------
    ValueError
        for a reading or a temperature out of range

    References
    ----------
    ISO 7888:1985, Water quality, Determination of electrical conductivity.
    """
    _check_reading(reading_ms_cm)
    return reading_ms_cm * temperature_factor(temp_c, linear_per_k=linear_per_k)


def temperature_factor(temp_c: float, *, linear_per_k: float | None = None) -> float:
    """Factor from a reading at a temperature to EC at 25 °C; see `temperature_to_25`."""
    if not 0 <= temp_c <= 50:
        raise Impossible("temperature", temp=temp_c)
    if linear_per_k is not None and not 0 <= linear_per_k < 0.04:
        raise ValueError(f"A temperature coefficient of {linear_per_k} per K is outside 0 to 0.04.")
    table = water_temperature()
    if linear_per_k is not None or temp_c > table.last_c:
        slope = table.linear_per_k if linear_per_k is None else linear_per_k
        return 1 / (1 + slope * (temp_c - 25))
    degree = min(int(temp_c), table.last_c - 1)
    below, above = table.factors[degree - table.first_c : degree - table.first_c + 2]
    return below + (temp_c - degree) * (above - below)


def ec_to_ppm(reading_ms_cm: float, scale: int) -> float:
    """What a meter shows in ppm on its scale.

    Parameters
    ----------
    reading_ms_cm : EC [mS/cm]
    scale : ppm that the meter shows for 1 mS/cm: 500, 640 or 700

    Returns
    -------
    the meter's ppm

    Raises
    ------
    ValueError
        for an EC out of range or an unknown scale

    References
    ----------
    The 640 scale: Univ. of California Agriculture and Natural Resources; 500 (sodium chloride) and
    700 (a mixture that imitates natural water): makers' manuals.
    """
    _check_reading(reading_ms_cm)
    _check_scale(scale)
    return reading_ms_cm * scale


def ppm_to_ec(reading_ppm: float, scale: int) -> float:
    """EC behind a meter's ppm; see `ec_to_ppm`.

    Parameters
    ----------
    reading_ppm : what the meter shows [ppm]
    scale : ppm that the meter shows for 1 mS/cm: 500, 640 or 700

    Returns
    -------
    EC [mS/cm]

    Raises
    ------
    ValueError
        for a reading out of range or an unknown scale
    """
    _check_scale(scale)
    reading_ms_cm = reading_ppm / scale
    _check_reading(reading_ms_cm)
    return reading_ms_cm


def _check_reading(reading_ms_cm: float) -> None:
    if not 0 <= reading_ms_cm <= MAX_READING_MS_CM:
        raise Impossible("reading-range", ec=reading_ms_cm, most=MAX_READING_MS_CM)


def _check_scale(scale: int) -> None:
    if scale not in PPM_SCALES:
        raise ValueError(f"A ppm scale of {scale} is unknown; meters use 500, 640 or 700.")
