"""Two or more feeds side by side, at the same nitrogen in the ready feed.

Powder and liquid are compared by what they bring, never by weight or volume of the pack. What the
labels do not tell is named, not guessed. Money is in whatever currency the prices are in.
"""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from types import MappingProxyType
from typing import Literal

from bot.almanac.rescue import salt_indices
from bot.dosing.choice import RULES, Candidate, Need, Reason
from bot.dosing.completeness import Lacking, lacking
from bot.dosing.concentration import mass_g
from bot.dosing.label import elemental_percent
from bot.dosing.salt_index import index_from_label

#: Ready feed that costs are for [L].
FEED_L = 100.0
MAX_N_MG_L = 1000.0
DENSITY_KG_L = (0.1, 3.0)
#: Shares of salts and water add to 100 % of mass within this [%]; ours.
SALTS_ROUNDING_PERCENT = 2.0
#: The rules on nitrogen forms in bark, their limits and sources: those that order the shelf.
_BARK_FORMS = {rule.code: rule for rule in RULES if rule.code in ("nitrate", "much-urea")}
_BARK = Need(growth=None, medium="bark", water_kind=None, season=None)
_NO_SALTS: Mapping[str, float] = MappingProxyType({})


@dataclass(frozen=True, slots=True)
class Offer:
    """A feed as it is sold.

    Parameters
    ----------
    label : what its label shows; percentages as `percent_of` says
    percent_of : w/w (% of mass) or w/v (g in 100 mL)
    density_kg_l : of a liquid [kg/L], None where not known
    price, currency : of a pack; None where not known
    pack, pack_unit : size of a pack, in g or mL; None where not known
    salts : what it is made of, by name in salt_index.toml [% of mass]; a liquid's water counts
    """

    label: Candidate
    percent_of: Literal["w/w", "w/v"] = "w/w"
    density_kg_l: float | None = None
    price: float | None = None
    currency: str | None = None
    pack: float | None = None
    pack_unit: Literal["g", "ml"] = "g"
    salts: Mapping[str, float] = field(default_factory=lambda: _NO_SALTS)

    def __post_init__(self) -> None:
        key = self.label.key
        if self.percent_of == "w/v" and self.label.form == "powder":
            raise ValueError(f"{key} is a powder: its label is in % of mass, not of volume.")
        for name, value in (("price", self.price), ("pack size", self.pack)):
            if value is not None and not 0 < value < math.inf:
                raise ValueError(f"The {name} of {key} must be more than 0, not {value:g}.")
        low, high = DENSITY_KG_L
        if self.density_kg_l is not None and not low <= self.density_kg_l <= high:
            raise ValueError(
                f"{key} cannot weigh {self.density_kg_l:g} kg/L; {low:g} to {high:g} can be."
            )
        most = 100.0 * (high if self.percent_of == "w/v" else 1.0)
        for percent in (*self.label.analysis, *self.label.extras.values()):
            if not 0 <= percent <= most:
                raise ValueError(f"{key} cannot hold {percent:g} %; 0 to {most:g} % can be.")
        for salt, percent in self.salts.items():
            if salt not in salt_indices():
                raise ValueError(
                    f"{salt!r} has no salt index here; known are {', '.join(salt_indices())}."
                )
            if not 0 <= percent <= 100:
                raise ValueError(f"{key} cannot be {percent:g} % {salt}.")

    @property
    def label_amount(self) -> float | None:
        """A pack in what the percentages are of: g for w/w, mL for w/v; None where not known."""
        if self.pack is None or self.pack_unit == self.label_unit:
            return self.pack
        if self.density_kg_l is None:
            return None
        return self.pack * (self.density_kg_l if self.label_unit == "g" else 1 / self.density_kg_l)

    @property
    def label_unit(self) -> Literal["g", "ml"]:
        """What the percentages are of: g for w/w, mL for w/v."""
        return "g" if self.percent_of == "w/w" else "ml"


@dataclass(frozen=True, slots=True)
class Compared:
    """One feed in a comparison; None where a number is missing.

    Parameters
    ----------
    key : by which the caller knows it
    cost : of 100 litres of ready feed [currency]
    product_g, product_ml : for 100 litres of ready feed [g], [mL]
    feed_l_per_pack : ready feed that one pack makes [L]
    elements_mg_l : in the ready feed, by symbol [mg/L]
    per_money_g : what one unit of money buys, by symbol [g/currency]
    lacking : essential elements its label does not show
    bark_forms : what its nitrogen forms mean in bark: codes and sources of `choice`
    salt_index : of its salts for each percent of nitrogen, least and most; see `salt_index_per_n`
    salts_estimated : whether that is from the label alone
    salt_rank : 1 for the least salt at the same nitrogen; feeds not told apart share a place
    missing : what is not known: price, currency, pack_size, density, nitrogen, nitrogen_forms,
        salts; 'nitrogen' is a feed without any, which cannot be compared by it
    """

    key: str
    cost: float | None
    product_g: float | None
    product_ml: float | None
    feed_l_per_pack: float | None
    elements_mg_l: Mapping[str, float] | None
    per_money_g: Mapping[str, float] | None
    lacking: Lacking
    bark_forms: tuple[Reason, ...]
    salt_index: tuple[float, float] | None
    salts_estimated: bool
    salt_rank: int | None
    missing: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Comparison:
    """Feeds at the same nitrogen.

    Parameters
    ----------
    n_mg_l : nitrogen of the ready feed [mg/L]
    feeds : the cheapest first, those without a cost last
    cheapest : its key; None where fewer than two costs can be compared
    currencies : of the prices; more than one means that costs are not compared
    powder_and_liquid : whether both kinds stand side by side
    """

    n_mg_l: float
    feeds: tuple[Compared, ...]
    cheapest: str | None
    currencies: tuple[str, ...]
    powder_and_liquid: bool


def compare(offers: Sequence[Offer], *, n_mg_l: float) -> Comparison:
    """Compare feeds at the same nitrogen in the ready feed.

    Parameters
    ----------
    offers : two or more, keys all different
    n_mg_l : nitrogen of the ready feed [mg/L]

    Returns
    -------
    Comparison
        The order does not depend on that of the offers. Where currencies differ, or are told for
        some prices only, costs are given but not ordered.

    Raises
    ------
    ValueError
        For fewer than two offers, a key used twice, or nitrogen out of range.

    References
    ----------
    Cost of nutrient by weight: New Mexico State University, Guide A-133; University of Wisconsin
    Extension, fertilizer math. Nitrogen forms: bot/dosing/choice.py. Salt index: Rader, White and
    Whittaker, Soil Science 55 (1943) 201, as an order only, as lists disagree.
    """
    keys = [offer.label.key for offer in offers]
    if len(keys) < 2:
        raise ValueError("It takes two feeds to compare.")
    if len(set(keys)) < len(keys):
        raise ValueError("Each feed can be in a comparison once only.")
    priced = [offer for offer in offers if offer.price is not None]
    told = {offer.currency for offer in priced}
    unlike = len(told) > 1
    ranks = salt_ranks(offers)
    feeds = [
        at_nitrogen(offer, n_mg_l=n_mg_l, salt_rank=ranks.get(offer.label.key), unlike=unlike)
        for offer in offers
    ]
    feeds.sort(key=lambda feed: (_place(feed.cost, unlike), feed.key))
    costs = sum(feed.cost is not None for feed in feeds)
    forms = {offer.label.form for offer in offers}
    return Comparison(
        n_mg_l=n_mg_l,
        feeds=tuple(feeds),
        cheapest=feeds[0].key if costs > 1 and not unlike else None,
        currencies=tuple(sorted(currency for currency in told if currency is not None)),
        powder_and_liquid={"powder", "liquid"} <= forms,
    )


def _place(cost: float | None, unlike: bool) -> float:
    if cost is None:
        return math.inf
    return 0.0 if unlike else cost


def at_nitrogen(
    offer: Offer, *, n_mg_l: float, salt_rank: int | None = None, unlike: bool = False
) -> Compared:
    """One feed at a nitrogen of the ready feed; parameters and errors as in `compare`.

    `salt_rank` is its place among others, `unlike` whether those have prices in other money.
    """
    if not 0 < n_mg_l <= MAX_N_MG_L:
        raise ValueError(
            f"Feeds cannot be compared at {n_mg_l:g} mg/L N; up to {MAX_N_MG_L:g} mg/L can be."
        )
    label = offer.label
    amount = product_for(offer, n_mg_l=n_mg_l) if label.analysis[0] > 0 else None
    pack = offer.label_amount
    money = nutrients_per_money(offer)
    cost = None
    if amount is not None and pack is not None and offer.price is not None:
        cost = offer.price * amount / pack
    return Compared(
        key=label.key,
        cost=cost,
        product_g=_in(offer, "g", amount),
        product_ml=_in(offer, "ml", amount) if label.form == "liquid" else None,
        feed_l_per_pack=None if amount is None or pack is None else FEED_L * pack / amount,
        elements_mg_l=None if amount is None else _elements_mg_l(offer, amount),
        per_money_g=money,
        lacking=lacking(label.analysis, label.extras, trace_elements=label.trace_elements),
        bark_forms=bark_forms(label),
        salt_index=salt_index_per_n(offer),
        salts_estimated=not _salts_known(offer),
        salt_rank=salt_rank,
        missing=_missing(offer, unlike),
    )


def product_for(offer: Offer, *, n_mg_l: float) -> float:
    """Product in 100 litres of ready feed, in the label's unit (`Offer.label_unit`) [g or mL].

    Raises
    ------
    ValueError
        For a feed without nitrogen.
    """
    return mass_g(n_mg_l, FEED_L, offer.label.analysis[0])


def _in(offer: Offer, unit: str, amount: float | None) -> float | None:
    if amount is None or unit == offer.label_unit:
        return amount
    if offer.density_kg_l is None:
        return None
    return amount * (offer.density_kg_l if unit == "g" else 1 / offer.density_kg_l)


def _elements_mg_l(offer: Offer, amount: float) -> Mapping[str, float]:
    percents = elemental_percent(*offer.label.analysis, offer.label.extras)
    return {e: amount * percent * 10 / FEED_L for e, percent in percents.items() if percent > 0}


def nutrients_per_money(offer: Offer) -> Mapping[str, float] | None:
    """What one unit of money buys of each element; None where price, pack or density lack.

    Parameters
    ----------
    offer : a feed as it is sold

    Returns
    -------
    mapping of str to float, or None
        Pure elements by symbol: phosphorus and potassium, not their oxides [g/currency].

    References
    ----------
    New Mexico State University, Guide A-133, for cost by weight of nutrient; a liquid priced by
    volume needs its density.
    """
    pack = offer.label_amount
    if pack is None or offer.price is None:
        return None
    percents = elemental_percent(*offer.label.analysis, offer.label.extras)
    return {e: pack * percent / 100 / offer.price for e, percent in percents.items() if percent > 0}


def bark_forms(label: Candidate) -> tuple[Reason, ...]:
    """What the nitrogen forms on a label mean in bark, as codes of `choice`: nitrate, much-urea."""
    return tuple(
        Reason(code, rule.source) for code, rule in _BARK_FORMS.items() if rule.speaks(label, _BARK)
    )


def _missing(offer: Offer, unlike: bool) -> tuple[str, ...]:
    label = offer.label
    forms = (label.n_nitrate, label.n_ammonium, label.n_urea)
    lacks = {
        "price": offer.price is None,
        "currency": unlike and offer.price is not None and offer.currency is None,
        "pack_size": offer.pack is None,
        "density": offer.density_kg_l is None and _needs_density(offer),
        "nitrogen": label.analysis[0] <= 0,
        "nitrogen_forms": label.analysis[0] > 0 and None in forms,
        "salts": not _salts_known(offer),
    }
    return tuple(code for code, lack in lacks.items() if lack)


def _needs_density(offer: Offer) -> bool:
    other_unit = offer.pack is not None and offer.pack_unit != offer.label_unit
    return other_unit or (offer.percent_of == "w/v" and _salts_known(offer))


# -------------------------------------------------------------------------------- salt index


def salt_ranks(offers: Sequence[Offer]) -> Mapping[str, int]:
    """Order of feeds by salt index at the same nitrogen, for those whose salts are all known.

    A feed's index is that of its salts by mass; against its nitrogen, it says which brings less
    salt for the same feeding. Printed indices disagree, so each feed has a range: its rank counts
    the feeds that are lower beyond doubt. It is no measure of what a plant bears.

    Parameters
    ----------
    offers : feeds as they are sold

    Returns
    -------
    mapping of str to int
        Rank by key, 1 for the least salt; empty where fewer than two can be ranked.
    """
    found = {offer.label.key: _index_per_n(offer) for offer in offers if _salts_known(offer)}
    ranges = {key: index for key, index in found.items() if index is not None}
    if len(ranges) < 2:
        return {}
    return {
        key: 1 + sum(high < low for _, high in ranges.values()) for key, (low, _) in ranges.items()
    }


def salt_index_per_n(offer: Offer) -> tuple[float, float] | None:
    """Salt index of a feed for each percent of nitrogen, least and most.

    Parameters
    ----------
    offer : a feed as it is sold; where its salts are not told, what its label leaves possible

    Returns
    -------
    tuple of float, or None
        None without nitrogen, or where no mix of the listed salts makes the label.

    References
    ----------
    ``salt_index.toml``; `salt_index.index_from_label`.
    """
    if _salts_known(offer):
        return _index_per_n(offer)
    n = offer.label.analysis[0]
    if n <= 0 or offer.percent_of != "w/w":
        return None
    found = index_from_label(offer.label)
    return None if found is None else (found[0] / n, found[1] / n)


def least_salty(feeds: Sequence[Compared]) -> str | None:
    """The feed that brings least salt for its nitrogen beyond doubt, None where none does."""
    ranges = {feed.key: feed.salt_index for feed in feeds if feed.salt_index is not None}
    for key, (_, high) in ranges.items():
        if len(ranges) > 1 and all(high < low for k, (low, _) in ranges.items() if k != key):
            return key
    return None


def _salts_known(offer: Offer) -> bool:
    return abs(sum(offer.salts.values()) - 100) <= SALTS_ROUNDING_PERCENT


def _index_per_n(offer: Offer) -> tuple[float, float] | None:
    """Lowest and highest index of the salts for each percent of nitrogen by mass."""
    grams = _in(offer, "g", 1.0)  # of what the nitrogen is a percentage of
    n = offer.label.analysis[0]
    if grams is None or n <= 0:
        return None
    known = salt_indices()
    low = sum(percent / 100 * known[salt].low for salt, percent in offer.salts.items())
    high = sum(percent / 100 * known[salt].high for salt, percent in offer.salts.items())
    return low * grams / n, high * grams / n
