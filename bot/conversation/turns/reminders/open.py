"""The pings that wait for an answer."""

from __future__ import annotations

from datetime import datetime, timedelta

from bot.conversation.turn import Turn
from bot.records import pings, reminders
from bot.records.models import Ping

#: A ping can be answered for so long (ours).
OPEN_FOR = timedelta(days=14)
#: Where a channel cannot send, pings are numbered by the moment they were shown [ms].
_A_MOMENT = 10**12


async def newest_open(turn: Turn, *, and_new: bool = False) -> list[Ping]:
    """The pings of the last message that got no answer yet.

    A message of pings that is tapped or replied to stands for its own; in a group with topics
    those of the topic come first. Those that come with this very answer were not seen yet;
    `and_new` where they count too.
    """
    if turn.owner is None:
        return []
    now_ms = ms(turn.incoming.said_at)
    async with turn.records.reading() as session:
        found = await pings.unanswered(session, turn.owner_id, since_ms=0)
    since = now_ms - _ms_of(OPEN_FOR)
    found = [
        p
        for p in found
        if (and_new or p.id not in turn.just_pinged)
        and since <= shown_ms(p)
        and p.due_ms <= ms(turn.by_now)
    ]
    found = await _meant(turn, found)
    if not found:
        return []
    newest = max(found, key=lambda p: p.id)
    if newest.message_id is None:
        return [p for p in found if p.message_id is None and p.due_ms >= newest.due_ms]
    return [p for p in found if p.message_id == newest.message_id]


async def _meant(turn: Turn, found: list[Ping]) -> list[Ping]:
    """The pings that can be meant here, of those that wait."""
    below = turn.incoming.below
    if turn.incoming.pulls or not found:
        return found
    async with turn.records.reading() as session:
        if below is not None and await pings.shown_by(session, turn.owner_id, below):
            return [p for p in found if p.message_id == below]
        if turn.incoming.group is None:
            return found
        topics = await reminders.topics(session, turn.owner_id)
    here = [p for p in found if topics.get(p.reminder_id) == turn.incoming.topic]
    return here or found


def shown_ms(ping: Ping) -> int:
    """When it was shown, as far as is known; otherwise when it was due."""
    moment_ms = ping.message_id or 0
    return moment_ms if moment_ms > _A_MOMENT else ping.due_ms


def ms(at: datetime) -> int:
    return round(at.timestamp() * 1000)


def _ms_of(span: timedelta) -> int:
    return round(span.total_seconds() * 1000)
