"""Which cautions matter for a request, the most severe first (almanac/cautions.toml)."""

from __future__ import annotations

from typing import NamedTuple

from bot.almanac.reference import caution_severities, measures
from bot.almanac.waters import orchid_limits


class Caution(NamedTuple):
    """A code and how much it matters now (4 most)."""

    code: str
    severity: int


_PURE_WATERS = frozenset({"rain", "reverse_osmosis", "distilled"})
#: So many times what a class bears is a water that is warned of at each dose (ours).
FAR_ABOVE = 2.0
HARD_WATER_MG_L_CACO3 = measures()["hard_water"].value


def _far_above(quantity: str, value: float | None, feeding_class: str) -> bool:
    """Whether a water's figure is far more than the class of plants bears."""
    bearable = orchid_limits()[quantity].up_to[feeding_class][1]
    return value is not None and value > FAR_ABOVE * bearable


def cautions(
    *,
    form: str | None,
    spoons: bool,
    plant_known: bool,
    types_rest: bool,
    feeding_class: str,
    regime: str | None,
    growth: str | None,
    winter_target: bool,
    water_kind: str | None,
    hardness_mg_l_caco3: float | None,
    called_hard: bool,
    water_ec_ms_cm: float | None,
    alkalinity_mg_l_caco3: float | None,
    ailing: bool,
    has_calcium: bool,
    has_magnesium: bool,
    water_over_limit: bool = False,
) -> tuple[Caution, ...]:
    """Codes for one dose, most severe first, in a stable order.

    `called_hard` is a hardness told in words; figures of the water are None where nobody told them;
    `water_over_limit` where it is too salty with the feed in it.
    """
    pure = water_kind in _PURE_WATERS
    applies = {
        "water-over-limit": water_over_limit,
        "softened-water": water_kind == "softened",
        "plant-unknown": not plant_known,
        "types-rest": types_rest,
        "wet-roots-first": True,
        "spoon-is-rough": spoons,
        "sensitive-roots": feeding_class == "sensitive",
        "winter-half": winter_target,
        "slow-growth": growth == "slow",
        "ailing": ailing,
        "hard-water": called_hard or (hardness_mg_l_caco3 or 0) > HARD_WATER_MG_L_CACO3,
        "salty-water": _far_above("ec_ms_cm", water_ec_ms_cm, feeding_class)
        or _far_above("alkalinity_mg_l_caco3", alkalinity_mg_l_caco3, feeding_class),
        "no-calcium-in-water": pure and not (has_calcium and has_magnesium),
        "clear-water-monthly": regime in (None, "every_watering", "weekly"),
        "too-much-signs": True,
        "calcium-apart": has_calcium,
        "no-dust": form == "powder",
        "no-splash": form != "powder",
        "children-and-pets": True,
        "never-mix-concentrates": True,
        "label-first": True,
        "not-for-food": True,
        "not-down-the-drain": True,
        "ask-a-society": True,
    }
    found = [
        Caution(code, severity.severity)
        for code, severity in caution_severities().items()
        if applies.get(code)
    ]
    return tuple(sorted(found, key=lambda c: -c.severity))
