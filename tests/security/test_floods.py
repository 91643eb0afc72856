"""Who sends more than a person can: told once, kept in bounds, and nobody else waits."""

from __future__ import annotations

from typing import Any

import pytest
from sqlalchemy import func, select

from bot.channels.telegram import carrying, requests
from bot.channels.telegram.carrying import OWN_BURST, Pace
from bot.conversation import postbox
from bot.records import Records, ledger, post
from bot.records.models import Card, Event, Plant
from tests.channels.chatting import LINE, MIRA, TOM, Chat, text
from tests.channels.loopback import Loopback
from tests.conversation.talking import Grower

from .hostile import TEXTS


@pytest.fixture(autouse=True)
def slow_refill(monkeypatch: pytest.MonkeyPatch) -> None:
    """So that no more may be asked while a test runs, and little has to be sent."""
    monkeypatch.setattr(carrying, "OWN_BURST", 4)
    monkeypatch.setattr(carrying, "OWN_REFILL_S", 3600.0)


async def flood(chat: Chat, kind: str) -> list[Any]:
    """Ten of a kind from one person."""
    shown = (await chat.says(TOM, "/start"))[-1] if kind == "taps" else None
    sent: list[Any] = []
    for number in range(10):
        if kind == "words":
            sent += await chat.says(MIRA, LINE)
        elif kind == "pictures":
            size = {"file_id": "p", "file_unique_id": "p", "width": 9, "height": 9}
            sent += await chat.says(MIRA, None, photo=[size])
        elif kind == "files":
            file = {"file_id": f"f{number}", "file_unique_id": "f", "file_name": "x.json"}
            sent += await chat.says(MIRA, None, document=file)
        elif kind == "places":
            sent += await chat.says(MIRA, None, location={"latitude": 41.2, "longitude": -8.6})
        elif kind == "forwarded":
            origin = {"type": "hidden_user", "date": 1, "sender_user_name": "x"}
            sent += await chat.says(MIRA, LINE, forward_origin=origin)
        elif kind == "queries":
            query = {"id": f"q{number}", "from": MIRA.user, "query": LINE, "offset": ""}
            sent += await chat.pushes("inline_query", query)
        elif shown is not None:
            sent += await chat.taps(MIRA, shown, "Skip")
    return sent


@pytest.mark.parametrize("kind", ["words", "pictures", "files", "places", "forwarded"])
async def test_a_flood_in_private_is_answered_so_often_and_told_once(
    chat: Chat, loopback: Loopback, kind: str
) -> None:
    loopback.files |= {f"f{n}": b"{}" for n in range(10)}
    sent = [r for r in await flood(chat, kind) if r.method == "sendMessage"]
    slow = [r for r in sent if "One at a time" in r.values["text"]]
    assert len(slow) == 1
    assert len(sent) == 5
    assert text(await chat.says(TOM, LINE)).startswith("0.47 g")  # nobody else is slowed


@pytest.mark.parametrize("kind", ["queries", "taps"])
async def test_a_flood_of_queries_or_taps_is_answered_so_often(chat: Chat, kind: str) -> None:
    sent = await flood(chat, kind)
    assert len([r for r in sent if r.method.startswith("answer")]) == 4


def test_more_than_anybody_types_is_let_through() -> None:
    pace = Pace(0.0, refill_s=2.0, most=OWN_BURST, left=float(OWN_BURST))
    assert sum(pace.may_ask(n / 100) for n in range(1000)) == OWN_BURST + 4  # of ten seconds
    assert OWN_BURST >= 30


async def test_who_was_slowed_is_not_remembered_for_ever(
    chat: Chat, service: Any, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(carrying, "_MOST_PACES", 2)
    for who in (MIRA, TOM):
        await chat.says(who, LINE)
        await chat.pushes("inline_query", {"id": "q", "from": who.user, "query": "", "offset": ""})
    assert len(service._carrier._paces) == 2


# --- what is kept --------------------------------------------------------------------------------


async def test_of_cards_only_the_newest_are_kept(
    sqlite_records: Records, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(post, "MOST_CARDS", 3)
    clock = iter(range(1, 100))
    monkeypatch.setattr(postbox, "now_ms", lambda: next(clock))
    work = postbox.Work(None, sqlite_records, "telegram:1")  # type: ignore[arg-type]
    names = [await work.keep_card(f"{n} l", person="11") for n in range(6)]
    other = await work.keep_card("5 l", person="12")
    async with sqlite_records.reading() as session:
        assert set(await session.scalars(select(Card.id))) == {*names[3:], other}


async def test_rows_of_an_owner_are_bounded(
    sqlite_records: Records, monkeypatch: pytest.MonkeyPatch
) -> None:
    mira = Grower(sqlite_records)
    await mira.says("add a phal called Ruby in bark")
    monkeypatch.setattr(ledger, "MOST", {**ledger.MOST, Plant: 2, Event: 6})
    answers = [await mira.says(f"add a vanda called {n}") for n in ("Ada", "Bea", "Cyd")]
    assert "refused" in {a.kind for a in answers}
    for _ in range(6):
        await mira.says("fed Ruby, quarter")
    async with sqlite_records.reading() as session:
        plants = await session.scalar(select(func.count()).select_from(Plant))
        events = await session.scalar(select(func.count()).select_from(Event))
    assert (plants, events) == (2, 6)


async def test_reminders_of_an_owner_are_bounded(
    sqlite_records: Records, monkeypatch: pytest.MonkeyPatch
) -> None:
    from bot.records import reminders

    monkeypatch.setattr(reminders, "MOST_LIVE", 2)
    mira = Grower(sqlite_records)
    await mira.says("I live in Porto")
    lines = [f"remind me to flush every {day} at 9" for day in ("monday", "tuesday", "friday")]
    assert [(await mira.says(line)).kind for line in lines][-1] == "refused"


# --- how long ------------------------------------------------------------------------------------


async def test_a_text_longer_than_a_message_is_not_read(chat: Chat) -> None:
    sent = await chat.says(MIRA, "5 l " * 2_000)
    assert "longer than I read" in text(sent)


@pytest.mark.parametrize("line", TEXTS, ids=range(len(TEXTS)))
async def test_a_hostile_text_is_answered_in_bounds(sqlite_records: Records, line: str) -> None:
    answer = await Grower(sqlite_records).says(line)
    assert answer.kind != "fault"
    assert 0 < len(answer.reply) < 4096


async def test_an_answer_of_the_messenger_without_end_is_not_read(
    loopback: Loopback, monkeypatch: pytest.MonkeyPatch
) -> None:
    from telegram.error import NetworkError

    monkeypatch.setattr(requests, "MOST_BYTES", 1_000)
    loopback.files["long"] = b"x" * 5_000
    client = requests.Requests(1)
    await client.initialize()
    url = f"{loopback.url}/file/bot4242:loopback-token-of-no-bot/long"
    with pytest.raises(NetworkError):
        await client.do_request(url, "GET")
    await client.shutdown()


async def test_a_file_that_is_larger_than_it_says_is_not_taken_in(
    chat: Chat, loopback: Loopback, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(carrying, "MOST_BYTES", 100)
    loopback.files["f1"] = b'{"format":"sinkside-records","version":2}' + b" " * 100
    file = {"file_id": "f1", "file_unique_id": "f", "file_name": "x.json", "file_size": 5}
    sent = await chat.says(MIRA, None, document=file)
    assert "cannot open" in text(sent)
