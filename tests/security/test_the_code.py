"""What is not in the code at all: nothing that runs a text, and no SQL made of one."""

from __future__ import annotations

import ast
from collections.abc import Iterator
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[2]
FILES = sorted([*(ROOT / "bot").rglob("*.py"), *(ROOT / "grammar").rglob("*.py")])
#: They run what they read.
MODULES = {"pickle", "cPickle", "dill", "marshal", "shelve", "yaml", "subprocess", "code", "pty",
           "xml", "lxml", "jinja2", "ctypes"}  # fmt: skip
CALLS = {"eval", "exec", "compile", "__import__", "system", "popen"}
#: SQL that is put together, of names of our own tables alone: (file, function).
PUT_TOGETHER = {
    ("bot/records/copying.py", "_lock_empty"),
    ("bot/records/copying.py", "last_given"),
    ("bot/records/backup.py", "_copied"),
    ("bot/records/backup.py", "_count"),
    ("bot/records/doctor.py", "_damages"),
    ("bot/records/doctor.py", "_examined"),
    ("bot/records/schema.py", "_upgrade"),
    ("bot/records/schema.py", "_version_within"),
}
RUNS_SQL = {"text", "sql", "execute", "exec_driver_sql", "executescript", "scalar", "scalars"}


def trees() -> Iterator[tuple[str, ast.Module]]:
    for path in FILES:
        yield path.relative_to(ROOT).as_posix(), ast.parse(path.read_text("utf-8"))


def named(call: ast.Call) -> str:
    of = call.func
    return of.attr if isinstance(of, ast.Attribute) else getattr(of, "id", "")


def test_nothing_is_imported_that_runs_what_it_reads() -> None:
    found = []
    for file, tree in trees():
        for node in ast.walk(tree):
            names = [a.name for a in node.names] if isinstance(node, ast.Import) else []
            if isinstance(node, ast.ImportFrom) and node.level == 0:
                names = [node.module or ""]
            found += [(file, n) for n in names if n.partition(".")[0] in MODULES]
    assert found == []


def test_no_text_is_run() -> None:
    found = [
        (file, named(node), node.lineno)
        for file, tree in trees()
        for node in ast.walk(tree)
        if isinstance(node, ast.Call) and named(node) in CALLS and not is_regex(node)
    ]
    assert found == []


def is_regex(node: ast.Call) -> bool:
    """`re.compile` compiles no code."""
    of = node.func
    return isinstance(of, ast.Attribute) and isinstance(of.value, ast.Name) and of.value.id == "re"


def sql_put_together(tree: ast.Module) -> Iterator[tuple[str, int]]:
    """Functions that hand a text to the database which is more than a constant."""
    for function in ast.walk(tree):
        if not isinstance(function, ast.FunctionDef | ast.AsyncFunctionDef):
            continue
        for node in ast.walk(function):
            if isinstance(node, ast.Call) and named(node) in RUNS_SQL and node.args:
                first = node.args[0]
                percent = isinstance(first, ast.BinOp)
                formats = isinstance(first, ast.Call) and named(first) in ("format", "join")
                if isinstance(first, ast.JoinedStr) or percent or formats:
                    yield function.name, node.lineno


def test_sql_is_made_of_nothing_that_somebody_wrote() -> None:
    found = {
        (file, name)
        for file, tree in trees()
        if not file.startswith(("bot/records/migrations/", "bot/pictures/"))
        for name, _ in sql_put_together(tree)
    }
    assert found == PUT_TOGETHER


@pytest.mark.parametrize(
    "code",
    [
        'def f(s, x):\n    s.execute(f"SELECT {x}")',
        'def f(s, x):\n    s.execute("SELECT %s" % x)',
        'async def f(s, x):\n    await s.scalar(text("SELECT " + x))',
        'def f(s, x):\n    s.execute("SELECT {}".format(x))',
    ],
)
def test_the_check_itself_sees_sql_that_is_put_together(code: str) -> None:
    assert list(sql_put_together(ast.parse(code)))


def test_a_parse_mode_is_never_set() -> None:
    found = [
        (file, node.lineno)
        for file, tree in trees()
        for node in ast.walk(tree)
        if (isinstance(node, ast.keyword) and node.arg == "parse_mode")
        or (isinstance(node, ast.Constant) and node.value == "parse_mode")
    ]
    assert found == []
