"""Each picture: what comes out is a small opaque PNG, the same each time, with every letter."""

from __future__ import annotations

import gc
import io
import warnings
from collections.abc import Callable
from concurrent.futures import ThreadPoolExecutor
from dataclasses import replace

import numpy as np
import pytest
from matplotlib.artist import Artist
from matplotlib.backends.backend_agg import RendererAgg
from matplotlib.figure import Figure
from PIL import Image

from bot.pictures import available, look
from bot.pictures import card as card_drawn
from bot.pictures import salts as salts_drawn
from bot.pictures import year as year_drawn
from bot.pictures.look import drawable
from bot.pictures.year import MOST_ROWS, Cell
from tests.pictures.drawings import LETTERS, LONG, card, salts, year

MOST_BYTES = 200_000
#: The tallest that a phone shows as a whole, and the messenger as a photo [1].
TALLEST = 2.4

DRAWINGS: dict[str, Callable[[], bytes]] = {
    "a full year": lambda: year_drawn.draw(year()),
    "one plant": lambda: year_drawn.draw(year(1)),
    "no plants": lambda: year_drawn.draw(year(0)),
    "a year without a present": lambda: year_drawn.draw(year(3, present=None)),
    "a year of long names": lambda: year_drawn.draw(year(label=LONG)),
    "a year of all letters": lambda: year_drawn.draw(year(label=LETTERS)),
    "half a year of salts": lambda: salts_drawn.draw(salts()),
    "an empty log": lambda: salts_drawn.draw(salts(0)),
    "a log of a week": lambda: salts_drawn.draw(salts(1)),
    "salts of a long name": lambda: salts_drawn.draw(salts(title=LONG)),
    "salts of all letters": lambda: salts_drawn.draw(salts(title=LETTERS)),
    "a card": lambda: card_drawn.draw(card()),
    "a card with much to say": lambda: card_drawn.draw(card(text=LONG * 2)),
    "a card of all letters": lambda: card_drawn.draw(card(text=LETTERS, amount="½ łyżeczki ß")),
    "a card of a long amount": lambda: card_drawn.draw(card(amount="12,345.67 ml " * 5)),
}


def opened(content: bytes) -> Image.Image:
    image = Image.open(io.BytesIO(content))
    image.load()
    return image


@pytest.fixture(scope="module")
def drawn() -> dict[str, bytes]:
    with warnings.catch_warnings():
        warnings.simplefilter("error")  # a letter that is missing is a warning
        return {name: draw() for name, draw in DRAWINGS.items()}


@pytest.mark.parametrize("name", DRAWINGS)
def test_it_is_a_small_opaque_png_of_the_usual_width(drawn: dict[str, bytes], name: str) -> None:
    image = opened(drawn[name])
    assert image.format == "PNG"
    assert image.width == look.WIDTH
    assert 300 < image.height <= TALLEST * look.WIDTH
    assert "transparency" not in image.info
    assert image.mode in ("P", "RGB")
    assert len(drawn[name]) < MOST_BYTES


@pytest.mark.parametrize("name", DRAWINGS)
def test_it_says_nothing_of_what_drew_it_or_when(drawn: dict[str, bytes], name: str) -> None:
    assert opened(drawn[name]).info == {}


@pytest.mark.parametrize("name", DRAWINGS)
def test_something_is_drawn_and_nothing_over_the_edge(drawn: dict[str, bytes], name: str) -> None:
    pixels = np.asarray(opened(drawn[name]).convert("L"), dtype=int)
    assert pixels.min() < 60  # ink
    right = pixels[8:-8, look.RIGHT + 8 : look.WIDTH - 6]
    bottom = pixels[-24:-6, look.LEFT : look.RIGHT]
    assert right.min() > 230
    assert bottom.min() > 230


@pytest.mark.parametrize(
    "colour",
    [look.PAPER, look.NOW, look.INK, look.FEED, look.FEED_PALE, look.CLEAR, look.FLUSH, look.REST],
)
def test_few_colours_keep_the_palette(drawn: dict[str, bytes], colour: str) -> None:
    pixels = np.asarray(opened(drawn["a full year"]).convert("RGB"), dtype=int)
    wanted = np.array([int(colour[i : i + 2], 16) for i in (1, 3, 5)])
    near = (np.abs(pixels - wanted).max(axis=2) <= 2).sum()
    assert near > 100


@pytest.mark.parametrize("name", ["a full year", "half a year of salts", "a card"])
def test_the_same_comes_out_as_the_same_bytes(drawn: dict[str, bytes], name: str) -> None:
    assert DRAWINGS[name]() == drawn[name]


def test_several_threads_draw_the_same(drawn: dict[str, bytes]) -> None:
    names = ["one plant", "a card", "an empty log"] * 3
    with ThreadPoolExecutor(3) as pool:
        made = list(pool.map(lambda name: DRAWINGS[name](), names))
    assert made == [drawn[name] for name in names]


@pytest.mark.parametrize("kind", list(Cell))
def test_each_cell_looks_its_own_way_without_colour(kind: Cell) -> None:
    """By shape alone: in grey, each differs from each other in many pixels."""
    one = year(1)

    def grey(cell: Cell) -> np.ndarray:  # type: ignore[type-arg]
        row = replace(one.rows[0], cells=(cell,) * 12, flushed=(False,) * 12)
        content = year_drawn.draw(replace(one, rows=(row,), legend=()))
        # what is no paper is black: neither hue nor lightness tells them apart
        return np.asarray(opened(content).convert("L")) < 215

    for other in Cell:
        if other is not kind:
            differing = int((grey(kind) != grey(other)).sum())
            assert differing > 12 * 60, other


def test_a_flush_is_seen_on_every_cell() -> None:
    one = year(1)
    for cell in Cell:
        row = replace(one.rows[0], cells=(cell,) * 12, flushed=(False,) * 12)
        without = year_drawn.draw(replace(one, rows=(row,)))
        marked = year_drawn.draw(replace(one, rows=(replace(row, flushed=(True,) * 12),)))
        assert marked != without


def test_a_warning_of_a_missing_letter_would_be_seen() -> None:
    from matplotlib.text import Text

    sheet = look.Sheet()
    sheet.text(100, 100, "a", 40)
    text = sheet._artists[0]
    assert isinstance(text, Text)
    text.set_text("蘭")
    with pytest.warns(UserWarning, match="missing from font"):
        sheet.png(400)


@pytest.mark.parametrize(
    ("said", "shown"),
    [
        ("Ruby", "Ruby"), ("🌱 Ruby", "Ruby"), ("蘭", "…"), ("", ""), ("a\n b\tc", "a b c"),
        ("Z\u0307o", "Żo"), (LETTERS, LETTERS), ("$x_1$ & <b>", "$x_1$ & <b>"),
    ],
)  # fmt: skip
def test_what_the_font_has_no_letter_for_is_left_out(said: str, shown: str) -> None:
    assert drawable(said) == shown


def test_a_line_is_cut_to_its_width() -> None:
    sheet = look.Sheet()
    cut = sheet.fitted(LONG, look.BODY, 500)
    assert cut.endswith("…")
    assert 400 < sheet.width(cut, look.BODY) <= 500
    assert sheet.fitted("short", look.BODY, 500) == "short"


def test_a_long_text_is_wrapped_and_its_end_is_told_to_be_cut() -> None:
    sheet = look.Sheet()
    lines = sheet.wrapped(LONG, look.BODY, 600, 3)
    assert len(lines) == 3
    assert all(sheet.width(line, look.BODY) <= 600 for line in lines)
    assert lines[-1].endswith("…")
    whole = sheet.wrapped(LONG, look.BODY, 600, 99)
    assert " ".join(whole) == LONG.strip()


@pytest.mark.parametrize(
    "wrong",
    [
        lambda: replace(year(), months=tuple("JFM")),
        lambda: year(MOST_ROWS + 1),
        lambda: replace(salts(), points=()),
        lambda: replace(salts(), scale=()),
    ],
)
def test_what_cannot_be_drawn_is_refused(wrong: Callable[[], object]) -> None:
    with pytest.raises(ValueError, match=r"\w"):
        wrong()


def test_pictures_can_be_drawn_here() -> None:
    assert available()


@pytest.mark.parametrize("name", ["a full year", "half a year of salts", "a card"])
def test_what_a_picture_was_drawn_on_does_not_wait_for_the_collector(name: str) -> None:
    """Several MB each: it comes seldom where much has grown old."""

    def alive() -> int:
        return sum(isinstance(o, Figure | RendererAgg | Artist) for o in gc.get_objects())

    DRAWINGS[name]()
    gc.collect()
    gc.disable()
    try:
        before = alive()
        DRAWINGS[name]()
        assert alive() == before
    finally:
        gc.enable()
