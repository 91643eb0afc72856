"""What is to be done for reminders that are due together, as of a day."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field
from datetime import date
from typing import Any

from bot.conversation.collection import Collection
from bot.conversation.turn import Turn
from bot.conversation.turns.day import day as days
from bot.conversation.turns.day.can import CanPlan, can_plan
from bot.conversation.turns.day.groups import Group, groups_of
from bot.conversation.turns.reminders.said import plants_of
from bot.conversation.turns.standing.advice import genus_of, growth_on
from bot.conversation.turns.standing.pot_logs import logged
from bot.dosing.pot_water import flush_volume_l
from bot.records import log
from bot.records.kinds import EventKind, ReminderKind
from bot.records.models import Plant, Product


@dataclass(frozen=True, slots=True)
class Work:
    """What is to be done for reminders that are due together, as of a day.

    `asleep` and `mounted` are left out of a flush.
    """

    flushed: tuple[Group, ...] = ()
    groups: tuple[Group, ...] = ()
    can: CanPlan = field(default_factory=lambda: CanPlan(()))
    product: Product | None = None
    asleep: tuple[Plant, ...] = ()
    mounted: tuple[Plant, ...] = ()

    def entries(self, on: date) -> list[log.Entry]:
        """What the log keeps where all of it is done."""
        made = [log.Entry(EventKind.FLUSH, p.id, on=on) for g in self.flushed for p in g.plants]
        for group in self.groups:
            action = "clear" if group.key in self.can.unfed else group.action
            kind = days._ENTRIES.get(action)
            if kind is None:
                continue
            fed = kind is EventKind.FED
            product = self.product.id if fed and self.product is not None else None
            details = {"strength": group.strength} if fed and group.strength else {}
            made += [log.Entry(kind, p.id, product, on=on, details=details) for p in group.plants]
        return made


async def work_for(due: Sequence[Any], turn: Turn, on: date) -> Work:
    """Flushes apart, feed and water in one can; who gets a flush needs no more.

    Parameters
    ----------
    due : reminders, as the records or what is due have them
    turn : for the collection, the kit and the words
    on : the day
    """
    collection = turn.collection
    to_flush = _plants([r for r in due if r.kind == ReminderKind.FLUSH], collection)
    asleep = tuple(p for p in to_flush if rests(p, on, south=turn.south))
    mounted = tuple(p for p in to_flush if p.medium == "mounted" and p not in asleep)
    wet = [p for p in to_flush if p not in asleep and p not in mounted]
    flushed = _flushes(wet, collection)
    wanted = [r for r in due if r.kind in (ReminderKind.FEED, ReminderKind.WATER)]
    rest = [p for p in _plants(wanted, collection) if p not in wet]
    if not rest:
        return Work(flushed, asleep=asleep, mounted=mounted)
    product = _product(collection)
    known = await logged(turn, collection, rest, on)
    groups = groups_of(rest, collection, product, on, turn, logged=known)
    can = can_plan(groups, collection, product, turn)
    return Work(flushed, tuple(groups), can, product, asleep, mounted)


def _plants(due: Sequence[Any], collection: Collection) -> list[Plant]:
    found = {p.id: p for r in due for p in plants_of(r.target, collection)}
    return [p for p in collection.plants if p.id in found]


def rests(plant: Plant, on: date, *, south: bool) -> bool:
    genus = genus_of(plant)
    asleep = genus is not None and genus.rests_in(on.month, south=south)
    return asleep or growth_on(plant, on) == "resting"


def _flushes(plants: Sequence[Plant], collection: Collection) -> tuple[Group, ...]:
    """Those that are flushed, by their water."""
    by_water: dict[int | None, list[Plant]] = {}
    for plant in plants:
        water = collection.water_of(plant)
        by_water.setdefault(water.id if water is not None else None, []).append(plant)
    return tuple(
        Group(
            key=f"f{number}",
            action="flush",
            plants=tuple(members),
            reasons=((tuple(members), ()),),
            volume_l=sum(flush_volume_l(p.pot_cm) * p.count for p in members),
            water_id=water_id,
        )
        for number, (water_id, members) in enumerate(by_water.items())
    )


def _product(collection: Collection) -> Product | None:
    if collection.default_product is not None:
        return collection.default_product
    return collection.products[0] if collection.products else None
