"""What four languages cost. By hand: python -m tests.benchmarks.bench_languages.

Reading with all four in question, beside reading with the one that was given; the time to the
first answer and the memory of a fresh process, with English alone and with all four.
"""

from __future__ import annotations

import statistics
import subprocess
import sys
import time

from grammar import read
from tests.grammar.told import messages

LANGUAGES = ("en", "de", "es", "pl")
ROUNDS = 3
STARTS = 7

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
        [sys.executable, "-c", _PROCESS, among], capture_output=True, text=True, check=True
    )
    first_ms, rss_mb = map(float, done.stdout.split())
    return first_ms, rss_mb


def main() -> None:
    """Print reading times by language [ms], then start [ms] and memory [MB] of one and of four."""
    for code in LANGUAGES:
        texts = [m["text"] for m in messages(f"{code}.jsonl")]
        heard, given = _median(texts, None), _median(texts, code)
        print(f"{code}: {len(texts)} messages, median {heard:.3f} ms heard, {given:.3f} ms given")
    one, four = [], []
    for _ in range(STARTS):  # in turn, so that a busy moment falls on both
        one.append(_started("en"))
        four.append(_started(",".join(LANGUAGES)))
    start_ms = [statistics.median(s[0] for s in runs) for runs in (one, four)]
    rss_mb = [statistics.median(s[1] for s in runs) for runs in (one, four)]
    print(
        f"first answer: English alone {start_ms[0]:.0f} ms, four {start_ms[1]:.0f} ms, "
        f"{start_ms[1] - start_ms[0]:+.0f} ms, {start_ms[1] / start_ms[0]:.2f} times"
    )
    print(f"memory, all loaded: English alone {rss_mb[0]:.1f} MB, four {rss_mb[1]:.1f} MB, "
          f"{rss_mb[1] - rss_mb[0]:+.1f} MB")  # fmt: skip


def _median(texts: list[str], language: str | None) -> float:
    times = []
    for text in texts:
        read(text, language)
    for _ in range(ROUNDS):
        for text in texts:
            start = time.perf_counter()
            read(text, language)
            times.append(1000 * (time.perf_counter() - start))
    return statistics.median(times)


if __name__ == "__main__":
    main()
