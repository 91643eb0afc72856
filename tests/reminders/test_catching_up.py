"""A machine that was off gives one ping a reminder, and none at three in the morning."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime, timedelta

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from bot.reminders.catching_up import LATE, Step, Waiting, catch_up, following, pings_of
from bot.reminders.rhythm import Due, Rhythm, next_due, to_local, to_utc

WARSAW = "Europe/Warsaw"
DAILY = Rhythm("FREQ=DAILY", datetime(2026, 3, 2, 18), WARSAW)
WEEKLY = Rhythm("FREQ=WEEKLY;BYDAY=SU", datetime(2026, 3, 1, 9), WARSAW)
ONCE = Rhythm(None, datetime(2026, 3, 2, 18), WARSAW)


def at(local: str, zone: str = WARSAW) -> datetime:
    return to_utc(datetime.fromisoformat(local), zone)


def due(rhythm: Rhythm, local: str) -> Due:
    return Due(at(local, rhythm.zone), datetime.fromisoformat(local))


def waiting(rhythm: Rhythm, local: str, number: int = 1) -> Waiting:
    one = due(rhythm, local)
    return Waiting(number, rhythm, one.at, one.local)


def test_what_is_due_now_pings_and_comes_again() -> None:
    [step] = catch_up([waiting(DAILY, "2026-03-02T18:00")], at("2026-03-02T18:00:01"))
    expected = due(DAILY, "2026-03-02T18:00"), due(DAILY, "2026-03-03T18:00")
    assert step == Step(1, True, expected[0], missed=0, late=False, next=expected[1])


def test_a_week_without_a_machine_is_one_ping_that_says_how_many() -> None:
    [step] = catch_up([waiting(DAILY, "2026-03-02T18:00")], at("2026-03-09T12:00"))
    assert (step.pings, step.missed, step.late) == (True, 6, True)
    assert step.next == due(DAILY, "2026-03-09T18:00")


def test_all_that_is_due_to_an_owner_is_one_message_in_the_order_of_the_dues() -> None:
    several = [
        waiting(DAILY, "2026-03-02T18:00", 3),
        waiting(WEEKLY, "2026-03-01T09:00", 7),
        waiting(ONCE, "2026-03-02T18:00", 2),
    ]
    steps = catch_up(several, at("2026-03-09T12:00"))
    assert [step.reminder_id for step in pings_of(steps)] == [7, 2, 3]
    assert [step.next for step in steps] == [
        due(WEEKLY, "2026-03-15T09:00"),
        None,
        due(DAILY, "2026-03-09T18:00"),
    ]


def test_what_is_late_waits_for_the_morning_and_then_still_knows_what_it_was_for() -> None:
    night, morning = at("2026-03-05T03:00"), due(DAILY, "2026-03-05T08:00").at
    first = waiting(DAILY, "2026-03-02T18:00")
    [step] = catch_up([first], night)
    assert not step.pings
    assert step.next == Due(morning, first.due_local or datetime.max)
    [step] = catch_up([replace(first, due_at=morning)], morning)
    assert (step.pings, step.missed, step.late) == (True, 2, True)
    assert step.due.local == datetime(2026, 3, 2, 18)
    assert step.next == due(DAILY, "2026-03-05T18:00")


@pytest.mark.parametrize(
    ("as_said", "pings_at"), [(True, "2026-03-02T23:00"), (False, "2026-03-03T08:00")]
)
def test_a_clock_time_that_was_named_is_kept_at_night_too(as_said: bool, pings_at: str) -> None:
    late_night = replace(DAILY, start=datetime(2026, 3, 2, 23))
    found = following(late_night, at("2026-03-02T12:00"), as_said=as_said)
    assert found == Due(at(pings_at), datetime(2026, 3, 2, 23))
    one = Waiting(1, late_night, found.at, found.local, as_said=as_said)
    [step] = catch_up([one], found.at + timedelta(seconds=2))
    assert (step.pings, step.missed, step.late) == (True, 0, False)


def test_what_was_moved_is_not_late_and_the_rhythm_goes_on_from_its_rule() -> None:
    to_monday = replace(waiting(WEEKLY, "2026-03-01T09:00"), due_at=at("2026-03-02T09:00"))
    [step] = catch_up([replace(to_monday, moved=True)], at("2026-03-02T09:00:05"))
    assert (step.pings, step.missed, step.late) == (True, 0, False)
    assert step.next == due(WEEKLY, "2026-03-08T09:00")


def test_what_was_moved_to_an_earlier_day_does_not_come_again_on_its_own() -> None:
    to_friday = replace(waiting(WEEKLY, "2026-03-08T09:00"), due_at=at("2026-03-06T09:00"))
    [step] = catch_up([replace(to_friday, moved=True)], at("2026-03-06T09:00:05"))
    assert step.pings
    assert step.next == due(WEEKLY, "2026-03-15T09:00")


def test_what_was_moved_and_waits_for_the_morning_stays_moved() -> None:
    moved = replace(waiting(WEEKLY, "2026-03-01T09:00"), due_at=at("2026-03-02T20:00"), moved=True)
    [step] = catch_up([moved], at("2026-03-03T02:00"))
    assert (step.pings, step.moved) == (False, True)
    assert step.next == Due(at("2026-03-03T08:00"), datetime(2026, 3, 1, 9))


def test_a_clock_that_was_set_back_does_not_ping_the_same_again() -> None:
    now = at("2026-03-02T17:00")  # an hour before what is due, as the clock has it now
    [step] = catch_up([waiting(DAILY, "2026-03-02T18:00")], now)
    assert step.next == due(DAILY, "2026-03-03T18:00")


@pytest.mark.parametrize("change", [{"due_local": None}, {"pinged": True}])
def test_what_was_pinged_or_is_only_to_be_reckoned_goes_on_without_a_ping(
    change: dict[str, object],
) -> None:
    one = replace(waiting(DAILY, "2026-03-02T18:00"), **change)  # type: ignore[arg-type]
    [step] = catch_up([one], at("2026-03-04T12:00"))
    assert not step.pings
    assert step.next == due(DAILY, "2026-03-04T18:00")


@pytest.mark.parametrize(
    "unfit",
    [replace(DAILY, rule="FREQ=SECONDLY"), replace(DAILY, zone="Atlantis/Centre")],
)
def test_a_rule_or_zone_that_is_none_pings_once_and_ends(unfit: Rhythm) -> None:
    one = Waiting(1, unfit, at("2026-03-02T18:00"), datetime(2026, 3, 2, 18))
    [step] = catch_up([one], at("2026-03-02T18:00:01"))
    assert (step.pings, step.next) == (True, None)


RHYTHMS = st.builds(
    Rhythm,
    st.sampled_from(
        [
            "FREQ=DAILY",
            "FREQ=DAILY;INTERVAL=10",
            "FREQ=WEEKLY;BYDAY=MO,FR",
            "FREQ=MONTHLY;BYDAY=1SU",
        ]
    ),
    st.datetimes(datetime(2020, 1, 1), datetime(2027, 1, 1)).map(
        lambda d: d.replace(microsecond=0)
    ),
    st.sampled_from([WARSAW, "Australia/Sydney", "America/New_York", "Africa/Casablanca"]),
)


@settings(deadline=None)
@given(
    rhythm=RHYTHMS,
    begun=st.datetimes(datetime(2025, 1, 1), datetime(2026, 12, 31), timezones=st.just(UTC)),
    late=st.timedeltas(timedelta(0), timedelta(days=120)),
    as_said=st.booleans(),
)
def test_every_occurrence_is_pinged_or_counted_once_and_nobody_is_woken_late(
    rhythm: Rhythm, begun: datetime, late: timedelta, as_said: bool
) -> None:
    first = following(rhythm, begun, as_said=as_said)
    assert first is not None
    now = first.at + late
    one = Waiting(1, rhythm, first.at, first.local, as_said=as_said)
    [step] = catch_up([one], now)
    assert step.next is not None
    assert step.next.at > now
    clock = to_local(now, rhythm.zone).time()
    asleep = clock.hour >= 21 or clock.hour < 8
    if late > LATE and asleep:
        assert not step.pings
        assert to_local(step.next.at, rhythm.zone).time().isoformat() == "08:00:00"
        return
    assert step.pings
    # By an oracle of its own: step from one to the next and count.
    passed, one_more = 0, next_due(rhythm, first.at)
    while one_more is not None and one_more.at <= now:
        passed, one_more = passed + 1, next_due(rhythm, one_more.at)
    assert step.missed == passed
