"""The shelf and the kitchen: products, which to take, what one measures with."""

from __future__ import annotations

from dataclasses import replace

from grammar.order import Order
from grammar.orders import clauses
from grammar.orders.facts import Facts
from grammar.reading import Reading

#: What a syringe or pipette shows lies below this; more is how much it holds [L].
_LARGEST_STEP_L = 0.002


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
    named = facts.has("have", "my") or facts.starts("vessel")
    vessel = facts.has("can") or (facts.has("vessel") and named)
    can = vessel and rest.volume_l is not None and not facts.has("dose")
    words = facts.has("spoons", "gallons", "imperial", "metric") and rest.volume_l is None
    if can or words or (scale_step(facts) is not None and rest.volume_l is None):
        units = next((c for c in ("gallons", "imperial", "metric", "spoons") if facts.has(c)), "")
        return Order("kit", text="can" if can else units)
    return None


def scale_step(facts: Facts) -> float | None:
    """The smallest step of a scale: 'my scale shows 0.1 g', 'is accurate to 0.1 g'."""
    if facts.rest.scale_step_g is not None:
        return facts.rest.scale_step_g
    return facts.rest.weight_g if any(t.type == "SCALE" for t in facts.tokens) else None


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
    if facts.products and not name:
        said = rest.analysis or rest.label_rate or rest.extras or rest.trace_elements
        if (said or not label.empty) and (pack or rest.volume_l is None):
            if len(facts.products) > 1:
                return Order("which_feed", products=facts.products)
            return Order("product_change", products=facts.products, label=label)
        if facts.has("default"):
            return Order("product_default", products=facts.products)
        return None
    if rest.analysis is None and rest.label_rate is None:
        return None
    doubtful = any(c.slot == "volume_l" for c in rest.conflicts)
    labelled = facts.has("use") and rest.label_rate is not None
    shelved = facts.has("shelf") and facts.has("move", "add")
    own = facts.has("my", "add", "have") or labelled or shelved
    own = own and rest.volume_l is None and not doubtful
    if not (own or name):
        return None
    return Order("product", products=facts.products, name=name, label=label)


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
