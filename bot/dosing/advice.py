"""What a plant is due on a watering day: feed, clear water, a flush or nothing, and why.

The rules are tried in the order of `_RULES`, each with its code, factor and source; the first
that speaks decides. Ceilings are the dose's: see `strength`.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from enum import StrEnum

from bot.almanac.plants import Genus
from bot.dosing.plants import resting
from bot.dosing.strength import COMMON, GROWING, Step, chain

#: A repotted plant gets no feed for so long, unless new roots show [d].
AFTER_REPOT_DAYS = 21
#: Clear water or a flush is due after so long [d]: once a month.
FLUSH_DAYS = 28
#: Days between two feeds, where a rhythm was chosen.
RHYTHM_DAYS = {"weekly": 7, "fortnightly": 14, "monthly": 28}
#: Factor of the rules that leave no feed [1].
NO_FEED = 0.0
#: Clear water once a month.
MONTHLY = "orchid growers' pages: at least once a month; no research seen"
#: The rule on salts over their ceiling by the log of the pot, and its source.
BY_SALTS = "flush.salts"
BY_MODEL = "well-mixed pot, FAO Irrigation and Drainage Paper 29; ceilings in pot_salts.toml, ours"
#: How long a rescue leaves a plant without feed, and what it begins with.
BY_RESCUE = "rescue.toml"
RESUME = "rescue.resume"
#: The rest's own source in the almanac is taken.
_OF_GENUS = "genus"


class Action(StrEnum):
    """What a plant gets."""

    FEED = "feed"
    CLEAR = "clear"
    FLUSH = "flush"
    NOTHING = "nothing"


@dataclass(frozen=True, slots=True, kw_only=True)
class PlantState:
    """What is known of one plant, or several alike, on the day.

    Parameters
    ----------
    genus : of the almanac, None where unknown
    growth, medium : canonical values or None
    days_since_... : [d], None where it never happened or is not known
    growth_days : since when it grows so [d]
    types_rest : named by its genus alone, and some types of it rest now
    too_salty : by its log its pore water passes its ceiling (`pot_salts`)
    pause_days : that a rescue leaves without feed [d]
    resume_share : of the usual strength for the first feed after a rescue [1]
    flush_first : it got too much feed, and was not rinsed since
    """

    genus: Genus | None = None
    growth: str | None = None
    medium: str | None = None
    days_since_added: int | None = None
    days_since_fed: int | None = None
    days_since_clear: int | None = None
    days_since_flush: int | None = None
    days_since_repot: int | None = None
    growth_days: int | None = None
    types_rest: bool = False
    too_salty: bool = False
    pause_days: int | None = None
    resume_share: float | None = None
    flush_first: bool = False


@dataclass(frozen=True, slots=True)
class Reason:
    """Why: one rule that spoke.

    Parameters
    ----------
    code : of the rule or step
    factor : what it takes of the strength [1]: 0 for no feed, None where it takes nothing
    source : where the rule is from
    weeks : full weeks that it speaks of, None without any
    """

    code: str
    factor: float | None
    source: str
    weeks: int | None = None


@dataclass(frozen=True, slots=True)
class Advice:
    """What a plant is due; `chain` are the steps to its strength where it is fed."""

    action: Action
    reasons: tuple[Reason, ...]
    chain: tuple[Step, ...] = ()


@dataclass(frozen=True, slots=True)
class _Day:
    """The day, and what was asked for."""

    month: int
    season: str
    south: bool
    strength: float | None
    regime: str | None


def advise(
    state: PlantState,
    *,
    month: int,
    season: str,
    south: bool,
    strength: float | None = None,
    regime: str | None = None,
) -> Advice:
    """What a plant is due on a day.

    Parameters
    ----------
    state : what is known of it
    month, season, south : of the day and place
    strength : fraction of full strength asked for [1]
    regime : chosen rhythm, None for every watering

    Returns
    -------
    Advice
        With at least one reason.
    """
    day = _Day(month, season, south, strength, regime)
    for rule in _RULES:
        if rule.speaks(state, day):
            return rule.advice(state)
    return _feed(state, day)


def days_without_feed(state: PlantState) -> int:
    """How long a plant gets no feed after its repotting [d]; 0 where new roots show, or it is over.

    Common practice, no source.
    """
    days = state.days_since_repot
    return 0 if days is None or _rooted(state, days) else max(AFTER_REPOT_DAYS - days, 0)


# --- when each rule speaks ----------------------------------------------------------------------


def _given_today(state: PlantState, day: _Day) -> bool:
    return 0 in (state.days_since_fed, state.days_since_clear, state.days_since_flush)


def _genus_rests(state: PlantState, day: _Day) -> bool:
    """A month of rest is not lifted by a stated growth."""
    plants = () if state.genus is None else (state.genus,)
    return bool(resting(plants, month=day.month, season=day.season, south=day.south))


def _genus_rests_dry(state: PlantState, day: _Day) -> bool:
    dry = state.genus is not None and state.genus.rest_kind == "dry"
    return dry and _genus_rests(state, day)


def _said_to_rest(state: PlantState, day: _Day) -> bool:
    return state.growth == "resting"


def _repotted(state: PlantState, day: _Day) -> bool:
    """Cut and bruised roots burn; new ones, seen since, show that they have healed."""
    return days_without_feed(state) > 0


def _rooted(state: PlantState, days: int) -> bool:
    """Whether new roots were seen since that many days."""
    return state.growth == "new_roots" and (state.growth_days or 0) <= days


def _flush_due(state: PlantState, day: _Day) -> bool:
    """Fed since the last clear water, and that, or the beginning, is a month ago."""
    washed, fed = _days_since_washed(state), state.days_since_fed
    if fed is None or (washed is not None and fed >= washed):
        return False
    since = _days_of_salts(state)
    return since is not None and since >= FLUSH_DAYS


def _mounted_flush_due(state: PlantState, day: _Day) -> bool:
    """Without a pot there is nothing to flush."""
    return state.medium == "mounted" and _flush_due(state, day)


def _too_salty(state: PlantState, day: _Day) -> bool:
    """Whichever comes first: the month, or the ceiling of its salts."""
    return state.too_salty and state.medium != "mounted"


def _overfed(state: PlantState, day: _Day) -> bool:
    """Feed that is too strong burns on until it is rinsed out, also on the day it was given."""
    return state.flush_first


def _mounted_overfed(state: PlantState, day: _Day) -> bool:
    return state.flush_first and state.medium == "mounted"


def _recovers(state: PlantState, day: _Day) -> bool:
    """A rescue gave it a pause that is not over."""
    return bool(state.pause_days)


def _types_rest(state: PlantState, day: _Day) -> bool:
    """Named by its genus alone, it may be one of those that rest: the careful side."""
    awake = state.growth in GROWING or state.growth == "flowering"
    return state.types_rest and not awake


def _not_yet(state: PlantState, day: _Day) -> bool:
    between = RHYTHM_DAYS.get(day.regime or "")
    fed = state.days_since_fed
    return between is not None and fed is not None and fed < between


def _days_since_washed(state: PlantState) -> int | None:
    """Days since clear water, a flush or a fresh medium, None where there was none."""
    days = (state.days_since_clear, state.days_since_flush, state.days_since_repot)
    return min((d for d in days if d is not None), default=None)


def _days_of_salts(state: PlantState) -> int | None:
    """Days in which salts could gather."""
    washed = _days_since_washed(state)
    return state.days_since_added if washed is None else washed


# --- the rules, in order ------------------------------------------------------------------------


@dataclass(frozen=True, slots=True)
class _Rule:
    """What a plant gets where `speaks` holds; `days` are those the reason tells in weeks."""

    code: str
    action: Action
    factor: float
    source: str
    speaks: Callable[[PlantState, _Day], bool]
    days: Callable[[PlantState], int | None] | None = None

    def advice(self, state: PlantState) -> Advice:
        """The advice of this rule for a plant."""
        days = self.days(state) if self.days is not None else None
        source = self.source
        if source == _OF_GENUS and state.genus is not None:
            source = state.genus.rest_source
        weeks = None if days is None else days // 7
        return Advice(self.action, (Reason(self.code, self.factor, source, weeks),))


_RULES = (
    _Rule("flush.overfed", Action.CLEAR, NO_FEED, BY_RESCUE, _mounted_overfed),
    _Rule("flush.overfed", Action.FLUSH, NO_FEED, BY_RESCUE, _overfed),
    _Rule("given-today", Action.NOTHING, NO_FEED, COMMON, _given_today),
    _Rule("rest.dry", Action.NOTHING, NO_FEED, _OF_GENUS, _genus_rests_dry),
    _Rule("rest.genus", Action.CLEAR, NO_FEED, _OF_GENUS, _genus_rests),
    _Rule("rest.growth", Action.CLEAR, NO_FEED, COMMON, _said_to_rest),
    _Rule("repotted", Action.CLEAR, NO_FEED, COMMON, _repotted, lambda s: s.days_since_repot),
    _Rule("flush.mounted", Action.CLEAR, NO_FEED, MONTHLY, _mounted_flush_due, _days_of_salts),
    _Rule("flush.due", Action.FLUSH, NO_FEED, MONTHLY, _flush_due, _days_of_salts),
    _Rule(BY_SALTS, Action.FLUSH, NO_FEED, BY_MODEL, _too_salty),
    _Rule("rescue", Action.CLEAR, NO_FEED, BY_RESCUE, _recovers, lambda s: s.pause_days),
    _Rule("types-rest", Action.CLEAR, NO_FEED, COMMON, _types_rest),
    _Rule("not-yet", Action.CLEAR, NO_FEED, COMMON, _not_yet, lambda s: s.days_since_fed),
)


def _feed(state: PlantState, day: _Day) -> Advice:
    """Feed, with what spoke for it first and then what makes it weaker."""
    steps = chain(
        strength=day.strength,
        exact=False,
        target=False,
        regime=day.regime,
        season=day.season,
        medium=state.medium,
        growth=state.growth,
    )
    if state.genus is None:
        first = Reason("plant-unknown", None, COMMON)
    elif state.growth is not None:
        first = Reason(f"growth.{state.growth}", None, COMMON)
    else:
        first = Reason(f"season.{day.season}", None, COMMON)
    if state.resume_share is not None and state.resume_share < 1:
        steps.append(Step(RESUME, state.resume_share, BY_RESCUE))
    reasons = {first.code: first}
    for step in sorted(
        steps[1:], key=lambda s: s.rule != RESUME
    ):  # the first is the strength itself
        # that a seedling is one is said once, with the factor
        code = f"growth.{step.rule}" if f"growth.{step.rule}" == first.code else step.rule
        reasons[code] = Reason(code, step.factor, step.source)
    return Advice(Action.FEED, tuple(reasons.values()), tuple(steps))
