"""What a label says beyond its numbers: nitrogen forms, density, price and pack."""

from __future__ import annotations

from grammar.order import LabelSaid
from grammar.words.marks import Mark, Words
from grammar.words.tokens import UNITS

#: Words that may stand between a figure and what it is of, and how many.
_BETWEEN = frozenset({"PERCENT", "OF", "FOR", "FILLER", "ARTICLE", "IN"})
_NEAR = 4


def label(words: Words, money: str = "") -> tuple[LabelSaid, frozenset[int]]:
    """Nitrogen forms, density, price and pack, and the words that say them.

    With `money`, the currency of a list, 'costs 9' is a price without one.
    """
    nitrogen: dict[str, float] = {}
    values: dict[str, float] = {}
    taken: set[int] = set()
    for mark in words.found:
        if mark.type == "LABEL_PART" and (mark.value.startswith("n_") or mark.value == "density"):
            at, value = _beside(words, mark, taken)
            if value is not None:
                taken |= {*at, *range(mark.at, mark.end)}
                (nitrogen if mark.value.startswith("n_") else values)[mark.value] = value
        elif mark.type == "CURRENCY":
            at, value = _beside(words, mark, taken, sign=True)
            if value is not None:
                taken |= {*at, *range(mark.at, mark.end)}
                values["price"] = value
    currency = next((m.value for m in words.found if m.type == "CURRENCY"), None)
    bare = next((m for m in words.found if (m.type, m.value) == ("LABEL_PART", "price")), None)
    if money and currency is None and bare is not None:
        at, value = _beside(words, bare, taken)
        if value is not None:
            taken |= {*at, *range(bare.at, bare.end)}
            values["price"], currency = value, money
    return LabelSaid(
        nitrogen=nitrogen,
        density_kg_l=values.get("density"),
        price=values.get("price"),
        currency=currency if "price" in values else None,
    ), frozenset(taken)


def _beside(
    words: Words, mark: Mark, taken: set[int], *, sign: bool = False
) -> tuple[list[int], float | None]:
    """The number next to a mark: '9 % nitrate', 'nitrate 9', 'density is 1.2', '12 €', '$ 12'."""
    before = mark.at - 1
    used = [before]
    while words.type_at(before) in _BETWEEN and mark.at - before <= _NEAR:
        before -= 1
        used.append(before)
    after = mark.end
    behind = [after]
    while words.type_at(after) in _BETWEEN - {"PERCENT"} and after - mark.end < _NEAR:
        after += 1
        behind.append(after)
    percent = after + 1
    if words.type_at(percent) == "PERCENT":
        behind.append(percent)
    order = ((behind, after), (used, before))
    percent_before = words.type_at(mark.at - 1) == "PERCENT"
    if not words.raws[mark.at].after_break and (sign or percent_before):
        order = ((used, before), (behind, after))
    for places, at in order:
        share = mark.value.startswith("n_")
        measured = words.type_at(at + 1) in UNITS - {"PERCENT"}
        if share and measured and not words.raws[at + 1].after_break:
            continue  # 'nitrate of 1 g/l' is no percentage
        if 0 <= at < len(words.raws) and at not in taken and words.raws[at].kind == "number":
            text = words.raws[at].text.replace(",", ".")
            if text.count(".") <= 1:
                return places, float(text)
    return [], None
