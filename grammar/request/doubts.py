"""Numbers and words that are said of something else than the feed that is being mixed.

Each rule takes a token list and gives one back in which such words are UNKNOWN (shown to the
person) or RANGE and SEVERAL (asked about), so that none of them ends in a dose.
"""

from __future__ import annotations

from grammar.words.numerals import fraction_value
from grammar.words.scan import Token
from grammar.words.tokens import (
    PLANTS,
    QUANTITY_UNITS,
    UNITS,
    Tokens,
    clauses,
    join,
    rewrite,
    skip,
    type_at,
)

_STRENGTHS = frozenset({"FRACTION", "LEVEL", "MULTIPLE", "MULTIPLIER", "VAGUE"})
_SMALL_WORDS = ("FILLER", "ARTICLE", "OF")
_FIGURES = _STRENGTHS | {"NUMBER"}
#: Sixteenths are the finest fraction that anybody measures a dose in.
_FINEST = 16


def dates(tokens: Tokens) -> Tokens:
    """'bought on 15-05-20', 'temperature 15-20-25': three numbers that are no analysis."""
    out: Tokens = []
    for index, token in enumerate(tokens):
        if token.type == "ANALYSIS" and out:
            at = len(out) - 1
            while at > 0 and out[at].type in ("FILLER", "IN", "MINUS") and not out[at].after_break:
                at -= 1
            if out[at].type == "NO_ANALYSIS" and not token.after_break:
                out.append(token._replace(type="UNKNOWN"))
                continue
        if token.type == "ANALYSIS" and (_padded(token.value) or _is_ratio(tokens, index)):
            token = token._replace(type="UNKNOWN")
        out.append(token)
    return [t._replace(type="FILLER") if t.type == "NO_ANALYSIS" else t for t in out]


#: Larger figures than these are those of a label, whoever calls them a ratio (ours).
_RATIO = 5.0
_RATIO_FAR = 3
#: With colons between them figures as small as these are a ratio, if nobody says so (ours).
_COLONS = 3.0


def _is_ratio(tokens: Tokens, index: int) -> bool:
    """'3-1-2 ratio', 'ratio of 3:1:2': how the three stand to each other, and not how much."""
    value = tokens[index].value
    sign = next((s for s in "-/: " if value.strip().count(s) >= 2), "")
    parts = [part.strip() for part in value.split(sign)] if sign else []
    plain = len(parts) == 3 and all(part.isdigit() for part in parts)
    if not plain or max(map(float, parts)) > _RATIO:
        return False
    if any(t.type == "RATIO" for t in tokens):
        return False  # 'dilution ratio 1:200'
    if sign == ":" and max(map(float, parts)) <= _COLONS:
        return True
    before = index
    while type_at(tokens, before - 1) in ("FILLER", "OF", "NPK", "IN", "ARTICLE"):
        before -= 1
        if tokens[before + 1].after_break or index - before > _RATIO_FAR:
            break
        if tokens[before].value == "dilution":
            return True
    behind = skip(tokens, index + 1, ("NPK", "FORM"))
    near = not any(t.after_break for t in tokens[index + 1 : behind + 1])
    return near and type_at(tokens, behind) == "FILLER" and tokens[behind].value == "dilution"


def _padded(analysis: str) -> bool:
    """Whether a part is written with a leading nought, as in dates and telephone numbers."""
    for sign in "-/: ":
        parts = [p.strip() for p in analysis.split(sign) if p.strip()]
        if len(parts) == 3:
            return any(len(p) > 1 and p[0] == "0" and p[1].isdigit() for p in parts)
    return False


def bounds(tokens: Tokens) -> Tokens:
    """'less than half', 'more than 2 l': no quantity yet."""
    out: Tokens = []
    index = 0
    while index < len(tokens):
        if tokens[index].type == "BOUND_BEHIND":
            out.append(_bounded(out, tokens[index]))
            index += 1
            continue
        if tokens[index].type not in ("BOUND", "BY") and not _open_to(tokens, index):
            out.append(tokens[index])
            index += 1
            continue
        at = index + 1 + (type_at(tokens, index + 1) in ("FILLER", "ARTICLE"))
        abbreviated = tokens[index].value == "either" and tokens[index].raws[-1].dotted
        end = _quantity_end(tokens, at, after_dot=abbreviated)
        if end is None and tokens[index].value == "either":
            out.append(_bounded(out, tokens[index]))
            index += 1
            continue
        if end is None and tokens[index].type == "TO":
            out.append(tokens[index])
            index += 1
            continue
        if end is None and _is_extreme(tokens, index):
            out.append(join(tokens[index : index + 2], "UNKNOWN", "bound"))
            index += 2
            continue
        if end is None:
            out.append(tokens[index]._replace(type="FILLER"))
            index += 1
            continue
        out.append(join(tokens[index:end], "RANGE", tokens[end - 1].type))
        index = end
    return out


def _is_extreme(tokens: Tokens, index: int) -> bool:
    """'minimum dose' without a figure says no strength; 'max. dose 2 ml/l' has one."""
    if type_at(tokens, index + 1) != "STRENGTH" or tokens[index + 1].after_break:
        return False
    at = skip(tokens, index + 2, _SMALL_WORDS)
    if type_at(tokens, at) not in _FIGURES:
        return True
    return tokens[at].after_break and _rate_end(tokens, at + 2) == at + 2


def _open_to(tokens: Tokens, index: int) -> bool:
    """A 'to' that says 'up to' where nothing stands before it to reach from: 'bis 2 l'."""
    if tokens[index].type != "TO" or tokens[index].value != "up_to":
        return False
    return type_at(tokens, index - 1) not in UNITS | _STRENGTHS | {"NUMBER", "STRENGTH", "MONTH"}


def _bounded(out: Tokens, bound: Token) -> Token:
    """'2 l or less': takes the quantity before it off the list."""
    size = 0
    if out and not bound.after_break:
        last = out[-1].type
        size = 2 if last in UNITS | {"STRENGTH"} and len(out) > 1 else int(last in _STRENGTHS)
    if not size or type_at(out, len(out) - size) not in _STRENGTHS | {"NUMBER", "ARTICLE"}:
        return bound._replace(type="FILLER")
    quantity = out[-size:]
    del out[-size:]
    return join([*quantity, bound], "RANGE", quantity[-1].type)


def _quantity_end(tokens: Tokens, at: int, *, after_dot: bool) -> int | None:
    """Behind the quantity that starts here: a number with its unit, or a strength.

    Behind a dot that shortens a word ('mind. 2 l') no sentence begins.
    """
    kind = type_at(tokens, at)
    if kind not in _STRENGTHS | {"NUMBER"} or (tokens[at].after_break and not after_dot):
        return None
    unit = skip(tokens, at + 1, ("OF", "ARTICLE")) if kind == "FRACTION" else at + 1
    if type_at(tokens, unit) in UNITS and not tokens[unit].after_break:
        return unit + 1
    if type_at(tokens, at + 1) == "STRENGTH":
        return at + 2
    return None if kind == "NUMBER" else at + 1


def past(tokens: Tokens) -> Tokens:
    """'last time I gave half', 'I used 5 l yesterday': told, not asked for."""
    out: Tokens = []
    for clause in clauses(rewrite(tokens, _ago_at)):
        start = 0
        for at in (*(i for i, t in enumerate(clause) if t.type == "PRESENT"), len(clause)):
            part = clause[start:at]
            begins = _told_from(part)
            out += [*part[:begins], *told(part[begins:])]
            start = at
    return [t._replace(type="FILLER") if t.type in ("PAST", "PRESENT") else t for t in out]


def _ago_at(tokens: Tokens, index: int) -> tuple[Tokens, int] | None:
    """'vor 3 Wochen', 'hace un mes': a word for 'ago' that stands before its number."""
    if tokens[index].type != "AGO":
        return None
    counted = type_at(tokens, index + 1) in ("NUMBER", "ARTICLE", "FRACTION")
    if not counted or type_at(tokens, index + 2) != "TIME_UNIT":
        return [tokens[index]._replace(type="FILLER")], 1
    return [join(tokens[index : index + 3], "PAST", "all")], 3


def _told_from(clause: Tokens) -> int:
    """Where in a clause the past begins; its length where nothing is past."""
    marks = [place for place, t in enumerate(clause) if t.type == "PAST"]
    if any(clause[place].value == "all" for place in marks):
        return 0
    return min(marks, default=len(clause))


def told(clause: Tokens) -> Tokens:
    """The figures of a clause that tells of something else, to be shown only."""
    out: Tokens = []
    index = 0
    while index < len(clause):
        token = clause[index]
        end = index + 1
        if token.type == "NUMBER" and type_at(clause, end) == "GENUS":
            out.append(token)  # 'my aunt gave me 4 phals': they are still here
        elif token.type in _STRENGTHS | {"NUMBER", "ARTICLE"}:
            unit = skip(clause, end, ("OF", "ARTICLE")) if token.type == "FRACTION" else end
            if type_at(clause, unit) in UNITS:
                end = _rate_end(clause, unit + 1)
            elif token.type == "ARTICLE":
                out.append(token)
                index += 1
                continue
            out.append(join(clause[index:end], "UNKNOWN", "past"))
        elif token.type in ("REGIME", "EC", "ANALYSIS", "RANGE"):
            out.append(token._replace(type="UNKNOWN"))
        else:
            out.append(token)
        index = end
    return out


def _rate_end(clause: Tokens, at: int) -> int:
    """Behind the water that a quantity goes into: '5 g per litre', '3 g in 5 l'; else `at`."""
    if type_at(clause, at) not in ("PER", "IN", "FOR", "TO", "EVERY"):
        return at
    number = type_at(clause, at + 1) in ("NUMBER", "FRACTION", "ARTICLE")
    return at + 2 + number if type_at(clause, at + 1 + number) == "VOLUME_UNIT" else at


def shares(tokens: Tokens) -> Tokens:
    """'15 % off', 'humidity 60 %', 'every quarter', '20/20': fractions of something else."""
    out: Tokens = []
    index = 0
    while index < len(tokens):
        token = tokens[index]
        size = _share_size(tokens, index)
        if size:
            start = _humidity(out, tokens, index)
            del out[len(out) - len(start) :]
            out.append(join([*start, *tokens[index : index + size]], "UNKNOWN", "share"))
            index += size
            continue
        if token.type == "SHARE":
            token = token._replace(type="FILLER")
        out.append(token)
        index += 1
    return out


def _humidity(out: Tokens, tokens: Tokens, index: int) -> Tokens:
    """The word that a share is of: 'humidity 60 %', 'humedad del 60 %'."""
    of = int(type_at(out, len(out) - 1) == "OF")
    named = type_at(out, len(out) - 1 - of) == "UNKNOWN"
    broken = any(t.after_break for t in (*out[len(out) - of :], tokens[index]))
    return out[-1 - of :] if named and not broken else []


_SHARED = frozenset({"NUMBER", "FRACTION", "EVERY", "MULTIPLE", "VAGUE"})


def _of_label(tokens: Tokens, index: int, at: int) -> bool:
    """Whether a share is of a label rate that was told before: '2 g pro Liter, 25 % davon'."""
    behind = skip(tokens, at + 1, _SMALL_WORDS)
    of_water = type_at(tokens, behind) in ("WATER", "WATER_WORD") and not tokens[behind].after_break
    labelled = any(t.type in ("LABEL", "PER") for t in tokens[:index])
    return tokens[at].value == "of_it" and labelled and not of_water


def _share_size(tokens: Tokens, index: int) -> int:
    """How many tokens from here are a share of something that is no dose."""
    kind = tokens[index].type
    if kind not in _SHARED:
        return 0
    percent = type_at(tokens, index + 1) == "PERCENT"
    if kind in ("NUMBER", "FRACTION") and percent:
        before, after = type_at(tokens, index - 1), type_at(tokens, index + 2)
        if after in ("SHARE", "UNKNOWN") and not tokens[index + 2].after_break:
            return 0 if _of_label(tokens, index, index + 2) else 3
        of_plants = skip(tokens, index + 2, _SMALL_WORDS)  # '50 % of my phals'
        within = not any(t.after_break for t in tokens[index + 2 : of_plants + 1])
        if after == "OF" and within and type_at(tokens, of_plants) in PLANTS:
            return of_plants - index
        if before == "OF" and type_at(tokens, index - 2) == "UNKNOWN":
            return 0 if tokens[index].after_break or tokens[index - 1].after_break else 2
        return 2 if before == "UNKNOWN" and not tokens[index].after_break else 0
    if kind == "FRACTION" and _is_part_of_a_mix(tokens, index):
        return 1
    each = type_at(tokens, index - 1) == "VOLUME_UNIT" and not tokens[index].after_break
    together = index + 1 < len(tokens) and not tokens[index + 1].after_break  # 'für alle, viertel'
    if kind == "EVERY" and type_at(tokens, index + 1) == "FRACTION" and not each and together:
        return 0 if type_at(tokens, index + 2) in UNITS else 2
    if kind == "FRACTION" and type_at(tokens, index + 1) == "SHARE":
        return 0 if _of_label(tokens, index, index + 1) else 2
    if kind == "FRACTION" and "/" in tokens[index].value:
        measured = skip(tokens, index + 1, ("OF", "ARTICLE"))
        below = int(tokens[index].value.split("/")[1])
        odd = below > _FINEST or 1 <= fraction_value(tokens[index].value) < float("inf")
        return int(odd and type_at(tokens, measured) not in UNITS)
    if kind == "MULTIPLE" and type_at(tokens, index + 1) == "SHARE":
        return 0 if tokens[index + 1].after_break else 2  # 'dwukrotnie słabszy'
    if kind == "NUMBER" and (type_at(tokens, index + 1), type_at(tokens, index + 2)) == (
        "TIMES", "SHARE",
    ):  # fmt: skip
        return 0 if tokens[index + 2].after_break else 3  # '6 razy słabiej' is no six
    if kind == "MULTIPLE" and type_at(tokens, index + 1) == "NUMBER":
        return 0 if type_at(tokens, index + 2) in UNITS | {"TIMES"} else 2
    if kind == "VAGUE" and len(tokens[index].raws) == 1:
        plant = skip(tokens, index + 1, _SMALL_WORDS)
        near = plant < len(tokens) and not any(t.after_break for t in tokens[index + 1 : plant + 1])
        return int(near and type_at(tokens, plant) in PLANTS)
    return 0


def _is_part_of_a_mix(tokens: Tokens, index: int) -> bool:
    """Whether this is one of the parts of 'half bark, half perlite', 'half rain, half tap'."""

    def of_a_medium(at: int) -> bool:
        medium = skip(tokens, at + 1, ("OF", "ARTICLE"))
        near = type_at(tokens, medium) in ("MEDIUM", "WATER", "WATER_WORD", "OTHER_WATER")
        return near and not any(t.after_break for t in tokens[at + 1 : medium + 1])

    others = (i for i, t in enumerate(tokens) if t.type == "FRACTION" and i != index)
    return of_a_medium(index) and any(map(of_a_medium, others))


def portions(tokens: Tokens) -> Tokens:
    """'2 l each', 'two half litre bottles', 'half full': how much in all was not said."""
    return rewrite(tokens, _portion_at, _PORTIONS)


def _portion_at(tokens: Tokens, index: int) -> tuple[Tokens, int] | None:
    stretch = tokens[index : index + 3]
    kinds = tuple(t.type for t in stretch)
    if kinds in _APIECE_BEHIND and not stretch[2].after_break and stretch[2].value == "behind":
        return [join(stretch, "UNKNOWN", "per plant")], 3  # '100 ml na roślinę'
    if (tokens[index].type, tokens[index].value) == ("EVERY", "one_each"):
        amount = skip(tokens, index + 2, ("FILLER",))  # 'każdy storczyk dostaje 200 ml'
        counted = type_at(tokens, amount) in ("NUMBER", "FRACTION")
        near = counted and not any(t.after_break for t in tokens[index + 1 : amount + 1])
        volume = type_at(tokens, amount + 1) == "VOLUME_UNIT"
        if near and volume and type_at(tokens, index + 1) in PLANTS:
            return [join(tokens[index : amount + 2], "UNKNOWN", "per plant")], amount + 2 - index
    size = _portion_size(tokens, index)
    stretch = tokens[index : index + size]
    return ([join(stretch, "SEVERAL", "product_of_numbers")], size) if size else None


_PORTIONS = frozenset({"NUMBER", "FRACTION", "ARTICLE", "EVERY", "APIECE"})
_APIECE_BEHIND = (("NUMBER", "VOLUME_UNIT", "APIECE"), ("FRACTION", "VOLUME_UNIT", "APIECE"))


def _portion_size(tokens: Tokens, index: int) -> int:
    kind, second, third = (type_at(tokens, index + offset) for offset in (0, 1, 2))
    if kind == "APIECE" and second in ("NUMBER", "FRACTION") and third == "VOLUME_UNIT":
        water = {type_at(tokens, index + 4), type_at(tokens, index + 5)}
        rate = type_at(tokens, index + 3) in ("PER", "IN", "TO") and "VOLUME_UNIT" in water
        return 0 if rate or tokens[index + 1].after_break else 3  # 'po 2 l'
    if kind == "EVERY" and tokens[index].value == "portion" and third == "VOLUME_UNIT":
        return 3 if _is_portion(tokens, index) else 0
    if kind == "EVERY" and tokens[index].value == "portion" and second == "ARTICLE":
        half = third == "FRACTION" and type_at(tokens, index + 3) == "VOLUME_UNIT"
        return 4 if half else 0  # 'jeweils ein halber Liter'
    if kind == "NUMBER" and second == "FRACTION" and third == "VOLUME_UNIT":
        return 0 if tokens[index + 1].after_break else 3
    if kind == "NUMBER" and second == "VOLUME_UNIT" and third == "PLUS":
        summed = type_at(tokens, index + 3) == "NUMBER" and not tokens[index + 2].after_break
        other = type_at(tokens, index + 4) == "VOLUME_UNIT"
        rate = "PER" in (type_at(tokens, index - 1), type_at(tokens, index + 5))
        return 5 if summed and other and not rate else 0
    if kind == "FRACTION" and second == "MULTIPLE" and tokens[index + 1].value == "1":
        return 2
    if kind in ("NUMBER", "FRACTION", "ARTICLE"):
        unit = skip(tokens, index + 1, ("OF", "ARTICLE")) if kind == "FRACTION" else index + 1
        if type_at(tokens, unit) != "VOLUME_UNIT" or type_at(tokens, unit + 1) != "EVERY":
            return 0
        parted = any(t.after_break for t in tokens[index + 1 : unit + 2])
        return 0 if parted or _every_what(tokens, unit + 2) else unit + 2 - index
    return 0


def _every_what(tokens: Tokens, index: int) -> bool:
    """Whether 'every' is about what follows at once: 'every 2 l', 'every plant', 'each pot'."""
    at = skip(tokens, index, ("ARTICLE",))
    if at >= len(tokens) or tokens[index].after_break:
        return False
    if type_at(tokens, at) in PLANTS | {"VOLUME_UNIT", "TIME_UNIT", "GROWTH", "UNKNOWN"}:
        return True
    return type_at(tokens, at) in ("NUMBER", "FRACTION") and type_at(tokens, at + 1) in UNITS


def _is_portion(tokens: Tokens, index: int) -> bool:
    """'je 2 l', '4 Flaschen à 2 l'; but '5 ml je 2 l' and 'je 2 l 5 ml' are rates."""
    if type_at(tokens, index + 1) not in ("NUMBER", "FRACTION", "ARTICLE"):
        return False
    before = index - 1
    while type_at(tokens, before) in (*_SMALL_WORDS, "FORM", "IN") and before > index - 4:
        before -= 1
    if type_at(tokens, before) in QUANTITY_UNITS and not tokens[index].after_break:
        return False
    behind = skip(tokens, index + 3, (*_SMALL_WORDS, "WATER_WORD", "FORM"))
    rate = type_at(tokens, behind) in ("NUMBER", "FRACTION")
    return not (rate and type_at(tokens, behind + 1) in QUANTITY_UNITS)


def _filled_to(tokens: Tokens, index: int) -> int:
    """Where 'konewka 10 l, ale tylko do połowy' ends: so big a can, and not all of it."""
    if [type_at(tokens, index + i) for i in range(3)] != ["CONTAINER", "NUMBER", "VOLUME_UNIT"]:
        return 0
    part = skip(tokens, index + 3, ("FILLER", "INTO"))
    to = type_at(tokens, part - 1) == "INTO" and type_at(tokens, part) == "FRACTION"
    ends = part + 1 >= len(tokens) or tokens[part + 1].after_break
    return part + 1 - index if to and ends else 0


def others(tokens: Tokens) -> Tokens:
    """A bulb in a lamp, a rhythm of flushing, a person called Vanda."""
    out: Tokens = []
    for clause in clauses(tokens):
        kinds = [t.type for t in clause]
        lamp, task = "LAMP" in kinds, "OTHER_TASK" in kinds
        person = kinds.index("PERSON_VERB") if "PERSON_VERB" in kinds else -1
        for place, token in enumerate(clause):
            strange = (
                (lamp and token.type == "GROWTH" and token.value == "new_pseudobulbs")
                or (task and token.type == "REGIME")
                or (token.type == "GENUS" and place < person)
                or token.type == "OTHER_TASK"
            )
            if strange:
                token = token._replace(type="UNKNOWN")
            elif token.type in ("PERSON_VERB", "LAMP"):
                token = token._replace(type="FILLER")
            out.append(token)
    return out


def containers(tokens: Tokens) -> Tokens:
    """'half the can', 'the tank is full': a share of what stands there, no strength."""
    led = [t._replace(type="INTO") if t.value == "onto" else t for t in tokens]

    def container_at(tokens: Tokens, index: int) -> tuple[Tokens, int] | None:
        size = _container_size(led, index)
        if size:
            return [join(tokens[index : index + size], "UNKNOWN", "container")], size
        token = tokens[index]
        return ([token._replace(type="FILLER")], 1) if token.type == "CONTAINER" else None

    return rewrite(tokens, container_at, ("CONTAINER", "FRACTION"))


def _container_size(tokens: Tokens, index: int) -> int:
    between = ("FILLER", "ARTICLE", "OF", "MULTIPLE", "INTO")
    near = skip(tokens, index + 1, between)
    if near >= len(tokens) or any(t.after_break for t in tokens[index + 1 : near + 1]):
        ends = near > index + 1 and near <= len(tokens)
        near = next((i for i in range(index + 1, near) if tokens[i].after_break), near)
        full = ends and type_at(tokens, near - 1) == "MULTIPLE"
        return near - index if full and type_at(tokens, index) == "CONTAINER" else 0
    filled = _filled_to(tokens, index)
    if filled:
        return filled
    kind, other = type_at(tokens, index), type_at(tokens, near)
    if kind == "FRACTION" and other == "CONTAINER":
        return near + 1 - index
    behind = type_at(tokens, near + 1)
    ends = not behind or tokens[near + 1].after_break
    return near + 1 - index if kind == "CONTAINER" and other == "FRACTION" and ends else 0
