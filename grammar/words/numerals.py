"""Numbers as people write them: digits, words, fractions, mixed numbers."""

from __future__ import annotations

import math
import re

from grammar.words.scan import AMBIGUOUS, Token

_COUNTED = frozenset({"VOLUME_UNIT", "MASS_UNIT", "SPOON", "LENGTH_UNIT"})
#: Behind a half of something these are not what it is a half of.
_NO_WHOLE = frozenset({
    "OF", "OR", "TO", "AND", "MINUS", "IN", "FOR", "PER", "NUMBER", "FRACTION", "FRACTION_OF",
    "SHARE",
})  # fmt: skip
_MEASURED = _COUNTED | {"TIME_UNIT", "TEMPERATURE_UNIT"}
#: A half before these is a half of them.
_HALVED = _MEASURED | {"STRENGTH", "LEVEL", "LABEL", "LOOSE_MEASURE", "CONTAINER"}
#: Beside these a half that is of nothing may be the strength.
_BESIDE_A_STRENGTH = frozenset({
    "ANALYSIS", "FORM", "VOLUME_UNIT", "REGIME", "SEASON", "MONTH", "NUMBER", "PER", "MINUS",
})  # fmt: skip
_OF_DOSE = frozenset({"STRENGTH", "LEVEL", "LABEL"})
_HALVES = frozenset({"HALF_MORE", "MEASURED_HALF"})
_ADDS = ("AND", "more")
#: The middle of these is a time.
_IN_TIME = frozenset({"MONTH", "DATED_MONTH", "TIME_UNIT"})
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
    if any(token.type in _HALVES or token[:2] == _ADDS for token in tokens):
        tokens = _halves(_added(tokens))
    out: list[Token] = []
    index = 0
    while index < len(tokens):
        token, used = _number_at(tokens, index)
        out.append(token)
        index += used
        if token.type == "FRACTION_OF":  # a noun whose case says 'of': 'połowa dawki'
            following = tokens[index] if index < len(tokens) else None
            part = following is not None and not following.after_break
            if part and following is not None and following.type in _IN_TIME:
                out[-1] = token._replace(type="FILLER")  # 'w połowie lutego'
                continue
            out[-1] = token._replace(type="FRACTION")
            if part and following is not None and following.type not in _NO_WHOLE:
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
    mixed = _mixed(tokens, end, one=whole.value in ("1", "1.0"))
    if mixed and AMBIGUOUS not in whole.value:
        fraction, behind = mixed
        total = float(whole.value) + fraction
        raws = tuple(raw for t in tokens[index:behind] for raw in t.raws)
        return Token("NUMBER", repr(total), raws), behind - index
    return whole, end - index


def _is_hundred(tokens: list[Token], index: int) -> bool:
    return _type(tokens, index) == "NUMBER" and tokens[index].value == "100"


def _is_thousand(tokens: list[Token], index: int) -> bool:
    thousand = _type(tokens, index) == "NUMBER" and tokens[index].value == "1000"
    return thousand and tokens[index].raws[0].kind == "word" and not tokens[index].after_break


def _words(tokens: list[Token], index: int) -> tuple[Token, int]:
    """'twenty five', 'two hundred and fifty': value and the index behind."""
    total = float(tokens[index].value)
    end = index + 1
    if total < 20 and _is_hundred(tokens, end) and tokens[end].raws[0].kind == "word":
        total, end = total * 100, end + 1
    elif total < 1000 and _is_thousand(tokens, end):
        total, end = total * 1000, end + 1  # 'dos mil'
    while _type(tokens, end) == "NUMBER" and tokens[end].raws[0].kind == "word":
        following = float(tokens[end].value)
        fits = (
            (20 <= total % 100 < 100 and total % 10 == 0 and following < 10)
            or (total >= 100 and total % 100 == 0 and following < 100)
            or (total >= 1000 and total % 1000 == 0 and following < 1000)
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


def _mixed(tokens: list[Token], index: int, *, one: bool) -> tuple[float, int] | None:
    """The fraction between a whole number and a unit: '1 1/2 l', 'one and a half l'.

    Of a strength it is one only behind a `one`: 'one and a half strength'.
    """
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
    counted = _COUNTED | {"STRENGTH", "TIMES"} if one else _COUNTED
    return (fraction, behind) if _type(tokens, behind) in counted else None


# --- halves behind and before a measure, in languages that have a word of their own for them ------


def _added(tokens: list[Token]) -> list[Token]:
    """'litro y 1/2': the fraction in figures that adds to a measure before it."""
    out: list[Token] = []
    for token in tokens:
        figures = token.type == "FRACTION" and token.raws[0].kind == "fraction"
        joined = figures and not token.after_break and bool(out) and out[-1][:2] == _ADDS
        if joined and len(out) > 1 and out[-2].type in _MEASURED and not out[-1].after_break:
            link = out.pop()
            out.append(Token("HALF_MORE", token.value, link.raws + token.raws))
        else:
            out.append(token)
    return out


def _halves(tokens: list[Token]) -> list[Token]:
    """'litro y medio', 'dos y media cucharadas', 'medio litro' but not 'medio: corteza'."""
    out: list[Token] = []
    for index, token in enumerate(tokens):
        following = tokens[index + 1] if index + 1 < len(tokens) else None
        near = following if following is not None and not following.after_break else None
        if token.type == "MEASURED_HALF":
            out.append(_half_before(token, out, near))
        elif token.type == "HALF_MORE":
            out += _half_behind(token, out, near, tokens[index + 1 : index + 5])
        else:
            out.append(token)
    return out


def _half_before(token: Token, before: list[Token], near: Token | None) -> Token:
    """A half where a measure or a dose follows, or where it stands alone and can be no noun."""
    if near is not None and near.type in _HALVED:
        return Token("FRACTION", "1/2", token.raws)
    last = before[-1].type if before and not token.after_break else ""
    if last == "STRENGTH":
        return token._replace(type="UNKNOWN")  # 'dosis media': half, or a middling one
    parted = near is not None and near.type == last == "PER"  # 'polvo / media / otoño'
    ends = near is None or near.type in ("FOR", "TO", "IN")  # 'un cuarto aquí, media para ...'
    if token.value == "alone" and (ends or parted) and last in ("", "TO", "PER"):
        return Token("FRACTION", "1/2", token.raws)
    beside = near is not None and near.type in _BESIDE_A_STRENGTH
    if token.value == "alone" and (last in _BESIDE_A_STRENGTH or (not last and beside)):
        return token._replace(type="UNKNOWN")  # 'polvo media 5 l': shown, never dropped
    return token._replace(type="FILLER")


def _half_behind(
    token: Token, out: list[Token], near: Token | None, behind: list[Token]
) -> list[Token]:
    """What stands for 'and a half'; a number or a unit before it is taken off `out`."""
    value, _, ending = token.value.partition(" ")
    last = out[-1] if out and not token.after_break else None
    of_dose = _is_of_dose(behind)
    if last is not None and last.type in ("NUMBER", "ARTICLE") and not of_dose:
        whole = _whole(last)
        if whole is not None:
            del out[-1]
            more = repr(whole + fraction_value(value))
            return [Token("NUMBER", more, last.raws + token.raws)]
    fits = last is not None and last.raws[-1].text.rstrip("s").endswith(ending)
    # 'litro y medio dosis completa': a half in the gender of its unit is none of the dose
    own = token.value == "1/2" and fits and near is not None and near.type in _OF_DOSE
    counts = near is not None and near.type in _HALVED and not own
    of_dose = of_dose and not own
    if last is None or last.type not in _MEASURED or not fits or of_dose or counts:
        words = Token("FRACTION", value, token.raws[1:])
        return [Token("AND", "and", token.raws[:1]), words]
    del out[-1]
    number = out[-1] if out and not last.after_break else None
    if number is not None and number.type in ("NUMBER", "ARTICLE"):
        whole = _whole(number)
        if whole is None:
            return [last, token._replace(type="UNKNOWN")]
        more = repr(whole + fraction_value(value))
        out[-1] = Token("NUMBER", more, number.raws + token.raws)
        return [last]
    inner = (last.raws[0]._replace(after_break=False), *last.raws[1:])
    one = Token("NUMBER", repr(1 + fraction_value(value)), last.raws[:1] + token.raws)
    return [one, last._replace(raws=inner)]


def _is_of_dose(behind: list[Token]) -> bool:
    """Whether what follows says that a fraction is one of the dose: 'y 1/4 de la dosis'."""
    for token in behind:
        if token.after_break or token.type not in ("OF", "ARTICLE", "FILLER"):
            return not token.after_break and token.type in ("STRENGTH", "LABEL", "LEVEL")
    return False


def _whole(token: Token) -> float | None:
    """The value of a number or an article, None for a number that could be two things."""
    if token.type == "ARTICLE":
        return None if token.value == "several" else 1.0
    text = token.value
    if token.raws[0].kind == "number":
        text = number_value(text)
    return None if AMBIGUOUS in text or token.raws[0].kind == "garbled" else float(text)
