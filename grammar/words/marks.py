"""Words of the records in a message: names on record, orders, places, days.

They are found over the raw words, apart from the vocabulary of a dose, so that neither can
change what the other means.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from functools import cache, lru_cache
from typing import NamedTuple

from grammar.folding import plain
from grammar.lexicon import Entry, Lexicon, Trie, pieces, settings_of, words_under
from grammar.order import Names
from grammar.words.scan import Folded, Raw, fold


class Mark(NamedTuple):
    """A phrase that was found: its type and value, and the raw words it stands for.

    `told` is a plant that has no name, by a word that tells it apart.
    """

    type: str
    value: str
    at: int
    size: int
    told: bool = False

    @property
    def end(self) -> int:
        """The place of the raw word behind it."""
        return self.at + self.size


#: These mean something beside figures only.
_BESIDE_FIGURES = frozenset({"JUDGED", "REDUCED"})


@dataclass(frozen=True, slots=True)
class Words:
    """A message as raw words, with the phrases of the records in it."""

    folded: Folded
    raws: list[Raw]
    lexicon: Lexicon
    found: list[Mark]

    def type_at(self, index: int) -> str:
        """What the vocabulary of a dose takes this word for; empty outside and for unknown."""
        if not 0 <= index < len(self.raws):
            return ""
        entry = self.lexicon.words.get(self.raws[index].text)
        return entry.type if entry is not None and entry.type not in _BESIDE_FIGURES else ""

    def cue_at(self, index: int) -> str:
        """The value of the order phrase that holds this word; empty where none does."""
        held = (m.value for m in self.found if m.type == "ORDER" and m.at <= index < m.end)
        return next(held, "")


#: The type of a word that tells a plant apart, until it is a mark of that plant.
_TOLD = "TOLD"


def _strange(names: Names, lexicon: Lexicon) -> Names:
    """Names without the words that tell apart and mean something already: 'white', 'small'."""
    if not names.told_apart:
        return names
    told = (t for t in names.told_apart if not all(_means(p, lexicon) for p in pieces(plain(t))))
    return replace(names, told_apart=tuple(told))


def _means(word: str, lexicon: Lexicon) -> bool:
    known = word in lexicon.words or word in lexicon.parts or word in lexicon.plain
    return known or word in lexicon.orders.next


@lru_cache(maxsize=256)
def _known(names: Names, possessive: tuple[str, ...], bent: tuple[str, ...], umlauts: bool) -> Trie:
    """The names on record, also as owning something, in other cases and without umlauts."""
    trie = Trie()
    known: list[tuple[list[str], Entry]] = []
    for type_, listed in (
        ("PLANT", names.plants), ("PRODUCT", names.products), ("KNOWN_PLACE", names.places),
        ("GONE", names.gone), (_TOLD, names.told_apart),
    ):  # fmt: skip
        for name in listed:
            written = name.casefold()
            for text in dict.fromkeys((written, written.translate(_SPREAD) if umlauts else "")):
                parts = pieces(fold(text).text)
                if parts:
                    _put(trie, parts, Entry(type_, name))
                    known.append((parts, Entry(type_, name)))
    forms: dict[tuple[str, ...], list[Entry]] = {}

    def say(form: list[str], entry: Entry) -> None:
        forms.setdefault(tuple(form), []).append(entry)

    for parts, entry in known:  # behind all names as they are, so that no form hides one
        for ending in possessive:
            form = inflected(parts[-1], ending)
            if form:
                say([*parts[:-1], form], entry)
        for ending in bent if len(parts) > 1 else ():
            before = [inflected(p, ending) or p for p in parts[:-1]]
            for form in (parts[-1], *(inflected(parts[-1], e) for e in possessive)):
                if form:
                    say([*before, form], entry)
        noun_first = len(parts) > 1 and entry.type not in ("PLANT", "GONE")  # 'nawóz wapniowy'
        for ending in bent if noun_first else ():
            last = inflected(parts[-1], ending)
            for noun in (inflected(parts[0], e) for e in possessive) if last else ():
                if noun:
                    say([noun, *parts[1:-1], last], entry)
    for spelt, entries in forms.items():
        if len({e.value for e in entries if e.type == "PLANT"}) < 2:  # 'Leona' of Leo or of Leon
            _put(trie, list(spelt), entries[0])
    return trie


#: How umlauts are typed without their dots.
_SPREAD = str.maketrans({"ä": "ae", "ö": "oe", "ü": "ue"})


@cache
def _umlauts(language: str) -> bool:
    """Whether people type 'ue' for 'ü' in a language."""
    return "umlauts" in settings_of(language)


#: Shorter names are not inflected by changing their last letter: the form could be any word.
_SHORTEST_STEM = 4


def inflected(word: str, ending: str) -> str:
    """A name with an ending; 'a/y' puts 'y' for its last letter 'a'. Empty where it has none."""
    last, slash, new = ending.partition("/")
    if not slash:
        return word + ending
    fits = word.endswith(last) and len(word) >= _SHORTEST_STEM
    return word[: -len(last)] + new if fits else ""


def _put(trie: Trie, parts: list[str], entry: Entry) -> None:
    node = trie
    for part in parts:
        node = node.grown(part)
    node.entry = node.entry or entry


def marks(raws: list[Raw], lexicon: Lexicon, names: Names) -> list[Mark]:
    """The phrases of the records in a message, longest first, a name before all else.

    Parameters
    ----------
    raws : the words of the message
    lexicon : vocabulary
    names : what is on record

    Returns
    -------
    list of Mark
        In order, none overlapping another.
    """
    names = _strange(names, lexicon)
    known = _known(names, lexicon.possessive, lexicon.bent, _umlauts(lexicon.language))
    found: list[Mark] = []
    index = 0
    while index < len(raws):
        name, long = longest(raws, index, known)
        entry, size = longest(raws, index, lexicon.orders)
        if name is not None and long >= size:
            entry, size = name, long
        letter = name is None and size == 1 < len(raws) and len(raws[index].text) == 1
        if name is None and size > 1:
            size = _before_a_name(raws, index, size, known)
        # A lone 'n' says no, the one of 'ppm N' does not.
        if (
            entry is None
            or (letter and entry.type == "ORDER")
            or _of_time(entry, raws[index + size :], lexicon)
        ):
            index += 1
            continue
        told = entry.type == _TOLD
        found.append(Mark("PLANT" if told else entry.type, entry.value, index, size, told))
        index += size
    return _with_but(found, raws, lexicon)


def _with_but(found: list[Mark], raws: list[Raw], lexicon: Lexicon) -> list[Mark]:
    """The marks, and an 'except' for the 'but' of 'all phals but Ruby'."""
    buts = words_under(lexicon.language, "but")
    for index, raw in enumerate(raws):
        if raw.text not in buts or any(m.at <= index < m.end for m in found):
            continue
        before = {v for m in found if m.type == "ORDER" and m.at < index for v in m.value.split()}
        named = next((m for m in found if m.at == index + 1 and m.type == "PLANT"), None)
        if named is None or before.isdisjoint({"everything", "both"}):
            continue
        if named.end == len(raws) or raws[named.end].after_break:  # no 'but Ruby got water'
            return sorted([*found, Mark("ORDER", "except", index, 1)], key=lambda m: m.at)
    return found


def _before_a_name(raws: list[Raw], index: int, size: int, known: Trie) -> int:
    """The size of a phrase without the name that begins in it: 'z' of 'z nawozem wapniowym'."""
    for inside in range(1, size):
        name, long = longest(raws, index + inside, known)
        if name is not None and inside + long > size:
            return inside
    return size


def _of_time(entry: Entry, behind: list[Raw], lexicon: Lexicon) -> bool:
    """Whether a word for 'all' counts time: 'alle 10 Tage'."""
    if entry.value != "everything" or len(behind) < 2:
        return False
    number, unit = behind[:2]
    named = lexicon.words.get(number.text)
    counted = number.kind == "number" or (named is not None and named.type == "NUMBER")
    said = lexicon.words.get(unit.text)
    return counted and said is not None and said.type == "TIME_UNIT"


def phrases(raws: list[Raw], trie: Trie) -> list[Mark]:
    """The phrases of a trie in a message, longest first, none overlapping another."""
    found: list[Mark] = []
    index = 0
    while index < len(raws):
        if raws[index].text not in trie.next:  # most words: spares the call
            index += 1
            continue
        entry, size = longest(raws, index, trie)
        if entry is not None:
            found.append(Mark(entry.type, entry.value, index, size))
        index += max(size, 1)
    return found


def longest(raws: list[Raw], index: int, trie: Trie) -> tuple[Entry | None, int]:
    """The longest phrase of a vocabulary that begins here, and its number of words."""
    best, size, node = None, 0, trie
    for offset in range(index, len(raws)):
        raw = raws[offset]
        if offset > index and raw.after_break and raw.kind == "word":
            break
        following = node.next.get(raw.text)
        if following is None:
            break
        node = following
        if node.entry is not None:
            best, size = node.entry, offset - index + 1
    return best, size


def written(folded: Folded, raws: list[Raw]) -> str:
    """A run of raw words as the person wrote or meant them, without quotation marks around."""
    if not raws:
        return ""
    mended = any(r.kind == "word" and folded.text[r.start : r.end] != r.text for r in raws)
    text = folded.written(raws[0].start, raws[-1].end)
    if mended:  # a slip that was put right
        text = " ".join(raw.text for raw in raws)
    return " ".join(text.strip("\"'“”‘’«» ").split())
