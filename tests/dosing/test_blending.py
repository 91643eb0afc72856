"""Blends of feeds: the optimum against scipy, targets, limits, and what a mix misses."""

from __future__ import annotations

import random
from collections.abc import Sequence
from itertools import pairwise

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.optimize import minimize, nnls  # type: ignore[import-untyped]

from bot.almanac.recipes import blend_targets, toxic_limits
from bot.dosing.blending import LISTED, NITRATE, Blend, Goal, blend, goal, least_squares
from bot.dosing.conductivity import NitrogenForms
from bot.dosing.stock import Product

NITRATE_ONLY = NitrogenForms(1, 0, 0)
CALCIUM_NITRATE = Product.of_label(
    "calcium nitrate", (15.5, 0, 0), {"Ca": 19}, NitrogenForms(0.93, 0.07, 0)
)
EPSOM = Product.of_label("Epsom salt", (0, 0, 0), {"Mg": 9.86, "S": 13.0})
MKP = Product.of_label("mono-potassium phosphate", (0, 52, 34), {"S": 0})
POTASSIUM_NITRATE = Product.of_label("potassium nitrate", (13.8, 0, 46.5), {}, NITRATE_ONLY)
COMPLETE = Product.of_label(
    "20-20-20",
    (20, 20, 20),
    {"Fe": 0.1, "Mn": 0.05, "Zn": 0.05, "Cu": 0.05, "B": 0.02, "Mo": 0.0005},
    NitrogenForms(0.28, 0.2, 0.52),
)
SILENT = Product.of_label("silent", (20, 10, 20), {})
SILICATE = Product.of_label("potassium silicate", (0, 0, 14), {"Si": 12})
SHELF = [COMPLETE, CALCIUM_NITRATE, EPSOM, POTASSIUM_NITRATE, MKP]

Matrix = np.ndarray[tuple[int, int], np.dtype[np.float64]]
Vector = np.ndarray[tuple[int], np.dtype[np.float64]]


def missed(found: Blend) -> dict[str, float]:
    return {miss.nutrient: miss.relative for miss in found.misses}


# ------------------------------------------------------------------------------- against scipy


def problem(seed: int) -> tuple[Matrix, Vector]:
    """Rows by nutrient, columns by product, many of them empty or nearly alike."""
    rng = np.random.default_rng(seed)
    rows, products = int(rng.integers(1, 13)), int(rng.integers(1, 7))
    matrix = rng.random((rows, products)) * (rng.random((rows, products)) < 0.6)
    wanted = rng.normal(size=rows) + rng.random()
    if seed % 5 == 0 and products > 1:
        matrix[:, -1] = matrix[:, 0] * rng.random() + 1e-6 * rng.random(rows)
    return matrix, wanted


@pytest.mark.parametrize("block", range(6))
def test_the_mix_is_scipy_s_on_hundreds_of_random_problems(block: int) -> None:
    # scipy.optimize.nnls, after Lawson and Hanson 1974
    for seed in range(100 * block, 100 * (block + 1)):
        matrix, wanted = problem(seed)
        reference, rest = nnls(matrix, wanted)
        ours = np.array(least_squares(matrix.T.tolist(), wanted.tolist()))
        assert min(ours) >= 0
        assert np.linalg.norm(matrix @ ours - wanted) == pytest.approx(rest, abs=1e-9)
        if np.linalg.matrix_rank(matrix, tol=1e-3) == matrix.shape[1]:
            assert ours == pytest.approx(reference, abs=1e-6)


def under_caps(
    matrix: Matrix, wanted: Vector, caps: Sequence[tuple[Vector, float]], start: Vector
) -> float:
    """The least sum of squares that scipy finds under the caps."""
    result = minimize(
        lambda x: float(((matrix @ x - wanted) ** 2).sum()),
        start,
        jac=lambda x: 2 * matrix.T @ (matrix @ x - wanted),
        method="SLSQP",
        bounds=[(0, None)] * matrix.shape[1],
        constraints=[
            {"type": "ineq", "fun": lambda x, r=row, m=most: m - r @ x, "jac": lambda x, r=row: -r}
            for row, most in caps
        ],
        options={"ftol": 1e-14, "maxiter": 500},
    )
    return float(result.fun)


@pytest.mark.parametrize("count", [2, 3])
@pytest.mark.parametrize("block", range(3))
def test_under_caps_the_mix_is_as_near_as_scipy_s(block: int, count: int) -> None:
    held = 0
    for seed in range(50 * block, 50 * (block + 1)):
        rng = np.random.default_rng(seed)
        matrix = rng.random((12, 6)) * (rng.random((12, 6)) < 0.6)
        wanted = 3 * rng.random(12)
        free, _ = nnls(matrix, wanted)
        rows = [rng.random(6) * (rng.random(6) < 0.7) for _ in range(count)]
        caps = [(row, max(1e-3, float(row @ free) * rng.uniform(0.2, 1.2))) for row in rows]
        ours = np.array(
            least_squares(matrix.T.tolist(), wanted.tolist(), [(r.tolist(), m) for r, m in caps])
        )
        squares = float(((matrix @ ours - wanted) ** 2).sum())
        assert min(ours) >= 0
        assert all(row @ ours <= most * (1 + 1e-12) for row, most in caps)
        assert squares <= under_caps(matrix, wanted, caps, 0.1 * free) * (1 + 1e-5) + 1e-9
        held += any(row @ free > most for row, most in caps)
    assert held > 30  # most of these problems do meet a cap


def test_alike_products_do_not_upset_the_mix() -> None:
    column = [1.0, 2.0, 0.5]
    amounts = least_squares([column, column, [2 * v for v in column]], [2.0, 4.0, 1.0])
    brought = amounts[0] + amounts[1] + 2 * amounts[2]
    assert brought == pytest.approx(2.0)


def test_an_empty_column_and_a_shut_cap_get_nothing() -> None:
    amounts = least_squares([[0.0, 0.0], [1.0, 0.0], [0.0, 1.0]], [1.0, 1.0], [([0, 1, 0], 0.0)])
    assert amounts == pytest.approx([0, 0, 1])


# ------------------------------------------------------------------------------------- targets


@pytest.mark.parametrize(
    ("name", "nutrient", "mg_l"),
    # in mg/L at 200 mg/L N, from the trials: Wang, HortScience 43 (2008): 75 % nitrate; Wang,
    # HortScience 42 (2007): Ca 100, Mg 50, K at least 200 (Tsai and Wang); 20-5-19 with 22 mg/L P
    # best in bark; ASHS conference 2009, paper 2001: 1.4 mmol/L P and up to 6.4 mmol/L K in flower
    [
        ("growth", "nitrate", 150), ("growth", "P", 22), ("growth", "K", 200),
        ("growth", "Ca", 100), ("growth", "Mg", 50),
        ("bloom", "nitrate", 150), ("bloom", "P", 1.4 * 30.974), ("bloom", "K", 6.4 * 39.098),
        ("bloom", "Ca", 100), ("bloom", "Mg", 50),
    ],
)  # fmt: skip
def test_targets_are_those_of_the_trials(name: str, nutrient: str, mg_l: float) -> None:
    assert goal(name, 200).mg_l[nutrient] == pytest.approx(mg_l, rel=0.02)


def test_every_ratio_and_limit_names_its_source() -> None:
    for wanted in blend_targets().values():
        assert all(w.source and w.weight > 0 for w in wanted.values())
    assert all(limit.source and limit.unit == "mg/L" for limit in toxic_limits().values())
    # FAO 29: copper 0.20 mg/L, boron without restriction below 0.7 mg/L
    assert toxic_limits()["Cu"].value == 0.2
    assert toxic_limits()["B"].value <= 0.7


def test_bloom_asks_for_more_potassium_and_no_less_nitrogen() -> None:
    growth, bloom = goal("growth", 100).mg_l, goal("bloom", 100).mg_l
    assert bloom["K"] > growth["K"]
    assert bloom["N"] == growth["N"] == 100
    assert bloom["P"] < 0.44 * bloom["N"]  # 44 mg/L P at 100 mg/L N did as well as 398


# -------------------------------------------------------------------------------------- blends


@pytest.mark.parametrize("name", ["growth", "bloom"])
def test_single_salts_and_a_complete_powder_reach_the_target(name: str) -> None:
    found = blend(SHELF, goal(name, 125))
    assert found.reached
    assert found.left_out == ()
    assert found.capped == ()
    assert set(missed(found)) == {"N", "nitrate", "P", "K", "Ca", "Mg"}
    assert abs(missed(found)["N"]) < 0.03


def test_one_powder_alone_misses_calcium_and_says_how_much() -> None:
    powder = Product("20-20-20", {**COMPLETE.elements, "Cu": 0}, COMPLETE.nitrogen)
    found = blend([powder], goal("growth", 125))
    assert not found.reached
    assert missed(found)["Ca"] == missed(found)["Mg"] == -1
    assert found.misses[0].nutrient in ("Ca", "Mg")
    counts = [miss.counts for miss in found.misses]
    assert counts == sorted(counts, reverse=True)


def test_the_amounts_bring_what_is_said() -> None:
    found = blend(SHELF, goal("growth", 125))
    by_key = {product.key: product for product in SHELF}
    for miss in found.misses:
        brought = sum(10 * g * by_key[k].percent(miss.nutrient) for k, g in found.g_l.items())
        assert brought == pytest.approx(miss.brought_mg_l)


@pytest.mark.parametrize("seed", range(40))
def test_no_small_change_of_the_mix_comes_nearer(seed: int) -> None:
    rng = random.Random(seed)
    target = goal(rng.choice(["growth", "bloom"]), rng.uniform(20, 70))
    products = rng.sample(SHELF, 4)
    found = blend(products, target)

    def distance(amounts: dict[str, float]) -> float:
        total = 0.0
        for nutrient, wanted in target.mg_l.items():
            brought = sum(10 * amounts[p.key] * p.percent(nutrient) for p in products)
            total += (target.weights[nutrient] * (brought / wanted - 1)) ** 2
        return total

    best = {product.key: found.g_l.get(product.key, 0.0) for product in products}
    assert found.capped == ()
    for key in best:
        for change in (-1e-3, 1e-3):
            near = {**best, key: max(0.0, best[key] + change)}
            assert distance(near) >= distance(best) - 1e-12


def test_what_the_water_brings_is_not_given_again() -> None:
    soft = blend(SHELF, goal("growth", 100))
    hard = blend(SHELF, goal("growth", 100), water_mg_l={"Ca": 50.0, "Mg": 10.0})
    assert hard.g_l["calcium nitrate"] < soft.g_l["calcium nitrate"]
    assert hard.g_l["Epsom salt"] < soft.g_l["Epsom salt"]
    very_hard = blend(SHELF, goal("growth", 100), water_mg_l={"Ca": 150.0})
    assert "calcium nitrate" not in very_hard.g_l
    assert missed(very_hard)["Ca"] == pytest.approx(2.0)


def test_copper_and_boron_are_held_under_their_limits_and_said() -> None:
    found = blend([COMPLETE], goal("growth", 200))
    assert found.capped == ("Cu",)
    assert found.g_l["20-20-20"] == pytest.approx(0.4, rel=1e-6)  # 0.2 mg/L of 0.05 %
    assert found.listed_mg_l["Cu"] == pytest.approx(0.2, rel=1e-6)
    with_micro = Product("micro elements", {"B": 5.0, "Fe": 5.0, "S": 3.0})
    iron = blend([with_micro, SHELF[3]], Goal({"N": 100.0, "Fe": 3.0}))
    assert iron.capped == ("B",)
    assert iron.listed_mg_l["B"] == pytest.approx(toxic_limits()["B"].value, rel=1e-6)


@given(
    st.lists(st.floats(0, 0.3), min_size=5, max_size=5),
    st.lists(st.floats(0, 0.2), min_size=5, max_size=5),
    st.floats(10, 300),
    st.floats(0, 0.19),
)
def test_no_blend_is_ever_over_a_toxic_limit(
    boron: list[float], copper: list[float], n_mg_l: float, in_water: float
) -> None:
    products = [
        Product(p.key, {**p.elements, "B": b, "Cu": c}, p.nitrogen)
        for p, b, c in zip(SHELF, boron, copper, strict=True)
    ]
    found = blend(products, goal("growth", n_mg_l), water_mg_l={"Cu": in_water})
    for symbol, limit in toxic_limits().items():
        assert found.listed_mg_l[symbol] <= limit.value * (1 + 1e-9)
    assert all(amount > 0 for amount in found.g_l.values())


@given(st.floats(5, 200), st.floats(1.1, 4))
def test_twice_the_target_is_twice_the_mix(n_mg_l: float, times: float) -> None:
    shelf = SHELF[1:]  # without copper no limit is met
    once, more = blend(shelf, goal("bloom", n_mg_l)), blend(shelf, goal("bloom", n_mg_l * times))
    assert set(once.g_l) == set(more.g_l)
    for key, amount in once.g_l.items():
        assert more.g_l[key] == pytest.approx(amount * times, rel=1e-6)


def test_more_choice_never_comes_out_further() -> None:
    distances = []
    for count in range(1, len(SHELF) + 1):
        found = blend(SHELF[-count:][::-1], goal("growth", 60))
        distances.append(sum((m.weight * m.relative) ** 2 for m in found.misses))
    assert all(after <= before + 1e-9 for before, after in pairwise(distances))


def test_the_order_of_the_products_does_not_matter() -> None:
    forth, back = blend(SHELF, goal("bloom", 100)), blend(SHELF[::-1], goal("bloom", 100))
    assert forth.g_l == pytest.approx(dict(back.g_l))


def test_micro_elements_and_silicon_are_listed() -> None:
    found = blend([COMPLETE, SILICATE], goal("growth", 60))
    assert set(found.listed_mg_l) == set(LISTED)
    assert found.listed_mg_l["Fe"] > 0
    assert found.listed_mg_l["Si"] > 0
    assert blend([POTASSIUM_NITRATE], goal("growth", 60)).listed_mg_l["Si"] == 0


def test_nitrate_that_a_label_does_not_tell_is_left_out_and_said() -> None:
    found = blend([SILENT, CALCIUM_NITRATE], goal("growth", 100))
    assert found.left_out == (NITRATE,)
    assert NITRATE not in missed(found)


# ----------------------------------------------------------------------------------- bad input


def test_impossible_questions_are_refused_with_what_can_be_done() -> None:
    with pytest.raises(ValueError, match="1 to 6 products"):
        blend([], goal("growth", 100))
    with pytest.raises(ValueError, match="1 to 6 products"):
        blend([Product(str(i), {"N": 10.0}) for i in range(7)], goal("growth", 100))
    with pytest.raises(ValueError, match="twice"):
        blend([MKP, MKP], goal("growth", 100))
    with pytest.raises(ValueError, match="add a product that does"):
        blend([Product("iron", {"Fe": 13.0})], goal("growth", 100))
    with pytest.raises(ValueError, match="use rain"):
        blend(SHELF, goal("growth", 100), water_mg_l={"B": 1.2})
    with pytest.raises(ValueError, match="Water cannot hold"):
        blend(SHELF, goal("growth", 100), water_mg_l={"Ca": -1})
    with pytest.raises(ValueError, match="growth, bloom"):
        goal("speed", 100)


@pytest.mark.parametrize("n_mg_l", [0.0, -5.0, 1001.0, float("nan")])
def test_a_strength_that_is_no_feed_is_refused(n_mg_l: float) -> None:
    with pytest.raises(ValueError, match="is no feed"):
        goal("growth", n_mg_l)


@pytest.mark.parametrize(
    "mg_l", [{}, {"N": 0.0}, {"N": -1.0}, {"Xx": 1.0}, {"K": float("inf")}, {"K": float("nan")}]
)
def test_a_target_that_is_none_is_refused(mg_l: dict[str, float]) -> None:
    with pytest.raises(ValueError, match=r"target|known here"):
        Goal(mg_l)


# ---------------------------------------------------------------------------------- at the ends


def test_the_strongest_target_and_six_products_are_taken() -> None:
    assert goal("growth", 1000.0).mg_l["N"] == 1000.0
    six = [*SHELF, SILICATE]
    assert set(blend(six, goal("growth", 60)).g_l) <= {product.key for product in six}


def test_a_nutrient_without_a_weight_counts_once() -> None:
    found = blend([MKP], Goal({"P": 20.0, "N": 50.0, "Ca": 10.0}, {"Ca": 0.2}))
    assert {miss.nutrient: miss.weight for miss in found.misses} == {"P": 1.0, "N": 1.0, "Ca": 0.2}
    # none of the nitrogen is there, and a fifth of a calcium that counts a fifth
    counts = {miss.nutrient: miss.counts for miss in found.misses}
    assert (counts["N"], counts["Ca"]) == (pytest.approx(1.0), pytest.approx(0.2))
    assert [miss.nutrient for miss in found.misses] == ["N", "Ca", "P"]


def test_what_counts_more_than_once_is_missed_by_its_share_all_the_same() -> None:
    [miss] = blend([MKP], Goal({"P": 20.0}, {"P": 3.0}), water_mg_l={"P": 30.0}).misses
    assert (miss.relative, miss.counts) == (pytest.approx(0.5), pytest.approx(0.5))


@pytest.mark.parametrize("amount", [float("inf"), float("nan"), -1.0])
def test_water_without_end_is_refused(amount: float) -> None:
    with pytest.raises(ValueError, match="Water cannot hold"):
        blend(SHELF, goal("growth", 100), water_mg_l={"Ca": amount})


def test_water_at_a_toxic_limit_leaves_no_room_for_more() -> None:
    full = {symbol: limit.value for symbol, limit in toxic_limits().items()}
    found = blend(SHELF, goal("growth", 100), water_mg_l=full)
    assert "20-20-20" not in found.g_l
    assert {s: found.listed_mg_l[s] for s in full} == pytest.approx(full)
