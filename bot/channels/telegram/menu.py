"""What is handled, at a glance: one line a kind of update."""

from __future__ import annotations

from typing import Any

from telegram import Update
from telegram.ext import (
    Application,
    CallbackQueryHandler,
    ChatMemberHandler,
    InlineQueryHandler,
    MessageHandler,
    TypeHandler,
    filters,
)

from bot.channels.telegram.carrying import Carrier

#: Only what is used is asked for.
ALLOWED_UPDATES = (
    Update.MESSAGE,
    Update.EDITED_MESSAGE,
    Update.CALLBACK_QUERY,
    Update.INLINE_QUERY,
    Update.MY_CHAT_MEMBER,
)


def set_out(application: Application[Any, Any, Any, Any, Any, Any], carrier: Carrier) -> None:
    """Tell the application who handles what; the first line that fits is taken."""
    new, edited = filters.UpdateType.MESSAGE, filters.UpdateType.EDITED_MESSAGE
    said = filters.TEXT | filters.CAPTION
    for handler in (
        CallbackQueryHandler(carrier.tapped),
        InlineQueryHandler(carrier.inline),
        ChatMemberHandler(carrier.membership, ChatMemberHandler.MY_CHAT_MEMBER),
        MessageHandler(new & filters.StatusUpdate.MIGRATE, carrier.migrated),
        MessageHandler(new & filters.StatusUpdate.ALL, carrier.nothing),
        MessageHandler(new & filters.FORWARDED & said, carrier.forwarded),
        MessageHandler(new & filters.Document.ALL, carrier.document),
        MessageHandler(new & filters.LOCATION, carrier.location),
        MessageHandler(new & said, carrier.said),
        MessageHandler(edited & said, carrier.edited),
        MessageHandler(new, carrier.other),
        TypeHandler(Update, carrier.nothing),
    ):
        application.add_handler(handler)
