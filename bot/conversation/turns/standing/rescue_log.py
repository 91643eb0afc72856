"""A rescue in the log: what was judged, and how long nothing is fed; the plan keeps to it.

A feed that was told and was too strong stands there too: it is rinsed out first.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from typing import Any

from bot.conversation import answer as out
from bot.conversation.collection import kind_of, label, labels
from bot.conversation.turn import Turn
from bot.conversation.turns.splitting import split
from bot.conversation.turns.standing.advice import growth_on
from bot.dosing.rescue import Plan, after_too_much
from bot.dosing.strength import GROWING
from bot.records import log
from bot.records.kinds import EventKind
from bot.records.models import Event, Plant

#: A rescue is looked for so far back [d]: longer than any pause, and than it takes to feed again.
LOOKED_BACK = 120
_CODE, _UNTIL, _SHARE = "rescue", "no_feed_until", "resume_share"
#: What stands for a rescue where a feed was too strong; what that wants is that of burnt roots.
OVERFED = "overfed"


@dataclass(frozen=True, slots=True)
class Pause:
    """A plant that recovers.

    Parameters
    ----------
    since, until : the day it was judged, and that from which it may be fed
    share : of the usual strength for the first feed after it [1], None where roots come first
    flush_first : whether too much feed is still to be rinsed out
    """

    since: date
    until: date
    share: float | None
    flush_first: bool = False

    def days_left(self, day: date) -> int:
        """Days without feed that are left on a day [d]; 0 where it is over."""
        return max((self.until - day).days, 0)


async def write(
    turn: Turn, answer: out.Answer, made: Plan, plants: Sequence[Plant], *, some: int | None = None
) -> out.Answer:
    """Put a rescue into the log, and say so; where `some` of several alike ail, of those alone."""
    if not plants or not made.pause_days:
        return answer
    until = turn.today + timedelta(days=made.pause_days)
    details = {
        _CODE: made.cause or "unclear", _UNTIL: until.isoformat(), _SHARE: made.resume_fraction,
    }  # fmt: skip
    left = ""
    async with turn.writing() as told:
        if some is not None:
            kind = kind_of(plants[0], turn.words) or label(plants[0], turn.words)
            held = plants[0].count
            part = await split(told, plants[0], some)
            left = "\n" + turn.words.say("plants-split", left=held - some, kind=kind)
            plants = [part]
            turn.keep_plants(plants)
        await log.record(
            told, (log.Entry(EventKind.READING, p.id, details=dict(details)) for p in plants)
        )
    many = "many" if sum(p.count for p in plants) > 1 else "one"
    line = turn.words.say("rescue-logged", day=turn.words.day(until, turn.today), n=many) + left
    looks = _looks(turn, made, plants) if some is None else []
    return answer.model_copy(
        update={
            "reply": f"{answer.reply}\n{line}",
            "choices": [*answer.choices, *looks, "undo"],
            "details": {**(answer.details or {}), _UNTIL: until.isoformat()},
        }
    )


def overfed(plants: Sequence[Plant], on: date) -> list[log.Entry]:
    """What goes into the log of plants that got too much feed on a day."""
    share = after_too_much()[1]
    details = {_CODE: OVERFED, _UNTIL: _fed_again(on).isoformat(), _SHARE: share}
    return [log.Entry(EventKind.READING, p.id, on=on, details=dict(details)) for p in plants]


def overfed_line(turn: Turn, plants: Sequence[Plant], on: date) -> str:
    """That the plan flushes them first and gives no feed, and until when."""
    until = turn.words.day(_fed_again(on), turn.today)
    return turn.words.say("overfed-logged", plants=labels(plants, turn.words), day=until)


def _fed_again(on: date) -> date:
    return on + timedelta(days=after_too_much()[0])


def is_pause(event: Event) -> bool:
    """Whether an entry is a rescue that was judged."""
    return _CODE in event.details and not is_overfed(event)


def is_overfed(event: Event) -> bool:
    """Whether an entry only says that a feed was too strong."""
    return event.details.get(_CODE) == OVERFED


def _looks(turn: Turn, made: Plan, plants: Sequence[Plant]) -> list[str]:
    """A reminder to look again, to be set by a tap."""
    days = [a.day for a in made.actions if a.day > 1 and a.code.startswith("look")]
    if not days or len(plants) != 1:
        return []
    on = turn.today + timedelta(days=min(days))
    plant = plants[0].name or plants[0].genus or ""
    # the day as the message would say it, in words that are read again
    said = turn.words.say("rescue-remind", plant=plant, day=on.day, month=f"m{on.month}")
    return [said] if plant else []


async def pauses(turn: Turn, plants: Sequence[Plant], day: date) -> dict[int, Pause]:
    """The plants that recover, by their ids: the newest rescue of each that still counts.

    New growth that was told since ends a pause; so does a feed once it is over.
    """
    if not plants or turn.owner is None:
        return {}
    since = day - timedelta(days=LOOKED_BACK)
    async with turn.records.reading() as session:
        rows = await log.entries(
            session, turn.owner_id, since=since, kinds=(EventKind.READING,), limit=1_000
        )
    newest = {r.plant_id: r for r in rows if r.plant_id is not None and _UNTIL in r.details}
    found = {}
    for plant in plants:
        row = newest.get(plant.id)
        pause = _pause_of(row, plant) if row is not None else None
        if pause is not None and not _over(pause, plant, day):
            found[plant.id] = pause
    return found


def _pause_of(row: Event, plant: Plant) -> Pause | None:
    share: Any = row.details.get(_SHARE)
    try:
        until = date.fromisoformat(str(row.details[_UNTIL]))
    except ValueError:  # records that were taken in from elsewhere
        return None
    rinsed = plant.last_clear_on if plant.medium == "mounted" else None
    washed = max((d for d in (plant.last_flush_on, rinsed) if d is not None), default=None)
    flush = is_overfed(row) and (washed is None or washed < row.on)
    return Pause(row.on, until, float(share) if isinstance(share, int | float) else None, flush)


def _over(pause: Pause, plant: Plant, day: date) -> bool:
    grows = growth_on(plant, day) in GROWING and plant.growth_since is not None
    if grows and plant.growth_since is not None and plant.growth_since > pause.since:
        return True
    fed = plant.last_fed_on is not None and plant.last_fed_on >= pause.until
    return day >= pause.until and (fed or pause.share is None)


async def note(turn: Turn, plants: Sequence[Plant]) -> str:
    """That plants a dose was worked out for recover, and until when; empty where none does."""
    found = await pauses(turn, plants, turn.today)
    waiting = [p for p in plants if p.id in found and found[p.id].days_left(turn.today)]
    if not waiting:
        return ""
    until = max(found[p.id].until for p in waiting)
    flush = any(found[p.id].flush_first for p in waiting)
    return turn.words.say(
        "overfed-still" if flush else "rescue-still",
        plants=labels(waiting, turn.words),
        day=turn.words.day(until, turn.today),
        n="many" if sum(p.count for p in waiting) > 1 else "one",
    )
