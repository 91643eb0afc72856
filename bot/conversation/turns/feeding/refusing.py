"""What dosing cannot work out, said in a sentence."""

from __future__ import annotations

from bot.conversation import answer as out
from bot.conversation.turn import Turn
from bot.conversation.wording import Wording
from bot.dosing.impossible import Impossible


def impossible(turn: Turn, error: ValueError) -> out.Answer:
    """The refusal of what dosing raised, with what to send instead."""
    if not isinstance(error, Impossible):
        return turn.refuse("refuse-figures")
    return turn.refuse(f"refuse-{error.code}", **shown(error, turn.words))


def shown(error: Impossible, words: Wording) -> dict[str, str]:
    """The values of a refusal as a sentence shows them."""
    return {
        name: value if isinstance(value, str) else words.significant(value, 3)
        for name, value in error.values.items()
    }
