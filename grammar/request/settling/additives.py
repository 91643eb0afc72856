"""What goes into the can beside the feed: '1 ml/l cal-mag' is no label rate of the feed."""

from __future__ import annotations

from grammar.words.scan import Token
from grammar.words.tokens import QUANTITY_UNITS, Tokens, broken, join, rewrite, type_at

_SMALL = frozenset({"OF", "ARTICLE", "FILLER", "IN"})
_COUNTS = frozenset({"NUMBER", "FRACTION", "ARTICLE"})
_PER = frozenset({"PER", "ARTICLE", "IN", "TO", "FOR", "EVERY"})
#: At most so many small words stand between an amount and what it is of.
_FEW = 3


def additives(tokens: Tokens) -> Tokens:
    """'2 ml cal-mag per litre', 'epsom 1 tsp per gallon', 'a bit of kelp': shown, not used."""
    if not any(map(_is_additive, tokens)):
        return tokens
    return rewrite(rewrite(tokens, _behind_at), _before_at)


def _is_additive(token: Token) -> bool:
    return (token.type, token.value) == ("FILLER", "additive")


def _amount_end(tokens: Tokens, index: int) -> int | None:
    """Behind the amount that starts here, and behind the water that it goes into."""
    if type_at(tokens, index) not in _COUNTS or type_at(tokens, index + 1) not in QUANTITY_UNITS:
        return None
    return _water_end(tokens, index + 2) or index + 2


def _water_end(tokens: Tokens, index: int) -> int | None:
    at = index
    while type_at(tokens, at) in _PER:
        at += 1
    if at == index:
        return None
    at += type_at(tokens, at) in ("NUMBER", "FRACTION")
    if type_at(tokens, at) != "VOLUME_UNIT" or broken(tokens, index, at):
        return None
    return at + 1


def _behind_at(tokens: Tokens, index: int) -> tuple[Tokens, int] | None:
    """'1 ml/l of cal-mag', '2 ml cal-mag per litre'."""
    end = _amount_end(tokens, index)
    if end is None or broken(tokens, index + 1, end - 1):
        return None
    at = end
    while type_at(tokens, at) in _SMALL and at - end < _FEW and not _is_additive(tokens[at]):
        at += 1
    if at >= len(tokens) or not _is_additive(tokens[at]) or broken(tokens, end, at):
        return None
    last = _additives_end(tokens, at)
    last = _rhythm_end(tokens, _water_end(tokens, last) or last)
    return [join(tokens[index:last], "UNKNOWN", "additive")], last - index


def _before_at(tokens: Tokens, index: int) -> tuple[Tokens, int] | None:
    """'epsom 1 tsp per gallon', 'cal-mag at 1 ml/l'; without an amount only the word is shown."""
    if not _is_additive(tokens[index]):
        return None
    behind = _additives_end(tokens, index)
    at = behind
    while type_at(tokens, at) in _SMALL - {"ARTICLE"} and at - behind < _FEW:
        at += 1
    end = _amount_end(tokens, at)
    if end is None or broken(tokens, index + 1, end - 1):
        end = behind
    end = _rhythm_end(tokens, end)
    return [join(tokens[index:end], "UNKNOWN", "additive")], end - index


def _rhythm_end(tokens: Tokens, index: int) -> int:
    """Behind how often that is added, where it stands right there: 'epsom 1 g/l monthly'."""
    often = type_at(tokens, index) in ("REGIME", "OTHER_REGIME")
    return index + 1 if often and not tokens[index].after_break else index


def _additives_end(tokens: Tokens, index: int) -> int:
    while index < len(tokens) and _is_additive(tokens[index]):
        index += 1
    return index
