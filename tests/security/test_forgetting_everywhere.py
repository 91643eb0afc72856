"""'forget me' through the messenger: nothing of that person is left in any table."""

from __future__ import annotations

import json
import time
from typing import Any

from sqlalchemy import select

from bot.conversation.postbox import Postbox
from bot.records import Records
from bot.records.models import Base, Inbox, Outbox
from bot.records.models import Chat as LostChat
from tests.channels.chatting import GROUP, LINE, TOM, Chat, Who, buttons, replying, text
from tests.channels.loopback import Loopback, error

EVE = Who(777000123, "Evelina")
#: Words of theirs, and their number wherever it could stand.
TRACES = ("777000123", "Evelina", "Zanzibar", "zanzibar")


async def rows(records: Records) -> list[tuple[str, str]]:
    """Every row of every table, written out."""
    found = []
    async with records.reading() as session:
        for table in Base.metadata.sorted_tables:
            for row in await session.execute(select(table)):
                values = {k: str(v) for k, v in row._mapping.items()}
                found.append((table.name, json.dumps(values, ensure_ascii=False)))
    return found


async def traces(records: Records) -> list[tuple[str, str]]:
    return [(t, row) for t, row in await rows(records) if any(x in row for x in TRACES)]


def inline(who: Who, query: str) -> dict[str, Any]:
    return {"id": "q1", "from": who.user, "query": query, "offset": ""}


async def live(chat: Chat, club: Chat, loopback: Loopback) -> None:
    """All that somebody can do: in private, in a group, from any chat, at buttons."""
    await chat.says(EVE, "/start")
    await chat.says(EVE, "I live in Porto")
    await chat.says(EVE, "I have a masdevallia in sphagnum called Zanzibar, 8 cm pot")
    await chat.says(EVE, "my powder is 20-20-20, label 1 g per litre, call it zanzibar tub")
    await chat.says(EVE, "remind me to flush Zanzibar every first sunday at 9")
    await chat.says(EVE, "2 l for Zanzibar")
    shown = await chat.says(EVE, "why")
    await chat.says(EVE, "export csv")
    await chat.says(EVE, "fed Zanzibar, quarter")
    await chat.taps(EVE, (await chat.says(EVE, "clear water for Zanzibar"))[-1], "undo")
    await chat.pushes("inline_query", inline(EVE, f"{LINE} zanzibar, phals"))
    (asked,) = await club.says(EVE, f"/dose {LINE} zanzibar")
    await club.says(EVE, "half that", **replying(asked, loopback))
    await club.says(EVE, "/dose my own plants")
    await club.taps(EVE, (await club.says(EVE, "/dose add 2 phals in bark"))[-1], "undo")
    message = chat.message(EVE, "5 l 20-20-20 powder Zanzibar", date=int(time.time()))
    await chat.pushes("message", message)
    await chat.pushes("edited_message", {**message, "text": LINE, "edit_date": message["date"]})
    assert shown


async def test_the_walk_over_all_tables_sees_what_is_there(
    chat: Chat, club: Chat, loopback: Loopback, sqlite_records: Records
) -> None:
    await live(chat, club, loopback)
    seen = {table for table, _ in await traces(sqlite_records)}
    assert {"owner", "plant", "product", "event", "memory", "card", "posted", "tap",
            "pace"} <= seen  # fmt: skip


async def test_nothing_of_a_person_is_left_in_any_table(
    chat: Chat, club: Chat, loopback: Loopback, sqlite_records: Records
) -> None:
    await chat.says(TOM, "add a phal called Ruby in bark")
    before = [r for r in await rows(sqlite_records) if r[0] in ("plant", "event")]
    await live(chat, club, loopback)
    asked = await chat.says(EVE, "forget me")
    assert buttons(asked[-1]) == ["yes", "no"]
    assert "Deleted" in text(await chat.taps(EVE, asked[-1], "yes"))
    left = await traces(sqlite_records)
    # How fast the answer itself may be followed by another one: the loop clears it out.
    assert {table for table, _ in left} <= {"pace"}
    for row in await rows(sqlite_records):
        if row[0] == "pace":
            assert set(json.loads(row[1])) == {"source", "lane", "free_ms", "full_ms"}
    postbox = Postbox(sqlite_records, None, "telegram:4242", "w")  # type: ignore[arg-type]
    await postbox.clear_out()
    assert await traces(sqlite_records) == []
    after = [r for r in await rows(sqlite_records) if r[0] in ("plant", "event")]
    assert [r for r in after if r in before] == before  # and the neighbour keeps all of it


async def test_what_failed_and_what_waits_is_forgotten_too(
    chat: Chat, loopback: Loopback, sqlite_records: Records
) -> None:
    await chat.says(EVE, "add a phal called Zanzibar in bark")
    loopback.fail = lambda method, values: (
        error(400, "Bad Request: no") if method == "sendMessage" else None
    )
    await chat.says(EVE, "2 l for Zanzibar")  # its answer can never be sent
    loopback.fail = None
    async with sqlite_records.writing() as session:
        session.add(
            Inbox(
                source="telegram:4242", update_id=1, lane=f"{EVE.id}:{EVE.id}", state="dead",
                body={"text": "Zanzibar"}, received_ms=1, free_ms=0, tries=5,
            )
        )  # fmt: skip
    async with sqlite_records.reading() as session:
        assert list(await session.scalars(select(Outbox.state))) == ["dead"]
    await chat.says(EVE, "forget me")
    await chat.says(EVE, "yes")
    assert {table for table, _ in await traces(sqlite_records)} <= {"pace"}


async def test_who_cannot_be_reached_is_noted_by_number_only(
    chat: Chat, sqlite_records: Records
) -> None:
    async with sqlite_records.writing() as session:
        session.add(LostChat(source="telegram:4242", chat_id=EVE.id, unreachable_ms=1))
    columns = {c.name for c in LostChat.__table__.columns}
    assert columns == {"source", "chat_id", "unreachable_ms"}
    await chat.says(EVE, "add a phal called Zanzibar in bark")
    await chat.says(EVE, "forget me")
    await chat.says(EVE, "yes")
    assert not [t for t, _ in await traces(sqlite_records) if t == "chat"]


async def test_a_second_yes_finds_nothing_and_keeps_nothing(
    chat: Chat, sqlite_records: Records
) -> None:
    await chat.says(EVE, "add a phal called Zanzibar in bark")
    asked = await chat.says(EVE, "forget me")
    await chat.taps(EVE, asked[-1], "yes")
    again = await chat.taps(EVE, asked[-1], "yes")
    assert "asked nothing" in text(again)
    assert not [t for t, _ in await traces(sqlite_records) if t in ("owner", "memory", "event")]


async def test_what_is_done_is_nobodys(chat: Chat, sqlite_records: Records) -> None:
    """A done update is kept so that it is not done twice; not who sent it, nor what."""
    await chat.says(EVE, LINE)
    async with sqlite_records.reading() as session:
        for row in await session.scalars(select(Inbox)):
            assert (row.state, row.lane, row.body) == ("done", "", None)


async def test_a_group_that_is_forgotten_leaves_its_members_theirs(
    chat: Chat, club: Chat, sqlite_records: Records
) -> None:
    from tests.channels.chatting import IDA

    await chat.says(TOM, "add a phal called Ruby in bark")
    await club.says(IDA, "/dose add 2 vandas in bark called Zanzibar")
    await club.says(IDA, f"/dose {LINE}")
    asked = await club.says(IDA, "/dose forget me")
    await club.taps(IDA, asked[-1], "yes")
    async with sqlite_records.reading() as session:
        assert not [row for row in await session.scalars(select(LostChat)) if row.chat_id == GROUP]
    assert await traces(sqlite_records) == []
    assert "Ruby" in text(await chat.says(TOM, "my plants"))
