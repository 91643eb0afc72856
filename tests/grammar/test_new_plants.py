"""Plants to put on record: what they are called, where they stand, and whether they are new."""

from __future__ import annotations

import pytest

from grammar import Names, Order, PlantSaid, read

KNOWN = Names(plants=("Ruby", "Bella"), places=("balcony",), gone=("Hugo",))


def said(text: str, usual: str | None = None) -> Order:
    order = read(text, usual=usual, names=KNOWN).order
    assert order is not None
    return order


def called(text: str) -> list[tuple[str | None, str | None]]:
    return [(p.name, p.genus) for p in said(text).plants]


@pytest.mark.parametrize(
    "text",
    [
        "i have otto a phal in bark",
        "add Otto phal",
        "add Otto, a phal",
        "add Otto, a small yellow phal",
        "füge Otto, eine Phal, hinzu",
        "añade Otto, una phal",
        "dodaj Otto, falenopsis",
    ],
)
def test_a_name_before_the_kind(text: str) -> None:
    ((name, genus),) = called(text)
    assert (str(name).title(), genus) == ("Otto", "Phalaenopsis")


@pytest.mark.parametrize(
    ("text", "name"),
    [
        ("add Hugo phal", "Hugo"),  # one letter from 'huge', and taken off the list before
        ("i have hugi a phal", "hugi"),
        ("add Cat catasetum", "Cat"),
        ("i have Mia Masdevallia", "Mia"),
        ("füge Max, eine Phal, hinzu", "Max"),
        ("dodaj Kropkę, falenopsis", "Kropka"),
    ],
)
def test_a_name_that_is_near_another_word(text: str, name: str) -> None:
    assert [n for n, _ in called(text)] == [name]


@pytest.mark.parametrize(
    ("text", "name"),
    [
        ("add Vanda Lola in bark", "Lola"), ("füge hinzu: Vanda Lola", "Lola"),
        ("add Phalaenopsis Ruby in bark", "Ruby"), ("dodaj Vandę Lolę", "Lola"),
        ("añade una Vanda Lola", "Lola"), ("add a Cattleya Chocolate Drop", None),
        ("add: Phalaenopsis NOID in bark", None), ("add vanda lola", None),
    ],
)  # fmt: skip
def test_a_name_right_behind_the_kind(text: str, name: str | None) -> None:
    (plant,) = said(text).plants
    assert plant.name == name


@pytest.mark.parametrize(
    ("text", "genus", "traits"),
    [
        ("add a yellow phal", "Phalaenopsis", ("yellow",)),
        ("add Dendrobium nobile", "Dendrobium nobile", ()),
        ("add a Rosie Glow phal", "Phalaenopsis", ("Rosie", "Glow")),
        ("add 3 Sogo phals", "Phalaenopsis", ("Sogo",)),
        ("add cymbidium goeringii", "Cymbidium", ("goeringii",)),
        ("i have inherited a phal", "Phalaenopsis", ()),
    ],
)
def test_what_tells_a_kind_apart_is_no_name(text: str, genus: str, traits: tuple[str, ...]) -> None:
    (plant,) = said(text).plants
    assert (plant.name, plant.genus, plant.traits) == (None, genus, traits)


@pytest.mark.parametrize(
    "text",
    [
        "add 3 phals called Otto, Rita and Mona in bark",
        "add 3 phals: Otto, Rita and Mona, in bark",
        "3 phals namens Otto, Rita und Mona in Rinde",
        "añade 3 phals llamadas Otto, Rita y Mona en corteza",
        "dodaj 3 falenopsis: Otto, Rita i Mona, w korze",
    ],
)
def test_as_many_names_as_plants(text: str) -> None:
    plants = said(text).plants
    assert [p.name for p in plants] == ["Otto", "Rita", "Mona"]
    assert {(p.count, p.genus, p.medium, p.traits) for p in plants} == {
        (1, "Phalaenopsis", "bark", ())
    }


def test_what_stands_behind_one_name_is_none() -> None:
    (plant,) = said("add a vanda called Mona, bare root, balcony").plants
    assert (plant.name, plant.medium, plant.place) == ("Mona", "mounted", "balcony")


def test_fewer_names_than_plants_and_more() -> None:
    assert [(p.name, p.count) for p in said("add 3 phals called Otto and Rita").plants] == [
        ("Otto", 1), ("Rita", 1), (None, 1),
    ]  # fmt: skip
    order = said("add 2 phals called Otto, Rita and Mona")
    assert (order.verb, order.count, order.text) == ("add_names", 2, "Otto, Rita, Mona")


def test_each_name_goes_with_its_own_kind() -> None:
    assert called("add Otto, a masdevallia; Mona, a vanda") == [
        ("Otto", "Masdevallia"), ("Mona", "Vanda"),
    ]  # fmt: skip
    assert called("add Otto, a masdevallia, Mona, a vanda and Max a cattleya") == [
        ("Otto", "Masdevallia"), ("Mona", "Vanda"), ("Max", "Cattleya"),
    ]  # fmt: skip


@pytest.mark.parametrize(
    ("text", "places"),
    [
        ("add Otto phal in bark; Rita phal in moss; Mona phal on the balcony and Max a cattleya",
         [None, None, "balcony", None]),
        ("add 2 phals on the balcony and 3 vandas", ["balcony", None]),
        ("add 2 phals in bark and 3 vandas in moss on the balcony", [None, "balcony"]),
        ("add 2 phals; 3 vandas on the balcony", [None, "balcony"]),
        ("add 2 phals and 3 vandas on the balcony", ["balcony", "balcony"]),
        ("add 2 phals in bark and a vanda mounted, balcony", ["balcony", "balcony"]),
        ("on the balcony i have 2 phals and 3 vandas", ["balcony", "balcony"]),
        ("füge 2 Phals auf dem Balkon und 3 Vandas hinzu", ["Balkon", None]),
    ],
)  # fmt: skip
def test_a_place_belongs_to_its_clause(text: str, places: list[str | None]) -> None:
    assert [p.place for p in said(text).plants] == places


@pytest.mark.parametrize(
    ("standing", "texts"),
    [
        ("some", ["i have 2 phals", "ich habe 2 Phals", "tengo 2 phals", "mam 2 falenopsis"]),
        ("total", ["i have 3 phals now", "i have 3 phals in all", "ich habe jetzt 3 Phals",
                   "tengo 3 phals en total", "mam razem 3 falenopsis"]),
        ("", ["add 2 phals", "i have 2 more phals", "i have another phal", "i bought 2 phals",
              "i have inherited a phal", "ich habe noch 2 Phals", "tengo 2 phals nuevas"]),
    ],
)  # fmt: skip
def test_what_somebody_has_may_be_on_record(standing: str, texts: list[str]) -> None:
    for text in texts:
        order = said(text)
        assert (order.verb, order.standing) == ("add", standing), text


@pytest.mark.parametrize(
    "text", ["i had 2 vandas", "ich hatte 2 Vandas", "tenía 2 vandas", "miałam 2 vandy"]
)
def test_what_somebody_had_is_not_put_on_record(text: str) -> None:
    assert said(text).verb == "had"


@pytest.mark.parametrize(
    "text",
    [
        "gave Ruby away", "threw ruby out", "i dont have ruby anymore", "ruby is gone",
        "i don't have ruby any more", "gab Ruby weg", "habe Ruby nicht mehr",
        "ya no tengo a Ruby", "nie mam już Ruby",
    ],
)  # fmt: skip
def test_ways_to_lose_a_plant(text: str) -> None:
    order = said(text)
    assert (order.verb, order.target.names) == ("lose", ("Ruby",))


def test_having_none_of_a_kind_takes_none_away() -> None:
    assert said("i don't have phals").verb != "lose"


@pytest.mark.parametrize(
    ("text", "usual"),
    [
        ("Ruby is a vanda", None), ("Ruby ist eine Vanda", None), ("Ruby es una vanda", None),
        ("Ruby to vanda", "pl"),
    ],
)  # fmt: skip
def test_the_kind_told_later(text: str, usual: str | None) -> None:
    order = said(text, usual)
    assert order.verb == "correct"
    assert order.plants == (PlantSaid("Vanda"),)
    assert (order.target.names, order.target.genera) == (("Ruby",), ())


@pytest.mark.parametrize("text", ["is Ruby a vanda", "Ruby is not a vanda", "Ruby is a vanda?"])
def test_a_kind_that_is_asked_or_denied_is_not_told(text: str) -> None:
    assert said(text).verb != "correct"


@pytest.mark.parametrize(
    "text",
    [
        "how many phals do i have", "how many phals are on the balcony?",
        "wie viele Phals habe ich", "cuántas phals tengo", "ile mam falenopsis",
    ],
)  # fmt: skip
def test_how_many_there_are_is_no_dose(text: str) -> None:
    order = said(text)
    assert (order.verb, order.target.genera) == ("plants", ("Phalaenopsis",))


@pytest.mark.parametrize(
    "text",
    [
        "how many ml for 3 phals", "how much feed for my phals", "how many vandas for 1 l",
        "how much for phals", "dose for phals", "dawka dla falków", "ile dla falków",
    ],
)  # fmt: skip
def test_how_much_they_get_is_a_dose(text: str) -> None:
    assert said(text).verb != "plants"


def test_a_name_that_is_no_longer_there_is_known() -> None:
    assert said("5 l for hugo").gone == ("Hugo",)
    assert said("rename Ruby to Hugo").gone == ()
    assert said("5 l for Ruby").gone == ()


@pytest.mark.parametrize(
    "text",
    ["Ruby", "ruby and bella please", "the one on the balcony", "all of them", "die in Rinde",
     "la del balcón", "ta na balkonie", "phal", "the white one"],
)  # fmt: skip
def test_a_line_that_only_picks(text: str) -> None:
    assert said(text).only_plants


@pytest.mark.parametrize(
    "text",
    ["how many phals do i have", "do my phals need feed", "Ruby?", "5 l for Ruby", "fed all",
     "Ruby is a vanda", "two phals", "feed Ruby", "is ruby resting"],
)  # fmt: skip
def test_a_line_that_says_more_picks_nothing(text: str) -> None:
    assert not said(text).only_plants


def test_numbers_of_a_list() -> None:
    assert said("2").picks == (2,)
    assert said("1 and 3").picks == (1, 3)
    assert said("number 2 please").picks == (2,)
    for text in ("2 l", "2 phals", "1.5", "2?", "2 of them died"):
        assert said(text).picks == (), text


@pytest.mark.parametrize(
    "text",
    [
        "fed Ruby and huga", "fed huga and Ruby", "fed Ruby and Huga today",
        "sold the phals and huga", "5 l for the phals and huga",
        "move huga and Ruby to the balcony",
    ],
)  # fmt: skip
def test_a_name_that_is_not_known_is_not_passed_over(text: str) -> None:
    """'huga' is one letter from 'huge', which carries nothing."""
    assert [u.text.lower() for u in read(text, names=KNOWN).unknown] == ["huga"]


@pytest.mark.parametrize(
    ("text", "count"),
    [
        ("sold two of the phals", 2), ("i had 3 phals but one died", 1),
        ("i have 5 phals, 2 died", 2), ("of my 5 phals 2 died", 2), ("two of my 5 phals died", 2),
        ("three phals died, two are left", 3), ("sold 2 phals, 3 are left", 2),
        ("von meinen 5 Phals sind 2 eingegangen", 2), ("de mis 5 phals se murieron 2", 2),
        ("z moich 5 falenopsis padły 2", 2), ("one phal died", 1), ("the phal died", None),
    ],
)  # fmt: skip
def test_how_many_are_gone(text: str, count: int | None) -> None:
    order = said(text)
    assert (order.verb, order.count) == ("lose", count)


def test_numbers_of_two_kinds_that_are_gone_are_asked() -> None:
    assert said("sold 2 phals and 3 vandas").verb == "lose_apart"


@pytest.mark.parametrize(
    ("language", "text"),
    [
        ("en", "i have 2 phals in bark, Otto and Max, 12 cm pots"),
        ("de", "hab 2 phals in rinde, Otto und Max, 12er töpfe"),
        ("es", "tengo 2 phals en corteza, Otto y Max, maceta 12 cm"),
        ("pl", "mam 2 falki w korze, Otto i Max, doniczka 12 cm"),
    ],
)
def test_names_in_a_part_of_their_own_are_those_of_the_plants(language: str, text: str) -> None:
    order = read(text, language, names=Names()).order
    assert order is not None
    found = [(p.name, p.count, p.medium, p.pot_cm) for p in order.plants]
    assert found == [("Otto", 1, "bark", 12.0), ("Max", 1, "bark", 12.0)]


@pytest.mark.parametrize(
    ("text", "names"),
    [
        ("agrega 3 phalaenopsis llamadas Ruby, Mia y Hugo", ["Ruby", "Mia", "Hugo"]),
        ("agrega 3 phals llamadas Luz, Blanca y Rosa", ["Luz", "Blanca", "Rosa"]),
        ("add 2 phals called Happy and Friend", ["Happy", "Friend"]),
        ("füge 2 Phalaenopsis namens Otto und Rosa hinzu", ["Otto", "Rosa"]),
        ("dodaj 2 phalaenopsis o nazwach Róża i Biała", ["Róża", "Biała"]),
        ("add 2 phals called Otto and Rita. Thanks", ["Otto", "Rita"]),
    ],
)  # fmt: skip
def test_a_large_word_in_a_list_of_names_is_one(text: str, names: list[str]) -> None:
    found = read(text, names=Names()).order
    assert found is not None
    assert [plant.name for plant in found.plants] == names


@pytest.mark.parametrize(
    ("language", "text", "traits"),
    [
        ("en", "i bought a small phal from the supermarket", ("small",)),
        ("en", "add a phal from Lidia in bark", ()),
        ("en", "i bought my first orchid, a phal from the supermarket", ()),
        ("de", "meine erste Orchidee gekauft, eine Phal vom Baumarkt", ()),
        ("de", "ich hab eine kleine Phal vom Baumarkt gekauft", ("kleine",)),
        ("es", "compré una phal del mercado", ()),
        ("pl", "kupiłam falenopsisa z marketu", ()),
    ],
)
def test_where_a_plant_was_got_is_no_trait(
    language: str, text: str, traits: tuple[str, ...]
) -> None:
    order = read(text, language, names=Names()).order
    assert order is not None
    assert [p.traits for p in order.plants] == [traits]
