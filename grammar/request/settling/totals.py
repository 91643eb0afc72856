"""Several cans, and litres with millilitres: how much that is in all."""

from __future__ import annotations

from grammar.request.settling.vessels import asked, is_size, is_vessel, times_as_much, vessel_behind
from grammar.words.scan import AMBIGUOUS
from grammar.words.tokens import Tokens, broken, join, rewrite, skip, type_at


def totals(tokens: Tokens) -> Tokens:
    """'two cans of 5 l each' is 10 l, '2 l 500 ml' is 2.5 l."""
    return rewrite(rewrite(tokens, _several_at, ("NUMBER",)), _sum_at, ("NUMBER",))


def _several_at(tokens: Tokens, index: int) -> tuple[Tokens, int] | None:
    """'two cans of 5 l each', '3 x 2 l bottles': so much in all."""
    token = tokens[index]
    count = float(token.value) if token.type == "NUMBER" and AMBIGUOUS not in token.value else 0.0
    if count == 1 and is_vessel(tokens, index + 1):
        size = skip(tokens, index + 2, ("OF", "FILLER", "ARTICLE"))
        one = is_size(tokens, size) and not broken(tokens, index + 1, size)
        return ([], 1) if one else None  # '1 can of 5 litres'
    if not (count.is_integer() and 1 < count < 100) or type_at(tokens, index - 1) == "MINUS":
        return None
    times = type_at(tokens, index + 1) == "TIMES"
    size = index + 1 + times
    worded = token.raws[0].kind == "word"  # 'two 5 l cans'
    if (times or worded) and is_size(tokens, size) and not broken(tokens, index + 1, size):
        vessel = vessel_behind(tokens, size)
        product = type_at(tokens, vessel + 1) in ("OF", "FORM", "ANALYSIS", "EVERY")
        if vessel and not (product and not tokens[vessel + 1].after_break):
            number = times_as_much(tokens[size], count, tokens[index : size + 1])
            return [number, *tokens[size + 1 : vessel + 1]], vessel + 1 - index
    vessel = skip(tokens, index + 1 + times, ("FILLER",))
    size = skip(tokens, vessel + 1, ("OF", "FILLER", "ARTICLE"))
    sized = is_vessel(tokens, vessel) and is_size(tokens, size)
    if not sized or broken(tokens, index + 1, size):
        return None
    each = type_at(tokens, size + 2) == "EVERY" and not tokens[size + 2].after_break
    ends = size + 3 >= len(tokens) or tokens[size + 3].after_break
    if each and ends:
        number = times_as_much(tokens[size], count, tokens[index : size + 1])
        return [number, tokens[size + 1]], size + 3 - index
    # '4 botellas de 2 l' is told of, '4 x botellas de 2 l' is no fourfold dose
    return ([asked(tokens[index : size + 2])], size + 2 - index) if times else None


#: A smaller amount beside litres may be one of feed [mL].
_LEAST_ML = 100
_NO_SUM_BEHIND = frozenset({
    "PER", "EACH", "EVERY", "MINUS", "TO", "OR", "TIMES", "BETWEEN", "NUMBER",
})  # fmt: skip


def _sum_at(tokens: Tokens, index: int) -> tuple[Tokens, int] | None:
    four = tokens[index : index + 4]
    if [t.type for t in four] != ["NUMBER", "VOLUME_UNIT"] * 2 or broken(four, 1, 3):
        return None
    if (four[1].value, four[3].value) != ("litre", "millilitre"):
        return None
    if any(AMBIGUOUS in t.value for t in four):
        return None
    whole, more = float(four[0].value), float(four[2].value)
    if not (whole.is_integer() and whole > 0 and _LEAST_ML <= more < 1000):
        return None
    behind, before = type_at(tokens, index + 4), type_at(tokens, index - 1)
    apart = behind in ("PER", "EVERY", "APIECE", "POT", "PERCENT", "FOR", "IN", "TO", "OR", "OF")
    if apart or before in _NO_SUM_BEHIND:
        return None
    if vessel_behind(tokens, index + 2):
        return None
    number = join(four[:3], "NUMBER", repr(whole + more / 1000))
    return [number, four[1]._replace(raws=four[3].raws)], 4
