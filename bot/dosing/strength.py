"""The chain of steps from full strength to what a plant gets today.

Each rule is a code, a factor and a source beside each other; `ceilings` come last.
"""

from __future__ import annotations

from dataclasses import dataclass

from bot.almanac.reference import media

COMMON = "common practice, no source"


@dataclass(frozen=True, slots=True)
class Step:
    """One step of the chain: a rule's code, its factor [1] and where it is from."""

    rule: str
    factor: float
    source: str


#: Fraction of full strength by how often it is fed, where no strength was asked.
BY_REGIME = {
    "every_watering": Step("strength.every_watering", 0.25, COMMON),
    "weekly": Step("strength.weekly", 0.25, COMMON),
    "fortnightly": Step("strength.fortnightly", 0.5, COMMON),
    "monthly": Step("strength.monthly", 0.5, COMMON),
}
NOTHING_SAID = Step("strength.default", 0.25, COMMON)
WINTER = Step("season.winter", 0.5, COMMON)
SEEDLING = Step("seedling", 0.5, COMMON)
#: Media that hold salts.
BY_MEDIUM = {
    m.name: Step(f"medium.{m.name}", m.holds_salts_factor, m.source)
    for m in media().values()
    if m.holds_salts_factor != 1.0
}
#: Names of the media that the almanac knows.
MEDIA = tuple(media())
#: States of growth that lift the halving in winter.
GROWING = frozenset({"growing", "new_roots", "new_leaves", "new_pseudobulbs"})


@dataclass(frozen=True, slots=True)
class Ceiling:
    """What a feeding class bears: a share of the label [1] and nitrogen [mg/L]."""

    of_label: float
    n_mg_l: float


#: Shares and limits are the project's rules, common practice.
CEILINGS = {
    "hungry": Ceiling(1.0, 200.0),
    "moderate": Ceiling(1.0, 125.0),
    "sensitive": Ceiling(0.25, 50.0),
}
_ORDER = ("sensitive", "moderate", "hungry")
#: Fed this seldom, the limit in mg/L does not hold; the share of the label does.
_SELDOM = frozenset({"fortnightly", "monthly"})


def most_sensitive(classes: tuple[str, ...]) -> str:
    """The class that decides for all; plants unknown count as moderate."""
    return min(classes, key=_ORDER.index, default="moderate")


def chain(
    *,
    strength: float | None,
    exact: bool,
    target: bool,
    regime: str | None,
    season: str | None,
    medium: str | None,
    growth: str | None,
) -> list[Step]:
    """The steps before the ceilings.

    Parameters
    ----------
    strength : fraction of full strength that was asked for [1]
    exact : drop season, medium and seedling
    target : full strength is a concentration that was asked for, taken as it is
    regime, season, medium, growth : canonical values or None

    Returns
    -------
    list of Step
        In order; the product of the factors is the fraction of full strength.
    """
    if strength is not None:
        steps = [Step("strength.asked", strength, "your message")]
    elif target:
        steps = [Step("strength.target", 1.0, "your message")]
    else:
        steps = [BY_REGIME.get(regime or "", NOTHING_SAID)]
    if exact or (target and strength is None):
        return steps
    if season == "winter" and growth not in GROWING:
        steps.append(WINTER)
    if medium in BY_MEDIUM:
        steps.append(BY_MEDIUM[medium])
    if growth == "seedling":
        steps.append(SEEDLING)
    return steps


def ceilings(
    fraction: float,
    *,
    label_fraction: float,
    n_mg_l_at_full: float,
    feeding_class: str,
    regime: str | None,
) -> list[Step]:
    """The cuts that are needed, in order: the label, then the class.

    Parameters
    ----------
    fraction : of full strength after the chain [1]
    label_fraction : where the label's rate lies, as a fraction of full strength [1]
    n_mg_l_at_full : nitrogen at full strength [mg/L], 0 for a product without
    feeding_class : of the most sensitive plant
    regime : canonical value or None

    Returns
    -------
    list of Step
        Each factor brings the fraction down to its ceiling; empty where nothing is cut.
    """
    steps = []
    for rule, ceiling in limits(
        label_fraction=label_fraction,
        n_mg_l_at_full=n_mg_l_at_full,
        feeding_class=feeding_class,
        regime=regime,
    ):
        if fraction > ceiling * (1 + 1e-12):
            steps.append(Step(rule, ceiling / fraction, COMMON))
            fraction = ceiling
    return steps


def limits(
    *, label_fraction: float, n_mg_l_at_full: float, feeding_class: str, regime: str | None
) -> tuple[tuple[str, float], ...]:
    """The ceilings as fractions of full strength [1], by rule; parameters as in `ceilings`."""
    limit = CEILINGS[feeding_class]
    of_class = label_fraction * limit.of_label
    if regime not in _SELDOM and n_mg_l_at_full > 0:
        of_class = min(of_class, limit.n_mg_l / n_mg_l_at_full)
    return ("ceiling.label", label_fraction), (f"ceiling.{feeding_class}", of_class)
