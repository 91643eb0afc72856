"""Text without case, accents and look-alike signs, and where each character came from."""

from __future__ import annotations

import unicodedata
from dataclasses import dataclass
from functools import lru_cache


@dataclass(frozen=True, slots=True)
class Folded:
    """Casefolded text without accents, and where each character came from."""

    text: str
    original: str
    origin: list[int] | None  # None: the same positions as in the original

    def written(self, start: int, end: int) -> str:
        """A stretch of the folded text as the person wrote it."""
        if self.origin is None:
            return self.original[start:end]
        return self.original[self.origin[start] : self.origin[end - 1] + 1]


_SAME = {"−": "-", "–": "-", "—": "-", "‐": "-", "‑": "-", "‒": "-", "⁄": "/", "∕": "/", "×": "x",
         "μ": "u", "µ": "u", "’": "'", "‘": "'", "´": "'", "`": "'", "″": '"', "”": '"', "“": '"',
         "º": "°", "˚": "°", "∞": " infinity ", "⁻": "-", "₋": "-", "ł": "l", "Ł": "l"}  # fmt: skip


def fold(text: str) -> Folded:
    """Casefold, strip accents, unify signs; control and direction marks vanish."""
    if text.isascii() and text.isprintable():
        return Folded(text.lower().replace("`", "'"), text, None)
    out: list[str] = []
    origin: list[int] = []
    for position, char in enumerate(text):
        pieces = _folded_char(char)
        raised = pieces.isdigit() and unicodedata.category(char) == "No"
        if raised and out and out[-1].isdigit():
            out.append("^")  # '2²' is not 22
            origin.append(position)
        for piece in pieces:
            out.append(piece)
            origin.append(position)
    return Folded("".join(out), text, origin)


def plain(text: str) -> str:
    """A text as `fold` leaves it, where nobody asks where it came from; no digits are raised."""
    return text.lower().replace("`", "'") if text.isascii() else "".join(map(_folded_char, text))


@lru_cache(maxsize=4096)
def _folded_char(char: str) -> str:
    if char in _SAME:
        return _SAME[char]
    if char == "^":  # '10^3' is not 103
        return char
    if char in "\n\r\u2028\u2029":
        return "\n"
    if char.isspace():
        return " "
    category = unicodedata.category(char)
    if char != "°" and (category[0] == "C" or category in ("So", "Sk", "Mn", "Me")):
        return " " if category == "So" else ""
    if category == "No":
        digits = unicodedata.normalize("NFKD", char).replace("\u2044", "/")
        return f" {digits}" if "/" in digits else digits
    apart = unicodedata.normalize("NFKD", char.casefold())
    return "".join(c for c in apart if not unicodedata.combining(c))
