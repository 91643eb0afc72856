"""One update: hear who said what, let the conversation answer, and promise what is shown."""

from __future__ import annotations

import asyncio
import json
import logging
import re
import time
from collections import OrderedDict
from collections.abc import AsyncIterator, Awaitable, Callable
from contextlib import asynccontextmanager, suppress
from contextvars import ContextVar
from dataclasses import dataclass, replace
from datetime import UTC, datetime, timedelta
from typing import Any

from telegram import (
    Bot,
    CallbackQuery,
    Chat,
    ChatMember,
    ChatMemberRestricted,
    Message,
    Update,
)
from telegram.constants import ChatAction, ChatType
from telegram.error import TelegramError, TimedOut
from telegram.ext import ContextTypes

from bot.channels.telegram.hearing import CHANNEL, Heard, heard, topic_of, words_for
from bot.channels.telegram.showing import PICTURE, Place, card, documents, next_button, shown
from bot.conversation.answer import Answer
from bot.conversation.ask import Setting, ask
from bot.conversation.postbox import Letter, Work, edited_anew
from bot.conversation.turn import Incoming
from bot.conversation.wording import Wording, wording

log = logging.getLogger("sinkside.telegram")

Context = ContextTypes.DEFAULT_TYPE
#: The work on the update that this task handles.
WORK: ContextVar[Work] = ContextVar("work")
#: The fault of a handler, for the worker; the application would keep it to itself.
FAULT: ContextVar[list[BaseException]] = ContextVar("fault")

#: A person in a group may ask so many questions at once, and one more each so often [s] (ours).
BURST = 5
REFILL_S = 10.0
#: Where only they are answered, in private, at buttons and from any chat: more than one types.
OWN_BURST = 60
OWN_REFILL_S = 2.0
_MOST_PACES = 10_000
#: What stands behind a button: 'c', which choice, who may press it, when it was asked [s since
#: 1970]; 'p', which page, who, what the pages are kept as.
_DATA = re.compile(
    r"(?:c\d{1,4}|p(?P<page>\d{1,4}))\.(?P<who>\d{1,20})\.(?P<rest>(?(page)\w+|\d{1,11}))", re.ASCII
)
#: Shown as typing where an answer takes longer [s].
SLOW_S = 1.0
#: Larger files are not read [bytes].
MOST_BYTES = 5_000_000
#: Longer texts are not read [characters].
MOST_CHARS = 4096
#: A message may be edited to call us for so long; our answers are remembered longer.
LATE_CALL = timedelta(days=1)
#: Notes that a message was put on record, beside the buttons that were pressed.
_ON_RECORD = "on record"
_INLINE_CACHE_S = 300
_NO_PREVIEW = {"is_disabled": True}
_FETCH_S = 30.0


class Carrier:
    """Handles the updates of one bot."""

    def __init__(self, me: Bot) -> None:
        self._me = me
        self._paces: OrderedDict[tuple[int | str, str], Pace] = OrderedDict()

    # --- messages ---

    async def said(self, update: Update, context: Context) -> None:
        """A message in words."""
        message, words = _message(update), words_for(update)
        told = heard(message, self._me)
        if told is not None and not await self._too_fast(message, told, words):
            await self._hear(message, told, words)

    async def _hear(
        self, message: Message, told: Heard, words: Wording, *, late: bool = False
    ) -> None:
        """Answer what was said to us for the first time; `late` where an edit made it so."""
        work = WORK.get()
        incoming = self._incoming(message, told)
        if told.group_id is not None and not told.command and await work.is_quiet(incoming):
            return
        below = incoming.below
        if below is not None:
            asker, newest = await work.asker(message.chat.id, below)
            follows = asker if told.group_id is not None and asker != told.person else None
            incoming = replace(incoming, follows=follows, overtaken=not newest)
        place = self._place(message, told)
        if len(message.text or message.caption or "") > MOST_CHARS:
            work.send(place.message(words.say("post-too-long")))
            return
        if told.start is not None:
            await self._started(work, incoming, told.start, place, words)
            return
        if late and not await work.first_tap(message.chat.id, message.message_id, _ON_RECORD):
            return
        # In a topic every message replies to one of the messenger's own.
        small_talk = told.group_id is not None and not told.command and below is not None
        await self._answer(work, incoming, place, words, unless="help" if small_talk else "")

    async def edited(self, update: Update, context: Context) -> None:
        """A message that was changed: a question has its answer changed.

        One of a group that called us only now is answered as if it were new.
        """
        message, words = _message(update), words_for(update)
        told, work = heard(message, self._me), WORK.get()
        if told is None or told.start is not None:
            return
        before = await work.answered(message.chat.id, message.message_id)
        called_late = told.group_id is not None and _when(message) - message.date <= LATE_CALL
        if (before is None and not called_late) or await self._too_fast(message, told, words):
            return
        if before is None:
            await self._hear(message, told, words, late=True)
            return
        place = self._place(message, told)
        if before.kind != PICTURE and not edited_anew(before.kind):
            work.send(place.message(words.say("post-on-record"), kind=before.kind))
            return
        async with self._typing(place):
            answer = await work.answer(self._incoming(message, told))
        words = wording(answer.language)
        if before.kind == PICTURE or answer.picture is not None:  # no edit turns one to the other
            await _promise(work, answer, place, words)
            return
        text, keyboard = await shown(work, answer, place, words)
        work.send(place.edit(before.answer_id, text, keyboard, answer.kind))

    async def forwarded(self, update: Update, context: Context) -> None:
        """Somebody else's words: answered as a question, never put on record."""
        message, words = _message(update), words_for(update)
        if message.chat.type != ChatType.PRIVATE:
            return
        told = heard(message, self._me)
        if told is None or told.command or await self._too_fast(message, told, words):
            return
        work, place = WORK.get(), self._place(message, told)
        answer = ask(told.text[:MOST_CHARS], await work.setting(self._incoming(message, told)))
        text, keyboard = await shown(work, answer, place, words)
        work.send(place.message(text, keyboard, answer.kind))

    async def document(self, update: Update, context: Context) -> None:
        """A file: what was exported here is taken in again, after a yes."""
        message, words, work = _message(update), words_for(update), WORK.get()
        told = heard(message, self._me)
        if message.chat.type != ChatType.PRIVATE or told is None or message.document is None:
            return
        if await self._too_fast(message, told, words):
            return
        place, file = self._place(message, told), message.document
        if (file.file_size or 0) > MOST_BYTES or not (file.file_name or "").endswith(".json"):
            work.send(place.message(words.say("post-only-text")))
            return
        # The file is named by its number, so that it can be fetched again after the yes.
        said = words.say("post-import-says", name=f"{file.file_id}.json")
        incoming = self._incoming(message, told, text=said)
        await self._answer(work, incoming, place, words)

    async def location(self, update: Update, context: Context) -> None:
        """A place: offer to set the home there."""
        message, words, work = _message(update), words_for(update), WORK.get()
        told = heard(message, self._me)
        if message.chat.type != ChatType.PRIVATE or told is None or message.location is None:
            return
        if await self._too_fast(message, told, words):
            return
        from bot.conversation.homes import nearest_home  # reads a table of towns

        spot, place = message.location, self._place(message, told)
        home = await asyncio.to_thread(nearest_home, spot.latitude, spot.longitude, words.language)
        if home is None:
            work.send(place.message(words.say("post-no-place")))
            return
        named = {"place": home.name, "country": home.country or "none"}
        data = f"c0.{place.user_id}.{place.stamp}"
        button = {"text": words.say("post-place-says", **named)[:64], "callback_data": data}
        work.send(place.message(words.say("post-place", **named), [[button]]))

    async def other(self, update: Update, context: Context) -> None:
        """A picture, a sticker, a voice: in private we say what we read."""
        message, words = _message(update), words_for(update)
        told = heard(message, self._me)
        private = message.chat.type == ChatType.PRIVATE
        if private and told is not None and not await self._too_fast(message, told, words):
            WORK.get().send(self._place(message, told).message(words.say("post-only-text")))

    async def nothing(self, update: Update, context: Context) -> None:
        """What needs no answer."""

    # --- buttons ---

    async def tapped(self, update: Update, context: Context) -> None:
        """A button below one of our messages."""
        query, words, work = update.callback_query, words_for(update), WORK.get()
        assert query is not None  # the menu sends nothing else here
        if not self._pace(("tap", str(query.from_user.id))).may_ask(time.monotonic()):
            return
        message, data = query.message, query.data or ""
        text = _button(message, data) if isinstance(message, Message) else None
        parts = _DATA.fullmatch(data)  # another version of ours may have written it in another way
        if text is None or parts is None or not isinstance(message, Message):
            work.send(_note(query, words.say("post-stale-button")))
            return
        page, owner, rest = parts["page"], int(parts["who"]), parts["rest"]
        if owner not in (0, query.from_user.id):
            work.send(_note(query, words.say("post-not-yours")))
            return
        # The message is our own: as whom it was written says nothing of who presses.
        may_set = self._asking(message.chat, query.from_user.id)
        if owner == 0 and not await may_set():
            work.send(_note(query, words.say("post-for-administrators")))
            return
        asker, newest = await work.asker(message.chat.id, message.message_id)
        if not await work.first_tap(message.chat.id, message.message_id, data):
            work.send(_note(query, words.say("post-done-already")))
            return
        work.send(_note(query, None))
        in_group = message.chat.type != ChatType.PRIVATE
        # What an administrator asked who stays anonymous, any of them may answer for that one.
        person = asker if owner == 0 and asker else str(query.from_user.id)
        told = Heard(text, person, query.from_user.id, message.chat.id if in_group else None)
        place = self._place(message, told)
        if page is not None:
            await self._page(work, rest, int(page), place, words)
            return
        asked = datetime.fromtimestamp(int(rest), UTC)
        now = datetime.now(UTC).replace(microsecond=0)  # as the button's stamp will have it
        below = message.message_id
        incoming = self._incoming(
            message,
            told,
            said_at=now,
            tapped_at=asked,
            below=below,
            overtaken=not newest,
            may_set=may_set if in_group else None,
        )
        place = self._place(message, told, stamp=int(incoming.said_at.timestamp()))
        await self._answer(work, incoming, place, words)

    async def _page(self, work: Work, name: str, page: int, place: Place, words: Wording) -> None:
        kept = await work.card(name)
        pages = json.loads(kept) if kept is not None else []
        if not 1 <= page <= len(pages):
            work.send(place.message(words.say("post-card-gone")))
            return
        more = page < len(pages)
        button = next_button(name, page + 1, len(pages), place.user_id, words)
        work.send(place.message(pages[page - 1], [[button]] if more else None))

    # --- everywhere else ---

    async def inline(self, update: Update, context: Context) -> None:
        """A dose card for any chat; of the question alone, so it is the same for all who ask."""
        query, words, work = update.inline_query, words_for(update), WORK.get()
        assert query is not None
        if not self._pace(("inline", str(query.from_user.id))).may_ask(time.monotonic()):
            return
        question = query.query.strip()
        results: list[dict[str, Any]] = []
        if question:
            answer = _anywhere(question, datetime.now(UTC))
            if answer.kind in ("dose", "no_feed"):
                name = await work.keep_card(question, person=str(query.from_user.id))
                results = [card(answer, question, name, self._me.username, words)]
        button = {"text": words.say("post-card-ask"), "start_parameter": "hello"}
        body: dict[str, Any] = {
            "inline_query_id": query.id,
            "results": results,
            "cache_time": _INLINE_CACHE_S if results else 0,
            "is_personal": True,  # it is said in the language of who asks
        }
        if not results:
            body["button"] = button
        work.send(Letter(f"inline:{query.from_user.id}", "answerInlineQuery", body))

    async def membership(self, update: Update, context: Context) -> None:
        """We were let in, or shown out."""
        changed, work = update.my_chat_member, WORK.get()
        assert changed is not None
        chat, now = changed.chat, changed.new_chat_member
        if not _may_write(now):
            await work.leave(chat.id)
            return
        await work.come_back(chat.id)
        if chat.type in (ChatType.GROUP, ChatType.SUPERGROUP) and _away(changed.old_chat_member):
            reads_all = bool(self._me.bot.can_read_all_group_messages)
            told = words_for(update).say(
                "post-added",
                mentions="yes" if reads_all or now.status == ChatMember.ADMINISTRATOR else "no",
                known="yes" if await work.knows(chat.id) else "no",
            )
            body = {"chat_id": chat.id, "text": told, "link_preview_options": _NO_PREVIEW}
            work.send(Letter(str(chat.id), "sendMessage", body))

    async def migrated(self, update: Update, context: Context) -> None:
        """A group got a new number."""
        message, work = _message(update), WORK.get()
        if message.migrate_to_chat_id is not None:
            await work.move_group(CHANNEL, message.chat.id, message.migrate_to_chat_id)
        elif message.migrate_from_chat_id is not None:
            await work.move_group(CHANNEL, message.migrate_from_chat_id, message.chat.id)

    async def broken(self, update: object, context: Context) -> None:
        """Hand a handler's fault to the worker."""
        if context.error is not None:
            FAULT.get().append(context.error)

    # --- reminders ---

    async def ping(
        self, work: Work, chat: str, answer: Answer, topic: int | None = None
    ) -> list[Letter]:
        """The message of a ping; a group's buttons are for its administrators."""
        chat_id = int(chat)
        place = Place(
            chat_id=chat_id,
            message_id=None,
            topic=topic,
            user_id=max(0, chat_id),
            person=chat,
            in_group=chat_id < 0,
            stamp=int(time.time()),
            me=self._me.username,
        )
        words = wording(answer.language)
        text, keyboard = await shown(work, answer, place, words)
        letter = place.message(text, keyboard)
        return [replace(letter, body={**letter.body, "again": words.say("ping-repeat")})]

    # --- how ---

    async def _started(
        self, work: Work, incoming: Incoming, payload: str, place: Place, words: Wording
    ) -> None:
        """A link that was followed, or the first word of all."""
        kind, _, name = payload.partition("_")
        if kind not in ("d", "q", "s") or not name:
            await self._answer(work, replace(incoming, opening=True), place, words)
            return
        question = await work.card(name) if name.isalnum() else None
        if question is None:
            work.send(place.message(words.say("post-card-gone")))
            return
        if kind == "d":
            work.send(place.message(question))
            return
        own = replace(incoming, text=question, saving=kind == "s", shared=kind == "q")
        await self._answer(work, own, place, words)

    async def _answer(
        self, work: Work, incoming: Incoming, place: Place, words: Wording, unless: str = ""
    ) -> None:
        """Answer a message; an answer of the kind `unless` is kept to ourselves."""
        async with self._typing(place):
            answer = await work.answer(incoming)
        if answer.kind == unless:
            return
        if place.in_group and place.message_id is not None and not edited_anew(answer.kind):
            # Should it be edited before our answer is out, it is not put on record twice.
            work.note_tap(place.chat_id, place.message_id, _ON_RECORD)
        if answer.language != words.language:
            words = wording(answer.language)
        await _promise(work, answer, place, words)

    @asynccontextmanager
    async def _typing(self, place: Place) -> AsyncIterator[None]:
        """Show that we are at it, where it takes long."""

        async def show() -> None:
            await asyncio.sleep(SLOW_S)
            with suppress(TelegramError):
                await self._me.send_chat_action(
                    place.chat_id, ChatAction.TYPING, message_thread_id=place.topic
                )

        task = asyncio.create_task(show())
        try:
            yield
        finally:
            task.cancel()

    def _incoming(self, message: Message, told: Heard, **changes: Any) -> Incoming:
        group = told.group_id
        may_set = self._asking(message.chat, told.user_id, message.sender_chat)
        values: dict[str, Any] = {
            "text": told.text,
            "person": told.person,
            "channel": CHANNEL,
            "said_at": _when(message),
            "menu": told.menu,
            "phone_language": told.language or None,
            "topic": topic_of(message),
            "below": self._below(message),
            "group": None if group is None else str(group),
            "may_set": None if group is None else may_set,
            "open_file": self._opened if group is None else None,
        }
        return Incoming(**{**values, **changes})

    def _below(self, message: Message) -> int | None:
        """Our message that somebody replied to."""
        replied = message.reply_to_message
        sender = replied.from_user if replied is not None else None
        if replied is None or sender is None or sender.id != self._me.id:
            return None
        return replied.message_id

    async def _opened(self, name: str) -> str | None:
        """A file that was sent to us, by its number.

        Raises
        ------
        TimeoutError
            It did not come in time.
        """
        return await asyncio.wait_for(self._fetched(name), _FETCH_S)

    async def _fetched(self, name: str) -> str | None:
        try:
            file = await self._me.get_file(name.removesuffix(".json"))
            # Of a path on this machine the library would read that file, whosever it is.
            is_address = (file.file_path or "").startswith(("https://", "http://"))
            if (file.file_size or 0) > MOST_BYTES or not is_address:
                return None
            raw = await file.download_as_bytearray()
        except TimedOut as error:
            raise TimeoutError from error
        except TelegramError:
            return None
        if len(raw) > MOST_BYTES:  # what was said of its size is not trusted
            return None
        return raw.decode("utf-8", errors="replace")

    def _asking(
        self, chat: Chat, user_id: int, writes_as: Chat | None = None
    ) -> Callable[[], Awaitable[bool]]:
        """Tells whether somebody may change what holds for a group; the messenger is asked once.

        `writes_as` is the chat in whose name they write, None for their own.
        """
        told: list[bool] = []

        async def may_set() -> bool:
            if not told:
                told.append(await self._administers(chat, user_id, writes_as))
            return told[0]

        return may_set

    async def _administers(self, chat: Chat, user_id: int, writes_as: Chat | None) -> bool:
        if chat.type == ChatType.PRIVATE:
            return True
        if writes_as is not None and writes_as.id == chat.id:
            return True  # an administrator who stays anonymous
        if user_id == 0:
            return False
        try:
            member = await self._me.get_chat_member(chat.id, user_id)
        except TelegramError:
            return False
        return member.status in (ChatMember.ADMINISTRATOR, ChatMember.OWNER)

    def _place(self, message: Message, told: Heard, stamp: int | None = None) -> Place:
        return Place(
            chat_id=message.chat.id,
            message_id=message.message_id,
            topic=topic_of(message),
            user_id=told.user_id,
            person=told.person,
            in_group=told.group_id is not None,
            stamp=stamp if stamp is not None else int(_when(message).timestamp()),
            me=self._me.username,
        )

    async def _too_fast(self, message: Message, told: Heard, words: Wording) -> bool:
        """Whether a person floods us; they are told once, and the others are not slowed."""
        pace = self._pace((told.group_id or "own", told.person))
        if pace.may_ask(time.monotonic()):
            return False
        if not pace.told:
            pace.told = True
            text = words.say("post-slow-down", seconds=int(pace.refill_s))
            WORK.get().send(self._place(message, told).message(text))
        return True

    def _pace(self, key: tuple[int | str, str]) -> Pace:
        """What somebody has left: in a group by its number, elsewhere by the way they come."""
        pace = self._paces.pop(key, None)
        if pace is None:
            own = isinstance(key[0], str)
            most, refill_s = (OWN_BURST, OWN_REFILL_S) if own else (BURST, REFILL_S)
            pace = Pace(time.monotonic(), refill_s, most, left=float(most))
        self._paces[key] = pace
        while len(self._paces) > _MOST_PACES:
            self._paces.popitem(last=False)
        return pace


@dataclass(slots=True)
class Pace:
    """How fast somebody asks: a token bucket."""

    since: float
    refill_s: float
    most: int
    left: float
    told: bool = False

    def may_ask(self, now: float) -> bool:
        """Take one question from what is left [clock in s]."""
        self.left = min(float(self.most), self.left + (now - self.since) / self.refill_s)
        self.since = now
        if self.left < 1:
            return False
        self.left -= 1
        self.told = False
        return True


async def _promise(work: Work, answer: Answer, place: Place, words: Wording) -> None:
    text, keyboard = await shown(work, answer, place, words)
    if answer.kind == "forget":  # who is forgotten is not noted down for the answer to it
        work.send(replace(place.message(text, keyboard), answers=None))
        if answer.details:
            work.forget_taps()
    elif answer.picture is None:
        work.send(place.message(text, keyboard, answer.kind))
    else:
        for letter in place.pictured(answer.picture, text, keyboard, answer.kind):
            work.send(letter)
    if answer.file is not None:
        for letter in documents(answer.file, place):
            work.send(letter)


def _anywhere(question: str, now: datetime) -> Answer:
    """The weakest answer of both hemispheres: who reads a card may live anywhere.

    Between the first and the last place the date may be in another month.
    """
    ends = [(now + timedelta(hours=h)).date() for h in (-12, 14)]
    days = {day.month: day for day in ends}.values()
    answers = [ask(question, Setting(day, south)) for day in days for south in (False, True)]
    amounts = [a.dose.amount if a.dose is not None else 0.0 for a in answers]
    weakest = answers[amounts.index(min(amounts))]
    if min(amounts) == max(amounts):
        return weakest
    first, _, rest = weakest.reply.partition("\n")
    note = wording(weakest.language).say("post-card-season")
    return weakest.model_copy(update={"reply": f"{first}\n{note}\n{rest}".strip()})


def _away(member: ChatMember) -> bool:
    """Whether somebody is no member of a chat."""
    if isinstance(member, ChatMemberRestricted):
        return not member.is_member
    return member.status in (ChatMember.LEFT, ChatMember.BANNED)


def _may_write(member: ChatMember) -> bool:
    """Whether somebody can write in a chat."""
    mute = isinstance(member, ChatMemberRestricted) and not member.can_send_messages
    return not (mute or _away(member))


def _message(update: Update) -> Message:
    message = update.effective_message
    assert message is not None  # the menu sends nothing else here
    return message


def _when(message: Message) -> datetime:
    return message.edit_date or message.date


def _button(message: Message, data: str) -> str | None:
    """The text of the button with this data below a message of ours; data alone is not trusted."""
    markup = message.reply_markup
    for row in markup.inline_keyboard if markup is not None else ():
        for button in row:
            if button.callback_data == data:
                return button.text
    return None


def _note(query: CallbackQuery, text: str | None) -> Letter:
    body: dict[str, Any] = {"callback_query_id": query.id}
    if text is not None:
        body["text"] = text[:200]
    return Letter(f"tap:{query.from_user.id}", "answerCallbackQuery", body)
