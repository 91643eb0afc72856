"""`read`: text to `Reading`, through scan, context, parser, interpret and spelling."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import replace
from typing import NamedTuple

from grammar.lexicon import Lexicon, languages, load
from grammar.order import Names
from grammar.orders.find import find
from grammar.reading import Problem, ReadAs, Reading, Unknown
from grammar.request.interpret import interpret
from grammar.request.parser import parse
from grammar.request.settling import settle
from grammar.words.detect import heard, likeliest
from grammar.words.mixed import Mixed, Other, mixed
from grammar.words.scan import Folded, Raw, fold, raws_of, typed
from grammar.words.spelling import Guess, guess

#: The language of a message without words, from somebody we do not know yet.
_DEFAULT = "en"
#: Longer messages are not about one watering [characters].
LONGEST = 2000
#: Words for feeding, those among them that say 'I feed' too.
_FEEDING = ("feeding", "feeding_own")
#: Each slip costs one more parse; a message with more of them is another language.
_MOST_SLIPS = 8
#: What does not show and could turn figures round (direction marks) or join them (zero width
#: and control characters between two digits).
_HIDDEN = re.compile(
    r"[\u202a-\u202e\u2066-\u2069]|\d[\x00-\x08\x0e-\x1f\x7f-\x84\x86-\x9f\u200b-\u200f\u2060\ufeff]+\d"
)


def read(
    text: str,
    language: str | None = None,
    *,
    usual: str | None = None,
    among: Sequence[str] | None = None,
    measure: str = "us",
    names: Names | None = None,
) -> Reading:
    """What a message says about a feeding, and what is unclear in it.

    Parameters
    ----------
    text : one message, as typed
    language : code of the one lexicon to read it with, or None to find out
    usual : the language this person uses otherwise: it decides where the words do not
    among : the languages that come into question, None for all that have a lexicon
    measure : 'us' or 'imperial', for a gallon, quart, pint or fluid ounce without a country
    names : what is on record; None where nothing is kept, and no order is looked for

    Returns
    -------
    Reading
        Empty where nothing was said. Never raises for any text.

    Raises
    ------
    FileNotFoundError
        For a language without a lexicon.
    """
    code = language or usual or _DEFAULT
    if len(text) > LONGEST:
        problem = Problem("too_long", f"{len(text)}")
        return Reading(text=text[:80], language=code, problems=(problem,))
    if _HIDDEN.search(text):
        problem = Problem("hidden_characters", "")
        return Reading(text=text, language=code, problems=(problem,))
    folded = fold(text)
    if language is not None:
        return _read(folded, Tongue(load(language)), measure, names)
    readings = [
        _read(folded, tongue, measure, names)
        for tongue in _tongues(folded, usual, among or languages())
    ]
    return min(readings, key=lambda r: len(r.unknown) + len(r.read_as) + (r.order is None))


class Tongue(NamedTuple):
    """What a message is read with: its language, and others that may be mixed in."""

    lexicon: Lexicon
    others: tuple[Other, ...] = ()


def _tongues(folded: Folded, usual: str | None, codes: Sequence[str]) -> list[Tongue]:
    """The languages that a message may be in, the likelier first, each with the rest behind it."""
    spoken = _spoken(folded)
    found = heard(raws_of(spoken, load(usual or _DEFAULT)), spoken, codes)
    rest = sorted(codes, key=lambda code: -found[code])
    return [
        Tongue(load(code), tuple(Other(c, found[c], tuple(codes)) for c in rest if c != code))
        for code in likeliest(found, usual, _DEFAULT)
    ]


#: What stands in quotation marks is a name, in whatever language.
_QUOTED = re.compile(r'"[^"\n]+"|“[^”\n]+”|„[^”“\n]+[”“]|«[^»\n]+»')


def _spoken(folded: Folded) -> Folded:
    """A message without what is quoted in it; all of it, where nothing else is left."""
    if not any(mark in folded.original for mark in '"“„«'):
        return folded
    rest = _QUOTED.sub(" ", folded.original)
    return fold(rest) if any(c.isalpha() for c in rest) else folded


def _read(folded: Folded, tongue: Tongue, measure: str, names: Names | None) -> Reading:
    raws = raws_of(folded, tongue.lexicon)
    if names is None:
        return _figures(raws, folded, tongue, measure)
    known: dict[tuple[Raw, ...], Reading] = {}  # the same words are asked about more than once

    def understand(some: list[Raw]) -> Reading:
        key = tuple(some)
        if key not in known:
            known[key] = _figures(some, folded, tongue, measure)
        return known[key]

    return find(raws, folded, tongue.lexicon, names, understand)


def _figures(raws: list[Raw], folded: Folded, tongue: Tongue, measure: str) -> Reading:
    first = _meaning(raws, folded, tongue, measure)
    if not first.unknown:
        return first
    return _spelled(first, raws, folded, tongue, measure)


def _tokens(raws: list[Raw], folded: Folded, tongue: Tongue) -> Mixed:
    return mixed(typed(raws, folded, tongue.lexicon), folded, tongue.lexicon, tongue.others)


def _meaning(raws: list[Raw], folded: Folded, tongue: Tongue, measure: str) -> Reading:
    tokens, stray = _tokens(raws, folded, tongue)
    feeding = any(t.type == "FILLER" and t.value in _FEEDING for t in tokens)
    reading = interpret(parse(settle(tokens)), folded, tongue.lexicon.language, measure)
    if stray:  # a word of a language that is not spoken here: shown, as a slip would be
        shown = (ReadAs(folded.written(t.start, t.end), t.value) for t in stray)
        reading = replace(reading, read_as=(*shown, *reading.read_as))
    return replace(reading, mentions_feeding=True) if feeding else reading


def _spelled(
    first: Reading, raws: list[Raw], folded: Folded, tongue: Tongue, measure: str
) -> Reading:
    """The message read again with its slips mended, where that makes it clearer."""
    lexicon = tongue.lexicon
    unknown_words = {raw.start for token in _tokens(raws, folded, tongue).tokens
                     if token.type == "UNKNOWN" for raw in token.raws}  # fmt: skip
    guesses = {
        i: guess(raw, lexicon, counted=_counted(raws, i), denied=_denied(raws, i, lexicon))
        for i, raw in enumerate(raws)
        if raw.start in unknown_words
    }
    mended = list(raws)
    taken: list[ReadAs] = []
    reading = first
    slips = dict.fromkeys(raws[i].text for i, found in guesses.items() if found.word)
    for slip in list(slips)[:_MOST_SLIPS]:
        places = [i for i, found in guesses.items() if raws[i].text == slip and found.word]
        trial = list(mended)
        for i in places:
            trial[i] = trial[i]._replace(text=guesses[i].word or slip)
        candidate = _meaning(trial, folded, tongue, measure)
        if _clearer(candidate, reading):
            mended, reading = trial, candidate
            taken += [_taken(raws[i], guesses[i], folded, lexicon) for i in places[:1]
                      if not guesses[i].silent]  # fmt: skip
    unknown = (_with_suggestions(u, guesses, raws, folded, lexicon) for u in reading.unknown)
    return replace(
        reading,
        read_as=tuple(dict.fromkeys((*taken, *reading.read_as))),
        unknown=tuple(unknown),
    )


def _taken(raw: Raw, found: Guess, folded: Folded, lexicon: Lexicon) -> ReadAs:
    return ReadAs(folded.written(raw.start, raw.end), _shown(found, lexicon))


def _counted(raws: list[Raw], place: int) -> bool:
    """Whether a number or an article stands before this word."""
    before = raws[place - 1] if place else None
    return before is not None and (before.kind != "word" or before.text in ("a", "an"))


def _denied(raws: list[Raw], place: int, lexicon: Lexicon) -> bool:
    """Whether 'no' stands before this word."""
    before = lexicon.words.get(raws[place - 1].text) if place else None
    return before is not None and before.type == "NOT" and not raws[place].after_break


def _clearer(candidate: Reading, before: Reading) -> bool:
    return (
        not _retold(candidate, before)
        and len(candidate.unknown) <= len(before.unknown)
        and len(candidate.conflicts) <= len(before.conflicts)
        and _unknown_length(candidate) < _unknown_length(before)
    )


def _retold(candidate: Reading, before: Reading) -> bool:
    """Whether a slip would be a season beside the month that was told, or the other way."""
    season = before.month is not None and candidate.season != before.season
    return season or (before.season is not None and candidate.month != before.month)


def _unknown_length(reading: Reading) -> int:
    return sum(len(u.text) for u in reading.unknown)


def _shown(found: Guess, lexicon: Lexicon) -> str:
    word = found.word or ""
    entry = lexicon.words.get(word)
    known = entry is not None and entry.type in ("GENUS", "MEDIUM")
    return entry.value if entry is not None and known else lexicon.spelled.get(word, word)


def _with_suggestions(
    unknown: Unknown, guesses: dict[int, Guess], raws: list[Raw], folded: Folded, lexicon: Lexicon
) -> Unknown:
    if unknown.suggestions:
        return unknown
    listed = [
        rival
        for place, found in guesses.items()
        if folded.written(raws[place].start, raws[place].end) in unknown.text
        for rival in (found.rivals or ((found.word,) if found.word else ()))
        if rival in lexicon.words  # not a lone part of a phrase
    ]
    shown = dict.fromkeys(lexicon.spelled.get(word, word) for word in listed)
    return replace(unknown, suggestions=tuple(shown)[:4])
