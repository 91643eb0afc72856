"""Texts that steer a screen, a page or a template: shown as text, and by no name of a counter."""

from __future__ import annotations

import unicodedata
from typing import Any

import pytest
from prometheus_client.parser import text_string_to_metric_families

from bot.conversation.ask import Setting, ask
from bot.conversation.wording import languages, shown, wording
from bot.operating.postbox import _count_done
from bot.records import Records
from bot.records.post import Claimed, Letter
from tests.channels.chatting import MIRA, Chat
from tests.channels.loopback import Loopback
from tests.conversation.talking import START, Grower

from .hostile import TEXTS

ROUND = ("{}", "5 l 20-20-20 powder {}", "add a phal called {}", "import {}.json", "{} in bark",
         "rename {} to {}", "remind me to {} every monday at 9")  # fmt: skip


def steers(text: str) -> list[str]:
    """Characters that a screen acts on instead of showing them."""
    turning = "\u202a\u202b\u202c\u202d\u202e\u2066\u2067\u2068\u2069"
    return [c for c in text if (unicodedata.category(c) == "Cc" and c != "\n") or c in turning]


@pytest.mark.parametrize("frame", ROUND)
async def test_an_answer_steers_no_screen(sqlite_records: Records, frame: str) -> None:
    mira = Grower(sqlite_records)
    for text in TEXTS[:11]:
        answer = await mira.says(frame.replace("{}", text))
        assert steers(answer.reply) == []
        assert not [c for choice in answer.choices for c in steers(choice)]
        assert steers(ask(frame.replace("{}", text), Setting(START.date())).reply) == []


def test_a_screen_is_steered_by_nothing_that_is_filled_in() -> None:
    hostile = "a\x1b[31m\x00\x9b\u202eb\u200d\nc"
    assert shown(hostile) == "a[31mb\u200d\nc"
    for language in languages():
        assert steers(wording(language).say("ask-import-file", name=hostile)) == []


@pytest.mark.parametrize("text", ["{ $name }", "{ -brand }", '{ "x" }', "{ DATETIME() }"])
def test_a_template_in_a_name_is_not_filled_in(text: str) -> None:
    assert text in wording("en").say("ask-import-file", name=text)


async def test_everything_is_sent_as_plain_text(chat: Chat, club: Chat, loopback: Loopback) -> None:
    """No parse mode: markup that somebody wrote stays what it is, and fails no request."""
    for text in TEXTS[3:9]:
        await chat.says(MIRA, f"5 l 20-20-20 powder, {text}")
        await club.says(MIRA, f"/dose 5 l 20-20-20 powder, {text}")
        value = {"id": "q", "from": MIRA.user, "query": f"5 l 20-20-20 {text}"[:250], "offset": ""}
        await chat.pushes("inline_query", value)
    sent = loopback.of("sendMessage", "answerInlineQuery")
    assert sent
    assert [r for r in sent if "parse_mode" in str(r.values) or "entities" in r.values] == []
    assert any("<" in str(r.values) for r in sent)
    previews = [r for r in sent if r.method == "sendMessage"]
    assert all(r.values["link_preview_options"]["is_disabled"] for r in previews)


def test_no_counter_is_named_by_what_somebody_wrote() -> None:
    """Even a kind that were somebody's text could end no label and begin no line."""
    from bot.operating.metrics import Metrics, generate_latest

    metrics = Metrics()
    kind = 'x"} 1\nsinkside_forged{a="\\'
    letter = Letter("1", "sendMessage", {}, {"kind": kind})
    _count_done(metrics, Claimed(1, "1:1", 0, 0), [letter])
    page = generate_latest(metrics.registry).decode()
    names = {family.name for family in text_string_to_metric_families(page)}
    assert "sinkside_answers" in names
    assert "sinkside_forged" not in names


async def test_the_kinds_that_are_counted_are_codes_of_ours(sqlite_records: Records) -> None:
    mira = Grower(sqlite_records)
    kinds: set[Any] = {(await mira.says(text)).kind for text in TEXTS}
    assert all(k.isidentifier() and k.isascii() and len(k) < 32 for k in kinds)
