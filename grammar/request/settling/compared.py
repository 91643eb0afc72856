"""Strengths that are only compared with: 'half is too much', '75 % less than the label'."""

from __future__ import annotations

from fractions import Fraction

from grammar.request.settling.near import part_at
from grammar.words.scan import Token
from grammar.words.tokens import (
    PARTS,
    PLANTS,
    UNITS,
    Tokens,
    broken,
    join,
    rewrite,
    skip,
    type_at,
)

_SMALL = ("FILLER", "ARTICLE", "OF", "IN")
_STRENGTHS = frozenset({"FRACTION", "LEVEL", "VAGUE", "MULTIPLE"})


def compared(tokens: Tokens) -> Tokens:
    """Strengths that are less than, too much, or a part of another."""
    for find, types, needed in _STRETCHES:
        if not needed.isdisjoint({t.type for t in tokens}):
            tokens = rewrite(tokens, find, types)
    return [_plain(t) for t in tokens]


def _plain(token: Token) -> Token:
    """What such words are where they compare nothing."""
    if token.type == "JUDGED":
        return token._replace(type="UNKNOWN" if token.value == "harmed" else "FILLER")
    return token._replace(type="UNKNOWN") if token.type == "REDUCED" else token


def weaker(tokens: Tokens) -> Tokens:
    """'4x diluted', 'ten times less than the label': no multiple of the dose, but asked about."""
    return rewrite(tokens, _weaker_at, ("NUMBER", "MULTIPLE", "FILLER"))


def _weaker_at(tokens: Tokens, index: int) -> tuple[Tokens, int] | None:
    first = tokens[index]
    if first.type == "FILLER":  # 'diluted 4x'
        if first.value != "dilution":
            return None
        at = skip(tokens, index + 1, ("FILLER", "ARTICLE", "BY"))
        end = _multiple_end(tokens, at)
        if end is None or at - index > _NEAR or broken(tokens, index + 1, end - 1):
            return None
        return [join(tokens[index:end], "RANGE", "STRENGTH")], end - index
    end = _multiple_end(tokens, index)
    if end is None or end >= len(tokens) or tokens[end].after_break:
        return None
    behind = tokens[end]
    diluted = behind[:2] == ("FILLER", "dilution")
    less = behind[:2] == ("BOUND", "less")
    if not (diluted or less) or broken(tokens, index + 1, end):
        return None
    return [join(tokens[index : end + 1], "RANGE", "STRENGTH")], end + 1 - index


def _multiple_end(tokens: Tokens, index: int) -> int | None:
    """Behind 'double' or '4x'; a bare 'full' is none."""
    if type_at(tokens, index) == "MULTIPLE":
        return None if tokens[index].value == "1" else index + 1
    times = type_at(tokens, index) == "NUMBER" and type_at(tokens, index + 1) == "TIMES"
    return index + 2 if times else None


#: At most so many small words stand between a multiple and what it is of.
_NEAR = 3


def _written(value: Fraction) -> str:
    return f"{value.numerator}/{value.denominator}"


def _of_plants_at(tokens: Tokens, index: int) -> tuple[Tokens, int] | None:
    """'half my phals look sad' is said of the plants."""
    part = part_at(tokens, index)
    if part is None or type_at(tokens, part[1]) != "FILLER" or tokens[part[1]].value != "whose":
        return None
    plant = part[1] + 1
    if type_at(tokens, plant) not in PLANTS or broken(tokens, part[1], plant):
        return None
    return [join(tokens[index:plant], "UNKNOWN", "share")], plant - index


def _half_of_half_at(tokens: Tokens, index: int) -> tuple[Tokens, int] | None:
    """'half of half strength' is a quarter."""
    first = part_at(tokens, index)
    if first is None:
        return None
    if type_at(tokens, first[1]) != "OF":
        second = part_at(tokens, first[1])  # 'połowa połowy dawki': a half, or its half
        if second is None or second[0] != first[0] or tokens[first[1]].after_break:
            return None
        return [join(tokens[index : second[1]], "RANGE", "FRACTION")], second[1] - index
    at = skip(tokens, first[1], _SMALL)
    second = part_at(tokens, at)
    if second is None or broken(tokens, first[1], at):
        return None
    value = _written(first[0] * second[0])
    return [join(tokens[index : second[1]], "FRACTION", value)], second[1] - index


def _less_than_at(tokens: Tokens, index: int) -> tuple[Tokens, int] | None:
    """'75 % less than the label' is a quarter; than anything else it is asked about."""
    part = part_at(tokens, index)
    if part is None or type_at(tokens, part[1]) != "BOUND" or tokens[part[1]].after_break:
        return None
    than = part[1]
    if tokens[than].value == "either":  # '25 % max'
        return None
    at = skip(tokens, than + 1, _SMALL)
    whole = type_at(tokens, at) == "LABEL" or (
        (type_at(tokens, at), tokens[at].value if at < len(tokens) else "") == ("LEVEL", "1")
    )
    if tokens[than].value == "less" and whole and not broken(tokens, than + 1, at):
        left = join(tokens[index : than + 1], "FRACTION", _written(1 - part[0]))
        return [left, *tokens[at : at + 1]], at + 1 - index
    if len(tokens[than].raws) == 1:
        return None  # 'half under lights'
    return [join(tokens[index : than + 1], "RANGE", "FRACTION")], than + 1 - index


def _reduced_at(tokens: Tokens, index: int) -> tuple[Tokens, int] | None:
    """'reduce by 75 %' is a quarter."""
    if tokens[index].type != "REDUCED":
        return None
    small = ("FILLER", "ARTICLE", "OF", "STRENGTH", "LABEL")
    by = tokens[index].value == "by"
    at = skip(tokens, index + 1, small if by else (*small, "IN", "BY"))
    part = part_at(tokens, at)
    if part is None or broken(tokens, index + 1, at):
        return None
    if type_at(tokens, part[1]) in UNITS | {"SHARE"} and not tokens[part[1]].after_break:
        return None
    labels = [t for t in tokens[index:at] if t.type == "LABEL"]
    if not by:
        return [*labels, join(tokens[index : part[1]], "RANGE", "FRACTION")], part[1] - index
    left = join(tokens[index : part[1]], "FRACTION", _written(1 - part[0]))
    return [*labels, left], part[1] - index


def _judged_at(tokens: Tokens, index: int) -> tuple[Tokens, int] | None:
    """'half strength is too much', '1/4 burned them': told, and no wish."""
    kind = type_at(tokens, index)
    part = part_at(tokens, index)
    if part is None and kind not in _STRENGTHS:
        return None
    end = part[1] if part else index + 1
    at = skip(tokens, end, ("FILLER", "ARTICLE", "STRENGTH", "OF", "LABEL", "LEVEL"))
    behind = skip(tokens, at, ("GENUS", "PLANTS", "FILLER", "COUNT"))
    if type_at(tokens, behind) == "JUDGED" and tokens[behind].value == "harmed":
        at = behind  # 'halbe Dosis hat die Phals verbrannt'
    if type_at(tokens, at) != "JUDGED" or broken(tokens, index + 1, at):
        return None
    if kind == "MULTIPLE" and type_at(tokens, index + 1) != "STRENGTH":
        return None
    return [join(tokens[index : at + 1], "RANGE", "FRACTION")], at + 1 - index


#: What is looked for in turn, the types it can begin with, and those without which there is none.
_STRETCHES = (
    (_of_plants_at, PARTS, PLANTS),
    (_half_of_half_at, PARTS, PARTS),
    (_less_than_at, PARTS, frozenset({"BOUND"})),
    (_reduced_at, frozenset({"REDUCED"}), frozenset({"REDUCED"})),
    (_judged_at, PARTS | _STRENGTHS, frozenset({"JUDGED"})),
)
