"""EC against PHREEQC 3.7.3 (Parkhurst and Appelo 2013), by family of composition.

PHREEQC is reached through phreeqpython, offline, with its default database. Minerals do not form
here, as in a feed that was just mixed. The pair constants are PHREEQC's own, so part of the
agreement is built in; measured salts and published feeds are in tests/published/.

Shown as a table with: pytest -s tests/dosing/test_conductivity_phreeqc.py
"""

from __future__ import annotations

import math
import random
from collections.abc import Callable, Mapping
from dataclasses import dataclass
from statistics import fmean, median

import pytest
from phreeqpython import PhreeqPython  # type: ignore[import-untyped]

from bot.dosing.conductivity import ec_ms_cm

Ions = dict[str, float]

MEDIAN_PERCENT, WORST_PERCENT = 3.0, 8.0
LITRES_TO_KG_OF_WATER = 0.99705  # 25 °C, dilute

SALTS: dict[str, Ions] = {
    "KNO3": {"K+": 1, "NO3-": 1},
    "KCl": {"K+": 1, "Cl-": 1},
    "K2SO4": {"K+": 2, "SO4-2": 1},
    "KH2PO4": {"K+": 1, "H2PO4-": 1},
    "NH4H2PO4": {"NH4+": 1, "H2PO4-": 1},
    "NH4NO3": {"NH4+": 1, "NO3-": 1},
    "(NH4)2SO4": {"NH4+": 2, "SO4-2": 1},
    "NH4Cl": {"NH4+": 1, "Cl-": 1},
    "Ca(NO3)2": {"Ca+2": 1, "NO3-": 2},
    "5Ca(NO3)2.NH4NO3": {"Ca+2": 5, "NH4+": 1, "NO3-": 11},
    "CaCl2": {"Ca+2": 1, "Cl-": 2},
    "Mg(NO3)2": {"Mg+2": 1, "NO3-": 2},
    "MgSO4": {"Mg+2": 1, "SO4-2": 1},
    "MgCl2": {"Mg+2": 1, "Cl-": 2},
    "NaCl": {"Na+": 1, "Cl-": 1},
    "CaSO4": {"Ca+2": 1, "SO4-2": 1},
    "Ca(HCO3)2": {"Ca+2": 1, "HCO3-": 2},
    "Mg(HCO3)2": {"Mg+2": 1, "HCO3-": 2},
    "NaHCO3": {"Na+": 1, "HCO3-": 1},
    "HNO3": {"H+": 1, "NO3-": 1},
    "H3PO4": {"H+": 1, "H2PO4-": 1},
}
FEED_SALTS = list(SALTS)[:15]
WITH_PHOSPHATE = [
    "KNO3", "KH2PO4", "NH4H2PO4", "NH4NO3", "(NH4)2SO4", "K2SO4", "KCl", "MgSO4", "Mg(NO3)2",
]  # fmt: skip
WITH_CALCIUM = [
    "5Ca(NO3)2.NH4NO3", "Ca(NO3)2", "KNO3", "Mg(NO3)2", "NH4NO3", "KCl", "CaCl2", "NH4Cl",
]  # fmt: skip

PHREEQC_NAMES = {
    "K+": "K", "NH4+": "Amm", "Na+": "Na", "Ca+2": "Ca", "Mg+2": "Mg", "NO3-": "N(5)",
    "Cl-": "Cl", "SO4-2": "S(6)", "HCO3-": "C(4)", "H2PO4-": "P",
}  # fmt: skip


@dataclass(frozen=True)
class Composition:
    """Ions [mmol/L]; the pH is PHREEQC's own from the charges, unless a pH is given."""

    ions: Mapping[str, float]
    ph: float | None = None


# ---------------------------------------------------------------------------------- compositions


def of_salts(amounts: Mapping[str, float]) -> Ions:
    ions: Ions = {}
    for salt, amount in amounts.items():
        for ion, count in SALTS[salt].items():
            ions[ion] = ions.get(ion, 0.0) + count * amount
    return ions


def together(*parts: Ions) -> Ions:
    return {ion: sum(p.get(ion, 0.0) for p in parts) for part in parts for ion in part}


def at_about(amounts: Mapping[str, float], ec: float) -> Ions:
    """Scale salts to about an EC, by 0.13 mS/cm for a milliequivalent in a litre."""
    ions = of_salts(amounts)
    meq_l = sum(abs(charge_of(ion)) * amount for ion, amount in ions.items()) / 2
    return {ion: amount * ec / (0.13 * meq_l) for ion, amount in ions.items()}


def charge_of(ion: str) -> int:
    head, sign, tail = ion.partition("+") if "+" in ion else ion.partition("-")
    assert head
    return int(sign + (tail or "1"))


def some_of(rng: random.Random, pool: list[str]) -> dict[str, float]:
    return {salt: rng.uniform(0.05, 1) for salt in rng.sample(pool, rng.randint(2, 5))}


def between(rng: random.Random, low: float, high: float) -> float:
    return math.exp(rng.uniform(math.log(low), math.log(high)))


def tap(rng: random.Random, low: float, high: float) -> Ions:
    """A tap water with low to high mmol/L of hardness, about."""
    k = rng.uniform(low, high)
    return of_salts(
        {
            "Ca(HCO3)2": k * rng.uniform(0.3, 0.9),
            "Mg(HCO3)2": k * rng.uniform(0.0, 0.3),
            "CaSO4": k * rng.uniform(0.0, 0.4),
            "MgSO4": k * rng.uniform(0.0, 0.2),
            "NaCl": k * rng.uniform(0.05, 0.8),
            "NaHCO3": k * rng.uniform(0.0, 0.2),
            "KNO3": k * rng.uniform(0.0, 0.1),
        }
    )


def acidified(rng: random.Random) -> Ions:
    """Hard tap water with acid for a part of its bicarbonate."""
    water = tap(rng, 1.5, 4.0)
    acid = rng.choice(["HNO3", "H3PO4"])
    return together(water, of_salts({acid: rng.uniform(0.2, 0.8) * water["HCO3-"]}))


def feed(rng: random.Random, pool: list[str], low: float, high: float) -> Ions:
    return at_about(some_of(rng, pool), between(rng, low, high))


FAMILIES: dict[str, tuple[int, Callable[[random.Random], Ions], float | None]] = {
    "feeds with phosphate, pure water": (50, lambda r: feed(r, WITH_PHOSPHATE, 0.065, 2.8), None),
    "feeds with calcium, pure water": (40, lambda r: feed(r, WITH_CALCIUM, 0.06, 2.8), None),
    "soft tap": (30, lambda r: tap(r, 0.3, 0.9), None),
    "hard to very hard tap": (40, lambda r: tap(r, 1.5, 5.5), None),
    "hard to very hard tap at pH 7.5": (30, lambda r: tap(r, 1.5, 5.5), 7.5),
    "hard tap with acid": (30, acidified, None),
    "soft tap and phosphate feed": (
        40,
        lambda r: together(tap(r, 0.3, 0.9), feed(r, WITH_PHOSPHATE, 0.1, 2.0)),
        None,
    ),
    "hard tap and phosphate feed": (
        40,
        lambda r: together(tap(r, 1.5, 4.5), feed(r, WITH_PHOSPHATE, 0.1, 1.8)),
        None,
    ),
    "hard tap and calcium feed": (
        30,
        lambda r: together(tap(r, 1.5, 4.5), feed(r, [*WITH_CALCIUM, "MgSO4"], 0.1, 1.8)),
        None,
    ),
}


def compositions() -> dict[str, list[Composition]]:
    """Every family, the same on every run."""
    singles = [
        Composition(at_about({salt: 1.0}, ec)) for salt in FEED_SALTS for ec in (0.07, 0.3, 1, 2.7)
    ]
    found = {"single salts, pure water": singles}
    for name, (count, make, ph) in FAMILIES.items():
        rng = random.Random(name)
        found[name] = [Composition(make(rng), ph) for _ in range(count)]
    return found


# ----------------------------------------------------------------------------------- comparison


def phreeqc_ec_ms_cm(program: PhreeqPython, composition: Composition) -> float:
    entry: dict[str, object] = {"units": "mmol/kgw"}
    for ion, amount in composition.ions.items():
        if ion != "H+":  # acid is in the charge balance
            entry[PHREEQC_NAMES[ion]] = amount / LITRES_TO_KG_OF_WATER
    if composition.ph is None:
        entry["pH"] = "7 charge"
    else:
        entry["pH"] = composition.ph
        entry["Alkalinity"] = entry.pop("C(4)")
    solution = program.add_solution(entry)
    ec = float(solution.sc) / 1000
    solution.forget()
    return ec


@dataclass(frozen=True)
class Compared:
    reference_ms_cm: float
    error_percent: float


@pytest.fixture(scope="module")
def compared() -> dict[str, list[Compared]]:
    program = PhreeqPython()
    found: dict[str, list[Compared]] = {}
    for family, members in compositions().items():
        found[family] = []
        for member in members:
            reference = phreeqc_ec_ms_cm(program, member)
            error = 100 * (ec_ms_cm(member.ions) / reference - 1)
            found[family].append(Compared(reference, error))
    return found


def summary(family: str, rows: list[Compared]) -> str:
    errors = [row.error_percent for row in rows]
    reach = [row.reference_ms_cm for row in rows]
    return (
        f"{family:34} {len(rows):4} {min(reach):6.2f} {max(reach):6.2f} "
        f"{median(map(abs, errors)):7.2f} {fmean(errors):+6.2f} {max(errors, key=abs):+6.2f}"
    )


HEADING = f"{'family':34} {'n':>4} {'from':>6} {'to':>6} {'median%':>7} {'mean%':>6} {'worst%':>6}"


@pytest.mark.parametrize("family", ["single salts, pure water", *FAMILIES])
def test_a_family_of_compositions_agrees_with_phreeqc(
    family: str, compared: dict[str, list[Compared]]
) -> None:
    rows = compared[family]
    print(f"\n{HEADING}\n{summary(family, rows)}")
    assert median(abs(row.error_percent) for row in rows) <= MEDIAN_PERCENT
    assert max(abs(row.error_percent) for row in rows) <= WORST_PERCENT


def test_the_comparison_is_wide_enough(compared: dict[str, list[Compared]]) -> None:
    everything = [row for rows in compared.values() for row in rows]
    inside = [row for row in everything if 0.05 <= row.reference_ms_cm <= 3.0]
    print(f"\n{HEADING}\n{summary('all', everything)}")
    assert len(inside) == len(everything) >= 200
    assert min(row.reference_ms_cm for row in everything) < 0.08
    assert max(row.reference_ms_cm for row in everything) > 2.3


def test_charges_of_every_composition_balance() -> None:
    for family, members in compositions().items():
        for member in members:
            surplus = sum(charge_of(ion) * amount for ion, amount in member.ions.items())
            assert abs(surplus) < 1e-9 * sum(member.ions.values()), family


def test_without_pairs_the_same_comparison_would_fail(
    compared: dict[str, list[Compared]], monkeypatch: pytest.MonkeyPatch
) -> None:
    """Magnesium sulphate alone lies 30 % off if nothing pairs: the bounds above can fail."""
    import bot.dosing.conductivity as module

    epsom = at_about({"MgSO4": 1.0}, 2.5)
    reference = phreeqc_ec_ms_cm(PhreeqPython(), Composition(epsom))
    module._layout.cache_clear()
    monkeypatch.setattr(module, "ion_pairs", lambda: ())
    try:
        assert ec_ms_cm(epsom) > 1.2 * reference
    finally:
        module._layout.cache_clear()


@pytest.mark.parametrize(
    ("bicarbonate", "phosphate"), [(3.0, 3.0), (10.0, 10.0), (20.0, 2.0), (2.0, 10.0)]
)
def test_softened_water_shares_the_proton_of_a_phosphate(
    bicarbonate: float, phosphate: float
) -> None:
    # H2PO4- + HCO3- to HPO4-2 + CO2: no calcium binds what comes of it; 2 % as it is sodium alone
    ions = {"Na+": bicarbonate, "HCO3-": bicarbonate, "K+": phosphate, "H2PO4-": phosphate}
    assert ec_ms_cm(ions) == pytest.approx(
        phreeqc_ec_ms_cm(PhreeqPython(), Composition(ions)), rel=0.02
    )
