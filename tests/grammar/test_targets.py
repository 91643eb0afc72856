"""Concentrations and conductivities asked for."""

from __future__ import annotations

from typing import Any

import pytest

from grammar import Names, read
from tests.grammar.told import same, value

SAID: list[tuple[str, str, float]] = [
    ("100 ppm N", "target_n_mg_l", 100), ("target 90 mg/L N", "target_n_mg_l", 90),
    ("150 mg l-1 N", "target_n_mg_l", 150), ("125 ppm nitrogen", "target_n_mg_l", 125),
    ("100 mg N/L", "target_n_mg_l", 100), ("100 ppm n", "target_n_mg_l", 100),
    ("80 mg n per litre", "target_n_mg_l", 80),
    ("80 mg nitrogen per litre", "target_n_mg_l", 80),
    ("EC 0.8", "target_ec_ms_cm", 0.8), ("want ec 0.7", "target_ec_ms_cm", 0.7),
    ("tap water, final EC 0.9", "target_ec_ms_cm", 0.9),
    ("target EC 0.6 mS/cm", "target_ec_ms_cm", 0.6),
    ("EC 600 µS/cm", "target_ec_ms_cm", 0.6),
]  # fmt: skip


@pytest.mark.parametrize(("text", "slot", "wanted"), SAID)
def test_target_is_read(text: str, slot: str, wanted: float) -> None:
    assert same(value(read(f"2 l, 15-5-15 powder, {text}", "en"), slot), wanted)


ASKED = [("20 ppm", "element"), ("EC 600", "ec_unit"), ("target EC 600 mS/cm", "ec_unit"),
         ("100-150 ppm N", "range")]  # fmt: skip


@pytest.mark.parametrize(("text", "code"), ASKED)
def test_unclear_target_is_asked_about(text: str, code: str) -> None:
    assert code in [c.code for c in read(f"2 l, 15-5-15 powder, {text}", "en").conflicts]


NONE: list[Any] = ["tap EC 0.4", "runoff EC 2.0", "last feed was EC 1.5", "pH 5.8", "100 ppm K"]


@pytest.mark.parametrize("text", NONE)
def test_other_figure_is_no_target(text: str) -> None:
    reading = read(f"{text}, 2 l, 15-5-15 powder", "en")
    assert reading.target_ec_ms_cm is None
    assert reading.target_n_mg_l is None


@pytest.mark.parametrize(
    ("language", "text"),
    [
        ("en", "rain water ec 0.05, feed to ec 0.6, 5 l 20-20-20 powder"),
        ("en", "rain water ec 0.05, to an ec of 0.6, 5 l 20-20-20 powder"),
        ("es", "agua de lluvia ec 0.05, hasta una ec de 0.6, 5 l 20-20-20 polvo"),
        ("pl", "deszczówka ec 0.05, do ec 0.6, 5 l 20-20-20 proszek"),
        ("de", "Regenwasser EC 0.05, auf EC 0.6, 5 l 20-20-20 Pulver"),
    ],
)
def test_the_ec_to_reach_is_not_that_of_the_water(language: str, text: str) -> None:
    reading = read(text, language)
    assert reading.target_ec_ms_cm == 0.6
    assert reading.water is not None
    assert reading.water.ec_ms_cm == 0.05


def test_a_water_with_a_figure_of_its_own_leaves_the_ec_to_the_feed() -> None:
    reading = read("5 l 20-20-20 powder EC 0.8 tap water 0.3", "en")
    assert reading.target_ec_ms_cm == 0.8
    assert [u.text for u in reading.unknown] == ["0.3"]


@pytest.mark.parametrize(
    ("language", "text"),
    [
        ("en", "I want 0.8 mS with tap water, 15-5-15 powder 10 l"),
        ("de", "ich will 0,8 mS mit Leitungswasser, 15-5-15 Pulver 10 l"),
        ("es", "quiero 0,8 mS con agua del grifo, 15-5-15 polvo 10 l"),
        ("pl", "chcę 0,8 mS z kranówki, 15-5-15 proszek 10 l"),
    ],
)
def test_a_conductivity_that_is_wished_for_is_no_water(language: str, text: str) -> None:
    reading = read(text, language)
    assert reading.target_ec_ms_cm == pytest.approx(0.8)
    assert reading.water is not None
    assert reading.water.ec_ms_cm is None


def test_a_volume_that_is_wished_for_leaves_the_water_its_own() -> None:
    reading = read("quiero 10 l, agua del grifo 0,4 mS, 15-5-15 polvo", "es")
    assert reading.water is not None
    assert (reading.target_ec_ms_cm, reading.water.ec_ms_cm) == (None, pytest.approx(0.4))


@pytest.mark.parametrize(
    ("text", "language"),
    [
        ("fed all except Lidy", "en"),  # a slip for a small word, and a name of nobody here
        ("fed all except Lidy and Ruby", "en"),
        ("alle gedüngt außer Lidy", "de"),
    ],
)
def test_an_exception_that_looks_like_a_slip_stops_the_log(text: str, language: str) -> None:
    order = read(text, language, names=Names(plants=("Lady", "Ruby"))).order
    assert order is not None
    assert (order.verb, order.text) == ("exception", "Lidy")


@pytest.mark.parametrize(
    ("text", "language"),
    [
        ("fed all phals but Ruby", "en"),
        ("fed all in the kitchen but Ruby", "en"),
        ("fed all but Ruby who is in the kitchen", "en"),
        ("aboné todas menos Ruby que está en la cocina", "es"),
        ("alle gedüngt außer Ruby, die in der Küche steht", "de"),
        ("nawiozłam wszystkie oprócz Ruby, która stoi w kuchni", "pl"),
    ],
)
def test_who_is_excepted_is_not_meant(text: str, language: str) -> None:
    names = Names(plants=("Ruby", "Hugo"), places=("kitchen", "cocina", "Küche", "kuchnia"))
    order = read(text, language, names=names).order
    assert order is not None
    meant = order.target
    assert (order.verb, meant.names, meant.not_names) == ("fed", (), ("Ruby",))
    assert meant.not_places == ()
    assert meant.place == ("kitchen" if "in the kitchen but" in text else None)
