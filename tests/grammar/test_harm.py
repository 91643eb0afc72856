"""Harm as it is told and asked about in four languages, and what only looks like it."""

from __future__ import annotations

import pytest

from grammar import Names, read

NAMES = Names(plants=("Ruby",), products=("blue tub",))

HARM = [
    # somebody ate or drank of it
    ("en", "my dog drank the water from the can", "pets", ""),
    ("en", "help my dog", "pets", ""),
    ("en", "the dog got into the fertilizer", "pets", ""),
    ("en", "baby ate some moss from the pot", "pets", "child"),
    ("en", "kid ate the granules", "pets", "child"),
    ("en", "he drank feed what do i do", "hurt", "swallowed"),
    ("en", "someone drank from the can", "hurt", "swallowed"),
    ("en", "i accidentally ate some", "hurt", "swallowed"),
    ("de", "hund hat dünger gefressen", "pets", ""),
    ("de", "das kind hat moos gegessen", "pets", "child"),
    ("de", "er hat dünger getrunken was tun", "hurt", "swallowed"),
    ("de", "ich hab aus versehen was verschluckt", "hurt", "swallowed"),
    ("es", "mi perro se tomo el agua con fertilizante", "pets", ""),
    ("es", "mi perro tomo agua del balde con abono", "pets", ""),
    ("es", "se tomo el agua de la regadera el gato", "pets", ""),
    ("es", "el bebe se comio musgo", "pets", "child"),
    ("es", "se tomo el abono", "hurt", "swallowed"),
    ("es", "trague un poco sin querer", "hurt", "swallowed"),
    ("pl", "pies wypił wodę z nawozem", "pets", ""),
    ("pl", "dziecko zjadlo mech z doniczki", "pets", "child"),
    ("pl", "wypil nawoz co robic", "hurt", "swallowed"),
    ("pl", "polknelam troche przez przypadek", "hurt", "swallowed"),
    # it got on somebody
    ("en", "my eyes burn", "hurt", ""),
    ("en", "my hands burn from the powder", "hurt", ""),
    ("en", "spilled on skin", "hurt", ""),
    ("en", "got it on my hands", "hurt", ""),
    ("en", "breathed in the dust", "hurt", "breathed"),
    ("de", "meine hände brennen vom pulver", "hurt", ""),
    ("de", "auf haut verschüttet", "hurt", ""),
    ("de", "staub eingeatmet", "hurt", "breathed"),
    ("es", "me arden los ojos", "hurt", ""),
    ("es", "me cayo polvo en el ojo", "hurt", ""),
    ("es", "respire el polvo", "hurt", "breathed"),
    ("pl", "pieka mnie oczy", "hurt", ""),
    ("pl", "wylało się na skórę", "hurt", ""),
    ("pl", "wdychałem pył", "hurt", "breathed"),
    ("en", "do i need gloves", "hurt", "touch"),
    ("de", "ist der staub gefährlich", "hurt", "touch"),
    ("es", "necesito guantes", "hurt", "touch"),
    ("pl", "czy muszę mieć rękawiczki", "hurt", "touch"),
    # whether it is poison, or to eat, and whom to call
    ("en", "do i have to call the vet", "pets", "anyone"),
    ("de", "muss ich zum tierarzt", "pets", "anyone"),
    ("es", "llamo al veterinario", "pets", "anyone"),
    ("pl", "czy dzwonić do weterynarza", "pets", "anyone"),
    ("en", "is it poison", "pets", "anyone"),
    ("en", "is the feed toxic", "pets", "anyone"),
    ("de", "ist das giftig", "pets", "anyone"),
    ("es", "es veneno", "pets", "anyone"),
    ("pl", "czy to trujące", "pets", "anyone"),
    ("en", "can I eat it", "food", "eat"),
    ("en", "what happens if i drink it", "food", "eat"),
    ("de", "kann man das trinken", "food", "eat"),
    ("es", "se puede tomar", "food", "eat"),
    ("pl", "można to zjeść", "food", "eat"),
    # fish
    ("en", "fish pond", "pets", "fish"),
    ("en", "what if it goes in the fish tank", "pets", "fish"),
    ("de", "was wenn es ins aquarium kommt", "pets", "fish"),
    ("es", "y si cae en la pecera", "pets", "fish"),
    ("pl", "a jak wpadnie do akwarium", "pets", "fish"),
    # alarm of which nobody says the cause
    ("en", "this is an emergency", "alarm", ""),
    ("de", "ich habe Angst", "alarm", ""),
    ("es", "es una emergencia", "alarm", ""),
    ("pl", "boję się", "alarm", ""),
    # the rest of a mix
    ("en", "can i pour it in the sink", "leftover", ""),
    ("en", "leftover down the drain?", "leftover", ""),
    ("en", "can i flush it down the toilet", "leftover", ""),
    ("en", "can i keep mixed feed till next week", "leftover", ""),
    ("en", "how long does mixed feed keep", "leftover", ""),
    ("de", "kann ich das ins waschbecken kippen", "leftover", ""),
    ("de", "was mache ich mit dem rest", "leftover", ""),
    ("de", "wie lange hält angemischter dünger", "leftover", ""),
    ("es", "se puede tirar al inodoro?", "leftover", ""),
    ("es", "lo puedo tirar por el fregadero", "leftover", ""),
    ("es", "que hago con el agua que sobra", "leftover", ""),
    ("es", "puedo guardar el abono mezclado", "leftover", ""),
    ("pl", "czy mogę wylać do zlewu", "leftover", ""),
    ("pl", "co zrobić z resztką", "leftover", ""),
    ("pl", "ile wytrzyma rozrobiony nawóz", "leftover", ""),
    # too much, without a figure
    ("en", "i put too much", "overdone", ""),
    ("en", "i burned it i think", "overdone", ""),
    ("en", "if I overfeed what happens", "explain", "overfed"),
    ("de", "ich hab zu viel genommen", "overdone", ""),
    ("de", "was passiert wenn ich zu viel dünge", "explain", "overfed"),
    ("es", "puse demasiado", "overdone", ""),
    ("es", "creo que la queme", "overdone", ""),
    ("es", "que pasa si le pongo demasiado", "explain", "overfed"),
    ("pl", "dałam za dużo", "overdone", ""),
    ("pl", "co będzie jak dam za dużo", "explain", "overfed"),
]


@pytest.mark.parametrize(("language", "line", "verb", "text"), HARM)
def test_harm_is_heard(language: str, line: str, verb: str, text: str) -> None:
    order = read(line, language, names=NAMES).order
    assert order is not None
    assert (order.verb, order.text) == (verb, text)


#: Verbs that only harm has.
_HARM = {"pets", "hurt", "food", "leftover", "overdone", "alarm"}

NONE = [
    ("en", "feed for my daughter's phals"), ("en", "2 l for my son's orchid"),
    ("en", "5 l 20-20-20 powder, my cat sits here"), ("en", "add a phal called Kitty"),
    ("en", "my feed is fish emulsion 5-1-1"), ("en", "my phal drank 2 l"),
    ("en", "can my son help me feed"), ("en", "is copper toxic to orchids"),
    ("en", "aquarium water for my phals"), ("en", "can i water them in the sink"),
    ("en", "fed the rest"), ("en", "pot without drain holes"), ("en", "i put too much water"),
    ("en", "did i put too much?"), ("en", "i put 2 g in 5 l"), ("en", "is 2 g too much?"),
    ("en", "call the vanda the vet"), ("en", "I drank coffee"), ("en", "what now"),
    ("en", "my baby phals need feed"), ("en", "what can i do"),
    ("de", "dünger für die orchideen meiner tochter"), ("de", "die phal hat viel getrunken"),
    ("de", "ist kupfer giftig für orchideen"), ("de", "gib dem rest ein viertel"),
    ("de", "ich tauche sie im waschbecken"), ("de", "fischemulsion 5-1-1"),
    ("es", "abono para las orquideas de mi hija"), ("es", "mi orquidea se tomo toda el agua"),
    ("es", "tomo agua de la llave"), ("es", "riego en el fregadero"),
    ("es", "ojo con las hojas rojas"), ("es", "mezcla de corteza"),
    ("pl", "nawóz do storczyków córki"), ("pl", "storczyk wypił dużo wody"),
    ("pl", "czy miedź jest trująca dla storczyków"), ("pl", "podlewam w zlewie"),
    ("pl", "na dworze piecze słońce"), ("pl", "reszta roślin ćwierć"),
]  # fmt: skip


@pytest.mark.parametrize(("language", "line"), NONE)
def test_what_only_looks_like_harm(language: str, line: str) -> None:
    order = read(line, language, names=NAMES).order
    assert order is not None
    assert order.verb not in _HARM


@pytest.mark.parametrize(
    ("language", "line"),
    [("en", "What now?"), ("en", "oh no!"), ("de", "was soll ich tun"), ("de", "Hilfe!"),
     ("es", "¿y ahora qué?"), ("es", "que hago"), ("pl", "co robić"), ("pl", "o nie")],
)  # fmt: skip
def test_who_is_worried_is_heard(language: str, line: str) -> None:
    order = read(line, language, names=NAMES).order
    assert order is not None
    assert order.worried


@pytest.mark.parametrize("line", ["what now for Ruby", "2 l", "plan", "help plants"])
def test_who_is_not_worried(line: str) -> None:
    order = read(line, "en", names=NAMES).order
    assert order is not None
    assert not order.worried
