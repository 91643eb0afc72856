"""Laws of a conversation that remembers, for lines from the lexicons and from what people wrote."""

from __future__ import annotations

import json
import re
from collections.abc import Iterator
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.channels.telegram.showing import GROUP_CAUTIONS, short
from bot.conversation.answer import Answer
from bot.conversation.wording import wording
from bot.dosing.plants import of_name
from bot.dosing.strength import CEILINGS
from bot.records import Records
from bot.records.owners import Address
from tests.conversation.talking import Grower
from tests.fuzzing.answering import NOT_UNDONE, UNCHANGED
from tests.fuzzing.laws import of_answer
from tests.fuzzing.room import COLLECTION, Room, export, state
from tests.grammar.told import messages
from tests.messages_of import (
    LANGUAGES,
    LITRE,
    Request,
    everywhere,
    law,
    lines_of_records,
    phrases,
    requests,
    said_for,
)

GROUP = 7
OWN = "Mirasplant"


@pytest.fixture(scope="module")
def room() -> Iterator[Room]:
    """Somebody with plants, a shelf and a reminder, and a group that has nearly the same."""
    opened = Room("test", {1: COLLECTION}, GROUP)
    yield opened
    opened.close()


def orders(code: str) -> st.SearchStrategy[str]:
    """What people told the bot to remember, and the same from the lexicon."""
    written = [line["text"] for line in messages(f"{code}_records.jsonl")]
    return st.sampled_from(written) | st.sampled_from(sorted(lines_of_records(code)))


#: Some lines of one language, as one person says them.
TALKS = st.sampled_from(LANGUAGES).flatmap(lambda code: st.lists(orders(code), max_size=4))


#: The language that was written in last: of 'import x.json' it is English.
HEARD = re.compile(r'"heard": "[a-z]+"')


async def entries(records: Records, address: Address) -> int:
    """How long somebody's log is."""
    return len(json.loads(await export(records, address))["events"])


def told(room: Room, talk: Any) -> None:
    """Have a conversation that is forgotten in the end."""

    async def held() -> None:
        async with room.thrown_away() as records:
            await talk(records)

    room.run(held())


@law(30)
@given(TALKS)
def test_undo_takes_one_message_back_after_the_other(room: Room, lines: list[str]) -> None:
    async def talk(records: Records) -> None:
        mira = Grower(records, "1")
        before: list[tuple[Any, str]] = []
        for line in lines:
            was, logged = await state(records, mira.address), await entries(records, mira.address)
            answer = await mira.says(line)
            now = await state(records, mira.address)
            if answer.kind in UNCHANGED:
                assert now == was, (line, answer.reply)
            elif answer.kind in NOT_UNDONE:
                before.clear()
            elif await entries(records, mira.address) > logged:
                before.append((was, wording(answer.language).tap("undo")))
        while before:
            was, undo = before.pop()
            await mira.says(undo)
            assert await state(records, mira.address) == was

    told(room, talk)


@law(25)
@given(TALKS)
def test_whatever_was_told_comes_back_from_an_export(room: Room, lines: list[str]) -> None:
    async def talk(records: Records) -> None:
        mira = Grower(records, "1")
        for line in lines:
            await mira.says(line)
        text = await export(records, mira.address)
        tom = Grower(records, "2", files={"x.json": text})
        assert (await tom.says("import x.json", "yes")).kind == "import"
        again = await export(records, tom.address)
        assert HEARD.sub("", again) == HEARD.sub("", text)

    told(room, talk)


@law(40)
@given(TALKS)
def test_whatever_is_told_gets_an_answer_that_can_be_read(room: Room, lines: list[str]) -> None:
    async def talk(records: Records) -> None:
        mira = Grower(records, "1")
        for line in lines:
            of_answer(await mira.says(line))

    told(room, talk)


@law(40)
@given(everywhere() | TALKS)
def test_a_group_never_hears_what_a_person_has_on_record(
    room: Room, said: Request | list[str]
) -> None:
    async def talk(records: Records) -> None:
        mira = Grower(records, "1", group=f"{GROUP}")
        for line in [said.text()] if isinstance(said, Request) else said:
            answer = await mira.says(line)
            assert OWN not in answer.reply
            if answer.kind == "dose":
                _is_short(answer)

    told(room, talk)


def _is_short(answer: Answer) -> None:
    """As a group sees it: the amount, how to measure it, two cautions, and what was assumed."""
    lines = short(answer).splitlines()
    assert lines[0] == answer.reply.splitlines()[0]
    cautions = [line for line in lines if line.startswith("- ")]
    assert len(cautions) <= GROUP_CAUTIONS
    assert len(lines) <= 9
    assert len("\n".join(lines)) < len(answer.reply)


@law(80)
@given(st.sampled_from(LANGUAGES), st.data())
def test_all_plants_that_are_named_count_on_record_or_not(
    room: Room, code: str, data: st.DataObject
) -> None:
    """The most sensitive of them holds the dose down, whoever has it."""
    known = phrases(code, "genus")["Phalaenopsis"][0]  # on record
    name, phrase = data.draw(said_for(code, "genus"))
    half = phrases(code, "fraction")["1/2"][0]
    line = f"3 {LITRE[code]}, {known}, {phrase}, {half}"

    async def talk(records: Records) -> None:
        answer = await Grower(records, "1").says(line)
        plant = of_name(name)
        if answer.dose is None or plant is None or name not in answer.understood.genera:
            return
        most = CEILINGS[plant.feeding_class].n_mg_l
        assert answer.dose.elements_mg_l["N"] <= most * (1 + 1e-9), answer.reply

    told(room, talk)


@law(40)
@given(st.sampled_from(LANGUAGES), st.data())
def test_what_rests_on_record_gets_no_feed(room: Room, code: str, data: st.DataObject) -> None:
    resting = data.draw(st.sampled_from(phrases(code, "growth")["resting"]))
    request = data.draw(requests(code, most_words=1)).without("growth").without("genus")

    async def talk(records: Records) -> None:
        mira = Grower(records, "1")
        answer = await mira.says(f"Ruby {resting}")
        plants = (await state(records, mira.address) or {})["plants"]
        if not any(p.get("name") == "Ruby" and p.get("growth") == "resting" for p in plants):
            assert answer.kind in ("ask", "help", "refused", "no_feed", "plants", "log")
            return
        dose = await mira.says(f"Ruby, {request.text()}")
        assert dose.dose is None, dose.reply

    told(room, talk)


#: What shows figures of the records, in the language of who asks.
ASKED = {
    "de": ["was ist heute dran", "mein Regal", "meine Pflanzen", "passt mein Wasser", "2,5 Liter"],
    "es": ["qué toca hoy", "mi estante", "mis plantas", "sirve mi agua", "2,5 litros"],
    "pl": ["co dziś", "moja półka", "moje rośliny", "czy moja woda się nadaje", "2,5 litra"],
}


@pytest.mark.parametrize("code", sorted(ASKED))
def test_figures_of_the_records_are_written_with_a_comma(room: Room, code: str) -> None:
    @law(8)
    @given(st.lists(orders(code), max_size=2))
    def holds(lines: list[str]) -> None:
        async def talk(records: Records) -> None:
            mira = Grower(records, "1")
            for line in [*lines, *ASKED[code]]:
                reply = (await mira.says(line)).reply
                shown = re.sub(r"„[^”“]*[”“]|«[^»]*»|\"[^\"]*\"", "", reply)  # somebody's own words
                assert not re.findall(r"(?<![\d.,-])\d+\.\d{1,2}(?![\d.-])", shown), reply

        told(room, talk)

    holds()
