"""Which essential elements a label does not show."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.dosing.completeness import MACRO, MICRO, lacking

#: Macro- and micronutrients after Marschner, from memory: without C, H, O, and without Cl and Ni,
#: which labels do not print.
SIX_AND_SIX = ({"N", "P", "K", "Ca", "Mg", "S"}, {"Fe", "Mn", "Zn", "Cu", "B", "Mo"})
ALL = dict.fromkeys((*MACRO[3:], *MICRO), 0.1)


def test_the_essential_elements_are_those_of_the_textbooks() -> None:
    assert (set(MACRO), set(MICRO)) == SIX_AND_SIX


def test_a_label_that_shows_all_is_complete() -> None:
    found = lacking((0.5, 0.5, 0.5), ALL, trace_elements=False)
    assert (found.macro, found.micro, found.unknown_micro) == ((), (), False)
    assert found.complete


@pytest.mark.parametrize("element", [*MACRO, *MICRO])
@pytest.mark.parametrize("shown", [True, False])
def test_an_element_that_is_0_or_not_shown_is_lacking(element: str, shown: bool) -> None:
    place = "NPK".find(element)
    n, p, k = (0.0 if i == place else 10.0 for i in range(3))
    extras = {e: v for e, v in ALL.items() if e != element}
    if shown and place < 0:
        extras[element] = 0.0
    found = lacking((n, p, k), extras, trace_elements=False)
    assert (*found.macro, *found.micro) == (element,)
    assert not found.complete


def test_trace_elements_named_without_figures_leave_open_which() -> None:
    found = lacking((20, 10, 20), {"Ca": 3, "Mg": 1, "S": 2}, trace_elements=True)
    assert (found.macro, found.micro, found.unknown_micro) == ((), (), True)
    assert found.complete
    every = lacking((20, 10, 20), ALL, trace_elements=True)
    assert not every.unknown_micro


@given(st.dictionaries(st.sampled_from([*MACRO[3:], *MICRO]), st.floats(0, 5)), st.booleans())
def test_no_element_is_both_shown_and_lacking(extras: dict[str, float], traces: bool) -> None:
    found = lacking((1, 0, 0), extras, trace_elements=traces)
    missing = {*found.macro, *found.micro}
    assert {"P", "K"} <= missing
    assert not missing & {"N", *(e for e, v in extras.items() if v > 0)}
