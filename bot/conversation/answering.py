"""The road from a reading to an `Answer`: what stands in the way of a dose, and the dose."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import asdict, dataclass, replace
from datetime import date
from typing import Any

from bot.conversation import answer as out
from bot.conversation.replies import (
    OVER_LIMIT,
    dose_reply,
    no_feed_reply,
    over_limit_line,
    with_notes,
)
from bot.conversation.wording import METRIC, Wording, wording
from bot.dosing.conductivity import NitrogenForms
from bot.dosing.dose import (
    Dose,
    DoseRequest,
    Rate,
    pure_water_ec_ms_cm,
    water_ec_by_hardness,
    work_out,
)
from bot.dosing.label import elemental_percent
from bot.dosing.plants import Genus, named, rest_span, resting, types_of
from bot.dosing.season import season_of
from bot.dosing.strength import GROWING, Step
from bot.dosing.water import Range
from bot.dosing.water import Water as WaterIons
from grammar import Conflict, Reading

#: What is answered beside a dose with nothing on record, and what takes records.
TOPICS = frozenset({
    "meter", "water_suits", "water_mix", "stock", "together", "rescue", "explain", "help",
    "judge", "reach", "remedy", "pets", "food", "pests", "hurt", "spill",
    "leftover", "alarm", "convert", "pour", "brings", "most_ec", "nitrogen_limit",
})  # fmt: skip
NEEDS_RECORDS = frozenset({
    "water", "supplement", "salts", "blend", "compare", "compare_labels", "plan", "plants", "shelf",
    "fed", "clear", "flush", "reading", "history", "add", "product", "done", "export", "import",
    "picture_year", "picture_salts",
})  # fmt: skip
#: The kind of an answer that is an apology for a fault of ours.
FAULT = "fault"
#: More than any home mixes at once [L].
MOST_L = 10_000.0
#: Less than this nobody pours, and weaker than this is clear water [L], [1].
LEAST_L = 0.005
WEAKEST = 0.001
#: Above this a label rate is a slip of the pen [g, ml or tsp in a litre].
MOST_PER_LITRE = 100.0
LEAST_PER_LITRE = 0.001
#: With less nitrogen than this no dose is computed from it [% of mass].
LEAST_N_PERCENT = 1.0


@dataclass(frozen=True, slots=True)
class OnRecord:
    """What the records add to a request beyond what its reading can hold.

    `label_from` is 'product' where the rate is that of the shelf; `spoons_only` where nothing finer
    is at hand to measure with; `some_unknown` where the kind of
    some plants is not known; `nitrogen` and `water` hold the forms of a label and the ions of a
    report; `lines` say in the reply what was taken from the records.
    """

    label_from: str = "label"
    product_name: str = ""
    density_kg_l: float | None = None
    scale_step_g: float | None = None
    syringe_step_ml: float | None = None
    spoons_only: bool = False
    some_unknown: bool = False
    nitrogen: NitrogenForms | None = None
    water: WaterIons | None = None
    lines: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class Setting:
    """What holds for a conversation: the day, the hemisphere, language and measures."""

    today: date
    south: bool = False
    language: str | None = None
    measure: str = "us"
    units: str | None = None
    on_record: OnRecord = OnRecord()


def respond(reading: Reading, setting: Setting) -> out.Answer:
    """Answer a request for a dose that was read already.

    Parameters
    ----------
    reading : what was said, with what is on record filled in
    setting : the day and the place it is asked

    Returns
    -------
    Answer
    """
    units = setting.units or reading.measure_taken or METRIC
    words = wording(reading.language, units)
    said, reading = reading, by_element(reading)
    for settle in (_refusal, _help, _doubt, _rest, _of_element, _missing):
        settled = settle(reading, setting, words)
        if settled is not None:
            return settled
    return _dose(reading, setting, words).model_copy(update={"understood": understood(said)})


# --- what stands in the way of a dose, in the order it is looked at -----------------------


def _refusal(reading: Reading, setting: Setting, words: Wording) -> out.Answer | None:
    if reading.problems:
        problem = reading.problems[0]
        text = words.say(f"refuse-{problem.code}", text=problem.text[:40])
        return answer_to(reading, "refused", text)
    for test, code in _IMPOSSIBLE:
        if test(reading):
            return answer_to(reading, "refused", words.say(code, **_figures(reading, words)))
    return None


def _over_100(reading: Reading) -> bool:
    return sum(reading.analysis or ()) + sum(reading.extras.values()) > 100


def _nothing(target: float | None) -> bool:
    return target is not None and target < 0.001


def _absurd_label(reading: Reading) -> bool:
    rate = reading.label_rate
    return rate is not None and not LEAST_PER_LITRE <= rate.per_litre <= MOST_PER_LITRE


_IMPOSSIBLE: tuple[tuple[Callable[[Reading], bool], str], ...] = (
    (lambda r: r.form == "granules", "refuse-granules"),
    (lambda r: r.volume_l is not None and r.volume_l < LEAST_L, "refuse-volume-zero"),
    (lambda r: (r.volume_l or 0) > MOST_L, "refuse-volume-absurd"),
    (_over_100, "refuse-analysis-over"),
    (lambda r: r.analysis is not None and not any(r.analysis) and not r.extras,
     "refuse-analysis-zero"),
    (lambda r: r.strength is not None and r.strength < WEAKEST, "refuse-strength-zero"),
    (lambda r: _nothing(r.target_n_mg_l) or _nothing(r.target_ec_ms_cm), "refuse-target-zero"),
    (_absurd_label, "refuse-label-absurd"),
)  # fmt: skip


def _figures(reading: Reading, words: Wording) -> dict[str, str]:
    rate = reading.label_rate
    return {
        "volume": words.volume(reading.volume_l or 0),
        "analysis": label_said(reading.analysis or (), reading.extras, words),
        "rate": words.number(rate.per_litre) if rate else "",
        "unit": rate.unit if rate else "",
    }


def label_said(analysis: Sequence[float], extras: Mapping[str, float], words: Wording) -> str:
    """The figures of a label: '60-20-19 + Ca 10 %'."""
    numbers = "-".join(words.number(part) for part in analysis)
    further = [f"{element} {words.number(share)} %" for element, share in extras.items()]
    return " + ".join(t for t in (numbers, *further) if t)


def _help(reading: Reading, setting: Setting, words: Wording) -> out.Answer | None:
    if reading.says_something:
        return None
    numbers = [u.text for u in reading.unknown if any(c.isdigit() for c in u.text)]
    if numbers and not all(_with_its_unit(n) for n in numbers):
        return asking(reading, words.say("ask-lone_number", texts=numbers[0][:40]), words)
    return answer_to(reading, "help", words.say("help"))


def _with_its_unit(text: str) -> bool:
    """Whether a number has a word behind it: to ask for its unit would ask nothing."""
    words = text.split()
    figures = (i for i, word in enumerate(words) if any(c.isdigit() for c in word))
    return any(words[i + 1][0].isalpha() for i in figures if i + 1 < len(words))


def _doubt(reading: Reading, setting: Setting, words: Wording) -> out.Answer | None:
    if not reading.conflicts:
        return None
    questions = [_question(c, words) for c in reading.conflicts[:2]]
    return asking(reading, " ".join(dict.fromkeys(questions)), words)


def _question(conflict: Conflict, words: Wording) -> str:
    texts = conflict.texts
    several = [words.say("not-used-one", text=t) for t in texts[:4]]
    shown = words.listed(several) if len(texts) > 1 else texts[0]
    of_slot = f"ask-{conflict.code}-{conflict.slot}"
    return words.say(of_slot if words.has(of_slot) else f"ask-{conflict.code}", texts=shown)


def _season(reading: Reading, setting: Setting) -> tuple[int, str]:
    """The month and season meant: as said, otherwise today's."""
    month = reading.month or setting.today.month
    return month, reading.season or season_of(month, south=setting.south)


def _rest(reading: Reading, setting: Setting, words: Wording) -> out.Answer | None:
    if reading.growth == "resting":
        why = [Step("rest.growth", 0.0, "common practice, no source")]
        return _no_feed(reading, words, (), why, "")
    plants = named(reading.genera)
    month, season = _season(reading, setting)
    asleep = resting(plants, month=month, season=season, south=setting.south)
    if not asleep:
        return None
    why = [Step("rest.genus", 0.0, plant.rest_source) for plant in asleep]
    others = tuple(p for p in plants if p not in asleep)
    span = rest_span(asleep, month=month, south=setting.south)
    said = _for_others(reading, setting, words, others)
    return _no_feed(reading, words, asleep, why, said, span)


def _for_others(
    reading: Reading, setting: Setting, words: Wording, others: tuple[Genus, ...]
) -> str:
    """What the plants that do not rest would get from the same line, in one sentence."""
    if not others or _lacking(reading):
        return ""
    try:
        dose = work_out(_request(reading, setting, others))
    except ValueError:
        return ""
    return words.say(
        "no-feed-others",
        plants=words.listed([p.name for p in others]),
        amount=words.significant(dose.amount),
        unit=dose.unit,
        volume=words.volume(reading.volume_l or 0),
    )


def _no_feed(
    reading: Reading,
    words: Wording,
    asleep: tuple[Genus, ...],
    why: list[Step],
    others: str,
    span: tuple[int, int] | None = None,
) -> out.Answer:
    plants = words.listed([p.name for p in asleep])
    text = no_feed_reply(plants, len(asleep), others, words, span)
    names = [p.name for p in asleep] or [""]
    steps = [
        out.Why(
            rule=s.rule,
            factor=0.0,
            text=words.say(f"why-{s.rule.replace('.', '-')}", plants=name),
            source=s.source,
        )
        for s, name in zip(why, names, strict=True)
    ]
    code = "clear-water-only"
    caution = out.Caution(code=code, text=words.say(f"caution-{code}"))
    return answer_to(reading, "no_feed", text, why=steps, cautions=[caution])


def _lacking(reading: Reading) -> str | None:
    """The code of the question for what no dose can do without."""
    if reading.volume_l is None:
        return "ask-volume" if reading.analysis else "ask-volume-and-product"
    if reading.analysis is None:
        return "ask-product-with-rate" if reading.label_rate else "ask-product"
    rate = reading.label_rate
    if reading.analysis[0] < LEAST_N_PERCENT and (rate is None or reading.target_n_mg_l):
        return "ask-label-rate"
    if rate is not None and rate.unit == "ml" and reading.form == "powder":
        return "ask-form-unit"
    return None


def by_element(reading: Reading) -> Reading:
    """A target of another element as what brings it: nitrogen, or a strength where there is none.

    As it is where the label does not show the element, or nothing to hold it to is known.
    """
    target, analysis = reading.target_element, reading.analysis
    stands = reading.target_n_mg_l is not None or reading.target_ec_ms_cm is not None
    if target is None or analysis is None or stands:
        return reading
    percent = elemental_percent(*analysis, reading.extras)
    share, rate = percent.get(target.element, 0.0), reading.label_rate
    if share <= 0:
        return reading
    left = tuple(u for u in reading.unknown if u.text != target.text)
    if analysis[0] >= LEAST_N_PERCENT:
        n_mg_l = target.mg_l * analysis[0] / share
        return replace(reading, target_n_mg_l=n_mg_l, target_element=None, unknown=left)
    if rate is None or rate.unit != "g":
        return reading
    strength = target.mg_l / (10 * share) / rate.per_litre
    return replace(reading, strength=strength, exact=True, target_element=None, unknown=left)


def _unreckoned(reading: Reading) -> str | None:
    """The code of the question where a target of another element is left; see `by_element`."""
    target, analysis = reading.target_element, reading.analysis
    stands = reading.target_n_mg_l is not None or reading.target_ec_ms_cm is not None
    if target is None or analysis is None or stands or reading.volume_l is None:
        return None
    shown = elemental_percent(*analysis, reading.extras).get(target.element, 0.0) > 0
    return "ask-label-rate" if shown else "ask-element-none"


def _of_element(reading: Reading, setting: Setting, words: Wording) -> out.Answer | None:
    code, target = _unreckoned(reading), reading.target_element
    if code is None or target is None:
        return None
    values = {"element": target.element} if code == "ask-element-none" else {}
    return asking(reading, words.say(code, **values), words)


def _missing(reading: Reading, setting: Setting, words: Wording) -> out.Answer | None:
    code = _lacking(reading)
    by_ec = reading.target_ec_ms_cm is not None and reading.target_n_mg_l is None
    if code is None and by_ec and (reading.target_ec_ms_cm or 0) <= _least_ec(reading, setting):
        own = None if _water_ec(reading) is not None else _ec_by_hardness(reading)
        if own is not None and setting.on_record.water is None:
            low, high = words.number(own.low), words.number(own.high)
            return asking(reading, words.say("ask-ec-perhaps", low=low, high=high), words)
        code = "ask-ec-reached"
    return None if code is None else asking(reading, words.say(code), words)


def _water_ec(reading: Reading) -> float | None:
    water = reading.water
    if water is None:
        return None
    return water.ec_ms_cm if water.ec_ms_cm is not None else pure_water_ec_ms_cm(water.kind)


def _least_ec(reading: Reading, setting: Setting) -> float:
    """EC of the water, as it is subtracted from a target [mS/cm]."""
    if setting.on_record.water is not None:
        return setting.on_record.water.ec_ms_cm
    told = _water_ec(reading)
    if told is None and (estimated := _ec_by_hardness(reading)) is not None:
        return estimated.middle
    return told or 0.0


def _ec_by_hardness(reading: Reading) -> Range | None:
    water = reading.water
    if water is None:
        return None
    return water_ec_by_hardness(water.hardness_mg_l_caco3, water.kind)


# --- the dose ------------------------------------------------------------------------------


def _request(reading: Reading, setting: Setting, plants: tuple[Genus, ...]) -> DoseRequest:
    assert reading.volume_l is not None  # _missing has asked for both
    assert reading.analysis is not None
    rate, water, known = reading.label_rate, reading.water, setting.on_record
    month, season = _season(reading, setting)
    types = resting(types_of(plants), month=month, season=season, south=setting.south)
    return DoseRequest(
        volume_l=reading.volume_l,
        analysis=reading.analysis,
        extras=reading.extras,
        form=reading.form or ("liquid" if rate and rate.unit == "ml" else None),
        label_rate=Rate(rate.per_litre, rate.unit) if rate else None,
        label_from=known.label_from,
        density_kg_l=known.density_kg_l,
        strength=reading.strength,
        exact=reading.exact,
        regime=reading.regime,
        season=season,
        medium=reading.medium,
        growth=reading.growth,
        plants=plants,
        some_unknown=known.some_unknown,
        types_rest=bool(types) and reading.growth not in GROWING,
        target_n_mg_l=reading.target_n_mg_l,
        target_ec_ms_cm=reading.target_ec_ms_cm,
        water_kind=water.kind if water else None,
        water_ec_ms_cm=_water_ec(reading),
        water=known.water,
        nitrogen=known.nitrogen,
        scale_step_g=reading.scale_step_g or known.scale_step_g,
        syringe_step_ml=known.syringe_step_ml,
        hardness_mg_l_caco3=water.hardness_mg_l_caco3 if water else None,
        alkalinity_mg_l_caco3=water.alkalinity_mg_l_caco3 if water else None,
        called_hard=reading.hard_water,
        ailing=bool(reading.ailing),
    )


def worked_out(reading: Reading, setting: Setting) -> tuple[DoseRequest, Dose] | None:
    """The dose behind an answer as figures; None where something for it is lacking."""
    if reading.conflicts or reading.problems or _lacking(reading) is not None:
        return None
    reading = by_element(reading)
    if _unreckoned(reading) is not None:
        return None
    try:
        request = _request(reading, setting, named(reading.genera))
        return request, work_out(request)
    except ValueError:
        return None


def _dose(reading: Reading, setting: Setting, words: Wording) -> out.Answer:
    request = _request(reading, setting, named(reading.genera))
    dose = work_out(request)
    steps = list(dose.steps)
    if reading.measure_taken:
        steps.insert(
            0, Step(f"measure.{reading.measure_taken}", 1.0, "assumed, as no country was said")
        )
    by_hardness = any(s.rule == "ec.water_hardness" for s in steps)
    own = _ec_by_hardness(reading) if by_hardness else None
    taken = {} if own is None else {
        name: words.number(value)
        for name, value in (("low", own.low), ("high", own.high), ("middle", own.middle))
    }  # fmt: skip
    if any(s.rule == "ec.water_known" for s in steps):
        taken = {
            "own": words.number(_least_ec(reading, setting)),
            "wanted": words.number(reading.target_ec_ms_cm or 0.0),
        }
    why = [
        out.Why(
            rule=s.rule,
            factor=s.factor,
            text=words.say(
                f"why-{s.rule.replace('.', '-')}", factor=words.factor(s.factor), **taken
            ),
            source=s.source,
        )
        for s in steps
    ]
    over = dose.over_limit
    cautions = [
        out.Caution(
            code=c.code,
            text=words.say(f"caution-{c.code}")
            if over is None or c.code != OVER_LIMIT
            else over_limit_line(over, request.volume_l, words),
        )
        for c in dose.cautions
    ]
    known = setting.on_record
    text = dose_reply(
        request, dose, why, cautions, known.product_name, words, spoons_only=known.spoons_only
    )
    text = "\n".join((text, *setting.on_record.lines))
    return answer_to(reading, "dose", text, dose=_figures_of(dose), why=why, cautions=cautions)


def _figures_of(dose: Dose) -> out.Dose:
    stock = None
    if dose.stock is not None:
        key = "weigh_g" if dose.stock.unit == "g" else "take_ml"
        stock = out.Stock(
            in_ml=dose.stock.in_ml,
            use_ml=dose.stock.use_ml,
            **{key: dose.stock.product_amount},
        )
    return out.Dose(
        amount=dose.amount,
        unit=dose.unit,
        per_litre=dose.per_litre,
        strength=dose.strength,
        full_strength_source=dose.full_strength_source,
        elements_mg_l=dict(dose.elements_mg_l),
        ec_ms_cm=out.Range(low=dose.ec.low, high=dose.ec.high) if dose.ec else None,
        relative_error=dose.relative_error,
        stock=stock,
    )


# --- the answer ------------------------------------------------------------------------------


def asking(
    reading: Reading, question: str, words: Wording, choices: Sequence[str] = ()
) -> out.Answer:
    """An answer that is a question, with answers to choose from where there are some."""
    return answer_to(reading, "ask", question, question=question, choices=choices)


def answer_to(
    reading: Reading,
    kind: str,
    text: str,
    *,
    dose: out.Dose | None = None,
    why: list[out.Why] | None = None,
    cautions: list[out.Caution] | None = None,
    question: str | None = None,
    choices: Sequence[str] = (),
    details: dict[str, Any] | None = None,
    file: out.File | None = None,
) -> out.Answer:
    """An answer of a kind, with what was understood and what was not."""
    words = wording(reading.language, METRIC)  # as `respond` has it: loaded once, not twice
    return out.Answer(
        message=reading.text,
        kind=kind,
        language=reading.language,
        understood=understood(reading),
        read_as=[out.ReadAs(text=r.text, meaning=r.meaning) for r in reading.read_as],
        unknown=[out.Unknown(text=u.text, suggestions=list(u.suggestions))
                 for u in reading.unknown],
        dose=dose,
        why=why or [],
        cautions=cautions or [],
        ask=question,
        choices=list(choices),
        details=details,
        file=file,
        reply=text if kind in ("help", "refused", FAULT) else with_notes(text, reading, words),
    )  # fmt: skip


def understood(reading: Reading) -> out.Understood:
    """What was said, in the names of the contract."""
    water, rate = reading.water, reading.label_rate
    return out.Understood(
        volume_l=reading.volume_l,
        analysis=reading.analysis,
        extras=reading.extras,
        form=reading.form,
        strength=reading.strength,
        exact=reading.exact,
        regime=reading.regime,
        medium=reading.medium,
        season=reading.season,
        month=reading.month,
        growth=reading.growth,
        genus=reading.genus,
        genera=list(reading.genera),
        count=reading.count,
        water=out.Water(**asdict(water)) if water else None,
        label_rate=out.LabelRate(per_litre=rate.per_litre, unit=rate.unit) if rate else None,
        target_n_mg_l=reading.target_n_mg_l,
        target_ec_ms_cm=reading.target_ec_ms_cm,
    )
