"""Salts in pots and root zones, against FAO 29 and a trial in pots."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta

import pytest

from bot.dosing.pot_salts import Pot, between, pot_of, start_of, steady_state
from bot.dosing.pot_water import flush_volume_l, pot_volume_l

from .checks import Check, Inputs, Result, published

#: Of the water that a root zone draws, from its quarters downwards: FAO 29.
DRAWN = (0.4, 0.3, 0.2, 0.1)


def _tank() -> Pot:
    """A pot whose water lost takes no salt; bypass and stagnant water must not matter."""
    return replace(pot_of("bark", 12.0), uptake=0.0)


def _runoff_ec(inputs: Inputs) -> float:
    """A fifth of the held water is lost between waterings."""
    pot, fraction = _tank(), inputs["leaching_fraction"]
    lost_l = pot.held_l / 5
    drained_l = lost_l * fraction / (1 - fraction)
    return steady_state(pot, inputs["water_ec"], lost_l=lost_l, drained_l=drained_l).runoff_ec


def _quarters(water_ec: float, leaching_fraction: float) -> list[float]:
    """EC of what leaves each quarter: four tanks, each fed with the runoff of the one above."""
    pot = _tank()
    lost_l = pot.held_l / 5
    ecs, flow_l = [water_ec], lost_l / (1 - leaching_fraction)
    for share in DRAWN:
        flow_l -= share * lost_l
        state = steady_state(pot, ecs[-1], lost_l=share * lost_l, drained_l=flow_l)
        ecs.append(state.runoff_ec)
    return ecs


def _quarter_ec(inputs: Inputs) -> float:
    return _quarters(inputs["water_ec"], inputs["leaching_fraction"])[inputs["quarter"]]


def _root_zone_factor(inputs: Inputs) -> float:
    return sum(_quarters(1.0, inputs["leaching_fraction"])) / 5 / 2


def _runoff_plateau(inputs: Inputs) -> float:
    """A third of the held water is lost between waterings."""
    pot, fraction = pot_of("mixed", inputs["pot_cm"]), inputs["leaching_fraction"]
    lost_l = pot.held_l / 3
    drained_l = lost_l * fraction / (1 - fraction)
    return steady_state(pot, inputs["fed_ec"], lost_l=lost_l, drained_l=drained_l).runoff_ec


def _days_to_half(inputs: Inputs) -> float:
    """By interpolation between whole days."""
    pot = pot_of(inputs["medium"], inputs["pot_cm"])
    since = date(2023, inputs["month"], 1)
    wet = start_of(pot)
    after_a_week = between(pot, wet, since, since + timedelta(days=7)).water_l
    return 7 * (pot.held_l / 2) / (pot.held_l - after_a_week)


def _flush_pot_volumes(inputs: Inputs) -> float:
    return flush_volume_l(inputs["pot_cm"]) / pot_volume_l(inputs["pot_cm"])


RESULTS: dict[str, Result] = {
    "flush_pot_volumes": _flush_pot_volumes,
    "runoff_ec": _runoff_ec,
    "quarter_ec": _quarter_ec,
    "root_zone_factor": _root_zone_factor,
    "runoff_plateau": _runoff_plateau,
    "days_to_half": _days_to_half,
}


@pytest.mark.parametrize("check", published("pot_salts"), ids=str)
def test_salts_in_a_pot_are_the_published_ones(check: Check) -> None:
    assert RESULTS[check.kind](check.inputs) == check.printed
