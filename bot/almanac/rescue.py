"""Typed loader of rescue.toml (signs, causes, actions) and salt_index.toml."""

from __future__ import annotations

import tomllib
from collections.abc import Mapping
from dataclasses import dataclass
from functools import cache
from importlib import resources
from types import MappingProxyType
from typing import Any

from bot.almanac.reference import Severity


@dataclass(frozen=True, slots=True)
class Cause:
    """What may ail a plant.

    Parameters
    ----------
    code : its name
    pause_days : without feed [d]
    resume_fraction : of the dose the plant would otherwise get [1]
    source, status : where that is from, and how sure it is
    """

    code: str
    pause_days: int
    resume_fraction: float
    source: str
    status: str


@dataclass(frozen=True, slots=True)
class Sign:
    """What is seen or known of a plant, and what it says.

    Parameters
    ----------
    code : its name
    present, absent : points for a cause where it is there, where somebody said no [1]
    ask : whether it may be asked
    damages_roots : whether it shows roots that must not be fed
    people : whether somebody should look at the plant
    after : signs of which one was told before it is asked; empty where it may always be
    leads_to : what may be asked where only such signs were told; empty for anything
    settles : signs that need not be asked where it is there
    means_yes, means_no : states that answer the question for it by themselves
    source, status : where the directions are from, and how sure they are; the points are ours
    """

    code: str
    present: Mapping[str, int]
    absent: Mapping[str, int]
    source: str
    status: str
    ask: bool = False
    damages_roots: bool = False
    people: bool = False
    after: tuple[str, ...] = ()
    leads_to: tuple[str, ...] = ()
    settles: tuple[str, ...] = ()
    means_yes: tuple[str, ...] = ()
    means_no: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class Remedy:
    """One thing to do against a cause ('' where none is known), on a day from today [d].

    `when` names the sign or fact without which it is left out, `condition` what must be seen first.
    """

    cause: str
    code: str
    day: int
    source: str
    status: str
    when: str = ""
    condition: str = ""


@dataclass(frozen=True, slots=True)
class Limit:
    """A figure with its unit, source and standing."""

    value: float
    unit: str
    source: str
    status: str


@dataclass(frozen=True, slots=True)
class SaltIndex:
    """Lowest and highest salt index of a salt in printed lists; sodium nitrate is 100.

    `percent` is what it brings, nitrogen by form: nitrate, ammonium, urea [% of mass].
    """

    name: str
    formula: str
    percent: Mapping[str, float]
    low: float
    high: float
    sources: tuple[str, ...]


@cache
def causes() -> Mapping[str, Cause]:
    """Causes by code, the most urgent first."""
    return MappingProxyType({c["code"]: Cause(**c) for c in _table("rescue")["cause"]})


@cache
def signs() -> Mapping[str, Sign]:
    """Signs by code, in the order in which they are asked where they tell as much."""
    return MappingProxyType({s["code"]: _sign(s) for s in _table("rescue")["sign"]})


@cache
def sheds() -> frozenset[str]:
    """Kinds that drop old leaves before or in their rest."""
    return frozenset(_table("rescue")["sheds"]["kinds"])


@cache
def remedies() -> tuple[Remedy, ...]:
    """What to do, by cause."""
    return tuple(Remedy(**entry) for entry in _table("rescue")["action"])


@cache
def limits() -> Mapping[str, Limit]:
    """Limits by name."""
    return MappingProxyType({n: Limit(**f) for n, f in _table("rescue")["figure"].items()})


@cache
def rescue_severities() -> Mapping[str, Severity]:
    """Cautions that only a rescue needs, by code."""
    return MappingProxyType({c: Severity(**s) for c, s in _table("rescue")["caution"].items()})


@cache
def salt_indices() -> Mapping[str, SaltIndex]:
    """Salt indices by name of the salt."""
    table = _table("salt_index")
    allowance = Limit(**table["allowance"]).value
    return MappingProxyType({s["name"]: _salt_index(s, allowance) for s in table["salt"]})


_LISTS = ("after", "leads_to", "settles", "means_yes", "means_no")


def _sign(entry: dict[str, Any]) -> Sign:
    points = {side: MappingProxyType(entry[side]) for side in ("present", "absent")}
    lists = {name: tuple(entry[name]) for name in _LISTS if name in entry}
    return Sign(**{**entry, **points, **lists})


def _salt_index(entry: dict[str, Any], allowance: float) -> SaltIndex:
    values = [v["value"] for v in entry["values"]]
    widened = allowance if len(values) == 1 else 0.0
    return SaltIndex(
        entry["name"],
        entry["formula"],
        MappingProxyType(entry["percent"]),
        min(values) * (1 - widened),
        max(values) * (1 + widened),
        tuple(v["source"] for v in entry["values"]),
    )


@cache
def _table(name: str) -> dict[str, Any]:
    text = resources.files(__package__).joinpath(f"{name}.toml").read_text(encoding="utf-8")
    return tomllib.loads(text)
