"""Genera and types of plants: how much they bear, and when they rest (genera.toml)."""

from __future__ import annotations

import tomllib
from collections.abc import Mapping
from dataclasses import dataclass
from functools import cache
from importlib import resources
from types import MappingProxyType


@dataclass(frozen=True, slots=True)
class Genus:
    """One genus, or a type of one that feeds differently.

    Parameters
    ----------
    name : accepted botanical name
    feeding_class : hungry, moderate or sensitive
    rest_months : months without feed, northern hemisphere [1 to 12]
    rest_kind : '' (none), 'dry' or 'no_feed'
    class_source, rest_source : where that is from
    """

    name: str
    feeding_class: str
    class_source: str
    rest_months: tuple[int, ...]
    rest_source: str
    rest_kind: str

    def rests_in(self, month: int, *, south: bool) -> bool:
        """Whether it gets no feed in this month [1 to 12]."""
        northern = (month + 5) % 12 + 1 if south else month
        return northern in self.rest_months


@cache
def genera() -> Mapping[str, Genus]:
    """All plants of the almanac by name."""
    text = resources.files(__package__).joinpath("genera.toml").read_text(encoding="utf-8")
    entries = tomllib.loads(text)["genus"]
    return MappingProxyType(
        {e["name"]: Genus(**{**e, "rest_months": tuple(e["rest_months"])}) for e in entries}
    )
