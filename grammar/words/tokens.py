"""What the rules over a token list share."""

from __future__ import annotations

from collections.abc import Callable, Collection
from typing import TypeAlias

from grammar.words.scan import Token

Tokens: TypeAlias = list[Token]

QUANTITY_UNITS = frozenset({"VOLUME_UNIT", "MASS_UNIT", "SPOON"})
UNITS = QUANTITY_UNITS | {
    "CONCENTRATION_UNIT", "EC_UNIT", "HARDNESS_UNIT", "ALKALINITY_UNIT", "LENGTH_UNIT",
    "TIME_UNIT", "TEMPERATURE_UNIT", "PERCENT",
}  # fmt: skip
#: Words further away than this do not belong together (and looking on takes quadratic time).
_NEAR = 12
PLANTS = frozenset({"GENUS", "PLANTS", "POT"})
#: What a part of something can begin with: '1/2', '50 %'.
PARTS = frozenset({"FRACTION", "NUMBER"})


def type_at(tokens: Tokens, index: int) -> str:
    """The type of a token, empty outside the list."""
    return tokens[index].type if 0 <= index < len(tokens) else ""


def join(tokens: Tokens, type_: str, value: str) -> Token:
    """One token for several."""
    return Token(type_, value, tuple(raw for token in tokens for raw in token.raws))


def skip(tokens: Tokens, index: int, types: tuple[str, ...]) -> int:
    """The first place from `index` on whose token has none of these types."""
    limit = index + _NEAR
    while index < limit and type_at(tokens, index) in types:
        index += 1
    return index


def broken(tokens: Tokens, start: int, last: int) -> bool:
    """Whether a comma or the like stands before one of these tokens."""
    return any(token.after_break for token in tokens[start : last + 1])


def clauses(tokens: Tokens) -> list[Tokens]:
    """The tokens cut at commas, line breaks and brackets."""
    out: list[Tokens] = []
    for token in tokens:
        if token.after_break or not out:
            out.append([])
        out[-1].append(token)
    return out


def rewrite(
    tokens: Tokens,
    find: Callable[[Tokens, int], tuple[Tokens, int] | None],
    types: Collection[str] = (),
) -> Tokens:
    """The tokens with each stretch that `find` recognises replaced.

    Parameters
    ----------
    tokens : to look through, left to right
    find : for a list and a place in it, the tokens to put there and how many they stand
        for, or None where it finds nothing
    types : of the tokens that such a stretch can begin with; empty for all

    Returns
    -------
    list of Token
    """
    out: Tokens = []
    index = 0
    while index < len(tokens):
        token = tokens[index]
        found = find(tokens, index) if not types or token.type in types else None
        if found is None:
            out.append(token)
            index += 1
        else:
            out += found[0]
            index += found[1]
    return out
