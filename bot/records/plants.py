"""The plants of an owner. Every change is an entry of the log, and can be undone."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from datetime import date
from typing import Any, TypedDict, Unpack

from sqlalchemy import func, select
from sqlalchemy.ext.asyncio import AsyncSession

from . import places
from .errors import ChangedSince, NotOnRecord
from .kinds import EventKind
from .ledger import CHUNK, Entry, Said, append
from .models import Plant, Water
from .shelf import add_row, get_row, in_use, require_free_name, row_by_name


class PlantFields(TypedDict, total=False):
    """What is known of a plant; what is left out is unknown, or stays as it is."""

    name: str | None
    genus: str | None
    detail: str | None
    count: int
    medium: str | None
    pot_cm: float | None
    water_ml: float | None
    place_id: int | None
    growth: str | None
    growth_since: date | None
    water_id: int | None
    added_on: date


async def get(session: AsyncSession, owner_id: int, plant_id: int) -> Plant:
    """Return a plant, also a lost one.

    Raises
    ------
    NotOnRecord
        The owner has no such plant, or its addition was undone.
    """
    return await get_row(session, owner_id, Plant, plant_id)


async def listing(
    session: AsyncSession, owner_id: int, *, include_lost: bool = False
) -> list[Plant]:
    """Return the owner's plants in the order in which they were added."""
    kept = (Plant.present,) if include_lost else in_use(Plant)
    query = select(Plant).where(Plant.owner_id == owner_id, *kept).order_by(Plant.id)
    return list(await session.scalars(query))


async def some(
    session: AsyncSession,
    owner_id: int,
    plant_ids: Iterable[int],
    *,
    include_lost: bool = False,
) -> list[Plant]:
    """Return those of these plants that the owner still has, in the order they were added."""
    kept = (Plant.present,) if include_lost else in_use(Plant)
    query = select(Plant).where(Plant.owner_id == owner_id, Plant.id.in_(list(plant_ids)), *kept)
    return list(await session.scalars(query.order_by(Plant.id)))


async def standing(said: Said, plant_ids: Sequence[int]) -> list[Plant]:
    """Return plants as they stand now that nobody else writes, in the order they were added.

    Raises
    ------
    ChangedSince
        One of them was taken off the list since it was read.
    """
    found: list[Plant] = []
    for first in range(0, len(plant_ids), CHUNK):
        query = select(Plant).where(
            Plant.owner_id == said.owner_id,
            Plant.id.in_(plant_ids[first : first + CHUNK]),
            *in_use(Plant),
        )
        rows = await said.session.scalars(query.execution_options(populate_existing=True))
        found += rows
    if len(found) < len(set(plant_ids)):
        raise ChangedSince("a plant was taken off the list")
    return sorted(found, key=lambda plant: plant.id)


async def count(session: AsyncSession, owner_id: int) -> int:
    """Return how many entries of the collection there are; three alike in one entry are one."""
    query = select(func.count()).where(Plant.owner_id == owner_id, *in_use(Plant))
    return await session.scalar(query) or 0


async def by_name(session: AsyncSession, owner_id: int, name: str) -> Plant | None:
    """Return the plant of a name, whatever its case; lost plants have given theirs up."""
    return await row_by_name(session, owner_id, Plant, name)


async def add(said: Said, **fields: Unpack[PlantFields]) -> Plant:
    """Put a plant, or several alike, on record.

    Parameters
    ----------
    said
        The utterance.
    **fields
        What is known of it; `count` is 1 and `added_on` the day of the utterance if left out.

    Raises
    ------
    BadValue, NameTaken, NotOnRecord, TooMany
        Nothing was written.
    """
    await _require_pointers(said, fields)
    values = {"count": 1, "added_on": said.on, **_only_fields(fields)}
    return await add_row(said, Plant, EventKind.ADDED, values)


async def rename(said: Said, plant_id: int, name: str | None) -> Plant:
    """Give a plant a name, or take it away.

    Raises
    ------
    NotOnRecord, NameTaken, BadValue
        Nothing was written.
    """
    plant = await get(said.session, said.owner_id, plant_id)
    await require_free_name(said, Plant, name, except_for=plant_id)
    await append(said, [Entry(EventKind.RENAMED, plant_id, after={"name": name})])
    return plant


async def move(said: Said, plant_ids: Iterable[int], place_id: int | None) -> list[int]:
    """Put plants in another place. Returns the ids of the entries, as all below.

    Raises
    ------
    NotOnRecord
        A plant or the place is not this owner's.
    """
    return await _change(said, plant_ids, EventKind.MOVED, {"place_id": place_id})


async def repot(
    said: Said,
    plant_ids: Iterable[int],
    *,
    on: date | None = None,
    medium: str | None = None,
    pot_cm: float | None = None,
) -> list[int]:
    """Repot plants; the medium and the pot stay as they were where they are not given.

    Raises
    ------
    NotOnRecord, BadValue
        Nothing was written.
    """
    given = {"medium": medium, "pot_cm": pot_cm}
    after = {name: value for name, value in given.items() if value is not None}
    return await _change(said, plant_ids, EventKind.REPOT, after, on)


async def set_growth(
    said: Said, plant_ids: Iterable[int], growth: str | None, *, on: date | None = None
) -> list[int]:
    """Say how plants grow, since the day given or that of the utterance.

    Raises
    ------
    NotOnRecord, BadValue
        Nothing was written.
    """
    after = {"growth": growth, "growth_since": None if growth is None else on or said.on}
    return await _change(said, plant_ids, EventKind.GROWTH, after, on)


async def set_water(said: Said, plant_ids: Iterable[int], water_id: int | None) -> list[int]:
    """Say which water plants get; None: the owner's default.

    Raises
    ------
    NotOnRecord
        A plant or the water is not this owner's.
    """
    return await _change(said, plant_ids, EventKind.WATER, {"water_id": water_id})


async def lose(said: Said, plant_ids: Iterable[int], *, on: date | None = None) -> list[int]:
    """Take plants out of the collection; their history stays.

    Raises
    ------
    NotOnRecord
        A plant is not this owner's.
    """
    return await _change(said, plant_ids, EventKind.LOST, {"lost_on": on or said.on}, on)


async def correct(said: Said, plant_ids: Iterable[int], **fields: Unpack[PlantFields]) -> list[int]:
    """Change what is known of plants, where no other function says why.

    Raises
    ------
    NotOnRecord, NameTaken, BadValue
        Nothing was written.
    """
    ids = list(plant_ids)
    if fields.get("name") is not None and len(ids) > 1:
        raise ValueError("one name for several plants")
    await require_free_name(said, Plant, fields.get("name"), except_for=ids[0] if ids else None)
    return await _change(said, ids, EventKind.CORRECTED, _only_fields(fields))


async def _change(
    said: Said,
    plant_ids: Iterable[int],
    kind: EventKind,
    after: Mapping[str, Any],
    on: date | None = None,
) -> list[int]:
    await _require_pointers(said, after)
    return await append(said, [Entry(kind, plant_id, on=on, after=after) for plant_id in plant_ids])


async def _require_pointers(said: Said, fields: Mapping[str, Any]) -> None:
    """Refuse a place or a water that is not the owner's, before the database does."""
    place_id = fields.get("place_id")
    if place_id is not None and not await places.exists(said.session, said.owner_id, place_id):
        raise NotOnRecord("place", place_id)
    water_id = fields.get("water_id")
    if water_id is not None:
        await get_row(said.session, said.owner_id, Water, water_id)


def _only_fields(fields: PlantFields) -> dict[str, Any]:
    unknown = set(fields) - set(PlantFields.__annotations__)
    if unknown:
        raise ValueError(f"not fields of a plant: {unknown}")
    return dict(fields)
