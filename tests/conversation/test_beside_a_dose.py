"""What people ask beside a dose: amounts, home remedies, pets, two feeds in a bottle, language."""

from __future__ import annotations

from collections.abc import Iterator
from importlib import resources
from pathlib import Path
from types import SimpleNamespace

import pytest

import bot.conversation.wording as wordings
import grammar.lexicon as lexicons
from bot.conversation.talk import Conversation
from bot.conversation.turn import Incoming
from bot.records import Records, owners
from bot.records.kinds import OwnerKind
from grammar import Names, Order, read
from tests.conversation.talking import Grower

NAMES = Names(plants=("Ruby", "Sugar"), products=("blue tub",), places=("kitchen",))
TUB = "my powder is 20-20-20, label 1 g per litre, call it blue tub"
#: What a phone shows without scrolling, roughly; ours.
PHONE_CHARS = 320


@pytest.fixture
def mira(sqlite_records: Records) -> Grower:
    return Grower(sqlite_records)


def order_of(line: str) -> Order:
    order = read(line, "en", names=NAMES).order
    assert order is not None
    return order


# --- what is meant -------------------------------------------------------------------------------

ASKED = [
    ("our language is english", "language"), ("language: en", "language"),
    ("group language german", "language"), ("can you speak german?", "language"),
    ("answer in polish please", "language"),
    ("10 l of 20-20-20, two tablespoons, is that too much?", "judge"),
    ("I gave 5 ml in 2 l of the 10-8-6, ok?", "judge"),
    ("is 2 g of blue tub in 4 l too much?", "judge"),
    ("is half a teaspoon in 3 l too much", "judge"),
    ("5 ml a litre of 7-5-6, is that ok?", "judge"),
    ("is 1 g in 5 l enough?", "judge"),
    ("can it drink coffee", "remedy"), ("can it drink coffe", "remedy"),
    ("banana water for orchids?", "remedy"), ("egg shells", "remedy"),
    ("may I give Ruby milk", "remedy"), ("what about rice water", "remedy"),
    ("is that safe for my cat?", "pets"), ("is that save for my cat?", "pets"),
    ("my cat ate some of the feed", "pets"), ("our dog drank from the can", "pets"),
    ("are phals poisonous for dogs?", "pets"),
    ("can I mix 20-20-20 and calcium nitrate 15-0-0 + 26 CaO in one bottle", "together"),
    ("can blue tub and 15-0-0 + 19Ca share a bottle?", "together"),
]  # fmt: skip


@pytest.mark.parametrize(("line", "verb"), ASKED)
def test_it_is_understood(line: str, verb: str) -> None:
    assert order_of(line).verb == verb


MISSES = [
    ("5 l 20-20-20 powder, enough for my phals?", "dose"), ("EC 1.2, too strong?", "dose"),
    ("is 1.3 ms too strong for Ruby", "meter"), ("my scale shows 0.1 g, ok?", "kit"),
    ("fed Ruby, half strength", "fed"), ("500 ml stock of blue tub, ok?", "stock"),
    ("I bought 500 g of blue tub for 12 €, is that too much?", "product_change"),
    ("5 l blue tub with my coffee", "dose"), ("add a phal called Coffee", "add"),
    ("watered Ruby while the tea brewed", "clear"), ("fed Sugar, quarter", "fed"),
    ("what did Sugar get?", "history"), ("fed Ruby, the cat watched", "fed"),
    ("Ruby has brown root tips, the dog knocked her over", "rescue"),
    ("5 l 20-20-20 powder, my cat sits here", "dose"), ("speak up", "loud"),
    ("5 l 20-20-20 powder in the language of my aunt", "dose"),
    ("can blue tub be used weekly", "dose"), ("my phals are in bark in the kitchen", "correct"),
]  # fmt: skip


@pytest.mark.parametrize(("line", "verb"), MISSES)
def test_what_only_looks_like_it_stays_what_it_is(line: str, verb: str) -> None:
    assert order_of(line).verb == verb


@pytest.mark.parametrize(
    ("line", "amount", "unit", "volume_l", "given"),
    [
        ("10 l of 20-20-20, two tablespoons, is that too much?", 6.0, "tsp", 10.0, False),
        ("I gave 5 ml in 2 l of the 10-8-6, ok?", 5.0, "ml", 2.0, True),
        ("2 ml per litre of 7-5-6, too strong?", 2.0, "ml", 1.0, False),
        ("is half a teaspoon in 3 l too much", 0.5, "tsp", 3.0, False),
        ("1/4 oz of blue tub in 1 us gallon, too much?", 7.087, "g", 3.785, False),
        ("is 2 g too much?", 2.0, "g", None, False),
        ("a capful of blue tub in 2 l, too much?", None, "loose", 2.0, False),
    ],
)
def test_an_amount_and_its_water_are_told_apart(
    line: str, amount: float | None, unit: str, volume_l: float | None, given: bool
) -> None:
    reading, order = read(line, "en", names=NAMES), order_of(line)
    assert order.amount == (None if amount is None else pytest.approx(amount, rel=1e-3))
    assert order.unit == unit
    assert reading.volume_l == (None if volume_l is None else pytest.approx(volume_l, rel=1e-3))
    assert order.given is given


# --- is it too much ------------------------------------------------------------------------------


async def test_spoons_that_are_too_much_are_said_to_be_and_by_how_much(mira: Grower) -> None:
    answer = await mira.says("10 l of 20-20-20, two tablespoons, is that too much?")
    told = answer.details or {}
    # 6 level teaspoons of 6 g (measures.toml) are 36 g; most for an unknown plant 125 mg/l N from
    # 20 %: 0.625 g/l, 6.25 g; full strength 200 mg/l N: 10 g, so 360 % and 720 mg/l
    assert told["verdict"] == "over"
    assert told["amount"] == pytest.approx(36.0)
    assert told["most"] == pytest.approx(6.25)
    assert told["strength"] == pytest.approx(3.6)
    assert told["elements_mg_l"]["N"] == pytest.approx(720.0)
    assert answer.reply.startswith("Too much: 5.8 times the most.")
    assert "not used" not in answer.reply
    assert "1994" in (await mira.says("why")).reply


async def test_what_was_given_too_strong_is_rinsed_out(mira: Grower) -> None:
    answer = await mira.says("I gave 5 ml in 2 l of the 10-8-6, ok?")
    # 5 ml x 1.2 kg/l x 10 % in 2 l: 300 mg/l N
    assert (answer.details or {})["elements_mg_l"]["N"] == pytest.approx(300.0)
    assert "rinse" in answer.reply
    assert "1.2 kg a litre" in answer.reply


@pytest.mark.parametrize(
    ("grams", "verdict"),
    [("0.2 g", "weak"), ("1 g", "fine"), ("2 g", "strong"), ("2.5 g", "strong"), ("3 g", "over")],
)
async def test_each_amount_gets_its_verdict(mira: Grower, grams: str, verdict: str) -> None:
    # label 1 g/l: a quarter in 4 l is 1 g; 125 mg/l N, the most, are 2.5 g
    answer = await mira.says(TUB, f"is {grams} of blue tub in 4 l too much?")
    assert (answer.details or {})["verdict"] == verdict


async def test_the_label_on_record_is_not_changed_by_asking(mira: Grower) -> None:
    await mira.says(TUB, "is 3 g of blue tub in 4 l too much?")
    assert "label 1 g per litre" in (await mira.says("my shelf")).reply


async def test_the_most_sensitive_plant_decides(mira: Grower) -> None:
    answer = await mira.says("5 g 20-20-20 powder in 5 l for masdevallia, too strong?")
    # 50 mg/l N from 20 %: 0.25 g/l
    assert (answer.details or {})["most"] == pytest.approx(1.25)
    assert "At most 1.2 g" in answer.reply  # never rounded up


async def test_it_goes_on_from_the_last_dose(mira: Grower) -> None:
    answer = await mira.says("4 l 20-20-20 powder, label 1 g per litre", "is 3 g too much?")
    assert (answer.details or {})["verdict"] == "over"


async def test_a_whole_question_goes_on_from_nothing(mira: Grower) -> None:
    line = "is 2 g of 20-20-20 powder in 4 l too much?"
    answer = await mira.says("4 l 13-3-15 powder, masdevallia, winter", line)
    # 125 mg/l N, the most for an unknown plant: 2.5 g; the masdevallia before would bear 1 g
    assert (answer.details or {})["most"] == pytest.approx(2.5)


@pytest.mark.parametrize(
    ("line", "asks"),
    [
        ("is 5 ml in 2 l too much?", "Of which feed?"),
        ("is 0.5 g of 20-20-20 too much?", "In how many litres?"),
        ("a capful of 7-5-6 in 2 l, too much?", "How much is that?"),
        ("is 2 g of 0-10-10 in 2 l too much?", "rate on the label"),
    ],
)
async def test_what_is_missing_is_asked_for(mira: Grower, line: str, asks: str) -> None:
    answer = await mira.says(line)
    assert answer.kind == "ask"
    assert asks in answer.reply


async def test_resting_plants_get_none_however_little(mira: Grower) -> None:
    line = "is 1 g of 20-20-20 in 5 l too much for dendrobium nobile in winter?"
    assert (await mira.says(line)).kind == "no_feed"


# --- remedies, pets, bottles ---------------------------------------------------------------------


@pytest.mark.parametrize(
    ("line", "names"),
    [("can it drink coffe", "coffee"), ("banana water for orchids?", "banana water"),
     ("can I give my phal black tea", "black tea"), ("egg shells?", "egg shells")],
)  # fmt: skip
async def test_a_home_remedy_gets_an_honest_no(mira: Grower, line: str, names: str) -> None:
    answer = await mira.says(line)
    assert answer.kind == "refused"
    assert f"No dose for {names}" in answer.reply
    assert "a feed with its numbers" in answer.reply
    assert len(answer.reply) <= PHONE_CHARS


async def test_egg_shells_point_to_calcium(mira: Grower) -> None:
    assert "calcium" in (await mira.says("egg shells?")).reply


@pytest.mark.parametrize("line", ["is that save for my cat?", "our dog drank from the can"])
async def test_pets_and_children_come_first(mira: Grower, line: str) -> None:
    answer = await mira.says("5 l 20-20-20 powder", line)
    assert answer.kind == "cautions"
    assert "vet" in answer.reply
    assert "poison centre" in answer.reply


async def test_two_feeds_by_their_numbers_get_the_rules_of_mixing(mira: Grower) -> None:
    # calcium never with phosphates in one concentrate (common practice, no source)
    line = "can I mix 20-20-20 and calcium nitrate 15-0-0 + 26 CaO in one bottle"
    answer = await mira.says(line)
    assert answer.kind == "stock"
    assert "must not share" in answer.reply
    codes = {c["code"] for c in (answer.details or {})["bottle"]}
    assert "calcium-phosphate" in codes
    assert (await mira.says("my shelf")).reply.startswith("Nothing on your shelf")


@pytest.mark.parametrize("line", ["can I put my 13-3-15 + 8Ca powder and 20-20-20 in one bottle"])
async def test_a_label_keeps_its_own_extras(mira: Grower, line: str) -> None:
    assert [dict(f.extras) for f in order_of(line).feeds] == [{"Ca": 8.0}, {}]
    assert (await mira.says(line)).kind == "stock"


@pytest.mark.parametrize(
    ("line", "kind"),
    [("can I keep 20-20-20 in one bottle", "ask"),
     ("can 90-20-20 and 15-0-0 share a bottle", "refused"),
     ("can 0-0-0 and 15-0-0 share a bottle", "refused")],
)  # fmt: skip
async def test_half_a_question_and_an_impossible_label(mira: Grower, line: str, kind: str) -> None:
    assert (await mira.says(line)).kind == kind


# --- short enough for a phone --------------------------------------------------------------------


@pytest.mark.parametrize(
    "line", ["slow release granules for 5 l", "500 ml stock of blue tub", "2 l blue tub, quarter"]
)
async def test_it_fits_a_phone_with_the_amount_first(mira: Grower, line: str) -> None:
    reply = (await mira.says(TUB, line)).reply
    longest = max(reply.splitlines(), key=len)
    assert len(longest) <= 220
    assert line.startswith("slow") or reply[0].isdecimal()


# --- counts --------------------------------------------------------------------------------------


async def test_what_was_undone_counts_no_longer(mira: Grower) -> None:
    await mira.says("add 2 vandas in bark", "undo", "add 3 vandas in bark")
    assert (await mira.says("my plants")).reply.startswith("3 plants")
    assert "1 entry of plants" in (await mira.says("export")).reply
    assert "1 entry of plants" in (await mira.says("forget me")).reply
    assert "1 entry of plants" in (await mira.says("yes")).reply


# --- who said it, where people are named ---------------------------------------------------------


async def test_a_diary_names_people_where_the_channel_does(sqlite_records: Records) -> None:
    tom = Grower(sqlite_records, name="Tom", group="club")
    mia = Grower(sqlite_records, name="Mia", group="club", administers=False)
    await tom.says("add 2 vandas in bark")
    await mia.says("add 3 phals in bark")
    said = await tom.says("show the log")
    assert "today (you): added: 2 Vanda" in said.reply
    assert "today (Mia): added: 3 Phalaenopsis" in said.reply
    assert not any("by" in entry for entry in (said.details or {})["entries"])
    assert "3 Phalaenopsis" in (await mia.says("undo")).reply
    assert "Nothing of yours" in (await mia.says("undo")).reply


# --- the language --------------------------------------------------------------------------------


@pytest.mark.parametrize("line", ["my language is english", "language: en"])
async def test_a_language_we_have_is_set_and_shown(mira: Grower, line: str) -> None:
    assert (await mira.says(line)).reply == "From now on I answer in English."
    assert "Language: English" in (await mira.says("my settings")).reply
    assert "settings changed" in (await mira.says("undo")).reply


@pytest.mark.parametrize(
    ("line", "says"),
    [("our language is dutch", "Dutch is not there yet"), ("language: fr", "French is not"),
     ("language xyzzy", "no language called “xyzzy”"), ("language", "Which language?")],
)  # fmt: skip
async def test_a_language_we_do_not_have_is_said_to_be_missing(
    mira: Grower, line: str, says: str
) -> None:
    reply = (await mira.says(line)).reply
    assert says in reply
    known = [name for name in ("English", "German", "Polish", "Spanish") if name in reply]
    assert known[0] == "English"
    assert "Language:" not in (await mira.says("my settings")).reply


@pytest.fixture
def dutch(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Iterator[None]:
    """One more language: a Fluent file and a lexicon, and nothing else."""
    spoken, read_ = tmp_path / "wording", tmp_path / "lexicon"
    spoken.mkdir()
    read_.mkdir()
    for package, folder, ending in (
        (wordings.__name__, spoken, ".ftl"), (lexicons.__name__, read_, ".toml"),
    ):  # fmt: skip
        for entry in resources.files(package).iterdir():
            if entry.name.endswith(ending):
                (folder / entry.name).write_text(entry.read_text("utf-8"), "utf-8")
    ftl = (spoken / "en.ftl").read_text("utf-8")
    ftl = ftl.replace("plants-none-group = This group has", "plants-none-group = Geen planten")
    ftl = ftl.replace("menu-plants-says = my plants", "menu-plants-says = mijn planten")
    (spoken / "nl.ftl").write_text(ftl, "utf-8")
    toml = (read_ / "en.toml").read_text("utf-8").replace('language = "en"', 'language = "nl"', 1)
    toml = toml.replace('"my plants"', '"mijn planten"')
    (read_ / "nl.toml").write_text(toml, "utf-8")
    folders = {wordings.__name__: spoken, lexicons.__name__: read_}
    found = SimpleNamespace(files=folders.__getitem__)
    monkeypatch.setattr(wordings, "resources", found)
    monkeypatch.setattr(lexicons, "resources", found)
    _forget_languages()
    yield
    monkeypatch.undo()
    _forget_languages()


def _forget_languages() -> None:
    kept = (
        wordings.languages, wordings.wording, wordings._messages, lexicons.languages, lexicons.load,
    )  # fmt: skip
    for known in kept:
        known.cache_clear()


async def test_a_new_language_takes_its_two_files_and_nothing_else(
    dutch: None, sqlite_records: Records
) -> None:
    tom = Grower(sqlite_records, name="Tom", group="club")
    assert (await tom.says("our language is dutch")).language == "nl"
    async with sqlite_records.reading() as session:
        address = owners.Address(OwnerKind.GROUP, "test", "club")
        owner = await owners.find(session, address)
    assert owner is not None
    assert owner.language == "nl"
    assert (await tom.says("mijn planten")).reply.startswith("Geen planten")
    alone = Grower(sqlite_records, name="Tom")
    assert (await alone.says("my plants")).language == "en"


@pytest.mark.parametrize(
    ("phone", "set_to", "answers"),
    [("nl", "", "nl"), ("nl", "en", "en"), ("en", "nl", "nl"), ("xx", "", "en")],
)
async def test_a_command_is_said_in_the_language_of_the_answer(
    dutch: None, sqlite_records: Records, phone: str, set_to: str, answers: str
) -> None:
    tom = Grower(sqlite_records, name="Tom")
    if set_to:
        await tom.says(f"language {set_to}")
    incoming = Incoming(
        text="", person="Tom", channel="test", said_at=tom.now, menu="plants", phone_language=phone
    )
    answer = await Conversation(sqlite_records).answer(incoming)
    assert (answer.kind, answer.language) == ("plants", answers)


async def test_a_language_from_elsewhere_breaks_nothing(mira: Grower) -> None:
    await mira.says("add 2 vandas in bark")
    async with mira.records.writing() as session:
        address = owners.Address(OwnerKind.PERSON, "test", "Mira")
        owner = await owners.find(session, address)
        assert owner is not None
        owner.language = "tlh"
    assert (await mira.says("my plants")).language == "en"


# --- a plant that ails, a water that is called hard ----------------------------------------------


@pytest.mark.parametrize(
    "line",
    [
        "phal has root rot, 1 l 20-20-20 powder half",
        "1 l 20-20-20 powder for my phal with yellow leaves",
        "2 l für eine Phal mit gelben Blättern, 20-20-20 Pulver",
        "1 l 20-20-20 polvo para una phal con hojas amarillas",
        "1 l 20-20-20 proszek dla falka, ma żółte liście",
    ],
)
async def test_who_asks_for_feed_for_an_ailing_plant_is_warned_first(
    mira: Grower, line: str
) -> None:
    answer = await mira.says(line)
    assert answer.cautions[0].code == "ailing"


async def test_a_sound_plant_brings_no_such_warning(mira: Grower) -> None:
    for line in (
        "phal, no yellow leaves, 1 l 20-20-20 powder",
        "phal with new roots, 1 l 20-20-20",
    ):
        answer = await mira.says(line)
        assert "ailing" not in [c.code for c in answer.cautions], line


@pytest.mark.parametrize(
    "line",
    [
        "my water is very hard", "we have hard water", "mein Wasser ist sehr hart",
        "mi agua es muy dura", "moja woda jest bardzo twarda",
    ],
)  # fmt: skip
async def test_how_hard_a_hard_water_is_gets_asked(mira: Grower, line: str) -> None:
    answer = await mira.says(line)
    assert answer.kind == "ask"
    assert "18 dH" in answer.reply


async def test_a_water_called_hard_counts_as_hard_until_a_figure_is_told(mira: Grower) -> None:
    told = await mira.says("very hard tap water, phal in bark, 2 l 20-20-20 powder quarter")
    figure = await mira.says("tap 5 dH, not very hard, phal, 2 l 20-20-20 powder quarter")
    assert "hard-water" in [c.code for c in told.cautions]
    assert "hard-water" not in [c.code for c in figure.cautions]


async def test_too_strong_is_asked_of_what_was_given_last(mira: Grower) -> None:
    """Not of the dose before it, which was right."""
    await mira.says("my liquid is 6-4-7, label 5 ml per litre, call it bloom", "add a phal")
    dose = await mira.says("1 l bloom for the phal")
    assert dose.kind == "dose"
    entry = await mira.says("fed the phal, 5 ml bloom in 1 l")
    judged = await mira.says("was that too strong?")
    assert "Too much" in entry.reply
    assert judged.reply.splitlines()[0] in entry.reply
    await mira.says("2 l bloom for a vanda, quarter")  # what is asked now is this
    assert "25 %" in (await mira.says("is that too strong?")).reply
    mira.later(hours=2)
    assert "Too much" not in (await mira.says("was that too strong?")).reply


async def test_what_was_picked_is_judged_and_what_was_taken_back_is_not(mira: Grower) -> None:
    await mira.says("my liquid is 6-4-7, label 5 ml per litre, call it bloom")
    await mira.says("add a phal in the kitchen", "add a phal on the balcony")
    assert (await mira.says("fed one phal, 5 ml bloom in 1 l")).ask
    await mira.says("2")
    assert "Too much" in (await mira.says("was that too strong?")).reply
    await mira.says("undo")
    assert "Too much" not in (await mira.says("was that too strong?")).reply
