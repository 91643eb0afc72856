"""The same said in another way: parts to parts, a spoon by its weight, ppm by the meter's scale."""

from __future__ import annotations

import math

from grammar.request.settling.near import litres
from grammar.words.numerals import fraction_value
from grammar.words.scan import AMBIGUOUS
from grammar.words.tokens import UNITS, Tokens, rewrite
from grammar.words.tokens import join as _join
from grammar.words.tokens import skip as _skip
from grammar.words.tokens import type_at as _type

_FIGURES = ("number", "fraction")


def ordinals(tokens: Tokens) -> Tokens:
    """'1/8th', '1/8tel': the ending belongs to the number."""
    return rewrite(tokens, _ordinal_at, ("NUMBER", "FRACTION"))


def _ordinal_at(tokens: Tokens, index: int) -> tuple[Tokens, int] | None:
    number = tokens[index]
    if number.type not in ("NUMBER", "FRACTION") or _type(tokens, index + 1) != "ORDINAL":
        return None
    if number.raws[0].kind not in _FIGURES or tokens[index + 1].raws[0].after_space:
        return None
    return [_join(tokens[index : index + 2], number.type, number.value)], 2


# --- parts to parts -----------------------------------------------------------------------------


def parts(tokens: Tokens) -> Tokens:
    """'dilution 1 to 500', '1 part to 250 parts of water', '2 parts per 1000': as 1:500."""
    return rewrite(tokens, _parts_at, ("NUMBER",))


def _parts_at(tokens: Tokens, index: int) -> tuple[Tokens, int] | None:
    one = _plain_number(tokens, index)
    if one is None:
        return None
    link = index + 1 + _is_part(tokens, index + 1)
    if _type(tokens, link) not in ("TO", "IN", "PER", "FOR", "EVERY"):
        return None
    other = _skip(tokens, link + 1, ("ARTICLE",))
    many = _plain_number(tokens, other)
    if many is None or any(t.after_break for t in tokens[index + 1 : other + 1]):
        return None
    end = other + 1 + _is_part(tokens, other + 1)
    parted = link > index + 1 or end > other + 1
    if _type(tokens, end) in UNITS and not tokens[end].after_break:
        return None
    if not (parted or _diluted_near(tokens, index, end)) or not one < many:
        return None
    return [_join(tokens[index:end], "RATIO", f"1:{many / one:g}")], end - index


def _plain_number(tokens: Tokens, index: int) -> float | None:
    if _type(tokens, index) != "NUMBER" or AMBIGUOUS in tokens[index].value:
        return None
    value = float(tokens[index].value)
    return value if 0 < value < math.inf else None


def _is_part(tokens: Tokens, index: int) -> bool:
    return _type(tokens, index) == "FILLER" and tokens[index].value == "part"


def _diluted_near(tokens: Tokens, start: int, end: int) -> bool:
    """Whether a word for diluting stands beside, with small words between."""
    small = ("FILLER", "ARTICLE", "IN", "OF", "LABEL", "STRENGTH", "PER")

    def said(at: int) -> bool:
        return _type(tokens, at) == "FILLER" and tokens[at].value == "dilution"

    before = start - 1
    while start - before < 4 and _type(tokens, before) in small and not said(before):
        before -= 1
    behind = end
    while behind - end < 3 and _type(tokens, behind) in small and not said(behind):
        behind += 1
    return said(before) or said(behind)


# --- so much in another unit --------------------------------------------------------------------


def restated(tokens: Tokens) -> Tokens:
    """'4.5 litres (thats a uk gallon)': the same volume again, and no second one."""
    return rewrite(tokens, _restated_at, _COUNTS)


def _restated_at(tokens: Tokens, index: int) -> tuple[Tokens, int] | None:
    first = _volume(tokens, index)
    if first is None:
        return None
    at = _skip(tokens, index + 2, ("FILLER",))
    second = _volume(tokens, at)
    if second is None or at - index > 5 or tokens[at + 1].value == tokens[index + 1].value:
        return None
    opened = tokens[index + 2].after_break if at > index + 2 else tokens[at].after_break
    if not opened or not math.isclose(first, second, rel_tol=0.02):
        return None
    return [*tokens[index : index + 2], _join(tokens[index + 2 : at + 2], "FILLER", "filler")], (
        at + 2 - index
    )


def _volume(tokens: Tokens, index: int) -> float | None:
    if _type(tokens, index + 1) != "VOLUME_UNIT" or tokens[index + 1].after_break:
        return None
    return litres(tokens, index)


_COUNTS = ("NUMBER", "FRACTION", "ARTICLE")
_TEASPOONS = {"us_tablespoon": 3.0, "metric_tablespoon": 3.0}


def spoon_weights(tokens: Tokens) -> Tokens:
    """'1 tsp = 5 g, label 1 tsp per 5 l': what a spoon weighs makes grams of the rate."""
    out: Tokens = []
    weights: set[float] = set()
    index = 0
    while index < len(tokens):
        found = _weight_at(tokens, index)
        if found is None:
            out.append(tokens[index])
            index += 1
            continue
        grams, kept, size = found
        weights.add(grams)
        out += kept
        index += size
    if len(weights) != 1:
        return tokens if len(weights) > 1 else out
    return _weighed(out, weights.pop())


def _weight_at(tokens: Tokens, index: int) -> tuple[float, Tokens, int] | None:
    """Grams of a teaspoon told here, what is kept of the words, and how many they are."""
    bare = tokens[index].type == "SPOON" and _type(tokens, index - 1) not in _COUNTS
    at = index if bare else index + 1
    spoon = _type(tokens, at) == "SPOON" and (bare or not tokens[at].after_break)
    count = (1.0 if bare else _count(tokens, index)) if spoon else None
    if not count:
        return None
    spoons = count * _TEASPOONS.get(tokens[at].value, 1.0)
    per = at + 1
    behind = _behind_volume(tokens, per)
    at = _skip(tokens, behind, ("FILLER", "SCALE"))
    between = tokens[behind:at]
    grams = _count(tokens, at) if _type(tokens, at) in ("NUMBER", "FRACTION") else None
    gram = _type(tokens, at + 1) == "MASS_UNIT" and tokens[at + 1].value == "gram"
    if not grams or not gram or len(between) > 3 or tokens[at].after_break:
        return None
    end = at + 2
    # 'una cucharadita pesa 4 g': what weighs is a scale too, but not right behind a spoon
    said = any(t.value == "weighs" or t.type == "SCALE" for t in between)
    broken = any(t.after_break for t in between)
    if broken and any(t.type == "SCALE" for t in between):
        return None
    ends = end >= len(tokens) or tokens[end].after_break
    if bare and not (said and ends):
        return None  # 'łyżeczka waży 4 g'
    if broken and not (said and ends):
        return None
    if behind > per:  # '1/4 tsp per litre is 1.2 grams'
        return (grams / spoons, tokens[index:behind], end - index) if between and ends else None
    if _type(tokens, end) in ("PER", "IN", "TO", "FOR", "EVERY") and not tokens[end].after_break:
        return grams / spoons, tokens[at:end], end - index  # '1 tsp = 5 g per 5 l'
    linked = _type(tokens, end) in ("PER", "IN", "TO", "FOR", "EVERY")
    if linked and broken:  # 'a level tsp (it weighs 4.8 g) per 4.5 litres'
        rest = tokens[end]._replace(
            raws=(tokens[end].raws[0]._replace(after_break=False), *tokens[end].raws[1:])
        )
        return grams / spoons, [*tokens[index:per], rest], end + 1 - index
    return (grams / spoons, [], end - index) if ends or said else None


def _count(tokens: Tokens, index: int) -> float | None:
    if _type(tokens, index) not in _COUNTS:
        return None
    if tokens[index].type == "ARTICLE":
        return 1.0
    text = tokens[index].value
    if AMBIGUOUS in text:
        return None
    value = fraction_value(text) if "/" in text else float(text)
    return value if 0 < value < math.inf else None


def _behind_volume(tokens: Tokens, index: int) -> int:
    """Behind 'per litre', 'per 5 l'; the place itself where none stands there."""
    if _type(tokens, index) not in ("PER", "ARTICLE", "TO", "IN", "EVERY"):
        return index
    at = _skip(tokens, index + 1, ("ARTICLE", "NUMBER"))
    volume = _type(tokens, at) == "VOLUME_UNIT"
    return at + 1 if volume and not any(t.after_break for t in tokens[index : at + 1]) else index


def _weighed(tokens: Tokens, grams: float) -> Tokens:
    """Spoons in grams, where a number counts them."""
    out = list(tokens)
    for index, token in enumerate(out):
        count = _count(out, index)
        if _type(out, index + 1) == "SPOON" and not out[index + 1].after_break and count:
            spoons = count * _TEASPOONS.get(out[index + 1].value, 1.0)
            out[index] = token._replace(type="NUMBER", value=repr(spoons * grams))
            out[index + 1] = out[index + 1]._replace(type="MASS_UNIT", value="gram")
    return out


# --- ppm of a meter -----------------------------------------------------------------------------

#: What meters show for 1 mS/cm [ppm].
_SCALES = (500.0, 640.0, 700.0)
_SCALE_WORDS = ("SCALE", "PPM_SCALE")
#: Behind these a ppm is of something, and no reading of a meter.
_OF_SOMETHING = frozenset({"ELEMENT", "OXIDE", "HARDNESS", "ALKALINITY"})


def meter_scale(tokens: Tokens) -> Tokens:
    """'tap reads 210 ppm on my TDS pen (500 scale)': the conductivity behind it."""
    places = {at: size for at in range(len(tokens)) if (size := _scale_size(tokens, at))}
    scales = {float(tokens[i].value) for at, n in places.items() for i in range(at, at + n)
              if tokens[i].type == "NUMBER"}  # fmt: skip
    if len(scales) != 1:
        return tokens
    scale = scales.pop()
    out: Tokens = []
    index = 0
    while index < len(tokens):
        if index in places:
            size = places[index]
            out.append(_join(tokens[index : index + size], "FILLER", "filler"))
            index += size
            continue
        value = _plain_number(tokens, index)
        unit = _type(tokens, index + 1) == "CONCENTRATION_UNIT"
        behind = _skip(tokens, index + 2, ("FILLER", "OF"))
        if value is not None and unit and _type(tokens, behind) not in _OF_SOMETHING:
            out.append(tokens[index]._replace(value=repr(value / scale)))
            out.append(tokens[index + 1]._replace(type="EC_UNIT", value="ms_cm"))
            index += 2
            continue
        out.append(tokens[index])
        index += 1
    return out


def _scale_size(tokens: Tokens, index: int) -> int:
    """How many tokens say the scale here: '500 scale', '500 ppm scale', 'scale 500'."""
    number = _plain_number(tokens, index)
    if number in _SCALES:
        word = index + 1 + (_type(tokens, index + 1) == "CONCENTRATION_UNIT")
        if _type(tokens, word) in _SCALE_WORDS and not tokens[word].after_break:
            return word + 1 - index
    if _type(tokens, index) in _SCALE_WORDS:
        at = _skip(tokens, index + 1, ("FILLER", "OF"))
        if _plain_number(tokens, at) in _SCALES and not tokens[at].after_break:
            unit = _type(tokens, at + 1)
            return at + 1 - index if unit not in UNITS else 0
    return 0
