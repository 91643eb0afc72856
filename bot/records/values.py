"""Which values a column takes, and how they are written in JSON.

Both follow from the columns themselves (`columns.Rule`), so a new column is checked and
exported without an entry here.
"""

from __future__ import annotations

import enum
import json
import re
from collections.abc import Callable, Mapping
from datetime import UTC, date, datetime
from functools import cache
from typing import Any

from sqlalchemy import JSON, Boolean, Column, Date, Double, Enum, Integer, String

from .columns import Rule, UtcDateTime, rule_of
from .errors import BadValue
from .models import Base, Owner
from .names import can_be_kept, zones

MAX_DOCUMENT = 64_000
"""The longest JSON document of one cell [characters]."""

MAX_ID = 2**53 - 1
"""The largest row number: what every JSON reader keeps exactly."""

EARLIEST = date(1900, 1, 1)

_OWNER_IDENTITY = frozenset({"id", "kind", "channel", "external_id", "created_at"})

_CODE = re.compile(r"[a-z0-9_]{1,32}")


class Unfit(ValueError):
    """A value that its column does not take; the message says why."""


@cache
def columns(model: type[Base]) -> Mapping[str, Column[Any]]:
    """Return a table's columns by the name they have in Python."""
    return {
        attribute.key: attribute.columns[0]
        for attribute in model.__mapper__.column_attrs
        if isinstance(attribute.columns[0], Column)
    }


@cache
def exported(model: type[Base]) -> tuple[str, ...]:
    """Return the fields of a table that an export holds: all but the owner and what is derived."""
    return tuple(
        field
        for field, column in columns(model).items()
        if field != "owner_id" and not rule_of(column).derived
    )


@cache
def changeable(model: type[Base]) -> frozenset[str]:
    """Return the fields that an entry of the log may change: nobody's identity is among them."""
    return frozenset(exported(model)) - (_OWNER_IDENTITY if model is Owner else {"id"})


def checked(model: type[Base], values: Mapping[str, object]) -> dict[str, Any]:
    """Return values as they are stored, or say which of them does not fit.

    Parameters
    ----------
    model
        The table.
    values
        New values by field.

    Returns
    -------
    dict
        The same fields; texts trimmed, numbers as the column's type.

    Raises
    ------
    BadValue
        The field does not exist, or does not take the value.
    """
    table = model.__tablename__
    fit: dict[str, Any] = {}
    for field, value in values.items():
        column = columns(model).get(field)
        if column is None:
            raise BadValue(table, field, "no such field")
        try:
            fit[field] = _fit(column, value)
        except Unfit as unfit:
            raise BadValue(table, field, str(unfit)) from None
    return fit


def from_json(model: type[Base], field: str, raw: object) -> Any:
    """Return the stored form of a value that was written by `to_json`.

    Raises
    ------
    Unfit
        The column does not take the value.
    """
    column = columns(model)[field]
    if isinstance(raw, str) and isinstance(column.type, Date | UtcDateTime):
        raw = _moment(raw, datetime if isinstance(column.type, UtcDateTime) else date)
    return _fit(column, raw)


def to_json(value: object) -> Any:
    """Return a stored value as it is written in JSON: dates and instants as ISO 8601."""
    if isinstance(value, datetime):
        return value.astimezone(UTC).isoformat().replace("+00:00", "Z")
    if isinstance(value, date):
        return value.isoformat()
    return value.value if isinstance(value, enum.Enum) else value


def _fit(column: Column[Any], value: object) -> Any:
    if value is None:
        if column.nullable:
            return None
        raise Unfit("needed")
    kind: type = type(column.type)
    fit = _fit_of(kind)
    if fit is None:
        raise Unfit(f"no rule for {column.type!r}")
    return fit(column, rule_of(column), value)


@cache
def _fit_of(kind: type) -> Callable[[Column[Any], Rule, object], Any] | None:
    """What fits values to columns of a kind; asked for every cell of an import."""
    return next((fit for of, fit in _FITS.items() if issubclass(kind, of)), None)


def _fit_member(column: Column[Any], _rule: Rule, value: object) -> enum.Enum:
    of = column.type
    assert isinstance(of, Enum)
    members = of.enum_class
    assert members is not None
    try:
        return members(value)
    except ValueError:
        raise Unfit("one of " + ", ".join(str(member.value) for member in members)) from None


def _fit_text(column: Column[Any], rule: Rule, value: object) -> str:
    if not isinstance(value, str):
        raise Unfit("must be a text")
    value = value.strip()
    if not value:
        raise Unfit("is empty")
    if rule.code and not _CODE.fullmatch(value):
        raise Unfit("must be small letters, digits and underscores")
    longest = getattr(column.type, "length", None)
    if longest is not None and len(value) > longest:
        raise Unfit(f"longer than {longest} characters")
    if not can_be_kept(value):
        raise Unfit("has characters that cannot be shown")
    if rule.zone and value not in zones():
        raise Unfit("not a zone of the IANA database")
    return value


def _fit_flag(_column: Column[Any], _rule: Rule, value: object) -> bool:
    if not isinstance(value, bool):
        raise Unfit("must be true or false")
    return value


def _fit_whole(column: Column[Any], rule: Rule, value: object) -> int:
    if isinstance(value, bool) or not isinstance(value, int):
        raise Unfit("must be a whole number")
    least, most = (rule.least, rule.most) if "rule" in column.info else (1, MAX_ID)
    if not least <= value <= most:
        raise Unfit(f"must be from {least:g} to {most:g}")
    return value


def _fit_amount(_column: Column[Any], rule: Rule, value: object) -> float:
    if isinstance(value, bool) or not isinstance(value, int | float):
        raise Unfit("must be a number")
    # Compared before it is converted: a whole number can be too long for a float. Neither
    # infinity nor 'not a number' passes.
    if not rule.least <= value <= rule.most:
        raise Unfit(f"must be from {rule.least:g} to {rule.most:g}")
    return float(value)


def _fit_day(_column: Column[Any], _rule: Rule, value: object) -> date:
    if not isinstance(value, date) or isinstance(value, datetime):
        raise Unfit("must be a date")
    if value < EARLIEST:
        raise Unfit("is too long ago")
    return value


def _fit_instant(_column: Column[Any], _rule: Rule, value: object) -> datetime:
    if not isinstance(value, datetime):
        raise Unfit("must be an instant")
    if value.tzinfo is None:
        raise Unfit("an instant needs a zone")
    if not EARLIEST.year < value.year < date.max.year:
        raise Unfit("is too long ago or too far ahead")
    return value.astimezone(UTC)


def _fit_document(column: Column[Any], rule: Rule, value: object) -> dict[str, Any]:
    if not isinstance(value, Mapping):
        raise Unfit("must be an object")
    try:
        written = json.dumps(dict(value), allow_nan=False, ensure_ascii=False)
        written.encode()  # refuses half characters
    except (TypeError, ValueError, RecursionError):
        raise Unfit("cannot be written as JSON") from None
    if len(written) > MAX_DOCUMENT:
        raise Unfit(f"longer than {MAX_DOCUMENT} characters")
    if rule.numbers:
        return {_fit_text(_KEY, rule, k): _fit_amount(column, rule, v) for k, v in value.items()}
    read: dict[str, Any] = json.loads(written)
    return read


def _moment(raw: str, of: type[date]) -> date:
    try:
        return of.fromisoformat(raw)
    except ValueError:
        raise Unfit("not a date as 2026-03-01, or not an instant as 2026-03-01T08:00:00Z") from None


_KEY: Column[Any] = Column(String(32))

_FITS: Mapping[type, Callable[[Column[Any], Rule, object], Any]] = {
    Enum: _fit_member,  # also a text to SQLAlchemy: before that
    Boolean: _fit_flag,
    Integer: _fit_whole,
    Double: _fit_amount,
    Date: _fit_day,
    UtcDateTime: _fit_instant,
    JSON: _fit_document,
    String: _fit_text,
}
