"""A change that is denied, asked about or planned is no change; one that is told is."""

from __future__ import annotations

import pytest

from grammar import Names, Order, read

NAMES = Names(plants=("Hugo", "Mia", "Ruby"), products=("blue",), places=("balcony",))


def order(text: str, language: str = "en") -> Order:
    found = read(text, language, names=NAMES).order
    assert found is not None
    return found


DENIED = [
    ("do not remove mia", "not_changed"), ("dont remove mia", "not_changed"),
    ("ruby is not dead", "not_changed"), ("ruby isnt dead", "not_changed"),
    ("dont delete blue", "not_changed"), ("dont stop reminder 1", "not_changed"),
    ("dont move hugo to the balcony", "not_changed"),
    ("mia was not moved to the balcony", "not_changed"),
    ("didnt move mia to the balcony", "not_changed"),
    ("do not repot mia", "not_given"), ("did not repot mia", "not_given"),
    ("didnt repot ruby", "not_given"), ("mia not repotted", "not_given"),
    ("didn't flush ruby", "not_given"), ("didnt flush mia", "not_given"),
    ("did not water ruby", "not_given"), ("never flushed ruby", "not_given"),
]  # fmt: skip
ASKED = [
    ("which phals got flushed", "history"), ("has ruby been fed", "history"),
    ("did i flush mia", "history"), ("when was ruby repotted", "history"),
    ("should i flush mia", "salts"), ("need to flush ruby", "salts"),
    ("if i flushed ruby", "salts"),
    ("when should i repot ruby", "not_told"), ("need to repot ruby", "not_told"),
    ("i want to repot ruby", "not_told"), ("will repot mia on sunday", "not_told"),
    ("should i move hugo to the balcony", "not_told"),
    ("thought hugo was dead but hes fine", "not_told"), ("mia looks dead", "not_told"),
    ("did everyone get fed", "history"), ("did ruby get fed", "history"),
    ("has ruby been fed?", "history"), ("should i flush mia?", "salts"),
    ("when should i repot ruby?", "not_told"),
    ("which phals do i have", "plants"), ("do i have a vanda", "plants"),
]  # fmt: skip
TOLD = [
    ("flushed mia", "flush"), ("repotted ruby", "repot"), ("ruby repotted", "repot"),
    ("fed hugo", "fed"), ("ruby was fed", "fed"), ("have fed ruby", "fed"),
    ("has been fed: ruby", "fed"), ("no, flushed mia", "flush"), ("yes, fed ruby", "fed"),
    ("not sure when, flushed mia", "flush"), ("had to flush ruby", "flush"),
    ("moved hugo to the balcony", "move"), ("please move hugo to the balcony", "move"),
    ("can you move hugo to the balcony", "move"), ("mia died", "lose"),
    ("ruby needs water so i watered her", "clear"), ("i did feed ruby", "fed"),
    ("did the flush for ruby", "flush"), ("will do the rest tomorrow, fed ruby", "fed"),
    ("no longer have mia", "lose"),
    ("mia did not make it", "lose"), ("remove blue", "product_remove"),
    ("i have a vanda in bark", "add"), ("i want to add a vanda", "add"),
]  # fmt: skip


@pytest.mark.parametrize(("text", "verb"), DENIED + ASKED + TOLD)
def test_what_is_meant(text: str, verb: str) -> None:
    assert order(text).verb == verb


@pytest.mark.parametrize(
    ("language", "text", "verb"),
    [
        ("de", "habe Mia nicht umgetopft", "not_given"),
        ("de", "Hugo ist nicht tot", "not_changed"),
        ("de", "soll ich Mia umtopfen", "not_told"),
        ("de", "Hugo muss umgetopft werden", "not_told"),
        ("de", "wurde Ruby gedüngt?", "history"), ("de", "musste Mia umtopfen", "repot"),
        ("es", "¿ha recibido abono Ruby?", "history"), ("es", "no regué a Mia", "not_given"),
        ("pl", "nie podlałam Ruby", "not_given"),
        ("de", "hat Mia Dünger bekommen", "history"), ("de", "muss Hugo durchspülen", "salts"),
        ("de", "Mia umgetopft", "repot"), ("de", "nein, Hugo gegossen", "clear"),
        ("es", "no trasplanté a Mia", "not_given"), ("es", "no lavé a Ruby", "not_given"),
        ("es", "Hugo no murió", "not_changed"), ("es", "tengo que lavar a Hugo", "who"),
        ("es", "hay que trasplantar a Hugo", "not_told"), ("es", "trasplanté a Mia", "repot"),
        ("es", "no, lavé a Ruby", "flush"),
        ("pl", "nie przesadziłam Ruby", "not_given"), ("pl", "Hugo nie zginął", "not_changed"),
        ("pl", "nie przepłukałam Hugo", "not_given"), ("pl", "czy Mia dostała nawóz", "history"),
        ("pl", "przesadziłam Ruby", "repot"), ("pl", "nie, przesadziłam Ruby", "repot"),
    ],
)  # fmt: skip
def test_what_is_meant_in_other_languages(language: str, text: str, verb: str) -> None:
    assert order(text, language).verb == verb


def test_a_change_of_nobody_else_comes_of_a_denial() -> None:
    assert order("do not remove mia").target.empty
    assert order("plan saturday 5 l no feed for mia").target.not_names == ("Mia",)


def test_a_plan_beside_what_was_done_is_not_done() -> None:
    found = order("just fed ruby, will do the rest tomorrow")
    assert (found.verb, found.target.names, found.target.everything, found.when) == (
        "fed", ("Ruby",), False, None,
    )  # fmt: skip
    assert order("fed all, none for hugo").target.not_names == ("Hugo",)
