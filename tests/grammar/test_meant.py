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


@pytest.mark.parametrize(
    ("language", "text", "verb"),
    [
        ("en", "I did not feed Ruby today", "not_given"), ("en", "I did not", "undo"),
        ("en", "actually I did not flush Mia", "not_given"),
        ("en", "nothing fed today", "not_given"),
        ("en", "I did not remove Ruby", "not_changed"), ("en", "not fed today", "not_given"),
        ("en", "just watered today, didn't feed", "clear"), ("en", "watered today", "clear"),
        ("en", "not Mia but Hugo got fed", "fed"),
        ("de", "hab Ruby heute nicht gedüngt", "not_given"),
        ("de", "heute nix gedüngt", "not_given"),
        ("de", "heute nichts gedüngt", "not_given"), ("de", "heute nicht", "reminder_skip"),
        ("de", "heute nur gegossen, nix gedüngt", "clear"),
        ("de", "heute nicht düngen", "reminder_skip"),
        ("de", "nicht gedüngt, nur gegossen", "clear"),
        ("de", "nicht Mia sondern Hugo gedüngt", "fed"),
        ("es", "hoy no aboné Ruby", "not_given"), ("es", "hoy no", "reminder_skip"),
        ("es", "en realidad no aboné Ruby", "not_given"),
        ("es", "hoy solo regué, no aboné", "clear"),
        ("es", "no Mia sino Hugo aboné", "fed"),
        ("pl", "dziś nie nawoziłam Ruby", "not_given"), ("pl", "dziś nie", "reminder_skip"),
        ("pl", "dziś tylko podlałam, nie nawoziłam", "clear"),
        ("pl", "nie Mia tylko Hugo nawoziłam", "fed"),
        ("de", "heute weder gegossen noch gedüngt", "not_given"),
        ("en", "neither fed nor watered today", "not_given"),
        ("es", "ni regué ni aboné hoy", "not_given"),
        ("pl", "dziś ani nie podlałam ani nie nawoziłam", "not_given"),
        ("en", "fed Hugo instead of Mia", "fed"),
        ("de", "gestern statt Mia den Hugo gedüngt", "fed"),
        ("es", "aboné a Hugo en vez de a Mia", "fed"), ("pl", "nawoziłam Hugo zamiast Mia", "fed"),
    ],
)  # fmt: skip
def test_what_was_not_done_is_no_other_wish(language: str, text: str, verb: str) -> None:
    found = order(text, language)
    assert found.verb == verb
    assert "Mia" not in found.target.names


def test_a_change_of_nobody_else_comes_of_a_denial() -> None:
    assert order("do not remove mia").target.empty
    assert order("plan saturday 5 l no feed for mia").target.not_names == ("Mia",)


@pytest.mark.parametrize(
    ("language", "text"),
    [
        ("en", "Ruby will be fed"), ("en", "Ruby gets fed later"),
        ("de", "gleich wird Ruby gedüngt"), ("de", "Ruby und Mia werden umgetopft"),
        ("es", "Ruby será abonada"), ("es", "Ruby va a ser trasplantada"),
        ("pl", "Ruby będzie nawożona"), ("pl", "Ruby zostanie przesadzona"),
        ("de", "bevor Ruby gedüngt wird"), ("de", "sobald Ruby umgetopft ist"),
        ("de", "Ruby gehört umgetopft"), ("de", "lass uns Ruby umtopfen"),
        ("en", "once Ruby is repotted"), ("en", "let's repot Ruby"),
        ("pl", "zanim Ruby została przesadzona"),
        ("de", "Ruby kommt im Mai auf den Balkon"), ("de", "Ruby kommt morgen auf den Balkon"),
        ("en", "in may Ruby goes to the balcony"), ("es", "en mayo Ruby va al balcón"),
        ("pl", "w maju Ruby idzie na balkon"),
    ],
)  # fmt: skip
def test_what_will_be_done_is_a_plan(language: str, text: str) -> None:
    assert order(text, language).verb == "not_told"


@pytest.mark.parametrize(
    ("language", "text"),
    [("en", "Ruby was fed"), ("de", "Ruby wurde gedüngt"), ("de", "Ruby ist gedüngt worden"),
     ("es", "Ruby fue abonada"), ("pl", "Ruby została nawożona")],
)  # fmt: skip
def test_what_was_done_by_anybody_is_told(language: str, text: str) -> None:
    assert order(text, language).verb == "fed"


def test_a_plant_that_stands_there_for_long_is_moved() -> None:
    assert order("Ruby steht seit Mai auf dem Balkon", "de").verb == "move"
    assert order("Ruby gestern auf den Balkon gestellt", "de").verb == "move"
    assert order("Ruby está en el balcón desde mayo", "es").verb == "move"


@pytest.mark.parametrize(
    "text",
    ["hab vielleicht Ruby gedüngt, weiß nicht mehr", "zu verschenken: Ruby", "Ruby verkaufen"],
)
def test_what_is_not_gone_is_not_taken_away(text: str) -> None:
    assert order(text, "de").verb != "lose"


@pytest.mark.parametrize(
    ("language", "text"),
    [
        ("en", "how much have I fed Ruby this week?"),
        ("de", "wieviel hab ich diesen Monat gedüngt?"),
        ("de", "wie oft hab ich Ruby gedüngt"), ("es", "¿cuánto aboné este mes?"),
        ("pl", "ile nawoziłam w tym miesiącu?"),
    ],
)  # fmt: skip
def test_how_much_was_given_asks_for_no_dose(language: str, text: str) -> None:
    assert order(text, language).verb == "history"


def test_how_much_to_give_asks_for_a_dose() -> None:
    assert order("wieviel hab ich zu geben bei 5 l", "de").verb == "dose"
    assert order("¿cuánto abono doy a Ruby?", "es").verb == "dose"


def test_a_plan_beside_what_was_done_is_not_done() -> None:
    found = order("just fed ruby, will do the rest tomorrow")
    assert (found.verb, found.target.names, found.target.everything, found.when) == (
        "fed", ("Ruby",), False, None,
    )  # fmt: skip
    assert order("fed all, none for hugo").target.not_names == ("Hugo",)


@pytest.mark.parametrize(
    ("language", "text"),
    [
        ("pl", "nie zrobione"), ("pl", "jeszcze nie zrobione"), ("pl", "nie skończone"),
        ("es", "no está hecho"), ("es", "todavía no hecho"),
    ],
)  # fmt: skip
def test_what_is_not_done_is_not_ticked_off(language: str, text: str) -> None:
    assert order(text, language).verb == "not_given"


@pytest.mark.parametrize(
    ("language", "text"),
    [
        ("en", "done except Hugo"), ("en", "all done but Hugo"), ("de", "erledigt außer Hugo"),
        ("es", "hecho menos Hugo"), ("pl", "zrobione oprócz Hugo"), ("pl", "zrobione bez Hugo"),
    ],
)  # fmt: skip
def test_done_but_for_some_spares_them(language: str, text: str) -> None:
    found = order(text, language)
    assert found.verb == "done"
    assert (found.target.everything, found.target.not_names) == (True, ("Hugo",))


def test_done_with_a_no_before_it_is_done() -> None:
    assert order("nie, zrobione", "pl").verb == "done"


@pytest.mark.parametrize(
    ("language", "text"),
    [
        ("en", "suppose I fed Ruby"), ("en", "let's say I fed Ruby yesterday"),
        ("de", "angenommen ich habe Ruby gedüngt"), ("es", "supongamos que aboné Ruby"),
        ("pl", "załóżmy że nawiozłam Ruby"), ("pl", "dajmy na to ze nawiozlam Ruby"),
    ],
)  # fmt: skip
def test_what_is_supposed_was_not_done(language: str, text: str) -> None:
    assert order(text, language).verb == "not_given"


@pytest.mark.parametrize(
    ("language", "text"),
    [
        ("en", "my friend fed her vanda and it is in bloom"),
        ("en", "my friend's vanda is flowering"), ("en", "my friends vanda is flowering"),
        ("en", "my neighbour has a phal in flower"), ("de", "Omas Vanda blüht"),
        ("de", "die Vanda meiner Freundin blüht"), ("de", "bei meiner Freundin blüht die Vanda"),
        ("es", "la vanda de mi amiga está en flor"), ("es", "mi amiga tiene la vanda en flor"),
        ("pl", "vanda koleżanki kwitnie"), ("pl", "u koleżanki kwitnie vanda"),
        ("pl", "mama przesadziła swoje falki do kory"), ("pl", "koleżanka ma vandę w pąkach"),
    ],
)  # fmt: skip
def test_plants_of_somebody_else_are_left_alone(language: str, text: str) -> None:
    found = order(text, language)
    assert (found.verb, found.text) == ("not_changed", "others")


@pytest.mark.parametrize(
    ("language", "text", "verb"),
    [
        ("en", "the vanda from my friend is flowering", "growth"),
        ("en", "my sister watered the vandas", "clear"), ("en", "my vanda is flowering", "growth"),
        ("en", "my friend fed Ruby", "fed"), ("en", "gave the vanda to my sister", "lose"),
        ("de", "meine Vanda blüht", "growth"), ("es", "mi vanda está en flor", "growth"),
        ("pl", "vanda od koleżanki kwitnie", "growth"), ("pl", "nawiozłam swoje vandy", "fed"),
        ("pl", "oddałam vandę sąsiadce", "lose"), ("pl", "siostra podlała moją vandę", "clear"),
    ],
)  # fmt: skip
def test_one_s_own_plants_are_not_somebody_else_s(language: str, text: str, verb: str) -> None:
    assert order(text, language).verb == verb


@pytest.mark.parametrize(
    ("language", "text"),
    [
        ("en", "i don't use tap water any more"), ("de", "ich benutze Leitungswasser nicht mehr"),
        ("es", "ya no uso agua del grifo"), ("pl", "już nie używam kranówki"),
    ],
)  # fmt: skip
def test_a_water_that_is_no_longer_used_is_not_put_on_record(language: str, text: str) -> None:
    assert order(text, language).verb == "not_changed"


@pytest.mark.parametrize(
    ("language", "text"),
    [
        ("en", "switched to rain water"), ("de", "ich bin umgestiegen auf Regenwasser"),
        ("es", "he cambiado a agua de lluvia"), ("pl", "przeszłam na deszczówkę"),
        ("pl", "zmieniłam wodę na deszczówkę"),
    ],
)  # fmt: skip
def test_a_change_of_water_is_told(language: str, text: str) -> None:
    reading = read(text, language, names=NAMES)
    assert reading.order is not None
    assert reading.order.verb == "water"
    assert reading.water is not None
    assert reading.water.kind == "rain"


@pytest.mark.parametrize(
    ("language", "text"),
    [
        ("en", "it was yesterday not today"), ("de", "es war gestern nicht heute"),
        ("es", "fue ayer no hoy"), ("pl", "to było wczoraj nie dziś"),
    ],
)  # fmt: skip
def test_the_day_of_an_entry_put_right_moves_no_reminder(language: str, text: str) -> None:
    found = order(text, language)
    assert found.verb not in ("reminder_skip", "reminder_move")
    assert found.amends is not None
    assert found.amends.when is not None
    assert found.amends.when.value == 1


@pytest.mark.parametrize(
    ("language", "text"),
    [
        ("en", "cut Ruby's spike"), ("es", "corté la vara de Ruby"), ("pl", "obcięłam pęd Ruby"),
        ("pl", "Ruby złamał się pęd"),
    ],
)  # fmt: skip
def test_a_spike_that_is_gone_is_no_flowering(language: str, text: str) -> None:
    assert order(text, language).verb != "growth"


def test_just_now_is_told_and_not_asked() -> None:
    assert order("dopiero co podlałam Hugo", "pl").verb == "clear"


@pytest.mark.parametrize(
    ("language", "text", "verb"),
    [
        ("en", "i would have repotted hugo", "not_given"),
        ("en", "forgot to flush mia", "not_given"),
        ("en", "nearly repotted ruby", "not_given"),
        ("en", "i wish i had flushed mia", "not_given"),
        ("en", "could have moved hugo to the balcony", "not_changed"),
        ("en", "wanted to flush mia and repot hugo", "not_given"),
        ("en", "forgot to say i repotted ruby", "repot"),
        ("en", "forgot to tell you: fed ruby", "fed"),
        ("de", "ich hätte Ruby umgetopft", "not_given"),
        ("de", "ich wollte Mia spülen", "not_given"),
        ("de", "fast hätte ich Ruby gegossen", "not_given"),
        ("de", "hatte gestern Ruby umgetopft", "repot"),
        ("de", "ich habe vergessen Hugo umzutopfen", "not_given"),
        ("de", "vergessen zu sagen, dass ich Hugo umgetopft habe", "repot"),
        ("es", "ojala hubiera abonado a Ruby", "not_given"),
        ("es", "hubiese trasplantado a Hugo", "not_given"),
        ("es", "casi trasplanté a Mia", "not_given"), ("es", "iba a lavar a Ruby", "not_given"),
        ("es", "quería mover a Hugo al balcón", "not_changed"),
        ("es", "se me olvidó decir que aboné a Ruby", "fed"),
        ("es", "Hugo no se murió", "not_changed"),
        ("pl", "gdybym podlała Ruby", "not_given"), ("pl", "przesadziłabym Hugo", "not_given"),
        ("pl", "nawiozłabym Ruby", "not_given"), ("pl", "prawie przesadziłam Mia", "not_given"),
        ("pl", "zapomniałam napisać, że przesadziłam Ruby", "repot"),
    ],
)  # fmt: skip
def test_what_did_not_come_about_is_no_change(language: str, text: str, verb: str) -> None:
    assert order(text, language).verb == verb


@pytest.mark.parametrize(
    ("language", "text", "verb"),
    [
        ("es", "ya aboné a Ruby", "fed"), ("es", "¿ya aboné a Ruby?", "history"),
        ("de", "Ruby habe ich schon gedüngt", "fed"),
        ("de", "habe ich Ruby schon gedüngt", "history"),
        ("de", "hab ich Mia umgetopft", "history"),
        ("de", "hab ich eine Vanda", "plants"), ("de", "dazu hab ich eine Vanda", "add"),
    ],
)  # fmt: skip
def test_a_verb_at_the_head_asks(language: str, text: str, verb: str) -> None:
    assert order(text, language).verb == verb


@pytest.mark.parametrize(
    ("language", "text", "slot"),
    [
        ("en", "Hugo is not growing", "growth"), ("en", "Hugo has no new roots", "growth"),
        ("en", "add a phal not in flower", "growth"), ("en", "Ruby is not in bark", "medium"),
        ("en", "repotted Ruby not in bark", "medium"), ("en", "my can is not 5 l", "volume_l"),
        ("en", "my powder is not 20-20-20", "analysis"), ("en", "fed Ruby not half", "strength"),
        ("en", "my water is not 12 dH", "number"),
        ("de", "Ruby steht nicht in Rinde", "medium"),
        ("de", "mein Dünger ist nicht 20-20-20 Pulver", "analysis"),
        ("es", "Hugo no está creciendo", "growth"), ("es", "Ruby no está en corteza", "medium"),
        ("es", "mi agua no tiene 12 dH", "number"),
        ("pl", "Hugo nie rośnie", "growth"), ("pl", "Hugo już nie kwitnie", "growth"),
        ("pl", "Hugo nie ma nowych korzeni", "growth"), ("pl", "Hugo nie odpoczywa", "growth"),
        ("pl", "dodaj falka, nie kwitnie", "growth"), ("pl", "Ruby nie jest w korze", "medium"),
        ("pl", "przesadziłam Ruby nie do kory", "medium"),
        ("pl", "moja konewka nie ma 5 l", "volume_l"),
        ("pl", "mój nawóz to nie 20-20-20 proszek", "analysis"),
    ],
)  # fmt: skip
def test_what_is_denied_is_asked_about_and_not_put_on_record(
    language: str, text: str, slot: str
) -> None:
    reading = read(text, language, names=NAMES)
    assert reading.order is not None
    assert reading.order.verb == "dose"
    assert ("negation", slot) in {(c.code, c.slot) for c in reading.conflicts}


@pytest.mark.parametrize(
    ("language", "text", "verb"),
    [
        ("en", "no, Ruby is in bark", "correct"), ("de", "nein, Ruby steht in Rinde", "correct"),
        ("pl", "nie, Ruby jest w korze", "correct"), ("en", "fed all but Ruby, half", "fed"),
        ("pl", "mam wodę z kranu 12 dH, nie wiem nic więcej", "water"),
    ],
)  # fmt: skip
def test_a_no_to_something_else_denies_no_figure(language: str, text: str, verb: str) -> None:
    assert order(text, language).verb == verb


def test_where_one_does_not_live_is_no_home() -> None:
    assert order("nie mieszkam w Gdyni", "pl").verb == "dose"


@pytest.mark.parametrize(
    ("language", "text"),
    [
        ("de", "alle gegossen außer Hugo weil nass"),
        ("es", "regué todas menos Hugo porque estaba mojada"),
        ("pl", "podlałam wszystko oprócz Hugo bo mokry"),
    ],
)
def test_why_one_was_excepted_excepts_no_further_one(language: str, text: str) -> None:
    found = order(text, language)
    assert found.verb == "clear"
    assert found.target.not_names == ("Hugo",)


@pytest.mark.parametrize("text", ["Ruby nie wypuściła pędu", "Ruby nie ma pędu"])
def test_a_spike_that_is_denied_is_no_flowering(text: str) -> None:
    assert order(text, "pl").verb == "dose"


@pytest.mark.parametrize(
    ("language", "text"),
    [
        ("en", "a leaf of hugo died"), ("en", "ruby's spike died"),
        ("en", "gave away a leaf of mia"),
        ("de", "ein Blatt von Hugo ist tot"), ("es", "murió una hoja de Hugo"),
        ("es", "regalé una hoja de Ruby"), ("pl", "liść Hugo zginął"),
    ],
)  # fmt: skip
def test_a_part_that_is_lost_takes_no_plant_off(language: str, text: str) -> None:
    assert order(text, language).verb == "not_told"


def test_a_plant_whose_roots_rotted_is_lost() -> None:
    assert order("hugo died, the roots were rotten").verb == "lose"


@pytest.mark.parametrize(
    ("language", "text"),
    [
        ("en", "the spike of ruby withered"),
        ("en", "ruby lost her spike"),
        ("de", "Blütenstiel von Ruby ist vertrocknet"),
        ("es", "a Ruby se le secó la vara"),
        ("pl", "Ruby straciła pęd"),
    ],
)
def test_a_spike_that_is_lost_is_no_bloom(language: str, text: str) -> None:
    assert order(text, language).verb != "growth"


@pytest.mark.parametrize(
    ("language", "text", "place"),
    [
        ("en", "moved ruby to the kitchen, not the balcony", "kitchen"),
        ("en", "moved ruby not to the kitchen but to the balcony", "balcony"),
        ("de", "Ruby in die Küche gestellt, nicht auf den Balkon", "Küche"),
        ("es", "pasé a Ruby a la cocina no al balcón", "cocina"),
        ("es", "moví a Ruby no a la cocina sino al balcón", "balcón"),
        ("pl", "przeniosłam Ruby do kuchni, nie na balkon", "kuchnia"),
    ],
)
def test_a_place_that_is_denied_is_not_where_it_goes(language: str, text: str, place: str) -> None:
    found = order(text, language)
    assert (found.verb, found.place, found.target.place) == ("move", place, None)


@pytest.mark.parametrize(
    ("language", "text"),
    [
        ("en", "watered ruby, sorry, hugo"), ("en", "watered ruby, no, hugo"),
        ("de", "Ruby gegossen, sorry, Hugo"), ("es", "regué a Ruby, perdón, a Hugo"),
        ("pl", "podlałam Ruby, przepraszam, Hugo"),
    ],
)  # fmt: skip
def test_the_second_name_stands_for_the_first(language: str, text: str) -> None:
    found = order(text, language)
    assert (found.verb, found.target.names) == ("clear", ("Hugo",))


def test_two_names_are_two_plants() -> None:
    assert order("sorry, watered ruby and hugo").target.names == ("Ruby", "Hugo")
    assert order("watered ruby, hugo").target.names == ("Ruby", "Hugo")


@pytest.mark.parametrize(
    ("language", "text"),
    [
        ("en", "time to repot hugo"), ("de", "es wird Zeit Hugo umzutopfen"),
        ("es", "toca trasplantar a Hugo"), ("es", "tengo ganas de trasplantar a Hugo"),
        ("es", "falta trasplantar a Hugo"),
    ],
)  # fmt: skip
def test_what_is_due_is_not_done(language: str, text: str) -> None:
    assert order(text, language).verb == "not_told"


@pytest.mark.parametrize(
    ("language", "text", "verb"),
    [
        ("es", "borra a Ruby, no a Hugo", "lose"), ("es", "aboné a Ruby no a Hugo", "fed"),
        ("pl", "usuń Ruby, nie Hugo", "lose"), ("pl", "przesadziłam Ruby, nie Hugo", "repot"),
        ("de", "Ruby umgetopft, nicht Hugo", "repot"), ("en", "sold ruby, not hugo", "lose"),
    ],
)  # fmt: skip
def test_a_name_that_is_denied_is_spared(language: str, text: str, verb: str) -> None:
    found = order(text, language)
    assert (found.verb, found.target.names) == (verb, ("Ruby",))
    assert found.target.not_names == ("Hugo",)
