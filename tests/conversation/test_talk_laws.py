"""Laws that hold for every line of a conversation that remembers."""

from __future__ import annotations

import asyncio
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from bot.conversation.answer import Answer
from bot.records import Records, open_records
from grammar.lexicon import COMMON, sections
from tests.conversation.talking import Grower

COLLECTION = (
    "my powder is 20-20-20, label 1 g per litre, call it blue tub",
    "my liquid is 7-7-7, label 4 ml per litre, density 1.2, call it green bottle",
    "use blue tub from now on",
    "add 3 phals in bark, 12 cm pots, kitchen sill",
    "I have a masdevallia in sphagnum called Ruby, 8 cm pot",
    "add a dendrobium nobile in bark called Noble",
    "Noble is resting",
    "my tap is 14 dH",
)
ORDERS = sections("en")["order"]
WORDS = sorted(
    {
        phrase
        for name in ("en", COMMON)
        for section, table in sections(name).items()
        if section not in ("meta", "not_a_slip", "genus")
        for phrases in table.values()
        for phrase in phrases[:3]
    }
    | {
        "Ruby",
        "Noble",
        "blue tub",
        "green bottle",
        "kitchen sill",
        "phals",
        "vanda",
        "5 l",
        "1/4",
        "20-20-20",
        "3",
        "yesterday",
        "?",
    }
)


class Room:
    """One conversation, kept open over all examples."""

    def __init__(self, folder: Path) -> None:
        self.loop = asyncio.new_event_loop()
        self.records: Records = self.loop.run_until_complete(
            open_records(f"sqlite:///{folder / 'laws.db'}")
        )
        self.grower = Grower(self.records)
        self.says(*COLLECTION)

    def says(self, *lines: str) -> Answer:
        return self.loop.run_until_complete(self.grower.says(*lines))

    def close(self) -> None:
        self.loop.run_until_complete(self.records.close())
        self.loop.close()


@pytest.fixture(scope="module")
def room(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Room]:
    opened = Room(tmp_path_factory.mktemp("laws"))
    yield opened
    opened.close()


EASY = settings(
    max_examples=80,
    deadline=None,
    suppress_health_check=[HealthCheck.too_slow, HealthCheck.function_scoped_fixture],
)


@EASY
@given(st.lists(st.sampled_from(WORDS), min_size=1, max_size=7))
def test_any_words_get_an_answer(room: Room, words: list[str]) -> None:
    answer = room.says(" ".join(words))
    assert answer.kind != "fault"
    assert answer.reply.strip()
    if answer.kind == "dose":
        assert answer.dose is not None
        assert answer.dose.amount > 0


@EASY
@given(st.text(max_size=60))
def test_any_text_gets_an_answer(room: Room, text: str) -> None:
    assert room.says(text).reply.strip()


STRENGTHS = ("", "quarter", "half", "full strength", "double", "3x", "exactly full", "250%")
WHOM = ("", "for Ruby", "for the phals", "for everything", "for the kitchen sill", "for a vanda")
TUBS = ("", "with blue tub", "with the green bottle")


@pytest.fixture(scope="module")
def kept(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Room]:
    opened = Room(tmp_path_factory.mktemp("kept"))
    yield opened
    opened.close()


@EASY
@given(
    st.integers(1, 40),
    st.sampled_from(STRENGTHS),
    st.sampled_from(WHOM),
    st.sampled_from(TUBS),
    st.sampled_from(["", "half that", "double it", "exactly", "in winter?", "make it 7 litres"]),
)
def test_no_wording_lifts_the_label_or_a_ceiling(
    kept: Room, litres: int, strength: str, whom: str, tub: str, then: str
) -> None:
    answer = kept.says(f"{litres} l {strength} {whom} {tub}", *([then] if then else []))
    if answer.dose is None:
        return
    assert answer.dose.per_litre <= (4.0 if answer.dose.unit == "ml" else 1.0) * (1 + 1e-9)
    sensitive = "Ruby" in answer.reply
    if sensitive:
        assert answer.dose.elements_mg_l["N"] <= 50 * (1 + 1e-9)
    assert answer.dose.elements_mg_l["N"] <= 200 * (1 + 1e-9)


@EASY
@given(
    st.lists(
        st.tuples(
            st.sampled_from(["phal", "cattleya", "masdevallia", "vanda", "paph", "oncidium"]),
            st.integers(1, 6),
            st.sampled_from(["bark", "sphagnum", "clay pellets", "mix"]),
            st.integers(6, 20),
        ),
        min_size=1,
        max_size=6,
    ),
    st.sampled_from([3, 5, 10]),
    st.integers(0, 10_000_000),
)
def test_a_plan_serves_every_plant_once_and_none_over_its_ceiling(
    kept: Room, plants: list[tuple[str, int, str, int]], can_l: int, number: int
) -> None:
    kept.grower.name = f"grower {number}"
    try:
        lines = [f"add {n} {kind} in {medium}, {cm} cm pots" for kind, n, medium, cm in plants]
        answer = kept.says(COLLECTION[0], f"my can holds {can_l} l", *lines, "what's on today")
        kept.says("forget me", "yes")
    finally:
        kept.grower.name = "Mira"
    details: dict[str, Any] = answer.details or {}
    groups = details["groups"]
    assert sum(g["count"] for g in groups) == sum(n for _, n, _, _ in plants)
    assert {k for part in details["parts"] for k in part["groups"]} == {
        f"g{i}" for i in range(len(groups))
    }
    for group in groups:
        if group["action"] == "feed":
            assert 0 < group["per_litre"] <= 1.0
            assert group["volume_l"] > 0
            if "Masdevallia" in group["plants"]:
                assert group["per_litre"] * 200 <= 50 * (1 + 1e-9)
