"""All benchmarks in one run, or some: `python -m tests.benchmarks [--quick] [--only NAME ...]`.

Each runs in a process of its own, one after the other. `--json FILE` keeps the figures, and
`--compare OLD.json` puts them beside those of another run: on the same machine, on another commit.
"""

from __future__ import annotations

import argparse
import compileall
import subprocess
import sys
import tempfile
from pathlib import Path

from tests.benchmarks.command import options
from tests.benchmarks.figures import ROOT, Asked, Figure, here, load, save
from tests.benchmarks.measuring import AS_INSTALLED, yardstick_ms
from tests.benchmarks.showing import compared, heading, lines

NAMES = tuple(
    sorted(path.stem.removeprefix("bench_") for path in Path(__file__).parent.glob("bench_*.py"))
)


def one(name: str, asked: Asked, folder: Path) -> tuple[list[Figure], tuple[float, ...]] | None:
    """The figures of one benchmark and its yardstick; None if it broke."""
    file = folder / f"{name}.json"
    command = [sys.executable, "-m", f"tests.benchmarks.bench_{name}", "--json", str(file)]
    command += ["--quick"] * asked.quick
    command += ["--others", asked.others] if asked.others else []
    done = subprocess.run(
        command, cwd=ROOT, env=AS_INSTALLED, stdout=subprocess.DEVNULL, check=False
    )
    if done.returncode:
        return None
    measured = load(file)
    [figures] = measured.figures.values()
    return figures, measured.yardstick_ms


def main(arguments: list[str] | None = None) -> int:
    """Measure, print, keep, compare; 1 if a benchmark broke."""
    parser = argparse.ArgumentParser(prog="python -m tests.benchmarks", description=__doc__)
    options(parser)
    parser.add_argument("--only", nargs="+", choices=NAMES, metavar="NAME", help=", ".join(NAMES))
    parser.add_argument("--compare", type=Path, metavar="OLD.json", help="a file of --json")
    given = parser.parse_args(arguments)
    asked = Asked(given.quick, given.others)
    old = load(given.compare) if given.compare else None
    for folder in ("bot", "grammar"):
        compileall.compile_dir(ROOT / folder, quiet=1)
    figures: dict[str, list[Figure]] = {}
    yardstick, broken = [yardstick_ms()], []
    print(heading(here(figures, asked, yardstick)), flush=True)
    with tempfile.TemporaryDirectory() as made:
        for name in given.only or NAMES:
            found = one(name, asked, Path(made))
            if found is None:
                broken.append(name)
                continue
            figures[name] = found[0]
            yardstick += found[1]
            print("\n".join([name, *lines(found[0])]), flush=True)
            if given.json is not None:  # each time: a long run may be cut off
                save(here(figures, asked, yardstick), given.json)
    if old is not None:
        print(f"\n{compared(old, here(figures, asked, yardstick))}")
    if broken:
        print(f"broke: {', '.join(broken)}", file=sys.stderr)
    return 1 if broken else 0


if __name__ == "__main__":
    raise SystemExit(main())
