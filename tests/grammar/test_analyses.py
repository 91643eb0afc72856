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


@pytest.mark.parametrize(
    ("language", "text", "shown"),
    [
        ("en", "3-1-2 ratio powder, 2 l", "3-1-2"),
        ("en", "powder with an npk ratio of 3:1:2, 2 l", "3:1:2"),
        ("en", "its a 3:1:2 type feed, powder, 2 l", "3:1:2"),
        ("de", "Verhältnis 3-1-2 Pulver, 2 l", "3-1-2"),
        ("es", "proporción 3-1-2 polvo, 2 l", "3-1-2"),
        ("pl", "proporcja 3-1-2 proszek, 2 l", "3-1-2"),
    ],
)
def test_how_three_stand_to_each_other_is_no_analysis(language: str, text: str, shown: str) -> None:
    """A 24-8-16 has that ratio: taken as percentages it would be dosed eight times too strong."""
    reading = read(text, language)
    assert reading.analysis is None
    assert shown in [u.text for u in reading.unknown]


@pytest.mark.parametrize(
    ("text", "analysis"),
    [("npk ratio 20-20-20 powder", (20, 20, 20)), ("4-3-5 liquid dilution ratio 1:200", (4, 3, 5)),
     ("3-1-2 liquid", (3, 1, 2))],
)  # fmt: skip
def test_figures_of_a_label_are_one_whatever_they_are_called(
    text: str, analysis: tuple[float, float, float]
) -> None:
    assert read(f"{text}, 2 l", "en").analysis == analysis


@pytest.mark.parametrize(
    ("language", "text", "analysis"),
    [
        ("es", "triple 15 en polvo, 8 l", (15, 15, 15)),
        ("en", "2 l triple 20 powder", (20, 20, 20)),
        ("es", "2 l al triple, 20-10-20 polvo", (20, 10, 20)),
    ],
)  # fmt: skip
def test_three_times_the_same_is_called_triple(
    language: str, text: str, analysis: tuple[float, ...]
) -> None:
    reading = read(text, language)
    assert reading.analysis == analysis
    assert reading.strength == (3 if "al triple" in text else None)


@pytest.mark.parametrize(
    ("language", "text"),
    [
        ("en", "15-5-15 powder with 4% ca and 1% mg, 5 l"),
        ("de", "15-5-15 Pulver mit 4% ca und 1% mg, 5 l"),
        ("es", "15-5-15 polvo con 4% ca y 1% mg, 5 l"),
        ("pl", "15-5-15 proszek, 4% ca i 1% mg, 5 l"),
    ],
)
def test_a_percentage_of_an_element_in_small_letters(language: str, text: str) -> None:
    reading = read(text, language)
    assert (reading.extras, reading.strength) == ({"Ca": 4, "Mg": 1}, None)


def test_about_a_volume_is_no_calcium() -> None:
    reading = read("20-20-20 Pulver 25% ca. 3 l", "de")
    assert (reading.extras, reading.strength, reading.volume_l) == ({}, 0.25, 3)
