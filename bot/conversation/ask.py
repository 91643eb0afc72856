"""One request, one answer, with nothing remembered."""

from __future__ import annotations

from bot.conversation import answer as out
from bot.conversation.answering import (
    FAULT,
    NEEDS_RECORDS,
    TOPICS,
    Setting,
    answer_to,
    respond,
)
from bot.conversation.listening import listen
from bot.conversation.wording import wording
from grammar import Names, Reading

__all__ = ["FAULT", "Setting", "apology", "ask", "warm_up"]


def ask(text: str, setting: Setting) -> out.Answer:
    """Answer one message, with nothing remembered.

    Parameters
    ----------
    text : as typed
    setting : the day and the place it is asked

    Returns
    -------
    Answer
        Never raises for any text.
    """
    reading = listen(text, usual=None, chosen=setting.language, measure=setting.measure)
    answer = respond(reading, setting)
    settled = answer.kind in ("dose", "no_feed") and not reading.unknown
    if settled or reading.problems:
        return answer
    wanted = listen(
        text,
        usual=reading.tongue,
        chosen=setting.language,
        measure=setting.measure,
        names=Names(),
    )
    order = wanted.order
    if order is None or order.verb not in (*TOPICS, *NEEDS_RECORDS):
        return answer
    if order.verb == "help" and not order.text:
        return answer  # which says how to ask, with nothing remembered
    from bot.conversation.unremembered import told  # loads the records, which few messages need

    return told(wanted, setting)


def apology(text: str, setting: Setting) -> out.Answer:
    """The answer to a message on which a fault of ours left none."""
    reading = Reading(text=text, language=setting.language or "en")
    return answer_to(reading, FAULT, wording(reading.language).say("apology"))


def warm_up(setting: Setting) -> None:
    """Load what the first answer would wait for: vocabulary, wording, units."""
    ask("1 gallon 20-20-20 powder, phal", setting)
