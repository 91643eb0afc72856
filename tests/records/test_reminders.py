"""Reminders on record, and pings: claimed once, promised with all that goes with them or not."""

from __future__ import annotations

import asyncio
import random
import signal
import subprocess
import sys
import time
from collections.abc import Iterator
from contextlib import contextmanager
from datetime import UTC, datetime, timedelta
from pathlib import Path
from typing import Any

import pytest
from alembic import command
from sqlalchemy import Connection, event, select, text
from sqlalchemy.exc import DBAPIError, IntegrityError
from sqlalchemy.ext.asyncio import AsyncSession

from bot.records import (
    Records,
    errors,
    log,
    open_records,
    owners,
    pings,
    plants,
    post,
    reminders,
    schema,
)
from bot.records.engines import make_migrator, parse
from bot.records.kinds import EventKind, OwnerKind, PingState, ReminderKind, ReminderState
from bot.records.models import Outbox, Ping, Reminder
from bot.records.owners import Address
from bot.records.pings import DueOwner, Promised
from bot.records.reminders import ReminderFields

from .records_kit import ADDRESS, NOW, TODAY, Databases, begin

TOP = Path(__file__).parents[2]
DUE_MS = 1_772_355_600_000  # 2026-03-01 09:00 UTC
WEEK_MS = 7 * 24 * 3600 * 1000
CHANNEL = ADDRESS.channel
FLUSH = ReminderFields(
    kind=ReminderKind.FLUSH, target={"everything": True}, rule="FREQ=WEEKLY", zone="UTC",
    start="2026-03-01T09:00:00", due_ms=DUE_MS, due_local="2026-03-01T09:00:00",
)  # fmt: skip
BEFORE = datetime(2026, 3, 1, 8, 30, tzinfo=UTC)


async def add(records: Records, owner_id: int, **fields: Any) -> int:
    async with records.writing() as session:
        said = await begin(session, owner_id)
        return (await reminders.add(said, **{**FLUSH, **fields})).id


async def added(session: AsyncSession, number: int, **fields: Any) -> int:
    """A further owner with a reminder."""
    address = Address(OwnerKind.PERSON, CHANNEL, f"person {number}")
    owner = await owners.find_or_add(session, address, created_at=NOW)
    await reminders.add(await begin(session, owner.id), **{**FLUSH, **fields})
    return owner.id


def weekly(found: list[DueOwner]) -> list[Promised]:
    """All that is due pings, and comes again in a week."""
    return [
        Promised(
            owner_id=one.owner_id, reminder_id=one.id, ping_id=one.ping_id, due_ms=one.due_ms,
            pings=True, next_ms=one.due_ms + WEEK_MS, next_local="2026-03-08T09:00:00",
        )
        for owner in found
        for one in owner.reminders
    ]  # fmt: skip


async def promise_all(session: AsyncSession, now_ms: int = DUE_MS, most: int = 100) -> int:
    """One look at the clock: the letters and the pings of what is due. Returns how many."""
    found = await pings.due(session, CHANNEL, now_ms=now_ms, most=most)
    promised = weekly(found)
    await pings.promise(session, promised)
    letters = [
        post.Letter(
            owner.address.external_id,
            "sendMessage",
            {"pings": [r.ping_id for r in owner.reminders]},
        )
        for owner in found
    ]
    await post.promise(session, "source", letters, now_ms=now_ms)
    return len(promised)


# --- on record ------------------------------------------------------------------------------------


async def test_a_reminder_comes_until_it_is_ended(records: Records, owner_id: int) -> None:
    number = await add(records, owner_id, text="rain water", kind=ReminderKind.OTHER)
    async with records.reading() as session:
        [row] = await reminders.listing(session, owner_id)
    assert (row.id, row.kind, row.text, row.state) == (
        number, ReminderKind.OTHER, "rain water", ReminderState.ACTIVE,
    )  # fmt: skip
    assert (row.due_ms, row.due_local, row.moved) == (DUE_MS, "2026-03-01T09:00:00", False)
    async with records.writing() as session:
        said = await begin(session, owner_id)
        assert await reminders.end(said, [number]) == [number]
        assert await reminders.end(said, [number]) == []
    async with records.reading() as session:
        assert await reminders.listing(session, owner_id) == []
        [row] = await reminders.listing(session, owner_id, include_ended=True)
    assert (row.state, row.due_ms, row.due_local) == (ReminderState.ENDED, None, None)


async def test_the_one_that_comes_next_is_listed_first(records: Records, owner_id: int) -> None:
    late = await add(records, owner_id, due_ms=DUE_MS + 1)
    soon = await add(records, owner_id)
    async with records.reading() as session:
        assert [row.id for row in await reminders.listing(session, owner_id)] == [soon, late]


async def test_every_change_can_be_undone(records: Records, owner_id: int) -> None:
    number = await add(records, owner_id)
    async with records.writing() as session:
        said = await begin(session, owner_id)
        await reminders.change(said, number, due_ms=DUE_MS + 1000, moved=True)
    async with records.writing() as session:
        await reminders.end(await begin(session, owner_id), [number])

    async def undone() -> Reminder:
        async with records.writing() as session:
            found = await log.undo(session, owner_id, said_at=BEFORE)
            assert [e.kind for e in found.events] == [EventKind.REMINDER]
        async with records.reading() as session:
            return await reminders.get(session, owner_id, number)

    row = await undone()
    assert (row.state, row.due_ms, row.moved) == (ReminderState.ACTIVE, DUE_MS + 1000, True)
    row = await undone()
    assert (row.state, row.due_ms, row.moved) == (ReminderState.ACTIVE, DUE_MS, False)
    assert row.due_local == "2026-03-01T09:00:00"
    row = await undone()
    assert (row.state, row.due_ms) == (ReminderState.ENDED, None)


async def test_undoing_does_not_ring_for_what_has_passed(records: Records, owner_id: int) -> None:
    number = await add(records, owner_id)
    async with records.writing() as session:
        await reminders.end(await begin(session, owner_id), [number])
    async with records.writing() as session:
        await log.undo(session, owner_id, said_at=BEFORE + timedelta(days=30))
    async with records.reading() as session:
        row = await reminders.get(session, owner_id, number)
    # Due, so that it goes on; but for no occurrence, so that nobody is told.
    assert (row.state, row.due_ms, row.due_local) == (ReminderState.ACTIVE, DUE_MS, None)


async def test_an_undo_of_something_else_leaves_what_was_promised(
    records: Records, owner_id: int
) -> None:
    await add(records, owner_id)
    async with records.writing() as session:
        await plants.add(await begin(session, owner_id), name="Ruby")
        assert await promise_all(session) == 1
    async with records.writing() as session:
        await log.undo(session, owner_id, said_at=BEFORE)
    async with records.reading() as session:
        [row] = await reminders.listing(session, owner_id)
        assert row.due_ms == DUE_MS + WEEK_MS


@pytest.mark.parametrize(
    ("fields", "field"),
    [
        ({"rule": "FREQ=HOURLY"}, "rule"),
        ({"start": "2026-03-01 09:00"}, "start"),
        ({"due_local": "2026-13-01T09:00:00"}, "due_local"),
        ({"zone": "Atlantis/Centre"}, "zone"),
        ({"due_ms": None, "due_local": None}, "due_ms"),
        ({"target": {"plants": [0]}}, "target"),
        ({"target": {"genera": [1]}}, "target"),
        ({"target": {"birds": True}}, "target"),
        ({"kind": "dance"}, "kind"),
        ({"text": "x" * 201}, "text"),
    ],
)
async def test_a_reminder_that_makes_no_sense_is_refused(
    records: Records, owner_id: int, fields: dict[str, Any], field: str
) -> None:
    with pytest.raises(errors.BadValue) as caught:
        await add(records, owner_id, **fields)
    assert caught.value.field == field
    async with records.reading() as session:
        assert await reminders.listing(session, owner_id, include_ended=True) == []


async def test_nobody_changes_what_is_not_theirs(
    records: Records, owner_id: int, neighbour_id: int
) -> None:
    number = await add(records, owner_id)
    for change in (
        lambda said: reminders.change(said, number, due_ms=DUE_MS + 1),
        lambda said: reminders.end(said, [number]),
    ):
        with pytest.raises(errors.NotOnRecord):
            async with records.writing() as session:
                await change(await begin(session, neighbour_id))


async def test_so_many_may_come_and_an_ended_one_makes_room(
    records: Records, owner_id: int, monkeypatch: pytest.MonkeyPatch
) -> None:
    assert reminders.MOST_LIVE == 200
    monkeypatch.setattr(reminders, "MOST_LIVE", 2)
    first = await add(records, owner_id)
    await add(records, owner_id)
    with pytest.raises(errors.TooMany) as caught:
        await add(records, owner_id)
    assert (caught.value.table, caught.value.most) == ("reminder", 2)
    async with records.writing() as session:
        await reminders.end(await begin(session, owner_id), [first])
    await add(records, owner_id)
    with pytest.raises(errors.TooMany):  # the one that ended would come again
        async with records.writing() as session:
            await reminders.change(await begin(session, owner_id), first, due_ms=DUE_MS)


async def test_who_cannot_be_reached_is_not_looked_for_until_they_can(
    records: Records, owner_id: int
) -> None:
    number = await add(records, owner_id)
    ended = await add(records, owner_id)
    async with records.writing() as session:
        await reminders.end(await begin(session, owner_id), [ended])
        assert await reminders.pause_all(session, ADDRESS) == 1
        assert await reminders.pause_all(session, ADDRESS) == 0
        assert await pings.due(session, CHANNEL, now_ms=DUE_MS, most=9) == []
        assert await pings.oldest(session, CHANNEL) is None
    async with records.writing() as session:
        nobody = Address(OwnerKind.PERSON, CHANNEL, "nobody")
        assert await reminders.resume_all(session, nobody) == 0
        assert await reminders.resume_all(session, ADDRESS) == 1
        assert await pings.oldest(session, CHANNEL) == DUE_MS
        [found] = await pings.due(session, CHANNEL, now_ms=DUE_MS + WEEK_MS, most=9)
    assert [one.id for one in found.reminders] == [number]


# --- claiming -------------------------------------------------------------------------------------


async def test_what_is_due_comes_with_all_that_is_due_to_its_owner(
    records: Records, owner_id: int, neighbour_id: int
) -> None:
    later = await add(records, owner_id, due_ms=DUE_MS + 5, offered=True)
    first = await add(records, owner_id)
    await add(records, owner_id, due_ms=DUE_MS + 6)
    await add(records, neighbour_id, due_ms=DUE_MS + 1)
    async with records.writing() as session:
        found = await pings.due(session, CHANNEL, now_ms=DUE_MS + 5, most=1)
        assert [owner.address for owner in found] == [ADDRESS]
        assert [(one.id, one.ping_id, one.due_ms) for one in found[0].reminders] == [
            (first, 1, DUE_MS), (later, 2, DUE_MS + 5),
        ]  # fmt: skip
        one = found[0].reminders[1]
        assert (one.kind, one.target, one.offered, one.pinged) == (
            ReminderKind.FLUSH, {"everything": True}, True, False,
        )  # fmt: skip
        assert len(await pings.due(session, CHANNEL, now_ms=DUE_MS + 5, most=9)) == 2
        assert await pings.due(session, CHANNEL, now_ms=DUE_MS - 1, most=9) == []
        assert await pings.due(session, "elsewhere", now_ms=DUE_MS + 5, most=9) == []


async def test_what_was_promised_is_not_due_again(records: Records, owner_id: int) -> None:
    number = await add(records, owner_id)
    async with records.writing() as session:
        assert await promise_all(session) == 1
        assert await promise_all(session) == 0
    async with records.reading() as session:
        [row] = await reminders.listing(session, owner_id)
        [ping] = await pings.unanswered(session, owner_id, since_ms=DUE_MS)
    assert (row.due_ms, row.due_local) == (DUE_MS + WEEK_MS, "2026-03-08T09:00:00")
    assert (ping.reminder_id, ping.due_ms, ping.state) == (number, DUE_MS, PingState.OPEN)
    async with records.writing() as session:
        assert await promise_all(session, DUE_MS + WEEK_MS) == 1
    async with records.reading() as session:
        found = await pings.unanswered(session, owner_id, since_ms=0)
    assert [(p.id, p.due_ms) for p in found] == [(2, DUE_MS + WEEK_MS), (1, DUE_MS)]


async def test_the_last_one_ends_the_reminder(records: Records, owner_id: int) -> None:
    number = await add(records, owner_id, rule=None)
    async with records.writing() as session:
        [owner] = await pings.due(session, CHANNEL, now_ms=DUE_MS, most=9)
        [one] = owner.reminders
        await pings.promise(
            session, [Promised(owner_id, number, one.ping_id, DUE_MS, True, None, None)]
        )
    async with records.reading() as session:
        row = await reminders.get(session, owner_id, number)
        assert (row.state, row.due_ms) == (ReminderState.ENDED, None)
        assert await pings.is_due(session, owner_id, now_ms=DUE_MS) is False


async def test_what_waits_for_the_morning_has_no_ping_and_stays_moved(
    records: Records, owner_id: int
) -> None:
    number = await add(records, owner_id)
    async with records.writing() as session:
        waits = Promised(
            owner_id, number, 1, DUE_MS, False, DUE_MS + 3, "2026-03-01T09:00:00", moved=True
        )
        await pings.promise(session, [waits])
    async with records.reading() as session:
        row = await reminders.get(session, owner_id, number)
        assert (row.due_ms, row.moved, row.state) == (DUE_MS + 3, True, ReminderState.ACTIVE)
        assert await pings.unanswered(session, owner_id, since_ms=0) == []


async def test_an_occurrence_has_one_ping_whoever_promises_it(
    records: Records, owner_id: int
) -> None:
    number = await add(records, owner_id)
    async with records.writing() as session:
        await promise_all(session)
    # Set back by hand to what was pinged already: `due` says so, and the key refuses a second.
    async with records.writing() as session:
        await reminders.change(await begin(session, owner_id), number, due_ms=DUE_MS)
    async with records.writing() as session:
        found = await pings.due(session, CHANNEL, now_ms=DUE_MS, most=9)
        assert [one.pinged for one in found[0].reminders] == [True]
    with pytest.raises(IntegrityError):
        async with records.writing() as session:
            await pings.promise(
                session, weekly(await pings.due(session, CHANNEL, now_ms=DUE_MS, most=9))
            )


async def test_workers_at_once_promise_each_ping_once(databases: Databases) -> None:
    url = await databases.migrated()
    workers = [await open_records(url) for _ in range(4)]
    async with workers[0].writing() as session:
        for number in range(60):
            await added(session, number)

    async def work(records: Records) -> int:
        done, idle = 0, 0
        while idle < 3:
            async with records.writing() as session:
                step = await promise_all(session, most=7)
            idle = 0 if step else idle + 1
            done += step
            await asyncio.sleep(0)
        return done

    done = await asyncio.gather(*(work(records) for records in workers))
    assert sum(done) == 60
    async with workers[0].reading() as session:
        assert len((await session.scalars(select(Ping.owner_id))).all()) == 60
        lanes = list(await session.scalars(select(Outbox.lane)))
        assert sorted(lanes) == sorted(f"person {number}" for number in range(60))
    for records in workers:
        await records.close()


async def test_on_postgresql_a_second_worker_takes_the_next_owners_while_the_first_is_at_it(
    postgres_databases: Databases,
) -> None:
    url = await postgres_databases.migrated()
    one, two = await open_records(url), await open_records(url)
    async with one.writing() as session:
        for number in range(6):
            await added(session, number, due_ms=DUE_MS + number)
    async with one.writing() as first, two.writing() as second:
        mine = await pings.due(first, CHANNEL, now_ms=DUE_MS + 9, most=2)
        theirs = await pings.due(second, CHANNEL, now_ms=DUE_MS + 9, most=2)
        names = [[owner.address.external_id for owner in found] for found in (mine, theirs)]
        assert names == [["person 0", "person 1"], ["person 2", "person 3"]]
        await pings.promise(first, weekly(mine))
        await pings.promise(second, weekly(theirs))
    async with one.writing() as session:
        found = await pings.due(session, CHANNEL, now_ms=DUE_MS + 9, most=9)
        assert [owner.address.external_id for owner in found] == ["person 4", "person 5"]
    await one.close()
    await two.close()


async def test_on_postgresql_who_waited_for_the_row_reads_what_the_other_has_done(
    postgres_databases: Databases,
) -> None:
    url = await postgres_databases.migrated()
    one, two = await open_records(url), await open_records(url)
    async with one.writing() as session:
        owner_id = await added(session, 1)
    async with one.writing() as session:
        await promise_all(session)
        # The terminal asks for one owner, and so waits instead of passing by.
        waiting = asyncio.create_task(_due_of(two, owner_id))
        while not await _somebody_waits_for_a_row(one):
            assert not waiting.done()
            await asyncio.sleep(0.01)
    assert await waiting is None
    await one.close()
    await two.close()


async def _somebody_waits_for_a_row(records: Records) -> bool:
    """In a session of its own each time: within one, PostgreSQL shows one moment."""
    here = "datname = current_database() AND wait_event_type = 'Lock'"
    async with records.reading() as session:
        found = await session.scalar(text(f"SELECT count(*) FROM pg_stat_activity WHERE {here}"))
    return bool(found)


async def _due_of(records: Records, owner_id: int) -> DueOwner | None:
    async with records.writing() as session:
        return await pings.due_of(session, owner_id, now_ms=DUE_MS)


async def test_a_promise_that_breaks_off_keeps_nothing(records: Records, owner_id: int) -> None:
    await add(records, owner_id)

    class BreaksOff(Exception):
        pass

    async def promise_and_break_off() -> None:
        async with records.writing() as session:
            assert await promise_all(session) == 1
            raise BreaksOff

    with pytest.raises(BreaksOff):
        await promise_and_break_off()
    assert await kept(records) == ([], [], [DUE_MS])
    async with records.writing() as session:
        assert await promise_all(session) == 1
    assert await kept(records) == ([(owner_id, 1)], [["anna", [1]]], [DUE_MS + WEEK_MS])


async def kept(records: Records) -> tuple[list[Any], list[Any], list[int | None]]:
    """The pings, the letters with their pings, and when each reminder comes next."""
    async with records.reading() as session:
        found = await session.execute(select(Ping.owner_id, Ping.id).order_by(Ping.owner_id))
        letters = await session.scalars(select(Outbox).order_by(Outbox.id))
        due = await session.scalars(select(Reminder.due_ms).order_by(Reminder.owner_id))
        return (
            [tuple(row) for row in found],
            [[letter.lane, letter.body["pings"]] for letter in letters],
            list(due),
        )


@pytest.mark.parametrize("acknowledged", [0, 9, 40])
async def test_kill_9_keeps_a_ping_its_letter_and_what_comes_next_or_none_of_them(
    databases: Databases, acknowledged: int
) -> None:
    url = await databases.migrated()
    records = await open_records(url)
    async with records.writing() as session:
        for number in range(150):
            await added(session, number)
    killed = await asyncio.to_thread(promise_until_killed, url, acknowledged)
    assert killed == -signal.SIGKILL

    promised, letters, due = await kept(records)
    assert 2 * acknowledged <= len(promised) < 150
    assert len(letters) == len({lane for lane, _ in letters}) == len(promised)
    assert due.count(DUE_MS + WEEK_MS) == len(promised)
    assert due.count(DUE_MS) == 150 - len(promised)
    # Whoever goes on finds the rest, on PostgreSQL once the server has seen the other go.
    while await promised_by(records):
        await asyncio.sleep(0.01)
    promised, letters, due = await kept(records)
    assert due == [DUE_MS + WEEK_MS] * 150
    assert len(promised) == len({lane for lane, _ in letters}) == len(letters) == 150
    await records.close()


async def promised_by(records: Records) -> bool:
    """Promise what is due; whether any still is."""
    async with records.writing() as session:
        await promise_all(session)
    async with records.reading() as session:
        return await pings.oldest(session, CHANNEL) == DUE_MS


def promise_until_killed(url: str, acknowledged: int) -> int:
    """Kill a worker somewhere in the promise after so many, and return how it ended."""
    process = subprocess.Popen(
        [sys.executable, "-m", "tests.records.promising_process", url, str(acknowledged + 20)],
        cwd=TOP, env={"PYTHONPATH": str(TOP)}, stdout=subprocess.PIPE, text=True,
    )  # fmt: skip
    assert process.stdout is not None
    for _ in range(acknowledged + 1):
        process.stdout.readline()
    time.sleep(random.Random(acknowledged).uniform(0.0, 0.003))
    process.kill()
    process.communicate(timeout=30)
    return process.returncode


# --- the plan -------------------------------------------------------------------------------------


@contextmanager
def listening(records: Records) -> Iterator[list[tuple[str, Any]]]:
    heard: list[tuple[str, Any]] = []

    def hear(_c: Any, _cursor: Any, sent: str, given: Any, _x: Any, _many: bool) -> None:
        heard.append((sent, given))

    engine = records._engines.writing.sync_engine
    event.listen(engine, "before_cursor_execute", hear)
    yield heard
    event.remove(engine, "before_cursor_execute", hear)


async def test_an_idle_look_at_the_clock_walks_the_index_of_what_is_active(
    records: Records, owner_id: int
) -> None:
    async with records.writing() as session:
        rows = [
            {"channel": CHANNEL, "owner": owner_id, "number": number, "due": DUE_MS + number * 1000}
            for number in range(1, 5001)
        ]
        await session.execute(
            text(
                "INSERT INTO reminder (owner_id, id, channel, kind, target, start, zone, state, "
                "due_ms, moved, offered, created) VALUES (:owner, :number, :channel, 'flush', "
                "'{}', '2026-03-01T09:00:00', 'UTC', 'active', :due, false, false, "
                "'2026-03-01 00:00:00+00:00')"
            ),
            rows,
        )
    async with records.writing() as session:
        await session.execute(text("ANALYZE"))
    async with records.writing() as session:
        with listening(records) as heard:
            assert await pings.due(session, CHANNEL, now_ms=DUE_MS, most=100) == []
            assert await pings.oldest(session, CHANNEL) == DUE_MS + 1000
        idle = [sent for sent in heard if "reminder" in sent[0]]
        assert len(idle) == 2
        for sent, given in idle:
            plan = await explained(session, sent, given)
            assert "ix_reminder_due" in plan
            assert not any(scan in plan for scan in ("SCAN reminder", "Seq Scan on reminder"))


async def explained(session: AsyncSession, sent: str, given: Any) -> str:
    sqlite = session.get_bind().dialect.name == "sqlite"
    connection = await session.connection()
    raw = (await connection.get_raw_connection()).driver_connection
    assert raw is not None
    if sqlite:
        return "\n".join(row[3] for row in raw.execute(f"EXPLAIN QUERY PLAN {sent}", given))
    # As a plan for whatever is bound, which is what a statement gets that is sent often.
    await raw.execute("SET LOCAL plan_cache_mode = force_generic_plan")
    prepared = await raw.prepare(f"EXPLAIN {sent}")
    return "\n".join(row[0] for row in await prepared.fetch(*given))


# --- answers --------------------------------------------------------------------------------------


async def test_a_ping_is_answered_once(records: Records, owner_id: int) -> None:
    await add(records, owner_id)
    async with records.writing() as session:
        await promise_all(session)
    async with records.writing() as session:
        assert await pings.note_sent(session, owner_id, [1], message_id=77) == 1
    async with records.writing() as session:
        ping = await pings.settle(session, owner_id, 1, PingState.DONE, now_ms=DUE_MS + 9)
        assert ping is not None
        assert (ping.state, ping.message_id, ping.settled_ms) == (PingState.DONE, 77, DUE_MS + 9)
        for state in (PingState.DONE, PingState.LATER, PingState.SKIPPED):
            assert await pings.settle(session, owner_id, 1, state, now_ms=DUE_MS + 10) is None
        assert await pings.settle(session, owner_id, 2, PingState.DONE, now_ms=DUE_MS) is None
        assert await pings.settle(session, owner_id, 2**70, PingState.DONE, now_ms=DUE_MS) is None
        with pytest.raises(ValueError, match="no answer"):
            await pings.settle(session, owner_id, 1, PingState.SENT, now_ms=DUE_MS)
    async with records.reading() as session:
        assert await pings.unanswered(session, owner_id, since_ms=0) == []
        kept = await session.get(Ping, (owner_id, 1))
        assert kept is not None
        assert kept.settled_ms == DUE_MS + 9


async def test_an_answer_that_was_quicker_than_our_note_stays(
    records: Records, owner_id: int
) -> None:
    await add(records, owner_id)
    async with records.writing() as session:
        await promise_all(session)
        await pings.settle(session, owner_id, 1, PingState.SKIPPED, now_ms=DUE_MS)
    async with records.writing() as session:
        assert await pings.note_sent(session, owner_id, [1], message_id=77) == 0
        assert await pings.note_failed(session, owner_id, [1], now_ms=DUE_MS) == 0
    async with records.reading() as session:
        ping = await session.get(Ping, (owner_id, 1))
        assert ping is not None
        assert ping.state is PingState.SKIPPED


async def test_what_can_never_be_sent_is_kept_as_failed(records: Records, owner_id: int) -> None:
    await add(records, owner_id)
    async with records.writing() as session:
        await promise_all(session)
        assert await pings.note_failed(session, owner_id, [1], now_ms=DUE_MS + 1) == 1
    async with records.reading() as session:
        ping = await session.get(Ping, (owner_id, 1))
        assert ping is not None
        assert (ping.state, ping.settled_ms) == (PingState.FAILED, DUE_MS + 1)


async def test_old_pings_go_and_their_numbers_are_not_given_again(
    records: Records, owner_id: int
) -> None:
    await add(records, owner_id)
    for week in range(3):
        async with records.writing() as session:
            assert await promise_all(session, DUE_MS + week * WEEK_MS) == 1
            if week != 1:
                await pings.note_sent(session, owner_id, [week + 1])
    async with records.writing() as session:
        assert await pings.clear_out(session, now_ms=DUE_MS + pings.KEPT_MS) == 0
        # The first goes, the second is still open, the third is the newest.
        assert await pings.clear_out(session, now_ms=DUE_MS + 2 * pings.KEPT_MS) == 1
    async with records.writing() as session:
        [owner] = await pings.due(session, CHANNEL, now_ms=DUE_MS + 3 * WEEK_MS, most=9)
        assert [one.ping_id for one in owner.reminders] == [4]


# --- the migration --------------------------------------------------------------------------------


async def test_a_log_from_before_reminders_is_kept_and_still_cannot_be_changed(
    databases: Databases,
) -> None:
    url = await databases.empty()
    engine = make_migrator(parse(url))

    def before(connection: Connection) -> None:
        settings = schema.config()
        settings.attributes["connection"] = connection
        command.upgrade(settings, "0003")
        for statement in (
            "INSERT INTO owner (id, kind, channel, external_id, created_at) "
            "VALUES (1, 'person', 'terminal', 'anna', '2026-03-01 08:30:00+00:00')",
            "INSERT INTO plant (owner_id, id, count, added_on, present) "
            "VALUES (1, 1, 1, '2026-03-01', true)",
            "INSERT INTO event (owner_id, id, batch, kind, happened_on, said_at, plant_id, payload)"
            " VALUES (1, 1, 1, 'fed', '2026-03-01', '2026-03-01 08:30:00+00:00', 1, '{}')",
        ):
            connection.execute(text(statement))

    async with engine.begin() as connection:
        await connection.run_sync(before)
    records = await open_records(url)
    async with records.reading() as session:
        [kept] = await log.history(session, 1, 1)
        assert (kept.kind, kept.on, kept.plant_id, kept.reminder_id) == (
            EventKind.FED, TODAY, 1, None,
        )  # fmt: skip
    with pytest.raises(DBAPIError, match="append-only"):
        async with records.writing() as session:
            await session.execute(text("UPDATE event SET kind = 'clear'"))
    await add(records, 1)
    async with records.writing() as session:
        await log.undo(session, 1, said_at=NOW)
    await records.close()

    # And back: what the log has of reminders goes, the rest stays.
    def back(connection: Connection) -> None:
        settings = schema.config()
        settings.attributes["connection"] = connection
        command.downgrade(settings, "0003")

        left = connection.execute(text("SELECT id, kind FROM event"))
        assert [tuple(row) for row in left] == [(1, "fed")]
        with pytest.raises(DBAPIError, match="append-only"):
            connection.execute(text("UPDATE event SET kind = 'clear'"))

    async with engine.connect() as connection:
        await connection.run_sync(back)
    await engine.dispose()
