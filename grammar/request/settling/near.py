"""What the rules ask about a place in the list: an amount, a volume, a strength."""

from __future__ import annotations

from fractions import Fraction

from grammar.words.numerals import fraction_value
from grammar.words.scan import AMBIGUOUS, Token
from grammar.words.tokens import QUANTITY_UNITS, Tokens
from grammar.words.tokens import type_at as _type
from grammar.words.units import TAKEN, to_canonical

#: A quantity dissolved in a volume is at least this many times smaller than it.
DILUTED = 20.0


def is_amount(tokens: Tokens, index: int) -> bool:
    """Whether a number with a unit of volume, mass or spoons starts here."""
    return (
        _type(tokens, index) in ("NUMBER", "FRACTION")
        and _type(tokens, index + 1) in QUANTITY_UNITS
        and not tokens[index + 1].after_break
    )


def is_volume(tokens: Tokens, index: int) -> bool:
    return is_amount(tokens, index) and tokens[index + 1].type == "VOLUME_UNIT"


def quantity_before(tokens: Tokens, index: int) -> int | None:
    """Where the unit of the quantity before stands: '1 g', '1 g of powder'."""
    at = index - 1
    while _type(tokens, at) in ("FORM", "OF", "FILLER", "ARTICLE", "IN") and index - at < 4:
        at -= 1
    return at if _type(tokens, at) in QUANTITY_UNITS else None


def litres(tokens: Tokens, index: int) -> float | None:
    """A number with a unit of volume [L], gallons roughly."""
    if _type(tokens, index) not in ("NUMBER", "FRACTION", "ARTICLE"):
        return None
    value, unit = tokens[index].value, tokens[index + 1].value.removeprefix(TAKEN)
    if AMBIGUOUS in value:
        return None
    if tokens[index].type == "ARTICLE":
        amount = 1.0
    else:
        amount = fraction_value(value) if "/" in value else float(value)
    rough = {"gallon": 4.0, "quart": 1.0, "pint": 0.5, "fluid_ounce": 0.03, "cup": 0.25}
    return amount * (rough[unit] if unit in rough else to_canonical(1.0, unit))


def part_at(tokens: Tokens, index: int) -> tuple[Fraction, int] | None:
    """The value of a fraction or percentage below the whole, and where it ends."""
    kind = _type(tokens, index)
    if kind == "FRACTION" and "/" in tokens[index].value:
        if not 0 < fraction_value(tokens[index].value) < 1:
            return None
        return Fraction(tokens[index].value), index + 1
    percent = kind == "NUMBER" and _type(tokens, index + 1) == "PERCENT"
    if percent and AMBIGUOUS not in tokens[index].value:
        if not 0 < float(tokens[index].value) < 100:
            return None
        return Fraction(tokens[index].value) / 100, index + 2
    return None


def strength(token: Token) -> Token:
    return token._replace(type="MULTIPLIER") if token.type == "MULTIPLE" else token
