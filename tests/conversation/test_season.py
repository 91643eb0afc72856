"""A season of one invented grower: the approved conversation, in every language."""

from __future__ import annotations

import asyncio
from pathlib import Path
from typing import Any

import pytest

from tests.conversation.season import LANGUAGES, approved_of, days, say_all, script_of, told
from tests.records.records_kit import Databases

OTHERS = tuple(code for code in LANGUAGES if code != "en")


def _approved(code: str) -> list[str]:
    return approved_of(code).read_text(encoding="utf-8").splitlines()


def test_the_season_is_told_as_it_was_approved(databases: Databases) -> None:
    url = asyncio.run(databases.migrated())
    assert told(url, "en").splitlines() == _approved("en")


def test_the_season_is_long_enough_to_mean_something() -> None:
    lines = [line for _, lines in days(script_of("en")) for line in lines]
    assert len(lines) >= 120
    assert len({day for day, _ in days(script_of("en"))}) >= 10


@pytest.fixture(scope="module")
def english(tmp_path_factory: pytest.TempPathFactory) -> list[dict[str, Any]]:
    return _answers("en", tmp_path_factory.mktemp("en"))


def _answers(code: str, folder: Path) -> list[dict[str, Any]]:
    url = f"sqlite:///{folder}/season.db"
    return [answer for _, _, answer in say_all(script_of(code), "Mira", url)]


@pytest.mark.parametrize("code", OTHERS)
def test_the_season_is_the_same_in_every_language(
    code: str, english: list[dict[str, Any]], tmp_path: Path
) -> None:
    """Line by line the same kind of answer with the same dose, in the language it was asked in."""
    answers = _answers(code, tmp_path)
    assert len(answers) == len(english)
    unlike = [
        (other["message"], _gist(own), _gist(other))
        for own, other in zip(english, answers, strict=True)
        if _gist(own) != _gist(other)
    ]
    assert unlike == []
    assert {a["message"] for a in answers if a["language"] != code} == set()


def _gist(answer: dict[str, Any]) -> tuple[Any, ...]:
    dose = answer["dose"] or {}
    return answer["kind"], dose.get("amount"), dose.get("unit"), len(answer["cautions"])


@pytest.mark.parametrize("code", OTHERS)
def test_the_season_in_another_language_is_told_as_it_was_approved(
    code: str, tmp_path: Path
) -> None:
    assert told(f"sqlite:///{tmp_path}/season.db", code).splitlines() == _approved(code)
