"""Both databases, each test with one of its own that is migrated already, for every room."""

from __future__ import annotations

import asyncio
import os
import shutil
import tempfile
from collections.abc import AsyncIterator, Iterator
from pathlib import Path

import pytest
from hypothesis import settings

from bot.records import Records, open_records
from tests.records.records_kit import Databases

# How long an example takes is the machine's, so no test of a law asks for it.
# The same examples each time: what stands before a landing must not hang on luck. Draw new ones by
# hand, now and then: SINKSIDE_EXPLORE=1.
_EXPLORE = bool(os.environ.get("SINKSIDE_EXPLORE"))
settings.register_profile("untimed", settings(), deadline=None, derandomize=not _EXPLORE)
settings.load_profile("untimed")

# A database server and a file: what is tested on one is tested on the other.
BOTH = ("sqlite", "postgresql")


@pytest.fixture(scope="session")
def folder() -> Iterator[Path]:
    # Not pytest's own folder: the server's user has to get into it, and another run of pytest
    # would shut that user out again.
    top = Path(tempfile.mkdtemp(prefix="records-"))
    yield top
    shutil.rmtree(top, ignore_errors=True)


@pytest.fixture(scope="session")
def postgres(folder: Path) -> Iterator[str]:
    """The URL of a PostgreSQL server that may make databases."""
    given = os.environ.get("TEST_POSTGRES_URL")
    if given:
        yield given
        return
    from pgserver.postgres_server import get_server

    place = folder / "deep" / "postgres"
    place.mkdir(parents=True)
    server = get_server(place / "data", cleanup_mode="stop")
    # Nothing here outlives the run, and nothing here cuts the power.
    server.psql("ALTER SYSTEM SET fsync = off; SELECT pg_reload_conf();")
    yield server.get_uri()
    server.cleanup()


@pytest.fixture(scope="session")
def sqlite_databases(folder: Path) -> Databases:
    return Databases(folder, None)


@pytest.fixture(scope="session")
def postgres_databases(folder: Path, postgres: str) -> Iterator[Databases]:
    made = Databases(folder, postgres)
    yield made
    if "TEST_POSTGRES_URL" in os.environ:
        asyncio.run(made.drop_all())


@pytest.fixture(params=BOTH)
def databases(request: pytest.FixtureRequest) -> Databases:
    name = "sqlite_databases" if request.param == "sqlite" else "postgres_databases"
    made: Databases = request.getfixturevalue(name)
    return made


@pytest.fixture
async def records(databases: Databases) -> AsyncIterator[Records]:
    opened = await open_records(await databases.migrated())
    yield opened
    await opened.close()


@pytest.fixture
async def sqlite_records(sqlite_databases: Databases) -> AsyncIterator[Records]:
    opened = await open_records(await sqlite_databases.migrated())
    yield opened
    await opened.close()
