"""The salts in pots: how salty they are by their log, when to flush them and how."""

from __future__ import annotations

from dataclasses import asdict, dataclass
from datetime import date, timedelta
from typing import Any

from bot.conversation import answer as out
from bot.conversation.collection import Collection, label, labels
from bot.conversation.turn import Turn
from bot.conversation.turns.advice import genus_of
from bot.conversation.turns.plants import on_target
from bot.conversation.turns.shelf import analysis_of
from bot.dosing.conductivity import feed_ec_ms_cm
from bot.dosing.dose import ASSUMED_N_MG_L, pure_water_ec_ms_cm
from bot.dosing.label import elemental_percent
from bot.dosing.pot_salts import (
    FlushDue,
    FlushPlan,
    Pot,
    PotEvent,
    PotEventKind,
    PotState,
    ceiling_ec_of,
    flush_due,
    flush_plan,
    pot_of,
    simulate,
    start_of,
    wet_ec,
)
from bot.records import log
from bot.records.kinds import EventKind
from bot.records.models import Event, Plant, Product

#: A log is followed so far back [d]; older salts no longer matter.
_LOOKED_BACK = 365
#: Pots that are told one by one, and those that are followed at all.
_MOST_TOLD, _MOST_FOLLOWED = 8, 60
#: EC of a water that nothing is known of [mS/cm]: a usual tap; ours.
_ASSUMED_WATER_EC = 0.4
#: A flush aims at this share of the ceiling [1]; ours.
_AIM = 0.4
#: Strength of a feed that was logged without one [1]: the usual at every watering.
_ASSUMED_STRENGTH = 0.25
_KINDS = (EventKind.FED, EventKind.CLEAR, EventKind.FLUSH, EventKind.READING)
_SOURCE = (
    "well-mixed pot with a bypass; steady state as FAO Irrigation and Drainage Paper 29; "
    "evaporation and limits ours"
)


@dataclass(frozen=True, slots=True)
class Followed:
    """One pot, followed through its log to today."""

    plant: Plant
    pot: Pot
    state: PotState
    water_ec: float
    ceiling_ec: float
    entries: int
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
    pots = [await followed(turn, collection, plant) for plant in potted]
    pots.sort(key=lambda f: f.ec / f.ceiling_ec, reverse=True)
    if len(pots) == 1:
        return _one(turn, pots[0])
    lines = [turn.words.say("salts-head")]
    lines += [_line(turn, f) for f in pots[:_MOST_TOLD]]
    if len(pots) > _MOST_TOLD:
        lines.append(turn.words.say("salts-more", count=len(pots) - _MOST_TOLD))
    lines.append(turn.words.say("salts-measure"))
    return turn.tell("salts", lines, details={"pots": [_figures(f) for f in pots]})


async def followed(turn: Turn, collection: Collection, plant: Plant) -> Followed:
    """A pot's log, followed to today."""
    since = turn.today - timedelta(days=_LOOKED_BACK)
    async with turn.records.reading() as session:
        rows = await log.history(session, turn.owner_id, plant.id, since=since, kinds=_KINDS)
    rows = [r for r in rows if r.on <= turn.today]
    water_ec = _water_ec(collection, plant)
    shelf = {p.id: p for p in collection.products}
    events = [e for r in rows if (e := _event(r, water_ec, shelf, collection)) is not None]
    pot = pot_of(plant.medium, plant.pot_cm, south=turn.south)
    repotted = _repotted(plant, since)
    start = start_of(pot, water_ec, water_ec) if repotted else None
    states = simulate(pot, events, start=start, until=turn.today)
    genus = genus_of(plant)
    feeding_class = genus.feeding_class if genus is not None else "moderate"
    due = None
    if any(e.kind is not PotEventKind.READING for e in events):
        due = flush_due(pot, events, feeding_class=feeding_class, today=turn.today, start=start)
    ceiling_ec = ceiling_ec_of(feeding_class)
    aim = max(_AIM * ceiling_ec, 1.1 * water_ec)
    plan = flush_plan(pot, states[-1], target_ec=aim, water_ec=water_ec)
    return Followed(plant, pot, states[-1], water_ec, ceiling_ec, len(events), due, plan)


def _repotted(plant: Plant, since: date) -> bool:
    return plant.last_repot_on is not None and plant.last_repot_on >= since


def _water_ec(collection: Collection, plant: Plant) -> float:
    water = collection.water_of(plant)
    if water is None:
        return _ASSUMED_WATER_EC
    if water.ec_ms_cm is not None:
        return water.ec_ms_cm
    pure = pure_water_ec_ms_cm(water.kind)
    return pure if pure is not None else _ASSUMED_WATER_EC


def _event(
    row: Event, water_ec: float, shelf: dict[int, Product], collection: Collection
) -> PotEvent | None:
    """An entry of the log as the model takes it."""
    kind = PotEventKind(str(row.kind))
    if kind is PotEventKind.READING:
        ec = row.details.get("runoff_ec_ms_cm")
        return PotEvent(row.on, kind, float(ec)) if isinstance(ec, int | float) else None
    if kind is not PotEventKind.FED:
        return PotEvent(row.on, kind, water_ec)
    product = shelf.get(row.product_id or 0) or collection.default_product
    return PotEvent(row.on, kind, water_ec + _feed_ec(row.details, product))


def _feed_ec(details: dict[str, Any], product: Product | None) -> float:
    """EC that a logged feed added [mS/cm], the middle of what its label allows."""
    strength = float(details.get("strength") or _ASSUMED_STRENGTH)
    if details.get("analysis"):
        n, p, k = (float(a) for a in details["analysis"])
        extras: dict[str, float] = {}
        rate = None
    elif product is not None:
        n, p, k = analysis_of(product)
        extras = dict(product.extras or {})
        rate = product.label_per_litre if product.label_unit == "g" else None
    else:
        n, p, k, extras, rate = 20.0, 20.0, 20.0, {}, None
    if details.get("n_mg_l") and n > 0:
        g_l = float(details["n_mg_l"]) / (10 * n)
    elif rate is not None:
        g_l = strength * rate
    elif n > 0:
        g_l = strength * ASSUMED_N_MG_L / (10 * n)
    else:
        return 0.0
    elements = {e: 10 * share * g_l for e, share in elemental_percent(n, p, k, extras).items()}
    ec = feed_ec_ms_cm(elements, product_mg_l=1000 * g_l)
    return (ec.low + ec.high) / 2


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
    if f.ec > f.ceiling_ec:
        return "over"
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
    if f.due is not None:
        overdue = f.due.on <= turn.today
        reason = "salts-due-over" if str(f.due.reason) == "over_ceiling" else "salts-due-month"
        if not overdue:
            lines.append(words.say(reason, day=words.day(f.due.on, turn.today), now="no"))
        else:
            lines.append(words.say(reason, day=words.day(f.due.on, turn.today), now="yes"))
    if f.plan.passes_l:
        passes = [_litres(turn, litres * f.plant.count) for litres in f.plan.passes_l]
        lines.append(
            words.say(
                "salts-flush",
                first=passes[0],
                rest=number(f.plan.rest_min, 0),
                others=words.listed(passes[1:]) or "none",
                after=number(f.plan.ec_after, 1),
                reaches="yes" if f.plan.reaches else "no",
            )
        )
    lines.append(words.say("salts-from", entries=f.entries, water=number(f.water_ec, 2)))
    lines.append(words.say("salts-measure"))
    answer = turn.tell("salts", lines, details={"pots": [_figures(f)]})
    why = out.Why(rule="salts.pot", factor=1.0, text=words.say("why-salts-pot"), source=_SOURCE)
    return answer.model_copy(update={"why": [why]})


def _litres(turn: Turn, litres: float) -> str:
    """Water to pour, as a jug shows it."""
    if litres < 1:
        return turn.words.say("volume-millilitres", millilitres=turn.words.number(
            max(10.0, round(litres * 100) * 10), 0))  # fmt: skip
    return turn.words.say("volume-litres", litres=turn.words.number(litres, 1))


def _figures(f: Followed) -> dict[str, Any]:
    due = f.due
    return {
        "plant": f.plant.id,
        "ec_ms_cm": f.ec,
        "ec_sd_ms_cm": f.ec_sd,
        "ceiling_ms_cm": f.ceiling_ec,
        "due": None if due is None else {"on": due.on.isoformat(), "reason": str(due.reason)},
        "flush": asdict(f.plan),
    }
