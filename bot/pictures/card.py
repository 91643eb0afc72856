"""A dose as a card to share: the amount biggest, then how to measure, why, and what to mind."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum

from bot.pictures.look import (
    BODY,
    FEED,
    FLUSH,
    FRAME,
    INK,
    LEFT,
    PAPER,
    REST,
    RIGHT,
    SMALL,
    SOFT,
    Sheet,
    one_at_a_time,
)


class Part(StrEnum):
    """The parts of a card, each with a mark of its own."""

    MEASURE = "measure"
    WHY = "why"
    MIND = "mind"


@dataclass(frozen=True, slots=True)
class Section:
    """A part of the card: its heading, and what it says point by point."""

    part: Part
    heading: str
    lines: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Card:
    """A card to draw.

    Parameters
    ----------
    amount : with its unit, in the biggest letters
    of : of what, in how much water
    sections : in the order in which they are read
    """

    amount: str
    of: str
    sections: tuple[Section, ...]


_BIGGEST, _LEAST = 230, 72
_INDENT = 64  # of what a part says
_MOST_LINES = 5  # of one point
_MOST_POINTS = 12  # of one part


def draw(card: Card) -> bytes:
    """The picture as a PNG.

    Raises
    ------
    PicturesMissing
        What draws is not installed.
    """
    with one_at_a_time():
        return _drawn(card)


def _drawn(card: Card) -> bytes:
    sheet = Sheet()
    size = _big(sheet, card.amount)
    sheet.text(
        LEFT - size * 0.03, 60 + size * 0.78, _cut(sheet, card.amount, size), size, bold=True
    )
    y = 60 + size * 0.78 + 30 + size * 0.16
    y = sheet.paragraph(LEFT, y, card.of, BODY * 1.2, RIGHT - LEFT, lines=3, colour=INK) + 22
    for section in card.sections:
        if section.lines:
            y = _draw_section(sheet, section, y)
    return sheet.png(y + 34)


def _big(sheet: Sheet, amount: str) -> float:
    """The size in which an amount fills the width, within reason."""
    wide = sheet.width(amount, 100, bold=True)
    return min(max(100 * (RIGHT - LEFT) / wide if wide else _BIGGEST, _LEAST), _BIGGEST)


def _cut(sheet: Sheet, amount: str, size: float) -> str:
    return sheet.fitted(amount, size, RIGHT - LEFT + 1, bold=True)


def _draw_section(sheet: Sheet, section: Section, y: float) -> float:
    sheet.line([(LEFT, y), (RIGHT, y)], colour=FRAME, line=2)
    y += 26
    _draw_part(sheet, section.part, LEFT + 20, y + BODY * 0.6)
    heading = sheet.fitted(section.heading, BODY, RIGHT - LEFT - _INDENT, bold=True)
    sheet.text(LEFT + _INDENT, y + BODY * 0.96, heading, BODY, bold=True)
    y += BODY * 1.36
    quiet = SOFT if section.part is Part.WHY else INK
    size = SMALL if section.part is Part.WHY else BODY * 0.95
    for line in section.lines[:_MOST_POINTS]:
        wide = RIGHT - LEFT - _INDENT
        y = sheet.paragraph(
            LEFT + _INDENT, y, line, size, wide, lines=_MOST_LINES, colour=quiet
        ) + 10  # fmt: skip
    return y + 18


def _draw_part(sheet: Sheet, part: Part, x: float, y: float) -> None:
    """A jug's level, the rungs of a reckoning, a sign of warning."""
    if part is Part.MEASURE:
        sheet.box(x - 18, y - 2, 36, 20, fill=FEED)
        sheet.line([(x - 16, y - 20), (x - 16, y + 16), (x + 16, y + 16), (x + 16, y - 20)],
                   colour=FEED, line=5)  # fmt: skip
    elif part is Part.WHY:
        for number, wide in enumerate((36, 26, 16)):
            sheet.box(x - 18, y - 17 + number * 13, wide, 7, fill=REST)
    else:
        sheet.shape([(x, y - 22), (x + 24, y + 19), (x - 24, y + 19)], fill=FLUSH)
        sheet.box(x - 3, y - 8, 6, 15, fill=PAPER)
        sheet.box(x - 3, y + 10, 6, 6, fill=PAPER)
