"""An evening of one invented group, told through the loopback server update by update.

`python -m tests.channels.evening` writes the approved evening anew; read it before you keep it.
How the script is written stands at its head.
"""

from __future__ import annotations

import asyncio
import tempfile
from collections.abc import Iterator
from dataclasses import dataclass, field
from datetime import UTC, datetime, tzinfo
from pathlib import Path
from typing import Any, Self
from unittest.mock import patch

from bot.channels.telegram import carrying
from bot.records import open_records
from tests.channels.chatting import GROUP, Chat, Who, entities, replying, served
from tests.channels.loopback import ME, Loopback, Request

FOLDER = Path(__file__).resolve().parent.parent.parent / "fixtures" / "evening"
SCRIPT = FOLDER / "script.txt"
APPROVED = FOLDER / "approved.txt"
#: The date of every message: the seasons stand still.
BEGIN = datetime(2026, 6, 6, 18, tzinfo=UTC)
SAYING = (
    "answerCallbackQuery", "answerInlineQuery", "sendMessage", "editMessageText", "sendDocument",
)  # fmt: skip
_STICKER = {
    "file_id": "s", "file_unique_id": "s", "type": "regular", "width": 9, "height": 9,
    "is_animated": False, "is_video": False,
}  # fmt: skip
_PHOTO = [{"file_id": "p", "file_unique_id": "p", "width": 9, "height": 9}]


@dataclass(frozen=True, slots=True)
class Line:
    """One update of a script: who does what where, of whose answer, and so long after the last."""

    who: str
    where: str
    does: str
    whose: str
    text: str
    pause_s: float


class Standing(datetime):
    """A clock that shows the beginning of the evening."""

    @classmethod
    def now(cls, tz: tzinfo | None = None) -> Self:
        return cls.fromtimestamp(BEGIN.timestamp(), tz)


@dataclass(slots=True)
class Pacing:
    """The clock by which the pace of questions is kept [s]."""

    seconds: float = 0.0

    def monotonic(self) -> float:
        return self.seconds


def administrators(script: Path = SCRIPT) -> list[str]:
    """Who may set what holds for the group."""
    lines = script.read_text(encoding="utf-8").splitlines()
    return [line[1:].strip() for line in lines if line.startswith("*")]


def updates(script: Path = SCRIPT) -> Iterator[Line]:
    """Each update of a script."""
    pause_s = 0.0
    for line in script.read_text(encoding="utf-8").splitlines():
        if line.startswith("+"):
            pause_s = float(line[1:])
        elif line and line[0] not in "#*":
            doing, _, text = line.partition("|")
            who, where, does, *whose = doing.split()
            yield Line(who, where, does, "".join(whose), text.strip(), pause_s)


@dataclass
class Evening:
    """What was said so far, and what can be answered, edited or tapped."""

    chat: Chat
    people: dict[str, Who] = field(default_factory=dict)
    topics: dict[str, int] = field(default_factory=dict)
    messages: dict[tuple[str, str], dict[str, Any]] = field(default_factory=dict)
    answers: dict[tuple[str, str], list[Request]] = field(default_factory=dict)
    numbers: dict[int, int] = field(default_factory=dict)  # of updates, by message

    def who(self, name: str) -> Who:
        """Somebody, met now or before."""
        return self.people.setdefault(name, Who(101 + len(self.people), name))

    async def play(self, number: int, line: Line) -> list[Request]:
        """Let one update happen; returns what was said to it."""
        who = self.who(line.who)
        self.chat.group = None if line.where in ("private", "inline") else GROUP
        if line.does == "types":
            query = {"id": str(number), "from": who.user, "query": line.text, "offset": ""}
            sent = await self.chat.pushes("inline_query", query)
        elif line.does == "taps":
            sent = await self.chat.pushes("callback_query", self._tap(number, who, line))
        elif line.does == "edits":
            sent = await self.chat.pushes("edited_message", self._edited(line))
        else:
            sent = await self.chat.pushes("message", self._written(number, who, line))
        said = [r for method in SAYING for r in sent if r.method == method]
        for request in said:
            if request.made is not None:
                self.numbers.setdefault(request.made, number)
                self.answers.setdefault((line.where, line.who), []).append(request)
        return said

    def _answers(self, line: Line) -> list[Request]:
        """What somebody was answered, the last first, in this place where no other is named."""
        where, _, whose = line.whose.rpartition(":")
        return self.answers[where or line.where, whose][::-1]

    def _button(self, line: Line) -> tuple[Request, dict[str, Any]]:
        """The newest button with a text, and the answer it stands below."""
        found = ((a, b) for a in self._answers(line) for b in buttons(a))
        return next((a, b) for a, b in found if b["text"] == line.text)

    def _tap(self, number: int, who: Who, line: Line) -> dict[str, Any]:
        shown, button = self._button(line)
        below = self.chat.loopback.message(shown) | self._topic(line)
        return {
            "id": str(number), "from": who.user, "chat_instance": "1", "message": below,
            "data": button["callback_data"],
        }  # fmt: skip

    def _topic(self, line: Line) -> dict[str, Any]:
        """What places a message in its topic."""
        if line.where == "private":
            return {}
        topic = self.topics.setdefault(line.where, 51 + len(self.topics))
        return {"message_thread_id": topic, "is_topic_message": True}

    def _edited(self, line: Line) -> dict[str, Any]:
        changed = {"text": line.text, "entities": entities(line.text)}
        before = self.messages[line.where, line.who]
        return {**before, **changed, "edit_date": int(BEGIN.timestamp())}

    def _written(self, number: int, who: Who, line: Line) -> dict[str, Any]:
        text, more = self._content(who, line)
        more |= {"date": int(BEGIN.timestamp()), **self._topic(line)}
        message = self.chat.message(who, text, **more)
        self.messages[line.where, line.who] = message
        self.numbers[message["message_id"]] = number
        return message

    def _content(self, who: Who, line: Line) -> tuple[str | None, dict[str, Any]]:
        """The text of a message, and what else it carries."""
        match line.does:
            case "says":
                return line.text, {}
            case "replies":
                return line.text, replying(self._answers(line)[0], self.chat.loopback)
            case "follows":
                return f"/start {self._button(line)[1]['url'].partition('start=')[2]}", {}
            case "shares":
                return line.text, {"via_bot": ME}
            case "sticker":
                return None, {"sticker": _STICKER}
            case "photo":
                caption = {"caption": line.text, "caption_entities": entities(line.text)}
                return None, {"photo": _PHOTO, **caption}
            case "joins":
                return None, {"new_chat_members": [who.user]}
        raise ValueError(f"nobody can do this: {line.does}")

    # --- as it is approved ---

    def shown(self, request: Request) -> list[str]:
        """A request, readable by eye."""
        values = request.values
        text = [f"    {line}" for line in values.get("text", "").splitlines()]
        for result in values.get("results", []):
            text += [f"    card: {result['title']} ({result['description']})"]
            said = result["input_message_content"]["message_text"]
            text += [f"    {line}" for line in said.splitlines()]
        row = [f"[{b['text']}{' >' if 'url' in b else ''}]" for b in buttons(request)]
        text += [f"    {' '.join(row)}"] if row else []
        return [f"  {request.method}{self._whither(request)}", *text]

    def _whither(self, request: Request) -> str:
        """Who sees it: a person or a topic, and which update's message it stands below."""
        values = request.values
        if "chat_id" not in values:
            return ""
        topic, chat_id = values.get("message_thread_id"), values["chat_id"]
        to = next((f" to {n}" for n, number in self.topics.items() if number == topic), "")
        to = to or next((f" to {w.name}" for w in self.people.values() if w.id == chat_id), "")
        below = values.get("reply_parameters", {}).get("message_id")
        if request.method == "editMessageText":
            return f"{to}, the answer to {self.numbers[values['message_id']]}"
        return f"{to}, below {self.numbers[below]}" if below is not None else to


def buttons(request: Request) -> list[dict[str, Any]]:
    """The buttons of a request, of its cards too."""
    kept = [request.values, *request.values.get("results", [])]
    keyboards = [k.get("reply_markup", {}).get("inline_keyboard", []) for k in kept]
    found = [button for keyboard in keyboards for row in keyboard for button in row]
    return [*found, *filter(None, [request.values.get("button")])]


async def told(url: str, script: Path = SCRIPT) -> str:
    """The whole evening with what was said, kept in the records at a URL."""
    out: list[str] = []
    pacing, loopback, records = Pacing(), Loopback(), await open_records(url)
    evening = Evening(Chat(loopback, records))
    for name in administrators(script):
        loopback.members[GROUP, evening.who(name).id] = "administrator"
    await loopback.start()
    try:
        with patch.object(carrying, "time", pacing), patch.object(carrying, "datetime", Standing):
            async with served(records, loopback):
                for number, line in enumerate(updates(script), 1):
                    pacing.seconds += line.pause_s
                    doing = " ".join(filter(None, (line.who, line.where, line.does, line.whose)))
                    said = await evening.play(number, line)
                    out += [f"{number}. {doing} | {line.text}".rstrip(" |")]
                    out += [row for request in said for row in evening.shown(request)]
                    out += [""] if said else ["  -", ""]
        assert loopback.refused == [], loopback.refused
    finally:
        await loopback.stop()
        await records.close()
    return "\n".join(out)


if __name__ == "__main__":
    with tempfile.TemporaryDirectory() as folder:
        made = asyncio.run(told(f"sqlite:///{folder}/evening.db"))
    APPROVED.write_text(made, encoding="utf-8")
