"""How long whole answers take with records: 10,000 owners, one with 500 plants, 20,000 entries.

Run by hand: `python -m tests.benchmarks.bench_conversation [URL]`; without a URL on a SQLite
file that is deleted afterwards. A URL must name an empty database. Prints medians in ms, reading,
computing and writing included.
"""

from __future__ import annotations

import asyncio
import statistics
import sys
import tempfile
import time
from datetime import timedelta

from sqlalchemy import update

from bot.conversation.talk import Conversation
from bot.conversation.turn import Incoming
from bot.records import open_records
from bot.records.models import Plant
from tests.benchmarks.bench_records import BIG, DAY, NOW, fill

RUNS = 15
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
    "fed everything, quarter",
    "undo",
)


async def measure(url: str) -> None:
    """Print the median of each message."""
    records = await open_records(url)
    await fill(records)
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
    times: dict[str, list[float]] = {}
    for run in range(RUNS):
        for place, text in enumerate(MESSAGES):
            times.setdefault(text, []).append(await said(text, run * 100 + place))
    for text, taken in times.items():
        print(f"{statistics.median(taken):8.1f}  {max(taken):8.1f}  {text}")
    every = [statistics.median(t) for t in times.values()]
    print(f"{statistics.median(every):8.1f}            median of all lines")
    await records.close()


if __name__ == "__main__":
    with tempfile.TemporaryDirectory() as folder:
        asyncio.run(measure(sys.argv[1] if len(sys.argv) > 1 else f"sqlite:///{folder}/bench.db"))
