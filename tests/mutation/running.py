"""One change, one forked process: the module as changed, the tests that run those lines.

The parent has imported what is large and not ours, but nothing of `bot.dosing`: each child imports
that afresh, with one module changed, so that no table or cache of the unchanged code is left.
"""

from __future__ import annotations

import gc
import importlib
import importlib.abc
import importlib.util
import json
import os
import resource
import signal
import sys
import time
from collections.abc import Iterable, Mapping, Sequence
from importlib.machinery import ModuleSpec
from pathlib import Path
from types import ModuleType

import pytest
from hypothesis import HealthCheck, Phase, given, settings, strategies
from hypothesis.internal.conjecture import providers

from tests.mutation.mutants import TABLE, Mutant

#: Whose tests are to notice.
FOLDERS = ("tests/dosing", "tests/published")
#: Answers in words: they would test the conversation as well.
LEFT_OUT = ("tests/published/test_in_words.py",)
#: Examples of a property test at most, where not asked otherwise.
FEW = 20
#: Processor time after which a change is taken for endless [s], and as a multiple of the usual.
LEAST_S, TIMES = 20, 10
MEMORY_BYTES = 3 * 1024**3

#: Loaded once, before any fork: none of it imports bot.dosing.
_LARGE = ("numpy", "scipy.optimize", "pint", "molmass", "phreeqpython", "bot.almanac", "grammar")


class _Changed(importlib.abc.MetaPathFinder, importlib.abc.Loader):
    """Finds one module, changed."""

    def __init__(self, name: str, path: Path, source: str) -> None:
        self.name, self.path, self.source = name, path, source

    def find_spec(
        self, name: str, path: Sequence[str] | None, target: ModuleType | None = None
    ) -> ModuleSpec | None:
        if name != self.name:
            return None
        return importlib.util.spec_from_file_location(name, self.path, loader=self)

    def exec_module(self, module: ModuleType) -> None:
        exec(compile(self.source, str(self.path), "exec"), module.__dict__)


class _Chosen:
    """Runs the chosen tests alone, the quick ones first; tells the first that fails."""

    def __init__(self, order: Mapping[str, float], few: int) -> None:
        self.order, self.few = order, few
        self.failed = ""

    @pytest.hookimpl(trylast=True)
    def pytest_collection_modifyitems(self, items: list[pytest.Item]) -> None:
        items[:] = sorted(
            (i for i in items if i.nodeid in self.order), key=lambda i: self.order[i.nodeid]
        )
        for item in items:
            test = getattr(item, "obj", None)
            if hasattr(test, "hypothesis"):
                usual = getattr(test, "_hypothesis_internal_use_settings", settings())
                most = usual.max_examples
                test._hypothesis_internal_use_settings = settings(
                    max_examples=min(most, self.few),
                    derandomize=True,
                    database=None,
                    deadline=None,
                    phases=(Phase.explicit, Phase.generate),  # a failure is enough, small or not
                    suppress_health_check=list(HealthCheck),
                )

    def pytest_runtest_logreport(self, report: pytest.TestReport) -> None:
        if report.failed and not self.failed:
            self.failed = report.nodeid

    def pytest_collectreport(self, report: pytest.CollectReport) -> None:
        if report.failed and not self.failed:
            self.failed = f"{report.nodeid} (import)"


def pytest_arguments(root: Path) -> list[str]:
    return [
        "-x", "-q", "--no-header", "--tb=no", "--assert=plain", "--noconftest", f"--rootdir={root}",
        "-p", "no:cacheprovider", "-p", "no:unraisableexception", "-p", "no:threadexception",
        "-p", "no:hypothesispytest", "-p", "no:warnings", "-p", "no:doctest", "-p", "no:junitxml",
        "-p", "no:logging",
    ]  # fmt: skip


def warm_up() -> None:
    """Import what is large."""
    for name in _LARGE:
        importlib.import_module(name)
    import bot.almanac.plants
    import bot.almanac.recipes
    import bot.almanac.reference
    import bot.almanac.rescue
    import bot.almanac.waters  # noqa: F401

    os.environ["PYTEST_DISABLE_PLUGIN_AUTOLOAD"] = "1"
    given(strategies.integers())(lambda _: None)()  # what hypothesis looks up but once
    gc.collect()
    gc.freeze()
    loaded = [n for n in sys.modules if n.startswith("bot.dosing")]
    if loaded:
        raise RuntimeError(f"loaded before any change: {loaded}")


def tests_of(mutant: Mutant, lines: Mapping[str, Iterable[int]]) -> list[str]:
    """The tests that run a line of the change's statement; of a table all that use its module."""
    if mutant.where == TABLE:
        return list(lines)
    first, last = mutant.lines
    return [t for t, ran in lines.items() if any(first <= n <= last for n in ran)]


def survives(root: Path, mutant: Mutant, tests: Mapping[str, float], few: int, out: int) -> None:
    """In a child: run the tests; writes the outcome to `out`; does not return."""
    usual = sum(tests.values())
    limit = int(LEAST_S + TIMES * usual)
    resource.setrlimit(resource.RLIMIT_CPU, (limit, limit + 5))
    resource.setrlimit(resource.RLIMIT_AS, (MEMORY_BYTES, MEMORY_BYTES))
    gc.disable()
    if few <= FEW:  # to look for constants of the code as examples takes longer than the tests
        providers._get_local_constants = providers.Constants
    quiet = os.open(os.devnull, os.O_WRONLY)
    os.dup2(quiet, 1)
    os.dup2(quiet, 2)
    path = root / mutant.file
    name = mutant.file.removesuffix(".py").replace("/", ".")
    outcome, by = "error", ""
    try:
        changed = mutant.applied(path.read_text("utf-8"))
        compile(changed, mutant.file, "exec")
        sys.meta_path.insert(0, _Changed(name, path, changed))
        # the module's own tests first: they mostly notice, and the others need not be imported
        own = {t: s for t, s in tests.items() if _own(t, mutant.file)}
        for part in (own, {t: s for t, s in tests.items() if t not in own}):
            if not part:
                continue
            chosen = _Chosen(part, few)
            files = sorted({t.partition("::")[0] for t in part})
            code = pytest.main(
                [*pytest_arguments(root), *(str(root / f) for f in files)], plugins=[chosen]
            )
            outcome, by = ("survived", "") if code == 0 else ("killed", chosen.failed)
            if code not in (0, 1, 2):
                outcome, by = "error", f"pytest ended with {code}"
            if outcome != "survived":
                break
    except SyntaxError:
        outcome = "no python"
    except BaseException as fault:  # of the driver, not noticed by a test: no kill
        outcome, by = "error", repr(fault)[:200]
    os.write(out, json.dumps([outcome, by]).encode())
    os._exit(0)


def _own(test: str, file: str) -> bool:
    return Path(test.partition("::")[0]).stem == f"test_{Path(file).stem}"


def run(
    root: Path,
    work: Sequence[tuple[Mutant, Mapping[str, float]]],
    *,
    few: int,
    workers: int,
) -> Iterable[tuple[Mutant, str, str, float]]:
    """Outcome of each change, with the test that noticed and the processor time [s]."""
    waiting = list(reversed(work))
    running: dict[int, tuple[Mutant, int]] = {}
    while waiting or running:
        while waiting and len(running) < workers:
            mutant, tests = waiting.pop()
            if not tests:
                yield mutant, "no test", "", 0.0
                continue
            read, write = os.pipe()
            child = os.fork()
            if not child:
                os.close(read)
                survives(root, mutant, tests, few, write)
            os.close(write)
            running[child] = (mutant, read)
        if not running:
            continue
        child, status, used = os.wait4(-1, 0)
        mutant, read = running.pop(child)
        told = b""
        while piece := os.read(read, 65536):
            told += piece
        os.close(read)
        spent = used.ru_utime + used.ru_stime
        if told:
            outcome, by = json.loads(told)
        elif os.WIFSIGNALED(status) and os.WTERMSIG(status) in (signal.SIGXCPU, signal.SIGKILL):
            outcome, by = "timeout", ""
        else:
            outcome, by = "error", f"ended with {status}"
        yield mutant, outcome, by, spent


# --- which test runs which line -----------------------------------------------------------------


class _Tracing:
    """Lines of bot/dosing by test, all caches emptied before each."""

    def __init__(self, folder: Path) -> None:
        self.lines: dict[str, dict[str, set[int]]] = {}
        self.seconds: dict[str, float] = {}
        self.folder = str(folder)
        self.failed: list[str] = []
        self._known: dict[object, set[int] | None] = {}

    @pytest.hookimpl(wrapper=True)
    def pytest_runtest_protocol(self, item: pytest.Item):  # type: ignore[no-untyped-def]
        for module in [m for n, m in sys.modules.items() if n.startswith("bot.dosing")]:
            for thing in vars(module).values():
                clear = getattr(thing, "cache_clear", None)
                if clear:
                    clear()
        here: dict[str, set[int]] = {}

        def local(frame, event, _):  # type: ignore[no-untyped-def]
            if event == "line":
                here.setdefault(frame.f_code.co_filename, set()).add(frame.f_lineno)
            return local

        def called(frame, event, _):  # type: ignore[no-untyped-def]
            file = frame.f_code.co_filename
            if not file.startswith(self.folder):
                return None
            here.setdefault(file, set()).add(frame.f_lineno)
            return local

        began = time.process_time()
        sys.settrace(called)
        try:
            return (yield)
        finally:
            sys.settrace(None)
            self.seconds[item.nodeid] = time.process_time() - began
            for file, lines in here.items():
                self.lines.setdefault(file, {})[item.nodeid] = lines

    def pytest_runtest_logreport(self, report: pytest.TestReport) -> None:
        if report.failed:
            self.failed.append(report.nodeid)


def trace(
    root: Path, files: Sequence[str]
) -> tuple[dict[str, dict[str, list[int]]], dict[str, float]]:
    """Lines that each test runs, by file of bot/dosing, and the seconds it takes (traced)."""
    tracing = _Tracing(root / "bot" / "dosing")
    arguments = [a for a in pytest_arguments(root) if a != "-x"]

    class Few(_Chosen):
        def pytest_collection_modifyitems(self, items: list[pytest.Item]) -> None:
            self.order = {i.nodeid: 0.0 for i in items}
            super().pytest_collection_modifyitems(items)

    code = pytest.main([*arguments, *(str(root / f) for f in files)], plugins=[tracing, Few({}, 5)])
    if code != 0:
        raise RuntimeError(f"tests fail before anything is changed: {tracing.failed}")
    named = {
        Path(file).relative_to(root).as_posix(): {t: sorted(n) for t, n in tests.items()}
        for file, tests in tracing.lines.items()
    }
    return named, tracing.seconds


def test_files(root: Path) -> list[str]:
    found = [p for folder in FOLDERS for p in sorted((root / folder).glob("test_*.py"))]
    return [f for p in found if (f := p.relative_to(root).as_posix()) not in LEFT_OUT]
