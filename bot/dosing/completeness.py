"""Which essential elements a label does not show.

Essential mineral elements of plants: N, P, K, Ca, Mg, S and Fe, Mn, Zn, Cu, B, Mo, Cl, Ni
(Fageria 2014, the 17 essential elements without C, H, O; the same list in Marschner's Mineral
Nutrition of Higher Plants, 3rd ed., 2012, from memory). Chlorine and nickel are left out here:
labels do not print them, water and traces in the salts bring enough (common practice, no source),
so that every label would lack them and none could be better.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

MACRO = ("N", "P", "K", "Ca", "Mg", "S")
MICRO = ("Fe", "Mn", "Zn", "Cu", "B", "Mo")


@dataclass(frozen=True, slots=True)
class Lacking:
    """Elements a label does not show.

    Parameters
    ----------
    macro, micro : symbols
    unknown_micro : whether trace elements were named without figures, so that `micro` is open
    """

    macro: tuple[str, ...]
    micro: tuple[str, ...]
    unknown_micro: bool = False

    @property
    def complete(self) -> bool:
        """Whether nothing is missing as far as the label tells; open where `unknown_micro`."""
        return not self.macro and not self.micro


def lacking(
    analysis: tuple[float, float, float], extras: Mapping[str, float], *, trace_elements: bool
) -> Lacking:
    """What a label does not show.

    Parameters
    ----------
    analysis : N, P2O5, K2O [% of mass]
    extras : further elements by symbol [% of mass]
    trace_elements : whether the label names them without figures

    Returns
    -------
    Lacking
    """
    shown = {e for e, v in zip(("N", "P", "K"), analysis, strict=True) if v > 0}
    shown |= {e for e, v in extras.items() if v > 0}
    micro = tuple(e for e in MICRO if e not in shown)
    return Lacking(
        macro=tuple(e for e in MACRO if e not in shown),
        micro=() if trace_elements else micro,
        unknown_micro=trace_elements and bool(micro),
    )
