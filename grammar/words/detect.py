"""In which language a message is written, by the words that each vocabulary holds.

Latin names, figures and unit symbols belong to every language and tell nothing.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from functools import cache

from grammar.lexicon import heard_by
from grammar.words.scan import Folded, Raw

#: How much is in favour of the language somebody uses anyway [words].
_HABIT = 1.5
#: A word of one letter says less: it may be a sign or half of a word [words].
_LETTER = 0.4
#: With less, nothing speaks for a language [words].
_LEAST = 1.0
#: Closer than this, both are read before one is taken [words].
_CLOSE = 1.0


def heard(raws: Sequence[Raw], folded: Folded, codes: Sequence[str]) -> dict[str, float]:
    """How much of a message speaks for each language.

    Parameters
    ----------
    raws : the pieces of the message
    folded : the message
    codes : the languages that come into question

    Returns
    -------
    dict
        A figure by language [words]: a word or letter of only one counts whole, a shared one its
        share, one of all of them nothing.
    """
    found = dict.fromkeys(codes, 0.0)
    owners = _owners(tuple(codes))
    for raw in raws:
        if raw.kind == "word":
            for part in raw.text.split("'"):
                _count(found, owners.get(part, ()), 1.0 if len(part) > 1 else _LETTER)
    if folded.origin is not None:
        letters = _letters(tuple(codes))
        for char in set(folded.original.casefold()):
            _count(found, letters.get(char, ()), 1.0)
    return found


def _count(found: dict[str, float], codes: tuple[str, ...], weight: float) -> None:
    if len(codes) < len(found):
        for code in codes:
            found[code] += weight / len(codes)


def likeliest(found: dict[str, float], usual: str | None, default: str) -> tuple[str, ...]:
    """The language of a message, the likelier first; two where they lie close.

    Parameters
    ----------
    found : of `heard`
    usual : the language this person uses otherwise, None where it is not known
    default : taken where nothing speaks for any
    """
    if max(found.values(), default=0.0) < _LEAST and (usual or default) in found:
        return (usual or default,)
    weighed = {code: (n + _HABIT if code == usual else n) for code, n in found.items()}
    ranked = sorted(weighed, key=lambda code: (-weighed[code], code != (usual or default)))
    first = ranked[0]
    close = [c for c in ranked[1:2] if found[c] and weighed[first] - weighed[c] < _CLOSE]
    return (first, *close)


@cache
def _owners(codes: tuple[str, ...]) -> dict[str, tuple[str, ...]]:
    """Which of these languages have a word."""
    return _shared({code: heard_by(code)[0] for code in codes})


@cache
def _letters(codes: tuple[str, ...]) -> dict[str, tuple[str, ...]]:
    """Which of these languages write a letter."""
    return _shared({code: heard_by(code)[1] for code in codes})


def knows_any(words: Iterable[str], code: str, codes: tuple[str, ...]) -> bool:
    """Whether one of these languages has one of these words."""
    owners = _owners(codes)
    return any(code in owners.get(word, ()) for word in words)


def knows_all(words: Iterable[str], code: str, codes: tuple[str, ...]) -> bool:
    """Whether one of these languages has all of these words."""
    owners = _owners(codes)
    return all(code in owners.get(word, ()) for word in words)


def _shared(sets: dict[str, frozenset[str]]) -> dict[str, tuple[str, ...]]:
    found: dict[str, tuple[str, ...]] = {}
    kept: dict[tuple[str, ...], tuple[str, ...]] = {}  # a few, shared by thousands of words
    for code, words in sets.items():
        for word in words:
            both = (*found.get(word, ()), code)
            found[word] = kept.setdefault(both, both)
    return found
