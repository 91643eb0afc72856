"""Messages that are only read: in one language, or in whichever they are."""

from __future__ import annotations

from collections.abc import Iterable

from grammar import Names, read
from grammar.lexicon import languages
from tests.fuzzing.cases import Case, Target
from tests.fuzzing.laws import hold, of_reading
from tests.fuzzing.speech import phrases, said
from tests.grammar.told import slots

#: What is on record; None where nothing is kept.
RECORDS = (
    None,
    Names(),
    Names(plants=("Ruby", "Max", "half"), products=("blue tub",), places=("sill", "Küche")),
)
TONGUES = (None, *languages())


def check(case: Case) -> None:
    """Read a message twice, and with blanks around it."""
    tongue, names = TONGUES[case.mode % 5], RECORDS[case.mode // 5 % 3]
    measure = ("us", "imperial")[case.mode // 15 % 2]
    reading = read(case.text, tongue, measure=measure, names=names)
    of_reading(reading, case.text)
    again = read(case.text, tongue, measure=measure, names=names)
    hold("the same is read the same", again == reading, again, reading)
    if tongue is not None and names is None:
        spaced = read(f" {case.text}\n", tongue, measure=measure)
        hold("blanks around it say nothing", slots(spaced) == slots(reading), spaced, reading)


def seeds() -> Iterable[Case]:
    """Real messages: by themselves, and beside records."""
    for number, text in enumerate(said()):
        yield Case(0 if number % 3 == 0 else number % 30, text)


TARGET = Target(check, seeds, phrases)
