"""Reminders in a conversation: set, listed, changed, pinged and answered, on both databases."""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import UTC, datetime, timedelta
from typing import Any

import pytest

from bot.conversation import reminding
from bot.conversation.talk import Conversation
from bot.conversation.turn import Incoming
from bot.records import Records, pings
from tests.conversation.talking import START, Grower

TUB = "my powder is 20-20-20, label 1 g per litre, call it blue tub"
PHALS = "add 3 phals in bark, 12 cm pots, kitchen sill"
RUBY = "I have a masdevallia in sphagnum called Ruby, 8 cm pot"
NOBILE = "add 2 nobile dendrobiums in bark, 10 cm pots"
FLUSH = "remind me to flush every first sunday at 9"
LISBON = "I live in Porto"


@dataclass
class Talker(Grower):
    """As a grower, in a channel that cannot send: what is due comes before the next answer."""

    def incoming(self, line: str) -> Incoming:
        """As a grower's, on the clock of where they live."""
        return replace(super().incoming(line), today=None, pulls=True)

    def at(self, day: str, clock: str = "10:00") -> Talker:
        """Go to a moment [UTC]."""
        self.now = datetime.fromisoformat(f"{day}T{clock}").replace(tzinfo=UTC)
        return self


@pytest.fixture
def mira(records: Records) -> Talker:
    return Talker(records)


async def reminders(grower: Grower) -> list[dict[str, Any]]:
    return ((await grower.says("my reminders")).details or {}).get("reminders", [])


def moment(row: dict[str, Any]) -> str:
    """When a reminder comes next [UTC]."""
    return f"{datetime.fromtimestamp(row['due_ms'] / 1000, UTC):%Y-%m-%d %H:%M}"


async def log_of(grower: Grower, text: str) -> list[str]:
    entries = ((await grower.says(f"history of {text}")).details or {}).get("entries", [])
    return [e["kind"] for e in entries if e["kind"] in ("fed", "clear", "flush")]


# --- setting one ------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("said", "rule", "first"),
    [
        # Porto is at UTC+1 in summer; it is Sunday 7 June, shortly after ten there.
        ("every first sunday at 9", "FREQ=MONTHLY;BYDAY=1SU", "2026-07-05 08:00"),
        ("every other friday", "FREQ=WEEKLY;INTERVAL=2;BYDAY=FR", "2026-06-12 08:00"),
        ("every 10 days", "FREQ=DAILY;INTERVAL=10", "2026-06-17 08:00"),
        ("daily at 7:30", "FREQ=DAILY", "2026-06-08 06:30"),
        ("weekdays at six pm", "FREQ=WEEKLY;BYDAY=MO,TU,WE,TH,FR", "2026-06-08 17:00"),
        ("every 10 days from october to march", "FREQ=DAILY;INTERVAL=10;BYMONTH=1,2,3,10,11,12",
         "2026-10-01 08:00"),
        ("weekly in winter", "FREQ=WEEKLY;BYMONTH=1,2,12", "2026-12-01 09:00"),
        ("on the 1st of each month", "FREQ=MONTHLY;BYMONTHDAY=1", "2026-07-01 08:00"),
        ("on the 31st of each month", "FREQ=MONTHLY;BYMONTHDAY=28,29,30,31;BYSETPOS=-1",
         "2026-06-30 08:00"),
        ("on the last day of each month", "FREQ=MONTHLY;BYMONTHDAY=-1", "2026-06-30 08:00"),
        ("every 3 march", "FREQ=YEARLY;BYMONTH=3;BYMONTHDAY=3", "2027-03-03 09:00"),
        ("every week until october", "FREQ=WEEKLY;UNTIL=20260930", "2026-06-14 08:00"),
        ("5 times, every 2 days,", "FREQ=DAILY;INTERVAL=2;COUNT=5", "2026-06-09 08:00"),
        ("tomorrow at 8", None, "2026-06-08 07:00"),
        ("in 3 weeks", None, "2026-06-28 08:00"),
        ("in 2 hours", None, "2026-06-07 11:03"),
        ("next saturday", None, "2026-06-13 08:00"),
        ("on sunday", None, "2026-06-14 08:00"),
        ("on sunday at 6 pm", None, "2026-06-07 17:00"),
        ("on 3 march", None, "2027-03-03 09:00"),
        ("in march", None, "2027-03-01 09:00"),
        ("in autumn", None, "2026-09-01 08:00"),
        ("tonight", None, "2026-06-07 17:00"),
        ("at 9", None, "2026-06-08 08:00"),
        ("on the 15th", "FREQ=MONTHLY;BYMONTHDAY=15;COUNT=1", "2026-06-15 08:00"),
        ("on the first sunday of june", "FREQ=YEARLY;BYMONTH=6;BYDAY=1SU;COUNT=1",
         "2027-06-06 08:00"),
    ],
)  # fmt: skip
async def test_a_rhythm_becomes_a_rule(
    mira: Talker, said: str, rule: str | None, first: str
) -> None:
    answer = await mira.says(LISBON, PHALS, f"remind me {said} to flush")
    assert answer.kind == "reminder"
    [row] = await reminders(mira)
    assert (row["rule"], moment(row)) == (rule, first)
    assert row["zone"] == "Europe/Lisbon"


async def test_south_of_the_equator_winter_is_elsewhere(mira: Talker) -> None:
    await mira.says("I live in Sydney", PHALS, "remind me to feed weekly in winter")
    [row] = await reminders(mira)
    assert row["rule"] == "FREQ=WEEKLY;BYMONTH=6,7,8"


async def test_it_is_said_back_with_its_next_day_and_what_was_guessed(mira: Talker) -> None:
    answer = await mira.says(LISBON, PHALS, FLUSH)
    assert "flush all plants on the first Sunday of each month at 9:00" in answer.reply
    assert "next Sun 5 Jul 9:00" in answer.reply
    assert "for the evening send: 9 pm" in answer.reply
    answer = await mira.says("remind me every second sunday at 10 am to feed")
    assert "every other Sunday at 10:00" in answer.reply
    assert "Taken as every other one" in answer.reply


async def test_every_ten_days_counts_from_when_it_was_done_last(mira: Talker) -> None:
    await mira.says(LISBON, PHALS, "fed the phals on friday")
    await mira.says("remind me to feed the phals every 10 days")
    [row] = await reminders(mira)
    assert moment(row) == "2026-06-15 08:00"


async def test_own_words_come_back_as_they_were_said(mira: Talker) -> None:
    answer = await mira.says(LISBON, "remind me to buy bark for Mira's table on saturday")
    assert "“buy bark for Mira's table”: Sat 13 Jun 9:00" in answer.reply


async def test_the_same_is_not_set_twice(mira: Talker) -> None:
    answer = await mira.says(LISBON, PHALS, FLUSH, FLUSH)
    assert "set already" in answer.reply
    assert len(await reminders(mira)) == 1


async def test_undo_takes_a_reminder_back(mira: Talker) -> None:
    answer = await mira.says(LISBON, FLUSH, "undo")
    assert "reminder" in answer.reply
    assert await reminders(mira) == []


@pytest.mark.parametrize(
    ("line", "kind", "says"),
    [
        ("remind me on 31 february to flush", "refused", "no such day"),
        ("remind me on 3 march 2020 to flush", "refused", "has passed"),
        ("remind me to flush at 25:00", "ask", "no such time"),
        ("remind me twice a week to flush", "ask", "which days"),
        ("remind me every 2-3 weeks to flush", "ask", "one figure"),
        ("remind me every hour to water", "ask", "Once a day"),
        ("remind me regularly to flush", "ask", "How often"),
        ("remind me to flush", "ask", "When, or how often"),
        ("remind me to flush Garnet tomorrow", "reminder", "“flush Garnet”"),
        ("stop all reminders", "reminder", "No reminders"),
        ("move 3 to monday", "reminder", "No reminders"),
    ],
)
async def test_what_cannot_be_is_answered_in_a_sentence(
    mira: Talker, line: str, kind: str, says: str
) -> None:
    answer = await mira.says(LISBON, PHALS, "no", line)
    assert answer.kind == kind
    assert says in answer.reply


# --- what is missing is asked for -----------------------------------------------------------------


async def test_when_and_what_and_where_are_asked_for_in_turn(mira: Talker) -> None:
    assert "how often" in (await mira.says("remind me to flush")).reply
    assert "Where do you live" in (await mira.says("every first sunday at 9")).reply
    answer = await mira.says("Porto")
    assert answer.kind == "reminder"
    assert "Europe/Lisbon" in answer.reply
    assert "next Sun 5 Jul 9:00" in answer.reply
    answer = await mira.says("every two weeks on saturday morning")
    assert "What shall I remind you of" in answer.reply
    answer = await mira.says("check for thrips")
    assert "“check for thrips” every other Saturday at 9:00" in answer.reply


async def test_days_that_were_left_open_are_completed(mira: Talker) -> None:
    answer = await mira.says(LISBON, PHALS, "remind me twice a week to water", "monday, thursday")
    assert "water all plants every Monday and Thursday" in answer.reply


async def test_who_does_not_say_where_they_live_gets_utc_and_is_told(mira: Talker) -> None:
    answer = await mira.says(FLUSH, "skip")
    assert "UTC" in answer.reply
    [row] = await reminders(mira)
    assert (row["zone"], moment(row)) == ("Etc/UTC", "2026-07-05 09:00")
    answer = await mira.says("remind me to feed tomorrow")  # not asked again
    assert answer.kind == "reminder"
    assert "2 reminders go by the clock there" in (await mira.says(LISBON)).reply
    assert moment((await reminders(mira))[1]) == "2026-07-05 08:00"


async def test_something_else_instead_of_an_answer_is_answered(mira: Talker) -> None:
    answer = await mira.says("remind me to flush", "2 l 20-20-20 powder, phal, quarter")
    assert answer.kind == "dose"
    assert (await mira.says("every first sunday at 9")).ask is not None
    assert await reminders(mira) == []


# --- changing ---------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("lines", "due", "rule"),
    [
        (("move it to monday",), "2026-06-08 08:00", "FREQ=MONTHLY;BYDAY=1SU"),
        (("move the flush to next saturday at 10",), "2026-06-13 09:00", "FREQ=MONTHLY;BYDAY=1SU"),
        (("move 1 to the 12th",), "2026-06-12 08:00", "FREQ=MONTHLY;BYDAY=1SU"),
        (("postpone it by two days",), "2026-07-07 08:00", "FREQ=MONTHLY;BYDAY=1SU"),
        (("make it 10 am",), "2026-07-05 09:00", "FREQ=MONTHLY;BYDAY=1SU"),
        (("move it to every 3 weeks",), "2026-06-28 08:00", "FREQ=WEEKLY;INTERVAL=3"),
        (("skip it this time",), "2026-08-02 08:00", "FREQ=MONTHLY;BYDAY=1SU"),
        (("skip the next flush", "undo"), "2026-07-05 08:00", "FREQ=MONTHLY;BYDAY=1SU"),
        (("not this week",), "2026-07-05 08:00", "FREQ=MONTHLY;BYDAY=1SU"),  # not due this week
        (("not this month",), "2026-07-05 08:00", "FREQ=MONTHLY;BYDAY=1SU"),
        (("pause reminders until september",), "2026-09-06 08:00", "FREQ=MONTHLY;BYDAY=1SU"),
        (("pause", "two months"), "2026-09-06 08:00", "FREQ=MONTHLY;BYDAY=1SU"),
        (("I'm away until 6 july",), "2026-08-02 08:00", "FREQ=MONTHLY;BYDAY=1SU"),
        (("pause until september", "resume"), "2026-07-05 08:00", "FREQ=MONTHLY;BYDAY=1SU"),
    ],
)
async def test_a_reminder_is_changed(
    mira: Talker, lines: tuple[str, ...], due: str, rule: str
) -> None:
    answer = await mira.says(LISBON, PHALS, "no", FLUSH, *lines)
    assert answer.kind in ("reminder", "undo")
    [row] = await reminders(mira)
    assert (moment(row), row["rule"]) == (due, rule)


async def test_after_one_was_moved_the_rhythm_goes_on_as_before(mira: Talker) -> None:
    await mira.says(LISBON, PHALS, "no", FLUSH, "move it to 8 july")
    mira.at("2026-07-08")
    assert "It is time: flush all plants" in (await mira.says("my plants")).reply
    assert moment((await reminders(mira))[0]) == "2026-08-02 08:00"


@pytest.mark.parametrize(
    ("lines", "left"),
    [
        (("stop",), ["flush", "feed", "water"]),  # what was just set
        (("stop 1",), ["flush", "feed", "look"]),
        (("stop the flush",), ["water", "feed", "look"]),
        (("stop reminding me about Ruby",), ["water", "feed", "flush"]),
        (("cancel the feeding reminder",), ["water", "flush", "look"]),
        (("stop all reminders",), []),
        (("stop all reminders", "undo"), ["water", "feed", "flush", "look"]),
        (("cancel the reminder", "2"), ["water", "flush", "look"]),
        (("cancel the reminder", "all"), []),
        (("cancel the reminder", "no"), ["water", "feed", "flush", "look"]),
    ],
)
async def test_reminders_are_stopped(mira: Talker, lines: tuple[str, ...], left: list[str]) -> None:
    await mira.says(LISBON, PHALS, "no", RUBY, "remind me to flush on 3 july")
    await mira.says("remind me to feed on 2 july", "remind me to water tomorrow at 8 am")
    await mira.says("remind me on 4 july to look at Ruby")
    if lines[0].startswith("cancel the reminder"):
        mira.later(hours=1)  # which one is not clear any more
    await mira.says(*lines)
    assert sorted(r["kind"] for r in await reminders(mira)) == sorted(left)


# --- pings and what is answered -------------------------------------------------------------------


async def test_a_flush_says_how_much_water_and_done_logs_it(mira: Talker) -> None:
    await mira.says(LISBON, PHALS, "no", TUB, FLUSH)
    mira.at("2026-07-05", "08:10")
    answer = await mira.says("my plants")
    assert "It is time: flush all plants." in answer.reply
    # Three pots of 12 cm hold 0.94 l each, and twice that runs through (pot_water).
    assert "Flush until 5.65 l ran through" in answer.reply
    assert "3 Phalaenopsis" in answer.reply
    answer = await mira.says("done")
    assert answer.kind == "log"
    assert "flushed 3 Phalaenopsis" in answer.reply
    assert "Sun 2 Aug 9:00" in answer.reply
    assert await log_of(mira, "the phals") == ["flush"]
    assert "no plan" in (await mira.says("done")).reply  # not twice
    assert await log_of(mira, "the phals") == ["flush"]


async def test_a_feed_says_dose_and_litres_as_of_today(mira: Talker) -> None:
    await mira.says(LISBON, "my scale shows 0.01 g", "add 20 phals in bark, 12 cm pots", "no", TUB)
    await mira.says("remind me to feed the phals on saturday at 9 am")
    answer = await mira.at("2026-06-13").says("hello")
    plan = (await mira.says("what's on today")).reply.splitlines()
    mixed = next(line for line in plan if "blue tub, fill up to" in line)
    assert mixed.partition(". ")[2] in answer.reply
    assert "Wet the roots" in answer.reply


async def test_a_resting_plant_is_left_out(mira: Talker) -> None:
    await mira.says(LISBON, PHALS, "no", NOBILE, TUB, FLUSH, "remind me to feed on 6 december")
    mira.at("2026-12-06", "11:00")
    answer = await mira.says("hello")
    assert "It is time for 2 things" in answer.reply
    assert "Not now, resting: 2 Dendrobium nobile" in answer.reply
    await mira.says("done")
    assert await log_of(mira, "the dendrobiums") == []
    assert await log_of(mira, "the phals") == ["flush"]  # who is flushed is not fed as well


async def test_a_week_off_gives_one_message_that_says_so(mira: Talker) -> None:
    await mira.says(LISBON, PHALS, "no", "remind me to water daily at 9 am")
    await mira.says("remind me to buy bark on tuesday")
    answer = await mira.at("2026-06-14", "11:00").says("my plants")
    assert answer.reply.count("It is time") == 1
    assert "water all plants (was due tomorrow" not in answer.reply
    assert "was due Mon 8 Jun, and 6 times since" in answer.reply
    assert "“buy bark” (was due Tue 9 Jun)" in answer.reply
    assert "It is time" not in (await mira.says("my plants")).reply


async def test_later_comes_again_the_same_day(mira: Talker) -> None:
    await mira.says(LISBON, PHALS, "no", FLUSH)
    mira.at("2026-07-05", "08:10")
    await mira.says("my plants")
    assert "today 12:12" in (await mira.says("later")).reply
    assert "It is time" not in (await mira.later(hours=1).says("my plants")).reply
    assert "It is time: flush" in (await mira.later(hours=3).says("my plants")).reply
    await mira.says("done")
    assert moment((await reminders(mira))[0]) == "2026-08-02 08:00"


async def test_later_in_the_evening_waits_for_the_morning(mira: Talker) -> None:
    await mira.says(LISBON, PHALS, "no", "remind me to flush today at 7 pm")
    answer = await mira.at("2026-06-07", "18:30").says("my plants", "later")
    assert "tomorrow 8:00" in answer.reply


async def test_skip_passes_and_logs_nothing(mira: Talker) -> None:
    await mira.says(LISBON, PHALS, "no", FLUSH)
    mira.at("2026-07-05", "08:10")
    answer = await mira.says("my plants", "skip")
    assert "Next Sun 2 Aug 9:00" in answer.reply
    assert await log_of(mira, "the phals") == []
    assert (await mira.says("skip")).kind == "help"


async def test_a_ping_that_was_not_seen_yet_is_not_answered(mira: Talker) -> None:
    await mira.says(LISBON, PHALS, "no", FLUSH)
    mira.at("2026-07-05", "08:10")
    answer = await mira.says("done")
    assert "It is time: flush" in answer.reply
    assert await log_of(mira, "the phals") == []
    await mira.says("done")
    assert await log_of(mira, "the phals") == ["flush"]


async def test_a_plan_asked_for_after_the_ping_is_what_done_means(mira: Talker) -> None:
    await mira.says(LISBON, PHALS, "no", TUB, FLUSH)
    mira.at("2026-07-05", "08:10")
    await mira.says("my plants", "what's on today", "done")
    assert await log_of(mira, "the phals") == ["fed"]
    await mira.says("done")  # the flush still waits
    assert await log_of(mira, "the phals") == ["fed", "flush"]


async def test_what_was_logged_answers_the_ping(mira: Talker) -> None:
    await mira.says(LISBON, PHALS, "no", FLUSH)
    mira.at("2026-07-05", "08:10")
    await mira.says("my plants", "flushed everything")
    assert "no plan" in (await mira.says("done")).reply


async def test_done_early_moves_the_next_one_and_one_undo_takes_both_back(mira: Talker) -> None:
    await mira.says(LISBON, PHALS, "no", FLUSH, "remind me to feed the phals every 10 days")
    mira.at("2026-06-28")
    answer = await mira.says("remind me to feed the phals every 10 days")
    answer = await mira.says("flushed everything")
    assert "Next time to flush all plants: Sun 2 Aug 9:00" in answer.reply
    await mira.says("undo")
    rows = {r["kind"]: moment(r) for r in await reminders(mira)}
    assert rows["flush"] == "2026-07-05 08:00"
    assert await log_of(mira, "the phals") == []


async def test_every_ten_days_goes_on_from_the_day_it_was_done(mira: Talker) -> None:
    await mira.says(LISBON, PHALS, "no", "remind me to feed the phals every 10 days")
    mira.at("2026-06-15")  # due on the 17th
    answer = await mira.says("fed the phals")
    assert "Thu 25 Jun 9:00" in answer.reply
    mira.at("2026-06-25", "08:30")
    await mira.says("my plants")
    assert moment((await reminders(mira))[0]) == "2026-07-05 08:00"


async def test_a_rest_is_announced_where_it_begins(mira: Talker) -> None:
    answer = await mira.says(LISBON, NOBILE, "yes")
    assert "look at Dendrobium nobile" in answer.reply
    rows = {r["kind"]: r for r in await reminders(mira)}
    begins = moment(rows["look"])[:10]
    answer = await mira.at(begins, "12:00").says("hello")
    assert "Dendrobium nobile begins its rest: keep it dry" in answer.reply or (
        "Dendrobium nobile begins its rest: clear water only" in answer.reply
    )


# --- the offer --------------------------------------------------------------------------------


async def test_the_first_plants_are_offered_the_rhythm_that_fits(mira: Talker) -> None:
    answer = await mira.says(LISBON, PHALS)
    assert "Shall I remind you? Clear water through all pots" in answer.reply
    assert answer.choices[:2] == ["yes", "no"]
    assert await reminders(mira) == []  # nothing is set unasked


async def test_yes_sets_it(mira: Talker) -> None:
    await mira.says(LISBON, RUBY, "yes")
    rows = {r["kind"]: r for r in await reminders(mira)}
    assert rows["flush"]["rule"] == "FREQ=MONTHLY;BYDAY=1SU"
    assert rows["feed"]["rule"] == "FREQ=MONTHLY;BYDAY=3SU"  # a masdevallia bears little
    assert moment(rows["feed"]) == "2026-06-21 08:00"


async def test_yes_without_a_home_asks_for_it_first(mira: Talker) -> None:
    assert "Where do you live" in (await mira.says(PHALS, "yes")).reply
    await mira.says("Porto")
    assert [r["zone"] for r in await reminders(mira)] == ["Europe/Lisbon"]


async def test_after_a_no_it_is_not_offered_again(mira: Talker) -> None:
    answer = await mira.says(LISBON, PHALS, "no")
    assert "do not ask again" in answer.reply
    answer = await mira.says("lost the phals", RUBY)
    assert "Shall I remind you" not in answer.reply


async def test_it_is_offered_once_only(mira: Talker) -> None:
    await mira.says(LISBON, PHALS)
    assert "Shall I remind you" not in (await mira.says(RUBY)).reply


# --- groups -----------------------------------------------------------------------------------


async def test_only_administrators_set_what_is_for_the_whole_group(records: Records) -> None:
    chair = Talker(records, group="Club", administers=True)
    member = Talker(records, name="Ines", group="Club", administers=False)
    await chair.says(LISBON, PHALS, "no")
    assert "Only administrators" in (await member.says("flush sunday")).reply
    answer = await chair.says("flush sunday")
    assert "flush all plants: Sun 14 Jun 9:00" in answer.reply
    assert len(await reminders(member)) == 1  # all can see it
    for line in ("stop", "stop all reminders", "move 1 to monday", "skip it this time"):
        assert "Only administrators" in (await member.says(line)).reply
    member.at("2026-06-14", "08:30")
    assert "It is time: flush" in (await member.says("my plants")).reply
    assert (await member.says("done")).kind == "log"  # anybody may have done it
    assert await log_of(chair, "the phals") == ["flush"]


# --- what a channel that sends gets ----------------------------------------------------------


async def test_a_ping_is_one_message_with_what_can_be_answered(records: Records) -> None:
    mira = Talker(records)
    await mira.says(LISBON, PHALS, "no", FLUSH, "remind me to buy bark on 5 july")
    at = datetime(2026, 7, 5, 8, 0, 5, tzinfo=UTC)
    now_ms = round(at.timestamp() * 1000)
    async with records.writing() as session:
        [owner] = await pings.due(session, "test", now_ms=now_ms, most=10)
        due = reminding.reckon(owner, now_ms)
        await pings.promise(session, due.promised)
        await pings.note_sent(session, owner.owner_id, due.ping_ids, message_id=77)
    answer = await Conversation(records).ping(due, records)
    assert answer.kind == "reminder"
    assert answer.choices == ["done", "later", "skip"]
    assert "flush all plants" in answer.reply
    assert "“buy bark”" in answer.reply
    assert "was due" not in answer.reply
    mira.at("2026-07-05", "08:20")
    mira = replace(mira)
    assert (await mira.says("done")).kind == "log"
    assert await log_of(mira, "the phals") == ["flush"]


async def test_nothing_of_it_is_shown_where_the_channel_sends(records: Records) -> None:
    mira = Talker(records)
    await mira.says(LISBON, PHALS, "no", FLUSH)
    incoming = Incoming(
        text="my plants", person=mira.name, channel="test", said_at=START + timedelta(days=29)
    )
    answer = await Conversation(records).answer(incoming)
    assert "It is time" not in answer.reply


async def test_where_a_day_is_given_all_that_is_due_on_it_has_come(records: Records) -> None:
    mira = Talker(records)
    await mira.says(LISBON, PHALS, "no", FLUSH)
    night = datetime(2026, 7, 5, 2, 50, tzinfo=UTC)
    incoming = Incoming(
        text="my plants", person=mira.name, channel="test", said_at=night,
        today=night.date(), pulls=True,
    )  # fmt: skip
    answer = await Conversation(records).answer(incoming)
    assert "It is time: flush" in answer.reply
    without = replace(incoming, today=None, said_at=night + timedelta(minutes=1))
    assert "It is time" not in (await Conversation(records).answer(without)).reply


# --- quiet hours --------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("lines", "comes"),
    [
        (["quiet hours 22 to 10"], "2026-06-14 09:00"),  # ten in Porto
        (["quiet hours 22 to 10", "no pings before 7"], "2026-06-14 08:00"),
        (["quiet hours 22 to 10", "undo"], "2026-06-14 08:00"),
    ],
)
async def test_what_we_chose_waits_for_the_end_of_the_quiet_hours(
    mira: Talker, lines: list[str], comes: str
) -> None:
    await mira.says(LISBON, "remind me to flush every sunday", *lines)
    assert [moment(r) for r in await reminders(mira)] == [comes]


async def test_an_hour_that_was_named_is_kept_in_quiet_hours(mira: Talker) -> None:
    await mira.says(LISBON, "remind me to flush every sunday at 9", "quiet hours 22 to 10")
    assert [moment(r) for r in await reminders(mira)] == ["2026-06-14 08:00"]


async def test_later_waits_for_the_end_of_ones_own_quiet_hours(mira: Talker) -> None:
    await mira.says(LISBON, "quiet hours 12 to 16", "remind me to flush every sunday at 9")
    mira.at("2026-06-14", "09:00")  # ten in Porto; three hours later it is one
    assert "16:00" in (await mira.says("my plants", "later")).reply


async def test_quiet_hours_hold_for_what_is_sent(mira: Talker) -> None:
    await mira.says(LISBON, "quiet hours 22 to 10", "remind me to flush every sunday")
    at = datetime(2026, 6, 14, 8, 30, tzinfo=UTC)
    async with mira.records.writing() as session:
        found = await pings.due(session, "test", now_ms=round(at.timestamp() * 1000), most=10)
    assert found == []
    async with mira.records.writing() as session:
        late = round((at + timedelta(hours=1)).timestamp() * 1000)
        found = await pings.due(session, "test", now_ms=late, most=10)
    assert [owner.quiet_min for owner in found] == [(22 * 60, 10 * 60)]
    assert reminding.reckon(found[0], late).pinging


# --- the night of two hours -----------------------------------------------------------------------


@pytest.mark.parametrize(
    ("asked", "due"),
    # A minute passes before each line. In Portugal 1:00 to 1:59 comes twice on 25 October 2026:
    # IANA zone Europe/Lisbon.
    [("22:09", "2026-10-25 00:10"), ("23:09", "2026-10-25 01:10"), ("00:09", "2026-10-25 02:10")],
)
async def test_so_many_hours_are_so_many_where_the_clock_shows_one_twice(
    mira: Talker, asked: str, due: str
) -> None:
    await mira.says(LISBON)
    mira.at("2026-10-25" if asked.startswith("00") else "2026-10-24", asked)
    await mira.says("remind me in 2 hours to open the vents")
    (row,) = await reminders(mira)
    assert moment(row) == due
