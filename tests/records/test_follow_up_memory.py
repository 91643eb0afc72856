"""What a person last asked for, per person and chat."""

from __future__ import annotations

from datetime import timedelta
from typing import Any

import pytest

from bot.records import Records, errors, memory

from .records_kit import NOW

REQUEST = {"volume_l": 5.0, "analysis": [20, 20, 20], "regime": None, "text": "größer \u2028"}


async def test_nothing_is_remembered_at_first(records: Records, owner_id: int) -> None:
    async with records.reading() as session:
        assert await memory.recall(session, owner_id, "anna") is None


async def test_a_request_is_remembered_until_the_next(records: Records, owner_id: int) -> None:
    later = NOW + timedelta(minutes=5)
    for request, said_at in ((REQUEST, NOW), ({"volume_l": 3.0}, later)):
        async with records.writing() as session:
            await memory.remember(session, owner_id, "anna", request=request, said_at=said_at)
        async with records.reading() as session:
            found = await memory.recall(session, owner_id, "anna")
        assert found is not None
        assert (found.request, found.said_at, found.question) == (request, said_at, None)


async def test_a_question_and_a_request_do_not_touch_each_other(
    records: Records, owner_id: int
) -> None:
    async with records.writing() as session:
        await memory.ask(session, owner_id, "anna", question={"ask": "volume"}, asked_at=NOW)
        await memory.remember(session, owner_id, "anna", request=REQUEST, said_at=NOW)
        found = await memory.recall(session, owner_id, "anna")
        assert found is not None
        assert (found.request, found.question, found.asked_at) == (REQUEST, {"ask": "volume"}, NOW)
        await memory.ask(session, owner_id, "anna", question=None, asked_at=NOW)
        answered = await memory.recall(session, owner_id, "anna")
    assert answered is not None
    assert (answered.request, answered.question) == (REQUEST, None)


async def test_each_person_in_a_group_has_their_own(records: Records, owner_id: int) -> None:
    async with records.writing() as session:
        for person in ("anna", "ben"):
            await memory.remember(session, owner_id, person, request={"of": person}, said_at=NOW)
        await memory.clear(session, owner_id, "anna")
        found = await memory.recall(session, owner_id, "ben")
        assert found is not None
        assert found.request == {"of": "ben"}
        assert await memory.recall(session, owner_id, "anna") is None


@pytest.mark.parametrize("request_", [{"x": float("inf")}, {"x": "y" * 70_000}, [1], {"x": b"y"}])
async def test_what_is_not_json_or_too_long_is_refused(
    records: Records, owner_id: int, request_: Any
) -> None:
    async with records.writing() as session:
        with pytest.raises(errors.BadValue):
            await memory.remember(session, owner_id, "anna", request=request_, said_at=NOW)


async def test_an_unknown_owner_has_no_memory(records: Records) -> None:
    async with records.writing() as session:
        with pytest.raises(errors.UnknownOwner):
            await memory.remember(session, 77, "anna", request=REQUEST, said_at=NOW)
