"""Clear water that was asked for, and a dose in a mix of waters."""

from __future__ import annotations

import pytest

from bot.records import Records
from tests.conversation.talking import Grower

ON_RECORD = (
    "my plants: 2 phals in bark",
    "my powder is 20-20-20, label 1 g per litre",
    "my tap water has 18 dH",
)


@pytest.fixture
async def mira(sqlite_records: Records) -> Grower:
    grower = Grower(sqlite_records)
    await grower.says(*ON_RECORD)
    return grower


async def test_clear_water_gets_no_feed_and_a_word_on_the_flush(mira: Grower) -> None:
    answer = await mira.says("2 l clear water for the phals")
    assert (answer.kind, answer.dose) == ("no_feed", None)
    # twice the pots: UC ANR, houseplants; two pots of 12 cm, as none was told
    assert "2 l of clear water" in answer.reply
    assert "3.8 l" in answer.reply
    enough = await mira.says("8 l clear water for the phals")
    assert "That is enough for the monthly flush" in enough.reply


async def test_half_rain_leaves_the_dose_and_halves_the_hardness(mira: Grower) -> None:
    first = await mira.says("2 l for the phals")
    mixed = await mira.says("and with half rain water")
    assert first.dose is not None
    assert mixed.dose is not None
    assert mixed.dose.amount == pytest.approx(first.dose.amount)
    assert "50 % rain water" in mixed.reply
    assert "9 °dH" in mixed.reply


async def test_half_rain_of_a_water_nobody_told_is_asked_for(sqlite_records: Records) -> None:
    grower = Grower(sqlite_records)
    await grower.says(*ON_RECORD[:2])
    answer = await grower.says("2 l half rain water for the phals")
    assert answer.dose is not None
    assert "send its hardness" in answer.reply


async def test_a_mix_without_a_dose_is_only_told(mira: Grower) -> None:
    answer = await mira.says("half and half with rain")
    assert (answer.kind, answer.dose) == ("water", None)
    assert "9 °dH" in answer.reply


async def test_figures_are_those_of_the_amount_that_is_said(sqlite_records: Records) -> None:
    grower = Grower(sqlite_records)
    await grower.says("my syringe shows 0.1 ml")
    answer = await grower.says("1.79 l, miltoniopsis, 8-8-8 liquid, label 2 ml per litre, 1/4")
    assert answer.dose is not None
    said = float(answer.reply.split(" ", 1)[0])
    share = said / answer.dose.amount
    assert share < 0.95  # so much is lost to the steps of the syringe
    told = float(answer.reply.split("N ", 1)[1].split(",", 1)[0])
    exact = answer.dose.elements_mg_l["N"]
    assert told == pytest.approx(exact * share, rel=0.02)
