"""Updates of a messenger: buttons, links, commands, cards, whatever is written in them."""

from __future__ import annotations

import json
from collections.abc import Iterable
from dataclasses import replace
from functools import cache
from typing import Any

from telegram import Update
from telegram.ext import Application, ApplicationBuilder
from telegram.request import BaseRequest, RequestData

from bot.channels.telegram.carrying import FAULT, WORK, Carrier
from bot.channels.telegram.hearing import lane_of
from bot.channels.telegram.menu import set_out
from bot.channels.telegram.sending import as_sent, send
from bot.conversation.postbox import Claimed, Settled, Work
from bot.conversation.talk import Conversation
from bot.records import Records
from grammar import Names, read
from tests.channels.chatting import GROUP, IDA, LINE, MIRA, TOM, entities
from tests.channels.loopback import ME, TOKEN, Wrong, _decoded, checked, limits
from tests.channels.loopback import SCHEMA as API
from tests.fuzzing.cases import Case, Target
from tests.fuzzing.laws import hold
from tests.fuzzing.room import COLLECTION, Room, state
from tests.fuzzing.speech import said

SOURCE = "telegram:4242"
NOW = 1_780_822_800  # 2026-06-07 09:00 UTC
SECRET = "what Tom alone was told"
#: What an update brings, by the mode; beyond that, where it came from.
TAP, LINK, PRIVATE, CLUB, INLINE, LANE, EDITED, CAPTION = range(8)
#: An answer is at most so many requests: pages are asked for one by one.
MOST_LETTERS = 9


class Strict(BaseRequest):
    """A messenger that takes nothing it would not take, and has no files."""

    @property
    def read_timeout(self) -> float:
        return 1.0

    async def initialize(self) -> None: ...

    async def shutdown(self) -> None: ...

    async def do_request(
        self, url: str, method: str, request_data: RequestData | None = None, *_: Any, **__: Any
    ) -> tuple[int, bytes]:
        name = url.rpartition("/")[2]
        raw: dict[str, Any] = dict(request_data.json_parameters) if request_data else {}
        if request_data is not None and request_data.multipart_data:
            raw |= {k: v[1] for k, v in request_data.multipart_data.items()}
        for key, value in raw.items():
            if isinstance(value, str) and value.startswith("attach://"):
                raw[key] = raw.get(value.removeprefix("attach://"), value)
        types = {f["name"]: f["type"] for f in API[name]["fields"]}
        values = {n: _decoded(types.get(n, "String"), v) for n, v in raw.items() if n in types}
        try:
            checked(name, values, name)
            limits(name, values)
        except Wrong as wrong:
            hold(f"the messenger takes it, not {wrong}", False, name, values)
        return 200, json.dumps({"ok": True, "result": _result(name, values)}).encode()


def _result(name: str, values: dict[str, Any]) -> Any:
    if name == "getMe":
        return ME
    if name == "getChatMember":
        user = {"id": values["user_id"], "is_bot": False, "first_name": "x"}
        return {"status": "member", "user": user}
    if name == "getFile":
        return {"file_id": "x", "file_unique_id": "x"}
    if name.startswith(("send", "edit")):
        return {**_message(values["chat_id"], ME), "text": "x"}
    return True


class Post:
    """The bot's side of a messenger, over a room."""

    def __init__(self) -> None:
        self.room = Room("telegram", {MIRA.id: COLLECTION, TOM.id: COLLECTION[:3]}, GROUP)
        builder = ApplicationBuilder().token(TOKEN).updater(None)
        builder = builder.request(Strict()).get_updates_request(Strict())
        self._application: Application[Any, Any, Any, Any, Any, Any] = builder.build()
        self.room.run(self._application.initialize())
        self._bot = self._application.bot
        self.secret = self.room.run(self._keep())

    async def _keep(self) -> str:
        async with self.room.records.together() as records:
            work = Work(Conversation(records), records, SOURCE)
            return await work.keep_card(SECRET, person=str(TOM.id))

    async def handle(self, body: dict[str, Any], records: Records) -> list[dict[str, Any]]:
        """Handle an update as the service does, and send what comes of it."""
        carrier, faults = Carrier(self._bot), list[BaseException]()
        self._application.handlers.clear()
        self._application.error_handlers.clear()
        set_out(self._application, carrier)
        self._application.add_error_handler(carrier.broken)
        work = Work(Conversation(records), records, SOURCE)
        WORK.set(work)
        FAULT.set(faults)
        await self._application.process_update(Update.de_json(body, self._bot))
        if faults:
            raise faults[0]
        hold("no flood of requests", len(work.letters) <= MOST_LETTERS, len(work.letters))
        for number, letter in enumerate(work.letters):
            sent, settled = (
                Claimed(number, letter.lane, 0, 0, letter.method, letter.body),
                Settled(),
            )
            kept = json.loads(json.dumps(letter.body, allow_nan=False))  # as the outbox has it
            await send(self._bot, as_sent(replace(sent, body=kept)), settled)
            hold("it was sent", len(settled.sent) == 1, settled)
        return [letter.body for letter in work.letters]


@cache
def _post() -> Post:
    return Post()


def check(case: Case) -> None:
    """Bring one update to the bot."""
    what, bits = case.mode % 8, case.mode // 8
    if what == LANE:
        _lane(case.text)
        return
    post = _post()
    update = _update(what, bits, case.text)
    post.room.run(_handled(post, update, what, case.text))


async def _handled(post: Post, update: dict[str, Any], what: int, text: str) -> None:
    async with post.room.thrown_away() as records:
        before = await state(records, post.room.of(MIRA.id))
        letters = await post.handle(update, records)
        after = await state(records, post.room.of(MIRA.id))
        told = json.dumps(letters, ensure_ascii=False)
        if post.secret not in text:
            hold("nobody guesses what another was told", SECRET not in told, text)
        if what in (INLINE, CLUB) or (what == LINK and not text.startswith("s_")):
            hold("no such update changes what a person has", before == after, before, after)
        if what in (INLINE, CLUB) and not _means_own(text):
            hold("a person's records stay theirs", "Mirasplant" not in told, told)


def _means_own(text: str) -> bool:
    """Whether somebody asks for their own records in a group."""
    order = read(text, names=Names()).order
    return order is not None and order.own


def _lane(text: str) -> None:
    """What the webhook took in: any JSON."""
    try:
        body = json.loads(text, parse_constant=_refused)
        number = body["update_id"]
    except (ValueError, TypeError, KeyError, RecursionError):
        return
    if isinstance(body, dict) and type(number) is int:
        lane = lane_of(body)
        hold("a lane has a name that fits", 0 < len(lane) <= 128, lane)


def _refused(constant: str) -> None:
    raise ValueError(constant)


def _message(chat_id: int, sender: dict[str, Any]) -> dict[str, Any]:
    kind = "private" if chat_id > 0 else "supergroup"
    chat = {"id": chat_id, "type": kind, "title": "t", "first_name": "f"}
    return {"message_id": 9, "date": NOW, "chat": chat, "from": sender}


def _update(what: int, bits: int, text: str) -> dict[str, Any]:
    """An update as a messenger makes it, around a text that anybody may have written."""
    who = (MIRA, TOM, IDA)[bits % 3]
    text = text.encode("utf-8", "replace").decode()[:5000]  # a messenger sends no halves
    if what == TAP:
        return _tap(who.user, text, bits)
    if what == INLINE:
        query = {"id": "q", "from": who.user, "query": text[:256], "offset": ""}
        return {"update_id": 1, "inline_query": query}
    chat_id = GROUP if what == CLUB or bits & 8 else who.id
    message = {**_message(chat_id, who.user)}
    if what == LINK:
        text = f"/start {text[:64]}"
    written = "caption" if what == CAPTION else "text"
    message |= {written: text, f"{written}_entities" if written != "text" else "entities": []}
    message["entities" if written == "text" else "caption_entities"] = entities(text)
    if what == CAPTION:
        size = {"file_id": "p", "file_unique_id": "p", "width": 9, "height": 9}
        message |= {"photo": [size]} if bits & 4 else {"document": {**_file(text)}}
    elif what == PRIVATE and bits & 4:
        origin = {"type": "hidden_user", "date": NOW, "sender_user_name": "x"}
        message["forward_origin"] = origin
    elif what == CLUB and bits & 4:
        message["reply_to_message"] = {**_message(GROUP, ME), "text": "x"}
    if what == EDITED:
        return {"update_id": 1, "edited_message": {**message, "edit_date": NOW + 60}}
    return {"update_id": 1, "message": message}


def _file(name: str) -> dict[str, Any]:
    return {"file_id": "f", "file_unique_id": "f", "file_name": name[:60], "file_size": 10}


def _tap(user: dict[str, Any], text: str, bits: int) -> dict[str, Any]:
    """A button that stands below a message of ours: its data, then what is written on it."""
    data, _, label = text.partition("\n")
    data = data.encode()[:64].decode("utf-8", "ignore") or "c"
    button = {"text": label[:64] or "undo", "callback_data": "c9.0.1" if bits & 8 else data}
    shown = {**_message(GROUP if bits & 4 else user["id"], ME), "text": "x"}
    shown["reply_markup"] = {"inline_keyboard": [[button]]}
    query = {"id": "t", "from": user, "chat_instance": "i", "data": data, "message": shown}
    return {"update_id": 1, "callback_query": query}


def seeds() -> Iterable[Case]:
    """Updates of each kind."""
    for data in (f"c0.{MIRA.id}.{NOW - 60}", f"c1.0.{NOW}", "p2.11.abc", "c0", f"c3.{TOM.id}.1"):
        for bits in range(0, 16, 4):
            yield Case(TAP + 8 * bits, f"{data}\nyes")
    for payload in ("hello", "d_0a1b", "q_", "s_x", "d_'", ""):
        yield Case(LINK, payload)
    for update in (_update(PRIVATE, 0, LINE), _update(TAP, 0, "c0.1.2"), _update(INLINE, 0, "x")):
        yield Case(LANE, json.dumps(update))
    for number, text in enumerate([*WORDS, *said()[::9]]):
        yield Case((PRIVATE, CLUB, INLINE, EDITED, CAPTION)[number % 5] + 8 * (number % 16), text)


WORDS = (
    "/start", "/dose", "/plan", "/plants", "/shelf", "/diary", "/undo", "/help",
    "/dose@sink_test_bot " + LINE, "@sink_test_bot " + LINE, "@other_bot", "my own plants",
    "forget me", "yes", "no", "take in f.json", "export", "my year", "x.json",
    '{"update_id":1,"message":{"chat":{"id":1},"from":{"id":2}}}', "d_", "q_", "s_", "c0.", "p2.",
)  # fmt: skip


def words() -> Iterable[str]:
    """Pieces of updates."""
    yield from WORDS
    yield from ("update_id", "callback_query", "message", "sender_chat", "chat", "id", "from")


TARGET = Target(check, seeds, words)
