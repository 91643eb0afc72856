"""Help that knows how far somebody is, topics with examples, and words explained."""

from __future__ import annotations

import re

import pytest

from bot.almanac.plants import genera
from bot.conversation.turns.guide import TOPICS
from bot.conversation.wording import wording
from bot.records import Records
from grammar import Names, read
from grammar.lexicon import sections
from tests.conversation.talking import Grower

LANGUAGES = ("en", "de", "es", "pl")
#: Names that the examples speak of.
ON_RECORD = Names(
    plants=("Ruby",),
    products=("blue tub", "chalk", "blaue Dose", "Kreide", "bote azul", "tiza", "niebieska puszka",
              "kreda"),
    places=("kitchen", "balcony", "Küche", "Balkon", "cocina", "balcón", "kuchnia", "balkon"),
)  # fmt: skip


@pytest.fixture
def mira(sqlite_records: Records) -> Grower:
    return Grower(sqlite_records)


async def test_help_goes_on_with_what_is_missing(mira: Grower) -> None:
    words = wording("en")
    steps = [
        ("first", "add 3 phals in bark, 12 cm pots, kitchen"),
        ("feeds", "my powder is 20-20-20, label 1 g per litre, call it blue tub"),
        ("water", "my tap is 14 dH"),
        ("plan", "fed everything, quarter"),
        ("home", "I live in Porto"),
        ("can", "my can holds 5 l"),
        ("reminders", "remind me to flush every first sunday at 9"),
    ]
    for step, line in steps:
        example = words.say(f"help-example-{step}")
        answer = await mira.says("help")
        assert words.say(f"help-next-{step}", example=example) in answer.reply
        assert answer.choices[0] == example
        await mira.says(line)
    assert words.say("help-example-today") in (await mira.says("help")).reply


@pytest.mark.parametrize("line", ["hello", "good morning", "asdf qwer"])
async def test_who_asks_for_nothing_gets_three_lines_and_an_example(
    mira: Grower, line: str
) -> None:
    answer = await mira.says(line)
    assert answer.kind == "help"
    assert len(answer.reply.splitlines()) <= 5
    assert answer.choices[0] == wording("en").say("help-example-first")


@pytest.mark.parametrize("code", LANGUAGES)
@pytest.mark.parametrize("topic", TOPICS)
async def test_every_topic_is_asked_for_and_answered(
    sqlite_records: Records, code: str, topic: str
) -> None:
    words = wording(code)
    grower = Grower(sqlite_records)
    asked = words.say("help-about", topic=words.say(f"topic-name-{topic}"))
    answer = await grower.says(asked)
    assert answer.language == code
    assert answer.reply.startswith(words.say(f"topic-{topic}"))
    assert answer.choices


@pytest.mark.parametrize("code", LANGUAGES)
@pytest.mark.parametrize("term", sorted(sections("en")["term"]))
async def test_every_word_is_explained(sqlite_records: Records, code: str, term: str) -> None:
    own = sections(code)
    cue, word = own["guide"]["explain"][0], own["term"][term][0]
    order = read(f"{cue} {word}", code, names=Names()).order
    assert order is not None
    assert (order.verb, order.text) == ("explain", term)
    assert len(wording(code).say(f"explain-{term}")) < 330  # a phone's screen


@pytest.mark.parametrize("code", LANGUAGES)
def test_what_help_says_to_send_is_understood(code: str) -> None:
    words = wording(code)
    for name in ("first", "group", "plants", "feeds", "water", "plan", "home", "can", "reminders"):
        example = words.say(f"help-example-{name}")
        reading = read(example, code, names=ON_RECORD)
        assert not reading.unknown, example
        assert not reading.conflicts, example


@pytest.mark.parametrize("code", LANGUAGES)
@pytest.mark.parametrize("topic", TOPICS)
def test_examples_of_topics_are_understood_as_in_english(code: str, topic: str) -> None:
    def verbs(language: str) -> list[str]:
        examples = wording(language).say(f"topic-{topic}-say").split("|")
        orders = [read(e.strip(), language, names=ON_RECORD).order for e in examples]
        return [order.verb if order is not None else "dose" for order in orders]

    assert verbs(code) == verbs("en")
    assert len(set(verbs("en")) - {"dose"}) > 0


async def test_the_steps_of_a_dose_are_explained_in_more_words(mira: Grower) -> None:
    dose = await mira.says("2 l 20-20-20 powder, phals in sphagnum, winter, quarter")
    assert dose.kind == "dose"
    answer = await mira.says("explain more")
    words = wording("en")
    for term in ("strength", "winter", "medium"):
        assert words.say(f"explain-{term}") in answer.reply
    assert words.say("explain-rest") not in answer.reply


async def test_nothing_is_explained_before_a_dose(mira: Grower) -> None:
    assert "what is EC" in (await mira.says("explain more")).reply


@pytest.mark.parametrize(
    "line", ["what is my tap", "what's on today", "what is missing in blue tub", "help me with 5 l"]
)
def test_other_questions_are_not_taken_for_one_about_a_word(line: str) -> None:
    order = read(line, "en", names=ON_RECORD).order
    assert order is None or order.verb not in ("explain", "help")


async def test_a_person_with_inches_and_gallons_reads_both(mira: Grower) -> None:
    added = await mira.says("us units", "add 3 phals in bark, 4 inch pots")
    assert re.search(r"4 inch pot \(10(\.\d+)? cm\)", added.reply)
    reply = (await mira.says("1 gallon 20-20-20 powder, phals, quarter")).reply
    assert "in 1 US gal (3.79 l)" in reply


def test_the_sensitive_plants_that_are_named_are_those_of_the_almanac() -> None:
    sensitive = {g.name for g in genera().values() if g.feeding_class == "sensitive"}
    for code in LANGUAGES:
        text = wording(code).say("explain-sensitive")
        named = {word for word in re.findall(r"[A-Z][a-z]+", text) if word in genera()}
        assert named <= sensitive
        assert len(named) > 4


@pytest.mark.parametrize(
    ("line", "code"),
    [
        ("how do i know if its too much feed", "en"),
        ("signs of too much fertilizer?", "en"),
        ("woran erkenne ich, dass ich zu viel dünge?", "de"),
        ("cómo sé si es demasiado abono", "es"),
        ("po czym poznać, że za dużo nawozu", "pl"),
    ],
)
async def test_the_signs_of_too_much_feed_are_told(mira: Grower, line: str, code: str) -> None:
    assert (await mira.says(line)).reply == wording(code).say("explain-overfed")


async def test_settings_tell_of_spoons_and_of_what_else_is_kept(mira: Grower) -> None:
    words = wording("en")
    await mira.says("only spoons", "add 3 phals")
    reply = (await mira.says("my settings")).reply
    assert words.say("kit-spoons") in reply
    assert words.say("settings-kept", plants=3, feeds=0) in reply
    await mira.says("my scale shows 0.1 g")
    assert words.say("kit-spoons") not in (await mira.says("my settings")).reply


@pytest.mark.parametrize(
    ("line", "code", "what"),
    [
        ("how often do i water it", "en", "water"),
        ("do i need fertilizer?", "en", "need"),
        ("should i feed in winter", "en", "winter"),
        ("its winter soon do i stop feeding", "en", "winter"),
        ("is rain water better?", "en", "which-water"),
        ("when should i repot?", "en", "repot-when"),
        ("wie oft muss ich gießen", "de", "water"),
        ("brauchen orchideen dünger?", "de", "need"),
        ("soll ich im winter düngen", "de", "winter"),
        ("welches wasser soll ich nehmen", "de", "which-water"),
        ("wann umtopfen?", "de", "repot-when"),
        ("cada cuánto riego?", "es", "water"),
        ("necesito abonar?", "es", "need"),
        ("se abona en invierno?", "es", "winter"),
        ("qué agua uso", "es", "which-water"),
        ("cuándo trasplanto?", "es", "repot-when"),
        ("jak często podlewać?", "pl", "water"),
        ("czy storczyki potrzebują nawozu", "pl", "need"),
        ("czy nawozić zimą?", "pl", "winter"),
        ("jaką wodą podlewać", "pl", "which-water"),
        ("kiedy przesadzać?", "pl", "repot-when"),
    ],
)
async def test_what_a_beginner_asks_is_told(mira: Grower, line: str, code: str, what: str) -> None:
    assert (await mira.says(line)).reply == wording(code).say(f"tell-{what}")


async def test_of_a_plant_or_a_day_the_plan_is_asked(mira: Grower) -> None:
    await mira.says("add a phal called Ruby")
    for line in ("do i need to feed today", "do i need to feed Ruby"):
        assert (await mira.says(line)).kind != "explain"
    assert (await mira.says("5 l 20-20-20 powder, should i feed in winter?")).kind == "dose"


async def test_two_words_are_told_apart(mira: Grower) -> None:
    words = wording("en")
    reply = (await mira.says("what's the difference between ec and ppm?")).reply
    assert words.say("explain-ec") in reply
    assert words.say("explain-ppm") in reply
    for line in (
        "difference between urea and nitrate",
        "Unterschied zwischen Harnstoff und Nitrat",
    ):
        answer = await mira.says(line)
        assert answer.reply == wording(answer.language).say("explain-nitrogen")


@pytest.mark.parametrize(
    ("line", "code"),
    [
        ("can i mix calmag and the feed in one bottle", "en"),
        ("can i mix calmag and 20-20-20 in one stock bottle", "en"),
        ("kann ich Calmag und Dünger in einer Flasche mischen", "de"),
        ("¿puedo mezclar calmag y abono en la misma botella?", "es"),
        ("czy można mieszać calmag z nawozem w jednej butelce", "pl"),
    ],
)
async def test_calcium_and_a_feed_share_no_bottle(mira: Grower, line: str, code: str) -> None:
    """Calcium falls out with sulphate and phosphate: gypsum, calcium phosphates."""
    assert (await mira.says(line)).reply == wording(code).say("tell-bottle")
