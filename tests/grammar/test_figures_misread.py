"""Figures and words that look like a dose and are something else."""

from __future__ import annotations

import pytest

from grammar import Names, Reading, read

NAMES = Names(plants=("Ruby",))


def _read(language: str, line: str) -> Reading:
    return read(line, language, names=NAMES)


# --- clear water ---------------------------------------------------------------------------------

CLEAR = [
    ("de", "2 l klares wasser für die phals"), ("de", "2 l für phals keinen dünger nur wasser"),
    ("de", "2 l ohne dünger für die phals"), ("en", "2 l clear water for the phals"),
    ("en", "2 l for the phals no feed just water"), ("en", "2 l for Ruby without feed"),
    ("es", "2 l de agua sola para las phals"), ("es", "2 l para las phals sin abono"),
    ("pl", "2 l czystej wody dla falków"), ("pl", "2 l dla falków bez nawozu sama woda"),
]  # fmt: skip
FED = [
    ("de", "2 l wasser für die phals"), ("de", "wie viel dünger auf 2 l klares wasser"),
    ("de", "2 l klares wasser 20-20-20 pulver"), ("en", "2 l of rain for the phals"),
    ("en", "2 l for the phals, wet moss"), ("en", "2 l for the phals, no feed since april"),
    ("en", "feed for 2 l of clean water"), ("es", "2 l de agua sola con abono para las phals"),
    ("pl", "ile nawozu na 2 l czystej wody"), ("pl", "2 l wody dla falków"),
]  # fmt: skip


@pytest.mark.parametrize(("language", "line"), CLEAR)
def test_clear_water_is_asked_for_and_no_feed(language: str, line: str) -> None:
    reading = _read(language, line)
    assert reading.order is not None
    assert (reading.order.verb, reading.order.text, reading.volume_l) == ("dose", "clear", 2.0)
    assert not reading.conflicts


@pytest.mark.parametrize(("language", "line"), FED)
def test_water_that_feed_goes_into_is_a_dose(language: str, line: str) -> None:
    order = _read(language, line).order
    assert order is not None
    assert (order.verb, order.text) == ("dose", "")


# --- water or feed first -------------------------------------------------------------------------

FIRST = [
    ("de", "erst spülen dann düngen oder umgekehrt"), ("de", "spülen vor oder nach dem düngen?"),
    ("en", "flush first then feed or the other way round"),
    ("en", "should i feed before or after watering"),
    ("es", "primero enjuagar y luego abonar o al revés"),
    ("es", "abonar antes o después de regar"),
    ("pl", "najpierw przelac potem nawoz czy odwrotnie"), ("pl", "najpierw woda czy nawóz"),
]  # fmt: skip
WINTER_HALF = [
    ("de", "darf die vanda im winter auch nur halb so viel"),
    ("en", "does the vanda get only half as much in winter too"),
    ("es", "la vanda en invierno también solo la mitad"),
    ("pl", "czy wanda zimą też tylko połowę"),
]  # fmt: skip
NOT_TOLD = [
    ("de", "phals erst gespült dann gedüngt"), ("de", "erst düngen dann gießen erinnern"),
    ("en", "feed before or after flowering?"), ("en", "phals winter half strength"),
    ("en", "5 l winter half strength 20-20-20 powder"), ("es", "abono para las phals"),
    ("pl", "najpierw przepłukałam potem nawiozłam falki"),
]  # fmt: skip


@pytest.mark.parametrize(
    ("language", "line", "fact"),
    [(*case, "first") for case in FIRST] + [(*case, "winter_half") for case in WINTER_HALF],
)
def test_what_comes_first_and_what_winter_halves_are_told(
    language: str, line: str, fact: str
) -> None:
    order = _read(language, line).order
    assert order is not None
    assert (order.verb, order.text) == ("tell", fact)


@pytest.mark.parametrize(("language", "line"), NOT_TOLD)
def test_what_was_done_or_is_dosed_is_not_told(language: str, line: str) -> None:
    order = _read(language, line).order
    assert order is not None
    assert order.text not in ("first", "winter_half")


# --- rates and labels ----------------------------------------------------------------------------

SPOONS = [
    ("de", "auf der packung steht 1 teelöffel auf 5 liter"), ("de", "teelöffel auf 5 l"),
    ("en", "the label says 1 teaspoon per 5 litres"),
    ("en", "new powder 20-10-20 1 teaspon per 5 l"),
    ("es", "en el envase pone 1 cucharadita por 5 litros"), ("es", "cucharadita por 5 l"),
    ("pl", "na opakowaniu 1 łyżeczka na 5 litrów"), ("pl", "pisze 1 lyzeczka na 5 litrow"),
    ("pl", "łyżeczka na 5 l"),
]  # fmt: skip


@pytest.mark.parametrize(("language", "line"), SPOONS)
def test_a_spoon_in_so_many_litres_is_a_rate(language: str, line: str) -> None:
    reading = _read(language, line)
    assert reading.label_rate is not None
    assert (reading.label_rate.per_litre, reading.label_rate.unit) == (0.2, "tsp")
    assert reading.volume_l is None


@pytest.mark.parametrize(
    ("language", "line"),
    [("de", "wie viele teelöffel auf 5 l"), ("en", "how many teaspoons per 5 l"),
     ("en", "few teaspoons per 5 l"), ("pl", "ile łyżeczek na 5 l")],
)  # fmt: skip
def test_spoons_that_nobody_counted_are_no_rate(language: str, line: str) -> None:
    assert _read(language, line).label_rate is None


@pytest.mark.parametrize(
    ("language", "line"),
    [("de", "13-3-15 mit 8 ca und 2 mgo"), ("de", "13-3-15 + 8ca 2mgo"),
     ("en", "13-3-15 with 8 ca and 2 mgo"), ("es", "abono 13-3-15 con 8 ca y 2 mgo"),
     ("pl", "nawóz 13-3-15 z 8 ca i 2 mgo")],
)  # fmt: skip
def test_calcium_behind_with_is_on_the_label(language: str, line: str) -> None:
    extras = _read(language, line).extras
    assert extras["Ca"] == 8.0
    assert extras["Mg"] == pytest.approx(1.21, abs=0.01)


def test_circa_is_no_calcium() -> None:
    reading = _read("de", "20-20-20 mit ca 8 l")
    assert (reading.volume_l, dict(reading.extras)) == (8.0, {})


def test_an_ounce_of_a_liquid_is_a_fluid_ounce_and_that_is_shown() -> None:
    """1/128 of a US gallon: NIST Handbook 44, appendix C, from memory."""
    liquid = _read("en", "new fert 20-10-20 liquid 1 oz per gal")
    powder = _read("en", "new fert 20-10-20 powder 1 oz per gal")
    assert liquid.label_rate is not None
    assert powder.label_rate is not None
    assert liquid.label_rate.per_litre == pytest.approx(1000 / 128)
    assert liquid.label_rate.unit == "ml"
    assert [r.text for r in liquid.read_as] == ["1 oz per gal"]
    assert powder.label_rate.unit == "g"
    assert powder.label_rate.per_litre == pytest.approx(7.489, abs=0.001)


# --- given, measured, mixed ----------------------------------------------------------------------


@pytest.mark.parametrize(
    ("language", "line", "verb"),
    [
        ("de", "doppelt soviel gegeben wie sonst aus versehen", "overdone"),
        ("en", "gave twice as much as usual by mistake yesterday", "overdone"),
        ("en", "fed the phals twice as much as usual", "overdone"),
        ("es", "ayer sin querer les di el doble de lo normal", "overdone"),
        ("pl", "wczoraj katlejom dałem niechcący dwa razy tyle co zwykle", "overdone"),
        ("de", "gib mir doppelt so viel", "follow_up"),
        ("en", "they got twice as much light as usual", "follow_up"),
        ("de", "ec nach dem mischen 0,45", "meter"),
        ("de", "leitwert 0,9 nach dem düngen mischen zu hoch?", "meter"),
        ("de", "messgerät zeigt 1200 µS im gießwasser ist das zu viel", "meter"),
        ("de", "gießwasser hat nach dem düngen 0,9 mS", "meter"),
        ("en", "ec tap 0.5 with feed 0.9", "meter"),
        ("es", "ec 0,9 con abono ¿es mucho?", "meter"),
        ("pl", "ec 0,9 po rozrobieniu nawozu za wysokie?", "meter"),
        ("de", "mein leitungswasser hat 0,6 mS", "water"),
        ("de", "5 l mit dünger ec 0,8", "dose"),
        ("en", "5 l 20-20-20 powder ec 0.9", "dose"),
    ],
)
def test_what_was_given_or_measured_is_no_request(language: str, line: str, verb: str) -> None:
    order = _read(language, line).order
    assert order is not None
    assert order.verb == verb


def test_two_readings_keep_that_of_the_feed() -> None:
    order = _read("de", "ec leitung 0,5 mit dünger 0,9").order
    assert order is not None
    assert order.meter is not None
    assert order.meter.value == 0.9


@pytest.mark.parametrize(
    ("language", "line", "share"),
    [
        ("de", "und wenn ich halb regenwasser nehm", 0.5), ("en", "and with half rain water", 0.5),
        ("es", "y con mitad de agua de lluvia", 0.5), ("pl", "a jak pół na pół z deszczówką", 0.5),
        ("en", "2 l half rain water for the phals", 0.5), ("en", "2 l for Ruby 30% rain", 0.3),
    ],
)  # fmt: skip
def test_a_share_of_another_water_is_no_strength(language: str, line: str, share: float) -> None:
    reading = _read(language, line)
    assert reading.order is not None
    assert reading.order.mix is not None
    assert (reading.order.mix.kinds[0], reading.order.mix.target) == ("rain", share)
    assert (reading.strength, reading.water) == (None, None)


def test_a_strength_beside_a_water_stays_one() -> None:
    for line in (
        "2 l for Ruby, half strength, rain water",
        "2 l, 1/2, rain",
        "half, rain from the butt",
    ):
        reading = _read("en", line)
        assert reading.strength == 0.5
        assert reading.water is not None
        assert reading.water.kind == "rain"
