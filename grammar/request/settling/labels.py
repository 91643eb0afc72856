"""What a label prints: analyses, further elements, declared oxides."""

from __future__ import annotations

import re

from grammar.words.scan import AMBIGUOUS, Token
from grammar.words.tokens import UNITS, Tokens, rewrite
from grammar.words.tokens import join as _join
from grammar.words.tokens import skip as _skip
from grammar.words.tokens import type_at as _type

#: Before the analysis that three numbers with dots may be.
DOTTED = "dotted "
_DOTS = re.compile(r"[1-9]?\d(?:\.[1-9]?\d){2}")


def dotted(tokens: Tokens) -> Tokens:
    """'20.20.20 powder' is an analysis; where no such word is beside it, it could be a date."""
    out = list(tokens)
    for index, token in enumerate(tokens):
        text = token.raws[0].text
        if token.type != "NUMBER" or len(token.raws) > 1 or not _DOTS.fullmatch(text):
            continue
        numbers = text.split(".")
        if _type(tokens, index + 1) in UNITS:
            continue  # '2.5.3 l' is no number
        if _type(tokens, index - 1) == "NO_ANALYSIS":
            out[index] = token._replace(type="UNKNOWN")
        elif _beside_a_product(tokens, index):
            out[index] = token._replace(type="OPEN_ANALYSIS", value=" ".join(numbers))
        else:
            out[index] = token._replace(type="UNKNOWN", value=DOTTED + "-".join(numbers))
    return out


def _beside_a_product(tokens: Tokens, index: int) -> bool:
    before, behind = index - 1, index + 1
    if _type(tokens, before) in ("NPK", "FORM") and not tokens[index].after_break:
        return True
    return _type(tokens, behind) in ("NPK", "FORM") and not tokens[behind].after_break


def analyses(tokens: Tokens) -> Tokens:
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


#: A label of the EU names secondary nutrients before its numbers and means their oxides.
_DECLARED = {"Mg": "MgO", "Ca": "CaO", "S": "SO3", "Na": "Na2O"}


def declared(tokens: Tokens) -> Tokens:
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


def extras(tokens: Tokens) -> Tokens:
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
        with_it = token.type == "FILLER" and _type(tokens, index - 1) == "ANALYSIS"
        open_list = token.type in ("ANALYSIS", "PLUS") or (
            open_list and (token.type in ("AND", "MINUS") or with_it)  # '13-3-15 with 8 Ca'
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


#: Elements as they are typed in small letters.
SMALL_ELEMENTS = {
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
    small = token.type in ("UNKNOWN", "MASS_UNIT") or word == "ca"  # also 'circa'
    if open_list and word in SMALL_ELEMENTS and small:
        return Token("ELEMENT", SMALL_ELEMENTS[word], token.raws)
    return None


def oxides(tokens: Tokens) -> Tokens:
    """An oxide without a percentage says nothing yet."""
    return [
        t._replace(type="UNKNOWN")
        if t.type == "OXIDE" and _type(tokens, i - 1) != "COUNTED_PERCENT"
        else t
        for i, t in enumerate(tokens)
    ]
