"""Plants on record and others, named in one message: each of them counts."""

from __future__ import annotations

import pytest

from bot.records import Records
from tests.conversation.talking import Grower

SHELF = "my powder is 20-20-20, label 1 g per litre, call it blue tub"
PHALS = "add 3 phals in bark, 12 cm pots"
RUBY = "add a masdevallia in sphagnum called Ruby"


@pytest.fixture
async def mira(sqlite_records: Records) -> Grower:
    grower = Grower(sqlite_records)
    await grower.says(SHELF, PHALS, RUBY)
    return grower


@pytest.mark.parametrize(
    "line",
    [
        "3 phals and a miltoniopsis, 4 l, half strength",
        "4 l, half strength, phals and dracula",
        "half strength for the phals and a phragmipedium, 4 l",
        "4 l for Ruby and a miltoniopsis, half strength",
    ],
)
async def test_one_that_is_not_on_record_holds_the_dose_down(mira: Grower, line: str) -> None:
    answer = await mira.says(line)
    assert answer.dose is not None
    # A quarter of the label and 50 mg/l N, the most for sensitive roots.
    assert answer.dose.elements_mg_l["N"] <= 50 * (1 + 1e-9)
    assert "decides" not in answer.reply  # that was said of plants on record only


async def test_one_that_bears_more_changes_nothing(mira: Grower) -> None:
    alone = await mira.says("4 l for Ruby, half strength")
    both = await mira.says("4 l for Ruby and a vanda, half strength")
    assert alone.dose is not None
    assert both.dose is not None
    assert both.dose.amount == alone.dose.amount


async def test_one_that_rests_keeps_feed_from_all(mira: Grower) -> None:
    answer = await mira.says("4 l for the phals and a resting catasetum")
    assert answer.kind == "no_feed"


async def test_types_on_record_are_those_of_their_genus(mira: Grower) -> None:
    await mira.says("add a dendrobium nobile in bark called Noble")
    plain = await mira.says("4 l for Noble, half strength")
    genus = await mira.says("4 l for the dendrobiums, half strength")
    assert plain.dose is not None
    assert genus.dose == plain.dose


@pytest.mark.parametrize("line", ["Ruby, 1 l, third", "1 l for Ruby, a third", "big Ruby, 1 l"])
async def test_a_name_is_meant_whatever_tells_plants_apart_elsewhere(
    mira: Grower, line: str
) -> None:
    await mira.says("Ruby is resting")
    assert (await mira.says(line)).kind == "no_feed"


async def test_a_word_of_a_strength_narrows_no_kind(mira: Grower) -> None:
    await mira.says("Ruby is resting")
    assert (await mira.says("masdevallias, 1 l, third")).kind == "no_feed"


async def test_all_but_some_means_the_others(mira: Grower) -> None:
    answer = await mira.says("4 l for all but phals, half strength")
    assert answer.dose is not None
    assert "Ruby" in answer.reply
    assert answer.dose.elements_mg_l["N"] <= 50 * (1 + 1e-9)
