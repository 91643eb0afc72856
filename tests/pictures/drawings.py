"""Pictures to draw in tests and benchmarks; all of it is invented."""

from __future__ import annotations

import random
from datetime import date, timedelta

from bot.pictures.card import Card, Part, Section
from bot.pictures.salts import Done, Event, Point, Salts
from bot.pictures.year import FLUSHED, MOST_ROWS, Cell, Row, Year

#: Letters of all languages we speak, and signs our texts use.
LETTERS = "Zażółć gęślą jaźń · Größe äöüß ÄÖÜẞ · ¿año, niñez, pingüino? áéíóú · × – “” „” ° µ ½ €"
LONG = "the white one by the kitchen window that Ana gave me " * 4


def year(rows: int = MOST_ROWS, *, label: str = "", present: int | None = 5) -> Year:
    """A year with every kind of cell in it."""
    chance = random.Random(rows)
    kinds = list(Cell)
    return Year(
        title="2026",
        subtitle=f"{rows * 3} plants",
        months=tuple("JFMAMJJASOND"),
        present=present,
        rows=tuple(
            Row(
                label or f"{number + 2} Phalaenopsis",
                tuple(chance.choice(kinds) for _ in range(12)),
                tuple(chance.random() < 0.3 for _ in range(12)),
            )
            for number in range(rows)
        ),
        legend=tuple((str(kind), f"it is {kind}") for kind in (*kinds, FLUSHED)),
    )


def salts(weeks: int = 26, *, title: str = "Ruby") -> Salts:
    """Half a year of a pot that is fed, rinsed, flushed and measured; none for an empty log."""
    first = date(2026, 1, 4)
    last = first + timedelta(days=7 * weeks)
    points: list[Point] = []
    events: list[Event] = []
    ec = 0.3
    for week in range(weeks):
        on = first + timedelta(days=7 * week)
        kind = Done.FLUSH if week % 8 == 7 else Done.CLEAR if week % 4 == 3 else Done.FED
        events.append(Event(on, kind))
        points.append(Point(on, max(ec - 0.3, 0), ec, ec + 0.3))
        ec = 0.4 if kind is Done.FLUSH else ec - 0.1 if kind is Done.CLEAR else ec + 0.25
        points.append(Point(on, max(ec - 0.2, 0), ec, ec + 0.2))
        if week % 9 == 5:
            events.append(Event(on, Done.READING, "1.4"))
    points.append(Point(last, max(ec - 0.2, 0), ec, ec + 0.2))
    return Salts(
        title=title,
        figure=f"{ec:.1f}",
        unit="mS/cm in the wet pot",
        between=f"{max(ec - 0.2, 0):.1f} to {ec + 0.2:.1f}",
        points=tuple(points),
        ceiling=1.4,
        ceiling_told="limit 1.4",
        events=tuple(events),
        lanes=tuple((kind, f"it is {kind}") for kind in Done),
        scale=((0.0, "0"), (0.5, "0.5"), (1.0, "1"), (1.5, "1.5"), (2.0, "2")),
        days=((first, "4 Jan"), (last, "today")),
    )


def card(*, text: str = "Wet the roots with clear water first.", amount: str = "0.47 g") -> Card:
    """A card with all its parts."""
    return Card(
        amount=amount,
        of="of 20-20-20 powder in 5 l",
        sections=tuple(Section(part, f"The {part}", (text, text)) for part in Part),
    )
