"""Text to typed tokens, by the lexicon alone: longest entry first, spans kept.

Nothing is decided here that needs the neighbourhood of a word; see `request.settling`.
"""

from __future__ import annotations

import re
from functools import cache
from typing import NamedTuple

from grammar.folding import Folded, fold
from grammar.lexicon import Entry, Lexicon, Trie, words_under

__all__ = ["AMBIGUOUS", "Folded", "Raw", "Token", "fold", "raws_of", "scan", "typed"]

#: Written before a value that could be read in two ways ("1,500").
AMBIGUOUS = "?"


class Raw(NamedTuple):
    """A word, a number or a sign as it stands in the folded text."""

    kind: str  # word, number, garbled, fraction, analysis, ratio, sign
    text: str
    start: int
    end: int
    after_break: bool  # a comma, a line break, a bracket ... stands before it
    after_space: bool
    dotted: bool


class Token(NamedTuple):
    """A typed token; `value` is what the lexicon or the number says."""

    type: str
    value: str
    raws: tuple[Raw, ...]

    @property
    def start(self) -> int:
        """Position in the folded text."""
        return self.raws[0].start

    @property
    def end(self) -> int:
        """Position behind the last character."""
        return self.raws[-1].end

    @property
    def after_break(self) -> bool:
        """Whether a comma, line break or bracket stands before it."""
        return self.raws[0].after_break


_NUM = r"\d+(?:[.,]\d+)?"
_RAW = rf"""
    (?P<garbled>
        # a letter typed for a digit: 5O0, 2O, o.5, l0
        (?<!\w)(?=[\d.,:/-]*o)(?=[o.,:/-]*\d)[\do]+(?:[.,:/-][\do]+)*(?=\W|_|ml|l\b|g\b|$)
      | (?<!\w)[il]\d[\d.,]*(?!\w) | (?<!\w)\d+[il]\d+(?=\s?[ml]) | \d+[.,]{{2,}}\d+
        # blanks inside: 1. 5 l, 1 250 ml
      | (?<![\d.,/:-])\d{{1,2}}\.[ ]\d+(?:[.,]\d+)?(?=\s?[a-z])
      | (?<![\d.,/:-])(?<![\d.,/:-][ ])\d{{1,3}}(?:[ ]\d{{3}})+(?=\s?(?:ml|l|g|cc|lit|mil)[a-z]*\b)
        # an exponent, four numbers where an analysis has three
      | \d[\d.,]*\^[\d^]+
      | (?<![\w.,/-])\d+(?:-\d+){{3,}}(?![\w%]|\s?(?:ca|mg|s|fe|te)\b))
  | (?P<analysis>(?<![\d-])(?<!\d[.,/])
        {_NUM}(?P<sep>\s?[-/:]\s?|\+){_NUM}(?P=sep){_NUM}(?![.,]?\d|\s?[/:]\s?\d))
  | (?P<ratio>(?<![\d.:])\d+\s?:\s?\d+(?![\d:]))
  | (?P<fraction>(?<![\d.,/])\d+/\d+(?![\d/]|\.\d))
  | (?P<number>(?:\d+(?:[.,]\d+)*|(?<!\w)[.,]\d+)(?:e[+-]?\d+)?)
  | (?P<word>[^\W\d_]+(?:'[^\W\d_]+)?)
  | (?P<sign>[/+%"°&$€£<>-])
"""


@cache
def _pattern(digit_words: tuple[str, ...]) -> re.Pattern[str]:
    """The raw pieces of a message; words that hold digits (k2o) come first."""
    known = "|".join(map(re.escape, digit_words)) or r"(?!)"
    return re.compile(rf"(?P<known>(?<![^\W\d_])(?:{known})(?!\w))|{_RAW}", re.VERBOSE)


_BREAKS = re.compile(r"[,;:\n()\[\]{}!?|•·]|\.(?=\s|$)|\s-+\s")


def _raws(folded: str, pattern: re.Pattern[str]) -> list[Raw]:
    """Words, numbers and signs; a hyphen that only joins words is a space."""
    found: list[Raw] = []
    behind = 0
    for match in pattern.finditer(folded):
        start, end = match.span()
        kind = match.lastgroup or ""
        gap = folded[behind:start]
        text = match.group()
        if text == "-" and _joins(folded, start, end):
            continue
        if kind == "number" and _is_list_number(match, gap):
            continue
        plain_gap = gap in ("", " ") or text == "-"  # most gaps: spares the search
        found.append(
            Raw(
                "word" if kind == "known" else kind,
                text,
                start,
                end,
                not found or (not plain_gap and _BREAKS.search(gap) is not None),
                not found or gap != "",
                folded.startswith(".", end),
            )
        )
        behind = end
    return found


def _is_list_number(match: re.Match[str], gap: str) -> bool:
    """Whether this is the '2)' of a numbered list; the one of '(+2)' closes a bracket."""
    text = match.string
    after = text[match.end() : match.end() + 1]
    if after != ")" or "(" in gap:
        return False
    return text.count("(", 0, match.start()) <= text.count(")", 0, match.start())


def _joins(folded: str, start: int, end: int) -> bool:
    """Whether this hyphen joins two parts of a word, or is a bullet or a dash between parts."""
    before = folded[start - 1] if start else " "
    after = folded[end] if end < len(folded) else " "
    if after.isdigit():
        return before.isalpha()
    left, right = folded[:start].rstrip(" ")[-1:], folded[end : end + 9].lstrip(" ")[:1]
    lone = not left and "\n" not in folded  # no list, so '- 5 l' is no bullet
    return not (right.isdigit() and (left.isdigit() or lone))


def scan(folded: Folded, lexicon: Lexicon) -> list[Token]:
    """Typed tokens of a message in one language.

    Parameters
    ----------
    folded : the message after `fold`
    lexicon : vocabulary, common words included

    Returns
    -------
    list of Token
        Words the lexicon does not hold have the type UNKNOWN.
    """
    return typed(raws_of(folded, lexicon), folded, lexicon)


def raws_of(folded: Folded, lexicon: Lexicon) -> list[Raw]:
    """The words, numbers and signs of a message, before they mean anything."""
    return _raws(_INVERSE.sub(_divided, folded.text), _pattern(lexicon.digit_words))


_INVERSE = re.compile(r"(?<=[gl])[ .·*]l\^?-1(?!\d)")


def _divided(match: re.Match[str]) -> str:
    """'g l-1' is 'g/l'; the length stays, so that spans do."""
    return "/l".ljust(len(match.group()))


#: Words of a sentence, in German also those that say when: behind a number they count nothing.
CLAUSE = frozenset({"clause", "since", "after", "was", "wish"})


def typed(raws: list[Raw], folded: Folded, lexicon: Lexicon) -> list[Token]:
    """Give each word or phrase its type and value, longest entry first."""
    uncounted = words_under(lexicon.language, "uncounted")
    some_of = words_under(lexicon.language, "some_of")
    nth = words_under(lexicon.language, "nth")
    numbered = False
    tokens: list[Token] = []
    index = 0
    while index < len(raws):
        raw = raws[index]
        entry, size = _longest(raws, index, lexicon.trie)
        if size > 1 and entry is not None and entry.type == "GENUS":
            first = lexicon.words.get(raw.text)
            if first is not None and first.value in CLAUSE and not _is_name(raw, folded):
                entry, size = first, 1  # 'an den Phals'
        if raw.text in _SYMBOLS and size <= 1:
            symbol = folded.written(raw.start, raw.end)
            shouted = len(symbol) > 1 and symbol.isupper() and entry is not None  # '1 ML NA LITR'
            small = raw.text in _ON_LABELS and _is_measured(raws, index, tokens, entry, lexicon)
            if (symbol in _SYMBOLS[raw.text] and not shouted) or small:
                entry, size = Entry("ELEMENT", symbol.capitalize()), 1
        if entry is not None and entry.type == "ABBREVIATION":
            genus = _abbreviates(raws, index, folded)
            entry = Entry("GENUS", entry.value) if genus else lexicon.words.get(raw.text)
        if entry is not None and entry.type == "DATED_MONTH" and _accented(raw, folded):
            entry = Entry("FILLER", "filler")  # 'mają' is no month, 'maja' may be one
        if entry is not None and entry.type == "ONE_UNIT":  # 'łyżeczkę na litr', 'litr wody'
            # the word behind it has a meaning of its own, but not behind a number: 'litr i pół'
            size -= size > 1 and entry.value.count(" ") == 1
            some = bool(index) and raws[index - 1].text in uncounted and not raw.after_break
            tokens += _one_unit(entry, tuple(raws[index : index + size]), tokens, some=some)
            index += size
            continue
        if entry is not None and entry.type == "AND_HALF":
            tokens += _and_half(tuple(raws[index : index + size]), tokens)
            index += size
            continue
        if entry is not None and entry.type == "MEDIUM" and _says_of(raw, tokens, some_of):
            tokens.append(Token("OF", "of", (raw,)))
        if entry is not None and not (raw.kind == "number" and size == 1):
            numbered = numbered or (entry.type == "FRACTION" and raw.text in nth)
            tokens.append(Token(entry.type, entry.value, tuple(raws[index : index + size])))
            index += size
            continue
        tokens.append(_bare(raw))
        index += 1
    if not numbered:
        return tokens
    rows = words_under(lexicon.language, "nth_of")
    return [_nth(tokens, i, nth, rows) for i in range(len(tokens))]


#: What is counted by 'third' and the like, where no dose can be a third of it.
_COUNTED_OFF = frozenset({"GENUS", "PLANTS", "POT", "GROWTH", "TIME_UNIT", "OTHER_TASK"})


def _nth(tokens: list[Token], index: int, nth: frozenset[str], rows: frozenset[str]) -> Token:
    """'my third vanda', 'the fourth of July', 'fifth feed': one of a row, and no part of a dose."""
    token = tokens[index]
    if token.type != "FRACTION" or len(token.raws) > 1 or token.raws[0].text not in nth:
        return token
    before = tokens[index - 1] if index and not token.after_break else None
    at = index + 1
    while at < len(tokens) and tokens[at].type in ("OF", "ARTICLE") and not tokens[at].after_break:
        at += 1
    behind = tokens[at] if at < len(tokens) and not tokens[at].after_break else None
    if before is not None and before.type in ("NUMBER", "ARTICLE", "FRACTION"):
        return token  # 'a third'
    if behind is None:
        return token
    fed = behind.type == "FILLER" and behind.value.startswith("feeding")
    fed = fed or behind.raws[0].text in rows
    dated = behind.type in ("MONTH", "SEASON")
    own = before is not None and before[:2] == ("FILLER", "whose")
    counted = at == index + 1 and (behind.type in _COUNTED_OFF or fed or own)
    dosed = behind.type in ("STRENGTH", "LABEL", "LEVEL", "VOLUME_UNIT", "SPOON")
    told = dated or (counted and not dosed)
    return token._replace(type="UNKNOWN", value="nth") if told else token


def _says_of(raw: Raw, before: list[Token], some_of: frozenset[str]) -> bool:
    """Whether the case of a word says 'of' behind a unit: '2 l kory'."""
    measured = bool(before) and before[-1].type == "VOLUME_UNIT"
    return measured and raw.text in some_of and not raw.after_break


#: Behind these a unit is counted already, or stands for 'one' by itself.
_COUNT = frozenset({
    "NUMBER", "FRACTION", "FRACTION_OF", "ARTICLE", "OF", "IN", "TO", "PER", "EVERY", "APIECE",
    "LEVEL", "MULTIPLE", "MINUS", "BOUND", "BOUND_BEHIND",
})  # fmt: skip


def _one_unit(
    entry: Entry, raws: tuple[Raw, ...], before: list[Token], *, some: bool
) -> list[Token]:
    """A unit in the singular, with an article before it where nothing counts it.

    `some` says that there are several without a number: 'ile gram na litr', 'parę gram na litr'.
    """
    type_, unit, *number = entry.value.split()
    if some:
        return [Token(type_.upper(), unit, raws)]
    if not number and before and before[-1].type in _COUNT and not raws[0].after_break:
        return [Token(type_.upper(), unit, raws)]
    behind = (raws[0]._replace(after_break=False), *raws[1:])
    if number:  # 'dwulitrowa', but 'trzy dwulitrowe' are several
        counted = bool(before) and before[-1].type == "NUMBER" and not raws[0].after_break
        apiece = [Token("APIECE", "apiece", raws[:1])] if counted else []
        one = Token("NUMBER", number[0], behind if counted else raws[:1])
        return [*apiece, one, Token(type_.upper(), unit, behind)]
    return [Token("ARTICLE", "a", raws[:1]), Token(type_.upper(), unit, behind)]


def _and_half(raws: tuple[Raw, ...], before: list[Token]) -> list[Token]:
    """'dwa i pół litra', and behind a unit 'dwa litry i pół': as 'two litres and a half'."""
    joined = Token("AND", "and", raws[:1])
    half = Token("FRACTION", "1/2", raws[1:])
    unit = before and before[-1].type in ("VOLUME_UNIT", "MASS_UNIT", "SPOON")
    if not unit or raws[0].after_break:
        return [joined, half]
    return [joined, Token("ARTICLE", "a", raws[:1]), half]


def _accented(raw: Raw, folded: Folded) -> bool:
    """Whether a word was written with accents."""
    return folded.written(raw.start, raw.end).casefold() != raw.text


def _is_name(raw: Raw, folded: Folded) -> bool:
    """Whether an everyday word begins a Latin name: 'Den. nobile', 'Den-Phal', 'für Den nobile'."""
    capital = folded.written(raw.start, raw.end)[0].isupper() and not raw.after_break
    return raw.dotted or folded.text.startswith("-", raw.end) or capital


def _abbreviates(raws: list[Raw], index: int, folded: Folded) -> bool:
    """Whether 'Max.' is a genus here: with a capital, and no number beside it."""
    raw = raws[index]
    if not folded.written(raw.start, raw.end)[0].isupper():
        return False
    if index and raws[index - 1].kind == "number" and not raw.after_break:
        return False
    following = raws[index + 1] if index + 1 < len(raws) else None
    if following is None or following.kind != "number":
        return True
    return folded.text[raw.end + 1 : following.start].strip() != ""


#: Element symbols by their folded form; only this writing of them means the element.
_SYMBOLS = {
    **{s.lower(): (s,) for s in ("N", "P", "K", "S", "B", "Mg")},
    **{s.lower(): (s, s.upper()) for s in ("Ca", "Fe", "Mn", "Zn", "Cu", "Mo", "Si", "Na")},
}


#: Those of a label, which are typed small as well.
_ON_LABELS = frozenset({"n", "p", "k"})
_SHARE_UNITS = frozenset({"PERCENT", "CONCENTRATION_UNIT", "MASS_UNIT"})


def _is_measured(
    raws: list[Raw], index: int, before: list[Token], entry: Entry | None, lexicon: Lexicon
) -> bool:
    """Whether a small letter behind a share is an element, and no article: '13 % n'."""
    unit = before[-1].type if before else ""
    if unit not in _SHARE_UNITS or raws[index].after_break:
        return False
    if unit == "MASS_UNIT":  # '80 mg n pro Liter'
        per = lexicon.words.get(raws[index + 1].text) if index + 1 < len(raws) else None
        return per is not None and per.type in ("PER", "IN", "TO", "FOR")
    if entry is None or index + 1 >= len(raws) or raws[index + 1].after_break:
        return True
    following = lexicon.words.get(raws[index + 1].text)
    joins = following is not None and following.type in ("AND", "PLUS", "IN", "FOR")
    return joins or raws[index + 1].kind in ("number", "sign")


def _bare(raw: Raw) -> Token:
    if raw.kind == "garbled":
        return Token("NUMBER", AMBIGUOUS + raw.text, (raw,))
    if raw.kind in ("number", "fraction", "analysis", "ratio"):
        return Token(raw.kind.upper(), raw.text, (raw,))
    if raw.text == "-":
        return Token("MINUS", raw.text, (raw,))
    return Token("UNKNOWN", raw.text, (raw,))


def _longest(raws: list[Raw], index: int, trie: Trie) -> tuple[Entry | None, int]:
    """The longest entry of the lexicon that starts at this word."""
    best: Entry | None = None
    size = 0
    node = trie
    abbreviated = False  # the dot of 'den.' is no break before 'nobile'
    for offset in range(index, len(raws)):
        raw = raws[offset]
        if offset > index and raw.after_break and raw.kind != "sign" and not abbreviated:
            break
        dotted = node.next.get(raw.text + ".") if raw.dotted else None
        abbreviated = dotted is not None
        following = dotted or node.next.get(raw.text)
        if following is None:
            break
        node = following
        if node.entry is not None:
            best, size = node.entry, offset - index + 1
    return best, size
