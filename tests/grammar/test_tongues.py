"""In which language a message is, and words of another in it."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

import pytest

from grammar import Names, lexicon, read
from grammar.folding import plain
from grammar.lexicon import heard_by, languages, load
from tests.grammar.common_words import COMMON
from tests.grammar.told import messages, slots, value

LANGUAGES = ("en", "de", "es", "pl")


def test_every_language_is_there() -> None:
    assert set(languages()) >= set(LANGUAGES)


@pytest.mark.parametrize(
    ("text", "language"),
    [
        ("5 litres, 20-20-20 powder, sphagnum, winter, quarter strength", "en"),
        ("2 litry, proszek 20-20-20, kora, lato, połowa dawki", "pl"),
        ("2 litry, proszek 20-20-20, kora, lato, polowa dawki", "pl"),
        ("2 Liter, 20-20-20 Pulver, Rinde, Sommer, halbe Stärke", "de"),
        ("2 liter, 20-20-20 pulver, rinde, sommer, halbe staerke", "de"),
        ("2 litros, polvo 20-20-20, corteza, verano, mitad de dosis", "es"),
        ("¿cuánto abono para 3 litros?", "es"),
        ("ile nawozu na 3 litry?", "pl"),
        ("wie viel Dünger auf 3 Liter?", "de"),
        ("how much feed in 3 litres?", "en"),
        ("1 phal in leca 13 cm, 1 phal in bark 12 cm", "en"),
        ("a phal keiki in moss 5 cm", "en"),
        ("2 phals moss", "en"),
        ("la phal en bark, maceta de 12 cm", "es"),
        ("2 phal in rinde, 1 vanda in moos", "de"),
        ("phals rinde, miltoniopsis sphagnum", "de"),
    ],
)
def test_language_is_heard(text: str, language: str) -> None:
    assert read(text).language == language


@pytest.mark.parametrize("usual", LANGUAGES)
@pytest.mark.parametrize("text", ["5 l 20-20-20", "2 l 15-5-15 1/4 Phalaenopsis", "ok", "3", ""])
def test_a_message_of_no_language_is_in_the_usual_one(text: str, usual: str) -> None:
    assert read(text, usual=usual).language == usual


@pytest.mark.parametrize("usual", ["de", "es", "pl"])
def test_a_whole_sentence_in_another_language_than_the_usual_is_heard(usual: str) -> None:
    reading = read("how much powder for my orchids in bark, half strength?", usual=usual)
    assert reading.language == "en"


def test_only_the_languages_in_question_are_heard() -> None:
    assert read("2 litry, kora, lato", among=("en", "de")).language in ("en", "de")


@pytest.mark.parametrize(
    ("text", "want"),
    [
        ("daj mi 5 l, 20-20-20 powder, kora, half strength",
         {"volume_l": 5.0, "form": "powder", "medium": "bark", "strength": 0.5}),
        ("bitte 3 l für meine Vandas, 20-20-20 powder, quarter strength",
         {"volume_l": 3.0, "form": "powder", "genera": ["Vanda"], "strength": 0.25}),
        ("necesito 2 litros de 10-10-10 liquid para mis orquídeas en corteza, half strength",
         {"volume_l": 2.0, "form": "liquid", "medium": "bark", "strength": 0.5}),
        ("how much powder for 2 litres, my phals are in Blähton, 20-20-20",
         {"volume_l": 2.0, "form": "powder", "medium": "clay_pellets"}),
        ("how much 20-20-20 powder for 2 litres, my phals are in keramzyt",
         {"volume_l": 2.0, "form": "powder", "medium": "clay_pellets"}),
    ],
)  # fmt: skip
def test_words_of_another_language_are_understood(text: str, want: dict[str, Any]) -> None:
    reading = read(text)
    assert {slot: value(reading, slot) for slot in want} == want
    assert not reading.unknown


def test_a_stray_small_word_of_another_language_is_not_taken_for_it() -> None:
    """'brak' is 'none' in Polish, and a slip for bark in English."""
    reading = read("phals brak qarter 2 l 20-20-20 powder")
    assert (reading.language, reading.medium, reading.strength) == ("en", "bark", 0.25)
    assert not reading.conflicts


@pytest.mark.parametrize(
    "text", [m["text"] for name in ("en.jsonl", "en_blind.jsonl") for m in messages(name)]
)
def test_english_is_read_the_same_beside_the_other_languages(text: str) -> None:
    alone, beside = read(text, "en"), read(text)
    assert set(beside.read_as) == set(alone.read_as)
    assert replace(beside, read_as=()) == replace(alone, read_as=())


def test_an_order_is_heard_in_its_language() -> None:
    assert read("my plants", usual="pl", names=Names()).language == "en"


@pytest.mark.parametrize(
    ("text", "language", "asked"),
    [("przypomnij mi o płukaniu co niedzielę o 9", "pl", False),
     ("erinnere mich jeden Sonntag um 9 ans Durchspülen", "de", False),
     ("remind me to flush every sunday at 9", "en", True)],
)  # fmt: skip
def test_nine_is_in_the_morning_where_hours_are_counted_to_24(
    text: str, language: str, asked: bool
) -> None:
    order = read(text, language, names=Names()).order
    assert order is not None
    assert order.rhythm is not None
    assert (order.rhythm.clock, order.rhythm.half_guessed) == ((9, 0), asked)


def test_every_language_is_told_by_its_letters() -> None:
    for code in ("de", "es", "pl"):
        assert heard_by(code)[1]


def test_a_quoted_name_says_nothing_of_the_language() -> None:
    reading = read('add a catasetum called "Żółta Wróżka; przy oknie"', names=Names())
    assert reading.language == "en"
    assert reading.order is not None
    assert [p.name for p in reading.order.plants] == ["Żółta Wróżka; przy oknie"]


#: Clear messages with room for one more word.
_CLEAR = {
    "en": "my {} phal, 20-20-20 powder, 2 litres, half strength, november, how much for them",
    "de": "meine {} Phal, 20-20-20 Pulver, 2 Liter, halbe Dosis, November, wie viel für sie",
    "es": "mi {} falenopsis, polvo 20-20-20, 2 litros, media dosis, noviembre, cuánto para ella",
    "pl": "mój {} falenopsis, proszek 20-20-20, 2 litry, pół dawki, listopad, ile dla niego",
}


@pytest.mark.parametrize("language", LANGUAGES)
def test_everyday_words_are_nothing_of_another_language(language: str) -> None:
    """Neither the most frequent words nor those on the list mean anything elsewhere."""
    lexicon = load(language)
    own = slots(read(_CLEAR[language].format("")))
    words = dict.fromkeys((*map(plain, COMMON[language]), *sorted(lexicon.plain)))
    taken = {}
    for word in words:
        node = lexicon.trie.next.get(word)
        if node is not None and node.entry is not None:
            continue  # it has a meaning of its own
        reading = read(_CLEAR[language].format(word))
        shown = {r.meaning for r in reading.read_as} - {"pieces"}
        if slots(reading) != own or reading.language != language or shown:
            taken[word] = (reading.language, slots(reading), reading.read_as)
    assert not taken


@pytest.mark.parametrize(
    ("text", "want"),
    [
        ("late November, nobile dendrobium, 20-20-20 powder 1 l half", {"month": 11}),
        ("too late to feed now? nobile, 20-20-20 powder 1 l half november", {"month": 11}),
        ("its getting late, 20-20-20 powder 1 l half", {}),
        ("I'm late feeding, 20-20-20 powder 1 l half, winter", {"season": "winter"}),
        ("phal in permanent shade, 20-20-20 powder 1 l half", {"genera": ["Phalaenopsis"]}),
        ("phal on the wand, 20-20-20 powder 1 l half", {"genera": ["Phalaenopsis"]}),
        ("phal an der Wand, 20-20-20 Pulver 1 l halbe Dosis", {"genera": ["Phalaenopsis"]}),
        ("auf jeden Fall 20-20-20 Pulver 1 l halbe Dosis", {}),
        ("el bulbo late, polvo 20-20-20, 1 l media dosis, julio", {"month": 7}),
        ("w kilku słów, proszek 20-20-20 1 l pół dawki", {}),
    ],
)
def test_what_the_own_language_says_stands(text: str, want: dict[str, Any]) -> None:
    reading = read(text)
    dose = {"analysis": [20.0, 20.0, 20.0], "form": "powder", "volume_l": 1.0, "strength": 0.5}
    more = {} if "genera" in want or "nobile" not in text else {"genera": ["Dendrobium nobile"]}
    assert slots(reading) == {**dose, **want, **more}
    assert not reading.conflicts
    assert not reading.read_as


@pytest.mark.parametrize("stray", ["lato", "verano", "Sommer"])
def test_a_stray_season_does_not_override_a_month(stray: str) -> None:
    reading = read(f"how much powder for my phals this november, {stray}, 2 l 20-20-20 half")
    assert (reading.month, reading.season) == (11, None)
    assert [u.text for u in reading.unknown] == [stray]


@pytest.mark.parametrize(
    "text",
    [
        "i have hugo a phal in bark",
        "sorry, Mia not Ruby",
        "young talk soon list song leave family body music color",
        "für jede Phal 200 ml in Moos, wie family",
    ],
)
def test_no_file_is_read_again_with_a_message(text: str, monkeypatch: pytest.MonkeyPatch) -> None:
    """Words of another language once cost a reading of its file each: half a second a message."""
    for code in languages():
        load(code)
    first = read(text, names=Names())

    def opened(name: str) -> str:
        raise AssertionError(f"{name} was read again")

    monkeypatch.setattr(lexicon, "_text", opened)
    assert read(text, names=Names()) == first
