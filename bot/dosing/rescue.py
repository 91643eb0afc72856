"""A plant in trouble: what is likely, what to ask next, what to do.

Signs, facts and answers add points for and against each cause (bot/almanac/rescue.toml); the word
for a cause depends on its own points alone, so that evidence for one never lowers it, and two may
be likely at once. Everything is codes and numbers; days count from today.
"""

from __future__ import annotations

import math
from collections.abc import Mapping
from dataclasses import dataclass, field, replace
from types import MappingProxyType

from bot.almanac.reference import caution_severities, media, water_held
from bot.almanac.rescue import (
    Remedy,
    Sign,
    causes,
    limits,
    remedies,
    rescue_severities,
    sheds,
    signs,
)
from bot.dosing.cautions import Caution
from bot.dosing.conductivity import MAX_READING_MS_CM
from bot.dosing.pot_water import FLUSH_PASSES, flush_volume_l, watering_l

LIKELY, POSSIBLE, UNLIKELY = "likely", "possible", "unlikely"
YES, NO, UNKNOWN = "yes", "no", "unknown"
ANSWERS = (YES, NO, UNKNOWN)
_NOBODY_SAID: Mapping[str, str] = MappingProxyType({})


@dataclass(frozen=True, slots=True)
class Feed:
    """A feed that was given: how long ago [d], how strong [1 of the label rate]."""

    days_ago: float
    of_label: float

    def __post_init__(self) -> None:
        if not (self.days_ago >= 0 and self.of_label >= 0):
            raise ValueError(
                f"A feed of {self.of_label:g} of the label {self.days_ago:g} days ago cannot be: "
                "both must be 0 or more."
            )


@dataclass(frozen=True, slots=True)
class Facts:
    """What is on record; None where it is not.

    Parameters
    ----------
    feeds : the last feeds; empty where it is known that there were none
    weeks_since_flush : since clear water last ran through [week]
    ec_ms_cm : of the water in the pot, or of what runs out [mS/cm]
    medium : canonical name
    season : canonical name
    age_years : of the plant [year]
    years_in_medium : since it was last repotted [year]
    pot_cm : upper diameter [cm]
    count : of plants to rescue alike
    water_kind : canonical name
    """

    feeds: tuple[Feed, ...] | None = None
    weeks_since_flush: float | None = None
    ec_ms_cm: float | None = None
    medium: str | None = None
    season: str | None = None
    age_years: float | None = None
    years_in_medium: float | None = None
    pot_cm: float | None = None
    count: int = 1
    water_kind: str | None = None

    def __post_init__(self) -> None:
        for name in ("weeks_since_flush", "age_years", "years_in_medium", "pot_cm"):
            value = getattr(self, name)
            if value is not None and not 0 <= value < math.inf:
                raise ValueError(f"{name} cannot be {value:g}: it must be 0 or more.")
        if self.ec_ms_cm is not None and not 0 <= self.ec_ms_cm <= MAX_READING_MS_CM:
            raise ValueError(
                f"An EC of {self.ec_ms_cm:g} mS/cm is outside 0 to {MAX_READING_MS_CM:g} mS/cm: "
                "is it in µS/cm?"
            )
        if self.medium is not None and self.medium not in media():
            raise ValueError(
                f"{self.medium!r} is not a medium known here; known are {', '.join(media())}."
            )
        if self.count < 1:
            raise ValueError(f"{self.count} plants cannot be rescued: it takes at least one.")


@dataclass(frozen=True, slots=True)
class Case:
    """What is known of a plant in trouble.

    Parameters
    ----------
    signs : codes of what was reported
    answers : to what was asked, by sign: yes, no or unknown
    facts : what is on record
    """

    signs: frozenset[str] = frozenset()
    answers: Mapping[str, str] = field(default_factory=lambda: _NOBODY_SAID)
    facts: Facts = Facts()

    def __post_init__(self) -> None:
        for code in (*self.signs, *self.answers):
            if code not in signs():
                raise ValueError(f"{code!r} is not a sign known here; known: {', '.join(signs())}.")
        for code, answer in self.answers.items():
            if answer not in ANSWERS:
                raise ValueError(f"{answer!r} is no answer; answers are {', '.join(ANSWERS)}.")
            if answer == NO and code in self.signs:
                raise ValueError(f"{code!r} was reported and then denied: which is it?")
        if len(self.answers) > most_questions():
            raise ValueError(
                f"At most {most_questions()} questions are asked, and {len(self.answers)} answers "
                "were given: report the rest as signs."
            )

    def answered(self, code: str, answer: str) -> Case:
        """The case with one more answer."""
        return replace(self, answers={**self.answers, code: answer})


@dataclass(frozen=True, slots=True)
class Evidence:
    """What a sign said for a cause (less than 0: against it), and where that is from."""

    sign: str
    answer: str
    points: int
    source: str
    status: str


@dataclass(frozen=True, slots=True)
class Likelihood:
    """A cause, the word for it, its points and the evidence they add up from."""

    cause: str
    word: str
    points: int
    evidence: tuple[Evidence, ...]


@dataclass(frozen=True, slots=True)
class Judgement:
    """All causes, the most likely first, the most urgent where equal; `leading` if possible."""

    likelihoods: tuple[Likelihood, ...]
    leading: str | None

    def word(self, cause: str) -> str:
        """The word for a cause."""
        return next(found.word for found in self.likelihoods if found.cause == cause)


@dataclass(frozen=True, slots=True)
class Question:
    """Whether a sign is there, to ask with yes, no, don't know; what it tells orders only [bit]."""

    sign: str
    tells_bits: float


@dataclass(frozen=True, slots=True)
class Action:
    """One thing to do.

    Parameters
    ----------
    code : what
    day : from today [d]
    source, status : where it is from, and how sure that is
    condition : what must be seen first, '' for nothing
    volume_l : water for all plants and passes together [L], None where none is measured
    passes : parts in which the water is poured, None without water
    rest_min : between the parts [min]
    fraction : of the dose the plant would otherwise get, for `feed` only [1]
    """

    code: str
    day: int
    source: str
    status: str
    condition: str = ""
    volume_l: float | None = None
    passes: int | None = None
    rest_min: float | None = None
    fraction: float | None = None


@dataclass(frozen=True, slots=True)
class Plan:
    """What to do for the most likely cause.

    Parameters
    ----------
    cause : code, None where none is possible
    pause_days : without feed, the longest that any possible cause wants [d]
    resume_fraction : of the dose the plant would otherwise get [1], None where no feed is planned:
        roots are gone, or no cause is possible yet
    actions : by day
    people : signs for which somebody should look at it; empty where nobody needs to
    cautions : codes, most severe first
    assumed : what was not told and taken as usual for the water: 'pot_cm', 'medium'
    source, status : of pause and fraction, and how sure that is; '' where no cause is possible
    """

    cause: str | None
    pause_days: int
    resume_fraction: float | None
    actions: tuple[Action, ...]
    people: tuple[str, ...]
    cautions: tuple[Caution, ...]
    assumed: tuple[str, ...]
    source: str = ""
    status: str = ""


# -------------------------------------------------------------------------------- likelihood


def judge(case: Case) -> Judgement:
    """How likely each cause is.

    Parameters
    ----------
    case : signs, answers, facts

    Returns
    -------
    Judgement

    References
    ----------
    Beside each sign in bot/almanac/rescue.toml; the points are ours.
    """
    found = _evidence(case)
    likelihoods = []
    for cause in causes():
        parts = tuple(
            Evidence(code, answer, points[cause], signs()[code].source, signs()[code].status)
            for code, answer, points in found
            if cause in points
        )
        total = sum(part.points for part in parts)
        likelihoods.append(Likelihood(cause, _word(total), total, parts))
    likelihoods.sort(key=lambda likelihood: -likelihood.points)  # stable: the most urgent leads
    first = likelihoods[0]
    return Judgement(tuple(likelihoods), None if first.word == UNLIKELY else first.cause)


def close(judgement: Judgement) -> bool:
    """Whether two causes are so near that it is worth asking; also where none is possible yet."""
    first, second = judgement.likelihoods[:2]
    near = first.points - second.points < limits()["close_points"].value
    return judgement.leading is None or near


def _word(points: int) -> str:
    if points >= limits()["likely_points"].value:
        return LIKELY
    return POSSIBLE if points >= limits()["possible_points"].value else UNLIKELY


def _evidence(case: Case) -> list[tuple[str, str, Mapping[str, int]]]:
    there = present_signs(case)
    denied = [code for code, answer in case.answers.items() if answer == NO]
    return [(code, YES, signs()[code].present) for code in signs() if code in there] + [
        (code, NO, signs()[code].absent) for code in denied
    ]


def present_signs(case: Case) -> frozenset[str]:
    """Signs that are there: reported, answered with yes, and what the facts amount to."""
    said = {code for code, answer in case.answers.items() if answer == YES}
    return case.signs | said | signs_of(case.facts)


def signs_of(facts: Facts) -> frozenset[str]:
    """What facts amount to, as signs; see the limits in bot/almanac/rescue.toml."""
    limit = {name: figure.value for name, figure in limits().items()}
    feeds = facts.feeds or ()
    recent = [feed for feed in feeds if feed.days_ago <= limit["feeds_count_days"]]
    applies = {
        "fed_strong": any(feed.of_label > limit["strong_feed"] for feed in recent),
        "not_fed": facts.feeds is not None and not any(feed.of_label > 0 for feed in recent),
        "flush_due": _at_least(facts.weeks_since_flush, limit["flush_due"]),
        "flush_overdue": _at_least(facts.weeks_since_flush, limit["flush_overdue"]),
        "high_ec": _at_least(facts.ec_ms_cm, limit["high_ec"]),
        "low_ec": facts.ec_ms_cm is not None and facts.ec_ms_cm < limit["low_ec"],
        "holds_salts": _holds_salts(facts.medium),
        "winter": facts.season == "winter",
        "old_medium": _at_least(facts.years_in_medium, limit["old_medium"]),
        "young_plant": facts.age_years is not None and facts.age_years < limit["young_plant"],
    }
    return frozenset(code for code, there in applies.items() if there)


def _at_least(value: float | None, limit: float) -> bool:
    return value is not None and value >= limit


def _holds_salts(medium: str | None) -> bool:
    return medium is not None and media()[medium].holds_salts_factor < 1


# --------------------------------------------------------------------------------- questions


def next_question(case: Case) -> Question | None:
    """What to ask next: the question that tells most apart.

    Only what could change the leading cause is asked; of those, the question whose answer is
    expected to tell most about the cause, a point read as a factor of two in its odds.

    Parameters
    ----------
    case : signs, answers, facts

    Returns
    -------
    Question or None
        None after four questions, or where no answer would change the leading cause.

    References
    ----------
    Lindley, Annals of Mathematical Statistics 27 (1956) 986: expected information of an
    experiment; from memory. The factor of two is ours.
    """
    if len(case.answers) >= most_questions():
        return None
    now = judge(case)
    open_questions = [
        Question(code, _tells_bits(signs()[code], now))
        for code in _fitting(case)
        if _matters(code, case, now)
    ]
    return max(open_questions, key=lambda question: question.tells_bits, default=None)


def _fitting(case: Case) -> list[str]:
    """Signs that may be asked after what was told: not known yet, and of the part that ails."""
    there = present_signs(case)
    known = {*there, *case.answers, *(c for code in there for c in signs()[code].settles)}
    told = there - signs_of(case.facts)
    leads = [signs()[code].leads_to for code in told]
    only = {c for codes in leads for c in codes} if leads and all(leads) else None
    return [
        sign.code for sign in signs().values()
        if sign.ask and sign.code not in known
        and (not sign.after or not told.isdisjoint(sign.after))
        and (only is None or sign.code in only)
    ]  # fmt: skip


def answer_in(code: str, states: Mapping[str, bool]) -> str | None:
    """The answer to a question that bare states amount to ('firm', to soft roots); None for none.

    Parameters
    ----------
    code : sign that was asked for
    states : what was said of the part in question, and whether it is so
    """
    sign = signs()[code]
    for state, so in states.items():
        if state in (*sign.means_yes, *sign.means_no):
            return YES if so == (state in sign.means_yes) else NO
    return None


def settled_by(code: str, told: tuple[str, ...]) -> bool:
    """Whether signs that were told answer a question with no."""
    return any(code in signs()[sign].settles for sign in told if sign in signs())


def most_questions() -> int:
    """Questions that are asked at most, and answers that count."""
    return int(limits()["most_questions"].value)


def may_be_asked(code: str) -> bool:
    """Whether a sign is one that is asked for."""
    return code in signs() and signs()[code].ask


def feeds_count_days() -> float:
    """How far back a feed is looked at [d]."""
    return limits()["feeds_count_days"].value


def _matters(code: str, case: Case, now: Judgement) -> bool:
    return any(judge(case.answered(code, answer)).leading != now.leading for answer in (YES, NO))


def _tells_bits(sign: Sign, now: Judgement) -> float:
    """Expected information about the cause: entropy of the answer less that within each cause."""
    weights = {found.cause: 2.0**found.points for found in now.likelihoods}
    total = sum(weights.values())
    chance_of_yes = within = 0.0
    for cause, weight in weights.items():
        swing = sign.present.get(cause, 0) - sign.absent.get(cause, 0)
        yes = 1 / (1 + 2.0**-swing)
        chance_of_yes += weight / total * yes
        within += weight / total * _entropy_bits(yes)
    return _entropy_bits(chance_of_yes) - within


def _entropy_bits(chance: float) -> float:
    return -sum(p * math.log2(p) for p in (chance, 1 - chance) if p > 0)


# -------------------------------------------------------------------------------------- plan


def sheds_leaves(kind: str) -> bool:
    """Whether a kind drops leaves as it goes to rest (bot/almanac/rescue.toml)."""
    return kind in sheds()


def after_too_much() -> tuple[int, float | None]:
    """How long a plant gets no feed after too much of it, and the share it begins with again.

    Returns
    -------
    tuple
        Days, and a fraction of the usual strength; those of burnt roots in bot/almanac/rescue.toml.
    """
    burn = causes()["salt_burn"]
    return burn.pause_days, burn.resume_fraction


def plan(case: Case) -> Plan:
    """What to do for the most likely cause, and how long not to feed.

    The pause is the longest, the strength to resume at the lowest, of all causes that are at least
    possible. Roots that are damaged count as burnt, and are fed again only once new tips are seen;
    where roots are gone, no feed is planned at all.

    Parameters
    ----------
    case : signs, answers, facts

    Returns
    -------
    Plan

    References
    ----------
    UC ANR and University of Maryland Extension on soluble salts, American Orchid Society on burnt
    roots: beside each action in bot/almanac/rescue.toml.
    """
    judgement = judge(case)
    there = present_signs(case)
    damaged = any(signs()[code].damages_roots for code in there)
    pause_days, gentle = _pause(judgement, damaged)
    no_feed = "roots_gone" in there or judgement.leading is None
    fraction = None if no_feed else gentle
    chosen = [r for r in remedies() if r.cause == (judgement.leading or "") and _fits(r, case)]
    actions = [_action(remedy, case.facts) for remedy in chosen]
    if fraction is not None:
        actions.append(_feed(pause_days, fraction, damaged, judgement.leading or ""))
    people = tuple(code for code, sign in signs().items() if sign.people and code in there)
    entry = causes().get(judgement.leading or "")
    return Plan(
        cause=judgement.leading,
        pause_days=pause_days,
        resume_fraction=fraction,
        actions=tuple(sorted(actions, key=lambda action: action.day)),
        people=people,
        cautions=_cautions(case.facts, actions, damaged, people),
        assumed=_assumed(case.facts, actions),
        source=entry.source if entry else "",
        status=entry.status if entry else "",
    )


def _pause(judgement: Judgement, damaged: bool) -> tuple[int, float]:
    counts = [causes()[found.cause] for found in judgement.likelihoods if found.word != UNLIKELY]
    if damaged:
        counts.append(causes()["salt_burn"])
    if not counts:
        return int(limits()["unclear_pause"].value), 1.0
    return max(c.pause_days for c in counts), min(c.resume_fraction for c in counts)


def _fits(remedy: Remedy, case: Case) -> bool:
    if remedy.when == "potted":
        return case.facts.medium != "mounted"
    return not remedy.when or remedy.when in present_signs(case)


def _feed(day: int, fraction: float, damaged: bool, cause: str) -> Action:
    entry = causes()[cause]
    condition = "new_root_tips" if damaged else ""
    return Action("feed", day, entry.source, entry.status, condition, fraction=fraction)


def _action(remedy: Remedy, facts: Facts) -> Action:
    action = Action(remedy.code, remedy.day, remedy.source, remedy.status, remedy.condition)
    if remedy.code == "flush":
        return _flush(action, facts)
    if remedy.code in ("soak", "rinse"):
        water = watering_l(facts.medium, facts.pot_cm, count=facts.count)
        return replace(action, volume_l=water.volume_l, passes=1, rest_min=0.0)
    return action


def flush(facts: Facts) -> Action:
    """How much clear water flushes salts out of some pots, in how many parts."""
    remedy = next(r for r in remedies() if r.code == "flush")
    return _action(remedy, facts)


def _flush(action: Action, facts: Facts) -> Action:
    passes = FLUSH_PASSES
    if facts.medium == "sphagnum":
        passes = int(limits()["passes_in_moss"].value)
    if facts.medium in water_held() or facts.medium is None:
        volume_l = facts.count * flush_volume_l(facts.pot_cm, passes=passes)
    else:  # mounted: no pot to fill
        volume_l = passes * watering_l(facts.medium, None, count=facts.count).volume_l
    rest_min = limits()["rest_between_passes"].value
    return replace(action, volume_l=volume_l, passes=passes, rest_min=rest_min)


def _assumed(facts: Facts, actions: list[Action]) -> tuple[str, ...]:
    if not any(action.volume_l for action in actions):
        return ()
    return watering_l(facts.medium, facts.pot_cm).assumed


def _cautions(
    facts: Facts, actions: list[Action], damaged: bool, people: tuple[str, ...]
) -> tuple[Caution, ...]:
    codes = {action.code for action in actions}
    poured = any(action.volume_l for action in actions)
    applies = {
        "never-feed-burnt-roots": damaged,
        "keep-apart": "keep_apart" in codes,
        "clean-blade": not codes.isdisjoint(("cut_dead_roots", "cut_to_sound")),
        "tepid-water": poured,
        "not-seen": True,
        "softened-water": poured and facts.water_kind == "softened",
        "wet-roots-first": "feed" in codes,
        "not-down-the-drain": "flush" in codes,
        "ask-a-society": bool(people),
    }
    severities = {**rescue_severities(), **caution_severities()}
    found = [Caution(code, severities[code].severity) for code, there in applies.items() if there]
    return tuple(sorted(found, key=lambda caution: -caution.severity))
