"""Every formula of the chemistry has a figure from outside, or says why there is none."""

from __future__ import annotations

import ast
from pathlib import Path

import pytest

import bot.dosing

from .checks import published, themes

DOSING = Path(bot.dosing.__file__).parent
MODULES = (
    "blending", "comparing", "concentration", "conductivity", "meter", "pot_salts", "pot_water",
    "salt_index", "stock", "supplement", "water",
)  # fmt: skip
#: Which published figures a formula is held to, by the kind of check.
HELD_TO = {
    "comparing.compare": ("cost_of_nitrogen", "powder_for_feed", "liquid_for_nitrogen"),
    "comparing.nutrients_per_money": ("cost_of_phosphate", "nutrient_in_pack"),
    "comparing.salt_index_per_n": ("salt_index_per_n",),
    "conductivity.ec_ms_cm": ("ec_of_ions",),
    "conductivity.ec_to_ppm": ("ppm_on_scale",),
    "conductivity.feed_ec_ms_cm": ("feed_holds", "feed_with_forms_near"),
    "conductivity.temperature_to_25": (
        "temperature_factor", "natural_water_to_25", "linear_to_25",
    ),
    "meter.mixed_ec_ms_cm": ("added_ec",),
    "meter.reading_ms_cm": ("reading",),
    "meter.water_to_add_l": ("blend",),
    "pot_salts.after_watering": ("runoff_ec", "quarter_ec"),
    "pot_salts.flush_plan": ("flush_pot_volumes",),
    "pot_salts.pot_of": ("days_to_half",),
    "pot_salts.steady_state": ("root_zone_factor", "runoff_plateau"),
    "pot_water.flush_volume_l": ("flush_pot_volumes",),
    "stock.clashes": ("gypsum_saturates",),
    "stock.first_to_fall": ("saturated_g_l",),
    "stock.saturation_indices": ("gypsum_saturates",),
    "stock.solubility_g_l": ("mass_percent", "grams_in_100_g_of_water"),
    "stock.strongest_stock": ("saturated_g_l",),
    "supplement.fill": ("calcium_brought",),
    "supplement.missing": ("calcium_target", "magnesium_target"),
    "water.blend": ("blend",),
    "water.blend_to": ("blend_fraction",),
    "water.looks_softened": ("softened_na",),
    "water.softened": ("softened_na",),
    "water.suitability": ("restriction_from", "restriction_from_mg_l"),
}  # fmt: skip
#: What has no printed figure, and what it is held to instead.
INSTEAD = {
    "blending.blend": "least squares: scipy, on random problems, in tests/dosing/test_blending.py",
    "blending.goal": "ratios with their sources in blends.toml: trials, no worked example",
    "blending.least_squares": "scipy, on random problems, in tests/dosing/test_blending.py",
    "pot_salts.flush_due": "a month, and a ceiling that is ours",
    "pot_water.watering_l": "what a medium holds, with sources in watering.toml; the shape is ours",
    "salt_index.index_from_label": "the true index of random mixes, in tests/dosing",
    "salt_index.minimum": "scipy, on random problems, in tests/dosing/test_comparing.py",
    "stock.share_error": "the least of both errors by search, in tests/dosing/test_stock.py",
    "water.estimate": "printed analyses of waters lie within it, in tests/dosing/test_water.py",
}


def formulas() -> set[str]:
    """Public functions of the chemistry that name a reference."""
    found = set()
    for module in MODULES:
        tree = ast.parse((DOSING / f"{module}.py").read_text(encoding="utf-8"))
        for node in tree.body:
            if isinstance(node, ast.FunctionDef) and not node.name.startswith("_"):
                told = ast.get_docstring(node) or ""
                if "References" in told:
                    found.add(f"{module}.{node.name}")
    return found


KINDS = {check.kind for theme in themes() for check in published(theme)}


def test_every_formula_has_a_figure_or_says_why_not() -> None:
    assert formulas() == HELD_TO.keys() | INSTEAD.keys()
    assert not HELD_TO.keys() & INSTEAD.keys()


@pytest.mark.parametrize("formula", HELD_TO)
def test_its_figures_are_there(formula: str) -> None:
    assert set(HELD_TO[formula]) <= KINDS
