"""The language somebody is answered in."""

from __future__ import annotations

from dataclasses import replace

from bot.conversation import answer as out
from bot.conversation.turn import Turn
from bot.conversation.turns import home
from bot.conversation.wording import tongues, wording
from bot.records import owners


async def tongue(turn: Turn) -> out.Answer:
    """Set the language of a person or a group, where we have it."""
    words, text = turn.words, turn.order.text
    known = words.listed([tongues.named(code, words.language) for code in tongues.spoken()])
    if not text:
        return turn.ask("ask-language", known=known)
    code = tongues.code_of(text, words.language)
    if code is None:
        return turn.refuse("refuse-language-unknown", text=text[:40], known=known)
    if code not in tongues.spoken():
        name = tongues.named(code, words.language)
        return turn.refuse("refuse-language-not-yet", language=name, known=known)
    async with turn.writing() as told:
        await owners.change_settings(told, language=code)
    turn = replace(turn, words=wording(code), reading=replace(turn.reading, language=code))
    return turn.say(
        "settings", "language-set", language=tongues.named(code, code), choices=("undo",)
    )


async def settings(turn: Turn) -> out.Answer:
    """What is on record of the person or group, the language among it."""
    answer = await home.settings(turn)
    language = turn.owner.language if turn.owner is not None else None
    if language is None:
        return answer
    line = turn.words.say("language-line", language=tongues.named(language, turn.words.language))
    return answer.model_copy(update={"reply": f"{line}\n{answer.reply}"})
