"""The water and its figures. One German degree is 10 mg/L of CaO: 17.85 mg/L of CaCO3."""

from __future__ import annotations

from typing import Any

import pytest

from grammar import read
from tests.grammar.told import same, value

SAID: list[tuple[str, dict[str, Any]]] = [
    ("tap water", {"kind": "tap"}), ("rainwater", {"kind": "rain"}),
    ("RO water", {"kind": "reverse_osmosis"}), ("distilled", {"kind": "distilled"}),
    ("softened water", {"kind": "softened"}), ("well water", {"kind": "well"}),
    ("tap water hardness 14 °dH", {"kind": "tap", "hardness_mg_l_caco3": 14 * 17.848}),
    ("tap 12 dH", {"kind": "tap", "hardness_mg_l_caco3": 12 * 17.848}),
    ("tap water, hardness 20 french degrees", {"hardness_mg_l_caco3": 200}),
    ("tap, hardness 150 ppm", {"hardness_mg_l_caco3": 150}),
    ("tap EC 0.4", {"kind": "tap", "ec_ms_cm": 0.4}),
    ("tap, alkalinity 120 mg/l CaCO3", {"alkalinity_mg_l_caco3": 120}),
]  # fmt: skip


@pytest.mark.parametrize(("text", "water"), SAID)
def test_water_is_read(text: str, water: dict[str, Any]) -> None:
    assert same(value(read(f"2 l, 15-5-15 powder, {text}", "en"), "water"), water)


def test_water_of_unknown_salts_is_shown() -> None:
    reading = read("2 l spring water, 15-5-15 powder", "en")
    assert reading.water is None
    assert reading.season is None
    assert [u.text for u in reading.unknown] == ["spring water"]


def test_well_is_also_only_a_word() -> None:
    assert read("well, 2 l, 20-20-20 powder", "en").water is None
