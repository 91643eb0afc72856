"""The errors of EC against PHREEQC by family of composition, as a table.

By hand: python -m tests.benchmarks.table_phreeqc
"""

from __future__ import annotations

from phreeqpython import PhreeqPython  # type: ignore[import-untyped]

from bot.dosing.conductivity import ec_ms_cm
from tests.dosing.test_conductivity_phreeqc import (
    HEADING,
    Compared,
    compositions,
    phreeqc_ec_ms_cm,
    summary,
)


def main() -> None:
    """Print a line for each family and one for all [mS/cm], [%]."""
    program = PhreeqPython()
    everything = []
    print(HEADING)
    for family, members in compositions().items():
        rows = []
        for member in members:
            reference = phreeqc_ec_ms_cm(program, member)
            rows.append(Compared(reference, 100 * (ec_ms_cm(member.ions) / reference - 1)))
        print(summary(family, rows))
        everything += rows
    print(summary("all", everything))


if __name__ == "__main__":
    main()
