"""Fuzz one target for so long: `python -m tests.fuzzing reading --seconds 600 --corpus FOLDER`.

Needs atheris, which is no dependency of ours. What breaks a law is written to FOLDER-found, once
for each place it breaks at, and fuzzing goes on; what takes long is listed there in slow.txt. With
`--keep` the corpus is minimised instead, and a small part of it kept in `fixtures/fuzz`.
"""

from __future__ import annotations

import argparse
import hashlib
import importlib
import json
import logging
import random
import shlex
import subprocess
import sys
import time
import traceback
from collections.abc import Iterable
from pathlib import Path
from types import FrameType
from typing import Any

TARGETS = ("reading", "answering", "callbacks", "importing")
#: Slower than this, instrumented, is looked at [s of the processor]; a message of 4096 characters
#: without instruments shall take a third of it.
SLOW_S = 0.3
#: Of the minimised corpus so many cases are kept, so that a run of them takes a few seconds.
MOST_CASES = {"reading": 200, "answering": 100, "callbacks": 100, "importing": 50}
#: Longer ones are not kept [bytes].
LONGEST_KEPT = 300


def main() -> None:
    """Fuzz, or keep what was found."""
    logging.getLogger("sinkside").setLevel(logging.CRITICAL)  # what is refused is no news here
    parser = argparse.ArgumentParser(prog="python -m tests.fuzzing", description=__doc__)
    parser.add_argument("target", choices=TARGETS)
    parser.add_argument("--seconds", type=int, default=600)
    parser.add_argument("--corpus", type=Path, required=True, help="a folder, made if need be")
    parser.add_argument("--keep", action="store_true")
    parser.add_argument("--merge-into", type=Path, help=argparse.SUPPRESS)
    asked, further = parser.parse_known_args()  # further: what libFuzzer tells its own processes
    if asked.keep:
        _keep(asked.target, asked.corpus)
    else:
        _fuzz(asked.target, asked.corpus, asked.seconds, asked.merge_into, further)


def _fuzz(name: str, corpus: Path, seconds: int, smaller: Path | None, further: list[str]) -> None:
    import atheris  # type: ignore[import-not-found,import-untyped,unused-ignore]

    with atheris.instrument_imports(include=["bot", "grammar"]):
        target = importlib.import_module(f"tests.fuzzing.{name}").TARGET
    from tests.fuzzing.cases import Case

    corpus.mkdir(parents=True, exist_ok=True)
    found = Findings(corpus.with_name(f"{corpus.name}-found"))
    words = found.folder / "words.dict"
    if smaller is None:
        words.write_text("\n".join(map(_quoted, dict.fromkeys(target.words()))), "ascii")
        for case in target.seeds():
            _file(corpus, case.data[: target.longest])

    def one(data: bytes) -> None:
        case = Case.of(data)
        before = time.process_time()
        try:
            target.check(case)
        except Exception as error:  # whatever it is: it is written down, and fuzzing goes on
            found.add(case, error)
        took_s = time.process_time() - before
        if took_s > SLOW_S:
            found.slow(case, took_s)

    settings = [f"-max_len={target.longest}", "-timeout=60", "-rss_limit_mb=2048"]
    command = sys.argv[0]
    if further:
        settings = further
    elif smaller is None:
        settings += [f"-max_total_time={seconds}", f"-dict={words}", str(corpus)]
    else:
        smaller.mkdir(parents=True, exist_ok=True)
        settings += ["-merge=1", str(smaller), str(corpus)]
        # A merge runs itself again, through a shell.
        again = [sys.executable, "-m", "tests.fuzzing", name, "--corpus", corpus]
        command = shlex.join(map(str, [*again, "--merge-into", smaller]))
    atheris.Setup([command, *settings], one)
    atheris.Fuzz()


class Findings:
    """What broke, a case for each place, and what was slow."""

    def __init__(self, folder: Path) -> None:
        self.folder = folder
        folder.mkdir(parents=True, exist_ok=True)
        self._seen: set[str] = set()
        self._slow = 0

    @property
    def places(self) -> int:
        """In how many places something broke."""
        return len(self._seen)

    def add(self, case: Any, error: Exception) -> None:
        """Write a case down where it breaks something new."""
        ours = [f for f in traceback.extract_tb(error.__traceback__) if "site-pack" not in f[0]]
        place = f"{ours[-1].filename}:{ours[-1].lineno} {type(error).__name__}"
        if type(error).__name__ == "Broken":
            place = f"{place} {str(error)[:30]}"
        if place in self._seen or len(self._seen) > 200:
            return
        self._seen.add(place)
        name = hashlib.sha256(place.encode()).hexdigest()[:12]
        told = "".join(traceback.format_exception(error))
        (self.folder / f"{name}.txt").write_text(f"{json.dumps(case)}\n{told}", "utf-8", "replace")
        print(f"FOUND {place}", flush=True)

    def slow(self, case: Any, took_s: float) -> None:
        """Write a case down that took long."""
        self._slow += 1
        if self._slow <= 500:
            with (self.folder / "slow.txt").open("a", encoding="ascii") as file:
                file.write(f"{took_s:.3f} {json.dumps(case)}\n")


def _file(corpus: Path, data: bytes) -> None:
    (corpus / hashlib.sha1(data, usedforsecurity=False).hexdigest()).write_bytes(data)


def _quoted(word: str) -> str:
    """A line of libFuzzer's dictionary."""
    data = word.encode("utf-8", "surrogatepass")[:60]
    return '"' + "".join(f"\\x{byte:02x}" for byte in data) + '"'


def _keep(name: str, corpus: Path) -> None:
    """Minimise a corpus by what it reaches, and keep the cases that reach most with least."""
    from tests.fuzzing.cases import Case, keep

    smaller = corpus.with_name(f"{corpus.name}-smaller")
    command = [sys.executable, "-m", "tests.fuzzing", name]
    command += ["--corpus", str(corpus), "--merge-into", str(smaller)]
    subprocess.run(command, check=True)
    paths = [path for path in smaller.iterdir() if path.stat().st_size <= LONGEST_KEPT]
    cases = [Case.of(path.read_bytes()) for path in sorted(paths)]
    random.Random(name).shuffle(cases)
    found = Findings(corpus.with_name(f"{corpus.name}-found"))
    chosen = list(_reaching(name, cases, found))
    keep(name, chosen)
    print(f"{len(list(smaller.iterdir()))} cases after the merge, {len(chosen)} kept")
    if found.places:
        sys.exit(f"{found.places} places broke, and no case of theirs is kept: see {found.folder}")


def _reaching(name: str, cases: Iterable[Any], found: Findings) -> Iterable[Any]:
    """Those cases, in turn, that go from a line of ours to another as none before did.

    What breaks is no case to keep until it is mended: it goes to what was found.
    """
    target = importlib.import_module(f"tests.fuzzing.{name}").TARGET
    seen: set[tuple[str, int, int]] = set()
    count = 0
    for case in cases:
        steps: set[tuple[str, int, int]] = set()
        sys.settrace(_tracer(steps))
        try:
            target.check(case)
        except Exception as error:  # whatever it is: it is written down
            found.add(case, error)
            continue
        finally:
            sys.settrace(None)
        if steps - seen:
            seen |= steps
            count += 1
            yield case
        if count == MOST_CASES[name]:
            return


def _tracer(steps: set[tuple[str, int, int]]) -> Any:
    def enter(frame: FrameType, event: str, _: Any) -> Any:
        file = frame.f_code.co_filename
        if "/grammar/" not in file and "/bot/" not in file:
            return None
        last = [0]

        def line(frame: FrameType, event: str, _: Any) -> Any:
            if event == "line":
                steps.add((file, last[0], frame.f_lineno))
                last[0] = frame.f_lineno
            return line

        return line

    return enter


if __name__ == "__main__":
    main()
