"""Plants on record that are told to be called something get that name, and are no new ones."""

from __future__ import annotations

import pytest

from bot.records import Records, owners, plants
from tests.conversation.talking import Grower


async def there(mira: Grower) -> list[tuple[str | None, str | None, int]]:
    """Name, kind and number of each entry, as they were added."""
    async with mira.records.reading() as session:
        owner = await owners.find(session, mira.address)
        assert owner is not None
        found = await plants.listing(session, owner.id)
    return [(p.name, p.genus, p.count) for p in sorted(found, key=lambda p: p.id)]


@pytest.mark.parametrize(
    ("first", "line", "back"),
    [
        ("add a cattleya", "the cattleya is called Sunny", "undo"),
        ("add a cattleya", "my cattleya's name is Sunny", "undo"),
        ("neue Cattleya in Rinde", "die Cattleya heißt Sunny", "rückgängig"),
        ("añade una cattleya", "la cattleya se llama Sunny", "deshacer"),
        ("dodaj cattleyę", "cattleya nazywa się Sunny", "cofnij"),
    ],
)
async def test_the_only_one_of_its_kind_gets_the_name(
    sqlite_records: Records, first: str, line: str, back: str
) -> None:
    mira = Grower(sqlite_records)
    answer = await mira.says(first, line)
    assert "Sunny" in answer.reply
    assert await there(mira) == [("Sunny", "Cattleya", 1)]
    await mira.says(back)
    assert await there(mira) == [(None, "Cattleya", 1)]


async def test_one_of_several_alike_becomes_an_entry_of_its_own(sqlite_records: Records) -> None:
    mira = Grower(sqlite_records)
    answer = await mira.says("add 4 phals", "one of the phals is called Max")
    assert "other 3" in answer.reply
    await mira.says("the other phals are called Otto and Anna")
    assert await there(mira) == [
        (None, "Phalaenopsis", 1),
        ("Max", "Phalaenopsis", 1),
        ("Otto", "Phalaenopsis", 1),
        ("Anna", "Phalaenopsis", 1),
    ]
    await mira.says("the phal is called Rita")
    assert ("Rita", "Phalaenopsis", 1) in await there(mira)


async def test_of_several_entries_it_is_asked_which(sqlite_records: Records) -> None:
    mira = Grower(sqlite_records)
    await mira.says("add a phal in the kitchen", "add a phal in the bathroom")
    assert (await mira.says("the phal is called Max")).ask
    await mira.says("2")
    assert [name for name, _, _ in await there(mira)] == [None, "Max"]


async def test_a_place_says_which(sqlite_records: Records) -> None:
    mira = Grower(sqlite_records)
    await mira.says("add a phal in the kitchen", "add a phal in the bathroom")
    await mira.says("the phal in the bathroom is called Lisa")
    assert [name for name, _, _ in await there(mira)] == [None, "Lisa"]


async def test_fewer_names_than_entries_change_nothing(sqlite_records: Records) -> None:
    mira = Grower(sqlite_records)
    for place in ("kitchen", "bathroom", "balcony"):
        await mira.says(f"add a phal in the {place}")
    before = await there(mira)
    assert (await mira.says("the two phals are called Max and Otto")).ask
    assert await there(mira) == before


@pytest.mark.parametrize(
    "line",
    [
        "my new cattleya is called Bob",
        "add a cattleya, she is called Bob",
        "a vanda is called Bob",
    ],
)
async def test_new_ones_are_still_put_on_record(sqlite_records: Records, line: str) -> None:
    mira = Grower(sqlite_records)
    await mira.says("add a cattleya", line)
    found = await there(mira)
    assert found[0] == (None, "Cattleya", 1)
    assert found[1][0] == "Bob"


async def test_a_name_that_is_taken_changes_nothing(sqlite_records: Records) -> None:
    mira = Grower(sqlite_records)
    await mira.says("add a vanda called Sunny", "add 2 cattleyas")
    answer = await mira.says("one cattleya is called Sunny")
    assert answer.kind == "refused"
    assert await there(mira) == [("Sunny", "Vanda", 1), (None, "Cattleya", 2)]
