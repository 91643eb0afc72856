"""A dose with what is on record filled in, and follow-ups to the last one."""

from __future__ import annotations

from dataclasses import asdict, dataclass, replace
from datetime import datetime, timedelta
from typing import Any

from bot.conversation import answer as out
from bot.conversation.answering import OnRecord, answer_to, respond, understood, worked_out
from bot.conversation.collection import (
    Collection,
    is_of,
    label,
    labels,
    load,
    pick,
    plant_said,
)
from bot.conversation.replies import SHOWN_CAUTIONS
from bot.conversation.turn import Turn
from bot.conversation.turns import guide, home, shelf
from bot.conversation.turns.plants import listing as plants_listed
from bot.conversation.turns.standing.advice import advice_for, genus_of, growth_on, water_for
from bot.conversation.turns.standing.healing import healing
from bot.conversation.wording import METRIC
from bot.dosing.dose import Dose, DoseRequest, pure_water_ec_ms_cm
from bot.dosing.pot_water import flush_volume_l
from bot.dosing.strength import BY_MEDIUM, CEILINGS, GROWING
from bot.dosing.water import Report, read_report
from bot.dosing.water import Water as WaterIons
from bot.records.models import Plant, Product
from bot.records.models import Water as WaterRow
from grammar import ElementTarget, LabelRate, MixSaid, Order, Reading, Target, Water

#: So long a follow-up refers to the last request.
FOLLOW_UP = timedelta(minutes=30)
#: Under this name it is remembered what was told to have been given, until a dose is asked for.
GIVEN = "given"
#: Slots of a reading that a follow-up carries over.
_CARRIED = (
    "volume_l",
    "analysis",
    "extras",
    "form",
    "strength",
    "exact",
    "regime",
    "medium",
    "season",
    "month",
    "growth",
    "genera",
    "count",
    "water",
    "label_rate",
    "target_n_mg_l",
    "target_ec_ms_cm",
    "target_element",
    "scale_step_g",
)
_PRODUCT_SLOTS = ("analysis", "extras", "form", "label_rate")
_PLANT_SLOTS = ("genera", "medium", "growth", "count")


async def dose(turn: Turn) -> out.Answer:
    """A dose; a short message right after one, or an answer to our question, adds to it."""
    if turn.order.newest and not turn.incoming.shared:
        return await _of_the_newest(turn)
    if turn.order.unit == "can" and not turn.incoming.shared:
        return await _for_the_can(turn)
    collection = turn.collection
    last = _last(turn)
    reading = turn.reading
    if turn.incoming.shared:  # somebody else's words add to nothing of one's own
        return await _answered(turn, reading, collection)
    told = await _only_told(turn)
    if told is not None:
        return told
    mix = turn.order.mix
    if mix is not None and not (_says(reading) or reading.mentions_feeding):
        return await follow_up(turn) if last is not None else _told_of_blend(turn, mix)
    if _only_names(turn):
        return await plants_listed(turn)
    if _tells_of_plants(turn):
        return await guide.greeted(turn)
    lacking_rate = [p for p in collection.products if p.label_per_litre is None]
    if len(lacking_rate) == 1 and _only_a_rate(turn):  # what `product-no-rate` asked for
        return await shelf.change(turn, lacking_rate[0])
    if last is None and _of_those(turn) and turn.about_others:
        return turn.ask("ask-them", known=labels(collection.plants[:5], turn.words))
    if last is not None and _adds(turn, collection):
        reading = _multiplied(_merged(turn, last, reading), last)
        return _stays(turn, last, reading, await _answered(turn, reading, collection))
    unclear = bool(reading.conflicts or reading.problems)
    anew = reading.analysis or reading.volume_l is not None or turn.order.products
    # A line that was not understood does not end what it was said about.
    kept = last is None or not unclear or bool(anew)
    return await _answered(turn, reading, collection, kept=kept)


async def feed_told(turn: Turn) -> out.Answer:
    """A feed for the shelf; a bare label, while a dose is being asked for, belongs to that."""
    open_ = turn.question.get("kind") == "dose" or _last(turn) is not None
    if turn.order.asks_kind == "bare" and open_:
        order = replace(turn.order, verb="dose", asks_kind=None)
        return await dose(replace(turn, reading=replace(turn.reading, order=order)))
    return await shelf.add(turn)


async def no_such(turn: Turn) -> out.Answer:
    """A volume of something that is neither a feed nor a plant on record: '3 l lemon'."""
    shelf_, words = turn.collection.products, turn.words
    if not shelf_:
        order = replace(turn.order, verb="dose")
        return await dose(replace(turn, reading=replace(turn.reading, order=order)))
    feeds = words.listed([shelf.title(p, turn) for p in shelf_[:5]])
    turn = replace(turn, reading=_without_strange(turn.reading, turn.order.strange))
    return turn.ask("ask-no-such", meant=turn.order.strange, feeds=feeds)


def _without_strange(reading: Reading, strange: str) -> Reading:
    """A reading without the name that the answer itself says to be unknown."""
    left = tuple(u for u in reading.unknown if u.text != strange)
    return replace(reading, unknown=left)


async def _for_the_can(turn: Turn) -> out.Answer:
    """A dose for as much as the can on record holds; how much that is, where it is not known."""
    can_l = turn.owner.can_l if turn.owner is not None else None
    order = replace(turn.order, unit="")
    turn = replace(turn, reading=replace(turn.reading, order=order))
    if can_l is None:
        return turn.ask("ask-can").model_copy(update={"details": {"waiting": {"kind": "dose"}}})
    said = replace(turn.reading, volume_l=can_l)
    answer = await _answered(turn, said, turn.collection)
    if answer.kind != "dose":
        return answer
    return _beside(answer, turn.words.say("can-taken", volume=turn.words.volume(can_l)))


async def _of_the_newest(turn: Turn) -> out.Answer:
    """A dose of 'the new one': of the feed that was put on record last, and that is said."""
    meant = shelf.newest(turn.collection)
    order = replace(turn.order, newest=False)
    if meant is not None and meant.name:
        order = replace(order, products=(meant.name,))
    turn = replace(turn, reading=replace(turn.reading, order=order))
    if meant is None:
        return await dose(turn)
    if meant.name:
        answer = await dose(turn)
    else:
        said = replace(turn.reading, analysis=shelf.analysis_of(meant), form=meant.form)
        answer = await _answered(turn, said, turn.collection)
    if answer.kind != "dose" or len(turn.collection.products) < 2:
        return answer
    return _beside(answer, turn.words.say("newest-taken", name=shelf.title(meant, turn)))


def _beside(answer: out.Answer, note: str) -> out.Answer:
    """An answer with a note right below the amount."""
    first, _, rest = answer.reply.partition("\n")
    return answer.model_copy(update={"reply": "\n".join((first, note, rest))})


async def _only_told(turn: Turn) -> out.Answer | None:
    """The answer where feed or plants were spoken of and no amount was asked for; else None."""
    if turn.order.text == "ceased":
        return turn.say("log", "feed-pause")
    if turn.order.text == "clear":
        return _clear_water(turn)
    if turn.order.text == "denied":
        return turn.say("log", "not-given")
    if turn.order.text == "planned":
        return turn.say("log", "not-told", verb="fed")
    if turn.order.text == "unclear" and turn.question.get("kind") != "dose":
        return await guide.greeted(turn)
    return None


def _clear_water(turn: Turn) -> out.Answer:
    """So much clear water, and no feed in it; a flush takes more."""
    words, reading = turn.words, turn.reading
    if reading.conflicts or reading.volume_l is None:
        return respond(reading, turn.setting)
    target = turn.order.target
    genera = target.genera or target.not_genera or reading.genera
    plants = pick(replace(target, genera=genera, not_genera=()), turn.collection, turn.last_plants)
    lines = [
        words.say(
            "clear-only",
            volume=words.volume(reading.volume_l),
            plants=labels(plants, words) if plants and len(plants) <= 4 else "none",
        ),
        words.say("clear-how"),
    ]
    if plants:
        flush_l = sum(flush_volume_l(p.pot_cm) * p.count for p in plants)
        enough = reading.volume_l >= flush_l
        lines.append(
            words.say("clear-flush", enough="yes" if enough else "no",
                      volume=words.volume(round(flush_l, 1)))
        )  # fmt: skip
    return answer_to(reading, "no_feed", "\n".join(lines))


async def listed(turn: Turn) -> out.Answer:
    """A bare list of plants: those of a dose that is being asked for, else to be put on record."""
    if turn.question.get("kind") == "dose" or _last(turn) is not None:
        order = replace(turn.order, verb="dose", plants=())
        return await dose(replace(turn, reading=replace(turn.reading, order=order)))
    words, text, plants = turn.words, turn.incoming.text, turn.order.plants
    if turn.question.get("kind") == "add":  # a further list while one is on offer: both
        both = f"{turn.question['text']}; {text}"
        whole = turn.read_again(both).order
        if whole is not None and whole.verb == "add_offer" and len(whole.plants) > len(plants):
            text, plants = both, whole.plants
    said = "; ".join(plant_said(p, words) for p in plants)
    choices = (words.say("rescue-answer-yes"), words.say("rescue-answer-no"))
    answer = turn.ask("ask-add-listed", plants=said, choices=choices)
    waiting = {"kind": "add", "text": text}
    return answer.model_copy(update={"details": {"waiting": waiting}})


def _only_names(turn: Turn) -> bool:
    """Whether plants were named and nothing was said or asked of them."""
    reading, order = turn.reading, turn.order
    named = order.target.names or order.target.place
    doubtful = bool(reading.conflicts or reading.problems)
    quiet = not reading.mentions_feeding and not order.products and not doubtful
    if not quiet or turn.question.get("kind") == "dose":
        return False
    if order.asks:  # 'are the catasetums resting?' tells nothing
        wanted = [s for s in _CARRIED if s not in ("growth", "genera", "count")]
        dosing = any(getattr(reading, s) not in (None, (), {}, False) for s in wanted)
        return reading.growth is not None and not order.target.empty and not dosing
    return bool(named) and not _says(reading)


def _tells_of_plants(turn: Turn) -> bool:
    """Whether something was said of plants that is not understood, and no amount was asked for.

    'Are they dead now?', 'the vandas look odd': a dose would answer what nobody asked.
    """
    reading, order = turn.reading, turn.order
    wanted = [s for s in _CARRIED if s not in ("growth", "genera", "count", "season", "month")]
    dosing = any(getattr(reading, s) not in (None, (), {}, False) for s in wanted)
    if dosing or reading.conflicts or reading.problems or order.products:
        return False
    if reading.mentions_feeding or order.asks_kind == "dose" or turn.question.get("kind") == "dose":
        return False
    if order.target.empty:
        return False
    only_them = order.target.again and not (order.target.named or reading.genera)
    return only_them or bool(reading.unknown) or order.asks


def _only_a_rate(turn: Turn) -> bool:
    """Whether nothing but a label rate was said, and no dose is open: 'label 1 g per litre'."""
    reading = turn.reading
    if reading.label_rate is None or reading.conflicts or reading.problems or turn.order.asks:
        return False
    if turn.question.get("kind") == "dose" or not turn.order.target.empty:
        return False
    others = [s for s in _CARRIED if s not in ("label_rate", "form")]
    return not any(getattr(reading, s) not in (None, (), {}, False) for s in others)


def _adds(turn: Turn, collection: Collection) -> bool:
    """Whether the message only makes sense together with the one before."""
    reading = turn.reading
    if reading.conflicts or reading.problems:
        return False
    if turn.order.amends is not None:
        return True  # 'sorry, I meant 2 l'
    if _of_those(turn) and turn.about_others and reading.analysis is None:
        return True  # 'how much for them in 3 l', of plants that are not on record
    if turn.question.get("kind") == "dose":
        whole = reading.volume_l is not None and reading.analysis is not None
        return not whole and (_says(reading) or not turn.order.target.empty)
    if reading.analysis is not None:  # a reply to a dose puts its feed right
        return turn.incoming.below is not None and reading.volume_l is None
    if reading.volume_l is not None or turn.order.products or not turn.order.target.empty:
        return reading.volume_l is not None and not collection.products
    return _says(reading)


def _of_those(turn: Turn) -> bool:
    """Whether plants are meant by 'them' and no more."""
    target = turn.order.target
    return target.again and not (target.named or turn.reading.genera)


def _says(reading: Reading) -> bool:
    return any(getattr(reading, slot) not in (None, (), {}, False) for slot in _CARRIED)


async def follow_up(turn: Turn) -> out.Answer:
    """The last request with something changed."""
    last = _last(turn)
    if last is None and turn.incoming.overtaken:
        return turn.refuse("refuse-overtaken")
    if last is None:
        if turn.order.mix is not None and not _says(turn.reading):
            return _told_of_blend(turn, turn.order.mix)
        if turn.order.products and not _says(turn.reading):
            return await shelf.use(turn)
        if turn.order.factor is None and _says(turn.reading):
            async with turn.records.reading() as session:
                collection = await load(session, turn.owner_id)
            return await _answered(turn, turn.reading, collection)
        return turn.ask("ask-no-last")
    collection = turn.collection
    turn = replace(turn, reading=_in_litres(turn, last))
    changes = turn.order.factor or turn.order.products or not turn.order.target.empty
    changes = changes or turn.order.mix is not None
    if not (changes or _says(turn.reading)):
        if turn.order.strange and collection.plants:  # 'and for Dot?', where no Dot is known
            known = labels(collection.plants[:5], turn.words)
            return turn.ask("ask-not-on-record", meant=turn.order.strange, known=known)
        return turn.ask("ask-follow-up")
    reading = _merged(turn, last, turn.reading)
    if turn.order.factor is not None:
        reading = _scaled(reading, last, turn.order.factor)
    return _stays(turn, last, reading, await _answered(turn, reading, collection))


def _in_litres(turn: Turn, last: dict[str, Any]) -> Reading:
    """'Make it 2' after a dose for some litres: a bare number is of these."""
    reading = turn.reading
    bare = [u for u in reading.unknown if u.text.replace(".", "", 1).isdigit()]
    litres = turn.words.units == METRIC and last["slots"].get("volume_l") is not None
    if len(bare) != 1 or not litres or turn.order.factor or _says(reading):
        return reading
    left = tuple(u for u in reading.unknown if u is not bare[0])
    return replace(reading, volume_l=float(bare[0].text), unknown=left)


def has_last(turn: Turn) -> bool:
    """Whether there is a last request that still counts."""
    return _last(turn) is not None


def _multiplied(reading: Reading, last: dict[str, Any]) -> Reading:
    """'Double' right after a dose is of that dose, and not of the label."""
    times = reading.strength
    return reading if times is None or times <= 1 else _scaled(reading, last, times)


def _stays(turn: Turn, last: dict[str, Any], reading: Reading, answer: out.Answer) -> out.Answer:
    """Says where another rhythm leaves a strength that was asked for, or 'half' gives more."""
    part = turn.reading.strength
    if answer.kind == "dose" and part is not None and last["asked"] < part < 1:
        times = turn.words.number(part / last["asked"])
        return _beside(answer, turn.words.say("follow-up-more", times=times))
    new, before = turn.reading, last["slots"]
    moved = new.strength is not None or new.target_n_mg_l is not None or turn.order.factor
    if new.regime in (None, before.get("regime")) or moved or reading.strength is None:
        return answer
    if answer.kind != "dose":
        return answer
    share = turn.words.share(reading.strength)
    return _beside(answer, turn.words.say("follow-up-strength-stays", share=share))


async def why(turn: Turn) -> out.Answer:
    """The steps of the last dose or other figure, with where each is from."""
    last = _newest(turn)
    if last is None and turn.incoming.overtaken:
        return turn.refuse("refuse-overtaken")
    if last is None or not last.get("why"):
        return turn.ask("ask-no-last")
    return turn.tell(
        "why", [f"- {text} ({turn.words.cited(source)})" for text, source in last["why"]]
    )


async def more(turn: Turn) -> out.Answer:
    """All cautions of the last dose or other answer."""
    last = _newest(turn)
    if last is None and turn.incoming.overtaken:
        return turn.refuse("refuse-overtaken")
    if last is None:
        return turn.ask("ask-no-last")
    if not last.get("cautions"):
        return turn.say("cautions", "cautions-none")
    return turn.tell("cautions", [f"- {text}" for text in last["cautions"]])


# --- the last request ----------------------------------------------------------------------------


def _last(turn: Turn) -> dict[str, Any] | None:
    """The last request for a dose, while it counts."""
    kept = turn.remembered.get("dose")
    return kept if isinstance(kept, dict) and counts_still(kept, turn) else None


def _newest(turn: Turn) -> dict[str, Any] | None:
    """What was told last and counts still: a dose, or another answer with its reasons."""
    told = turn.remembered.get("why")
    last = _last(turn)
    newest = told if isinstance(told, dict) and counts_still(told, turn) else None
    if newest is not None and (last is None or newest["said_at"] >= last["said_at"]):
        return newest
    return last


def counts_still(kept: dict[str, Any], turn: Turn) -> bool:
    """Whether what is remembered was said so lately that a message can go on from it."""
    said_at = datetime.fromisoformat(kept["said_at"])
    return turn.incoming.said_at - said_at <= FOLLOW_UP


async def keep_why(turn: Turn, answer: out.Answer) -> out.Answer:
    """Keep the reasons and cautions of an answer that is no dose, for 'why' and 'more'."""
    if not answer.why or answer.kind in ("dose", "no_feed", "ask"):
        return answer
    reasons = [[w.text, w.source] for w in answer.why]
    cautions = [c.text for c in answer.cautions]
    said_at = turn.incoming.said_at.isoformat()
    await turn.keep(why={"said_at": said_at, "why": reasons, "cautions": cautions})
    shown = SHOWN_CAUTIONS if answer.kind == "rescue" else 0
    further = ["why", "more"] if len(cautions) > shown else ["why"]
    return answer.model_copy(update={"choices": [*answer.choices, *further]})


def _merged(turn: Turn, last: dict[str, Any], new: Reading) -> Reading:
    """The last request with what the new message says in its place."""
    slots = dict(last["slots"])
    order = turn.order
    target, products = order.target, order.products
    named = bool(new.genera) or not target.empty
    if products or new.analysis is not None:
        for slot in _PRODUCT_SLOTS:
            slots.pop(slot, None)
    if new.genera or not (target.empty or (_of_those(turn) and turn.about_others)):
        for slot in _PLANT_SLOTS:
            slots.pop(slot, None)
    elif last.get("target"):
        before: dict[str, Any] = {
            k: tuple(v) if isinstance(v, list) else v for k, v in last["target"].items()
        }
        target = Target(**before)
    products = products or tuple(last.get("products", ()))
    if new.analysis is not None:
        products = ()
    if any((new.strength, new.target_n_mg_l, new.target_ec_ms_cm, new.target_element)):
        for slot in ("strength", "target_n_mg_l", "target_ec_ms_cm", "target_element"):
            slots.pop(slot, None)
    if new.season is not None:
        slots.pop("month", None)
    if new.month is not None:
        slots.pop("season", None)
    merged: dict[str, Any] = {}
    for slot in _CARRIED:
        said = getattr(new, slot)
        merged[slot] = (
            said if said not in (None, (), {}, False) else _from_json(slot, slots.get(slot))
        )
    base = replace(new, **{k: v for k, v in merged.items() if v is not None})
    theirs = order.theirs or bool(last.get("theirs") and not (new.genera or order.target.named))
    strange = order.strange or ("" if named else str(last.get("strange", "")))
    asked = Order("dose", target=target, products=products, theirs=theirs, strange=strange)
    return replace(base, order=asked)


def _from_json(slot: str, value: Any) -> Any:
    if value is None:
        return None
    if slot in ("analysis", "genera"):
        return tuple(value)
    if slot == "target_element":
        return ElementTarget(**value)
    if slot == "water":
        return Water(**value)
    if slot == "label_rate":
        return LabelRate(**value)
    return value


def _scaled(reading: Reading, last: dict[str, Any], factor: float) -> Reading:
    """The same request at a multiple of the last amount, whatever a ceiling had cut."""
    if reading.target_n_mg_l is not None:
        return replace(reading, target_n_mg_l=reading.target_n_mg_l * factor * last["cut"])
    if reading.target_ec_ms_cm is not None:
        return replace(reading, target_ec_ms_cm=reading.target_ec_ms_cm * factor * last["cut"])
    return replace(reading, strength=last["asked"] * factor * last["cut"])


def meant(turn: Turn) -> Reading | None:
    """The request that a message means: its own, else the last with what is said in its place.

    None where there is neither.
    """
    last, order = _last(turn), turn.order
    order = Order("dose", target=order.target, products=order.products)
    reading = replace(turn.reading, order=order)
    if last is None:
        says = _says(reading) or order.products or not order.target.empty
        return reading if says else None
    if reading.volume_l is not None and (reading.analysis or order.products):
        return reading
    return _merged(replace(turn, reading=reading), last, reading)


@dataclass(frozen=True, slots=True)
class Figures:
    """A dose as figures beside its answer.

    `name` is the product's on record, `plants` those on record that it is for, `notes` what else
    was taken from the records, in words: the water, and what was left out or differs.
    """

    request: DoseRequest
    dose: Dose
    answer: out.Answer
    name: str
    plants: list[Plant]
    notes: tuple[str, ...]


def figures(turn: Turn, reading: Reading) -> Figures | None:
    """The figures behind the answer to a request; None where it is no dose. Keeps nothing."""
    filled, on_record = _filled(turn, reading, turn.collection)
    setting = replace(turn.setting, on_record=on_record)
    answer = respond(filled, setting)
    found = worked_out(filled, setting)
    if answer.kind != "dose" or found is None:
        return None
    product, plants, _ = _counted(turn, reading, turn.collection)
    water = _water(reading, turn.collection, plants)
    used = bool(product or plants or water)  # named in the first line, with prices and all
    notes = (home.described(water, turn) if water else "", *on_record.lines[1 if used else 0 :])
    return Figures(*found, answer, on_record.product_name, plants, notes)


def last_figures(turn: Turn) -> Figures | None:
    """The dose that was told last, while it counts; None where there is none."""
    last = _last(turn)
    if last is None or not last.get("why"):
        return None
    blank = Reading(turn.reading.text, turn.reading.language, order=Order("dose"))
    asked = replace(turn, reading=blank)
    return figures(asked, _merged(asked, last, blank))


def asked_last(turn: Turn) -> tuple[float | None, float | None, float | None]:
    """Strength [1], nitrogen [mg/L] and EC [mS/cm] that were asked of the last dose."""
    slots = (_last(turn) or {}).get("slots", {})
    return slots.get("strength"), slots.get("target_n_mg_l"), slots.get("target_ec_ms_cm")


async def answered(turn: Turn, reading: Reading) -> out.Answer:
    """The answer to a request, kept for follow-ups."""
    return await _answered(turn, reading, turn.collection)


def mix_asked_about(turn: Turn) -> tuple[Reading, OnRecord]:
    """The mix that an amount is asked about, with what is on record filled in.

    What was not said of it is that of the last request while it counts; a message that says both
    feed and water goes on from nothing. The volume is None where it is not known.
    """
    reading, order = turn.reading, turn.order
    last = _last(turn)
    feed = bool(reading.analysis or order.products)
    asked = Order("dose", target=order.target, products=order.products)
    reading = replace(reading, order=asked)
    if last is not None and not (feed and reading.volume_l is not None):
        reading = _merged(replace(turn, reading=reading), last, reading)
    if reading.volume_l is None:
        return reading, OnRecord()
    if reading.analysis is None:  # a rate without its feed would hide that of the shelf
        reading = replace(reading, label_rate=None)
    return _filled(turn, reading, turn.collection)


def mix_given(turn: Turn) -> tuple[Reading, OnRecord]:
    """The mix that was given by amount and volume, with what is on record filled in."""
    order = Order("dose", target=turn.order.target, products=turn.order.products)
    reading = replace(turn.reading, order=order)
    if reading.analysis is None:
        reading = replace(reading, label_rate=None)
    return _filled(turn, reading, turn.collection)


def mix_talked_of(turn: Turn) -> tuple[Reading, OnRecord, bool]:
    """The ready feed a message is about, with what is on record filled in.

    It is that of the last request while it counts, which the flag tells, otherwise what a dose now
    would be made of; a volume that nobody said is a litre.
    """
    last = _last(turn)
    order = Order("dose", target=turn.order.target, products=turn.order.products)
    reading = replace(turn.reading, order=order)
    if last is not None:
        reading = _merged(turn, last, reading)
    reading = replace(reading, volume_l=reading.volume_l or 1.0)
    filled, on_record = _filled(turn, reading, turn.collection)
    given = last is not None and bool(last["why"])  # a question of ours gave nothing out
    return filled, on_record, given and not (order.products or turn.reading.analysis)


# --- with what is on record ---------------------------------------------------------------------


async def _answered(
    turn: Turn, reading: Reading, collection: Collection, *, kept: bool = True
) -> out.Answer:
    if reading.order is not None and reading.order.theirs:
        collection = Collection()  # nothing on record is somebody else's
    order = reading.order or turn.order
    strange = order.strange if collection.plants else ""
    if strange and not turn.order.target.named_one:
        collection = replace(collection, plants=())  # a name nobody bears: any plant
        order = replace(order, target=Target())
        said = turn.reading
        reading = replace(reading, genera=(), medium=said.medium, growth=said.growth, order=order)
        turn.keep_plants([])
    mix = turn.order.mix
    if mix is not None:
        reading = replace(reading, water=_blended(turn, mix, reading))
    filled, on_record = _filled(turn, reading, collection)
    setting = replace(turn.setting, on_record=on_record)
    answer = respond(filled, setting)
    if mix is not None and answer.kind == "dose":
        answer = _beside(answer, _blend_note(turn, mix, reading.water))
    answer = answer.model_copy(
        update={"understood": understood(turn.reading), "message": turn.incoming.text}
    )
    if answer.kind == "dose":
        answer = answer.model_copy(update={"details": {"known": _known(filled)}})
        product, plants, _ = _counted(turn, reading, collection)
        further = reading.order.products[1:] if reading.order is not None else ()
        if product is not None and further:
            name, others = shelf.title(product, turn), turn.words.listed(list(further))
            answer = _beside(answer, turn.words.say("one-feed", name=name, others=others))
        heal = await healing(turn, plants)
        if heal.ids and not _not_on_record(reading, plants) and heal.ids >= {p.id for p in plants}:
            answer = turn.tell("no_feed", [heal.lines])
        elif heal.lines:
            answer = answer.model_copy(update={"reply": f"{heal.lines}\n{answer.reply}"})
        if strange:
            known = labels(turn.collection.plants[:5], turn.words)
            some = labels(_counted(turn, reading, collection)[1], turn.words) or "none"
            note = turn.words.say("dose-for-nobody", meant=strange, known=known, some=some)
            answer = answer.model_copy(update={"reply": f"{note}\n{answer.reply}"})
    if kept and answer.kind in ("dose", "ask", "no_feed"):
        if _names_plants(reading):
            turn.keep_plants(_counted(turn, reading, collection)[1])
        await _remember(turn, reading, answer)
    return answer


def _blended(turn: Turn, mix: MixSaid, reading: Reading) -> Water | None:
    """A mix of waters by what is on record of each, None where that is nothing.

    References
    ----------
    FAO Irrigation and Drainage Paper 29: C = a C1 + (1 - a) C2.
    """
    shares = dict(zip(mix.kinds, (mix.target, 1 - mix.target), strict=True))
    rows = {kind: _row_of(turn, kind, reading) for kind in shares}
    figures: dict[str, float] = {}
    for quantity in ("hardness_mg_l_caco3", "ec_ms_cm", "alkalinity_mg_l_caco3"):
        own = {kind: _figure_of(rows[kind], kind, quantity) for kind in shares}
        if None not in own.values():
            figures[quantity] = sum(a * (own[kind] or 0.0) for kind, a in shares.items())
    return Water("tap", **figures) if figures else None


def _row_of(turn: Turn, kind: str, reading: Reading) -> WaterRow | None:
    if kind:
        fitting = [w for w in turn.collection.waters if w.kind == kind]
        return next((w for w in fitting if w.is_default), fitting[0] if fitting else None)
    plants = _counted(turn, reading, turn.collection)[1]
    return _water(replace(reading, water=None), turn.collection, plants)


def _figure_of(row: WaterRow | None, kind: str, quantity: str) -> float | None:
    """What is known of a water; one without salts has no hardness."""
    known: float | None = getattr(row, quantity) if row is not None else None
    if known is None and (ec := pure_water_ec_ms_cm(kind)) is not None:
        return ec if quantity == "ec_ms_cm" else 0.0
    return known


def _told_of_blend(turn: Turn, mix: MixSaid) -> out.Answer:
    """What a mix of waters makes, where no dose is gone on from."""
    return turn.tell("water", [_blend_note(turn, mix, _blended(turn, mix, turn.reading))])


def _blend_note(turn: Turn, mix: MixSaid, blend: Water | None) -> str:
    words = turn.words
    pure = next((k for k in mix.kinds if pure_water_ec_ms_cm(k) is not None), mix.kinds[0])
    share = mix.target if pure == mix.kinds[0] else 1 - mix.target
    said = {"percent": words.number(100 * share, 0), "water": words.say(f"water-{pure}")}
    if blend is None:
        return words.say("blend-unknown", **said)
    quantities = ("hardness_mg_l_caco3", "ec_ms_cm")
    known = {q: v for q in quantities if (v := getattr(blend, q)) is not None}
    values = [home.figure(quantity, value, turn) for quantity, value in known.items()]
    return words.say("blend-taken", values=words.listed(values), **said)


def _names_plants(reading: Reading) -> bool:
    """Whether some plants were said, and not all or none: 'it' in the next message is these."""
    target = (reading.order or Order("dose")).target
    return target.named_one or bool(reading.genera)


def _known(filled: Reading) -> list[str]:
    """What the dose could rest on, said or from the records; the rest would make it better."""
    values = {
        "plant": filled.genera,
        "medium": filled.medium,
        "label": filled.label_rate,
        "water": filled.water,
    }
    return [name for name, value in values.items() if value]


async def _remember(turn: Turn, reading: Reading, answer: out.Answer) -> None:
    """Keep the request for follow-ups, and whether our question waits."""
    order = reading.order or Order("dose")
    slots = {s: getattr(reading, s) for s in _CARRIED}
    known = {
        s: asdict(v) if isinstance(v, Water | LabelRate | ElementTarget) else v
        for s, v in slots.items()
        if v not in (None, (), {}, False)
    }
    asked = next((w.factor for w in answer.why if w.rule.startswith("strength.")), 1.0)
    cut = 1.0
    for step in answer.why:
        if step.rule.startswith("ceiling."):
            cut *= step.factor
    kept = {
        "said_at": turn.incoming.said_at.isoformat(),
        "slots": known,
        "target": {k: v for k, v in asdict(order.target).items() if v},
        "products": list(order.products),
        "theirs": order.theirs,
        "strange": order.strange,
        "asked": asked,
        "cut": cut,
        "why": [[w.text, w.source] for w in answer.why],
        "rules": [w.rule for w in answer.why],
        "cautions": [c.text for c in answer.cautions],
    }
    begun = any(slot in known for slot in ("volume_l", "analysis", "label_rate", "strength"))
    waits = answer.kind == "ask" and (begun or not reading.conflicts)
    turn.remembered.pop(GIVEN, None)
    await turn.keep(question={"kind": "dose"} if waits else None, dose=kept)


def _filled(turn: Turn, reading: Reading, collection: Collection) -> tuple[Reading, OnRecord]:
    """The request with product, plants, water and tools from the records where none was said."""
    words = turn.words
    used: list[str] = []
    notes: list[str] = []
    own_rate = reading.label_rate is not None
    product, plants, asleep = _counted(turn, reading, collection)
    if product is not None:
        above = _above_label(reading, product)
        if above is not None:  # never more than the label on record
            rate = words.number(above.per_litre, 3)
            notes.append(words.say("on-record-rate", rate=rate, unit=above.unit,
                                   name=shelf.title(product, turn)))  # fmt: skip
            reading, own_rate = replace(reading, label_rate=None), False
        reading = _with_product(reading, product)
        used.append(shelf.described(product, turn))
    if asleep:
        notes.append(words.say("on-record-asleep", plants=labels(asleep, words)))
    if plants:
        others = _not_on_record(reading, [*plants, *asleep])
        reading, plain, differ = _with_plants(turn, reading, plants, others)
        used.append(plain)
        if differ:
            notes.append(words.say("on-record-differ"))
        if reading.volume_l is None:
            volume = sum(water_for(p) for p in plants)
            reading = replace(reading, volume_l=round(max(volume, 0.1), 1))
            notes.append(words.say("on-record-volume", volume=words.volume(reading.volume_l or 0)))
    water = _water(reading, collection, plants)
    if water is not None and (_wants_dose(turn, reading) or reading.analysis is not None):
        reading = replace(reading, water=_as_said(water, reading.water))
        used.append(home.described(water, turn))
    owner = turn.owner
    tools = owner is not None and (owner.scale_step_g or owner.syringe_step_ml)
    lines = (
        [words.say("on-record", items="; ".join(used), whose=turn.whose), *notes] if used else notes
    )
    by_product = product is not None and product.label_per_litre is not None
    return reading, OnRecord(
        label_from="product" if by_product and not own_rate else "label",
        product_name=product.name or "" if product is not None else "",
        density_kg_l=product.density_kg_l if product is not None else None,
        scale_step_g=owner.scale_step_g if owner is not None else None,
        syringe_step_ml=owner.syringe_step_ml if owner is not None else None,
        spoons_only=owner is not None and bool(owner.spoon) and not tools,
        some_unknown=any(p.genus is None for p in plants),
        nitrogen=shelf.nitrogen_forms(product) if product is not None else None,
        water=_reported(water, turn.reading),
        lines=tuple(lines),
    )


def _above_label(reading: Reading, product: Product) -> LabelRate | None:
    """A rate that was said and is above the label on record; None where it is not."""
    said, kept = reading.label_rate, product.label_per_litre
    if said is None or kept is None or said.unit != (product.label_unit or "g"):
        return None
    return said if said.per_litre > kept * 1.01 else None


def _counted(
    turn: Turn, reading: Reading, collection: Collection
) -> tuple[Product | None, list[Plant], list[Plant]]:
    """What on record a dose is for: the product, the plants awake, and those asleep."""
    product = _product(turn, reading, collection)
    if product is not None:
        reading = _with_product(reading, product)
    return product, *_plants(turn, reading, collection, from_shelf=product is not None)


def _product(turn: Turn, reading: Reading, collection: Collection) -> Product | None:
    """The product of the shelf that is meant."""
    order = reading.order or Order("dose")
    if order.products:
        return collection.product_named(order.products[0])
    if reading.analysis is not None:
        return next((p for p in collection.products if _is_it(p, reading)), None)
    if not _wants_dose(turn, reading) or reading.form or reading.label_rate:
        fitting = [p for p in collection.products if reading.form and p.form == reading.form]
        return fitting[0] if len(fitting) == 1 and not reading.label_rate else None
    if collection.default_product is not None:
        return collection.default_product
    best = shelf.best_for(turn, collection) if collection.products else None
    return best[0] if best is not None else None


def _wants_dose(turn: Turn, reading: Reading) -> bool:
    """Whether a dose is asked for, and not merely something said."""
    order = reading.order or Order("dose")
    if reading.volume_l is not None or reading.mentions_feeding:
        return True
    if not order.target.empty or reading.genera:
        return True
    return _says(reading) and reading.strength is not None


def _is_it(product: Product, reading: Reading) -> bool:
    same = shelf.analysis_of(product) == reading.analysis
    form = reading.form is None or product.form is None or product.form == reading.form
    return same and form


def _with_product(reading: Reading, product: Product) -> Reading:
    rate = None
    if product.label_per_litre is not None:
        rate = LabelRate(product.label_per_litre, str(product.label_unit or "g"))
    return replace(
        reading,
        analysis=shelf.analysis_of(product),
        extras=dict(reading.extras) or dict(product.extras or {}),
        form=reading.form or product.form,
        label_rate=reading.label_rate or rate,
    )


def _plants(
    turn: Turn, reading: Reading, collection: Collection, *, from_shelf: bool
) -> tuple[list[Plant], list[Plant]]:
    """The plants on record that are meant: those awake, and those asleep that are left out."""
    order = reading.order or Order("dose")
    said = tuple(g for g in reading.genera if g not in order.target.not_genera)
    target = replace(order.target, medium=None, genera=order.target.genera or said)
    found = pick(target, collection, turn.last_plants)
    if not found and target.traits and reading.strength is not None:
        # 'Ruby, 1 l, third': a word of a strength that tells plants apart elsewhere
        found = pick(replace(target, traits=()), collection, turn.last_plants)
    if target.empty and from_shelf and not reading.genera and _wants_dose(turn, reading):
        found = list(collection.plants)
    awake = [p for p in found if not _asleep(p, turn)]
    if not awake:
        return found, []
    return awake, [p for p in found if p not in awake]


def _asleep(plant: Plant, turn: Turn) -> bool:
    reasons = advice_for(plant, turn.today, south=turn.south).reasons
    return any(r.code.startswith("rest") for r in reasons)


def _not_on_record(reading: Reading, plants: list[Plant]) -> tuple[str, ...]:
    """The kinds that were named and are none of these plants: they count as much."""
    target = (reading.order or Order("dose")).target
    named = dict.fromkeys((*target.genera, *reading.genera))
    had = (*target.not_genera, *(g for g in named if any(is_of(p, (g,)) for p in plants)))
    return tuple(g for g in named if g not in had)


def _with_plants(
    turn: Turn, reading: Reading, plants: list[Plant], others: tuple[str, ...]
) -> tuple[Reading, str, bool]:
    """The request for plants on record, and others that were named with them.

    What differs among those on record is taken on the weak side.
    """
    words = turn.words
    genera = tuple(dict.fromkeys((*(p.genus for p in plants if p.genus), *others)))
    states = {growth_on(p, turn.today) for p in plants}
    growth = reading.growth
    if growth is None and len(states) == 1:
        growth = states.pop()
    elif growth is None and "seedling" in states:
        growth = "seedling"
    elif growth is None and states <= GROWING:
        growth = "growing"
    medium = reading.medium or _weakest_medium(plants)
    count = reading.count or sum(p.count for p in plants)
    plain = (
        labels(plants, words) if len(plants) <= 4 else words.say("on-record-plants", count=count)
    )
    deciding = _deciding(plants) if len(genera) > 1 and not others else None
    alike = {(p.medium, growth_on(p, turn.today)) for p in plants}
    if deciding is not None:
        plain = words.say("on-record-deciding", plants=plain, plant=label(deciding, words))
    filled = replace(reading, genera=genera or reading.genera, growth=growth, medium=medium)
    return filled, plain, len(alike) > 1


def _weakest_medium(plants: list[Plant]) -> str | None:
    """The medium that takes most off a dose."""
    known = [p.medium for p in plants if p.medium]
    return min(known, key=lambda m: BY_MEDIUM[m].factor if m in BY_MEDIUM else 1.0, default=None)


def _deciding(plants: list[Plant]) -> Plant | None:
    """The plant whose ceiling is the lowest."""
    classed = [(p, g) for p in plants if (g := genus_of(p)) is not None]
    if not classed:
        return None
    return min(classed, key=lambda pair: CEILINGS[pair[1].feeding_class].n_mg_l)[0]


def _water(reading: Reading, collection: Collection, plants: list[Plant]) -> WaterRow | None:
    """The water on record that is meant, where it adds to what was said."""
    said = reading.water
    if said is None:
        own = {p.water_id for p in plants}
        return collection.water_of(plants[0] if plants and len(own) == 1 else None)
    if said.hardness_mg_l_caco3 is not None or said.ec_ms_cm is not None:
        return None
    fitting = [
        w
        for w in collection.waters
        if w.kind == said.kind and (w.hardness_mg_l_caco3 is not None or w.ec_ms_cm is not None)
    ]
    return fitting[0] if len(fitting) == 1 else None


def _reported(row: WaterRow | None, reading: Reading) -> WaterIons | None:
    """The ions of a report on record, unless other figures were said of the water."""
    said = reading.water
    told = said is not None and (said.ec_ms_cm is not None or said.hardness_mg_l_caco3 is not None)
    return None if told else ions_of(row)


def ions_of(row: WaterRow | None) -> WaterIons | None:
    """A water on record by its ions, None where it has no whole report."""
    told = report_of(row)
    return told.water if told is not None else None


def report_of(row: WaterRow | None) -> Report | None:
    """The report of a water on record, None where it has none that can be."""
    if row is None or not row.ions:
        return None
    try:
        return read_report(row.ions)
    except ValueError:  # records that were taken in from elsewhere
        return None


def _as_said(row: WaterRow, said: Water | None) -> Water:
    known = said or Water(row.kind)
    return Water(
        known.kind,
        known.hardness_mg_l_caco3 or row.hardness_mg_l_caco3,
        known.ec_ms_cm or row.ec_ms_cm,
        known.alkalinity_mg_l_caco3 or row.alkalinity_mg_l_caco3,
    )
