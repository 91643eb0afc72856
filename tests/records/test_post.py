"""The messenger's post, on both databases: in once, out in order, and nothing half kept."""

from __future__ import annotations

from typing import Any

import pytest
from sqlalchemy import func, select

from bot.records import Records, forget, owners, plants, post
from bot.records.errors import BadValue
from bot.records.models import Inbox, Owner, Plant
from bot.records.post import MOST_TRIES, Arrived, Letter, Limits, LostClaim

from .records_kit import ADDRESS, NOW, begin

BOT = "telegram:1"


def arrived(*numbers: int, lane: str = "a") -> list[Arrived]:
    return [Arrived(n, lane, {"update_id": n}) for n in numbers]


async def claim(records: Records, worker: str, now_ms: int = 0, most: int = 9) -> list[int]:
    async with records.writing() as session:
        rows = await post.claim(
            session, BOT, worker, now_ms=now_ms, until_ms=now_ms + 100, most=most
        )
    return [row.id for row in rows]


async def take_in(records: Records, updates: list[Arrived]) -> None:
    async with records.writing() as session:
        await post.take_in(session, BOT, updates, now_ms=0)


async def finish(records: Records, number: int, worker: str) -> None:
    async with records.writing() as session:
        await post.finish(session, number, worker)


async def test_an_update_is_taken_in_once(records: Records) -> None:
    await take_in(records, arrived(1, 2))
    await take_in(records, arrived(2, 3))
    async with records.reading() as session:
        assert await session.scalar(select(func.count(Inbox.id))) == 3


async def test_a_lane_is_worked_on_in_its_order(records: Records) -> None:
    await take_in(records, [*arrived(1, 2), *arrived(3, lane="b")])
    first = await claim(records, "w1")
    assert len(first) == 2
    assert await claim(records, "w2") == []
    await finish(records, first[0], "w1")
    assert len(await claim(records, "w2")) == 1


async def test_a_claim_ends_and_its_holder_can_no_longer_finish(records: Records) -> None:
    await take_in(records, arrived(1))
    (number,) = await claim(records, "w1", now_ms=0)
    assert await claim(records, "w2", now_ms=50) == []
    assert await claim(records, "w2", now_ms=200) == [number]
    with pytest.raises(LostClaim):
        await finish(records, number, "w1")
    await finish(records, number, "w2")
    with pytest.raises(LostClaim):
        await finish(records, number, "w2")


async def test_what_is_done_keeps_no_text(records: Records) -> None:
    await take_in(records, arrived(1))
    (number,) = await claim(records, "w1")
    await finish(records, number, "w1")
    async with records.reading() as session:
        assert (await session.scalars(select(Inbox.body))).all() == [None]


async def test_an_update_that_always_fails_is_left_to_the_operator(records: Records) -> None:
    await take_in(records, arrived(1, 2))
    for tries in range(1, MOST_TRIES + 1):
        (number,) = await claim(records, "w1", now_ms=1000 * tries)
        async with records.writing() as session:
            dead = await post.put_back(session, number, "w1", tries=tries, free_ms=0)
        assert dead == (tries == MOST_TRIES)
    assert await claim(records, "w1", now_ms=9000) == [number + 1]  # and holds up no other


async def test_a_claim_is_a_try_even_where_its_worker_dies(records: Records) -> None:
    await take_in(records, arrived(1))
    tries = []
    for n in range(MOST_TRIES + 1):
        async with records.writing() as session:
            (row,) = await post.claim(
                session, BOT, "w1", now_ms=1000 * n, until_ms=1000 * n + 1, most=9
            )
        tries.append(row.tries)
    assert tries == [*range(1, MOST_TRIES + 1), MOST_TRIES + 1]


async def test_who_lost_a_claim_gives_nothing_up(records: Records) -> None:
    await take_in(records, arrived(1))
    (number,) = await claim(records, "w1", now_ms=0)
    assert await claim(records, "w2", now_ms=200) == [number]
    async with records.writing() as session:
        assert not await post.put_back(session, number, "w1", tries=MOST_TRIES, free_ms=0)
    await finish(records, number, "w2")


#: Limits that no test here reaches.
FAST = Limits(1e6, 0, 1e6)


async def letters(records: Records, now_ms: int = 0) -> list[tuple[int, str]]:
    async with records.writing() as session:
        rows = await post.claim_letters(
            session, BOT, "w1", now_ms=now_ms, until_ms=now_ms + 100, limits=FAST, most=9
        )
    return [(row.id, str(row.body["text"])) for row in rows]


async def promise(records: Records, *texts: str, lane: str = "5") -> None:
    async with records.writing() as session:
        made = [Letter(lane, "sendMessage", {"chat_id": int(lane), "text": t}) for t in texts]
        await post.promise(session, BOT, made, now_ms=0)


async def test_requests_of_a_chat_leave_in_their_order(records: Records) -> None:
    await promise(records, "one", "two")
    await promise(records, "three", lane="6")
    first = await letters(records)
    assert [text for _, text in first] == ["one", "three"]
    async with records.writing() as session:
        await post.sent(session, [first[0][0]])
        await post.postpone(session, first[1][0], free_ms=500, tries=1)
    assert [text for _, text in await letters(records, 200)] == ["two"]
    assert [text for _, text in await letters(records, 600)] == ["two", "three"]


async def test_a_chat_that_is_lost_gets_nothing_any_more(records: Records) -> None:
    await promise(records, "one")
    async with records.writing() as session:
        await post.lose(session, BOT, 5, now_ms=1)
        assert await post.lost(session, BOT, 5)
    assert await letters(records) == []
    async with records.writing() as session:
        assert await post.regain(session, BOT, [5, 6]) == [5]
        assert not await post.lost(session, BOT, 5)


async def test_what_waits_for_a_group_goes_to_its_new_number(records: Records) -> None:
    await promise(records, "one")
    async with records.writing() as session:
        await post.moved(session, BOT, 5, 55)
        rows = await post.claim_letters(session, BOT, "w", now_ms=1, until_ms=2, most=9)
    assert [(r.lane, r.body["chat_id"]) for r in rows] == [("55", 55)]


async def test_a_button_counts_once(records: Records) -> None:
    for expected in (True, False):
        async with records.writing() as session:
            assert await post.tap(session, BOT, 5, 7, "c0", now_ms=1) is expected


def answered(message_id: int, answer_id: int, person: str) -> dict[str, Any]:
    return {
        "chat_id": 5, "message_id": message_id, "answer_id": answer_id, "person": person,
        "kind": "dose",
    }  # fmt: skip


async def test_what_is_old_is_cleared_out(records: Records) -> None:
    await take_in(records, arrived(1))
    await finish(records, (await claim(records, "w"))[0], "w")
    async with records.writing() as session:
        await post.keep_card(session, "abc", "5 l", ADDRESS, now_ms=0)
        await post.note_answers(session, BOT, [answered(6, 7, "anna")], now_ms=0)
        await post.tap(session, BOT, 5, 7, "c0", now_ms=0)
        await post.clear_out(session, BOT, now_ms=post.KEPT_MS)  # not yet
        assert await post.answer_to(session, BOT, 5, 6) is not None
        await post.clear_out(session, BOT, now_ms=post.CARD_KEPT_MS + 1)
        session.expunge_all()
        assert await post.answer_to(session, BOT, 5, 6) is None
        assert await post.card(session, "abc") is None
        assert await post.tap(session, BOT, 5, 7, "c0", now_ms=0)
        assert await session.scalar(select(func.count(Inbox.id))) == 0


async def test_who_is_forgotten_leaves_no_text_in_the_post(records: Records) -> None:
    async with records.writing() as session:
        owner = await owners.find_or_add(session, ADDRESS, created_at=NOW)
        bot = f"{ADDRESS.channel}:1"
        answers = [answered(6, 6, ADDRESS.external_id), answered(8, 8, "somebody else")]
        await post.note_answers(session, bot, answers, now_ms=0)
        other = owners.Address(ADDRESS.kind, ADDRESS.channel, "somebody else")
        await post.keep_card(session, "mine", "5 l", ADDRESS, now_ms=0)
        await post.keep_card(session, "theirs", "6 l", other, now_ms=0)
        await forget.forget(session, owner.id)
    async with records.reading() as session:
        assert await post.card(session, "mine") is None
        assert await post.card(session, "theirs") == "6 l"
        assert await post.posted_as(session, bot, 5, 6) is None
        kept = await post.posted_as(session, bot, 5, 8)
        assert kept is not None
        assert kept.person == "somebody else"


# --- how fast -----------------------------------------------------------------------------------


async def sent_at(
    records: Records, lanes: list[str], limits: Limits, *, until_ms: int, step_ms: int = 7
) -> dict[str, list[int]]:
    """When each lane's requests go out, two workers asking in turn on a clock of ours [ms]."""
    async with records.writing() as session:
        await post.promise(session, BOT, [Letter(n, "sendMessage", {}) for n in lanes], now_ms=0)
    at: dict[str, list[int]] = {}
    for number, now in enumerate(range(1_000_000, 1_000_000 + until_ms, step_ms)):
        async with records.writing() as session:
            claimed = await post.claim_letters(
                session, BOT, f"w{number % 2}",
                now_ms=now, until_ms=now + 60_000, most=32, limits=limits,
            )  # fmt: skip
            await post.sent(session, [c.id for c in claimed])
        for letter in claimed:
            at.setdefault(letter.lane, []).append(now - 1_000_000)
    return at


def most_within(times: list[int], span_ms: int) -> int:
    """The most of these within any stretch of so long."""
    times = sorted(times)
    return max(sum(1 for t in times if s <= t < s + span_ms) for s in times)


async def test_no_second_has_more_than_the_messenger_takes(records: Records) -> None:
    # 30 a second over all: the messenger's FAQ on limits
    at = await sent_at(records, [str(n) for n in range(100, 180)], Limits(), until_ms=3500)
    times = [t for lane in at.values() for t in lane]
    assert len(times) == 80
    assert 25 <= most_within(times, 1000) <= 30


async def test_a_chat_gets_one_a_second_in_its_order(records: Records) -> None:
    at = await sent_at(records, ["5", "5", "6", "5"], Limits(), until_ms=2500)
    assert len(at["5"]) == 3
    assert all(b - a >= 1000 for a, b in zip(at["5"], at["5"][1:], strict=False))
    assert at["6"][0] < 1000  # is not held up by the other


async def test_no_minute_of_a_group_has_more_than_twenty(records: Records) -> None:
    at = await sent_at(records, ["-7"] * 40, Limits(), until_ms=130_000, step_ms=250)
    assert len(at["-7"]) > 30
    assert most_within(at["-7"], 60_000) <= 20
    assert most_within(at["-7"], 1000) == 1


async def test_what_no_limit_holds_for_does_not_wait(records: Records) -> None:
    at = await sent_at(records, ["tap:1"] * 5, Limits(), until_ms=200)
    assert len(at["tap:1"]) == 5


async def test_reminders_are_claimed_by_themselves(records: Records) -> None:
    async with records.writing() as session:
        letters_ = [Letter("8", "sendMessage", {}, rank=1), Letter("9", "sendMessage", {})]
        await post.promise(session, BOT, letters_, now_ms=0)
        lanes = []
        for rank in (0, 1):
            claimed = await post.claim_letters(
                session, BOT, "w", now_ms=1, until_ms=60_001, most=9, rank=rank, limits=FAST
            )
            lanes.append([c.lane for c in claimed])
    assert lanes == [["9"], ["8"]]


async def test_a_request_whose_sender_died_says_that_it_may_be_a_second_time(
    records: Records,
) -> None:
    await promise(records, "one")
    told = []
    for now in (1, 70_000):
        async with records.writing() as session:
            claimed = await post.claim_letters(
                session, BOT, "w", now_ms=now, until_ms=now + 60_000, most=9, limits=FAST
            )
            told += [c.again for c in claimed]
    assert told == [False, True]


@pytest.mark.parametrize("again", [True, False])
async def test_what_was_perhaps_accepted_says_so_when_it_goes_out_later(
    records: Records, again: bool
) -> None:
    await promise(records, "one")
    ((number, _),) = await letters(records)
    async with records.writing() as session:
        await post.postpone(session, number, free_ms=500, tries=1, again=again)
        (claimed,) = await post.claim_letters(
            session, BOT, "w2", now_ms=600, until_ms=700, most=9, limits=FAST
        )
    assert claimed.again is again


async def in_turn(records: Records, rank: int, now_ms: int) -> bool:
    async with records.reading() as session:
        return await post.waits(session, BOT, now_ms=now_ms, rank=rank)


async def test_only_what_may_go_out_in_a_moment_is_waited_for(records: Records) -> None:
    await promise(records, "one", "two")  # which is behind the first, whatever becomes of it
    assert (await in_turn(records, 0, 1), await in_turn(records, 1, 1)) == (True, False)
    ((number, _),) = await letters(records)
    async with records.writing() as session:
        await post.postpone(session, number, free_ms=600_000, tries=1)
    assert not await in_turn(records, 0, 1)
    assert await in_turn(records, 0, 600_000)


@pytest.mark.parametrize(("lane", "sent", "waits"), [("5", 1, True), ("-5", 1, True),
                                                     ("-5", 5, False)])  # fmt: skip
async def test_a_group_that_had_its_minute_is_not_waited_for(
    records: Records, lane: str, sent: int, waits: bool
) -> None:
    await promise(records, *"abcdef", lane=lane)
    async with records.writing() as session:
        for n in range(sent):
            (claimed,) = await post.claim_letters(
                session, BOT, "w", now_ms=n * 1000, until_ms=99_000, most=9
            )
            await post.sent(session, [claimed.id])
    assert await in_turn(records, 0, (sent - 1) * 1000 + 1) is waits


# --- kept together ------------------------------------------------------------------------------


async def count(records: Records, column: object) -> int:
    async with records.reading() as session:
        return int(await session.scalar(select(func.count(column))) or 0)  # type: ignore[call-overload]


async def test_several_writes_are_kept_together(records: Records) -> None:
    async with records.together() as joined:
        async with joined.writing() as session:
            owner = await owners.find_or_add(session, ADDRESS, created_at=NOW)
        async with joined.writing() as session:
            await plants.add(await begin(session, owner.id), genus="Vanda")
        async with joined.reading() as session:  # sees what is not kept yet
            assert len(await plants.listing(session, owner.id)) == 1
        assert await count(records, Owner.id) == 0
    assert (await count(records, Owner.id), await count(records, Plant.id)) == (1, 1)


async def test_nothing_is_kept_where_the_work_breaks(records: Records) -> None:
    async def breaking() -> None:
        async with records.together() as joined:
            async with joined.writing() as session:
                await owners.find_or_add(session, ADDRESS, created_at=NOW)
            raise RuntimeError

    with pytest.raises(RuntimeError):
        await breaking()
    assert await count(records, Owner.id) == 0


async def test_a_refused_write_takes_only_itself_back(records: Records) -> None:
    async with records.together() as joined:
        async with joined.writing() as session:
            owner = await owners.find_or_add(session, ADDRESS, created_at=NOW)
        with pytest.raises(BadValue):
            await _one_plant_too_many(joined, owner.id)
    assert (await count(records, Owner.id), await count(records, Plant.id)) == (1, 0)


async def _one_plant_too_many(records: Records, owner_id: int) -> None:
    async with records.writing() as session:
        told = await begin(session, owner_id)
        await plants.add(told, genus="Vanda")
        await plants.add(told, genus="Vanda", count=-5)
