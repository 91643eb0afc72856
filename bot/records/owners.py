"""People and groups, and their settings."""

from __future__ import annotations

from dataclasses import asdict, dataclass
from datetime import datetime
from typing import Any, TypedDict, Unpack

from sqlalchemy import bindparam, select, update
from sqlalchemy.ext.asyncio import AsyncSession

from .errors import OwnerExists, UnknownOwner
from .kinds import EventKind, Hemisphere, OwnerKind, Units
from .ledger import Entry, Said, append, hold
from .models import Owner
from .upsert import prepared
from .values import checked


@dataclass(frozen=True, slots=True)
class Address:
    """Where an owner is met: one address is one owner.

    Attributes
    ----------
    kind
        A person or a group.
    channel
        The channel's code, such as `terminal`.
    external_id
        How the channel names them.
    """

    kind: OwnerKind
    channel: str
    external_id: str


_FIND = select(Owner).where(
    Owner.channel == bindparam("channel"),
    Owner.external_id == bindparam("external_id"),
    Owner.kind == bindparam("kind"),
)
# Promise: one owner an address, whoever is quicker; the row is there afterwards.
_ADD = prepared(Owner)(lambda insert: insert.on_conflict_do_nothing().returning(insert.table.c.id))


_HEAR = (
    update(Owner)
    .where(Owner.id == bindparam("of_owner"))
    .values(heard=bindparam("said_in"))
    .execution_options(synchronize_session=False)
)


class Settings(TypedDict, total=False):
    """What an owner can set; None clears it."""

    language: str | None
    zone: str | None
    place_name: str | None
    hemisphere: Hemisphere | None
    units: Units | None
    scale_step_g: float | None
    syringe_step_ml: float | None
    spoon: bool | None
    can_l: float | None
    quiet: bool | None
    quiet_from_min: int | None  # minutes after midnight
    quiet_until_min: int | None


async def find(session: AsyncSession, address: Address) -> Owner | None:
    """Return the owner of an address, None where nobody was met there.

    Raises
    ------
    BadValue
        A part of the address is empty, too long or no code.
    """
    found: Owner | None = await session.scalar(_FIND, _fit(address))
    return found


async def find_or_add(session: AsyncSession, address: Address, *, created_at: datetime) -> Owner:
    """Return the owner of an address; the first time, put them on record.

    Two that come at once get the same owner.

    Parameters
    ----------
    session
        A session of `Records.writing`.
    address
        Where they are met.
    created_at
        The instant, with a zone.

    Raises
    ------
    BadValue
        A part of the address is empty, too long or no code.
    """
    row = {**_fit(address), **checked(Owner, {"created_at": created_at, "heard": None})}
    added: Owner | None = await session.get(Owner, await _id_of(session, row))
    assert added is not None
    return added


async def id_or_add(
    session: AsyncSession, address: Address, *, created_at: datetime, heard: str | None = None
) -> int:
    """As `find_or_add`, for who needs only the id.

    heard
        The language they wrote in; kept where they are new.
    """
    told = checked(Owner, {"created_at": created_at, "heard": heard})
    return await _id_of(session, {**_fit(address), **told})


async def hear(session: AsyncSession, owner_id: int, language: str) -> None:
    """Keep the language an owner wrote in last: no setting of theirs, so not in the log."""
    fit = checked(Owner, {"heard": language})
    await session.execute(_HEAR, {"of_owner": owner_id, "said_in": fit["heard"]})


async def _id_of(session: AsyncSession, row: dict[str, Any]) -> int:
    added: int | None = await session.scalar(_ADD(session), row)
    if added is None:
        added = (await session.scalars(_FIND, row)).one().id
    return added


async def get(session: AsyncSession, owner_id: int) -> Owner:
    """Return an owner.

    Raises
    ------
    UnknownOwner
        There is no such owner.
    """
    owner = await session.get(Owner, owner_id)
    if owner is None:
        raise UnknownOwner(owner_id)
    return owner


async def change_settings(said: Said, **settings: Unpack[Settings]) -> Owner:
    """Change what the owner set, and write it to the log, so that it can be undone.

    Returns
    -------
    Owner
        With the new settings.

    Raises
    ------
    BadValue
        A setting does not take the value.
    """
    unknown = set(settings) - set(Settings.__annotations__)
    if unknown:
        raise ValueError(f"not a setting: {unknown}")
    await append(said, [Entry(EventKind.SETTINGS, after=settings)])
    return await get(said.session, said.owner_id)


async def readdress(session: AsyncSession, owner_id: int, address: Address) -> Owner:
    """Keep an owner's records where the channel has given them another address.

    Raises
    ------
    UnknownOwner
        There is no such owner.
    OwnerExists
        Another owner has that address.
    """
    owner = await hold(session, owner_id)
    other = await find(session, address)
    if other is not None and other.id != owner_id:
        raise OwnerExists(other.id)
    for name, value in _fit(address).items():
        setattr(owner, name, value)
    await session.flush()
    return owner


def _fit(address: Address) -> dict[str, Any]:
    return checked(Owner, asdict(address))
