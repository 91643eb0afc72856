"""Stock solutions: how strong, what may share a bottle, how they are thinned and labelled.

A label names elements, not salts. What may fall out is judged from the ions that the label leaves
possible, the worst of them taken: each assumption comes back as a code.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, replace
from datetime import date, timedelta
from itertools import combinations
from math import hypot, inf, log10, sqrt
from typing import Self

from bot.almanac.ions import IonPair, conductance_law, ion_pairs, ions
from bot.almanac.recipes import (
    Mineral,
    Salt,
    minerals,
    salts,
    solubility_temperatures_c,
    stock_rules,
)
from bot.almanac.reference import elements as known_elements
from bot.dosing.completeness import MICRO
from bot.dosing.conductivity import NitrogenForms
from bot.dosing.label import elemental_percent
from bot.dosing.measuring import (
    KEEPS_DAYS,
    SCALE_STEP_G,
    STRONGEST_STOCK_G_L,
    SYRINGE_STEP_ML,
    relative_error,
)

#: Coldest storage where none was told [°C].
ASSUMED_COLDEST_C = stock_rules()["assumed_coldest"].value
#: Acidity of a stock where none was told.
ASSUMED_PH = stock_rules()["assumed_ph"].value
#: Codes of what two products make together in one bottle.
CALCIUM_SULPHATE, CALCIUM_PHOSPHATE = "calcium-sulphate", "calcium-phosphate"
MAGNESIUM_PHOSPHATE, SILICATE = "magnesium-phosphate", "silicate"
#: Codes of what limits a stock, besides the formulas of salts.
COMPLETE_POWDER, UNKNOWN = "complete-powder", "unknown"
MOST_PRODUCTS = 8
MOST_TIMES = 10_000.0
LOWEST_PH, HIGHEST_PH = 1.0, 12.0

_SATURATED = -1e-9  # a saturation index from which on something may fall out
_STEPS = 100  # of the fixed point for ion pairs
_SETTLED = 1e-9
_USUAL_TIMES = (500.0, 200.0, 100.0, 50.0, 25.0, 20.0, 15.0, 10.0, 5.0, 2.0)
_CATIONS = {"K": "K+", "Ca": "Ca+2", "Mg": "Mg+2", "Na": "Na+"}
_PAIRED_ANIONS = ("SO4-2", "HPO4-2", "H2PO4-")


@dataclass(frozen=True, slots=True)
class Product:
    """A powder as its label shows it, in elements.

    Parameters
    ----------
    key : by which the caller knows it
    elements : by symbol [% of mass]; an element that is present, even with 0, is taken as declared
    nitrogen : shares of nitrate, ammonium and urea, None where the label has none
    """

    key: str
    elements: Mapping[str, float]
    nitrogen: NitrogenForms | None = None

    def __post_init__(self) -> None:
        for symbol, percent in self.elements.items():
            if symbol not in known_elements():
                raise ValueError(f"{symbol!r} is not an element known here.")
            if not 0 <= percent <= 100:
                raise ValueError(f"{self.key} cannot hold {percent} % of {symbol}.")
        if not 0 < sum(self.elements.values()) <= 100:
            raise ValueError(f"The label of {self.key} shows no analysis that could be true.")

    @classmethod
    def of_label(
        cls,
        key: str,
        analysis: tuple[float, float, float],
        extras: Mapping[str, float],
        nitrogen: NitrogenForms | None = None,
    ) -> Self:
        """A product from N, P2O5 and K2O as printed and further elements [% of mass]."""
        return cls(key, elemental_percent(*analysis, extras), nitrogen)

    def percent(self, part: str) -> float:
        """An element, or nitrogen by its form (all of it where that is not told) [% of mass]."""
        if part not in ("nitrate", "ammonium", "urea"):
            return self.elements.get(part, 0.0)
        share = getattr(self.nitrogen, part) if self.nitrogen else 1.0
        return self.elements.get("N", 0.0) * float(share)

    def leaves_open(self, symbol: str) -> bool:
        """Whether the label is silent on sulphur or chlorine, and they could be in it.

        Calcium rules sulphate out, as the two do not share one soluble product.
        """
        if symbol in self.elements or symbol not in ("S", "Cl"):
            return False
        return symbol == "Cl" or not self.elements.get("Ca")


@dataclass(frozen=True, slots=True)
class Part:
    """A product and how much of it: in a litre of ready feed, or of stock [g/L]."""

    product: Product
    g_l: float

    def __post_init__(self) -> None:
        if not 0 < self.g_l < inf:
            raise ValueError(f"{self.g_l} g/L of {self.product.key} cannot be weighed.")


# ------------------------------------------------------------------------------- how strong


@dataclass(frozen=True, slots=True)
class StockLimit:
    """The strongest stock of a powder.

    Parameters
    ----------
    g_l : product made up to a litre [g/L]
    limited_by : formula of the salt that would fall out first, 'complete-powder' for the cap, or
        'unknown' where no solubility is known
    coldest_c : storage this is for [°C]
    assumed : what was not told: 'salts' always, 'sulphur' and 'nitrogen-forms' where they matter,
        'coldest' where the usual was taken
    """

    g_l: float
    limited_by: str
    coldest_c: float
    assumed: tuple[str, ...]


def solubility_g_l(formula: str, temperature_c: float) -> float:
    """A salt, without its crystal water, in a litre of its saturated solution.

    Between the temperatures of the table linearly. The litre is taken to weigh 1 kg: up to a sixth
    too little for the most soluble salts, on the safe side.

    Parameters
    ----------
    formula : as in ``solubility.toml``
    temperature_c : 0 to 40 [°C]

    Returns
    -------
    float
        [g/L]

    Raises
    ------
    ValueError
        For a salt or a temperature outside the table.

    References
    ----------
    CRC Handbook of Chemistry and Physics, Aqueous solubility of inorganic compounds.
    """
    salt = salts().get(formula)
    if salt is None:
        raise ValueError(f"The solubility of {formula} is not known here.")
    grid = solubility_temperatures_c()
    if not grid[0] <= temperature_c <= grid[-1]:
        raise ValueError(
            f"A stock is not kept at {temperature_c:g} °C: solubilities are known from "
            f"{grid[0]:g} to {grid[-1]:g} °C."
        )
    i = max(k for k in range(len(grid) - 1) if grid[k] <= temperature_c)
    low, high = salt.mass_percent[i : i + 2]
    return 10 * (low + (high - low) * (temperature_c - grid[i]) / (grid[i + 1] - grid[i]))


def possible_salts(product: Product) -> dict[str, float]:
    """Salts that could fall out of a stock, with the most of each that the label allows.

    What crystallises is any pairing of the ions in the bottle, whichever salts were put in. Each
    is taken as if all of the element that is shortest went into it; sulphur and chlorine that the
    label is silent on may fill the weight that the declared elements leave.

    Returns
    -------
    dict of str to float
        By formula [share of the product's mass].
    """
    found = {name: _most_of(salt, product) for name, salt in salts().items()}
    return {name: share for name, share in found.items() if share > 0}


def _most_of(salt: Salt, product: Product) -> float:
    shares = [
        _at_most_percent(product, part) * salt.molar_mass / (count * _atomic_weight(part)) / 100
        for part, count in salt.atoms.items()
    ]
    return min(1.0, *shares)


def _at_most_percent(product: Product, part: str) -> float:
    if not product.leaves_open(part):
        return product.percent(part)
    room = _room_percent(product)
    return room / _per_element("SO4-2", "S") if part == "S" else room


def _room_percent(product: Product) -> float:
    """Weight that the declared elements leave for others, in the ions they come as [% of mass]."""
    per_n = {
        "nitrate": _per_element("NO3-", "N"),
        "ammonium": _per_element("NH4+", "N"),
        "urea": salts()["CO(NH2)2"].molar_mass / (2 * _atomic_weight("N")),
    }
    if product.nitrogen is None:
        nitrogen = product.elements.get("N", 0.0) * min(per_n.values())
    else:
        nitrogen = sum(product.percent(form) * weight for form, weight in per_n.items())
    heavy = {"P": _per_element("H2PO4-", "P"), "S": _per_element("SO4-2", "S")}
    others = sum(heavy.get(s, 1.0) * v for s, v in product.elements.items() if s != "N")
    return max(0.0, 100 - nitrogen - others)


def _per_element(ion: str, symbol: str) -> float:
    return ions()[ion].molar_mass / ions()[ion].reported_as[symbol]


def _atomic_weight(part: str) -> float:
    return known_elements()[part if part in known_elements() else "N"].atomic_weight


def first_to_fall(product: Product, temperature_c: float) -> tuple[str, float] | None:
    """The possible salt that falls out first, and the strength of the stock at which it does.

    Parameters
    ----------
    product : a powder
    temperature_c : 0 to 40 [°C]

    Returns
    -------
    tuple of str and float, or None
        Formula, and product in a litre of the saturated solution [g/L]; None where the label shows
        nothing whose solubility is known.

    Raises
    ------
    ValueError
        For a temperature outside 0 to 40 °C.

    References
    ----------
    Held to mixed fertiliser solutions at saturation, IUPAC-NIST Solubility Database, system 66_79
    (Slack and others 1959): fixtures/published/stock.toml.
    """
    saturated = {
        name: solubility_g_l(name, temperature_c) / share
        for name, share in possible_salts(product).items()
    }
    return min(saturated.items(), key=lambda item: item[1], default=None)


def strongest_stock(product: Product, *, coldest_c: float | None = None) -> StockLimit:
    """How strong a stock of a powder may be, so that nothing falls out in the cold.

    Half of what dissolves, for the salt of all possible ones that would fall out first; complete
    powders (N, P and K) at most 100 g/L, or 200 g/L where sulphur and the forms of nitrogen are
    told, so that the salts are known better, and calcium does not stand beside phosphate; micro
    elements alone at most 50 g/L, as the solubility of chelates is not known.

    Parameters
    ----------
    product : a powder
    coldest_c : coldest storage, 0 to 40 [°C], None where not told

    Returns
    -------
    StockLimit

    Raises
    ------
    ValueError
        For storage outside 0 to 40 °C.

    References
    ----------
    Rules in ``solubility.toml``.
    """
    rules = stock_rules()
    at_c = ASSUMED_COLDEST_C if coldest_c is None else coldest_c
    limited_by, saturated_g_l = first_to_fall(product, at_c) or (UNKNOWN, inf)
    g_l = rules["share_of_solubility"].value * saturated_g_l
    assumed = ["salts"]
    if limited_by != UNKNOWN and "S" in salts()[limited_by].atoms and product.leaves_open("S"):
        assumed.append("sulphur")
    if product.nitrogen is None and product.elements.get("N"):
        assumed.append("nitrogen-forms")
    cap, reason = _cap(product)
    if cap < g_l:
        g_l, limited_by = cap, reason
    if coldest_c is None:
        assumed.append("coldest")
    return StockLimit(g_l, limited_by, at_c, tuple(assumed))


def _cap(product: Product) -> tuple[float, str]:
    """What no stock of such a product exceeds [g/L], and why."""
    if not any(product.elements.get(symbol) for symbol in ("N", "P", "K", "Ca", "Mg")):
        return STRONGEST_STOCK_G_L, UNKNOWN
    if not all(product.elements.get(symbol) for symbol in ("N", "P", "K")):
        return inf, UNKNOWN
    calcium_beside_phosphate = bool(product.elements.get("Ca"))
    told = product.nitrogen is not None and not product.leaves_open("S")
    rule = "complete_powder_cap"
    if told and not calcium_beside_phosphate:
        rule = "complete_powder_cap_told"
    return stock_rules()[rule].value, COMPLETE_POWDER


def together(parts: Sequence[Part]) -> Product:
    """Several powders as one, weighted by their amounts; what one does not declare is open."""
    total = sum(part.g_l for part in parts)
    shares = [(part.product, part.g_l / total) for part in parts]
    symbols = {s for product, _ in shares for s in product.elements}
    mixed = {
        s: sum(share * product.elements.get(s, 0.0) for product, share in shares)
        for s in sorted(symbols)
        if not any(product.leaves_open(s) for product, _ in shares)
    }
    return Product("+".join(p.key for p, _ in shares), mixed, _forms_together(shares))


def _forms_together(shares: Iterable[tuple[Product, float]]) -> NitrogenForms | None:
    with_n = [(p, share * p.elements["N"]) for p, share in shares if p.elements.get("N")]
    if not with_n or any(p.nitrogen is None for p, _ in with_n):
        return None
    total = sum(n for _, n in with_n)
    nitrate, ammonium, urea = (
        sum(n * getattr(p.nitrogen, form) for p, n in with_n) / total
        for form in ("nitrate", "ammonium", "urea")
    )
    return NitrogenForms(nitrate, ammonium, urea)


# ------------------------------------------------------------------- sharing the measuring error


@dataclass(frozen=True, slots=True)
class SharedError:
    """A stock that spreads the measuring error evenly over scale and syringe.

    Parameters
    ----------
    product_g : weighed once [g]
    bottle_ml : made up to this [mL]
    use_ml : brings one dose [mL]
    relative_error : of a dose, k = 2 [1]
    at_limit : whether the stock would be stronger if more stayed dissolved
    """

    product_g: float
    bottle_ml: float
    use_ml: float
    relative_error: float
    at_limit: bool


def share_error(
    dose_g: float,
    bottle_ml: float,
    strongest_g_l: float,
    *,
    scale_step_g: float = SCALE_STEP_G,
    syringe_step_ml: float = SYRINGE_STEP_ML,
) -> SharedError:
    """The strength of a stock at which a dose out of this bottle has the least error.

    A stronger stock is weighed better and measured out worse. The error of a dose m out of a
    bottle V at strength c is that of c V on the scale and of m/c in the syringe; the sum of their
    squares is least where both are alike, at c = sqrt(u_scale m / (u_syringe V)).

    Parameters
    ----------
    dose_g : product wanted at a time [g]
    bottle_ml : size of the bottle [mL]
    strongest_g_l : what stays dissolved, `strongest_stock` [g/L]
    scale_step_g, syringe_step_ml : smallest steps of the tools [g], [mL]

    Returns
    -------
    SharedError

    Raises
    ------
    ValueError
        For anything not above 0, or a bottle that does not hold one dose.

    References
    ----------
    JCGM 100:2008, clauses 4.3.7 and 5.1.2.
    """
    _positive(dose_g, bottle_ml, strongest_g_l, scale_step_g, syringe_step_ml)
    if dose_g > bottle_ml * strongest_g_l / 1000:
        raise ValueError(
            f"{bottle_ml:g} mL holds at most {bottle_ml * strongest_g_l / 1000:.3g} g in solution, "
            f"less than one dose of {dose_g:g} g: weigh that directly."
        )
    even = sqrt(scale_step_g * dose_g / (syringe_step_ml * bottle_ml))
    least = dose_g / bottle_ml
    g_ml = min(max(even, least), strongest_g_l / 1000)
    product_g, use_ml = g_ml * bottle_ml, dose_g / g_ml
    error = hypot(relative_error(product_g, scale_step_g), relative_error(use_ml, syringe_step_ml))
    return SharedError(product_g, bottle_ml, use_ml, error, even > strongest_g_l / 1000)


def _positive(*values: float) -> None:
    for value in values:
        if not 0 < value < inf:
            raise ValueError(f"An amount, a volume, a strength or a step cannot be {value}.")


# ---------------------------------------------------------------------- what falls out together


def saturation_indices(
    elements_mg_l: Mapping[str, float],
    *,
    ph: float = ASSUMED_PH,
    ammonium_n_mg_l: float = 0.0,
) -> dict[str, float]:
    """How far a solution is from letting minerals fall, as log10; above 0 they can fall out.

    Ions pair as in `ec_ms_cm`; activities after Davies, for stocks above 0.5 mol/L those of
    0.5 mol/L; charges that the elements leave open are taken as nitrate or sodium. For 25 °C: in
    the cold gypsum dissolves up to a sixth less.

    Parameters
    ----------
    elements_mg_l : Ca, Mg, K, Na, P (as phosphate), S (as sulphate); others are left out [mg/L]
    ph : of the solution, 1 to 12
    ammonium_n_mg_l : nitrogen as ammonium [mg/L]

    Returns
    -------
    dict of str to float
        By mineral; minerals that lack an ion are left out.

    Raises
    ------
    ValueError
        For a pH outside 1 to 12 or a negative or endless amount.

    References
    ----------
    Davies, Ion Association, 1962; constants in ``ions.toml`` and ``solubility.toml``.
    """
    if not LOWEST_PH <= ph <= HIGHEST_PH:
        raise ValueError(f"A stock of pH {ph:g} is not one to keep: {LOWEST_PH:g} to 12 is known.")
    for name, amount in {**elements_mg_l, "ammonium": ammonium_n_mg_l}.items():
        if not 0 <= amount < inf:
            raise ValueError(f"{name} cannot be {amount} mg/L.")
    mol_l = {
        ion: elements_mg_l.get(symbol, 0.0) / ions()[ion].reported_as[symbol] / 1000
        for symbol, ion in _CATIONS.items()
    }
    rules = stock_rules()
    ammonia = 10 ** (ph - rules["acidity_of_ammonium"].value)
    mol_l["NH4+"] = ammonium_n_mg_l / ions()["NH4+"].reported_as["N"] / 1000 / (1 + ammonia)
    sulphate = elements_mg_l.get("S", 0.0) / ions()["SO4-2"].reported_as["S"] / 1000
    phosphate = elements_mg_l.get("P", 0.0) / ions()["HPO4-2"].reported_as["P"] / 1000
    free, activity = _speciate({k: v for k, v in mol_l.items() if v}, sulphate, phosphate, ph)
    return {
        name: _saturation_index(mineral, free, activity, ph)
        for name, mineral in minerals().items()
        if all(free.get(ion) for ion in mineral.ions)
    }


def _saturation_index(
    mineral: Mineral, free: Mapping[str, float], activity: float, ph: float
) -> float:
    product = sum(
        count * (log10(free[ion]) + ions()[ion].charge ** 2 * log10(activity))
        for ion, count in mineral.ions.items()
    )
    return product + mineral.protons * ph - mineral.log_k


def _speciate(
    cations: Mapping[str, float], sulphate: float, phosphate: float, ph: float
) -> tuple[dict[str, float], float]:
    """Free ions [mol/L] and the activity coefficient of a single charge, by a fixed point."""
    pairs = [p for p in ion_pairs() if p.anion in _PAIRED_ANIONS and p.cation in (*cations, "H+")]
    second = stock_rules()["second_acidity_of_phosphate"].value
    free = {**cations, "H+": 0.0, "SO4-2": sulphate, "HPO4-2": 0.0, "H2PO4-": phosphate}
    strength, activity = sum(cations.values()) + sulphate, 1.0
    for _ in range(_STEPS):
        activity = _single_charge_activity(strength)
        constant = {p.name: p.log_k + _exponent(p) * log10(activity) for p in pairs}
        load = _Load(pairs, {name: 10**log_k for name, log_k in constant.items()}, free)
        free["H+"] = 10**-ph / activity
        to_one_proton_more = 10 ** (second - ph) * activity**3
        free["SO4-2"] = sulphate / load.of("SO4-2")
        free["HPO4-2"] = phosphate / (load.of("HPO4-2") + to_one_proton_more * load.of("H2PO4-"))
        free["H2PO4-"] = to_one_proton_more * free["HPO4-2"]
        free |= {ion: total / load.of(ion) for ion, total in cations.items()}
        before, strength = strength, load.ionic_strength()
        if abs(strength - before) <= _SETTLED * strength:
            break
    return free, activity


@dataclass(frozen=True, slots=True)
class _Load:
    """What the pairs hold, seen from the ions that are free at the moment."""

    pairs: Sequence[IonPair]
    constants: Mapping[str, float]
    free: Mapping[str, float]

    def of(self, ion: str) -> float:
        """Total of an ion over what of it is free [1]."""
        held = 1.0
        for pair in self.pairs:
            if ion in (pair.cation, pair.anion):
                partner = pair.anion if ion == pair.cation else pair.cation
                held += self.constants[pair.name] * self.free[partner]
        return held

    def ionic_strength(self) -> float:
        """Of free ions, pairs and the single charges that make up the balance [mol/L]."""
        amounts = [(ions()[name].charge, amount) for name, amount in self.free.items()]
        for p in self.pairs:
            amount = self.constants[p.name] * self.free[p.cation] * self.free[p.anion]
            amounts.append((ions()[p.cation].charge + ions()[p.anion].charge, amount))
        surplus = sum(charge * amount for charge, amount in amounts)
        return (sum(charge**2 * amount for charge, amount in amounts) + abs(surplus)) / 2


def _exponent(pair: IonPair) -> int:
    """Of the activity coefficient of a single charge: its log goes with the charge squared."""
    return -2 * ions()[pair.cation].charge * ions()[pair.anion].charge


def _single_charge_activity(strength_mol_l: float) -> float:
    law = conductance_law()
    strength = min(strength_mol_l, stock_rules()["strongest_for_activities"].value)
    root = sqrt(strength)
    return float(10 ** (-law.debye_hueckel_a * (root / (1 + root) - law.davies_b * strength)))


@dataclass(frozen=True, slots=True)
class Clash:
    """What must not share a bottle.

    Parameters
    ----------
    code : 'calcium-sulphate', 'calcium-phosphate', 'magnesium-phosphate' or 'silicate'
    keys : of the products that meet in it
    saturation_index : log10, the worst possible where not sure, None for silicates
    sure : False where a label is silent on sulphur and has room for it
    """

    code: str
    keys: tuple[str, ...]
    saturation_index: float | None
    sure: bool


def clashes(parts: Sequence[Part], *, ph: float = ASSUMED_PH) -> tuple[Clash, ...]:
    """What would fall out if these products shared a bottle at these strengths.

    Only what meets from different products counts: for a powder that holds calcium with phosphate,
    and is acid enough for it, its maker answers. Sulphur counts as sulphate, phosphorus as
    phosphate. Silicates are strongly alkaline and go with nothing.

    Parameters
    ----------
    parts : products with their strength in the bottle [g/L]
    ph : of the stock

    Returns
    -------
    tuple of Clash
        One for each code at most.

    References
    ----------
    Calcium with sulphates and phosphates, magnesium with ammonium phosphate: fertiliser
    association tables, seen in trade notes; silicates: common practice, no source.
    """
    brought = _elements_mg_l(parts)
    ammonium = sum(10 * part.g_l * part.product.percent("ammonium") for part in parts)
    indices = saturation_indices(brought, ph=ph, ammonium_n_mg_l=ammonium)
    found: dict[str, Clash] = {}
    for name, index in indices.items():
        mineral = minerals()[name]
        keys = _bring(parts, mineral.cation, mineral.anion)
        worse = mineral.code not in found or index > (found[mineral.code].saturation_index or 0)
        if index > _SATURATED and len(keys) > 1 and worse:
            found[mineral.code] = Clash(mineral.code, keys, index, sure=True)
    if CALCIUM_SULPHATE not in found:
        found |= _possible_gypsum(parts, brought, ph)
    if len(parts) > 1 and any(_is_silicate(part.product) for part in parts):
        keys = tuple(part.product.key for part in parts)
        found[SILICATE] = Clash(SILICATE, keys, None, sure=True)
    return tuple(found.values())


def _possible_gypsum(
    parts: Sequence[Part], brought: Mapping[str, float], ph: float
) -> dict[str, Clash]:
    """Calcium with as much sulphate as labels that are silent on it leave room for."""
    silent = [part for part in parts if part.product.leaves_open("S")]
    hidden = sum(10 * part.g_l * _at_most_percent(part.product, "S") for part in silent)
    most = {**brought, "S": brought.get("S", 0.0) + hidden}
    index = saturation_indices(most, ph=ph).get("gypsum")
    if not silent or index is None or index <= _SATURATED:
        return {}
    keys = (*_bring(parts, "Ca"), *(part.product.key for part in silent))
    return {CALCIUM_SULPHATE: Clash(CALCIUM_SULPHATE, keys, index, sure=False)}


def _elements_mg_l(parts: Iterable[Part]) -> dict[str, float]:
    brought: dict[str, float] = {}
    for part in parts:
        for symbol, percent in part.product.elements.items():
            brought[symbol] = brought.get(symbol, 0.0) + 10 * part.g_l * percent
    return brought


def _bring(parts: Iterable[Part], *symbols: str) -> tuple[str, ...]:
    return tuple(
        part.product.key for part in parts if any(part.product.elements.get(s) for s in symbols)
    )


def _is_silicate(product: Product) -> bool:
    shown = product.elements
    return bool(shown.get("Si")) and not shown.get("N") and not shown.get("P")


# ---------------------------------------------------------------------------------- thinning


@dataclass(frozen=True, slots=True)
class Ratio:
    """How far a stock is thinned: `times` litres of ready feed from one litre of it.

    1:N is said of both: one part in N of ready feed (what injectors are set by; 1:100 is 1 %), and
    one part to N of water, which makes N + 1. Which was meant decides by 1/N: say which.

    References
    ----------
    Univ. of Delaware Cooperative Extension, 2009: one gallon makes 100 gallons of final solution,
    1 % is 1:100; Univ. of Georgia: one part of stock to 100 parts of water.
    """

    times: float

    def __post_init__(self) -> None:
        if not 1 < self.times <= MOST_TIMES:
            raise ValueError(
                f"A stock is thinned more than once and at most 1:{MOST_TIMES:.0f}, "
                f"not {self.times:g} times."
            )

    @classmethod
    def one_in(cls, n: float) -> Self:
        """One part of stock in `n` parts of ready feed."""
        return cls(n)

    @property
    def percent(self) -> float:
        """Stock in the ready feed [% of volume]."""
        return 100 / self.times

    def stock_g_l(self, feed_g_l: float) -> float:
        """Strength of the stock [g/L] for this strength of the ready feed [g/L]."""
        return feed_g_l * self.times

    def feed_l(self, stock_l: float) -> float:
        """Ready feed [L] out of this much stock [L]."""
        return stock_l * self.times


# --------------------------------------------------------------------------------- two bottles


@dataclass(frozen=True, slots=True)
class Bottle:
    """One stock.

    Parameters
    ----------
    name : 'A' (calcium, where there is any) or 'B'
    parts : products with their strength in it [g/L]
    strongest_g_l : of all of them together, what stays dissolved [g/L]
    keeps_days : cool, dark and labelled [d]
    assumed : as for `StockLimit`
    """

    name: str
    parts: tuple[Part, ...]
    strongest_g_l: float
    keeps_days: int
    assumed: tuple[str, ...]

    @property
    def g_l(self) -> float:
        """Product in a litre [g/L]."""
        return sum(part.g_l for part in self.parts)

    @property
    def fullness(self) -> float:
        """Strength over the strongest that stays dissolved [1]."""
        return self.g_l / self.strongest_g_l

    def grams(self, volume_l: float) -> dict[str, float]:
        """Products to weigh for this much of the stock, by key [g]."""
        return {part.product.key: part.g_l * volume_l for part in self.parts}


class NoSuchBottles(ValueError):
    """Two bottles do not do.

    Attributes
    ----------
    nearest : the strongest usual ratio that does, None where none does
    keys : of the products that clash, where no ratio helps
    """

    def __init__(self, message: str, nearest: Ratio | None, keys: tuple[str, ...] = ()) -> None:
        super().__init__(message)
        self.nearest = nearest
        self.keys = keys


def bottles_for(
    feed: Sequence[Part],
    ratio: Ratio,
    *,
    coldest_c: float | None = None,
    ph: float = ASSUMED_PH,
) -> tuple[Bottle, ...]:
    """The stock or the two stocks for a feed, each thinned by the same ratio into it.

    All ways to divide the products are tried: none with a clash, fewest bottles, then the least
    crowded. What a label is silent on counts as a clash.

    Parameters
    ----------
    feed : products with their strength in the ready feed [g/L]
    ratio : of each bottle to the ready feed
    coldest_c, ph : storage [°C] and acidity, as for `strongest_stock` and `clashes`

    Returns
    -------
    tuple of Bottle
        One or two.

    Raises
    ------
    ValueError
        For no product, one twice or more than eight.
    NoSuchBottles
        Where two bottles are not enough, or where so strong a stock would not stay dissolved; with
        the nearest that does.
    """
    _check_feed(feed)
    best = _best_way(feed, ratio, coldest_c, ph)
    if best is not None:
        return _named(best)
    weaker = (Ratio(times) for times in _USUAL_TIMES if times < ratio.times)
    nearest = next((r for r in weaker if _best_way(feed, r, coldest_c, ph)), None)
    if nearest is not None:
        raise NoSuchBottles(
            f"So strong a stock does not stay clear: thin it {nearest.times:g} times instead of "
            f"{ratio.times:g}.",
            nearest,
        )
    stock = [replace(part, g_l=ratio.stock_g_l(part.g_l)) for part in feed]
    keys = sorted({key for clash in clashes(stock, ph=ph) for key in clash.keys})
    keys = keys or [stock[0].product.key]
    raise NoSuchBottles(
        f"Two bottles are not enough for {', '.join(keys)}: leave one product out and add it to "
        "the ready feed by itself.",
        None,
        tuple(keys),
    )


def _best_way(
    feed: Sequence[Part], ratio: Ratio, coldest_c: float | None, ph: float
) -> tuple[Bottle, ...] | None:
    """The bottles that stay clear and dissolved, fewest and then least crowded first."""
    stock = [replace(part, g_l=ratio.stock_g_l(part.g_l)) for part in feed]
    ways = (
        tuple(_bottle(side, coldest_c) for side in sides)
        for sides in _divisions(stock)
        if not any(clashes(side, ph=ph) for side in sides)
    )
    return min(
        (way for way in ways if _fullest(way) <= 1),
        key=lambda way: (len(way), _fullest(way)),
        default=None,
    )


def _check_feed(feed: Sequence[Part]) -> None:
    keys = [part.product.key for part in feed]
    if not 1 <= len(keys) <= MOST_PRODUCTS:
        raise ValueError(f"A recipe takes 1 to {MOST_PRODUCTS} products, not {len(keys)}.")
    if len(set(keys)) < len(keys):
        raise ValueError(f"A product stands twice in the recipe: {', '.join(keys)}.")


def _divisions(stock: Sequence[Part]) -> Iterable[tuple[list[Part], ...]]:
    """Every way to fill one bottle or two."""
    yield (list(stock),)
    first, rest = stock[0], stock[1:]
    for size in range(len(rest)):
        for chosen in combinations(range(len(rest)), size):
            mine = [first, *(rest[i] for i in chosen)]
            yield mine, [part for i, part in enumerate(rest) if i not in chosen]


def _bottle(parts: Sequence[Part], coldest_c: float | None) -> Bottle:
    mixed = together(parts)
    limit = strongest_stock(mixed, coldest_c=coldest_c)
    return Bottle("", tuple(parts), limit.g_l, keeps_days(mixed), limit.assumed)


def _fullest(way: Iterable[Bottle]) -> float:
    return max(bottle.fullness for bottle in way)


def _named(way: Sequence[Bottle]) -> tuple[Bottle, ...]:
    calcium_first = sorted(way, key=lambda b: not _bring(b.parts, "Ca"))
    return tuple(replace(b, name=name) for b, name in zip(calcium_first, "AB", strict=False))


# -------------------------------------------------------------------------- keeping and labelling


def keeps_days(product: Product) -> int:
    """How long a stock keeps, cool, dark and closed [d].

    Salts alone keep long; urea slowly falls apart and chelates feed microbes, so a stock with
    either, or with nitrogen of untold form, keeps for a fortnight (common practice, no source).
    """
    has_urea = product.percent("urea") > 0
    if has_urea or any(product.elements.get(symbol) for symbol in MICRO):
        return KEEPS_DAYS
    return int(stock_rules()["keeps_mineral"].value)


@dataclass(frozen=True, slots=True)
class BottleLabel:
    """What belongs on a bottle; `marks` are codes for wording."""

    name: str
    grams: tuple[tuple[str, float], ...]
    millilitres: float
    made: date
    use_by: date
    marks: tuple[str, ...] = ("not-for-drinking", "keep-from-children", "keep-cool-and-dark")


def bottle_label(bottle: Bottle, millilitres: float, made: date) -> BottleLabel:
    """The data of a label to print.

    Parameters
    ----------
    bottle : from `bottles_for`
    millilitres : made up to this [mL]
    made : the day it is made

    Returns
    -------
    BottleLabel

    Raises
    ------
    ValueError
        For a volume not above 0.
    """
    _positive(millilitres)
    grams = bottle.grams(millilitres / 1000)
    use_by = made + timedelta(days=bottle.keeps_days)
    return BottleLabel(bottle.name, tuple(grams.items()), millilitres, made, use_by)
