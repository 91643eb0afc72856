"""What a plant on record is due: its state for `dosing.advice`, and that in a few words."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from functools import cache

from bot.conversation.turn import Turn
from bot.dosing.advice import Advice, PlantState, Reason, advise
from bot.dosing.plants import Genus, of_name, resting, types_of
from bot.dosing.pot_water import watering_l
from bot.dosing.season import season_of
from bot.dosing.strength import GROWING
from bot.records.models import Plant

#: A state of growth that was told counts for so long [d]; ours.
GROWTH_LASTS_DAYS = 91


def genus_of(plant: Plant) -> Genus | None:
    """The almanac's entry of a plant."""
    return of_name(plant.genus)


@cache
def _types_rest(genus: Genus, month: int, south: bool) -> bool:
    """Whether types of a genus rest in a month."""
    season = season_of(month, south=south)
    return bool(resting(types_of((genus,)), month=month, season=season, south=south))


def growth_on(plant: Plant, day: date) -> str | None:
    """How a plant grows on a day; what was told a season ago tells nothing any more."""
    since = plant.growth_since
    lasting = plant.growth in ("resting", "seedling")
    if since is not None and not lasting and (day - since).days > GROWTH_LASTS_DAYS:
        return None
    return plant.growth


@dataclass(frozen=True, slots=True)
class Logged:
    """What the log of a plant adds: salts by `pot_logs`, a pause by `rescue_log`."""

    too_salty: bool = False
    pause_days: int | None = None
    resume_share: float | None = None
    flush_first: bool = False


def state_of(plant: Plant, day: date, *, south: bool, logged: Logged = Logged()) -> PlantState:
    """What is known of a plant on a day."""

    def since(on: date | None) -> int | None:
        return None if on is None else max((day - on).days, 0)

    genus = genus_of(plant)
    asleep = genus is not None and _types_rest(genus, day.month, south)
    return PlantState(
        genus=genus,
        growth=growth_on(plant, day),
        medium=plant.medium,
        days_since_added=since(plant.added_on),
        days_since_fed=since(plant.last_fed_on),
        days_since_clear=since(plant.last_clear_on),
        days_since_flush=since(plant.last_flush_on),
        days_since_repot=since(plant.last_repot_on),
        growth_days=since(plant.growth_since),
        types_rest=asleep and growth_on(plant, day) not in GROWING,
        too_salty=logged.too_salty,
        pause_days=logged.pause_days,
        resume_share=logged.resume_share,
        flush_first=logged.flush_first,
    )


def advice_for(plant: Plant, day: date, *, south: bool, logged: Logged = Logged()) -> Advice:
    """What a plant is due on a day."""
    return advise(
        state_of(plant, day, south=south, logged=logged),
        month=day.month,
        season=season_of(day.month, south=south),
        south=south,
    )


def water_for(plant: Plant) -> float:
    """Water that a plant, or several alike, takes at a watering [L]: as told, else by the pot."""
    if plant.water_ml is not None:
        return plant.water_ml / 1000 * plant.count
    return watering_l(plant.medium, plant.pot_cm, count=plant.count).volume_l


def reason(found: Reason, turn: Turn) -> str:
    """A reason in a few words."""
    code = f"reason-{found.code.replace('.', '-')}"
    return turn.words.say(code, weeks=found.weeks if found.weeks is not None else 0)


def due(plant: Plant, turn: Turn, *, logged: Logged = Logged()) -> str:
    """What a plant is due today, with the first reason."""
    advice = advice_for(plant, turn.today, south=turn.south, logged=logged)
    what = turn.words.say(f"due-{advice.action}")
    return f"{what} ({reason(advice.reasons[0], turn)})" if advice.reasons else what
