"""From a text to an answer: its kind, what was understood, the figures, the JSON."""

from __future__ import annotations

import json
from datetime import date
from pathlib import Path
from typing import Any

import pytest

from bot.almanac.plants import genera
from bot.conversation.answer import Answer
from bot.conversation.ask import Setting, ask

MAY = Setting(today=date(2026, 5, 15))
JANUARY = Setting(today=date(2026, 1, 15))
EXAMPLE = "5 litres, 20-20-20 powder, sphagnum, winter, quarter strength"
FIXTURES = Path(__file__).resolve().parents[2] / "fixtures" / "messages"
LINES: list[dict[str, Any]] = [
    json.loads(line) for line in (FIXTURES / "en.jsonl").read_text(encoding="utf-8").splitlines()
]
FULL = [x for x in LINES if {"volume_l", "analysis"} <= x.get("want", {}).keys()]
TOP_LEVEL = {
    "message", "kind", "language", "understood", "read_as", "unknown", "dose", "why", "cautions",
    "ask", "reply",
}  # fmt: skip
UNDERSTOOD = {
    "volume_l", "analysis", "extras", "form", "strength", "exact", "regime", "medium", "season",
    "month", "growth", "genus", "genera", "count", "water", "label_rate", "target_n_mg_l",
    "target_ec_ms_cm",
}  # fmt: skip
DOSE = {
    "amount", "unit", "per_litre", "strength", "full_strength_source", "elements_mg_l",
    "ec_ms_cm", "relative_error", "stock",
}  # fmt: skip


def as_json(text: str, setting: Setting = MAY) -> dict[str, Any]:
    line = ask(text, setting).as_json()
    assert "\n" not in line
    found: dict[str, Any] = json.loads(line)
    return found


@pytest.mark.parametrize(
    ("text", "understood", "amount", "unit", "n_mg_l"),
    [
        # 1 g/L of 20 % N is full; x 1/4 x 1/2 x 3/4 x 5 L
        (EXAMPLE, {"medium": "sphagnum", "season": "winter"}, 0.46875, "g", 18.75),
        # nothing said: a quarter of 200 mg/L N
        ("2 l, 20-20-20 powder", {"strength": None}, 0.5, "g", 50.0),
        # 1 g/L on the label, half, 3 L
        (
            "3 l, 20-20-20 powder, label says 1 g/l, half strength",
            {"label_rate": {"per_litre": 1.0, "unit": "g"}},
            1.5,
            "g",
            100.0,
        ),
        # 5 g in 10 L is 0.5 g/L; half of it in 4 L
        (
            "4 l, 20-20-20 powder, 5 g per 10 litres on the label, half",
            {"label_rate": {"per_litre": 0.5, "unit": "g"}},
            1.0,
            "g",
            50.0,
        ),
        # 2 ml/L x 1/2 x 2 L, 1.2 kg/L taken
        ("2 l, 10-5-5 liquid, label 2 ml/l, half", {"form": "liquid"}, 2.0, "ml", 120.0),
        # 100 mg/L x 2 L / (10 x 20 %)
        ("2 l, 20-20-20 powder, 100 ppm N", {"target_n_mg_l": 100.0}, 1.0, "g", 100.0),
        # a quarter of the assumed rate and 50 mg/L N at most
        ("4 l, 20-20-20 powder, masdevallia, full", {"genus": "Masdevallia"}, 1.0, "g", 50.0),
        # Phalaenopsis may have 200 mg/L N
        ("4 l, 20-20-20 powder, phals, full", {"genus": "Phalaenopsis"}, 4.0, "g", 200.0),
        # the most sensitive decides
        (
            "4 l, 20-20-20 powder, phals and masdevallias, full",
            {"genus": None, "genera": ["Phalaenopsis", "Masdevallia"]},
            1.0,
            "g",
            50.0,
        ),
        # monthly: the label may be reached
        ("4 l, 20-20-20 powder, monthly, full", {"regime": "monthly"}, 4.0, "g", 200.0),
        # exactly: winter and sphagnum take nothing off
        ("4 l, 20-20-20 powder, winter, sphagnum, exactly half", {"exact": True}, 2.0, "g", 100.0),
    ],
)
def test_a_line_gets_its_dose(
    text: str, understood: dict[str, Any], amount: float, unit: str, n_mg_l: float
) -> None:
    answer = as_json(text)
    assert answer["kind"] == "dose"
    assert understood.items() <= answer["understood"].items()
    assert answer["dose"]["amount"] == pytest.approx(amount)
    assert answer["dose"]["unit"] == unit
    assert answer["dose"]["elements_mg_l"]["N"] == pytest.approx(n_mg_l)


@pytest.mark.parametrize(
    ("text", "setting", "kind"),
    [
        ("2 l, 20-20-20 powder, den. nobile", JANUARY, "no_feed"),
        ("2 l, 20-20-20 powder, den. nobile", MAY, "dose"),
        ("2 l, 20-20-20 powder, den. nobile, winter", MAY, "no_feed"),
        ("2 l, 20-20-20 powder, den. nobile, june", JANUARY, "dose"),
        ("2 l, 20-20-20 powder, den. nobile", Setting(date(2026, 1, 15), south=True), "dose"),
        ("2 l, 20-20-20 powder, den. nobile", Setting(date(2026, 7, 15), south=True), "no_feed"),
        ("2 l, 20-20-20 powder, catasetum, exactly half", JANUARY, "no_feed"),
        # a month that something happened in wakes no resting plant
        ("2 l, 20-20-20 powder, den. nobile, bought in july", JANUARY, "no_feed"),
        ("2 l, 20-20-20 powder, spring flowering den. nobile", JANUARY, "no_feed"),
        ("2 l, 20-20-20 powder, phal, resting", MAY, "no_feed"),
        ("hello", MAY, "help"),
        ("5 l, half strength", MAY, "ask"),
        ("5 l, 14-14-14 granules", MAY, "refused"),
    ],
)
def test_a_line_gets_its_kind(text: str, setting: Setting, kind: str) -> None:
    answer = as_json(text, setting)
    assert answer["kind"] == kind
    assert (answer["dose"] is not None) == (kind == "dose")
    assert (answer["ask"] is not None) == (kind == "ask")


def test_the_day_brings_winter_but_is_not_understood_as_said() -> None:
    answer = as_json("2 l, 20-20-20 powder, phals", JANUARY)
    assert answer["understood"]["season"] is None
    assert ("season.winter", 0.5) in [(w["rule"], w["factor"]) for w in answer["why"]]
    assert answer["dose"]["amount"] == pytest.approx(0.25)


@pytest.mark.parametrize(
    ("measure", "volume_l"),
    # NIST Handbook 44, appendix C; imperial gallon 4.54609 L by definition
    [("us", 3.785412), ("imperial", 4.54609)],
)
def test_a_gallon_without_a_country_follows_the_setting(measure: str, volume_l: float) -> None:
    answer = as_json(
        "1 gallon, 20-20-20 powder, quarter", Setting(date(2026, 5, 15), measure=measure)
    )
    assert answer["understood"]["volume_l"] == pytest.approx(volume_l, abs=1e-5)
    assert f"measure.{measure}" in [w["rule"] for w in answer["why"]]


@pytest.mark.parametrize(
    "text",
    [EXAMPLE, "hello", "5 l", "-5 l, 20-20-20 powder", "2 l, 20-20-20 powder, phal, resting", ""],
)
def test_json_has_exactly_the_keys_of_the_contract(text: str) -> None:
    answer = as_json(text)
    assert answer.keys() == TOP_LEVEL
    assert answer["understood"].keys() == UNDERSTOOD
    assert answer["message"] == text


def test_the_json_of_a_dose_has_exactly_the_keys_of_the_contract() -> None:
    answer = as_json(
        "5 litres, 20-20-20 powder, sfagnum, winter, quarter, rain water, florble, label 1 g/l"
    )
    assert answer["dose"].keys() == DOSE
    assert answer["dose"]["ec_ms_cm"].keys() == {"low", "high"}
    assert answer["dose"]["stock"].keys() == {"weigh_g", "in_ml", "use_ml"}
    assert answer["read_as"] == [{"text": "sfagnum", "as": "sphagnum"}]
    assert [u.keys() for u in answer["unknown"]] == [{"text", "suggestions"}]
    assert answer["unknown"][0]["text"] == "florble"
    assert all(step.keys() >= {"rule", "factor", "text"} for step in answer["why"])
    assert {frozenset(c) for c in answer["cautions"]} == {frozenset({"code", "text"})}
    assert answer["understood"]["label_rate"].keys() == {"per_litre", "unit"}
    assert answer["understood"]["water"].keys() == {
        "kind", "hardness_mg_l_caco3", "ec_ms_cm", "alkalinity_mg_l_caco3",
    }  # fmt: skip


def rests(want: dict[str, Any]) -> bool:
    """Whether a corpus line names a plant at rest, on the day taken here (15 May)."""
    if want.get("growth") == "resting":
        return True
    named = want.get("genera") or [want["genus"]] if want.get("genus") or want.get("genera") else []
    months = {"winter": (12, 1, 2), "spring": (3, 4, 5), "summer": (6, 7, 8), "autumn": (9, 10, 11)}
    for name in named:
        rest = genera()[name].rest_months
        if "month" in want or "season" not in want or want["season"] == "spring":
            if want.get("month", 5) in rest:
                return True
        elif sum(month in rest for month in months[want["season"]]) >= 2:
            return True
    return False


def nearly(found: Any, value: Any) -> bool:
    """Whether a slot holds what the corpus says, figures to four digits."""
    if isinstance(value, dict):
        return all(nearly(found[key], part) for key, part in value.items())
    if isinstance(value, (int, float)) and found is not None:
        return bool(found == pytest.approx(value, rel=1e-4))
    return bool(found == value)


@pytest.mark.parametrize("line", FULL, ids=[x["text"][:40] for x in FULL])
def test_a_full_line_of_the_corpus_gets_the_answer_it_needs(line: dict[str, Any]) -> None:
    want = line["want"]
    kind = "refused" if want.get("form") == "granules" else "no_feed" if rests(want) else "dose"
    answer = as_json(line["text"])
    assert answer["kind"] == kind
    understood = answer["understood"]
    for slot, value in want.items():
        assert nearly(understood[slot], value), slot


@pytest.mark.parametrize(
    "line", [x for x in LINES if x.get("no_dose")], ids=lambda line: line["text"][:40]
)
def test_a_line_that_must_not_be_dosed_is_not(line: dict[str, Any]) -> None:
    answer = as_json(line["text"])
    assert answer["kind"] != "dose"
    assert answer["dose"] is None
    if line.get("ask"):
        assert answer["kind"] == "ask"


@pytest.mark.parametrize(
    "line", [x for x in FULL if not rests(x["want"])], ids=lambda line: line["text"][:40]
)
def test_the_sums_of_a_dose_hold_in_the_json(line: dict[str, Any]) -> None:
    answer: Answer = ask(line["text"], MAY)
    if answer.kind == "refused":
        assert answer.understood.form == "granules"
        return
    assert answer.dose is not None
    assert answer.understood.volume_l is not None
    assert answer.dose.amount == answer.dose.per_litre * answer.understood.volume_l
    product = 1.0
    for step in answer.why:
        product *= step.factor
    assert answer.dose.strength == pytest.approx(product)
