"""Bulletins, trials and rules of thumb, asked in words through the whole road."""

from __future__ import annotations

import tomllib
from datetime import date
from typing import Any

import pytest

from bot.conversation.ask import Setting, ask

from .checks import PUBLISHED, STATUSES

EXAMPLES = tomllib.loads((PUBLISHED / "in_words" / "examples.toml").read_text(encoding="utf-8"))[
    "example"
]
SUMMER = Setting(today=date(2026, 7, 1))


@pytest.mark.parametrize("example", EXAMPLES, ids=lambda e: e["id"])
def test_the_answer_is_the_published_one(example: dict[str, Any]) -> None:
    answer = ask(example["text"], SUMMER)
    expected = {"amount", "strength", "kind", "caution"} & set(example)
    assert len(expected) == 1
    assert not answer.unknown
    if "kind" in example:
        assert answer.kind == example["kind"]
        return
    assert answer.dose is not None
    if "caution" in example:
        assert example["caution"] in [c.code for c in answer.cautions]
    elif "amount" in example:
        assert answer.dose.amount == pytest.approx(example["amount"], abs=example["tolerance"])
    else:
        assert answer.dose.strength == pytest.approx(example["strength"], rel=1e-12)


@pytest.mark.parametrize("example", EXAMPLES, ids=lambda e: e["id"])
def test_every_example_names_its_source_and_how_sure_it_is(example: dict[str, Any]) -> None:
    assert example["source"]
    assert example["status"] in STATUSES
