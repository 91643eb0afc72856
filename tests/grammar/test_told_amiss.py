"""What was done though it sounds as if it was not, and what was not though it sounds done."""

from __future__ import annotations

import pytest

from grammar import read
from grammar.order import Names, Order

NAMES = Names(plants=("Hugo", "Ruby", "Lola", "Mia"))


def order_of(language: str, line: str) -> Order:
    order = read(line, language=language, names=NAMES).order
    assert order is not None
    return order


@pytest.mark.parametrize(
    ("language", "line", "verb"),
    [
        ("en", "Lola fed every 2 weeks from now on", "not_told"),
        ("de", "Lola ab jetzt alle 2 Wochen gedüngt", "not_told"),
        ("es", "Lola abonada cada 2 semanas desde ahora", "not_told"),
        ("pl", "Lola od teraz nawożona co 2 tygodnie", "not_told"),
        ("pl", "Lola ma być nawożona", "not_told"), ("pl", "Lola jest nawożona", "fed"),
        ("es", "Lola tiene que ser abonada", "not_told"), ("en", "Lola is to be fed", "not_told"),
        ("en", "after I repotted Hugo when do I feed again", "tell"),
        ("de", "nachdem ich Hugo umgetopft habe wann wieder düngen", "tell"),
        ("es", "después de trasplantar a Hugo cuándo abono otra vez", "tell"),
        ("pl", "kiedy znowu nawozić po przesadzeniu Hugo", "tell"),
        ("en", "repotted Hugo, when do I feed again", "repot"),
        ("de", "Hugo umgetopft, wann wieder düngen", "repot"),
        ("es", "trasplanté a Hugo, cuándo vuelvo a abonar", "repot"),
        ("pl", "przesadziłam Hugo, kiedy znowu nawozić", "repot"),
        ("en", "when do I feed again", "plan"), ("en", "repotted Hugo", "repot"),
        ("en", "forgot that I watered all yesterday", "clear"),
        ("de", "hab ganz vergessen dass ich gestern alle gegossen hab", "clear"),
        ("es", "se me olvidó que ayer regué todas", "clear"),
        ("pl", "zupełnie zapomniałem że wczoraj podlałem wszystkie", "clear"),
        ("en", "before I left I watered everything", "clear"),
        ("de", "bevor ich weggefahren bin hab ich alle gegossen", "clear"),
        ("es", "antes de irme regué todas", "clear"),
        ("pl", "zanim wyjechałam podlałam wszystkie", "clear"),
        ("pl", "zanim podlałam wszystkie", "not_told"),
        ("de", "Hugo hätt ich fast gedüngt hab aber nur Wasser genommen", "clear"),
        ("pl", "prawie nawiozłam Hugo, ale dałam tylko wodę", "clear"),
        ("de", "gedüngt hab ich Hugo auch", "fed"), ("de", "gedüngt hab ich Hugo?", "history"),
        ("de", "hab ich Hugo gedüngt", "history"),
        ("en", "Hugo is no longer in bark but in sphagnum", "correct"),
        ("de", "Hugo nicht mehr in Sphagnum sondern in Rinde", "correct"),
        ("es", "Hugo ya no está en corteza sino en esfagno", "correct"),
        ("pl", "Hugo już nie w sphagnum tylko w korze", "correct"),
        ("pl", "Hugo nie stoi już na balkonie tylko w łazience", "move"),
        ("de", "Hugo hab ich meiner Schwester geschenkt", "lose"),
        ("de", "Hugo hat mir meine Schwester geschenkt", None),
        ("de", "ich hab keine Masdevallia mehr", "lose"),
        ("en", "forget about Hugo", None), ("en", "forget the feeding of Hugo", "undo"),
    ],
)  # fmt: skip
def test_what_was_done(language: str, line: str, verb: str | None) -> None:
    found = order_of(language, line).verb
    assert found == verb if verb is not None else found not in ("lose", "undo")


@pytest.mark.parametrize(
    ("language", "line"),
    [("en", "Hugo and Lola fed today Ruby just water"),
     ("de", "Hugo u Lola heute gedüngt Ruby nur Wasser"),
     ("pl", "nawoziłam Hugo i Lolę, Ruby tylko woda"),
     ("es", "aboné a Hugo y a Lola hoy, Ruby solo agua")],
)  # fmt: skip
def test_some_got_only_water(language: str, line: str) -> None:
    order = order_of(language, line)
    assert (order.verb, [o.verb for o in order.also]) == ("fed", ["clear"])
    assert (set(order.target.names), order.also[0].target.names) == ({"Hugo", "Lola"}, ("Ruby",))


@pytest.mark.parametrize(
    ("language", "line"),
    [("en", "today feed phals and Lola, Mia just water"),
     ("es", "hoy abono Hugo y Lola, Mia solo agua"),
     ("pl", "dzis nawoz falki i Lola, Mia sama woda")],
)  # fmt: skip
def test_feed_that_is_only_named_is_no_water_for_all(language: str, line: str) -> None:
    assert order_of(language, line).verb == "two_things"


def test_what_was_forgotten_was_not_done() -> None:
    for language, line in (("de", "hab vergessen Hugo zu düngen"), ("en", "forgot to feed Hugo")):
        assert order_of(language, line).verb != "fed"


def test_water_without_feed_stays_water() -> None:
    assert order_of("en", "no feed for Hugo and Lola, Mia just water").verb != "two_things"
    assert order_of("de", "Hugo und Lola nur Wasser").verb == "clear"


@pytest.mark.parametrize(
    ("language", "line", "verb"),
    [("en", "fed before I left", "fed"), ("en", "fed, forgot to say", "fed"),
     ("de", "gedüngt bevor ich gefahren bin", "fed"), ("es", "regué antes de irme", "clear"),
     ("pl", "podlałam zanim wyjechałam", "clear")],
)  # fmt: skip
def test_what_was_done_first_is_done_all_the_same(language: str, line: str, verb: str) -> None:
    order = read(line, language, names=Names(plants=("Ruby",))).order
    assert order is not None
    assert order.verb == verb
