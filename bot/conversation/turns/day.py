"""The watering-day plan: who gets what, in which order from one can, and ticking it off."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import date
from typing import Any, TypeAlias

from bot.conversation import answer as out
from bot.conversation.collection import Collection, labels, load, pick
from bot.conversation.turn import Turn, day_ahead
from bot.conversation.turns.advice import advice_for, genus_of, reason
from bot.conversation.turns.shelf import analysis_of, title
from bot.dosing.advice import Action
from bot.dosing.dose import Dose, DoseRequest, Rate, pure_water_ec_ms_cm, work_out
from bot.dosing.measuring import SCALE_STEP_G, SYRINGE_STEP_ML, stock_for
from bot.dosing.mixing import Mix, MixingPlan, Portion, PourClear, TopUp, Water, plan_mixing
from bot.dosing.plants import Genus
from bot.dosing.pot_water import flush_volume_l, watering_l
from bot.dosing.season import season_of
from bot.records import log, memory
from bot.records.kinds import EventKind
from bot.records.models import Plant, Product

#: Taken where the size of the can was not said [L].
ASSUMED_CAN_L = 5.0
#: A plan is ticked off on its day or the two after.
OPEN_DAYS = 2
_ENTRIES = {"feed": EventKind.FED, "clear": EventKind.CLEAR, "flush": EventKind.FLUSH}


@dataclass(frozen=True, slots=True)
class Group:
    """Plants that get the same from the can.

    `per_litre` is product in the mix [g/L or ml/L], 0 for clear water; `ceiling` the most;
    `water_id` what it is mixed with, None for the usual water.
    """

    key: str
    action: str
    plants: tuple[Plant, ...]
    reasons: tuple[str, ...]
    volume_l: float
    per_litre: float = 0.0
    ceiling: float | None = None
    strength: float | None = None
    unit: str = "g"
    water_id: int | None = None


async def plan(turn: Turn) -> out.Answer:
    """What every plant gets on a day, and how to mix it."""
    day = day_ahead(turn.order.when, turn.today)
    async with turn.records.reading() as session:
        collection = await load(session, turn.owner_id)
    if not collection.plants:
        return turn.say("plan", "plan-no-plants")
    target = turn.order.target
    narrowed = bool(target.names or target.genera or target.place)
    plants = pick(target, collection) if narrowed else list(collection.plants)
    if not plants:
        return turn.ask("ask-which-plants")
    product = _product(turn, collection)
    groups = _groups(plants, collection, product, day, turn)
    parts = _can_parts(groups, product, turn)
    await _keep(turn, groups, parts, product, day)
    return _shown(turn, groups, parts, product, day)


def _product(turn: Turn, collection: Collection) -> Product | None:
    if turn.order.products:
        return collection.product_named(turn.order.products[0])
    if collection.default_product is not None:
        return collection.default_product
    return collection.products[0] if collection.products else None


#: What plants of a group have in common: what they get, how strong, with which water.
_Key: TypeAlias = tuple[str, float, int | None]

# --- who gets what ----------------------------------------------------------------------------


def _groups(
    plants: list[Plant], collection: Collection, product: Product | None, day: date, turn: Turn
) -> list[Group]:
    """The plants by what they get, strongest first; clear water before, nothing last."""
    gathered: dict[_Key, list[Plant]] = {}
    why: dict[_Key, dict[str, None]] = {}
    doses: dict[_Key, Dose] = {}
    kitchen = _Kitchen(collection, product, day, turn, {})
    for plant in plants:
        advice = advice_for(plant, day, south=turn.south)
        dose = kitchen.dose(plant) if advice.action is Action.FEED else None
        water = collection.water_of(plant)
        wet = advice.action is not Action.NOTHING
        key = (
            str(advice.action),
            round(dose.per_litre, 9) if dose is not None else 0.0,
            water.id if wet and water is not None else None,
        )
        gathered.setdefault(key, []).append(plant)
        reasons = why.setdefault(key, {})
        for found in advice.reasons:
            reasons.setdefault(reason(found, turn))
        if dose is not None:
            doses[key] = dose
    groups = []
    for number, (key, members) in enumerate(gathered.items()):
        dose = doses.get(key)
        groups.append(
            Group(
                key=f"g{number}",
                action=key[0],
                plants=tuple(members),
                reasons=tuple(why[key]),
                volume_l=_volume_l(members, key[0]),
                per_litre=dose.per_litre if dose else 0.0,
                ceiling=dose.most if dose else None,
                strength=dose.strength if dose else None,
                unit=dose.unit if dose else "g",
                water_id=key[2],
            )
        )
    order = {"flush": 0, "clear": 1, "feed": 2, "nothing": 3}
    return sorted(groups, key=lambda g: (order[g.action], -g.per_litre))


def _volume_l(plants: list[Plant], action: str) -> float:
    if action == "nothing":
        return 0.0
    total = 0.0
    for plant in plants:
        if action == "flush":
            total += flush_volume_l(plant.pot_cm) * plant.count
        elif plant.water_ml is not None:
            total += plant.water_ml / 1000 * plant.count
        else:
            total += watering_l(plant.medium, plant.pot_cm, count=plant.count).volume_l
    return total


@dataclass(frozen=True, slots=True)
class _Kitchen:
    """Works out the dose in a litre once for plants that are alike."""

    collection: Collection
    product: Product | None
    day: date
    turn: Turn
    known: dict[tuple[object, ...], Dose | None]

    def dose(self, plant: Plant) -> Dose | None:
        """What a litre for this plant takes; None where there is no product to dose."""
        water = self.collection.water_of(plant)
        key = (plant.genus, plant.growth, plant.medium, water.id if water else None)
        if key not in self.known:
            self.known[key] = self._work_out(plant, genus_of(plant))
        return self.known[key]

    def _work_out(self, plant: Plant, genus: Genus | None) -> Dose | None:
        product = self.product
        if product is None:
            return None
        water = self.collection.water_of(plant)
        ec = water.ec_ms_cm if water is not None else None
        if ec is None and water is not None:
            ec = pure_water_ec_ms_cm(water.kind)
        rate = product.label_per_litre
        owner = self.turn.owner
        try:
            return work_out(
                DoseRequest(
                    volume_l=1.0,
                    analysis=analysis_of(product),
                    extras=product.extras or {},
                    form=product.form,
                    density_kg_l=product.density_kg_l,
                    label_rate=Rate(rate, str(product.label_unit or "g")) if rate else None,
                    label_from="product",
                    season=season_of(self.day.month, south=self.turn.south),
                    medium=plant.medium,
                    growth=plant.growth,
                    plants=(genus,) if genus else (),
                    water_kind=water.kind if water else None,
                    water_ec_ms_cm=ec,
                    hardness_mg_l_caco3=water.hardness_mg_l_caco3 if water else None,
                    scale_step_g=owner.scale_step_g if owner else None,
                    syringe_step_ml=owner.syringe_step_ml if owner else None,
                )
            )
        except ValueError:  # no nitrogen and no label rate: nothing to go by
            return None


# --- from one can --------------------------------------------------------------------------------


@dataclass(frozen=True, slots=True)
class Part:
    """One numbered part of the plan: what to do with the can, and for which groups."""

    text: str
    keys: tuple[str, ...]


def _can_parts(groups: list[Group], product: Product | None, turn: Turn) -> list[Part]:
    """The parts of the plan in the order of work."""
    words = turn.words
    by_key = {g.key: g for g in groups}
    parts = [
        Part(
            words.say(
                "plan-flush",
                volume=litres(g.volume_l, turn),
                plants=labels(g.plants, words),
                why=_why(g, turn),
            ),
            (g.key,),
        )
        for g in groups
        if g.action == "flush"
    ]
    wet = [g for g in groups if g.action in ("clear", "feed") and g.volume_l > 0]
    if not wet:
        return parts
    if product is None:
        return parts + [Part(_dry_line(g, turn), (g.key,)) for g in wet]
    made, measured = _mixing(wet, product, turn)
    return parts + _instructions(made, by_key, measured, product, turn)


def _dry_line(group: Group, turn: Turn) -> str:
    code = "plan-clear" if group.action == "clear" else "plan-feed-no-product"
    return turn.words.say(
        code,
        volume=litres(group.volume_l, turn),
        plants=labels(group.plants, turn.words),
        why=_why(group, turn),
    )


@dataclass(frozen=True, slots=True)
class _Measured:
    """How the product is measured: straight, or out of a stock of `per_ml` [g or ml in a ml]."""

    per_ml: float | None
    text: str


def _mixing(groups: list[Group], product: Product, turn: Turn) -> tuple[MixingPlan, _Measured]:
    """The mixing order; with a stock solution where the scale is too coarse."""
    owner = turn.owner
    can_l = (owner.can_l if owner else None) or ASSUMED_CAN_L
    unit = next((g.unit for g in groups if g.action == "feed"), "g")
    scale = (owner.scale_step_g if owner else None) or SCALE_STEP_G
    syringe = (owner.syringe_step_ml if owner else None) or SYRINGE_STEP_ML
    step = scale if unit == "g" else syringe
    key = str(product.id)
    portions = [
        Portion(g.key, g.volume_l, g.per_litre, key if g.per_litre else "", g.ceiling)
        for g in groups
    ]
    made = plan_mixing(portions, can_l, {key: step})
    if key not in made.too_coarse:
        return made, _Measured(None, "")
    weighed = [s.amount for s in made.exact_steps if isinstance(s, Mix)]
    stock = stock_for(min(weighed), unit, step) if weighed else None
    if stock is None:
        return made, _Measured(
            None, turn.words.say("plan-too-coarse", step=turn.words.number(step))
        )
    per_ml = stock.product_amount / stock.in_ml
    finer = plan_mixing(portions, can_l, {key: syringe * per_ml})
    text = turn.words.say(
        "plan-stock",
        product=turn.words.number(stock.product_amount),
        unit=unit,
        name=title(product, turn),
        bottle=turn.words.number(stock.in_ml, 0),
    )
    return finer, _Measured(per_ml, text)


def _instructions(
    made: MixingPlan,
    groups: Mapping[str, Group],
    measured: _Measured,
    product: Product,
    turn: Turn,
) -> list[Part]:
    """The steps as sentences for wet hands, one part for each pour."""
    words = turn.words
    parts: list[Part] = []
    before: list[str] = []
    for step in made.steps:
        if isinstance(step, PourClear):
            chosen = [groups[k] for k in step.keys]
            text = words.say(
                "plan-clear",
                volume=litres(step.volume_l, turn),
                plants=_all_labels(chosen, turn),
                why=_whys(chosen, turn),
            )
            parts.append(Part(text, step.keys))
        elif isinstance(step, Mix):
            before.append(_mix_line(step, measured, product, turn))
        elif isinstance(step, TopUp):
            before.append(words.say("plan-top-up", to=litres(step.to_l, turn)))
        elif isinstance(step, Water):
            chosen = [groups[k] for k in step.keys]
            text = words.say(
                "plan-feed",
                volume=litres(step.volume_l, turn),
                plants=_all_labels(chosen, turn),
                why=_whys(chosen, turn),
                strength=_strength(chosen, turn),
            )
            parts.append(Part(" ".join([*before, text]), step.keys))
            before = []
        else:
            before.append(words.say("plan-pour-off", volume=litres(step.volume_l, turn)))
    return parts


def _mix_line(step: Mix, measured: _Measured, product: Product, turn: Turn) -> str:
    words = turn.words
    unit = "ml" if product.form == "liquid" else "g"
    if measured.per_ml is not None:
        return words.say(
            "plan-mix-stock",
            amount=words.number(step.amount / measured.per_ml, 1),
            holds=words.significant(step.amount),
            unit=unit,
            name=title(product, turn),
            to=litres(step.fill_to_l, turn),
        )
    return words.say(
        "plan-mix",
        amount=words.number(step.amount, 4),
        unit=unit,
        name=title(product, turn),
        to=litres(step.fill_to_l, turn),
    )


def _all_labels(groups: list[Group], turn: Turn) -> str:
    return labels([p for g in groups for p in g.plants], turn.words)


def _strength(groups: list[Group], turn: Turn) -> str:
    strengths = [g.strength for g in groups if g.strength is not None]
    return f"{turn.words.significant(100 * min(strengths))} %" if strengths else ""


def _why(group: Group, turn: Turn) -> str:
    return turn.words.listed(list(group.reasons[:3])) or "none"


def _whys(groups: list[Group], turn: Turn) -> str:
    reasons = list(dict.fromkeys(r for g in groups for r in g.reasons))
    return turn.words.listed(reasons[:3]) or "none"


def litres(volume_l: float, turn: Turn) -> str:
    """A volume as it is poured: to 10 ml below a litre, to 50 ml above."""
    if volume_l < 0.995:
        rounded = max(round(volume_l * 100) * 10, 10)
        return turn.words.say("volume-millilitres", millilitres=turn.words.number(rounded, 0))
    return turn.words.say("volume-litres", litres=turn.words.number(round(volume_l * 20) / 20))


# --- the answer ----------------------------------------------------------------------------------


def _shown(
    turn: Turn, groups: list[Group], parts: list[Part], product: Product | None, day: date
) -> out.Answer:
    words = turn.words
    counts = {
        a: sum(p.count for g in groups if g.action == a for p in g.plants)
        for a in ("feed", "clear", "flush", "nothing")
    }
    head = words.say("plan-head", day=words.day(day, turn.today), **counts)
    lines = [head, _measured_line(groups, product, turn)]
    lines += [f"{n}. {part.text}" for n, part in enumerate(parts, 1)]
    lines += [
        words.say("plan-nothing", plants=labels(g.plants, words), why=_why(g, turn))
        for g in groups
        if g.action == "nothing"
    ]
    if product is None and any(g.action == "feed" for g in groups):
        lines.append(words.say("plan-no-product"))
    if turn.owner is None or turn.owner.can_l is None:
        lines.append(words.say("plan-can-assumed", litres=words.number(ASSUMED_CAN_L)))
    if parts:
        lines.append(words.say("plan-wet-first"))
        lines.append(words.say("plan-done-hint"))
    return turn.tell(
        "plan",
        lines,
        choices=("done",) if parts else (),
        details=_figures(groups, parts, product, day),
    )


def _measured_line(groups: list[Group], product: Product | None, turn: Turn) -> str:
    wet = [g for g in groups if g.action in ("clear", "feed") and g.volume_l > 0]
    if product is None or not any(g.action == "feed" for g in wet):
        return ""
    return _mixing(wet, product, turn)[1].text


def _figures(
    groups: list[Group], parts: list[Part], product: Product | None, day: date
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
                "strength": g.strength,
                "reasons": list(g.reasons),
            }
            for g in groups
        ],
        "parts": [{"text": p.text, "groups": list(p.keys)} for p in parts],
    }


# --- ticking off ------------------------------------------------------------------------------


async def _keep(
    turn: Turn, groups: list[Group], parts: list[Part], product: Product | None, day: date
) -> None:
    """Remember the plan, so that `done` can log it."""
    kept = {
        "day": day.isoformat(),
        "product": product.id if product else None,
        "groups": {
            g.key: {
                "action": g.action,
                "ids": [p.id for p in g.plants],
                "strength": g.strength,
                "per_litre": g.per_litre,
            }
            for g in groups
            if g.action in _ENTRIES
        },
        "parts": [list(p.keys) for p in parts],
        "ticked": [],
    }
    remembered = {**turn.remembered, "plan": kept}
    async with turn.writing() as told:
        await memory.remember(
            told.session,
            told.owner_id,
            turn.incoming.person,
            request=remembered,
            said_at=turn.incoming.said_at,
        )


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
    async with turn.records.reading() as session:
        collection = await load(session, turn.owner_id)
    ids = _ticked_ids(turn, kept, collection)
    ids -= set(kept["ticked"])
    if not ids:
        return turn.say("log", "done-nothing")
    return await _log(turn, kept, collection, ids, day)


def _ticked_ids(turn: Turn, kept: dict[str, Any], collection: Collection) -> set[int]:
    """The plants that are done: those of the parts or the names said, otherwise all."""
    groups = kept["groups"]
    everything = {i for g in groups.values() for i in g["ids"]}
    if turn.order.steps:
        keys = {k for step in turn.order.steps for k in kept["parts"][step - 1]}
        return {i for k in keys for i in groups[k]["ids"]}
    if turn.order.target.empty:
        return everything
    return everything & {p.id for p in pick(turn.order.target, collection)}


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
            turn.incoming.person,
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
