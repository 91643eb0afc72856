"""An evening of one invented group: what was said to it, as it was approved."""

from __future__ import annotations

from tests.channels.evening import APPROVED, told


async def test_the_evening_is_told_as_it_was_approved(sqlite_url: str) -> None:
    said = await told(sqlite_url)
    assert said.splitlines() == APPROVED.read_text(encoding="utf-8").splitlines()
