"""What a question, a story or an aside leaves alone, and which feed, water and can are meant.

The waters' shares mix by mass (FAO Irrigation and Drainage Paper 29); the rest is the records'.
"""

import pytest

from bot.records import Records
from tests.conversation.talking import Grower

FEEDS = (
    "new feed: blue, 20-20-20 powder, label 0.8 g per litre",
    "new feed: red, 10-30-20 powder, label 1 g per litre",
)
ABONO = "abono nuevo: azul, 20-20-20 en polvo, etiqueta 0,8 g por litro"
DUENGER = "neuer Dünger: blau, 20-20-20 Pulver, Etikett 0,8 g pro Liter"
NAWOZ = "nowy nawóz: niebieski, 20-20-20 proszek, etykieta 0,8 g na litr"


@pytest.fixture
def mira(sqlite_records: Records) -> Grower:
    return Grower(sqlite_records)


@pytest.mark.parametrize(
    ("feed", "line", "shelf", "label"),
    [
        (FEEDS[0], "0.5 g blue per litre gives what EC", "my shelf", "0.8 g"),
        (FEEDS[0], "does 1 g/l of blue burn roots", "my shelf", "0.8 g"),
        (FEEDS[0], "what if I used 1 g/l of blue", "my shelf", "0.8 g"),
        (FEEDS[0], "20 oz of blue", "my shelf", "0.8 g"),
        (ABONO, "1 g/l de azul quema las raices", "mi estante", "0,8 g"),
        (ABONO, "0,5 g/l azul, que EC", "mi estante", "0,8 g"),
        (DUENGER, "0,5 g blau pro Liter ergibt welchen EC", "mein Regal", "0,8 g"),
        (NAWOZ, "0,5 g niebieski na litr jakie EC da", "moje nawozy", "0,8 g"),
        # told, and no question
        (FEEDS[0], "blue: label says 1.5 g/l", "my shelf", "1.5 g"),
        (FEEDS[0], "blue is 1.5 g per litre", "my shelf", "1.5 g"),
        (ABONO, "el azul son 1,5 g/l", "mi estante", "1,5 g"),
        (DUENGER, "blau: 1,5 g pro Liter", "mein Regal", "1,5 g"),
        (NAWOZ, "niebieski: 1,5 g na litr", "moje nawozy", "1,5 g"),
    ],
)
async def test_a_question_leaves_the_label_as_it_is(
    mira: Grower, feed: str, line: str, shelf: str, label: str
) -> None:
    await mira.says(feed, line)
    assert label in (await mira.says(shelf)).reply


@pytest.mark.parametrize(
    ("line", "kept"),
    [
        ("is 12 dH hard", False), ("what EC does 4 dH water have", False),
        ("my neighbours tap is 20 dH", False), ("last year my tap was 20 dH", False),
        ("magnesium sulfate heptahydrate for 25 ppm Mg in 10 l RO", False),
        ("12 dH es dura", False), ("el grifo de mi vecina tiene 20 dH", False),
        ("ist 12 dH hart", False), ("letztes Jahr hatte mein Leitungswasser 20 dH", False),
        ("czy 12 dH to twarda", False), ("sąsiadka ma kranówkę 20 dH", False),
        ("my tap is 14 dH", True), ("mi agua del grifo tiene 14 dH", True),
        ("mein Leitungswasser hat 14 dH", True), ("moja kranówka ma 14 dH", True),
        ("yesterday I measured my tap, 14 dH", True), ("Ca 80, Mg 12, SO4 30 mg/l", True),
    ],
)  # fmt: skip
async def test_a_question_or_a_story_sets_no_water(mira: Grower, line: str, kept: bool) -> None:
    await mira.says("my scale shows 0.1 g", line)
    assert ("mg/l CaCO3" in (await mira.says("my settings")).reply) is kept


@pytest.mark.parametrize(
    "line",
    ["2 g epsom in 5 l", "epsom salt for 5 l", "1 tsp epsom salt per gallon once a month ok?"],
)
async def test_a_salt_that_is_not_on_the_shelf_is_no_feed_of_it(mira: Grower, line: str) -> None:
    await mira.says(FEEDS[0])
    assert "not on your shelf" in (await mira.says(line)).reply


async def test_a_salt_is_put_on_record_and_then_meant(mira: Grower) -> None:
    await mira.says(FEEDS[0])
    told = "magnesium sulfate 9.8 % Mg powder, label 0.3 g per litre, call it epsom"
    assert "0-0-0" in (await mira.says(told)).reply
    assert "of epsom" in (await mira.says("5 l epsom")).reply.splitlines()[0]
    assert "of blue" in (await mira.says("5 l")).reply.splitlines()[0]


@pytest.mark.parametrize(
    ("feed", "new", "line", "meant"),
    [
        (FEEDS[0], "I bought a new powder feed 20-10-20, label 1 g per litre",
         "how much of the new one for 1.5 l", True),
        (FEEDS[0], "new feed: 20-10-20 powder, label 1 g per litre", "2 l with the new feed", True),
        (FEEDS[0], "new feed: 20-10-20 powder, label 1 g per litre", "2 l", False),
        (FEEDS[0], "new feed: 20-10-20 powder, label 1 g per litre", "2 l for the new one", False),
        (ABONO, "he comprado abono nuevo en polvo 20-10-20, etiqueta 1 g por litro",
         "el nuevo cuanto para 1,5l", True),
        (ABONO, "abono nuevo: 20-10-20 en polvo, etiqueta 1 g por litro", "5 l para la nueva",
         False),
        (DUENGER, "neuer Dünger: 20-10-20 Pulver, Etikett 1 g pro Liter", "2 l mit dem neuen",
         True),
        (DUENGER, "neuer Dünger: 20-10-20 Pulver, Etikett 1 g pro Liter",
         "der neue Trieb ist da, 5 l", False),
        (NAWOZ, "nowy nawóz: 20-10-20 proszek, etykieta 1 g na litr", "2 l z nowym nawozem", True),
    ],
)  # fmt: skip
async def test_the_new_one_is_what_was_put_on_record_last(
    mira: Grower, feed: str, new: str, line: str, meant: bool
) -> None:
    await mira.says(feed, new)
    answer = await mira.says(line)
    assert answer.kind == "dose"
    assert ("20-10-20" in answer.reply.splitlines()[0]) is meant
    assert ("“" in answer.reply or "„" in answer.reply) >= meant


@pytest.mark.parametrize(
    ("line", "said"),
    [
        ("3 l of red and blue", "Reckoned for red alone, not for blue"),
        ("mix blue and red for 3 l", "Reckoned for blue alone, not for red"),
        ("can I mix blue with red", "may share a bottle"),
        ("can I mix the blue with the bloom feed", "Which two?"),
        ("3 l red", "of red"),
    ],
)
async def test_of_two_feeds_none_is_dropped_in_silence(mira: Grower, line: str, said: str) -> None:
    await mira.says(*FEEDS)
    reply = (await mira.says(line)).reply
    assert said in reply
    assert ("Reckoned" in reply) is said.startswith("Reckoned")


@pytest.mark.parametrize(
    ("first", "again", "other", "shelf"),
    [
        ("my feed is 15-30-15 powder, the label says 1 tsp per 4 litres",
         "my feed is 15-30-15 powder, 1.5 g per litre",
         "my feed is 15-30-15 powder, 1 g per litre, call it bloom", "my shelf"),
        ("mi abono es el 15-30-15, dice 1 cucharadita al ras cada 4 litros",
         "mi abono es 15-30-15 en polvo, 1,5 gramos por litro",
         "mi abono es 15-30-15 en polvo, 1 g por litro, llámalo flor", "mis abonos"),
        ("mein Dünger ist 15-30-15 Pulver, 1 TL auf 4 Liter",
         "mein Dünger ist 15-30-15 Pulver, 1,5 g pro Liter",
         "mein Dünger ist 15-30-15 Pulver, 1 g pro Liter, nenn ihn Blüte", "mein Regal"),
        ("mój nawóz to 15-30-15 proszek, 1 łyżeczka na 4 litry",
         "mój nawóz to 15-30-15 proszek, 1,5 g na litr",
         "mój nawóz to 15-30-15 proszek, 1 g na litr, nazwij go kwiat", "moje nawozy"),
    ],
)  # fmt: skip
async def test_the_same_numbers_without_a_name_are_the_same_feed(
    mira: Grower, first: str, again: str, other: str, shelf: str
) -> None:
    await mira.says(first, again)
    assert (await mira.says(shelf)).reply.count("15-30-15") == 1
    await mira.says(other)
    assert (await mira.says(shelf)).reply.count("15-30-15") == 2


@pytest.mark.parametrize(
    ("feed", "line", "left"),
    [
        ("my feed is 7-5-6 liquid, 2 ml per litre", "delete the liquid", 0),
        ("mi abono es 7-5-6 líquido, 2 ml por litro", "borra el liquido", 0),
        ("mein Dünger ist 7-5-6 flüssig, 2 ml pro Liter", "lösche den flüssigen", 0),
        ("mój nawóz to 7-5-6 płynny, 2 ml na litr", "usuń płynny", 0),
        ("my feed is 15-30-15 powder, 1 tsp per 4 litres", "delete the one by teaspoon", 0),
        ("my feed is 7-5-6 liquid, 2 ml per litre", "delete the powder", 1),
        ("mi abono es 7-5-6 líquido, 2 ml por litro", "ya no uso el liquido", 1),
        ("tengo bote azul 7-5-6", "mis abonos", 1),
    ],
)
async def test_a_feed_is_taken_away_by_what_it_is(
    mira: Grower, feed: str, line: str, left: int
) -> None:
    await mira.says(feed)
    answer = await mira.says(line)
    assert answer.reply
    assert (await mira.says("my shelf")).reply.count("7-5-6") + (
        await mira.says("my shelf")
    ).reply.count("15-30-15") == left


async def test_the_usual_feed_is_told_by_its_numbers(mira: Grower) -> None:
    await mira.says(FEEDS[0], "new feed: 20-10-20 powder, label 1 g per litre")
    assert (await mira.says("use the 20-10-20 from now on")).kind == "products"
    assert "20-10-20" in (await mira.says("2 l")).reply.splitlines()[0]


async def test_call_it_names_the_last_feed_but_not_right_after_a_plant(mira: Grower) -> None:
    await mira.says("my feed is 15-30-15 powder, 1 g per litre", "my shelf")
    assert "is now bloomy" in (await mira.says("I call it bloomy")).reply
    await mira.says("add a vanda")
    assert (await mira.says("call it Luna")).kind == "ask"


@pytest.mark.parametrize(
    ("line", "town", "also"),
    [
        ("I live in Leeds, tap EC 0.62 mS/cm, tap 17 dH, my scale shows 0.01 g",
         "Leeds", ("17 °dH", "EC 0.62", "0.01 g")),
        ("I live in Leeds and I have 3 phals in bark", "Leeds", ("3 Phalaenopsis",)),
        ("soy de rosario, tengo orquideas en el patio", "Rosario", ("No lo he usado",)),
        ("vivo en guadalajara jalisco", "Guadalajara", ("jalisco",)),
        ("ich wohne in Köln, Leitungswasser 17 dH", "Köln", ("17 °dH",)),
        ("mieszkam w Krakowie, kranówka 17 dH", "Kraków", ("17 °dH",)),
        ("I live in Valencia, Spain", "Valencia, Spain", ()),
    ],
)  # fmt: skip
async def test_what_stands_behind_a_town_is_read_or_shown(
    mira: Grower, line: str, town: str, also: tuple[str, ...]
) -> None:
    reply = (await mira.says(line)).reply
    assert reply.startswith(town)
    assert [part for part in also if part not in reply] == []


async def test_a_country_told_after_the_town_is_no_rest(mira: Grower) -> None:
    await mira.says("vivo en valencia")
    assert "España" in (await mira.says("valencia españa")).reply.splitlines()[0]
    assert (await mira.says("5 l 20-20-20")).kind == "dose"


@pytest.mark.parametrize(
    ("tap", "line", "degrees"),
    [
        ("my tap is 14 dH", "half tap half RO", "7"),
        ("my tap is 14 dH", "3 parts rain and 1 part tap, how hard is that", "3.5"),
        ("mi grifo tiene 14 dH", "3 partes de lluvia y una de canilla", "3,5"),
        ("mi grifo tiene 14 dH", "mitad grifo y mitad lluvia cuanto queda de dureza", "7"),
        ("mein Leitungswasser hat 14 dH", "halb Leitung halb Regen", "7"),
        ("moja kranówka ma 14 dH", "3 części deszczówki i 1 część kranówki, jaka twardość", "3,5"),
    ],
)
async def test_two_waters_by_parts(mira: Grower, tap: str, line: str, degrees: str) -> None:
    await mira.says(tap)
    assert f"{degrees} °dH" in (await mira.says(line)).reply


async def test_two_waters_by_parts_ask_for_what_is_not_known(mira: Grower) -> None:
    assert (await mira.says("half tap half RO")).kind == "ask"


@pytest.mark.parametrize(
    ("feed", "can", "line"),
    [
        (FEEDS[0], "my can holds 5 l", "how much for the can"),
        (ABONO, "mi cubeta es de 5 litros", "cuanto le echo a la cubeta"),
        (DUENGER, "meine Kanne fasst 5 l", "wie viel in die Kanne"),
        (NAWOZ, "moja konewka ma 5 l", "ile do konewki"),
    ],
)
async def test_the_can_that_is_known(mira: Grower, feed: str, can: str, line: str) -> None:
    await mira.says(feed)
    assert (await mira.says(line)).kind == "ask"
    assert (await mira.says(can)).kind == "kit"
    answer = await mira.says(line)
    assert answer.dose is not None
    assert answer.dose.amount == pytest.approx(5 * answer.dose.per_litre)
