"""What is wanted of reminders: to set, list, move, pass over, pause and stop them."""

from __future__ import annotations

from dataclasses import dataclass, replace
from functools import cache

from grammar.lexicon import settings_of, words_under
from grammar.order import Order, Rhythm, Target, When
from grammar.orders import agreeing, meant
from grammar.orders.facts import Facts
from grammar.rhythms.clock import hours, lone_hour
from grammar.rhythms.days import whole
from grammar.rhythms.reading import lone_span
from grammar.rhythms.walk import Walk
from grammar.words.marks import Mark, phrases, written

#: Verbs of this module: their words are the rhythm, the plants and the person's own.
VERBS = frozenset({
    "remind", "reminders", "reminder_move", "reminder_skip", "reminder_stop", "reminder_pause",
    "reminder_resume", "reminder_quiet", "reminder_not_then", "remind_wish",
})  # fmt: skip
_CARRIES_NOTHING = frozenset({
    "FILLER", "AND", "ARTICLE", "TO", "OF", "FOR", "IN", "PLANTS", "EVERY", "OR", "WATER_WORD",
    "BY", "ASIDE", "PER",
})  # fmt: skip
_TELLS_WHICH = frozenset({"everything", "them", "both", "my"})
#: Cues that name a reminder, whatever is to become of it.
_NAMED = ("remind", "reminders", "reminder")
#: How long is passed over, where more than one time was said.
_STRETCHES = {
    "reminder_skip_week": "week", "reminder_skip_month": "month", "reminder_skip_day": "day",
}  # fmt: skip
_ENDING = (
    "stop",
    "reminder_off",
    "reminder_stop",
    "reminder_skip",
    "reminder_pause",
    "reminder_resume",
    "skip",
)
#: What is none of a reminder though it names a day and something to do.
_SOMETHING_ELSE = (
    "fed", "gave", "clear", "history", "plan", "make_it", "dose", "choose", "add", "have", "may",
    "salts", "how_flush", "why", "compare",
)  # fmt: skip


@dataclass(frozen=True, slots=True)
class _Wish:
    """What a reminder is to be about: the task, the plants, and the words beyond both."""

    task: str
    target: Target
    text: str
    extra: bool
    unused: str = ""


def remind(facts: Facts) -> Order | None:
    """'remind me to flush every first sunday at 9', 'flush sunday', 'daily at 7:30'."""
    cue = facts.first("remind")
    if cue is None:
        return _implied(facts)
    following = next((m for m in facts.found if m.at == cue.end and m.type == "ORDER"), None)
    if following is not None and following.value in ("dose", "history", "plan", "choose", "which"):
        return None  # 'remind me how much ...' asks
    rhythm, _ = facts.rhythm
    wish = _wish(facts, cue)
    return Order(
        "remind",
        target=wish.target,
        rhythm=rhythm,
        task=wish.task,
        text=wish.text,
        unused=wish.unused,
    )


def _implied(facts: Facts) -> Order | None:
    """Without a word for reminding: an imperative with a day to come, or a rhythm alone."""
    if facts.has(*_SOMETHING_ELSE) or facts.question:
        return None
    timed = facts.words.lexicon.rhythm_words
    if not any(r.text in timed for r in facts.raws) or facts.asks_dose:
        return None
    if facts.rest.conflicts or facts.rest.problems:
        return None
    rhythm, held = facts.rhythm
    if rhythm is None or facts.says_any("i_will"):  # 'I will feed tomorrow' asks for nothing
        return None
    denials = words_under(facts.words.lexicon.language, "denials")
    if any(raw.text in denials for raw in facts.raws):  # 'morgen dünge ich nicht'
        return None
    if not _left(facts, held):
        alone = rhythm.recurs and (
            rhythm.clock or rhythm.part or rhythm.nth or rhythm.month_days
            or (rhythm.weekdays and (rhythm.every or 0) > 1)
        )  # fmt: skip
        return Order("remind", rhythm=rhythm) if alone and not rhythm.doubt else None
    wish = _wish(facts, None)
    left = _left(facts, held)
    begins = any(m.at == left[0] for m in facts.tasks)
    ends = verb_last(facts.words.lexicon.language) and any(
        m.end - 1 == left[-1] for m in facts.tasks
    )
    imperative = begins or ends
    if not imperative or wish.extra or not _definite(rhythm):
        return None
    return Order("remind", target=wish.target, rhythm=rhythm, task=wish.task, text=wish.text)


@cache
def verb_last(language: str) -> bool:
    """Whether what is to be done may stand at the end: 'am Sonntag Ruby spülen'."""
    return bool(settings_of(language).get("verb_last"))


def _definite(rhythm: Rhythm) -> bool:
    """Whether it names a time to come, and is not only how often somebody feeds."""
    day = rhythm.day
    ahead = day is not None and (day.kind in ("weekday", "date") or day.value < 0)
    ahead = ahead and not (day is not None and day.kind == "of_month")
    nth = rhythm.nth and (rhythm.recurs or rhythm.nth != (-1,))
    often = rhythm.recurs and (rhythm.weekdays or len(rhythm.months) > 1)
    when = ahead or nth or often or rhythm.ahead or rhythm.month_days
    return bool(when or (rhythm.clock and rhythm.recurs)) and not rhythm.doubt


def _left(facts: Facts, held: frozenset[int]) -> list[int]:
    """The words that say something, beside those that are held."""
    tasks = {i for m in facts.tasks for i in range(m.at, m.end)}
    named = facts.named
    return [
        i
        for i, raw in enumerate(facts.raws)
        if i not in held
        and (i in tasks or i in named or facts.words.type_at(i) not in _CARRIES_NOTHING)
        and not (raw.kind == "sign" and raw.text in ('"', "&", "+", "-"))
    ]


def _wish(facts: Facts, cue: Mark | None) -> _Wish:
    """What it is about: behind the cue, or before it where nothing follows."""
    held = facts.rhythm[1] | _back(facts)
    cued = frozenset(range(cue.at, cue.end)) if cue is not None else frozenset()
    target = _target(facts, held)
    first_task = facts.tasks[0].at if facts.tasks else None
    plants = _plant_words(facts, before=first_task)
    said = _weighty(facts, held | cued)
    behind = [i for i in said if cue is None or i >= cue.end]
    main = behind or said
    before = [i for i in _left(facts, held | cued | plants) if i not in main]
    task = next((m for m in facts.tasks if m.at in main), None)
    if task is not None and any(i < task.at and i not in plants for i in main):
        task = None  # 'buy bark for the feeding table'
    of_task = set(range(task.at, task.end)) if task is not None else set()
    extra = [i for i in main if i not in of_task and i not in plants]
    if task is not None:
        kind = task.value
    elif extra:
        kind = "other"
    else:
        kind = "look" if main else ""
    if kind in ("other", "look"):
        target = replace(target, medium=None)
    if kind == "other":
        target = replace(target, not_names=(), not_genera=(), not_places=(), not_traits=())
        target = replace(target, not_media=())
    text = _own_words(facts, main, held | cued) if extra else ""
    return _Wish(kind, target, text, bool(extra), _as_written(facts, before))


def _back(facts: Facts) -> frozenset[int]:
    """'when I'm back': nothing to be reminded of."""
    said = phrases(facts.raws, facts.words.lexicon.rhythms)
    return frozenset(i for m in said if m.value == "back" for i in range(m.at, m.end))


def _weighty(facts: Facts, held: frozenset[int]) -> list[int]:
    """The words that say something of what is to be done; small words are left out."""
    lexicon = facts.words.lexicon
    light = {
        i
        for m in phrases(facts.raws, lexicon.rhythms)
        if m.value in ("light", "glue", "at_about")
        for i in range(m.at, m.end)
    }
    kept = _left(facts, held)
    return [
        i
        for i in range(len(facts.raws))
        if i not in held
        and facts.raws[i].kind != "sign"
        and (i in kept or (i not in light and facts.words.type_at(i) == "FILLER"))
    ]


def _plant_words(facts: Facts, before: int | None = None) -> frozenset[int]:
    """The words that say which plants; a 'not' that stands before what is to be done does not."""
    words = set(facts.named)
    for _, run in facts.place_runs:
        words |= run
    starts = {raw.start: i for i, raw in enumerate(facts.raws)}
    for token in facts.tokens:
        if token.type == "GENUS":
            words |= {starts[r.start] for r in token.raws if r.start in starts}
    for mark in facts.found:
        excepts = mark.value == "except" and (before is None or mark.at > before)
        told = not _TELLS_WHICH.isdisjoint(mark.value.split()) or excepts
        if mark.type == "TRAIT" or (mark.type == "ORDER" and told):
            words |= set(range(mark.at, mark.end))
    return frozenset(words)


def _target(facts: Facts, held: frozenset[int]) -> Target:
    """The plants that are meant, without what the rhythm says ('first' is no trait there)."""
    genus = facts.genus_places[0][1] if facts.genus_places else None
    times = {facts.raws[i].text for i in held}
    times |= {
        agreeing.trait(facts.words, m, genus)
        for m in facts.found
        if m.at in held and m.type in ("TRAIT", "PLACE")
    }  # 'primer' is 'primero'
    target = facts.target
    whole = {"everything", "both"}
    cues = [m for m in facts.found if m.type == "ORDER" and m.value in whole]
    placed = [run for _, run in facts.place_runs]
    if placed and all(run <= held for run in placed):  # 'back', in 'when I'm back'
        target = replace(target, place=None)
    of_time = bool(cues) and all(m.at in held for m in cues)  # 'alle 2 Wochen'
    return replace(
        target,
        traits=tuple(t for t in target.traits if t not in times),
        everything=target.everything and not of_time,
    )


def _own_words(facts: Facts, main: list[int], held: frozenset[int]) -> str:
    """The words as they were written, from the first that says something to the last."""
    runs: list[list[int]] = []
    last = main[-1]
    while facts.words.type_at(last + 1) == "PLANTS" and last + 1 not in held:
        last += 1
    for index in range(main[0], last + 1):
        if index in held:
            continue
        if runs and runs[-1][-1] == index - 1:
            runs[-1].append(index)
        else:
            runs.append([index])
    raws = facts.raws
    pieces = []
    for run in runs:
        mended = any(
            raws[i].kind == "word"
            and facts.folded.text[raws[i].start : raws[i].end] != raws[i].text
            for i in run
        )
        whole = facts.folded.written(raws[run[0]].start, raws[run[-1]].end)
        pieces.append(" ".join(raws[i].text for i in run) if mended else whole)
    return " ".join(" ".join(pieces).split())


# --- what becomes of one that is there ----------------------------------------------------------


def listing(facts: Facts) -> Order | None:
    """'my reminders'."""
    if not facts.has("reminders") or facts.asks_dose:
        return None
    return Order("reminders", unused=_unused(facts, frozenset()))


def wished(facts: Facts) -> Order | None:
    """'I want to feed every second Sunday': a rhythm of one's own, to be reminded of if wanted."""
    rhythm, _ = facts.rhythm
    if rhythm is None or not rhythm.recurs or rhythm.doubt or facts.asks_dose or facts.question:
        return None
    if not meant.begins_with(facts, "wishes") or facts.has("remind", *_SOMETHING_ELSE):
        return None
    tasks = [m.value for m in facts.tasks if m.value in ("feed", "water", "flush")]
    if not tasks or facts.rest.conflicts or facts.rest.problems:
        return None
    target = _target(facts, facts.rhythm[1])
    return Order("remind_wish", target=target, rhythm=rhythm, task=tasks[0])


def not_now(facts: Facts) -> Order | None:
    """'don't remind me now': later, and no end of it."""
    said = facts.has("reminder_now") and not facts.asks_dose and facts.rhythm[0] is None
    return Order("skip", text="now") if said else None


def stop(facts: Facts) -> Order | None:
    """'stop reminding me about the vandas', 'cancel reminder 2', 'stop all reminders'."""
    ends = facts.has("reminder_stop", "reminder_stop_all")
    named = facts.has(*_NAMED)
    off = facts.has("reminder_off", "stop", "no", "lose") and named
    task = facts.starts("stop") and bool(facts.tasks)
    ending = facts.starts("stop", "reminder_off")
    counted = ending and [r.kind for r in facts.raws] == ["word", "number"]
    apart = _stopped_apart(facts)
    if not (ends or off or task or counted or apart or _only_numbers(facts)) or facts.asks_dose:
        return None
    begins = facts.starts("reminder_off", "stop", "no", "lose") or bool(apart)
    if not ends and facts.has("remind") and not begins:
        return None  # 'remind me to remove the old spikes'
    if ends and not named and _says_on_which_day(facts):
        return _not_then(facts)
    everything = facts.has("reminder_stop_all") or (named and facts.has("everything"))
    held = apart | facts.rhythm[1] if apart else apart
    return _about(facts, "reminder_stop", everything=everything, held=held)


def _says_on_which_day(facts: Facts) -> bool:
    rhythm = facts.rhythm[0]
    said = rhythm is not None and (rhythm.day or rhythm.weekdays or rhythm.part)
    return bool(said)


def _not_then(facts: Facts) -> Order:
    """'don't remind me today' skips one; 'not on sundays' ends none: those that there are."""
    rhythm, held = facts.rhythm
    today = rhythm is not None and rhythm.day is not None and rhythm.day == When("day", 0)
    if today:
        return replace(_about(facts, "reminder_skip"), text="day")
    said = [facts.raws[i] for i in sorted(held)]
    return Order("reminders", unused=written(facts.folded, said))


def _stopped_apart(facts: Facts) -> frozenset[int]:
    """The words that stop in 'turn Ruby's reminder off', 'Erinnerung für Ruby abstellen'."""
    none: frozenset[int] = frozenset()
    language, raws = facts.words.lexicon.language, facts.raws
    nouns = words_under(language, "reminder_nouns")
    noun = next((i for i, raw in enumerate(raws) if raw.text in nouns), None)
    if noun is None or any(raw.after_break for raw in raws[1:]):
        return none
    pairs = (phrase.split("|") for phrase in settings_of(language).get("stop_parted", ()))
    for head, tail in pairs:
        at = next((i for i in range(noun) if raws[i].text == head), None)
        led = at is not None and all(facts.is_filler(i) for i in range(at))
        if at is not None and led and raws[-1].text == tail:
            return frozenset({at, len(raws) - 1})
    off = facts.first("reminder_off")
    last = off is not None and noun < off.at and off.end == len(raws)
    ends = last and verb_last(language) and facts.rhythm[0] is None
    return frozenset({len(raws) - 1}) if ends else none


def _only_numbers(facts: Facts) -> bool:
    """'delete 1 and 3', 'stop 1, 2': nothing but numbers beside a word that ends."""
    cue = facts.first("stop", "reminder_off", "cancel")
    if cue is None:
        return False
    counted = {i for i, _ in _ordinals(facts)}
    if any(m != cue and not counted.issuperset(range(m.at, m.end)) for m in facts.found):
        return False
    last = cue.end == len(facts.raws) and verb_last(facts.words.lexicon.language)
    if not (last or facts.starts("stop", "reminder_off", "cancel")):
        return False
    others = [i for i in range(len(facts.raws)) if not cue.at <= i < cue.end]
    numbers = [i for i in others if facts.raws[i].kind == "number" or i in counted]
    return bool(numbers) and all(i in numbers or facts.is_filler(i) for i in others)


def _ordinals(facts: Facts) -> list[tuple[int, int]]:
    """Reminders by their place in the list, and the words that say it: 'the second one'."""
    walk, found = Walk(facts.words), []
    for index in range(len(facts.raws)):
        ordinal = walk.ordinal(index)
        if ordinal is None or ordinal[0] < 1:
            continue
        end = ordinal[1]
        one = end < len(facts.raws) and whole(facts.words, end) == 1
        if one or end == len(facts.raws) or facts.words.cue_at(end) in _NAMED:
            found += [(i, ordinal[0]) for i in range(index, end + one)]
    return found


def _counted(facts: Facts) -> bool:
    """Whether a place in the list ends it: 'skip 2', 'skip the second one'."""
    if [r.kind for r in facts.raws] == ["word", "number"]:
        return True
    placed = [i for i, _ in _ordinals(facts)]
    return bool(placed) and max(placed) == len(facts.raws) - 1


def skip(facts: Facts) -> Order | None:
    """'not this week', 'skip it this time', 'skip the next flush'."""
    passes = facts.first("reminder_skip", *_STRETCHES)
    named = facts.starts("skip") and (facts.has(*_NAMED) or facts.tasks or _counted(facts))
    if not (passes or named) or facts.asks_dose or facts.has("plan", "make_it", "history"):
        return None
    timed = passes is not None and passes.value in _STRETCHES
    if passes is not None and timed and _tells_of_none(facts, passes):
        return None
    done = ("fed", "clear", "watered", "flush", "gave", "repot", "skip")
    if _says_past_day(facts) and not facts.has(*done):
        return None  # 'it was yesterday, not today'
    order = _about(facts, "reminder_skip")
    return replace(order, text=_STRETCHES.get(passes.value, "")) if passes else order


def skip_on(facts: Facts) -> Order | None:
    """'not this Wednesday', 'diesen Mittwoch nicht': one that would come that day is left out."""
    rhythm, held = facts.rhythm
    day = rhythm.day if rhythm is not None and not rhythm.recurs else None
    if rhythm is None or day is None or day.kind not in ("weekday", "day") or facts.asks_dose:
        return None
    if rhythm.clock or rhythm.doubt or facts.question or facts.tasks or facts.target.named:
        return None
    ahead = phrases(facts.raws, facts.words.lexicon.rhythms)
    # 'este miércoles' and 'el miércoles' may be one phrase
    said = [m for m in ahead if m.at in held]
    led = any(m.value == "next" or (m.value[:7] == "weekday" and m.size > 1) for m in said)
    if not (led or (day.kind == "day" and day.value < 0)):  # 'not tomorrow'
        return None
    denials = words_under(facts.words.lexicon.language, "denials")
    denied = {
        i
        for i, raw in enumerate(facts.raws)
        if raw.text in denials or facts.words.type_at(i) == "NOT"
    }
    if not denied or (0 in denied and facts.raws[1].after_break):
        return None
    if any(i not in held | denied and not facts.is_filler(i) for i in range(len(facts.raws))):
        return None
    return Order("reminder_skip", rhythm=rhythm, text="on")


def _says_past_day(facts: Facts) -> bool:
    """Whether a day that is over was said: 'fue ayer, no hoy' puts right what is in the log."""
    day = facts.when[0]
    return day is not None and day.kind == "day" and day.value > 0


def _tells_of_none(facts: Facts, passes: Mark) -> bool:
    """Whether what was not done follows in the same clause: 'Ruby heute nicht gedüngt'."""
    done = facts.first("fed", "watered", "flush", "repot", "gave")
    if done is None or done.at < passes.end:
        return False
    return not any(facts.raws[i].after_break for i in range(passes.end, done.at + 1))


def pause(facts: Facts) -> Order | None:
    """'pause reminders until january', 'no reminders for two weeks', 'I'm away until june'."""
    others = ("reminder_away", "reminder_stop", "reminder_stop_all")
    if not facts.has("reminder_pause", *others) or facts.asks_dose:
        return None
    cue = facts.first("reminder_pause")
    if cue is None:
        ends = facts.rhythm[0]
        if ends is None or not _ends(ends):
            return None
        away = "away" if facts.has("reminder_away") else ""
        return replace(_about(facts, "reminder_pause", rhythm=ends), text=away)
    rhythm, held = facts.rhythm
    if cue.size > 1 or rhythm is not None or facts.alone:
        behind = _Behind(facts, cue)
        return _about(facts, "reminder_pause", rhythm=behind.rhythm, held=held | behind.held)
    return _about(facts, "reminder_pause") if facts.tasks or facts.has(*_NAMED) else None


def _ends(rhythm: Rhythm) -> bool:
    """Whether it says how long."""
    return bool(rhythm.until or rhythm.span)


class _Behind:
    """The end of a pause: 'until january' where 'until' belongs to the cue, 'for two weeks'."""

    def __init__(self, facts: Facts, cue: Mark) -> None:
        rhythm, held = facts.rhythm
        self.rhythm, self.held = rhythm, held
        if rhythm is None:
            span, words = lone_span(facts.words)
            if span is not None:
                self.rhythm, self.held = Rhythm(span=span), words
            return
        ended = rhythm.until or rhythm.span or rhythm.ahead
        if ended is None and rhythm.day is not None:
            self.rhythm = replace(rhythm, until=rhythm.day, day=None)


def resume(facts: Facts) -> Order | None:
    """'resume reminders'."""
    if not facts.has("reminder_resume") or facts.asks_dose:
        return None
    return _about(facts, "reminder_resume")


def move(facts: Facts) -> Order | None:
    """'move it to monday', 'change the flush to every two weeks', 'postpone it by two days'."""
    changed = facts.has("make_it") and not facts.has("remind")
    later = facts.starts("later") and lone_span(facts.words)[0] is not None  # 'snooze 2 days'
    if not (facts.starts("move", "postpone") or changed or later):
        return None
    if facts.asks_dose or facts.place is not None or facts.question or facts.products:
        return None
    rhythm, held = facts.rhythm
    off = facts.has("postpone") or later
    if rhythm is None and off:
        span, held = lone_span(facts.words)
        rhythm = Rhythm(ahead=span) if span is not None else None
    elif rhythm is not None and off and rhythm == Rhythm(span=rhythm.span):
        rhythm = Rhythm(ahead=rhythm.span)  # 'snooze it for 2 days'
    if rhythm is None and not changed and (hour := lone_hour(facts.words)) is not None:
        rhythm, held = Rhythm(clock=hour[0], half_guessed=hour[1]), frozenset({hour[2]})
    ref = bool(facts.tasks) or facts.has(*_NAMED)
    if rhythm is None:
        named = facts.has("reminder", "remind") and facts.has("postpone", "move")
        return _about(facts, "reminder_move") if named else None
    past = rhythm.day is not None and rhythm.day.kind == "day" and rhythm.day.value > 0
    if past or _says_past_day(facts) or not (rhythm.says_when or rhythm.clock or rhythm.part):
        return None
    if facts.target.named and not ref:
        return None
    order = _about(facts, "reminder_move", rhythm=rhythm, held=held)
    if not changed:
        return order
    day = rhythm.day is not None and rhythm.day.kind != "of_month"
    plain = rhythm.clock is not None or (day and not rhythm.recurs)
    return order if plain and not order.unused and not facts.rest.regime else None


def quiet_hours(facts: Facts) -> Order | None:
    """'quiet after 9 pm', 'no pings before 8', 'quiet hours 22 to 7'."""
    cue = facts.first("reminder_quiet_after", "reminder_quiet_before", "reminder_quiet")
    bare = facts.first("quiet") if cue is None and facts.starts("quiet") else None
    cue = cue or bare
    if cue is None or facts.asks_dose:
        return None
    found, held = hours(facts.words, cue.end)
    if not found or len(found) > 2 or (bare is not None and _left(facts, held | _marked(facts))):
        return None
    first, last = found[0], found[-1]
    evening = _evening(*first)
    said: tuple[tuple[int, int] | None, tuple[int, int] | None]
    if len(found) == 2:
        said = (evening, last[:2])
    else:
        said = (None, first[:2]) if cue.value == "reminder_quiet_before" else (evening, None)
    return Order("reminder_quiet", hours=said, unused=_unused(facts, held))


def not_then(facts: Facts) -> Order | None:
    """'not on mondays': days on which nothing shall come; how to say it is told."""
    begins = facts.words.type_at(0) == "NOT" or facts.starts("except", "no")
    begins = begins and len(facts.raws) > 1 and not facts.raws[1].after_break  # 'no, monday'
    if not begins or facts.asks_dose or facts.question:
        return None
    rhythm, held = facts.rhythm
    if rhythm is None:
        return None
    days = rhythm.weekdays or rhythm.months or (rhythm.day and rhythm.day.kind == "weekday")
    denied = {i for i in range(len(facts.raws)) if facts.words.type_at(i) == "NOT"}
    if not days or facts.tasks or _left(facts, held | denied | _marked(facts)):
        return None
    return Order("reminder_not_then")


def _marked(facts: Facts) -> frozenset[int]:
    """The words that orders hold."""
    return frozenset(i for m in facts.found if m.type == "ORDER" for i in range(m.at, m.end))


def _evening(hour: int, minute: int, said: bool) -> tuple[int, int]:
    """The hour at which quiet begins: nobody means the morning by it."""
    return (hour if said or hour > 12 else hour % 12 + 12, minute)


def _about(
    facts: Facts,
    verb: str,
    *,
    rhythm: Rhythm | None = None,
    held: frozenset[int] = frozenset(),
    everything: bool = False,
) -> Order:
    """An order about reminders: which are meant, by number, task or plants."""
    held = held or facts.rhythm[1]
    target = _target(facts, held)
    numbers = [
        (i, int(r.text))
        for i, r in enumerate(facts.raws)
        if i not in held and r.kind == "number" and r.text.isdecimal() and _numbers(facts, i)
    ]
    placed = [] if numbers else [o for o in _ordinals(facts) if o[0] not in held]
    numbers += list({n: (i, n) for i, n in placed}.values())
    counted = frozenset(i for i, _ in (*numbers, *placed))
    return Order(
        verb,
        target=replace(target, medium=None, everything=everything or target.everything),
        rhythm=rhythm,
        task=facts.tasks[0].value if facts.tasks and facts.tasks[0].value != "look" else "",
        steps=tuple(n for _, n in numbers),
        unused=_unused(facts, held | counted),
    )


def _numbers(facts: Facts, index: int) -> bool:
    """Whether a number says which reminder: 'reminder 2', 'stop 2', 'reminders 1 and 3'."""
    if len(facts.raws[index].text) > 3:
        return False
    if _only_numbers(facts):
        return True
    while index > 0:
        index -= 1
        raw = facts.raws[index]
        cues = facts.words.cue_at(index).split()
        if any(cue in (*_NAMED, "step", "move", "postpone", *_ENDING) for cue in cues):
            return True
        if not (raw.kind == "number" or facts.is_and(index)):
            return False
    return False


def _unused(facts: Facts, held: frozenset[int]) -> str:
    """The words that say something and were not used."""
    cued = {i for m in facts.found if m.type in ("ORDER", "WHEN") for i in range(m.at, m.end)}
    tasks = {i for m in facts.tasks for i in range(m.at, m.end)}
    used = held | cued | tasks | _plant_words(facts)
    return _as_written(facts, _left(facts, frozenset(used)))


def _as_written(facts: Facts, places: list[int]) -> str:
    raws = (facts.raws[i] for i in places if facts.raws[i].kind != "sign")
    return " ".join(facts.folded.written(raw.start, raw.end) for raw in raws)
