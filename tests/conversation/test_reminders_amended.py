"""What is said right after a reminder was set, or to our questions, and is none of the answer."""

from __future__ import annotations

import pytest

from bot.records import Records
from tests.conversation.talking import Grower

SET = ("I live in Porto", "add 3 phals in bark", "remind me to flush every monday")


@pytest.fixture
def mira(sqlite_records: Records) -> Grower:
    return Grower(sqlite_records)


@pytest.mark.parametrize("line", ["nvm make it sunday", "no, sunday", "rather on sundays"])
async def test_another_day_moves_the_one_just_set(mira: Grower, line: str) -> None:
    answer = await mira.says(*SET, line)
    assert "every Sunday" in answer.reply


@pytest.mark.parametrize("line", ["no forget it", "cancel that", "nvm stop it"])
async def test_the_one_just_set_is_taken_back(mira: Grower, line: str) -> None:
    await mira.says(*SET, line)
    assert "No reminders" in (await mira.says("my reminders")).reply


@pytest.mark.parametrize("line", ["don't remind me now", "no thanks", "make it 3 l"])
async def test_what_says_nothing_of_it_changes_nothing(mira: Grower, line: str) -> None:
    await mira.says(*SET, line)
    assert "every Monday at 9:00" in (await mira.says("my reminders")).reply


async def test_one_more_is_set_without_a_word_for_it(mira: Grower) -> None:
    await mira.says(*SET, "and once a month a feed")
    assert "2. " in (await mira.says("my reminders")).reply


async def test_a_day_that_is_said_is_passed_over(mira: Grower) -> None:
    answer = await mira.says(*SET, "not this monday")
    assert "Passed over" in answer.reply
    answer = await mira.says("not this wednesday")
    assert "Nothing to pass over" in answer.reply


async def test_a_sentence_is_no_town_and_the_question_stays(mira: Grower) -> None:
    answer = await mira.says("remind me to flush every monday", "how many grams in a teaspoon")
    assert "I do not know" not in answer.reply
    answer = await mira.says("Porto")
    assert "every Monday" in answer.reply


async def test_a_wish_is_asked_about_and_set_with_yes(mira: Grower) -> None:
    answer = await mira.says(*SET[:2], "i want to feed every second sunday")
    assert answer.kind == "ask"
    assert "every other Sunday" in (await mira.says("yes")).reply


@pytest.mark.parametrize("line", ["no thanks", "stop"])
async def test_a_no_ends_a_diagnosis(mira: Grower, line: str) -> None:
    answer = await mira.says("my phal has yellow leaves", line)
    assert "leave it at that" in answer.reply
