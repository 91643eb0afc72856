"""Messages that are answered: alone, and in a conversation that remembers."""

from __future__ import annotations

from collections.abc import Iterable
from datetime import date
from functools import cache
from typing import Any

from bot.conversation.ask import Setting, ask
from bot.conversation.wording import wording
from tests.conversation.talking import Grower
from tests.fuzzing.cases import Case, Target
from tests.fuzzing.laws import hold, of_answer
from tests.fuzzing.reading import TONGUES
from tests.fuzzing.room import COLLECTION, Room, state
from tests.fuzzing.speech import phrases, said

TODAY = date(2026, 6, 10)
#: Kinds of answers that promise to change nothing.
UNCHANGED = ("ask", "refused", "help", "why", "cautions", "history", "explain")
#: What cannot be undone, or is no single change: whole collections that come and go, home.
NOT_UNDONE = ("forget", "import", "undo", "ask", "refused")
_MOST_LINES = 4
#: The mode says: 0 to 4 the language that was chosen, and beyond that how it is asked.
_ALONE, _REMEMBERED, _GROUP, _LINES = range(4)


async def _hear(room: Room, lines: list[str], group: str | None) -> None:
    """Say some lines, and hold what is answered and what is kept to the laws."""
    async with room.thrown_away() as records:
        grower = Grower(records, "1", group=group)
        address = grower.incoming("").address
        before: Any = None
        after = await state(records, address)
        for line in lines:
            before = after
            answer = await grower.says(line)
            of_answer(answer)
            after = await state(records, address)
            if answer.kind in UNCHANGED:
                hold(f"{answer.kind} changes nothing", after == before, before, after)
        if after is not None and before != after and answer.kind not in NOT_UNDONE:
            await grower.says(wording(answer.language).tap("undo"))
            found = await state(records, address)
            hold("undo brings back what was", found == before, answer.kind, before, found)


@cache
def _room() -> Room:
    return Room("test", {1: COLLECTION}, 7)


def check(case: Case) -> None:
    """Answer a message, or some lines one after the other."""
    tongue, way = TONGUES[case.mode % 5], case.mode // 5 % 4
    if way == _ALONE:
        of_answer(ask(case.text, Setting(TODAY, language=tongue)))
        return
    lines = case.text.split("\n")[:_MOST_LINES] if way == _LINES else [case.text]
    room = _room()
    room.run(_hear(room, lines, "7" if way == _GROUP else None))


def seeds() -> Iterable[Case]:
    """Real messages, each asked in one way, and some that follow on each other."""
    for number, text in enumerate(said()):
        yield Case(5 * (number % 3), text)
    several = said()
    for number in range(0, len(several) - 3, 25):
        yield Case(5 * _LINES, "\n".join(several[number : number + 3]))
    for line in COLLECTION:
        yield Case(5 * _REMEMBERED, line)


TARGET = Target(check, seeds, phrases)
