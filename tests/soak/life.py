"""What people do with the messenger, message by message; each is told to the ledger."""

from __future__ import annotations

import time
from collections import Counter
from collections.abc import Callable
from dataclasses import dataclass, field
from datetime import time as Clock
from typing import Any

from tests.channels.chatting import entities
from tests.channels.loopback import ME, Request
from tests.soak.ledger import (
    AGAIN_WITHIN_S,
    NOTED_WITHIN_S,
    SAYING,
    Ledger,
    Sent,
    Update,
    Wants,
)
from tests.soak.messenger import Messenger
from tests.soak.phrases import Phrases
from tests.soak.promises import Ping, Promise

Then = Callable[[Sent], None]


@dataclass(slots=True)
class Group:
    """A group: its administrators, its topics, what was said there last."""

    id: int
    admins: list[int] = field(default_factory=list)
    topics: tuple[int | None, ...] = (None,)
    has_home: bool = False
    quiet: bool = False
    locked: bool = False
    reminders: int = 0
    open: int = 0
    pings: list[Sent] = field(default_factory=list)


@dataclass(slots=True)
class Body:
    """Somebody as the messenger knows them, and what they are owed."""

    id: int
    words: Phrases
    open: int = 0
    ready_s: float = 0.0
    answered_s: float = 0.0
    pings: list[Sent] = field(default_factory=list)

    @property
    def user(self) -> dict[str, Any]:
        """As the messenger shows them."""
        known = {"id": self.id, "is_bot": False, "first_name": f"p{self.id}"}
        return {**known, "language_code": self.words.code}


@dataclass
class Life:
    """All chats of a soak."""

    messenger: Messenger
    ledger: Ledger
    labels: frozenset[tuple[str, ...]]
    notes: tuple[str, ...]
    pings: list[Ping] = field(default_factory=list)
    promises: list[Promise] = field(default_factory=list)
    away: dict[int, list[tuple[float, float]]] = field(default_factory=dict)
    counts: Counter[str] = field(default_factory=Counter)
    watchers: dict[int, Body | Group] = field(default_factory=dict)
    waits_s: list[float] = field(default_factory=list)
    open: set[int] = field(default_factory=set)
    pause_s: tuple[float, float] = (3.5, 11.0)

    # --- what comes from the bot ---

    def told(self, sent: Sent) -> None:
        """Take note of a request that the messenger accepted."""
        if not self._is_ping(sent):
            self.ledger.accepted(sent)
            return
        again = any(note in sent.text for note in self.notes)
        at_s = self.messenger.clock.at(sent.at_s)
        self.pings.append(Ping(sent.chat_id, sent.text, at_s, sent.at_s, again, sent.made))
        whose = self.watchers.get(sent.chat_id)
        if whose is not None:
            whose.pings.append(sent)

    def _is_ping(self, sent: Sent) -> bool:
        """By its buttons: no answer has these three."""
        if sent.method != "sendMessage" or sent.below is not None:
            return False
        rows = sent.values.get("reply_markup", {}).get("inline_keyboard", [])
        return tuple(b["text"] for row in rows for b in row)[:3] in self.labels

    # --- what people do ---

    def say(
        self,
        who: Body,
        text: str | None,
        what: str,
        *,
        wants: Wants = Wants.ANSWER,
        fits: str = "",
        then: Then | None = None,
        group: Group | None = None,
        topic: int | None = None,
        **more: Any,
    ) -> dict[str, Any]:
        """Write a message; returns it as the messenger has it."""
        message = self._message(who, group, topic) | more
        if text is not None:
            message["text"] = text
            message["entities"] = entities(text)
        self.pushed("message", message, who, what, wants, fits, then, group, topic)
        return message

    def edit(
        self,
        who: Body,
        before: dict[str, Any],
        text: str,
        what: str,
        *,
        wants: Wants = Wants.EDIT,
        answer: int | None = None,
        fits: str = "",
        then: Then | None = None,
        group: Group | None = None,
        topic: int | None = None,
    ) -> None:
        """Change a message."""
        changed = {"text": text, "entities": entities(text), "edit_date": self.messenger.now()}
        self.pushed(
            "edited_message", before | changed, who, what, wants, fits, then, group, topic,
            edits=answer,
        )  # fmt: skip

    def tap(
        self,
        who: Body,
        shown: Sent,
        data: str,
        what: str,
        *,
        wants: Wants = Wants.TAP,
        then: Then | None = None,
        group: Group | None = None,
        stale: bool = False,
    ) -> None:
        """Press a button below a message of the bot's."""
        below = self.messenger.message(Request(shown.method, shown.values, 0.0, shown.made))
        if stale:
            below.pop("reply_markup", None)
        key = f"q{self.messenger.message_id()}"
        query = {
            "id": key, "from": who.user, "chat_instance": "1", "message": below, "data": data,
        }  # fmt: skip
        topic = shown.values.get("message_thread_id")
        self.pushed(
            "callback_query", query, who, what, wants, "", then, group, topic,
            key=key, message_id=shown.made,
        )  # fmt: skip

    def ask_inline(self, who: Body, text: str, what: str) -> None:
        """Type a question in some other chat."""
        key = f"i{self.messenger.message_id()}"
        query = {"id": key, "from": who.user, "query": text, "offset": ""}
        self.pushed("inline_query", query, who, what, Wants.CARDS, "", None, None, None, key=key)

    def membership(self, who: Body, status: str, group: Group | None = None) -> None:
        """Block the bot or let it in again, throw it out of a group or take it back."""
        ours: dict[str, Any] = {"status": status, "user": ME}
        if status == "kicked":
            ours["until_date"] = 0
        changed = self._message(who, group, None) | {
            "old_chat_member": {"status": "member", "user": ME}, "new_chat_member": ours,
        }  # fmt: skip
        del changed["message_id"]
        what = f"membership {status}"
        self.pushed("my_chat_member", changed, who, what, Wants.NOTHING, "", None, group, None)

    # --- how ---

    def _message(self, who: Body, group: Group | None, topic: int | None) -> dict[str, Any]:
        chat: dict[str, Any] = {"id": who.id, "type": "private", "first_name": f"p{who.id}"}
        if group is not None:
            chat = {"id": group.id, "type": "supergroup", "title": f"club {-group.id}"}
        made: dict[str, Any] = {
            "message_id": self.messenger.message_id(), "date": self.messenger.now(), "chat": chat,
            "from": who.user,
        }  # fmt: skip
        if topic is not None:
            made |= {"message_thread_id": topic, "is_topic_message": True}
        return made

    def pushed(
        self,
        kind: str,
        value: dict[str, Any],
        who: Body,
        what: str,
        wants: Wants,
        fits: str,
        then: Then | None,
        group: Group | None,
        topic: int | None,
        *,
        edits: int | None = None,
        key: str = "",
        message_id: int | None = None,
    ) -> None:
        """Give the bot an update, and note what it must come to."""
        now = time.monotonic()
        given = self.messenger.push(kind, value)
        replies_to = None
        if group is not None:
            replies_to = message_id if message_id is not None else value.get("message_id")
        update = Update(
            given["update_id"], who.id if group is None else group.id, wants, what, now,
            replies_to=replies_to, topic=topic, key=key, edits=edits, fits=fits,
        )  # fmt: skip
        self.counts[what] += 1
        if update.open:
            self.open.add(update.number)
            who.open += 1
            if group is not None:
                group.open += 1
            update.heard = lambda sent: self._heard(update, who, group, then, sent)
        self.ledger.expect(update)
        who.ready_s = now + self.pause_s[0]

    def _heard(
        self, update: Update, who: Body, group: Group | None, then: Then | None, sent: Sent
    ) -> None:
        says = sent.method in (*SAYING, "editMessageText", "sendDocument")
        if not update.open and not update.closed:
            update.closed = True
            self.open.discard(update.number)
            who.open -= 1
            if group is not None:
                group.open -= 1
            self.waits_s.append(sent.at_s - update.at_s)
            who.answered_s = sent.at_s
            # Somebody reads before they write again, the longer the more there is to read.
            low, high = self.pause_s
            who.ready_s = sent.at_s + low + (high - low) * (update.number * 7919 % 1000) / 1000
        if then is not None and says and update.fits in sent.text:
            then(sent)

    def hold_back(self, killed_s: float) -> None:
        """Let those who were answered just before a kill wait until it cannot come again."""
        for whose in self.watchers.values():
            if isinstance(whose, Body) and killed_s - whose.answered_s <= NOTED_WITHIN_S:
                whose.ready_s = killed_s + AGAIN_WITHIN_S + 5.0

    def promise(
        self, chat_id: int, task: str, said_s: float, *, zone: str, daily: Clock | None = None,
        once_s: float | None = None,
    ) -> None:  # fmt: skip
        """Note a reminder that was asked for at `said_s` and that the bot has just confirmed."""
        now = self.messenger.clock.now_s()
        made = Promise(chat_id, task, said_s, zone, daily, once_s, sure_s=now)
        self.promises.append(made)

    def forgotten(self, chat_id: int) -> None:
        """Somebody had everything forgotten: nothing of it is owed any more."""
        now = self.messenger.clock.now_s()
        for promise in self.promises:
            if promise.chat_id == chat_id and promise.until_s is None:
                promise.until_s = now
