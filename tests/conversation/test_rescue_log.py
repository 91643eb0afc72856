"""A rescue is kept: in the log, in the plan, beside a dose."""

from __future__ import annotations

from typing import Any

import pytest

from bot.records import Records
from tests.conversation.talking import Grower

RUBY = "I have a masdevallia in sphagnum called Ruby, 8 cm pot"
TUB = "my powder is 20-20-20, label 1 g per litre, call it blue tub"
ILL = "brown root tips and white crust on Ruby"


@pytest.fixture
def mira(records: Records) -> Grower:
    return Grower(records)


async def due(mira: Grower) -> dict[str, Any]:
    """What Ruby gets on this day."""
    answer = await mira.says("what's on today")
    return dict(next(g for g in (answer.details or {})["groups"] if "Ruby" in g["plants"]))


async def test_it_stands_in_the_log_with_its_cause_and_can_be_taken_back(mira: Grower) -> None:
    answer = await mira.says(RUBY, TUB, ILL)
    assert "no feed until" in answer.reply
    assert "undo" in answer.choices
    assert "judged ill: salt burn" in (await mira.says("what did Ruby get")).reply
    await mira.says("undo")
    assert "judged ill" not in (await mira.says("what did Ruby get")).reply
    assert (await due(mira))["action"] == "feed"


async def test_the_plan_gives_no_feed_while_it_recovers(mira: Grower) -> None:
    await mira.says(RUBY, TUB, "my water is rain", ILL, "flushed Ruby")
    found = await due(mira.later(days=7))
    assert found["action"] == "clear"
    assert found["reasons"] == ["recovers, no feed for 3 weeks yet"]
    assert "clear water (recovers" in (await mira.says("my plants")).reply


async def test_a_dose_for_it_says_so_first(mira: Grower) -> None:
    await mira.says(RUBY, TUB, ILL)
    answer = await mira.later(days=7).says("2 l for Ruby")
    assert answer.reply.startswith("Ruby recovers: no feed until")
    assert not (await mira.says("2 l for a phal")).reply.startswith("Ruby recovers")


async def test_a_dose_for_all_on_record_says_so_first(mira: Grower) -> None:
    await mira.says(RUBY, TUB, ILL)
    answer = await mira.later(days=7).says("5 l")
    assert answer.reply.startswith("Ruby recovers: no feed until")


async def test_the_first_feed_after_it_is_weaker_and_the_next_is_not(mira: Grower) -> None:
    await mira.says(RUBY, TUB, "my water is rain", ILL, "clear water for Ruby")
    mira.later(days=27)
    assert (await due(mira))["action"] == "clear"
    await mira.says("clear water for Ruby")
    mira.later(days=1)
    first = await due(mira)
    # a quarter, less a quarter for moss, and half of that: rescue.toml
    assert (first["action"], first["strength"]) == ("feed", pytest.approx(0.25 * 0.75 * 0.5))
    assert any("after its rescue" in reason for reason in first["reasons"])
    await mira.says("fed Ruby eighth")
    mira.later(days=7)
    assert (await due(mira))["strength"] == pytest.approx(0.25 * 0.75)


async def test_new_roots_that_are_told_end_the_pause(mira: Grower) -> None:
    await mira.says(RUBY, TUB, "my water is rain", ILL, "flushed Ruby")
    await mira.later(days=10).says("Ruby has new roots")
    assert (await due(mira.later(days=1)))["action"] == "feed"


async def test_the_look_again_is_a_tap_away_from_the_calendar(mira: Grower) -> None:
    answer = await mira.says("I live in Porto", RUBY, ILL)
    line = next(c for c in answer.choices if c.startswith("remind me"))
    assert line == "remind me to look at Ruby on 21 june"
    set_ = await mira.says(line)
    assert set_.kind == "reminder"
    assert "21 Jun" in set_.reply


async def test_a_plant_that_is_not_on_record_leaves_no_entry(mira: Grower) -> None:
    answer = await mira.says("brown root tips and white crust on my phal")
    assert answer.kind == "rescue"
    assert "Written down" not in answer.reply
    assert "undo" not in answer.choices
