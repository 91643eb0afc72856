"""A day of a large group, as its administrator and its members live it: what made one doubt."""

from __future__ import annotations

from datetime import date
from typing import Any

import pytest
from click.testing import CliRunner

from bot.channels.telegram.hearing import asked_by_command
from bot.channels.telegram.showing import BUTTON_CHARS, Place, choices
from bot.cli import cli
from bot.conversation.ask import Setting, ask
from bot.conversation.turns.guide import TOPICS
from bot.conversation.wording import wording
from tests.channels.chatting import GROUP, IDA, LINE, MIRA, TOM, Chat, Who, buttons, replying, text
from tests.channels.loopback import ME, Loopback, Request, _member

UTE, LUZ = Who(22, "Ute", "de"), Who(23, "Luz", "es")
CLUB = {"id": GROUP, "type": "supergroup", "title": "club"}
EXAMPLES = (
    "first", "group", "plants", "feeds", "water", "plan", "home", "can", "reminders", "today",
)  # fmt: skip
#: What a member who may not do anything may not do.
RIGHTS = (
    "is_member", "can_send_messages", "can_send_audios", "can_send_documents", "can_send_photos",
    "can_send_videos", "can_send_video_notes", "can_send_voice_notes", "can_send_polls",
    "can_send_other_messages", "can_add_web_page_previews", "can_change_info", "can_invite_users",
    "can_pin_messages", "can_manage_topics", "can_edit_tag", "can_react_to_messages",
)  # fmt: skip


def us(status: str) -> dict[str, Any]:
    """The bot as a member of a chat."""
    if status != "restricted":
        return _member(status, ME)
    rights = dict.fromkeys(RIGHTS, False) | {"is_member": True}
    return {"status": status, "user": ME, "until_date": 0, **rights}


async def becomes(club: Chat, before: str, after: str, who: Who = IDA) -> list[Request]:
    """Somebody lets the bot in, shows it out, or changes what it may do."""
    change = {
        "chat": CLUB, "from": who.user, "date": 1_780_000_000,
        "old_chat_member": us(before), "new_chat_member": us(after),
    }  # fmt: skip
    return await club.pushes("my_chat_member", change)


# --- let in, shown out ----------------------------------------------------------------------------


@pytest.mark.parametrize(("who", "code"), [(IDA, "en"), (UTE, "de"), (LUZ, "es")])
async def test_who_lets_us_in_reads_how_to_ask(club: Chat, who: Who, code: str) -> None:
    (sent,) = await becomes(club, "left", "member", who)
    told = wording(code).say("post-added", mentions="no", known="no")
    assert sent.values["text"] == told
    assert sent.values["chat_id"] == GROUP
    assert "/dose" in told
    assert len(told.splitlines()) <= 3


async def test_a_mention_is_only_promised_where_it_reaches_us(club: Chat) -> None:
    assert "mention me" not in text(await becomes(club, "left", "member"))
    assert "mention me" in text(await becomes(club, "left", "administrator"))


async def test_a_change_of_rights_is_no_news_for_the_group(club: Chat) -> None:
    assert await becomes(club, "member", "administrator") == []
    assert await becomes(club, "administrator", "member") == []


async def test_who_lets_us_in_again_reads_that_the_records_are_still_there(club: Chat) -> None:
    await club.says(IDA, "/dose our tap is 18 dH")
    await becomes(club, "member", "left")
    assert "still here" in text(await becomes(club, "left", "member"))
    assert "18 °dH" in text(await club.says(TOM, "/dose our settings"))


async def test_where_we_may_not_write_nothing_waits(club: Chat) -> None:
    from sqlalchemy import select

    from bot.records.models import Reminder

    for line in ("I live in Porto", "remind us to flush every sunday at 9"):
        await club.says(IDA, f"/dose {line}")
    states = []
    for before, after in (("member", "restricted"), ("restricted", "administrator")):
        assert await becomes(club, before, after) == []
        async with club.records.reading() as session:
            states.append(await session.scalar(select(Reminder.state)))
    assert states == ["paused", "active"]


@pytest.mark.parametrize("token", ["wrong", "'123:abc'", "123:", "123:a b"])
def test_what_is_no_token_is_told_in_one_sentence(
    monkeypatch: pytest.MonkeyPatch, token: str
) -> None:
    monkeypatch.setenv("SINKSIDE_TELEGRAM_TOKEN", token)
    done = CliRunner().invoke(cli, ["serve"])
    assert done.exit_code == 2
    assert "is no token" in done.output
    assert token not in done.output


# --- what an administrator asks -------------------------------------------------------------------


@pytest.mark.parametrize(
    ("line", "code"),
    [
        ("what do you store about us", "kept-group"),
        ("do you read our messages?", "kept-group"),
        ("what did people ask today", "kept-no-questions"),
        ("how do I remove you", "remove-me"),
        ("how do I make you quiet at night", "quiet-night"),
        ("be quiet at night", "quiet-night"),
    ],
)
async def test_an_administrators_question_has_its_answer(club: Chat, line: str, code: str) -> None:
    assert text(await club.says(IDA, f"/dose {line}")) == wording("en").say(code, how="other")


@pytest.mark.parametrize("line", ["forget the group", "delete the group's data", "forget us"])
async def test_the_groups_data_is_deleted_in_the_words_one_would_use(club: Chat, line: str) -> None:
    await club.says(IDA, "/dose our tap is 18 dH")
    asked = await club.says(IDA, f"/dose {line}")
    assert buttons(asked[-1]) == ["yes", "no"]
    await club.taps(IDA, asked[-1], "yes")
    assert "Nothing on record" in text(await club.says(IDA, "/dose our settings"))


async def test_quiet_is_seen_in_the_settings(club: Chat) -> None:
    await club.says(IDA, "/dose be quiet")
    await club.says(IDA, "/dose quiet hours 22 to 7")
    said = text(await club.says(IDA, "/dose our settings"))
    assert wording("en").say("quiet-line") in said
    assert "22:00 to 7:00" in said


async def test_a_command_with_our_name_is_ours_whatever_it_is(club: Chat) -> None:
    await club.says(IDA, "/dose our tap is 18 dH")
    assert "18 °dH" in text(await club.says(IDA, "/settings@sink_test_bot"))
    assert await club.says(IDA, "/settings") == []
    assert await club.says(IDA, "/settings@other_bot") == []


async def test_the_group_can_be_reminded_in_those_words(club: Chat) -> None:
    await club.says(IDA, "/dose I live in Porto")
    said = text(await club.says(IDA, "/dose remind the group every first Sunday at 9 to flush"))
    assert "flush all plants on the first Sunday" in said


# --- what the others do not want to read ----------------------------------------------------------


@pytest.mark.parametrize("line", ["/dose stupid bot", "@sink_test_bot hello", "@sink_test_bot"])
async def test_what_is_no_question_gets_one_line(club: Chat, line: str) -> None:
    (sent,) = await club.says(MIRA, line)
    assert len(sent.values["text"].splitlines()) == 1
    assert "/dose" in sent.values["text"]


async def test_what_comes_next_is_an_administrators(club: Chat) -> None:
    await club.says(IDA, "/dose my powder is 20-20-20, label 1 g per litre")
    words = wording("en")
    assert text(await club.says(TOM, "/help")) == words.say("help-group")
    example = words.say("help-example-plants")
    assert words.say("help-next-plants", example=example) in text(await club.says(IDA, "/help"))


@pytest.mark.parametrize("line", ["export", "calendar"])
async def test_files_for_all_are_an_administrators(club: Chat, line: str) -> None:
    await club.says(IDA, "/dose our tap is 18 dH")
    refused = [r for r in await club.says(TOM, f"/dose {line}") if r.method != "getChatMember"]
    assert "Only administrators" in text(refused)
    assert [r.method for r in refused] == ["sendMessage"]
    assert "Only administrators" not in text(await club.says(IDA, f"/dose {line}"))


@pytest.mark.parametrize(
    "line",
    ["export my own data", "remind me every sunday at 9 to flush my own plants",
     "calendar of my own plants"],
)  # fmt: skip
async def test_what_is_ones_own_is_not_spread_out_before_the_group(club: Chat, line: str) -> None:
    private = Chat(club.loopback, club.records)
    await private.says(TOM, "add a vanda called Ruby in bark")
    sent = await club.says(TOM, f"/dose {line}")
    assert [r.method for r in sent] == ["sendMessage"]
    assert text(sent) == wording("en").say("refuse-own-private")


async def test_my_own_plants_are_listed_when_asked_for(club: Chat) -> None:
    private = Chat(club.loopback, club.records)
    await private.says(TOM, "add a vanda called Ruby in bark")
    assert "Ruby" in text(await club.says(TOM, "/dose my own plants"))


async def test_a_menu_answers_in_the_language_of_who_opens_it(club: Chat) -> None:
    await club.says(LUZ, "/dose 5 litros 20-20-20 en polvo, phalaenopsis, un cuarto")
    plants = wording("de").say("plants-none-group")
    assert text(await club.says(UTE, "/plants")) == plants


# --- nobody is led astray -------------------------------------------------------------------------


@pytest.mark.parametrize(
    "line",
    ["that's too much, I always use full strength", "nonsense, full strength never hurt anybody",
     "I disagree, full strength"],
)  # fmt: skip
async def test_a_view_is_no_order_for_a_stronger_dose(
    club: Chat, loopback: Loopback, line: str
) -> None:
    (shown,) = await club.says(MIRA, f"/dose {LINE}")
    said = text(await club.says(TOM, line, **replying(shown, loopback)))
    assert said == wording("en").say("argue-stays")


async def test_a_habit_with_figures_is_judged(club: Chat, loopback: Loopback) -> None:
    (shown,) = await club.says(MIRA, f"/dose {LINE}")
    line = "I use 2 g per litre every time and they love it"
    said = text(await club.says(TOM, line, **replying(shown, loopback)))
    # plants unknown: 125 mg/l N are the most, so 0.625 g of 20 % in a litre
    assert said.startswith("Too much: 3.2 times the most. At most 0.62 g in 1 l")


async def test_is_that_too_much_tells_why_it_is_so_much(club: Chat, loopback: Loopback) -> None:
    (shown,) = await club.says(MIRA, f"/dose {LINE}")
    said = text(await club.says(TOM, "is that too much?", **replying(shown, loopback)))
    assert "1/4 asked" in said


async def test_a_reply_puts_the_feed_right_and_keeps_the_rest(
    club: Chat, loopback: Loopback
) -> None:
    (shown,) = await club.says(MIRA, "/dose 5 l 20-20-20 powder, phals, quarter")
    said = text(await club.says(TOM, "no, it is 10-10-10 powder", **replying(shown, loopback)))
    assert said.startswith("2.5 g of 10-10-10 powder in 5 l")  # a quarter of 200 mg/l N from 10 %


async def test_a_reply_to_an_older_answer_is_not_taken_for_the_newest(
    club: Chat, loopback: Loopback
) -> None:
    (older,) = await club.says(MIRA, "/dose 6 l 20-20-20 powder, phals, half strength")
    (newer,) = await club.says(MIRA, "/dose 2 l 13-3-15 powder, masdevallia, quarter")
    for who in (MIRA, TOM):
        said = text(await club.says(who, "half that", **replying(older, loopback)))
        assert said == wording("en").say("refuse-overtaken")
    said = text(await club.says(TOM, "half that", **replying(newer, loopback)))
    assert "in 2 l" in said


async def test_why_below_an_older_dose_does_not_explain_the_newest(chat: Chat) -> None:
    (older,) = await chat.says(MIRA, "6 l 20-20-20 powder, phals, winter")
    (newer,) = await chat.says(MIRA, "2 l 13-3-15 powder, masdevallia, summer")
    assert wording("en").say("refuse-overtaken") in text(await chat.taps(MIRA, older, "why"))
    assert "winter" not in text(await chat.taps(MIRA, newer, "why"))


async def test_a_long_question_that_names_the_water_is_a_question(club: Chat) -> None:
    line = "5 l 20-20-20 powder for my 3 phals in bark, but I have only tap water, quarter"
    assert text(await club.says(TOM, f"/dose {line}")).startswith("1.2 g of 20-20-20 powder in 5 l")


async def test_the_plan_of_another_day_is_of_that_day(club: Chat) -> None:
    await club.says(IDA, "/dose add 2 vandas in bark, 12 cm pots")
    assert "tomorrow" in text(await club.says(TOM, "/plan tomorrow")).splitlines()[0]


@pytest.mark.parametrize(
    ("line", "code"),
    [
        ("can I spray pesticide in a child's room?", "refuse-pests"),
        ("how much neem oil per litre", "refuse-pests"),
        ("5 ml bleach in 1 litre for my phals", "refuse-pests"),
        ("can I eat the vanilla pods after feeding", "refuse-food"),
        ("5 l 20-20-20 powder for my tomatoes", "refuse-food"),
        ("I got powder in my eye", "hurt-call"),
    ],
)
async def test_what_feed_is_not_for_is_said_at_once(club: Chat, line: str, code: str) -> None:
    assert text(await club.says(MIRA, f"/dose {line}")) == wording("en").say(code, how="other")


async def test_a_mention_in_a_topic_is_no_small_talk(club: Chat) -> None:
    beginning = {
        "message_id": 77, "date": 1, "chat": CLUB, "from": MIRA.user,
        "message_thread_id": 77, "is_topic_message": True,
        "forum_topic_created": {"name": "feeding", "icon_color": 1},
    }  # fmt: skip
    topic = {"message_thread_id": 77, "is_topic_message": True, "reply_to_message": beginning}
    (sent,) = await club.says(TOM, "@sink_test_bot hello", **topic)
    assert sent.values["message_thread_id"] == 77


async def test_a_member_is_not_led_to_put_their_plants_into_the_groups_records(club: Chat) -> None:
    for line in ("/plants", "/plan", "/dose when should I feed"):
        assert text(await club.says(TOM, line)) == wording("en").say("plants-none-group")


async def test_another_administrator_answers_for_one_who_stays_anonymous(club: Chat) -> None:
    anonymous = {"sender_chat": CLUB, "from": {"id": 1, "is_bot": True, "first_name": "Group"}}
    await club.says(IDA, "/dose our tap is 18 dH", **anonymous)
    asked = await club.says(IDA, "/dose forget the group", **anonymous)
    said = await club.taps(TOM, asked[-1], "yes")
    assert wording("en").say("post-for-administrators") in text(said)
    assert "Deleted" in text(await club.taps(IDA, asked[-1], "yes"))


def test_a_choice_is_a_button_whole_or_not_at_all() -> None:
    answer = ask("hello", Setting(today=date(2026, 6, 6))).model_copy(
        update={"choices": ["y" * 65, "yes"]}
    )
    place = Place(GROUP, 1, None, 11, "11", True, 0, "sink_test_bot")
    assert [b["text"] for row in choices(answer, place) for b in row] == ["yes"]


@pytest.mark.parametrize("language", ["en", "de", "pl", "es"])
def test_what_is_shown_to_tap_fits_a_button(language: str) -> None:
    words = wording(language)
    shown = [words.say(f"help-example-{e}") for e in EXAMPLES]
    shown += [e.strip() for t in TOPICS for e in words.say(f"topic-{t}-say").split("|")[:3]]
    assert [text for text in shown if len(text) > BUTTON_CHARS] == []


async def test_a_card_that_is_saved_twice_is_on_record_once(chat: Chat) -> None:
    query = {"id": "1", "from": MIRA.user, "offset": "", "query": "2 l 20-20-20 powder, phal, bark"}
    (shown,) = await chat.pushes("inline_query", query)
    rows = shown.values["results"][0]["reply_markup"]["inline_keyboard"]
    save = next(b["url"] for row in rows for b in row if "start=s_" in b["url"])
    start = f"/start {save.partition('start=')[2]}"
    assert "On record" in text(await chat.says(TOM, start))
    assert text(await chat.says(TOM, start)) == wording("en").say("post-saved-already")
    await chat.says(TOM, "undo")
    assert "On record" in text(await chat.says(TOM, start))


# --- reminders and faults -------------------------------------------------------------------------


@pytest.mark.parametrize("line", ["later", "skip"])
async def test_when_all_are_reminded_is_not_for_a_member_to_move(club: Chat, line: str) -> None:
    from tests.channels.test_reminders import pinged

    for said in ("I live in Porto", "remind us to flush every sunday at 9"):
        await club.says(IDA, f"/dose {said}")
    ping = await pinged(club)
    said = text(await club.says(TOM, line, **replying(ping, club.loopback)))
    assert said == wording("en").say("refuse-administrators-reminders")
    (note,) = [r for r in await club.taps(TOM, ping, "done") if r.method.startswith("answer")]
    assert note.values["text"] == wording("en").say("post-for-administrators")
    assert "Only administrators" not in text(
        await club.says(IDA, line, **replying(ping, club.loopback))
    )


async def test_an_aside_does_not_end_the_first_meeting(chat: Chat) -> None:
    await chat.says(TOM, "/start")
    await chat.says(TOM, "Gdynia")
    await chat.says(TOM, "what's on today")
    assert "On your shelf" in text(await chat.says(TOM, "20-20-20 powder, 1 g per litre"))
    assert "On record: 2 Phalaenopsis" in text(await chat.says(TOM, "2 phals in bark"))


@pytest.mark.parametrize(
    ("written", "chat_id", "called"),
    [("/dose 5 l", GROUP, True), ("/plan", GROUP, True), ("/weather", GROUP, False),
     ("5 l please", GROUP, False), ("/dose 5 l", 11, False)],
)  # fmt: skip
def test_a_command_in_a_group_is_owed_an_apology(written: str, chat_id: int, called: bool) -> None:
    message = {"message_id": 4, "chat": {"id": chat_id}, "text": written}
    place = asked_by_command({"update_id": 1, "message": message})
    assert bool(place) == called
    assert not called or place["reply_parameters"]["message_id"] == 4
