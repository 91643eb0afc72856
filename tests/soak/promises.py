"""Reminders that somebody set, when each must come, and which pings came of them. Pure.

When something is due is reckoned here once more, from the words alone: a clock time on the wall in
a zone, each day or once, or so many hours after it was said.
"""

from __future__ import annotations

from bisect import bisect_right
from collections import Counter
from collections.abc import Iterable
from dataclasses import dataclass, field
from datetime import UTC, datetime, time, timedelta
from itertools import pairwise
from zoneinfo import ZoneInfo

from tests.soak.ledger import NOTED_WITHIN_S, ON_THE_WIRE_S

#: A ping may come so much before its moment [s of the bot's clock]: times are kept to the second.
EARLY_S = 60.0


@dataclass(slots=True)
class Promise:
    """One reminder: `daily` at a clock time in `zone`, or `once_s` [s since 1970].

    Attributes
    ----------
    chat_id : who is reminded
    task : what the ping must say
    from_s : when it was set [s since 1970, the bot's clock]
    sure_s : when it was confirmed, None for at once; a moment between these may count or not
    until_s : when it was ended, None where it was not
    """

    chat_id: int
    task: str
    from_s: float
    zone: str = "UTC"
    daily: time | None = None
    once_s: float | None = None
    until_s: float | None = None
    sure_s: float | None = None

    def moments(self, end_s: float) -> list[float]:
        """When it must come, until an end [s since 1970]."""
        if self.once_s is not None:
            return [self.once_s] if self.once_s <= end_s else []
        assert self.daily is not None
        zone = ZoneInfo(self.zone)
        found: list[float] = []
        day = datetime.fromtimestamp(self.from_s, zone).date()
        while True:
            # A time that the clock passes twice is its first, as RFC 5545 has it.
            local = datetime.combine(day, self.daily, zone)
            at = local.astimezone(UTC).timestamp()
            if at > end_s:
                return found
            if at > self.from_s:
                found.append(at)
            day += timedelta(days=1)


@dataclass(frozen=True, slots=True)
class Ping:
    """A ping that came: `at_s` on the bot's clock [s since 1970], `real_s` [monotonic]."""

    chat_id: int
    text: str
    at_s: float
    real_s: float
    again: bool = False
    made: int | None = None


@dataclass
class Verdict:
    """What became of promises; `late_s` are the delays of those that came [s, bot's clock]."""

    due: int = 0
    kept: int = 0
    lost: list[str] = field(default_factory=list)
    repeated: list[tuple[str, bool, float, float]] = field(default_factory=list)
    unasked: list[str] = field(default_factory=list)
    late_s: list[float] = field(default_factory=list)


def judged(
    promises: Iterable[Promise],
    pings: Iterable[Ping],
    end_s: float,
    away: dict[int, list[tuple[float, float]]],
    settle_s: float,
) -> Verdict:
    """Hold what came against what was promised.

    Parameters
    ----------
    end_s : of the soak [s since 1970, the bot's clock]
    away : of chats that had blocked the bot, from when until when; nothing is owed then
    settle_s : what is due so shortly before an end may come or not [s, the bot's clock]
    """
    verdict = Verdict()
    by_chat: dict[int, list[Ping]] = {}
    for ping in sorted(pings, key=lambda p: p.real_s):
        by_chat.setdefault(ping.chat_id, []).append(ping)
    for promise in promises:
        told = [p for p in by_chat.get(promise.chat_id, ()) if promise.task in p.text]
        end = min(end_s, promise.until_s if promise.until_s is not None else end_s)
        _one(promise, told, end, settle_s, away.get(promise.chat_id, []), verdict)
    return verdict


def _one(
    promise: Promise,
    told: list[Ping],
    end_s: float,
    settle_s: float,
    away: list[tuple[float, float]],
    verdict: Verdict,
) -> None:
    moments = promise.moments(end_s + 86_400)
    got: dict[int, list[Ping]] = {}
    for ping in told:
        index = bisect_right(moments, ping.at_s + EARLY_S) - 1
        if index < 0:
            verdict.unasked.append(f"{promise.chat_id} {promise.task}: before it was due")
        got.setdefault(index, []).append(ping)
    for index, moment in enumerate(moments):
        pings = got.get(index, [])
        sure = promise.sure_s is None or promise.once_s is not None or moment > promise.sure_s
        owed = sure and moment <= end_s - settle_s and not _covers(away, moment, settle_s)
        verdict.due += owed
        if owed and not pings:
            verdict.lost.append(f"{promise.chat_id} {promise.task} at {moment:.0f}")
        verdict.kept += bool(owed and pings)
        if pings and owed:
            verdict.late_s.append(max(0.0, pings[0].at_s - moment))
        for before, ping in pairwise(pings):
            verdict.repeated.append(
                (f"{ping.chat_id} {promise.task}", ping.again, before.real_s, ping.real_s)
            )


def _covers(away: list[tuple[float, float]], moment: float, settle_s: float) -> bool:
    """Whether somebody was away when something was due, or shortly before or after."""
    return any(begin - settle_s <= moment <= end + settle_s for begin, end in away)


def excused(verdict: Verdict, kills: list[float], most_s: float) -> tuple[int, list[str]]:
    """Repeated pings that a kill excuses, at most one each, and those that nothing does.

    `most_s`: from the first to the second may pass so long at most [s]: a claim's time and a start.
    """
    used: Counter[float] = Counter()
    fine, wrong = 0, []
    for what, again, first_s, second_s in verdict.repeated:
        noted_s = min(second_s, first_s + NOTED_WITHIN_S)
        near = [k for k in kills if first_s - ON_THE_WIRE_S <= k <= noted_s and not used[k]]
        if near and again and second_s - first_s <= most_s:
            used[near[0]] += 1
            fine += 1
        else:
            wrong.append(f"{what} (says so: {again})")
    return fine, wrong
