"""Typed loaders of media.toml, elements.toml, measures.toml, watering.toml and cautions.toml."""

from __future__ import annotations

import tomllib
from collections.abc import Mapping
from dataclasses import dataclass
from functools import cache
from importlib import resources
from types import MappingProxyType
from typing import Any


@dataclass(frozen=True, slots=True)
class Medium:
    """A potting medium; the factor is what is taken of a dose as it holds salts [1]."""

    name: str
    holds_salts_factor: float
    source: str


@dataclass(frozen=True, slots=True)
class Element:
    """A nutrient element.

    Parameters
    ----------
    symbol : chemical symbol
    kind : macro, secondary, micro or beneficial
    atomic_weight : [g/mol]
    source : of the weight
    oxide : as labels declare it, '' where they declare the element
    oxide_fraction : element in that oxide [mass fraction], 1 without one
    """

    symbol: str
    kind: str
    atomic_weight: float
    source: str
    oxide: str = ""
    oxide_fraction: float = 1.0


@dataclass(frozen=True, slots=True)
class Figure:
    """One figure with its unit and source."""

    value: float
    unit: str
    source: str


@dataclass(frozen=True, slots=True)
class Severity:
    """How much a caution matters (4 most), and where it is from."""

    severity: int
    source: str


@dataclass(frozen=True, slots=True)
class Held:
    """Water a medium holds after draining, as a share of the pot's volume [1]."""

    held: float
    source: str


def _table(name: str) -> dict[str, Any]:
    text = resources.files(__package__).joinpath(f"{name}.toml").read_text(encoding="utf-8")
    return tomllib.loads(text)


@cache
def media() -> Mapping[str, Medium]:
    """Media by canonical name."""
    return MappingProxyType({m["name"]: Medium(**m) for m in _table("media")["medium"]})


@cache
def elements() -> Mapping[str, Element]:
    """Elements by symbol."""
    return MappingProxyType({e["symbol"]: Element(**e) for e in _table("elements")["element"]})


@cache
def measures() -> Mapping[str, Figure]:
    """Figures about measuring, by name."""
    return MappingProxyType({name: Figure(**f) for name, f in _table("measures").items()})


@cache
def water_held() -> Mapping[str, Held]:
    """What media hold, by canonical name; mounted plants have no pot."""
    return MappingProxyType({name: Held(**h) for name, h in _table("watering").items()})


@cache
def caution_severities() -> Mapping[str, Severity]:
    """Cautions by code."""
    return MappingProxyType({code: Severity(**c) for code, c in _table("cautions").items()})
