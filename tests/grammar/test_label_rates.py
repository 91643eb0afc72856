"""What a label says to use, converted to one litre. Ounces: NIST Handbook 44."""

from __future__ import annotations

from typing import Any

import pytest

from grammar import read
from tests.grammar.told import same, value

SAID: list[tuple[str, float, str]] = [
    ("1 g/l", 1, "g"), ("1 g per litre", 1, "g"), ("30 g makes 20 l", 1.5, "g"),
    ("5 g per 10 litres", 0.5, "g"),
    ("2 ml per litre", 2, "ml"), ("5 g per 2 l", 2.5, "g"), ("1 g L⁻¹", 1, "g"),
    ("1 g l-1", 1, "g"), ("2 ml L-1", 2, "ml"), ("1 tsp per us gallon", 1 / 3.785411784, "tsp"),
    ("1 tbsp per 4 l", 0.75, "tsp"), ("1 oz per 10 l", 2.8349523, "g"), ("1:500", 2, "ml"),
    ("for 10 l 5 g", 0.5, "g"), ("per litre 2 ml", 2, "ml"),
]  # fmt: skip


@pytest.mark.parametrize(("text", "per_litre", "unit"), SAID)
def test_label_rate_is_per_litre(text: str, per_litre: float, unit: str) -> None:
    rate: Any = value(read(f"6 l, 20-20-20, label: {text}", "en"), "label_rate")
    assert same(rate, {"per_litre": per_litre, "unit": unit})


def test_water_of_the_label_is_not_the_can() -> None:
    assert read("label: 5 g per 2 l, I need 6 l, 20-20-20 powder", "en").volume_l == 6


def test_rate_per_no_water_is_a_problem() -> None:
    reading = read("2 l, 20-20-20 powder, label 5 g per 0 l", "en")
    assert [p.code for p in reading.problems] == ["division_by_zero"]


@pytest.mark.parametrize(
    ("text", "regime", "shown"),
    [
        ("1g/L monthly on label, 16-16-16 powder, 3 l", None, "monthly"),
        ("label says 2 g per litre monthly, 16-16-16 powder, 3 l", None, "monthly"),
        ("label says fortnightly 2 g per litre, 16-16-16 powder, 3 l", None, "fortnightly"),
        ("Label: 15 g per 10 L every 2 weeks, 16-16-16 powder, 3 l", None, "every 2 weeks"),
        ("label says monthly, 16-16-16 powder, 3 l", None, "monthly"),
        ("Label: 15 g per 10 L every 2 weeks. I feed weekly. 16-16-16 powder, 3 L", "weekly", None),
        ("box says 5 g per litre fortnightly but i do it every time, 16-16-16 powder, 3 l",
         "every_watering", None),
        ("label 2 g per litre monthly, weekly here, 16-16-16 powder, 3 l", "weekly", None),
        ("label 1 g/l 16-16-16 powder 3 l weekly", "weekly", None),
        ("16-16-16 powder weekly label 1 g per litre, 3 l", "weekly", None),
        ("label 1 g/l, weekly, 16-16-16 powder 3 l", "weekly", None),
        ("laut Packung 2 g pro Liter monatlich, 16-16-16 Pulver, 3 l", None, "monatlich"),
        ("Etikett: 2 g pro Liter monatlich, ich dünge wöchentlich, 16-16-16 Pulver, 3 l",
         "weekly", None),
        ("la etiqueta dice 2 g por litro cada mes, polvo 16-16-16, 3 l", None, "cada mes"),
        ("la etiqueta dice 2 g por litro cada mes. Yo abono cada semana. polvo 16-16-16, 3 l",
         "weekly", None),
        ("na etykiecie 2 g na litr co miesiąc, proszek 16-16-16, 3 l", None, "co miesiąc"),
        ("na etykiecie 2 g na litr co miesiąc, nawożę co tydzień, proszek 16-16-16, 3 l",
         "weekly", None),
    ],
)  # fmt: skip
def test_how_often_the_label_wants_it_is_not_how_often_it_is_fed(
    text: str, regime: str | None, shown: str | None
) -> None:
    reading = read(text)
    assert (reading.regime, reading.volume_l, reading.form) == (regime, 3.0, "powder")
    assert not reading.conflicts
    assert [u.text for u in reading.unknown] == ([shown] if shown else [])


@pytest.mark.parametrize(
    ("text", "ml_per_litre"),
    [
        ("dilution 1 to 500 on the bottle", 2), ("1 part to 250 parts water", 4),
        ("one part to 250 parts of water", 4), ("dilute 1 part to 200", 5),
        ("1 part to 200", 5), ("2 parts per 1000", 2), ("diluted 1 in 400", 2.5),
        ("Verdünnung 1 zu 500", 2), ("1 Teil auf 250 Teile Wasser", 4),
        ("dilución 1 a 500", 2), ("1 parte por 250 partes de agua", 4),
        ("rozcieńczenie 1 do 500", 2), ("1 część na 250 części wody", 4),
    ],
)  # fmt: skip
def test_parts_to_parts_are_a_dilution(text: str, ml_per_litre: float) -> None:
    reading = read(f"10-4-7, 5 l, {text}")
    assert same(value(reading, "label_rate"), {"per_litre": ml_per_litre, "unit": "ml"})
    assert reading.volume_l == 5
    assert not reading.conflicts
    assert not reading.unknown


@pytest.mark.parametrize("text", ["1 to 500", "1 part to 4", "1 part to 2 l", "2 to 3 l"])
def test_other_numbers_to_numbers_are_none(text: str) -> None:
    reading = read(f"10-4-7 liquid, {text}", "en")
    assert reading.label_rate is None
    assert reading.conflicts or reading.unknown


@pytest.mark.parametrize(
    ("text", "per_litre", "unit"),
    [
        ("1 tsp = 5g, label 1 tsp per 5 l", 1.0, "g"),
        ("a teaspoon weighs 4g. label says 1 teaspoon per 3 litres", 4 / 3, "g"),
        ("1/4 tsp per litre is 1.2 grams", 1.2, "g"),
        ("a level tsp (it weighs 4.8 g) per 4.5 litres", 4.8 / 4.5, "g"),
        ("1 tsp = 5 g per 5 l", 1.0, "g"),
        ("label 1 tbsp per 10 l, a tsp is 5 g", 1.5, "g"),
        ("label 1/8th tsp per litre", 0.125, "tsp"),
        ("ein Teelöffel wiegt 4 g, Etikett 1 Teelöffel pro 3 Liter", 4 / 3, "g"),
        ("una cucharadita pesa 4 g, etiqueta 1 cucharadita por 3 litros", 4 / 3, "g"),
        ("łyżeczka waży 4 g, etykieta 1 łyżeczka na 3 litry", 4 / 3, "g"),
    ],
)  # fmt: skip
def test_the_weight_of_a_spoon_makes_grams_of_the_rate(
    text: str, per_litre: float, unit: str
) -> None:
    reading = read(f"{text}, 20-20-20, 2 l")
    assert same(value(reading, "label_rate"), {"per_litre": per_litre, "unit": unit})
    assert reading.volume_l == 2
    assert not reading.conflicts
    assert not reading.unknown


@pytest.mark.parametrize(
    ("text", "shown"),
    [
        ("label 1 tsp per 10 l, i have 5 g", "5 g"),
        ("label 1 tsp per 10 l, pack of 500 g", "500 g"),
    ],
)
def test_another_weight_is_none_of_the_spoon(text: str, shown: str) -> None:
    reading = read(f"{text}, 20-20-20 powder, 2 l", "en")
    assert same(value(reading, "label_rate"), {"per_litre": 0.1, "unit": "tsp"})
    assert [u.text for u in reading.unknown] == [shown]


def test_a_volume_that_is_said_again_in_another_unit_is_no_second_one() -> None:
    reading = read("label 20 ml per 4.5 litres (thats a uk gallon), 4-3-8 liquid 5 l", "en")
    assert reading.volume_l == 5
    assert not reading.conflicts
    assert same(value(reading, "label_rate"), {"per_litre": 20 / 4.5, "unit": "ml"})
    other = read("label 20 ml per 4.5 litres (thats a uk pint), 4-3-8 liquid 5 l", "en")
    assert [c.slot for c in other.conflicts] == ["volume_l"]


@pytest.mark.parametrize(
    ("language", "text", "shown"),
    [
        ("en", "2 caps per 5 litres, liquid 3-3-5", "2 caps per 5 litres"),
        ("en", "1 scoop per 2 gal, 15-15-15 powder", "1 scoop per 2 gal"),
        ("en", "label one scoop to 4 litres, 20-20-20 powder", "one scoop to 4 litres"),
        ("en", "scoop per gallon, 20-20-20 powder", "scoop per gallon"),
        ("en", "2 drops a litre, 7-7-7 liquid", "2 drops a litre"),
        ("de", "2 Kappen pro 5 Liter, 3-3-5 flüssig", "2 Kappen pro 5 Liter"),
        ("de", "laut Etikett 2 Kappen auf 5 Liter, 3-3-5 flüssig", "2 Kappen auf 5 Liter"),
        ("es", "2 tapones por 5 litros, 3-3-5 líquido", "2 tapones por 5 litros"),
        ("es", "etiqueta: un tapón para 5 litros, 3-3-5 líquido", "un tapón para 5 litros"),
        ("pl", "2 nakrętki na 5 litrów, 3-3-5 płyn", "2 nakrętki na 5 litrów"),
    ],
)
def test_a_rate_in_a_measure_without_a_size_is_asked_about(
    language: str, text: str, shown: str
) -> None:
    """Its litres are not the can, and more than the label could come of leaving it out."""
    reading = read(text, language)
    assert [(c.code, c.texts) for c in reading.conflicts] == [("loose_rate", (shown,))]
    assert reading.volume_l is None
    assert reading.label_rate is None


def test_a_loose_rate_beside_one_in_units_is_only_shown() -> None:
    reading = read("label 5 ml per litre (1 cap per 2 litres), 7-7-7 liquid, 3 l half", "en")
    assert not reading.conflicts
    assert reading.label_rate is not None
    assert (reading.label_rate.per_litre, reading.volume_l) == (5, 3)
    assert [u.text for u in reading.unknown] == ["1 cap per 2 litres"]


@pytest.mark.parametrize(
    ("language", "text", "volume_l"),
    [
        ("pl", "ile gram na 5 l, proszek 20-20-20", 5),
        ("pl", "parę gram na 5 l, proszek 20-20-20", 5),
        ("pl", "kilka gram na litr, proszek 20-20-20, 3 l", 3),
        ("es", "calcula los gramos por litro, 20-20-20 polvo, 5 l", 5),
        ("es", "unos gramos por litro, 20-20-20 polvo, 3 l", 3),
        ("es", "dime las cucharaditas por litro, 20-20-20 polvo, 5 l", 5),
        ("de", "ein paar Gramm pro Liter, 20-20-20 Pulver, 3 l", 3),
        ("en", "a few grams per litre, 20-20-20 powder, 3 l", 3),
    ],
)
def test_some_of_a_unit_is_not_one_of_it(language: str, text: str, volume_l: float) -> None:
    reading = read(text, language)
    assert reading.label_rate is None
    assert reading.volume_l == volume_l


@pytest.mark.parametrize(
    ("language", "text"),
    [
        ("pl", "gram na litr, proszek 20-20-20, 3 l"),
        ("es", "un gramo por litro, 20-20-20 polvo, 3 l"),
        ("es", "el gramo por litro de la etiqueta, 20-20-20 polvo, 3 l"),
    ],
)
def test_a_unit_that_nothing_counts_is_one_of_it(language: str, text: str) -> None:
    assert same(value(read(text, language), "label_rate"), {"per_litre": 1, "unit": "g"})


ADDED = [
    ("en", "20-20-20 powder with 1 ml/l cal-mag, 3 l", "1 ml/l cal-mag"),
    ("en", "7-7-7 liquid, 3 l, plus 2 ml of calmag per litre", "2 ml of calmag per litre"),
    ("en", "add epsom 1 tsp per gallon too, 20-20-20 powder, 3 l", "epsom 1 tsp per gallon"),
    ("en", "5 ml of cal-mag and 20-20-20 powder in 3 l", "5 ml of cal-mag"),
    ("en", "a bit of kelp, 20-20-20 powder, 3 l", "kelp"),
    ("en", "20-20-20 powder 3 l, epsom salt 1 g/l monthly", "epsom salt 1 g/l monthly"),
    ("de", "7-7-7 flüssig, 2 ml CalMag pro Liter dazu, 3 l", "2 ml CalMag pro Liter"),
    ("de", "Bittersalz 1 g pro Liter, 20-20-20 Pulver 3 l", "Bittersalz 1 g pro Liter"),
    ("es", "20-20-20 polvo con 1 ml/l de calmag, 3 l", "1 ml/l de calmag"),
    ("es", "sulfato de magnesio 1 g por litro, 20-20-20 polvo, 3 l",
     "sulfato de magnesio 1 g por litro"),
    ("pl", "7-7-7 płyn, 2 ml calmagu na litr, 3 l", "2 ml calmagu na litr"),
    ("pl", "20-20-20 proszek, calmag 1 ml na litr, 3 l", "calmag 1 ml na litr"),
]  # fmt: skip


@pytest.mark.parametrize(("language", "text", "shown"), ADDED)
def test_the_rate_of_what_is_added_is_none_of_the_feed(
    language: str, text: str, shown: str
) -> None:
    reading = read(text, language)
    assert reading.label_rate is None
    assert reading.regime is None
    assert reading.volume_l == 3
    assert [u.text for u in reading.unknown] == [shown]


def test_the_label_stands_beside_what_is_added() -> None:
    reading = read("7-7-7 liquid 3 l, label 5 ml/l, cal mag 2 ml per litre", "en")
    assert reading.label_rate is not None
    assert reading.label_rate.per_litre == 5
