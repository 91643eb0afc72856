"""'What can I say about reminders?', 'what is EC?': what somebody wants to have explained.

Found apart from all else, and only where nothing else stands in the message, so that no dose and
no order can be lost to it.
"""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING

from grammar.lexicon import Entry
from grammar.order import Order

if TYPE_CHECKING:
    from grammar.orders.facts import Facts


def guiding(facts: Facts) -> Order | None:
    """'help plants', 'what can I say about water', 'what is EC', 'explain the flush'."""
    begins = facts.words.lexicon.guides["guide"].next
    if not any(raw.text in begins for raw in facts.raws):
        return None
    found = list(_entries(facts))
    asked = {entry.value for entry in found if entry.type == "GUIDE"}
    of = [entry for entry in found if entry.type != "GUIDE"]
    if asked == {"explain_that"} and not of:
        return Order("explain")
    terms = tuple(dict.fromkeys(entry.value for entry in of if entry.type == "TERM"))
    if len(terms) == 2 and len(set(of)) == 2 and "explain" in asked:  # 'ec and ppm'
        return Order("explain", text=" ".join(terms))
    if not of or len(set(of)) > 1 or not asked:
        return None
    if of[0].type == "TOPIC":
        return Order("help", text=of[0].value) if asked == {"about"} else None
    return Order("explain", text=of[0].value) if of[0].type == "TERM" else None


def _entries(facts: Facts) -> Iterator[Entry]:
    """What guides stand in the message; an entry of no kind where anything else does."""
    index, said = 0, ""
    while index < len(facts.raws):
        wanted = _WANTED.get(said, ("guide", "term"))
        found = ((section, *_longest(facts, index, section)) for section in wanted)
        section, value, size = next((f for f in found if f[2]), ("", "", 1))
        if section == "guide":
            said = value
        if section or not facts.is_filler(index):
            yield Entry(section.upper(), value)
        index += size


#: What is looked for behind a word that asks for it.
_WANTED = {"explain": ("term", "guide"), "about": ("topic", "term", "guide")}


def _longest(facts: Facts, index: int, section: str) -> tuple[str, int]:
    """The value of the longest phrase of a section here, and of how many words it is."""
    value, size = "", 0
    node = facts.words.lexicon.guides[section]
    for offset in range(index, len(facts.raws)):
        following = node.next.get(facts.raws[offset].text)
        if following is None:
            break
        node = following
        if node.entry is not None:
            value, size = node.entry.value, offset - index + 1
    return value, size
