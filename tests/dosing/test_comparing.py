"""Two or more feeds side by side, at the same nitrogen."""

from __future__ import annotations

import random
from dataclasses import replace
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st
from molmass import Formula
from scipy.optimize import linprog  # type: ignore[import-untyped]

from bot.almanac.rescue import salt_indices
from bot.dosing.choice import Candidate, choose
from bot.dosing.comparing import (
    Compared,
    Comparison,
    Offer,
    at_nitrogen,
    bark_forms,
    compare,
    least_salty,
    nutrients_per_money,
    salt_index_per_n,
    salt_ranks,
)
from bot.dosing.salt_index import index_from_label, minimum

POWDER = Offer(Candidate("powder", (20, 20, 20), form="powder"), price=20, pack=1000)
LIQUID = Offer(
    Candidate("liquid", (7, 3, 6), form="liquid"),
    density_kg_l=1.2,
    price=10,
    pack=1000,
    pack_unit="ml",
)


def feed(key: str, comparison: Comparison) -> Compared:
    return next(found for found in comparison.feeds if found.key == key)


def offer(key: str, analysis: tuple[float, float, float], **fields: Any) -> Offer:
    return Offer(Candidate(key, analysis, form=fields.pop("form", "powder")), **fields)


def test_powder_and_liquid_are_compared_at_the_same_nitrogen() -> None:
    # mass balance: 100 l at 100 mg/l N is 10 g N; 50 g of 20 %, or 142.86 g of 7 %
    found = compare([LIQUID, POWDER], n_mg_l=100)
    powder, liquid = feed("powder", found), feed("liquid", found)
    assert powder.product_g == pytest.approx(50)
    assert powder.product_ml is None
    assert powder.cost == pytest.approx(1.0)  # 50 g at 20 a kilo
    assert liquid.product_g == pytest.approx(142.857, abs=0.001)
    assert liquid.product_ml == pytest.approx(119.048, abs=0.001)
    assert liquid.cost == pytest.approx(1.1905, abs=0.0001)  # 119 ml at 10 a litre
    assert found.powder_and_liquid
    # the bottle costs half of the bag for the same size on the shelf, and is dearer all the same
    assert found.cheapest == "powder"
    assert [f.key for f in found.feeds] == ["powder", "liquid"]


def test_a_label_in_mass_a_volume_needs_no_density() -> None:
    # 3 g in 100 ml is 30 g N a litre
    by_volume = offer("w/v", (3, 1, 5), form="liquid", percent_of="w/v", pack_unit="ml")
    by_volume = replace(by_volume, price=6.0, pack=1000)
    found = feed("w/v", compare([by_volume, POWDER], n_mg_l=90))
    assert found.product_ml == pytest.approx(300)
    assert found.product_g is None
    assert found.cost == pytest.approx(1.8)
    assert "density" not in found.missing


def test_a_label_in_mass_a_volume_sold_by_weight_needs_the_density() -> None:
    # a kilo of 1.25 kg/l is 800 ml, which hold 80 g N; a feed of 10 g N takes an eighth of it
    by_volume = offer("w/v", (10, 5, 5), form="liquid", percent_of="w/v", price=8.0, pack=1000)
    assert feed("w/v", compare([by_volume, POWDER], n_mg_l=100)).missing[0] == "density"
    known = replace(by_volume, density_kg_l=1.25)
    found = feed("w/v", compare([known, POWDER], n_mg_l=100))
    assert found.cost == pytest.approx(1.0)
    assert found.product_g == pytest.approx(125)


def test_elements_in_the_feed_are_those_of_the_label() -> None:
    # 20-20-20 is 20N-8.73P-16.60K: Wang's abstracts print 8.6 and 16.6
    found = feed("powder", compare([POWDER, LIQUID], n_mg_l=200))
    assert found.elements_mg_l is not None
    assert dict(found.elements_mg_l) == pytest.approx({"N": 200, "P": 87.3, "K": 166.0}, abs=0.05)


def test_money_buys_what_is_in_the_pack() -> None:
    bought = nutrients_per_money(POWDER)
    assert bought is not None
    assert bought["N"] == pytest.approx(10)  # 200 g N for 20
    assert bought["K"] == pytest.approx(8.30, abs=0.005)  # Penn State: 10 % K2O is 8.3 % K


@pytest.mark.parametrize(
    ("incomplete", "missing"),
    [
        (replace(POWDER, price=None), "price"),
        (replace(POWDER, pack=None), "pack_size"),
        (replace(LIQUID, density_kg_l=None), "density"),
        (offer("powder", (0, 52, 34), price=9, pack=500), "nitrogen"),
    ],
)
def test_what_is_missing_is_named_and_not_guessed(incomplete: Offer, missing: str) -> None:
    found = compare([incomplete, offer("other", (10, 5, 5), price=5, pack=100)], n_mg_l=100)
    incompletely = feed(incomplete.label.key, found)
    assert missing in incompletely.missing
    assert incompletely.cost is None
    assert found.cheapest is None  # one cost alone is nothing to compare
    assert found.feeds[0].key == "other"


def test_a_liquid_sold_by_weight_needs_no_density_for_its_cost() -> None:
    by_weight = replace(LIQUID, density_kg_l=None, pack=1200, pack_unit="g")
    found = feed("liquid", compare([by_weight, POWDER], n_mg_l=100))
    assert found.cost == pytest.approx(feed("liquid", compare([LIQUID, POWDER], n_mg_l=100)).cost)
    assert "density" not in found.missing
    assert found.product_ml is None


@pytest.mark.parametrize("currency", [None, "USD"])
def test_prices_in_unlike_money_are_not_ordered(currency: str | None) -> None:
    euro = replace(POWDER, currency="EUR")
    found = compare([euro, replace(LIQUID, currency=currency)], n_mg_l=100)
    assert found.cheapest is None
    assert [f.key for f in found.feeds] == ["liquid", "powder"]  # by name, not by cost
    assert ("currency" in feed("liquid", found).missing) is (currency is None)
    assert feed("liquid", found).cost is not None


def test_elements_that_the_label_does_not_show_are_named() -> None:
    label = Candidate("full", (15, 5, 15), {"Ca": 4, "Mg": 2, "S": 1, "Fe": 0.1}, "powder")
    lacking = feed("full", compare([Offer(label), POWDER], n_mg_l=100)).lacking
    assert lacking.macro == ()
    assert lacking.micro == ("Mn", "Zn", "Cu", "B", "Mo")


@pytest.mark.parametrize(
    ("nitrate", "ammonium", "urea", "codes"),
    # Wang 2008: at least half as nitrate in bark; more than half urea is named by the shelf's rule
    [
        (12.0, 3.0, 0.0, ["nitrate"]),
        (7.5, 7.5, 0.0, ["nitrate"]),
        (7.4, 7.6, 0.0, []),
        (0.0, 5.0, 10.0, ["much-urea"]),
        (None, None, None, []),
    ],
)
def test_nitrogen_forms_in_bark(
    nitrate: float | None, ammonium: float | None, urea: float | None, codes: list[str]
) -> None:
    label = Candidate(
        "it", (15, 5, 15), n_nitrate=nitrate, n_ammonium=ammonium, n_urea=urea, form="powder"
    )
    found = feed("it", compare([Offer(label), POWDER], n_mg_l=100))
    assert [reason.code for reason in found.bark_forms] == codes
    assert all(reason.source for reason in found.bark_forms)
    assert ("nitrogen_forms" in found.missing) is (nitrate is None)


@given(st.floats(0.0, 15.0))
def test_nitrate_in_bark_is_judged_as_on_the_shelf(nitrate: float) -> None:
    label = Candidate("it", (15, 5, 15), n_nitrate=nitrate)
    chosen = choose([label], growth=None, medium="bark", water_kind=None, season=None)
    on_shelf = {reason.code for reason in chosen.ranked[0].reasons}
    assert ("nitrate" in on_shelf) is ("nitrate" in {r.code for r in bark_forms(label)})


# ------------------------------------------------------------------------------------ salts

#: Nitrogen of the pure salts [% of mass]: from atomic weights; calcium nitrate as it is sold.
NITROGEN_SOURCES = {
    "urea": 46.65,
    "ammonium_nitrate": 35.0,
    "ammonium_sulphate": 21.2,
    "calcium_nitrate": 15.5,
}


def salt(name: str, n: float, **fields: Any) -> Offer:
    return offer(name, (n, 0, 0), salts={name: 100.0}, **fields)


def test_salts_stand_in_the_published_order_at_the_same_nitrogen() -> None:
    # McCarty, Best Golf Course Management Practices, 2001, by unit of nutrient: urea 1.6, ammonium
    # nitrate 3, ammonium sulphate 3.3, calcium nitrate 4.1 (seen on a trade page, weak source)
    ranks = salt_ranks([salt(name, n) for name, n in NITROGEN_SOURCES.items()])
    assert ranks == {name: place for place, name in enumerate(NITROGEN_SOURCES, start=1)}


def test_lists_that_disagree_leave_an_order_open() -> None:
    # by one list ammonium sulphate is under calcium nitrate by weight (88 against 65), by the other
    # level with it (69 and 69): Mortvedt 2001 against Rader and others 1943
    index = salt_indices()
    assert index["ammonium_sulphate"].low <= index["calcium_nitrate"].high
    sulphate, nitrate = salt("ammonium_sulphate", 21.2), salt("calcium_nitrate", 20.0)
    assert salt_ranks([sulphate, nitrate]) == {"ammonium_sulphate": 1, "calcium_nitrate": 1}


def test_the_same_salt_shares_a_place() -> None:
    same = [offer(key, (16.5, 0, 0), salts={"sodium_nitrate": 100.0}) for key in ("a", "b")]
    assert salt_ranks(same) == {"a": 1, "b": 1}


def test_a_figure_of_one_list_alone_is_not_taken_to_the_dot() -> None:
    # where two lists have a salt they differ by up to 8 %: 46.1 and 42.6 for potassium sulphate
    pair = [salt("monoammonium_phosphate", 12.0), salt("diammonium_phosphate", 12.6)]
    assert salt_ranks(pair) == {"monoammonium_phosphate": 1, "diammonium_phosphate": 1}
    apart = [salt("monoammonium_phosphate", 12.0), salt("diammonium_phosphate", 10.0)]
    assert salt_ranks(apart) == {"monoammonium_phosphate": 1, "diammonium_phosphate": 2}


def test_feeds_whose_salts_are_not_all_known_have_no_place() -> None:
    half = offer("half", (20, 20, 20), salts={"urea": 50.0})
    found = compare([half, salt("urea", 46.65), salt("ammonium_nitrate", 35)], n_mg_l=100)
    assert feed("half", found).salt_rank is None
    assert "salts" in feed("half", found).missing
    assert feed("urea", found).salt_rank == 1
    assert feed("ammonium_nitrate", found).salt_rank == 2


def test_one_feed_alone_has_no_place() -> None:
    assert salt_ranks([salt("urea", 46.65), POWDER]) == {}


def test_water_in_a_liquid_is_no_salt() -> None:
    # the same salt in water brings as much of it for the same nitrogen
    parts = {"ammonium_nitrate": 50.0, "water": 50.0}
    thin = offer("thin", (17.5, 0, 0), form="liquid", salts=parts)
    assert salt_ranks([thin, salt("ammonium_nitrate", 35)]) == {"thin": 1, "ammonium_nitrate": 1}


def test_a_label_by_volume_is_ranked_by_its_density() -> None:
    parts = {"ammonium_nitrate": 50.0, "water": 50.0}
    thin = offer("thin", (21, 0, 0), form="liquid", salts=parts, percent_of="w/v")
    known = replace(thin, density_kg_l=1.2)  # 21 g in 100 ml of 1.2 kg/l is 17.5 %
    solid = salt("ammonium_nitrate", 35)
    assert salt_ranks([known, solid]) == {"thin": 1, "ammonium_nitrate": 1}
    assert salt_ranks([thin, solid]) == {}
    assert "density" in feed("thin", compare([thin, solid], n_mg_l=100)).missing


def test_every_salt_index_has_its_sources() -> None:
    assert salt_indices()["sodium_nitrate"].low == salt_indices()["sodium_nitrate"].high == 100
    for entry in salt_indices().values():
        assert 0 <= entry.low <= entry.high < 200
        assert all(entry.sources)


# -------------------------------------------------------------------------------- bad input


@pytest.mark.parametrize(
    ("offers", "n_mg_l", "sentence"),
    [
        ([POWDER], 100, "two feeds"),
        ([POWDER, POWDER], 100, "once only"),
        ([POWDER, LIQUID], 0, "cannot be compared at 0 mg/L N"),
        ([POWDER, LIQUID], float("nan"), "cannot be compared"),
        ([POWDER, LIQUID], 5000, "up to 1000 mg/L"),
    ],
)
def test_what_cannot_be_compared_is_refused(
    offers: list[Offer], n_mg_l: float, sentence: str
) -> None:
    with pytest.raises(ValueError, match=sentence):
        compare(offers, n_mg_l=n_mg_l)


@pytest.mark.parametrize(
    ("changes", "sentence"),
    [
        ({"price": 0.0}, "price of powder must be more than 0"),
        ({"pack": -1.0}, "pack size of powder"),
        ({"density_kg_l": 13.6}, "cannot weigh 13.6 kg/L"),
        ({"percent_of": "w/v"}, "is a powder"),
        ({"salts": {"kitchen salt": 100}}, "has no salt index"),
        ({"salts": {"urea": 130}}, "cannot be 130 % urea"),
        ({"label": Candidate("powder", (120, 0, 0))}, "cannot hold 120 %"),
    ],
)
def test_impossible_offers_are_refused(changes: dict[str, Any], sentence: str) -> None:
    with pytest.raises(ValueError, match=sentence):
        replace(POWDER, **changes)


@pytest.mark.parametrize(
    "changes",
    [
        {"density_kg_l": 0.1},
        {"density_kg_l": 3.0},
        {"label": Candidate("it", (100, 0, 0))},
        {"salts": {"urea": 100.0}},
        {"salts": {"urea": 0.0}},
    ],
)
def test_the_ends_of_what_an_offer_can_be_are_taken(changes: dict[str, Any]) -> None:
    made = replace(POWDER, **changes)
    assert {name: getattr(made, name) for name in changes} == changes


@pytest.mark.parametrize("density_kg_l", [0.099, 3.01])
def test_a_density_beyond_what_feeds_have_is_refused(density_kg_l: float) -> None:
    with pytest.raises(ValueError, match=r"0\.1 to 3 can be"):
        replace(LIQUID, density_kg_l=density_kg_l)


def test_a_label_by_volume_may_show_more_than_a_hundred() -> None:
    # g in 100 ml of a liquid of up to 3 kg/l
    dense = offer("dense", (130, 0, 0), form="liquid", percent_of="w/v", pack_unit="ml")
    assert dense.label.analysis[0] == 130
    with pytest.raises(ValueError, match="0 to 300 % can be"):
        offer("dense", (301, 0, 0), form="liquid", percent_of="w/v", pack_unit="ml")
    with pytest.raises(ValueError, match="0 to 100 % can be"):
        offer("dense", (101, 0, 0), form="liquid", pack_unit="ml")


# ------------------------------------------------------------------------------ one feed alone


def test_one_feed_at_a_nitrogen_is_as_in_a_comparison() -> None:
    alone = at_nitrogen(LIQUID, n_mg_l=100)
    assert alone == feed("liquid", compare([LIQUID, POWDER], n_mg_l=100))
    assert alone.per_money_g == nutrients_per_money(LIQUID)
    assert alone.per_money_g is not None
    assert alone.per_money_g["N"] == pytest.approx(8.4)  # 1.2 kg of 7 % for 10
    assert alone.feed_l_per_pack == pytest.approx(840)  # 84 g N at 100 mg/l
    assert "currency" not in alone.missing
    assert at_nitrogen(LIQUID, n_mg_l=1000).product_g == pytest.approx(1428.57, abs=0.01)


def test_a_comparison_tells_its_nitrogen_and_the_money_of_its_prices() -> None:
    found = compare([replace(POWDER, currency="EUR"), replace(LIQUID, currency="USD")], n_mg_l=75)
    assert found.n_mg_l == 75
    assert found.currencies == ("EUR", "USD")
    assert compare([POWDER, LIQUID], n_mg_l=75).currencies == ()
    # a powder has no millilitres, even where its density is told
    dense = replace(POWDER, density_kg_l=0.9)
    assert feed("powder", compare([dense, LIQUID], n_mg_l=75)).product_ml is None


def test_elements_below_a_per_cent_count_and_those_of_0_are_left_out() -> None:
    label = Candidate("it", (10, 0, 5), {"Fe": 0.5, "Ca": 0.0}, "powder", trace_elements=True)
    found = at_nitrogen(Offer(label, price=10, pack=1000), n_mg_l=100)
    assert found.elements_mg_l is not None
    assert found.per_money_g is not None
    assert set(found.elements_mg_l) == set(found.per_money_g) == {"N", "K", "Fe"}
    assert found.elements_mg_l["Fe"] == pytest.approx(5.0)
    assert found.lacking.unknown_micro
    assert found.lacking.micro == ()


@pytest.mark.parametrize(
    ("changes", "sentence"),
    [
        ({"price": float("inf")}, "price of powder"),
        ({"pack": float("nan")}, "pack size of powder"),
        ({"salts": {"urea": 100.5}}, "cannot be 100.5 % urea"),
        ({"salts": {"urea": -1}}, "cannot be -1 % urea"),
        ({"label": Candidate("powder", (20, 0, 0), {"Ca": -1})}, "cannot hold -1 %"),
    ],
)
def test_offers_just_beyond_the_ends_are_refused(changes: dict[str, Any], sentence: str) -> None:
    with pytest.raises(ValueError, match=sentence):
        replace(POWDER, **changes)


def test_a_feed_with_a_trace_of_nitrogen_can_be_compared_by_it() -> None:
    weak = at_nitrogen(offer("weak", (0.5, 0, 0), price=1, pack=1000), n_mg_l=10)
    assert weak.product_g == pytest.approx(200)  # 1 g N of 0.5 %
    assert "nitrogen" not in weak.missing
    assert "nitrogen_forms" in weak.missing
    none = at_nitrogen(offer("none", (0, 5, 5), price=1, pack=1000), n_mg_l=10)
    assert "nitrogen" in none.missing
    assert "nitrogen_forms" not in none.missing
    assert (none.product_g, none.elements_mg_l, none.feed_l_per_pack) == (None, None, None)


@pytest.mark.parametrize(("percent", "known"), [(98.0, True), (102.0, True), (97.9, False)])
def test_salts_that_add_to_a_hundred_within_two_are_all_known(percent: float, known: bool) -> None:
    salts = {"urea": percent - 10, "water": 10.0}
    it = offer("it", (40, 0, 0), salts=salts)
    assert ("salts" not in at_nitrogen(it, n_mg_l=100).missing) is known
    assert at_nitrogen(it, n_mg_l=100).salts_estimated is not known


def test_the_salt_index_for_nitrogen_is_that_of_the_weight() -> None:
    # half ammonium nitrate, half water: half its index for half its nitrogen; 21 g in 100 ml of
    # 1.2 kg/l are 17.5 %
    entry = salt_indices()["ammonium_nitrate"]
    parts = {"ammonium_nitrate": 50.0, "water": 50.0}
    by_weight = offer("thin", (17.5, 0, 0), form="liquid", salts=parts)
    by_volume = replace(
        by_weight, label=Candidate("thin", (21, 0, 0), form="liquid"), percent_of="w/v",
        density_kg_l=1.2,
    )  # fmt: skip
    expected = pytest.approx((entry.low / 35, entry.high / 35))
    assert salt_index_per_n(by_weight) == expected
    assert salt_index_per_n(by_volume) == expected
    assert salt_index_per_n(offer("none", (0, 5, 5), salts={"urea": 100.0})) is None
    assert salt_index_per_n(offer("weak", (0.5, 1, 1))) is not None  # by its label alone
    assert salt_index_per_n(offer("weak", (0.5, 0, 0), salts=parts)) == pytest.approx(
        (entry.low / 1, entry.high / 1)
    )


def test_the_least_salty_is_named_only_beyond_doubt() -> None:
    low, high = salt("urea", 46.65), salt("sodium_nitrate", 16.5)
    feeds = compare([high, low], n_mg_l=100).feeds
    assert least_salty(feeds) == "urea"
    assert least_salty(feeds[:1]) is None
    assert least_salty([]) is None
    alike = compare([low, offer("twin", (46.65, 0, 0), salts={"urea": 100.0})], n_mg_l=100)
    assert least_salty(alike.feeds) is None


# ------------------------------------------------------------------------------------- laws

percents = st.floats(0.5, 30)
sizes = st.floats(10, 50_000)
prices = st.floats(0.1, 1000)


@given(percents, sizes, prices, st.floats(0.01, 100), st.booleans())
def test_a_pack_larger_in_proportion_costs_the_same(
    n: float, pack: float, price: float, times: float, liquid: bool
) -> None:
    base = LIQUID if liquid else POWDER
    small = replace(base, label=replace(base.label, analysis=(n, 1, 1)), pack=pack, price=price)
    large = replace(small, pack=pack * times, price=price * times)
    other = offer("other", (10, 10, 10))
    costs = [feed(base.label.key, compare([o, other], n_mg_l=100)).cost for o in (small, large)]
    assert costs[0] == pytest.approx(costs[1])


@given(percents, st.floats(1, 500), st.floats(1, 500))
def test_the_cost_is_linear_in_nitrogen(n: float, first: float, second: float) -> None:
    it = offer("it", (n, 0, 0), price=10, pack=1000)
    costs = [feed("it", compare([it, POWDER], n_mg_l=x)).cost or 0 for x in (first, second)]
    assert costs[0] / first == pytest.approx(costs[1] / second)


@given(st.permutations([POWDER, LIQUID, salt("urea", 46.65), offer("plain", (5, 5, 5))]))
def test_the_order_of_offers_does_not_matter(offers: list[Offer]) -> None:
    assert compare(offers, n_mg_l=125) == compare(sorted(offers, key=repr), n_mg_l=125)


@given(percents, sizes, prices)
def test_a_pack_makes_as_much_feed_as_its_price_pays_for(
    n: float, pack: float, price: float
) -> None:
    it = offer("it", (n, 0, 0), price=price, pack=pack)
    found = feed("it", compare([it, POWDER], n_mg_l=100))
    assert found.cost is not None
    assert found.feed_l_per_pack is not None
    assert found.cost * found.feed_l_per_pack / 100 == pytest.approx(price)


# ------------------------------------------------------------------- salt index from the label


@pytest.mark.parametrize("name", [s for s in salt_indices() if s != "water"])
def test_what_a_salt_brings_is_that_of_its_formula(name: str) -> None:
    entry = salt_indices()[name]
    parts = {part.symbol: part for part in Formula(entry.formula).composition().values()}
    nitrogen = sum(entry.percent.get(f, 0.0) for f in ("nitrate", "ammonium", "urea"))
    expected = parts["N"].fraction * 100 if "N" in parts else 0.0
    assert nitrogen == pytest.approx(expected, abs=0.02)
    for symbol in ("P", "K", "Ca", "Mg", "S", "Na", "Cl"):
        expected = parts[symbol].fraction * 100 if symbol in parts else 0.0
        assert entry.percent.get(symbol, 0.0) == pytest.approx(expected, abs=0.02), symbol


#: Feeds of one salt, by their labels; P2O5 and K2O by the oxide factors.
ONE_SALT = {
    "urea": Candidate("urea", (46.65, 0, 0), n_nitrate=0, n_ammonium=0, n_urea=46.65),
    "potassium_nitrate": Candidate(
        "nitre", (13.85, 0, 46.58), extras={"Cl": 0.0, "S": 0.0}, n_nitrate=13.85,
        n_ammonium=0, n_urea=0,
    ),
    "calcium_nitrate": Candidate("calcium", (15.56, 0, 0), extras={"Ca": 18.54}),
    "monopotassium_phosphate": Candidate("mkp", (0, 52.15, 34.61)),
    "sodium_nitrate": Candidate(
        "chile", (16.48, 0, 0), {"Na": 27.05, "Cl": 0.0}, n_nitrate=16.48, n_ammonium=0, n_urea=0
    ),
    "magnesium_sulphate": Candidate("bitter", (0, 0, 0), {"Mg": 9.86, "S": 13.01}),
    "potassium_chloride": Candidate("muriate", (0, 0, 63.18), {"Cl": 47.55}),
    "potassium_sulphate": Candidate("sulphate", (0, 0, 54.05), {"S": 18.4, "Cl": 0.0}),
    "ammonium_sulphate": Candidate(
        "ammonia", (21.2, 0, 0), {"S": 24.26}, n_nitrate=0, n_ammonium=21.2, n_urea=0
    ),
}  # fmt: skip


@pytest.mark.parametrize("name", ONE_SALT)
def test_a_label_that_only_one_salt_makes_has_the_index_of_that_salt(name: str) -> None:
    found = index_from_label(ONE_SALT[name])
    assert found is not None
    low, high = found
    entry = salt_indices()[name]
    # the label is taken as rounded to half a per cent: so much of another salt may be in it, and
    # half a per cent of potassium is one per cent of potassium chloride
    assert low == pytest.approx(entry.low, abs=3)
    assert high == pytest.approx(entry.high, abs=3)
    assert low <= entry.low * 1.001
    assert high >= entry.high * 0.999


UNTOLD = Candidate("it", (20, 0, 0))


@pytest.mark.parametrize(
    ("forms", "used"),
    [
        ({"n_nitrate": 0.0, "n_ammonium": 0.0, "n_urea": 20.0}, True),
        ({"n_nitrate": 0.0, "n_ammonium": 0.0, "n_urea": 19.6}, True),  # as labels round
        ({"n_nitrate": 0.0, "n_ammonium": 0.0, "n_urea": 19.4}, False),  # not all of it
        ({"n_nitrate": 0.0, "n_ammonium": 0.0, "n_urea": 20.6}, False),
        ({"n_nitrate": 0.0, "n_ammonium": 0.0}, False),
        ({"n_urea": 20.0}, False),
    ],
)
def test_forms_of_nitrogen_count_where_they_add_to_it(forms: dict[str, float], used: bool) -> None:
    # urea alone is at most 33; ammonium nitrate, or a chloride with it, over 60
    found, untold = index_from_label(replace(UNTOLD, **forms)), index_from_label(UNTOLD)
    assert found is not None
    assert untold is not None
    assert untold[1] > 60
    assert (found[1] < 36) if used else (found == untold)


@pytest.mark.parametrize(
    ("analysis", "extras"),
    [
        ((0, 0, 0), {"S": 13.0}),  # sulphate without anything it could be with
        ((0, 0, 63.18), {"Cl": 0.0, "S": 0.0}),  # potassium alone
        ((15.5, 0, 0), {"Ca": 18.5, "Na": 20.0}),  # more than weighs a hundred
        ((0, 0, 0), {"Mg": 9.86, "S": 0.0}),
    ],
)
def test_a_label_that_leaves_no_salt_has_no_index(
    analysis: tuple[float, float, float], extras: dict[str, float]
) -> None:
    assert index_from_label(Candidate("it", analysis, extras)) is None


def test_a_chloride_that_is_ruled_out_lowers_the_highest_index() -> None:
    silent = index_from_label(Candidate("it", (0, 0, 50)))
    told = index_from_label(Candidate("it", (0, 0, 50), {"Cl": 0.0}))
    assert silent is not None
    assert told is not None
    # potassium as chloride, 116 for 52 % K, or as sulphate, 46 for 45 % K: by weight of 41.5 % K
    assert silent[1] == pytest.approx(116.3 * 42.0 / 52.45, rel=0.01)
    assert told[1] == pytest.approx(46.1 * 42.0 / 44.87, rel=0.01)
    assert told[0] == silent[0]


def test_calcium_rules_sulphate_out() -> None:
    # half calcium nitrate; the rest of the nitrogen as ammonium nitrate at the most, 105 for 35 %
    # of it, never as ammonium sulphate, 88 for 21 %: half a per cent more of each by the rounding
    found = index_from_label(Candidate("it", (15, 0, 0), {"Ca": 9.0, "Cl": 0.0}))
    assert found is not None
    calcium = 9.5 / 18.54
    rest = (15.5 - 15.56 * calcium) / 35.0
    assert found[1] == pytest.approx(69.0 * calcium + 104.7 * rest, rel=1e-3)


mixed = st.lists(st.floats(0, 1), min_size=4, max_size=4).filter(lambda shares: sum(shares) > 0.1)


@given(mixed)
def test_the_true_index_of_a_mix_lies_in_the_range_of_its_label(shares: list[float]) -> None:
    names = ("urea", "ammonium_nitrate", "monopotassium_phosphate", "potassium_nitrate")
    total = sum(shares)
    salts = {n: share / total for n, share in zip(names, shares, strict=True)}
    brought = {
        part: sum(s * salt_indices()[n].percent.get(part, 0.0) for n, s in salts.items())
        for part in ("nitrate", "ammonium", "urea", "P", "K")
    }
    n = brought["nitrate"] + brought["ammonium"] + brought["urea"]
    label = Candidate("mix", (n, brought["P"] / 0.43643, brought["K"] / 0.83015))
    found = index_from_label(label)
    assert found is not None
    low = sum(s * salt_indices()[n].low for n, s in salts.items())
    high = sum(s * salt_indices()[n].high for n, s in salts.items())
    assert found[0] <= low + 1e-6
    assert found[1] >= high - 1e-6
    forms = {f"n_{form}": brought[form] for form in ("nitrate", "ammonium", "urea")}
    told = index_from_label(replace(label, **forms))
    assert told is not None
    assert found[0] - 1e-6 <= told[0] <= low + 1e-6  # what is told narrows it
    assert high - 1e-6 <= told[1] <= found[1] + 1e-6


def test_a_label_that_no_listed_salts_make_has_none() -> None:
    assert index_from_label(Candidate("too rich", (60, 30, 0))) is None


def test_the_least_cost_is_that_of_scipy() -> None:
    chance = random.Random(7)
    solved = 0
    for _ in range(300):
        width, rows = chance.randint(1, 8), chance.randint(1, 6)
        at_most = [[chance.uniform(-1, 3) for _ in range(width + 1)] for _ in range(rows)]
        at_most.append([1.0] * width + [chance.uniform(0.5, 2)])
        cost = [chance.uniform(-2, 2) for _ in range(width)]
        reference = linprog(cost, A_ub=[r[:-1] for r in at_most], b_ub=[r[-1] for r in at_most])
        found = minimum(at_most, cost)
        if reference.status == 2:
            assert found is None
        else:
            solved += 1
            assert found == pytest.approx(reference.fun, abs=1e-6)
    assert solved > 100


def test_feeds_are_told_apart_by_salt_where_their_ranges_are_apart() -> None:
    urea, nitrate = offer("urea", (46, 0, 0)), offer("calcium", (15.5, 0, 0))
    nitrate = replace(nitrate, label=replace(nitrate.label, extras={"Ca": 19.0}))
    found = compare([urea, nitrate], n_mg_l=50)
    assert least_salty(found.feeds) == "urea"
    assert all(f.salts_estimated for f in found.feeds)
    balanced = [offer("a", (20, 20, 20)), offer("b", (15, 5, 15))]
    assert least_salty(compare(balanced, n_mg_l=50).feeds) is None
