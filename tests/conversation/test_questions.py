"""What is missing or contradictory gets one clear question and no dose."""

from __future__ import annotations

from datetime import date

import pytest

from bot.conversation.ask import Setting, ask

SETTING = Setting(today=date(2026, 5, 15))


@pytest.mark.parametrize(
    ("text", "asked"),
    [
        ("20-20-20 powder, half strength", "How many litres"),
        ("5 litres, half strength, phal in bark", "three numbers"),
        ("how much feed for my phal", "How many litres, and what are the three numbers"),
        ("5 l, powder, label says 1 g/l", "three numbers on the label"),
        ("2 l, 0-30-20 powder, half strength", "hardly any nitrogen"),
        ("2 l, 0-30-20 powder, label 1 g/l, 100 ppm N", "hardly any nitrogen"),
        ("5 l rain water, 20-20-20 powder, EC 0.04", "already"),
        ("5 l, 20-20-20 powder, label 2 ml/l", "millilitres"),
        ("5 l tap water EC 0.9, 20-20-20 powder, target EC 0.8", "already"),
        ("2 caps per 5 litres, 3-3-5 liquid", "How much is “2 caps per 5 litres”?"),
        ("3-1-2 ratio powder, 2 l, half", "three numbers"),
        ("4x diluted, 20-20-20 powder, 2 l", "“4x diluted” leaves it open"),
        ("2 l tap 250 ppm, 20-20-20 powder", "hardness or EC"),
    ],
)
def test_what_is_missing_is_asked_for(text: str, asked: str) -> None:
    answer = ask(text, SETTING)
    assert answer.kind == "ask"
    assert answer.dose is None
    assert answer.ask is not None
    assert asked in answer.ask
    assert answer.reply.startswith(answer.ask)


@pytest.mark.parametrize(
    ("text", "shown"),
    [
        ("2 litres or 3 litres of 20-20-20 powder", ("2 litres", "3 litres")),
        ("5 l, 20-20-20 powder, 30-10-10 powder", ("20-20-20", "30-10-10")),
        ("5 l, 20-20-20 powder, half strength, quarter strength", ("half", "quarter")),
        ("5 l, 20-20-20 powder liquid", ("powder", "liquid")),
        ("5 l, 20-20-20 powder, label 1 g/l, label 3 g/l", ("1 g/l", "3 g/l")),
        ("5 l, 20-20-20 powder, 100 ppm N, 50 ppm N", ("100 ppm N", "50 ppm N")),
        ("5 l, 20-20-20 powder, bark, sphagnum", ("bark", "sphagnum")),
        ("5 l, 20-20-20 powder, winter, summer", ("winter", "summer")),
        ("2-3 litres, 20-20-20 powder", ("2-3 litres",)),
        ("5 l, 20-20-20 powder, not half strength", ("not half",)),
        ("1,500 l, 20-20-20 powder", ("1,500",)),
        ("5 l, 20-20-20 powder, 150 ppm", ("150 ppm",)),
    ],
)
def test_what_contradicts_or_is_unclear_is_shown_and_asked(
    text: str, shown: tuple[str, ...]
) -> None:
    answer = ask(text, SETTING)
    assert answer.kind == "ask"
    assert answer.dose is None
    assert answer.ask is not None
    for part in shown:
        assert part in answer.ask


@pytest.mark.parametrize(
    "text", ["5 l, 5 litres, 20-20-20 powder", "5 l, 20-20-20 powder, half, 50 %"]
)
def test_the_same_value_twice_is_no_question(text: str) -> None:
    assert ask(text, SETTING).kind == "dose"
