"""Taking everything along: the export of an owner's records, and reading it back.

The JSON document (UTF-8, one row a line)
-----------------------------------------
`format`     always "sinkside-records"
`version`    2 (1 had no reminders); a program refuses a higher one than it knows
`settings`   the owner's settings, as `owners.Settings`
`places`     `id`, `name`
`waters`     `id`, `kind`, `name`, `hardness_mg_l_caco3`, `ec_ms_cm`, `alkalinity_mg_l_caco3`,
             `ions` (mg/L by symbol), `is_default`, `present`
`products`   `id`, then as `products.ProductFields`, `is_default`, `added_on`, `removed_on`,
             `present`
`plants`     `id`, then as `plants.PlantFields`, `lost_on`, `present`, `last_fed_on`,
             `last_clear_on`, `last_flush_on`, `last_repot_on`
`reminders`  `id`, then as `reminders.ReminderFields`, `state`, `created`
`events`     `id`, `batch`, `kind`, `on`, `said_at`, `plant_id`, `product_id`, `water_id`,
             `reminder_id`, `payload` (`details`, `before`, `after`), `reverses`

Numbers are in the unit of the field's name, days are YYYY-MM-DD, instants ISO 8601 in UTC.
What is unknown is left out. `present` is false where an addition was undone. Ids are the
owner's own, from 1, and other fields refer to them. Where an owner lives in the channel
(their address), who of a group set a reminder, which pings were sent, and what they last asked
for are not part of it.

The CSV files hold the same, one file a list and `settings.csv` with the format and version.
An empty cell is unknown; a text that a spreadsheet would run as a formula has an apostrophe
before it, which reading takes away.

The same records always give the same text, and a text that was read back gives itself.
"""

from __future__ import annotations

import asyncio
from collections.abc import Collection, Mapping
from dataclasses import dataclass
from datetime import date
from typing import Any

from sqlalchemy import insert, select
from sqlalchemy.ext.asyncio import AsyncSession

from .errors import AlreadyHasRecords, HasProblems
from .export_check import Problem, check
from .export_files import (
    FORMAT,
    LISTS,
    MAX_CHARACTERS,
    VERSION,
    Contents,
    Row,
    fields_of,
    from_csv_texts,
    from_json_text,
    to_csv_texts,
    to_json_text,
)
from .forget import count_owned, delete_collection
from .ledger import hold
from .models import Base, Memory, Owner
from .names import fold
from .owners import get
from .values import columns, to_json

__all__ = [
    "FORMAT",
    "MAX_CHARACTERS",
    "VERSION",
    "Preview",
    "Problem",
    "export_csv",
    "export_json",
    "import_export",
    "read_csv_export",
    "read_export",
]

#: Rows that are read or written before the loop may serve others in between.
AT_ONCE = 250


@dataclass(frozen=True, slots=True)
class Preview:
    """What a file holds, before anything of it is written.

    Attributes
    ----------
    counts
        Rows by list: places, waters, products, plants, reminders, events; lists without rows
        are left out.
    problems
        What keeps it from being taken in; at most `export_check.MAX_PROBLEMS`.
    first_on, last_on
        The first and the last day in the log.
    settings, rows
        What would be written.
    """

    counts: Mapping[str, int]
    problems: tuple[Problem, ...]
    first_on: date | None
    last_on: date | None
    settings: Row
    rows: Mapping[str, list[Row]]


async def export_json(session: AsyncSession, owner_id: int) -> str:
    """Return everything of an owner as one JSON document.

    Raises
    ------
    UnknownOwner
        There is no such owner.
    """
    # Writing out many rows takes its time: not on the loop that serves the others.
    return await asyncio.to_thread(to_json_text, await _contents(session, owner_id))


async def export_csv(session: AsyncSession, owner_id: int) -> dict[str, str]:
    """Return everything of an owner as CSV, a text for each file name.

    Raises
    ------
    UnknownOwner
        There is no such owner.
    """
    return await asyncio.to_thread(to_csv_texts, await _contents(session, owner_id))


def read_export(text: str, *, codes: Mapping[str, Collection[str]] | None = None) -> Preview:
    """Read an exported JSON document; nothing is written.

    Takes about a second for 20,000 entries: call it in a thread.

    Parameters
    ----------
    text
        The document.
    codes
        The canonical values to hold the file to, by field: `{"plant.medium": {"bark", ...},
        "plant.growth": ..., "product.form": ..., "water.kind": ...}`.

    Returns
    -------
    Preview
        The counts, and the problems if it has any.

    Raises
    ------
    FileTooLarge, BrokenFile, ForeignFile, NewerFile
        It cannot be read at all.
    """
    return _preview(from_json_text(text), codes or {})


def read_csv_export(
    files: Mapping[str, str], *, codes: Mapping[str, Collection[str]] | None = None
) -> Preview:
    """Read exported CSV files by name; as `read_export`."""
    return _preview(from_csv_texts(files), codes or {})


async def import_export(
    session: AsyncSession, owner_id: int, preview: Preview, *, replace: bool = False
) -> dict[str, int]:
    """Make an owner's records those of a file: all of it or nothing.

    Afterwards the export of the owner is the file, and `undo` goes on where it left off there.

    Parameters
    ----------
    session
        A session of `Records.writing`.
    owner_id
        The owner; the address stays, the settings become the file's.
    preview
        From `read_export`.
    replace
        Delete what the owner has on record first.

    Returns
    -------
    dict
        Rows written by list, as in the preview.

    Raises
    ------
    HasProblems
        The preview lists problems.
    AlreadyHasRecords
        The owner has records and `replace` is false; says how many.
    UnknownOwner
        There is no such owner.
    """
    if preview.problems:
        raise HasProblems(f"{preview.problems[0].where}: {preview.problems[0].what}")
    owner = await hold(session, owner_id)
    counts = await count_owned(session, owner_id)
    counts.pop(Memory.__tablename__, None)
    if counts and not replace:
        raise AlreadyHasRecords(counts)
    if counts:
        await delete_collection(session, owner_id)
        owner = await hold(session, owner_id)
        owner.replaced = (owner.replaced or 0) + 1
    for name, value in preview.settings.items():
        setattr(owner, name, value)
    await session.flush()
    for of, model in LISTS.items():
        rows = preview.rows[of]
        for first in range(0, len(rows), AT_ONCE):
            some = rows[first : first + AT_ONCE]
            await session.execute(insert(model), [_stored(owner, model, row) for row in some])
            await asyncio.sleep(0)
    return dict(preview.counts)


async def _contents(session: AsyncSession, owner_id: int) -> Contents:
    owner = await get(session, owner_id)
    settings = {name: to_json(getattr(owner, name)) for name in fields_of(Owner)}
    lists = {of: await _rows(session, owner_id, model) for of, model in LISTS.items()}
    return Contents(_known(settings), lists)


async def _rows(session: AsyncSession, owner_id: int, model: type[Base]) -> list[Row]:
    of = columns(model)
    fields = fields_of(model)
    query = select(*(of[name] for name in fields))
    query = query.where(of["owner_id"] == owner_id).order_by(of["id"])
    found: list[Row] = []
    async for some in (await session.stream(query)).partitions(AT_ONCE):
        found += [_known(dict(zip(fields, map(to_json, row), strict=True))) for row in some]
        await asyncio.sleep(0)
    return found


def _known(row: Row) -> Row:
    return {name: value for name, value in row.items() if value is not None}


def _preview(contents: Contents, codes: Mapping[str, Collection[str]]) -> Preview:
    checked = check(contents, codes)
    counts = {of: len(contents.lists[of]) for of in LISTS if contents.lists[of]}
    days = [row["on"] for row in checked.rows.get("events", []) if row.get("on")]
    return Preview(
        counts=counts,
        problems=tuple(checked.problems),
        first_on=min(days, default=None),
        last_on=max(days, default=None),
        settings=checked.settings,
        rows=checked.rows,
    )


def _stored(owner: Owner, model: type[Base], row: Row) -> dict[str, Any]:
    """A row of the file with what follows from it and from whose it is."""
    stored = {"owner_id": owner.id, **row}
    if "name_key" in columns(model):
        stored["name_key"] = None if row["name"] is None else fold(row["name"])
    if "channel" in columns(model):
        stored["channel"] = owner.channel
    return stored
