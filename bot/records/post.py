"""A messenger's post: updates that came in, requests that go out, and all their SQL.

What it promises:

- An update is taken in once, however often it is delivered (`take_in`).
- It is done in the transaction that keeps what it changed and promises its answer (`finish`):
  after a crash either all of that is there, or the update is still open and is done again.
- What stands in one lane is done in its order, whoever does it: only the oldest open row of a
  lane can be claimed (`claim`, `claim_letters`).
- A claim ends; a worker that lost it can no longer finish (`LostClaim`).
- An update is tried `MOST_TRIES` times, counted when it is claimed: one that ends its process is
  given up as well.
- A request is sent at least once. Where nobody knows whether the messenger accepted it (a crash
  before `sent`, no answer in time, a lost connection), it is sent again, and `Claimed.again` says
  that it may be a second time.
- The messenger's limits hold over all processes (`claim_letters`): what may go out now is
  reckoned and written down in the transaction that claims it.

Times are milliseconds since 1970; `source` tells one bot's post from another's.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field
from typing import Any, NamedTuple, cast

from sqlalchemy import (
    CursorResult,
    Integer,
    Row,
    Select,
    Table,
    and_,
    bindparam,
    delete,
    exists,
    insert,
    or_,
    select,
    true,
    update,
)
from sqlalchemy.ext.asyncio import AsyncSession

from .ledger import CHUNK
from .models import Card, Chat, Inbox, Outbox, Pace, Posted, Tap
from .owners import Address
from .upsert import prepared, upserting

#: An update that failed so often is left to the operator.
MOST_TRIES = 5
#: How long what goes with a message is kept [ms]: two days, in which an edit is still answered.
KEPT_MS = 2 * 24 * 3600 * 1000
#: How long a card is kept [ms]: thirty days.
CARD_KEPT_MS = 30 * 24 * 3600 * 1000
#: Cards of one person or group that are kept, the newest (ours).
MOST_CARDS = 500
#: So much of what a messenger takes in a second is used (ours).
USED_SHARE = 0.9

# Rows of the post are written by the hundred a second: as tables, without the mapper's work.
_IN, _OUT = cast(Table, Inbox.__table__), cast(Table, Outbox.__table__)


class LostClaim(Exception):
    """Somebody else took over the update meanwhile: nothing of it may be kept."""


class Arrived(NamedTuple):
    """An update as it came."""

    update_id: int
    lane: str
    body: dict[str, Any]


@dataclass(frozen=True, slots=True)
class Claimed:
    """An update or a request that one worker has for now."""

    id: int
    lane: str
    tries: int
    received_ms: int
    method: str = ""
    body: dict[str, Any] = field(default_factory=dict)
    answers: dict[str, Any] | None = None
    again: bool = False


@dataclass(frozen=True, slots=True)
class Letter:
    """A request to a messenger.

    Attributes
    ----------
    lane : what is sent in order: a chat's number, or anything else for what no limit holds for
    method, body : as the channel sends it
    answers : the message it answers and of what kind, or the pings it is for
    rank : what is sent one after another, so that a crash repeats one of them, has 1
    """

    lane: str
    method: str
    body: dict[str, Any]
    answers: dict[str, Any] | None = None
    rank: int = 0


@dataclass(frozen=True, slots=True)
class Limits:
    """How much a messenger takes.

    Attributes
    ----------
    a_second : requests in a second, over all chats
    chat_ms : between two requests to one chat [ms]
    a_minute_per_group : requests to one group, whose number is negative, in any minute
    """

    a_second: float = 30.0
    chat_ms: float = 1000.0
    a_minute_per_group: float = 20.0

    @property
    def burst(self) -> float:
        """So many at once, over all chats; the rest of a second's goes out evenly."""
        return max(1.0, self.a_second / 15)

    @property
    def step_ms(self) -> float:
        """Between two requests, over all chats; with a burst no second has more than allowed.

        What is claimed evenly leaves less evenly: what a busy machine holds up meets what was
        claimed after it. A tenth of a second's share is left free for those.
        """
        return 1000 / (USED_SHARE * self.a_second - self.burst)

    @property
    def group_burst(self) -> float:
        """So many to a group without more than `chat_ms` between them."""
        return max(1.0, self.a_minute_per_group / 5)

    @property
    def group_step_ms(self) -> float:
        """Between two requests to a group, in the long run."""
        return 60_000 / (self.a_minute_per_group - self.group_burst)


# --- in ----------------------------------------------------------------------------------------


async def take_in(
    session: AsyncSession, source: str, arrived: Sequence[Arrived], *, now_ms: int
) -> None:
    """Keep updates, those that are known already left as they are."""
    if not arrived:
        return
    rows = [
        {
            "source": source, "update_id": a.update_id, "lane": a.lane, "body": a.body,
            "received_ms": now_ms, "free_ms": 0, "tries": 0, "state": "open",
        }
        for a in arrived
    ]  # fmt: skip
    await session.execute(_TAKE_IN(session), rows)


async def claim(
    session: AsyncSession, source: str, worker: str, *, now_ms: int, until_ms: int, most: int
) -> list[Claimed]:
    """Take the oldest open update of each lane that nobody has; each claim is a try."""
    rows = await _claim(session, _CLAIM_IN, _IN, source, worker, now_ms, until_ms, most)
    return [Claimed(r.id, r.lane, r.tries + 1, r.received_ms, body=r.body or {}) for r in rows]


async def finish(session: AsyncSession, inbox_id: int, worker: str) -> None:
    """Close an update; its text goes, and whose it was.

    Raises
    ------
    LostClaim
        The claim has passed to another worker, or the update is done.
    """
    done = await session.execute(_FINISH, {"number": inbox_id, "worker": worker})
    if cast(CursorResult[Any], done).rowcount != 1:
        raise LostClaim(inbox_id)


async def put_back(
    session: AsyncSession, inbox_id: int, worker: str, *, tries: int, free_ms: int
) -> bool:
    """Leave an update that failed for later; the last try closes it.

    Says whether it did: not where the claim has passed to another worker.
    """
    dead = tries >= MOST_TRIES
    statement = (
        update(_IN)
        .where(_IN.c.id == inbox_id, _IN.c.claimed_by == worker, _IN.c.state == "open")
        .values(tries=tries, free_ms=free_ms, claimed_by=None, state="dead" if dead else "open")
    )
    return await _count(session, statement) == 1 and dead


# --- out ---------------------------------------------------------------------------------------


async def promise(
    session: AsyncSession, source: str, letters: Iterable[Letter], *, now_ms: int
) -> None:
    """Keep requests that are to be sent, in this order within their lanes."""
    rows = [
        {
            "source": source, "lane": n.lane, "method": n.method, "body": n.body,
            "answers": n.answers, "created_ms": now_ms, "free_ms": 0, "tries": 0, "state": "open",
            "rank": n.rank,
        }
        for n in letters
    ]  # fmt: skip
    if rows:
        await session.execute(_PROMISE, rows)


async def claim_letters(
    session: AsyncSession,
    source: str,
    worker: str,
    *,
    now_ms: int,
    until_ms: int,
    most: int,
    rank: int = 0,
    limits: Limits | None = None,
) -> list[Claimed]:
    """Take the oldest waiting request of each lane that nobody has, and that may go out now.

    Those of one rank: answers go many at once, reminders one by one.
    """
    limits = limits or Limits()
    whole = await session.scalar(_WHOLE, {"bot": source})
    full_ms = max(whole or 0.0, float(now_ms))
    room = int(limits.burst - (full_ms - now_ms) / limits.step_ms + 1e-9)
    most = min(most, room)
    rows = await _claim(
        session, _CLAIM_OUT, _OUT, source, worker, now_ms, until_ms, most, rank=rank
    )
    paced = [r for r in rows if is_chat(r.lane)]
    if paced:
        full_ms += len(paced) * limits.step_ms
        await session.execute(
            _KEEP_PACE(session),
            [
                {"source": source, "lane": _ALL, "free_ms": full_ms, "full_ms": full_ms},
                *(_paced(r, source, now_ms, limits) for r in paced),
            ],
        )
    return [
        Claimed(
            r.id, r.lane, r.tries, r.created_ms, r.method, r.body, r.answers,
            again=r.claimed_by is not None,
        )
        for r in rows
    ]  # fmt: skip


def _paced(row: Row[Any], source: str, now_ms: int, limits: Limits) -> dict[str, Any]:
    """When the next request may go to the chat of this one."""
    free_ms = now_ms + limits.chat_ms
    full_ms = free_ms
    if int(row.lane) < 0:  # a group
        full_ms = max(row.full_ms or 0.0, float(now_ms)) + limits.group_step_ms
        free_ms = max(free_ms, full_ms - (limits.group_burst - 1) * limits.group_step_ms)
    return {"source": source, "lane": row.lane, "free_ms": free_ms, "full_ms": full_ms}


def is_chat(lane: str) -> bool:
    """Whether a lane is a chat's number, and not what no limit holds for."""
    return lane.removeprefix("-").isdecimal()


async def waits(
    session: AsyncSession,
    source: str,
    *,
    now_ms: int,
    rank: int = 0,
    limits: Limits | None = None,
) -> bool:
    """Whether a request of a rank waits for nothing but its turn, which comes in a moment.

    A group that has had all of its minute waits longer than a moment.
    """
    soon = now_ms + (limits or Limits()).chat_ms
    values = {"bot": source, "now": now_ms, "soon": soon, "rank": rank, "most": 1}
    return await session.scalar(_WAITS, values) is not None


async def sent(session: AsyncSession, letter_ids: Sequence[int]) -> None:
    """Drop requests that the messenger has accepted."""
    if letter_ids:
        await session.execute(delete(_OUT).where(_OUT.c.id.in_(letter_ids)))


async def postpone(
    session: AsyncSession,
    letter_id: int,
    *,
    free_ms: int,
    tries: int,
    dead: bool = False,
    again: bool = False,
) -> None:
    """Leave a request for later, or for the operator where it can never be sent.

    `again` where it may have been accepted: who claims it next is told so.
    """
    values: dict[str, Any] = {"free_ms": free_ms, "tries": tries}
    values["state"] = "dead" if dead else "open"
    if not again:
        values["claimed_by"] = None
    await session.execute(update(_OUT).where(_OUT.c.id == letter_id).values(values))


# --- chats -------------------------------------------------------------------------------------


async def lose(
    session: AsyncSession, source: str, chat_id: int, *, now_ms: int
) -> list[dict[str, Any]]:
    """Note that a chat cannot be reached; what waits for it is dropped.

    Returns
    -------
    list of dict
        `answers` of what was dropped.
    """
    row = {"source": source, "chat_id": chat_id, "unreachable_ms": now_ms}
    statement = upserting(session, Chat).values(row)
    await session.execute(
        statement.on_conflict_do_update(
            index_elements=["source", "chat_id"], set_={"unreachable_ms": now_ms}
        )
    )
    dropped = await session.scalars(
        delete(_OUT)
        .where(_OUT.c.source == source, _OUT.c.lane == str(chat_id))
        .returning(_OUT.c.answers)
    )
    return [answers for answers in dropped if answers]


async def regain(session: AsyncSession, source: str, chat_ids: Iterable[int]) -> list[int]:
    """Note that chats can be reached; returns those that could not be until now."""
    wanted = list(chat_ids)
    if not wanted:
        return []
    gone = await session.execute(
        delete(Chat).where(Chat.source == source, Chat.chat_id.in_(wanted)).returning(Chat.chat_id)
    )
    return list(gone.scalars())


async def lost(session: AsyncSession, source: str, chat_id: int) -> bool:
    """Whether a chat cannot be reached for now."""
    return await session.get(Chat, (source, chat_id)) is not None


async def moved(session: AsyncSession, source: str, old_id: int, new_id: int) -> None:
    """What waits for a chat goes to its new number."""
    waiting = await session.scalars(
        select(Outbox).where(
            Outbox.source == source, Outbox.lane == str(old_id), Outbox.state == "open"
        )
    )
    for letter in waiting:
        letter.lane = str(new_id)
        letter.body = {**letter.body, "chat_id": new_id}
    await session.flush()


# --- messages ------------------------------------------------------------------------------------


async def note_answers(
    session: AsyncSession, source: str, answers: Sequence[dict[str, Any]], *, now_ms: int
) -> None:
    """Remember with which messages people's were answered, and what kind of answers they were.

    Each has `chat_id`, `message_id`, `answer_id`, `person` and `kind`.
    """
    if answers:
        rows = [{"source": source, "posted_ms": now_ms, **a} for a in answers]
        await session.execute(_NOTE_ANSWER(session), rows)


async def answer_to(
    session: AsyncSession, source: str, chat_id: int, message_id: int
) -> Posted | None:
    """The answer a message got, None where there is none or it is long ago."""
    return await session.get(Posted, (source, chat_id, message_id))


async def posted_as(
    session: AsyncSession, source: str, chat_id: int, answer_id: int
) -> Posted | None:
    """What a message of ours answers, None where it is not known any more."""
    query = select(Posted).where(
        Posted.source == source, Posted.chat_id == chat_id, Posted.answer_id == answer_id
    )
    return (await session.scalars(query.order_by(Posted.posted_ms.desc()).limit(1))).first()


async def newest_of(
    session: AsyncSession, source: str, chat_id: int, person: str, kinds: Sequence[str]
) -> int | None:
    """The newest answer of these kinds to somebody in a chat."""
    query = select(Posted.answer_id).where(
        Posted.source == source,
        Posted.chat_id == chat_id,
        Posted.person == person,
        Posted.kind.in_(kinds),
    )
    newest = query.order_by(Posted.posted_ms.desc(), Posted.answer_id.desc()).limit(1)
    found: int | None = await session.scalar(newest)
    return found


async def tap(
    session: AsyncSession, source: str, chat_id: int, message_id: int, data: str, *, now_ms: int
) -> bool:
    """Note a pressed button; false where it was pressed before."""
    row = {
        "source": source, "chat_id": chat_id, "message_id": message_id, "data": data,
        "tapped_ms": now_ms,
    }  # fmt: skip
    statement = upserting(session, Tap).values(row).on_conflict_do_nothing()
    return await _count(session, statement) == 1


async def tapped(
    session: AsyncSession, source: str, chat_id: int, message_id: int, data: str
) -> bool:
    """Whether a button was pressed before."""
    return await session.get(Tap, (source, chat_id, message_id, data)) is not None


async def readdress_cards(session: AsyncSession, old: Address, new: Address) -> None:
    """Cards of a group that has another address, and of its members there, go along."""
    rows = await session.execute(
        select(Card.external_id)
        .distinct()
        .where(
            Card.channel == old.channel,
            or_(
                Card.external_id == old.external_id,
                Card.external_id.startswith(f"{old.external_id}:", autoescape=True),
            ),
        )
    )
    for external_id in rows.scalars().all():
        member = external_id.removeprefix(old.external_id)
        await session.execute(
            update(Card)
            .where(Card.channel == old.channel, Card.external_id == external_id)
            .values(external_id=f"{new.external_id}{member}")
        )


async def keep_card(
    session: AsyncSession, card_id: str, text: str, address: Address, *, now_ms: int
) -> None:
    """Keep a text for a link or a further page, until it is old or whose it is are forgotten."""
    row = {
        "id": card_id, "text": text, "channel": address.channel,
        "external_id": address.external_id, "kept_ms": now_ms,
    }  # fmt: skip
    statement = upserting(session, Card).values(row)
    await session.execute(
        statement.on_conflict_do_update(index_elements=["id"], set_={"kept_ms": now_ms})
    )
    theirs = (Card.channel == address.channel, Card.external_id == address.external_id)
    newest = select(Card.kept_ms).where(*theirs).order_by(Card.kept_ms.desc())
    too_old = await session.scalar(newest.offset(MOST_CARDS).limit(1))
    if too_old is not None:
        await session.execute(delete(Card).where(*theirs, Card.kept_ms <= too_old))


async def forget(session: AsyncSession, channel: str, external_id: str, *, person: bool) -> None:
    """Delete all that is kept for a while of a person or a group: texts, buttons, who asked.

    The update that is worked on is closed by its worker; what it promises comes after this.

    Parameters
    ----------
    session
        A session of `Records.writing`.
    channel, external_id
        How the channel names them.
    person
        Whether it is a person, who is met in groups too.
    """
    of_channel = f"{channel}:"
    # What was asked in a group is kept as `GROUP:PERSON`.
    in_groups = (
        Card.external_id.endswith(f":{external_id}", autoescape=True)
        if person
        else Card.external_id.startswith(f"{external_id}:", autoescape=True)
    )
    theirs = or_(Card.external_id == external_id, in_groups)
    await session.execute(delete(Card).where(Card.channel == channel, theirs))
    for table in (_IN, _OUT):
        rows = await session.execute(
            select(table.c.id, table.c.lane, *([_OUT.c.answers] if table is _OUT else [])).where(
                table.c.source.startswith(of_channel, autoescape=True)
            )
        )
        ids = [r.id for r in rows if _is_of(r, external_id, person)]
        for start in range(0, len(ids), CHUNK):
            chunk = table.c.id.in_(ids[start : start + CHUNK])
            # What came in and waits is still to be answered; it is nobody's once that is done.
            closed = _IN.c.state != "open" if table is _IN else true()
            await session.execute(delete(table).where(chunk, closed))
    chats = [Posted.chat_id, Tap.chat_id, Chat.chat_id]
    number = int(external_id) if is_chat(external_id) else None
    for column in chats if number is not None else []:
        model = column.class_
        of_chat = and_(model.source.startswith(of_channel, autoescape=True), column == number)
        await session.execute(delete(model).where(of_chat))
    await session.execute(
        delete(Pace).where(
            Pace.source.startswith(of_channel, autoescape=True), Pace.lane == external_id
        )
    )
    if person:
        await session.execute(
            delete(Posted).where(
                Posted.person == external_id, Posted.source.startswith(of_channel, autoescape=True)
            )
        )
        # Whose a button is stands in its data: `c0.PERSON.STAMP`.
        await session.execute(
            delete(Tap).where(
                Tap.data.contains(f".{external_id}.", autoescape=True),
                Tap.source.startswith(of_channel, autoescape=True),
            )
        )


def _is_of(row: Row[Any], external_id: str, person: bool) -> bool:
    """Whether an update or a request is of somebody: by its lane, or by whom it answers."""
    chat, _, sender = row.lane.partition(":")
    if external_id in ((chat, sender) if person else (chat,)):
        return True
    answers = getattr(row, "answers", None) or {}
    return person and answers.get("person") == external_id


async def card(session: AsyncSession, card_id: str) -> str | None:
    """The text of a card, None where it is not kept."""
    found = await session.get(Card, card_id)
    return None if found is None else found.text


async def clear_out(session: AsyncSession, source: str, *, now_ms: int) -> None:
    """Delete what is older than it is kept for."""
    before = now_ms - KEPT_MS
    await session.execute(
        delete(Inbox).where(
            Inbox.source == source, Inbox.received_ms < before, Inbox.state != "open"
        )
    )
    await session.execute(
        delete(Outbox).where(
            Outbox.source == source, Outbox.created_ms < before, Outbox.state != "open"
        )
    )
    await session.execute(delete(Posted).where(Posted.source == source, Posted.posted_ms < before))
    await session.execute(delete(Tap).where(Tap.source == source, Tap.tapped_ms < before))
    await session.execute(
        delete(Pace).where(
            Pace.source == source, Pace.free_ms < now_ms, Pace.full_ms < now_ms, Pace.lane != _ALL
        )
    )
    await session.execute(delete(Card).where(Card.kept_ms < now_ms - CARD_KEPT_MS))


# --- claiming -----------------------------------------------------------------------------------


def _heads(table: Table) -> Select[Any]:
    """The heads of the lanes that nobody has."""
    older = table.alias()
    behind = exists().where(
        older.c.source == table.c.source,
        older.c.lane == table.c.lane,
        older.c.state == "open",
        older.c.id < table.c.id,
    )
    return (
        select(table)
        .where(
            table.c.source == bindparam("bot"),
            table.c.state == "open",
            table.c.free_ms <= bindparam("now"),
            ~behind,
        )
        .limit(bindparam("most", type_=Integer))
    )


_ALL = "*"
_PACE = cast(Table, Pace.__table__)
_CLAIM_IN = _heads(_IN).order_by(_IN.c.id).with_for_update(skip_locked=True)


def _paced_heads(by: str) -> Select[Any]:
    """Heads of requests of a rank whose chats may be written to by a time."""
    return (
        _heads(_OUT)
        .outerjoin(_PACE, and_(_PACE.c.source == _OUT.c.source, _PACE.c.lane == _OUT.c.lane))
        .where(
            or_(_PACE.c.free_ms.is_(None), _PACE.c.free_ms <= bindparam(by)),
            _OUT.c.rank == bindparam("rank"),
        )
    )


_CLAIM_OUT = (
    _paced_heads("now")
    .add_columns(_PACE.c.full_ms)
    .order_by(_OUT.c.id)
    .with_for_update(of=_OUT, skip_locked=True)
)
_WHOLE = (
    select(_PACE.c.full_ms)
    .where(_PACE.c.source == bindparam("bot"), _PACE.c.lane == _ALL)
    .with_for_update()
)
_KEEP_PACE = prepared(Pace)(
    lambda insert: insert.on_conflict_do_update(
        index_elements=["source", "lane"],
        set_={f: insert.excluded[f] for f in ("free_ms", "full_ms")},
    )
)
_WAITS = _paced_heads("soon").with_only_columns(_OUT.c.id)
_FINISH = (
    update(_IN)
    .where(
        _IN.c.id == bindparam("number"),
        _IN.c.claimed_by == bindparam("worker"),
        _IN.c.state == "open",
    )
    .values(state="done", body=None, claimed_by=None, lane="")
)
_PROMISE = insert(_OUT)
_TAKE_IN = prepared(Inbox)(
    lambda insert: insert.on_conflict_do_nothing(index_elements=["source", "update_id"])
)
_NOTE_ANSWER = prepared(Posted)(
    lambda insert: insert.on_conflict_do_update(
        index_elements=["source", "chat_id", "message_id"],
        set_={f: insert.excluded[f] for f in ("answer_id", "person", "kind", "posted_ms")},
    )
)


async def _claim(
    session: AsyncSession,
    heads: Select[Any],
    table: Table,
    source: str,
    worker: str,
    now_ms: int,
    until_ms: int,
    most: int,
    **further: int,
) -> Sequence[Row[Any]]:
    """The heads of the lanes, marked as this worker's.

    PostgreSQL skips what another worker is about to take; on SQLite there is no other.
    """
    if most < 1:
        return []
    values = {"bot": source, "now": now_ms, "most": most, **further}
    found = await session.execute(heads, values)
    rows: Sequence[Row[Any]] = found.all()
    if rows:
        marks: dict[str, Any] = {"claimed_by": worker, "free_ms": until_ms}
        if table is _IN:
            marks["tries"] = _IN.c.tries + 1
        await session.execute(
            update(table).where(table.c.id.in_([r.id for r in rows])).values(marks)
        )
    return rows


async def _count(session: AsyncSession, statement: Any) -> int:
    result = await session.execute(statement)
    return result.rowcount if isinstance(result, CursorResult) else 0
