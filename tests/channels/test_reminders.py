"""Reminders in the messenger: set in words, sent of our own accord, answered by a button."""

from __future__ import annotations

import time
from typing import Any

from sqlalchemy import func, select, update

from bot.records.kinds import EventKind, PingState
from bot.records.models import Event, Ping, Reminder
from tests.channels.chatting import GROUP, IDA, MIRA, TOM, Chat, buttons, text, until
from tests.channels.loopback import Request, error


async def pinged(chat: Chat) -> Request:
    """Let every reminder that is set be due now, and return the message that comes of it."""
    (sent,) = await pinged_all(chat, 1)
    return sent


async def pinged_all(chat: Chat, messages: int) -> list[Request]:
    """Let every reminder that is set be due now, and return the messages that come of it."""
    before = len(chat.loopback.of("sendMessage"))
    due_ms = int(time.time() * 1000) - 1000
    async with chat.records.writing() as session:
        await session.execute(update(Reminder).values(due_ms=due_ms, moved=True))
    return await come(chat, messages, before)


async def come(chat: Chat, messages: int, before: int) -> list[Request]:
    """Wait for messages that are sent of our own accord."""
    await until(lambda: len(chat.loopback.of("sendMessage")) >= before + messages)
    await chat.quiet()
    sent = chat.loopback.of("sendMessage")[before:]
    assert len(sent) == messages
    return sent


async def count(chat: Chat, kind: EventKind) -> int:
    async with chat.records.reading() as session:
        return await session.scalar(select(func.count()).where(Event.kind == kind)) or 0


async def settled(chat: Chat) -> list[PingState]:
    async with chat.records.reading() as session:
        return list(await session.scalars(select(Ping.state).order_by(Ping.owner_id, Ping.id)))


async def grower(chat: Chat) -> None:
    for line in ("I live in Porto", "add 3 phals in bark, 12 cm pots", "no"):
        await chat.says(MIRA, line)


async def test_a_reminder_is_sent_with_what_to_do_and_done_logs_it(chat: Chat) -> None:
    await grower(chat)
    said = text(await chat.says(MIRA, "remind me to flush the phals every first sunday at 9"))
    assert "first Sunday" in said
    ping = await pinged(chat)
    assert ping.values["chat_id"] == MIRA.id
    assert "flush Phalaenopsis" in ping.values["text"]
    assert " l" in ping.values["text"]  # how much water
    assert buttons(ping) == ["done", "later", "skip"]
    assert await settled(chat) == [PingState.SENT]
    assert "flushed" in text(await chat.taps(MIRA, ping, "done"))
    assert await count(chat, EventKind.FLUSH) == 1
    assert await settled(chat) == [PingState.DONE]
    await chat.taps(MIRA, ping, "done")  # a second tap
    assert await count(chat, EventKind.FLUSH) == 1


async def test_later_comes_again_and_skip_lets_it_pass(chat: Chat) -> None:
    await grower(chat)
    await chat.says(MIRA, "remind me to flush the phals every first sunday at 9")
    assert "again" in text(await chat.taps(MIRA, await pinged(chat), "later"))
    passed = text(await chat.taps(MIRA, await pinged(chat), "skip"))
    assert "flush" in passed
    assert await count(chat, EventKind.FLUSH) == 0
    assert await settled(chat) == [PingState.LATER, PingState.SKIPPED]


async def test_what_is_due_together_is_one_message(chat: Chat) -> None:
    await grower(chat)
    await chat.says(MIRA, "remind me to flush the phals every first sunday at 9")
    await chat.says(MIRA, "remind me every friday at 10 to order bark")
    ping = await pinged(chat)
    assert "flush" in ping.values["text"]
    assert "order bark" in ping.values["text"]
    assert await settled(chat) == [PingState.SENT, PingState.SENT]


async def test_a_groups_reminder_is_set_by_its_administrators_and_answered_by_them(
    club: Chat,
) -> None:
    await club.says(IDA, "/dose I live in Porto")
    await club.says(IDA, "/dose add 3 phals in bark, 12 cm pots, greenhouse")
    refused = text(await club.says(TOM, "/dose remind us to flush every sunday at 9"))
    assert "dministrator" in refused
    assert "Sunday" in text(await club.says(IDA, "/dose remind us to flush every sunday at 9"))
    ping = await pinged(club)
    assert ping.values["chat_id"] == GROUP
    before = await count(club, EventKind.FLUSH)
    await club.taps(TOM, ping, "done")
    assert await count(club, EventKind.FLUSH) == before
    await club.taps(IDA, ping, "done")
    assert await count(club, EventKind.FLUSH) == before + 1


async def test_who_blocks_us_has_their_reminders_paused_and_back_again(chat: Chat) -> None:
    await grower(chat)
    await chat.says(MIRA, "remind me to flush the phals every first sunday at 9")
    change = {
        "chat": {"id": MIRA.id, "type": "private", "first_name": "Mira"},
        "from": MIRA.user,
        "date": int(time.time()),
    }
    us = {"id": 4242, "is_bot": True, "first_name": "Sink"}
    member, gone = (
        {"status": "member", "user": us},
        {"status": "kicked", "user": us, "until_date": 0},
    )
    states = []
    for before, after in ((member, gone), (gone, member)):
        await chat.pushes(
            "my_chat_member", {**change, "old_chat_member": before, "new_chat_member": after}
        )
        async with chat.records.reading() as session:
            states.append(await session.scalar(select(Reminder.state)))
    assert states == ["paused", "active"]


def topic(number: int) -> dict[str, Any]:
    return {"message_thread_id": number, "is_topic_message": True}


async def two_topics(club: Chat) -> list[Request]:
    """What comes where reminders were set in two topics and are due together."""
    await club.says(IDA, "/dose I live in Porto")
    await club.says(IDA, "/dose add 3 phals in bark, 12 cm pots, greenhouse")
    await club.says(IDA, "/dose remind us to flush every sunday at 9", **topic(77))
    await club.says(IDA, "/dose remind us to feed every sunday at 9", **topic(88))
    return await pinged_all(club, 2)


async def test_a_reminder_is_heard_in_the_topic_where_it_was_set(club: Chat) -> None:
    sent = await two_topics(club)
    said = {r.values["message_thread_id"]: r.values["text"] for r in sent}
    assert sorted(said) == [77, 88]
    assert "flush" in said[77].splitlines()[0]
    assert "feed" in said[88].splitlines()[0]


async def test_done_in_a_topic_is_for_what_was_heard_there(club: Chat) -> None:
    await two_topics(club)
    await club.says(IDA, "/dose done", **topic(77))
    assert (await count(club, EventKind.FLUSH), await count(club, EventKind.FED)) == (1, 0)


async def test_a_reminder_whose_topic_was_closed_is_heard_in_the_general_one(club: Chat) -> None:
    club.loopback.fail = lambda method, values: (
        error(400, "Bad Request: TOPIC_CLOSED") if values.get("message_thread_id") == 77 else None
    )
    sent = await two_topics(club)
    assert [r.values.get("message_thread_id") for r in sent] == [None, 88]
    assert await settled(club) == [PingState.SENT, PingState.SENT]


async def test_a_tap_below_an_older_ping_is_for_that_one(chat: Chat) -> None:
    await grower(chat)
    await chat.says(MIRA, "remind me to flush the phals every first sunday at 9")
    first = await pinged(chat)
    await chat.says(MIRA, "remind me every friday at 10 to order bark")
    async with chat.records.writing() as session:
        later = update(Reminder).where(Reminder.text == "order bark")
        await session.execute(later.values(due_ms=int(time.time() * 1000) - 500))
    await come(chat, 1, len(chat.loopback.of("sendMessage")))
    await chat.taps(MIRA, first, "done")
    assert await count(chat, EventKind.FLUSH) == 1
    assert await settled(chat) == [PingState.DONE, PingState.SENT]
