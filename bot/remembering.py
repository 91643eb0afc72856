"""A conversation that remembers, at the command line: opens the records, and closes them."""

from __future__ import annotations

import asyncio
import gc
import logging
import tempfile
from collections.abc import Awaitable, Callable
from dataclasses import dataclass
from datetime import UTC, date, datetime, timedelta
from pathlib import Path

import click

from bot.channels.terminal import open_file
from bot.conversation.answer import Answer
from bot.conversation.talk import Conversation, apology
from bot.conversation.turn import Incoming
from bot.folders import default_database, demo_file
from bot.operating.unusable import unusable
from bot.records import Records, open_records, owners, transfer
from bot.records.errors import DatabaseBusy, DatabaseProblem

log = logging.getLogger("sinkside")
_CHANNEL = "terminal"
#: The demo plays so long after the last entry of its log.
DEMO_LATER = timedelta(days=7)


@dataclass(slots=True)
class Desk:
    """One person at the command line, with what holds for all they say.

    `machine_language`: of their terminal, for where they have said nothing yet.
    """

    person: str
    group: str | None = None
    language: str | None = None
    today: date | None = None
    south: bool = False
    machine_language: str | None = None
    conversation: Conversation | None = None

    def incoming(self, text: str) -> Incoming:
        """A message of theirs, said now; on `today` where a day was given."""
        now = datetime.now(UTC)
        said_at = now if self.today is None else datetime.combine(self.today, now.timetz())
        return Incoming(
            text=text,
            person=self.person,
            channel=_CHANNEL,
            said_at=said_at,
            today=self.today,
            group=self.group,
            language=self.language,
            south=self.south,
            open_file=open_file,
            pulls=True,
            phone_language=self.machine_language,
        )

    async def answered(self, text: str) -> Answer:
        """An answer; for a fault of ours an apology, and a line in the log without the message."""
        incoming = self.incoming(text)
        assert self.conversation is not None  # `running` has opened it
        try:
            return await self.conversation.answer(incoming)
        except DatabaseBusy:
            log.warning("the database was busy for too long")
            return apology(incoming)
        except Exception:  # whatever broke, the person gets an answer and the next one is served
            log.exception("no answer to a message of %d characters", len(text))
            return apology(incoming)


def running(
    desk: Desk, database: str | None, *, demo: bool, talk: Callable[[Desk], Awaitable[int]]
) -> None:
    """Open the records, talk, close them; a database that cannot serve ends with 2.

    Parameters
    ----------
    desk : who is speaking
    database : URL of the records, None for the file in the user's data folder
    demo : use a throw-away database with the invented collection in it
    talk : what to do meanwhile; returns the exit code
    """
    if demo:
        with tempfile.TemporaryDirectory(prefix="sinkside-demo-") as folder:
            code = _run(desk, f"sqlite:///{Path(folder) / 'demo.db'}", demo_file(), talk)
    else:
        code = _run(desk, database or default_database(), None, talk)
    if code:
        raise SystemExit(code)


def _run(desk: Desk, url: str, demo: Path | None, talk: Callable[[Desk], Awaitable[int]]) -> int:
    if len(desk.person) > 100 or not desk.person.strip():
        raise click.UsageError("send a name of 1 to 100 characters behind --as")
    try:
        return asyncio.run(_served(desk, url, demo, talk))
    except DatabaseProblem as problem:
        raise unusable(problem) from problem


async def _served(
    desk: Desk, url: str, demo: Path | None, talk: Callable[[Desk], Awaitable[int]]
) -> int:
    records = await open_records(url)
    try:
        desk.conversation = Conversation(records)
        if demo is not None:
            await _play(desk, records, demo)
        gc.freeze()  # what is loaded by now stays: the collector need not walk it with every row
        return await talk(desk)
    finally:
        await records.close()


async def _play(desk: Desk, records: Records, demo: Path) -> None:
    """Fill the records with the demo, and begin a week after its last entry."""
    if not demo.is_file():
        raise click.UsageError("the demo lies in fixtures/ beside the program: run it there")
    text = demo.read_text(encoding="utf-8")
    preview = await asyncio.to_thread(transfer.read_export, text)
    incoming = desk.incoming("")
    async with records.writing() as session:
        owner = await owners.find_or_add(session, incoming.address, created_at=incoming.said_at)
        await transfer.import_export(session, owner.id, preview)
    if desk.today is None and preview.last_on is not None:
        desk.today = preview.last_on + DEMO_LATER
