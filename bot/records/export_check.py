"""Whether an export can be taken in: every row and what they say of each other.

An export is somebody's file. What is not refused here must be safe to keep, and safe to undo.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Collection, Iterator, Mapping
from dataclasses import dataclass, field
from typing import Any

from .export_files import LISTS, Contents, Row, fields_of
from .kinds import ReminderState
from .ledger import MOST, subject_of
from .models import Base, Owned, Owner
from .names import can_be_kept, fold
from .products import label_problem
from .reminder_sense import reminder_problem
from .reminders import MOST_LIVE
from .values import Unfit, changeable, from_json

MAX_PROBLEMS = 50
"""More problems than this are not listed: the file is not worth mending by hand."""

_POINTERS: Mapping[str, str] = {
    "place_id": "places",
    "water_id": "waters",
    "product_id": "products",
    "plant_id": "plants",
    "reminder_id": "reminders",
    "reverses": "events",
}
"""Fields that hold the id of another row, and the list that row is in."""

_PAYLOAD = {"details", "before", "after"}

_FIGURES = frozenset({"strength", "n_mg_l", "runoff_ec_ms_cm", "resume_share"})
_WORDS = frozenset({"rescue", "no_feed_until", "by"})
"""What is read of the details of an entry again: figures, words, and the analysis."""

_MOST_FIGURE, _WORD_CHARS = 1e6, 128


@dataclass(frozen=True, slots=True)
class Problem:
    """Something in a file that keeps it from being taken in.

    Attributes
    ----------
    where
        Such as `plants[3].pot_cm`: list, row from 1, field.
    what
        What is wrong, in English.
    """

    where: str
    what: str


@dataclass(slots=True)
class Checked:
    """The rows of an export as they are stored, and what is wrong with it."""

    settings: Row = field(default_factory=dict)
    rows: dict[str, list[Row]] = field(default_factory=dict)
    problems: list[Problem] = field(default_factory=list)


def check(contents: Contents, codes: Mapping[str, Collection[str]]) -> Checked:
    """Check contents, and return their rows in the order of their ids.

    Parameters
    ----------
    contents
        As read from a file.
    codes
        The canonical values that a field takes, by `plant.medium` and so on; fields that are
        not named take any code.
    """
    checked = Checked()
    for problem in _problems(contents, codes, checked):
        checked.problems.append(problem)
        if len(checked.problems) == MAX_PROBLEMS:
            break
    return checked


def _problems(
    contents: Contents, codes: Mapping[str, Collection[str]], checked: Checked
) -> Iterator[Problem]:
    yield from _row_problems("settings", Owner, contents.settings, codes, checked.settings)
    ends = [checked.settings.get(f"quiet_{end}_min") for end in ("from", "until")]
    if ends.count(None) == 1:
        yield Problem("settings.quiet_until_min", "quiet hours have two ends")
    for name, model in LISTS.items():
        rows = checked.rows[name] = []
        for place, raw in enumerate(contents.lists[name], 1):
            row: Row = {}
            yield from _row_problems(f"{name}[{place}]", model, raw, codes, row)
            rows.append(row)
        if len(rows) > MOST[model]:
            yield Problem(name, f"more than {MOST[model]} rows")
    if not checked.problems:
        # What rows say of each other is only worth asking of rows that are well formed.
        for rows in checked.rows.values():
            rows.sort(key=lambda row: row["id"])
        yield from _relation_problems(checked.rows, codes)


def _row_problems(
    where: str, model: type[Base], raw: Row, codes: Mapping[str, Collection[str]], row: Row
) -> Iterator[Problem]:
    """Fill in a row as it is stored."""
    fields = fields_of(model)
    for unknown in sorted(set(raw) - set(fields)):
        yield Problem(f"{where}.{unknown[:40]}", "no such field")
    for name in fields:
        try:
            row[name] = from_json(model, name, raw.get(name))
        except Unfit as unfit:
            yield Problem(f"{where}.{name}", str(unfit))
            continue
        if not _is_known(model, name, row[name], codes):
            yield Problem(f"{where}.{name}", f"{row[name]!r} is not known")


def _is_known(
    model: type[Base], name: str, value: object, codes: Mapping[str, Collection[str]]
) -> bool:
    """Whether a value is one of the canonical ones, where its field has such."""
    allowed = codes.get(f"{model.__tablename__}.{name}")
    return allowed is None or value is None or value in allowed


def _relation_problems(
    rows: Mapping[str, list[Row]], codes: Mapping[str, Collection[str]]
) -> Iterator[Problem]:
    ids = {name: {row["id"] for row in rows[name]} for name in LISTS}
    for name, model in LISTS.items():
        yield from _number_problems(name, model, rows[name])
        for row in rows[name]:
            yield from _pointer_problems(f"{name} id {row['id']}", row, ids)
    yield from _name_problems(rows)
    for row in rows["products"]:
        problem = label_problem(row)
        if problem is not None:
            yield Problem(f"products id {row['id']}", problem)
    for name in ("products", "waters"):
        if sum(row["is_default"] for row in rows[name]) > 1:
            yield Problem(name, "more than one default")
    yield from _reminder_problems(rows["reminders"], ids["plants"])
    yield from _log_problems(rows["events"], ids, codes)


def _reminder_problems(reminders: list[Row], plants: set[int]) -> Iterator[Problem]:
    for row in reminders:
        problem = reminder_problem(row)
        if problem is not None:
            yield Problem(f"reminders id {row['id']}", problem)
        elif not plants.issuperset(row["target"].get("plants", ())):
            yield Problem(f"reminders id {row['id']}.target", "names a plant that is not there")
    if sum(row["state"] is not ReminderState.ENDED for row in reminders) > MOST_LIVE:
        yield Problem("reminders", f"more than {MOST_LIVE} that have not ended")


def _number_problems(name: str, model: type[Owned], rows: list[Row]) -> Iterator[Problem]:
    for number, times in Counter(row["id"] for row in rows).items():
        if times > 1:
            yield Problem(f"{name} id {number}", "stands more than once")
        if number > MOST[model]:
            yield Problem(f"{name} id {number}", f"larger than {MOST[model]}")


def _pointer_problems(
    where: str, values: Mapping[str, Any], ids: Mapping[str, set[int]]
) -> Iterator[Problem]:
    for name, of in _POINTERS.items():
        target = values.get(name)
        if target is not None and target not in ids[of]:
            yield Problem(f"{where}.{name}", f"no row {target} in {of}")


def _name_problems(rows: Mapping[str, list[Row]]) -> Iterator[Problem]:
    for of in ("places", "waters", "products", "plants"):
        names = Counter(fold(row["name"]) for row in rows[of] if row["name"] and _in_use(row))
        for name, times in names.items():
            if times > 1:
                yield Problem(of, f"{times} rows are called {name!r}")


def _in_use(row: Row) -> bool:
    gone = row.get("lost_on") or row.get("removed_on")
    return bool(row.get("present", True)) and gone is None


def _log_problems(
    events: list[Row], ids: Mapping[str, set[int]], codes: Mapping[str, Collection[str]]
) -> Iterator[Problem]:
    by_id = {event["id"]: event for event in events}
    reversed_once: set[int] = set()
    for event in events:
        where = f"events id {event['id']}"
        first = by_id.get(event["batch"])
        if first is None or first["batch"] != first["id"] or first["id"] > event["id"]:
            yield Problem(f"{where}.batch", "not the id of the first entry of the batch")
        target = event["reverses"]
        if target is not None:
            original = by_id.get(target)
            if original is None or original["reverses"] is not None or target >= event["id"]:
                yield Problem(f"{where}.reverses", "not an earlier entry that can be reversed")
            if target in reversed_once:
                yield Problem(f"{where}.reverses", f"entry {target} is reversed already")
            reversed_once.add(target)
        yield from _payload_problems(where, event, ids, codes)


def _payload_problems(
    where: str, event: Row, ids: Mapping[str, set[int]], codes: Mapping[str, Collection[str]]
) -> Iterator[Problem]:
    payload = event["payload"]
    parts = {name: payload.get(name, {}) for name in _PAYLOAD}
    if set(payload) - _PAYLOAD or not all(isinstance(part, dict) for part in parts.values()):
        yield Problem(f"{where}.payload", "has the wrong shape")
        return
    for name in sorted(n for n, value in parts["details"].items() if not _is_detail(n, value)):
        yield Problem(f"{where}.payload.details.{name}", "cannot be read")
    before, after = parts["before"], parts["after"]
    model, named = subject_of(event["kind"])
    if set(before) != set(after) or (before and named is not None and event[named] is None):
        yield Problem(f"{where}.payload", "does not say what changed")
    for values in (before, after):
        for name, raw in values.items():
            if name not in changeable(model):
                yield Problem(f"{where}.payload", f"changes {name[:40]!r}")
                continue
            try:
                value = from_json(model, name, raw)
            except Unfit as unfit:
                yield Problem(f"{where}.payload.{name}", str(unfit))
                continue
            if not _is_known(model, name, value, codes):
                yield Problem(f"{where}.payload.{name}", "is not known")
        yield from _pointer_problems(f"{where}.payload", values, ids)


def _is_detail(name: str, value: object) -> bool:
    """Whether what is read again of an entry's details has the kind that it is read as."""
    if name in _FIGURES:
        return value is None or _is_figure(value)
    if name == "analysis":
        return isinstance(value, list) and len(value) == 3 and all(map(_is_figure, value))
    if name in _WORDS:
        return isinstance(value, str) and len(value) <= _WORD_CHARS and can_be_kept(value)
    return True


def _is_figure(value: object) -> bool:
    return (
        isinstance(value, int | float)
        and not isinstance(value, bool)
        and 0 <= value <= _MOST_FIGURE
    )
