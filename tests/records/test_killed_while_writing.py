"""kill -9 in the middle of many writes: what was acknowledged is there, nothing else."""

from __future__ import annotations

import asyncio
import random
import signal
import subprocess
import sys
from pathlib import Path

import pytest
from sqlalchemy import text

from bot.records import log, open_records, owners, plants
from bot.records.kinds import EventKind

from .records_kit import ADDRESS, NOW, Databases, begin

TOP = Path(__file__).parents[2]
PROGRAM = Path(__file__).with_name("writer_process.py")


def start(url: str, *arguments: int) -> subprocess.Popen[str]:
    return subprocess.Popen(
        [sys.executable, str(PROGRAM), url, *map(str, arguments)],
        cwd=TOP,
        env={"PYTHONPATH": str(TOP)},
        stdout=subprocess.PIPE,
        stderr=subprocess.PIPE,
        text=True,
    )


async def set_up(url: str) -> tuple[int, int]:
    records = await open_records(url)
    async with records.writing() as session:
        owner = await owners.find_or_add(session, ADDRESS, created_at=NOW)
        plant = await plants.add(await begin(session, owner.id), name="Ruby")
    await records.close()
    return owner.id, plant.id


def kill_after(process: subprocess.Popen[str], acknowledged: int) -> list[int]:
    """Kill the program somewhere in the write that follows; return what it acknowledged."""
    assert process.stdout is not None
    lines = [process.stdout.readline() for _ in range(acknowledged)]
    pause = random.Random(acknowledged).uniform(0.0, 0.003)
    try:
        process.wait(timeout=pause)
    except subprocess.TimeoutExpired:
        process.send_signal(signal.SIGKILL)
    rest = process.stdout.read()  # `communicate` would pass over what is buffered by now
    process.wait(timeout=30)
    return [int(line) for line in [*lines, *rest.splitlines()]]


@pytest.mark.parametrize("after", [3, 218, 501, 777])
async def test_a_killed_program_leaves_exactly_the_acknowledged_writes(
    databases: Databases, after: int
) -> None:
    url = await databases.migrated()
    owner_id, plant_id = await set_up(url)
    process = start(url, owner_id, plant_id, 1, after + 50, 3600)
    acknowledged = await asyncio.to_thread(kill_after, process, after)
    assert process.returncode == -signal.SIGKILL
    assert after <= len(acknowledged) <= after + 50

    records = await open_records(url)
    async with records.reading() as session:
        found = await log.history(session, owner_id, plant_id, kinds=[EventKind.FED])
        plant = await plants.get(session, owner_id, plant_id)
        if url.startswith("sqlite"):
            assert await session.scalar(text("PRAGMA integrity_check")) == "ok"
    await records.close()
    numbers = [event.details["number"] for event in found]
    in_flight = [acknowledged[-1] + 1]
    assert numbers in (acknowledged, acknowledged + in_flight)
    assert plant.last_fed_on == found[-1].on


async def test_twenty_writers_in_four_programs_never_find_the_database_locked(
    sqlite_databases: Databases,
) -> None:
    url = await sqlite_databases.migrated()
    owner_id, plant_id = await set_up(url)
    running = [start(url, owner_id, plant_id, 5, 20, 0) for _ in range(4)]
    ended = [await asyncio.to_thread(process.communicate, timeout=120) for process in running]
    assert [errors for _, errors in ended] == [""] * 4
    assert [len(lines.splitlines()) for lines, _ in ended] == [100] * 4
    records = await open_records(url)
    async with records.reading() as session:
        found = await log.history(session, owner_id, plant_id, kinds=[EventKind.FED])
    await records.close()
    assert len(found) == 400
    # Every utterance got a number of its own.
    assert len({event.batch for event in found}) == 400
