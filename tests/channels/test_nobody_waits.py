"""What one person waits for, a file or the messenger, nobody else waits for."""

from __future__ import annotations

import asyncio
import json
from concurrent.futures import ThreadPoolExecutor
from typing import Any

import pytest

from bot.channels.telegram import carrying
from bot.channels.telegram.serving import Service
from bot.conversation.postbox import Arrived, Postbox, TappedMeanwhile, Work
from bot.conversation.talk import Conversation
from bot.conversation.turn import Incoming
from bot.records import Records
from tests.channels.chatting import (
    GROUP,
    IDA,
    LINE,
    MIRA,
    TOM,
    Chat,
    Who,
    buttons,
    served,
    text,
    until,
)
from tests.channels.loopback import ME, Loopback, Request

STAMP = 1_700_000_000


def document(name: str) -> dict[str, Any]:
    """A file in a message."""
    return {
        "document": {
            "file_id": name, "file_unique_id": name, "file_name": f"{name}.json", "file_size": 9,
        }
    }  # fmt: skip


async def exported(chat: Chat, who: Who) -> bytes:
    """The file of somebody who has one plant."""
    await chat.says(who, "add a vanda called Ruby in bark")
    sent = await chat.says(who, "export")
    (file,) = [r.values["document"] for r in sent if r.method == "sendDocument"]
    found: bytes = file if isinstance(file, bytes) else file.encode()
    json.loads(found)
    return found


def pressed(shown: Request, loopback: Loopback, who: Who, label: str) -> dict[str, Any]:
    """An update of a button that is pressed."""
    rows = shown.values["reply_markup"]["inline_keyboard"]
    (data,) = [b["callback_data"] for row in rows for b in row if b["text"] == label]
    return {
        "id": str(loopback.message_id()), "from": who.user, "chat_instance": "1",
        "message": loopback.message(shown), "data": data,
    }  # fmt: skip


async def others_are_served(chat: Chat, service: Service, held: str) -> None:
    """Somebody else's message is taken in and answered while a request of a method is held."""
    loopback = chat.loopback
    await until(lambda: loopback.asked[held] > 0)
    before = len(loopback.accepted)
    await service.postbox.take_in([Arrived(5, "none", {"update_id": 5})])
    loopback.push("message", Chat(loopback, chat.records).message(TOM, LINE))
    await until(lambda: len(loopback.accepted) > before)
    # And nobody else was: who waits for the held request waits on.
    assert {r.values["chat_id"] for r in loopback.accepted[before:]} == {TOM.id}
    loopback.held[held].set()
    await chat.quiet()


@pytest.mark.parametrize("tapped", [True, False], ids=["a button", "a word"])
async def test_others_are_served_while_a_file_that_was_confirmed_is_fetched(
    chat: Chat, service: Service, loopback: Loopback, tapped: bool
) -> None:
    loopback.files["f1"] = await exported(chat, IDA)
    asked = (await chat.says(MIRA, None, **document("f1")))[-1]
    assert buttons(asked) == ["yes", "no"]
    loopback.asked.clear()
    loopback.hold("getFile")
    if tapped:
        loopback.push("callback_query", pressed(asked, loopback, MIRA, "yes"))
    else:
        loopback.push("message", chat.message(MIRA, "yes"))
    await others_are_served(chat, service, "getFile")
    assert "Ruby" in text(await chat.says(MIRA, "my plants"))


async def test_others_are_served_while_a_late_call_waits_for_the_messenger(
    club: Chat, service: Service, loopback: Loopback
) -> None:
    message = club.message(IDA, "be quiet")
    await club.pushes("message", message)
    loopback.hold("getChatMember")
    called = club.message(IDA, "/dose be quiet", message_id=message["message_id"])
    loopback.push("edited_message", {**called, "edit_date": called["date"]})
    await others_are_served(club, service, "getChatMember")
    assert await club.says(MIRA, "@sink_test_bot " + LINE) == []  # it is quiet


async def test_others_are_served_while_a_button_waits_for_the_messenger(
    club: Chat, service: Service, loopback: Loopback
) -> None:
    await club.says(MIRA, "/dose add 2 vandas in bark")
    loopback.asked.clear()
    loopback.hold("getChatMember")
    loopback.push("callback_query", of_the_group(loopback, MIRA, "plan", MIRA.id))
    await others_are_served(club, service, "getChatMember")


@pytest.mark.parametrize("line", ["/dose add 2 vandas in bark", "/plan"])
async def test_others_are_served_while_a_message_waits_for_the_messenger(
    club: Chat, service: Service, loopback: Loopback, line: str
) -> None:
    if line == "/plan":
        await club.says(MIRA, "/dose add 2 vandas in bark")
    loopback.asked.clear()
    loopback.hold("getChatMember")
    loopback.push("message", club.message(MIRA, line))
    await others_are_served(club, service, "getChatMember")


async def test_files_that_are_waited_for_take_no_thread(
    chat: Chat, service: Service, loopback: Loopback
) -> None:
    # As many threads as `serve` has: a file's address is looked up in one of them.
    with ThreadPoolExecutor(2) as threads:
        asyncio.get_running_loop().set_default_executor(threads)
        loopback.hold("getFile")
        before = len(loopback.accepted)
        for who in (MIRA, TOM):
            loopback.push("message", chat.message(who, None, **document(who.name)))
        await until(lambda: loopback.asked["getFile"] == 2)
        await asyncio.to_thread(int)
        assert loopback.accepted[before:] == []
        loopback.files |= {MIRA.name: b"{}", TOM.name: b"{}"}
        loopback.held["getFile"].set()
        await chat.quiet()


async def test_a_file_that_does_not_come_in_time_can_be_sent_again(
    chat: Chat, loopback: Loopback, monkeypatch: pytest.MonkeyPatch
) -> None:
    loopback.files["f1"] = await exported(chat, IDA)
    with monkeypatch.context() as patched:
        patched.setattr(carrying, "_FETCH_S", 0.05)
        loopback.hold("getFile")
        assert "did not come in time" in text(await chat.says(MIRA, None, **document("f1")))
        loopback.held.pop("getFile").set()
    assert "Take it in?" in text(await chat.says(MIRA, None, **document("f1")))


# --- pressed twice ------------------------------------------------------------------------------


def of_the_group(loopback: Loopback, who: Who, label: str, owner: int = 0) -> dict[str, Any]:
    """A button of a group that is pressed; whose it is, 0 for administrators."""
    button = {"text": label, "callback_data": f"c0.{owner}.{STAMP}"}
    message = {
        "message_id": 77, "date": STAMP, "from": ME, "text": "x",
        "chat": {"id": GROUP, "type": "supergroup", "title": "club"},
        "reply_markup": {"inline_keyboard": [[button]]},
    }  # fmt: skip
    return {
        "id": str(loopback.message_id()), "from": who.user, "chat_instance": "1",
        "message": message, "data": button["callback_data"],
    }  # fmt: skip


async def test_of_two_who_press_a_button_at_once_the_second_is_told(
    club: Chat, loopback: Loopback, monkeypatch: pytest.MonkeyPatch
) -> None:
    loopback.members[(GROUP, TOM.id)] = "administrator"
    right, there = Work.answer, 0
    both = asyncio.Event()

    async def answer(work: Work, incoming: Incoming) -> Any:
        nonlocal there
        there += 1
        if there == 2:
            both.set()
        await both.wait()
        return await right(work, incoming)

    monkeypatch.setattr(Work, "answer", answer)
    before = len(loopback.accepted)
    for who in (IDA, TOM):
        loopback.push("callback_query", of_the_group(loopback, who, "add 2 vandas in bark"))
    await club.quiet()
    notes = [r.values.get("text") for r in loopback.accepted[before:]
             if r.method == "answerCallbackQuery"]  # fmt: skip
    assert sorted(notes, key=str) == ["Done already.", None]
    assert text(await club.says(MIRA, "/plants")).startswith("2 plants")


async def test_what_a_second_press_wrote_is_taken_back(records: Records) -> None:
    box = Postbox(records, Conversation(records), "telegram:1", "w")
    await box.take_in([Arrived(1, "1:1", {}), Arrived(2, "1:2", {})])
    first, second = await box.claim(2)

    async def presses_last() -> None:
        async with box.work(second) as work:
            assert await work.first_tap(1, 7, "c0.0.1")
            async with box.work(first) as quicker:
                assert await quicker.first_tap(1, 7, "c0.0.1")
            await work.keep_card("5 l", person="1")

    with pytest.raises(TappedMeanwhile):
        await presses_last()
    async with box.work(second) as work:
        assert not await work.first_tap(1, 7, "c0.0.1")
        assert await work.card("5 l") is None


async def test_as_whom_our_message_was_written_says_nothing_of_who_presses(
    club: Chat, loopback: Loopback
) -> None:
    press = of_the_group(loopback, TOM, "be quiet")
    press["message"]["sender_chat"] = press["message"]["chat"]
    note = (await club.pushes("callback_query", press))[-1]
    assert "administrators" in note.values["text"]


# --- the menu -----------------------------------------------------------------------------------


async def test_nobody_waits_for_the_menu(sqlite_records: Records, loopback: Loopback) -> None:
    loopback.hold("setMyCommands")
    chat = Chat(loopback, sqlite_records)
    async with served(sqlite_records, loopback):
        await until(lambda: loopback.asked["setMyCommands"])
        assert text(await chat.says(MIRA, LINE)).startswith("0.47 g")
    assert loopback.asked["setMyCommands"] == 1  # told to stop, it did not go on
    assert loopback.menus == []
