"""Some of several alike become an entry of their own: 'move 10 dendrobiums to the balcony'."""

from __future__ import annotations

from sqlalchemy import inspect

from bot.records import log, plants
from bot.records.errors import ChangedSince
from bot.records.kinds import CARE
from bot.records.models import Plant

#: Entries of the log that go with them, the newest.
_MOST_ENTRIES = 500


def some_of(plant: Plant, some: int) -> Plant:
    """So many of several alike, to speak of: nothing is stored."""
    kept = {c.key: getattr(plant, c.key) for c in inspect(Plant).column_attrs}
    return Plant(**{**kept, "count": some})


async def split(told: log.Said, plant: Plant, some: int) -> Plant:
    """Take some of several alike out into an entry that got the same so far.

    Parameters
    ----------
    told : the utterance; undone, all is as it was
    plant : the entry, of more than `some`
    some : how many are taken out

    Returns
    -------
    Plant
        The new entry, without the name of the old.

    Raises
    ------
    ChangedSince
        The entry is of no more than that by now.
    """
    session, owner_id = told.session, told.owner_id
    (plant,) = await plants.standing(told, [plant.id])
    if plant.count <= some:
        raise ChangedSince("there are fewer by now")
    done = await log.history(session, owner_id, plant.id, kinds=CARE, limit=_MOST_ENTRIES)
    await plants.correct(told, [plant.id], count=plant.count - some)
    part = await plants.add(
        told,
        genus=plant.genus,
        detail=plant.detail,
        count=some,
        medium=plant.medium,
        pot_cm=plant.pot_cm,
        water_ml=plant.water_ml,
        place_id=plant.place_id,
        growth=plant.growth,
        growth_since=plant.growth_since,
        water_id=plant.water_id,
        added_on=plant.added_on,
    )
    await log.record(
        told,
        [
            log.Entry(
                event.kind,
                part.id,
                event.product_id,
                event.water_id,
                on=event.on,
                details={k: v for k, v in event.details.items() if k != "by"},
            )
            for event in done
        ],
    )
    if plant.last_repot_on is not None:
        await plants.repot(told, [part.id], on=plant.last_repot_on)
    return part
