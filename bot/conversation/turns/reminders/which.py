"""Which reminders are meant: by number, task or plants, or the last of all."""

from __future__ import annotations

from collections.abc import Awaitable, Callable, Sequence
from datetime import timedelta
from typing import Any, TypeAlias

from bot.conversation import answer as out
from bot.conversation.turn import Turn
from bot.conversation.turns.reminders.open import newest_open
from bot.conversation.turns.reminders.said import plants_of
from bot.conversation.turns.reminders.setting import line, listed
from bot.records.models import Reminder
from grammar import Target

#: What was set so lately is what 'stop' and 'move it' mean.
JUST = timedelta(minutes=30)

Act: TypeAlias = Callable[[Turn, list[Reminder]], Awaitable[out.Answer]]


async def on(turn: Turn, act: Act, *, several: bool) -> out.Answer:
    """Do something with the reminders that are meant; ask where it is not clear which.

    `several` where it can be done to more than one at once.
    """
    found = await listed(turn)
    if not found and turn.order.task == "feed":  # 'stop feeding Ruby': no reminder was meant
        stops = turn.order.verb == "reminder_stop"
        return turn.say("log", "feed-pause" if stops else "not-given")
    if not found:
        return turn.say("reminder", "reminders-none", whose=turn.whose)
    ids = turn.question.get("ids")
    if ids is not None:
        chosen = [r for r in found if r.id in ids]
        return await act(turn, chosen) if chosen else turn.say("reminder", "reminder-gone")
    order = turn.order
    if any(not 1 <= n <= len(found) for n in order.steps):
        return turn.ask("ask-reminder-number", count=len(found))
    if order.steps:
        return await act(turn, [found[n - 1] for n in dict.fromkeys(order.steps)])
    if order.target.everything and not order.target.named_one and not order.task:
        return await act(turn, found)
    fitting = [r for r in found if _fits(r, turn)]
    if not fitting:
        return which(turn, found, "ask-reminder-none-such")
    said = bool(order.task) or order.target.named_one
    if len(fitting) > 1 and not said:
        fitting = await _lately(turn, fitting) or fitting
    if len(fitting) > 1 and not (several and said):
        return which(turn, fitting, "ask-reminder-which")
    return await act(turn, fitting)


def _fits(row: Reminder, turn: Turn) -> bool:
    """Whether a reminder is one of those that were meant by their task or plants."""
    order = turn.order
    if order.task and str(row.kind) != order.task:
        return False
    target = order.target
    if not target.named_one:
        return True
    meant = {p.id for p in plants_of(_as_kept(target, turn), turn.collection)}
    own = set(row.target.get("genera", ())) & set(target.genera)
    place = target.place is not None and row.target.get("place") == target.place
    ids = {p.id for p in plants_of(row.target, turn.collection)}
    narrow = not row.target.get("everything")
    return bool(own or place or (narrow and meant & ids) or (meant and meant == ids))


def _as_kept(target: Target, turn: Turn) -> dict[str, Any]:
    names = {n.casefold() for n in target.names}
    ids = [p.id for p in turn.collection.plants if p.name and p.name.casefold() in names]
    return {"plants": ids, "genera": list(target.genera), "place": target.place}


async def _lately(turn: Turn, found: Sequence[Reminder]) -> list[Reminder]:
    """The one that was pinged last and not answered, or else the one that was just set."""
    opened = {p.reminder_id for p in await newest_open(turn)}
    pinged = [r for r in found if r.id in opened]
    if pinged:
        return pinged
    since = turn.incoming.said_at - JUST
    return [r for r in found if r.id == turn.recalled.get("reminder") and r.created >= since]


def which(turn: Turn, found: Sequence[Reminder], code: str) -> out.Answer:
    lines = [turn.words.say(code), *(f"{n}. {line(r, turn)}" for n, r in enumerate(found, 1))]
    numbers = tuple(str(n) for n in range(1, len(found) + 1))
    choices = (*numbers[:8], turn.words.say("reminder-all"))
    answer = turn.tell("ask", lines, choices=choices)
    waiting = {
        "kind": "reminder_which",
        "text": turn.question.get("text", turn.incoming.text),
        "shown": [r.id for r in found],
    }
    return answer.model_copy(update={"ask": answer.reply, "details": {"waiting": waiting}})
