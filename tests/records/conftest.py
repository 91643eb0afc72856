"""Owners to test with; the databases are those of tests/conftest.py."""

from __future__ import annotations

import pytest

from bot.records import Records, owners

from .records_kit import ADDRESS, NEIGHBOUR, NOW


@pytest.fixture
async def owner_id(records: Records) -> int:
    async with records.writing() as session:
        return (await owners.find_or_add(session, ADDRESS, created_at=NOW)).id


@pytest.fixture
async def neighbour_id(records: Records, owner_id: int) -> int:
    async with records.writing() as session:
        return (await owners.find_or_add(session, NEIGHBOUR, created_at=NOW)).id
