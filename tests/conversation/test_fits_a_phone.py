"""What is read on a phone held in a wet hand: short, plain, and the same to a screen reader."""

from __future__ import annotations

import re
import unicodedata
from importlib import resources

import pytest

import bot.conversation.wording as wordings
from bot.channels.telegram.showing import PAGE_CHARS, PAGE_LINES
from tests.conversation.season import LANGUAGES, approved_of

#: A phone shows so many letters in a line of a chat (ours, at the usual size of letters).
LETTERS = 42
#: And so many lines of it above the keyboard when that is closed (ours).
LINES = 36


def _replies(code: str) -> list[str]:
    """The replies of the approved season."""
    text = approved_of(code).read_text(encoding="utf-8")
    told = re.split(r"^(?:> .*|## .*)$", text, flags=re.MULTILINE)
    return [reply.strip() for reply in told if reply.strip()]


@pytest.mark.parametrize("code", LANGUAGES)
def test_every_reply_of_the_season_fits_a_screen(code: str) -> None:
    """What is longer, such as a long list, stands on further pages in the messenger."""
    too_long = [
        reply
        for reply in _replies(code)
        if sum(max(1, -(-len(line) // LETTERS)) for line in reply.splitlines()) > LINES
    ]
    assert too_long == []


@pytest.mark.parametrize("code", LANGUAGES)
def test_nearly_all_replies_stand_on_one_page(code: str) -> None:
    replies = _replies(code)
    paged = [r for r in replies if len(r) > PAGE_CHARS or r.count("\n") >= PAGE_LINES]
    assert len(paged) <= 0.02 * len(replies)


@pytest.mark.parametrize("code", LANGUAGES)
def test_nothing_is_said_by_pictures_of_letters(code: str) -> None:
    """A screen reader names emoji, arrows and boxes at length, or passes over them."""
    text = resources.files(wordings.__name__).joinpath(f"{code}.ftl").read_text("utf-8")
    odd = {c for c in text if unicodedata.category(c) in ("So", "Co", "Cn")} - {"°"}
    assert odd == set()
    assert "\u200d" not in text
