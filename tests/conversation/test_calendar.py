"""`calendar`: a file of the coming year, read by others (`tests.reminders.ical_reading`)."""

from __future__ import annotations

from datetime import UTC, date, datetime, timedelta
from typing import Any
from zoneinfo import ZoneInfo

import pytest

from bot.conversation.answer import Answer
from bot.records import Records, owners, reminders
from bot.records.kinds import OwnerKind
from bot.records.owners import Address
from bot.reminders.rhythm import Rhythm, coming
from grammar import Names, read
from tests.conversation.talking import Grower
from tests.reminders.ical_reading import Entry, entries, parsed, unfolded

MIRA = Address(OwnerKind.PERSON, "test", "Mira")
PHALS = "add 3 phals in bark, 12 cm pots, kitchen sill"
CATASETUM = "I have a catasetum in bark called Ruby, 10 cm pot"
FLUSH = "remind me to flush every first sunday at 9"
FEED = "feed the phals every 10 days from may to september at 2:30 am"


@pytest.fixture
def mira(records: Records) -> Grower:
    return Grower(records)


def content(answer: Answer) -> str:
    assert answer.file is not None, answer.reply
    assert answer.file.media_type == "text/calendar"
    assert answer.file.name.endswith(".ics")
    return answer.file.content


async def exported(grower: Grower) -> str:
    return content(await grower.says("calendar"))


def titles(text: str) -> list[str]:
    return [e.title for e in entries(text)]


def uids(text: str) -> set[str]:
    return {str(e["UID"]) for e in parsed(text).walk("VEVENT")}


def days(text: str) -> list[tuple[str, date | datetime]]:
    return [(e.title, e.at) for e in entries(text) if not isinstance(e.at, datetime)]


# --- what is said for it --------------------------------------------------------------------------


@pytest.mark.parametrize(
    "said",
    [
        "calendar", "Calendar!", "calendar file", "give me a calendar", "export calendar", "ics",
        "ICS file please", "my calendar", "calendar?", "put my reminders in my calendar",
        "export my reminders as ics", "calendar for the vandas",
    ],
)  # fmt: skip
def test_it_is_asked_for(said: str) -> None:
    reading = read(said, names=Names())
    assert reading.order is not None
    assert (reading.order.verb, reading.unknown) == ("calendar", ())


@pytest.mark.parametrize(
    ("said", "verb"),
    [
        ("export", "export"),
        ("my reminders", "reminders"),
        ("remind me to buy a calendar tomorrow at 9", "remind"),
        ("fed the phals as the calendar says", "fed"),
        ("5 l 20-20-20 by my calendar", "dose"),
    ],
)
def test_something_else_stays_what_it_was(said: str, verb: str) -> None:
    order = read(said, names=Names()).order
    assert order is not None
    assert order.verb == verb


# --- reminders ------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("town", "zone"),
    [
        ("Warsaw", "Europe/Warsaw"),
        ("New York", "America/New_York"),
        ("Sydney", "Australia/Sydney"),
    ],
)
async def test_it_has_what_will_come_of_each_reminder(
    mira: Grower, records: Records, town: str, zone: str
) -> None:
    text = content(await mira.says(f"I live in {town}", PHALS, FLUSH, FEED, "calendar"))
    async with records.reading() as session:
        owner = await owners.find(session, MIRA)
        assert owner is not None
        rows = await reminders.listing(session, owner.id)
    local = datetime.combine(mira.today.replace(year=mira.today.year + 1), datetime.min.time())
    before = local.replace(tzinfo=ZoneInfo(zone))
    expected = sorted(
        due.at
        for row in rows
        for due in coming(Rhythm.of(row.rule, row.start, row.zone), mira.now, before)
    )
    assert [e.at for e in entries(text)] == expected
    assert {row.zone for row in rows} == {zone}
    clocks = {
        (e.title, e.at.astimezone(ZoneInfo(zone)).strftime("%H:%M"))
        for e in entries(text)
        if isinstance(e.at, datetime)
    }
    assert clocks >= {("Flush all plants", "09:00"), ("Feed Phalaenopsis", "02:30")}


async def test_it_says_how_often_and_for_which_plants(mira: Grower) -> None:
    text = content(await mira.says("I live in Porto", PHALS, FLUSH, "calendar"))
    (event,) = parsed(text).walk("VEVENT")
    said = str(event["DESCRIPTION"]).splitlines()
    assert said[:2] == [
        "Comes on the first Sunday of each month at 9:00.",
        "Plants: 3 Phalaenopsis.",
    ]


async def test_a_moved_one_is_where_it_went(mira: Grower) -> None:
    text = content(
        await mira.says("I live in Porto", PHALS, FLUSH, "move it to 8 july", "calendar")
    )
    first, second = entries(text)[:2]
    assert first.at == datetime(2026, 7, 8, 8, tzinfo=UTC)
    assert second.at == datetime(2026, 8, 2, 8, tzinfo=UTC)
    assert any(line.startswith("RECURRENCE-ID") for line in unfolded(text))


async def test_what_was_passed_over_or_put_off_is_left_out(mira: Grower) -> None:
    lines = ("I live in Porto", PHALS, FLUSH)
    text = content(await mira.says(*lines, "skip the next flush", "calendar"))
    assert entries(text)[0].at == datetime(2026, 8, 2, 8, tzinfo=UTC)
    text = content(await mira.says("pause reminders until 1 november", "calendar"))
    assert entries(text)[0].at == datetime(2026, 11, 1, 9, tzinfo=UTC)  # winter time by then


async def test_what_has_ended_is_left_out(mira: Grower) -> None:
    await mira.says("I live in Porto", PHALS, FLUSH, FEED)
    assert set(titles(await exported(mira))) == {"Flush all plants", "Feed Phalaenopsis"}
    await mira.says("stop the feed reminder")
    assert set(titles(await exported(mira))) == {"Flush all plants"}


async def test_what_is_held_is_left_out_and_said(mira: Grower, records: Records) -> None:
    await mira.says("I live in Porto", CATASETUM, FLUSH)
    async with records.writing() as session:
        assert await reminders.pause_all(session, MIRA) == 1
    answer = await mira.says("calendar")
    assert set(titles(content(answer))) == {"Rest begins: Ruby", "Rest ends: Ruby"}
    assert "One reminder is left out" in answer.reply
    assert "No flush is set" not in answer.reply


# --- rests ----------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("town", "begins", "ends"),
    [
        ("Porto", date(2026, 11, 1), date(2027, 5, 1)),
        ("Sydney", date(2027, 5, 1), date(2026, 11, 1)),
    ],
)
async def test_rests_begin_and_end_by_genus_and_hemisphere(
    mira: Grower, town: str, begins: date, ends: date
) -> None:
    """Catasetum rests from November to April in the almanac: as whole days, RFC 5545, 3.6.1."""
    text = content(await mira.says(f"I live in {town}", CATASETUM, PHALS, "calendar"))
    assert sorted(days(text)) == [("Rest begins: Ruby", begins), ("Rest ends: Ruby", ends)]
    assert "VTIMEZONE" not in text


async def test_plants_of_one_kind_share_a_rest(mira: Grower) -> None:
    text = content(
        await mira.says("I live in Porto", CATASETUM, "add a catasetum called Dot", "calendar")
    )
    assert titles(text) == ["Rest begins: Ruby and Dot", "Rest ends: Ruby and Dot"]


async def test_where_the_side_is_not_known_it_is_asked(mira: Grower) -> None:
    asked = await mira.says(CATASETUM, "calendar")
    assert (asked.kind, asked.file) == ("ask", None)
    answer = await mira.says("Sydney")
    assert ("Rest begins: Ruby", date(2027, 5, 1)) in days(content(answer))
    assert "of the north" not in answer.reply


async def test_the_side_alone_will_do(mira: Grower) -> None:
    answer = await mira.says(CATASETUM, "calendar", "south")
    assert ("Rest begins: Ruby", date(2027, 5, 1)) in days(content(answer))


async def test_who_does_not_say_gets_the_north_and_is_told(mira: Grower) -> None:
    answer = await mira.says(CATASETUM, "calendar", "skip")
    assert ("Rest begins: Ruby", date(2026, 11, 1)) in days(content(answer))
    assert "rests are those of the north" in answer.reply


# --- nothing invented -----------------------------------------------------------------------------


async def test_a_flush_that_is_not_set_is_offered_and_not_in_it(mira: Grower) -> None:
    answer = await mira.says("I live in Porto", CATASETUM, "calendar")
    assert titles(content(answer)) == ["Rest begins: Ruby", "Rest ends: Ruby"]
    assert "the next would be Sun 5 Jul" in answer.reply
    (choice,) = answer.choices
    assert (await mira.says(choice)).kind == "reminder"
    answer = await mira.says("calendar")
    assert "No flush is set" not in answer.reply
    assert titles(content(answer)).count("Flush all plants") == 12


async def test_without_anything_there_is_no_file(mira: Grower) -> None:
    """An empty calendar is no valid one: RFC 5545, 3.6."""
    for lines in (("calendar",), (PHALS, "calendar")):
        answer = await mira.says(*lines)
        assert answer.file is None
        assert answer.reply.startswith("Nothing for a calendar yet")
    assert answer.choices


async def test_only_some_plants(mira: Grower) -> None:
    await mira.says("I live in Porto", CATASETUM, PHALS, "remind me to feed the phals weekly at 9")
    text = content(await mira.says("calendar for Ruby"))
    assert set(titles(text)) == {"Rest begins: Ruby", "Rest ends: Ruby"}
    text = content(await mira.says("calendar for the phals"))
    assert set(titles(text)) == {"Feed Phalaenopsis"}
    assert (await mira.says("calendar for the vandas")).kind == "ask"


# --- the same again: RFC 5545, 3.8.4.7 ------------------------------------------------------------


async def test_a_second_file_has_the_same_uids(mira: Grower) -> None:
    await mira.says("I live in Porto", CATASETUM, FLUSH)
    first = await exported(mira)
    again = await exported(mira.later(days=40))
    assert uids(again) == uids(first)
    assert len(uids(first)) == 3
    assert "Ruby" in first
    await mira.says("rename Ruby to Garnet")
    renamed = await exported(mira)
    assert uids(renamed) == uids(first)
    assert "Rest begins: Garnet" in titles(renamed)
    assert "Ruby" not in renamed


async def test_a_changed_reminder_keeps_its_uid(mira: Grower) -> None:
    await mira.says("I live in Porto", PHALS, FLUSH)
    first = await exported(mira)
    changed = await mira.says("move it to every 3 weeks")
    assert changed.reply.startswith("Changed")
    assert uids(await exported(mira)) == uids(first)


async def test_uids_of_two_people_differ_and_name_nobody(records: Records) -> None:
    files = [
        content(await Grower(records, name).says("I live in Porto", CATASETUM, FLUSH, "calendar"))
        for name in ("Mira", "Jonas")
    ]
    assert not uids(files[0]) & uids(files[1])
    assert not any(name in text for text in files for name in ("Mira", "Jonas"))


# --- names, lines, groups -------------------------------------------------------------------------


async def test_any_name_is_written_so_that_it_comes_back(mira: Grower) -> None:
    """RFC 5545, 3.3.11 (escaping) and 3.1 (lines of 75 octets, CRLF)."""
    name = "Żółta Wróżka, 蘭の花; przy oknie"
    await mira.says("I live in Porto", f'add a catasetum called "{name}"')
    known: list[dict[str, Any]] = ((await mira.says("my plants")).details or {})["plants"]
    assert [p["name"] for p in known] == [name]
    text = content(await mira.says("remind me to flush all every sunday at 9", "calendar"))
    assert f"Rest begins: {name}" in titles(text)
    said = {str(e["DESCRIPTION"]) for e in parsed(text).walk("VEVENT")}
    assert any(f"Plants: {name}." in text.splitlines() for text in said)
    raw = text.encode()
    assert raw.count(b"\n") == raw.count(b"\r\n")
    assert max(map(len, raw.split(b"\r\n"))) <= 75
    assert f"SUMMARY:Rest begins: {name}".replace(",", "\\,").replace(";", "\\;") in unfolded(text)


async def test_own_words_are_the_title(mira: Grower) -> None:
    await mira.says("I live in Porto", "remind me to check the roots, then the pots in 3 weeks")
    (entry,) = entries(await exported(mira))
    assert entry == Entry(entry.uid, "check the roots, then the pots", entry.at)
    assert entry.at == datetime(2026, 6, 28, 8, tzinfo=UTC)


async def test_a_group_gets_its_own(records: Records) -> None:
    alone = Grower(records)
    await alone.says("I live in Porto", PHALS, FLUSH)
    club = Grower(records, group="club")
    await club.says("we live in Sydney", CATASETUM)
    answer = await club.says("calendar")
    assert set(titles(content(answer))) == {"Rest begins: Ruby", "Rest ends: Ruby"}
    await club.says("remind us to flush every first sunday at 9")
    assert set(titles(await exported(club))) > {"Flush all plants"}


async def test_a_member_does_not_post_the_file_into_the_group(records: Records) -> None:
    club = Grower(records, group="club")
    await club.says("we live in Sydney", CATASETUM)
    answer = await Grower(records, "Jonas", group="club", administers=False).says("calendar")
    assert answer.file is None
    assert "Only administrators" in answer.reply


async def test_what_was_due_a_moment_ago_is_not_in_it(mira: Grower) -> None:
    await mira.says("I live in Porto", PHALS, FLUSH)
    mira.now = datetime(2026, 7, 5, 8, tzinfo=UTC)  # nine o'clock there
    text = await exported(mira)
    assert entries(text)[0].at == datetime(2026, 8, 2, 8, tzinfo=UTC)
    assert all(e.at > mira.now - timedelta(1) for e in entries(text) if isinstance(e.at, datetime))
