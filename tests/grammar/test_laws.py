"""Laws of reading: order, case and politeness change nothing; any text is read."""

from __future__ import annotations

from hypothesis import given, settings
from hypothesis import strategies as st

from grammar import read
from grammar.lexicon import load
from tests.grammar.told import slots

PARTS = {
    "volume": ["5 l", "half a litre", "2.5 litres", "1500 ml", "a us gallon"],
    "product": ["20-20-20 powder", "liquid 7-7-7", "13-3-15 crystals"],
    "strength": ["half strength", "1/4 strength", "25 %", "full strength"],
    "season": ["in winter", "summer", "spring"],
    "plant": ["phal", "3 phals", "cattleya", "dendrobium nobile"],
    "medium": ["sphagnum", "bark", "leca"],
    "water": ["tap water 14 °dH", "rainwater", "RO water"],
    "label": ["label 1 g/l", "label says 5 g per 10 litres"],
    "rhythm": ["weekly", "every watering", "once a month"],
}
_chosen = st.tuples(*(st.sampled_from(options) for options in PARTS.values())).flatmap(
    lambda parts: st.lists(st.sampled_from(parts), min_size=2, max_size=9, unique=True)
)
_POLITE = ["please", "thanks", "hello", "hi there", "cheers", "good morning", "if you would"]
_SAFE = settings(max_examples=150, deadline=None)


@_SAFE
@given(_chosen, st.randoms())
def test_order_of_the_parts_changes_nothing(parts: list[str], order: object) -> None:
    shuffled = list(parts)
    order.shuffle(shuffled)  # type: ignore[attr-defined]
    assert slots(read(", ".join(shuffled), "en")) == slots(read(", ".join(parts), "en"))


@_SAFE
@given(_chosen)
def test_case_changes_nothing(parts: list[str]) -> None:
    text = ", ".join(parts)
    assert slots(read(text.upper(), "en")) == slots(read(text, "en"))
    assert slots(read(text.title(), "en")) == slots(read(text, "en"))


@_SAFE
@given(_chosen, st.sampled_from(_POLITE), st.integers(0, 9))
def test_politeness_changes_nothing(parts: list[str], polite: str, place: int) -> None:
    told = [*parts[:place], polite, *parts[place:]]
    assert slots(read(", ".join(told), "en")) == slots(read(", ".join(parts), "en"))


@_SAFE
@given(_chosen, st.sampled_from(["so", "i have", "we use", "then", "just"]))
def test_filler_in_front_changes_nothing(parts: list[str], filler: str) -> None:
    text = ", ".join(parts)
    assert slots(read(f"{filler} {text}", "en")) == slots(read(text, "en"))


@_SAFE
@given(_chosen)
def test_plain_parts_leave_no_doubt(parts: list[str]) -> None:
    reading = read(", ".join(parts), "en")
    assert slots(reading)
    doubts = (*reading.conflicts, *reading.problems, *reading.unknown)
    assert doubts == ()


@settings(max_examples=400, deadline=None)
@given(st.text(max_size=300))
def test_any_text_is_read(text: str) -> None:
    assert read(text, "en").text == text


_WORDS = sorted(load("en").words)
_NUMBERS = ["5", "0", "-3", "1,500", "5O0", "2..5", "1/2", "1/0", "0/4", "20-20-20", "05-12-24",
            "1:500", "2:0", ".5", "1e400", "½", "2²", "/", "+", "%", '"',
            "x3", "?", "("]  # fmt: skip
_soup = st.lists(st.one_of(st.sampled_from(_WORDS), st.sampled_from(_NUMBERS)), max_size=15)


@settings(max_examples=600, deadline=None)
@given(_soup, st.sampled_from([" ", "", ", ", "\n"]))
def test_any_shuffle_of_our_words_is_read(words: list[str], between: str) -> None:
    text = between.join(words)
    reading = read(text, "en")
    assert reading.text == text
    assert reading.volume_l is None or 0 <= reading.volume_l < float("inf")
    assert reading.strength is None or 0 <= reading.strength < float("inf")
