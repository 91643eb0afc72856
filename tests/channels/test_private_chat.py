"""Private chats, through the loopback server: what people send, and what they see."""

from __future__ import annotations

import json
import time
from datetime import UTC, datetime
from typing import Any
from unittest.mock import patch

import pytest

from bot.channels.telegram import carrying
from bot.conversation.answer import Answer
from bot.conversation.postbox import Work
from bot.conversation.turn import Incoming
from bot.conversation.wording import languages
from tests.channels.chatting import IDA, LINE, MIRA, TOM, Chat, buttons, text, until
from tests.channels.loopback import ME, Loopback


async def test_a_line_is_answered_with_its_dose(chat: Chat) -> None:
    sent = await chat.says(MIRA, LINE)
    assert [r.method for r in sent] == ["sendMessage"]
    assert sent[0].values["chat_id"] == MIRA.id
    # 0.25 x 1/2 (winter) x 3/4 (sphagnum) of 200 mg/l N from 20 % powder in 5 l
    assert text(sent).startswith("0.47 g of 20-20-20 powder in 5 l")
    assert sent[0].values["link_preview_options"] == {"is_disabled": True}


async def test_the_menu_is_set_in_both_scopes(chat: Chat, loopback: Loopback) -> None:
    menus = loopback.menus
    await until(lambda: len(menus) == 2 * len(languages()))
    assert {m.values["scope"]["type"] for m in menus} == {"default", "all_group_chats"}
    assert [c["command"] for c in menus[0].values["commands"]] == [
        "dose", "plan", "plants", "shelf", "diary", "undo", "help",
    ]  # fmt: skip


@pytest.mark.parametrize("command", ["/plan", "/plants", "/shelf", "/diary", "/undo", "/help"])
async def test_every_command_is_answered(chat: Chat, command: str) -> None:
    sent = await chat.says(MIRA, command)
    assert len(sent) == 1
    assert "Not understood" not in text(sent)


async def test_the_first_meeting_can_be_answered(chat: Chat) -> None:
    first = await chat.says(MIRA, "/start")
    assert "Where do you live?" in text(first)
    assert buttons(first[0]) == ["Skip"]
    home = await chat.says(MIRA, "Porto")
    assert "Europe/Lisbon" in text(home)
    assert "Not understood" not in text(home)
    assert "On your shelf" in text(await chat.says(MIRA, "20-20-20 powder 1 g per litre"))
    last = await chat.says(MIRA, "3 phals in bark")
    assert "On record: 3 Phalaenopsis (bark)" in text(last)
    assert "That is all" in text(last)
    assert "Where do you live" not in text(await chat.says(MIRA, "/start"))


async def test_the_first_meeting_can_be_skipped_by_tapping(chat: Chat) -> None:
    shown = await chat.says(MIRA, "/start")
    for _ in range(3):
        shown = await chat.taps(MIRA, shown[-1], "Skip")
    assert "That is all" in text(shown)


async def test_something_else_ends_the_first_meeting(chat: Chat) -> None:
    await chat.says(MIRA, "/start")
    assert text(await chat.says(MIRA, LINE)).startswith("0.47 g")


async def test_a_button_says_its_words_once(chat: Chat) -> None:
    await chat.says(MIRA, "add 2 phals in bark, 12 cm pots")
    asked = await chat.says(MIRA, "forget me")
    assert buttons(asked[0]) == ["yes", "no"]
    done = await chat.taps(MIRA, asked[0], "no")
    assert [r.method for r in done] == ["answerCallbackQuery", "sendMessage"]
    again = await chat.taps(MIRA, asked[0], "no")
    assert [(r.method, r.values.get("text")) for r in again] == [
        ("answerCallbackQuery", "Done already.")
    ]


async def test_a_yes_to_an_older_question_is_no_yes_to_a_newer_one(chat: Chat) -> None:
    await chat.says(MIRA, "add a phal called Ruby in bark")
    old = await chat.pushes("message", chat.message(MIRA, "forget me", date=int(time.time()) - 60))
    await chat.says(MIRA, "forget me")
    stale = await chat.taps(MIRA, old[0], "yes")
    assert "Deleted" not in text(stale)
    assert "Ruby" in text(await chat.says(MIRA, "my plants"))


@pytest.mark.parametrize("data", ["c0.99.1", "c9", "", "p2.11.zz", "x" * 64, "c0.11.x"])
async def test_made_up_button_data_changes_nothing(chat: Chat, data: str) -> None:
    await chat.says(MIRA, "add a phal called Ruby in bark")
    asked = await chat.says(MIRA, "forget me")
    sent = await chat.taps(MIRA, asked[0], "yes", data=data or "none")
    assert [r.method for r in sent] == ["answerCallbackQuery"]
    assert "over" in sent[0].values["text"]
    assert "Ruby" in text(await chat.says(MIRA, "my plants"))


async def test_a_button_of_somebody_else_is_refused(chat: Chat) -> None:
    asked = await chat.says(MIRA, "/start")
    sent = await chat.taps(TOM, asked[0], "Skip")
    assert [r.method for r in sent] == ["answerCallbackQuery"]
    assert "for the person who asked" in sent[0].values["text"]


async def test_a_button_below_a_message_that_is_gone_is_answered_kindly(chat: Chat) -> None:
    value = {
        "id": "1", "from": MIRA.user, "chat_instance": "1", "data": "c0.11.1",
        "message": {"message_id": 5, "date": 0, "chat": {"id": MIRA.id, "type": "private"}},
    }  # fmt: skip
    sent = await chat.pushes("callback_query", value)
    assert [r.method for r in sent] == ["answerCallbackQuery"]


async def test_an_edited_question_has_its_answer_edited(chat: Chat) -> None:
    message = chat.message(MIRA, "5 litres, 20-20-20 powder, quarter strength")
    first = await chat.pushes("message", message)
    edited = {**message, "text": LINE, "edit_date": int(time.time()) + 1}
    sent = await chat.pushes("edited_message", edited)
    assert [r.method for r in sent] == ["editMessageText"]
    assert sent[0].values["message_id"] == first[0].made
    assert sent[0].values["text"].startswith("0.47 g")


async def test_an_edit_to_a_question_without_buttons_replaces_the_dose(chat: Chat) -> None:
    message = chat.message(MIRA, LINE)
    await chat.pushes("message", message)
    edited = {**message, "text": "20-20-20 powder, quarter", "edit_date": int(time.time()) + 1}
    sent = await chat.pushes("edited_message", edited)
    assert [r.method for r in sent] == ["editMessageText"]
    assert "How many litres" in text(sent)


async def test_an_edit_puts_nothing_on_record_twice(chat: Chat) -> None:
    message = chat.message(MIRA, "add 2 phals in bark")
    await chat.pushes("message", message)
    edited = {**message, "text": "add 3 phals in bark", "edit_date": int(time.time()) + 1}
    sent = await chat.pushes("edited_message", edited)
    assert "on record already" in text(sent)
    assert "2 plants" in text(await chat.says(MIRA, "my plants"))


async def test_an_edit_of_a_message_of_long_ago_gets_no_answer(chat: Chat) -> None:
    old = chat.message(MIRA, LINE, date=1_000_000, edit_date=int(time.time()))
    assert await chat.pushes("edited_message", old) == []


async def test_a_long_list_comes_in_pages(chat: Chat) -> None:
    for bench in range(1, 41):
        await chat.says(MIRA, f"add a phal in bark, bench {bench}")
    shown = await chat.says(MIRA, "my plants")
    seen = text(shown)
    while any(b.startswith("More") for b in buttons(shown[-1])):
        shown = await chat.taps(MIRA, shown[-1], "More")
        assert len(text(shown)) <= 1600
        seen += text(shown)
    assert [n for n in range(1, 41) if f"bench {n}:" not in seen] == []
    assert len(shown) == 2  # the answer to the tap, and the last page


async def test_an_export_comes_as_a_file_and_is_taken_in_again(
    chat: Chat, loopback: Loopback
) -> None:
    await chat.says(MIRA, "add a phal called Ruby in bark")
    sent = await chat.says(MIRA, "export")
    file = next(r for r in sent if r.method == "sendDocument")
    content = file.values["document"]
    assert any(p["name"] == "Ruby" for p in json.loads(content)["plants"])
    loopback.files["f1"] = content
    document = {"file_id": "f1", "file_unique_id": "f1", "file_name": "x.json", "file_size": 900}
    asked = await chat.says(IDA, None, document=document)
    assert buttons(asked[-1]) == ["yes", "no"]
    await chat.taps(IDA, asked[-1], "yes")
    assert "Ruby" in text(await chat.says(IDA, "my plants"))


async def test_a_place_offers_to_set_the_home(chat: Chat) -> None:
    # Porto lies at 41.15 N 8.61 W (GeoNames)
    sent = await chat.says(MIRA, None, location={"latitude": 41.16, "longitude": -8.62})
    assert "Porto, Portugal" in text(sent)
    assert "Europe/Lisbon" in text(await chat.taps(MIRA, sent[0], "I live in"))


OTHER: list[dict[str, Any]] = [
    {"sticker": {"file_id": "s", "file_unique_id": "s", "type": "regular", "width": 9,
                 "height": 9, "is_animated": False, "is_video": False}},
    {"photo": [{"file_id": "p", "file_unique_id": "p", "width": 9, "height": 9}]},
    {"voice": {"file_id": "v", "file_unique_id": "v", "duration": 2}},
    {"contact": {"phone_number": "1", "first_name": "x"}},
    {"document": {"file_id": "d", "file_unique_id": "d", "file_name": "x.exe"}},
    {"poll": {"id": "1", "question": "q", "options": [], "total_voter_count": 0,
              "is_closed": False, "is_anonymous": True, "type": "regular",
              "allows_multiple_answers": False, "allows_revoting": True,
              "members_only": False}},
]  # fmt: skip


@pytest.mark.parametrize("what", OTHER, ids=lambda w: next(iter(w)))
async def test_what_is_no_text_is_told_what_to_send(chat: Chat, what: dict[str, Any]) -> None:
    sent = await chat.says(MIRA, None, **what)
    assert "I read text" in text(sent)


async def test_a_photo_with_words_below_it_is_answered(chat: Chat) -> None:
    photo = [{"file_id": "p", "file_unique_id": "p", "width": 9, "height": 9}]
    sent = await chat.says(MIRA, None, photo=photo, caption=LINE)
    assert text(sent).startswith("0.47 g")


async def test_other_bots_and_service_messages_get_no_answer(chat: Chat) -> None:
    robot = {"id": 99, "is_bot": True, "first_name": "other"}
    assert await chat.says(MIRA, LINE, **{"from": robot}) == []
    assert await chat.says(MIRA, LINE, via_bot=robot) == []
    assert await chat.says(MIRA, None, pinned_message=chat.message(MIRA, "x")) == []


async def test_a_forwarded_message_is_answered_and_never_put_on_record(chat: Chat) -> None:
    origin = {"type": "hidden_user", "sender_user_name": "x", "date": 1}
    sent = await chat.says(MIRA, LINE, forward_origin=origin)
    assert text(sent).startswith("0.47 g")
    await chat.says(MIRA, "add 5 phals in bark", forward_origin=origin)
    assert "No plants on record" in text(await chat.says(MIRA, "my plants"))


@pytest.mark.parametrize(
    "said_at", [datetime(2026, 7, 10, 12, tzinfo=UTC), datetime(2026, 5, 31, 20, tzinfo=UTC)]
)
async def test_a_forwarded_line_is_answered_for_the_side_and_day_where_one_lives(
    chat: Chat, said_at: datetime
) -> None:
    await chat.says(MIRA, "I live in Melbourne")  # where it is winter, from that evening on
    await chat.says(TOM, "I live in Porto")
    line = "3 l 20-20-20 powder, phal"
    origin = {"type": "hidden_user", "sender_user_name": "x", "date": 1}
    told = {"forward_origin": origin, "date": int(said_at.timestamp())}
    # 1/4 of 200 mg/l N from 20 % powder in 3 l: 0.75 g, and half of it in winter
    assert text(await chat.says(TOM, line, **told)).startswith("0.75 g")
    assert text(await chat.says(MIRA, line, **told)).startswith("0.38 g")


@pytest.mark.parametrize(
    "line",
    ["<b>5 l</b> & 20-20-20 powder", "x" * 4096, "/start %00../x", "\u202e5 l\u202d", "_*[`5 l`]("],
)
async def test_strange_text_is_answered_as_text(chat: Chat, line: str) -> None:
    sent = await chat.says(MIRA, line)
    assert len(sent) == 1
    assert "parse_mode" not in sent[0].values


async def test_names_with_direction_marks_are_nothing_to_us(chat: Chat) -> None:
    user = {**MIRA.user, "first_name": "\u202eariM"}
    assert text(await chat.says(MIRA, LINE, **{"from": user})).startswith("0.47 g")


async def test_inline_gives_a_card_with_its_cautions_on_it(chat: Chat) -> None:
    query = {"id": "q1", "from": MIRA.user, "query": LINE + " phals", "offset": ""}
    sent = await chat.pushes("inline_query", query)
    assert [r.method for r in sent] == ["answerInlineQuery"]
    assert sent[0].values["is_personal"] is True
    (result,) = sent[0].values["results"]
    said = result["input_message_content"]["message_text"]
    assert said.startswith("0.47 g of 20-20-20 powder in 5 l")
    assert "\n- " in said  # cautions
    assert "no label rate given" in said  # what it assumes
    links = [b["url"] for row in result["reply_markup"]["inline_keyboard"] for b in row]
    assert [link.partition("start=")[2][:2] for link in links] == ["q_", "s_"]
    asked = await chat.says(TOM, f"/start {links[0].partition('start=')[2]}")
    assert text(asked).startswith("0.47 g")
    assert "On record: Phalaenopsis" in text(
        await chat.says(TOM, f"/start {links[1].partition('start=')[2]}")
    )


@pytest.mark.parametrize(
    ("now", "amount"),
    [
        (datetime(2026, 1, 10, tzinfo=UTC), 0.375),
        (datetime(2026, 4, 10, tzinfo=UTC), 0.75),
        (datetime(2026, 7, 10, tzinfo=UTC), 0.375),
        (datetime(2026, 5, 31, 13, tzinfo=UTC), 0.375),  # June has begun in the far east
        (datetime(2026, 3, 1, 8, tzinfo=UTC), 0.375),  # and February not ended in the far west
    ],
)
def test_a_card_holds_on_both_sides_of_the_equator(now: datetime, amount: float) -> None:
    answer = carrying._anywhere("3 l 20-20-20 powder, phal", now)
    assert answer.dose is not None
    assert answer.dose.amount == pytest.approx(amount)
    assert ("both hemispheres" in answer.reply) == (amount < 0.75)
    assert "\n\n" not in answer.reply


def test_a_card_for_what_rests_on_one_side_is_clear_water() -> None:
    for month in (1, 7):
        line = "3 l 20-20-20 powder, catasetum"
        answer = carrying._anywhere(line, datetime(2026, month, 10, tzinfo=UTC))
        assert answer.kind == "no_feed"


async def test_inline_without_a_dose_shows_what_to_type(chat: Chat) -> None:
    for query in ("", "hello", "5 l", "2 l 50-50-50 powder"):
        value = {"id": "q2", "from": MIRA.user, "query": query, "offset": ""}
        sent = await chat.pushes("inline_query", value)
        assert sent[0].values["results"] == []
        assert sent[0].values["button"]["start_parameter"] == "hello"


async def test_inline_never_shows_what_is_on_record(chat: Chat) -> None:
    await chat.says(MIRA, "my powder is 13-3-15, label 1 g per litre, call it blue tub")
    value = {"id": "q3", "from": MIRA.user, "query": "5 l blue tub", "offset": ""}
    sent = await chat.pushes("inline_query", value)
    assert "blue tub" not in json.dumps(sent[0].values["results"])


async def test_a_person_who_blocked_us_is_sent_nothing_until_they_come_back(chat: Chat) -> None:
    def member(status: str) -> dict[str, Any]:
        return {"user": ME, "status": status, "until_date": 0}

    changed = {
        "chat": {"id": MIRA.id, "type": "private"}, "from": MIRA.user, "date": int(time.time()),
        "old_chat_member": {"user": ME, "status": "member"}, "new_chat_member": member("kicked"),
    }  # fmt: skip
    assert await chat.pushes("my_chat_member", changed) == []
    back = {**changed, "new_chat_member": {"user": ME, "status": "member"}}
    assert await chat.pushes("my_chat_member", back) == []
    assert text(await chat.says(MIRA, LINE)).startswith("0.47 g")


async def test_typing_is_shown_where_an_answer_takes_long(chat: Chat) -> None:
    right = Work.answer

    async def slow(work: Work, incoming: Incoming) -> Answer:
        await until(lambda: chat.loopback.of("sendChatAction"))
        return await right(work, incoming)

    assert [r.method for r in await chat.says(MIRA, LINE)] == ["sendMessage"]
    with patch.object(carrying, "SLOW_S", 0.05), patch.object(Work, "answer", slow):
        sent = await chat.says(MIRA, LINE)
    assert [r.method for r in sent] == ["sendChatAction", "sendMessage"]
    assert sent[0].values["action"] == "typing"
