"""The plan for an ailing plant in sentences, with its figures and sources."""

from __future__ import annotations

from datetime import timedelta
from math import prod
from typing import Any

from bot.conversation import answer as out
from bot.conversation.collection import label, whom_said
from bot.conversation.replies import SHOWN_CAUTIONS
from bot.conversation.turn import Turn
from bot.conversation.turns.standing.advice import advice_for, genus_of, growth_on
from bot.dosing.dose import ASSUMED_N_MG_L
from bot.dosing.plants import named
from bot.dosing.pot_water import ASSUMED_POT_CM
from bot.dosing.rescue import (
    LIKELY,
    POSSIBLE,
    UNLIKELY,
    Action,
    Case,
    Judgement,
    Plan,
    plan,
    present_signs,
)
from bot.dosing.season import season_of
from bot.dosing.strength import BY_REGIME, ceilings, chain, most_sensitive
from bot.records.models import Plant

_WATERED = ("flush", "rinse", "soak")


def planned(
    turn: Turn, case: Case, judgement: Judgement, plants: list[Plant], genus: str | None
) -> out.Answer:
    """What to do, how sure it is, how long without feed and what then, what to look for.

    `genus` is the kind that was said, where the plant is not on record.
    """
    words = turn.words
    made = plan(case)
    whom = whom_said(plants, genus, turn.words)
    shape = shape_of(plants, case)
    strength = _resumed(turn, case, made, plants, genus)
    today = [a for a in made.actions if a.day == 0 and a.code != "feed"]  # that is in `_resume`
    poured = [a for a in today if a.code in _WATERED]
    first = poured if made.cause != "root_rot" else []  # rot: out of the pot, then rinse
    ordered = [*first, *(a for a in today if a not in first)]
    lines = [
        " ".join(_done(turn, a, whom, shape, lead=a is ordered[0]) for a in ordered),
        _people(turn, made),
        _likely(turn, judgement),
        _resume(turn, made, strength, plants),
        *_later(turn, made, shape),
        _assumed(turn, made),
    ]
    cautions = [
        out.Caution(code=c.code, text=words.say(f"caution-{c.code}")) for c in made.cautions
    ]
    lines += [f"- {c.text}" for c in cautions[:SHOWN_CAUTIONS]]
    answer = turn.tell(
        "rescue",
        lines,
        choices=_choices(turn, made, plants),
        details=_figures(turn, case, judgement, made, strength),
    )
    return answer.model_copy(
        update={"cautions": cautions, "why": _why(turn, case, judgement, made)}
    )


def shape_of(plants: list[Plant], case: Case) -> dict[str, str]:
    """What its sentences agree with: one or many; whether in a pot, or perhaps in a basket."""
    many = (sum(p.count for p in plants) if plants else case.facts.count) > 1
    mounted = case.facts.medium == "mounted"
    told = bool(case.facts.medium or case.facts.pot_cm or not plants)
    pot = "no" if mounted else "yes" if told else "maybe"
    return {"n": "many" if many else "one", "pot": pot}


def _done(
    turn: Turn, action: Action, plant: str, shape: dict[str, str], *, lead: bool = False
) -> str:
    """One thing to do, as a sentence."""
    words = turn.words
    values = {"plant": plant if lead else "none", "lead": "yes" if lead else "no", **shape}
    if action.volume_l:
        passes = action.passes or 1
        values |= {
            "volume": _volume(turn, action.volume_l),
            "passes": words.number(passes, 0),
            "part": _volume(turn, action.volume_l / passes),
            "rest": words.number(action.rest_min or 0, 0),
        }
    return words.say(f"rescue-do-{action.code.replace('_', '-')}", **values)


def _volume(turn: Turn, litres: float) -> str:
    """Two digits: nobody pours finer."""
    return turn.words.volume(float(f"{litres:.2g}"))


def _likely(turn: Turn, judgement: Judgement) -> str:
    words = turn.words
    by_word = {
        word: [
            words.say(f"cause-{f.cause.replace('_', '-')}")
            for f in judgement.likelihoods
            if f.word == word and f.evidence  # of what no sign speaks nobody asks
        ]
        for word in (LIKELY, POSSIBLE, UNLIKELY)
    }
    if judgement.leading is None:
        return words.say("rescue-unclear")
    return words.say(
        "rescue-likely",
        likely=words.listed(by_word[LIKELY]) or "none",
        possible=words.listed(by_word[POSSIBLE]) or "none",
        unlikely=words.listed(by_word[UNLIKELY]) or "none",
    )


def _resumed(
    turn: Turn, case: Case, made: Plan, plants: list[Plant], genus: str | None
) -> float | None:
    """The strength to begin with again, of full strength [1]; None where no feed is planned."""
    if made.resume_fraction is None:
        return None
    day = turn.today + timedelta(days=made.pause_days)
    states = {growth_on(p, day) for p in plants}
    steps = chain(
        strength=None, exact=False, target=False, regime=None,
        season=season_of(day.month, south=turn.south), medium=case.facts.medium,
        growth="seedling" if "seedling" in states else None,
    )  # fmt: skip
    usual = prod(step.factor for step in steps)
    genera = [g for p in plants if (g := genus_of(p)) is not None]
    genera += list(named((genus,))) if genus and not plants else []
    feeding_class = most_sensitive(tuple(g.feeding_class for g in genera))
    cuts = ceilings(
        usual, label_fraction=1.0, n_mg_l_at_full=ASSUMED_N_MG_L,
        feeding_class=feeding_class, regime=None,
    )  # fmt: skip
    return usual * prod(cut.factor for cut in cuts) * made.resume_fraction


def _resume(turn: Turn, made: Plan, strength: float | None, plants: list[Plant]) -> str:
    words = turn.words
    day = turn.today + timedelta(days=made.pause_days)
    if made.cause == "rest":
        return words.say("rescue-rests")
    if strength is None:
        code = "rescue-no-feed" if made.cause else "rescue-no-feed-yet"
        return words.say(code, days=made.pause_days, day=words.day(day, turn.today))
    asleep = plants and all(
        any(r.code.startswith("rest") for r in advice_for(p, day, south=turn.south).reasons)
        for p in plants
    )
    tips = any(a.code == "feed" and a.condition for a in made.actions)
    return words.say(
        "rescue-resume",
        days=made.pause_days,
        day=words.day(day, turn.today),
        strength=f"{words.significant(100 * strength)} %",
        share=words.factor(made.resume_fraction or 1.0),
        when="rests" if asleep else "tips" if tips else "day",
    )


def _later(turn: Turn, made: Plan, shape: dict[str, str]) -> list[str]:
    """What comes after today, one line for each thing, with its days."""
    words = turn.words
    later: dict[tuple[str, str], list[Action]] = {}
    for action in made.actions:
        if action.day > 0 and action.code != "feed":
            later.setdefault((action.code, action.condition), []).append(action)
    lines = []
    for (_, condition), actions in later.items():
        days = [words.day(turn.today + timedelta(days=a.day), turn.today) for a in actions]
        lines.append(
            words.say(
                "rescue-later",
                days=words.listed(days),
                what=_done(turn, actions[0], "none", shape),
                condition=condition.replace("_", "-") or "none",
            )
        )
    return lines


def _people(turn: Turn, made: Plan) -> str:
    if not made.people:
        return ""
    found = [turn.words.say(f"sign-{code.replace('_', '-')}") for code in made.people]
    return turn.words.say("rescue-people", signs=turn.words.listed(found))


def _assumed(turn: Turn, made: Plan) -> str:
    if not made.assumed:
        return ""
    both = len(made.assumed) > 1
    return turn.words.say(
        "rescue-assumed",
        what="both" if both else made.assumed[0],
        pot=turn.words.number(ASSUMED_POT_CM),
    )


def _choices(turn: Turn, made: Plan, plants: list[Plant]) -> tuple[str, ...]:
    """The flush, to be written down once it is done."""
    flushes = any(a.code == "flush" and a.day == 0 for a in made.actions)
    if not flushes or len(plants) != 1:
        return ()
    return (turn.words.say("rescue-say-flushed", plant=_named(plants[0], turn)),)


def _named(plant: Plant, turn: Turn) -> str:
    return plant.name or plant.genus or label(plant, turn.words)


# --- figures and sources --------------------------------------------------------------------


def _figures(
    turn: Turn, case: Case, judgement: Judgement, made: Plan, strength: float | None
) -> dict[str, Any]:
    return {
        "cause": made.cause,
        "likelihoods": {
            f.cause: {"word": f.word, "points": f.points} for f in judgement.likelihoods
        },
        "signs": sorted(present_signs(case)),
        "answers": dict(case.answers),
        "pause_days": made.pause_days,
        "resume_fraction": made.resume_fraction,
        "resume_strength": strength,
        "actions": [
            {
                "code": a.code,
                "on": (turn.today + timedelta(days=a.day)).isoformat(),
                "condition": a.condition or None,
                "volume_l": a.volume_l,
                "passes": a.passes,
                "rest_min": a.rest_min,
                "fraction": a.fraction,
            }
            for a in made.actions
        ],
        "people": list(made.people),
        "assumed": list(made.assumed),
    }


def _why(turn: Turn, case: Case, judgement: Judgement, made: Plan) -> list[out.Why]:
    """The evidence for what is at least possible, then what is done."""
    words = turn.words
    why = []
    for found in judgement.likelihoods:
        if found.word == UNLIKELY:
            continue
        cause = words.say(f"cause-{found.cause.replace('_', '-')}")
        for part in found.evidence:
            sign = words.say(f"sign-{part.sign.replace('_', '-')}")
            side = "for" if part.points > 0 else "against"
            text = words.say(
                "why-rescue-sign", sign=sign, cause=cause, answer=part.answer,
                points=words.number(abs(part.points), 0), side=side,
            )  # fmt: skip
            why.append(
                out.Why(rule=f"rescue.{found.cause}.{part.sign}", factor=float(part.points),
                        text=text, source=_source(part.source, part.status))
            )  # fmt: skip
    for action in made.actions:
        if action.code == "flush" and action.volume_l:
            text = words.say(
                "why-rescue-flush", volume=_volume(turn, action.volume_l),
                passes=words.number(action.passes or 1, 0),
                pot=words.number(case.facts.pot_cm or ASSUMED_POT_CM), count=case.facts.count,
            )  # fmt: skip
            why.append(
                out.Why(rule="rescue.flush", factor=action.volume_l, text=text,
                        source=_source(action.source, action.status))
            )  # fmt: skip
            break
    if made.cause is not None:
        usual = made.resume_fraction
        text = words.say(
            "why-rescue-pause",
            days=made.pause_days,
            share="none" if usual is None else words.factor(usual),
            usual=words.factor(BY_REGIME["every_watering"].factor),
        )
        why.append(
            out.Why(rule="rescue.pause", factor=usual or 0.0, text=text,
                    source=_source(made.source, made.status))
        )  # fmt: skip
    return why


def _source(source: str, status: str) -> str:
    return source if status in ("seen", source) else f"{source}; {status}"
