"""What an owner has, as one conversation turn sees it: loaded once, picked from, described."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace

from sqlalchemy.ext.asyncio import AsyncSession

from bot.conversation.wording import Wording
from bot.records import log, places, plants, products, waters
from bot.records.kinds import EventKind
from bot.records.models import Owner, Place, Plant, Product, Water
from bot.records.names import fold
from grammar import Names, PlantSaid, Target


@dataclass(frozen=True, slots=True)
class Collection:
    """Plants, products, waters and places of one owner; `gone` were taken off the list."""

    plants: tuple[Plant, ...] = ()
    products: tuple[Product, ...] = ()
    waters: tuple[Water, ...] = ()
    places: tuple[Place, ...] = ()
    gone: tuple[Plant, ...] = ()

    @property
    def names_gone(self) -> tuple[str, ...]:
        """Names of plants that were taken off the list, that none bears now."""
        borne = {p.name_key for p in self.plants}
        named = (p.name for p in self.gone if p.name and p.name_key not in borne)
        return tuple(dict.fromkeys(named))

    def place_of(self, plant: Plant) -> str:
        """The name of the place a plant stands in; empty where unknown."""
        return next((p.name for p in self.places if p.id == plant.place_id), "")

    def water_of(self, plant: Plant | None) -> Water | None:
        """The water a plant gets: its own, otherwise the owner's default."""
        if plant is not None and plant.water_id is not None:
            return next((w for w in self.waters if w.id == plant.water_id), None)
        return next((w for w in self.waters if w.is_default), None)

    def product_named(self, name: str) -> Product | None:
        """The product of a name."""
        key = fold(name)
        return next((p for p in self.products if p.name and fold(p.name) == key), None)

    @property
    def default_product(self) -> Product | None:
        """The product that is meant where none is named: the default, or the only one."""
        chosen = next((p for p in self.products if p.is_default), None)
        if chosen is None and len(self.products) == 1:
            return self.products[0]
        return chosen


async def load(session: AsyncSession, owner_id: int) -> Collection:
    """Everything the owner has, in the order in which it was added."""
    known = await plants.listing(session, owner_id, include_lost=True)
    return Collection(
        tuple(p for p in known if p.lost_on is None),
        tuple(await products.listing(session, owner_id)),
        tuple(await waters.listing(session, owner_id)),
        tuple(await places.listing(session, owner_id)),
        tuple(p for p in known if p.lost_on is not None),
    )


#: More changes than this are cheaper to load as a whole.
_MOST_CHANGES = 40
#: Kinds of entries that change more than the plant they are about.
_WIDER = frozenset({EventKind.PRODUCT, EventKind.WATER_SOURCE})


@dataclass(frozen=True, slots=True)
class Seen:
    """A collection as it was at an entry of the log; None where the log was empty.

    `replaced` is `Owner.replaced` as it was: an import may change the rows below the same log.
    """

    at: log.Passed | None
    collection: Collection
    replaced: int | None = None


async def first_seen(session: AsyncSession, owner: Owner) -> Seen:
    """Everything the owner has, with the entry it was seen at."""
    if not await log.anything(session, owner.id):
        return Seen(None, Collection(), owner.replaced)
    newest = await log.newest(session, owner.id)
    return Seen(newest, await load(session, owner.id), owner.replaced)


async def refreshed(session: AsyncSession, owner: Owner, seen: Seen) -> Seen | None:
    """The same with what the log changed since; None where it has to be loaded as a whole."""
    owner_id = owner.id
    if seen.replaced != owner.replaced:
        return None
    if seen.at is None:
        return None if await log.anything(session, owner_id) else seen
    passed = await log.passed_from(session, owner_id, seen.at.id, limit=_MOST_CHANGES + 1)
    if not passed or passed[0] != seen.at or len(passed) > _MOST_CHANGES:
        return None
    changes = passed[1:]
    if not changes:
        return seen
    ids = {c.plant_id for c in changes if c.plant_id is not None}
    if any(c.kind in _WIDER for c in changes):
        return None
    before = seen.collection
    changed = await plants.some(session, owner_id, ids, include_lost=True)
    kept = [p for p in (*before.plants, *before.gone) if p.id not in ids]
    known = sorted([*kept, *changed], key=lambda p: p.id)
    standing = tuple(p for p in known if p.lost_on is None)
    gone = tuple(p for p in known if p.lost_on is not None)
    spots = tuple(await places.listing(session, owner_id))
    now = replace(before, plants=standing, gone=gone, places=spots)
    return Seen(passed[-1], now, seen.replaced)


def names_in(collection: Collection) -> Names:
    """The names a message may use."""
    return Names(
        plants=tuple(p.name for p in collection.plants if p.name),
        products=tuple(p.name for p in collection.products if p.name),
        places=tuple(p.name for p in collection.places),
        gone=collection.names_gone,
        told_apart=tuple(
            dict.fromkeys(p.detail for p in collection.plants if p.detail and _told_apart(p))
        ),
    )


def _told_apart(plant: Plant) -> bool:
    """Whether a plant without a name is known by what tells it apart."""
    return plant.name is None and bool(plant.detail)


# --- picking -------------------------------------------------------------------------------


def places_meant(said: str, collection: Collection) -> list[Place]:
    """The places a phrase can mean: that of the name, otherwise those that share its words."""
    key = fold(said)
    exact = [p for p in collection.places if fold(p.name) == key]
    if exact:
        return exact
    words = set(key.split())
    return [
        p
        for p in collection.places
        if (held := set(fold(p.name).split())) <= words or words <= held
    ]


def pick(target: Target, collection: Collection, last: Sequence[int] = ()) -> list[Plant]:
    """The plants a message means.

    Parameters
    ----------
    target : as it was said
    collection : what the owner has
    last : those of the message before, for 'them'

    Returns
    -------
    list of Plant
        In the order they were added; empty where none fits or none was meant.
    """
    if target.again and not (target.names or target.genera or target.place or target.everything):
        return [p for p in collection.plants if p.id in last]
    if target.empty and not target.traits and not target.medium:
        return []
    wanted = {fold(n) for n in target.names}
    said = (target.place, *target.more_places) if target.place else ()
    spots = {p.id for place in said for p in places_meant(place, collection)}
    barred = {p.id for place in target.not_places for p in places_meant(place, collection)}
    return [
        plant
        for plant in collection.plants
        if _named(plant, wanted, target)
        and (not target.place or plant.place_id in spots)
        and (not target.medium or plant.medium == target.medium or plant.name in target.names)
        and (has_traits(plant, target.traits) or plant.name_key in wanted)
        and not _excepted(plant, target)
        and plant.place_id not in barred
    ]


def _named(plant: Plant, wanted: set[str], target: Target) -> bool:
    if not wanted and not target.genera:
        return True
    return _called(plant, wanted) or is_of(plant, target.genera)


def _called(plant: Plant, names: set[str]) -> bool:
    """Whether a plant has one of these names, or is told apart by it where it has none."""
    key = fold(plant.detail or "") if _told_apart(plant) else plant.name_key
    return key is not None and key in names


def is_of(plant: Plant, genera: Sequence[str]) -> bool:
    """Whether a plant is of one of these kinds; a genus holds its types."""
    return plant.genus is not None and any(
        plant.genus == g or plant.genus.startswith(f"{g} ") for g in genera
    )


def has_traits(plant: Plant, traits: Sequence[str]) -> bool:
    """Whether all of these words tell a plant apart."""
    if not traits:
        return True
    held = set(fold(plant.detail or "").split())
    return all(set(fold(trait).split()) <= held for trait in traits)


def _excepted(plant: Plant, target: Target) -> bool:
    if _called(plant, {fold(n) for n in target.not_names}):
        return True
    if not (target.not_genera or target.not_traits or target.not_media):
        return False
    kind = not target.not_genera or is_of(plant, target.not_genera)
    grown = not target.not_media or plant.medium in target.not_media
    return kind and grown and has_traits(plant, target.not_traits)


# --- describing ------------------------------------------------------------------------------


def kind_of(plant: Plant, words: Wording) -> str:
    """What kind a plant is, with what tells it apart, in the order of the language."""
    return _kind(plant.detail or "", plant.genus or "", words)


def _kind(traits: str, kind: str, words: Wording) -> str:
    if not (traits and kind):
        return traits or kind
    return words.say("plant-kind", traits=traits, kind=kind)


def plants_said(target: Target, words: Wording) -> str:
    """Which plants were meant, in a few words."""
    kind = _kind(" ".join(target.traits), " ".join([*target.names, *target.genera]), words)
    return " ".join(t for t in (kind, *target.more_places, target.place) if t)


def label(plant: Plant, words: Wording) -> str:
    """A plant in a few words: its name, or how many of what kind."""
    if plant.name:
        return plant.name
    kind = kind_of(plant, words)
    return words.say("plant-label", count=plant.count, kind=kind or "none")


#: More names than this are counted by kind, and more kinds are summed up.
_MOST_NAMES = 6
_MOST_KINDS = 7


def whom_said(plants_: Sequence[Plant], genus: str | None, words: Wording) -> str:
    """Plants as a sentence names them; 'none' where nobody said which."""
    text = labels(plants_, words) if plants_ else genus
    if not text:
        return "none"
    named = any(p.name for p in plants_)
    return words.say("rescue-whom", plant=text, named="yes" if named else "no")


def labels(plants_: Iterable[Plant], words: Wording) -> str:
    """Several plants in a few words; those without a name, or too many, are counted by kind."""
    listed = list(plants_)
    named = [p for p in listed if p.name]
    called = [p.name for p in named if p.name] if len(named) <= _MOST_NAMES else []
    counts: dict[str, int] = defaultdict(int)
    for plant in listed:
        if not (called and plant.name):
            kind = kind_of(plant, words)
            counts[kind or "none"] += plant.count
    shown = list(counts.items())[:_MOST_KINDS]
    kinds = [words.say("plant-label", count=n, kind=k) for k, n in shown]
    rest = sum(counts.values()) - sum(n for _, n in shown)
    more = [words.say("plants-more", count=rest)] if rest else []
    return words.listed([*kinds, *called, *more])


def plant_said(said: PlantSaid, words: Wording) -> str:
    """A plant that is not on record, with what was said of it."""
    kind = _kind(" ".join(said.traits), said.genus or "", words)
    facts = [
        words.say(f"medium-{said.medium}") if said.medium else "",
        words.pot(said.pot_cm) if said.pot_cm else "",
        said.place or "",
    ]
    known = ", ".join(f for f in facts if f)
    name = said.name or words.say("plant-label", count=said.count or 1, kind=kind or "none")
    return f"{name} ({known})" if known else name


def described(plant: Plant, collection: Collection, words: Wording) -> str:
    """A plant with what is known of it."""
    facts = [
        kind_of(plant, words) if plant.name else "",
        words.say(f"medium-{plant.medium}") if plant.medium else "",
        words.pot(plant.pot_cm) if plant.pot_cm else "",
        words.say(f"growth-{plant.growth}") if plant.growth else "",
        collection.place_of(plant),
    ]
    known = ", ".join(f for f in facts if f)
    name = label(plant, words)
    if plant.name and plant.count > 1:
        name = words.say("plant-named-several", name=plant.name, count=plant.count)
    return f"{name} ({known})" if known else name
