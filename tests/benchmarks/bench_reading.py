"""How long one message takes to read. By hand: python -m tests.benchmarks.bench_reading."""

from __future__ import annotations

import statistics
import time

from grammar import read
from tests.grammar.told import messages

ROUNDS = 5


def main() -> None:
    """Print the median and the 95th percentile over the English messages [ms]."""
    files = ("en.jsonl", "en_people.jsonl", "en_traps.jsonl")
    texts = [m["text"] for f in files for m in messages(f) if m.get("lang", "en") == "en"]
    start = time.perf_counter()
    read("2 l", "en")
    first_ms = 1000 * (time.perf_counter() - start)
    times_ms = []
    for _ in range(ROUNDS):
        for text in texts:
            start = time.perf_counter()
            read(text, "en")
            times_ms.append(1000 * (time.perf_counter() - start))
    p95_ms = statistics.quantiles(times_ms, n=20)[-1]
    median_ms = statistics.median(times_ms)
    print(f"{len(texts)} messages, {ROUNDS} rounds")
    print(f"first {first_ms:.0f} ms, median {median_ms:.3f} ms, p95 {p95_ms:.3f} ms")


if __name__ == "__main__":
    main()
