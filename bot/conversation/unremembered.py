"""What is answered beside a dose with nothing on record: readings, waters, bottles, signs."""

from __future__ import annotations

from collections.abc import Awaitable, Callable, Coroutine
from datetime import UTC, datetime, time
from typing import Any, cast

from bot.conversation import answer as out
from bot.conversation.answering import NEEDS_RECORDS, Setting
from bot.conversation.turn import Incoming, Turn
from bot.conversation.turns import guide, harm
from bot.conversation.turns.feeding import bottles, figuring, judging, meter, reaching, waters
from bot.conversation.turns.rescue import asking as rescue
from bot.conversation.wording import wording
from bot.records import Records
from grammar import Reading

_HANDLERS: dict[str, Callable[[Turn], Awaitable[out.Answer]]] = {
    "meter": meter.meter,
    "water_suits": waters.suits,
    "water_mix": waters.mix,
    "stock": bottles.stock,
    "together": bottles.together,
    "rescue": rescue.rescue,
    "judge": judging.judge,
    "reach": reaching.reach,
    "convert": figuring.convert,
    "pour": figuring.pour,
    "brings": figuring.brings,
    "most_ec": figuring.most_ec,
    "nitrogen_limit": figuring.nitrogen_limit,
    "remedy": judging.remedy,
    "pets": harm.urgent,
    "food": harm.food,
    "leftover": harm.leftover,
    "alarm": harm.alarm,
    "pests": judging.pests,
    "hurt": harm.urgent,
    "spill": harm.urgent,
    "explain": guide.explain,
    "help": guide.helping,
}


def told(reading: Reading, setting: Setting) -> out.Answer:
    """The answer to one of the topics of `ask`, or that a chat would remember what it takes."""
    turn = _turn(reading, setting)
    handler = _HANDLERS.get(turn.order.verb)
    refusal = waters.refused(turn) if turn.order.verb == "water" else None
    if refusal is not None:  # what cannot be is said, remembered or not
        return refusal.model_copy(update={"choices": [], "details": None})
    if turn.order.verb in NEEDS_RECORDS or handler is None:
        return turn.say("help", "needs-chat")
    answer = _at_once(handler(turn))
    if answer is None:
        return turn.say("help", "needs-chat")
    # what it would wait for, and all that could be tapped, would be forgotten
    update: dict[str, Any] = {"choices": [], "details": answer.details}
    if answer.details and "waiting" in answer.details:
        update["details"] = None
        if turn.order.verb == "rescue":
            update["reply"] = f"{answer.reply}\n{turn.words.say('needs-one-line')}"
    return answer.model_copy(update=update)


def _turn(reading: Reading, setting: Setting) -> Turn:
    said_at = datetime.combine(setting.today, time(12), tzinfo=UTC)
    incoming = Incoming(
        reading.text, person="", channel="", said_at=said_at, today=setting.today,
        south=setting.south,
    )  # fmt: skip
    # nothing is read or written where there is no owner: there are no records behind it
    records = cast(Records, None)
    return Turn(records, incoming, None, reading, wording(reading.language))


def _at_once(answering: Awaitable[out.Answer]) -> out.Answer | None:
    """The answer of a handler that waits for nothing, None where it would."""
    steps = cast("Coroutine[Any, Any, out.Answer]", answering)
    try:
        steps.send(None)
    except StopIteration as done:
        return cast(out.Answer, done.value)
    steps.close()
    return None
