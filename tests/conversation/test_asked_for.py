"""An amount is told where one was asked for, and of what was said just before."""

from __future__ import annotations

import pytest

from bot.records import Records
from grammar import Names, read
from tests.conversation.talking import Grower

NAMES = Names(plants=("Ruby",), products=("blue tub",))
#: Two feeds' worth of plants: one named, two alike.
ON_RECORD = (
    "I live in Porto",
    "add 2 phals in bark, 12 cm pots, and Hugo cattleya in bark, 10 cm pot",
    "my powder is 20-20-20, label 1 g per litre, call it blue tub",
)


@pytest.fixture
def mira(sqlite_records: Records) -> Grower:
    return Grower(sqlite_records)


# --- only told of --------------------------------------------------------------------------------

TOLD = [
    ("en", "no feed tomorrow", "denied"), ("en", "dont feed the phals", "denied"),
    ("en", "I was going to feed the phals but it rained", "denied"),
    ("en", "I stopped feeding", "ceased"), ("en", "where do I get feed", "unclear"),
    ("en", "blue tub smells of fish", "unclear"), ("en", "feed and a hamster", "unclear"),
    ("de", "morgen dünge ich nicht", "denied"), ("de", "woher bekomme ich Dünger", "unclear"),
    ("de", "der Dünger riecht nach Fisch", "unclear"),
    ("de", "ich dünge Ruby nicht mehr", "ceased"),
    ("es", "no quiero abonar las phal", "denied"), ("es", "ya las iba a abonar", "denied"),
    ("es", "dónde compro abono", "unclear"), ("es", "el abono huele a pescado", "unclear"),
    ("pl", "skąd wziąć nawóz", "unclear"),
    ("pl", "nawóz pachnie rybą", "unclear"), ("pl", "przestałam nawozić Ruby", "ceased"),
]  # fmt: skip
ASKED = [
    ("en", "feed the phals"), ("en", "no, feed for Ruby"), ("en", "how much feed"),
    ("en", "blue tub for the phals"), ("en", "how much for all but Ruby"), ("en", "feed please"),
    ("en", "2 l, no idea what medium"), ("en", "feed weekly"), ("en", "and the phals too"),
    ("de", "Dünger für Ruby"), ("de", "die Phals düngen bitte"),
    ("es", "abono para las phal"), ("es", "cuánto abono"), ("es", "quiero abonar las phal"),
    ("pl", "nawóz dla Ruby"), ("pl", "ile nawozu"),
]  # fmt: skip


@pytest.mark.parametrize(("language", "line", "how"), TOLD)
def test_what_only_speaks_of_feed_asks_for_no_amount(language: str, line: str, how: str) -> None:
    order = read(line, language, names=NAMES).order
    assert order is not None
    assert (order.verb, order.text) in [("dose", how), ("not_given", "")]


@pytest.mark.parametrize(("language", "line"), ASKED)
def test_what_asks_for_an_amount_still_does(language: str, line: str) -> None:
    order = read(line, language, names=NAMES).order
    assert order is not None
    assert (order.verb, order.text) in [("dose", ""), ("follow_up", "")]


@pytest.mark.parametrize(
    "line",
    ["no feed tomorrow", "the phals on the sill look nice there", "blue tub went lumpy",
     "can my neighbour feed them", "I stopped feeding", "put the phals in the shade"],
)  # fmt: skip
async def test_no_amount_is_told_to_who_asked_for_none(mira: Grower, line: str) -> None:
    answer = await mira.says(*ON_RECORD, line)
    assert answer.dose is None
    assert answer.kind in ("log", "help", "plants")


# --- when, and not how much ----------------------------------------------------------------------


@pytest.mark.parametrize(
    ("language", "line"),
    [("en", "when do the phals get feed again"), ("en", "whens the next feed"),
     ("de", "wann dünge ich wieder"), ("es", "cuándo me toca abonarlas otra vez"),
     ("pl", "kiedy następne nawożenie")],
)  # fmt: skip
def test_who_asks_when_is_shown_the_plan(language: str, line: str) -> None:
    order = read(line, language, names=NAMES).order
    assert order is not None
    assert order.verb == "plan"


@pytest.mark.parametrize("line", ["how much did Hugo get this month", "how much has Hugo got"])
async def test_how_much_somebody_got_is_in_the_log(mira: Grower, line: str) -> None:
    answer = await mira.says(*ON_RECORD, "fed Hugo", line)
    assert answer.kind == "history"
    assert "Hugo" in answer.reply


@pytest.mark.parametrize("line", ["tomorrow I will feed", "I'll feed the phals on sunday"])
async def test_who_tells_a_plan_gets_no_reminder_unasked(mira: Grower, line: str) -> None:
    await mira.says(*ON_RECORD, line)
    answer = await mira.says("my reminders")
    assert answer.reply.startswith("No reminders")


# --- right after a dose --------------------------------------------------------------------------

#: 2 l for the phals: a quarter of 1 g/l, as nothing else was said.
DOSE_G = 2 * 0.25


@pytest.mark.parametrize(
    ("line", "grams"),
    [("less", DOSE_G / 2), ("a bit weaker", DOSE_G / 2), ("half again", DOSE_G / 2),
     ("double", DOSE_G * 2), ("double dose", DOSE_G * 2), ("make it 3", DOSE_G * 1.5),
     ("half dose", 2 * 0.5)],
)  # fmt: skip
async def test_a_short_line_goes_on_from_the_dose(mira: Grower, line: str, grams: float) -> None:
    answer = await mira.says(*ON_RECORD, "2 l for the phals", line)
    assert answer.dose is not None
    assert answer.dose.amount == pytest.approx(grams)


async def test_a_half_that_is_more_than_before_says_so(mira: Grower) -> None:
    answer = await mira.says(*ON_RECORD, "2 l for the phals", "half dose")
    assert "2 times the dose before" in answer.reply
    halved = await mira.says("2 l for the phals", "half that")
    assert "times the dose before" not in halved.reply


@pytest.mark.parametrize("line", ["ok done", "done", "gave it to them", "ok gave it"])
async def test_done_right_after_a_dose_logs_it(mira: Grower, line: str) -> None:
    answer = await mira.says(*ON_RECORD, "2 l for the phals", line)
    assert answer.kind == "log"
    assert answer.reply.startswith("Fed today: 2 Phalaenopsis (1/4, blue tub)")
    history = await mira.says("history of Hugo")
    assert "fed" not in history.reply.lower()


async def test_done_is_of_a_plan_that_is_open(mira: Grower) -> None:
    answer = await mira.says(*ON_RECORD, "plan", "2 l for the phals", "done")
    assert "Hugo" in answer.reply
    again = await mira.says("2 l for the phals", "done")
    assert "Hugo" not in again.reply


async def test_kinds_are_excepted_from_a_dose(mira: Grower) -> None:
    answer = await mira.says(*ON_RECORD, "3 l for everything except the phals")
    assert answer.dose is not None
    assert "Hugo" in answer.reply.splitlines()[-1]
    assert "Phalaenopsis" not in answer.reply


# --- plants that are not on record, and those that heal ------------------------------------------


async def test_it_is_no_plant_on_record_after_one_that_is_none(mira: Grower) -> None:
    await mira.says(*ON_RECORD, "my miltoniopsis has brown mushy roots", "no")
    for line in ("it has a new root now", "should I feed it", "1 l of feed for it"):
        answer = await mira.says(line)
        assert answer.kind == "ask"
        assert answer.reply.startswith("The plant you spoke of is not on record")


async def test_a_plant_just_repotted_gets_no_dose(mira: Grower) -> None:
    # three weeks: common practice, no source
    answer = await mira.says(*ON_RECORD, "repotted the phals", "1 l for the phals")
    assert answer.kind == "no_feed"
    assert answer.dose is None
    assert "Sun 28 Jun" in answer.reply
    both = await mira.says("2 l for all")
    assert both.dose is not None
    assert both.reply.startswith("2 Phalaenopsis: repotted lately")
    after = await mira.later(days=21).says("1 l for the phals")
    assert after.dose is not None


async def test_new_roots_end_the_wait_after_repotting(mira: Grower) -> None:
    await mira.says(*ON_RECORD, "repotted the phals")
    answer = await mira.later(days=5).says("the phals have new roots", "1 l for the phals")
    assert answer.dose is not None


# --- never over the label on record --------------------------------------------------------------


async def test_a_rate_above_the_label_on_record_is_not_taken(mira: Grower) -> None:
    answer = await mira.says(*ON_RECORD, "5 g per l 20-20-20 for the phals 2 l")
    assert answer.dose is not None
    assert answer.dose.amount == pytest.approx(DOSE_G)
    assert "blue tub label 5 g per litre" in answer.reply
    new = await mira.says("blue tub label 2 g per litre", "2 l for Hugo, half")
    assert new.dose is not None  # 125 mg/l N is the most for a cattleya: 0.625 g/l of 20 %
    assert new.dose.amount == pytest.approx(1.25)


async def test_a_rate_below_the_label_on_record_is_taken(mira: Grower) -> None:
    answer = await mira.says(*ON_RECORD, "label 0.5 g per l 20-20-20 powder for the phals 2 l")
    assert answer.dose is not None
    assert answer.dose.amount == pytest.approx(DOSE_G / 2)


# --- away ----------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("language", "line"),
    [("en", "im away 4 to 18 april"), ("en", "what do I tell the neighbour"),
     ("de", "was sage ich der Nachbarin"), ("es", "qué le digo a la vecina"),
     ("pl", "co powiedzieć sąsiadce")],
)  # fmt: skip
def test_who_is_away_is_told_what_to_leave(language: str, line: str) -> None:
    order = read(line, language, names=NAMES).order
    assert order is not None
    assert (order.verb, order.text) == ("tell", "away")


async def test_away_without_reminders_is_told_too(mira: Grower) -> None:
    answer = await mira.says(*ON_RECORD, "I'm on holiday until august")
    assert answer.kind == "explain"
    assert "clear water only" in answer.reply


async def test_sensitive_plants_are_never_told_half_the_label(mira: Grower) -> None:
    # a quarter of the label at most: feeding class sensitive of the dosing rules
    answer = await mira.says(*ON_RECORD, "how often should I feed the masdevallia")
    assert "half." not in answer.reply.split("In winter")[0]
    assert "a quarter" in answer.reply


# --- what is written down ----------------------------------------------------------------------


async def test_the_rest_is_what_the_plan_has_left(mira: Grower) -> None:
    answer = await mira.says(*ON_RECORD, "plan", "done except Hugo", "fed the rest")
    assert answer.reply.startswith("Fed today: Hugo")
    again = await mira.later(days=7).says("fed the rest")
    assert "2 Phalaenopsis and Hugo" in again.reply


async def test_part_of_a_plan_with_something_else_beside_is_asked_about(mira: Grower) -> None:
    answer = await mira.says(*ON_RECORD, "plan", "done 1 and Hugo got only water")
    assert answer.kind == "ask"
    assert "fed" not in (await mira.says("history")).reply.lower()


async def test_runoff_over_its_limit_is_flushed_by_the_plan_whatever_the_model_says(
    mira: Grower,
) -> None:
    await mira.says(*ON_RECORD, "flushed the phals yesterday", "runoff 2.1 from the phals")
    plan = await mira.says("plan")
    assert plan.reply.startswith("Plan for today: 2 to flush and 1 to feed")
    washed = await mira.says("flushed the phals", "plan tomorrow")
    assert "flush" not in washed.reply.splitlines()[0]


@pytest.mark.parametrize(
    ("language", "line"),
    [("en", "Ruby reads ec 2.4 in the pot"), ("de", "Ruby EC 2,4 im Topf"),
     ("es", "Ruby tiene CE 2,4 en la maceta"), ("pl", "Ruby EC 2,4 w doniczce")],
)  # fmt: skip
def test_an_ec_in_the_pot_is_measured_and_not_wanted(language: str, line: str) -> None:
    order = read(line, language, names=NAMES).order
    assert order is not None
    assert order.verb == "reading"


async def test_a_water_for_today_stays_no_rule(mira: Grower) -> None:
    answer = await mira.says(*ON_RECORD, "I use rain today")
    assert answer.reply.startswith("Just today")
    assert (await mira.says("from today I use rain water")).kind == "water"
    assert (await mira.says("today my tap is 14 dH")).kind == "water"


@pytest.mark.parametrize(
    ("language", "line", "fact"),
    [("en", "can I feed dry roots", "dry"), ("en", "too hot to feed?", "heat"),
     ("en", "can I feed leaves with the sprayer", "spray"), ("en", "Ruby has a keiki", "keiki"),
     ("de", "auf trockene Wurzeln düngen?", "dry"), ("de", "bei Hitze düngen?", "heat"),
     ("es", "puedo abonar con las raíces secas?", "dry"), ("es", "abono foliar?", "spray"),
     ("pl", "czy nawozić na sucho", "dry"), ("pl", "Ruby ma keiki", "keiki")],
)  # fmt: skip
def test_what_beginners_ask_about_feeding_is_told(language: str, line: str, fact: str) -> None:
    order = read(line, language, names=NAMES).order
    assert order is not None
    assert (order.verb, order.text) == ("tell", fact)


# --- a list of what one has -----------------------------------------------------------------------


@pytest.mark.parametrize(
    "line",
    ["my plants are 3 phals in bark, 2 vandas mounted, 1 masdevallia in moss",
     "my orchids: 3 phals bark, 2 vandas mounted, 1 masdevallia moss",
     "meine Pflanzen: 3 Phals in Rinde, 2 Vandas aufgebunden, 1 Masdevallia in Moos",
     "mis plantas son 3 phals en corteza, 2 vandas montadas, 1 masdevallia en musgo",
     "moje rośliny to 3 falenopsisy w korze, 2 vandy na podkładce, 1 masdevallia w mchu"],
)  # fmt: skip
async def test_a_list_with_its_head_goes_on_record(mira: Grower, line: str) -> None:
    answer = await mira.says(line)
    assert answer.kind == "plants"
    shown = await mira.says("my plants")
    for kind in ("Phalaenopsis", "Vanda", "Masdevallia"):
        assert kind in shown.reply


@pytest.mark.parametrize(
    "line",
    ["1 phal in leca 13 cm, 1 phal in bark 12 cm", "a phal keiki in moss 5 cm",
     "2 oncidiums in bark, 12 cm pots", "3 cymbidiums in bark, a phal in leca"],
)  # fmt: skip
async def test_a_list_without_one_is_offered(mira: Grower, line: str) -> None:
    answer = await mira.says(line)
    assert answer.reply.startswith("Shall I put on record")
    assert (await mira.says("yes")).kind == "plants"


@pytest.mark.parametrize("line", ["phal in bark", "the phals on the sill look nice", "paph, bark"])
async def test_no_list_is_seen_in_a_part_of_a_request(mira: Grower, line: str) -> None:
    answer = await mira.says(line)
    assert not answer.reply.startswith("Shall I put on record")


async def test_a_full_can_is_what_the_can_holds(mira: Grower) -> None:
    asked = await mira.says(*ON_RECORD, "a full can for the phals")
    assert asked.kind == "ask"
    answer = await mira.says("my can holds 9 l", "a full can for the phals")
    assert answer.dose is not None
    assert answer.dose.amount == pytest.approx(9 * 0.25)
