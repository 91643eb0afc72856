"""Waters, limits for plants and targets of feeds, with the sources in ``waters.toml``."""

from __future__ import annotations

import tomllib
from collections.abc import Mapping
from dataclasses import dataclass
from functools import cache
from importlib import resources
from types import MappingProxyType
from typing import Any


@dataclass(frozen=True, slots=True)
class Sourced:
    """One figure, where it is from and how sure that is (seen, weak, memory, ours)."""

    value: float
    source: str
    status: str


@dataclass(frozen=True, slots=True)
class WaterType:
    """A water whose proportions stand for many.

    Parameters
    ----------
    name : of the type
    mg_l : what it holds by field of a water, ``ca_mg_l`` [mg/L]
    source, status : where that is from, and how sure it is
    """

    name: str
    mg_l: Mapping[str, float]
    source: str
    status: str


@dataclass(frozen=True, slots=True)
class Softened:
    """By what softened water is told from other water.

    Parameters
    ----------
    na_share_of_cations : sodium in the charge of all cations, from here on [1]
    na_meq_l : sodium that it takes for that [meq/L]
    alkalinity_over_hardness : alkalinity over hardness, from here on [1]
    alkalinity_mg_l_caco3 : alkalinity that it takes for that [mg/L CaCO3]
    source, status : where that is from, and how sure it is
    """

    na_share_of_cations: float
    na_meq_l: float
    alkalinity_over_hardness: float
    alkalinity_mg_l_caco3: float
    source: str
    status: str


@dataclass(frozen=True, slots=True)
class Irrigation:
    """A published irrigation class: no restriction below one figure, severe above the other."""

    quantity: str
    none_below: float
    severe_above: float
    about: str
    source: str
    status: str


@dataclass(frozen=True, slots=True)
class OrchidLimit:
    """Hobby figures: good up to the first, bearable up to the second, by feeding class."""

    quantity: str
    up_to: Mapping[str, tuple[float, float]]
    source: str
    status: str


_CLASSES = ("sensitive", "moderate", "hungry")


@cache
def sea_water_na_mg_l() -> Sourced:
    """Sodium of sea water [mg/L]."""
    entry = _data()["sea_water"]
    return Sourced(entry["na_mg_l"], entry["source"], entry["status"])


@cache
def water_types() -> tuple[WaterType, ...]:
    """Types of water that bound an estimate."""
    about = ("name", "source", "status")
    return tuple(
        WaterType(
            mg_l=MappingProxyType({f"{k}_mg_l": v for k, v in entry.items() if k not in about}),
            **{k: entry[k] for k in about},
        )
        for entry in _data()["type"]
    )


@cache
def softened_signs() -> Softened:
    """Signs of softened water."""
    return Softened(**_data()["softened"])


@cache
def irrigation_classes() -> Mapping[str, Irrigation]:
    """Published irrigation classes by quantity."""
    return MappingProxyType({e["quantity"]: Irrigation(**e) for e in _data()["irrigation"]})


@cache
def orchid_limits() -> Mapping[str, OrchidLimit]:
    """Hobby limits of water for orchids by quantity."""
    return MappingProxyType(
        {
            e["quantity"]: OrchidLimit(
                e["quantity"],
                MappingProxyType({c: (e[c][0], e[c][1]) for c in _CLASSES}),
                e["source"],
                e["status"],
            )
            for e in _data()["orchid"]
        }
    )


@cache
def feed_targets_per_n() -> Mapping[str, Sourced]:
    """Calcium and magnesium for one mass of nitrogen, by symbol [1]."""
    return _figures("feed_target", "per_n")


@cache
def ec_ceilings_ms_cm() -> Mapping[str, Sourced]:
    """EC of the ready feed at most, by feeding class [mS/cm]."""
    return _figures("ec_ceiling", "ec_ms_cm")


def _figures(table: str, figure: str) -> Mapping[str, Sourced]:
    return MappingProxyType(
        {
            name: Sourced(entry[figure], entry["source"], entry["status"])
            for name, entry in _data()[table].items()
        }
    )


@cache
def _data() -> dict[str, Any]:
    text = resources.files(__package__).joinpath("waters.toml").read_text(encoding="utf-8")
    return tomllib.loads(text)
