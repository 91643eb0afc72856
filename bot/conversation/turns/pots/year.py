"""The calendar year of plants as rows of months: by the log until today, by the rules after it."""

from __future__ import annotations

import math
from collections import defaultdict
from collections.abc import Callable, Hashable, Mapping, Sequence
from dataclasses import dataclass, field, replace
from datetime import date
from typing import TypeAlias

from bot.conversation.collection import labels
from bot.conversation.turn import Turn
from bot.conversation.turns.standing.advice import Logged, state_of
from bot.conversation.turns.standing.rescue_log import pauses
from bot.dosing.advice import Action, Advice, advise
from bot.dosing.season import season_of
from bot.pictures.year import FLUSHED, MOST_ROWS, Cell, Row, Year
from bot.records import log
from bot.records.kinds import EventKind
from bot.records.models import Plant

_MONTHS = tuple(range(1, 13))
#: A month to come is looked at on this day.
_MIDDLE = 15

#: The plants that were given something, by month and what.
Given: TypeAlias = Mapping[tuple[int, EventKind], set[int]]
_Lived: TypeAlias = tuple[tuple[Cell, ...], tuple[bool, ...]]


async def year_of(turn: Turn, plants: Sequence[Plant]) -> Year:
    """The present calendar year of some plants."""
    given = await _given(turn)
    paused = await pauses(turn, plants, turn.today)
    rules = _Rules(turn, {i: pause.until for i, pause in paused.items()})
    lived = [(p, _lived(rules, p, given)) for p in plants]
    rows = _rows(turn, lived)
    used = {cell for row in rows for cell in row.cells}
    legend = [(str(c), turn.words.say("picture-cell", cell=str(c))) for c in Cell if c in used]
    if any(any(row.flushed) for row in rows):
        legend.append((FLUSHED, turn.words.say("picture-cell", cell=FLUSHED)))
    count = sum(p.count for p in plants)
    return Year(
        title=str(turn.today.year),
        subtitle=turn.words.say("plants-count", count=count),
        months=turn.words.months("narrow"),
        present=turn.today.month - 1,
        rows=tuple(rows),
        legend=tuple(legend),
    )


# --- what was done -------------------------------------------------------------------------------


async def _given(turn: Turn) -> Given:
    """What the log of this year says was given."""
    since = date(turn.today.year, 1, 1)
    async with turn.records.reading() as session:
        rows = await log.poured(session, turn.owner_id, since=since, until=turn.today)
    found: dict[tuple[int, EventKind], set[int]] = defaultdict(set)
    for row in rows:
        found[row.on.month, row.kind].update(row.plant_ids)
    return found


def _lived(rules: _Rules, plant: Plant, given: Given) -> _Lived:
    """A plant's months: what was given up to today, what is to come after it."""

    def was(kind: EventKind, month: int) -> bool:
        return plant.id in given.get((month, kind), ())

    planned = rules.planned(plant)
    cells = []
    for month in _MONTHS:
        if was(EventKind.FED, month):
            cells.append(Cell.FED)
        elif was(EventKind.CLEAR, month):
            cells.append(Cell.WATERED)
        else:
            lies_ahead = month >= rules.turn.today.month
            cells.append(planned[month - 1] if lies_ahead else Cell.BLANK)
    return tuple(cells), tuple(was(EventKind.FLUSH, month) for month in _MONTHS)


# --- what is to come -----------------------------------------------------------------------------


@dataclass(slots=True)
class _Rules:
    """The rules of the watering day over a year; plants that are alike are asked about once.

    `until` is when a plant that recovers may be fed again, by its id.
    """

    turn: Turn
    until: Mapping[int, date]
    known: dict[Hashable, tuple[Cell, ...]] = field(default_factory=dict)

    def planned(self, plant: Plant) -> tuple[Cell, ...]:
        """What each month of this year would bring by the rules."""
        until = self.until.get(plant.id)
        key = (plant.genus, plant.growth, plant.growth_since, plant.medium, plant.last_repot_on,
               until)  # fmt: skip
        if key not in self.known:
            advices = [self._advice(plant, month, until) for month in _MONTHS]
            usual = max((_strength(a) for a in advices), default=0.0)
            self.known[key] = tuple(_cell(a, usual) for a in advices)
        return self.known[key]

    def _advice(self, plant: Plant, month: int, until: date | None) -> Advice:
        """By season, rest, growth and medium: when it was last fed or flushed tells no month."""
        today, south = self.turn.today, self.turn.south
        day = today if month == today.month else date(today.year, month, _MIDDLE)
        left = (until - day).days if until is not None and day >= today else 0
        state = state_of(plant, day, south=south, logged=Logged(pause_days=max(left, 0) or None))
        state = replace(
            state,
            days_since_added=None,
            days_since_fed=None,
            days_since_clear=None,
            days_since_flush=None,
        )
        return advise(state, month=month, season=season_of(month, south=south), south=south)


def _strength(advice: Advice) -> float:
    """Of full strength [1]; 0 without feed."""
    if advice.action is not Action.FEED:
        return 0.0
    return math.prod(step.factor for step in advice.chain)


def _cell(advice: Advice, usual: float) -> Cell:
    if advice.action is Action.FEED:
        return Cell.FEED if _strength(advice) >= usual * (1 - 1e-9) else Cell.LESS
    rests = any(reason.code.startswith("rest.") for reason in advice.reasons)
    return Cell.REST if rests else Cell.CLEAR


# --- rows ----------------------------------------------------------------------------------------


def _rows(turn: Turn, lived: Sequence[tuple[Plant, _Lived]]) -> list[Row]:
    """A row an entry; where they are too many those alike as one, then a kind, then the rest."""
    groups = [[one] for one in lived]
    for key in (_alike, _kind):
        if len(groups) > MOST_ROWS:
            groups = _gathered(lived, key)
    if len(groups) > MOST_ROWS:
        groups.sort(key=lambda g: -sum(p.count for p, _ in g))
        kept, rest = groups[: MOST_ROWS - 1], groups[MOST_ROWS - 1 :]
        others = [one for group in rest for one in group]
        count = sum(p.count for p, _ in others)
        more = _row(turn.words.say("plants-more", count=count), others)
        return [*(_row(_called(turn, g), g) for g in kept), more]
    return [_row(_called(turn, g), g) for g in groups]


def _alike(plant: Plant, lived: _Lived) -> Hashable:
    return plant.genus, lived


def _kind(plant: Plant, lived: _Lived) -> Hashable:
    return plant.genus


def _gathered(
    lived: Sequence[tuple[Plant, _Lived]], key: Callable[[Plant, _Lived], Hashable]
) -> list[list[tuple[Plant, _Lived]]]:
    found: dict[Hashable, list[tuple[Plant, _Lived]]] = {}
    for plant, months in lived:
        found.setdefault(key(plant, months), []).append((plant, months))
    return list(found.values())


def _called(turn: Turn, group: Sequence[tuple[Plant, _Lived]]) -> str:
    """What a row is called: its one name, or its kind with how many they are."""
    plants = [plant for plant, _ in group]
    if len(plants) == 1:
        return labels(plants, turn.words)
    count, kind = sum(p.count for p in plants), plants[0].genus or "none"
    return turn.words.say("plant-label", count=count, kind=kind)


def _row(name: str, group: Sequence[tuple[Plant, _Lived]]) -> Row:
    """Plants as one row; a month in which they differ says so."""
    cells = []
    for month in range(12):
        found = {months[0][month] for _, months in group}
        cells.append(found.pop() if len(found) == 1 else Cell.DIFFER)
    flushed = tuple(any(months[1][month] for _, months in group) for month in range(12))
    return Row(name, tuple(cells), flushed)
