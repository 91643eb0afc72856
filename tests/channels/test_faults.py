"""A fault of ours: an apology for the person, context without the message for the log."""

from __future__ import annotations

import json
import logging
from datetime import date

import pytest
from click.testing import CliRunner

from bot import cli
from bot.conversation.ask import Setting
from bot.conversation.ask import ask as really_ask


@pytest.fixture
def broken_on_request(monkeypatch: pytest.MonkeyPatch) -> None:
    def ask(message: str, setting: Setting) -> object:
        if "break" in message:
            raise RuntimeError("broken on purpose")
        return really_ask(message, setting)

    monkeypatch.setattr(cli, "ask", ask)


@pytest.mark.usefixtures("broken_on_request")
def test_a_fault_is_logged_without_the_message_and_answered_with_an_apology(
    caplog: pytest.LogCaptureFixture,
) -> None:
    with caplog.at_level(logging.ERROR):
        answer = cli.answered("break 5 l of something private", Setting(date(2026, 7, 1)))
    assert answer.kind == "fault"
    assert answer.dose is None
    assert answer.reply.startswith("Sorry")
    assert "broken on purpose" in caplog.text
    assert "private" not in caplog.text


@pytest.mark.usefixtures("broken_on_request")
def test_a_fault_in_a_batch_is_a_json_line_too_and_ends_with_1() -> None:
    lines = "2 l 20-20-20 powder\nbreak\n3 l 20-20-20 powder\n"
    done = CliRunner().invoke(cli.cli, ["ask", "--json", "--batch"], input=lines)
    kinds = [json.loads(line)["kind"] for line in done.stdout.splitlines() if line[:1] == "{"]
    assert kinds == ["dose", "fault", "dose"]
    assert done.exit_code == 1
