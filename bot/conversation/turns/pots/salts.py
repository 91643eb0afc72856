"""The salts in pots: how salty they are by their log, when to flush them and how."""

from __future__ import annotations

from dataclasses import asdict, dataclass
from typing import Any

from bot.conversation import answer as out
from bot.conversation.collection import Collection, label, labels
from bot.conversation.turn import Turn
from bot.conversation.turns.feeding.cautioning import with_cautions
from bot.conversation.turns.plants import on_target
from bot.conversation.turns.standing.pot_logs import PotLog, pot_logs
from bot.dosing.plants import named
from bot.dosing.pot_salts import (
    WATER_MARGIN,
    FlushDue,
    FlushPlan,
    FlushReason,
    Pot,
    PotEventKind,
    PotState,
    ceiling_ec_of,
    flush_due,
    flush_plan,
    flushing_helps,
    wet_ec,
)
from bot.dosing.strength import most_sensitive
from bot.records.models import Plant

#: Pots that are told one by one, and those that are followed at all.
_MOST_TOLD, _MOST_FOLLOWED = 8, 60
#: A flush of less than this share of the usual one says why it differs [1]; ours.
_FEWER = 0.9
#: A flush aims at this share of the ceiling [1]; ours.
_AIM = 0.4
_SOURCE = (
    "well-mixed pot with a bypass; steady state as FAO Irrigation and Drainage Paper 29; "
    "evaporation and limits ours"
)


@dataclass(frozen=True, slots=True)
class Followed:
    """One pot, followed through its log to today.

    `too_salty` is what brings a flush forward in a plan: over the ceiling by the log alone.
    """

    plant: Plant
    pot: Pot
    state: PotState
    water_ec: float
    ceiling_ec: float
    entries: int
    too_salty: bool
    due: FlushDue | None
    plan: FlushPlan

    @property
    def ec(self) -> float:
        """Of the wet pot [mS/cm]."""
        return wet_ec(self.pot, self.state)

    @property
    def ec_sd(self) -> float:
        """Standard uncertainty of it [mS/cm]."""
        return self.state.salt_sd / self.pot.held_l


async def salts(turn: Turn) -> out.Answer:
    """How salty pots are, and what to do about it."""
    return await on_target(turn, _salts)


async def _salts(turn: Turn, collection: Collection, found: list[Plant]) -> out.Answer:
    potted = [p for p in found if p.medium != "mounted"][:_MOST_FOLLOWED]
    if not potted:
        return turn.say("salts", "salts-mounted", plants=labels(found, turn.words))
    logs = await pot_logs(turn, collection, potted, turn.today)
    pots = [_followed(turn, pot_log) for pot_log in logs]
    pots.sort(key=lambda f: f.ec / f.ceiling_ec, reverse=True)
    if len(pots) == 1:
        return _one(turn, pots[0])
    lines = [turn.words.say("salts-head")]
    lines += [_line(turn, f) for f in pots[:_MOST_TOLD]]
    if len(pots) > _MOST_TOLD:
        lines.append(turn.words.say("salts-more", count=len(pots) - _MOST_TOLD))
    lines.append(turn.words.say("salts-measure"))
    answer = turn.tell("salts", lines, details={"pots": [_figures(f) for f in pots]})
    return with_cautions(turn, answer.model_copy(update={"why": [_why(turn)]}))


async def of_reading(
    turn: Turn, collection: Collection, found: list[Plant], ec: float
) -> list[str]:
    """What a reading of what ran out of pots means against their limits [mS/cm]."""
    potted = [p for p in found if p.medium != "mounted"][:_MOST_FOLLOWED]
    if not potted:
        return []
    words, number = turn.words, turn.words.number
    pots = [_followed(turn, log) for log in await pot_logs(turn, collection, potted, turn.today)]
    over = [f for f in pots if ec > f.ceiling_ec]
    if not over:
        limit = min(f.ceiling_ec for f in pots)
        return [words.say("reading-under", limit=number(limit, 1))]
    each = [f"{label(f.plant, words)} ({number(f.ceiling_ec, 1)})" for f in over[:_MOST_TOLD]]
    salty = next((f.water_ec for f in over if not flushing_helps(f.water_ec, f.ceiling_ec)), None)
    lines = [
        words.say(
            "reading-over",
            plants=words.listed(each) if len(found) > 1 else "none",
            limit=number(over[0].ceiling_ec, 1),
        )
    ]
    if salty is not None:
        return [*lines, words.say("salts-due-water", water=number(salty, 2))]
    return [*lines, *([_flush_line(turn, over[0])] if len(found) == 1 else [])]


def of_no_plant(turn: Turn, ec: float) -> list[str]:
    """What a reading means where no plants are on record: by the kind that was said, or any."""
    kinds = turn.order.target.genera or turn.reading.genera
    feeding_class = most_sensitive(tuple(g.feeding_class for g in named(kinds)))
    limit, number = ceiling_ec_of(feeding_class), turn.words.number
    over = "yes" if ec > limit else "no"
    return [turn.words.say("reading-no-plant", ec=number(ec), limit=number(limit, 1), over=over)]


def _followed(turn: Turn, found: PotLog) -> Followed:
    """A pot's log, followed to today."""
    state = found.state(turn.today, found.start)
    due = None
    if any(e.kind is not PotEventKind.READING for e in found.events):
        due = flush_due(
            found.pot, found.events, feeding_class=found.feeding_class, today=turn.today,
            start=found.least_start,
        )  # fmt: skip
    aim = max(_AIM * found.ceiling_ec, WATER_MARGIN * found.water_ec)
    return Followed(
        plant=found.plant,
        pot=found.pot,
        state=state,
        water_ec=found.water_ec,
        ceiling_ec=found.ceiling_ec,
        entries=len(found.events),
        too_salty=found.too_salty(turn.today),
        due=due,
        plan=flush_plan(found.pot, state, target_ec=aim, water_ec=found.water_ec),
    )


def _range(turn: Turn, f: Followed) -> dict[str, str]:
    number = turn.words.number
    return {
        "ec": number(f.ec, 1),
        "low": number(max(0.0, f.ec - 2 * f.ec_sd), 1),
        "high": number(f.ec + 2 * f.ec_sd, 1),
    }


def _line(turn: Turn, f: Followed) -> str:
    return turn.words.say(
        "salts-line",
        plant=label(f.plant, turn.words),
        limit=turn.words.number(f.ceiling_ec, 1),
        state=_state(f),
        **_range(turn, f),
    )


def _state(f: Followed) -> str:
    if f.too_salty:
        return "over"
    if f.ec > f.ceiling_ec:
        return "unsure" if flushing_helps(f.water_ec, f.ceiling_ec) else "water"
    return "near" if f.ec + 2 * f.ec_sd > f.ceiling_ec else "fine"


def _one(turn: Turn, f: Followed) -> out.Answer:
    words, number = turn.words, turn.words.number
    lines = [
        words.say(
            "salts-one",
            plant=label(f.plant, words),
            limit=number(f.ceiling_ec, 1),
            state=_state(f),
            **_range(turn, f),
        )
    ]
    lines.append(_due_line(turn, f))
    if f.plan.passes_l:
        lines.append(_flush_line(turn, f))
        usual_l = f.plan.usual_l * f.plant.count
        if sum(f.plan.passes_l) * f.plant.count < _FEWER * usual_l:
            lines.append(words.say("salts-flush-least", usual=_litres(turn, usual_l)))
    lines.append(words.say("salts-from", entries=f.entries, water=number(f.water_ec, 2)))
    lines.append(words.say("salts-measure"))
    answer = turn.tell("salts", lines, details={"pots": [_figures(f)]})
    return with_cautions(turn, answer.model_copy(update={"why": [_why(turn)]}))


def _flush_line(turn: Turn, f: Followed) -> str:
    """How to flush it, and what that leaves; empty where nothing has to be washed out."""
    words, number = turn.words, turn.words.number
    if not f.plan.passes_l:
        return ""
    passes = [_litres(turn, litres * f.plant.count) for litres in f.plan.passes_l]
    return words.say(
        "salts-flush",
        first=passes[0],
        rest=number(f.plan.rest_min, 0),
        others=words.listed(passes[1:]) or "none",
        after=number(f.plan.ec_after, 1),
        reaches="yes" if f.plan.reaches else "no",
    )


def _why(turn: Turn) -> out.Why:
    text = turn.words.say("why-salts-pot")
    return out.Why(rule="salts.pot", factor=1.0, text=text, source=_SOURCE)


def _due_line(turn: Turn, f: Followed) -> str:
    """When to flush it: as the plan of a day says too."""
    words, due = turn.words, f.due
    if f.too_salty:
        return words.say("salts-due-over", day="", now="yes")
    if _state(f) == "water":
        return words.say("salts-due-water", water=words.number(f.water_ec, 2))
    if due is None:
        return words.say("salts-due-none")
    if due.reason is FlushReason.OVER_CEILING:
        on = max(due.on, turn.today)
        return words.say("salts-due-over", day=words.day(on, turn.today), now="no")
    now = "yes" if due.on <= turn.today else "no"
    return words.say("salts-due-month", day=words.day(due.on, turn.today), now=now)


def _litres(turn: Turn, litres: float) -> str:
    """Water to pour, as a jug shows it."""
    if litres < 1:
        litres = max(10.0, round(litres * 100) * 10) / 1000
    return turn.words.volume(litres, 1)


def _figures(f: Followed) -> dict[str, Any]:
    due = f.due
    return {
        "plant": f.plant.id,
        "ec_ms_cm": f.ec,
        "ec_sd_ms_cm": f.ec_sd,
        "ceiling_ms_cm": f.ceiling_ec,
        "too_salty": f.too_salty,
        "due": None if due is None else {"on": due.on.isoformat(), "reason": str(due.reason)},
        "flush": asdict(f.plan),
    }
