"""The published figures of `fixtures/published/`, one file a theme, read for the tests."""

from __future__ import annotations

import tomllib
from collections.abc import Callable, Mapping
from dataclasses import dataclass
from pathlib import Path
from typing import Any

import pytest

PUBLISHED = Path(__file__).parents[2] / "fixtures" / "published"

#: How far a figure can be trusted, strongest first.
STATUSES = (
    "seen",
    "seen, weak source",
    "calculated from constants",
    "from memory",
    "common practice, no source",
)

Inputs = Mapping[str, Any]
#: What the project answers to the inputs of one kind of check.
Result = Callable[[Inputs], float]


@dataclass(frozen=True, slots=True)
class Check:
    """One figure as printed, with what it was printed for and where.

    The tolerance is the printed precision, unless the note says what the source rounded.
    """

    id: str
    kind: str
    inputs: Inputs
    expected: float
    tolerance: float
    source: str
    status: str
    note: str = ""

    def __str__(self) -> str:
        return self.id

    @property
    def printed(self) -> object:
        """What a result equals if it is the printed figure, within the printed precision."""
        return pytest.approx(self.expected, abs=self.tolerance, rel=0)


def themes() -> list[str]:
    """The themes for which there is a file."""
    return sorted(path.stem for path in PUBLISHED.glob("*.toml"))


def published(theme: str) -> list[Check]:
    """Every check of a theme, in the order of its file."""
    with (PUBLISHED / f"{theme}.toml").open("rb") as file:
        return [Check(**entry) for entry in tomllib.load(file)["check"]]
