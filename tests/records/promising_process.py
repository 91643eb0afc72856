"""A worker that promises what is due, two owners at a time, until it is killed.

Given: a URL, and how many promises it makes before it only waits for the end, so that a test that
is slow to kill it finds something undone. Prints a line once it is ready, and one for each promise
that is kept, and only then.
"""

from __future__ import annotations

import asyncio
import sys

from bot.records import open_records

from .test_reminders import promise_all


async def main(url: str, most: int) -> None:
    records = await open_records(url)
    print("ready", flush=True)
    for _ in range(most):
        async with records.writing() as session:
            done = await promise_all(session, most=2)
        print(done, flush=True)
    await asyncio.sleep(3600)


if __name__ == "__main__":
    asyncio.run(main(sys.argv[1], int(sys.argv[2])))
