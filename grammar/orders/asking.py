"""Questions and remarks: facts, who, settings, home, the water, what follows an answer."""

from __future__ import annotations

from dataclasses import replace

from grammar.folding import plain
from grammar.lexicon import words_under
from grammar.order import Order, Target, When
from grammar.orders import called, meant, queried, requested, signs, simple, waters
from grammar.orders.facts import Facts
from grammar.orders.files import text_after
from grammar.words.marks import Mark

#: Begins the value of a phrase that is answered with a fact.
_TELL = "tell_"
_HALF = 0.5
#: Of a plant on record, or of a day, the plan knows more.
_TELL_OF_NONE = frozenset({"tell_need", "tell_winter", "tell_repot_when"})


def home(facts: Facts) -> Order | None:
    cue = facts.first("home")
    if cue is not None and (_goes_on(facts, cue) or not (facts.asks_dose or facts.rest.genera)):
        text = text_after(facts, cue)
        text = _without_season(facts, cue.end) or text
        before = any(not facts.is_filler(i) for i in range(cue.at))
        unused = _written(facts, range(cue.at)) if before else ""
        parts = tuple(_written(facts, span) for span in _parts(facts, cue.end))
        return Order("home", text=text, parts=parts, unused=unused) if text else None
    if facts.has("south", "north") and not facts.asks_dose and not facts.rest.genera:
        return Order("home", text="south" if facts.has("south") else "north")
    return None


def _without_season(facts: Facts, start: int) -> str:
    """Where somebody lives, without the season that it is there: 'melbourne so winter now'."""
    seasons = {t.raws[0].start for t in facts.tokens if t.type in ("SEASON", "MONTH")}
    ends = (i for i in range(start + 1, len(facts.raws)) if facts.raws[i].start in seasons)
    end = next(ends, 0)
    small = False
    while end > start + 1 and (facts.is_filler(end - 1) or facts.words.cue_at(end - 1)):
        small, end = True, end - 1
    return _written(facts, range(start, end)).rstrip(",;. ") if small else ""


def _goes_on(facts: Facts, cue: Mark) -> bool:
    """'I live in Leeds and I have 3 phals': a town first, and then something of its own."""
    spans = _parts(facts, cue.end)
    if len(spans) < 2 or not facts.starts("home") or facts.question:
        return False
    town = facts.part(spans[0])
    own = facts.part(range(spans[0].stop, len(facts.raws))).has("have", "having", "my", "add")
    said = town.rest.genera or town.place or town.rest.medium or town.asks_dose
    return own and not said and facts.rest.volume_l is None


def _parts(facts: Facts, start: int) -> list[range]:
    """The words from here on, parted at commas and 'and's."""
    cuts = [start]
    for index in range(start + 1, len(facts.raws)):
        if facts.raws[index].after_break or facts.is_and(index):
            cuts.append(index)
    return [range(a, b) for a, b in zip(cuts, [*cuts[1:], len(facts.raws)], strict=True) if a < b]


def _written(facts: Facts, span: range) -> str:
    """Some of the words as they were written, without an 'and' before them."""
    at = span.start + (facts.is_and(span.start) and len(span) > 1)
    return facts.folded.written(facts.raws[at].start, facts.raws[span.stop - 1].end)


def hard(facts: Facts) -> Order | None:
    """'my water is very hard': how hard is asked for."""
    if not facts.has("hard_water") or facts.asks_dose or facts.question:
        return None
    said = facts.rest.water
    if said is not None and said.hardness_mg_l_caco3 is not None:
        return None
    watery = said is not None or any(t.type == "WATER_WORD" for t in facts.tokens)
    return Order("water", text="hard") if watery or facts.alone else None


def water(facts: Facts) -> Order | None:
    rest = facts.rest
    if rest.water is None or facts.asks_dose or facts.question or facts.has("make_it"):
        return None
    if rest.volume_l is not None and rest.analysis is not None:
        return None  # a dose, and the water it is made with
    if waters.with_part(facts) is not None:
        return None  # 'half and half with rain' in the can
    name = facts.new_name[0] or None
    owns = facts.has("my", "have", "default", "settings") or name
    if facts.starts("with_it") and not owns and not facts.target.named:
        return None  # 'with rain water': what a dose is made with
    used = "use" if facts.has("use", "default") else None
    if used and meant.is_denied(facts, "use"):
        return Order("not_changed")  # 'I no longer use tap water'
    figures = (rest.water.hardness_mg_l_caco3, rest.water.ec_ms_cm)
    measured = any(v is not None for v in figures)
    lasts = measured or facts.has("since") or facts.says_any("now_on")
    if facts.when[0] == When("day", 0) and not lasts:
        return Order("not_changed", text="today")  # 'I use rain today' is no rule for tomorrow
    if facts.target.named or (facts.target.again and facts.has("takes", "gave", "use")):
        gets = rest.growth is None and not facts.has("add", "have")
        return Order("water_for", target=facts.target) if gets else None
    if not (owns or used or measured):
        return None
    if measured and (queried.of_another_time(facts) or queried.of_somebody_else(facts)):
        return Order("not_changed", text="water")
    if queried.queries(facts) or queried.rates_bare(facts):
        return Order("water_suits")
    return Order("water", name=name, asks_kind=used)


def follow_up(facts: Facts) -> Order | None:
    for cue, factor in (("half_that", 0.5), ("double_that", 2.0), ("quarter_that", 0.25)):
        if facts.has(cue) and not facts.rest.analysis:
            return Order("follow_up", factor=factor, target=facts.target)
    if simple.is_one_of(facts, "weaker"):
        return Order("follow_up", factor=0.5, target=facts.target)
    if facts.rest.analysis and facts.rest.volume_l is not None:
        return None
    begins = facts.raws and facts.is_and(0) and not facts.asks_something_else
    told = facts.has("not_done") or (facts.been and facts.has("fed", "clear", "flush"))
    if (facts.has("make_it") and not told) or facts.starts("and_for") or begins:
        strange = "" if facts.rest.genera else called.strange(facts)
        return Order("follow_up", target=facts.target, products=facts.products, strange=strange)
    chosen = facts.products and facts.has("use", "with_feed") and not facts.asks_dose
    unread = any(c.isdigit() for u in facts.rest.unknown for c in u.text)
    chosen = chosen and not unread  # so much of it, and nothing from now on
    if chosen and facts.says_any("ceases"):
        return Order("not_changed", text="product_default")  # 'I no longer use blue tub'
    if chosen and not facts.target.named:
        return Order("follow_up", products=facts.products)
    return None


def tell(facts: Facts) -> Order | None:
    """What a beginner asks beside feed: 'how often do I feed', 'sticky drops on the leaves'."""
    cue = next((m for m in facts.found if m.value.startswith(_TELL)), None)
    if cue is None and _asks_winter_half(facts):
        return Order("tell", text="winter_half", target=facts.target)
    if cue is None and _asks_which_first(facts):
        return Order("tell", text="first")
    if cue is None and facts.has("reminder_away") and not facts.asks_dose:
        return Order("tell", text="away")  # 'I'm away 4 to 18 April': no pause that can be set
    if cue is None or (facts.asks_dose and not _makes_up(facts, cue)):
        return None
    fact, *besides = cue.value.split()
    others = {"fed", "flush", "clear", "repot", "remind", "naming", "history", "add", "move"}
    others -= {"move"} if fact == "tell_missed" else set()  # 'pongo el doble' moves nothing
    if facts.has(*others.difference(besides)) or _ails_besides(facts, cue):
        return None
    if fact in _TELL_OF_NONE and (facts.target.named_one or facts.when[0] is not None):
        return None  # 'do I need to feed Ruby today' asks for the plan
    return Order("tell", text=fact.removeprefix(_TELL), target=facts.target)


def _asks_winter_half(facts: Facts) -> bool:
    """'does the vanda get only half in winter too': of the usual, and not of what winter leaves."""
    rest = facts.rest
    if rest.season != "winter" or any(raw.kind == "number" for raw in facts.raws):
        return False
    half = facts.has("half_that") or rest.strength == _HALF or facts.says_any("only_half")
    asks = facts.question or facts.says_any("query_heads") or facts.says_any("only_half")
    return half and asks and not (rest.analysis or rest.regime or facts.has("fed", "gave"))


def _asks_which_first(facts: Facts) -> bool:
    """'flush first, then feed, or the other way round?': water and feed, and nothing counted."""
    feeds = any(requested.feeds_at(facts, i) for i in range(len(facts.raws)))
    if not feeds or any(raw.kind == "number" for raw in facts.raws):
        return False
    if not facts.says_any("wets") or facts.has("fed", "gave", "repot", "remind"):
        return False
    begun = facts.says_any("begins_first") and not facts.been
    either = any(t.type == "OR" for t in facts.tokens) or "?" in facts.folded.text
    return facts.says_any("which_first") or (begun and (either or facts.says_any("query_heads")))


def plants_left(facts: Facts) -> Order | None:
    """'what's left', 'which ones do I still have': of plants, unless a feed is named."""
    if not facts.has("plants_left") or facts.products or facts.has("can", "vessel"):
        return None
    others = facts.rest.mentions_feeding or facts.rest.unknown
    return Order("plants", target=facts.target) if not others else None


def flush_how(facts: Facts) -> Order | None:
    """'how do I flush them': of the plants last spoken of; of one that is named tell its salts."""
    if not facts.has("how_flush") or facts.has("remind") or facts.rest.analysis:
        return None
    named = facts.target.named or facts.rest.unknown  # 'Max', perhaps not on record
    return None if named else Order("explain", text="flush", target=Target(again=True))


#: Beside these nothing general is asked.
_NO_BEGINNERS = ("remind", "gave", "history", "undo", "choose", "which", "dose", "add")


def beginner(facts: Facts) -> Order | None:
    """'can I feed in flower', 'my phal does not bloom', 'when does the nobile rest'."""
    rest = facts.rest
    settings = facts.words.lexicon.language
    words = {raw.text for raw in facts.raws}
    means = not words.isdisjoint(words_under(settings, "means")) and rest.volume_l is None
    numbers = rest.analysis is not None or any(raw.kind == "analysis" for raw in facts.raws)
    if numbers and means and meant.begins_with(facts, "means_what"):
        return Order("explain", text="npk")  # 'what does 20-20-20 mean'
    lasts = not words.isdisjoint(words_under(settings, "lasts")) and rest.volume_l is None
    if rest.weight_g is not None and lasts and meant.begins_with(facts, "lasts_how"):
        tin = Order("reach", target=facts.target, products=facts.products)
        return replace(tin, amount=rest.weight_g, unit="g")  # 'how long does 500 g last'
    figures = (rest.volume_l, rest.weight_g, rest.analysis, rest.strength, rest.label_rate)
    if any(v is not None for v in figures) or facts.products or facts.target.names:
        return None

    def says(key: str) -> bool:
        return not words.isdisjoint(words_under(settings, key))

    def tells(fact: str) -> Order:
        return Order("tell", text=fact, target=facts.target)

    resting = rest.growth == "resting" or says("rests")
    if resting and len(rest.genera) == 1 and meant.begins_with(facts, "wonders_when"):
        return tells("rest_months")
    if facts.has(*_NO_BEGINNERS) or facts.when[0] is not None:
        return None

    blooms = says("blooms") or rest.growth == "flowering"
    asks = meant.begins_with(facts, "wonders") or "?" in facts.folded.text
    when = meant.begins_with(facts, "wonders_when")
    if blooms and not asks and not says("no_longer") and _denied_bloom(facts):
        return tells("no_bloom")
    if not (asks or when):
        return None
    feed = rest.mentions_feeding or any(m.value == "feed" for m in facts.tasks)
    if says("repots"):
        if feed and not blooms:
            return tells("before_repot" if says("before_it") else "repotted")
        told = bool(rest.unknown) and not _only(facts, "repots")
        return None if told else tells("repot_flower" if blooms else "repot_when")
    if resting and when:
        return tells("rest_months")
    if resting and feed:
        return tells("rest_feed")
    if not feed or rest.unknown:
        return None
    if blooms:
        return tells("in_flower")
    return tells("summer") if rest.season == "summer" else None


def _only(facts: Facts, key: str) -> bool:
    """Whether all that is unknown are words of a setting: 'umtopfen' is none of a dose."""
    listed = words_under(facts.words.lexicon.language, key)
    return all(plain(w) in listed for u in facts.rest.unknown for w in u.text.split())


def _denied_bloom(facts: Facts) -> bool:
    """Whether a word for flowers stands near one that denies: 'blüht nicht', 'never blooms'."""
    language = facts.words.lexicon.language
    denies, listed = words_under(language, "denials"), words_under(language, "blooms")
    denied = [i for i, raw in enumerate(facts.raws) if raw.text in denies]
    said = [i for i, raw in enumerate(facts.raws) if raw.text in listed]
    return any(0 < abs(i - j) <= _NEAR_BLOOM for i in denied for j in said)


#: So many words apart, a denial is still of the flowers: 'blüht einfach nicht'.
_NEAR_BLOOM = 3


def _makes_up(facts: Facts, cue: Mark) -> bool:
    """Whether more is asked for because a feed was missed: 'forgot to feed, give double?'."""
    rest = facts.rest
    more = rest.strength is not None and rest.strength > 1
    bare = rest.volume_l is None and rest.analysis is None
    return cue.value == "tell_missed" and (more or bare)


def _ails_besides(facts: Facts, cue: Mark) -> bool:
    """Whether a sign of harm is told besides: 'brown aerial roots and a white crust'."""
    spans = (range(cue.at), range(cue.end, len(facts.raws)))
    return any(signs.ails(facts.part(span)) for span in spans if span)


def who(facts: Facts) -> Order | None:
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
    return (
        Order("who", text="rest", when=facts.when[0])
        if not facts.has("dose", "dose_word", "fed")
        else None
    )


def settings(facts: Facts) -> Order | None:
    asked = facts.has("settings") and not facts.asks_dose and facts.alone
    return Order("settings") if asked else None
