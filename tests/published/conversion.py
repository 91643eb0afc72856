"""The two kinds of check that only convert a unit: to the canonical one, or to another."""

from __future__ import annotations

from grammar.words.units import to_canonical

from .checks import Inputs, Result


def converted(value: float, unit: str, to: str | None = None) -> float:
    """A value in the canonical unit of its kind, or in another unit of the same kind."""
    canonical = to_canonical(value, unit)
    return canonical if to is None else canonical / to_canonical(1.0, to)


def _canonical(inputs: Inputs) -> float:
    return converted(inputs["value"], inputs["unit"])


def _between(inputs: Inputs) -> float:
    return converted(inputs["value"], inputs["unit"], inputs["to"])


RESULTS: dict[str, Result] = {"canonical": _canonical, "between": _between}
