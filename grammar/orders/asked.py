"""What people ask beside a dose: forms for `orders`.

Whether an amount is too much, home remedies, two feeds in one bottle by their labels, and the
language of the answers.
"""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from itertools import pairwise

from grammar.lexicon import settings_of
from grammar.order import FeedSaid, Order
from grammar.orders import queried
from grammar.orders.facts import Facts
from grammar.reading import Reading
from grammar.words.numerals import compose, fraction_value
from grammar.words.scan import Raw, Token
from grammar.words.units import to_canonical

#: The longest name of a language that is looked for [words].
_LONGEST_LANGUAGE = 3
#: A volume up to this part of the other is the feed, and the other the water [1].
_FEED_OF_WATER = 0.1
#: A lone volume up to this is a feed that is measured [L].
_MOST_FEED_L = 0.2
#: What can stand before a measure without a size: 'a cap', 'the whole cap', 'wlałam nakrętkę'.
_BEFORE_LOOSE = frozenset({"NUMBER", "ARTICLE", "PAST", "MULTIPLE", "FULL", "FILLER"})
_SPOONS = {"us_teaspoon": 1.0, "us_tablespoon": 3.0}
#: That some of it was eaten or drunk.
_EATEN = ("eaten", "swallowed", "mouth")
#: What else a weight or a volume can be said of.
_OTHER_AMOUNTS = (
    "naming", "price", "stock", "share_bottle", "blend", "salts", "runoff", "plan", "rename",
    "syringe", "history", "cheaper", "compare", "supplement",
)  # fmt: skip


# --- the language ------------------------------------------------------------------------------


def language(facts: Facts) -> Order | None:
    """In which language to answer: 'our language is english', 'language: en'."""
    cue = facts.first("language")
    if cue is None or facts.asks_dose or facts.rest.genera or facts.has("naming"):
        return None
    behind = [r for r in facts.raws[cue.end :] if r.kind == "word"]
    if not facts.starts("language", "my") and behind:
        return None
    if len(behind) > _LONGEST_LANGUAGE or any(r.after_break for r in behind[1:]):
        return None
    article = facts.words.lexicon.words.get(behind[0].text) if len(behind) > 1 else None
    named = behind[article is not None and article.type == "ARTICLE" :]  # 'el español'
    said = [facts.folded.written(r.start, r.end) for r in named]
    return Order("language", text=" ".join(said))


# --- what is kept, spilled, and no feed ----------------------------------------------------------


def kept(facts: Facts) -> Order | None:
    """What is kept of people, how a group gets rid of us, whether it can be quiet at night."""
    if facts.asks_dose or facts.rest.genera or facts.has("naming"):
        return None
    if facts.has("kept", "kept_questions"):
        return Order("kept", text="questions" if facts.has("kept_questions") else "")
    if facts.has("removing"):
        return Order("removing")
    return Order("quiet_night") if facts.has("quiet_night") else None


def spilled(facts: Facts) -> Order | None:
    """Feed on the floor, or on a plant: 'spilled concentrate on the floor'."""
    if not facts.has("spilled") or facts.has("naming", "rename", "lose", "dose", "remind"):
        return None
    if facts.rest.volume_l is not None and (facts.rest.analysis or facts.products):
        return None  # 'spilled the can, again 2 l of 20-20-20'
    rest = facts.rest
    feed = rest.mentions_feeding or rest.form or facts.products or facts.has("concentrate", "stock")
    if facts.target.named and not feed:
        return None
    if facts.target.named:  # as much as was spilled, and as strong
        return Order("rescue", target=facts.target, signs=("fed_strong",))
    return Order("spill")


def not_for_feed(facts: Facts) -> Order | None:
    """What kills pests, and plants that are eaten: nothing that a dose of feed is for."""
    rest = facts.rest
    if facts.has("naming", "rename", "lose", "remind", "lacking") or facts.has("fed", "repot"):
        return None
    dosed = rest.volume_l is not None and (rest.analysis is not None or facts.products)
    if facts.has("food") and not rest.genera and not facts.target.named_one:
        return Order("food")
    return Order("pests") if facts.has("pests") and not dosed else None


def argue(facts: Facts) -> Order | None:
    """'That's too much', 'I always use full strength': a view, and no dose that is asked for."""
    rest = facts.rest
    asks = "?" in facts.folded.text or facts.has(
        "make_it", "half_that", "double_that", "quarter_that", "and_for", "fed", "clear", "flush",
    )  # fmt: skip
    dosed = rest.volume_l is not None or rest.analysis is not None or facts.products or rest.water
    if not facts.has("argues") or asks or dosed or rest.genera or facts.target.named:
        return None
    return Order("argue")


def remedy(facts: Facts) -> Order | None:
    """What is in the kitchen and no feed: 'can it drink coffee', 'banana water for orchids?'."""
    cue = facts.first("remedy", "remedy_calcium")
    if cue is None or facts.rest.analysis or facts.products or facts.rest.label_rate:
        return None
    if facts.has("naming", "rename", "have", "move", "choose"):
        return None
    asks = "?" in facts.folded.text or facts.has("may", "and_for", "dose", "dose_word")
    told = facts.has("fed", "clear", "flush", "repot")
    gives = facts.has("takes", "give", "gave", "use") or facts.rest.mentions_feeding
    poured = facts.rest.volume_l is not None  # 'coffee in 2 l' wants no dose of the feed
    if not (asks or facts.alone or ((gives or poured) and not told)):
        return None
    words = " ".join(r.text for r in facts.raws[cue.at : cue.end])
    kind = "calcium" if cue.value == "remedy_calcium" else None
    return Order("remedy", text=words, asks_kind=kind)


def unshelved(facts: Facts) -> Order | None:
    """Epsom salt, kelp and the like by themselves: no feed on record is meant by them."""
    said = next((t for t in facts.tokens if (t.type, t.value) == ("FILLER", "additive")), None)
    if said is None or facts.rest.analysis or facts.new_name[0]:
        return None
    if facts.products and (facts.rest.volume_l is not None or not _unread(facts)):
        return None  # what goes in beside a feed
    by_name = facts.says("WATER_TALK", "supplement")
    told = facts.has("fed", "clear", "flush", "gave", "repot", "put_in", "remedy", "blend", "stock")
    if by_name or told or facts.has("remedy_calcium", "share_bottle", "lacking", "price"):
        return None
    counted = any(raw.kind == "number" for raw in facts.raws)
    if not (counted or facts.has("may")):
        return None
    text = facts.folded.written(said.raws[0].start, said.raws[-1].end)
    return Order("unshelved", text=text)


def _unread(facts: Facts) -> bool:
    """Whether a figure was not understood."""
    return any(c.isdigit() for u in facts.rest.unknown for c in u.text)


# --- whether an amount is too much -------------------------------------------------------------


@dataclass(frozen=True, slots=True)
class _Said:
    """An amount of feed and the water it goes into; what was not said is None or empty."""

    amount: float | None
    unit: str  # g, ml or tsp; 'loose' for a measure without a size
    volume_l: float | None
    raws: frozenset[int]  # where the words begin that say it


@dataclass(frozen=True, slots=True)
class _Quantity:
    kind: str
    value: float  # in g, tsp or L
    raws: tuple[Raw, ...]


def judge(facts: Facts) -> Order | None:
    """Whether so much is too much: '2 tbsp of 20-20-20 in 10 l, is that too much?'."""
    asked_for = "?" in facts.folded.text
    asks = facts.has("judge") or (asked_for and facts.has("yes", "argues"))
    asks = asks or (facts.has("argues") and facts.rest.analysis is None and not facts.products)
    asks = asks or _wonders_about_a_rate(facts)
    if not asks or _of_something_else(facts):
        logged = facts.has("fed", "gave") and not facts.target.empty
        told = not logged and (put_in(facts) is not None or _into_a_vessel(facts))
        if facts.question or not (told or _put_unmeasured(facts)):
            return None
    said = _amount(facts)
    if said is None:  # 'is that too much?' of our own answer
        bare = asked_for or (_alone(facts) and not facts.has("argues"))
        return Order("last", text="strong") if bare and not _says_of_what(facts) else None
    given = facts.has("fed", "gave", "put_in") or any(t.type == "PAST" for t in facts.tokens)
    return Order(
        "judge", target=facts.target, products=facts.products,
        amount=said.amount, unit=said.unit, given=given, when=facts.when[0],
        text="vessel" if said.volume_l is None and _vessel(facts) else "",
    )  # fmt: skip


def _wonders_about_a_rate(facts: Facts) -> bool:
    """'0.5 g blue per litre gives what EC': so much of a feed, and no label that says it."""
    if not (facts.products or facts.rest.analysis) or facts.rest.volume_l is not None:
        return False
    if any(t.type == "LABEL" for t in facts.tokens) or not queried.queries(facts):
        return False
    said = _amount(facts)
    rated = said is not None and said.amount is not None and said.volume_l is not None
    return rated and not facts.has("price", "cheaper", "stock", "default")


def of_the_last(facts: Facts) -> Order | None:
    """What is asked of the dose that was just told: 'is that safe', 'how many drops is that'."""
    rest = facts.rest
    others = rest.volume_l is not None or rest.analysis or rest.label_rate or rest.genera
    if others or facts.products or facts.target.named or facts.has("pets", "have", "fed", "gave"):
        return None
    asks = facts.question or facts.has("may")
    for cue in ("by_spoon", "by_drops", "content"):
        if facts.has(cue) and (asks or facts.alone):
            return Order("last", text=cue)
    if facts.has("spoons") and facts.has("may"):
        return Order("last", text="by_spoon")
    safe = facts.has("harm") and not facts.has(*_EATEN) and _alone(facts)
    return Order("last", text="safe") if safe else None


def _alone(facts: Facts) -> bool:
    """Whether nothing stands in it but order phrases, filler and a word that begins a question."""
    begins = settings_of(facts.words.lexicon.language).get("asking", ())
    if facts.alone or not facts.raws or facts.raws[0].text not in begins:
        return facts.alone
    return facts.part(range(1, len(facts.raws))).alone


def put_in(facts: Facts) -> _Said | None:
    """An amount of feed that went into so much water: 'I put 10 g blue in 5 l'; None otherwise."""
    done = facts.has("fed", "gave", "put_in") or any(t.type == "PAST" for t in facts.tokens)
    labelled = facts.has("make_it", "half_that", "double_that") or any(
        t.type == "LABEL" for t in facts.tokens
    )
    if not done or labelled or _of_something_else(facts):
        return None
    said = _amount(facts)
    full = said is not None and said.amount is not None and said.volume_l is not None
    return said if full else None


def _put_unmeasured(facts: Facts) -> bool:
    """Whether a measure without a size went into so much water: 'I put 2 caps in 5 l'."""
    done = facts.has("gave", "put_in") or any(t.type == "PAST" for t in facts.tokens)
    if not done or facts.has("fed") or _of_something_else(facts):
        return False
    said = _amount(facts)
    return said is not None and said.unit == "loose" and said.volume_l is not None


def _into_a_vessel(facts: Facts) -> bool:
    """Whether so much went into a vessel whose size nobody said: '10 g in the bucket'."""
    done = facts.has("fed", "gave", "put_in") or any(t.type == "PAST" for t in facts.tokens)
    if not done or _of_something_else(facts) or not _vessel(facts):
        return False
    said = _amount(facts)
    return said is not None and said.volume_l is None and said.unit != "ml"


def _vessel(facts: Facts) -> bool:
    return any(t[:2] == ("LOOSE_MEASURE", "vessel") or t.type == "CONTAINER" for t in facts.tokens)


def of_a_mix(facts: Facts) -> bool:
    """Whether feed is said in so much water, and not as a label says it: '10 g blue in 5 l'."""
    said = _amount(facts)
    labelled = any(t.type in ("LABEL", "PER", "EVERY") for t in facts.tokens)
    each = any(  # 'na litr'
        (a.type, a.value, b.type) == ("IN", "onto", "VOLUME_UNIT")
        for a, b in pairwise(facts.tokens)
    )
    return said is not None and said.volume_l is not None and not (labelled or each)


def _of_something_else(facts: Facts) -> bool:
    """Whether a weight or a volume is said of something else than feed in water."""
    if facts.has(*_OTHER_AMOUNTS) or any(t.type == "SCALE" for t in facts.tokens):
        return True
    return any(m.type == "CURRENCY" for m in facts.found)


def _says_of_what(facts: Facts) -> bool:
    """Whether it is said what may be too much, or for which plants."""
    rest = facts.rest
    said = rest.unknown or any(raw.kind in ("number", "analysis") for raw in facts.raws)
    return bool(said or rest.genera or facts.products or facts.target.named)


def judged(facts: Facts) -> Reading:
    """The figures of a message beside the amount that it asks about, and the water of that."""
    said = _amount(facts)
    assert said is not None  # the form found one
    past = {r.start for t in facts.tokens if t.type == "PAST" for r in t.raws}
    left = [
        raw for i, raw in enumerate(facts.raws)
        if i not in facts.held and raw.start not in said.raws | past
    ]  # fmt: skip
    rest = facts.understand(left)
    unknown = tuple(u for u in rest.unknown if any(c.isdigit() for c in u.text))
    return replace(rest, volume_l=said.volume_l or rest.volume_l, unknown=unknown)


def amount_said(facts: Facts) -> _Said | None:
    """An amount of feed and the water it goes into, where nothing else is said of either."""
    return None if _of_something_else(facts) else _amount(facts)


def _amount(facts: Facts) -> _Said | None:
    found = _quantities(facts)
    solid = [q for q in found if q.kind in ("g", "tsp", "loose")]
    volumes = sorted((q for q in found if q.kind == "l"), key=lambda q: q.value)
    if len(solid) > 1 or len(volumes) > 2:
        return None
    raws = frozenset(r.start for q in found for r in q.raws)
    if solid:
        if len(volumes) > 1:
            return None
        water = volumes[0].value if volumes else None
        amount = solid[0].value if solid[0].kind != "loose" else None
        return _Said(amount, solid[0].kind, water, raws)
    if len(volumes) == 2 and volumes[0].value <= _FEED_OF_WATER * volumes[1].value:
        return _Said(1000 * volumes[0].value, "ml", volumes[1].value, raws)
    if len(volumes) == 1 and volumes[0].value <= _MOST_FEED_L:
        return _Said(1000 * volumes[0].value, "ml", None, raws)
    return None


def _quantities(facts: Facts) -> list[_Quantity]:
    """The weights, spoons and volumes of a message, each with its words."""
    starts = {r.start: i for i, r in enumerate(facts.raws)}
    out = facts.named | facts.when[1] | facts.new_name[1]
    tokens = compose([t for t in facts.tokens if starts[t.raws[0].start] not in out])
    found = []
    for index, token in enumerate(tokens):
        before = tokens[index - 1] if index else None
        two_before = tokens[index - 2] if index > 1 else None
        if token.after_break or before is None:
            continue
        if token.type == "LOOSE_MEASURE" and token.value == "vessel":
            continue  # what it is put into
        if token.type == "LOOSE_MEASURE" and before.type in _BEFORE_LOOSE:
            found.append(_Quantity("loose", 0.0, (*before.raws, *token.raws)))
        elif token.type in ("MASS_UNIT", "SPOON", "VOLUME_UNIT"):
            number = _number(before, two_before)
            if number is not None:
                value, raws = number
                quantity = _quantity(facts, token, value, (*raws, *token.raws))
                if quantity is not None:
                    found.append(quantity)
    return found


def _number(token: Token, before: Token | None) -> tuple[float, tuple[Raw, ...]] | None:
    """How many of the unit that follows, with the words that say it."""
    if token.type == "NUMBER":
        try:
            value = float(token.value)
        except ValueError:  # '1,500': it could be two things
            return None
        return (value, token.raws) if math.isfinite(value) and value > 0 else None
    if token.type == "FRACTION":
        return fraction_value(token.value), token.raws
    if token.type == "ARTICLE":  # 'half a teaspoon', 'a teaspoon', '2 ml a litre'
        if before is not None and before.type == "FRACTION":
            return fraction_value(before.value), (*before.raws, *token.raws)
        return 1.0, token.raws
    each = token.type in ("PER", "EVERY") or (token.type, token.value) == ("IN", "onto")
    return (1.0, token.raws) if each else None  # 'na litr'


def _quantity(facts: Facts, unit: Token, value: float, raws: tuple[Raw, ...]) -> _Quantity | None:
    if unit.type == "SPOON":
        return _Quantity("tsp", value * _SPOONS[unit.value], raws)
    if unit.type == "MASS_UNIT":
        return _Quantity("g", to_canonical(value, unit.value), raws)
    one = Raw("number", "1", 0, 0, False, False, False)
    litres = facts.understand([one, *unit.raws]).volume_l
    return None if litres is None else _Quantity("l", value * litres, raws)


# --- two feeds in one bottle -------------------------------------------------------------------


def bottle(facts: Facts) -> Order | None:
    """Feeds of the shelf or by their numbers in one bottle: 'can 20-20-20 and 15-0-0 be mixed'."""
    analyses = [i for i, raw in enumerate(facts.raws) if raw.kind == "analysis"]
    if not facts.has("share_bottle") or not analyses or facts.rest.volume_l is not None:
        return None
    if len(analyses) == 1 and facts.says("WATER_TALK", "supplement"):
        return Order("tell", text="bottle")
    starts = [_begins(facts, a, b) for a, b in pairwise([0, *analyses])]
    read = [facts.read_rest(range(a, b)) for a, b in pairwise([*starts, len(facts.raws)])]
    feeds = tuple(FeedSaid(r.analysis, dict(r.extras), r.form) for r in read if r.analysis)
    return Order("together", products=facts.products, feeds=feeds)


def _begins(facts: Facts, before: int, at: int) -> int:
    """Where the words about a feed begin: behind the 'and' or comma between it and the last."""
    for index in range(at, before, -1):
        kind = facts.words.type_at(index)
        if facts.raws[index].after_break or kind in ("AND", "OR") or index == before + 1:
            return index
    return at
