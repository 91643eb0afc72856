"""The log: what was given and measured, undo, and what a plant got."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Sequence
from dataclasses import replace
from datetime import date
from typing import Any

from bot.conversation import answer as out
from bot.conversation.collection import Collection, labels, pick, plants_said
from bot.conversation.turn import Turn, day_done, day_past, day_since, readable
from bot.conversation.turns.amending import open_again, put_back
from bot.conversation.turns.day.day import left_of
from bot.conversation.turns.feeding import judging
from bot.conversation.turns.feeding.doses import has_last, last_figures
from bot.conversation.turns.plants import on_target
from bot.conversation.turns.pots import salts
from bot.conversation.turns.shelf import title
from bot.conversation.turns.standing import rescue_log
from bot.conversation.wording import Wording
from bot.records import log, plants, products
from bot.records.errors import NothingToUndo, OthersSince
from bot.records.kinds import CARE, EventKind
from bot.records.models import Event, Plant, Product
from bot.records.names import fold
from grammar import Order

_KINDS = {
    "fed": EventKind.FED,
    "clear": EventKind.CLEAR,
    "flush": EventKind.FLUSH,
    "repot": EventKind.REPOT,
}
#: What a history of plants shows.
_SHOWN = CARE | {
    EventKind.ADDED,
    EventKind.REPOT,
    EventKind.GROWTH,
    EventKind.MOVED,
    EventKind.LOST,
}
#: Days of a history that are shown at once, the newest.
_MOST_LINES = 15


async def given(turn: Turn) -> out.Answer:
    """Write down that plants were fed, got clear water or were flushed."""
    left = left_of(turn) if turn.order.standing == "rest" else ()
    if left:
        turn = replace(turn, chosen=left)
    if turn.order.also:
        return await _several(turn)
    them = turn.order.target.again and not turn.order.target.named
    if them and turn.order.amount is not None and not turn.last_plants:
        return await judging.judge(turn)  # 'I gave them 2 g in 1 l', and nobody knows whom
    return await on_target(turn, _given)


async def dose_given(turn: Turn) -> out.Answer | None:
    """'Done', said right after a dose: its plants got it. None where there is no such dose."""
    told = last_figures(turn)
    if told is None or not told.plants or not turn.order.target.empty or turn.order.steps:
        return None
    products = (told.name,) if told.name else ()
    order = Order("fed", products=products)
    reading = replace(turn.reading, order=order, strength=told.dose.strength)
    chosen = tuple(p.id for p in told.plants)
    return await given(replace(turn, reading=reading, chosen=chosen))


async def two_things(turn: Turn) -> out.Answer:
    """Two things were given, or on two days, and it is not clear which plants got which."""
    return turn.ask("ask-two-days" if turn.order.text == "days" else "ask-two-things")


async def all_or_some(turn: Turn) -> out.Answer:
    """All are meant and then some by name, and it is not clear whether but these or only these."""
    return turn.ask("ask-all-or-some", names=plants_said(turn.order.target, turn.words))


async def not_given(turn: Turn) -> out.Answer:
    """Nothing was given: nothing is written down."""
    return turn.say("log", "feed-pause" if turn.order.text == "ceased" else "not-given")


#: What is said where it is clear why nothing is changed.
_NOT_CHANGED = {
    "others": "not-yours",
    "today": "not-from-today",
    "water": "not-your-water",
    "product_default": "not-used-now",
}


async def not_changed(turn: Turn) -> out.Answer:
    """A change was denied, or is one of somebody else's plants: nothing of it is done."""
    return turn.say("log", _NOT_CHANGED.get(turn.order.text, "not-changed"))


async def not_told(turn: Turn) -> out.Answer:
    """A change was asked about or planned, and not told: how to tell it."""
    code = "not-told-doubt" if turn.order.asks_kind == "doubt" else "not-told"
    return turn.say("log", code, verb=turn.order.text)


async def _several(turn: Turn) -> out.Answer:
    """Several things that were given, one batch: what is said last holds for the plants it names.

    'Fed all, Ruby only watered' is no feed for Ruby.
    """
    collection = turn.collection
    parts: list[tuple[Turn, list[Plant]]] = []
    for reading in (turn.reading, *turn.reading.further):
        part = replace(turn, reading=reading)
        found = pick(part.order.target, collection, turn.last_plants)
        if not found:
            return await on_target(part, _given)  # asks which
        on = _day_of(part, turn)
        parts = [
            (t, [p for p in plants if p not in found]) if _day_of(t, turn) == on else (t, plants)
            for t, plants in parts
        ]
        parts.append((part, found))
    parts = [(t, plants) for t, plants in parts if plants]
    turn.keep_plants([p for _, plants in parts for p in plants])
    days = [_day_of(t, turn) for t, _ in parts]
    async with turn.writing(max(days)) as told:
        for (part, plants), on in zip(parts, days, strict=True):
            await log.record(told, _rows(part, collection, plants, on))
    lines = [
        line
        for (part, plants), on in zip(parts, days, strict=True)
        for line in _told_of(part, collection, plants, on)
    ]
    rows = [
        {"plants": [p.id for p in plants], "on": on.isoformat(), "kind": part.order.verb}
        for (part, plants), on in zip(parts, days, strict=True)
    ]
    return turn.tell("log", lines, choices=("undo",), details={"parts": rows})


def _day_of(part: Turn, turn: Turn) -> date:
    """The day of a part; that of the whole message where it says none."""
    return day_done(part, part.order.when or turn.order.when)


async def _given(turn: Turn, collection: Collection, found: list[Plant]) -> out.Answer:
    on = day_done(turn, turn.order.when)
    kind = _KINDS[turn.order.verb]
    judging.keep_given(turn)
    twice = await _fed_already(turn, found, on) if kind is EventKind.FED else []
    async with turn.writing(on) as told:
        await log.record(told, _rows(turn, collection, found, on))
    details = _details(turn) if kind is EventKind.FED else {}
    rows = {"plants": [p.id for p in found], "on": on.isoformat(), "kind": str(kind), **details}
    first, *lines = _told_of(turn, collection, found, on)
    return turn.tell("log", [first, *twice, *lines], choices=("undo",), details=rows)


async def _fed_already(turn: Turn, found: list[Plant], on: date) -> list[str]:
    """Said where a feed of that day stands in the log already: it may be told twice."""
    async with turn.records.reading() as session:
        before = await log.entries(session, turn.owner_id, since=on, kinds=[EventKind.FED])
    had = {e.plant_id for e in before if e.on == on}
    again = [p for p in found if p.id in had]
    return [turn.words.say("logged-twice", plants=labels(again, turn.words))] if again else []


def _rows(turn: Turn, collection: Collection, found: list[Plant], on: date) -> list[log.Entry]:
    """What is written down of plants that got something."""
    kind = _KINDS[turn.order.verb]
    product = _product(turn, collection) if kind is EventKind.FED else None
    details = _details(turn) if kind is EventKind.FED else {}
    product_id = product.id if product else None
    rows = [log.Entry(kind, p.id, product_id, on=on, details=details) for p in found]
    strong = kind is EventKind.FED and judging.too_strong(turn)
    return [*rows, *rescue_log.overfed(found, on)] if strong else rows


def _told_of(turn: Turn, collection: Collection, found: list[Plant], on: date) -> list[str]:
    """What was written down of plants that got something, in words."""
    kind = _KINDS[turn.order.verb]
    product = _product(turn, collection) if kind is EventKind.FED else None
    details = _details(turn) if kind is EventKind.FED else {}
    facts = []
    if "strength" in details:
        facts.append(_of_label(details["strength"], turn.words))
    if product is not None:
        facts.append(title(product, turn))
    elif "analysis" in details:
        facts.append("-".join(turn.words.number(a) for a in details["analysis"]))
    lines = [
        turn.words.say(
            f"logged-{turn.order.verb}",
            plants=labels(found, turn.words),
            day=turn.words.day(on, turn.today),
            facts=", ".join(facts) or "none",
        )
    ]
    if kind is EventKind.FED:
        judged = judging.given(turn)[1]
        if judging.too_strong(turn):  # what to do now stands last
            *before, rinse = judged or [turn.words.say("judge-rinse")]
            judged = [*before, rescue_log.overfed_line(turn, found, on), rinse]
        lines += [*judged, *_worries(found, turn)]
    return lines


def _worries(found: list[Plant], turn: Turn) -> list[str]:
    """Said at once where feed went to a plant that should have had none."""
    asleep = [p for p in found if p.growth == "resting"]
    if not asleep:
        return []
    return [turn.words.say("logged-resting", plants=labels(asleep, turn.words))]


def _of_label(strength: float, words: Wording) -> str:
    """A strength as it is told; over that of the label in percent."""
    return words.share(strength) if strength <= 1 else f"{words.significant(100 * strength)} %"


def _product(turn: Turn, collection: Collection) -> Product | None:
    if turn.order.products:
        return collection.product_named(turn.order.products[0])
    return None if turn.reading.analysis else collection.default_product


def _details(turn: Turn) -> dict[str, Any]:
    reading = turn.reading
    details: dict[str, Any] = {}
    by_amount, _ = judging.given(turn)
    if by_amount is not None:
        details["strength"] = by_amount
    if reading.strength is not None:
        details["strength"] = reading.strength
    if reading.analysis is not None:
        details["analysis"] = list(reading.analysis)
    if reading.target_n_mg_l is not None:
        details["n_mg_l"] = reading.target_n_mg_l
    return details


async def reading(turn: Turn) -> out.Answer:
    """Write down the conductivity of what ran out of a pot."""
    value = _ec_said(turn)
    if value is not None and not turn.collection.plants:
        return turn.tell("reading", salts.of_no_plant(turn, value))
    target, all_ = turn.order.target, turn.collection.plants
    if len(all_) == 1 and target.empty and not target.traits:  # no other can be meant
        turn = replace(turn, chosen=(all_[0].id,))
    return await on_target(turn, _reading)


async def _reading(turn: Turn, collection: Collection, found: list[Plant]) -> out.Answer:
    value = _ec_said(turn)
    if value is None:
        return turn.ask("ask-runoff")
    on = day_past(turn.order.when, turn.today)
    async with turn.writing(on) as told:
        details = {"runoff_ec_ms_cm": value}
        await log.record(
            told, (log.Entry(EventKind.READING, p.id, on=on, details=details) for p in found)
        )
    logged = turn.words.say(
        "logged-reading",
        plants=labels(found, turn.words),
        ec=turn.words.number(value),
        day=turn.words.day(on, turn.today),
    )
    meant = await salts.of_reading(turn, collection, found, value)
    return turn.tell("reading", [logged, *meant], choices=("undo",))


def _ec_said(turn: Turn) -> float | None:
    said = turn.reading.target_ec_ms_cm
    if said is None and turn.reading.water is not None:
        said = turn.reading.water.ec_ms_cm
    if said is None:
        said = turn.order.value
    return said if said is not None and 0 < said <= 20 else None


async def undo(turn: Turn) -> out.Answer:
    """Take back the last thing that was said; in a group a member's own last.

    An administrator who asks takes back the last of all; whose button is pressed, their own.
    """
    if turn.owner is None:
        return turn.say("undo", "undo-nothing")
    tapped = turn.incoming.tapped_at is not None
    of_all = turn.member is None or (not tapped and await turn.administers())
    by = None if of_all else turn.member
    async with turn.records.reading() as session:
        last = await log.last_batch(session, turn.owner_id, by=by)
    if last and not _is_said(turn, last):
        return turn.ask("ask-undo-last", **await _in_words(turn, last))
    try:
        async with turn.records.writing() as session:
            done = await log.undo(session, turn.owner_id, said_at=turn.incoming.said_at, by=by)
    except NothingToUndo:
        return turn.say("undo", "undo-nothing" if of_all else "undo-nothing-own")
    except OthersSince:
        return turn.refuse("refuse-undo-others-since")
    await judging.forget_given(turn)
    await open_again(turn, {e.plant_id for e in done.events if e.kind in CARE})
    stood = await put_back(turn, done.events[0].batch)
    if stood is not None:
        return stood
    said_by = done.events[0].details.get("by")
    whose = "none" if said_by in (None, turn.member) else _who(said_by, turn)
    return turn.say("undo", "undone", whose=whose, **await _in_words(turn, done.events))


#: What is said to be taken back, and the entries that are that.
_UNDONE: dict[str, frozenset[EventKind]] = {
    **{verb: frozenset({kind}) for verb, kind in _KINDS.items()},
    "move": frozenset({EventKind.MOVED}),
    "lose": frozenset({EventKind.LOST}),
    "add": frozenset({EventKind.ADDED}),
}


def _is_said(turn: Turn, last: Sequence[Event]) -> bool:
    """Whether the last entry is what was said to be taken back; any, where nothing was said."""
    order = turn.order
    if order.verb != "undo" or turn.incoming.tapped_at is not None:
        return True
    kinds = _UNDONE.get(order.asks_kind or "")
    if kinds is not None and kinds.isdisjoint(e.kind for e in last):
        return False
    named = {p.id for p in pick(order.target, turn.collection)} if order.target.names else set()
    return not named or not named.isdisjoint({e.plant_id for e in last})


async def _in_words(turn: Turn, events: Sequence[Event]) -> dict[str, Any]:
    """What entries were and whom they were about."""
    told = [e for e in events if not rescue_log.is_overfed(e)]
    kinds = _done_to_them(list(dict.fromkeys(e.kind for e in told)))
    paused = any(rescue_log.is_pause(e) for e in told)
    names = ["event-pause" if paused and k is EventKind.READING else f"event-{k}" for k in kinds]
    names = names or ["event-overfed"]
    about = labels(await _as_they_are(turn, {e.plant_id for e in events}), turn.words)
    listed = turn.words.listed([turn.words.say(name) for name in names])
    return {"what": listed, "plants": about or "none"}


async def blamed(turn: Turn) -> out.Answer:
    """'You were wrong': nothing is taken back on that alone."""
    return turn.say("explain", "argue-stays") if has_last(turn) else turn.ask("ask-wrong")


async def _as_they_are(turn: Turn, ids: set[int | None]) -> list[Plant]:
    """The plants of entries that were taken back, as they are now; as they were, where gone."""
    wanted = {i for i in ids if i is not None}
    async with turn.records.reading() as session:
        now = {p.id: p for p in await plants.some(session, turn.owner_id, wanted)}
    known = {p.id: p for p in turn.collection.plants if p.id in wanted}
    return [p for _, p in sorted({**known, **now}.items())]


def _done_to_them(kinds: list[EventKind]) -> list[EventKind]:
    """What was done, without the taking apart of an entry that it was done to a part of."""
    apart = {EventKind.ADDED, EventKind.CORRECTED}
    if not apart <= set(kinds):
        return kinds
    return [k for k in kinds if k not in apart | CARE] or [EventKind.CORRECTED]


async def history(turn: Turn) -> out.Answer:
    """What plants got, by day."""
    since = day_since(turn.order.when, turn.today)
    collection = turn.collection
    found = pick(turn.order.target, collection, turn.last_plants)
    named = {fold(name) for name in turn.order.gone}
    found += [p for p in collection.gone if p.name_key in named]
    async with turn.records.reading() as session:
        if not found and not turn.order.target.empty:
            return turn.ask(
                "ask-not-on-record",
                meant=_meant(turn),
                known=labels(collection.plants[:5], turn.words) or "none",
            )
        wanted = [_KINDS[turn.order.asks_kind]] if turn.order.asks_kind else list(_SHOWN)
        if found and len(found) <= 20:
            events = [
                e
                for p in found
                for e in await log.history(session, turn.owner_id, p.id, since=since, kinds=wanted)
            ]
        else:
            ids = {p.id for p in found}
            listed = await log.entries(session, turn.owner_id, since=since, kinds=wanted)
            events = [e for e in listed if not ids or e.plant_id in ids]
        shelf = await products.listing(session, turn.owner_id, include_removed=True)
    events.sort(key=lambda e: (e.on, e.id))
    whole = not found or len(found) == len(collection.plants) > 1
    about = "none" if whole else labels(found, turn.words)
    collection = replace(collection, products=tuple(shelf))
    if not events:
        return turn.say("history", "history-none", plants=about)
    lines = [turn.words.say("history-head", plants=about)]
    listed_lines = _by_day(events, collection, turn, single=len(found) == 1)
    if len(listed_lines) > _MOST_LINES:
        lines.append(turn.words.say("history-more", count=len(listed_lines) - _MOST_LINES))
    lines += listed_lines[-_MOST_LINES:]
    rows = [
        {"on": e.on.isoformat(), "kind": str(e.kind), "plant": e.plant_id, **_told(e)}
        for e in events
    ]
    return turn.tell("history", lines, details={"entries": rows})


def _told(event: Event) -> dict[str, Any]:
    """What was said of an entry, without who said it."""
    return {k: v for k, v in event.details.items() if k != "by"}


def _who(by: object, turn: Turn) -> str:
    """Who said something in a group, as the reader may know them."""
    if by == turn.member:
        return turn.words.say("diary-you")
    named = isinstance(by, str) and readable(by)
    return str(by) if named else turn.words.say("diary-member")


def _meant(turn: Turn) -> str:
    return plants_said(turn.order.target, turn.words)


def _by_day(
    events: Iterable[Event], collection: Collection, turn: Turn, *, single: bool
) -> list[str]:
    """One line a day and thing done, with the plants where it was not one, and who in a group."""
    by_id = {p.id: p for p in (*collection.plants, *collection.gone)}
    shelf = {p.id: p for p in collection.products}
    grouped: dict[tuple[date, str, str], list[int | None]] = {}
    for event in events:
        by = event.details.get("by")
        said_by = _who(by, turn) if by is not None and turn.member is not None else ""
        thing = (event.on, _what(event, shelf, turn), said_by)
        grouped.setdefault(thing, []).append(event.plant_id)
    lines = []
    for (on, what, said_by), ids in grouped.items():
        told = f" ({said_by})" if said_by else ""
        for times, of_so_many in _by_times(ids).items():
            by_all = (p.id for p in collection.plants)
            plants = [by_id[i] for i in of_so_many if i in by_id]
            everybody = {*by_all} == {p.id for p in plants} and len(plants) > 3
            whom = turn.words.say("all-plants") if everybody else labels(plants, turn.words)
            who = "" if single or not plants else f": {whom}"
            often = f"{times} × " if times > 1 else ""
            lines.append(f"- {turn.words.day(on, turn.today)}{told}: {often}{what}{who}")
    return lines


def _by_times(ids: list[int | None]) -> dict[int, list[int | None]]:
    """Plants by how often they stand in a list; a plant that got a thing twice counts once."""
    found: dict[int, list[int | None]] = {}
    for plant, times in Counter(ids).items():
        found.setdefault(times, []).append(plant)
    return found


def _what(event: Event, shelf: dict[int, Product], turn: Turn) -> str:
    words, details = turn.words, event.details
    facts = []
    if event.kind is EventKind.FED:
        if isinstance(details.get("strength"), float | int):
            facts.append(_of_label(float(details["strength"]), words))
        product = shelf.get(event.product_id or 0)
        if product is not None:
            facts.append(title(product, turn))
        elif details.get("analysis"):
            facts.append("-".join(words.number(a) for a in details["analysis"]))
    elif event.kind is EventKind.READING and "runoff_ec_ms_cm" in details:
        facts.append(words.say("ec", ec=words.number(details["runoff_ec_ms_cm"])))
    elif rescue_log.is_overfed(event):
        return words.say("event-overfed")
    elif event.kind is EventKind.READING and "rescue" in details:
        return words.say("event-rescue", cause=str(details["rescue"]).replace("_", "-"))
    elif event.kind is EventKind.GROWTH and event.after.get("growth"):
        facts.append(words.say(f"growth-{event.after['growth']}"))
    elif event.kind is EventKind.REPOT and event.after.get("medium"):
        facts.append(words.say(f"medium-{event.after['medium']}"))
    what = words.say(f"event-{event.kind}")
    return f"{what} ({', '.join(facts)})" if facts else what
