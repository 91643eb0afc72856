"""Days of the log, rhythms in few letters, and reminders while a question of ours is open."""

from __future__ import annotations

import pytest

from bot.conversation.answer import Answer
from bot.conversation.wording import wording
from bot.records import Records
from tests.conversation.talking import Grower

START = ("add a phal called Hugo in bark, a phal called Ruby in bark and a vanda called Mia",)


@pytest.fixture
async def mira(sqlite_records: Records) -> Grower:
    mira = Grower(sqlite_records)
    await mira.says(*START)
    return mira


async def log_of(grower: Grower) -> list[tuple[str, str, int]]:
    """Kind, day and plant of what was given."""
    rows = ((await grower.says("log")).details or {}).get("entries", [])
    return [(r["kind"], r["on"], r["plant"]) for r in rows if r["kind"] != "added"]


async def rules(grower: Grower) -> list[str | None]:
    """The rhythms of the reminders that are set, as they are numbered."""
    rows = ((await grower.says("my reminders")).details or {}).get("reminders", [])
    return [r["rule"] for r in rows]


# --- days ----------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("line", "read"),
    [
        ("fed everyone ystrday", "yesterday"), ("fed everyone yesteday", "yesterday"),
        ("habe gstrn alle gedüngt", "gestern"), ("aboné todas ayr", None),
        ("wczrj nawiozłam wszystkie", "wczoraj"),
    ],
)  # fmt: skip
async def test_a_slip_of_a_day_is_mended_and_shown_or_shown_as_not_understood(
    mira: Grower, line: str, read: str | None
) -> None:
    answer = await mira.says(line)
    slip = next(w for w in line.split() if w.startswith(("yst", "yest", "gst", "ayr", "wcz")))
    assert f"“{slip}”" in answer.reply or slip in answer.reply
    days = {on for _, on, _ in await log_of(mira)}
    assert days <= ({"2026-06-06"} if read else {"2026-06-07"})
    assert bool(days) or answer.kind != "log"


@pytest.mark.parametrize(
    "line",
    [
        "yesterday i fed hugo and today ruby", "fed hugo yesterday and ruby today",
        "fed hugo yesterday, ruby today", "gestern habe ich Hugo gedüngt und heute Ruby",
        "ayer aboné a Hugo y hoy a Ruby", "wczoraj nawiozłam Hugo, a dziś Ruby",
    ],
)  # fmt: skip
async def test_each_part_has_its_own_day(mira: Grower, line: str) -> None:
    await mira.says(line)
    assert await log_of(mira) == [("fed", "2026-06-06", 1), ("fed", "2026-06-07", 2)]


async def test_a_plant_may_be_fed_on_both_days(mira: Grower) -> None:
    await mira.says("fed hugo yesterday and hugo today")
    assert await log_of(mira) == [("fed", "2026-06-06", 1), ("fed", "2026-06-07", 1)]


@pytest.mark.parametrize(
    "line", ["fed ruby on monday and thursday", "Ruby gestern und heute gedüngt"]
)
async def test_two_days_of_the_same_are_asked_about(mira: Grower, line: str) -> None:
    assert (await mira.says(line)).kind == "ask"
    assert await log_of(mira) == []


async def test_a_date_a_few_weeks_ahead_is_not_last_years(mira: Grower) -> None:
    answer = await mira.says("fed mia on 20 june")
    assert answer.kind == "refused"
    assert "still to come" in answer.reply
    await mira.says("fed mia on 20 june 2025", "fed ruby on 20 december")
    assert await log_of(mira) == [("fed", "2025-06-20", 3), ("fed", "2025-12-20", 2)]


# --- rhythms -------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("line", "rule"),
    [
        ("remind me to feed every other sat at 10am", "FREQ=WEEKLY;INTERVAL=2;BYDAY=SA"),
        ("remind me to feed every sun", "FREQ=WEEKLY;BYDAY=SU"),
        ("remind me to feed sat and sun at 9", "FREQ=WEEKLY;BYDAY=SA,SU"),
        ("remind me to feed every mon and sat", "FREQ=WEEKLY;BYDAY=MO,SA"),
        ("erinner mich jeden so ans Düngen", "FREQ=WEEKLY;BYDAY=SU"),
        ("recuérdame abonar cada mar a las 9", "FREQ=WEEKLY;BYDAY=TU"),
        ("przypomnij mi o nawożeniu co drugą sob o 10", "FREQ=WEEKLY;INTERVAL=2;BYDAY=SA"),
    ],
)
async def test_days_of_the_week_in_few_letters(mira: Grower, line: str, rule: str) -> None:
    await mira.says("i live in Porto", line)
    found = await rules(mira)
    assert len(found) == 1
    assert set(rule.split(";")) <= set(str(found[0]).split(";"))


@pytest.mark.parametrize(
    "line",
    ["remind me to feed every blorp", "remind me to feed every 3rd blorp",
     "remind me to feed every other at 9", "erinner mich jeden krz ans Düngen",
     "recuérdame abonar cada zfr", "przypomnij mi nawozić co zfr"],
)  # fmt: skip
async def test_a_rhythm_that_cannot_be_read_is_asked_about(mira: Grower, line: str) -> None:
    await mira.says("i live in Porto")
    assert (await mira.says(line)).kind == "ask"
    answer = await mira.says("every 2 weeks")
    assert "I remind you: feed all plants every 2 weeks" in answer.reply


async def test_what_was_asked_about_is_not_kept_as_it_was(mira: Grower) -> None:
    await mira.says("i live in Porto", "remind me to feed every blorp")
    assert await rules(mira) == []


async def test_the_sun_is_no_day(mira: Grower) -> None:
    await mira.says("i live in Porto", "remind me to move hugo out of the sun every 2 weeks")
    found = await rules(mira)
    assert len(found) == 1
    assert "SU" not in str(found[0])


# --- while we ask where somebody lives ------------------------------------------------------------


async def test_both_reminders_are_kept_that_wait_for_the_place(mira: Grower) -> None:
    await mira.says("remind me to feed every other sat at 10am")
    await mira.says("remind me to flush every first sunday at 9")
    answer = await mira.says("Porto")
    assert answer.reply.count("I remind you:") == 2
    assert len(await rules(mira)) == 2


@pytest.mark.parametrize(
    "line", ["not on mondays", "move it to 9", "snooze 2 days", "fed hugo", "5 l 20-20-20"]
)
async def test_what_is_no_place_is_not_taken_as_one_and_loses_nothing(
    mira: Grower, line: str
) -> None:
    await mira.says("remind me to feed every other sat at 10am")
    answer = await mira.says(line)
    assert "I do not know “" not in answer.reply
    await mira.says("Porto")
    assert len(await rules(mira)) == 1


async def test_a_no_after_other_talk_drops_what_waited_for_the_place(mira: Grower) -> None:
    await mira.says("remind me to feed every other sat at 10am", "fed hugo")
    assert "no reminder" in (await mira.says("nope")).reply
    assert await rules(mira) == []


# --- reminders that are there ---------------------------------------------------------------------


@pytest.fixture
async def reminded(mira: Grower) -> Grower:
    await mira.says("i live in Porto", "remind me to feed every other sat at 10am")
    await mira.says("remind me to flush every first sunday at 9")
    return mira


@pytest.mark.parametrize(
    "line",
    ["delete the second one", "stop the second", "lösch die zweite", "borra el segundo",
     "usuń drugie"],
)  # fmt: skip
async def test_one_is_stopped_by_its_place_in_the_list(reminded: Grower, line: str) -> None:
    before = await rules(reminded)
    await reminded.says(line)
    assert await rules(reminded) == before[:1]


@pytest.mark.parametrize(
    "line", ["not on mondays", "nicht montags", "no los lunes", "nie w poniedziałki"]
)
async def test_days_that_are_denied_say_what_to_send(reminded: Grower, line: str) -> None:
    before = await rules(reminded)
    answer = await reminded.says(line)
    assert answer.kind == "ask"
    assert await rules(reminded) == before


@pytest.mark.parametrize(
    ("line", "heard"),
    [
        ("move 2 to 7", "7:00"), ("snooze 2 days", "Moved"), ("snooze it for 2 days", "Moved"),
        ("quiet 22-7", "Quiet from 22:00 to 7:00"), ("skip the second one", "Passed over: flush"),
    ],
)  # fmt: skip
async def test_short_orders_are_heard(reminded: Grower, line: str, heard: str) -> None:
    assert heard in (await reminded.says(line)).reply


@pytest.mark.parametrize("line", ["un pause", "pause aufheben", "quitar la pausa", "koniec pauzy"])
async def test_a_pause_is_ended(reminded: Grower, line: str) -> None:
    await reminded.says("pause reminders until september")
    answer: Answer = await reminded.says(line)
    assert answer.kind == "reminder"
    assert answer.choices


async def test_a_plan_after_all_was_given_says_when_it_goes_on(sqlite_records: Records) -> None:
    mira = Grower(sqlite_records)
    await mira.says("add 2 phals and a vanda")
    again = wording("en").say("plan-again")
    assert again not in (await mira.says("what's on today")).reply
    await mira.says("fed the phals")
    assert again not in (await mira.says("what's on today")).reply
    await mira.says("watered the vanda")
    assert again in (await mira.says("when should i feed again")).reply
