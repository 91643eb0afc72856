"""The conversation in a terminal: a prompt with history and hints, plain when piped."""

from __future__ import annotations

import asyncio
import sys
from collections.abc import AsyncIterator, Awaitable, Callable
from datetime import date
from pathlib import Path

import click

from bot.channels.piped import lines
from bot.conversation.answer import Answer, File, Picture
from bot.conversation.ask import Setting, warm_up
from bot.conversation.replies import hint
from bot.conversation.turn import Opened
from bot.conversation.wording import Wording, wording

_ENDS = frozenset({"quit", "exit", "bye", "q"})
#: A file is read up to here [bytes].
_LARGEST_FILE = 50_000_000
_MOST_FILES = 20
#: A number that picks a choice is shorter [digits].
_LONGEST_NUMBER = 4
#: Choices that are longer together stand in a row each [characters].
_ROW_CHARS = 60

Answering = Callable[[str], Awaitable[Answer]]


async def chat(language: str | None, answered: Answering, history: Path) -> None:
    """Answer line by line until the person leaves.

    Parameters
    ----------
    language : of the greeting, None for English
    answered : gives an answer, an apology for a fault of ours among them
    history : file that keeps what was typed at the prompt
    """
    interactive = sys.stdin.isatty()
    words = wording(language or "en")
    if interactive:
        warm_up(Setting(today=date.today(), language=language))
        click.echo(greeting(words))
    offered: list[str] = []

    def hint_of_language() -> str:
        return words.say("help-example-first")

    async for line in _prompted(history, hint_of_language) if interactive else _piped():
        typed = line.strip()
        if typed.lower() in _ENDS:
            break
        if not typed:
            continue
        answer = await answered(chosen(typed, offered))
        if answer.kind == "forget" and answer.details:  # what was typed is theirs to forget as well
            history.unlink(missing_ok=True)
        words = wording(answer.language)
        click.echo(answer.reply)
        if answer.picture is not None:
            name = kept(answer.picture)
            click.echo(words.say("picture-saved", alt=answer.picture.alt, name=name))
        if answer.file is not None:
            click.echo(words.say("file-saved", names=words.listed(saved(answer.file))))
        further = [hint(answer, words) if interactive else "", numbered(answer.choices)]
        for text in filter(None, further):  # colour only where a person looks at it
            click.echo(click.style(text, dim=True) if interactive else text)
        offered = answer.choices
        if interactive:
            click.echo("")


def numbered(choices: list[str]) -> str:
    """What can be answered with a number; choices that are numbers already stand for themselves."""
    if not any(not c.isdecimal() for c in choices):
        return ""
    shown = [c if c.isdecimal() else f"{n}. {c}" for n, c in enumerate(choices, 1)]
    return ("   " if sum(map(len, shown)) <= _ROW_CHARS else "\n").join(shown)


def chosen(typed: str, offered: list[str]) -> str:
    """The choice whose number was typed, otherwise what was typed."""
    number = int(typed) if typed.isdecimal() and len(typed) < _LONGEST_NUMBER else 0
    return offered[number - 1] if 1 <= number <= len(offered) else typed


def greeting(words: Wording) -> str:
    """What this is, and what to type first."""
    example = words.say("help-example-first")
    return "\n".join([words.say("help-what"), words.say("help-next-first", example=example)])


def saved(file: File) -> list[str]:
    """Put a file where the person is, never over another; returns the names."""
    if file.files is None:
        path = _free(Path(file.name).name)
        with path.open("x", encoding="utf-8", newline="") as target:
            target.write(file.content)
        return [path.name]
    folder = _free(Path(file.name).stem)
    folder.mkdir()
    for name, content in file.files.items():
        with (folder / Path(name).name).open("x", encoding="utf-8", newline="") as target:
            target.write(content)
    return [f"{folder.name}/"]


def kept(picture: Picture) -> str:
    """Put a picture where the person is, never over another; returns its name."""
    path = _free(Path(picture.name).name)
    with path.open("xb") as target:
        target.write(picture.content)
    return path.name


def _free(name: str) -> Path:
    path = Path(name)
    number = 2
    while path.exists() or path.is_symlink():  # one that points nowhere is there too
        path = Path(f"{Path(name).stem}-{number}{Path(name).suffix}")
        number += 1
    return path


async def open_file(name: str) -> Opened:
    """As `opened`, beside the loop: a disk may be slow."""
    return await asyncio.to_thread(opened, name)


def opened(name: str) -> Opened:
    """The text of a file that was named, or the CSV files of a folder; None where unreadable."""
    try:
        path = Path(name).expanduser()
        if path.is_dir():
            # Files only: a pipe that is called like one would never end.
            files = sorted(f for f in path.glob("*.csv") if f.is_file())[:_MOST_FILES]
            if sum(f.stat().st_size for f in files) > _LARGEST_FILE:
                return None
            return {f.name: f.read_text(encoding="utf-8", errors="replace") for f in files} or None
        if not path.is_file() or path.stat().st_size > _LARGEST_FILE:
            return None
        return path.read_text(encoding="utf-8", errors="replace")
    except (OSError, RuntimeError, ValueError):  # no such file, no such user, no such name
        return None


async def _piped() -> AsyncIterator[str]:
    for line in lines():
        yield line


async def _prompted(history: Path, example: Callable[[], str]) -> AsyncIterator[str]:
    from prompt_toolkit import PromptSession
    from prompt_toolkit.auto_suggest import AutoSuggestFromHistory
    from prompt_toolkit.history import FileHistory

    session: PromptSession[str] = PromptSession(
        history=FileHistory(str(history)),
        auto_suggest=AutoSuggestFromHistory(),
        placeholder=example,
    )
    while True:
        try:
            yield await session.prompt_async("> ")
        except (EOFError, KeyboardInterrupt):
            return
