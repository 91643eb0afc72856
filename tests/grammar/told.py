"""What a reading says, as plain values to compare with a fixture."""

from __future__ import annotations

import dataclasses
import json
import math
from pathlib import Path
from typing import Any

from grammar import Reading

MESSAGES = Path(__file__).parents[2] / "fixtures" / "messages"
#: Slots that a dose is computed from.
SLOTS = (
    "volume_l", "analysis", "extras", "form", "strength", "exact", "regime", "medium", "season",
    "month", "growth", "genera", "count", "water", "label_rate", "target_n_mg_l",
    "target_ec_ms_cm",
)  # fmt: skip


def messages(name: str) -> list[dict[str, Any]]:
    """The lines of one file of messages."""
    text = (MESSAGES / name).read_text(encoding="utf-8")
    return [json.loads(line) for line in text.splitlines() if line.strip()]


def value(reading: Reading, slot: str) -> Any:
    """One slot as JSON would hold it."""
    found = getattr(reading, slot)
    if dataclasses.is_dataclass(found) and not isinstance(found, type):
        return dataclasses.asdict(found)
    if slot == "genera":
        return sorted(found)
    return list(found) if isinstance(found, tuple) else found


def slots(reading: Reading) -> dict[str, Any]:
    """Everything that was said."""
    all_slots = {slot: value(reading, slot) for slot in SLOTS}
    return {k: v for k, v in all_slots.items() if v not in (None, [], {}, False)}


def same(found: Any, wanted: Any) -> bool:
    """Equal, numbers within 0.2 % (the fixtures are rounded), wanted keys only in tables."""
    if isinstance(found, bool) or isinstance(wanted, bool):
        return found is wanted
    if isinstance(found, int | float) and isinstance(wanted, int | float):
        return math.isclose(found, wanted, rel_tol=2e-3, abs_tol=1e-9)
    if isinstance(found, list) and isinstance(wanted, list):
        return len(found) == len(wanted) and all(map(same, found, wanted))
    if isinstance(found, dict) and isinstance(wanted, dict):
        return all(same(found.get(key), v) for key, v in wanted.items())
    return bool(found == wanted)


def is_open(reading: Reading) -> bool:
    """Whether something is asked about or shown."""
    return bool(reading.conflicts or reading.problems or reading.unknown or reading.read_as)
