"""Cut the description of the Bot API down to what we use.

    python -m tests.channels.trim_bot_api SCHEMA VERSION

SCHEMA is `.butcher/schema/schema.json` of aiogram's source archive (MIT), VERSION its version.
Writes `fixtures/bot_api/schema.json`: the methods below with every type they lead to.
"""

from __future__ import annotations

import json
import re
import sys
from pathlib import Path
from typing import Any

TARGET = Path(__file__).parents[2] / "fixtures" / "bot_api" / "schema.json"
METHODS = (
    "answerCallbackQuery", "answerInlineQuery", "deleteWebhook", "editMessageReplyMarkup",
    "editMessageText", "getChatMember", "getFile", "getMe", "getUpdates", "sendChatAction",
    "sendDocument", "sendMessage", "sendPhoto", "setMyCommands", "setWebhook",
)  # fmt: skip


def trimmed(schema: dict[str, Any], version: str) -> dict[str, Any]:
    """The methods we use and the types they lead to, without prose."""
    entries = {c["name"]: c for group in schema["items"] for c in group["children"]}
    wanted, queue = {}, list(METHODS)
    while queue:
        name = queue.pop()
        if name in wanted or name not in entries:
            continue
        entry = entries[name]
        fields = [
            {"name": a["name"], "type": a["type"], "required": bool(a.get("required"))}
            for a in entry.get("annotations", [])
        ]
        subtypes = re.findall(r'<li><a href="[^"]*">(\w+)</a>', entry.get("html_description", ""))
        wanted[name] = {"fields": fields, "one_of": [] if fields else subtypes}
        for field in fields:
            queue += re.findall(r"[A-Z]\w+", field["type"])
        queue += wanted[name]["one_of"]
    notice = (
        f"Trimmed from the Bot API description in aiogram {version}, Copyright (c) 2017-present "
        "Alex Root Junior, MIT License"
    )
    return {"notice": notice, "entries": dict(sorted(wanted.items()))}


if __name__ == "__main__":
    _, path, version = sys.argv
    schema = json.loads(Path(path).read_text(encoding="utf-8"))
    text = json.dumps(trimmed(schema, version), ensure_ascii=False, indent=1)
    TARGET.write_text(text + "\n", encoding="utf-8")
