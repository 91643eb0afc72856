"""How much of one thing in how much of another: rates, dilutions, amounts a plant."""

from __future__ import annotations

from grammar.request.settling.near import DILUTED, is_amount, is_volume, litres, quantity_before
from grammar.words.scan import Token
from grammar.words.tokens import PLANTS as _PLANTS
from grammar.words.tokens import QUANTITY_UNITS, Tokens, broken, rewrite
from grammar.words.tokens import join as _join
from grammar.words.tokens import skip as _skip
from grammar.words.tokens import type_at as _type
from grammar.words.units import TAKEN

_PER_WORDS = frozenset({"PER", "ARTICLE", "IN", "TO", "FOR", "EVERY"})


def rates(tokens: Tokens) -> Tokens:
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
        per_volume = _type(tokens, volume) == "VOLUME_UNIT" or is_volume(tokens, volume)
        quantity = quantity_before(tokens, index)
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


def _dissolves(tokens: Tokens, unit: int, index: int, volume: int, labelled: bool) -> bool:
    token = tokens[index]
    if token.type == "FOR" and not labelled:
        return False
    spoken = token.type == "PER" and (token.value != "/" or not is_volume(tokens, volume))
    if tokens[unit].type != "VOLUME_UNIT" or spoken:
        return True
    quantity = litres(tokens, unit - 1)
    water = litres(tokens, volume) or 1.0
    return quantity is not None and quantity * DILUTED <= water


def _reversed(tokens: Tokens, index: int, volume: int, labelled: bool) -> bool:
    """'per litre 2 ml', 'label: for 10 l 5 g'."""
    if tokens[index].type == "ARTICLE" or (tokens[index].type, tokens[index].value) == ("TO", "to"):
        return False
    if tokens[index].type in ("FOR", "IN", "TO") and not labelled:
        return False
    after = volume + 1 if _type(tokens, volume) == "VOLUME_UNIT" else volume + 2
    after = _skip(tokens, after, ("FILLER", "OF", "WATER_WORD", "FORM"))
    if not is_amount(tokens, after):
        return False
    is_volume = _type(tokens, after + 1) == "VOLUME_UNIT"
    smaller = not is_volume or (litres(tokens, after) or 1.0) * DILUTED <= 1.0
    later = _skip(tokens, after + 2, ("FORM", "OF", "FILLER"))
    return smaller and _type(tokens, later) not in ("PER",)


def milligrams(tokens: Tokens) -> Tokens:
    """'100 mg N/L', '80 mg nitrogen per litre': a concentration of the element."""
    return rewrite(tokens, _milligrams_at, ("MASS_UNIT",))


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


def per_plant(tokens: Tokens) -> Tokens:
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


_LARGE = ("litre", "gallon", "quart", "pint", "cubic_decimetre")
_COUNTS = frozenset({"AMOUNT", "NUMBER", "FRACTION", "ARTICLE", "RANGE"})


def asked_per(tokens: Tokens) -> Tokens:
    """'how much per litre?' asks for one litre, where no other volume is spoken of."""
    asked = False
    for index, token in enumerate(tokens):
        asked = asked or (token.type, token.value) == ("FILLER", "how_much")
        link = token.type in ("PER", "EVERY") or token.value == "onto"
        if link and (asked or _type(tokens, index - 1) == "STRENGTH"):
            found = _asked_at(tokens, index)
            if found is not None and not _has_volume(tokens):
                return found
    return tokens


def _asked_at(tokens: Tokens, index: int) -> Tokens | None:
    unit = _skip(tokens, index + 1, ("ARTICLE",))
    if _type(tokens, unit) != "VOLUME_UNIT" or broken(tokens, index + 1, unit):
        return None
    if not tokens[unit].value.removeprefix(TAKEN).endswith(_LARGE):
        return None
    start = index - (_type(tokens, index - 1) in QUANTITY_UNITS)  # 'how many grams per litre'
    if _type(tokens, start - 1) in _COUNTS:
        return None
    one = _join(tokens[start:unit], "AMOUNT", "1")
    return [*tokens[:start], one, *tokens[unit:]]


def _has_volume(tokens: Tokens) -> bool:
    """Whether water is spoken of that is not that of a rate."""
    for index, token in enumerate(tokens):
        if token.type in ("RANGE", "SEVERAL", "LOOSE_MEASURE"):
            return True
        if token.type == "AMOUNT" and _type(tokens, index + 1) == "VOLUME_UNIT":
            rate = "PER" in (_type(tokens, index - 1), _type(tokens, index + 2))
            if not rate and _type(tokens, index - 1) != "EACH":
                return True
    return False


def of_medium(tokens: Tokens) -> Tokens:
    """'2 l of bark' is not the volume of the can."""
    return rewrite(tokens, _of_medium_at, ("NUMBER", "FRACTION", "ARTICLE"))


def _of_medium_at(tokens: Tokens, index: int) -> tuple[Tokens, int] | None:
    kinds = tuple(_type(tokens, index + offset) for offset in (1, 2, 3))
    if kinds != ("VOLUME_UNIT", "OF", "MEDIUM") or broken(tokens, index + 1, index + 3):
        return None
    measured = _join(tokens[index : index + 4], "UNKNOWN", "of medium")
    return [measured, tokens[index + 3]], len(kinds) + 1


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
    if not (each or spoken or token.type == "EVERY"):
        return 0
    plant = _skip(tokens, index + 1, ("ARTICLE", "FILLER"))
    named = _type(tokens, plant) in _PLANTS | {"POT"}  # 'every pot takes half a litre'
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


def dilutions(tokens: Tokens) -> Tokens:
    """'1:500' is a label rate; '1:4' could be anything."""
    out: Tokens = []
    for token in tokens:
        if token.type == "RATIO":
            one, parts = (float(part) for part in token.value.split(":"))
            if one != 1 or parts < DILUTED:
                token = token._replace(type="UNKNOWN")
        out.append(token)
    return out


def pure_per(tokens: Tokens) -> Tokens:
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
    ) and quantity_before(tokens, index) is not None


def forms_before(tokens: Tokens) -> Tokens:
    """'1 g of powder per litre': the form goes in front, so that the rate stands together."""
    out = list(tokens)
    for index in range(len(out) - 3):
        amount, unit, form, per = out[index : index + 4]
        measured = amount.type == "AMOUNT" and unit.type in QUANTITY_UNITS
        if measured and form.type == "FORM" and per.type == "PER":
            out[index : index + 3] = [form, amount, unit]
    return out
