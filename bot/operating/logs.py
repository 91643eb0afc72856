"""The log of a program that serves: one event a line, as key=value or JSON.

What never stands in it: what people wrote, their names, and the token. A traceback is told by
its places and the kinds of its errors: what an error says may quote what somebody wrote.
"""

from __future__ import annotations

import asyncio
import json
import logging
from typing import Any, TextIO
from urllib.parse import quote

import structlog
from structlog.stdlib import ProcessorFormatter
from structlog.typing import EventDict, Processor, WrappedLogger

from bot.operating.faults import kinds, places

_FIRST = ["timestamp", "level", "logger", "event", "update", "owner"]


def log_to(stream: TextIO | None, *, as_json: bool, secrets: list[str]) -> None:
    """Set the log of this program up, whatever library a line is from.

    Parameters
    ----------
    stream : where to, None for standard error
    as_json : one JSON object a line instead of key=value
    secrets : kept out of every line
    """
    handler = logging.StreamHandler(stream)
    handler.setFormatter(_Formatter(as_json, secrets))
    logging.basicConfig(level=logging.INFO, handlers=[handler], force=True)
    for talkative in ("httpx", "alembic.runtime.plugins"):  # every request, every part of a tool
        logging.getLogger(talkative).setLevel(logging.WARNING)


def quiet_loop(loop: asyncio.AbstractEventLoop, context: dict[str, Any]) -> None:
    """Log what an event loop could give to nobody, without its values.

    Set it with `loop.set_exception_handler`.
    """
    error = context.get("exception")
    log = logging.getLogger("sinkside.loop")
    log.error("%s", context.get("message", "a fault in the loop"), exc_info=error)


class _Formatter(ProcessorFormatter):
    """Any library's lines as ours, with the secrets taken out last of all."""

    def __init__(self, as_json: bool, secrets: list[str]) -> None:
        renderer: Processor = (
            structlog.processors.JSONRenderer(sort_keys=False, ensure_ascii=False)
            if as_json
            else structlog.processors.LogfmtRenderer(key_order=_FIRST, drop_missing=True)
        )
        super().__init__(
            processors=[ProcessorFormatter.remove_processors_meta, renderer],
            foreign_pre_chain=[
                structlog.contextvars.merge_contextvars,
                structlog.stdlib.add_log_level,
                structlog.stdlib.add_logger_name,
                structlog.processors.TimeStamper(fmt="iso", utc=True),
                _tell_places,
            ],
        )
        self._secrets = sorted(
            {form for secret in secrets if secret for form in _forms(secret)}, key=len, reverse=True
        )

    def format(self, record: logging.LogRecord) -> str:
        line = super().format(record)
        for secret in self._secrets:
            line = line.replace(secret, "[token]")
        return line


def _forms(secret: str) -> set[str]:
    """A secret as it may be spelled: plain, in JSON, in an address."""
    return {secret, json.dumps(secret)[1:-1], quote(secret, safe="")}


def _tell_places(_logger: WrappedLogger, _method: str, event: EventDict) -> EventDict:
    """Replace a traceback by the kinds of its errors and the places it went through."""
    record: logging.LogRecord = event["_record"]
    found = record.exc_info
    # Nobody renders it after us, neither here nor by the record's own cache.
    event.pop("exc_info", None)
    record.exc_info = record.exc_text = None
    record.stack_info = None
    if found and isinstance(found[1], BaseException):
        event["error"] = " < ".join(kinds(found[1]))
        event["at"] = " < ".join(places(found[1]))
    return event
