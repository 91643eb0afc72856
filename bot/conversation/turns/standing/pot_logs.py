"""The logs of pots as the model of their salts takes them, many pots at once."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field
from datetime import date, timedelta
from functools import lru_cache
from typing import Any

from bot.conversation.collection import Collection
from bot.conversation.turn import Turn
from bot.conversation.turns.shelf import analysis_of, nitrogen_forms
from bot.conversation.turns.standing.advice import Logged, advice_for, genus_of
from bot.conversation.turns.standing.rescue_log import pauses
from bot.dosing.advice import BY_SALTS
from bot.dosing.conductivity import MAX_READING_MS_CM, feed_ec_ms_cm
from bot.dosing.dose import (
    ASSUMED_DENSITY_KG_L,
    ASSUMED_N_MG_L,
    pure_water_ec_ms_cm,
    water_ec_by_hardness,
)
from bot.dosing.label import elemental_percent
from bot.dosing.pot_salts import (
    Pot,
    PotEvent,
    PotEventKind,
    PotState,
    between,
    ceiling_ec_of,
    flushing_helps,
    pot_of,
    simulate,
    start_of,
    unknown_start_ec_ms_cm,
    wet_ec,
)
from bot.records import log
from bot.records.models import Plant, Product, Water

#: A log is followed so far back [d]: of salts half a year old a sixth at most is left in a pot that
#: is watered weekly; ours.
LOOKED_BACK = 182
#: EC of a water that nothing is known of [mS/cm]: a usual tap; ours.
ASSUMED_WATER_EC = 0.4
#: Strength of a feed that was logged without one [1]: the usual at every watering.
_ASSUMED_STRENGTH = 0.25
#: Logs whose end is kept in memory, those asked for last.
_KEPT_LOGS = 4096


@dataclass(frozen=True, slots=True)
class PotLog:
    """A pot with its log.

    Parameters
    ----------
    plant, pot : whose pot it is
    events : by day, from its last flush or fresh medium on, at most a year
    water_ec : of its clear water [mS/cm]
    ceiling_ec : that its pore water should not pass [mS/cm]
    feeding_class : of its kind
    known_from : what is known of its beginning: 'repot', or '' where nothing is
    """

    plant: Plant
    pot: Pot
    events: tuple[PotEvent, ...]
    water_ec: float
    ceiling_ec: float
    feeding_class: str
    known_from: str

    @property
    def start(self) -> PotState | None:
        """The beginning as it is shown; None where nothing is known of it."""
        return self.least_start if self.known_from else None

    @property
    def least_start(self) -> PotState:
        """The beginning with the salts of the water alone: what nobody told brings no flush."""
        sd = self.water_ec if self.known_from else unknown_start_ec_ms_cm()
        return start_of(self.pot, self.water_ec, sd)

    def state(self, day: date, start: PotState | None) -> PotState:
        """Followed to a day."""
        if not self.events:
            return simulate(self.pot, (), start=start, until=day)[-1]
        end = _followed(self.pot, self.events, start)
        return between(self.pot, end, self.events[-1].on, day)

    def too_salty(self, day: date) -> bool:
        """Whether its log alone brings the pore water over its ceiling, and a flush would help."""
        if not self.events or not flushing_helps(self.water_ec, self.ceiling_ec):
            return False
        if self.read_over():
            return True
        return wet_ec(self.pot, self.state(day, self.least_start)) > self.ceiling_ec

    def read_over(self) -> bool:
        """Whether runoff was measured over the ceiling and nothing washed the pot since.

        The model weighs a reading against itself; who was told to flush by it is not told to feed.
        """
        for event in reversed(self.events):
            if event.kind is PotEventKind.READING:
                return event.ec > self.ceiling_ec
            if event.kind in (PotEventKind.CLEAR, PotEventKind.FLUSH):
                return False
        return False


@lru_cache(maxsize=_KEPT_LOGS)
def _followed(pot: Pot, events: tuple[PotEvent, ...], start: PotState | None) -> PotState:
    return simulate(pot, events, start=start)[-1]


async def logged(
    turn: Turn, collection: Collection, plants: Sequence[Plant], day: date
) -> dict[int, Logged]:
    """What the logs of plants add to what they are due, by their ids; only where something does."""
    salty = await too_salty(turn, collection, plants, day)
    paused = await pauses(turn, plants, day)
    found = {}
    for plant_id in {*salty, *paused}:
        pause = paused.get(plant_id)
        left = pause.days_left(day) if pause is not None else 0
        share = pause.share if pause is not None and not left else None
        flush = pause is not None and pause.flush_first
        found[plant_id] = Logged(plant_id in salty, left or None, share, flush)
    return found


async def too_salty(
    turn: Turn, collection: Collection, plants: Sequence[Plant], day: date
) -> frozenset[int]:
    """Of some plants those whose pot passes its ceiling by its log, by their ids."""
    asked = [p for p in plants if _would_flush(p, turn, day)]
    logs = await pot_logs(turn, collection, asked, day)
    same: dict[tuple[object, ...], bool] = {}
    found = set()
    for pot_log in logs:
        alike = (id(pot_log.pot), tuple(map(id, pot_log.events)), pot_log.water_ec,
                 pot_log.feeding_class, pot_log.known_from)  # fmt: skip
        if alike not in same:
            same[alike] = pot_log.too_salty(day)
        if same[alike]:
            found.add(pot_log.plant.id)
    return frozenset(found)


def _would_flush(plant: Plant, turn: Turn, day: date) -> bool:
    """Whether salts could change what a plant is due: not where it rests or is flushed anyway."""
    advice = advice_for(plant, day, south=turn.south, logged=Logged(too_salty=True))
    return any(reason.code == BY_SALTS for reason in advice.reasons)


async def pot_logs(
    turn: Turn, collection: Collection, plants: Sequence[Plant], day: date, *, whole: bool = False
) -> list[PotLog]:
    """The logs of plants that stand in a pot, up to a day; `whole` also before the last flush."""
    potted = [p for p in plants if p.medium != "mounted"]
    if not potted or turn.owner is None:
        return []
    first = day - timedelta(days=LOOKED_BACK)
    fresh = {p.id: (p.last_repot_on, None if whole else p.last_flush_on) for p in potted}
    begins = {i: max(first, *(d for d in days if d), first) for i, days in fresh.items()}
    only = potted[0].id if len(potted) == 1 else None
    until = min(day, turn.today)
    async with turn.records.reading() as session:
        poured = await log.poured(
            session, turn.owner_id, since=min(begins.values()), until=until, only=only
        )
    reckoner = _Reckoner(collection)
    rows: dict[int, list[log.Poured]] = {p.id: [] for p in potted}
    for pour in poured:
        for plant_id in pour.plant_ids:
            if plant_id in rows and pour.on >= begins[plant_id]:
                rows[plant_id].append(pour)
    return [reckoner.log_of(p, rows[p.id], begins[p.id], south=turn.south) for p in potted]


# --- as the model takes it -----------------------------------------------------------------------


@dataclass(slots=True)
class _Reckoner:
    """Makes events of entries; what is alike is worked out once."""

    collection: Collection
    events: dict[tuple[Any, ...], PotEvent | None] = field(default_factory=dict)
    feeds: dict[tuple[int | None, str | None], float] = field(default_factory=dict)
    waters: dict[int | None, float] = field(default_factory=dict)
    pots: dict[tuple[Any, ...], Pot] = field(default_factory=dict)

    def log_of(self, plant: Plant, rows: list[log.Poured], since: date, *, south: bool) -> PotLog:
        water = self.collection.water_of(plant)
        key = water.id if water is not None else None
        if key not in self.waters:
            self.waters[key] = water_ec_of(water)
        water_ec = self.waters[key]
        events = tuple(e for r in rows if (e := self._event(r, water_ec)) is not None)
        shape = (plant.medium, plant.pot_cm)
        if shape not in self.pots:
            self.pots[shape] = pot_of(plant.medium, plant.pot_cm, south=south)
        genus = genus_of(plant)
        feeding_class = genus.feeding_class if genus is not None else "moderate"
        repotted = plant.last_repot_on is not None and plant.last_repot_on >= since
        return PotLog(
            plant, self.pots[shape], events, water_ec, ceiling_ec_of(feeding_class),
            feeding_class, "repot" if repotted else "",
        )  # fmt: skip

    def _event(self, row: log.Poured, water_ec: float) -> PotEvent | None:
        key = (row.kind, row.on, row.product_id, row.told, water_ec)
        if key not in self.events:
            self.events[key] = self._worked_out(row, water_ec)
        return self.events[key]

    def _worked_out(self, row: log.Poured, water_ec: float) -> PotEvent | None:
        kind = PotEventKind(str(row.kind))
        if kind is PotEventKind.READING:
            ec = row.details.get("runoff_ec_ms_cm")
            fits = isinstance(ec, int | float) and 0 <= ec <= MAX_READING_MS_CM
            return PotEvent(row.on, kind, float(ec)) if fits and ec is not None else None
        if kind is not PotEventKind.FED:
            return PotEvent(row.on, kind, water_ec)
        return PotEvent(row.on, kind, min(water_ec + self._feed_ec(row), MAX_READING_MS_CM))

    def _feed_ec(self, row: log.Poured) -> float:
        key = (row.product_id, row.told)
        if key not in self.feeds:
            product = next((p for p in self.collection.products if p.id == row.product_id), None)
            self.feeds[key] = _feed_ec(row.details, product or self.collection.default_product)
        return self.feeds[key]


def water_ec_of(water: Water | None) -> float:
    """EC of a water as far as it is known [mS/cm]: told, by its kind, or from its hardness."""
    if water is None:
        return ASSUMED_WATER_EC
    if water.ec_ms_cm is not None:
        return water.ec_ms_cm
    pure = pure_water_ec_ms_cm(water.kind)
    if pure is not None:
        return pure
    estimated = water_ec_by_hardness(water.hardness_mg_l_caco3, water.kind)
    return ASSUMED_WATER_EC if estimated is None else estimated.middle


def _feed_ec(details: dict[str, Any], product: Product | None) -> float:
    """EC that a logged feed added [mS/cm], the middle of what its label allows."""
    strength = float(details.get("strength") or _ASSUMED_STRENGTH)
    extras: dict[str, float] = {}
    rate, forms = None, None
    if details.get("analysis"):
        n, p, k = (float(a) for a in details["analysis"])
    elif product is not None:
        n, p, k = analysis_of(product)
        extras, forms = dict(product.extras or {}), nitrogen_forms(product)
        rate = _label_g_l(product)
    else:
        n, p, k = 20.0, 20.0, 20.0
    if details.get("n_mg_l") and n > 0:
        g_l = float(details["n_mg_l"]) / (10 * n)
    elif rate is not None:
        g_l = strength * rate
    elif n > 0:
        g_l = strength * ASSUMED_N_MG_L / (10 * n)
    else:
        return 0.0
    elements = {e: 10 * share * g_l for e, share in elemental_percent(n, p, k, extras).items()}
    for share in (1.0, 0.1, 0.01):  # what is stronger than the model holds for, in proportion
        try:
            thinned = {e: share * mg_l for e, mg_l in elements.items()}
            ec = feed_ec_ms_cm(thinned, forms, product_mg_l=1000 * share * g_l)
        except ValueError:
            continue
        return (ec.low + ec.high) / 2 / share
    return MAX_READING_MS_CM


def _label_g_l(product: Product) -> float | None:
    """The label's rate [g/L]; spoons have no known weight."""
    if product.label_per_litre is None:
        return None
    if product.label_unit == "ml":
        return product.label_per_litre * (product.density_kg_l or ASSUMED_DENSITY_KG_L)
    return product.label_per_litre if product.label_unit == "g" else None
