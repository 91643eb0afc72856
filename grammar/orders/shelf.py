"""The shelf and the kitchen: products, which to take, what one measures with."""

from __future__ import annotations

from dataclasses import replace

from grammar.lexicon import settings_of
from grammar.order import FeedSaid, Order
from grammar.orders import asked, clauses, meant
from grammar.orders.facts import Facts
from grammar.reading import Reading
from grammar.words.marks import written

#: What a syringe or pipette shows lies below this; more is how much it holds [L].
_LARGEST_STEP_L = 0.002
#: What is said of a syringe up to here is how much it holds [L].
_LARGEST_SYRINGE_L = 0.1


def choose(facts: Facts) -> Order | None:
    either = len(facts.products) > 1 and any(t.type == "OR" for t in facts.tokens)
    if (
        not (facts.has("choose") or either)
        or facts.rest.volume_l is not None
        or facts.rest.analysis
    ):
        return None
    return Order("choose", target=facts.target, products=facts.products)


def kit(facts: Facts) -> Order | None:
    rest = facts.rest
    if rest.analysis or rest.form or rest.regime or rest.genera or rest.strength is not None:
        return None
    if facts.target.named:
        return None
    if facts.has("syringe") and rest.volume_l is not None and rest.volume_l <= _LARGEST_STEP_L:
        return Order("kit", syringe_step_ml=1000 * rest.volume_l)
    if facts.has("syringe") and rest.volume_l is not None and rest.volume_l <= _LARGEST_SYRINGE_L:
        return None if facts.has("dose", "dose_word") else Order("kit", text="syringe")
    named = facts.has("have", "my") or facts.starts("vessel")
    vessel = facts.has("can") or (facts.has("vessel") and named)
    can = vessel and rest.volume_l is not None and not facts.has("dose")
    words = facts.has("spoons", "gallons", "imperial", "metric") and rest.volume_l is None
    if can or words or (scale_step(facts) is not None and rest.volume_l is None):
        units = next((c for c in ("gallons", "imperial", "metric", "spoons") if facts.has(c)), "")
        return Order("kit", text="can" if can else units)
    return None


def described(facts: Facts) -> Order | None:
    """A feed on the shelf by what it is, to use or to take away: 'delete the liquid'."""
    if facts.products or facts.target.named or facts.rest.genera or facts.new_name[0]:
        return None
    rest = facts.rest
    if rest.volume_l is not None or rest.label_rate is not None or rest.water is not None:
        return None
    forms = [t.value for t in facts.tokens if t.type == "FORM"]
    spoon = "tsp" if any(t.type == "SPOON" for t in facts.tokens) else ""
    if len(forms) > 1 or not (forms or spoon or rest.analysis or facts.newest):
        return None
    verb = _done_with(facts)
    if verb is None:
        return None
    feed = FeedSaid(rest.analysis or (0.0, 0.0, 0.0), {}, forms[0] if forms else None)
    return Order(verb, feeds=(feed,), unit=spoon, newest=bool(facts.newest))


def _done_with(facts: Facts) -> str | None:
    """What is to be done with a feed that is described; None where it is something else."""
    if "?" in facts.folded.text or facts.has("dose", "dose_word", "remind", "plan", "fed"):
        return None
    counted = any(raw.kind == "number" for raw in facts.raws)
    if counted:
        return None  # 'delete 2 tsp from it'
    if facts.says_any("ceases") and facts.has("use"):
        return "ceased"
    if facts.has("lose", "empty") and not facts.has("have", "add", "new_feed"):
        return "product_remove"
    return "product_default" if facts.has("default") and facts.has("use") else None


def remains(facts: Facts) -> Order | None:
    """'blue tub is nearly empty, 30 ml left': how much is left, which nobody keeps."""
    if not (facts.has("remains") or _left_over(facts)) or facts.question or facts.rest.analysis:
        return None
    if facts.has("dose", "dose_word", "make_it", "fed", "clear", "flush", "remind"):
        return None
    return Order("remains", products=facts.products)


def _left_over(facts: Facts) -> bool:
    """'only 30 ml of blue tub left': an amount, and last of all a word that it is left."""
    last = settings_of(facts.words.lexicon.language).get("left_over", ())
    amount = any(raw.kind == "number" for raw in facts.raws)
    plants = facts.target.names or facts.target.genera
    return bool(facts.raws) and amount and not plants and facts.raws[-1].text in last


def scale_step(facts: Facts) -> float | None:
    """The smallest step of a scale: 'my scale shows 0.1 g', 'is accurate to 0.1 g'."""
    if facts.rest.scale_step_g is not None:
        return facts.rest.scale_step_g
    return facts.rest.weight_g if any(t.type == "SCALE" for t in facts.tokens) else None


def name_alone(facts: Facts) -> Order | None:
    """A name and nothing else, for the feed that was just put on record: 'call it blue tub'."""
    name, held = facts.new_name
    cue = facts.first("naming", "rename")
    if not name or cue is None or facts.products or facts.target.named:
        return None
    said = held | set(range(cue.at, cue.end)) | facts.when[1]
    alone = all(i in said or facts.is_filler(i) for i in range(len(facts.raws)))
    return Order("name", name=name) if alone else None


def products(facts: Facts) -> Order | None:
    """More of what is known of several products: 'blue tub costs 14 €, red box 9 €'."""
    parts = clauses.feeds_apart(facts)
    orders = [product(part) for part in parts]
    told = [o for o in orders if o is not None and o.verb == "product_change"]
    if len(told) < 2 or len(told) < len(orders):
        return None
    return replace(told[0], also=tuple(told[1:]))


def product(facts: Facts) -> Order | None:
    """A product to put on record, or more of what its label says."""
    label, rest = facts.label[0], facts.label_rest
    if rest.genera or rest.strength is not None or rest.regime or rest.target_n_mg_l:
        return None
    if facts.has("dose", "fed") or facts.target.named:
        return None
    if facts.has("make_it") and not (facts.products and facts.has("default")):
        return None
    pack, unit = _pack(facts, rest)
    label = replace(label, pack_size=pack, pack_unit=unit) if pack else label
    name = facts.new_name[0] or None
    inferred, introduced = ("", False) if name or facts.products else _name_before(facts)
    instead = bool(rest.analysis) and facts.has("empty") and not meant.is_denied(facts, "empty")
    if facts.products and not name and not instead:
        said = rest.analysis or rest.label_rate or rest.extras or rest.trace_elements
        if not said and replace(label, pack_size=None, pack_unit=None).empty and not _told(facts):
            return None  # '20 oz of blue': asked for, perhaps
        if (said or not label.empty) and (pack or rest.volume_l is None):
            if len(facts.products) > 1:
                return Order("which_feed", products=facts.products)
            kind = "mix" if asked.of_a_mix(facts) else None
            return Order("product_change", products=facts.products, label=label, asks_kind=kind)
        if facts.has("default"):
            return Order("product_default", products=facts.products)
        return None
    salt = name and rest.extras and any(t.value == "additive" for t in facts.tokens)
    if rest.analysis is None and salt and not (facts.question or rest.volume_l):
        return Order("product", name=name, label=label, text="salt")
    if rest.analysis is None and rest.label_rate is None:
        return None
    doubtful = any(c.slot == "volume_l" for c in rest.conflicts)
    mixing = any(t.type == "FILLER" and t.value == "mix" for t in facts.tokens)
    lone = any(any(c.isdigit() for c in u.text) for u in rest.unknown)
    labelled = facts.has("use") and rest.label_rate is not None and not (mixing or lone)
    shelved = facts.has("shelf") and facts.has("move", "add")
    own = facts.has("my", "add", "have", "new_feed") or labelled or shelved
    own = own or (introduced and not facts.question and not facts.has("make_it"))
    own = own and rest.volume_l is None and not doubtful
    bare = _begins_with_a_feed(facts) and rest.volume_l is None and not doubtful
    bare = bare and not (own or name or facts.question or rest.medium or facts.has("make_it"))
    if bare:
        return Order("product", name=inferred or None, label=label, asks_kind="bare")
    if not (own or name or (instead and facts.products)):
        return None
    order = Order("product", products=facts.products, name=name or inferred or None, label=label)
    return replace(order, standing="instead") if instead else order


def _begins_with_a_feed(facts: Facts) -> bool:
    """'fertilizer is 13-3-15 powder, half a tsp per gallon': a whole label behind 'feed'."""
    rest, first = facts.label_rest, facts.tokens[0]
    head = facts.words.lexicon.words.get(first.raws[0].text)
    feed = head is not None and (head.type, head.value) == ("FILLER", "feeding")
    return feed and rest.analysis is not None and rest.label_rate is not None


def _told(facts: Facts) -> bool:
    """Whether something says that a weight is that of the pack."""
    sold = any(m.type == "LABEL_PART" and m.value in ("pack", "price") for m in facts.found)
    return sold or facts.has("have", "having", "my", "be", "add", "gave", "default")


#: What a name of a feed is made of, and which of it tells one from another.
_IN_A_NAME = frozenset({"UNKNOWN", "CONTAINER", "LOOSE_MEASURE", "FORM", "PLANTS"})
_LONGEST_NAME = 4
#: What leads to a new feed: 'new feed', 'add', 'bought'.
_LEADS = ("new_feed", "add", "have")


def _name_before(facts: Facts) -> tuple[str, bool]:
    """The name before the numbers, and whether it begins the message: 'blue tub is 20-20-20'.

    Where it is not clear which words are the name, there is none.
    """
    at = next((i for i, raw in enumerate(facts.raws) if raw.kind == "analysis"), 0)
    if not at:
        return "", False
    kinds = {t.raws[0].start: t.type for t in facts.tokens}
    marks = (m for m in facts.found if m.type == "TRAIT")
    traits = {i for m in marks for i in range(m.at, m.end)}
    end = at
    linked = facts.folded.text[facts.raws[at - 1].end : facts.raws[at].start].strip() == ":"
    while end and (facts.words.cue_at(end - 1) == "be" or end - 1 in facts.when[1]):
        linked = linked or facts.words.cue_at(end - 1) == "be"
        end -= 1
    start = end
    parted = facts.has(*_LEADS) and facts.raws[at].after_break  # 'new feed: X, 8-8-6'
    while start and (start - 1 in traits or kinds.get(facts.raws[start - 1].start) in _IN_A_NAME):
        if facts.raws[start].after_break and not (start == at and (linked or parted)):
            break
        start -= 1
    words = range(start, end)
    slips = {r.text for r in facts.label_rest.read_as}
    told = [facts.folded.written(facts.raws[i].start, facts.raws[i].end) for i in words]
    telling = any(i in traits or kinds[facts.raws[i].start] == "UNKNOWN" for i in words)
    if not telling or len(words) > _LONGEST_NAME or not slips.isdisjoint(told):
        return "", False
    before = all(facts.is_filler(i) or facts.words.cue_at(i) in _LEADS for i in range(start))
    if parted and not (linked or before):
        return "", False
    return written(facts.folded, [facts.raws[i] for i in words]), linked and before


def _pack(facts: Facts, rest: Reading) -> tuple[float | None, str | None]:
    if rest.weight_g is not None:
        return rest.weight_g, "g"
    sold = facts.new_name[0] or any(
        m.type == "CURRENCY" or (m.type == "LABEL_PART" and m.value in ("pack", "price"))
        for m in facts.found
    )
    if rest.volume_l is not None and sold:
        return 1000 * rest.volume_l, "ml"
    return _pack_of_one(facts) if facts.label[0].price is not None else (None, None)


def _pack_of_one(facts: Facts) -> tuple[float | None, str | None]:
    """The pack of a price by the unit: '22 €/kg', '9 € per litre'."""
    words = facts.words
    for index in range(1, len(facts.raws)):
        entry = words.lexicon.words.get(facts.raws[index].text)
        if entry is not None and words.type_at(index - 1) == "PER":
            unit = {"kilogram": "g", "litre": "ml"}.get(entry.value)
            if unit is not None:
                return 1000.0, unit
    return None, None
