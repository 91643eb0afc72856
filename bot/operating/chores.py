"""Chores of an operator at the command line: backup, moving, looking over; in plain lines."""

from __future__ import annotations

import asyncio
from collections.abc import Callable
from datetime import UTC, datetime
from pathlib import Path

import click

from bot.operating.unusable import unusable
from bot.records import backup, copying, doctor
from bot.records.doctor import Finding, Report
from bot.records.errors import (
    CutOff,
    DatabaseProblem,
    EmptyFile,
    ForeignDatabase,
    NewerDatabase,
)

Say = Callable[[str], None]


def back_up(url: str, target: Path, *, replace: bool, say: Say = click.echo) -> None:
    """Copy the records to a file and say what is in it."""
    try:
        made = backup.back_up(url, target, replace=replace)
    except backup.NoFile:
        raise click.UsageError(
            "these records are in PostgreSQL: back them up with pg_dump, "
            "like pg_dump --format=custom --file=sinkside.dump DATABASE"
        ) from None
    except backup.InTheWay:
        raise click.UsageError(
            f"{target.name} is there already: send another name, or --replace to overwrite it"
        ) from None
    except backup.InUse as error:
        raise click.UsageError(f"{target.name}: {error}; send another name") from None
    except backup.BrokenCopy as error:
        raise click.ClickException(
            f"no backup was made: {error}; send `sinkside doctor` to look the records over"
        ) from None
    except CutOff as error:
        raise unusable(error, "no backup was made: the records") from None
    except DatabaseProblem as error:
        raise click.UsageError(f"no backup was made: {error}") from error
    rows = sum(made.rows.values())
    owners, plants, entries = (made.rows.get(t, 0) for t in ("owner", "plant", "event"))
    say(
        f"Copied to {target.name} ({_size(made.size)}): owners {owners}, plants {plants}, "
        f"entries of the log {entries}."
    )
    say(f"Checked: the file is whole, all {rows} rows are in it.")


def move(source: str, target: str, *, say: Say = click.echo) -> None:
    """Copy all records to another database and say what was copied."""
    began = datetime.now(UTC)

    def told(table: str, tally: copying.Tally) -> None:
        if tally.rows:
            say(f"{table}: {tally.rows} rows, checksum {tally.checksum:032x}")

    try:
        copied = asyncio.run(copying.copy_records(source, target, told))
    except copying.SameDatabase:
        raise click.UsageError("FROM and TO are the same database: send two") from None
    except copying.NothingThere as error:
        raise click.UsageError(f"FROM cannot be copied: {error}") from None
    except copying.NotEmpty as error:
        tables = ", ".join(f"{name} {rows}" for name, rows in error.rows.items())
        raise click.UsageError(
            f"TO has records already (rows: {tables}) and was left as it is: send an empty database"
        ) from None
    except copying.DoesNotFit as error:
        raise click.ClickException(
            f"TO does not take what FROM has in {error}; nothing was copied, TO is empty"
        ) from None
    except copying.NotTheSame as error:
        raise click.ClickException(
            f"what came back from TO is not what was sent ({error}); nothing was kept, TO is empty"
        ) from None
    except (NewerDatabase, EmptyFile, CutOff) as error:
        raise unusable(error, "nothing was copied: the records of FROM or TO") from None
    except DatabaseProblem as error:
        raise click.UsageError(
            f"nothing was copied ({type(error).__name__}: {error}); send two databases that "
            "answer, like sqlite:///sinkside.db postgresql://user@host/sinkside"
        ) from error
    rows = sum(tally.rows for tally in copied.values())
    say(f"All {rows} rows are in TO, counted and compared by checksum.")
    say(
        f"What was written to FROM after {began:%H:%M:%S} UTC is not. Set SINKSIDE_DATABASE_URL "
        "to TO, and keep FROM until you have seen it run."
    )


def look_over(url: str, *, say: Say = click.echo) -> bool:
    """Look a database over and say what is wrong; returns whether nothing is."""
    try:
        report = asyncio.run(doctor.examine(url))
    except (NewerDatabase, ForeignDatabase, CutOff) as error:
        raise unusable(error) from None
    except DatabaseProblem as error:
        raise click.UsageError(
            f"the records cannot be looked over ({type(error).__name__}: {error}); "
            "send --database with their URL"
        ) from error
    for finding in report.findings:
        say(f"{'Note' if finding.harmless else 'Wrong'}: {_told(finding)}")
    say(_summary(report))
    return report.sound


def _summary(report: Report) -> str:
    looked = f"Looked at {report.tables} tables, owners: {report.owners}."
    wrong = sum(not finding.harmless for finding in report.findings)
    return (
        f"{looked} Nothing is wrong." if not wrong else f"{looked} Lines that say Wrong: {wrong}."
    )


_STUCK = {
    "inbox": "updates wait for more than ten minutes: is `sinkside serve` running?",
    "outbox": "letters wait for more than an hour: is `sinkside serve` running?",
    "reminder": "reminders are due for more than ten minutes and nobody has sent them",
    "ping": "pings are due for more than ten minutes and have not been sent",
}
_DEAD = {
    "inbox": "updates failed for the last time and were given up; the log has the faults",
    "outbox": "letters can never be sent; they go by themselves after two days",
    "ping": "pings could not be sent and were given up, mostly as their chats were blocked",
}
_SAID: dict[str, str] = {
    "damaged": "the file is damaged ({detail}): stop the bot, and go back to a backup",
    "older": "the records have version {detail} of an older program; the next start upgrades "
    "them, and they can be looked over then",
    "no-table": "the table {table} is missing: go back to a backup",
    "no-column": "the table {table} lacks its column {detail}: go back to a backup",
    "ownerless": "{table}: the owner of {rows} rows is missing",
    "points-nowhere": "{table}: {rows} rows point to a row that is missing ({detail})",
    "no-utterance": "{table}: {rows} entries belong to an utterance that is missing",
    "date-behind-log": "{table}: {rows} rows have a date that is behind the log ({detail})",
    "date-ahead-of-log": "{table}: {rows} rows have a date that no entry of the log has "
    "({detail}); they may be of a file that was taken in without its log",
    "takes-back-wrongly": "{table}: {rows} entries take back none that came before them",
    "no-entry": "{table}: {rows} rows were added by no entry of the log; they may be of a file "
    "that was taken in without its log",
    "no-such-state": "{table}: {rows} rows are in a state that does not exist",
    "no-moment": "{table}: {rows} rows come and have no moment, or have ended and still have one",
    "other-channel": "{table}: {rows} rows are of another channel than their owner",
    "empty": "{table}: {rows} open updates have lost their text and cannot be answered",
    "text-kept": "{table}: {rows} updates are done and still have their text",
    "counter-behind": "{table}: the counter of numbers is behind {rows}, the next row would "
    "clash: set it with setval",
    "unreachable": "{rows} chats have blocked or removed the bot",
}


def _told(finding: Finding) -> str:
    """A finding as a line."""
    values = {"table": finding.table, "rows": finding.rows, "detail": finding.detail}
    if finding.code == "stuck":
        return f"{finding.rows} {_STUCK[finding.table]}"
    if finding.code == "dead":
        return f"{finding.rows} {_DEAD[finding.table]}"
    return _SAID[finding.code].format(**values)


def _size(number: int) -> str:
    return f"{number / 1_000_000:.1f} MB" if number >= 100_000 else f"{number / 1000:.1f} kB"
