"""The error of one weighing, and the stock solution that avoids it."""

from __future__ import annotations

from math import sqrt

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.dosing.measuring import (
    larger_batch_l,
    level_teaspoons,
    measured,
    relative_error,
    spoon_stock,
    stock_for,
)

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


@pytest.mark.parametrize(
    ("amount", "step", "stock"),
    # by hand: at least twice the amount, weighed within 5 % (16.3 steps or more), at most 50 g/L,
    # 5 to 100 ml at a time; of all that do, the least product in the smallest bottle
    [
        (0.5, 0.01, (1.0, 100.0, 50.0)),
        (0.05, 0.01, (1.0, 100.0, 5.0)),
        (0.048, 0.01, (1.0, 200.0, 9.6)),  # 4.8 ml of 100 would be too little to measure
        (0.022, 0.01, (1.0, 250.0, 5.5)),
        (0.011, 0.01, (1.0, 500.0, 5.5)),
        (0.0055, 0.01, (1.0, 1000.0, 5.5)),
        (0.9, 0.01, (2.0, 100.0, 45.0)),
        (1.1, 0.01, (2.5, 100.0, 44.0)),
        (2.0, 0.01, (5.0, 100.0, 40.0)),  # 50 g/L, the strongest
        (4.0, 0.01, (10.0, 200.0, 80.0)),
        (4.9, 0.01, (10.0, 200.0, 98.0)),
        (5.0, 0.01, (10.0, 200.0, 100.0)),  # as much as is taken at a time
        (5.2, 0.01, None),
        (0.46875, 0.1, (2.0, 100.0, 23.4375)),  # 1 g would be 8.2 % off, 2 g are 4.1 %
        (0.5, 1.0, (20.0, 500.0, 12.5)),
        (4.5, 1.0, (25.0, 500.0, 90.0)),
        (3.0, 2.0, (50.0, 1000.0, 60.0)),
    ],
)
def test_the_smallest_easy_stock_is_proposed(
    amount: float, step: float, stock: tuple[float, float, float] | None
) -> None:
    found = stock_for(amount, "g", step)
    told = found and (found.product_amount, found.in_ml, found.use_ml)
    assert told == (pytest.approx(stock) if stock else None)


@pytest.mark.parametrize(
    ("amount", "unit", "step", "used", "error"),
    # 0.8165 of a step over the amount; a step of 0.1 where the tool is not known (measures.toml)
    [
        (1.0, "g", None, 0.1, 0.08165),
        (1.0, "ml", None, 0.1, 0.08165),
        (1.0, "g", 0.01, 0.01, 0.008165),
        (0.5, "g", 0.1, 0.1, 0.1633),
        (0.5, "ml", 0.2, 0.2, 0.3266),
    ],
)
def test_what_can_be_measured_at_once_needs_no_stock(
    amount: float, unit: str, step: float | None, used: float, error: float
) -> None:
    found = measured(amount, unit, 2.0, step=step)
    assert (found.amount, found.unit, found.measuring_step) == (amount, unit, used)
    assert found.relative_error == pytest.approx(error, rel=1e-3)
    if error <= 0.10:
        assert (found.stock, found.batch_l) == (None, None)
    else:
        assert found.stock == stock_for(amount, unit, used)
        assert found.stock is not None
        # so many times the can as the error is over 10 %
        assert found.batch_l == pytest.approx(2.0 * error / 0.10, rel=1e-3)


def test_what_does_not_keep_gets_no_stock_but_a_larger_batch() -> None:
    found = measured(0.5, "g", 2.0, step=0.1, stocks=False)
    assert found.stock is None
    assert found.batch_l == pytest.approx(3.266, abs=1e-3)


def test_a_scale_is_not_taken_for_a_syringe(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr("bot.dosing.measuring.SCALE_STEP_G", 0.5)
    assert measured(1.0, "g", 1.0).measuring_step == 0.5
    assert measured(1.0, "ml", 1.0).measuring_step == 0.1


@pytest.mark.parametrize(
    ("amount_g", "spoons"),
    # a level teaspoon of powder is 6 g, roughly (measures.toml); to the nearest eighth
    [(6.0, 1.0), (3.0, 0.5), (0.75, 0.125), (1.1, 0.125), (1.2, 0.25), (0.3, None), (14.0, 2.375)],
)
def test_spoons_as_a_cross_check_come_in_eighths(amount_g: float, spoons: float | None) -> None:
    assert level_teaspoons(amount_g) == spoons


@pytest.mark.parametrize(
    ("teaspoons", "spoons", "in_ml", "use_ml"),
    # a quarter of 6 g in 100 ml is 15 g/l: below the strongest stock of 50 g/l (measures.toml)
    [(0.0165, 0.25, 100.0, 6.6), (0.0625, 0.25, 100.0, 25.0), (0.005, 0.25, 250.0, 5.0)],
)
def test_less_than_a_spoon_holds_goes_through_a_stock(
    teaspoons: float, spoons: float, in_ml: float, use_ml: float
) -> None:
    found = spoon_stock(teaspoons)
    assert found is not None
    assert (found.teaspoons, found.in_ml) == (spoons, in_ml)
    assert found.use_ml == pytest.approx(use_ml)


@given(st.floats(1e-4, 0.124))
def test_a_stock_by_spoons_holds_what_was_asked_for(teaspoons: float) -> None:
    found = spoon_stock(teaspoons)
    if found is None:
        assert teaspoons < 0.25 * 5 / 1000  # no bottle is large enough for so little
    else:
        assert found.teaspoons * found.use_ml / found.in_ml == pytest.approx(teaspoons)
        assert 5 <= found.use_ml <= 100


def test_what_a_spoon_holds_needs_no_stock() -> None:
    assert spoon_stock(0.125) is None
    assert spoon_stock(1.0) is None
