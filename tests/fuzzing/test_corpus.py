"""What the fuzzer reached, and what it broke: held to the same laws at every run."""

from __future__ import annotations

import importlib

import pytest

from tests.fuzzing.cases import Case, kept
from tests.fuzzing.laws import Broken, hold, of_reading
from tests.fuzzing.reading import check as read_it

TARGETS = ("reading", "answering", "callbacks", "importing")
#: Each broke something once: what it was, the target, the mode and the text.
FOUND = {
    "a figure below nothing in an analysis": ("answering", 0, "5 l, npk 20 10 -20 powder"),
    "a number too large beside two others": ("reading", 4, f"3 l, {'8' * 50} 30 {'8' * 60}"),
    "a letter for a nought among N, P and K": ("reading", 2, "N 20 P 5O K 20"),
    "a backquote for an apostrophe": ("reading", 2, "romi`rosimensy"),
    "a number beyond what is written out": ("answering", 0, f"5 l {'9' * 35}-20-20 powder"),
    "more water than there are names for": ("answering", 5, "9e40 l 20-20-20"),
    "a plant on record with one that is not": (
        "answering", 5, "3 phals and a miltoniopsis, 4 l, 20-20-20 powder, half strength",
    ),
    "a button without its parts": ("callbacks", 0, "c\nyes"),
    "a button of no time": ("callbacks", 0, "c1.0.x1\nyes"),
    "a button of a time beyond the calendar": ("callbacks", 0, f"c1.0.{'9' * 40}\nyes"),
    "a page of no number": ("callbacks", 0, "p2.1/1.abc\nyes"),
    "a scale finer than an atom": ("importing", 26, "settings.scale_step_g=1e-9"),
    "a label of next to nothing": ("importing", 26, "products.0.label_per_litre=1e-300"),
    "a feed without nitrogen and without a rate": (
        "importing", 26,
        "products.0.n=1e-5\nproducts.0.label_per_litre=null\nproducts.0.label_unit=null",
    ),
    "a can of a drop": ("importing", 26, "settings.can_l=1e-9"),
}  # fmt: skip


@pytest.mark.parametrize("name", TARGETS)
def test_what_was_reached_still_keeps_the_laws(name: str) -> None:
    target = importlib.import_module(f"tests.fuzzing.{name}").TARGET
    number = 0
    for number, case in enumerate(kept(name), 1):
        try:
            target.check(case)
        except Exception as error:
            raise AssertionError(f"{name} {number}: {case!r}") from error
    assert number > 20


@pytest.mark.parametrize("broke", FOUND)
def test_what_broke_once_is_whole(broke: str) -> None:
    name, mode, text = FOUND[broke]
    importlib.import_module(f"tests.fuzzing.{name}").TARGET.check(Case(mode, text))


def test_bytes_and_cases_are_the_same() -> None:
    for case in (Case(0, ""), Case(255, "ä\ud800\n"), Case(7, "5 l")):
        assert Case.of(case.data) == case
    assert Case.of(b"\x01\xff5 l") == Case(1, "\ufffd5 l")


def test_a_broken_law_is_noticed() -> None:
    """The laws can fail."""
    import dataclasses

    from grammar import ReadAs, read

    good = read("5 l", "en")
    of_reading(good, "5 l")
    for changed in (
        {"volume_l": -1.0},
        {"strength": float("nan")},
        {"read_as": (ReadAs("x", "y"),)},
    ):
        with pytest.raises(Broken):
            of_reading(dataclasses.replace(good, **changed), "5 l")
    with pytest.raises(Broken):
        hold("never", False)
    read_it(Case(2, "5 l"))
