"""The watering-day plan: who gets what, in which order from one can, and ticking it off."""

from __future__ import annotations

from datetime import date
from typing import Any

from bot.conversation import answer as out
from bot.conversation.collection import Collection, labels, pick
from bot.conversation.replies import over_limit_line
from bot.conversation.turn import Turn, day_ahead
from bot.conversation.turns.day.can import ASSUMED_CAN_L, CanPlan, can_of, can_plan, whom
from bot.conversation.turns.day.groups import Group, groups_of
from bot.conversation.turns.home import LEAST_CAN_L, MOST_CAN_L
from bot.conversation.turns.standing.pot_logs import logged
from bot.records import log, memory
from bot.records.kinds import EventKind
from bot.records.models import Plant, Product

#: A plan is ticked off on its day or the two after.
OPEN_DAYS = 2
_ENTRIES = {"feed": EventKind.FED, "clear": EventKind.CLEAR, "flush": EventKind.FLUSH}


async def plan(turn: Turn) -> out.Answer:
    """What every plant gets on a day, and how to mix it."""
    day = day_ahead(turn.order.when, turn.today)
    can_l = can_of(turn)
    if can_l is not None and not LEAST_CAN_L <= can_l <= MOST_CAN_L:
        return turn.refuse("refuse-can", most=turn.words.number(MOST_CAN_L))
    collection = turn.collection
    if not collection.plants:
        private = turn.incoming.group is None
        return turn.say("plan", "plan-no-plants" if private else "plants-none-group")
    target = turn.order.target
    narrowed = bool(target.names or target.genera or target.place or target.excepts)
    if target.again and not narrowed and turn.about_others:
        return turn.ask("ask-them", known=labels(collection.plants[:5], turn.words))
    plants = pick(target, collection, turn.last_plants) if narrowed else list(collection.plants)
    if not plants:
        return turn.ask("ask-which-plants")
    product = _product(turn, collection)
    known = await logged(turn, collection, plants, day)
    groups = groups_of(plants, collection, product, day, turn, logged=known)
    can = can_plan(groups, collection, product, turn)
    no_can = bool(can.parts) and can_of(turn) is None
    setter = "own" if turn.incoming.group is None else "member"
    if no_can and setter == "member" and await turn.administers():
        setter = "administrator"
    await _keep(turn, groups, can, product, day)
    return _shown(turn, groups, can, product, day, can_set_by=setter if no_can else None)


def _product(turn: Turn, collection: Collection) -> Product | None:
    if turn.order.products:
        return collection.product_named(turn.order.products[0])
    if collection.default_product is not None:
        return collection.default_product
    return collection.products[0] if collection.products else None


# --- the answer ----------------------------------------------------------------------------------


def _shown(
    turn: Turn,
    groups: list[Group],
    can: CanPlan,
    product: Product | None,
    day: date,
    *,
    can_set_by: str | None,
) -> out.Answer:
    """The plan in words; `can_set_by` is who may tell the size of the can, None where known."""
    words = turn.words
    lines = [_head(groups, day, turn), *_too_salty(groups, turn), can.note]
    lines += [f"{n}. {part.text}" for n, part in enumerate(can.parts, 1)]
    lines += [
        words.say("plan-nothing", plants=whom([g], turn)) for g in groups if g.action == "nothing"
    ]
    if all(_given_on(plant, day) for g in groups for plant in g.plants):
        lines.append(words.say("plan-again"))
    fed = any(g.action == "feed" for g in groups)
    if product is None and fed:
        lines.append(words.say("plan-no-product"))
    if can_set_by is not None:
        volume = words.volume(ASSUMED_CAN_L)
        lines.append(words.say("plan-can-assumed", volume=volume, who=can_set_by))
    if fed:
        lines.append(words.say("plan-wet-first"))
    if can.parts:
        lines.append(words.say("plan-done-hint"))
    return turn.tell(
        "plan",
        lines,
        choices=("done",) if can.parts else (),
        details=_figures(groups, can, product, day),
    )


def _too_salty(groups: list[Group], turn: Turn) -> list[str]:
    """For which plants their water is too salty, with the feed in it; alike ones in one line."""
    found: dict[str, list[Plant]] = {}
    for plant, over in (pair for group in groups for pair in group.salty):
        found.setdefault(over_limit_line(over, 1.0, turn.words), []).append(plant)
    return [f"{labels(plants, turn.words)}: {line}" for line, plants in found.items()]


def _given_on(plant: Plant, day: date) -> bool:
    """Whether a plant got something on this day already."""
    return day in (plant.last_fed_on, plant.last_clear_on, plant.last_flush_on)


def _head(groups: list[Group], day: date, turn: Turn) -> str:
    """How many plants get what, without what nobody gets."""
    counts = {
        a: sum(p.count for g in groups if g.action == a for p in g.plants)
        for a in ("flush", "clear", "feed", "nothing")
    }
    said = [turn.words.say(f"plan-count-{a}", count=n) for a, n in counts.items() if n]
    return turn.words.say(
        "plan-head", day=turn.words.day(day, turn.today), counts=turn.words.listed(said)
    )


def _figures(
    groups: list[Group], can: CanPlan, product: Product | None, day: date
) -> dict[str, Any]:
    return {
        "day": day.isoformat(),
        "product": product.name if product else None,
        "groups": [
            {
                "action": g.action,
                "plants": [p.name or p.genus for p in g.plants],
                "count": sum(p.count for p in g.plants),
                "volume_l": g.volume_l,
                "per_litre": g.per_litre,
                "unit": g.unit,
                "water_id": g.water_id,
                "strength": g.strength,
                "reasons": list(dict.fromkeys(r for _, said in g.reasons for r in said)),
            }
            for g in groups
        ],
        "parts": [{"text": p.text, "groups": list(p.keys)} for p in can.parts],
    }


# --- ticking off ------------------------------------------------------------------------------


async def _keep(
    turn: Turn, groups: list[Group], can: CanPlan, product: Product | None, day: date
) -> None:
    """Remember the plan, so that `done` can log it."""
    kept = {
        "day": day.isoformat(),
        "product": product.id if product else None,
        "groups": {
            g.key: {
                "action": "clear" if g.key in can.unfed else g.action,
                "ids": [p.id for p in g.plants],
                "strength": g.strength,
                "per_litre": g.per_litre,
            }
            for g in groups
            if g.action in _ENTRIES
        },
        "parts": [list(p.keys) for p in can.parts],
        "ticked": [],
    }
    await turn.keep(plan=kept)


async def done(turn: Turn) -> out.Answer:
    """Log the plan, or the parts of it that were done."""
    kept = turn.remembered.get("plan")
    if not isinstance(kept, dict):
        return turn.ask("ask-no-plan")
    day = date.fromisoformat(kept["day"])
    if not -OPEN_DAYS <= (day - turn.today).days <= 0:
        return turn.ask(
            "ask-plan-old" if day < turn.today else "ask-plan-ahead",
            day=turn.words.day(day, turn.today),
        )
    parts: list[list[str]] = kept["parts"]
    if any(not 1 <= step <= len(parts) for step in turn.order.steps):
        return turn.ask("ask-plan-step", count=len(parts))
    collection = turn.collection
    ids = _ticked_ids(turn, kept, collection)
    ids -= set(kept["ticked"])
    if not ids:
        return turn.say("log", "done-nothing")
    return await _log(turn, kept, collection, ids, day)


def left_of(turn: Turn) -> tuple[int, ...]:
    """The plants of today's plan that are not ticked off, where some are; else none."""
    kept = turn.remembered.get("plan")
    if not isinstance(kept, dict) or kept["day"] != turn.today.isoformat() or not kept["ticked"]:
        return ()
    ids = {i for g in kept["groups"].values() for i in g["ids"]}
    return tuple(sorted(ids - set(kept["ticked"])))


def _ticked_ids(turn: Turn, kept: dict[str, Any], collection: Collection) -> set[int]:
    """The plants that are done: those of the parts or the names said, otherwise all."""
    groups = kept["groups"]
    everything = {i for g in groups.values() for i in g["ids"]}
    if turn.order.steps:
        keys = {k for step in turn.order.steps for k in kept["parts"][step - 1]}
        return {i for k in keys for i in groups[k]["ids"]}
    if turn.order.target.empty:
        return everything
    return everything & {p.id for p in pick(turn.order.target, collection, turn.last_plants)}


async def _log(
    turn: Turn, kept: dict[str, Any], collection: Collection, ids: set[int], day: date
) -> out.Answer:
    present = {p.id: p for p in collection.plants}
    entries = []
    by_action: dict[str, list[Plant]] = {}
    for group in kept["groups"].values():
        kind = _ENTRIES[group["action"]]
        fed = kind is EventKind.FED
        details = {"strength": group["strength"]} if fed and group["strength"] else {}
        for plant_id in group["ids"]:
            if plant_id in ids and plant_id in present:
                entries.append(
                    log.Entry(
                        kind, plant_id, kept["product"] if fed else None, on=day, details=details
                    )
                )
                by_action.setdefault(group["action"], []).append(present[plant_id])
    kept = {**kept, "ticked": sorted({*kept["ticked"], *ids})}
    async with turn.writing(day) as told:
        await log.record(told, entries)
        await memory.remember(
            told.session,
            told.owner_id,
            turn.incoming.follows or turn.incoming.person,  # whose plan it is
            request={**turn.remembered, "plan": kept},
            said_at=turn.incoming.said_at,
        )
    facts = [
        turn.words.say(f"done-{action}", plants=labels(plants, turn.words))
        for action, plants in by_action.items()
    ]
    left = {i for g in kept["groups"].values() for i in g["ids"]} - set(kept["ticked"])
    lines = [turn.words.say("done-logged", what="; ".join(facts))]
    if left:
        lines.append(turn.words.say("done-left", count=len(left)))
    return turn.tell("log", lines, choices=("undo",))
