"""Harm: rot, feed that was swallowed, spilled or undiluted, and what was given too strong."""

from __future__ import annotations

import pytest

from bot.records import Records, log
from bot.records.kinds import EventKind
from grammar import Names, Order, read
from tests.conversation.talking import Grower

NAMES = Names(plants=("Hugo",), products=("Blau",))
_PLANT = {
    "en": "add a phalaenopsis in bark called Hugo", "de": "neu: Phalaenopsis in Rinde namens Hugo",
    "es": "añade una phalaenopsis en corteza llamada Hugo",
    "pl": "dodaj phalaenopsis w korze o imieniu Hugo",
}  # fmt: skip
_FEED = {
    "en": "my powder is 20-20-20, label 1 g per litre, call it Blau",
    "de": "mein Pulver ist 20-20-20, 1 g pro Liter, nenn es Blau",
    "es": "mi polvo es 20-20-20, 1 g por litro, llámalo Blau",
    "pl": "mój proszek to 20-20-20, 1 g na litr, nazwij go Blau",
}
ADD = {language: (_PLANT[language], _FEED[language]) for language in _PLANT}


@pytest.fixture
def mira(sqlite_records: Records) -> Grower:
    return Grower(sqlite_records)


def order_of(line: str, language: str = "en") -> Order:
    order = read(line, language, names=NAMES).order
    assert order is not None
    return order


# --- rot -----------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("language", "line", "sign"),
    [
        ("en", "Hugo has root rot", "mushy_roots"),
        ("en", "Hugo's roots are rotting", "mushy_roots"),
        ("en", "roots are rotten", "mushy_roots"),
        ("en", "root rot what now", "mushy_roots"),
        ("en", "Hugo has rot", "rot"),
        ("en", "Hugo has crown rot", "crown_rot"),
        ("en", "rot on my phal in bark", "rot"),
        ("en", "black rot on Hugo", "black_spreading"),
        ("de", "Hugo hat Wurzelfäule", "mushy_roots"),
        ("de", "Hugos Wurzeln sind verfault", "mushy_roots"),
        ("de", "Hugo hat Herzfäule", "crown_rot"),
        ("de", "Hugo fault", "rot"),
        ("es", "Hugo tiene pudrición de raíces", "mushy_roots"),
        ("es", "raíces podridas", "mushy_roots"),
        ("es", "Hugo se está pudriendo", "rot"),
        ("pl", "Hugo ma zgniliznę korzeni", "mushy_roots"),
        ("pl", "zgniłe korzenie", "mushy_roots"),
        ("pl", "Hugo gnije", "rot"),
    ],
)
def test_rot_is_a_sign(language: str, line: str, sign: str) -> None:
    order = order_of(line, language)
    assert (order.verb, order.signs) == ("rescue", (sign,))


@pytest.mark.parametrize(
    ("line", "verb"),
    [("Hugo died of rot", "lose"), ("rot took Hugo", "lose"), ("rotten bark", "dose")],
)
def test_rot_that_asks_for_no_rescue(line: str, verb: str) -> None:
    assert order_of(line).verb == verb


async def test_rot_of_the_roots_is_settled_and_rot_somewhere_asks_for_the_roots(
    mira: Grower,
) -> None:
    await mira.says(ADD["en"][0])
    assert "Likely: root rot" in (await mira.says("Hugo has root rot")).reply
    mira.later(hours=2)
    asked = await mira.says("Hugo has rot")
    assert asked.kind == "ask"
    assert "roots soft" in asked.reply


async def test_signs_of_one_kind_are_not_those_of_another(mira: Grower) -> None:
    await mira.says("my vanda has white crust")
    plan = await mira.says("my phal has root rot")
    assert "Possible: salt burn" not in plan.reply


async def test_a_dose_for_a_rotting_plant_is_cautioned(mira: Grower) -> None:
    answer = await mira.says("2 l 20-20-20 powder for my phal with root rot")
    assert answer.kind == "dose"
    assert "ailing" in {c.code for c in answer.cautions}


@pytest.mark.parametrize("line", ["never mind", "cancel", "forget it"])
async def test_never_mind_is_no_answer_to_a_question(mira: Grower, line: str) -> None:
    await mira.says(ADD["en"][0], "Hugo has wrinkled leaves")
    left = await mira.says(line)
    assert left.kind == "help"
    assert "leave it at that" in left.reply
    assert "I had asked nothing" in (await mira.says("no")).reply


# --- people, pets, and what was spilled ----------------------------------------------------------


@pytest.mark.parametrize(
    ("language", "line", "verb", "text"),
    [
        ("en", "I drank it myself by mistake", "hurt", "swallowed"),
        ("en", "I drank 200 ml of the feed", "hurt", "swallowed"),
        ("en", "powder in my eye", "hurt", ""),
        ("en", "spilled fertilizer on my hands", "hurt", ""),
        ("en", "my son got powder in his eye", "hurt", ""),
        ("en", "baby put powder in his mouth", "pets", "child"),
        ("en", "my son swallowed some of the concentrate", "pets", "child"),
        ("en", "my cat drank 100 ml of it", "pets", ""),
        ("en", "my dog drank it", "pets", ""),
        ("en", "spilled concentrate on the floor", "spill", ""),
        ("de", "ich habe davon getrunken", "hurt", "swallowed"),
        ("de", "das Baby hat Pulver in den Mund gesteckt", "pets", "child"),
        ("de", "Konzentrat auf dem Boden verschüttet", "spill", ""),
        ("es", "me bebí un poco", "hurt", "swallowed"),
        ("es", "el bebé se metió polvo en la boca", "pets", "child"),
        ("es", "se me derramó el concentrado en el suelo", "spill", ""),
        ("pl", "wypiłam to przez pomyłkę", "hurt", "swallowed"),
        ("pl", "dziecko włożyło proszek do buzi", "pets", "child"),
        ("pl", "rozlałam koncentrat na podłogę", "spill", ""),
    ],
)
def test_who_was_harmed(language: str, line: str, verb: str, text: str) -> None:
    order = order_of(line, language)
    assert (order.verb, order.text) == (verb, text)


@pytest.mark.parametrize("line", ["Hugo tipped over", "I drank coffee", "spilled water on Hugo"])
def test_what_is_no_harm_by_feed(line: str) -> None:
    assert order_of(line).verb not in ("rescue", "hurt", "spill")


@pytest.mark.parametrize(
    ("line", "first"),
    [
        ("baby put powder in his mouth", "Call the poison centre at once"),
        ("my cat drank it", "Call a vet at once"),
        ("is that safe for my cat?", "If one drank or ate of it: call a vet"),
        ("breathed in the dust", "Go into fresh air at once"),
        ("fish pond", "If feed got into a pond or fish tank: change much of its water at once"),
        ("can I eat it", "Do not eat or drink it"),
        ("I drank it by mistake", "Swallowed: call a doctor or the poison centre at once"),
        ("spilled concentrate on the floor", "Wipe it up with paper"),
    ],
)
async def test_what_to_do_first_stands_first(mira: Grower, line: str, first: str) -> None:
    assert (await mira.says(line)).reply.startswith(first)


@pytest.mark.parametrize(
    ("language", "line"),
    [
        ("en", "forgot to dilute it!! poured it straight"),
        ("en", "spilled concentrate on Hugo"),
        ("de", "vergessen zu verdünnen"),
        ("es", "se me olvidó diluirlo"),
        ("pl", "zapomniałam rozcieńczyć"),
    ],
)
async def test_what_was_not_diluted_is_flushed_at_once(
    mira: Grower, language: str, line: str
) -> None:
    await mira.says(ADD[language][0])
    answer = await mira.says(line)
    assert answer.kind == "rescue"
    assert "1,9 l" in answer.reply or "1.9 l" in answer.reply  # twice a pot of 12 cm


#: What happened, what is said next, and what the answer to both begins with. Whom to call and to
#: rinse first: common first aid, from memory.
ASKED_ON = [
    ("en", "my dog drank the water from the can", "what now", "Call a vet at once"),
    ("en", "baby ate moss", "oh no", "Call the poison centre at once"),
    ("en", "i drank the water from the can", "is it poisonous", None),
    ("en", "powder in my eye", "help", "In an eye or on skin: rinse at once"),
    ("en", "my dog drank it", "about half a cup", "Call a vet at once"),
    ("de", "mein hund hat es getrunken", "was soll ich tun", "Sofort beim Tierarzt anrufen"),
    ("es", "mi perro se tomo el abono", "y ahora que hago", "Llama ya al veterinario"),
    ("pl", "pies to wypił", "co robić", "Od razu dzwoń do weterynarza"),
]  # fmt: skip


@pytest.mark.parametrize("known", [False, True])
@pytest.mark.parametrize(("language", "line", "further", "first"), ASKED_ON)
async def test_who_asks_on_after_an_emergency_is_told_the_same_again(
    mira: Grower, language: str, line: str, further: str, first: str | None, known: bool
) -> None:
    if known:
        await mira.says(*ADD[language], "2 l")
    told = await mira.says(line)
    again = await mira.says(further)
    assert told.kind == again.kind == "cautions"
    if first is None:  # of what was swallowed whom to call stands first in both
        assert "poison centre" in again.reply.splitlines()[0]
        return
    assert told.reply.startswith(first)
    assert again.reply.startswith(first)


async def test_an_emergency_is_over_after_half_an_hour_and_stops_no_dose(mira: Grower) -> None:
    await mira.says(*ADD["en"], "my dog drank it")
    assert (await mira.says("2 l")).kind == "dose"
    assert (await mira.says("thanks")).kind == "help"
    mira.later(minutes=40)
    assert (await mira.says("what now")).kind == "plan"


async def test_an_emergency_comes_before_an_open_question(mira: Grower) -> None:
    await mira.says(ADD["en"][0], "Hugo has wrinkled leaves")
    assert (await mira.says("my dog drank from the can")).reply.startswith("Call a vet at once")


async def test_alarm_without_a_cause_is_asked_what_happened_and_told_what_to_do(
    mira: Grower,
) -> None:
    answer = await mira.says("oh no")
    assert answer.kind == "cautions"
    assert "poison centre" in answer.reply
    assert "20-20-20" not in answer.reply


@pytest.mark.parametrize(
    ("language", "line", "goes"),
    [
        ("en", "leftover down the drain?", "never down a drain"),
        ("de", "kann das in den abfluss", "nie Abfluss"),
        ("es", "se puede tirar al inodoro?", "nunca al desagüe"),
        ("pl", "czy mogę wylać do zlewu", "nigdy zlew"),
    ],
)
async def test_what_is_left_goes_to_plants_and_down_no_drain(
    mira: Grower, language: str, line: str, goes: str
) -> None:
    # common practice, no source
    answer = await mira.says(*ADD[language], line)
    assert goes in answer.reply


@pytest.mark.parametrize(
    ("language", "line", "flush"),
    [
        ("en", "i put too much", "clear water"),
        ("en", "if I overfeed what happens", "runs freely"),
        ("de", "ich hab zu viel genommen", "klares"), ("es", "puse demasiado", "agua sola"),
        ("pl", "dałam za dużo", "czyst"),
    ],
)  # fmt: skip
async def test_too_much_without_a_figure_is_flushed(
    mira: Grower, language: str, line: str, flush: str
) -> None:
    assert flush in (await mira.says(*ADD[language], line)).reply


# --- what was given by amount and volume ---------------------------------------------------------

TOLD = [
    ("en", "I fed Hugo 10 g in 1 l", "fed"), ("en", "Hugo got 10 g in 1 l", "fed"),
    ("en", "I gave Hugo 10 g 20-20-20 in 1 l", "fed"),
    ("en", "fed Hugo with 10 g per litre", "fed"),
    ("en", "I put 50 g Blau in 5 l", "judge"), ("en", "I put 50 g 20-20-20 in 5 l", "judge"),
    ("en", "I used 50 g Blau in 5 l is that too strong", "judge"),
    ("de", "Hugo gedüngt mit 10 g in 1 l", "fed"),
    ("de", "ich habe Hugo 10 g in 1 l gegeben", "fed"),
    ("de", "ich habe 50 g Blau in 5 l aufgelöst", "judge"),
    ("es", "aboné a Hugo con 10 g en 1 l", "fed"), ("es", "puse 50 g de Blau en 5 l", "judge"),
    ("es", "eché 50 g de 20-20-20 en 5 l", "judge"),
    ("pl", "nawiozłam Hugo 10 g na 1 l", "fed"), ("pl", "wsypałam 50 g Blau na 5 l", "judge"),
]  # fmt: skip


@pytest.mark.parametrize(("language", "line", "verb"), TOLD)
async def test_what_was_given_too_strong_is_noticed(
    mira: Grower, language: str, line: str, verb: str
) -> None:
    await mira.says(*ADD[language])
    answer = await mira.says(line)
    assert answer.kind == ("log" if verb == "fed" else "cautions")
    assert "10" in answer.reply  # times the most
    assert "1000 %" in answer.reply
    last = answer.reply.splitlines()[-1 if verb == "fed" else 2]
    assert any(w in last for w in ("rinse", "durchspülen", "lava", "przepłucz"))
    shelf = await mira.says({"en": "my shelf", "de": "mein Regal", "es": "mi estante",
                             "pl": "moja półka"}[language])  # fmt: skip
    assert "Blau" in shelf.reply
    assert "1 g" in shelf.reply  # what was given is no rate of the label


async def test_the_log_keeps_how_strong_it_was(mira: Grower) -> None:
    await mira.says(*ADD["en"], "I fed Hugo 10 g in 1 l")
    fine = await mira.says("fed Hugo 1 g in 4 l")
    assert fine.reply.splitlines()[0] == "Fed today: Hugo (1/4, Blau)."
    assert "fed (1000 %, Blau)" in (await mira.says("history of Hugo")).reply
    async with mira.records.reading() as session:
        entries = await log.entries(session, 1, kinds=[EventKind.FED])
    assert [e.details["strength"] for e in entries] == pytest.approx([10.0, 0.25])


async def test_an_amount_of_an_unknown_feed_is_logged_and_asked_about(mira: Grower) -> None:
    await mira.says(ADD["en"][0])
    answer = await mira.says("I fed Hugo 10 g in 1 l")
    assert answer.kind == "log"
    assert "three numbers" in answer.reply


@pytest.mark.parametrize(
    ("line", "verb"),
    [
        ("I put Hugo in the kitchen", "move"),
        ("Blau 2 g per litre", "product_change"),
        ("last time I used 5 g 20-20-20 in 5 l, how much for 3 l", "dose"),
        ("fed Hugo with Blau, quarter", "fed"),
        ("fed Hugo 2 l with Blau", "fed"),
    ],
)
def test_what_is_no_amount_that_was_given(line: str, verb: str) -> None:
    order = order_of(line)
    assert (order.verb, order.amount) == (verb, None)


# --- what runs out of a pot ----------------------------------------------------------------------


async def test_a_high_runoff_is_told_against_the_limit_with_the_flush(mira: Grower) -> None:
    await mira.says(ADD["en"][0])
    high = await mira.says("Hugo runoff EC 2.5")
    assert "over its limit of 2 mS/cm: flush it now" in high.reply
    assert "490 ml" in high.reply  # as `how salty is Hugo` has it
    assert "490 ml" in (await mira.says("how salty is Hugo")).reply
    assert "under the limit of 2 mS/cm" in (await mira.says("Hugo runoff EC 0.8")).reply


async def test_several_pots_are_told_each_by_its_limit(mira: Grower) -> None:
    await mira.says(ADD["en"][0], "add a masdevallia called Mia")
    both = await mira.says("runoff 2.5 for all")
    assert "Hugo (2) and Mia (0.8)" in both.reply
    assert "limit (mS/cm): Mia (0.8)." in (await mira.says("runoff 1.9 for all")).reply


async def test_a_runoff_without_plants_is_told_against_that_of_a_moderate_one(
    mira: Grower,
) -> None:
    assert "over the limit of 1.4" in (await mira.says("runoff EC 2.5")).reply
    assert "under the limit of 1.4" in (await mira.says("runoff EC 0.5")).reply
