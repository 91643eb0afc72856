"""Every message of the three files: what was said is read, and nothing wrong in silence."""

from __future__ import annotations

from typing import Any

import pytest

from grammar import Reading, read
from tests.grammar.told import is_open, messages, same, value

#: What the reader cannot do yet, and why; an entry that is read right must go.
KNOWN = {
    "phal in bark and a catt in moss, 2 l, 20-20-20 powder, half strength": (
        "a medium for each plant: asked about"
    ),
}


def _wrong(reading: Reading, want: dict[str, Any]) -> dict[str, Any]:
    def wanted(slot: str) -> Any:
        return sorted(want[slot]) if slot == "genera" else want[slot]

    return {s: value(reading, s) for s in want if not same(value(reading, s), wanted(s))}


def _asked_for(name: str) -> list[tuple[str, dict[str, Any]]]:
    items = [(m["text"], m["want"]) for m in messages(name) if "want" in m]
    assert items
    return items


@pytest.mark.parametrize(("text", "want"), _asked_for("en.jsonl"))
def test_message_is_read_exactly(text: str, want: dict[str, Any]) -> None:
    reading = read(text, "en")
    assert not _wrong(reading, want)
    assert not reading.conflicts
    assert not reading.problems


@pytest.mark.parametrize(
    ("text", "want"), [*_asked_for("en_people.jsonl"), *_asked_for("en_blind.jsonl")]
)
def test_message_of_people_is_read_exactly(text: str, want: dict[str, Any]) -> None:
    reading = read(text, "en")
    right = not _wrong(reading, want) and not reading.conflicts and not reading.problems
    assert right == (text not in KNOWN)


@pytest.mark.parametrize(
    "text",
    [
        m["text"]
        for name in ("en_people.jsonl", "en_blind.jsonl")
        for m in messages(name)
        if m.get("no_dose")
    ],
)
def test_message_without_a_dose_gives_none_in_silence(text: str) -> None:
    reading = read(text, "en")
    product = reading.analysis if reading.label_rate is None else True
    impossible = isinstance(product, tuple) and not (sum(product) > 0 and product[0] > 0)
    impossible = impossible or sum(reading.analysis or ()) > 100
    huge_or_nothing = reading.volume_l is not None and not 0 < reading.volume_l <= 1000
    assert (
        is_open(reading) or reading.volume_l is None or product is None or impossible
        or huge_or_nothing or reading.form == "granules" or reading.strength == 0
    )  # fmt: skip


def _forbidden(slot: str, listed: Any) -> list[Any]:
    many = isinstance(listed, list)
    if many and slot in ("analysis", "genera") and not isinstance(listed[0], list):
        many = False
    return listed if many else [listed]


def _hits(reading: Reading, slot: str, listed: Any) -> bool:
    found: Any = value(reading, slot) if slot != "genus" else reading.genus
    if slot in ("water", "extras"):
        return bool(found) and any(
            same(found.get(k), v) for table in _forbidden(slot, listed) for k, v in table.items()
        )
    return any(same(found, bad) for bad in _forbidden(slot, listed))


@pytest.mark.parametrize("trap", messages("en_traps.jsonl"), ids=lambda t: t["text"])
def test_trap_is_not_fallen_into(trap: dict[str, Any]) -> None:
    reading = read(trap["text"], "en")
    asked = bool(reading.conflicts or reading.problems)
    assert asked or not [s for s, bad in trap["must_not"].items() if _hits(reading, s, bad)]


@pytest.mark.parametrize(("text", "want"), _asked_for("en_traps.jsonl"))
def test_sentence_around_a_trap_is_read(text: str, want: dict[str, Any]) -> None:
    reading = read(text, "en")
    assert reading.conflicts or not _wrong(reading, want)
