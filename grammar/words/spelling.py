"""Slips of the thumb: one clear candidate is taken and shown, rivals are listed.

Distances are optimal string alignment (a swap of neighbours counts one). Numbers and units
are never corrected: they are only suggested.
"""

from __future__ import annotations

from functools import cache, lru_cache
from typing import NamedTuple

from rapidfuzz import process
from rapidfuzz.distance import OSA

from grammar.lexicon import Entry, Lexicon, load
from grammar.words.scan import Raw

#: Token types whose words may be corrected.
_CORRECTED = frozenset({
    "FORM", "MEDIUM", "SEASON", "MONTH", "GROWTH", "REGIME", "GENUS", "WATER", "FRACTION",
    "MULTIPLE", "VAGUE", "STRENGTH", "EXACT", "LABEL", "PLANTS", "POT", "PHRASE", "OTHER_WATER",
    "HARDNESS", "ELEMENT", "NOT",
})  # fmt: skip
_ONLY_SUGGESTED = frozenset({"VOLUME_UNIT", "MASS_UNIT", "SPOON", "HARDNESS_UNIT", "NUMBER"})
#: Words that carry nothing, one slip away, are passed over.
_FILLERS = frozenset({"FILLER", "LOOSE_MEASURE", "AND", "FOR", "IN", "TO", "OR", "OF", "EVERY"})
_STRENGTHS = frozenset({"LEVEL", "FULL", "FRACTION", "MULTIPLE", "MULTIPLIER"})
#: Besides these, what a message can do without.
_CARRIES_NOTHING = _FILLERS | {"ASIDE", "ARTICLE", "PLANTS", "CONTAINER", "PERSON_VERB", "PRESENT"}


#: A word this short has too many neighbours; one this long may be two slips away [letters].
_SHORTEST_SLIP = 5
_LONG_SLIP = 8


class Guess(NamedTuple):
    """What an unknown word could be.

    `word` is the clear candidate, None where there is none; `rivals` are what to list.
    """

    word: str | None
    silent: bool
    rivals: tuple[str, ...]


_NONE = Guess(None, False, ())


def reach(length: int) -> int:
    """How many edits a word of this length may be away [letters]."""
    if length < 4:
        return 0
    return 1 if length <= 5 else 2 if length <= 8 else 3


def guess(raw: Raw, lexicon: Lexicon, *, counted: bool, denied: bool = False) -> Guess:
    """Candidates for one unknown word; units come into question only where it is `counted`.

    What is `denied` means something: 'no arece' is no 'parece', which carries nothing.
    """
    found = _guessed(raw.text, lexicon.language, counted) if raw.kind == "word" else _NONE
    return _NONE if denied and found.silent else found


@lru_cache(maxsize=1024)  # the same slip stands in a message more than once, and is read in turns
def _guessed(word: str, language: str, counted: bool) -> Guess:
    limit = reach(len(word))
    if not limit or word in load(language).plain:
        return _NONE
    choices = _choices(language)
    matches = process.extract(
        word, choices.keys(), scorer=OSA.distance, score_cutoff=limit, limit=8
    )
    # a short word of ours must not swallow a longer or much different one
    near = [
        (m, int(d))
        for m, d, _ in matches
        if d <= reach(len(m)) and (counted or choices[m].type not in _ONLY_SUGGESTED)
    ]
    if not near:
        return _NONE
    best = min(d for _, d in near)
    nearest = [m for m, d in near if d == best]
    nearest = [m for m in nearest if choices[m].type != "PHRASE"] or nearest
    kinds = {choices[m] for m in nearest}
    if all(k.type in _FILLERS for k in kinds):
        near_a_meaning = process.extractOne(
            word, _meaning(language), scorer=OSA.distance, score_cutoff=1
        )
        # 'całej' alone carries nothing, and 'całej dawki' is full strength.
        of_a_phrase = any(_begins_a_strength(m, language) for m in nearest)
        passed_over = best <= 1 and near_a_meaning is None and not of_a_phrase
        return Guess(nearest[0], True, ()) if passed_over else _NONE
    kinds = {k for k in kinds if k.type not in _FILLERS}
    nearest = [m for m in nearest if choices[m].type not in _FILLERS]
    if len(kinds) > 1 or next(iter(kinds)).type in _ONLY_SUGGESTED or best > limit:
        one_each = (_likest(word, [m for m in nearest if choices[m] == kind]) for kind in kinds)
        return Guess(None, False, tuple(sorted(one_each)))
    return Guess(_likest(word, nearest), False, ())


def _begins_a_strength(word: str, language: str) -> bool:
    """Whether a word is a strength with the one that follows it."""
    node = load(language).trie.next.get(word)
    further = () if node is None else node.next.values()
    return any(n.entry is not None and n.entry.type in _STRENGTHS for n in further)


def order_slip(raw: Raw, lexicon: Lexicon) -> str | None:
    """The one word of the records that this word is a slip for, None where there is none."""
    return _slip_among(raw, lexicon, lexicon.order_words)


def day_slip(raw: Raw, lexicon: Lexicon) -> str | None:
    """The one word for a day that this is with letters left out, None where there is none."""
    word = raw.text
    known = word in lexicon.words or word in lexicon.plain or word in lexicon.order_words
    if raw.kind != "word" or known or len(word) < _SHORTEST_ABRIDGED:
        return None
    whole = [
        day
        for day in _days(lexicon.language)
        if day[0] == word[0] and day[-1] == word[-1] and 2 * len(word) >= len(day) + 1
        if len(day) > len(word) and _left_out(word, day)
    ]
    return whole[0] if len(whole) == 1 else None


#: A day with letters left out has at least so many.
_SHORTEST_ABRIDGED = 4


@cache
def _days(language: str) -> tuple[str, ...]:
    """The words that are a day by themselves: 'yesterday', 'monday'."""
    nodes = load(language).orders.next.items()
    return tuple(
        w for w, node in nodes
        if node.entry is not None and node.entry.type == "WHEN"
        and node.entry.value.split()[0] in ("day", "weekday")
    )  # fmt: skip


def sign_slip(raw: Raw, lexicon: Lexicon) -> str | None:
    """The one word for an ailing plant that this word is a slip for, None where there is none."""
    if raw.text in lexicon.order_words or not raw.text.isalpha():
        return None
    return _slip_among(raw, lexicon, lexicon.sign_words)


def rhythm_slip(raw: Raw, lexicon: Lexicon) -> str | None:
    """The one word of a rhythm that this word is a slip for, None where there is none."""
    if raw.text in lexicon.order_words or not raw.text.isalpha():
        return None
    return _slip_among(raw, lexicon, lexicon.rhythm_words, shortest=4, long=_LONG_SLIP - 1)


def denies_by_a_slip(raw: Raw, lexicon: Lexicon) -> bool:
    """Whether a word that is not known is as good as one that denies: 'havnt'."""
    word = raw.text
    known = word in lexicon.words or word in lexicon.parts or word in lexicon.plain
    if raw.kind != "word" or known or word in lexicon.order_words or len(word) < _SHORTEST_SLIP:
        return False
    words = _denying(lexicon.language)
    return process.extractOne(word, words, scorer=OSA.distance, score_cutoff=1) is not None


@cache
def _denying(language: str) -> tuple[str, ...]:
    """The longer words that deny, beside those that except."""
    lexicon = load(language)
    nots = [w for w, e in lexicon.words.items() if e.type == "NOT" and len(w) >= _SHORTEST_SLIP]
    cues = {w: node.entry for w, node in lexicon.orders.next.items() if node.entry is not None}
    return tuple(w for w in nots if w not in cues or cues[w].value != "except")


def _slip_among(
    raw: Raw,
    lexicon: Lexicon,
    words: frozenset[str],
    *,
    shortest: int = _SHORTEST_SLIP,
    long: int = _LONG_SLIP,
) -> str | None:
    word = raw.text
    known = word in lexicon.words or word in lexicon.parts or word in lexicon.plain
    if raw.kind != "word" or known or word in words or len(word) < shortest:
        return None
    return _near(word, words, 1 if len(word) < long else 2)


@lru_cache(maxsize=1024)
def _near(word: str, words: frozenset[str], limit: int) -> str | None:
    """The one of some words that is nearest and begins alike."""
    found = process.extract(word, words, scorer=OSA.distance, score_cutoff=limit, limit=3)
    best = min((int(d) for _, d, _ in found), default=None)
    nearest = [str(m) for m, d, _ in found if int(d) == best and str(m)[0] == word[0]]
    alike = [m for m in nearest if m[-1] == word[-1]] or nearest
    if len(alike) > 1:  # letters that were left out are likelier than others
        alike = [m for m in alike if _left_out(word, m)]
    return alike[0] if len(alike) == 1 else None


def _left_out(word: str, whole: str) -> bool:
    """Whether a word is another without some of its letters."""
    letters = iter(whole)
    return all(letter in letters for letter in word)


def _likest(word: str, candidates: list[str]) -> str:
    return min(candidates, key=lambda c: (c[:1] != word[:1], abs(len(c) - len(word)), c))


@cache
def _meaning(language: str) -> tuple[str, ...]:
    """Words that change what is said: what is as near to one of them is no mere filler."""
    lexicon = load(language)
    known = (w for w, e in lexicon.words.items() if e.type not in _CARRIES_NOTHING and len(w) > 2)
    return (*known, *lexicon.parts)


@cache
def _choices(language: str) -> dict[str, Entry]:
    """Words a slip could be aimed at, with their meaning."""
    lexicon = load(language)
    wanted = _CORRECTED | _ONLY_SUGGESTED | _FILLERS
    known = {w: e for w, e in lexicon.words.items() if e.type in wanted and len(w) > 2}
    for word, entry in lexicon.parts.items():
        known.setdefault(word, entry)
    return known
