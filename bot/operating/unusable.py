"""What the command line says of records that cannot be used: one sentence, exit code 2."""

from __future__ import annotations

import click

from bot.records.errors import (
    CutOff,
    DatabaseProblem,
    EmptyFile,
    ForeignDatabase,
    NewerDatabase,
)


class Unusable(click.ClickException):
    """Records that cannot be used; said without the usage of the command, which was right."""

    exit_code = 2


def unusable(problem: DatabaseProblem, subject: str = "the records at this --database") -> Unusable:
    """Say what is wrong, that nothing was changed, and what to do about it."""
    if isinstance(problem, NewerDatabase):
        return Unusable(
            f"{subject} have version {problem.found} of a newer program, this one knows up to "
            f"{problem.known}: update this program and start it again; nothing was changed"
        )
    if isinstance(problem, EmptyFile):
        return Unusable(
            f"{subject} are an empty file: put a backup in its place, or delete it to begin "
            "anew; nothing was changed"
        )
    if isinstance(problem, ForeignDatabase):
        return Unusable(
            f"{subject} cannot be used ({problem}): send another URL, like "
            "sqlite:///sinkside.db; nothing was changed"
        )
    if isinstance(problem, CutOff):
        return Unusable(
            f"{subject} cannot be read yet ({problem}): start `sinkside chat` or `sinkside "
            "serve` once, which does so, and try again; nothing was changed"
        )
    return Unusable(
        f"{subject} cannot be used ({type(problem).__name__}: {problem}); send another URL, "
        "like sqlite:///sinkside.db"
    )
