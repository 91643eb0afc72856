"""Answers a second through the whole road, by hand: python -m tests.benchmarks.bench_answers."""

from __future__ import annotations

import json
import statistics
import subprocess
import sys
import time
from datetime import date
from pathlib import Path

from bot.conversation.ask import Setting, ask

CORPUS = Path(__file__).parents[2] / "fixtures" / "messages" / "en.jsonl"


def main() -> None:
    """Print the median answer in process, and messages a second through the batch command."""
    texts = [json.loads(line)["text"].replace("\n", " ") for line in CORPUS.open(encoding="utf-8")]
    setting = Setting(today=date(2026, 7, 1))
    for text in texts:
        ask(text, setting)
    times = []
    for text in texts * 5:
        start = time.perf_counter()
        ask(text, setting)
        times.append(time.perf_counter() - start)
    print(f"answer in process: median {1e3 * statistics.median(times):.2f} ms")
    lines = "\n".join(texts * 20) + "\n"
    start = time.perf_counter()
    command = [sys.executable, "-m", "bot", "ask", "--json", "--batch"]
    out = subprocess.run(command, input=lines, capture_output=True, text=True, check=True)
    seconds = time.perf_counter() - start
    count = out.stdout.count("\n")
    print(f"batch: {count} messages in {seconds:.1f} s, {count / seconds:.0f} a second")


if __name__ == "__main__":
    main()
