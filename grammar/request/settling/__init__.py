"""Words that mean one thing here and another there, settled by their neighbours.

`settle` turns the scanner's tokens into the terminals of request.lark. Every rule is a
small function over the token list; they run in the order of `_RULES`.
"""

from __future__ import annotations

from collections.abc import Callable
from typing import TypeAlias

from grammar.request import doubts
from grammar.request.settling.additives import additives
from grammar.request.settling.compared import compared, weaker
from grammar.request.settling.corrections import corrections
from grammar.request.settling.countries import countries, kitchen
from grammar.request.settling.elsewhen import elsewhen, traits
from grammar.request.settling.equivalents import (
    meter_scale,
    ordinals,
    parts,
    restated,
    spoon_weights,
)
from grammar.request.settling.hearsay import hearsay
from grammar.request.settling.intervals import label_intervals
from grammar.request.settling.labels import analyses, declared, dotted, extras, oxides
from grammar.request.settling.leftover import (
    loose,
    loose_rates,
    measured_last,
    negations,
    nor,
    plain,
    rhythms,
)
from grammar.request.settling.meanings import (
    fractions,
    full,
    growing,
    homographs,
    mixtures,
    often,
    slow_growth,
)
from grammar.request.settling.numbers import (
    amounts,
    counted,
    ranges,
    signs,
    sizes,
    strength_numbers,
    times,
)
from grammar.request.settling.rates import (
    asked_per,
    dilutions,
    forms_before,
    milligrams,
    of_medium,
    per_plant,
    pure_per,
    rates,
)
from grammar.request.settling.totals import totals
from grammar.request.settling.vessels import vessels
from grammar.words.numerals import compose
from grammar.words.tokens import Tokens


def settle(tokens: Tokens) -> Tokens:
    """Terminals of the grammar from the scanner's tokens.

    Parameters
    ----------
    tokens : as `scan` gives them

    Returns
    -------
    list of Token
        Without words that carry nothing; what is measured stands behind its number.
    """
    present = {token.type for token in tokens}
    for rule, types in _RULES:
        if not types or not types.isdisjoint(present):
            tokens = rule(tokens)
            present = {token.type for token in tokens}
    return tokens


Rule: TypeAlias = Callable[[Tokens], Tokens]

#: The rules in order, each with the token types without which it would change nothing
#: (none: it always runs). Most messages need only a few of them.
_RULES: tuple[tuple[Rule, frozenset[str]], ...] = tuple(
    (rule, frozenset(types.split()))
    for rule, types in (
        (ordinals, "ORDINAL"),
        (often, "OFTEN"),
        (compose, "NUMBER POINT AND FRACTION_OF HALF_MORE MEASURED_HALF"),
        (nor, "NOR"),
        (kitchen, "MASS_UNIT LOOSE_MEASURE VOLUME_UNIT"),
        (countries, "COUNTRY VOLUME_UNIT"),
        (parts, "TO IN PER FOR EVERY"),
        (restated, "VOLUME_UNIT"),
        (spoon_weights, "SPOON"),
        (meter_scale, "SCALE PPM_SCALE"),
        (signs, "MINUS"),
        (dotted, "NUMBER"),
        (analyses, "NUMBER"),
        (
            homographs,
            "CONCENTRATED MEASURED_WATER LEVEL DATED_MONTH IN BARE_DEGREE SIZE_ENDING EXACT EC_UNIT"
            " TEMPERATURE_UNIT PERCENT MULTIPLE",
        ),
        (traits, "SEASON"),
        (elsewhen, "MONTH SEASON GROWTH GROWING_VERB MEDIUM"),
        (doubts.dates, "ANALYSIS NO_ANALYSIS"),
        (doubts.others, "LAMP OTHER_TASK PERSON_VERB"),
        (totals, "CONTAINER LOOSE_MEASURE VOLUME_UNIT"),
        (vessels, "CONTAINER LOOSE_MEASURE FRACTION PERCENT ASIDE"),
        (doubts.containers, "CONTAINER"),
        (weaker, "TIMES MULTIPLE"),
        (compared, "BOUND REDUCED JUDGED FRACTION"),
        (doubts.bounds, "BOUND BOUND_BEHIND TO BY"),
        (hearsay, "FILLER"),
        (doubts.past, "PAST PRESENT AGO"),
        (doubts.shares, "PERCENT SHARE FRACTION EVERY MULTIPLE VAGUE"),
        (doubts.portions, "FRACTION EVERY PLUS AND APIECE"),
        (sizes, "POT"),
        (milligrams, "ELEMENT HARDNESS"),
        (additives, "FILLER"),
        (times, "TIMES"),
        (rates, "PER ARTICLE IN TO FOR EVERY TIMES"),
        (strength_numbers, "STRENGTH"),
        (ranges, "MINUS TO OR BETWEEN ARTICLE"),
        (mixtures, "MIX AND PLUS"),
        (slow_growth, "GROWING_VERB GROWTH SLOWLY"),
        (growing, "GROWING_VERB"),
        (full, "FULL"),
        (fractions, "FRACTION MULTIPLE PERCENT MULTIPLIER"),
        (dilutions, "RATIO"),
        (declared, "NPK"),
        (extras, "ELEMENT OXIDE PLUS UNKNOWN MASS_UNIT"),
        (loose_rates, "LOOSE_MEASURE"),
        (loose, "LOOSE_MEASURE UNKNOWN"),
        (rhythms, "EVERY REGIME"),
        (counted, "NUMBER"),
        (of_medium, "MEDIUM"),
        (amounts, ""),
        (per_plant, "POT PER EVERY"),
        (asked_per, "PER EVERY IN"),
        (pure_per, "PER"),
        (corrections, "FILLER"),
        (label_intervals, "LABEL"),
        (negations, "NOT"),
        (plain, ""),
        (forms_before, "PER"),
        (measured_last, "ELEMENT HARDNESS ALKALINITY EC SCALE"),
        (oxides, "OXIDE"),
    )
)
