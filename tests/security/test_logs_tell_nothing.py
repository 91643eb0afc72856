"""The log of a bot that is attacked and breaks: no words, no numbers of people, no token."""

from __future__ import annotations

import asyncio
import io
import logging
from collections.abc import AsyncIterator
from typing import Any

import pytest
from structlog.contextvars import clear_contextvars

from bot.channels.telegram import sending
from bot.operating.faults import Quiet, log_quietly
from bot.operating.logs import log_to
from bot.records import Records
from tests.channels.chatting import GROUP, LINE, Chat, Who, served
from tests.channels.loopback import TOKEN, Loopback, error

from .hostile import TEXTS

EVE = Who(777000123, "Evelina")
WORDS = "zanzibar wilting"
FORBIDDEN = ("777000123", "Evelina", "zanzibar", "Zanzibar", "wilting", TOKEN, "loopback-token")


@pytest.fixture
async def log() -> AsyncIterator[io.StringIO]:
    """All that is logged, down to what nobody looks at."""
    root = logging.getLogger()
    handlers, level = root.handlers[:], root.level
    for handler in handlers:
        root.removeHandler(handler)
    stream = io.StringIO()
    log_to(stream, as_json=False, secrets=[TOKEN])
    yield stream
    clear_contextvars()
    root.handlers[:], root.level = handlers, level


def clean(log: io.StringIO, *, says: str) -> None:
    """Something was logged, and none of it is somebody's."""
    text = log.getvalue()
    assert says in text
    assert [f for f in FORBIDDEN if f in text] == []


async def test_a_handler_that_breaks_quotes_nobody(
    log: io.StringIO, chat: Chat, monkeypatch: pytest.MonkeyPatch
) -> None:
    async def broken(self: Any, incoming: Any, records: Any = None) -> None:
        try:
            {}[incoming.text]
        except KeyError as fault:
            raise ValueError(f"{incoming.person} said {incoming.text}") from fault

    monkeypatch.setattr("bot.conversation.talk.Conversation.answer", broken)
    monkeypatch.setattr("bot.conversation.postbox.FIRST_WAIT_MS", 1)
    await chat.says(EVE, WORDS)
    clean(log, says="ValueError < KeyError")


@pytest.mark.parametrize(
    "said",
    [
        f'can\'t parse "{WORDS}"', f"button {WORDS!r} is too long", "chat 777000123 not found",
        f"MESSAGE: {WORDS}", f"wrong url https://x/bot{TOKEN}/",
    ],
)  # fmt: skip
async def test_the_messengers_reasons_are_cut_where_they_quote(
    log: io.StringIO, chat: Chat, loopback: Loopback, said: str
) -> None:
    loopback.fail = lambda method, values: (
        error(400, f"Bad Request: {said}") if method == "sendMessage" else None
    )
    await chat.says(EVE, WORDS)
    clean(log, says="was refused")


async def test_a_network_that_breaks_tells_no_address(
    log: io.StringIO, loopback: Loopback, sqlite_records: Records, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(sending, "MOST_TRIES", 2)
    monkeypatch.setattr(sending, "FIRST_WAIT_MS", 1)
    async with served(sqlite_records, loopback):
        loopback.fail = lambda method, values: "drop" if method == "sendMessage" else None
        await Chat(loopback, sqlite_records).says(EVE, WORDS)
    clean(log, says="given up")


async def test_hostile_texts_of_all_kinds_leave_no_word_in_the_log(
    log: io.StringIO, chat: Chat, club: Chat
) -> None:
    for line in TEXTS:
        if not line.startswith("\ud800") and "\ud800" not in line:
            await chat.says(EVE, f"{WORDS} {line}"[:4096])
    await club.says(EVE, f"/dose {LINE} {WORDS}")
    await chat.says(EVE, f"add a phal called {WORDS} " + "x" * 300)
    await chat.says(EVE, "my scale shows 999999 g")
    logging.getLogger("sinkside").warning("the end")
    clean(log, says="the end")
    assert str(GROUP) not in log.getvalue()


async def test_strangers_at_the_door_leave_no_word_in_the_log(
    log: io.StringIO, loopback: Loopback, sqlite_records: Records, unused_port: int
) -> None:
    hook = f"http://127.0.0.1:{unused_port}/orchids"
    async with served(
        sqlite_records, loopback, webhook_url=hook, listen=("127.0.0.1", unused_port)
    ):
        for request in (
            b"zanzibar\r\n\r\n", b"GET /zanzibar HTTP/1.1\r\nHost: zanzibar\r\n\r\n",
            b"POST /orchids HTTP/1.1\r\nHost: x\r\nContent-Length: zanzibar\r\n\r\n",
            b"POST /orchids HTTP/1.1\r\nHost: x\r\nzanzibar: \x00\r\n\r\n",
        ):  # fmt: skip
            reader, writer = await asyncio.open_connection("127.0.0.1", unused_port)
            writer.write(request)
            await writer.drain()
            await asyncio.wait_for(reader.readline(), 20)
            writer.close()
    logging.getLogger("sinkside").warning("the end")
    clean(log, says="the end")
    assert "critical" not in log.getvalue()


def test_a_fault_at_the_command_line_quotes_nobody() -> None:
    record = logging.LogRecord("sinkside", logging.ERROR, "x", 1, "no answer", (), None)
    try:
        float(WORDS)
    except ValueError as fault:
        record.exc_info = (type(fault), fault, fault.__traceback__)
    line = Quiet().format(record)
    assert line.startswith("no answer: ValueError at tests/security/")
    assert "zanzibar" not in line
    assert "\n" not in line


def test_the_command_line_sets_that_log_up(monkeypatch: pytest.MonkeyPatch) -> None:
    root = logging.getLogger()
    handlers = root.handlers[:]
    try:
        root.handlers[:] = []
        monkeypatch.setattr("bot.cli.cli", lambda: None)
        from bot.cli import main

        main()
        assert [type(h.formatter) for h in root.handlers] == [Quiet]
        log_quietly()
        assert len(root.handlers) == 1
    finally:
        root.handlers[:] = handlers
