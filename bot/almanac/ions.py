"""Ions, ion pairs and the constants of conductance, with the sources in ``ions.toml``."""

from __future__ import annotations

import tomllib
from collections.abc import Mapping
from dataclasses import dataclass
from functools import cache
from pathlib import Path
from types import MappingProxyType
from typing import Any

DATA_FILE = Path(__file__).with_name("ions.toml")


@dataclass(frozen=True, slots=True)
class Ion:
    """One ion in water.

    Parameters
    ----------
    name : as the computation writes it, ``Ca+2``
    charge : signed charge number
    limiting_conductivity : at infinite dilution, 25 °C [S cm2/eq]
    molar_mass : [g/mol]
    reported_as : what a label or a report gives, and its mass in one mole of the ion [g/mol]
    source, status : where the conductivity is from, and how sure that is
    """

    name: str
    charge: int
    limiting_conductivity: float
    molar_mass: float
    reported_as: Mapping[str, float]
    source: str
    status: str


@dataclass(frozen=True, slots=True)
class IonPair:
    """A cation and an anion that partly travel together.

    Parameters
    ----------
    name, cation, anion : names as in the data
    log_k : log10 of the association constant at 25 °C [L/mol]
    limiting_conductivity : of the pair, 0 where it has no charge [S cm2/eq]
    source, status : where the constant is from, and how sure that is
    """

    name: str
    cation: str
    anion: str
    log_k: float
    limiting_conductivity: float
    source: str
    status: str


@dataclass(frozen=True, slots=True)
class ConductanceLaw:
    """Constants of conductance and activity at finite strength, water at 25 °C."""

    electrophoretic: float
    relaxation: float
    b_a: float
    debye_hueckel_a: float
    davies_b: float
    log_k_phosphate_bicarbonate: float
    source: str


@dataclass(frozen=True, slots=True)
class WaterTemperature:
    """Factors to 25 °C for natural water by whole degrees, and the usual linear coefficient."""

    first_c: int
    factors: tuple[float, ...]
    linear_per_k: float
    source: str
    status: str

    @property
    def last_c(self) -> int:
        """Warmest temperature of the table [°C]."""
        return self.first_c + len(self.factors) - 1


@cache
def ions() -> Mapping[str, Ion]:
    """All known ions by name."""
    return MappingProxyType(
        {
            name: Ion(**{**entry, "name": name, "reported_as": _frozen(entry["reported_as"])})
            for name, entry in _data()["ion"].items()
        }
    )


@cache
def ion_pairs() -> tuple[IonPair, ...]:
    """All known ion pairs."""
    return tuple(IonPair(**entry) for entry in _data()["pair"])


@cache
def conductance_law() -> ConductanceLaw:
    """Constants of the conductance equation."""
    return ConductanceLaw(**_data()["law"])


@cache
def water_temperature() -> WaterTemperature:
    """Temperature factors of natural water."""
    entry = _data()["water_temperature"]
    return WaterTemperature(**{**entry, "factors": tuple(entry["factors"])})


@cache
def elements_not_counted() -> frozenset[str]:
    """Elements of a label that the conductivity leaves out."""
    return frozenset(_data()["not_counted"]["elements"])


def _frozen(table: dict[str, float]) -> Mapping[str, float]:
    return MappingProxyType(table)


@cache
def _data() -> dict[str, Any]:
    return tomllib.loads(DATA_FILE.read_text(encoding="utf-8"))
