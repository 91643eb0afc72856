"""What a message wants of the records: plants to add, what was given, a plan, a follow-up.

`find` looks for the phrases of the lexicon's [order] section, takes out the names, places and
days, has the rest read for its figures, and then asks the forms of `_FORMS` in turn; the first
that fits says what is wanted. A message that asks for a dose fits none of them.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from typing import TypeAlias

from grammar import asked, chemistry, clauses, picturing, prices, reminding, signs, waters
from grammar.additions import borders, plants
from grammar.days import whole
from grammar.facts import Facts, Understand
from grammar.folding import plain
from grammar.guiding import guiding
from grammar.lexicon import Lexicon, settings_of
from grammar.marks import Mark, Words, marks
from grammar.measured import figure
from grammar.order import Names, Order, Target
from grammar.reading import ReadAs, Reading, Unknown
from grammar.scan import Folded, Raw
from grammar.spelling import denies_by_a_slip, order_slip, rhythm_slip

#: More than this no single pot takes at a watering [L].
_MOST_A_POT_L = 1.5
#: A kind stands so near behind 'new' at the head of a message [words].
_NEW_KIND = 2
#: More slips than this in one message are another language.
_MOST_SLIPS = 3
#: What a syringe or pipette shows lies below this; more is how much it holds [L].
_LARGEST_STEP_L = 0.002

Form: TypeAlias = Callable[[Facts], Order | None]
#: Orders whose figures are no figures: a file's name, a town.
_FREE_TEXT = frozenset({
    "compare_labels", "import", "export", "home", "undo", "forget", "language", "pets", "remedy",
    "kept", "removing", "quiet_night", "hurt", "food", "pests", "argue",
})  # fmt: skip
#: Orders that are done to all but those that are excepted.
_OF_ALL = frozenset({"fed", "clear", "flush", "repot", "move", "growth", "water_for"})
#: Begins the value of a phrase that is answered with a fact.
_TELL = "tell_"
#: 'vandas -> balcony'.
_ARROWS = ("->", "=>", "→")
#: Orders whose words are names and free text, or numbers that the form itself has taken.
_QUIET = frozenset({
    "product", "product_change", "home", "undo", "export", "import", "done", "kit", "lose",
    "history", "plan", "reading", "exception", "which_feed", "two_things", "all_or_some",
    "not_given",
    "tell",
})  # fmt: skip


def find(
    raws: list[Raw], folded: Folded, lexicon: Lexicon, names: Names, understand: Understand
) -> Reading:
    """A message to somebody who keeps records.

    Parameters
    ----------
    raws, folded : the message
    lexicon : vocabulary
    names : what is on record
    understand : reads the figures in some of the words

    Returns
    -------
    Reading
        With an order; its verb is 'dose' where nothing but a dose can be meant.
    """
    facts = Facts(Words(folded, raws, lexicon, marks(raws, lexicon, names)), understand)
    order = _wanted(facts)
    mended, slips = _mended(facts, order)
    if slips:
        again = Facts(Words(folded, mended, lexicon, marks(mended, lexicon, names)), understand)
        meant = _wanted(again)
        if meant is not None and (order is None or order.verb in ("all_or_some", meant.verb)):
            reading = _with_order(again, meant)
            return replace(reading, read_as=(*slips, *reading.read_as))
    return _dose(facts) if order is None else _with_order(facts, order)


def _wanted(facts: Facts) -> Order | None:
    """What the first form that fits says."""
    order = next((order for form in _FORMS if (order := form(facts)) is not None), None)
    if order is not None and order.verb in _OF_ALL and order.target.everything:
        order = _with_exception(facts, order)
        if _all_and_some(facts, order):
            order = Order("all_or_some", target=replace(order.target, everything=False))
    if facts.has("everyones"):
        bare = Order("plants" if facts.alone else "dose", target=facts.target)
        order = replace(order or bare, own=True)
    return order


def _with_exception(facts: Facts, order: Order) -> Order:
    """An order for all but some; where those are not known it is done to nobody."""
    cue = facts.first("except")
    if cue is None or order.also:
        return order
    behind = facts.read_rest(range(cue.end, len(facts.raws))).unknown
    return replace(order, verb="exception", text=behind[0].text) if behind else order


def _all_and_some(facts: Facts, order: Order) -> bool:
    """Whether all are meant and then some by name: 'fed all besides Ruby' in words not known."""
    cue = facts.first("everything")
    if cue is None or order.also or order.target.excepts or order.verb not in _OF_ALL:
        return False
    standing = {i for _, run in facts.place_runs for i in run}
    names = [m.at for m in facts.found if m.type == "PLANT" and m.at >= cue.end]
    kinds = [i for i, _ in facts.genus_places if i >= cue.end]
    behind = min((i for i in (*names, *kinds) if i not in standing), default=None)
    if behind is None:
        return False
    between = range(cue.end, behind)
    if any(facts.is_and(i) for i in between):
        return False
    known = facts.held | standing
    strange = any(
        not facts.words.type_at(i) and i not in known and facts.raws[i].kind == "word"
        for i in between
    )
    return strange or behind in names


def _mended(facts: Facts, order: Order | None) -> tuple[list[Raw], list[ReadAs]]:
    """The words with slips for words of the records put right, and what was read as what.

    Where it is clear what is wanted, only places, days and 'except' are put right: a further word
    may be a plant's own.
    """
    lexicon = facts.words.lexicon
    kept = facts.named | facts.new_name[1]
    mended = list(facts.raws)
    slips: list[ReadAs] = []
    only_where_and_when = order is not None
    paced = order is None or order.verb in reminding.VERBS or facts.has("remind")
    for index, raw in enumerate(facts.raws):
        known = index in kept or (paced and raw.text in lexicon.rhythm_words)
        word = order_slip(raw, lexicon) if not known else None
        if word is not None and only_where_and_when:
            node = lexicon.orders.next.get(word)
            entry = node.entry if node is not None else None
            narrows = entry is not None and (
                entry.type in ("PLACE", "WHEN") or entry.value == "except"
            )
            word = word if narrows else None
        if word is None and index not in kept and paced:
            word = rhythm_slip(raw, lexicon)
        if word is not None and len(slips) < _MOST_SLIPS:
            mended[index] = raw._replace(text=word)
            shown = lexicon.spelled.get(word, word)
            slips.append(ReadAs(facts.folded.written(raw.start, raw.end), shown))
    return mended, slips


def _with_order(facts: Facts, order: Order) -> Reading:
    """The figures and the order; words that became a name or a trait are not unknown."""
    said = {t for p in order.plants for t in (*p.traits, p.name or "")} | set(order.target.traits)
    unknown = tuple(u for u in facts.rest.unknown if u.text.strip("\"'") not in said)
    if order.verb in _QUIET:
        unknown = ()
    if order.verb in reminding.VERBS:
        unused = (Unknown(order.unused),) if order.unused else ()
        language = facts.rest.language
        return Reading(facts.folded.original, language, unknown=unused, order=order)
    if order.verb in _FREE_TEXT:
        return Reading(facts.folded.original, facts.rest.language, order=order)
    if order.also:  # figures of one part are not those of another
        parts = _parts(facts, order)
        first, *rests = (p.label_rest if order.verb == "product_change" else p.rest for p in parts)
        doubts = tuple(c for reading in (first, *rests) for c in reading.conflicts)
        further = (_with_order(p, o) for p, o in zip(parts[1:], order.also, strict=True))
        base = replace(first, conflicts=doubts, further=tuple(further))
    elif order.verb in ("product", "product_change"):
        base = facts.label_rest
    elif order.verb == "judge":
        base = asked.judged(facts)
        unknown = base.unknown
    elif order.verb == "together" and order.feeds:  # two analyses are no contradiction here
        over = [c for c in facts.rest.conflicts if c.slot != "analysis"]
        base = replace(facts.rest, conflicts=tuple(over), analysis=None, read_as=())
        unknown = _with_digits(unknown)
    elif order.verb == "rescue":
        base = signs.rest(facts)
        unknown = base.unknown
    elif order.verb == "meter":
        base = replace(facts.meter_rest, read_as=())
        unknown = _with_digits(base.unknown)
    elif order.verb == "water" and order.ions:
        base = facts.report_rest
        unknown = _with_digits(base.unknown)
    elif order.verb in ("water_mix", "water_suits", "supplement"):
        base = facts.rest
        if order.mix is not None:  # two waters are no contradiction here
            base = replace(base, conflicts=(), target_ec_ms_cm=None, water=None, read_as=())
        unknown = _with_digits(unknown) if order.mix is None else ()
    elif order.verb == "reading":
        base = replace(facts.rest, read_as=())  # what ran out of a pot is no water
    elif order.verb == "stock":  # 'koncentrat z 20-20-20': what is made, not what it is made of
        base = facts.read_rest(without=_cue_words(facts, "stock", "concentrate"))
        unknown = base.unknown
    elif order.verb == "kit":
        base = replace(facts.rest, scale_step_g=_scale_step(facts))
    elif order.verb == "add" and len(order.plants) > 1:
        each = [facts.read_rest(span) for span in borders(facts)]
        doubts = tuple(c for reading in each for c in reading.conflicts)
        base = replace(facts.rest, conflicts=doubts)
    else:
        base = facts.rest
    read_as = tuple(r for r in base.read_as if r.text not in said)  # a name is no slip
    return replace(base, text=facts.folded.original, unknown=unknown, read_as=read_as, order=order)


def _parts(facts: Facts, order: Order) -> list[Facts]:
    """What a message says that says several things of one kind."""
    if order.verb == "product_change":
        return clauses.feeds_apart(facts)
    return clauses.given_apart(facts) or [facts]


def _cue_words(facts: Facts, *values: str) -> frozenset[int]:
    """The words of the first of these order phrases."""
    cue = facts.first(*values)
    return frozenset(range(cue.at, cue.end)) if cue is not None else frozenset()


def _with_digits(unknown: tuple[Unknown, ...]) -> tuple[Unknown, ...]:
    """Of what was not understood, the figures: they could change an answer."""
    return tuple(u for u in unknown if any(c.isdigit() for c in u.text))


def _dose(facts: Facts) -> Reading:
    """A request for a dose: only names and places on record are taken out of it."""
    names = {i for m in facts.found if m.type in ("PLANT", "PRODUCT") for i in range(m.at, m.end)}
    names |= {i for _, run in facts.place_runs for i in run}
    reading = facts.understand([r for i, r in enumerate(facts.raws) if i not in names])
    order = Order(
        "dose",
        target=facts.target,
        products=facts.products,
        asks=facts.question,
        asks_kind="dose" if facts.has("dose", "dose_word") else None,
    )
    return replace(reading, text=facts.folded.original, order=order)


def _simple(verb: str, *cues: str) -> Form:
    """A form of its own phrase, with nothing beside it that a dose needs."""

    def form(facts: Facts) -> Order | None:
        if not facts.has(*cues) or facts.asks_dose or facts.rest.genera:
            return None
        return Order(verb, target=facts.target, when=facts.when[0], products=facts.products)

    return form


def _bare(verb: str, *cues: str, text: str = "") -> Form:
    """A form that is the whole message."""

    def form(facts: Facts) -> Order | None:
        told = verb == "skip" and facts.has("fed", "clear", "flush")  # 'fed all, not sure'
        bare = facts.starts(*cues) and facts.alone and not told
        return Order(verb, text=text) if bare else None

    return form


def _only(verb: str, *cues: str) -> Form:
    """A form that says nothing else: no other order phrase stands beside it."""

    def form(facts: Facts) -> Order | None:
        said = [m for m in facts.found if m.value in cues]
        return Order(verb) if said and len(said) == len(facts.found) and facts.alone else None

    return form


def _export(facts: Facts) -> Order | None:
    asked = facts.has("export") or (facts.has("csv") and not facts.has("import"))
    if not asked or facts.asks_dose:
        return None
    return Order("export", text="csv" if facts.has("csv") else "json")


def _calendar(facts: Facts) -> Order | None:
    """'calendar', 'calendar for the vandas'; a calendar that is spoken of is none."""
    if not facts.has("calendar") or facts.asks_dose or facts.has("fed", "gave", "repot", "import"):
        return None
    meant = facts.starts("calendar") or facts.alone
    return Order("calendar", target=facts.target) if meant else None


def _import(facts: Facts) -> Order | None:
    cue = facts.first("import")
    if cue is None or facts.asks_dose:
        return None
    return Order("import", text=_text_after(facts, cue))


def _text_after(facts: Facts, cue: Mark) -> str:
    """The words behind a cue as they were written, signs among them."""
    if cue.end >= len(facts.raws):
        return ""
    start = facts.raws[cue.end].start
    return facts.folded.written(start, len(facts.folded.text)).strip().rstrip(".!?")


def _history(facts: Facts) -> Order | None:
    asks_last = (
        facts.has("last") and "?" in facts.folded.text and facts.has("fed", "flush", "clear")
    )
    logged = facts.has("log") and not facts.has("fed", "flush", "clear", "gave")
    asked_back = _asks_of_itself(facts) and not facts.has("dose", "dose_word", "judge", "choose")
    if not (facts.has("history") or logged or asks_last or asked_back) or facts.asks_dose:
        return None
    kinds = [k for k in ("flush", "clear", "fed") if facts.has(k)]
    if not kinds and facts.rest.mentions_feeding:
        kinds = ["fed"]
    repotted = "repot" if facts.has("repot") else None
    return Order(
        "history",
        target=facts.target,
        when=facts.when[0],
        asks_kind=repotted or (kinds[0] if len(kinds) == 1 else None),
    )


def _asks_of_itself(facts: Facts) -> bool:
    """'¿aboné las vandas ayer?': what was done, asked in the words that also tell it."""
    cue, text = facts.first("asks"), facts.folded.text
    if cue is None or "?" not in text:
        return False
    begins = max(text.rfind(sign, 0, text.rfind("?")) for sign in ".,;!¿\n")
    return facts.raws[cue.at].start > begins


def _plan(facts: Facts) -> Order | None:
    another_day = facts.when[0] is not None and facts.only_a_day
    cue = facts.first("plan")
    stands = cue is not None and "plants" in cue.value.split() and facts.place is not None
    if stands and facts.when[0] is None:
        return None  # 'was steht auf dem Balkon?'
    if not (facts.has("plan") or another_day) or facts.asks_dose:
        return None
    return Order("plan", target=facts.target, when=facts.when[0], products=facts.products)


def _done(facts: Facts) -> Order | None:
    parts = facts.has("done") and facts.has("step")
    if not (facts.starts("done") or parts or _done_last(facts)) or facts.asks_dose:
        return None
    steps = tuple(
        n for i in range(len(facts.raws)) if (n := whole(facts.words, i)) is not None and n < 100
    )
    return Order("done", target=facts.target, steps=steps)


def _done_last(facts: Facts) -> bool:
    """'1 und 3 erledigt', in a language whose verb stands last."""
    done = facts.first("done")
    if done is None or done.end < len(facts.raws):
        return False
    if not reminding.verb_last(facts.words.lexicon.language):
        return False
    return all(whole(facts.words, i) is not None or facts.is_filler(i) for i in range(done.at))


def _list(facts: Facts) -> Order | None:
    spoken = any(t.type == "PLANTS" for t in facts.tokens)
    there = facts.has("which") and facts.place is not None
    listed = spoken or facts.alone or facts.place is not None or _only_kinds(facts)
    shown = facts.starts("show") and listed
    orchids = shown or (spoken and there)
    if not (facts.has("plants") or orchids) or facts.asks_dose:
        return None
    if facts.has("flush", "fed", "clear", "dose") or facts.rest.mentions_feeding:
        return None
    if facts.has("move") and not (there and spoken):  # 'welche Pflanzen stehen am Fenster?'
        return None
    return Order("plants", target=facts.target)


def _only_kinds(facts: Facts) -> bool:
    """Whether beside order phrases only kinds of plants were said: 'list the vandas'."""
    rest = facts.rest
    said = rest.unknown or rest.growth or rest.medium or rest.water or rest.regime
    return bool(facts.target.genera) and not said and not facts.has("salts_of", "card", "year")


def _lacking(facts: Facts) -> Order | None:
    about = bool(facts.products) or facts.rest.form is not None or facts.has("my", "shelf")
    if not facts.has("lacking") or not about or facts.asks_dose:
        return None
    return Order("lacking", products=facts.products)


def _choose(facts: Facts) -> Order | None:
    either = len(facts.products) > 1 and any(t.type == "OR" for t in facts.tokens)
    if (
        not (facts.has("choose") or either)
        or facts.rest.volume_l is not None
        or facts.rest.analysis
    ):
        return None
    return Order("choose", target=facts.target, products=facts.products)


def _rename(facts: Facts) -> Order | None:
    if not facts.has("rename") or facts.asks_dose:
        return None
    name = facts.new_name[0]
    meant = replace(facts.target, place=None)
    if not name or (meant.empty and not facts.products):
        return None
    return Order("rename", target=meant, products=facts.products, name=name)


def _lose(facts: Facts) -> Order | None:
    if facts.asks_dose or facts.asks_first or "?" in facts.folded.text:
        return None
    if facts.products and (facts.has("empty", "lose")):
        return Order("product_remove", products=facts.products)
    if not facts.has("lose") or facts.target.empty or _shed(facts):
        return None
    taken = facts.new_name[1] | facts.when[1] | facts.named
    numbers = (whole(facts.words, i) for i in range(len(facts.raws)) if i not in taken)
    count = facts.rest.count or next((n for n in numbers if n), None) or _one_of_a_kind(facts)
    return Order("lose", target=facts.target, when=facts.when[0], count=count)


def _shed(facts: Facts) -> bool:
    """'Ruby lost a leaf': a part of it, and it is still there."""
    settings = settings_of(facts.words.lexicon.language)
    parts, sheds = (frozenset(map(plain, settings.get(k, ()))) for k in ("parts", "sheds"))
    said = [m for m in facts.found if m.value == "lose"]
    only_shed = all(facts.raws[i].text in sheds for m in said for i in range(m.at, m.end))
    return only_shed and any(raw.text in parts for raw in facts.raws)


def _one_of_a_kind(facts: Facts) -> int | None:
    """One where an article counts a plant that has no name: 'regalé una vanda'."""
    pairs = zip(facts.tokens, facts.tokens[1:], strict=False)
    counted = any((a.type, a.value, b.type) == ("ARTICLE", "one", "GENUS") for a, b in pairs)
    return 1 if counted and not facts.target.names and not facts.target.traits else None


def _repot(facts: Facts) -> Order | None:
    if not facts.has("repot") or facts.asks_dose or facts.target.empty or facts.question:
        return None
    target = replace(facts.target, medium=None, place=None)
    if target.empty:
        target = replace(facts.target, medium=None)
    return Order("repot", target=target, when=facts.when[0])


def _log(facts: Facts) -> Order | None:
    """What was given: feed, clear water or a flush; to some this, to others that."""
    parts = clauses.given_apart(facts)
    if parts is None:
        return Order("two_things")
    orders: list[Order] = []
    for part in parts:
        target = clauses.meant_by(part, orders[-1].target if orders else None)
        order = _log_one(part, target)
        if order is None:
            return _log_one(facts, facts.target)
        orders.append(order)
    if not orders:
        return _log_one(facts, facts.target)
    return replace(orders[0], also=tuple(orders[1:]))


def _log_one(facts: Facts, target: Target) -> Order | None:
    told = facts.starts("fed", "flush") or _day_and_done(facts)
    bare = target.empty and not facts.asks_dose and told
    if facts.question or facts.has("make_it") or (target.empty and not bare):
        return None
    if facts.rest.volume_l is not None and facts.rest.analysis and not facts.starts("fed"):
        return None
    verb = _given(facts)
    if verb == "fed" and facts.has("clear") and _not_done(facts, verb):
        verb = "clear"  # 'watered, not fed'
    if verb is None:
        return None
    if _not_done(facts, verb):
        return None if facts.asks_dose else Order("not_given")
    if verb == "fed" and not facts.has("except") and any(t.type == "NOT" for t in facts.tokens):
        return None  # 'fed them not too strong'
    name = facts.new_name[0] or None
    return Order(verb, target=target, when=facts.when[0], products=facts.products, name=name)


def _not_done(facts: Facts, verb: str) -> bool:
    """'I have not fed Ruby', 'havnt fed', 'should have fed': nothing was given."""
    lexicon = facts.words.lexicon
    cue = facts.first("except")
    denying = settings_of(lexicon.language).get("denies", ())
    if cue is not None and (cue.size > 1 or facts.raws[cue.at].text not in denying):
        return False
    done = facts.first("fed", "gave") if verb == "fed" else facts.first(verb)
    if done is None:
        return False
    denied = [i for i in range(done.at) if facts.words.type_at(i) == "NOT"]
    if cue is not None and not denied:  # 'fed the phals, not Ruby'; 'gedüngt habe ich Ruby nicht'
        last = all(_small(facts, i) for i in range(cue.end, len(facts.raws)))
        return last and not facts.target.excepts and not facts.has("everything")
    if verb != "fed":  # 'no feed, clear water for Ruby' is none of these
        return any(all(_small(facts, j) for j in range(i + 1, done.at)) for i in denied)
    before = (facts.raws[i] for i in range(done.at) if i not in facts.named)
    slips = (denies_by_a_slip(raw, lexicon) for raw in before)
    none = facts.words.type_at(done.end) == "NOT"  # 'fed no phals'
    return bool(denied) or none or facts.has("not_done") or any(slips)


def _small(facts: Facts, index: int) -> bool:
    """Whether a word carries nothing, not even that it is about feed."""
    entry = facts.words.lexicon.words.get(facts.raws[index].text)
    return facts.is_filler(index) and (entry is None or entry.value != "feeding")


def _nothing_given(facts: Facts) -> Order | None:
    """'I have not fed the phals': before 'I have ...' puts them on record."""
    done = facts.first("fed", "clear", "flush")
    if done is None or facts.question or facts.asks_dose:
        return None
    before = range(max(done.at - 2, 0), done.at)
    denied = any(facts.words.type_at(i) == "NOT" for i in before)
    had = [m.at for m in facts.found if m.type == "PLANT"] + [i for i, _ in facts.genus_places]
    if not denied or not had or min(had) < done.at or not _not_done(facts, done.value.split()[0]):
        return None
    return Order("not_given")


def _day_and_done(facts: Facts) -> bool:
    """'gestern gespült', in a language whose verb stands last."""
    done = facts.first("fed", "flush")
    if done is None or not reminding.verb_last(facts.words.lexicon.language):
        return False
    return all(i in facts.when[1] or facts.is_filler(i) for i in range(done.at))


def _given(facts: Facts) -> str | None:
    watered = facts.has("clear") or any(t.type in ("WATER", "WATER_WORD") for t in facts.tokens)
    if facts.has("flush") or (facts.has("poured") and watered):
        return "flush"
    if facts.has("give") and not facts.has("gave") and facts.rest.water is not None:
        return None
    if facts.has("watered") and (facts.has("with_feed") or facts.products or facts.rest.form):
        return "fed"  # 'podlałam nawozem'
    if clauses.wetted_and_fed(facts):
        return "fed"
    if facts.has("clear") and not facts.asks_dose:
        return "clear"
    gave_feed = facts.has("gave") and (facts.rest.mentions_feeding or facts.products)
    if facts.has("fed") or gave_feed or _day_of_a_feed(facts):
        return "fed"
    pure = facts.rest.water is not None and not facts.asks_dose
    return "clear" if facts.has("gave") and pure else None


def _day_of_a_feed(facts: Facts) -> bool:
    """'gestern 2 l blaue Dose an Ruby': a day that has been, a feed and its plants tell enough."""
    return bool(facts.been and facts.products and facts.target.named and not facts.has("dose"))


def _runoff(facts: Facts) -> Order | None:
    if not facts.has("runoff") or facts.rest.analysis or facts.rest.volume_l is not None:
        return None
    if not any(raw.kind == "number" for raw in facts.raws):
        return None
    value = _lone_number(facts)
    return Order("reading", target=facts.target, when=facts.when[0], value=value)


def _lone_number(facts: Facts) -> float | None:
    """The one figure beside names and days."""
    taken = facts.when[1] | facts.named
    found = [r for i, r in enumerate(facts.raws) if r.kind == "number" and i not in taken]
    return figure(found[0]) if len(found) == 1 else None


def _growth(facts: Facts) -> Order | None:
    if facts.rest.growth is None or facts.asks_dose or facts.question or facts.rest.regime:
        return None
    if facts.starts("show", "more") or facts.target.empty:
        return None
    if facts.has("add", "have", "choose") or facts.rest.mentions_feeding:
        return None
    return Order("growth", target=replace(facts.target, medium=None), when=facts.when[0])


def _move(facts: Facts) -> Order | None:
    moved = facts.has("move", "be") or any(sign in facts.folded.text for sign in _ARROWS)
    if facts.place is None or facts.asks_dose or facts.question or not moved:
        return None
    without = tuple(p for p in facts.target.not_places if p != facts.place)
    sources = [name for name, _ in facts.place_runs[:-1] if name not in without]
    target = replace(
        facts.target,
        place=sources[-1] if sources else None,
        more_places=tuple(sources[:-1]),
        medium=facts.rest.medium,
        not_places=without,
    )
    if target.empty:
        return None
    return Order("move", target=target, place=facts.place, when=facts.when[0])


def _correct(facts: Facts) -> Order | None:
    """What is known of a plant, told later: its pot, its medium, the water it takes."""
    rest = facts.rest
    target = replace(facts.target, medium=None)
    if target.empty or facts.question or rest.mentions_feeding or rest.growth or rest.analysis:
        return None
    takes = facts.has("takes") and rest.volume_l is not None and rest.volume_l <= _MOST_A_POT_L
    told = facts.has("be", "move") and (rest.medium or rest.pot_cm) and rest.volume_l is None
    if not (takes or told) or rest.strength is not None or rest.label_rate is not None:
        return None
    if facts.place is not None and not (target.names or target.genera or target.again):
        return Order("correct", target=target)
    return Order("correct", target=replace(target, place=None), place=facts.place)


def _add(facts: Facts) -> Order | None:
    got = facts.starts("gave") and (facts.rest.count or facts.rest.medium) and _new(facts)
    more = facts.has("more") and facts.rest.count and facts.rest.genera
    got = got or _received(facts) or _begins_new(facts)
    new = facts.new_name[0] and facts.rest.genera and not facts.target.names
    if facts.asks_dose or facts.question or not (facts.has("add", "have") or got or more or new):
        return None
    said = plants(facts)
    orchids = facts.rest.count and any(t.type == "PLANTS" for t in facts.tokens)
    strong = orchids or (
        facts.has("add") and (facts.new_name[0] or facts.rest.count or facts.rest.medium)
    )
    if not (facts.rest.genera or strong):
        return None
    return Order("add", plants=said, when=facts.when[0])


def _listed(facts: Facts) -> Order | None:
    """'30 dendrobiums, balcony, bark': a bare list, of plants to add or to feed."""
    rest = facts.rest
    described = facts.place is not None or (rest.medium and rest.pot_cm)
    begun = bool(facts.raws) and (
        facts.raws[0].kind == "number" or facts.words.type_at(0) == "NUMBER"
    )
    others = (rest.season, rest.month, rest.regime, rest.growth, rest.water, rest.form)
    if not (described and begun and rest.genera) or facts.asks_dose or facts.question:
        return None
    if any(others) or facts.products or rest.mentions_feeding or facts.target.names:
        return None
    if any(m.type == "ORDER" and not {"both", "be"} & set(m.value.split()) for m in facts.found):
        return None
    said = plants(facts)
    counted = all(p.genus and p.count for p in said)
    return Order("add_offer", plants=said, target=facts.target) if counted else None


def _received(facts: Facts) -> bool:
    """'2 Phals in Rinde bekommen': a number of plants, and nothing that plants are given."""
    rest = facts.rest
    described = rest.count and (rest.medium or rest.pot_cm or facts.place)
    else_said = rest.growth or rest.volume_l is not None or facts.has("fed", "flush", "repot")
    return bool(facts.has("received") and described and not else_said and _new(facts))


def _begins_new(facts: Facts) -> bool:
    """'neue Phal, Rinde, 12er Topf': a word for new right before a kind, at the head."""
    words = settings_of(facts.words.lexicon.language).get("new", ())
    headed = bool(facts.raws) and facts.raws[0].text in words
    near = any(0 < at <= _NEW_KIND for at, _ in facts.genus_places)
    return headed and near and facts.rest.growth is None and _new(facts)


def _new(facts: Facts) -> bool:
    """Whether no plant on record was named, and nothing that plants are given."""
    given = facts.rest.mentions_feeding or facts.rest.water is not None or facts.has("clear")
    return not facts.target.names and not given


def _home(facts: Facts) -> Order | None:
    cue = facts.first("home")
    if cue is not None and not facts.asks_dose and not facts.rest.genera:
        text = _text_after(facts, cue)
        return Order("home", text=text) if text else None
    if facts.has("south", "north") and not facts.asks_dose and not facts.rest.genera:
        return Order("home", text="south" if facts.has("south") else "north")
    return None


def _kit(facts: Facts) -> Order | None:
    rest = facts.rest
    if rest.analysis or rest.form or rest.regime or rest.genera or rest.strength is not None:
        return None
    if facts.target.named:
        return None
    if facts.has("syringe") and rest.volume_l is not None and rest.volume_l <= _LARGEST_STEP_L:
        return Order("kit", syringe_step_ml=1000 * rest.volume_l)
    named = facts.has("have", "my") or facts.starts("vessel")
    vessel = facts.has("can") or (facts.has("vessel") and named)
    can = vessel and rest.volume_l is not None and not facts.has("dose")
    words = facts.has("spoons", "gallons", "imperial", "metric") and rest.volume_l is None
    if can or words or (_scale_step(facts) is not None and rest.volume_l is None):
        units = next((c for c in ("gallons", "imperial", "metric", "spoons") if facts.has(c)), "")
        return Order("kit", text="can" if can else units)
    return None


def _scale_step(facts: Facts) -> float | None:
    """The smallest step of a scale: 'my scale shows 0.1 g', 'is accurate to 0.1 g'."""
    if facts.rest.scale_step_g is not None:
        return facts.rest.scale_step_g
    return facts.rest.weight_g if any(t.type == "SCALE" for t in facts.tokens) else None


def _products(facts: Facts) -> Order | None:
    """More of what is known of several products: 'blue tub costs 14 €, red box 9 €'."""
    parts = clauses.feeds_apart(facts)
    orders = [_product(part) for part in parts]
    told = [o for o in orders if o is not None and o.verb == "product_change"]
    if len(told) < 2 or len(told) < len(orders):
        return None
    return replace(told[0], also=tuple(told[1:]))


def _product(facts: Facts) -> Order | None:
    """A product to put on record, or more of what its label says."""
    label, rest = facts.label[0], facts.label_rest
    if rest.genera or rest.strength is not None or rest.regime or rest.target_n_mg_l:
        return None
    if facts.has("dose", "fed") or facts.target.named:
        return None
    if facts.has("make_it") and not (facts.products and facts.has("default")):
        return None
    pack, unit = _pack(facts, rest)
    label = replace(label, pack_size=pack, pack_unit=unit) if pack else label
    name = facts.new_name[0] or None
    if facts.products and not name:
        said = rest.analysis or rest.label_rate or rest.extras or rest.trace_elements
        if (said or not label.empty) and (pack or rest.volume_l is None):
            if len(facts.products) > 1:
                return Order("which_feed", products=facts.products)
            return Order("product_change", products=facts.products, label=label)
        if facts.has("default"):
            return Order("product_default", products=facts.products)
        return None
    if rest.analysis is None and rest.label_rate is None:
        return None
    doubtful = any(c.slot == "volume_l" for c in rest.conflicts)
    labelled = facts.has("use") and rest.label_rate is not None
    shelved = facts.has("shelf") and facts.has("move", "add")
    own = facts.has("my", "add", "have") or labelled or shelved
    own = own and rest.volume_l is None and not doubtful
    if not (own or name):
        return None
    return Order("product", products=facts.products, name=name, label=label)


def _pack(facts: Facts, rest: Reading) -> tuple[float | None, str | None]:
    if rest.weight_g is not None:
        return rest.weight_g, "g"
    sold = facts.new_name[0] or any(
        m.type == "CURRENCY" or (m.type == "LABEL_PART" and m.value in ("pack", "price"))
        for m in facts.found
    )
    if rest.volume_l is not None and sold:
        return 1000 * rest.volume_l, "ml"
    return _pack_of_one(facts) if facts.label[0].price is not None else (None, None)


def _pack_of_one(facts: Facts) -> tuple[float | None, str | None]:
    """The pack of a price by the unit: '22 €/kg', '9 € per litre'."""
    words = facts.words
    for index in range(1, len(facts.raws)):
        entry = words.lexicon.words.get(facts.raws[index].text)
        if entry is not None and words.type_at(index - 1) == "PER":
            unit = {"kilogram": "g", "litre": "ml"}.get(entry.value)
            if unit is not None:
                return 1000.0, unit
    return None, None


def _water(facts: Facts) -> Order | None:
    rest = facts.rest
    if rest.water is None or facts.asks_dose or facts.question or facts.has("make_it"):
        return None
    if rest.volume_l is not None and rest.analysis is not None:
        return None  # a dose, and the water it is made with
    name = facts.new_name[0] or None
    if facts.target.named or (facts.target.again and facts.has("takes", "gave", "use")):
        gets = rest.growth is None and not facts.has("add", "have")
        return Order("water_for", target=facts.target) if gets else None
    if facts.has("my", "have", "default", "settings", "use") or name:
        return Order("water", name=name)
    figures = (rest.water.hardness_mg_l_caco3, rest.water.ec_ms_cm)
    return Order("water", name=name) if any(v is not None for v in figures) else None


def _follow_up(facts: Facts) -> Order | None:
    for cue, factor in (("half_that", 0.5), ("double_that", 2.0), ("quarter_that", 0.25)):
        if facts.has(cue) and not facts.rest.analysis:
            return Order("follow_up", factor=factor, target=facts.target)
    if facts.rest.analysis and facts.rest.volume_l is not None:
        return None
    begins = facts.raws and facts.is_and(0) and not facts.asks_something_else
    if facts.has("make_it") or facts.starts("and_for") or begins:
        return Order("follow_up", target=facts.target, products=facts.products)
    chosen = facts.products and facts.has("use", "with_feed") and not facts.asks_dose
    if chosen and not facts.target.named:
        return Order("follow_up", products=facts.products)
    return None


def _tell(facts: Facts) -> Order | None:
    """What a beginner asks beside feed: 'how often do I feed', 'sticky drops on the leaves'."""
    cue = next((m.value for m in facts.found if m.value.startswith(_TELL)), None)
    others = ("fed", "flush", "clear", "repot", "remind", "naming", "history", "add", "move")
    if cue is None or facts.asks_dose or facts.has(*others):
        return None
    return Order("tell", text=cue.removeprefix(_TELL))


def _who(facts: Facts) -> Order | None:
    """'who is resting now', 'who rests in winter', 'who needs a flush'."""
    rest = facts.rest
    if facts.asks_dose or facts.products or rest.water or rest.mentions_feeding:
        return None
    if facts.has("flush_due") and not rest.growth:
        return Order("who", text="flush", target=facts.target)
    asks = facts.question or facts.has("who", "which", "relative")
    named = facts.target.named_one or facts.target.again or rest.medium
    if rest.growth != "resting" or not asks or named or rest.unknown:
        return None
    return Order("who", text="rest") if not facts.has("dose", "dose_word", "fed") else None


def _own(facts: Facts) -> Order | None:
    asked = facts.has("settings") and not facts.asks_dose and facts.alone
    return Order("settings") if asked else None


#: In this order; the first that fits says what is wanted.
_FORMS: tuple[Form, ...] = (
    _only("thanks", "thanks"),
    _only("greeting", "hail"),
    _bare("undo", "undo"),
    _bare("done", "done"),
    _bare("yes", "yes"),
    reminding.pause,
    reminding.stop,
    reminding.skip,
    _bare("no", "no"),
    _bare("no", "stop", text="stop"),
    guiding,
    _bare("why", "why"),
    _bare("more", "more"),
    _bare("help", "help"),
    _bare("skip", "skip", "unsure"),
    _bare("skip", "later", text="later"),
    asked.kept,
    _bare("quiet", "quiet"),
    _bare("loud", "loud"),
    reminding.quiet_hours,
    reminding.resume,
    reminding.move,
    reminding.remind,
    _calendar,
    picturing.year,
    picturing.salts,
    picturing.card,
    reminding.listing,
    _simple("forget", "forget"),
    _import,
    _export,
    asked.language,
    asked.hurt,
    asked.pets,
    asked.not_for_feed,
    _who,
    _tell,
    signs.rescue,
    asked.judge,
    asked.remedy,
    asked.argue,
    asked.bottle,
    prices.compare,
    _history,
    waters.meter,
    waters.report,
    waters.mix,
    waters.suits,
    waters.supplement,
    chemistry.salts,
    chemistry.together,
    chemistry.stock,
    chemistry.blend,
    _choose,
    _plan,
    _done,
    _lose,
    _lacking,
    _simple("shelf", "shelf"),
    _own,
    _home,
    _kit,
    _rename,
    _runoff,
    _repot,
    _products,
    _product,
    _nothing_given,
    _add,
    _log,
    _growth,
    _correct,
    _move,
    _water,
    _follow_up,
    _list,
    _listed,
)
