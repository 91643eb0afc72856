"""Delivery: taken in at least once, answered once, whatever the messenger or the machine does."""

from __future__ import annotations

import asyncio
import json
import logging
import os
import signal
import subprocess
import sys
import time
from pathlib import Path
from typing import Any

import aiohttp
import pytest
from aiohttp import web
from sqlalchemy import func, select

from bot.channels.telegram import carrying, serving
from bot.channels.telegram.serving import Channel, NoToken, Service
from bot.conversation.postbox import Postbox
from bot.conversation.talk import Conversation
from bot.conversation.wording import wording
from bot.records import Records, open_records, post
from bot.records.models import Chat as ChatRow
from bot.records.models import Inbox, Outbox, Plant
from bot.records.post import MOST_TRIES
from tests.channels.chatting import LINE, MIRA, TOM, Chat, Who, quiet, served, text, until
from tests.channels.loopback import TOKEN, Loopback, error, flood

ROOT = Path(__file__).parents[2]


class Once:
    """Fails the first requests of a method."""

    def __init__(self, method: str, *responses: web.Response) -> None:
        self.method, self.responses = method, list(responses)

    def __call__(self, method: str, values: dict[str, Any]) -> web.Response | None:
        return self.responses.pop(0) if method == self.method and self.responses else None


async def test_an_update_delivered_twice_is_answered_once(chat: Chat, loopback: Loopback) -> None:
    update = loopback.push("message", chat.message(MIRA, "add 2 phals in bark"))
    await chat.quiet()
    loopback.waiting.clear()
    loopback.push_raw(update)
    again = await chat.says(MIRA, "my plants")
    assert text(again).startswith("2 plants")
    assert len(again) == 1


async def test_ids_that_jump_back_are_new_updates(chat: Chat, loopback: Loopback) -> None:
    # After an idle week the messenger's numbers start anew, anywhere.
    await chat.says(MIRA, LINE)
    update = {"update_id": 3, "message": chat.message(MIRA, LINE)}
    loopback.waiting.clear()
    before = len(loopback.accepted)
    loopback.push_raw(update)
    await until(lambda: len(loopback.accepted) > before)
    assert text(loopback.accepted[before:]).startswith("0.47 g")


async def test_a_429_waits_as_told(chat: Chat, loopback: Loopback) -> None:
    loopback.fail = Once("sendMessage", flood(1))
    begun = time.monotonic()
    sent = await chat.says(MIRA, LINE)
    assert len(sent) == 1
    assert sent[0].at - begun >= 1.0


async def test_a_429_of_one_chat_holds_up_no_other(chat: Chat, loopback: Loopback) -> None:
    def of_mira(method: str, values: dict[str, Any]) -> web.Response | None:
        return flood(30) if values.get("chat_id") == MIRA.id else None

    loopback.fail = of_mira
    loopback.push("message", chat.message(MIRA, LINE))
    loopback.push("message", chat.message(TOM, LINE))
    await until(lambda: any(r.values["chat_id"] == TOM.id for r in loopback.of("sendMessage")), 20)


@pytest.mark.parametrize("code", [500, 502])
async def test_an_error_of_the_messenger_is_tried_again(
    chat: Chat, loopback: Loopback, code: int
) -> None:
    loopback.fail = Once("sendMessage", error(code, "Internal"))
    assert len(await chat.says(MIRA, LINE)) == 1


async def test_a_403_marks_the_person_unreachable_and_drops_what_waits(
    chat: Chat, loopback: Loopback, sqlite_records: Records
) -> None:
    loopback.fail = Once("sendMessage", error(403, "Forbidden: bot was blocked by the user"))
    assert await chat.says(MIRA, "add 2 phals in bark") == []
    async with sqlite_records.reading() as session:
        assert [c.chat_id for c in await session.scalars(select(ChatRow))] == [MIRA.id]
        assert await session.scalar(select(func.count(Plant.id))) == 1  # nothing kept is lost
    assert text(await chat.says(TOM, LINE)).startswith("0.47 g")


async def test_a_400_is_given_up_and_the_next_is_answered(chat: Chat, loopback: Loopback) -> None:
    loopback.fail = Once("sendMessage", error(400, "Bad Request: whatever"))
    assert await chat.says(MIRA, LINE) == []
    assert len(await chat.says(MIRA, LINE)) == 1


async def test_a_group_that_moved_meanwhile_gets_its_answer(
    service: Service, sqlite_records: Records, loopback: Loopback
) -> None:
    club = Chat(loopback, sqlite_records, -300)
    moved = error(400, "Bad Request: group chat was upgraded", migrate_to_chat_id=-100300)
    loopback.fail = Once("sendMessage", moved)
    (sent,) = await club.says(MIRA, "/dose " + LINE)
    assert sent.values["chat_id"] == -100300


async def test_an_update_that_cannot_be_read_spoils_no_other(
    chat: Chat, loopback: Loopback, sqlite_records: Records
) -> None:
    loopback.push_raw({"update_id": 701, "message": {"message_id": "no", "chat": 5}})
    loopback.push_raw({"update_id": 702, "message": {"date": "yesterday"}})
    loopback.push_raw({"update_id": 703, "message": chat.message(MIRA, LINE)})
    await until(lambda: loopback.of("sendMessage"))
    assert text(loopback.of("sendMessage")).startswith("0.47 g")


async def test_a_fault_of_ours_is_tried_again_logged_and_at_last_answered(
    chat: Chat,
    loopback: Loopback,
    monkeypatch: pytest.MonkeyPatch,
    caplog: pytest.LogCaptureFixture,
    sqlite_records: Records,
) -> None:
    monkeypatch.setattr("bot.conversation.postbox.FIRST_WAIT_MS", 1)

    async def broken(*_: Any) -> None:
        raise RuntimeError("a fault of ours")

    monkeypatch.setattr(carrying, "_promise", broken)
    with caplog.at_level(logging.ERROR):
        sent = await chat.says(MIRA, "add 2 phals in bark")
    assert "Something broke on our side" in text(sent)
    assert len(sent) == 1
    german = Who(21, "Uli", "de")
    assert wording("de").say("post-interrupted") in text(await chat.says(german, "5 l"))
    assert "a fault of ours" in caplog.text
    assert "phals" not in caplog.text  # no message is written to the log
    async with sqlite_records.reading() as session:
        assert await session.scalar(select(func.count(Plant.id))) == 0  # nor kept without answer


async def test_a_fault_that_passes_leaves_one_change_and_one_answer(
    chat: Chat, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr("bot.conversation.postbox.FIRST_WAIT_MS", 1)
    right, calls = carrying._promise, 0

    async def broken_once(*given: Any) -> None:
        nonlocal calls
        calls += 1
        if calls == 1:
            raise RuntimeError("a fault of ours")
        await right(*given)

    monkeypatch.setattr(carrying, "_promise", broken_once)
    assert "On record: 2 Phalaenopsis" in text(await chat.says(MIRA, "add 2 phals in bark"))
    assert text(await chat.says(MIRA, "my plants")).startswith("2 plants")


async def test_an_update_that_ends_its_process_each_time_is_given_up(
    sqlite_records: Records, loopback: Loopback, caplog: pytest.LogCaptureFixture
) -> None:
    chat = Chat(loopback, sqlite_records)
    async with sqlite_records.writing() as session:
        update = {"update_id": 5, "message": chat.message(MIRA, "add 2 phals in bark")}
        arrived = [post.Arrived(5, f"{MIRA.id}:{MIRA.id}", update)]
        await post.take_in(session, "telegram:4242", arrived, now_ms=0)
        for n in range(MOST_TRIES):  # and each time whoever took it was killed
            assert await post.claim(
                session, "telegram:4242", f"w{n}", now_ms=n, until_ms=n + 1, most=1
            )
    async with served(sqlite_records, loopback):
        await until(lambda: loopback.of("sendMessage"))
        assert "Something broke on our side" in text(loopback.of("sendMessage"))
        assert "No plants on record" in text(await chat.says(MIRA, "my plants"))
    assert "is given up" in caplog.text


async def test_who_is_told_to_stop_gives_back_what_does_not_end(
    sqlite_records: Records, loopback: Loopback, monkeypatch: pytest.MonkeyPatch
) -> None:
    begun = asyncio.Event()

    async def for_ever(*_: Any) -> None:
        begun.set()
        await asyncio.Event().wait()

    chat = Chat(loopback, sqlite_records)
    with monkeypatch.context() as patched:
        patched.setattr(serving, "_STOP_S", 0.05)
        patched.setattr(carrying, "_promise", for_ever)
        async with served(sqlite_records, loopback):
            loopback.push("message", chat.message(MIRA, "add 2 phals in bark"))
            await begun.wait()
    async with sqlite_records.reading() as session:
        rows = (await session.execute(select(Inbox.tries, Inbox.claimed_by, Inbox.state))).all()
    assert [tuple(row) for row in rows] == [(0, None, "open")]
    async with served(sqlite_records, loopback, "w2"):
        assert "\n2 plants\n" in text(await chat.says(MIRA, "my plants"))


async def test_each_person_is_answered_in_the_order_they_asked(
    chat: Chat, loopback: Loopback
) -> None:
    people = [Who(100 + n, f"p{n}") for n in range(20)]
    for litres in range(1, 6):
        for who in people:
            loopback.push("message", chat.message(who, f"{litres} l 20-20-20 powder, quarter"))
    await chat.quiet()
    for who in people:
        sent = [r.values["text"] for r in loopback.of("sendMessage")
                if r.values["chat_id"] == who.id]  # fmt: skip
        assert [t.partition(" in ")[2].splitlines()[0] for t in sent] == [
            f"{litres} l" for litres in range(1, 6)
        ]


async def test_a_token_that_is_unknown_is_said(sqlite_records: Records, loopback: Loopback) -> None:
    conversation = Conversation(sqlite_records)
    service = Service(
        Channel("1:wrong", api_url=loopback.url),
        lambda source: Postbox(sqlite_records, conversation, source, "w"),
    )
    with pytest.raises(NoToken):
        await service.run()


async def test_a_messenger_that_is_away_at_the_start_is_waited_for(
    sqlite_records: Records, loopback: Loopback, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(serving, "_POLL_AGAIN_S", 0.02)
    loopback.fail = Once("getMe", error(502, "Bad Gateway"), flood(1))
    chat = Chat(loopback, sqlite_records)
    async with served(sqlite_records, loopback):
        assert text(await chat.says(MIRA, LINE)).startswith("0.47 g")


async def test_who_is_told_to_stop_while_the_messenger_is_away_stops(
    sqlite_records: Records, loopback: Loopback
) -> None:
    loopback.fail = lambda method, values: error(502, "Bad Gateway")
    conversation = Conversation(sqlite_records)
    service = Service(
        Channel(TOKEN, api_url=loopback.url),
        lambda source: Postbox(sqlite_records, conversation, source, "w"),
    )
    running = asyncio.create_task(service.run())
    await until(lambda: loopback.asked["getMe"])
    assert not running.done()
    service.stop()
    await asyncio.wait_for(running, 20)  # a poll lasts 30 s


async def test_a_webhook_that_was_set_meanwhile_is_taken_back(
    sqlite_records: Records, loopback: Loopback, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(serving, "_POLL_AGAIN_S", 0.02)
    conflict = error(409, "Conflict: can't use getUpdates method while webhook is active")
    loopback.fail = Once("getUpdates", conflict)
    chat = Chat(loopback, sqlite_records)
    async with served(sqlite_records, loopback):
        await until(lambda: len(loopback.of("deleteWebhook")) == 2)
        assert text(await chat.says(MIRA, LINE)).startswith("0.47 g")


# --- the webhook -----------------------------------------------------------------------------


async def _posted(url: str, body: Any, secret: str) -> int:
    headers = {"X-Telegram-Bot-Api-Secret-Token": secret} if secret else {}
    data = body if isinstance(body, bytes) else json.dumps(body).encode()
    async with (
        aiohttp.ClientSession() as client,
        client.post(url, data=data, headers=headers) as response,
    ):
        return response.status


async def test_the_webhook_takes_only_what_the_messenger_delivers(
    sqlite_records: Records, loopback: Loopback, unused_port: int
) -> None:
    hook = f"http://127.0.0.1:{unused_port}/orchids"
    listen = ("127.0.0.1", unused_port)
    async with served(sqlite_records, loopback, webhook_url=hook, listen=listen):
        assert loopback.hook == hook
        secret = loopback.secret or ""
        chat = Chat(loopback, sqlite_records)
        update = {"update_id": 9, "message": chat.message(MIRA, LINE)}
        for wrong in ("", "x", secret[:-1], secret + "x"):
            assert await _posted(hook, update, wrong) == 403
        for nonsense in (b"{", b"[]", b'{"update_id": "x"}', {"update_id": -1}, {"no": 1}):
            assert await _posted(hook, nonsense, secret) == 400
        assert await _posted(hook, update, secret) == 200
        assert await _posted(hook, update, secret) == 200  # delivered again
        await quiet(loopback, sqlite_records)
        assert len(loopback.of("sendMessage")) == 1


async def test_several_workers_share_the_work(
    records: Records, loopback: Loopback, unused_port: int
) -> None:
    # On both databases; one webhook address, two processes' worth of workers.
    hook = f"http://127.0.0.1:{unused_port}/orchids"
    settings: dict[str, Any] = {"webhook_url": hook, "listen": ("127.0.0.1", unused_port)}
    people = [Who(100 + n, f"p{n}") for n in range(10)]
    async with (
        served(records, loopback, "w1", **settings),
        served(records, loopback, "w2", **settings),
    ):
        chat = Chat(loopback, records)
        number = 0
        for litres in range(1, 4):
            for who in people:
                number += 1
                message = chat.message(who, f"{litres} l 20-20-20 powder, quarter")
                status = await _posted(
                    hook, {"update_id": number, "message": message}, loopback.secret or ""
                )
                assert status == 200
        await quiet(loopback, records)
    for who in people:
        sent = [r.values["text"] for r in loopback.of("sendMessage")
                if r.values["chat_id"] == who.id]  # fmt: skip
        assert [t.partition(" in ")[2].splitlines()[0] for t in sent] == ["1 l", "2 l", "3 l"]


# --- killed ------------------------------------------------------------------------------------


async def test_nothing_is_lost_or_done_twice_when_the_process_is_killed(
    sqlite_url: str, loopback: Loopback
) -> None:
    """SIGKILL in the midst of the work, several times; then all must be there, once."""
    people = [Who(100 + n, f"p{n}") for n in range(15)]
    records = await open_records(sqlite_url)
    chat = Chat(loopback, records)
    for who in people:
        for n in range(3):
            loopback.push("message", chat.message(who, f"add a phal called Plant{n} in bark"))
    on_their_way = 0
    for _ in range(3):
        process = _process(sqlite_url, loopback)
        enough = len(loopback.of("sendMessage")) + 3
        await until(lambda enough=enough: len(loopback.of("sendMessage")) > enough)
        os.kill(process.pid, signal.SIGKILL)
        process.wait()
        on_their_way += await _free_claims(records)
    process = _process(sqlite_url, loopback)
    await quiet(loopback, records)
    process.terminate()
    assert await asyncio.to_thread(process.wait, 20) == 0  # a graceful stop
    async with records.reading() as session:
        plants = (await session.execute(select(Plant.owner_id, Plant.name))).all()
        dead = await session.scalar(select(func.count()).where(Inbox.state == "dead"))
    assert len(plants) == len(set(plants)) == 45
    assert dead == 0
    answers = [(r.values["chat_id"], r.values["text"]) for r in loopback.of("sendMessage")]
    assert len(set(answers)) == 45
    # A request on its way when the process was killed may have been sent again, no other.
    assert len(answers) - 45 <= on_their_way
    await records.close()


def _process(url: str, loopback: Loopback) -> subprocess.Popen[bytes]:
    environment = {
        **os.environ,
        "SINKSIDE_TELEGRAM_TOKEN": TOKEN,
        "SINKSIDE_TELEGRAM_API_URL": loopback.url,
        "SINKSIDE_DATABASE_URL": url,
    }
    return subprocess.Popen(
        [sys.executable, "-m", "bot", "serve"], cwd=ROOT, env=environment,
        stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL,
    )  # fmt: skip


async def _free_claims(records: Records) -> int:
    """Let a minute pass: the claims of the killed process end. So many were of requests."""
    async with records.writing() as session:
        for model in (Inbox, Outbox):
            for row in await session.scalars(select(model)):
                row.free_ms = 0
        claimed = select(func.count(Outbox.id)).where(Outbox.claimed_by.is_not(None))
        return await session.scalar(claimed) or 0


async def test_it_stops_at_once_while_it_waits_for_updates(
    sqlite_records: Records, loopback: Loopback
) -> None:
    async with served(sqlite_records, loopback) as service:
        await until(lambda: loopback.asked["getUpdates"])
        service.stop()
        told = time.monotonic()
    assert time.monotonic() - told < 20  # a poll lasts 30 s


# --- settings ----------------------------------------------------------------------------------


def _serve(tmp_path: Path, **environment: str) -> subprocess.CompletedProcess[str]:
    return subprocess.run(
        [sys.executable, "-m", "bot", "serve", "--database", f"sqlite:///{tmp_path}/a.db"],
        cwd=ROOT, capture_output=True, text=True, timeout=60,
        env={k: v for k, v in os.environ.items() if not k.startswith("SINKSIDE_")} | environment,
    )  # fmt: skip


def test_serve_says_how_to_get_a_token(tmp_path: Path) -> None:
    done = _serve(tmp_path)
    assert done.returncode == 2
    assert "SINKSIDE_TELEGRAM_TOKEN" in done.stderr
    assert "BotFather" in done.stderr


@pytest.mark.parametrize(
    ("name", "value"), [("WEBHOOK_URL", "ftp://x"), ("WEBHOOK_LISTEN", "nowhere")]
)
def test_serve_says_which_setting_cannot_be_used(tmp_path: Path, name: str, value: str) -> None:
    done = _serve(tmp_path, SINKSIDE_TELEGRAM_TOKEN=TOKEN, **{f"SINKSIDE_{name}": value})
    assert done.returncode == 2
    assert f"SINKSIDE_{name}" in done.stderr
    assert "Traceback" not in done.stderr


async def test_the_token_never_stands_in_the_log(tmp_path: Path, unused_port: int) -> None:
    # Nobody listens there: every request fails, loudly, and is tried again.
    running = await asyncio.create_subprocess_exec(
        sys.executable, "-m", "bot", "serve", "--database", f"sqlite:///{tmp_path}/a.db",
        cwd=ROOT, stdout=asyncio.subprocess.PIPE, stderr=asyncio.subprocess.STDOUT,
        env={k: v for k, v in os.environ.items() if not k.startswith("SINKSIDE_")}
        | {
            "SINKSIDE_TELEGRAM_TOKEN": TOKEN,
            "SINKSIDE_TELEGRAM_API_URL": f"http://127.0.0.1:{unused_port}",
        },
    )  # fmt: skip
    assert running.stdout is not None
    said = b""
    while b"cannot be reached" not in said:
        line = await running.stdout.readline()
        assert line, said.decode()  # it ended, and should have waited
        said += line
    running.terminate()
    rest, _ = await running.communicate()
    assert running.returncode == 0
    assert TOKEN not in (said + rest).decode()
