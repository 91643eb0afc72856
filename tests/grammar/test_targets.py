"""Concentrations and conductivities asked for."""

from __future__ import annotations

from typing import Any

import pytest

from grammar import read
from tests.grammar.told import same, value

SAID: list[tuple[str, str, float]] = [
    ("100 ppm N", "target_n_mg_l", 100), ("target 90 mg/L N", "target_n_mg_l", 90),
    ("150 mg l-1 N", "target_n_mg_l", 150), ("125 ppm nitrogen", "target_n_mg_l", 125),
    ("100 mg N/L", "target_n_mg_l", 100),
    ("80 mg nitrogen per litre", "target_n_mg_l", 80),
    ("EC 0.8", "target_ec_ms_cm", 0.8), ("want ec 0.7", "target_ec_ms_cm", 0.7),
    ("tap water, final EC 0.9", "target_ec_ms_cm", 0.9),
    ("target EC 0.6 mS/cm", "target_ec_ms_cm", 0.6),
    ("EC 600 µS/cm", "target_ec_ms_cm", 0.6),
]  # fmt: skip


@pytest.mark.parametrize(("text", "slot", "wanted"), SAID)
def test_target_is_read(text: str, slot: str, wanted: float) -> None:
    assert same(value(read(f"2 l, 15-5-15 powder, {text}", "en"), slot), wanted)


ASKED = [("20 ppm", "element"), ("EC 600", "ec_unit"), ("target EC 600 mS/cm", "ec_unit"),
         ("100-150 ppm N", "range")]  # fmt: skip


@pytest.mark.parametrize(("text", "code"), ASKED)
def test_unclear_target_is_asked_about(text: str, code: str) -> None:
    assert code in [c.code for c in read(f"2 l, 15-5-15 powder, {text}", "en").conflicts]


NONE: list[Any] = ["tap EC 0.4", "runoff EC 2.0", "last feed was EC 1.5", "pH 5.8", "100 ppm K"]


@pytest.mark.parametrize("text", NONE)
def test_other_figure_is_no_target(text: str) -> None:
    reading = read(f"{text}, 2 l, 15-5-15 powder", "en")
    assert reading.target_ec_ms_cm is None
    assert reading.target_n_mg_l is None
