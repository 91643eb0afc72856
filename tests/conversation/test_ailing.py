"""Signs that people tell in their own words, and a diagnosis that goes on over them."""

from __future__ import annotations

import pytest

from bot.conversation.wording import wording
from bot.records import Records
from tests.conversation.talking import Grower

#: A grower's plants by language: phals, a masdevallia in moss, vandas in baskets.
PLANTS = {
    "en": ("add 3 phals in bark, 12 cm pots", "add a masdevallia in sphagnum, 8 cm pot",
           "add 3 vandas in baskets", "add 2 dendrobium nobile in bark, 10 cm pots"),
    "de": ("neu: 3 Phalaenopsis in Rinde, 12-cm-Topf", "neu: Masdevallia in Sphagnum, 8-cm-Topf",
           "neu: 3 Vanda", "neu: 2 Dendrobium nobile in Rinde, 10-cm-Topf"),
    "es": ("añade 3 phalaenopsis en corteza, maceta de 12 cm",
           "añade una masdevallia en sphagnum, maceta de 8 cm", "añade 3 vandas",
           "añade 2 dendrobium nobile en corteza, maceta de 10 cm"),
    "pl": ("dodaj 3 falenopsisy w korze, doniczka 12 cm",
           "dodaj masdevallia w sphagnum, doniczka 8 cm", "dodaj 3 vandy",
           "dodaj 2 dendrobium nobile w korze, doniczka 10 cm"),
}  # fmt: skip
YELLOW = {
    "en": "yellow leaves on the phals", "de": "gelbe Blätter an den Phalaenopsis",
    "es": "hojas amarillas en las phals", "pl": "żółte liście u falenopsisów",
}  # fmt: skip


@pytest.fixture
def mira(records: Records) -> Grower:
    grower = Grower(records)
    grower.now = grower.now.replace(month=11, day=26)
    return grower


# --- answers in other words ------------------------------------------------------------------


@pytest.mark.parametrize(
    ("language", "said"),
    [
        ("en", "its just one leaf"), ("en", "the bottom one"), ("de", "ist nur ein Blatt"),
        ("de", "das unterste"), ("es", "es solo una hoja"), ("es", "la de abajo"),
        ("pl", "to tylko jeden liść"), ("pl", "ten na dole"),
    ],
)  # fmt: skip
async def test_one_leaf_answers_whether_it_is_the_oldest(
    mira: Grower, language: str, said: str
) -> None:
    answer = await mira.says(*PLANTS[language], YELLOW[language], said)
    assert answer.details is not None, answer.reply
    assert answer.details["cause"] == "old_age"


@pytest.mark.parametrize(
    ("language", "said"),
    [
        ("en", "the roots are fine"), ("en", "i dont water it much"), ("en", "water is fine"),
        ("de", "die Wurzeln sind grün"), ("de", "ich gieße sie kaum"), ("de", "gießen passt"),
        ("es", "no, las raices estan verdes"), ("es", "esque la riego poco creo"),
        ("es", "el riego está bien"), ("pl", "korzenie są zielone"), ("pl", "mało podlewam"),
        ("pl", "podlewam normalnie"),
    ],
)  # fmt: skip
async def test_what_is_told_of_roots_and_water_leads_on(
    mira: Grower, language: str, said: str
) -> None:
    first = await mira.says(*PLANTS[language], YELLOW[language])
    answer = await mira.says(said)
    assert answer.kind in ("ask", "rescue"), answer.reply
    assert answer.reply != first.reply
    assert answer.unknown == []
    soft = wording(language).say("ask-rescue-mushy-roots", plant="none", n="one", pot="no")
    asks_soft = answer.reply.endswith(soft.partition(":")[2])
    assert not (asks_soft and ("root" in said or "Wurzel" in said or "raices" in said))


async def test_a_bare_state_is_of_the_part_that_was_asked_about(mira: Grower) -> None:
    await mira.says(*PLANTS["en"])
    asked = await mira.says("limp leaves on the phals")
    assert "are roots soft" in asked.reply
    answer = await mira.says("theyre firm")
    assert answer.kind in ("ask", "rescue")
    assert "are roots soft" not in answer.reply
    after = await mira.says("leave it", "limp leaves on the masdevallia", "mushy")
    assert after.details is not None
    assert after.details["cause"] == "root_rot"


@pytest.mark.parametrize(
    ("language", "between", "no"),
    [
        ("en", "plan", "no"), ("de", "Plan", "nein"), ("es", "plan", "no"), ("pl", "plan", "nie"),
    ],
)  # fmt: skip
async def test_a_plan_between_leaves_the_question_open(
    mira: Grower, language: str, between: str, no: str
) -> None:
    await mira.says(*PLANTS[language], YELLOW[language])
    assert (await mira.says(between)).kind == "plan"
    assert (await mira.says(no)).kind in ("ask", "rescue")


async def test_a_question_of_a_diagnosis_ends_with_its_half_hour_and_when_left(
    mira: Grower,
) -> None:
    await mira.says(*PLANTS["en"], YELLOW["en"], "plan")
    assert (await mira.later(minutes=31).says("no")).kind == "help"
    await mira.says(YELLOW["en"], "leave it")
    assert (await mira.says("no")).kind == "help"


async def test_other_plants_are_named_in_a_diagnosis(mira: Grower) -> None:
    await mira.says(*PLANTS["en"], YELLOW["en"])
    answer = await mira.says("the vandas", "no")
    assert answer.kind == "ask"
    assert "Vanda" in answer.reply


# --- the first question ----------------------------------------------------------------------


@pytest.mark.parametrize(
    ("language", "said"),
    [
        ("en", "white crust on the phals"), ("de", "da ist was weißes auf der Rinde"),
        ("es", "hay algo blanco en la corteza"), ("pl", "coś białego na korze"),
    ],
)  # fmt: skip
async def test_a_crust_is_asked_for_burnt_tips_and_nothing_else(
    mira: Grower, language: str, said: str
) -> None:
    answer = await mira.says(*PLANTS[language], said)
    assert answer.reply == wording(language).say("ask-rescue-brown-root-tips")


@pytest.mark.parametrize(
    ("language", "said"),
    [
        ("en", "yellow leaf at the bottom of a phal, only the lowest"),
        ("de", "gelbes Blatt unten an der Phalaenopsis, nur das unterste"),
        ("es", "la phal tiene una hoja amarilla abajo, solo la más baja"),
        ("pl", "żółty liść na dole u falenopsisa, tylko najniższy"),
    ],
)
async def test_an_oldest_leaf_that_was_told_is_not_asked_for(
    mira: Grower, language: str, said: str
) -> None:
    assert (await mira.says(*PLANTS[language], said)).kind == "rescue"


@pytest.mark.parametrize(
    ("language", "said"),
    [
        ("en", "my dendrobium nobile has yellow leaves and they drop"),
        ("de", "mein Dendrobium nobile hat gelbe Blätter und wirft sie ab"),
        ("es", "mis dendros tienen hojas amarillas y se caen"),
        ("pl", "moje dendrobium nobile ma żółte liście i opadają"),
    ],
)
async def test_leaves_that_drop_before_the_rest_are_normal(
    mira: Grower, language: str, said: str
) -> None:
    """The nobile type drops leaves before its dry rest: common practice, no source."""
    answer = await mira.says(*PLANTS[language], said)
    assert answer.details is not None, answer.reply
    assert answer.details["cause"] == "rest"
    assert wording(language).say("rescue-rests") in answer.reply


async def test_in_growth_the_same_leaves_are_asked_about(mira: Grower) -> None:
    mira.now = mira.now.replace(month=6)
    answer = await mira.says(*PLANTS["en"], "my dendrobium nobile has yellow leaves and they drop")
    assert answer.kind == "ask"


# --- signs with an answer of their own -------------------------------------------------------

TOLD = {
    "en": {
        "small white cotton fluff on one phal, in the leaf joints": "refuse-pests",
        "tiny bugs on the vanda": "refuse-pests",
        "scale on the phal what now": "refuse-pests",
        "isopropyl on it ok?": "refuse-pests",
        "small black flies around the pots": "tell-gnats",
        "vanda roots white and dry": "tell-dry-roots",
        "sunburn on the phal leaf": "tell-sunburn",
        "masdevallia leaves dropping in the heat": "tell-heat-stress",
        "mould on the medium": "tell-mould",
        "green algae in the leca": "tell-algae",
        "the phal fell on the floor and a leaf broke": "tell-broken",
    },
    "de": {
        "weiße Watte an einer Phalaenopsis": "refuse-pests",
        "kleine Käfer auf der Vanda": "refuse-pests",
        "kleine schwarze Fliegen um die Töpfe": "tell-gnats",
        "Wurzeln der Vanda sind weiß und trocken": "tell-dry-roots",
        "Sonnenbrand auf dem Blatt der Phalaenopsis": "tell-sunburn",
        "die Masdevallia verliert in der Hitze Blätter": "tell-heat-stress",
        "Schimmel auf dem Substrat": "tell-mould",
        "grüne Algen im Blähton": "tell-algae",
        "mir ist die Vanda runtergefallen und ein Trieb ist abgebrochen": "tell-broken",
    },
    "es": {
        "pelusa blanca de algodon en una phal": "refuse-pests",
        "bichitos en la vanda": "refuse-pests",
        "mosquitas negras alrededor de las macetas": "tell-gnats",
        "raices de la vanda blancas y secas": "tell-dry-roots",
        "quemadura de sol en la hoja de la phal": "tell-sunburn",
        "a la masdevallia se le caen las hojas con el calor": "tell-heat-stress",
        "moho en el sustrato": "tell-mould",
        "algas verdes en la arlita": "tell-algae",
        "se me cayo la vanda y se rompio": "tell-broken",
    },
    "pl": {
        "biała wata na jednym falenopsisie": "refuse-pests",
        "robaczki na wandzie": "refuse-pests",
        "małe czarne muszki przy doniczkach": "tell-gnats",
        "korzenie wandy białe i suche": "tell-dry-roots",
        "poparzenie słoneczne na liściu falenopsisa": "tell-sunburn",
        "masdevallia gubi liście w upale": "tell-heat-stress",
        "pleśń na podłożu": "tell-mould",
        "glony w keramzycie": "tell-algae",
        "spadła mi vanda i się złamała": "tell-broken",
    },
}


@pytest.mark.parametrize("language", TOLD)
async def test_a_sign_beyond_feed_has_an_answer_of_its_own(mira: Grower, language: str) -> None:
    """Each: common practice, no source."""
    await mira.says(*PLANTS[language])
    for said, code in TOLD[language].items():
        answer = await mira.says(said)
        assert answer.reply == wording(language).say(code), said


@pytest.mark.parametrize(
    ("language", "crown", "leaf"),
    [
        ("en", "damping off black at the base", "black spot on phal leaf, wet and growing"),
        ("de", "Herzfäule an der Phalaenopsis",
         "schwarzer Fleck auf dem Blatt der Phalaenopsis, nass"),
        ("es", "pudricion de la corona en la phal",
         "mancha negra en la hoja de la phal, mojada y crece"),
        ("pl", "zgnilizna stożka u falenopsisa",
         "czarna plama na liściu falenopsisa, mokra i rośnie"),
    ],
)  # fmt: skip
async def test_rot_of_crown_or_leaf_is_cut_out_at_once_and_kept_dry(
    mira: Grower, language: str, crown: str, leaf: str
) -> None:
    """Cut to sound tissue, keep dry and apart: common practice, no source."""
    words = wording(language)
    await mira.says(*PLANTS[language])
    for said, first in ((crown, "rescue-do-dry-crown"), (leaf, "rescue-do-cut-to-sound")):
        answer = await mira.later(minutes=40).says(said)
        assert answer.reply.startswith(words.say(first)), said
        assert words.say("rescue-do-keep-dry") in answer.reply
        assert answer.details is not None
        assert {a["code"] for a in answer.details["actions"]} >= {"keep_apart", "cut_to_sound"}


@pytest.mark.parametrize(
    ("said", "kind"),
    [
        ("phal has no more roots", "rescue"), ("one of the phals lost all its leaves", "ask"),
        ("the vandas have new roots", "plants"), ("my scale shows 0.01 g", "kit"),
        ("2 l of 20-20-20 powder for the phals, white roots", "dose"),
        ("add a phal with green leaves in bark", "plants"),
    ],
)  # fmt: skip
async def test_neighbours_stay_what_they_are(mira: Grower, said: str, kind: str) -> None:
    assert (await mira.says(*PLANTS["en"], said)).kind == kind


# --- texts -----------------------------------------------------------------------------------


async def test_what_hangs_in_a_basket_is_not_taken_out_of_a_pot(mira: Grower) -> None:
    answer = await mira.says(*PLANTS["en"], "vanda has root rot")
    assert answer.reply.startswith("Take the 3 Vanda out of the pot or basket")
    one = await mira.says("masdevallia has root rot")
    assert one.reply.startswith("Take the Masdevallia out of the pot and")
    assert "Put it into" in one.reply


@pytest.mark.parametrize(
    ("language", "said", "undo"),
    [
        ("en", "the phals have root rot", "undo"),
        ("de", "Wurzelfäule an den Phalaenopsis", "rückgängig"),
        ("es", "las phals tienen pudricion de raices", "deshacer"),
        ("pl", "falenopsisy mają zgniliznę korzeni", "cofnij"),
    ],
)
async def test_undo_names_the_pause(mira: Grower, language: str, said: str, undo: str) -> None:
    answer = await mira.says(*PLANTS[language], said, undo)
    assert wording(language).say("event-pause") in answer.reply


@pytest.mark.parametrize(
    ("language", "crust", "how"),
    [
        ("en", "white crust on the phals", "how do i flush them"),
        ("de", "weiße Kruste auf den Phalaenopsis", "wie spüle ich sie"),
        ("es", "costra blanca en las phals", "cómo las lavo"),
        ("pl", "biały nalot u falenopsisów", "jak je przepłukać"),
    ],
)
async def test_how_to_flush_them_is_told_in_litres(
    mira: Grower, language: str, crust: str, how: str
) -> None:
    await mira.says(*PLANTS[language], crust)
    answer = await mira.says(how)
    assert answer.kind == "explain"
    assert "3 Phalaenopsis" in answer.reply
    assert wording(language).volume(5.6) in answer.reply  # 3 pots of 12 cm, twice their volume


async def test_what_a_flush_is_stays_a_word_of_the_trade(mira: Grower) -> None:
    answer = await mira.says(*PLANTS["en"], "what is a flush")
    assert answer.reply == wording("en").say("explain-flush")


@pytest.mark.parametrize(
    ("language", "said"),
    [
        ("en", "which ones do i still have"), ("en", "whats left"), ("de", "welche habe ich noch"),
        ("es", "cuales me quedan"), ("pl", "co mi zostało"),
    ],
)  # fmt: skip
async def test_what_is_left_are_the_plants(mira: Grower, language: str, said: str) -> None:
    assert (await mira.says(*PLANTS[language], said)).kind == "plants"


async def test_what_is_left_of_a_feed_is_not_the_plants(mira: Grower) -> None:
    tub = "my powder is 20-20-20, label 1 g per litre, call it blue"
    assert (await mira.says(*PLANTS["en"], tub, "whats left of the blue")).kind != "plants"
