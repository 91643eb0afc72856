"""Messages about water, salts and bottles as people type them: what went wrong once stays right."""

from __future__ import annotations

import pytest

from bot.records import Records
from grammar import Names, read
from tests.conversation.talking import Grower

NAMES = Names(plants=("Ruby",), products=("blue tub", "lime", "epsom"))
TUB = "my powder is 20-20-20, label 1 g per litre, call it blue tub"
LIME = "my powder is 15.5-0-0 + 19Ca, 1 g per litre, call it lime"

VERBS = [
    ("concentrate 1:200 of blue tub and lime", "stock"),
    ("stok solution blue tub 1 l", "stock"),
    ("can i put lime and epsom together in a bottle", "together"),
    ("do epsom and blue tub clash", "together"),
    ("tds 450 ppm blue tub", "meter"),
    ("the can reads 2.5 blue tub 10 l can", "meter"),
    ("my can holds 10 l", "kit"),
    ("how hard is 14 dh in ppm", "water_suits"),
    ("is my tap good 4 phals", "water_suits"),
    ("my softened water is 2 dh, ok?", "water_suits"),
    ("my tap is 14 dH ok", "water"),
    ("5 l 20-20-20 tap water ok?", "dose"),
    ("how often should i flush Ruby", "salts"),
    ("when do I flush Ruby", "plan"),
]


@pytest.fixture
def mira(sqlite_records: Records) -> Grower:
    return Grower(sqlite_records)


@pytest.mark.parametrize(("line", "verb"), VERBS)
def test_it_is_understood(line: str, verb: str) -> None:
    order = read(line, "en", names=NAMES).order
    assert order is not None
    assert order.verb == verb


async def test_a_ratio_makes_no_liquid_of_a_powder(mira: Grower) -> None:
    answer = await mira.says(TUB, "blue tub 1:200")
    assert answer.kind == "ask"
    shelf = (await mira.says("my shelf")).details or {}
    assert shelf["products"][0]["form"] == "powder"


@pytest.mark.parametrize(
    ("line", "words"),
    [
        ("my meter says 9 blips", "blips is no unit"),
        ("my meter says -0.4", "No meter shows -0.4"),
        ("my meter says 1.1 mS at 60 C", "0 to 50"),
        ("my tap is 500 dH", "beyond fresh water"),
        ("my tap: ca 60 mg 10 mmol", "beyond fresh water"),
        ("Na 20000 mg/l, Cl 30000", "more than sea water"),
        ("stock 1:5000 of blue tub", "does not stay clear"),
        ("100 l stock of blue tub", "10 ml to 20 l"),
    ],
)
async def test_what_cannot_be_is_refused_with_what_to_send(
    mira: Grower, line: str, words: str
) -> None:
    answer = await mira.says(TUB, line)
    assert answer.kind == "refused"
    assert words in answer.reply


async def test_a_reading_far_too_strong_is_still_told(mira: Grower) -> None:
    for line, least in (("my meter says 2.5 mS", 2.0), ("my meter says 9 mS", 8.0)):
        answer = await mira.says(TUB, "my water is rain", line)
        assert answer.kind == "reading"
        # an EC limit of 1 at the most, so at least so many times too strong
        assert (answer.details or {})["of_the_limit"]["low"] > least


async def test_a_later_report_puts_the_figures_of_the_one_before_aside(mira: Grower) -> None:
    await mira.says("Ca 80, Mg 12, HCO3 300 mg/l")
    answer = await mira.says("Ca 40, Mg 6 mg/l")
    found = answer.details or {}
    assert found["alkalinity_mg_l_caco3"] is None
    assert "EC" not in answer.reply.splitlines()[0]


async def test_what_is_short_is_what_is_asked_for(mira: Grower) -> None:
    answer = await mira.says(TUB, LIME, "my tap is 14 dH", "do my plants get enough calcium")
    assert "Perhaps missing: magnesium" in answer.reply
    assert "magnesium sulphate (Epsom salt)" in answer.reply
