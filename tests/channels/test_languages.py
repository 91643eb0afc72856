"""People whose phones speak Polish, German or Spanish, through the loopback server."""

from __future__ import annotations

import pytest

from bot.conversation.wording import wording
from tests.channels.chatting import IDA, Chat, Who, buttons, replying, text

OLA, UTE, LUZ = Who(21, "Ola", "pl"), Who(22, "Ute", "de"), Who(23, "Luz", "es-MX")
#: What each types: a town, a feed, a plant, a dose, and what they did.
SAID = {
    "pl": ("Gdynia", "proszek 20-20-20, 1 g na litr", "3 falenopsisy w korze, doniczki 12 cm",
           "2 litry dla falenopsisów", "wczoraj nawiozłam wszystko"),
    "de": ("Bremen", "Pulver 20-20-20, 1 g pro Liter", "3 Phalaenopsis in Rinde, 12-cm-Töpfe",
           "2 Liter für die Phalaenopsis", "gestern alles gedüngt"),
    "es": ("Sevilla", "polvo 20-20-20, 1 g por litro", "3 phalaenopsis en corteza, maceta de 12 cm",
           "2 litros para las phalaenopsis", "ayer aboné todo"),
}  # fmt: skip
PEOPLE = [(OLA, "pl"), (UTE, "de"), (LUZ, "es")]


@pytest.mark.parametrize(("who", "code"), PEOPLE)
async def test_a_newcomer_is_met_in_the_language_of_the_phone(
    chat: Chat, who: Who, code: str
) -> None:
    words = wording(code)
    town, feed, plants, dose, done = SAID[code]
    first = await chat.says(who, "/start")
    assert words.say("meet-home") in text(first)
    assert buttons(first[0]) == [words.say("meet-skip")]
    assert words.say("meet-product") in text(await chat.says(who, town))
    assert words.say("meet-add") in text(await chat.says(who, feed))
    last = text(await chat.says(who, plants))
    assert words.say("meet-done") in last
    shown = await chat.says(who, dose)
    # a quarter of 200 mg/l N from 20 % powder in 2 l, as the label's gram a litre has it too
    assert text(shown).startswith(words.number(0.5))
    assert buttons(shown[0])[0] == words.say("tap-why")
    reasons = text(await chat.taps(who, shown[-1], words.say("tap-why")))
    assert words.say("source-practice") in reasons
    logged = await chat.says(who, done)
    assert words.say("tap-undo") in buttons(logged[-1])
    undone = text(await chat.taps(who, logged[-1], words.say("tap-undo")))
    assert words.say("undo-nothing") not in undone


@pytest.mark.parametrize(("who", "code"), PEOPLE)
async def test_the_first_meeting_is_skipped_in_every_language(
    chat: Chat, who: Who, code: str
) -> None:
    shown = await chat.says(who, "/start")
    for _ in range(3):
        shown = await chat.taps(who, shown[-1], wording(code).say("meet-skip"))
    assert wording(code).say("meet-done") in text(shown)


@pytest.mark.parametrize(("who", "code"), PEOPLE)
@pytest.mark.parametrize("command", ["/plan", "/plants", "/shelf", "/diary", "/undo", "/help"])
async def test_commands_answer_in_the_language_of_the_phone(
    chat: Chat, who: Who, code: str, command: str
) -> None:
    english = text(await chat.says(Who(31, "Tom"), command))
    answer = text(await chat.says(who, command))
    assert answer != english
    assert wording(code).say("not-used", texts="").strip(" .") not in answer


async def test_a_group_speaks_its_language_whoever_asks(club: Chat) -> None:
    told = await club.says(IDA, "/dose unsere Sprache ist Deutsch")
    assert wording("de").say("language-set", language="Deutsch") in text(told)
    asked = await club.says(Who(31, "Tom"), "/dose 2 l 20-20-20 powder, phals, quarter")
    assert "20-20-20 Pulver" in text(asked)
    follow = await club.says(OLA, "a w sfagnum?", **replying(asked[0], club.loopback))
    assert "20-20-20 Pulver" in text(follow)


async def test_a_group_without_a_language_answers_each_in_their_own(club: Chat) -> None:
    polish = text(await club.says(OLA, "/dose 2 litry, proszek 20-20-20, kora, ćwierć dawki"))
    german = text(await club.says(UTE, "/dose 2 Liter, Pulver 20-20-20, Rinde, Viertel"))
    assert polish.startswith("0,5 g na 2 l")
    assert german.startswith("0,5 g 20-20-20 Pulver auf 2 l")


@pytest.mark.parametrize(("who", "code"), PEOPLE)
async def test_a_card_is_written_in_the_language_it_was_asked_in(
    chat: Chat, who: Who, code: str
) -> None:
    line = SAID[code][3] + " 20-20-20"
    query = {"id": "1", "from": who.user, "query": line, "offset": ""}
    (answer,) = await chat.pushes("inline_query", query)
    card = answer.values["results"][0]["input_message_content"]["message_text"]
    assert wording(code).say("caution-wet-roots-first") in card
