"""An ailing plant: what is understood, what is asked, what the plan says."""

from __future__ import annotations

from typing import Any

import pytest

from bot.almanac.rescue import causes, rescue_severities, signs
from bot.conversation.answer import Answer
from bot.conversation.wording import wording
from bot.dosing.pot_water import pot_volume_l
from bot.records import Records
from grammar import Names, Order, read
from tests.conversation.talking import Grower

TUB = "my powder is 20-20-20, label 1 g per litre, call it blue tub"
RUBY = "I have a masdevallia in sphagnum called Ruby, 8 cm pot"
DOT = "add a phal called Dot in bark, 12 cm pot"
NAMES = Names(plants=("Ruby", "Dot"), products=("blue tub",), places=("kitchen sill",))


@pytest.fixture
def mira(records: Records) -> Grower:
    return Grower(records)


def order(text: str) -> Order:
    found = read(text, "en", names=NAMES).order
    assert found is not None
    return found


def details(answer: Answer) -> dict[str, Any]:
    assert answer.kind == "rescue", answer.reply
    assert answer.details is not None
    return answer.details


def action(answer: Answer, code: str) -> dict[str, Any]:
    return next(a for a in details(answer)["actions"] if a["code"] == code)


# --- what is understood -----------------------------------------------------------------------

UNDERSTOOD = {
    "brown root tips and white crust on Ruby": {"brown_root_tips", "white_crust"},
    "Ruby's root tips have gone brown": {"brown_root_tips"},
    "the tips of her roots are black, what do I do?": {"brown_root_tips"},
    "Dot has roots with brown tips": {"brown_root_tips"},
    "there's a salt crust on Dot's pot": {"white_crust"},
    "Ruby got brown leaf tips and some white stuff on the moss": {
        "leaf_tips_brown", "white_crust",
    },
    "leaves of Dot are all wrinkly and limp": {"pleated_leaves"},
    "Dot is drooping and her pot stays wet": {"limp", "medium_stays_wet"},
    "help, the roots on my phal are mushy and it smells bad": {"mushy_roots", "sour_smell"},
    "Dot lost most of her roots": {"roots_gone"},
    "no roots left on Ruby": {"roots_gone"},
    "shrivelled leaves, bone dry bark, firm white roots": {
        "pleated_leaves", "dry_light_pot", "firm_roots",
    },
    "the lower leaves on Dot are turning yellow": {"yellow_old_leaf"},
    "Dot has sunken spots after a cold night": {"sunken_patches", "sudden_after_cold"},
    "black patches on Ruby that keep spreading": {"black_spreading"},
    "all my phals have brown root tips": {"brown_root_tips", "many_plants"},
    "what's wrong with Ruby?": set(),
    "Dot is dying, please help": set(),
    "my dot looks sick": set(),
    "should I feed Ruby? the root tips are brown": {"brown_root_tips"},
    "roots brown, mushy, leaves yellow": {"brown_root_tips", "mushy_roots", "yellow_old_leaf"},
    "Ruby has wrinkeld leaves": {"pleated_leaves"},
    "the tips of Dot's leaves die back": {"leaf_tips_brown"},
    "black spot on Dot's leaf is getting bigger": {"leaf_rot"},
    "Dot: brown root tips. Fed last week at full strength": {"brown_root_tips"},
    "I overdosed Ruby": {"fed_strong"},
    "all the roots of Ruby are rotten": {"mushy_roots"},
}  # fmt: skip


@pytest.mark.parametrize(("text", "found"), UNDERSTOOD.items())
def test_signs_are_understood(text: str, found: set[str]) -> None:
    assert order(text).verb == "rescue"
    assert set(order(text).signs) == found


NEAR_MISSES = {
    "brown tips, 2 l 20-20-20 powder": "dose",
    "5 l quarter strength, my phal has brown root tips": "dose",
    "flushed Ruby because of the white crust": "flush",
    "repotted Ruby yesterday, her roots were mushy": "repot",
    "Ruby died, all roots rotten": "lose",
    "fed Dot at half strength, her leaves are wrinkled": "fed",
    "Ruby is in dry bark, 9 cm pot": "correct",
    "Ruby has a new leaf": "growth",
    "add a phal called Bea in bark": "add",
    "what's on today": "plan",
    "when was Ruby last flushed? there is a crust": "history",
    "how salty is Ruby": "salts",
    "5 litres, 20-20-20 powder, no crust, no brown tips": "dose",
    "2 l for Ruby, wet moss": "dose",
}


@pytest.mark.parametrize(("text", "verb"), NEAR_MISSES.items())
def test_near_misses_stay_what_they_are(text: str, verb: str) -> None:
    assert order(text).verb == verb


@pytest.mark.parametrize(
    "text", ["brown tips, 2 l 20-20-20 powder", "mushy roots, 3 litres half strength 13-3-15"]
)
def test_signs_change_no_dose(text: str) -> None:
    plain, kept = read(text, "en"), read(text, "en", names=NAMES)
    for slot in ("volume_l", "analysis", "strength", "form", "medium", "conflicts"):
        assert getattr(plain, slot) == getattr(kept, slot)
    assert kept.ailing  # its words are told as a caution, and not as what was not understood
    assert kept.unknown == ()


@pytest.mark.parametrize(
    ("text", "there", "denied"),
    [
        ("white crust on Ruby but no mushy roots", ("white_crust",), ("mushy_roots",)),
        ("Ruby's roots are not mushy, leaves wrinkled", ("pleated_leaves",), ("mushy_roots",)),
        ("brown leaf tips, no crust or mushy roots", ("leaf_tips_brown",),
         ("white_crust", "mushy_roots")),
    ],
)  # fmt: skip
def test_what_is_denied_is_not_there(
    text: str, there: tuple[str, ...], denied: tuple[str, ...]
) -> None:
    assert (order(text).signs, order(text).denied) == (there, denied)


# --- the plan -----------------------------------------------------------------------------------


async def test_salt_burn_is_flushed_paused_and_fed_again_weakly(mira: Grower) -> None:
    answer = await mira.says(RUBY, TUB, "brown root tips and white crust on Ruby")
    # American Orchid Society, fertilizer burn; University of Maryland Extension, soluble salts
    assert details(answer)["cause"] == "salt_burn"
    assert details(answer)["likelihoods"]["salt_burn"]["word"] == "likely"
    flush = action(answer, "flush")
    # UC ANR, soluble salts: at least twice the volume of the pot
    assert flush["volume_l"] >= 2 * pot_volume_l(8)
    assert flush["passes"] == 3
    assert answer.reply.startswith("Flush Ruby with 840 ml of clear water: 3 parts of 280 ml")
    assert details(answer)["pause_days"] == 28
    # a quarter, three quarters of it in moss, half of that: house rules, common practice
    assert details(answer)["resume_strength"] == pytest.approx(0.25 * 0.75 * 0.5)
    assert (
        "No feed for 28 days, until Sun 5 Jul. Then only if you see new root tips" in answer.reply
    )
    assert "never-feed-burnt-roots" in [c.code for c in answer.cautions]
    assert answer.unknown == []


async def test_a_likelihood_is_said_in_words(mira: Grower) -> None:
    answer = await mira.says(RUBY, "brown root tips and white crust on Ruby")
    assert "Likely: salt burn." in answer.reply
    assert "Unlikely: root rot" in answer.reply


async def test_the_flush_is_logged_by_the_words_there_are_and_undone(mira: Grower) -> None:
    answer = await mira.says(RUBY, "brown root tips and white crust on Ruby")
    assert answer.choices[0] == "flushed Ruby"
    assert (await mira.says(answer.choices[0])).kind == "log"
    assert "flush" in (await mira.says("what did Ruby get this month?")).reply
    assert (await mira.says("undo")).kind == "undo"


async def test_why_shows_the_evidence_with_its_sources(mira: Grower) -> None:
    answer = await mira.says(RUBY, "brown root tips and white crust on Ruby")
    assert {w.rule for w in answer.why} >= {
        "rescue.salt_burn.white_crust", "rescue.salt_burn.brown_root_tips", "rescue.flush",
        "rescue.pause",
    }  # fmt: skip
    assert all(w.source for w in answer.why)
    told = await mira.says("why?")
    assert "white crust: 2 for salt burn (University of Maryland Extension" in told.reply
    assert "3 times the volume of a pot of 8 cm" in told.reply


async def test_rot_comes_out_of_the_pot_first(mira: Grower) -> None:
    # American Orchid Society, wrinkled and leathery leaves: soft roots are lost to too much water
    answer = await mira.says(DOT, "Dot's roots are mushy and the bark never dries")
    assert details(answer)["cause"] == "root_rot"
    assert answer.reply.startswith("Take Dot out of the pot")
    assert details(answer)["pause_days"] == causes()["root_rot"].pause_days


async def test_thirst_is_watered_and_fed_as_usual_soon(mira: Grower) -> None:
    # American Orchid Society, wrinkled and leathery leaves: firm roots and a light pot
    answer = await mira.says(DOT, "Dot has wrinkled leaves, firm white roots and a dry pot")
    assert details(answer)["cause"] == "thirst"
    assert details(answer)["resume_strength"] == pytest.approx(0.25)
    assert answer.reply.startswith("Water Dot through with")


async def test_too_much_feed_alone_is_flushed_without_questions(mira: Grower) -> None:
    # University of Maryland Extension, soluble salts: leach with a volume of at least the pot
    answer = await mira.says(DOT, "I overdosed Dot")
    assert action(answer, "flush")["volume_l"] >= pot_volume_l(12)
    assert "Possible: salt burn" in answer.reply


async def test_gone_roots_and_failing_collections_go_to_people(mira: Grower) -> None:
    gone = await mira.says(RUBY, DOT, "no roots left on Ruby")
    assert details(gone)["people"] == ["roots_gone"]
    assert details(gone)["resume_strength"] is None
    assert "orchid society or extension service" in gone.reply
    assert "No feed at all until it has made new roots" in gone.reply
    many = await mira.says("all my orchids have mushy roots")
    assert "many_plants" in details(many)["people"]
    assert "orchid society or extension service" in many.reply


# --- what is on record ------------------------------------------------------------------------


async def test_the_pot_and_the_medium_on_record_count(mira: Grower) -> None:
    await mira.says(RUBY, DOT)
    ruby = await mira.says("white crust and brown root tips on Ruby")
    dot = await mira.says("white crust and brown root tips on Dot")
    assert action(dot, "flush")["volume_l"] == pytest.approx(2 * pot_volume_l(12))
    assert "holds_salts" in details(ruby)["signs"]
    assert "holds_salts" not in details(dot)["signs"]
    assert details(ruby)["assumed"] == details(dot)["assumed"] == []


async def test_what_is_said_of_the_pot_wins(mira: Grower) -> None:
    answer = await mira.says(DOT, "brown root tips and white crust on Dot, 20 cm pot")
    assert action(answer, "flush")["volume_l"] == pytest.approx(2 * pot_volume_l(20))


async def test_the_last_feeds_and_flushes_count(mira: Grower) -> None:
    await mira.says(DOT, "fed Dot full strength")
    await mira.later(days=40).says("fed Dot at double strength")
    answer = await mira.later(days=1).says("brown root tips on Dot")
    # University of Maryland Extension: salts rise from too much feed, too strong
    assert details(answer)["cause"] == "salt_burn"
    assert {"fed_strong", "flush_due"} <= set(details(answer)["signs"])


async def test_a_flush_counts_from_its_day(mira: Grower) -> None:
    await mira.says(DOT, "fed Dot")
    await mira.later(days=40).says("flushed Dot")
    answer = await mira.later(days=1).says("brown root tips and white crust on Dot")
    assert "flush_due" not in details(answer)["signs"]


async def test_a_runoff_told_or_on_record_counts(mira: Grower) -> None:
    told = await mira.says(DOT, "brown root tips on Dot, runoff 3.2")
    assert "high_ec" in details(told)["signs"]
    await mira.says("runoff of Dot 3.2")
    kept = await mira.says("white crust on Dot")
    assert "high_ec" in details(kept)["signs"]
    await mira.later(days=1).says("flushed Dot")
    rinsed = await mira.says("white crust and brown root tips on Dot")
    assert "high_ec" not in details(rinsed)["signs"]


async def test_sensitive_roots_start_again_no_stronger_than_their_class(mira: Grower) -> None:
    answer = await mira.says(
        "add a masdevallia called Mia in bark", "brown root tips and white crust on Mia"
    )
    # 50 mg/l N of 200 and a quarter of the label: house rules, common practice
    assert details(answer)["resume_strength"] <= 0.5 * 0.25


async def test_a_plant_that_rests_by_then_waits_for_growth(mira: Grower) -> None:
    await mira.says("add a dendrobium nobile called Nob in bark, 10 cm pot")
    answer = await mira.later(days=140).says("brown root tips and white crust on Nob")
    assert "only when it grows again" in answer.reply


async def test_without_records_the_usual_is_taken_and_said(mira: Grower) -> None:
    answer = await mira.says("brown root tips and a white crust on my phal")
    assert set(details(answer)["assumed"]) == {"pot_cm", "medium"}
    assert "a 12 cm pot of bark" in answer.reply
    assert answer.choices == ["why", "more"]


async def test_which_of_two_is_asked(mira: Grower) -> None:
    asked = await mira.says(DOT, "add a phal in moss, 9 cm pot", "mushy roots on the phal")
    assert asked.kind == "ask"
    assert "Dot" in (await mira.says("1")).reply


# --- questions -----------------------------------------------------------------------------------


async def test_close_causes_are_asked_about_with_choices(mira: Grower) -> None:
    answer = await mira.says(RUBY, "brown root tips on Ruby")
    assert answer.kind == "ask"
    assert answer.ask == answer.reply
    assert answer.choices == ["yes", "no", "don't know"]
    assert "soft, brown and hollow" in answer.reply
    answer = await mira.says("yes")
    assert details(answer)["cause"] == "root_rot"
    assert details(answer)["answers"] == {"mushy_roots": "yes"}


@pytest.mark.parametrize("said", ["what is wrong with Ruby", "Ruby has brown leaf tips"])
@pytest.mark.parametrize("reply", ["no", "don't know", "not sure"])
async def test_never_more_than_four_questions(mira: Grower, said: str, reply: str) -> None:
    answer = await mira.says(RUBY, said)
    asked = 0
    while answer.kind == "ask":
        asked += 1
        answer = await mira.says(reply)
    assert asked <= 4
    assert len(details(answer)["answers"]) == asked


async def test_an_answer_may_tell_more(mira: Grower) -> None:
    await mira.says(RUBY, "Ruby's leaves are wrinkled")
    answer = await mira.says("no, the roots are firm and the moss is bone dry")
    assert details(answer)["cause"] == "thirst"
    assert {"firm_roots", "dry_light_pot"} <= set(details(answer)["signs"])


async def test_yes_may_be_said_at_length(mira: Grower) -> None:
    await mira.says(RUBY, "Ruby's leaves are wrinkled")
    assert details(await mira.says("yes, they are soft and slimy"))["cause"] == "root_rot"
    assert (await mira.says("yes, they are soft")).kind == "help"


async def test_another_message_keeps_the_question_open_for_half_an_hour(mira: Grower) -> None:
    await mira.says(RUBY, TUB, "brown root tips on Ruby")
    assert (await mira.says("2 l for Ruby")).kind == "dose"
    assert (await mira.says("yes")).kind in ("ask", "rescue")
    await mira.says("leave it", "brown root tips on Ruby")
    assert (await mira.later(minutes=40).says("yes")).kind == "help"


async def test_a_sign_told_of_another_plant_begins_anew(mira: Grower) -> None:
    await mira.says(RUBY, DOT, "brown root tips on Ruby")
    answer = await mira.says("white crust and brown root tips on Dot")
    assert "Flush Dot" in answer.reply


async def test_where_nothing_is_told_nothing_is_made_up(mira: Grower) -> None:
    await mira.says(RUBY, "what is wrong with Ruby")
    answer = await mira.says("don't know", "don't know", "don't know", "don't know")
    assert details(answer)["cause"] is None
    assert "I cannot tell what it is" in answer.reply
    assert "No feed for 14 days" in answer.reply


# --- words for all of it --------------------------------------------------------------------------


def test_every_sign_question_cause_and_caution_has_words() -> None:
    words = wording("en")
    wanted = {f"sign-{code}" for code in signs()} | {f"cause-{code}" for code in causes()}
    wanted |= {f"ask-rescue-{code}" for code, sign in signs().items() if sign.ask}
    wanted |= {f"caution-{code}" for code in rescue_severities()}
    assert {code for code in wanted if not words.has(code.replace("_", "-"))} == set()


# --- what was done before the signs were seen -----------------------------------------------------


async def test_a_move_that_is_told_before_the_signs_is_written_down_too(mira: Grower) -> None:
    answer = await mira.says(RUBY, "moved Ruby to the balcony, some leaves yellow")
    assert answer.kind == "ask"
    assert answer.reply.startswith("Ruby: now at balcony.")
    plan = await mira.says("no")
    assert plan.kind in ("ask", "rescue")
    placed = await mira.says("my plants")
    assert (placed.details or {})["plants"][0]["place"] == "balcony"


async def test_a_place_that_only_tells_where_it_stands_moves_nothing(mira: Grower) -> None:
    await mira.says(RUBY, "Ruby on the balcony has yellow leaves")
    placed = await mira.says("my plants")
    assert (placed.details or {})["plants"][0]["place"] is None


@pytest.mark.parametrize(
    ("text", "place"),
    [
        ("moved Ruby to the balcony, some leaves yellow", "balcony"),
        ("Ruby moved to the kitchen yesterday and has brown root tips", "kitchen"),
        ("some yellow leaves, moved Ruby to the balcony", None),
        ("Ruby has brown root tips", None),
    ],
)
def test_where_it_was_moved_is_told_with_the_signs(text: str, place: str | None) -> None:
    found = read(text, "en", names=Names(plants=("Ruby",), places=("kitchen",))).order
    assert found is not None
    assert found.verb == "rescue"
    assert found.place == place


async def test_a_flush_of_a_plant_that_is_not_on_record_is_no_second_one(mira: Grower) -> None:
    answer = await mira.says("brown root tips and white crust")
    assert answer.reply.startswith("Flush it with")


async def test_more_lists_all_its_cautions(mira: Grower) -> None:
    answer = await mira.says(RUBY, "brown root tips and white crust on Ruby")
    assert "more" in answer.choices
    told = await mira.says("more")
    assert told.kind == "cautions"
    assert len(told.reply.splitlines()) == len(answer.cautions) > 3


async def test_an_old_leaf_is_left_and_feeding_goes_on(mira: Grower) -> None:
    answer = await mira.says("leaves yellow, only the bottom leaf")
    assert answer.kind == "rescue"
    assert wording("en").say("rescue-do-leave-leaf", plant="none") in answer.reply
    assert "Feed on as usual" in answer.reply


@pytest.mark.parametrize(
    "text",
    [
        "I gave Ruby too much feed, what now", "fed Ruby too much", "gave Ruby too much fertiliser",
        "I overdid the feed with Ruby, what do I do",
    ],
)  # fmt: skip
async def test_too_much_feed_brings_no_plan_to_feed(mira: Grower, text: str) -> None:
    answer = await mira.says(TUB, RUBY, text)
    assert "fed_strong" in order(text).signs
    assert answer.kind == "rescue", answer.reply


@pytest.mark.parametrize(
    ("language", "text"),
    [
        ("de", "mit dem Dünger übertrieben bei Ruby, was jetzt"),
        ("es", "se me pasó la mano con el abono, qué hago"),
        ("es", "le puse el doble de abono a Ruby"),
        ("pl", "przesadziłam z nawozem u Ruby"),
        ("pl", "nawiozłam Ruby za mocno"),
    ],
)
def test_too_much_feed_in_other_languages(language: str, text: str) -> None:
    found = read(text, language, names=NAMES).order
    assert found is not None
    assert (found.verb, found.signs) == ("rescue", ("fed_strong",))


def test_light_that_was_too_strong_is_no_feed() -> None:
    assert order("fed Ruby, the light was too strong").verb == "fed"
