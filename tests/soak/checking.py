"""What the database holds at the end, beside what people were told."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable
from dataclasses import dataclass, field

from sqlalchemy import func, select
from sqlalchemy.ext.asyncio import AsyncSession

from bot.records import open_records
from bot.records.kinds import EventKind, OwnerKind, PingState
from bot.records.models import Event, Inbox, Outbox, Owner, Ping, Plant
from tests.soak.people import Person

_CARE = (EventKind.FED, EventKind.CLEAR)


@dataclass
class Held:
    """What was looked at and found.

    Attributes
    ----------
    looked_at : people whose records were compared
    entries : plants and entries of the log of theirs
    wrong : whose records are not what they were told
    pings : pings by state
    unsent : message numbers of pings that the messenger has never given
    """

    looked_at: int = 0
    entries: int = 0
    wrong: list[str] = field(default_factory=list)
    pings: Counter[str] = field(default_factory=Counter)
    unsent: int = 0
    rows: dict[str, int] = field(default_factory=dict)
    open_updates: int = 0
    open_letters: int = 0


async def still_open(url: str) -> tuple[int, int]:
    """Updates and requests that are not done."""
    records = await open_records(url)
    try:
        async with records.reading() as session:
            ins = await session.scalar(select(func.count()).where(Inbox.state == "open"))
            out = await session.scalar(select(func.count()).where(Outbox.state == "open"))
    finally:
        await records.close()
    return ins or 0, out or 0


async def held(url: str, people: Iterable[Person], seen: set[int]) -> Held:
    """Compare the records of people with what they were told; `seen` are the pings' messages."""
    found = Held()
    records = await open_records(url)
    try:
        async with records.reading() as session:
            for person in people:
                await _one(session, person, found)
            states = await session.execute(select(Ping.state, func.count()).group_by(Ping.state))
            found.pings = Counter({str(state): count for state, count in states.all()})
            made = await session.scalars(
                select(Ping.message_id).where(
                    Ping.state != PingState.FAILED, Ping.message_id.is_not(None)
                )
            )
            found.unsent = sum(number not in seen for number in made)
            for model in (Owner, Plant, Event, Ping, Inbox, Outbox):
                found.rows[model.__tablename__] = (
                    await session.scalar(select(func.count()).select_from(model)) or 0
                )
            open_in = select(func.count()).where(Inbox.state == "open")
            open_out = select(func.count()).where(Outbox.state == "open")
            found.open_updates = await session.scalar(open_in) or 0
            found.open_letters = await session.scalar(open_out) or 0
    finally:
        await records.close()
    return found


async def _one(session: AsyncSession, person: Person, found: Held) -> None:
    found.looked_at += 1
    owner = await session.scalar(
        select(Owner.id).where(
            Owner.channel == "telegram", Owner.kind == OwnerKind.PERSON,
            Owner.external_id == str(person.body.id),
        )
    )  # fmt: skip
    plants = await session.execute(
        select(Plant.id, Plant.name).where(Plant.owner_id == owner, Plant.present)
    )
    names = {number: name for number, name in plants.all() if name}
    wanted = Counter(person.plants)
    if Counter(names.values()) != wanted:
        missing, more = wanted - Counter(names.values()), Counter(names.values()) - wanted
        found.wrong.append(f"{person.body.id}: plants missing {missing}, too many {more}")
    reversal = select(Event.reverses).where(Event.owner_id == owner, Event.reverses.is_not(None))
    taken_back = set(await session.scalars(reversal))
    rows = await session.execute(
        select(Event.id, Event.kind, Event.plant_id).where(
            Event.owner_id == owner, Event.kind.in_(_CARE), Event.reverses.is_(None)
        )
    )
    log = Counter(
        (str(kind), names.get(plant_id or 0, "?"))
        for number, kind, plant_id in rows.all() if number not in taken_back
    )  # fmt: skip
    told = Counter({key: count for key, count in person.log.items() if count})
    found.entries += sum(log.values()) + len(names)
    if log != told:
        found.wrong.append(f"{person.body.id}: log missing {told - log}, too many {log - told}")
