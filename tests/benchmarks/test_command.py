"""The one command of the benchmarks: its table, its file, what it marks. No time is asserted."""

from __future__ import annotations

import json
from pathlib import Path

import pytest

from tests.benchmarks.__main__ import NAMES, main
from tests.benchmarks.figures import Figure, Measured
from tests.benchmarks.showing import compared


@pytest.fixture(scope="module")
def file(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """What a run of one fast benchmark wrote."""
    path = tmp_path_factory.mktemp("benchmarks") / "run.json"
    assert main(["--only", "dosing", "--quick", "--json", str(path)]) == 0
    return path


def test_each_benchmark_is_known_by_name() -> None:
    assert {"reading", "answers", "messenger", "reminders", "pings"} <= set(NAMES)


def test_the_file_holds_rounds_units_and_where_it_was(file: Path) -> None:
    held = json.loads(file.read_text(encoding="utf-8"))
    figures = {figure["name"]: figure for figure in held["figures"]["dosing"]}
    plan = figures["plan of 500 plants"]
    assert plan["unit"] == "ms"
    assert plan["beside"] == "plan of 50 plants"
    assert len(plan["rounds"]) > 1
    assert min(plan["rounds"]) > 0
    assert held["quick"] is True
    assert held["cores"] > 0
    assert held["memory_gb"] > 0


def test_a_run_prints_each_figure_and_marks_what_changed(
    file: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    held = json.loads(file.read_text(encoding="utf-8"))
    for figure in held["figures"]["dosing"]:
        if figure["name"] == "EC of one mix":
            figure["rounds"] = [value / 1e6 for value in figure["rounds"]]
    old = tmp_path / "old.json"
    old.write_text(json.dumps(held), encoding="utf-8")

    assert main(["--only", "dosing", "--quick", "--compare", str(old)]) == 0

    table, _, both = capsys.readouterr().out.partition("\n\n")
    for name in ("EC of one mix", "plan of 50 plants", "plan of 500 plants"):
        assert name in table
        assert name in both
    assert "x plan of 50 plants" in table
    [line] = [line for line in both.splitlines() if "EC of one mix" in line]
    assert line.endswith("*")


@pytest.mark.parametrize(
    ("old", "new", "unit", "marked"),
    [
        ((1.0, 1.1, 1.2), (1.0, 1.1, 1.2), "ms", False),
        ((1.0, 1.1, 1.2), (1.3, 1.2, 1.1), "ms", False),  # within the noise
        ((1.0, 1.1, 1.2), (2.0, 2.1, 2.2), "ms", True),
        ((2.0, 2.1, 2.2), (1.0, 1.1, 1.2), "a second", True),  # less counts as more does
        ((1.0, 3.0, 2.0), (3.0, 3.1, 3.2), "ms", False),  # the old run was noisy
        ((1.0,), (9.0,), "ms", False),  # one round tells no noise
        ((1.0, 1.01), (1.3, 1.31), "ms", False),  # the machine was half slower
        ((1.0, 1.01), (1.3, 1.31), "MB", True),  # which does not change a size
        ((1.0, 1.01, 1.0, 1.0, 9.0), (2.0, 2.0, 2.0, 2.0, 2.0), "ms", True),  # one busy moment
    ],
)
def test_what_moved_by_more_than_the_noise_has_a_star(
    old: tuple[float, ...], new: tuple[float, ...], unit: str, marked: bool
) -> None:
    yardsticks = ((1.0,), (1.5,) if old == (1.0, 1.01) else (1.0,))
    runs = [
        Measured({"some": [Figure("a figure", unit, rounds)]}, True, yardstick)
        for rounds, yardstick in zip((old, new), yardsticks, strict=True)
    ]
    [line] = [line for line in compared(*runs).splitlines() if "a figure" in line]
    assert line.endswith("*") is marked


def test_what_is_new_or_gone_is_said() -> None:
    old = Measured({"some": [Figure("gone", "ms", (1.0, 1.0))]}, True, (1.0,))
    new = Measured({"some": [Figure("new", "ms", (2.0, 2.0))]}, True, (1.0,))
    said = {line.split()[0]: line.split()[1:] for line in compared(old, new).splitlines()[-2:]}
    assert said == {"gone": ["1", "-", "ms"], "new": ["-", "2", "ms"]}


def test_an_unknown_benchmark_is_refused(capsys: pytest.CaptureFixture[str]) -> None:
    with pytest.raises(SystemExit) as ended:
        main(["--only", "nonsense"])
    assert ended.value.code == 2
    assert "nonsense" in capsys.readouterr().err
