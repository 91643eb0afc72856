"""What a message wants of the records: plants to add, what was given, a plan, a follow-up.

`find` looks for the phrases of the lexicon's [order] section, takes out the names, places and
days, has the rest read for its figures, and then asks the forms of `_FORMS` in turn; the first
that fits says what is wanted. A message that asks for a dose fits none of them.
"""

from __future__ import annotations

from dataclasses import replace

from grammar.folding import plain
from grammar.lexicon import Lexicon, words_under
from grammar.order import Names, Order, Target
from grammar.orders import (
    amending,
    asked,
    asking,
    called,
    care,
    chemistry,
    clauses,
    collection,
    counting,
    figuring,
    files,
    harm,
    meant,
    others,
    overdoses,
    picking,
    picturing,
    prices,
    reaching,
    reminding,
    requested,
    shelf,
    signs,
    simple,
    waters,
)
from grammar.orders.additions import borders
from grammar.orders.facts import Facts, Understand
from grammar.orders.guiding import guiding
from grammar.reading import Conflict, ReadAs, Reading, Unknown
from grammar.words.marks import Words, marks
from grammar.words.scan import Folded, Raw
from grammar.words.spelling import day_slip, order_slip, rhythm_slip

#: More slips than this in one message are another language.
_MOST_SLIPS = 3

#: Orders that the same words can be besides putting the last entry of the log right.
_AMENDING = frozenset({
    "dose", "no", "fed", "clear", "flush", "plan", "reminder_skip", "follow_up", "two_things",
    "all_or_some", "exception", "not_given", "undo", "plants", "blame",
})  # fmt: skip

#: Orders whose figures are no figures: a file's name, a town.
_FREE_TEXT = frozenset({
    "compare_labels", "import", "export", "home", "undo", "blame", "forget", "language", "pets",
    "remedy",
    "kept", "removing", "quiet_night", "last", "hurt", "spill", "food", "leftover", "alarm",
    "pests", "argue",
    "unshelved", "ceased",
})  # fmt: skip

#: Orders that are done to all but those that are excepted.
_OF_ALL = frozenset({"fed", "clear", "flush", "repot", "move", "growth", "water_for"})

#: Orders that some of several alike can be meant by: '2 of the phals are in 7 cm pots'.
_OF_SOME = _OF_ALL | {"correct", "rescue"}

#: Orders that a last clause can say some got none of: 'fed, but the vanda not'.
_SPARING = frozenset({"fed", "clear", "flush", "done"})

#: Orders in which a word that is joined to plants by 'and' is one of them.
_OF_PLANTS = _OF_ALL | {"lose", "correct", "dose", "follow_up", "reading", "history", "plan"}

#: Orders whose words are names and free text, or numbers that the form itself has taken.
_QUIET = frozenset({
    "product", "product_change", "home", "undo", "export", "import", "done", "kit", "lose",
    "lose_apart",
    "history", "plan", "reading", "exception", "which_feed", "two_things", "all_or_some",
    "not_given", "not_changed", "not_told", "remains", "overdone",
    "tell", "name", "explain", "help", "convert", "nitrogen_limit", "most_ec", "pour",
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
    whole = Facts(Words(folded, raws, lexicon, marks(raws, lexicon, names)), understand)
    facts, order = _wanted_of(whole)
    mended, slips = _mended(whole, order)
    if slips:
        again = Facts(Words(folded, mended, lexicon, marks(mended, lexicon, names)), understand)
        part, meant = _wanted_of(again)
        if meant is not None and (order is None or order.verb in ("all_or_some", meant.verb)):
            reading = _with_order(part, meant)
            return _beside(part, again, replace(reading, read_as=(*slips, *reading.read_as)))
    return _beside(facts, whole, _dose(facts) if order is None else _with_order(facts, order))


def _wanted_of(facts: Facts) -> tuple[Facts, Order | None]:
    """What is wanted, and the words that say it: without who got none at the end."""
    facts = meant.no_longer(meant.done_all_the_same(amending.put_right(facts)))
    facts = meant.then_done(meant.by_somebody(facts))
    part = meant.but_not(facts)
    order = _wanted(part) if part.spares is not None else None
    if order is not None and order.verb == "yes":  # 'yes, fed, but the vanda not'
        order = Order(care.given_in(part) or "yes", when=part.when[0], products=part.products)
    if order is None or order.verb not in _SPARING or part.spares is None:
        return facts, _wanted(facts)
    if order.target.named and not order.target.everything:
        return part, order
    spared, said = part.spares, order.target
    target = replace(
        said if said.everything else Target(everything=True),
        not_names=(*said.not_names, *spared.names),
        not_genera=(*said.not_genera, *spared.genera),
    )
    return part, replace(order, target=target)


def _beside(facts: Facts, whole: Facts, reading: Reading) -> Reading:
    """A reading with what the message would mean right after an entry of the log."""
    reading = _with_blend(facts, replace(reading, ails=signs.ails_in(facts)))
    order = reading.order
    passed = called.joined(facts) if order and order.verb in _OF_PLANTS else ()
    known = {u.text for u in reading.unknown}
    further = tuple(Unknown(text) for text in passed if text not in known)
    reading = replace(reading, unknown=(*reading.unknown, *further)) if further else reading
    if order is not None and harm.is_worried(facts):
        lost = order.verb == "dose" and harm.is_alarmed(facts)
        order = replace(order, verb="alarm" if lost else order.verb, worried=True)
        reading = replace(reading, order=order)
    amends = amending.amends(whole) if order and order.verb in _AMENDING else None
    if (amends is None and not facts.gone) or reading.order is None:
        return reading
    return replace(reading, order=replace(reading.order, amends=amends, gone=facts.gone))


def _with_blend(facts: Facts, reading: Reading) -> Reading:
    """A dose in a mix of waters: a share beside a water is no strength."""
    order = reading.order
    if order is None or order.verb not in ("dose", "follow_up") or order.factor is not None:
        return reading
    blend = waters.with_part(facts)
    if blend is None:
        return reading
    mix, words = blend
    rest = facts.read_rest(without=words)
    said = plain(" ".join(facts.folded.written(r.start, r.end) for i, r in enumerate(facts.raws)
                          if i in words))  # fmt: skip
    return replace(
        reading,
        strength=rest.strength,
        water=rest.water,
        conflicts=tuple(c for c in reading.conflicts if c.slot not in ("water", "strength")),
        unknown=tuple(u for u in reading.unknown if plain(u.text) not in said),
        read_as=tuple(r for r in reading.read_as if plain(r.text) not in said),
        order=replace(order, mix=mix),
    )


def _wanted(facts: Facts) -> Order | None:
    """What the first form that fits says."""
    facts = meant.rather(facts)
    order = next((order for form in _FORMS if (order := form(facts)) is not None), None)
    if order is not None:
        order = meant.held_back(facts, order) or others.of_others(facts, order) or order
    if order is not None and meant.denies_figures(facts, order):
        return None  # asked about, as in a request for a dose
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
    because = words_under(facts.words.lexicon.language, "because")
    ends = (i for i in range(cue.end, len(facts.raws)) if facts.raws[i].text in because)
    end = next(ends, len(facts.raws))  # why they were excepted names nobody
    span = range(cue.end, end)
    behind = [u.text for u in facts.read_rest(span).unknown]
    if not behind and span:
        said = facts.folded.written(facts.raws[span.start].start, facts.raws[span[-1]].end)
        behind = [name for name in called.joined(facts) if name in said]
    if not behind and not order.target.excepts:
        behind = list(called.overlooked(facts, span))
    return replace(order, verb="exception", text=behind[0]) if behind else order


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
        if word is None and index not in kept and (order is None or order.verb in _OF_ALL):
            word = day_slip(raw, lexicon)
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
    if order.verb == "add_offer":  # 'oncidium, 2 of them, bark'
        unknown = tuple(u for u in unknown if u.text not in {str(p.count) for p in order.plants})
    if order.verb == "add" and order.standing == "total":  # 'split the paphs, now i have 5'
        taken = {str(p.count) for p in order.plants}
        taken |= words_under(facts.words.lexicon.language, "divided")
        unknown = tuple(u for u in unknown if plain(u.text) not in taken)
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
    elif order.verb in ("judge", "brings") or (order.verb == "fed" and order.amount is not None):
        base = asked.judged(facts)
        unknown = base.unknown
    elif order.verb in figuring.VERBS or order == Order("tell", text="ppm_scale"):
        base = replace(facts.rest, conflicts=(), read_as=())
        base = replace(base, target_n_mg_l=None, target_ec_ms_cm=None)
    elif order.verb == "together" and order.feeds:  # two analyses are no contradiction here
        over = [c for c in facts.rest.conflicts if c.slot != "analysis"]
        base = replace(facts.rest, conflicts=tuple(over), analysis=None, read_as=())
        unknown = _with_digits(unknown)
    elif order.verb == "lose":  # 'I have no masdevallia any more' denies nothing else
        doubts = tuple(c for c in facts.rest.conflicts if c.code != "negation")
        base = replace(facts.rest, conflicts=doubts)
    elif order.verb == "rescue":
        base = signs.rest(facts)
        unknown = base.unknown
    elif order.verb == "meter":
        base = replace(facts.meter_rest, read_as=())
        unknown = _with_digits(base.unknown)
    elif order.verb == "water" and order.ions:
        base = facts.report_rest
        unknown = _with_digits(base.unknown)
    elif order.verb in ("water_mix", "water_parts", "water_suits", "supplement"):
        base = facts.rest
        if order.mix is not None:  # two waters are no contradiction here
            base = replace(base, conflicts=(), target_ec_ms_cm=None, water=None, read_as=())
        unknown = _with_digits(unknown) if order.mix is None else ()
    elif order.verb == "reading":
        base = replace(facts.rest, read_as=())  # what ran out of a pot is no water
    elif order.verb == "stock":  # 'koncentrat z 20-20-20': what is made, not what it is made of
        base = facts.read_rest(without=_cue_words(facts, "stock", "concentrate"))
        unknown = base.unknown
    elif order.verb == "reach":
        base = _dose(facts, without=_cue_words(facts, "how_far"))
        unknown = tuple(u for u in base.unknown if not u.text[:1].isdigit())  # the amount itself
    elif order.verb == "kit":
        base = replace(facts.rest, scale_step_g=shelf.scale_step(facts))
    elif order.verb in ("add", "add_offer") and len(order.plants) > 1:
        each = [facts.read_rest(span) for span in borders(facts)]
        apart = len(order.plants) > len(each)  # 'one in bark, one in moss'
        doubts = tuple(c for r in each for c in r.conflicts if not (apart and c.slot == "medium"))
        base = replace(facts.rest, conflicts=doubts)
    else:
        base = facts.rest
    if order.verb in _OF_SOME and not order.also and base.count is None:
        some = counting.some_of(facts)
        base = replace(base, count=some[0]) if some else base
        unknown = tuple(u for u in unknown if not some or u.text != some[1])
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


def _dose(facts: Facts, without: frozenset[int] = frozenset()) -> Reading:
    """A request for a dose: only names and places on record are taken out of it."""
    kinds = ("PLANT", "GONE", "PRODUCT")
    names = {i for m in facts.found if m.type in kinds for i in range(m.at, m.end)}
    names |= without | {i for _, run in facts.place_runs for i in run} | _excepted(facts)
    names |= {i for i in facts.newest if not facts.words.type_at(i)}
    reading = facts.understand([r for i, r in enumerate(facts.raws) if i not in names])
    ailing, held = signs.beside_a_dose(facts)
    pure = requested.water_alone(facts, reading)
    if pure:  # 'no feed for the phals' says what it is, and excepts nobody
        reading = replace(reading, conflicts=_but_denials(reading.conflicts))
    order = Order(
        "dose",
        target=facts.target,
        products=facts.products,
        asks=facts.question,
        asks_kind="dose" if facts.has("dose", "dose_word") else None,
        picks=picking.numbers(facts),
        only_plants=picking.only_plants(facts),
        unit="can" if reading.volume_l is None and _for_the_can(facts) else "",
        newest=bool(facts.newest) and reading.analysis is None and not facts.products,
        text="clear" if pure else requested.only_told(facts, reading, frozenset(held)),
    )
    if reading.genera:
        order = others.of_others(facts, order) or order
    else:
        order = replace(order, strange=called.strange(facts))
    if order.verb == "dose" and reading.analysis is None and not facts.products:
        mixed = called.behind_volume(facts)
        order = replace(order, verb="no_such", strange=mixed) if mixed else order
    figures = reading.water.hardness_mg_l_caco3 if reading.water is not None else None
    return replace(
        reading,
        text=facts.folded.original,
        order=order,
        ailing=ailing,
        hard_water=figures is None and facts.has("hard_water"),
        unknown=tuple(u for u in reading.unknown if u.text not in held),
    )


def _but_denials(conflicts: tuple[Conflict, ...]) -> tuple[Conflict, ...]:
    return tuple(c for c in conflicts if c.code != "negation")


def _excepted(facts: Facts) -> frozenset[int]:
    """The words that except kinds of plants: 'for everything except the vandas'."""
    cue = facts.first("except")
    target = facts.target
    some = target.everything or target.named_one  # else it is 'no feed for the phals'
    if cue is None or not some or not (target.not_genera or target.not_names):
        return frozenset()
    kinds = [i for i, _ in facts.genus_places if i >= cue.end]
    last = max((*kinds, *(m.end - 1 for m in facts.found if m.type == "PLANT")), default=cue.at)
    between = range(cue.end, last)
    joined = all(i in kinds or i in facts.named or facts.is_filler(i) or facts.is_and(i)
                 for i in between)  # fmt: skip
    return frozenset(range(cue.at, last + 1)) if joined else frozenset()


def _for_the_can(facts: Facts) -> bool:
    """'how much for the can': as much as it holds."""
    vessel = any((t.type, t.value) == ("LOOSE_MEASURE", "vessel") for t in facts.tokens)
    counted = any(t.type in ("FRACTION", "NUMBER") for t in facts.tokens)
    asks = facts.has("dose") or facts.says_any("full")  # 'a full can for the vandas'
    return asks and (vessel or facts.has("can", "vessel")) and not counted


#: In this order; the first that fits says what is wanted.
_FORMS: tuple[simple.Form, ...] = (
    harm.harm,
    asked.spilled,
    simple.only("thanks", "thanks"),
    simple.only("greeting", "hail"),
    amending.blamed,
    simple.undone,
    simple.undo,
    care.after_repotting,
    simple.bare("done", "done"),
    asking.flush_how,
    asking.plants_left,
    guiding,
    simple.bare("yes", "yes"),
    reminding.not_now,
    reminding.pause,
    reminding.stop,
    reminding.skip,
    reminding.skip_on,
    reminding.not_then,
    simple.left,
    simple.bare("no", "no"),
    simple.bare("no", "stop", text="stop"),
    simple.bare("why", "why"),
    simple.bare("more", "more"),
    simple.bare("help", "help"),
    simple.bare("skip", "skip", "unsure"),
    simple.bare("skip", "later", text="later"),
    asked.kept,
    simple.bare("quiet", "quiet"),
    simple.bare("loud", "loud"),
    reminding.quiet_hours,
    reminding.resume,
    reminding.move,
    reminding.remind,
    reminding.wished,
    files.calendar,
    picturing.year,
    picturing.salts,
    picturing.card,
    reminding.listing,
    simple.phrase("forget", "forget"),
    files.take_in,
    files.give_out,
    asked.language,
    asked.not_for_feed,
    asking.who,
    asking.tell,
    asking.beginner,
    signs.rescue,
    figuring.which_scale,
    figuring.acid,
    figuring.of_nitrogen,
    figuring.salts_together,
    figuring.brings,
    figuring.most_ec,
    figuring.pour,
    figuring.convert,
    reaching.reach,
    asked.unshelved,
    overdoses.overdone,
    asked.judge,
    asked.of_the_last,
    asked.remedy,
    asked.argue,
    asked.bottle,
    prices.compare,
    care.history,
    waters.meter,
    waters.report,
    waters.by_parts,
    waters.mix,
    waters.suits,
    waters.supplement,
    chemistry.salts,
    chemistry.together,
    chemistry.stock,
    chemistry.blend,
    shelf.choose,
    collection.how_many,
    care.plan,
    care.done,
    shelf.remains,
    shelf.described,
    collection.lose,
    collection.lacking,
    simple.phrase("shelf", "shelf"),
    meant.asked_back,
    asking.hard,
    asking.settings,
    asking.home,
    shelf.kit,
    collection.rename,
    care.runoff,
    care.repot,
    shelf.products,
    shelf.product,
    shelf.name_alone,
    meant.nothing_given,
    meant.unfed,
    collection.add,
    collection.had,
    care.log,
    care.growth,
    collection.is_of_kind,
    collection.correct,
    collection.move,
    asking.water,
    asking.follow_up,
    collection.what_is_there,
    collection.listed,
)
