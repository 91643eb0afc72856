"""A process that reminds and sends, to be killed: `URL_OF_MESSENGER DATABASE WORKER`."""

from __future__ import annotations

import asyncio
import sys

from bot.channels.telegram.serving import Channel, Service
from bot.conversation.postbox import Postbox
from bot.conversation.talk import Conversation
from bot.records import open_records
from tests.channels.chatting import NO_LIMITS
from tests.channels.loopback import TOKEN


async def main(api_url: str, database: str, worker: str) -> None:
    records = await open_records(database)
    conversation = Conversation(records)
    channel = Channel(TOKEN, api_url=api_url, limits=NO_LIMITS, receives=False)
    await Service(channel, lambda s: Postbox(records, conversation, s, worker)).run()


if __name__ == "__main__":
    asyncio.run(main(*sys.argv[1:]))
