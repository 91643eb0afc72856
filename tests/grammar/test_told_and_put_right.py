"""What was done, perhaps done or done by others, and how the log is put right."""

from __future__ import annotations

import pytest

from grammar import Names, Order, Reading, read

NAMES = Names(plants=("Hugo", "Mia", "Ruby"), products=("blue", "azul"), places=("balcony",))


def said(text: str, language: str) -> Reading:
    return read(text, language, names=NAMES)


def order(text: str, language: str) -> Order:
    found = said(text, language).order
    assert found is not None
    return found


# --- whether it was done at all ------------------------------------------------------------------

DOUBTED = [
    ("en", "maybe i fed hugo", "fed"), ("en", "perhaps i watered ruby yesterday", "clear"),
    ("en", "not sure if i fed hugo", "fed"), ("en", "i might have fed hugo", "fed"),
    ("en", "fed hugo yesterday, maybe", "fed"), ("en", "possibly flushed mia", "flush"),
    ("en", "i don't remember if i repotted ruby", "repot"),
    ("de", "vielleicht hab ich hugo gedüngt", "fed"),
    ("de", "hugo hab ich vielleicht gedüngt", "fed"),
    ("de", "bin nicht sicher ob ich hugo gedüngt habe", "fed"),
    ("es", "quizá aboné a hugo", "fed"), ("es", "a lo mejor regué a ruby ayer", "clear"),
    ("es", "no estoy segura si aboné a hugo", "fed"), ("es", "capaz que aboné a hugo", "fed"),
    ("pl", "może nawiozłam hugo", "fed"), ("pl", "być może podlałam ruby wczoraj", "clear"),
]  # fmt: skip


@pytest.mark.parametrize(("language", "line", "verb"), DOUBTED)
def test_what_may_have_been_done_is_not_logged(language: str, line: str, verb: str) -> None:
    found = order(line, language)
    assert (found.verb, found.text, found.asks_kind) == ("not_told", verb, "doubt")


BELIEVED = [
    ("en", "i think i fed hugo on monday", "fed"),
    ("de", "ich glaube ich habe hugo gedüngt", "fed"),
    ("es", "creo que aboné a hugo el lunes", "fed"), ("es", "creo que regué a mia", "clear"),
    ("pl", "chyba nawiozłam hugo w poniedziałek", "fed"),
]  # fmt: skip


@pytest.mark.parametrize(("language", "line", "verb"), BELIEVED)
def test_what_one_believes_to_have_done_is_logged(language: str, line: str, verb: str) -> None:
    assert order(line, language).verb == verb


NOT_DONE = [
    ("es", "regalaría a ruby"), ("es", "abonaría a hugo"), ("es", "trasplantaría a mia"),
    ("es", "trasplantaria a mia"), ("de", "vergessen, hugo umzutopfen"),
    ("de", "hab vergessen hugo umzutopfen"), ("en", "i'd repot hugo"),
    ("en", "forgot to repot hugo"), ("es", "me olvidé de trasplantar a hugo"),
    ("pl", "nawiozłabym hugo"),
]  # fmt: skip


@pytest.mark.parametrize(("language", "line"), NOT_DONE)
def test_what_would_be_done_or_was_forgotten_changes_nothing(language: str, line: str) -> None:
    assert order(line, language).verb in ("not_given", "not_changed", "not_told", "dose")


def test_a_name_that_ends_like_a_conditional_is_a_name() -> None:
    names = Names(plants=("María",))
    found = read("aboné a María", "es", names=names).order
    assert found is not None
    assert (found.verb, found.target.names) == ("fed", ("María",))


AFTER_REPOTTING = [
    ("en", "after repotting hugo i watered him"), ("de", "nach dem umtopfen hab ich hugo gegossen"),
    ("es", "después de trasplantar a hugo lo regué"), ("pl", "po przesadzeniu hugo podlałam go"),
]  # fmt: skip


@pytest.mark.parametrize(("language", "line"), AFTER_REPOTTING)
def test_what_only_says_when_is_not_logged_besides(language: str, line: str) -> None:
    found = order(line, language)
    assert (found.verb, found.target.names, found.also) == ("clear", ("Hugo",), ())


# --- by whom -------------------------------------------------------------------------------------

BY_SOMEBODY = [
    ("es", "mi marido abono las phal esta mañana", "fed"), ("es", "mi hija las abono ayer", "fed"),
    ("es", "la vecina las rego con abono", "fed"), ("es", "Ana abonó las phals", "fed"),
    ("es", "alguien abono las cattleyas?", "history"),
    ("de", "mein mann hat die cattleyas heute morgen gedüngt", "fed"),
    ("de", "hat jemand die cattleyas gedüngt?", "history"),
    ("en", "my husband fed the cattleyas this morning", "fed"),
    ("en", "did someone feed the cattleyas?", "history"),
    ("en", "my neighbour watered them with feed", "fed"),
    ("pl", "mąż nawiózł cattleye dziś rano", "fed"),
    ("pl", "czy ktoś nawiózł cattleye?", "history"),
]  # fmt: skip


@pytest.mark.parametrize(("language", "line", "verb"), BY_SOMEBODY)
def test_what_somebody_did_is_told_or_asked(language: str, line: str, verb: str) -> None:
    assert order(line, language).verb == verb


@pytest.mark.parametrize("line", ["abono para las vandas, 2 l", "el abono es azul", "abono a hugo"])
def test_abono_by_itself_is_feed(line: str) -> None:
    assert order(line, "es").verb != "fed"


OTHERS = [
    ("pl", "u mamy padł falek"), ("pl", "padła vanda koleżanki"),
    ("de", "die vanda von meiner nachbarin ist eingegangen"),
    ("de", "die mia von meiner nachbarin ist eingegangen"),
    ("es", "la vanda de mi vecina se murió"), ("es", "la mia de mi vecina se murió"),
    ("en", "my neighbour's hugo died"),
]  # fmt: skip


@pytest.mark.parametrize(("language", "line"), OTHERS)
def test_what_somebody_else_lost_is_not_taken_off(language: str, line: str) -> None:
    assert (order(line, language).verb, order(line, language).text) == ("not_changed", "others")


GIVEN_AWAY = [
    ("de", "hugo meiner nachbarin geschenkt"), ("en", "gave hugo to my neighbour"),
    ("de", "hugo ist eingegangen"), ("es", "hugo se murió"), ("pl", "padł hugo"),
]  # fmt: skip


@pytest.mark.parametrize(("language", "line"), GIVEN_AWAY)
def test_what_was_given_to_somebody_else_is(language: str, line: str) -> None:
    assert order(line, language).verb == "lose"


# --- one, or all of a kind -----------------------------------------------------------------------

ONE = [
    ("en", "my phal died"), ("en", "i lost a phal"), ("en", "gave a cattleya away"),
    ("en", "the phalaenopsis died"), ("de", "meine cattleya ist eingegangen"),
    ("de", "mir ist die phal eingegangen"), ("es", "se me murió la cattleya"),
    ("es", "perdí una phal"), ("pl", "padła mi cattleya"), ("pl", "straciłam cattleyę"),
]  # fmt: skip
ALL = [
    ("en", "my phals died"), ("en", "all my phals died"), ("en", "remove the cattleya"),
    ("en", "hugo died"), ("de", "meine cattleyas sind eingegangen"),
    ("de", "die cattleyen sind eingegangen"), ("es", "se murieron mis cattleyas"),
    ("es", "perdí las phalaenopsis"), ("pl", "padły moje cattleye"), ("pl", "oddałam cattleye"),
]  # fmt: skip


@pytest.mark.parametrize(("language", "line"), ONE)
def test_a_kind_in_the_singular_is_one_plant(language: str, line: str) -> None:
    found = order(line, language)
    assert found.verb == "lose"
    assert found.count == 1 or found.text == "one"


@pytest.mark.parametrize(("language", "line"), ALL)
def test_a_kind_in_the_plural_or_a_name_is_not_counted_down(language: str, line: str) -> None:
    found = order(line, language)
    assert (found.verb, found.count, found.text) == ("lose", None, "")


# --- who got none --------------------------------------------------------------------------------

BUT_NOT = [
    ("es", "sí fertilicé pero la vanda no", "fed"), ("es", "hecho pero la vanda no", "done"),
    ("es", "regué todas, la vanda no", "clear"), ("en", "done but not the vanda", "done"),
    ("en", "yes i fed them but not the vanda", "fed"),
    ("de", "erledigt, aber die vanda nicht", "done"),
    ("de", "ja, hab gedüngt, aber die vanda nicht", "fed"),
    ("pl", "zrobione, ale vanda nie", "done"), ("pl", "tak nawiozłam, ale vandy nie", "fed"),
]  # fmt: skip


@pytest.mark.parametrize(("language", "line", "verb"), BUT_NOT)
def test_a_last_clause_excepts_from_all(language: str, line: str, verb: str) -> None:
    found = order(line, language)
    assert (found.verb, found.target.everything, found.target.not_genera) == (
        verb,
        True,
        ("Vanda",),
    )


@pytest.mark.parametrize(
    ("language", "line"),
    [
        ("es", "ayer fertilicé a hugo y a mia con el azul, la laelia no"),
        ("es", "aboné a hugo y a mia, a ruby no"),
        ("de", "hugo und mia gedüngt, die laelia nicht"),
        ("pl", "nawiozłam hugo i mia, laelii nie"),
        ("en", "fed hugo and mia, not the laelia"),
    ],
)
def test_a_last_clause_leaves_those_named_before(language: str, line: str) -> None:
    found = order(line, language)
    assert (found.verb, found.target.names) == ("fed", ("Hugo", "Mia"))


@pytest.mark.parametrize(
    ("language", "line"),
    [("es", "no aboné a hugo"), ("de", "gedüngt habe ich hugo nicht"), ("pl", "hugo nie nawiozłam"),
     ("es", "hecho no"), ("en", "not done")],
)  # fmt: skip
def test_a_plain_denial_logs_nothing(language: str, line: str) -> None:
    assert order(line, language).verb in ("not_given", "no", "dose")


# --- put right -----------------------------------------------------------------------------------

MOVED = [
    ("es", "no, ayer no fertilicé, fue antier"),
    ("en", "no, i did not feed yesterday, it was the day before yesterday"),
    ("de", "nein, gestern hab ich nicht gedüngt, es war vorgestern"),
    ("pl", "nie, wczoraj nie nawoziłam, to było przedwczoraj"),
]


@pytest.mark.parametrize(("language", "line"), MOVED)
def test_another_day_moves_the_entry(language: str, line: str) -> None:
    amends = order(line, language).amends
    assert amends is not None
    assert amends.when is not None
    assert (amends.when.kind, amends.when.value) == ("day", 2)


NEITHER = [
    ("es", "no espera, la laelia tampoco"), ("es", "y la laelia tampoco"),
    ("en", "and not the laelia either"), ("de", "und die laelia auch nicht"),
    ("pl", "i laelii też nie"),
]  # fmt: skip


@pytest.mark.parametrize(("language", "line"), NEITHER)
def test_neither_takes_one_more_out(language: str, line: str) -> None:
    amends = order(line, language).amends
    assert amends is not None
    assert (amends.target.genera, amends.target.not_genera) == ((), ("Laelia",))


# --- too much that was given ---------------------------------------------------------------------

OVERDONE = [
    ("en", "last week i gave them double by accident"),
    ("en", "i gave hugo double strength last week"),
    ("de", "letzte woche hab ich ihnen aus versehen das doppelte gegeben"),
    ("es", "la semana pasada les había puesto el doble sin querer"),
    ("pl", "w zeszłym tygodniu dałam im przez pomyłkę podwójną dawkę"),
]  # fmt: skip


@pytest.mark.parametrize(("language", "line"), OVERDONE)
def test_more_than_full_strength_that_was_given_is_too_much(language: str, line: str) -> None:
    assert order(line, language).verb == "overdone"


@pytest.mark.parametrize(
    ("language", "line"),
    [
        ("en", "hugo got a double spike"), ("en", "gave them double the water"),
        ("en", "double strength 20-20-20, 2 l"), ("en", "last time double, now 2 l of 20-20-20"),
        ("en", "can i give double?"), ("es", "les di el doble de agua"),
        ("de", "doppelte stärke, 2 l 20-20-20"), ("pl", "podwójna dawka, 2 l, 20-20-20"),
    ],
)  # fmt: skip
def test_what_only_sounds_like_too_much_is_not(language: str, line: str) -> None:
    assert order(line, language).verb != "overdone"


INTO = [
    ("es", "le eché 2 g en la jarra de litro y medio", 2.0, "g", 1.5),
    ("pl", "wsypałam 2 g do dzbanka półtora litra", 2.0, "g", 1.5),
    ("de", "ich habe 2 g in die kanne mit anderthalb litern getan", 2.0, "g", 1.5),
    ("en", "i put 2 g in the 1.5 l jug", 2.0, "g", 1.5),
    ("es", "la vecina les puso 10 gramos en el balde", 10.0, "g", None),
    ("en", "the neighbour put 10 grams in the bucket", 10.0, "g", None),
    ("de", "die nachbarin hat 10 gramm in den eimer getan", 10.0, "g", None),
    ("pl", "sąsiadka wsypała 10 gramów do wiadra", 10.0, "g", None),
    ("es", "puse el tapón entero en la jarra", None, "loose", None),
    ("en", "i put a whole cap in the jug", None, "loose", None),
    ("de", "ich hab die ganze kappe in den krug gegeben", None, "loose", None),
    ("pl", "wlałam całą nakrętkę do dzbanka", None, "loose", None),
]  # fmt: skip


@pytest.mark.parametrize(("language", "line", "amount", "unit", "volume_l"), INTO)
def test_what_went_into_a_vessel_is_judged(
    language: str, line: str, amount: float | None, unit: str, volume_l: float | None
) -> None:
    reading = said(line, language)
    assert reading.order is not None
    assert reading.order.verb == "judge"
    assert reading.order.given
    assert (reading.order.amount, reading.order.unit) == (amount, unit)
    assert reading.volume_l == volume_l


MISSED = [
    ("es", "se me olvidó fertilizar toda la semana, les pongo doble?"),
    ("es", "olvidé abonar, pongo el doble?"),
    ("en", "i forgot to fertilise all week, should i give double?"),
    ("en", "forgot the feed, should i double up"),
    ("de", "ich hab die ganze woche vergessen zu düngen, soll ich doppelt geben?"),
    ("pl", "zapomniałam nawozić cały tydzień, dać podwójnie?"),
    ("pl", "zapomniałem o nawozie, dać dwa razy więcej?"),
]


@pytest.mark.parametrize(("language", "line"), MISSED)
def test_a_missed_feed_is_never_made_up_for(language: str, line: str) -> None:
    found = order(line, language)
    assert (found.verb, found.text) == ("tell", "missed")


def test_a_dose_after_a_missed_feed_is_a_dose() -> None:
    assert order("forgot to feed last week, 2 l of 20-20-20", "en").verb == "dose"
