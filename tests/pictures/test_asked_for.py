"""Pictures asked for in a conversation: what they show is what the texts say."""

from __future__ import annotations

import io
from datetime import UTC, date, datetime, timedelta
from typing import Any

import pytest
from PIL import Image

from bot.conversation.answer import Answer
from bot.conversation.turns.pots import pictures as asked
from bot.conversation.turns.pots import year as picture_year
from bot.pictures import PicturesMissing
from bot.pictures import card as card_drawn
from bot.pictures import salts as salts_drawn
from bot.pictures import year as year_drawn
from bot.pictures.year import MOST_ROWS, Year
from bot.records import Records, log, owners, plants
from bot.records.kinds import EventKind
from tests.conversation.talking import Grower

RUBY = "I have a masdevallia called Ruby in sphagnum, 8 cm pot"
NOBLE = "I have a dendrobium nobile called Noble in bark, 10 cm pot"
TUB = "my powder is 20-20-20, label 1 g per litre, 12 euros for 500 g, call it blue tub"
#: More than there are rows.
KINDS = [
    "Phalaenopsis", "Vanda", "Masdevallia", "Cymbidium", "Oncidium", "Paphiopedilum", "Cattleya",
    "Dendrobium nobile", "Miltoniopsis", "Zygopetalum", "Brassia", "Coelogyne", "Catasetum",
    "Lycaste", "Stanhopea", "Angraecum", "Phragmipedium",
]  # fmt: skip
MONTHS = ("Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec")


@pytest.fixture
def mira(records: Records) -> Grower:
    return Grower(records)


@pytest.fixture
def drawn(monkeypatch: pytest.MonkeyPatch) -> list[Any]:
    """What is given to be drawn, which is drawn all the same."""
    seen: list[Any] = []

    for module in (year_drawn, salts_drawn, card_drawn):
        right = module.draw

        def draw(data: Any, right: Any = right) -> bytes:
            seen.append(data)
            return bytes(right(data))

        monkeypatch.setattr(module, "draw", draw)
    return seen


def shown(answer: Answer) -> Image.Image:
    assert answer.picture is not None, answer.reply
    assert answer.picture.alt
    assert answer.picture.name.endswith(".png")
    image = Image.open(io.BytesIO(answer.picture.content))
    image.load()
    return image


def months(answer: Answer, row: int = 0) -> dict[str, str]:
    rows = (answer.details or {})["rows"]
    return dict(zip(MONTHS, rows[row]["months"], strict=True))


# --- the year ------------------------------------------------------------------------------------


async def test_the_year_says_what_was_done_and_what_is_to_come(mira: Grower) -> None:
    await mira.says("I live in Porto", NOBLE, TUB, "fed Noble on 2 may", "clear water for Noble")
    await mira.says("flushed Noble on 20 may")
    answer = await mira.says("show my year")
    assert answer.kind == "year"
    assert shown(answer).width == 1080
    told = months(answer)
    assert (told["Apr"], told["May"], told["Jun"], told["Jul"]) == (
        "blank", "fed", "watered", "feed"
    )  # fmt: skip
    assert (told["Oct"], told["Dec"]) == ("rest", "rest")
    assert (answer.details or {})["rows"][0]["flushed"] == [5]
    line = answer.reply.splitlines()[1]
    assert "Noble: fed May; clear water given Jun; flushed May; to feed Jul–" in line
    assert "rests Oct–Dec" in line


async def test_winter_is_less_than_the_usual_of_the_plant(mira: Grower) -> None:
    await mira.says("I live in Porto", "add 3 phal seedlings in sphagnum, 6 cm pots")
    told = months(await mira.says("my year"))
    assert told["Jul"] == told["Nov"] == "feed"  # seedlings in moss always get less than others
    assert told["Dec"] == "less"


async def test_in_december_the_present_month_is_less(mira: Grower) -> None:
    mira.now = datetime(2026, 12, 5, 9, tzinfo=UTC)
    await mira.says("I live in Porto", "add 3 phals in bark, 12 cm pots")
    assert months(await mira.says("my year"))["Dec"] == "less"


async def test_south_of_the_equator_the_year_is_turned(mira: Grower) -> None:
    await mira.says("I live in Sydney", NOBLE, "add 3 phals in bark, 12 cm pots")
    answer = await mira.says("picture of the year")
    assert months(answer, 0)["Jun"] == "rest"
    assert months(answer, 0)["Dec"] == "feed"
    assert months(answer, 1)["Jun"] == "less"
    assert months(answer, 1)["Sep"] == "feed"


async def test_where_nobody_said_where_they_live_the_north_is_told(mira: Grower) -> None:
    await mira.says(NOBLE)
    assert "of the north" in (await mira.says("my year")).reply
    await mira.says("I live in Porto")
    assert "of the north" not in (await mira.says("my year")).reply


async def test_a_pause_of_a_rescue_holds_this_month_only(mira: Grower) -> None:
    await mira.says("I live in Porto", RUBY, "brown mushy roots and a sour smell on Ruby")
    assert "no feed" in (await mira.says("show my plants")).reply
    told = months(await mira.says("my year"))
    assert told["Jun"] == "clear"
    assert told["Nov"] == "feed"


async def test_a_plant_told_to_rest_rests(mira: Grower) -> None:
    await mira.says("I live in Porto", RUBY, "Ruby is resting")
    assert set(months(await mira.says("my year")).values()) == {"blank", "rest"}


async def test_the_year_of_some(mira: Grower) -> None:
    await mira.says(RUBY, NOBLE, "add 3 phals in bark, 12 cm pots")
    answer = await mira.says("the year of the phals as a picture")
    rows = (answer.details or {})["rows"]
    assert [row["plants"] for row in rows] == ["3 Phalaenopsis"]


async def test_what_the_log_took_back_is_not_shown(mira: Grower) -> None:
    await mira.says(RUBY, "fed Ruby yesterday", "undo")
    assert months(await mira.says("my year"))["Jun"] == "feed"


async def test_no_plants_and_no_such_plant(mira: Grower) -> None:
    answer = await mira.says("show my year")
    assert (answer.kind, answer.picture) == ("ask", None)
    await mira.says(RUBY)
    answer = await mira.says("the year of the vandas as a picture")
    assert (answer.kind, answer.picture) == ("ask", None)


async def _collected(mira: Grower, records: Records, count: int, *, kinds: list[str]) -> None:
    """Many plants of some kinds; every seventh was fed, each in a month of its own."""
    await mira.says("I live in Porto")
    async with records.writing() as session:
        owner = await owners.find(session, mira.incoming("x").address)
        assert owner is not None
        said = await log.begin(session, owner.id, on=date(2026, 1, 1), said_at=mira.now)
        ids = [
            (await plants.add(said, genus=kinds[n % len(kinds)], name=f"N{n}", medium="bark")).id
            for n in range(count)
        ]
        await log.record(
            said,
            (
                log.Entry(EventKind.FED, plant_id, on=date(2026, 1 + n % 5, 3))
                for n, plant_id in enumerate(ids)
                if n % 7 == 0
            ),
        )


async def test_500_plants_are_summed_up_and_none_is_lost(
    mira: Grower, records: Records, drawn: list[Year]
) -> None:
    await _collected(mira, records, 500, kinds=KINDS)
    answer = await mira.says("show my year")
    assert shown(answer).height < 2000
    (year,) = drawn
    assert len(year.rows) == MOST_ROWS
    counts = [int(row.label.split()[0]) for row in year.rows]
    assert sum(counts) == 500
    assert year.rows[-1].label == f"{counts[-1]} more"
    assert "differ" in year.rows[0].cells


async def test_many_alike_are_one_row(mira: Grower, records: Records, drawn: list[Year]) -> None:
    await _collected(mira, records, 60, kinds=["Phalaenopsis"])
    await mira.says("show my year")
    labels = [row.label for row in drawn[0].rows]
    assert 1 < len(labels) <= MOST_ROWS
    assert (
        sum(int(label.split()[0]) for label in labels if label[0].isdigit())
        + sum(not label[0].isdigit() for label in labels)
        == 60
    )


# --- the salts -----------------------------------------------------------------------------------


async def _fed(mira: Grower, weeks: int) -> None:
    for _ in range(weeks):
        await mira.later(days=7).says("fed Ruby quarter")


async def test_the_line_ends_at_the_figure_of_the_text(mira: Grower, drawn: list[Any]) -> None:
    await mira.says(RUBY, TUB, "my water is rain")
    await _fed(mira, 4)
    await mira.says("flushed Ruby")
    await _fed(mira, 3)
    await mira.says("runoff 1.1 from Ruby", "clear water for Ruby")
    mira.later(days=3)
    plain = await mira.says("how salty is Ruby")
    answer = await mira.says("salts of Ruby as a picture")
    assert answer.reply == plain.reply
    assert shown(answer).width == 1080
    (salts,) = drawn
    told = (plain.details or {})["pots"][0]
    last = salts.points[-1]
    assert last.on == mira.today
    assert last.ec == pytest.approx(told["ec_ms_cm"])
    assert last.high - last.ec == pytest.approx(2 * told["ec_sd_ms_cm"])
    assert salts.ceiling == pytest.approx(told["ceiling_ms_cm"])


async def test_all_of_the_log_is_marked_also_before_the_flush(
    mira: Grower, drawn: list[Any]
) -> None:
    await mira.says(RUBY, TUB, "my water is rain")
    await _fed(mira, 4)
    await mira.says("flushed Ruby")
    await _fed(mira, 2)
    await mira.says("runoff 1.1 from Ruby", "clear water for Ruby")
    await mira.says("chart of the salts in Ruby")
    (salts,) = drawn
    kinds = [str(event.kind) for event in salts.events]
    assert kinds == ["fed"] * 4 + ["flush"] + ["fed"] * 2 + ["reading", "clear"]
    assert [e.told for e in salts.events if e.told] == ["1.1"]
    days = [point.on for point in salts.points]
    assert days == sorted(days)
    assert salts.scale[-1][0] >= max(salts.ceiling, *(p.ec for p in salts.points))
    flushed = next(e.on for e in salts.events if e.kind == "flush")
    on_that_day = [p.ec for p in salts.points if p.on == flushed]
    assert on_that_day[-1] < on_that_day[-2] / 2


async def test_an_empty_log_is_drawn_as_the_guess_it_is(mira: Grower, drawn: list[Any]) -> None:
    await mira.says(RUBY)
    answer = await mira.says("show the salts of Ruby")
    assert "it is a guess" in answer.reply
    shown(answer)
    (salts,) = drawn
    assert (len(salts.points), salts.events) == (1, ())
    assert answer.picture is not None
    assert "since" not in answer.picture.alt


async def test_a_fresh_medium_begins_anew(mira: Grower, drawn: list[Any]) -> None:
    await mira.says(RUBY, TUB, "my water is rain")
    await _fed(mira, 3)
    await mira.says("repotted Ruby into bark, 8 cm pot")
    await mira.later(days=30).says("fed Ruby quarter")
    await mira.says("show the salts of Ruby")
    (salts,) = drawn
    # what was fed on the day itself stands beside the repotting, the days before it do not
    assert min(e.on for e in salts.events) >= mira.today - timedelta(days=31)


async def test_of_several_the_saltiest_is_drawn(mira: Grower, drawn: list[Any]) -> None:
    await mira.says(RUBY, TUB, "my water is rain", "add 3 phals in bark, 12 cm pots")
    await _fed(mira, 3)
    answer = await mira.says("picture of the salts in everything")
    assert drawn[0].title == "Ruby"
    assert answer.reply.splitlines()[1].startswith("- Ruby")


async def test_a_mount_has_no_chart(mira: Grower) -> None:
    await mira.says("add a vanda mounted, called Blue")
    answer = await mira.says("chart of the salts in Blue")
    assert answer.picture is None
    assert "hardly any salts" in answer.reply


# --- the card ------------------------------------------------------------------------------------


async def test_a_card_shows_the_last_dose(mira: Grower, drawn: list[Any]) -> None:
    dose = await mira.says(TUB, "my tap is 9 dH", RUBY, "2 l for Ruby")
    answer = await mira.says("dose card")
    assert answer.reply == dose.reply
    assert answer.dose == dose.dose
    assert answer.choices == ["why", "more"]
    shown(answer)
    (card,) = drawn
    assert dose.reply.startswith(f"{card.amount} {card.of}")
    said = {str(s.part): s.lines for s in card.sections}
    assert said["measure"] == tuple(dose.reply.splitlines()[1:3])
    assert said["mind"] == tuple(c.text for c in dose.cautions[:3])
    assert {w.text for w in dose.why} < set(said["why"])
    assert "Ruby" in said["why"]
    assert any("9 °dH" in line for line in said["why"])


async def test_a_card_to_share_shows_no_prices(mira: Grower, drawn: list[Any]) -> None:
    await mira.says(TUB, RUBY, "2 l for Ruby", "card")
    assert "EUR" not in repr(drawn[0])


async def test_a_card_of_its_own_words_can_be_gone_on_from(mira: Grower, drawn: list[Any]) -> None:
    await mira.says("card: 4 l 20-20-20 powder, phals in bark, quarter")
    assert drawn[0].of == "of 20-20-20 powder in 4 l"
    half = await mira.says("half that", "card")
    assert half.dose is not None
    assert half.dose.strength == pytest.approx(0.125)
    changed = await mira.says("card for 2 litres")
    assert changed.dose is not None
    assert changed.dose.amount == pytest.approx(half.dose.amount / 2)
    assert "steps" not in (await mira.says("why")).reply


async def test_a_plant_that_recovers_is_on_the_card(mira: Grower, drawn: list[Any]) -> None:
    await mira.says(TUB, RUBY, "brown mushy roots and a sour smell on Ruby", "1 l for Ruby")
    answer = await mira.says("card")
    (card,) = drawn
    assert card.sections[-1].lines[0] == answer.reply.splitlines()[0]
    assert "Ruby" in card.sections[-1].lines[0]


async def test_without_a_dose_there_is_no_card(mira: Grower) -> None:
    for line in ("card", "dose card"):
        answer = await mira.says(line)
        assert (answer.kind, answer.picture) == ("ask", None)
    resting = await mira.says("I live in Porto", "card: 2 l 20-20-20 powder, phals, resting")
    assert (resting.kind, resting.picture) == ("no_feed", None)
    doubtful = await mira.says("card: 2 l and 3 l 20-20-20 powder")
    assert (doubtful.kind, doubtful.picture) == ("ask", None)


async def test_nothing_is_remembered_of_a_card_of_what_was_told(mira: Grower) -> None:
    before = await mira.says(TUB, RUBY, "2 l for Ruby", "double it")
    after = await mira.says("card", "half that")
    assert before.dose is not None
    assert after.dose is not None
    assert after.dose.amount == pytest.approx(before.dose.amount / 2)


# --- without what draws them ---------------------------------------------------------------------


@pytest.fixture
def bare(monkeypatch: pytest.MonkeyPatch) -> None:
    def missing(data: object) -> bytes:
        raise PicturesMissing("not here")

    for module in (year_drawn, salts_drawn, card_drawn):
        monkeypatch.setattr(module, "draw", missing)


@pytest.mark.usefixtures("bare")
async def test_without_the_extra_the_text_stands_for_the_picture(mira: Grower) -> None:
    await mira.says(TUB, RUBY, "fed Ruby", "2 l for Ruby")
    for line, part in (
        ("card", "g of blue tub"), ("show my year", "Ruby: fed Jun; to feed Jul–"),
        ("salts of Ruby as a picture", "mS/cm in the wet pot"),
    ):  # fmt: skip
        answer = await mira.says(line)
        assert answer.picture is None
        assert part in answer.reply
        assert answer.reply.count("Pictures cannot be drawn here") == 1


# --- what is reckoned for them -------------------------------------------------------------------


@pytest.mark.parametrize(
    ("found", "told"),
    [([0, 1, 2, 4], "Jan–Mar, May"), ([11], "Dec"), ([0, 11], "Jan, Dec"), ([], "")],
)
def test_months_in_a_row_are_told_as_one(found: list[int], told: str) -> None:
    assert asked._stretches(found, MONTHS) == told


@pytest.mark.parametrize("ceiling", [0.8, 1.4, 2.0])
@pytest.mark.parametrize("high", [0.0, 0.3, 1.0, 3.3, 12.0, 60.0])
def test_a_scale_holds_line_and_limit_in_few_steps(ceiling: float, high: float) -> None:
    point = salts_drawn.Point(date(2026, 1, 1), 0.0, high, 2 * high)
    scale = asked._scale([point], ceiling)
    assert scale[0] == 0
    assert scale[-1] >= max(high, ceiling)
    assert 2 <= len(scale) <= 7


def test_no_more_rows_than_are_drawn() -> None:
    assert picture_year.MOST_ROWS == MOST_ROWS == 14
