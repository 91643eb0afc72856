"""Advice for somebody else's plants: nothing on record is taken for theirs."""

from __future__ import annotations

import pytest

from bot.records import Records
from tests.conversation.talking import Grower

START = (
    "add 2 cattleyas in bark, 15 cm pots", "add 3 vandas in bark, 20 cm pots",
    "my powder is 20-20-20, label 1 g per litre, call it blue tub", "my tap is 14 dH",
)  # fmt: skip


@pytest.fixture
async def nora(sqlite_records: Records) -> Grower:
    nora = Grower(sqlite_records)
    await nora.says(*START)
    return nora


async def on_record(nora: Grower) -> tuple[list[tuple[str, int]], int]:
    """The plants with their numbers, and how many entries the log holds."""
    plants = ((await nora.says("show my plants")).details or {})["plants"]
    entries = ((await nora.says("log")).details or {})["entries"]
    return sorted((p["genus"], p["count"]) for p in plants), len(entries)


@pytest.mark.parametrize(
    "line",
    [
        "someone in the club has root rot on a cattleya", "a lady lost a vanda",
        "her tap is 25 dH", "a member fed her cattleyas 5 g of 20-20-20 in 1 l",
        "a lady in our club gave her vandas too much feed",
        "eine Freundin hat Wurzelfäule an einer Cattleya", "ihr Leitungswasser hat 25 dH",
        "una amiga tiene podredumbre de raíces en una cattleya",
        "koleżanka ma zgniłe korzenie u katlei",
    ],
)  # fmt: skip
async def test_nothing_of_somebody_else_is_noted(nora: Grower, line: str) -> None:
    before = await on_record(nora)
    answer = await nora.says(line)
    assert answer.reply
    assert await on_record(nora) == before
    assert "2 Cattleya" not in answer.reply
    assert "3 Vanda" not in answer.reply


# 2 g/l of a powder with 20 % N are 400 mg/l N, twice the 200 mg/l of full strength; a quarter of
# that weekly is common practice, no source.
@pytest.mark.parametrize(
    ("line", "quarter"),
    [
        ("someone in our club has a cattleya with black tips, feeds 2 g/l weekly",
         "0.25 g"),
        ("jemand im Verein hat eine Cattleya mit schwarzen Spitzen, düngt 2 g/l jede Woche",
         "0,25 g"),
        ("alguien del club tiene una cattleya con puntas negras, abona 2 g/l cada semana",
         "0,25 g"),
        ("ktoś w klubie ma katleję z czarnymi końcówkami, nawozi 2 g/l co tydzień", "0,25 g"),
    ],
)  # fmt: skip
async def test_what_somebody_else_feeds_is_judged(nora: Grower, line: str, quarter: str) -> None:
    answer = await nora.says(line)
    first = answer.reply.split("\n")[0]
    assert answer.kind == "rescue"
    assert "20-20-20" in first
    assert quarter in first


async def test_what_is_not_over_the_label_is_not_called_too_much(nora: Grower) -> None:
    answer = await nora.says("a friend has a cattleya with black tips, feeds 0.25 g/l weekly")
    assert "0.25 g" not in answer.reply.split("\n")[0]


async def test_a_dose_for_somebody_else_rests_on_no_record(nora: Grower) -> None:
    answer = await nora.says(
        "someone in the club has 20-20-20, can she use it on her cattleyas", "5 l"
    )
    assert answer.kind == "dose"
    assert "blue tub" not in answer.reply
    assert "14 °dH" not in answer.reply


async def test_one_of_several_alike_that_ails_is_put_apart(nora: Grower) -> None:
    answer = await nora.says("one vanda has root rot")
    assert "3 Vanda" not in answer.reply
    plants, _ = await on_record(nora)
    assert plants == [("Cattleya", 2), ("Vanda", 1), ("Vanda", 2)]
    await nora.says("undo")
    plants, _ = await on_record(nora)
    assert plants == [("Cattleya", 2), ("Vanda", 3)]
