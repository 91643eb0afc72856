"""Where plants stand. A place is made the first time it is named, and is not part of the log."""

from __future__ import annotations

from sqlalchemy import select
from sqlalchemy.ext.asyncio import AsyncSession

from .ledger import hold, require_room
from .models import Place
from .names import can_be_kept, fold
from .values import MAX_ID, checked


async def listing(session: AsyncSession, owner_id: int) -> list[Place]:
    """Return the owner's places in the order in which they were first named."""
    query = select(Place).where(Place.owner_id == owner_id).order_by(Place.id)
    return list(await session.scalars(query))


async def exists(session: AsyncSession, owner_id: int, place_id: int) -> bool:
    """Say whether the owner has a place of this number."""
    # A number that no row can have may be longer than the database takes.
    return 0 < place_id <= MAX_ID and await session.get(Place, (owner_id, place_id)) is not None


async def by_name(session: AsyncSession, owner_id: int, name: str) -> Place | None:
    """Return the owner's place of a name, whatever its case."""
    if not can_be_kept(name):
        return None
    query = select(Place).where(Place.owner_id == owner_id, Place.name_key == fold(name))
    found: Place | None = await session.scalar(query)
    return found


async def find_or_add(session: AsyncSession, owner_id: int, name: str) -> Place:
    """Return the owner's place of a name; the first time, put it on record.

    Parameters
    ----------
    session
        A session of `Records.writing`.
    owner_id
        The owner.
    name
        As it was said.

    Raises
    ------
    UnknownOwner, TooMany, BadValue
        Nothing was written.
    """
    await hold(session, owner_id)
    fit = checked(Place, {"name": name})
    found = await by_name(session, owner_id, fit["name"])
    if found is not None:
        return found
    place_id = await require_room(session, owner_id, Place)
    place = Place(owner_id=owner_id, id=place_id, **fit)
    session.add(place)
    await session.flush()
    return place
