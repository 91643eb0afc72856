"""What makes a row a reminder: what its fields say of each other."""

from __future__ import annotations

import re
from collections.abc import Mapping
from datetime import UTC, datetime
from typing import Any

from .kinds import ReminderState
from .models import Reminder
from .names import can_be_kept
from .values import MAX_ID

_RULE = re.compile(r"FREQ=(DAILY|WEEKLY|MONTHLY|YEARLY)(;[A-Z]+=[A-Z0-9,+-]+)*")
_LOCAL = re.compile(r"\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d")
_TARGET = {"plants": list, "genera": list, "everything": bool, "place": str}
#: A calendar is reckoned to some 400 years beyond a moment, and ends with the year 9999.
_LAST_YEAR = 2200
_LAST_MS = round(datetime(_LAST_YEAR, 1, 1, tzinfo=UTC).timestamp() * 1000)
#: Names of a target, and the characters of one (as `place.name`).
_MOST_NAMES, _NAME_CHARS = 1_000, 60


def reminder_problem(values: Mapping[str, Any]) -> str | None:
    """Say what keeps a row from being a reminder; None where nothing does.

    Whether the rule makes sense is for `bot.reminders.rhythm.check` to say.
    """
    rule, start, due_local = values["rule"], values["start"], values["due_local"]
    if rule is not None and not _RULE.fullmatch(rule):
        return "rule: not a rule of days, weeks, months or years"
    for name, local in (("start", start), ("due_local", due_local)):
        if local is not None and not _is_local(local):
            return f"{name}: not a clock time as 2026-03-01T09:00:00"
    if (values["due_ms"] or 0) > _LAST_MS:
        return "due_ms: too far ahead"
    if (values["due_ms"] is None) != (values["state"] is ReminderState.ENDED):
        return "due_ms: what comes has a moment, what has ended has none"
    if values["due_ms"] is None and due_local is not None:
        return "due_local: an occurrence without a moment"
    return _target_problem(values["target"])


def _target_problem(target: Mapping[str, Any]) -> str | None:
    for name, value in target.items():
        kind = _TARGET.get(name)
        if kind is None or not (isinstance(value, kind) or (name == "place" and value is None)):
            return f"target: cannot take {name[:40]!r}"
    if not all(type(plant) is int and 0 < plant <= MAX_ID for plant in target.get("plants", [])):
        return "target: plants are numbers"
    if not all(isinstance(genus, str) for genus in target.get("genera", [])):
        return "target: genera are names"
    names = [*target.get("genera", []), *filter(None, [target.get("place")])]
    if len(names) > _MOST_NAMES or not all(map(_is_name, names)):
        return "target: names that are too many, too long or cannot be shown"
    return None


def _is_local(text: str) -> bool:
    if not _LOCAL.fullmatch(text):
        return False
    try:
        return 1900 <= datetime.fromisoformat(text).year < _LAST_YEAR
    except ValueError:
        return False


def _is_name(text: str) -> bool:
    return len(text) <= _NAME_CHARS and can_be_kept(text)


def sense_of(row: Reminder) -> dict[str, Any]:
    """Return the fields of a row that `reminder_problem` asks for."""
    named = ("rule", "start", "zone", "state", "due_ms", "due_local", "target")
    return {name: getattr(row, name) for name in named}
