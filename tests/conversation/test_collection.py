"""The collection by conversation: what a question waits for, names, counts, what is gone."""

from __future__ import annotations

from collections.abc import AsyncIterator
from contextlib import asynccontextmanager

import pytest
from sqlalchemy.ext.asyncio import AsyncSession

from bot.conversation.answer import Answer
from bot.conversation.collection import load
from bot.records import Records, owners
from tests.conversation.talking import Grower


async def there(mira: Grower) -> list[tuple[str | None, str | None, int]]:
    """Name, kind and number of each entry."""
    async with mira.records.reading() as session:
        owner = await owners.find(session, mira.address)
        assert owner is not None
        found = await load(session, owner.id)
    return [(p.name, p.genus, p.count) for p in found.plants]


ALL = [("Ruby", "Phalaenopsis", 1), ("Mona", "Phalaenopsis", 1), (None, "Phalaenopsis", 5)]


@pytest.fixture
async def mira(sqlite_records: Records) -> Grower:
    """Has five phals alike and two with names."""
    grower = Grower(sqlite_records)
    await grower.says(
        "add a phal called Ruby on the balcony", "add a phal called Mona in the kitchen",
        "add 5 phals in bark, on the balcony",
    )  # fmt: skip
    assert await there(grower) == ALL
    return grower


@pytest.mark.parametrize(
    ("lost", "later"),
    [
        ("sold two of the phals", "how many phals do i have"),
        ("one phal died", "do my phals need feed"),
        ("one phal died", "fed all"),
        ("my phal died", "5 l of 20-20-20 for the phals, half strength"),
        ("my phal died", "are the phals resting"),
        ("zwei Phals verkauft", "wie viele Phals habe ich"),
        ("vendí dos phals", "¿cuántas phals tengo?"),
        ("sprzedałam dwie falenopsis", "ile mam falenopsis"),
    ],
)
async def test_a_later_question_picks_nothing(mira: Grower, lost: str, later: str) -> None:
    assert (await mira.says(lost)).ask
    await mira.says(later)
    assert await there(mira) == ALL
    await mira.says("1")  # the question is over
    assert await there(mira) == ALL


@pytest.mark.parametrize("pick", ["all", "the phals", "Ruby", "1 and 3", "3 phals", "Ruby?"])
async def test_no_more_and_no_fewer_than_were_said(mira: Grower, pick: str) -> None:
    await mira.says("sold two of the phals", pick)
    assert await there(mira) == ALL


@pytest.mark.parametrize("pick", ["Ruby and Mona", "1 and 2", "1, 2"])
async def test_as_many_as_were_said_are_picked(mira: Grower, pick: str) -> None:
    await mira.says("sold two of the phals", pick)
    assert await there(mira) == ALL[2:]


async def test_all_are_picked_where_no_number_was_said(mira: Grower) -> None:
    await mira.says("sold the phal", "all")
    assert await there(mira) == []


async def test_an_entry_of_more_is_split(mira: Grower) -> None:
    answer = await mira.says("sold two of the phals", "3")
    assert "3 left" in answer.reply
    assert await there(mira) == [*ALL[:2], (None, "Phalaenopsis", 3)]


async def test_more_than_there_are_is_asked(mira: Grower) -> None:
    await mira.says("add a vanda")
    answer = await mira.says("sold 3 vandas")
    assert answer.kind == "ask"
    assert (None, "Vanda", 1) in await there(mira)
    await mira.says("1 Vanda died")
    assert await there(mira) == ALL


async def test_the_number_of_the_loss_is_taken(mira: Grower) -> None:
    await mira.says("add 5 vandas", "i have 5 vandas, 2 died")
    assert (None, "Vanda", 3) in await there(mira)
    await mira.says("sold 1 vanda and 2 phals")
    assert sum(n for _, _, n in await there(mira)) == 10


async def test_a_place_that_leaves_several_asks_again(mira: Grower) -> None:
    answer = await mira.says("one phal died", "the one on the balcony")
    assert answer.ask is not None
    assert await there(mira) == ALL
    await mira.says("ruby")
    assert await there(mira) == ALL[1:]


async def test_them_is_no_more_than_was_said(mira: Grower) -> None:
    await mira.says("fed the phals")
    assert (await mira.says("two of them died")).ask
    assert await there(mira) == ALL


async def test_names_are_kept_and_known(sqlite_records: Records) -> None:
    mira = Grower(sqlite_records)
    await mira.says("i have hugo a phal in bark", "add Otto phal", "add Cat catasetum")
    assert [n for n, _, _ in await there(mira)] == ["hugo", "Otto", "Cat"]
    assert (await mira.says("fed otto")).kind == "log"
    assert "Oscar" in (await mira.says("rename Otto to Oscar")).reply


async def test_more_names_than_plants_are_asked(sqlite_records: Records) -> None:
    mira = Grower(sqlite_records)
    await mira.says("add a vanda")
    assert (await mira.says("add 2 phals called Otto, Rita and Mona")).kind == "ask"
    assert await there(mira) == [(None, "Vanda", 1)]


@pytest.mark.parametrize(
    ("line", "yes", "no"),
    [
        ("i have 2 vandas", "yes", "no"), ("ich habe 2 Vandas", "ja", "nein"),
        ("tengo 2 vandas", "sí", "no"), ("mam 2 vandy", "tak", "nie"),
    ],
)  # fmt: skip
async def test_having_some_again_is_asked(
    sqlite_records: Records, line: str, yes: str, no: str
) -> None:
    mira = Grower(sqlite_records)
    await mira.says(line)
    assert await there(mira) == [(None, "Vanda", 2)]
    assert (await mira.says(line)).kind == "ask"
    await mira.says(no)
    assert await there(mira) == [(None, "Vanda", 2)]
    await mira.says(line, yes)
    assert await there(mira) == [(None, "Vanda", 2), (None, "Vanda", 2)]


async def test_what_they_are_in_all_adds_what_is_missing(sqlite_records: Records) -> None:
    mira = Grower(sqlite_records)
    await mira.says("i have 2 vandas", "i have 5 vandas now")
    assert sum(n for _, _, n in await there(mira)) == 5
    await mira.says("i have 5 vandas in all")
    assert sum(n for _, _, n in await there(mira)) == 5
    assert (await mira.says("i have 3 vandas now")).kind == "ask"
    assert sum(n for _, _, n in await there(mira)) == 5


async def test_what_one_had_is_not_added(mira: Grower) -> None:
    for line in ("i had 2 vandas", "ich hatte 2 Vandas", "tenía 2 vandas", "miałam 2 vandy"):
        assert (await mira.says(line)).kind == "ask", line
    assert await there(mira) == ALL


async def test_the_kind_is_put_right(mira: Grower) -> None:
    answer = await mira.says("ruby is a yellow vanda")
    assert "yellow Vanda" in answer.reply
    assert (await there(mira))[0] == ("Ruby", "Vanda", 1)
    await mira.says("undo")
    assert await there(mira) == ALL


async def test_how_many_is_counted(mira: Grower) -> None:
    answer = await mira.says("how many phals do i have")
    assert answer.dose is None
    assert answer.reply.startswith("7 plants")


@pytest.mark.parametrize(
    "line",
    ["5 l of 20-20-20 for ruby", "fed ruby", "fed ruby and mona", "bring back ruby",
     "move ruby to the kitchen", "remind me to feed ruby every week", "ruby died",
     "5 l 20-20-20 für Ruby", "5 l de 20-20-20 para Ruby", "5 l 20-20-20 dla Ruby"],
)  # fmt: skip
async def test_of_a_plant_that_is_gone_it_says_so(mira: Grower, line: str) -> None:
    await mira.says("gave ruby away")
    answer = await mira.says(line)
    assert (answer.kind, answer.dose) == ("ask", None)
    assert "Ruby" in answer.reply
    log = (await mira.says("log")).details
    assert log is not None
    assert "fed" not in {e["kind"] for e in log["entries"]}


async def test_a_plant_that_is_gone_can_come_back(mira: Grower) -> None:
    await mira.says("gave ruby away", "add Phalaenopsis called Ruby")
    assert (await there(mira))[-1] == ("Ruby", "Phalaenopsis", 1)
    assert (await mira.says("fed ruby")).kind == "log"
    await mira.says("ruby is gone", "undo")
    assert (await there(mira))[-1] == ("Ruby", "Phalaenopsis", 1)


async def test_the_log_names_what_is_gone(mira: Grower) -> None:
    await mira.says("fed ruby", "gave ruby away")
    assert "fed: Ruby" in (await mira.says("log")).reply
    assert "fed" in (await mira.says("history of ruby")).reply


async def test_undo_tells_how_many_there_are_again(mira: Grower) -> None:
    await mira.says("sold two of the phals", "3")
    assert "5 Phalaenopsis" in (await mira.says("undo")).reply


async def test_a_kind_beside_a_name_is_no_further_plants(sqlite_records: Records) -> None:
    mira = Grower(sqlite_records)
    await mira.says("add 2 phals", "add Ruby phal")
    for line in ("fed Ruby phal", "fed the phal Ruby", "fed my Ruby phal"):
        answer = await mira.says(line)
        assert answer.reply == "Fed today: Ruby.", line
        await mira.says("undo")
    assert "2 Phalaenopsis and Ruby" in (await mira.says("fed Ruby, phals")).reply
    await mira.says("undo")
    answer = await mira.says("fed all but Ruby phal")
    assert answer.reply == "Fed today: 2 Phalaenopsis."


async def test_a_word_that_tells_a_plant_apart_is_known_like_a_name(
    sqlite_records: Records,
) -> None:
    """On a phone names are typed small: 'hugo' of 'hugo cattleya' is who is meant later."""
    mira = Grower(sqlite_records)
    await mira.says("add hugo cattleya in bark, balcony", "add a cattleya and big white vanda")
    assert "hugo Cattleya" in (await mira.says("hugo is resting")).reply
    answer = await mira.says("fed all but hugo")
    assert "hugo" not in answer.reply
    await mira.says("undo")
    answer = await mira.says("fed the hugo cattleya")
    assert answer.reply.startswith("Fed today: hugo Cattleya.")
    answer = await mira.says("fed the white ones")  # a word of ours still tells apart as before
    assert answer.reply == "Fed today: big white Vanda."
    await mira.says("add another hugo cattleya")
    assert "2 hugo Cattleya" in (await mira.says("watered hugo")).reply
    await mira.says("hugo died", "all")
    assert [kind for _, kind, _ in await there(mira)] == ["Cattleya", "Vanda"]


# --- two at once ---------------------------------------------------------------------------


async def after_another(
    mira: Grower, theirs: str, line: str, monkeypatch: pytest.MonkeyPatch
) -> Answer:
    """The answer to a line that was read before somebody else's was written."""
    writing, other = mira.records.writing, Grower(mira.records, now=mira.now)

    @asynccontextmanager
    async def late() -> AsyncIterator[AsyncSession]:
        monkeypatch.setattr(mira.records, "writing", writing)
        await other.says(theirs)
        async with writing() as session:
            yield session

    monkeypatch.setattr(mira.records, "writing", late)
    return await mira.says(line)


@pytest.mark.parametrize(
    ("count", "theirs", "line", "left", "said"),
    [
        (3, "sold one phal", "sold one phal", [1], "1 left"),
        (3, "sold one phal", "sold two phals", [], "Taken off your list"),
        (3, "sold two phals", "sold two phals", [1], "Nothing of yours was written"),
        (2, "sold one phal", "sold one phal", [], "Taken off your list"),
        (2, "sold the phals", "sold one phal", [], "Nothing of yours was written"),
        (2, "sold the phals", "sold the phals", [], "Nothing of yours was written"),
        (4, "sold one phal", "move one phal to the attic", [2, 1], "The other 2"),
        (2, "sold one phal", "move one phal to the attic", [1], "Nothing of yours was written"),
        (3, "move one phal to the attic", "sold one phal", [1, 1], "1 left"),
        (1, "call the phal Ruby", "the phal is called Opal", [1], "Nothing of yours was written"),
    ],
)
async def test_what_somebody_else_did_meanwhile_counts(
    records: Records,
    monkeypatch: pytest.MonkeyPatch,
    count: int,
    theirs: str,
    line: str,
    left: list[int],
    said: str,
) -> None:
    mira = Grower(records)
    await mira.says(f"add {count} phals in bark")
    answer = await after_another(mira, theirs, line, monkeypatch)
    assert said in answer.reply
    assert "a moment before" in answer.reply
    assert [n for _, _, n in await there(mira)] == left


async def test_with_nobody_between_nothing_is_said_of_it(mira: Grower) -> None:
    assert "a moment before" not in (await mira.says("sold one phal", "3")).reply
    assert "a moment before" not in (await mira.says("move two phals to the attic", "3")).reply
