"""The bot, running against the loopback server."""

from __future__ import annotations

import socket
from collections.abc import AsyncIterator

import pytest

from bot.channels.telegram.serving import Service
from bot.records import Records
from tests.channels.chatting import GROUP, IDA, Chat, served
from tests.channels.loopback import Loopback
from tests.records.records_kit import Databases


@pytest.fixture
async def loopback() -> AsyncIterator[Loopback]:
    server = Loopback()
    await server.start()
    yield server
    await server.stop()
    assert server.refused == []  # not one request that the messenger would refuse


@pytest.fixture
async def service(sqlite_records: Records, loopback: Loopback) -> AsyncIterator[Service]:
    async with served(sqlite_records, loopback) as running:
        yield running


@pytest.fixture
def chat(service: Service, sqlite_records: Records, loopback: Loopback) -> Chat:
    return Chat(loopback, sqlite_records)


@pytest.fixture
def club(service: Service, sqlite_records: Records, loopback: Loopback) -> Chat:
    """A group with one administrator."""
    loopback.members[(GROUP, IDA.id)] = "administrator"
    return Chat(loopback, sqlite_records, GROUP)


@pytest.fixture
def unused_port() -> int:
    with socket.socket() as free:
        free.bind(("127.0.0.1", 0))
        port: int = free.getsockname()[1]
    return port


@pytest.fixture
async def sqlite_url(sqlite_databases: Databases) -> str:
    return await sqlite_databases.migrated()
