"""The kinds of column, each with the limits that its values are held to.

The limits stand beside the column, so that a new column is checked on writing and on import
without a second list.
"""

from __future__ import annotations

import enum
from dataclasses import dataclass
from datetime import UTC, datetime
from typing import Any

from sqlalchemy import (
    JSON,
    BigInteger,
    Boolean,
    Column,
    DateTime,
    Dialect,
    Double,
    Enum,
    Integer,
    String,
    Text,
)
from sqlalchemy.orm import MappedColumn, mapped_column
from sqlalchemy.types import TypeDecorator

ID = BigInteger().with_variant(Integer, "sqlite")
"""SQLite gives numbers of its own accord only to a column of type INTEGER."""


@dataclass(frozen=True, slots=True)
class Rule:
    """What a column's values are held to, beyond its type.

    Parameters
    ----------
    least, most
        The smallest and largest number allowed; for an object of numbers, of each of them.
    code
        Lower-case letters, digits and underscores only.
    numbers
        A JSON object whose values are all numbers.
    derived
        Computed from another column; not part of an export.
    zone
        A zone of the IANA database.
    """

    least: float = 0.0
    most: float = 1e9
    code: bool = False
    numbers: bool = False
    derived: bool = False
    zone: bool = False


class UtcDateTime(TypeDecorator[datetime]):
    """An instant: aware in Python, UTC in the database (SQLite has no zones of its own)."""

    impl = DateTime(timezone=True)
    cache_ok = True

    def process_bind_param(self, value: datetime | None, dialect: Dialect) -> datetime | None:
        if value is None:
            return None
        if value.tzinfo is None:
            raise ValueError("an instant needs a zone")
        value = value.astimezone(UTC)
        return value.replace(tzinfo=None) if dialect.name == "sqlite" else value

    def process_result_value(self, value: datetime | None, dialect: Dialect) -> datetime | None:
        if value is None:
            return None
        return value.replace(tzinfo=UTC) if value.tzinfo is None else value.astimezone(UTC)


_NO_RULE = Rule()


def rule_of(column: Column[Any]) -> Rule:
    """Return the limits of a column."""
    rule = column.info.get("rule")
    return rule if isinstance(rule, Rule) else _NO_RULE


def text(length: int) -> MappedColumn[Any]:
    """Free text of at most `length` characters."""
    return mapped_column(String(length))


def zone() -> MappedColumn[Any]:
    """The name of a zone of the IANA database."""
    return mapped_column(String(64), info={"rule": Rule(zone=True)})


def code() -> MappedColumn[Any]:
    """A canonical value such as a medium; which ones exist is not known here."""
    return mapped_column(String(32), info={"rule": Rule(code=True)})


def name_key() -> MappedColumn[Any]:
    """A name as it is looked up: see `values.fold`."""
    return mapped_column(Text, info={"rule": Rule(derived=True)})


def amount(most: float, least: float = 0.0) -> MappedColumn[Any]:
    """A number from `least` to `most`, in the unit that the column's name gives."""
    return mapped_column(Double, info={"rule": Rule(least=least, most=most)})


def whole(most: int, least: int = 1) -> MappedColumn[Any]:
    """A whole number from `least` to `most`."""
    return mapped_column(Integer, info={"rule": Rule(least=least, most=most)})


def flag(default: bool) -> MappedColumn[Any]:
    """Yes or no."""
    return mapped_column(Boolean, default=default)


def choice(of: type[enum.StrEnum]) -> MappedColumn[Any]:
    """One of a closed vocabulary, stored by value."""
    kind = Enum(
        of,
        native_enum=False,
        create_constraint=False,
        length=32,
        values_callable=lambda members: [member.value for member in members],
    )
    return mapped_column(kind)


def document() -> MappedColumn[Any]:
    """A JSON object; text JSON on both databases, so that it comes back as it was written."""
    return mapped_column(JSON(none_as_null=True))


def numbers(most: float) -> MappedColumn[Any]:
    """A JSON object of numbers, each from 0 to `most`."""
    return mapped_column(JSON(none_as_null=True), info={"rule": Rule(most=most, numbers=True)})
