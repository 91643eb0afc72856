"""From an update to who said what, where, and whether it was meant for us."""

from __future__ import annotations

import re
from dataclasses import dataclass
from typing import Any

from telegram import Bot, Message, MessageEntity, Update, User
from telegram.constants import ChatType

from bot.conversation.wording import Wording, languages, wording

CHANNEL = "telegram"
#: The commands of the menu, in its order.
COMMANDS = ("dose", "plan", "plants", "shelf", "diary", "undo", "help")
_COMMAND = re.compile(r"/([a-z_]+)(?:@(\w+))?(?:\s+|$)(.*)", re.IGNORECASE | re.DOTALL)
_GROUPS = (ChatType.GROUP, ChatType.SUPERGROUP)


@dataclass(frozen=True, slots=True)
class Heard:
    """What somebody said to us.

    Attributes
    ----------
    text : what is to be answered, without our name or the command
    person : who said it, as the records name them
    user_id : who may press the buttons below the answer; 0 for an anonymous administrator
    group_id : the group it was said in, None in private
    command : empty where there was none
    menu : a command whose words the conversation puts before the text
    start : the payload of a link, None where it was none
    language : code of the language of their phone, empty where unknown
    """

    text: str
    person: str
    user_id: int
    group_id: int | None
    command: str = ""
    menu: str = ""
    start: str | None = None
    language: str = ""


def lane_of(body: dict[str, Any]) -> str:
    """What must be answered in order: a person, or a person in a group.

    Parameters
    ----------
    body : an update as it came
    """
    for kind, value in body.items():
        if kind == "update_id" or not isinstance(value, dict):
            continue
        message = value.get("message") if kind == "callback_query" else value
        message = message if isinstance(message, dict) else {}
        chat = _id(message.get("chat"))
        sender = _id(value.get("from")) or _id(value.get("sender_chat"))
        return f"{chat}:{sender}"[:128]
    return "none"


def words_of(body: dict[str, Any]) -> Wording:
    """As `words_for`, of an update that perhaps nobody can read.

    Parameters
    ----------
    body : an update as it came
    """
    senders = (value.get("from") for value in body.values() if isinstance(value, dict))
    user = next((sender for sender in senders if isinstance(sender, dict)), {})
    code = user.get("language_code")
    return _words(code if isinstance(code, str) else None)


def asked_by_command(body: dict[str, Any]) -> dict[str, Any]:
    """Where an apology goes for a command of ours in a group; empty where it was none.

    Parameters
    ----------
    body : an update as it came
    """
    found = body.get("message")
    message: dict[str, Any] = found if isinstance(found, dict) else {}
    text = message.get("text")
    command = _COMMAND.fullmatch(text.strip()) if isinstance(text, str) else None
    if command is None or command[1].lower() not in COMMANDS or _id(message.get("chat")) >= 0:
        return {}
    topic = message.get("message_thread_id") if message.get("is_topic_message") else None
    replied = {"message_id": message["message_id"], "allow_sending_without_reply": True}
    return {"reply_parameters": replied, **({"message_thread_id": topic} if topic else {})}


def _id(value: Any) -> int:
    found = value.get("id") if isinstance(value, dict) else None
    return found if isinstance(found, int) else 0


def words_for(update: Update) -> Wording:
    """The language of what we say of our own accord."""
    user = update.effective_user
    return _words(user.language_code if user is not None else None)


def _words(code: str | None) -> Wording:
    language = (code or "").partition("-")[0]
    return wording(language if language in languages() else "en")


def _language_of(user: User | None) -> str:
    return (user.language_code or "").partition("-")[0] if user is not None else ""


def heard(message: Message, me: Bot) -> Heard | None:
    """What a message says to us; None where it is not for us to answer.

    In a group only a command, a reply to us or a mention is for us.
    """
    user, sender = message.from_user, message.sender_chat
    if message.via_bot is not None or message.is_automatic_forward:
        return None
    if user is not None and user.is_bot and sender is None:
        return None
    in_group = message.chat.type in _GROUPS
    if not in_group and message.chat.type != ChatType.PRIVATE:
        return None
    written = message.text or message.caption or ""
    text = without_name(written, me.username)
    command = _COMMAND.fullmatch(written.strip())
    if command is not None and (command[2] or me.username).lower() != me.username.lower():
        return None  # meant for another bot
    said, name, menu, start = text, "", "", None
    if command is not None:
        name, rest = command[1].lower(), without_name(command[3], me.username)
        if name == "start":
            start, said = rest.strip(), ""
        elif name in COMMANDS:
            said, menu = rest, "" if name == "dose" and rest else name
        elif command[2] is not None:  # by name it is ours, whatever it is
            said = f"{name.replace('_', ' ')} {rest}".strip()
        elif in_group:
            return None
    if in_group and command is None and not _addressed(message, me):
        return None
    anonymous = sender is not None
    person = f"chat{sender.id}" if sender is not None else str(user.id if user else 0)
    return Heard(
        text=said.strip(),
        person=person,
        user_id=0 if anonymous or user is None else user.id,
        group_id=message.chat.id if in_group else None,
        command=name,
        menu=menu,
        start=start,
        language=_language_of(user),
    )


def without_name(text: str, username: str) -> str:
    """A text without our own name in it."""
    return re.sub(rf"@{re.escape(username)}\b", " ", text, flags=re.IGNORECASE).strip()


def _addressed(message: Message, me: Bot) -> bool:
    replied = message.reply_to_message
    if replied is not None and replied.from_user is not None and replied.from_user.id == me.id:
        return True
    for entity, text in {**message.parse_entities(), **message.parse_caption_entities()}.items():
        if entity.type == MessageEntity.MENTION and text.lower() == f"@{me.username}".lower():
            return True
        named = entity.user
        if entity.type == MessageEntity.TEXT_MENTION and named is not None and named.id == me.id:
            return True
    return False


def topic_of(message: Message) -> int | None:
    """The topic a message stands in."""
    return message.message_thread_id if message.is_topic_message else None
