"""Days that have been and that nobody can tell: no change is written down for today."""

from __future__ import annotations

import pytest

from grammar import Names, Order, When, read

NAMES = Names(plants=("Ruby", "Hugo"))
SOME, LAST_YEAR = When("some", 0), When("year", 1)


def order(language: str, text: str) -> Order:
    found = read(text, language, names=NAMES).order
    assert found is not None
    return found


@pytest.mark.parametrize(
    ("language", "text", "when"),
    [
        ("en", "fed Ruby a few days ago", SOME), ("en", "fed Ruby the other day", SOME),
        ("en", "half a year ago I repotted Ruby", SOME), ("en", "fed Ruby last summer", LAST_YEAR),
        ("en", "repotted Ruby last year", LAST_YEAR),
        ("en", "fed Ruby two years ago", When("day", 730)),
        ("en", "flushed Ruby 3 weeks ago", When("day", 21)),
        ("en", "fed Ruby a day ago", When("day", 1)),
        ("de", "Ruby vor ein paar Tagen gedüngt", SOME), ("de", "neulich Ruby gedüngt", SOME),
        ("de", "vor anderthalb Wochen Ruby umgetopft", SOME),
        ("de", "Ruby vor Ewigkeiten gedüngt", SOME),
        ("de", "letzten Sommer hab ich Ruby gedüngt", LAST_YEAR),
        ("de", "voriges Frühjahr Ruby umgetopft", LAST_YEAR),
        ("de", "Ruby vor zwei Jahren umgetopft", When("day", 730)),
        ("de", "vor einer Woche Ruby gedüngt", When("day", 7)),
        ("es", "hace unos días aboné Ruby", SOME), ("es", "el otro día aboné Ruby", SOME),
        ("es", "el verano pasado aboné Ruby", LAST_YEAR),
        ("es", "hace un mes regué Ruby", When("day", 30)),
        ("es", "hace dos años trasplanté Ruby", When("day", 730)),
        ("pl", "kilka dni temu nawoziłam Ruby", SOME), ("pl", "niedawno nawoziłam Ruby", SOME),
        ("pl", "zeszłego lata nawoziłam Ruby", LAST_YEAR),
        ("pl", "dwa lata temu przesadziłam Ruby", When("day", 730)),
    ],
)  # fmt: skip
def test_the_day_is_not_today(language: str, text: str, when: When) -> None:
    found = order(language, text)
    assert found.verb in ("fed", "clear", "flush", "repot")
    assert (found.target.names, found.when) == (("Ruby",), when)


@pytest.mark.parametrize("text", ["vor dem Gießen Ruby gedüngt", "Ruby gedüngt", "fed Ruby"])
def test_no_day_is_made_up(text: str) -> None:
    assert order("en" if text.startswith("fed") else "de", text).when is None


def test_what_was_given_last_year_is_still_asked_of_the_log() -> None:
    assert order("en", "how often did I feed Ruby last year?").when == LAST_YEAR
    assert order("de", "was hab ich letzten Sommer gedüngt?").verb == "history"
