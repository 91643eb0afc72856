"""Names of plants and feeds that are not on record, in other cases, and lists to begin with."""

from __future__ import annotations

import pytest

from bot.records import Records
from tests.conversation.talking import Grower

#: Two alike and one with a name, and a feed with one.
HOME = {
    "en": ("add 2 phals in bark", "add a miltoniopsis called Oma in moss",
           "my powder is 20-20-20, label 1 g per litre, call it mint"),
    "de": ("neu 2 Phals in Rinde", "neu Miltoniopsis namens Oma in Sphagnum",
           "mein Pulver ist 20-20-20, Etikett 1 g pro Liter, nenn es Minze"),
    "es": ("añade 2 phals en corteza", "añade una miltoniopsis llamada Oma en esfagno",
           "mi polvo es 20-20-20, etiqueta 1 g por litro, llámalo Menta"),
    "pl": ("dodaj 2 falki w korze", "dodaj miltoniopsis o imieniu Oma w sphagnum",
           "mój proszek to 20-20-20, etykieta 1 g na litr, nazwij go Mięta"),
}  # fmt: skip


@pytest.fixture
def grower(sqlite_records: Records) -> Grower:
    return Grower(sqlite_records)


@pytest.mark.parametrize(
    ("language", "line", "left"),
    [("de", "eine der beiden phals ist eingegangen", 1), ("de", "die beiden phals sind tot", 0),
     ("es", "una de las dos phals se murió", 1), ("es", "las dos phals murieron", 0),
     ("pl", "jeden z dwóch falków padł", 1), ("pl", "oba falki padły", 0),
     ("en", "one of the two phals died", 1), ("en", "both phals died", 0)],
)  # fmt: skip
async def test_one_of_two_is_one(grower: Grower, language: str, line: str, left: int) -> None:
    await grower.says(*HOME[language], line)
    listed = await grower.says({"en": "my plants", "de": "meine Pflanzen", "es": "mis plantas",
                                "pl": "moje rośliny"}[language])  # fmt: skip
    rows = listed.details["plants"] if listed.details else []
    assert sum(r["count"] for r in rows if r["genus"] == "Phalaenopsis") == left


@pytest.mark.parametrize(
    ("language", "line", "name"),
    [("en", "2 l for lotte", "lotte"), ("de", "2 l für die lotte", "lotte"),
     ("es", "2 l para lola", "lola"), ("pl", "2 l dla Kasi", "Kasi"),
     ("pl", "a ile dla Zosi na pol litra", "Zosi")],
)  # fmt: skip
async def test_a_name_nobody_bears_is_said_first(
    grower: Grower, language: str, line: str, name: str
) -> None:
    answer = await grower.says(*HOME[language], line)
    first = answer.reply.split("\n")[0]
    assert name in first
    assert "Oma" in first


@pytest.mark.parametrize(
    ("language", "line"),
    [("en", "2 l for oma"), ("en", "2 l for everyone"), ("en", "2 l for tonight"),
     ("de", "2 l für die ganze Truppe"), ("es", "2 l para todas"), ("pl", "2 l dla wszystkich")],
)  # fmt: skip
async def test_who_is_known_gets_the_amount_first(grower: Grower, language: str, line: str) -> None:
    answer = await grower.says(*HOME[language], line)
    assert answer.kind == "dose"
    assert "20-20-20" in answer.reply.split("\n")[0]


@pytest.mark.parametrize(
    ("line", "kind"),
    [("Mańkowi tylko woda dziś", "log"), ("przesadziłam Mańka", "plants"),
     ("Maniek dostał dziś wodę", "log"), ("Hugonowi tylko woda", "log"),
     ("Perle tylko woda", "log"), ("Malca przesadziłam", "plants")],
)  # fmt: skip
async def test_polish_names_are_known_in_their_cases(grower: Grower, line: str, kind: str) -> None:
    names = ("Maniek", "Hugo", "Perła", "Malec")
    await grower.says(*(f"dodaj falka w korze o imieniu {n}" for n in names))
    answer = await grower.says(line)
    assert answer.kind == kind
    assert sum(n in answer.reply for n in names) == 1


async def test_a_form_of_two_names_means_neither(grower: Grower) -> None:
    await grower.says(*(f"dodaj falka o imieniu {n}" for n in ("Franek", "Frank")))
    answer = await grower.says("Franka przesadziłam")
    assert answer.kind != "plants"


@pytest.mark.parametrize(
    ("language", "line", "empty"),
    [("en", "3 l of lemon", "mint is empty, i have powder 15-5-15 1 g per litre, called lemon"),
     ("de", "3 l Zitrone", "Minze ist leer, hab jetzt Pulver 15-5-15 1 g pro Liter, heißt Zitrone"),
     ("es", "3 l limón", "la Menta se acabó, ahora tengo polvo 15-5-15 1 g por litro, "
                         "se llama limón"),
     ("pl", "3 l cytryna", "Mięta się skończyła, mam teraz proszek 15-5-15 1 g na litr, "
                           "nazywa się cytryna")],
)  # fmt: skip
async def test_a_feed_nobody_knows_is_asked_about_and_an_empty_one_replaced(
    grower: Grower, language: str, line: str, empty: str
) -> None:
    asked = await grower.says(*HOME[language], line)
    assert (asked.kind, asked.dose) == ("ask", None)
    told = await grower.says(empty)
    assert told.kind == "products"
    dosed = await grower.says(line)
    assert dosed.kind == "dose"
    assert "15-5-15" in dosed.reply.split("\n")[0]


async def test_measured_salts_hold_the_feed_back_until_washed_out(grower: Grower) -> None:
    await grower.says(*HOME["en"], "runoff of Oma 3 mS")
    assert (await grower.says("2 l for oma")).kind == "no_feed"
    assert "Oma" in (await grower.says("3 l for all")).reply.split("\n")[0]
    await grower.says("flushed Oma")
    assert (await grower.says("2 l for oma")).kind == "dose"


@pytest.mark.parametrize(
    ("line", "plants"),
    [("two phals, one in bark one in moss, 12 cm", 2), ("oncidium, 2 of them, bark 12 cm", 1),
     ("also a bulbophyllum mounted", 1), ("1 bulbophyllum mounted on cork", 1),
     ("3 new phals from the show bark 12cm", 1), ("a phal keiki in moss 5 cm", 1),
     ("2 vandas in baskets no medium, 3 phals in bark 5 inch", 2),
     ("2 Phals, eine in Rinde eine in Sphagnum", 2), ("auch ein Bulbophyllum aufgebunden", 1),
     ("dos phals, una en corteza y otra en musgo, 12 cm", 2),
     ("también un bulbophyllum montado", 1), ("też bulbophyllum na podkładce", 1),
     ("dwa falki, jeden w korze drugi w mchu, 12 cm", 2)],
)  # fmt: skip
async def test_a_bare_list_is_offered(grower: Grower, line: str, plants: int) -> None:
    answer = await grower.says(line)
    assert answer.kind == "ask"
    assert answer.reply.count(";") == plants - 1
    assert answer.choices


async def test_a_second_list_is_put_to_the_one_on_offer(grower: Grower) -> None:
    await grower.says("2 phals in bark 12 cm", "1 cattleya in bark 10 cm", "yes")
    listed = await grower.says("my plants")
    assert {r["genus"] for r in (listed.details or {})["plants"]} == {"Phalaenopsis", "Cattleya"}


@pytest.mark.parametrize(
    ("language", "line", "pressed"),
    [("en", "i have a vanda called Bluey", "the vanda is called Bluey"),
     ("de", "ich habe eine Vanda namens Bluey", "die Vanda heißt Bluey"),
     ("es", "tengo una vanda que se llama Bluey", "la vanda se llama Bluey"),
     ("pl", "mam wandę o imieniu Bluey", "wanda nazywa się Bluey")],
)  # fmt: skip
async def test_a_name_for_a_kind_on_record_is_asked_about(
    grower: Grower, language: str, line: str, pressed: str
) -> None:
    first = {"en": "add a vanda", "de": "neu eine Vanda", "es": "añade una vanda",
             "pl": "dodaj wandę"}[language]  # fmt: skip
    asked = await grower.says(first, line)
    assert asked.kind == "ask"
    named = await grower.says(pressed)
    assert (named.kind, "Bluey" in named.reply) == ("plants", True)


@pytest.mark.parametrize(
    ("line", "kind"),
    [("fertilizer is 13-3-15 powder, bag says half tsp per gallon", "products"),
     ("new powder 20-20-20 1 g per l", "products"),
     ("Dünger ist flüssig npk 7-5-6, 5ml auf 1 Liter", "products"),
     ("polvo nuevo 20-20-20 1 g por l", "products"),
     ("nawóz płynny npk 7-5-6, 5 ml na 1 litr", "products"),
     ("20-20-20 powder, 1 g per litre", "ask"),
     ("im in melbourne so winter now", "home"), ("i live in winter park", "home"),
     ("hab auch noch eine Miltoniopsis von meiner Oma, heißt Oma, Sphagnum", "plants"),
     ("i have a phal called Zosia pot 8cm", "plants")],
)  # fmt: skip
async def test_what_is_told_at_first_is_put_on_record(grower: Grower, line: str, kind: str) -> None:
    assert (await grower.says(line)).kind == kind
