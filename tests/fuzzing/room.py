"""A database with what some people have on record, as it was again after each case."""

from __future__ import annotations

import asyncio
import json
import tempfile
from collections.abc import AsyncIterator, Coroutine, Mapping
from contextlib import asynccontextmanager
from datetime import UTC, datetime
from pathlib import Path
from typing import Any, TypeVar

from bot.conversation.talk import Conversation
from bot.conversation.turn import Incoming
from bot.conversation.turns.take_along import codes
from bot.records import Records, open_records, owners, transfer
from bot.records.kinds import OwnerKind
from bot.records.owners import Address
from tests.fuzzing.laws import hold

T = TypeVar("T")
START = datetime(2026, 6, 7, 9, tzinfo=UTC)
#: What somebody has on record.
COLLECTION = (
    "my powder is 20-20-20, label 1 g per litre, call it blue tub",
    "my liquid is 7-7-7, label 4 ml per litre, density 1.2, call it green bottle",
    "use blue tub from now on",
    "my tap is 14 dH",
    "add 3 phals in bark, 12 cm pots, kitchen sill",
    "add a masdevallia in sphagnum called Ruby, 8 cm pot",
    "add a dendrobium nobile in bark called Noble",
    "add a vanda called Mirasplant",
    "remind me to flush the phals every 4 weeks on sunday",
    "fed the phals",
)


class _Undone(Exception):
    """Ends a case without keeping what it did."""


class Room:
    """People, and a group, who have told the bot some things.

    Parameters
    ----------
    channel : code
    people : what each says first
    group : a group where the first of them says the same, without the last plant
    """

    def __init__(
        self, channel: str, people: Mapping[int, tuple[str, ...]], group: int | None = None
    ) -> None:
        self._folder = tempfile.TemporaryDirectory()
        self._loop = asyncio.new_event_loop()
        self._channel = channel
        url = f"sqlite:///{Path(self._folder.name) / 'fuzz.db'}"
        self.records: Records = self.run(open_records(url))
        for person, lines in people.items():
            self.run(self._say(str(person), None, lines))
        if group is not None:
            first, lines = next(iter(people.items()))
            shared = tuple(line for line in lines if "Mirasplant" not in line)
            self.run(self._say(str(first), str(group), shared))

    def run(self, work: Coroutine[Any, Any, T]) -> T:
        """Wait for something."""
        return self._loop.run_until_complete(work)

    def close(self) -> None:
        """Let go of the database."""
        self.run(self.records.close())
        self._loop.close()
        self._folder.cleanup()

    def of(self, person: int) -> Address:
        """Whose records a person's are."""
        return Address(OwnerKind.PERSON, self._channel, str(person))

    async def _say(self, person: str, group: str | None, lines: tuple[str, ...]) -> None:
        for line in lines:
            incoming = Incoming(line, person, self._channel, START, START.date(), group)
            await Conversation(self.records).answer(incoming)

    @asynccontextmanager
    async def thrown_away(self) -> AsyncIterator[Records]:
        """Records where nothing is kept in the end."""
        try:
            async with self.records.together() as records:
                async with records.writing():  # all that follows belongs to this one write
                    pass
                yield records
                raise _Undone
        except _Undone:
            pass


async def export(records: Records, address: Address) -> str:
    """Everything somebody has, as it is taken along."""
    async with records.reading() as session:
        owner = await owners.find(session, address)
        assert owner is not None
        return await transfer.export_json(session, owner.id)


async def state(records: Records, address: Address) -> dict[str, Any] | None:
    """What somebody has on record, without the log; None where there is nobody.

    It is held to what an export promises: it can be taken in again.
    """
    async with records.reading() as session:
        owner = await owners.find(session, address)
        if owner is None:
            return None
        text = await transfer.export_json(session, owner.id)
    preview = transfer.read_export(text, codes=codes())
    hold("what is on record can be taken in", not preview.problems, preview.problems)
    document: dict[str, Any] = json.loads(text)
    del document["events"], document["places"]  # places stay when an undo takes a plant away
    document["settings"].pop("heard", None)  # the language of the last message, whatever it said
    for rows in document.values():
        if isinstance(rows, list):
            there = (row for row in rows if row.get("present", True))
            rows[:] = [row for row in there if row.get("state") != "ended"]
    return document
