"""`python -m tests.soak --minutes 60 --people 10000 --groups 300 --speed 100`."""

from __future__ import annotations

import argparse
import asyncio
import logging
import sys
import tempfile
from pathlib import Path

from tests.soak.run import Asked, soaked


def main() -> int:
    """Run a soak, show its table; 1 where a promise was broken."""
    parser = argparse.ArgumentParser(prog="python -m tests.soak", description=__doc__)
    parser.add_argument("--minutes", type=float, default=60.0)
    parser.add_argument("--people", type=int, default=10_000)
    parser.add_argument("--groups", type=int, default=300)
    parser.add_argument("--speed", type=float, default=100.0)
    parser.add_argument("--rate", type=float, default=10.0, help="updates a second at most")
    parser.add_argument("--seed", type=int, default=8)
    parser.add_argument("--postgres", action="store_true", help="on PostgreSQL, out of pgserver")
    parser.add_argument("--folder", type=Path, help="where database and logs are kept")
    parser.add_argument("--json", type=Path, help="keep the whole report in a file")
    given = parser.parse_args()
    logging.disable(logging.CRITICAL)
    with tempfile.TemporaryDirectory() as made:
        folder = given.folder or Path(made)
        folder.mkdir(parents=True, exist_ok=True)
        database = _postgres(folder) if given.postgres else f"sqlite:///{folder / 'soak.db'}"
        asked = Asked(
            given.minutes * 60, given.people, given.groups, given.speed, given.rate, given.seed,
            database, folder, talks=True,
        )  # fmt: skip
        report = asyncio.run(soaked(asked))
    print(report.table())
    if given.json is not None:
        report.keep(given.json)
    return 0 if report.sound else 1


def _postgres(folder: Path) -> str:
    from pgserver.postgres_server import get_server

    return str(get_server(folder / "postgres").get_uri())


if __name__ == "__main__":
    sys.exit(main())
