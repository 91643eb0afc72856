"""The Fluent files: the same messages with the same variables in each, and no English left over."""

from __future__ import annotations

import re
from collections.abc import Iterator
from datetime import date
from functools import cache
from importlib import resources
from pathlib import Path

import pytest
from babel.dates import get_month_names
from fluent.syntax import ast, parse, visitor

import bot
import bot.conversation.wording as wordings
from bot.conversation.wording import languages, wording
from grammar.lexicon import languages as readable

LANGUAGES = ("en", "de", "es", "pl")
OTHERS = tuple(code for code in LANGUAGES if code != "en")
#: Words that another language shares with English, or that stand for what is typed or published.
SHARED = {
    "de": frozenset({
        "in", "so", "was", "die", "an", "am", "will", "log", "ph", "des", "du", "man", "also",
        "hat", "war", "her", "rest", "name", "plan", "student", "bad", "tag", "gift", "not",
        "mix", "warm", "export", "import", "start", "stop", "ist", "all", "links", "plant",
    }),
    "es": frozenset({
        "a", "no", "me", "he", "has", "son", "sin", "once", "plan", "total", "normal", "do",
        "idea", "real", "local", "use", "pot", "largo", "dose", "fin", "come",
    }),
    "pl": frozenset({
        "a", "to", "do", "i", "no", "on", "ten", "we", "plan", "start", "stop", "list", "most",
        "brak", "pot", "ale", "dla", "by", "dose", "an", "one", "go", "be", "for",
    }),
}  # fmt: skip
#: Words that betray English: articles, pronouns, verbs and the nouns of this trade.
ENGLISH = frozenset({
    "the", "and", "of", "is", "are", "you", "your", "with", "for", "this", "that", "it", "its",
    "them", "they", "there", "what", "which", "when", "send", "like", "from", "than", "then",
    "water", "feed", "feeds", "plant", "plants", "pot", "pots", "roots", "leaves", "salts",
    "strength", "powder", "liquid", "label", "litre", "litres", "day", "days", "week", "weeks",
    "month", "months",
    "today", "tomorrow", "yesterday", "quarter", "half", "full", "flush", "clear", "only", "too",
    "much", "more", "less", "weigh", "scale", "nothing", "none", "reminder", "reminders", "group",
    "please", "yes", "not", "be", "been", "was", "were", "has", "have", "had", "will", "can", "may",
})  # fmt: skip


def _source(code: str) -> str:
    return resources.files(wordings.__name__).joinpath(f"{code}.ftl").read_text("utf-8")


def _messages(code: str) -> dict[str, ast.Message]:
    body = parse(_source(code)).body
    assert not [entry for entry in body if isinstance(entry, ast.Junk)], code
    return {entry.id.name: entry for entry in body if isinstance(entry, ast.Message)}


class _Found(visitor.Visitor):  # type: ignore[misc]
    """The variables of a message, and its text."""

    def __init__(self, message: ast.Message) -> None:
        self.variables: set[str] = set()
        self.texts: list[str] = []
        self.visit(message)

    def visit_VariableReference(self, node: ast.VariableReference) -> None:
        self.variables.add(node.id.name)

    def visit_TextElement(self, node: ast.TextElement) -> None:
        self.texts.append(node.value)


def test_every_language_that_is_written_is_read() -> None:
    assert set(languages()) == set(readable()) == set(LANGUAGES)


@pytest.mark.parametrize("code", OTHERS)
def test_every_language_has_the_messages_of_english(code: str) -> None:
    english, other = _messages("en"), _messages(code)
    assert sorted(set(english) - set(other)) == []
    assert sorted(set(other) - set(english)) == []


@pytest.mark.parametrize("code", OTHERS)
def test_messages_take_the_same_variables(code: str) -> None:
    english, other = _messages("en"), _messages(code)
    unlike = {
        name: (sorted(said), sorted(_Found(other[name]).variables))
        for name in english.keys() & other.keys()
        if (said := _Found(english[name]).variables) != _Found(other[name]).variables
    }
    assert unlike == {}


@pytest.mark.parametrize("code", OTHERS)
def test_codes_that_are_told_apart_are_given_by_the_program(code: str) -> None:
    """Another language may tell apart what English shows as it is, but only by codes of ours."""
    english, other = _messages("en"), _messages(code)
    unknown = {
        name: keys
        for name in english.keys() & other.keys()
        if (keys := _keys(other[name]) - _PLURALS - _keys(english[name]) - _codes())
    }
    assert unknown == {}


_PLURALS = frozenset({"zero", "one", "two", "few", "many", "other"})


@cache
def _codes() -> frozenset[str]:
    """Every word in quotes of the program, and every name in its tables."""
    root = Path(bot.__file__).parent
    files = (*root.rglob("*.py"), *root.rglob("almanac/*.toml"))
    text = "\n".join(path.read_text("utf-8") for path in files)
    found = re.findall(r"[\"']([A-Za-z_]+)[\"']|^([A-Za-z_]+) =", text, re.MULTILINE)
    return frozenset(word for words in found for word in words if word)


def _keys(message: ast.Message) -> set[str]:
    keys: set[str] = set()

    class Keys(visitor.Visitor):  # type: ignore[misc]
        def visit_Variant(self, node: ast.Variant) -> None:
            if isinstance(node.key, ast.Identifier):
                keys.add(node.key.name)
            self.generic_visit(node)

    Keys().visit(message)
    return keys


def _words(text: str) -> Iterator[str]:
    return iter(re.findall(r"[^\W\d_]+", text.casefold()))


@pytest.mark.parametrize("code", OTHERS)
def test_no_english_is_left(code: str) -> None:
    left = {
        name: found
        for name, message in _messages(code).items()
        if (found := {
            word
            for text in _Found(message).texts
            for word in _words(text)
            if word in ENGLISH and word not in SHARED[code]
        })
    }  # fmt: skip
    assert left == {}


@pytest.mark.parametrize("code", OTHERS)
def test_no_sentence_is_the_english_one(code: str) -> None:
    english, other = _messages("en"), _messages(code)
    same = [
        name
        for name in english.keys() & other.keys()
        if (texts := _Found(english[name]).texts) == _Found(other[name]).texts
        and sum(len(w) > 3 for t in texts for w in _words(t)) > 3  # units are the same
    ]
    assert same == []


@pytest.mark.parametrize("code", LANGUAGES)
def test_numbers_and_days_are_written_as_in_the_language(code: str) -> None:
    words = wording(code)
    assert words.number(1.5) == ("1.5" if code == "en" else "1,5")
    month = get_month_names("abbreviated", locale=code)[12].rstrip(".")
    assert month in words.day(date(2026, 12, 24), date(2026, 11, 26))
    assert words.day(date(2026, 11, 26), date(2026, 11, 26)) == words.say("day-today")


@pytest.mark.parametrize("code", LANGUAGES)
@pytest.mark.parametrize(
    ("litres", "units", "shown"),
    [
        (5.0, "us", 1.3), (2.0, "us", 2.1), (0.5, "us", 17.0),
        (5.0, "imperial", 1.1), (2.0, "imperial", 3.5), (0.5, "imperial", 18.0),
    ],
)  # fmt: skip
def test_volumes_stand_in_ones_own_measures_before_litres(
    code: str, litres: float, units: str, shown: float
) -> None:
    """NIST Handbook 44 (US), Units of Measurement Regulations 1995 (imperial); two digits."""
    words = wording(code, units)
    text = words.volume(litres)
    assert text.startswith(words.number(shown))
    assert f"({wording(code).volume(litres)})" in text


@pytest.mark.parametrize("code", LANGUAGES)
def test_the_quick_reading_of_a_file_finds_every_message(code: str) -> None:
    """Messages are parsed one by one as they are said; their borders must be those of Fluent."""
    found, whole = wordings.Messages(code).texts, _messages(code)
    assert found.keys() == whole.keys()
    for name, text in found.items():
        (message,) = [e for e in parse(text).body if not isinstance(e, ast.BaseComment)]
        assert message.equals(whole[name], ignored_fields=["span", "comment"]), name
