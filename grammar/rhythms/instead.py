"""Another time than was just said: 'no, make it Sunday', 'better at 9', 'not the 1st, the 15th'."""

from __future__ import annotations

from dataclasses import dataclass

from grammar.lexicon import load, phrases_under, words_under
from grammar.order import Rhythm
from grammar.rhythms.clock import bare_hour
from grammar.rhythms.reading import said
from grammar.words.marks import Words
from grammar.words.scan import Folded, Raw, fold, raws_of


@dataclass(frozen=True, slots=True)
class Instead:
    """The time that is meant now, as it was written and as it was read."""

    text: str
    rhythm: Rhythm


def read_instead(text: str, language: str) -> Instead | None:
    """A time that takes the place of the one before; None where anything else is said.

    Parameters
    ----------
    text : as typed
    language : code of a lexicon
    """
    folded = fold(text)
    raws = raws_of(folded, load(language))
    cut = _behind(raws, phrases_under(language, "instead"))
    if cut is None:
        denied = len(raws) > 1 and raws[0].text in words_under(language, "instead_leads")
        if not denied or not raws[1].after_break:
            return None
        cut = (1, 1)
    if not _only_the_old(folded, raws[: cut[0]], language):
        return None
    return _time(folded, raws[cut[1] :], language)


def after_yes(text: str, language: str) -> str:
    """What follows a 'yes' at the head of a message; empty where none stands there.

    Parameters
    ----------
    text : as typed
    language : code of a lexicon
    """
    folded = fold(text)
    raws = raws_of(folded, load(language))
    if len(raws) < 2 or raws[0].text not in words_under(language, "yes_first"):
        return ""
    return folded.written(raws[1].start, raws[-1].end)


def _behind(raws: list[Raw], wanted: tuple[tuple[str, ...], ...]) -> tuple[int, int] | None:
    """Where the last of these phrases begins and ends."""
    found = [
        (i, i + len(p))
        for i in range(len(raws))
        for p in wanted
        if tuple(r.text for r in raws[i : i + len(p)]) == p
    ]
    return max(found, key=lambda span: (span[1], span[1] - span[0])) if found else None


def _only_the_old(folded: Folded, raws: list[Raw], language: str) -> bool:
    """Whether words say no more than 'no' and the time that was: 'no, not the 1st'."""
    leads = words_under(language, "instead_leads")
    _, held = said(Words(folded, raws, load(language), []))
    return all(i in held or raw.text in leads or raw.kind == "sign" for i, raw in enumerate(raws))


def _time(folded: Folded, raws: list[Raw], language: str) -> Instead | None:
    words = Words(folded, raws, load(language), [])
    if not raws:
        return None
    rhythm, held = said(words)
    hour = bare_hour(words) if rhythm is None else None
    if hour is not None:  # 'make it 9'
        rhythm, held = Rhythm(clock=hour[0], half_guessed=hour[1]), frozenset({0})
    carried = {"FILLER", "ARTICLE", "TO", "OF", "FOR", "IN", "ASIDE"}
    left = (i for i in range(len(raws)) if i not in held and raws[i].kind != "sign")
    if rhythm is None or rhythm.doubt or any(words.type_at(i) not in carried for i in left):
        return None
    return Instead(folded.written(raws[0].start, raws[-1].end), rhythm)
