"""The last entry of the log put right: whom, the day, what was given; and taken back again."""

from __future__ import annotations

import pytest

from bot.records import Records
from tests.conversation.talking import Grower

PLANTS = {
    "en": "add a phal called Hugo in bark, a phal called Ruby in bark and a vanda called Mia",
    "de": "neu: eine Phal namens Hugo, eine Phal namens Ruby und eine Vanda namens Mia",
    "es": "añade una phal llamada Hugo, una phal llamada Ruby y una vanda llamada Mia",
    "pl": "dodaj falenopsisa o imieniu Hugo, falenopsisa o imieniu Ruby i wandę o imieniu Mia",
}
FED = {"en": "fed Hugo", "de": "Hugo gedüngt", "es": "aboné a Hugo", "pl": "nawiozłam Hugo"}

ALL = {
    "en": "fed everyone", "de": "alle gedüngt", "es": "aboné todas", "pl": "nawiozłam wszystkie",
}  # fmt: skip
UNDO = {"en": "undo", "de": "rückgängig", "es": "deshacer", "pl": "cofnij"}


async def log_of(grower: Grower) -> list[tuple[str, str, int]]:
    """Kind, day and plant of what was given."""
    answer = await grower.says("log")
    rows = (answer.details or {}).get("entries", [])
    return [(r["kind"], r["on"], r["plant"]) for r in rows if r["kind"] != "added"]


@pytest.mark.parametrize(
    ("language", "line"),
    [
        *(("en", t) for t in (
            "wait that was Ruby not Hugo", "that was Ruby", "no, Ruby", "no Ruby", "i meant Ruby",
            "Ruby not Hugo", "sorry, not Hugo but Ruby", "it was for Ruby", "Ruby instead",
        )),
        *(("de", t) for t in (
            "das war Ruby, nicht Hugo", "nein, Ruby", "ich meinte Ruby", "nicht Hugo sondern Ruby",
            "halt, das war Ruby",
        )),
        *(("es", t) for t in ("era Ruby, no Hugo", "no, Ruby", "quise decir Ruby")),
        *(("pl", t) for t in ("to była Ruby, nie Hugo", "nie, Ruby", "nie Hugo, tylko Ruby")),
    ],
)  # fmt: skip
async def test_the_plant_of_the_last_entry_is_put_right(
    sqlite_records: Records, language: str, line: str
) -> None:
    mira = Grower(sqlite_records)
    await mira.says(PLANTS[language], FED[language])
    day = mira.today.isoformat()
    assert await log_of(mira) == [("fed", day, 1)]
    answer = await mira.says(line)
    assert (answer.kind, answer.choices) == ("log", [UNDO[language]])
    assert await log_of(mira) == [("fed", day, 2)]
    await mira.says(UNDO[language])
    assert await log_of(mira) == [("fed", day, 1)]


@pytest.mark.parametrize(
    ("language", "line"),
    [
        *(("en", t) for t in ("yesterday not today", "it was yesterday", "not today, yesterday")),
        *(("de", t) for t in ("gestern nicht heute", "es war gestern", "nein, gestern")),
        *(("es", t) for t in ("fue ayer", "ayer, no hoy", "no hoy, ayer")),
        *(("pl", t) for t in ("to było wczoraj", "nie dziś, tylko wczoraj")),
    ],
)  # fmt: skip
async def test_the_day_of_the_last_entry_is_put_right(
    sqlite_records: Records, language: str, line: str
) -> None:
    mira = Grower(sqlite_records)
    await mira.says(PLANTS[language], FED[language])
    await mira.says(line)
    assert await log_of(mira) == [("fed", "2026-06-06", 1)]


@pytest.mark.parametrize(
    ("fed", "line", "log"),
    [
        ("fed Hugo", "no, that was clear water", [("clear", "2026-06-07", 1)]),
        ("fed Hugo", "no, i flushed her", [("flush", "2026-06-07", 1)]),
        ("fed Hugo", "no, i fed Ruby", [("fed", "2026-06-07", 2)]),
        ("fed Hugo and Ruby", "no, i have not fed Hugo", [("fed", "2026-06-07", 2)]),
        ("fed Hugo and Ruby", "no, not Ruby", [("fed", "2026-06-07", 1)]),
        ("fed Hugo and Ruby", "sorry, Mia not Ruby",
         [("fed", "2026-06-07", 1), ("fed", "2026-06-07", 3)]),
        ("fed Hugo yesterday", "i meant Ruby", [("fed", "2026-06-06", 2)]),
        ("fed Hugo", "no, Ruby, 2 days ago", [("fed", "2026-06-05", 2)]),
    ],
)  # fmt: skip
async def test_what_was_not_corrected_stays(
    sqlite_records: Records, fed: str, line: str, log: list[tuple[str, str, int]]
) -> None:
    mira = Grower(sqlite_records)
    await mira.says(PLANTS["en"], fed, line)
    assert await log_of(mira) == log


@pytest.mark.parametrize(
    ("language", "line"),
    [
        *(
            ("en", t)
            for t in (
                "not Mia",
                "no, not Mia",
                "all but Mia",
                "no Mia",
                "Hugo and Ruby only, not Mia",
            )
        ),
        *(("de", t) for t in ("Mia nicht", "nicht Mia", "nein, Mia nicht", "alle außer Mia")),
        *(("es", t) for t in ("no Mia", "Mia no", "todas menos Mia")),
        *(("pl", t) for t in ("nie Mia", "nie, nie Mia", "wszystkie oprócz Mia")),
    ],
)
async def test_one_of_all_is_taken_out(sqlite_records: Records, language: str, line: str) -> None:
    mira = Grower(sqlite_records)
    await mira.says(PLANTS[language], ALL[language], line)
    assert await log_of(mira) == [("fed", "2026-06-07", 1), ("fed", "2026-06-07", 2)]


@pytest.mark.parametrize(
    ("line", "log"),
    [
        ("yesterday", [("fed", "2026-06-06", 1)]),
        ("2 days ago", [("fed", "2026-06-05", 1)]),
        ("flushed, not fed", [("flush", "2026-06-07", 1)]),
        ("scratch that, ruby", [("fed", "2026-06-07", 2)]),
        ("wrong one, it was ruby", [("fed", "2026-06-07", 2)]),
        ("ruby i mean", [("fed", "2026-06-07", 2)]),
        ("no mia", [("fed", "2026-06-07", 3)]),
        ("all of them actually", [("fed", "2026-06-07", n) for n in (1, 2, 3)]),
    ],
)
async def test_short_corrections(
    sqlite_records: Records, line: str, log: list[tuple[str, str, int]]
) -> None:
    mira = Grower(sqlite_records)
    await mira.says(PLANTS["en"], "fed Hugo", line)
    assert await log_of(mira) == log


async def test_what_else_was_written_is_put_right_by_undo(sqlite_records: Records) -> None:
    mira = Grower(sqlite_records)
    answer = await mira.says(PLANTS["en"]) and await mira.says("repotted Hugo", "no, Ruby")
    assert "undo" in answer.reply


async def test_the_plan_opens_again_for_who_was_taken_out(sqlite_records: Records) -> None:
    mira = Grower(sqlite_records)
    await mira.says(PLANTS["en"], "my powder is 20-20-20", "plan", "done", "no, not Mia")
    assert {p for _, _, p in await log_of(mira)} == {1, 2}
    await mira.says("done")
    assert {p for _, _, p in await log_of(mira)} == {1, 2, 3}


@pytest.mark.parametrize(
    "line",
    [
        "no, 3 l",
        "no, Hubert",
        "oops wrong plant",
        "that was Ruby not Mia",
        "no, not Hugo",
        "wrong",
        "no hugo",
        "hugo wasnt watered, ruby was",
    ],
)
async def test_what_cannot_be_told_is_asked(sqlite_records: Records, line: str) -> None:
    mira = Grower(sqlite_records)
    await mira.says(PLANTS["en"], "watered Hugo")
    answer = await mira.says(line)
    assert answer.kind == "ask"
    assert "What was wrong?" in answer.reply
    assert "Hugo" in answer.reply
    assert await log_of(mira) == [("clear", "2026-06-07", 1)]


@pytest.mark.parametrize(
    "line",
    [
        "fed Mia, not Ruby",
        "no feed for Ruby",
        "not today",
        "no",
        "no problem",
        "thanks",
        "sorry, fed Ruby yesterday",
        "who was fed today",
        "actually, how much for 3 l?",
    ],
)
async def test_other_lines_right_after_an_entry_do_not_change_it(
    sqlite_records: Records, line: str
) -> None:
    mira = Grower(sqlite_records)
    await mira.says(PLANTS["en"], "fed Hugo")
    await mira.says(line)
    assert ("fed", "2026-06-07", 1) in await log_of(mira)


async def test_a_correction_is_heard_only_right_after_an_entry(sqlite_records: Records) -> None:
    mira = Grower(sqlite_records)
    await mira.says(PLANTS["en"], "my powder is 20-20-20", "fed Hugo", "5 l", "no, 3 l")
    assert await log_of(mira) == [("fed", "2026-06-07", 1)]
    await mira.says("fed Ruby")
    await mira.later(hours=1).says("that was Mia")
    assert ("fed", "2026-06-07", 2) in await log_of(mira)


async def test_in_a_group_nobody_corrects_what_others_said(sqlite_records: Records) -> None:
    mira = Grower(sqlite_records, name="Mira", group="club")
    await mira.says(PLANTS["en"], "fed Hugo")
    olek = Grower(sqlite_records, name="Olek", group="club", now=mira.now, administers=False)
    await olek.says("no, Ruby")
    assert await log_of(mira) == [("fed", "2026-06-07", 1)]


@pytest.mark.parametrize(
    "line",
    ["undo that last one", "mach das letzte rückgängig", "deshaz la última", "cofnij to ostatnie"],
)
async def test_the_last_one_is_taken_back(sqlite_records: Records, line: str) -> None:
    mira = Grower(sqlite_records)
    await mira.says(PLANTS["en"], "fed Hugo")
    assert (await mira.says(line)).kind == "undo"
    assert await log_of(mira) == []


@pytest.mark.parametrize(
    ("language", "line"),
    [("es", "no regué a Ruby"), ("es", "no aboné a Ruby"), ("pl", "nie podlałam Ruby"),
     ("de", "Ruby nicht gegossen"), ("en", "did not water Ruby"),
     ("en", "neither fed nor watered today"), ("de", "weder gegossen noch gedüngt"),
     ("pl", "dziś ani nie podlałam ani nie nawoziłam")],
)  # fmt: skip
async def test_what_was_not_done_puts_nothing_right(
    sqlite_records: Records, language: str, line: str
) -> None:
    mira = Grower(sqlite_records)
    await mira.says(PLANTS[language], FED[language])
    before = await log_of(mira)
    await mira.says(line)
    assert await log_of(mira) == before


@pytest.mark.parametrize(
    ("language", "line"),
    [("en", "fed Ruby instead of Hugo"), ("de", "ich hab statt Hugo die Ruby gedüngt"),
     ("de", "doch nicht Hugo sondern Ruby hab ich gedüngt"), ("es", "aboné a Ruby en vez de Hugo"),
     ("pl", "nawoziłam Ruby zamiast Hugo"), ("en", "not Hugo but Ruby got fed")],
)  # fmt: skip
async def test_who_got_it_in_place_of_another(
    sqlite_records: Records, language: str, line: str
) -> None:
    mira = Grower(sqlite_records)
    await mira.says(PLANTS[language], FED[language])
    ((kind, day, hugo),) = await log_of(mira)
    assert (await mira.says(line)).kind == "log"
    ((after, on, ruby),) = await log_of(mira)
    assert (after, on) == (kind, day)
    assert ruby != hugo
