"""The playground: lines that are typed, and what the bot sends to them."""

from __future__ import annotations

import pytest

from tests.channels.playground import line_of, play


def test_who_says_something_need_not_say_so() -> None:
    line = line_of("Greta feeding | /dose 5 l")
    assert (line.who, line.where, line.does, line.text) == ("Greta", "feeding", "says", "/dose 5 l")
    line = line_of("Odo feeding replies Greta | why")
    assert (line.does, line.whose, line.text) == ("replies", "Greta", "why")


async def test_lines_are_played_one_by_one(capsys: pytest.CaptureFixture[str]) -> None:
    typed = [
        "*Greta", "Greta feeding | /dose our tap is 18 dH", "Odo feeding | /dose our tap is 3 dH",
        "nonsense", "Odo feeding | hello all", "due",
    ]  # fmt: skip
    await play(iter(typed))
    told = capsys.readouterr().out
    assert "On record: tap water (18 °dH" in told
    assert "Only administrators" in told
    assert "? ValueError" in told
    assert told.count("  -\n") == 2
    assert "would refuse" not in told
