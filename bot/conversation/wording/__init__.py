"""Codes and figures to sentences: Fluent messages, numbers through Babel.

No figure is made here and no sentence anywhere else.
"""

from __future__ import annotations

from datetime import date
from fractions import Fraction
from functools import cache, lru_cache
from importlib import resources
from typing import Any, Literal

from babel.dates import format_date
from babel.lists import format_list
from babel.numbers import format_decimal
from fluent.runtime import FluentBundle, FluentResource

#: Fractions that read better than per cent.
_FRACTIONS = {
    0.125: "1/8", 0.2: "1/5", 0.25: "1/4", 0.5: "1/2", 0.75: "3/4",
}  # fmt: skip


@cache
def languages() -> tuple[str, ...]:
    """Codes of the languages that have a Fluent file here."""
    names = (entry.name for entry in resources.files(__name__).iterdir())
    return tuple(sorted(n.removesuffix(".ftl") for n in names if n.endswith(".ftl")))


class Wording:
    """One language, ready to speak."""

    def __init__(self, language: str) -> None:
        text = resources.files(__name__).joinpath(f"{language}.ftl").read_text(encoding="utf-8")
        self.language = language
        self._bundle = FluentBundle([language], use_isolating=False)
        self._bundle.add_resource(FluentResource(text))

    def has(self, code: str) -> bool:
        """Whether there is a sentence for this code."""
        return bool(self._bundle.has_message(code))

    def say(self, code: str, **values: Any) -> str:
        """The sentence for a code.

        Raises
        ------
        KeyError
            Where the language has no such message, or a value is missing in it.
        """
        pattern = self._bundle.get_message(code).value
        if pattern is None:
            raise KeyError(code)
        text, errors = self._bundle.format_pattern(pattern, values)
        if errors:
            raise KeyError(f"{code}: {errors}")
        return str(text)

    def number(self, value: float, digits: int = 2) -> str:
        """A figure with at most so many decimals, in the language's writing."""
        return _written(value, digits, self.language)

    def significant(self, value: float, digits: int = 2) -> str:
        """A figure to so many significant digits; whole numbers stay whole."""
        if value == 0 or value >= 10 ** (digits - 1):
            return self.number(value, 0 if value >= 10 else 1)
        decimals = digits - 1
        while value < 10 ** (digits - 2 - decimals + 1) and decimals < 6:
            decimals += 1
        return self.number(value, decimals)

    def money(self, value: float) -> str:
        """A sum of money to the cent, without its currency."""
        return str(format_decimal(value, format="#,##0.00", locale=self.language))

    def factor(self, value: float) -> str:
        """A factor as a fraction where it is a plain one, 'full' for 1, otherwise in per cent."""
        for fraction, text in _FRACTIONS.items():
            if abs(value - fraction) < 1e-9:
                return text
        if value == 1:
            return "full"
        if value >= 1 and value == round(value, 2):
            return self.number(value)
        return f"{self.significant(value * 100)} %"

    def eighths(self, value: float) -> str:
        """A number of spoons to the nearest eighth, as cooks write it: 1 1/8, 3/4."""
        whole, part = divmod(round(value * 8), 8)
        fraction = Fraction(part, 8)
        texts = [self.number(whole, 0)] if whole else []
        return " ".join([*texts, str(fraction)] if part else texts)

    def day(self, day: date, today: date) -> str:
        """A day as one says it: today, yesterday, 3 Nov, with the year where it is another."""
        near = {0: "day-today", 1: "day-yesterday", -1: "day-tomorrow"}.get((today - day).days)
        if near is not None:
            return self.say(near)
        pattern = "E d MMM" if abs((today - day).days) < 60 else "d MMM"
        if day.year != today.year:
            pattern = "d MMM y"
        return str(format_date(day, format=pattern, locale=self.language))

    def listed(self, items: list[str], *, either: bool = False) -> str:
        """'a, b and c', or 'a, b or c', in the language."""
        style: Literal["or", "standard"] = "or" if either else "standard"
        return str(format_list(items, style=style, locale=self.language))


@lru_cache(maxsize=4096)
def _written(value: float, digits: int, language: str) -> str:
    pattern = "#,##0" + ("." + "#" * digits if digits else "")
    return str(format_decimal(value, format=pattern, locale=language))


@cache
def wording(language: str) -> Wording:
    """The wording of a language, loaded once.

    Raises
    ------
    FileNotFoundError
        For a language without a Fluent file.
    """
    return Wording(language)
