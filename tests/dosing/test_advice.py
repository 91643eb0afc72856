"""What a plant is due. Rules: common practice, no source, unless a source stands beside one."""

from __future__ import annotations

from dataclasses import replace
from math import prod

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.almanac.plants import Genus, genera
from bot.dosing.advice import AFTER_REPOT_DAYS, FLUSH_DAYS, Action, Advice, PlantState, advise
from bot.dosing.season import season_of

PHAL = genera()["Phalaenopsis"]
NOBILE = genera()["Dendrobium nobile"]
CATASETUM = genera()["Catasetum"]
KINGIANUM = genera()["Dendrobium kingianum"]
GROWTHS = (None, "growing", "new_roots", "new_leaves", "new_pseudobulbs", "flowering", "slow",
           "resting", "seedling")  # fmt: skip
MEDIA = (None, "bark", "sphagnum", "clay_pellets", "mounted", "mixed")
REGIMES = (None, "every_watering", "weekly", "fortnightly", "monthly")
SEASONS = ("winter", "spring", "summer", "autumn")


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
        # Dendrobium kingianum, no feed in winter: Orchid Council of New Zealand, Hutton
        (PlantState(genus=KINGIANUM), 12, ("clear", "rest.genus")),
        # rest goes before what else is due; what was given today before rest
        (PlantState(genus=NOBILE, days_since_fed=7, days_since_clear=40), 12,
         ("nothing", "rest.dry")),
        (PlantState(genus=NOBILE, days_since_clear=0), 12, ("nothing", "given-today")),
        (PlantState(genus=NOBILE), 6, ("feed", "season.summer")),
        (PlantState(genus=PHAL, growth="slow"), 6, ("feed", "growth.slow")),
        (PlantState(genus=PHAL, days_since_repot=3), 6, ("clear", "repotted")),
        (PlantState(genus=PHAL, days_since_repot=AFTER_REPOT_DAYS - 1), 6, ("clear", "repotted")),
        # roots that were seen before it was repotted do not say that the cuts have healed
        (PlantState(genus=PHAL, days_since_repot=3, growth="new_roots", growth_days=10), 6,
         ("clear", "repotted")),
        (PlantState(genus=PHAL, days_since_repot=3, growth="new_roots", growth_days=0), 6,
         ("feed", "growth.new_roots")),
        (PlantState(genus=PHAL, days_since_repot=AFTER_REPOT_DAYS), 6, ("feed", "season.summer")),
        (PlantState(genus=PHAL, days_since_fed=7, days_since_clear=FLUSH_DAYS), 6,
         ("flush", "flush.due")),
        (PlantState(genus=PHAL, days_since_fed=7, days_since_clear=FLUSH_DAYS - 1), 6,
         ("feed", "season.summer")),
        (PlantState(genus=PHAL, days_since_fed=7, days_since_added=40), 6, ("flush", "flush.due")),
        (PlantState(genus=PHAL, days_since_added=400), 6, ("feed", "season.summer")),
        # flushed on the day of the last feed: nothing has gathered since
        (PlantState(genus=PHAL, days_since_fed=30, days_since_flush=30), 6,
         ("feed", "season.summer")),
        (PlantState(genus=PHAL, days_since_fed=30, days_since_flush=29), 6,
         ("feed", "season.summer")),
        # clear water once a month: orchid growers' pages; a fresh medium holds no salts yet: ours
        (PlantState(genus=PHAL, days_since_fed=7, days_since_added=300, days_since_repot=25), 6,
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


@pytest.mark.parametrize(
    ("state", "regime", "code", "weeks"),
    [
        (PlantState(genus=PHAL, days_since_repot=6), None, "repotted", 0),
        (PlantState(genus=PHAL, days_since_repot=15), None, "repotted", 2),
        (PlantState(genus=PHAL, days_since_fed=7, days_since_clear=35), None, "flush.due", 5),
        (PlantState(genus=PHAL, days_since_fed=7, days_since_added=29), None, "flush.due", 4),
        (PlantState(genus=PHAL, days_since_fed=20), "monthly", "not-yet", 2),
        (PlantState(genus=PHAL, growth="resting"), None, "rest.growth", None),
    ],
)
def test_a_reason_tells_full_weeks(
    state: PlantState, regime: str | None, code: str, weeks: int | None
) -> None:
    advice = advise(state, month=6, season="summer", south=False, regime=regime)
    assert [(r.code, r.weeks, r.factor) for r in advice.reasons] == [(code, weeks, 0.0)]


@pytest.mark.parametrize(
    ("state", "month", "expected"),
    # halved in winter, halved for seedlings: common practice; the factor of moss is the project's
    [
        (PlantState(genus=PHAL, medium="sphagnum"), 1,
         [("season.winter", 0.5), ("medium.sphagnum", 0.75)]),
        (PlantState(genus=PHAL, growth="new_roots"), 1, [("growth.new_roots", None)]),
        (PlantState(genus=PHAL, growth="slow"), 1,
         [("growth.slow", None), ("season.winter", 0.5)]),
        (PlantState(genus=PHAL, growth="seedling"), 6, [("growth.seedling", 0.5)]),
        (PlantState(growth="seedling"), 6, [("plant-unknown", None), ("seedling", 0.5)]),
    ],
)  # fmt: skip
def test_a_fed_plant_is_told_what_makes_it_weaker(
    state: PlantState, month: int, expected: list[tuple[str, float | None]]
) -> None:
    advice = advise(state, month=month, season=season_of(month, south=False), south=False)
    assert advice.action is Action.FEED
    assert [(r.code, r.factor) for r in advice.reasons] == expected


@pytest.mark.parametrize(
    ("state", "expected"),
    [
        # three weeks without feed after repotting, clear water after four: common practice
        (PlantState(genus=PHAL, days_since_repot=20), ("clear", "repotted")),
        (PlantState(genus=PHAL, days_since_repot=21), ("feed", "season.summer")),
        (PlantState(genus=PHAL, days_since_fed=9, days_since_clear=27), ("feed", "season.summer")),
        (PlantState(genus=PHAL, days_since_fed=9, days_since_clear=28), ("flush", "flush.due")),
        # new roots of which it was not said since when are those of now
        (PlantState(genus=PHAL, days_since_repot=0, growth="new_roots"),
         ("feed", "growth.new_roots")),
        # over its ceiling of salts, by the log of the pot (pot_salts.py); a mount has no pot
        (PlantState(genus=PHAL, too_salty=True), ("flush", "flush.salts")),
        (PlantState(genus=PHAL, too_salty=True, medium="mounted"), ("feed", "season.summer")),
        # a rescue's pause (rescue.toml), until its last day
        (PlantState(genus=PHAL, pause_days=1), ("clear", "rescue")),
        (PlantState(genus=PHAL, pause_days=0), ("feed", "season.summer")),
        # what washes salts out goes before a pause; a pause before the types that rest
        (PlantState(genus=PHAL, too_salty=True, pause_days=9), ("flush", "flush.salts")),
        (PlantState(genus=PHAL, types_rest=True, pause_days=9), ("clear", "rescue")),
        (PlantState(genus=PHAL, types_rest=True, growth="flowering"),
         ("feed", "growth.flowering")),
        (PlantState(genus=PHAL, types_rest=True, growth="slow"), ("clear", "types-rest")),
    ],
)  # fmt: skip
def test_days_salts_and_rescues_decide_at_their_limits(
    state: PlantState, expected: tuple[str, str]
) -> None:
    assert due(state) == expected


def test_a_pause_tells_its_weeks() -> None:
    state = PlantState(genus=PHAL, pause_days=15)
    [reason] = advise(state, month=6, season="summer", south=False).reasons
    assert (reason.code, reason.factor, reason.weeks) == ("rescue", 0.0, 2)
    assert reason.source == "rescue.toml"


def test_the_first_feed_after_a_rescue_is_weaker_and_says_so_first() -> None:
    state = PlantState(genus=PHAL, growth="slow", medium="sphagnum", resume_share=0.4)
    advice = advise(state, month=1, season="winter", south=False)
    assert [(r.code, r.factor) for r in advice.reasons] == [
        ("growth.slow", None),
        ("rescue.resume", 0.4),
        ("season.winter", 0.5),
        ("medium.sphagnum", 0.75),
    ]
    assert advice.chain[-1].source == "rescue.toml"
    usual = advise(replace(state, resume_share=1.0), month=1, season="winter", south=False)
    assert prod(s.factor for s in advice.chain) == pytest.approx(
        0.4 * prod(s.factor for s in usual.chain)
    )
    assert "rescue.resume" not in [r.code for r in usual.reasons]


@pytest.mark.parametrize(
    ("strength", "regime", "rule", "factor"),
    [
        (None, None, "strength.default", 0.25),
        (None, "monthly", "strength.monthly", 0.5),
        (0.75, "monthly", "strength.asked", 0.75),
    ],
)
def test_a_fed_plant_gets_the_strength_of_its_rhythm_or_what_was_asked(
    strength: float | None, regime: str | None, rule: str, factor: float
) -> None:
    state = PlantState(genus=PHAL)
    advice = advise(state, month=6, season="summer", south=False, strength=strength, regime=regime)
    assert [(s.rule, s.factor) for s in advice.chain] == [(rule, factor)]
    assert all(r.source for r in advice.reasons)


def test_a_rest_names_the_source_of_the_almanac() -> None:
    advice = advise(PlantState(genus=NOBILE), month=6, season="winter", south=True)
    assert advice.reasons[0].source == NOBILE.rest_source != ""


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


DAY = st.tuples(st.integers(1, 12), st.booleans(), st.sampled_from(REGIMES))


def on(state: PlantState, day: tuple[int, bool, str | None], strength: float | None) -> Advice:
    month, south, regime = day
    return advise(
        state,
        month=month,
        season=season_of(month, south=south),
        south=south,
        strength=strength,
        regime=regime,
    )


@given(STATES, st.integers(1, 12), st.sampled_from(SEASONS), st.booleans(),
       st.sampled_from(REGIMES))  # fmt: skip
def test_anything_that_is_known_leads_to_an_advice_with_a_reason(
    state: PlantState, month: int, season: str, south: bool, regime: str | None
) -> None:
    advice = advise(state, month=month, season=season, south=south, regime=regime)
    assert advice.reasons
    assert all(r.code and r.source for r in advice.reasons)
    assert bool(advice.chain) == (advice.action is Action.FEED)


@given(STATES, DAY, st.floats(0.01, 1.0))
def test_a_plant_that_is_said_to_rest_is_never_fed(
    state: PlantState, day: tuple[int, bool, str | None], strength: float
) -> None:
    resting = replace(state, growth="resting")
    assert on(resting, day, strength).action in (Action.CLEAR, Action.NOTHING)


@given(STATES, st.sampled_from([g for g in genera().values() if g.rest_months]), st.booleans(),
       st.data())  # fmt: skip
def test_no_plant_is_fed_in_its_months_of_rest(
    state: PlantState, genus: Genus, south: bool, data: st.DataObject
) -> None:
    northern = data.draw(st.sampled_from(genus.rest_months))
    month = (northern + 5) % 12 + 1 if south else northern
    advice = on(replace(state, genus=genus), (month, south, None), 1.0)
    assert advice.action in (Action.CLEAR, Action.NOTHING)


@given(STATES, DAY)
def test_a_flush_follows_feed(state: PlantState, day: tuple[int, bool, str | None]) -> None:
    advice = on(state, day, None)
    assert on(replace(state, days_since_fed=None), day, None).action is not Action.FLUSH
    assert on(replace(state, medium="mounted"), day, None).action is not Action.FLUSH
    if advice.action is Action.FLUSH:
        washed = (state.days_since_clear, state.days_since_flush)
        assert state.days_since_fed is not None
        assert all(d is None or d > state.days_since_fed for d in washed)
        assert all(d is None or d >= FLUSH_DAYS for d in washed)


@given(STATES, DAY)
def test_the_south_is_the_north_half_a_year_later(
    state: PlantState, day: tuple[int, bool, str | None]
) -> None:
    month, south, regime = day
    assert on(state, day, None) == on(state, ((month + 5) % 12 + 1, not south, regime), None)


@given(st.sampled_from([g for g in genera().values() if not g.rest_months]),
       st.sampled_from([g for g in GROWTHS if g != "resting"]), st.sampled_from(MEDIA), DAY,
       st.floats(0.01, 1.0))  # fmt: skip
def test_the_chain_never_raises_what_was_asked(
    genus: Genus,
    growth: str | None,
    medium: str | None,
    day: tuple[int, bool, str | None],
    strength: float,
) -> None:
    advice = on(PlantState(genus=genus, growth=growth, medium=medium), day, strength)
    assert advice.action is Action.FEED
    product = prod(step.factor for step in advice.chain)
    assert 0 < product <= strength * (1 + 1e-12)
    # the reasons tell all that the chain takes
    told = prod(r.factor for r in advice.reasons if r.factor is not None)
    assert product == pytest.approx(strength * told)
