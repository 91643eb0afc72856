"""What four languages cost. By hand: python -m tests.benchmarks.bench_languages.

Reading with all four in question, beside reading with the one that was given; the time to the
first answer and the memory of a fresh process, with English alone and with all four.
"""

from __future__ import annotations

import statistics
import subprocess
import sys
from functools import partial

from grammar import read
from tests.benchmarks.command import alone
from tests.benchmarks.figures import ROOT, Asked, Figure
from tests.benchmarks.measuring import AS_INSTALLED, in_turn, took_ms
from tests.grammar.told import messages

LANGUAGES = ("en", "de", "es", "pl")

_PROCESS = """
import resource, sys, time
start = time.perf_counter()
from grammar import read
among = tuple(sys.argv[1].split(","))
read("5 litres, 20-20-20 powder, sphagnum, winter, quarter strength", among=among)
first_ms = 1000 * (time.perf_counter() - start)
for code in among:
    read("2 l 20-20-20", code)
    read("gibtsnicht 2 l 20-20-20 nieznane", usual=code, among=among)
from grammar.lexicon import load
for code in among:
    load(code)
status = open("/proc/self/status").read()
rss_kb = int(status.partition("VmRSS:")[2].split()[0])
print(first_ms, rss_kb / 1024)
"""


def _started(among: str) -> tuple[float, float]:
    done = subprocess.run(
        [sys.executable, "-c", _PROCESS, among],
        capture_output=True,
        text=True,
        check=True,
        env=AS_INSTALLED,
        cwd=ROOT,
    )
    first_ms, rss_mb = map(float, done.stdout.split())
    return first_ms, rss_mb


def bench(asked: Asked) -> list[Figure]:
    """Reading times by language [ms], then start [ms] and memory [MB] of one and of four."""
    figures = []
    for code in LANGUAGES:
        texts = [m["text"] for m in messages(f"{code}.jsonl")]
        if asked.quick:
            texts = texts[::2]
        heard, given = f"{code}, heard among four", f"{code}, given"
        for text in texts:
            read(text)
        acts = {given: partial(_median, texts, code), heard: partial(_median, texts, None)}
        found = in_turn(3 if asked.quick else 7, acts)
        figures += [
            Figure(given, "ms", found[given]),
            Figure(heard, "ms", found[heard], given),
        ]
    one, four = [], []
    for _ in range(3 if asked.quick else 7):  # in turn, so that a busy moment falls on both
        one.append(_started("en"))
        four.append(_started(",".join(LANGUAGES)))
    for place, what, unit in ((0, "first reading of a process", "ms"), (1, "its memory", "MB")):
        alone_, all_ = f"{what}, English alone", f"{what}, all four languages"
        figures += [
            Figure(alone_, unit, tuple(run[place] for run in one)),
            Figure(all_, unit, tuple(run[place] for run in four), alone_),
        ]
    return figures


def _median(texts: list[str], language: str | None) -> float:
    return statistics.median(took_ms(partial(read, text, language)) for text in texts)


if __name__ == "__main__":
    alone("languages", bench)
