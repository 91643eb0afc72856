"""The season of a month, by hemisphere (meteorological seasons)."""

from __future__ import annotations

_NORTHERN = ("winter", "spring", "summer", "autumn")


def season_of(month: int, *, south: bool) -> str:
    """The season a month [1 to 12] lies in."""
    return _NORTHERN[(month % 12 // 3 + (2 if south else 0)) % 4]
