"""Words that mean one thing here and another there, settled by their neighbours.

`settle` turns the scanner's tokens into the terminals of request.lark. Every rule is a
small function over the token list; they run in the order of `_RULES`.
"""

from __future__ import annotations

import math
from collections.abc import Callable
from typing import TypeAlias

from grammar import doubts
from grammar.numerals import compose, fraction_value
from grammar.scan import AMBIGUOUS, Token
from grammar.tokens import PLANTS as _PLANTS
from grammar.tokens import QUANTITY_UNITS, UNITS, Tokens, rewrite
from grammar.tokens import join as _join
from grammar.tokens import skip as _skip
from grammar.tokens import type_at as _type
from grammar.units import COUNTRYLESS, to_canonical

_SLOTS = frozenset({
    "FORM", "MEDIUM", "SEASON", "MONTH", "GROWTH", "REGIME", "GENUS", "WATER", "FRACTION",
    "LEVEL", "MULTIPLE", "MULTIPLIER", "VAGUE", "AMOUNT", "ANALYSIS", "EXACT", "OTHER_WATER",
})  # fmt: skip
#: Words that only hold a sentence together once the rules have looked at them.
_GLUE = frozenset({
    "FILLER", "ASIDE", "ARTICLE", "AND", "PLUS", "OF", "IN", "TO", "OR", "FOR", "EVERY",
    "BETWEEN", "STRENGTH", "POINT", "TIMES", "NPK", "MIX", "MINUS", "PLANTS", "GROWING_VERB",
    "LOOSE_MEASURE", "LABEL", "PER", "NOT", "POT", "FULL", "SLOWLY", "APIECE",
})  # fmt: skip
#: From here on a volume beside a strength is the water, where no other is named [L].
_LEAST_WATER_L = 0.2
#: A quantity dissolved in a volume is at least this many times smaller than it.
_DILUTED = 20.0


def settle(tokens: Tokens) -> Tokens:
    """Terminals of the grammar from the scanner's tokens.

    Parameters
    ----------
    tokens : as `scan` gives them

    Returns
    -------
    list of Token
        Without words that carry nothing; what is measured stands behind its number.
    """
    present = {token.type for token in tokens}
    for rule, types in _RULES:
        if not types or not types.isdisjoint(present):
            tokens = rule(tokens)
            present = {token.type for token in tokens}
    return tokens


def _is_amount(tokens: Tokens, index: int) -> bool:
    """Whether a number with a unit of volume, mass or spoons starts here."""
    return (
        _type(tokens, index) in ("NUMBER", "FRACTION")
        and _type(tokens, index + 1) in QUANTITY_UNITS
        and not tokens[index + 1].after_break
    )


# --- label analyses ------------------------------------------------------------------


def _analyses(tokens: Tokens) -> Tokens:
    """'20 20 20', 'N 13 P 3 K 15', '13N-3P-15K' are analyses too."""
    if sum(token.type == "NUMBER" for token in tokens) < 3:
        return tokens
    return rewrite(tokens, _analysis_at)


def _analysis_at(tokens: Tokens, index: int) -> tuple[Tokens, int] | None:
    if _spaced(tokens, index):
        three = tokens[index : index + 3]
        return [_join(three, "ANALYSIS", " ".join(t.value for t in three))], 3
    named, size = _named(tokens, index)
    return None if named is None else ([named], size)


def _spaced(tokens: Tokens, index: int) -> int:
    three = tokens[index : index + 3]
    if len(three) < 3 or any(t.type != "NUMBER" or AMBIGUOUS in t.value for t in three):
        return 0
    if any(t.after_break for t in three[1:]) or _type(tokens, index + 3) in UNITS:
        return 0
    return 3


#: The nutrients of an analysis; P and K stand on labels for their oxides.
_NUTRIENTS = {"N": "N", "P": "P", "P2O5": "P", "K": "K", "K2O": "K"}
_NUTRIENT_SYMBOLS = frozenset({"n", "p", "k"})


def _named(tokens: Tokens, index: int) -> tuple[Token | None, int]:
    """N, P and K in any order, each before or behind its number, with its oxide or without."""
    number_first = _type(tokens, index) == "NUMBER"
    found: dict[str, str] = {}
    elemental = False
    at = end = index
    while len(found) < len("NPK"):
        number = at if number_first else _behind_name(tokens, at)
        name = _skip(tokens, number + 1, ("PERCENT", "OF", "FILLER")) if number_first else at
        nutrient = _nutrient(tokens, name)
        if nutrient is None or nutrient in found or _type(tokens, number) != "NUMBER":
            return None, 0
        if not number_first and _type(tokens, number + 1) in UNITS - {"PERCENT"}:
            return None, 0  # '100 ppm' is no percentage
        found[nutrient] = tokens[number].value
        if number_first:
            end = _behind_name(tokens, name, ())
            bare = all(t.type != "OXIDE" for t in tokens[name:end])
            elemental = elemental or (nutrient != "N" and bare)
        else:
            end = number + 1 + (_type(tokens, number + 1) == "PERCENT")
        end = _behind_forms(tokens, end)
        at = _skip(tokens, end, ("MINUS", "PLUS", "AND", "FILLER", "ARTICLE"))
    type_ = "OPEN_ANALYSIS" if elemental else "ANALYSIS"
    value = " ".join(found[nutrient] for nutrient in "NPK")
    return _join(tokens[index:end], type_, value), end - index


def _behind_forms(tokens: Tokens, index: int) -> int:
    """Where the forms of nitrogen end that a label lists: 'davon Nitratstickstoff 3 %, ...'."""
    end = index
    while True:
        at = _skip(tokens, end, ("SHARE", "FILLER", "AND", "PLUS"))
        named = at + 2 if _type(tokens, at + 1) == "PERCENT" else at
        number = at + 1
        if _type(tokens, named) == "ELEMENT" and named > at:
            number = at
        elif _type(tokens, at) == "ELEMENT":
            named = at
        else:
            return end
        if tokens[named].value != "N_form" or _type(tokens, number) != "NUMBER":
            return end
        end = max(named, number) + 1
        end += _type(tokens, end) == "PERCENT"


def _nutrient(tokens: Tokens, index: int) -> str | None:
    """N, P or K where a name of it stands here; small letters count too."""
    kind = _type(tokens, index)
    if kind in ("ELEMENT", "OXIDE"):
        return _NUTRIENTS.get(tokens[index].value)
    small = kind == "UNKNOWN" and tokens[index].raws[0].text in _NUTRIENT_SYMBOLS
    return tokens[index].raws[0].text.upper() if small else None


def _behind_name(
    tokens: Tokens, index: int, small: tuple[str, ...] = ("FILLER", "OF", "MINUS")
) -> int:
    """Where what follows a nutrient stands: 'phosphorus pentoxide (P2O5)' is one name."""
    nutrient = _nutrient(tokens, index)
    at = index + 1
    while nutrient is not None:
        behind = at + (_type(tokens, at) in ("FORM", "FILLER"))  # 'fosforu rozpuszczalny (P2O5)'
        if _nutrient(tokens, behind) != nutrient:
            break
        at = behind + 1
    return _skip(tokens, at, small)


# --- numbers and what they count --------------------------------------------------------


def _strength_numbers(tokens: Tokens) -> Tokens:
    """'0.25 strength', 'strength .5': a bare number beside the word is a strength."""
    out = list(tokens)
    for index, token in enumerate(out):
        if token.type != "NUMBER" or AMBIGUOUS in token.value:
            continue
        if token.raws[0].kind == "word" and float(token.value).is_integer():
            continue  # 'two strengths'; but 'point two five' is one
        following, before = _type(out, index + 1), _type(out, index - 1)
        alone = following not in UNITS | {"TIMES", "MINUS", "TO", "OR", "PER"} and not _is_amount(
            out, index
        )
        # 'half strength, 3 phals': a strength that has its fraction takes no other number
        open_word = before == "STRENGTH" and _type(out, index - 2) not in _STRENGTHS
        counted = _counts(out, index + 1)
        beside = following == "STRENGTH" or (open_word and alone and not counted)
        if beside and 0 <= float(token.value) <= 4 and _type(out, index - 1) not in ("MINUS", "TO"):
            out[index] = Token("FRACTION", token.value, token.raws)
    return out


def _times(tokens: Tokens) -> Tokens:
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
    if any(t.value == "clause" for t in tokens[index:behind]):
        return False  # 'seit 2019 habe ich die Vanda'
    index = behind
    if index < len(tokens) and tokens[index].after_break:
        return False
    return _type(tokens, index) in _PLANTS or (
        _type(tokens, index) == "GROWTH" and tokens[index].value == "seedling"
    )


def _signs(tokens: Tokens) -> Tokens:
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


def _ranges(tokens: Tokens) -> Tokens:
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
    return _is_amount(tokens, at) and not (dash and tokens[index].raws[0].kind == "word")


_PER_WORDS = frozenset({"PER", "ARTICLE", "IN", "TO", "FOR", "EVERY"})


def _rates(tokens: Tokens) -> Tokens:
    """Which '/', 'a', 'in', 'to', 'for', 'every' mean 'per' between a quantity and a volume."""
    out: Tokens = []
    labelled = any(t.type == "LABEL" for t in tokens)
    for index, token in enumerate(tokens):
        said = token.type == "ARTICLE" and bool(out) and out[-1].type == "PER"  # 'auf einen Liter'
        times = token.type == "TIMES" and _type(tokens, index + 1) == "VOLUME_UNIT"  # '2 g x litro'
        if said or (token.type not in _PER_WORDS and not times):
            out.append(token)
            continue
        volume = _skip(tokens, index + 1, ("ARTICLE", "EVERY", "FILLER"))
        per_volume = _type(tokens, volume) == "VOLUME_UNIT" or _is_volume(tokens, volume)
        quantity = _quantity_before(tokens, index)
        # 'na litr': without a number the unit itself says one of it
        one_unit = token.value == "onto" and _type(tokens, index + 1) == "VOLUME_UNIT"
        if not per_volume:
            out.append(token)
        elif quantity is not None and (
            one_unit or _dissolves(tokens, quantity, index, volume, labelled)
        ):
            out.append(Token("PER", "per", token.raws))
        elif quantity is None and _reversed(tokens, index, volume, labelled or one_unit):
            out.append(Token("EACH", "each", token.raws))
        elif one_unit and _type(tokens, index - 1) == "LOOSE_MEASURE":
            out.append(Token("PER", "per", token.raws))
        elif one_unit and not tokens[index + 1].after_break:
            out.append(Token("ARTICLE", "a", token.raws))
        else:
            out.append(token)
    return out


def _is_volume(tokens: Tokens, index: int) -> bool:
    return _is_amount(tokens, index) and tokens[index + 1].type == "VOLUME_UNIT"


def _quantity_before(tokens: Tokens, index: int) -> int | None:
    """Where the unit of the quantity before stands: '1 g', '1 g of powder'."""
    at = index - 1
    while _type(tokens, at) in ("FORM", "OF", "FILLER", "ARTICLE", "IN") and index - at < 4:
        at -= 1
    return at if _type(tokens, at) in QUANTITY_UNITS else None


def _dissolves(tokens: Tokens, unit: int, index: int, volume: int, labelled: bool) -> bool:
    token = tokens[index]
    if token.type == "FOR" and not labelled:
        return False
    spoken = token.type == "PER" and (token.value != "/" or not _is_volume(tokens, volume))
    if tokens[unit].type != "VOLUME_UNIT" or spoken:
        return True
    quantity = _litres(tokens, unit - 1)
    water = _litres(tokens, volume) or 1.0
    return quantity is not None and quantity * _DILUTED <= water


def _litres(tokens: Tokens, index: int) -> float | None:
    """A number with a unit of volume [L], gallons roughly."""
    if _type(tokens, index) not in ("NUMBER", "FRACTION", "ARTICLE"):
        return None
    value, unit = tokens[index].value, tokens[index + 1].value
    if AMBIGUOUS in value:
        return None
    if tokens[index].type == "ARTICLE":
        amount = 1.0
    else:
        amount = fraction_value(value) if "/" in value else float(value)
    rough = {"gallon": 4.0, "quart": 1.0, "pint": 0.5, "fluid_ounce": 0.03}
    return amount * (rough[unit] if unit in rough else to_canonical(1.0, unit))


def _reversed(tokens: Tokens, index: int, volume: int, labelled: bool) -> bool:
    """'per litre 2 ml', 'label: for 10 l 5 g'."""
    if tokens[index].type == "ARTICLE" or (tokens[index].type, tokens[index].value) == ("TO", "to"):
        return False
    if tokens[index].type in ("FOR", "IN", "TO") and not labelled:
        return False
    after = volume + 1 if _type(tokens, volume) == "VOLUME_UNIT" else volume + 2
    after = _skip(tokens, after, ("FILLER", "OF", "WATER_WORD", "FORM"))
    if not _is_amount(tokens, after):
        return False
    is_volume = _type(tokens, after + 1) == "VOLUME_UNIT"
    smaller = not is_volume or (_litres(tokens, after) or 1.0) * _DILUTED <= 1.0
    later = _skip(tokens, after + 2, ("FORM", "OF", "FILLER"))
    return smaller and _type(tokens, later) not in ("PER",)


def _milligrams(tokens: Tokens) -> Tokens:
    """'100 mg N/L', '80 mg nitrogen per litre': a concentration of the element."""
    return rewrite(tokens, _milligrams_at)


def _milligrams_at(tokens: Tokens, index: int) -> tuple[Tokens, int] | None:
    kinds = [_type(tokens, index + offset) for offset in range(4)]
    if kinds[2] == "IN" and tokens[index + 2].value == "onto":
        kinds[2] = "PER"  # '50 mg azotu na litr'
    if kinds[1] == "HARDNESS":
        kinds[1] = "ELEMENT"  # '200 mg CaCO3/l'
    if kinds != ["MASS_UNIT", "ELEMENT", "PER", "VOLUME_UNIT"]:
        return None
    mass, element, per, litre = tokens[index : index + 4]
    if mass.value != "milligram" or litre.value not in ("litre", "cubic_decimetre"):
        return None
    return [_join([mass, per, litre], "CONCENTRATION_UNIT", "mg_l"), element], 4


def _countries(tokens: Tokens) -> Tokens:
    """'2 pints (uk)': the country of a measure may stand behind it."""
    return rewrite(tokens, _country_at)


def _country_at(tokens: Tokens, index: int) -> tuple[Tokens, int] | None:
    unit = tokens[index]
    if unit.type != "VOLUME_UNIT" or _type(tokens, index + 1) != "COUNTRY":
        return None
    if unit.value not in COUNTRYLESS:
        return None
    country = tokens[index + 1]
    return [_join([unit, country], "VOLUME_UNIT", f"{country.value}_{unit.value}")], 2


def _amounts(tokens: Tokens) -> Tokens:
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
        elif token.type == "ARTICLE" and is_unit and measured:
            out.append(Token("AMOUNT", "1.0", token.raws))
        elif token.type in UNITS and not _belongs(out, token):
            out.append(Token("FILLER", token.value, token.raws))
        elif token.type in QUANTITY_UNITS and _half_more(tokens, index):
            amount = out.pop()
            if AMBIGUOUS in amount.value or "/" in amount.value:
                out += [amount, token]
                index += 1
                continue
            out.append(amount._replace(value=repr(float(amount.value) + 0.5)))
            out.append(_join(tokens[index : index + 4], token.type, token.value))
            index += 4
            continue
        else:
            out.append(token)
        index += 1
    return out


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


def _per_plant(tokens: Tokens) -> Tokens:
    """'100 ml per plant' is not the volume of the can; '2 l pot' is the size of a pot."""
    spaced = sum(_is_spaced_slash(tokens, i) for i in range(len(tokens))) > 1
    out: Tokens = []
    index = 0
    while index < len(tokens):
        each = _each_amount(tokens, index)
        if each:
            out.append(_join(tokens[index:each], "UNKNOWN", "per plant"))
            index = each
            continue
        if _is_pot_before(tokens, index):  # 'w doniczce 5 l'
            amount = _skip(tokens, index + 1, ("OF",))
            out += [*tokens[amount : amount + 2], tokens[index]]
            index = amount + 2
            continue
        if tokens[index].type == "AMOUNT" and _type(tokens, index + 1) == "VOLUME_UNIT":
            link = index + 2
            plant = _skip(tokens, link + 1, ("ARTICLE", "EVERY", "FILLER"))
            a_plant = _type(tokens, link) == "ARTICLE" and _type(tokens, link + 1) == "PLANTS"
            per = _type(tokens, link) in ("PER", "EVERY") and _type(tokens, plant) in _PLANTS
            per = per and not (spaced and _is_spaced_slash(tokens, link))
            if per or (a_plant and not tokens[link].after_break):
                out.append(_join(tokens[index : plant + 1], "UNKNOWN", "per plant"))
                index = plant + 1
                continue
            behind = _type(tokens, link) == "POT" and (
                tokens[link].value != "before" or not tokens[link].after_break
            )
            if behind:
                out += tokens[index : link + 1]
                index = link + 1
                continue
        if tokens[index].type != "POT":
            out.append(tokens[index])
        index += 1
    return out


def _is_pot_before(tokens: Tokens, index: int) -> bool:
    """Whether a pot stands here with its size behind it, where the language has it so."""
    if (_type(tokens, index), tokens[index].value) != ("POT", "before"):
        return False
    at = _skip(tokens, index + 1, ("OF",))  # 'maceta de 2 l'
    amount = _type(tokens, at) == "AMOUNT" and not tokens[index + 1].after_break
    return amount and _type(tokens, at + 1) == "VOLUME_UNIT"


def _each_amount(tokens: Tokens, index: int) -> int:
    """Where 'jede bekommt 200 ml', 'je Topf 200 ml' ends, 0 where none begins here."""
    token = tokens[index]
    each = (token.type, token.value) == ("EVERY", "each")
    spoken = token.type == "PER" and token.raws[0].kind == "word"
    if not (each or spoken or (token.type, token.value) == ("EVERY", "portion")):
        return 0
    plant = _skip(tokens, index + 1, ("ARTICLE", "FILLER"))
    named = _type(tokens, plant) in _PLANTS
    at = _skip(tokens, plant + 1, ("ARTICLE", "FILLER")) if named else plant
    if not (named or each) or any(t.after_break for t in tokens[index + 1 : at + 1]):
        return 0
    counted = _type(tokens, at) == "AMOUNT" and _type(tokens, at + 1) == "VOLUME_UNIT"
    return at + 2 if counted else 0


def _is_spaced_slash(tokens: Tokens, index: int) -> bool:
    """Whether this is one of the slashes of 'powder / 2 l / phals', which part what is said."""
    if (
        _type(tokens, index) != "PER"
        or tokens[index].raws[0].text != "/"
        or index + 1 >= len(tokens)
    ):
        return False
    return tokens[index].raws[0].after_space and tokens[index + 1].raws[0].after_space


# --- words with two meanings -----------------------------------------------------------


def _fractions(tokens: Tokens) -> Tokens:
    """Which halves and doubles are strengths: 'half the label' is, 'half of my phals' is not."""
    out: Tokens = []
    index = 0
    while index < len(tokens):
        token = tokens[index]
        if token.type not in ("FRACTION", "MULTIPLE", "PERCENT", "MULTIPLIER"):
            out.append(token)
            index += 1
            continue
        behind = _skip(tokens, index + 1, ("STRENGTH",))
        target = _skip(tokens, behind, ("OF", "FILLER", "ARTICLE", "ASIDE"))
        if _type(tokens, target) in ("LEVEL", "LABEL") and not tokens[target].after_break:
            out.append(_strength(token))
            index = target + 1  # 'half of the full strength' is half
            continue
        linked = _type(tokens, behind) == "OF"
        of_water = _type(tokens, target) == "WATER_WORD" and not tokens[target].after_break
        if token.type != "PERCENT" and of_water:
            out.append(_join(tokens[index:target], "UNKNOWN", token.value))
            index = target
            continue
        whole = tokens[behind].value if _type(tokens, behind) == "PLANTS" else ""
        linked = linked or (whole == "of" and not tokens[behind].after_break)  # '1/3 storczyków'
        if token.type != "PERCENT" and linked and _type(tokens, target) in _PLANTS | {"UNKNOWN"}:
            out.append(_join(tokens[index:target], "UNKNOWN", token.value))
            index = target
            continue
        if token.type == "FRACTION" and _type(tokens, index + 1) == "MULTIPLE":
            out.append(_join(tokens[index : index + 2], "UNKNOWN", token.value))
            index += 2
            continue
        if token.type == "MULTIPLE" and not _stands_alone(tokens, index):
            out.append(Token("UNKNOWN", token.value, token.raws))
            index += 1
            continue
        out.append(_strength(token))
        index += 1
    return out


def _full(tokens: Tokens) -> Tokens:
    """'Cymbidium, 5 l, voll': a word that fills sentences too is a strength only by itself."""
    out = list(tokens)
    for index, token in enumerate(out):
        ends = index + 1 >= len(out) or out[index + 1].after_break
        parted = token.after_break or _type(out, index - 1) in ("FORM", "ANALYSIS")
        if token.type == "FULL" and parted and ends:
            out[index] = token._replace(type="LEVEL", value="1")
    return out


def _strength(token: Token) -> Token:
    return token._replace(type="MULTIPLIER") if token.type == "MULTIPLE" else token


#: Words that nobody calls full or double: a 'full' before them is the strength.
_NOT_FULL = frozenset({
    "", "STRENGTH", "LEVEL", "LABEL", "ANALYSIS", "NUMBER", "OF", "FORM", "AND", "REGIME",
    "OTHER_REGIME", "SEASON", "MONTH", "WATER", "MEDIUM",
})  # fmt: skip


def _stands_alone(tokens: Tokens, index: int) -> bool:
    """Whether 'full' or 'double' is not about the next word."""
    following = _type(tokens, index + 1)
    if following == "REGIME" and tokens[index].value != "1":
        return False  # 'twice weekly'
    if following in _NOT_FULL:
        return True
    return tokens[index + 1].after_break or following in ("FILLER", "FOR", "IN", "ARTICLE")


def _dilutions(tokens: Tokens) -> Tokens:
    """'1:500' is a label rate; '1:4' could be anything."""
    out: Tokens = []
    for token in tokens:
        if token.type == "RATIO":
            one, parts = (int(part) for part in token.value.split(":"))
            if one != 1 or parts < _DILUTED:
                token = token._replace(type="UNKNOWN")
        out.append(token)
    return out


#: A label of the EU names secondary nutrients before its numbers and means their oxides.
_DECLARED = {"Mg": "MgO", "Ca": "CaO", "S": "SO3", "Na": "Na2O"}


def _declared(tokens: Tokens) -> Tokens:
    """'NPK (Mg) 8+8+6(+2)': names of nutrients in front, their numbers behind."""
    return rewrite(tokens, _declared_at)


def _declared_at(tokens: Tokens, index: int) -> tuple[Tokens, int] | None:
    if tokens[index].type != "NPK":
        return None
    names: Tokens = []
    at = index + 1
    while (at := _skip(tokens, at, ("PLUS", "AND"))) < len(tokens):
        if tokens[at].type not in ("ELEMENT", "OXIDE"):
            break
        names.append(tokens[at])
        at += 1
    at = _skip(tokens, at, ("FILLER",))
    if not names or _type(tokens, at) != "ANALYSIS":
        return None
    out: Tokens = [tokens[at]]
    for name in names:
        number = at + 2
        if _type(tokens, at + 1) != "PLUS" or _type(tokens, number) != "NUMBER":
            return None
        oxide = name._replace(type="OXIDE", value=_DECLARED.get(name.value, name.value))
        if oxide.value == name.value and name.type == "ELEMENT":
            oxide = name
        out += [_join([tokens[number]], "COUNTED_PERCENT", tokens[number].value), oxide]
        at = number
    return out, at + 1 - index


def _extras(tokens: Tokens) -> Tokens:
    """'+ 8Ca 2Mg', '2% MgO': a label percentage before an element or oxide."""
    out: Tokens = []
    open_list = False
    index = 0
    while index < len(tokens):
        token = tokens[index]
        name = index + 1
        if _type(tokens, name) == "PERCENT":
            name += 1
        if token.type == "OXIDE" and tokens[name : name + 1] and tokens[name][:2] == token[:2]:
            index += 1  # 'tlenek magnezu (MgO) 2 %'
            continue
        behind = _named_first(tokens, index, open_list)
        if behind:
            out.append(_join([tokens[index + 1]], "COUNTED_PERCENT", tokens[index + 1].value))
            out.append(token)
            index = behind
            open_list = True
            continue
        if token.type == "NUMBER" and _type(tokens, name) == "OF" and name > index + 1:
            name += _type(tokens, name + 1) in ("ELEMENT", "OXIDE")  # '20 % de nitrógeno'
        if token.type == "NUMBER" and name < len(tokens):
            element = _extra_name(tokens[name], open_list)
            if element is not None:
                out.append(_join(tokens[index:name], "COUNTED_PERCENT", token.value))
                out.append(element)
                index = name + 1
                open_list = True
                continue
        # what follows an analysis or a '+' is read as its list, in small letters too
        open_list = token.type in ("ANALYSIS", "PLUS") or (
            open_list and token.type in ("AND", "MINUS")
        )
        out.append(token)
        index += 1
    return out


def _named_first(tokens: Tokens, index: int, open_list: bool) -> int:
    """Where 'Mg 2' of a list or 'MgO 3 %' ends, 0 where the number belongs to what follows."""
    if tokens[index].type not in ("ELEMENT", "OXIDE") or _type(tokens, index + 1) != "NUMBER":
        return 0
    doubled = index > 0 and tokens[index - 1][:2] == tokens[index][:2]  # 'tlenek magnezu (MgO) 2 %'
    if tokens[index + 1].after_break and not doubled:
        return 0
    if _type(tokens, index + 2) == "PERCENT":
        return index + 3
    following = _type(tokens, index + 2)
    return index + 2 if open_list and following not in UNITS else 0


_SMALL = {
    "ca": "Ca",
    "mg": "Mg",
    "fe": "Fe",
    "s": "S",
    "mn": "Mn",
    "zn": "Zn",
    "b": "B",
    "cu": "Cu",
}


def _extra_name(token: Token, open_list: bool) -> Token | None:
    if token.type in ("ELEMENT", "OXIDE"):
        return token
    word = token.raws[0].text
    if open_list and word in _SMALL and token.type in ("UNKNOWN", "MASS_UNIT"):
        return Token("ELEMENT", _SMALL[word], token.raws)
    return None


def _slow_growth(tokens: Tokens) -> Tokens:
    """'growing rather slowly' is slow growth, not growth."""
    return rewrite(tokens, _slow_growth_at)


def _slow_growth_at(tokens: Tokens, index: int) -> tuple[Tokens, int] | None:
    first = tokens[index]
    if first.type != "GROWING_VERB" and (first.type, first.value) != ("GROWTH", "growing"):
        return None
    at = _skip(tokens, index + 1, ("FILLER",))
    if _type(tokens, at) not in ("SLOWLY", "GROWTH") or tokens[at].value != "slow":
        return None
    return [_join(tokens[index : at + 1], "GROWTH", "slow")], at + 1 - index


def _growing(tokens: Tokens) -> Tokens:
    """'growing' is a state of growth unless it only says that somebody grows something."""
    out: Tokens = []
    for index, token in enumerate(tokens):
        if token.type == "GROWING_VERB":
            following = _type(tokens, index + 1)
            open_end = following == "" or tokens[index + 1].after_break
            verb = following in _PLANTS | {"MEDIUM", "NUMBER", "IN", "COUNT"}
            if open_end or not verb:
                token = Token("GROWTH", "growing", token.raws)
        out.append(token)
    return out


def _mixtures(tokens: Tokens) -> Tokens:
    """'bark and perlite mix' is a mixed medium; moss or clay in it stays two media to ask about."""
    out: Tokens = []
    index = 0
    between = ("AND", "PLUS", "PER", "MIX", "ARTICLE", "OF", "FILLER", "FOR", "IN")
    while index < len(tokens):
        token = tokens[index]
        if token.type in ("MEDIUM", "MIX"):
            end = index + 1
            media = [token] if token.type == "MEDIUM" else []
            mixed = token.type == "MIX"
            while True:
                at = _skip(tokens, end, between)
                mixed = mixed or any(t.type == "MIX" for t in tokens[end:at])
                if _type(tokens, at) != "MEDIUM" or tokens[at].after_break:
                    trailing = at if at > end and tokens[at - 1].type == "MIX" else end
                    break
                media.append(tokens[at])
                end = at + 1
            kinds = {t.value for t in media}
            if mixed and len(kinds) > 1 and not kinds & {"sphagnum", "clay_pellets"}:
                out.append(_join(tokens[index:trailing], "MEDIUM", "mixed"))
                index = trailing
                continue
        out.append(token)
        index += 1
    return out


# --- what is left when the glue is gone ---------------------------------------------------


def _negations(tokens: Tokens) -> Tokens:
    """'no sphagnum', 'not in winter': what it is not, is not what it is."""
    return rewrite(_denied_behind(tokens), _negation_at)


def _denied_behind(tokens: Tokens) -> Tokens:
    """'Sphagnum habe ich nicht': a 'not' that may stand behind, with nothing before it to deny."""
    out = list(tokens)
    for index in range(len(out) - 1, -1, -1):
        if out[index].type != "NOT" or out[index].value not in ("behind", "last"):
            continue
        ends = index + 1 >= len(out) or out[index + 1].after_break
        if out[index].value == "last" and not ends:
            continue  # 'corteza no, musgo', but 'en corteza no crece'
        ahead = _negated(out, index)
        if _type(out, ahead) in _SLOTS and not out[ahead].after_break:
            continue
        at = _denied_before(out, index)
        if at is not None:
            end = at + (2 if out[at].type == "AMOUNT" else 1)
            out[index] = out[index]._replace(type="FILLER")
            out[at:end] = [_join(out[at:end], "NEGATED", out[end - 1].type)]
    return out


def _denied_before(tokens: Tokens, index: int) -> int | None:
    """The last slot before a 'not' in its clause; plants and how long something was are none."""
    at = index
    while at > 0 and not tokens[at].after_break:
        at -= 1
        lasted = _type(tokens, at + 1) in ("TIME_UNIT", "LENGTH_UNIT", "TEMPERATURE_UNIT")
        if tokens[at].type in _SLOTS - {"GENUS"} and not lasted:
            return at
    return None


def _nor(tokens: Tokens) -> Tokens:
    """'weder Rinde noch Moos': a word that denies only behind a 'neither'."""
    out: Tokens = []
    neither = False
    for token in tokens:
        neither = neither or (token.type, token.value) == ("NOT", "neither")
        if token.type == "NOR":
            token = token._replace(type="NOT" if neither else "FILLER", value="filler")
        out.append(token)
    return out


def _negation_at(tokens: Tokens, index: int) -> tuple[Tokens, int] | None:
    if tokens[index].type != "NOT":
        return None
    at = _negated(tokens, index)
    if _type(tokens, at) not in _SLOTS or tokens[at].after_break:
        return None
    end = at + (2 if tokens[at].type == "AMOUNT" else 1)
    return [_join(tokens[index:end], "NEGATED", tokens[end - 1].type)], end - index


def _negated(tokens: Tokens, index: int) -> int:
    """The word a 'not' is about: a few small words may stand between, no comma."""
    at = index + 1
    while at - index <= 3 and _type(tokens, at) in _GLUE - {"NOT", "LABEL"}:
        if tokens[at].after_break:
            break
        at += 1
    return at


def _homographs(tokens: Tokens) -> Tokens:
    """'7-7-7 conc.' is a liquid, 'half conc' a strength; 'well 9 gpg' a water, 'well' none."""
    out = list(tokens)
    for index, token in enumerate(out):
        following = _type(out, index + 1)
        if token.type == "CONCENTRATED":
            liquid = _type(out, index - 1) in ("ANALYSIS", "OPEN_ANALYSIS")
            type_ = "FORM" if liquid else "STRENGTH"
            out[index] = token._replace(type=type_)
        elif token.type == "MEASURED_WATER":
            measured = following in _MEASURES or (
                following == "NUMBER" and _type(out, index + 2) in _WATER_UNITS
            )
            out[index] = token._replace(type="WATER" if measured else "FILLER")
        elif token.type == "DATED_MONTH":
            out[index] = token._replace(type="MONTH" if _is_dated(out, index) else "FILLER")
        elif token.type == "LEVEL" and _is_rate(out, index + 1):
            out[index] = token._replace(type="LABEL")  # 'label dose 5 ml per 2 l'
        elif (token.type, token.value) == ("IN", "article"):  # 'an Liter' on the Danube
            one = following == "VOLUME_UNIT" and not out[index + 1].after_break
            out[index] = token._replace(type="ARTICLE" if one else "IN", value="in")
        elif token.type == "SIZE_ENDING":  # '12er', but not 'ist er'
            glued = _type(out, index - 1) == "NUMBER" and not token.raws[0].after_space
            ends = following == "" or out[index + 1].after_break
            type_, value = ("LENGTH_UNIT", token.value) if glued and ends else ("FILLER", "clause")
            out[index] = token._replace(type=type_, value=value)
        elif token.type == "BARE_DEGREE":
            hard = _hardness_near(out, index)
            if hard is not None:
                out[hard] = out[hard]._replace(value=token.value)
            out[index] = token._replace(type="FILLER", value="filler")
    return out


def _hardness_near(tokens: Tokens, index: int) -> int | None:
    """The word for hardness that a bare degree belongs to: 'Härte 14 Grad', '14 Grad Härte'."""
    if _type(tokens, index - 1) != "NUMBER" or tokens[index].after_break:
        return None
    behind = _skip(tokens, index + 1, ("FILLER", "ARTICLE"))
    if _type(tokens, behind) == "HARDNESS" and not tokens[behind].after_break:
        return behind
    before = index - 2
    while _type(tokens, before) in ("FILLER", "OF", "ARTICLE", "IN") and index - before < 5:
        before -= 1
    return before if _type(tokens, before) == "HARDNESS" else None


def _is_dated(tokens: Tokens, index: int) -> bool:
    """Whether a word that could be a verb is a month: '3 maja', 'od maja', 'kwiecień i maja'."""
    before = _type(tokens, index - 1)
    if tokens[index].after_break or _type(tokens, index + 1) == "GROWTH":
        return False
    joined = before in ("AND", "OR", "MINUS") and _type(tokens, index - 2) == "MONTH"
    return joined or before in ("NUMBER", "BETWEEN", "TO")


_MEASURES = frozenset({"EC", "HARDNESS", "ALKALINITY"})
_WATER_UNITS = frozenset({"EC_UNIT", "HARDNESS_UNIT", "ALKALINITY_UNIT"})


def _is_rate(tokens: Tokens, index: int) -> bool:
    """Whether a quantity per volume stands here."""
    at = _skip(tokens, index, ("FILLER", "ARTICLE"))
    if not _is_amount(tokens, at) or any(t.after_break for t in tokens[index : at + 1]):
        return False
    if _type(tokens, at + 2) not in ("PER", "IN", "TO", "FOR", "EVERY"):
        return False
    behind = _skip(tokens, at + 3, ("ARTICLE", "EVERY", "FILLER"))
    per_volume = _type(tokens, behind) == "VOLUME_UNIT" or _is_volume(tokens, behind)
    # 'full strength 2 litres in summer': so much is water, and no feed that goes into it
    water = _is_volume(tokens, at) and (_litres(tokens, at) or 0.0) >= _LEAST_WATER_L
    return per_volume or not water


def _loose(tokens: Tokens) -> Tokens:
    """A capful or a pinch has no size: shown, never guessed."""
    out: Tokens = []
    for index, token in enumerate(tokens):
        if token.type == "LOOSE_MEASURE":
            start = len(out) - 1
            while start > 0 and out[start].type in ("ARTICLE", "OF"):
                start -= 1
            if start >= 0 and start < len(out) - 1 and out[start].type == "FRACTION":
                out[start:] = [_join([*out[start:], token], "UNKNOWN", "loose")]
                continue
            counted = out and out[-1].type in ("NUMBER", "FRACTION")
            rate = _type(tokens, index + 1) == "PER" and out and out[-1].type == "ARTICLE"
            if counted or rate:
                number = out.pop()
                out.append(_join([number, token], "UNKNOWN", "loose"))
                continue
        if token.type in ("$", "€", "£") or (
            token.type == "UNKNOWN" and token.value in ("$", "€", "£")
        ):
            continue
        out.append(token)
    return out


def _rhythms(tokens: Tokens) -> Tokens:
    """'every 9 days' is a rhythm, if none that the rules know."""
    return rewrite(tokens, _rhythm_at)


def _rhythm_at(tokens: Tokens, index: int) -> tuple[Tokens, int] | None:
    every, count, unit = (_type(tokens, index + offset) for offset in range(3))
    if every != "EVERY" or count not in ("NUMBER", "AMOUNT") or unit != "TIME_UNIT":
        return None
    return [_join(tokens[index : index + 3], "OTHER_REGIME", "other")], 3


def _sizes(tokens: Tokens) -> Tokens:
    """'4 in pot': inches."""
    out = list(tokens)
    for index, token in enumerate(out):
        numbered = _type(out, index - 1) == "NUMBER" and _type(out, index + 1) == "POT"
        if (token.type, token.value) == ("IN", "in") and numbered:
            out[index] = Token("LENGTH_UNIT", "inch", token.raws)
    return out


def _plain(tokens: Tokens) -> Tokens:
    """Drop the words that have done their work."""
    return [token for token in tokens if token.type not in _GLUE or _still_needed(token)]


def _still_needed(token: Token) -> bool:
    return token.type in ("PER", "POT") and token.value in ("per", "pot", "before")


def _counted(tokens: Tokens) -> Tokens:
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


_MEASURED: dict[str, tuple[str, ...]] = {
    "ELEMENT": ("CONCENTRATION_UNIT",),
    "HARDNESS": ("HARDNESS_UNIT", "CONCENTRATION_UNIT"),
    "ALKALINITY": ("HARDNESS_UNIT", "ALKALINITY_UNIT", "CONCENTRATION_UNIT"),
    "EC": ("EC_UNIT",),
    "SCALE": ("MASS_UNIT",),
}


def _measured_last(tokens: Tokens) -> Tokens:
    """Put what is measured behind its number: 'hardness 12 dH' to '12 dH hardness'."""
    out: Tokens = []
    index = 0
    while index < len(tokens):
        token = tokens[index]
        units = _MEASURED.get(token.type)
        small_n = token.type == "UNKNOWN" and token.value == "n"
        if small_n and _type(out, len(out) - 1) == "CONCENTRATION_UNIT":
            token = Token("ELEMENT", "N", token.raws)
            units = _MEASURED["ELEMENT"]
        if units is None:
            out.append(token)
            index += 1
            continue
        before = out[-1].type if out else ""
        if before == "COUNTED_PERCENT" or (before in units and not token.after_break):
            out.append(token)  # already behind it
        elif _type(tokens, index + 1) == "AMOUNT" and _type(tokens, index + 2) in units:
            out += [*tokens[index + 1 : index + 3], token]
            index += 2
        elif token.type != "ELEMENT" and _type(tokens, index + 1) == "NUMBER":
            out += [tokens[index + 1], token]
            index += 1
        elif before in units or (token.type != "ELEMENT" and before == "NUMBER"):
            out.append(token)
        elif token.type == "ELEMENT":
            out.append(token._replace(type="UNKNOWN"))
        index += 1
    return out


def _oxides(tokens: Tokens) -> Tokens:
    """An oxide without a percentage says nothing yet."""
    return [
        t._replace(type="UNKNOWN")
        if t.type == "OXIDE" and _type(tokens, i - 1) != "COUNTED_PERCENT"
        else t
        for i, t in enumerate(tokens)
    ]


def _pure_per(tokens: Tokens) -> Tokens:
    """A sign or word for 'per' that stands between no quantity and volume is glue."""
    return [
        t._replace(type="FILLER") if t.type == "PER" and not _divides(tokens, i) else t
        for i, t in enumerate(tokens)
    ]


def _divides(tokens: Tokens, index: int) -> bool:
    volume = _skip(tokens, index + 1, ("ARTICLE", "EVERY", "FILLER"))
    return (
        _type(tokens, volume) == "VOLUME_UNIT"
        or (_type(tokens, volume) == "AMOUNT" and _type(tokens, volume + 1) == "VOLUME_UNIT")
    ) and _quantity_before(tokens, index) is not None


def _forms_before(tokens: Tokens) -> Tokens:
    """'1 g of powder per litre': the form goes in front, so that the rate stands together."""
    out = list(tokens)
    for index in range(len(out) - 3):
        amount, unit, form, per = out[index : index + 4]
        measured = amount.type == "AMOUNT" and unit.type in QUANTITY_UNITS
        if measured and form.type == "FORM" and per.type == "PER":
            out[index : index + 3] = [form, amount, unit]
    return out


Rule: TypeAlias = Callable[[Tokens], Tokens]

#: The rules in order, each with the token types without which it would change nothing
#: (none: it always runs). Most messages need only a few of them.
_RULES: tuple[tuple[Rule, frozenset[str]], ...] = tuple(
    (rule, frozenset(types.split()))
    for rule, types in (
        (compose, "NUMBER POINT AND FRACTION_OF HALF_MORE MEASURED_HALF"),
        (_nor, "NOR"),
        (_countries, "COUNTRY"),
        (_signs, "MINUS"),
        (_analyses, "NUMBER"),
        (_homographs, "CONCENTRATED MEASURED_WATER LEVEL DATED_MONTH IN BARE_DEGREE SIZE_ENDING"),
        (doubts.dates, "ANALYSIS NO_ANALYSIS"),
        (doubts.others, "LAMP OTHER_TASK PERSON_VERB"),
        (doubts.containers, "CONTAINER"),
        (doubts.bounds, "BOUND BOUND_BEHIND TO BY"),
        (doubts.past, "PAST PRESENT AGO"),
        (doubts.shares, "PERCENT SHARE FRACTION EVERY MULTIPLE VAGUE"),
        (doubts.portions, "FRACTION EVERY PLUS AND APIECE"),
        (_sizes, "POT"),
        (_milligrams, "ELEMENT HARDNESS"),
        (_times, "TIMES"),
        (_rates, "PER ARTICLE IN TO FOR EVERY TIMES"),
        (_strength_numbers, "STRENGTH"),
        (_ranges, "MINUS TO OR BETWEEN ARTICLE"),
        (_mixtures, "MIX"),
        (_slow_growth, "GROWING_VERB GROWTH"),
        (_growing, "GROWING_VERB"),
        (_full, "FULL"),
        (_fractions, "FRACTION MULTIPLE PERCENT MULTIPLIER"),
        (_dilutions, "RATIO"),
        (_declared, "NPK"),
        (_extras, "ELEMENT OXIDE PLUS UNKNOWN MASS_UNIT"),
        (_loose, "LOOSE_MEASURE UNKNOWN"),
        (_rhythms, "EVERY"),
        (_counted, "NUMBER"),
        (_amounts, ""),
        (_per_plant, "POT PER EVERY"),
        (_pure_per, "PER"),
        (_negations, "NOT"),
        (_plain, ""),
        (_forms_before, "PER"),
        (_measured_last, "ELEMENT HARDNESS ALKALINITY EC SCALE UNKNOWN"),
        (_oxides, "OXIDE"),
    )
)
