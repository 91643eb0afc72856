"""Plants on record that take no feed whoever asks: after a rescue, too much feed, a new pot,
or with salts in it that were measured and not washed out since."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import timedelta

from bot.conversation.collection import labels
from bot.conversation.turn import Turn
from bot.conversation.turns.standing import rescue_log
from bot.conversation.turns.standing.advice import state_of
from bot.conversation.turns.standing.pot_logs import pot_logs
from bot.dosing.advice import days_without_feed
from bot.records.models import Plant


@dataclass(frozen=True, slots=True)
class Healing:
    """Which plants take no feed yet, by their ids, and what to say of them."""

    ids: frozenset[int]
    lines: str


async def healing(turn: Turn, plants: Sequence[Plant]) -> Healing:
    """Those of some plants that take no feed yet, and until when."""
    today, words = turn.today, turn.words
    paused = await rescue_log.pauses(turn, plants, today)
    waiting = {i for i, pause in paused.items() if pause.days_left(today)}
    left = {p.id: days_without_feed(state_of(p, today, south=turn.south)) for p in plants}
    repotted = [p for p in plants if left[p.id] and p.id not in waiting]
    logs = await pot_logs(turn, turn.collection, plants, today)
    salty = [log.plant for log in logs if log.read_over() and log.plant.id not in waiting]
    repotted = [p for p in repotted if p not in salty]
    lines = [await rescue_log.note(turn, plants)]
    if salty:
        lines.append(words.say("reading-still", plants=labels(salty, words)))
    if repotted:
        until = today + timedelta(days=max(left[p.id] for p in repotted))
        said = labels(repotted, words)
        lines.append(words.say("repot-still", plants=said, day=words.day(until, today)))
    ids = frozenset(waiting).union(p.id for p in (*repotted, *salty))
    return Healing(ids, "\n".join(line for line in lines if line))
