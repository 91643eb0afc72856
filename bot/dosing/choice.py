"""Which feed on the shelf suits a plant: by growth, medium, water and completeness.

Each rule is a code, a test, a weight and a source beside each other. The weights and limits are
ours: they only order what is on the shelf. Rules that weigh less than `_TOLD` settle ties; they
and those against a feed are not given as reasons.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass, field

from bot.dosing.completeness import Lacking, lacking
from bot.dosing.label import elemental_percent
from bot.dosing.strength import COMMON, GROWING

#: Two scores nearer than this are about equal.
_CLOSE = 0.5
#: A rule that weighs less is not given as a reason.
_TOLD = 0.5
_PURE = frozenset({"rain", "reverse_osmosis", "distilled"})
_ORCHID_MEDIA = ("bark", "sphagnum", "mixed")
_NITRATE = (
    "Wang, HortScience 43 (2008): in bark and sphagnum at least half, better three quarters of the "
    "nitrogen as nitrate; nitrate feeds in dark weather: Michigan State University Extension 2023"
)
_POTASSIUM = "Wang, HortScience 42 (2007): at 200 mg/l N at least 200 mg/l K, leaves are lost below"
_BLOOM = (
    "common practice, no source; against it Wang, HortScience 35 (2000) 60: fewer flowers with "
    "little N and high P, 15 to 19 against 24"
)
_BARK_BINDS = "bark binds more nitrogen than peat: HortScience 44 (2009) 781"
_UREA = (
    "must first be turned by microbes or roots: common practice, no source; against it Plant and "
    "Soil 319 (2009) 95: roots of Phalaenopsis take urea up; Wang and Konow: 52 % urea good in "
    "bark with peat"
)
_PURE_WATER = "with pure water take a feed with Ca and Mg: Fisher, GrowerTalks 2022"


@dataclass(frozen=True, slots=True)
class Candidate:
    """A feed as its label shows it.

    Parameters
    ----------
    key : by which the caller knows it
    analysis : N, P2O5, K2O [% of mass]
    extras : further elements by symbol [% of mass]
    form : powder, liquid or None
    n_nitrate, n_ammonium, n_urea : nitrogen by its form [% of mass], None where not told
    trace_elements : whether the label names them without figures
    """

    key: str
    analysis: tuple[float, float, float]
    extras: Mapping[str, float] = field(default_factory=dict)
    form: str | None = None
    n_nitrate: float | None = None
    n_ammonium: float | None = None
    n_urea: float | None = None
    trace_elements: bool = False


@dataclass(frozen=True, slots=True)
class Reason:
    """What speaks for a candidate: a rule's code and its source."""

    code: str
    source: str


@dataclass(frozen=True, slots=True)
class Ranked:
    """A candidate in its place, with what speaks for it; `score` orders only."""

    key: str
    reasons: tuple[Reason, ...]
    score: float


@dataclass(frozen=True, slots=True)
class Choice:
    """The order of the candidates; `close` where the second does nearly as well as the best."""

    best: str | None
    ranked: tuple[Ranked, ...]
    close: bool


@dataclass(frozen=True, slots=True)
class Need:
    """What a feed is chosen for: canonical values, None where not known."""

    growth: str | None
    medium: str | None
    water_kind: str | None
    season: str | None


def choose(
    candidates: Iterable[Candidate],
    *,
    growth: str | None,
    medium: str | None,
    water_kind: str | None,
    season: str | None,
) -> Choice:
    """Order the feeds of a shelf for a plant.

    Parameters
    ----------
    candidates : what is on the shelf
    growth, medium, water_kind, season : canonical values or None

    Returns
    -------
    Choice
        The order does not depend on that of the candidates.

    References
    ----------
    Beside each rule in `RULES`.
    """
    need = Need(growth, medium, water_kind, season)
    ranked = sorted((_ranked(c, need) for c in candidates), key=_place)
    close = len(ranked) > 1 and ranked[0].score - ranked[1].score < _CLOSE
    return Choice(ranked[0].key if ranked else None, tuple(ranked), close)


def _place(ranked: Ranked) -> tuple[float, str, tuple[str, ...]]:
    return -ranked.score, ranked.key, tuple(reason.code for reason in ranked.reasons)


def _ranked(candidate: Candidate, need: Need) -> Ranked:
    reasons, score = [], 0.0
    for rule in RULES:
        if rule.speaks(candidate, need):
            score += rule.weight
            if rule.weight >= _TOLD:
                reasons.append(Reason(rule.code, rule.source))
    return Ranked(candidate.key, tuple(reasons), score)


@dataclass(frozen=True, slots=True)
class Rule:
    """What speaks for or against a feed: a code, a test, a weight and a source."""

    code: str
    speaks: Callable[[Candidate, Need], bool]
    weight: float
    source: str


def _share(candidate: Candidate) -> tuple[float, float]:
    """Nitrogen against phosphorus and against potassium, as elements."""
    parts = elemental_percent(*candidate.analysis, {})
    n = max(parts["N"], 1e-9)
    return parts["P"] / n, parts["K"] / n


def _leafy(candidate: Candidate, need: Need) -> bool:
    phosphorus, potassium = _share(candidate)
    growing = need.growth in GROWING and candidate.analysis[0] > 0
    return growing and phosphorus <= 0.3 and potassium <= 1.0


def _poor_in_nitrogen(candidate: Candidate, need: Need) -> bool:
    n, p2o5, k2o = candidate.analysis
    return need.growth in GROWING and (k2o > 1.6 * n or p2o5 > 1.2 * n)


def _for_bloom(candidate: Candidate, need: Need) -> bool:
    phosphorus, potassium = _share(candidate)
    return need.growth == "flowering" and potassium >= 0.9 and phosphorus <= 1.0


def _poor_in_potassium(candidate: Candidate, need: Need) -> bool:
    return need.growth == "flowering" and _share(candidate)[1] < 0.5


def _bloom_emphasis(candidate: Candidate, need: Need) -> bool:
    n, p2o5, k2o = candidate.analysis
    return need.growth == "flowering" and min(p2o5, k2o) > n


def _balanced(candidate: Candidate, need: Need) -> bool:
    n, p2o5, k2o = candidate.analysis
    doubt = need.growth not in GROWING and need.growth != "flowering"
    return doubt and n > 0 and 0.5 <= k2o / n <= 1.6 and p2o5 / n <= 1.2


def _nitrate_share(candidate: Candidate) -> float | None:
    if candidate.n_nitrate is None or candidate.analysis[0] <= 0:
        return None
    return candidate.n_nitrate / candidate.analysis[0]


def _mostly_nitrate(candidate: Candidate, need: Need) -> bool:
    share = _nitrate_share(candidate)
    matters = need.medium in _ORCHID_MEDIA or need.season == "winter"
    return matters and share is not None and share >= 0.5


def _much_urea(candidate: Candidate, need: Need) -> bool:
    n = candidate.analysis[0]
    return candidate.n_urea is not None and n > 0 and candidate.n_urea / n > 0.5


def _feeds_bark(candidate: Candidate, need: Need) -> bool:
    n, p2o5, k2o = candidate.analysis
    return need.medium == "bark" and n >= max(p2o5, k2o)


def _brings_calcium(candidate: Candidate, need: Need) -> bool:
    has = candidate.extras.get("Ca", 0) > 0 and candidate.extras.get("Mg", 0) > 0
    return need.water_kind in _PURE and has


def _gaps(candidate: Candidate) -> Lacking:
    return lacking(candidate.analysis, candidate.extras, trace_elements=candidate.trace_elements)


def _complete(candidate: Candidate, need: Need) -> bool:
    return _gaps(candidate).complete


def _has_micro(candidate: Candidate, need: Need) -> bool:
    gaps = _gaps(candidate)
    return not gaps.micro and bool(gaps.macro)


def _no_nitrogen(candidate: Candidate, need: Need) -> bool:
    return candidate.analysis[0] < 1.0


def _one_sided(candidate: Candidate, need: Need) -> bool:
    return min(candidate.analysis[1:]) <= 0


#: All of them; their order is that of the reasons.
RULES = (
    Rule("calcium-for-pure-water", _brings_calcium, 3.0, _PURE_WATER),
    Rule("growth-nitrogen", _leafy, 2.0, COMMON),
    Rule("bloom-potassium", _for_bloom, 2.0, _POTASSIUM),
    Rule("balanced-in-doubt", _balanced, 2.0, COMMON),
    Rule("nitrate", _mostly_nitrate, 1.5, _NITRATE),
    Rule("bark-nitrogen", _feeds_bark, 0.5, _BARK_BINDS),
    Rule("complete", _complete, 1.0, COMMON),
    Rule("micro-elements", _has_micro, 0.5, COMMON),
    Rule("bloom-emphasis", _bloom_emphasis, 0.25, _BLOOM),
    Rule("much-urea", _much_urea, -0.5, _UREA),
    Rule("little-nitrogen-in-growth", _poor_in_nitrogen, -1.0, COMMON),
    Rule("little-potassium-in-flower", _poor_in_potassium, -1.0, _POTASSIUM),
    Rule("one-sided", _one_sided, -4.0, "an essential element is missing: as in completeness.py"),
    Rule("no-nitrogen", _no_nitrogen, -5.0, COMMON),
)
