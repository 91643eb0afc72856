"""From an answer to requests of the messenger: pages, buttons, files and cards."""

from __future__ import annotations

import base64
import json
from dataclasses import dataclass
from typing import Any

from bot.conversation.answer import Answer, File, Picture
from bot.conversation.postbox import Letter, Work, edited_anew, plain
from bot.conversation.wording import Wording

#: A page of a phone [characters, lines]; the messenger takes at most 4096.
PAGE_CHARS = 1500
PAGE_LINES = 30
#: In a group an answer shows its amount, how to measure it and so many cautions.
GROUP_CAUTIONS = 2
#: Below a picture the messenger takes so much text [UTF-16 units].
CAPTION_CHARS = 1024
#: What an answer is remembered as whose text stands below a picture: no edit can reach it.
PICTURE = "picture"
#: Longer choices are not shown as buttons [characters].
BUTTON_CHARS = 64
_ROW_CHARS = 24
_MOST_BUTTONS = 12

Keyboard = list[list[dict[str, Any]]]


@dataclass(frozen=True, slots=True)
class Place:
    """Where an answer goes.

    Attributes
    ----------
    chat_id : the chat
    message_id : the message that is answered, None where there is none
    topic : of a group with topics
    user_id : who may press the buttons
    person : who asked, as the records name them
    in_group : whether others read along
    stamp : when the question was asked [s since 1970]
    me : our own name, for links
    """

    chat_id: int
    message_id: int | None
    topic: int | None
    user_id: int
    person: str
    in_group: bool
    stamp: int
    me: str

    @property
    def group(self) -> str | None:
        """The group, as the records name it."""
        return str(self.chat_id) if self.in_group else None

    def message(self, text: str, keyboard: Keyboard | None = None, kind: str = "help") -> Letter:
        """A message to send there; a group sees what it replies to."""
        body: dict[str, Any] = {"text": text, "link_preview_options": {"is_disabled": True}}
        body |= self._around(keyboard)
        return Letter(str(self.chat_id), "sendMessage", body, self._answers(kind))

    def pictured(
        self, picture: Picture, text: str, keyboard: Keyboard | None, kind: str
    ) -> list[Letter]:
        """A picture with its text below it; a text too long for that follows by itself."""
        fits = _units(text) <= CAPTION_CHARS
        content = base64.b64encode(picture.content).decode("ascii")
        body: dict[str, Any] = {"photo": {"name": picture.name, "content": content}}
        body |= {"caption": text if fits else _cut(picture.alt)}
        body |= self._around(keyboard if fits else None)
        answers = self._answers(PICTURE if edited_anew(kind) else kind) if fits else None
        shown = Letter(str(self.chat_id), "sendPhoto", body, answers)
        return [shown] if fits else [shown, self.message(text, keyboard, kind)]

    def _around(self, keyboard: Keyboard | None) -> dict[str, Any]:
        """Where a message goes, what it replies to and the buttons below it."""
        replies = self.in_group and self.message_id is not None
        return plain({
            "chat_id": self.chat_id,
            "message_thread_id": self.topic,
            "reply_parameters": {
                "message_id": self.message_id, "allow_sending_without_reply": True,
            } if replies else None,
            "reply_markup": {"inline_keyboard": keyboard} if keyboard else None,
        })  # fmt: skip

    def edit(self, answer_id: int, text: str, keyboard: Keyboard, kind: str) -> Letter:
        """An earlier answer of ours with another text."""
        body = {
            "chat_id": self.chat_id,
            "message_id": answer_id,
            "text": text,
            "link_preview_options": {"is_disabled": True},
            "reply_markup": {"inline_keyboard": keyboard},
        }
        return Letter(str(self.chat_id), "editMessageText", body, self._answers(kind))

    def _answers(self, kind: str) -> dict[str, Any] | None:
        """What is remembered of this answer once it is sent."""
        if self.message_id is None:
            return None
        return {
            "chat_id": self.chat_id,
            "message_id": self.message_id,
            "person": self.person,
            "kind": kind,
        }


def _units(text: str) -> int:
    """The length of a text as the messenger counts it [UTF-16 units]."""
    return len(text.encode("utf-16-le", "surrogatepass")) // 2


def _cut(text: str) -> str:
    """The beginning of a text that surely fits below a picture: no character is over 2 units."""
    return text if _units(text) <= CAPTION_CHARS else f"{text[: CAPTION_CHARS // 2 - 1]}…"


async def shown(work: Work, answer: Answer, place: Place, words: Wording) -> tuple[str, Keyboard]:
    """The text of an answer's first page, and what can be pressed below it."""
    text, keyboard = answer.reply, choices(answer, place)
    if place.in_group and answer.kind == "dose":
        # The answer itself: asked again elsewhere, the question could mean another thing.
        name = await work.keep_card(answer.reply, person=place.person, group=place.group)
        link = f"https://t.me/{place.me}?start=d_{name}"
        return short(answer), [[{"text": words.say("post-details"), "url": link}]]
    pages = paged(text)
    if len(pages) > 1:
        name = await work.keep_card(
            json.dumps(pages, ensure_ascii=False), person=place.person, group=place.group
        )
        keyboard = [*keyboard, [next_button(name, 2, len(pages), place.user_id, words)]]
    return pages[0], keyboard


def short(answer: Answer) -> str:
    """An answer for a group: it stands on its own, with the cautions that matter most."""
    lines = answer.reply.splitlines()
    said_first = [c.text for c in answer.cautions if lines and c.text == lines[0]]
    left = [c.text for c in answer.cautions if c.text not in said_first]
    cautions = [f"- {text}" for text in left[: GROUP_CAUTIONS - len(said_first)]]
    notes = lines[lines.index(last) + 1 :] if (last := _last_caution(lines)) else []
    return "\n".join([*lines[: 2 + len(said_first)], *cautions, *notes])


def _last_caution(lines: list[str]) -> str:
    return next((line for line in reversed(lines) if line.startswith("- ")), "")


def choices(answer: Answer, place: Place) -> Keyboard:
    """Answers to tap, as many in a row as a phone shows."""
    rows: Keyboard = []
    width = 0
    for index, text in enumerate(answer.choices[:_MOST_BUTTONS]):
        if (
            len(text) > BUTTON_CHARS
        ):  # what is tapped is read as it stands: a part says another thing
            continue
        button = {"text": text, "callback_data": f"c{index}.{place.user_id}.{place.stamp}"}
        if rows and width + len(text) <= _ROW_CHARS:
            rows[-1].append(button)
            width += len(text)
        else:
            rows.append([button])
            width = len(text)
    return rows


def next_button(name: str, page: int, pages: int, user_id: int, words: Wording) -> dict[str, Any]:
    """The button to the next page."""
    text = words.say("post-next", page=page, pages=pages)
    return {"text": text, "callback_data": f"p{page}.{user_id}.{name}"}


def paged(text: str) -> list[str]:
    """A text in pages, parted at the ends of its lines."""
    pages: list[list[str]] = [[]]
    size = 0
    for line in text.splitlines():
        for piece in [line[i : i + PAGE_CHARS] for i in range(0, len(line), PAGE_CHARS)] or [""]:
            if size + len(piece) > PAGE_CHARS or len(pages[-1]) >= PAGE_LINES:
                pages.append([])
                size = 0
            pages[-1].append(piece)
            size += len(piece) + 1
    return ["\n".join(page) for page in pages if any(line.strip() for line in page)] or ["…"]


def documents(file: File, place: Place) -> list[Letter]:
    """A file, or each of several."""
    files = file.files if file.files is not None else {file.name: file.content}
    return [
        Letter(
            str(place.chat_id),
            "sendDocument",
            plain({
                "chat_id": place.chat_id,
                "message_thread_id": place.topic,
                "file": {"name": name, "content": content},
            }),
        )
        for name, content in files.items()
    ]  # fmt: skip


def card(answer: Answer, question: str, name: str, me: str, words: Wording) -> dict[str, Any]:
    """A dose to post in any chat, with what it assumes and its cautions on it.

    `name` is what the question is kept as.
    """
    rows = [[{"text": words.say("post-own-water"), "url": f"https://t.me/{me}?start=q_{name}"}]]
    if answer.understood.genera:
        save = f"https://t.me/{me}?start=s_{name}"
        rows.append([{"text": words.say("post-save"), "url": save}])
    lines = answer.reply.splitlines()
    return {
        "type": "article",
        "id": name,
        "title": lines[0],
        "description": question[:200],
        "input_message_content": {
            "message_text": paged(answer.reply)[0],
            "link_preview_options": {"is_disabled": True},
        },
        "reply_markup": {"inline_keyboard": rows},
    }
