"""Water: what it holds, what it suits, how two waters blend.

Everything is at 25 °C; hardness and alkalinity are in mg/L of calcium carbonate. What is known of a
water is a mapping from quantity to `Range`: one figure where it was told, two where it follows from
others (`estimate`).
"""

from __future__ import annotations

import math
from collections.abc import Callable, Mapping
from contextlib import suppress
from dataclasses import dataclass, fields
from functools import lru_cache
from typing import NamedTuple

from bot.almanac.ions import ions
from bot.almanac.waters import (
    irrigation_classes,
    orchid_limits,
    sea_water_na_mg_l,
    softened_signs,
    water_types,
)
from bot.dosing import concentration
from bot.dosing.conductivity import MAX_CHARGE_IMBALANCE, ec_ms_cm
from bot.dosing.impossible import Impossible

#: Told as fresh water at most [mS/cm]; beyond it the types of water say nothing.
MAX_EC_MS_CM = 5.0
#: Told as a hardness or an alkalinity at most [mg/L CaCO3]; gypsum alone dissolves to about 1500.
MAX_HARDNESS_MG_L_CACO3 = 1000.0
#: An EC this much under the least that the other figures make contradicts them [1]; ours.
CONTRADICTION = 0.85

_NOTHING = 1e-6  # of any quantity: far below what pure water holds
# EC is not quite linear, and steps by up to 2e-4 where its computation takes a step more
_ROUNDS = 20

_ION = {
    "ca_mg_l": "Ca+2",
    "mg_mg_l": "Mg+2",
    "na_mg_l": "Na+",
    "k_mg_l": "K+",
    "hco3_mg_l": "HCO3-",
    "so4_mg_l": "SO4-2",
    "cl_mg_l": "Cl-",
    "no3_mg_l": "NO3-",
}
_FIELD = {field.removesuffix("_mg_l"): field for field in _ION}
_CACO3_MG_PER_MEQ = ions()["HCO3-"].reported_as["CaCO3"]


class Range(NamedTuple):
    """Least and most that the facts given allow; equal where the figure is known."""

    low: float
    high: float

    @property
    def middle(self) -> float:
        """Half way between."""
        return (self.low + self.high) / 2


Known = Mapping[str, Range]
"""What is known of a water, by quantity: attributes of `Water`."""


class Imbalanced(Impossible):
    """A water whose charges are out of balance, with what would mend it.

    Its figures: `cations`, `anions`, `missing` [meq/L], `percent` apart, `side` that lacks, and
    the amount of an ion of that side that would do [mg/L].
    """

    def __init__(self, water: Water) -> None:
        missing = water.cations_meq_l - water.anions_meq_l
        side, name = ("anions", "so4_mg_l") if missing > 0 else ("cations", "na_mg_l")
        if missing > 0 and water.so4_mg_l:
            name = "hco3_mg_l" if not water.hco3_mg_l else "cl_mg_l"
        ion = ions()[_ION[name]]
        super().__init__(
            "water-imbalance",
            cations=water.cations_meq_l,
            anions=water.anions_meq_l,
            percent=100 * abs(water.imbalance),
            missing=abs(missing),
            side=side,
            ion=_symbol(name),
            mg_l=abs(missing) * ion.molar_mass / abs(ion.charge),
        )


@dataclass(frozen=True, slots=True, kw_only=True)
class Water:
    """A water by its main ions, all [mg/L]; water without ions where none is given.

    Raises
    ------
    ValueError
        For a negative or endless amount, sodium above that of sea water, or charges out of
        balance by over 10 % (difference over sum, as laboratories give it).
    """

    ca_mg_l: float = 0.0
    mg_mg_l: float = 0.0
    na_mg_l: float = 0.0
    k_mg_l: float = 0.0
    hco3_mg_l: float = 0.0
    so4_mg_l: float = 0.0
    cl_mg_l: float = 0.0
    no3_mg_l: float = 0.0

    def __post_init__(self) -> None:
        for name in _ION:
            amount = getattr(self, name)
            if not 0 <= amount < math.inf:
                raise Impossible("water-ion-amount", ion=_symbol(name), mg_l=amount)
        most = sea_water_na_mg_l().value
        if self.na_mg_l > most:
            raise Impossible("sea-water", na=self.na_mg_l, most=most)
        if abs(self.imbalance) > MAX_CHARGE_IMBALANCE + 1e-9:  # a scaled water may round up
            raise Imbalanced(self)

    @staticmethod
    def charge_of(name: str, mg_l: float) -> float:
        """Charge of so much of an ion, by its field, as ``ca_mg_l`` [meq/L]."""
        ion = ions()[_ION[name]]
        return mg_l * abs(ion.charge) / ion.molar_mass

    def meq_l(self, name: str) -> float:
        """Charge of one ion by its field [meq/L]."""
        return self.charge_of(name, float(getattr(self, name)))

    @property
    def cations_meq_l(self) -> float:
        """Charge of the cations [meq/L]."""
        return sum(self.meq_l(name) for name, ion in _ION.items() if ions()[ion].charge > 0)

    @property
    def anions_meq_l(self) -> float:
        """Charge of the anions [meq/L]."""
        return sum(self.meq_l(name) for name, ion in _ION.items() if ions()[ion].charge < 0)

    @property
    def imbalance(self) -> float:
        """Cations less anions over their sum [1]; 0 for water without ions."""
        cations, anions = self.cations_meq_l, self.anions_meq_l
        return (cations - anions) / (cations + anions) if cations + anions else 0.0

    @property
    def hardness_mg_l_caco3(self) -> float:
        """Calcium and magnesium as calcium carbonate [mg/L]."""
        return _CACO3_MG_PER_MEQ * (self.meq_l("ca_mg_l") + self.meq_l("mg_mg_l"))

    @property
    def alkalinity_mg_l_caco3(self) -> float:
        """Bicarbonate as calcium carbonate [mg/L]."""
        return _CACO3_MG_PER_MEQ * self.hco3_meq_l

    @property
    def hco3_meq_l(self) -> float:
        """Bicarbonate [meq/L]."""
        return self.meq_l("hco3_mg_l")

    @property
    def cl_meq_l(self) -> float:
        """Chloride [meq/L]."""
        return self.meq_l("cl_mg_l")

    @property
    def nitrate_n_mg_l(self) -> float:
        """Nitrogen of the nitrate [mg/L]."""
        reported = ions()["NO3-"].reported_as
        return self.no3_mg_l * reported["N"] / reported["NO3"]

    @property
    def sar(self) -> float:
        """Sodium adsorption ratio, Na over the root of half of Ca + Mg [(meq/L)^0.5]."""
        sodium = self.meq_l("na_mg_l")
        hard = self.meq_l("ca_mg_l") + self.meq_l("mg_mg_l")
        return sodium / math.sqrt(hard / 2) if hard else (math.inf if sodium else 0.0)

    @property
    def ions_mmol_l(self) -> dict[str, float]:
        """Ions by name, what the report lacks filled in [mmol/L].

        Missing anions are taken as sulphate, as chloride where sulphate was reported; missing
        cations as sodium.
        """
        found = {
            ion: amount / ions()[ion].molar_mass
            for name, ion in _ION.items()
            if (amount := getattr(self, name))
        }
        missing = self.cations_meq_l - self.anions_meq_l
        filler = "Na+" if missing < 0 else "Cl-" if self.so4_mg_l else "SO4-2"
        if missing:
            found[filler] = found.get(filler, 0.0) + abs(missing / ions()[filler].charge)
        return found

    @property
    def ec_ms_cm(self) -> float:
        """EC at 25 °C [mS/cm], see `conductivity.ec_ms_cm`."""
        try:
            return ec_ms_cm(self.ions_mmol_l)
        except ValueError as error:
            raise Impossible("water-too-salty") from error

    def times(self, factor: float) -> Water:
        """The same proportions, so many times as strong [1]."""
        return Water(**{name: factor * getattr(self, name) for name in _ION})

    def known(self) -> Known:
        """All its quantities as a mapping; no EC where it is too salty to compute that."""
        found = {name: Range(v, v) for name in QUANTITIES[1:] for v in (getattr(self, name),)}
        with suppress(ValueError):
            found["ec_ms_cm"] = Range(self.ec_ms_cm, self.ec_ms_cm)
        return found


def _symbol(name: str) -> str:
    """The symbol of a field: ``Ca`` of ``ca_mg_l``."""
    return _ION[name].rstrip("+-2")


QUANTITIES = (
    "ec_ms_cm",
    "hardness_mg_l_caco3",
    "alkalinity_mg_l_caco3",
    "ca_mg_l",
    "mg_mg_l",
    "na_mg_l",
    "cl_mg_l",
    "sar",
    "cl_meq_l",
    "hco3_meq_l",
    "nitrate_n_mg_l",
)


def water_of_report(report_mg_l: Mapping[str, float]) -> Water:
    """A water from a utility's report.

    Parameters
    ----------
    report_mg_l : by symbol: Ca, Mg, Na, K, HCO3, SO4, Cl, NO3 [mg/L]

    Returns
    -------
    Water

    Raises
    ------
    ValueError
        For another symbol, and as `Water` does.
    """
    unknown = [symbol for symbol in report_mg_l if symbol.lower() not in _FIELD]
    if unknown:
        raise Impossible("water-ions", ions=", ".join(unknown))
    return Water(**{_FIELD[symbol.lower()]: mg_l for symbol, mg_l in report_mg_l.items()})


@dataclass(frozen=True, slots=True)
class Report:
    """A utility's report, as far as it can be used.

    Parameters
    ----------
    water : by its ions, None where their charges are out of balance by over 10 %
    known : what it tells by quantity; what it leaves out is a range, or not there
    imbalance : cations less anions over their sum [1]
    explained : whether ions that it leaves out may be what is missing; if not, one of its figures
        is wrong
    """

    water: Water | None
    known: Known
    imbalance: float
    explained: bool


#: The ions that make up nearly all of a water, by side.
_MAIN = {1: ("ca_mg_l", "mg_mg_l", "na_mg_l"), -1: ("hco3_mg_l", "so4_mg_l", "cl_mg_l")}
#: Without these a report is one of a part of the water.
_WHOLE = frozenset({"ca", "hco3"})
#: Nothing of these where the report leaves out what they rest on, even where it balances.
_ONLY_IF_TOLD = frozenset({"na_mg_l", "cl_mg_l", "cl_meq_l", "sar", "nitrate_n_mg_l"})
#: What each quantity rests on; EC on all.
_RESTS_ON = {
    "ec_ms_cm": (),
    "hardness_mg_l_caco3": ("ca_mg_l", "mg_mg_l"),
    "alkalinity_mg_l_caco3": ("hco3_mg_l",),
    "ca_mg_l": ("ca_mg_l",),
    "mg_mg_l": ("mg_mg_l",),
    "na_mg_l": ("na_mg_l",),
    "cl_mg_l": ("cl_mg_l",),
    "sar": ("na_mg_l", "ca_mg_l", "mg_mg_l"),
    "cl_meq_l": ("cl_mg_l",),
    "hco3_meq_l": ("hco3_mg_l",),
    "nitrate_n_mg_l": ("no3_mg_l",),
}


def read_report(report_mg_l: Mapping[str, float]) -> Report:
    """What a utility's report tells, all of it or in part.

    Where the charges do not balance, each main ion that the report leaves out on the side that
    lacks charge is tried as what is missing: what all of them allow is the range. Magnesium that
    is left out is taken as at most as much as calcium by charge, as in dolomite.

    Parameters
    ----------
    report_mg_l : as in `water_of_report` [mg/L]

    Returns
    -------
    Report

    Raises
    ------
    ValueError
        For another symbol, a negative or endless amount, sodium above that of sea water, or a
        hardness or alkalinity that no fresh water has.
    """
    told = {symbol.lower(): mg_l for symbol, mg_l in report_mg_l.items()}
    try:
        water = water_of_report(report_mg_l)
    except Imbalanced as error:
        missing = float(error.values["cations"]) - float(error.values["anions"])
        imbalance = missing / (float(error.values["cations"]) + float(error.values["anions"]))
    else:
        if told.keys() >= _WHOLE:
            fields_told = {_FIELD[symbol] for symbol in told}
            sure = {
                quantity: value
                for quantity, value in water.known().items()
                if quantity not in _ONLY_IF_TOLD or fields_told.issuperset(_RESTS_ON[quantity])
            }
            _check_known(sure)
            return Report(water, sure, water.imbalance, explained=True)
        missing, imbalance = 0.0, water.imbalance
    amounts = {_FIELD[symbol]: mg_l for symbol, mg_l in told.items()}
    lacking = _MAIN[-1 if missing > 0 else 1]
    left_out = [name for name in lacking if name not in amounts] if missing else []
    known = _told_in_part(amounts, missing)
    for quantity in QUANTITIES:
        rests_on = _RESTS_ON[quantity]
        ranged = left_out and all(name in amounts or name in left_out for name in rests_on)
        if quantity not in known and ranged:
            values = _tried(quantity, amounts, left_out, abs(missing))
            if values:
                known[quantity] = Range(min(values), max(values))
    _check_known(known)
    return Report(None, known, imbalance, explained=bool(left_out) or not missing)


def _check_known(known: Known) -> None:
    """No fresh water is so hard: a report in another unit."""
    for quantity in ("hardness_mg_l_caco3", "alkalinity_mg_l_caco3"):
        if quantity in known:
            check_figure(quantity, known[quantity].low)


def _told_in_part(amounts: Mapping[str, float], missing_meq_l: float) -> dict[str, Range]:
    """The quantities that rest on what is told alone; minor ions take what is missing."""
    known: dict[str, Range] = {}
    filler = "no3_mg_l" if missing_meq_l > 0 else "k_mg_l"
    water = _filled(amounts, filler, abs(missing_meq_l))
    for quantity in QUANTITIES[1:]:
        rests_on = _RESTS_ON[quantity]
        if water is not None and filler not in rests_on and all(i in amounts for i in rests_on):
            value = float(getattr(water, quantity))
            known[quantity] = Range(value, value)
    if "ca_mg_l" in amounts and "mg_mg_l" not in amounts:
        only = _CACO3_MG_PER_MEQ * Water.charge_of("ca_mg_l", amounts["ca_mg_l"])
        known["hardness_mg_l_caco3"] = Range(only, 2 * only)
    return {q: r for q, r in known.items() if math.isfinite(r.high)}


def _tried(
    quantity: str, amounts: Mapping[str, float], left_out: list[str], missing_meq_l: float
) -> list[float]:
    """A quantity with each of the ions left out as what is missing."""
    values: list[float] = []
    for name in left_out:
        water = _filled(amounts, name, missing_meq_l)
        with suppress(ValueError):
            if water is not None:
                values.append(float(getattr(water, quantity)))
    return [value for value in values if math.isfinite(value)]


def _filled(amounts: Mapping[str, float], name: str, more_meq_l: float) -> Water | None:
    """The water with so much more of an ion; None where that is more than water holds."""
    ion = ions()[_ION[name]]
    more = more_meq_l * ion.molar_mass / abs(ion.charge)
    with suppress(ValueError):
        return Water(**{**amounts, name: amounts.get(name, 0.0) + more})
    return None


# ------------------------------------------------------------------- from a few figures: a range


def scaled_to(water: Water, quantity: str, value: float) -> Water:
    """A water of the same proportions that has a quantity.

    Parameters
    ----------
    water : whose proportions are taken; the quantity must not be 0 in it
    quantity : as in `QUANTITIES`, but for the sodium adsorption ratio
    value : wanted, in the quantity's unit

    Returns
    -------
    Water
    """
    if value <= _NOTHING:
        return water.times(0.0)
    for _ in range(_ROUNDS):
        factor = value / getattr(water, quantity)
        water = water.times(factor)
        if abs(factor - 1) < 1e-9:
            break
    return water


def types_of_water(quantity: str, value: float, *, soft: bool = False) -> list[Water]:
    """The almanac's types of water, each scaled to an EC, a hardness or an alkalinity.

    Parameters
    ----------
    quantity : ``ec_ms_cm``, ``hardness_mg_l_caco3`` or ``alkalinity_mg_l_caco3``
    value : of it
    soft : soften them first, for an EC or an alkalinity

    Raises
    ------
    ValueError
        For a value where no fresh water lies.
    """
    check_figure(quantity, value)
    waters = [Water(**t.mg_l) for t in water_types()]
    if soft:
        waters = [softened(w) for w in waters]
    return [scaled_to(w, quantity, value) for w in waters]


def estimate(
    *,
    hardness_mg_l_caco3: float | None = None,
    alkalinity_mg_l_caco3: float | None = None,
    ec_ms_cm: float | None = None,
    soft: bool = False,
) -> Known:
    """What a water may hold, from the figures that are known of it.

    Each type of water in the almanac is scaled to each figure; the least and the most that they
    hold is the range, cut to what all figures allow; a hardness decides calcium and magnesium.
    Natural waters rich in sodium lie outside it: where the EC alone is known, less calcium than
    told is possible.

    Parameters
    ----------
    hardness_mg_l_caco3 : total hardness; of softened water, before the softener [mg/L CaCO3]
    alkalinity_mg_l_caco3 : alkalinity or carbonate hardness [mg/L CaCO3]
    ec_ms_cm : EC at 25 °C [mS/cm]
    soft : whether the water comes from a softener that exchanges for sodium

    Returns
    -------
    ranges of ``ec_ms_cm``, ``hardness_mg_l_caco3``, ``alkalinity_mg_l_caco3``, ``ca_mg_l``,
    ``mg_mg_l``, ``na_mg_l``, ``cl_mg_l``

    Raises
    ------
    ValueError
        Where no figure is given, one is out of range, or the EC is less than the hardness or the
        alkalinity makes by itself.

    References
    ----------
    The types of water in ``waters.toml``.
    """
    figures = {
        "hardness_mg_l_caco3": hardness_mg_l_caco3,
        "alkalinity_mg_l_caco3": alkalinity_mg_l_caco3,
        "ec_ms_cm": ec_ms_cm,
    }
    told = {name: value for name, value in figures.items() if value is not None}
    if not told:
        raise Impossible("water-nothing-known")
    found: dict[str, Range] = {}
    for name, value in told.items():
        for quantity, allowed in _ranges(name, value, soft=soft).items():
            decided = quantity in _OF_HARDNESS and hardness_mg_l_caco3 is not None
            if quantity not in found or not decided:
                found[quantity] = _both(found.get(quantity, allowed), allowed)
        if name != "ec_ms_cm" and ec_ms_cm is not None:
            _check_ec(name, value, ec_ms_cm, soft=soft)
    for name, value in told.items():
        if not (soft and name == "hardness_mg_l_caco3"):
            found[name] = Range(value, value)
    return found


@lru_cache(maxsize=256)
def ec_of_hardness(hardness_mg_l_caco3: float, *, soft: bool = False) -> Range:
    """EC that a water of a hardness may have, see `estimate` [mS/cm]."""
    return estimate(hardness_mg_l_caco3=hardness_mg_l_caco3, soft=soft)["ec_ms_cm"]


_ESTIMATED = QUANTITIES[:7]
_OF_HARDNESS = ("ca_mg_l", "mg_mg_l")  # where that is told, no other figure says more


def _ranges(name: str, value: float, *, soft: bool) -> dict[str, Range]:
    if soft and name == "hardness_mg_l_caco3":  # told of the water before the softener
        waters = [softened(w) for w in types_of_water(name, value)]
    else:
        waters = types_of_water(name, value, soft=soft)
    held = {quantity: [getattr(w, quantity) for w in waters] for quantity in _ESTIMATED}
    return {quantity: Range(min(values), max(values)) for quantity, values in held.items()}


def _both(first: Range, second: Range) -> Range:
    """What both allow, or the first where they exclude each other."""
    low, high = max(first.low, second.low), min(first.high, second.high)
    return Range(low, high) if low <= high else first


def check_figure(name: str, value: float) -> None:
    """Refuse an EC [mS/cm], a hardness or an alkalinity [mg/L CaCO3] that no fresh water has."""
    if name == "ec_ms_cm" and not 0 <= value <= MAX_EC_MS_CM:
        raise Impossible("water-ec-range", ec=value, most=MAX_EC_MS_CM)
    if name != "ec_ms_cm" and not 0 <= value <= MAX_HARDNESS_MG_L_CACO3:
        raise Impossible(
            "water-hardness-range", what=name.split("_")[0], mg_l=value,
            most=MAX_HARDNESS_MG_L_CACO3,
        )  # fmt: skip


def _check_ec(name: str, value: float, ec: float, *, soft: bool) -> None:
    least = _ranges(name, value, soft=soft)["ec_ms_cm"].low
    if ec < CONTRADICTION * least:
        raise Impossible("water-contradiction", ec=ec, what=name.split("_")[0], least=least)


# --------------------------------------------------------------------------------------- softened


def softened(water: Water) -> Water:
    """The same water behind a softener that exchanges calcium and magnesium for sodium.

    References
    ----------
    7.86 mg/L of sodium for a grain of hardness per US gallon: fixtures/published/water.toml.
    """
    exchanged = water.meq_l("ca_mg_l") + water.meq_l("mg_mg_l")
    kept = {f.name: getattr(water, f.name) for f in fields(water)}
    kept |= {"ca_mg_l": 0.0, "mg_mg_l": 0.0}
    kept["na_mg_l"] += exchanged * ions()["Na+"].molar_mass
    return Water(**kept)


def looks_softened(known: Known) -> bool:
    """Whether figures are those of softened water, or of a well as rich in sodium.

    Parameters
    ----------
    known : ranges by quantity; only hardness, sodium and alkalinity count

    References
    ----------
    ``softened`` in ``waters.toml``.
    """
    signs = softened_signs()
    hardness = known.get("hardness_mg_l_caco3")
    if hardness is None:
        return False
    alkalinity = known.get("alkalinity_mg_l_caco3", Range(0.0, 0.0)).low
    if alkalinity >= max(
        signs.alkalinity_mg_l_caco3, signs.alkalinity_over_hardness * hardness.high
    ):
        return True
    na = known.get("na_mg_l", Range(0.0, 0.0)).low / ions()["Na+"].molar_mass
    hard = hardness.high / _CACO3_MG_PER_MEQ
    return na >= max(signs.na_meq_l, signs.na_share_of_cations * (na + hard))


# ---------------------------------------------------------------------------------------- suiting

GRADES = ("good", "usable", "poor")
RESTRICTIONS = ("none", "slight_to_moderate", "severe")


@dataclass(frozen=True, slots=True)
class Finding:
    """One quantity of a water against its limits.

    Parameters
    ----------
    quantity : as in `QUANTITIES`
    value : what is known of it
    grades : for orchids of the class, at the least and the most it may be; None without a limit
    limits : good up to the first, bearable up to the second; None without
    hobby_source : of these limits, which are hobby figures; '' without
    restrictions : published irrigation class for field crops, at the least and the most; None
        without
    irrigation_source : of that class; '' without
    """

    quantity: str
    value: Range
    grades: tuple[str, str] | None
    limits: tuple[float, float] | None
    hobby_source: str
    restrictions: tuple[str, str] | None
    irrigation_source: str


@dataclass(frozen=True, slots=True)
class Suitability:
    """How far a water suits plants of a class.

    Parameters
    ----------
    best, worst : grade as far as it is sure; they differ where only a range is known
    softened : whether it is softened or as rich in sodium, which is poor for all orchids
    findings : each quantity that has a limit, the worst first
    """

    best: str
    worst: str
    softened: bool
    findings: tuple[Finding, ...]


def suitability(known: Known, feeding_class: str, *, soft: bool = False) -> Suitability:
    """How far a water suits plants of a class: the worst of its quantities decides.

    Parameters
    ----------
    known : `Water.known`, `estimate`, or single figures as ranges, by quantity
    feeding_class : sensitive, moderate or hungry
    soft : whether the person said that it comes from a softener

    Returns
    -------
    Suitability

    Raises
    ------
    ValueError
        Where no quantity is known that has a limit.

    References
    ----------
    Limits for orchids are hobby figures; the irrigation classes of FAO Irrigation and Drainage
    Paper 29 stand beside them, and severe restriction is poor for any plant. Nitrate is listed and
    does not count: it is feed. All in ``waters.toml``.
    """
    found = [
        _finding(quantity, known[quantity], feeding_class)
        for quantity in QUANTITIES
        if quantity in known and (quantity in orchid_limits() or quantity in irrigation_classes())
    ]
    if not found:
        raise Impossible("water-nothing-known")
    soft = soft or looks_softened(known)
    counted = [_counts(f) for f in found if f.quantity != "nitrate_n_mg_l"]
    best = max((low for low, _ in counted), default=0)
    worst = max((high for _, high in counted), default=0)
    found.sort(key=lambda f: [-grade for grade in reversed(_counts(f))])
    poor = GRADES[-1]
    return Suitability(
        poor if soft else GRADES[best], poor if soft else GRADES[worst], soft, tuple(found)
    )


def _finding(quantity: str, value: Range, feeding_class: str) -> Finding:
    hobby = orchid_limits().get(quantity)
    field = irrigation_classes().get(quantity)
    limits = hobby.up_to[feeding_class] if hobby else None
    return Finding(
        quantity=quantity,
        value=value,
        grades=_graded(GRADES, value, limits) if limits else None,
        limits=limits,
        hobby_source=hobby.source if hobby else "",
        restrictions=(
            _graded(RESTRICTIONS, value, (field.none_below, field.severe_above)) if field else None
        ),
        irrigation_source=field.source if field else "",
    )


def _graded(grades: tuple[str, ...], value: Range, limits: tuple[float, float]) -> tuple[str, str]:
    """Grade at the least and at the most of a range; a limit itself belongs to the better side."""
    low, high = (grades[sum(v > limit for limit in limits)] for v in value)
    return low, high


def _counts(finding: Finding) -> tuple[int, int]:
    """What a finding counts at its least and its most: 0 good, 1 usable, 2 poor."""
    grades = [GRADES.index(g) for g in finding.grades or (GRADES[0], GRADES[0])]
    severe = [2 * (r == RESTRICTIONS[-1]) for r in finding.restrictions or ("", "")]
    return max(grades[0], severe[0]), max(grades[1], severe[1])


# --------------------------------------------------------------------------------------- blending


@dataclass(frozen=True, slots=True)
class Blend:
    """Two waters mixed.

    Parameters
    ----------
    first_fraction : share of the first water [1]
    first_l, second_l : of each [L]
    reached : the quantity in the blend
    met : whether that is what was asked; else it is the nearest these two waters can do
    """

    first_fraction: float
    first_l: float
    second_l: float
    reached: float
    met: bool


def blend(first: Water, second: Water, first_fraction: float) -> Water:
    """Two waters mixed: each ion by mass, `first_fraction` [1] of the first.

    References
    ----------
    FAO Irrigation and Drainage Paper 29: C = a C1 + (1 - a) C2.
    """
    return Water(
        **{
            f.name: concentration.blend(
                first_fraction, getattr(first, f.name), getattr(second, f.name)
            )
            for f in fields(Water)
        }
    )


def blend_to(
    quantity: str,
    target: float,
    first: Water | float,
    second: Water | float,
    *,
    volume_l: float,
    at_most: bool = False,
) -> Blend:
    """Parts of two waters that reach a hardness, an EC or a sodium limit.

    Two figures blend in proportion, which is a few per cent low for EC; two waters blend by their
    ions, and the EC follows from these.

    Parameters
    ----------
    quantity : as in `QUANTITIES`, such as ``hardness_mg_l_caco3``, ``ec_ms_cm``, ``na_mg_l``
    target : wanted, in the quantity's unit
    first, second : the waters, or only their figures of the quantity; tap water comes first
    volume_l : of the blend [L]
    at_most : take as much of the first water as stays at or under the target, as for a limit

    Returns
    -------
    Blend
        The nearest reachable where the target lies outside both waters.

    Raises
    ------
    ValueError
        For an unknown quantity, a target or volume out of range, or a water given whole beside a
        figure.

    References
    ----------
    FAO Irrigation and Drainage Paper 29, blending.
    """
    if quantity not in QUANTITIES or quantity == "sar":
        raise ValueError(f"{quantity!r} is not a quantity that two waters can be blended to.")
    if not 0 <= target < math.inf:
        raise Impossible("blend-target", target=target)
    if not 0 < volume_l < math.inf:
        raise Impossible("blend-volume", volume=volume_l)
    in_blend = _quantity_of_blend(quantity, first, second)
    fraction, between = _fraction(in_blend, target, at_most=at_most)
    reached = in_blend(fraction)
    met = between or math.isclose(reached, target, rel_tol=1e-6, abs_tol=1e-9)
    first_l = fraction * volume_l
    return Blend(fraction, first_l, volume_l - first_l, reached, met)


def _quantity_of_blend(
    quantity: str, first: Water | float, second: Water | float
) -> Callable[[float], float]:
    if isinstance(first, Water) and isinstance(second, Water):
        one, other = first, second
        return lambda fraction: float(getattr(blend(one, other, fraction), quantity))
    if isinstance(first, Water) or isinstance(second, Water):
        raise ValueError("To blend, give both waters by their ions or both by one figure.")
    if not (0 <= first < math.inf and 0 <= second < math.inf):
        raise ValueError(f"Waters of {first:g} and {second:g} cannot be blended.")
    a, b = first, second
    return lambda fraction: concentration.blend(fraction, a, b)


def _fraction(
    in_blend: Callable[[float], float], target: float, *, at_most: bool
) -> tuple[float, bool]:
    """Share of the first water, and whether that does it: else it is the nearest end."""
    all_first, all_second = in_blend(1.0), in_blend(0.0)
    if at_most and all_first <= target:
        return 1.0, True
    if not min(all_first, all_second) <= target <= max(all_first, all_second):
        return float(abs(all_first - target) <= abs(all_second - target)), False
    low, high = 0.0, 1.0
    rises = all_first > all_second
    for _ in range(60):  # EC is not linear, but crosses a target between the two waters only once
        middle = (low + high) / 2
        if (in_blend(middle) < target) == rises:
            low = middle
        else:
            high = middle
    return (low if at_most and rises else high), True
