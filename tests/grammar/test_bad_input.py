"""Input no dose can start from: a problem is named, at once, and nothing raises."""

from __future__ import annotations

import pytest

from grammar import read

PROBLEMS = [
    ("-5 l 20-20-20 powder", "negative"), ("minus 5 l, 20-20-20", "negative"),
    ("- 5 l, 20-20-20", "negative"), ("20-20-20 -5 l", "negative"), ("−3 l", "negative"),
    ("-0.5 litres", "negative"), ("1/0 l", "division_by_zero"), ("1e999 l", "not_a_number"),
    ("infinite litres", "not_a_number"), ("∞ l", "not_a_number"), ("nan l", "not_a_number"),
    ("2.5.3 l", "not_a_number"), ("\u202e51 l\u202c 20-20-20 powder", "hidden_characters"),
    ("\u206651 l\u2069 20-20-20", "hidden_characters"), ("a" * 100_000, "too_long"),
]  # fmt: skip


@pytest.mark.parametrize(("text", "code"), PROBLEMS, ids=[t[:12] for t, _ in PROBLEMS])
def test_problem_is_named_and_no_volume_taken(text: str, code: str) -> None:
    reading = read(text, "en")
    assert code in [p.code for p in reading.problems]
    assert reading.volume_l is None


NOTHING = ["", " ", "\n", "\x00", "🌱", "<b></b>", "()", "----", "?!", "%", "'", '"']


@pytest.mark.parametrize("text", NOTHING)
def test_empty_message_says_nothing(text: str) -> None:
    assert not read(text, "en").says_something


def test_dashes_of_a_list_are_no_signs() -> None:
    reading = read("- 5 l\n- 20-20-20 powder\n- half", "en")
    assert (reading.volume_l, reading.strength) == (5, 0.5)


@pytest.mark.parametrize("hidden", ["\u200b", "\x00", "\x07", "\ufeff"])
def test_hidden_character_between_digits_is_a_problem(hidden: str) -> None:
    assert [p.code for p in read(f"1{hidden}0 l", "en").problems] == ["hidden_characters"]


@pytest.mark.parametrize("text", ["\ufeff5 l", "5\u200b l", "5 l\x00"])
def test_hidden_character_elsewhere_does_not_matter(text: str) -> None:
    assert read(text, "en").volume_l == 5


LONG = ["sphagnim ", "hardnes ", "phalenopsys wintr powdre ", "a ", "5 ", "half ", "2 l ", "per l ",
        "1 g per ", "- 5 ", "1-", "1 250 ", "o5", "(", "every ", "not ", "½ "]  # fmt: skip


@pytest.mark.parametrize("piece", LONG)
def test_longest_message_of_one_kind_is_read(piece: str) -> None:
    text = (piece * 2000)[:2000]  # how long it takes: tests/benchmarks/bench_reading.py
    assert read(text, "en").text == text


def test_hundred_kilobytes_are_not_read_at_all() -> None:
    reading = read("2 l " * 25_000, "en")
    assert [p.code for p in reading.problems] == ["too_long"]
    assert reading.volume_l is None


def test_unknown_language_is_an_error() -> None:
    with pytest.raises(FileNotFoundError):
        read("2 l", "xx")


@pytest.mark.parametrize("before", ["", "größe, ", "\n"])
def test_an_exponent_is_no_further_digits(before: str) -> None:
    reading = read(f"{before}10^3 ml, 20-20-20 powder", "en")
    assert reading.volume_l is None
    assert [c.code for c in reading.conflicts] == ["ambiguous_number"]


@pytest.mark.parametrize("behind", ["", "\n", " für größe"])
def test_a_backquote_is_an_apostrophe_on_every_line(behind: str) -> None:
    words = [read(f"venus{mark} slipper{behind}", "en").genera for mark in ("'", "`", "’")]
    assert words == [("Paphiopedilum",)] * 3
