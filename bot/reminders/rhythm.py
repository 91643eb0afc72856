"""Recurrence: a rule at a clock time in a zone, whatever daylight saving does there.

A rule is the value of an RRULE without DTSTART (RFC 5545, section 3.3.10), as far as it makes
sense for plants: days, weeks, months and years. The occurrences are found on the clock on the
wall and each is then turned into an instant, so nine o'clock stays nine o'clock.

A clock time that a zone skips is moved on by what is skipped (02:30 becomes 03:30), one that
it has twice means the first: RFC 5545, section 3.3.5. The zones are those of the IANA database.

A first moment that does not fit its rule is no occurrence (RFC 5545 leaves it undefined).
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass
from datetime import UTC, datetime, time, timedelta
from functools import lru_cache
from itertools import islice
from zoneinfo import ZoneInfo, ZoneInfoNotFoundError

from dateutil.rrule import rrule, rrulestr

#: The longest rule [characters], and the largest INTERVAL and COUNT (ours).
MOST_CHARACTERS, MOST_INTERVAL, MOST_COUNT = 200, 1000, 1000
#: How far ahead an occurrence is looked for [years]: from 2096 there are eight to 29 February.
HORIZON_YEARS = 9

_FREQUENCIES = {"DAILY": 1, "WEEKLY": 7, "MONTHLY": 31, "YEARLY": 366}  # days at most
_MOVED = timedelta(days=2)
"""More than any zone has ever moved its clocks: Samoa left out a whole day in 2011."""

_LONGEST = (0, 31, 29, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31)
"""Days of each month at most."""

_DAY = r"[+-]?\d{0,2}(?:MO|TU|WE|TH|FR|SA|SU)"
_NUMBER = r"[+-]?[1-9]\d{0,2}"
_PARTS = {
    "FREQ": "|".join(_FREQUENCIES),
    "INTERVAL": r"[1-9]\d{0,3}",
    "COUNT": r"[1-9]\d{0,3}",
    "UNTIL": r"\d{8}(?:T\d{6}Z?)?",
    "BYDAY": rf"{_DAY}(?:,{_DAY}){{0,30}}",
    "BYMONTHDAY": rf"{_NUMBER}(?:,{_NUMBER}){{0,61}}",
    "BYMONTH": r"(?:[1-9]|1[0-2])(?:,(?:[1-9]|1[0-2])){0,11}",
    "BYSETPOS": rf"{_NUMBER}(?:,{_NUMBER}){{0,30}}",
}


class UnfitRule(ValueError):
    """A rule, a first moment or a zone that we do not take; the message says why."""


@dataclass(frozen=True, slots=True)
class Rhythm:
    """When something comes again.

    Attributes
    ----------
    rule : value of an RRULE without DTSTART; None for once
    start : the first moment, local and naive (DTSTART)
    zone : IANA name
    """

    rule: str | None
    start: datetime
    zone: str

    @classmethod
    def of(cls, rule: str | None, start: str, zone: str) -> Rhythm:
        """Return the rhythm that the records keep as texts (`start` as ISO 8601).

        Raises
        ------
        UnfitRule
            The first moment is not one.
        """
        try:
            return cls(rule, datetime.fromisoformat(start), zone)
        except ValueError:
            raise UnfitRule(f"not a moment: {start[:40]!r}") from None


@dataclass(frozen=True, slots=True, order=True)
class Due:
    """One occurrence: `at` the instant [UTC], `local` the wall clock as the rule has it."""

    at: datetime
    local: datetime


def check(rule: str | None) -> None:
    """Refuse a rule that we do not take.

    Raises
    ------
    UnfitRule
        An unknown part, a part twice, a frequency of hours or less, or a number too large.
    """
    _parts(rule)


def next_due(rhythm: Rhythm, after: datetime) -> Due | None:
    """Return the first occurrence strictly after an instant; None where there is none.

    Parameters
    ----------
    rhythm
        What comes again.
    after
        An instant, with a zone.

    Raises
    ------
    UnfitRule
        The rhythm is not one.
    """
    zone = zone_of(rhythm.zone)
    since = _wall(after, zone) - _MOVED
    for local in _locals(rhythm, zone, since, _horizon(rhythm, since)):
        at = to_utc(local, rhythm.zone)
        if at > after:
            return Due(at, local)
    return None


def coming(rhythm: Rhythm, after: datetime, before: datetime) -> list[Due]:
    """Return all occurrences strictly after one instant and strictly before another.

    Two that fall on the same instant, as on a day that a zone left out, are one.

    Raises
    ------
    UnfitRule
        The rhythm is not one.
    """
    zone = zone_of(rhythm.zone)
    until = _wall(before, zone) + _MOVED
    found: dict[datetime, Due] = {}
    for local in _locals(rhythm, zone, _wall(after, zone) - _MOVED, until):
        at = to_utc(local, rhythm.zone)
        if after < at < before:
            found.setdefault(at, Due(at, local))
    return list(found.values())


def to_utc(local: datetime, zone: str) -> datetime:
    """Return the instant of a clock time [UTC]; skipped ones move on, of two the first counts.

    Raises
    ------
    UnfitRule
        There is no such zone.
    """
    # With fold=0 a skipped time is read by the offset before the gap (PEP 495): which is the
    # instant of the clock moved on by the gap.
    return local.replace(tzinfo=zone_of(zone), fold=0).astimezone(UTC)


def to_local(at: datetime, zone: str) -> datetime:
    """Return what the clock on the wall shows at an instant, naive.

    Raises
    ------
    UnfitRule
        There is no such zone.
    """
    return _wall(at, zone_of(zone))


@lru_cache(maxsize=1024)
def zone_of(name: str) -> ZoneInfo:
    """Return a zone of the IANA database.

    Raises
    ------
    UnfitRule
        There is none of this name.
    """
    try:
        return ZoneInfo(name)
    except (ZoneInfoNotFoundError, ValueError, OSError):
        raise UnfitRule(f"no zone {name[:64]!r}") from None


def of_interval(rule: str | None) -> bool:
    """Whether a rule counts from the last time, rather than naming days of week, month or year."""
    parts = _parts(rule)
    return bool(parts) and not parts.keys() & {"BYDAY", "BYMONTHDAY", "BYSETPOS", "COUNT"}


def _wall(at: datetime, zone: ZoneInfo) -> datetime:
    if at.tzinfo is None:
        raise ValueError("an instant needs a zone")
    return at.astimezone(zone).replace(tzinfo=None, fold=0)


@lru_cache(maxsize=4096)
def _parts(rule: str | None) -> dict[str, str]:
    """The parts of a rule by name, each of them checked; empty for once."""
    if rule is None:
        return {}
    if len(rule) > MOST_CHARACTERS:
        raise UnfitRule(f"longer than {MOST_CHARACTERS} characters")
    parts: dict[str, str] = {}
    for part in rule.split(";"):
        name, _, value = part.partition("=")
        if name not in _PARTS or name in parts or not re.fullmatch(_PARTS[name], value):
            raise UnfitRule(f"cannot take {part[:40]!r}")
        parts[name] = value
    _check_numbers(parts)
    return parts


def _check_numbers(parts: dict[str, str]) -> None:
    frequency = parts.get("FREQ")
    if frequency is None:
        raise UnfitRule("no FREQ")
    if int(parts.get("INTERVAL", "1")) > MOST_INTERVAL or int(parts.get("COUNT", "1")) > MOST_COUNT:
        raise UnfitRule("a number that is too large")
    if "COUNT" in parts and "UNTIL" in parts:
        raise UnfitRule("both COUNT and UNTIL")
    if "BYSETPOS" in parts and not parts.keys() & {"BYDAY", "BYMONTHDAY", "BYMONTH"}:
        raise UnfitRule("BYSETPOS needs something to choose from")
    if parts.keys() & {"BYMONTHDAY", "BYSETPOS"} and frequency in ("DAILY", "WEEKLY"):
        raise UnfitRule("days of the month are for months and years")
    months = [int(month) for month in parts.get("BYMONTH", "1").split(",")]
    longest = max(_LONGEST[month] for month in months)
    for number in parts.get("BYMONTHDAY", "1").split(","):
        if abs(int(number)) > longest:
            raise UnfitRule(f"no day {number} in those months")
    for number in parts.get("BYSETPOS", "1").split(","):
        if abs(int(number)) > 366:
            raise UnfitRule(f"no {number} in BYSETPOS")
    for day in parts.get("BYDAY", "MO").split(","):
        ordinal = day[:-2]
        if ordinal and (frequency in ("DAILY", "WEEKLY") or not 1 <= abs(int(ordinal)) <= 53):
            raise UnfitRule(f"cannot take {day!r} {frequency.lower()}")
    if "UNTIL" in parts:
        _until(parts["UNTIL"], ZoneInfo("UTC"))


def _until(value: str, zone: ZoneInfo) -> datetime:
    """The last local moment of a rule: a date means all of its day, Z an instant in UTC."""
    try:
        if "T" not in value:
            return datetime.combine(datetime.strptime(value, "%Y%m%d"), time(23, 59, 59))
        moment = datetime.strptime(value.removesuffix("Z"), "%Y%m%dT%H%M%S")
        return _wall(moment.replace(tzinfo=UTC), zone) if value.endswith("Z") else moment
    except (ValueError, OverflowError):
        raise UnfitRule(f"cannot take UNTIL={value[:20]}") from None


def _locals(rhythm: Rhythm, zone: ZoneInfo, since: datetime, until: datetime) -> Iterator[datetime]:
    """The local occurrences from one clock time to another, both included."""
    start = _start(rhythm)
    parts = _parts(rhythm.rule)
    if not parts:
        return iter([start] if since <= start <= until else [])
    if "UNTIL" in parts:
        until = min(until, _until(parts["UNTIL"], zone))
    if start > until:
        return iter([])
    count = parts.get("COUNT")
    if count is None:
        occurrences = _made(parts, _forward(parts, start, since), until)
    else:
        # Counted here: the first so many, however long ago they were.
        occurrences = islice(_made(parts, start, until), int(count))
    return (local for local in occurrences if local >= since)


def _made(parts: dict[str, str], start: datetime, until: datetime) -> Iterator[datetime]:
    """The occurrences of a rule, however many are asked for.

    A rule that never comes is walked to the end of the calendar in the year 9999, until or not.
    As the calendar is the same after 400 years, it is walked as late as it can be.
    """
    shift = (datetime.max.year - until.year) // 400 * 400
    start, until = (moment.replace(year=moment.year + shift) for moment in (start, until))
    wanted = ";".join(f"{k}={v}" for k, v in parts.items() if k not in ("COUNT", "UNTIL"))
    made = rrulestr(f"{wanted};UNTIL={until:%Y%m%dT%H%M%S}", dtstart=start)
    assert isinstance(made, rrule)  # a single rule, without dates beside it
    return (local.replace(year=local.year - shift) for local in made)


def _forward(parts: dict[str, str], start: datetime, since: datetime) -> datetime:
    """A later start with the same occurrences from then on: nobody walks through twenty years."""
    if parts["FREQ"] not in ("DAILY", "WEEKLY"):  # the others are not always as long
        return start
    days = _step_days(parts)
    # A week more than needed: a week that began before `since` counts as a whole.
    behind = (since - start).days - 7
    return start + timedelta(days=behind // days * days) if behind > days else start


def _start(rhythm: Rhythm) -> datetime:
    if rhythm.start.tzinfo is not None:
        raise UnfitRule("the first moment is a local one, without a zone")
    return rhythm.start


def _step_days(parts: dict[str, str]) -> int:
    return _FREQUENCIES[parts["FREQ"]] * int(parts.get("INTERVAL", "1"))


def _horizon(rhythm: Rhythm, since: datetime) -> datetime:
    """Until when to look: a rule may never come, such as the 31st of every other month."""
    parts = _parts(rhythm.rule)
    years = HORIZON_YEARS * max(1, -(-_step_days(parts) // 366)) if parts else 0
    since = max(since, _start(rhythm))
    if since.year + years >= datetime.max.year:
        return datetime.max.replace(microsecond=0)
    return since + timedelta(days=366 * years)
