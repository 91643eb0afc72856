"""The command of one benchmark, and the options that it shares with that of all."""

from __future__ import annotations

import argparse
from pathlib import Path

from tests.benchmarks.figures import Asked, Bench, here, save
from tests.benchmarks.measuring import yardstick_ms
from tests.benchmarks.showing import table


def options(parser: argparse.ArgumentParser) -> None:
    """What one benchmark and all of them are asked alike."""
    parser.add_argument("--quick", action="store_true", help="in about ten seconds each")
    parser.add_argument("--others", metavar="PYTHON", help="an interpreter that has other readers")
    parser.add_argument("--json", type=Path, metavar="FILE", help="write what was found there")


def alone(name: str, bench: Bench) -> None:
    """The command of one benchmark: measure, print the table, write the file if there is one."""
    parser = argparse.ArgumentParser(prog=f"python -m tests.benchmarks.{name}")
    options(parser)
    given = parser.parse_args()
    asked = Asked(given.quick, given.others)
    before = yardstick_ms()
    found = bench(asked)
    measured = here({name: found}, asked, (before, yardstick_ms()))
    print(table(measured))
    if given.json is not None:
        save(measured, given.json)
