"""The two bots of bench_messenger: `echo URL`, or `sinkside URL DATABASE`."""

from __future__ import annotations

import asyncio
import sys

from tests.channels.loopback import TOKEN


def echo(url: str) -> None:
    """A bare bot of the library: says what it is told."""
    from telegram import Update
    from telegram.ext import ApplicationBuilder, ContextTypes, MessageHandler, filters

    async def say(update: Update, context: ContextTypes.DEFAULT_TYPE) -> None:
        assert update.message is not None
        await update.message.reply_text(update.message.text or "")

    builder = ApplicationBuilder().token(TOKEN).base_url(f"{url}/bot")
    application = builder.concurrent_updates(16).build()
    application.add_handler(MessageHandler(filters.TEXT, say))
    application.run_polling(poll_interval=0)


async def sinkside(url: str, database: str) -> None:
    """Ours, with limits that the benchmark does not reach."""
    from bot.channels.telegram.serving import Channel
    from bot.records.post import Limits
    from bot.serving import served

    await served(Channel(TOKEN, api_url=url, limits=Limits(1e6, 0, 1e6)), database)


if __name__ == "__main__":
    if sys.argv[1] == "echo":
        echo(sys.argv[2])
    else:
        asyncio.run(sinkside(sys.argv[2], sys.argv[3]))
