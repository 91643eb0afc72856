"""The languages we speak, and any language by its name in words that people use.

Names come from Babel, so a language that is added needs nothing here.
"""

from __future__ import annotations

from functools import cache

from babel import Locale

from bot.conversation.wording import languages
from grammar import languages as readable


def spoken() -> tuple[str, ...]:
    """Codes of the languages that we read and write."""
    return tuple(code for code in languages() if code in readable())


def named(code: str, language: str) -> str:
    """What a language is called in another."""
    name = Locale.parse(language).languages.get(code, code)
    return str(name)


def code_of(text: str, language: str) -> str | None:
    """The code of a language by its name there, in English or in itself, or by its code.

    Parameters
    ----------
    text : as typed
    language : in which the name may be written

    Returns
    -------
    str or None
        None where no language is called so.
    """
    wanted = text.strip().casefold()
    own = {named(code, code).casefold(): code for code in spoken()}
    for names in (own, _names(language), _names("en")):
        if wanted in names:
            return names[wanted]
    return wanted if wanted in _names("en").values() else None


@cache
def _names(language: str) -> dict[str, str]:
    listed = Locale.parse(language).languages
    return {str(name).casefold(): code for code, name in listed.items()}
