"""The products on the shelf: add, change, use, remove, what they lack, which one suits."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

from bot.conversation import answer as out
from bot.conversation.answering import LEAST_PER_LITRE, MOST_PER_LITRE
from bot.conversation.collection import Collection, pick
from bot.conversation.turn import Turn
from bot.dosing.choice import Candidate, Reason, choose
from bot.dosing.completeness import lacking
from bot.dosing.conductivity import NitrogenForms
from bot.dosing.season import season_of
from bot.records import products
from bot.records.kinds import LabelUnit
from bot.records.models import Product
from grammar import Names

#: Forms of nitrogen are all told where they make up the total within this [1]; labels round.
_WHOLE = 0.05
_NAME_SLOTS = ("volume_l", "analysis", "strength", "month", "season", "count", "label_rate")


async def add(turn: Turn) -> out.Answer:
    """Put a product on the shelf."""
    refusal = _impossible(turn)
    if refusal is not None:
        return refusal
    fields = _fields(turn)
    if turn.reading.analysis is None:
        return turn.ask("ask-product-numbers")
    name = turn.order.name
    if name and _means_more(name, turn):
        return turn.refuse("refuse-name-means", name=name, meaning=turn.words.say("name-is-figure"))
    async with turn.writing() as told:
        product = await products.add(told, **fields)
        if not turn.collection.products:
            await products.make_default(told, product.id)
    lines = [turn.words.say("product-added", product=described(product, turn))]
    if product.label_per_litre is None:
        lines.append(turn.words.say("product-no-rate"))
    if turn.collection.products:
        lines.append(turn.words.say("product-use-it", name=title(product, turn)))
    waiting = None
    if not product.name:
        lines.append(turn.words.say("product-name-it"))
        waiting = {"waiting": {"kind": "product_name", "id": product.id}}
    return turn.tell("products", lines, choices=("undo",), details=waiting)


async def name_it(turn: Turn) -> out.Answer:
    """Name the feed that was just put on record without a name."""
    name = turn.order.name or ""
    number = turn.question.get("id") if turn.question.get("kind") == "product_name" else None
    known = {p.id: p for p in turn.collection.products}
    if number not in known:
        return turn.ask("ask-name-of-what", name=name)
    if _means_more(name, turn):
        return turn.refuse("refuse-name-means", name=name, meaning=turn.words.say("name-is-figure"))
    before = title(known[number], turn)
    async with turn.writing() as told:
        await products.change(told, number, name=name)
    return turn.say("products", "plants-renamed", before=before, name=name, choices=("undo",))


async def rename(turn: Turn) -> out.Answer:
    """Give a product another name."""
    name = turn.order.name or ""
    if _means_more(name, turn):
        return turn.refuse("refuse-name-means", name=name, meaning=turn.words.say("name-is-figure"))
    product = await _named(turn)
    before = title(product, turn)
    async with turn.writing() as told:
        await products.change(told, product.id, name=name)
    return turn.say("products", "plants-renamed", before=before, name=name, choices=("undo",))


async def change(turn: Turn, meant: Product | None = None) -> out.Answer:
    """Add to what is known of a product: the one that was named, or another that is meant."""
    if turn.order.also:
        return await _change_several(turn)
    refusal = _impossible(turn)
    if refusal is not None:
        return refusal
    product = meant or await _named(turn)
    rate = turn.reading.label_rate
    before = product.label_per_litre
    if turn.order.asks_kind == "mix" and rate is not None and before not in (None, rate.per_litre):
        words = turn.words
        shown = words.number(rate.per_litre, 3)
        name = title(product, turn)
        return turn.ask("ask-rate-or-mix", name=name, rate=shown, unit=rate.unit)
    by_volume = rate is not None and rate.unit == "ml" and turn.reading.form is None
    if by_volume and (product.form == "powder" or product.label_unit is LabelUnit.GRAM):
        return turn.ask("ask-form-unit")
    fields = {k: v for k, v in _fields(turn).items() if v is not None and k != "name"}
    if "extras" in fields:
        fields["extras"] = {**(product.extras or {}), **fields["extras"]}
    async with turn.writing() as told:
        product = await products.change(told, product.id, **fields)
    return turn.say(
        "products", "product-changed", product=described(product, turn), choices=("undo",)
    )


async def remains(turn: Turn) -> out.Answer:
    """How much is left of a feed was told: that is not kept."""
    return turn.ask("ask-remains")


async def which_feed(turn: Turn) -> out.Answer:
    """Several feeds and one label or price: it is not clear whose it is."""
    return turn.ask("ask-which-feed", name=turn.order.products[0])


async def _change_several(turn: Turn) -> out.Answer:
    """What was told of several products, one batch."""
    parts = [replace(turn, reading=r) for r in (turn.reading, *turn.reading.further)]
    for part in parts:
        if (refusal := _impossible(part)) is not None:
            return refusal
    named = [await _named(part) for part in parts]
    async with turn.writing() as told:
        changed = []
        for part, product in zip(parts, named, strict=True):
            fields = {k: v for k, v in _fields(part).items() if v is not None and k != "name"}
            changed.append(await products.change(told, product.id, **fields))
    listed = "; ".join(described(product, turn) for product in changed)
    return turn.say("products", "product-changed", product=listed, choices=("undo",))


async def remove(turn: Turn) -> out.Answer:
    """Take a product off the shelf."""
    product = await _named(turn)
    async with turn.writing() as told:
        await products.remove(told, product.id)
    return turn.say("products", "product-removed", name=title(product, turn), choices=("undo",))


async def use(turn: Turn) -> out.Answer:
    """Make a product the one that is meant where none is named."""
    product = await _named(turn)
    async with turn.writing() as told:
        await products.make_default(told, product.id)
    return turn.say("products", "product-default", name=title(product, turn), choices=("undo",))


async def listing(turn: Turn) -> out.Answer:
    """What is on the shelf."""
    async with turn.records.reading() as session:
        listed = await products.listing(session, turn.owner_id)
    if not listed:
        return turn.say("products", "products-none")
    only = len(listed) == 1
    lines = [turn.words.say("products-head", count=len(listed))]
    for product in listed:
        chosen = turn.words.say("product-is-default") if product.is_default and not only else ""
        lines.append(f"- {described(product, turn)}{chosen}")
    rows = [
        {
            "name": p.name,
            "analysis": analysis_of(p),
            "form": p.form,
            "label_per_litre": p.label_per_litre,
            "label_unit": p.label_unit,
            "extras": p.extras or {},
            "default": p.is_default,
        }
        for p in listed
    ]
    return turn.tell("products", lines, details={"products": rows})


async def lacks(turn: Turn) -> out.Answer:
    """Which elements the labels on the shelf do not show."""
    async with turn.records.reading() as session:
        listed = await products.listing(session, turn.owner_id)
    wanted = {n.casefold() for n in turn.order.products}
    meant = [p for p in listed if p.name and p.name.casefold() in wanted] or (
        [] if wanted else listed
    )
    if not meant:
        return turn.say("products", "products-none")
    lines = [_lack_line(p, turn) for p in meant[:6]]
    return turn.tell("products", [*lines, turn.words.say("lack-note")])


def _lack_line(product: Product, turn: Turn) -> str:
    analysis = analysis_of(product)
    traces = bool(product.trace_elements)
    found = lacking(analysis, product.extras or {}, trace_elements=traces)
    if found.unknown_micro:
        macro = turn.words.listed(list(found.macro)) if found.macro else "none"
        return turn.words.say("lack-line-traces", name=title(product, turn), macro=macro)
    macro = turn.words.listed(list(found.macro)) if found.macro else "none"
    micro = turn.words.listed(list(found.micro)) if found.micro else "none"
    return turn.words.say("lack-line", name=title(product, turn), macro=macro, micro=micro)


async def choice(turn: Turn) -> out.Answer:
    """Which product on the shelf suits the plants that are meant."""
    collection = turn.collection
    if not collection.products:
        return turn.say("products", "choice-none")
    chosen = best_for(turn, collection)
    if chosen is None:
        return turn.say("products", "choice-none")
    product, reasons, close = chosen
    lines = [turn.words.say("choice-best", name=title(product, turn))]
    said = [(r, turn.words.say(f"choice-{r.code}")) for r in reasons]
    lines += [f"- {text}" for _, text in said[:4]]
    if len(collection.products) == 1:
        lines.append(turn.words.say("choice-only"))
    elif close:
        lines.append(turn.words.say("choice-close"))
    codes = [r.code for r in reasons]
    why = [
        out.Why(rule=f"choice.{r.code}", factor=1.0, text=text, source=r.source) for r, text in said
    ]
    answer = turn.tell("products", lines, details={"product": product.name, "reasons": codes})
    return answer.model_copy(update={"why": why})


def best_for(turn: Turn, collection: Collection) -> tuple[Product, list[Reason], bool] | None:
    """The product that suits the plants meant, with the reasons."""
    by_key = {str(p.id): p for p in collection.products}
    plants = pick(turn.order.target, collection, turn.last_plants)
    first = plants[0] if plants else None
    water = turn.reading.water.kind if turn.reading.water else None
    if water is None and (on_record := collection.water_of(first)) is not None:
        water = on_record.kind
    media = {p.medium for p in plants if p.medium}
    states = {p.growth for p in plants if p.growth}
    found = choose(
        [candidate(p) for p in collection.products],
        growth=turn.reading.growth or (states.pop() if len(states) == 1 else None),
        medium=turn.reading.medium or (media.pop() if len(media) == 1 else None),
        water_kind=water,
        season=turn.reading.season or season_of(turn.today.month, south=turn.south),
    )
    if found.best is None:
        return None
    ranked = next(r for r in found.ranked if r.key == found.best)
    return by_key[found.best], list(ranked.reasons), found.close


def candidate(product: Product) -> Candidate:
    """A product of the shelf as the choice sees it."""
    return Candidate(
        key=str(product.id),
        analysis=analysis_of(product),
        extras=product.extras or {},
        form=product.form,
        n_nitrate=product.n_nitrate,
        n_ammonium=product.n_ammonium,
        n_urea=product.n_urea,
        trace_elements=bool(product.trace_elements),
    )


# --- helpers --------------------------------------------------------------------------------


def analysis_of(product: Product) -> tuple[float, float, float]:
    """N, P2O5, K2O [% of mass]; unknown counts as none."""
    return (product.n or 0.0, product.p2o5 or 0.0, product.k2o or 0.0)


def nitrogen_forms(product: Product) -> NitrogenForms | None:
    """Shares of a product's nitrogen by form, None where its label has not all of them."""
    forms = (product.n_nitrate, product.n_ammonium, product.n_urea)
    total, n = sum(f or 0.0 for f in forms), product.n or 0.0
    whole = n > 0 and abs(total / n - 1) <= _WHOLE
    return NitrogenForms(*((f or 0.0) / total for f in forms)) if whole else None


def numbers(product: Product, turn: Turn) -> str:
    """The three numbers as on the label."""
    return "-".join(turn.words.number(a) for a in analysis_of(product))


def title(product: Product, turn: Turn) -> str:
    """What to call a product: its name, otherwise its numbers and form."""
    if product.name:
        return product.name
    return turn.words.say("product", analysis=numbers(product, turn), form=product.form or "none")


def described(product: Product, turn: Turn) -> str:
    """A product with what is known of it."""
    words = turn.words
    plain = words.say("product", analysis=numbers(product, turn), form=product.form or "none")
    facts = [plain] if product.name else []
    facts += [f"{e} {words.number(v)} %" for e, v in (product.extras or {}).items()]
    if product.trace_elements:
        facts.append(words.say("trace-elements"))
    for form, value in (
        ("nitrate", product.n_nitrate),
        ("ammonium", product.n_ammonium),
        ("urea", product.n_urea),
    ):
        if value is not None:
            facts.append(words.say(f"n-{form}", percent=words.number(value)))
    if product.label_per_litre is not None:
        facts.append(
            words.say(
                "label-rate",
                rate=words.number(product.label_per_litre, 3),
                unit=product.label_unit or "g",
            )
        )
    if product.density_kg_l is not None:
        facts.append(words.say("density", density=words.number(product.density_kg_l)))
    if product.price is not None:
        pack = _pack(product, turn)
        facts.append(
            words.say(
                "price",
                price=words.number(product.price),
                currency=product.currency or "none",
                pack=pack or "none",
            )
        )
    elif product.pack_size is not None:
        facts.append(_pack(product, turn))
    name = product.name or plain
    return f"{name} ({', '.join(facts)})" if facts else name


def _pack(product: Product, turn: Turn) -> str:
    if product.pack_size is None:
        return ""
    return f"{turn.words.number(product.pack_size)} {product.pack_unit}"


async def _named(turn: Turn) -> Product:
    async with turn.records.reading() as session:
        found = await products.by_name(session, turn.owner_id, turn.order.products[0])
    assert found is not None  # the reader knows only names on record
    return found


def _fields(turn: Turn) -> dict[str, Any]:
    reading, label = turn.reading, turn.order.label
    n, p2o5, k2o = reading.analysis or (None, None, None)
    rate = reading.label_rate
    fields: dict[str, Any] = {
        "name": turn.order.name,
        "form": reading.form,
        "n": n,
        "p2o5": p2o5,
        "k2o": k2o,
        "extras": dict(reading.extras) or None,
        "trace_elements": True if reading.trace_elements else None,
        "n_nitrate": label.nitrogen.get("n_nitrate"),
        "n_ammonium": label.nitrogen.get("n_ammonium"),
        "n_urea": label.nitrogen.get("n_urea"),
        "label_per_litre": rate.per_litre if rate else None,
        "label_unit": LabelUnit(rate.unit) if rate else None,
        "density_kg_l": label.density_kg_l,
        "price": label.price,
        "currency": label.currency,
        "pack_size": label.pack_size,
        "pack_unit": label.pack_unit,
    }
    if fields["form"] is None and rate is not None and rate.unit == "ml":
        fields["form"] = "liquid"
    return fields


def _impossible(turn: Turn) -> out.Answer | None:
    """A label that contradicts itself or cannot be."""
    reading, label = turn.reading, turn.order.label
    words = turn.words
    total = sum(reading.analysis or ()) + sum(reading.extras.values())
    if total > 100:
        numbers_ = "-".join(words.number(a) for a in reading.analysis or ())
        return turn.refuse("refuse-analysis-over", analysis=numbers_)
    if reading.analysis is not None and not any(reading.analysis) and not reading.extras:
        return turn.refuse("refuse-analysis-zero")
    rate = reading.label_rate
    if rate is not None and not LEAST_PER_LITRE <= rate.per_litre <= MOST_PER_LITRE:
        return turn.refuse("refuse-label-absurd", rate=words.number(rate.per_litre), unit=rate.unit)
    if rate is not None and rate.unit == "ml" and reading.form == "powder":
        return turn.ask("ask-form-unit")
    forms = sum(label.nitrogen.values())
    if reading.analysis is not None and forms > reading.analysis[0] * 1.01 + 0.05:
        return turn.refuse(
            "refuse-nitrogen-over", forms=words.number(forms), n=words.number(reading.analysis[0])
        )
    if reading.form == "granules":
        return turn.refuse("refuse-granules")
    return None


def _means_more(name: str, turn: Turn) -> bool:
    reading = turn.read_again(name, Names())
    figures = any(getattr(reading, slot) is not None for slot in _NAME_SLOTS) or reading.genera
    return bool(figures) or not any(c.isalpha() for c in name)
