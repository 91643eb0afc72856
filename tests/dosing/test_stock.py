"""Stock solutions: laws, labels, and what falls out, against PHREEQC 3.7.3.

PHREEQC (Parkhurst and Appelo 2013) is reached through phreeqpython, offline, with its default
database, to which the minerals of ``solubility.toml`` are added. Ion pairs have the same constants
there: that part of the agreement is built in. Shown as a table with
pytest -s tests/dosing/test_stock.py -k phreeqc
"""

from __future__ import annotations

import random
from collections.abc import Mapping, Sequence
from datetime import date
from itertools import pairwise
from statistics import fmean

import pytest
from hypothesis import given
from hypothesis import strategies as st
from molmass import Formula
from phreeqpython import PhreeqPython  # type: ignore[import-untyped]
from scipy.optimize import minimize_scalar  # type: ignore[import-untyped]

from bot.almanac.ions import ions
from bot.almanac.recipes import minerals, salts, solubility_temperatures_c, stock_rules
from bot.dosing.conductivity import NitrogenForms
from bot.dosing.measuring import KEEPS_DAYS, relative_error
from bot.dosing.stock import (
    ASSUMED_PH,
    Bottle,
    NoSuchBottles,
    Part,
    Product,
    Ratio,
    bottle_label,
    bottles_for,
    clashes,
    first_to_fall,
    keeps_days,
    possible_salts,
    saturation_indices,
    share_error,
    solubility_g_l,
    strongest_stock,
    together,
)

Elements = dict[str, float]

NITRATE = NitrogenForms(1, 0, 0)
CALCIUM_NITRATE = Product.of_label(
    "calcium nitrate", (15.5, 0, 0), {"Ca": 19}, NitrogenForms(0.93, 0.07, 0)
)
EPSOM = Product.of_label("Epsom salt", (0, 0, 0), {"Mg": 9.86, "S": 13.0})
MKP = Product.of_label("mono-potassium phosphate", (0, 52, 34), {"S": 0})
POTASSIUM_NITRATE = Product.of_label("potassium nitrate", (13.8, 0, 46.5), {"S": 0}, NITRATE)
COMPLETE = Product.of_label(
    "complete powder", (20, 10, 20), {"Mg": 0.05, "S": 0, "Fe": 0.1}, NitrogenForms(0.6, 0.4, 0)
)
SILICATE = Product.of_label("potassium silicate", (0, 0, 14), {"Si": 12})
FEED = [Part(CALCIUM_NITRATE, 0.5), Part(COMPLETE, 0.5), Part(EPSOM, 0.2)]

percents = st.fixed_dictionaries(
    {
        "N": st.floats(0.5, 15),
        "P": st.floats(0, 12),
        "K": st.floats(0.5, 25),
        "Mg": st.floats(0, 3),
    }
)


def keys(bottle: Bottle) -> set[str]:
    return {part.product.key for part in bottle.parts}


# --------------------------------------------------------------------------------------- the data


@pytest.mark.parametrize("formula", salts())
def test_a_salt_has_its_weight_and_dissolves_better_when_warm(formula: str) -> None:
    salt = salts()[formula]
    assert salt.molar_mass == pytest.approx(Formula(formula).mass, rel=2e-4)
    assert len(salt.mass_percent) == len(solubility_temperatures_c())
    assert list(salt.mass_percent) == sorted(salt.mass_percent)
    assert salt.source
    assert salt.status


@pytest.mark.parametrize("name", minerals())
def test_a_mineral_is_neutral_and_names_its_source(name: str) -> None:
    mineral = minerals()[name]
    charge = sum(count * ions()[ion].charge for ion, count in mineral.ions.items())
    assert charge == mineral.protons
    assert mineral.source


def test_every_rule_names_its_source() -> None:
    assert all(figure.source and figure.unit for figure in stock_rules().values())


# ------------------------------------------------------------------------------------ how strong


def test_twenty_twenty_twenty_is_stocked_at_100_grams_a_litre() -> None:
    # 200 mg/L N at 1:100, as trade articles have it: fixtures/published/concentration.toml
    limit = strongest_stock(Product.of_label("20-20-20", (20, 20, 20), {}))
    assert (limit.g_l, limit.limited_by) == (100, "complete-powder")
    assert limit.assumed == ("salts", "sulphur", "nitrogen-forms", "coldest")


def test_a_told_label_may_be_stocked_stronger_but_not_over_200() -> None:
    told = NitrogenForms(0.6, 0.4, 0)
    warm = strongest_stock(Product.of_label("x", (20, 10, 20), {"S": 0}, told), coldest_c=20)
    cold = strongest_stock(Product.of_label("x", (20, 10, 20), {"S": 0}, told), coldest_c=5)
    assert warm.g_l == 200
    assert warm.limited_by == "complete-powder"
    assert 100 < cold.g_l < 200
    assert cold.limited_by == "KNO3"


@pytest.mark.parametrize(
    ("product", "formula", "share"),
    # half of the handbook's solubility at 10 °C, in product: CRC Handbook, mass percent x 10 / 2
    [
        (MKP, "KH2PO4", 149.1 / 2),
        (POTASSIUM_NITRATE, "KNO3", 176.0 / 2),
        (EPSOM, "MgSO4", 217.0 / 2 / 0.4884),
        (Product.of_label("sulphate of potash", (0, 0, 54), {"S": 18.4}), "K2SO4", 84.6 / 2),
    ],
)
def test_a_single_salt_is_stocked_at_half_its_solubility(
    product: Product, formula: str, share: float
) -> None:
    limit = strongest_stock(product, coldest_c=10)
    assert limit.limited_by == formula
    assert limit.g_l == pytest.approx(share, rel=0.025)  # labels round purity


def test_what_the_label_is_silent_on_is_taken_as_the_worst_and_said() -> None:
    silent = strongest_stock(Product.of_label("x", (13, 0, 40), {}))
    told = strongest_stock(Product.of_label("x", (13, 0, 40), {"S": 0}, NITRATE), coldest_c=5)
    assert silent.limited_by == "K2SO4"
    assert silent.assumed == ("salts", "sulphur", "nitrogen-forms", "coldest")
    assert told.limited_by == "KNO3"
    assert told.assumed == ("salts",)
    assert silent.g_l < told.g_l


def test_a_full_label_leaves_no_room_for_a_sulphate() -> None:
    silent = Product.of_label("x", (13.8, 0, 46.5), {}, NITRATE)
    assert possible_salts(silent).get("K2SO4", 0) < 0.02
    assert strongest_stock(silent).limited_by == "KNO3"


def test_a_powder_with_calcium_and_phosphate_stays_at_100() -> None:
    both = Product.of_label("15-5-15", (15, 5, 15), {"Ca": 5, "Mg": 2}, NitrogenForms(0.8, 0.2, 0))
    assert strongest_stock(both).g_l == 100


def test_chelates_stay_at_what_dissolves_in_the_cold_anyway_and_boron_below_that() -> None:
    iron = Product("iron chelate", {"Fe": 13.0})
    assert first_to_fall(iron, 5) is None
    assert (strongest_stock(iron).g_l, strongest_stock(iron).limited_by) == (50, "unknown")
    boron = strongest_stock(Product("boric acid", {"B": 17.4}), coldest_c=10)
    assert boron.limited_by == "H3BO3"
    assert boron.g_l == pytest.approx(35.7 / 2, rel=0.02)  # CRC Handbook, 3.57 % at 10 °C


@given(percents, st.floats(0, 40), st.booleans())
def test_no_possible_salt_is_ever_over_half_of_what_dissolves(
    elements: Elements, coldest_c: float, told: bool
) -> None:
    product = Product("x", elements, NITRATE if told else None)
    limit = strongest_stock(product, coldest_c=coldest_c)
    for formula, share in possible_salts(product).items():
        assert limit.g_l * share <= 0.5 * solubility_g_l(formula, coldest_c) * (1 + 1e-9)
    assert limit.g_l <= 200 or not elements["P"]


@given(percents, st.floats(0, 39))
def test_cold_and_silence_never_allow_more(elements: Elements, coldest_c: float) -> None:
    silent, told = Product("x", elements), Product("x", {**elements, "S": 0.0}, NITRATE)
    cold = strongest_stock(silent, coldest_c=coldest_c).g_l
    assert cold <= strongest_stock(silent, coldest_c=coldest_c + 1).g_l
    worst, better = first_to_fall(silent, coldest_c), first_to_fall(told, coldest_c)
    assert worst is not None
    assert better is not None
    assert worst[1] <= better[1] * (1 + 1e-9)


@given(st.floats(0.1, 10), st.floats(0.1, 10))
def test_products_together_weigh_and_bring_what_they_bring_apart(a: float, b: float) -> None:
    mixed = together([Part(COMPLETE, a), Part(POTASSIUM_NITRATE, b)])
    for symbol in ("N", "P", "K"):
        apart = a * COMPLETE.percent(symbol) + b * POTASSIUM_NITRATE.percent(symbol)
        assert mixed.percent(symbol) * (a + b) == pytest.approx(apart)
    nitrate = a * COMPLETE.percent("nitrate") + b * POTASSIUM_NITRATE.percent("nitrate")
    assert mixed.percent("nitrate") * (a + b) == pytest.approx(nitrate)


def test_what_one_of_two_products_does_not_tell_stays_open() -> None:
    silent = Product.of_label("silent", (20, 20, 20), {})
    mixed = together([Part(silent, 1), Part(EPSOM, 1)])
    assert mixed.leaves_open("S")
    assert mixed.nitrogen is None
    assert together([Part(MKP, 1), Part(EPSOM, 1)]).percent("S") == pytest.approx(6.5)


# ------------------------------------------------------------------------------ sharing the error


@pytest.mark.parametrize("bottle_ml", [100.0, 250.0, 1000.0])
@pytest.mark.parametrize("dose_g", [0.05, 0.3, 1.0])
def test_no_other_strength_has_less_error(dose_g: float, bottle_ml: float) -> None:
    def error(g_ml: float) -> float:
        weighed, used = relative_error(g_ml * bottle_ml, 0.1), relative_error(dose_g / g_ml, 0.5)
        return float((weighed**2 + used**2) ** 0.5)

    found = share_error(dose_g, bottle_ml, 1e4, scale_step_g=0.1, syringe_step_ml=0.5)
    least = minimize_scalar(error, bounds=(dose_g / bottle_ml, 5.0), method="bounded")
    assert found.relative_error == pytest.approx(least.fun, rel=1e-4)
    assert found.product_g / bottle_ml * found.use_ml == pytest.approx(dose_g)
    assert not found.at_limit


def test_a_half_gram_on_a_coarse_scale_is_measured_ten_times_better() -> None:
    # directly 0.82 x 0.1 / 0.5 = 16 %: JCGM 100:2008, 4.3.7
    direct = relative_error(0.5, 0.1)
    found = share_error(0.5, 500, 100)
    assert direct == pytest.approx(0.163, abs=0.001)
    assert found.relative_error < direct / 10
    assert relative_error(found.product_g, 0.1) == pytest.approx(relative_error(found.use_ml, 0.1))


def test_what_does_not_dissolve_is_not_asked_for() -> None:
    found = share_error(1.0, 100, 20)
    assert found.at_limit
    assert found.product_g == pytest.approx(2.0)
    with pytest.raises(ValueError, match="weigh that directly"):
        share_error(5.0, 100, 20)


@pytest.mark.parametrize("bad", [0.0, -1.0, float("nan"), float("inf")])
def test_amounts_that_are_none_are_refused(bad: float) -> None:
    with pytest.raises(ValueError, match="cannot be"):
        share_error(bad, 500, 100)


# ---------------------------------------------------------------------------- against PHREEQC


PHASES = """
PHASES
Brushite
    CaHPO4:2H2O = Ca+2 + HPO4-2 + 2H2O
    -log_k -6.59
Newberyite
    MgHPO4:3H2O = Mg+2 + HPO4-2 + 3H2O
    -log_k -5.83
Struvite
    MgAmmHPO4:6H2O = Mg+2 + AmmH+ + PO4-3 + 6H2O
    -log_k -13.26
END
"""
MOLAR = {"Ca": 40.078, "Mg": 24.305, "K": 39.098, "Na": 22.990, "P": 30.974, "S": 32.06}
N_MOLAR = 14.007
SI_TOLERANCE = {0.002: 0.05, 0.01: 0.1, 0.05: 0.12, 0.2: 0.2, 0.5: 0.3}


@pytest.fixture(scope="module")
def program() -> PhreeqPython:
    started = PhreeqPython()
    started.ip.run_string(PHASES)
    return started


def phreeqc_indices(
    program: PhreeqPython, elements_mg_l: Mapping[str, float], ammonium_n_mg_l: float, ph: float
) -> dict[str, float]:
    """Saturation indices; nitrate or sodium makes up the charges [mg/L as mg/kg of water]."""
    mol = {s: elements_mg_l.get(s, 0) / weight / 1000 for s, weight in MOLAR.items()}
    mol["Amm"] = ammonium_n_mg_l / N_MOLAR / 1000
    positive = 2 * mol["Ca"] + 2 * mol["Mg"] + mol["K"] + mol["Na"] + mol["Amm"]
    surplus = positive - mol["P"] - 2 * mol["S"]
    mol["N(5)" if surplus > 0 else "Na"] = mol.get("Na", 0) * (surplus <= 0) + abs(surplus)
    present = {name: amount for name, amount in mol.items() if amount > 0}
    solution = program.add_solution({"units": "mol/kgw", "pH": ph, "S(6)": 0.0, **present})
    found = {name: float(solution.si(name.capitalize())) for name in minerals()}
    solution.forget()
    return found


@pytest.mark.parametrize("strongest_mol_l", SI_TOLERANCE)
def test_saturation_agrees_with_phreeqc(strongest_mol_l: float, program: PhreeqPython) -> None:
    """From ready feeds to strong stocks, pH 3.5 to 8, 60 random solutions each."""
    rng = random.Random(f"saturation {strongest_mol_l}")
    errors: dict[str, list[float]] = {name: [] for name in minerals()}
    for _ in range(60):
        ph = rng.uniform(3.5, 8)
        elements = {
            symbol: 1000 * MOLAR[symbol] * strongest_mol_l * rng.uniform(0.05, 1)
            for symbol in ("Ca", "Mg", "K", "P", "S")
        }
        ammonium = 1000 * N_MOLAR * strongest_mol_l * rng.uniform(0.05, 1)
        reference = phreeqc_indices(program, elements, ammonium, ph)
        for name, ours in saturation_indices(elements, ph=ph, ammonium_n_mg_l=ammonium).items():
            errors[name].append(ours - reference[name])
    print(f"\nto {strongest_mol_l} mol/L each   mean   least    most  (log10)")
    for name, found in errors.items():
        print(f"{name:20} {fmean(found):+7.2f} {min(found):+7.2f} {max(found):+7.2f}")
        assert len(found) == 60
        assert max(map(abs, found)) <= SI_TOLERANCE[strongest_mol_l]


def brought(parts: Sequence[Part]) -> tuple[Elements, float]:
    elements: Elements = {}
    for part in parts:
        for symbol in MOLAR:
            more = 10 * part.g_l * part.product.percent(symbol)
            elements[symbol] = elements.get(symbol, 0.0) + more
    return elements, sum(10 * part.g_l * part.product.percent("ammonium") for part in parts)


PAIRS = [
    (CALCIUM_NITRATE, EPSOM, "calcium-sulphate"),
    (CALCIUM_NITRATE, MKP, "calcium-phosphate"),
    (CALCIUM_NITRATE, COMPLETE, "calcium-phosphate"),
    (EPSOM, MKP, "magnesium-phosphate"),
    (EPSOM, COMPLETE, "magnesium-phosphate"),
]
OF_CODE = {
    "calcium-sulphate": ["gypsum"],
    "calcium-phosphate": ["brushite"],
    "magnesium-phosphate": ["newberyite", "struvite"],
}


@pytest.mark.parametrize(("first", "second", "code"), PAIRS, ids=lambda x: getattr(x, "key", x))
@pytest.mark.parametrize("ph", [3.0, 4.3, 6.0, 7.5])
@pytest.mark.parametrize("g_l", [0.5, 5.0, 50.0, 100.0])
def test_two_products_clash_where_phreeqc_lets_something_fall(
    first: Product, second: Product, code: str, ph: float, g_l: float, program: PhreeqPython
) -> None:
    parts = [Part(first, g_l), Part(second, g_l)]
    elements, ammonium = brought(parts)
    reference = phreeqc_indices(program, elements, ammonium, ph)
    index = max(reference[name] for name in OF_CODE[code])
    codes = {clash.code for clash in clashes(parts, ph=ph) if clash.sure}
    if abs(index) > 0.3:  # nearer to saturation the two may part, as shown above
        assert (code in codes) == (index > 0)


def test_the_pairs_above_both_clash_and_do_not() -> None:
    at = {
        g_l: [bool(clashes([Part(a, g_l), Part(b, g_l)])) for a, b, _ in PAIRS]
        for g_l in (0.5, 50.0)
    }
    assert not any(at[0.5])
    assert at[50.0][:3] == [True, True, True]


@pytest.mark.parametrize("seed", range(25))
def test_what_shares_a_bottle_stays_clear_in_phreeqc(seed: int, program: PhreeqPython) -> None:
    rng = random.Random(seed)
    shelf = [CALCIUM_NITRATE, EPSOM, MKP, POTASSIUM_NITRATE, COMPLETE]
    feed = [Part(product, rng.uniform(0.05, 0.8)) for product in rng.sample(shelf, 4)]
    bottles = bottles_for(feed, Ratio.one_in(rng.choice([10, 20, 25])))
    for bottle in bottles:
        indices = phreeqc_indices(program, *brought(bottle.parts), ASSUMED_PH)
        assert max(indices.values()) < 0.1, keys(bottle)


def test_the_acidity_taken_for_phosphate_stocks_is_phreeqc_s_own(program: PhreeqPython) -> None:
    for strength in (0.1, 0.2, 0.4):
        solution = program.add_solution(
            {
                "units": "mol/kgw", "pH": "7 charge", "K": strength, "P": strength,
                "Mg": strength / 4, "S(6)": strength / 4,
            }
        )  # fmt: skip
        assert float(solution.pH) == pytest.approx(ASSUMED_PH, abs=0.15)


# ------------------------------------------------------------------------------------- clashes


def codes_at(parts: Sequence[Part], ph: float) -> list[str]:
    return [clash.code for clash in clashes(parts, ph=ph)]


def test_magnesium_meets_phosphate_only_where_it_is_not_acid() -> None:
    parts = [Part(EPSOM, 20), Part(COMPLETE, 50)]
    ladder = [ASSUMED_PH + 0.02 * step for step in range(1, 200)]
    found = [codes_at(parts, ph) for ph in ladder]
    first = found.index(["magnesium-phosphate"])
    assert ASSUMED_PH < ladder[first] < 6
    assert found[:first] == [[]] * first
    (clash,) = clashes(parts, ph=ladder[first])
    assert clash.keys == ("Epsom salt", "complete powder")


@pytest.mark.parametrize("ph", [1.0, 4.0, 7.0, 9.0, 12.0])
def test_magnesium_without_phosphate_is_clear_at_any_ph(ph: float) -> None:
    parts = [Part(EPSOM, 20), Part(POTASSIUM_NITRATE, 50)]
    assert "magnesium-phosphate" not in codes_at(parts, ph)


def test_within_one_powder_its_maker_answers() -> None:
    both = Product.of_label("15-5-15", (15, 5, 15), {"Ca": 5, "Mg": 2, "S": 0})
    assert clashes([Part(both, 100)]) == ()
    found = clashes([Part(both, 100), Part(MKP, 10)])
    assert [clash.code for clash in found] == ["calcium-phosphate"]


def test_a_sulphate_that_could_be_there_is_not_sure() -> None:
    silent = Product.of_label("silent", (13.5, 0, 40), {}, NITRATE)
    found = clashes([Part(CALCIUM_NITRATE, 50), Part(silent, 50)])
    assert [(c.code, c.sure) for c in found] == [("calcium-sulphate", False)]
    assert found[0].keys == ("calcium nitrate", "silent")
    assert found[0].saturation_index is not None
    assert found[0].saturation_index > 0
    assert clashes([Part(CALCIUM_NITRATE, 50), Part(POTASSIUM_NITRATE, 50)]) == ()
    assert clashes([Part(CALCIUM_NITRATE, 0.5), Part(silent, 0.5)]) == ()


def test_a_label_without_room_for_a_sulphate_is_trusted() -> None:
    full = Product.of_label("full", (13.8, 0, 46.5), {}, NITRATE)
    assert clashes([Part(CALCIUM_NITRATE, 50), Part(full, 50)]) == ()


def test_a_silicate_goes_with_nothing() -> None:
    found = clashes([Part(SILICATE, 10), Part(POTASSIUM_NITRATE, 10)])
    assert [clash.code for clash in found] == ["silicate"]
    assert clashes([Part(SILICATE, 10)]) == ()


@pytest.mark.parametrize("extra", [{"N": 5.0}, {"P": 3.0}])
def test_a_feed_with_some_silicon_is_no_silicate(extra: Elements) -> None:
    feed = Product("feed with silicon", {"K": 15.0, "Si": 2.0, "S": 0.0, **extra})
    assert clashes([Part(feed, 10), Part(POTASSIUM_NITRATE, 10)]) == ()


@given(st.floats(3.0, 7.5), st.floats(1.5, 5))
def test_a_weaker_solution_is_further_from_falling(ph: float, times: float) -> None:
    elements = {"Ca": 4000.0, "Mg": 1000.0, "P": 2000.0, "S": 1500.0, "K": 5000.0}
    strong = saturation_indices(elements, ph=ph, ammonium_n_mg_l=1000)
    thin = {symbol: amount / times for symbol, amount in elements.items()}
    weak = saturation_indices(thin, ph=ph, ammonium_n_mg_l=1000 / times)
    assert all(weak[name] < strong[name] for name in strong)
    assert set(strong) == set(minerals())


# ------------------------------------------------------------------------------------- thinning


def test_a_stock_for_one_in_a_hundred_is_a_hundred_times_as_strong() -> None:
    # Delaware: 1 gallon makes 100 gallons, and 1 % is 1:100
    ratio = Ratio.one_in(100)
    assert ratio.stock_g_l(1.0) == 100
    assert ratio.percent == 1


@given(st.floats(1.5, 5000), st.floats(0.01, 100))
def test_stock_and_feed_agree(n: float, feed_l: float) -> None:
    ratio = Ratio.one_in(n)
    assert ratio.feed_l(feed_l * ratio.percent / 100) == pytest.approx(feed_l)
    assert ratio.stock_g_l(1.0) * ratio.percent / 100 == pytest.approx(1.0)


@pytest.mark.parametrize("times", [1.0, 0.5, 0.0, -3.0, 1e5, float("nan")])
def test_a_ratio_that_does_not_thin_is_refused(times: float) -> None:
    with pytest.raises(ValueError, match="thinned"):
        Ratio.one_in(times)


# ------------------------------------------------------------------------------------ two bottles


def test_calcium_stands_alone_and_the_rest_together() -> None:
    a, b = bottles_for(FEED, Ratio.one_in(100))
    assert (a.name, b.name) == ("A", "B")
    assert keys(a) == {"calcium nitrate"}
    assert keys(b) == {"complete powder", "Epsom salt"}
    assert a.grams(0.5) == {"calcium nitrate": pytest.approx(25)}
    assert b.grams(0.5)["complete powder"] == pytest.approx(25)


def test_the_bottle_with_calcium_is_a_whatever_the_order() -> None:
    a, b = bottles_for(FEED[::-1], Ratio.one_in(100))
    assert (a.name, b.name) == ("A", "B")
    assert keys(a) == {"calcium nitrate"}


def test_a_pure_element_is_a_product() -> None:
    assert Product("sulphur", {"S": 100.0}).percent("S") == 100.0


def test_a_chelate_by_itself_does_not_upset_the_recipe() -> None:
    iron = Product("iron chelate", {"Fe": 13.0})
    bottles = bottles_for([Part(CALCIUM_NITRATE, 0.5), Part(iron, 0.02)], Ratio.one_in(100))
    assert sum(len(bottle.parts) for bottle in bottles) == 2


def test_products_that_agree_share_one_bottle() -> None:
    (only,) = bottles_for([Part(COMPLETE, 0.5), Part(EPSOM, 0.1)], Ratio.one_in(100))
    assert only.name == "A"
    assert len(only.parts) == 2


@given(st.lists(st.floats(0.02, 0.5), min_size=3, max_size=3), st.integers(5, 50))
def test_bottles_bring_the_feed_back(amounts: list[float], n: int) -> None:
    feed = [
        Part(product, amount)
        for product, amount in zip((CALCIUM_NITRATE, COMPLETE, EPSOM), amounts, strict=True)
    ]
    ratio = Ratio.one_in(n)
    bottles = bottles_for(feed, ratio)
    for part in feed:
        stocks = [b.grams(ratio.percent / 100).get(part.product.key, 0) for b in bottles]
        assert sum(stocks) == pytest.approx(part.g_l)
        assert sum(g > 0 for g in stocks) == 1
    assert all(bottle.fullness <= 1 and not clashes(bottle.parts) for bottle in bottles)


def test_too_strong_a_stock_names_the_nearest() -> None:
    with pytest.raises(ValueError, match="thin it 100 times instead of 900"):
        bottles_for(FEED, Ratio.one_in(900))
    assert len(bottles_for(FEED, Ratio.one_in(100))) == 2


def test_three_that_agree_with_none_need_a_third_bottle() -> None:
    other = Product.of_label("calcium silicate", (0, 0, 0), {"Ca": 10, "Si": 20})
    with pytest.raises(ValueError, match="Two bottles are not enough"):
        bottles_for([Part(SILICATE, 1), Part(other, 1), Part(MKP, 1)], Ratio.one_in(20))


def test_bad_recipes_are_refused() -> None:
    with pytest.raises(ValueError, match="1 to 8 products"):
        bottles_for([], Ratio.one_in(100))
    with pytest.raises(ValueError, match="twice"):
        bottles_for([Part(MKP, 1), Part(MKP, 1)], Ratio.one_in(100))
    with pytest.raises(ValueError, match="cannot be weighed"):
        Part(MKP, 0)


# ------------------------------------------------------------------------------ labels, bad input


def test_a_label_holds_the_data_and_no_wording() -> None:
    bottle = bottles_for(FEED, Ratio.one_in(100))[1]
    label = bottle_label(bottle, 500, date(2024, 2, 20))
    assert label.name == "B"
    assert dict(label.grams) == {
        "complete powder": pytest.approx(25),
        "Epsom salt": pytest.approx(10),
    }
    assert label.millilitres == 500
    assert label.use_by == date(2024, 3, 5)  # a fortnight: it holds chelates
    assert "not-for-drinking" in label.marks
    with pytest.raises(ValueError, match="cannot be"):
        bottle_label(bottle, 0, date(2024, 2, 20))


def test_salts_keep_longer_than_urea_chelates_and_the_unknown() -> None:
    assert keeps_days(POTASSIUM_NITRATE) == keeps_days(EPSOM) == 90
    assert keeps_days(COMPLETE) == KEEPS_DAYS
    assert keeps_days(Product.of_label("urea", (46, 0, 0), {}, NitrogenForms(0, 0, 1))) == 14
    assert keeps_days(Product.of_label("silent", (20, 20, 20), {})) == 14


@pytest.mark.parametrize("celsius", [-1.0, 40.1, float("nan")])
def test_storage_outside_the_table_is_refused(celsius: float) -> None:
    with pytest.raises(ValueError, match="not kept at"):
        strongest_stock(MKP, coldest_c=celsius)


@pytest.mark.parametrize(
    ("elements", "said"),
    [
        ({"Xx": 1.0}, "not an element"),
        ({"N": -1.0}, "cannot hold"),
        ({"N": float("nan")}, "cannot hold"),
        ({"N": 60.0, "K": 60.0}, "no analysis"),
        ({}, "no analysis"),
    ],
)
def test_an_impossible_label_is_refused(elements: Elements, said: str) -> None:
    with pytest.raises(ValueError, match=said):
        Product("x", elements)


def test_unknown_salts_and_impossible_solutions_are_refused() -> None:
    with pytest.raises(ValueError, match="not known here"):
        solubility_g_l("NaCl", 20)
    with pytest.raises(ValueError, match="pH"):
        saturation_indices({"Ca": 1.0}, ph=13)
    with pytest.raises(ValueError, match="cannot be"):
        saturation_indices({"Ca": -1.0})


def test_solubility_between_two_temperatures_lies_between() -> None:
    for formula in salts():
        grid = [solubility_g_l(formula, c) for c in (0, 5, 10, 15, 20, 22, 25, 40)]
        assert all(low < high for low, high in pairwise(grid))


# ------------------------------------------------------------------------------------- at the ends


@pytest.mark.parametrize("coldest_c", [None, 15.0])
@pytest.mark.parametrize("times", [500, 200, 100, 50, 25, 20, 15, 10, 5, 2])
def test_the_nearest_ratio_is_the_strongest_usual_one_that_stays_clear(
    times: int, coldest_c: float | None
) -> None:
    feed = [Part(MKP, 0.999 * strongest_stock(MKP, coldest_c=coldest_c).g_l / times)]
    with pytest.raises(NoSuchBottles, match=f"thin it {times} times instead of 10000") as caught:
        bottles_for(feed, Ratio.one_in(10_000), coldest_c=coldest_c)
    assert caught.value.nearest == Ratio(times)


def test_where_no_ratio_helps_the_products_are_named() -> None:
    with pytest.raises(NoSuchBottles, match="leave one product out") as caught:
        bottles_for([Part(MKP, 60.0)], Ratio.one_in(20))
    assert (caught.value.nearest, caught.value.keys) == (None, (MKP.key,))
    other = Product.of_label("calcium silicate", (0, 0, 0), {"Ca": 10, "Si": 20})
    with pytest.raises(NoSuchBottles) as caught:
        bottles_for([Part(SILICATE, 1), Part(other, 1), Part(MKP, 1)], Ratio.one_in(20))
    assert caught.value.keys == tuple(sorted((SILICATE.key, other.key, MKP.key)))


def test_a_stock_is_thinned_ten_thousand_times_at_most() -> None:
    assert Ratio.one_in(10_000).times == 10_000
    for times in (10_001, 1.0):
        with pytest.raises(ValueError, match="at most 1:10000"):
            Ratio.one_in(times)


@pytest.mark.parametrize("ph", [1.0, 12.0])
def test_acidity_from_1_to_12_is_reckoned_with(ph: float) -> None:
    assert saturation_indices({"Ca": 400.0, "P": 300.0, "S": 300.0}, ph=ph)
    for beyond in (0.99, 12.01):
        with pytest.raises(ValueError, match="1 to 12 is known"):
            saturation_indices({"Ca": 400.0}, ph=beyond)


def test_eight_products_are_a_recipe_and_nine_are_not() -> None:
    many = [Part(Product(f"iron {k}", {"Fe": 10.0}), 0.01) for k in range(9)]
    [bottle] = bottles_for(many[:8], Ratio.one_in(20))
    assert len(bottle.parts) == 8
    with pytest.raises(ValueError, match="1 to 8 products, not 9"):
        bottles_for(many, Ratio.one_in(20))


@pytest.mark.parametrize("celsius", [0.0, 40.0])
def test_storage_at_the_ends_of_the_table_is_known(celsius: float) -> None:
    grid = solubility_temperatures_c()
    place = grid.index(celsius)
    for formula, salt in salts().items():
        assert solubility_g_l(formula, celsius) == pytest.approx(10 * salt.mass_percent[place])


def test_a_bottle_tells_how_full_it_is() -> None:
    [bottle] = bottles_for([Part(MKP, 0.5)], Ratio.one_in(100))
    assert bottle.g_l == pytest.approx(50.0)
    assert bottle.fullness == pytest.approx(50.0 / strongest_stock(MKP).g_l)
    assert bottle.strongest_g_l == strongest_stock(MKP).g_l
    assert bottle.assumed == strongest_stock(MKP).assumed
    colder = bottles_for([Part(MKP, 0.5)], Ratio.one_in(100), coldest_c=2.0)
    assert colder[0].strongest_g_l == strongest_stock(MKP, coldest_c=2.0).g_l
    assert "coldest" not in colder[0].assumed


@pytest.mark.parametrize(
    ("elements", "open_"),
    # calcium shares no soluble product with sulphate, but does with chloride
    [
        ({"K": 30.0}, {"S", "Cl"}),
        ({"Ca": 19.0, "N": 15.5}, {"Cl"}),
        ({"K": 30.0, "S": 0.0}, {"Cl"}),
        ({"K": 30.0, "Cl": 27.0}, {"S"}),
        ({"K": 30.0, "S": 12.0, "Cl": 0.0}, set()),
    ],
)
def test_a_label_that_is_silent_leaves_sulphur_and_chlorine_open(
    elements: Elements, open_: set[str]
) -> None:
    product = Product("x", elements)
    assert {s for s in ("N", "P", "K", "Mg", "S", "Cl") if product.leaves_open(s)} == open_


def test_what_is_silent_may_fill_the_weight_that_is_left() -> None:
    # 60 % K leaves 40 % for sulphate, which is 55.1 % of K2SO4; or for chloride, 47.6 % of KCl
    shares = possible_salts(Product("potash", {"K": 60.0}))
    assert shares["K2SO4"] == pytest.approx(0.40 / 0.5513, rel=1e-3)
    assert shares["KCl"] == pytest.approx(0.40 / 0.4755, rel=1e-3)


@pytest.mark.parametrize("place", range(5))
def test_each_amount_of_a_shared_error_must_be_one(place: int) -> None:
    figures = [0.5, 500.0, 100.0, 0.1, 0.1]
    figures[place] = 0.0
    dose_g, bottle_ml, strongest_g_l, scale, syringe = figures
    with pytest.raises(ValueError, match=r"cannot be 0\.0"):
        share_error(dose_g, bottle_ml, strongest_g_l, scale_step_g=scale, syringe_step_ml=syringe)


def test_a_bottle_may_be_one_dose() -> None:
    found = share_error(2.0, 100, 20)
    assert (found.product_g, found.use_ml) == (pytest.approx(2.0), pytest.approx(100.0))
    with pytest.raises(ValueError, match="100 mL holds at most 2 g in solution"):
        share_error(2.001, 100, 20)


@pytest.mark.parametrize(
    ("elements", "ammonium", "names"),
    [
        ({"Ca": 400.0, "S": 300.0}, 0.0, {"gypsum"}),
        ({"Ca": 400.0, "P": 300.0}, 0.0, {"brushite"}),
        ({"Mg": 400.0, "P": 300.0}, 0.0, {"newberyite"}),
        ({"Mg": 400.0, "P": 300.0}, 50.0, {"newberyite", "struvite"}),
        ({"K": 400.0}, 0.0, set()),
    ],
)
def test_only_minerals_of_what_is_there_can_fall(
    elements: Elements, ammonium: float, names: set[str]
) -> None:
    assert set(saturation_indices(elements, ammonium_n_mg_l=ammonium)) == names
    # where nothing is said of ammonium there is none
    assert set(saturation_indices(elements)) == names - {"struvite"}


@pytest.mark.parametrize("ph", [1.0, 1.5, 2.0])
def test_acid_takes_sulphate_from_gypsum_as_in_phreeqc(ph: float, program: PhreeqPython) -> None:
    elements = {"Ca": 400.0, "Mg": 50.0, "K": 200.0, "S": 500.0, "P": 100.0}
    acid = saturation_indices(elements, ph=ph)["gypsum"]
    plain = saturation_indices(elements, ph=6.0)["gypsum"]
    # HSO4- holds 10 ** (1.99 - pH) of what is free; activities lessen that a little
    expected = [phreeqc_indices(program, elements, 0.0, each)["gypsum"] for each in (ph, 6.0)]
    assert acid < plain - 0.05
    assert acid - plain == pytest.approx(expected[0] - expected[1], abs=0.1)


def test_an_amount_without_end_is_refused() -> None:
    with pytest.raises(ValueError, match="Ca cannot be inf"):
        saturation_indices({"Ca": float("inf")})
    with pytest.raises(ValueError, match="ammonium cannot be -1"):
        saturation_indices({"Ca": 1.0}, ammonium_n_mg_l=-1.0)
