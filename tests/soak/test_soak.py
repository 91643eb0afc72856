"""A short soak with real processes, and whether its account would notice what is wrong."""

from __future__ import annotations

import dataclasses
import os
import subprocess
import sys
from datetime import UTC, datetime, time
from pathlib import Path

import pytest

from tests.soak.bots import Bots
from tests.soak.clock import BotClock
from tests.soak.ledger import MOST_ON_THEIR_WAY, Ledger, Sent, Update, Wants
from tests.soak.promises import Ping, Promise, excused, judged
from tests.soak.run import Asked, soaked
from tests.soak.weather import Event, plan

ROOT = Path(__file__).parents[2]
CHAT, CLUB = 7, -7


def asked(number: int, chat_id: int = CHAT, wants: Wants = Wants.ANSWER, **more: object) -> Update:
    return Update(number, chat_id, wants, f"question {number}", 10.0 * number, **more)  # type: ignore[arg-type]


def message(text: str, at_s: float, chat_id: int = CHAT, below: int | None = None) -> Sent:
    values: dict[str, object] = {"chat_id": chat_id, "text": text}
    if below is not None:
        values["reply_parameters"] = {"message_id": below}
    return Sent("sendMessage", values, 900, at_s)


def account(updates: list[Update], sent: list[Sent], kills: list[float] | None = None) -> Ledger:
    ledger = Ledger(kills=kills or [])
    for update in updates:
        ledger.expect(update)
    for one in sent:
        ledger.accepted(one)
    return ledger


# --- answers ---------------------------------------------------------------------------------


def test_an_account_without_faults_is_sound() -> None:
    ledger = account([asked(1), asked(2)], [message("a", 11), message("b", 21)])
    assert ledger.lost() == []
    assert ledger.doubled() == ([], [])
    assert (ledger.strays, ledger.misfits) == ([], [])


def test_a_lost_answer_is_found() -> None:
    ledger = account([asked(1), asked(2)], [message("a", 11)])
    assert [u.number for u in ledger.lost()] == [2]


def test_a_lost_answer_does_not_hide_behind_that_to_the_next_question() -> None:
    updates = [asked(1, fits="2.3 l"), asked(2, fits="4.4 l")]
    ledger = account(updates, [message("1 g in 4.4 l", 21)])
    assert len(ledger.lost()) == 1
    assert len(ledger.misfits) == 1


def test_a_doubled_answer_is_found() -> None:
    ledger = account([asked(1)], [message("a", 11), message("a", 12)])
    fine, wrong = ledger.doubled()
    assert (len(fine), len(wrong)) == (0, 1)


@pytest.mark.parametrize(
    ("kill_s", "is_fine"), [(11.5, True), (10.8, True), (10.5, False), (72.0, False)]
)
def test_a_doubled_answer_is_excused_by_a_kill_just_after_it_alone(
    kill_s: float, is_fine: bool
) -> None:
    ledger = account([asked(1)], [message("a", 11), message("a", 75)], [kill_s])
    fine, wrong = ledger.doubled()
    assert (len(fine), len(wrong)) == ((1, 0) if is_fine else (0, 1))


def test_an_answer_that_comes_again_after_a_kill_is_not_taken_for_the_next_one() -> None:
    sent = [message("a", 11), message("a", 75), message("b", 76)]
    ledger = account([asked(1), asked(2)], sent, [11.5])
    assert ledger.lost() == []
    assert len(ledger.doubled()[0]) == 1


def test_a_kill_excuses_no_more_than_was_on_its_way() -> None:
    people = range(1, MOST_ON_THEIR_WAY + 3)
    updates = [asked(n, chat_id=n) for n in people]
    sent = [message("a", at, chat_id=n) for at in (1000.0, 1070.0) for n in people]
    fine, wrong = account(updates, sent, [1001.0]).doubled()
    assert (len(fine), len(wrong)) == (MOST_ON_THEIR_WAY, 2)


def test_an_answer_to_what_gets_none_is_found() -> None:
    talk = asked(1, CLUB, Wants.NOTHING, replies_to=5)
    ledger = account([talk], [message("a", 11, CLUB, below=5)])
    assert len(ledger.strays) == 1


def test_an_answer_below_another_message_is_found() -> None:
    question = asked(1, CLUB, replies_to=5)
    ledger = account([question], [message("a", 11, CLUB, below=6)])
    assert len(ledger.strays) == 1
    assert ledger.lost() == [question]


def test_an_answer_in_another_topic_is_found() -> None:
    question = asked(1, CLUB, replies_to=5, topic=51)
    ledger = account([question], [message("a", 11, CLUB, below=5)])
    assert len(ledger.misfits) == 1


def test_a_button_wants_its_note_and_its_answer() -> None:
    tap = asked(1, wants=Wants.TAP, key="q1")
    ledger = account([tap], [message("a", 11)])
    assert ledger.lost() == [tap]
    ledger.accepted(Sent("answerCallbackQuery", {"callback_query_id": "q1"}, None, 12))
    assert ledger.lost() == []
    ledger.accepted(Sent("answerCallbackQuery", {"callback_query_id": "q1"}, None, 13))
    assert len(ledger.doubled()[1]) == 1


# --- reminders ---------------------------------------------------------------------------------

DAY_S = 86_400.0
EIGHT = datetime(2026, 10, 23, 8, tzinfo=UTC).timestamp()
DAILY = Promise(CHAT, "wash the saucers", EIGHT, "Europe/Lisbon", time(18, 5))
#: 18:05 in Lisbon: an hour before UTC until the clocks go back on 25 October.
MOMENTS = [EIGHT + h * 3600 + 300 for h in (9, 33, 58)]


def ping(at_s: float, real_s: float = 0.0, again: bool = False) -> Ping:
    return Ping(CHAT, "It is time: “wash the saucers”.", at_s, real_s or at_s, again)


def test_moments_follow_the_clock_on_the_wall() -> None:
    assert DAILY.moments(EIGHT + 3 * DAY_S) == MOMENTS


def test_a_lost_reminder_is_found() -> None:
    verdict = judged([DAILY], [ping(m + 9) for m in MOMENTS[::2]], EIGHT + 3 * DAY_S, {}, 600)
    assert (verdict.due, verdict.kept, len(verdict.lost)) == (3, 2, 1)


@pytest.mark.parametrize("came", [MOMENTS, MOMENTS[1:]])
def test_a_moment_between_asking_and_confirming_may_count_or_not(came: list[float]) -> None:
    late = dataclasses.replace(DAILY, sure_s=MOMENTS[0] + 60)
    verdict = judged([late], [ping(m + 90) for m in came], EIGHT + 3 * DAY_S, {}, 600)
    assert (verdict.due, verdict.kept, verdict.lost, verdict.unasked) == (2, 2, [], [])


def test_nothing_is_owed_to_who_has_blocked_the_bot() -> None:
    away = {CHAT: [(MOMENTS[1] - 3600, MOMENTS[1] + 3600)]}
    verdict = judged([DAILY], [ping(m + 9) for m in MOMENTS[::2]], EIGHT + 3 * DAY_S, away, 600)
    assert (verdict.due, verdict.lost) == (2, [])


@pytest.mark.parametrize(
    ("kills", "again", "fine"),
    [([], True, 0), ([101.0], True, 1), ([101.0], False, 0), ([99.0], True, 0)],
)
def test_a_reminder_comes_twice_after_a_kill_only_and_says_so(
    kills: list[float], again: bool, fine: int
) -> None:
    told = [ping(MOMENTS[0] + 9, 100.0), ping(MOMENTS[0] + 6900, 165.0, again)]
    verdict = judged([DAILY], told, EIGHT + DAY_S, {}, 600)
    found, wrong = excused(verdict, kills, 150.0)
    assert (found, len(wrong)) == (fine, 1 - fine)


# --- the clock, the plan, the whole -----------------------------------------------------------


def test_a_process_on_the_moved_clock_reads_the_same_time_everywhere() -> None:
    code = (
        "import os; from tests.soak.clock import BotClock, moved\n"
        "moved(BotClock.from_text(os.environ['SOAK_CLOCK']))\n"
        "import time, logging; from datetime import UTC, date, datetime\n"
        "record = logging.LogRecord('x', 20, 'x', 1, 'x', (), None)\n"
        "print(datetime.now(UTC).isoformat(), datetime.utcnow().isoformat(), date.today(),\n"
        "      time.time(), time.time_ns() // 10**9, record.created)"
    )
    clock = BotClock(EIGHT, 0.0, 0.0).as_text()
    done = subprocess.run(
        [sys.executable, "-W", "ignore", "-c", code], cwd=ROOT, capture_output=True, text=True,
        env={**os.environ, "SOAK_CLOCK": clock, "TZ": "UTC"},
    )  # fmt: skip
    assert done.stdout.split() == [
        "2026-10-23T08:00:00+00:00", "2026-10-23T08:00:00", "2026-10-23", str(EIGHT),
        str(int(EIGHT)), str(EIGHT),
    ], done.stderr  # fmt: skip


def test_in_an_hour_both_processes_live_long_and_die_often() -> None:
    events = plan(3600, seed=8)
    ends = [e.at_s for e in events if e.name == "serve"]
    assert min(ends) > 0.42 * 3600 and max(ends) < 0.6 * 3600  # noqa: PT018
    assert sum(e.what == "kill" for e in events) >= 10
    assert {e.what for e in events} == {
        "flood", "broken", "dropped", "slow", "repeats", "away", "kill", "end",
    }  # fmt: skip


def test_a_line_that_no_fault_explains_is_found(tmp_path: Path) -> None:
    bots = Bots("", "", tmp_path, BotClock(0, 0, 1))
    life = type("Life", (), {"log": tmp_path / "x.log", "ended_well": True})()
    bots.lives.append(life)
    life.log.write_text(
        '{"event": "serving", "level": "info"}\n'
        '{"event": "polling failed: NetworkError", "level": "warning"}\n'
        '{"event": "update 7 failed, try 1", "level": "error"}\n'
        "Traceback (most recent call last):\n"
    )
    warned, wrong = bots.logged()
    assert sum(warned.values()) == 3
    assert len(wrong) == 2


async def test_a_short_soak_keeps_every_promise(tmp_path: Path) -> None:
    events = [
        Event(2.0, "flood", 1.5, 0.4),
        Event(4.0, "dropped", 1.5, 0.4),
        Event(5.5, "kill", 0.0, name="serve"),
        Event(6.5, "repeats", 2.0, 1.0),
    ]
    report = await soaked(
        Asked(
            seconds=9,
            people=40,
            groups=3,
            speed=100,
            rate=8,
            seed=3,
            database=f"sqlite:///{tmp_path / 'soak.db'}",
            folder=tmp_path,
            events=events,
            least=20,
            drain_s=240,
            claim_s=12,
            pause_s=(0.2, 1.0),
        )
    )
    done = report.details["done"]
    assert sum(done.values()) >= 20
    assert report.wrong == [], report.table()
