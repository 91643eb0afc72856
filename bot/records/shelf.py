"""What plants, products and waters have in common: they are added, named and found alike."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any, TypeVar

from sqlalchemy import ColumnExpressionArgument, select
from sqlalchemy.ext.asyncio import AsyncSession

from .errors import NameTaken, NotOnRecord
from .kinds import EventKind
from .ledger import Entry, Said, append, require_room
from .models import Plant, Product, Water
from .names import can_be_kept, fold
from .values import MAX_ID, checked, to_json

Row = TypeVar("Row", Plant, Product, Water)
Shelved = TypeVar("Shelved", Product, Water)


def in_use(model: type[Plant | Product | Water]) -> tuple[ColumnExpressionArgument[bool], ...]:
    """Return what makes a row one that the owner still has."""
    if issubclass(model, Plant):
        return model.present, model.lost_on.is_(None)
    if issubclass(model, Product):
        return model.present, model.removed_on.is_(None)
    return (model.present,)


async def get_row(session: AsyncSession, owner_id: int, model: type[Row], row_id: int) -> Row:
    """Return a row, also one that is lost or removed.

    Raises
    ------
    NotOnRecord
        The owner has no such row, or its addition was undone.
    """
    # A number that no row can have may be longer than the database takes.
    row = await session.get(model, (owner_id, row_id)) if 0 < row_id <= MAX_ID else None
    if row is None or not row.present:
        raise NotOnRecord(model.__tablename__, row_id)
    return row


async def row_by_name(
    session: AsyncSession, owner_id: int, model: type[Row], name: str
) -> Row | None:
    """Return the row of a name that the owner still has."""
    if not can_be_kept(name):
        return None
    query = select(model).where(
        model.owner_id == owner_id, model.name_key == fold(name), *in_use(model)
    )
    found: Row | None = await session.scalar(query)
    return found


async def require_free_name(
    said: Said, model: type[Row], name: object, *, except_for: int | None = None
) -> None:
    """Refuse a name that another row of the kind has. The owner's row is held, so it stays free.

    Raises
    ------
    NameTaken
        Says which row has it.
    """
    if not isinstance(name, str):
        return
    other = await row_by_name(said.session, said.owner_id, model, name)
    if other is not None and other.id != except_for:
        raise NameTaken(model.__tablename__, name, other.id)


async def add_row(said: Said, model: type[Row], kind: EventKind, values: Mapping[str, Any]) -> Row:
    """Put a row on record, as an entry of the log that can be undone.

    The row is made absent and the entry makes it present, so that undoing needs no deletion.

    Raises
    ------
    BadValue, NameTaken, TooMany
        Nothing was written.
    """
    fit = checked(model, values)
    await require_free_name(said, model, fit.get("name"))
    row_id = await require_room(said.session, said.owner_id, model)
    row = model(owner_id=said.owner_id, id=row_id, **{**fit, "present": False})
    said.session.add(row)
    await said.session.flush()
    details = {name: to_json(value) for name, value in fit.items() if value is not None}
    await append(said, [entry_about(row, kind, {"present": True}, details)])
    return row


async def make_default_row(
    said: Said, model: type[Shelved], kind: EventKind, row_id: int
) -> Shelved:
    """Make a product or a water the default, and the one before no longer.

    Raises
    ------
    NotOnRecord
        The owner has no such row.
    """
    row = await get_row(said.session, said.owner_id, model, row_id)
    before = await default_row(said.session, said.owner_id, model)
    if before is not None and before.id == row_id:
        return row
    if before is not None:
        # Written out at once: at no moment may there be two.
        await append(said, [entry_about(before, kind, {"is_default": False})])
    await append(said, [entry_about(row, kind, {"is_default": True})])
    return row


async def default_row(session: AsyncSession, owner_id: int, model: type[Shelved]) -> Shelved | None:
    """Return the default product or water, None where there is none."""
    query = select(model).where(model.owner_id == owner_id, model.is_default, *in_use(model))
    found: Shelved | None = await session.scalar(query)
    return found


def entry_about(
    row: Plant | Product | Water,
    kind: EventKind,
    after: Mapping[str, Any],
    details: Mapping[str, Any] | None = None,
) -> Entry:
    """Return a log entry whose subject is a row."""
    return Entry(
        kind,
        plant_id=row.id if isinstance(row, Plant) else None,
        product_id=row.id if isinstance(row, Product) else None,
        water_id=row.id if isinstance(row, Water) else None,
        after=after,
        details=details or {},
    )
