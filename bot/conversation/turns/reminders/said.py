"""A reminder in words: what it is for, how often it comes, and when next."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from datetime import date, datetime
from typing import Any, Protocol

from babel.dates import get_day_names, get_month_names

from bot.conversation.collection import Collection, is_of, labels, places_meant
from bot.conversation.turn import Turn
from bot.conversation.turns.reminders.rules import DAYS
from bot.conversation.wording import Wording
from bot.records.models import Plant
from bot.reminders.rhythm import to_local

#: From so many months on, those are told in which it does not come.
_MOST_OF_A_YEAR = 10


class Reminding(Protocol):
    """A reminder, as the records or what is due have it."""

    @property
    def kind(self) -> str: ...
    @property
    def text(self) -> str | None: ...
    @property
    def target(self) -> dict[str, Any]: ...
    @property
    def rule(self) -> str | None: ...
    @property
    def start(self) -> str: ...
    @property
    def zone(self) -> str: ...


# --- what ---------------------------------------------------------------------------------------


def plants_of(target: Mapping[str, Any], collection: Collection) -> list[Plant]:
    """The plants on record that a reminder is about."""
    if target.get("everything"):
        return list(collection.plants)
    ids, genera = set(target.get("plants", ())), target.get("genera", ())
    place = target.get("place")
    spots = {p.id for p in places_meant(place, collection)} if place else set()
    return [
        p
        for p in collection.plants
        if p.id in ids or (genera and is_of(p, genera)) or (spots and p.place_id in spots)
    ]


def what(reminder: Reminding, turn: Turn) -> str:
    """What it is for, in a few words; the person's own where they used more."""
    if reminder.text:
        return turn.words.say("reminder-own-words", text=reminder.text)
    about = whom(reminder.target, turn)
    return turn.words.say("reminder-what", kind=str(reminder.kind), plants=about or "none")


def whom(target: Mapping[str, Any], turn: Turn) -> str:
    """The plants in a few words; empty where none were named."""
    words = turn.words
    if target.get("everything"):
        return words.say("all-plants")
    if target.get("plants"):
        return labels(plants_of(target, turn.collection), words)
    if target.get("genera"):
        return words.listed(list(target["genera"]))
    return str(target.get("place") or "")


# --- how often ----------------------------------------------------------------------------------


def cadence(reminder: Reminding, words: Wording) -> str:
    """How often, with its clock time; for what comes once nothing."""
    start = datetime.fromisoformat(reminder.start)
    if reminder.rule is None or "COUNT=1;" in f"{reminder.rule};":
        return ""
    parts = dict(p.split("=", 1) for p in reminder.rule.split(";"))
    said = [_often(parts, start, words)]
    if parts["FREQ"] == "DAILY" and "BYDAY" in parts:
        left_out = [_weekday(d, words) for d in DAYS if d not in parts["BYDAY"].split(",")]
        said.append(words.say("reminder-not-days", days=words.listed(left_out)))
    if "BYMONTH" in parts and parts["FREQ"] != "YEARLY":
        said.append(_months([int(m) for m in parts["BYMONTH"].split(",")], words))
    said.append(words.say("reminder-at", time=words.clock(start.time())))
    if "UNTIL" in parts:
        last = datetime.strptime(parts["UNTIL"][:8], "%Y%m%d").date()
        said.append(words.say("reminder-until", day=_date(last, words)))
    if "COUNT" in parts:
        said.append(words.say("reminder-times", times=int(parts["COUNT"])))
    return " ".join(said)


def _often(parts: Mapping[str, str], start: datetime, words: Wording) -> str:
    every, unit = int(parts.get("INTERVAL", "1")), parts["FREQ"]
    if unit == "YEARLY":
        return _yearly(parts, start, every, words)
    days = parts.get("BYDAY", "")
    if unit == "WEEKLY" and days:
        if days == "MO,TU,WE,TH,FR":
            return words.say("reminder-workdays", every=every)
        named = words.listed([_weekday(d, words) for d in days.split(",")])
        return words.say("reminder-weekdays", every=every, days=named)
    if unit == "MONTHLY" and days:
        return words.say("reminder-nth", every=every, days=_nth_days(days, words))
    if unit == "MONTHLY" and "BYMONTHDAY" in parts:
        listed = _month_days(parts, words)
        return words.say("reminder-month-days", every=every, days=words.listed(listed))
    code = {"DAILY": "day", "WEEKLY": "week", "MONTHLY": "month"}[unit]
    return words.say("reminder-every", every=every, unit=code)


def _yearly(parts: Mapping[str, str], start: datetime, every: int, words: Wording) -> str:
    months = [int(m) for m in parts.get("BYMONTH", str(start.month)).split(",")]
    if parts.get("BYDAY"):
        names = get_month_names("wide", context="stand-alone", locale=words.language)
        named = words.listed([str(names[m]) for m in months])
        on = words.say("reminder-nth-yearly", days=_nth_days(parts["BYDAY"], words), months=named)
        return words.say("reminder-yearly", every=every, on=on)
    days = [int(d) for d in parts.get("BYMONTHDAY", str(start.day)).split(",")]
    long = "pattern-date-long"
    dates = [words.date(date(2024, m, max(d, 1)), long) for m in months for d in days]
    on = words.say("reminder-on", days=words.listed(dates))
    return words.say("reminder-yearly", every=every, on=on)


def _nth_days(days: str, words: Wording) -> str:
    named = [
        words.say("reminder-nth-day", nth=_nth(day[:-2]), day=_weekday(day[-2:], words))
        for day in days.split(",")
    ]
    return words.listed(named)


def _nth(number: str) -> str:
    return {"1": "first", "2": "second", "3": "third", "4": "fourth", "5": "fifth"}.get(
        number.lstrip("+"), "last"
    )


def _month_days(parts: Mapping[str, str], words: Wording) -> list[str]:
    days = [int(d) for d in parts["BYMONTHDAY"].split(",")]
    if "BYSETPOS" in parts:
        days = days[-1:]
    return [
        words.say("reminder-last-day")
        if day == -1
        else words.say("reminder-day-of-month", day=day, rest=day % 10 if day // 10 != 1 else 0)
        for day in days
    ]


def _weekday(code: str, words: Wording) -> str:
    names = get_day_names("wide", locale=words.language)
    return str(names[DAYS.index(code)])


def _months(months: Sequence[int], words: Wording) -> str:
    names = get_month_names("wide", locale=words.language)
    if len(months) >= _MOST_OF_A_YEAR:
        left_out = [str(names[m]) for m in range(1, 13) if m not in months]
        return words.say("reminder-not-months", months=words.listed(left_out))
    run = _run(months)
    if run is not None and len(run) > 2:
        return words.say("reminder-months", first=str(names[run[0]]), last=str(names[run[-1]]))
    return words.say("reminder-in-months", months=words.listed([str(names[m]) for m in months]))


def _run(months: Sequence[int]) -> list[int] | None:
    """Months that follow each other, across the turn of the year too."""
    held = set(months)
    starts = [m for m in months if (m + 10) % 12 + 1 not in held]
    if len(starts) != 1:
        return None
    return [(starts[0] + i - 1) % 12 + 1 for i in range(len(held))]


# --- when ---------------------------------------------------------------------------------------


def _date(day: date, words: Wording) -> str:
    return words.date(day, "pattern-date-year")


def moment(local: datetime, today: date, words: Wording) -> str:
    """A moment as one says it: 'tomorrow 9:00', 'Sun 5 Jul 9:00'."""
    return words.say(
        "reminder-moment", day=words.day(local.date(), today), time=words.clock(local.time())
    )


def comes(due_ms: int, zone: str, turn: Turn) -> str:
    """When it comes, on the clock where it was set."""
    from bot.conversation.reminding import instant

    local = to_local(instant(due_ms), zone)
    today = to_local(turn.incoming.said_at, zone).date()
    return moment(local, today, turn.words)
