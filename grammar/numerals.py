"""Numbers as people write them: digits, words, fractions, mixed numbers."""

from __future__ import annotations

import math
import re

from grammar.scan import AMBIGUOUS, Token

_COUNTED = frozenset({"VOLUME_UNIT", "MASS_UNIT", "SPOON", "LENGTH_UNIT"})
#: Behind a half of something these are not what it is a half of.
_NO_WHOLE = frozenset({
    "OF", "OR", "TO", "AND", "MINUS", "IN", "FOR", "PER", "NUMBER", "FRACTION", "FRACTION_OF",
    "SHARE",
})  # fmt: skip
_GROUPED = re.compile(r"[1-9]\d{0,2}[.,]\d{3}")


def number_value(text: str) -> str:
    """The canonical form of a number as written.

    Returns
    -------
    str
        A float's text; with `AMBIGUOUS` in front where a comma or point could
        mean thousands; 'nan' where it is no number at all.
    """
    if _GROUPED.fullmatch(text):
        return AMBIGUOUS + text
    plain = text.replace(",", ".")
    if plain.count(".") > 1:
        return "nan"
    return repr(float(plain))


def fraction_value(text: str) -> float:
    """The value of '3/4' [1]; infinite for a zero below the line."""
    above, below = (int(part) for part in text.split("/"))
    return above / below if below else math.inf


def compose(tokens: list[Token]) -> list[Token]:
    """Give every number one token: 'two hundred', 'one and a half', '1 1/2', 'two point five'."""
    out: list[Token] = []
    index = 0
    while index < len(tokens):
        token, used = _number_at(tokens, index)
        out.append(token)
        index += used
        if token.type == "FRACTION_OF":  # a noun whose case says 'of': 'połowa dawki'
            out[-1] = token._replace(type="FRACTION")
            following = tokens[index] if index < len(tokens) else None
            if following is not None and not following.after_break:
                if following.type not in _NO_WHOLE:
                    out.append(Token("OF", "of", (token.raws[-1]._replace(after_break=False),)))
    return out


def _type(tokens: list[Token], index: int) -> str:
    return tokens[index].type if 0 <= index < len(tokens) else ""


def _number_at(tokens: list[Token], index: int) -> tuple[Token, int]:
    token = tokens[index]
    if token.type == "POINT" and _type(tokens, index + 1) == "NUMBER":
        return _point(tokens, index, index)
    if token.type == "ARTICLE" and _is_hundred(tokens, index + 1):
        return Token("NUMBER", "100.0", token.raws + tokens[index + 1].raws), 2
    if token.type != "NUMBER":
        return token, 1
    if token.raws[0].kind == "garbled":
        return token, 1
    if token.raws[0].kind == "number":
        whole, end = token._replace(value=number_value(token.value)), index + 1
    else:
        whole, end = _words(tokens, index)
    if _type(tokens, end) == "POINT" and _type(tokens, end + 1) == "NUMBER":
        return _point(tokens, index, end)
    mixed = _mixed(tokens, end)
    if mixed and AMBIGUOUS not in whole.value:
        fraction, behind = mixed
        total = float(whole.value) + fraction
        raws = tuple(raw for t in tokens[index:behind] for raw in t.raws)
        return Token("NUMBER", repr(total), raws), behind - index
    return whole, end - index


def _is_hundred(tokens: list[Token], index: int) -> bool:
    return _type(tokens, index) == "NUMBER" and tokens[index].value == "100"


def _words(tokens: list[Token], index: int) -> tuple[Token, int]:
    """'twenty five', 'two hundred and fifty': value and the index behind."""
    total = float(tokens[index].value)
    end = index + 1
    if total < 20 and _is_hundred(tokens, end) and tokens[end].raws[0].kind == "word":
        total, end = total * 100, end + 1
    while _type(tokens, end) == "NUMBER" and tokens[end].raws[0].kind == "word":
        following = float(tokens[end].value)
        fits = (20 <= total % 100 < 100 and total % 10 == 0 and following < 10) or (
            total >= 100 and total % 100 == 0 and following < 100
        )
        if not fits or tokens[end].after_break:
            break
        total, end = total + following, end + 1
    raws = tuple(raw for t in tokens[index:end] for raw in t.raws)
    return Token("NUMBER", repr(total), raws), end


def _point(tokens: list[Token], index: int, point: int) -> tuple[Token, int]:
    """'two point five', 'point two five'."""
    digits = ""
    end = point + 1
    while _type(tokens, end) == "NUMBER" and len(digits) < 4:
        value = tokens[end].value
        if not value.isdigit() or (digits and tokens[end].raws[0].kind != "word"):
            break
        digits, end = digits + value, end + 1
    whole = "".join(t.value for t in tokens[index:point]) or "0"
    value = f"{whole}.{digits}" if whole.isdigit() and digits else "nan"
    raws = tuple(raw for t in tokens[index:end] for raw in t.raws)
    return Token("NUMBER", value, raws), end - index


def _mixed(tokens: list[Token], index: int) -> tuple[float, int] | None:
    """The fraction between a whole number and a unit: '1 1/2 l', 'one and a half l'."""
    at = index
    linked = _type(tokens, at) in ("AND", "MINUS")
    at += linked
    if _type(tokens, at) == "ARTICLE":
        at += 1
    if _type(tokens, at) != "FRACTION" or tokens[at].after_break:
        return None
    if not linked and tokens[at].raws[-1].kind == "word":
        return None  # 'two half litre bottles'
    fraction = fraction_value(tokens[at].value)
    if not fraction < 1:
        return None
    behind = at + 1
    return (fraction, behind) if _type(tokens, behind) in _COUNTED else None
