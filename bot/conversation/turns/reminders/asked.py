"""What is answered to our questions on the way to a reminder."""

from __future__ import annotations

from collections.abc import Awaitable, Callable
from dataclasses import replace
from typing import TypeAlias

from bot.conversation import answer as out
from bot.conversation.turn import Turn
from bot.conversation.turns import home, meeting
from bot.conversation.turns.reminders.after import after_home
from bot.conversation.turns.reminders.rules import as_often
from bot.conversation.turns.reminders.setting import UTC, settled, zone_of
from bot.records import log, owners
from grammar import Order, Rhythm, read_rhythm

#: Readings that an answer to a question of ours can have by itself.
_ANSWERS = frozenset({
    "dose", "remind", "flush", "fed", "clear", "plan", "follow_up", "add", "reminders",
    "reminder_move", "pests", "food",
})  # fmt: skip

#: What waits until it is known where somebody lives: it changes a reminder that is not set yet.
_WAITS = frozenset({
    "reminder_move", "reminder_skip", "reminder_pause", "reminder_resume", "reminder_not_then",
})  # fmt: skip

#: What goes on once it is known where somebody lives.
Then: TypeAlias = Callable[[Turn, str | None], Awaitable[out.Answer | None]]


async def answered(turn: Turn) -> out.Answer | None:
    """What an answer to a question of ours leads to; None where it is none."""
    step, verb = str(turn.question["step"]), turn.order.verb
    if (verb, turn.order.text) == ("skip", "now"):  # 'don't remind me now'
        return turn.say("reminder", "reminder-dropped")
    if step == "home" and turn.question.get("late") and verb in ("no", "skip"):
        return turn.say("reminder", "reminder-dropped")  # other things were said since
    if step == "home":
        told = await home_told(turn, _go_on)
        return _home_first(turn) if told is None and verb in _WAITS else told
    if verb in ("no", "skip"):
        return turn.say("reminder", "reminder-dropped")
    if step == "when":
        return await _when_told(turn)
    if step == "what":
        return await _what_told(turn)
    return None


def _home_first(turn: Turn) -> out.Answer:
    """The question again: what was said is about the reminder that waits for its answer."""
    skip = turn.words.say("meet-skip")
    again = turn.ask("ask-remind-home-first", choices=(skip,))
    return again.model_copy(update={"details": {"waiting": dict(turn.question)}})


def _asked(turn: Turn) -> Order | None:
    """The message that led to the question, with what was answered since."""
    order = turn.read_again(str(turn.question["text"])).order
    if order is None or order.verb not in ("remind", "remind_wish"):
        return None
    order = replace(order, verb="remind")
    rhythm, about = turn.question.get("rhythm"), turn.question.get("about")
    if rhythm:
        told = read_rhythm(rhythm, turn.reading.tongue)[0]
        order = replace(order, rhythm=_over(order.rhythm, told or _hour(rhythm)))
    if about:
        wish = _about(turn, about)
        order = replace(order, task=wish.task, text=wish.text, target=wish.target)
    return order


def _hour(text: str) -> Rhythm | None:
    """A number alone: 'make it 9'."""
    return Rhythm(clock=(int(text), 0), half_guessed=True) if text.isdecimal() else None


def _over(before: Rhythm | None, told: Rhythm | None) -> Rhythm | None:
    """What was told last; an hour or a day alone leaves the rest of what was said."""
    if before is None or told is None:
        return told
    if not told.says_when and (told.clock or told.part):
        clock = told.clock, told.half_guessed, told.part
        return replace(before, clock=clock[0], half_guessed=clock[1], part=clock[2])
    clocked = told.clock or told.part
    kept = told if clocked else replace(told, clock=before.clock, part=before.part)
    return as_often(kept, before.every, before.unit) if before.every is not None else kept


def _about(turn: Turn, text: str) -> Order:
    """What somebody is to be reminded of, said by itself."""
    cue = turn.words.say("reminder-cue")
    return turn.read_again(f"{cue} {text}").order or Order("remind")


async def _when_told(turn: Turn) -> out.Answer | None:
    text = turn.incoming.text
    rhythm, whole = read_rhythm(text, turn.reading.tongue)
    if turn.order.verb == "remind" and turn.order.task:
        return None  # another reminder, all of it
    if rhythm is None or not whole or turn.order.verb not in _ANSWERS | {"home"}:
        return None
    turn = replace(turn, question={**turn.question, "rhythm": text})
    return await _go_on(turn, None)


async def _what_told(turn: Turn) -> out.Answer | None:
    text = turn.incoming.text
    figures = turn.reading.volume_l is not None or turn.reading.analysis is not None
    if figures or turn.order.verb not in _ANSWERS or (turn.order.rhythm and turn.order.task):
        return None
    turn = replace(turn, question={**turn.question, "about": text})
    return await _go_on(turn, None)


async def _go_on(turn: Turn, zone: str | None) -> out.Answer | None:
    order = _asked(turn)
    if order is None:
        return None
    kept = zone or await zone_of(turn)
    turn = replace(turn, reading=replace(turn.reading, order=order, unknown=(), read_as=()))
    told = await _earlier(turn, kept) if kept is not None else []
    answer = await settled(turn, order, kept)
    return answer.model_copy(update={"reply": "\n\n".join((*told, answer.reply))})


async def _earlier(turn: Turn, zone: str) -> list[str]:
    """Set the reminders that waited as well to know where somebody lives; what was said of each."""
    told = []
    for question in turn.question.get("earlier", ()):
        one = replace(turn, question=question)
        order = _asked(one)
        if order is not None:
            reading = replace(turn.reading, order=order)
            told.append((await settled(replace(one, reading=reading), order, zone)).reply)
    return told


async def home_told(turn: Turn, then: Then) -> out.Answer | None:
    """Where somebody lives, and then what they had asked for; UTC where they do not say."""
    meant = meeting.meant(turn, 0)
    if meant is None or await home.says_else(turn, meant):
        return None
    if meant.verb == "skip":
        return await then(turn, UTC)
    reading = replace(turn.reading, order=meant, unknown=(), read_as=())
    before = await _newest_batch(turn)
    told = await home.home(replace(turn, reading=reading, question={}))
    if told.kind != "home":
        waiting = {"waiting": dict(turn.question)}
        return told.model_copy(update={"details": waiting})
    async with turn.records.reading() as session:
        owner = await owners.find(session, turn.incoming.address)
    batch = await _newest_batch(turn)
    # Of one message all is taken back at once.
    turn = replace(turn, owner=owner, batch=batch if batch != before else None)
    told = await after_home(turn, told)
    if owner is None or owner.zone is None:  # only a hemisphere was said
        waiting = {"waiting": dict(turn.question)}
        return turn.ask("ask-remind-home").model_copy(update={"details": waiting})
    following = await then(turn, owner.zone)
    if following is None:
        return told
    return following.model_copy(update={"reply": f"{told.reply}\n\n{following.reply}"})


async def _newest_batch(turn: Turn) -> int | None:
    """The batch that was written last, None where nothing is on record."""
    async with turn.records.reading() as session:
        owner = await owners.find(session, turn.incoming.address)
        return None if owner is None else await log.newest_batch(session, owner.id)
