"""Requests that were promised, sent; and what to make of the messenger's refusal."""

from __future__ import annotations

import base64
import logging
import re
from collections.abc import Awaitable, Callable
from dataclasses import replace
from typing import Any

from telegram import (
    Bot,
    InlineKeyboardMarkup,
    InlineQueryResultArticle,
    InlineQueryResultsButton,
    InputFile,
    InputTextMessageContent,
    LinkPreviewOptions,
    Message,
    ReplyParameters,
)
from telegram.error import (
    BadRequest,
    ChatMigrated,
    Forbidden,
    NetworkError,
    RetryAfter,
    TelegramError,
    TimedOut,
)

from bot.channels.telegram.requests import Unanswered
from bot.conversation.postbox import FIRST_WAIT_MS, Claimed, Settled, now_ms

log = logging.getLogger("sinkside.telegram")

#: A request that the network failed so often is given up: with doubling waits, half an hour.
MOST_TRIES = 11
#: Of the messenger's reasons so much stands in the log.
_PLAIN, _REASON_CHARS = re.compile(r"[A-Za-z_ ]*"), 60
#: What the messenger says of a topic that takes no messages.
_NO_TOPIC = re.compile(r"thread not found|TOPIC_(?:CLOSED|DELETED)", re.IGNORECASE)
_NO_PREVIEW = LinkPreviewOptions(is_disabled=True)


def as_sent(letter: Claimed) -> Claimed:
    """A request as it goes out: one that may have gone out before says so, where it has words."""
    body = dict(letter.body)
    note = body.pop("again", None)
    if letter.again and note and "text" in body:
        body["text"] = f"{body['text']}\n{note}"
    return replace(letter, body=body)


async def send(bot: Bot, letter: Claimed, settled: Settled) -> None:
    """Send one request, and note what became of it.

    Never raises for what the messenger or the network answers.
    """
    try:
        settled.sent.append((letter, await _sent(bot, letter)))
    except RetryAfter as error:
        wait = error.retry_after
        seconds = wait if isinstance(wait, int | float) else wait.total_seconds()
        settled.later.append((letter, now_ms() + int(1000 * seconds) + 1, letter.tries))
    except Forbidden:
        settled.dead.append(letter)
        settled.lost.append(int(letter.body.get("chat_id", 0)))
    except ChatMigrated as error:
        settled.moved.append((letter, error.new_chat_id))
    except BadRequest as error:
        if "not modified" in str(error):
            settled.sent.append((letter, None))
        else:
            log.warning("%s was refused: %s", letter.method, _reason(error))
            settled.dead.append(letter)
    except NetworkError as error:
        tries = letter.tries + 1
        if tries >= MOST_TRIES:
            log.warning("%s was given up: %s", letter.method, type(error).__name__)
            settled.dead.append(letter)
        else:
            unsure = isinstance(error, TimedOut | Unanswered)
            later = replace(letter, again=letter.again or unsure)
            settled.later.append((later, now_ms() + FIRST_WAIT_MS * 2**letter.tries, tries))
    except TelegramError as error:
        log.error("%s failed: %s", letter.method, type(error).__name__)
        settled.dead.append(letter)


async def _sent(bot: Bot, letter: Claimed) -> int | None:
    """Send one request; a reminder whose topic is closed or gone is heard in the general one."""
    method, body = _METHODS[letter.method], dict(letter.body)
    try:
        return await method(bot, body)
    except BadRequest as error:
        topic, pings = body.pop("message_thread_id", None), "pings" in (letter.answers or {})
        if topic is None or not pings or not _NO_TOPIC.search(str(error)):
            raise
        return await method(bot, body)


def _reason(error: TelegramError) -> str:
    """The beginning of what the messenger says, up to where it could quote a text or a number."""
    plain = _PLAIN.match(str(error))
    return plain[0].strip()[:_REASON_CHARS] if plain else ""


def _markup(body: dict[str, Any], bot: Bot) -> InlineKeyboardMarkup | None:
    markup = body.get("reply_markup")
    if not markup or not markup["inline_keyboard"]:
        return None
    return InlineKeyboardMarkup.de_json(dict(markup), bot)


async def _message(bot: Bot, body: dict[str, Any]) -> int | None:
    replies = body.get("reply_parameters")
    made = await bot.send_message(
        body["chat_id"],
        body["text"],
        message_thread_id=body.get("message_thread_id"),
        link_preview_options=_NO_PREVIEW,
        reply_parameters=ReplyParameters(**replies) if replies else None,
        reply_markup=_markup(body, bot),
    )
    return made.message_id


async def _edit(bot: Bot, body: dict[str, Any]) -> int | None:
    made = await bot.edit_message_text(
        body["text"],
        chat_id=body["chat_id"],
        message_id=body["message_id"],
        link_preview_options=_NO_PREVIEW,
        reply_markup=_markup(body, bot),
    )
    return made.message_id if isinstance(made, Message) else int(body["message_id"])


async def _photo(bot: Bot, body: dict[str, Any]) -> int | None:
    """A picture; where the messenger refuses it, at least what stands below it."""
    replies, photo = body.get("reply_parameters"), body["photo"]
    try:
        made = await bot.send_photo(
            body["chat_id"],
            InputFile(base64.b64decode(photo["content"]), filename=photo["name"]),
            caption=body["caption"],
            message_thread_id=body.get("message_thread_id"),
            reply_parameters=ReplyParameters(**replies) if replies else None,
            reply_markup=_markup(body, bot),
        )
    except BadRequest as error:
        log.warning("a picture was refused: %s", _reason(error))
        return await _message(bot, {**body, "text": body["caption"]})
    return made.message_id


async def _document(bot: Bot, body: dict[str, Any]) -> int | None:
    file = InputFile(body["file"]["content"].encode("utf-8"), filename=body["file"]["name"])
    made = await bot.send_document(
        body["chat_id"], file, message_thread_id=body.get("message_thread_id")
    )
    return made.message_id


async def _tap(bot: Bot, body: dict[str, Any]) -> int | None:
    await bot.answer_callback_query(body["callback_query_id"], text=body.get("text"))
    return None


async def _inline(bot: Bot, body: dict[str, Any]) -> int | None:
    results = [
        InlineQueryResultArticle(
            id=r["id"],
            title=r["title"],
            description=r["description"],
            input_message_content=InputTextMessageContent(
                r["input_message_content"]["message_text"], link_preview_options=_NO_PREVIEW
            ),
            reply_markup=_markup(r, bot),
        )
        for r in body["results"]
    ]
    button = body.get("button")
    await bot.answer_inline_query(
        body["inline_query_id"],
        results,
        cache_time=body["cache_time"],
        is_personal=body["is_personal"],
        button=InlineQueryResultsButton(**button) if button else None,
    )
    return None


_METHODS: dict[str, Callable[[Bot, dict[str, Any]], Awaitable[int | None]]] = {
    "sendMessage": _message,
    "editMessageText": _edit,
    "sendPhoto": _photo,
    "sendDocument": _document,
    "answerCallbackQuery": _tap,
    "answerInlineQuery": _inline,
}
