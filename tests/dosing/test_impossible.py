"""Figures that cannot be carry a code and their values."""

from __future__ import annotations

from bot.dosing.impossible import Impossible


def test_it_is_an_error_of_value_with_a_code_and_figures() -> None:
    told = Impossible("water-ec-range", ec=6.0, most=5.0)
    assert isinstance(told, ValueError)
    assert (told.code, told.values) == ("water-ec-range", {"ec": 6.0, "most": 5.0})
    assert str(told) == "water-ec-range: ec 6.0, most 5.0"


def test_without_figures_the_code_is_all() -> None:
    assert str(Impossible("hardly-conducts")) == "hardly-conducts"
    assert Impossible("hardly-conducts").values == {}
