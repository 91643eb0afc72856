"""Bad input: a clear answer that says what to send, and never a dose."""

from __future__ import annotations

from datetime import date

import pytest

from bot.conversation.ask import Setting, ask

SETTING = Setting(today=date(2026, 5, 15))
REST = "20-20-20 powder, quarter strength"

REFUSED = {
    "negative volume": f"-5 litres {REST}",
    "negative volume in words": f"minus 2 litres of {REST}",
    "negative strength": "5 litres, 20-20-20 powder, -25% strength",
    "zero volume": f"0 litres {REST}",
    "vanishing volume": f"1e-400 litres {REST}",
    "infinite volume": f"infinite litres {REST}",
    "infinity abbreviated": f"inf litres {REST}",
    "infinity sign": f"∞ litres {REST}",
    "not a number": f"nan litres {REST}",
    "overflowing volume": f"1e400 litres {REST}",
    "endless digits": f"{'9' * 400} litres {REST}",
    "forty digits of litres": f"{'9' * 40} litres {REST}",
    "forty digits on a label": f"5 litres, {'9' * 40}-20-20 powder, half strength",
    "a label rate with an exponent": "5 l, 20-20-20 powder, label 9e50 g/l",
    "a figure below nothing on a label": "5 l, npk 20 10 -20 powder, half strength",
    "just over 10,000 l": f"10001 litres {REST}",
    "99,999 l": f"99999 litres {REST}",
    "over 100 %": "2 l, 60-40-20 powder, half strength",
    "over 100 % with extras": "2 l, 40-30-20 + 20Ca powder, half strength",
    "all zero": "2 l, 0-0-0 powder, half strength",
    "division by zero": "2 l, 20-20-20 powder, 1/0 strength",
    "overflowing target": "5 l, 20-20-20 powder, 1e400 ppm N",
    "zero strength": "5 l, 20-20-20 powder, 0% strength",
    "zero target": "5 l, 20-20-20 powder, 0 ppm N",
    "absurd label rate": "5 l, 20-20-20 powder, label 500 g/l",
    "label rate per no water": "5 l, 20-20-20 powder, label says 5 g per 0 litres",
    "granules": "5 l, 20-20-20 granules, quarter strength",
    "slow release": "5 l, 14-14-14 slow release, quarter strength",
    "100 kB of text": f"5 litres, {REST} " + "x" * 100_000,
    "100 kB of figures": "5 litres " * 11_112,
    "500 volumes": " ".join(f"{litres} l" for litres in range(1, 501)),
}
HELPED = {
    "empty": "",
    "blanks": " \t ",
    "emoji alone": "🙂🙂",
    "a joined emoji": "👩‍🌾🌸",
    "markup alone": "<b><i></i></b>",
    "an entity": "&amp;&lt;br/&gt;",
    "control characters alone": "\x00\x01\x07\x1b",
}


def says_what_to_send(reply: str) -> bool:
    return "send" in reply.lower() or "type it again" in reply.lower()


@pytest.mark.parametrize("text", REFUSED.values(), ids=REFUSED.keys())
def test_the_impossible_is_refused_with_what_to_send(text: str) -> None:
    answer = ask(text, SETTING)
    assert answer.kind == "refused"
    assert answer.dose is None
    assert says_what_to_send(answer.reply)


@pytest.mark.parametrize("text", HELPED.values(), ids=HELPED.keys())
def test_what_says_nothing_about_feeding_gets_help(text: str) -> None:
    answer = ask(text, SETTING)
    assert answer.kind == "help"
    assert answer.dose is None
    assert says_what_to_send(answer.reply)


@pytest.mark.parametrize(
    "text",
    [
        "5 l, -20-20-20 powder",
        "1 l, 2 l, 3 l, 4 l, 20-20-20 powder",
        " ".join(f"{litres} l" for litres in range(1, 101)),
        "2 l, 20-20-20 powder liquid",
        "<script>alert(1)</script>",
    ],
    ids=["minus before an analysis", "four volumes", "a hundred volumes", "two forms", "a script"],
)
def test_what_is_in_doubt_gets_a_question(text: str) -> None:
    answer = ask(text, SETTING)
    assert answer.kind in ("ask", "refused")
    assert answer.dose is None
    assert says_what_to_send(answer.reply)


HIDDEN = {
    "right-to-left override": f"5 l\u202e, {REST}",
    "left-to-right override": f"5 l\u202d, {REST}",
    "isolate": f"5\u20670 l, {REST}",
    "zero width between figures": f"5\u200b0 l, {REST}",
    "null between figures": f"5\x000 l, {REST}",
    "bell between figures": f"5\x070 l, {REST}",
}


@pytest.mark.parametrize("text", HIDDEN.values(), ids=HIDDEN.keys())
def test_characters_that_could_turn_figures_round_are_no_dose(text: str) -> None:
    answer = ask(text, SETTING)
    assert answer.kind in ("refused", "ask")
    assert answer.dose is None
    assert says_what_to_send(answer.reply)


@pytest.mark.parametrize("text", [f"<b>5 l</b>, {REST}", f"5 l, {REST} <i>"])
def test_markup_round_a_request_changes_no_figure(text: str) -> None:
    answer = ask(text, SETTING)
    plain = ask(f"5 l, {REST}", SETTING)
    assert plain.dose is not None
    assert answer.dose is None or answer.dose.amount == plain.dose.amount
    assert "<b>" not in answer.reply.split("\n")[0]


def test_the_largest_volume_of_a_home_is_answered() -> None:
    answer = ask(f"10000 litres, {REST}", SETTING)
    assert answer.dose is not None
    assert answer.dose.amount == pytest.approx(2500.0)


def test_granules_are_refused_with_how_they_are_used() -> None:
    reply = ask("5 l, 14-14-14 slow release granules, cymbidium", SETTING).reply
    assert "never dissolved" in reply
    assert "on the medium" in reply


@pytest.mark.parametrize(
    "text",
    [
        "5 l, 5-5-5 liquid, label 50 ml/l, fortnightly, full strength",
        "5 l, 20-20-20 powder, label 90 g/l, fortnightly, full strength",
        "5 l, 20-20-20 powder, 1e-300 strength",
        "1e-300 l, 20-20-20 powder",
        "1e-200 l, 20-20-20 powder, 1e-200 strength",
    ],
)
def test_figures_at_the_edge_raise_nothing(text: str) -> None:
    assert ask(text, SETTING).kind in ("dose", "refused", "ask")
