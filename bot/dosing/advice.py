"""What a plant is due on a watering day: feed, clear water, a flush or nothing, and why.

The rules are tried in the order of `_RULES`; the first that speaks decides. Ceilings are the
dose's: see `strength`.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from enum import StrEnum
from typing import TypeAlias

from bot.almanac.plants import Genus
from bot.dosing.plants import resting
from bot.dosing.strength import COMMON, GROWING, Step, chain

#: A repotted plant gets no feed for so long, unless new roots show [d].
AFTER_REPOT_DAYS = 21
#: Clear water or a flush is due after so long [d]: once a month.
FLUSH_DAYS = 28
#: Days between two feeds, where a rhythm was chosen.
RHYTHM_DAYS = {"weekly": 7, "fortnightly": 14, "monthly": 28}


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


@dataclass(frozen=True, slots=True)
class Reason:
    """Why: a rule's code, its source, and the weeks it speaks of, if any."""

    code: str
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
        found = rule(state, day)
        if found is not None:
            return found
    return _feed(state, day)


# --- the rules, in order ------------------------------------------------------------------------


def _given_today(state: PlantState, day: _Day) -> Advice | None:
    given = (state.days_since_fed, state.days_since_clear, state.days_since_flush)
    return _nothing("given-today", COMMON) if 0 in given else None


def _rest(state: PlantState, day: _Day) -> Advice | None:
    """A month of rest is not lifted by a stated growth."""
    genus = state.genus
    if genus is not None and resting((genus,), month=day.month, season=day.season, south=day.south):
        if genus.rest_kind == "dry":
            return _nothing("rest.dry", genus.rest_source)
        return _clear("rest.genus", genus.rest_source)
    return _clear("rest.growth", COMMON) if state.growth == "resting" else None


def _repotted(state: PlantState, day: _Day) -> Advice | None:
    """Cut and bruised roots burn; new ones show that they have healed."""
    days = state.days_since_repot
    rooted = state.growth == "new_roots" and (state.growth_days or 0) <= (days or 0)
    if days is None or days >= AFTER_REPOT_DAYS or rooted:
        return None
    return _clear("repotted", COMMON, days // 7)


def _flush_due(state: PlantState, day: _Day) -> Advice | None:
    """Fed since the last clear water, and that, or the beginning, is a month ago."""
    washed = _latest(state.days_since_clear, state.days_since_flush, state.days_since_repot)
    fed = state.days_since_fed
    if fed is None or (washed is not None and fed >= washed):
        return None
    since = washed if washed is not None else state.days_since_added
    if since is None or since < FLUSH_DAYS:
        return None
    if state.medium == "mounted":
        return _clear("flush.mounted", COMMON, since // 7)
    return Advice(Action.FLUSH, (Reason("flush.due", COMMON, since // 7),))


def _latest(*days: int | None) -> int | None:
    known = [d for d in days if d is not None]
    return min(known, default=None)


def _types_rest(state: PlantState, day: _Day) -> Advice | None:
    """Named by its genus alone, it may be one of those that rest: the careful side."""
    awake = state.growth in GROWING or state.growth == "flowering"
    return _clear("types-rest", COMMON) if state.types_rest and not awake else None


def _not_yet(state: PlantState, day: _Day) -> Advice | None:
    between = RHYTHM_DAYS.get(day.regime or "")
    fed = state.days_since_fed
    if between is None or fed is None or fed >= between:
        return None
    return _clear("not-yet", COMMON, fed // 7)


_Rule: TypeAlias = Callable[[PlantState, _Day], Advice | None]
_RULES: tuple[_Rule, ...] = (_given_today, _rest, _repotted, _flush_due, _types_rest, _not_yet)


def _feed(state: PlantState, day: _Day) -> Advice:
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
        first = Reason("plant-unknown", COMMON)
    elif state.growth is not None:
        first = Reason(f"growth.{state.growth}", COMMON)
    else:
        first = Reason(f"season.{day.season}", COMMON)
    said = f"growth.{state.growth}"  # the step of a seedling would say it twice
    further = (Reason(s.rule, s.source) for s in steps[1:] if f"growth.{s.rule}" != said)
    reasons = {r.code: r for r in (first, *further)}
    return Advice(Action.FEED, tuple(reasons.values()), tuple(steps))


def _clear(code: str, source: str, weeks: int | None = None) -> Advice:
    return Advice(Action.CLEAR, (Reason(code, source, weeks),))


def _nothing(code: str, source: str) -> Advice:
    return Advice(Action.NOTHING, (Reason(code, source),))
