"""Reference data: sources beside figures, one figure in one place, words for every entry."""

from __future__ import annotations

import pytest
from molmass import Formula

from bot.almanac.plants import genera
from bot.almanac.reference import caution_severities, elements, measures, media
from bot.dosing.label import OXIDE_FACTOR
from grammar.lexicon import sections
from grammar.request.interpret import ELEMENT_IN_OXIDE

SOURCES = {
    **{f"medium {m.name}": m.source for m in media().values()},
    **{f"element {e.symbol}": e.source for e in elements().values()},
    **{f"measure {name}": figure.source for name, figure in measures().items()},
    **{f"caution {code}": c.source for code, c in caution_severities().items()},
    **{f"class of {g.name}": g.class_source for g in genera().values()},
    **{f"rest of {g.name}": g.rest_source for g in genera().values() if g.rest_months},
}


@pytest.mark.parametrize("name", SOURCES)
def test_every_figure_names_its_source(name: str) -> None:
    assert SOURCES[name].strip()


@pytest.mark.parametrize("symbol", elements())
def test_atomic_weights_are_those_of_a_reference_library(symbol: str) -> None:
    assert elements()[symbol].atomic_weight == pytest.approx(Formula(symbol).mass, rel=1e-4)


@pytest.mark.parametrize("oxide", OXIDE_FACTOR)
def test_the_reader_and_the_computation_convert_oxides_alike(oxide: str) -> None:
    assert ELEMENT_IN_OXIDE[oxide][1] == OXIDE_FACTOR[oxide]


def test_the_reader_knows_no_other_oxides() -> None:
    assert set(ELEMENT_IN_OXIDE) == set(OXIDE_FACTOR)


def test_media_of_the_lexicon_and_of_the_almanac_are_the_same() -> None:
    assert set(sections("en")["medium"]) == set(media())


def test_there_are_macro_secondary_and_micro_elements() -> None:
    kinds = [e.kind for e in elements().values()]
    assert kinds.count("macro") == 3
    assert kinds.count("secondary") == 3
    assert kinds.count("micro") >= 7
