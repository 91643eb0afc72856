"""A stand-in for the messenger on this machine: strict about every request it gets.

Requests are held to the Bot API's own description (fixtures/bot_api/schema.json, made by others)
and to its published limits. It keeps a ledger of what it accepted, and can be told to fail.
"""

from __future__ import annotations

import asyncio
import json
import time
from collections import Counter, deque
from collections.abc import Callable
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any

from aiohttp import web

SCHEMA: dict[str, Any] = json.loads(
    (Path(__file__).parents[2] / "fixtures" / "bot_api" / "schema.json").read_text("utf-8")
)["entries"]
TOKEN = "4242:loopback-token-of-no-bot"
ME = {"id": 4242, "is_bot": True, "first_name": "Sink", "username": "sink_test_bot"}
#: Published: characters of a text, bytes of a button's data, results, a second, a minute.
MOST_TEXT, MOST_DATA, MOST_RESULTS, MOST_ID, A_SECOND, A_MINUTE = 4096, 64, 50, 64, 30, 20
#: Published: characters below a picture, bytes of a picture.
MOST_CAPTION, MOST_PHOTO = 1024, 10_000_000


class Wrong(Exception):
    """A request that the messenger would refuse."""


def checked(type_: str, value: Any, where: str) -> None:
    """Hold a value to a type of the description.

    Raises
    ------
    Wrong
        It is not of that type.
    """
    if " or " in type_:
        errors = []
        for option in type_.split(" or "):
            try:
                return checked(option, value, where)
            except Wrong as error:
                errors.append(str(error))
        raise Wrong("; ".join(errors))
    if type_.startswith("Array of "):
        if not isinstance(value, list):
            raise Wrong(f"{where}: a list is wanted")
        for index, item in enumerate(value):
            checked(type_.removeprefix("Array of "), item, f"{where}[{index}]")
        return None
    plain = {"Integer": int, "String": str, "Boolean": bool, "True": bool, "Float": (int, float)}
    if type_ in plain:
        is_flag = isinstance(value, bool) and type_ not in ("Boolean", "True")
        if not isinstance(value, plain[type_]) or is_flag:
            raise Wrong(f"{where}: {type_} is wanted, not {value!r}")
        return None
    if type_ == "InputFile":
        if not isinstance(value, bytes | str):
            raise Wrong(f"{where}: a file is wanted")
        return None
    entry = SCHEMA[type_]
    if entry["one_of"]:
        for option in entry["one_of"]:
            kind = next((f for f in SCHEMA[option]["fields"] if f["name"] == "type"), None)
            try:
                checked(option, value, where)
            except Wrong:
                continue
            if kind is None or value["type"].replace("_", "") in option.lower():
                return None
        raise Wrong(f"{where}: none of {entry['one_of']} fits {value!r}")
    if not isinstance(value, dict):
        raise Wrong(f"{where}: {type_} is wanted")
    fields = {f["name"]: f for f in entry["fields"]}
    for name in value:
        if name not in fields:
            raise Wrong(f"{where}: {type_} has no {name}")
    for name, one in fields.items():
        if name in value:
            checked(one["type"], value[name], f"{where}.{name}")
        elif one["required"]:
            raise Wrong(f"{where}: {name} is missing")
    return None


def _decoded(type_: str, raw: Any) -> Any:
    """A value as the request carried it: everything but text and files as JSON."""
    if not isinstance(raw, str) or type_ in ("String", "InputFile"):
        return raw
    if type_ == "Integer or String":
        return int(raw) if raw.lstrip("-").isdigit() else raw
    if type_ == "InputFile or String":
        return raw
    try:
        return json.loads(raw)
    except ValueError:
        return raw


def limits(method: str, values: dict[str, Any]) -> None:
    """Hold a request to the published limits.

    Raises
    ------
    Wrong
        It is over one of them.
    """
    text = values.get("text", "")
    longest = 200 if method == "answerCallbackQuery" else MOST_TEXT
    if len(text.encode("utf-16-le")) // 2 > longest:
        raise Wrong("text is too long")
    if method in ("sendMessage", "editMessageText") and not text.strip():
        raise Wrong("message text is empty")
    if len(values.get("caption", "").encode("utf-16-le")) // 2 > MOST_CAPTION:
        raise Wrong("message caption is too long")
    if method == "sendPhoto" and not 0 < len(values["photo"]) <= MOST_PHOTO:
        raise Wrong("a photo is empty or too big")
    rows = list(values.get("reply_markup", {}).get("inline_keyboard", []))
    for result in values.get("results", []):
        content = result["input_message_content"]["message_text"]
        if not content.strip() or len(content.encode("utf-16-le")) // 2 > MOST_TEXT:
            raise Wrong("a result's text is empty or too long")
        if not 1 <= len(result["id"].encode()) <= MOST_ID:
            raise Wrong("a result's id is empty or too long")
        rows += result.get("reply_markup", {}).get("inline_keyboard", [])
    if len(values.get("results", [])) > MOST_RESULTS:
        raise Wrong("too many results")
    for button in (b for row in rows for b in row):
        if not button["text"].strip():
            raise Wrong("a button without text")
        if not 1 <= len(button.get("callback_data", "x").encode()) <= MOST_DATA:
            raise Wrong("BUTTON_DATA_INVALID")
        start = button.get("url", "").partition("?start=")[2]
        plain = start.replace("_", "").replace("-", "")
        if len(start) > 64 or (start and not plain.isalnum()):
            raise Wrong("a link's payload is too long or of other characters")


@dataclass(slots=True)
class Request:
    """A request that was accepted."""

    method: str
    values: dict[str, Any]
    at: float
    made: int | None = None


#: A response instead of ours; "drop" ends the connection, "slow" says nothing for a second,
#: "lost" does as it is asked and then ends the connection.
Answering = Callable[[str, dict[str, Any]], web.Response | str | None]


@dataclass
class Loopback:
    """The server: `push` gives it updates, `accepted` is its ledger, `refused` what was wrong.

    Menus are set beside everything else: they have a ledger of their own, `menus`.
    """

    accepted: list[Request] = field(default_factory=list)
    menus: list[Request] = field(default_factory=list)
    refused: list[str] = field(default_factory=list)
    members: dict[tuple[int, int], str] = field(default_factory=dict)
    files: dict[str, bytes] = field(default_factory=dict)
    fail: Answering | None = None
    #: Requests that came, by method; those of a held one are served once it is let go.
    asked: Counter[str] = field(default_factory=Counter)
    held: dict[str, asyncio.Event] = field(default_factory=dict)
    secret: str | None = None
    hook: str | None = None
    waiting: deque[dict[str, Any]] = field(default_factory=deque)
    _next_update: int = 700
    _next_message: int = 9000
    _pushed: asyncio.Event = field(default_factory=asyncio.Event)
    _runner: web.AppRunner | None = None
    url: str = ""

    async def start(self) -> None:
        served = web.Application(client_max_size=60_000_000)
        served.router.add_post("/bot{token}/{method}", self._asked)
        served.router.add_get("/file/bot{token}/{path}", self._file)
        self._runner = web.AppRunner(served, access_log=None, shutdown_timeout=0.1)
        await self._runner.setup()
        site = web.TCPSite(self._runner, "127.0.0.1", 0)
        await site.start()
        port = self._runner.addresses[0][1]
        self.url = f"http://127.0.0.1:{port}"

    async def stop(self) -> None:
        self._pushed.set()
        for held in self.held.values():
            held.set()
        if self._runner is not None:
            await self._runner.cleanup()

    # --- what a test does ---

    def push(self, kind: str, value: dict[str, Any]) -> dict[str, Any]:
        """An update for the bot."""
        self._next_update += 1
        update = {"update_id": self._next_update, kind: value}
        self.push_raw(update)
        return update

    def push_raw(self, update: dict[str, Any]) -> None:
        self.waiting.append(update)
        self._pushed.set()

    def message_id(self) -> int:
        self._next_message += 1
        return self._next_message

    def hold(self, method: str) -> asyncio.Event:
        """Serve nothing of a method until the event is set."""
        self.held[method] = asyncio.Event()
        return self.held[method]

    def of(self, *methods: str) -> list[Request]:
        """What was accepted of some methods."""
        return [r for r in self.accepted if r.method in methods]

    # --- the server ---

    async def _asked(self, request: web.Request) -> web.StreamResponse:
        if request.match_info["token"] != TOKEN:
            return _error(401, "Unauthorized")
        method = request.match_info["method"]
        raw: dict[str, Any] = dict(request.query)
        if request.content_type == "multipart/form-data":
            async for part in await request.multipart():
                name = getattr(part, "name", None) or ""
                is_file = getattr(part, "filename", None)
                raw[name] = bytes(await part.read()) if is_file else await part.text()  # type: ignore[union-attr]
        else:
            raw.update(await request.post())
        entry = SCHEMA.get(method)
        if entry is None:
            return _error(404, "Not Found")
        types = {f["name"]: f["type"] for f in entry["fields"]}
        for name, value in raw.items():
            if isinstance(value, str) and value.startswith("attach://"):
                raw[name] = raw.get(value.removeprefix("attach://"), value)
        values = {n: _decoded(types.get(n, "String"), v) for n, v in raw.items() if n in types}
        try:
            checked(method, values, method)
            limits(method, values)
        except Wrong as error:
            self.refused.append(str(error))
            return _error(400, f"Bad Request: {error}")
        self.asked[method] += 1
        if method in self.held:
            await self.held[method].wait()
        failed = self.fail(method, values) if self.fail is not None else None
        if failed == "lost":
            await self._served(method, values)
            failed = "drop"
        if isinstance(failed, str):
            if failed == "drop" and request.transport is not None:
                request.transport.close()
            await asyncio.sleep(1.0 if failed == "slow" else 0.0)
            return _error(504, "Gateway Timeout")
        if failed is not None:
            return failed
        return await self._served(method, values)

    async def _served(self, method: str, values: dict[str, Any]) -> web.StreamResponse:
        if method == "getUpdates":
            return _ok(await self._updates(values))
        if method == "getMe":
            return _ok(ME)
        done = Request(method, values, time.monotonic())
        if method == "setMyCommands":
            self.menus.append(done)
            return _ok(True)
        self.accepted.append(done)
        if method == "getChatMember":
            key = (values["chat_id"], values["user_id"])
            user = {"id": key[1], "is_bot": False, "first_name": "x"}
            status = self.members.get(key, "member")
            return _ok(_member(status, user))
        if method == "getFile":
            name = values["file_id"]
            return _ok({"file_id": name, "file_unique_id": name, "file_path": name})
        if method == "setWebhook":
            self.hook, self.secret = values["url"], values["secret_token"]
        if method in ("sendMessage", "sendPhoto", "sendDocument", "editMessageText"):
            done.made = values.get("message_id") or self.message_id()
            return _ok(self.message(done))
        return _ok(True)

    def message(self, done: Request) -> dict[str, Any]:
        """The message that a request made."""
        chat_id = done.values["chat_id"]
        kind = "private" if chat_id > 0 else "supergroup"
        made = {
            "message_id": done.made,
            "date": int(time.time()),
            "chat": {"id": chat_id, "type": kind, "title": "t", "first_name": "f"},
            "from": ME,
        }
        if done.method == "sendPhoto":
            size = {"file_id": "p", "file_unique_id": "p", "width": 9, "height": 9}
            made |= {"photo": [size], "caption": done.values.get("caption", "")}
        else:
            made["text"] = done.values.get("text", "")
        if "message_thread_id" in done.values:
            topic = done.values["message_thread_id"]
            made |= {"message_thread_id": topic, "is_topic_message": True}
        if "reply_markup" in done.values:
            made["reply_markup"] = done.values["reply_markup"]
        return made

    async def _updates(self, values: dict[str, Any]) -> list[dict[str, Any]]:
        offset = values.get("offset", 0)
        while self.waiting and self.waiting[0]["update_id"] < offset:
            self.waiting.popleft()
        if not self.waiting:
            self._pushed.clear()
            try:
                await asyncio.wait_for(self._pushed.wait(), min(values.get("timeout", 0), 30))
            except TimeoutError:
                return []
        allowed = values.get("allowed_updates") or []
        return [u for u in list(self.waiting)[:100] if not allowed or set(u) & set(allowed)]

    async def _file(self, request: web.Request) -> web.Response:
        return web.Response(body=self.files[request.match_info["path"]])


def _member(status: str, user: dict[str, Any]) -> dict[str, Any]:
    if status != "administrator":
        return {"status": status, "user": user, "is_anonymous": False}
    rights = [
        "can_be_edited", "is_anonymous", "can_manage_chat", "can_delete_messages",
        "can_manage_video_chats", "can_restrict_members", "can_promote_members",
        "can_change_info", "can_invite_users", "can_post_stories", "can_edit_stories",
        "can_delete_stories",
    ]  # fmt: skip
    return {"status": status, "user": user, **dict.fromkeys(rights, False)}


def _ok(result: Any) -> web.Response:
    return web.json_response({"ok": True, "result": result})


def _error(code: int, text: str, **parameters: Any) -> web.Response:
    body: dict[str, Any] = {"ok": False, "error_code": code, "description": text}
    if parameters:
        body["parameters"] = parameters
    return web.json_response(body, status=code)


def flood(seconds: int) -> web.Response:
    """A 429 that says how long to wait."""
    return _error(429, "Too Many Requests", retry_after=seconds)


error = _error
