"""Which feed of a shelf suits, and what a label lacks."""

from __future__ import annotations

import random

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.dosing.choice import Candidate, Choice, choose
from bot.dosing.completeness import MACRO, MICRO, lacking

BALANCED = Candidate("balanced", (20, 20, 20))
LEAFY = Candidate("leafy", (30, 10, 10))
BLOOM = Candidate("bloom", (6, 10, 30))
CALCIUM = Candidate("calcium", (13, 3, 15), {"Ca": 8, "Mg": 2}, n_nitrate=11.5, n_ammonium=1.5)
UREA = Candidate("urea", (30, 10, 10), n_nitrate=3, n_urea=22)
PK = Candidate("pk", (0, 50, 30))


def best(*shelf: Candidate, **need: str | None) -> Choice:
    plain = {"growth": None, "medium": None, "water_kind": None, "season": None}
    return choose(shelf, **{**plain, **need})


@pytest.mark.parametrize(
    ("shelf", "need", "key"),
    [
        # common practice, no source: nitrogen for growth, balanced in doubt
        ((BALANCED, LEAFY), {"growth": "growing"}, "leafy"),
        ((BALANCED, BLOOM), {}, "balanced"),
        # at least 200 mg/l K for flowers: Wang, HortScience 42 (2007)
        ((BALANCED, BLOOM), {"growth": "flowering"}, "bloom"),
        # rain and reverse osmosis bring no calcium or magnesium: common practice, no source
        ((BALANCED, CALCIUM), {"water_kind": "rain"}, "calcium"),
        ((LEAFY, CALCIUM), {"water_kind": "reverse_osmosis", "growth": "growing"}, "calcium"),
        # nitrate at least half of the nitrogen in bark and sphagnum: Wang
        ((UREA, CALCIUM), {"medium": "bark"}, "calcium"),
        ((BALANCED, PK), {"growth": "flowering"}, "balanced"),
    ],
)
def test_the_best_of_a_shelf(shelf: tuple[Candidate, ...], need: dict[str, str], key: str) -> None:
    found = best(*shelf, **need)
    assert found.best == key
    assert all(reason.source for ranked in found.ranked for reason in ranked.reasons)


def test_an_empty_shelf_has_no_best() -> None:
    assert best() == Choice(None, (), False)


def test_twins_are_close() -> None:
    assert best(BALANCED, Candidate("other", (18, 18, 18))).close


SHELF = (BALANCED, LEAFY, BLOOM, CALCIUM, UREA, PK)


@given(
    st.permutations(SHELF),
    st.sampled_from([None, "growing", "flowering", "resting"]),
    st.sampled_from([None, "bark", "sphagnum"]),
    st.sampled_from([None, "rain", "tap"]),
)
def test_the_order_on_the_shelf_does_not_matter(
    shelf: list[Candidate], growth: str | None, medium: str | None, water: str | None
) -> None:
    mixed = best(*shelf, growth=growth, medium=medium, water_kind=water)
    assert mixed == best(*SHELF, growth=growth, medium=medium, water_kind=water)
    assert sorted(r.key for r in mixed.ranked) == sorted(c.key for c in SHELF)


def test_a_bare_label_lacks_the_secondary_and_micro_elements() -> None:
    # essential elements: Marschner 2012, from memory
    found = lacking((20, 20, 20), {}, trace_elements=False)
    assert found.macro == ("Ca", "Mg", "S")
    assert found.micro == MICRO
    assert not found.complete


def test_trace_elements_without_figures_are_unknown_not_lacking() -> None:
    found = lacking((20, 20, 20), {}, trace_elements=True)
    assert found.micro == ()
    assert found.unknown_micro


def test_a_label_with_everything_is_complete() -> None:
    rest = dict.fromkeys((*MACRO[3:], *MICRO), 0.1)
    assert lacking((5, 5, 5), rest, trace_elements=False).complete


@given(st.sets(st.sampled_from((*MACRO[3:], *MICRO))))
def test_an_element_is_shown_or_lacking(shown: set[str]) -> None:
    order = sorted(shown)
    random.Random(1).shuffle(order)
    found = lacking((1, 1, 1), dict.fromkeys(order, 1.0), trace_elements=False)
    assert shown | set(found.macro) | set(found.micro) == {*MACRO[3:], *MICRO}
    assert not shown & {*found.macro, *found.micro}
