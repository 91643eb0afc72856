"""Polish, German and Spanish messages, written before the reader's answers were looked at.

They are read as they come, in whatever language is heard. The law: no slot of a dose is wrong in
silence; at least 95 of 100 are read exactly.
"""

from __future__ import annotations

from datetime import date
from typing import Any

import pytest

from bot.conversation.ask import Setting, ask
from grammar import Names, Reading, read
from tests.grammar.told import is_open, messages, same, value

FILES = [(code, f"{code}{kind}.jsonl") for code in ("de", "es", "pl") for kind in ("", "_blind")]
#: What stands on record for the lines that are said to the records.
ON_RECORD = {
    "pl": Names(("Ruby", "Śnieżka"), ("niebieska puszka", "zielona butelka"),
                ("parapet w kuchni", "balkon")),
    "de": Names(("Ruby", "Schneewittchen"), ("blaue Dose", "grüne Flasche"),
                ("Küchenfenster", "Balkon")),
    "es": Names(("Rubí", "Blancanieves"), ("bote azul", "botella verde"),
                ("ventana de la cocina", "balcón")),
}  # fmt: skip
#: Of a hundred, so many are read exactly.
WANTED = 0.95


def _wrong(reading: Reading, want: dict[str, Any]) -> dict[str, Any]:
    def wanted(slot: str) -> Any:
        return sorted(want[slot]) if slot == "genera" else want[slot]

    return {s: value(reading, s) for s in want if not same(value(reading, s), wanted(s))}


def _exact(text: str, want: dict[str, Any]) -> bool:
    reading = read(text)
    return not _wrong(reading, want) and not reading.conflicts and not reading.problems


@pytest.mark.parametrize(("code", "name"), FILES)
def test_nearly_all_messages_are_read_exactly(code: str, name: str) -> None:
    lines = [m for m in messages(name) if "want" in m]
    missed = [m["text"] for m in lines if not _exact(m["text"], m["want"])]
    assert len(missed) <= (1 - WANTED) * len(lines), missed


@pytest.mark.parametrize(("code", "name"), FILES)
def test_messages_are_heard_in_their_language(code: str, name: str) -> None:
    heard = [read(m["text"]).language for m in messages(name)]
    assert heard.count(code) >= 0.97 * len(heard)


@pytest.mark.parametrize(
    ("text", "want"),
    [(m["text"], m["want"]) for _, name in FILES for m in messages(name) if "want" in m],
)
def test_nothing_is_read_wrong_in_silence(text: str, want: dict[str, Any]) -> None:
    reading = read(text)
    assert not _wrong(reading, want) or is_open(reading)


@pytest.mark.parametrize(
    "text", [m["text"] for _, name in FILES for m in messages(name) if m.get("no_dose")]
)
def test_no_dose_is_given_in_silence(text: str) -> None:
    answer = ask(text, Setting(today=date(2026, 6, 10)))
    assert answer.dose is None or answer.unknown or answer.read_as


@pytest.mark.parametrize("code", sorted(ON_RECORD))
def test_what_people_say_to_the_records(code: str) -> None:
    lines = messages(f"{code}_records.jsonl")
    missed = []
    for line in lines:
        order = read(line["text"], usual=code, names=ON_RECORD[code]).order
        if (order.verb if order is not None else "dose") != line["verb"]:
            missed.append(line["text"])
    assert len(missed) <= (1 - WANTED) * len(lines), missed
