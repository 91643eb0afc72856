"""What dosing cannot work out has a sentence, for every code."""

from __future__ import annotations

import ast
from pathlib import Path

import pytest

import bot.dosing
from bot.conversation.wording import wording
from bot.dosing.impossible import Impossible

DOSING = Path(bot.dosing.__file__).parent


def raised() -> dict[str, set[str]]:
    """Every code with the names of its values, from the source."""
    found: dict[str, set[str]] = {}
    for path in DOSING.glob("*.py"):
        for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
            made = isinstance(node, ast.Call) and (
                (isinstance(node.func, ast.Name) and node.func.id == "Impossible")
                or (isinstance(node.func, ast.Attribute) and node.func.attr == "__init__")
            )
            if made and isinstance(node, ast.Call) and node.args:
                code = node.args[0]
                if isinstance(code, ast.Constant):
                    found[str(code.value)] = {k.arg for k in node.keywords if k.arg}
    return found


CODES = raised()


@pytest.mark.parametrize("code", CODES)
def test_every_code_has_a_sentence_that_shows_a_figure_where_there_is_one(code: str) -> None:
    values = {name: f"<{name}>" for name in CODES[code]} | {"hardness": "<hardness>"}
    sentence = wording("en").say(f"refuse-{code}", **values)
    assert sentence[-1] in ".?"
    if CODES[code] - {"strength", "most"}:  # an ionic strength tells a grower nothing
        assert "<" in sentence


def test_the_codes_are_found() -> None:
    assert {"sea-water", "water-imbalance", "temperature", "meter-unit"} <= CODES.keys()


def test_what_is_impossible_carries_its_figures() -> None:
    error = Impossible("sea-water", na=12000.0, most=10780.0)
    assert (error.code, error.values) == ("sea-water", {"na": 12000.0, "most": 10780.0})
    assert isinstance(error, ValueError)
