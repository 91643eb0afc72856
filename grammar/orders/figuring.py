"""Figures that are asked for and dose nothing: forms for `orders`.

Conversions of a meter's units and of oxides, what an amount of feed brings, whether so much
nitrogen is too much, the EC that plants bear, and pH.
"""

from __future__ import annotations

from grammar.lexicon import phrases_under, settings_of
from grammar.order import FeedSaid, MeterSaid, Order
from grammar.orders import asked, queried
from grammar.orders.facts import Facts
from grammar.orders.measured import SCALES, figure
from grammar.orders.waters import PURE
from grammar.words.scan import Token
from grammar.words.units import to_canonical

#: What a figure can be converted from and to.
_OF_A_METER = ("EC_UNIT", "CONCENTRATION_UNIT", "CF")
#: What is wanted of the records, whatever figure is named besides.
_OTHER_WISHES = (
    "add", "naming", "fed", "gave", "clear", "flush", "how_flush", "repot", "remind", "runoff",
    "history", "log", "undo", "choose", "lose",
)  # fmt: skip
_OF_SCALES = ("SCALE", "PPM_SCALE")
#: Small words between a figure, its unit and its scale.
_SMALL = frozenset({"FILLER", "IN", "TO", "OF", "ARTICLE", "SIZE_ENDING", "FOR"})
#: Symbols are shorter than the names of ions [letters].
_LONGEST_SYMBOL = 2
_PH = "ph"
#: More of anything nobody asks about.
_MOST = 1e6
#: Orders whose figures are the order's own.
VERBS = frozenset({"convert", "nitrogen_limit", "most_ec", "pour"})
#: Forms of nitrogen by the parts of a label and the ions of a report that name them.
_FORMS = {"n_nitrate": "NO3", "n_ammonium": "NH4", "n_urea": "N", "NO3": "NO3", "NO3_N": "N"}


def _numbers(facts: Facts) -> list[int]:
    """Where numbers stand among the tokens."""
    return [i for i, t in enumerate(facts.tokens) if t.type == "NUMBER"]


def _figure(token: Token) -> float | None:
    """The value of a number that can be one of these, None for the others."""
    value = figure(token.raws[0])
    return value if value is not None and value <= _MOST else None


def _doses(facts: Facts) -> bool:
    """Whether a feed, an amount of it or a can is said: more than a figure is meant."""
    kinds = ("ANALYSIS", "VOLUME_UNIT", "MASS_UNIT", "SPOON", "STRENGTH", "LABEL", "AIM")
    said = any(t.type in kinds for t in facts.tokens)
    return bool(said or facts.products or facts.target.named or facts.rest.genera)


# --- conversions -------------------------------------------------------------------------------


def convert(facts: Facts) -> Order | None:
    """'what is 1.4 mS on the 500 scale', '20 % P2O5 as P'; a bare '1.4 CF' is a reading."""
    if _doses(facts) or not _numbers(facts):
        return None
    found = _oxide(facts)
    return found if found is not None or facts.report[0] else _of_a_meter(facts)


def _oxide(facts: Facts) -> Order | None:
    """'what is 20% P2O5 as P', 'convert 35 ppm K2O to K', 'how much K2O is 10 % K'."""
    numbers = _numbers(facts)
    named = [t for t in facts.tokens if t.type in ("OXIDE", "ELEMENT")]
    kinds = {t.type for t in named}
    asks = queried.queries(facts) or facts.says_any("converts")
    if len(numbers) != 1 or kinds != {"OXIDE", "ELEMENT"} or not asks:
        return None
    value = _figure(facts.tokens[numbers[0]])
    behind = facts.tokens[numbers[0] + 1 :]
    of = next((t for t in behind if t.type in ("OXIDE", "ELEMENT")), None)
    to = next((t for t in named if of is not None and t.type != of.type), None)
    if value is None or of is None or to is None:
        return None
    percent = any(t.type == "PERCENT" for t in facts.tokens)
    unit = "%" if percent else "mg/l"
    return Order("convert", text=f"{of.value} {to.value}", value=value, unit=unit)


def _of_a_meter(facts: Facts) -> Order | None:
    """A reading in another unit; with none to turn it into, a reading."""
    tokens = _with_cf(facts)
    if any(t.type in ("ELEMENT", "OXIDE", "HARDNESS", "HARDNESS_UNIT", "ALKALINITY")
           for t in tokens):  # fmt: skip
        return None
    if any(m.type == "ION" and len(facts.raws[m.at].text) > _LONGEST_SYMBOL
           for m in facts.measured):  # fmt: skip
        return None  # '100 ppm nitrate'; 'na' is a small word in Polish
    scale, own, others, left = _parts(tokens)
    if own is None or left:
        return None
    value, unit = own
    to_scale = scale is not None and unit != "ppm"
    asks = queried.queries(facts) or facts.says_any("converts")
    by_meter = facts.says("METER", "meter", "ready", "should") or facts.has("fed", "runoff")
    said = MeterSaid(value=value, unit=unit, scale=scale)
    if others or (to_scale and not by_meter) or (asks and facts.says_any("converts")):
        watery = any(t.type in ("WATER", "WATER_WORD") for t in tokens)
        wanted = asks or not (by_meter or watery)
        return Order("convert", text="meter", meter=said) if wanted else None
    bare = (unit == "ppm" and scale is not None) or unit == "cf"
    watery = any(t.type in ("WATER", "WATER_WORD", "AIM") for t in tokens)
    if bare and not watery and not by_meter and not facts.has("make_it"):
        return Order("meter", facts.target, meter=said)
    return None


def _with_cf(facts: Facts) -> list[Token]:
    """The tokens without small words, CF among the units; it is one of meters only."""
    places = {facts.raws[m.at].start for m in facts.measured if m.value == "cf"}
    return [
        t._replace(type="CF", value="cf") if t.raws[0].start in places else t
        for t in facts.tokens
        if t.type not in _SMALL or t.raws[0].start in places
    ]


def _parts(
    tokens: list[Token],
) -> tuple[int | None, tuple[float, str] | None, list[str], list[float]]:
    """The scale, the figure with its unit, further units, and figures of something else."""
    scale: int | None = None
    own: tuple[float, str] | None = None
    others: list[str] = []
    left: list[float] = []
    used: set[int] = set()
    for at, token in enumerate(tokens):
        if token.type in _OF_SCALES and (named := figure(token.raws[0])) in SCALES:
            scale = SCALES[named or 0]  # '500er Skala' is one word
        value = _figure(token) if token.type == "NUMBER" else None
        if token.type == "NUMBER" and value is None:
            left.append(0.0)
        if value is None:
            continue
        behind = tokens[at + 1].type if at + 1 < len(tokens) else ""
        two = tokens[at + 2].type if at + 2 < len(tokens) else ""
        before = tokens[at - 1].type if at else ""
        scaled = behind in _OF_SCALES or before in _OF_SCALES
        scaled = scaled or (behind == "CONCENTRATION_UNIT" and two in _OF_SCALES)
        scaled = scaled or (before == "CONCENTRATION_UNIT" and at - 1 not in used)
        if value in SCALES and scaled and scale is None:
            scale = SCALES[value]
            used |= {at - 1, at + 1}
        elif behind in _OF_A_METER and own is None:
            unit = tokens[at + 1].value
            own = value, "ppm" if behind == "CONCENTRATION_UNIT" else unit
            used.add(at + 1)
        elif "EC" in (before, behind) and own is None:  # '0.8 EC'
            own = value, "ms_cm"
            used |= {at - 1, at + 1}
        elif before == "CF" and own is None:
            own = value, "cf"
            used.add(at - 1)
        else:
            left.append(value)
    for at, token in enumerate(tokens):
        if token.type in _OF_A_METER and at not in used:
            others.append(token.value)
    if own is not None and own[1] == "ppm" and any(t.type == "EC" for t in tokens):
        others.append("ec")
    return scale, own, others, left


def which_scale(facts: Facts) -> Order | None:
    """'ppm 500 or 700, how do I know which', 'is my meter 500 or 700 scale'."""
    numbers = [figure(facts.tokens[i].raws[0]) for i in _numbers(facts)]
    scales = {SCALES[n] for n in numbers if n in SCALES}
    ppm = any(t.type in ("CONCENTRATION_UNIT", "SCALE", "PPM_SCALE") for t in facts.tokens)
    ppm = ppm or facts.says("METER", "scale", "meter")
    if len(scales) < 2 or len(numbers) != len(scales) or not ppm or _doses(facts):
        return None
    return Order("tell", text="ppm_scale")


# --- mixing ready feeds ------------------------------------------------------------------------


def pour(facts: Facts) -> Order | None:
    """'dilute 5 l of EC 1.8 to 0.9 with RO', '10 l at 1 mS and 5 l at 0.4 mS'."""
    tokens = facts.tokens
    feeds = any(t.type in ("ANALYSIS", "MASS_UNIT", "SPOON", "LABEL", "STRENGTH") for t in tokens)
    if feeds or facts.products or facts.rest.genera or facts.has(*_OTHER_WISHES):
        return None
    litres: list[float] = []
    ecs: list[float] = []
    aimed = False
    for at, token in enumerate(tokens):
        if token.type != "NUMBER":
            continue
        value = _figure(token)
        before = tokens[at - 1].type if at else ""
        behind = tokens[at + 1] if at + 1 < len(tokens) else None
        kind = behind.type if behind is not None else ""
        if value is None:
            return None
        if kind == "VOLUME_UNIT":
            found = facts.understand([*token.raws, *tokens[at + 1].raws]).volume_l
            litres += [] if found is None or found <= 0 else [found]
        elif kind in ("EC_UNIT", "EC") or before == "EC" or (ecs and before in ("TO", "IN")):
            unit = behind.value if behind is not None and kind == "EC_UNIT" else "ms_cm"
            aimed = aimed or (bool(ecs) and before in ("TO", "IN", "AIM"))
            ecs.append(to_canonical(value, unit))
        else:
            return None
    kinds = [t.value for t in tokens if t.type in ("WATER", "WATER_WORD")]
    if len(ecs) != 2 or not 1 <= len(litres) <= 2 or (kinds and kinds[0] not in PURE):
        return None
    if len(litres) == 2 and not kinds and not aimed:
        return Order("pour", poured=tuple(zip(litres, ecs, strict=True)))
    thins = facts.says("WATER_TALK", "mixes") or bool(kinds)
    if len(litres) == 1 and aimed and thins and 0 < ecs[1] < ecs[0]:
        return Order("pour", poured=((litres[0], ecs[0]),), value=ecs[1], text=(kinds or [""])[0])
    return None


# --- salts in one bottle -----------------------------------------------------------------------

#: Salts by what a setting of the language calls them, with what their labels say [% of mass]:
#: epsom salt is MgSO4 7 H2O, MKP KH2PO4 (IUPAC weights); calcium nitrate as it is sold.
_SALTS = {
    "salt_epsom": ((0.0, 0.0, 0.0), {"Mg": 9.86, "S": 13.01}),
    "salt_calcium_nitrate": ((15.5, 0.0, 0.0), {"Ca": 19.0}),
    "salt_mkp": ((0.0, 52.0, 34.0), {}),
}


def salts_together(facts: Facts) -> Order | None:
    """'can I put magnesium sulfate in stock A with calcium nitrate', 'can I mix epsom with cal'."""
    asks = queried.queries(facts) or facts.has("share_bottle", "may")
    figures = any(raw.kind in ("number", "analysis") for raw in facts.raws)
    mixes = facts.has("share_bottle", "stock", "blend", "may") or facts.says("WATER_TALK", "mixes")
    if not (asks and mixes) or figures or facts.has("fed", "naming"):
        return None
    language = facts.words.lexicon.language
    feeds = []
    for key, (analysis, extras) in _SALTS.items():
        said = (
            facts.stands_at(i, phrase) and i not in facts.named
            for phrase in phrases_under(language, key)
            for i in range(len(facts.raws))
        )
        if any(said):
            name = str(settings_of(language)[key][0])
            feeds.append(FeedSaid(analysis, dict(extras), "powder", name))
    if not feeds or len(feeds) + len(facts.products) < 2:
        return None
    return Order("together", products=facts.products, feeds=tuple(feeds))


# --- what an amount brings ----------------------------------------------------------------------


def brings(facts: Facts) -> Order | None:
    """'how much ppm N is 1 g/l of grey', '1.5 g in 2 l of 13-3-15, what is the ppm'."""
    if facts.has("judge", "price", "cheaper", "stock", "default", "make_it", "naming", "compare"):
        return None
    said = asked.amount_said(facts)
    if said is None or said.amount is None or said.volume_l is None or not _wants_figures(facts):
        return None
    asks = queried.queries(facts) or facts.has("dose") or facts.says_any("converts")
    if not asks or facts.has("fed", "clear", "flush", "plan", "undo"):
        return None
    return Order(
        "brings", target=facts.target, products=facts.products, amount=said.amount, unit=said.unit
    )


def _wants_figures(facts: Facts) -> bool:
    """Whether ppm, an element or EC is named without a figure of its own."""
    tokens = facts.tokens
    for at, token in enumerate(tokens):
        before = tokens[at - 1].type if at else ""
        two = tokens[at - 2].type if at > 1 else ""
        if token.type == "CONCENTRATION_UNIT" and before != "NUMBER":
            return True
        if token.type in ("ELEMENT", "NPK") and "NUMBER" not in (before, two):
            return True
        behind = tokens[at + 1].type if at + 1 < len(tokens) else ""
        if token.type == "EC" and "NUMBER" not in (before, behind):
            return True
    return False


# --- limits ------------------------------------------------------------------------------------


def of_nitrogen(facts: Facts) -> Order | None:
    """'is 100 ppm ammonium too much', 'is 150 ppm N too strong'."""
    numbers = _numbers(facts)
    judged = facts.has("judge") or any(t.type == "JUDGED" for t in facts.tokens)
    asks = judged or (queried.queries(facts) and facts.has("may", "harm"))
    others = facts.products or any(
        t.type in ("ANALYSIS", "VOLUME_UNIT", "MASS_UNIT") for t in facts.tokens
    )
    if len(numbers) != 1 or others or not asks:
        return None
    ppm = any(t.type == "CONCENTRATION_UNIT" for t in facts.tokens)
    parts = [m.value for m in facts.found if m.type == "LABEL_PART" and m.value in _FORMS]
    parts += [m.value for m in facts.measured if m.type == "ION" and m.value in _FORMS]
    element = any((t.type, t.value) == ("ELEMENT", "N") for t in facts.tokens)
    value = _figure(facts.tokens[numbers[0]])
    if not ppm or value is None or value <= 0 or not (parts or element):
        return None
    form = _FORMS[parts[0]] if parts else "N"
    ammonium = "n_ammonium" in parts
    text = ("NH4_N" if ammonium else "N") if element or "NO3_N" in parts else form
    return Order("nitrogen_limit", target=facts.target, text=text, value=value)


def most_ec(facts: Facts) -> Order | None:
    """'what EC should I aim for with phals', 'what is the max EC for masdevallia'."""
    ec = any(t.type == "EC" for t in facts.tokens)
    figures = any(raw.kind in ("number", "analysis") for raw in facts.raws)
    watery = any(t.type in ("WATER", "WATER_WORD", "POT") for t in facts.tokens)
    if not ec or figures or watery or facts.products or facts.has("salts", *_OTHER_WISHES):
        return None
    plants = (
        facts.rest.genera or facts.target.named or any(t.type == "PLANTS" for t in facts.tokens)
    )
    bounded = any(t.type == "AIM" for t in facts.tokens)
    bounded = bounded or facts.says("WATER_TALK", "limit") or facts.says("METER", "should")
    asks = queried.queries(facts) or facts.says("WATER_TALK", "limit")
    return Order("most_ec", target=facts.target) if asks and (plants or bounded) else None


def acid(facts: Facts) -> Order | None:
    """pH and what changes it: 'how much pH down for 10 l', 'what pH do orchids want'."""
    rest = facts.rest
    feeds = rest.analysis or facts.products or rest.label_rate or facts.has(*_OTHER_WISHES)
    if any(t.type in ("EC", "EC_UNIT") for t in facts.tokens):
        return None  # 'pH 5.8 and EC 1.1 in my can'
    said = rest.water
    measured = said is not None and (said.hardness_mg_l_caco3 or said.ec_ms_cm)
    if feeds or measured or len(facts.report[0]) > 1:
        return None
    named = any(raw.text == _PH for raw in facts.raws) or facts.says_any("acids")
    return Order("tell", text="ph") if named else None
