"""What `ask` answers beside a dose, with nothing on record."""

from __future__ import annotations

from datetime import date

import pytest

from bot.conversation.answer import Answer
from bot.conversation.answering import NEEDS_RECORDS, TOPICS
from bot.conversation.ask import Setting, ask
from bot.conversation.talk import HANDLERS
from bot.conversation.unremembered import _HANDLERS

DAY = Setting(date(2026, 6, 7))


def asked(text: str) -> Answer:
    return ask(text, DAY)


KINDS = [
    ("my meter says 0.9, 20-20-20 at 1 g/l", "reading"),
    ("my meter says 0.9 mS, 15-5-15, tap 0.3 mS", "reading"),
    ("the mix reads 450 ppm on the 500 scale, 20-20-20", "reading"),
    ("is 14 dH too hard for a masdevallia?", "water"),
    ("is rain water suitable for phals?", "water"),
    ("how much RO do I add to 14 dH tap to get 6 dH, 5 l", "water"),
    ("stock 1:100 of 20-20-20", "stock"),
    ("500 ml stock of 20-20-20", "stock"),
    ("can 15.5-0-0 +19Ca and 20-20-20 share a bottle?", "stock"),
    ("brown root tips and white crust", "rescue"),
    ("is 2 g per litre of 20-20-20 too strong", "cautions"),
    ("5 l 20-20-20 powder for tomatoes", "refused"),
    ("can i use coffee grounds", "refused"),
    ("my cat drank from the can", "cautions"),
    # what a dose needs stays a dose
    ("5 l 20-20-20 powder phal quarter", "dose"),
    ("5 l 20-20-20, EC 0.8, tap 0.3 mS", "dose"),
    ("20-20-20", "ask"),
    ("5 l", "ask"),
    ("hello", "help"),
    ("-5 l of 20-20-20", "refused"),
]


@pytest.mark.parametrize(("text", "kind"), KINDS)
def test_it_is_answered(text: str, kind: str) -> None:
    assert asked(text).kind == kind


NEEDED = [
    "how salty is Ruby", "do I lack calcium?", "Ca 80, Mg 12, HCO3 240 mg/l", "what's on today",
    "compare my feeds", "add 3 phals in bark", "blend my feeds for bloom", "my shelf",
]  # fmt: skip


@pytest.mark.parametrize("text", NEEDED)
def test_what_takes_records_is_sent_to_a_chat(text: str) -> None:
    answer = asked(text)
    assert answer.kind == "help"
    assert "in a chat" in answer.reply
    assert answer.choices == []


def test_a_reading_is_held_against_what_was_meant_to_be_dissolved() -> None:
    answer = asked("my meter says 0.9, 20-20-20 at 1 g/l, tap 0.4 mS")
    found = answer.details or {}
    # the same figures by the product over the gram that was meant
    assert found["of_the_dose"]["high"] == pytest.approx(found["product_g_l"]["high"])
    assert "what you meant to dissolve" in answer.reply
    assert (asked("my meter says 0.9, 20-20-20 label 1 g/l, tap 0.4 mS").details or {})[
        "of_the_dose"
    ] is None


def test_the_figure_of_the_water_is_not_that_of_the_meter() -> None:
    for text in (
        "my meter says 0.9, 20-20-20, tap 0.4 mS",
        "tap 0.4 mS, my meter says 0.9, 20-20-20",
        "tap is 0.4 mS, the mix reads 0.9 mS, 20-20-20",
    ):
        found = asked(text).details or {}
        assert found["ec_ms_cm"]["high"] == pytest.approx(0.9), text
        assert found["water_ec_ms_cm"] == pytest.approx(0.4), text


def test_a_question_that_would_wait_says_that_nothing_is_remembered() -> None:
    answer = asked("my phal has wrinkled leaves")
    assert answer.kind == "ask"
    assert "nothing" in answer.reply
    assert answer.choices == []


def test_every_topic_has_a_handler_and_none_is_in_both() -> None:
    assert _HANDLERS.keys() == TOPICS
    assert TOPICS.isdisjoint(NEEDS_RECORDS)
    assert HANDLERS.keys() >= NEEDS_RECORDS | TOPICS


def test_help_names_the_topics() -> None:
    reply = asked("hello").reply
    for line in ("my meter says 0.9, 20-20-20", "is 14 dH too hard for phals?",
                 "mix tap and RO to 6 dH", "stock 1:100 of 20-20-20",
                 "brown root tips and white crust"):  # fmt: skip
        assert line in reply
        assert asked(line).kind not in ("help", "refused"), line
