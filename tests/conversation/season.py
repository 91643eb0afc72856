"""The season of one invented grower, told through `sinkside say` day by day.

`python -m tests.conversation.season` writes the approved conversations anew, with codes behind it
only those of some languages; read them before you keep them. The scripts say the same line by line
in each language.
"""

from __future__ import annotations

import json
import sys
import tempfile
from collections.abc import Iterator
from pathlib import Path
from typing import Any

from click.testing import CliRunner

from bot.cli import cli

FOLDER = Path(__file__).resolve().parent.parent.parent / "fixtures" / "season"
LANGUAGES = ("en", "de", "es", "pl")


def script_of(code: str) -> Path:
    """What the grower says, in one language."""
    return FOLDER / ("script.txt" if code == "en" else f"script.{code}.txt")


def approved_of(code: str) -> Path:
    """The conversation as it was read and approved, in one language."""
    return FOLDER / ("approved.txt" if code == "en" else f"approved.{code}.txt")


def days(script: Path) -> Iterator[tuple[str, list[str]]]:
    """Each day of a script with its lines."""
    day, lines = "", []
    for line in script.read_text(encoding="utf-8").splitlines():
        if line.startswith("@"):
            if lines:
                yield day, lines
            day, lines = line[1:].strip(), []
        elif line and not line.startswith("#"):
            lines.append(line)
    yield day, lines


def say_all(
    script: Path, person: str, url: str, *, last: str | None = None
) -> Iterator[tuple[str, str, dict[str, Any]]]:
    """Each line of a script with its day and its answer, kept in the records at a URL."""
    told = list(days(script))
    if last is not None:
        told[-1][1].append(last)
    for day, lines in told:
        call = ["say", "--as", person, "--json", "--today", day, "--database", url]
        done = CliRunner().invoke(cli, call, input="\n".join(lines) + "\n", catch_exceptions=False)
        assert done.exit_code == 0, done.output
        answers = [json.loads(line) for line in done.output.splitlines()]
        for line, answer in zip(lines, answers, strict=True):
            yield day, line, answer


def told(url: str, code: str) -> str:
    """The whole season with its answers."""
    out: list[str] = []
    before = ""
    for day, line, answer in say_all(script_of(code), "Mira", url):
        if day != before:
            out.append(f"## {day}")
            before = day
        out += [f"> {line}  [{answer['kind']}]", *answer["reply"].splitlines(), ""]
    return "\n".join(out)


if __name__ == "__main__":
    for wanted in sys.argv[1:] or LANGUAGES:
        with tempfile.TemporaryDirectory() as folder:
            conversation = told(f"sqlite:///{folder}/season.db", wanted)
            approved_of(wanted).write_text(conversation, encoding="utf-8")
