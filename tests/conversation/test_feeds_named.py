"""Feeds put on record with their name, waters that are changed, and what is asked of a dose."""

from __future__ import annotations

import pytest

from bot.records import Records
from grammar import Names, Order, read
from tests.conversation.talking import Grower

TUB = "my powder is 20-20-20, label 1 g per litre, call it blue"


@pytest.fixture
def mira(sqlite_records: Records) -> Grower:
    return Grower(sqlite_records)


def order_of(line: str, language: str = "en") -> Order:
    order = read(line, language, names=Names()).order
    assert order is not None
    return order


# --- names ---------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("language", "line", "name"),
    [
        ("en", "i have blue tub now 20-20-20", "blue tub"),
        ("en", "my feed is blue tub 20-20-20, 1 g per litre", "blue tub"),
        ("en", "greeny: 3-1-2, 5 ml per l", "greeny"),
        ("en", "blue tub is 20-20-20, 1 g per litre", "blue tub"),
        ("en", "new feed: orchid salts 13-3-15 +8Ca +2Mg", "orchid salts"),
        ("en", "i have a nice powder 20-20-20", None),
        ("en", "my powdr is 20-20-20", None),
        ("en", "my powder is 20-20-20, call it Max", "Max"),
        ("de", "die blaue Dose ist 20-20-20, 1 g pro Liter", "blaue Dose"),
        ("de", "neuer Dünger: Orchideensalz 13-3-15", "Orchideensalz"),
        ("de", "mein Dünger ist 20-20-20", None),
        ("es", "tengo bote azul 20-20-20", "bote azul"),
        ("es", "abono nuevo 13-3-15", None),
        ("pl", "mam niebieski proszek 20-20-20", "niebieski proszek"),
        ("pl", "Zielony: 3-1-2, 5 ml na litr", "Zielony"),
    ],
)
def test_a_feed_is_put_on_record_with_its_name(language: str, line: str, name: str | None) -> None:
    order = order_of(line, language)
    assert (order.verb, order.name) == ("product", name)


@pytest.mark.parametrize(
    "line",
    [
        "use 5ml for every 2 litres of water, liquid 7-3-6, making 6", "today: 20-20-20",
        "hello: 20-20-20", "phals: 20-20-20 powder", "5 l: 20-20-20 powder, quarter",
        "is blue tub 20-20-20?", "is urea bad", "is kelp any good",
    ],
)  # fmt: skip
def test_what_puts_no_feed_on_record(line: str) -> None:
    assert order_of(line).verb == "dose"


async def test_a_feed_without_a_name_is_named_in_the_next_line(mira: Grower) -> None:
    added = await mira.says("new feed 13-3-15")
    assert "call it" in added.reply
    assert (await mira.says("call it orchid salts")).reply == "13-3-15 is now orchid salts."
    assert "orchid salts" in (await mira.says("5 l orchid salts")).reply


@pytest.mark.parametrize("line", ["10 g blue in 5 l", "i use 10 g of blue in 5 l"])
async def test_a_mix_is_not_taken_for_another_rate_of_the_label(mira: Grower, line: str) -> None:
    await mira.says(TUB)
    asked = await mira.says(line)
    assert asked.kind == "ask"
    assert "blue, label 2 g per litre" in asked.reply
    assert "label 1 g per litre" in (await mira.says("my shelf")).reply
    assert "label 2 g per litre" in (await mira.says("blue, label 2 g per litre")).reply


async def test_the_first_rate_of_a_feed_may_be_told_as_a_mix(mira: Grower) -> None:
    await mira.says("my powder is 20-20-20, call it blue")
    assert "label 2 g per litre" in (await mira.says("10 g blue in 5 l")).reply


async def test_a_measure_without_a_size_is_asked_about(mira: Grower) -> None:
    await mira.says(TUB)
    assert "Measure it once" in (await mira.says("i put 2 caps in 5 l")).reply


async def test_a_name_alone_later_names_nothing(mira: Grower) -> None:
    await mira.says("new feed 13-3-15", "add a vanda")
    asked = await mira.says("call it Ruby")
    assert asked.kind == "ask"
    assert "Ruby" not in (await mira.says("my shelf")).reply


@pytest.mark.parametrize(
    ("language", "line"),
    [("en", "does blue expire"), ("en", "how long does powder keep"),
     ("de", "ist der Dünger noch haltbar"), ("es", "¿caduca el abono?"),
     ("pl", "czy nawóz ma termin ważności")],
)  # fmt: skip
def test_how_long_a_feed_keeps_asks_for_no_litres(language: str, line: str) -> None:
    order = order_of(line, language)
    assert (order.verb, order.text) == ("tell", "keeps")


async def test_the_choice_says_why_and_where_that_is_from(mira: Grower) -> None:
    await mira.says(
        "my powder is 13-3-15 +8Ca +2Mg, 1 g per litre, call it orange",
        "my powder is 3-1-2, 1 g per litre, call it greeny",
    )
    chosen = await mira.says("which is better for bark")
    assert "no number is larger than the nitrogen" in chosen.reply
    assert any("HortScience 44 (2009) 781" in step.source for step in chosen.why)


# --- waters --------------------------------------------------------------------------------------

CHANGED = {
    "en": ("I use rain water", "my tap is 14 dH", "I use tap water now", "with rain water",
           "5 l"),
    "de": ("ich nehme Regenwasser", "mein Leitungswasser hat 14 dH",
           "ich nehme jetzt Leitungswasser", "mit Regenwasser", "5 l"),
    "es": ("uso agua de lluvia", "mi agua del grifo tiene 14 dH", "ahora uso agua del grifo",
           "con agua de lluvia", "5 l"),
    "pl": ("używam deszczówki", "moja kranówka ma 14 dH", "używam: kranówka", "z deszczówką",
           "5 l"),
}  # fmt: skip
FEED = {
    "en": TUB, "de": "mein Pulver ist 20-20-20, 1 g pro Liter, nenn es Blau",
    "es": "mi polvo es 20-20-20, 1 g por litro, llámalo Azul",
    "pl": "mój proszek to 20-20-20, 1 g na litr, nazwij go Niebieski",
}  # fmt: skip


@pytest.mark.parametrize("language", sorted(CHANGED))
async def test_a_water_that_is_used_now_is_that_of_the_next_dose(
    mira: Grower, language: str
) -> None:
    first, other, now, with_it, dose = CHANGED[language]
    await mira.says(FEED[language], first)
    recorded = (await mira.says(other)).reply.splitlines()
    assert len(recorded) == 2  # which is used, and how to change it
    assert now[-9:] in recorded[1]
    assert "14 °dH" not in (await mira.says(dose)).reply
    await mira.says(now)
    assert "14 °dH" in (await mira.says(dose)).reply
    again = await mira.says(with_it)
    assert again.kind == "dose"
    assert "14 °dH" not in again.reply
    assert "14 °dH" in (await mira.says(dose)).reply  # said of one dose only


async def test_the_part_of_the_water_is_never_above_the_whole(mira: Grower) -> None:
    await mira.says(TUB, "my tap is 20 dH")
    answer = await mira.says("my meter says 0.9 mS/cm")
    assert "0.61–0.9 of it your water" in answer.reply
    assert answer.details is not None
    assert answer.details["water_ec_ms_cm"] == pytest.approx(0.9)


# --- of the dose that was told -------------------------------------------------------------------

OF_THE_LAST = [
    ("en", "is that too strong", "strong"), ("en", "is that too strong?", "strong"),
    ("en", "is that safe", "safe"), ("en", "can i measure that with a teaspoon", "by_spoon"),
    ("en", "can i measure that with a spoon", "by_spoon"),
    ("en", "how many drops is that", "by_drops"), ("en", "how much N is that", "content"),
    ("de", "ist das zu stark", "strong"), ("de", "ist das gefährlich", "safe"),
    ("de", "kann ich das mit einem Teelöffel abmessen", "by_spoon"),
    ("de", "wie viele Tropfen sind das", "by_drops"), ("de", "wie viel N ist das", "content"),
    ("es", "es demasiado fuerte", "strong"), ("es", "¿es peligroso?", "safe"),
    ("es", "puedo medirlo con una cucharadita", "by_spoon"),
    ("es", "cuántas gotas son", "by_drops"),
    ("es", "cuánto N es eso", "content"),
    ("pl", "czy to za mocne", "strong"), ("pl", "czy to bezpieczne", "safe"),
    ("pl", "czy mogę odmierzyć to łyżeczką", "by_spoon"), ("pl", "ile to kropli", "by_drops"),
    ("pl", "ile to azotu", "content"),
]  # fmt: skip


@pytest.mark.parametrize(("language", "line", "text"), OF_THE_LAST)
def test_what_is_asked_of_the_last_dose(language: str, line: str, text: str) -> None:
    order = order_of(line, language)
    assert (order.verb, order.text) == ("last", text)


@pytest.mark.parametrize(
    ("line", "verb"),
    [
        ("is that safe for my cat", "pets"), ("that's too much", "argue"),
        ("i only have a spoon", "kit"), ("how many teaspoons for 5 l 20-20-20 powder", "dose"),
    ],
)  # fmt: skip
def test_what_is_asked_of_something_else(line: str, verb: str) -> None:
    assert order_of(line).verb == verb


async def test_the_last_dose_answers(mira: Grower) -> None:
    assert "poison centre" in (await mira.says(TUB, "is that safe")).reply
    none = await mira.says("is that too strong")
    assert none.kind == "ask"
    assert "no dose to go on from" in none.reply
    await mira.says("5 l")
    assert (
        "25 % of full strength. The most in 5 l is 3.1 g"
        in (await mira.says("is that too strong")).reply
    )
    assert (
        "1/4 of a level teaspoon" in (await mira.says("can i measure that with a teaspoon")).reply
    )
    assert "Measure 1.2 g" in (await mira.says("how many drops is that")).reply
    assert "N 50" in (await mira.says("how much N is that")).reply
    missing = await mira.says("add calmag?")
    assert missing.kind == "supplement"
    assert "12 of 12" in missing.reply


async def test_with_spoons_only_no_scale_is_named_first(mira: Grower) -> None:
    await mira.says(TUB, "i only have spoons")
    lines = (await mira.says("5 l")).reply.splitlines()
    assert lines[1].startswith("You said spoons only")
    assert not any("Weigh it" in line for line in lines)
    lines = (await mira.says("my scale shows 0.1 g", "5 l")).reply.splitlines()
    assert lines[1].startswith("Weigh it on a 0.1 g scale")


@pytest.mark.parametrize(
    ("language", "line"),
    [("en", "can i feed after repotting"), ("de", "kann ich nach dem Umtopfen düngen"),
     ("es", "¿puedo abonar después de trasplantar?"), ("pl", "czy mogę nawozić po przesadzeniu")],
)  # fmt: skip
def test_feed_after_a_repot_is_told(language: str, line: str) -> None:
    order = order_of(line, language)
    assert (order.verb, order.text) == ("tell", "repotted")


async def test_when_a_plant_can_be_fed_is_its_plan(mira: Grower) -> None:
    await mira.says("add a phalaenopsis in bark called Hugo", "repotted Hugo")
    plan = await mira.says("when can i feed hugo")
    assert plan.kind == "plan"
    assert "just repotted" in plan.reply
    assert "3 weeks" in (await mira.says("can i feed after repotting")).reply
