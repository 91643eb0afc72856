"""A calendar file read by others: parsed by icalendar, expanded by dateutil alone.

The zones are those that the file describes, read by dateutil; nothing of ours reckons here.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import UTC, date, datetime, timedelta, tzinfo
from io import StringIO
from typing import Any

from dateutil import tz
from dateutil.rrule import rrulestr
from icalendar import Calendar


@dataclass(frozen=True)
class Entry:
    """One occurrence; `at` in UTC, or a day."""

    uid: str
    title: str
    at: datetime | date


def unfolded(text: str) -> list[str]:
    """The content lines (RFC 5545, 3.1): a break before a blank is none."""
    return text.replace("\r\n ", "").replace("\r\n\t", "").split("\r\n")[:-1]


def zones_of(text: str) -> dict[str, tzinfo]:
    """The zones that a file describes, as dateutil understands them."""
    if "BEGIN:VTIMEZONE" not in text:
        return {}
    read = tz.tzical(StringIO("\n".join(unfolded(text))))
    return {name: read.get(name) for name in read.keys()}  # noqa: SIM118 (no mapping)


def parsed(text: str) -> Any:
    """The one calendar of a file."""
    (calendar,) = Calendar.from_ical(text, multiple=True)
    return calendar


def entries(text: str) -> list[Entry]:
    """All occurrences of a file, in order; what was moved stands where it went."""
    zones = zones_of(text)
    events = parsed(text).walk("VEVENT")
    moved = {
        (str(e["UID"]), _instant(e["RECURRENCE-ID"], zones)): e
        for e in events
        if "RECURRENCE-ID" in e
    }
    found = []
    for event in events:
        if "RECURRENCE-ID" in event:
            continue
        uid = str(event["UID"])
        for at in _times(event, zones):
            instead = moved.pop((uid, at), None) if isinstance(at, datetime) else None
            shown = event if instead is None else instead
            when = at if instead is None else _instant(instead["DTSTART"], zones)
            found.append(Entry(uid, str(shown["SUMMARY"]), when))
    assert not moved, "an exception to something that never comes"
    return sorted(found, key=lambda e: (e.at.isoformat(), e.uid))


def _times(event: Any, zones: dict[str, tzinfo]) -> Iterator[datetime | date]:
    start = event["DTSTART"]
    if not isinstance(start.dt, datetime):
        yield start.dt
        return
    begins = _wall(start.dt, start.params.get("TZID"), zones)
    locals_ = [begins]
    if "RRULE" in event:
        locals_ = list(rrulestr(event["RRULE"].to_ical().decode(), dtstart=begins))
    passed_over = _dates(event, "EXDATE", zones)
    times = {tz.resolve_imaginary(local).astimezone(UTC) for local in locals_}
    yield from sorted((times | _dates(event, "RDATE", zones)) - passed_over)


def _dates(event: Any, name: str, zones: dict[str, tzinfo]) -> set[datetime]:
    held = event.get(name, [])
    lists = held if isinstance(held, list) else [held]
    return {_utc(value.dt, one.params.get("TZID"), zones) for one in lists for value in one.dts}


def _instant(prop: Any, zones: dict[str, tzinfo]) -> datetime:
    return _utc(prop.dt, prop.params.get("TZID"), zones)


def _utc(moment: datetime, name: str | None, zones: dict[str, tzinfo]) -> datetime:
    return tz.resolve_imaginary(_wall(moment, name, zones)).astimezone(UTC)


def _wall(moment: datetime, name: str | None, zones: dict[str, tzinfo]) -> datetime:
    """A moment in the zone of the file; without one it has to be in UTC (3.3.5, form 2)."""
    if name is None:
        assert moment.utcoffset() == timedelta(0)
        return moment.replace(tzinfo=UTC)
    return moment.replace(tzinfo=zones[name])
