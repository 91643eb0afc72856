"""What a meter shows of the ready feed, in many wordings, and what is said to it."""

from __future__ import annotations

from typing import Any

import pytest

from bot.conversation.answer import Answer
from bot.dosing.conductivity import NitrogenForms
from bot.dosing.meter import Feed, mixed_ec_ms_cm
from bot.records import Records
from grammar import MeterSaid, Names, read
from tests.conversation.talking import Grower

NAMES = Names(plants=("Ruby",), products=("blue tub",), places=("kitchen sill",))
TUB = "my powder is 20-20-20, label 1 g per litre, call it blue tub"
#: All nitrogen as nitrate: its EC leaves hardly a range.
NITRATE = "my powder is 15-5-20, 15 % nitrate, label 1 g per litre, call it blue tub"
PHALS = "add 3 phals in bark, 12 cm pots, kitchen sill"
RUBY = "I have a masdevallia in sphagnum called Ruby, 8 cm pot"

READINGS = {
    "my meter says 0.9": MeterSaid(0.9),
    "my meter shows 450 ppm on the 500 scale": MeterSaid(450.0, "ppm", 500),
    "the mix reads 1.2 mS at 18 degrees": MeterSaid(1.2, "ms_cm", temp_c=18.0),
    "meter reads 850 us": MeterSaid(850.0, "us_cm"),
    "ec meter 1.1": MeterSaid(1.1),
    "EC of the can came out at 1.4 mS": MeterSaid(1.4, "ms_cm"),
    "my feed measures 0.8 mS/cm": MeterSaid(0.8, "ms_cm"),
    "tested the mix, 620 ppm, 700 scale": MeterSaid(620.0, "ppm", 700),
    "I measured 1.1 in the can with my meter": MeterSaid(1.1),
    "the solution reads 1.0 mS at 22 °C, no ATC": MeterSaid(
        1.0, "ms_cm", temp_c=22.0, compensated=False
    ),
    "TDS meter shows 300 ppm": MeterSaid(300.0, "ppm"),
    "the meter, sorry, the pen says 1,2": MeterSaid(1.2),
    "my ec pen shows 1100 µS/cm": MeterSaid(1100.0, "us_cm"),
    "the meter displays CF 12": MeterSaid(12.0, "cf"),
    "is 1.3 ms too strong for Ruby": MeterSaid(1.3, "ms_cm"),
    "meter says 0.9 for 5 l with blue tub": MeterSaid(0.9),
    "the bucket is at 1.5 mS/cm": MeterSaid(1.5, "ms_cm"),
    "ec of my mix is 0.95": MeterSaid(0.95),
    "meter 0.7 after mixing": MeterSaid(0.7),
    "my meter says 0.9, how much water do I add?": MeterSaid(0.9),
    "the feed reads 68 °F and 1.3 mS": MeterSaid(1.3, "ms_cm", temp_c=20.0),
}

#: What these words do not turn into a reading of the feed.
NEAR_MISSES = {
    "runoff 1.6": "reading", "runoff of Ruby 1.6": "reading", "runoff of Ruby 1,6": "reading",
    "the runoff from Ruby is 1.2 mS": "reading",
    "make 5 l at EC 1.0 with 20-20-20": "dose",
    "feed at 0.9 mS for phals 5 l 20-20-20": "dose",
    "5 l 20-20-20, my tap is 0.4 mS": "dose",
    "I want the mix to read 1.0 mS, 5 l 20-20-20": "dose",
    "the can should read 0.9 mS": "dose",
    "my tap reads 0.4 mS": "water", "my rain water measures 0.03 mS/cm": "water",
    "my scale shows 0.1 g": "kit", "my can holds 5 l": "kit",
    "mix 5 l of 20-20-20 for phals": "dose", "blend my feeds for bloom": "blend",
}  # fmt: skip


@pytest.fixture
def mira(sqlite_records: Records) -> Grower:
    return Grower(sqlite_records)


@pytest.mark.parametrize(("text", "said"), READINGS.items())
def test_a_reading_is_understood(text: str, said: MeterSaid) -> None:
    order = read(text, "en", names=NAMES).order
    assert order is not None
    assert (order.verb, order.meter) == ("meter", said)


@pytest.mark.parametrize(("text", "verb"), NEAR_MISSES.items())
def test_what_is_no_reading_of_the_feed(text: str, verb: str) -> None:
    order = read(text, "en", names=NAMES).order
    assert order is not None
    assert order.verb == verb


def figures(answer: Answer) -> dict[str, Any]:
    assert answer.kind == "reading", answer.reply
    assert answer.details is not None
    return answer.details


async def test_right_after_a_dose_a_reading_is_held_against_it(mira: Grower) -> None:
    dose = await mira.says(PHALS, NITRATE, "my tap is 0.4 mS", "5 l half strength")
    assert dose.dose is not None
    # 15 % N, 5 % P2O5 and 20 % K2O as the label prints them: oxides.toml in fixtures/published
    percent = {"N": 15.0, "P": 5 * 0.436421, "K": 20 * 0.830148}
    feed = Feed(percent, NitrogenForms(1.0, 0.0, 0.0))
    ec = mixed_ec_ms_cm(feed, dose.dose.per_litre, 0.4)
    shown = (ec.low + ec.high) / 2
    found = figures(await mira.says(f"my meter says {shown:.3f}"))
    assert found["of_the_dose"]["low"] <= 1 <= found["of_the_dose"]["high"]
    assert found["volume_l"] == 5.0
    assert found["verdict"] == "under"
    assert found["add_l"] == 0


async def test_twice_the_dose_reads_as_about_twice_the_dose(mira: Grower) -> None:
    await mira.says(PHALS, NITRATE, "my water is RO", "5 l quarter strength")
    single = figures(await mira.says("my meter says 0.4"))
    double = figures(await mira.says("my meter says 0.8"))
    # EC less the water's is nearly in proportion to the feed (Purdue Extension HO-286-W)
    for end in ("low", "high"):
        ratio = double["product_g_l"][end] / single["product_g_l"][end]
        assert ratio == pytest.approx(2.05, rel=0.05)
    assert double["of_the_dose"]["low"] > 1


async def test_a_feed_too_strong_is_thinned_to_what_the_plants_bear(mira: Grower) -> None:
    answer = await mira.says(RUBY, TUB, "my water is RO", "my meter says 1.6 for 5 l")
    found = figures(answer)
    assert found["verdict"] == "over"
    assert answer.reply.startswith("Too strong for Ruby")
    thinned = 5.0 / (5.0 + found["add_l"])  # mass balance
    assert found["product_g_l"]["high"] * thinned <= found["most_g_l"] * (1 + 1e-9)
    assert found["most_g_l"] == pytest.approx(0.25)  # a quarter of the label for sensitive roots
    assert found["elements_mg_l"]["N"]["high"] * thinned <= 50.0 * (1 + 1e-9)


async def test_hard_water_cannot_thin_for_sensitive_roots(mira: Grower) -> None:
    answer = await mira.says(RUBY, TUB, "my tap is 0.56 mS", "my meter says 1.6 for 5 l")
    found = figures(answer)
    assert "rain or reverse osmosis" in answer.reply
    thinned = 5.0 / (5.0 + found["add_l"])
    assert found["product_g_l"]["high"] * thinned <= found["most_g_l"] * (1 + 1e-9)
    assert 1.6 * thinned + 0.05 * (1 - thinned) <= found["most_ec_ms_cm"] * (1 + 1e-9)


@pytest.mark.parametrize(
    ("line", "low", "high"),
    [
        ("my meter says 0.9", 0.9, 0.9),
        ("my meter shows 450 ppm on the 500 scale", 0.9, 0.9),
        ("my meter shows 630 ppm on the 700 scale", 0.9, 0.9),
        # 450 / 700 and 450 / 500: the scale was not told
        ("my meter shows 450 ppm", 450 / 700, 0.9),
        ("my meter shows 900 µS/cm", 0.9, 0.9),
        ("the meter displays CF 9", 0.9, 0.9),
        # ISO 7888:1985, table of correction factors: 1.163 at 18.0 °C, 1.116 at 20.0 °C
        ("the mix reads 0.9 mS at 18 degrees, no atc", 0.9 * 1.163, 0.9 * 1.163),
        ("the mix reads 0.9 mS at 20 degrees", 0.9, 0.9 * 1.116),
    ],
)
async def test_the_ec_at_25_degrees(mira: Grower, line: str, low: float, high: float) -> None:
    found = figures(await mira.says(TUB, "my water is RO", line))
    assert found["ec_ms_cm"]["low"] == pytest.approx(low, rel=5e-3)
    assert found["ec_ms_cm"]["high"] == pytest.approx(high, rel=5e-3)


async def test_forms_of_nitrogen_narrow_the_range(mira: Grower, sqlite_records: Records) -> None:
    wide = figures(await mira.says(TUB, "my water is RO", "my meter says 0.9"))
    other = Grower(sqlite_records, "Otto")
    forms = "nitrate 6 %, ammonium 4 %, urea 10 %"  # such labels are common; no source
    label = f"my powder is 20-20-20, {forms}, 1 g per litre, call it blue tub"
    narrow = figures(await other.says(label, "my water is RO", "my meter says 0.9"))
    wide_n, narrow_n = wide["elements_mg_l"]["N"], narrow["elements_mg_l"]["N"]
    assert wide_n["low"] <= narrow_n["low"] <= narrow_n["high"] <= wide_n["high"]
    assert narrow_n["high"] / narrow_n["low"] < 1.4 < wide_n["high"] / wide_n["low"]


async def test_without_a_water_all_may_be_the_waters_own(mira: Grower) -> None:
    answer = await mira.says(TUB, "my meter says 0.5")
    assert figures(answer)["product_g_l"]["low"] == 0
    assert "not on record" in answer.reply


async def test_the_feed_that_was_asked_for_completes_the_reading(mira: Grower) -> None:
    asked = await mira.says("my meter shows 450 ppm on the 500 scale")
    assert asked.kind == "ask"
    assert "EC 0.9" in asked.reply
    assert figures(await mira.says("20-20-20"))["ec_ms_cm"]["low"] == pytest.approx(0.9)


async def test_a_figure_without_a_unit_that_no_feed_has_is_asked_about(mira: Grower) -> None:
    answer = await mira.says(TUB, "my meter shows 450")
    assert answer.kind == "ask"
    for choice in answer.choices:
        assert (await mira.says(choice)).kind == "reading"


@pytest.mark.parametrize(
    ("line", "words"),
    [
        ("the mix reads 0.9 mS at 70 degrees", "0 to 50"),
        ("my meter says 0.3", "less than its water"),
        ("the can reads 90 mS", "60 is more than sea water"),
    ],
)
async def test_what_cannot_be_is_refused_with_a_reason(mira: Grower, line: str, words: str) -> None:
    answer = await mira.says(TUB, "my tap is 0.6 mS", line)
    assert answer.kind == "refused"
    assert words in answer.reply


async def test_a_runoff_stays_an_entry_of_the_log(mira: Grower) -> None:
    answer = await mira.says(RUBY, TUB, "runoff of Ruby 1,6")
    assert "Runoff" in answer.reply
    assert answer.choices == ["undo"]


async def test_why_tells_rule_and_source(mira: Grower) -> None:
    answer = await mira.says(TUB, "my tap is 0.2 mS", "the mix reads 0.9 mS at 18 degrees", "why")
    assert answer.kind == "why"
    assert "ISO 7888" in answer.reply
    assert "PHREEQC" in answer.reply


async def test_where_the_hardness_alone_is_known_the_water_is_a_range(mira: Grower) -> None:
    answer = await mira.says(TUB, "my tap is 8 dH", "my meter says 1.2")
    found = (answer.details or {})["product_g_l"]
    assert "estimated from its hardness" in answer.reply
    ends = [(await mira.says(f"my tap is {ec} mS", "my meter says 1.2")).details or {}
            for ec in (0.26, 0.71)]  # fmt: skip
    # 8 dH makes 0.26 to 0.71 by the types of water: a purer water leaves more to the feed
    assert found["high"] == pytest.approx(ends[0]["product_g_l"]["high"], rel=0.03)
    assert found["low"] == pytest.approx(ends[1]["product_g_l"]["low"], rel=0.03)


async def test_a_question_of_ours_gave_out_no_dose(records: Records) -> None:
    mira = Grower(records)
    told = await mira.says(
        "my tap is 0.3 mS", "my powder is 20-20-20, label 1 g per litre, call it blue tub",
        "2 foo", "my meter says 0.9",
    )  # fmt: skip
    assert told.kind == "reading"
    assert "dose I gave" not in told.reply
    told = await mira.says("1 l for a phal", "my meter says 0.9")
    assert "dose I gave" in told.reply
