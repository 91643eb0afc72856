"""A worker that promises what is due, two owners at a time, until it is killed. Given: a URL.

Prints a line once it is ready, and one for each promise that is kept, and only then.
"""

from __future__ import annotations

import asyncio
import sys

from bot.records import open_records

from .test_reminders import promise_all


async def main(url: str) -> None:
    records = await open_records(url)
    print("ready", flush=True)
    while True:
        async with records.writing() as session:
            done = await promise_all(session, most=2)
        print(done, flush=True)


if __name__ == "__main__":
    asyncio.run(main(sys.argv[1]))
