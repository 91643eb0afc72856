"""Seasons, months and how often."""

from __future__ import annotations

from typing import Any

import pytest

from grammar import read
from tests.grammar.told import same, value

SAID: list[tuple[str, str, Any]] = [
    ("in winter", "season", "winter"), ("fall", "season", "autumn"), ("spring", "season", "spring"),
    ("midsummer", "season", "summer"), ("January", "month", 1), ("in march", "month", 3),
    ("in May", "month", 5), ("weekly", "regime", "weekly"), ("once a week", "regime", "weekly"),
    ("1x/wk", "regime", "weekly"), ("every two weeks", "regime", "fortnightly"),
    ("monthly", "regime", "monthly"), ("every watering", "regime", "every_watering"),
    ("full wkly", "regime", "weekly"),
]  # fmt: skip


@pytest.mark.parametrize(("text", "slot", "wanted"), SAID)
def test_time_is_read(text: str, slot: str, wanted: Any) -> None:
    assert same(value(read(f"2 l, 20-20-20 powder, {text}", "en"), slot), wanted)


NONE: list[tuple[str, str]] = [
    ("may I use it", "month"),
    ("on the march again", "month"),
    ("leaves fall off", "season"),
    ("twice a week", "regime"),
    ("every 9 days", "regime"),
    ("flush monthly with water", "regime"),
]


@pytest.mark.parametrize(("text", "slot"), NONE)
def test_other_time_is_not_taken(text: str, slot: str) -> None:
    assert value(read(f"{text}, 2 l, 20-20-20 powder", "en"), slot) is None
