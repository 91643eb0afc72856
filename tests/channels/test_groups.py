"""Groups, through the loopback server: silent unless addressed, and nobody's records mixed."""

from __future__ import annotations

import time
from typing import Any

import pytest
from sqlalchemy import select, update

from bot.channels.telegram import carrying
from bot.channels.telegram.carrying import BURST
from bot.channels.telegram.serving import Service
from bot.records.models import Owner, Reminder
from tests.channels.chatting import (
    GROUP,
    IDA,
    LINE,
    MIRA,
    TOM,
    Chat,
    buttons,
    looked_for_due,
    replying,
    text,
    until,
)
from tests.channels.loopback import ME, Loopback, flood


@pytest.mark.parametrize(
    "line", [LINE, "hello all", "@other_bot " + LINE, "/dose@other_bot " + LINE, "/weather"]
)
async def test_what_is_not_for_us_gets_no_answer(club: Chat, line: str) -> None:
    assert await club.says(MIRA, line) == []


@pytest.mark.parametrize(
    "line",
    ["/dose " + LINE, "/dose@sink_test_bot " + LINE, "@sink_test_bot " + LINE,
     LINE + " @Sink_Test_Bot"],
)  # fmt: skip
async def test_a_command_or_a_mention_is_answered_with_a_reply(club: Chat, line: str) -> None:
    message = club.message(MIRA, line)
    (sent,) = await club.pushes("message", message)
    assert sent.values["text"].startswith("0.47 g of 20-20-20 powder in 5 l")
    assert "Not understood" not in sent.values["text"]
    assert sent.values["reply_parameters"] == {
        "message_id": message["message_id"], "allow_sending_without_reply": True,
    }  # fmt: skip


async def test_a_reply_to_us_is_answered_and_one_to_others_is_not(
    club: Chat, loopback: Loopback
) -> None:
    (shown,) = await club.says(MIRA, "/dose " + LINE)
    (sent,) = await club.says(TOM, LINE, **replying(shown, loopback))
    assert sent.values["text"].startswith("0.47 g")
    other = {"reply_to_message": club.message(MIRA, "x")}
    assert await club.says(TOM, LINE, **other) == []


async def test_an_answer_goes_to_its_topic(club: Chat) -> None:
    topic = {"message_thread_id": 77, "is_topic_message": True}
    (sent,) = await club.says(MIRA, "/dose " + LINE, **topic)
    assert sent.values["message_thread_id"] == 77


async def test_a_dose_is_short_with_its_cautions_and_a_link_to_the_details(club: Chat) -> None:
    (sent,) = await club.says(MIRA, "/dose " + LINE)
    lines = sent.values["text"].splitlines()
    assert len(lines) == 4
    assert all(line.startswith("- ") for line in lines[2:])
    assert buttons(sent) == ["Details"]
    url = sent.values["reply_markup"]["inline_keyboard"][0][0]["url"]
    private = Chat(club.loopback, club.records)
    full = await private.says(TOM, f"/start {url.partition('start=')[2]}")
    assert "Why:" in text(full)


async def test_the_details_are_those_of_the_answer_whoever_reads_them(club: Chat) -> None:
    await club.says(MIRA, "/dose my powder is 13-3-15, label 1 g per litre, call it club tub")
    private = Chat(club.loopback, club.records)
    await private.says(TOM, "my powder is 20-20-20, label 1 g per litre, call it blue tub")
    (sent,) = await club.says(MIRA, "/dose 5 l for vandas, half strength")
    url = sent.values["reply_markup"]["inline_keyboard"][0][0]["url"]
    full = text(await private.says(TOM, f"/start {url.partition('start=')[2]}"))
    assert full.splitlines()[0] == sent.values["text"].splitlines()[0]
    assert "club tub" in full
    assert "blue tub" not in full


async def test_a_reply_to_somebody_elses_answer_goes_on_from_it(
    club: Chat, loopback: Loopback
) -> None:
    (miras,) = await club.says(MIRA, "/dose 6 l 20-20-20 powder, phals, half strength")
    await club.says(TOM, "/dose 4 l 13-3-15 powder, cattleyas, quarter")
    (sent,) = await club.says(TOM, "half that", **replying(miras, loopback))
    # 6 l at a quarter of 200 mg/l N from 20 %: 1.5 g
    assert sent.values["text"].startswith("1.5 g of 20-20-20 powder in 6 l")


@pytest.mark.parametrize("line", ["Thanks!", "told you so", "sorry"])
async def test_small_talk_in_reply_gets_no_answer(
    club: Chat, loopback: Loopback, line: str
) -> None:
    (shown,) = await club.says(MIRA, "/dose " + LINE)
    assert await club.says(TOM, line, **replying(shown, loopback)) == []


async def test_forgetting_says_that_it_is_the_groups(club: Chat) -> None:
    await club.says(IDA, "/dose add 2 vandas in bark")
    assert "everything of this group" in text(await club.says(IDA, "/dose forget me"))


async def test_a_persons_records_are_not_used_in_a_group_unless_they_ask(club: Chat) -> None:
    private = Chat(club.loopback, club.records)
    await private.says(MIRA, "I have a masdevallia called Ruby in sphagnum, 8 cm pot")
    assert "Ruby" not in text(await club.says(MIRA, "/plants"))
    assert "Ruby" not in text(await club.says(TOM, "/plants my own plants"))
    assert "Ruby" in text(await club.says(MIRA, "/plants my own plants"))


async def test_what_a_group_keeps_is_the_groups(club: Chat) -> None:
    await club.says(MIRA, "/dose add 2 vandas in bark, greenhouse")
    assert "Vanda" in text(await club.says(TOM, "/plants"))
    private = Chat(club.loopback, club.records)
    assert "No plants on record" in text(await private.says(MIRA, "my plants"))


@pytest.mark.parametrize("line", ["our tap is 18 dH", "us gallons", "be quiet", "forget me"])
async def test_settings_of_a_group_are_for_its_administrators(club: Chat, line: str) -> None:
    assert "Only administrators" in text(await club.says(TOM, "/dose " + line))
    assert "Only administrators" not in text(await club.says(IDA, "/dose " + line))


async def test_an_anonymous_administrator_may_set_and_a_channel_may_not(club: Chat) -> None:
    anonymous = {
        "sender_chat": {"id": GROUP, "type": "supergroup", "title": "club"},
        "from": {"id": 1087968824, "is_bot": True, "first_name": "Group"},
    }
    assert "18 °dH" in text(await club.says(IDA, "/dose our tap is 18 dH", **anonymous))
    channel = {
        "sender_chat": {"id": -1005, "type": "channel", "title": "c"},
        "from": {"id": 136817688, "is_bot": True, "first_name": "Channel"},
    }
    assert "Only administrators" in text(await club.says(IDA, "/dose our tap is 3 dH", **channel))


async def test_a_quiet_group_is_answered_at_commands_only(club: Chat) -> None:
    await club.says(IDA, "/dose be quiet")
    assert await club.says(MIRA, "@sink_test_bot " + LINE) == []
    assert text(await club.says(MIRA, "/dose " + LINE)).startswith("0.47 g")
    await club.says(IDA, "/dose speak up")
    assert text(await club.says(MIRA, "@sink_test_bot " + LINE)).startswith("0.47 g")


async def test_a_button_is_for_who_asked(club: Chat) -> None:
    await club.says(IDA, "/dose add 2 vandas in bark")
    asked = (await club.says(IDA, "/dose forget me"))[-1]
    assert buttons(asked) == ["yes", "no"]
    sent = await club.taps(TOM, asked, "yes")
    assert [r.method for r in sent] == ["answerCallbackQuery"]
    assert "for the person who asked" in sent[0].values["text"]


async def test_who_floods_is_slowed_and_nobody_else(
    club: Chat, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(carrying, "REFILL_S", 3600.0)
    answered = 0
    for _ in range(BURST + 4):
        sent = await club.says(MIRA, "/dose " + LINE)
        answered += text(sent).startswith("0.47 g")
    assert answered == BURST
    assert text(await club.says(TOM, "/dose " + LINE)).startswith("0.47 g")


async def test_a_flood_is_told_once(club: Chat, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(carrying, "REFILL_S", 3600.0)
    said = ""
    for _ in range(BURST + 4):
        said += text(await club.says(MIRA, "/dose " + LINE))
    assert said.count("One at a time") == 1


async def test_a_group_keeps_its_records_when_it_gets_a_new_number(club: Chat) -> None:
    await club.says(IDA, "/dose our tap is 18 dH")
    new = GROUP - 900
    await club.says(IDA, None, migrate_to_chat_id=new)
    moved = Chat(club.loopback, club.records, new)
    await moved.says(IDA, None, migrate_from_chat_id=GROUP)
    assert "18 °dH" in text(await moved.says(TOM, "/dose my settings"))


async def test_a_new_number_that_was_only_asked_at_takes_the_records_over(club: Chat) -> None:
    await club.says(IDA, "/dose our tap is 18 dH")
    moved = Chat(club.loopback, club.records, GROUP - 900)
    await moved.says(TOM, "/dose " + LINE)  # it speaks before the move is told
    await club.says(IDA, None, migrate_to_chat_id=moved.group)
    assert "18 °dH" in text(await moved.says(TOM, "/dose my settings"))


async def test_a_new_number_with_records_keeps_them_and_forgetting_reaches_both(
    club: Chat, loopback: Loopback, caplog: pytest.LogCaptureFixture
) -> None:
    await club.says(IDA, "/dose our tap is 18 dH")
    moved = Chat(loopback, club.records, GROUP - 900)
    loopback.members[(GROUP - 900, IDA.id)] = "administrator"
    await moved.says(TOM, "/dose add 2 vandas in bark")
    await club.says(IDA, None, migrate_to_chat_id=moved.group)
    assert "Vanda" in text(await moved.says(TOM, "/plants"))
    assert "records at both numbers" in caplog.text
    async with club.records.reading() as session:
        assert len((await session.scalars(select(Owner.id))).all()) == 2
    await moved.says(IDA, "/dose forget me")
    await moved.says(IDA, "/dose yes")
    async with club.records.reading() as session:
        assert (await session.scalars(select(Owner.id))).all() == []


async def test_details_from_before_a_move_are_forgotten_with_the_group(
    club: Chat, loopback: Loopback
) -> None:
    await club.says(IDA, "/dose our tap is 18 dH")
    (sent,) = await club.says(MIRA, "/dose " + LINE)
    link = sent.values["reply_markup"]["inline_keyboard"][0][0]["url"].partition("start=")[2]
    moved = Chat(loopback, club.records, GROUP - 900)
    loopback.members[(GROUP - 900, IDA.id)] = "administrator"
    await club.says(IDA, None, migrate_to_chat_id=moved.group)
    private = Chat(loopback, club.records)
    assert "Why:" in text(await private.says(TOM, f"/start {link}"))
    await moved.says(IDA, "/dose forget me")
    await moved.says(IDA, "/dose yes")
    assert "Why:" not in text(await private.says(TOM, f"/start {link}"))


async def test_being_removed_stops_everything_for_the_group(
    club: Chat, service: Service, loopback: Loopback
) -> None:
    await club.says(IDA, "/dose I live in Porto")
    await club.says(IDA, "/dose remind us to flush every sunday at 9")
    loopback.fail = lambda method, values: flood(3600) if method == "sendMessage" else None
    answered = loopback.asked["sendMessage"]
    loopback.push("message", club.message(MIRA, "/dose " + LINE))
    await until(lambda: loopback.asked["sendMessage"] > answered)  # and waits for an hour now

    def now(status: str) -> dict[str, Any]:
        return {"user": ME, "status": status}

    changed = {
        "chat": {"id": GROUP, "type": "supergroup", "title": "club"}, "from": IDA.user,
        "date": int(time.time()), "old_chat_member": now("member"), "new_chat_member": now("left"),
    }  # fmt: skip
    assert await club.pushes("my_chat_member", changed) == []  # nothing waits any more
    loopback.fail = None
    async with club.records.writing() as session:
        await session.execute(update(Reminder).values(due_ms=1))
    before = len(loopback.accepted)
    await looked_for_due(service)
    await club.quiet()
    assert loopback.accepted[before:] == []


async def test_channels_and_linked_posts_are_not_answered(club: Chat) -> None:
    post = club.message(MIRA, "/dose " + LINE, is_automatic_forward=True)
    assert await club.pushes("message", post) == []
    channel = {**club.message(MIRA, "/dose " + LINE), "chat": {"id": -5, "type": "channel"}}
    assert await club.pushes("message", channel) == []


@pytest.mark.parametrize("what", [{"location": {"latitude": 1.0, "longitude": 1.0}}])
async def test_a_group_is_not_told_what_we_read(club: Chat, what: dict[str, Any]) -> None:
    assert await club.says(MIRA, None, **what) == []
