"""Harm to people, pets and fish, and where no feed may go: forms for `orders`.

Asked before all others, and of words found apart from theirs, so that 'he drank feed, what do I
do' asks for no plan, and 'my hands burn from the powder' for no dose.
"""

from __future__ import annotations

from dataclasses import dataclass

from grammar.lexicon import words_under
from grammar.order import Order
from grammar.orders import signs
from grammar.orders.facts import Facts

#: That some of it was eaten or drunk.
_EATEN = frozenset({"eaten", "swallowed", "mouth"})
#: Of these too much may be, and it is no feed.
_NO_FEED = frozenset({"WATER", "WATER_WORD", "MEDIUM", "LAMP"})
#: What is done with plants, also over a sink.
_CARE = ("fed", "clear", "flush", "repot")


@dataclass(frozen=True, slots=True)
class _Heard:
    """One message looked at for harm: what is said of it, and of plants and feed."""

    facts: Facts
    said: frozenset[str]
    plants: bool
    feed: bool

    def says(self, *values: str) -> bool:
        """Whether one of these fell."""
        return not self.said.isdisjoint(values)

    @property
    def eaten(self) -> bool:
        """Whether it was surely eaten or drunk, whoever did it."""
        return not self.said.isdisjoint(_EATEN)

    @property
    def child(self) -> bool:
        """Whether a child did it, and no animal."""
        who = [m.value.split() for m in self.facts.harms if {"who", "pets"} & set(m.value.split())]
        return bool(who) and all("child" in values for values in who)

    @property
    def cries(self) -> bool:
        """Whether it begins or ends with a cry for help."""
        cries = (m for m in self.facts.harms if m.value == "cry")
        return any(m.at == 0 or m.end == len(self.facts.raws) for m in cries)


def harm(facts: Facts) -> Order | None:
    """'The dog drank from the can', 'my eyes burn', 'is it poison', 'can I pour it in the sink'."""
    if not facts.harms:
        return None
    heard = _heard(facts)
    calls = heard.says("vet", "poison")  # to call a vet gives nobody that name
    if facts.has("naming", "rename") and not (calls and not heard.plants):
        return None
    return next((order for form in _FORMS if (order := form(heard)) is not None), None)


def is_worried(facts: Facts) -> bool:
    """Whether a message says nothing but that somebody is worried: 'what now', 'oh no'."""
    return _is_one_of(facts, "worried") or is_alarmed(facts)


def is_alarmed(facts: Facts) -> bool:
    """Whether a message is nothing but a cry of alarm: 'emergency', 'oh god'."""
    return _is_one_of(facts, "alarmed")


def _is_one_of(facts: Facts, key: str) -> bool:
    said = " ".join(raw.text for raw in facts.raws if raw.kind == "word")
    return said in words_under(facts.words.lexicon.language, key)


def _heard(facts: Facts) -> _Heard:
    said = frozenset(v for m in facts.harms for v in m.value.split())
    rest = facts.rest
    kinds = any(t.type in ("GENUS", "PLANTS") for t in facts.tokens)
    plants = bool(kinds or rest.genera or facts.target.names)
    feed = rest.mentions_feeding or rest.form or facts.products
    return _Heard(facts, said, plants, bool(feed or facts.has("concentrate", "stock")))


def _ate(heard: _Heard) -> Order | None:
    """A pet, a child or somebody else who ate or drank of it, or is ill."""
    facts = heard.facts
    if facts.has("remedy", "add") or (facts.has("lose") and heard.plants):
        return None
    if heard.says("who", "pets"):
        ill = (heard.says("ill") or heard.cries) and not heard.plants
        if heard.eaten or heard.says("takes_in") or ill:
            return Order("pets", text="child" if heard.child else "", given=True)
        return _near_pets(heard)
    theirs = heard.says("person") and heard.says("takes_in")
    theirs = (theirs or (heard.says("person", "me") and heard.eaten)) and not heard.plants
    # 'drank feed': who did is not said
    nobody = heard.says("downed") and heard.feed and not heard.plants
    if theirs or nobody or heard.says("swallowed", "mouth"):
        return Order("hurt", text="swallowed")
    return None


def _near_pets(heard: _Heard) -> Order | None:
    """What is asked of pets and children: 'is that safe for my cat?'; no dose is wanted."""
    facts = heard.facts
    if not heard.says("pets") or facts.asks_dose:
        return None
    asks = facts.has("harm") or heard.says("poison", "may_eat")
    if facts.has("dose") and not asks:
        return None
    asks = asks or (facts.question and not heard.plants)
    if not asks and (heard.plants or not facts.has("takes")):
        return None
    return Order("pets", text="child" if heard.child else "")


def _hurt(heard: _Heard) -> Order | None:
    """Feed where it should not be on somebody: 'I got powder in my eye', 'my hands burn'."""
    facts = heard.facts
    dosed = facts.rest.volume_l is not None and (facts.rest.analysis or facts.products)
    if dosed or facts.has("remedy"):
        return None
    if heard.says("breathed"):
        return Order("hurt", text="breathed")
    burns = heard.says("body") and heard.says("stings")
    return Order("hurt") if burns or heard.says("hurt_me") else None


def _touch(heard: _Heard) -> Order | None:
    """How it may be handled: 'do I need gloves', 'is the dust dangerous'."""
    asked = heard.says("touch") and not heard.plants and not heard.facts.asks_dose
    return Order("hurt", text="touch") if asked else None


def _vet(heard: _Heard) -> Order | None:
    """'Should I call a vet', 'poison control': whoever asks that has a reason to."""
    told = heard.plants or heard.facts.asks_dose or heard.facts.has(*_CARE)
    return Order("pets", text="anyone") if heard.says("vet") and not told else None


def _pond(heard: _Heard) -> Order | None:
    """Feed near fish: 'fish pond', 'what if it goes in the fish tank'."""
    facts = heard.facts
    if not heard.says("pond") or heard.says("pond_water") or heard.plants or facts.asks_dose:
        return None
    return Order("pets", text="fish")


def _poison(heard: _Heard) -> Order | None:
    """'Is it poison?', 'is the feed toxic'; 'is copper toxic to phals' asks of plants."""
    facts = heard.facts
    word = next((m for m in facts.harms if m.value == "poison"), None)
    if word is None or facts.asks_dose or facts.rest.water is not None:
        return None
    named = any(m.type == "PLANT" and m.at > word.at for m in facts.found)
    kinds = {t.raws[0].start for t in facts.tokens if t.type in ("GENUS", "PLANTS")}
    behind = named or any(raw.start in kinds for raw in facts.raws[word.end :])
    return None if behind else Order("pets", text="anyone")


def _may_eat(heard: _Heard) -> Order | None:
    """'Can I eat it', 'is it safe to drink', 'what happens if I drink it'."""
    facts = heard.facts
    if not heard.says("may_eat") or facts.has("remedy") or facts.rest.water is not None:
        return None
    ours = {i for m in facts.harms if m.value == "may_eat" for i in range(m.at, m.end)}
    named = any(m.value == "food" and m.at not in ours for m in facts.found)  # 'vanilla pods'
    return None if facts.asks_dose or named else Order("food", text="eat")


def _leftover(heard: _Heard) -> Order | None:
    """What to do with the rest of a mix, where it may go, how long it keeps."""
    facts, says = heard.facts, heard.says
    if facts.rest.analysis or facts.has("stock", "concentrate", "remind"):
        return None
    if says("drain") and not heard.plants:
        return Order("leftover")
    if facts.has(*_CARE) or heard.plants:
        return None
    away = says("pours") and says("sink", "outdoors", "leftover")
    away = away or (says("leftover") and says("sink", "outdoors"))
    kept = says("stores") and says("mixed", "leftover")
    asked = says("leftover") and "?" in facts.folded.text and facts.rest.volume_l is None
    return Order("leftover") if away or kept or asked else None


def _too_much(heard: _Heard) -> Order | None:
    """'I put too much', 'I think I burned it', without a figure; and 'what if I overfeed'."""
    facts = heard.facts
    said = next((m for m in facts.harms if m.value in ("too_much", "supposed")), None)
    if said is None or any(raw.kind == "number" for raw in facts.raws):
        return None
    starts = {raw.start for raw in facts.raws[said.end :]}
    behind = {t.type for t in facts.tokens if t.raws[0].start in starts}
    if not behind.isdisjoint(_NO_FEED):
        return None  # 'I put too much water'
    if said.value == "supposed":
        return Order("explain", text="overfed")
    if signs.ails(facts) or "UNKNOWN" in behind:
        return None
    heads = words_under(facts.words.lexicon.language, "query_heads")
    asks = "?" in facts.folded.text or facts.raws[0].text in heads
    if (asks and not facts.has("plan")) or (facts.has("fed", "gave") and facts.target.named):
        return None  # 'did I put too much?'; 'gave Ruby too much'
    return Order("overdone", target=facts.target, when=facts.when[0])


#: In this order; what harms somebody comes before what is only asked.
_FORMS = (_ate, _hurt, _vet, _touch, _pond, _may_eat, _poison, _leftover, _too_much)
