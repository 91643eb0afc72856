"""Real messages to begin with, and the phrases of the lexicons to put others together from."""

from __future__ import annotations

from collections.abc import Iterator
from functools import cache

from grammar.lexicon import COMMON, languages, sections
from tests.grammar.told import MESSAGES, messages

#: Signs that stand between numbers, and numbers that are none.
SIGNS = ("/", "-", "%", "°", ",", ".", ":", "\n", "1/2", "20-20-20", "1,500", "1e9", "½", "2²",
         "\u202e", "\u200b", "\ud800", "()", "?", "+", "0", "9" * 40)  # fmt: skip
_NO_WORDS = ("meta", "sign_pair")


@cache
def said() -> tuple[str, ...]:
    """Every message of the fixtures."""
    files = sorted(path.name for path in MESSAGES.glob("*.jsonl"))
    return tuple(line["text"] for name in files for line in messages(name))


def phrases() -> Iterator[str]:
    """The phrases of the lexicons, the first few of each meaning."""
    yield from SIGNS
    for name in (COMMON, *languages()):
        for section, table in sections(name).items():
            if section not in _NO_WORDS:
                for said_so in table.values():
                    yield from said_so[:6]
