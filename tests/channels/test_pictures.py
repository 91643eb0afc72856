"""Answers with a picture, through the loopback server and in the terminal."""

from __future__ import annotations

import base64
import io
import json
from pathlib import Path

import pytest

from bot.channels import terminal
from bot.channels.telegram.showing import CAPTION_CHARS
from bot.conversation.answer import Answer, Picture
from bot.conversation.postbox import Work
from bot.conversation.turn import Incoming
from tests.channels.chatting import GROUP, LINE, MIRA, Chat, buttons, replying, text
from tests.channels.loopback import Loopback, error

PNG = base64.b64decode(
    "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg=="
)
PICTURE = Picture(name="salts.png", content=PNG, alt="Salts in the pot, falling since May")


class Drawn:
    """A conversation whose answers to lines with 'draw' have a picture."""

    def __init__(self, monkeypatch: pytest.MonkeyPatch) -> None:
        right = Work.answer

        async def answer(work: Work, incoming: Incoming) -> Answer:
            plain = await right(work, Incoming(**_fields(incoming)))
            if "draw" not in incoming.text:
                return plain
            wanted = {"picture": PICTURE, "reply": self.reply or plain.reply}
            return plain.model_copy(update=wanted)

        self.reply = ""
        monkeypatch.setattr(Work, "answer", answer)


def _fields(incoming: Incoming) -> dict[str, object]:
    return {n: getattr(incoming, n) for n in Incoming.__slots__} | {
        "text": incoming.text.replace(" draw", "")
    }


@pytest.fixture
def drawn(monkeypatch: pytest.MonkeyPatch) -> Drawn:
    return Drawn(monkeypatch)


async def test_a_picture_carries_its_text_and_its_buttons(chat: Chat, drawn: Drawn) -> None:
    (sent,) = await chat.says(MIRA, LINE + " draw")
    assert sent.method == "sendPhoto"
    assert sent.values["photo"] == PNG
    assert sent.values["caption"].startswith("0.47 g of 20-20-20 powder in 5 l")
    assert "why" in buttons(sent)
    (why,) = await chat.says(MIRA, "why")
    assert why.method == "sendMessage"


async def test_a_button_below_a_picture_works(chat: Chat, drawn: Drawn) -> None:
    (sent,) = await chat.says(MIRA, LINE + " draw")
    tapped = await chat.taps(MIRA, sent, "why")
    assert "× 1/2 winter" in text(tapped)


@pytest.mark.parametrize(("letter", "count"), [("x", CAPTION_CHARS), ("🌱", CAPTION_CHARS // 2)])
async def test_the_longest_caption_fits(chat: Chat, drawn: Drawn, letter: str, count: int) -> None:
    drawn.reply = letter * count
    (sent,) = await chat.says(MIRA, LINE + " draw")
    assert sent.values["caption"] == drawn.reply


@pytest.mark.parametrize("letter", ["x", "🌱"])
async def test_a_longer_text_follows_as_a_message_of_its_own(
    chat: Chat, drawn: Drawn, letter: str
) -> None:
    drawn.reply = letter * (CAPTION_CHARS + 1)
    picture, message = await chat.says(MIRA, LINE + " draw")
    assert (picture.method, message.method) == ("sendPhoto", "sendMessage")
    assert picture.values["caption"] == PICTURE.alt
    assert buttons(picture) == []
    assert message.values["text"] == drawn.reply
    assert "why" in buttons(message)


async def test_in_a_group_it_replies_in_its_topic(
    chat: Chat, drawn: Drawn, loopback: Loopback
) -> None:
    club = Chat(loopback, chat.records, GROUP)
    message = club.message(MIRA, f"/dose {LINE} draw", message_thread_id=77, is_topic_message=True)
    (sent,) = await club.pushes("message", message)
    assert sent.method == "sendPhoto"
    assert sent.values["message_thread_id"] == 77
    assert sent.values["reply_parameters"]["message_id"] == message["message_id"]
    assert buttons(sent) == ["Details"]
    (half,) = await club.says(MIRA, "half that", **replying(sent, loopback))
    assert half.values["text"].startswith("0.23 g")


async def test_an_edited_question_gets_its_new_answer_below_or_without_a_picture(
    chat: Chat, drawn: Drawn
) -> None:
    message = chat.message(MIRA, LINE + " draw")
    await chat.pushes("message", message)
    (second,) = await chat.pushes("edited_message", {**message, "text": LINE + ", phals"})
    assert second.method == "sendMessage"  # no edit makes a text of a picture
    third = {**message, "text": LINE + ", phals, half strength"}
    (edited,) = await chat.pushes("edited_message", third)
    assert edited.method == "editMessageText"
    assert edited.values["message_id"] == second.made


async def test_a_picture_that_is_refused_leaves_its_text(
    chat: Chat, drawn: Drawn, loopback: Loopback
) -> None:
    def refuse(method: str, values: dict[str, object]) -> object:
        return (
            error(400, "Bad Request: PHOTO_INVALID_DIMENSIONS") if method == "sendPhoto" else None
        )

    loopback.fail = refuse  # type: ignore[assignment]
    (sent,) = await chat.says(MIRA, LINE + " draw")
    assert sent.method == "sendMessage"
    assert sent.values["text"].startswith("0.47 g")


async def test_the_terminal_says_what_is_on_it_and_where_it_is(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    from datetime import date

    from bot.conversation.ask import Setting, ask

    async def answered(line: str) -> Answer:
        plain = ask(line, Setting(today=date(2026, 6, 1)))
        return plain.model_copy(update={"picture": PICTURE})

    monkeypatch.chdir(tmp_path)
    monkeypatch.setattr("sys.stdin", io.TextIOWrapper(io.BytesIO(f"{LINE}\n{LINE}\n".encode())))
    await terminal.chat("en", answered, tmp_path / "history")
    shown = capsys.readouterr().out
    assert f"[{PICTURE.alt}: saved here as salts.png]" in shown
    assert "saved here as salts-2.png" in shown
    assert (tmp_path / "salts.png").read_bytes() == PNG


async def test_json_holds_the_picture_as_base64(chat: Chat) -> None:
    from datetime import date

    from bot.conversation.ask import Setting, ask

    plain = ask(LINE, Setting(today=date(2026, 6, 1)))
    assert "picture" not in json.loads(plain.as_json())
    data = json.loads(plain.model_copy(update={"picture": PICTURE}).as_json())
    assert base64.b64decode(data["picture"]["content"]) == PNG
    assert data["picture"]["alt"] == PICTURE.alt


async def test_a_dose_card_that_is_asked_for_goes_out_as_a_photo(chat: Chat) -> None:
    await chat.says(MIRA, LINE)
    (sent,) = (r for r in await chat.says(MIRA, "card") if r.method != "sendChatAction")
    assert sent.method == "sendPhoto"
    assert sent.values["photo"].startswith(b"\x89PNG")
    assert sent.values["caption"].startswith("0.47 g of 20-20-20 powder in 5 l")
