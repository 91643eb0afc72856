"""How long pictures take, and their size. By hand: python -m tests.benchmarks.bench_pictures.

Drawn alone, then asked for in a conversation over 500 plants with a year's log (quick: 60), and
how long the loop stands still meanwhile.
"""

from __future__ import annotations

import asyncio
import tempfile
import time
from collections.abc import Callable
from datetime import UTC, date, datetime
from pathlib import Path

from bot.conversation.talk import Conversation
from bot.conversation.turn import Incoming
from bot.pictures import card as card_drawn
from bot.pictures import salts as salts_drawn
from bot.pictures import year as year_drawn
from bot.records import open_records
from tests.benchmarks.command import alone
from tests.benchmarks.figures import Asked, Figure
from tests.benchmarks.measuring import took_ms
from tests.pictures.drawings import LONG, card, salts, year

PLANTS = 500
NOW = datetime(2026, 11, 20, 9, tzinfo=UTC)
SALTS = "salts of Roahni as a picture"
KINDS = ["phal", "vanda", "masdevallia", "cymbidium", "oncidium", "paph", "cattleya", "brassia"]


def _drawn(name: str, draw: Callable[[], bytes], rounds: int) -> list[Figure]:
    """The first, those after it [ms], and the size [kB]."""
    first = took_ms(draw)
    later = tuple(took_ms(draw) for _ in range(rounds))
    return [
        Figure(name, "ms", later),
        Figure(f"{name}, the first", "ms", (first,), name),
        Figure(f"{name}, its size", "kB", (len(draw()) / 1000,)),
    ]


def _name(number: int) -> str:
    """A name of letters alone."""
    return "Ro" + "".join(chr(ord("a") + digit) for digit in divmod(number, 26)) + "ni"


async def _talk(folder: Path, quick: bool) -> list[Figure]:
    records = await open_records(f"sqlite:///{folder / 'bench.db'}")
    conversation = Conversation(records)

    async def say(text: str, day: date) -> float:
        said_at = NOW.replace(month=day.month, day=day.day)
        start = time.perf_counter()
        await conversation.answer(Incoming(text, "Mira", "bench", said_at, today=day))
        return 1000 * (time.perf_counter() - start)

    await say("I live in Porto", date(2026, 1, 1))
    await say("my powder is 20-20-20, label 1 g per litre, call it blue tub", date(2026, 1, 1))
    for number in range(60 if quick else PLANTS):
        kind = KINDS[number % len(KINDS)]
        await say(f"add a {kind} called {_name(number)} in bark, 12 cm pot", date(2026, 1, 1))
    for month in range(1, 11):
        for day in (3, 10, 17, 24):
            what = "flushed" if day == 24 else "fed"
            await say(f"{what} everything", date(2026, month, day))
    today = NOW.date()
    figures = []
    for text in ("show my year", SALTS, "2 l for the phals", "card"):
        taken = [await say(text, today) for _ in range(3 if quick else 9)]
        figures.append(Figure(f"asked: {text}", "ms", tuple(taken)))
    figures += await _stillness(conversation, today, 2 if quick else 5)
    await records.close()
    return figures


async def _stillness(conversation: Conversation, today: date, rounds: int) -> list[Figure]:
    """How long the loop stands still while a picture is made, at most [ms]."""
    longest = 0.0
    done = asyncio.Event()

    async def watch() -> None:
        nonlocal longest
        while not done.is_set():
            before = time.perf_counter()
            await asyncio.sleep(0)
            longest = max(longest, time.perf_counter() - before)

    watching = asyncio.create_task(watch())
    found: dict[str, list[float]] = {}
    for _ in range(rounds):
        for text in (SALTS, "card", "show my year"):
            longest = 0.0
            await conversation.answer(Incoming(text, "Mira", "bench", NOW, today=today))
            found.setdefault(text, []).append(1000 * longest)
    done.set()
    await watching
    return [Figure(f"the loop stands still: {t}", "ms", tuple(v)) for t, v in found.items()]


def bench(asked: Asked) -> list[Figure]:
    """Pictures drawn and asked for [ms], their sizes [kB]."""
    drawings: dict[str, Callable[[], bytes]] = {
        "card": lambda: card_drawn.draw(card()),
        "card, long": lambda: card_drawn.draw(card(text=LONG)),
        "salts, half a year": lambda: salts_drawn.draw(salts()),
        "year, 14 rows": lambda: year_drawn.draw(year()),
    }
    figures = []
    for name, draw in drawings.items():
        figures += _drawn(name, draw, 3 if asked.quick else 9)
    with tempfile.TemporaryDirectory() as folder:
        return figures + asyncio.run(_talk(Path(folder), asked.quick))


if __name__ == "__main__":
    alone("pictures", bench)
