"""People and groups who write to the bot through the loopback server."""

from __future__ import annotations

import asyncio
import time
from collections.abc import AsyncIterator, Callable
from contextlib import asynccontextmanager
from dataclasses import dataclass
from typing import Any
from unittest.mock import patch

from sqlalchemy import func, select

from bot.channels.telegram import carrying
from bot.channels.telegram.serving import Channel, Service
from bot.conversation.postbox import Limits, Postbox
from bot.conversation.talk import Conversation
from bot.records import Records
from bot.records.models import Inbox, Outbox
from tests.channels.loopback import TOKEN, Loopback, Request

#: So that no test waits for its turn; what the limits hold is tested by itself.
NO_LIMITS = Limits(1e6, 0, 1e6)
LINE = "5 litres, 20-20-20 powder, sphagnum, winter, quarter strength"


def text(sent: list[Request]) -> str:
    """All that was said."""
    return "\n".join(r.values["text"] for r in sent if "text" in r.values)


def buttons(request: Request) -> list[str]:
    """What can be pressed below a message."""
    rows = request.values.get("reply_markup", {}).get("inline_keyboard", [])
    return [b["text"] for row in rows for b in row]


@dataclass(frozen=True)
class Who:
    """Somebody."""

    id: int
    name: str
    language: str = "en"

    @property
    def user(self) -> dict[str, Any]:
        user = {"id": self.id, "is_bot": False, "first_name": self.name}
        return {**user, "language_code": self.language}


MIRA, TOM, IDA = Who(11, "Mira"), Who(12, "Tom"), Who(13, "Ida")
GROUP = -1001


class Chat:
    """A chat: private with somebody, or a group."""

    def __init__(self, loopback: Loopback, records: Records, group: int | None = None) -> None:
        self.loopback, self.records, self.group = loopback, records, group

    def message(self, who: Who, text: str | None, **more: Any) -> dict[str, Any]:
        chat: dict[str, Any] = {"id": who.id, "type": "private", "first_name": who.name}
        if self.group is not None:
            chat = {"id": self.group, "type": "supergroup", "title": "club"}
        message: dict[str, Any] = {
            "message_id": self.loopback.message_id(), "date": int(time.time()), "chat": chat,
            "from": who.user, **more,
        }  # fmt: skip
        if text is not None:
            message["text"] = text
            message.setdefault("entities", entities(text))
        return message

    async def says(self, who: Who, text: str | None, **more: Any) -> list[Request]:
        """Send a message, wait until everything is answered, and return what was sent."""
        return await self.pushes("message", self.message(who, text, **more))

    async def pushes(self, kind: str, value: dict[str, Any]) -> list[Request]:
        before = len(self.loopback.accepted)
        self.loopback.push(kind, value)
        await self.quiet()
        return self.loopback.accepted[before:]

    async def taps(self, who: Who, shown: Request, text: str, data: str = "") -> list[Request]:
        """Press a button below a message, by its text."""
        rows = shown.values["reply_markup"]["inline_keyboard"]
        found = [b for row in rows for b in row if b["text"].startswith(text)]
        value = {
            "id": str(self.loopback.message_id()), "from": who.user, "chat_instance": "1",
            "message": self.loopback.message(shown),
            "data": data or found[0]["callback_data"],
        }  # fmt: skip
        return await self.pushes("callback_query", value)

    async def quiet(self) -> None:
        """Wait until nothing is open any more."""
        await quiet(self.loopback, self.records)


#: How long anything is waited for that should come at once [s]: only a test that fails waits so.
LONG_S = 60.0


async def until(holds: Callable[[], object], seconds: float = LONG_S) -> None:
    """Wait until something is so."""
    end = time.monotonic() + seconds
    while not holds():
        assert time.monotonic() < end, "it did not come"
        await asyncio.sleep(0.01)


async def looked_for_due(service: Service) -> None:
    """Wait until what is due was looked for, and what was found promised."""
    right, looks = service.postbox.next_due_ms, 0

    async def counted() -> int | None:
        nonlocal looks
        looks += 1
        return await right()

    with patch.object(service.postbox, "next_due_ms", counted):
        await until(lambda: looks == 2)  # the second time what the first one found is done


async def quiet(loopback: Loopback, records: Records, seconds: float = LONG_S) -> None:
    """Wait until every update is taken in and done, and every request sent."""
    newest = max((u["update_id"] for u in loopback.waiting), default=0)
    end = time.monotonic() + seconds
    while time.monotonic() < end:
        await asyncio.sleep(0.01)
        async with records.reading() as session:
            taken = await session.scalar(select(func.max(Inbox.update_id)))
            waiting = await session.scalar(select(func.count()).where(Inbox.state == "open"))
            out = await session.scalar(select(func.count()).where(Outbox.state == "open"))
        if (taken or 0) >= newest and not waiting and not out:
            return
    raise AssertionError("not everything was answered in time")


def entities(text: str) -> list[dict[str, Any]]:
    """Commands and mentions, as the messenger marks them."""
    found = []
    for word in text.split():
        kind = {"/": "bot_command", "@": "mention"}.get(word[0])
        if kind:
            place = {"offset": text.index(word), "length": len(word)}
            found.append({"type": kind, **place})
    return found


def replying(shown: Request, loopback: Loopback) -> dict[str, Any]:
    """What makes a message a reply to one of ours."""
    return {"reply_to_message": loopback.message(shown)}


@asynccontextmanager
async def served(
    records: Records, loopback: Loopback, worker: str = "w1", **settings: Any
) -> AsyncIterator[Service]:
    """The bot, running; it does not show that it types, which depends on the machine."""
    channel = Channel(TOKEN, api_url=loopback.url, **{"limits": NO_LIMITS, **settings})
    conversation = Conversation(records)
    service = Service(channel, lambda source: Postbox(records, conversation, source, worker))
    ready = asyncio.Event()
    with patch.object(carrying, "SLOW_S", LONG_S):
        running = asyncio.create_task(service.run(ready))
        waiting = asyncio.create_task(ready.wait())
        await asyncio.wait([running, waiting], return_when=asyncio.FIRST_COMPLETED)
        if running.done():
            waiting.cancel()
            await running
        try:
            yield service
        finally:
            service.stop()
            await asyncio.wait_for(running, LONG_S)
