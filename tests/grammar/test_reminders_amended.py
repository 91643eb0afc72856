"""What is excepted of a rhythm, another time than was just said, and what beginners ask."""

from __future__ import annotations

import pytest

from grammar import Names, Order, Rhythm, read, read_instead


def order(text: str, language: str) -> Order:
    found = read(text, language, names=Names()).order
    assert found is not None
    return found


def rhythm(text: str, language: str) -> Rhythm:
    found = order(text, language).rhythm
    assert found is not None, text
    return found


@pytest.mark.parametrize(
    ("text", "language", "left_out"),
    [
        ("remind me to feed every 2 weeks except in december", "en", {12}),
        ("remind me to feed every 2 weeks but not in december and january", "en", {12, 1}),
        ("erinnere mich alle 2 wochen ans düngen außer im dezember", "de", {12}),
        ("erinner mich alle 2 wochen ans düngen, nicht von november bis februar", "de",
         {11, 12, 1, 2}),
        ("recuerdame abonar cada dos semanas menos en agosto", "es", {8}),
        ("przypomnij mi co 2 tygodnie o nawożeniu oprócz grudnia", "pl", {12}),
    ],
)  # fmt: skip
def test_an_excepted_month_is_left_out(text: str, language: str, left_out: set[int]) -> None:
    assert set(rhythm(text, language).months) == set(range(1, 13)) - left_out


@pytest.mark.parametrize(
    ("text", "language"),
    [
        ("remind me to water every 3 days except sundays", "en"),
        ("erinner mich alle 3 tage ans gießen außer sonntags", "de"),
        ("recuerdame regar cada 3 dias menos los domingos", "es"),
        ("przypomnij mi co 3 dni podlać z wyjątkiem niedziel", "pl"),
    ],
)
def test_an_excepted_day_of_the_week_is_left_out(text: str, language: str) -> None:
    assert rhythm(text, language).not_weekdays == (7,)


def test_what_cannot_be_excepted_is_a_doubt_and_what_is_none_stays() -> None:
    assert rhythm("remind me to feed every 2 weeks except on the 24th", "en").doubt == "exception"
    assert rhythm("remind me to feed every 2 weeks except in winter", "en").not_season == "winter"
    assert rhythm("remind me to feed every two weeks in may", "en").months == (5,)
    assert rhythm("recuerdame regar el lunes a las 9 menos cuarto", "es").clock == (8, 45)


@pytest.mark.parametrize(
    ("text", "language"),
    [
        ("nvm make it sunday", "en"), ("no, sunday", "en"), ("no make it 9", "en"),
        ("ne lieber sonntags", "de"), ("doch lieber um 18 uhr", "de"),
        ("no el 1 mejor el 15", "es"), ("mejor a las 9", "es"),
        ("nie, lepiej w niedziele", "pl"), ("zrobię jutro", "pl"),
    ],
)  # fmt: skip
def test_another_time_is_heard(text: str, language: str) -> None:
    assert read_instead(text, language) is not None


@pytest.mark.parametrize(
    ("text", "language"),
    [("make it 3 l", "en"), ("better", "en"), ("not on mondays", "en"), ("lieber nicht", "de"),
     ("mejor no", "es"), ("lepiej nie", "pl"), ("no thanks", "en")],
)  # fmt: skip
def test_no_other_time_is_heard_in_anything_else(text: str, language: str) -> None:
    assert read_instead(text, language) is None


@pytest.mark.parametrize(
    ("text", "language"),
    [("don't remind me now", "en"), ("erinnere mich jetzt nicht", "de"),
     ("ahora no me recuerdes", "es"), ("nie przypominaj mi teraz", "pl")],
)  # fmt: skip
def test_not_now_ends_nothing(text: str, language: str) -> None:
    assert (order(text, language).verb, order(text, language).text) == ("skip", "now")


def test_never_ends_them() -> None:
    assert order("don't remind me", "en").verb == "reminder_stop"
    assert order("erinner mich doch nicht", "de").verb == "reminder_stop"


@pytest.mark.parametrize(
    ("text", "language", "fact"),
    [
        ("my phal doesnt bloom", "en", "no_bloom"), ("meine phal blüht nicht", "de", "no_bloom"),
        ("mi phal no florece", "es", "no_bloom"), ("mój falek nie kwitnie", "pl", "no_bloom"),
        ("can i feed in flower", "en", "in_flower"),
        ("kann ich düngen wenn sie blüht", "de", "in_flower"),
        ("darf ich sie umtopfen wenn sie blüht", "de", "repot_flower"),
        ("soll ich umtopfen", "de", "repot_when"),
        ("bevor ich umtopfe nochmal düngen?", "de", "before_repot"),
        ("czy latem dawac wiecej nawozu", "pl", "summer"),
        ("czy nawozic catasetum w spoczynku", "pl", "rest_feed"),
        ("when does the nobile rest", "en", "rest_months"),
        ("wie viel wasser braucht eine phal", "de", "water_amount"),
        ("can i use ice cubes", "en", "ice"), ("puedo usar agua hervida", "es", "boiled"),
        ("mam wodę z kamieniem co robić", "pl", "lime"),
    ],
)  # fmt: skip
def test_what_beginners_ask(text: str, language: str, fact: str) -> None:
    assert (order(text, language).verb, order(text, language).text) == ("tell", fact)


@pytest.mark.parametrize(
    ("text", "language", "verb"),
    [("repotted all phals", "en", "repot"), ("hab die phals umgetopft", "de", "repot"),
     ("my phal is flowering", "en", "growth"), ("can i feed 5 l in flower 20-20-20", "en", "dose"),
     ("what does 20-20-20 mean", "en", "explain"), ("co znaczy 20-20-20", "pl", "explain")],
)  # fmt: skip
def test_what_looks_alike_is_what_it_was(text: str, language: str, verb: str) -> None:
    assert order(text, language).verb == verb


def test_tomorrow_in_the_phrase_for_a_plan_is_tomorrow() -> None:
    when = order("co jutro do zrobienia", "pl").when
    assert when is not None
    assert (when.kind, when.value) == ("day", -1)
