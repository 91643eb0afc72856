"""Whether the program lives: the database answers, and every loop has lately come round."""

from __future__ import annotations

import asyncio
import time

from sqlalchemy import text

from bot.records import Records

#: The database has so long to answer [s].
PATIENCE_S = 3.0


class Pulse:
    """When each loop came round last; one that was never expected may be silent."""

    def __init__(self) -> None:
        self._beats: dict[str, float] = {}
        self._limits: dict[str, float] = {}
        self.starting, self.stopping = True, False

    def expect(self, loop: str, within_s: float) -> None:
        """From now on a loop has to come round within a time [s]."""
        self._limits[loop] = within_s
        self._beats[loop] = time.monotonic()

    def beat(self, loop: str) -> None:
        """A loop came round."""
        self._beats[loop] = time.monotonic()

    def silent(self) -> list[tuple[str, float]]:
        """Loops that ought to have come round, and for how long they have not [s]."""
        now = time.monotonic()
        quiet = [(loop, now - self._beats[loop]) for loop in self._limits]
        return [(loop, since) for loop, since in quiet if since > self._limits[loop]]


async def complaints(records: Records, pulse: Pulse) -> list[str]:
    """What is wrong, in a line each; empty where all is well."""
    if pulse.stopping:
        return ["it is stopping"]
    found = ["it is starting"] if pulse.starting else []
    try:
        await asyncio.wait_for(_ask(records), PATIENCE_S)
    except TimeoutError:
        found.append(f"the database did not answer within {PATIENCE_S:g} s")
    except Exception as error:  # what it says may hold an address, so only its kind is shown
        found.append(f"the database does not answer ({type(error).__name__})")
    for loop, since in pulse.silent():
        found.append(f"the {loop} loop has not come round for {since:.0f} s")
    return found


async def _ask(records: Records) -> None:
    async with records.reading() as session:
        await session.execute(text("SELECT version_num FROM records_version"))
