"""Text to `Reading`: words and quantities, in any order and language.

It knows nothing of doses, chats or databases. The one entry is `read`.
"""

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
from grammar.reader import read
from grammar.reading import Conflict, LabelRate, Problem, ReadAs, Reading, Unknown, Water
from grammar.rhythms.reading import read_rhythm

__all__ = [
    "Conflict", "FeedSaid", "LabelRate", "LabelSaid", "MeterSaid", "MixSaid", "Names", "Order",
    "PlantSaid", "Problem", "ReadAs", "Reading", "Rhythm", "Target", "Unknown", "Water", "When",
    "read", "read_rhythm",
]  # fmt: skip
