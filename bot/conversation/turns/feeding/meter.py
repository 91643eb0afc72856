"""What a meter shows of the ready feed: how strong it is, and how much water thins it."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import Any

from bot.conversation import answer as out
from bot.conversation.answering import OnRecord, asking, worked_out
from bot.conversation.collection import pick
from bot.conversation.turn import Turn
from bot.conversation.turns.feeding import doses
from bot.conversation.turns.feeding.cautioning import with_cautions
from bot.conversation.turns.feeding.refusing import impossible
from bot.conversation.turns.standing.advice import genus_of
from bot.dosing.conductivity import EcRange
from bot.dosing.dose import (
    ASSUMED_DENSITY_KG_L,
    ASSUMED_N_MG_L,
    pure_water_ec_ms_cm,
    water_ec_by_hardness,
)
from bot.dosing.label import elemental_percent
from bot.dosing.meter import Excess, Feed, Meaning, excess, meaning, product_g_l, reading_ms_cm
from bot.dosing.meter import water_to_add_l as water_to_add
from bot.dosing.plants import named, of_name
from bot.dosing.strength import limits, most_sensitive
from bot.dosing.supplement import ec_ceiling
from bot.dosing.water import Range, Water
from grammar import MOST_MS_CM, LabelRate, MeterSaid, Reading

METER_UNITS = {
    "": "mS/cm", "ms_cm": "mS/cm", "us_cm": "µS/cm", "ds_m": "dS/m", "ms_m": "mS/m", "cf": "CF",
    "ppm": "ppm",
}  # fmt: skip
_BY_DIFFERENCE = (
    "ions of the label against PHREEQC 3.7.3, those of the water counted; by difference as "
    "Purdue Extension HO-286-W"
)
_TEMPERATURE = "ISO 7888:1985"
SCALE_SOURCE = "common practice, no source: meters show 500, 640 or 700 ppm for 1 mS/cm"
#: What a reading tells of a feed in tap water is so sure [1]: against PHREEQC 3.7.3 about 5 % in
#: pure water, twice that in hard; a reading within it is as meant.
_MODEL = 0.1
#: Where most and least lie further apart [1], a reading may be as meant, but need not.
_NARROW = 1.3
_AS_MEANT = ("same", "fine")
_NOT_TOLD = Range(0.0, 0.0)
#: Water thins where the EC that plants bear is over this times its own [1]; ours.
_MUCH_WATER = 1.2
DILUTION_SOURCE = "mass balance of two waters, FAO Irrigation and Drainage Paper 29"


@dataclass(frozen=True, slots=True)
class Mix:
    """The ready feed that was measured, as far as it is known.

    Parameters
    ----------
    feed, water : what it was made of; water without ions where nothing is known of it
    estimated : EC that the water may have, where its hardness alone is known [mS/cm]
    water_known : whether the water's own EC is
    most_g_l : product that the plants and the label allow [g/L]
    ec_ceiling, ec_source : EC that the plants bear [mS/cm], and where that is from
    meant_g_l : product of the dose that was given out [g/L]
    volume_l : ready feed [L], None where it was not told
    plants : the plant that decides, 'none' where none was named
    """

    feed: Feed
    water: Water | float
    estimated: Range | None
    water_known: bool
    most_g_l: float
    ec_ceiling: float
    ec_source: str
    meant_g_l: float | None
    volume_l: float | None
    plants: str


async def meter(turn: Turn) -> out.Answer:
    """What a meter shows of the ready feed, and what to do about it."""
    said = turn.order.meter
    assert said is not None  # the form needs one
    if said.value is None or (not said.unit and said.value > MOST_MS_CM and said.scale is None):
        value = turn.words.number(said.value or 0)
        choices = tuple(turn.words.say(f"choice-meter-{u}", value=value) for u in ("us", "ppm"))
        return turn.ask("ask-meter-unit", value=value, choices=choices)
    unit = said.unit or ("ppm" if said.scale is not None else "ms_cm")
    try:
        ec = reading_ms_cm(
            said.value,
            METER_UNITS.get(unit, unit),
            scale=said.scale,
            temp_c=said.temp_c,
            compensated=said.compensated,
        )
    except ValueError as error:
        return impossible(turn, error)
    filled, on_record, just_mixed = doses.mix_talked_of(turn)
    if filled.analysis is None:
        return _which_feed(turn, ec)
    mix = _mix(turn, filled, on_record, just_mixed=just_mixed)
    try:
        found = _meaning(ec, mix)
        return _answer(turn, said, found, mix, on_record)
    except ValueError as error:
        return impossible(turn, error)


def _meaning(ec: EcRange, mix: Mix) -> Meaning:
    """What the reading means, for all that the water may be."""
    if mix.estimated is None:
        found = meaning(ec, mix.feed, mix.water, meant_g_l=mix.meant_g_l)
        return found if mix.water_known else _at_most(found)
    low, high = mix.estimated
    most = meaning(ec, mix.feed, low, meant_g_l=mix.meant_g_l)
    if ec.low <= high:  # all of it may be the water's own
        return replace(_at_most(most), water=EcRange(min(low, ec.high), min(high, ec.high)))
    least = meaning(ec, mix.feed, high, meant_g_l=mix.meant_g_l)
    strength = most.strength
    if least.strength is not None and strength is not None:
        strength = Range(least.strength.low, strength.high)
    return replace(
        most,
        water=EcRange(low, high),
        product_g_l=Range(least.product_g_l.low, most.product_g_l.high),
        elements_mg_l={
            e: Range(least.elements_mg_l[e].low, r.high) for e, r in most.elements_mg_l.items()
        },
        strength=strength,
    )


def _at_most(found: Meaning) -> Meaning:
    """Where the water is not known all of the reading may be its own."""
    return replace(
        found,
        product_g_l=Range(0.0, found.product_g_l.high),
        elements_mg_l={e: Range(0.0, r.high) for e, r in found.elements_mg_l.items()},
        strength=Range(0.0, found.strength.high) if found.strength is not None else None,
    )


def _which_feed(turn: Turn, ec: EcRange) -> out.Answer:
    question = turn.words.say("ask-meter-feed", ec=_range(turn, ec.low, ec.high))
    waiting = {"kind": "meter", "text": turn.incoming.text}
    answer = asking(turn.reading, question, turn.words)
    return answer.model_copy(update={"details": {"waiting": waiting}})


async def completed(turn: Turn) -> out.Answer | None:
    """The answer to a reading whose feed was asked for, where this message names it."""
    reading, order = turn.reading, turn.order
    wanted = reading.volume_l is not None or order.verb != "dose"
    if wanted or (reading.analysis is None and not order.products):
        return None
    text = str(turn.question["text"])
    before = turn.read_again(text)
    if before.order is None or before.order.meter is None:
        return None
    whole = replace(before.order, products=order.products)
    return await meter(replace(turn, reading=replace(reading, order=whole), question={}))


def _mix(turn: Turn, filled: Reading, on_record: OnRecord, *, just_mixed: bool) -> Mix:
    n, p2o5, k2o = filled.analysis or (0.0, 0.0, 0.0)
    feed = Feed(elemental_percent(n, p2o5, k2o, filled.extras), on_record.nitrogen)
    worked = worked_out(filled, replace(turn.setting, on_record=on_record))
    label_g_l, meant = _label_g_l(filled, on_record), None
    if just_mixed and worked is not None and worked[1].amount and worked[1].unit != "tsp":
        heavy = _density(on_record) if worked[1].unit == "ml" else 1.0
        meant = worked[1].per_litre * heavy
    if turn.order.value is not None:
        meant = turn.order.value  # '20-20-20 at 1 g/l' beside the reading
        label_g_l = _label_g_l(replace(filled, label_rate=_shelf_rate(turn, filled)), on_record)
    classes = [g.feeding_class for g in named(filled.genera)]
    if on_record.some_unknown:
        classes.append("moderate")
    feeding_class = most_sensitive(tuple(classes))
    bounds = limits(
        label_fraction=label_g_l,  # 1 g/L is taken as full strength, so that ceilings are in g/L
        n_mg_l_at_full=10 * n,
        feeding_class=feeding_class,
        regime=filled.regime,
    )
    most_ec, ec_source = ec_ceiling(feeding_class)
    water, known = _water(filled, on_record)
    estimated = _estimated(filled) if isinstance(water, Water) and not known else None
    told = turn.reading.volume_l is not None or just_mixed
    can_l = turn.owner.can_l if turn.owner is not None else None
    return Mix(
        feed=feed,
        water=water,
        estimated=estimated,
        water_known=known or estimated is not None,
        most_g_l=min(ceiling for _, ceiling in bounds),
        ec_ceiling=most_ec,
        ec_source=ec_source,
        meant_g_l=meant,
        volume_l=filled.volume_l if told else can_l,
        plants=_whom(turn, filled, feeding_class),
    )


def _shelf_rate(turn: Turn, filled: Reading) -> LabelRate | None:
    """The rate of the label itself, where the message tells what was dissolved."""
    return None if filled.label_rate == turn.reading.label_rate else filled.label_rate


def _density(on_record: OnRecord) -> float:
    return on_record.density_kg_l or ASSUMED_DENSITY_KG_L


def _label_g_l(filled: Reading, on_record: OnRecord) -> float:
    """Product at full strength [g/L]: by the label, else the assumed nitrogen."""
    rate, n = filled.label_rate, (filled.analysis or (0.0, 0.0, 0.0))[0]
    if rate is not None and rate.unit == "g":
        return rate.per_litre
    if rate is not None and rate.unit == "ml":
        return rate.per_litre * _density(on_record)
    return ASSUMED_N_MG_L / (10 * n) if n > 0 else 1.0


def _water(filled: Reading, on_record: OnRecord) -> tuple[Water | float, bool]:
    """The water by its ions, its EC or its kind; and whether it is known."""
    if on_record.water is not None:
        return on_record.water, True
    said = filled.water
    if said is None:
        return Water(), False
    if said.ec_ms_cm is not None:
        return said.ec_ms_cm, True
    pure = pure_water_ec_ms_cm(said.kind)
    if pure is not None:
        return pure, True
    return Water(), False


def _estimated(filled: Reading) -> Range | None:
    """EC of a water of which the hardness alone is known [mS/cm]."""
    said = filled.water
    return None if said is None else water_ec_by_hardness(said.hardness_mg_l_caco3, said.kind)


def _whom(turn: Turn, filled: Reading, feeding_class: str) -> str:
    """The plant whose roots decide, in the words of the records or of the almanac."""
    plants = pick(turn.order.target, turn.collection, turn.last_plants)
    for plant in plants or (turn.collection.plants if not turn.reading.genera else ()):
        genus = genus_of(plant)
        if genus is not None and genus.feeding_class == feeding_class and plant.name:
            return plant.name
    for name in filled.genera:
        genus = of_name(name)
        if genus is not None and genus.feeding_class == feeding_class:
            return name
    return "none"


# --- the answer ------------------------------------------------------------------------------


def _answer(
    turn: Turn, said: MeterSaid, found: Meaning, mix: Mix, on_record: OnRecord
) -> out.Answer:
    words, number = turn.words, turn.words.number
    n = found.elements_mg_l.get("N", Range(0.0, 0.0))
    product = excess(found.product_g_l, mix.most_g_l)
    salts = excess(Range(found.reading.low, found.reading.high), mix.ec_ceiling)
    verdicts = {product.verdict, salts.verdict}
    verdict = next(v for v in ("over", "unsure", "under") if v in verdicts)
    if verdict == "unsure" and _as_meant(found, mix):
        verdict = "under"
    # Of the two limits the one that decides; where both do, the one that is passed by more.
    deciding = [e.factor for e in (product, salts) if e.verdict == verdict]
    factor = max(deciding or [product.factor, salts.factor])
    add_l, wanted, purer = _thinning(found, mix) if verdict != "under" else (0.0, 0.0, False)
    water_line = _water_line(turn, found, mix, product)
    volume_l = mix.volume_l or 1.0
    lines = [
        words.say(
            f"meter-{verdict}",
            plants=mix.plants,
            factor=_range(turn, factor.low, factor.high, 1),
            high=number(factor.high, 1),
        ),
        water_line,
        _add_line(turn, verdict, add_l * volume_l, mix, wanted, purer=purer)
        if 0 < add_l <= _MOST_ADDED
        else "",
        words.say(
            "meter-anew",
            grams=words.significant(_anew_g_l(mix, found.water.high, purer=purer)),
            instead="no" if add_l <= _MOST_ADDED else "yes",
            water="pure" if purer else "own",
        )
        if add_l > 1
        else "",
        words.say(
            "meter-means",
            ec=_range(turn, found.reading.low, found.reading.high),
            n=_range(turn, n.low, n.high, 0),
            grams=_range(turn, found.product_g_l.low, found.product_g_l.high),
            water=_range(turn, found.water.low, found.water.high) if mix.water_known else "none",
        ),
        "" if water_line and _beside_meant(found.strength or _NOT_TOLD) != "more"
        else _against_meant(turn, found, verdict),
        words.say("meter-scale-unknown") if said.unit == "ppm" and said.scale is None else "",
        words.say("meter-unit-taken") if not said.unit and said.scale is None else "",
        words.say("meter-temperature") if said.temp_c is not None and said.compensated is None
        else "",
        words.say("meter-water-unknown") if not mix.water_known else "",
        words.say("meter-water-estimated") if mix.estimated is not None else "",
        words.say("meter-forms-unknown") if mix.feed.forms is None and n.high > 0 else "",
        *on_record.lines[:1],
    ]  # fmt: skip
    details: dict[str, Any] = {
        "ec_ms_cm": _pair(found.reading.low, found.reading.high),
        "water_ec_ms_cm": found.water.high if mix.water_known else None,
        "product_g_l": _pair(*found.product_g_l),
        "elements_mg_l": {e: _pair(*r) for e, r in found.elements_mg_l.items()},
        "of_the_dose": _pair(*found.strength) if found.strength is not None else None,
        "verdict": verdict,
        "of_the_limit": _pair(*factor),
        "most_g_l": mix.most_g_l,
        "most_ec_ms_cm": mix.ec_ceiling,
        "add_l": add_l * volume_l,
        "volume_l": volume_l,
    }
    answer = turn.tell("reading", lines, details=details)
    return with_cautions(
        turn, answer.model_copy(update={"why": _why(turn, said, mix, thinned=add_l > 0)})
    )


def _as_meant(found: Meaning, mix: Mix) -> bool:
    """Whether the reading is that of the dose given out, which the plants bear."""
    if found.strength is None or mix.meant_g_l is None or not mix.water_known:
        return False
    if mix.estimated is not None:
        return False
    same = _beside_meant(found.strength) in _AS_MEANT
    return same and mix.meant_g_l <= mix.most_g_l * (1 + 1e-9)


#: Nobody pours more than so much water to a litre of feed [L]: it is mixed anew; ours.
_MOST_ADDED = 3.0
#: So much of one's own water, and purer water does it sooner [L]; ours.
_MOST_OF_ITS_OWN = 2.0


def _thinning(found: Meaning, mix: Mix) -> tuple[float, float, bool]:
    """Water for each litre [L], the EC it comes to [mS/cm], and whether it has to be purer.

    Enough for the most product there may be, whatever its nitrogen is made of, and for the EC.
    """
    own = found.water.high
    pure = pure_water_ec_ms_cm("rain") or 0.0
    purer = found.reading.high > mix.ec_ceiling and own * _MUCH_WATER > mix.ec_ceiling
    if not purer and own > pure:  # its own water would take a flood
        purer = water_to_add(1.0, found.reading.high, mix.ec_ceiling, own) > _MOST_OF_ITS_OWN
    thinner = pure if purer else own
    by_product = max(found.product_g_l.high / mix.most_g_l - 1, 0.0)
    by_ec = water_to_add(1.0, found.reading.high, mix.ec_ceiling, thinner)
    add = max(by_product, by_ec)
    likely = thinner if purer or mix.estimated is None else min(mix.estimated.middle, own)
    return add, (found.reading.high + add * likely) / (1 + add), purer


def _add_line(
    turn: Turn, verdict: str, litres: float, mix: Mix, wanted: float, *, purer: bool
) -> str:
    words = turn.words
    return words.say(
        "meter-add",
        sure="yes" if verdict == "over" else "no",
        litres=volume(turn, litres),
        to=volume(turn, mix.volume_l) if mix.volume_l else "none",
        water="pure" if purer else "own",
        ec=words.number(wanted),
    )


def volume(turn: Turn, litres: float) -> str:
    """Water as a jug shows it."""
    if litres < 1:
        litres = max(10.0, round(litres * 100) * 10) / 1000
    return turn.words.volume(litres, 1)


def _against_meant(turn: Turn, found: Meaning, verdict: str) -> str:
    """The reading against the dose given out; that it may be right is no comfort where too much."""
    if found.strength is None:
        return ""
    low, high = found.strength
    code = _beside_meant(found.strength)
    if low <= 0 or (verdict == "over" and code in _AS_MEANT):
        return ""
    return turn.words.say(
        f"meter-meant-{code}",
        share=_range(turn, 100 * low, 100 * high, 0),
        whose="given" if turn.order.value is None else "said",
    )


def _beside_meant(strength: Range) -> str:
    """Less or more than was meant, or the same as far as a meter and the model can tell."""
    if strength.high * (1 + _MODEL) < 1:
        return "less"
    if strength.low > 1 + _MODEL:
        return "more"
    return "same" if strength.high > _NARROW * strength.low else "fine"


def _water_line(turn: Turn, found: Meaning, mix: Mix, product: Excess) -> str:
    """That it is the water that makes it too much, and not the feed; empty where it is not."""
    if not mix.water_known or found.reading.low <= mix.ec_ceiling:
        return ""
    alone = found.water.low > mix.ec_ceiling
    as_meant = found.strength is not None and _beside_meant(found.strength) in _AS_MEANT
    if not alone and not (as_meant and product.factor.low <= 1 + _MODEL):
        return ""
    return turn.words.say(
        "meter-water-alone" if alone else "meter-water-adds",
        own=_range(turn, found.water.low, found.water.high),
        most=turn.words.number(mix.ec_ceiling),
    )


def _anew_g_l(mix: Mix, own_ms_cm: float, *, purer: bool) -> float:
    """The most product in a new mix: what label and plants allow, and the EC leaves room for."""
    pure = pure_water_ec_ms_cm("rain") or 0.0
    water = pure if purer else own_ms_cm if mix.estimated is not None else mix.water
    ceiling = EcRange(mix.ec_ceiling, mix.ec_ceiling)
    return min(mix.most_g_l, product_g_l(mix.feed, ceiling, water).low)


def _range(turn: Turn, low: float, high: float, digits: int = 2) -> str:
    """'0.9', or '0.64–0.9' where it is not one figure as shown."""
    first, last = turn.words.number(low, digits), turn.words.number(high, digits)
    if low <= 0 < high:
        return turn.words.say("up-to", high=last)
    return first if first == last else f"{first}–{last}"


def _pair(low: float, high: float) -> dict[str, float]:
    return {"low": low, "high": high}


def _why(turn: Turn, said: MeterSaid, mix: Mix, *, thinned: bool) -> list[out.Why]:
    rules = [("meter.difference", _BY_DIFFERENCE)]
    if said.temp_c is not None:
        rules.append(("meter.temperature", _TEMPERATURE))
    if said.unit == "ppm":
        rules.append(("meter.scale", SCALE_SOURCE))
    if thinned:
        rules.append(("meter.dilution", DILUTION_SOURCE))
    rules.append(("meter.ceiling", mix.ec_source))
    return [
        out.Why(rule=rule, factor=1.0, source=source,
                text=turn.words.say(f"why-{rule.replace('.', '-')}"))
        for rule, source in rules
    ]  # fmt: skip
