"""How names are compared."""

from __future__ import annotations

import unicodedata
from functools import cache
from zoneinfo import available_timezones


def fold(name: str) -> str:
    """Return a name as it is looked up: without case, width and doubled blanks.

    Parameters
    ----------
    name
        A name as it was written.

    Returns
    -------
    str
        The same for names that a person would call the same: ' Ruby ' and 'ruby'.
    """
    folded = unicodedata.normalize("NFKC", name).casefold()
    return " ".join(unicodedata.normalize("NFKC", folded).split())


@cache
def zones() -> frozenset[str]:
    """The names of the IANA database; anything else could name a file, or no zone at all."""
    return frozenset(available_timezones())


_JOINERS = "\u200c\u200d"
"""Invisible, but part of words in some scripts and of some emoji."""


def can_be_kept(text: str) -> bool:
    """Say whether a text can be on record; half characters and control characters cannot."""
    return all(character.isprintable() or character in _JOINERS for character in text)
