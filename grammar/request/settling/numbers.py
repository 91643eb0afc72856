"""Numbers and what they count: strengths, signs, ranges, amounts, plants."""

from __future__ import annotations

import math

from grammar.request.settling.near import is_amount
from grammar.words.numerals import fraction_value
from grammar.words.scan import AMBIGUOUS, CLAUSE, Token
from grammar.words.tokens import PLANTS as _PLANTS
from grammar.words.tokens import QUANTITY_UNITS, UNITS, Tokens, rewrite
from grammar.words.tokens import join as _join
from grammar.words.tokens import skip as _skip
from grammar.words.tokens import type_at as _type

SLOTS = frozenset({
    "FORM", "MEDIUM", "SEASON", "MONTH", "GROWTH", "REGIME", "GENUS", "WATER", "FRACTION",
    "LEVEL", "MULTIPLE", "MULTIPLIER", "VAGUE", "AMOUNT", "ANALYSIS", "EXACT", "OTHER_WATER",
})  # fmt: skip

#: From here on a volume beside a strength is the water, where no other is named [L].
LEAST_WATER_L = 0.2


def strength_numbers(tokens: Tokens) -> Tokens:
    """'0.25 strength', 'strength .5': a bare number beside the word is a strength."""
    out = list(tokens)
    for index, token in enumerate(out):
        if token.type != "NUMBER" or AMBIGUOUS in token.value:
            continue
        if token.raws[0].kind == "word" and float(token.value).is_integer():
            continue  # 'two strengths'; but 'point two five' is one
        following, before = _type(out, index + 1), _type(out, index - 1)
        alone = following not in UNITS | {"TIMES", "MINUS", "TO", "OR", "PER"} and not is_amount(
            out, index
        )
        # 'half strength, 3 phals': a strength that has its fraction takes no other number
        open_word = before == "STRENGTH" and _type(out, index - 2) not in _STRENGTHS
        counted = _counts(out, index + 1)
        beside = following == "STRENGTH" or (open_word and alone and not counted)
        if beside and 0 <= float(token.value) <= 4 and _type(out, index - 1) not in ("MINUS", "TO"):
            out[index] = Token("FRACTION", token.value, token.raws)
    return out


def times(tokens: Tokens) -> Tokens:
    """'0.25x', 'x3', '3 x phals', '3 x 2 l', '3 times a week'."""
    out: Tokens = []
    index = 0
    while index < len(tokens):
        token = tokens[index]
        if token.type == "NUMBER" and _type(tokens, index + 1) == "TIMES":
            after = _skip(tokens, index + 2, ("PER", "ARTICLE", "EVERY", "IN", "TO"))
            if _type(tokens, after) == "TIME_UNIT":
                out.append(_join(tokens[index : after + 1], "OTHER_REGIME", "other"))
                index = after + 1
                continue
            product = _type(tokens, index + 2) in ("NUMBER", "FRACTION")
            if product and not tokens[index + 2].after_break:
                end = index + 3 + (_type(tokens, index + 3) in UNITS)
                out.append(_join(tokens[index:end], "SEVERAL", "product_of_numbers"))
                index = end
                continue
            kind = "COUNT" if _counts(tokens, index + 2) else "MULTIPLIER"
            if tokens[index + 1].value == "occasions" and _type(tokens, index + 2) not in _DOSED:
                kind = "UNKNOWN"  # 'trzy razy kwitła'
            out.append(_join(tokens[index : index + 2], kind, token.value))
            index += 2
            continue
        glued = index + 1 < len(tokens) and not tokens[index + 1].raws[0].after_space
        if (token.type, token.value) == ("TIMES", "x") and _type(tokens, index + 1) == "NUMBER":
            after_plant = bool(out) and out[-1].type in _PLANTS
            if after_plant or (glued and _type(tokens, index + 2) not in UNITS):
                kind = "COUNT" if after_plant else "MULTIPLIER"
                out.append(_join(tokens[index : index + 2], kind, tokens[index + 1].value))
                index += 2
                continue
        out.append(token)
        index += 1
    return out


#: Before these a word for so many occasions is a multiple of the dose.
_DOSED = frozenset({"STRENGTH", "LEVEL", "LABEL"})


def _counts(tokens: Tokens, index: int) -> bool:
    behind = _skip(tokens, index, ("FILLER",))
    if any(t.value in CLAUSE | {"speaker"} for t in tokens[index:behind]):
        return False  # 'seit 2019 habe ich die Vanda'
    index = behind
    if index < len(tokens) and tokens[index].after_break:
        return False
    return _type(tokens, index) in _PLANTS or (
        _type(tokens, index) == "GROWTH" and tokens[index].value == "seedling"
    )


def signs(tokens: Tokens) -> Tokens:
    """'-5 l' is below nothing; a dash at the head of lines is a bullet."""
    bullets = sum(
        1
        for i, t in enumerate(tokens)
        if t.type == "MINUS" and t.after_break and _type(tokens, i + 1) not in ("NUMBER", "")
    )
    out: Tokens = []
    for token in tokens:
        if token.type in ("NUMBER", "FRACTION") and not bullets and _is_negative(out, token):
            sign = out.pop()
            out.append(_join([sign, token], token.type, f"-{token.value}"))
        else:
            out.append(token)
    return out


def _is_negative(out: Tokens, number: Token) -> bool:
    """Whether the dash at the end of `out` makes this number negative."""
    if _type(out, len(out) - 1) != "MINUS" or AMBIGUOUS in number.value:
        return False
    if number.after_break:
        return False  # 'cuatro veces menos, 2 l'
    dash = out[-1].raws[0]
    if len(out) == 1:
        return True
    glued = not number.raws[0].after_space
    if glued and dash.after_space:
        return True
    before = out[-2].type
    return (dash.kind == "word" or glued) and before not in UNITS | {
        "NUMBER", "FRACTION", "ANALYSIS",
    }  # fmt: skip


def ranges(tokens: Tokens) -> Tokens:
    """'2 to 3 litres', '1/4-1/2', 'half or a quarter', 'between 2 and 3 l': one unclear thing."""
    return rewrite(tokens, _range_at)


def _range_at(tokens: Tokens, index: int) -> tuple[Tokens, int] | None:
    size = _range_size(tokens, index)
    stretch = tokens[index : index + size]
    return ([_join(stretch, "RANGE", stretch[-1].type)], size) if size else None


_LINKS = ("MINUS", "TO", "OR")

_STRENGTHS = frozenset({"FRACTION", "LEVEL", "MULTIPLE", "MULTIPLIER"})


def _range_from_one(tokens: Tokens, index: int) -> int:
    """'ein oder zwei Liter', 'ein, zwei Liter', 'halber bis ein Liter': an article that counts."""
    between = _type(tokens, index - 1) == "BETWEEN" and _type(tokens, index + 1) == "AND"
    link = between or _type(tokens, index + 1) in _LINKS
    number = index + 1 + link
    one_or_a = tokens[index].value == "one" or between  # 'zwischen einem und zwei Litern'
    if tokens[index].type == "ARTICLE" and one_or_a:
        counted = _type(tokens, number) == "NUMBER" and _type(tokens, number + 1) in UNITS
        listed = counted and tokens[number].raws[0].kind == "word"
        return number + 2 - index if counted and (link or listed) else 0
    one = number < len(tokens) and tokens[number].value == "one"
    if tokens[index].type not in ("FRACTION", "NUMBER") or not (link and one):
        return 0
    counted = _type(tokens, number) == "ARTICLE" and _type(tokens, number + 1) in UNITS
    return number + 2 - index if counted else 0


def _range_size(tokens: Tokens, index: int) -> int:
    from_one = _range_from_one(tokens, index)
    if from_one:
        return from_one
    first = _type(tokens, index)
    if first not in ("NUMBER", "MONTH") and first not in _STRENGTHS:
        return 0
    at = index + 1
    if _type(tokens, at) == "STRENGTH":
        at += 1
    first_unit = ""
    if _type(tokens, at) in UNITS and not tokens[at].after_break:
        first_unit, at = tokens[at].value, at + 1
    between = index > 0 and _type(tokens, index - 1) == "BETWEEN"
    if _type(tokens, at) not in _LINKS and not (between and _type(tokens, at) == "AND"):
        return 0
    if _type(tokens, at) == "TO" and tokens[at].after_break and not between:
        return 0  # 'etykieta 20 ml na 5 l) do 9-litrowej konewki'
    at = _skip(tokens, at + 1, ("ARTICLE",))
    same = {"NUMBER": ("NUMBER", "FRACTION"), "MONTH": ("MONTH",)}.get(first, tuple(_STRENGTHS))
    if first == "FRACTION" and first_unit:
        same = ("NUMBER", "FRACTION")
    if first == "FRACTION" and _volume_range(tokens, index, at):
        same = ("NUMBER",)
    if _type(tokens, at) not in same or (tokens[at].after_break and first != "MONTH"):
        return 0
    at += 1
    if _type(tokens, at) in UNITS and not tokens[at].after_break:
        if first_unit and tokens[at].value != first_unit:
            return 0
        at += 1
        if _type(tokens, at) == "PER" and _type(tokens, at + 1) == "VOLUME_UNIT":
            at += 2
    elif first_unit:
        return 0
    elif _type(tokens, at) == "STRENGTH":
        at += 1
    return at - index


def _volume_range(tokens: Tokens, index: int, at: int) -> bool:
    """'1/2 - 1 l', 'half to one litre'; but 'half - 1 l' may be two parts with a dash."""
    dash = _type(tokens, index + 1) == "MINUS"
    return is_amount(tokens, at) and not (dash and tokens[index].raws[0].kind == "word")


def amounts(tokens: Tokens) -> Tokens:
    """A number directly before a unit is an AMOUNT: 'half a litre', 'a gallon', '5 l'."""
    out: Tokens = []
    index = 0
    while index < len(tokens):
        token = tokens[index]
        unit = index + 1
        if token.type == "FRACTION":
            unit = _skip(tokens, unit, ("OF", "ARTICLE"))
        parted = any(
            t.after_break for t in tokens[index + 1 : unit + 1]
        )  # 'ein Drittel, einen Liter'
        is_unit = _type(tokens, unit) in UNITS and not parted
        measured = _type(tokens, unit) in QUANTITY_UNITS
        if token.type == "NUMBER" and is_unit:
            out.append(Token("AMOUNT", token.value, token.raws))
        elif token.type == "FRACTION" and is_unit and (measured or unit == index + 1):
            whole = fraction_value(token.value) if "/" in token.value else math.inf
            value = token.value if math.isinf(whole) else repr(whole)
            out.append(_join(tokens[index:unit], "AMOUNT", value))
            index = unit
            continue
        elif token.type == "ARTICLE" and token.value != "several" and is_unit and measured:
            out.append(Token("AMOUNT", "1.0", token.raws))
        elif token.type in QUANTITY_UNITS and _half_more(tokens, index):
            counted = bool(out) and out[-1].type == "AMOUNT"  # else 'the litre and a half'
            amount = out.pop() if counted else Token("AMOUNT", "1.0", token.raws)
            if AMBIGUOUS in amount.value or "/" in amount.value:
                out += [amount, token]
                index += 1
                continue
            out.append(amount._replace(value=repr(float(amount.value) + 0.5)))
            out.append(_join(tokens[index : index + 4], token.type, token.value))
            index += 4
            continue
        elif token.type == "SPOON" and _one_spoon(tokens, index):
            out += [Token("AMOUNT", "1.0", token.raws), token]
        elif token.type in UNITS and not _belongs(out, token):
            out.append(Token("FILLER", token.value, token.raws))
        else:
            out.append(token)
        index += 1
    return out


#: Before a spoon that nobody counted.
_BEFORE_ONE = frozenset({"LABEL", "FORM", "ANALYSIS", "CONTAINER", "FILLER", "FOR", "IN"})


def _one_spoon(tokens: Tokens, index: int) -> bool:
    """'powder, teaspoon per 5 l': one, where it is not asked how many."""
    if _type(tokens, index + 1) != "PER" or any(t.value == "how_much" for t in tokens):
        return False
    begins = index == 0 or tokens[index].after_break
    return begins or tokens[index - 1].type in _BEFORE_ONE


def _belongs(out: Tokens, unit: Token) -> bool:
    """A unit needs a number before it, or 'per'."""
    before = out[-1].type if out else ""
    if unit.type == "VOLUME_UNIT" and before in ("PER", "EACH", "ARTICLE", "EVERY", "FILLER"):
        return any(t.type in ("PER", "EACH") for t in out[-3:])
    return before == "AMOUNT" and not unit.after_break


def _half_more(tokens: Tokens, unit: int) -> bool:
    """'a litre and a half' (but not 'a litre and a half dose')."""
    behind = [_type(tokens, unit + offset) for offset in (1, 2, 3)]
    if behind != ["AND", "ARTICLE", "FRACTION"] or tokens[unit + 3].value != "1/2":
        return False
    after = _skip(tokens, unit + 4, ("OF", "FILLER", "ARTICLE"))
    return _type(tokens, after) not in ("STRENGTH", "LABEL", "LEVEL")


#: A bare number behind a pot is its width between these [cm].
_POT_CM = (4.0, 60.0)


def sizes(tokens: Tokens) -> Tokens:
    """'4 in pot': inches; 'maceta de 12': centimetres, where a pot has its size behind it."""
    out: Tokens = []
    for index, token in enumerate(tokens):
        out.append(token)
        if _is_bare_size(tokens, index):
            out.append(Token("LENGTH_UNIT", "centimetre", token.raws))
    for index, token in enumerate(out):
        ends = index + 1 >= len(out) or out[index + 1].after_break
        potted = ends and "MEDIUM" in (t.type for t in out[:index])  # 'in bark, 5 in'
        numbered = _type(out, index - 1) == "NUMBER"
        numbered = numbered and (potted or _type(out, index + 1) == "POT")
        if token.type == "IN" and token.raws[0].text == "in" and numbered:  # not 'im Topf'
            out[index] = Token("LENGTH_UNIT", "inch", token.raws)
    return out


def _is_bare_size(tokens: Tokens, index: int) -> bool:
    """Whether a number without a unit stands right behind a pot: 'macetas de 12'."""
    token = tokens[index]
    pot = index - 1 - (_type(tokens, index - 1) == "OF")
    behind = pot >= 0 and (tokens[pot].type, tokens[pot].value) == ("POT", "before")
    if not behind or token.type != "NUMBER" or AMBIGUOUS in token.value or token.after_break:
        return False
    ends = index + 1 >= len(tokens) or tokens[index + 1].after_break
    apart = ends or _type(tokens, index + 1) in ("IN", "AND", "MEDIUM", "WITH")
    return apart and _POT_CM[0] <= float(token.value) <= _POT_CM[1]


def counted(tokens: Tokens) -> Tokens:
    """'3 phals', '6 plants': a number of plants, before the glue goes."""
    out = list(tokens)
    for index, token in enumerate(out):
        clear = token.type == "NUMBER" and AMBIGUOUS not in token.value
        if clear and (_counts(out, index + 1) or _is_counted_kind(out, index)):
            out[index] = token._replace(type="COUNT")
        elif _is_pronoun(token) and _type(out, index + 1) not in UNITS:
            out[index] = token._replace(type="FILLER")
    return out


def _is_counted_kind(tokens: Tokens, index: int) -> bool:
    """'two supermarket phals': a number in words may have a strange word before its plants."""
    token = tokens[index]
    if token.raws[0].kind != "word":
        return False
    strange = _type(tokens, index + 1) == "UNKNOWN" and not tokens[index + 1].after_break
    return strange and float(token.value).is_integer() and _counts(tokens, index + 2)


def _is_pronoun(token: Token) -> bool:
    """'the red one'."""
    return token.type == "NUMBER" and token.value == "1.0" and token.raws[0].kind == "word"
