"""The error of one weighing, and the stock solution that avoids it."""

from __future__ import annotations

from math import sqrt

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.dosing.measuring import larger_batch_l, relative_error, stock_for

AMOUNTS = st.floats(1e-3, 2.0)
STEPS = st.sampled_from([0.01, 0.1, 1.0])
UNITS = st.sampled_from(["g", "ml"])


@pytest.mark.parametrize(
    ("amount", "step", "error"),
    # 2 x sqrt(2) x d / sqrt(12) over m: JCGM 100:2008, 4.3.7
    [(1.0, 0.1, 0.0816), (0.5, 0.1, 0.163), (8.2, 1.0, 0.0996), (1.0, 0.01, 0.00816)],
)
def test_one_weighing_is_off_by_0_82_of_a_step(amount: float, step: float, error: float) -> None:
    assert relative_error(amount, step) == pytest.approx(error, rel=0.005)
    assert relative_error(amount, step) == pytest.approx(2 * sqrt(2 / 12) * step / amount)


@given(amount=AMOUNTS, step=STEPS, unit=UNITS)
def test_a_stock_brings_exactly_the_amount(amount: float, step: float, unit: str) -> None:
    stock = stock_for(amount, unit, step)
    if stock is not None:
        assert stock.product_amount * stock.use_ml / stock.in_ml == pytest.approx(amount)
        assert stock.unit == unit


@given(amount=AMOUNTS, step=STEPS, unit=UNITS)
def test_a_stock_measures_within_five_per_cent(amount: float, step: float, unit: str) -> None:
    stock = stock_for(amount, unit, step)
    if stock is not None:
        weighing = relative_error(stock.product_amount, step)
        taking = relative_error(stock.use_ml, 0.1)
        assert sqrt(weighing**2 + taking**2) <= 0.05
        assert stock.relative_error == pytest.approx(sqrt(weighing**2 + taking**2))


@given(amount=AMOUNTS, step=STEPS, unit=UNITS)
def test_a_stock_is_never_over_50_g_in_a_litre(amount: float, step: float, unit: str) -> None:
    stock = stock_for(amount, unit, step)
    if stock is not None:
        assert stock.product_amount / stock.in_ml * 1000 <= 50.0
        assert stock.use_ml <= stock.in_ml / 2


@pytest.mark.parametrize(
    ("amount", "step"),
    [(1e-6, 0.1), (30.0, 1.0), (0.004, 1.0)],
)
def test_no_stock_where_no_bottle_measures_well(amount: float, step: float) -> None:
    assert stock_for(amount, "g", step) is None


@pytest.mark.parametrize("amount", [0.05, 0.1, 0.2, 0.46875, 0.8])
def test_usual_small_amounts_have_a_stock(amount: float) -> None:
    stock = stock_for(amount, "g", 0.1)
    assert stock is not None
    assert stock.keeps_days > 0


@given(amount=st.floats(1e-3, 0.8), volume_l=st.floats(0.1, 20), step=STEPS)
def test_a_larger_batch_is_weighed_within_ten_per_cent(
    amount: float, volume_l: float, step: float
) -> None:
    batch_l = larger_batch_l(volume_l, relative_error(amount, step))
    assert relative_error(amount * batch_l / volume_l, step) == pytest.approx(0.10)
