"""Rules at a clock time in a zone: RFC 5545's own examples, gaps and folds, and a second engine.

Sources: RFC 5545, sections 3.3.5, 3.3.10 and 3.8.5.3; when clocks change: IANA time zone database.
"""

from __future__ import annotations

from calendar import monthrange
from collections.abc import Iterator
from datetime import UTC, date, datetime, time, timedelta
from itertools import islice

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from bot.reminders.early import Shift, done_early
from bot.reminders.rhythm import (
    Due,
    Rhythm,
    UnfitRule,
    check,
    coming,
    next_due,
    of_interval,
    to_local,
    to_utc,
)

NEW_YORK, WARSAW, SYDNEY = "America/New_York", "Europe/Warsaw", "Australia/Sydney"


def local(text: str) -> datetime:
    return datetime.fromisoformat(text)


def walk(rhythm: Rhythm, after: datetime) -> Iterator[Due]:
    """The occurrences one after another, as reminders are gone through."""
    due = next_due(rhythm, after)
    while due is not None:
        yield due
        due = next_due(rhythm, due.at)


def days(rhythm: Rhythm, many: int) -> list[str]:
    before = to_utc(rhythm.start, rhythm.zone) - timedelta(seconds=1)
    return [due.local.date().isoformat() for due in islice(walk(rhythm, before), many)]


# The examples of RFC 5545, 3.8.5.3, each at 09:00 in New York, as far as they are for us.
EXAMPLES = [
    ("19970902", "FREQ=DAILY;INTERVAL=10;COUNT=5",
     "1997-09-02 1997-09-12 1997-09-22 1997-10-02 1997-10-12"),
    ("19970902", "FREQ=WEEKLY;UNTIL=19971224T000000Z",
     "1997-09-02 1997-09-09 1997-09-16 1997-09-23 1997-09-30 1997-10-07 1997-10-14 1997-10-21 "
     "1997-10-28 1997-11-04 1997-11-11 1997-11-18 1997-11-25 1997-12-02 1997-12-09 1997-12-16 "
     "1997-12-23"),
    ("19970905", "FREQ=MONTHLY;UNTIL=19971224T000000Z;BYDAY=1FR",
     "1997-09-05 1997-10-03 1997-11-07 1997-12-05"),
    ("19970907", "FREQ=MONTHLY;INTERVAL=2;COUNT=10;BYDAY=1SU,-1SU",
     "1997-09-07 1997-09-28 1997-11-02 1997-11-30 1998-01-04 1998-01-25 1998-03-01 1998-03-29 "
     "1998-05-03 1998-05-31"),
    ("19970922", "FREQ=MONTHLY;COUNT=6;BYDAY=-2MO",
     "1997-09-22 1997-10-20 1997-11-17 1997-12-22 1998-01-19 1998-02-16"),
    ("19970928", "FREQ=MONTHLY;BYMONTHDAY=-3",
     "1997-09-28 1997-10-29 1997-11-28 1997-12-29 1998-01-29 1998-02-26"),
    ("19970930", "FREQ=MONTHLY;COUNT=10;BYMONTHDAY=1,-1",
     "1997-09-30 1997-10-01 1997-10-31 1997-11-01 1997-11-30 1997-12-01 1997-12-31 1998-01-01 "
     "1998-01-31 1998-02-01"),
    ("19970610", "FREQ=YEARLY;COUNT=10;BYMONTH=6,7",
     "1997-06-10 1997-07-10 1998-06-10 1998-07-10 1999-06-10 1999-07-10 2000-06-10 2000-07-10 "
     "2001-06-10 2001-07-10"),
    ("19970519", "FREQ=YEARLY;BYDAY=20MO", "1997-05-19 1998-05-18 1999-05-17"),
    ("19970313", "FREQ=YEARLY;BYMONTH=3;BYDAY=TH",
     "1997-03-13 1997-03-20 1997-03-27 1998-03-05 1998-03-12 1998-03-19 1998-03-26"),
    ("19970902", "FREQ=MONTHLY;BYDAY=FR;BYMONTHDAY=13",
     "1998-02-13 1998-03-13 1998-11-13 1999-08-13 2000-10-13"),
    ("19961105", "FREQ=YEARLY;INTERVAL=4;BYMONTH=11;BYDAY=TU;BYMONTHDAY=2,3,4,5,6,7,8",
     "1996-11-05 2000-11-07 2004-11-02"),
    ("19970904", "FREQ=MONTHLY;COUNT=3;BYDAY=TU,WE,TH;BYSETPOS=3",
     "1997-09-04 1997-10-07 1997-11-06"),
    ("19970929", "FREQ=MONTHLY;BYDAY=MO,TU,WE,TH,FR;BYSETPOS=-2",
     "1997-09-29 1997-10-30 1997-11-27 1997-12-30 1998-01-29 1998-02-26 1998-03-30"),
    ("19970805", "FREQ=WEEKLY;INTERVAL=2;COUNT=4;BYDAY=TU,SU",
     "1997-08-05 1997-08-10 1997-08-19 1997-08-24"),
    ("20070115", "FREQ=MONTHLY;BYMONTHDAY=15,30;COUNT=5",
     "2007-01-15 2007-01-30 2007-02-15 2007-03-15 2007-03-30"),
]  # fmt: skip


@pytest.mark.parametrize(("start", "rule", "expected"), EXAMPLES, ids=[e[1] for e in EXAMPLES])
def test_the_examples_of_the_standard(start: str, rule: str, expected: str) -> None:
    wanted = expected.split()
    rhythm = Rhythm(rule, datetime.strptime(start + "09", "%Y%m%d%H"), NEW_YORK)
    ends = "COUNT" in rule or "UNTIL" in rule
    assert days(rhythm, len(wanted) + ends) == wanted


# What people say of their plants.
SAID = [
    ("every first Sunday", "FREQ=MONTHLY;BYDAY=1SU", "2026-01-04",
     "2026-01-04 2026-02-01 2026-03-01 2026-04-05 2026-05-03"),
    ("every ten days from May to September", "FREQ=DAILY;INTERVAL=10;BYMONTH=5,6,7,8,9",
     "2026-08-20", "2026-08-20 2026-08-30 2026-09-09 2026-09-19 2026-09-29 2027-05-07 2027-05-17"),
    ("on the 31st: short months have none", "FREQ=MONTHLY;BYMONTHDAY=31", "2026-01-31",
     "2026-01-31 2026-03-31 2026-05-31 2026-07-31 2026-08-31 2026-10-31 2026-12-31"),
    ("monthly from the 31st: as if it were said", "FREQ=MONTHLY", "2026-01-31",
     "2026-01-31 2026-03-31 2026-05-31"),
    ("the last day of every month", "FREQ=MONTHLY;BYMONTHDAY=-1", "2028-01-31",
     "2028-01-31 2028-02-29 2028-03-31 2028-04-30"),
    ("once a year on 29 February", "FREQ=YEARLY", "2096-02-29", "2096-02-29 2104-02-29"),
    ("every other Tuesday and Friday", "FREQ=WEEKLY;INTERVAL=2;BYDAY=TU,FR", "2026-03-03",
     "2026-03-03 2026-03-06 2026-03-17 2026-03-20"),
    ("until a day, which counts", "FREQ=DAILY;UNTIL=20260303", "2026-03-01",
     "2026-03-01 2026-03-02 2026-03-03"),
    ("until a clock time on the wall", "FREQ=DAILY;UNTIL=20260303T080000", "2026-03-01",
     "2026-03-01 2026-03-02"),
    ("once", None, "2026-03-22", "2026-03-22"),
    ("a day that there never is", "FREQ=MONTHLY;BYDAY=FR;BYSETPOS=6", "2026-02-01", ""),
]  # fmt: skip


@pytest.mark.parametrize(
    ("rule", "start", "expected"), [s[1:] for s in SAID], ids=[s[0] for s in SAID]
)
def test_what_people_say(rule: str | None, start: str, expected: str) -> None:
    wanted = expected.split()
    ends = rule is None or "UNTIL" in rule or not wanted
    found = days(Rhythm(rule, local(f"{start}T09:00"), SYDNEY), len(wanted) + ends)
    assert found == wanted


# Clock time said, zone, its instant, and the clock at that instant.
CLOCKS = [
    # gaps: moved on by what is left out
    ("2026-03-29T02:30", WARSAW, "2026-03-29T01:30Z", "2026-03-29T03:30"),
    ("2026-03-29T02:00", WARSAW, "2026-03-29T01:00Z", "2026-03-29T03:00"),
    ("2026-03-08T02:30", NEW_YORK, "2026-03-08T07:30Z", "2026-03-08T03:30"),
    ("2026-10-04T02:30", SYDNEY, "2026-10-03T16:30Z", "2026-10-04T03:30"),
    ("2026-10-04T02:15", "Australia/Lord_Howe", "2026-10-03T15:45Z", "2026-10-04T02:45"),
    ("2026-09-06T00:30", "America/Santiago", "2026-09-06T04:30Z", "2026-09-06T01:30"),
    # folds: the first of the two
    ("2026-10-25T02:30", WARSAW, "2026-10-25T00:30Z", "2026-10-25T02:30"),
    ("2026-11-01T01:30", NEW_YORK, "2026-11-01T05:30Z", "2026-11-01T01:30"),
    ("2026-04-05T02:30", SYDNEY, "2026-04-04T15:30Z", "2026-04-05T02:30"),
    ("2026-04-05T01:45", "Australia/Lord_Howe", "2026-04-04T14:45Z", "2026-04-05T01:45"),
    ("2026-04-04T23:30", "America/Santiago", "2026-04-05T02:30Z", "2026-04-04T23:30"),
    # zones that changed their rules: Brazil gave up summer time in 2019, Mexico in 2022, Turkey
    # winter time in 2016, and Samoa left out 30 December 2011
    ("2018-11-04T00:30", "America/Sao_Paulo", "2018-11-04T03:30Z", "2018-11-04T01:30"),
    ("2019-11-03T00:30", "America/Sao_Paulo", "2019-11-03T03:30Z", "2019-11-03T00:30"),
    ("2022-04-03T02:30", "America/Mexico_City", "2022-04-03T08:30Z", "2022-04-03T03:30"),
    ("2023-04-02T02:30", "America/Mexico_City", "2023-04-02T08:30Z", "2023-04-02T02:30"),
    ("2015-11-08T03:30", "Europe/Istanbul", "2015-11-08T00:30Z", "2015-11-08T03:30"),
    ("2016-11-06T03:30", "Europe/Istanbul", "2016-11-06T00:30Z", "2016-11-06T03:30"),
    ("2011-12-30T09:00", "Pacific/Apia", "2011-12-30T19:00Z", "2011-12-31T09:00"),
]  # fmt: skip


@pytest.mark.parametrize(("said", "zone", "instant", "shown"), CLOCKS)
def test_a_clock_time_that_is_skipped_or_comes_twice(
    said: str, zone: str, instant: str, shown: str
) -> None:
    found = to_utc(local(said), zone)
    assert found == local(instant)
    assert found.utcoffset() == timedelta(0)
    assert to_local(found, zone) == local(shown)


@pytest.mark.parametrize(
    ("zone", "start", "instants"),
    [
        (WARSAW, "2026-03-28T02:30", "03-28T01:30 03-29T01:30 03-30T00:30"),
        (WARSAW, "2026-10-24T02:30", "10-24T00:30 10-25T00:30 10-26T01:30"),
        (SYDNEY, "2026-10-03T02:30", "10-02T16:30 10-03T16:30 10-04T15:30"),
        (SYDNEY, "2026-04-04T02:30", "04-03T15:30 04-04T15:30 04-05T16:30"),
    ],
)
def test_every_day_at_half_past_two_comes_once_a_day_across_the_change(
    zone: str, start: str, instants: str
) -> None:
    begun = local(start)
    found = walk(Rhythm("FREQ=DAILY", begun, zone), to_utc(begun, zone) - timedelta(hours=1))
    assert [f"{due.at:%m-%dT%H:%M}" for due in islice(found, 3)] == instants.split()


def test_a_clock_time_in_the_gap_is_still_to_come_when_the_clock_has_passed_it() -> None:
    rhythm = Rhythm("FREQ=DAILY", datetime(2026, 3, 1, 2, 30), WARSAW)
    after = datetime(2026, 3, 29, 1, 15, tzinfo=UTC)
    assert to_local(after, WARSAW) == datetime(2026, 3, 29, 3, 15)
    due = next_due(rhythm, after)
    assert due == Due(datetime(2026, 3, 29, 1, 30, tzinfo=UTC), datetime(2026, 3, 29, 2, 30))


def test_a_day_that_a_zone_left_out_is_not_pinged_twice() -> None:
    rhythm = Rhythm("FREQ=DAILY", datetime(2011, 12, 28, 9), "Pacific/Apia")
    # The 30th falls on the same instant as the 31st.
    assert days(rhythm, 4) == ["2011-12-28", "2011-12-29", "2011-12-30", "2012-01-01"]
    found = coming(rhythm, datetime(2011, 12, 28, tzinfo=UTC), datetime(2012, 1, 1, tzinfo=UTC))
    assert [due.at.isoformat()[:13] for due in found] == [
        "2011-12-28T19", "2011-12-29T19", "2011-12-30T19", "2011-12-31T19",
    ]  # fmt: skip


UNFIT = [
    "", "FREQ=", "FREQ=HOURLY", "FREQ=MINUTELY", "FREQ=SECONDLY", "INTERVAL=2", "freq=daily",
    "FREQ=DAILY;BYHOUR=9", "FREQ=DAILY;BYMINUTE=1", "FREQ=YEARLY;BYWEEKNO=20",
    "FREQ=YEARLY;BYYEARDAY=100", "FREQ=DAILY;FREQ=DAILY", "FREQ=DAILY;INTERVAL=0",
    "FREQ=DAILY;INTERVAL=1001", "FREQ=DAILY;COUNT=1001", "FREQ=DAILY;COUNT=2;UNTIL=20260301",
    "FREQ=DAILY;UNTIL=20260230", "FREQ=DAILY;UNTIL=tomorrow", "FREQ=WEEKLY;BYMONTHDAY=1",
    "FREQ=MONTHLY;BYMONTHDAY=32", "FREQ=DAILY;BYMONTHDAY=1",
    "FREQ=YEARLY;BYMONTH=2;BYMONTHDAY=30", "FREQ=MONTHLY;BYMONTH=6,9;BYMONTHDAY=31",
    "FREQ=MONTHLY;BYMONTHDAY=0", "FREQ=MONTHLY;BYMONTH=13",
    "FREQ=MONTHLY;BYDAY=XX", "FREQ=WEEKLY;BYDAY=1SU", "FREQ=MONTHLY;BYDAY=0SU",
    "FREQ=MONTHLY;BYDAY=54SU", "FREQ=DAILY;BYSETPOS=1", "FREQ=DAILY;", "FREQ=DAILY;X-MINE=1",
    "RRULE:FREQ=DAILY", "FREQ=DAILY\nDTSTART:20260301T090000", "FREQ=DAILY;BYMONTH=1" + ",1" * 99,
]  # fmt: skip


@pytest.mark.parametrize("rule", UNFIT)
def test_a_rule_that_we_do_not_take_is_refused(rule: str) -> None:
    with pytest.raises(UnfitRule):
        check(rule)
    with pytest.raises(UnfitRule):
        next_due(Rhythm(rule, datetime(2026, 3, 1, 9), WARSAW), datetime(2026, 3, 1, tzinfo=UTC))


@pytest.mark.parametrize("zone", ["", "Warsaw", "../../etc/passwd", "/etc/passwd", "Europe/\0"])
def test_a_zone_that_there_is_not_is_refused(zone: str) -> None:
    with pytest.raises(UnfitRule):
        to_utc(datetime(2026, 3, 1, 9), zone)


def test_a_first_moment_that_is_none_is_refused() -> None:
    with pytest.raises(UnfitRule):
        Rhythm.of("FREQ=DAILY", "yesterday", WARSAW)
    assert Rhythm.of(None, "2026-03-01T09:00:00", WARSAW).start == datetime(2026, 3, 1, 9)
    with pytest.raises(UnfitRule):
        next_due(
            Rhythm("FREQ=DAILY", datetime(2026, 3, 1, tzinfo=UTC), WARSAW),
            datetime(2026, 3, 1, tzinfo=UTC),
        )


@pytest.mark.parametrize("rule", [None, *(example[1] for example in EXAMPLES)])
def test_a_rule_of_the_standard_is_taken(rule: str | None) -> None:
    check(rule)


# --- laws, and a second engine --------------------------------------------------------------------

ZONES = st.sampled_from(
    [WARSAW, NEW_YORK, SYDNEY, "Australia/Lord_Howe", "America/Santiago", "Africa/Casablanca",
     "Asia/Kolkata", "Pacific/Apia", "America/Sao_Paulo", "UTC"]
)  # fmt: skip
WEEKDAYS = ("MO", "TU", "WE", "TH", "FR", "SA", "SU")
MOMENTS = st.datetimes(datetime(2009, 1, 1), datetime(2027, 1, 1)).map(
    lambda moment: moment.replace(second=0, microsecond=0)
)
INTERVALS = st.integers(1, 40)


@st.composite
def rules(draw: st.DrawFn) -> str:
    frequency = draw(st.sampled_from(["DAILY", "WEEKLY", "MONTHLY", "YEARLY"]))
    parts = [f"FREQ={frequency}", f"INTERVAL={draw(st.integers(1, 4))}"]
    if frequency == "WEEKLY" and draw(st.booleans()):
        parts.append("BYDAY=" + ",".join(draw(st.sets(st.sampled_from(WEEKDAYS), min_size=1))))
    if frequency == "MONTHLY" and draw(st.booleans()):
        day = draw(st.sampled_from(["BYDAY=1SU", "BYDAY=-1MO", "BYMONTHDAY=31", "BYMONTHDAY=-1"]))
        parts.append(day)
    if draw(st.booleans()) and frequency != "YEARLY":
        parts.append("BYMONTH=" + ",".join(map(str, draw(st.sets(st.integers(1, 12), min_size=6)))))
    if draw(st.booleans()):
        parts.append(f"COUNT={draw(st.integers(1, 300))}")
    return ";".join(parts)


RHYTHMS = st.builds(Rhythm, st.none() | rules(), MOMENTS, ZONES)
INSTANTS = st.datetimes(datetime(2008, 1, 1), datetime(2030, 1, 1), timezones=st.just(UTC))


@settings(deadline=None)
@given(rhythm=RHYTHMS, after=INSTANTS)
def test_the_next_is_strictly_after_and_at_its_own_clock_time(
    rhythm: Rhythm, after: datetime
) -> None:
    due = next_due(rhythm, after)
    if due is None:
        return
    assert due.at > after
    assert due.local.time() == rhythm.start.time()
    assert due.local >= rhythm.start
    shown = to_local(due.at, rhythm.zone)
    gap = shown - due.local
    # Either the clock shows it, or it shows what is left out more, and no instant shows it.
    assert gap >= timedelta(0)
    if gap:
        around = (due.at + timedelta(minutes=minutes) for minutes in range(-1500, 1500, 15))
        assert due.local not in {to_local(at, rhythm.zone) for at in around}


@settings(deadline=None)
@given(rhythm=RHYTHMS, after=INSTANTS, span=st.timedeltas(timedelta(0), timedelta(days=900)))
def test_going_from_one_to_the_next_meets_all_that_are_coming(
    rhythm: Rhythm, after: datetime, span: timedelta
) -> None:
    before = after + span
    met = []
    for due in walk(rhythm, after):
        if due.at >= before:
            break
        met.append(due)
    assert met == coming(rhythm, after, before)


@settings(deadline=None)
@given(rhythm=RHYTHMS, after=INSTANTS)
def test_an_old_reminder_comes_when_it_would_have_if_every_ping_had_been_gone_through(
    rhythm: Rhythm, after: datetime
) -> None:
    begun = to_utc(rhythm.start, rhythm.zone) - timedelta(seconds=1)
    after = min(max(after, begun), begun + timedelta(days=1500))
    passed = len(coming(rhythm, begun, after + timedelta(microseconds=1)))
    stepped = next(islice(walk(rhythm, begun), passed, None), None)
    assert next_due(rhythm, after) == stepped


def nth_weekday(day: date, weekday: int, nth: int) -> bool:
    last = monthrange(day.year, day.month)[1]
    place = (day.day - 1) // 7 + 1 if nth > 0 else -((last - day.day) // 7 + 1)
    return day.weekday() == weekday and place == nth


@settings(deadline=None)
@given(
    start=MOMENTS,
    zone=ZONES,
    interval=INTERVALS,
    months=st.sets(st.integers(1, 12), min_size=1),
    after=INSTANTS,
)
def test_days_apart_in_some_months_against_a_count_of_days(
    start: datetime, zone: str, interval: int, months: set[int], after: datetime
) -> None:
    rule = f"FREQ=DAILY;INTERVAL={interval};BYMONTH={','.join(map(str, sorted(months)))}"
    span = timedelta(days=400)
    expected = {
        to_utc(datetime.combine(day, start.time()), zone)
        for day in every_day(after - timedelta(days=3), after + span + timedelta(days=3))
        if day.month in months and (day - start.date()).days % interval == 0 and day >= start.date()
    }
    found = {due.at for due in coming(Rhythm(rule, start, zone), after, after + span)}
    assert found == {at for at in expected if after < at < after + span}


@settings(deadline=None)
@given(
    start=MOMENTS,
    zone=ZONES,
    weekday=st.integers(0, 6),
    nth=st.sampled_from([1, 2, 3, 4, 5, -1, -2]),
    after=INSTANTS,
)
def test_the_nth_weekday_of_the_month_against_a_calendar(
    start: datetime, zone: str, weekday: int, nth: int, after: datetime
) -> None:
    rhythm = Rhythm(f"FREQ=MONTHLY;BYDAY={nth}{WEEKDAYS[weekday]}", start, zone)
    span = timedelta(days=800)
    expected = {
        to_utc(datetime.combine(day, start.time()), zone)
        for day in every_day(after - timedelta(days=3), after + span + timedelta(days=3))
        if nth_weekday(day, weekday, nth) and day >= start.date()
    }
    found = {due.at for due in coming(rhythm, after, after + span)}
    assert found == {at for at in expected if after < at < after + span}


@settings(deadline=None)
@given(
    start=MOMENTS,
    zone=ZONES,
    interval=st.integers(1, 9),
    weekdays=st.sets(st.integers(0, 6), min_size=1),
    after=INSTANTS,
)
def test_weekdays_of_every_so_many_weeks_against_a_count_of_weeks(
    start: datetime, zone: str, interval: int, weekdays: set[int], after: datetime
) -> None:
    named = ",".join(WEEKDAYS[weekday] for weekday in sorted(weekdays))
    rhythm = Rhythm(f"FREQ=WEEKLY;INTERVAL={interval};BYDAY={named}", start, zone)
    first_monday = start.date() - timedelta(days=start.weekday())
    span = timedelta(days=200)
    expected = {
        to_utc(datetime.combine(day, start.time()), zone)
        for day in every_day(after - timedelta(days=3), after + span + timedelta(days=3))
        if day.weekday() in weekdays
        and (day - first_monday).days // 7 % interval == 0
        and day >= start.date()
    }
    found = {due.at for due in coming(rhythm, after, after + span)}
    assert found == {at for at in expected if after < at < after + span}


def every_day(since: datetime, until: datetime) -> Iterator[date]:
    for number in range((until - since).days + 1):
        yield (since + timedelta(days=number)).date()


# --- done early -----------------------------------------------------------------------------------

TEN_DAYS = Rhythm("FREQ=DAILY;INTERVAL=10", datetime(2026, 3, 1, 9), WARSAW)
FIRST_SUNDAY = Rhythm("FREQ=MONTHLY;BYDAY=1SU", datetime(2026, 3, 1, 9), WARSAW)


@pytest.mark.parametrize(
    ("rhythm", "due", "done", "then"),
    [
        # Three days of ten early is a third at most; four is too early to count.
        (TEN_DAYS, "2026-03-11T09:00", "2026-03-08T12:00", "2026-03-18T09:00"),
        (TEN_DAYS, "2026-03-11T09:00", "2026-03-11T07:00", "2026-03-21T09:00"),
        (TEN_DAYS, "2026-03-11T09:00", "2026-03-07T12:00", None),
        # What names its days passes the coming one over and keeps its days.
        (FIRST_SUNDAY, "2026-04-05T09:00", "2026-03-27T18:00", "2026-05-03T09:00"),
        (FIRST_SUNDAY, "2026-04-05T09:00", "2026-03-15T18:00", None),
        # Only what is to come can be done early.
        (TEN_DAYS, "2026-03-11T09:00", "2026-03-11T09:00", None),
        (TEN_DAYS, "2026-03-11T09:00", "2026-03-12T12:00", None),
    ],
)
def test_done_early_moves_the_next(rhythm: Rhythm, due: str, done: str, then: str | None) -> None:
    shift = done_early(rhythm, local(due), to_utc(local(done), WARSAW))
    if then is None:
        assert shift is None
    else:
        assert shift is not None
        assert shift.next == Due(to_utc(local(then), WARSAW), local(then))


def test_done_early_counts_from_the_day_only_where_the_rule_counts() -> None:
    done_at = to_utc(local("2026-03-09T20:00"), WARSAW)
    counted = done_early(TEN_DAYS, local("2026-03-11T09:00"), done_at)
    assert counted is not None
    assert counted.rhythm == Rhythm(TEN_DAYS.rule, datetime(2026, 3, 9, 9), WARSAW)
    named = done_early(FIRST_SUNDAY, local("2026-04-05T09:00"), to_utc(local("2026-04-04"), WARSAW))
    assert named is not None
    assert named.rhythm == FIRST_SUNDAY


def test_once_is_done_early_on_its_day_and_then_it_has_ended() -> None:
    once = Rhythm(None, datetime(2026, 3, 22, 18), WARSAW)
    assert done_early(once, once.start, to_utc(local("2026-03-21T18:00"), WARSAW)) is None
    found = done_early(once, once.start, to_utc(local("2026-03-22T08:00"), WARSAW))
    assert found == Shift(once, None)


def test_the_last_feed_of_the_season_does_not_count_by_the_winter_that_follows() -> None:
    season = Rhythm("FREQ=DAILY;INTERVAL=10;BYMONTH=5,6,7,8,9", datetime(2026, 8, 20, 9), WARSAW)
    last = local("2026-09-29T09:00")
    assert done_early(season, last, to_utc(local("2026-09-20T12:00"), WARSAW)) is None
    shift = done_early(season, last, to_utc(local("2026-09-28T12:00"), WARSAW))
    assert shift is not None
    assert shift.next is not None
    assert shift.next.local.date().month == 5


@pytest.mark.parametrize(
    ("rule", "counts"),
    [
        (None, False),
        ("FREQ=DAILY;INTERVAL=10", True),
        ("FREQ=DAILY;INTERVAL=10;BYMONTH=5,6", True),
        ("FREQ=WEEKLY", True),
        ("FREQ=WEEKLY;BYDAY=SU", False),
        ("FREQ=MONTHLY;BYMONTHDAY=1", False),
        ("FREQ=DAILY;COUNT=3", False),
    ],
)
def test_which_rules_count_from_the_last_time(rule: str | None, counts: bool) -> None:
    assert of_interval(rule) is counts


@settings(deadline=None)
@given(
    rhythm=RHYTHMS, after=INSTANTS, early=st.timedeltas(timedelta(minutes=1), timedelta(days=40))
)
def test_what_was_done_early_is_not_asked_for_again_before_a_third_of_the_interval(
    rhythm: Rhythm, after: datetime, early: timedelta
) -> None:
    due = next_due(rhythm, after)
    if due is None:
        return
    shift = done_early(rhythm, due.local, due.at - early)
    if shift is not None and shift.next is not None:
        assert shift.next.at > due.at - early
        assert shift.next.local.time() == rhythm.start.time() != time.max
