"""How long pictures take, and their size. By hand: python -m tests.benchmarks.bench_pictures.

Drawn alone, then asked for in a conversation over 500 plants with a year's log.
"""

from __future__ import annotations

import asyncio
import tempfile
import time
from collections.abc import Callable
from datetime import UTC, date, datetime
from pathlib import Path
from statistics import median

from bot.conversation.talk import Conversation
from bot.conversation.turn import Incoming
from bot.pictures import card as card_drawn
from bot.pictures import salts as salts_drawn
from bot.pictures import year as year_drawn
from bot.records import open_records
from tests.pictures.drawings import LONG, card, salts, year

RUNS = 9
PLANTS = 500
NOW = datetime(2026, 11, 20, 9, tzinfo=UTC)
SALTS = "salts of Roahni as a picture"
KINDS = ["phal", "vanda", "masdevallia", "cymbidium", "oncidium", "paph", "cattleya", "brassia"]


def _timed(draw: Callable[[], bytes]) -> tuple[float, float, float, int]:
    """First, median and slowest of the others [ms], and the size [bytes]."""
    taken, content = [], b""
    for _ in range(RUNS + 1):
        start = time.perf_counter()
        content = draw()
        taken.append(1000 * (time.perf_counter() - start))
    return taken[0], median(taken[1:]), max(taken[1:]), len(content)


def _name(number: int) -> str:
    """A name of letters alone."""
    return "Ro" + "".join(chr(ord("a") + digit) for digit in divmod(number, 26)) + "ni"


async def _talk(folder: Path) -> None:
    records = await open_records(f"sqlite:///{folder / 'bench.db'}")
    conversation = Conversation(records)

    async def say(text: str, day: date) -> tuple[float, int]:
        said_at = NOW.replace(month=day.month, day=day.day)
        incoming = Incoming(text, "Mira", "bench", said_at, today=day)
        start = time.perf_counter()
        answer = await conversation.answer(incoming)
        taken = 1000 * (time.perf_counter() - start)
        return taken, len(answer.picture.content) if answer.picture is not None else 0

    await say("I live in Porto", date(2026, 1, 1))
    await say("my powder is 20-20-20, label 1 g per litre, call it blue tub", date(2026, 1, 1))
    for number in range(PLANTS):
        kind = KINDS[number % len(KINDS)]
        await say(f"add a {kind} called {_name(number)} in bark, 12 cm pot", date(2026, 1, 1))
    for month in range(1, 11):
        for day in (3, 10, 17, 24):
            what = "flushed" if day == 24 else "fed"
            await say(f"{what} everything", date(2026, month, day))
    today = NOW.date()
    for text in ("show my year", SALTS, "2 l for the phals", "card"):
        taken = [await say(text, today) for _ in range(RUNS)]
        times = [ms for ms, _ in taken]
        print(f"{text!r}: median {median(times):.0f} ms, most {max(times):.0f}, "
              f"{taken[-1][1] / 1000:.0f} kB")  # fmt: skip
    await _in_between(conversation, today)
    await records.close()


async def _in_between(conversation: Conversation, today: date) -> None:
    """How long the loop stands still while a picture is made."""
    longest = 0.0
    done = asyncio.Event()

    async def watch() -> None:
        nonlocal longest
        while not done.is_set():
            before = time.perf_counter()
            await asyncio.sleep(0)
            longest = max(longest, time.perf_counter() - before)

    watching = asyncio.create_task(watch())
    for text in (SALTS, "card", "show my year"):
        longest = 0.0
        await conversation.answer(Incoming(text, "Mira", "bench", NOW, today=today))
        print(f"{text!r}: the loop stood still for at most {1000 * longest:.0f} ms")
    done.set()
    await watching


def main() -> None:
    """Print first, median and slowest [ms], and sizes [kB]."""
    drawings: dict[str, Callable[[], bytes]] = {
        "card": lambda: card_drawn.draw(card()),
        "card, long": lambda: card_drawn.draw(card(text=LONG)),
        "salts, half a year": lambda: salts_drawn.draw(salts()),
        "year, 14 rows": lambda: year_drawn.draw(year()),
    }
    for name, draw in drawings.items():
        first, usual, most, size = _timed(draw)
        times = f"first {first:.0f} ms, then {usual:.0f} (most {most:.0f})"
        print(f"{name}: {times}, {size / 1000:.0f} kB")
    with tempfile.TemporaryDirectory() as folder:
        asyncio.run(_talk(Path(folder)))


if __name__ == "__main__":
    main()
