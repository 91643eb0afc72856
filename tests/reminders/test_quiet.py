"""Nobody is woken; a rhythm goes on from where its rule has it."""

from __future__ import annotations

from datetime import UTC, datetime, time

import pytest

from bot.reminders.quiet import LATER, USUAL, Quiet, awake, later
from bot.reminders.rhythm import Due, to_local, to_utc

SIESTA = Quiet(time(13), time(16))
NEVER = Quiet(time(8), time(8))


@pytest.mark.parametrize(
    ("quiet", "clock", "holds"),
    [
        (USUAL, "20:59:59", False),
        (USUAL, "21:00", True),
        (USUAL, "00:00", True),
        (USUAL, "07:59:59", True),
        (USUAL, "08:00", False),
        (SIESTA, "12:59", False),
        (SIESTA, "13:00", True),
        (SIESTA, "16:00", False),
        (NEVER, "08:00", False),
        (NEVER, "03:00", False),
    ],
)
def test_when_it_is_quiet(quiet: Quiet, clock: str, holds: bool) -> None:
    assert quiet.holds(datetime.fromisoformat(f"2026-03-01T{clock}")) is holds


# The night of 29 March is an hour shorter in Warsaw, that of 25 October an hour longer; in
# Sydney it is 4 October and 5 April (IANA time zone database).
@pytest.mark.parametrize(
    ("zone", "local", "moved"),
    [
        ("Europe/Warsaw", "2026-03-01T12:00", "2026-03-01T12:00"),
        ("Europe/Warsaw", "2026-03-01T21:00", "2026-03-02T08:00"),
        ("Europe/Warsaw", "2026-03-01T03:00", "2026-03-01T08:00"),
        ("Europe/Warsaw", "2026-03-28T22:00", "2026-03-29T08:00"),
        ("Europe/Warsaw", "2026-10-25T02:30", "2026-10-25T08:00"),
        ("Australia/Sydney", "2026-10-03T23:00", "2026-10-04T08:00"),
        ("America/New_York", "2026-12-31T23:59", "2027-01-01T08:00"),
    ],
)
def test_what_is_due_at_night_comes_in_the_morning(zone: str, local: str, moved: str) -> None:
    meant = datetime.fromisoformat(local)
    found = awake(Due(to_utc(meant, zone), meant), zone)
    assert to_local(found.at, zone) == datetime.fromisoformat(moved)
    assert found.local == meant


@pytest.mark.parametrize(
    ("zone", "now", "then"),
    [
        ("Europe/Warsaw", "2026-03-01T09:00", "2026-03-01T12:00"),
        ("Europe/Warsaw", "2026-03-01T17:59", "2026-03-01T20:59"),
        ("Europe/Warsaw", "2026-03-01T18:00", "2026-03-02T08:00"),
        ("Europe/Warsaw", "2026-03-01T23:30", "2026-03-02T08:00"),
        # Three hours on the clock are four on the wall.
        ("Europe/Warsaw", "2026-03-29T01:30", "2026-03-29T08:00"),
    ],
)
def test_later_is_in_three_hours_or_in_the_morning(zone: str, now: str, then: str) -> None:
    found = later(to_utc(datetime.fromisoformat(now), zone), zone)
    assert to_local(found, zone) == datetime.fromisoformat(then)


def test_later_without_quiet_hours_is_three_hours_of_the_clock() -> None:
    now = datetime(2026, 3, 29, 0, 30, tzinfo=UTC)
    assert later(now, "Europe/Warsaw", NEVER) - now == LATER
