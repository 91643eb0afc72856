"""What the advice rests on: the water, the measuring kit, where somebody lives."""

from __future__ import annotations

import asyncio
from collections.abc import Mapping
from dataclasses import replace
from typing import TYPE_CHECKING, Any

from bot.conversation import answer as out
from bot.conversation.collection import Collection, labels
from bot.conversation.turn import Turn
from bot.conversation.turns.plants import on_target
from bot.records import log, owners, plants, waters
from bot.records.kinds import Hemisphere, Units
from bot.records.models import Plant, Water
from grammar import Order, to_canonical

if TYPE_CHECKING:
    from bot.conversation.homes import Home

_UNITS = {"gallons": Units.US, "imperial": Units.IMPERIAL, "metric": Units.METRIC}
#: A can of this size or more nobody lifts, and a scale or syringe this coarse shows nothing.
MOST_CAN_L = 200.0
LEAST_CAN_L = 0.1
MOST_STEP = 50.0


async def water(turn: Turn) -> out.Answer:
    """Put a water on record; the first one of all becomes the one that is meant."""
    said = turn.reading.water
    assert said is not None  # the form needs one
    figures = {
        "hardness_mg_l_caco3": said.hardness_mg_l_caco3,
        "ec_ms_cm": said.ec_ms_cm,
        "alkalinity_mg_l_caco3": said.alkalinity_mg_l_caco3,
    }
    async with turn.writing() as told:
        row = await of_kind(told, said.kind, turn.order.name, figures)
        used = next((w for w in turn.collection.waters if w.is_default), None)
        only = len(await waters.listing(told.session, told.owner_id)) == 1
        changes = turn.order.asks_kind == "use" and (used is None or used.id != row.id)
        if only or changes:
            await waters.make_default(told, row.id)
    lines = [turn.words.say("water-recorded", water=described(row, turn))]
    lines += _which_is_used(turn, row, used, changed=changes and not only)
    if said.kind == "softened":
        lines.append(turn.words.say("caution-softened-water"))
    return turn.tell("water", lines, choices=("undo",))


def _which_is_used(turn: Turn, row: Water, used: Water | None, *, changed: bool) -> list[str]:
    """Which of several waters a dose rests on, and how to have another."""
    words = turn.words
    if changed:
        return [words.say("water-used-now")]
    if used is None or used.id == row.id:
        return []
    name = row.name or words.say(f"water-{row.kind}")
    return [words.say("water-used-still", used=described(used, turn), water=name)]


async def of_kind(
    told: log.Said,
    kind: str,
    name: str | None,
    figures: Mapping[str, float | None],
    ions: dict[str, float] | None = None,
) -> Water:
    """The owner's water of a kind with these figures in it, made where there is none.

    Figures that are told without `ions` put an older report aside: they would contradict it.
    """
    listed = await waters.listing(told.session, told.owner_id, kind=kind)
    same = next((w for w in listed if (w.name or None) == name), None)
    known: dict[str, Any] = {k: v for k, v in figures.items() if v is not None}
    if ions and same is not None and same.ions:
        known = dict(figures)  # what followed from the report before goes with it
    if known or ions:
        known["ions"] = ions
    if same is None:
        return await waters.add(told, kind=kind, name=name, **known)
    return await waters.change(told, same.id, **known) if known else same


async def water_for(turn: Turn) -> out.Answer:
    """Say which water plants get."""
    return await on_target(turn, _water_for, some="split")


async def _water_for(turn: Turn, collection: Collection, found: list[Plant]) -> out.Answer:
    said = turn.reading.water
    assert said is not None
    figures = {
        "hardness_mg_l_caco3": said.hardness_mg_l_caco3,
        "ec_ms_cm": said.ec_ms_cm,
        "alkalinity_mg_l_caco3": said.alkalinity_mg_l_caco3,
    }
    async with turn.writing() as told:
        row = await of_kind(told, said.kind, None, figures)
        await plants.set_water(told, [p.id for p in found], row.id)
    return turn.say(
        "water",
        "water-for",
        plants=labels(found, turn.words),
        water=described(row, turn),
        choices=("undo",),
    )


def figure(quantity: str, value: float, turn: Turn) -> str:
    """A hardness [mg/L CaCO3] or an EC [mS/cm] of a water, in words."""
    words = turn.words
    if quantity == "ec_ms_cm":
        return words.say("ec", ec=words.number(value))
    german = words.significant(value / to_canonical(1.0, "german_degree"))
    return words.say("hardness", german=german, caco3=words.number(value, 0))


def described(row: Water, turn: Turn) -> str:
    """A water with its figures."""
    words = turn.words
    facts = []
    if row.hardness_mg_l_caco3 is not None:
        facts.append(figure("hardness_mg_l_caco3", row.hardness_mg_l_caco3, turn))
    if row.ec_ms_cm is not None:
        facts.append(figure("ec_ms_cm", row.ec_ms_cm, turn))
    if row.alkalinity_mg_l_caco3 is not None:
        facts.append(words.say("alkalinity", caco3=words.number(row.alkalinity_mg_l_caco3, 0)))
    kind = row.name or words.say(f"water-{row.kind}")
    return f"{kind} ({', '.join(facts)})" if facts else kind


async def kit(turn: Turn) -> out.Answer:
    """Put the scale, the syringe, the can or the measures on record."""
    reading, order = turn.reading, turn.order
    if order.text == "syringe":
        return turn.ask("ask-syringe-step")
    settings: dict[str, Any] = {}
    said = []
    number = turn.words.number
    if reading.scale_step_g is not None:
        if not 0 < reading.scale_step_g <= MOST_STEP:
            return turn.refuse("refuse-step", step=number(reading.scale_step_g))
        settings["scale_step_g"] = reading.scale_step_g
        said.append(turn.words.say("kit-scale", step=number(reading.scale_step_g, 4)))
    if order.syringe_step_ml is not None:
        settings["syringe_step_ml"] = order.syringe_step_ml
        said.append(turn.words.say("kit-syringe", step=number(order.syringe_step_ml, 3)))
    if order.text == "can" and reading.volume_l is not None:
        if not LEAST_CAN_L <= reading.volume_l <= MOST_CAN_L:
            return turn.refuse("refuse-can", most=number(MOST_CAN_L))
        settings["can_l"] = reading.volume_l
        said.append(turn.words.say("kit-can", volume=turn.words.volume(reading.volume_l)))
    if order.text in _UNITS:
        settings["units"] = _UNITS[order.text]
        said.append(turn.words.say(f"kit-units-{_UNITS[order.text]}"))
    if order.text == "spoons":
        settings["spoon"] = True
        said.append(turn.words.say("kit-spoons"))
    async with turn.writing() as told:
        await owners.change_settings(told, **settings)
    return turn.say("kit", "kit-recorded", kit=turn.words.listed(said), choices=("undo",))


async def home(turn: Turn) -> out.Answer:
    """Where somebody lives: the time zone and the hemisphere."""
    text = turn.order.text
    if text in ("south", "north"):
        side = Hemisphere(text)
        async with turn.writing() as told:
            await owners.change_settings(told, hemisphere=side)
        return turn.say("home", f"home-{text}", choices=("undo",))
    found, besides = await _town(turn)
    waiting = {"waiting": {"kind": "home", "town": turn.order.parts[:1]}} if _may_wait(turn) else {}
    if not found:
        town = turn.order.parts[0] if turn.order.parts else text
        answer = turn.ask("ask-home", text=town[:60])
        return answer.model_copy(update={"details": {**waiting, "besides": besides}})
    place = found[0]
    async with turn.writing() as told:
        await owners.change_settings(
            told,
            zone=place.zone,
            place_name=place.name[:120],
            hemisphere=Hemisphere.SOUTH if place.south else Hemisphere.NORTH,
        )
    lines = [
        turn.words.say(
            "home-recorded",
            place=place.name,
            country=place.country or "none",
            zone=place.zone,
            side="south" if place.south else "north",
        )
    ]
    others = [h for h in found[1:] if h.listed_as == place.listed_as and h.zone != place.zone]
    if others:
        listed = turn.words.listed([f"{h.name}, {h.country}" for h in others[:2]], either=True)
        lines.append(turn.words.say("home-others", others=listed))
    details = {**(waiting if others else {}), "besides": besides}
    return turn.tell("home", lines, choices=("undo",), details=details)


def _may_wait(turn: Turn) -> bool:
    """Whether no other question of ours waits already."""
    return turn.question.get("kind") in (None, "home")


async def _town(turn: Turn) -> tuple[tuple[Home, ...], list[str]]:
    """The places that are meant, and what else the message says."""
    order = turn.order
    before = [order.unused] if order.unused else []
    parts = order.parts or (order.text,)
    said = [order.text, *(", ".join(parts[:n]) for n in range(len(parts) - 1, 0, -1))]
    for count, text in zip(range(len(parts), 0, -1), said, strict=True):
        if found := await _looked_up(text, turn):
            return found, [*before, *parts[count:]]
    words = parts[0].split()
    for count in range(len(words) - 1, max(len(words) - _MOST_REGION - 1, 0), -1):
        if found := await _looked_up(" ".join(words[:count]), turn):
            return found, [*before, " ".join(words[count:]), *parts[1:]]
    return (), [*before, *parts[1:]]


#: A region that is not known has no more words: 'Guadalajara Jalisco'.
_MOST_REGION = 2


async def _looked_up(text: str, turn: Turn) -> tuple[Home, ...]:
    from bot.conversation.homes import find_home  # reads a table of towns

    return await asyncio.to_thread(find_home, text[:120], turn.words.language)


async def which(turn: Turn) -> Turn | None:
    """A bare town or country, right after we asked for it; None where it is something else."""
    text = turn.incoming.text.strip()
    words = text.split()
    if not 0 < len(words) <= _MOST_TOWN or any(c.isdigit() for c in text) or "?" in text:
        return None
    town = ", ".join(turn.question.get("town") or ())
    for said in (text, f"{town}, {text}" if town else ""):
        if said and await _looked_up(said, turn):
            order = Order("home", text=said, parts=(said,))
            reading = replace(turn.reading, order=order, unknown=(), read_as=())
            return replace(turn, reading=reading)
    return None


async def says_else(turn: Turn, order: Order) -> bool:
    """Whether a bare text that could be a town is something else: mostly words that we know."""
    if turn.order.verb != "dose" or not order.text:  # 'I live in ...' is no bare text
        return False
    words = order.text.split()
    strange = sum(len(u.text.split()) for u in turn.reading.unknown)
    known = len(words) - strange
    if len(words) < 2 or known * 2 < len(words):
        return False
    return not await _looked_up(order.text, turn)


#: A town and its country have no more words.
_MOST_TOWN = 5


async def settings(turn: Turn) -> out.Answer:
    """What is on record of the person: home, kit and waters."""
    collection = turn.collection
    owner = turn.owner
    words, number = turn.words, turn.words.number
    lines = []
    if owner is not None:
        if owner.zone or owner.hemisphere:
            lines.append(
                words.say(
                    "home-line",
                    place=owner.place_name or "none",
                    zone=owner.zone or "none",
                    side=str(owner.hemisphere or "north"),
                )
            )
        tools = [
            words.say("kit-scale", step=number(owner.scale_step_g, 4))
            if owner.scale_step_g
            else "",
            words.say("kit-syringe", step=number(owner.syringe_step_ml, 3))
            if owner.syringe_step_ml
            else "",
            words.say("kit-can", volume=words.volume(owner.can_l)) if owner.can_l else "",
        ]
        known = [t for t in tools if t]
        if owner.spoon and not known:
            known.append(words.say("kit-spoons"))
        if owner.units:
            known.append(words.say(f"kit-units-{owner.units}"))
        if known:
            lines.append(words.say("kit-line", kit=words.listed(known)))
    for row in collection.waters:
        default = words.say("product-is-default") if row.is_default else ""
        lines.append(f"- {described(row, turn)}{default}")
    if owner is not None and owner.quiet:
        lines.append(words.say("quiet-line"))
    hours = turn.quiet
    if owner is not None and owner.quiet_from_min is not None and hours.start != hours.end:
        start, end = (words.clock(at) for at in (hours.start, hours.end))
        lines.append(words.say("reminder-quiet-so", start=start, end=end))
    if not lines:
        lines.append(words.say("settings-none"))
    plants = sum(p.count for p in collection.plants)
    if plants or collection.products:
        kept = words.say("settings-kept", plants=plants, feeds=len(collection.products))
        lines.append(kept)
    return turn.tell("settings", lines)


async def quiet(turn: Turn) -> out.Answer:
    """Answer in this group only when called by a command, or again whenever addressed."""
    if turn.incoming.group is None:
        return turn.say("settings", "quiet-private")
    wanted = turn.order.verb == "quiet"
    async with turn.writing() as told:
        await owners.change_settings(told, quiet=wanted)
    return turn.say("settings", "quiet-on" if wanted else "quiet-off", choices=("undo",))
