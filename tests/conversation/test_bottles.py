"""Stock solutions, what may share a bottle, and mixes, asked in plain words."""

from __future__ import annotations

import pytest

from bot.records import Records
from grammar import Names, read
from tests.conversation.talking import Grower

TUB = "my powder is 20-20-20, label 1 g per litre, call it blue tub"
CALCIUM = "my powder is 15.5-0-0 + 19Ca, label 1 g per litre, call it calcium feed"
POTASH = "my powder is 13-0-46, label 1 g per litre, call it red box"
NAMES = Names(plants=("Ruby",), products=("blue tub", "calcium feed"))


@pytest.fixture
def mira(records: Records) -> Grower:
    return Grower(records)


ASKED = [
    ("make a stock of blue tub", "stock"), ("stock solution of blue tub", "stock"),
    ("500 ml stock of blue tub", "stock"), ("how concentrated can blue tub be", "stock"),
    ("I want to make stock from blue tub, 1 litre", "stock"), ("premix blue tub", "stock"),
    ("bottle label for blue tub", "stock"), ("stock 1:100 of blue tub", "stock"),
    ("how strong a stock can I make of blue tub?", "stock"),
    ("can blue tub and calcium feed share a bottle?", "together"),
    ("may I put blue tub and calcium feed in one bottle", "together"),
    ("are blue tub and calcium feed compatible?", "together"),
    ("can blue tub and calcium feed be mixed", "together"),
    ("blend blue tub and calcium feed for bloom in 5 l", "blend"),
    ("best mix for growth", "blend"), ("mix my feeds for flowers, 100 ppm N, 5 l", "blend"),
    ("combine blue tub and calcium feed for growth", "blend"),
]  # fmt: skip


@pytest.mark.parametrize(("line", "verb"), ASKED)
def test_it_is_understood(line: str, verb: str) -> None:
    order = read(line, "en", names=NAMES).order
    assert order is not None
    assert order.verb == verb


MISSES = [
    ("5 l blue tub, quarter", "dose"), ("phals in a bark mix, 2 l 20-20-20 powder", "dose"),
    ("2 l 20-20-20 powder, phals in bloom", "dose"),
    ("use blue tub from now on", "product_default"),
    ("blue tub is empty", "product_remove"), ("what does blue tub lack?", "lacking"),
    ("repotted Ruby into a mix of bark and perlite", "repot"), ("100 ppm N 10 l blue tub", "dose"),
    ("fed everything with blue tub", "fed"), ("which feed for bloom?", "choose"),
]  # fmt: skip


@pytest.mark.parametrize(("line", "verb"), MISSES)
def test_what_only_looks_like_it_stays_what_it_is(line: str, verb: str) -> None:
    order = read(line, "en", names=NAMES).order
    assert order is not None
    assert order.verb == verb


async def test_a_stock_is_weighed_used_and_labelled(mira: Grower) -> None:
    answer = await mira.says(TUB, "500 ml stock of blue tub")
    assert answer.kind == "stock"
    told = answer.details or {}
    # complete powders at most 100 g/L (a published 1:100 stock of 20-20-20 holds 100 g/L,
    # trade article, weak source; half of the solubility when cold: common practice, no source)
    assert told["g_l"] == pytest.approx(100.0)
    assert told["grams"] == pytest.approx(50.0)
    # label 1 g/l: a litre at full strength takes 10 ml of 100 g/l
    assert told["ml_per_litre_full"] == pytest.approx(10.0)
    assert answer.reply.startswith("50 g of blue tub in water to 500 ml")
    assert "NOT FOR DRINKING" in told["label"]
    assert "Made 7 Jun 2026" in told["label"]


async def test_why_names_the_handbook(mira: Grower) -> None:
    answer = await mira.says(TUB, "stock of blue tub", "why")
    assert "CRC Handbook" in answer.reply


async def test_a_liquid_is_a_stock_already(mira: Grower) -> None:
    answer = await mira.says("my liquid is 7-5-6, label 2 ml per litre, call it brown bottle",
                             "make a stock of brown bottle")  # fmt: skip
    assert answer.kind == "refused"
    assert "syringe" in answer.reply


@pytest.mark.parametrize("volume", ["1 ml", "300 l"])
async def test_a_volume_that_is_no_stock_is_refused(mira: Grower, volume: str) -> None:
    assert (await mira.says(TUB, f"{volume} stock of blue tub")).kind == "refused"


async def test_without_a_feed_it_asks_for_one(mira: Grower) -> None:
    assert (await mira.says("make a stock")).kind == "ask"


async def test_calcium_and_phosphate_get_two_bottles(mira: Grower) -> None:
    # calcium never with phosphates or sulphates in one concentrate (common practice, no source)
    answer = await mira.says(TUB, CALCIUM, "can blue tub and calcium feed share a bottle?")
    assert "must not share" in answer.reply
    codes = {c["code"] for c in (answer.details or {})["bottle"]}
    assert "calcium-phosphate" in codes
    assert (answer.details or {})["can"] == []
    answer = await mira.says("make a stock of blue tub and calcium feed 1:100")
    bottles = (answer.details or {})["bottles"]
    assert [b["name"] for b in bottles] == ["A", "B"]
    assert list(bottles[0]["grams"]) == ["calcium feed"]
    # a quarter of 1 g/l shared by two, thinned 100 times: 12.5 g/l, so 6.25 g in half a litre
    assert bottles[0]["grams"]["calcium feed"] == pytest.approx(6.25)


async def test_what_does_not_clash_shares_a_bottle(mira: Grower) -> None:
    answer = await mira.says(CALCIUM, POTASH, "can red box and calcium feed share a bottle?")
    assert not any(c["sure"] for c in (answer.details or {})["bottle"])


async def test_too_strong_a_ratio_names_the_nearest(mira: Grower) -> None:
    # 0.25 g/l thinned 1000 times is 250 g/l, over the 100 g/l that stay clear; 1:200 is 50 g/l
    answer = await mira.says(TUB, "stock 1:1000 of blue tub")
    assert answer.kind == "refused"
    assert "1:200" in answer.reply


async def test_a_mix_comes_close_and_says_what_it_misses(mira: Grower) -> None:
    answer = await mira.says(TUB, CALCIUM, POTASH, "best mix for bloom in 5 l, 100 ppm N")
    assert answer.kind == "blend"
    told = answer.details or {}
    labels = {"blue tub": 20.0, "calcium feed": 15.5, "red box": 13.0}
    # mg/L = g/L x % x 10 (identity)
    n = sum(g * labels[k] * 10 / told["volume_l"] for k, g in told["grams"].items())
    assert n == pytest.approx(told["n_mg_l"], rel=0.02)
    assert n <= 125.0 + 1e-6  # no plant told: held as a moderate one
    assert "Mg 0 of 25 mg/l" in answer.reply


async def test_a_mix_is_held_to_the_most_sensitive_plant(mira: Grower) -> None:
    answer = await mira.says(TUB, CALCIUM, "add a masdevallia in sphagnum, 8 cm pot",
                             "best mix for growth in 5 l, 100 ppm N")  # fmt: skip
    assert (answer.details or {})["n_mg_l"] <= 50.0 + 1e-6
    assert "bear no more" in answer.reply


async def test_one_powder_is_no_mix(mira: Grower) -> None:
    assert (await mira.says(TUB, "best mix for bloom")).kind == "ask"


@pytest.mark.parametrize(
    "line", ["500 ml stock of blue tub", "stock 1:100 of blue tub", "blend my feeds for growth"]
)
async def test_more_lists_what_to_mind(mira: Grower, line: str) -> None:
    await mira.says(
        "my powder is 20-20-20, label 1 g per litre, call it blue tub",
        "my powder is 15.5-0-0 + 19Ca, call it lime",
    )
    answer = await mira.says(line)
    assert "more" in answer.choices
    told = await mira.says("more")
    assert told.kind == "cautions"
    assert told.reply.splitlines() == [f"- {c.text}" for c in answer.cautions]
    assert "Keep concentrates away from children and pets" in told.reply


async def test_a_stock_of_a_feed_that_is_said_by_its_numbers(mira: Grower) -> None:
    answer = await mira.says("500 ml stock of 20-20-20")
    # complete powders at most 100 g/L: solubility.toml
    assert (answer.details or {})["grams"] == pytest.approx(50)
