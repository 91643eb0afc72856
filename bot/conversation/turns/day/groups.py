"""Who gets what on a watering day: the plants on record in groups that get the same."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import date
from typing import TypeAlias

from bot.conversation.answering import LEAST_N_PERCENT
from bot.conversation.collection import Collection
from bot.conversation.turn import Turn
from bot.conversation.turns.shelf import analysis_of, nitrogen_forms
from bot.conversation.turns.standing.advice import (
    Logged,
    advice_for,
    genus_of,
    growth_on,
    reason,
    water_for,
)
from bot.dosing.advice import Action
from bot.dosing.dose import Dose, DoseRequest, OverLimit, Rate, pure_water_ec_ms_cm, work_out
from bot.dosing.plants import Genus
from bot.dosing.pot_water import flush_volume_l
from bot.dosing.season import season_of
from bot.dosing.strength import NOTHING_SAID
from bot.records.models import Plant, Product


@dataclass(frozen=True, slots=True)
class Group:
    """Plants that get the same from the can.

    `per_litre` is product in the mix [g/L or ml/L], 0 for clear water; `ceiling` the most;
    `water_id` what it is mixed with, None for the usual water; `salty` are those of the plants for
    which that is too salty, with how much.
    """

    key: str
    action: str
    plants: tuple[Plant, ...]
    reasons: tuple[tuple[tuple[Plant, ...], tuple[str, ...]], ...]
    volume_l: float
    per_litre: float = 0.0
    ceiling: float | None = None
    strength: float | None = None
    unit: str = "g"
    water_id: int | None = None
    salty: tuple[tuple[Plant, OverLimit], ...] = ()


#: Reasons that are said of a plant.
_SAID = 2
#: What plants of a group have in common: what they get, how strong, with which water.
_Key: TypeAlias = tuple[str, float, int | None]


def groups_of(
    plants: Sequence[Plant],
    collection: Collection,
    product: Product | None,
    day: date,
    turn: Turn,
    *,
    logged: Mapping[int, Logged] | None = None,
) -> list[Group]:
    """The plants by what they get, strongest first; clear water before, nothing last.

    `logged` is what the logs of plants add, by their ids (`pot_logs.logged`).
    """
    gathered: dict[_Key, list[Plant]] = {}
    why: dict[_Key, dict[tuple[str, ...], list[Plant]]] = {}
    doses: dict[_Key, Dose] = {}
    salty: dict[_Key, list[tuple[Plant, OverLimit]]] = {}
    kitchen = _Kitchen(collection, product, day, turn, {})
    for plant in plants:
        known = (logged or {}).get(plant.id, Logged())
        advice = advice_for(plant, day, south=turn.south, logged=known)
        dose = kitchen.dose(plant, known.resume_share) if advice.action is Action.FEED else None
        water = collection.water_of(plant)
        wet = advice.action is not Action.NOTHING
        key = (
            str(advice.action),
            round(dose.per_litre, 9) if dose is not None else 0.0,
            water.id if wet and water is not None else None,
        )
        gathered.setdefault(key, []).append(plant)
        said = tuple(reason(found, turn) for found in advice.reasons[:_SAID])
        why.setdefault(key, {}).setdefault(said, []).append(plant)
        if dose is not None:
            doses[key] = dose
        if dose is not None and dose.over_limit is not None:
            salty.setdefault(key, []).append((plant, dose.over_limit))
    groups = []
    for number, (key, members) in enumerate(gathered.items()):
        dose = doses.get(key)
        groups.append(
            Group(
                key=f"g{number}",
                action=key[0],
                plants=tuple(members),
                reasons=tuple((tuple(of), said) for said, of in why[key].items()),
                volume_l=_volume_l(members, key[0]),
                per_litre=dose.per_litre if dose else 0.0,
                ceiling=dose.most if dose else None,
                strength=dose.strength if dose else None,
                unit=dose.unit if dose else "g",
                water_id=key[2],
                salty=tuple(salty.get(key, ())),
            )
        )
    order = {"flush": 0, "clear": 1, "feed": 2, "nothing": 3}
    return sorted(groups, key=lambda g: (order[g.action], -g.per_litre))


def _volume_l(plants: list[Plant], action: str) -> float:
    if action == "nothing":
        return 0.0
    if action == "flush":
        return sum(flush_volume_l(p.pot_cm) * p.count for p in plants)
    return sum(water_for(p) for p in plants)


@dataclass(frozen=True, slots=True)
class _Kitchen:
    """Works out the dose in a litre once for plants that are alike."""

    collection: Collection
    product: Product | None
    day: date
    turn: Turn
    known: dict[tuple[object, ...], Dose | None]

    def dose(self, plant: Plant, share: float | None = None) -> Dose | None:
        """What a litre for this plant takes, or a share of the usual; None without a product."""
        water = self.collection.water_of(plant)
        key = (plant.genus, growth_on(plant, self.day), plant.medium, water.id if water else None,
               share)  # fmt: skip
        if key not in self.known:
            self.known[key] = self._work_out(plant, genus_of(plant), share)
        return self.known[key]

    def _work_out(self, plant: Plant, genus: Genus | None, share: float | None) -> Dose | None:
        product = self.product
        if product is None:
            return None
        rate, n_percent = product.label_per_litre, analysis_of(product)[0]
        if rate is None and n_percent < LEAST_N_PERCENT:
            return None  # nothing to go by
        water = self.collection.water_of(plant)
        ec = water.ec_ms_cm if water is not None else None
        if ec is None and water is not None:
            ec = pure_water_ec_ms_cm(water.kind)
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
                    strength=None if share is None else NOTHING_SAID.factor * share,
                    season=season_of(self.day.month, south=self.turn.south),
                    medium=plant.medium,
                    growth=growth_on(plant, self.day),
                    plants=(genus,) if genus else (),
                    water_kind=water.kind if water else None,
                    water_ec_ms_cm=ec,
                    nitrogen=nitrogen_forms(product),
                    hardness_mg_l_caco3=water.hardness_mg_l_caco3 if water else None,
                    scale_step_g=owner.scale_step_g if owner else None,
                    syringe_step_ml=owner.syringe_step_ml if owner else None,
                )
            )
        except ValueError:  # no nitrogen and no label rate: nothing to go by
            return None
