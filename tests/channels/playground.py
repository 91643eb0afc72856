"""Type as members of a group, and see what the bot sends: nothing leaves this machine.

`python -m tests.channels.playground` reads lines as the evening's script has them
(`fixtures/evening/script.txt` says how), from a file that is named or as they are typed:

    *Greta                             Greta administers the group
    Greta feeding | /dose 5 l          says it in a topic; `private` for a chat with the bot alone
    Odo feeding replies Greta | why    and `taps`, `edits`, `types`, `photo`, ...
    due                                all reminders come now
"""

from __future__ import annotations

import asyncio
import sys
import tempfile
import time
from collections.abc import Iterator
from datetime import UTC, datetime
from pathlib import Path
from unittest.mock import patch

from sqlalchemy import update

from bot.records import open_records
from bot.records.models import Reminder
from tests.channels.chatting import GROUP, Chat, served
from tests.channels.evening import SAYING, Evening, Line
from tests.channels.loopback import Loopback, Request

SHOWN = (*SAYING, "sendPhoto")


def line_of(text: str) -> Line:
    """What somebody typed; without a verb they say it.

    Raises
    ------
    ValueError
        It is not `WHO WHERE [DOES [WHOSE]] | TEXT`.
    """
    doing, _, said = text.partition("|")
    who, where, *rest = doing.split()
    does, *whose = rest or ["says"]
    return Line(who, where, does, "".join(whose), said.strip(), 0.0)


async def play(lines: Iterator[str]) -> None:
    """Play lines one by one, and print what is sent to each."""
    loopback = Loopback()
    with tempfile.TemporaryDirectory() as folder:
        records = await open_records(f"sqlite:///{folder}/playground.db")
        evening = Evening(Chat(loopback, records))
        await loopback.start()
        try:
            async with served(records, loopback):
                number = 0
                while (text := await asyncio.to_thread(next, lines, None)) is not None:
                    number += 1
                    await _one(evening, number, text.strip())
        finally:
            await loopback.stop()
            await records.close()
    for wrong in loopback.refused:
        print("the messenger would refuse:", wrong)


async def _one(evening: Evening, number: int, text: str) -> None:
    loopback = evening.chat.loopback
    if text.startswith("*"):
        loopback.members[GROUP, evening.who(text[1:].strip()).id] = "administrator"
    elif text == "due":
        _show(evening, await _due(evening.chat))
    elif text and not text.startswith(("#", "+")):
        try:
            with patch("tests.channels.evening.BEGIN", datetime.now(UTC)):  # the date of it all
                said = await evening.play(number, line_of(text))
        except (ValueError, LookupError, StopIteration, RuntimeError) as error:
            print(f"  ? {type(error).__name__}: {error}")
            return
        _show(evening, said)


async def _due(chat: Chat) -> list[Request]:
    before = len(chat.loopback.accepted)
    async with chat.records.writing() as session:
        now_ms = int(time.time() * 1000)
        await session.execute(
            update(Reminder).where(Reminder.state == "active").values(due_ms=now_ms, moved=True)
        )
    await asyncio.sleep(2.0)  # what is due is looked for every second
    await chat.quiet()
    return [r for r in chat.loopback.accepted[before:] if r.method in SHOWN]


def _show(evening: Evening, said: list[Request]) -> None:
    for request in said:
        print("\n".join(evening.shown(request)))
    if not said:
        print("  -")


if __name__ == "__main__":
    named = sys.argv[1:]
    asyncio.run(play(iter(Path(named[0]).read_text("utf-8").splitlines() if named else sys.stdin)))
