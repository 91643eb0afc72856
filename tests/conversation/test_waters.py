"""Waters in conversation: reports, what they suit, mixing two, calcium and magnesium."""

from __future__ import annotations

from typing import Any

import pytest

from bot.almanac.ions import ions
from bot.almanac.waters import ec_ceilings_ms_cm
from bot.conversation.answer import Answer
from bot.records import Records
from grammar import Names, Order, read
from grammar.orders.measured import mg_l_of
from tests.conversation.talking import Grower

NAMES = Names(plants=("Ruby",), products=("blue tub",), places=("kitchen sill",))
TUB = "my powder is 20-20-20, label 1 g per litre, call it blue tub"
CALMAG = "my powder is 15-0-0 + 14Ca + 4Mg, 1 g per litre, call it cal mag"
PHALS = "add 3 phals in bark, 12 cm pots, kitchen sill"
RUBY = "I have a masdevallia in sphagnum called Ruby, 8 cm pot"
REPORT = "Ca 80, Mg 12, HCO3 240, Na 20, Cl 35 mg/l"
IONS = {"Ca": 80.0, "Mg": 12.0, "HCO3": 240.0, "Na": 20.0, "Cl": 35.0}
GERMAN_DEGREE = 17.848  # mg/L CaCO3, 10 mg/L CaO: DIN, hardness.toml in fixtures/published

REPORTS = [
    REPORT,
    "my tap: calcium 80 mg/l, magnesium 12 mg/l, bicarbonate 240 mg/l, sodium 20 mg/l, "
    "chloride 35 mg/l",
    "water report: 80 ppm Ca, 12 ppm Mg, 240 ppm bicarbonate, 20 ppm sodium, 35 ppm chloride",
    "the utility says Ca2+ 80 Mg2+ 12 HCO3- 240 Na+ 20 Cl- 35",
    "Ca: 80; Mg: 12; HCO3: 240; Na: 20; Cl: 35",
    "tap water has 80 mg/l calcium, 12 mg/l magnesium, hydrogen carbonate 240, sodium 20, cl 35",
]

SAID = {
    "water_suits": [
        "is my water good for masdevallias", "is my tap ok for phals?",
        "can I use tap water for my paphs?", "is 14 dH too hard for a vanda",
        "is softened water safe for orchids", "how good is my water for Ruby?",
        "will my tap water harm the masdevallias", "is rain water suitable for phals",
        "would hard water hurt a masdevallia?",
    ],
    "water_mix": [
        "mix tap and RO to 6 dH", "how much rain to get my tap down to 0.3 mS for 5 l",
        "how do I blend tap with rain for 100 mg/l CaCO3 hardness",
        "what ratio of RO and tap for EC 0.3", "dilute my tap with distilled to 4 dH, 10 l",
        "how much tap water with RO to keep sodium under 20 mg/l",
        "how much RO do I add to 14 dH tap to get 6 dH",
    ],
    "supplement": [
        "do I lack calcium", "how much cal mag for 5 l", "am I short of magnesium?",
        "do my phals get enough calcium?", "is calcium missing with my rain water?",
        "do I need cal mag", "how much calcium supplement do I add to 5 l",
    ],
}  # fmt: skip

NEAR_MISSES = {
    "my tap is 14 dH": "water", "my tap is 300 uS and 8 dH": "water",
    "tap water is fine for my phals": "water_for", "Ruby gets rain": "water_for",
    "what does the blue tub lack?": "lacking", "does the blue tub lack calcium?": "lacking",
    "my powder is 13-3-15 + 8Ca + 2Mg, call it snow": "product",
    "20-20-20 with 8 Ca 2 Mg powder 5 l phals": "dose",
    "5 l with rain, 13-3-15 +8Ca, EC 0.8": "dose",
    "gave Ruby clear water": "clear", "which feed for phals on rain water?": "choose",
    "add cal mag to the shelf": "shelf", "mix 5 l of 20-20-20 for phals": "dose",
    "blend my feeds for bloom": "blend",
}  # fmt: skip


@pytest.fixture
def mira(sqlite_records: Records) -> Grower:
    return Grower(sqlite_records)


def order(text: str) -> Order:
    found = read(text, "en", names=NAMES).order
    assert found is not None
    return found


def figures(answer: Answer, kind: str = "water") -> dict[str, Any]:
    assert answer.kind == kind, answer.reply
    assert answer.details is not None
    return answer.details


# --- what is understood ----------------------------------------------------------------------


@pytest.mark.parametrize("text", REPORTS)
def test_a_report_is_understood(text: str) -> None:
    found = order(text)
    assert (found.verb, found.ions) == ("water", IONS)


@pytest.mark.parametrize(
    ("text", "verb"), [(text, verb) for verb, texts in SAID.items() for text in texts]
)
def test_a_question_about_a_water_is_understood(text: str, verb: str) -> None:
    assert order(text).verb == verb


@pytest.mark.parametrize(("text", "verb"), NEAR_MISSES.items())
def test_what_is_no_question_about_a_water(text: str, verb: str) -> None:
    found = order(text)
    assert (found.verb, found.ions) == (verb, {})


def test_nitrate_told_as_nitrogen_is_nitrate() -> None:
    # NO3 is 62.004 / 14.007 of its nitrogen: IUPAC atomic weights
    assert order(f"{REPORT}, NO3-N 2").ions["NO3"] == pytest.approx(8.853, abs=1e-3)


# --- a report on record ------------------------------------------------------------------------


async def test_a_report_is_kept_with_what_follows_from_it(mira: Grower) -> None:
    found = figures(await mira.says(REPORT))
    # by hand, 50.04 mg CaCO3 for a meq: Ca 80/20.04 + Mg 12/12.15 = 4.98 meq, HCO3 240/61.02
    assert found["hardness_mg_l_caco3"] == pytest.approx(249.2, abs=0.5)
    assert found["alkalinity_mg_l_caco3"] == pytest.approx(196.8, abs=0.5)
    assert found["ions_mg_l"] == IONS
    dose = await mira.says(TUB, "5 l for a vanda")
    assert "14 °dH" in dose.reply


async def test_figures_told_later_put_the_report_aside(mira: Grower) -> None:
    await mira.says(REPORT, "my tap is 4 dH")
    found = figures(await mira.says("is my tap ok for vandas?"))
    hardness = next(f for f in found["findings"] if f["quantity"] == "hardness_mg_l_caco3")
    assert hardness["high"] == pytest.approx(4 * GERMAN_DEGREE, rel=1e-3)


async def test_a_report_can_be_taken_back(mira: Grower) -> None:
    await mira.says(REPORT, "undo")
    assert (await mira.says("is my water good for phals")).kind == "ask"


@pytest.mark.parametrize(
    ("report", "words"),
    [
        ("Ca 80, Mg 12, HCO3 20, Na 20, Cl 35, SO4 10 mg/l", "my tap is 14 dH"),
        ("Ca 80, Mg -12, HCO3 240", "Mg -12 mg/l cannot be"),
        ("sodium 20000 chloride 30000 mg/l", "more than sea water"),
    ],
)
async def test_an_impossible_water_is_refused_and_not_kept(
    mira: Grower, report: str, words: str
) -> None:
    answer = await mira.says(report)
    assert answer.kind == "refused"
    assert words in answer.reply
    assert (await mira.says("is my water good for phals")).kind == "ask"


async def test_the_nearest_to_a_report_that_cannot_be_is_a_tap_away(mira: Grower) -> None:
    answer = await mira.says("Ca 80, Mg 12, HCO3 20, Na 20, Cl 35, SO4 10 mg/l")
    assert answer.choices == ["my tap is 14 dH"]
    # by hand: 4.98 meq/l of hardness are 249.2 mg/l CaCO3, over 17.848 for a German degree
    assert (await mira.says(answer.choices[0])).kind == "water"


async def test_a_report_in_part_is_used_as_far_as_it_goes(mira: Grower) -> None:
    answer = await mira.says("Ca 80, Mg 12, HCO3 100 mg/l")
    found = figures(answer)
    assert found["hardness_mg_l_caco3"] == pytest.approx(249.2, abs=0.5)
    assert found["alkalinity_mg_l_caco3"] == pytest.approx(82.0, abs=0.5)
    assert found["ec_ms_cm"] is None
    assert found["imbalance"] == pytest.approx(0.505, abs=0.01)
    assert "50 % short" in answer.reply
    suits = figures(await mira.says("is my water good for phals"))
    ec = next(f for f in suits["findings"] if f["quantity"] == "ec_ms_cm")
    # of calcium, magnesium and bicarbonate with sulphate or chloride, by PHREEQC 0.49 to 0.56
    assert 0.45 < ec["low"] < ec["high"] < 0.60


async def test_what_a_report_leaves_out_is_not_taken_as_none(mira: Grower) -> None:
    await mira.says("Ca 80, Mg 12, HCO3 300 mg/l")
    suits = figures(await mira.says("is my water good for phals"))
    assert "na_mg_l" not in {f["quantity"] for f in suits["findings"]}


async def test_a_report_of_sodium_and_chloride_alone_is_kept(mira: Grower) -> None:
    found = figures(await mira.says("my tap: Na 90, Cl 140 mg/l"))
    assert found["hardness_mg_l_caco3"] is None
    suits = figures(await mira.says("is my water good for masdevallias"))
    sodium = next(f for f in suits["findings"] if f["quantity"] == "na_mg_l")
    assert sodium["high"] == 90


# by hand, IUPAC masses: 2 mmol of calcium are 80.16 mg, 4 meq of bicarbonate 244.06 mg
UNITS = [
    ("Ca 2 mmol/l, Mg 0.5 mmol/l, HCO3 5 mmol/l", {"Ca": 80.16, "Mg": 12.15, "HCO3": 305.08}),
    ("Ca 2, Mg 0.5, HCO3 5 mmol/l", {"Ca": 80.16, "Mg": 12.15, "HCO3": 305.08}),
    ("in mmol/l: Ca 2, Mg 0.5, HCO3 5", {"Ca": 80.16, "Mg": 12.15, "HCO3": 305.08}),
    ("2 mmol/l Ca, 0.5 mmol/l Mg, 5 mmol/l HCO3", {"Ca": 80.16, "Mg": 12.15, "HCO3": 305.08}),
    ("HCO3 4 meq/l, Ca 4 meq/l", {"HCO3": 244.06, "Ca": 80.16}),
    ("80 mg/l calcium, 12 mg/l magnesium, 4 meq/l bicarbonate",
     {"Ca": 80.0, "Mg": 12.0, "HCO3": 244.06}),
    ("Na 20000 µg/l, Cl 35 mg/l", {"Na": 20.0, "Cl": 35.0}),
    ("NO3-N 0.5 mmol/l, Ca 2 mmol/l", {"NO3": 31.0, "Ca": 80.16}),
    ("my tap has HCO3 4 meq/l", {"HCO3": 244.06}),
]  # fmt: skip


@pytest.mark.parametrize(("report", "mg_l"), UNITS)
def test_a_report_may_be_in_moles_or_equivalents(report: str, mg_l: dict[str, float]) -> None:
    found = order(report)
    assert found.verb == "water"
    assert found.ions == pytest.approx(mg_l, abs=0.01)


def test_the_masses_of_the_grammar_are_those_of_the_almanac() -> None:
    for name, ion in ions().items():
        symbol = name.rstrip("+-2")
        if symbol in IONS | {"K": 0, "SO4": 0, "NO3": 0}:
            assert mg_l_of(symbol, 1.0, "mmol_l") == pytest.approx(ion.molar_mass, abs=0.002)
            charge = ion.molar_mass / abs(ion.charge)
            assert mg_l_of(symbol, 1.0, "meq_l") == pytest.approx(charge, abs=0.002)


async def test_a_report_in_a_unit_of_no_water_is_asked_about(mira: Grower) -> None:
    assert (await mira.says("Ca 8 %, Mg 2 %, HCO3 5 %")).kind == "ask"


async def test_a_softened_water_is_known_by_its_report(mira: Grower) -> None:
    answer = await mira.says("Na 100, HCO3 265, Ca 5 mg/l")
    assert figures(answer)["softened"]
    assert "do not use it on orchids" in answer.reply


# --- what it suits -------------------------------------------------------------------------------


async def test_hard_water_is_poor_for_sensitive_roots_and_how_to_thin_it(mira: Grower) -> None:
    answer = await mira.says(RUBY, REPORT, "is my water good for masdevallias")
    found = figures(answer)
    assert (found["best"], found["worst"], found["class"]) == ("poor", "poor", "sensitive")
    # limits in waters.toml; alkalinity 30 of 197 mg/L allows a part in 6.6, the least of all
    assert found["tap_share"] == pytest.approx(0.15)
    thinned = {f["quantity"]: f["high"] * 0.15 for f in found["findings"]}
    limits = {f["quantity"]: f["limits"] for f in found["findings"] if f["limits"]}
    assert all(thinned[quantity] <= limit[0] for quantity, limit in limits.items())


async def test_the_published_irrigation_classes_stand_beside(mira: Grower) -> None:
    found = figures(await mira.says(REPORT, "is my water good for vandas"))
    classes = {f["quantity"]: f["irrigation"] for f in found["findings"]}
    # FAO Irrigation and Drainage Paper 29, table 1: EC 0.56 below 0.7, HCO3 3.9 from 1.5 to 8.5
    assert classes["ec_ms_cm"] == ("none", "none")
    assert classes["hco3_meq_l"] == ("slight_to_moderate", "slight_to_moderate")


@pytest.mark.parametrize("line", ["is softened water safe for phals?", "my softener water is 3 dH"])
async def test_softened_water_is_warned_of(mira: Grower, line: str) -> None:
    assert "full of sodium" in (await mira.says(line)).reply


async def test_rain_suits_and_brings_nothing(mira: Grower) -> None:
    answer = await mira.says("is rain good for masdevallias?")
    assert figures(answer)["worst"] == "good"
    assert "no calcium or magnesium" in answer.reply


async def test_a_water_of_which_nothing_is_known_is_asked_about(mira: Grower) -> None:
    answer = await mira.says("is my water good for phals")
    assert answer.kind == "ask"
    await mira.says(answer.choices[0])
    assert figures(await mira.says("is my water good for phals"))["worst"] != "good"


async def test_figures_that_contradict_each_other_are_refused(mira: Grower) -> None:
    answer = await mira.says("my tap is 0.1 mS and 20 dH", "is my water good for phals")
    assert answer.kind == "refused"
    assert "cannot both be" in answer.reply


# --- mixing two --------------------------------------------------------------------------------


async def test_tap_and_ro_to_a_hardness(mira: Grower) -> None:
    found = figures(await mira.says("my tap is 14 dH", "mix tap and RO to 6 dH, 7 l"))
    # C = a C1 + (1 - a) C2, FAO Irrigation and Drainage Paper 29: 6/14 of 7 L
    assert found["first_l"] == pytest.approx(3.0)
    assert found["second_l"] == pytest.approx(4.0)
    assert found["met"]


async def test_rain_to_an_ec(mira: Grower) -> None:
    line = "how much rain to get my tap down to 0.3 mS for 5 l"
    found = figures(await mira.says("my tap is 0.55 mS", line))
    # rain 0.05 mS/cm (measures.toml): 0.25 / 0.5 of 5 L
    assert found["second_l"] == pytest.approx(2.5)
    assert found["second"] == "rain"


async def test_by_its_ions_a_blend_takes_the_ec_of_the_ions(mira: Grower) -> None:
    found = figures(await mira.says(REPORT, "mix tap and RO to 0.3 mS for 10 l"))
    # salts slow each other, so that thinned water reads more than its share: a little less tap
    assert 0.94 < found["first_l"] / (10 * 0.3 / 0.56) < 1.0
    assert found["reached"] == pytest.approx(0.3, rel=1e-3)


async def test_a_sodium_limit_takes_as_much_tap_as_it_allows(mira: Grower) -> None:
    line = "how much tap with RO to keep sodium under 5 mg/l, 4 l"
    found = figures(await mira.says(REPORT, line))
    assert found["first_l"] == pytest.approx(1.0)  # 5 of 20 mg/L


async def test_a_figure_said_in_the_same_breath_counts(mira: Grower) -> None:
    line = "how much RO do I add to 14 dH tap to get 7 dH for 4 l"
    assert figures(await mira.says(line))["second_l"] == pytest.approx(2.0)


async def test_a_target_out_of_reach_gets_the_nearest(mira: Grower) -> None:
    answer = await mira.says("my tap is 14 dH", "mix tap and RO to 30 dH")
    found = figures(answer)
    assert not found["met"]
    assert found["reached"] == pytest.approx(14 * GERMAN_DEGREE, rel=1e-3)
    assert "the nearest is 14" in answer.reply


async def test_a_water_that_is_not_known_is_asked_for(mira: Grower) -> None:
    answer = await mira.says("mix tap and RO to 6 dH")
    assert answer.kind == "ask"
    assert "hardness" in answer.reply


# --- calcium and magnesium ---------------------------------------------------------------------


async def test_rain_and_a_plain_feed_lack_both(mira: Grower) -> None:
    answer = await mira.says(PHALS, TUB, "my water is RO", "do I lack calcium")
    found = figures(answer, "supplement")
    # 0.5 Ca and 0.25 Mg for each N (Wang, HortScience 42, 2007), of 50 mg/L N in the feed
    assert found["missing_mg_l"]["Ca"]["target"] == pytest.approx(25.0)
    assert found["missing_mg_l"]["Mg"]["target"] == pytest.approx(12.5)
    assert "Nothing on your shelf" in answer.reply


async def test_a_supplement_on_the_shelf_fills_it(mira: Grower) -> None:
    await mira.says(PHALS, TUB, "my water is RO", CALMAG)
    found = figures(await mira.says("how much cal mag for 5 l"), "supplement")
    grams = found["g_l"]
    assert found["amount"] == pytest.approx(5 * grams)
    for element, percent in (("Ca", 14.0), ("Mg", 4.0)):  # the label
        gap, left = found["missing_mg_l"][element], found["left_mg_l"][element]
        assert left["high"] == pytest.approx(gap["high"] - 10 * percent * grams)
    assert found["limited_by"] == ""
    assert found["total_ec_ms_cm"] <= ec_ceilings_ms_cm()["moderate"].value


async def test_it_is_never_more_than_the_ec_that_plants_bear(mira: Grower) -> None:
    await mira.says(RUBY, TUB, "my water is RO", CALMAG, "2 l at 0.45 mS for Ruby")
    found = figures(await mira.says("how much cal mag for 2 l"), "supplement")
    assert found["total_ec_ms_cm"] <= ec_ceilings_ms_cm()["sensitive"].value * (1 + 1e-6)
    assert found["limited_by"]
    assert found["g_l"] < found["wanted_g_l"]


async def test_hard_water_brings_enough(mira: Grower) -> None:
    answer = await mira.says(PHALS, TUB, REPORT, "do I lack calcium")
    assert figures(answer, "supplement")["missing_mg_l"]["Ca"]["high"] < 0
    assert "Nothing missing" in answer.reply


# --- a dose too small for the scale ---------------------------------------------------------------


async def test_a_supplement_too_small_for_the_scale_is_taken_from_a_stock(mira: Grower) -> None:
    await mira.says(PHALS, TUB, CALMAG, "my water is rain", "my scale shows 0.1 g")
    answer = await mira.says("how much cal mag for 1 l")
    found = figures(answer, "supplement")
    stock = found["stock"]
    assert found["amount"] < 0.5  # on a 0.1 g scale off by more than 16 %
    assert stock["product"] / stock["in_ml"] * stock["use_ml"] == pytest.approx(found["amount"])
    assert "Dissolve" in answer.reply
    large = await mira.says("how much cal mag for 20 l")
    assert figures(large, "supplement")["stock"] is None
    assert "Weigh it" in large.reply


async def test_a_finer_scale_weighs_it_at_once(mira: Grower) -> None:
    await mira.says(PHALS, TUB, CALMAG, "my water is rain", "my scale shows 0.001 g")
    assert figures(await mira.says("how much cal mag for 1 l"), "supplement")["stock"] is None
