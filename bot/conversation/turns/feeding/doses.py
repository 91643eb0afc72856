"""A dose with what is on record filled in, and follow-ups to the last one."""

from __future__ import annotations

from dataclasses import asdict, dataclass, replace
from datetime import datetime, timedelta
from typing import Any

from bot.conversation import answer as out
from bot.conversation.answering import OnRecord, respond, understood, worked_out
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
from bot.conversation.turns.standing import rescue_log
from bot.conversation.turns.standing.advice import advice_for, genus_of, growth_on, water_for
from bot.dosing.dose import Dose, DoseRequest
from bot.dosing.strength import BY_MEDIUM, CEILINGS, GROWING
from bot.dosing.water import Report, read_report
from bot.dosing.water import Water as WaterIons
from bot.records.models import Plant, Product
from bot.records.models import Water as WaterRow
from grammar import LabelRate, Order, Reading, Target, Water

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
    "scale_step_g",
)
_PRODUCT_SLOTS = ("analysis", "extras", "form", "label_rate")
_PLANT_SLOTS = ("genera", "medium", "growth", "count")


async def dose(turn: Turn) -> out.Answer:
    """A dose; a short message right after one, or an answer to our question, adds to it."""
    collection = turn.collection
    last = _last(turn)
    reading = turn.reading
    if turn.incoming.shared:  # somebody else's words add to nothing of one's own
        return await _answered(turn, reading, collection)
    if _only_names(turn):
        return await plants_listed(turn)
    if _tells_of_plants(turn):
        return await guide.greeted(turn)
    lacking_rate = [p for p in collection.products if p.label_per_litre is None]
    if len(lacking_rate) == 1 and _only_a_rate(turn):  # what `product-no-rate` asked for
        return await shelf.change(turn, lacking_rate[0])
    if last is not None and _adds(turn, collection):
        reading = _merged(turn, last, reading)
        return _stays(turn, last, reading, await _answered(turn, reading, collection))
    unclear = bool(reading.conflicts or reading.problems)
    anew = reading.analysis or reading.volume_l is not None or turn.order.products
    # A line that was not understood does not end what it was said about.
    kept = last is None or not unclear or bool(anew)
    return await _answered(turn, reading, collection, kept=kept)


async def listed(turn: Turn) -> out.Answer:
    """A bare list of plants: those of a dose that is being asked for, else to be put on record."""
    if turn.question.get("kind") == "dose" or _last(turn) is not None:
        order = replace(turn.order, verb="dose", plants=())
        return await dose(replace(turn, reading=replace(turn.reading, order=order)))
    words = turn.words
    said = "; ".join(plant_said(p, words) for p in turn.order.plants)
    choices = (words.say("rescue-answer-yes"), words.say("rescue-answer-no"))
    answer = turn.ask("ask-add-listed", plants=said, choices=choices)
    waiting = {"kind": "add", "text": turn.incoming.text}
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
    if turn.question.get("kind") == "dose":
        whole = reading.volume_l is not None and reading.analysis is not None
        return not whole and (_says(reading) or not turn.order.target.empty)
    if reading.analysis is not None:  # a reply to a dose puts its feed right
        return turn.incoming.below is not None and reading.volume_l is None
    if reading.volume_l is not None or turn.order.products or not turn.order.target.empty:
        return reading.volume_l is not None and not collection.products
    return _says(reading)


def _says(reading: Reading) -> bool:
    return any(getattr(reading, slot) not in (None, (), {}, False) for slot in _CARRIED)


async def follow_up(turn: Turn) -> out.Answer:
    """The last request with something changed."""
    last = _last(turn)
    if last is None and turn.incoming.overtaken:
        return turn.refuse("refuse-overtaken")
    if last is None:
        if turn.order.products and not _says(turn.reading):
            return await shelf.use(turn)
        if turn.order.factor is None and _says(turn.reading):
            async with turn.records.reading() as session:
                collection = await load(session, turn.owner_id)
            return await _answered(turn, turn.reading, collection)
        return turn.ask("ask-no-last")
    collection = turn.collection
    changes = turn.order.factor or turn.order.products or not turn.order.target.empty
    if not changes and not _says(turn.reading):
        return turn.ask("ask-follow-up")  # 'and for Dot?', where no Dot is known
    reading = _merged(turn, last, turn.reading)
    if turn.order.factor is not None:
        reading = _scaled(reading, last, turn.order.factor)
    return _stays(turn, last, reading, await _answered(turn, reading, collection))


def has_last(turn: Turn) -> bool:
    """Whether there is a last request that still counts."""
    return _last(turn) is not None


def _stays(turn: Turn, last: dict[str, Any], reading: Reading, answer: out.Answer) -> out.Answer:
    """Says where another rhythm leaves a strength as it is that was asked for by itself."""
    new, before = turn.reading, last["slots"]
    moved = new.strength is not None or new.target_n_mg_l is not None or turn.order.factor
    if new.regime in (None, before.get("regime")) or moved or reading.strength is None:
        return answer
    if answer.kind != "dose":
        return answer
    share = turn.words.share(reading.strength)
    first, _, rest = answer.reply.partition("\n")
    note = turn.words.say("follow-up-strength-stays", share=share)
    return answer.model_copy(update={"reply": "\n".join((first, note, rest))})


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
    if products or new.analysis is not None:
        for slot in _PRODUCT_SLOTS:
            slots.pop(slot, None)
    if new.genera or not target.empty:
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
    if new.strength is not None or new.target_n_mg_l is not None:
        for slot in ("strength", "target_n_mg_l", "target_ec_ms_cm"):
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
    return replace(base, order=Order("dose", target=target, products=products))


def _from_json(slot: str, value: Any) -> Any:
    if value is None:
        return None
    if slot in ("analysis", "genera"):
        return tuple(value)
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
    filled, on_record = _filled(turn, reading, collection)
    setting = replace(turn.setting, on_record=on_record)
    answer = respond(filled, setting)
    answer = answer.model_copy(
        update={"understood": understood(turn.reading), "message": turn.incoming.text}
    )
    if answer.kind == "dose":
        answer = answer.model_copy(update={"details": {"known": _known(filled)}})
        _, plants, _ = _counted(turn, reading, collection)
        recovers = await rescue_log.note(turn, plants)
        if recovers:
            answer = answer.model_copy(update={"reply": f"{recovers}\n{answer.reply}"})
    if kept and answer.kind in ("dose", "ask", "no_feed"):
        await _remember(turn, reading, answer)
    return answer


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
        s: asdict(v) if isinstance(v, Water | LabelRate) else v
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
    product, plants, asleep = _counted(turn, reading, collection)
    own_rate = reading.label_rate is not None
    if product is not None:
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
