"""A calendar file of what is coming: iCalendar, RFC 5545, by the icalendar library.

Titles and descriptions are given; no sentence is made here. What comes again is an RRULE in its
own zone, described by a VTIMEZONE, wherever that rule gives just the occurrences that will come;
one that was moved is an exception to it, one that is passed over an EXDATE. Where no rule gives
them, each is named (RDATE).

A calendar that takes a newer file in knows the same entries by their UID (3.8.4.7), so it is made
of what never changes.
"""

from __future__ import annotations

import hashlib
import unicodedata
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace
from datetime import UTC, date, datetime, timedelta, tzinfo
from typing import TYPE_CHECKING

from .catching_up import Waiting
from .quiet import USUAL, Quiet, awake
from .rhythm import Due, Rhythm, coming, to_local, to_utc, zone_of

if TYPE_CHECKING:  # the library is loaded when a file is made
    from icalendar import Event, Timezone, TimezoneDaylight, TimezoneStandard, vRecur

#: So far back is looked for the occurrence that was moved, and for a zone's last change.
_LOOK_BACK = timedelta(days=400)
_TICK = timedelta(microseconds=1)
#: Written as UTC, with a Z and without a VTIMEZONE (3.3.5, form 2).
_PLAIN_UTC = frozenset({"UTC", "Etc/UTC"})


@dataclass(frozen=True, slots=True)
class Series:
    """A reminder with what comes of it: `dues` from `occurrences`, at least one."""

    uid: str
    title: str
    description: str
    rhythm: Rhythm
    dues: Sequence[Due]


@dataclass(frozen=True, slots=True)
class Day:
    """Something of a whole day."""

    uid: str
    title: str
    description: str
    on: date


def uid_of(*parts: str | int) -> str:
    """Return a UID of what never changes; nobody reads from it what went in."""
    said = "\x1f".join(map(str, parts))
    return f"{hashlib.sha256(said.encode()).hexdigest()[:32]}@sinkside"


def occurrences(one: Waiting, now: datetime, before: datetime, quiet: Quiet = USUAL) -> list[Due]:
    """Return what will come of a reminder between two instants, in order.

    Where the first was moved, its `local` is the occurrence of the rule that it stands for.

    Parameters
    ----------
    one
        The reminder with when it comes next.
    now, before
        Instants with a zone; neither counts.
    quiet
        Hours in which nothing comes whose clock time we chose.

    Raises
    ------
    UnfitRule
        The rhythm is not one.
    """
    rhythm, local = one.rhythm, one.due_local
    passed = max(now, one.due_at, one.due_at if local is None else to_utc(local, rhythm.zone))
    found = coming(rhythm, passed, before)
    if not one.as_said:
        found = [awake(due, rhythm.zone, quiet) for due in found]
    if local is not None and now < one.due_at < before:
        found.insert(0, Due(one.due_at, _stands_for(rhythm, local)))
    return [due for due in found if due.at < before]


def _stands_for(rhythm: Rhythm, local: datetime) -> datetime:
    """The last occurrence of the rule up to a clock time; that time where there is none."""
    at = to_utc(local, rhythm.zone)
    found = coming(rhythm, at - _LOOK_BACK, at + _TICK)
    return found[-1].local if found else local


def calendar_of(series: Iterable[Series], days: Iterable[Day], stamp: datetime) -> str:
    """Return a calendar as the text of its file, with CRLF and lines of 75 octets at most.

    A calendar needs an entry (3.6): with neither series nor days it is no valid one.

    Parameters
    ----------
    series, days
        What is in it; no UID twice.
    stamp
        When it was made, with a zone.

    References
    ----------
    RFC 5545: 3.1 lines, 3.6.1 VEVENT, 3.6.5 VTIMEZONE, 3.8.5 recurrence, 3.8.7.2 DTSTAMP.
    """
    from icalendar import Calendar

    calendar = Calendar()
    calendar.add("prodid", "-//Sinkside//Sinkside//EN")
    calendar.add("version", "2.0")
    series = list(series)
    spans: dict[str, list[datetime]] = {}
    for one in series:
        edges = [one.dues[0].local, *(to_local(due.at, one.rhythm.zone) for due in one.dues)]
        spans.setdefault(one.rhythm.zone, []).extend((min(edges), max(edges)))
    for name in sorted(spans.keys() - _PLAIN_UTC):
        calendar.add_component(_zone(name, min(spans[name]), max(spans[name])))
    for one in series:
        for event in _events(one, stamp):
            calendar.add_component(event)
    for day in days:
        event = _event(day, stamp)
        event.add("dtstart", day.on)
        event.add("dtend", day.on + timedelta(days=1))
        calendar.add_component(event)
    written: bytes = calendar.to_ical()
    return written.decode("utf-8")


def _events(one: Series, stamp: datetime) -> list[Event]:
    """A reminder's entry, and its exception where the first was moved."""
    name, (first, *rest) = one.rhythm.zone, one.dues
    event = _event(one, stamp)
    moved_at = _moment(first.at, name)
    if not rest:
        event.add("dtstart", moved_at)
        return [event]
    rule = _rule(one)
    if rule is None:
        event.add("dtstart", moved_at)
        event.add("rdate", [_moment(due.at, name) for due in rest])
        return [event]
    made, passed_over = rule
    event.add("dtstart", _in_zone(first.local, name))
    event.add("rrule", made)
    if passed_over:
        event.add("exdate", [_in_zone(local, name) for local in passed_over])
    if first.at == to_utc(first.local, name):
        return [event]
    exception = _event(one, stamp)
    exception.add("recurrence-id", _in_zone(first.local, name))
    exception.add("dtstart", moved_at)
    return [event, exception]


def _rule(one: Series) -> tuple[vRecur, list[datetime]] | None:
    """The RRULE that gives the occurrences, with those to leave out; None where none does."""
    from icalendar import vRecur

    rhythm, (first, *rest) = one.rhythm, one.dues
    if rhythm.rule is None or any(due.at != to_utc(due.local, rhythm.zone) for due in rest):
        return None
    parts = [p for p in rhythm.rule.split(";") if not p.startswith(("COUNT=", "UNTIL="))]
    # In UTC, as the start has a zone; the last occurrence itself still counts (3.3.10).
    until = to_utc(one.dues[-1].local, rhythm.zone)
    text = ";".join([*parts, f"UNTIL={until:%Y%m%dT%H%M%SZ}"])
    begun = to_utc(first.local, rhythm.zone)
    ours = replace(rhythm, rule=text, start=first.local)
    given = [due.local for due in coming(ours, begun - _TICK, until + _TICK)]
    wanted = [due.local for due in one.dues]
    if given[:1] != wanted[:1] or not set(wanted) <= set(given):
        return None
    return vRecur.from_ical(text), [local for local in given if local not in wanted]


def _event(said: Series | Day, stamp: datetime) -> Event:
    from icalendar import Event

    event = Event()
    event.add("uid", said.uid)
    event.add("dtstamp", stamp.astimezone(UTC).replace(microsecond=0))
    event.add("summary", " ".join(_clean(said.title).split()))
    if said.description:
        event.add("description", _clean(said.description))
    event.add("transp", "TRANSPARENT")  # nobody is busy through it
    return event


def _clean(text: str) -> str:
    """Without the control characters that no text may hold (3.3.11); lines end with LF."""
    lines = text.splitlines()
    kept = ("".join(c for c in x if unicodedata.category(c) not in ("Cc", "Cs")) for x in lines)
    return "\n".join(kept)


# --- zones ----------------------------------------------------------------------------------------


def _in_zone(local: datetime, name: str) -> datetime:
    zone: tzinfo = UTC if name in _PLAIN_UTC else zone_of(name)
    return local.replace(tzinfo=zone, fold=0)


def _moment(at: datetime, name: str) -> datetime:
    """An instant on the clock of a zone; in UTC where that clock shows the hour a second time."""
    local = to_local(at, name)
    return _in_zone(local, name) if to_utc(local, name) == at else at.astimezone(UTC)


def _zone(name: str, first: datetime, last: datetime) -> Timezone:
    """A zone as far as its entries need it: the last change before the first, and each since.

    The library's own has the hour after a change where the standard wants the one before it: an
    onset is told on the clock that still goes (3.6.5).
    """
    from icalendar import Timezone

    begin = to_utc(first, name) - timedelta(days=1)
    end = to_utc(last, name) + timedelta(days=2)
    dawn = begin - _LOOK_BACK
    days = (dawn + timedelta(days=n) for n in range((end - dawn).days))
    changes = [at for day in days if (at := _change(name, day, day + timedelta(days=1)))]
    earlier = [at for at in changes if at <= begin]
    made = Timezone()
    made.add("tzid", name)
    if not earlier:
        made.add_component(_observance(name, begin, begin))
    for at in [*earlier[-1:], *(at for at in changes if at > begin)]:
        made.add_component(_observance(name, at, at - timedelta(seconds=1)))
    return made


def _change(name: str, day: datetime, following: datetime) -> datetime | None:
    """The instant in a day from which another offset holds [UTC]; None where none does."""
    zone = zone_of(name)
    before = day.astimezone(zone).utcoffset()
    if following.astimezone(zone).utcoffset() == before:
        return None
    low, high = 0, round((following - day).total_seconds())
    while high - low > 1:
        middle = (low + high) // 2
        same = (day + timedelta(seconds=middle)).astimezone(zone).utcoffset() == before
        low, high = (middle, high) if same else (low, middle)
    return day + timedelta(seconds=high)


def _observance(
    name: str, at: datetime, just_before: datetime
) -> TimezoneStandard | TimezoneDaylight:
    """From an instant on one offset: summer time where clocks go forward for it.

    Some zones have their winter down as the exception; a calendar need not know.
    """
    from icalendar import TimezoneDaylight, TimezoneStandard

    zone = zone_of(name)
    here, there = at.astimezone(zone), just_before.astimezone(zone)
    was, holds = there.utcoffset(), here.utcoffset()
    assert was is not None  # of a zone of the database
    assert holds is not None
    summer = holds > was and bool(here.dst() or there.dst())
    made = TimezoneDaylight() if summer else TimezoneStandard()
    made.add("dtstart", (at + was).replace(tzinfo=None, microsecond=0))
    made.add("tzoffsetfrom", was)
    made.add("tzoffsetto", holds)
    made.add("tzname", here.tzname() or name)
    return made
