"""Too much feed that was told is kept: the plan and every dose say flush and pause first."""

from __future__ import annotations

import pytest

from bot.records import Records
from tests.conversation.talking import Grower

PLANTS = "add hugo, a phal in bark", "add mia, a cattleya in bark"
BLUE = "my powder is 20-10-20, label 1 g per litre, call it blue"


@pytest.fixture
async def mira(sqlite_records: Records) -> Grower:
    grower = Grower(sqlite_records)
    await grower.says(*PLANTS, BLUE)
    return grower


async def plan(mira: Grower) -> dict[str, list[str]]:
    """The plants of today's plan by what they get."""
    answer = await mira.says("plan today")
    groups = (answer.details or {})["groups"]
    return {g["action"]: g["plants"] for g in groups}


# What is left out of the feed and rinsed is what a rescue from salts wants (rescue.toml); that a
# feed which was too strong is rinsed out at once is common practice, no source.

TOLD = [
    "i put 5 grams in 2 litres and already watered",  # 2.5 times the label
    "ich hab 5 gramm in 2 liter getan und schon gegossen",
    "le puse 5 gramos a 2 litros y ya regue",
    "wsypałam 5 gramów do 2 litrów i już podlałam",
    "last week i gave them double by accident, all of them",
    "la semana pasada les había puesto el doble sin querer a todas",
]


@pytest.mark.parametrize("line", TOLD)
async def test_the_plan_flushes_what_got_too_much(mira: Grower, line: str) -> None:
    await mira.says("2 l for mia")  # whom a dose was for before says nothing of it
    told = await mira.says(line)
    assert told.kind == "cautions"
    assert len((told.details or {})["overfed"]) == 2
    assert await plan(mira) == {"flush": ["hugo", "mia"]}


async def test_a_strong_feed_of_one_plant_is_kept_for_that_one(mira: Grower) -> None:
    entry = await mira.says("hugo got 2 g in 1.5 l")  # 133 % of the label
    assert "133" in entry.reply
    found = await plan(mira)
    assert found["flush"] == ["hugo"]
    assert found["feed"] == ["mia"]


async def test_a_strength_over_the_label_is_kept_too(mira: Grower) -> None:
    await mira.says("fed hugo at double strength")
    assert (await plan(mira))["flush"] == ["hugo"]


async def test_a_dose_for_it_says_flush_first(mira: Grower) -> None:
    await mira.says("hugo got 5 g in 1 l")
    before = (await mira.says("1 l for hugo")).reply
    await mira.says("flushed hugo")
    after = (await mira.says("1 l for hugo")).reply
    assert "flush first" in before.splitlines()[0]
    assert "flush" not in after.splitlines()[0]
    assert "no feed until" in after.splitlines()[0]


async def test_flushed_it_pauses_and_then_is_fed_again(mira: Grower) -> None:
    await mira.says("hugo got 5 g in 1 l", "flushed hugo")
    mira.later(days=7)
    assert "hugo" in (await plan(mira))["clear"]
    mira.later(days=28)
    assert "hugo" not in (await plan(mira)).get("clear", [])


async def test_a_feed_that_is_not_too_strong_keeps_nothing(mira: Grower) -> None:
    await mira.says("i put 0.2 g in 1 l")
    assert "flush" not in await plan(mira)


async def test_undo_takes_it_back(mira: Grower) -> None:
    await mira.says("i put 5 g in 2 l")
    undone = await mira.says("undo")
    assert "too much feed" in undone.reply
    assert "flush" not in await plan(mira)


async def test_too_much_asks_of_what_was_told(mira: Grower) -> None:
    """Not of the bot's own dose before it."""
    await mira.says("1 l for mia")
    told = await mira.says("i put 2 g in 1.5 l")
    judged = await mira.says("is that too much?")
    assert judged.reply.splitlines()[0] == told.reply.splitlines()[0]


async def test_a_vessel_of_no_known_size_is_asked_about(mira: Grower) -> None:
    await mira.says("2 l for mia")
    answer = await mira.says("the neighbour put 10 grams in the bucket")
    assert answer.kind == "ask"
    assert "no feed" in answer.reply


# --- one plant less, and what is not certain -----------------------------------------------------

LOST = [
    ("my phal died", 2), ("gave a phal away", 2), ("mir ist die phal eingegangen", 2),
    ("se me murió la phal", 2), ("padła mi phalaenopsis", 2), ("my phals died", None),
]  # fmt: skip


@pytest.mark.parametrize(("line", "left"), LOST)
async def test_a_singular_takes_one_of_several(
    sqlite_records: Records, line: str, left: int | None
) -> None:
    mira = Grower(sqlite_records)
    await mira.says("add 3 phals in bark", line)
    rows = (await mira.says("my plants")).details or {}
    assert [p["count"] for p in rows.get("plants", [])] == ([] if left is None else [left])


@pytest.mark.parametrize(
    "line", ["maybe i fed hugo", "quizá aboné a hugo", "vielleicht hab ich hugo gedüngt"]
)
async def test_what_is_not_certain_is_not_in_the_log(mira: Grower, line: str) -> None:
    await mira.says(line)
    assert "fed" not in (await mira.says("what did hugo get?")).reply


async def test_done_but_one_logs_the_others(mira: Grower) -> None:
    await mira.says("plan hoy")
    await mira.says("hecho pero mia no")
    assert "fed" in (await mira.says("what did hugo get?")).reply
    assert "fed" not in (await mira.says("what did mia get?")).reply
