"""Questions and remarks: facts, who, settings, home, the water, what follows an answer."""

from __future__ import annotations

from grammar.order import Order
from grammar.orders import meant, signs
from grammar.orders.facts import Facts
from grammar.orders.files import text_after
from grammar.words.marks import Mark

#: Begins the value of a phrase that is answered with a fact.
_TELL = "tell_"
#: Of a plant on record, or of a day, the plan knows more.
_TELL_OF_NONE = frozenset({"tell_need", "tell_winter", "tell_repot_when"})


def home(facts: Facts) -> Order | None:
    cue = facts.first("home")
    if cue is not None and not facts.asks_dose and not facts.rest.genera:
        text = text_after(facts, cue)
        return Order("home", text=text) if text else None
    if facts.has("south", "north") and not facts.asks_dose and not facts.rest.genera:
        return Order("home", text="south" if facts.has("south") else "north")
    return None


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
    name = facts.new_name[0] or None
    owns = facts.has("my", "have", "default", "settings") or name
    if facts.starts("with_it") and not owns and not facts.target.named:
        return None  # 'with rain water': what a dose is made with
    used = "use" if facts.has("use", "default") else None
    if used and meant.is_denied(facts, "use"):
        return Order("not_changed")  # 'I no longer use tap water'
    if facts.target.named or (facts.target.again and facts.has("takes", "gave", "use")):
        gets = rest.growth is None and not facts.has("add", "have")
        return Order("water_for", target=facts.target) if gets else None
    if owns or used:
        return Order("water", name=name, asks_kind=used)
    figures = (rest.water.hardness_mg_l_caco3, rest.water.ec_ms_cm)
    return Order("water", name=name) if any(v is not None for v in figures) else None


def follow_up(facts: Facts) -> Order | None:
    for cue, factor in (("half_that", 0.5), ("double_that", 2.0), ("quarter_that", 0.25)):
        if facts.has(cue) and not facts.rest.analysis:
            return Order("follow_up", factor=factor, target=facts.target)
    if facts.rest.analysis and facts.rest.volume_l is not None:
        return None
    begins = facts.raws and facts.is_and(0) and not facts.asks_something_else
    if facts.has("make_it") or facts.starts("and_for") or begins:
        return Order("follow_up", target=facts.target, products=facts.products)
    chosen = facts.products and facts.has("use", "with_feed") and not facts.asks_dose
    if chosen and facts.says_any("ceases"):
        return Order("not_changed", text="product_default")  # 'I no longer use blue tub'
    if chosen and not facts.target.named:
        return Order("follow_up", products=facts.products)
    return None


def tell(facts: Facts) -> Order | None:
    """What a beginner asks beside feed: 'how often do I feed', 'sticky drops on the leaves'."""
    cue = next((m for m in facts.found if m.value.startswith(_TELL)), None)
    if cue is None or facts.asks_dose:
        return None
    fact, *besides = cue.value.split()
    others = {"fed", "flush", "clear", "repot", "remind", "naming", "history", "add", "move"}
    if facts.has(*others.difference(besides)) or _ails_besides(facts, cue):
        return None
    if fact in _TELL_OF_NONE and (facts.target.named_one or facts.when[0] is not None):
        return None  # 'do I need to feed Ruby today' asks for the plan
    return Order("tell", text=fact.removeprefix(_TELL))


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
