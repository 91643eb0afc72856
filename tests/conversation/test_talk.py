"""A conversation that remembers, on both databases."""

from __future__ import annotations

import asyncio
from datetime import UTC, datetime, timedelta
from typing import Any

import pytest

from bot.conversation.answer import Answer
from bot.conversation.replies import hint
from bot.conversation.talk import Conversation
from bot.conversation.turn import Incoming
from bot.conversation.wording import wording
from bot.records import Records
from tests.conversation.talking import START, Grower

TUB = "my powder is 20-20-20, label 1 g per litre, call it blue tub"
PHALS = "add 3 phals in bark, 12 cm pots, kitchen sill"
RUBY = "I have a masdevallia in sphagnum called Ruby, 8 cm pot"


@pytest.fixture
def mira(records: Records) -> Grower:
    return Grower(records)


async def plants(grower: Grower) -> list[dict[str, Any]]:
    return ((await grower.says("my plants")).details or {}).get("plants", [])


# --- a dose from what is on record ------------------------------------------------------


async def test_a_bare_volume_uses_what_is_on_record_and_says_so(mira: Grower) -> None:
    answer = await mira.says(PHALS, TUB, "my tap is 14 dH", "5 l")
    assert answer.dose is not None
    assert answer.dose.full_strength_source == "product"
    assert answer.dose.amount == pytest.approx(1.25)  # 1 g/l x 1/4 x 5 l
    assert "From your records: blue tub" in answer.reply
    assert answer.understood.analysis is None  # nothing in it is a default


async def test_the_most_sensitive_plant_on_record_decides(mira: Grower) -> None:
    answer = await mira.says(PHALS, RUBY, TUB, "5 l full strength")
    assert answer.dose is not None
    assert answer.dose.elements_mg_l["N"] == pytest.approx(50.0)
    assert "Ruby bears the least" in answer.reply


async def test_a_volume_not_said_is_that_of_the_pots(mira: Grower) -> None:
    answer = await mira.says(PHALS, TUB, "dose for the phals")
    assert answer.dose is not None
    litres = answer.dose.amount / answer.dose.per_litre
    assert 0.3 <= litres <= 1.2
    assert "what these pots take" in answer.reply


async def test_a_resting_plant_is_left_out_and_named(mira: Grower) -> None:
    answer = await mira.says(PHALS, RUBY, TUB, "Ruby is resting", "2 l for Ruby and the phals")
    assert answer.kind == "dose"
    assert "Left out, resting: Ruby" in answer.reply
    assert (await mira.says("2 l for Ruby")).kind == "no_feed"


async def test_what_is_said_wins_over_the_records(mira: Grower) -> None:
    answer = await mira.says(PHALS, TUB, "5 l 13-3-15 powder half strength")
    assert answer.dose is not None
    assert answer.dose.full_strength_source == "assumed"
    assert answer.dose.elements_mg_l["N"] == pytest.approx(100.0)


# --- follow-ups -------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("line", "grams"),
    [
        ("make it 4 litres", 1.0), ("half that", 0.25), ("double it", 1.0),
        ("exactly half", 1.0), ("4 l instead", 1.0), ("and in sphagnum?", 0.375),
        ("what about winter?", 0.25),
    ],
)  # fmt: skip
async def test_a_follow_up_changes_the_last_request(mira: Grower, line: str, grams: float) -> None:
    answer = await mira.says("2 l 20-20-20 powder quarter phal label 1 g/l", line)
    assert answer.dose is not None
    assert answer.dose.amount == pytest.approx(grams)


async def test_half_of_what_a_ceiling_cut_is_half_of_it(mira: Grower) -> None:
    whole = await mira.says("2 l 20-20-20 powder full strength masdevallia label 1 g/l")
    half = await mira.says("half that")
    assert whole.dose is not None
    assert half.dose is not None
    assert half.dose.amount == pytest.approx(whole.dose.amount / 2)


async def test_a_follow_up_is_understood_for_half_an_hour(mira: Grower) -> None:
    await mira.says("2 l 20-20-20 powder quarter phal")
    assert (await mira.later(minutes=28).says("half that")).kind == "dose"
    answer = await mira.later(minutes=31).says("half that")
    assert answer.kind == "ask"
    assert "no dose to go on from" in answer.reply


async def test_the_answer_to_our_question_completes_the_request(mira: Grower) -> None:
    assert (await mira.says("5 l quarter strength")).kind == "ask"
    answer = await mira.says("20-20-20 powder")
    assert answer.dose is not None
    assert answer.dose.amount == pytest.approx(1.25)


async def test_with_another_product_of_the_shelf(mira: Grower) -> None:
    other = "my liquid is 7-7-7, 4 ml per litre, call it green bottle"
    answer = await mira.says(TUB, other, "2 l for a phal with blue tub", "with the green bottle")
    assert answer.dose is not None
    assert answer.dose.unit == "ml"
    assert answer.dose.amount == pytest.approx(2.0)


async def test_why_shows_each_step_with_its_source(mira: Grower) -> None:
    answer = await mira.says("2 l 20-20-20 powder phal sphagnum", "why?")
    assert answer.kind == "why"
    assert "sphagnum holds salts" in answer.reply


# --- the collection ---------------------------------------------------------------------


async def test_plants_are_kept_as_they_were_said(mira: Grower) -> None:
    await mira.says(PHALS, RUBY)
    phals, ruby = await plants(mira)
    assert (phals["genus"], phals["count"], phals["medium"]) == ("Phalaenopsis", 3, "bark")
    assert (phals["pot_cm"], phals["place"]) == (12.0, "kitchen sill")
    assert (ruby["name"], ruby["genus"], ruby["medium"]) == ("Ruby", "Masdevallia", "sphagnum")


@pytest.mark.parametrize(
    ("line", "said"),
    [
        ("add a phal called bark", "a potting medium"),
        ("add a phal called 7", "a number"),
        ("add a phal called May", "a month"),
        ("add a phal called undo", "something to do"),
        ("add a vanda called ruby", "already"),
        ("add 20000 phals", "from 1 to 10,000"),
    ],
)
async def test_a_name_or_a_number_that_cannot_be_is_refused(
    mira: Grower, line: str, said: str
) -> None:
    await mira.says(RUBY)
    answer = await mira.says(line)
    assert answer.kind == "refused"
    assert said in answer.reply
    assert len(await plants(mira)) == 1


async def test_which_of_two_is_asked_and_the_number_answers(mira: Grower) -> None:
    await mira.says("add a small cattleya in bark", "add a big cattleya in bark")
    assert (await mira.says("lost the cattleya")).kind == "ask"
    await mira.says("2")
    assert [p["detail"] for p in await plants(mira)] == ["small"]


async def test_a_trait_tells_them_apart(mira: Grower) -> None:
    await mira.says("add a small cattleya in bark", "add a big cattleya in bark")
    assert (await mira.says("lost the small cattleya")).kind == "plants"
    assert [p["detail"] for p in await plants(mira)] == ["big"]


async def test_one_of_several_alike_is_counted_down(mira: Grower) -> None:
    await mira.says(PHALS, "lost one of the phals")
    assert [p["count"] for p in await plants(mira)] == [2]


async def test_repotting_growth_move_and_rename(mira: Grower) -> None:
    await mira.says(
        RUBY,
        "repotted Ruby into bark yesterday, 10 cm pot",
        "new spike on Ruby",
        "move Ruby to the balcony",
        "rename Ruby to Rubin",
    )
    (rubin,) = await plants(mira)
    assert (rubin["name"], rubin["medium"], rubin["pot_cm"]) == ("Rubin", "bark", 10.0)
    assert (rubin["growth"], rubin["place"]) == ("flowering", "balcony")


async def test_undo_takes_back_each_line_as_a_whole(mira: Grower) -> None:
    await mira.says(PHALS, RUBY, "fed everything, quarter")
    assert "fed" in (await mira.says("undo")).reply
    await mira.says("undo")
    assert len(await plants(mira)) == 1
    await mira.says("undo")
    assert await plants(mira) == []
    assert "Nothing left" in (await mira.says("undo")).reply


async def test_where_nobody_was_met_undo_says_so(mira: Grower) -> None:
    assert "Nothing left" in (await mira.says("undo")).reply


# --- the shelf --------------------------------------------------------------------------


@pytest.mark.parametrize(
    "line",
    [
        "my powder is 70-70-70",
        "my powder is 20-20-20, nitrate 12 %, urea 15 %",
        "my powder is 20-20-20, label 500 g per litre",
        "my powder is 0-0-0",
    ],
)
async def test_a_label_that_contradicts_itself_is_not_kept(mira: Grower, line: str) -> None:
    assert (await mira.says(line)).kind == "refused"
    assert "Nothing on your shelf" in (await mira.says("my shelf")).reply


@pytest.mark.parametrize(
    ("known", "line", "figures"),
    [
        ("my powder is 60-20-19, call it blue tub", "blue tub has 10 % Ca", "60-20-19 + Ca 10 %"),
        ("mein Pulver ist 60-20-19, nenn es Blau", "Blau hat 10 % Ca", "60-20-19 + Ca 10 %"),
        ("mój proszek to 60-20-19, nazwij go Modry", "Modry ma 10 % Ca", "60-20-19 + Ca 10 %"),
        ("mi polvo es 60-20-19, llámalo Azul", "Azul tiene 10 % Ca", "60-20-19 + Ca 10 %"),
        ("my powder is 20-20-20 + 8Ca, call it blue tub", "blue tub is 60-20-19",
         "60-20-19 + Ca 8 %"),
        ("my powder is 20-20-20 + 8Ca, call it blue tub", "blue tub has 10 % nitrate, 11 % urea",
         "add up to 21 %"),
    ],
)  # fmt: skip
async def test_a_label_told_in_parts_is_judged_as_a_whole(
    sqlite_records: Records, known: str, line: str, figures: str
) -> None:
    mira = Grower(sqlite_records)
    first = (await mira.says(known, "my shelf")).details
    answer = await mira.says(line)
    assert answer.kind == "refused"
    assert figures in answer.reply
    assert (await mira.says("my shelf")).details == first


async def test_what_two_tell_of_a_label_is_kept_of_both(mira: Grower) -> None:
    await mira.says(TUB, "blue tub has 8 % Ca", "blue tub has 2 % Mg")
    found = (await mira.says("my shelf")).details
    assert found is not None
    assert found["products"][0]["extras"] == {"Ca": 8.0, "Mg": 2.0}


async def test_a_whole_label_is_kept(mira: Grower) -> None:
    line = (
        "my liquid is 3-1-5 + 2 Ca 0.5 Mg, density 1.2, nitrate 2.5 %, 4 ml/l, 15 euros for 1 l, "
        "call it green juice"
    )
    reply = (await mira.says(line)).reply
    for part in (
        "3-1-5 liquid",
        "Ca 2 %",
        "2.5 % nitrate N",
        "4 ml per litre",
        "1.2 kg/l",
        "15 EUR",
    ):
        assert part in reply


async def test_what_a_label_lacks(mira: Grower) -> None:
    reply = (await mira.says(TUB, "what does the blue tub lack?")).reply
    assert "Ca, Mg, and S" in reply
    assert "Fe" in reply


# --- the log ----------------------------------------------------------------------------


@pytest.mark.parametrize(
    "line", ["fed Ruby tomorrow", "fed Ruby on 30 february", "flushed Ruby on 2030-01-01"]
)
async def test_a_day_that_cannot_be_is_refused(mira: Grower, line: str) -> None:
    await mira.says(RUBY)
    assert (await mira.says(line)).kind == "refused"
    assert "added" in (await mira.says("history of Ruby")).reply


async def test_the_log_tells_what_a_plant_got_since_a_month(mira: Grower) -> None:
    await mira.says(RUBY, PHALS, "fed Ruby, quarter", "clear water for Ruby")
    mira.later(days=40)
    answer = await mira.says("flushed Ruby", "what did Ruby get since july")
    kinds = [e["kind"] for e in (answer.details or {})["entries"]]
    assert kinds == ["flush"]
    everything = await mira.says("what did Ruby get since june")
    kinds = [e["kind"] for e in (everything.details or {})["entries"]]
    assert kinds == ["added", "fed", "clear", "flush"]


# --- the plan ---------------------------------------------------------------------------


def actions(answer: Any) -> dict[str, str]:
    return {p: g["action"] for g in answer.details["groups"] for p in g["plants"]}


async def test_the_plan_gives_each_plant_its_own(mira: Grower) -> None:
    answer = await mira.says(
        PHALS, RUBY, TUB,
        "add a dendrobium nobile in bark called Noble",
        "Noble is resting",
        "add a vanda, mounted, called Blue",
        "repotted Blue",
        "what's on today",
    )  # fmt: skip
    assert actions(answer) == {
        "Phalaenopsis": "feed", "Ruby": "feed", "Noble": "clear", "Blue": "clear",
    }  # fmt: skip
    strengths = {g["plants"][0]: g["strength"] for g in (answer.details or {})["groups"]}
    assert strengths["Phalaenopsis"] == pytest.approx(0.25)
    assert strengths["Ruby"] == pytest.approx(0.1875)


async def test_done_logs_the_whole_plan_once(mira: Grower) -> None:
    await mira.says(PHALS, RUBY, TUB, "what's on today", "done 1")
    assert "fed" in (await mira.says("done")).reply
    assert "already" in (await mira.says("done")).reply
    for plant in ("Ruby", "the phals"):
        answer = await mira.says(f"what did {plant} get today")
        assert [e["kind"] for e in (answer.details or {})["entries"]].count("fed") == 1
    assert set(actions(await mira.says("what's on today")).values()) == {"nothing"}


async def test_a_plan_for_another_day_is_not_ticked_off_today(mira: Grower) -> None:
    await mira.says(PHALS, TUB, "plan for saturday")
    assert (await mira.says("done")).kind == "ask"


async def test_waters_are_never_mixed_in_the_can(mira: Grower) -> None:
    answer = await mira.says(
        PHALS, RUBY, TUB, "my tap is 8 dH", "rain for the masdevallia", "what's on today"
    )
    parts = (answer.details or {})["parts"]
    assert len(parts) == 2
    assert sum("rain water" in part["text"] for part in parts) == 1
    assert not any("Top up" in part["text"] for part in parts)


async def test_feed_too_little_for_any_tool_is_said_and_logged_as_water(mira: Grower) -> None:
    answer = await mira.says(
        "add a masdevallia seedling, mounted", TUB, "Masdevallia takes 10 ml",
        "my scale shows 10 g", "my syringe shows 2 ml", "what's on today",
    )  # fmt: skip
    assert "too little to measure" in answer.reply
    assert "clear water" in (await mira.says("done")).reply


async def test_a_month_after_the_last_clear_water_a_flush_is_due(mira: Grower) -> None:
    await mira.says(PHALS, TUB, "flushed all phals")
    for _ in range(4):
        await mira.later(days=6).says("fed the phals, quarter")
    assert actions(await mira.later(days=3).says("plan")) == {"Phalaenopsis": "feed"}
    assert actions(await mira.later(days=2).says("plan")) == {"Phalaenopsis": "flush"}


# --- whose records ----------------------------------------------------------------------


async def test_people_and_groups_do_not_see_each_other(records: Records) -> None:
    mira, ben = Grower(records, "Mira"), Grower(records, "Ben")
    club = Grower(records, "Mira", group="orchid club")
    await mira.says(RUBY)
    await club.says("add 2 vandas, mounted")
    assert await plants(ben) == []
    assert [p["genus"] for p in await plants(club)] == ["Vanda"]
    assert [p["name"] for p in await plants(mira)] == ["Ruby"]


async def test_twenty_people_at_once(records: Records) -> None:
    growers = [Grower(records, f"grower {n}") for n in range(20)]
    lines = (PHALS, TUB, "fed all phals, quarter", "5 l", "half that", "what's on today", "undo")
    await asyncio.gather(*(grower.says(*lines) for grower in growers))
    for grower in growers:
        assert len(await plants(grower)) == 1


# --- taking along and forgetting --------------------------------------------------------


async def test_an_export_comes_back_after_everything_was_forgotten(mira: Grower) -> None:
    await mira.says(PHALS, RUBY, TUB, "my tap is 14 dH", "fed Ruby, quarter")
    file = (await mira.says("export")).file
    assert file is not None
    before = await plants(mira)
    assert (await mira.says("forget me")).kind == "ask"
    assert (await mira.says("yes")).reply.startswith("Deleted: ")
    assert await plants(mira) == []
    mira.files["mine.json"] = file.content
    asked = await mira.says("import mine.json")
    assert asked.kind == "ask"
    assert "2 entries of plants" in asked.reply
    assert await plants(mira) == []
    await mira.says("import mine.json", "yes")
    assert await plants(mira) == before
    again = (await mira.says("export")).file
    assert again is not None
    assert again.content == file.content


async def test_an_import_would_replace_and_asks(mira: Grower) -> None:
    file = (await mira.says(PHALS, "export")).file
    assert file is not None
    mira.files["mine.json"] = file.content
    await mira.says("undo", RUBY)
    assert "replace" in (await mira.says("import mine.json")).reply
    await mira.says("no")
    assert [p["name"] for p in await plants(mira)] == ["Ruby"]


@pytest.mark.parametrize(
    "content",
    ["", "{", "[]", '{"format": "other"}', '{"format": "sinkside-records", "version": 99}'],
)
async def test_a_foreign_file_changes_nothing(mira: Grower, content: str) -> None:
    await mira.says(RUBY)
    mira.files["other.json"] = content
    answer = await mira.says("import other.json")
    assert answer.kind == "refused"
    assert "Nothing was changed" in answer.reply
    assert len(await plants(mira)) == 1


async def test_forgetting_needs_a_yes(mira: Grower) -> None:
    await mira.says(RUBY, "forget me", "no")
    assert len(await plants(mira)) == 1
    await mira.says("forget me", "hello", "yes")
    assert len(await plants(mira)) == 1


# --- where and with what ----------------------------------------------------------------


async def test_the_south_turns_the_seasons_round(mira: Grower) -> None:
    await mira.says("I live in Sydney", "add a phal in bark", TUB)
    answer = await mira.says("1 l for the phal")
    assert any(w.rule == "season.winter" for w in answer.why)


async def test_the_kit_is_used(mira: Grower) -> None:
    answer = await mira.says("my scale shows 0.01 g", "2 l 20-20-20 powder quarter phal")
    assert "0.01 g scale" in answer.reply


async def test_water_on_record_is_said_once_and_used(mira: Grower) -> None:
    await mira.says("my tap is 14 dH, 0.6 mS", "my tap is 15 dH")
    reply = (await mira.says("my settings")).reply
    assert reply.count("tap water") == 1
    assert "15 °dH" in reply


# --- two programs at once -----------------------------------------------------------------


async def test_what_another_program_wrote_is_seen(records: Records) -> None:
    here = Conversation(records)

    async def ask_here(line: str, minute: int) -> Answer:
        said_at = START + timedelta(minutes=minute)
        incoming = Incoming(line, "Mira", "test", said_at, said_at.date())
        return await here.answer(incoming)

    other = Grower(records)
    other.now += timedelta(minutes=1)
    await ask_here(RUBY, 0)
    assert "1 plant" in (await ask_here("my plants", 1)).reply
    for line, count in (
        (PHALS, "4 plants"), ("move Ruby to the attic", "attic"), ("undo", "4 plants"),
        (TUB, "4 plants"), ("lost Ruby", "3 plants"),
    ):  # fmt: skip
        await other.says(line)
        assert count in (await ask_here("my plants", 50)).reply
    await other.says("forget me", "yes")
    assert "No plants" in (await ask_here("my plants", 51)).reply
    await other.says(RUBY)
    assert "1 plant" in (await ask_here("my plants", 52)).reply


@pytest.mark.parametrize("at_once", [True, False])
async def test_what_another_program_took_in_is_seen(records: Records, at_once: bool) -> None:
    here, other = Grower(records), Grower(records)
    exported = (await here.says(RUBY, "export")).file
    assert exported is not None
    edited = exported.content.replace('"sphagnum"', '"bark"')
    other.files["mine.json"] = edited.replace('"Ruby"', '"Opal"')
    other.later(hours=1)
    await other.says("import mine.json", "yes")
    if not at_once:  # the log goes on where that of the file ended
        await other.says("fed Opal")
    reply = (await here.later(hours=2).says("my plants")).reply
    assert ("Opal" in reply, "bark" in reply, "Ruby" in reply) == (True, True, False)


@pytest.mark.parametrize("line", ["fed Dotty", "flushed Dotty yesterday", "and for Dotty?"])
async def test_a_plant_that_is_not_on_record_is_asked_about(mira: Grower, line: str) -> None:
    await mira.says(PHALS, TUB, "2 l for the phals")
    answer = await mira.says(line)
    assert answer.kind == "ask"
    assert answer.dose is None


async def test_a_name_ends_where_the_sentence_goes_on(mira: Grower) -> None:
    await mira.says("a masdevallia called Dot joined, sphagnum, 7 cm")
    assert [p["name"] for p in await plants(mira)] == ["Dot"]


async def test_them_are_the_plants_of_the_message_before(mira: Grower) -> None:
    await mira.says(RUBY, PHALS, "they are in 11 cm pots", "they are flowering")
    ruby, phals = await plants(mira)
    assert (phals["pot_cm"], phals["growth"]) == (11.0, "flowering")
    assert (ruby["pot_cm"], ruby["growth"]) == (8.0, None)


async def test_the_hint_does_not_ask_for_what_is_on_record(mira: Grower) -> None:
    plain = await mira.says("2 l 20-20-20 powder quarter")
    assert "the medium" in hint(plain, wording("en"))
    known = await mira.says(RUBY, TUB, "my tap is 8 dH", "2 l for Ruby")
    assert hint(known, wording("en")) == ""


async def test_a_product_is_renamed(mira: Grower) -> None:
    await mira.says(TUB, "rename blue tub to red tub")
    assert "red tub" in (await mira.says("my shelf")).reply


@pytest.mark.parametrize("line", ["fed Ruby in october", "flushed Ruby last month"])
async def test_a_stretch_of_time_is_no_day(mira: Grower, line: str) -> None:
    await mira.says(RUBY)
    answer = await mira.says(line)
    assert answer.kind == "refused"
    assert "Which day" in answer.reply


async def test_a_plant_of_unknown_kind_holds_the_others_to_the_moderate_ceiling(
    mira: Grower,
) -> None:
    answer = await mira.says(PHALS, "add 2 orchids in bark", TUB, "2 l full strength")
    assert answer.dose is not None
    assert answer.dose.elements_mg_l["N"] == pytest.approx(125.0)


@pytest.mark.parametrize("line", ["both", "all", "all of them"])
async def test_all_of_those_asked_about(mira: Grower, line: str) -> None:
    await mira.says("add a small cattleya", "add a big cattleya", "lost the cattleya", line)
    assert await plants(mira) == []


@pytest.mark.parametrize(("home", "day"), [("Auckland", "2026-06-08"), ("Honolulu", "2026-06-07")])
async def test_the_day_is_that_where_the_person_lives(
    records: Records, home: str, day: str
) -> None:
    # IANA time zone database: 13:00 UTC is 01:00 of the next day in Auckland, 03:00 in Honolulu
    talk = Conversation(records)
    at = datetime(2026, 6, 7, 13, tzinfo=UTC)
    for line in (f"I live in {home}", RUBY, "fed Ruby"):
        answer = await talk.answer(Incoming(line, "Mira", "test", at))
    assert (answer.details or {})["on"] == day
