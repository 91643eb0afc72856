"""The waters an owner gives."""

from __future__ import annotations

from collections.abc import Mapping
from typing import TypedDict, Unpack

from sqlalchemy import select
from sqlalchemy.ext.asyncio import AsyncSession

from .kinds import EventKind
from .ledger import Said, append
from .models import Water
from .shelf import (
    add_row,
    default_row,
    entry_about,
    get_row,
    in_use,
    make_default_row,
    require_free_name,
    row_by_name,
)


class WaterFields(TypedDict, total=False):
    """What is known of a water; what is left out is unknown, or stays as it is.

    Ions in mg/L by symbol.
    """

    kind: str
    name: str | None
    hardness_mg_l_caco3: float | None
    ec_ms_cm: float | None
    alkalinity_mg_l_caco3: float | None
    ions: Mapping[str, float] | None


async def get(session: AsyncSession, owner_id: int, water_id: int) -> Water:
    """Return a water.

    Raises
    ------
    NotOnRecord
        The owner has no such water, or its addition was undone.
    """
    return await get_row(session, owner_id, Water, water_id)


async def listing(session: AsyncSession, owner_id: int, *, kind: str | None = None) -> list[Water]:
    """Return the owner's waters, or those of a kind, in the order in which they were added."""
    query = select(Water).where(Water.owner_id == owner_id, *in_use(Water))
    if kind is not None:
        query = query.where(Water.kind == kind)
    return list(await session.scalars(query.order_by(Water.id)))


async def by_name(session: AsyncSession, owner_id: int, name: str) -> Water | None:
    """Return the water of a name, whatever its case."""
    return await row_by_name(session, owner_id, Water, name)


async def default(session: AsyncSession, owner_id: int) -> Water | None:
    """Return the water that is meant where none is named."""
    return await default_row(session, owner_id, Water)


async def add(said: Said, **fields: Unpack[WaterFields]) -> Water:
    """Put a water on record; `kind` is needed. It becomes the default only by `make_default`.

    Raises
    ------
    BadValue, NameTaken, TooMany
        Nothing was written.
    """
    _require_fields(fields)
    return await add_row(said, Water, EventKind.WATER_SOURCE, {"kind": None, **fields})


async def change(said: Said, water_id: int, **fields: Unpack[WaterFields]) -> Water:
    """Change what is known of a water.

    Raises
    ------
    NotOnRecord, BadValue, NameTaken
        Nothing was written.
    """
    _require_fields(fields)
    water = await get(said.session, said.owner_id, water_id)
    await require_free_name(said, Water, fields.get("name"), except_for=water_id)
    await append(said, [entry_about(water, EventKind.WATER_SOURCE, fields)])
    return water


async def make_default(said: Said, water_id: int) -> Water:
    """Make a water the one that is meant where none is named.

    Raises
    ------
    NotOnRecord
        The owner has no such water.
    """
    return await make_default_row(said, Water, EventKind.WATER_SOURCE, water_id)


def _require_fields(fields: WaterFields) -> None:
    unknown = set(fields) - set(WaterFields.__annotations__)
    if unknown:
        raise ValueError(f"not fields of a water: {unknown}")
