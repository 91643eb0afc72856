"""The collection: plants added, listed, moved, renamed, lost, put right."""

from __future__ import annotations

from dataclasses import replace

from grammar.folding import plain
from grammar.lexicon import settings_of, words_under
from grammar.order import Order, PlantSaid
from grammar.orders import counting
from grammar.orders.additions import borders, names_at, plants, too_many_names
from grammar.orders.care import MOST_A_POT_L
from grammar.orders.facts import Facts
from grammar.orders.others import given_to
from grammar.rhythms.days import whole
from grammar.words.tokens import UNITS

#: A kind stands so near behind 'new' at the head of a message [words].
_NEW_KIND = 2

#: What may stand in a bare list of plants, and orders nothing: 'from the show', '2 of them'.
_IN_A_LIST = frozenset({
    "both", "be", "show", "since", "them", "have", "having", "gave", "received",
})  # fmt: skip

#: 'vandas -> balcony'.
_ARROWS = ("->", "=>", "→")


def what_is_there(facts: Facts) -> Order | None:
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


def lacking(facts: Facts) -> Order | None:
    about = bool(facts.products) or facts.rest.form is not None or facts.has("my", "shelf")
    if not facts.has("lacking") or not about or facts.asks_dose:
        return None
    return Order("lacking", products=facts.products)


def rename(facts: Facts) -> Order | None:
    if not facts.has("rename") or facts.asks_dose:
        return None
    name = facts.new_name[0]
    meant = replace(facts.target, place=None)
    if not name or (meant.empty and not facts.products):
        return None
    return Order("rename", target=meant, products=facts.products, name=name)


def lose(facts: Facts) -> Order | None:
    if facts.asks_dose or facts.asks_first or "?" in facts.folded.text:
        return None
    if facts.products and (facts.has("empty", "lose")):
        return Order("product_remove", products=facts.products)
    lacks = facts.says_any("lacks") and not (facts.target.names or facts.says_any("any_more"))
    cared = facts.has("fed", "clear", "flush", "repot", "watered")
    lost = (facts.has("lose") and not lacks) or (facts.parted("lose_parted") and not cared)
    lost = lost or given_to(facts)
    if facts.has("lose") and facts.target.empty and facts.rest.growth == "seedling":
        return Order("not_told", text="lose")  # '3 seedlings died': of which, nobody knows
    if not lost or facts.target.empty or _shed(facts):
        return None
    if _part_lost(facts):
        return Order("not_told", text="lose")
    taken = facts.new_name[1] | facts.when[1] | facts.named
    numbers = {i: n for i in range(len(facts.raws))
               if i not in taken and (n := whole(facts.words, i))}  # fmt: skip
    counted = [i for i in numbers if facts.words.type_at(i + 1) not in UNITS]
    if len(counted) > 1 and len(facts.target.genera) > 1:
        return Order("lose_apart", target=facts.target)
    first = next((numbers[i] for i in counted), None)
    count = facts.rest.count or first or _one_of_a_kind(facts)
    if len(counted) > 1:
        count = numbers[_nearest(facts, counted)]
    some, target = counting.some_of(facts), facts.target
    if some is not None and len(target.genera) < 2:  # 'eine der beiden Phals'
        count, target = some[0], replace(target, everything=target.everything and not target.genera)
    text = "one" if count is None and _singular(facts) else ""
    return Order("lose", target=target, when=facts.when[0], count=count, text=text)


def _nearest(facts: Facts, counted: list[int]) -> int:
    """Which of several numbers is that of the loss: 'of my 5 phals 2 died'."""
    cue = facts.first("lose")
    at = cue.at if cue is not None else 0

    def of_all(index: int) -> bool:
        index -= 1
        while index >= 0 and facts.words.type_at(index) in ("ARTICLE", "FILLER"):
            index -= 1
        return index >= 0 and facts.words.type_at(index) == "OF"

    said = [i for i in counted if not of_all(i)] or counted
    breaks = [i for i, raw in enumerate(facts.raws) if raw.after_break]

    def apart(index: int) -> tuple[bool, int]:
        first, last = sorted((index, at))
        return any(first < b <= last for b in breaks), last - first

    return min(said, key=apart)


def _shed(facts: Facts) -> bool:
    """'Ruby lost a leaf': a part of it, and it is still there."""
    language = facts.words.lexicon.language
    parts, sheds = words_under(language, "parts"), words_under(language, "sheds")
    said = [m for m in facts.found if m.value == "lose"]
    only_shed = all(facts.raws[i].text in sheds for m in said for i in range(m.at, m.end))
    return only_shed and any(raw.text in parts for raw in facts.raws)


def _part_lost(facts: Facts) -> bool:
    """'a leaf of Hugo died', 'gave away a keiki of Ruby': right before or behind it, a part."""
    cue = facts.first("lose")
    if cue is None:
        return False
    parts = words_under(facts.words.lexicon.language, "parts")
    for step, index in ((-1, cue.at - 1), (1, cue.end)):
        while 0 <= index < len(facts.raws):
            raw = facts.raws[index]
            broken = facts.raws[index + 1].after_break if step < 0 else raw.after_break
            if broken:
                break
            if raw.text in parts:
                return True
            small = facts.words.type_at(index) in ("OF", "ARTICLE", "NUMBER", "FILLER")
            if not small and not (step < 0 and index in facts.named):
                break
            index += step
    return False


def _one_of_a_kind(facts: Facts) -> int | None:
    """One where an article counts a plant that has no name: 'regalé una vanda'."""
    pairs = zip(facts.tokens, facts.tokens[1:], strict=False)
    counted = any((a.type, a.value, b.type) == ("ARTICLE", "one", "GENUS") for a, b in pairs)
    return 1 if counted and not facts.target.names and not facts.target.traits else None


def _singular(facts: Facts) -> bool:
    """Whether a kind is said of one plant: 'my phal died', and not 'my phals died'."""
    target, lexicon = facts.target, facts.words.lexicon
    lost = any(m.value == "lose" for m in facts.found) or facts.parted("lose_parted")
    lost = lost or given_to(facts)
    if not lost or target.names or target.again or target.everything or len(target.genera) != 1:
        return False
    several = words_under(lexicon.language, "several_said")
    if any(raw.text in several for raw in facts.raws):
        return False
    endings = [e.split("/") for e in settings_of(lexicon.language).get("plurals", ())]
    for index, genus in facts.genus_places:
        raw = facts.raws[index]
        typed = facts.folded.written(raw.start, raw.end).lower()  # 'cattleyę' is one
        for many, one in endings:
            entry = lexicon.words.get(raw.text.removesuffix(plain(many)) + one)
            is_genus = entry is not None and (entry.type, entry.value) == ("GENUS", genus)
            if typed.endswith(many) and is_genus:
                return False
    return True


def move(facts: Facts) -> Order | None:
    moved = facts.has("move", "be") or any(sign in facts.folded.text for sign in _ARROWS)
    if facts.place is None or facts.asks_dose or facts.question or not moved:
        return None
    runs = [(name, run) for name, run in facts.place_runs if not _denied_place(facts, min(run))]
    if not runs:
        return None
    place = runs[-1][0]
    without = tuple(p for p in facts.target.not_places if p != place)
    sources = [name for name, _ in runs[:-1] if name not in without]
    target = replace(
        facts.target,
        place=sources[-1] if sources else None,
        more_places=tuple(sources[:-1]),
        medium=facts.rest.medium,
        not_places=without,
    )
    if target.empty:
        return None
    return Order("move", target=target, place=place, when=facts.when[0])


def _denied_place(facts: Facts, index: int) -> bool:
    """Whether a place is only said not to be the one: 'to the kitchen, not the balcony'."""
    denials = words_under(facts.words.lexicon.language, "denials")
    small = ("IN", "TO", "PER", "FOR", "ARTICLE", "FILLER")
    places = {i for _, run in facts.place_runs for i in run}
    index -= 1
    while index > 0 and facts.raws[index].text not in denials:
        if index in places or facts.raws[index].after_break:
            break
        if facts.words.type_at(index) not in small:
            break
        index -= 1
    denied = facts.raws[index].text in denials or facts.words.type_at(index) == "NOT"
    return denied and len(facts.place_runs) > 1


def correct(facts: Facts) -> Order | None:
    """What is known of a plant, told later: its pot, its medium, the water it takes."""
    rest = facts.rest
    target = replace(facts.target, medium=None)
    if target.empty or facts.question or rest.mentions_feeding or rest.growth or rest.analysis:
        return None
    takes = facts.has("takes") and rest.volume_l is not None and rest.volume_l <= MOST_A_POT_L
    told = facts.has("be", "move") and (rest.medium or rest.pot_cm) and rest.volume_l is None
    if told and not rest.medium and _of_a_part(facts):
        return None
    if not (takes or told) or rest.strength is not None or rest.label_rate is not None:
        return None
    if facts.place is not None and not (target.names or target.genera or target.again):
        return Order("correct", target=target)
    return Order("correct", target=replace(target, place=None), place=facts.place)


def _of_a_part(facts: Facts) -> bool:
    """Whether a length is that of a leaf or a root, and of no pot: 'phal leaf is 20 cm long'."""
    parts = words_under(facts.words.lexicon.language, "parts")
    potted = any(t.type == "POT" for t in facts.tokens)
    return not potted and any(raw.text in parts for raw in facts.raws)


def is_of_kind(facts: Facts) -> Order | None:
    """What kind a plant is, told later: 'Bella is a vanda'."""
    rest, target = facts.rest, facts.target
    if len(target.names) != 1 or len(target.genera) != 1 or target.excepts or target.place:
        return None
    name = next(m for m in facts.found if m.type == "PLANT")
    kind = next(i for i, _ in facts.genus_places)
    said = facts.has("be", "becomes") or facts.says_any("is_a")
    if kind < name.end or not said or facts.question or facts.new_name[0]:
        return None
    if any(m.type == "ORDER" and not {"be", "becomes"} & set(m.value.split()) for m in facts.found):
        return None
    given = rest.growth or rest.water or rest.volume_l is not None or rest.strength is not None
    if rest.mentions_feeding or given or rest.unknown or rest.analysis or facts.products:
        return None
    if rest.count is not None or any(facts.words.type_at(i) == "NOT" for i in range(kind)):
        return None
    kinds = (PlantSaid(genus=target.genera[0], traits=target.traits),)
    meant = replace(target, genera=(), traits=(), medium=None)
    return Order("correct", target=meant, plants=kinds)


def how_many(facts: Facts) -> Order | None:
    """'How many phals do I have?': what is there, and no amount."""
    cue = facts.first("dose")
    if cue is None or any(not facts.is_filler(i) for i in range(cue.at)):
        return None
    words = words_under(facts.words.lexicon.language, "how_many")
    said = " ".join(raw.text for raw in facts.raws[cue.at : cue.end])
    if said not in words:
        return None
    starts = {raw.start: i for i, raw in enumerate(facts.raws)}
    kinds = {starts[t.raws[0].start] for t in facts.tokens if t.type in ("GENUS", "PLANTS")}
    between = range(cue.end, min((i for i in kinds if i >= cue.end), default=0))
    traits = {m.at for m in facts.found if m.type == "TRAIT"}
    owned = facts.has("have") and not kinds.isdisjoint(range(cue.end, len(facts.raws)))
    near = cue.end in kinds or (len(between) > 0 and traits.issuperset(between)) or owned
    rest = facts.rest
    else_said = rest.mentions_feeding or rest.water or rest.growth or rest.form or facts.products
    if not near or else_said or facts.asks_dose or facts.has("fed", "flush", "clear", "repot"):
        return None
    return Order("plants", target=facts.target)


def had(facts: Facts) -> Order | None:
    """'I had 2 vandas': what one no longer has is no plant to add, and says nothing of one."""
    words = words_under(facts.words.lexicon.language, "had")
    first = next((i for i in range(len(facts.raws)) if facts.raws[i].text in words), None)
    if first is None or not all(facts.is_filler(i) for i in range(first)) or facts.question:
        return None
    rest = facts.rest
    else_said = rest.mentions_feeding or rest.water or rest.growth or rest.volume_l is not None
    else_said = else_said or facts.has("fed", "flush", "repot", "clear")
    if not rest.genera or facts.target.names or else_said:
        return None
    return Order("had", plants=plants(facts))


def _standing(facts: Facts) -> str:
    """Whether it was said that one has these plants, and not that they are new."""
    if facts.has("add", "more", "received", "gave"):
        return ""
    if facts.new_name[0] and facts.says_any("is_called") and not facts.has("have", "having"):
        new = facts.says_any("further") or facts.says_any("come_by")
        return "" if new else "called"
    cues = [m for m in facts.found
            if m.type == "ORDER" and {"have", "having"} & set(m.value.split())]  # fmt: skip
    known = words_under(facts.words.lexicon.language, "owns")
    said = (" ".join(raw.text for raw in facts.raws[m.at : m.end]) for m in cues)
    if not cues or not all(text in known for text in said):
        return ""
    if facts.says_any("in_all"):
        return "total"
    new = facts.says_any("further") or facts.says_any("come_by")
    return "" if new else "some"


def add(facts: Facts) -> Order | None:
    several = len(borders(facts)) > 1 and _each_described(facts)
    told = facts.rest.count or facts.rest.medium or several
    got = facts.starts("gave") and told and _new(facts)
    got = got and not facts.says_any("had")
    more = facts.has("more") and facts.rest.count and facts.rest.genera
    got = got or _received(facts) or _begins_new(facts)
    new = facts.new_name[0] and facts.rest.genera and not facts.target.names
    headed = _headed(facts)
    wanted = facts.has("add", "have") or got or more or new or headed
    if not wanted or facts.question or facts.asks_dose_beside(names_at(facts)):
        return None
    said = plants(facts)
    over = too_many_names(facts)
    if over is not None:
        return Order("add_names", plants=said, count=over[0], text=", ".join(over[1]))
    orchids = facts.rest.count and any(t.type == "PLANTS" for t in facts.tokens)
    strong = orchids or (
        facts.has("add") and (facts.new_name[0] or facts.rest.count or facts.rest.medium)
    )
    if not (facts.rest.genera or strong):
        return None
    standing = "some" if headed else _standing(facts)
    if facts.says_any("divided") and len(said) == 1:  # 'split the paphs, now i have 5'
        said, standing = (_divided(facts, said[0]),), "total"
    return Order("add", plants=said, when=facts.when[0], standing=standing)


def _divided(facts: Facts, plant: PlantSaid) -> PlantSaid:
    """All that there are of a plant that became several."""
    words = words_under(facts.words.lexicon.language, "divided")
    counts = [n for i in range(len(facts.raws)) if (n := whole(facts.words, i))]
    traits = tuple(t for t in plant.traits if plain(t) not in words)
    return replace(plant, traits=traits, count=plant.count or (counts[-1] if counts else None))


def _headed(facts: Facts) -> bool:
    """'my plants are 3 phals in bark, 2 vandas mounted': a list of what one has."""
    size = facts.phrase_at(0, "list_heads")
    rest = facts.rest
    if not size or size >= len(facts.raws) or rest.mentions_feeding or facts.target.names:
        return False
    described = rest.medium or rest.pot_cm or rest.count or facts.place or rest.conflicts
    return bool(rest.genera and described and not rest.growth)


def listed(facts: Facts) -> Order | None:
    """'30 dendrobiums, balcony, bark': a bare list, of plants to add or to feed."""
    rest = facts.rest
    if not facts.raws or not facts.genus_places or facts.asks_dose or facts.question:
        return None
    several = len(borders(facts)) > 1
    apart = not several and len(plants(facts)) > 1  # 'two phals, one in bark, one in moss'
    described = facts.place is not None or rest.pot_cm or apart or _one_more(facts)
    described = described or (several and _each_described(facts))
    begun = facts.raws[0].kind == "number" or facts.words.type_at(0) in ("NUMBER", "ARTICLE")
    begun = begun or facts.genus_places[0][0] <= 1 or facts.says_any("further")
    others = (rest.season, rest.month, rest.regime, rest.growth, rest.water, rest.form)
    if not (described and begun) or (rest.pot_cm and not rest.medium and _of_a_part(facts)):
        return None
    if any(others) or facts.products or rest.mentions_feeding or facts.target.names:
        return None
    media = {r.start for t in facts.tokens if t.type == "MEDIUM" for r in t.raws}
    said_so = (m for m in facts.found if facts.raws[m.at].start not in media)  # 'no medium'
    if any(m.type == "ORDER" and not _IN_A_LIST & set(m.value.split()) for m in said_so):
        return None
    said = plants(facts)
    if len(said) == 1 and said[0].count is None:  # 'oncidium, 2 of them, bark'
        bare = [u.text for u in rest.unknown if u.text.isdecimal() and int(u.text) > 0]
        said = (replace(said[0], count=int(bare[0])),) if len(bare) == 1 else said
    kinds = all(p.genus and (p.count or p.medium or p.pot_cm) for p in said)
    return Order("add_offer", plants=said, target=facts.target) if kinds else None


def _one_more(facts: Facts) -> bool:
    """'also a bulbophyllum mounted', '1 bulbophyllum on cork': counted at the head, or further."""
    counted = facts.raws[0].kind == "number" or counting.number_at(facts, 0) is not None
    return facts.rest.medium is not None and (counted or facts.says_any("further"))


def _each_described(facts: Facts) -> bool:
    """Whether the kinds of a list stand each in a medium or a pot: '3 phals in bark, 1 vanda in'.

    One that is alone is as often a part of a request for a dose.
    """
    each = [facts.read_rest(span) for span in borders(facts)]
    return all(reading.medium or reading.pot_cm for reading in each)


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
