"""Typed loaders of solubility.toml and blends.toml: stock solutions and blends of feeds."""

from __future__ import annotations

import tomllib
from collections.abc import Mapping
from dataclasses import dataclass
from functools import cache
from importlib import resources
from types import MappingProxyType
from typing import Any

from bot.almanac.reference import Figure


@dataclass(frozen=True, slots=True)
class Salt:
    """A salt a feed can hold or let fall.

    Parameters
    ----------
    name : formula without crystal water
    atoms : in one formula unit, by element; nitrogen by its form: nitrate, ammonium, urea
    molar_mass : without crystal water [g/mol]
    mass_percent : in a saturated solution, at `solubility_temperatures_c` [%]
    source, status : where that is from, and how sure it is
    """

    name: str
    atoms: Mapping[str, int]
    molar_mass: float
    mass_percent: tuple[float, ...]
    source: str
    status: str


@dataclass(frozen=True, slots=True)
class Mineral:
    """A solid that falls out of a stock.

    Parameters
    ----------
    name : of the mineral
    code : of what meets in it: calcium-sulphate, calcium-phosphate, magnesium-phosphate
    cation, anion : elements of the label that meet
    ions : in one formula unit, names as in ``ions.toml``
    protons : taken up by one formula unit as it dissolves
    log_k : log10 of the product of activities at saturation, 25 °C
    source, status : where that is from, and how sure it is
    """

    name: str
    code: str
    cation: str
    anion: str
    ions: Mapping[str, int]
    protons: int
    log_k: float
    source: str
    status: str


@dataclass(frozen=True, slots=True)
class Wanted:
    """One nutrient of a target: its ratio to nitrogen [g/g], its weight [1] and the source."""

    per_n: float
    weight: float
    source: str


@cache
def stock_rules() -> Mapping[str, Figure]:
    """Rules for stock solutions, by name."""
    return MappingProxyType({k: Figure(**v) for k, v in _table("solubility")["rules"].items()})


@cache
def solubility_temperatures_c() -> tuple[float, ...]:
    """Temperatures of the solubilities, rising [°C]."""
    return tuple(_table("solubility")["solubility"]["temperatures_c"])


@cache
def salts() -> Mapping[str, Salt]:
    """Salts by formula."""
    return MappingProxyType(
        {
            name: Salt(**{**entry, "name": name, "mass_percent": tuple(entry["mass_percent"])})
            for name, entry in _table("solubility")["salt"].items()
        }
    )


@cache
def minerals() -> Mapping[str, Mineral]:
    """Minerals by name."""
    return MappingProxyType(
        {n: Mineral(name=n, **entry) for n, entry in _table("solubility")["mineral"].items()}
    )


@cache
def blend_targets() -> Mapping[str, Mapping[str, Wanted]]:
    """Nutrients wanted, by target."""
    return MappingProxyType(
        {
            name: MappingProxyType({n: Wanted(**w) for n, w in entry["nutrient"].items()})
            for name, entry in _table("blends")["target"].items()
        }
    )


@cache
def toxic_limits() -> Mapping[str, Figure]:
    """Most of an element that a feed may hold, by element [mg/L]."""
    return MappingProxyType({e: Figure(**entry) for e, entry in _table("blends")["cap"].items()})


@cache
def _table(name: str) -> dict[str, Any]:
    text = resources.files(__package__).joinpath(f"{name}.toml").read_text(encoding="utf-8")
    return tomllib.loads(text)
