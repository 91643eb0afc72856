"""Readings and waters in a message: what a meter shows, what a report lists, waters to mix.

Their words are a vocabulary of their own, looked for over the raw words: they change neither
what a dose nor what an order means.
"""

from __future__ import annotations

import re
from dataclasses import replace

from grammar.order import MeterSaid
from grammar.words.marks import Mark, Words, phrases
from grammar.words.scan import Raw, Token, raws_of
from grammar.words.tokens import UNITS

#: 10 mS/cm is the most that a feed in use shows; a bare figure above it is in another unit.
MOST_MS_CM = 10.0
#: So many words may stand between a water and its own figure.
_WATER_WITHIN = 3
#: So many words may stand between a meter and its figure.
_NEAR = 5
_NITRATE_OF_N = 62.004 / 14.007  # molar masses, IUPAC
#: Figures that name the ppm scale of a meter.
SCALES = {500: 500, 640: 640, 700: 700, 0.5: 500, 0.64: 640, 0.7: 700}
#: A charge is written right behind its ion: 'Ca2+', 'SO4 2-'.
_MOST_CHARGE = 3


def found_in(words: Words) -> list[Mark]:
    """The phrases of reports, of meters and of waters, each kind in its order."""
    return [m for trie in words.lexicon.measured for m in phrases(words.raws, trie)]


def figure(raw: Raw) -> float | None:
    """The value of a number, None where a comma could part thousands."""
    text = raw.text
    if raw.kind != "number" or text.count(".") + text.count(",") > 1:
        return None
    whole, comma, part = text.partition(",")
    if comma and len(part) == 3 and whole not in ("", "0"):
        return None
    return float(text.replace(",", "."))


# --- a report ------------------------------------------------------------------------------


#: Molar masses [g/mol], IUPAC, and charges; what a report counts as nitrogen is so too.
_IONS = {
    "Ca": (40.078, 2), "Mg": (24.305, 2), "Na": (22.990, 1), "K": (39.098, 1),
    "HCO3": (61.016, 1), "SO4": (96.06, 2), "Cl": (35.45, 1), "NO3": (62.004, 1),
    "NO3_N": (14.007, 1),
}  # fmt: skip


def mg_l_of(ion: str, value: float, unit: str) -> float:
    """An amount of an ion in mg/L, from one of the units of a report: mmol_l, meq_l, ug_l."""
    mass, charge = _IONS[ion]
    factors = {"mmol_l": mass, "meq_l": mass / charge, "ug_l": 0.001}
    return value * factors.get(unit, 1.0)


def report(words: Words) -> tuple[dict[str, float], frozenset[int], bool]:
    """Ions of a report [mg/L], the words that say them, and whether another unit was meant.

    A unit holds for the figures before it that have none yet; said first, for those behind it.
    """
    raws = _without_ratios(words)
    by_place = {m.at: m for m in phrases(raws, words.lexicon.measured[0])}
    said: list[list[str | float]] = []  # ion, amount, unit
    taken: set[int] = set()
    first_unit = ""
    ion: Mark | None = None
    number: tuple[int, float] | None = None
    index = 0
    while index < len(raws):
        mark, raw = by_place.get(index), raws[index]
        value = figure(raw)
        if mark is not None and mark.type == "ION" and _of_a_salt(raws, by_place, mark):
            ion, number, index = None, None, _behind_salt(by_place, mark)
        elif mark is not None and mark.type == "ION":
            end = _behind_charge(raws, mark.end)
            if number is not None and not raw.after_break:
                said.append([mark.value, number[1], ""])
                taken |= set(range(number[0], end))
                ion, number = None, None
            else:
                ion, number = mark, None
            index = end
        elif mark is not None:
            for entry in said:
                entry[2] = entry[2] or mark.value
            first_unit = first_unit or ("" if said else mark.value)
            if index - 1 in taken:
                taken |= set(range(mark.at, mark.end))
            index = mark.end
            if number is not None and number[0] == mark.at - 1:  # '2 mmol/l Ca'
                number, index = _unit_between(raws, by_place, said, taken, number, mark)
        elif value is not None:
            if ion is not None and index - ion.at <= _NEAR + ion.size:
                said.append([ion.value, -value if _negative(raws, index) else value, ""])
                taken |= set(range(ion.at, index + 1))
                ion, number = None, None
            else:
                ion, number = None, (index, value)
            index += 1
        else:
            word = words.lexicon.words.get(raw.text)
            number = number if word is not None and word.type in ("OF", "FILLER") else None
            index += 1
    ions: dict[str, float] = {}
    for symbol, amount, unit in said:
        _put(ions, str(symbol), mg_l_of(str(symbol), float(amount), str(unit or first_unit)))
    other = any((unit or first_unit) == "other" for _, _, unit in said)
    spans = [(raws[i].start, raws[i].end) for i in taken]
    held = (i for i, r in enumerate(words.raws) if any(r.start < e and s < r.end for s, e in spans))
    return ions, frozenset(held), other


#: Symbols are shorter: 'Ca Mg' is a list without figures, 'magnesium sulfate' a salt.
_SHORTEST_ION_WORD = 5


def _of_a_salt(raws: list[Raw], by_place: dict[int, Mark], mark: Mark) -> bool:
    """Whether two ions in words make one salt: 'magnesium sulfate', 'sulfato de magnesio'."""
    behind = by_place.get(_behind_of(raws, mark.end))
    if behind is None or behind.type != "ION" or raws[mark.end].after_break:
        return False
    return all(len(raws[m.at].text) >= _SHORTEST_ION_WORD for m in (mark, behind))


def _behind_of(raws: list[Raw], index: int) -> int:
    """The place behind a small word between two ions: 'sulfato de magnesio'."""
    small = index + 1 < len(raws) and raws[index].kind == "word" and len(raws[index].text) <= 2
    return index + 1 if small else index


def _behind_salt(by_place: dict[int, Mark], mark: Mark) -> int:
    places = (at for at in (mark.end, mark.end + 1) if at in by_place)
    return next((by_place[at].end for at in places), mark.end)


def _unit_between(
    raws: list[Raw],
    by_place: dict[int, Mark],
    said: list[list[str | float]],
    taken: set[int],
    number: tuple[int, float],
    unit: Mark,
) -> tuple[tuple[int, float] | None, int]:
    """'2 mmol/l Ca': a figure, its unit and then its ion; what is left, and where to go on."""
    behind = by_place.get(unit.end)
    if behind is None or behind.type != "ION" or raws[unit.end].after_break:
        return number, unit.end
    end = _behind_charge(raws, behind.end)
    said.append([behind.value, number[1], unit.value])
    taken |= set(range(number[0], end))
    return None, end


def _without_ratios(words: Words) -> list[Raw]:
    """The words of a message in which 'HCO3: 240' is no ratio of 3 to 240."""
    if ":" not in words.folded.text:
        return words.raws
    apart = replace(words.folded, text=re.sub(r"(?<=\d):(?=\s)", " ", words.folded.text))
    return raws_of(apart, words.lexicon)


def _negative(raws: list[Raw], index: int) -> bool:
    """Whether 'Mg -12' was written: told to be impossible, not read as 12."""
    sign = raws[index - 1]
    return sign.text == "-" and sign.after_space and not raws[index].after_space


def _put(ions: dict[str, float], symbol: str, value: float) -> None:
    if symbol == "NO3_N":
        symbol, value = "NO3", value * _NITRATE_OF_N
    ions.setdefault(symbol, value)


def _behind_charge(raws: list[Raw], index: int) -> int:
    """The place behind the charge of an ion, where one is written."""
    if index + 1 < len(raws) and raws[index].kind == "number":
        sign = raws[index + 1]
        small = raws[index].text.isdecimal() and int(raws[index].text) <= _MOST_CHARGE
        if small and sign.kind == "sign" and sign.text in "+-" and not sign.after_space:
            return index + 2
    if index < len(raws) and raws[index].kind == "sign" and raws[index].text in "+-":
        return index if raws[index].after_space else index + 1
    return index


# --- a meter -------------------------------------------------------------------------------


def meter(words: Words, tokens: list[Token], found: list[Mark]) -> tuple[MeterSaid, frozenset[int]]:
    """What a meter shows, and the words that say it; no value where none was found."""
    by_place = {m.at: m for m in found if m.type == "METER"}
    starts = {t.start: t for t in tokens}
    taken: set[int] = set()
    values: list[tuple[int, float, str]] = []
    of_waters: list[tuple[int, float, str]] = []
    temp: float | None = None
    scale: int | None = None
    for index, raw in enumerate(words.raws):
        value = figure(raw)
        if value is None:
            continue
        behind = by_place.get(index + 1)
        unit, end = _unit(words.raws, index + 1, starts, behind)
        if index - 1 in by_place and by_place[index - 1].value == "cf":
            unit = "cf"
        if behind is not None and behind.value in ("celsius", "fahrenheit"):
            temp = value if behind.value == "celsius" else (value - 32) / 1.8
            taken |= set(range(index, behind.end))
        elif value in SCALES and _by_scale(by_place, found, index, end):
            scale = SCALES[value]
            taken |= set(range(index, end))
        elif unit or end >= len(words.raws) or not _measures(starts, words.raws[end]):
            both = unit or any(m.value == "mixed" for m in by_place.values())
            water = both and _behind_water(words.raws, index, starts, by_place)
            unit = unit or _unheard_unit(words, index + 1, starts)
            value = -value if index and _negative(words.raws, index) else value
            (of_waters if water else values).append((index, value, unit))
    chosen = _shown(values, found) or _shown(of_waters, found)
    if chosen is not None:
        index, _, unit = chosen
        taken |= set(range(index, _unit(words.raws, index + 1, starts, by_place.get(index + 1))[1]))
    taken |= {i for m in found if m.type == "METER" for i in range(m.at, m.end)
              if m.value in ("scale", "compensated", "uncompensated")}  # fmt: skip
    said = {m.value for m in found if m.type == "METER"}
    return MeterSaid(
        value=chosen[1] if chosen else None,
        unit=chosen[2] if chosen else "",
        scale=scale,
        temp_c=temp,
        compensated=False if "uncompensated" in said else True if "compensated" in said else None,
    ), frozenset(taken)


def _behind_water(
    raws: list[Raw], index: int, starts: dict[int, Token], by_place: dict[int, Mark]
) -> bool:
    """Whether a figure is that of the water named right before it: 'tap 0.4 mS', 'tap is 0.4'."""
    for place in range(index - 1, max(index - 1 - _WATER_WITHIN, -1), -1):
        token = starts.get(raws[place].start)
        if token is not None and token.type in ("WATER", "WATER_WORD"):
            return True
        if place in by_place and by_place[place].value in ("meter", "ready", "shows", "mixed"):
            return False
        if raws[place + 1].after_break:
            return False
    return False


def _unheard_unit(words: Words, index: int, starts: dict[int, Token]) -> str:
    """A word right behind a figure that nobody knows: '9 bananas'; empty where there is none."""
    if index >= len(words.raws):
        return ""
    raw = words.raws[index]
    token = starts.get(raw.start)
    held = any(index in range(m.at, m.end) for m in words.found)
    known = held or (token is not None and token.type != "UNKNOWN")
    plain = raw.kind == "word" and not raw.after_break and raw.text.isalpha()
    return "" if known or not plain else raw.text


def _unit(
    raws: list[Raw], index: int, starts: dict[int, Token], mark: Mark | None
) -> tuple[str, int]:
    """The unit of a conductivity at a place, and the place behind it."""
    if mark is not None and mark.value == "cf":
        return "cf", mark.end
    token = starts.get(raws[index].start) if index < len(raws) else None
    if token is not None and token.type == "EC_UNIT":
        return token.value, index + len(token.raws)
    if token is not None and token.type == "CONCENTRATION_UNIT":
        return "ppm", index + len(token.raws)
    return "", index


def _measures(starts: dict[int, Token], raw: Raw) -> bool:
    """Whether a word makes the number before it a volume, a weight, a hardness and so on."""
    token = starts.get(raw.start)
    return token is not None and token.type in UNITS and not raw.after_break


def _by_scale(by_place: dict[int, Mark], found: list[Mark], index: int, end: int) -> bool:
    """Whether a number names a scale: '500 scale', '500 ppm scale', 'scale 500'."""
    behind = by_place.get(end) or by_place.get(index + 1)
    if behind is not None and behind.value == "scale":
        return True
    return any(m.type == "METER" and m.value == "scale" and 0 <= index - m.end <= 1 for m in found)


def _shown(
    values: list[tuple[int, float, str]], found: list[Mark]
) -> tuple[int, float, str] | None:
    """The figure that the meter shows: near behind a word for it, one with a unit first."""
    told = ("meter", "shows", "ready", "mixed")
    says = [m.end for m in found if m.type == "METER" and m.value in told]
    near = [v for v in values if any(0 <= v[0] - end <= _NEAR for end in says)]
    if not near:  # 'EC 0.9 after mixing'
        begins = [m.at for m in found if m.type == "METER" and m.value == "mixed"]
        near = [v for v in values if any(0 < at - v[0] <= _NEAR for at in begins)]
    with_unit = [v for v in near if v[2]] or [v for v in values if v[2]]
    return next(iter(with_unit or near), None)
