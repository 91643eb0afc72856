"""What a label says to use, converted to one litre. Ounces: NIST Handbook 44."""

from __future__ import annotations

from typing import Any

import pytest

from grammar import read
from tests.grammar.told import same, value

SAID: list[tuple[str, float, str]] = [
    ("1 g/l", 1, "g"), ("1 g per litre", 1, "g"), ("30 g makes 20 l", 1.5, "g"),
    ("5 g per 10 litres", 0.5, "g"),
    ("2 ml per litre", 2, "ml"), ("5 g per 2 l", 2.5, "g"), ("1 g L⁻¹", 1, "g"),
    ("1 g l-1", 1, "g"), ("2 ml L-1", 2, "ml"), ("1 tsp per us gallon", 1 / 3.785411784, "tsp"),
    ("1 tbsp per 4 l", 0.75, "tsp"), ("1 oz per 10 l", 2.8349523, "g"), ("1:500", 2, "ml"),
    ("for 10 l 5 g", 0.5, "g"), ("per litre 2 ml", 2, "ml"),
]  # fmt: skip


@pytest.mark.parametrize(("text", "per_litre", "unit"), SAID)
def test_label_rate_is_per_litre(text: str, per_litre: float, unit: str) -> None:
    rate: Any = value(read(f"6 l, 20-20-20, label: {text}", "en"), "label_rate")
    assert same(rate, {"per_litre": per_litre, "unit": unit})


def test_water_of_the_label_is_not_the_can() -> None:
    assert read("label: 5 g per 2 l, I need 6 l, 20-20-20 powder", "en").volume_l == 6


def test_rate_per_no_water_is_a_problem() -> None:
    reading = read("2 l, 20-20-20 powder, label 5 g per 0 l", "en")
    assert [p.code for p in reading.problems] == ["division_by_zero"]
