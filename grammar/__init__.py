"""Text to `Reading`: words and quantities, in any order and language.

It knows nothing of doses, chats or databases. The one entry is `read`.
"""

from grammar.lexicon import languages
from grammar.order import (
    FeedSaid,
    LabelSaid,
    MeterSaid,
    MixSaid,
    Names,
    Order,
    PlantSaid,
    Rhythm,
    Target,
    When,
)
from grammar.orders.agreeing import cases
from grammar.orders.measured import MOST_MS_CM
from grammar.reader import read
from grammar.reading import (
    Conflict,
    ElementTarget,
    LabelRate,
    Problem,
    ReadAs,
    Reading,
    Unknown,
    Water,
)
from grammar.rhythms.instead import Instead, after_yes, read_instead
from grammar.rhythms.reading import read_rhythm
from grammar.words.units import to_canonical

__all__ = [
    "MOST_MS_CM", "Conflict", "ElementTarget", "FeedSaid", "Instead", "LabelRate", "LabelSaid",
    "MeterSaid",
    "MixSaid", "Names", "Order", "PlantSaid", "Problem", "ReadAs", "Reading", "Rhythm", "Target",
    "Unknown", "Water", "When", "after_yes", "cases", "languages", "read", "read_instead",
    "read_rhythm", "to_canonical",
]  # fmt: skip
