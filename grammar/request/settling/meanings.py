"""Words with two meanings: fractions, 'full', 'slow', homographs, mixtures of media."""

from __future__ import annotations

from itertools import takewhile

from grammar.request.settling.labels import SMALL_ELEMENTS
from grammar.request.settling.near import is_amount, is_volume, litres, strength
from grammar.request.settling.numbers import LEAST_WATER_L
from grammar.words.scan import Token
from grammar.words.tokens import PLANTS as _PLANTS
from grammar.words.tokens import UNITS, Tokens, rewrite
from grammar.words.tokens import join as _join
from grammar.words.tokens import skip as _skip
from grammar.words.tokens import type_at as _type


def fractions(tokens: Tokens) -> Tokens:
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
            out.append(strength(token))
            index = target + 1  # 'half of the full strength' is half
            continue
        if _of_full(tokens, index, target):
            out.append(strength(token))
            index = target + 1  # 'a tenth of full'
            continue
        linked = _type(tokens, behind) == "OF" and not tokens[behind].after_break
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
        out.append(strength(token))
        index += 1
    return out


def _of_full(tokens: Tokens, index: int, target: int) -> bool:
    """Whether a part of a bare 'full' stands here, and of nothing that is full."""
    if tokens[index].type == "MULTIPLE" or _type(tokens, target) not in ("MULTIPLE", "FULL"):
        return False
    linked = any(t.type == "OF" for t in tokens[index + 1 : target])
    filled = _type(tokens, index - 1) in ("TO", "IN")  # 'do połowy pełna'
    if filled or not linked or any(t.after_break for t in tokens[index + 1 : target + 1]):
        return False
    whole = tokens[target].type == "FULL" or tokens[target].value == "1"
    return whole and _stands_alone(tokens, target)


def full(tokens: Tokens) -> Tokens:
    """'Cymbidium, 5 l, voll': a word that fills sentences too is a strength only by itself."""
    out = list(tokens)
    for index, token in enumerate(out):
        ends = index + 1 >= len(out) or out[index + 1].after_break
        parted = token.after_break or _type(out, index - 1) in ("FORM", "ANALYSIS")
        if token.type == "FULL" and parted and ends:
            out[index] = token._replace(type="LEVEL", value="1")
    return out


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


def slow_growth(tokens: Tokens) -> Tokens:
    """'growing rather slowly' is slow growth, not growth."""
    return rewrite(tokens, _slow_growth_at)


def _slow_growth_at(tokens: Tokens, index: int) -> tuple[Tokens, int] | None:
    first = tokens[index]
    grows = first[:2] in (("GROWTH", "growing"), ("FILLER", "grown"))
    if first.type != "GROWING_VERB" and not grows:
        return None
    at = _skip(tokens, index + 1, ("FILLER",))
    if _type(tokens, at) not in ("SLOWLY", "GROWTH") or tokens[at].value != "slow":
        return None
    if first.type == "FILLER" and any(t.after_break for t in tokens[index + 1 : at + 1]):
        return None
    return [_join(tokens[index : at + 1], "GROWTH", "slow")], at + 1 - index


def growing(tokens: Tokens) -> Tokens:
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


#: What stands between the parts of a medium: 'bark and some perlite'.
_ADDED = frozenset({"AND", "PLUS", "ARTICLE", "FILLER"})


def mixtures(tokens: Tokens) -> Tokens:
    """'bark and perlite' is a mixed medium; moss or clay in it stays two media to ask about."""
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
                linking = {t.type for t in tokens[end:at]}
                added = bool(media and linking & {"AND", "PLUS"}) and linking <= _ADDED
                mixed = mixed or "MIX" in linking or added
                if _type(tokens, at) != "MEDIUM" or tokens[at].after_break:
                    trailing = at if at > end and tokens[at - 1].type == "MIX" else end
                    break
                media.append(tokens[at])
                end = at + 1
            kinds = {t.value for t in media}
            if mixed and len(kinds) > 1 and not kinds & {"sphagnum", "clay_pellets", "mounted"}:
                out.append(_join(tokens[index:trailing], "MEDIUM", "mixed"))
                index = trailing
                continue
        out.append(token)
        index += 1
    return out


def homographs(tokens: Tokens) -> Tokens:
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
        elif token.type == "EXACT" and following in ("ARTICLE", "FILLER", "OF"):
            if _type(out, _skip(out, index + 1, ("ARTICLE", "FILLER", "OF"))) not in _SHARES:
                out[index] = token._replace(type="FILLER", value="filler")  # 'genau die Pflanze'
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
        elif token.type == "PERCENT":
            element = _element_behind(out, index)
            if element:
                out[index + 1] = out[index + 1]._replace(type="ELEMENT", value=element)
        elif token.type == "MULTIPLE" and _is_triple(out, index):
            number = out[index + 1].raws[0].text
            whole = _join(out[index : index + 2], "ANALYSIS", "-".join([number] * 3))
            out[index : index + 2] = [whole, Token("FILLER", "filler", whole.raws[-1:])]
        elif (token.type, token.value) == ("FILLER", "wish"):
            at = _skip(out, index + 1, ("FILLER", "ARTICLE", "FOR", "IN", "TO"))
            aimed = _type(out, at) == "NUMBER" and _type(out, at + 1) == "EC_UNIT"
            if aimed and not any(t.after_break for t in out[index + 1 : at + 2]):
                out[index] = token._replace(type="AIM", value="aim")  # 'I want 0.8 mS in tap water'
        elif token.type == "TEMPERATURE_UNIT" and token.value == "fahrenheit":
            out[index] = _french(out, index)
        elif token.type == "BARE_DEGREE":
            hard = _hardness_near(out, index)
            if hard is not None:
                out[hard] = out[hard]._replace(value=token.value)
            out[index] = token._replace(type="FILLER", value="filler")
    return out


#: Water is seldom said to be colder; degrees of hardness are seldom more [°F].
_COLD_F = 60.0


def _french(tokens: Tokens, index: int) -> Token:
    """'dureza 30 °f' is in French degrees; of 'agua del grifo 30 °f' that is asked."""
    token = tokens[index]
    if _type(tokens, index - 1) != "NUMBER" or token.after_break or tokens[index - 1].after_break:
        return token
    before = index - 2
    while _type(tokens, before) in ("FILLER", "OF", "ARTICLE") and index - before < 5:
        before -= 1
    if _type(tokens, before) == "HARDNESS":
        return token._replace(type="HARDNESS_UNIT", value="french_degree")
    number = tokens[index - 1].value
    bare = number.replace(".", "", 1).isdigit()
    if _type(tokens, before) == "WATER" and bare and float(number) <= _COLD_F:
        return token._replace(type="HARDNESS", value="hardness")
    return token


def _element_behind(tokens: Tokens, index: int) -> str:
    """The element whose share of the label stands here: '15-5-15 with 4% ca and 1% mg'."""
    following = _type(tokens, index + 1)
    if _type(tokens, index - 1) != "NUMBER" or following not in ("UNKNOWN", "MASS_UNIT", "FILLER"):
        return ""
    about = _type(tokens, index + 2) == "NUMBER"
    if about and (following == "FILLER" or not tokens[index + 2].after_break):
        return ""  # '25 % ca. 3 l'
    return _METALS.get(tokens[index + 1].raws[0].text, "")


def _is_triple(tokens: Tokens, index: int) -> bool:
    """'triple 15' is how 15-15-15 is called where it is sold, and no threefold dose."""
    if tokens[index].value != "3" or _type(tokens, index + 1) != "NUMBER":
        return False
    text = tokens[index + 1].raws[0].text
    near = not tokens[index + 1].after_break and len(tokens[index + 1].raws) == 1
    return near and text in _TRIPLES and _type(tokens, index + 2) not in UNITS | {"PERCENT"}


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


#: What is meant to the letter: 'exactly the half', 'genau die halbe Dosis'.
_SHARES = frozenset({"FRACTION", "STRENGTH", "LEVEL", "MULTIPLE", "NUMBER", "LABEL", "FULL"})

#: Elements that no other word is short for.
_METALS = {k: v for k, v in SMALL_ELEMENTS.items() if len(k) == 2}
#: Equal shares of all three that labels print.
_TRIPLES = frozenset({"10", "12", "13", "14", "15", "16", "17", "18", "19", "20", "21"})

_MEASURES = frozenset({"EC", "HARDNESS", "ALKALINITY"})

_WATER_UNITS = frozenset({"EC_UNIT", "HARDNESS_UNIT", "ALKALINITY_UNIT"})


def _is_rate(tokens: Tokens, index: int) -> bool:
    """Whether a quantity per volume stands here."""
    at = _skip(tokens, index, ("FILLER", "ARTICLE"))
    if not is_amount(tokens, at) or any(t.after_break for t in tokens[index : at + 1]):
        return False
    if _type(tokens, at + 2) not in ("PER", "IN", "TO", "FOR", "EVERY"):
        return False
    behind = _skip(tokens, at + 3, ("ARTICLE", "EVERY", "FILLER"))
    per_volume = _type(tokens, behind) == "VOLUME_UNIT" or is_volume(tokens, behind)
    # 'full strength 2 litres in summer': so much is water, and no feed that goes into it
    water = is_volume(tokens, at) and (litres(tokens, at) or 0.0) >= LEAST_WATER_L
    return per_volume or not water


#: What 'twice' is of, where it is no count of times.
_TWICE_OF = frozenset({
    "STRENGTH", "LABEL", "LEVEL", "SHARE", "VAGUE", "FRACTION", "CONCENTRATED", "FULL",
})  # fmt: skip


def often(tokens: Tokens) -> Tokens:
    """'twice the dose' is double, 'fed twice' tells how often."""
    out = list(tokens)
    for index, token in enumerate(tokens):
        if token.type != "OFTEN":
            continue
        behind = _skip(tokens, index + 1, ("FILLER", "ARTICLE", "OF")) + 1
        clause = list(takewhile(lambda t: not t.after_break, tokens[index + 1 : behind]))
        strong = any(t.type in _TWICE_OF or t.value == "dilution" for t in clause)
        out[index] = token._replace(type="MULTIPLE" if strong else "UNKNOWN")
    return out
