"""Plants on record: add, rename, move, repot, growth, lost, and which are there."""

from __future__ import annotations

from collections.abc import Awaitable, Callable, Sequence
from dataclasses import replace
from datetime import date

from bot.conversation import answer as out
from bot.conversation.collection import (
    Collection,
    described,
    has_traits,
    is_of,
    kind_of,
    label,
    labels,
    pick,
    places_meant,
    plants_said,
)
from bot.conversation.listening import listen
from bot.conversation.turn import Turn, day_done, day_past
from bot.conversation.turns import having, naming, shelf
from bot.conversation.turns.splitting import split
from bot.conversation.turns.standing.advice import Logged, due
from bot.conversation.turns.standing.pot_logs import logged
from bot.records import log, places, plants
from bot.records.errors import ChangedSince
from bot.records.models import Plant
from grammar import Names, PlantSaid, Target

#: So many to choose from are listed.
_MOST_SHOWN = 8
#: More alike in one entry than any home has.
MOST_ALIKE = 10_000
_NAME_SLOTS = (
    "volume_l",
    "analysis",
    "strength",
    "medium",
    "season",
    "month",
    "growth",
    "regime",
    "count",
    "water",
    "label_rate",
    "form",
    "target_n_mg_l",
)


# --- adding ------------------------------------------------------------------------------------


async def add(turn: Turn) -> out.Answer:
    """Put plants on record."""
    asked = having.asked_first(turn)
    if isinstance(asked, out.Answer):
        return asked
    said, notes = asked
    for plant in said:
        if plant.name and (problem := name_means(plant.name, turn)):
            return turn.refuse("refuse-name-means", name=plant.name, meaning=problem)
        if plant.count is not None and not 1 <= plant.count <= MOST_ALIKE:
            return turn.refuse("refuse-count", most=turn.words.number(MOST_ALIKE))
    called = await naming.named(turn)
    if called is not None:
        return called if isinstance(called, out.Answer) else which(turn, turn.collection, called)
    vague = turn.order.when is not None and turn.order.when.kind in ("some", "year")
    on = turn.today if vague else day_past(turn.order.when, turn.today)  # 'bought last year'
    if not turn.collection.plants:  # reminders are offered then to who administers
        await turn.administers()
    async with turn.writing() as told:
        added = [await _add_one(told, plant, on) for plant in said]
        turn.keep_plants(added)
        standing = tuple(await places.listing(told.session, told.owner_id))
    collection = replace(turn.collection, places=standing)
    lines = [
        turn.words.say(
            "plants-added", plants="; ".join(described(p, collection, turn.words) for p in added)
        )
    ]
    lines += [*notes, _still_unknown(said, turn)]
    if not turn.collection.plants:
        hint = "plants-first-plan" if turn.collection.products else "plants-first-hint"
        lines.append(turn.words.say(hint))
    return turn.tell("plants", lines, choices=("undo",))


async def _add_one(told: log.Said, said: PlantSaid, on: date) -> Plant:
    place_id = None
    if said.place:
        place_id = (await places.find_or_add(told.session, told.owner_id, said.place)).id
    return await plants.add(
        told,
        name=said.name,
        genus=said.genus,
        detail=" ".join(said.traits) or None,
        count=said.count or 1,
        medium=said.medium,
        pot_cm=said.pot_cm,
        place_id=place_id,
        growth=said.growth,
        growth_since=on if said.growth else None,
        added_on=on,
    )


def _still_unknown(said: Sequence[PlantSaid], turn: Turn) -> str:
    """What would make the advice better, in one line."""
    missing = []
    if any(p.genus is None for p in said):
        missing.append("unknown-genus")
    if any(p.medium is None for p in said):
        missing.append("unknown-medium")
    if any(p.pot_cm is None and p.medium != "mounted" for p in said):
        missing.append("unknown-pot")
    if not missing:
        return ""
    name = next((p.name or p.genus for p in said if p.name or p.genus), "Ruby")
    items = turn.words.listed([turn.words.say(m) for m in missing])
    return turn.words.say("plants-unknown", items=items, name=name)


def name_means(name: str, turn: Turn) -> str:
    """What a name would be read as in a message; empty where it can be a name."""
    reading = listen(name, usual=turn.reading.tongue)
    if reading.read_as:  # a slip for a word is no word
        return ""
    if not any(c.isalpha() for c in name):
        return turn.words.say("name-is-number")
    for slot in _NAME_SLOTS:
        value = getattr(reading, slot)
        if value is not None and not (slot == "count" and reading.genera):
            return turn.words.say("name-is-slot", slot=slot)
    if reading.genera:
        return turn.words.say("name-is-slot", slot="genus")
    order = turn.read_again(name, Names()).order
    wanted = order is not None and (order.verb != "dose" or order.when is not None)
    return turn.words.say("name-is-order") if wanted else ""


# --- which plants are meant ---------------------------------------------------------------------

Act = Callable[[Turn, Collection, list[Plant]], Awaitable[out.Answer]]


async def on_target(turn: Turn, act: Act, *, one: bool = False, some: str = "ask") -> out.Answer:
    """Do something with the plants that are meant; ask where it is not clear which.

    Parameters
    ----------
    turn : the message
    act : what to do with them
    one : whether it can only be one entry, unless all were said
    some : where fewer are meant than an entry holds: 'split' it, 'ask', or let the act 'count'
    """
    collection = turn.collection
    target = turn.order.target
    if turn.chosen is not None:
        chosen = [p for p in collection.plants if p.id in turn.chosen]
        return await _act_on(turn, collection, chosen, act, some)
    unknown = _unknown_place(target, collection)
    if unknown is not None:
        return _not_found(turn, collection, unknown)
    if target.not_traits and not any(has_traits(p, target.not_traits) for p in collection.plants):
        known = labels(collection.plants[:5], turn.words)
        return turn.ask("ask-not-on-record", meant=" ".join(target.not_traits), known=known)
    found = pick(target, collection, turn.last_plants)
    if not found:
        return _not_found(turn, collection)
    turn.keep_plants(found)
    them = target.again and not target.named  # 'a 2 cattleyas las aboné' says of whom
    several = them or target.everything or len(target.names) > 1
    if one and len(found) > 1 and not several:
        return which(turn, collection, found)
    if several:
        return await act(turn, collection, found)
    return await _act_on(turn, collection, found, act, some)


async def _act_on(
    turn: Turn, collection: Collection, found: list[Plant], act: Act, some: str
) -> out.Answer:
    """Do it to plants; where fewer were said than there are, to so many."""
    fewer, held = turn.reading.count, sum(p.count for p in found)
    if fewer is None or some == "count" or not 0 < fewer < held:
        return await act(turn, collection, found)
    if len(found) > 1:
        return which(turn, collection, found)
    if some != "split":
        kind = kind_of(found[0], turn.words) or label(found[0], turn.words)
        said = label(found[0], turn.words)
        return turn.ask("ask-part-of", plants=said, fewer=fewer, kind=kind)
    async with turn.writing() as told:
        part = await split(told, found[0], fewer)
        (rest_of,) = await plants.standing(told, [found[0].id])
        turn.keep_plants([part])
        answer = await act(replace(turn, told=told), collection, [part])
    kind = kind_of(found[0], turn.words) or label(found[0], turn.words)
    rest = [turn.words.say("plants-split", left=rest_of.count, kind=kind)]
    rest += _meanwhile(turn, held, rest_of.count + fewer)
    return answer.model_copy(update={"reply": "\n".join([answer.reply, *rest])})


def _meanwhile(turn: Turn, held: int, now: int) -> list[str]:
    """What to say where there were others than was read: somebody else was quicker."""
    return [] if held == now else [turn.words.say("plants-meanwhile", held=now)]


def which(turn: Turn, collection: Collection, found: list[Plant], text: str = "") -> out.Answer:
    """Ask which of several plants is meant; the answer may be numbers, names or 'all'.

    Parameters
    ----------
    turn : the message, as it was first said
    collection, found : those to choose from
    text : the words of that message, where they are not those of the incoming one
    """
    shown = found[:_MOST_SHOWN]
    lines = [f"{i}. {described(p, collection, turn.words)}" for i, p in enumerate(shown, 1)]
    some = turn.order.count or turn.reading.count
    held = sum(p.count for p in found)
    fewer = some is not None and some < held
    code = "ask-which-some" if fewer else "ask-which-plant"
    question = turn.words.say(code, count=held if fewer else len(found), some=some or 0)
    numbers = [str(i) for i in range(1, len(shown) + 1)]
    answer = turn.tell("ask", [question, *lines], choices=(*numbers, *(() if fewer else ("all",))))
    waiting = {
        "kind": "which",
        "text": text or turn.incoming.text,
        "ids": [p.id for p in shown],
        "all": [p.id for p in found],
        "some": some if fewer else None,
    }
    return answer.model_copy(update={"ask": answer.reply, "details": {"waiting": waiting}})


def _unknown_place(target: Target, collection: Collection) -> str | None:
    """One of several places, or one that was excepted, where nothing stands."""
    further = (*target.more_places, target.place) if target.more_places else ()
    wanted = [p for p in (*further, *target.not_places) if p]
    return next((p for p in wanted if not places_meant(p, collection)), None)


def _not_found(turn: Turn, collection: Collection, place: str | None = None) -> out.Answer:
    target = turn.order.target
    if not collection.plants:
        return turn.ask("ask-no-plants-yet")
    if target.empty and not target.traits:
        if 1 < len(collection.plants) <= _MOST_SHOWN:
            return which(turn, collection, list(collection.plants))
        return turn.ask("ask-which-plants")
    if place is not None:
        standing = turn.words.listed([p.name for p in collection.places])
        return turn.ask("ask-not-on-record", meant=place, known=standing or "none")
    near = [p for p in collection.plants if is_of(p, target.genera)][:5]
    known = labels(near or collection.plants[:5], turn.words)
    if target.again and not target.named:
        return turn.ask("ask-them", known=known)
    return turn.ask("ask-not-on-record", meant=plants_said(target, turn.words), known=known)


async def exception(turn: Turn) -> out.Answer:
    """Those that were excepted of all are not known: nothing is done."""
    if not turn.collection.plants:
        return turn.ask("ask-no-plants-yet")
    known = labels(turn.collection.plants[:5], turn.words)
    return turn.ask("ask-not-on-record", meant=turn.order.text.strip("\"'"), known=known)


# --- changes -------------------------------------------------------------------------------------


async def rename(turn: Turn) -> out.Answer:
    """Give a plant, or a product, another name."""
    name = turn.order.name or ""
    if turn.order.products and not turn.order.target.named:
        return await shelf.rename(turn)
    if problem := name_means(name, turn):
        return turn.refuse("refuse-name-means", name=name, meaning=problem)
    return await on_target(turn, _rename, one=True, some="split")


async def _rename(turn: Turn, collection: Collection, found: list[Plant]) -> out.Answer:
    name = turn.order.name or ""
    if len(found) > 1:
        return which(turn, collection, found)
    before = described(found[0], collection, turn.words)
    async with turn.writing() as told:
        await plants.rename(told, found[0].id, name)
    return turn.say("plants", "plants-renamed", before=before, name=name, choices=("undo",))


async def move(turn: Turn) -> out.Answer:
    """Put plants in another place."""
    return await on_target(turn, _move, some="split")


async def _move(turn: Turn, collection: Collection, found: list[Plant]) -> out.Answer:
    async with turn.writing() as told:
        place = await places.find_or_add(told.session, told.owner_id, turn.order.place or "")
        await plants.move(told, [p.id for p in found], place.id)
    return turn.say(
        "plants",
        "plants-moved",
        plants=labels(found, turn.words),
        place=place.name,
        choices=("undo",),
    )


async def repot(turn: Turn) -> out.Answer:
    """Write down that plants were repotted."""
    return await on_target(turn, _repot, one=True, some="split")


async def _repot(turn: Turn, collection: Collection, found: list[Plant]) -> out.Answer:
    on = day_done(turn, turn.order.when)
    medium, pot_cm = turn.reading.medium, turn.reading.pot_cm
    async with turn.writing(on) as told:
        await plants.repot(told, [p.id for p in found], on=on, medium=medium, pot_cm=pot_cm)
    facts = [
        turn.words.say(f"medium-{medium}") if medium else "",
        turn.words.pot(pot_cm) if pot_cm else "",
    ]
    lines = [
        turn.words.say(
            "plants-repotted",
            plants=labels(found, turn.words),
            day=turn.words.day(on, turn.today),
            facts=", ".join(f for f in facts if f) or "none",
        ),
        turn.words.say("plants-repotted-note"),
    ]
    return turn.tell("plants", lines, choices=("undo",))


async def growth(turn: Turn) -> out.Answer:
    """Write down how plants grow."""
    return await on_target(turn, _growth, one=True, some="split")


async def _growth(turn: Turn, collection: Collection, found: list[Plant]) -> out.Answer:
    state = turn.reading.growth or ""
    on = day_past(turn.order.when, turn.today)
    async with turn.writing(on) as told:
        await plants.set_growth(told, [p.id for p in found], state, on=on)
    lines = [
        turn.words.say(
            "plants-growth",
            plants=labels(found, turn.words),
            growth=turn.words.say(f"growth-{state}"),
        )
    ]
    if state == "resting":
        lines.append(turn.words.say("plants-growth-rest"))
    return turn.tell("plants", lines, choices=("undo",))


async def correct(turn: Turn) -> out.Answer:
    """Write down what is known of plants: the pot, the medium, the water they take."""
    return await on_target(turn, _correct, some="split")


async def _correct(turn: Turn, collection: Collection, found: list[Plant]) -> out.Answer:
    reading = turn.reading
    fields: plants.PlantFields = {}
    for said in turn.order.plants:
        fields["genus"] = said.genus
        if said.traits:
            fields["detail"] = " ".join(said.traits)
    if reading.medium:
        fields["medium"] = reading.medium
    if reading.pot_cm:
        fields["pot_cm"] = reading.pot_cm
    if reading.volume_l:
        fields["water_ml"] = 1000 * reading.volume_l
    async with turn.writing() as told:
        if turn.order.place:
            place = await places.find_or_add(told.session, told.owner_id, turn.order.place)
            await plants.move(told, [p.id for p in found], place.id)
        await plants.correct(told, [p.id for p in found], **fields)
        now = [await plants.get(told.session, told.owner_id, p.id) for p in found[:6]]
        standing = tuple(await places.listing(told.session, told.owner_id))
    if reading.volume_l:
        return turn.say(
            "plants",
            "plants-water",
            plants=labels(found, turn.words),
            volume=turn.words.say(
                "volume-millilitres", millilitres=turn.words.number(1000 * reading.volume_l, 0)
            ),
            count=sum(p.count for p in found),
            choices=("undo",),
        )
    collection = replace(collection, places=standing)
    shown = "; ".join(described(p, collection, turn.words) for p in now)
    more = len(found) - len(now)
    if more:
        shown += "; " + turn.words.say("plants-more", count=more)
    return turn.say("plants", "plants-corrected", plants=shown, choices=("undo",))


async def lose(turn: Turn) -> out.Answer:
    """Take plants out of the collection; one of several alike is counted down."""
    return await on_target(turn, _lose, one=True, some="count")


async def lose_apart(turn: Turn) -> out.Answer:
    """Numbers of several kinds that are gone: nothing is changed."""
    return turn.ask("ask-lost-apart")


async def _lose(turn: Turn, collection: Collection, found: list[Plant]) -> out.Answer:
    on = day_past(turn.order.when, turn.today)
    plant = found[0]
    one = turn.order.text == "one" and len(found) == 1 and plant.count > 1
    gone = 1 if one else turn.order.count
    held = sum(p.count for p in found)
    if gone is not None and len(found) > 1 and gone < held:
        return which(turn, collection, found)  # 'sold two of them', of more
    if gone is not None and gone > held and turn.chosen is None and not turn.order.target.names:
        return turn.ask("ask-more-than", plants=labels(found, turn.words), count=gone, held=held,
                        kind=kind_of(plant, turn.words) or label(plant, turn.words))  # fmt: skip
    async with turn.writing(on) as told:
        found = await plants.standing(told, [p.id for p in found])
        now = sum(p.count for p in found)
        if now != held and gone is not None and (gone > now or len(found) > 1):
            raise ChangedSince("there are fewer or more by now")
        left = 0 if gone is None or len(found) > 1 else max(0, now - gone)
        if left:
            await plants.correct(told, [found[0].id], count=left)
        else:
            await plants.lose(told, [p.id for p in found], on=on)
    if left:
        kind = kind_of(plant, turn.words) or "none"
        said = turn.words.say("plants-fewer", gone=gone or 0, left=left, kind=kind)
    else:
        said = turn.words.say("plants-lost", plants=labels(found, turn.words))
    return turn.tell("plants", [said, *_meanwhile(turn, held, now)], choices=("undo",))


# --- the list ---------------------------------------------------------------------------------


async def listing(turn: Turn) -> out.Answer:
    """The plants by place, with what each is due today."""
    collection = turn.collection
    if not collection.plants:
        private = turn.incoming.group is None
        return turn.say("plants", "plants-none" if private else "plants-none-group")
    target = turn.order.target
    narrowed = bool(target.named_one or target.medium or target.excepts)
    shown = pick(target, collection, turn.last_plants) if narrowed else list(collection.plants)
    if not shown:
        return _not_found(turn, collection)
    by_place: dict[str, list[Plant]] = {}
    for plant in shown:
        by_place.setdefault(collection.place_of(plant), []).append(plant)
    total = sum(p.count for p in shown)
    lines = [turn.words.say("plants-count", count=total, places=len(by_place))]
    known = await logged(turn, collection, shown, turn.today)
    for place, standing in by_place.items():
        lines.append(turn.words.say("plants-place", place=place or "none"))
        lines += _entries(standing, known, turn)
    return turn.tell("plants", lines, details={"plants": [_row(p, collection) for p in shown]})


#: Entries of one place that are listed one by one; more are summed up by kind.
_LISTED = 8


def _entries(standing: list[Plant], known: dict[int, Logged], turn: Turn) -> list[str]:
    dues = [due(p, turn, logged=known.get(p.id, Logged())) for p in standing]
    if len(standing) <= _LISTED:
        return [f"- {_short(p, turn)}: {d}" for p, d in zip(standing, dues, strict=True)]
    by_due: dict[str, list[Plant]] = {}
    for plant, what in zip(standing, dues, strict=True):
        by_due.setdefault(what, []).append(plant)
    return [f"- {labels(group, turn.words)}: {what}" for what, group in by_due.items()]


def _short(plant: Plant, turn: Turn) -> str:
    facts = [
        plant.genus if plant.name else "",
        turn.words.say(f"medium-{plant.medium}") if plant.medium else "",
    ]
    known = ", ".join(f for f in facts if f)
    return f"{label(plant, turn.words)} ({known})" if known else label(plant, turn.words)


def _row(plant: Plant, collection: Collection) -> dict[str, object]:
    return {
        "name": plant.name,
        "genus": plant.genus,
        "detail": plant.detail,
        "count": plant.count,
        "medium": plant.medium,
        "pot_cm": plant.pot_cm,
        "growth": plant.growth,
        "place": collection.place_of(plant) or None,
    }
