"""Polish as home growers write it: doses, doubts, records, reminders, signs and reports."""

from __future__ import annotations

from typing import Any

import pytest

from grammar import Names, Order, Reading, Rhythm, When, read
from grammar.folding import plain
from grammar.orders.agreeing import cases
from tests.grammar.told import same, value

NAMES = Names(
    plants=("Ruby", "Róża"),
    products=("niebieskie wiadro", "zielona butelka"),
    places=("parapet kuchenny", "balkon"),
)
#: What nearly every sentence about a dose says beside what it is there for.
USUAL: dict[str, Any] = {"volume_l": 2, "analysis": [20, 20, 20], "form": "powder"}
REST = ", 2 l, 20-20-20 proszek"


def told(text: str) -> Reading:
    return read(text, "pl", names=NAMES)


def order(text: str) -> Order:
    found = told(text).order
    assert found is not None, text
    return found


def _wrong(reading: Reading, want: dict[str, Any]) -> dict[str, Any]:
    found = {slot: value(reading, slot) for slot in want}
    return {slot: v for slot, v in found.items() if not same(v, want[slot])}


# --- doses ------------------------------------------------------------------------------------

DOSES: list[tuple[str, dict[str, Any]]] = [
    ("2 litry, proszek 20-20-20, kora, lato, połowa dawki",
     USUAL | {"medium": "bark", "season": "summer", "strength": 0.5}),
    ("5 g na 10 litrów według etykiety, mam 4 l, 15-15-15 proszek, ćwiartka",
     {"label_rate": {"per_litre": 0.5, "unit": "g"}, "volume_l": 4, "analysis": [15, 15, 15],
      "strength": 0.25}),
    ("Hej, ile nawozu 20-20-20 w proszku na 2 litry wody dla falenopsisa w korze?",
     USUAL | {"genera": ["Phalaenopsis"], "medium": "bark"}),
    ("1,5 l, 7-7-7 plyn, etykieta 5 ml na litr, falki w mchu",
     {"volume_l": 1.5, "analysis": [7, 7, 7], "form": "liquid", "medium": "sphagnum",
      "label_rate": {"per_litre": 5, "unit": "ml"}, "genera": ["Phalaenopsis"]}),
    ("półtora litra deszczówki, 6-4-6 w płynie, na butelce 3 ml/l, katleje",
     {"volume_l": 1.5, "analysis": [6, 4, 6], "form": "liquid", "genera": ["Cattleya"],
      "water": {"kind": "rain"}, "label_rate": {"per_litre": 3, "unit": "ml"}}),
    ("dwa i pół litra, 20-20-20 proszek, ćwierć dawki",
     {"volume_l": 2.5, "analysis": [20, 20, 20], "form": "powder", "strength": 0.25}),
    ("pół litra, 20-20-20 proszek, sabotki", {"volume_l": 0.5, "genera": ["Paphiopedilum"]}),
    ("ile gramów 20-20-20 proszku na litr wody?", {"volume_l": 1, "analysis": [20, 20, 20]}),
    ("250 ml, 20-20-20 proszek, siewki, 1/8 dawki",
     {"volume_l": 0.25, "growth": "seedling", "strength": 0.125}),
    ("dwieście pięćdziesiąt ml, 20-20-20 proszek", {"volume_l": 0.25}),
    ("zimą, 2 litry, 20-20-20 proszek, dokładnie połowa dawki",
     USUAL | {"season": "winter", "strength": 0.5, "exact": True}),
    ("na etykiecie pisze 10 ml na 5 l, robię 3 l, 8-8-6 płynny, storczyki w keramzycie",
     {"label_rate": {"per_litre": 2, "unit": "ml"}, "volume_l": 3, "medium": "clay_pellets"}),
    ("producent zaleca 1 łyżeczkę na 4 litry, mam 2 l, 20-20-20 proszek",
     {"label_rate": {"per_litre": 0.25, "unit": "tsp"}, "volume_l": 2}),
    ("na litr 2 ml wg etykiety, 5 l, 7-7-7 płyn",
     {"label_rate": {"per_litre": 2, "unit": "ml"}, "volume_l": 5}),
    ("3 ml do litra, płyn 7-7-7, mam konewkę 5 l", {"label_rate": {"per_litre": 3, "unit": "ml"},
                                                   "volume_l": 5}),
    ("2 l, 20-20-20 proszek, 100 ppm azotu", USUAL | {"target_n_mg_l": 100}),
    ("100 mg/l N, 2 l, 20-20-20 proszek, woda z osmozy",
     USUAL | {"target_n_mg_l": 100, "water": {"kind": "reverse_osmosis"}}),
    ("chcę EC 0,8, 2 l, 20-20-20 proszek, RO",
     USUAL | {"target_ec_ms_cm": 0.8, "water": {"kind": "reverse_osmosis"}}),
    ("kranówka EC 0,4, 2 l, 20-20-20 proszek", USUAL | {"water": {"kind": "tap", "ec_ms_cm": 0.4}}),
    ("kranówka 14 stopni niemieckich, 2 l, 20-20-20 proszek",
     USUAL | {"water": {"kind": "tap", "hardness_mg_l_caco3": 249.9}}),
    ("twardość 250 mg/l CaCO3, kran, 2 l, 20-20-20 proszek",
     USUAL | {"water": {"kind": "tap", "hardness_mg_l_caco3": 250}}),
    ("woda destylowana, 2 l, 20-20-20 proszek", USUAL | {"water": {"kind": "distilled"}}),
    ("ze zmiękczacza, 2 l, 20-20-20 proszek", USUAL | {"water": {"kind": "softened"}}),
    ("2 l, 13-3-15 + 8Ca + 2Mg proszek", {"analysis": [13, 3, 15], "extras": {"Ca": 8, "Mg": 2}}),
    ("2 l, 20-20-20 proszek, co tydzień", USUAL | {"regime": "weekly"}),
    ("2 l, 20-20-20 proszek, raz w tygodniu", USUAL | {"regime": "weekly"}),
    ("2 l, 20-20-20 proszek, co dwa tygodnie", USUAL | {"regime": "fortnightly"}),
    ("2 l, 20-20-20 proszek, co drugi tydzień", USUAL | {"regime": "fortnightly"}),
    ("2 l, 20-20-20 proszek, raz na miesiąc", USUAL | {"regime": "monthly"}),
    ("2 l, 20-20-20 proszek, przy każdym podlewaniu", USUAL | {"regime": "every_watering"}),
    ("2 l, 20-20-20 proszek, vandy na podkładkach",
     USUAL | {"genera": ["Vanda"], "medium": "mounted"}),
    ("2 l, 20-20-20 proszek, cymbidia rosną, maj", USUAL | {"growth": "growing", "month": 5}),
    ("falenopsis rośnie w korze, 2 l, 20-20-20 proszek",
     USUAL | {"medium": "bark", "growth": None}),
    ("rośnie wolno, 2 l, 20-20-20 proszek", USUAL | {"growth": "slow"}),
    ("kwitną falki, 2 l, 20-20-20 proszek", USUAL | {"growth": "flowering"}),
    ("dendrobium nobile w spoczynku, 2 l, 20-20-20 proszek",
     USUAL | {"genera": ["Dendrobium nobile"], "growth": "resting"}),
    ("falki mają nowe korzenie, 2 l, 20-20-20 proszek",
     USUAL | {"growth": "new_roots", "month": None}),
    ("falki maja nowe liscie, 2 l, 20-20-20 proszek",
     USUAL | {"growth": "new_leaves", "month": None}),
    ("mam 5 falenopsisów i 2 vandy, 2 l, 20-20-20 proszek",
     USUAL | {"count": 7, "genera": ["Phalaenopsis", "Vanda"]}),
    ("pełna dawka, 2 l, 20-20-20 proszek", USUAL | {"strength": 1}),
    ("podwójna dawka, 2 l, 20-20-20 proszek", USUAL | {"strength": 2}),
    ("połowa dawki z etykiety, 2 l, 20-20-20 proszek", USUAL | {"strength": 0.5}),
    ("50% dawki, 2 l, 20-20-20 proszek", USUAL | {"strength": 0.5}),
    ("trzy czwarte dawki, 2 l, 20-20-20 proszek", USUAL | {"strength": 0.75}),
    ("dwa razy słabiej niż na etykiecie, 2 l, 20-20-20 proszek", USUAL | {"strength": 0.5}),
    ("4 razy słabszy roztwór, 2 l, 20-20-20 proszek", USUAL | {"strength": 0.25}),
    ("o połowę mniej niż na opakowaniu, 2 l, 20-20-20 proszek", USUAL | {"strength": 0.5}),
    ("falka w doniczce 12 cm, 1 l, 20-20-20 proszek", {"volume_l": 1, "genera": ["Phalaenopsis"]}),
    ("konewka 5-litrowa, 20-20-20 proszek, oncidia", {"volume_l": 5, "genera": ["Oncidium"]}),
    ("litr i pół, 20-20-20 proszek", {"volume_l": 1.5}),
    ("2 litry i pół, 20-20-20 proszek", {"volume_l": 2.5, "strength": None}),
    ("2 litry i pół dawki, 20-20-20 proszek", {"volume_l": 2, "strength": 0.5}),
    ("dwulitrowa butelka, 20-20-20 proszek", {"volume_l": 2}),
    ("producent zaleca łyżeczkę na 2 litry, mam 4 l, 20-20-20 proszek",
     {"label_rate": {"per_litre": 0.5, "unit": "tsp"}, "volume_l": 4}),
    ("50 mg azotu na litr, 10 l, 15-5-15 proszek", {"target_n_mg_l": 50, "volume_l": 10}),
    ("kranówka 200 mg CaCO3/l, 2 l, 20-20-20 proszek",
     USUAL | {"water": {"kind": "tap", "hardness_mg_l_caco3": 200}}),
    ("dwa razy dawka z etykiety, 2 l, 20-20-20 proszek", USUAL | {"strength": 2}),
    ("w połowie zimy, 2 l, 20-20-20 proszek", USUAL | {"season": "winter", "strength": None}),
    ("2 galony amerykańskie, 20-20-20 proszek", {"volume_l": 7.570824}),
    ("N 20 P 10 K 15 proszek, 2 l", {"analysis": [20, 10, 15], "volume_l": 2}),
    ("granulat długodziałający 14-14-14, 2 l", {"form": "granules", "analysis": [14, 14, 14]}),
    ("20-20-20 proszek 2 l miltoniopsis mech ćwierć dawki jesień co 2 tyg deszczówka",
     USUAL | {"genera": ["Miltoniopsis"], "medium": "sphagnum", "strength": 0.25,
              "season": "autumn", "regime": "fortnightly", "water": {"kind": "rain"}}),
]  # fmt: skip


@pytest.mark.parametrize(("text", "want"), DOSES, ids=[text for text, _ in DOSES])
def test_a_dose_is_read(text: str, want: dict[str, Any]) -> None:
    reading = read(text, "pl")
    assert not _wrong(reading, want)
    assert not reading.conflicts
    assert not reading.problems
    assert not reading.unknown


#: What these sentences must not be taken for; where it says so, the usual rest is read beside.
TRAPS: list[tuple[str, dict[str, list[Any]]]] = [
    ("vanda w pełnym słońcu" + REST, {"strength": [1.0]}),
    ("pełnia kwitnienia" + REST, {"strength": [1.0]}),
    ("w półcieniu pod drzewem" + REST, {"strength": [0.5]}),
    ("połowa moich falek marnieje" + REST, {"strength": [0.5]}),
    ("pół kolekcji do przesadzenia" + REST, {"strength": [0.5]}),
    ("cała kolekcja na parapecie" + REST, {"strength": [1.0]}),
    ("ostatnio dałam połowę" + REST, {"strength": [0.5]}),
    ("w zeszłym tygodniu podwójna dawka przez pomyłkę" + REST, {"strength": [2.0]}),
    ("jest wpół do dziesiątej" + REST, {"strength": [0.5]}),
    ("przesadzam co pół roku" + REST, {"strength": [0.5]}),
    ("2/3 liści spadło" + REST, {"strength": [0.666667]}),
    ("dwa pędy na falce" + REST, {"strength": [2.0]}),
    ("nawożę dwa razy w tygodniu" + REST, {"strength": [2.0], "regime": ["weekly"]}),
    ("4 razy w miesiącu" + REST, {"strength": [4.0], "regime": ["monthly"]}),
    ("3 razy tygodniowo" + REST, {"strength": [3.0], "regime": ["weekly"]}),
    ("wilgotność 60%" + REST, {"strength": [0.6]}),
    ("kupione 15% taniej" + REST, {"strength": [0.15]}),
    ("o 25% mniej" + REST, {"strength": [0.25]}),
    ("o jedną czwartą mniejsza dawka" + REST, {"strength": [0.25]}),
    ("nie połowa dawki" + REST, {"strength": [0.5]}),
    ("nie chcę pełnej dawki" + REST, {"strength": [1.0]}),
    ("mniej niż połowa dawki" + REST, {"strength": [0.5]}),
    ("najwyżej ćwierć dawki" + REST, {"strength": [0.25]}),
    ("od 25 do 50% dawki" + REST, {"strength": [0.25, 0.5, 0.375]}),
    ("ćwiartka dla falek, połowa dla katlei" + REST, {"strength": [0.25, 0.5]}),
    ("słaby falenopsis" + REST, {"strength": [0.25]}),
    ("-5 l 20-20-20 proszek", {"volume_l": [5]}),
    ("2 do 3 litrów, 20-20-20 proszek", {"volume_l": [2, 3, 2.5]}),
    ("2-3 l, 20-20-20 proszek", {"volume_l": [2, 3, 2.5]}),
    ("między 2 a 3 l, 20-20-20 proszek", {"volume_l": [2, 3, 2.5]}),
    ("dwa lub trzy litry, 20-20-20 proszek", {"volume_l": [2, 3]}),
    ("co najmniej 2 l, 20-20-20 proszek", {"volume_l": [2]}),
    ("niecałe 2 l, 20-20-20 proszek", {"volume_l": [2]}),
    ("2 l lub więcej, 20-20-20 proszek", {"volume_l": [2]}),
    ("1,500 ml 20-20-20 proszek", {"volume_l": [1.5, 0.0015, 1500]}),
    ("1.500 l 20-20-20 proszek", {"volume_l": [1.5, 1500]}),
    ("1 250 ml 20-20-20 proszek", {"volume_l": [0.25, 1]}),
    ("4 butelki po 2 l, 20-20-20 proszek", {"volume_l": [2, 4]}),
    ("3 x 2 l, 20-20-20 proszek", {"volume_l": [2, 3], "strength": [3.0]}),
    ("po 2 l na 4 storczyki, 20-20-20 proszek", {"volume_l": [2, 4]}),
    ("100 ml na roślinę, 20-20-20 proszek", {"volume_l": [0.1]}),
    ("200 ml na doniczkę, 5 sztuk, 20-20-20 proszek", {"volume_l": [0.2]}),
    ("wczoraj 5 l, dziś 2 l, 20-20-20 proszek", {"volume_l": [5, 7]}),
    ("nie 5 l tylko 3 l, 20-20-20 proszek", {"volume_l": [5]}),
    ("konewka 10 l do połowy pełna, 20-20-20 proszek", {"volume_l": [10], "strength": [0.5, 1.0]}),
    ("pół konewki 5 l, 20-20-20 proszek", {"strength": [0.5]}),
    ("cymbidium w doniczce 5 l, 20-20-20 proszek", {"volume_l": [5]}),
    ("cymbidium w 5-litrowej doniczce, 20-20-20 proszek", {"volume_l": [5]}),
    ("3 w doniczce" + REST, {"pot_cm": [7.62]}),
    ("falka ma 3 lata" + REST, {"season": ["summer"], "count": [3]}),
    ("falka z 2 liśćmi, 20-20-20 proszek", {"volume_l": [2], "count": [2]}),
    ("5 kg 20-20-20 proszku", {"volume_l": [5]}),
    ("3000 lx na półce, 20-20-20 proszek", {"volume_l": [3000]}),
    ("2 l, proszek, mój numer 06-12-34", {"analysis": [[6, 12, 34]]}),
    ("2 l, proszek kupiony 15-05-20", {"analysis": [[15, 5, 20]]}),
    ("2 l, proszek, temperatury 15-20-25", {"analysis": [[15, 20, 25]]}),
    ("woda 20 °C" + REST, {"volume_l": [20, 22]}),
    ("etykieta: 2 do 4 ml na litr, 1 l, 7-7-7 płyn",
     {"label_rate": [{"per_litre": 2, "unit": "ml"}, {"per_litre": 4, "unit": "ml"}]}),
    ("etykieta 1 g na galon, 4 l, 20-20-20 proszek",
     {"label_rate": [{"per_litre": 1, "unit": "g"}]}),
    ("etykieta 1 łyżka na 4 l, 2 l, 20-20-20 proszek",
     {"label_rate": [{"per_litre": 0.25, "unit": "tsp"}], "volume_l": [4]}),
    ("jedna nakrętka na litr, 2 l, 7-7-7 płyn", {"label_rate": [{"per_litre": 1, "unit": "ml"}]}),
    ("5 l, 7-7-7 płyn, 10 ml", {"volume_l": [0.01, 5.01]}),
    ("odciek EC 2,0" + REST, {"target_ec_ms_cm": [2.0]}),
    ("ostatnio EC 1,5" + REST, {"target_ec_ms_cm": [1.5]}),
    ("pH 5,8" + REST, {"target_ec_ms_cm": [5.8]}),
    ("20 ppm" + REST, {"target_n_mg_l": [20]}),
    ("100 ppm potasu" + REST, {"target_n_mg_l": [100]}),
    ("woda źródlana" + REST, {"season": ["spring"], "water": [{"kind": "well"}, {"kind": "tap"}]}),
    ("jeszcze nie zima" + REST, {"season": ["winter"]}),
    ("zima, żadnych nowych korzeni" + REST, {"growth": ["new_roots"]}),
    ("bez kory" + REST, {"medium": ["bark"]}),
    ("zamiast kory mech" + REST, {"medium": ["bark"]}),
    ("wszystkie mają się dobrze" + REST, {"month": [5]}),
    ("co miesiąc płukanie czystą wodą" + REST, {"regime": ["monthly"]}),
    ("nie w lecie" + REST, {"season": ["summer"]}),
    ("Wanda mówi cześć" + REST, {"genera": [["Vanda"]]}),
    ("nie wiem ile dokładnie, 2 l, 20-20-20 proszek, zima", {"exact": [True]}),
    ("z połowy falek spadły liście" + REST, {"strength": [0.5]}),
    ("dodaj pół miarki" + REST, {"strength": [0.5]}),
    ("w połowie lutego" + REST, {"strength": [0.5]}),
    ("połowa tygodnia" + REST, {"strength": [0.5]}),
    ("ćwierć kolekcji choruje" + REST, {"strength": [0.25]}),
    ("1/3 storczyków padła" + REST, {"strength": [0.333333]}),
    ("6 razy słabiej" + REST, {"strength": [6.0]}),
    ("dwukrotnie rozcieńczony" + REST, {"strength": [2.0]}),
    ("trzy razy już kwitła" + REST, {"strength": [3.0]}),
    ("dwa razy do roku" + REST, {"strength": [2.0]}),
    ("o połowę więcej" + REST, {"strength": [0.5]}),
    ("zwiększyć o połowę" + REST, {"strength": [0.5]}),
    ("zmniejszam dawkę o ćwierć" + REST, {"strength": [0.25]}),
    ("dawka mniejsza niż ćwierć" + REST, {"strength": [0.25]}),
    ("konewka do połowy" + REST, {"strength": [0.5]}),
    ("połowę konewki" + REST, {"strength": [0.5]}),
    ("podwójne okno" + REST, {"strength": [2.0]}),
    ("pół opakowania" + REST, {"strength": [0.5]}),
    ("dwie półlitrowe butelki, 20-20-20 proszek", {"volume_l": [0.5, 2]}),
    ("2 l na każdego storczyka, 20-20-20 proszek", {"volume_l": [2]}),
    ("każdy storczyk dostaje 200 ml, 20-20-20 proszek", {"volume_l": [0.2]}),
    ("miałam 5 l, 20-20-20 proszek", {"volume_l": [5]}),
    ("kranówka ma 10 mg/l azotu azotanowego" + REST, {"target_n_mg_l": [10]}),
    ("ile gramów na litr, 3 l, 20-20-20 proszek", {"label_rate": [{"per_litre": 1, "unit": "g"}]}),
]  # fmt: skip


@pytest.mark.parametrize(("text", "must_not"), TRAPS, ids=[text for text, _ in TRAPS])
def test_a_trap_is_not_fallen_into(text: str, must_not: dict[str, list[Any]]) -> None:
    reading = read(text, "pl")
    asked = bool(reading.conflicts or reading.problems)
    hits = {s: value(reading, s) for s, bad in must_not.items()
            if any(same(value(reading, s), b) for b in bad)}  # fmt: skip
    assert asked or not hits
    if text.endswith(REST):
        assert asked or not _wrong(reading, USUAL)


@pytest.mark.parametrize("text", ["3 maja", "od maja", "maj", "w połowie maja", "początek maja"])
def test_a_month_is_told_from_a_verb(text: str) -> None:
    assert read(text + REST, "pl").month == 5
    assert read("wszystkie mają pąki" + REST, "pl").month is None
    assert read("3 maja pąki" + REST, "pl").month is None


@pytest.mark.parametrize(
    "text",
    [
        "po 2 l, 20-20-20 proszek", "2 l, 20-20-20 proszek, 10-10-10 proszek",
        "2 l i 3 l, 20-20-20 proszek", "2 l, 20-20-20 proszek, płyn",
        "2 l, 20-20-20 proszek, połowa, ćwiartka", "twardość 12, 2 l, 20-20-20 proszek",
    ],
)  # fmt: skip
def test_what_is_unclear_is_asked_about(text: str) -> None:
    assert read(text, "pl").conflicts


@pytest.mark.parametrize("with_accents", [text for text, _ in DOSES])
def test_accents_may_be_left_out(with_accents: str) -> None:
    plain = with_accents.translate(str.maketrans("ąćęłńóśźżĄĆĘŁŃÓŚŹŻ", "acelnoszzACELNOSZZ"))
    one, other = read(with_accents, "pl"), read(plain, "pl")
    assert [value(one, s) for s in USUAL] == [value(other, s) for s in USUAL]
    assert (one.strength, one.medium, one.genera) == (other.strength, other.medium, other.genera)
    assert (one.growth, one.month, one.water) == (other.growth, other.month, other.water)


@pytest.mark.parametrize(
    ("text", "slot", "meant"),
    [
        ("2 l, 20-20-20 proszke", "form", "powder"),
        ("2 l, falenopzis", "genera", ["Phalaenopsis"]),
        ("2 l, keramzit", "medium", "clay_pellets"),
        ("2 l, deszczowkka", "water", {"kind": "rain"}),
    ],
)  # fmt: skip
def test_a_slip_is_read_and_shown(text: str, slot: str, meant: Any) -> None:
    reading = read(text, "pl")
    assert same(value(reading, slot), meant)
    assert reading.read_as


# --- records ----------------------------------------------------------------------------------

VERBS = {
    "add": [
        "dodaj 3 falenopsisy w korze, doniczki 12 cm, kuchnia",
        "mam masdevallię w mchu o imieniu Iskra",
        "kupiłam dziś dwie katleje, kora, doniczka 10 cm", "dodaj vandę bez podłoża, balkon",
        "nowa roślina: dendrobium nobile, nazywa się Bambus, kora, wschodnie okno",
    ],
    "rename": ["zmień nazwę Ruby na Rubin", "nazwij vandę Błękitna", "Ruby nazywa się teraz Rubin"],
    "move": [
        "przestaw Ruby na balkon", "przeniosłam Różę do łazienki", "Ruby stoi na balkonie",
        "wszystkie vandy przeniosłem do szklarni",
    ],
    "repot": [
        "przesadziłam dziś vandę", "Ruby dostała nową doniczkę", "Ruby przesadzona do kory wczoraj",
    ],
    "growth": ["Ruby ma nowy pęd", "Ruby śpi", "vandy rosną", "Róża ma nowy liść"],
    "lose": ["Ruby padła", "sprzedałam Różę", "usuń Ruby", "straciłam małą katleję"],
    "correct": ["Ruby jest w korze, doniczka 9 cm", "Ruby dostaje 200 ml"],
    "plants": ["moje storczyki", "pokaż moje rośliny", "jakie mam storczyki?", "lista roślin"],
    "product": [
        "mój proszek to 20-20-20, na etykiecie 1 g na litr, nazwij go czerwone pudełko",
        "mam płyn 7-7-7, 5 ml na litr, o nazwie żółta butelka",
    ],
    "product_remove": ["niebieskie wiadro się skończyło", "zielona butelka jest pusta"],
    "product_default": ["od teraz zielona butelka"],
    "shelf": ["moje nawozy", "jakie mam nawozy?", "co mam na półce"],
    "lacking": ["czego brakuje w niebieskie wiadro?"],
    "choose": ["który nawóz dla vand?", "czym nawozić katleje?"],
    "water": ["moja kranówka ma 14 dH", "moja woda: 300 uS i 8 dH"],
    "water_for": ["deszczówka dla masdevallii", "masdevallie dostają RO"],
    "kit": ["moja waga pokazuje 0,1 g", "moja konewka ma 5 l", "mam konewkę 10 litrów"],
    "home": ["mieszkam w Krakowie", "moja strefa czasowa to Europe/Warsaw", "półkula południowa"],
    "fed": [
        "nawiozłam Ruby", "nawiozłem wszystkie falki ćwiartką", "podlałam Ruby nawozem",
        "Ruby i Róża dostały nawóz", "dałam Ruby odżywkę",
    ],
    "clear": ["podlałam Ruby czystą wodą", "podlałem wszystko samą wodą wczoraj", "podlałam Ruby"],
    "flush": [
        "przepłukałam Ruby", "wczoraj przepłukałem wszystkie falki", "przelałam vandy czystą wodą",
    ],
    "reading": ["odciek z Ruby 1,6", "odciek Róży 1,2 mS"],
    "undo": ["cofnij", "cofnij ostatni wpis", "to była pomyłka", "to było nie tak"],
    "forget": ["usuń wszystkie moje dane", "zapomnij o mnie"],
    "history": [
        "kiedy ostatnio nawoziłam Ruby?", "co dostała Ruby od października", "historia Ruby",
    ],
    "plan": ["co mam dziś podlać?", "plan na niedzielę", "co dziś do zrobienia?"],
    "done": ["zrobione", "zrobiłam 1 i 3", "wszystko zrobione"],
    "export": ["eksport", "wyeksportuj moje dane jako csv"],
    "follow_up": ["a dla masdevallii?", "połowę tego", "to samo dla vand", "niech będzie 3 litry"],
    "why": ["dlaczego?", "czemu tak"],
    "more": ["więcej", "pokaż więcej"],
    "help": ["pomoc", "co umiesz?"],
    "yes": ["tak", "tak, proszę"],
    "no": ["nie", "lepiej nie"],
    "judge": ["5 g 20-20-20 na 2 l, czy to za dużo?"],
    "pets": ["czy to jest bezpieczne dla kota?", "pies napił się z konewki"],
    "remedy": ["czy mogę podlać fusami z kawy?", "woda po ryżu do storczyków?"],
    "salts": ["jak zasolona jest Ruby", "jak przepłukać Ruby?"],
    "stock": ["zrób 500 ml stężonego roztworu z niebieskie wiadro"],
    "together": ["czy niebieskie wiadro i zielona butelka można mieszać w jednej butelce?"],
    "compare": ["porównaj niebieskie wiadro i zielona butelka", "co jest tańsze?"],
    "supplement": ["czy brakuje mi wapnia?"],
    "language": ["mów po polsku", "język polski", "zmień język na angielski"],
    "picture_year": ["pokaż mój rok"],
    "picture_card": ["karta dawki"],
    "quiet": ["cicho"],
    "dose": ["5 l", "ile dla falek?", "dawka dla Ruby", "2 l dla vand, połowa dawki"],
    "water_suits": ["czy moja woda nadaje się dla masdevallii?"],
    "water_mix": ["ile RO do kranówki żeby mieć 6 dH?"],
    "meter": ["miernik pokazuje 0,9", "pożywka ma EC 1,2"],
}  # fmt: skip


@pytest.mark.parametrize(
    ("text", "verb"), [(text, verb) for verb, texts in VERBS.items() for text in texts]
)
def test_the_verb(text: str, verb: str) -> None:
    assert order(text).verb == verb


@pytest.mark.parametrize(
    ("said", "when"),
    [
        ("dziś", When("day", 0)), ("wczoraj", When("day", 1)), ("3 dni temu", When("day", 3)),
        ("dwa tygodnie temu", When("day", 14)), ("w zeszłą niedzielę", When("weekday", 7)),
        ("3 listopada", When("date", 11, 3)), ("3 maja", When("date", 5, 3)),
        ("2026-03-14", When("date", 3, 14, 2026)), ("14 marca 2025", When("date", 3, 14, 2025)),
    ],
)  # fmt: skip
def test_the_day(said: str, when: When) -> None:
    assert order(f"przepłukałam Ruby {said}").when == when


@pytest.mark.parametrize(
    ("text", "names"),
    [("nawiozłam Różę", ("Róża",)), ("podlałam Ruby i Rózę", ("Ruby", "Róża")),
     ("kiedy nawoziłam Róży", ("Róża",))],
)  # fmt: skip
def test_a_name_may_have_an_ending(text: str, names: tuple[str, ...]) -> None:
    assert order(text).target.names == names


@pytest.mark.parametrize(
    ("text", "product"),
    [
        ("ile na 5 l z zielonej butelki", "zielona butelka"),
        ("nawiozłam Ruby niebieskim wiadrem", "niebieskie wiadro"),
        ("czego brakuje w zielonej butelce?", "zielona butelka"),
    ],
)
def test_all_words_of_a_name_may_have_endings(text: str, product: str) -> None:
    assert order(text).products == (product,)


def test_a_plant_is_taken_with_what_is_said_of_it() -> None:
    (plant,) = order("dodaj 3 falenopsisy w korze, doniczki 12 cm, kuchnia").plants
    assert (plant.genus, plant.count, plant.medium) == ("Phalaenopsis", 3, "bark")
    assert (plant.pot_cm, plant.place) == (12.0, "kuchnia")
    (named,) = order("mam masdevallię w mchu o imieniu Iskra").plants
    assert (named.genus, named.name, named.medium) == ("Masdevallia", "Iskra", "sphagnum")


# --- reminders --------------------------------------------------------------------------------


def rhythm(text: str) -> Rhythm:
    found = order(f"przypominaj mi {text} przepłukać")
    assert found.verb == "remind", text
    assert found.rhythm is not None, text
    return found.rhythm


@pytest.mark.parametrize(
    ("said", "wanted"),
    [
        ("codziennie", Rhythm(1, "day")), ("co drugi dzień", Rhythm(2, "day")),
        ("co 10 dni", Rhythm(10, "day")), ("co trzeci dzień", Rhythm(3, "day")),
        ("co tydzień", Rhythm(1, "week")), ("raz w tygodniu", Rhythm(1, "week")),
        ("co dwa tygodnie", Rhythm(2, "week")), ("raz na 2 tygodnie", Rhythm(2, "week")),
        ("co miesiąc", Rhythm(1, "month")), ("co 2 miesiące", Rhythm(2, "month")),
        ("dwa razy w miesiącu", Rhythm(1, "month", month_days=(1, 15))),
        ("w każdy piątek", Rhythm(1, "week", (5,))), ("w piątki", Rhythm(1, "week", (5,))),
        ("w poniedziałki i czwartki", Rhythm(1, "week", (1, 4))),
        ("od poniedziałku do piątku", Rhythm(1, "week", (1, 2, 3, 4, 5))),
        ("co drugi piątek", Rhythm(2, "week", (5,))), ("co weekend", Rhythm(1, "week", (6,))),
        ("w pierwszą niedzielę miesiąca", Rhythm(1, "month", (7,), (1,))),
        ("w każdą pierwszą niedzielę", Rhythm(1, "month", (7,), (1,))),
        ("w ostatni piątek miesiąca", Rhythm(1, "month", (5,), (-1,))),
        ("15-go każdego miesiąca", Rhythm(1, "month", month_days=(15,))),
        ("15. każdego miesiąca", Rhythm(1, "month", month_days=(15,))),
        ("1 i 15 każdego miesiąca", Rhythm(1, "month", month_days=(1, 15))),
        ("każdego 1. dnia miesiąca", Rhythm(1, "month", month_days=(1,))),
        ("za 3 tygodnie", Rhythm(ahead=(3, "week"))), ("za miesiąc", Rhythm(ahead=(1, "month"))),
        ("za 15 minut", Rhythm(ahead=(15, "minute"))), ("za 15 godzin", Rhythm(ahead=(15, "hour"))),
        ("za piętnaście dni", Rhythm(ahead=(15, "day"))),
        ("za pół godziny", Rhythm(ahead=(30, "minute"))), ("jutro", Rhythm(day=When("day", -1))),
        ("pojutrze", Rhythm(day=When("day", -2))), ("w piątek", Rhythm(day=When("weekday", 5))),
        ("w przyszły piątek", Rhythm(day=When("weekday", 5))),
        ("w przyszłym tygodniu", Rhythm(ahead=(1, "week"))),
        ("3 maja", Rhythm(day=When("date", 5, 3))), ("w marcu", Rhythm(day=When("of_month", 3))),
        ("co tydzień od maja do września", Rhythm(1, "week", months=(5, 6, 7, 8, 9))),
        ("co tydzień latem", Rhythm(1, "week", season="summer")),
        ("co tydzień do października", Rhythm(1, "week", until=When("of_month", 10))),
        ("co tydzień przez 6 tygodni", Rhythm(1, "week", span=(6, "week"))),
        ("dziś wieczorem", Rhythm(day=When("day", 0), part="evening")),
        ("dwa razy w tygodniu", Rhythm(doubt="which_days")),
        ("od czasu do czasu", Rhythm(doubt="vague")), ("co 2-3 tygodnie", Rhythm(doubt="range")),
    ],
)  # fmt: skip
def test_how_often_and_when(said: str, wanted: Rhythm) -> None:
    assert rhythm(said) == wanted


@pytest.mark.parametrize(
    ("said", "clock", "guessed"),
    [
        ("o 9", (9, 0), False), ("o 9 rano", (9, 0), False), ("o 8 wieczorem", (20, 0), False),
        ("o 18", (18, 0), False), ("o 7:30", (7, 30), False), ("o 7.30", (7, 30), False),
        ("o ósmej rano", (8, 0), False), ("o wpół do dziewiątej", (8, 30), False),
        ("o dziewiątej trzydzieści", (9, 30), False), ("w południe", (12, 0), False),
        ("o godzinie 18", (18, 0), False), ("o osiemnastej", (18, 0), False),
    ],
)  # fmt: skip
def test_the_clock_time(said: str, clock: tuple[int, int], guessed: bool) -> None:
    found = rhythm(f"codziennie {said}")
    assert (found.clock, found.half_guessed, found.doubt) == (clock, guessed, "")


@pytest.mark.parametrize(
    ("text", "task", "words"),
    [
        ("przypomnij mi w niedzielę o przepłukaniu Ruby", "flush", ""),
        ("przypomnij mi jutro żeby nawieźć vandy", "feed", ""),
        ("przypominaj mi co tydzień o podlewaniu", "water", ""),
        ("przypomnij mi w sobotę kupić korę", "other", "kupić korę"),
    ],
)
def test_what_a_reminder_is_for(text: str, task: str, words: str) -> None:
    found = order(text)
    assert (found.verb, found.task, found.text) == ("remind", task, words)


@pytest.mark.parametrize(
    ("verb", "texts"),
    [
        ("reminders", ["moje przypomnienia", "jakie mam przypomnienia?"]),
        ("reminder_stop", ["nie przypominaj mi o Ruby", "usuń przypomnienie 2",
                           "wyłącz wszystkie przypomnienia"]),
        ("reminder_skip", ["nie w tym tygodniu", "pomiń tym razem"]),
        ("reminder_pause", ["wstrzymaj przypomnienia do stycznia", "nie ma mnie do czerwca"]),
        ("reminder_resume", ["wznów przypomnienia"]),
        ("reminder_move", ["przesuń na poniedziałek", "przełóż płukanie na piątek"]),
        ("reminder_quiet", ["cisza po 21", "cisza od 22 do 7", "nie pisz przed 8"]),
        ("calendar", ["kalendarz", "eksportuj do kalendarza"]),
        ("plan", ["jutro?"]),
    ],
)  # fmt: skip
def test_what_becomes_of_reminders(verb: str, texts: list[str]) -> None:
    assert {text: order(text).verb for text in texts} == dict.fromkeys(texts, verb)


def test_a_request_for_a_dose_stays_one() -> None:
    taken = {text: order(text).verb for text, _ in DOSES if told(text).order is not None}
    assert {text: verb for text, verb in taken.items() if verb != "dose"} == {}


# --- signs, reports ----------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("text", "signs"),
    [
        ("Ruby ma brązowe końcówki korzeni i biały nalot", ("brown_root_tips", "white_crust")),
        ("korzenie Ruby są miękkie", ("mushy_roots",)),
        ("końcówki liści są brązowe", ("leaf_tips_brown",)),
        ("liście Ruby są pomarszczone", ("pleated_leaves",)),
        ("najniższy liść żółknie", ("yellow_old_leaf",)),
        ("Róża nie ma już korzeni", ("roots_gone",)),
        ("Ruby zwiędła po mrozie", ("limp", "sudden_after_cold")),
        ("co jest nie tak z Ruby?", ()),
        ("czarna plama na liściu się powiększa", ("leaf_rot",)),
        ("podłoże śmierdzi, korzenie zgniłe", ("sour_smell", "mushy_roots")),
    ],
)  # fmt: skip
def test_what_ails_a_plant(text: str, signs: tuple[str, ...]) -> None:
    found = order(text)
    assert (found.verb, set(found.signs)) == ("rescue", set(signs))


def test_a_sign_that_is_denied_is_not_there() -> None:
    found = order("Ruby ma brązowe końcówki korzeni, ale bez nalotu")
    assert (found.signs, found.denied) == (("brown_root_tips",), ("white_crust",))


def test_a_water_report_is_read() -> None:
    found = order("wapń 80, magnez 12, wodorowęglany 240, sód 15 mg/l")
    assert found.verb == "water"
    assert found.ions == {"Ca": 80.0, "Mg": 12.0, "HCO3": 240.0, "Na": 15.0}


def test_what_a_meter_shows_is_read() -> None:
    found = order("miernik pokazuje 450 ppm, skala 500")
    assert found.meter is not None
    assert (found.meter.value, found.meter.unit, found.meter.scale) == (450.0, "ppm", 500)


@pytest.mark.parametrize(
    "word",
    ["zwiększyć", "podobnie", "imię", "kraj", "dworze", "plamy", "lisa", "kosz", "przygotowane"],
)
def test_an_everyday_word_is_no_slip_of_ours(word: str) -> None:
    reading = read(word + REST, "pl")
    assert not reading.read_as
    assert not _wrong(reading, USUAL | {"season": None, "strength": None, "water": None})


# --- cases: places, traits, names, towns ----------------------------------------------------------


@pytest.mark.parametrize(
    ("text", "place"),
    [
        ("przenieś Ruby na balkon", "balkon"),
        ("przestawiłam Ruby do łazienki", "łazienka"),
        ("Ruby stoi w kuchni", "kuchnia"),
        ("Ruby stoi na parapecie w kuchni", "parapet w kuchni"),
        ("przenieś Ruby na wschodni parapet", "wschodni parapet"),
        ("Ruby stoi na wschodnim parapecie", "wschodni parapet"),
        ("Ruby stoi na wschodnim oknie", "wschodnie okno"),
        ("Ruby stoi na górnej półce w salonie", "górna półka w salonie"),
        ("Ruby stoi w duzym pokoju", "duży pokój"),
    ],
)
def test_a_place_is_called_by_its_base_form(text: str, place: str) -> None:
    found = order(text)
    assert (found.verb, found.place) == ("move", place)


@pytest.mark.parametrize(
    ("text", "traits"),
    [
        ("dodaj małą białą katleję, kora", ("mała", "biała")),
        ("dodaj dużego żółtego falka, kora", ("duży", "żółty")),
        ("dodaj fioletowe cymbidium, kora", ("fioletowe",)),
        ("kupiłam 2 falki w korze, boję się je przenawozić", ()),
    ],
)
def test_a_trait_agrees_with_its_plant(text: str, traits: tuple[str, ...]) -> None:
    assert order(text).plants[0].traits == traits


@pytest.mark.parametrize(
    "said", ["białą katleję", "białej katlei", "białe katleje", "biala katleja"]
)
def test_a_plant_is_found_by_its_trait_in_any_case(said: str) -> None:
    assert order(f"nawiozłam {said}").target.traits == ("biała",)


def test_a_name_that_is_added_as_the_object_is_called_by_its_base_form() -> None:
    assert order("dodaj Kropeczkę, vandę na balkonie").plants[0].name == "Kropeczka"


@pytest.mark.parametrize(
    ("said", "towns"),
    [
        ("Krakowie", "Kraków"), ("Warszawie", "Warszawa"), ("Łodzi", "Łódź"), ("Gdyni", "Gdynia"),
        ("Poznaniu", "Poznań"), ("Katowicach", "Katowice"), ("Zielonej Górze", "Zielona Góra"),
        ("Białymstoku", "Białystok"), ("Bielsku-Białej", "Bielsko-Biała"),
    ],
)  # fmt: skip
def test_a_town_may_be_said_in_another_case(said: str, towns: str) -> None:
    assert plain(towns) in cases(plain(said), "pl")


# --- what is not done yet, and what is taken for itself ------------------------------------------


@pytest.mark.parametrize("text", ["przepłukać Ruby", "przesadzić Ruby", "przepłucz wszystko"])
def test_what_is_to_be_done_is_not_logged_as_done(text: str) -> None:
    assert order(text).verb == "dose"


def test_a_remedy_gets_no_dose_of_the_feed() -> None:
    assert order("kawa na 2 l").verb == "remedy"


def test_what_is_made_into_a_concentrate_is_no_liquid_for_that() -> None:
    reading = read("koncentrat 1:100 z 20-20-20", "pl", names=NAMES)
    assert reading.order is not None
    assert (reading.order.verb, reading.form) == ("stock", None)


@pytest.mark.parametrize(
    ("text", "verb", "steps"),
    [("wyłącz 1", "reminder_stop", (1,)), ("zatrzymaj 2", "reminder_stop", (2,))],
)
def test_a_reminder_is_ended_by_its_number(text: str, verb: str, steps: tuple[int, ...]) -> None:
    assert (order(text).verb, order(text).steps) == (verb, steps)


@pytest.mark.parametrize("text", ["nasz język to polski", "wyjaśnij dokładniej"])
def test_words_of_the_records_are_no_slips(text: str) -> None:
    reading = read(text, "pl", names=NAMES)
    assert not reading.read_as
    assert not reading.unknown


@pytest.mark.parametrize(
    "text",
    [
        "konewka 10 l, ale tylko do połowy, 20-20-20 proszek",
        "konewka 10 l do połowy, 20-20-20 proszek",
    ],
)
def test_a_can_that_is_half_full_is_asked_about(text: str) -> None:
    reading = read(text, "pl")
    assert reading.volume_l is None
    assert reading.unknown


# --- parts of cans, comparisons, corrections ------------------------------------------------

PARTS_OF_CANS: list[tuple[str, float, float | None]] = [
    ("pół konewki o pojemności 10 l", 5, None), ("pół dawki do konewki 5 l", 5, 0.5),
    ("pół dawki, konewka 5 l", 5, 0.5), ("konewka 5 l, ale nalewam tylko 2 l", 2, None),
    ("2 l, połowa z połowy dawki", 2, 0.25), ("2 l, 75 % mniej niż na etykiecie", 2, 0.25),
    ("2 l, zmniejsz o 75 %", 2, 0.25), ("2 l pół dawki, to znaczy 3 l", 3, 0.5),
    ("5 litrów, nie czekaj, 4 litry", 4, None), ("3 l, pół dawki, a właściwie ćwierć", 3, 0.25),
]  # fmt: skip


@pytest.mark.parametrize(("text", "volume_l", "strength"), PARTS_OF_CANS)
def test_parts_comparisons_and_corrections_are_reckoned(
    text: str, volume_l: float, strength: float | None
) -> None:
    reading = read(f"{text}, 20-20-20 proszek", "pl")
    assert reading.volume_l == volume_l
    assert reading.strength == strength
    assert not reading.conflicts


ASKED_OF_CANS = [
    "pół 10-litrowej konewki", "pół konewki 10 l", "połowa wiadra 10 l",
    "trzy czwarte butelki 2 l", "konewka 10 l napełniona do połowy",
    "konewka 10 l, napełniam w dwóch trzecich", "3 x butelka 2 l",
    "2 l, pół dawki to za dużo", "2 l, pół dawki spaliło falki", "2 l, słabiej niż pół dawki",
    "2 l, 1/2 dawki minus trochę", "2 l, nic mocniejszego niż ćwierć", "2 l, połowa połowy dawki",
]  # fmt: skip


@pytest.mark.parametrize("text", ASKED_OF_CANS)
def test_unclear_parts_and_comparisons_are_asked_about(text: str) -> None:
    reading = read(f"{text}, 20-20-20 proszek", "pl")
    assert reading.conflicts
    assert reading.strength is None
