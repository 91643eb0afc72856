"""Where the time goes on the slowest paths: `python -m tests.benchmarks.profiles [NAME ...]`.

Each runs in a process of its own under pyinstrument, which is not one of the project's
dependencies: `pip install pyinstrument` first. One frame a line, those of libraries folded.
"""

from __future__ import annotations

import argparse
import asyncio
import subprocess
import sys
import tempfile
from collections.abc import Awaitable, Callable
from datetime import date, timedelta
from typing import Any

from tests.benchmarks.figures import ROOT
from tests.benchmarks.measuring import AS_INSTALLED

#: A frame counts a line from this share of the whole on [%].
_LEAST_PERCENT = 2.0
_INTERVAL_S = 0.0005


def cold(profiler: Any) -> None:
    """One question on the command line, from an interpreter that has loaded nothing."""
    with profiler:
        from bot.conversation.ask import Setting, ask

        ask("5 l 20-20-20 powder quarter", Setting(today=date(2026, 7, 1)))


def taken_in(profiler: Any) -> None:
    """An export of 20,000 entries, read and checked."""
    from bot.records import owners, transfer

    async def exported(records: Any) -> str:
        from tests.benchmarks.bench_records import BIG

        async with records.reading() as session:
            owner = await owners.find(session, BIG)
            assert owner is not None
            return await transfer.export_json(session, owner.id)

    text = asyncio.run(_among_many(exported))
    with profiler:
        transfer.read_export(text)


def year(profiler: Any) -> None:
    """The picture of a year, asked for by somebody with 500 plants; the first one is left out."""

    async def drawn(records: Any) -> None:
        from bot.conversation.talk import Conversation
        from bot.conversation.turn import Incoming
        from tests.benchmarks.bench_records import BIG, DAY, NOW

        talk = Conversation(records)

        async def says(number: int) -> None:
            at = NOW + timedelta(seconds=number)
            line = Incoming("show my year", BIG.external_id, BIG.channel, at, DAY)
            assert (await talk.answer(line)).picture is not None

        await says(0)
        with profiler:
            for number in range(1, 11):
                await says(number)

    asyncio.run(_among_many(drawn))


async def _among_many(act: Callable[[Any], Awaitable[Any]]) -> Any:
    """What an act gives with records that hold a thousand owners, one with a large collection."""
    from bot.records import open_records
    from tests.benchmarks.bench_records import fill

    with tempfile.TemporaryDirectory() as folder:
        records = await open_records(f"sqlite:///{folder}/bench.db")
        await fill(records, 1_000)
        try:
            return await act(records)
        finally:
            await records.close()


PATHS: dict[str, Callable[[Any], None]] = {"cold": cold, "import": taken_in, "year": year}


def main() -> int:
    """Print the profiles; 1 if one broke."""
    parser = argparse.ArgumentParser(prog="python -m tests.benchmarks.profiles")
    parser.add_argument("names", nargs="*", metavar="NAME", help=", ".join(PATHS))
    parser.add_argument("--here", action="store_true", help="in this process: one name")
    given = parser.parse_args()
    names = given.names or list(PATHS)
    if unknown := sorted(set(names) - set(PATHS)):
        parser.error(f"no path {unknown[0]!r}; there are {', '.join(PATHS)}")
    if not given.here:
        command = [sys.executable, "-m", "tests.benchmarks.profiles", "--here"]
        ended = [subprocess.call([*command, n], cwd=ROOT, env=AS_INSTALLED) for n in names]
        return int(any(ended))
    try:
        from pyinstrument import Profiler
        from pyinstrument.renderers import ConsoleRenderer
    except ImportError:
        parser.error("pyinstrument is missing: pip install pyinstrument")
    profiler = Profiler(interval=_INTERVAL_S)
    print(f"== {names[0]}: {PATHS[names[0]].__doc__}", flush=True)
    PATHS[names[0]](profiler)
    share = {"filter_threshold": _LEAST_PERCENT / 100}
    print(profiler.output(ConsoleRenderer(unicode=True, processor_options=share)))
    return 0


if __name__ == "__main__":
    raise SystemExit(main())
