"""From a rhythm as it was said to a rule with its first moment, on the person's own clock."""

from __future__ import annotations

from calendar import monthrange
from dataclasses import dataclass, replace
from datetime import UTC, date, datetime, time, timedelta

from bot.conversation.turn import UnfitDay, day_ahead
from bot.dosing.season import season_of
from bot.records.reminders import ReminderFields
from bot.reminders.catching_up import following
from bot.reminders.quiet import USUAL as QUIET
from bot.reminders.quiet import Quiet
from bot.reminders.rhythm import Due, Rhythm, UnfitRule, check, next_due, to_local, to_utc
from grammar import Rhythm as Said
from grammar import When

#: When somebody is reminded who named no clock time, or only a part of the day (ours).
USUAL = time(9)
PARTS = {
    "morning": time(9), "noon": time(12), "afternoon": time(15), "evening": time(18),
    "night": time(21),
}  # fmt: skip
DAYS = ("MO", "TU", "WE", "TH", "FR", "SA", "SU")
_FREQUENCIES = {"day": "DAILY", "week": "WEEKLY", "month": "MONTHLY", "year": "YEARLY"}
_SECONDS = {"hour": 3600, "minute": 60}
#: From this day of the month on, some months have no such day.
_LATE_DAY = 28


@dataclass(frozen=True, slots=True)
class Made:
    """A rhythm with its next moment; `as_said` where the person named the clock time."""

    rhythm: Rhythm
    due: Due
    as_said: bool

    @property
    def fields(self) -> ReminderFields:
        """What the records keep of it."""
        return ReminderFields(
            rule=self.rhythm.rule,
            start=self.rhythm.start.isoformat(timespec="seconds"),
            zone=self.rhythm.zone,
            offered=not self.as_said,
            **moment(self.due),
        )


def moment(due: Due, *, moved: bool = False) -> ReminderFields:
    """A due moment as the records keep it."""
    return ReminderFields(
        due_ms=round(due.at.timestamp() * 1000),
        due_local=due.local.isoformat(timespec="seconds"),
        moved=moved,
    )


def make(
    said: Said,
    now: datetime,
    zone: str,
    *,
    south: bool = False,
    last: date | None = None,
    quiet: Quiet = QUIET,
) -> Made:
    """The rule of a rhythm, and when it comes first.

    Parameters
    ----------
    said : as it was read
    now : the instant, with a zone
    zone : IANA name
    south : whether seasons are those of the south
    last : when it was done last; a rule that counts days counts from then
    quiet : the hours in which nobody is woken by what we chose

    Raises
    ------
    UnfitDay
        There is no such day, or it has passed.
    """
    local = to_local(now, zone)
    if not said.recurs and said.ahead is not None and said.ahead[1] in _SECONDS:
        # So long from now, also where the clock shows that time twice.
        at = now + timedelta(seconds=said.ahead[0] * _SECONDS[said.ahead[1]])
        at = at.astimezone(UTC).replace(microsecond=0)
        if at <= now:
            raise UnfitDay("refuse-reminder-past")
        shown = to_local(at, zone)
        return Made(Rhythm(None, shown, zone), Due(at, shown), True)
    as_said = said.clock is not None or (said.ahead is not None and said.ahead[1] in _SECONDS)
    rule: str | None
    if said.recurs:
        rule, start = _recurring(said, local, south=south, last=last)
    else:
        rule, start = _once(said, local, now, zone, south=south)
    return fit(rule, start, zone, now, as_said=as_said, quiet=quiet)


def fit(
    rule: str | None,
    start: datetime,
    zone: str,
    now: datetime,
    *,
    as_said: bool,
    quiet: Quiet = QUIET,
) -> Made:
    """A rule with its next moment.

    Raises
    ------
    UnfitDay
        It never comes.
    """
    try:
        check(rule)
        if rule is not None and "COUNT=" in rule:  # what has passed is not one of them
            bare = ";".join(p for p in rule.split(";") if not p.startswith("COUNT="))
            first = next_due(Rhythm(bare, start, zone), now)
            start = first.local if first is not None else start
        due = following(Rhythm(rule, start, zone), now, as_said=as_said, quiet=quiet)
    except UnfitRule as error:
        raise UnfitDay("refuse-rhythm") from error
    if due is None:
        raise UnfitDay("refuse-reminder-past")
    return Made(Rhythm(rule, due.local, zone), due, as_said)


def clock_of(said: Said) -> time:
    """The clock time that was said, or ours."""
    return time(*said.clock) if said.clock is not None else PARTS.get(said.part, USUAL)


def as_often(said: Said, every: int, unit: str) -> Said:
    """A day that is named for what comes every week or month: that of each."""
    if said.recurs:
        return said
    if said.month_days and unit == "month":
        return replace(said, every=every, unit=unit)
    weekday = said.day.value if said.day is not None and said.day.kind == "weekday" else None
    if weekday is None or unit != "week":
        return said
    return replace(said, every=every, unit=unit, weekdays=(weekday,), day=None)


# --- once ---------------------------------------------------------------------------------------


def _once(
    said: Said, local: datetime, now: datetime, zone: str, *, south: bool
) -> tuple[str | None, datetime]:
    clock, today = clock_of(said), local.date()
    if said.nth or said.month_days:
        return _first_of(said, datetime.combine(today, clock))
    if said.ahead is not None:
        return None, datetime.combine(shifted(today, *said.ahead), clock)
    if said.day is not None:
        return None, datetime.combine(next_day(said.day, local, clock), clock)
    if said.season:
        return None, datetime.combine(_season_start(said.season, today, south=south), clock)
    return None, at_clock(clock, local)


def _first_of(said: Said, start: datetime) -> tuple[str, datetime]:
    """The next such day of a month, as a rule that comes once."""
    parts = ["FREQ=YEARLY" if said.months else "FREQ=MONTHLY"]
    if said.months:
        parts.append(f"BYMONTH={','.join(map(str, said.months))}")
    parts += [*_days_of_month(said), "COUNT=1"]
    return ";".join(parts), start


def at_clock(clock: time, local: datetime) -> datetime:
    """The next time that the clock shows this."""
    today = datetime.combine(local.date(), clock)
    return today if today > local else today + timedelta(days=1)


def next_day(when: When, local: datetime, clock: time) -> date:
    """The day ahead that was said; a weekday that is today counts while its hour is to come.

    Raises
    ------
    UnfitDay
        There is no such day, or it has passed.
    """
    today = local.date()
    if when.kind == "of_month":
        year = today.year + (when.value <= today.month)
        return date(year, when.value, 1)
    day = day_ahead(when, today)
    passed = datetime.combine(day, clock) <= local
    if when.kind == "weekday" and passed:
        return day + timedelta(days=7)
    if when.kind == "date" and passed and when.year is None:
        return date(day.year + 1, day.month, day.day) if (day.month, day.day) != (2, 29) else day
    if passed:
        raise UnfitDay("refuse-reminder-past")
    return day


def shifted(day: date, number: int, unit: str) -> date:
    """So many days, weeks, months or years later; the last of a month where it is shorter."""
    if unit in ("day", "week"):
        return day + timedelta(days=number * (7 if unit == "week" else 1))
    months = day.year * 12 + day.month - 1 + number * (12 if unit == "year" else 1)
    year, month = months // 12, months % 12 + 1
    return date(year, month, min(day.day, monthrange(year, month)[1]))


# --- again and again ----------------------------------------------------------------------------


def _recurring(
    said: Said, local: datetime, *, south: bool, last: date | None
) -> tuple[str, datetime]:
    every, clock = said.every or 1, clock_of(said)
    start = _start_day(said, local, clock, last)
    months = said.months or _season_months(said.season, south=south)
    if said.not_season:
        left_out = _season_months(said.not_season, south=south)
        months = tuple(m for m in months or range(1, 13) if m not in left_out)
    if months and said.start is None and said.unit != "year" and start.month not in months:
        start = _into(months, start)
    parts = [f"FREQ={_FREQUENCIES[said.unit]}"]
    if every > 1:
        parts.append(f"INTERVAL={every}")
    if said.unit == "year":
        parts += _yearly(said, months)
    else:
        if months and len(months) < 12:
            parts.append(f"BYMONTH={','.join(map(str, sorted(months)))}")
        if said.unit == "week" and said.weekdays:
            parts.append(f"BYDAY={','.join(DAYS[d - 1] for d in said.weekdays)}")
            start = _on_weekday(start, said.weekdays, local, clock)
        elif said.unit == "day" and said.not_weekdays:  # RFC 5545: BYDAY limits what is daily
            kept = [d for n, d in enumerate(DAYS, 1) if n not in said.not_weekdays]
            parts.append(f"BYDAY={','.join(kept)}")
        elif said.unit == "month":
            parts += _days_of_month(said) or _days_of_month(replace(said, month_days=(start.day,)))
    ends = _end(said, start, local)
    return ";".join([*parts, *ends]), datetime.combine(start, clock)


def _start_day(said: Said, local: datetime, clock: time, last: date | None) -> date:
    if said.start is not None:
        return next_day(said.start, local.replace(hour=0, minute=0, second=0), clock)
    counts = said.unit in ("day", "week", "month") and not (said.weekdays or said.month_days)
    if last is not None and counts and shifted(last, said.every or 1, said.unit) > local.date():
        return last
    return local.date()


def _on_weekday(start: date, weekdays: tuple[int, ...], local: datetime, clock: time) -> date:
    """The first of these weekdays from a day on whose hour is to come: weeks count from it."""
    for ahead in range(8):
        day = start + timedelta(days=ahead)
        if day.isoweekday() in weekdays and datetime.combine(day, clock) > local:
            return day
    return start


def _days_of_month(said: Said) -> list[str]:
    if said.nth:
        return ["BYDAY=" + ",".join(f"{n}{DAYS[d - 1]}" for n in said.nth for d in said.weekdays)]
    if not said.month_days:
        return []
    late = [d for d in said.month_days if d > _LATE_DAY]
    if late and len(said.month_days) == 1 and not said.months:
        # The 31st of a month that has none is its last day.
        days = ",".join(str(d) for d in range(_LATE_DAY, late[0] + 1))
        return [f"BYMONTHDAY={days}", "BYSETPOS=-1"]
    return ["BYMONTHDAY=" + ",".join(map(str, said.month_days))]


def _yearly(said: Said, months: tuple[int, ...]) -> list[str]:
    if not months:
        return []
    months = months[:1] if said.season else months
    days = _days_of_month(said) or ["BYMONTHDAY=1"]
    return [f"BYMONTH={','.join(map(str, months))}", *days]


def _end(said: Said, start: date, local: datetime) -> list[str]:
    if said.until is not None:
        last = next_day(said.until, local.replace(hour=0, minute=0, second=0), time(23, 59))
        if said.until.kind == "of_month":
            last -= timedelta(days=1)
        return [f"UNTIL={last:%Y%m%d}"]
    if said.span is not None and said.span[1] not in ("hour", "minute"):
        last = shifted(start, *said.span) - timedelta(days=1)
        return [f"UNTIL={last:%Y%m%d}"]
    return [f"COUNT={said.times}"] if said.times is not None else []


def _season_months(season: str, *, south: bool) -> tuple[int, ...]:
    """The months of a season, its first one first."""
    if not season:
        return ()
    months = [m for m in range(1, 13) if season_of(m, south=south) == season]
    first = next(m for m in months if (m + 10) % 12 + 1 not in months)
    return tuple((first + i - 1) % 12 + 1 for i in range(len(months)))


def _season_start(season: str, today: date, *, south: bool) -> date:
    first = _season_months(season, south=south)[0]
    return date(today.year + (first <= today.month), first, 1)


def _into(months: tuple[int, ...], day: date) -> date:
    """The first day of the next of these months."""
    ahead = next(i for i in range(1, 13) if (day.month + i - 1) % 12 + 1 in months)
    return shifted(day.replace(day=1), ahead, "month")


# --- of one that is on record -------------------------------------------------------------------


def at_day(day: date, clock: time, occurrence: datetime, zone: str) -> Due:
    """An occurrence that is to come on another day."""
    return Due(to_utc(datetime.combine(day, clock), zone), occurrence)
