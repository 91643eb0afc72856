"""Masses, conductivities and lengths as written, against the law and handbooks."""

from __future__ import annotations

import pytest

from .checks import Check, published
from .conversion import RESULTS


@pytest.mark.parametrize("check", published("measuring"), ids=str)
def test_a_measure_is_the_published_one(check: Check) -> None:
    assert RESULTS[check.kind](check.inputs) == check.printed
