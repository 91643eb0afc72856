"""A fault of ours: an apology for the person, context without the message for the log."""

from __future__ import annotations

import logging
from datetime import date

import pytest

from bot import cli
from bot.conversation.ask import Setting


def test_a_fault_is_logged_without_the_message_and_answered_with_an_apology(
    monkeypatch: pytest.MonkeyPatch, caplog: pytest.LogCaptureFixture
) -> None:
    def broken(message: str, setting: Setting) -> None:
        raise RuntimeError("broken on purpose")

    monkeypatch.setattr(cli, "ask", broken)
    with caplog.at_level(logging.ERROR):
        answer, apology = cli.answered("5 l of something private", Setting(date(2026, 7, 1)))
    assert answer is None
    assert apology.startswith("Sorry")
    assert "broken on purpose" in caplog.text
    assert "private" not in caplog.text
