"""Figures that are asked for and dose nothing: conversions, what feed brings, limits."""

from __future__ import annotations

from bot.conversation import answer as out
from bot.conversation.collection import pick
from bot.conversation.replies import element_texts
from bot.conversation.turn import Turn
from bot.conversation.turns.feeding import judging
from bot.conversation.turns.feeding.doses import mix_asked_about
from bot.conversation.turns.feeding.meter import (
    DILUTION_SOURCE,
    METER_UNITS,
    SCALE_SOURCE,
    volume,
)
from bot.conversation.turns.feeding.refusing import impossible
from bot.conversation.turns.standing.advice import genus_of
from bot.dosing.conductivity import PPM_SCALES, EcRange, ec_to_ppm
from bot.dosing.dose import ASSUMED_DENSITY_KG_L, US_TEASPOON_ML, pure_water_ec_ms_cm
from bot.dosing.label import OXIDE_FACTOR, elemental_percent
from bot.dosing.measuring import LEVEL_TEASPOON_G
from bot.dosing.meter import Feed, mixed_ec_ms_cm, reading_ms_cm, water_to_add_l
from bot.dosing.plants import Genus, of_name
from bot.dosing.strength import CEILINGS, most_sensitive
from bot.dosing.supplement import ec_ceiling

_WEIGHTS = "IUPAC atomic weights"
#: Nitrogen in nitrate and in ammonium [1]: IUPAC, 14.007/62.004 and 14.007/18.039.
_N_IN = {"NO3": 0.22591, "NH4": 0.77648}
#: At least half of the nitrogen as nitrate: Wang, HortScience, Phalaenopsis in bark and sphagnum.
_MOST_AMMONIUM = 0.5
_AMMONIUM_SOURCE = "Wang, HortScience: at least half, better three quarters, of the N as nitrate"
#: No mix holds more product than this [g/L]; the model of EC ends before.
_MOST_G_L = 100.0


# --- conversions -------------------------------------------------------------------------------


async def convert(turn: Turn) -> out.Answer:
    """A reading in the other units, or an oxide as its element."""
    return _of_a_meter(turn) if turn.order.meter is not None else _oxide(turn)


def _of_a_meter(turn: Turn) -> out.Answer:
    said, words = turn.order.meter, turn.words
    assert said is not None
    value, unit, wanted = said.value or 0.0, said.unit, said.scale
    try:
        scale = said.scale if unit == "ppm" else None
        found = reading_ms_cm(value, METER_UNITS.get(unit, unit), scale=scale)
    except ValueError as error:
        return impossible(turn, error)
    number = words.number
    if unit == "ppm" and scale is None:  # by the meter it is three figures
        by_scale = [
            words.say("convert-on-scale", value=number(value / s), unit="mS/cm", scale=s)
            for s in PPM_SCALES
        ]
        lines = [
            words.say("convert-ppm-open", value=number(value), each=words.figures(by_scale)),
            words.say("tell-ppm-scale"),
        ]
    else:
        ec = found.low
        by_scale = [
            words.say("convert-on-scale", value=number(ec_to_ppm(ec, s), 0), unit="ppm", scale=s)
            for s in sorted(PPM_SCALES, key=lambda s: (s != wanted, s))
            if not (unit == "ppm" and s == wanted)
        ]
        lines = [
            words.say(
                "convert-meter",
                value=number(value),
                unit=words.say("convert-ppm-unit", scale=wanted)
                if unit == "ppm"
                else METER_UNITS.get(unit, unit),
                ec=number(ec, 3),
                kind={"ms_cm": "ms", "cf": "cf"}.get(unit, "other"),
                ppm=words.figures(by_scale),
                cf=number(10 * ec, 1),
            )
        ]
    details = {"ec_ms_cm": {"low": found.low, "high": found.high}}
    why = out.Why(rule="meter.scale", factor=1.0, text=words.say("why-meter-scale"),
                  source=SCALE_SOURCE)  # fmt: skip
    return turn.tell("explain", lines, details=details).model_copy(update={"why": [why]})


def _oxide(turn: Turn) -> out.Answer:
    words, order = turn.words, turn.order
    of, _, to = order.text.partition(" ")
    value, unit = order.value or 0.0, order.unit
    oxide, element = (of, to) if of in OXIDE_FACTOR else (to, of)
    if oxide not in OXIDE_FACTOR or not oxide.startswith(element):
        return turn.say("explain", "convert-oxide-none", of=of, to=to)
    factor = OXIDE_FACTOR[oxide]
    result = value * factor if of == oxide else value / factor
    text = words.say(
        "convert-oxide",
        value=words.number(value),
        unit=unit,
        of=of,
        result=words.significant(result, 3),
        to=to,
        oxide=oxide,
        element=element,
        factor=words.number(factor, 4),
    )
    details = {"value": result, "unit": unit, "of": to}
    why = out.Why(rule="convert.oxide", factor=factor, text=text, source=_WEIGHTS)
    return turn.tell("explain", [text], details=details).model_copy(update={"why": [why]})


# --- mixing ready feeds ------------------------------------------------------------------------


async def pour(turn: Turn) -> out.Answer:
    """The EC of two feeds poured together, or the water that thins one."""
    order, words = turn.order, turn.words
    whole = sum(litres for litres, _ in order.poured)
    if order.value is None:
        ec = sum(litres * ms_cm for litres, ms_cm in order.poured) / whole if whole else 0.0
        text = words.say("pour-together", volume=words.volume(whole), ec=words.number(ec))
        details = {"volume_l": whole, "ec_ms_cm": ec}
    else:
        kind = order.text or "reverse_osmosis"
        own = pure_water_ec_ms_cm(kind) or 0.0
        litres, ms_cm = order.poured[0]
        try:
            add_l = water_to_add_l(litres, ms_cm, order.value, own)
        except ValueError as error:
            return impossible(turn, error)
        text = words.say(
            "pour-thinned",
            add=volume(turn, add_l),
            water=words.say(f"water-{kind}"),
            whole=volume(turn, litres + add_l),
            ec=words.number(order.value),
        )
        details = {"add_l": add_l, "volume_l": litres + add_l, "ec_ms_cm": order.value}
    why = out.Why(rule="meter.dilution", factor=1.0, text=text, source=DILUTION_SOURCE)
    return turn.tell("explain", [text], details=details).model_copy(update={"why": [why]})


# --- what an amount brings ----------------------------------------------------------------------


async def brings(turn: Turn) -> out.Answer:
    """What an amount of feed brings into so much water; nothing is kept."""
    order = turn.order
    filled, on_record = mix_asked_about(turn)
    if filled.volume_l is None:
        return turn.ask("ask-judge-volume")
    if filled.analysis is None:
        return turn.ask("ask-judge-product")
    words = turn.words
    density = on_record.density_kg_l or ASSUMED_DENSITY_KG_L
    liquid = filled.form == "liquid" or order.unit == "ml"
    heavy = {
        "g": 1.0,
        "ml": density,
        "tsp": US_TEASPOON_ML * density if liquid else LEVEL_TEASPOON_G,
    }[order.unit]
    g_l = (order.amount or 0.0) * heavy / filled.volume_l
    if not 0 < g_l <= _MOST_G_L:
        return turn.refuse("refuse-figures")
    n, p2o5, k2o = filled.analysis
    feed = Feed(elemental_percent(n, p2o5, k2o, filled.extras), on_record.nitrogen)
    elements = feed.elements_mg_l(g_l)
    ec = _ec_of(feed, g_l)
    shown = "none" if ec is None else _range(turn, ec)
    lines = [
        words.say("makes", elements=words.figures(element_texts(elements, words)), ec=shown),
        words.say("judge-spoons") if order.unit == "tsp" and not liquid else "",
        *judging.too_much(turn, filled, on_record),
    ]
    details = {
        "g_l": g_l, "elements_mg_l": elements,
        "ec_ms_cm": None if ec is None else {"low": ec.low, "high": ec.high},
    }  # fmt: skip
    return turn.tell("explain", lines, details=details)


def _ec_of(feed: Feed, g_l: float) -> EcRange | None:
    """EC that it adds to pure water, None beyond what the model holds for."""
    try:
        return mixed_ec_ms_cm(feed, g_l)
    except ValueError:
        return None


def _range(turn: Turn, ec: EcRange) -> str:
    low, high = turn.words.number(ec.low), turn.words.number(ec.high)
    return low if low == high else f"{low}–{high}"


# --- limits ------------------------------------------------------------------------------------


async def most_ec(turn: Turn) -> out.Answer:
    """The EC that plants bear in the ready feed."""
    name, feeding_class = _deciding(turn)
    most, source = ec_ceiling(feeding_class)
    words = turn.words
    text = words.say("most-ec", most=words.number(most), plants=name or "none")
    details = {"most_ec_ms_cm": most, "class": feeding_class}
    why = out.Why(rule="meter.ceiling", factor=1.0, text=text, source=source)
    lines = [text, words.say("most-ec-source", source=words.cited(source))]
    return turn.tell("explain", lines, details=details).model_copy(update={"why": [why]})


async def nitrogen_limit(turn: Turn) -> out.Answer:
    """Whether so much nitrogen, nitrate or ammonium is too much."""
    order, words = turn.order, turn.words
    value, form = order.value or 0.0, order.text
    name, feeding_class = _deciding(turn)
    most = CEILINGS[feeding_class].n_mg_l
    ammonium = form in ("NH4", "NH4_N")
    most *= _MOST_AMMONIUM if ammonium else 1.0
    least_n = value * _N_IN.get(form, 1.0)  # as the ion; a label counts it as nitrogen
    verdict = "over" if least_n > most else "perhaps" if value > most else "under"
    lines = [
        words.say(
            f"nitrogen-{verdict}",
            most=words.number(most, 0),
            plants=name or "none",
            what="ammonium" if ammonium else "all",
        ),
        words.say("nitrogen-as-ion", value=words.number(value), ion=form,
                  n=words.significant(least_n)) if form in _N_IN else "",
        words.say("nitrogen-ammonium") if ammonium else "",
    ]  # fmt: skip
    details = {"verdict": verdict, "n_mg_l": {"low": least_n, "high": value}, "most_n_mg_l": most}
    return turn.tell("explain", lines, details=details)


def _deciding(turn: Turn) -> tuple[str, str]:
    """The plant that bears the least, and the class that decides; as moderate where none is."""
    found: list[tuple[str, Genus]] = []
    for said in turn.reading.genera or turn.order.target.genera:
        genus = of_name(said)
        if genus is not None:
            found.append((said, genus))
    if not found:
        for plant in pick(turn.order.target, turn.collection, turn.last_plants):
            genus = genus_of(plant)
            if genus is not None:
                found.append((plant.name or genus.name, genus))
    feeding_class = most_sensitive(tuple(g.feeding_class for _, g in found))
    return next((n for n, g in found if g.feeding_class == feeding_class), ""), feeding_class
