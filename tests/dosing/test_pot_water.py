"""Water for a pot, at a watering and to flush it."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.almanac.reference import water_held
from bot.dosing.pot_water import flush_volume_l, pot_volume_l, watering_l
from bot.dosing.strength import MEDIA


@pytest.mark.parametrize(
    ("pot_cm", "low_l", "high_l"),
    # what makers print on round plastic pots: common practice, no source
    [(9.0, 0.30, 0.45), (12.0, 0.75, 1.1), (15.0, 1.4, 2.1), (20.0, 3.3, 4.8)],
)
def test_a_pot_holds_what_such_pots_hold(pot_cm: float, low_l: float, high_l: float) -> None:
    assert low_l <= pot_volume_l(pot_cm) <= high_l


def test_moss_takes_more_than_bark_and_clay_less() -> None:
    # held water of a home test and of the Int. J. Agron. 2012, 978528: clay < bark < mix < moss
    taken = [watering_l(m, 12.0).volume_l for m in ("clay_pellets", "bark", "mixed", "sphagnum")]
    assert taken == sorted(taken)
    assert 0.12 <= watering_l("bark", 12.0).volume_l <= 0.35


def test_what_was_not_told_is_named() -> None:
    assert watering_l(None, None).assumed == ("pot_cm", "medium")
    assert watering_l("bark", 12.0).assumed == ()
    assert watering_l("mounted", None).assumed == ()


def test_a_flush_is_two_pot_volumes() -> None:
    # UC ANR, houseplants: "twice the volume of the pot"
    assert flush_volume_l(12.0) == pytest.approx(2 * pot_volume_l(12.0))


def test_every_medium_in_a_pot_has_its_figure() -> None:
    assert {m for m in MEDIA if m != "mounted"} == set(water_held())
    assert all(0 < h.held < 1 and h.source for h in water_held().values())


@given(st.sampled_from(MEDIA), st.floats(3, 60), st.integers(1, 500))
def test_pots_alike_take_as_much_each(medium: str, pot_cm: float, count: int) -> None:
    one = watering_l(medium, pot_cm).volume_l
    assert watering_l(medium, pot_cm, count=count).volume_l == pytest.approx(count * one)
    assert one > 0
