"""Calendar files, held to RFC 5545 and read by others (`ical_reading`)."""

from __future__ import annotations

from collections import Counter
from datetime import UTC, date, datetime, timedelta
from zoneinfo import ZoneInfo

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from bot.reminders.catching_up import Waiting
from bot.reminders.ics import Day, Series, calendar_of, occurrences, uid_of
from bot.reminders.rhythm import Due, Rhythm, coming, next_due, to_utc
from tests.reminders.ical_reading import entries, parsed, unfolded, zones_of

WARSAW, NEW_YORK, SYDNEY = "Europe/Warsaw", "America/New_York", "Australia/Sydney"
#: Half an hour of summer time; summer time in winter; a change at midnight; none at all.
ODD = ("Australia/Lord_Howe", "Europe/Dublin", "America/Santiago", "Asia/Kolkata")
NOW = datetime(2026, 6, 10, 5, tzinfo=UTC)
BEFORE = datetime(2027, 6, 10, 5, tzinfo=UTC)

RULES = [
    "FREQ=MONTHLY;BYDAY=1SU",
    "FREQ=MONTHLY;INTERVAL=2;BYDAY=-1FR",
    "FREQ=DAILY;INTERVAL=10;BYMONTH=5,6,7,8,9",
    "FREQ=DAILY",
    "FREQ=WEEKLY;INTERVAL=2;BYDAY=TU,FR",
    "FREQ=WEEKLY",
    "FREQ=MONTHLY",
    "FREQ=MONTHLY;BYMONTHDAY=28,29,30,31;BYSETPOS=-1",
    "FREQ=YEARLY;BYMONTH=3,11;BYMONTHDAY=1",
    "FREQ=DAILY;INTERVAL=9;COUNT=12",
    "FREQ=WEEKLY;BYDAY=WE;UNTIL=20261101",
]


def waiting(rhythm: Rhythm, due: Due | None = None, *, as_said: bool = True) -> Waiting:
    """A reminder as the records have it; without a moment it is the next of its rule."""
    due = due or next_due(rhythm, NOW)
    assert due is not None
    moved = due.at != to_utc(due.local, rhythm.zone)
    return Waiting(1, rhythm, due.at, due.local, as_said=as_said, moved=moved)


def series(one: Waiting, title: str = "Flush", said: str = "") -> Series:
    return Series(uid_of("owner", 1), title, said, one.rhythm, occurrences(one, NOW, BEFORE))


def file_of(*held: Series | Day) -> str:
    return calendar_of(
        [s for s in held if isinstance(s, Series)], [d for d in held if isinstance(d, Day)], NOW
    )


def instants(text: str) -> list[datetime | date]:
    return [entry.at for entry in entries(text)]


def rhythm(rule: str | None, start: str, zone: str = WARSAW) -> Rhythm:
    return Rhythm(rule, datetime.fromisoformat(start), zone)


# --- what comes when: 3.3.10 (rules), 3.6.5 (zones), 3.8.5.3 (RRULE) ------------------------------


@pytest.mark.parametrize("clock", ["09:00", "02:30", "00:30"])
@pytest.mark.parametrize("zone", [WARSAW, NEW_YORK, SYDNEY, *ODD])
@pytest.mark.parametrize("rule", RULES)
def test_others_read_the_same_occurrences_across_daylight_saving(
    rule: str, zone: str, clock: str
) -> None:
    ours = rhythm(rule, f"2026-05-31T{clock}:00", zone)
    due = coming(ours, NOW, BEFORE)
    assert due
    text = file_of(series(waiting(ours)))
    assert instants(text) == [d.at for d in due]
    assert "RDATE" not in text  # a rule stays a rule
    assert ("RRULE" in text) == (len(due) > 1)


@pytest.mark.parametrize("zone", [WARSAW, NEW_YORK, SYDNEY, *ODD])
def test_a_zone_has_the_offset_of_each_hour(zone: str) -> None:
    """3.6.5: an onset is told on the clock that still goes."""
    text = file_of(series(waiting(rhythm("FREQ=DAILY", "2026-06-01T09:00:00", zone))))
    described = zones_of(text)[zone]
    hours = [NOW + timedelta(hours=n) for n in range(0, 365 * 24)]
    wrong = [
        at
        for at in hours
        if at.astimezone(described).replace(tzinfo=None)
        != at.astimezone(ZoneInfo(zone)).replace(tzinfo=None)
    ]
    assert not wrong


def test_an_onset_is_written_as_in_the_standards_own_example() -> None:
    """3.6.5 has New York's summer time of 2007 as DTSTART:20070311T020000, from -0500 to -0400."""
    ours = rhythm("FREQ=DAILY", "2007-01-15T09:00:00", NEW_YORK)
    due = coming(ours, datetime(2007, 1, 1, tzinfo=UTC), datetime(2007, 12, 31, tzinfo=UTC))
    text = calendar_of([Series("u", "t", "", ours, due)], [], NOW)
    lines = "\n".join(unfolded(text))
    assert "BEGIN:DAYLIGHT\nDTSTART:20070311T020000\n" in lines
    assert "BEGIN:STANDARD\nDTSTART:20071104T020000\n" in lines


def test_the_last_moment_is_in_utc_where_the_start_has_a_zone() -> None:
    """3.3.10 on UNTIL."""
    text = file_of(series(waiting(rhythm("FREQ=WEEKLY", "2026-06-11T09:00:00", NEW_YORK))))
    (event,) = parsed(text).walk("VEVENT")
    assert event["RRULE"]["UNTIL"] == [datetime(2027, 6, 3, 13, tzinfo=UTC)]
    assert "DTSTART;TZID=America/New_York:20260611T090000" in unfolded(text)


def test_what_comes_once_has_no_rule() -> None:
    text = file_of(series(waiting(rhythm(None, "2026-07-01T09:00:00"))))
    assert instants(text) == [datetime(2026, 7, 1, 7, tzinfo=UTC)]
    assert "RRULE" not in text


def test_where_the_clock_is_utc_no_zone_is_described() -> None:
    """3.3.5, form 2."""
    text = file_of(series(waiting(rhythm("FREQ=WEEKLY", "2026-06-11T09:00:00", "Etc/UTC"))))
    assert "DTSTART:20260611T090000Z" in unfolded(text)
    assert "TZID" not in text
    assert len(instants(text)) == 52


# --- what was changed by hand: 3.8.4.4 (RECURRENCE-ID), 3.8.5.1 (EXDATE) --------------------------

SUNDAYS = rhythm("FREQ=WEEKLY;BYDAY=SU", "2026-06-07T09:00:00")
FOURTEENTH = datetime(2026, 6, 14, 9)


def at(day: int, hour: int = 7, month: int = 6) -> datetime:
    return datetime(2026, month, day, hour, tzinfo=UTC)


def test_a_moved_one_is_an_exception_to_its_rule() -> None:
    text = file_of(series(waiting(SUNDAYS, Due(at(16), FOURTEENTH))))
    rule = [d.at for d in coming(SUNDAYS, NOW, BEFORE)]
    assert instants(text) == [at(16), *rule[1:]]
    master, exception = parsed(text).walk("VEVENT")
    assert master["UID"] == exception["UID"]
    assert "RECURRENCE-ID;TZID=Europe/Warsaw:20260614T090000" in unfolded(text)


def test_one_that_passed_and_was_put_off_stands_where_it_went() -> None:
    text = file_of(series(waiting(SUNDAYS, Due(at(11), datetime(2026, 6, 7, 9)))))
    rule = [d.at for d in coming(SUNDAYS, NOW, BEFORE)]
    assert instants(text) == [at(11), *rule]


def test_one_put_off_from_another_hour_still_belongs_to_its_rule() -> None:
    """What is put off twice is kept by the hour it went to first."""
    text = file_of(series(waiting(SUNDAYS, Due(at(11), datetime(2026, 6, 8, 12)))))
    assert "RECURRENCE-ID;TZID=Europe/Warsaw:20260607T090000" in unfolded(text)
    assert instants(text)[:2] == [at(11), at(14)]


def test_moved_beyond_others_these_are_left_out() -> None:
    text = file_of(series(waiting(SUNDAYS, Due(at(30), FOURTEENTH))))
    assert "EXDATE;TZID=Europe/Warsaw:20260621T090000,20260628T090000" in unfolded(text)
    assert instants(text)[:2] == [at(30), at(5, month=7)]


def test_put_off_to_a_later_day_by_the_rule_it_begins_there() -> None:
    """Passed over, or a pause: the records then have a later occurrence of the rule."""
    august = Due(at(2, month=8), datetime(2026, 8, 2, 9))
    text = file_of(series(waiting(SUNDAYS, august)))
    assert instants(text) == [d.at for d in coming(SUNDAYS, NOW, BEFORE) if d.at >= august.at]


def test_a_moved_one_that_comes_once_stands_alone() -> None:
    once = rhythm(None, "2026-06-14T09:00:00")
    text = file_of(series(waiting(once, Due(at(16), FOURTEENTH))))
    assert instants(text) == [at(16)]
    assert "RECURRENCE-ID" not in text


def test_what_the_rule_does_not_have_is_named_day_by_day() -> None:
    """3.8.5.2 (RDATE): quiet hours move what we chose to eight in the morning."""
    night = rhythm("FREQ=MONTHLY;BYMONTHDAY=20", "2026-06-20T23:00:00")
    one = waiting(night, Due(at(21, 6), datetime(2026, 6, 20, 23)), as_said=False)
    text = file_of(series(one))
    assert "RRULE" not in text
    clocks = {a.astimezone(ZoneInfo(WARSAW)).time().hour for a in instants(text)}  # type: ignore[union-attr]
    assert (len(instants(text)), clocks) == (12, {8})


def test_an_hour_that_comes_twice_is_told_in_utc_the_second_time() -> None:
    """3.3.5: on the clock it would mean the first."""
    second = datetime(2026, 10, 25, 1, 30, tzinfo=UTC)
    one = waiting(rhythm(None, "2026-10-24T09:00:00"), Due(second, datetime(2026, 10, 24, 9)))
    assert "DTSTART:20261025T013000Z" in unfolded(file_of(series(one)))


def test_nothing_comes_after_the_year_nor_of_what_has_ended() -> None:
    ended = rhythm("FREQ=DAILY;COUNT=2", "2026-06-01T09:00:00")
    passed = Waiting(1, ended, at(2), datetime(2026, 6, 2, 9), as_said=True)
    assert occurrences(passed, NOW, BEFORE) == []
    far = rhythm(None, "2027-06-11T09:00:00")
    assert occurrences(waiting(far), NOW, BEFORE) == []


# --- the file: 3.1 (lines), 3.3.11 (text), 3.4, 3.6 (what it must hold) ---------------------------

NAMES = [
    "Ruby, the red; one\\two",
    "first\nsecond",
    'Ala "ma" kota: a=b',
    "Żółty Wąż przy oknie w kuchni na parapecie od strony ogrodu babci",
    "蘭" * 40,
    "🌸🪴" * 25,
    "x" * 300,
]


def whole_day(title: str, said: str = "") -> Day:
    return Day(uid_of("rest", title), title, said, date(2026, 11, 1))


def test_lines_end_with_crlf_and_have_75_octets_at_most() -> None:
    """3.1; a break never falls into a character, so that each line is UTF-8 by itself."""
    text = file_of(*(whole_day(f"{n} {name}", name * 3) for n, name in enumerate(NAMES)))
    raw = text.encode()
    assert raw.endswith(b"\r\n")
    assert raw.count(b"\n") == raw.count(b"\r") == raw.count(b"\r\n")
    lines = raw.split(b"\r\n")
    assert max(map(len, lines)) <= 75
    assert any(line.startswith(b" ") for line in lines)
    assert [line.decode() for line in lines]


@pytest.mark.parametrize("name", NAMES)
def test_any_name_comes_back_as_it_was(name: str) -> None:
    (event,) = parsed(file_of(whole_day("t", name))).walk("VEVENT")
    assert str(event["DESCRIPTION"]) == name


def test_signs_with_a_meaning_are_escaped() -> None:
    """3.3.11: a backslash before comma, semicolon and backslash; a break is a backslash and n."""
    lines = unfolded(file_of(whole_day("a, b; c\\d", "e\nf")))
    assert "SUMMARY:a\\, b\\; c\\\\d" in lines
    assert "DESCRIPTION:e\\nf" in lines


@settings(max_examples=80, deadline=None)
@given(st.text(max_size=200))
def test_no_text_breaks_the_file(name: str) -> None:
    text = file_of(whole_day(name, name))
    (event,) = parsed(text).walk("VEVENT")
    assert event["DTSTART"].dt == date(2026, 11, 1)
    # CONTROL is no part of a text (3.1), whatever somebody is called.
    assert not [c for c in text.replace("\r\n", "") if ord(c) < 32 or ord(c) == 127]


def test_a_title_is_one_line() -> None:
    (event,) = parsed(file_of(whole_day("first\nsecond"))).walk("VEVENT")
    assert str(event["SUMMARY"]) == "first second"


def test_it_holds_what_it_must_and_nothing_twice() -> None:
    """3.6: VERSION, PRODID; 3.6.1: UID, DTSTAMP, DTSTART; 3.2.19: each TZID is described."""
    moved = series(waiting(SUNDAYS, Due(at(16), FOURTEENTH)))
    sydney = rhythm("FREQ=WEEKLY", "2026-06-11T09:00:00", SYDNEY)
    other = Series(uid_of("owner", 2), "Feed", "", sydney, coming(sydney, NOW, BEFORE))
    again = Series(uid_of("owner", 3), "Water", "", SUNDAYS, coming(SUNDAYS, NOW, BEFORE))
    text = file_of(moved, other, again, whole_day("Rest begins"))
    lines = unfolded(text)
    assert (lines[0], lines[-1]) == ("BEGIN:VCALENDAR", "END:VCALENDAR")
    heads = Counter(line.split(":")[0].split(";")[0] for line in lines)
    assert (heads["VERSION"], heads["PRODID"]) == (1, 1)
    events = parsed(text).walk("VEVENT")
    assert heads["UID"] == heads["DTSTAMP"] == heads["SUMMARY"] == len(events) == 5
    described = [z["TZID"] for z in parsed(text).walk("VTIMEZONE")]
    used = {e["DTSTART"].params["TZID"] for e in events if "TZID" in e["DTSTART"].params}
    assert sorted(described) == sorted(used) == [SYDNEY, WARSAW]
    keys = [(e["UID"], e["RECURRENCE-ID"].dt if "RECURRENCE-ID" in e else None) for e in events]
    assert len(set(keys)) == len(keys)
    shown = [(e.uid, e.at) for e in entries(text)]
    assert len(set(shown)) == len(shown)


def test_a_whole_day_is_a_date_and_ends_with_the_next() -> None:
    """3.6.1: DTEND is of the type of DTSTART, and does not belong to it."""
    lines = unfolded(file_of(whole_day("Rest begins")))
    assert "DTSTART;VALUE=DATE:20261101" in lines
    assert "DTEND;VALUE=DATE:20261102" in lines


def test_a_stamp_is_in_utc() -> None:
    """3.8.7.2."""
    stamp = datetime(2026, 6, 10, 7, 0, 1, 999, tzinfo=ZoneInfo(WARSAW))
    text = calendar_of([], [whole_day("t")], stamp)
    assert "DTSTAMP:20260610T050001Z" in unfolded(text)


def test_a_uid_is_of_what_went_in_and_says_nothing_of_it() -> None:
    """3.8.4.7."""
    assert uid_of("mira", 1) == uid_of("mira", 1)
    made = {uid_of(*parts) for parts in (("a", 12), ("a1", 2), ("a", 1, 2), ("a", "1", "2"), ())}
    assert len(made) == 4  # a number and its digits are the same
    assert "mira" not in uid_of("mira", 1)
