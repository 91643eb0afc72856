"""A season of one invented grower: the approved conversation, on both databases."""

from __future__ import annotations

import asyncio

from tests.conversation.season import APPROVED, days, told
from tests.records.records_kit import Databases


def test_the_season_is_told_as_it_was_approved(databases: Databases) -> None:
    url = asyncio.run(databases.migrated())
    assert told(url).splitlines() == APPROVED.read_text(encoding="utf-8").splitlines()


def test_the_season_is_long_enough_to_mean_something() -> None:
    lines = [line for _, lines in days() for line in lines]
    assert len(lines) >= 120
    assert len({day for day, _ in days()}) >= 10
