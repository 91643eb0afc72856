"""What somebody could send on purpose: files, texts."""

from __future__ import annotations

import json
from typing import Any

#: Each steers a screen, a spreadsheet, a page, a log or a template; none is a dose.
TEXTS = (
    "\x1b]0;owned\x07 \x1b[31mred",
    "nul \x00 and \x7f and \x9b31m",
    "turned \u202e02-02-02\u202c round \u2066x\u2069",
    "<b>bold</b> <script>alert(1)</script> &amp; <a href='https://evil.invalid'>x</a>",
    "*bold* _it_ [x](https://evil.invalid) ```code``` ||spoiler||",
    "{ $name } { -brand } { 1 -> *[a] b } %s %(x)s {0} ${jndi:x}",
    "=cmd|' /C calc'!A0",
    "'; DROP TABLE plant; --",
    '" OR 1=1 --',
    "../../../etc/passwd",
    "line\nlevel=critical event=forged",
    "x" * 4000,
    "\u0301" * 3000,
    "(" * 3000,
    "1/" * 2000,
    "5 l " * 1000,
    "\U0001f480" * 1500,
    "\ud800 half",
)

PLANT = {"id": 1, "name": "Ruby", "genus": "Vanda", "count": 1, "added_on": "2026-01-01",
         "present": True}  # fmt: skip
REMINDER = {
    "id": 1, "kind": "flush", "target": {"everything": True}, "rule": "FREQ=WEEKLY",
    "start": "2026-01-01T09:00:00", "zone": "UTC", "state": "active", "due_ms": 1_772_355_600_000,
    "due_local": "2026-03-01T09:00:00", "moved": False, "offered": False,
    "created": "2026-01-01T09:00:00Z",
}  # fmt: skip


def export(**parts: Any) -> dict[str, Any]:
    """An export with a plant in it, and what is changed of it."""
    usual: dict[str, Any] = {
        "format": "sinkside-records", "version": 2, "settings": {}, "places": [], "waters": [],
        "products": [], "plants": [PLANT], "reminders": [], "events": [],
    }  # fmt: skip
    return {**usual, **parts}


def written(**parts: Any) -> str:
    """The text of such an export."""
    return json.dumps(export(**parts))


def event(number: int, kind: str = "fed", **payload: Any) -> dict[str, Any]:
    """An entry of the log about the plant, of some days ago."""
    return {"id": number, "batch": number, "kind": kind, "on": "2026-06-01", "plant_id": 1,
            "said_at": "2026-06-01T09:00:00Z", "payload": payload}  # fmt: skip
