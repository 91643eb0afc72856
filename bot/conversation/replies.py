"""Laying out a reply for a phone in a wet hand: amount, measuring, why, what to mind."""

from __future__ import annotations

from collections.abc import Mapping
from math import ceil, floor, log10

from bot.conversation import answer as out
from bot.conversation.wording import Wording
from bot.dosing.conductivity import EcRange
from bot.dosing.dose import US_TEASPOON_ML, Dose, DoseRequest, OverLimit
from bot.dosing.measuring import KEEPS_DAYS, Measured, level_teaspoons, spoon_stock
from grammar import Reading

#: Cautions shown at once; the rest is behind a choice.
SHOWN_CAUTIONS = 3
#: The caution that is said before the amount, and those that say no more than it does.
OVER_LIMIT = "water-over-limit"
_SAID_WITH_IT = frozenset({OVER_LIMIT, "salty-water", "hard-water"})
#: Less of a water than this is not worth pouring in [1]; ours.
_LEAST_SHARE = 0.05
#: Errors of a tool that are shown [%]: above the one it cannot weigh so little; ours.
_LEAST_ERROR, _MOST_ERROR = 0.1, 50.0
#: From here on a scale of tenths shows whole grams only, as most do [g or ml]; ours.
_WHOLE = 100.0
#: More level spoons than this are not counted out [tsp]: a dozen quarter spoons; ours.
_MOST_SPOONS = 3.0
#: Less of a teaspoon than this nobody fills [1]; ours.
_LEAST_SPOON = 0.125
#: Rounding that is left out of the figures beside an amount [1]; ours.
_NEARLY = 0.05
#: An EC between one figure and so many times as much says nothing; ours.
_VAGUE_EC = 3.0
#: Elements in the one short line; micro elements are in the details.
_SHOWN_ELEMENTS = ("N", "P", "K", "Ca", "Mg", "S")


def dose_reply(
    request: DoseRequest,
    dose: Dose,
    why: list[out.Why],
    cautions: list[out.Caution],
    product_name: str,
    words: Wording,
    *,
    spoons_only: bool = False,
) -> str:
    """The reply to one dose, line by line."""
    first = [c.text for c in cautions if c.code == OVER_LIMIT]
    others = [c for c in cautions if not (first and c.code in _SAID_WITH_IT)]
    lines = [
        *first,
        _amount_line(request, dose, product_name, words),
        spoon_line(dose, words) if spoons_only else measure_line(dose, words),
        makes_line(dose, words),
        chain_line(dose, why, words),
        *(f"- {c.text}" for c in others[:SHOWN_CAUTIONS]),
    ]
    return "\n".join(line for line in lines if line)


def over_limit_line(over: OverLimit, volume_l: float, words: Wording) -> str:
    """That a water is too salty for the plants, and what to take instead."""
    own_l = over.share * volume_l
    unit = _last_digit(own_l) if own_l > 0 else 1.0
    return words.say(
        "caution-water-over-limit",
        alone="yes" if over.alone else "no",
        own=_range(over.own_ms_cm, words),
        total=_range(over.total_ms_cm, words),
        most=words.number(over.most_ms_cm),
        litres="none"
        if over.share < _LEAST_SHARE
        else words.volume(floor(own_l / unit + 1e-9) * unit),
        volume=words.volume(volume_l),
    )


def chain_line(dose: Dose, why: list[out.Why], words: Wording) -> str:
    """The steps to a dose in one line."""
    return words.say(
        "chain-target" if dose.full_strength_source == "target" else "chain",
        steps=_chained([w.text for w in why]),
        strength=f"{words.significant(dose.strength * 100)} %",
    )


def no_feed_reply(
    plants: str, count: int, others: str, words: Wording, span: tuple[int, int] | None = None
) -> str:
    """The reply where nothing is fed; `span` is the first and last month of the rest."""
    first = (
        words.say("no-feed-genus", plants=plants, count=count)
        if plants
        else words.say("no-feed-growth")
    )
    until = words.say("no-feed-until")
    if span is not None:
        names = words.months("wide")
        begin, end = names[span[0] - 1], names[span[1] - 1]
        until = words.say("no-feed-months", begin=begin, end=end)
    lines = [first, until, others]
    return "\n".join(line for line in lines if line)


def with_notes(text: str, reading: Reading, words: Wording) -> str:
    """A reply with what was read as something else, or not understood, below it."""
    lines = [text]
    if reading.read_as:
        pairs = [
            words.say("read-as-pair", text=_short(r.text), meaning=_meant(r.meaning, words))
            for r in reading.read_as[:4]
        ]
        lines.append(words.say("read-as", pairs=words.listed(pairs)))
    if reading.unknown:
        texts = []
        for unknown in reading.unknown[:5]:
            code = "not-used-maybe" if unknown.suggestions else "not-used-one"
            suggestions = words.listed(list(unknown.suggestions[:3]), either=True)
            texts.append(words.say(code, text=_short(unknown.text), suggestions=suggestions))
        lines.append(words.say("not-used", texts=", ".join(texts)))
    return "\n".join(lines)


def _meant(meaning: str, words: Wording) -> str:
    """What a word was taken for, in the language: a medium, a water, otherwise as it was read."""
    codes = (f"medium-{meaning}", f"water-{meaning}", f"meant-{meaning}")
    return next((words.say(code) for code in codes if words.has(code)), meaning)


def _short(text: str) -> str:
    return text if len(text) <= 40 else text[:39] + "…"


def _chained(texts: list[str]) -> str:
    """Steps as a chain: factors follow without a comma."""
    joined = ""
    for text in texts:
        joined += text if not joined else f" {text}" if text.startswith("×") else f", {text}"
    return joined


def volume_text(litres: float, words: Wording) -> str:
    """A volume as a jug or a syringe shows it."""
    return words.volume(litres)


def _amount_line(request: DoseRequest, dose: Dose, name: str, words: Wording) -> str:
    return words.say(
        "dose-amount",
        amount=shown_amount(dose, words),
        unit=dose.unit,
        product=product_text(request, name, words),
        volume=volume_text(request.volume_l, words),
    )


def product_text(request: DoseRequest, name: str, words: Wording) -> str:
    """What is dosed: its numbers and form, behind its name where it has one."""
    product = words.say(
        "product",
        analysis="-".join(words.number(a) for a in request.analysis),
        form=request.form or "none",
    )
    return f"{name} ({product})" if name else product


def shown_amount(dose: Dose, words: Wording) -> str:
    """As the tool can show it, or to two digits; never rounded up over a ceiling."""
    if dose.unit == "tsp" and dose.amount < _LEAST_SPOON:
        return "< 1/8"
    return words.number(_rounded(dose), 6)


def _rounded(dose: Dose) -> float:
    """The amount as it is said [g, ml or tsp]."""
    coarse = dose.measuring_step is None or dose.batch_l is not None
    unit = _last_digit(dose.amount) if coarse else dose.measuring_step or 1.0
    unit = max(unit, 1.0) if dose.amount >= _WHOLE else unit
    units = round(dose.amount / unit)
    if units * unit > dose.most * (1 + 1e-9):
        units = floor(dose.amount / unit + 1e-9)
    return units * unit


def _said_share(dose: Dose) -> float:
    """How much of the exact amount is said [1]; 1 where that is nearly all."""
    if dose.unit == "tsp" or dose.amount <= 0:
        return 1.0
    share = _rounded(dose) / dose.amount
    return share if abs(share - 1) > _NEARLY else 1.0


def _last_digit(value: float) -> float:
    """The place of the second digit that counts, at most 1."""
    return 1.0 if value >= 10 else float(10.0 ** (floor(log10(value)) - 1))


def measure_line(dose: Dose | Measured, words: Wording) -> str:
    """How to measure an amount: at once, through a stock, or only in a larger batch."""
    if dose.relative_error is None or dose.measuring_step is None:
        return _by_spoons(dose.amount, words)
    step = words.number(dose.measuring_step)
    # an error as large as the amount is no figure, nor one that no scale holds
    error = max(100 * dose.relative_error, _LEAST_ERROR)
    error_text = "none" if error > _MOST_ERROR else words.significant(error)
    weighed = dose.unit == "g"
    if dose.stock is not None:
        return words.say(
            "measure-stock" if weighed else "measure-stock-liquid",
            step=step,
            error=error_text,
            product=words.number(dose.stock.product_amount),
            bottle=words.number(dose.stock.in_ml, 0),
            use=words.number(dose.stock.use_ml, 1),
            days=dose.stock.keeps_days,
            batch=volume_text(ceil((dose.batch_l or 0) * 2) / 2, words),
        )
    if dose.batch_l is not None:
        return words.say("measure-batch", error=error_text, batch=volume_text(dose.batch_l, words))
    line = words.say("measure-weigh" if weighed else "measure-syringe", step=step, error=error_text)
    return " ".join(filter(None, (line, _cross_check(dose, words))))


def _cross_check(dose: Dose | Measured, words: Wording) -> str:
    """Powder in level teaspoons; empty for a liquid, below an eighth of one, and for many."""
    spoons = level_teaspoons(dose.amount) if dose.unit == "g" else None
    if spoons is None or spoons > _MOST_SPOONS:
        return ""
    many = "yes" if spoons > 1 else "no"
    return words.say("measure-cross-check", spoons=words.eighths(spoons), many=many)


def spoon_line(dose: Dose, words: Wording) -> str:
    """How to measure an amount with nothing but spoons at hand."""
    if dose.unit == "tsp":
        return measure_line(dose, words)
    return " ".join(filter(None, (words.say("on-record-spoons"), _cross_check(dose, words))))


def last_spoons(dose: Dose, words: Wording) -> str:
    """Whether a teaspoon can measure a dose, and how much of one it is."""
    if dose.unit == "tsp":
        return measure_line(dose, words)
    spoons = level_teaspoons(dose.amount) if dose.unit == "g" else dose.amount / US_TEASPOON_ML
    few = spoons is None or spoons < _LEAST_SPOON
    told = "none" if few else words.eighths(spoons or 0.0)
    many = spoons is not None and spoons > _MOST_SPOONS
    return words.say("last-spoon", spoons="many" if many else told, unit=dose.unit)


def _by_spoons(teaspoons: float, words: Wording) -> str:
    """How to measure what the label counts in spoons."""
    stock = spoon_stock(teaspoons)
    if stock is None:
        return words.say("measure-spoon")
    return words.say(
        "measure-spoon-stock",
        spoons=words.eighths(stock.teaspoons),
        bottle=words.number(stock.in_ml, 0),
        use=words.number(stock.use_ml, 1),
        days=KEEPS_DAYS,
    )


def element_texts(mg_l: Mapping[str, float], words: Wording) -> list[str]:
    """Elements with their mg/l, those that are shown."""
    return [f"{e} {words.significant(mg_l[e])}" for e in _SHOWN_ELEMENTS if mg_l.get(e)]


def makes_line(dose: Dose, words: Wording) -> str:
    """What the mix holds, and the EC it adds; empty for a feed without figures."""
    share = _said_share(dose)  # 0.89 ml that a syringe shows as 0.8 brings less
    elements = element_texts({e: mg * share for e, mg in dose.elements_mg_l.items()}, words)
    if not elements:
        return ""
    own = dose.ec
    vague = own is None or own.high >= _VAGUE_EC * own.low
    ec = "none"
    if own is not None and not vague:
        ec = _range(EcRange(own.low * share, own.high * share), words)
    return words.say("makes", elements=words.figures(elements), ec=ec)


def _range(ec: EcRange, words: Wording) -> str:
    """'0.9', or '0.64–0.9' where it is not one figure as shown."""
    low, high = words.number(ec.low), words.number(ec.high)
    return low if low == high else f"{low}–{high}"


def hint(answer: out.Answer, words: Wording) -> str:
    """What else would make the answer to a dose better; empty where nothing would."""
    if answer.kind != "dose":
        return ""
    said, known = answer.understood, (answer.details or {}).get("known", [])
    missing = [
        words.say(f"hint-{name}")
        for name, value in (
            ("plant", said.genera),
            ("medium", said.medium),
            ("label", said.label_rate or said.target_n_mg_l or said.target_ec_ms_cm),
            ("water", said.water),
        )
        if not value and name not in known
    ]
    return words.say("missing-hint", items=words.listed(missing)) if missing else ""
