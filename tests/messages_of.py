"""Messages put together from the lexicons themselves, in every language, and what they mean.

`SINKSIDE_EXAMPLES=3000 pytest FILE` runs the laws that are held to them for long.
"""

from __future__ import annotations

import os
import string
from collections.abc import Iterator
from dataclasses import dataclass, replace
from datetime import date
from fractions import Fraction
from functools import cache

from hypothesis import HealthCheck, settings
from hypothesis import strategies as st

from bot.conversation.answer import Answer
from bot.conversation.ask import Setting, ask
from grammar.folding import plain
from grammar.lexicon import COMMON, load, sections

LANGUAGES = ("de", "en", "es", "pl")
TODAY = date(2026, 6, 10)
#: Litres. NIST Handbook 44, appendix C; Units of Measurement Regulations 1995 (UK).
LITRES = {
    "litre": 1.0, "cubic_decimetre": 1.0, "half_litre": 0.5, "quarter_litre": 0.25,
    "three_quarter_litre": 0.75, "decilitre": 0.1, "centilitre": 0.01, "millilitre": 0.001,
    "cubic_centimetre": 0.001, "us_gallon": 3.785411784, "us_quart": 0.946352946,
    "us_pint": 0.473176473, "us_fluid_ounce": 0.0295735295625, "imperial_gallon": 4.54609,
    "imperial_quart": 1.1365225, "imperial_pint": 0.56826125,
    "imperial_fluid_ounce": 0.0284130625,
}  # fmt: skip
#: Grams. NIST Handbook 44, appendix C.
GRAMS = {"gram": 1.0, "kilogram": 1000.0, "milligram": 0.001, "ounce": 28.349523125}
#: Words of a dose that any message may hold or not.
PLAIN = ("form", "medium", "season", "growth", "regime", "water", "genus")
#: The first word of a unit is its symbol, in every lexicon.
LITRE = {"de": "Liter", "en": "litres", "es": "litros", "pl": "litrów"}
COURTESY = {
    "de": ["bitte", "danke", "hallo", "guten morgen", "liebe grüße", "vielen dank", "moin"],
    "en": ["please", "thanks", "hello", "good morning", "cheers", "many thanks", "hi there"],
    "es": ["por favor", "gracias", "hola", "buenos días", "un saludo", "muchas gracias", "buenas"],
    "pl": ["proszę", "dzięki", "cześć", "dzień dobry", "pozdrawiam", "dziękuję", "witam"],
}


def law(examples: int) -> settings:
    """How many examples a law is tried with: so many, or as many as are asked for by hand."""
    most = int(os.environ.get("SINKSIDE_EXAMPLES", 0)) or examples
    checks = [HealthCheck.too_slow, HealthCheck.function_scoped_fixture]
    return settings(max_examples=most, deadline=None, suppress_health_check=checks)


_sections = cache(sections)


@cache
def phrases(code: str, section: str) -> dict[str, list[str]]:
    """The phrases of a section by what they mean, those of all languages among them."""
    own, common = _sections(code).get(section, {}), _sections(COMMON).get(section, {})
    return {value: [*own.get(value, []), *common.get(value, [])] for value in {**common, **own}}


@cache
def said_for(code: str, section: str) -> st.SearchStrategy[tuple[str, str]]:
    """A meaning of a section, and a phrase for it."""
    table = phrases(code, section)
    return st.sampled_from([(value, phrase) for value in sorted(table) for phrase in table[value]])


def written(number: float, code: str) -> str:
    """A number as it is written in a language."""
    text = f"{number:.10g}"
    return text if code == "en" else text.replace(".", ",")


@dataclass(frozen=True)
class Request:
    """A request for a dose in parts.

    Attributes
    ----------
    code : its language
    volume_l : of water [L]
    analysis : N-P2O5-K2O
    label : the label's rate [g/L], None where none is said
    strength : the fraction of full strength that is meant, and how it is said
    words : further words by their section, each with its meaning
    """

    code: str
    volume_l: float
    analysis: str
    label: float | None = None
    strength: tuple[float, str] | None = None
    words: tuple[tuple[str, str, str], ...] = ()

    def parts(self) -> list[str]:
        """What is said, a part at a time."""
        said = [f"{written(self.volume_l, self.code)} {LITRE[self.code]}", self.analysis]
        if self.label is not None:
            said.append(labelled(self.label, self.code))
        if self.strength is not None:
            said.append(self.strength[1])
        return [*said, *(phrase for _, _, phrase in self.words)]

    def text(self) -> str:
        """The message."""
        return ", ".join(self.parts())

    def meaning(self, section: str) -> str | None:
        """What was said of something, None where nothing was."""
        return next((value for name, value, _ in self.words if name == section), None)

    def without(self, section: str) -> Request:
        """The same with nothing said of something."""
        return replace(self, words=tuple(word for word in self.words if word[0] != section))

    def with_word(self, section: str, value: str, phrase: str) -> Request:
        """The same with this said of something."""
        kept = self.without(section)
        return replace(kept, words=(*kept.words, (section, value, phrase)))


def labelled(per_litre: float, code: str) -> str:
    """A label's rate in its plainest form [g/L]."""
    label = phrases(code, "label")["label"][0]
    return f"{label} {written(per_litre, code)} g/l"


@cache
def strengths(code: str) -> st.SearchStrategy[tuple[float, str]]:
    """A strength as a fraction in words, a level, a per cent or a multiple."""
    in_words = st.one_of(said_for(code, "fraction"), said_for(code, "level"))
    per_cent = st.integers(2, 300).map(lambda n: (n / 100, f"{n} %"))
    fractions = st.sampled_from(["1/2", "1/4", "1/8", "3/4", "1/3", "2/3", "1/10"])
    strength = phrases(code, "strength")["strength"][0]
    written_out = fractions.map(lambda f: (float(Fraction(f)), f"{f} {strength}"))
    return st.one_of(
        in_words.map(lambda said: (float(Fraction(said[0])), said[1])), per_cent, written_out
    )


@st.composite
def requests(draw: st.DrawFn, code: str, *, most_words: int = 3) -> Request:
    """Any request, its words from the lexicon of a language."""
    chosen = draw(st.lists(st.sampled_from(PLAIN), max_size=most_words, unique=True))
    words = tuple((section, *draw(said_for(code, section))) for section in chosen)
    return Request(
        code,
        volume_l=draw(st.integers(1, 400)) / 10,
        analysis=draw(st.sampled_from(["20-20-20", "13-3-15", "7-7-7", "10-30-20", "30-10-10"])),
        label=draw(st.none() | st.integers(1, 30).map(lambda tenths: tenths / 10)),
        strength=draw(st.none() | strengths(code)),
        words=words,
    )


@cache
def everywhere() -> st.SearchStrategy[Request]:
    """Any request in any language."""
    return st.sampled_from(LANGUAGES).flatmap(requests)


@cache
def volumes(code: str) -> st.SearchStrategy[tuple[str, float]]:
    """An amount of water in any unit of a language, and what it is in litres."""
    table = phrases(code, "volume_unit")
    units = [(LITRES[unit], phrase) for unit in LITRES for phrase in table.get(unit, [])]
    counts = st.integers(1, 40).map(float) | st.sampled_from([0.5, 1.5, 2.5, 7.25])
    return st.tuples(st.sampled_from(units), counts).map(
        lambda pair: (f"{written(pair[1], code)} {pair[0][1]}", pair[1] * pair[0][0])
    )


@cache
def _known(code: str) -> frozenset[str]:
    """Words that mean something, or nothing, in a language."""
    lexicon = load(code)
    return frozenset(lexicon.words) | frozenset(lexicon.parts) | lexicon.plain


@st.composite
def slips(draw: st.DrawFn, text: str, code: str) -> tuple[str, str, str] | None:
    """A text with one letter of one word wrong: the text, the word and what became of it.

    None where no word is long enough, or where what comes out is a word as well.
    """
    words = [word for word in text.split() if len(word) > 4 and word.isalpha()]
    if not words:
        return None
    word = draw(st.sampled_from(words))
    place = draw(st.integers(0, len(word) - 1))
    letter = draw(st.sampled_from(string.ascii_lowercase))
    slip = draw(
        st.sampled_from([
            word[:place] + word[place + 1 :],
            word[:place] + letter + word[place:],
            word[:place] + letter + word[place + 1 :],
            word[:place] + word[place : place + 2][::-1] + word[place + 2 :],
        ])
    )  # fmt: skip
    if plain(slip) == plain(word) or plain(slip) in _known(code):
        return None
    return text.replace(word, slip, 1), word, slip


def answered(text: str, code: str, today: date = TODAY) -> Answer:
    """The answer to a message whose language is known."""
    return ask(text, Setting(today, language=code))


def is_open(answer: Answer) -> bool:
    """Whether something is asked, refused, or shown as it was taken."""
    return answer.kind in ("ask", "refused", "help") or bool(answer.read_as or answer.unknown)


def gist(answer: Answer) -> tuple[object, ...]:
    """What an answer comes to: its kind, and how much of what."""
    dose = answer.dose
    return (answer.kind, None if dose is None else (f"{dose.amount:.9g}", dose.unit))


def lines_of_records(code: str) -> Iterator[str]:
    """Orders built from the lexicon: what somebody grows, and what was done with it."""
    words = {section: phrases(code, section) for section in ("genus", "medium")}
    orders = phrases(code, "order")
    genera = [words["genus"][name][0] for name in ("Phalaenopsis", "Cattleya", "Vanda")]
    media = [words["medium"][name][0] for name in ("bark", "sphagnum", "mounted")]
    for verb in orders["add"][:4]:
        for count, genus, medium in zip((1, 3, 2), genera, media, strict=True):
            yield f"{verb} {count} {genus}, {medium}"
    for done in ("fed", "flush", "clear", "repot"):
        for verb in orders.get(done, [])[:3]:
            for genus in genera:
                yield f"{verb} {genus}"
