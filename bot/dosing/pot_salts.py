"""Salts in a pot, followed through its log: how salty it is, when to flush it and with how much.

The pot is a stirred tank. Evaporation takes water only, the plant a little salt with it; watering
refills what is gone, and what runs through washes. A part of that water bypasses, and a part of
the held water stands still until a rest mixes it in, so two passes with a rest wash better than
one. Salts are counted as EC times volume [mS/cm L]: they keep their sum where EC is taken as linear
in concentration, and nothing is bound to the medium. Bark and moss do bind cations, so a flush
may need more than the model says: a runoff reading tells.
"""

from __future__ import annotations

import math
from collections.abc import Iterable
from dataclasses import dataclass, replace
from datetime import date, timedelta
from enum import StrEnum
from math import pi

from bot.almanac.pot_salts import ceilings, potted_media, settings
from bot.almanac.reference import water_held
from bot.dosing.advice import FLUSH_DAYS
from bot.dosing.conductivity import MAX_READING_MS_CM
from bot.dosing.pot_water import (
    ASSUMED_MEDIUM,
    ASSUMED_POT_CM,
    FLUSH_PASSES,
    RUNS_THROUGH,
    flush_volume_l,
    pot_volume_l,
)
from bot.dosing.season import season_of

#: A flush that two passes cannot do is tried in so many.
MOST_PASSES = 3
#: A pot is not washed nearer to its water than this times the water's EC [1]; ours.
WATER_MARGIN = 1.1
_NOTHING_L = 1e-9
_NEAR = 1e-9  # a target reached but for rounding [mS/cm]


@dataclass(frozen=True, slots=True)
class Pot:
    """A pot and its medium, as the model takes them; `pot_of` makes one.

    Parameters
    ----------
    pot_cm : upper diameter [cm]
    held_l : water held just after draining [L]
    evaporation_l_day : by month, January first [L/d]
    bypass : share of the water running through that washes nothing [1]
    stagnant : share of the held water that a pass does not reach [1]
    uptake : salts taken up, as a share of those in the water lost [1]
    """

    pot_cm: float
    held_l: float
    evaporation_l_day: tuple[float, ...]
    bypass: float
    stagnant: float
    uptake: float

    def __post_init__(self) -> None:
        if not (self.pot_cm > 0 and self.held_l > 0 and len(self.evaporation_l_day) == 12):
            raise ValueError("A pot needs a width, water that it holds and twelve evaporations.")
        if not all(0 <= share < 1 for share in (self.bypass, self.stagnant, self.uptake)):
            raise ValueError("Bypass, stagnant water and uptake lie between 0 and 1, 1 left out.")

    @property
    def volume_l(self) -> float:
        """Medium in the pot [L]."""
        return pot_volume_l(self.pot_cm)


class PotEventKind(StrEnum):
    """What happened to a pot; the log's own names."""

    FED = "fed"
    CLEAR = "clear"
    FLUSH = "flush"
    READING = "reading"


@dataclass(frozen=True, slots=True)
class PotEvent:
    """One dated entry of a plant's log.

    Parameters
    ----------
    on : the day
    kind : fed, clear, flush or reading
    ec : of what was poured, water's own salts included; of the runoff for a reading [mS/cm]
    volume_l : poured on this pot, for a flush in all passes [L]; None for as much as usual
    """

    on: date
    kind: PotEventKind
    ec: float
    volume_l: float | None = None

    def __post_init__(self) -> None:
        _check_ec(self.ec)
        if self.volume_l is not None:
            _check_volume(self.volume_l)


@dataclass(frozen=True, slots=True)
class Runoff:
    """What ran through at the last watering.

    Parameters
    ----------
    volume_l : [L]
    ec : mean of it [mS/cm]
    poured_ec : of what was poured [mS/cm]
    wash : excess of the pot over the poured, against that of the runoff [1]
    """

    volume_l: float
    ec: float
    poured_ec: float
    wash: float


@dataclass(frozen=True, slots=True)
class PotState:
    """The water in a pot and the salts in it; `start_of` makes the first.

    Parameters
    ----------
    salt : in the pot's water [mS/cm L]
    salt_sd : standard uncertainty of it [mS/cm L]
    water_l : held now [L]
    days_since_clear : since clear water ran through, at the start since then [d]
    runoff : of a watering on this day, None where nothing ran through
    brought, washed_out, taken_up, corrected : salts since the start [mS/cm L]; start + brought +
        corrected = salt + washed_out + taken_up
    """

    salt: float
    salt_sd: float
    water_l: float
    days_since_clear: int = 0
    runoff: Runoff | None = None
    brought: float = 0.0
    washed_out: float = 0.0
    taken_up: float = 0.0
    corrected: float = 0.0

    @property
    def ec(self) -> float:
        """EC of the pore water as it is now, dry or wet [mS/cm]."""
        return self.salt / self.water_l

    @property
    def ec_sd(self) -> float:
        """Standard uncertainty of that EC [mS/cm]."""
        return self.salt_sd / self.water_l


@dataclass(frozen=True, slots=True)
class SteadyState:
    """EC where a rhythm leads in the end [mS/cm]: after and before a watering, of the runoff."""

    ec_after: float
    ec_before: float
    runoff_ec: float


class FlushReason(StrEnum):
    """Why a flush is due."""

    OVER_CEILING = "over_ceiling"
    MONTH_WITHOUT_CLEAR = "month_without_clear"


@dataclass(frozen=True, slots=True)
class FlushDue:
    """When a flush is due, past or to come.

    Parameters
    ----------
    on : the day
    reason : which of the two came first
    ec, ec_sd : of the wet pot after the last watering up to that day [mS/cm]
    ceiling_ec : [mS/cm]
    """

    on: date
    reason: FlushReason
    ec: float
    ec_sd: float
    ceiling_ec: float


@dataclass(frozen=True, slots=True)
class FlushPlan:
    """A flush in passes with a rest between.

    Parameters
    ----------
    passes_l : water of each pass [L], none where the pot is at the target already
    rest_min : between two passes [min]
    ec_before : of the wet pot [mS/cm]
    ec_after, ec_after_sd : after the last rest [mS/cm]
    reaches : whether that is the target
    usual_l : what is poured by the usual rule, for comparison [L]
    """

    passes_l: tuple[float, ...]
    rest_min: float
    ec_before: float
    ec_after: float
    ec_after_sd: float
    reaches: bool
    usual_l: float


# ------------------------------------------------------------------------------ pot and start


def pot_of(medium: str | None, pot_cm: float | None, *, south: bool = False) -> Pot:
    """The pot of a medium and a width.

    Parameters
    ----------
    medium : canonical name, None where unknown (taken as bark)
    pot_cm : upper diameter [cm], None or 0 where unknown (taken as 12)
    south : southern hemisphere

    Returns
    -------
    Pot

    Raises
    ------
    ValueError
        For a mounted plant, which has no pot, or a medium that is not in the almanac.

    References
    ----------
    bot/almanac/watering.toml for what a medium holds, bot/almanac/pot_salts.toml for the rest.
    """
    name, width_cm = medium or ASSUMED_MEDIUM, pot_cm or ASSUMED_POT_CM
    if name == "mounted":
        raise ValueError("A mounted plant has no pot that holds salts: rinse it with clear water.")
    if name not in potted_media():
        raise ValueError(
            f"No figures for {name!r}: take the nearest of {', '.join(potted_media())}."
        )
    entry = potted_media()[name]
    area_m2 = pi / 4 * (width_cm / 100) ** 2
    return Pot(
        pot_cm=width_cm,
        held_l=pot_volume_l(width_cm) * water_held()[name].held,
        evaporation_l_day=tuple(
            entry.evaporation_mm_day[season_of(month, south=south)] * area_m2
            for month in range(1, 13)
        ),
        bypass=entry.bypass,
        stagnant=settings()["stagnant_share"].value,
        uptake=settings()["uptake_share"].value,
    )


def start_of(pot: Pot, ec: float | None = None, ec_sd: float | None = None) -> PotState:
    """A wet pot to start from.

    Parameters
    ----------
    pot : the pot
    ec : of its water [mS/cm], None where nothing is known
    ec_sd : standard uncertainty of that [mS/cm]; None takes the whole of it

    Returns
    -------
    PotState
    """
    known_ec = settings()["start_ec"].value if ec is None else ec
    sd = known_ec if ec_sd is None else ec_sd
    _check_ec(known_ec)
    return PotState(known_ec * pot.held_l, sd * pot.held_l, pot.held_l)


def unknown_start_ec_ms_cm() -> float:
    """How far the EC of a pot may be off at the start where nothing is known of it [mS/cm]."""
    return settings()["start_ec"].value


def wet_ec(pot: Pot, state: PotState) -> float:
    """EC of the pot's water once it is refilled with pure water [mS/cm]: what ceilings mean."""
    return state.salt / pot.held_l


# ------------------------------------------------------------------------- one step of the pot


def between(pot: Pot, state: PotState, since: date, until: date) -> PotState:
    """Evaporation and uptake from one day to another.

    Water is lost evenly until the medium holds a fifth of what it can. The plant takes salts in
    proportion to those dissolved: what is left goes as the water left to a small power.

    Parameters
    ----------
    pot, state : the pot, as it was on the first day
    since, until : days; the season goes by their months

    Returns
    -------
    PotState

    Raises
    ------
    ValueError
        Where the second day is before the first.
    """
    days = (until - since).days
    if days < 0:
        raise ValueError(f"{until} is before {since}: tell the earlier day first.")
    if days == 0:
        return state
    driest_l = settings()["driest_share"].value * pot.held_l
    lost_l = min(_evaporated_l(pot, since, days), max(state.water_l - driest_l, 0.0))
    water_l = state.water_l - lost_l
    left = float((water_l / state.water_l) ** pot.uptake)
    return PotState(
        salt=state.salt * left,
        salt_sd=state.salt_sd * left,
        water_l=water_l,
        days_since_clear=state.days_since_clear + days,
        brought=state.brought,
        washed_out=state.washed_out,
        taken_up=state.taken_up + state.salt * (1 - left),
        corrected=state.corrected,
    )


def _evaporated_l(pot: Pot, since: date, days: int) -> float:
    first, last = since + timedelta(days=1), since + timedelta(days=days)
    if (first.year, first.month) == (last.year, last.month):
        return days * pot.evaporation_l_day[first.month - 1]
    months = ((since + timedelta(days=day)).month for day in range(1, days + 1))
    return sum(pot.evaporation_l_day[month - 1] for month in months)


def after_watering(
    pot: Pot, state: PotState, volume_l: float, ec: float, *, clear: bool = False
) -> PotState:
    """One watering, and the rest after it: refills first, then washes with what runs through.

    Parameters
    ----------
    pot, state : the pot before it
    volume_l : poured on this pot [L]
    ec : of it [mS/cm]
    clear : no feed in it; counts as clear water where some runs through

    Returns
    -------
    PotState
        With the runoff.

    Raises
    ------
    ValueError
        For a volume or an EC out of range.

    References
    ----------
    Mass balance of a stirred tank with a bypass and a stagnant part. In the steady state the
    runoff is that of FAO Irrigation and Drainage Paper 29 Rev. 1: EC of the water over the
    leaching fraction.
    """
    _check_volume(volume_l)
    _check_ec(ec)
    refill_l = min(volume_l, pot.held_l - state.water_l)
    drained_l = volume_l - refill_l
    salt = state.salt + refill_l * ec
    error = settings()["watering_error"].value
    if drained_l <= _NOTHING_L:
        return replace(
            state,
            salt=salt,
            salt_sd=math.hypot(state.salt_sd, error * refill_l * ec),
            water_l=state.water_l + refill_l,
            runoff=None,
            brought=state.brought + refill_l * ec,
        )
    kept, through = _pass(pot, drained_l)
    excess_ec = salt / pot.held_l - ec
    runoff = Runoff(drained_l, ec + excess_ec * through, ec, kept / through)
    after = pot.held_l * (ec + excess_ec * kept)
    moved = refill_l * ec + abs(after - salt)
    return PotState(
        salt=after,
        salt_sd=math.hypot(kept * state.salt_sd, error * moved),
        water_l=pot.held_l,
        days_since_clear=0 if clear else state.days_since_clear,
        runoff=runoff,
        brought=state.brought + volume_l * ec,
        washed_out=state.washed_out + drained_l * runoff.ec,
        taken_up=state.taken_up,
        corrected=state.corrected,
    )


def _pass(pot: Pot, drained_l: float) -> tuple[float, float]:
    """Of the pot's excess over the poured EC: the share kept, and the mean in the runoff [1]."""
    moving = 1 - pot.stagnant
    turns = (1 - pot.bypass) * drained_l / (pot.held_l * moving)
    washed = -math.expm1(-turns)
    return 1 - moving * washed, (1 - pot.bypass) * washed / turns


def after_flush(
    pot: Pot, state: PotState, volume_l: float, ec: float, *, passes: int = FLUSH_PASSES
) -> PotState:
    """Clear water in equal passes with a rest between; parameters as in `after_watering`."""
    for _ in range(passes):
        state = after_watering(pot, state, volume_l / passes, ec, clear=True)
    return state


def after_reading(pot: Pot, state: PotState, runoff_ec: float) -> PotState:
    """A runoff reading weighed against the model, each by how sure it is.

    Parameters
    ----------
    pot, state : the pot, on the day of the reading
    runoff_ec : reading at 25 °C [mS/cm]; of the watering before it on that day, where some ran
        through, else of the wet pot's water

    Returns
    -------
    PotState
        The uncertainty is less than before.

    Raises
    ------
    ValueError
        For an EC out of range.
    """
    _check_ec(runoff_ec)
    figures = settings()
    read_sd = math.hypot(figures["runoff_error"].value * runoff_ec, figures["meter_error"].value)
    if state.runoff is None:
        read = runoff_ec * pot.held_l
        read_sd *= pot.held_l
    else:
        poured_ec, wash = state.runoff.poured_ec, state.runoff.wash
        read = max(poured_ec + (runoff_ec - poured_ec) * wash, 0.0) * pot.held_l
        read_sd *= wash * pot.held_l
    trust = state.salt_sd**2 / (state.salt_sd**2 + read_sd**2)
    change = trust * (read - state.salt)
    return replace(
        state,
        salt=state.salt + change,
        salt_sd=state.salt_sd * math.sqrt(1 - trust),
        corrected=state.corrected + change,
    )


# ----------------------------------------------------------------------------------- a log


def simulate(
    pot: Pot,
    events: Iterable[PotEvent],
    *,
    start: PotState | None = None,
    until: date | None = None,
) -> tuple[PotState, ...]:
    """Follow a pot through its log.

    Parameters
    ----------
    pot : the pot
    events : in any order; those of one day in the order in which they happened
    start : on the day of the first event, before it; None where nothing is known
    until : a last day to look at, not before the last event

    Returns
    -------
    tuple of PotState
        After each event by date, and one more at `until` where it is given.

    Raises
    ------
    ValueError
        For a day before the last event.
    """
    state = start_of(pot) if start is None else start
    states, today = [], None
    for event in sorted(events, key=_day_of):
        if today is not None:
            state = between(pot, state, today, event.on)
        state = _after(pot, state, event)
        states.append(state)
        today = event.on
    if until is not None:
        states.append(between(pot, state, today or until, until))
    return tuple(states)


def _day_of(event: PotEvent) -> date:
    return event.on


def _after(pot: Pot, state: PotState, event: PotEvent) -> PotState:
    if event.kind is PotEventKind.READING:
        return after_reading(pot, state, event.ec)
    if event.kind is PotEventKind.FLUSH:
        flush_l = flush_volume_l(pot.pot_cm) if event.volume_l is None else event.volume_l
        return after_flush(pot, state, flush_l, event.ec)
    if event.volume_l is None:
        volume_l = (pot.held_l - state.water_l) / (1 - RUNS_THROUGH)
    else:
        volume_l = event.volume_l
    clear = event.kind is PotEventKind.CLEAR
    return after_watering(pot, state, volume_l, event.ec, clear=clear)


def steady_state(pot: Pot, applied_ec: float, *, lost_l: float, drained_l: float) -> SteadyState:
    """Where the same watering leads, again and again.

    Parameters
    ----------
    pot : the pot
    applied_ec : of every watering [mS/cm]
    lost_l : by evaporation and plant between two waterings [L]
    drained_l : running through at each [L]

    Returns
    -------
    SteadyState

    Raises
    ------
    ValueError
        Where nothing runs through, or more is lost than the pot holds.

    References
    ----------
    Closed form of `after_watering` and `between`; without uptake the runoff is that of FAO
    Irrigation and Drainage Paper 29 Rev. 1, EC of the water over the leaching fraction.
    """
    _check_ec(applied_ec)
    if not drained_l > 0:
        raise ValueError("Salts pile up while nothing runs through: pour until some water does.")
    if not 0 <= lost_l < pot.held_l:
        raise ValueError(
            f"Between waterings this pot cannot lose {lost_l:g} L: it holds {pot.held_l:.2f} L."
        )
    left = 1 - lost_l / pot.held_l
    kept, through = _pass(pot, drained_l)
    after = applied_ec * (1 - left * kept) / (1 - left**pot.uptake * kept)
    refilled = after * left**pot.uptake + applied_ec * (1 - left)
    return SteadyState(
        ec_after=after,
        ec_before=after * left ** (pot.uptake - 1),
        runoff_ec=applied_ec + (refilled - applied_ec) * through,
    )


# ---------------------------------------------------------------------------------- flushing


def flush_due(
    pot: Pot,
    events: Iterable[PotEvent],
    *,
    feeding_class: str,
    today: date,
    start: PotState | None = None,
    ceiling_ec: float | None = None,
) -> FlushDue:
    """When a flush is due: over the ceiling, or a month without clear water, the first of both.

    Parameters
    ----------
    pot, events, start : as in `simulate`; without clear water in the log the month runs from its
        first day
    feeding_class : hungry, moderate or sensitive, for the ceiling
    today : feeds to come are taken like the last one, at the log's interval, from today on
    ceiling_ec : of the wet pot [mS/cm], None for that of the class

    Returns
    -------
    FlushDue
        A day in the past where it is overdue.

    Raises
    ------
    ValueError
        For a log without a watering, or an unknown class.

    References
    ----------
    `advice.MONTHLY` for the month; the ceilings in bot/almanac/pot_salts.toml are settings.
    """
    log = sorted(events, key=_day_of)
    watered = [event for event in log if event.kind is not PotEventKind.READING]
    if not watered:
        raise ValueError("No watering on record for this pot: tell when it was last watered.")
    ceiling = ceiling_ec_of(feeding_class) if ceiling_ec is None else ceiling_ec
    states = simulate(pot, log, start=start)
    path = list(zip(log, states, strict=True))
    month_on = log[-1].on + timedelta(days=FLUSH_DAYS - states[-1].days_since_clear)
    over = _over_since(pot, path, ceiling)
    for event in _feeds_ahead(watered, today=today, until=month_on):
        if over is not None:
            break
        before, state = path[-1]
        path.append((event, _after(pot, between(pot, state, before.on, event.on), event)))
        over = _over_since(pot, path, ceiling)
    if over is not None and path[over][0].on <= month_on:
        event, state = path[over]
        return _due(pot, state, event.on, FlushReason.OVER_CEILING, ceiling)
    state = [state for event, state in path if event.on <= max(month_on, log[0].on)][-1]
    return _due(pot, state, month_on, FlushReason.MONTH_WITHOUT_CLEAR, ceiling)


def ceiling_ec_of(feeding_class: str) -> float:
    """EC that the water of a wet pot should not exceed [mS/cm]."""
    if feeding_class not in ceilings():
        raise ValueError(f"No ceiling for {feeding_class!r}: one of {', '.join(ceilings())}.")
    return ceilings()[feeding_class].value


def flushing_helps(water_ec: float, ceiling_ec: float) -> bool:
    """Whether clear water of an EC can bring a pot under its ceiling with some room [mS/cm]."""
    return water_ec * WATER_MARGIN < ceiling_ec


def _feeds_ahead(watered: list[PotEvent], *, today: date, until: date) -> list[PotEvent]:
    """The last feed again and again, at the mean interval of the log."""
    fed = [event for event in watered if event.kind is PotEventKind.FED]
    if not fed:
        return []
    days = sorted({event.on for event in watered})
    interval = settings()["usual_interval"].value
    if len(days) > 1:
        interval = (days[-1] - days[0]).days / (len(days) - 1)
    step = timedelta(days=max(round(interval), 1))
    on, ahead = max(days[-1] + step, today), []
    while on <= until:
        ahead.append(replace(fed[-1], on=on))
        on += step
    return ahead


def _over_since(pot: Pot, path: list[tuple[PotEvent, PotState]], ceiling_ec: float) -> int | None:
    """Since which event the pot is over, up to the end; None where it ends below."""
    since = None
    for number, (_, state) in enumerate(path):
        if wet_ec(pot, state) <= ceiling_ec:
            since = None
        elif since is None:
            since = number
    return since


def _due(pot: Pot, state: PotState, on: date, reason: FlushReason, ceiling_ec: float) -> FlushDue:
    return FlushDue(on, reason, wet_ec(pot, state), state.salt_sd / pot.held_l, ceiling_ec)


def flush_plan(pot: Pot, state: PotState, *, target_ec: float, water_ec: float) -> FlushPlan:
    """Clear water in two passes with a rest between, or three where two do not do.

    A pass is at most a pot volume besides what refills the pot, so that two are the usual flush.

    Parameters
    ----------
    pot, state : the pot, today
    target_ec : of the wet pot after the last rest, an absolute figure [mS/cm]
    water_ec : of the clear water [mS/cm]

    Returns
    -------
    FlushPlan
        Where three passes do not reach the target, what they do reach.

    Raises
    ------
    ValueError
        For a target below the water's own EC, or an EC out of range.

    References
    ----------
    Wash-out of a stirred tank, V = W ln((C0 - Cw) / (Ct - Cw)) / (1 - b), here with a stagnant
    part that a rest mixes in; UC ANR, houseplants: water of twice the volume of the pot.
    """
    _check_ec(target_ec)
    _check_ec(water_ec)
    if target_ec < water_ec:
        raise ValueError(
            f"Water of {water_ec:g} mS/cm cannot bring a pot to {target_ec:g}: aim at "
            f"{water_ec:g} or more, or take purer water."
        )
    before = wet_ec(pot, state)
    passes_l: tuple[float, ...] = ()
    after = state
    if before > target_ec:
        for passes in range(FLUSH_PASSES, MOST_PASSES + 1):
            passes_l = _passes_l(pot, state, passes, target_ec=target_ec, water_ec=water_ec)
            after = state
            for volume_l in passes_l:
                after = after_watering(pot, after, volume_l, water_ec, clear=True)
            if wet_ec(pot, after) <= target_ec + _NEAR:
                break
    return FlushPlan(
        passes_l=passes_l,
        rest_min=settings()["rest_min"].value,
        ec_before=before,
        ec_after=wet_ec(pot, after),
        ec_after_sd=after.salt_sd / pot.held_l,
        reaches=wet_ec(pot, after) <= target_ec + _NEAR,
        usual_l=flush_volume_l(pot.pot_cm),
    )


def _passes_l(
    pot: Pot, state: PotState, passes: int, *, target_ec: float, water_ec: float
) -> tuple[float, ...]:
    """Equal passes to the target, none over a pot volume; the first refills the pot as well."""
    refill_l = pot.held_l - state.water_l
    refilled_ec = (state.salt + refill_l * water_ec) / pot.held_l
    kept = ((target_ec - water_ec) / (refilled_ec - water_ec)) ** (1 / passes)
    moving = 1 - pot.stagnant
    pass_l = pot.volume_l
    if kept > pot.stagnant:
        turns = -math.log((kept - pot.stagnant) / moving)
        pass_l = min(turns * pot.held_l * moving / (1 - pot.bypass), pass_l)
    return refill_l + pass_l, *[pass_l] * (passes - 1)


def _check_ec(ec: float) -> None:
    if not 0 <= ec <= MAX_READING_MS_CM:
        raise ValueError(
            f"An EC of {ec:g} mS/cm is outside 0 to {MAX_READING_MS_CM:g} mS/cm: is it in µS/cm?"
        )


def _check_volume(volume_l: float) -> None:
    if not 0 <= volume_l < math.inf:
        raise ValueError(f"A pot cannot get {volume_l:g} L: tell what was poured on it.")
