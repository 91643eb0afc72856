"""python -m tests.mutation: change bot/dosing, a little at a time; who notices?"""

from __future__ import annotations

import argparse
import hashlib
import json
import os
import random
import time
from collections import Counter
from collections.abc import Iterable
from pathlib import Path

from tests.mutation.listing import listed
from tests.mutation.mutants import TABLE, Mutant, mutants
from tests.mutation.running import FEW, run, test_files, tests_of, trace, warm_up

ROOT = Path(__file__).parents[2]
SURVIVORS = Path(__file__).with_name("survivors.txt")
NOTICED = ("killed", "timeout")
MISSED = ("survived", "no test")
Row = dict[str, object]
#: By file of bot/dosing which test runs which lines; seconds by test.
Traced = tuple[dict[str, dict[str, list[int]]], dict[str, float]]


def main() -> None:
    asked = _asked()
    modules = [Path(m).resolve() for m in asked.modules] or sorted(
        (ROOT / "bot" / "dosing").glob("*.py")
    )
    results = Path(asked.results)
    warm_up()
    traced = _traced(results.with_suffix(".traced.json"))
    done = _done(results)
    meant = [key for path in modules for key in _one_module(path, asked, results, done, traced)]
    print(table(done[key] for key in meant if key in done))
    if asked.list:
        missed = [row for row in done.values() if row["outcome"] in MISSED]
        SURVIVORS.write_text(listed(missed, ROOT, SURVIVORS), "utf-8")


def _asked() -> argparse.Namespace:
    parser = argparse.ArgumentParser(prog="python -m tests.mutation", description=__doc__)
    parser.add_argument("modules", nargs="*", help="files of bot/dosing; none for all")
    parser.add_argument("--results", required=True, help="file of results, carried on (JSON lines)")
    parser.add_argument("--sample", type=int, help="so many changes of each module, by a seed")
    parser.add_argument("--workers", type=int, default=os.cpu_count() or 1)
    parser.add_argument("--examples", type=int, default=FEW, help="of a property test at most")
    parser.add_argument("--again", action="store_true", help="only those that were missed")
    parser.add_argument("--list", action="store_true", help="write survivors.txt anew")
    return parser.parse_args()


def _traced(kept: Path) -> Traced:
    """Which test runs which line, and its seconds; only files of tests that changed are run.

    In a child, so that nothing of it stays loaded here.
    """
    code = _digest(sorted((ROOT / "bot" / "dosing").glob("*.py")))
    now = {file: _digest([ROOT / file]) + code for file in test_files(ROOT)}
    before = json.loads(kept.read_text("utf-8")) if kept.exists() else {}
    stale = [file for file, digest in now.items() if before.get("files", {}).get(file) != digest]
    lines, seconds = before.get("lines", {}), before.get("seconds", {})
    if stale:
        child = os.fork()
        if not child:
            try:
                kept.with_suffix(".part").write_text(json.dumps(trace(ROOT, stale)), "utf-8")
            except BaseException as fault:
                print(fault)
                os._exit(1)
            os._exit(0)
        if os.waitpid(child, 0)[1]:
            raise SystemExit("The tests do not pass as they are.")
        fresh_lines, fresh_seconds = json.loads(kept.with_suffix(".part").read_text("utf-8"))
        fits = {file for file in now if file not in stale}
        seconds = {t: s for t, s in seconds.items() if t.partition("::")[0] in fits}
        seconds |= fresh_seconds
        lines = {
            file: {t: n for t, n in lines.get(file, {}).items() if t.partition("::")[0] in fits}
            | fresh_lines.get(file, {})
            for file in {*lines, *fresh_lines}
        }
        kept.write_text(json.dumps({"files": now, "lines": lines, "seconds": seconds}), "utf-8")
    return lines, seconds


def _digest(paths: Iterable[Path]) -> str:
    return hashlib.sha256(b"".join(path.read_bytes() for path in paths)).hexdigest()


def _done(results: Path) -> dict[str, Row]:
    """The last outcome of each change."""
    if not results.exists():
        return {}
    rows = (json.loads(line) for line in results.read_text("utf-8").splitlines())
    return {row["key"]: row for row in rows}


def _one_module(
    path: Path, asked: argparse.Namespace, results: Path, done: dict[str, Row], traced: Traced
) -> list[str]:
    """Run what is asked of a module, each outcome kept at once; the keys of all it should have."""
    lines, seconds = traced
    found = mutants(path, ROOT)
    if asked.sample is not None and asked.sample < len(found):
        found = random.Random(f"sinkside {path.name}").sample(found, asked.sample)
    meant = [m.key for m in found]
    if asked.again:
        found = [m for m in found if done.get(m.key, {}).get("outcome") in MISSED]
    else:
        found = [m for m in found if m.key not in done]
    work = []
    for mutant in found:
        tests = tests_of(mutant, lines.get(mutant.file, {}))
        work.append((mutant, {t: seconds[t] for t in tests}))
    began = time.monotonic()
    with results.open("a", encoding="utf-8") as file:
        for mutant, outcome, by, spent in run(
            ROOT, work, few=asked.examples, workers=asked.workers
        ):
            row = _row(mutant, outcome, by, spent)
            done[mutant.key] = row
            file.write(json.dumps(row) + "\n")
            file.flush()
    print(f"{path.name}: {len(work)} run in {time.monotonic() - began:.0f} s", flush=True)
    return meant


def _row(mutant: Mutant, outcome: str, by: str, spent: float) -> Row:
    return {
        "key": mutant.key,
        "file": mutant.file,
        "line": mutant.line,
        "where": mutant.where,
        "old": mutant.old,
        "new": mutant.new,
        "outcome": outcome,
        "by": by,
        "seconds": round(spent, 2),
    }


def table(rows: Iterable[Row]) -> str:
    """Changes, noticed, missed and share, by module; changes that are no Python are not counted."""
    by_file: dict[str, Counter[str]] = {}
    for row in rows:
        if row["outcome"] != "no python":
            counts = by_file.setdefault(str(row["file"]), Counter())
            counts[str(row["outcome"])] += 1
            counts["tables"] += row["where"] == TABLE
    lines = [
        f"{'module':<18}{'n':>7}{'killed':>8}{'timeout':>8}{'missed':>8}{'error':>7}{'share':>8}"
    ]
    total: Counter[str] = Counter()
    for file, counts in sorted(by_file.items()):
        total += counts
        lines.append(_line(Path(file).name, counts))
    lines.append(_line("all", total))
    return "\n".join(lines)


def _line(name: str, counts: Counter[str]) -> str:
    noticed = sum(counts[o] for o in NOTICED)
    missed = sum(counts[o] for o in MISSED)
    n = noticed + missed
    share = f"{100 * noticed / n:.1f} %" if n else ""
    return (
        f"{name:<18}{n:>7}{counts['killed']:>8}{counts['timeout']:>8}{missed:>8}"
        f"{counts['error']:>7}{share:>8}"
    )


if __name__ == "__main__":
    main()
