"""What is asked of readings and waters: forms for `orders`."""

from __future__ import annotations

from grammar.lexicon import phrases_under
from grammar.order import MixSaid, Order
from grammar.orders import queried
from grammar.orders.facts import Facts
from grammar.orders.measured import figure, found_in
from grammar.words.numerals import fraction_value
from grammar.words.scan import Token
from grammar.words.units import to_canonical

#: Waters without salts: mixed in, they thin another.
PURE = frozenset({"rain", "reverse_osmosis", "distilled"})
#: Symbols are shorter than the names of ions [letters]; 'na' is a small word in Polish.
_LONGEST_SYMBOL = 2
#: A report lists at least so many ions.
_A_REPORT = 2
_WATERS = frozenset({"WATER", "WATER_WORD", "OTHER_WATER"})
_FEED_SLOTS = ("analysis", "label_rate", "strength", "target_n_mg_l", "form")


def report(facts: Facts) -> Order | None:
    """A utility's report to put on record: 'Ca 80, Mg 12, HCO3 240 mg/l'."""
    ions, _, other = facts.report
    least = 1 if _of_own_water(facts) else _A_REPORT
    if len(ions) < least or facts.products or facts.target.named:
        return None
    rest = facts.report_rest
    if any(getattr(rest, slot) for slot in _FEED_SLOTS) or facts.rest.analysis:
        return None
    if facts.rest.volume_l is not None and rest.volume_l is not None:
        return None
    return Order("water", name=facts.new_name[0] or None, ions=ions, report_unit=other)


def _of_own_water(facts: Facts) -> bool:
    """Whether one ion alone tells of a water: 'my tap has HCO3 4 meq/l'."""
    chemists = facts.says("REPORT_UNIT", "mmol_l", "meq_l")
    own = facts.has("my") and any(t.type in _WATERS for t in facts.tokens)
    asks = "?" in facts.folded.text or facts.says("WATER_TALK", "mixes", "lacks", "suits")
    return (chemists or own) and not asks


def meter(facts: Facts) -> Order | None:
    """What a meter shows of the ready feed: 'my meter says 0.9', 'the mix reads 450 ppm'."""
    said, taken = facts.meter
    judged = facts.says("METER", "strong") and bool(said.unit) and not _of_an_ion(facts, said.unit)
    if not (judged or facts.says("METER", "meter", "ready", "mixed")) or facts.has("runoff"):
        return None
    wanted = any(t.type == "AIM" for t in facts.tokens) or facts.says("METER", "should")
    mixed = facts.says("METER", "mixed") and facts.rest.volume_l is None  # else it is aimed at
    done = facts.has("gave", "clear", "flush", "make_it") or (facts.has("fed") and not mixed)
    if wanted or done:
        return None
    by_meter, ready = facts.says("METER", "meter"), mixed or facts.says("METER", "ready")
    as_ec = said.unit not in ("", "ppm") or any(t.type == "EC" for t in facts.tokens)
    measured = bool(said.unit) or as_ec
    shown = facts.says("METER", "shows") or judged or by_meter or mixed
    shown = shown or (facts.says("METER", "is") and as_ec)
    read_off = ready and _read_off(facts, taken)
    if said.value is None or not shown or not (by_meter or measured or read_off):
        return None
    rest = facts.meter_rest
    if _of_water(facts, taken) and not ready and not (rest.water and rest.water.ec_ms_cm):
        return None
    if rest.analysis and not by_meter and (facts.has("dose") or not facts.says("METER", "shows")):
        return None
    rate = rest.label_rate
    labelled = any(t.type == "LABEL" for t in facts.tokens)
    made = rate.per_litre if rate is not None and rate.unit == "g" and not labelled else None
    return Order("meter", facts.target, products=facts.products, meter=said, value=made)


def _of_an_ion(facts: Facts, unit: str) -> bool:
    """Whether ppm are those of one ion: '30 ppm sodium', and not what a meter shows."""
    ions = (m for m in facts.measured if m.type == "ION")
    return unit == "ppm" and any(len(facts.raws[m.at].text) > _LONGEST_SYMBOL for m in ions)


def _read_off(facts: Facts, taken: frozenset[int]) -> bool:
    """Whether a figure stands right behind a word for showing: 'the can reads 2.5'."""
    ends = {m.end for m in facts.measured if m.type == "METER" and m.value == "shows"}
    return not ends.isdisjoint(taken)


def _of_water(facts: Facts, taken: frozenset[int]) -> bool:
    """Whether the figure is that of a water: one is named before it, or right behind it."""
    start = min(facts.raws[i].start for i in taken)
    named = [t for t in facts.tokens if t.start < start]
    for token in [t for t in facts.tokens if t.start > start][:_BEFORE]:
        if token.after_break:
            break
        named.append(token)
    return any(t.type in _WATERS for t in named)


def suits(facts: Facts) -> Order | None:
    """Whether a water suits plants: 'is my water good for masdevallias'."""
    said = facts.rest.water
    figures = said is not None and (said.hardness_mg_l_caco3 or said.ec_ms_cm) is not None
    wondered = figures and (queried.queries(facts) or queried.rates_bare(facts))
    if not (facts.says("WATER_TALK", "suits", "rates") or wondered):
        return None
    if not any(t.type in _WATERS or t.type in ("HARDNESS", "HARDNESS_UNIT") for t in facts.tokens):
        return None
    asked = "?" in facts.folded.text or facts.begins("WATER_TALK", "asks", "rates") or wondered
    rest = facts.rest
    feeding = any(getattr(rest, slot) for slot in _FEED_SLOTS) or rest.volume_l is not None
    if not asked or feeding or facts.products or facts.has("dose", "gave", "fed", "choose"):
        return None
    return Order("water_suits", target=facts.target)


def mix(facts: Facts) -> Order | None:
    """Two waters to mix for a figure: 'mix tap and RO to 6 dH'."""
    if not facts.says("WATER_TALK", "mixes") or facts.products or facts.target.named:
        return None
    if any(getattr(facts.rest, slot) for slot in ("analysis", "label_rate", "strength", "form")):
        return None
    kinds = [t.value for t in facts.tokens if t.type == "WATER"]
    if any(t.type == "WATER_WORD" for t in facts.tokens):
        kinds.append("")
    kinds = list(dict.fromkeys(kinds))
    pure = [k for k in kinds if k in PURE]
    hard = [k for k in kinds if k not in PURE]
    if len(hard) > 1 and "" in hard:
        hard.remove("")
    asked = facts.begins("WATER_TALK", "mixes") or "?" in facts.folded.text
    if not kinds or not (asked or (pure and hard)) or len(hard) > 2:
        return None
    figures = _figures(facts)
    aimed = [f for f in figures if f[3]]
    if not aimed or (len(kinds) == 1 and kinds[0] in PURE and len(figures) == 1):
        return None
    target = aimed[-1]
    own = {q: value for q, value, _, _ in figures if (q, value) != target[:2] and q}
    limit = bool(figures) and _aimed(facts, target[2], "limit")
    ordered = (*(hard or ([] if len(pure) > 1 else [""])), *pure)
    return Order("water_mix", mix=MixSaid(ordered, target[0], target[1], own, limit))


def by_parts(facts: Facts) -> Order | None:
    """Two waters by their shares: '3 parts rain and 1 part tap', 'half tap, half RO'."""
    rest = facts.rest
    if rest.volume_l is not None or rest.analysis or facts.products or facts.target.named:
        return None
    mix = _parted(facts)
    return Order("water_parts", mix=mix) if mix is not None else None


def with_part(facts: Facts) -> tuple[MixSaid, frozenset[int]] | None:
    """Half of the can another water, 'and with half rain water': the mix, and the share's words."""
    tokens = facts.tokens
    at = [i for i, t in enumerate(tokens) if t.type == "WATER"]
    joined = [i for i in at if i and not tokens[i].after_break]  # not 'a litre and a half, rain'
    halved = [i for i in joined if _part(tokens[i - 1], False) == _HALF]
    kinds = tuple(tokens[i].value for i in at)
    if len(at) == 2 and halved and len(set(kinds)) == 2 and len({*kinds} & PURE) == 1:
        return MixSaid(kinds, "", _HALF), _words_of(
            facts, [tokens[i] for i in {*at, *(i - 1 for i in halved)}]
        )
    if len(at) != 1 or kinds[0] not in PURE:
        return None
    kind = kinds[0]
    equal = _equal_parts(facts)
    if equal:
        return MixSaid((kind, ""), "", _HALF), equal | _words_of(facts, [tokens[at[0]]])
    before = at[0] - 1
    while before >= 0 and tokens[before].type in ("OF", "ARTICLE"):
        before -= 1
    percent = before > 0 and tokens[before].type == "PERCENT"
    first = before - percent
    if first < 0 or any(t.after_break for t in tokens[first + 1 : at[0] + 1]):
        return None
    share = _part(tokens[first], percent)
    if share is None or not _LEAST_PART <= share < 1:
        return None
    return MixSaid((kind, ""), "", share), _words_of(facts, tokens[first : at[0] + 1])


_HALF = 0.5


def _equal_parts(facts: Facts) -> frozenset[int]:
    """The words of 'half and half'."""
    for phrase in phrases_under(facts.words.lexicon.language, "half_and_half"):
        for index in range(len(facts.raws)):
            if facts.stands_at(index, phrase):
                return frozenset(range(index, index + len(phrase)))
    return frozenset()


#: Below this a fraction beside a water is a strength: '1/8 rain water' [1]; ours.
_LEAST_PART = 0.25


def _part(token: Token, percent: bool) -> float | None:
    if percent:
        value = _plain(token.value) if token.type == "NUMBER" else None
        return None if value is None else value / 100
    return fraction_value(token.value) if token.type == "FRACTION" else None


def _words_of(facts: Facts, tokens: list[Token]) -> frozenset[int]:
    begins = {raw.start for token in tokens for raw in token.raws}
    return frozenset(i for i, raw in enumerate(facts.raws) if raw.start in begins)


def _parted(facts: Facts) -> MixSaid | None:
    """Two waters, one of them pure, with the share of each."""
    at = [(i, t.value) for i, t in enumerate(facts.tokens) if t.type == "WATER"]
    if len(at) != 2 or at[0][1] == at[1][1] or not {v for _, v in at} & PURE:
        return None
    (first, kind), (second, other) = at
    shares = _shares(facts, range(first)), _shares(facts, range(first + 1, second))
    behind = _shares(facts, range(second + 1, len(facts.tokens)))
    halves = [*shares[0], *shares[1], *behind] == [0.5, 0.5]
    parted = any((t.type, t.value) == ("FILLER", "part") for t in facts.tokens)
    if halves:
        share = 0.5
    elif [len(s) for s in shares] == [1, 1] and not behind:
        total = shares[0][0] + shares[1][0]
        if not (parted or abs(total - 1.0) < _ROUNDED):
            return None
        share = shares[0][0] / total
    else:
        return None
    return MixSaid((kind, other), "", share)


#: Shares that make up the whole, after rounding: 'a third and two thirds' [1].
_ROUNDED = 0.02


def _shares(facts: Facts, span: range) -> list[float]:
    """The numbers and fractions here; 'one part' counts where no other number stands."""
    found: list[float] = []
    for token in facts.tokens[span.start : span.stop]:
        if token.type == "FRACTION":
            found.append(fraction_value(token.value))
        elif token.type == "NUMBER" and (value := _plain(token.value)) is not None:
            found.append(value)
    ones = [t for t in facts.tokens[span.start : span.stop] if t.type == "ARTICLE"]
    one = any(t.value == "one" for t in ones)
    return found or ([1.0] if one else [])


def _plain(text: str) -> float | None:
    try:
        value = float(text.replace(",", "."))
    except ValueError:
        return None
    return value if 0 < value < _MOST_PARTS else None


#: Waters are mixed in no more parts.
_MOST_PARTS = 100.0


def _figures(facts: Facts) -> list[tuple[str, float, int, bool]]:
    """Quantity, value and place of each figure of a water, and whether it is aimed at."""
    sodium = any(m.type == "ION" and m.value == "Na" for m in facts.measured)
    tokens, out = facts.tokens, []
    for at, token in enumerate(tokens):
        value = figure(token.raws[0]) if token.type == "NUMBER" else None
        if value is None:
            continue
        unit = tokens[at + 1] if at + 1 < len(tokens) else None
        before = tokens[at - 1] if at else None
        kind = unit.type if unit is not None else ""
        near = {t.type for t in tokens[max(at - 2, 0) : at + 4]}
        quantity = None
        if kind == "HARDNESS_UNIT" and unit is not None:
            value = to_canonical(value, unit.value)
            quantity = "alkalinity_mg_l_caco3" if "ALKALINITY" in near else "hardness_mg_l_caco3"
        elif kind == "ALKALINITY_UNIT" and unit is not None:
            value = to_canonical(value, unit.value)
            quantity = "alkalinity_mg_l_caco3"
        elif kind == "EC_UNIT" and unit is not None:
            value, quantity = to_canonical(value, unit.value), "ec_ms_cm"
        elif kind == "CONCENTRATION_UNIT":
            quantity = "hardness_mg_l_caco3" if "HARDNESS" in near else "na_mg_l" if sodium else ""
        elif "EC" in (kind, before.type if before is not None else ""):
            quantity = "ec_ms_cm"
        if quantity is not None:
            out.append((quantity, value, at, _aimed(facts, at)))
    return out


#: So far before a figure stands what says that it is aimed at [words].
_BEFORE = 3


def _aimed(facts: Facts, at: int, *values: str) -> bool:
    """Whether a figure is what shall be reached: 'to 6 dH', 'under 20', 'get EC 0.3'."""
    place = facts.raws.index(facts.tokens[at].raws[0])
    return any(
        m.type == "WATER_TALK" and m.value in (values or ("towards", "limit"))
        and 0 <= place - m.end < _BEFORE
        for m in facts.measured
    )  # fmt: skip


def supplement(facts: Facts) -> Order | None:
    """Calcium and magnesium that are missing: 'do I lack calcium', 'how much cal mag for 5 l'."""
    rest = facts.rest
    by_name = any(
        m.type == "WATER_TALK" and m.value == "supplement" for m in found_in(facts.words)
    )  # also where it is the name of a product
    if by_name and facts.has("share_bottle") and len(facts.products) < 2:
        return Order("tell", text="bottle")  # 'can I mix calmag and the feed in one bottle'
    other = facts.products and not (by_name and facts.named)
    if rest.analysis or rest.label_rate or other or facts.has("history"):
        return None
    if facts.starts("add") and "?" not in facts.folded.text:
        return None
    if facts.products and facts.has("inside"):  # 'was fehlt im Calciumdünger'
        return None
    asked = "?" in facts.folded.text or facts.has("dose")
    asked = asked or facts.begins("WATER_TALK", "asks", "lacks", "mixes")
    elements = any(
        m.type == "ION" and m.value in ("Ca", "Mg") and len(facts.raws[m.at].text) > len("mg")
        for m in facts.measured
    )
    lacking = elements and facts.says("WATER_TALK", "lacks")
    if not asked or not (by_name or lacking):
        return None
    return Order("supplement", target=facts.target, products=facts.products)
