"""The two bots of bench_messenger: `echo TOKEN URL`, or `sinkside TOKEN URL DATABASE`.

Nothing of the messenger's stand-in is loaded here: it would count as theirs.
"""

from __future__ import annotations

import asyncio
import sys


def echo(token: str, url: str) -> None:
    """A bare bot of the library: says what it is told."""
    from telegram import Update
    from telegram.ext import ApplicationBuilder, ContextTypes, MessageHandler, filters

    async def say(update: Update, context: ContextTypes.DEFAULT_TYPE) -> None:
        assert update.message is not None
        await update.message.reply_text(update.message.text or "")

    builder = ApplicationBuilder().token(token).base_url(f"{url}/bot")
    application = builder.concurrent_updates(16).build()
    application.add_handler(MessageHandler(filters.TEXT, say))
    application.run_polling(poll_interval=0)


async def sinkside(token: str, url: str, database: str) -> None:
    """Ours, with limits that the benchmark does not reach."""
    from bot.channels.telegram.serving import Channel
    from bot.records.post import Limits
    from bot.serving import served

    await served(Channel(token, api_url=url, limits=Limits(1e6, 0, 1e6)), database)


if __name__ == "__main__":
    if sys.argv[1] == "echo":
        echo(sys.argv[2], sys.argv[3])
    else:
        asyncio.run(sinkside(sys.argv[2], sys.argv[3], sys.argv[4]))
