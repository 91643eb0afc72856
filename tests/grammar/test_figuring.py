"""Figures that are asked for and dose nothing: conversions, what feed brings, limits, pH."""

from __future__ import annotations

import pytest

from grammar import MeterSaid, Names, Order, read

NAMES = Names(plants=("Ruby",), products=("grey", "grau", "gris", "szary", "cal"))


def order(line: str, language: str) -> Order:
    found = read(line, language, names=NAMES).order
    assert found is not None
    return found


CONVERTED: list[tuple[str, str, MeterSaid]] = [
    ("en", "what is 1.4 mS on the 500 scale", MeterSaid(1.4, "ms_cm", 500)),
    ("en", "what is 650 ppm on the 700 scale in mS/cm", MeterSaid(650.0, "ppm", 700)),
    ("en", "convert 0.9 mS to ppm 700", MeterSaid(0.9, "ms_cm", 700)),
    ("en", "0.9 mS what is it in ppm", MeterSaid(0.9, "ms_cm")),
    ("en", "convert 650 ppm to mS", MeterSaid(650.0, "ppm")),
    ("en", "how many ppm is 900 µS", MeterSaid(900.0, "us_cm")),
    ("de", "was sind 1,4 mS auf der 500er Skala", MeterSaid(1.4, "ms_cm", 500)),
    ("de", "wie viel mS sind 650 ppm auf der 700er Skala", MeterSaid(650.0, "ppm", 700)),
    ("de", "0,9 mS in ppm umrechnen", MeterSaid(0.9, "ms_cm")),
    ("es", "cuánto es 1,4 mS en la escala de 500", MeterSaid(1.4, "ms_cm", 500)),
    ("es", "convierte 0,9 mS a ppm", MeterSaid(0.9, "ms_cm")),
    ("pl", "ile to 1,4 mS w skali 500", MeterSaid(1.4, "ms_cm", 500)),
    ("pl", "przelicz 0,9 mS na ppm", MeterSaid(0.9, "ms_cm")),
]


@pytest.mark.parametrize(("language", "line", "said"), CONVERTED)
def test_a_reading_in_another_unit_is_no_target(language: str, line: str, said: MeterSaid) -> None:
    reading = read(line, language, names=NAMES)
    assert reading.order is not None
    assert (reading.order.verb, reading.order.meter) == ("convert", said)
    assert reading.target_ec_ms_cm is None
    assert not reading.conflicts


@pytest.mark.parametrize(
    ("language", "line", "said"),
    [
        ("en", "350 ppm on the 500 scale", MeterSaid(350.0, "ppm", 500)),
        ("en", "1.4 CF reading", MeterSaid(1.4, "cf")),
        ("de", "350 ppm auf der 500er Skala", MeterSaid(350.0, "ppm", 500)),
        ("es", "350 ppm en la escala de 500", MeterSaid(350.0, "ppm", 500)),
        ("pl", "350 ppm w skali 500", MeterSaid(350.0, "ppm", 500)),
    ],
)
def test_a_bare_figure_of_a_meter_is_a_reading(language: str, line: str, said: MeterSaid) -> None:
    found = order(line, language)
    assert (found.verb, found.meter) == ("meter", said)


OXIDES = [
    ("en", "what is 20% P2O5 as P", ("P2O5 P", 20.0, "%")),
    ("en", "convert 35 ppm K2O to K", ("K2O K", 35.0, "mg/l")),
    ("en", "how much K2O is 10 % K", ("K K2O", 10.0, "%")),
    ("de", "was sind 20 % P2O5 als P", ("P2O5 P", 20.0, "%")),
    ("es", "cuánto es 20 % P2O5 en P", ("P2O5 P", 20.0, "%")),
    ("pl", "przelicz 35 ppm K2O na K", ("K2O K", 35.0, "mg/l")),
]


@pytest.mark.parametrize(("language", "line", "said"), OXIDES)
def test_an_oxide_is_converted(language: str, line: str, said: tuple[str, float, str]) -> None:
    found = order(line, language)
    assert (found.verb, found.text, found.value, found.unit) == ("convert", *said)


BRINGS = [
    ("en", "how much ppm N is 1 g/l of grey", 1.0, "g"),
    ("en", "1.5 g in 2 l of 13-3-15, what is the ppm", 1.5, "g"),
    ("en", "i mixed 6 g grey in 10 l, how many ppm nitrogen", 6.0, "g"),
    ("en", "how much N P K does 0.8 g of grey in 1 l give", 0.8, "g"),
    ("en", "what EC does 0.5 g/l of grey give", 0.5, "g"),
    ("en", "5 ml of 7-5-6 liquid in 2 l, how much ppm nitrogen is that", 5.0, "ml"),
    ("de", "wie viel ppm N sind 1 g/l grau", 1.0, "g"),
    ("de", "1,5 g in 2 l von 13-3-15, wie viel ppm ist das", 1.5, "g"),
    ("de", "welchen EC gibt 0,5 g/l grau", 0.5, "g"),
    ("es", "cuántos ppm de N son 1 g/l de gris", 1.0, "g"),
    ("es", "1,5 g en 2 l de 13-3-15, cuántos ppm son", 1.5, "g"),
    ("es", "qué EC da 0,5 g/l de gris", 0.5, "g"),
    ("pl", "ile ppm N to 1 g/l szary", 1.0, "g"),
    ("pl", "1,5 g w 2 l 13-3-15, ile to ppm", 1.5, "g"),
    ("pl", "jakie EC daje 0,5 g/l szary", 0.5, "g"),
]


@pytest.mark.parametrize(("language", "line", "amount", "unit"), BRINGS)
def test_what_an_amount_brings_is_asked(language: str, line: str, amount: float, unit: str) -> None:
    found = order(line, language)
    assert (found.verb, found.amount, found.unit) == ("brings", amount, unit)


OTHERS = [
    ("en", "is 100 ppm ammonium too much", "nitrogen_limit", "NH4"),
    ("en", "is 100 ppm nitrate too much", "nitrogen_limit", "NO3"),
    ("en", "is 100 ppm nitrate nitrogen too much", "nitrogen_limit", "N"),
    ("en", "is 150 ppm N too much for masdevallia", "nitrogen_limit", "N"),
    ("de", "sind 100 ppm Ammonium zu viel", "nitrogen_limit", "NH4"),
    ("es", "¿100 ppm de nitrato es demasiado?", "nitrogen_limit", "NO3"),
    ("pl", "czy 100 ppm amonu to za dużo", "nitrogen_limit", "NH4"),
    ("en", "what EC should I aim for with phals", "most_ec", ""),
    ("en", "what's the max EC for masdevallia", "most_ec", ""),
    ("de", "was ist der maximale EC für Masdevallia", "most_ec", ""),
    ("es", "cuál es la EC máxima para masdevallia", "most_ec", ""),
    ("pl", "jakie EC dla falenopsisów", "most_ec", ""),
    ("en", "how much pH down for 10 l", "tell", "ph"),
    ("en", "my pH is 8.2", "tell", "ph"),
    ("en", "what pH do orchids want", "tell", "ph"),
    ("en", "phosphoric acid 85% to bring alkalinity to 60 ppm", "tell", "ph"),
    ("de", "wie viel pH minus für 10 l", "tell", "ph"),
    ("es", "cuánto pH down para 10 l", "tell", "ph"),
    ("pl", "ile pH minus na 10 l", "tell", "ph"),
    ("en", "ppm 500 or 700, how do I know which", "tell", "ppm_scale"),
    ("de", "ppm 500 oder 700, woher weiß ich welche", "tell", "ppm_scale"),
    ("es", "ppm 500 o 700, cómo sé cuál", "tell", "ppm_scale"),
    ("pl", "ppm 500 czy 700, skąd mam wiedzieć", "tell", "ppm_scale"),
]


@pytest.mark.parametrize(("language", "line", "verb", "text"), OTHERS)
def test_limits_and_ph_are_asked_about(language: str, line: str, verb: str, text: str) -> None:
    found = order(line, language)
    assert (found.verb, found.text) == (verb, text)


SALTS = [
    ("en", "can I put magnesium sulfate in stock A with calcium nitrate", 2, 0),
    ("en", "can I mix epsom with cal", 1, 1),
    ("de", "darf ich Bittersalz und Calciumnitrat in eine Stammlösung geben", 2, 0),
    ("es", "¿puedo mezclar sulfato de magnesio con nitrato de calcio?", 2, 0),
    ("pl", "czy mogę mieszać siarczan magnezu z saletrą wapniową", 2, 0),
]


@pytest.mark.parametrize(("language", "line", "feeds", "products"), SALTS)
def test_salts_in_one_bottle_are_asked_about(
    language: str, line: str, feeds: int, products: int
) -> None:
    found = order(line, language)
    assert (found.verb, len(found.feeds), len(found.products)) == ("together", feeds, products)


#: Lines that look alike and stay what they are.
NEAR_MISSES = [
    ("en", "10 l of grey to EC 1.0", "dose"), ("en", "10 l of grey at 100 ppm N", "dose"),
    ("en", "make it EC 1.2", "follow_up"), ("en", "EC 0.8", "dose"), ("en", "100 ppm N", "dose"),
    ("en", "my tap is 0.4 mS", "water"), ("en", "what is EC", "explain"),
    ("en", "my meter says 540 ppm on the 700 scale", "meter"),
    ("en", "is 1.3 ms too strong for Ruby", "meter"), ("en", "runoff of Ruby 1.6 mS", "reading"),
    ("en", "Ca 80, Mg 12, HCO3 240 mg/l, pH 7.6", "water"),
    ("en", "my tap is 17 dH, pH 7.8", "water"),
    ("en", "is 2 g of grey in 1 l too much?", "judge"),
    ("en", "i measured pH 5.8 and EC 1.1 mS in my can", "meter"),
    ("en", "5 l at EC 0.9, my tap is EC 0.4", "dose"),
    ("en", "mix tap EC 0.6 and RO to EC 0.3", "water_mix"),
    ("en", "is 30 ppm sodium too much", "dose"), ("en", "5 l grey with 1:100 concentrate", "dose"),
    ("en", "grey label 1.2 g per litre", "product_change"),
    ("de", "10 l grau auf EC 1,0", "dose"), ("de", "mein Leitungswasser hat 0,4 mS", "water"),
    ("es", "10 l de gris a EC 1,0", "dose"), ("pl", "10 l szary na EC 1,0", "dose"),
    ("pl", "moja kranówka ma 0,4 mS", "water"),
]  # fmt: skip


@pytest.mark.parametrize(("language", "line", "verb"), NEAR_MISSES)
def test_what_only_looks_like_it_stays_what_it_is(language: str, line: str, verb: str) -> None:
    assert order(line, language).verb == verb


def test_a_target_of_another_element_stands_beside_the_unknown() -> None:
    reading = read("10 l 13-3-15 powder, 12 ppm Mg", "en")
    assert reading.target_element is not None
    assert (reading.target_element.element, reading.target_element.mg_l) == ("Mg", 12.0)
    assert [u.text for u in reading.unknown] == ["12 ppm Mg"]
    assert reading.target_n_mg_l is None
