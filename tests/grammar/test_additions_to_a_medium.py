"""What is mixed into a medium and what a pot is like are no names of plants."""

import pytest

from grammar import Names, read


@pytest.mark.parametrize(
    ("language", "text", "traits"),
    [
        ("en", "add 2 vandas in a basket with charcoal", ()),
        ("en", "add 2 cymbidiums in a big pot", ()),
        ("es", "tengo 5 catleyas en corteza con carbon", ()),
        ("es", "tengo 2 cymbidium en tiesto grande", ()),
        ("es", "tengo una cattleya chiquita en maceta de 8, corteza de pino con carbon",
         ("chiquita",)),
        ("de", "ich habe 5 Cattleyen in Rinde mit Kohle", ()),
        ("de", "ich habe 2 Cymbidien im großen Topf", ()),
        ("pl", "mam 5 katlei w korze z węglem", ()),
        ("pl", "mam 2 cymbidium w dużej doniczce", ()),
        ("en", "add a white vanda in a 12 cm pot", ("white",)),
        ("de", "ich habe eine große Vanda im 12 cm Topf", ("große",)),
    ],
)  # fmt: skip
def test_no_names(language: str, text: str, traits: tuple[str, ...]) -> None:
    order = read(text, language, names=Names()).order
    assert order is not None
    assert [(p.name, p.traits) for p in order.plants] == [(None, traits)]


@pytest.mark.parametrize(
    ("language", "text", "pot_cm"),
    [
        ("es", "tengo 3 phal en macetas de 12", 12.0),
        ("es", "tengo 3 phal en maceta de 2 l", None),
        ("pl", "mam 3 falenopsisy w doniczkach 12", 12.0),
        ("es", "tengo 3 phal en macetas de 4 pulgadas", 10.16),
    ],
)  # fmt: skip
def test_a_bare_size_of_a_pot(language: str, text: str, pot_cm: float | None) -> None:
    order = read(text, language, names=Names()).order
    assert order is not None
    assert order.plants[0].pot_cm == (pytest.approx(pot_cm) if pot_cm else None)


@pytest.mark.parametrize(
    ("text", "dh"),
    [("mi agua tiene 30 °f", 16.8), ("agua del grifo de 45 ºf", 25.2), ("agua a 30 °C", None)],
)
def test_degrees_f_in_spanish_are_french(text: str, dh: float | None) -> None:
    water = read(text, "es").water
    found = water.hardness_mg_l_caco3 if water is not None else None
    assert found == (pytest.approx(dh * 17.848, rel=0.01) if dh else None)
