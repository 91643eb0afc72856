"""The sums of concentration, there and back; published figures are in tests/published."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.dosing.concentration import element_mg_l, liquid_ml, mass_g

SOME = st.floats(0.01, 1000)


@given(n_mg_l=SOME, volume_l=SOME, n_percent=st.floats(0.01, 60))
def test_what_is_weighed_brings_the_nitrogen_wanted(
    n_mg_l: float, volume_l: float, n_percent: float
) -> None:
    grams = mass_g(n_mg_l, volume_l, n_percent)
    assert element_mg_l(grams / volume_l, n_percent) == pytest.approx(n_mg_l)


@pytest.mark.parametrize("n_percent", [0.0, -1.0])
def test_nitrogen_cannot_be_brought_by_a_product_without(n_percent: float) -> None:
    with pytest.raises(ValueError, match="without nitrogen"):
        mass_g(100.0, 1.0, n_percent)


def test_a_liquid_takes_less_room_the_denser_it_is() -> None:
    assert liquid_ml(12.0, 1.2) == pytest.approx(10.0)
