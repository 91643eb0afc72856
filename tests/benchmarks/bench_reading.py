"""How long one message takes to read. By hand: python -m tests.benchmarks.bench_reading.

Where quantulum3 is importable (in an environment of its own: the project does not depend on
it), it extracts the quantities of the same lines in turn, and the ratio is printed.
"""

from __future__ import annotations

import contextlib
import importlib
import statistics
import time
from collections.abc import Callable
from typing import Any

from grammar import read
from tests.grammar.told import messages

ROUNDS = 5
#: Repeated to the longest message that is read, these are the slowest found so far.
LONG = ("sphagnim ", "hardnes ", "phalenopsys wintr powdre ", "2 l ", "1 g per ", "1 250 ")


def main() -> None:
    """Print the median and the 95th percentile over the English messages [ms]."""
    files = ("en.jsonl", "en_people.jsonl")
    texts = [m["text"] for f in files for m in messages(f) if m.get("lang", "en") == "en"]
    start = time.perf_counter()
    read("2 l", "en")
    first_ms = 1000 * (time.perf_counter() - start)
    readers: dict[str, Callable[[str], Any]] = {"read": lambda text: read(text, "en")}
    try:
        other = importlib.import_module("quantulum3.parser").parse
    except ImportError:
        print("quantulum3 is not here: no ratio")
    else:
        readers["quantulum3"] = other
    times_ms = {name: _times_ms(texts, reader) for name, reader in readers.items()}
    print(f"{len(texts)} messages, {ROUNDS} rounds; first {first_ms:.0f} ms")
    for name, times in times_ms.items():
        p95_ms = statistics.quantiles(times, n=20)[-1]
        print(f"{name}: median {statistics.median(times):.3f} ms, p95 {p95_ms:.3f} ms")
    if "quantulum3" in times_ms:
        ratio = statistics.median(times_ms["quantulum3"]) / statistics.median(times_ms["read"])
        print(f"read is {ratio:.1f} times faster")
    for piece in LONG:
        start = time.perf_counter()
        read((piece * 2000)[:2000], "en")
        print(f"2,000 characters of {piece!r}: {1000 * (time.perf_counter() - start):.0f} ms")


def _times_ms(texts: list[str], reader: Callable[[str], Any]) -> list[float]:
    for text in texts[:30]:
        reader(text)
    times = []
    for _ in range(ROUNDS):
        for text in texts:
            start = time.perf_counter()
            with contextlib.suppress(Exception):  # the other reader stumbles over some lines
                reader(text)
            times.append(1000 * (time.perf_counter() - start))
    return times


if __name__ == "__main__":
    main()
