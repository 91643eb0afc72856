"""Label analyses: N, P2O5, K2O in % of mass, and further figures by element."""

from __future__ import annotations

from typing import Any

import pytest

from grammar import read
from tests.grammar.told import same, value

SAID: list[tuple[str, list[float]]] = [
    ("20-20-20", [20, 20, 20]), ("20/20/20", [20, 20, 20]), ("20:20:20", [20, 20, 20]),
    ("20 20 20", [20, 20, 20]), ("13-3-15", [13, 3, 15]), ("NPK 7-7-7", [7, 7, 7]),
    ("20 - 10 - 20", [20, 10, 20]), ("0-10-10", [0, 10, 10]), ("12.5-3.5-6", [12.5, 3.5, 6]),
    ("N 20 P 10 K 15", [20, 10, 15]), ("20–20–20", [20, 20, 20]),
]  # fmt: skip


@pytest.mark.parametrize(("text", "analysis"), SAID)
def test_analysis_is_read(text: str, analysis: list[float]) -> None:
    assert same(value(read(f"2 l, {text} powder", "en"), "analysis"), analysis)


# Molar masses (IUPAC): CaO 56.077 holds 40.078 of Ca, MgO 40.304 holds 24.305 of Mg.
EXTRAS: list[tuple[str, dict[str, float]]] = [
    ("13-3-15 + 2 MgO", {"Mg": 2 * 24.305 / 40.304}),
    ("15-5-15 + 5 CaO + 2 MgO", {"Ca": 5 * 40.078 / 56.077, "Mg": 2 * 24.305 / 40.304}),
    ("13-3-15 8Ca 2Mg", {"Ca": 8, "Mg": 2}),
]


@pytest.mark.parametrize(("text", "extras"), EXTRAS)
def test_further_figures_are_by_element(text: str, extras: dict[str, float]) -> None:
    assert same(value(read(f"{text} powder, 2 l", "en"), "extras"), extras)


NONE = [
    "my number is 06-12-34", "bought on 15-05-20", "temperature 15-20-25 over the day",
    "20-20-20-20 powder", "20-20-2O powder", "20-20 powder", "05-12-34 powder",
]  # fmt: skip


@pytest.mark.parametrize("text", NONE)
def test_other_numbers_are_no_analysis(text: str) -> Any:
    reading = read(f"2 l, {text}", "en")
    assert reading.analysis is None
    assert reading.unknown or reading.conflicts


SPELT_OUT = [
    ("total nitrogen (N) 3.0 %, phosphorus pentoxide (P2O5) 4.0 %, potassium oxide (K2O) 5.0 %",
     [3, 4, 5]),
    ("nitrogen 7 %, phosphorus 5 %, potassium 6 %", [7, 5, 6]),
    ("K2O 18, P2O5 6, N 12", [12, 6, 18]),
    ("10% nitrogen, 52% phosphorus pentoxide, 10% potassium oxide", [10, 52, 10]),
    ("nitrogen 3, phosphoric acid 1, potash 4", [3, 1, 4]),
    ("NPK 20+5+10", [20, 5, 10]), ("n 5 p 6 k 7", [5, 6, 7]),
]  # fmt: skip


@pytest.mark.parametrize(("text", "analysis"), SPELT_OUT)
def test_an_analysis_may_be_spelt_out(text: str, analysis: list[float]) -> None:
    reading = read(f"2 l, {text}, liquid", "en")
    assert value(reading, "analysis") == analysis
    assert reading.strength is None
    assert not reading.unknown


def test_phosphorus_and_potassium_are_taken_as_the_label_prints_them_and_shown() -> None:
    reading = read("2 l, 13N-3P-15K", "en")
    assert value(reading, "analysis") == [13, 3, 15]
    assert [r.text for r in reading.read_as] == ["13N-3P-15K"]


@pytest.mark.parametrize("text", ["nitrogen 7 %, phosphorus 5 %", "N 100 ppm, P 20, K 80"])
def test_two_of_three_are_no_analysis(text: str) -> None:
    assert read(f"2 l, {text}, liquid", "en").analysis is None


@pytest.mark.parametrize(
    ("text", "problem"),
    [("npk 20 10 -20", "negative"), ("N 20 P -10 K 5", "negative"),
     ("inf 20 20", "not_a_number"), ("N 1e999 P 20 K 5", "not_a_number")],
)  # fmt: skip
def test_figures_that_cannot_be_are_a_problem(text: str, problem: str) -> None:
    reading = read(f"5 l, {text} powder", "en")
    assert reading.analysis is None
    assert [p.code for p in reading.problems] == [problem]


@pytest.mark.parametrize(("text", "shown"), [
    ("N 20 P 5O K 20", "5O"), ("nitrogen 7 %, phosphate 1,500 %, potash 6 %", "1,500"),
])  # fmt: skip
def test_a_figure_that_can_be_read_in_two_ways_is_asked_about(text: str, shown: str) -> None:
    reading = read(f"5 l, {text}", "en")
    assert reading.analysis is None
    assert [(c.code, c.texts) for c in reading.conflicts] == [("ambiguous_number", (shown,))]


def test_a_number_beyond_all_labels_is_read_as_it_stands() -> None:
    assert read(f"5 l, {'8' * 104} 19 20", "en").analysis == (
        pytest.approx(8.89e103, rel=1e-3),
        19,
        20,
    )
