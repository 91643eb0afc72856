"""One request in four languages gets one dose: messages built from the vocabularies themselves."""

from __future__ import annotations

from datetime import date
from functools import cache
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from bot.conversation.ask import Setting, ask
from grammar import read
from grammar.lexicon import COMMON, sections
from tests.grammar.told import is_open

TODAY = date(2026, 6, 10)
#: A dose follows from these; the first word of each concept in English stands for it.
CHOSEN = ("form", "medium", "season", "growth", "regime", "fraction", "genus")
_LITRES = {"en": "litres", "de": "Liter", "es": "litros", "pl": "litrów"}
_VOLUMES = ["2", "5", "0,75", "2,5", "10"]
_ANALYSES = ["20-20-20", "13-3-15", "10-30-20", "7-7-7"]


@cache
def _phrases(code: str, section: str) -> dict[str, list[str]]:
    own = sections(code).get(section, {})
    common = sections(COMMON).get(section, {}) if section == "genus" else {}
    return {value: [*common.get(value, []), *own.get(value, [])] for value in {**common, **own}}


@st.composite
def _requests(draw: st.DrawFn, code: str) -> tuple[str, str]:
    """The same request in a language and in English."""
    said, meant = [], []
    volume, analysis = draw(st.sampled_from(_VOLUMES)), draw(st.sampled_from(_ANALYSES))
    for section in draw(st.sets(st.sampled_from(CHOSEN), max_size=5)):
        own, english = _phrases(code, section), _phrases("en", section)
        value = draw(st.sampled_from(sorted(own.keys() & english.keys())))
        said.append(draw(st.sampled_from(own[value])))
        meant.append(english[value][0])
    said += [f"{volume} {_LITRES[code]}", analysis]
    meant += [f"{volume.replace(',', '.')} litres", analysis]
    return ", ".join(draw(st.permutations(said))), ", ".join(meant)


def _gist(answer: Any) -> tuple[Any, ...]:
    dose = answer.dose
    return (answer.kind, None if dose is None else (round(dose.amount, 9), dose.unit))


@pytest.mark.parametrize("code", ["de", "es", "pl"])
def test_a_request_gets_the_dose_it_gets_in_english(code: str) -> None:
    @settings(max_examples=80, deadline=None)
    @given(_requests(code))
    def holds(request: tuple[str, str]) -> None:
        said, meant = request
        setting = Setting(TODAY, language=code)
        own, english = ask(said, setting), ask(meant, Setting(TODAY, language="en"))
        if not is_open(read(said, code)) and not is_open(read(meant, "en")):
            assert _gist(own) == _gist(english), (said, meant)

    holds()


@pytest.mark.parametrize("code", ["de", "es", "pl"])
def test_most_requests_leave_no_doubt(code: str) -> None:
    seen = []

    @settings(max_examples=60, deadline=None)
    @given(_requests(code))
    def look(request: tuple[str, str]) -> None:
        seen.append(is_open(read(request[0], code)))

    look()
    assert sum(seen) <= 0.35 * len(seen)
