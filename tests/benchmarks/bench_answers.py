"""Answers without records, and what a start costs: python -m tests.benchmarks.bench_answers.

`ask` in process beside the reading alone; messages through the batch command; `ask` and `serve` as
processes of their own, beside an interpreter that does nothing.
"""

from __future__ import annotations

import asyncio
import json
import statistics
import subprocess
import sys
import tempfile
import time
from datetime import date
from functools import partial

from bot.conversation.ask import Setting, ask
from bot.records import open_records
from grammar import read
from tests.benchmarks.command import alone
from tests.benchmarks.figures import ROOT, Asked, Figure
from tests.benchmarks.measuring import AS_INSTALLED, Ended, in_turn, memory_mb, ran, took_ms
from tests.channels.chatting import LINE, MIRA, Chat
from tests.channels.loopback import TOKEN, Loopback

CORPUS = ROOT / "fixtures" / "messages" / "en.jsonl"
SETTING = Setting(today=date(2026, 7, 1))
READING, NOTHING = "reading a message, language not given", "python that does nothing"


def bench(asked: Asked) -> list[Figure]:
    """An answer, answers a second, the cold start and the memory of a process."""
    texts = [json.loads(line)["text"].replace("\n", " ") for line in CORPUS.open(encoding="utf-8")]
    rounds = 3 if asked.quick else 7
    if asked.quick:
        texts = texts[::3]
    for text in texts:
        ask(text, SETTING)
    inside = in_turn(
        rounds,
        {
            READING: lambda: statistics.median(took_ms(partial(read, text)) for text in texts),
            "an answer in process": lambda: statistics.median(
                took_ms(partial(ask, text, SETTING)) for text in texts
            ),
        },
    )
    batch = tuple(_batch(texts * 10) for _ in range(2 if asked.quick else 3))
    return [
        Figure(READING, "ms", inside[READING]),
        Figure("an answer in process", "ms", inside["an answer in process"], READING),
        Figure("ask --batch", "a second", batch),
        *_starts(rounds),
        *asyncio.run(_serving(1 if asked.quick else 3)),
    ]


def _batch(texts: list[str]) -> float:
    """Answers a second, the start included."""
    start = time.perf_counter()
    out = subprocess.run(
        [sys.executable, "-m", "bot", "ask", "--json", "--batch"],
        input="\n".join(texts) + "\n",
        capture_output=True,
        text=True,
        check=True,
        env=AS_INSTALLED,
        cwd=ROOT,
    )
    return out.stdout.count("\n") / (time.perf_counter() - start)


def _starts(rounds: int) -> list[Figure]:
    commands = {
        NOTHING: ("-c", "pass"),
        "cold start of ask": ("-m", "bot", "ask", LINE),
        "cold start of ask in Polish": ("-m", "bot", "ask", "--lang", "pl", "2 l 20-20-20"),
    }
    if rounds < 5:
        del commands["cold start of ask in Polish"]
    ended: dict[str, list[Ended]] = {name: [] for name in commands}
    for turn in range(rounds + 1):
        for name, command in commands.items():
            one = ran(*command)
            if turn:  # the first fills the caches of the machine
                ended[name].append(one)
    figures = []
    for name, runs in ended.items():
        beside = None if name == NOTHING else NOTHING
        clock = tuple(1000 * one.wall_s for one in runs)
        figures.append(Figure(name, "ms", clock, beside))
    for name, runs in list(ended.items())[:2]:
        what = {NOTHING: "its memory at most"}.get(name, "memory of ask at most")
        beside = None if name == NOTHING else "its memory at most"
        figures.append(Figure(what, "MB", tuple(one.most_mb for one in runs), beside))
    cpu = tuple(1000 * one.cpu_s for one in ended["cold start of ask"])
    figures.append(Figure("processor time of a cold ask", "ms", cpu))
    return figures


async def _serving(rounds: int) -> list[Figure]:
    """The command `serve` on a loopback messenger: when its first answer is there, its memory."""
    ready, first, later = [], [], []
    for _ in range(rounds):
        with tempfile.TemporaryDirectory() as folder:
            url = f"sqlite:///{folder}/bench.db"
            records = await open_records(url)
            loopback = Loopback()
            await loopback.start()
            chat = Chat(loopback, records)
            loopback.push("message", chat.message(MIRA, LINE))
            start = time.perf_counter()
            told = {"SINKSIDE_TELEGRAM_TOKEN": TOKEN, "SINKSIDE_TELEGRAM_API_URL": loopback.url}
            serve = subprocess.Popen(
                [sys.executable, "-m", "bot", "serve", "--database", url],
                env=AS_INSTALLED | told,
                cwd=ROOT,
                stderr=subprocess.DEVNULL,
            )
            try:
                await _answered(loopback, 1)
                ready.append(time.perf_counter() - start)
                first.append(memory_mb(serve.pid))
                for text in ("add a phal in bark called Ro", "2 l for Ro", "my plants", "why"):
                    done = len(loopback.of("sendMessage"))
                    loopback.push("message", chat.message(MIRA, text))
                    await _answered(loopback, done + 1)
                later.append(memory_mb(serve.pid))
            finally:
                serve.terminate()
                serve.wait(20)
                await loopback.stop()
                await records.close()
    return [
        Figure("serve, from start to first answer", "s", tuple(ready)),
        Figure("memory of serve, first answer", "MB", tuple(first)),
        Figure("memory of serve, with records", "MB", tuple(later), "its memory at most"),
    ]


async def _answered(loopback: Loopback, count: int) -> None:
    end = time.monotonic() + 60
    while len(loopback.of("sendMessage")) < count:
        if time.monotonic() > end:
            raise RuntimeError(f"no answer: {loopback.refused}")
        await asyncio.sleep(0.01)


if __name__ == "__main__":
    alone("answers", bench)
