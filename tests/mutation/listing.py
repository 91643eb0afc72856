"""The list of changes that no test noticed, one a line, each with a word why where it is known."""

from __future__ import annotations

import ast
from collections.abc import Iterable, Mapping
from pathlib import Path

LONGEST = 70
HEAD = """\
# Changes of bot/dosing that no test noticed: file:line function: what -> what | why.
# Written by python -m tests.mutation --list; what stands behind | is kept from the list before.
# Without a why it is a gap, or was not looked at. Lines are those of the run.
"""


def listed(missed: Iterable[Mapping[str, object]], root: Path, before: Path) -> str:
    """The list as text; reasons are those of the list before, else what can be told by itself."""
    known = _reasons(before)
    lines = set()
    for row in missed:
        what = f"{row['file']} {row['where']}: {_change(str(row['old']), str(row['new']))}"
        why = known.get(what) or _plain(row, root)
        file, rest = what.split(" ", 1)
        line = f"{file}:{row['line']} {rest}"
        lines.add((file, int(str(row["line"])), f"{line} | {why}" if why else line))
    return HEAD + "".join(f"{line}\n" for _, _, line in sorted(lines))


def _reasons(before: Path) -> dict[str, str]:
    """Why, by file, function and change: lines move."""
    found = {}
    for line in before.read_text("utf-8").splitlines() if before.exists() else ():
        what, bar, why = line.rpartition(" | ")
        if bar and not line.startswith("#"):
            place, rest = what.split(" ", 1)
            found[f"{place.rpartition(':')[0]} {rest}"] = why
    return found


def _change(old: str, new: str) -> str:
    """Where the two differ, with a little around it."""
    old, new = " ".join(old.split()), " ".join(new.split())
    if max(len(old), len(new)) > LONGEST:
        first = next((i for i, (a, b) in enumerate(zip(old, new, strict=False)) if a != b), 0)
        tail = 0
        while tail < min(len(old), len(new)) - first and old[-1 - tail] == new[-1 - tail]:
            tail += 1
        head = max(first - 12, 0)
        old, new = (
            ("~" if head else "") + each[head : len(each) - tail + 12] for each in (old, new)
        )
    return f"{old} -> {new}".replace(" | ", " or ")


def _plain(row: Mapping[str, object], root: Path) -> str:
    """What can be told of a change by itself: the text of an error, an assurance of lengths."""
    old, new = str(row["old"]), str(row["new"])
    if "strict=" in old and "strict=False" not in old and old.startswith("zip("):
        return "equivalent: both are of one length"
    if old[:1] in "\"'" and _in_raise(root / str(row["file"]), int(str(row["line"])), old):
        return "text of an error"
    if old.startswith("ValueError(") and new in ("ValueError(None)", "ValueError()"):
        return "text of an error"
    return ""


def _in_raise(path: Path, line: int, text: str) -> bool:
    """Whether a text with a blank in it stands in a `raise` (codes of errors have none)."""
    if " " not in text:
        return False
    raises = (n for n in ast.walk(ast.parse(path.read_text("utf-8"))) if isinstance(n, ast.Raise))
    return any(n.lineno <= line <= (n.end_lineno or n.lineno) for n in raises)
