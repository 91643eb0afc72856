"""A message read in whatever language of ours it is written, to be answered in one of them."""

from __future__ import annotations

from dataclasses import replace

from bot.conversation.wording import tongues
from grammar import Names, Reading, read


def listen(
    text: str,
    *,
    usual: str | None,
    chosen: str | None = None,
    measure: str = "us",
    names: Names | None = None,
) -> Reading:
    """What a message says; its `language` is the one to answer in.

    Parameters
    ----------
    text : as typed
    usual : the language this person wrote in before, None where it is not known
    chosen : the language this person wants to be answered in, None for that of the message
    measure : 'us' or 'imperial', for measures without a country
    names : what is on record; None where nothing is kept
    """
    reading = read(
        text, usual=chosen or usual, among=tongues.spoken(), measure=measure, names=names
    )
    if chosen is None or chosen == reading.language:
        return reading
    return replace(reading, language=chosen, written_in=reading.language)
