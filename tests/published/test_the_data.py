"""The figures themselves: each names a source, says how far to trust it, and can fail."""

from __future__ import annotations

from collections import Counter

import pytest

from .checks import STATUSES, Check, published, themes

EVERY_CHECK = [check for theme in themes() for check in published(theme)]


@pytest.mark.parametrize("check", EVERY_CHECK, ids=str)
def test_a_check_names_its_source_and_its_standing(check: Check) -> None:
    assert check.source.strip()
    assert check.status in STATUSES


@pytest.mark.parametrize("check", EVERY_CHECK, ids=str)
def test_a_check_is_narrow_enough_to_fail(check: Check) -> None:
    assert 0 < check.tolerance <= 0.15 * abs(check.expected)


def test_no_id_is_used_twice() -> None:
    ids = Counter(check.id for theme in themes() for check in published(theme))
    assert [name for name, count in ids.items() if count > 1] == []


def test_most_figures_were_seen_in_print() -> None:
    standing = Counter(check.status for theme in themes() for check in published(theme))
    assert standing["seen"] >= 40
    assert standing["seen"] > standing.total() / 2
