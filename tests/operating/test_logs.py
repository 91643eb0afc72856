"""The log: one event a line, whoever writes it; nothing people wrote, no token."""

from __future__ import annotations

import io
import json
import logging
from collections.abc import Callable, Iterator
from typing import Any

import pytest
from structlog.contextvars import bind_contextvars, clear_contextvars

from bot.operating.logs import log_to, quiet_loop

TOKEN = "4242:a-token_of-no/bot"
SECRET_WORDS = "my darling Ruby is dying"


@pytest.fixture(params=[False, True], ids=["text", "json"])
def lines(request: pytest.FixtureRequest) -> Iterator[Callable[[], list[str]]]:
    """Give what was logged so far; the log is set up anew, and put back afterwards."""
    root = logging.getLogger()
    handlers, level = root.handlers[:], root.level
    stream = io.StringIO()
    for handler in handlers:
        root.removeHandler(handler)  # `force` would close those of the test runner
    log_to(stream, as_json=request.param, secrets=[TOKEN])
    clear_contextvars()
    yield lambda: stream.getvalue().splitlines()
    clear_contextvars()
    root.handlers[:], root.level = handlers, level


def is_json(line: str) -> bool:
    return line.startswith("{")


def fail() -> None:
    try:
        raise ValueError(SECRET_WORDS)
    except ValueError as error:
        raise KeyError(SECRET_WORDS, TOKEN) from error


def test_a_line_has_its_time_level_logger_and_event(lines: Callable[[], list[str]]) -> None:
    logging.getLogger("sinkside").warning("update %d was taken over", 7)
    (line,) = lines()
    if is_json(line):
        event = json.loads(line)
        assert event.pop("timestamp").endswith("Z")
        assert event == {
            "level": "warning", "logger": "sinkside", "event": "update 7 was taken over",
        }  # fmt: skip
    else:
        stamp, rest = line.split(" ", 1)
        assert stamp.startswith("timestamp=2")
        assert rest == 'level=warning logger=sinkside event="update 7 was taken over"'


def test_what_is_worked_on_stands_in_every_line_of_it(lines: Callable[[], list[str]]) -> None:
    bind_contextvars(update=17, owner="group")
    logging.getLogger("some.library").error("no good")
    (line,) = lines()
    if is_json(line):
        event = json.loads(line)
        assert (event["update"], event["owner"]) == (17, "group")
    else:
        assert line.endswith(' event="no good" update=17 owner=group')


def test_a_fault_is_told_by_kind_and_place_without_what_it_says(
    lines: Callable[[], list[str]],
) -> None:
    try:
        fail()
    except KeyError:
        logging.getLogger("sinkside").exception("update %d failed", 3)
    (line,) = lines()
    assert SECRET_WORDS not in line
    assert "KeyError < ValueError" in line
    assert f"tests/operating/test_logs.py:{fail.__code__.co_firstlineno + 4}:fail" in line
    assert line.count("update 3 failed") == 1


@pytest.mark.parametrize(
    "said",
    [
        f"POST https://messenger.invalid/bot{TOKEN}/sendMessage",
        "POST https://messenger.invalid/bot4242%3Aa-token_of-no%2Fbot/sendMessage",
        f'{{"token": {json.dumps(TOKEN)}}}',
    ],
)
def test_the_token_never_stands_in_a_line(lines: Callable[[], list[str]], said: str) -> None:
    logging.getLogger("httpx").error("%s", said)
    logging.getLogger("sinkside").error("broken", extra={"url": said})
    try:
        raise OSError(said)
    except OSError:
        logging.getLogger("sinkside").exception("cannot reach %s", said)
    text = "\n".join(lines())
    assert len(lines()) == 3
    assert "[token]" in text
    assert "a-token" not in text


def test_a_line_break_in_a_message_makes_no_second_line(lines: Callable[[], list[str]]) -> None:
    logging.getLogger("sinkside").error("first\nlevel=info event=forged")
    assert len(lines()) == 1


def test_requests_of_the_library_are_not_logged(lines: Callable[[], list[str]]) -> None:
    logging.getLogger("httpx").info("HTTP Request: POST ...")
    assert lines() == []


async def test_a_fault_nobody_waited_for_is_told_without_its_values(
    lines: Callable[[], list[str]],
) -> None:
    import asyncio

    context: dict[str, Any] = {
        "message": "Task exception was never retrieved",
        "exception": ValueError(SECRET_WORDS),
        "future": f"<Task exception={SECRET_WORDS!r}>",
    }
    quiet_loop(asyncio.get_running_loop(), context)
    (line,) = lines()
    assert "Task exception was never retrieved" in line
    assert "ValueError" in line
    assert SECRET_WORDS not in line
