"""Which cautions matter for a request, the most severe first.

Common practice where no source is named. Safety: US EPA household page on plant food;
Missouri Poison Center; GisChem on nitrates.
"""

from __future__ import annotations

from typing import NamedTuple


class Caution(NamedTuple):
    """A code and how much it matters now (3 burns roots, 2 changes the plan, 1 house rule)."""

    code: str
    severity: int


_PURE_WATERS = frozenset({"rain", "reverse_osmosis", "distilled"})
#: FAO 29 has no figure for pots; 250 mg/L CaCO3 (14 degrees German) begins 'hard' in the
#: German detergent act (fixtures/published/hardness.toml, german-act-hard).
HARD_WATER_MG_L_CACO3 = 250.0


def cautions(
    *,
    form: str | None,
    spoons: bool,
    plant_known: bool,
    feeding_class: str,
    regime: str | None,
    growth: str | None,
    winter_target: bool,
    water_kind: str | None,
    hardness_mg_l_caco3: float | None,
    has_calcium: bool,
    has_magnesium: bool,
) -> tuple[Caution, ...]:
    """Codes for one dose, most severe first, in a stable order."""
    found = [Caution("wet-roots-first", 3)]
    if not plant_known:
        found.insert(0, Caution("plant-unknown", 3))
    if water_kind == "softened":
        found.insert(0, Caution("softened-water", 4))
    if spoons:
        found.append(Caution("spoon-is-rough", 3))
    if feeding_class == "sensitive":
        found.append(Caution("sensitive-roots", 3))
    if winter_target:
        found.append(Caution("winter-half", 2))
    if growth == "slow":
        found.append(Caution("slow-growth", 2))
    if (hardness_mg_l_caco3 or 0) > HARD_WATER_MG_L_CACO3:
        found.append(Caution("hard-water", 2))
    if water_kind in _PURE_WATERS and not (has_calcium and has_magnesium):
        found.append(Caution("no-calcium-in-water", 2))
    if regime in (None, "every_watering", "weekly"):
        found.append(Caution("clear-water-monthly", 2))
    found.append(Caution("too-much-signs", 1))
    if has_calcium:
        found.append(Caution("calcium-apart", 1))
    found.append(Caution("no-dust" if form == "powder" else "no-splash", 1))
    found += [
        Caution("children-and-pets", 1),
        Caution("never-mix-concentrates", 1),
        Caution("label-first", 1),
        Caution("not-for-food", 1),
        Caution("not-down-the-drain", 1),
        Caution("ask-a-society", 1),
    ]
    return tuple(sorted(found, key=lambda c: -c.severity))
