"""An ailing plant: what is likely, what is asked, and the plan until it is fed again."""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import datetime, timedelta
from typing import Any

from bot.conversation import answer as out
from bot.conversation.collection import Collection, pick, whom_said
from bot.conversation.turn import Turn, UnfitDay, day_past
from bot.conversation.turns.feeding.doses import keep_why
from bot.conversation.turns.plants import move, which
from bot.conversation.turns.rescue.plan import planned, shape_of
from bot.conversation.turns.splitting import some_of
from bot.conversation.turns.standing import rescue_log
from bot.conversation.turns.standing.advice import advice_for, genus_of, growth_on
from bot.dosing.dose import ASSUMED_N_MG_L
from bot.dosing.rescue import (
    NO,
    UNKNOWN,
    YES,
    Case,
    Facts,
    Feed,
    answer_in,
    close,
    feeds_count_days,
    judge,
    may_be_asked,
    most_questions,
    next_question,
    plan,
    settled_by,
    sheds_leaves,
)
from bot.dosing.season import season_of
from bot.dosing.strength import BY_MEDIUM, BY_REGIME, NOTHING_SAID
from bot.records import log
from bot.records.kinds import CARE, EventKind
from bot.records.models import Event, Plant
from grammar import Order, Reading

#: The log is read so far back [d]; older feeds no longer count.
_LOOKED_BACK = 365
#: A reading of what ran out counts for so long [d]; ours.
_READING_LASTS = 30
#: Answers to a question by the verb of the message.
_ANSWERS = {"yes": YES, "no": NO, "skip": UNKNOWN}
#: Readings of a message that may be an answer in other words: none of them changes the records.
_WANTS_NOTHING = frozenset({"dose", "follow_up", "not_given", "tell", "explain", "growth", "last"})
#: Signs that are told within this time are of one harm; ours.
GOES_ON = timedelta(minutes=30)
#: A plant that hangs its leaves: by what else is known of its pot, else as wrinkled leaves.
_LIMP = "limp"
#: Nitrogen of the most common powders, 20-20-20 [% of mass]; common practice, no source.
COMMON_N_PERCENT = 20.0
#: Without roots nothing is fed, whatever took them, and rot that is seen is cut out at once.
_SETTLES = frozenset({"roots_gone", "crown_rot", "leaf_rot"})
#: Where only too much was given and no harm is seen yet, there is nothing to ask.
_ONLY_TOO_MUCH = {"fed_strong"}
_KINDS = tuple(CARE)
#: What a plant that drops its leaves before a rest shows.
_SHEDDING = frozenset({"yellow_old_leaf", "leaves_gone"})


@dataclass(frozen=True, slots=True)
class Told:
    """What is known of one rescue beside the records: kept while questions are open.

    `signs`, `answers` by code; `said` are facts of the message; `ids` the plants meant.
    """

    signs: tuple[str, ...]
    answers: dict[str, str]
    said: dict[str, Any]
    ids: tuple[int, ...]
    text: str

    def with_answer(self, asked: str, answer: str | None, turn: Turn) -> Told:
        """With the answer to a question, and what else was told with it."""
        said = turn.reading.ails
        there = tuple(dict.fromkeys((*self.signs, *turn.order.signs, *said.there)))
        there = tuple(c for c in there if c != asked or answer != NO)
        answers = dict(self.answers)
        if answer is not None:
            answers[asked] = answer
        told = replace(self, signs=there, answers=answers)
        return told.denying((*turn.order.denied, *said.denied))

    def denying(self, denied: tuple[str, ...]) -> Told:
        """With signs that were said not to be there; what is there stays so."""
        answers = {**self.answers, **{c: NO for c in denied if may_be_asked(c)}}
        kept = [(c, a) for c, a in answers.items() if c not in self.signs]
        return replace(self, answers=dict(kept[: most_questions()]))


async def rescue(turn: Turn) -> out.Answer:
    """Judge what ails a plant: ask where causes are close, else say what to do."""
    found, several = _meant(turn)
    if len(found) > 1 and not several:
        return which(turn, turn.collection, found)
    order = turn.order
    if order.text and not order.signs:  # 'yes, they are soft', where nothing was asked
        return turn.say("help", "nothing-asked")
    moved = await _moved(turn) if order.place else None
    told = Told(order.signs, {}, _said(turn), tuple(p.id for p in found), turn.incoming.text)
    told = _with_before(turn, told)
    answer = await _judged(turn, told.denying(order.denied))
    if line := _their_rate_line(turn):
        answer = answer.model_copy(update={"reply": f"{line}\n{answer.reply}"})
    if moved is None:
        return answer
    reply = f"{moved.reply}\n{answer.reply}"
    choices = list(dict.fromkeys((*answer.choices, *moved.choices)))
    return answer.model_copy(update={"reply": reply, "choices": choices})


def _with_before(turn: Turn, told: Told) -> Told:
    """With what was told of the same plants just before: signs of one harm come one by one."""
    before = turn.remembered.get("ailing")
    if not isinstance(before, dict) or set(before["ids"]) != set(told.ids):
        return told
    kinds = {said["genus"] for said in (before["said"], told.said) if "genus" in said}
    if len(kinds) > 1:  # two plants, neither of them on record
        return told
    said_at = datetime.fromisoformat(before["said_at"])
    if turn.incoming.said_at - said_at > GOES_ON:
        return told
    signs = tuple(dict.fromkeys((*before["signs"], *told.signs)))
    said = {**before["said"], **told.said}
    return replace(told, signs=signs, said=said).denying(
        tuple(c for c, a in before["answers"].items() if a == NO and c not in told.signs)
    )


async def _moved(turn: Turn) -> out.Answer:
    """What was done before the signs were seen is written down first."""
    order = turn.order
    target = replace(order.target, place=None, traits=(), medium=None)
    moving = Order("move", target=target, place=order.place, when=order.when)
    return await move(replace(turn, reading=replace(turn.reading, order=moving, unknown=())))


async def answered(turn: Turn) -> out.Answer | None:
    """The next question, or the plan, where the message answers our question."""
    question, order = turn.question, turn.order
    if order.verb == "no" and order.text in ("leave", "stop", "thanks"):
        return turn.say("help", "question-left")
    said = turn.reading.ails
    asked = str(question["asked"])
    by_state = answer_in(asked, dict(said.states))
    another = order.verb == "rescue" and (order.target.named_one or not order.signs)
    plainly = order.verb in (*_ANSWERS, "rescue") and (not another or bool(order.text))
    if order.verb == "dose" and order.only_plants and order.target.named_one and not said.there:
        return await _of_these(turn)
    if not plainly and not _in_other_words(turn, tuple(question["ids"]), by_state):
        return None
    if not plainly:  # its words were understood, if not as those of a dose
        turn = replace(turn, reading=replace(turn.reading, unknown=(), read_as=()))
    told = Told(
        tuple(question["signs"]), dict(question["answers"]), dict(question["said"]),
        tuple(question["ids"]), str(question["text"]),
    )  # fmt: skip
    answer = _ANSWERS.get(order.text or order.verb) or by_state
    if order.verb in _ANSWERS and said.there:
        answer = None  # 'gießen passt' says yes to nothing
    if answer is None and settled_by(asked, said.there):
        answer = NO  # 'the roots are firm', to soft roots
    if answer is None and asked not in (*said.there, *said.denied):
        answer = UNKNOWN  # they told something else: the same question again would not hear it
    told = told.with_answer(asked, answer, turn)
    return await keep_why(turn, await _judged(turn, told))


async def _of_these(turn: Turn) -> out.Answer | None:
    """The same signs of other plants: 'the cymbidiums', told while a question is open."""
    question = turn.question
    found = pick(turn.order.target, turn.collection)
    if not found:
        return None
    if len(found) > 1 and not turn.order.target.everything:
        kinds = {p.genus for p in found}
        if len(kinds) > 1 or len(turn.order.target.genera) != 1:
            return None
    told = Told(tuple(question["signs"]), {}, {}, tuple(p.id for p in found), str(question["text"]))
    return await keep_why(turn, await _judged(turn, told))


def _in_other_words(turn: Turn, ids: tuple[int, ...], by_state: str | None) -> bool:
    """Whether a message that wants nothing else tells what was asked: 'the roots are fine'."""
    order, reading = turn.order, turn.reading
    if order.verb not in _WANTS_NOTHING or reading.problems:
        return False
    if reading.volume_l is not None or reading.analysis is not None or order.products:
        return False
    if not (reading.ails.there or reading.ails.denied or by_state):
        return False
    if not (order.target.names or order.target.genera):
        return True
    found = pick(order.target, turn.collection)
    return bool(found) and {p.id for p in found} <= set(ids)


def _meant(turn: Turn) -> tuple[list[Plant], bool]:
    """The plants on record that are meant, and whether several were."""
    collection, target = turn.collection, turn.order.target
    if turn.chosen is not None:
        return [p for p in collection.plants if p.id in turn.chosen], True
    several = target.everything or len(target.names) > 1 or "many_plants" in turn.order.signs
    looser = replace(target, place=None, medium=None, traits=())
    for wanted in (target, looser):  # colours and places are more often said of the harm
        if found := pick(wanted, collection, turn.last_plants):
            return found, several or (target.again and len(target.names) == 0)
    if target.empty and not several:
        return [p for p in collection.plants if p.id in turn.last_plants][:1], False
    return [], several


def _said(turn: Turn) -> dict[str, Any]:
    """Facts that the message itself tells; they win over the records."""
    reading, order = turn.reading, turn.order
    said: dict[str, Any] = {
        "medium": reading.medium,
        "pot_cm": reading.pot_cm,
        "season": reading.season,
        "water": reading.water.kind if reading.water else None,
        "count": reading.count,
        "ec": _runoff(reading, order.value),
        "genus": reading.genera[0] if len(reading.genera) == 1 else None,
    }
    if order.asks_kind == "fed" and reading.strength is not None:
        said["feed"] = [_days_ago(turn), reading.strength]
    elif order.theirs and (of_label := _their_rate(reading)) is not None:
        said["feed"] = [0, of_label]
    return {name: value for name, value in said.items() if value is not None}


def _their_rate(reading: Reading) -> float | None:
    """What somebody else gives, of a full label [1]; without its numbers as a 20-20-20."""
    rate, analysis = reading.label_rate, reading.analysis
    if rate is None or rate.unit != "g":
        return None
    n_percent = analysis[0] if analysis is not None else COMMON_N_PERCENT
    return rate.per_litre * 10 * n_percent / ASSUMED_N_MG_L


def _their_rate_line(turn: Turn) -> str:
    """That what somebody else gives is over a full label; empty where it is not."""
    reading = turn.reading
    of_label = _their_rate(reading) if turn.order.theirs else None
    if of_label is None or reading.label_rate is None or of_label <= 1:
        return ""
    words, full = turn.words, reading.label_rate.per_litre / of_label
    return words.say(
        "rescue-their-rate",
        rate=words.significant(reading.label_rate.per_litre),
        times=words.significant(of_label),
        part=words.significant(full * BY_REGIME["weekly"].factor),
        known="yes" if reading.analysis is not None else "no",
    )


def _runoff(reading: Reading, number: float | None) -> float | None:
    ec = reading.target_ec_ms_cm if reading.target_ec_ms_cm is not None else number
    return ec if ec is not None and 0 <= ec <= 20 else None


def _days_ago(turn: Turn) -> int:
    try:
        return (turn.today - day_past(turn.order.when, turn.today)).days
    except UnfitDay:
        return 0


# --- what is on record ---------------------------------------------------------------------


async def _judged(turn: Turn, told: Told) -> out.Answer:
    collection = turn.collection
    plants = [p for p in collection.plants if p.id in told.ids]
    if plants or told.said.get("genus"):
        turn.keep_plants(plants)
    if turn.owner is not None or turn.incoming.person:
        kept = {"ids": list(told.ids), "signs": list(told.signs), "answers": told.answers}
        at = turn.incoming.said_at.isoformat()
        turn.remembered["ailing"] = {**kept, "said": told.said, "said_at": at}
        await turn.keep()
    case = _case(told, await _facts(turn, collection, plants, told.said), plants, turn)
    judgement = judge(case)
    settled = not _SETTLES.isdisjoint(case.signs) or not close(judgement)
    settled = settled or set(told.signs) == _ONLY_TOO_MUCH
    question = None if settled else next_question(case)
    if question is not None:
        some = _part(told, plants)
        spoken_of = [some_of(plants[0], some)] if some else plants
        return _asking(turn, told, question.sign, spoken_of, case)
    some = _part(told, plants)
    spoken_of = [some_of(plants[0], some)] if some else plants
    answer = planned(turn, case, judgement, spoken_of, told.said.get("genus"))
    return await rescue_log.write(turn, answer, plan(case), plants, some=some)


def _part(told: Told, plants: list[Plant]) -> int | None:
    """How many of several alike ail; None where all of them do."""
    some = told.said.get("count")
    fewer = len(plants) == 1 and some is not None and 0 < some < plants[0].count
    return int(some) if fewer and some is not None else None


def _case(told: Told, facts: Facts, plants: list[Plant], turn: Turn) -> Case:
    there = set(told.signs)
    if _LIMP in there:
        wet, dry = "medium_stays_wet" in there, "dry_light_pot" in there
        there.remove(_LIMP)
        there.add("wilting_wet" if wet else "wilting_dry" if dry else "pleated_leaves")
    if plants and all(growth_on(p, turn.today) == "seedling" for p in plants):
        there.add("young_plant")
    if plants and there & _SHEDDING and all(_sheds(turn, p) for p in plants):
        there.add("sheds_in_rest")
    answers = {c: a for c, a in told.answers.items() if c not in there}
    return Case(frozenset(there), answers, facts)


def _sheds(turn: Turn, plant: Plant) -> bool:
    """Whether a plant rests now, of a kind that drops old leaves then."""
    genus = genus_of(plant)
    advice = advice_for(plant, turn.today, south=turn.south)
    rests = any(reason.code.startswith("rest") for reason in advice.reasons)
    return rests and genus is not None and sheds_leaves(genus.name)


async def _facts(
    turn: Turn, collection: Collection, plants: list[Plant], said: dict[str, Any]
) -> Facts:
    """What the records tell; of several plants what speaks most for harm."""
    rows: list[Event] = []
    since = turn.today - timedelta(days=_LOOKED_BACK)
    if turn.owner is not None:
        async with turn.records.reading() as session:
            for plant in plants:
                rows += await log.history(
                    session, turn.owner_id, plant.id, since=since, kinds=_KINDS
                )
    rows = [row for row in rows if row.on <= turn.today]
    media = [p.medium for p in plants if p.medium]
    weakest = min(media, key=lambda m: BY_MEDIUM[m].factor if m in BY_MEDIUM else 1.0, default=None)
    water = collection.water_of(plants[0]) if plants else None
    repotted = [p.last_repot_on for p in plants if p.last_repot_on]
    years = max(((turn.today - on).days / 365.25 for on in repotted), default=None)
    return Facts(
        feeds=_feeds(turn, rows, said),
        weeks_since_flush=_weeks_since_flush(turn, plants, rows),
        ec_ms_cm=said.get("ec", _ec(turn, rows)),
        medium=said.get("medium", weakest),
        season=said.get("season", season_of(turn.today.month, south=turn.south)),
        years_in_medium=years,
        pot_cm=said.get("pot_cm", max((p.pot_cm for p in plants if p.pot_cm), default=None)),
        count=max(1, said.get("count") or sum(p.count for p in plants)),
        water_kind=said.get("water", water.kind if water else None),
    )


def _feeds(turn: Turn, rows: list[Event], said: dict[str, Any]) -> tuple[Feed, ...] | None:
    """The feeds in the log, as shares of the label; None where it is too short to tell."""
    feeds = [
        Feed((turn.today - row.on).days, _of_label(row)) for row in rows
        if row.kind is EventKind.FED
    ]  # fmt: skip
    if "feed" in said:
        days_ago, of_label = said["feed"]
        feeds.append(Feed(days_ago, of_label))
    longest = max(((turn.today - row.on).days for row in rows), default=0)
    kept = longest >= feeds_count_days()  # so long a log would show a feed
    return tuple(feeds) or (() if kept else None)


def _of_label(row: Event) -> float:
    strength, n_mg_l = row.details.get("strength"), row.details.get("n_mg_l")
    if isinstance(n_mg_l, int | float):
        return max(0.0, float(n_mg_l) / ASSUMED_N_MG_L)
    return max(0.0, float(strength)) if isinstance(strength, int | float) else NOTHING_SAID.factor


def _weeks_since_flush(turn: Turn, plants: list[Plant], rows: list[Event]) -> float | None:
    """Since clear water ran through; where it never did, since the first feed in the log."""
    weeks = []
    for plant in plants:
        rinsed = [d for d in (plant.last_clear_on, plant.last_flush_on) if d is not None]
        fed = [r.on for r in rows if r.kind is EventKind.FED and r.plant_id == plant.id]
        start = max(rinsed, default=min(fed, default=None))
        if start is not None:
            weeks.append(max(0, (turn.today - start).days) / 7)
    return max(weeks, default=None)


def _ec(turn: Turn, rows: list[Event]) -> float | None:
    """The last reading of what ran out, while no flush came after it [mS/cm]."""
    for row in sorted(rows, key=lambda r: (r.on, r.id), reverse=True):
        if row.kind is EventKind.FLUSH or (turn.today - row.on).days > _READING_LASTS:
            return None
        ec = row.details.get("runoff_ec_ms_cm")
        if isinstance(ec, int | float):
            return float(ec)
    return None


# --- asking --------------------------------------------------------------------------------


def _asking(turn: Turn, told: Told, sign: str, plants: list[Plant], case: Case) -> out.Answer:
    words = turn.words
    choices = tuple(words.say(f"rescue-answer-{answer}") for answer in (YES, NO, UNKNOWN))
    text = words.say(
        f"ask-rescue-{sign.replace('_', '-')}",
        plant=whom_said(plants, told.said.get("genus"), turn.words),
        **shape_of(plants, case),
    )
    waiting = {
        "kind": "rescue", "asked": sign, "signs": list(told.signs), "answers": told.answers,
        "said": told.said, "ids": list(told.ids), "text": told.text,
    }  # fmt: skip
    asked = turn.tell("ask", [text], choices=choices)
    return asked.model_copy(update={"ask": text, "details": {"waiting": waiting}})
