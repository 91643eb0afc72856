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


#: Each tells of a month or season that is not the one of the feed.
OF_ANOTHER_TIME = [
    ("en", "phal bought in january"), ("en", "got it in december"), ("en", "since november"),
    ("en", "repotted in february"), ("en", "it flowered in winter"), ("en", "until march"),
    ("en", "last fed in january"), ("en", "will bloom in spring"), ("en", "next winter"),
    ("en", "winter is over"), ("en", "coming out of winter"), ("en", "winter is coming"),
    ("en", "autumn soon"),
    ("en", "before winter"), ("en", "after the winter"),
    ("en", "bought a tub of 20-20-20 powder in december"), ("en", "bought 2 vandas last may"),
    ("en", "picked up a cattleya at the show in march"), ("en", "we're past winter"),
    ("en", "repotted from moss into bark in may"),
    ("de", "im Januar gekauft"), ("de", "Phal im Februar umgetopft"), ("de", "seit November"),
    ("de", "der Winter ist vorbei"), ("de", "bis März"), ("de", "nächsten Winter"),
    ("de", "hat im Winter geblüht"),
    ("es", "comprada en enero"), ("es", "la trasplanté en febrero"), ("es", "hasta marzo"),
    ("es", "se acerca el invierno"), ("pl", "nadchodzi zima"), ("de", "Winter kommt bald"),
    ("es", "el invierno ya pasó"), ("es", "antes del invierno"), ("es", "el próximo invierno"),
    ("pl", "kupiony w styczniu"), ("pl", "w lutym przesadziłam"), ("pl", "przed zimą"),
    ("pl", "zima się skończyła"), ("pl", "kwitła w zimie"), ("pl", "do marca"),
]  # fmt: skip
HALF = {
    "en": "20-20-20 powder half", "de": "20-20-20 Pulver halb", "es": "20-20-20 polvo mitad",
    "pl": "20-20-20 proszek połowa",
}  # fmt: skip


@pytest.mark.parametrize(("language", "text"), OF_ANOTHER_TIME)
def test_a_month_of_another_time_is_shown_and_not_taken(language: str, text: str) -> None:
    reading = read(f"1 l {HALF[language]}, {text}", language)
    assert (reading.month, reading.season) == (None, None)
    assert reading.strength == 0.5
    assert any(u.text.lower() in text.lower() for u in reading.unknown)


@pytest.mark.parametrize(
    ("text", "season", "month"),
    [
        ("phal in bark, it's winter", "winter", None),
        ("i bought phals, its winter", "winter", None),
        ("phal in bloom over winter", "winter", None),
        ("resting over winter", "winter", None),
        ("december, phal with a new leaf", None, 12),
        ("repotted last year, now january", None, 1),
    ],
)
def test_a_month_beside_what_happened_is_still_the_one_of_now(
    text: str, season: str | None, month: int | None
) -> None:
    reading = read(f"1 l {HALF['en']}, {text}", "en")
    assert (reading.season, reading.month) == (season, month)


#: Rest and growth that are over or to come are asked about, flowers and seedlings only shown.
OTHER_GROWTH = [
    ("en", "was resting", True), ("en", "rest is over", True), ("en", "will rest soon", True),
    ("en", "has finished resting", True), ("en", "came out of dormancy", True),
    ("en", "finished growing", True),
    ("en", "past their rest", True),
    ("en", "woken up from its dormancy", True),
    ("en", "phal after flowering", False), ("en", "phal done blooming", False),
    ("en", "it was flowering", False),
    ("de", "war in Ruhe", True), ("es", "después del reposo", True),
    ("es", "estaba en reposo", True), ("es", "después de la floración", False),
    ("pl", "po spoczynku", True), ("pl", "był w spoczynku", True),
]  # fmt: skip


@pytest.mark.parametrize(("language", "text", "asked"), OTHER_GROWTH)
def test_growth_of_another_time_is_not_that_of_now(language: str, text: str, asked: bool) -> None:
    reading = read(f"1 l {HALF[language]}, {text}", language)
    assert reading.growth is None
    assert [(c.code, c.slot) for c in reading.conflicts] == [("negation", "growth")] * asked
    assert bool(reading.unknown) is not asked


@pytest.mark.parametrize(
    ("language", "text", "medium", "shown"),
    [
        ("en", "was in bark", None, "was in bark"),
        ("en", "it used to be in sphagnum", None, "used to be in sphagnum"),
        ("en", "was in sphagnum before, now leca", "clay_pellets", "was in sphagnum"),
        ("en", "moved from bark into moss", "sphagnum", "from bark"),
        ("de", "von Moos in Rinde umgetopft", "bark", "von Moos"),
        ("es", "de corteza a musgo", "sphagnum", "de corteza"),
        ("pl", "z kory do mchu", "sphagnum", "z kory"),
    ],
)
def test_a_medium_of_before_is_not_that_of_now(
    language: str, text: str, medium: str | None, shown: str
) -> None:
    reading = read(f"1 l {HALF[language]}, {text}", language)
    assert reading.medium == medium
    assert shown in [u.text for u in reading.unknown]
    assert not reading.conflicts


@pytest.mark.parametrize("text", ["has been in bark for years", "was potted in bark last year"])
def test_a_medium_that_still_is_stays(text: str) -> None:
    assert read(f"1 l {HALF['en']}, {text}", "en").medium == "bark"


@pytest.mark.parametrize(
    ("language", "text"),
    [
        ("en", "once or twice a month"), ("en", "every 2-3 weeks"), ("en", "every 7-10 days"),
        ("en", "every week or two"),
        ("de", "alle 2-3 Wochen"), ("de", "ein- bis zweimal im Monat"),
        ("es", "cada 2-3 semanas"), ("es", "una o dos veces al mes"),
        ("pl", "co 2-3 tygodnie"), ("pl", "raz lub dwa razy w miesiącu"),
        ("pl", "co tydzień lub dwa"),
    ],
)  # fmt: skip
def test_a_rhythm_between_two_is_shown_and_none_of_them(language: str, text: str) -> None:
    """The dose hangs on it: taken as fortnightly, 'once or twice a month' would double it."""
    reading = read(f"2 l, {HALF[language]}, {text}", language)
    assert reading.regime is None
    assert [u.text.lower() for u in reading.unknown] == [text.lower()]
    assert "weekly" in reading.unknown[0].suggestions


def test_a_rhythm_to_go_to_is_read() -> None:
    assert read("2 l, 20-20-20 powder, I want to go to weekly", "en").regime == "weekly"


@pytest.mark.parametrize(
    "text", ["a spring flowering dendrobium", "winter blooming phal", "winter growing species"]
)
def test_a_trait_of_the_plant_is_no_season_of_now(text: str) -> None:
    """Else a resting plant that flowers in spring would be fed in January."""
    reading = read(f"1 l {HALF['en']}, {text}", "en")
    assert (reading.season, reading.growth) == (None, None)
    assert reading.unknown


def test_a_rest_is_believed_beside_a_season() -> None:
    assert read(f"1 l {HALF['en']}, winter dormant", "en").growth == "resting"
    assert read(f"1 l {HALF['en']}, summer, flowering", "en").season == "summer"


@pytest.mark.parametrize(
    "text",
    ["my phals had root rot in november", "the club sale is in november",
     "we moved here in january",
     "its last repot was in march", "going on holiday in august"],
)  # fmt: skip
def test_a_month_of_something_that_is_not_known_is_shown(text: str) -> None:
    reading = read(f"1 l {HALF['en']}, {text}", "en")
    assert reading.month is None
    assert any(u.text in ("in november", "in january", "was in march", "in august")
               for u in reading.unknown)  # fmt: skip


@pytest.mark.parametrize(
    "text",
    ["coelogyne cristata in december", "vandas growing flat out in december",
     "how much will they need in december",
     "feeding in december", "my orchids in december"],
)  # fmt: skip
def test_a_month_of_the_feed_is_taken(text: str) -> None:
    assert read(f"{text}, 1 l {HALF['en']}", "en").month == 12
