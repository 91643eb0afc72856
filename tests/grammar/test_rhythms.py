"""How often and when somebody wants to be reminded, in many wordings."""

from __future__ import annotations

from typing import Any

import pytest

from grammar import Names, Order, Rhythm, When, read, read_rhythm
from grammar.orders.reminding import VERBS
from tests.grammar.told import messages

NAMES = Names(
    plants=("Ruby", "Snow White"),
    products=("blue tub", "green bottle"),
    places=("kitchen sill", "balcony"),
)


def order(text: str) -> Order:
    found = read(text, "en", names=NAMES).order
    assert found is not None
    return found


def rhythm(text: str) -> Rhythm:
    found = order(f"remind me {text} to flush").rhythm
    assert found is not None, text
    return found


# --- the messages that were written first ---------------------------------------------------------


def _plain(found: Order) -> dict[str, Any]:
    """An order in the words of the fixture."""
    said = found.rhythm or Rhythm()
    target = found.target
    whens = {
        name: None if w is None else [x for x in (w.kind, w.value, w.day) if x is not None]
        for name, w in (("day", said.day), ("until", said.until))
    }
    hours = found.hours or (None, None)
    return {
        "kind": found.task,
        "names": list(target.names),
        "genera": list(target.genera),
        "everything": target.everything,
        "place": target.place,
        "words": found.text,
        "text": found.text,
        "steps": list(found.steps),
        "every": said.every,
        "unit": said.unit,
        "weekdays": list(said.weekdays),
        "nth": list(said.nth),
        "month_days": list(said.month_days),
        "months": list(said.months),
        "season": said.season,
        "part": said.part,
        "doubt": said.doubt,
        "at": _clock(said.clock),
        "ahead": list(said.ahead or said.span or ()),
        "from": _clock(hours[0]),
        "to": _clock(hours[1]),
        "none": not said.says_when,
        **whens,
    }


def _clock(at: tuple[int, int] | None) -> str | None:
    return None if at is None else f"{at[0]:02}:{at[1]:02}"


@pytest.mark.parametrize("message", messages("en_reminders.jsonl"), ids=lambda m: m["text"])
def test_what_people_say_of_reminders(message: dict[str, Any]) -> None:
    found = order(message["text"])
    said = _plain(found)
    wanted = message["want"]
    assert found.verb == message["verb"]
    assert {key: said[key] for key in wanted} == wanted


@pytest.mark.parametrize(
    "name", ["en", "en_blind", "en_people", "en_records", "en_traps"]
)  # fmt: skip
def test_no_other_message_is_taken_for_one_about_reminders(name: str) -> None:
    readings = ((m["text"], read(m["text"], "en", names=NAMES)) for m in messages(f"{name}.jsonl"))
    taken = [t for t, r in readings if r.order is not None and r.order.verb in VERBS]
    assert taken == []


# --- how often --------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("said", "wanted"),
    [
        ("every day", Rhythm(1, "day")),
        ("daily", Rhythm(1, "day")),
        ("every other day", Rhythm(2, "day")),
        ("every 10 days", Rhythm(10, "day")),
        ("every ten days", Rhythm(10, "day")),
        ("every 3rd day", Rhythm(3, "day")),
        ("each week", Rhythm(1, "week")),
        ("weekly", Rhythm(1, "week")),
        ("once a week", Rhythm(1, "week")),
        ("every second week", Rhythm(2, "week")),
        ("every fortnight", Rhythm(2, "week")),
        ("fortnightly", Rhythm(2, "week")),
        ("once every two weeks", Rhythm(2, "week")),
        ("every couple of weeks", Rhythm(2, "week")),
        ("every 6 weeks", Rhythm(6, "week")),
        ("monthly", Rhythm(1, "month")),
        ("every 2 months", Rhythm(2, "month")),
        ("quarterly", Rhythm(3, "month")),
        ("twice a year", Rhythm(6, "month")),
        ("every year", Rhythm(1, "year")),
        ("twice a month", Rhythm(1, "month", month_days=(1, 15))),
        ("mondays", Rhythm(1, "week", (1,))),
        ("on mondays", Rhythm(1, "week", (1,))),
        ("every monday and friday", Rhythm(1, "week", (1, 5))),
        ("on tuesdays, thursdays and saturdays", Rhythm(1, "week", (2, 4, 6))),
        ("monday to friday", Rhythm(1, "week", (1, 2, 3, 4, 5))),
        ("friday to monday", Rhythm(1, "week", (1, 5, 6, 7))),
        ("on weekdays", Rhythm(1, "week", (1, 2, 3, 4, 5))),
        ("every weekend", Rhythm(1, "week", (6,))),
        ("every 3 weeks on wednesday", Rhythm(3, "week", (3,))),
        ("every other friday", Rhythm(2, "week", (5,))),
        ("every first sunday", Rhythm(1, "month", (7,), (1,))),
        ("every 1st sunday of the month", Rhythm(1, "month", (7,), (1,))),
        ("on the first sunday of each month", Rhythm(1, "month", (7,), (1,))),
        ("on the first and third sunday of every month", Rhythm(1, "month", (7,), (1, 3))),
        ("on the last friday of the month", Rhythm(1, "month", (5,), (-1,))),
        ("monthly on the second saturday", Rhythm(1, "month", (6,), (2,))),
        ("every second sunday of the month", Rhythm(1, "month", (7,), (2,))),
        ("every second sunday", Rhythm(2, "week", (7,), guess="every_second")),
        ("monthly on saturday", Rhythm(1, "month", (6,), (1,), guess="first_of_month")),
        ("on the 1st of each month", Rhythm(1, "month", month_days=(1,))),
        ("every 15th", Rhythm(1, "month", month_days=(15,))),
        ("on the 1st and 15th of each month", Rhythm(1, "month", month_days=(1, 15))),
        ("on the last day of each month", Rhythm(1, "month", month_days=(-1,))),
        ("every 3 march", Rhythm(1, "year", month_days=(3,), months=(3,))),
        ("every year on march 3rd", Rhythm(1, "year", month_days=(3,), months=(3,))),
        ("every may", Rhythm(1, "year", month_days=(1,), months=(5,))),
    ],
)  # fmt: skip
def test_how_often(said: str, wanted: Rhythm) -> None:
    assert rhythm(said) == wanted


@pytest.mark.parametrize(
    ("said", "months", "season"),
    [
        ("weekly from may to september", (5, 6, 7, 8, 9), ""),
        ("weekly between may and july", (5, 6, 7), ""),
        ("every week, october to march", (10, 11, 12, 1, 2, 3), ""),
        ("weekly, may-september", (5, 6, 7, 8, 9), ""),
        ("weekly in may and june", (5, 6), ""),
        ("weekly in summer", (), "summer"),
        ("every week during winter", (), "winter"),
    ],
)
def test_in_which_months(said: str, months: tuple[int, ...], season: str) -> None:
    found = rhythm(said)
    assert (found.every, found.unit) == (1, "week")
    assert (found.months, found.season) == (months, season)


@pytest.mark.parametrize(
    ("said", "field", "value"),
    [
        ("weekly until october", "until", When("of_month", 10)),
        ("weekly until the end of may", "until", When("of_month", 6)),
        ("weekly until 3 march", "until", When("date", 3, 3)),
        ("every week for 6 weeks", "span", (6, "week")),
        ("5 times, every 2 days,", "times", 5),
        ("every 2 weeks starting monday", "start", When("weekday", 1)),
        ("every day from tomorrow", "start", When("day", -1)),
        ("every 2 weeks from 3 march", "start", When("date", 3, 3)),
    ],
)
def test_from_when_and_how_long(said: str, field: str, value: object) -> None:
    found = rhythm(said)
    assert found.recurs
    assert getattr(found, field) == value


# --- once -------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("said", "wanted"),
    [
        ("in 3 weeks", Rhythm(ahead=(3, "week"))),
        ("in a month", Rhythm(ahead=(1, "month"))),
        ("in a fortnight", Rhythm(ahead=(2, "week"))),
        ("in a couple of weeks", Rhythm(ahead=(2, "week"))),
        ("3 days from now", Rhythm(ahead=(3, "day"))),
        ("next week", Rhythm(ahead=(1, "week"))),
        ("in 2 hours", Rhythm(ahead=(2, "hour"))),
        ("in half an hour", Rhythm(ahead=(30, "minute"))),
        ("tomorrow", Rhythm(day=When("day", -1))),
        ("the day after tomorrow", Rhythm(day=When("day", -2))),
        ("tonight", Rhythm(day=When("day", 0), part="evening")),
        ("on friday", Rhythm(day=When("weekday", 5))),
        ("next friday", Rhythm(day=When("weekday", 5))),
        ("this weekend", Rhythm(day=When("weekday", 6))),
        ("on 3 march", Rhythm(day=When("date", 3, 3))),
        ("on march 3rd", Rhythm(day=When("date", 3, 3))),
        ("on the 3rd of march 2027", Rhythm(day=When("date", 3, 3, 2027))),
        ("on 2027-03-03", Rhythm(day=When("date", 3, 3, 2027))),
        ("on the 15th", Rhythm(month_days=(15,))),
        ("in march", Rhythm(day=When("of_month", 3))),
        ("in spring", Rhythm(season="spring")),
        ("on the first sunday of june", Rhythm(weekdays=(7,), nth=(1,), months=(6,))),
    ],
)  # fmt: skip
def test_once(said: str, wanted: Rhythm) -> None:
    assert rhythm(said) == wanted


# --- the clock --------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("said", "clock", "guessed"),
    [
        ("at 9", (9, 0), True), ("at 7", (7, 0), True), ("at 3", (15, 0), True),
        ("at 12", (12, 0), False), ("at 18", (18, 0), False), ("at 9am", (9, 0), False),
        ("at 9 am", (9, 0), False), ("9 a.m.", (9, 0), False), ("at 9 pm", (21, 0), False),
        ("at six pm", (18, 0), False), ("at 12 am", (0, 0), False), ("at 12 pm", (12, 0), False),
        ("at 7:30", (7, 30), False), ("at 7.30", (7, 30), False), ("7:30 pm", (19, 30), False),
        ("at 1830", (18, 30), False), ("at 9 o'clock", (9, 0), True), ("at 18h", (18, 0), False),
        ("at half past eight", (8, 30), True), ("at quarter to ten", (9, 45), True),
        ("at nine thirty", (9, 30), True), ("at noon", (12, 0), False),
        ("at 7 in the evening", (19, 0), False), ("at 7 in the morning", (7, 0), False),
        ("at 7 tonight", (19, 0), False), ("@ 9", (9, 0), True), ("at 09:00", (9, 0), False),
    ],
)  # fmt: skip
def test_the_clock_time(said: str, clock: tuple[int, int], guessed: bool) -> None:
    found = rhythm(f"every day {said}")
    assert (found.clock, found.half_guessed) == (clock, guessed)
    assert not found.doubt


@pytest.mark.parametrize("part", ["morning", "afternoon", "evening"])
def test_a_part_of_the_day(part: str) -> None:
    assert rhythm(f"every {part}") == Rhythm(1, "day", part=part)
    assert rhythm(f"on mondays in the {part}") == Rhythm(1, "week", (1,), part=part)


# --- what cannot be kept as it was said -----------------------------------------------------------


@pytest.mark.parametrize(
    ("said", "doubt"),
    [
        ("twice a week", "which_days"), ("three times a week", "which_days"),
        ("biweekly", "two_meanings"), ("bimonthly", "two_meanings"),
        ("hourly", "too_often"), ("every 2 hours", "too_often"), ("twice a day", "too_often"),
        ("every 2-3 weeks", "range"), ("every 10 to 14 days", "range"),
        ("every two or three weeks", "range"), ("in 2 to 3 weeks", "range"),
        ("regularly", "vague"), ("now and then", "vague"), ("every few weeks", "vague"),
        ("every 0 days", "number"), ("every 5000 days", "number"),
        ("every day at 25:00", "clock"), ("every day at 8 and 18", "two_times"),
        ("at 8 and at 18 every day", "two_times"), ("every 2 weeks, monthly", "two_rhythms"),
        ("on 3 march and 5 april", "two_days"),
    ],
)  # fmt: skip
def test_a_doubt_is_kept_and_never_rounded(said: str, doubt: str) -> None:
    assert rhythm(said).doubt == doubt


# --- what for ---------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("text", "task", "words"),
    [
        ("remind me to flush Ruby on sunday", "flush", ""),
        ("remind me on sunday that the vandas need feeding", "feed", ""),
        ("remind me to buy bark on saturday", "other", "buy bark"),
        ("remind me to bring the plants inside in october", "other", "bring the plants inside"),
        ("remind me to not feed Ruby in december", "other", "not feed Ruby"),
        ("remind me to stop feeding the nobiles in november", "other", "stop feeding the nobiles"),
        ("remind me every week to use rain water for Ruby", "other", "use rain water for Ruby"),
        ("remind me to feed 5 l half strength every sunday", "feed", "feed 5 l half strength"),
        ("remind me to check the vandas every week for thrips", "look",
         "check the vandas for thrips"),
        ("remind me in a week", "", ""),
    ],
)  # fmt: skip
def test_own_words_are_kept_where_there_are_more_than_we_know(
    text: str, task: str, words: str
) -> None:
    found = order(text)
    assert (found.verb, found.task, found.text) == ("remind", task, words)


def test_a_word_of_the_rhythm_is_no_trait_of_a_plant() -> None:
    found = order("remind me to flush the small vandas every first sunday")
    assert found.target.traits == ("small",)
    assert found.target.genera == ("Vanda",)


def test_words_before_it_that_say_nothing_we_know_are_shown() -> None:
    reading = read("Ruby looks sad, remind me in 3 days to check", "en", names=NAMES)
    assert [u.text for u in reading.unknown] == ["sad"]
    assert reading.order is not None
    assert reading.order.target.names == ("Ruby",)


@pytest.mark.parametrize(
    ("text", "verb", "left"),
    [
        ("stop reminding me about the zorbas", "reminder_stop", "zorbas"),
        ("skip the next flush of zorbas", "reminder_skip", "zorbas"),
        ("pause reminders of zorbas until june", "reminder_pause", "zorbas"),
    ],
)
def test_what_is_not_understood_is_shown(text: str, verb: str, left: str) -> None:
    reading = read(text, "en", names=NAMES)
    assert reading.order is not None
    assert reading.order.verb == verb
    assert [u.text for u in reading.unknown] == [left]


@pytest.mark.parametrize(
    ("text", "read_as"),
    [
        ("remind me to flush evry sundy", {("evry", "every"), ("sundy", "sunday")}),
        ("remind me tommorow to flush", {("tommorow", "tomorrow")}),
        ("remnd me to feed on wensday", {("remnd", "remind"), ("wensday", "wednesday")}),
        ("remind me to flush evrey 2 weks", {("evrey", "every"), ("weks", "weeks")}),
    ],
)
def test_a_slip_is_read_and_shown(text: str, read_as: set[tuple[str, str]]) -> None:
    reading = read(text, "en", names=NAMES)
    assert reading.order is not None
    assert reading.order.verb == "remind"
    assert reading.order.rhythm is not None
    assert reading.order.rhythm.says_when
    assert {(r.text, r.meaning) for r in reading.read_as} == read_as


# --- without the word -------------------------------------------------------------------------


@pytest.mark.parametrize(
    "text",
    [
        "flush sunday", "flush Ruby next sunday at 9", "water the orchids tomorrow",
        "feed the phals on saturday", "on 3 march water the cymbidiums",
        "every sunday at 10 flush the balcony", "flush the phals every 4 weeks on sunday",
        "feed the vandas every 10 days from may to september", "mondays at 9",
        "daily at 7:30", "weekdays at six pm", "every two weeks on saturday morning",
    ],
)  # fmt: skip
def test_a_day_to_come_makes_it_a_reminder(text: str) -> None:
    assert order(text).verb == "remind"


@pytest.mark.parametrize(
    ("text", "verb"),
    [
        ("water the phals every week", "dose"), ("feed the vandas every 10 days", "dose"),
        ("feed every week 5 l 20-20-20 powder", "dose"), ("every week", "dose"),
        ("every sunday", "dose"), ("phals, 5 l, every 2 weeks, 20-20-20", "dose"),
        ("how much for the phals every sunday at 9?", "dose"),
        ("feed on sunday, 3 l 20-20-20", "dose"), ("weekly feeding in summer, vandas", "dose"),
        ("flush Ruby", "flush"), ("flushed Ruby on sunday", "flush"),
        ("flush last sunday", "flush"),
        ("fed Ruby on sunday", "fed"), ("watered the balcony yesterday at 9", "clear"),
        ("what's on sunday", "plan"), ("tomorrow?", "plan"), ("and on sunday?", "plan"),
        ("when do i flush", "plan"), ("move Ruby to the balcony", "move"),
        ("moved Ruby to the balcony on sunday", "move"), ("make it winter", "follow_up"),
        ("make it weekly", "follow_up"), ("make it 3 litres", "follow_up"),
        ("stop", "no"), ("cancel", "no"), ("later", "skip"), ("skip", "skip"),
        ("remove Ruby", "lose"), ("be quiet", "quiet"),
        ("history of Ruby since may", "history"), ("repotted Ruby on friday", "repot"),
        ("remind me how much to feed", "dose"), ("done", "done"), ("done 1", "done"),
    ],
)  # fmt: skip
def test_what_is_none_stays_what_it_was(text: str, verb: str) -> None:
    assert order(text).verb == verb


# --- what becomes of them ---------------------------------------------------------------------


@pytest.mark.parametrize(
    ("verb", "texts"),
    [
        ("reminders", ["my reminders", "show reminders", "list my reminders", "reminders?",
                       "do you still remind me at all?",
                       "what reminders do I have?", "when is my next reminder?"]),
        ("reminder_stop", ["stop reminding me about Ruby", "stop all reminders", "stop 2",
                           "delete reminder 2", "cancel my reminders", "no more reminders",
                           "don't remind me any more", "stop the flush", "remove the reminder",
                           "turn Ruby's reminder off"]),
        ("reminder_skip", ["not this week", "skip it this time", "not this time", "skip 1",
                           "skip the next flush", "skip this week", "skip reminder 2"]),
        ("reminder_move", ["move it to monday", "move 1 to 10 am", "postpone it by two days",
                           "postpone it a week", "move the flush to the 15th", "make it 10 am",
                           "make it sunday instead", "reschedule the flush to friday",
                           "change reminder 2 to every three weeks"]),
        ("reminder_pause", ["pause", "pause reminders until january", "pause for two weeks",
                            "no reminders until june", "I'm away until 3 july",
                            "stop reminding me until monday", "no pings for a week"]),
        ("reminder_resume", ["resume", "resume reminders", "unpause"]),
        ("reminder_quiet", ["quiet after 9 pm", "no pings before 8", "quiet hours 22 to 7",
                            "don't ping me after 10", "quiet between 10 pm and 7:30 am"]),
    ],
)  # fmt: skip
def test_what_becomes_of_reminders(verb: str, texts: list[str]) -> None:
    assert {text: order(text).verb for text in texts} == dict.fromkeys(texts, verb)


@pytest.mark.parametrize(
    ("text", "hours"),
    [
        ("quiet after 9 pm", ((21, 0), None)), ("quiet after 9", ((21, 0), None)),
        ("no pings before 8", (None, (8, 0))), ("quiet hours 22 to 7", ((22, 0), (7, 0))),
        ("quiet between 10 pm and 7:30 am", ((22, 0), (7, 30))),
    ],
)  # fmt: skip
def test_quiet_hours(text: str, hours: tuple[Any, Any]) -> None:
    assert order(text).hours == hours


def test_a_number_of_a_day_is_no_number_of_a_reminder() -> None:
    assert order("move reminder 2 to 3 march").steps == (2,)
    assert order("I'm away until 3 july, no pings").steps == ()


# --- an answer by itself ------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("text", "whole", "says_when"),
    [
        ("every first sunday at 9", True, True), ("two weeks", True, True),
        ("on mondays, please", True, True), ("at 9", True, False),
        ("5 l 20-20-20", False, False), ("Porto on sunday", False, True),
    ],
)  # fmt: skip
def test_a_rhythm_by_itself(text: str, whole: bool, says_when: bool) -> None:
    found, nothing_else = read_rhythm(text, "en")
    assert nothing_else is whole
    assert (found is not None and found.says_when) is says_when


@pytest.mark.parametrize(
    ("language", "text"),
    [
        ("en", "don't remind me on sundays"), ("en", "don't remind me on weekends"),
        ("de", "erinnere mich nicht sonntags"), ("es", "no me recuerdes los domingos"),
        ("pl", "nie przypominaj w niedzielę"), ("pl", "nie przypominaj w weekendy"),
    ],
)  # fmt: skip
def test_a_day_without_reminders_ends_none(language: str, text: str) -> None:
    order = read(text, language, names=Names()).order
    assert order is not None
    assert order.verb == "reminders"
    assert order.unused


@pytest.mark.parametrize(
    ("language", "text"), [("en", "don't remind me today"), ("pl", "nie przypominaj dziś")]
)
def test_no_reminder_today_passes_over_one(language: str, text: str) -> None:
    order = read(text, language, names=Names()).order
    assert order is not None
    assert (order.verb, order.text) == ("reminder_skip", "day")


@pytest.mark.parametrize(
    ("text", "verb", "task"),
    [
        ("stop reminding me about feeding", "reminder_stop", "feed"),
        ("don't remind me about the feed", "reminder_stop", "feed"),
        ("don't remind me about watering", "reminder_stop", "water"),
        ("remind me on friday about feeding", "remind", "feed"),
        ("remind me about Ruby on friday", "remind", "look"),
    ],
)
def test_a_task_behind_about_is_the_task(text: str, verb: str, task: str) -> None:
    order = read(text, "en", names=Names(plants=("Ruby",))).order
    assert order is not None
    assert (order.verb, order.task) == (verb, task)


@pytest.mark.parametrize(
    ("language", "text"),
    [
        ("en", "remind me in a quarter of an hour to water"),
        ("de", "erinnere mich in einer Viertelstunde ans Gießen"),
        ("es", "recuérdame regar en un cuarto de hora"),
        ("pl", "przypomnij za ćwierć godziny podlać"),
    ],
)  # fmt: skip
def test_a_quarter_of_an_hour_is_no_quarter_of_a_year(language: str, text: str) -> None:
    order = read(text, language, names=Names()).order
    assert order is not None
    assert order.rhythm is not None
    assert order.rhythm.ahead == (15, "minute")
