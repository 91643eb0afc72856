"""The command line: `sinkside ask`, `chat`, `say`, `serve`, `remind`; `backup` and other chores."""

from __future__ import annotations

import logging
import os
import sys
from datetime import date, datetime
from pathlib import Path
from typing import TYPE_CHECKING

import click

from bot.channels.piped import lines
from bot.conversation.answer import Answer
from bot.conversation.ask import FAULT, Setting, apology, ask
from bot.conversation.wording import languages
from bot.folders import data_folder, default_database
from bot.operating.faults import log_quietly

if TYPE_CHECKING:
    from bot.remembering import Desk

log = logging.getLogger("sinkside")


def _day(context: click.Context, parameter: click.Parameter, value: str | None) -> date:
    if value is None:
        return date.today()
    try:
        return datetime.strptime(value, "%Y-%m-%d").date()
    except ValueError as error:
        raise click.BadParameter("send a day like 2026-01-31") from error


def _day_or_none(
    context: click.Context, parameter: click.Parameter, value: str | None
) -> date | None:
    return None if value is None else _day(context, parameter, value)


_lang = click.option(
    "--lang", type=click.Choice(languages()), help="Language (default: detected per message)."
)
_today = click.option(
    "--today", callback=_day, metavar="YYYY-MM-DD", help="The day it is (default: the clock)."
)
_today_or_clock = click.option(
    "--today",
    callback=_day_or_none,
    metavar="YYYY-MM-DD",
    help="The day it is (default: the clock).",
)
_south = click.option("--south", is_flag=True, help="Southern hemisphere.")
_database = click.option(
    "--database",
    metavar="URL",
    envvar="SINKSIDE_DATABASE_URL",
    help="Where records are kept (default: a file in the user's data folder).",
)


@click.group(context_settings={"help_option_names": ["-h", "--help"]})
def cli() -> None:
    """How much feed, in how much water, for which orchids, and why."""


@cli.command("ask")
@click.argument("text", required=False)
@click.option("--json", "as_json", is_flag=True, help="The answer as one JSON object a line.")
@click.option("--batch", is_flag=True, help="Messages from standard input, a line each.")
@_lang
@_today
@_south
@_database
def ask_command(
    text: str | None,
    as_json: bool,
    batch: bool,
    lang: str | None,
    today: date,
    south: bool,
    database: str | None,
) -> None:
    """Answer one request; nothing is stored."""
    if batch == (text is not None):
        raise click.UsageError('send one TEXT, like "5 litres, 20-20-20 powder", or --batch')
    setting = Setting(today=today, south=south, language=lang)
    faults = 0
    for message in lines() if batch else [text or ""]:
        answer = answered(message, setting)
        faults += answer.kind == FAULT
        click.echo(answer.as_json() if as_json else answer.reply)
        sys.stdout.flush()
    if faults:
        raise SystemExit(1)


def answered(message: str, setting: Setting) -> Answer:
    """An answer; for a fault of ours an apology, and a line in the log without the message."""
    try:
        return ask(message, setting)
    except Exception:  # whatever broke, the person gets an answer and the next one is served
        log.exception("no answer to a message of %d characters", len(message))
        return apology(message, setting)


@cli.command("chat")
@click.option("--demo", is_flag=True, help="An invented collection in a throw-away database.")
@_lang
@_today_or_clock
@_south
@_database
def chat_command(
    demo: bool, lang: str | None, today: date | None, south: bool, database: str | None
) -> None:
    """Talk in the terminal; `quit` or Ctrl-D ends it."""
    from bot.remembering import Desk, running

    machine = _machine_language()
    desk = Desk("me", language=lang, today=today, south=south, machine_language=machine)
    running(desk, database, demo=demo, talk=_chat)


async def _chat(desk: Desk) -> int:
    from bot.channels.terminal import chat

    language = desk.language or desk.machine_language
    await chat(language, desk.answered, data_folder() / "chat-history")
    return 0


def _machine_language() -> str | None:
    """The language that the terminal is set to, where we have it."""
    told = next((v for n in ("LC_ALL", "LC_MESSAGES", "LANG") if (v := os.environ.get(n))), "")
    code = told.partition("_")[0].partition(".")[0].lower()
    return code if code in languages() else None


@cli.command("say")
@click.option("--as", "person", required=True, metavar="NAME", help="Who is speaking.")
@click.option("--group", metavar="GROUP", help="The group it is said in.")
@click.option("--json", "as_json", is_flag=True, help="Each answer as one JSON object a line.")
@_lang
@_today_or_clock
@_south
@_database
def say_command(
    person: str,
    group: str | None,
    as_json: bool,
    lang: str | None,
    today: date | None,
    south: bool,
    database: str | None,
) -> None:
    """A conversation from standard input, a message a line; what is said is kept."""
    from bot.remembering import Desk, running

    async def talk(desk: Desk) -> int:
        faults = 0
        for message in lines():
            answer = await desk.answered(message)
            faults += answer.kind == FAULT
            click.echo(answer.as_json() if as_json else answer.reply)
            sys.stdout.flush()
        return 1 if faults else 0

    desk = Desk(person=person, group=group, language=lang, today=today, south=south)
    running(desk, database, demo=False, talk=talk)


@cli.command("serve")
@_database
def serve_command(database: str | None) -> None:
    """Serve people and groups in the messenger until stopped."""
    from bot.serving import serve

    serve(database)


@cli.command("remind")
@_database
def remind_command(database: str | None) -> None:
    """Only remind and send, beside any number of `serve`, until stopped."""
    from bot.serving import serve

    serve(database, receives=False)


@cli.command("backup")
@click.argument("file", type=click.Path(path_type=Path))
@click.option("--replace", is_flag=True, help="Overwrite FILE if it is there.")
@_database
def backup_command(file: Path, replace: bool, database: str | None) -> None:
    """Copy the records to FILE, also while the bot runs."""
    from bot.operating.chores import back_up

    back_up(database or default_database(), file, replace=replace)


@cli.command("migrate-data")
@click.argument("source", metavar="FROM")
@click.argument("target", metavar="TO")
def migrate_data_command(source: str, target: str) -> None:
    """Copy all records from the database FROM to the empty database TO (URLs).

    Stop the bot first. Leave SQLite once the bot runs as several processes or on several
    machines, or once its file lies on a network drive; PostgreSQL is for that.
    """
    from bot.operating.chores import move

    move(source, target)


@cli.command("doctor")
@_database
def doctor_command(database: str | None) -> None:
    """Look the records over and say what is wrong; nothing is changed."""
    from bot.operating.chores import look_over

    if not look_over(database or default_database()):
        raise SystemExit(1)


def main() -> None:
    """Entry point: 0 answered, 2 unusable arguments, 1 a fault of ours."""
    log_quietly()
    cli()
