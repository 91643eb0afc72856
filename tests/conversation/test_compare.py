"""Feeds on the shelf side by side."""

from __future__ import annotations

from typing import Any

import pytest

from bot.conversation.answer import Answer
from bot.records import Records
from grammar import Names, Order, read
from tests.conversation.talking import Grower

TUB = "my powder is 20-20-20, label 1 g per litre, call it blue tub"
BOX = "my powder is 15-5-15 +5Ca +2Mg, label 1 g per litre, call it red box"
BOTTLE = "my liquid is 7-3-6, 4 ml per litre, call it green bottle"
PRICES = (
    "blue tub costs 20 € for 1 kg",
    "green bottle costs 10 € for 1 l",
    "density of green bottle is 1.2 kg/l",
)
NAMES = Names(plants=("Ruby",), products=("blue tub", "red box", "green bottle"))


@pytest.fixture
def mira(records: Records) -> Grower:
    return Grower(records)


def order(text: str) -> Order:
    found = read(text, "en", names=NAMES).order
    assert found is not None
    return found


def feed(answer: Answer, name: str) -> dict[str, Any]:
    assert answer.kind == "compare", answer.reply
    assert answer.details is not None
    return next(f for f in answer.details["feeds"] if f["name"] == name)


UNDERSTOOD = [
    "compare blue tub and red box", "compare the blue tub with the green bottle",
    "which is cheaper", "which is cheaper, blue tub or red box?", "what costs 100 litres",
    "how much does 100 litres of feed cost?", "what do 20 l of blue tub cost",
    "is the red box cheaper than the green bottle?", "compare my feeds", "compare them",
    "which of my feeds is the cheapest", "which one costs less", "what's the cheapest feed",
    "blue tub vs green bottle", "blue tub versus red box please",
    "which gives better value for money", "what is the price of 50 litres with the red box?",
    "compare at 100 ppm N", "is the green bottle more expensive than the blue tub",
    "difference between blue tub and red box?", "cost per 100 litres",
    "cheapest feed for the phals", "how do blue tub and red box compare",
]  # fmt: skip


@pytest.mark.parametrize("text", UNDERSTOOD)
def test_a_comparison_is_understood(text: str) -> None:
    assert order(text).verb == "compare"


NEAR_MISSES = {
    "blue tub costs 12 € for 500 g": "product_change",
    "blue tub costs 12 dollars": "product_change",
    "price of the blue tub is 9 €, 250 g": "product_change",
    "which feed for the vandas?": "choose",
    "which of my feeds is best for Ruby in bloom?": "choose",
    "what's on my shelf": "shelf",
    "what does the blue tub lack?": "lacking",
    "2 l with blue tub": "dose",
    "100 litres 20-20-20 powder quarter": "dose",
    "compare 5 l 20-20-20 powder": "dose",
    "how much for 100 litres?": "dose",
    "fed Ruby with the cheaper one": "fed",
}


@pytest.mark.parametrize(("text", "verb"), NEAR_MISSES.items())
def test_near_misses_stay_what_they_are(text: str, verb: str) -> None:
    assert order(text).verb == verb


async def test_feeds_are_compared_at_the_same_nitrogen(mira: Grower) -> None:
    answer = await mira.says(TUB, BOTTLE, *PRICES, "compare blue tub and green bottle")
    # mass balance: 100 l at 50 mg/l N is 5 g N; 25 g of 20 % at 20 a kilo, 59.5 ml of 7 %
    tub, bottle = feed(answer, "blue tub"), feed(answer, "green bottle")
    assert tub["product_g"] == pytest.approx(25)
    assert tub["cost"] == pytest.approx(0.50)
    assert bottle["product_ml"] == pytest.approx(5 / 0.07 / 1.2)
    assert bottle["cost"] == pytest.approx(5 / 0.07 / 1.2 * 10 / 1000)
    assert answer.reply.startswith("blue tub is the cheapest: 0.50 EUR for 100 l.")
    assert "not by the size of the pack" in answer.reply
    assert tub["per_money_g"]["N"] == pytest.approx(10)  # 200 g N for 20


@pytest.mark.parametrize(
    ("text", "litres", "n_mg_l", "cost"),
    [
        ("what costs 100 litres", 100, 50, 0.5),
        ("what do 20 litres of blue tub cost", 20, 50, 0.1),
        ("which is cheaper at 100 ppm N", 100, 100, 1.0),
        ("compare my feeds at half strength", 100, 100, 1.0),
    ],
)  # fmt: skip
async def test_the_volume_and_the_nitrogen_that_are_said_count(
    mira: Grower, text: str, litres: float, n_mg_l: float, cost: float
) -> None:
    answer = await mira.says(TUB, BOTTLE, *PRICES, text)
    assert feed(answer, "blue tub")["cost"] == pytest.approx(cost)
    assert answer.details is not None
    assert (answer.details["volume_l"], answer.details["n_mg_l"]) == (litres, n_mg_l)


async def test_missing_numbers_are_named_and_the_line_to_send_works(mira: Grower) -> None:
    answer = await mira.says(TUB, BOTTLE, "which is cheaper?")
    assert "I cannot say what they cost yet" in answer.reply
    sent = 0
    while (
        wanted := [x for x in answer.reply.split("\n") if " is missing. Send it like: " in x]
    ) and (sent < 6):
        sent += 1
        told = await mira.says(wanted[0].split("Send it like: ")[1])
        assert told.kind == "products", told.reply
        answer = await mira.says("which is cheaper?")
    assert sent == 3  # two prices and a density
    assert all(f["cost"] for f in (answer.details or {})["feeds"])
    assert "is the cheapest" in answer.reply


async def test_the_nitrogen_forms_can_be_sent_too(mira: Grower) -> None:
    answer = await mira.says(TUB, BOX, "compare blue tub and red box")
    assert "price of blue tub is missing" in answer.reply
    await mira.says("blue tub costs 20 € for 1 kg", "red box costs 30 € for 1 kg")
    answer = await mira.says("compare blue tub and red box")
    line = next(x for x in answer.reply.split("\n") if "For bark" in x)
    assert (await mira.says(line.split("Send it like: ")[1])).kind == "products"
    told = await mira.says("blue tub has 4 % nitrate, 4 % ammonium, 12 % urea")
    assert told.kind == "products"
    answer = await mira.says("compare blue tub and red box")
    assert feed(answer, "blue tub")["bark"] == ["much-urea"]
    assert "slow in bark" in answer.reply


async def test_different_money_is_not_ordered(mira: Grower) -> None:
    await mira.says(TUB, BOX, "blue tub costs 20 € for 1 kg", "red box costs 10 $ for 1 kg")
    answer = await mira.says("which is cheaper?")
    assert "different money" in answer.reply
    assert "cheapest" not in answer.reply


async def test_an_unknown_name_is_not_passed_over(mira: Grower) -> None:
    answer = await mira.says(TUB, BOTTLE, "compare blue tub and yellow box")
    assert "I know only blue tub" in answer.reply


async def test_an_empty_shelf_and_labels_not_on_it_say_what_to_send(mira: Grower) -> None:
    for text in ("which is cheaper?", "compare 20-20-20 and 13-3-15"):
        answer = await mira.says(text)
        assert answer.kind == "ask"
        assert "call it blue tub" in answer.reply
    assert "only feed on your shelf" in (await mira.says(TUB, "compare my feeds")).reply


@pytest.mark.parametrize("text", ["compare at 5000 ppm N", "what do 50000 litres cost"])
async def test_what_cannot_be_is_refused_with_what_can(mira: Grower, text: str) -> None:
    answer = await mira.says(TUB, BOTTLE, *PRICES, text)
    assert answer.kind == "refused"
    assert "Send" in answer.reply


async def test_why_has_the_formula_and_its_source(mira: Grower) -> None:
    answer = await mira.says(TUB, BOTTLE, *PRICES, "which is cheaper?")
    assert {w.rule for w in answer.why} >= {"compare.product", "compare.cost"}
    told = await mira.says("why?")
    assert "cost = price × product ÷ pack (New Mexico State University" in told.reply


async def test_the_salt_index_is_shown_with_its_range_and_its_source(mira: Grower) -> None:
    await mira.says(
        "my powder is 46-0-0, call it urea", "my powder is 15.5-0-0 + 19Ca, call it lime"
    )
    answer = await mira.says("compare urea and lime")
    assert "least with urea" in answer.reply
    # one salt each: 74.4 to 75.4 over 46 % N, and 65 to 69 over 15.5 %, by salt_index.toml
    index = feed(answer, "urea")["salt_index_per_n"]
    assert index["low"] == pytest.approx(74.4 / 46, rel=0.05)
    assert index["high"] == pytest.approx(75.4 / 46, rel=0.05)
    assert "Rader" in (await mira.says("why")).reply


async def test_labels_that_leave_the_salts_open_are_not_told_apart(mira: Grower) -> None:
    await mira.says("my powder is 20-20-20, call it blue", "my powder is 15-5-15, call it red")
    assert "do not tell which is lower" in (await mira.says("compare blue and red")).reply


async def test_a_label_that_no_listed_salts_make_is_said_to_lack_its_index(mira: Grower) -> None:
    await mira.says("my powder is 60-30-0, call it odd", "my powder is 20-20-20, call it blue")
    assert "salt index of odd is missing" in (await mira.says("compare odd and blue")).reply
