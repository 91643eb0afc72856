"""What is wanted of the records, in many wordings."""

from __future__ import annotations

from typing import Any

import pytest

from grammar import Names, Order, PlantSaid, Reading, When, read
from tests.grammar.told import SLOTS, messages

NAMES = Names(
    plants=("Ruby", "Snow White"),
    products=("blue tub", "green bottle"),
    places=("kitchen sill", "balcony"),
)


def told(text: str) -> Reading:
    return read(text, "en", names=NAMES)


def order(text: str) -> Order:
    found = told(text).order
    assert found is not None
    return found


VERBS = {
    "add": [
        "add 3 phals in bark, 12 cm pots, kitchen",
        "I have a masdevallia in sphagnum called Rose",
        "please add a vanda, bare root, on the balcony",
        "bought two catts today, bark, 10 cm pot",
        "new plant: dendrobium nobile called Nobby, bark, east window",
        "Add 5 masdevallias in moss 8cm pots",
        'add paph "Lady" in mix, 9 cm pot, bedroom windowsill',
        "can you add three oncidiums in 11cm pots in bark to the living room",
        "got 2 masdevallias in moss, 7 cm pots, balcony",
        "I've got a small white cattleya in a 10cm pot in bark on the east window",
    ],
    "rename": [
        "rename Ruby to Rubin", "call the vanda Blue", "Ruby is now called Rubin",
        "rename Snow White as Snowy", "change the name of Ruby to Red Ruby",
    ],
    "move": [
        "move Ruby to the balcony", "put Ruby on the balcony", "take Snow White to the kitchen",
        "moved all the vandas to the greenhouse", "Ruby lives in the bathroom now",
        "Ruby is on the balcony",
    ],
    "repot": [
        "repotted the vanda today", "I repotted Ruby into bark yesterday, 10 cm pot",
        "Ruby got a new pot today", "repot done for the phals on sunday",
    ],
    "growth": [
        "new spike on Ruby", "Ruby is resting", "Ruby has a new leaf",
        "the catasetum has gone dormant", "vandas are in active growth", "Snow White is in bloom",
    ],
    "lose": [
        "lost the small cattleya", "Ruby died", "sold Snow White", "remove Ruby",
        "one of my phals died", "lost 1 of the phals on the balcony",
    ],
    "correct": ["Ruby is in bark, 9 cm pot", "the phals are in 12 cm pots", "Ruby takes 200 ml"],
    "plants": [
        "my plants", "list my plants", "show me my plants", "which plants do I have",
        "what do I have on the balcony?",
    ],
    "product": [
        "my powder is 20-20-20, label 1 g per litre, call it red tub",
        "my fertiliser is 13-3-15 +8Ca +2Mg, 0.8 g per litre, name it calcium feed",
        "got a bottle of liquid feed 7-7-7, 5 ml per litre, called yellow bottle",
        "add product: grow powder 30-10-10, label half teaspoon per gallon",
    ],
    "product_change": [
        "blue tub costs 12 € for 500 g", "blue tub also has 2% Mg and trace elements",
        "the density of the green bottle is 1.15 kg/l",
    ],
    "product_remove": ["blue tub is empty", "remove blue tub from the shelf"],
    "product_default": ["use the green bottle from now on"],
    "shelf": ["what's on my shelf", "what feeds do I have?", "my shelf"],
    "lacking": [
        "what does the blue tub lack?", "is the blue tub complete?",
        "what is missing in green bottle",
    ],
    "choose": [
        "which feed for the vandas?", "which of my feeds is best for Ruby in bloom?",
        "which feed should I use for the cattleyas in bloom",
    ],
    "water": [
        "my tap is 14 dH", "my water is 300 uS and 8 dH",
        "our tap water: hardness 250 mg/l CaCO3, EC 0.6",
    ],
    "water_for": [
        "rain for the masdevallias", "I use rainwater for Ruby", "the masdevallias get RO",
        "phals get tap water",
    ],
    "kit": [
        "my scale shows 0.1 g", "my scale is accurate to 0.01 g", "scale: 1 g",
        "my can holds 5 l", "I have a 10 litre watering can", "my watering can is 2 gallons",
        "my syringe has 0.2 ml steps",
    ],
    "home": [
        "I live in Porto", "I'm in Sydney", "we live in Sao Paulo, Brazil",
        "my timezone is Europe/Lisbon", "southern hemisphere",
    ],
    "fed": [
        "fed everything on the kitchen sill, quarter", "fed Ruby", "gave Ruby feed",
        "I fed the phals half strength with blue tub this morning",
        "fertilised all on the balcony 2 days ago with 20-20-20 at a quarter",
    ],
    "clear": [
        "clear water for Ruby", "gave Snow White clear water",
        "watered everything with plain water yesterday",
    ],
    "flush": [
        "flushed all phals yesterday", "flushed Ruby and Snow White on 3 november",
        "rinsed the kitchen sill plants last sunday",
    ],
    "reading": ["runoff of Ruby 1.6", "the runoff from Snow White is 1.2 mS"],
    "undo": ["undo", "undo that", "take that back", "Undo!"],
    "rescue": ["brown aerial roots and white crust on the bark, what now?",
               "brown root tips and white crust on Ruby", "what's wrong with Snow White?"],
    "compare": ["compare blue tub and green bottle", "which is cheaper?", "what costs 100 litres"],
    "history": [
        "what did Ruby get since October", "when was Ruby last flushed?",
        "when did I last feed the phals?", "history of Snow White", "show the log",
        "what happened to Ruby this month",
    ],
    "picture_year": [
        "show my year", "show me my year", "picture of the year", "the year as a picture",
        "my year", "the year of the vandas as a picture", "draw the year", "Show our year!",
        "my year at a glance", "chart of the year",
    ],
    "picture_salts": [
        "salts of Ruby as a picture", "chart of the salts in Ruby", "show the salts of Ruby",
        "show me the salts in Ruby", "picture of the salts of the phals", "salt chart of Ruby",
        "how salty is Ruby as a picture", "graph of Ruby's salts",
    ],
    "picture_card": [
        "card", "Card please", "dose card", "card to share", "make a card", "a card for 3 litres",
        "show me a card", "card: 5 l 20-20-20 powder, quarter", "make a card of that",
        "2 l 20-20-20 powder for the phals as a card",
    ],
    "plan": [
        "what's on today", "plan for sunday", "what should I water today?",
        "what's due tomorrow", "watering plan please", "I'm about to water, what's the plan?",
    ],
    "done": ["done", "all done", "done with 1 and 3", "did step 2", "done step 2"],
    "export": ["export", "export as csv"],
    "import": ["import plants.json"],
    "forget": ["forget me", "delete all my data"],
    "follow_up": [
        "make it 3 litres", "half that", "and for the masdevallias?", "with the green bottle",
        "5 l instead", "make that 2 gallons", "double it", "same for the vandas",
        "what about Ruby?",
    ],
    "why": ["why?", "Why so?"],
    "more": ["more", "all cautions"],
    "help": ["help", "what can you do?"],
    "yes": ["yes", "Yes please"],
    "no": ["no", "never mind"],
    "dose": [
        "5 l", "dose for the phals", "exactly", "how much for Ruby?",
        "3 litres for the masdevallias with the green bottle", "feed for the phals, half strength",
        "how much for the kitchen sill?", "I have 3 phals and 20-20-20 powder, how much for 2 l?",
        "never fed them before, now I have 20-20-20 powder and a 5 l watering can, once a month",
    ],
}  # fmt: skip


@pytest.mark.parametrize(
    ("text", "verb"), [(text, verb) for verb, texts in VERBS.items() for text in texts]
)
def test_the_verb(text: str, verb: str) -> None:
    assert order(text).verb == verb


@pytest.mark.parametrize(
    ("text", "verb"),
    [
        ("calendar of the year", "calendar"), ("what did Ruby get this year", "history"),
        ("how salty is Ruby", "salts"), ("show my plants", "plants"),
        ("show me what Ruby got this year", "history"), ("fed Ruby, see the chart", "fed"),
        ("2 l 20-20-20 powder, once a year", "dose"), ("rename Ruby to Card", "rename"),
        ("epsom salts, 1 g in 2 l", "unshelved"), ("is there too much salt in Ruby", "salts"),
    ],
)  # fmt: skip
def test_what_only_sounds_like_a_picture_is_none(text: str, verb: str) -> None:
    assert order(text).verb == verb


@pytest.mark.parametrize("name", ["en.jsonl", "en_people.jsonl", "en_traps.jsonl"])
def test_a_request_for_a_dose_stays_one_and_reads_the_same(name: str) -> None:
    for message in messages(name):
        if message.get("lang", "en") != "en":
            continue
        plain, kept = read(message["text"], "en"), told(message["text"])
        verbs = ("dose", "greeting", "thanks")
        assert kept.order is None or kept.order.verb in verbs, message["text"]
        for slot in SLOTS:
            assert getattr(kept, slot) == getattr(plain, slot), message["text"]


@pytest.mark.parametrize(
    ("text", "plants"),
    [
        ("add 3 phals in bark, 12 cm pots, kitchen",
         [PlantSaid("Phalaenopsis", 3, medium="bark", pot_cm=12.0, place="kitchen")]),
        ("I have a masdevallia in sphagnum called Rose",
         [PlantSaid("Masdevallia", name="Rose", medium="sphagnum")]),
        ("kitchen, 12 cm pots, bark: add 3 phals",
         [PlantSaid("Phalaenopsis", 3, medium="bark", pot_cm=12.0, place="kitchen")]),
        ("add 2 phals in bark and a vanda mounted, balcony",
         [PlantSaid("Phalaenopsis", 2, medium="bark", place="balcony"),
          PlantSaid("Vanda", medium="mounted", place="balcony")]),
        ("add a small white cattleya and a big cattleya, both in bark, 14 cm pots",
         [PlantSaid("Cattleya", traits=("small", "white"), medium="bark", pot_cm=14.0),
          PlantSaid("Cattleya", traits=("big",), medium="bark", pot_cm=14.0)]),
        ("add cymbidium goeringii, 4 inch pot",
         [PlantSaid("Cymbidium", traits=("goeringii",), pot_cm=pytest.approx(10.16))]),
        ("add Rose, a masdevallia in moss",
         [PlantSaid("Masdevallia", name="Rose", medium="sphagnum")]),
    ],
)  # fmt: skip
def test_plants_to_add(text: str, plants: list[PlantSaid]) -> None:
    assert list(order(text).plants) == plants


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("fed all phals except Snow White with the blue tub at 1/4 3 days ago",
         {"genera": ("Phalaenopsis",), "everything": True, "not_names": ("Snow White",)}),
        ("lost the small cattleya", {"genera": ("Cattleya",), "traits": ("small",)}),
        ("flushed everything on the kitchen sill", {"everything": True, "place": "kitchen sill"}),
        ("flushed Ruby and Snow White", {"names": ("Ruby", "Snow White")}),
        ("clear water for Ruby's pot", {"names": ("Ruby",)}),
        ("fed the phals in bark", {"genera": ("Phalaenopsis",), "medium": "bark"}),
    ],
)  # fmt: skip
def test_which_plants_are_meant(text: str, expected: dict[str, Any]) -> None:
    target = order(text).target
    assert {name: getattr(target, name) for name in expected} == expected


@pytest.mark.parametrize(
    ("said", "when"),
    [
        ("today", When("day", 0)), ("yesterday", When("day", 1)),
        ("3 days ago", When("day", 3)), ("two weeks ago", When("day", 14)),
        ("last sunday", When("weekday", 7)), ("on 3 november", When("date", 11, 3)),
        ("november 3rd", When("date", 11, 3)), ("on 2026-03-14", When("date", 3, 14, 2026)),
        ("14 march 2025", When("date", 3, 14, 2025)), ("tomorrow", When("day", -1)),
    ],
)  # fmt: skip
def test_the_day(said: str, when: When) -> None:
    assert order(f"flushed Ruby {said}").when == when


def test_a_month_alone_is_a_stretch() -> None:
    assert order("what did Ruby get since october").when == When("of_month", 10)


@pytest.mark.parametrize(
    ("text", "name"),
    [
        ("rename Ruby to Rubin", "Rubin"), ("call the vanda Blue", "Blue"),
        ("my powder is 20-20-20, call it the red tub", "the red tub"),
        ('add a phal called "Snow Flake" in bark', "Snow Flake"),
        ("add a phal named Dot in the kitchen", "Dot"),
    ],
)  # fmt: skip
def test_a_new_name(text: str, name: str) -> None:
    found = order(text)
    assert (found.name or found.plants[0].name) == name


def test_what_a_label_says_beyond_its_numbers() -> None:
    text = (
        "new liquid 3-1-5 + 2 Ca 0.5 Mg, density 1.2, nitrate 2.5 % ammonium 0.5 %, 4 ml/l, "
        "1 l bottle 15 euros, call it green juice"
    )
    reading, label = told(text), order(text).label
    assert reading.analysis == (3.0, 1.0, 5.0)
    assert reading.extras == {"Ca": 2.0, "Mg": 0.5}
    assert label.nitrogen == {"n_nitrate": 2.5, "n_ammonium": 0.5}
    assert label.density_kg_l == 1.2
    assert (label.price, label.currency) == (15.0, "EUR")
    assert (label.pack_size, label.pack_unit) == (1000.0, "ml")


@pytest.mark.parametrize(
    ("text", "factor"), [("half that", 0.5), ("double it", 2.0), ("a quarter of that", 0.25)]
)
def test_a_factor_of_the_last_answer(text: str, factor: float) -> None:
    assert order(text).factor == factor


def test_a_name_on_record_wins_over_words_of_a_dose() -> None:
    names = Names(plants=("Half Moon",), products=("bark king",))
    reading = read("2 l for Half Moon with bark king", "en", names=names)
    assert reading.strength is None
    assert reading.medium is None
    assert reading.order is not None
    assert reading.order.target.names == ("Half Moon",)
    assert reading.order.products == ("bark king",)


@pytest.mark.parametrize(
    ("text", "verb", "read_as"),
    [
        ("flushd all phals yesteday", "flush", {"flushd": "flushed", "yesteday": "yesterday"}),
        ("my plnats", "plants", {"plnats": "plants"}),
        ("moved Ruby to the kichen", "move", {"kichen": "kitchen"}),
        ("add 2 phals in bark, balcny", "add", {"balcny": "balcony"}),
    ],
)
def test_a_slip_is_read_and_shown(text: str, verb: str, read_as: dict[str, str]) -> None:
    reading = told(text)
    assert order(text).verb == verb
    assert {r.text: r.meaning for r in reading.read_as} == read_as


def test_a_plants_own_word_is_no_slip() -> None:
    (plant,) = order("add a cattleya schilleriana called Tabel in bark").plants
    assert (plant.name, plant.traits) == ("Tabel", ("schilleriana",))


#: Lines of fixtures/messages/en_records.jsonl, written by somebody who saw neither lexicon nor
#: forms, whose verb is not found yet; whoever mends one takes it off.
MISSED = {
    "bought calcium nitrate 15.5-0-0, 14.4% of it nitrate N, 1.1% ammonium, 19% Ca. "
    "call it snow salt",
    "I weighed it: density of the green bottle is 1.21",
    "Ruby gets RO mixed half and half with tap",
    "i'd rather have gallons and teaspoons please",
}


def test_what_people_say_to_the_records() -> None:
    lines = messages("en_records.jsonl")
    wrong = {m["text"] for m in lines if order(m["text"]).verb != m["verb"]}
    assert wrong == MISSED
    assert len(lines) == 150


@pytest.mark.parametrize("text", ["what's on tomorow", "plan tmrw", "whats on tomorrow"])
def test_a_day_is_no_less_a_day_for_a_slip(text: str) -> None:
    found = read(text, "en", names=Names()).order
    assert found is not None
    assert (found.verb, found.when and found.when.value) == ("plan", -1)


def test_days_of_a_plan_are_not_those_of_a_rhythm() -> None:
    plan = read("what's on sundays", "en", names=Names()).order
    assert plan is not None
    assert (plan.verb, plan.when and plan.when.kind) == ("plan", "weekday")
    water = read("water the phals on sundays", "en", names=Names()).order
    assert water is not None
    assert water.verb == "remind"


@pytest.mark.parametrize(
    ("language", "text"),
    [("en", "I no longer use {}"), ("en", "I stopped using {}"), ("de", "{} nehm ich nicht mehr"),
     ("de", "mit {} hab ich aufgehört"), ("es", "dejé de usar {}")],
)  # fmt: skip
def test_a_feed_that_is_no_longer_used_is_not_taken_from_now_on(language: str, text: str) -> None:
    found = read(text.format("Luna"), language, names=Names(products=("Luna",))).order
    assert found is not None
    assert (found.verb, found.products) == ("not_changed", ())
