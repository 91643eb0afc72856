"""Cautions of answers that are no dose: behind 'more', as those of a dose."""

from __future__ import annotations

from bot.conversation import answer as out
from bot.conversation.turn import Turn

#: What there is to mind, by kind of answer, the most important first; see cautions.toml.
_BY_KIND = {
    "stock": (
        "children-and-pets", "never-mix-concentrates", "no-dust", "calcium-apart",
        "not-down-the-drain", "label-first",
    ),
    "blend": (
        "wet-roots-first", "calcium-apart", "no-dust", "clear-water-monthly",
        "children-and-pets", "label-first",
    ),
    "supplement": (
        "never-mix-concentrates", "calcium-apart", "wet-roots-first", "children-and-pets",
        "label-first",
    ),
    "reading": ("too-much-signs", "clear-water-monthly", "not-down-the-drain"),
    "salts": ("too-much-signs", "clear-water-monthly", "wet-roots-first", "ask-a-society"),
}  # fmt: skip


def with_cautions(turn: Turn, answer: out.Answer) -> out.Answer:
    """An answer with the cautions of its kind."""
    codes = _BY_KIND.get(answer.kind, ())
    cautions = [out.Caution(code=c, text=turn.words.say(f"caution-{c}")) for c in codes]
    return answer.model_copy(update={"cautions": cautions})
