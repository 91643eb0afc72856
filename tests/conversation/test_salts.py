"""The salts in pots, asked in plain words."""

from __future__ import annotations

import pytest

from bot.records import Records
from grammar import Names, read
from tests.conversation.talking import Grower

RUBY = "I have a masdevallia called Ruby in sphagnum, 8 cm pot"
TUB = "my powder is 20-20-20, label 1 g per litre, call it blue tub"
NAMES = Names(plants=("Ruby",), products=("blue tub", "red box"))


@pytest.fixture
def mira(records: Records) -> Grower:
    return Grower(records)


ASKED = [
    "how salty is Ruby", "how salty is Ruby?", "is Ruby too salty", "salt build up on Ruby?",
    "salts in Ruby's pot", "how much salt is in Ruby's pot", "what is the salt level of Ruby",
    "how do I flush Ruby", "how much water to flush Ruby?", "how should i flush Ruby",
    "how salty are my pots", "which pots are the saltiest", "are the phals salty?",
    "how salty is everything", "flush plan for Ruby", "ec of the pot of Ruby",
]  # fmt: skip


@pytest.mark.parametrize("line", ASKED)
def test_it_is_understood(line: str) -> None:
    order = read(line, "en", names=NAMES).order
    assert order is not None
    assert order.verb == "salts"


MISSES = [
    ("flushed Ruby", "flush"), ("flush all phals", "flush"), ("when do I flush Ruby", "plan"),
    ("epsom salts, 1 g in 2 l", "unshelved"), ("runoff 1.6 from Ruby", "reading"),
    ("5 l 20-20-20 soluble salts powder, quarter", "dose"), ("did I flush Ruby?", "history"),
    ("clear water for Ruby", "clear"), ("2 l for Ruby", "dose"), ("what's on today", "plan"),
]  # fmt: skip


@pytest.mark.parametrize(("line", "verb"), MISSES)
def test_what_only_looks_like_it_stays_what_it_is(line: str, verb: str) -> None:
    order = read(line, "en", names=NAMES).order
    assert order is not None
    assert order.verb == verb


async def ec(mira: Grower) -> float:
    answer = await mira.says("how salty is Ruby?")
    assert answer.kind == "salts"
    return float((answer.details or {})["pots"][0]["ec_ms_cm"])


async def fed_weekly(mira: Grower, weeks: int, line: str) -> None:
    for _ in range(weeks):
        await mira.later(days=7).says(line)


async def test_feeding_raises_it_and_a_flush_lowers_it(mira: Grower) -> None:
    await mira.says(RUBY, TUB, "my water is rain")
    await fed_weekly(mira, 6, "fed Ruby quarter")
    before = await ec(mira)
    await mira.later(days=1).says("flushed Ruby")
    after = await ec(mira)
    # two pot volumes of rain leave a small part of the salts: at most a third
    assert after < before / 3


async def test_stronger_feed_leaves_more_of_it(mira: Grower, records: Records) -> None:
    await mira.says(RUBY, TUB, "my water is rain")
    await fed_weekly(mira, 6, "fed Ruby quarter")
    weak = await ec(mira)
    tom = Grower(records, "Tom")
    await tom.says(RUBY, TUB, "my water is rain")
    await fed_weekly(tom, 6, "fed Ruby full strength")
    assert await ec(tom) > 1.5 * weak


async def test_a_reading_of_the_runoff_corrects_it(mira: Grower) -> None:
    await mira.says(RUBY, TUB, "my water is rain", "fed Ruby quarter")
    before = await mira.says("how salty is Ruby?")
    await mira.says("runoff 3 from Ruby")
    after = await mira.says("how salty is Ruby?")
    was, now = ((a.details or {})["pots"][0] for a in (before, after))
    assert now["ec_ms_cm"] > was["ec_ms_cm"]
    assert now["ec_sd_ms_cm"] < was["ec_sd_ms_cm"]
    assert "flush it now" in after.reply.casefold()


async def test_a_flush_says_how_much_in_passes_with_a_rest_and_what_it_brings(
    mira: Grower,
) -> None:
    await mira.says(RUBY, TUB, "my water is rain")
    await fed_weekly(mira, 5, "fed Ruby full strength")
    answer = await mira.says("how do I flush Ruby")
    flush = (answer.details or {})["pots"][0]["flush"]
    assert len(flush["passes_l"]) >= 2
    assert flush["ec_after"] < flush["ec_before"]
    assert "wait 30 minutes" in answer.reply


async def test_several_are_listed_the_saltiest_first(mira: Grower) -> None:
    await mira.says(RUBY, "add 3 phals in bark, 12 cm pots", TUB, "my water is rain")
    await fed_weekly(mira, 5, "fed Ruby full strength")
    answer = await mira.says("how salty are my pots")
    lines = answer.reply.splitlines()
    assert lines[1].startswith("- Ruby")
    assert len((answer.details or {})["pots"]) == 2


async def test_a_mount_holds_none(mira: Grower) -> None:
    await mira.says("add a vanda mounted, called Blue")
    answer = await mira.says("how salty is Blue")
    assert "hardly any salts" in answer.reply


async def test_nothing_logged_is_said_to_be_a_guess(mira: Grower) -> None:
    await mira.says(RUBY)
    assert "it is a guess" in (await mira.says("how salty is Ruby")).reply


async def test_why_tells_how_it_is_reckoned(mira: Grower) -> None:
    await mira.says(RUBY, TUB, "fed Ruby quarter", "how salty is Ruby")
    answer = await mira.says("why")
    assert answer.kind == "why"
    assert "FAO" in answer.reply


async def test_a_month_without_clear_water_makes_a_flush_due(mira: Grower) -> None:
    await mira.says("add a cymbidium called Max in bark, 16 cm pot", TUB, "my water is rain")
    await mira.says("flushed Max", "runoff 0.1 from Max")
    await fed_weekly(mira, 5, "fed Max quarter")
    answer = await mira.says("how salty is Max")
    due = (answer.details or {})["pots"][0]["due"]
    assert due["reason"] == "month_without_clear"
    assert "A month without clear water" in answer.reply


# --- the plan follows the model ----------------------------------------------------------------


async def todays(mira: Grower) -> tuple[str, list[str]]:
    """What Ruby gets today, and the reasons."""
    answer = await mira.says("what's on today")
    groups = (answer.details or {})["groups"]
    found = next(g for g in groups if "Ruby" in g["plants"])
    return found["action"], found["reasons"]


async def test_salts_over_the_ceiling_bring_a_flush_forward_with_the_reason(mira: Grower) -> None:
    await mira.says(RUBY, TUB, "my water is rain", "flushed Ruby")
    for _ in range(3):  # 15 days since clear water: the month is not up
        await mira.later(days=4).says("fed Ruby 200 ppm N")
    mira.later(days=3)
    assert await todays(mira) == ("flush", ["salts over its limit by the log"])
    assert "flush it now" in (await mira.says("how salty is Ruby")).reply.casefold()
    assert "flush" in (await mira.says("my plants")).reply


async def test_a_weak_feed_brings_none_forward(mira: Grower) -> None:
    await mira.says(RUBY, TUB, "my water is rain", "flushed Ruby")
    for _ in range(3):
        await mira.later(days=4).says("fed Ruby 20 ppm N")
    mira.later(days=3)
    assert (await todays(mira))[0] == "feed"


async def test_the_month_stays_the_latest(mira: Grower) -> None:
    await mira.says(RUBY, TUB, "my water is rain", "flushed Ruby")
    await mira.later(days=14).says("fed Ruby 5 ppm N")
    action, reasons = await todays(mira.later(days=14))
    assert action == "flush"
    assert reasons == ["4 weeks without clear water"]


async def test_a_flush_that_is_done_is_not_due_again(mira: Grower) -> None:
    await mira.says(RUBY, TUB, "my water is rain", "runoff 3 from Ruby")
    assert (await todays(mira))[0] == "flush"
    await mira.says("flushed Ruby")
    assert (await todays(mira.later(days=2)))[0] == "feed"


async def test_an_entry_that_is_undone_does_not_count(mira: Grower) -> None:
    await mira.says(RUBY, TUB, "my water is rain", "runoff 3 from Ruby", "undo")
    assert (await todays(mira))[0] == "feed"


async def test_a_pot_of_which_nothing_is_known_brings_none_forward(mira: Grower) -> None:
    await mira.says(RUBY, TUB, "my water is rain", "fed Ruby quarter")
    assert (await todays(mira.later(days=7)))[0] == "feed"
    assert "too short to tell" in (await mira.says("how salty is Ruby")).reply


async def test_no_flush_with_water_that_is_too_salty_itself(mira: Grower) -> None:
    await mira.says(RUBY, TUB, "my tap is 0.9 mS", "flushed Ruby", "fed Ruby quarter")
    assert (await todays(mira.later(days=5)))[0] == "feed"
    assert "take rain or reverse osmosis" in (await mira.says("how salty is Ruby")).reply


async def test_plants_fed_together_are_followed_each_with_its_own(mira: Grower) -> None:
    await mira.says(RUBY, "I have a masdevallia called Dot in sphagnum, 8 cm pot", TUB)
    await mira.says("my water is rain", "flushed Ruby", "flushed Dot")
    for _ in range(3):
        await mira.later(days=4).says("fed everything 200 ppm N")
    await mira.says("flushed Dot")
    mira.later(days=3)
    answer = await mira.says("what's on today")
    by_plant = {p: g["action"] for g in (answer.details or {})["groups"] for p in g["plants"]}
    assert by_plant == {"Ruby": "flush", "Dot": "feed"}


async def test_a_runoff_of_no_plant_is_asked_of_which_and_then_kept(
    sqlite_records: Records,
) -> None:
    mira = Grower(sqlite_records)
    await mira.says("add 2 phals", "my runoff reads 1.8 mS")  # of the only ones there are
    assert "1.8" in (await mira.says("what was done")).reply
    await mira.says("add a vanda")
    assert (await mira.says("my runoff reads 0.9 mS")).ask
    answer = await mira.says("the vanda")
    assert answer.kind == "reading"
    assert "Vanda" in answer.reply
