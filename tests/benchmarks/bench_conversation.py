"""How long whole answers take with records: 10,000 owners, one with 500 plants, 20,000 entries.

By hand: python -m tests.benchmarks.bench_conversation; on a SQLite file that is deleted
afterwards. Reading, computing and writing included. Quick: 1,000 owners.
"""

from __future__ import annotations

import asyncio
import tempfile
import time
from datetime import timedelta
from statistics import median

from sqlalchemy import update

from bot.conversation.talk import Conversation
from bot.conversation.turn import Incoming
from bot.records import open_records
from bot.records.models import Plant
from tests.benchmarks.bench_records import BIG, DAY, NOW, OWNERS, fill
from tests.benchmarks.command import alone
from tests.benchmarks.figures import Asked, Figure

KINDS = ("Phalaenopsis", "Cattleya", "Masdevallia", "Vanda", "Paphiopedilum", "Oncidium")
MEDIA = ("bark", "sphagnum", "clay_pellets", "mounted", "mixed", "coconut")
MESSAGES = (
    "5 l 20-20-20 powder quarter phal",
    "2 l for plant 7",
    "half that",
    "why",
    "plant 9 is resting",
    "clear water for plant 12",
    "what did plant 7 get since january",
    "my shelf",
    "undo",
    "add a phal in bark",
    "my plants",
    "what's on today",
    "plan for sunday",
    "fed everything, quarter",
    "undo",
)


async def measured(url: str, quick: bool) -> list[Figure]:
    """Each message [ms], and the median of all."""
    records = await open_records(url)
    await fill(records, 1_000 if quick else OWNERS)
    async with records.writing() as session:
        for place in range(6):
            await session.execute(
                update(Plant)
                .where(Plant.id % 6 == place)
                .values(genus=KINDS[place], medium=MEDIA[(place + 1) % 6])
            )
    talk = Conversation(records)

    async def said(text: str, number: int) -> float:
        at = NOW + timedelta(seconds=number)
        incoming = Incoming(text, BIG.external_id, BIG.channel, at, DAY)
        start = time.perf_counter()
        answer = await talk.answer(incoming)
        assert answer.kind != "fault"
        return 1000 * (time.perf_counter() - start)

    await said("my powder is 20-20-20, label 1 g per litre, call it blue tub", 0)
    rounds: list[list[float]] = []
    for run in range(5 if quick else 15):
        lines = enumerate(MESSAGES)
        rounds.append([await said(text, run * 100 + place) for place, text in lines])
    await records.close()
    every = "the median of these messages"
    each = {
        f"{text} ({MESSAGES[:place].count(text) + 1})" if MESSAGES.count(text) > 1 else text: taken
        for place, (text, taken) in enumerate(zip(MESSAGES, zip(*rounds, strict=True), strict=True))
    }
    return [
        Figure(every, "ms", tuple(median(taken) for taken in rounds)),
        *(Figure(text, "ms", taken, every) for text, taken in each.items()),
    ]


def bench(asked: Asked) -> list[Figure]:
    """Answers to somebody with 500 plants [ms]."""
    with tempfile.TemporaryDirectory() as folder:
        return asyncio.run(measured(f"sqlite:///{folder}/bench.db", asked.quick))


if __name__ == "__main__":
    alone("conversation", bench)
