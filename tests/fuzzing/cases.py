"""What a target is given: bytes to the fuzzer, a mode and a text to us, JSON when it is kept."""

from __future__ import annotations

import json
from collections.abc import Callable, Iterable, Iterator
from dataclasses import dataclass
from pathlib import Path
from typing import NamedTuple

KEPT = Path(__file__).parents[2] / "fixtures" / "fuzz"


class Case(NamedTuple):
    """One input: `mode` says what is done with the text (0 to 255)."""

    mode: int
    text: str

    @classmethod
    def of(cls, data: bytes) -> Case:
        """The case that some bytes stand for: the mode, then the text, halves of pairs and all."""
        try:
            return cls(data[0] if data else 0, data[1:].decode("utf-8", "surrogatepass"))
        except UnicodeDecodeError:
            return cls(data[0], data[1:].decode("utf-8", "replace"))

    @property
    def data(self) -> bytes:
        """The bytes that stand for it."""
        return bytes([self.mode]) + self.text.encode("utf-8", "surrogatepass")


@dataclass(frozen=True)
class Target:
    """Something to fuzz.

    Attributes
    ----------
    check : does what the case says, and raises where a law does not hold
    seeds : cases to begin with
    words : pieces that a case may be put together from
    longest : of a case [bytes]
    """

    check: Callable[[Case], None]
    seeds: Callable[[], Iterable[Case]]
    words: Callable[[], Iterable[str]]
    longest: int = 600


def kept(name: str) -> Iterator[Case]:
    """The cases of a target that were kept."""
    for line in (KEPT / f"{name}.jsonl").read_text("ascii").splitlines():
        yield Case(*json.loads(line))


def keep(name: str, cases: Iterable[Case]) -> None:
    """Write the cases of a target down, the short ones first."""
    lines = [json.dumps(case) for case in sorted(cases, key=lambda c: (len(c.data), c))]
    KEPT.mkdir(exist_ok=True)
    (KEPT / f"{name}.jsonl").write_text("\n".join([*lines, ""]), "ascii")
