"""What was done before it was due moves the next time."""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import datetime, timedelta
from fractions import Fraction

from .rhythm import Due, Rhythm, coming, next_due, of_interval, to_local, to_utc

#: Done within this part of the interval before its due, it counts for that due (ours).
COUNTS = Fraction(1, 3)

_LOOK_BACK = timedelta(days=366)


@dataclass(frozen=True, slots=True)
class Shift:
    """Where a rhythm goes after something was done early.

    Attributes
    ----------
    rhythm : as it was, or counted from the day it was done
    next : when it comes next; None: it has ended
    """

    rhythm: Rhythm
    next: Due | None


def done_early(rhythm: Rhythm, local: datetime, done_at: datetime) -> Shift | None:
    """Return where a rhythm goes; None where what was done does not count for what is coming.

    A rule that counts from the last time (every ten days) starts anew on that day, at its own
    clock time; one that names days (every first Sunday), and one that comes once, passes the
    coming occurrence over.

    Parameters
    ----------
    rhythm
        The reminder's.
    local
        The coming occurrence as the rule has it (`due_local`).
    done_at
        When it was done, with a zone.

    Raises
    ------
    UnfitRule
        The rhythm is not one.
    """
    due_at = to_utc(local, rhythm.zone)
    then = next_due(rhythm, due_at)
    if done_at >= due_at or not _counts(rhythm, due_at, then, done_at):
        return None
    if not of_interval(rhythm.rule):
        return Shift(rhythm, then)
    day = to_local(done_at, rhythm.zone).date()
    anew = replace(rhythm, start=datetime.combine(day, rhythm.start.time()))
    # Not the day itself: at its clock time it may be still to come.
    return Shift(anew, next_due(anew, max(done_at, to_utc(anew.start, anew.zone))))


def _counts(rhythm: Rhythm, due_at: datetime, then: Due | None, done_at: datetime) -> bool:
    """Whether it was done in the last third of the interval, the shorter of those about a due."""
    ahead = [] if then is None else [then.at - due_at]
    span = min([*ahead, _LOOK_BACK])
    behind = [due_at - due.at for due in coming(rhythm, due_at - span, due_at)[-1:]]
    if not ahead and not behind:  # the only one has no interval: on its day
        return to_local(done_at, rhythm.zone).date() == to_local(due_at, rhythm.zone).date()
    interval = min(ahead + behind)
    return due_at - done_at <= interval * COUNTS.numerator / COUNTS.denominator
