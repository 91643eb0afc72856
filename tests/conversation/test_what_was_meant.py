"""The last request goes on through slips; volumes that are no can; who got what."""

from __future__ import annotations

import pytest

from bot.records import Records
from tests.conversation.talking import Grower

PLANTS = "add a catasetum called Hugo in bark, a phal called Ruby in bark and a vanda called Mia"
FEED = "my powder is 20-20-20, label 1 g per litre, call it greeny"
ASKED = "5 l 20-20-20 powder, phals in bark, quarter"


@pytest.fixture
async def new(sqlite_records: Records) -> Grower:
    return Grower(sqlite_records)


@pytest.fixture
async def mira(new: Grower) -> Grower:
    await new.says(PLANTS, FEED)
    return new


def first(reply: str) -> str:
    return reply.partition("\n")[0]


async def log_of(grower: Grower) -> list[tuple[str, str, int]]:
    """Kind, day and plant of what was given."""
    rows = ((await grower.says("log")).details or {}).get("entries", [])
    return [(r["kind"], r["on"], r["plant"]) for r in rows if r["kind"] != "added"]


# --- the last request ----------------------------------------------------------------------------


@pytest.mark.parametrize("between", ["no half", "xyzzy qwrt", "in winter or summer"])
@pytest.mark.parametrize("then", ["and for a gallon", "seedlings", "same but winter", "half"])
async def test_a_line_that_is_not_understood_ends_no_request(
    new: Grower, between: str, then: str
) -> None:
    await new.says(ASKED)
    expected = await new.says(then)
    await new.says(ASKED, between)
    answer = await new.says(then)
    assert answer.kind == "dose"
    assert first(answer.reply) == first(expected.reply)


async def test_a_doubt_of_a_whole_request_is_answered_for_that_one(new: Grower) -> None:
    await new.says(ASKED, "2 l 10-10-10 powder, no half, phals in bark")
    answer = await new.says("quarter")
    assert "10-10-10" in first(answer.reply)
    assert "2 l" in first(answer.reply)


@pytest.mark.parametrize(
    "line",
    ["sorry i meant 2 litres", "no, 2 l", "ich meinte 2 Liter", "quise decir 2 litros",
     "nie, 2 litry"],
)  # fmt: skip
async def test_a_volume_put_right_keeps_the_rest_beside_records(mira: Grower, line: str) -> None:
    await mira.says("2 l 20-20-20 for phal seedlings, quarter")
    expected = (await mira.says("2 l 20-20-20 for phal seedlings, quarter")).reply.split()[0]
    await mira.says("5 l 20-20-20 for phal seedlings, quarter")
    assert (await mira.says(line)).reply.split()[0].replace(",", ".") == expected


async def test_the_plant_of_a_dose_is_put_right(mira: Grower) -> None:
    await mira.says("5 l for Mia")
    answer = await mira.says("no, Ruby")
    assert answer.kind == "dose"
    assert "Ruby" in answer.reply
    assert "Mia" not in answer.reply


@pytest.mark.parametrize(
    ("line", "said"),
    [
        ("every 2 weeks instead", "Still 1/4, as you asked"),
        ("alle 2 Wochen", "Weiter 1/4, wie gewünscht"),
    ],
)
async def test_another_rhythm_says_where_it_changes_nothing(
    new: Grower, line: str, said: str
) -> None:
    before = await new.says(ASKED)
    answer = await new.says(line)
    assert answer.reply.split()[0] == before.reply.split()[0].replace(".", answer.reply[1])
    assert said in answer.reply


async def test_another_rhythm_counts_where_no_strength_was_said(new: Grower) -> None:
    await new.says("5 l 20-20-20 powder, phals in bark")
    answer = await new.says("every 2 weeks instead")
    assert first(answer.reply).startswith("2.5 g")
    assert "as you asked" not in answer.reply


# --- volumes that are no can ----------------------------------------------------------------------


@pytest.mark.parametrize(
    "line",
    ["greeny is nearly empty, 30 ml left", "only 30 ml of greeny left",
     "von greeny sind noch 30 ml übrig", "quedan 30 ml de greeny", "zostało 30 ml greeny"],
)  # fmt: skip
async def test_what_is_left_is_no_can(mira: Grower, line: str) -> None:
    answer = await mira.says(line)
    assert answer.kind == "ask"
    assert "5 l" in answer.reply
    assert (await mira.says("my shelf")).reply.count("greeny") == 1


@pytest.mark.parametrize(
    "line",
    ["i only have a 5 ml syringe", "my syringe is 10 ml", "ich habe nur eine 5 ml Spritze",
     "solo tengo una jeringa de 5 ml", "mam tylko strzykawkę 5 ml"],
)  # fmt: skip
async def test_a_syringe_is_no_can(mira: Grower, line: str) -> None:
    answer = await mira.says(line)
    assert answer.kind == "ask"
    assert "0.1" in answer.reply.replace(",", ".")
    assert "syringe" in (await mira.says("my syringe shows 0.1 ml")).reply


@pytest.mark.parametrize(
    "line",
    ["watered ruby 2 l", "watered ruby with 2 l", "gave ruby 2 l of clear water",
     "Ruby gegossen, 2 l", "regué a Ruby con 2 l", "podlałam Ruby 2 l"],
)  # fmt: skip
async def test_watered_with_so_much_is_clear_water(mira: Grower, line: str) -> None:
    await mira.says(line)
    assert await log_of(mira) == [("clear", "2026-06-07", 2)]


@pytest.mark.parametrize(
    ("line", "day"),
    [
        ("plan today 10 l", "2026-06-07"), ("plan saturday 10 l", "2026-06-13"),
        ("what's on today, 10 l can", "2026-06-07"), ("Plan heute 10 l", "2026-06-07"),
        ("plan hoy 10 l", "2026-06-07"), ("plan na dziś 10 l", "2026-06-07"),
    ],
)  # fmt: skip
async def test_a_plan_takes_the_can_that_was_said(mira: Grower, line: str, day: str) -> None:
    await mira.says("add 50 phals in bark, 20 cm pots, greenhouse")
    answer = await mira.says(line)
    assert answer.kind == "plan"
    assert (answer.details or {})["day"] == day
    assert " 8.8 l" in answer.reply.replace(",", ".")  # five cans, of 5 l it were nine
    assert (await mira.says("my settings")).reply.count("10 l") == 0


async def test_no_can_is_that_large(mira: Grower) -> None:
    assert (await mira.says("plan today 900 l")).kind == "refused"


# --- who got what, who rests ----------------------------------------------------------------------


@pytest.mark.parametrize(
    ("line", "plants"),
    [
        ("who got feed today", {2}), ("what got fed this week", {2, 3}),
        ("which plants were watered today", {1}), ("wer hat heute Dünger bekommen", {2}),
        ("quién recibió abono hoy", {2}), ("kto dziś dostał nawóz", {2}),
    ],
)  # fmt: skip
async def test_who_got_something_is_the_log_of_all(
    mira: Grower, line: str, plants: set[int]
) -> None:
    await mira.says("fed mia on friday", "fed ruby", "watered hugo")
    answer = await mira.says(line)
    assert answer.kind == "history"
    assert {r["plant"] for r in (answer.details or {})["entries"]} == plants


@pytest.mark.parametrize(
    ("line", "said"),
    [
        ("who is resting in january", "Resting in January: Hugo"),
        ("who rests in june", "None of yours rests in June"),
        ("wer ruht im Januar", "Ruhe im Januar: Hugo"),
        ("¿quién descansa en enero?", "En reposo en enero: Hugo"),
        ("kto odpoczywa w styczniu", "W spoczynku (styczeń): Hugo"),
    ],
)
async def test_who_rests_in_a_month(mira: Grower, line: str, said: str) -> None:
    assert said in (await mira.says(line)).reply
