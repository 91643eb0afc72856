"""Text to `Reading`: words and quantities, in any order and language.

It knows nothing of doses, chats or databases. The one entry is `read`.
"""

from grammar.order import LabelSaid, MeterSaid, MixSaid, Names, Order, PlantSaid, Target, When
from grammar.reader import read
from grammar.reading import Conflict, LabelRate, Problem, ReadAs, Reading, Unknown, Water

__all__ = [
    "Conflict", "LabelRate", "LabelSaid", "MeterSaid", "MixSaid", "Names", "Order", "PlantSaid",
    "Problem", "ReadAs", "Reading", "Target", "Unknown", "Water", "When", "read",
]  # fmt: skip
