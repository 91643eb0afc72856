"""The conversation in a terminal: a prompt with history and hints, plain when piped."""

from __future__ import annotations

import os
import sys
from collections.abc import Callable, Iterator
from pathlib import Path

import click

from bot.conversation.answer import Answer
from bot.conversation.ask import Setting, warm_up
from bot.conversation.replies import hint
from bot.conversation.wording import wording

_ENDS = frozenset({"quit", "exit", "bye", "q"})
_EXAMPLE = "5 litres, 20-20-20 powder, sphagnum, winter, quarter strength"

Answering = Callable[[str, Setting], Answer]


def chat(setting: Setting, answered: Answering) -> None:
    """Answer line by line until the person leaves.

    Parameters
    ----------
    setting : the day, hemisphere and language
    answered : gives an answer, an apology for a fault of ours among them
    """
    interactive = sys.stdin.isatty()
    words = wording(setting.language or "en")
    if interactive:
        warm_up(setting)
        click.echo(words.say("help"))
    last: Answer | None = None
    for line in _prompted() if interactive else _piped():
        typed = line.strip()
        if typed.lower() in _ENDS:
            break
        if not typed:
            continue
        details = _details(typed, last)
        if details is not None:
            click.echo(details)
            continue
        last = answered(typed, setting)
        click.echo(last.reply)
        if interactive:
            further = hint(last, words)
            click.echo(click.style(further, dim=True) + "\n" if further else "")


def _details(typed: str, last: Answer | None) -> str | None:
    """The choices behind a reply: 'more' for all cautions, 'why' for the steps one by one."""
    word = typed.lower().rstrip("?!. ")
    if last is None or not last.why:
        return None
    if word in ("more", "all cautions", "cautions"):
        return "\n".join(f"- {c.text}" for c in last.cautions)
    if word in ("why", "steps"):
        return "\n".join(f"- {w.text} ({w.source})" for w in last.why)
    return None


def _piped() -> Iterator[str]:
    for line in sys.stdin:
        yield line.rstrip("\n")


def _prompted() -> Iterator[str]:
    from prompt_toolkit import PromptSession
    from prompt_toolkit.auto_suggest import AutoSuggestFromHistory
    from prompt_toolkit.history import FileHistory

    session: PromptSession[str] = PromptSession(
        history=FileHistory(str(_history_file())),
        auto_suggest=AutoSuggestFromHistory(),
        placeholder=_EXAMPLE,
    )
    while True:
        try:
            yield session.prompt("> ")
        except (EOFError, KeyboardInterrupt):
            return


def _history_file() -> Path:
    """Where the prompt keeps its history: the user's data folder."""
    base = Path(os.environ.get("XDG_DATA_HOME") or Path.home() / ".local" / "share")
    folder = base / "sinkside"
    folder.mkdir(parents=True, exist_ok=True)
    return folder / "chat-history"
