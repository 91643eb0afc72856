"""Cans and buckets: how much of one is meant, and whether its size is the volume at all."""

from __future__ import annotations

from grammar.request.settling.near import litres, part_at
from grammar.request.settling.numbers import LEAST_WATER_L
from grammar.words.scan import AMBIGUOUS, Token
from grammar.words.tokens import PARTS, Tokens, broken, join, rewrite, skip, type_at

#: At most so many small words stand between a part and what it is of.
_SMALL_WORDS = 4
_FILLS = frozenset({"FILLER", "ASIDE"})
_OF_A_DOSE = frozenset({"STRENGTH", "LABEL", "LEVEL", "PERCENT", "VOLUME_UNIT", "CONCENTRATED"})


def vessels(tokens: Tokens) -> Tokens:
    """'half a 10 l bucket' is 5 l, 'filled to half' is asked about; neither is a strength."""
    tokens = rewrite(tokens, _part_at, PARTS)
    tokens = rewrite(tokens, _filled_at, PARTS | _FILLS)
    tokens = rewrite(_half_way(tokens), _full_at, ("MULTIPLE",))
    return _not_filled(tokens)


def is_vessel(tokens: Tokens, index: int) -> bool:
    kind = type_at(tokens, index)
    return kind == "CONTAINER" or (kind == "LOOSE_MEASURE" and tokens[index].value == "vessel")


def _is_fill(token: Token) -> bool:
    return token.value == "fill" and token.type in _FILLS


def is_size(tokens: Tokens, index: int) -> bool:
    """Whether so much as a can holds stands here, and no rate."""
    if type_at(tokens, index) != "NUMBER" or type_at(tokens, index + 1) != "VOLUME_UNIT":
        return False
    if tokens[index + 1].after_break or type_at(tokens, index + 2) in ("PER", "TIMES"):
        return False
    held = litres(tokens, index)
    return held is None or held >= LEAST_WATER_L


def vessel_behind(tokens: Tokens, size: int) -> int:
    """Where the can stands whose size comes first: '10 litre bucket'; 0 where there is none."""
    at = skip(tokens, size + 2, ("FILLER", "UNKNOWN"))
    near = at - size < _SMALL_WORDS and not broken(tokens, size + 2, at)
    return at if near and is_vessel(tokens, at) else 0


def times_as_much(number: Token, factor: float, whole: Tokens) -> Token:
    """A number so many times as large, ambiguous as it was."""
    value = number.value
    return join(whole, "NUMBER", value if AMBIGUOUS in value else repr(float(value) * factor))


def _small_words(tokens: Tokens, index: int) -> int:
    """Behind 'of my', 'the', 'fill a': words that bind a part to what it is of."""
    at = index
    linked = False
    while at < len(tokens) and at - index < _SMALL_WORDS and not tokens[at].after_break:
        token = tokens[at]
        linked = linked or token.type == "OF"
        bound = token.type in ("OF", "ARTICLE") or (
            token.type == "FILLER" and (linked or token.value in ("whose", "fill"))
        )
        if not bound:
            break
        at += 1
    return at


def _part_at(tokens: Tokens, index: int) -> tuple[Tokens, int] | None:
    """'half a 10 l bucket', 'half a bucket of 10 l'; where it is not clear it is asked about."""
    part = part_at(tokens, index)
    if part is None:
        return None
    value, behind = part
    at = _small_words(tokens, behind)
    linked = any(t.type == "OF" for t in tokens[behind:at])
    if at >= len(tokens) or tokens[at].after_break:
        return None
    counted = _may_be_another(tokens, index)
    if is_size(tokens, at):
        vessel = vessel_behind(tokens, at)
        if vessel and at > behind and not counted:
            number = times_as_much(tokens[at], float(value), tokens[index : at + 1])
            return [number, *tokens[at + 1 : vessel + 1]], vessel + 1 - index
        if vessel or linked:
            end = vessel + 1 if vessel else at + 2
            return [asked(tokens[index:end])], end - index
        return None
    if not is_vessel(tokens, at):
        return None
    size = skip(tokens, at + 1, ("OF", "ASIDE", "FILLER", "ARTICLE"))
    if not is_size(tokens, size) or broken(tokens, at + 1, size):
        return None
    sized = type_at(tokens, at + 1) in ("OF", "ASIDE")  # 'pół konewki o pojemności 10 l'
    if sized and not counted:
        number = times_as_much(tokens[size], float(value), tokens[index : size + 1])
        return [number, tokens[size + 1]], size + 2 - index
    return [asked(tokens[index : size + 2])], size + 2 - index


def _may_be_another(tokens: Tokens, index: int) -> bool:
    """Whether a part may count more than its can, or be the strength: 'powder at half my can'."""
    if tokens[index].after_break:
        return False
    before = index - 1
    article = type_at(tokens, before) == "ARTICLE" and not tokens[before].after_break
    if type_at(tokens, before - article) in ("NUMBER", "AND"):
        return True
    while before > 0 and tokens[before].type == "FILLER" and not _is_fill(tokens[before]):
        if tokens[before].after_break:
            return False
        before -= 1
    return type_at(tokens, before) in ("FORM", "ANALYSIS")


def asked(some: Tokens) -> Token:
    return join(some, "SEVERAL", "product_of_numbers")


def _filled_at(tokens: Tokens, index: int) -> tuple[Tokens, int] | None:
    """'filled to half', 'I fill two thirds', 'half filled'."""
    if _is_fill(tokens[index]):
        at = skip(tokens, index + 1, ("FILLER", "ARTICLE", "TO", "IN"))
        shared = type_at(tokens, at) == "UNKNOWN" and tokens[at].value == "share"
        if shared and not broken(tokens, index + 1, at):  # 'fülle sie zu zwei Dritteln'
            return [tokens[index], asked(tokens[at : at + 1])], at + 1 - index
        part = part_at(tokens, at)
        if part is None or broken(tokens, index + 1, at) or _of_something(tokens, part[1]):
            return None
        end = part[1] + (type_at(tokens, part[1]) == "MULTIPLE")
        return [tokens[index], asked(tokens[at:end])], end - index
    part = part_at(tokens, index)
    if part is not None and _in_filled_can(tokens, index) and not _of_something(tokens, part[1]):
        return [asked(tokens[index : part[1]])], part[1] - index
    if part is None or part[1] >= len(tokens):
        return None
    fill = tokens[part[1]]
    if not _is_fill(fill) or fill.after_break or fill.type != "FILLER":
        return None
    return [asked(tokens[index : part[1] + 1])], part[1] + 1 - index


def _in_filled_can(tokens: Tokens, index: int) -> bool:
    """Whether 'fill my can' stands at once before: 'fill my 10 l can 80 %'."""
    at = index - 1 - (type_at(tokens, index - 1) == "TO")
    if not is_vessel(tokens, at) or broken(tokens, at + 1, index):
        return False
    while at > 0 and not tokens[at].after_break:
        at -= 1
        if _is_fill(tokens[at]):
            return True
    return False


def _of_something(tokens: Tokens, index: int) -> bool:
    """Whether a part is of a dose or of a measure."""
    at = skip(tokens, index, ("OF", "ARTICLE", "FILLER"))
    if broken(tokens, index, at):
        return False
    return type_at(tokens, at) in _OF_A_DOSE


def _half_way(tokens: Tokens) -> Tokens:
    """'I fill my can half way', but not 'half way through the winter'."""
    if not any(token.type == "ASIDE" for token in tokens):
        return tokens
    out = list(tokens)
    for index, token in enumerate(out):
        if (token.type, token.value) != ("ASIDE", "half_way"):
            continue
        start = index
        while start > 0 and not out[start].after_break:
            start -= 1
        end = next((i for i in range(index + 1, len(out)) if out[i].after_break), len(out))
        if any(_is_fill(out[i]) or is_vessel(out, i) for i in range(start, end)):
            out[index] = asked([token])
    return out


def _full_at(tokens: Tokens, index: int) -> tuple[Tokens, int] | None:
    """'a full 10 l can' is no full strength."""
    if (tokens[index].type, tokens[index].value) != ("MULTIPLE", "1"):
        return None
    size = index + 1
    if not is_size(tokens, size) or tokens[size].after_break or not vessel_behind(tokens, size):
        return None
    before = type_at(tokens, index - 1)
    if before == "FRACTION":
        return None
    plain = tokens[index].after_break or before in ("", "ARTICLE", "FILLER", "IN", "FOR", "TO")
    return [tokens[index]._replace(type="FILLER" if plain else "UNKNOWN")], 1


def _not_filled(tokens: Tokens) -> Tokens:
    """'5 l can but only filling 2 l': its size is shown, what is filled is the volume."""
    if not any(is_vessel(tokens, index) for index in range(len(tokens))):
        return tokens
    sizes = [stretch for i in range(len(tokens)) if (stretch := _vessel_size(tokens, i))]
    if len(sizes) != 1 or not any(_is_filling(tokens, i, sizes[0]) for i in range(len(tokens))):
        return tokens
    start, end = sizes[0]
    return [*tokens[:start], join(tokens[start:end], "UNKNOWN", "container"), *tokens[end:]]


def _vessel_size(tokens: Tokens, index: int) -> tuple[int, int] | None:
    """From where to where a can and its size stand, the can or the size at `index`."""
    if is_size(tokens, index):
        vessel = vessel_behind(tokens, index)
        return (index, vessel + 1) if vessel else None
    if not is_vessel(tokens, index):
        return None
    size = skip(tokens, index + 1, ("FILLER", "OF", "ARTICLE"))
    if any(_is_fill(t) for t in tokens[index:size]) or broken(tokens, index + 1, size):
        return None
    return (index, size + 2) if is_size(tokens, size) else None


def _is_filling(tokens: Tokens, index: int, size: tuple[int, int]) -> bool:
    """Whether 'filling 2 l' or 'making 2 l' stands here, of another volume than the can's."""
    token = tokens[index]
    if not (_is_fill(token) or (token.type, token.value) == ("FILLER", "mix")):
        return False
    at = skip(tokens, index + 1, ("FILLER", "TO", "IN"))
    if broken(tokens, index + 1, at) or size[0] <= at < size[1]:
        return False
    if type_at(tokens, at) == "FRACTION":
        return type_at(tokens, skip(tokens, at + 1, ("OF", "ARTICLE"))) == "VOLUME_UNIT"
    if not is_size(tokens, at) or vessel_behind(tokens, at):
        return False
    held = next(i for i in range(*size) if is_size(tokens, i))
    return tokens[at][:2] != tokens[held][:2]
