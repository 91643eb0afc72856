"""Feeds on the shelf side by side: what they cost at the same nitrogen, and what they bring."""

from __future__ import annotations

from typing import Any

from bot.conversation import answer as out
from bot.conversation.answering import MOST_L
from bot.conversation.turn import Turn
from bot.conversation.turns.shelf import candidate, title
from bot.dosing.comparing import (
    FEED_L,
    MAX_N_MG_L,
    Compared,
    Offer,
    at_nitrogen,
    least_salty,
)
from bot.dosing.comparing import compare as compared
from bot.dosing.dose import ASSUMED_N_MG_L
from bot.dosing.strength import NOTHING_SAID
from bot.records.models import Product

#: Nitrogen of the ready feed where none was said [mg/L]: what a dose takes for every watering.
USUAL_N_MG_L = ASSUMED_N_MG_L * NOTHING_SAID.factor
#: Elements that are told by what money buys, and feeds that are told one by one.
_TOLD_ELEMENTS = ("N", "P", "K", "Ca", "Mg")
_MOST_TOLD = 6
#: Less money than this is told to two digits, not to the cent.
_FEW_CENTS = 0.1
#: What stops a cost, in the order in which it is asked for.
_STOPS = ("price", "pack_size", "currency", "density")
_COST_SOURCE = (
    "New Mexico State University, Guide A-133, cost of nutrient by weight; University of Wisconsin "
    "Extension, fertilizer math"
)
_SALT_SOURCE = (
    "salt indices after Rader, White and Whittaker, Soil Science 55 (1943) 201; two lists, which "
    "differ"
)
_LABEL_SOURCE = "mass balance on the label"


async def not_on_shelf(turn: Turn) -> out.Answer:
    """Labels were said that are not on the shelf."""
    return turn.ask("compare-none")


async def compare(turn: Turn) -> out.Answer:
    """Compare the feeds that were named, or all on the shelf."""
    shelf = turn.collection
    named = [p for n in turn.order.products if (p := shelf.product_named(n)) is not None]
    priced = turn.order.text == "price"
    feeds = named if len(named) > 1 or (named and priced) else list(shelf.products)
    if not feeds:
        return turn.ask("compare-none")
    if len(feeds) == 1 and not priced:
        return turn.ask("compare-one", name=title(feeds[0], turn))
    n_mg_l, volume_l = _nitrogen(turn), turn.reading.volume_l or FEED_L
    if not 0 < n_mg_l <= MAX_N_MG_L:
        number = turn.words.number
        return turn.refuse("refuse-compare-n", n=number(n_mg_l), most=number(MAX_N_MG_L))
    if not 0 < volume_l <= MOST_L:
        return turn.refuse("refuse-compare-volume", volume=turn.words.number(volume_l))
    return _told(turn, feeds, n_mg_l, volume_l)


def _nitrogen(turn: Turn) -> float:
    reading = turn.reading
    if reading.target_n_mg_l is not None:
        return reading.target_n_mg_l
    return USUAL_N_MG_L if reading.strength is None else reading.strength * ASSUMED_N_MG_L


def _offer(product: Product) -> Offer:
    """A product on the shelf as it is sold; its label is in % of mass."""
    unit = product.pack_unit
    return Offer(
        candidate(product),
        density_kg_l=product.density_kg_l,
        price=product.price,
        currency=product.currency,
        pack=product.pack_size if unit in ("g", "ml") else None,
        pack_unit="ml" if unit == "ml" else "g",
    )


def _told(turn: Turn, feeds: list[Product], n_mg_l: float, volume_l: float) -> out.Answer:
    words, number = turn.words, turn.words.number
    by_key = {str(p.id): p for p in feeds}
    offers = [_offer(p) for p in feeds]
    if len(offers) > 1:
        found = compared(offers, n_mg_l=n_mg_l)
        rows, cheapest, mixed = found.feeds, found.cheapest, found.powder_and_liquid
        unlike = len({p.currency for p in feeds if p.price is not None}) > 1
    else:
        rows, cheapest, mixed, unlike = (at_nitrogen(offers[0], n_mg_l=n_mg_l),), None, False, False
    share = volume_l / FEED_L
    named = [n for n in turn.order.products if turn.collection.product_named(n) is not None]
    alone = len(named) == 1 and len(feeds) > 1
    lines = [
        words.say("compare-all", name=named[0]) if alone else "",
        _first(turn, rows, by_key, cheapest, share, unlike),
        words.say(
            "compare-at",
            volume=number(volume_l),
            n=number(n_mg_l, 0),
            strength=f"{words.significant(100 * n_mg_l / ASSUMED_N_MG_L)} %",
        ),
        *(_line(turn, by_key[r.key], r, share) for r in rows[:_MOST_TOLD]),
        *(_per_money(turn, by_key[r.key], r) for r in rows[:1] if r.key == cheapest),
        *_salts(turn, rows, by_key),
        words.say("compare-powder-liquid") if mixed else "",
        *_missing(turn, rows, by_key),
    ]
    answer = turn.tell("compare", lines, details=_figures(turn, rows, by_key, n_mg_l, volume_l))
    return answer.model_copy(update={"why": _why(turn, rows, by_key)})


def _first(
    turn: Turn,
    rows: tuple[Compared, ...],
    by_key: dict[str, Product],
    cheapest: str | None,
    share: float,
    unlike: bool,
) -> str:
    """What was asked for, before all else."""
    words = turn.words
    volume = words.number(share * FEED_L)
    costs = [r for r in rows if r.cost is not None]
    if len(rows) == 1 and costs:
        product = by_key[rows[0].key]
        return words.say(
            "compare-cost-one",
            name=title(product, turn), cost=_money(turn, product, rows[0], share), volume=volume,
        )  # fmt: skip
    if unlike and len(costs) > 1:
        return words.say("compare-not-ordered")
    if cheapest is None or costs[0].cost == costs[1].cost:
        return words.say("compare-cannot", costs=len(costs))
    product = by_key[cheapest]
    return words.say(
        "compare-cheapest",
        name=title(product, turn), cost=_money(turn, product, rows[0], share), volume=volume,
    )  # fmt: skip


def _money(turn: Turn, product: Product, row: Compared, share: float) -> str:
    """What so much ready feed costs; empty where numbers are missing."""
    if row.cost is None:
        return ""
    cost = row.cost * share
    few = cost < _FEW_CENTS
    shown = turn.words.significant(cost) if few else turn.words.money(cost)
    return turn.words.say("price", price=shown, currency=product.currency or "none", pack="none")


def _amount(turn: Turn, row: Compared, share: float) -> str:
    words = turn.words
    g = None if row.product_g is None else words.significant(row.product_g * share)
    if row.product_ml is not None and g is not None:
        return words.say("compare-amount-both", ml=words.significant(row.product_ml * share), g=g)
    return f"{g} g" if g is not None else "none"


def _line(turn: Turn, product: Product, row: Compared, share: float) -> str:
    words = turn.words
    macro = [] if row.lacking.complete else list(row.lacking.macro)
    micro = bool(row.lacking.micro) or row.lacking.unknown_micro
    forms = [words.say(f"compare-form-{reason.code}") for reason in row.bark_forms]
    return words.say(
        "compare-line",
        name=title(product, turn),
        cost=_money(turn, product, row, share) or "none",
        amount=_amount(turn, row, share),
        lacks=words.listed(macro, either=True) or "none",
        micro="yes" if micro else "no",
        forms=words.listed(forms) or "none",
    )


def _per_money(turn: Turn, product: Product, row: Compared) -> str:
    words = turn.words
    if row.per_money_g is None:
        return ""
    bought = [
        f"{symbol} {words.significant(row.per_money_g[symbol])} g"
        for symbol in _TOLD_ELEMENTS
        if row.per_money_g.get(symbol)
    ]
    currency = product.currency or words.say("compare-currency-none")
    return words.say(
        "compare-per-money",
        name=title(product, turn),
        currency=currency,
        elements=words.listed(bought),
    )


def _salts(turn: Turn, rows: tuple[Compared, ...], by_key: dict[str, Product]) -> list[str]:
    """How much salt they bring for the same nitrogen, and of which that is not known."""
    words = turn.words
    shown = rows[:_MOST_TOLD]
    known = [r for r in shown if r.salt_index is not None]
    unknown = [r for r in shown if r.salt_index is None and "nitrogen" not in r.missing]
    lines = []
    if known:
        least = least_salty(known)
        feeds = [
            words.say(
                "compare-salt-one", name=title(by_key[r.key], turn),
                index=_span(turn, *(r.salt_index or (0.0, 0.0))),
            )
            for r in known
        ]  # fmt: skip
        lines.append(
            words.say(
                "compare-salt",
                feeds=words.listed(feeds),
                least=title(by_key[least], turn) if least is not None else "none",
                count=len(known),
            )
        )
    if unknown:
        names = words.listed([title(by_key[r.key], turn) for r in unknown])
        lines.append(words.say("compare-salt-missing", names=names))
    return lines


def _span(turn: Turn, low: float, high: float) -> str:
    first, last = turn.words.number(low, 1), turn.words.number(high, 1)
    return first if first == last else f"{first}–{last}"


def _missing(turn: Turn, rows: tuple[Compared, ...], by_key: dict[str, Product]) -> list[str]:
    """Which numbers are missing, with a line to send for each."""
    words = turn.words
    lines = []
    for row in rows[:_MOST_TOLD]:
        product = by_key[row.key]
        code = next((c for c in _STOPS if c in row.missing), None)
        if code is not None and "nitrogen" not in row.missing:
            lines.append(
                words.say(
                    f"compare-missing-{code.replace('_', '-')}",
                    name=title(product, turn),
                    unit="ml" if product.form == "liquid" else "g",
                    price=words.say(
                        "price", price=words.number(product.price or 0), pack="none",
                        currency=product.currency or "none",
                    ),
                )
            )  # fmt: skip
    unknown = [title(by_key[r.key], turn) for r in rows if "nitrogen_forms" in r.missing]
    if unknown and not lines:
        lines.append(
            words.say(
                "compare-missing-nitrogen-forms", names=words.listed(unknown), first=unknown[0]
            )
        )
    return lines


def _figures(
    turn: Turn,
    rows: tuple[Compared, ...],
    by_key: dict[str, Product],
    n_mg_l: float,
    volume_l: float,
) -> dict[str, Any]:
    share = volume_l / FEED_L

    def scaled(value: float | None) -> float | None:
        return None if value is None else value * share

    return {
        "n_mg_l": n_mg_l,
        "volume_l": volume_l,
        "feeds": [
            {
                "name": title(by_key[r.key], turn),
                "cost": scaled(r.cost),
                "currency": by_key[r.key].currency,
                "product_g": scaled(r.product_g),
                "product_ml": scaled(r.product_ml),
                "feed_l_per_pack": r.feed_l_per_pack,
                "elements_mg_l": dict(r.elements_mg_l or {}),
                "per_money_g": dict(r.per_money_g or {}),
                "lacking": [*r.lacking.macro, *r.lacking.micro],
                "bark": [reason.code for reason in r.bark_forms],
                "salt_index_per_n": None
                if r.salt_index is None
                else {"low": r.salt_index[0], "high": r.salt_index[1]},
                "salts_estimated": r.salts_estimated,
                "missing": list(r.missing),
            }
            for r in rows
        ],
    }


def _why(turn: Turn, rows: tuple[Compared, ...], by_key: dict[str, Product]) -> list[out.Why]:
    words = turn.words
    why = [
        out.Why(rule="compare.product", factor=1.0, source=_LABEL_SOURCE,
                text=words.say("why-compare-product")),
        out.Why(rule="compare.cost", factor=1.0, source=_COST_SOURCE,
                text=words.say("why-compare-cost")),
    ]  # fmt: skip
    if any(row.salt_index is not None for row in rows):
        why.append(
            out.Why(rule="compare.salt", factor=1.0, source=_SALT_SOURCE,
                    text=words.say("why-compare-salt"))
        )  # fmt: skip
    for row in rows:
        for reason in row.bark_forms:
            text = words.say(
                "why-compare-form",
                name=title(by_key[row.key], turn), form=words.say(f"compare-form-{reason.code}"),
            )  # fmt: skip
            rule = f"compare.{reason.code}"
            why.append(out.Why(rule=rule, factor=1.0, text=text, source=reason.source))
    return why
