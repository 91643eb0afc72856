"""Short answers beside a dose: whether an amount is too much, home remedies, pests."""

from __future__ import annotations

from dataclasses import dataclass, replace
from math import floor, log10

from bot.conversation import answer as out
from bot.conversation.answering import OnRecord, respond, worked_out
from bot.conversation.collection import pick
from bot.conversation.replies import (
    chain_line,
    last_spoons,
    makes_line,
    measure_line,
    shown_amount,
)
from bot.conversation.turn import Turn, day_past
from bot.conversation.turns.feeding.doses import (
    GIVEN,
    counts_still,
    last_figures,
    mix_asked_about,
    mix_given,
)
from bot.conversation.turns.standing import rescue_log
from bot.dosing.concentration import liquid_ml
from bot.dosing.dose import (
    ASSUMED_DENSITY_KG_L,
    HEAVIEST_TEASPOON_G,
    US_TEASPOON_ML,
    Dose,
    DoseRequest,
)
from bot.dosing.measuring import LEVEL_TEASPOON_G
from bot.records import log
from bot.records.models import Plant
from grammar import Reading

#: Up to so much over what we would give is the same to a kitchen scale [1]; ours.
_ABOUT = 1.15
#: A rounded figure is not over its ceiling [1].
_OVER = 1.01
#: Verdicts that it is, or may be, over the most.
_TOO_MUCH = ("over", "perhaps-over")
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
    if turn.order.amount is None:
        return turn.ask("ask-judge-measure")
    answer = _judge(turn, *_mix(turn))
    if not turn.order.given or "verdict" not in (answer.details or {}):
        return answer
    keep_given(turn)
    if (answer.details or {})["verdict"] not in _TOO_MUCH:
        await turn.keep()
        return answer
    return await _keep_overfed(turn, answer)


def _mix(turn: Turn) -> tuple[Reading, OnRecord]:
    """The mix that is judged; one that was given goes to all plants where none were named."""
    if turn.order.text == "vessel":  # how much that holds nobody said
        return turn.reading, OnRecord()
    if turn.order.given and turn.reading.volume_l is not None:
        filled, on_record = mix_given(turn)
        if filled.analysis is not None:
            return filled, on_record
    return mix_asked_about(turn)


async def overdone(turn: Turn) -> out.Answer:
    """More than usual was given, without a figure: the safe side."""
    return await _keep_overfed(turn, turn.say("cautions", "overfed-told"))


async def _keep_overfed(turn: Turn, answer: out.Answer) -> out.Answer:
    """The answer, with what the plants had written down: it is rinsed out before they are fed."""
    plants = _reached(turn)
    if not plants:
        return answer
    on = day_past(turn.order.when, turn.today)
    turn.keep_plants(plants)
    async with turn.writing() as told:
        await log.record(told, rescue_log.overfed(plants, on))
    line = rescue_log.overfed_line(turn, plants, on)
    hint = turn.words.say("overfed-undo")
    return answer.model_copy(
        update={
            "reply": f"{answer.reply}\n{line} {hint}",
            "choices": [*answer.choices, "undo"],
            "details": {**(answer.details or {}), "overfed": [p.id for p in plants]},
        }
    )


def _reached(turn: Turn) -> list[Plant]:
    """The plants a feed went to; all of them where nobody said which."""
    found = pick(turn.order.target, turn.collection, turn.last_plants)
    return found if found or turn.order.target.named else list(turn.collection.plants)


def _judge(turn: Turn, filled: Reading, on_record: OnRecord) -> out.Answer:
    order = turn.order
    if filled.volume_l is None:
        code = "ask-judge-volume-given" if order.given else "ask-judge-volume"
        return turn.ask(code)
    if filled.analysis is None:
        return turn.ask("ask-judge-product")
    found = _judged(turn, filled, on_record)
    if isinstance(found, out.Answer):
        return found
    words, dose, amount = turn.words, found.dose, found.amount
    lines = [*_verdict_lines(turn, found, filled.volume_l or 0.0)]
    if found.too_much and order.given:
        lines.append(words.say("judge-rinse"))
    lines += [words.say("judge-spoons")] if order.unit == "tsp" and dose.unit == "g" else []
    taken = [w.text for w in found.usual.why if w.rule.startswith(_ASSUMPTIONS)]
    lines += [words.say("judge-taken", what="; ".join(taken))] if taken else []
    lines += [] if found.request.plants else [words.say("caution-plant-unknown")]
    lines += on_record.lines
    details = {
        "verdict": found.verdict, "amount": amount.likely, "unit": dose.unit, "most": dose.most,
        "usual": dose.amount, "strength": found.strength, "elements_mg_l": found.elements_mg_l,
    }  # fmt: skip
    return turn.tell("cautions", lines, details=details).model_copy(update={"why": found.usual.why})


@dataclass(frozen=True, slots=True)
class _Judged:
    """An amount beside the dose that we would give; `usual` is the answer with that dose."""

    usual: out.Answer
    request: DoseRequest
    dose: Dose
    amount: _Amount
    verdict: str

    @property
    def too_much(self) -> bool:
        """Whether it is, or may be, over the most."""
        return self.verdict in _TOO_MUCH

    @property
    def strength(self) -> float:
        """Of full strength [1]."""
        return self.amount.likely * self.dose.strength / self.dose.amount

    @property
    def elements_mg_l(self) -> dict[str, float]:
        """What the mix holds [mg/L]."""
        times = self.amount.likely / self.dose.amount
        return {e: mg_l * times for e, mg_l in self.dose.elements_mg_l.items()}


def _judged(turn: Turn, filled: Reading, on_record: OnRecord) -> _Judged | out.Answer:
    """The amount of the order judged; our answer instead of it where there is no dose."""
    order = turn.order
    if filled.form is None and order.unit == "ml":
        filled = replace(filled, form="liquid")
    setting = replace(turn.setting, on_record=on_record)
    usual = respond(filled, setting)
    found = worked_out(filled, setting)
    if usual.kind in _INSTEAD or found is None:
        return usual
    request, dose = found
    amount = _in_unit_of(dose, order.amount or 0.0, order.unit, request.density_kg_l)
    return _Judged(usual, request, dose, amount, _verdict(amount, dose))


def _verdict_lines(turn: Turn, found: _Judged, volume_l: float) -> list[str]:
    """Whether it is too much, and how strong it is."""
    words, dose, amount = turn.words, found.dose, found.amount
    n = found.elements_mg_l.get("N")
    return [
        words.say(
            f"judge-{found.verdict}",
            times=words.significant(amount.likely / dose.most),
            most=words.significant(_down(dose.most)),
            usual=words.significant(dose.amount),
            unit=dose.unit,
            volume=words.volume(volume_l),
        ),
        words.say(
            "judge-makes",
            about="no" if turn.order.unit == dose.unit else "yes",
            amount=words.significant(amount.likely),
            unit=dose.unit,
            percent=words.significant(100 * found.strength),
            n=words.significant(n) if n else "none",
        ),
    ]


def too_much(turn: Turn, filled: Reading, on_record: OnRecord) -> list[str]:
    """That the amount of the order is over the most, or may be; nothing where it is not."""
    found = _judged(turn, filled, on_record)
    if isinstance(found, out.Answer) or not found.too_much:
        return []
    words, dose = turn.words, found.dose
    most = words.significant(_down(dose.most))
    volume = words.volume(filled.volume_l or 0.0)
    sure = "yes" if found.verdict == "over" else "no"
    return [words.say("brings-over", sure=sure, most=most, unit=dose.unit, volume=volume)]


def given(turn: Turn) -> tuple[float | None, list[str]]:
    """The strength of a feed that was given by amount and volume [1], and what is wrong with it.

    Nothing where no amount was told; the strength is None where it is not known.
    """
    if turn.order.amount is None or turn.reading.volume_l is None:
        return None, []
    filled, on_record = mix_given(turn)
    if filled.analysis is None:
        return None, [turn.words.say("judge-unknown-feed")]
    found = _judged(turn, filled, on_record)
    if isinstance(found, out.Answer):
        return None, []
    lines = _verdict_lines(turn, found, turn.reading.volume_l) if found.too_much else []
    return found.strength, [*lines, turn.words.say("judge-rinse")] if lines else []


def too_strong(turn: Turn) -> bool:
    """Whether a feed that is told was too strong, by its amount or over full strength."""
    strength = turn.reading.strength
    return (strength is not None and strength > _OVER) or bool(given(turn)[1])


def keep_given(turn: Turn) -> None:
    """Remember that an amount was given in so much water, for 'was that too strong?'."""
    if turn.order.amount is not None and turn.reading.volume_l is not None:
        said_at = turn.incoming.said_at.isoformat()
        turn.remembered[GIVEN] = {"text": turn.reading.text, "said_at": said_at}


async def forget_given(turn: Turn) -> None:
    """What was told is taken back."""
    if turn.remembered.pop(GIVEN, None) is not None:
        await turn.keep()


def _given_last(turn: Turn) -> Turn | None:
    """The message that told what was given, where nothing was asked or told of a dose since."""
    kept = turn.recalled.get(GIVEN)
    if not isinstance(kept, dict) or not counts_still(kept, turn):
        return None
    reading = turn.read_again(str(kept["text"]))
    order = reading.order
    if order is None or order.amount is None or reading.volume_l is None:
        return None
    return replace(turn, reading=replace(reading, order=replace(order, given=True)))


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
        ml = value * US_TEASPOON_ML if unit == "tsp" else liquid_ml(value, density)
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


async def of_the_last(turn: Turn) -> out.Answer:
    """What was asked of the dose that was told last."""
    if turn.incoming.overtaken:
        return turn.refuse("refuse-overtaken")
    told = _given_last(turn) if turn.order.text in ("strong", "safe") else None
    if told is not None:
        return _judge(told, *mix_given(told))
    found = last_figures(turn)
    if found is None and turn.order.text == "safe":
        lines = [turn.words.say("pets-call", who="anyone"), turn.words.say("pets-keep")]
        return turn.tell("cautions", lines)
    if found is None:
        return turn.ask("ask-no-last")
    words, dose = turn.words, found.dose
    by_label = dose.full_strength_source != "target"
    strong = words.say(
        "last-strong" if by_label else "last-most",
        percent=words.significant(100 * dose.strength),
        amount=shown_amount(dose, words),
        most=words.significant(_down(dose.most)),
        unit=dose.unit,
        volume=words.volume(found.request.volume_l),
        at_most="yes" if dose.amount > dose.most / _OVER else "no",
    )
    lines = {
        "strong": [strong, chain_line(dose, found.answer.why, words)],
        "safe": [strong, words.say("pets-keep")],
        "by_spoon": [
            last_spoons(dose, words),
            measure_line(dose, words) if dose.stock or dose.batch_l or dose.unit == "ml" else "",
        ],
        "by_drops": [
            words.say("last-drops", amount=shown_amount(dose, words), unit=dose.unit),
            measure_line(dose, words),
        ],
        "content": [makes_line(dose, words)],
    }[turn.order.text]
    return turn.tell("explain", lines)


async def remedy(turn: Turn) -> out.Answer:
    """No dose for what is no feed, and what to use instead."""
    return turn.refuse("refuse-remedy", what=turn.order.text, kind=turn.order.asks_kind or "other")


async def argued(turn: Turn) -> out.Answer:
    """To who holds with more, or less: why, and how to have it otherwise."""
    return turn.say("explain", "argue-stays")


async def pests(turn: Turn) -> out.Answer:
    """No dose of what kills pests or mould."""
    return turn.refuse("refuse-pests")
