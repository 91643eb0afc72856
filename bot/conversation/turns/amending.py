"""The last entry of the log put right: 'no, Ruby', 'that was Ruby not Hugo', 'it was yesterday'.

It is taken back and what was meant is written down in its place. `undo` puts back what stood.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import date, datetime, timedelta
from typing import Any

from bot.conversation import answer as out
from bot.conversation.collection import labels, pick
from bot.conversation.turn import Turn, day_past
from bot.conversation.turns.feeding.doses import FOLLOW_UP
from bot.conversation.turns.shelf import title
from bot.records import log
from bot.records.kinds import EventKind
from bot.records.models import Event, Plant
from grammar import Order, Target

_KINDS = {"fed": EventKind.FED, "clear": EventKind.CLEAR, "flush": EventKind.FLUSH}
#: Entries after which a correction is heard; of the others than care, how to put them right.
_HEARD = frozenset({
    *_KINDS.values(), EventKind.READING, EventKind.REPOT, EventKind.GROWTH, EventKind.MOVED,
})  # fmt: skip
#: Questions that came with the entry, or that a correction answers as well.
_OVER = frozenset({None, "dose", "reminder_offer"})


@dataclass(frozen=True, slots=True)
class Given:
    """What was given to some plants at once: alike but for the plants."""

    kind: EventKind
    on: date
    product_id: int | None
    details: tuple[tuple[str, Any], ...]
    plants: tuple[int, ...]


async def heard(turn: Turn) -> out.Answer | None:
    """The last entry put right, where the message is said right after one and means that."""
    amends = turn.order.amends
    if amends is None or turn.owner is None or turn.question.get("kind") not in _OVER:
        return None
    async with turn.records.reading() as session:
        events = await log.last_batch(session, turn.owner_id, by=turn.member)
    if not _just_now(turn, events):
        return None
    if any(e.kind not in _KINDS.values() for e in events):
        if amends.text == "whole":
            return None  # of something else: written down as it is told
        said = amends.target.named or amends.when
        return turn.ask("ask-amend-undo") if said else None
    before = _given(events)
    if amends.text == "whole" and not _all_of(turn, amends, before):
        return None
    if amends.text == "either":
        amends = _one_way(turn, amends, before)
    if amends.text == "whole":
        after = _apart(turn, amends, before)
    else:
        after = _put_right(turn, amends, before) if not amends.text else None
    if after is None:
        return turn.ask("ask-amend", entry=_told(before, turn))
    if after == before:
        return turn.say("log", "amended-same", entry=_told(before, turn))
    return await _write(turn, before, after)


def _just_now(turn: Turn, events: Sequence[Event]) -> bool:
    """Whether an entry of care is what they said last: no dose was asked for since."""
    if not events or any(e.kind not in _HEARD for e in events):
        return False
    said_at = events[0].said_at
    dose = turn.remembered.get("dose")
    asked_at = datetime.fromisoformat(dose["said_at"]) if isinstance(dose, dict) else said_at
    age = turn.incoming.said_at - said_at
    return asked_at <= said_at and timedelta(0) <= age <= FOLLOW_UP


def _given(events: Sequence[Event]) -> list[Given]:
    """The entries of one utterance, those that are alike together."""
    found: dict[str, Given] = {}
    for e in events:
        if e.plant_id is None:
            continue
        told = tuple(sorted((k, v) for k, v in e.details.items() if k != "by"))
        key = f"{e.kind} {e.on} {e.product_id} {told}"
        kept = found.get(key, Given(e.kind, e.on, e.product_id, told, ()))
        found[key] = replace(kept, plants=(*kept.plants, e.plant_id))
    return list(found.values())


def _put_right(turn: Turn, amends: Order, before: list[Given]) -> list[Given] | None:
    """What was meant; None where it cannot be told."""
    whom = _whom(turn, amends.target, before)
    if whom is None:
        return None
    on = day_past(amends.when, turn.today) if amends.when is not None else None
    kind = _KINDS.get(amends.asks_kind or "")
    strength = turn.reading.strength
    product = turn.collection.product_named(amends.products[0]) if amends.products else None
    if (kind or strength or product) and len(before) > 1:
        return None
    after = []
    for given, plants in zip(before, whom, strict=True):
        now = replace(given, plants=plants, on=on or given.on)
        if kind is not None and kind is not given.kind:
            usual = turn.collection.default_product if kind is EventKind.FED else None
            now = replace(now, kind=kind, product_id=usual.id if usual else None, details=())
        if (strength is not None or product is not None) and now.kind is not EventKind.FED:
            return None
        if strength is not None:
            details = {**dict(now.details), "strength": strength}
            now = replace(now, details=tuple(sorted(details.items())))
        if product is not None:
            now = replace(now, product_id=product.id)
        after.append(now)
    return [g for g in after if g.plants] or None


def _all_of(turn: Turn, amends: Order, before: list[Given]) -> bool:
    """Whether all that are named are among those that the entry is about."""
    named = set(_picked(turn, _meant(amends.target)))
    return bool(named) and named <= {i for g in before for i in g.plants}


def _apart(turn: Turn, amends: Order, before: list[Given]) -> list[Given] | None:
    """What was meant where it holds for some of them, and the others keep what they got."""
    named = set(_picked(turn, _meant(amends.target)))
    after: list[Given] = []
    for given in before:
        part = replace(given, plants=tuple(i for i in given.plants if i in named))
        now = _put_right(turn, replace(amends, target=Target()), [part]) if part.plants else []
        if now is None:
            return None
        kept = replace(given, plants=tuple(i for i in given.plants if i not in named))
        after += [g for g in (kept, *now) if g.plants]
    return after


def _one_way(turn: Turn, amends: Order, before: list[Given]) -> Order:
    """'No Ruby' is 'not Ruby' where Ruby is one of those that got it, else 'no: Ruby'."""
    target, there = amends.target, {i for g in before for i in g.plants}
    named = set(_picked(turn, _meant(target)))
    if named and named <= there:
        denied = Target(not_names=target.names, not_genera=target.genera)
        return replace(amends, text="", target=denied)
    return replace(amends, text="")


def _whom(turn: Turn, target: Target, before: list[Given]) -> list[tuple[int, ...]] | None:
    """The plants of each part now; None where those that were denied or meant are not known."""
    held = [g.plants for g in before]
    right, wrong = _picked(turn, _meant(target)), _picked(turn, _denied(target))
    if (_meant(target).named and not right) or (target.excepts and not wrong):
        return None
    if not right and not wrong:
        return held
    if target.everything and target.excepts:  # 'all but Mia'
        return [tuple(i for i in right if i not in wrong)] if len(held) == 1 else None
    there = {i for plants in held for i in plants}
    if wrong and there.isdisjoint(wrong):
        return None
    if not wrong:
        return [tuple(right)] if len(held) == 1 else None
    out_of = [
        tuple(dict.fromkeys((*(i for i in plants if i not in wrong), *right)))
        if not set(plants).isdisjoint(wrong)
        else plants
        for plants in held
    ]
    return out_of if any(out_of) else None


def _meant(target: Target) -> Target:
    """Those it holds for."""
    none = replace(target, not_names=(), not_genera=(), not_places=(), not_traits=(), not_media=())
    return replace(none, again=False)


def _denied(target: Target) -> Target:
    """Those it does not hold for."""
    places = target.not_places
    return Target(
        names=target.not_names,
        genera=target.not_genera,
        place=places[-1] if places else None,
        more_places=places[:-1],
        traits=target.not_traits,
        medium=target.not_media[0] if target.not_media else None,
    )


def _picked(turn: Turn, target: Target) -> list[int]:
    return [p.id for p in pick(target, turn.collection)]


# --- written down --------------------------------------------------------------------------------


async def _write(turn: Turn, before: list[Given], after: list[Given]) -> out.Answer:
    """Take the entry back and write down what was meant, both or neither."""
    turn.remembered["plants"] = [i for g in after for i in g.plants]
    async with turn.records.together() as records:
        both = replace(turn, records=records)
        async with records.writing() as session:
            said_at, by = turn.incoming.said_at, turn.member
            await log.undo(session, turn.owner_id, said_at=said_at, by=by)
        async with both.writing(max(g.on for g in after)) as told:
            turn.remembered["amended"] = {"batch": told.batch, "before": _kept(before)}
            await log.record(told, _entries(after))
    await open_again(turn, {i for g in before for i in g.plants} - set(turn.remembered["plants"]))
    turn = replace(turn, reading=replace(turn.reading, unknown=(), read_as=()))
    lines = [turn.words.say("amended", entry=_told(after, turn), before=_told(before, turn))]
    fed = {i for g in after if g.kind is EventKind.FED for i in g.plants}
    asleep = [p for p in turn.collection.plants if p.id in fed and p.growth == "resting"]
    if asleep:
        lines.append(turn.words.say("logged-resting", plants=labels(asleep, turn.words)))
    rows = [{"plants": list(g.plants), "on": g.on.isoformat(), "kind": str(g.kind)} for g in after]
    return turn.tell("log", lines, choices=("undo",), details={"parts": rows})


def _entries(given: Sequence[Given]) -> list[log.Entry]:
    return [
        log.Entry(g.kind, plant, g.product_id, on=g.on, details=dict(g.details))
        for g in given
        for plant in g.plants
    ]


def _kept(given: Sequence[Given]) -> list[dict[str, Any]]:
    """What stood before, to be put back."""
    return [
        {
            "kind": str(g.kind), "on": g.on.isoformat(), "product": g.product_id,
            "details": dict(g.details), "plants": list(g.plants),
        }
        for g in given
    ]  # fmt: skip


async def open_again(turn: Turn, ids: set[int | None] | set[int]) -> None:
    """What was taken back is no longer ticked off in the plan."""
    plan = turn.remembered.get("plan")
    if isinstance(plan, dict) and ids.intersection(plan["ticked"]):
        await turn.keep(plan={**plan, "ticked": [i for i in plan["ticked"] if i not in ids]})


async def put_back(turn: Turn, batch: int) -> out.Answer | None:
    """What stood before a correction that was just taken back; None where it was none."""
    kept = turn.remembered.get("amended")
    if not isinstance(kept, dict) or kept["batch"] != batch:
        return None
    before = [
        Given(
            EventKind(g["kind"]), date.fromisoformat(g["on"]), g["product"],
            tuple(sorted(g["details"].items())), tuple(g["plants"]),
        )
        for g in kept["before"]
    ]  # fmt: skip
    turn.remembered["amended"] = None
    async with turn.writing(max(g.on for g in before)) as told:
        await log.record(told, _entries(before))
    return turn.say("undo", "amended-undone", entry=_told(before, turn))


# --- in words ------------------------------------------------------------------------------------


def _told(given: Sequence[Given], turn: Turn) -> str:
    """What was given, when and to whom, in words."""
    by_id = {p.id: p for p in turn.collection.plants}
    return " ".join(_line(g, [by_id[i] for i in g.plants if i in by_id], turn) for g in given)


def _line(given: Given, plants: list[Plant], turn: Turn) -> str:
    words, details = turn.words, dict(given.details)
    facts = [words.share(float(details["strength"]))] if "strength" in details else []
    product = next((p for p in turn.collection.products if p.id == given.product_id), None)
    if product is not None:
        facts.append(title(product, turn))
    return words.say(
        f"logged-{given.kind}",
        plants=labels(plants, words),
        day=words.day(given.on, turn.today),
        facts=", ".join(facts) or "none",
    )
