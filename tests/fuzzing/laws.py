"""What holds for every reading and every answer, whatever was said."""

from __future__ import annotations

import dataclasses
import json
import math
from collections.abc import Iterator, Mapping
from typing import Any

from bot.conversation.answer import Answer
from bot.dosing.plants import of_name
from bot.dosing.strength import CEILINGS
from grammar import Reading

#: Of a reading: none of them is ever below nothing.
AMOUNTS = (
    "volume_l", "analysis", "extras", "strength", "count", "label_rate", "target_n_mg_l",
    "target_ec_ms_cm", "scale_step_g", "pot_cm", "weight_g", "water",
)  # fmt: skip
#: Slots that take a word, in whatever language.
WORDED = ("form", "regime", "medium", "season", "growth", "genera", "water", "label_rate")
#: Fed this seldom, the ceilings in mg/L do not hold.
SELDOM = ("fortnightly", "monthly")


class Broken(AssertionError):
    """A law does not hold."""


def hold(law: str, holds: object, *shown: object) -> None:
    """Raise where a law does not hold."""
    if not holds:
        raise Broken(f"{law}: {', '.join(map(repr, shown))}")


def numbers(value: object, where: str = "") -> Iterator[tuple[str, float]]:
    """Every number in a value, with where it stands."""
    if isinstance(value, bool) or value is None or isinstance(value, str):
        return
    if isinstance(value, int | float):
        yield where, value
    elif dataclasses.is_dataclass(value) and not isinstance(value, type):
        for part in dataclasses.fields(value):
            yield from numbers(getattr(value, part.name), f"{where}.{part.name}")
    elif isinstance(value, Mapping):
        for key, one in value.items():
            yield from numbers(one, f"{where}.{key}")
    elif isinstance(value, tuple | list):
        for one in value:
            yield from numbers(one, where)


def of_reading(reading: Reading, text: str) -> None:
    """What holds for everything that is read."""
    for where, number in numbers(reading):
        hold("every number is finite", math.isfinite(number), where, number)
    for slot in AMOUNTS:
        for where, number in numbers(getattr(reading, slot), slot):
            hold("no amount is below nothing", number >= 0, where, number)
    if not any(problem.code == "too_long" for problem in reading.problems):
        hold("the text is kept", reading.text == text)
    flat = " ".join(text.split())
    shown = [("read_as", r.text) for r in reading.read_as]
    shown += [("unknown", u.text) for u in reading.unknown]
    shown += [("conflict", t) for c in reading.conflicts for t in c.texts]
    for what, said in shown:
        # What an order leaves over is shown together, whatever stood between.
        parts = said.split() if reading.order is not None else [" ".join(said.split())]
        hold("what is shown was said", all(part in flat for part in parts), what, said)
    if not any(map(str.isalpha, text)):
        said_of = {slot: getattr(reading, slot) for slot in WORDED if getattr(reading, slot)}
        hold("nothing is read that takes a word where there is none", not said_of, said_of)


def of_answer(answer: Answer) -> None:
    """What holds for everything that is answered."""
    hold("there is a reply", answer.reply.strip())
    hold("no fault of ours", answer.kind != "fault", answer.reply)
    hold("nothing steers a screen", not any(map(_steers, answer.reply)), answer.reply)
    read = json.loads(answer.as_json(), parse_constant=_no_number)
    hold("the JSON says the same", read["reply"] == answer.reply)
    hold("a dose is of the kind dose", (answer.dose is None) or answer.kind == "dose", answer.kind)
    if answer.dose is not None:
        of_dose(answer)


def of_dose(answer: Answer) -> None:
    """What holds for everything that is to be weighed or measured."""
    dose, said = answer.dose, answer.understood
    assert dose is not None
    hold("an amount is something", 0 < dose.amount < math.inf, dose.amount)
    hold("a share of full strength is above nothing", 0 < dose.strength < math.inf, dose.strength)
    if said.volume_l is not None:
        hold("litres are something", said.volume_l > 0, said.volume_l)
    product = math.prod(step.factor for step in answer.why)
    close = math.isclose(product, dose.strength, rel_tol=1e-6)
    hold("the steps make the strength", close, product, dose.strength)
    label = said.label_rate
    if label is not None and label.unit == dose.unit:
        most = label.per_litre * (1 + 1e-9)
        hold("never over the label", dose.per_litre <= most, dose.per_litre, label)
    least = min(dose.elements_mg_l.values(), default=0.0)
    hold("no nutrient is below nothing", least >= 0, dose.elements_mg_l)
    n_mg_l = dose.elements_mg_l.get("N", 0.0)
    for name in said.genera:
        plant = of_name(name)
        if plant is not None and said.regime not in SELDOM:
            most = CEILINGS[plant.feeding_class].n_mg_l
            hold("never over the ceiling", n_mg_l <= most * (1 + 1e-9), name, n_mg_l, most)
    hold("cautions come along", answer.cautions)


def _steers(character: str) -> bool:
    code = ord(character)
    return (code < 32 and character != "\n") or 127 <= code < 160 or 0xD800 <= code < 0xE000


def _no_number(constant: str) -> Any:
    raise Broken(f"no number: {constant}")
