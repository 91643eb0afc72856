"""A program that writes to the log: URL, owner, plant, writers, writes each, seconds it stays.

Prints the number of a write once it is acknowledged, and only then. It stays behind the last of
them, so that a test that is slow to kill it finds it running.
"""

from __future__ import annotations

import asyncio
import sys
from datetime import UTC, date, datetime

from bot.records import Records, log, open_records
from bot.records.kinds import EventKind
from bot.records.log import Entry


async def write(records: Records, owner_id: int, plant_id: int, number: int) -> None:
    async with records.writing() as session:
        said = await log.begin(
            session, owner_id, on=date(2026, 3, 1), said_at=datetime(2026, 3, 1, 8, tzinfo=UTC)
        )
        await log.record(said, [Entry(EventKind.FED, plant_id, details={"number": number})])


async def main(
    url: str, owner_id: int, plant_id: int, writers: int, each: int, stays_s: int = 0
) -> None:
    records = await open_records(url)

    async def one(writer: int) -> None:
        for number in range(writer * each, (writer + 1) * each):
            await write(records, owner_id, plant_id, number)
            print(number, flush=True)

    await asyncio.gather(*(one(writer) for writer in range(writers)))
    await asyncio.sleep(stays_s)
    await records.close()


if __name__ == "__main__":
    asyncio.run(main(sys.argv[1], *(int(argument) for argument in sys.argv[2:])))
