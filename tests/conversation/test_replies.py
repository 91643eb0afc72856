"""What a person reads: the amount first, few cautions, and a sentence for every code."""

from __future__ import annotations

import ast
import re
from datetime import date
from itertools import product
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

import bot
from bot.conversation.ask import Setting, ask
from bot.conversation.replies import SHOWN_CAUTIONS
from bot.conversation.wording import wording
from bot.dosing.cautions import cautions
from bot.dosing.strength import (
    BY_MEDIUM,
    BY_REGIME,
    CEILINGS,
    NOTHING_SAID,
    SEEDLING,
    WINTER,
)
from grammar.reading import Conflict, Problem

SETTING = Setting(today=date(2026, 5, 15))
HOUSE = Path(bot.__file__).parent
SPEAKERS = [
    *sorted((HOUSE / "conversation").rglob("*.py")),
    *sorted((HOUSE / "channels").rglob("*.py")),
    HOUSE / "cli.py",
]
#: Rules that dose.py and ask.py name; the rest are walked from strength.py.
OTHER_RULES = {
    "full.assumed", "full.product", "full.target", "form.weighed", "density.assumed",
    "measure.us", "measure.imperial", "rest.genus", "rest.growth", "strength.asked",
    "strength.target", "ceiling.label",
}  # fmt: skip
RULE = re.compile(r"(full|form|density|measure|rest|strength|ceiling|ec|season|medium)\.[a-z_]+")
FTL = HOUSE / "conversation" / "wording" / "en.ftl"
IDS = set(re.findall(r"^([a-z][a-z0-9_-]*) =", FTL.read_text(encoding="utf-8"), re.MULTILINE))


def strings(path: Path) -> set[str]:
    """Texts written out in a file, docstrings and the fixed parts of f-strings left out."""
    tree = ast.parse(path.read_text(encoding="utf-8"))
    inside = {
        id(part) for node in ast.walk(tree) if isinstance(node, ast.JoinedStr)
        for part in node.values
    }  # fmt: skip
    return {
        node.value for node in ast.walk(tree)
        if isinstance(node, ast.Constant) and isinstance(node.value, str) and id(node) not in inside
    }  # fmt: skip


def listed(kind: type) -> set[str]:
    """Codes that a docstring names after 'is one of'."""
    text = re.search(r"is one of: ([^.]+)\.", kind.__doc__ or "")
    assert text is not None
    return {code.strip() for code in text.group(1).split(",")}


def rule_codes() -> set[str]:
    walked = [*BY_REGIME.values(), NOTHING_SAID, WINTER, SEEDLING, *BY_MEDIUM.values()]
    named = strings(HOUSE / "dosing" / "dose.py") | strings(HOUSE / "conversation" / "ask.py")
    written = {text for text in named if RULE.fullmatch(text)}
    return (
        {step.rule for step in walked}
        | {f"ceiling.{name}" for name in CEILINGS}
        | OTHER_RULES
        | written
    )


def caution_codes() -> set[str]:
    cases = product(
        ["powder", "liquid"], [False, True], [False, True], list(CEILINGS),
        [None, "monthly"], [None, "slow"], [False, True], ["softened", "rain", None],
        [None, 300.0], [False, True], [False], [False, True], [False], [None, 9.0], [None],
        [False, True],
    )  # fmt: skip
    names = (
        "form", "spoons", "plant_known", "feeding_class", "regime", "growth", "winter_target",
        "water_kind", "hardness_mg_l_caco3", "has_calcium", "has_magnesium",
        "types_rest", "called_hard", "water_ec_ms_cm", "alkalinity_mg_l_caco3", "ailing",
    )  # fmt: skip
    found = {
        caution.code
        for case in cases
        for caution in cautions(**dict(zip(names, case, strict=True)))  # type: ignore[arg-type]
    }
    return found | {"clear-water-only"}


def needed() -> set[str]:
    """Ids that a code of the house leads to."""
    return (
        {f"why-{rule.replace('.', '-')}" for rule in rule_codes()}
        | {f"caution-{code}" for code in caution_codes()}
        | {f"ask-{code}" for code in listed(Conflict)}
        | {f"refuse-{code}" for code in listed(Problem)}
        | {f"hint-{name}" for name in ("plant", "medium", "label", "water")}
    )


NEEDED = needed()
SPOKEN = set().union(*(strings(path) for path in SPEAKERS))
#: The beginnings of ids that a code completes: f"medium-{plant.medium}".
BEGINNINGS = {
    node.values[0].value
    for path in SPEAKERS
    for node in ast.walk(ast.parse(path.read_text(encoding="utf-8")))
    if isinstance(node, ast.JoinedStr)
    and isinstance(node.values[0], ast.Constant)
    and re.fullmatch(r"[a-z][a-z-]*-", str(node.values[0].value))
}
#: Calls that speak, with the place of the id among their arguments: those of a turn say the
#: kind of the answer first.
CALLS = {("turn", "say"): 1, ("turn", "ask"): 0, ("turn", "refuse"): 0}


def spoken(path: Path) -> set[str]:
    """Ids that a file says outright."""
    found = set()
    for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
        if not (isinstance(node, ast.Call) and isinstance(node.func, ast.Attribute)):
            continue
        owner = node.func.value.id if isinstance(node.func.value, ast.Name) else ""
        place = CALLS.get((owner, node.func.attr), 0 if node.func.attr == "say" else None)
        if place is None or len(node.args) <= place:
            continue
        code = node.args[place]
        if isinstance(code, ast.Constant):
            found.add(code.value)
    return found


@pytest.mark.parametrize("code", sorted(NEEDED))
def test_every_code_has_its_sentence(code: str) -> None:
    assert wording("en").has(code)


@pytest.mark.parametrize("path", SPEAKERS, ids=lambda path: path.name)
def test_every_sentence_that_is_spoken_exists(path: Path) -> None:
    assert spoken(path) <= IDS


@pytest.mark.parametrize("code", sorted(IDS))
def test_no_sentence_is_left_over(code: str) -> None:
    assert code in NEEDED | SPOKEN or any(code.startswith(b) for b in BEGINNINGS)


@pytest.mark.parametrize(
    ("text", "first"),
    [
        ("3 l, 20-20-20 powder, label 1 g/l, half", "1.5 g of 20-20-20 powder in 3 l"),
        ("2 l, 10-5-5 liquid, label 2 ml/l, half", "2 ml of 10-5-5 liquid in 2 l"),
        ("8 l, 20-20-20, half", "4 g of 20-20-20 in 8 l"),
        ("500 ml, 4.5-3-6 liquid, label 4 ml/l, half", "1 ml of 4.5-3-6 liquid in 500 ml"),
    ],
)
def test_the_first_line_is_the_amount(text: str, first: str) -> None:
    assert ask(text, SETTING).reply.split("\n")[0] == first


@pytest.mark.parametrize(
    "text",
    [
        "5 litres, 20-20-20 powder",
        "1 l softened water, 13-3-15 + 8Ca powder, masdevallia, slow growth",
        "4 l, 20-20-20 powder, 1 tsp per US gallon on the label, rain water",
        "2 l, 20-20-20 powder, 100 ppm N, winter",
    ],
)
def test_three_cautions_are_shown_at_most_and_the_gravest(text: str) -> None:
    answer = ask(text, SETTING)
    shown = [line[2:] for line in answer.reply.split("\n") if line.startswith("- ")]
    assert 1 <= len(shown) <= 3
    assert shown == [caution.text for caution in answer.cautions[:SHOWN_CAUTIONS]]
    assert len(answer.cautions) > len(shown)


def test_every_step_of_the_chain_is_shown() -> None:
    answer = ask("5 litres, 20-20-20 powder, sphagnum, winter, quarter strength", SETTING)
    line = next(line for line in answer.reply.split("\n") if line.startswith("Why:"))
    for step in answer.why:
        assert step.text in line
    assert "9.4 %" in line


def test_words_not_understood_are_shown() -> None:
    reply = ask("5 litres, 20-20-20 powder, quarter, florble", SETTING).reply
    assert "Not understood, not used: “florble”" in reply


def test_a_word_read_as_another_is_shown() -> None:
    reply = ask("5 litres, 20-20-20 powder, quarter, sfagnum", SETTING).reply
    assert "Read “sfagnum” as sphagnum." in reply


def test_a_long_unknown_is_cut_short() -> None:
    reply = ask(f"5 litres, 20-20-20 powder, quarter, {'z' * 300}", SETTING).reply
    assert "z" * 50 not in reply
    assert "…" in reply


def test_too_little_for_the_scale_gets_a_stock_solution() -> None:
    # 0.46875 g of 2 g in 100 ml: 23.4 ml
    reply = ask("5 litres, 20-20-20 powder, sphagnum, winter, quarter", SETTING).reply
    assert "Dissolve 2 g in water to make 100 ml" in reply
    assert "23.4 ml" in reply


def shown_amount(reply: str) -> float:
    return float(reply.split(" ")[0].replace(",", ""))


def test_an_amount_is_rounded_as_the_scale_shows_it() -> None:
    assert shown_amount(ask("5.1 l, 20-20-20 powder, half", SETTING).reply) in (2.5, 2.6)


@pytest.mark.parametrize(
    ("text", "most"),
    [
        ("5.1 l, 20-20-20 powder, full", 3.1875),  # 125 mg/L N
        ("1.99 l, 20-20-20 powder, label 1 g/l, monthly, double", 1.99),  # the label
        ("6.7 l, 20-20-20 powder, masdevallia, full", 1.675),  # 50 mg/L N
        ("1.03 l, 20-20-20 powder, masdevallia, full", 0.2575),  # the same, from a stock
        ("4.7 l, 10-5-5 liquid, full", 4.896),  # 125 mg/L N of 120 g in a litre
    ],
)
def test_an_amount_cut_by_a_ceiling_is_rounded_down(text: str, most: float) -> None:
    answer = ask(text, SETTING)
    assert answer.dose is not None
    assert any(step.rule.startswith("ceiling") for step in answer.why)
    assert answer.dose.amount == pytest.approx(most, abs=5e-4)
    assert most * 0.9 <= shown_amount(answer.reply) <= most


@settings(max_examples=150, deadline=None)
@given(
    hundredths=st.integers(20, 2000),
    per_cent=st.integers(5, 300),
    plant=st.sampled_from(["phal", "cattleya", "masdevallia"]),
)
def test_no_shown_amount_is_over_the_ceiling(hundredths: int, per_cent: int, plant: str) -> None:
    # of 20 % N, 1 g/L is the assumed full strength; ceilings of 200, 125 and 50 mg/L N
    most_g_l = {"phal": 1.0, "cattleya": 0.625, "masdevallia": 0.25}[plant]
    volume_l = hundredths / 100
    answer = ask(f"{volume_l:g} l, 20-20-20 powder, {plant}, {per_cent} %", SETTING)
    assert answer.kind == "dose"
    assert shown_amount(answer.reply) <= most_g_l * volume_l + 1e-9


def test_help_and_refusals_hold_no_notes() -> None:
    assert "Not understood" not in ask("florble garble", SETTING).reply


@pytest.mark.parametrize(
    ("spoons", "text"), [(0.125, "1/8"), (0.5, "1/2"), (0.75, "3/4"), (1.0, "1"), (1.125, "1 1/8")]
)
def test_spoons_read_as_cooks_write_them(spoons: float, text: str) -> None:
    assert wording("en").eighths(spoons) == text
