"""The closed vocabularies of the records, in one place."""

from __future__ import annotations

from enum import StrEnum


class OwnerKind(StrEnum):
    """Who owns a collection."""

    PERSON = "person"
    GROUP = "group"


class Units(StrEnum):
    """The measures a person reads best."""

    METRIC = "metric"
    US = "us"
    IMPERIAL = "imperial"


class Hemisphere(StrEnum):
    """Which half of the globe, for the seasons."""

    NORTH = "north"
    SOUTH = "south"


class LabelUnit(StrEnum):
    """The unit of a label rate, per litre of water."""

    GRAM = "g"
    MILLILITRE = "ml"
    TEASPOON = "tsp"


class ReminderKind(StrEnum):
    """What somebody is reminded of."""

    FLUSH = "flush"
    FEED = "feed"
    WATER = "water"
    LOOK = "look"
    OTHER = "other"


class ReminderState(StrEnum):
    """Whether a reminder comes."""

    ACTIVE = "active"
    PAUSED = "paused"  # its owner cannot be reached
    ENDED = "ended"


class PingState(StrEnum):
    """What became of a ping."""

    OPEN = "open"  # promised, not sent yet
    SENT = "sent"
    DONE = "done"
    SKIPPED = "skipped"
    LATER = "later"
    FAILED = "failed"  # it can never be sent


class EventKind(StrEnum):
    """What an entry of the log says happened."""

    FED = "fed"
    CLEAR = "clear"
    FLUSH = "flush"
    READING = "reading"
    ADDED = "added"
    REPOT = "repot"
    GROWTH = "growth"
    MOVED = "moved"
    RENAMED = "renamed"
    WATER = "water"
    CORRECTED = "corrected"
    LOST = "lost"
    PRODUCT = "product"
    WATER_SOURCE = "water_source"
    SETTINGS = "settings"
    REMINDER = "reminder"


CARE = frozenset({EventKind.FED, EventKind.CLEAR, EventKind.FLUSH, EventKind.READING})
"""Kinds that say what was done or measured, without a change to what a plant is."""

LAST_DONE = {
    EventKind.FED: "last_fed_on",
    EventKind.CLEAR: "last_clear_on",
    EventKind.FLUSH: "last_flush_on",
    EventKind.REPOT: "last_repot_on",
}
"""Kinds that keep a 'last done' date on the plant, and the column that holds it."""
