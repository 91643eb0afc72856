"""How long one message takes to read. By hand: python -m tests.benchmarks.bench_reading.

`--others PYTHON`, an interpreter of an environment that has quantulum3, ingredient-parser-nlp and
dateparser (the project depends on none of them): they go through the same lines in turn with ours.
They find quantities, one ingredient or dates; ours reads the whole message.
"""

from __future__ import annotations

import contextlib
import json
import statistics
import subprocess
from collections.abc import Callable, Iterator
from functools import partial
from pathlib import Path

from grammar import Names, read
from tests.benchmarks.command import alone
from tests.benchmarks.figures import Asked, Figure
from tests.benchmarks.measuring import in_turn, took_ms
from tests.grammar.told import messages

#: Repeated to the longest message that is read, these are the slowest found so far.
LONG = ("sphagnim ", "hardnes ", "phalenopsys wintr powdre ", "2 l ", "1 g per ", "1 250 ")
OURS = "an English message"
#: What somebody with records has called things.
NAMED = Names(tuple(f"{kind} {n}" for kind in ("phal", "vanda", "paph") for n in range(1, 8)))


def bench(asked: Asked) -> list[Figure]:
    """Medians and 95th percentiles over the English messages, the first, the slowest [ms]."""
    files = ("en.jsonl", "en_people.jsonl")
    texts = [m["text"] for f in files for m in messages(f) if m.get("lang", "en") == "en"]
    first = took_ms(lambda: read("2 l", "en"))
    if asked.quick:
        texts = texts[::4]
    with contextlib.ExitStack() as stack:
        readers: dict[str, Callable[[], float]] = {OURS: partial(_median_ms, texts)}
        if asked.others:
            readers |= stack.enter_context(_others(asked.others, texts))
        found = in_turn(3 if asked.quick else 5, readers)
    named = tuple(
        statistics.median(took_ms(partial(read, text, "en", names=NAMED)) for text in texts[::5])
        for _ in range(3)
    )
    long = in_turn(3, {piece: partial(_long_ms, piece) for piece in LONG})
    slowest = max(long, key=lambda piece: statistics.median(long[piece]))
    p95 = tuple(_p95_ms(texts) for _ in range(3))
    return [
        Figure(OURS, "ms", found.pop(OURS)),
        *(Figure(name, "ms", times, OURS) for name, times in found.items()),
        Figure("an English message, names on record", "ms", named, OURS),
        Figure("p95 of English messages", "ms", p95, OURS),
        Figure("the first message of a process", "ms", (first,), OURS),
        Figure("2,000 characters of the slowest kind", "ms", long[slowest], OURS),
    ]


def _times_ms(texts: list[str]) -> list[float]:
    return [took_ms(partial(read, text, "en")) for text in texts]


def _median_ms(texts: list[str]) -> float:
    return statistics.median(_times_ms(texts))


def _p95_ms(texts: list[str]) -> float:
    return statistics.quantiles(_times_ms(texts), n=20)[-1]


def _long_ms(piece: str) -> float:
    return took_ms(lambda: read((piece * 2000)[:2000], "en"))


def _asked_ms(asked: Callable[[str], str], name: str) -> float:
    return float(asked(name))


@contextlib.contextmanager
def _others(python: str, texts: list[str]) -> Iterator[dict[str, Callable[[], float]]]:
    """Readers of the other interpreter; each act is one round of one of them over all texts."""
    script = str(Path(__file__).with_name("other_readers.py"))
    with subprocess.Popen(
        [python, script],
        stdin=subprocess.PIPE,
        stdout=subprocess.PIPE,
        stderr=subprocess.DEVNULL,
        text=True,
    ) as child:
        assert child.stdin is not None
        assert child.stdout is not None
        put, got = child.stdin, child.stdout

        def asked(line: str) -> str:
            put.write(line + "\n")
            put.flush()
            if not (answer := got.readline()):
                raise RuntimeError(f"{python} has none of the other readers, or broke")
            return answer

        names = json.loads(asked(json.dumps(texts)))
        try:
            yield {name: partial(_asked_ms, asked, name) for name in names}
        finally:
            put.close()


if __name__ == "__main__":
    alone("reading", bench)
