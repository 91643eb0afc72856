"""Measures whose size depends on the country: whose they are, and those of a kitchen."""

from __future__ import annotations

from grammar.request.settling.numbers import LEAST_WATER_L
from grammar.words.numerals import fraction_value
from grammar.words.scan import AMBIGUOUS, Token
from grammar.words.tokens import Tokens, rewrite
from grammar.words.tokens import join as _join
from grammar.words.tokens import skip as _skip
from grammar.words.tokens import type_at as _type
from grammar.words.units import COUNTRYLESS, TAKEN, to_canonical

#: What the word for a country and its sign have in common: 'US' is a unit of conductivity too.
_US = "us"
_COUNTRIES = ("us", "imperial")
#: Ends the value of a word that is of a country only beside a measure.
_BESIDE = "_beside"


def countries(tokens: Tokens) -> Tokens:
    """'2 pints (uk)', 'im in the uk': a country holds for every measure that says none.

    Where two are said each measure keeps its own, and one without stays open.
    """
    tokens = _signs(tokens)
    tokens = rewrite(tokens, _denied_at, ("NOT",))
    if any(token.type == "COUNTRY" for token in tokens):
        tokens = rewrite(tokens, _country_at, ("COUNTRY", "VOLUME_UNIT"))
    said = {t.value for t in tokens if t.type == "COUNTRY" and t.value in _COUNTRIES} | {
        country
        for t in tokens
        for country in _COUNTRIES
        if t.type == "VOLUME_UNIT" and t.value.startswith(f"{country}_")
    }
    country = said.pop() if len(said) == 1 else None
    return [_settled(t, country) for t in tokens]


def _settled(token: Token, country: str | None) -> Token:
    if token.type == "COUNTRY":
        of_else = token.value.endswith(_BESIDE)
        return token._replace(type="UNKNOWN" if of_else else "FILLER", value="filler")
    if token.type == "VOLUME_UNIT" and token.value in COUNTRYLESS and country is not None:
        return token._replace(value=f"{TAKEN}{country}_{token.value}")
    return token


def _signs(tokens: Tokens) -> Tokens:
    """'2 gallons (US)': behind a measure it is the country."""
    out = list(tokens)
    for index, token in enumerate(out):
        if token.raws[0].text != _US or token.type not in ("EC_UNIT", "FILLER"):
            continue
        before = _skip_back(out, index)
        behind = _type(out, before) == "VOLUME_UNIT" and out[before].value in COUNTRYLESS
        if behind or _type(out, before) == "NOT":
            out[index] = token._replace(type="COUNTRY", value=_US)
    return out


def _skip_back(tokens: Tokens, index: int) -> int:
    at = index - 1
    while _type(tokens, at) in ("FILLER", "ARTICLE") and index - at < 4:
        at -= 1
    return at


def _denied_at(tokens: Tokens, index: int) -> tuple[Tokens, int] | None:
    """'uk gallons not us'."""
    if tokens[index].type != "NOT":
        return None
    at = _skip(tokens, index + 1, ("FILLER", "ARTICLE", "IN"))
    own = _type(tokens, at) == "VOLUME_UNIT" and tokens[at].value.startswith(("us_", "imperial_"))
    if _type(tokens, at) != "COUNTRY" and not own:
        return None
    whole = tokens[index : at + 1]
    return [_join(whole, "FILLER", "filler")], len(whole)


def _country_at(tokens: Tokens, index: int) -> tuple[Tokens, int] | None:
    """'pints (uk)', 'american quart'."""
    pair = tokens[index : index + 2]
    kinds = [t.type for t in pair]
    if kinds == ["COUNTRY", "VOLUME_UNIT"] and not pair[1].after_break:
        country, unit = pair
    elif kinds == ["VOLUME_UNIT", "COUNTRY"]:
        unit, country = pair
    else:
        return None
    if unit.value not in COUNTRYLESS:
        return None
    name = country.value.removesuffix(_BESIDE)
    return [_join(pair, "VOLUME_UNIT", f"{name}_{unit.value}")], 2


_WATER = frozenset({"WATER", "WATER_WORD", "OTHER_WATER"})
#: What is said of the feed that a bottle holds, and not of the water.
_PRODUCT = frozenset({"FORM", "ANALYSIS", "OPEN_ANALYSIS", "NPK"})


def kitchen(tokens: Tokens) -> Tokens:
    """'32 oz spray bottle', '2 cups of water', 'gallon jug': measures of water in a kitchen."""
    return rewrite(tokens, _kitchen_at, ("MASS_UNIT", "LOOSE_MEASURE", "VOLUME_UNIT"))


def _kitchen_at(tokens: Tokens, index: int) -> tuple[Tokens, int] | None:
    token = tokens[index]
    counted = _type(tokens, index - 1) in ("NUMBER", "FRACTION") and not token.after_break
    cup = (token.type, token.value) == ("LOOSE_MEASURE", "cup")
    if counted and (token.type, token.value) == ("MASS_UNIT", "ounce"):
        if _of_a_liquid(tokens, index + 1):
            return [token._replace(type="VOLUME_UNIT", value="fluid_ounce")], 1
        if _of_water(tokens, index + 1, vessel=True) and _enough(tokens[index - 1]):
            return [token._replace(type="VOLUME_UNIT", value="fluid_ounce")], 1
    elif cup and (counted or _type(tokens, index - 1) == "ARTICLE"):
        ends = index + 1 >= len(tokens) or tokens[index + 1].after_break
        if _of_water(tokens, index + 1, vessel=False) or (ends and counted):
            return [token._replace(type="VOLUME_UNIT", value="cup")], 1
    elif token.type == "VOLUME_UNIT" and _is_vessel(tokens, index + 1):
        alone = token.after_break or _type(tokens, index - 1) in ("", "FILLER", "ARTICLE", "FOR")
        one = _type(tokens, index - 1) != "ARTICLE" and alone
        if one and not tokens[index + 1].after_break and not _product(tokens, index + 2):
            behind = token.raws[0]._replace(after_break=False)
            unit = token._replace(raws=(behind, *token.raws[1:]))
            return [Token("ARTICLE", "a", token.raws[:1]), unit], 1
    return None


def _of_a_liquid(tokens: Tokens, index: int) -> bool:
    """Whether ounces of a liquid are measured out: 'liquid, 1 oz per gallon'."""
    forms = {t.value for t in tokens if t.type == "FORM"}
    if forms != {"liquid"} or _type(tokens, index) not in ("PER", "ARTICLE", "IN", "TO", "FOR"):
        return False
    return _type(tokens, _skip(tokens, index + 1, ("ARTICLE", "NUMBER"))) == "VOLUME_UNIT"


def _is_vessel(tokens: Tokens, index: int) -> bool:
    kind = _type(tokens, index)
    return kind == "CONTAINER" or (kind == "LOOSE_MEASURE" and tokens[index].value == "vessel")


def _of_water(tokens: Tokens, index: int, *, vessel: bool) -> bool:
    """Whether water follows, or something to keep it in."""
    at = _skip(tokens, index, ("OF", "FILLER", "ARTICLE"))
    if any(t.after_break for t in tokens[index : at + 1]):
        return False
    if vessel and _is_vessel(tokens, at):
        return not _product(tokens, at + 1)
    return _type(tokens, at) in _WATER


def _product(tokens: Tokens, index: int) -> bool:
    """Whether a bottle is one of feed: '32 oz bottle of 7-3-6 liquid'."""
    at = _skip(tokens, index, ("OF", "FILLER", "ARTICLE"))
    fed = any(t.value == "feeding" for t in tokens[index:at])
    near = at < len(tokens) and not any(t.after_break for t in tokens[index : at + 1])
    return fed or (near and tokens[at].type in _PRODUCT)


def _enough(number: Token) -> bool:
    """Whether so many ounces are a can of water: a bottle of two is of something else."""
    if AMBIGUOUS in number.value:
        return False
    count = fraction_value(number.value) if "/" in number.value else float(number.value)
    return count * to_canonical(1.0, "us_fluid_ounce") >= LEAST_WATER_L
