"""The vocabulary: one TOML file a language, and `common.toml` for what belongs to all.

A section of a file is a token type, a key its value, the list all the ways to write it.
Earlier sections win where the same phrase stands in two; `filler` comes last.
"""

from __future__ import annotations

import re
import tomllib
from collections.abc import Mapping
from dataclasses import dataclass
from functools import cache
from importlib import resources
from sys import intern
from types import MappingProxyType
from typing import Any, NamedTuple

from grammar.folding import plain

COMMON = "common"

#: Sections that hold settings or lists for the speller, not words to read.
_NOT_TOKENS = frozenset({"meta", "not_a_slip"})

#: Sections of what is said to somebody who keeps records: found apart, see `orders`.
_ORDER_SECTIONS = frozenset({"order", "place", "trait", "when", "currency", "label_part"})

#: Sections of what ails a plant: whole phrases, and parts with the states they can be in.
_SIGN_SECTIONS = ("sign", "sign_part", "sign_state")
#: Which part in which state is which sign.
_SIGN_PAIRS = "sign_pair"

#: What may come to harm, and how: see `harm`; and the orders that say it too.
_HARM = "harm"
_SAY_HARM = frozenset({"pets", "eaten", "mouth", "hurt_me"})

#: Sections of readings and waters: see `measured`.
_MEASURED = (("ion", "report_unit"), ("meter",), ("water_talk",))
_MEASURED_SECTIONS = tuple(section for group in _MEASURED for section in group)

#: Sections of how often and when something is wanted, and what: see `rhythms`.
_RHYTHM_SECTIONS = ("rhythm", "task")
#: Words of theirs that nothing is taken for a slip of.
_SMALL_WORDS = frozenset({"light", "glue"})

#: Those of them whose words are mended where they are misspelt, from this length on [letters].
_SPELLED = ("order", "when", "place")
_SHORTEST = 3

#: Sections of what somebody wants to have explained: see `guiding`.
_GUIDE_SECTIONS = ("guide", "topic", "term")

#: Sections of what puts the last entry of the log right: see `amending`.
_AMEND_SECTIONS = ("amend",)

_APART = frozenset({
    *_AMEND_SECTIONS, *_GUIDE_SECTIONS, *_SIGN_SECTIONS, _SIGN_PAIRS, *_MEASURED_SECTIONS,
    *_RHYTHM_SECTIONS, _HARM,
})  # fmt: skip

_WHOLE_DAY = 24
#: Sections of phrases that nobody writes as one word.
_NEVER_JOINED = frozenset({"filler", "aside", "bound", "past", "not"})
#: Sections of phrases whose single words mean nothing for a dose.
_GLUE_SECTIONS = frozenset({"filler", "aside", "label", "not"})


class Entry(NamedTuple):
    """What a phrase means: a token type and a value."""

    type: str
    value: str


class Trie:
    """Phrases by their words."""

    __slots__ = ("entry", "next")

    def __init__(self) -> None:
        self.next: dict[str, Trie] = _NOTHING  # most are the ends of a phrase
        self.entry: Entry | None = None

    def grown(self, part: str) -> Trie:
        """The node behind a word, made where there is none."""
        found = self.next.get(part)
        if found is None:
            found = Trie()
            if self.next is _NOTHING:
                self.next = {part: found}
            else:
                self.next[part] = found
        return found


_NOTHING: dict[str, Trie] = {}


@dataclass(frozen=True, slots=True)
class Lexicon:
    """One language, ready to scan with."""

    language: str
    trie: Trie
    words: dict[str, Entry]  # phrases of one word, for the speller
    parts: dict[str, Entry]  # words that stand in phrases only
    plain: frozenset[str]  # everyday words that are no slips of ours
    digit_words: tuple[str, ...]  # words that hold digits (k2o), longest first
    samples: dict[Entry, str]  # how to say it, for suggestions
    orders: Trie  # what is said to somebody who keeps records
    order_words: frozenset[str]  # the longer words of that, for the speller
    possessive: tuple[str, ...]  # endings of a name that owns something
    signs: Trie  # what ails a plant: whole phrases, its parts, their states
    sign_words: frozenset[str]  # the longer words of that, for the speller
    sign_pairs: dict[tuple[str, str], str]  # the sign that a part in a state is
    harms: Trie  # what may come to harm, and how
    measured: tuple[Trie, ...]  # what is said of reports, of meters, of waters
    rhythms: Trie  # how often and when something is wanted, and what
    rhythm_words: frozenset[str]  # the longer words of that, for the speller
    amends: Trie  # what puts the last entry of the log right
    guides: dict[str, Trie]  # what asks for an explanation, and of what
    bent: tuple[str, ...]  # endings of the words before the noun of a name
    whole_day: bool  # whether people count the hours of a day to 24
    spelled: dict[str, str]  # words as they are written, where they are scanned without marks


_PIECE = re.compile(r"\d+(?:[.,]\d+)?|[^\W\d_]+(?:'[^\W\d_]+)?\.?|[/+%\"°&$€£<>]")


def pieces(phrase: str) -> list[str]:
    """The words of an entry, as the scanner will meet them."""
    if phrase.replace(" ", "").isalpha():  # most: spares the search
        return list(map(intern, phrase.split()))
    if any(c.isdigit() for c in phrase) and " " not in phrase and phrase[0].isalpha():
        return [phrase]
    if len(phrase) == len("v.") and phrase.endswith("."):
        return [phrase]
    found: list[str] = _PIECE.findall(phrase)
    return [intern(p if p.endswith(".") and len(p) > 2 else p.rstrip(".")) for p in found]


@cache
def languages() -> tuple[str, ...]:
    """Codes of the languages that have a file here."""
    names = (entry.name for entry in resources.files(__name__).iterdir())
    codes = (n.removesuffix(".toml") for n in names if n.endswith(".toml"))
    return tuple(sorted(c for c in codes if c != COMMON))


def sections(name: str) -> dict[str, dict[str, list[str]]]:
    """One file as it stands.

    Raises
    ------
    FileNotFoundError
        For a language without a file.
    """
    return tomllib.loads(_text(name))


def _text(name: str) -> str:
    return resources.files(__name__).joinpath(f"{name}.toml").read_text(encoding="utf-8")


@cache
def settings_of(language: str) -> Mapping[str, Any]:
    """The `[meta]` of a file: how the language is written and inflected.

    Raises
    ------
    FileNotFoundError
        For a language without a file.
    """
    _, settings, _ = _META.split(_text(language), maxsplit=1)
    return MappingProxyType(tomllib.loads(settings))


@cache
def words_under(language: str, key: str) -> frozenset[str]:
    """Words or phrases that the settings of a language list, as they are scanned."""
    return frozenset(map(plain, settings_of(language).get(key, ())))


@cache
def phrases_under(language: str, key: str) -> tuple[tuple[str, ...], ...]:
    """As `words_under`, in their order, each as its words."""
    return tuple(tuple(plain(phrase).split()) for phrase in settings_of(language).get(key, ()))


@cache
def phrases_from(language: str, key: str) -> dict[str, tuple[tuple[str, ...], ...]]:
    """As `phrases_under`, by their first word, the longest first."""
    found: dict[str, tuple[tuple[str, ...], ...]] = {}
    for phrase in phrases_under(language, key):
        found[phrase[0]] = (*found.get(phrase[0], ()), phrase)
    return {first: tuple(sorted(of, key=len, reverse=True)) for first, of in found.items()}


@cache
def load(language: str) -> Lexicon:
    """The vocabulary of one language with the common words in it.

    Raises
    ------
    FileNotFoundError
        For a language without a file.
    """
    shown = sections(language)
    own, common = _written(shown), _written(_common())
    trie = Trie()
    words: dict[str, Entry] = {}
    samples: dict[Entry, str] = {}
    late = [("filler", own["filler"])]
    early = [*common.items(), *((n, t) for n, t in own.items() if n != "filler")]
    phrase_words: dict[str, Entry] = {}
    run_together: list[tuple[list[str], Entry]] = []
    for section, table in (*early, *late):
        if section in _NOT_TOKENS or section in _ORDER_SECTIONS or section in _APART:
            continue
        for value, phrases in table.items():
            entry = Entry(section.upper(), value)
            samples.setdefault(entry, phrases[0])
            for phrase in phrases:
                parts = pieces(phrase)
                _insert(trie, parts, entry)
                joined = "".join(parts) if section not in _NEVER_JOINED else ""
                if len(parts) > 1 and len(joined) > 6 and joined.isalpha():
                    run_together.append(([intern(joined)], entry))
                if len(parts) == 1:
                    words.setdefault(parts[0], entry)
                elif section not in _GLUE_SECTIONS:
                    for part in parts:
                        phrase_words.setdefault(part, Entry("PHRASE", part))
    for parts, entry in run_together:  # after all real entries, so that they never hide one
        _insert(trie, parts, entry)
    everyday = frozenset(own.get("not_a_slip", {}).get("plain", []))
    rest = {w: e for w, e in phrase_words.items() if w not in words and len(w) > 4}
    tables = {name: own.get(name, {}) for name in sorted(_ORDER_SECTIONS)}
    spoken = (w for n in _SPELLED for ps in own.get(n, {}).values() for p in ps for w in pieces(p))
    long = frozenset(w for w in spoken if len(w) > _SHORTEST and w.isalpha())
    digits = _digit_words(words)
    meta = settings_of(language)
    owning = tuple(meta.get("possessive", []))
    orders = _orders(tables)
    ailing = {name: own.get(name, {}) for name in _SIGN_SECTIONS}
    paced = {name: own.get(name, {}) for name in _RHYTHM_SECTIONS}
    spelt = (ps for t in paced.values() for key, ps in t.items() if key not in _SMALL_WORDS)
    pace = (w for ps in spelt for p in ps for w in pieces(p))
    listed = own.get("order", {}).items()
    said_too = {key: ps for key, ps in listed if not _SAY_HARM.isdisjoint(key.split())}
    said = (w for table in ailing.values() for ps in table.values() for p in ps for w in pieces(p))
    return Lexicon(
        language, trie, words, rest, everyday, digits, samples, orders, long, owning,
        signs=_orders(ailing),
        sign_words=frozenset(w for w in said if len(w) > _SHORTEST and w.isalpha()),
        sign_pairs=_pairs(common[_SIGN_PAIRS]),
        harms=_orders({_HARM: own.get(_HARM, {}), "order": said_too}),
        measured=tuple(_measured({n: own.get(n, {}) for n in group}) for group in _MEASURED),
        rhythms=_orders(paced),
        rhythm_words=frozenset(w for w in pace if len(w) > _SHORTEST and w.isalpha()),
        amends=_orders({name: own.get(name, {}) for name in _AMEND_SECTIONS}),
        guides={name: _measured({name: own.get(name, {})}) for name in _GUIDE_SECTIONS},
        bent=tuple(meta.get("bent", [])),
        whole_day=meta.get("hours") == _WHOLE_DAY,
        spelled=_spelled(shown),
    )  # fmt: skip


def _written(tables: dict[str, dict[str, list[str]]]) -> dict[str, dict[str, list[str]]]:
    """The file in the letters that a message is scanned in: without case and accents."""
    spread = "umlauts" in tables.get("meta", {})
    return {
        section: table
        if section == "meta"
        else {value: _variants(phrases, spread=spread) for value, phrases in table.items()}
        for section, table in tables.items()
    }


@cache
def _common() -> dict[str, dict[str, list[str]]]:
    return sections(COMMON)


def heard_by(language: str) -> tuple[frozenset[str], frozenset[str]]:
    """The words and the letters by which a language is heard.

    Found in the text of the file, several times as fast as by parsing it: a start waits for this
    in every language, for all the rest only in those that are spoken.

    Raises
    ------
    FileNotFoundError
        For a language without a file.
    """
    _, _, tables = _META.split(_text(language), maxsplit=1)
    meta = settings_of(language)
    phrases = "\n".join(filter(None, _PHRASE.findall(tables)))
    words = set(_WORD.findall(phrases.lower()))
    marked = {w for w in words if not w.isascii()}
    typed = {w.translate(_SPREAD) for w in marked} if "umlauts" in meta else set()
    folded = (words - marked) | set(map(plain, marked | typed))
    own = frozenset(folded) - _latin() - words_under(language, "loans")
    return own, frozenset(meta.get("letters", []))


@cache
def _latin() -> frozenset[str]:
    """Kinds of plants in one word, in full and short: 'phal' is said in every language."""
    _, _, genera = _text(COMMON).partition("[genus]")
    return frozenset(p for p in _PHRASE.findall(genera.partition("\n[")[0]) if p.isalpha())


#: The settings of a file, between what stands before and behind them.
_META = re.compile(r"^\[meta\]\n((?:(?!\[).*\n)*)", re.MULTILINE)
#: Quoted texts of a file; comments and keys are passed over.
_PHRASE = re.compile(r'^#.*$|^"[^"\n]+"\s*=|"((?:[^"\\\n]|\\.)+)"', re.MULTILINE)
_WORD = re.compile(r"[^\W\d_]+")


def _spelled(tables: dict[str, dict[str, list[str]]]) -> dict[str, str]:
    """The writing of single words by what they are scanned as, where the two differ."""
    phrases = (
        p
        for section, table in tables.items()
        if section not in _NOT_TOKENS
        for ps in table.values()
        for p in ps
    )
    return {
        plain(word): word
        for phrase in phrases
        if not phrase.isascii()
        for word in phrase.split()
        if not word.isascii()
    }


#: How umlauts are typed without their dots.
_SPREAD = str.maketrans({"ä": "ae", "ö": "oe", "ü": "ue"})


def _variants(phrases: list[str], *, spread: bool) -> list[str]:
    """Each phrase folded; with umlauts, the spelling in two letters besides."""
    if not spread:
        return [plain(p) for p in phrases]
    found: dict[str, None] = {}
    for phrase in phrases:
        found[plain(phrase)] = None
        if not phrase.isascii():
            found[plain(phrase.casefold().translate(_SPREAD))] = None
    return list(found)


def _pairs(table: dict[str, list[str]]) -> dict[tuple[str, str], str]:
    split = ((sign, pair.split()) for sign, pairs in table.items() for pair in pairs)
    return {(part, state): sign for sign, (part, state) in split}


def _orders(tables: dict[str, dict[str, list[str]]]) -> Trie:
    trie = Trie()
    for section, table in tables.items():
        for value, phrases in table.items():
            for phrase in phrases:
                _insert(trie, pieces(phrase), Entry(section.upper(), value))
    return trie


def _measured(tables: dict[str, dict[str, list[str]]]) -> Trie:
    trie = Trie()
    for section, table in tables.items():
        for value, phrases in table.items():
            for phrase in phrases:  # letters and digits apart: here 'hco3' is no word
                _insert(trie, _PIECE.findall(phrase), Entry(section.upper(), value))
    return trie


def _insert(trie: Trie, parts: list[str], entry: Entry) -> None:
    node = trie
    for part in parts:
        node = node.grown(part)
    if node.entry is None:
        node.entry = entry


def _digit_words(words: dict[str, Entry]) -> tuple[str, ...]:
    return tuple(sorted((w for w in words if re.search(r"\d", w)), key=lambda w: (-len(w), w)))
