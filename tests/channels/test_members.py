"""Members and administrators of a group: whose entries, whose settings, and late calls."""

from __future__ import annotations

from datetime import timedelta
from typing import Any

import pytest

from bot.channels.telegram.carrying import LATE_CALL
from tests.channels.chatting import (
    GROUP,
    IDA,
    LINE,
    MIRA,
    TOM,
    Chat,
    Who,
    buttons,
    entities,
    replying,
    text,
)
from tests.channels.loopback import Loopback

VANDAS, PHALS = "/dose add 3 vandas in bark, greenhouse", "/dose add 2 phals in bark, kitchen"


async def test_undo_takes_back_ones_own_last_entry(club: Chat) -> None:
    await club.says(MIRA, VANDAS)
    await club.says(TOM, PHALS)
    assert "3 Vanda" in text(await club.says(MIRA, "/undo"))
    left = text(await club.says(MIRA, "/plants"))
    assert "Phalaenopsis" in left
    assert "Vanda" not in left
    assert "2 plants" in left  # what was taken back counts no longer


async def test_nobody_takes_back_what_others_said(club: Chat) -> None:
    await club.says(MIRA, VANDAS)
    assert "Nothing of yours" in text(await club.says(TOM, "/undo"))
    assert "3 plants" in text(await club.says(TOM, "/plants"))


async def test_an_administrator_takes_back_the_last_of_all(club: Chat) -> None:
    await club.says(IDA, PHALS)
    await club.says(MIRA, VANDAS)
    undone = text(await club.says(IDA, "/undo"))
    assert "3 Vanda" in undone
    assert "said by a member" in undone


async def test_the_button_of_an_administrator_takes_back_their_own(club: Chat) -> None:
    shown = (await club.says(IDA, PHALS))[-1]
    await club.says(MIRA, VANDAS)
    assert "2 Phalaenopsis" in text(await club.taps(IDA, shown, "undo"))


async def test_what_others_built_on_is_not_taken_from_below_them(club: Chat) -> None:
    await club.says(MIRA, VANDAS)
    await club.says(TOM, "/dose fed all vandas, quarter")
    assert "Somebody else" in text(await club.says(MIRA, "/undo"))
    await club.says(TOM, "/undo")
    assert "Taken back: added" in text(await club.says(MIRA, "/undo"))


async def test_own_entries_stay_ones_own_when_the_group_gets_a_new_number(club: Chat) -> None:
    await club.says(MIRA, VANDAS)
    new = GROUP - 900
    await club.says(IDA, None, migrate_to_chat_id=new)
    moved = Chat(club.loopback, club.records, new)
    assert "3 Vanda" in text(await moved.says(MIRA, "/undo"))


async def test_the_diary_says_who_without_names_or_numbers(club: Chat) -> None:
    await club.says(MIRA, VANDAS)
    await club.says(TOM, "/dose fed all vandas, quarter")
    said = text(await club.says(TOM, "/diary"))
    assert "today (a member): added: 3 Vanda" in said
    assert "today (you): fed (1/4): 3 Vanda" in said
    private = Chat(club.loopback, club.records)
    await private.says(TOM, PHALS.removeprefix("/dose "))
    assert "(you)" not in text(await private.says(TOM, "/diary"))


async def test_no_number_of_a_person_is_kept_with_what_they_said(club: Chat) -> None:
    mira = Who(987654321, "Mira")
    await club.says(mira, VANDAS)
    sent = await club.says(IDA, "/dose export")
    file = next(r.values["document"] for r in sent if r.method == "sendDocument")
    assert b"Vanda" in file
    assert b'"by"' in file
    assert b"987654321" not in file


@pytest.mark.parametrize(
    ("line", "says"),
    [
        ("lost all vandas", "Only administrators take plants"),
        ("forget me", "Only administrators of this group do that"),
        ("our can holds 8 l", "Only administrators of this group change"),
        ("my scale shows 0.1 g", "Only administrators of this group change"),
        ("our language is english", "Only administrators of this group change"),
        ("be quiet", "Only administrators of this group make me quiet"),
        ("speak up", "Only administrators of this group make me quiet"),
    ],
)
async def test_what_only_administrators_do_says_so(club: Chat, line: str, says: str) -> None:
    await club.says(IDA, VANDAS)
    assert says in text(await club.says(TOM, "/dose " + line))
    assert "Only administrators" not in text(await club.says(IDA, "/dose " + line))


async def test_ones_own_plants_are_ones_own_to_remove_in_a_group(club: Chat) -> None:
    private = Chat(club.loopback, club.records)
    await private.says(TOM, "add 2 phals in bark, kitchen")
    assert "Taken off" in text(await club.says(TOM, "/dose lost all phals of my own plants"))


async def test_a_plan_tells_a_member_who_can_send_the_size_of_the_can(club: Chat) -> None:
    await club.says(MIRA, VANDAS)
    assert "an administrator can send the group's" in text(await club.says(TOM, "/plan"))
    told = text(await club.says(IDA, "/plan"))
    assert "send the group's, like: our can holds 8 l" in told
    assert "an administrator" not in told
    private = Chat(club.loopback, club.records)
    await private.says(TOM, "add 2 phals in bark, kitchen")
    assert "send yours" in text(await private.says(TOM, "/plan"))


# --- a call that comes with an edit ------------------------------------------------------------


def edited(message: dict[str, Any], line: str, after: timedelta = timedelta(0)) -> dict[str, Any]:
    at = message["date"] + int(after.total_seconds())
    return {**message, "text": line, "entities": entities(line), "edit_date": at}


@pytest.mark.parametrize("call", ["/dose ", "@sink_test_bot "])
async def test_an_edit_that_calls_us_is_answered_as_if_new(club: Chat, call: str) -> None:
    message = club.message(MIRA, LINE)
    assert await club.pushes("message", message) == []
    (sent,) = await club.pushes("edited_message", edited(message, call + LINE))
    assert sent.method == "sendMessage"
    assert sent.values["text"].startswith("0.47 g")
    assert sent.values["reply_parameters"]["message_id"] == message["message_id"]
    again = edited(message, f"{call}{LINE}, phals")
    (second,) = await club.pushes("edited_message", again)
    assert (second.method, second.values["message_id"]) == ("editMessageText", sent.made)


async def test_an_edit_that_still_does_not_call_us_gets_no_answer(club: Chat) -> None:
    message = club.message(MIRA, "hello")
    await club.pushes("message", message)
    assert await club.pushes("edited_message", edited(message, "hello all")) == []


async def test_an_edit_long_after_calls_nobody(club: Chat) -> None:
    message = club.message(MIRA, LINE)
    await club.pushes("message", message)
    late = edited(message, "/dose " + LINE, LATE_CALL + timedelta(minutes=1))
    assert await club.pushes("edited_message", late) == []


async def test_what_was_put_on_record_by_a_late_call_is_not_put_there_twice(club: Chat) -> None:
    message = club.message(MIRA, "add 3 vandas in bark")
    await club.pushes("message", message)
    await club.pushes("edited_message", edited(message, "/dose add 3 vandas in bark"))
    again = await club.pushes("edited_message", edited(message, "/dose add 3 vandas, bark"))
    assert "on record already" in text(again)
    assert "3 plants" in text(await club.says(MIRA, "/plants"))


async def test_an_edit_before_our_answer_is_out_puts_nothing_on_record_twice(
    club: Chat, loopback: Loopback
) -> None:
    message = club.message(MIRA, VANDAS)
    loopback.push("message", message)
    loopback.push("edited_message", edited(message, VANDAS + " 2"))
    await club.quiet()
    assert "3 plants" in text(await club.says(MIRA, "/plants"))


async def test_a_late_mention_in_a_quiet_group_stays_unanswered(club: Chat) -> None:
    await club.says(IDA, "/dose be quiet")
    message = club.message(MIRA, LINE)
    await club.pushes("message", message)
    assert await club.pushes("edited_message", edited(message, "@sink_test_bot " + LINE)) == []


# --- short answers in a group --------------------------------------------------------------------


async def test_a_reply_about_a_pet_is_answered(club: Chat, loopback: Loopback) -> None:
    (shown,) = await club.says(MIRA, "/dose " + LINE)
    (sent,) = await club.says(TOM, "is that save for my cat?", **replying(shown, loopback))
    assert "poison centre" in sent.values["text"]
    assert buttons(sent) == []


async def test_the_messages_of_the_loopback_stand_in_their_topic(
    club: Chat, loopback: Loopback
) -> None:
    topic = {"message_thread_id": 77, "is_topic_message": True}
    asked = await club.says(MIRA, VANDAS, **topic)
    (sent,) = (r for r in asked if r.method == "sendMessage")
    assert loopback.message(sent)["message_thread_id"] == 77
    tapped = (await club.taps(MIRA, sent, "undo"))[-1]
    assert tapped.values["message_thread_id"] == 77
