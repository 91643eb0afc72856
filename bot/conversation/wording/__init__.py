"""Codes and figures to sentences: Fluent messages, numbers through Babel.

No figure is made here and no sentence anywhere else.
"""

from __future__ import annotations

import re
import unicodedata
from datetime import date, time
from fractions import Fraction
from functools import cache, lru_cache
from importlib import resources
from typing import Any, Literal

from babel.dates import format_date, format_time, get_month_names
from babel.lists import format_list
from babel.numbers import format_decimal, format_scientific
from fluent.runtime import FluentBundle, FluentResource

#: Fractions that read better than per cent.
_FRACTIONS = {
    0.125: "1/8", 0.2: "1/5", 0.25: "1/4", 0.5: "1/2", 0.75: "3/4",
}  # fmt: skip


METRIC = "metric"
#: Smaller numbers are written without groups: sent back, "1,200" could be read in two ways.
_GROUPED = 10_000
#: Larger numbers are written by their power of ten: no noughts help to read them.
_COUNTED = 1e15
#: Signs that turn the direction of what follows (Unicode UAX 9: embeddings, overrides, isolates).
_TURNING = frozenset("\u202a\u202b\u202c\u202d\u202e\u2066\u2067\u2068\u2069")
#: Choices that are codes.
_TAPPED = frozenset({"undo", "why", "more", "done", "yes", "no", "all"})
_CM_AN_INCH = 2.54
#: Measures that people pour by, the largest first [L]: NIST Handbook 44, appendix C; the imperial
#: gallon is 4.54609 L (Units of Measurement Regulations 1995).
_MEASURES = {
    "us": (("us_gallon", 3.785411784), ("us_quart", 0.946352946), ("us_fluid_ounce", 0.02957353)),
    "imperial": (
        ("imperial_gallon", 4.54609), ("imperial_pint", 0.56826125),
        ("imperial_fluid_ounce", 0.0284130625),
    ),
}  # fmt: skip
#: Sources that are no citation.
_NO_CITATION = {
    "common practice, no source": "source-practice",
    "ours": "source-ours",
    "rule of this project": "source-ours",
    "your shelf": "source-shelf",
    "your message": "source-told",
    "direction common practice, factor ours": "source-direction",
    "mass balance on the label": "source-label",
}


@cache
def languages() -> tuple[str, ...]:
    """Codes of the languages that have a Fluent file here."""
    names = (entry.name for entry in resources.files(__name__).iterdir())
    return tuple(sorted(n.removesuffix(".ftl") for n in names if n.endswith(".ftl")))


class Messages:
    """The messages of one language, each parsed when it is first said.

    To parse them all takes a quarter of a second and megabytes, and an answer needs a dozen.

    Attributes
    ----------
    texts : the Fluent source of each message
    """

    def __init__(self, language: str) -> None:
        source = resources.files(__name__).joinpath(f"{language}.ftl").read_text(encoding="utf-8")
        parts = (part for part in _MESSAGE.split(source) if part[:1].isalpha())
        self.texts = {part.partition(" =")[0]: part for part in parts}
        self._bundle = FluentBundle([language], use_isolating=False)
        self._parsed: set[str] = set()
        #: Sentences without a value, which are always the same.
        self.fixed: dict[str, str] = {}

    def with_parsed(self, code: str) -> FluentBundle:
        """The bundle with this message in it.

        Raises
        ------
        KeyError
            Where the language has no such message.
        """
        if code not in self._parsed:
            self._bundle.add_resource(FluentResource(self.texts[code]))
            self._parsed.add(code)
        return self._bundle


#: A message begins at the start of a line with its name; all else belongs to the one before.
_MESSAGE = re.compile(r"^(?=[a-z][a-z0-9_A-Z-]* =)", re.MULTILINE)


@cache
def _messages(language: str) -> Messages:
    return Messages(language)


class Wording:
    """One language, ready to speak, in the measures of one person."""

    def __init__(self, language: str, units: str = METRIC) -> None:
        self.language = language
        self.units = units
        self._messages = _messages(language)

    def has(self, code: str) -> bool:
        """Whether there is a sentence for this code."""
        return code in self._messages.texts

    def tap(self, choice: str) -> str:
        """A choice to tap as it is said in this language: a code has its word, else it is one."""
        return self.say(f"tap-{choice}") if choice in _TAPPED else choice

    def say(self, code: str, **values: Any) -> str:
        """The sentence for a code.

        Raises
        ------
        KeyError
            Where the language has no such message, or a value is missing in it.
        """
        fixed = self._messages.fixed
        if not values and code in fixed:
            return fixed[code]
        bundle = self._messages.with_parsed(code)
        pattern = bundle.get_message(code).value
        if pattern is None:
            raise KeyError(code)
        values = {n: shown(v) if isinstance(v, str) else v for n, v in values.items()}
        text, errors = bundle.format_pattern(pattern, values)
        if errors:
            raise KeyError(f"{code}: {errors}")
        if not values:
            fixed[code] = str(text)
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

    def volume(self, litres: float, digits: int = 2) -> str:
        """A volume as a jug or a syringe shows it, in the person's own measures before ours."""
        if litres < 1:
            metric = self.say("volume-millilitres", millilitres=self.number(litres * 1000, 0))
        else:
            metric = self.say("volume-litres", litres=self.number(litres, digits))
        for unit, size_l in _MEASURES.get(self.units, ()):
            if litres >= size_l:
                amount = self.significant(litres / size_l)
                return self.say("volume-own", amount=amount, unit=unit, metric=metric)
        return metric

    def pot(self, cm: float) -> str:
        """A pot by its size, in inches before centimetres for who measures in them."""
        if self.units not in _MEASURES:
            return self.say("pot", cm=self.number(cm))
        inches = self.number(round(cm / _CM_AN_INCH * 4) / 4)
        return self.say("pot-inch", inches=inches, cm=self.number(cm))

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

    def share(self, value: float) -> str:
        """As `factor`, to be shown by itself."""
        return self.say("share-full") if value == 1 else self.factor(value)

    def cited(self, source: str) -> str:
        """Where a figure is from; a citation stays as it is written."""
        if source in _NO_CITATION:
            return self.say(_NO_CITATION[source])
        whole, _, status = source.rpartition("; ")
        if whole and status in _NO_CITATION:
            return f"{self.cited(whole)}; {self.say(_NO_CITATION[status])}"
        return self.say("source-cited", source=source)

    def eighths(self, value: float) -> str:
        """A number of spoons to the nearest eighth, as cooks write it: 1 1/8, 3/4."""
        whole, part = divmod(round(value * 8), 8)
        fraction = Fraction(part, 8)
        texts = [self.number(whole, 0)] if whole else []
        return " ".join([*texts, str(fraction)] if part else texts)

    def axis_day(self, day: date) -> str:
        """A day as short as it goes, for the axis of a chart: 3 Nov."""
        return str(format_date(day, format="d MMM", locale=self.language))

    def day(self, day: date, today: date) -> str:
        """A day as one says it: today, yesterday, 3 Nov, with the year where it is another."""
        near = {0: "day-today", 1: "day-yesterday", -1: "day-tomorrow"}.get((today - day).days)
        if near is not None:
            return self.say(near)
        pattern = "pattern-day" if abs((today - day).days) < 60 else "pattern-date"
        if day.year != today.year:
            pattern = "pattern-date-year"
        return self.date(day, pattern)

    def date(self, day: date, pattern: str) -> str:
        """A day in one of the language's patterns."""
        return str(format_date(day, format=self.say(pattern), locale=self.language))

    def clock(self, at: time) -> str:
        """A clock time."""
        return str(format_time(at, format="H:mm", locale=self.language))

    def months(self, width: Literal["narrow", "abbreviated", "wide"]) -> tuple[str, ...]:
        """The names of the twelve months, as they stand alone."""
        names = get_month_names(width, context="stand-alone", locale=self.language)
        return tuple(str(names[month]) for month in range(1, 13))

    def figures(self, texts: list[str]) -> str:
        """Figures in a row, parted by what is no decimal sign."""
        return ("; " if "," in self.number(0.5) else ", ").join(texts)

    def listed(self, items: list[str], *, either: bool = False) -> str:
        """'a, b and c', or 'a, b or c', in the language."""
        style: Literal["or", "standard"] = "or" if either else "standard"
        return str(format_list(items, style=style, locale=self.language))


def shown(text: str) -> str:
    """What somebody wrote, without what would steer a screen or turn the rest of a line round."""
    if text.isprintable():
        return text
    return "".join(c for c in text if c == "\n" or not _steers(c))


def _steers(character: str) -> bool:
    return unicodedata.category(character) in ("Cc", "Cs") or character in _TURNING


@lru_cache(maxsize=4096)
def _written(value: float, digits: int, language: str) -> str:
    if abs(value) >= _COUNTED:
        return str(format_scientific(value, format="0E0", locale=language))
    whole = "#,##0" if abs(value) >= _GROUPED else "0"
    pattern = whole + ("." + "#" * digits if digits else "")
    return str(format_decimal(value, format=pattern, locale=language))


@cache
def wording(language: str, units: str = METRIC) -> Wording:
    """The wording of a language, loaded once.

    Parameters
    ----------
    language : code
    units : 'metric', 'us' or 'imperial', for who reads it

    Raises
    ------
    FileNotFoundError
        For a language without a Fluent file.
    """
    return Wording(language, units)
