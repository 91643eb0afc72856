"""Base forms of the words for places and traits, in a language that declines them.

A key of the lexicon tells them: 'noun m balkon' is a noun with its gender (m, f, n or p), 'noun m'
holds nouns that are not declined,
'mark górny/górna/górne' and 'trait biały/biała/białe' are adjectives in three genders.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from functools import cache
from itertools import product

from grammar.folding import plain
from grammar.lexicon import Lexicon, settings_of
from grammar.words.marks import Mark, Words, inflected, written

#: Names of towns have no more words and signs than this, and their cases no more readings.
_MOST_PARTS = 5
_MOST_CASES = 40
#: The place of each gender's form among the three; the plural of things is written as the neuter.
_FORMS = {"m": 0, "f": 1, "n": 2, "p": 2}


def kind(mark: Mark) -> str:
    """What a word of a place or a trait is: noun, mark or trait."""
    return mark.value.partition(" ")[0]


def place(words: Words, run: Sequence[Mark], indices: range) -> str:
    """The base form of a place: 'na wschodnim parapecie w kuchni' is 'wschodni parapet w kuchni'.

    Parameters
    ----------
    words : the message
    run : the words of the place that were found
    indices : all that belongs to it
    """
    head = next((m for m in run if m.type == "KNOWN_PLACE" or kind(m) == "noun"), None)
    if head is None or not any(" " in m.value for m in run if m.type == "PLACE"):
        return written(words.folded, [words.raws[i] for i in indices])
    gender, base = _noun(words.lexicon, head)
    out: list[str] = []
    at, before_others = indices.start, True
    while at < indices.stop:
        mark = next((m for m in run if m.at == at), None)
        end = mark.end if mark is not None else at + 1
        said = written(words.folded, words.raws[at:end])
        if mark is head:
            out.append(base or said)
        elif mark is not None and kind(mark) == "mark" and gender and before_others:
            out.append(_agreed(words, mark, gender))
        else:  # 'w kuchni' stays in its case
            before_others = before_others and at < head.at
            out.append(said)
        at = end
    return " ".join(out)


def _noun(lexicon: Lexicon, mark: Mark) -> tuple[str, str]:
    """The gender and the base form of a place; empty where the language tells none."""
    value, base = mark.value, ""
    if mark.type == "KNOWN_PLACE":
        node = lexicon.orders.next.get(plain(mark.value))
        value, base = (node.entry.value if node is not None and node.entry else ""), mark.value
    parts = value.split(" ", 2)
    if parts[0] != "noun" or len(parts) < 2:
        return "", base
    return parts[1], base or "".join(parts[2:])  # without a base the noun stays as it was said


def trait(words: Words, mark: Mark, genus: str | None) -> str:
    """The base form of a trait, in the gender of its genus or as it was said."""
    return _agreed(words, mark, _gender(genus, words.lexicon.language) if genus else "")


def name(text: str, language: str) -> str:
    """A name that is said as the object, as it is called: 'dodaj Kropkę' adds Kropka."""
    for ending in settings_of(language).get("object_case", ()):
        said, _, called = ending.partition("/")
        if text.endswith(said):
            return f"{text.removesuffix(said)}{called}"
    return text


def cases(name: str, language: str) -> tuple[str, ...]:
    """What a town can be called that is said in another case: 'krakowie' may be krakow.

    Parameters
    ----------
    name : in small letters without accents
    language : in which it is said
    """
    endings = [e.partition("/") for e in settings_of(language).get("town_case", ())]
    parts = re.split(r"([ -])", name)
    each = [[p[: -len(s)] + base for s, _, base in endings if p.endswith(s)] + [p] for p in parts]
    if not name or len(parts) > _MOST_PARTS:
        return ()
    forms = dict.fromkeys("".join(words) for words in product(*each))
    return tuple(f for f in forms if f != name)[:_MOST_CASES]


def _agreed(words: Words, mark: Mark, gender: str) -> str:
    _, _, bases = mark.value.partition(" ")
    said = words.raws[mark.at].text
    if not bases:
        return said
    forms = bases.split("/")
    if gender:
        return forms[_FORMS[gender]]
    able = [f for f in forms if plain(f) == said]
    able = able or [f for f in forms if _bends(plain(f), said, words.lexicon)]
    return able[0] if able else forms[0]


def _bends(base: str, said: str, lexicon: Lexicon) -> bool:
    return base == said or any(inflected(base, e) == said for e in lexicon.bent)


def _gender(genus: str, language: str) -> str:
    """The gender of a Latin name, by its ending."""
    first = genus.split()[0]
    return next((g for g, ends in _endings(language) if first.endswith(ends)), "m")


@cache
def _endings(language: str) -> tuple[tuple[str, tuple[str, ...]], ...]:
    """The endings of Latin names that are feminine and neuter, from the settings."""
    meta = settings_of(language)
    return tuple((g, tuple(meta.get(f"latin_{g}", ()))) for g in "fn")
