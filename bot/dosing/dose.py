"""One dose: a request of plain values in, amounts, steps and cautions out."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from math import prod
from typing import TypedDict

from bot.almanac.plants import Genus
from bot.almanac.reference import measures
from bot.dosing.cautions import Caution, cautions
from bot.dosing.concentration import element_mg_l
from bot.dosing.conductivity import EcRange, NitrogenForms, feed_ec_ms_cm
from bot.dosing.label import elemental_percent
from bot.dosing.measuring import (
    SCALE_STEP_G,
    SYRINGE_STEP_ML,
    TOLERABLE_ERROR,
    Stock,
    larger_batch_l,
    relative_error,
    stock_for,
)
from bot.dosing.meter import Feed, mixed_ec_ms_cm
from bot.dosing.strength import Step, ceilings, chain, limits, most_sensitive
from bot.dosing.supplement import ec_ceiling
from bot.dosing.water import Range, Water, ec_of_hardness

#: Full strength where neither a label rate nor a product is known [mg/L N].
ASSUMED_N_MG_L = measures()["assumed_full_strength"].value
#: Taken for a liquid of unknown density [kg/L].
ASSUMED_DENSITY_KG_L = measures()["assumed_density"].value
#: No feed is stronger than this [g/L]; an EC target is looked for below it.
MOST_G_L = 20.0
_ROUNDS = 4  # EC is nearly in proportion: each leaves a tenth of the error or less
_EXACT = 0.005  # within which an EC is the one that was asked for: half the last digit shown [1]
US_TEASPOON_ML = measures()["us_teaspoon"].value
#: The heaviest soluble powder in a level teaspoon [g], so that a ceiling holds for any.
HEAVIEST_TEASPOON_G = measures()["heaviest_level_teaspoon"].value


@dataclass(frozen=True, slots=True)
class Rate:
    """A label rate: so much in each litre, in g, ml or tsp."""

    per_litre: float
    unit: str


@dataclass(frozen=True, slots=True, kw_only=True)
class DoseRequest:
    """All that a dose depends on, in canonical values; None where it is not known.

    Parameters
    ----------
    volume_l : ready feed [L]
    analysis : N, P2O5, K2O [% of mass]
    extras : further elements [% of mass]
    form : powder, liquid or None
    density_kg_l : of a liquid [kg/L]
    label_rate, label_from : the rate and 'label' or 'product'
    strength : fraction asked for [1]
    target_n_mg_l, target_ec_ms_cm : wanted in the can [mg/L], [mS/cm]
    plants : as in the almanac
    some_unknown : whether further plants are meant whose kind is not known
    types_rest : whether some types of a plant named by its genus alone rest now
    water_ec_ms_cm : of the water alone [mS/cm]; where it is not known, it is estimated from the
        hardness, and where that is not known either, an EC target is what the feed adds
    water : by its ions where they are known; then `water_ec_ms_cm` does not count
    nitrogen : forms of the product's nitrogen, where its label has them
    called_hard : whether the water was called hard without a figure
    ailing : whether the plant was said to ail
    scale_step_g, syringe_step_ml : of the person's tools
    """

    volume_l: float
    analysis: tuple[float, float, float]
    extras: Mapping[str, float] = field(default_factory=dict)
    form: str | None = None
    density_kg_l: float | None = None
    label_rate: Rate | None = None
    label_from: str = "label"
    strength: float | None = None
    exact: bool = False
    regime: str | None = None
    season: str | None = None
    medium: str | None = None
    growth: str | None = None
    plants: tuple[Genus, ...] = ()
    some_unknown: bool = False
    types_rest: bool = False
    target_n_mg_l: float | None = None
    target_ec_ms_cm: float | None = None
    water_kind: str | None = None
    water_ec_ms_cm: float | None = None
    water: Water | None = None
    nitrogen: NitrogenForms | None = None
    hardness_mg_l_caco3: float | None = None
    alkalinity_mg_l_caco3: float | None = None
    called_hard: bool = False
    ailing: bool = False
    scale_step_g: float | None = None
    syringe_step_ml: float | None = None


@dataclass(frozen=True, slots=True)
class OverLimit:
    """A water that is too salty for the plants, by itself or with the feed in it.

    Parameters
    ----------
    own_ms_cm : of the water alone, a range where it is estimated [mS/cm]
    total_ms_cm : with the feed in it [mS/cm]
    most_ms_cm : what the plants bear in the ready feed [mS/cm]
    share : of this water in rain or the like, up to which they bear it with the feed [1]
    """

    own_ms_cm: EcRange
    total_ms_cm: EcRange
    most_ms_cm: float
    share: float

    @property
    def alone(self) -> bool:
        """Whether the water is too salty without any feed."""
        return self.own_ms_cm.low > self.most_ms_cm


@dataclass(frozen=True, slots=True)
class Dose:
    """What to measure and what it makes.

    Parameters
    ----------
    amount, per_litre : of product, in `unit` (g, ml or tsp)
    strength : fraction of full strength after every step [1]
    elements_mg_l : in the can, without the water's own [mg/L]; empty where unknown
    ec : conductivity that the feed adds to pure water, a little more than to others [mS/cm]
    relative_error : of measuring the amount at once (k = 2) [1]; None for spoons
    stock : what to do instead where that error is too large
    batch_l : volume from which measuring at once would do [L]
    most : the largest amount that no ceiling cuts, in `unit`
    over_limit : where the water is too salty for the plants
    """

    amount: float
    unit: str
    per_litre: float
    strength: float
    full_strength_source: str
    elements_mg_l: Mapping[str, float]
    ec: EcRange | None
    relative_error: float | None
    stock: Stock | None
    batch_l: float | None
    measuring_step: float | None
    most: float  # the amount that no ceiling cuts, same unit
    steps: tuple[Step, ...]
    cautions: tuple[Caution, ...]
    over_limit: OverLimit | None = None


class _Bounds(TypedDict):
    """What the ceilings depend on."""

    label_fraction: float
    n_mg_l_at_full: float
    feeding_class: str
    regime: str | None


@dataclass(frozen=True, slots=True)
class _Product:
    """A product seen from the dose: its unit, and what one unit brings."""

    unit: str
    grams: float  # product in one unit; for spoons of powder the most there can be
    percent: Mapping[str, float]
    notes: tuple[Step, ...]
    nitrogen: NitrogenForms | None = None

    @property
    def n_mg(self) -> float:
        """Nitrogen in one unit [mg]."""
        return self.grams * self.percent["N"] * 10


def work_out(request: DoseRequest) -> Dose:
    """The dose for one can.

    Parameters
    ----------
    request : a volume above 0 and an analysis are needed; a product without nitrogen
        needs a label rate; an EC target must lie above the EC of the water

    Returns
    -------
    Dose

    Raises
    ------
    ValueError
        Where no full strength can be found.
    """
    label = _label_in_unit(request)
    product = _product(request, label)
    label_per_litre = label.per_litre if label else _per_litre_of_n(ASSUMED_N_MG_L, product)
    full, source = _full_strength(request, product, label_per_litre)
    target = source == "target"
    steps = [*_source_steps(source), *product.notes]
    if request.target_n_mg_l is None and request.target_ec_ms_cm:
        steps += _water_steps(request)
    steps += chain(
        strength=request.strength,
        exact=request.exact,
        target=target,
        regime=request.regime,
        season=request.season,
        medium=request.medium,
        growth=request.growth,
    )
    classes = tuple(p.feeding_class for p in request.plants)
    feeding_class = most_sensitive((*classes, "moderate") if request.some_unknown else classes)
    bounds: _Bounds = {
        "label_fraction": label_per_litre / full,
        "n_mg_l_at_full": full * product.n_mg,
        "feeding_class": feeding_class,
        "regime": request.regime,
    }
    steps += ceilings(prod(s.factor for s in steps), **bounds)
    most = full * min(ceiling for _, ceiling in limits(**bounds)) * request.volume_l
    return _measured(request, product, full, source, steps, feeding_class, most)


def _label_in_unit(request: DoseRequest) -> Rate | None:
    """The label rate; spoons of a liquid are millilitres."""
    rate = request.label_rate
    if rate is not None and rate.unit == "tsp" and request.form == "liquid":
        return Rate(rate.per_litre * US_TEASPOON_ML, "ml")
    return rate


def _product(request: DoseRequest, label: Rate | None) -> _Product:
    n, p2o5, k2o = request.analysis
    percent = elemental_percent(n, p2o5, k2o, request.extras)
    unit = label.unit if label else "ml" if request.form == "liquid" else "g"
    notes: list[Step] = []
    if unit == "tsp":
        return _Product(unit, HEAVIEST_TEASPOON_G, percent, (), request.nitrogen)
    if request.form is None and label is None:
        notes.append(Step("form.weighed", 1.0, "assumed, as it was not said"))
    if unit == "g":
        return _Product(unit, 1.0, percent, tuple(notes), request.nitrogen)
    if request.density_kg_l is None:
        notes.append(Step("density.assumed", 1.0, measures()["assumed_density"].source))
    grams = request.density_kg_l or ASSUMED_DENSITY_KG_L
    return _Product(unit, grams, percent, tuple(notes), request.nitrogen)


def _per_litre_of_n(n_mg_l: float, product: _Product) -> float:
    if product.n_mg <= 0:
        raise ValueError("a product without nitrogen needs a label rate")
    return n_mg_l / product.n_mg


def _full_strength(
    request: DoseRequest, product: _Product, label_per_litre: float
) -> tuple[float, str]:
    if request.target_n_mg_l is not None:
        return _per_litre_of_n(request.target_n_mg_l, product), "target"
    if request.target_ec_ms_cm is not None:
        return _per_litre_of_ec(request, product), "target"
    return label_per_litre, request.label_from if request.label_rate else "assumed"


def _per_litre_of_ec(request: DoseRequest, product: _Product) -> float:
    """Product that brings the can to an EC at most: by the upper end of the estimate."""
    water = _water(request)
    own = water.ec_ms_cm if isinstance(water, Water) else water
    wanted = (request.target_ec_ms_cm or 0.0) - own
    if wanted <= 0:
        raise ValueError("the water alone has that EC already")
    low, high = 0.0, MOST_G_L / product.grams
    for _ in range(60):  # EC grows with the amount: halve the interval
        middle = (low + high) / 2
        ec = _ec(product, middle)
        if ec is None or ec.high > wanted:
            high = middle
        else:
            low = middle
    return _in_water(product, low, water, wanted) if own else low


def _water(request: DoseRequest) -> Water | float:
    """The water as far as it is known, 0 where it is not."""
    if request.water is not None:
        return request.water
    if request.water_ec_ms_cm is not None:
        return request.water_ec_ms_cm
    estimated = water_ec_by_hardness(request.hardness_mg_l_caco3, request.water_kind)
    return estimated.middle if estimated is not None else 0.0


def water_ec_by_hardness(hardness_mg_l_caco3: float | None, kind: str | None) -> Range | None:
    """EC that a water may have where its hardness alone is known [mS/cm].

    Parameters
    ----------
    hardness_mg_l_caco3 : total hardness, None where it is not known [mg/L CaCO3]
    kind : of the water; a softened one is taken at the hardness before its softener

    Returns
    -------
    Range, or None
        None where nothing follows from it.
    """
    if hardness_mg_l_caco3 is None:
        return None
    try:
        return ec_of_hardness(hardness_mg_l_caco3, soft=kind == "softened")
    except ValueError:  # no fresh water is so hard
        return None


def _over_limit(
    request: DoseRequest, product: _Product, per_litre: float, feeding_class: str
) -> OverLimit | None:
    """Whether the water, with the feed in it, passes what the plants bear; None where it does not.

    Where the water is estimated, or the forms of nitrogen are not known, the least is taken: what
    is said here is sure.
    """
    water, worst = _water(request), 0.0
    if request.water is None and request.water_ec_ms_cm is None:
        estimated = water_ec_by_hardness(request.hardness_mg_l_caco3, request.water_kind)
        water, worst = (0.0, 0.0) if estimated is None else estimated
    own = water.ec_ms_cm if isinstance(water, Water) else water
    worst = max(own, worst)
    pure = pure_water_ec_ms_cm("rain") or 0.0
    if own <= pure:
        return None  # nothing is purer
    most, _ = ec_ceiling(feeding_class)
    feed = Feed(product.percent, product.nitrogen)
    try:
        total = mixed_ec_ms_cm(feed, per_litre * product.grams, water)
    except ValueError:  # beyond what the model holds for: the water alone is looked at
        total = EcRange(own, own)
    if total.low <= most * (1 + _EXACT):
        return None
    added = _ec(product, per_litre)  # in pure water it adds a little more
    room = most - pure - (added.high if added is not None else total.high - own)
    share = min(max(room / (worst - pure), 0.0), 1.0)
    return OverLimit(EcRange(own, worst), total, most, share)


def _water_steps(request: DoseRequest) -> list[Step]:
    """What the water was taken to be, where its own EC was not told; else that it is taken off."""
    if request.water is not None or request.water_ec_ms_cm is not None:
        water = _water(request)
        own = water.ec_ms_cm if isinstance(water, Water) else water
        salty = own > (pure_water_ec_ms_cm("rain") or 0.0)
        return [Step("ec.water_known", 1.0, "your message")] if salty else []
    if water_ec_by_hardness(request.hardness_mg_l_caco3, request.water_kind) is not None:
        return [Step("ec.water_hardness", 1.0, "types of water in waters.toml, the middle of them")]
    return [Step("ec.water_unknown", 1.0, "assumed, as it was not said")]


def _in_water(product: _Product, per_litre: float, water: Water | float, added: float) -> float:
    """An amount right for pure water, brought to what adds as much EC to this water.

    Salts in the water slow those of the feed, which then adds less (see `meter`).
    """
    own = water.ec_ms_cm if isinstance(water, Water) else water
    feed = Feed(product.percent, product.nitrogen)
    for _ in range(_ROUNDS):
        try:
            found = mixed_ec_ms_cm(feed, per_litre * product.grams, water).high - own
        except ValueError:  # beyond what the model holds for: as in pure water
            break
        if found <= 0:
            break
        per_litre = min(per_litre * added / found, MOST_G_L / product.grams)
    return per_litre


def _ec(product: _Product, per_litre: float) -> EcRange | None:
    """What so much product adds; None beyond the strength that the model holds for."""
    grams = per_litre * product.grams
    elements = {e: element_mg_l(grams, p) for e, p in product.percent.items()}
    try:
        return feed_ec_ms_cm(elements, product.nitrogen, product_mg_l=1000 * grams)
    except ValueError:  # stronger than the model holds for: no estimate is better than a wrong one
        return None


def pure_water_ec_ms_cm(kind: str) -> float | None:
    """EC of a kind of water that holds hardly any salts [mS/cm], None for the others."""
    figure = measures().get(f"ec_of_{kind}")
    return figure.value if figure else None


def _source_steps(source: str) -> list[Step]:
    """What full strength was taken to be, where it was not a label rate."""
    if source == "assumed":
        return [Step("full.assumed", 1.0, measures()["assumed_full_strength"].source)]
    if source == "target":
        return [Step("full.target", 1.0, "your message")]
    return [Step("full.product", 1.0, "your shelf")] if source == "product" else []


def _measured(
    request: DoseRequest,
    product: _Product,
    full: float,
    source: str,
    steps: list[Step],
    feeding_class: str,
    most: float,
) -> Dose:
    strength = prod(s.factor for s in steps)
    per_litre = full * strength
    amount = per_litre * request.volume_l
    spoons = product.unit == "tsp"
    grams_l = per_litre * product.grams
    percent = {} if spoons else product.percent
    step, error, stock = (None, None, None) if spoons else _tool(request, product.unit, amount)
    too_coarse = error is not None and error > TOLERABLE_ERROR
    over = None if spoons else _over_limit(request, product, per_litre, feeding_class)
    return Dose(
        amount=amount,
        unit=product.unit,
        per_litre=per_litre,
        strength=strength,
        full_strength_source=source,
        elements_mg_l={e: element_mg_l(grams_l, p) for e, p in percent.items() if p},
        ec=None if spoons or not amount else _ec(product, per_litre),
        relative_error=error,
        stock=stock,
        batch_l=larger_batch_l(request.volume_l, error) if error and too_coarse else None,
        measuring_step=step,
        most=most,
        steps=tuple(steps),
        over_limit=over,
        cautions=cautions(
            water_over_limit=over is not None,
            form=request.form or ("liquid" if product.unit == "ml" else "powder"),
            spoons=spoons,
            plant_known=bool(request.plants),
            types_rest=request.types_rest,
            feeding_class=feeding_class,
            regime=request.regime,
            growth=request.growth,
            winter_target=source == "target" and request.season == "winter",
            water_kind=request.water_kind,
            hardness_mg_l_caco3=request.hardness_mg_l_caco3,
            called_hard=request.called_hard,
            water_ec_ms_cm=request.water.ec_ms_cm if request.water else request.water_ec_ms_cm,
            alkalinity_mg_l_caco3=request.alkalinity_mg_l_caco3,
            ailing=request.ailing,
            has_calcium=bool(product.percent.get("Ca")),
            has_magnesium=bool(product.percent.get("Mg")),
        ),
    )


def _tool(request: DoseRequest, unit: str, amount: float) -> tuple[float, float, Stock | None]:
    step = (
        request.scale_step_g or SCALE_STEP_G
        if unit == "g"
        else request.syringe_step_ml or SYRINGE_STEP_ML
    )
    error = relative_error(amount, step)
    return step, error, stock_for(amount, unit, step) if error > TOLERABLE_ERROR else None
