"""Seasons, months and how often."""

from __future__ import annotations

from typing import Any

import pytest

from grammar import read
from tests.grammar.told import same, value

SAID: list[tuple[str, str, Any]] = [
    ("in winter", "season", "winter"), ("fall", "season", "autumn"), ("spring", "season", "spring"),
    ("midsummer", "season", "summer"), ("January", "month", 1), ("in march", "month", 3),
    ("in May", "month", 5), ("weekly", "regime", "weekly"), ("once a week", "regime", "weekly"),
    ("1x/wk", "regime", "weekly"), ("every two weeks", "regime", "fortnightly"),
    ("monthly", "regime", "monthly"), ("every watering", "regime", "every_watering"),
    ("full wkly", "regime", "weekly"),
]  # fmt: skip


@pytest.mark.parametrize(("text", "slot", "wanted"), SAID)
def test_time_is_read(text: str, slot: str, wanted: Any) -> None:
    assert same(value(read(f"2 l, 20-20-20 powder, {text}", "en"), slot), wanted)


NONE: list[tuple[str, str]] = [
    ("may I use it", "month"),
    ("on the march again", "month"),
    ("leaves fall off", "season"),
    ("twice a week", "regime"),
    ("every 9 days", "regime"),
    ("flush monthly with water", "regime"),
]


@pytest.mark.parametrize(("text", "slot"), NONE)
def test_other_time_is_not_taken(text: str, slot: str) -> None:
    assert value(read(f"{text}, 2 l, 20-20-20 powder", "en"), slot) is None


@pytest.mark.parametrize(
    ("text", "season", "month"),
    [
        ("late november", None, 11), ("Late November", None, 11), ("early march", None, 3),
        ("mid november", None, 11), ("late Feb", None, 2), ("the end of january", None, 1),
        ("late winter", "winter", None), ("end of summer", "summer", None),
        ("early spring", "spring", None), ("the beginning of autumn", "autumn", None),
        ("its getting late, winter", "winter", None), ("too late in november?", None, 11),
    ],
)  # fmt: skip
@pytest.mark.parametrize("language", ["en", None])
def test_late_and_early_are_of_the_month_or_season(
    text: str, season: str | None, month: int | None, language: str | None
) -> None:
    reading = read(f"{text}, nobile dendrobium, 20-20-20 powder 1 l half", language)
    assert (reading.season, reading.month) == (season, month)
    assert not reading.unknown
    assert not reading.read_as


#: Each says that the plant does not grow, and none how it is.
NOT_GROWING = [
    "phal not growing at the moment, 1 l 20-20-20 powder half",
    "phal isn't growing, 1 l 20-20-20 powder half",
    "phal no longer growing, 1 l 20-20-20 powder half",
    "phal not yet growing, 1 l 20-20-20 powder half",
    "phals, they havent grown in months, 1 l 20-20-20 powder half",
    "phal hasn't grown in months, 1 l 20-20-20 powder half",
    "phal hasn't started growing, 1 l 20-20-20 powder half",
    "phal with no growth 1 l 20-20-20 powder half",
    "phal no new growth, 1 l 20-20-20 powder half",
    "phal never grows 1 l 20-20-20 powder half",
    "phal won't grow, 1 l 20-20-20 powder half",
    "phal dying, 1 l 20-20-20 powder half",
    "phal doesn't grow, 1 l 20-20-20 powder half",
    "phal nothing growing, 1 l 20-20-20 powder half",
    "phal, not sure if it's growing, 1 l 20-20-20 powder half",
    "meine Phal ist seit Monaten nicht gewachsen, 1 l 20-20-20 Pulver, halbe Dosis",
    "meine Phal hat kein Wachstum, 1 l 20-20-20 Pulver, halbe Dosis",
    "meine Phal wächst zur Zeit nicht, 1 l 20-20-20 Pulver, halbe Dosis",
    "bei der Phal tut sich nichts, 1 l 20-20-20 Pulver, halbe Dosis",
    "bei der Phal wächst nichts, 1 l 20-20-20 Pulver, halbe Dosis",
    "meine Phal stirbt, 1 l 20-20-20 Pulver, halbe Dosis",
    "mi falenopsis no ha crecido en meses, 1 l polvo 20-20-20 media dosis",
    "mi falenopsis sin crecimiento, 1 l polvo 20-20-20 media dosis",
    "mi falenopsis no está creciendo ahora, 1 l polvo 20-20-20 media dosis",
    "mi falenopsis no crece nada, 1 l polvo 20-20-20 media dosis",
    "mi falenopsis se muere, 1 l polvo 20-20-20 media dosis",
    "mój falenopsis nie urósł od miesięcy, 1 l proszek 20-20-20 pół dawki",
    "mój falenopsis bez wzrostu, 1 l proszek 20-20-20 pół dawki",
    "mój falenopsis nie rośnie w tej chwili, 1 l proszek 20-20-20 pół dawki",
    "mój falenopsis brak wzrostu, 1 l proszek 20-20-20 pół dawki",
    "mój falenopsis umiera, 1 l proszek 20-20-20 pół dawki",
]


@pytest.mark.parametrize("text", NOT_GROWING)
def test_growth_that_is_denied_is_asked_about(text: str) -> None:
    reading = read(text)
    assert [(c.code, c.slot) for c in reading.conflicts] == [("negation", "growth")]
    assert (reading.growth, reading.volume_l, reading.strength) == (None, 1.0, 0.5)


@pytest.mark.parametrize(
    ("text", "growth"),
    [
        ("stopped growing", "resting"), ("doing nothing", "resting"), ("stalled", "resting"),
        ("not growing much", "slow"), ("still growing roots", "new_roots"),
        ("is growing roots", "new_roots"), ("still growing leaves", "new_leaves"),
        ("still growing", "growing"), ("growing at my window", None), ("well grown", None),
        ("growing at the moment", "growing"), ("it grows rather slowly", "slow"),
        ("barely grows", "slow"), ("growth has stopped", "resting"),
        ("no feed since growth started", None),
        ("grown in a basket", None),
    ],
)  # fmt: skip
def test_growth_that_is_told_is_read(text: str, growth: str | None) -> None:
    reading = read(f"phal, {text}, 1 l 20-20-20 powder half")
    assert reading.growth == growth
    assert not reading.unknown
    assert not reading.conflicts


def test_where_it_was_not_grown_is_no_state_of_growth() -> None:
    reading = read("phal not growing in bark but in leca, 1 l 20-20-20 powder half")
    assert (reading.medium, reading.growth) == ("clay_pellets", None)
    assert not reading.conflicts
