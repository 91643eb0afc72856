"""The year of a collection: a row for plants that are alike, a column for each month."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum

from bot.pictures.look import (
    BODY,
    CLEAR,
    FEED,
    FEED_PALE,
    FRAME,
    GRID,
    INK,
    LEFT,
    NOW,
    REST,
    RIGHT,
    SMALL,
    SOFT,
    TITLE,
    Sheet,
    one_at_a_time,
)


class Cell(StrEnum):
    """What a month says: what was done, or what is to come."""

    FED = "fed"
    WATERED = "watered"
    FEED = "feed"
    LESS = "less"
    CLEAR = "clear"
    REST = "rest"
    DIFFER = "differ"
    BLANK = "blank"


#: In the legend beside the cells: the mark of a flush.
FLUSHED = "flushed"
#: Rows that are drawn; more are for whoever makes them to sum up.
MOST_ROWS = 14


@dataclass(frozen=True, slots=True)
class Row:
    """Plants that are alike: what to call them, a cell a month, and in which it was flushed."""

    label: str
    cells: tuple[Cell, ...]
    flushed: tuple[bool, ...]


@dataclass(frozen=True, slots=True)
class Year:
    """A year to draw.

    Parameters
    ----------
    title, subtitle : the year, and of how many plants
    months : twelve short names
    present : which of them it is now, None where none is
    rows : at most `MOST_ROWS`
    legend : what the cells that occur mean, by their value, and `FLUSHED`
    """

    title: str
    subtitle: str
    months: tuple[str, ...]
    present: int | None
    rows: tuple[Row, ...]
    legend: tuple[tuple[str, str], ...]

    def __post_init__(self) -> None:
        lengths = {len(self.months), *(len(r.cells) for r in self.rows)}
        lengths |= {len(r.flushed) for r in self.rows}
        if lengths != {12} or len(self.rows) > MOST_ROWS:
            raise ValueError(f"A year has twelve months and at most {MOST_ROWS} rows.")


_NAMES = 372  # width of the names
_FIRST = LEFT + _NAMES
_STEP = (RIGHT - _FIRST) / 12
_ROW = 66
_CELL = 38
_HEAD = 226  # above the rows
_LEGEND_ROW = 58
_KEY = 60  # from a mark of the legend to its words


def draw(year: Year) -> bytes:
    """The picture as a PNG.

    Raises
    ------
    PicturesMissing
        What draws is not installed.
    """
    with one_at_a_time():
        return _drawn(year)


def _drawn(year: Year) -> bytes:
    sheet = Sheet()
    bottom = _HEAD + _ROW * len(year.rows)
    if year.present is not None:
        sheet.box(_FIRST + year.present * _STEP, 142, _STEP, bottom - 132, fill=NOW)
    title = sheet.fitted(year.title, TITLE * 1.5, RIGHT - LEFT, bold=True)
    sheet.text(LEFT, 110, title, TITLE * 1.5, bold=True)
    beside = LEFT + sheet.width(title, TITLE * 1.5, bold=True) + 28
    if RIGHT - beside > 120:
        told = sheet.fitted(year.subtitle, BODY, RIGHT - beside)
        sheet.text(beside, 110, told, BODY, colour=SOFT)
    for number, month in enumerate(year.months):
        now = number == year.present
        name = sheet.fitted(month, BODY, _STEP + 6, bold=now)
        x = _FIRST + (number + 0.5) * _STEP
        sheet.text(x, 194, name, BODY, bold=now, colour=INK if now else SOFT, align="center")
    sheet.line([(LEFT, _HEAD - 10), (RIGHT, _HEAD - 10)], colour=FRAME, line=2)
    for number, row in enumerate(year.rows):
        _draw_row(sheet, row, _HEAD + number * _ROW)
    return sheet.png(_draw_legend(sheet, year.legend, bottom + 44) + 40)


def _draw_row(sheet: Sheet, row: Row, top: float) -> None:
    middle = top + _ROW / 2
    sheet.text(LEFT, middle + SMALL * 0.36, sheet.fitted(row.label, SMALL, _NAMES - 20), SMALL)
    for number, cell in enumerate(row.cells):
        x = _FIRST + (number + 0.5) * _STEP
        if row.flushed[number] and cell == Cell.BLANK:
            _draw_mark(sheet, FLUSHED, x, middle)
            continue
        _draw_mark(sheet, cell, x, middle)
        if row.flushed[number]:
            _draw_mark(sheet, FLUSHED, x + 11, middle - 16)
    sheet.line([(LEFT, top + _ROW), (RIGHT, top + _ROW)], colour=GRID, line=1)


def _draw_mark(sheet: Sheet, mark: str, x: float, y: float) -> None:
    """A full box is feed that was given, an outlined one feed to come, filled as far as it goes."""
    left, top = x - _CELL / 2, y - _CELL / 2
    if mark == Cell.FED:
        sheet.box(left, top, _CELL, _CELL, fill=FEED)
    elif mark in (Cell.FEED, Cell.LESS):
        level = 1.0 if mark == Cell.FEED else 0.4
        sheet.box(left, top + _CELL * (1 - level), _CELL, _CELL * level, fill=FEED_PALE)
        sheet.box(left + 2, top + 2, _CELL - 4, _CELL - 4, edge=FEED, line=4)
        if mark == Cell.LESS:
            y = top + _CELL * (1 - level)
            sheet.line([(left, y), (left + _CELL, y)], colour=FEED, line=4)
    elif mark == Cell.WATERED:
        sheet.ring(x, y, _CELL / 2 - 2, fill=CLEAR, edge=None)
    elif mark == Cell.CLEAR:
        sheet.ring(x, y, _CELL / 2 - 4, fill=None, edge=CLEAR, line=4)
    elif mark == Cell.REST:
        sheet.box(left + 3, y - 4, _CELL - 6, 8, fill=REST)
    elif mark == Cell.DIFFER:
        sheet.diamond(x, y, _CELL - 6, REST, hollow=True)
    elif mark == FLUSHED:
        sheet.triangle(x, y, 28)
    else:
        sheet.ring(x, y, 4, fill=FRAME, edge=None)


def _draw_legend(sheet: Sheet, legend: tuple[tuple[str, str], ...], y: float) -> float:
    """Marks with their words, as many in a row as there is room for; returns where it ends."""
    x = float(LEFT)
    for mark, said in legend:
        said = sheet.fitted(said, SMALL, RIGHT - LEFT - _KEY)
        needs = _KEY + sheet.width(said, SMALL) + 36
        if x > LEFT and x + needs - 36 > RIGHT:
            x, y = float(LEFT), y + _LEGEND_ROW
        _draw_mark(sheet, mark, x + _CELL / 2, y)
        sheet.text(x + _KEY, y + SMALL * 0.36, said, SMALL, colour=SOFT)
        x += needs
    return y + _LEGEND_ROW / 2
