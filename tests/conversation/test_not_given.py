"""Who got nothing: said alone nothing is logged, beside others they are spared."""

from __future__ import annotations

from collections import Counter

import pytest

from bot.records import Records
from tests.conversation.talking import Grower

START = (
    "add a phal called Hugo in bark, 12 cm pot", "add a vanda called Bella, bare root, balcony",
    "add a masdevallia called Ruby in moss, 8 cm pot",
)  # fmt: skip


@pytest.fixture
async def mira(sqlite_records: Records) -> Grower:
    mira = Grower(sqlite_records)
    await mira.says(*START)
    return mira


async def logged(mira: Grower) -> Counter[tuple[str, str]]:
    """How often each plant got what, by the log."""
    entries = ((await mira.says("log")).details or {})["entries"]
    names = {e["plant"]: e["name"] for e in entries if e["kind"] == "added"}
    return Counter((e["kind"], names[e["plant"]]) for e in entries if e["kind"] in ("fed", "clear"))


@pytest.mark.parametrize(
    "line",
    [
        "did not feed Hugo", "nobody got feed today", "no feed for Hugo today",
        "Hugo didn't get any fertilizer", "none of them got feed", "i should have fed Hugo",
        "hätte Hugo düngen sollen", "niemand hat heute Dünger bekommen",
        "Hugo bekam keinen Dünger", "nadie recibió abono hoy", "Hugo no recibió abono",
        "nikt nie dostał dziś nawozu", "Hugo nie dostał nawozu",
    ],
)  # fmt: skip
async def test_nothing_is_logged_and_no_dose_given(mira: Grower, line: str) -> None:
    answer = await mira.says(line)
    assert answer.dose is None
    assert answer.kind != "ask"
    assert await logged(mira) == Counter()


@pytest.mark.parametrize(
    "line",
    [
        "fed Hugo last summer", "fed Hugo in winter", "fed Hugo a few days ago",
        "letzten Winter hab ich Hugo gedüngt", "im Herbst Hugo gedüngt", "neulich Hugo gegossen",
        "hace unos días aboné a Hugo", "en invierno aboné a Hugo", "zeszłej zimy nawoziłam Hugo",
    ],
)  # fmt: skip
async def test_a_day_that_nobody_can_tell_is_asked(mira: Grower, line: str) -> None:
    assert (await mira.says(line)).kind == "refused"
    assert await logged(mira) == Counter()


async def test_what_was_not_fed_takes_nothing_else_back(mira: Grower) -> None:
    await mira.says("fed Bella", "Hugo is in moss now", "I did not feed Ruby today")
    assert await logged(mira) == Counter({("fed", "Bella"): 1})
    await mira.says("I live in Leeds", "remind me every sunday to feed Ruby", "hoy no aboné a Ruby")
    assert "Ruby" in (await mira.says("my reminders")).reply


@pytest.mark.parametrize(
    ("line", "fed"),
    [
        ("fed Bella, didn't feed Hugo", {"Bella"}),
        ("didn't feed Hugo, fed Bella", {"Bella"}),
        ("fed all, no feed for Ruby", {"Bella", "Hugo"}),
        ("Bella got feed, Ruby got no feed", {"Bella"}),
        ("hab Bella gedüngt, Hugo bekam keinen Dünger", {"Bella"}),
        ("aboné a Bella, Hugo no recibió abono", {"Bella"}),
        ("nawiozłam Bellę, Hugo nie dostał nawozu", {"Bella"}),
    ],
)
async def test_who_got_nothing_is_spared(mira: Grower, line: str, fed: set[str]) -> None:
    await mira.says(line)
    assert await logged(mira) == Counter({("fed", name): 1 for name in fed})


async def test_a_dose_is_not_reckoned_for_who_gets_none(mira: Grower) -> None:
    spared = await mira.says("no feed for Ruby, 2 l for Bella, 20-20-20 powder")
    alone = await mira.says("2 l for Bella, 20-20-20 powder")
    assert spared.dose is not None
    assert alone.dose is not None
    assert spared.dose.amount == alone.dose.amount
    assert "Ruby" not in spared.reply


@pytest.mark.parametrize(
    "line",
    [
        "my friend fed her vanda", "my friend's vanda is flowering", "Omas Vanda blüht",
        "la vanda de mi amiga está en flor", "vanda koleżanki kwitnie",
    ],
)  # fmt: skip
async def test_what_became_of_somebody_else_s_plants_changes_none(mira: Grower, line: str) -> None:
    before = (await mira.says("log")).details
    answer = await mira.says(line)
    assert answer.kind == "log"
    assert (await mira.says("log")).details == before


@pytest.mark.parametrize(
    ("line", "fed"),
    [
        ("zrobione oprócz Hugo", {"Bella", "Ruby"}), ("zrobione bez Hugo", {"Bella", "Ruby"}),
        ("done except Hugo", {"Bella", "Ruby"}), ("all done but Hugo", {"Bella", "Ruby"}),
        ("hecho menos Hugo", {"Bella", "Ruby"}), ("erledigt außer Hugo", {"Bella", "Ruby"}),
        ("nie zrobione", set()), ("todavía no hecho", set()),
    ],
)  # fmt: skip
async def test_a_plan_is_done_but_for_who_was_spared(
    mira: Grower, line: str, fed: set[str]
) -> None:
    await mira.says("my powder is 20-20-20, label 1 g per litre", "plan today")
    await mira.says(line)
    given = {name for _, name in await logged(mira)}
    assert given == fed


@pytest.mark.parametrize(
    ("line", "who"),
    [
        ("fed all except those in moss", {"Hugo", "Bella"}),
        ("fed all but the ones on the balcony", {"Hugo", "Ruby"}),
        ("fed everything except what stands on the balcony", {"Hugo", "Ruby"}),
        ("fed all except the phals in bark", {"Bella", "Ruby"}),
        ("alles gedüngt außer was auf balcony steht", {"Hugo", "Ruby"}),
        ("aboné todas menos las de musgo", {"Hugo", "Bella"}),
        ("aboné todo excepto lo de balcony", {"Hugo", "Ruby"}),
    ],
)  # fmt: skip
async def test_what_tells_plants_apart_excepts_them(mira: Grower, line: str, who: set[str]) -> None:
    await mira.says(line)
    assert set(await logged(mira)) == {("fed", name) for name in who}


@pytest.mark.parametrize(
    "line", ["fed all except the white ones", "aboné todas menos las blancas",
             "nawiozłam wszystkie oprócz białych"],
)  # fmt: skip
async def test_a_colour_excepts_those_that_have_it(mira: Grower, line: str) -> None:
    await mira.says(line)
    assert not await logged(mira)  # nobody is white: asked about
    await mira.says({"f": "add a white phal called Snow", "a": "añade una phal blanca llamada Snow",
                     "n": "dodaj białą phalaenopsis o imieniu Snow"}[line[0]], line)  # fmt: skip
    assert set(await logged(mira)) == {("fed", name) for name in ("Hugo", "Bella", "Ruby")}


@pytest.mark.parametrize(
    "line",
    [
        "regué a Ruby y no aboné a Hugo", "watered Ruby and did not feed Hugo",
        "Ruby gegossen und Hugo nicht gedüngt", "podlałam Ruby i nie nawoziłam Hugo",
    ],
)  # fmt: skip
async def test_nobody_is_fed_where_one_was_watered_and_one_not_fed(mira: Grower, line: str) -> None:
    await mira.says(line)
    assert set(await logged(mira)) == {("clear", "Ruby")}
