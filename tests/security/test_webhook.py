"""The webhook, when somebody else than the messenger delivers to it."""

from __future__ import annotations

import asyncio
import hmac
import json
from collections.abc import AsyncIterator
from dataclasses import dataclass

import aiohttp
import pytest
from sqlalchemy import func, select

from bot.channels.telegram import serving
from bot.channels.telegram.serving import Channel
from bot.records import Records
from bot.records.models import Inbox
from bot.settings import Messenger
from tests.channels.chatting import LINE, MIRA, Chat, quiet, served, until
from tests.channels.loopback import TOKEN, Loopback

SECRET = "X-Telegram-Bot-Api-Secret-Token"


@dataclass
class Hook:
    """Where updates are delivered, and what came of it."""

    port: int
    loopback: Loopback
    records: Records

    @property
    def secret(self) -> str:
        return self.loopback.secret or ""

    async def post(self, body: bytes, secret: str | None = None, **headers: str) -> int:
        told = {SECRET: self.secret if secret is None else secret, **headers}
        async with (
            aiohttp.ClientSession() as client,
            client.post(f"http://127.0.0.1:{self.port}/orchids", data=body, headers=told) as got,
        ):
            return got.status

    async def raw(self, request: bytes) -> bytes:
        """Bytes on the wire, and the first line of what comes back."""
        reader, writer = await asyncio.open_connection("127.0.0.1", self.port)
        writer.write(request)
        await writer.drain()
        line = await asyncio.wait_for(reader.readline(), 20)
        writer.close()
        return line

    async def taken_in(self) -> int:
        async with self.records.reading() as session:
            return await session.scalar(select(func.count()).select_from(Inbox)) or 0

    def update(self, number: int = 9) -> bytes:
        message = Chat(self.loopback, self.records).message(MIRA, LINE)
        return json.dumps({"update_id": number, "message": message}).encode()


@pytest.fixture
async def hook(
    sqlite_records: Records, loopback: Loopback, unused_port: int
) -> AsyncIterator[Hook]:
    url = f"http://127.0.0.1:{unused_port}/orchids"
    async with served(sqlite_records, loopback, webhook_url=url, listen=("127.0.0.1", unused_port)):
        yield Hook(unused_port, loopback, sqlite_records)


@pytest.mark.parametrize("secret", ["", "x", "é", "0" * 64, "0" * 5000, TOKEN])
async def test_a_forged_delivery_is_refused_and_not_kept(hook: Hook, secret: str) -> None:
    assert await hook.post(hook.update(), secret) in (400, 403)
    assert await hook.taken_in() == 0


async def test_a_secret_that_is_no_text_is_refused(hook: Hook) -> None:
    request = (
        b"POST /orchids HTTP/1.1\r\nHost: x\r\nContent-Length: 2\r\n"
        + SECRET.encode() + b": \xff\xfe\x80\r\n\r\n{}"
    )  # fmt: skip
    assert b" 403 " in await hook.raw(request)
    assert await hook.taken_in() == 0


async def test_the_secret_is_compared_in_constant_time(
    hook: Hook, monkeypatch: pytest.MonkeyPatch
) -> None:
    compared = []

    def noted(a: bytes, b: bytes) -> bool:
        compared.append((a, b))
        return hmac.compare_digest(a, b)

    class Noting:
        compare_digest = staticmethod(noted)

    monkeypatch.setattr(serving, "hmac", Noting)
    # The secret that is wanted was told to the messenger before.
    monkeypatch.setattr(Channel, "secret", property(lambda _: hook.secret))
    assert await hook.post(hook.update(), "wrong") == 403
    assert compared == [(b"wrong", hook.secret.encode())]


@pytest.mark.parametrize(
    "body",
    [
        b"[" * 100_000,
        b'{"update_id":' * 50_000,
        b'{"update_id": NaN}',
        b'{"update_id": 1e999}',
        b'{"update_id": 7.5}',
        b'{"update_id": true}',
        b'{"update_id": "7"}',
        b'{"update_id": ' + b"9" * 400 + b"}",
        b'{"update_id": ' + b"9" * 5_000 + b"}",
        b'{"update_id": 7, "message": {"date": Infinity}}',
        b"\xff\xfe\x00",
        b"",
    ],
    ids=range(12),
)  # fmt: skip
async def test_what_is_no_update_is_refused_even_with_the_secret(hook: Hook, body: bytes) -> None:
    assert await hook.post(body) == 400
    assert await hook.taken_in() == 0


async def test_a_character_set_that_is_none_changes_nothing(hook: Hook) -> None:
    headers = {"Content-Type": "application/json; charset=no-such"}
    assert await hook.post(hook.update(), **headers) == 200
    await quiet(hook.loopback, hook.records)
    assert len(hook.loopback.of("sendMessage")) == 1


async def test_a_body_larger_than_any_update_is_not_read(hook: Hook) -> None:
    assert await hook.post(b" " * (serving._LARGEST_UPDATE + 10)) == 413
    assert await hook.taken_in() == 0


@pytest.mark.parametrize(
    "request_", [b"GET /orchids HTTP/1.1\r\nHost: x\r\n\r\n", b"POST / HTTP/1.1\r\nHost: x\r\n"
                 b"Content-Length: 0\r\n\r\n", b"\x16\x03\x01 no http\r\n\r\n",
                 b"POST /orchids/../x HTTP/1.1\r\nHost: x\r\nContent-Length: 0\r\n\r\n"],
)  # fmt: skip
async def test_any_other_request_gets_nothing(hook: Hook, request_: bytes) -> None:
    line = await hook.raw(request_)
    assert line.split()[1:2] in ([b"400"], [b"403"], [b"404"], [b"405"])
    assert await hook.taken_in() == 0


async def test_updates_of_strange_shape_stop_nobody(hook: Hook) -> None:
    """With the secret: each fails or does nothing by itself, the next one is answered."""
    strange = [
        {"message": None}, {"message": []}, {"message": {"chat": {"id": "x"}}}, {},
        {"callback_query": {"id": "1"}}, {"inline_query": {"id": 1, "query": None}},
        {"message": {"message_id": 1, "date": 1, "chat": {"id": 5, "type": "channel"}}},
    ]  # fmt: skip
    for number, value in enumerate(strange, 100):
        body = json.dumps({"update_id": number, **value}).encode()  # type: ignore[dict-item]
        assert await hook.post(body) == 200
    assert await hook.post(hook.update(200)) == 200
    await until(lambda: hook.loopback.of("sendMessage"))
    assert hook.loopback.of("sendMessage")[-1].values["text"].startswith("0.47 g")


def test_without_a_setting_it_listens_to_this_machine_alone(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    for name in ("WEBHOOK_LISTEN", "OPERATOR_LISTEN"):
        monkeypatch.delenv(f"SINKSIDE_{name}", raising=False)
    assert Messenger().listen[0] == "127.0.0.1"
    assert Messenger().operator is None
    assert Channel(TOKEN).listen[0] == "127.0.0.1"


def test_the_secret_is_neither_the_token_nor_the_same_elsewhere() -> None:
    secrets = {Channel(TOKEN, webhook_url=url).secret for url in ("https://a/x", "https://b/x")}
    assert len(secrets) == 2
    assert all(len(s) == 64 and TOKEN not in s for s in secrets)
