"""For how much water an amount of feed is enough: a dose the other way round."""

from __future__ import annotations

from datetime import date

import pytest

from bot.conversation.ask import Setting, ask
from bot.records import Records
from tests.conversation.talking import Grower

DAY = Setting(date(2026, 6, 7))


@pytest.fixture
def mira(sqlite_records: Records) -> Grower:
    return Grower(sqlite_records)


@pytest.mark.parametrize(
    ("line", "litres", "amount", "unit"),
    [
        # a half of 200 mg/l N is 100 mg/l, which 0.5 g of 20 % N in a litre makes
        ("how many litres can i make with 5 g of 20-20-20 powder at half strength", 10.0, 5.0, "g"),
        ("how much water for 3 g of 20-20-20 powder, 50 ppm N", 12.0, 3.0, "g"),
        ("how far does 4 ml of liquid 10-5-5 go, label 2 ml per litre, half?", 4.0, 4.0, "ml"),
        ("auf wie viel Wasser kommen 2 g 20-20-20 Pulver, viertel", 8.0, 2.0, "g"),
        ("para cuántos litros da 2 g de 20-20-20 polvo a un cuarto", 8.0, 2.0, "g"),
        ("na ile wody 2 g 20-20-20 proszek, ćwierć", 8.0, 2.0, "g"),
    ],
)
async def test_the_water_is_told_for_an_amount(
    mira: Grower, line: str, litres: float, amount: float, unit: str
) -> None:
    for answer in (await mira.says(line), ask(line, DAY)):
        assert answer.dose is not None
        assert answer.dose.unit == unit
        assert answer.dose.amount == pytest.approx(amount)
        assert answer.dose.amount / answer.dose.per_litre == pytest.approx(litres)
        assert answer.unknown == []


async def test_a_feed_and_a_plant_on_record_count(mira: Grower) -> None:
    await mira.says("my powder is 20-20-20, label 1 g per litre, call it blue")
    await mira.says("add a masdevallia called Ruby in bark, 8 cm pot")
    answer = await mira.says("how many litres from 1 g of blue for Ruby?")
    assert answer.dose is not None
    # a quarter of the label for sensitive roots
    assert answer.dose.per_litre == pytest.approx(0.25)
    assert "4 l" in answer.reply


async def test_a_resting_plant_gets_none_of_it(mira: Grower) -> None:
    answer = await mira.says("how much water for 2 g of 20-20-20 powder, nobile, january")
    assert answer.kind == "no_feed"


async def test_what_is_lacking_is_asked_for(mira: Grower) -> None:
    answer = await mira.says("how many litres from 5 g?")
    assert answer.kind == "ask"
    assert "label" in answer.reply


async def test_grams_of_a_liquid_are_asked_in_its_own_measure(mira: Grower) -> None:
    answer = await mira.says("how many litres from 5 g of liquid 7-3-6?")
    assert answer.kind == "ask"
    assert "ml" in answer.reply
