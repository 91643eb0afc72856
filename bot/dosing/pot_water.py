"""How much water a pot takes: at a watering, and to flush it.

The pot is taken as a cut cone as high as it is wide, three quarters as wide at the bottom, filled
to nine tenths: ours, and right to about a fifth for usual plastic pots.
"""

from __future__ import annotations

from dataclasses import dataclass
from math import pi

from bot.almanac.reference import water_held

#: Taken where the pot was not told [cm].
ASSUMED_POT_CM = 12.0
#: Taken where the medium was not told.
ASSUMED_MEDIUM = "bark"
#: Share of the held water that is gone when it is time to water [1]; ours.
DRAWN_DOWN = 0.5
#: Share of the water poured that should run through (leaching fraction) [1]; common practice.
RUNS_THROUGH = 0.2
#: A mounted plant, sprayed or dipped until its roots are wet [L]; ours.
MOUNTED_L = 0.1
#: Times a pot volume is poured through for a flush, with a rest between: twice the volume of the
#: pot after UC ANR, houseplants; that pauses help is from memory.
FLUSH_PASSES = 2
_BOTTOM = 0.75
_FILLED = 0.9


@dataclass(frozen=True, slots=True)
class PotWater:
    """Water for one watering.

    Parameters
    ----------
    volume_l : for all the pots [L]
    assumed : what was not told and taken as usual: 'pot_cm', 'medium'
    source : of the water the medium holds
    """

    volume_l: float
    assumed: tuple[str, ...]
    source: str


def pot_volume_l(pot_cm: float) -> float:
    """Medium in a pot.

    Parameters
    ----------
    pot_cm : upper diameter [cm]

    Returns
    -------
    float
        [L]; the shape is ours.
    """
    height_cm = pot_cm * _FILLED
    return pi / 12 * height_cm * pot_cm**2 * (1 + _BOTTOM + _BOTTOM**2) / 1000


def watering_l(medium: str | None, pot_cm: float | None, *, count: int = 1) -> PotWater:
    """Water that one watering of some pots takes, with what runs through.

    Parameters
    ----------
    medium : canonical name, None where unknown
    pot_cm : upper diameter [cm], None or 0 where unknown
    count : number of pots

    Returns
    -------
    PotWater

    Raises
    ------
    KeyError
        For a medium that is not in the almanac.

    References
    ----------
    bot/almanac/watering.toml for what a medium holds.
    """
    if medium == "mounted":
        return PotWater(MOUNTED_L * count, (), "ours")
    assumed = (
        *(() if pot_cm else ("pot_cm",)),
        *(("medium",) if medium is None else ()),
    )
    held = water_held()[medium or ASSUMED_MEDIUM]
    taken_up = pot_volume_l(pot_cm or ASSUMED_POT_CM) * held.held * DRAWN_DOWN
    return PotWater(count * taken_up / (1 - RUNS_THROUGH), assumed, held.source)


def flush_volume_l(pot_cm: float | None, *, passes: int = FLUSH_PASSES) -> float:
    """Clear water that flushes one pot, a pot volume in each pass.

    Parameters
    ----------
    pot_cm : upper diameter [cm], None or 0 where unknown
    passes : times a pot volume is poured through

    Returns
    -------
    float
        For all passes [L].

    References
    ----------
    UC ANR, houseplants: water of twice the volume of the pot.
    """
    return passes * pot_volume_l(pot_cm or ASSUMED_POT_CM)
