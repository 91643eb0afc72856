"""What was told amiss: who was wrong, what is taken back, told twice, or told though not done."""

from __future__ import annotations

import pytest

from bot.records import Records
from tests.conversation.talking import Grower
from tests.conversation.test_corrections import ALL, FED, PLANTS, UNDO, log_of

DAY = "2026-06-07"
TAP = {
    "en": "my tap water has 18 dH", "de": "mein Leitungswasser hat 18 dH",
    "es": "mi agua del grifo tiene 18 dH", "pl": "moja kranówka ma 18 dH",
}  # fmt: skip
ONLY_WATER = [
    ("en", "I was wrong, Hugo only got water"), ("en", "that was a mistake, Hugo only got water"),
    ("de", "hab mich vertan, Hugo hat nur Wasser bekommen"),
    ("de", "hab mich geirrt Hugo hat nur Wasser bekommen"),
    ("es", "me equivoqué, Hugo solo recibió agua"),
    ("pl", "pomyliłam się, Hugo dostał tylko wodę"), ("pl", "pomyłka, Hugo dostał tylko wodę"),
]  # fmt: skip


@pytest.mark.parametrize(("language", "line"), ONLY_WATER)
async def test_who_was_wrong_puts_right_those_that_are_named(
    sqlite_records: Records, language: str, line: str
) -> None:
    mira = Grower(sqlite_records)
    await mira.says(PLANTS[language], ALL[language], line)
    assert sorted(await log_of(mira)) == [("clear", DAY, 1), ("fed", DAY, 2), ("fed", DAY, 3)]
    await mira.says(UNDO[language])
    assert sorted(await log_of(mira)) == [("fed", DAY, n) for n in (1, 2, 3)]


@pytest.mark.parametrize(("language", "line"), ONLY_WATER)
async def test_of_others_what_follows_is_one_more_entry(
    sqlite_records: Records, language: str, line: str
) -> None:
    mira = Grower(sqlite_records)
    await mira.says(PLANTS[language], FED[language].replace("Hugo", "Ruby"), line)
    assert sorted(await log_of(mira)) == [("clear", DAY, 1), ("fed", DAY, 2)]
    mira = Grower(sqlite_records, name="Olek")
    await mira.says(PLANTS[language], TAP[language], line)
    await mira.says(UNDO[language], UNDO[language])  # the water for Hugo, and that of the tap
    await mira.says(FED[language])
    assert [kind for kind, _, _ in await log_of(mira)] == ["fed"]


@pytest.mark.parametrize(
    ("language", "line"),
    [("en", "you were wrong"), ("de", "du hast dich geirrt"), ("es", "te equivocaste"),
     ("pl", "pomyliłeś się"), ("de", "hab mich vertan"), ("pl", "źle zrozumiałeś")],
)  # fmt: skip
async def test_who_was_wrong_alone_takes_nothing_back(
    sqlite_records: Records, language: str, line: str
) -> None:
    mira = Grower(sqlite_records)
    await mira.says(PLANTS[language], FED[language])
    assert (await mira.says(line)).kind == "ask"
    assert await log_of(mira) == [("fed", DAY, 1)]
    await mira.says(TAP[language])
    assert (await mira.says(line)).kind == "ask"


UNDONE = {
    "en": ("repotted Hugo", "undo the repotting", "undo the feeding", "forget the repotting"),
    "de": ("Hugo umgetopft", "ach vergiss das mit dem Umtopfen", "mach das Düngen rückgängig",
           "vergiss das mit dem Umtopfen"),
    "es": ("trasplanté a Hugo", "deshaz el trasplante", "deshaz el riego",
           "olvida lo del trasplante"),
    "pl": ("przesadziłam Hugo", "cofnij przesadzanie", "cofnij nawożenie",
           "zapomnij o tym przesadzaniu"),
}  # fmt: skip


@pytest.mark.parametrize("language", UNDONE)
async def test_only_what_is_named_is_taken_back(sqlite_records: Records, language: str) -> None:
    told, this, other, also = UNDONE[language]
    mira = Grower(sqlite_records)
    await mira.says(PLANTS[language], told)
    assert (await mira.says(other)).kind == "ask"
    assert await log_of(mira) == [("repot", DAY, 1)]
    assert (await mira.says(this)).kind == "undo"
    assert await log_of(mira) == []
    await mira.says(told, FED[language].replace("Hugo", "Ruby"))
    assert (await mira.says(also)).kind == "ask"
    assert (await mira.says(UNDO[language])).kind == "undo"
    assert (await mira.says(also)).kind == "undo"
    assert await log_of(mira) == []


@pytest.mark.parametrize(
    ("language", "line"),
    [("en", "Ruby after all"), ("de", "doch Ruby"), ("es", "al final Ruby"), ("pl", "jednak Ruby"),
     ("en", "Hugo wasn't fed, only Ruby"), ("de", "ne Hugo hab ich nicht gedüngt nur Ruby"),
     ("es", "no, a Hugo no lo aboné, solo a Ruby"), ("pl", "Hugo nie nawoziłam, tylko Ruby")],
)  # fmt: skip
async def test_another_got_it_after_all(sqlite_records: Records, language: str, line: str) -> None:
    mira = Grower(sqlite_records)
    await mira.says(PLANTS[language], FED[language], line)
    assert await log_of(mira) == [("fed", DAY, 2)]


@pytest.mark.parametrize("language", FED)
async def test_a_feed_told_twice_is_said_to_be_twice(
    sqlite_records: Records, language: str
) -> None:
    mira = Grower(sqlite_records)
    once = await mira.says(PLANTS[language], FED[language])
    again = await mira.says(FED[language])
    assert len(again.reply.splitlines()) == len(once.reply.splitlines()) + 1
    assert UNDO[language] in again.reply.splitlines()[1]
    await mira.says(UNDO[language])
    assert await log_of(mira) == [("fed", DAY, 1)]
    other = await mira.says(FED[language].replace("Hugo", "Mia"))
    assert UNDO[language] not in other.reply


@pytest.mark.parametrize(
    ("language", "lost", "line"),
    [("en", "Hugo died", "not dead after all"), ("de", "Hugo ist tot", "doch nicht tot"),
     ("es", "Hugo murió", "al final sigue viva"), ("pl", "Hugo padł", "jednak żyje")],
)  # fmt: skip
async def test_a_death_is_taken_back(
    sqlite_records: Records, language: str, lost: str, line: str
) -> None:
    mira = Grower(sqlite_records)
    await mira.says(PLANTS[language], lost)
    assert (await mira.says(line)).kind == "undo"
    await mira.says(FED[language])
    assert await log_of(mira) == [("fed", DAY, 1)]
    assert (await mira.says(line)).kind == "ask"
    assert await log_of(mira) == [("fed", DAY, 1)]


@pytest.mark.parametrize(
    ("language", "line", "word"),
    [("en", "Hugo never gets feed", "resting"), ("de", "Hugo kriegt nie Dünger", "ruht"),
     ("es", "Hugo nunca recibe abono", "reposo"),
     ("pl", "Hugo nigdy nie dostaje nawozu", "odpocz")],
)  # fmt: skip
async def test_who_never_gets_feed_is_offered_a_rest(
    sqlite_records: Records, language: str, line: str, word: str
) -> None:
    mira = Grower(sqlite_records)
    assert word in (await mira.says(PLANTS[language]) and await mira.says(line)).reply
    assert await log_of(mira) == []
