"""The text of an export: rows to JSON or CSV and back. What it holds is said in `transfer`."""

from __future__ import annotations

import csv
import io
import json
import re
from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from sqlalchemy import JSON, Boolean, Column, Double, Enum, Integer, String

from .errors import BrokenFile, FileTooLarge, ForeignFile, NewerFile
from .models import Base, Event, Owned, Owner, Place, Plant, Product, Reminder, Water
from .values import changeable, columns, exported

FORMAT = "sinkside-records"
VERSION = 2

MAX_CHARACTERS = 64_000_000
"""The longest export that is read, over all its files [characters]."""

LISTS: Mapping[str, type[Owned]] = {
    "places": Place,
    "waters": Water,
    "products": Product,
    "plants": Plant,
    "reminders": Reminder,
    "events": Event,
}
"""The lists of an export: those that others refer to first."""

_TEXT = re.compile(r'"(?:[^"\\]|\\.)*+"')
_CHARACTERS_AN_OBJECT, _ALWAYS = 10, 1_000
"""Objects and lists are counted before a document is parsed: an empty one takes twenty times its
text in memory. Ours have more than so many characters each; so many objects are always taken."""

_FORMULA_STARTS = ("'", "=", "+", "-", "@", "\uff1d", "\uff0b", "\uff0d", "\uff20")
"""What a spreadsheet runs, its full-width forms too (OWASP, CSV injection)."""

# Where `;` parts the cells, what follows one begins a cell of its own.
_AFTER_PART = re.compile(r";(?='*[=+\-@\uff1d\uff0b\uff0d\uff20])")
_GUARDED_PART = re.compile(r";'(?='*[=+\-@\uff1d\uff0b\uff0d\uff20])")

Row = dict[str, Any]


@dataclass(frozen=True, slots=True)
class Contents:
    """What an export holds, as JSON values; nothing of it has been checked.

    Attributes
    ----------
    settings
        The owner's settings.
    lists
        Rows by the name of their list.
    """

    settings: Row
    lists: Mapping[str, list[Row]]


def fields_of(model: type[Base]) -> tuple[str, ...]:
    """Return the fields of a row in an export; for an owner, the settings."""
    if model is Owner:
        return tuple(field for field in columns(Owner) if field in changeable(Owner))
    return exported(model)


def to_json_text(contents: Contents) -> str:
    """Return contents as one JSON document, one row a line."""
    parts = [
        f'"format": {_dump(FORMAT)}',
        f'"version": {VERSION}',
        f'"settings": {_dump(contents.settings)}',
    ]
    for name in LISTS:
        rows = ",\n".join(_dump(row) for row in contents.lists[name])
        parts.append(f'"{name}": [\n{rows}\n]' if rows else f'"{name}": []')
    return "{\n" + ",\n".join(parts) + "\n}\n"


def from_json_text(text: str) -> Contents:
    """Return the contents of a JSON document.

    Raises
    ------
    FileTooLarge, BrokenFile, ForeignFile, NewerFile
        It is not one that we read.
    """
    _require_size(len(text))
    _require_few(text)
    try:
        document = json.loads(
            text.lstrip("\ufeff"), parse_constant=_refuse, object_pairs_hook=_once_each
        )
    except (ValueError, RecursionError) as error:
        raise BrokenFile(f"not readable as JSON: {error}") from None
    if not isinstance(document, dict):
        raise ForeignFile("not an export of ours")
    _require_format(document.pop("format", None), document.pop("version", None))
    settings = document.pop("settings", {})
    lists = {name: document.pop(name, []) for name in LISTS}
    if document:
        raise BrokenFile(f"unknown part {next(iter(document))!r}")
    if not isinstance(settings, dict) or not all(map(_is_list_of_rows, lists.values())):
        raise BrokenFile("a part has the wrong shape")
    return Contents(settings, lists)


def to_csv_texts(contents: Contents) -> dict[str, str]:
    """Return contents as CSV, a text for each file name."""
    head = {"format": FORMAT, "version": VERSION}
    settings = [*head, *fields_of(Owner)]
    files = {"settings.csv": _csv_text(settings, [{**head, **contents.settings}])}
    for name, model in LISTS.items():
        files[f"{name}.csv"] = _csv_text(list(fields_of(model)), contents.lists[name])
    return files


def from_csv_texts(files: Mapping[str, str]) -> Contents:
    """Return the contents of CSV files; a list whose file is missing is empty.

    Raises
    ------
    FileTooLarge, BrokenFile, ForeignFile, NewerFile
        They are not ones that we read.
    """
    _require_size(sum(map(len, files.values())))
    unknown = set(files) - {"settings.csv", *(f"{name}.csv" for name in LISTS)}
    if unknown or "settings.csv" not in files:
        raise ForeignFile("not the files of an export of ours")
    settings = _csv_rows(files["settings.csv"], Owner, extra=("format", "version"))
    if len(settings) != 1:
        raise BrokenFile("settings.csv needs one row")
    _require_format(settings[0].pop("format", None), settings[0].pop("version", None))
    lists = {name: _csv_rows(files.get(f"{name}.csv", ""), model) for name, model in LISTS.items()}
    return Contents(settings[0], lists)


def _dump(value: object) -> str:
    return json.dumps(value, ensure_ascii=False, allow_nan=False)


def _refuse(constant: str) -> None:
    raise ValueError(f"{constant} is not a number")


def _once_each(pairs: list[tuple[str, Any]]) -> Row:
    row = dict(pairs)
    if len(row) != len(pairs):
        raise ValueError("a name stands twice in one object")
    return row


def _is_list_of_rows(value: object) -> bool:
    return isinstance(value, list) and all(isinstance(row, dict) for row in value)


def _require_size(characters: int) -> None:
    if characters > MAX_CHARACTERS:
        raise FileTooLarge(characters, MAX_CHARACTERS)


def _require_few(text: str) -> None:
    signs = _TEXT.sub("", text)
    if signs.count("{") + signs.count("[") > _ALWAYS + len(text) // _CHARACTERS_AN_OBJECT:
        raise BrokenFile("more rows than its length has room for")


def _require_format(name: object, version: object) -> None:
    if name != FORMAT:
        raise ForeignFile("not an export of ours")
    if isinstance(version, bool) or not isinstance(version, int) or version < 1:
        raise BrokenFile("the version is not a whole number")
    if version > VERSION:
        raise NewerFile(version, VERSION)


def _csv_text(fields: list[str], rows: list[Row]) -> str:
    text = io.StringIO()
    writer = csv.writer(text)
    writer.writerow(fields)
    writer.writerows([_to_cell(row.get(field)) for field in fields] for row in rows)
    return text.getvalue()


def _csv_rows(text: str, model: type[Base], extra: tuple[str, ...] = ()) -> list[Row]:
    try:
        lines = list(csv.reader(io.StringIO(text.lstrip("\ufeff"), newline=""), strict=True))
    except csv.Error as error:
        raise BrokenFile(f"not readable as CSV: {error}") from None
    if not lines:
        return []
    header, *cells = lines
    if len(set(header)) != len(header) or not set(header) <= {*fields_of(model), *extra}:
        raise ForeignFile("not the columns of an export of ours")
    if any(len(line) != len(header) for line in cells):
        raise BrokenFile("a row is longer or shorter than the header")
    types = {**columns(model), "version": Column(Integer)}
    return [
        {
            field: _from_cell(cell, types.get(field))
            for field, cell in zip(header, line, strict=True)
            if cell
        }
        for line in cells
    ]


def _to_cell(value: object) -> str:
    if value is None:
        return ""
    if isinstance(value, str):
        value = _AFTER_PART.sub(";'", value)
        return "'" + value if value.startswith(_FORMULA_STARTS) else value
    return _dump(value).replace(";", "\\u003b")  # a sign of JSON it is not, only of its texts


def _from_cell(cell: str, column: Column[Any] | None) -> Any:
    """Return the JSON value of a cell; a text where it is none, for the check to refuse."""
    kind = None if column is None else column.type
    if isinstance(kind, Boolean | Integer | Double | JSON):
        try:
            return json.loads(cell, parse_constant=_refuse, object_pairs_hook=_once_each)
        except (ValueError, RecursionError):
            return cell
    if isinstance(kind, String) and not isinstance(kind, Enum):
        return _GUARDED_PART.sub(";", cell.removeprefix("'"))
    return cell
