"""The bot, watched while it answers: what is counted, and whether it is well."""

from __future__ import annotations

import asyncio
import time
from collections.abc import AsyncIterator
from contextlib import asynccontextmanager
from dataclasses import dataclass
from typing import Any

import aiohttp
import pytest
from prometheus_client.parser import text_string_to_metric_families
from sqlalchemy.ext.asyncio import AsyncSession

from bot.channels.telegram.serving import Channel, Service
from bot.conversation.postbox import Postbox
from bot.conversation.talk import Conversation
from bot.operating import metrics as metrics_module
from bot.operating.health import Pulse, complaints
from bot.operating.metrics import Metrics
from bot.operating.page import CannotListen, shown
from bot.operating.postbox import LOOPS_WITHIN_S, WatchedPostbox
from bot.records import Records, open_records, owners, pings, post, reminders
from bot.records.kinds import OwnerKind, ReminderKind
from bot.records.owners import Address
from tests.channels.chatting import GROUP, LINE, MIRA, NO_LIMITS, TOM, Chat, quiet
from tests.channels.loopback import TOKEN, Loopback, error, flood
from tests.channels.test_delivery import Once
from tests.records.records_kit import NOW, Databases, begin

Sample = dict[str, float]


def samples(page: bytes) -> Sample:
    """Each sample by its name and labels, as `name{a=b}`."""
    found: Sample = {}
    for family in text_string_to_metric_families(page.decode()):
        for s in family.samples:
            labels = ",".join(f"{k}={v}" for k, v in sorted(s.labels.items()))
            found[f"{s.name}{{{labels}}}" if labels else s.name] = s.value
    return found


@dataclass
class Watched:
    """A bot that runs, and its pages."""

    chat: Chat
    club: Chat
    metrics: Metrics
    pulse: Pulse
    records: Records
    port: int

    async def get(self, path: str) -> tuple[int, str]:
        url = f"http://127.0.0.1:{self.port}{path}"
        async with aiohttp.ClientSession() as session, session.get(url) as answer:
            return answer.status, await answer.text()

    async def sampled(self) -> Sample:
        """The page, not the one of a moment ago."""
        self.metrics._looked = 0.0
        status, page = await self.get("/metrics")
        assert status == 200
        return samples(page.encode())


@asynccontextmanager
async def running(
    records: Records, loopback: Loopback, port: int, **given: Any
) -> AsyncIterator[Watched]:
    pulse, metrics = Pulse(), Metrics(**given)
    channel = Channel(TOKEN, api_url=loopback.url, limits=NO_LIMITS)
    conversation = Conversation(records)

    def open_postbox(source: str) -> Postbox:
        kind = {True: "group", False: "person"}
        return WatchedPostbox(
            records, conversation, source, "w1",
            owner_kind=lambda lane: kind[lane.startswith("-")], metrics=metrics, pulse=pulse,
        )  # fmt: skip

    service = Service(channel, open_postbox)
    ready = asyncio.Event()
    async with shown(("127.0.0.1", port), records, pulse, metrics):
        task = asyncio.create_task(service.run(ready))
        await asyncio.wait_for(ready.wait(), 20)
        pulse.starting = False
        chats = Chat(loopback, records), Chat(loopback, records, GROUP)
        try:
            yield Watched(*chats, metrics, pulse, records, port)
        finally:
            service.stop()
            await asyncio.wait_for(task, 20)


@pytest.fixture
async def watched(
    sqlite_records: Records, loopback: Loopback, unused_port: int
) -> AsyncIterator[Watched]:
    async with running(sqlite_records, loopback, unused_port) as bot:
        yield bot


# --- metrics -------------------------------------------------------------------------------------


async def test_what_went_through_is_counted(watched: Watched) -> None:
    before = await watched.sampled()
    assert before["sinkside_updates_taken_in_total"] == 0
    await watched.chat.says(MIRA, LINE)
    await watched.chat.says(TOM, "add 2 phals in bark")
    await watched.club.says(TOM, "nobody asked you")  # read, and not answered
    after = await watched.sampled()
    assert after["sinkside_updates_taken_in_total"] == 3
    assert after["sinkside_claims_total{of=update}"] == 3
    assert after["sinkside_updates_done_total"] == 3
    assert after["sinkside_answers_total{kind=dose}"] == 1
    assert after["sinkside_answers_total{kind=plants}"] == 1
    assert after["sinkside_answer_seconds_count"] == 2
    assert 0 < after["sinkside_answer_seconds_sum"] < 60
    assert after["sinkside_claims_total{of=letter}"] == 2
    assert after["sinkside_sends_total{method=sendMessage}"] == 2
    assert after["sinkside_letters_waiting"] == after["sinkside_updates_waiting"] == 0
    assert after["sinkside_database_up"] == 1
    assert after["process_resident_memory_bytes"] > 0


async def test_failures_are_counted_by_their_kind(watched: Watched, loopback: Loopback) -> None:
    refusals = {
        "flood": flood(1),
        "network": error(502, "Bad Gateway"),
        "given_up": error(400, "Bad Request: no such thing"),
        "unreachable": error(403, "Forbidden: bot was blocked by the user"),
    }
    for kind, answer in refusals.items():
        loopback.fail = Once("sendMessage", answer)
        await watched.chat.says(TOM if kind == "unreachable" else MIRA, LINE)
    after = await watched.sampled()
    for kind in refusals:
        assert after[f"sinkside_send_failures_total{{kind={kind}}}"] == 1, kind
    assert after["sinkside_send_failures_total{kind=moved}"] == 0
    assert after["sinkside_sends_total{method=sendMessage}"] == 2  # two of them went in the end
    assert after["sinkside_letters_dead"] == 1
    assert after["sinkside_chats_unreachable"] == 1


async def test_an_update_that_fails_is_counted(
    watched: Watched, monkeypatch: pytest.MonkeyPatch
) -> None:
    calls = 0

    async def answer(*_arguments: Any, **_named: Any) -> Any:
        nonlocal calls
        calls += 1
        if calls == 1:
            raise RuntimeError("once")
        return await as_it_is(*_arguments, **_named)

    as_it_is = Conversation.answer
    monkeypatch.setattr(Conversation, "answer", answer)
    await watched.chat.says(MIRA, LINE)
    after = await watched.sampled()
    assert after["sinkside_update_failures_total"] == 1
    assert after["sinkside_updates_given_up_total"] == 0
    assert after["sinkside_updates_done_total"] == 1
    assert after["sinkside_claims_total{of=update}"] == 2
    assert after["sinkside_answer_seconds_sum"] >= 1.0  # with the wait for the second try


async def test_ages_are_those_of_the_oldest_that_waits(records: Records) -> None:
    now = time.time_ns() // 1_000_000

    async def late(_session: AsyncSession) -> int:
        return now - 500_000

    metrics = Metrics(late)
    assert samples(await metrics.page(records))["sinkside_oldest_letter_seconds"] == 0
    async with records.writing() as session:
        for lane, ago_ms in (("1", 300_000), ("2", 90_000)):
            await post.promise(
                session, "s:1", [post.Letter(lane, "sendMessage", {})], now_ms=now - ago_ms
            )
            await post.take_in(
                session, "s:1", [post.Arrived(ago_ms, lane, {})], now_ms=now - ago_ms // 10
            )
    metrics._looked = 0.0
    found = samples(await metrics.page(records))
    assert found["sinkside_letters_waiting"] == found["sinkside_updates_waiting"] == 2
    assert 300 <= found["sinkside_oldest_letter_seconds"] < 360
    assert 30 <= found["sinkside_oldest_update_seconds"] < 90
    assert 500 <= found["sinkside_oldest_ping_seconds"] < 560


async def test_those_who_look_at_once_ask_the_database_once(
    records: Records, monkeypatch: pytest.MonkeyPatch
) -> None:
    asked = 0
    as_it_is = metrics_module.backlog

    async def backlog(session: AsyncSession) -> Any:
        nonlocal asked
        asked += 1
        return await as_it_is(session)

    monkeypatch.setattr(metrics_module, "backlog", backlog)
    metrics = Metrics()
    pages = await asyncio.gather(*(metrics.page(records) for _ in range(20)))
    assert len({samples(page)["sinkside_database_up"] for page in pages}) == 1
    assert asked == 1


async def test_without_its_database_the_page_still_tells_what_was_counted(
    sqlite_databases: Databases,
) -> None:
    records = await open_records(await sqlite_databases.migrated())
    metrics = Metrics()
    metrics.taken_in.inc(7)
    broken = _Away(records)
    found = samples(await metrics.page(broken))
    await records.close()
    assert found["sinkside_database_up"] == 0
    assert found["sinkside_updates_taken_in_total"] == 7
    assert found["sinkside_letters_waiting"] != found["sinkside_letters_waiting"]  # not a number


class _Away(Records):
    """Records whose database went away."""

    def __init__(self, records: Records) -> None:
        super().__init__(records._engines)

    @asynccontextmanager
    async def reading(self) -> AsyncIterator[AsyncSession]:
        raise ConnectionError("password=secret host=db.internal")
        yield


async def test_reminders_that_are_late_are_shown_and_those_that_are_taken_counted(
    sqlite_records: Records,
    loopback: Loopback,
    unused_port: int,
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    taken = asyncio.Event()

    async def remind(_postbox: Postbox, _write: Any, _most: int) -> int:
        # What is due stays due here, so that it is late; what is taken is the conversation's test.
        taken.set()
        await asyncio.sleep(0.01)
        return 2

    monkeypatch.setattr(Postbox, "remind", remind)
    async with sqlite_records.writing() as session:
        mira = Address(OwnerKind.PERSON, "telegram", str(MIRA.id))
        owner = await owners.find_or_add(session, mira, created_at=NOW)
        await reminders.add(
            await begin(session, owner.id), kind=ReminderKind.LOOK, target={"everything": True},
            start="2026-03-01T09:00:00", zone="UTC", due_ms=time.time_ns() // 1_000_000 - 90_000,
            due_local="2026-03-01T09:00:00",
        )  # fmt: skip

    async def oldest(session: AsyncSession) -> int | None:
        return await pings.oldest(session, "telegram")

    async with running(sqlite_records, loopback, unused_port, oldest_ping=oldest) as bot:
        await asyncio.wait_for(taken.wait(), 20)
        await asyncio.sleep(0.05)
        found = await bot.sampled()
    assert 90 <= found["sinkside_oldest_ping_seconds"] < 150
    assert found["sinkside_claims_total{of=due}"] >= 2
    assert found["sinkside_claims_total{of=due}"] % 2 == 0


# --- health --------------------------------------------------------------------------------------


async def test_a_bot_that_is_well_says_ok(watched: Watched) -> None:
    assert await watched.get("/healthz") == (200, "ok\n")
    await watched.chat.says(MIRA, LINE)
    assert await watched.get("/healthz") == (200, "ok\n")


async def test_a_loop_that_hangs_is_named(watched: Watched) -> None:
    watched.pulse._beats["sending"] -= LOOPS_WITHIN_S + 10
    watched.pulse.beat = lambda loop: None  # type: ignore[method-assign]
    status, text = await watched.get("/healthz")
    assert status == 503
    assert text.startswith("the sending loop has not come round for 1")
    assert "working" not in text


async def test_the_loops_that_run_beat_by_themselves(watched: Watched) -> None:
    start = dict(watched.pulse._beats)
    assert set(start) == {"working", "sending", "reminding"}
    end = time.monotonic() + 20
    while time.monotonic() < end and any(watched.pulse._beats[k] <= v for k, v in start.items()):
        await asyncio.sleep(0.05)
    assert all(watched.pulse._beats[k] > v for k, v in start.items())


async def test_a_database_that_is_away_is_said_without_its_address(records: Records) -> None:
    pulse = Pulse()
    pulse.starting = False
    assert await complaints(records, pulse) == []
    assert await complaints(_Away(records), pulse) == [
        "the database does not answer (ConnectionError)"
    ]


async def test_starting_and_stopping_are_said(records: Records) -> None:
    pulse = Pulse()
    assert await complaints(records, pulse) == ["it is starting"]
    pulse.starting, pulse.stopping = False, True
    assert await complaints(records, pulse) == ["it is stopping"]


async def test_an_address_that_is_taken_is_refused(watched: Watched) -> None:
    with pytest.raises(CannotListen):
        async with shown(
            ("127.0.0.1", watched.port), watched.records, watched.pulse, watched.metrics
        ):
            pass


async def test_nothing_else_is_shown(watched: Watched) -> None:
    for path in ("/", "/metrics/x", "/records.db"):
        assert (await watched.get(path))[0] == 404
    await quiet(watched.chat.loopback, watched.records)
