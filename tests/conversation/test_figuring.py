"""Salty water told with the dose, readings that agree with it, stocks as asked, conversions.

The tap of these tests is 17 dH with EC 0.62 mS/cm; the powder 13-3-15 with 8 % Ca, 2 % MgO and
1.2 g on its label.
"""

from __future__ import annotations

from typing import Any

import pytest

from bot.conversation.answer import Answer
from bot.records import Records
from tests.conversation.talking import Grower

TAP = "my tap is 17 dH and EC 0.62 mS/cm"
GREY = "my powder is 13-3-15 + 8Ca 2MgO, 12.3% nitrate, 0.7% ammonium, call it grey"
LABEL = "grey label 1.2 g per litre"
BLUE = "my powder is 20-20-20, label 1 g per litre, call it blue"
CAL = "my powder is 15.5-0-0 + 19Ca, label 1 g per litre, call it cal"
PK = "my powder is 0-52-34, label 1 g per litre, call it pk"
SETUP = {
    "en": (TAP, GREY, LABEL),
    "de": ("mein Leitungswasser hat 17 dH und EC 0,62 mS/cm",
           "mein Pulver ist 13-3-15 + 8Ca 2MgO, nenn es grau", "grau Etikett 1,2 g pro Liter"),
    "es": ("mi agua del grifo tiene 17 dH y EC 0,62 mS/cm",
           "mi polvo es 13-3-15 + 8Ca 2MgO, llámalo gris", "gris etiqueta 1,2 g por litro"),
    "pl": ("moja kranówka ma 17 dH i EC 0,62 mS/cm",
           "mój proszek to 13-3-15 + 8Ca 2MgO, nazwij go szary", "szary etykieta 1,2 g na litr"),
}  # fmt: skip


@pytest.fixture
def mira(records: Records) -> Grower:
    return Grower(records)


def details(answer: Answer) -> dict[str, Any]:
    assert answer.details is not None
    return answer.details


def codes(answer: Answer) -> list[str]:
    return [c.code for c in answer.cautions]


# --- a water above what the plants bear ---------------------------------------------------------


@pytest.mark.parametrize(
    ("language", "line"),
    [
        ("en", "10 l of grey for masdevallia"), ("de", "10 l grau für Masdevallia"),
        ("es", "10 l de gris para masdevallia"), ("pl", "10 l szary dla masdevalii"),
    ],
)  # fmt: skip
async def test_too_salty_a_water_is_told_before_the_dose(
    mira: Grower, language: str, line: str
) -> None:
    answer = await mira.says(*SETUP[language], line)
    first = answer.reply.splitlines()[0]
    assert answer.kind == "dose"
    assert answer.language == language
    assert answer.cautions[0].code == "water-over-limit"
    assert first == answer.cautions[0].text
    # the EC of the tap, and what the class bears: 0.5 mS/cm (waters.toml, weak source, ours)
    assert "0.62" in first.replace(",", ".")
    assert "0.5" in first.replace(",", ".")


async def test_how_much_of_the_water_may_be_in_it(mira: Grower) -> None:
    # 0.3 g/l adds 0.37 mS/cm at most; rain has 0.05 (measures.toml), so that by mass balance
    # (0.5 - 0.05 - 0.37) / (0.62 - 0.05) = 0.14 of it may be tap: 1.4 l of 10
    answer = await mira.says(*SETUP["en"], "10 l of grey for masdevallia")
    assert "1.4 l" in answer.reply.splitlines()[0]
    said = await mira.says("10 l of grey for dracula, tap 25 dH EC 0.9")
    assert "0.9 alone" in said.reply.splitlines()[0]


async def test_water_and_feed_together_may_be_too_salty(mira: Grower) -> None:
    # 0.4 mS/cm of water and at least 0.3 of feed are over 0.5, though neither is
    answer = await mira.says(*SETUP["en"], "10 l of grey for masdevallia, tap EC 0.4")
    assert "alone is over" not in answer.reply
    assert "water-over-limit" in codes(answer)


@pytest.mark.parametrize(
    "line",
    [
        "10 l of grey for masdevallia in rain water", "10 l of grey for phals",
        "10 l of grey to EC 1.0", "10 l of grey",
    ],
)  # fmt: skip
async def test_a_water_that_they_bear_is_not_told(mira: Grower, line: str) -> None:
    answer = await mira.says(*SETUP["en"], line)
    assert answer.kind == "dose"
    assert "water-over-limit" not in codes(answer)


async def test_the_plan_says_so_too(mira: Grower) -> None:
    plants = ("add a masdevallia in sphagnum called Ruby", "add 2 phals in bark")
    answer = await mira.says(*SETUP["en"], *plants, "plan")
    [line] = [row for row in answer.reply.splitlines() if "0.62" in row]
    assert line.startswith("Ruby: ")


# --- a reading and the dose before it agree -----------------------------------------------------


async def test_a_reading_of_tap_and_feed_blames_the_water(mira: Grower) -> None:
    answer = await mira.says(*SETUP["en"], "10 l of grey for masdevallia", "my meter reads 0.97 mS")
    assert details(answer)["verdict"] == "over"
    assert "It is the water, not the feed" in answer.reply
    weak = await mira.says("my meter says 540 ppm on the 700 scale")  # 0.77 mS/cm
    assert "It is the water, not the feed" in weak.reply
    assert "weaker than meant" not in weak.reply


async def test_what_is_mixed_anew_comes_under_the_limit(mira: Grower) -> None:
    # room for feed: 1 - 0.62 = 0.38 mS/cm; a gram a litre adds about 1.1 in this tap, so 0.34 g
    answer = await mira.says(*SETUP["en"], "my feed is 14 CF")
    assert details(answer)["ec_ms_cm"]["low"] == pytest.approx(1.4)
    assert "at most 0.34 g" in answer.reply


async def test_what_hits_the_target_is_as_meant(mira: Grower) -> None:
    answer = await mira.says(*SETUP["en"], "10 l of grey to total EC 1.0", "my meter reads 1.0 mS")
    assert details(answer)["verdict"] == "under"
    assert "as meant" in answer.reply
    assert "stronger than meant" not in answer.reply


@pytest.mark.parametrize(
    ("reading", "said"), [("1.3 mS", "stronger than meant"), ("0.7 mS", "weaker than meant")]
)
async def test_what_is_far_off_is_still_told(mira: Grower, reading: str, said: str) -> None:
    answer = await mira.says(*SETUP["en"], "10 l of grey", f"my meter reads {reading}")
    assert said in answer.reply


async def test_the_step_says_what_was_taken_off(mira: Grower) -> None:
    answer = await mira.says(*SETUP["en"], "10 l of grey to EC 1.0")
    step = next(w for w in answer.why if w.rule == "ec.water_known")
    assert "0.62" in step.text
    assert "nothing taken off" not in answer.reply


# --- stocks as asked ----------------------------------------------------------------------------

#: g/l of feed, times 100 or 200, times the bottle; a litre at 80 mg/l N of 13 % takes 0.615 g.
STOCKS = [
    ("1 litre stock of grey for a 1:100 injector at 80 ppm N", "grey", 61.54),
    ("stock of blue 1:100 half strength 1 litre", "blue", 50.0),  # 0.5 g/l x 100
    ("stock of blue 1:200 at 100 ppm N", "blue", 50.0),  # 0.5 g/l x 200 x 0.5 l
    ("stock of blue 1:100 1 litre", "blue", 25.0),  # nothing asked: a quarter
    ("stock of grey 1:50 at 500 ppm N 1 litre", "grey", 48.08),  # held to 125 mg/l N: 0.96 x 50
]


@pytest.mark.parametrize(("line", "name", "grams"), STOCKS)
async def test_a_stock_is_for_what_was_asked(
    mira: Grower, line: str, name: str, grams: float
) -> None:
    answer = await mira.says(*SETUP["en"], BLUE, line)
    [bottle] = details(answer)["bottles"]
    assert bottle["grams"] == {name: pytest.approx(grams, abs=0.01)}


@pytest.mark.parametrize(
    ("language", "line"),
    [
        ("de", "1 Liter Stammlösung grau 1:100 mit 80 ppm N"),
        ("es", "1 litro de solución madre de gris 1:100 a 80 ppm N"),
        ("pl", "1 litr koncentratu szary 1:100 na 80 ppm N"),
    ],
)
async def test_a_stock_is_asked_in_each_language(mira: Grower, language: str, line: str) -> None:
    answer = await mira.says(*SETUP[language], line)
    [bottle] = details(answer)["bottles"]
    assert list(bottle["grams"].values()) == [pytest.approx(61.54, abs=0.01)]  # 80/130 x 100
    assert "80 mg/l" in answer.reply


async def test_a_stock_holds_to_the_last_dose_and_says_so(mira: Grower) -> None:
    lines = ("10 l of grey at 80 ppm N", "make a 1 l stock of grey 1:100")
    answer = await mira.says(*SETUP["en"], *lines)
    assert details(answer)["bottles"][0]["grams"] == {"grey": pytest.approx(61.54, abs=0.01)}
    assert "last dose" in answer.reply


async def test_two_feeds_of_a_stock_say_their_shares(mira: Grower) -> None:
    answer = await mira.says(CAL, PK, "make a stock of cal and pk 1:100")
    assert details(answer)["g_l"] == [pytest.approx(0.125)] * 2  # half of a quarter of 1 g/l
    assert "12.5 %" in answer.reply


# --- figures that dose nothing ------------------------------------------------------------------

#: 1 mS/cm is 500, 640 or 700 ppm by the scale (common practice, no source): 1.4 x 500 = 700,
#: 650 / 700 = 0.929, 0.9 x 500 = 450 and x 700 = 630. P2O5 x 0.4364 = P, K2O x 0.8301 = K (IUPAC).
FIGURES = [
    ("what is 1.4 mS on the 500 scale", ("700 ppm on the 500",)),
    ("what is 650 ppm on the 700 scale in mS/cm", ("0.929 mS/cm",)),
    ("convert 0.9 mS to ppm 700", ("630 ppm on the 700",)),
    ("0.9 mS what is it in ppm", ("450 ppm on the 500", "630 ppm on the 700")),
    ("what is 20% P2O5 as P", ("8.73 % P",)),
    ("convert 35 ppm K2O to K", ("29.06 mg/l K",)),
]


@pytest.mark.parametrize(("line", "parts"), FIGURES)
async def test_a_conversion_is_told_and_doses_nothing(
    mira: Grower, line: str, parts: tuple[str, ...]
) -> None:
    answer = await mira.says(*SETUP["en"], "10 l of grey", line)
    assert answer.kind == "explain"
    assert answer.dose is None
    for part in parts:
        assert part in answer.reply
    before = await mira.says("my meter reads 0.97 mS")  # still against the dose of 10 l
    assert details(before)["volume_l"] == 10.0


#: mg/l = g/l x % x 10; P and K by their oxides. 1 g/l of 13 %: 130; 0.75 g/l: N 97.5,
#: P 0.75 x 3 x 0.4364 x 10 = 9.8, K 0.75 x 15 x 0.8301 x 10 = 93.4; 0.6 g/l: 78.
BROUGHT = [
    ("how much ppm N is 1 g/l of grey", {"N": 130.0}),
    ("1.5 g in 2 l of 13-3-15, what is the ppm", {"N": 97.5, "P": 9.82, "K": 93.39}),
    ("i mixed 6 g grey in 10 l, how many ppm nitrogen", {"N": 78.0}),
    ("how much N P K does 0.8 g of grey in 1 l give", {"N": 104.0}),
    ("what EC does 0.5 g/l of grey give", {"N": 65.0, "Ca": 40.0}),
]


@pytest.mark.parametrize(("line", "mg_l"), BROUGHT)
async def test_what_an_amount_brings(mira: Grower, line: str, mg_l: dict[str, float]) -> None:
    answer = await mira.says(*SETUP["en"], line)
    found = details(answer)["elements_mg_l"]
    assert {e: found[e] for e in mg_l} == pytest.approx(mg_l, abs=0.01)
    assert details(answer)["ec_ms_cm"]["low"] > 0
    shelf = await mira.says("my feeds")
    assert "label 1.2 g per litre" in shelf.reply  # as it was: nothing is put on record


async def test_too_much_of_it_is_told_besides(mira: Grower) -> None:
    answer = await mira.says(*SETUP["en"], "how many ppm is 3 g/l of grey for masdevallia")
    assert "Too much" in answer.reply
    assert "0.3 g" in answer.reply  # a quarter of 1.2


@pytest.mark.parametrize(
    ("line", "verdict"),
    [
        # as NO3 100 x 14.007/62.004 = 23 mg/l N, as N 100: both under 125 (rule of this project)
        ("is 100 ppm nitrate too much", "under"),
        # as NH4 78 mg/l N, over half of 125: at least half of N as nitrate (Wang, HortScience)
        ("is 100 ppm ammonium too much", "over"),
        ("is 150 ppm N too much", "over"),
        ("is 60 ppm N too much for masdevallia", "over"),  # 50 mg/l (rule of this project)
        ("is 60 ppm N too much for phals", "under"),
    ],
)
async def test_whether_so_much_nitrogen_is_too_much(mira: Grower, line: str, verdict: str) -> None:
    assert details(await mira.says(*SETUP["en"], line))["verdict"] == verdict


@pytest.mark.parametrize(
    ("line", "most"),
    [
        ("what EC should I aim for with phals", 1.5), ("what's the max EC for masdevallia", 0.5),
        ("welchen EC sollte ich bei Masdevallia anpeilen", 0.5),
        ("cuál es la EC máxima para masdevallia", 0.5), ("jakie EC dla masdevalii", 0.5),
    ],
)  # fmt: skip
async def test_the_most_ec_is_that_of_the_class(mira: Grower, line: str, most: float) -> None:
    answer = await mira.says(line)
    assert details(answer)["most_ec_ms_cm"] == most  # waters.toml
    assert answer.why[0].source


async def test_ph_gets_no_dose(mira: Grower) -> None:
    answer = await mira.says(*SETUP["en"], "how much pH down for 10 l")
    assert (answer.kind, answer.dose) == ("explain", None)


async def test_an_ec_takes_the_place_of_a_strength(mira: Grower) -> None:
    answer = await mira.says(TAP, "5 l of 20-20-20, half strength", "same but to EC 0.8")
    assert "strength.asked" not in [w.rule for w in answer.why]
    assert answer.dose is not None
    assert answer.dose.ec_ms_cm is not None
    # 0.8 less the tap's 0.62 is 0.18; in pure water the same feed reads up to a tenth more
    assert answer.dose.ec_ms_cm.high == pytest.approx(0.18, rel=0.1)


#: 12 mg/l of 1.206 % Mg (2 % MgO x 0.603) takes 0.995 g/l, over the 125 mg/l N (0.96 g/l) that
#: unknown plants bear; 20 mg/l of 8 % Ca take 0.25 g/l; 12 mg/l of 9.8 % Mg take 0.122 g/l.
ELEMENTS = [
    ("10 l of grey for 12 ppm Mg", 125 / 130 * 10),
    ("10 l RO of grey to 20 ppm Ca", 2.5),
    ("10 l of mag for 12 ppm Mg", 1.224),
]


@pytest.mark.parametrize(("line", "grams"), ELEMENTS)
async def test_another_element_can_be_the_target(mira: Grower, line: str, grams: float) -> None:
    mag = "my powder is 0-0-0 + 9.8 Mg, label 0.5 g per litre, call it mag"
    answer = await mira.says(*SETUP["en"], mag, line)
    assert answer.dose is not None
    assert answer.dose.amount == pytest.approx(grams, rel=1e-3)
    assert answer.unknown == []


async def test_an_element_that_the_label_lacks_is_asked_about(mira: Grower) -> None:
    answer = await mira.says("10 l of 20-20-20 for 12 ppm Mg")
    assert (answer.kind, answer.dose) == ("ask", None)
    assert [u.text for u in answer.unknown] == ["12 ppm Mg"]


async def test_rain_leaves_no_range_of_calcium_and_magnesium(mira: Grower) -> None:
    answer = await mira.says(*SETUP["en"], "do i need calmag with rain")
    gap = details(answer)["missing_mg_l"]["Mg"]
    # at 39 mg/l N half of 50 per 200: 9.75 (Wang, HortScience 42), less 0.3 g/l x 1.206 % = 3.6
    assert (gap["low"], gap["high"]) == (pytest.approx(6.13, abs=0.02),) * 2
    assert "Nothing on your shelf" not in answer.reply


@pytest.mark.parametrize(
    ("line", "code"),
    [
        ("can I put magnesium sulfate in stock A with calcium nitrate", "calcium-sulphate"),
        ("can I mix epsom with cal", "calcium-sulphate"),
        ("why can't I mix calcium nitrate with MKP in one bottle", "calcium-phosphate"),
    ],
)
async def test_salts_that_fall_out_may_not_share_a_bottle(
    mira: Grower, line: str, code: str
) -> None:
    answer = await mira.says(CAL, line)
    assert code in [c["code"] for c in details(answer)["bottle"]]


# --- figures that no tool shows -----------------------------------------------------------------


@pytest.mark.parametrize(
    ("line", "absurd"),
    [
        ("50 ml of 20-20-20 powder", "off by"), ("1000 l of 20-20-20 powder, full", "teaspoon"),
        ("1000 l of 20-20-20 powder, full", "within 0.0"),
        ("0.2 l 20-20-20, label 1 tsp per 40 l", "0.00"),
    ],
)  # fmt: skip
async def test_no_figure_is_shown_that_no_tool_shows(mira: Grower, line: str, absurd: str) -> None:
    answer = await mira.says(line)
    assert answer.kind == "dose"
    assert absurd not in answer.reply


# --- mixing ready feeds ---------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("line", "volume_l", "ec"),
    [
        ("10 l at 1 mS and 5 l at 0.4 mS", 15.0, 0.8),  # (10 x 1 + 5 x 0.4) / 15
        ("10 l mit 1 mS und 5 l mit 0,4 mS", 15.0, 0.8),
        # osmosis water has 0.02 mS/cm (measures.toml): 5 x (1.8 - 0.9) / (0.9 - 0.02) = 5.11 l
        ("dilute 5 l of EC 1.8 to 0.9 with RO", 10.11, 0.9),
        ("verdünne 5 l mit EC 1,8 auf 0,9 mit Osmosewasser", 10.11, 0.9),
        ("diluye 5 l de EC 1,8 a 0,9 con ósmosis", 10.11, 0.9),
        ("rozcieńcz 5 l EC 1,8 do 0,9 wodą RO", 10.11, 0.9),
    ],
)
async def test_feeds_are_mixed_by_their_mass(
    mira: Grower, line: str, volume_l: float, ec: float
) -> None:
    found = details(await mira.says(line))
    assert found["volume_l"] == pytest.approx(volume_l, abs=0.01)
    assert found["ec_ms_cm"] == pytest.approx(ec)
