"""The parsed parts of a message to a `Reading`: values, doubts and contradictions."""

from __future__ import annotations

import math
from collections.abc import Callable, Iterable
from dataclasses import dataclass, field

from lark import Tree

from grammar.reading import (
    Conflict,
    ElementTarget,
    LabelRate,
    Problem,
    ReadAs,
    Reading,
    Unknown,
    Water,
)
from grammar.request.parser import Parsed
from grammar.request.settling.labels import DOTTED
from grammar.words.numerals import fraction_value
from grammar.words.scan import AMBIGUOUS, Folded, Token
from grammar.words.tokens import UNITS
from grammar.words.units import COUNTRYLESS, TAKEN, to_canonical

_Parts = list[tuple[str, list[Token]]]
#: IUPAC atomic weights give these; fixtures/published/oxides.toml holds the check.
ELEMENT_IN_OXIDE: dict[str, tuple[str, float]] = {
    "P2O5": ("P", 0.436421),
    "K2O": ("K", 0.830148),
    "CaO": ("Ca", 0.714691),
    "MgO": ("Mg", 0.603037),
    "SO3": ("S", 0.400495),
    "SiO2": ("Si", 0.467435),
    "Na2O": ("Na", 0.741857),
}
#: A conductivity above this is most likely in other units than written.
_EC_PLAUSIBLE_MS_CM = 10.0
#: Water without salts conducts no more (common practice, no source).
_PURE_MS_CM = 0.2
#: States of growth that a plant can show at the same time; the later in the list wins.
_ACTIVE = ("growing", "new_leaves", "new_roots", "new_pseudobulbs")


@dataclass(frozen=True, slots=True)
class _Fact:
    slot: str
    value: object
    tokens: list[Token]


@dataclass(slots=True)
class _Notes:
    """What the parts said, gathered in order."""

    folded: Folded
    measure: str
    facts: list[_Fact] = field(default_factory=list)
    unknown: list[Unknown] = field(default_factory=list)
    read_as: list[ReadAs] = field(default_factory=list)
    conflicts: list[Conflict] = field(default_factory=list)
    problems: list[Problem] = field(default_factory=list)
    genera: list[str] = field(default_factory=list)
    extras: dict[str, float] = field(default_factory=dict)
    trace: bool = False
    exact: bool = False
    counts: list[int] = field(default_factory=list)
    sizes_cm: list[float] = field(default_factory=list)
    weights_g: list[float] = field(default_factory=list)
    measure_taken: str | None = None
    negated: list[tuple[str, str]] = field(default_factory=list)
    loose_rates: list[str] = field(default_factory=list)
    elements: list[ElementTarget] = field(default_factory=list)

    def written(self, tokens: Iterable[Token]) -> str:
        spans = [(t.start, t.end) for t in tokens]
        text = self.folded.written(min(s for s, _ in spans), max(e for _, e in spans))
        return " ".join(text.split())

    def say(self, slot: str, value: object, tokens: list[Token]) -> None:
        self.facts.append(_Fact(slot, value, tokens))

    def number(self, token: Token, slot: str, *, signed: bool = False) -> float | None:
        """A usable number, or None with the trouble noted."""
        if AMBIGUOUS in token.value:
            self.conflicts.append(Conflict("ambiguous_number", slot, (self.written([token]),)))
            return None
        value = fraction_value(token.value) if "/" in token.value else float(token.value)
        if "/0" in token.value.replace(" ", "") and math.isinf(value):
            self.problems.append(Problem("division_by_zero", self.written([token])))
        elif not math.isfinite(value):
            self.problems.append(Problem("not_a_number", self.written([token])))
        elif value < 0 and not signed:
            self.problems.append(Problem("negative", self.written([token])))
        else:
            return value
        return None

    def unit(self, token: Token) -> str:
        """A unit id; a gallon without a country takes the message's or the person's."""
        if token.value.startswith(TAKEN):
            unit = token.value.removeprefix(TAKEN)
            self.measure_taken = unit.split("_")[0]
            return unit
        if token.value not in COUNTRYLESS:
            return token.value
        self.measure_taken = self.measure
        return f"{self.measure}_{token.value}"


def interpret(tree: Parsed, folded: Folded, language: str, measure: str) -> Reading:
    """The meaning of one parsed message.

    Parameters
    ----------
    tree : as `parser.parse` gives it
    folded : the message, for the words as written
    language : code of the lexicon it was scanned with
    measure : 'us' or 'imperial', for a gallon without a country

    Returns
    -------
    Reading
    """
    notes = _Notes(folded, measure)
    parts = [(str(n.data), _leaves(n)) for n in tree.children if isinstance(n, Tree)]
    for index, (name, tokens) in enumerate(parts):
        if name in _READERS and not (name == "unclear" and _is_aimed(parts, index)):
            _READERS[name](notes, tokens)
            if name == "strength" and len(tokens) == 2 and _shares_word(parts, index):
                notes.read_as.append(ReadAs(notes.written(tokens), "strength"))
        elif name == "conductivity":
            _conductivity(notes, tokens, parts, index)
        elif name == "unclear":
            _aimed_at(notes, tokens, parts, index)
    return _reading(notes, language)


def _shares_word(parts: _Parts, index: int) -> bool:
    """Whether a medium or water follows at once: '50% bark' could be a share of it."""
    following = parts[index + 1][1][0] if index + 1 < len(parts) else None
    if following is None or following.after_break:
        return False
    return following.type in ("MEDIUM", *_WATER_WORDS)


def _leaves(node: Parsed) -> list[Token]:
    return [leaf.value for leaf in node.scan_values(lambda _: True)]


# --- one reader a part --------------------------------------------------------------------


def _volume(notes: _Notes, tokens: list[Token]) -> None:
    value = notes.number(tokens[0], "volume_l")
    if value is not None:
        notes.say("volume_l", to_canonical(value, notes.unit(tokens[1])), tokens)


def _analysis(notes: _Notes, tokens: list[Token]) -> None:
    text = tokens[0].value
    if AMBIGUOUS in text:  # 'N 20 P 5O K 20'
        doubtful = [r for r in tokens[0].raws if AMBIGUOUS + r.text in text.split()]
        shown = tuple(notes.folded.written(r.start, r.end) for r in doubtful)
        whole = (notes.written(tokens),)
        notes.conflicts.append(Conflict("ambiguous_number", "analysis", shown or whole))
        return
    for sign in " " if "e" in text else "-/:+ ":  # '9e+20 20 20' has a sign in a number
        if len([p for p in text.split(sign) if p.strip()]) == 3:
            parts = [p.strip() for p in text.split(sign)]
            break
    else:
        return
    numbers = tuple(float(p.replace(",", ".")) for p in parts if p)
    if not all(map(math.isfinite, numbers)):
        notes.problems.append(Problem("not_a_number", notes.written(tokens)))
    elif min(numbers) < 0:  # '20 10 -20'
        notes.problems.append(Problem("negative", notes.written(tokens)))
    else:
        notes.say("analysis", numbers, tokens)


def _extra(notes: _Notes, tokens: list[Token]) -> None:
    if tokens[0].type == "TRACE":
        notes.trace = True
        return
    value = notes.number(tokens[0], "extras")
    if value is None:
        return
    name = tokens[1].value
    element, factor = ELEMENT_IN_OXIDE.get(name, (name, 1.0))
    if element in ("N", "P", "K") or element in notes.extras:
        notes.unknown.append(Unknown(notes.written(tokens)))
        return
    notes.extras[element] = value * factor


#: A smaller share of full strength is nobody's wish: some other percentage is meant (ours).
_WEAKEST = 0.02


def _strength(notes: _Notes, tokens: list[Token]) -> None:
    token = tokens[0]
    value = notes.number(token, "strength")
    if value is None:
        return
    if len(tokens) == 2:  # per cent
        value /= 100
        if 0 < value < _WEAKEST:  # '0.5 % solution': so much of the water, not of the label
            notes.unknown.append(Unknown(notes.written(tokens)))
            return
    if token.type == "VAGUE":
        notes.read_as.append(ReadAs(notes.written(tokens), token.value))
    notes.say("strength", value, tokens)


def _rate(notes: _Notes, tokens: list[Token]) -> None:
    if tokens[0].type == "RATIO":
        parts = float(tokens[0].value.split(":")[1])
        notes.read_as.append(ReadAs(notes.written(tokens), f"{1000 / parts:g} ml/l"))
        notes.say("label_rate", LabelRate(1000 / parts, "ml"), tokens)
        return
    rest = [t for t in tokens if t.type not in ("PER", "EACH")]
    if tokens[0].type == "EACH":
        size = 2 if rest[0].type == "AMOUNT" else 1
        water, quantity = rest[:size], rest[size:]
    else:
        quantity, water = rest[:2], rest[2:]
    amount = notes.number(quantity[0], "label_rate")
    litres = notes.number(water[0], "label_rate") if len(water) == 2 else 1.0
    if amount is None or litres is None:
        return
    litres = to_canonical(litres, notes.unit(water[-1]))
    if litres <= 0:
        notes.problems.append(Problem("division_by_zero", notes.written(tokens)))
        return
    amount, unit = _quantity(notes, amount, quantity[1])
    if _bare_ounce(quantity[1]):
        notes.read_as.append(ReadAs(notes.written(tokens), f"{amount / litres:.3g} {unit}/l"))
    notes.say("label_rate", LabelRate(amount / litres, unit), tokens)


def _bare_ounce(unit: Token) -> bool:
    """An 'oz' of a liquid that was taken for a fluid ounce."""
    fluid = unit.type == "VOLUME_UNIT" and unit.value.endswith("fluid_ounce")
    return fluid and len(unit.raws) == 1 and "fl" not in unit.raws[0].text


def _quantity(notes: _Notes, amount: float, unit: Token) -> tuple[float, str]:
    if unit.type == "MASS_UNIT":
        return to_canonical(amount, unit.value), "g"
    if unit.type == "VOLUME_UNIT":
        return 1000 * to_canonical(amount, notes.unit(unit)), "ml"
    return amount * (3 if "tablespoon" in unit.value else 1), "tsp"


def _size(notes: _Notes, tokens: list[Token]) -> None:
    value = notes.number(tokens[0], "pot_cm")
    if value is not None:
        notes.sizes_cm.append(to_canonical(value, tokens[1].value))


def _weight(notes: _Notes, tokens: list[Token]) -> None:
    if AMBIGUOUS not in tokens[0].value and "/" not in tokens[0].value:
        weight_g = to_canonical(float(tokens[0].value), tokens[1].value)
        if 0 <= weight_g < math.inf:
            notes.weights_g.append(weight_g)
    _lone(notes, tokens)


def _only(values: list[float]) -> float | None:
    """The one value of what may be said in passing, None where two differ."""
    return values[0] if len(set(values)) == 1 else None


def _target(notes: _Notes, tokens: list[Token]) -> None:
    if tokens[2].value != "N":
        text = notes.written(tokens)
        notes.unknown.append(Unknown(text))  # until a label is known that shows it
        mg_l = notes.number(tokens[0], "target_n_mg_l")
        if mg_l is not None:
            notes.elements.append(ElementTarget(tokens[2].value, mg_l, text))
        return
    value = notes.number(tokens[0], "target_n_mg_l")
    if value is not None:
        notes.say("target_n_mg_l", value, tokens)


def _concentration(notes: _Notes, tokens: list[Token]) -> None:
    notes.conflicts.append(Conflict("element", "target_n_mg_l", (notes.written(tokens),)))


def _hardness(notes: _Notes, tokens: list[Token], slot: str = "hardness") -> None:
    value = notes.number(tokens[0], slot)
    if value is None:
        return
    unit = tokens[1]
    if tokens[0].type == "NUMBER":
        # these two count in German degrees, and so do degrees where German is spoken
        if unit.raws[0].text not in ("gh", "kh") and unit.value != "german_degree":
            notes.conflicts.append(Conflict("hardness_unit", "water", (notes.written(tokens),)))
            return
        notes.read_as.append(ReadAs(notes.written(tokens), f"{value:g} °dH"))
        value = to_canonical(value, "german_degree")
    elif unit.type == "CONCENTRATION_UNIT":
        value = to_canonical(value, "mg_l_caco3")
    else:
        value = to_canonical(value, unit.value)
    notes.say(slot, value, tokens)


def _alkalinity(notes: _Notes, tokens: list[Token]) -> None:
    _hardness(notes, tokens, "alkalinity")


_WATER_WORDS = ("WATER", "OTHER_WATER", "WATER_WORD")


def _conductivity(notes: _Notes, tokens: list[Token], parts: _Parts, index: int) -> None:
    """A conductivity belongs to the water named beside it, otherwise it is what is wanted."""
    slot = "water_ec" if _beside_water(parts, index) else "target_ec_ms_cm"
    value = notes.number(tokens[0], slot)
    if value is None:
        return
    first = min(tokens, key=lambda t: t.start)
    if index and parts[index - 1][1][-1].type == "UNKNOWN" and not first.after_break:
        notes.unknown.append(Unknown(notes.written(tokens)))  # 'runoff EC 2.0'
        return
    unit = tokens[1].value if tokens[1].type == "EC_UNIT" else "ms_cm"
    ec_ms_cm = to_canonical(value, unit)
    if ec_ms_cm > _EC_PLAUSIBLE_MS_CM:
        notes.conflicts.append(Conflict("ec_unit", slot, (notes.written(tokens),)))
        return
    if slot == "water_ec" and ec_ms_cm > _PURE_MS_CM and _beside_pure(parts):
        slot = "target_ec_ms_cm"  # '0.6 mS with RO water' is no reading of the water
    notes.say(slot, ec_ms_cm, tokens)


def _is_aimed(parts: _Parts, index: int) -> bool:
    """Whether a bare number is the EC to reach from the one before: 'tap EC 0.4, get to 0.9'."""
    if index < 2 or len(parts[index][1]) != 1 or parts[index][1][0].type != "NUMBER":
        return False
    return parts[index - 1][1][0].type == "AIM" and parts[index - 2][0] == "conductivity"


def _aimed_at(notes: _Notes, tokens: list[Token], parts: _Parts, index: int) -> None:
    """Read such a number in the unit of the EC before it, and show that it was."""
    if not _is_aimed(parts, index):
        return
    slot = "target_ec_ms_cm"
    value = notes.number(tokens[0], slot)
    if value is None:
        return
    unit = next((t.value for t in parts[index - 2][1] if t.type == "EC_UNIT"), "ms_cm")
    ec_ms_cm = to_canonical(value, unit)
    if ec_ms_cm > _EC_PLAUSIBLE_MS_CM:
        notes.conflicts.append(Conflict("ec_unit", slot, (notes.written(tokens),)))
        return
    notes.read_as.append(ReadAs(notes.written(tokens), f"EC {ec_ms_cm:g} mS/cm"))
    notes.say(slot, ec_ms_cm, tokens)


def _beside_water(parts: _Parts, index: int) -> bool:
    def kinds(at: int) -> set[str]:
        return {t.type for t in parts[at][1]} if 0 <= at < len(parts) else set()

    own_figure = "EC" in kinds(index + 2) or kinds(index + 2) & {"EC_UNIT", "NUMBER"}
    if kinds(index + 1) & set(_WATER_WORDS) and kinds(index + 2) == {"NUMBER"}:
        return False  # 'EC 0.8, tap 0.3': the water has a figure of its own
    if "AIM" in kinds(index - 1) or ("AIM" in kinds(index + 1) and not own_figure):
        return False
    if any((t.type, t.value) == ("EC", "aim") for t in parts[index][1]):
        return False  # 'feed EC', 'final EC'
    before = index - 1
    while before >= 0 and parts[before][0] in ("hardness", "alkalinity", "conductivity"):
        before -= 1
    if kinds(before) & set(_WATER_WORDS):
        return True
    after = parts[index + 1][1] if index + 1 < len(parts) else []
    return bool(after) and after[0].type in _WATER_WORDS and not after[0].after_break


def _beside_pure(parts: _Parts) -> bool:
    """Whether the only water named has no salts to speak of."""
    kinds = {t.value for _, part in parts for t in part if t.type == "WATER"}
    return bool(kinds) and kinds <= {"reverse_osmosis", "distilled"}


def _word(notes: _Notes, tokens: list[Token]) -> None:
    token = tokens[0]
    if token.type == "GENUS":
        if token.value not in notes.genera:
            notes.genera.append(token.value)
    elif token.type == "COUNT":
        value = notes.number(token, "count")
        if value is not None and value == int(value):
            notes.counts.append(int(value))
        else:
            notes.unknown.append(Unknown(notes.written(tokens)))
    elif token.type == "EXACT":
        notes.exact = True
    elif token.type == "OTHER_WATER":
        notes.unknown.append(Unknown(notes.written(tokens), ("tap", "rain", "RO")))
    elif token.type in ("FORM", "MEDIUM", "SEASON", "GROWTH", "REGIME", "WATER"):
        notes.say(token.type.lower(), token.value, tokens)
    elif token.type == "MONTH":
        notes.say("month", int(token.value), tokens)


_RANGE_SLOTS = {
    "VOLUME_UNIT": "volume_l", "FRACTION": "strength", "LEVEL": "strength", "PERCENT": "strength",
    "MULTIPLE": "strength", "STRENGTH": "strength", "MULTIPLIER": "strength",
    "CONCENTRATION_UNIT": "target_n_mg_l", "EC_UNIT": "target_ec_ms_cm", "MONTH": "month",
    "HARDNESS_UNIT": "water", "MASS_UNIT": "label_rate", "SPOON": "label_rate",
    "NUMBER": "number",
}  # fmt: skip
_NEGATED_SLOTS = dict.fromkeys(UNITS, "number") | {
    "VOLUME_UNIT": "volume_l", "FRACTION": "strength", "LEVEL": "strength",
    "MULTIPLE": "strength", "MULTIPLIER": "strength", "VAGUE": "strength", "GENUS": "genera",
    "OTHER_WATER": "water", "EXACT": "exact",
}  # fmt: skip


def _unclear(notes: _Notes, tokens: list[Token]) -> None:
    token = tokens[0]
    text = notes.written(tokens)
    if token.type == "RANGE":
        if token.value in ("LENGTH_UNIT", "TIME_UNIT", "TEMPERATURE_UNIT"):
            return
        slot = _RANGE_SLOTS.get(token.value, "number")
        notes.conflicts.append(Conflict("range", slot, (text,)))
    elif token.type == "NEGATED":
        slot = _NEGATED_SLOTS.get(token.value, token.value.lower())
        notes.negated.append((slot, text))
    elif (token.type, token.value) == ("SEVERAL", "loose_rate"):
        notes.loose_rates.append(text)
    elif token.type == "SEVERAL":
        notes.conflicts.append(Conflict(token.value, "number", (text,)))
    elif token.type == "NUMBER":
        if token.value.startswith("-") or notes.number(token, "number") is not None:
            notes.unknown.append(Unknown(text))
    elif token.type == "OTHER_REGIME":
        rhythms = ("every watering", "weekly", "fortnightly", "monthly")
        notes.unknown.append(Unknown(text, rhythms))
    elif token.type == "CORRECTED":  # '2 l, sorry I mean 3 l'
        start, end = map(int, token.value.split())
        notes.read_as.append(ReadAs(text, notes.folded.written(start, end)))
    elif token.value.startswith(DOTTED):
        notes.unknown.append(Unknown(text, (token.value.removeprefix(DOTTED),)))
    elif token.type == "OPEN_ANALYSIS":  # labels print P and K as their oxides
        numbers = tuple(float(p.replace(",", ".")) for p in token.value.split())
        notes.read_as.append(ReadAs(text, "-".join(f"{n:g}" for n in numbers) + " N-P2O5-K2O"))
        notes.say("analysis", numbers, tokens)
    else:
        notes.unknown.append(Unknown(text))


def _lone(notes: _Notes, tokens: list[Token]) -> None:
    notes.unknown.append(Unknown(notes.written(tokens), ()))


def _scale(notes: _Notes, tokens: list[Token]) -> None:
    value = notes.number(tokens[0], "scale_step_g")
    if value is not None:
        notes.say("scale_step_g", to_canonical(value, tokens[1].value), tokens)


_READERS: dict[str, Callable[[_Notes, list[Token]], None]] = {
    "volume": _volume,
    "analysis": _analysis,
    "extra": _extra,
    "strength": _strength,
    "rate": _rate,
    "target": _target,
    "concentration": _concentration,
    "hardness": _hardness,
    "alkalinity": _alkalinity,
    "scale": _scale,
    "word": _word,
    "unclear": _unclear,
    "weight": _weight,
    "size": _size,
    "spoons": _lone,
    "span": _lone,
}


# --- putting the facts together -------------------------------------------------------------


def _on_a_mount(facts: list[_Fact], folded: Folded) -> list[_Fact]:
    """Media without the moss that lies on a mount: 'on cork with moss' is mounted."""
    kept: list[_Fact] = []
    for fact in facts:
        moss = bool(kept) and (kept[-1].value, fact.value) == ("mounted", "sphagnum")
        if moss:
            between = folded.text[kept[-1].tokens[-1].end : fact.tokens[0].start].split()
            if len(between) == 1 and between[0].isalpha():
                continue
        kept.append(fact)
    return kept


def _reading(notes: _Notes, language: str) -> Reading:
    slots: dict[str, object] = {}
    by_slot: dict[str, list[_Fact]] = {}
    for fact in notes.facts:
        by_slot.setdefault(fact.slot, []).append(fact)
    for slot, facts in by_slot.items():
        facts = _on_a_mount(facts, notes.folded) if slot == "medium" else facts
        value = facts[0].value if len(facts) == 1 else _agreed(facts)
        if value is None:
            texts = tuple(dict.fromkeys(notes.written(f.tokens) for f in facts))
            notes.conflicts.append(Conflict("several", _public(slot), texts))
        else:
            slots[slot] = value
    for slot, text in notes.negated:
        if slot in slots or (slot == "genera" and notes.genera):
            notes.unknown.append(Unknown(text))
        else:
            notes.conflicts.append(Conflict("negation", slot, (text,)))
    for text in notes.loose_rates:
        if "label_rate" in slots:
            notes.unknown.append(Unknown(text))
        else:
            notes.conflicts.append(Conflict("loose_rate", "label_rate", (text,)))
    water = _water(notes, slots)
    get: Callable[[str], object] = slots.get
    return Reading(
        text=notes.folded.original,
        language=language,
        volume_l=get("volume_l"),  # type: ignore[arg-type]
        analysis=get("analysis"),  # type: ignore[arg-type]
        extras=notes.extras,
        trace_elements=notes.trace,
        form=get("form"),  # type: ignore[arg-type]
        strength=get("strength"),  # type: ignore[arg-type]
        exact=notes.exact,
        regime=get("regime"),  # type: ignore[arg-type]
        medium=get("medium"),  # type: ignore[arg-type]
        season=get("season"),  # type: ignore[arg-type]
        month=get("month"),  # type: ignore[arg-type]
        growth=get("growth"),  # type: ignore[arg-type]
        genera=tuple(notes.genera),
        count=sum(notes.counts) if notes.counts else None,
        water=water,
        label_rate=get("label_rate"),  # type: ignore[arg-type]
        target_n_mg_l=get("target_n_mg_l"),  # type: ignore[arg-type]
        target_ec_ms_cm=get("target_ec_ms_cm"),  # type: ignore[arg-type]
        target_element=notes.elements[0] if len(notes.elements) == 1 else None,
        scale_step_g=get("scale_step_g"),  # type: ignore[arg-type]
        pot_cm=_only(notes.sizes_cm),
        weight_g=_only(notes.weights_g),
        measure_taken=notes.measure_taken,
        read_as=tuple(dict.fromkeys(notes.read_as)),
        unknown=tuple(dict.fromkeys(notes.unknown)),
        conflicts=tuple(dict.fromkeys(notes.conflicts)),
        problems=tuple(dict.fromkeys(notes.problems)),
    )


def _public(slot: str) -> str:
    return "water" if slot in ("hardness", "alkalinity", "water_ec") else slot


def _agreed(facts: list[_Fact]) -> object | None:
    """The one value of a slot, or None where two differ."""
    values = list(dict.fromkeys(f.value for f in facts))
    if len(values) == 1:
        return values[0]
    if facts[0].slot == "growth":
        return _growth([str(v) for v in values])
    first = values[0]
    if isinstance(first, float):
        close = all(math.isclose(first, float(str(v)), rel_tol=0.005) for v in values)
        return first if close else None
    if isinstance(first, LabelRate) and all(isinstance(v, LabelRate) for v in values):
        same = all(
            v.unit == first.unit and math.isclose(v.per_litre, first.per_litre, rel_tol=0.02)
            for v in values
            if isinstance(v, LabelRate)
        )
        return first if same else None
    return None


def _growth(values: list[str]) -> str | None:
    """Signs of activity agree with each other and with flowers; nothing else does."""
    active = [v for v in values if v in _ACTIVE]
    others = [v for v in values if v not in _ACTIVE]
    if not others:
        return max(active, key=_ACTIVE.index)
    if others == ["seedling"]:
        return "seedling"  # the smaller dose of the two
    if others == ["flowering"]:
        return max(active, key=_ACTIVE.index)
    return None


def _water(notes: _Notes, slots: dict[str, object]) -> Water | None:
    figures = {s: slots.get(s) for s in ("hardness", "water_ec", "alkalinity")}
    kind = slots.get("water")
    if kind is None and all(v is None for v in figures.values()):
        return None
    if kind is None:
        if any(c.slot == "water" for c in notes.conflicts):
            return None
        texts = [notes.written(f.tokens) for f in notes.facts if f.slot in figures]
        notes.read_as.append(ReadAs(texts[0], "tap"))
        kind = "tap"
    return Water(
        str(kind),
        figures["hardness"],  # type: ignore[arg-type]
        figures["water_ec"],  # type: ignore[arg-type]
        figures["alkalinity"],  # type: ignore[arg-type]
    )
