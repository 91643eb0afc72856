"""Salts in a pot: its balance, its rhythm, its log, and when and how to flush it."""

from __future__ import annotations

import math
import random
from collections.abc import Callable
from dataclasses import replace
from datetime import date, timedelta
from itertools import pairwise
from statistics import mean

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.almanac.pot_salts import ceilings, potted_media, settings
from bot.almanac.reference import water_held
from bot.dosing.advice import FLUSH_DAYS
from bot.dosing.pot_salts import (
    FlushReason,
    Pot,
    PotEvent,
    PotEventKind,
    PotState,
    after_flush,
    after_reading,
    after_watering,
    between,
    flush_due,
    flush_plan,
    pot_of,
    simulate,
    start_of,
    steady_state,
    wet_ec,
)
from bot.dosing.pot_water import flush_volume_l
from bot.dosing.season import season_of
from bot.dosing.strength import CEILINGS

DAY = date(2024, 1, 1)
MEDIA = tuple(potted_media())
FED, CLEAR, FLUSH, READING = PotEventKind

pots = st.builds(pot_of, st.sampled_from(MEDIA), st.floats(5, 40), south=st.booleans())
ecs = st.floats(0, 5)
volumes = st.floats(0, 5)


@st.composite
def states(draw: st.DrawFn, pot: Pot) -> PotState:
    """A pot after some dry days."""
    start = start_of(pot, draw(st.floats(0.01, 6)))
    return between(pot, start, DAY, DAY + timedelta(days=draw(st.integers(0, 60))))


@st.composite
def logs(draw: st.DrawFn) -> list[PotEvent]:
    on, log = DAY, []
    for _ in range(draw(st.integers(1, 25))):
        on += timedelta(days=draw(st.integers(0, 40)))
        volume_l = draw(st.none() | volumes)
        log.append(PotEvent(on, draw(st.sampled_from(PotEventKind)), draw(ecs), volume_l))
    return log


def weekly(weeks: int, kinds: Callable[[int], PotEventKind], feed_ec: float, water_ec: float):
    """A log of one watering a week, as much as usual."""
    return [
        PotEvent(
            DAY + timedelta(weeks=week),
            kinds(week),
            feed_ec if kinds(week) is FED else water_ec,
        )
        for week in range(weeks)
    ]


# ------------------------------------------------------------------------------------ balance


@given(pots, logs())
def test_no_salt_is_lost_or_made(pot: Pot, log: list[PotEvent]) -> None:
    start = start_of(pot, 1.0)
    end = simulate(pot, log, start=start, until=log[-1].on + timedelta(days=9))[-1]
    came = start.salt + end.brought + end.corrected
    went = end.salt + end.washed_out + end.taken_up
    assert came == pytest.approx(went, rel=1e-12, abs=1e-12)
    assert min(end.salt, end.washed_out, end.taken_up, end.salt_sd) >= 0


@given(pots, logs())
def test_what_was_brought_is_what_was_poured(pot: Pot, log: list[PotEvent]) -> None:
    told = [replace(e, volume_l=0.4) for e in log if e.kind is not READING]
    if told:
        poured = sum(0.4 * event.ec for event in told)
        assert simulate(pot, told)[-1].brought == pytest.approx(poured)


@given(st.data(), pots, volumes, ecs)
def test_a_watered_pot_lies_between_the_poured_and_what_it_was(
    data: st.DataObject, pot: Pot, volume_l: float, ec: float
) -> None:
    before = data.draw(states(pot))
    after = after_watering(pot, before, volume_l, ec)
    low, high = sorted((before.ec, ec))
    assert low - 1e-9 <= after.ec <= high + 1e-9
    assert before.water_l <= after.water_l <= pot.held_l * (1 + 1e-12)
    if after.runoff is not None:
        assert low - 1e-9 <= after.runoff.ec <= high + 1e-9


@given(st.data(), pots, st.floats(0.1, 3), st.floats(1, 4), ecs)
def test_more_water_brings_a_pot_nearer_to_it(
    data: st.DataObject, pot: Pot, volume_l: float, times: float, ec: float
) -> None:
    before = data.draw(states(pot))
    less, more = (after_watering(pot, before, v, ec) for v in (volume_l, volume_l * times))
    if less.runoff is not None:
        assert abs(more.ec - ec) <= abs(less.ec - ec) + 1e-9


@given(pots, st.integers(0, 90), st.integers(0, 90))
def test_drying_goes_on_where_it_stopped(pot: Pot, first: int, then: int) -> None:
    pause, end = DAY + timedelta(days=first), DAY + timedelta(days=first + then)
    start = start_of(pot, 1.0)
    at_once = between(pot, start, DAY, end)
    in_two = between(pot, between(pot, start, DAY, pause), pause, end)
    assert in_two.water_l == pytest.approx(at_once.water_l)
    assert in_two.salt == pytest.approx(at_once.salt)
    assert in_two.days_since_clear == at_once.days_since_clear == first + then


@given(pots, st.integers(0, 400))
def test_evaporation_takes_only_water(pot: Pot, days: int) -> None:
    start = start_of(pot, 1.0)
    no_uptake = between(replace(pot, uptake=0.0), start, DAY, DAY + timedelta(days=days))
    assert no_uptake.salt == start.salt
    assert no_uptake.ec == pytest.approx(pot.held_l / no_uptake.water_l)
    driest = settings()["driest_share"].value * pot.held_l
    assert driest * (1 - 1e-9) <= no_uptake.water_l <= pot.held_l


def test_pots_dry_faster_in_summer_and_by_hemisphere() -> None:
    def left_l(pot: Pot, month: int) -> float:
        return between(pot, start_of(pot), date(2023, month, 1), date(2023, month, 8)).water_l

    north, south = pot_of("bark", 12.0), pot_of("bark", 12.0, south=True)
    assert left_l(north, 7) < left_l(north, 4) < left_l(north, 1)
    assert left_l(south, 1) == left_l(north, 7)


@given(pots, logs(), st.floats(0.1, 2))
def test_twice_as_salty_water_makes_a_pot_twice_as_salty(
    pot: Pot, log: list[PotEvent], times: float
) -> None:
    watered = [event for event in log if event.kind is not READING]
    scaled = [replace(event, ec=times * event.ec) for event in watered]
    once = simulate(pot, watered, start=start_of(pot, 1.0), until=DAY + timedelta(days=1200))
    again = simulate(pot, scaled, start=start_of(pot, times), until=DAY + timedelta(days=1200))
    assert again[-1].salt == pytest.approx(times * once[-1].salt, rel=1e-9, abs=1e-12)


# ------------------------------------------------------------------------------- steady state


@given(pots, st.floats(0.05, 4), st.floats(0.01, 0.75), st.floats(0.05, 3))
def test_a_rhythm_ends_in_its_steady_state(
    pot: Pot, ec: float, lost_share: float, drained_share: float
) -> None:
    lost_l, drained_l = lost_share * pot.held_l, drained_share * pot.held_l
    a_day = replace(pot, evaporation_l_day=(lost_l,) * 12)
    steady = steady_state(pot, ec, lost_l=lost_l, drained_l=drained_l)
    wet = start_of(pot, steady.ec_after)
    dry = between(a_day, wet, DAY, DAY + timedelta(days=1))
    again = after_watering(a_day, dry, lost_l + drained_l, ec)
    assert dry.ec == pytest.approx(steady.ec_before)
    assert again.ec == pytest.approx(steady.ec_after)
    assert again.runoff is not None
    assert again.runoff.ec == pytest.approx(steady.runoff_ec)


@given(pots, st.floats(0.05, 4), st.floats(0.01, 0.75), st.floats(0.01, 0.9))
def test_runoff_is_the_water_over_the_leaching_fraction(
    pot: Pot, ec: float, lost_share: float, fraction: float
) -> None:
    # FAO Irrigation and Drainage Paper 29 Rev. 1 (1985): ECdw = ECw / LF, from memory
    lost_l = lost_share * pot.held_l
    drained_l = lost_l * fraction / (1 - fraction)
    steady = steady_state(replace(pot, uptake=0.0), ec, lost_l=lost_l, drained_l=drained_l)
    assert steady.runoff_ec == pytest.approx(ec / fraction)


@pytest.mark.parametrize("medium", MEDIA)
def test_without_stagnant_water_the_pot_is_the_plain_stirred_tank(medium: str) -> None:
    # C = Ca (1 + (ET / W) / (exp((1 - b) D / W) - 1)), mass balance of a stirred tank
    pot = replace(pot_of(medium, 12.0), uptake=0.0, stagnant=0.0)
    lost_l, drained_l = 0.4 * pot.held_l, 0.7 * pot.held_l
    expected = 0.9 * (1 + 0.4 / math.expm1((1 - pot.bypass) * 0.7))
    assert steady_state(pot, 0.9, lost_l=lost_l, drained_l=drained_l).ec_after == pytest.approx(
        expected
    )


def test_runoff_of_poinsettia_at_the_highest_leaching_is_a_sixth_saltier_than_the_model() -> None:
    # Ku and Hershey, J. Amer. Soc. Hort. Sci. 116 (1991) 802: fed 2.1, leaching fraction 0.4,
    # about 6 mS/cm; uptake was fitted to the fractions 0.1 and 0.2 only
    pot = pot_of("mixed", 15.0)
    lost_l = pot.held_l / 3
    read = steady_state(pot, 2.1, lost_l=lost_l, drained_l=lost_l * 2 / 3).runoff_ec
    assert read == pytest.approx(6, rel=0.2)


# ------------------------------------------------------------------------------------ the log


@pytest.mark.parametrize("water_ec", [0.02, 0.3])
@pytest.mark.parametrize("medium", MEDIA)
def test_leaching_decides_over_a_year_not_strength(medium: str, water_ec: float) -> None:
    # found by an earlier trial of the same balance; full strength about 1.2 mS/cm over the water
    pot, full = pot_of(medium, 12.0), 1.2

    def last_four_weeks(kinds: Callable[[int], PotEventKind], strength: float) -> float:
        log = weekly(52, kinds, water_ec + strength * full, water_ec)
        return mean(wet_ec(pot, state) for state in simulate(pot, log)[-4:])

    always = last_four_weeks(lambda _: FED, 0.25)
    monthly = last_four_weeks(lambda week: FED if week % 4 == 3 else CLEAR, 1.0)
    flushed = last_four_weeks(lambda week: FLUSH if week % 4 == 3 else FED, 0.25)
    assert always == pytest.approx(monthly, rel=0.1)
    assert flushed <= always / 2
    assert always > 2 * (water_ec + 0.25 * full)


def test_events_count_by_their_day_and_those_of_one_day_by_their_order() -> None:
    pot = pot_of("bark", 12.0)
    fed = PotEvent(DAY, FED, 1.0, 0.5)
    rinsed = PotEvent(DAY, CLEAR, 0.1, 0.5)
    later = PotEvent(DAY + timedelta(days=5), FED, 0.6)
    assert simulate(pot, [later, fed, rinsed]) == simulate(pot, [fed, rinsed, later])
    assert simulate(pot, [fed, rinsed])[-1].ec < simulate(pot, [rinsed, fed])[-1].ec


def test_a_watering_that_was_not_measured_runs_through_by_a_fifth() -> None:
    # common practice, as in pot_water.RUNS_THROUGH
    pot = pot_of("bark", 12.0)
    first, second = PotEvent(DAY, FED, 0.5), PotEvent(DAY + timedelta(days=6), FED, 0.5)
    runoff = simulate(pot, [first, second])[-1].runoff
    dry = simulate(pot, [first], until=second.on)[-1]
    assert runoff is not None
    assert runoff.volume_l / (runoff.volume_l + pot.held_l - dry.water_l) == pytest.approx(0.2)


def test_a_start_that_is_not_known_is_forgotten() -> None:
    pot = pot_of("bark", 12.0)
    log = weekly(30, lambda week: FLUSH if week % 4 == 3 else FED, 0.5, 0.2)
    low, high = (simulate(pot, log, start=start_of(pot, ec)) for ec in (0.0, 4.0))
    assert high[0].ec > 2 * low[0].ec
    assert high[-1].ec == pytest.approx(low[-1].ec, rel=1e-3)
    assert simulate(pot, log)[0].ec_sd > 5 * simulate(pot, log)[-1].ec_sd


def test_clear_water_counts_where_it_runs_through() -> None:
    pot = pot_of("bark", 12.0)
    dry = between(pot, start_of(pot), DAY, DAY + timedelta(days=10))
    assert after_watering(pot, dry, 0.02, 0.1, clear=True).days_since_clear == 10
    assert after_watering(pot, dry, 0.50, 0.1, clear=True).days_since_clear == 0
    assert after_watering(pot, dry, 0.50, 0.1).days_since_clear == 10


def test_the_stated_uncertainty_covers_pots_that_differ_from_the_almanac() -> None:
    # held water by 20 %, evaporation by 30 %, bypass and stagnant water by 0.1: ours
    chance = random.Random(29)
    log = weekly(24, lambda week: FLUSH if week % 8 == 7 else FED, 0.6, 0.3)
    covered = []
    for medium in ("bark", "sphagnum", "clay_pellets"):
        pot = pot_of(medium, 12.0)
        told = simulate(pot, log, start=start_of(pot, 0.5, 0.1))
        for _ in range(60):
            slower = chance.lognormvariate(0, 0.3)
            other = replace(
                pot,
                held_l=pot.held_l * chance.lognormvariate(0, 0.2),
                evaporation_l_day=tuple(slower * day_l for day_l in pot.evaporation_l_day),
                bypass=min(max(pot.bypass + chance.gauss(0, 0.1), 0.0), 0.9),
                stagnant=min(max(pot.stagnant + chance.gauss(0, 0.1), 0.0), 0.6),
            )
            real = simulate(other, log, start=start_of(other, abs(chance.gauss(0.5, 0.1))))
            covered += [
                abs(wet_ec(other, is_so) - wet_ec(pot, said)) <= said.salt_sd / pot.held_l
                for is_so, said in zip(real[3::4], told[3::4], strict=True)
            ]
    # one standard deviation covers two thirds; wider is honest, narrower is not
    assert 0.6 <= mean(covered) <= 0.9


# ------------------------------------------------------------------------------------ reading


@given(st.data(), pots, volumes, ecs, st.floats(0, 10))
def test_a_reading_narrows_the_uncertainty_and_pulls_towards_itself(
    data: st.DataObject, pot: Pot, volume_l: float, ec: float, reading: float
) -> None:
    before = after_watering(pot, data.draw(states(pot)), volume_l, ec)
    after = after_reading(pot, before, reading)
    assert after.salt_sd < before.salt_sd
    assert after.water_l == before.water_l
    if before.runoff is not None and abs(reading - before.runoff.ec) > 1e-9:
        assert (after.salt >= before.salt) == (reading > before.runoff.ec)


@given(st.data(), pots, st.floats(0.5, 5), ecs)
def test_a_reading_that_the_model_foresaw_changes_nothing(
    data: st.DataObject, pot: Pot, volume_l: float, ec: float
) -> None:
    before = after_watering(pot, data.draw(states(pot)), volume_l, ec)
    if before.runoff is not None:
        after = after_reading(pot, before, before.runoff.ec)
        assert after.salt == pytest.approx(before.salt, rel=1e-6, abs=1e-9)


def test_of_model_and_reading_the_surer_one_weighs_more() -> None:
    pot = pot_of("bark", 12.0)
    unknown, known = start_of(pot, 1.0, 1.0), start_of(pot, 1.0, 0.05)
    # 1.6 is read to 20 % and 0.05, so to 0.324: weights 0.905 and 0.023 by inverse variance
    assert after_reading(pot, unknown, 1.6).ec == pytest.approx(1 + 0.6 * 0.905, abs=0.001)
    assert after_reading(pot, known, 1.6).ec == pytest.approx(1 + 0.6 * 0.023, abs=0.001)


def test_a_runoff_reading_is_carried_over_to_the_pot_with_its_uncertainty() -> None:
    pot = pot_of("bark", 12.0)
    before = after_watering(pot, start_of(pot, 2.0, 1.0), 0.3, 0.5)
    assert before.runoff is not None
    poured, wash, reading = 0.5, before.runoff.wash, 1.3 * before.runoff.ec
    assert wash == pytest.approx(1.56, abs=0.01)  # bypass thins the runoff
    # read to 20 % and 0.05 mS/cm (pot_salts.toml); the excess in the pot is `wash` times the read
    read_var = (0.2 * reading) ** 2 + 0.05**2
    trust = before.ec_sd**2 / (before.ec_sd**2 + wash**2 * read_var)
    meant = poured + (reading - poured) * wash
    after = after_reading(pot, before, reading)
    assert after.ec == pytest.approx(before.ec + trust * (meant - before.ec))
    assert after.ec_sd == pytest.approx(before.ec_sd * math.sqrt(1 - trust))


def test_a_reading_in_the_log_is_of_that_days_watering() -> None:
    pot = pot_of("bark", 12.0)
    log = [PotEvent(DAY, FED, 0.6, 0.5), PotEvent(DAY, READING, 1.6)]
    fed, read = simulate(pot, log)
    assert fed.runoff is not None
    assert read.ec > fed.ec
    next_day = replace(log[1], on=DAY + timedelta(days=1))
    assert simulate(pot, [log[0], next_day])[-1].salt != read.salt


# ----------------------------------------------------------------------------------- flushing


@given(st.data(), pots, st.floats(0.2, 4), ecs)
def test_two_passes_with_a_rest_wash_better_than_one(
    data: st.DataObject, pot: Pot, volumes_poured: float, ec: float
) -> None:
    # intermittent leaching needs less water: JSIDRE 196 (1998) 629
    before = start_of(pot, ec + data.draw(st.floats(0.1, 4)))
    water_l = volumes_poured * pot.volume_l
    left = [
        wet_ec(pot, after_flush(pot, before, water_l, ec, passes=passes)) - ec
        for passes in (1, 2, 3)
    ]
    assert all(more <= less + 1e-12 for less, more in pairwise(left))
    assert left[1] < left[0]
    stirred = replace(pot, stagnant=0.0)
    alike = [
        wet_ec(stirred, after_flush(stirred, before, water_l, ec, passes=passes))
        for passes in (1, 3)
    ]
    assert alike[0] == pytest.approx(alike[1])


def test_a_growers_moss_basket_washed_out_half_as_well_as_the_model() -> None:
    # a 4 inch basket, 1.9 l of pure water in one go: from 600 to under 200 uS/cm, after a rest
    # over 300 (weak source). Moss binds cations, which the model leaves out
    pot = pot_of("sphagnum", 10.2)
    after = after_flush(pot, start_of(pot, 0.6), 1.9, 0.01, passes=1)
    assert 0.15 <= wet_ec(pot, after) <= 0.3


@given(st.data(), pots, st.floats(0, 1), st.floats(0.05, 3))
def test_a_flush_as_planned_ends_where_the_plan_says(
    data: st.DataObject, pot: Pot, water_ec: float, above: float
) -> None:
    before = data.draw(states(pot))
    plan = flush_plan(pot, before, target_ec=water_ec + above, water_ec=water_ec)
    after = before
    for volume_l in plan.passes_l:
        after = after_watering(pot, after, volume_l, water_ec, clear=True)
    assert plan.ec_before == wet_ec(pot, before)
    assert plan.ec_after == wet_ec(pot, after)
    assert plan.reaches == (plan.ec_after <= water_ec + above + 1e-9)
    assert len(plan.passes_l) in (0, 2, 3)
    if plan.reaches and plan.passes_l and max(plan.passes_l[1:]) < pot.volume_l * (1 - 1e-9):
        assert plan.ec_after == pytest.approx(water_ec + above)
    if not plan.passes_l:
        assert plan.ec_before <= water_ec + above


@pytest.mark.parametrize("medium", MEDIA)
def test_a_plan_takes_a_little_more_water_than_the_plain_stirred_tank(medium: str) -> None:
    # V = W ln((C0 - Cw) / (Ct - Cw)) / (1 - b), mass balance of a stirred tank
    pot = pot_of(medium, 12.0)
    plain_l = pot.held_l * math.log((2.0 - 0.3) / (0.8 - 0.3)) / (1 - pot.bypass)
    plan = flush_plan(pot, start_of(pot, 2.0), target_ec=0.8, water_ec=0.3)
    assert plan.reaches
    assert plan.ec_after == pytest.approx(0.8)
    assert plain_l < sum(plan.passes_l) < 1.3 * plain_l
    stirred = flush_plan(
        replace(pot, stagnant=0.0), start_of(pot, 2.0), target_ec=0.8, water_ec=0.3
    )
    assert sum(stirred.passes_l) == pytest.approx(plain_l)


def test_a_third_pass_comes_where_two_do_not_do_and_then_the_plan_says_how_far() -> None:
    pot = pot_of("sphagnum", 12.0)
    salty = start_of(pot, 3.0)
    counts = {
        target: flush_plan(pot, salty, target_ec=target, water_ec=0.1) for target in (1.0, 0.4, 0.1)
    }
    assert [len(plan.passes_l) for plan in counts.values()] == [2, 3, 3]
    assert [plan.reaches for plan in counts.values()] == [True, True, False]
    assert 0.1 < counts[0.1].ec_after < 0.4
    assert counts[1.0].usual_l == flush_volume_l(12.0)
    assert counts[1.0].rest_min == 30


def test_a_dry_pot_is_refilled_by_the_first_pass() -> None:
    pot = pot_of("bark", 12.0)
    dry = between(pot, start_of(pot, 2.0), DAY, DAY + timedelta(days=8))
    first, second = flush_plan(pot, dry, target_ec=0.8, water_ec=0.1).passes_l
    assert first - second == pytest.approx(pot.held_l - dry.water_l)


def test_a_pot_at_its_target_needs_no_flush() -> None:
    pot = pot_of("bark", 12.0)
    plan = flush_plan(pot, start_of(pot, 0.5), target_ec=0.8, water_ec=0.3)
    assert (plan.passes_l, plan.ec_after, plan.reaches) == ((), 0.5, True)


# -------------------------------------------------------------------------------- flush is due


def due(log: list[PotEvent], *, start_ec: float = 0.3, today: date | None = None, **more: object):
    pot = pot_of("bark", 12.0)
    return flush_due(
        pot,
        log,
        feeding_class=str(more.pop("feeding_class", "moderate")),
        today=today or log[-1].on,
        start=start_of(pot, start_ec, 0.1),
        **more,
    )


def test_weak_feed_is_flushed_by_the_month() -> None:
    log = [PotEvent(DAY, CLEAR, 0.1, 0.5), *weekly(3, lambda _: FED, 0.2, 0.1)[1:]]
    answer = due(log)
    assert answer.reason is FlushReason.MONTH_WITHOUT_CLEAR
    assert answer.on == DAY + timedelta(days=FLUSH_DAYS)
    assert answer.ec <= answer.ceiling_ec == ceilings()["moderate"].value


def test_strong_feed_is_flushed_by_the_model_on_the_day_it_went_over() -> None:
    log = [PotEvent(DAY, CLEAR, 0.1, 0.5), *weekly(5, lambda _: FED, 2.5, 0.1)[1:]]
    answer = due(log)
    pot = pot_of("bark", 12.0)
    path = simulate(pot, log, start=start_of(pot, 0.3, 0.1))
    over = next(e.on for e, s in zip(log, path, strict=True) if wet_ec(pot, s) > 1.4)
    assert (answer.reason, answer.on) == (FlushReason.OVER_CEILING, over)
    assert answer.ec > answer.ceiling_ec


def test_feeds_to_come_are_taken_like_the_last() -> None:
    fed = PotEvent(DAY + timedelta(days=7), FED, 1.2)
    log = [PotEvent(DAY, CLEAR, 0.1, 0.5), fed]
    foreseen = [replace(fed, on=DAY + timedelta(days=days)) for days in (14, 21, 28)]
    pot = pot_of("bark", 12.0)
    path = simulate(pot, [*log, *foreseen], start=start_of(pot, 0.3, 0.1))
    two_ahead = mean(wet_ec(pot, state) for state in path[2:4])
    answer = due(log, ceiling_ec=two_ahead)
    assert (answer.on, answer.reason) == (foreseen[1].on, FlushReason.OVER_CEILING)
    assert answer.ec == pytest.approx(wet_ec(pot, path[3]))


def test_feeds_to_come_keep_the_interval_of_the_log_from_the_last_on() -> None:
    # waterings on days 0 and 10, or 0, 2 and 12: 10 or 6 days apart in the mean
    for days in ((0, 10), (0, 2, 12)):
        clear, *fed = (DAY + timedelta(days=d) for d in days)
        log = [PotEvent(clear, CLEAR, 0.1, 0.5), *(PotEvent(on, FED, 1.2, 0.3) for on in fed)]
        following = DAY + timedelta(days=days[-1] + days[-1] // (len(days) - 1))
        path = simulate(BARK, [*log, PotEvent(following, FED, 1.2, 0.3)],
                        start=start_of(BARK, 0.3, 0.1))  # fmt: skip
        now_ec, next_ec = (wet_ec(BARK, state) for state in path[-2:])
        answer = due(log, ceiling_ec=(now_ec + next_ec) / 2)
        assert (answer.on, answer.reason) == (following, FlushReason.OVER_CEILING)
        assert answer.ec == pytest.approx(next_ec)


def test_a_flush_by_the_month_tells_the_ec_after_the_last_watering_up_to_it() -> None:
    log = [PotEvent(DAY, CLEAR, 0.1, 0.5), *weekly(9, lambda _: FED, 0.2, 0.1)[1:]]
    answer = due(log, ceiling_ec=50.0)
    path = simulate(BARK, log, start=start_of(BARK, 0.3, 0.1))
    # a month after the first day is that of the fifth watering
    assert answer.on == log[4].on
    assert answer.ec == pytest.approx(wet_ec(BARK, path[4]))
    assert answer.ec_sd == pytest.approx(path[4].salt_sd / BARK.held_l)


def test_feeds_to_come_begin_today_at_the_earliest() -> None:
    log = [PotEvent(DAY, CLEAR, 0.1, 0.5), PotEvent(DAY + timedelta(days=7), FED, 1.2, 0.4)]
    today = DAY + timedelta(days=20)
    now_ec = wet_ec(BARK, simulate(BARK, log, start=start_of(BARK, 0.3, 0.1))[-1])
    answer = due(log, today=today, ceiling_ec=1.01 * now_ec)
    assert (answer.on, answer.reason) == (today, FlushReason.OVER_CEILING)


def test_a_pot_that_is_over_today_is_not_left_to_weaker_feeds_to_come() -> None:
    weak = PotEvent(DAY + timedelta(days=7), FED, 0.1, 0.4)
    log = [PotEvent(DAY, CLEAR, 0.1, 0.1), weak]
    pot = pot_of("bark", 12.0)
    over_ec = wet_ec(pot, simulate(pot, log, start=start_of(pot, 3.0, 0.1))[-1])
    answer = due(log, start_ec=3.0, ceiling_ec=0.95 * over_ec)
    assert (answer.on, answer.reason) == (DAY, FlushReason.OVER_CEILING)


def test_more_sensitive_plants_are_flushed_no_later() -> None:
    log = [PotEvent(DAY, CLEAR, 0.1, 0.5), *weekly(3, lambda _: FED, 1.2, 0.1)[1:]]
    days = [due(log, feeding_class=name).on for name in ("sensitive", "moderate", "hungry")]
    assert days == sorted(days)
    assert days[0] < days[-1]


def test_a_month_that_is_over_is_in_the_past() -> None:
    log = weekly(3, lambda _: FED, 0.2, 0.1)
    answer = due(log, today=DAY + timedelta(days=90))
    assert (answer.on, answer.reason) == (
        DAY + timedelta(days=FLUSH_DAYS),
        FlushReason.MONTH_WITHOUT_CLEAR,
    )


def test_a_flush_settles_it_and_a_poor_one_does_not() -> None:
    log = [*weekly(3, lambda _: FED, 2.5, 0.1)]
    on = log[-1].on + timedelta(days=1)
    assert due([*log, PotEvent(on, FLUSH, 0.1)]).on > on
    assert due([*log, PotEvent(on, FLUSH, 0.1, 0.1)]).on <= on


# -------------------------------------------------------------------------- data and bad input


def test_every_medium_in_a_pot_has_its_settings() -> None:
    assert set(potted_media()) == set(water_held())
    seasons = {season_of(month, south=False) for month in range(1, 13)}
    for medium in potted_media().values():
        assert 0 <= medium.bypass < 1
        assert set(medium.evaporation_mm_day) == seasons
        assert all(0.5 < depth < 6 for depth in medium.evaporation_mm_day.values())
        assert medium.bypass_source
        assert medium.evaporation_source


def test_every_feeding_class_has_its_ceiling() -> None:
    assert set(ceilings()) == set(CEILINGS)
    by_class = [ceilings()[name].value for name in ("sensitive", "moderate", "hungry")]
    assert by_class == sorted(by_class)


def test_every_figure_says_how_sure_it_is() -> None:
    known = {
        "seen", "seen, weak source", "calculated from constants", "from memory",
        "common practice, no source", "ours",
    }  # fmt: skip
    stated = [*settings().values(), *ceilings().values()]
    assert {figure.status for figure in stated} <= known
    assert all(figure.source and figure.unit for figure in stated)
    media = potted_media().values()
    assert {m.bypass_status for m in media} | {m.evaporation_status for m in media} <= known


def test_a_pot_that_was_not_told_is_taken_as_usual() -> None:
    assert pot_of(None, None) == pot_of(None, 0.0) == pot_of("bark", 12.0)


BARK = pot_of("bark", 12.0)
WET = start_of(BARK)


@pytest.mark.parametrize(("pot_cm", "ml_of_a_mm"), [(10.0, 7.854), (12.0, 11.310), (20.0, 31.416)])
def test_a_millimetre_of_evaporation_is_that_of_the_pots_area(
    pot_cm: float, ml_of_a_mm: float
) -> None:
    by_season = potted_media()["bark"].evaporation_mm_day
    winter, spring = by_season["winter"], by_season["spring"]
    found = pot_of("bark", pot_cm).evaporation_l_day
    assert found[0] * 1000 == pytest.approx(winter * ml_of_a_mm, rel=1e-4)
    assert found[3] * 1000 == pytest.approx(spring * ml_of_a_mm, rel=1e-4)


def test_a_reading_at_the_end_of_a_meter_is_one() -> None:
    # a little over sea water: conductivity.MAX_READING_MS_CM
    assert PotEvent(DAY, FED, 60.0).ec == 60.0
    with pytest.raises(ValueError, match="outside 0 to 60"):
        PotEvent(DAY, FED, 60.1)


@pytest.mark.parametrize(
    ("wrong", "sentence"),
    [
        (lambda: pot_of("mounted", 12.0), "rinse it with clear water"),
        (lambda: pot_of("gravel", 12.0), "nearest of bark"),
        (lambda: pot_of("bark", -3.0), "needs a width"),
        (lambda: replace(BARK, bypass=1.0), "between 0 and 1"),
        (lambda: start_of(BARK, -1.0), "outside 0 to 60"),
        (lambda: PotEvent(DAY, FED, 800.0), "µS/cm"),
        (lambda: PotEvent(DAY, FED, math.nan), "outside 0 to 60"),
        (lambda: PotEvent(DAY, FED, 0.5, -1.0), "tell what was poured"),
        (lambda: after_watering(BARK, WET, math.inf, 0.5), "tell what was poured"),
        (lambda: after_reading(BARK, WET, -0.1), "outside 0 to 60"),
        (lambda: between(BARK, WET, DAY, DAY - timedelta(days=1)), "earlier day first"),
        (lambda: steady_state(BARK, 0.5, lost_l=0.1, drained_l=0.0), "pour until some water"),
        (lambda: steady_state(BARK, 0.5, lost_l=0.4, drained_l=0.1), "it holds 0.29 L"),
        (lambda: flush_plan(BARK, WET, target_ec=0.2, water_ec=0.3), "aim at 0.3 or more"),
        (lambda: due([PotEvent(DAY, READING, 1.0)]), "last watered"),
        (lambda: due([PotEvent(DAY, FED, 1.0)], feeding_class="greedy"), "one of hungry"),
    ],
)  # fmt: skip
def test_what_cannot_be_is_refused_in_a_sentence(
    wrong: Callable[[], object], sentence: str
) -> None:
    with pytest.raises(ValueError, match=sentence) as refused:
        wrong()
    assert str(refused.value).endswith((".", "?"))
