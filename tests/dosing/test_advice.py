"""What a plant is due. Rules: common practice, no source, unless a source stands beside one."""

from __future__ import annotations

from math import prod

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.almanac.plants import genera
from bot.dosing.advice import AFTER_REPOT_DAYS, FLUSH_DAYS, Action, PlantState, advise
from bot.dosing.season import season_of

PHAL = genera()["Phalaenopsis"]
NOBILE = genera()["Dendrobium nobile"]
CATASETUM = genera()["Catasetum"]
GROWTHS = (None, "growing", "new_roots", "new_leaves", "new_pseudobulbs", "flowering", "slow",
           "resting", "seedling")  # fmt: skip
MEDIA = (None, "bark", "sphagnum", "clay_pellets", "mounted", "mixed")


def due(state: PlantState, month: int = 6, *, south: bool = False) -> tuple[str, str]:
    advice = advise(state, month=month, season=season_of(month, south=south), south=south)
    return str(advice.action), advice.reasons[0].code


@pytest.mark.parametrize(
    ("state", "month", "expected"),
    [
        (PlantState(genus=PHAL), 6, ("feed", "season.summer")),
        (PlantState(genus=PHAL, growth="new_roots"), 1, ("feed", "growth.new_roots")),
        (PlantState(), 6, ("feed", "plant-unknown")),
        (PlantState(genus=PHAL, growth="resting"), 6, ("clear", "rest.growth")),
        # Winter rest of the nobile type: nurseries and Yen 2008 (stop feeding in autumn)
        (PlantState(genus=NOBILE), 12, ("nothing", "rest.dry")),
        # Dormant Catasetum: American Orchid Society, Clarke 2012
        (PlantState(genus=CATASETUM, growth="growing"), 1, ("nothing", "rest.dry")),
        (PlantState(genus=PHAL, days_since_repot=3), 6, ("clear", "repotted")),
        (PlantState(genus=PHAL, days_since_repot=3, growth="new_roots", growth_days=0), 6,
         ("feed", "growth.new_roots")),
        (PlantState(genus=PHAL, days_since_repot=AFTER_REPOT_DAYS), 6, ("feed", "season.summer")),
        (PlantState(genus=PHAL, days_since_fed=7, days_since_clear=FLUSH_DAYS), 6,
         ("flush", "flush.due")),
        (PlantState(genus=PHAL, days_since_fed=7, days_since_clear=FLUSH_DAYS - 1), 6,
         ("feed", "season.summer")),
        (PlantState(genus=PHAL, days_since_fed=7, days_since_added=40), 6, ("flush", "flush.due")),
        (PlantState(genus=PHAL, days_since_added=400), 6, ("feed", "season.summer")),
        (PlantState(genus=PHAL, days_since_fed=30, days_since_flush=29), 6,
         ("feed", "season.summer")),
        (PlantState(genus=PHAL, medium="mounted", days_since_fed=7, days_since_clear=30), 6,
         ("clear", "flush.mounted")),
        (PlantState(genus=PHAL, days_since_fed=0), 6, ("nothing", "given-today")),
        (PlantState(genus=PHAL, types_rest=True), 1, ("clear", "types-rest")),
        (PlantState(genus=PHAL, types_rest=True, growth="growing"), 1, ("feed", "growth.growing")),
    ],
)  # fmt: skip
def test_what_a_plant_is_due(state: PlantState, month: int, expected: tuple[str, str]) -> None:
    assert due(state, month) == expected


@pytest.mark.parametrize(("regime", "days"), [("weekly", 7), ("fortnightly", 14), ("monthly", 28)])
def test_a_rhythm_is_waited_for(regime: str, days: int) -> None:
    def action(since: int) -> Action:
        state = PlantState(genus=PHAL, days_since_fed=since, days_since_clear=1)
        return advise(state, month=6, season="summer", south=False, regime=regime).action

    assert action(days - 1) is Action.CLEAR
    assert action(days) is Action.FEED


DAYS = st.one_of(st.none(), st.integers(0, 400))
STATES = st.builds(
    PlantState,
    genus=st.sampled_from([None, *genera().values()]),
    growth=st.sampled_from(GROWTHS),
    medium=st.sampled_from(MEDIA),
    days_since_added=DAYS,
    days_since_fed=DAYS,
    days_since_clear=DAYS,
    days_since_flush=DAYS,
    days_since_repot=DAYS,
    growth_days=DAYS,
    types_rest=st.booleans(),
)


@given(STATES, st.integers(1, 12), st.booleans())
def test_a_resting_plant_is_never_fed(state: PlantState, month: int, south: bool) -> None:
    advice = advise(state, month=month, season=season_of(month, south=south), south=south)
    asleep = state.growth == "resting" or (
        state.genus is not None and state.genus.rests_in(month, south=south)
    )
    assert advice.reasons
    assert not (asleep and advice.action in (Action.FEED, Action.FLUSH))


@given(STATES, st.integers(1, 12))
def test_a_flush_follows_feed(state: PlantState, month: int) -> None:
    advice = advise(state, month=month, season=season_of(month, south=False), south=False)
    if advice.action is Action.FLUSH:
        assert state.days_since_fed is not None


@given(STATES, st.integers(1, 12))
def test_the_south_is_the_north_half_a_year_later(state: PlantState, month: int) -> None:
    later = (month + 5) % 12 + 1
    north = advise(state, month=month, season=season_of(month, south=False), south=False)
    south = advise(state, month=later, season=season_of(later, south=True), south=True)
    assert north == south


@given(STATES, st.integers(1, 12), st.floats(0.01, 1.0))
def test_the_chain_never_raises_what_was_asked(
    state: PlantState, month: int, strength: float
) -> None:
    advice = advise(
        state, month=month, season=season_of(month, south=False), south=False, strength=strength
    )
    if advice.action is Action.FEED:
        assert prod(step.factor for step in advice.chain) <= strength * (1 + 1e-12)
