"""What is due to an owner, reckoned: what is said now, and when each reminder comes next."""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import UTC, datetime, time

from bot.records.pings import DueOwner, DueReminder, Promised
from bot.reminders.catching_up import Step, Waiting, catch_up
from bot.reminders.quiet import USUAL, Quiet
from bot.reminders.rhythm import Rhythm

#: After how long what could not be reckoned is tried again [ms] (ours).
TRIED_AGAIN_MS = 3_600_000


@dataclass(frozen=True, slots=True)
class Pinging:
    """A reminder that is said now, and how it came to be."""

    reminder: DueReminder
    step: Step


@dataclass(frozen=True, slots=True)
class Due:
    """What is due to one owner.

    Attributes
    ----------
    owner : whose
    at : the instant at which it was reckoned
    pinging : what is said now, all of it in one message
    promised : what the records keep of it
    """

    owner: DueOwner
    at: datetime
    pinging: tuple[Pinging, ...]
    promised: tuple[Promised, ...]

    @property
    def topic(self) -> int | None:
        """The topic in which it is said, of what `by_topic` gave."""
        return self.pinging[0].reminder.topic if self.pinging else None

    def by_topic(self) -> list[Due]:
        """What is said now, parted by the topics in which it was set: a message each."""
        topics = dict.fromkeys(p.reminder.topic for p in self.pinging)
        return [
            replace(self, pinging=tuple(p for p in self.pinging if p.reminder.topic == topic))
            for topic in topics
        ]

    @property
    def ping_ids(self) -> list[int]:
        """The numbers of the pings that are said now."""
        return [p.reminder.ping_id for p in self.pinging]


def reckon(owner: DueOwner, now_ms: int, quiet: Quiet | None = None) -> Due:
    """What is to be said and kept of what is due.

    Parameters
    ----------
    owner : from `pings.due`
    now_ms : the instant [ms since 1970]
    quiet : the hours in which nobody is woken; None: those of the owner, otherwise ours
    """
    now = instant(now_ms)
    by_id = {r.id: r for r in owner.reminders}
    steps = catch_up(map(_waiting, owner.reminders), now, quiet or quiet_of(owner.quiet_min))
    pinging = tuple(Pinging(by_id[s.reminder_id], s) for s in steps if s.pings)
    return Due(owner, now, pinging, tuple(_promised(by_id[s.reminder_id], s) for s in steps))


def quiet_of(minutes: tuple[int | None, int | None] | None) -> Quiet:
    """An owner's quiet hours from minutes of the day; ours where they did not set both ends."""
    start, end = minutes or (None, None)
    if start is None or end is None:
        return USUAL
    return Quiet(time(*divmod(start, 60)), time(*divmod(end, 60)))


def put_off(owner: DueOwner, now_ms: int) -> Due:
    """What is due to an owner and cannot be reckoned now: tried again in an hour, none of it lost.

    The fault may be ours, so nothing ends; until it is mended it holds up nobody else.
    """
    later = (
        Promised(
            r.owner_id,
            r.id,
            r.ping_id,
            r.due_ms,
            pings=False,
            next_ms=now_ms + TRIED_AGAIN_MS,
            next_local=r.due_local,
            moved=True,
        )
        for r in owner.reminders
    )
    return Due(owner, instant(now_ms), (), tuple(later))


def instant(ms: int) -> datetime:
    """An instant of the records as one with a zone."""
    return datetime.fromtimestamp(ms / 1000, UTC)


def _waiting(row: DueReminder) -> Waiting:
    return Waiting(
        row.id,
        Rhythm(row.rule, datetime.fromisoformat(row.start), row.zone),
        instant(row.due_ms),
        datetime.fromisoformat(row.due_local) if row.due_local is not None else None,
        pinged=row.pinged,
        as_said=not row.offered,
        moved=row.moved,
    )


def _promised(row: DueReminder, step: Step) -> Promised:
    then = step.next
    return Promised(
        row.owner_id,
        row.id,
        row.ping_id,
        row.due_ms,
        pings=step.pings,
        next_ms=None if then is None else round(then.at.timestamp() * 1000),
        next_local=None if then is None else then.local.isoformat(timespec="seconds"),
        moved=step.moved,
    )
