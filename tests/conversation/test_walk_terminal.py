"""Moments of doubt of two people at the terminal: a beginner with two phals, an owner of many."""

from __future__ import annotations

from datetime import date, timedelta

import pytest

from bot.conversation.ask import Setting, ask
from bot.conversation.wording import wording
from bot.records import Records
from grammar import Names, read

from .talking import Grower

SHELF = "my powder is 20-20-20, label 1 g per litre, call it blue tub"
SECOND = "my powder 13-3-15 with Ca 8 Mg 2 label 1 g/l, call it cal"
MANY = (
    "add 30 dendrobium nobile, balcony, bark, 12 cm; 12 vandas, greenhouse; "
    "8 masdies, sphagnum, grow tent, 8 cm"
)
LADY = "add phrag called Lady, shelf 2"
MAX = "add cymbidium balcony, call it Max, 20 cm pot"


@pytest.fixture
async def owner(records: Records) -> Grower:
    """Somebody with plants in several places and two feeds."""
    grower = Grower(records)
    await grower.says(MANY, LADY, MAX, SHELF, SECOND)
    return grower


@pytest.fixture
def mira(records: Records) -> Grower:
    """Somebody new."""
    return Grower(records)


async def log_of(grower: Grower, name: str) -> str:
    """What stands in the log of a plant."""
    return (await grower.says(f"history of {name}")).reply


# --- what was given to whom ----------------------------------------------------------------


async def test_a_place_that_is_excepted_gets_nothing(owner: Grower) -> None:
    answer = await owner.says("watered all but balcony")
    assert "12 Vanda" in answer.reply
    assert "Dendrobium" not in answer.reply
    assert "Max" not in answer.reply


async def test_several_places_are_all_meant(owner: Grower) -> None:
    answer = await owner.says("fed greenhouse, shelf 2 and the balcony")
    assert all(name in answer.reply for name in ("Vanda", "Lady", "Max", "Dendrobium"))
    assert "Masdevallia" not in answer.reply


async def test_a_place_that_nobody_knows_is_asked_about_and_nothing_is_logged(
    owner: Grower,
) -> None:
    answer = await owner.says("fed all except the attic and Lady")
    assert answer.kind == "ask"
    answer = await owner.says("fed greenhouse and shelf 9")
    assert answer.kind == "ask"
    assert "shelf 9" in answer.reply
    assert "fed" not in await log_of(owner, "Lady")


@pytest.mark.parametrize(
    ("line", "read_as"),
    [
        ("fed all exept Lady", "except"),
        ("fed evrything exept Lady", "except"),
        ("habe alle gedüngt, auser Lady", "außer"),
        ("aboné todas exepto Lady", "excepto"),
        ("nawiozłam wszystkie oprucz Lady", "oprócz"),
    ],
)
async def test_a_slip_in_the_word_that_excepts_does_not_turn_it_round(
    owner: Grower, line: str, read_as: str
) -> None:
    answer = await owner.says(line)
    assert "Vanda" in answer.reply
    assert "Lady" not in answer.reply
    assert read_as in [r.meaning for r in answer.read_as]


@pytest.mark.parametrize("word", ["bar", "minus", "excluding", "aside from"])
async def test_further_words_except(owner: Grower, word: str) -> None:
    answer = await owner.says(f"flushed all {word} the vandas")
    assert answer.reply.startswith("Flushed today: ")
    assert "Lady" in answer.reply
    assert "Vanda" not in answer.reply


@pytest.mark.parametrize(
    "line",
    [
        "fed all besides Lady", "fed all apart form Lady", "fed everything wthout Lady",
        "fed all xyz the vandas", "flushed all, Lady half",
    ],
)  # fmt: skip
async def test_all_and_some_of_them_in_words_not_known_is_asked_about(
    owner: Grower, line: str
) -> None:
    answer = await owner.says(line)
    assert answer.kind == "ask"
    assert "All but " in answer.reply
    assert "fed" not in await log_of(owner, "Lady")


@pytest.mark.parametrize(
    ("line", "count"),
    [("fed all my vandas", 1), ("fed all the lovely vandas and Lady", 2), ("fed all", 5)],
)
async def test_all_of_a_kind_is_no_riddle(owner: Grower, line: str, count: int) -> None:
    answer = await owner.says(line)
    assert answer.reply.startswith("Fed today: ")
    named = ("Vanda", "Lady", "Max", "Dendrobium", "Masdevallia")
    assert sum(name in answer.reply for name in named) == count


@pytest.mark.parametrize(
    "line",
    [
        "i have not fed the vandas", "i havnt fed the vandas", "have not flushed Lady",
        "fed no vandas", "should have fed the vandas yesterday", "habe Lady nicht gedüngt",
        "habe die vandas noch nicht gedüngt", "habe nicht alle gedüngt",
        "habe die vandas nicht gegossen", "no regué las vandas", "nie podlałam vand",
    ],
)  # fmt: skip
async def test_what_was_not_done_is_not_written_down(owner: Grower, line: str) -> None:
    answer = await owner.says(line)
    assert answer.reply == wording(answer.language).say("not-given")
    said = (await owner.says("log")).reply
    assert not any(word in said for word in ("fed", "flushed", "clear water"))


@pytest.mark.parametrize(
    "line",
    ["watered the vandas, no feed", "gave the vandas no feed, just water",
     "vandas gegossen, nicht gedüngt"],
)  # fmt: skip
async def test_water_without_feed_is_clear_water(owner: Grower, line: str) -> None:
    await owner.says(line)
    assert "clear water" in await log_of(owner, "the vandas")


@pytest.mark.parametrize("with_", ["with", "w/", "using"])
async def test_watered_with_a_feed_is_fed(owner: Grower, with_: str) -> None:
    answer = await owner.says(f"watered the vandas {with_} blue tub")
    assert answer.reply.startswith("Fed today: 12 Vanda (blue tub)")


@pytest.mark.parametrize(
    "line",
    ["Lady lost a leaf", "the vandas lost all their flowers", "lost two leaves on Lady",
     "Lady hat alle Blätter verloren", "Lady straciła liście"],
)  # fmt: skip
async def test_a_plant_that_lost_a_part_stays_on_the_list(owner: Grower, line: str) -> None:
    before = (await owner.says("my plants")).reply
    await owner.says(line)
    assert (await owner.says("my plants")).reply == before


async def test_a_plant_that_died_of_its_roots_goes(owner: Grower) -> None:
    answer = await owner.says("Lady died, all roots rotten")
    assert answer.reply.startswith("Taken off your list: Lady")


async def test_somebody_unknown_who_is_excepted_stops_the_log(owner: Grower) -> None:
    answer = await owner.says("fed all except Lidy")
    assert answer.kind == "ask"
    assert "Lidy" in answer.reply
    assert "fed" not in await log_of(owner, "Lady")


@pytest.mark.parametrize(
    "line",
    [
        "fed all except Lady, Lady only watered",
        "fed all except Lady, she only got water",
        "fed all, Lady only watered",
        "alle gedüngt außer Lady, Lady nur gegossen",
        "aboné todas menos Lady, Lady solo agua",
        "nawiozłem wszystkie oprócz Lady, Lady tylko woda",
    ],
)
async def test_two_things_in_one_line_are_both_logged_and_undone_together(
    owner: Grower, line: str
) -> None:
    answer = await owner.says(line)
    assert answer.kind == "log"
    parts = (answer.details or {})["parts"]
    assert [p["kind"] for p in parts] == ["fed", "clear"]
    assert [len(p["plants"]) for p in parts] == [4, 1]
    await owner.says("undo")
    assert "today" not in (await owner.says("log")).reply.replace("today: added", "")


async def test_each_part_of_a_log_line_has_its_own_strength_and_day(owner: Grower) -> None:
    answer = await owner.says("fed Max half, fed Lady quarter")
    assert "Max (1/2" in answer.reply
    assert "Lady (1/4" in answer.reply
    answer = await owner.later(days=3).says("yesterday fed Max, today watered Lady")
    assert "Fed yesterday: Max" in answer.reply
    assert "Clear water today: Lady" in answer.reply


async def test_where_it_is_not_clear_who_got_which_it_is_asked(owner: Grower) -> None:
    answer = await owner.says("fed vandas, Max, Lady only watered")
    assert answer.kind == "ask"
    assert answer.reply == wording("en").say("ask-two-things")
    assert "fed" not in await log_of(owner, "Max")


@pytest.mark.parametrize(
    ("line", "kind"),
    [
        ("watered and fed Max", "fed"), ("fed and watered Max", "fed"),
        ("flushed Max with clear water", "flush"), ("gave Max clear water", "clear"),
        ("fed Max and Lady", "fed"),
    ],
)  # fmt: skip
async def test_one_thing_stays_one_thing(owner: Grower, line: str, kind: str) -> None:
    answer = await owner.says(line)
    assert answer.kind == "log"
    assert (answer.details or {})["kind"] == kind


async def test_a_plant_that_got_a_thing_twice_a_day_counts_once(owner: Grower) -> None:
    await owner.says("fed all", "fed the vandas")
    lines = (await owner.says("log")).reply.splitlines()
    twice = next(line for line in lines if "Vanda" in line and "fed" in line)
    assert "2 × fed" in twice
    assert "12 Vanda" in twice
    assert "24" not in twice


# --- a part of an entry --------------------------------------------------------------------


async def test_some_of_several_alike_are_moved_and_take_their_log_along(owner: Grower) -> None:
    await owner.says("fed the dendrobiums, half")
    answer = await owner.says("move 10 dendrobiums to the greenhouse")
    assert "10 Dendrobium nobile: now at greenhouse" in answer.reply
    assert "20 Dendrobium nobile stay" in answer.reply
    shown = (await owner.says("plants greenhouse")).reply
    assert "10 Dendrobium nobile" in shown
    assert "given already" in shown
    answer = await owner.says("undo")
    assert "moved" in answer.reply
    assert "30 Dendrobium nobile" in (await owner.says("plants balcony")).reply


async def test_some_of_several_alike_are_repotted_and_only_they_pause(owner: Grower) -> None:
    await owner.says("repotted 5 vandas in clay pellets 15 cm")
    shown = (await owner.says("plants greenhouse")).reply
    assert "- 7 Vanda: feed" in shown
    assert "- 5 Vanda (clay pellets): clear water" in shown


async def test_feed_for_some_of_several_alike_is_asked_about(owner: Grower) -> None:
    answer = await owner.says("fed 5 vandas")
    assert answer.kind == "ask"
    assert "move 5 Vanda" in answer.reply
    assert (await owner.says("fed 12 vandas")).kind == "log"


# --- questions that are no orders ----------------------------------------------------------


@pytest.mark.parametrize("line", ["are they dead now", "is Max dead", "are they dead now?"])
async def test_a_question_takes_nobody_off_the_list(owner: Grower, line: str) -> None:
    await owner.says("fed Max")
    answer = await owner.says(line)
    assert answer.kind == "help"
    assert "Max" in (await owner.says("my plants")).reply


@pytest.mark.parametrize(
    "line",
    ["do they sleep in winter", "can i mix them", "the vandas look odd", "is Max ok", "vandas?"],
)
async def test_who_asks_for_no_amount_gets_none(owner: Grower, line: str) -> None:
    await owner.says("fed Max")
    answer = await owner.says(line)
    assert answer.kind == "help"
    for choice in answer.choices:
        assert (await owner.says(choice)).kind in ("plan", "history", "dose")


@pytest.mark.parametrize("line", ["how much for the vandas", "vandas half", "vandas 2 l"])
async def test_who_asks_for_an_amount_gets_it(owner: Grower, line: str) -> None:
    assert (await owner.says(line)).kind == "dose"


# --- prices --------------------------------------------------------------------------------


@pytest.mark.parametrize(
    "line",
    [
        "blue tub costs 14 euro for 500 g, cal costs 22 for 1 kg",
        "blue tub 14 €/500 g; cal 22 €/kg",
        "cal 22 euro 1 kg; blue tub 14 euro 500 g",
    ],
)
async def test_a_list_of_prices_keeps_each(owner: Grower, line: str) -> None:
    answer = await owner.says(line)
    assert "14 EUR for 500 g" in answer.reply
    assert "22 EUR for 1000 g" in answer.reply
    await owner.says("undo")
    assert "EUR" not in (await owner.says("my feeds")).reply


async def test_a_price_of_two_feeds_is_asked_about(owner: Grower) -> None:
    answer = await owner.says("blue tub and cal 14 euro for 500 g")
    assert answer.kind == "ask"
    assert "EUR" not in (await owner.says("my feeds")).reply


# --- short things --------------------------------------------------------------------------


async def test_thanks_are_answered_shortly_and_hide_no_order(owner: Grower) -> None:
    assert (await owner.says("thx")).reply == wording("en").say("thanked")
    assert (await owner.says("thanks, fed Max")).kind == "log"


async def test_what_is_not_understood_is_said_to_be(owner: Grower) -> None:
    answer = await owner.says("I have grown orchids for 30 years")
    assert answer.reply.startswith(wording("en").say("help-lost"))
    assert answer.ask is None


async def test_a_list_without_a_verb_is_offered_to_be_added(mira: Grower) -> None:
    answer = await mira.says("30 dendrobiums, balcony, bark")
    assert answer.kind == "ask"
    assert "30 Dendrobium (bark, balcony)" in answer.reply
    assert (await mira.says("my plants")).kind == "plants"
    assert "30 Dendrobium" not in (await mira.says("my plants")).reply
    await mira.says("30 dendrobiums, balcony, bark", "yes")
    assert "30 Dendrobium" in (await mira.says("my plants")).reply


async def test_a_list_that_is_not_wanted_is_not_added(mira: Grower) -> None:
    answer = await mira.says("15 paphs, bark, shelf 2; 3 vandas, greenhouse", "no")
    assert answer.reply == wording("en").say("plants-not-added")
    assert "Vanda" not in (await mira.says("my plants")).reply


async def test_the_size_of_a_pot_is_no_part_of_a_name(mira: Grower) -> None:
    answer = await mira.says("add cymbidium balcony, call it Maxi 20 cm pot")
    assert "Maxi (Cymbidium, 20 cm pot, balcony)" in answer.reply


async def test_an_arrow_moves(owner: Grower) -> None:
    assert "now at balcony" in (await owner.says("vandas -> balcony")).reply


async def test_kinds_are_listed(owner: Grower) -> None:
    answer = await owner.says("list masdies")
    assert answer.kind == "plants"
    assert "8 Masdevallia" in answer.reply


async def test_who_rests_is_told_by_name(owner: Grower) -> None:
    owner.later(days=(date(2026, 12, 11) - owner.today).days)
    assert "30 Dendrobium nobile" in (await owner.says("who is resting now")).reply
    assert "30 Dendrobium nobile" in (await owner.says("who rests in winter")).reply
    assert (await owner.says("who rests in summer")).reply == "None of yours rests in summer."


async def test_who_is_due_for_a_flush_is_told(owner: Grower) -> None:
    await owner.says("fed all")
    assert (await owner.says("flush due?")).reply == wording("en").say("who-flush-none")
    await owner.later(days=20).says("fed the vandas")
    answer = await owner.later(days=10).says("who needs a flush")
    assert "12 Vanda" in answer.reply


@pytest.mark.parametrize(
    ("line", "code"),
    [
        ("how often do i have to feed them?", "tell-often"),
        ("sticky drops on the leaves", "tell-sticky"),
        ("roots growing out of the pot is that bad", "tell-air-roots"),
        ("flowers fell off what now", "tell-flowers-over"),
        ("should i cut the stem", "tell-spike"),
        ("sorry, i forgot to feed them for weeks", "tell-missed"),
    ],
)
async def test_what_a_beginner_asks_is_answered(owner: Grower, line: str, code: str) -> None:
    answer = await owner.says(line)
    assert answer.kind == "explain"
    assert wording("en").say(code) in answer.reply


# --- harm ----------------------------------------------------------------------------------


async def test_signs_that_come_one_by_one_are_of_one_harm(mira: Grower) -> None:
    await mira.says("i have 2 phals in bark", "a leaf is yellow!!")
    second = await mira.says("white crust on the bark")
    assert second.reply != wording("en").say("ask-rescue-one-old-leaf")
    answer = await mira.says("sticky drops on the leaves", "the root tips are brown")
    assert answer.kind == "rescue"
    assert "salt burn" in answer.reply.splitlines()[1]


async def test_frost_that_is_told_of_a_plant_asks_for_no_litres(owner: Grower) -> None:
    answer = await owner.says("my vandas got frost")
    assert answer.kind == "rescue"
    assert "warm" in answer.reply


async def test_the_least_flush_says_why_it_is_less_than_twice_the_pot(owner: Grower) -> None:
    await owner.says("fed Max")
    answer = await owner.says("how do i flush Max")
    assert "twice the pot" in answer.reply


# --- reminders -----------------------------------------------------------------------------


async def test_reminders_are_deleted_by_their_numbers(owner: Grower) -> None:
    await owner.says(
        "I live in Porto",
        "remind me to flush all every first sunday at 9",
        "remind me to feed the vandas every monday at 7 am",
        "remind me to feed the masdies every 10 days",
    )
    answer = await owner.says("delete 1 and 3")
    assert "Stopped 2" in answer.reply
    assert (await owner.says("reminders")).reply.startswith("One reminder")


async def test_a_new_reminder_ends_the_question_about_another(owner: Grower) -> None:
    answer = await owner.says("remind me", "remind me to feed every 2 weeks", "lisbon")
    assert "feed all plants every 2 weeks" in answer.reply


# --- nothing remembered --------------------------------------------------------------------


@pytest.mark.parametrize(
    ("line", "said"), [("Na 40000 mg/l in my tap", "40,000"), ("my tap: Na -5 mg/l, Ca 20", "-5")]
)
def test_an_impossible_water_is_said_to_be_without_records_too(line: str, said: str) -> None:
    answer = ask(line, Setting(today=date(2026, 5, 11)))
    assert answer.kind == "refused"
    assert said in answer.reply


# --- reading -------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("text", "verb"),
    [
        ("2 l 20-20-20 for 3 phals in bark 12 cm", "dose"), ("3 phals in bark", "add_offer"),
        ("5 vandas, greenhouse, winter", "dose"), ("fed all, not sure", "not_told"),
        ("thanks for the help with my vandas", "dose"), ("is in bark, 12 cm pot", "dose"),
        ("delete Ruby", "lose"), ("remove 5 phals", "lose"), ("2 vandas died", "lose"),
    ],
)  # fmt: skip
def test_neighbours_of_the_new_forms_stay_what_they_were(text: str, verb: str) -> None:
    reading = read(text, "en", names=Names(plants=("Ruby",), places=("greenhouse",)))
    assert reading.order is not None
    assert reading.order.verb == verb


async def test_who_has_only_spoons_is_told_that_they_are_too_coarse(mira: Grower) -> None:
    answer = await mira.says("i have 2 phals", "i only have a tablespoon", "1 l 7-5-6 liquid")
    assert wording("en").say("on-record-spoons") in answer.reply
    answer = await mira.says("my scale shows 0.1 g", "1 l 7-5-6 liquid")
    assert wording("en").say("on-record-spoons") not in answer.reply


async def test_further_cans_of_one_mix_name_the_plants_once(mira: Grower) -> None:
    await mira.says("add 200 vandas, bark, 14 cm, balcony", "my can holds 10 l", SHELF)
    reply = (await mira.says("plan")).reply
    assert "can 2 of" in reply
    assert reply.count("200 Vanda") == 1


async def test_short_names_of_kinds_are_understood_in_orders(mira: Grower) -> None:
    await mira.says("add 30 dendrobium nobile, balcony, bark")
    assert "28 left" in (await mira.says("2 dens died")).reply


@pytest.mark.parametrize(
    ("line", "said"),
    [
        ("add a masdevallia called Anna, a vanda called Bella and a phal called Carla",
         "Anna (Masdevallia); Bella (Vanda); Carla (Phalaenopsis)"),
        ("add Ruby, a masdevallia, and Bella, a vanda", "Ruby (Masdevallia); Bella (Vanda)"),
        ("ich habe eine masdevallia namens Anna, eine vanda namens Bella",
         "Anna (Masdevallia); Bella (Vanda)"),
        ("agrega una masdevallia llamada Anna y una vanda llamada Bella",
         "Anna (Masdevallia); Bella (Vanda)"),
        ("dodaj masdevallię o imieniu Anna i vandę o imieniu Lila",
         "Anna (Masdevallia); Lila (Vanda)"),
    ],
)  # fmt: skip
async def test_each_plant_keeps_its_own_name(mira: Grower, line: str, said: str) -> None:
    answer = await mira.says(line)
    assert said in answer.reply
    assert answer.read_as == []


async def test_a_yes_that_comes_too_late_deletes_nothing_and_says_so(owner: Grower) -> None:
    before = (await owner.says("my plants")).reply
    await owner.says("forget me")
    owner.now += timedelta(minutes=31)
    assert (await owner.says("yes")).reply == wording("en").say("question-lapsed")
    assert (await owner.says("my plants")).reply == before
    await owner.says("forget me", "yes")
    assert (await owner.says("my plants")).reply != before
