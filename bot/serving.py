"""`sinkside serve`: settings, logs, records, and the channel until a signal ends it."""

from __future__ import annotations

import asyncio
import gc
import logging
import os
import secrets
import signal
import socket

import click
from pydantic import ValidationError

from bot.channels.telegram.serving import Channel, NoToken, Service
from bot.conversation.postbox import Postbox
from bot.conversation.talk import Conversation
from bot.conversation.wording import wording
from bot.records import open_records
from bot.records.errors import DatabaseProblem
from bot.settings import Messenger, default_database

log = logging.getLogger("sinkside")

NO_TOKEN = (
    "SINKSIDE_TELEGRAM_TOKEN is missing: in the messenger, write to @BotFather, send /newbot, "
    "choose a name, and set the variable to the token it answers with"
)


class _Formatter(logging.Formatter):
    """As the standard one, with the token kept out of every line, tracebacks too."""

    def __init__(self, token: str) -> None:
        super().__init__("%(asctime)s %(levelname)s %(name)s: %(message)s")
        self._token = token

    def format(self, record: logging.LogRecord) -> str:
        return super().format(record).replace(self._token, "[token]")


def serve(database: str | None) -> None:
    """Serve until a signal ends it; unusable settings end with 2.

    Parameters
    ----------
    database : URL of the records, None for the file in the user's data folder
    """
    try:
        settings = Messenger()
    except ValidationError as error:
        wrong = error.errors()[0]
        name = f"SINKSIDE_{wrong['loc'][0]}".upper()
        raise click.UsageError(f"{name} cannot be used: {wrong['msg']}") from error
    token = settings.telegram_token.get_secret_value().strip()
    if not token:
        raise click.UsageError(NO_TOKEN)
    _log_without(token)
    channel = Channel(
        token=token,
        api_url=settings.telegram_api_url,
        webhook_url=settings.webhook_url,
        listen=settings.listen,
    )
    try:
        asyncio.run(_served(channel, database or default_database()))
    except NoToken as error:
        raise click.UsageError(f"{error}; {NO_TOKEN}") from error
    except DatabaseProblem as problem:
        raise click.UsageError(
            f"the records at this --database cannot be used ({type(problem).__name__}: {problem})"
        ) from problem


def _log_without(token: str) -> None:
    handler = logging.StreamHandler()
    handler.setFormatter(_Formatter(token))
    logging.basicConfig(level=logging.INFO, handlers=[handler])
    logging.getLogger("httpx").setLevel(logging.WARNING)  # it would log every request


async def _served(channel: Channel, url: str) -> None:
    records = await open_records(url)
    worker = f"{socket.gethostname()[:20]}-{os.getpid()}-{secrets.token_hex(4)}"
    conversation = Conversation(records)
    service = Service(channel, lambda source: Postbox(records, conversation, source, worker))
    wording("en")
    gc.freeze()  # what is loaded by now stays: the collector need not walk it with every row
    loop = asyncio.get_running_loop()
    for number in (signal.SIGINT, signal.SIGTERM):
        loop.add_signal_handler(number, service.stop)
    ready = asyncio.Event()

    async def announce() -> None:
        await ready.wait()
        log.info("serving")

    announcing = asyncio.create_task(announce())
    try:
        await service.run(ready)
    finally:
        announcing.cancel()
        await records.close()
