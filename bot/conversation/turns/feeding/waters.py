"""Waters: a report on record, what a water suits, mixing two, calcium and magnesium to add."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

from bot.conversation import answer as out
from bot.conversation.answering import OnRecord, answer_to, worked_out
from bot.conversation.collection import pick
from bot.conversation.replies import measure_line
from bot.conversation.turn import Turn
from bot.conversation.turns import home
from bot.conversation.turns.feeding import doses
from bot.conversation.turns.feeding.cautioning import with_cautions
from bot.conversation.turns.feeding.meter import volume
from bot.conversation.turns.feeding.refusing import impossible, shown
from bot.conversation.turns.shelf import analysis_of, nitrogen_forms, title
from bot.conversation.turns.standing.advice import genus_of
from bot.dosing.conductivity import MAX_CHARGE_IMBALANCE
from bot.dosing.dose import ASSUMED_DENSITY_KG_L, ASSUMED_N_MG_L, pure_water_ec_ms_cm
from bot.dosing.label import elemental_percent
from bot.dosing.measuring import Measured, measured
from bot.dosing.meter import Feed, mixed_ec_ms_cm
from bot.dosing.plants import Genus, of_name
from bot.dosing.strength import most_sensitive
from bot.dosing.supplement import Missing, Supplement, fill, missing
from bot.dosing.water import (
    Finding,
    Imbalanced,
    Known,
    Range,
    Report,
    Suitability,
    Water,
    blend_to,
    check_figure,
    estimate,
    read_report,
    suitability,
    water_of_report,
)
from bot.records import waters
from bot.records.models import Product
from bot.records.models import Water as WaterRow
from grammar import MixSaid, Reading, to_canonical

_BALANCE = "IUPAC atomic weights; charges within 10 %, as laboratories hold them"
_BLENDING = "mass balance of two waters, FAO Irrigation and Drainage Paper 29"
#: Findings that are told at once, the worst first.
_TOLD = 3
_PURE_KINDS = ("rain", "reverse_osmosis", "distilled")
#: Nitrogen of a feed of which nothing is known [mg/L]: a quarter of the assumed full strength.
_USUAL_N_MG_L = ASSUMED_N_MG_L / 4
#: So little is not missing [mg/L]; no label is that exact.
_NEGLIGIBLE_MG_L = 1.0
_USUAL_CAN_L = 5.0


# --- a report on record ----------------------------------------------------------------------


def refused(turn: Turn) -> out.Answer | None:
    """What cannot be of a water that was told; None where all of it can."""
    try:
        for name, value in _said(turn).items():
            check_figure(name, value)
        if turn.order.ions and not turn.order.report_unit:
            report = read_report(dict(turn.order.ions))
            if report.water is None and not report.explained:
                return _to_be_checked(turn, report, dict(turn.order.ions))
    except ValueError as error:
        return impossible(turn, error)
    return None


async def told(turn: Turn) -> out.Answer:
    """Put a water on record: by its ions where a report was sent, else by its figures."""
    if turn.order.text == "hard":
        return turn.ask("ask-how-hard")
    if not turn.order.ions:
        try:
            for name, value in _said(turn).items():
                check_figure(name, value)
        except ValueError as error:
            return impossible(turn, error)
        return await home.water(turn)
    if turn.order.report_unit:
        return turn.ask("ask-report-unit")
    words, number = turn.words, turn.words.number
    ions = dict(turn.order.ions)
    try:
        report = read_report(ions)
        if report.water is None and not report.explained:
            return _to_be_checked(turn, report, ions)
        ec = report.water.ec_ms_cm if report.water is not None else None
    except ValueError as error:
        return impossible(turn, error)
    said = turn.reading.water
    kind = said.kind if said is not None else "tap"
    figures = {
        "hardness_mg_l_caco3": _exact(report.known, "hardness_mg_l_caco3"),
        "alkalinity_mg_l_caco3": _exact(report.known, "alkalinity_mg_l_caco3"),
        "ec_ms_cm": said.ec_ms_cm if said is not None and said.ec_ms_cm is not None else ec,
    }
    async with turn.writing() as writing:
        row = await home.of_kind(writing, kind, turn.order.name, figures, ions)
        if not any(w.is_default for w in turn.collection.waters):
            await waters.make_default(writing, row.id)
    fit = suitability(report.known, "moderate", soft=kind == "softened")
    listed = words.figures([f"{ion} {words.significant(mg_l, 3)}" for ion, mg_l in ions.items()])
    apart = number(100 * abs(report.imbalance), 0)
    lines = [
        words.say("water-recorded", water=home.described(row, turn)),
        words.say("report-ions", ions=listed),
        words.say("report-balance", percent=apart)
        if report.water is not None
        else words.say("report-in-part", percent=apart, lacks=_lacks(report)),
        words.say("caution-softened-water") if fit.softened else "",
    ]
    details = {
        "ions_mg_l": ions, **figures, "imbalance": report.imbalance, "softened": fit.softened,
        "whole": report.water is not None,
    }  # fmt: skip
    choice = words.say("choice-water-suits")
    answer = turn.tell("water", lines, choices=("undo", choice), details=details)
    return answer.model_copy(update={"why": [_why(turn, "water.report", _BALANCE)]})


def _exact(known: Known, quantity: str) -> float | None:
    """A quantity where it is one figure, None where it is a range or not known."""
    found = known.get(quantity)
    return found.low if found is not None and found.low == found.high else None


def _lacks(report: Report) -> str:
    """What a report in part lacks: 'anions', 'cations', or 'ions' where that cannot be told."""
    if abs(report.imbalance) <= MAX_CHARGE_IMBALANCE:
        return "ions"
    return "anions" if report.imbalance > 0 else "cations"


def _to_be_checked(turn: Turn, report: Report, ions: dict[str, float]) -> out.Answer:
    """A whole report of which one figure is wrong: what it would be, and the nearest to go on."""
    words = turn.words
    try:
        water_of_report(ions)
    except Imbalanced as error:
        values = shown(error, words)
    else:
        return turn.refuse("refuse-figures")
    hardness = report.known.get("hardness_mg_l_caco3")
    german = 0.0 if hardness is None else hardness.low / to_canonical(1.0, "german_degree")
    text = words.say("refuse-water-imbalance", **values, hardness=words.number(german, 1))
    nearest = words.say("choice-water-nearest", hardness=words.number(german, 1))
    return answer_to(turn.reading, "refused", text, choices=(nearest,) if german else ())


def _why(turn: Turn, rule: str, source: str, **values: Any) -> out.Why:
    text = turn.words.say(f"why-{rule.replace('.', '-')}", **values)
    return out.Why(rule=rule, factor=1.0, text=text, source=source)


# --- what is known of a water ------------------------------------------------------------------


def _row(turn: Turn, kind: str | None) -> WaterRow | None:
    """The water on record of a kind, or the one that is meant where none was named."""
    if kind:
        fitting = [w for w in turn.collection.waters if w.kind == kind]
        return next((w for w in fitting if w.is_default), fitting[0] if fitting else None)
    plants = pick(turn.order.target, turn.collection)
    own = {p.water_id for p in plants}
    return turn.collection.water_of(plants[0] if plants and len(own) == 1 else None)


def _whole(kind: str | None, row: WaterRow | None) -> Water | None:
    """A water by all its ions, where they are known."""
    if kind in ("reverse_osmosis", "distilled"):
        return Water()
    return doses.ions_of(row)


def _figures(kind: str | None, row: WaterRow | None, said: dict[str, float]) -> dict[str, float]:
    """Hardness, alkalinity and EC of a water: as said, else as on record, else by its kind."""
    found: dict[str, float] = {}
    if row is not None and not said:
        for name in ("hardness_mg_l_caco3", "alkalinity_mg_l_caco3", "ec_ms_cm"):
            value = getattr(row, name)
            if value is not None:
                found[name] = value
    found |= said
    pure = pure_water_ec_ms_cm(kind or (row.kind if row is not None else ""))
    if not found and pure is not None:
        found["ec_ms_cm"] = pure
    return found


def _known(kind: str | None, row: WaterRow | None, said: dict[str, float]) -> Known | None:
    """What is known of a water by quantity, None where nothing is.

    Raises
    ------
    ValueError
        Its figures contradict each other.
    """
    told = None if said else doses.report_of(row)
    if told is not None and told.water is not None:
        return told.known
    figures = _figures(kind, row, said)
    soft = (kind or (row.kind if row is not None else "")) == "softened"
    known = dict(estimate(**figures, soft=soft)) if figures else {}
    if told is not None:  # what a report in part tells is surer than the types of water
        known |= {q: v for q, v in told.known.items() if q not in figures}
    return known or None


def _said(turn: Turn) -> dict[str, float]:
    said = turn.reading.water
    if said is None:
        return {}
    figures = {
        "hardness_mg_l_caco3": said.hardness_mg_l_caco3,
        "alkalinity_mg_l_caco3": said.alkalinity_mg_l_caco3,
        "ec_ms_cm": said.ec_ms_cm,
    }
    return {k: v for k, v in figures.items() if v is not None}


# --- what it suits -----------------------------------------------------------------------------


async def suits(turn: Turn) -> out.Answer:
    """Whether a water suits plants."""
    said = turn.reading.water
    figures = _said(turn)
    own_kind = said.kind if said is not None and not _taken_as_tap(turn) else None
    row = None if figures else _row(turn, own_kind)
    kind = own_kind or (row.kind if row is not None else None)
    plant, feeding_class = _deciding(turn)
    name = plant or "none"
    soft = kind == "softened"
    try:
        known = _known(kind, row, figures)
    except ValueError as error:
        return impossible(turn, error)
    if known is None:
        if soft:
            return _softened(turn, name)
        choices = tuple(turn.words.say(f"choice-water-{c}") for c in ("hard", "soft"))
        return turn.ask("ask-water-figures", choices=choices)
    found = suitability(known, feeding_class, soft=soft)
    said_as = tuple(r for r in turn.reading.read_as if r.meaning != "tap")
    turn = replace(turn, reading=replace(turn.reading, read_as=said_as))
    return _suits(turn, found, known, name, feeding_class, kind)


def _taken_as_tap(turn: Turn) -> bool:
    """Whether the kind of the water is no word of the message."""
    return any(r.meaning == "tap" for r in turn.reading.read_as)


def _softened(turn: Turn, name: str) -> out.Answer:
    words = turn.words
    lines = [words.say("suits-poor", plants=name), words.say("caution-softened-water")]
    return turn.tell("water", lines, details={"best": "poor", "worst": "poor", "softened": True})


def _deciding(turn: Turn) -> tuple[str, str]:
    """The plant that bears the least, and the class that decides."""
    found: list[tuple[str, Genus]] = []
    for genus_name in turn.reading.genera or turn.order.target.genera:
        genus = of_name(genus_name)
        if genus is not None:
            found.append((genus_name, genus))
    if not found:
        meant = pick(turn.order.target, turn.collection, turn.last_plants)
        for plant in meant or turn.collection.plants:
            genus = genus_of(plant)
            if genus is not None:
                found.append((plant.name or genus.name, genus))
    feeding_class = most_sensitive(tuple(g.feeding_class for _, g in found))
    return next((n for n, g in found if g.feeding_class == feeding_class), ""), feeding_class


def _suits(
    turn: Turn, found: Suitability, known: Known, name: str, feeding_class: str, kind: str | None
) -> out.Answer:
    words = turn.words
    grade = found.worst if found.best == found.worst else f"{found.best}-{found.worst}"
    bad = [f for f in found.findings if _finding_grade(f) != "good"]
    bad = sorted(bad, key=lambda f: f.value.low != f.value.high)[:_TOLD]  # what was told first
    lines = [words.say(f"suits-{grade}", plants=name)]
    lines += [_finding(turn, f) for f in bad]
    lines.append(words.say("caution-softened-water") if found.softened else "")
    choices: tuple[str, ...] = ()
    share = None if found.softened else _tap_share(known, bad)
    if share is not None and kind not in _PURE_KINDS:
        lines.append(words.say("suits-thin", percent=words.number(100 * share, 0)))
    if kind in _PURE_KINDS:
        lines.append(words.say("suits-pure"))
    elif any(low != high for low, high in known.values()):
        lines.append(words.say("suits-range"))
    lines.append(words.say("suits-limits", class_=feeding_class))
    details = {
        "best": found.best, "worst": found.worst, "softened": found.softened,
        "class": feeding_class, "tap_share": share,
        "findings": [
            {
                "quantity": f.quantity, "low": f.value.low, "high": f.value.high,
                "grades": f.grades, "limits": f.limits, "irrigation": f.restrictions,
            }
            for f in found.findings
        ],
    }  # fmt: skip
    answer = turn.tell("water", lines, choices=choices, details=details)
    why = [
        out.Why(rule=f"water.{f.quantity}", factor=1.0, text=_finding(turn, f), source=source)
        for f in found.findings
        if (source := "; ".join(s for s in (f.hobby_source, f.irrigation_source) if s))
    ]
    return answer.model_copy(update={"why": why})


def _finding_grade(finding: Finding) -> str:
    """The grade of a finding at its worst, field crops counted where restriction is severe."""
    severe = finding.restrictions is not None and finding.restrictions[1] == "severe"
    return "poor" if severe else finding.grades[1] if finding.grades is not None else "good"


def _shown(turn: Turn, quantity: str, value: Range) -> str:
    """A quantity as people say it: hardness and alkalinity in German degrees too."""
    digits = 2 if quantity in ("ec_ms_cm", "cl_meq_l", "hco3_meq_l") else 0
    factor = 1.0
    if quantity in ("hardness_mg_l_caco3", "alkalinity_mg_l_caco3"):
        factor, digits = 1 / to_canonical(1.0, "german_degree"), 1
    low, high = (turn.words.number(factor * v, digits) for v in value)
    return low if low == high else f"{low}–{high}"


def _finding(turn: Turn, finding: Finding) -> str:
    limits = finding.limits or (0.0, 0.0)
    return turn.words.say(
        "suits-finding",
        quantity=finding.quantity,
        value=_shown(turn, finding.quantity, finding.value),
        caco3=_caco3(turn, finding),
        good=_shown(turn, finding.quantity, Range(limits[0], limits[0])) if finding.limits
        else "none",
        most=_shown(turn, finding.quantity, Range(limits[1], limits[1])) if finding.limits
        else "none",
    )  # fmt: skip


def _caco3(turn: Turn, finding: Finding) -> str:
    """A hardness or an alkalinity in mg/l of calcium carbonate, as most reports have it."""
    low, high = (turn.words.number(v, 0) for v in finding.value)
    return low if low == high else f"{low}–{high}"


def _tap_share(known: Known, bad: list[Finding]) -> float | None:
    """How much of this water pure water may hold so that all is good [1], rounded down to 5 %."""
    shares = [f.limits[0] / f.value.high for f in bad if f.limits and f.value.high > 0]
    shares = [s for s in shares if s < 1]
    if not shares:
        return None
    return max(int(min(shares) * 20) / 20, 0.05)


# --- mixing two ----------------------------------------------------------------------------------


async def by_parts(turn: Turn) -> out.Answer:
    """What two waters make that are mixed by parts: hardness and EC of each, by its share.

    References
    ----------
    FAO Irrigation and Drainage Paper 29: C = a C1 + (1 - a) C2.
    """
    said = turn.order.mix
    assert said is not None  # the form needs one
    shares = dict(zip(said.kinds, (said.target, 1 - said.target), strict=True))
    rows = {kind: _row(turn, kind) for kind in shares}
    figures: dict[str, float] = {}
    for quantity in ("hardness_mg_l_caco3", "ec_ms_cm"):
        own = [_own_figure(rows[kind], kind, quantity) for kind in shares]
        if None not in own:
            parts = zip(shares.values(), own, strict=True)
            figures[quantity] = sum(share * (value or 0.0) for share, value in parts)
    words = turn.words
    named = {kind: words.say(f"water-{kind}") for kind in shares}
    if not figures:
        lacking = next(k for k in shares if k not in _PURE_KINDS)
        return turn.ask("ask-mix-figure", water=named[lacking], quantity="hardness_mg_l_caco3")
    shown = [home.figure(quantity, value, turn) for quantity, value in figures.items()]
    (first, a), (second, b) = shares.items()
    line = words.say(
        "mix-parts", first=named[first], second=named[second], values=words.listed(shown),
        first_percent=words.number(100 * a, 0), second_percent=words.number(100 * b, 0),
    )  # fmt: skip
    return turn.tell("water", [line], details={"shares": shares, **figures})


def _own_figure(row: WaterRow | None, kind: str, quantity: str) -> float | None:
    """What is known of a water; one without salts has no hardness."""
    known: float | None = getattr(row, quantity) if row is not None else None
    if known is None and kind in _PURE_KINDS:
        return pure_water_ec_ms_cm(kind) if quantity == "ec_ms_cm" else 0.0
    return known


async def mix(turn: Turn) -> out.Answer:
    """How much of two waters makes one of a hardness, an EC or a sodium limit."""
    said = turn.order.mix
    assert said is not None  # the form needs one
    if not said.quantity:
        return turn.ask("ask-mix-unit")
    first_kind = said.kinds[0]
    second_kind = said.kinds[1] if len(said.kinds) > 1 else "reverse_osmosis"
    if first_kind in _PURE_KINDS and len(said.kinds) == 1:
        first_kind, second_kind = "", first_kind
    row = _row(turn, first_kind or None)
    first_kind = first_kind or (row.kind if row is not None else "tap")
    second_row = _row(turn, second_kind) if second_kind else None
    volume_l = turn.reading.volume_l or (turn.owner.can_l if turn.owner else None) or _USUAL_CAN_L
    try:
        both = _to_blend(turn, said, (first_kind, row), (second_kind, second_row))
        if both is None:
            return turn.ask(
                "ask-mix-figure", water=turn.words.say(f"water-{first_kind}"),
                quantity=said.quantity,
            )  # fmt: skip
        found = blend_to(
            said.quantity, said.target, both[0], both[1], volume_l=volume_l,
            at_most=said.at_most,
        )  # fmt: skip
    except ValueError as error:
        return impossible(turn, error)
    words = turn.words
    lines = [
        words.say(
            "mix-waters",
            first=volume(turn, found.first_l) if found.first_l > 0 else "none",
            first_water=words.say(f"water-{first_kind}"),
            second=volume(turn, found.second_l) if found.second_l > 0 else "none",
            second_water=words.say(f"water-{second_kind}"),
        ),
        words.say(
            "mix-reached" if found.met else "mix-nearest",
            quantity=said.quantity,
            value=_shown(turn, said.quantity, Range(found.reached, found.reached)),
            target=_shown(turn, said.quantity, Range(said.target, said.target)),
        ),
        words.say("mix-no-calcium") if found.first_fraction < 0.1 else "",
        words.say("mix-check") if said.quantity == "ec_ms_cm" else "",
    ]
    details = {
        "first": first_kind, "second": second_kind, "first_l": found.first_l,
        "second_l": found.second_l, "volume_l": volume_l, "quantity": said.quantity,
        "target": said.target, "reached": found.reached, "met": found.met,
    }  # fmt: skip
    answer = turn.tell("water", lines, details=details)
    return answer.model_copy(update={"why": [_why(turn, "water.blend", _BLENDING)]})


def _to_blend(
    turn: Turn,
    said: MixSaid,
    first: tuple[str, WaterRow | None],
    second: tuple[str, WaterRow | None],
) -> tuple[Water, Water] | tuple[float, float] | None:
    """Both waters by their ions, or by the one figure; None where it is not known of the first.

    Where only other figures are known of the first, it is taken at the most these allow.
    """
    if not said.own:
        wholes = [_whole(kind, row) for kind, row in (first, second)]
        if second[0] == "rain" and wholes[1] is None and said.quantity != "ec_ms_cm":
            wholes[1] = Water()
        if wholes[0] is not None and wholes[1] is not None:
            return wholes[0], wholes[1]
    figures = []
    for at, (kind, row) in enumerate((first, second)):
        own = dict(said.own) if at == 0 else {}
        if said.quantity in own:
            figures.append(own[said.quantity])
            continue
        if kind in _PURE_KINDS and said.quantity != "ec_ms_cm":
            figures.append(0.0)
            continue
        known = _known(kind, row, own)
        if known is None or said.quantity not in known:
            return None
        figures.append(known[said.quantity].high)
    return figures[0], figures[1]


# --- calcium and magnesium -----------------------------------------------------------------------


async def supplement(turn: Turn) -> out.Answer:
    """Which calcium and magnesium water and feed leave missing, and what fills them."""
    product = _supplement_meant(turn)
    plain = replace(turn.order, products=())  # what was named is what fills, not the feed
    feeding = replace(turn, reading=replace(turn.reading, order=plain))
    filled, on_record, _ = doses.mix_talked_of(feeding)
    said_volume = turn.reading.volume_l or (turn.owner.can_l if turn.owner else None)
    volume_l = said_volume or _USUAL_CAN_L
    if product is not None and filled.analysis == analysis_of(product):
        filled = replace(filled, analysis=None)
    try:
        worked = worked_out(filled, replace(turn.setting, on_record=on_record))
        elements = dict(worked[1].elements_mg_l) if worked is not None else {}
        n_mg_l = elements.get("N", 0.0) or _USUAL_N_MG_L
        told = turn.reading.water
        said_kind = told.kind if told is not None and not _taken_as_tap(turn) else None
        row = _row(turn, said_kind)
        kind = said_kind or (row.kind if row is not None else None)
        own = _known(kind, row, _said(turn)) or {}
        if kind in _PURE_KINDS and not _said(turn):  # hold none, whatever their EC could be of
            own = {**own, "ca_mg_l": Range(0.0, 0.0), "mg_mg_l": Range(0.0, 0.0)}
        gaps = missing(n_mg_l, own, elements)
        short = {e: g for e, g in gaps.items() if g.missing.high > _NEGLIGIBLE_MG_L}
        lines = [_gap_line(turn, gaps, short, n_mg_l)]
        fed = [f"{e} {turn.words.significant(elements[e])}" for e in gaps if elements.get(e)]
        if short and fed:
            lines.append(turn.words.say("supplement-fed", what=turn.words.figures(fed)))
        if not own:
            lines.append(turn.words.say("supplement-water-unknown"))
        dose = None
        if short:
            present = _present_ec(filled, on_record, own, worked[1].per_litre if worked else 0.0)
            dose = _best(turn, gaps, product, present, elements.get("N", 0.0), filled)
            lines += _dose_lines(turn, dose, short, volume_l, fed=bool(fed))
    except ValueError as error:
        return impossible(turn, error)
    details: dict[str, Any] = {
        "n_mg_l": n_mg_l, "volume_l": volume_l,
        "missing_mg_l": {e: {"target": g.target, "low": g.missing.low, "high": g.missing.high}
                         for e, g in gaps.items()},
    }  # fmt: skip
    if dose is not None:
        found, used = dose
        details |= {
            "product": title(used, turn), "g_l": found.product_g_l,
            "amount": found.product_g_l / _grams_in_unit(used) * volume_l,
            "stock": _stock_figures(turn, found, used, volume_l),
            "total_ec_ms_cm": found.total_ec, "limited_by": found.limited_by,
            "wanted_g_l": found.wanted_g_l,
            "left_mg_l": {e: {"low": r.low, "high": r.high} for e, r in found.left_mg_l.items()},
        }  # fmt: skip
    answer = turn.tell("supplement", lines, details=details)
    why = [_why(turn, "supplement.target", g.source, element=e, mg_l=turn.words.number(g.target, 0))
           for e, g in gaps.items()]  # fmt: skip
    return with_cautions(turn, answer.model_copy(update={"why": why}))


def _supplement_meant(turn: Turn) -> Product | None:
    named = [turn.collection.product_named(n) for n in turn.order.products]
    return next((p for p in named if p is not None), None)


def _gap_line(turn: Turn, gaps: dict[str, Missing], short: dict[str, Missing], n: float) -> str:
    words, number = turn.words, turn.words.number
    if not short:
        return words.say("supplement-enough", n=number(n, 0))

    def amount(gap: Missing) -> str:
        low, high = number(max(gap.missing.low, 0.0), 0), number(gap.missing.high, 0)
        return low if low == high else f"{low}–{high}"

    what = [
        words.say("supplement-gap", element=e, mg_l=amount(g), target=number(g.target, 0))
        for e, g in short.items()
    ]
    sure = "yes" if any(g.missing.low > 0 for g in short.values()) else "no"
    return words.say("supplement-short", what=words.listed(what), n=number(n, 0), sure=sure)


def _present_ec(filled: Reading, on_record: OnRecord, own: Known, per_litre: float) -> float:
    """EC of water and feed together at most [mS/cm]."""
    water_ec = own["ec_ms_cm"].high if "ec_ms_cm" in own else 0.0
    if filled.analysis is None or not per_litre:
        return water_ec
    heavy = (on_record.density_kg_l or ASSUMED_DENSITY_KG_L) if filled.form == "liquid" else 1.0
    feed = Feed(elemental_percent(*filled.analysis, filled.extras), on_record.nitrogen)
    return water_ec + mixed_ec_ms_cm(feed, per_litre * heavy).high


def _grams_in_unit(product: Product) -> float:
    """Grams in a gram of powder or a millilitre of liquid."""
    liquid = product.form == "liquid"
    return (product.density_kg_l or ASSUMED_DENSITY_KG_L) if liquid else 1.0


def _best(
    turn: Turn,
    gaps: dict[str, Missing],
    named: Product | None,
    present_ec: float,
    present_n: float,
    filled: Reading,
) -> tuple[Supplement, Product] | None:
    """The product on the shelf that leaves least missing, None where none brings any."""
    _, feeding_class = _deciding(turn)
    found: list[tuple[float, int, Supplement, Product]] = []
    for product in [named] if named is not None else list(turn.collection.products):
        percent = elemental_percent(*analysis_of(product), product.extras or {})
        is_feed = named is None and filled.analysis == analysis_of(product)
        if is_feed or not (percent.get("Ca") or percent.get("Mg")):
            continue
        dose = fill(
            gaps,
            Feed(percent, nitrogen_forms(product)),
            feeding_class=feeding_class,
            present_ec_ms_cm=present_ec,
            present_n_mg_l=present_n,
            regime=filled.regime,
        )
        left = sum(
            (r.middle / gaps[e].target) ** 2 for e, r in dose.left_mg_l.items() if gaps[e].target
        )
        found.append((left, len(found), dose, product))
    if not found:
        return None
    _, _, dose, product = min(found, key=lambda f: f[:2])
    return dose, product


def _stock_figures(
    turn: Turn, found: Supplement, product: Product, volume_l: float
) -> dict[str, float] | None:
    """The stock that a dose too small for the scale is taken from; None where it is not."""
    amount = found.product_g_l / _grams_in_unit(product) * volume_l
    stock = _measuring(turn, product, amount, volume_l).stock if amount > 0 else None
    if stock is None:
        return None
    return {"product": stock.product_amount, "in_ml": stock.in_ml, "use_ml": stock.use_ml}


def _measuring(turn: Turn, product: Product, amount: float, volume_l: float) -> Measured:
    """How so much of a product is measured with the tools on record."""
    unit, owner = ("ml" if product.form == "liquid" else "g"), turn.owner
    step = None
    if owner is not None:
        step = owner.syringe_step_ml if unit == "ml" else owner.scale_step_g
    return measured(amount, unit, volume_l, step=step)


def _dose_lines(
    turn: Turn,
    dose: tuple[Supplement, Product] | None,
    short: dict[str, Missing],
    volume_l: float,
    *,
    fed: bool,
) -> list[str]:
    words, number = turn.words, turn.words.number
    by_feed = "yes" if fed else "no"
    if dose is None:
        both = "both" if len(short) > 1 else next(iter(short))
        return [words.say("supplement-none", kind=both, fed=by_feed)]
    found, product = dose
    amount = found.product_g_l / _grams_in_unit(product) * volume_l
    if amount <= 0:
        code = found.limited_by.replace("_", "-")
        both = "both" if len(short) > 1 else next(iter(short))
        if code:
            return [words.say(f"supplement-no-room-{code}")]
        return [words.say("supplement-none", kind=both, fed=by_feed)]
    how = _measuring(turn, product, amount, volume_l)
    lines = [
        words.say(
            "supplement-dose",
            amount=words.significant(amount),
            unit="ml" if product.form == "liquid" else "g",
            product=title(product, turn),
            volume=volume(turn, volume_l),
            brings=words.listed(
                [f"{e} {number(found.brings_mg_l.get(e, 0.0), 0)}" for e in ("Ca", "Mg")
                 if found.brings_mg_l.get(e)]
            ),
            ec=number(found.total_ec),
        ),
        measure_line(how, words),
    ]  # fmt: skip
    if found.limited_by:
        lines.append(words.say(f"supplement-cut-{found.limited_by.replace('_', '-')}"))
    left = [e for e, r in found.left_mg_l.items() if e in short and r.low > _NEGLIGIBLE_MG_L]
    if left and not found.limited_by:
        lines.append(words.say("supplement-left", what=words.listed(left)))
    lines.append(words.say("supplement-how"))
    return lines
