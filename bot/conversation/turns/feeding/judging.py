"""Short answers beside a dose: whether an amount is too much, home remedies, pets."""

from __future__ import annotations

from dataclasses import dataclass, replace
from math import floor, log10

from bot.conversation import answer as out
from bot.conversation.answering import respond, worked_out
from bot.conversation.turn import Turn
from bot.conversation.turns.feeding.doses import mix_asked_about
from bot.dosing.dose import ASSUMED_DENSITY_KG_L, HEAVIEST_TEASPOON_G, US_TEASPOON_ML, Dose
from bot.dosing.measuring import LEVEL_TEASPOON_G

#: Up to so much over what we would give is the same to a kitchen scale [1]; ours.
_ABOUT = 1.15
#: A rounded figure is not over its ceiling [1].
_OVER = 1.01
#: Answers that stand in the way of a figure.
_INSTEAD = ("no_feed", "refused")
#: Steps that say what was assumed of a feed.
_ASSUMPTIONS = ("full.", "form.", "density.")


@dataclass(frozen=True, slots=True)
class _Amount:
    """An amount in the unit of a dose; of powder in spoons, the likely and the most."""

    likely: float
    most: float


async def judge(turn: Turn) -> out.Answer:
    """Whether so much feed is too much for so much water, and what to do."""
    order = turn.order
    if order.amount is None:
        return turn.ask("ask-judge-measure")
    filled, on_record = mix_asked_about(turn)
    volume_l = filled.volume_l
    if volume_l is None:
        return turn.ask("ask-judge-volume")
    if filled.form is None:
        filled = replace(filled, form="liquid" if order.unit == "ml" else filled.form)
    if filled.analysis is None:
        return turn.ask("ask-judge-product")
    setting = replace(turn.setting, on_record=on_record)
    usual = respond(filled, setting)
    found = worked_out(filled, setting)
    if usual.kind in _INSTEAD or found is None:
        return usual
    request, dose = found
    amount = _in_unit_of(dose, order.amount, order.unit, request.density_kg_l)
    verdict = _verdict(amount, dose)
    words = turn.words
    full = dose.amount / dose.strength
    elements = {e: mg_l * amount.likely / dose.amount for e, mg_l in dose.elements_mg_l.items()}
    lines = [
        words.say(
            f"judge-{verdict}",
            times=words.significant(amount.likely / dose.most),
            most=words.significant(_down(dose.most)),
            usual=words.significant(dose.amount),
            unit=dose.unit,
            volume=turn.words.volume(volume_l),
        ),
        words.say(
            "judge-makes",
            about="no" if order.unit == dose.unit else "yes",
            amount=words.significant(amount.likely),
            unit=dose.unit,
            percent=words.significant(100 * amount.likely / full),
            n=words.significant(elements["N"]) if elements.get("N") else "none",
        ),
    ]
    if verdict in ("over", "perhaps-over") and order.given:
        lines.append(words.say("judge-rinse"))
    lines += [words.say("judge-spoons")] if order.unit == "tsp" and dose.unit == "g" else []
    taken = [w.text for w in usual.why if w.rule.startswith(_ASSUMPTIONS)]
    lines += [words.say("judge-taken", what="; ".join(taken))] if taken else []
    lines += [] if request.plants else [words.say("caution-plant-unknown")]
    lines += on_record.lines
    details = {
        "verdict": verdict, "amount": amount.likely, "unit": dose.unit, "most": dose.most,
        "usual": dose.amount, "strength": amount.likely / full, "elements_mg_l": elements,
    }  # fmt: skip
    return turn.tell("cautions", lines, details=details).model_copy(update={"why": usual.why})


def _verdict(amount: _Amount, dose: Dose) -> str:
    if amount.likely > _OVER * dose.most:
        return "over"
    if amount.most > _OVER * dose.most:
        return "perhaps-over"
    if amount.likely > _ABOUT * dose.amount:
        return "strong"
    return "fine" if amount.likely * _ABOUT >= dose.amount / 2 else "weak"


def _in_unit_of(dose: Dose, value: float, unit: str, density_kg_l: float | None) -> _Amount:
    """An amount as the dose counts it; a volume of powder goes by level spoons."""
    density = density_kg_l or ASSUMED_DENSITY_KG_L
    if unit == dose.unit:
        return _Amount(value, value)
    if dose.unit == "ml":
        ml = value * US_TEASPOON_ML if unit == "tsp" else value / density
        return _Amount(ml, ml)
    spoons = value if unit == "tsp" else value / US_TEASPOON_ML
    if dose.unit == "tsp":
        spoons = value / LEVEL_TEASPOON_G if unit == "g" else spoons
        return _Amount(spoons, spoons)
    return _Amount(spoons * LEVEL_TEASPOON_G, spoons * HEAVIEST_TEASPOON_G)


def _down(value: float) -> float:
    """A ceiling to two digits, never rounded up."""
    unit = 10.0 ** (floor(log10(value)) - 1)
    return floor(value / unit + 1e-9) * unit


async def remedy(turn: Turn) -> out.Answer:
    """No dose for what is no feed, and what to use instead."""
    return turn.refuse("refuse-remedy", what=turn.order.text, kind=turn.order.asks_kind or "other")


async def pets(turn: Turn) -> out.Answer:
    """What to keep from pets and children, and whom to call."""
    return turn.tell("cautions", [turn.words.say("pets-call"), turn.words.say("pets-keep")])


async def argued(turn: Turn) -> out.Answer:
    """To who holds with more, or less: why, and how to have it otherwise."""
    return turn.say("explain", "argue-stays")


async def pests(turn: Turn) -> out.Answer:
    """No dose of what kills pests or mould."""
    return turn.refuse("refuse-pests")


async def food(turn: Turn) -> out.Answer:
    """No feed for what is eaten."""
    return turn.refuse("refuse-food")


async def hurt(turn: Turn) -> out.Answer:
    """What to do where somebody got some of it, and whom to call."""
    return turn.say("cautions", "hurt-call")
