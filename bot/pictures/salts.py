"""The salts in one pot over its log: what the model says, and what was done."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date, timedelta
from enum import StrEnum
from itertools import zip_longest

from bot.pictures.look import (
    BODY,
    CLEAR,
    FEED,
    FEED_PALE,
    FRAME,
    GRID,
    INK,
    LEFT,
    RIGHT,
    SMALL,
    SOFT,
    TITLE,
    Sheet,
    one_at_a_time,
)


class Done(StrEnum):
    """What was done with the pot; the names of the log."""

    FED = "fed"
    CLEAR = "clear"
    FLUSH = "flush"
    READING = "reading"


@dataclass(frozen=True, slots=True)
class Point:
    """EC of the wet pot on a day [mS/cm]; two points of one day are before and after."""

    on: date
    low: float
    ec: float
    high: float


@dataclass(frozen=True, slots=True)
class Event:
    """Something that was done; `told` is a figure to write beside it, '' for none."""

    on: date
    kind: Done
    told: str = ""


@dataclass(frozen=True, slots=True)
class Salts:
    """The salts of a pot to draw.

    Parameters
    ----------
    title : whose pot it is
    figure, unit, between : the present EC in big, its unit, and how sure it is
    points : by day, at least one
    ceiling, ceiling_told : what the pot should not pass [mS/cm], and that in words
    events : by day
    lanes : kinds in the order of their lanes, with their names
    scale : where the scale has a line [mS/cm], with the text beside it; the last is the top
    days : where the time has a mark, with the text below it
    """

    title: str
    figure: str
    unit: str
    between: str
    points: tuple[Point, ...]
    ceiling: float
    ceiling_told: str
    events: tuple[Event, ...]
    lanes: tuple[tuple[Done, str], ...]
    scale: tuple[tuple[float, str], ...]
    days: tuple[tuple[date, str], ...]

    def __post_init__(self) -> None:
        if not self.points or not self.scale or self.scale[-1][0] <= 0:
            raise ValueError("A drawing of salts needs a point and a scale that goes up.")


_PLOT_TOP, _PLOT_HIGH = 344, 420
_PLOT_LEFT, _PLOT_RIGHT = LEFT + 84, RIGHT - 14
_LANES_TOP = _PLOT_TOP + _PLOT_HIGH + 84
_LANE = 84
_NAME = 30  # from the top of a lane to the baseline of its name
#: A time shorter than this is drawn as so long [d].
_SHORTEST = 14


def draw(salts: Salts) -> bytes:
    """The picture as a PNG.

    Raises
    ------
    PicturesMissing
        What draws is not installed.
    """
    with one_at_a_time():
        return _drawn(salts)


@dataclass(frozen=True, slots=True)
class _Field:
    """Where a day and an EC lie on the card [px]."""

    first: date
    last: date
    top: float

    @classmethod
    def of(cls, salts: Salts) -> _Field:
        days = [p.on for p in salts.points] + [e.on for e in salts.events]
        last = max(days)
        first = min(min(days), last - timedelta(days=_SHORTEST))
        return cls(first, last, salts.scale[-1][0])

    def x(self, day: date) -> float:
        share = (day - self.first).days / (self.last - self.first).days
        return _PLOT_LEFT + share * (_PLOT_RIGHT - _PLOT_LEFT)

    def y(self, ec: float) -> float:
        share = min(max(ec / self.top, 0.0), 1.0)
        return _PLOT_TOP + _PLOT_HIGH * (1 - share)


def _drawn(salts: Salts) -> bytes:
    sheet, field = Sheet(), _Field.of(salts)
    _draw_head(sheet, salts)
    _draw_scale(sheet, field, salts)
    _draw_band(sheet, field, salts.points)
    _draw_ceiling(sheet, field, salts)
    bottom = _draw_lanes(sheet, field, salts)
    return sheet.png(bottom + 36)


def _draw_head(sheet: Sheet, salts: Salts) -> None:
    title = sheet.fitted(salts.title, TITLE, RIGHT - LEFT, bold=True)
    sheet.text(LEFT, 92, title, TITLE, bold=True)
    size = TITLE * 2.4
    sheet.text(LEFT, 246, salts.figure, size, bold=True)
    beside = LEFT + sheet.width(salts.figure, size, bold=True) + 24
    sheet.text(beside, 246 - TITLE, salts.unit, BODY, colour=INK)
    told = sheet.fitted(salts.between, BODY, RIGHT - beside)
    sheet.text(beside, 246, told, BODY, colour=SOFT)


def _draw_band(sheet: Sheet, field: _Field, points: tuple[Point, ...]) -> None:
    """The line with its band; a lone point is a line across its day."""
    path = [(field.x(p.on), p) for p in points]
    if len(points) == 1:
        path = [(path[0][0] - 28, points[0]), (path[0][0], points[0])]
    upper = [(x, field.y(p.high)) for x, p in path]
    lower = [(x, field.y(p.low)) for x, p in reversed(path)]
    sheet.shape([*upper, *lower], fill=FEED_PALE)
    sheet.line([(x, field.y(p.ec)) for x, p in path], colour=FEED, line=6)
    x, last = path[-1]
    sheet.ring(x, field.y(last.ec), 11, fill=FEED, edge=None)


def _draw_scale(sheet: Sheet, field: _Field, salts: Salts) -> None:
    for value, said in salts.scale:
        y = field.y(value)
        sheet.line([(_PLOT_LEFT, y), (_PLOT_RIGHT, y)], colour=GRID, line=2)
        sheet.text(_PLOT_LEFT - 16, y + SMALL * 0.36, said, SMALL, colour=SOFT, align="right")
    bottom = field.y(0)
    sheet.line([(_PLOT_LEFT, bottom), (_PLOT_RIGHT, bottom)], colour=FRAME, line=3)
    taken = 0.0
    for day, said in salts.days:
        x = field.x(day)
        sheet.line([(x, bottom), (x, bottom + 12)], colour=FRAME, line=3)
        half = sheet.width(said, SMALL) / 2
        centre = min(max(x, _PLOT_LEFT + half - 40), RIGHT - half)
        if centre - half < taken:
            continue
        sheet.text(centre, bottom + 50, said, SMALL, colour=SOFT, align="center")
        taken = centre + half + 18


def _draw_ceiling(sheet: Sheet, field: _Field, salts: Salts) -> None:
    y = field.y(salts.ceiling)
    sheet.line([(_PLOT_LEFT, y), (_PLOT_RIGHT, y)], colour=INK, line=4, dashes=(16, 10))
    said = sheet.fitted(salts.ceiling_told, SMALL, _PLOT_RIGHT - _PLOT_LEFT, bold=True)
    above = y - 14 if y - _PLOT_TOP > SMALL else y + SMALL + 8
    sheet.text(_PLOT_LEFT + 12, above, said, SMALL, bold=True, rim=True)


def _draw_lanes(sheet: Sheet, field: _Field, salts: Salts) -> float:
    """A lane a kind, its name above its marks; returns where they end."""
    top = float(_LANES_TOP)
    for kind, name in salts.lanes:
        said = sheet.fitted(name, SMALL, _PLOT_RIGHT - LEFT)
        sheet.text(_PLOT_LEFT, top + _NAME, said, SMALL, colour=SOFT)
        y = top + _LANE - 28
        sheet.line([(_PLOT_LEFT, y), (_PLOT_RIGHT, y)], colour=GRID, line=2)
        events = [e for e in salts.events if e.kind is kind]
        for event, later in zip_longest(events, events[1:]):
            x = field.x(event.on)
            _draw_mark(sheet, kind, x, y)
            room = (RIGHT if later is None else field.x(later.on) - 20) - (x + 24)
            wide = sheet.width(event.told, SMALL, bold=True)
            if event.told and wide <= room:
                sheet.text(x + 24, y + SMALL * 0.36, event.told, SMALL, bold=True, rim=True)
            elif event.told and later is None:
                sheet.text(x, y - 22, event.told, SMALL, bold=True, align="right")
        top += _LANE
    return top


def _draw_mark(sheet: Sheet, kind: Done, x: float, y: float) -> None:
    """Each kind by its own shape: a box, a ring, a triangle, a diamond."""
    if kind is Done.FED:
        sheet.box(x - 12, y - 12, 24, 24, fill=FEED)
    elif kind is Done.CLEAR:
        sheet.ring(x, y, 12, fill=CLEAR, edge=None)
    elif kind is Done.FLUSH:
        sheet.triangle(x, y, 32)
    else:
        sheet.diamond(x, y, 32)
