"""The products on the shelf: add, change, use, remove, what they lack, which one suits."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

from bot.conversation import answer as out
from bot.conversation.answering import LEAST_PER_LITRE, MOST_PER_LITRE, label_said
from bot.conversation.collection import Collection, pick
from bot.conversation.turn import Turn
from bot.dosing.choice import Candidate, Reason, choose
from bot.dosing.completeness import lacking
from bot.dosing.conductivity import NitrogenForms
from bot.dosing.season import season_of
from bot.records import log, products
from bot.records.kinds import EventKind, LabelUnit
from bot.records.models import Product
from grammar import Names

#: Forms of nitrogen are all told where they make up the total within this [1]; labels round.
_WHOLE = 0.05
_PARTS = ("n", "p2o5", "k2o")
_NITROGEN = ("n_nitrate", "n_ammonium", "n_urea")
_NAME_SLOTS = ("volume_l", "analysis", "strength", "month", "season", "count", "label_rate")


async def add(turn: Turn) -> out.Answer:
    """Put a product on the shelf."""
    refusal = _impossible(turn)
    if refusal is not None:
        return refusal
    fields = _fields(turn)
    if turn.order.text == "salt":  # 'magnesium sulfate 9.8 % Mg' has none of the three
        fields |= {"n": 0.0, "p2o5": 0.0, "k2o": 0.0}
    elif turn.reading.analysis is None:
        return turn.ask("ask-product-numbers")
    name = turn.order.name
    if name and _means_more(name, turn):
        return turn.refuse("refuse-name-means", name=name, meaning=turn.words.say("name-is-figure"))
    emptied = _emptied(turn)
    same = _same(turn) if not name and not emptied else None
    if same is not None:  # 'my feed is 15-30-15 powder, 1.5 g per litre', told again
        return await change(turn, same)
    async with turn.writing() as told:
        for empty in emptied:
            await products.remove(told, empty.id)
        product = await products.add(told, **fields)
        if emptied or not turn.collection.products:
            await products.make_default(told, product.id)
    lines = [turn.words.say("product-added", product=described(product, turn))]
    lines += [turn.words.say("product-removed", name=title(p, turn)) for p in emptied]
    if product.label_per_litre is None:
        lines.append(turn.words.say("product-no-rate"))
    if turn.collection.products and not emptied:
        lines.append(turn.words.say("product-use-it", name=title(product, turn)))
    waiting = None
    if not product.name:
        lines.append(turn.words.say("product-name-it"))
        waiting = {"waiting": {"kind": "product_name", "id": product.id}}
    return turn.tell("products", lines, choices=("undo",), details=waiting)


def _emptied(turn: Turn) -> list[Product]:
    """The feeds that a new one stands in for: those that were said to be empty, or the only one."""
    shelf = turn.collection.products
    if turn.order.standing != "instead":
        return []
    named = [turn.collection.product_named(n) for n in turn.order.products]
    return [p for p in named if p is not None] or list(shelf if len(shelf) == 1 else ())


async def name_it(turn: Turn) -> out.Answer:
    """Name the feed that was just put on record without a name."""
    name = turn.order.name or ""
    waiting = turn.question.get("kind") == "product_name"
    number = turn.question.get("id") if waiting else await _to_be_named(turn)
    known = {p.id: p for p in turn.collection.products}
    if number not in known:
        return turn.ask("ask-name-of-what", name=name)
    if _means_more(name, turn):
        return turn.refuse("refuse-name-means", name=name, meaning=turn.words.say("name-is-figure"))
    before = title(known[number], turn)
    async with turn.writing() as told:
        await products.change(told, number, name=name)
    return turn.say("products", "plants-renamed", before=before, name=name, choices=("undo",))


async def _to_be_named(turn: Turn) -> int | None:
    """The product that 'call it blue' means: the only one, or the last that has no name.

    None where a plant was put on record last: it could be meant.
    """
    known = turn.collection.products
    async with turn.records.reading() as session:
        last = await log.last_batch(session, turn.owner_id) if known else []
    if not known or any(entry.kind is EventKind.ADDED for entry in last):
        return None
    if len(known) == 1:
        return known[0].id
    nameless = [p.id for p in known if not p.name]
    return max(nameless, default=None)


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
    product = meant or await _named(turn)
    refusal = _impossible(turn, product)
    if refusal is not None:
        return refusal
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
    async with turn.writing() as told:
        product = await _add_to(told, product, turn)
    return turn.say(
        "products", "product-changed", product=described(product, turn), choices=("undo",)
    )


async def remains(turn: Turn) -> out.Answer:
    """How much is left of a feed was told: that is not kept."""
    return turn.ask("ask-remains")


def _same(turn: Turn) -> Product | None:
    """The one product on the shelf with the numbers, and the form, of one that was told."""
    reading = turn.reading

    def fits(product: Product) -> bool:
        forms = {reading.form, product.form} - {None}
        extras, known = dict(reading.extras), product.extras or {}
        alike = all(known.get(e, v) == v for e, v in extras.items())
        return analysis_of(product) == reading.analysis and len(forms) < 2 and alike

    found = [p for p in turn.collection.products if fits(p)]
    return found[0] if len(found) == 1 else None


async def unshelved(turn: Turn) -> out.Answer:
    """A salt or an extract that is not on the shelf: no amount of it, nor of another feed."""
    return turn.ask("ask-unshelved", what=turn.order.text)


async def which_feed(turn: Turn) -> out.Answer:
    """Several feeds and one label or price: it is not clear whose it is."""
    return turn.ask("ask-which-feed", name=turn.order.products[0])


async def _change_several(turn: Turn) -> out.Answer:
    """What was told of several products, one batch."""
    parts = [replace(turn, reading=r) for r in (turn.reading, *turn.reading.further)]
    named = [await _named(part) for part in parts]
    for part, product in zip(parts, named, strict=True):
        if (refusal := _impossible(part, product)) is not None:
            return refusal
    async with turn.writing() as told:
        changed = [
            await _add_to(told, product, part) for part, product in zip(parts, named, strict=True)
        ]
    listed = "; ".join(described(product, turn) for product in changed)
    return turn.say("products", "product-changed", product=listed, choices=("undo",))


async def _add_to(told: log.Said, product: Product, turn: Turn) -> Product:
    """Put what was told of a product to what is known of it by now."""
    product = await products.get(told.session, told.owner_id, product.id)
    known = {k: v for k, v in _merged(turn, product).items() if v is not None and k != "name"}
    return await products.change(told, product.id, **known)


async def remove(turn: Turn) -> out.Answer:
    """Take a product off the shelf."""
    product = _meant(turn)
    if isinstance(product, out.Answer):
        return product
    async with turn.writing() as told:
        await products.remove(told, product.id)
    return turn.say("products", "product-removed", name=title(product, turn), choices=("undo",))


async def use(turn: Turn) -> out.Answer:
    """Make a product the one that is meant where none is named."""
    product = _meant(turn)
    if isinstance(product, out.Answer):
        return product
    async with turn.writing() as told:
        await products.make_default(told, product.id)
    return turn.say("products", "product-default", name=title(product, turn), choices=("undo",))


async def ceased(turn: Turn) -> out.Answer:
    """A feed is no longer used: how to take it off the shelf, or to name another."""
    product = _meant(turn)
    if isinstance(product, out.Answer):
        return product
    name = title(product, turn)
    return turn.ask("ask-ceased", name=name, choices=(turn.words.say("says-remove", name=name),))


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


def newest(collection: Collection) -> Product | None:
    """The product that was put on record last."""
    return max(collection.products, key=lambda p: p.id, default=None)


def _meant(turn: Turn) -> Product | out.Answer:
    """The product that was named or described; our question where it is none, or one of several."""
    order, shelf = turn.order, turn.collection
    if order.products:
        named = shelf.product_named(order.products[0])
        assert named is not None  # the reader knows only names on record
        return named
    found = list(shelf.products)
    last = newest(shelf)
    if order.newest and last is not None:
        return last
    for feed in order.feeds:
        found = [p for p in found if not any(feed.analysis) or analysis_of(p) == feed.analysis]
        found = [p for p in found if feed.form is None or p.form == feed.form]
    if order.unit:
        found = [p for p in found if p.label_unit == order.unit]
    if len(found) == 1:
        return found[0]
    if not shelf.products:
        return turn.say("products", "products-none")
    listed = "; ".join(described(p, turn) for p in found or shelf.products)
    return turn.ask("ask-which-product", products=listed, several="yes" if found else "no")


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


def _merged(turn: Turn, product: Product | None) -> dict[str, Any]:
    """What was told, with the further elements that are on record of the product."""
    fields = _fields(turn)
    if fields["extras"] and product is not None:
        fields["extras"] = {**(product.extras or {}), **fields["extras"]}
    return fields


def _whole(turn: Turn, product: Product | None) -> dict[str, Any]:
    """The label as it would be: what was told, and what is on record of the product."""
    told = _merged(turn, product)
    return {k: getattr(product, k, None) if v is None else v for k, v in told.items()}


def _impossible(turn: Turn, product: Product | None = None) -> out.Answer | None:
    """A label that contradicts itself or cannot be; `product`: the one that it is told of."""
    reading = turn.reading
    words = turn.words
    whole = _whole(turn, product)
    analysis, extras = [whole[k] or 0.0 for k in _PARTS], whole["extras"] or {}
    numbered = reading.analysis is not None
    if (numbered or reading.extras) and sum(analysis) + sum(extras.values()) > 100:
        return turn.refuse("refuse-analysis-over", analysis=label_said(analysis, extras, words))
    if numbered and not any(analysis) and not extras:
        return turn.refuse("refuse-analysis-zero")
    rate = reading.label_rate
    if rate is not None and not LEAST_PER_LITRE <= rate.per_litre <= MOST_PER_LITRE:
        return turn.refuse("refuse-label-absurd", rate=words.number(rate.per_litre), unit=rate.unit)
    if rate is not None and rate.unit == "ml" and reading.form == "powder":
        return turn.ask("ask-form-unit")
    n, forms = whole["n"], sum(whole[k] or 0.0 for k in _NITROGEN)
    told = numbered or turn.order.label.nitrogen
    if told and n is not None and forms > n * 1.01 + 0.05:
        return turn.refuse("refuse-nitrogen-over", forms=words.number(forms), n=words.number(n))
    if reading.form == "granules":
        return turn.refuse("refuse-granules")
    return None


def _means_more(name: str, turn: Turn) -> bool:
    reading = turn.read_again(name, Names())
    figures = any(getattr(reading, slot) is not None for slot in _NAME_SLOTS) or reading.genera
    return bool(figures) or not any(c.isalpha() for c in name)
