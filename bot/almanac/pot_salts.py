"""Typed loader of pot_salts.toml: media, settings and ceilings of the model of salts in a pot."""

from __future__ import annotations

import tomllib
from collections.abc import Mapping
from dataclasses import dataclass
from functools import cache
from importlib import resources
from types import MappingProxyType
from typing import Any


@dataclass(frozen=True, slots=True)
class PottedMedium:
    """How water passes a medium and leaves it.

    Parameters
    ----------
    bypass : share of the water running through that takes no part in washing [1]
    evaporation_mm_day : lost by medium and plant over the pot's upper area, by season [mm/d]
    ..._source, ..._status : where that is from, and how sure it is
    """

    bypass: float
    bypass_source: str
    bypass_status: str
    evaporation_mm_day: Mapping[str, float]
    evaporation_source: str
    evaporation_status: str


@dataclass(frozen=True, slots=True)
class Setting:
    """One figure with its unit, source and how sure it is."""

    value: float
    unit: str
    source: str
    status: str


@cache
def potted_media() -> Mapping[str, PottedMedium]:
    """Media by canonical name; mounted plants have no pot."""
    entries = _data()["medium"]
    return MappingProxyType({name: PottedMedium(**entry) for name, entry in entries.items()})


@cache
def settings() -> Mapping[str, Setting]:
    """Figures that hold for all media, by name."""
    return MappingProxyType({name: Setting(**s) for name, s in _data()["setting"].items()})


@cache
def ceilings() -> Mapping[str, Setting]:
    """EC that the water of a wet pot should not exceed, by feeding class."""
    return MappingProxyType({name: Setting(**c) for name, c in _data()["ceiling"].items()})


@cache
def _data() -> dict[str, Any]:
    text = resources.files(__package__).joinpath("pot_salts.toml").read_text(encoding="utf-8")
    return tomllib.loads(text)
