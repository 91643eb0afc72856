"""What to do with reminders that are due, whether just now or since a week without a machine.

Of each reminder at most one ping comes of it, and it says how many were missed; all of an owner's
go into one message (`pings_of`). Nothing here raises for what the records hold: a reminder whose
rule we do not take ends.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta

from .quiet import USUAL, Quiet, awake
from .rhythm import Due, Rhythm, UnfitRule, coming, next_due, to_utc

#: What comes later than this is not woken for (ours).
LATE = timedelta(minutes=15)


@dataclass(frozen=True, slots=True)
class Waiting:
    """A reminder that is due.

    Attributes
    ----------
    reminder_id
        Which.
    rhythm
        Its rhythm.
    due_at
        When it was to come [UTC].
    due_local
        The occurrence as the rule has it; None where only the next one is to be reckoned.
    pinged
        Whether a ping for this moment was promised already.
    as_said
        Whether the person named the clock time: then quiet hours do not move it.
    moved
        Whether the person moved this one: it is not late where it stands.
    """

    reminder_id: int
    rhythm: Rhythm
    due_at: datetime
    due_local: datetime | None
    pinged: bool = False
    as_said: bool = False
    moved: bool = False


@dataclass(frozen=True, slots=True)
class Step:
    """What becomes of a reminder that is due.

    Attributes
    ----------
    reminder_id
        Which.
    pings
        Whether to ping now. Where not, it only goes on to `next`.
    due
        The occurrence that the ping is for.
    missed
        How many further occurrences passed meanwhile; the ping stands for them too.
    late
        Whether it comes later than `LATE`, so that the ping says when it was due.
    next
        When it comes next; None: it has ended.
    moved
        Whether `next` is this same occurrence, which the person had moved.
    """

    reminder_id: int
    pings: bool
    due: Due
    missed: int
    late: bool
    next: Due | None
    moved: bool = False


def catch_up(waiting: Iterable[Waiting], now: datetime, quiet: Quiet = USUAL) -> list[Step]:
    """Return what becomes of each reminder that is due, in the order in which they were due.

    Parameters
    ----------
    waiting
        One owner's.
    now
        The instant, with a zone.
    quiet
        Their quiet hours.
    """
    in_order = sorted(waiting, key=lambda one: (one.due_at, one.reminder_id))
    return [_step(one, now, quiet) for one in in_order]


def pings_of(steps: Iterable[Step]) -> list[Step]:
    """Return those that ping now: together they are one message."""
    return [step for step in steps if step.pings]


def following(
    rhythm: Rhythm, after: datetime, *, as_said: bool, quiet: Quiet = USUAL
) -> Due | None:
    """Return the next occurrence strictly after an instant, out of the quiet hours.

    Raises
    ------
    UnfitRule
        The rhythm is not one.
    """
    due = next_due(rhythm, after)
    return due if due is None or as_said else awake(due, rhythm.zone, quiet)


def _step(one: Waiting, now: datetime, quiet: Quiet) -> Step:
    now = now.astimezone(UTC)
    try:
        if one.due_local is None or one.pinged:
            return _on(one, now, quiet)
        return _ping(one, one.due_local, now, quiet)
    except UnfitRule:
        local = one.due_local or one.rhythm.start
        pings = one.due_local is not None and not one.pinged
        return Step(one.reminder_id, pings, Due(one.due_at, local), 0, False, None)


def _on(one: Waiting, now: datetime, quiet: Quiet) -> Step:
    """Without a ping to the next occurrence."""
    due = Due(one.due_at, one.due_local or one.rhythm.start)
    then = following(one.rhythm, _passed(one, now), as_said=one.as_said, quiet=quiet)
    return Step(one.reminder_id, False, due, 0, False, then)


def _ping(one: Waiting, local: datetime, now: datetime, quiet: Quiet) -> Step:
    """Now, or in the morning where it is late and now is no time to wake anybody."""
    due = Due(one.due_at, local)
    was_for = one.due_at if one.moved else _meant(one, local, quiet)
    late = now - was_for > LATE
    morning = awake(Due(now, local), one.rhythm.zone, quiet)
    if late and morning.at > now:
        return Step(one.reminder_id, False, due, 0, True, morning, one.moved)
    missed = coming(one.rhythm, was_for, now + timedelta(microseconds=1)) if was_for < now else []
    then = following(one.rhythm, _passed(one, now), as_said=one.as_said, quiet=quiet)
    return Step(one.reminder_id, True, due, len(missed), late, then)


def _meant(one: Waiting, local: datetime, quiet: Quiet) -> datetime:
    """The instant at which the rule had it, which waiting for the morning has not changed."""
    meant = Due(to_utc(local, one.rhythm.zone), local)
    return (meant if one.as_said else awake(meant, one.rhythm.zone, quiet)).at


def _passed(one: Waiting, now: datetime) -> datetime:
    """After when the rhythm goes on: the occurrence as the rule has it, though it was moved,
    and the ping, though the clock was set back since.
    """
    if one.due_local is None:
        return now
    return max(now, to_utc(one.due_local, one.rhythm.zone))
