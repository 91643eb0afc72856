"""What there is to say: help that knows how far somebody is, topics, and words explained."""

from __future__ import annotations

from dataclasses import dataclass

from bot.conversation import answer as out
from bot.conversation.collection import pick, whom_said
from bot.conversation.turn import Turn
from bot.dosing.advice import AFTER_REPOT_DAYS
from bot.dosing.plants import Genus, of_name, rest_span, types_of
from bot.dosing.rescue import Facts, flush
from bot.records import log, reminders
from bot.records.kinds import EventKind
from bot.records.models import Plant

#: What can be asked about, in the order in which it is listed.
TOPICS = (
    "dose", "plants", "feeds", "water", "plan", "log", "reminders", "trouble", "salts", "bottles",
    "compare", "pictures", "settings", "group", "data",
)  # fmt: skip
#: Those of them to tap.
_SHOWN = ("dose", "plan", "reminders", "trouble")
#: A word that explains each step of a dose further.
_TERM_OF = {
    "strength": "strength", "season": "winter", "medium": "medium", "ceiling": "ceiling",
    "rest": "rest", "full": "npk", "ec": "ec", "salts": "salts",
}  # fmt: skip


@dataclass(frozen=True, slots=True)
class _Known:
    """How far somebody is."""

    logged: bool
    reminders: int


async def helping(turn: Turn) -> out.Answer:
    """What can be said: of one topic, or where to go on from here."""
    topic = turn.order.text
    if topic:
        return _topic(turn, topic)
    group = turn.incoming.group is not None
    if group and (turn.owner is None or not await turn.administers()):  # what is next is not theirs
        return turn.say("help", "help-group", choices=_topics(turn, "dose", "plan", "group"))
    known = await _known(turn)
    following = _next(turn, known)
    words = turn.words
    lines = [
        words.say("help-what") if known is None else _have(turn, known),
        words.say("help-group-how") if group else "",
        words.say(f"help-next-{following}", example=_example(turn, following)),
        words.say("help-topics", topics=words.listed(list(_names(turn)))),
    ]
    return turn.tell("help", lines, choices=(_example(turn, following), *_topics(turn, *_SHOWN)))


async def greeted(turn: Turn) -> out.Answer:
    """To who says something that asks for nothing: what this is, and what to send first."""
    if turn.incoming.group is not None:  # the others read along: one line
        return turn.say("help", "help-group-short", choices=(turn.words.say("help-word"),))
    following = _next(turn, await _known(turn))
    if turn.owner is not None and turn.order.verb != "greeting" and turn.incoming.text.strip():
        return await _lost(turn, following)
    example = _example(turn, following)
    lines = [turn.words.say("help-what"), turn.words.say(f"help-next-{following}", example=example)]
    help_ = turn.words.say("help-word")
    return turn.tell("help", lines, choices=(example, help_))


async def tell(turn: Turn) -> out.Answer:
    """What a beginner asks beside feed, in two or three sentences."""
    code = turn.order.text.replace("_", "-")
    if code == "often" and _sensitive(turn):
        code = "often-sensitive"
    if code == "rest-months":
        return _rest_months(turn)
    today = turn.words.say("help-example-today")
    weeks = turn.words.number(AFTER_REPOT_DAYS / 7)
    then = (today,) if code in _THEN_TODAY else ()
    return turn.say("explain", f"tell-{code}", weeks=weeks, choices=then)


def _rest_months(turn: Turn) -> out.Answer:
    """From when to when a kind rests, by the almanac."""
    words = turn.words
    known = [g for n in turn.reading.genera if (g := of_name(n)) is not None]
    if len(known) != 1:
        return turn.say("explain", "tell-rest-which")
    genus = known[0]
    types = types_of(known)
    if len(types) == 1 and not _rests(genus, south=turn.south):
        genus = types[0]
    month = _rests(genus, south=turn.south)
    span = rest_span([genus], month=month, south=turn.south) if month else None
    if span is None and types:
        return turn.say("explain", "tell-rest-which")
    if span is None:
        return turn.say("explain", "tell-rest-none", plants=genus.name)
    begin, end = (words.months("wide")[m - 1] for m in span)
    dry = "yes" if genus.rest_kind == "dry" else "no"
    return turn.say("explain", "tell-rest-span", plants=genus.name, begin=begin, end=end, dry=dry)


def _rests(genus: Genus, *, south: bool) -> int:
    """A month in which a kind rests; 0 where it does not."""
    return next((m for m in range(1, 13) if genus.rests_in(m, south=south)), 0)


def _sensitive(turn: Turn) -> bool:
    """Whether it was asked of plants that bear little."""
    found = pick(turn.order.target, turn.collection, turn.last_plants)
    named = (*turn.reading.genera, *(p.genus for p in found if p.genus))
    return any(g.feeding_class == "sensitive" for n in named if (g := of_name(n)) is not None)


#: Where what is on today is the next step.
_THEN_TODAY = frozenset({"often", "often-sensitive", "missed"})


async def thanked(turn: Turn) -> out.Answer:
    """To who thanks: little."""
    return turn.say("help", "thanked")


async def _lost(turn: Turn, following: str) -> out.Answer:
    """To who says what we do not understand: that, and what can be said instead."""
    words = turn.words
    found = pick(turn.order.target, turn.collection, turn.last_plants)
    name = next((p.name for p in found if p.name), None)
    name = name or next((p.genus for p in found if p.genus), None)
    if name is not None:
        choices = tuple(e.strip() for e in words.say("help-of-plant-say", name=name).split("|"))
        return turn.say("help", "help-of-plant", choices=choices, name=name)
    example = _example(turn, following)
    lines = [words.say("help-lost"), words.say(f"help-next-{following}", example=example)]
    return turn.tell("help", lines, choices=(example, words.say("help-word")))


async def kept(turn: Turn) -> out.Answer:
    """What is kept of people and groups, who asked what not among it."""
    if turn.order.text == "questions":
        return turn.say("explain", "kept-no-questions")
    return turn.say("explain", f"kept-{turn.whose}")


async def removing(turn: Turn) -> out.Answer:
    """How a group gets rid of us."""
    return turn.say("explain", "remove-me")


async def quiet_night(turn: Turn) -> out.Answer:
    """What is quiet at night, and how to have it so."""
    return turn.say("explain", "quiet-night")


async def explain(turn: Turn) -> out.Answer:
    """A word of the trade, or the steps of the last dose in more words."""
    words, term = turn.words, turn.order.text
    found = pick(turn.order.target, turn.collection, turn.last_plants)
    if term == "flush" and found and not turn.order.target.empty:
        return _flush_of(turn, found)
    if " " in term:
        return turn.tell("explain", [f"- {words.say(f'explain-{t}')}" for t in term.split()])
    if term:
        return turn.say("explain", f"explain-{term}", choices=_topics(turn, *_ABOUT.get(term, ())))
    rules = (turn.recalled.get("dose") or {}).get("rules", [])
    terms = dict.fromkeys(t for rule in rules if (t := _TERM_OF.get(str(rule).partition(".")[0])))
    if not terms:
        return turn.say("explain", "explain-none")
    return turn.tell("explain", [f"- {words.say(f'explain-{t}')}" for t in terms])


def _flush_of(turn: Turn, plants: list[Plant]) -> out.Answer:
    """How much clear water flushes plants on record, as a rescue or the plan would."""
    facts = [Facts(medium=p.medium, pot_cm=p.pot_cm, count=p.count) for p in plants]
    flushes = [flush(each) for each in facts]
    litres, passes = sum(f.volume_l or 0 for f in flushes), max(f.passes or 1 for f in flushes)
    words = turn.words
    turn.keep_plants(plants)
    return turn.say(
        "explain", "flush-now", plants=whom_said(plants, None, words), passes=words.number(passes),
        volume=words.volume(float(f"{litres:.2g}")),
        part=words.volume(float(f"{litres / passes:.2g}")),
        rest=words.number(flushes[0].rest_min or 0), choices=(),
    )  # fmt: skip


#: Which topic of help goes on from a word.
_ABOUT = {
    "ec": ("salts",), "ppm": ("dose",), "npk": ("feeds",), "hardness": ("water",),
    "strength": ("dose",), "flush": ("salts",), "salts": ("salts",), "rest": ("plan",),
    "winter": ("plan",), "medium": ("plants",), "stock": ("bottles",), "nitrogen": ("feeds",),
    "calcium": ("water",), "pure_water": ("water",), "softened": ("water",),
    "sensitive": ("plants",), "ceiling": ("dose",), "overfed": ("salts",),
}  # fmt: skip


def _topic(turn: Turn, topic: str) -> out.Answer:
    """What can be said about one thing, with examples to send."""
    words = turn.words
    examples = words.say(f"topic-{topic}-say").split("|")
    shown = [f"    {example.strip()}" for example in examples]
    return turn.tell(
        "help",
        [words.say(f"topic-{topic}"), *shown],
        choices=tuple(e.strip() for e in examples[:_MOST_TAPPED]),
    )


#: Examples of a topic that can be tapped.
_MOST_TAPPED = 3


def _topics(turn: Turn, *wanted: str) -> tuple[str, ...]:
    """How to ask for topics."""
    words = turn.words
    return tuple(words.say("help-about", topic=words.say(f"topic-name-{t}")) for t in wanted)


def _names(turn: Turn) -> tuple[str, ...]:
    group = turn.incoming.group is not None
    return tuple(turn.words.say(f"topic-name-{t}") for t in TOPICS if group or t != "group")


def _example(turn: Turn, following: str) -> str:
    return turn.words.say(f"help-example-{following}")


def _have(turn: Turn, known: _Known) -> str:
    plants, feeds = sum(p.count for p in turn.collection.plants), len(turn.collection.products)
    return turn.words.say("help-have", plants=plants, feeds=feeds, reminders=known.reminders)


def _next(turn: Turn, known: _Known | None) -> str:
    """What is most useful now, by what is on record."""
    owner, has = turn.owner, turn.collection
    if owner is None or known is None:
        return "first" if turn.incoming.group is None else "group"
    wanted = (
        ("plants", has.plants), ("feeds", has.products), ("water", has.waters),
        ("plan", known.logged), ("home", owner.zone), ("can", owner.can_l),
        ("reminders", known.reminders),
    )  # fmt: skip
    return next((name for name, there in wanted if not there), "today")


async def _known(turn: Turn) -> _Known | None:
    """How far somebody is; None where there are neither plants nor feeds of theirs."""
    owner, has = turn.owner, turn.collection
    if owner is None or not (has.plants or has.products):
        return None
    async with turn.records.reading() as session:
        logged = await log.any_of(session, owner.id, (EventKind.FED, EventKind.CLEAR))
        listed = await reminders.listing(session, owner.id)
    return _Known(logged, len(listed))
