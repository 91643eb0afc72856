"""What is left when the other rules have looked: negations, loose figures, glue."""

from __future__ import annotations

from grammar.request.settling.near import is_volume
from grammar.request.settling.numbers import SLOTS
from grammar.words.scan import Token
from grammar.words.tokens import UNITS, Tokens, rewrite
from grammar.words.tokens import join as _join
from grammar.words.tokens import type_at as _type

#: Words that only hold a sentence together once the rules have looked at them.
_GLUE = frozenset({
    "FILLER", "ASIDE", "ARTICLE", "AND", "PLUS", "OF", "IN", "TO", "OR", "FOR", "EVERY",
    "BETWEEN", "STRENGTH", "POINT", "TIMES", "NPK", "MIX", "MINUS", "PLANTS", "GROWING_VERB",
    "LOOSE_MEASURE", "LABEL", "PER", "NOT", "POT", "FULL", "SLOWLY", "APIECE",
})  # fmt: skip


def negations(tokens: Tokens) -> Tokens:
    """'no sphagnum', 'not in winter': what it is not, is not what it is."""
    return rewrite(
        _denied_behind(rewrite(tokens, _no_growth_at, ("NOT", "FILLER"))), _negation_at, ("NOT",)
    )


_SMALL = frozenset({"FILLER", "ARTICLE", "ASIDE", "GROWING_VERB"})
#: Behind a denied word for growing these say what is not done, and not that it does not grow.
_GROWN_THERE = frozenset({"MEDIUM", "GENUS", "PLANTS", "COUNT"})


def _no_growth_at(tokens: Tokens, index: int) -> tuple[Tokens, int] | None:
    """'hasn't grown in months', 'no growth', 'not growing at the moment'."""
    first = tokens[index]
    if first.type == "NOT":
        at = index + 1
        while at - index <= 3 and _type(tokens, at) in _SMALL:
            if tokens[at].after_break or _grows(tokens, at):
                break
            if tokens[at].value in ("feeding", "feeding_own"):
                return None  # 'no feed since growth began'
            at += 1
    elif (first.type, first.value) == ("FILLER", "grown"):
        at = index + 1
        while at - index <= 3 and _type(tokens, at) in ("FILLER", "ARTICLE"):
            at += 1
        behind = _type(tokens, at) == "NOT" and tokens[at].value in ("behind", "last")
        if not behind or any(t.after_break for t in tokens[index + 1 : at + 1]):
            return None
        return [_join(tokens[index : at + 1], "NEGATED", "GROWTH")], at + 1 - index
    else:
        return None
    if not _grows(tokens, at) or tokens[at].after_break:
        return None
    there = at + 1
    while _type(tokens, there) in ("FILLER", "ARTICLE", "IN") and not tokens[there].after_break:
        there += 1
    if _type(tokens, there) in _GROWN_THERE and not tokens[there].after_break:
        return None  # 'not growing in bark', 'never grown orchids'
    return [_join(tokens[index : at + 1], "NEGATED", "GROWTH")], at + 1 - index


def _grows(tokens: Tokens, index: int) -> bool:
    """Whether a word for growing stands here that tells nothing by itself."""
    known = _type(tokens, index) != "" and tokens[index][:2]
    return known in (("FILLER", "grown"), ("ASIDE", "growing"))


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
        if _type(out, ahead) in SLOTS and not out[ahead].after_break:
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
        if tokens[at].type in SLOTS - {"GENUS"} and not lasted:
            return at
    return None


def nor(tokens: Tokens) -> Tokens:
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
    if _type(tokens, at) not in SLOTS or tokens[at].after_break:
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


def loose_rates(tokens: Tokens) -> Tokens:
    """'2 caps per 5 litres' is a rate of a size unknown, and its litres are not the can."""
    labelled = any(t.type == "LABEL" for t in tokens)

    def rate_at(tokens: Tokens, index: int) -> tuple[Tokens, int] | None:
        end = _loose_rate_end(tokens, index, labelled=labelled)
        if end is None:
            return None
        told = [t for t in tokens[index:end] if t.type in ("FORM", "ANALYSIS")]
        rate = [t for t in tokens[index:end] if t.type not in ("FORM", "ANALYSIS")]
        return [*told, _join(rate, "SEVERAL", "loose_rate")], end - index

    return rewrite(tokens, rate_at, ("NUMBER", "FRACTION", "ARTICLE", "LOOSE_MEASURE"))


def _loose_rate_end(tokens: Tokens, index: int, *, labelled: bool) -> int | None:
    loose = index + (tokens[index].type != "LOOSE_MEASURE")  # 'miarka na litr' is one
    while _type(tokens, loose) in ("OF", "ARTICLE"):
        loose += 1
    if _type(tokens, loose) != "LOOSE_MEASURE" or tokens[loose].value == "vessel":
        return None
    per = loose + 1
    while _type(tokens, per) in ("FORM", "OF", "FILLER", "ANALYSIS") and per - loose <= _FEW:
        per += 1
    volume = per + 1
    while _type(tokens, volume) in ("ARTICLE", "EVERY"):
        volume += 1
    bare = _type(tokens, volume) == "VOLUME_UNIT"
    counted = _type(tokens, volume) in ("NUMBER", "FRACTION", "AMOUNT")
    measured = counted and _type(tokens, volume + 1) == "VOLUME_UNIT"
    if not (bare or measured) or any(t.after_break for t in tokens[index + 1 : volume + 1]):
        return None
    link, value = _type(tokens, per), tokens[per].value
    spoken = link in ("PER", "TO", "EVERY") or value == "onto" or (link == "ARTICLE" and bare)
    if not spoken and not (labelled and link in ("IN", "FOR")):
        return None
    return volume + 1 if bare else volume + 2


#: At most so many words stand between a measure and what it is dissolved in: 'of the feed'.
_FEW = 4


def loose(tokens: Tokens) -> Tokens:
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
            rate = _is_rate(tokens, index)
            counted = out and out[-1].type in ("NUMBER", "FRACTION")
            one = rate or token.value == "loose"  # 'a capful of the powder in 2 l'
            if counted or (one and out and out[-1].type == "ARTICLE"):
                number = out.pop()
                out.append(_join([number, token], "UNKNOWN", "loose"))
                continue
            if rate:  # 'miarka na litr': without a number it is one
                out.append(token._replace(type="UNKNOWN"))
                continue
        if token.type in ("$", "€", "£") or (
            token.type == "UNKNOWN" and token.value in ("$", "€", "£")
        ):
            continue
        out.append(token)
    return out


def _is_rate(tokens: Tokens, index: int) -> bool:
    """Whether a loose measure goes into so much water: 'a capful per litre', 'scoop in 5 l'."""
    if _type(tokens, index + 1) == "PER":
        return True
    into = _type(tokens, index + 1) in ("IN", "TO") and not tokens[index + 1].after_break
    return into and is_volume(tokens, index + 2)


def rhythms(tokens: Tokens) -> Tokens:
    """'every 9 days', 'once or twice a month': rhythms, if none that the rules know."""
    tokens = rewrite(tokens, _open_rhythm_at, _RHYTHMS)
    return rewrite(tokens, _rhythm_at, ("EVERY",))


_RHYTHMS = ("FILLER", "NUMBER", "ARTICLE", "EVERY", "REGIME")


def _open_rhythm_at(tokens: Tokens, index: int) -> tuple[Tokens, int] | None:
    """'once or twice a month', 'every week or two', 'every 2-3 weeks': between two rhythms."""
    first = tokens[index]
    at = index + 1
    if first.type == "EVERY":
        ranged = _type(tokens, at) == "RANGE" and tokens[at].value == "TIME_UNIT"
        end = at + 1 if ranged else 0
    elif first.type == "REGIME":
        end = at + 2 if (_type(tokens, at), _type(tokens, at + 1)) == ("OR", "NUMBER") else 0
        if end and end < len(tokens) and _type(tokens, end) in UNITS | {"POT"}:
            return None  # 'weekly or 2 l'
    else:
        either = ("OR",) if first.type == "FILLER" else ("OR", "TO", "MINUS")  # 'go to weekly'
        while _type(tokens, at) in either and at - index < _FEW:
            at += 1
        end = at + 1 if at > index + 1 and _type(tokens, at) == "REGIME" else 0
    if not end or any(t.after_break for t in tokens[index + 1 : end]):
        return None
    return [_join(tokens[index:end], "OTHER_REGIME", "other")], end - index


def _rhythm_at(tokens: Tokens, index: int) -> tuple[Tokens, int] | None:
    every, count, unit = (_type(tokens, index + offset) for offset in range(3))
    if every != "EVERY" or count not in ("NUMBER", "AMOUNT") or unit != "TIME_UNIT":
        return None
    return [_join(tokens[index : index + 3], "OTHER_REGIME", "other")], 3


def plain(tokens: Tokens) -> Tokens:
    """Drop the words that have done their work."""
    return [token for token in tokens if token.type not in _GLUE or _still_needed(token)]


def _still_needed(token: Token) -> bool:
    return token.type in ("PER", "POT") and token.value in ("per", "pot", "before")


_MEASURED: dict[str, tuple[str, ...]] = {
    "ELEMENT": ("CONCENTRATION_UNIT",),
    "HARDNESS": ("HARDNESS_UNIT", "CONCENTRATION_UNIT"),
    "ALKALINITY": ("HARDNESS_UNIT", "ALKALINITY_UNIT", "CONCENTRATION_UNIT"),
    "EC": ("EC_UNIT",),
    "SCALE": ("MASS_UNIT",),
}


def measured_last(tokens: Tokens) -> Tokens:
    """Put what is measured behind its number: 'hardness 12 dH' to '12 dH hardness'."""
    out: Tokens = []
    index = 0
    while index < len(tokens):
        token = tokens[index]
        units = _MEASURED.get(token.type)
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
