"""The delivery of pings under faults, with real processes and a stand-in for the messenger.

Three processes remind and send while one of them is killed again and again. What is held: every
ping that is due is sent, and at most one is sent twice for each kill.

By hand, the whole of it: `pytest tests/reminders/test_faults.py` with SINKSIDE_KILLS=50 and
SINKSIDE_PINGS=2000, and SINKSIDE_AWAY_S=30 for a database that goes away.
"""

from __future__ import annotations

import asyncio
import os
import random
import signal
import subprocess
import sys
import time
from collections import Counter
from collections.abc import Callable, Iterator
from concurrent.futures import ThreadPoolExecutor
from contextlib import contextmanager
from dataclasses import dataclass, field
from datetime import UTC, datetime
from pathlib import Path
from typing import Any

import asyncpg  # type: ignore[import-untyped]
import pytest
from aiohttp import web
from sqlalchemy import func, insert, make_url, select, text, update
from telegram.error import TimedOut

from bot.channels.telegram import requests, serving
from bot.conversation import postbox
from bot.conversation.answer import Answer
from bot.conversation.reminding import Due
from bot.conversation.talk import Conversation
from bot.records import Records, open_records
from bot.records.kinds import OwnerKind, PingState, ReminderKind, ReminderState
from bot.records.models import Inbox, Outbox, Owner, Ping, Reminder
from tests.channels.chatting import looked_for_due, quiet, served, until
from tests.channels.loopback import Loopback, Request, error, flood
from tests.records.records_kit import Databases

KILLS = int(os.environ.get("SINKSIDE_KILLS", "6"))
#: How long the database is away once it is noticed [s].
AWAY_S = float(os.environ.get("SINKSIDE_AWAY_S", "2"))
PINGS = int(os.environ.get("SINKSIDE_PINGS", "120"))
ROOT = Path(__file__).parents[2]
CREATED = datetime(2026, 3, 1, tzinfo=UTC)
FIRST_CHAT = 1000


async def store(records: Records, count: int, due_ms: int) -> None:
    """So many owners with one reminder each, due then and never again."""
    owners = [
        {
            "id": n, "kind": OwnerKind.PERSON, "channel": "telegram",
            "external_id": str(FIRST_CHAT + n), "created_at": CREATED,
        }
        for n in range(1, count + 1)
    ]  # fmt: skip
    local = datetime.fromtimestamp(due_ms // 1000, UTC).replace(tzinfo=None).isoformat()
    reminders = [
        {
            "owner_id": n, "id": 1, "channel": "telegram", "kind": ReminderKind.OTHER,
            "text": f"look at number {n}", "target": {}, "rule": None, "zone": "UTC",
            "start": local, "due_local": local, "due_ms": due_ms, "state": ReminderState.ACTIVE,
            "moved": False, "offered": False, "created": CREATED,
        }
        for n in range(1, count + 1)
    ]  # fmt: skip
    async with records.writing() as session:
        await session.execute(insert(Owner), owners)
        await session.execute(insert(Reminder), reminders)


def just_now_ms() -> int:
    """A second ago [ms]."""
    return int(datetime.now(UTC).timestamp() * 1000) - 1000


HOUR_MS = 3_600_000


def let_an_hour_pass(monkeypatch: pytest.MonkeyPatch) -> None:
    """The bot's clock goes ahead: what is due in an hour is due now, however slow the machine."""
    real = postbox.now_ms
    for room in (postbox, serving):
        monkeypatch.setattr(room, "now_ms", lambda: real() + HOUR_MS)


async def it_says(what: str, caplog: pytest.LogCaptureFixture) -> None:
    """Wait until the log has it, and then for as long as the fault shall last."""
    end = time.monotonic() + 60
    while what not in caplog.text and time.monotonic() < end:
        await asyncio.sleep(0.05)
    assert what in caplog.text
    await asyncio.sleep(AWAY_S)


@dataclass
class Workers:
    """Processes that remind and send, to be killed and started anew."""

    loopback: Loopback
    url: str
    running: dict[str, subprocess.Popen[bytes]] = field(default_factory=dict)
    started: int = 0

    def start(self) -> None:
        self.started += 1
        name = f"p{self.started}"
        self.running[name] = subprocess.Popen(
            [sys.executable, "-m", "tests.reminders.pinging_process", self.loopback.url, self.url,
             name],
            cwd=ROOT, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL,
        )  # fmt: skip

    async def kill_one(self, records: Records, pick: random.Random) -> None:
        """SIGKILL, and then the minute passes after which its claims end."""
        name = pick.choice(sorted(self.running))
        process = self.running.pop(name)
        os.kill(process.pid, signal.SIGKILL)
        await asyncio.to_thread(process.wait)
        async with records.writing() as session:
            for table in (Inbox, Outbox):
                await session.execute(
                    update(table).where(table.claimed_by == name).values(free_ms=0)
                )

    def stop(self) -> None:
        for process in self.running.values():
            process.terminate()
        for process in self.running.values():
            process.wait(30)


def pings_in(requests: list[Request]) -> Counter[str]:
    """How often each ping was accepted, whatever it said besides."""
    return Counter(r.values["text"].splitlines()[0] for r in requests)


async def all_sent(records: Records, loopback: Loopback, seconds: float) -> None:
    """Wait until nothing is due and nothing waits."""
    end = time.monotonic() + seconds
    while time.monotonic() < end:
        async with records.reading() as session:
            due = await session.scalar(
                select(func.count()).where(Reminder.state == ReminderState.ACTIVE)
            )
            out = await session.scalar(select(func.count()).where(Outbox.state == "open"))
        if not due and not out:
            return
        await asyncio.sleep(0.1)
    raise AssertionError(f"{due} are due and {out} wait after {seconds} s")


async def test_no_ping_is_lost_and_few_come_twice_when_processes_are_killed(
    databases: Databases, loopback: Loopback
) -> None:
    url = await databases.migrated()
    records = await open_records(url)
    await store(records, PINGS, just_now_ms())
    workers, pick = Workers(loopback, url), random.Random(7)
    for _ in range(3):
        workers.start()
    for _ in range(KILLS):
        before = len(loopback.of("sendMessage"))
        enough = before + max(1, PINGS // (2 * KILLS))
        end = time.monotonic() + 20
        while len(loopback.of("sendMessage")) < enough and time.monotonic() < end:
            await asyncio.sleep(0.01)
        await asyncio.sleep(pick.uniform(0, 0.05))
        await workers.kill_one(records, pick)
        workers.start()
    await all_sent(records, loopback, 120)
    workers.stop()
    counted = pings_in(loopback.of("sendMessage"))
    assert len(counted) == PINGS
    again = [r for r in loopback.of("sendMessage") if "once already" in r.values["text"]]
    assert sum(counted.values()) - PINGS <= KILLS
    assert len(again) <= KILLS
    async with records.reading() as session:
        states = (
            await session.execute(select(Ping.state, func.count()).group_by(Ping.state))
        ).all()
    assert [tuple(row) for row in states] == [(PingState.SENT, PINGS)]
    await records.close()


def said_again(sent: list[Request]) -> set[int]:
    """Whose pings said that they may come a second time."""
    return {r.values["chat_id"] for r in sent if "once already" in r.values["text"]}


@dataclass
class EveryFourth:
    """Fails the first and every fourth message; `failed` is whose those were."""

    fault: Callable[[], web.Response | str]
    asked: int = 0
    failed: set[int] = field(default_factory=set)

    def __call__(self, method: str, values: dict[str, Any]) -> web.Response | str | None:
        self.asked += method == "sendMessage"
        if method != "sendMessage" or self.asked % 4 != 1:
            return None
        self.failed.add(int(values["chat_id"]))
        return self.fault()


@pytest.mark.parametrize(
    ("fault", "unsure"),
    [
        (lambda: flood(1), False),
        (lambda: error(500, "Internal Server Error"), False),
        (lambda: error(502, "Bad Gateway"), False),
        (lambda: "drop", True),
    ],
    ids=["429", "500", "502", "dropped"],
)
async def test_a_messenger_that_fails_now_and_then_gets_every_ping_once(
    databases: Databases,
    loopback: Loopback,
    fault: Callable[[], web.Response | str],
    unsure: bool,
) -> None:
    loopback.fail = failing = EveryFourth(fault)
    records = await open_records(await databases.migrated())
    await store(records, 12, just_now_ms())
    async with served(records, loopback, receives=False):
        await all_sent(records, loopback, 60)
    assert sorted(pings_in(loopback.of("sendMessage")).values()) == [1] * 12
    # Only where nobody knows whether it went out.
    assert failing.failed
    assert said_again(loopback.of("sendMessage")) == (failing.failed if unsure else set())
    await records.close()


async def test_a_ping_without_an_answer_in_time_comes_again_and_says_so(
    databases: Databases, loopback: Loopback, monkeypatch: pytest.MonkeyPatch
) -> None:
    really, failing = requests.Requests.do_request, EveryFourth(lambda: "timeout")

    async def do_request(self: requests.Requests, **told: Any) -> Any:
        data = told["request_data"]
        values = data.json_parameters if data is not None else {}
        if failing(told["url"].rpartition("/")[2], values):
            raise TimedOut
        return await really(self, **told)

    monkeypatch.setattr(requests.Requests, "do_request", do_request)
    records = await open_records(await databases.migrated())
    await store(records, 12, just_now_ms())
    async with served(records, loopback, receives=False):
        await all_sent(records, loopback, 60)
    assert sorted(pings_in(loopback.of("sendMessage")).values()) == [1] * 12
    assert failing.failed
    assert said_again(loopback.of("sendMessage")) == failing.failed
    await records.close()


async def test_a_ping_that_was_accepted_before_the_line_broke_says_so_the_second_time(
    databases: Databases, loopback: Loopback
) -> None:
    loopback.fail = failing = EveryFourth(lambda: "lost")
    records = await open_records(await databases.migrated())
    await store(records, 3, just_now_ms())
    async with served(records, loopback, receives=False):
        await all_sent(records, loopback, 60)
    sent = loopback.of("sendMessage")
    assert sorted(pings_in(sent).values()) == [1, 1, 2]
    assert said_again(sent) == failing.failed
    (twice,) = [line for line, times in pings_in(sent).items() if times == 2]
    told = [r.values["text"] for r in sent if r.values["text"].startswith(twice)]
    assert ["once already" in words for words in told] == [False, True]
    await records.close()


async def test_who_has_blocked_us_is_left_alone_until_they_write_again(
    databases: Databases, loopback: Loopback
) -> None:
    def fail(method: str, values: dict[str, Any]) -> web.Response | None:
        blocked = method == "sendMessage" and values["chat_id"] == FIRST_CHAT + 1
        return error(403, "Forbidden: bot was blocked by the user") if blocked else None

    loopback.fail = fail
    records = await open_records(await databases.migrated())
    await store(records, 2, just_now_ms())
    async with records.writing() as session:
        row = await session.get(Reminder, (1, 1))
        assert row is not None
        row.rule = "FREQ=DAILY"
    async with served(records, loopback, receives=False):
        await until(lambda: loopback.asked["sendMessage"] == 2)
        await quiet(loopback, records)
    async with records.reading() as session:
        state = await session.scalar(select(Reminder.state).where(Reminder.owner_id == 1))
    assert state is ReminderState.PAUSED
    assert len(pings_in(loopback.of("sendMessage"))) == 1
    async with records.reading() as session:
        failed = await session.scalar(select(Ping.state).where(Ping.owner_id == 1))
    assert failed is PingState.FAILED
    await records.close()


async def test_a_clock_set_back_repeats_nothing(
    databases: Databases, loopback: Loopback, monkeypatch: pytest.MonkeyPatch
) -> None:
    records = await open_records(await databases.migrated())
    await store(records, 3, just_now_ms())
    async with records.writing() as session:
        await session.execute(update(Reminder).values(rule="FREQ=DAILY"))
    async with served(records, loopback, receives=False) as service:
        await until(lambda: len(loopback.of("sendMessage")) == 3)
        await quiet(loopback, records)
        real = postbox.now_ms
        monkeypatch.setattr(postbox, "now_ms", lambda: real() - HOUR_MS)
        await looked_for_due(service)
        await quiet(loopback, records)
    assert sorted(pings_in(loopback.of("sendMessage")).values()) == [1, 1, 1]
    async with records.reading() as session:
        due = (await session.scalars(select(Reminder.due_ms))).all()
    assert all(d is not None and d > real() for d in due)
    await records.close()


@contextmanager
def postgres_away(url: str) -> Iterator[None]:
    """The database takes no connection and drops those it has."""
    name = make_url(url).database

    def asked(*statements: str) -> None:
        async def ask() -> None:
            elsewhere = make_url(url).set(database="postgres")
            connection = await asyncpg.connect(elsewhere.render_as_string(hide_password=False))
            for statement in statements:
                await connection.execute(statement)
            await connection.close()

        asyncio.run(ask())

    with ThreadPoolExecutor(1) as aside:
        aside.submit(
            asked,
            f"ALTER DATABASE {name} ALLOW_CONNECTIONS false",
            f"SELECT pg_terminate_backend(pid) FROM pg_stat_activity WHERE datname = '{name}'",
        ).result()
        try:
            yield
        finally:
            aside.submit(asked, f"ALTER DATABASE {name} ALLOW_CONNECTIONS true").result()


async def test_a_database_that_goes_away_loses_nothing(
    postgres_databases: Databases,
    loopback: Loopback,
    caplog: pytest.LogCaptureFixture,
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    url = await postgres_databases.migrated()
    records = await open_records(url)
    await store(records, 40, just_now_ms() + HOUR_MS)
    async with served(records, loopback, receives=False):
        with postgres_away(url):
            let_an_hour_pass(monkeypatch)
            await it_says("DatabaseUnreachable", caplog)
            assert loopback.of("sendMessage") == []
        await all_sent(records, loopback, 60)
    assert sorted(pings_in(loopback.of("sendMessage")).values()) == [1] * 40
    await records.close()


async def test_a_full_disk_loses_nothing_and_is_named(
    sqlite_databases: Databases,
    loopback: Loopback,
    caplog: pytest.LogCaptureFixture,
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    records = await open_records(await sqlite_databases.migrated())
    await store(records, 40, just_now_ms() + HOUR_MS)
    async with served(records, loopback, receives=False):
        # The limit is the writing connection's, of which there is one.
        async with records.writing() as session:
            pages = await session.scalar(text("PRAGMA page_count"))
            free = await session.scalar(text("PRAGMA freelist_count"))
            assert not free
            await session.execute(text(f"PRAGMA max_page_count = {pages}"))
        let_an_hour_pass(monkeypatch)
        await it_says("DiskFull", caplog)
        assert len(loopback.of("sendMessage")) < 40
        async with records.writing() as session:
            await session.execute(text("PRAGMA max_page_count = 1000000"))
        await all_sent(records, loopback, 60)
    assert sorted(pings_in(loopback.of("sendMessage")).values()) == [1] * 40
    assert len(caplog.records) < 60  # it says so now and then, not as fast as it can
    await records.close()


async def test_a_ping_that_cannot_be_put_into_words_holds_up_no_other(
    databases: Databases, loopback: Loopback, monkeypatch: pytest.MonkeyPatch
) -> None:
    really = Conversation.ping

    async def ping(self: Conversation, due: Due, records: Records) -> Answer:
        if due.owner.owner_id == 2:
            raise RuntimeError("out of luck")
        return await really(self, due, records)

    monkeypatch.setattr(Conversation, "ping", ping)
    records = await open_records(await databases.migrated())
    await store(records, 3, just_now_ms())
    async with served(records, loopback, receives=False):
        await all_sent(records, loopback, 20)
    assert sorted(r.values["chat_id"] for r in loopback.of("sendMessage")) == [1001, 1003]
    async with records.reading() as session:
        states = list(await session.scalars(select(Ping.state).order_by(Ping.owner_id)))
    assert states == [PingState.SENT, PingState.FAILED, PingState.SENT]
    await records.close()
