"""'2 l, sorry I mean 3 l': a word of correction between two values of one kind."""

from __future__ import annotations

from typing import NamedTuple

from grammar.words.scan import AMBIGUOUS, Token
from grammar.words.tokens import Tokens, join, skip, type_at

_STRENGTHS = frozenset({"FRACTION", "LEVEL", "MULTIPLIER", "VAGUE"})
_BETWEEN = ("FILLER", "ARTICLE", "IN", "TO", "ASIDE")
#: What one word says by itself. Two feeds are asked about: either may be on the shelf.
_WORDS = frozenset({"FORM", "MEDIUM", "SEASON", "MONTH", "REGIME", "WATER", "GENUS"})


class _Value(NamedTuple):
    slot: str
    start: int
    end: int


def corrections(tokens: Tokens) -> Tokens:
    """The second value stands, the first is shown as read so; elsewhere such words fill.

    A CORRECTED token is the first, its value from where to where the second is written.
    """
    if not any(map(_corrects, tokens)):
        return tokens
    values = [v for i in range(len(tokens)) if (v := _value_at(tokens, i)) is not None]
    unclear = any(t.type in ("RANGE", "SEVERAL") for t in tokens)
    stale: dict[_Value, _Value] = {}
    for index, token in enumerate(tokens):
        if not _corrects(token) or unclear:
            continue
        if any(v.end == index and v in stale.values() for v in values):
            continue  # 'oops quarter I meant'
        pair = _behind(tokens, values, index) or _before(tokens, values, index)
        if pair is not None:
            stale[pair[0]] = pair[1]
    starts = {old.start: (old, new) for old, new in stale.items()}
    out: Tokens = []
    index = 0
    while index < len(tokens):
        if index in starts:
            old, new = starts[index]
            span = f"{tokens[new.start].start} {tokens[new.end - 1].end}"
            out.append(join(tokens[old.start : old.end], "CORRECTED", span))
            index = old.end
            continue
        out.append(_plain(tokens, index, values))
        index += 1
    return out


def _corrects(token: Token) -> bool:
    return (token.type, token.value) == ("FILLER", "correction")


def _value_at(tokens: Tokens, index: int) -> _Value | None:
    """A volume, a strength, a word; a rate, a pot and an unclear number are none."""
    kind, unit = type_at(tokens, index), type_at(tokens, index + 1)
    if kind in _STRENGTHS:
        return _Value("strength", index, index + 1)
    if kind in _WORDS:
        return _Value(kind.lower(), index, index + 1)
    if kind != "AMOUNT" or AMBIGUOUS in tokens[index].value:
        return None
    if unit == "PERCENT":
        return _Value("strength", index, index + 2)
    rate = "PER" in (type_at(tokens, index - 1), type_at(tokens, index + 2))
    other = rate or type_at(tokens, index - 1) == "EACH" or type_at(tokens, index + 2) == "POT"
    return _Value("volume", index, index + 2) if unit == "VOLUME_UNIT" and not other else None


def _pair(values: list[_Value], old: _Value | None, new: _Value) -> tuple[_Value, _Value] | None:
    """The two, where they are all that is said of their kind."""
    alike = [v for v in values if v.slot == new.slot]
    return (old, new) if old is not None and alike == [old, new] else None


def _behind(tokens: Tokens, values: list[_Value], index: int) -> tuple[_Value, _Value] | None:
    """'2 l, no wait, 3 l': the value behind the word corrects the one before."""
    start = skip(tokens, index + 1, _BETWEEN)
    new = next((v for v in values if v.start == start), None)
    if new is None or (new.slot == "genus" and not _names_only(tokens, index, start)):
        return None  # 'phal, sorry, also a vanda'
    old = next((v for v in reversed(values) if v.slot == new.slot and v.end <= index), None)
    return _pair(values, old, new)


def _names_only(tokens: Tokens, index: int, start: int) -> bool:
    """Whether nothing but an article stands before the plant."""
    between = tokens[index + 1 : start]
    return all(t.type == "ARTICLE" or t[:2] == ("FILLER", "whose") for t in between)


def _before(tokens: Tokens, values: list[_Value], index: int) -> tuple[_Value, _Value] | None:
    """'half, quarter I meant': the value at once before the word corrects an earlier one."""
    at = index - 1
    while type_at(tokens, at) == "STRENGTH":
        at -= 1
    new = next((v for v in values if v.end == at + 1), None)
    if new is None or tokens[index].after_break:
        return None
    old = next((v for v in reversed(values) if v.slot == new.slot and v.end <= new.start), None)
    return _pair(values, old, new)


def _plain(tokens: Tokens, index: int, values: list[_Value]) -> Token:
    """A word of correction once it is used; before a value that corrects none, it is shown."""
    token = tokens[index]
    if not _corrects(token):
        return token
    start = skip(tokens, index + 1, _BETWEEN)
    new = next((v for v in values if v.start == start), None)
    earlier = any(t.type == "AMOUNT" for t in tokens[:index])
    lone = (
        new is not None
        and earlier
        and not any(v.slot == new.slot and v.end <= index for v in values)
    )
    return token._replace(type="UNKNOWN") if lone else token
