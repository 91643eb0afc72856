"""One message looked at for what it wants of the records: cues, names, places, and the rest."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from functools import cached_property
from typing import TypeAlias

from grammar.folding import plain
from grammar.lexicon import Entry, phrases_from, settings_of, words_under
from grammar.order import LabelSaid, MeterSaid, Rhythm, Target, When
from grammar.orders import agreeing
from grammar.orders.labels import label
from grammar.orders.measured import found_in, meter, report
from grammar.reading import Reading
from grammar.rhythms.days import when
from grammar.rhythms.reading import said as rhythm_of
from grammar.words.marks import Mark, Words, phrases, written
from grammar.words.scan import Folded, Raw, Token, typed
from grammar.words.tokens import UNITS

Understand: TypeAlias = Callable[[list[Raw]], Reading]

#: Words of an order that also say something of a dose stay in the rest that is read.
_ALSO_READ = frozenset({
    "WATER", "WATER_WORD", "OTHER_WATER", "SCALE", "FORM", "MEDIUM", "EC", "GENUS", "POT",
    "GROWTH", "STRENGTH", "EXACT", "SPOON",
})  # fmt: skip
#: Orders that are everyday words: they stay in the rest ('is in bloom').
_ALSO_SAID = frozenset({"be", "takes", "them", "becomes"})
_NAME_ENDS = frozenset({"IN", "FOR", "AND", "MEDIUM", "GENUS", "TO"})
_ENDS_A_NAME = frozenset({
    "add", "move", "fed", "clear", "flush", "repot", "lose", "gave", "takes", "be", "default",
    "relative",
})  # fmt: skip
#: Beside these a word for having says when, and owns nothing: 'ich habe die Vanda gedüngt'.
_WAS_DONE = frozenset({"fed", "clear", "flush", "repot", "moved", "lose", "gave", "done"})
#: Words that carry nothing beside an order.
_SMALL = frozenset({"FILLER", "AND", "ARTICLE", "TO", "OF", "FOR", "PER"})
_LONGEST_NAME = 6
#: A growth state, a medium and the like say nothing of a dose by themselves.
_ASKS_DOSE = ("volume_l", "analysis", "strength", "target_n_mg_l", "target_ec_ms_cm", "label_rate")


@dataclass(frozen=True)
class Facts:
    """One message looked at for orders: its words, the phrases found, and the rest as read."""

    words: Words
    understand: Understand
    money: str = ""  # the currency of a list of prices that these words stand in
    spares: Target | None = None  # who got none of what these words tell

    @property
    def folded(self) -> Folded:
        """The message."""
        return self.words.folded

    @property
    def raws(self) -> list[Raw]:
        """Its words, numbers and signs."""
        return self.words.raws

    @property
    def found(self) -> list[Mark]:
        """The phrases of the records in it."""
        return self.words.found

    def part(self, span: range, money: str = "") -> Facts:
        """Some of the words looked at by themselves."""
        found = [
            m._replace(at=m.at - span.start)
            for m in self.found
            if m.at >= span.start and m.end <= span.stop
        ]
        raws = self.raws[span.start : span.stop]
        words = Words(self.folded, raws, self.words.lexicon, found)
        return Facts(words, self.understand, money)

    def cut(self, span: range) -> Facts:
        """The message without some of its words."""
        size = len(span)
        found = [
            m if m.end <= span.start else m._replace(at=m.at - size)
            for m in self.found
            if m.end <= span.start or m.at >= span.stop
        ]
        raws = self.raws[: span.start] + self.raws[span.stop :]
        words = Words(self.folded, raws, self.words.lexicon, found)
        return Facts(words, self.understand, self.money)

    # --- phrases ---

    @cached_property
    def cues(self) -> frozenset[str]:
        """Values of the order phrases."""
        values = {v for m in self.found if m.type == "ORDER" for v in m.value.split()}
        if "moved" in values:
            values.add("move")
        if "having" in values and values.isdisjoint(_WAS_DONE):
            values.add("have")
        if "received" in values and "having" not in values and self._had_received:
            values.add("gave")
        return frozenset(values)

    @property
    def _had_received(self) -> bool:
        """Whether 'received' closes a perfect: 'Ruby hat die blaue Dose bekommen'."""
        auxiliaries = settings_of(self.words.lexicon.language).get("perfect", ())
        received = next(m for m in self.found if "received" in m.value.split())
        return any(raw.text in auxiliaries for raw in self.raws[: received.at])

    def has(self, *values: str) -> bool:
        """Whether one of these order phrases fell."""
        return not self.cues.isdisjoint(values)

    @cached_property
    def harms(self) -> list[Mark]:
        """What is said of harm: found apart from the orders; no name on record says any."""
        found = phrases(self.raws, self.words.lexicon.harms)
        return [m for m in found if self.named.isdisjoint(range(m.at, m.end))]

    def says_any(self, key: str) -> bool:
        """Whether one of the phrases fell that the settings of the language list."""
        phrases = phrases_from(self.words.lexicon.language, key)
        raws = self.words.raws
        return any(raw.text in phrases and self.phrase_at(i, key) for i, raw in enumerate(raws))

    def phrase_at(self, index: int, key: str) -> int:
        """How many words the longest of the phrases takes that stands here; 0 for none."""
        if index >= len(self.words.raws):
            return 0
        phrases = phrases_from(self.words.lexicon.language, key)
        found = phrases.get(self.words.raws[index].text, ())
        return next((len(phrase) for phrase in found if self.stands_at(index, phrase)), 0)

    def starts_any(self, key: str) -> bool:
        """Whether the message begins with one of the phrases that the settings list."""
        return bool(self.words.raws) and self.phrase_at(0, key) > 0

    def stands_at(self, index: int, phrase: tuple[str, ...]) -> bool:
        """Whether the words of a phrase stand here."""
        raws = self.words.raws
        if index >= len(raws) or raws[index].text != phrase[0]:
            return False
        return tuple(raw.text for raw in raws[index : index + len(phrase)]) == phrase

    def parted(self, key: str) -> bool:
        """Whether a phrase in two parts fell, with plants and no more between: 'gave Ruby away'."""
        between = set(self.named) | {i for i, _ in self.genus_places}
        for phrase in settings_of(self.words.lexicon.language).get(key, ()):
            head, tail = (tuple(plain(part).split()) for part in phrase.split("|"))
            size = len(head)
            heads = (i for i in range(len(self.raws)) if self.stands_at(i, head))
            for start in (i + size for i in heads):
                for end in range(start, len(self.raws)):
                    if self.stands_at(end, tail):
                        return True
                    counted = self.raws[end].kind == "number" or self.words.type_at(end) == "NUMBER"
                    if not (end in between or counted or self.is_filler(end)):
                        break
        return False

    @cached_property
    def _firsts(self) -> dict[str, int]:
        """Which of the phrases found is the first of each order."""
        firsts: dict[str, int] = {}
        for place, mark in enumerate(self.found):
            if mark.type == "ORDER":
                for value in mark.value.split():
                    firsts.setdefault(value, place)
        return firsts

    def first(self, *values: str) -> Mark | None:
        """The first of these order phrases; 'muévelas' is 'move' and 'them' in one."""
        places = [self._firsts[value] for value in values if value in self._firsts]
        return self.found[min(places)] if places else None

    def starts(self, *values: str) -> bool:
        """Whether the message begins with one of these order phrases."""
        mark = self.first(*values)
        if mark is None:
            return False
        yes = {i for m in self.found if m.value in ("yes", "no") for i in range(m.at, m.end)}
        return all(i in yes or self.is_filler(i) for i in range(mark.at))

    @cached_property
    def question(self) -> bool:
        """Whether it asks for something."""
        told = self.has("fed", "flush", "gave", "clear") or self.been
        worded = self.has("dose_word") and not told
        return "?" in self.folded.text or self.has("dose") or worded or self.asks_first

    @cached_property
    def asks_first(self) -> bool:
        """Whether it begins as a question does: 'are they dead', typed without a sign."""
        begins = settings_of(self.words.lexicon.language).get("asking", ())
        index = 0
        while index < len(self.raws) and self.words.cue_at(index) in ("yes", "no"):
            index += 1  # 'no, is it dead'
        cue = next((m for m in self.found if m.type == "ORDER" and m.at == index), None)
        alone = cue is None or cue.size == 1
        if index >= len(self.raws) or not alone or self.raws[index].text not in begins:
            return False
        index += 1
        genera = {t.raws[0].start for t in self.tokens if t.type in ("GENUS", "PLANTS")}
        while index < len(self.raws):
            if index in self.named or self.raws[index].start in genera:
                return True
            if "them" in self.words.cue_at(index).split():
                return True
            if self.words.type_at(index) not in ("ARTICLE", "FILLER"):
                return False
            index += 1
        return False

    @property
    def been(self) -> bool:
        """Whether a day was said that has been: 'gestern'."""
        day = self.when[0]
        return day is not None and day.kind == "day" and day.value > 0

    def is_and(self, index: int) -> bool:
        """Whether this word is 'and'."""
        entry = self._entry(index)
        return entry is not None and entry.type == "AND"

    @cached_property
    def asks_something_else(self) -> bool:
        """Whether an order of its own fell that is no follow-up."""
        return self.has("plan", "history", "fed", "flush", "clear", "add", "choose", "undo")

    @cached_property
    def alone(self) -> bool:
        """Whether nothing but order phrases and filler stands in it."""
        held = {i for m in self.found for i in range(m.at, m.end)}
        return all(i in held or self.is_filler(i) for i in range(len(self.raws)))

    @cached_property
    def only_a_day(self) -> bool:
        """Whether nothing but a day stands in it: 'tomorrow?', 'and on sunday?'."""
        if self.has("fed", "clear", "flush", "repot"):
            return False  # 'heute gedüngt'
        asking = [m for m in self.found if m.value in ("and_for", "them")]
        held = set(self.when[1]) | {i for m in asking for i in range(m.at, m.end)}
        return bool(held) and all(i in held or self.is_filler(i) for i in range(len(self.raws)))

    def _entry(self, index: int) -> Entry | None:
        return self.words.lexicon.words.get(self.raws[index].text)

    def is_filler(self, index: int) -> bool:
        """Whether this word carries nothing."""
        entry = self._entry(index)
        return entry is not None and entry.type in _SMALL

    # --- names, places, days ---

    @cached_property
    def new_name(self) -> tuple[str, frozenset[int]]:
        """What something shall be called, and the words that say so."""
        cue = self.first("naming")
        renaming = self.first("rename")
        if cue is not None and cue is renaming:  # 'nenn die Vanda Blau', 'nenn die Ruby'
            found = self._name_after_target(cue)
            return found if found[0] else self._name_from(cue.end)
        if cue is not None:
            return self._name_from(cue.end)
        if renaming is None:
            return "", frozenset()
        for index in range(renaming.end, len(self.raws)):
            entry = self._entry(index)
            towards = entry is not None and (entry.type == "TO" or entry.value == "onto")
            if towards or self.words.cue_at(index) == "becomes":
                if self._names_before(renaming.end, index):
                    return self._name_from(renaming.end, index)
                return self._name_from(index + 1)
        return self._name_after_target(renaming)

    def _names_before(self, start: int, end: int) -> bool:
        """Whether a name stands before the plant it is for: 'llama Azul a la vanda'."""
        named = {m.at for m in self.found if m.type == "PLANT"} | {i for i, _ in self.genus_places}
        within = named & set(range(start, end))
        return start < end and not within and any(i > end for i in named)

    def _name_after_target(self, cue: Mark) -> tuple[str, frozenset[int]]:
        """'call the vanda Blue', 'Ruby is now called Rubin', 'Ruby in Rubin umbenennen'."""
        if cue.end >= len(self.raws):  # the verb stands last
            before = [m.end for m in self.found if m.type == "PLANT" and m.end < cue.at]
            before += [i + 1 for i, _ in self.genus_places if i < cue.at - 1]
            return (
                self._name_from(self._behind_in(max(before)), cue.at)
                if before
                else ("", frozenset())
            )
        end = max(
            [m.end for m in self.found if m.type == "PLANT" and m.at >= cue.end]
            + [i + 1 for i, _ in self.genus_places if i >= cue.end],
            default=cue.end,
        )
        return self._name_from(self._behind_in(end))

    def _behind_in(self, index: int) -> int:
        """The place behind an 'in' that leads to a new name: 'benenne Ruby in Rubin um'."""
        entry = self._entry(index) if index < len(self.raws) else None
        leads = entry is not None and entry.type in ("IN", "TO") and index + 1 < len(self.raws)
        return index + 1 if leads else index

    def _name_from(self, start: int, end: int | None = None) -> tuple[str, frozenset[int]]:
        taken: list[int] = []
        quoted = False
        last = len(self.raws) if end is None else end
        for index in range(start, min(last, start + _LONGEST_NAME + 2)):
            raw = self.raws[index]
            if raw.text == '"':
                taken.append(index)
                if quoted:
                    break
                quoted = True
                continue
            if raw.kind == "sign" and not taken:
                continue  # 'rename Ruby -> Garnet'
            entry = self._entry(index)
            ends = entry is not None and entry.type in _NAME_ENDS
            ends = ends or index in self._verbs
            if taken and not quoted and (ends or (raw.after_break and not raw.dotted)):
                break
            if raw.after_break and index > start and not quoted:
                break
            if taken and not quoted and (self._closes(index) or self._sizes(index)):
                break
            taken.append(index)
        kept = [i for i in taken if self.raws[i].text != '"'][:_LONGEST_NAME]
        return written(self.folded, [self.raws[i] for i in kept]), frozenset(taken)

    def _sizes(self, index: int) -> bool:
        """Whether the size of a pot begins here: 'call it Max 20 cm pot'."""
        if self.raws[index].kind != "number":
            potted = self.words.type_at(index) == "POT" and index + 2 < len(self.raws)
            return potted and self.raws[index + 1].kind == "number" and self._sizes(index + 1)
        return self.words.type_at(index + 1) in ("LENGTH_UNIT", "POT")

    def _closes(self, index: int) -> bool:
        """Whether the part of a verb stands here that ends its sentence: 'trag ... ein'."""
        ends = index + 1 >= len(self.raws) or self.raws[index + 1].after_break
        closing = settings_of(self.words.lexicon.language).get("closing", ())
        return ends and self.raws[index].text in closing

    @cached_property
    def _verbs(self) -> frozenset[int]:
        """Where an order begins that no name holds: 'a phal called Dot died'."""
        orders = (m for m in self.found if m.type == "ORDER")
        return frozenset(m.at for m in orders if not _ENDS_A_NAME.isdisjoint(m.value.split()))

    @cached_property
    def named(self) -> frozenset[int]:
        """The words that are names on record."""
        kinds = ("PLANT", "GONE", "PRODUCT", "KNOWN_PLACE")
        marked = (m for m in self.found if m.type in kinds)
        return frozenset(i for m in marked for i in range(m.at, m.end))

    @cached_property
    def gone(self) -> tuple[str, ...]:
        """The names of plants that are no longer there."""
        held = self.new_name[1]
        named = (m.value for m in self.found if m.type == "GONE" and m.at not in held)
        return tuple(dict.fromkeys(named))

    @cached_property
    def place_runs(self) -> list[tuple[str, frozenset[int]]]:
        """The places that were said, with the words that say each."""
        held = self.new_name[1]
        fractions = {r.start for t in self.tokens if t.type == "FRACTION" for r in t.raws}
        spots = [  # with a place called 'cuarto', 'un cuarto' is still a quarter
            m
            for m in self.found
            if m.type in ("PLACE", "KNOWN_PLACE")
            and held.isdisjoint(range(m.at, m.end))
            and not self._is_scale(m.end)
            and self.raws[m.at].start not in fractions
        ]
        runs: list[list[Mark]] = []
        for mark in spots:
            joins = runs and self._joined(runs[-1][-1].end, mark.at)
            if joins:
                runs[-1].append(mark)
            else:
                runs.append([mark])
        out = []
        for run in runs:
            if not any(m.type == "KNOWN_PLACE" or agreeing.kind(m) == "noun" for m in run):
                continue
            numbered = 1 if self._numbers_a_place(run[-1].end) else 0
            indices = range(run[0].at, run[-1].end + numbered)
            exact = next((m.value for m in run if m.type == "KNOWN_PLACE"), "")
            whole = agreeing.place(self.words, run, indices)
            name = exact if len(run) == 1 and exact and not numbered else whole
            out.append((name, frozenset(indices)))
        return out

    def _joined(self, end: int, start: int) -> bool:
        """Whether two words of a place are one: 'kitchen window', 'ventana de la cocina'."""
        between = range(end, start)
        small = all(self.words.type_at(i) in ("OF", "ARTICLE") for i in between)
        of = not between or self.words.type_at(end) == "OF"
        if len(between) == 1 and self._is_at(end):  # 'parapet w kuchni'
            small = of = self._is_noun(start)
        return small and of and not any(self.raws[i].after_break for i in (*between, start))

    def _is_at(self, index: int) -> bool:
        """Whether this word says where in a place another is ('w')."""
        entry = self._entry(index)
        return entry is not None and (entry.type, entry.value) == ("IN", "at")

    def _is_noun(self, index: int) -> bool:
        """Whether the noun of a place stands here."""
        nouns = (m for m in self.found if m.type == "PLACE" and agreeing.kind(m) == "noun")
        return any(m.at == index for m in nouns)

    def _is_scale(self, index: int) -> bool:
        """Whether a scale follows: a kitchen scale is no kitchen."""
        entry = self._entry(index) if index < len(self.raws) else None
        return entry is not None and entry.type == "SCALE"

    def _numbers_a_place(self, index: int) -> bool:
        """Whether the number here belongs to the place before it: 'bench 3', but not '3 cm'."""
        if index >= len(self.raws) or self.raws[index].kind != "number":
            return False
        if self.raws[index].after_break or not self.raws[index].text.isdecimal():
            return False
        entry = self._entry(index + 1) if index + 1 < len(self.raws) else None
        behind = index + 1 >= len(self.raws) or self.raws[index + 1].after_break
        return behind or entry is None or entry.type not in UNITS | {"GENUS", "POT", "PLANTS"}

    @property
    def place(self) -> str | None:
        """The last place that was said: where something is or goes."""
        return self.place_runs[-1][0] if self.place_runs else None

    @cached_property
    def when(self) -> tuple[When | None, frozenset[int]]:
        """The day or stretch that was said, with its words."""
        return when(self.words)

    @cached_property
    def tokens(self) -> list[Token]:
        """The words typed by the vocabulary of a dose."""
        return typed(self.raws, self.folded, self.words.lexicon)

    @cached_property
    def genus_places(self) -> list[tuple[int, str]]:
        """Where each kind of plant is named; the place is that of its last word."""
        starts = {raw.start: i for i, raw in enumerate(self.raws)}
        held = self.new_name[1] if not self.first("rename") else frozenset()
        return [(starts[t.raws[-1].start], t.value) for t in self.tokens
                if t.type == "GENUS" and starts[t.raws[0].start] not in held]  # fmt: skip

    @cached_property
    def newest(self) -> frozenset[int]:
        """The words for the feed that was put on record last: '2 l of the new one'."""
        for index in range(len(self.raws)):
            if self.words.type_at(index - 1) == "FOR":
                continue  # 'for the new one': a plant
            size = self.phrase_at(index, "newest")
            alone = self.phrase_at(index, "newest_bare")
            if size or (alone and self._stands_alone(index + alone)):
                return frozenset(range(index, index + max(size, alone)))
        return frozenset()

    def _stands_alone(self, index: int) -> bool:
        """Whether no noun follows: 'der neue für 2 l', and not 'der neue Trieb'."""
        if index >= len(self.raws) or self.raws[index].after_break:
            return True
        cue = self.words.cue_at(index)
        counts = ("NUMBER", "FRACTION", "FORM", "FOR", "IN", "TO", "AND")
        small = self.raws[index].kind == "number" or self.words.type_at(index) in counts
        return small or bool({"dose", "default", "use"} & set(cue.split()))

    # --- the rest ---

    @cached_property
    def held(self) -> frozenset[int]:
        """The words that are not read for figures."""
        out = set(self.new_name[1]) | set(self.when[1])
        for _, run in self.place_runs:
            out |= run
        for mark in self.found:
            indices = range(mark.at, mark.end)
            if mark.type in ("PLANT", "GONE", "PRODUCT", "TRAIT", "CURRENCY"):
                out |= set(indices)
            elif mark.type in ("ORDER", "LABEL_PART") and not _ALSO_SAID.issuperset(
                mark.value.split()
            ):
                out |= {i for i in indices if not self._also_read(i)}
        return frozenset(out)

    def _also_read(self, index: int) -> bool:
        entry = self._entry(index)
        return (entry is not None and entry.type in _ALSO_READ) or index in self._growing

    @cached_property
    def _growing(self) -> frozenset[int]:
        """The words of a phrase for growth or a medium that an order has a part of: 'no medium'."""
        held = {i for m in self.found if m.type == "ORDER" for i in range(m.at, m.end)}
        starts = {raw.start: i for i, raw in enumerate(self.raws)}
        phrases = (
            [starts[r.start] for r in t.raws] for t in self.tokens if t.type in ("GROWTH", "MEDIUM")
        )
        return frozenset(i for p in phrases if not held.issuperset(p) for i in p)

    def read_rest(
        self,
        within: range | None = None,
        without: frozenset[int] = frozenset(),
        kept: frozenset[int] = frozenset(),
    ) -> Reading:
        """The figures of the words that no order, name, place or day holds, and of `kept`."""
        span = within if within is not None else range(len(self.raws))
        left: list[Raw] = []
        broken = False
        out = (self.held | without) - kept
        for index in span:
            raw = self.raws[index]
            broken = broken or raw.after_break  # also before a word that is left out
            if index not in out:
                left.append(raw._replace(after_break=True) if broken else raw)
                broken = False
        return self.understand(left)

    @cached_property
    def rest(self) -> Reading:
        """The figures of the whole message."""
        return self.read_rest()

    @cached_property
    def label(self) -> tuple[LabelSaid, frozenset[int]]:
        """What a label says beyond its numbers, with the words that say it."""
        return label(self.words, self.money)

    @cached_property
    def label_rest(self) -> Reading:
        """The figures that are left beside `label`."""
        return self.read_rest(without=self.label[1]) if self.label[1] else self.rest

    # --- reminders ---

    @cached_property
    def rhythm(self) -> tuple[Rhythm | None, frozenset[int]]:
        """How often and when something is wanted, with the words that say it."""
        return rhythm_of(self.words)

    @cached_property
    def tasks(self) -> list[Mark]:
        """What a reminder can be for, where it is said."""
        held = self.named
        found = phrases(self.raws, self.words.lexicon.rhythms)
        tasks = [m for m in found if m.type == "TASK" and held.isdisjoint(range(m.at, m.end))]
        out: list[Mark] = []
        for task in tasks:
            last = out[-1] if out else None
            between = range(last.end, task.at) if last is not None else range(0)
            if last is not None and last.value == "look" and all(map(self.is_filler, between)):
                # 'about feeding' is more than 'about'
                task = Mark(task.type, task.value, last.at, task.end - last.at)
                out.pop()
            out.append(task)
        return out

    # --- readings and waters ---

    @cached_property
    def measured(self) -> list[Mark]:
        """The phrases of readings and waters."""
        held = self.named
        return [m for m in found_in(self.words) if held.isdisjoint(range(m.at, m.end))]

    def says(self, type_: str, *values: str) -> bool:
        """Whether one of these phrases of readings and waters fell."""
        return any(m.type == type_ and m.value in values for m in self.measured)

    def begins(self, type_: str, *values: str) -> bool:
        """Whether the message begins with one of these phrases of readings and waters."""
        first = next((m for m in self.measured if m.type == type_ and m.value in values), None)
        return first is not None and all(self.is_filler(i) for i in range(first.at))

    @cached_property
    def meter(self) -> tuple[MeterSaid, frozenset[int]]:
        """What a meter shows, with the words that say it."""
        return meter(self.words, self.tokens, self.measured)

    @cached_property
    def meter_rest(self) -> Reading:
        """The figures that are left beside `meter`."""
        return self.read_rest(without=self.meter[1])

    @cached_property
    def report(self) -> tuple[dict[str, float], frozenset[int], bool]:
        """Ions of a water report [mg/L], their words, and whether another unit was meant."""
        return report(self.words)

    @cached_property
    def report_rest(self) -> Reading:
        """The figures that are left beside `report`."""
        return self.read_rest(without=self.report[1])

    @cached_property
    def asks_dose(self) -> bool:
        """Whether the rest says what only a dose needs."""
        return any(getattr(self.rest, slot) is not None for slot in _ASKS_DOSE)

    def asks_dose_beside(self, names: frozenset[int]) -> bool:
        """As `asks_dose`, where these words are names of plants."""
        if not self.asks_dose or not names:
            return self.asks_dose
        rest = self.read_rest(without=names)
        return any(getattr(rest, slot) is not None for slot in _ASKS_DOSE)

    @cached_property
    def only_a_volume(self) -> bool:
        """Whether a volume is all that the rest says of a dose: 'watered Ruby, 2 l'."""
        others = (getattr(self.rest, slot) for slot in _ASKS_DOSE if slot != "volume_l")
        return self.rest.volume_l is not None and not any(v is not None for v in others)

    # --- which plants ---

    @cached_property
    def target(self) -> Target:
        """The plants that are meant."""
        excepted = self.first("except")
        cut = excepted.at if excepted is not None else len(self.raws)
        standing, without = self._places_about(cut)
        held = self.new_name[1]
        said = [(m.at, m.value) for m in self.found if m.type == "PLANT" and m.at not in held]
        names = said[1:] if self._puts_right(said) else said
        passed = self.spared | self._denied(said)
        genera = [(i, v) for i, v in self.genus_places if i not in passed | self._of_a_name]
        genus = genera[0][1] if genera else None
        others = genera or standing or any(i not in passed for i, _ in names)
        spares = bool(passed) and not others  # 'no feed for Mia, 5 l'
        traits = [
            (m.at, agreeing.trait(self.words, m, genus))
            for m in self.found
            if m.at not in held
            and not self.of_a_pot(m)
            and (m.type == "TRAIT" or (m.type == "PLACE" and agreeing.kind(m) == "mark"
                 and not any(m.at in run for _, run in self.place_runs)))
        ]  # fmt: skip
        unique = dict.fromkeys
        medium = self.rest.medium if self._excepts_medium(cut) else None
        return Target(
            names=tuple(unique(v for i, v in names if i < cut and i not in passed)),
            genera=tuple(unique(v for i, v in genera if i < cut)),
            traits=tuple(v for i, v in traits if i < cut),
            place=standing[-1] if standing else None,
            more_places=tuple(unique(standing[:-1])),
            medium=None if medium else self.rest.medium,
            everything=self.has("everything", "both") or self._all_but(cut) or spares,
            again=self.has("them"),
            not_names=tuple(unique(v for i, v in names if i > cut or i in passed)),
            not_genera=tuple(
                unique(
                    v
                    for i, v in self.genus_places
                    if (i > cut or i in passed) and i not in self._of_a_name
                )
            ),
            not_places=tuple(unique(without)),
            not_traits=tuple(v for i, v in traits if i > cut),
            not_media=(medium,) if medium else (),
        )

    def of_a_pot(self, mark: Mark) -> bool:
        """Whether a trait is that of a pot: 'in a big pot', 'en tiesto grande'."""
        if mark.end < len(self.raws) and self.words.type_at(mark.end) == "POT":
            return not self.raws[mark.end].after_break
        entry = self._entry(mark.at - 1) if mark.at else None
        behind = entry is not None and (entry.type, entry.value) == ("POT", "before")
        return behind and not self.raws[mark.at].after_break

    def _no_alone(self, index: int) -> bool:
        """Whether a 'no' stands between commas: 'watered Ruby, no, Hugo'."""
        alone = self.raws[index].after_break and self.raws[index + 1].after_break
        return alone and "no" in self.words.cue_at(index).split()

    def _denied(self, names: list[tuple[int, str]]) -> frozenset[int]:
        """Where plants are only said not to be those: 'borra a Lola, no a Hugo'."""
        denials = words_under(self.words.lexicon.language, "denials")
        plants = sorted({i for i, _ in (*names, *self.genus_places)})
        denied: set[int] = set()
        for at in plants[1:]:
            index = at - 1
            while index > 0 and self.words.type_at(index) in ("TO", "ARTICLE", "IN", "FOR", "OF"):
                if self.raws[index + 1].after_break:
                    break
                index -= 1
            together = not self.raws[index + 1].after_break  # 'no, a Hugo' puts right
            no = self.raws[index].text in denials or self.words.type_at(index) == "NOT"
            if together and no and index > plants[0]:
                denied.add(at)
        return frozenset(denied)

    def _puts_right(self, names: list[tuple[int, str]]) -> bool:
        """Whether the second of two names is meant: 'watered Ruby, sorry, Hugo'."""
        if len(names) != 2 or names[0][1] == names[1][1]:
            return False
        between = range(names[0][0] + 1, names[1][0])
        sorry = words_under(self.words.lexicon.language, "sorry")
        starts = {self.raws[i].start for i in between}
        meant = any(
            t.start in starts and (t.type, t.value) == ("FILLER", "correction") for t in self.tokens
        )
        meant = meant or any(self.raws[i].text in sorry or self._no_alone(i) for i in between)
        orders = {m.at for m in self.found if m.type == "ORDER" and m.value != "no"}
        apart = any(self.is_and(i) or (i in orders and not self.is_filler(i)) for i in between)
        return meant and not apart

    def _excepts_medium(self, cut: int) -> bool:
        """Whether what some grow in excepts them: 'all but those in moss', not 'all but Ruby'."""
        if cut >= len(self.raws) or self.rest.medium is None:
            return False
        begin = self.raws[cut].start
        said = [t.start for t in self.tokens if t.type == "MEDIUM"]
        named = any(m.type == "PLANT" and m.at > cut for m in self.found)
        return bool(said) and min(said) > begin and not named

    @cached_property
    def _of_a_name(self) -> frozenset[int]:
        """Where a kind only says what a named plant is: 'Ruby phal', 'the phal Ruby'."""
        ends = {m.end for m in self.found if m.type == "PLANT"}
        starts = {m.at for m in self.found if m.type == "PLANT"}
        if not ends:
            return frozenset()
        places = {raw.start: i for i, raw in enumerate(self.raws)}
        kinds = ([places[r.start] for r in t.raws] for t in self.tokens if t.type == "GENUS")
        return frozenset(
            kind[-1]
            for kind in kinds
            if not self._several(kind[-1])
            and (
                (kind[0] in ends and not self.raws[kind[0]].after_break)
                or (kind[-1] + 1 in starts and not self.raws[kind[-1] + 1].after_break)
            )
        )

    def _several(self, index: int) -> bool:
        """Whether a kind is written as more than one: 'phals', which stand beside a name."""
        text = self.raws[index].text
        return text.endswith("s") and text[:-1] in self.words.lexicon.words

    @cached_property
    def spared(self) -> frozenset[int]:
        """The words of a clause that says who got nothing, beside others: '..., not fed: Ruby'."""
        cue = self.first("not_fed")
        if cue is None:
            return frozenset()
        breaks = [i for i, raw in enumerate(self.raws) if i and raw.after_break]
        begin = max((i for i in breaks if i <= cue.at), default=0)
        orders = {m.at for m in self.found if m.type == "ORDER"}
        if any(i in orders or self.raws[i].kind == "number" for i in range(begin, cue.at)):
            begin = cue.at  # 'plan saturday 5 l no feed for Mia'
        end = min((i for i in breaks if i >= cue.end), default=len(self.raws))
        run = frozenset(range(begin, end))
        marks = [m for m in self.found if m.at not in run]
        said = {value for m in marks if m.type == "ORDER" for value in m.value.split()}
        watered = not said.isdisjoint({"clear", "watered", "flush"})
        others = "everything" in said or any(m.type == "PLANT" for m in marks)
        others = others or any(i not in run for i, _ in self.genus_places)
        if watered and not others:
            return frozenset()  # 'no feed for Mia, just clear water'
        return run if len(run) < len(self.raws) else frozenset()

    def _places_about(self, cut: int) -> tuple[list[str], list[str]]:
        """The places that are meant, and those that were excepted: 'all but the balcony'.

        Of several that are not joined by 'and', the last is meant.
        """
        standing: list[str] = []
        without: list[str] = []
        behind = 0
        for name, run in self.place_runs:
            before = range(behind, min(run))
            if min(run) > cut and self._stands(cut, min(run)):
                pass  # 'all but Ruby, which is in the kitchen'
            elif min(run) > cut and self._excepted_here(cut, min(run)):
                without.append(name)
            elif standing and self._adds_a_place(before):
                standing.append(name)
            else:
                standing = [name]
            behind = max(run) + 1
        return standing, without

    def _stands(self, cut: int, place: int) -> bool:
        """Whether it is said between an exception and a place that what is excepted is there."""
        plants = [m for m in self.found if m.type == "PLANT" and cut < m.at < place]
        if not plants:
            return False
        said = {v for m in self.found if cut < m.at < place for v in m.value.split()}
        between = range(plants[-1].end, place)
        kinds = [self.words.type_at(i) for i in between]
        apart = self.raws[plants[-1].end].after_break and "IN" in kinds and "AND" not in kinds
        return apart or not said.isdisjoint({"be", "move", "relative"})

    def _adds_a_place(self, between: range) -> bool:
        """Whether only 'and' or a comma stands before a further place: 'shelf 1 and shelf 2'."""
        kinds = [self.words.type_at(i) for i in between]
        broken = self.raws[between.stop].after_break
        small = set(kinds) <= {"AND", "PLUS", "IN", "ARTICLE", "FILLER"} and len(kinds) <= 3
        return small and (broken or "AND" in kinds)

    def _excepted_here(self, cut: int, place: int) -> bool:
        """Whether a place is excepted itself, and does not say where excepted plants stand.

        'all but Ruby in the kitchen' excepts Ruby, 'all but what stands in the kitchen' a place.
        """
        plants = {i for m in self.found if m.type in ("PLANT", "TRAIT") for i in range(m.at, m.end)}
        plants.update(i for i, _ in self.genus_places)
        for index in range(place - 1, cut, -1):
            if self.raws[index + 1].after_break or self.words.type_at(index) in ("AND", "OR"):
                return True
            if self.words.cue_at(index) == "except":
                return True
            if index in plants:
                return False
        return True

    def _all_but(self, cut: int) -> bool:
        """Whether some are excepted of no others: 'fed all but Ruby'."""
        before = any(m.type == "PLANT" and m.at < cut for m in self.found)
        standing, without = self._places_about(cut)
        before = before or any(i < cut for i, _ in self.genus_places) or bool(standing)
        named = bool(without) or any(m.type == "PLANT" and m.at > cut for m in self.found)
        named = named or any(i > cut for i, _ in self.genus_places)
        told = any(m.type == "TRAIT" and m.at > cut for m in self.found)
        return (named or told or self._excepts_medium(cut)) and not before

    @cached_property
    def products(self) -> tuple[str, ...]:
        """The products on record that were named."""
        held = self.new_name[1]
        named = (m.value for m in self.found if m.type == "PRODUCT" and m.at not in held)
        return tuple(dict.fromkeys(named))
