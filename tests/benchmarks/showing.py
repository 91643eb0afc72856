"""Figures as a table: of one run, or of two beside each other."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from statistics import median

from tests.benchmarks.figures import Figure, Measured

#: Changes with the load of the machine; a size does not.
_TIMES = ("us", "ms", "s", "a second")


def lines(figures: Sequence[Figure]) -> Iterator[str]:
    """A line each: value, unit, how far its rounds lie apart, ratio."""
    by_name = {figure.name: figure for figure in figures}
    for figure in figures:
        ratio = ""
        if figure.beside is not None:
            ratio = f"{figure.ratio_to(by_name[figure.beside]):8.2f} x {figure.beside}"
        yield (
            f"  {figure.name:50} {_short(figure.value):>9} {figure.unit:8} "
            f"{_percent(figure.noise):>6} {ratio}"
        ).rstrip()


def heading(measured: Measured) -> str:
    """Where a run was made, and the columns."""
    return f"{_where(measured)}\n  {'':50} {'median':>9} {'':8} {'spread':>6} {'ratio':>8}"


def table(measured: Measured) -> str:
    """All of a run."""
    said = [heading(measured)]
    for bench, figures in measured.figures.items():
        said += [bench, *lines(figures)]
    return "\n".join(said)


def _where(measured: Measured) -> str:
    how = "quick" if measured.quick else "full"
    return (
        f"{measured.cores} cores, {measured.memory_gb:.0f} GB, Python {measured.python}, {how}, "
        f"commit {measured.commit or 'unknown'}, yardstick {median(measured.yardstick_ms):.2f} ms"
    )


def _short(value: float) -> str:
    return f"{value:,.0f}" if value >= 1000 else f"{value:.4g}"


def _percent(share: float | None) -> str:
    return "once" if share is None else f"{100 * share:.0f} %"


def moved(old: Figure, new: Figure, machine: float = 1.0) -> bool:
    """Whether a figure changed by more than noise explains.

    Parameters
    ----------
    old, new : the same figure of two runs
    machine : how many times as long the yardstick took in the new run; times may differ by as much

    Noise is the wider of the two spreads between rounds, and for times what the machine moved by.
    Without rounds to tell noise by, nothing is said to have moved.
    """
    if old.noise is None or new.noise is None:
        return False
    drift = max(machine, 1 / machine) - 1 if new.unit in _TIMES else 0.0
    ratio = new.value / old.value
    return max(ratio, 1 / ratio) - 1 > max(old.noise, new.noise, drift) if ratio > 0 else True


def compared(old: Measured, new: Measured) -> str:
    """Both columns and the ratio of the new to the old; what moved has a star."""
    machine = median(new.yardstick_ms) / median(old.yardstick_ms)
    said = [
        f"old: {_where(old)}",
        f"new: {_where(new)}",
        f"* moved by more than the rounds differ, and than the yardstick did ({machine:.2f})",
    ]
    if old.quick != new.quick:
        said.append("one of them was quick: what depends on the number of rows is not comparable")
    said.append(f"  {'':50} {'old':>9} {'new':>9} {'':8} {'new/old':>8}")
    for bench in old.figures | new.figures:
        before = {f.name: f for f in old.figures.get(bench, [])}
        after = {f.name: f for f in new.figures.get(bench, [])}
        if before and not after:
            continue  # not asked for this time
        said.append(bench)
        said += [_both(n, before.get(n), after.get(n), machine) for n in before | after]
    return "\n".join(said)


def _both(name: str, old: Figure | None, new: Figure | None, machine: float) -> str:
    one = new or old
    assert one is not None
    values = [_short(f.value) if f is not None else "-" for f in (old, new)]
    ratio = ""
    if old is not None and new is not None and old.value:
        star = "*" if moved(old, new, machine) else ""
        ratio = f"{new.value / old.value:8.2f} {star}"
    return f"  {name:50} {values[0]:>9} {values[1]:>9} {one.unit:8} {ratio}".rstrip()
