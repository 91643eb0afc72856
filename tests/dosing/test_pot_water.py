"""Water for a pot, at a watering and to flush it."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.almanac.reference import water_held
from bot.dosing.pot_water import ASSUMED_POT_CM, flush_volume_l, pot_volume_l, watering_l
from bot.dosing.strength import MEDIA


@pytest.mark.parametrize(
    ("pot_cm", "low_l", "high_l"),
    # what makers print on round plastic pots: common practice, no source
    [(9.0, 0.30, 0.45), (12.0, 0.75, 1.1), (15.0, 1.4, 2.1), (20.0, 3.3, 4.8)],
)
def test_a_pot_holds_what_such_pots_hold(pot_cm: float, low_l: float, high_l: float) -> None:
    assert low_l <= pot_volume_l(pot_cm) <= high_l


@pytest.mark.parametrize(("pot_cm", "millilitres"), [(10.0, 544.9), (12.0, 941.5), (20.0, 4358.9)])
def test_a_pot_is_a_cut_cone_as_high_as_wide_and_filled_to_nine_tenths(
    pot_cm: float, millilitres: float
) -> None:
    # pi h / 12 (D^2 + D d + d^2) with h = 0.9 D and d = 0.75 D, by hand; the shape is ours
    assert pot_volume_l(pot_cm) * 1000 == pytest.approx(millilitres, abs=0.1)


def test_a_watering_refills_half_of_what_is_held_and_a_fifth_runs_through() -> None:
    held_l = 0.9415 * water_held()["bark"].held
    found = watering_l("bark", 12.0)
    assert found.volume_l == pytest.approx(held_l / 2 / 0.8, rel=1e-3)
    assert found.source == water_held()["bark"].source


def test_a_mounted_plant_takes_a_tenth_of_a_litre() -> None:
    assert watering_l("mounted", None).volume_l == 0.1  # ours
    assert watering_l("mounted", 12.0, count=7).volume_l == pytest.approx(0.7)


def test_a_medium_that_was_not_told_is_taken_as_bark() -> None:
    assert watering_l(None, 12.0).volume_l == watering_l("bark", 12.0).volume_l
    assert watering_l(None, 12.0).assumed == ("medium",)


def test_moss_takes_more_than_bark_and_clay_less() -> None:
    # held water of a home test and of the Int. J. Agron. 2012, 978528: clay < bark < mix < moss
    taken = [watering_l(m, 12.0).volume_l for m in ("clay_pellets", "bark", "mixed", "sphagnum")]
    assert taken == sorted(taken)


@pytest.mark.parametrize(
    ("medium", "low_l", "high_l"),
    # until it runs through a 12 cm pot: common practice, no source
    [("bark", 0.15, 0.35), ("clay_pellets", 0.12, 0.35), ("sphagnum", 0.35, 0.7)],
)
def test_a_watering_is_what_such_a_pot_takes(medium: str, low_l: float, high_l: float) -> None:
    assert low_l <= watering_l(medium, 12.0).volume_l <= high_l


@pytest.mark.parametrize(
    ("medium", "held_g"),
    # a grower's home test: grams of water that half a US cup of the medium holds after draining
    [("clay_pellets", 27.4), ("bark", 37.0), ("mixed", 50.8)],
)
def test_held_water_is_that_of_the_home_test(medium: str, held_g: float) -> None:
    half_cup_ml = 236.588 / 2
    assert water_held()[medium].held == pytest.approx(held_g / half_cup_ml, abs=0.005)


def test_moss_holds_no_more_than_moss_can() -> None:
    # home test 102.4 g in half a US cup; sphagnum peat 87 % (Int. J. Agron. 2012, 978528)
    assert water_held()["bark"].held < water_held()["sphagnum"].held <= 0.87


def test_some_water_runs_through() -> None:
    # the water poured exceeds half of what the medium holds: leaching is common practice
    taken_up = pot_volume_l(12.0) * water_held()["bark"].held / 2
    assert 1.1 <= watering_l("bark", 12.0).volume_l / taken_up <= 1.4


def test_what_was_not_told_is_named() -> None:
    assert watering_l(None, None).assumed == ("pot_cm", "medium")
    assert watering_l("bark", 12.0).assumed == ()
    assert watering_l("mounted", None).assumed == ()
    assert watering_l("mounted", None).source == "ours"
    assert watering_l("bark", 0.0).assumed == ("pot_cm",)


def test_a_pot_of_unknown_size_is_taken_as_12_cm() -> None:
    assert ASSUMED_POT_CM == 12.0
    for unknown in (None, 0.0):
        assert watering_l("bark", unknown).volume_l == watering_l("bark", 12.0).volume_l
        assert flush_volume_l(unknown) == flush_volume_l(12.0)


def test_a_medium_that_is_not_in_the_almanac_is_refused() -> None:
    with pytest.raises(KeyError):
        watering_l("gravel from the yard", 12.0)


def test_a_flush_is_two_pot_volumes() -> None:
    # UC ANR, houseplants: "twice the volume of the pot"
    assert flush_volume_l(12.0) == pytest.approx(2 * pot_volume_l(12.0))
    assert flush_volume_l(12.0, passes=3) == pytest.approx(3 * pot_volume_l(12.0))


def test_every_medium_in_a_pot_has_its_figure() -> None:
    assert {m for m in MEDIA if m != "mounted"} == set(water_held())
    assert all(0 < h.held < 1 and h.source for h in water_held().values())


@given(st.floats(3, 60), st.floats(1.01, 3))
def test_a_pot_grows_with_the_cube_of_its_width(pot_cm: float, times: float) -> None:
    assert pot_volume_l(pot_cm * times) == pytest.approx(times**3 * pot_volume_l(pot_cm))


@given(st.sampled_from(MEDIA), st.floats(3, 60), st.integers(1, 500))
def test_pots_alike_take_as_much_each(medium: str, pot_cm: float, count: int) -> None:
    one = watering_l(medium, pot_cm).volume_l
    assert watering_l(medium, pot_cm, count=count).volume_l == pytest.approx(count * one)
    assert one > 0
