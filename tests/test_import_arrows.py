"""Imports run one way, and the top level holds only what belongs there."""

from __future__ import annotations

import ast
import json
import subprocess
import sys
from fnmatch import fnmatch
from pathlib import Path

import pytest

import grammar

ROOT = Path(__file__).resolve().parent.parent
ROOMS = (
    "almanac", "dosing", "records", "reminders", "pictures", "conversation", "channels",
    "operating",
)  # fmt: skip
#: What each room may import of the house, besides itself.
ALLOWED = {
    "grammar": set(),
    "bot.almanac": set(),
    "bot.dosing": {"bot.almanac"},
    "bot.records": set(),
    "bot.reminders": set(),
    "bot.pictures": set(),
    "bot.conversation": {"grammar", "bot.dosing", "bot.records", "bot.reminders", "bot.pictures"},
    "bot.channels": {"bot.conversation"},
    # Nothing of the house imports it: it watches, and the entry points put it in between.
    "bot.operating": {"bot.conversation", "bot.records"},
}
TOP_LEVEL = {
    "README.md", "DEVELOPERS.md", "pyproject.toml", "LICENSE", "bot", "grammar", "tests",
    "fixtures",
}  # fmt: skip


def folder(room: str) -> Path:
    return ROOT / room.replace(".", "/")


def imported(path: Path) -> set[str]:
    """Modules a file imports anywhere in it, as absolute names."""
    package = path.relative_to(ROOT).parent.parts
    names: set[str] = set()
    for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
        if isinstance(node, ast.Import):
            names |= {alias.name for alias in node.names}
        elif isinstance(node, ast.ImportFrom):
            start = package[: len(package) - node.level + 1] if node.level else ()
            module = ".".join([*start, *([node.module] if node.module else [])])
            names |= {module} | {f"{module}.{alias.name}" for alias in node.names}
    return names


def room_of(module: str) -> str | None:
    parts = module.split(".")
    if parts[0] == "grammar":
        return "grammar"
    if parts[0] == "bot" and len(parts) > 1:
        return f"bot.{parts[1]}"
    return None


#: What only some commands need, and `ask` must not pay for.
LATER = {
    "telegram", "sqlalchemy", "matplotlib", "PIL", "alembic", "prometheus_client", "structlog",
    "aiohttp",
}  # fmt: skip

FILES = [
    (room, path)
    for room in ALLOWED
    if folder(room).is_dir()
    for path in sorted(folder(room).rglob("*.py"))
]


@pytest.mark.parametrize(
    ("room", "path"), FILES, ids=[str(path.relative_to(ROOT)) for _, path in FILES]
)
def test_a_file_imports_only_along_the_arrows(room: str, path: Path) -> None:
    rooms = {found for module in imported(path) if (found := room_of(module))}
    assert rooms <= ALLOWED[room] | {room}


def inside_of_grammar(path: Path) -> set[str]:
    """What a file takes of the reader that `grammar` does not hand out."""
    shown = {"grammar", *(f"grammar.{name}" for name in grammar.__all__)}
    return {name for name in imported(path) if room_of(name) == "grammar"} - shown


def private_names(path: Path) -> set[str]:
    """Names of other files that are their own, and are taken all the same."""
    return {
        alias.name
        for node in ast.walk(ast.parse(path.read_text(encoding="utf-8")))
        if isinstance(node, ast.ImportFrom)
        for alias in node.names
        if alias.name.startswith("_")
    }


BOT = sorted((ROOT / "bot").rglob("*.py"))


@pytest.mark.parametrize("path", BOT, ids=[str(path.relative_to(ROOT)) for path in BOT])
def test_the_reader_is_asked_by_what_it_hands_out(path: Path) -> None:
    assert inside_of_grammar(path) == set()


@pytest.mark.parametrize(
    "path", [p for _, p in FILES], ids=[str(path.relative_to(ROOT)) for _, path in FILES]
)
def test_no_file_takes_what_is_private_to_another(path: Path) -> None:
    assert private_names(path) == set()


def test_a_look_inside_would_be_found(tmp_path: Path) -> None:
    look = ROOT / "tests" / "grammar" / "test_lexicon.py"
    assert "grammar.words.units" in inside_of_grammar(look)
    taken = tmp_path / "taken.py"
    taken.write_text("from bot.records.database import _session, open_records\n", "utf-8")
    assert private_names(taken) == {"_session"}


def test_every_room_that_stands_is_looked_at() -> None:
    standing = {p.name for p in (ROOT / "bot").iterdir() if p.is_dir() and p.name[0] not in "._"}
    assert standing <= set(ROOMS)
    assert {room for room, _ in FILES} >= {"grammar", *(f"bot.{name}" for name in standing)}


def test_an_import_against_the_arrows_would_be_found(tmp_path: Path) -> None:
    found = imported(ROOT / "bot" / "conversation" / "answering.py")
    assert {room_of(module) for module in found} >= {"grammar", "bot.dosing", "bot.conversation"}


def test_the_top_level_holds_only_what_belongs_there() -> None:
    lines = (ROOT / ".gitignore").read_text(encoding="utf-8").split()
    ignored = [line.rstrip("/") for line in lines]
    found = {
        entry.name
        for entry in ROOT.iterdir()
        if not entry.name.startswith(".")
        and not any(fnmatch(entry.name, pattern) for pattern in ignored)
    }
    assert found <= TOP_LEVEL


def test_asking_loads_no_messenger_database_or_plots() -> None:
    script = (
        "import json, sys\n"
        "from click.testing import CliRunner\n"
        "from bot.cli import cli\n"
        "line = '5 litres, 20-20-20 powder, quarter strength'\n"
        "done = CliRunner().invoke(cli, ['ask', line, '--today', '2026-05-15'])\n"
        "loaded = sorted({name.split('.')[0] for name in sys.modules})\n"
        "print(json.dumps([done.exit_code, done.output, loaded]))\n"
    )
    run = subprocess.run(
        [sys.executable, "-c", script], cwd=ROOT, capture_output=True, text=True, check=True
    )
    code, output, loaded = json.loads(run.stdout)
    assert code == 0
    assert "20-20-20 powder in 5 l" in output
    assert {"bot", "grammar"} <= set(loaded)
    assert not LATER & set(loaded)
