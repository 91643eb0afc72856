"""Which plants were named, and which of them rest."""

from __future__ import annotations

from collections.abc import Iterable

from bot.almanac.plants import Genus, genera
from bot.dosing.season import season_of

__all__ = ["Genus", "known_names", "named", "of_name", "rest_span", "resting", "types_of"]


def known_names() -> tuple[str, ...]:
    """Names of all kinds of plants in the almanac."""
    return tuple(genera())


def of_name(name: str | None) -> Genus | None:
    """The almanac's entry of a name, None where there is none."""
    return genera().get(name) if name else None


def named(names: Iterable[str]) -> tuple[Genus, ...]:
    """The almanac's entries for these names.

    Raises
    ------
    KeyError
        For a name that is not in the almanac.
    """
    return tuple(genera()[name] for name in names)


def resting(plants: Iterable[Genus], *, month: int, season: str, south: bool) -> tuple[Genus, ...]:
    """Those that get no feed now.

    Parameters
    ----------
    plants : as named
    month : the month meant [1 to 12]; counts where it lies in `season`
    season : the season meant; where the month does not lie in it, two of its
        three months must be months of rest
    south : southern hemisphere

    Returns
    -------
    tuple of Genus
    """
    if season_of(month, south=south) == season:
        return tuple(p for p in plants if p.rests_in(month, south=south))
    months = [m for m in range(1, 13) if season_of(m, south=south) == season]
    return tuple(p for p in plants if sum(p.rests_in(m, south=south) for m in months) >= 2)


def rest_span(plants: Iterable[Genus], *, month: int, south: bool) -> tuple[int, int] | None:
    """The first and last month of a rest that all of some plants have in common [1 to 12].

    None where they differ, or do not rest in that month.
    """
    spans = {_span(plant, month, south=south) for plant in plants}
    return spans.pop() if len(spans) == 1 else None


def _span(plant: Genus, month: int, *, south: bool) -> tuple[int, int] | None:
    months = [plant.rests_in((month - 1 + step) % 12 + 1, south=south) for step in range(12)]
    if not months[0] or all(months):
        return None
    after = months.index(False)
    before = months[::-1].index(False)
    return (month - 1 - before) % 12 + 1, (month - 2 + after) % 12 + 1


def types_of(plants: Iterable[Genus]) -> tuple[Genus, ...]:
    """The almanac's types of the genera that were named without one ('Dendrobium nobile')."""
    names = tuple(f"{p.name} " for p in plants)
    return tuple(g for g in genera().values() if names and g.name.startswith(names))
