"""Words of another language in a message: taken where the message's own has none for them."""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

from grammar.lexicon import Lexicon, load
from grammar.words.detect import knows_all, knows_any
from grammar.words.scan import Folded, Raw, Token, typed

#: Token types that say something of a dose by themselves: a stray word may be one of these.
#: Words that only hold a sentence together need more of their language around them.
_CONTENT = frozenset({
    "FORM", "MEDIUM", "GENUS", "SEASON", "MONTH", "GROWTH", "REGIME", "WATER", "OTHER_WATER",
    "FRACTION", "LEVEL", "VAGUE", "STRENGTH", "LABEL", "VOLUME_UNIT", "MASS_UNIT", "SPOON",
    "LOOSE_MEASURE", "ELEMENT", "OXIDE", "HARDNESS", "PLANTS", "POT",
})  # fmt: skip
#: Shorter words have a double in some other language too often [letters].
_SHORTEST = 4
#: Of these a message says one thing: what its own language says of it stands.
_SAID_ONCE = {
    "SEASON": frozenset({"SEASON", "MONTH"}), "MONTH": frozenset({"SEASON", "MONTH"}),
    "REGIME": frozenset({"REGIME", "OTHER_REGIME"}), "GROWTH": frozenset({"GROWTH"}),
}  # fmt: skip
#: From so much of another language on, its small words count as well [words].
_SPOKEN = 2.0


class Other(NamedTuple):
    """A further language of a message, and how much of it was heard [words]."""

    code: str
    heard: float
    among: tuple[str, ...]

    def knows_any(self, raws: list[Raw]) -> bool:
        """Whether it has a word for one of these; most have none, and need not be loaded."""
        return knows_any((raw.text for raw in raws), self.code, self.among)


class Mixed(NamedTuple):
    """Tokens of a message, and those of a language of which there is nothing else in it."""

    tokens: list[Token]
    stray: tuple[Token, ...] = ()


def mixed(tokens: list[Token], folded: Folded, lexicon: Lexicon, others: Sequence[Other]) -> Mixed:
    """Tokens with the unknown words read in a further language, where one has them.

    Parameters
    ----------
    tokens : of `scan.typed`
    folded : the message
    lexicon : of its own language, whose everyday words mean nothing elsewhere
    others : the languages that come into question, the likeliest first
    """
    if not others or all(t.type != "UNKNOWN" for t in tokens):
        return Mixed(tokens)
    out: list[Token] = []
    stray: list[Token] = []
    index = 0
    while index < len(tokens):
        end = index
        while end < len(tokens) and tokens[end].type == "UNKNOWN":
            end += 1
        if end == index:
            out.append(tokens[index])
            index += 1
            continue
        raws = [raw for token in tokens[index:end] for raw in token.raws]
        found, other = _read(raws, folded, lexicon, others)
        if other is not None and other.heard < _SPOKEN:
            said = {t.type for t in tokens}
            found = [x for t in found for x in (_unknown(t) if _overrides(t, said) else [t])]
            stray += [t for t in found if t.type in _CONTENT]
        out += found
        index = end
    return Mixed(out, tuple(stray))


def _overrides(token: Token, said: set[str]) -> bool:
    """Whether a stray word says what the message has said in its own language."""
    return not said.isdisjoint(_SAID_ONCE.get(token.type, frozenset()))


def _read(
    raws: list[Raw], folded: Folded, lexicon: Lexicon, others: Sequence[Other]
) -> tuple[list[Token], Other | None]:
    """A stretch of unknown words in the language that knows most of them, and that language."""
    best, by = [Token("UNKNOWN", raw.text, (raw,)) for raw in raws], None
    for other in others:
        if not other.knows_any(raws):
            continue
        tokens = [
            token
            for found in typed(raws, folded, load(other.code))
            for token in ([found] if _taken(found, lexicon, other) else _unknown(found))
        ]
        if _unclear(tokens) < _unclear(best):
            best, by = tokens, other
    return best, by


def _taken(token: Token, own: Lexicon, other: Other) -> bool:
    if all(raw.text in own.plain for raw in token.raws):
        return False  # 'late' is no Polish summer in an English message
    if other.heard >= _SPOKEN:
        return True
    if knows_all((raw.text for raw in token.raws), own.language, other.among):
        return False
    long = sum(len(raw.text) for raw in token.raws) >= _SHORTEST
    return token.type in _CONTENT and long


def _unknown(token: Token) -> list[Token]:
    return [Token("UNKNOWN", raw.text, (raw,)) for raw in token.raws]


def _unclear(tokens: list[Token]) -> int:
    return sum(t.type == "UNKNOWN" for t in tokens)
