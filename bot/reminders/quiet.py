"""The hours in which nobody is woken.

A clock time that a person named is kept as said; what we chose (an offered rhythm, 'later', what
comes late) waits for the morning.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import UTC, datetime, time, timedelta

from .rhythm import Due, to_local, to_utc


@dataclass(frozen=True, slots=True)
class Quiet:
    """From one clock time to another, across midnight where it begins later than it ends.

    Two times that are the same are no quiet hours at all.
    """

    start: time = time(21)
    end: time = time(8)

    def holds(self, local: datetime) -> bool:
        """Whether a local moment lies in them; the moment they end at does not."""
        clock = local.time()
        if self.start <= self.end:
            return self.start <= clock < self.end
        return clock >= self.start or clock < self.end

    def end_of(self, local: datetime) -> datetime:
        """The local moment at which the quiet hours that hold this one end."""
        over_midnight = self.start > self.end and local.time() >= self.start
        day = local.date() + timedelta(days=1) if over_midnight else local.date()
        return datetime.combine(day, self.end)


USUAL = Quiet()
"""21:00 to 08:00 local (ours)."""

LATER = timedelta(hours=3)
"""How long 'later' is (ours)."""


def awake(due: Due, zone: str, quiet: Quiet = USUAL) -> Due:
    """Return a due moment outside the quiet hours: it goes to the end of them.

    `local` stays as the rule has it, so that the rhythm goes on from there.

    Raises
    ------
    UnfitRule
        There is no such zone.
    """
    local = to_local(due.at, zone)
    if not quiet.holds(local):
        return due
    return Due(to_utc(quiet.end_of(local), zone), due.local)


def later(now: datetime, zone: str, quiet: Quiet = USUAL) -> datetime:
    """Return when to ask again after 'later' [UTC]: in three hours, or in the morning.

    Raises
    ------
    UnfitRule
        There is no such zone.
    """
    then = (now + LATER).astimezone(UTC)
    return awake(Due(then, to_local(then, zone)), zone, quiet).at
