"""Plants and waters of somebody else: what is told of them is no change to one's own."""

from __future__ import annotations

from dataclasses import replace

from grammar.lexicon import phrases_under, settings_of, words_under
from grammar.order import Order
from grammar.orders.facts import Facts

#: Changes that a story about somebody else's plants could be taken for.
_TOLD = frozenset({
    "growth", "fed", "clear", "flush", "repot", "move", "lose", "lose_apart", "correct", "had",
    "add", "add_offer", "water_for", "exception", "all_or_some", "product", "product_change",
})  # fmt: skip
#: What is put on record anew: of whom a plant is from says not whose it is.
_NEW = frozenset({"add", "add_offer", "product", "product_change"})
#: What is answered for their plants as well, from the message alone.
_ANSWERED = frozenset({"rescue", "judge", "dose"})
#: With these a friend needs no 'her' to be the one it is about: 'a friend lost a phal'.
_THEIRS_TOO = frozenset({"lose", "lose_apart", "rescue", "judge", *_NEW})
#: An owner stands this close to the plants [words].
_NEAR = 3
#: A club stands so near behind its member: 'someone in our club' [words].
_CLUB_WITHIN = 4
_PLANTS = frozenset({"GENUS", "PLANTS"})
_WATERS = frozenset({"WATER", "WATER_WORD", "OTHER_WATER"})


def of_others(facts: Facts, order: Order) -> Order | None:
    """What is meant instead of a change, where the plants are somebody else's; else None.

    'my friend's vanda is in flower', 'vanda koleżanki kwitnie', 'mum repotted her phals'. A plant
    that was called by its name is one's own, whoever fed it.

    Parameters
    ----------
    facts : the message
    order : the change that it speaks of
    """
    target = order.target
    if order.verb == "water":
        told = bool(order.ions or facts.rest.water) and water_of_others(facts)
        return Order("not_changed", text="water") if told else None
    if order.verb in _ANSWERED:
        return replace(order, theirs=True) if not target.names and theirs(facts, order) else None
    if order.verb not in _TOLD or order.also:
        return None
    if order.verb == "lose" and len(target.names) == 1:  # 'la Mia de mi vecina murió'
        name = next((m for m in facts.found if m.type == "PLANT"), None)
        of_them = name is not None and (
            _owner_before(facts, name.at) or _surely_behind(facts, name.end - 1)
        )
        return Order("not_changed", text="others") if of_them else None
    if target.names:
        return None
    return Order("not_changed", text="others") if theirs(facts, order) else None


def theirs(facts: Facts, order: Order) -> bool:
    """Whether the plants that a message speaks of are plainly those of somebody else."""
    places = _plants(facts)
    at = places[0] if places else len(facts.raws)
    kin = order.verb in _THEIRS_TOO
    if _told_by(facts, at, kin=kin):
        return True
    if order.verb in _NEW or not places:
        return False
    if _owner_before(facts, at) or _their_own(facts, at) or _of_them(facts, at):
        return True
    # of a loss 'die Vanda meiner Freundin' says to whom
    whose = order.verb != "lose" or facts.rest.growth is not None
    return (whose and _owner_behind(facts, at)) or _surely_behind(facts, at)


def water_of_others(facts: Facts) -> bool:
    """'her tap is 25 dH', 'annas tap has 25 dH', 'a lady in our club has 25 dH'."""
    words = words_under(facts.words.lexicon.language, "theirs")
    has = len(facts.raws) > 1 and _is_third(facts, 0) and facts.raws[1].text in words
    if has or _told_by(facts, len(facts.raws), kin=False):  # 'she has 25 dH'
        return True
    starts = {raw.start: i for i, raw in enumerate(facts.raws)}
    waters = [starts[t.raws[0].start] for t in facts.tokens if t.type in _WATERS]
    return any(_their_own(facts, at) or _of_a_name(facts, at) for at in waters)


def _plants(facts: Facts) -> list[int]:
    """Where plants are spoken of by their kind or as plants."""
    if facts.genus_places:
        return [at for at, _ in facts.genus_places]
    starts = {raw.start: i for i, raw in enumerate(facts.raws)}
    return [starts[t.raws[-1].start] for t in facts.tokens if t.type in _PLANTS]


def _others(facts: Facts) -> frozenset[str]:
    return words_under(facts.words.lexicon.language, "others")


def _is_other(facts: Facts, index: int) -> bool:
    """Whether this word is of somebody else, of one's own people or not."""
    phrases = phrases_under(facts.words.lexicon.language, "strangers")
    word = facts.raws[index].text
    return word in _others(facts) or any(phrase[-1] == word for phrase in phrases)


def _own(facts: Facts, span: range) -> bool:
    """Whether one speaks of oneself here; 'our club' is no more than where somebody is from."""
    language = facts.words.lexicon.language
    own, clubs = words_under(language, "first_person"), words_under(language, "clubs")
    last = len(facts.raws) - 1
    return any(
        facts.raws[i].text in own and not (i < last and facts.raws[i + 1].text in clubs)
        for i in span
    )


# --- who is told of ------------------------------------------------------------------------------


def _told_by(facts: Facts, at: int, *, kin: bool) -> bool:
    """Whether somebody else is the one who has or does it: 'a lady lost a phal', 'friend: ...'.

    Parameters
    ----------
    at : where the plants stand
    kin : whether a friend counts like a stranger
    """
    head = _heads(facts, kin=kin)
    if head:
        quoted = ":" in facts.folded.text[facts.raws[head - 1].end : facts.raws[head].start]
        return quoted or not _own(facts, range(head, len(facts.raws)))
    begin = _clause(facts, at)
    for index in range(begin, min(at, len(facts.raws))):
        size = _person(facts, index, at, kin=kin)
        if size and _is_subject(facts, begin, index):
            return not _own(facts, range(index + size, _clause_end(facts, at)))
    return False


def _clause(facts: Facts, at: int) -> int:
    """Where the clause of a word begins; the whole message where it speaks of no plants."""
    if at >= len(facts.raws):
        return 0
    return next((i for i in range(at, 0, -1) if facts.raws[i].after_break), 0)


def _clause_end(facts: Facts, at: int) -> int:
    ends = (
        i for i in range(at + 1, len(facts.raws)) if facts.raws[i].after_break or facts.is_and(i)
    )
    return next(ends, len(facts.raws))


def _heads(facts: Facts, *, kin: bool) -> int:
    """The end of a head that only says who asks: 'a woman asks:', 'someone in our club:'."""
    breaks = (i for i in range(1, len(facts.raws)) if facts.raws[i].after_break)
    end = next(breaks, 0)
    language = facts.words.lexicon.language
    small = words_under(language, "asks_us") | words_under(language, "clubs")
    small |= words_under(language, "first_person")
    people = 0
    index = 0
    while index < end:
        size = _person(facts, index, end, kin=kin or ":" in _behind(facts, end))
        people += bool(size)
        carries = not (facts.is_filler(index) or facts.raws[index].text in small)
        if not size and carries and facts.words.type_at(index) not in ("IN", "OF", "TO", "FOR"):
            return 0
        index += size or 1
    return end if people else 0


def _behind(facts: Facts, end: int) -> str:
    """The signs before the clause that begins here."""
    if not 0 < end < len(facts.raws):
        return ""
    return facts.folded.text[facts.raws[end - 1].end : facts.raws[end].start]


def _person(facts: Facts, index: int, at: int, *, kin: bool) -> int:
    """The words for somebody else that begin here, 0 for none."""
    if index in facts.named:
        return 0
    language = facts.words.lexicon.language
    own = index > 0 and facts.raws[index - 1].text in words_under(language, "my_own")
    for phrase in phrases_under(language, "strangers"):
        if facts.stands_at(index, phrase) and not own:  # 'mi señora' is at home
            return len(phrase)
    club = _of_a_club(facts, index)
    if facts.raws[index].text in _others(facts):
        return int(kin or club)
    if _is_third(facts, index):
        return int(_acts(facts, index, at))
    return int(_is_a_name(facts, index) and (club or (kin and _does(facts, index + 1))))


def _is_third(facts: Facts, index: int) -> bool:
    """Whether this is 'she' or 'he', as it is written: 'el' is no 'él'."""
    raw = facts.raws[index]
    written = facts.folded.written(raw.start, raw.end).lower()
    return written in settings_of(facts.words.lexicon.language).get("third_persons", ())


def _of_a_club(facts: Facts, index: int) -> bool:
    """'anna from the club', 'someone in our society'."""
    clubs = words_under(facts.words.lexicon.language, "clubs")
    for raw in facts.raws[index + 1 : index + 1 + _CLUB_WITHIN]:
        if raw.after_break:
            return False
        if raw.text in clubs:
            return True
    return False


def _acts(facts: Facts, index: int, at: int) -> bool:
    """Whether 'she' is a person who has or did something to plants, and no plant herself."""
    language = facts.words.lexicon.language
    people = words_under(language, "household") | _others(facts)
    people -= words_under(language, "third_persons")
    if any(raw.text in people for raw in facts.raws[:index]):
        return False  # 'my wife is home, she fed the phals'
    does = _does(facts, index + 1)
    done = any(
        m.type == "ORDER" and m.at > index and not _ACTS.isdisjoint(m.value.split())
        for m in facts.found
    )
    is_ = index + 1 < len(facts.raws) and "be" in facts.words.cue_at(index + 1).split()
    return does or (at < len(facts.raws) and done and not is_)


#: Phrases of what people do to plants.
_ACTS = frozenset({"fed", "clear", "watered", "flush", "repot", "move", "moved", "lose", "add"})


def _does(facts: Facts, index: int) -> bool:
    """Whether a word for what only a person has or does stands here."""
    return facts.phrase_at(index, "person_does") > 0


def _is_a_name(facts: Facts, index: int) -> bool:
    """Whether a word may be somebody's name: it means nothing else."""
    raw = facts.raws[index]
    strange = raw.kind == "word" and not facts.words.type_at(index) and index not in facts.held
    return strange and raw.text not in words_under(facts.words.lexicon.language, "no_person")


def _is_subject(facts: Facts, begin: int, index: int) -> bool:
    """Whether somebody does it, and nobody has it from them: not 'a phal from a lady'."""
    from_ = words_under(facts.words.lexicon.language, "no_subject")
    span = range(begin, index)
    if _own(facts, range(begin, index - 1)) or any(facts.raws[i].text in from_ for i in span):
        return False
    marks = {i for m in facts.found if m.at in span and m.type in ("ORDER", "PLANT")
             and not _IDLE.issuperset(m.value.split()) for i in range(m.at, m.end)}  # fmt: skip
    return not marks and not any(p in span for p in _plants(facts))


#: Order phrases that may stand before who did it: 'hello, our member ...'.
_IDLE = frozenset({"hail", "yes", "no", "my", "have", "them", "thanks"})


def given_to(facts: Facts) -> bool:
    """'gave 1 phal to mum', 'di una phal a una señora': plants that somebody else has now."""
    rest, language = facts.rest, facts.words.lexicon.language
    fed = rest.mentions_feeding or rest.water or rest.volume_l is not None or rest.analysis
    places = _plants(facts)
    said = facts.says_any("gives_away")
    if fed or not said or not places:
        return False
    to, takers = words_under(language, "given_to"), words_under(language, "takers")
    for index in range(places[0] + 1, len(facts.raws)):
        if facts.raws[index].text in takers:
            return True
        near = range(index + 1, min(index + 1 + _NEAR, len(facts.raws)))
        if facts.raws[index].text in to and any(_is_other(facts, i) for i in near):
            return True
    return False


# --- whose they are ------------------------------------------------------------------------------


def _their_own(facts: Facts, at: int) -> bool:
    """'her phals', 'his two paphs', 'jej falki'; at home they are one's own."""
    language = facts.words.lexicon.language
    words, household = words_under(language, "possessives"), words_under(language, "household")
    household -= words_under(language, "third_persons")
    if any(raw.text in household for raw in facts.raws[:at]):
        return False
    for index in range(at - 1, max(at - _NEAR, 0) - 1, -1):
        if facts.raws[index + 1].after_break or facts.words.type_at(index) == "ARTICLE":
            return False
        if facts.raws[index].text in words:
            return True
    return False


def _of_a_name(facts: Facts, at: int) -> bool:
    """'annas tap', right before the water and with no article."""
    endings = tuple(words_under(facts.words.lexicon.language, "owning_ends"))
    if not endings or at < 1 or facts.raws[at].after_break or not _is_a_name(facts, at - 1):
        return False
    plain_before = at > 1 and not facts.raws[at - 1].after_break
    ruled_out = plain_before and (
        facts.words.type_at(at - 2) == "ARTICLE" or _own(facts, range(at - 2, at - 1))
    )
    return facts.raws[at - 1].text.endswith(endings) and not ruled_out


def _owner_before(facts: Facts, genus: int) -> bool:
    """'my friend's vanda', 'my friends vanda', 'Omas Vanda'."""
    for index in range(genus - 1, max(genus - _NEAR, 0) - 1, -1):
        if facts.raws[index + 1].after_break:
            return False
        word = facts.raws[index].text
        stem = word.removesuffix("s").removesuffix("'")
        strangers = phrases_under(facts.words.lexicon.language, "strangers")
        if stem != word and (stem in _others(facts) or (stem,) in strangers):
            return True
    return False


def _owner_behind(facts: Facts, genus: int) -> bool:
    """'vanda koleżanki', 'die Vanda meiner Freundin', 'la vanda de mi amiga'."""
    links = words_under(facts.words.lexicon.language, "owned_by")
    for index in range(genus + 1, min(genus + 1 + _NEAR, len(facts.raws))):
        if facts.raws[index].after_break:
            return False
        if _is_other(facts, index):
            return True
        if facts.raws[index].text not in links:
            return False
    return False


def _surely_behind(facts: Facts, plant: int) -> bool:
    """'die Vanda von meiner Nachbarin', where a bare case could say to whom it was given."""
    links = words_under(facts.words.lexicon.language, "surely_owned_by")
    linked = plant + 1 < len(facts.raws) and facts.raws[plant + 1].text in links
    return linked and (_owner_behind(facts, plant) or _owner_behind(facts, plant + 1))


def _of_them(facts: Facts, genus: int) -> bool:
    """'my friend fed her vanda', 'my neighbour has a phal', 'u koleżanki kwitnie vanda'."""
    language = facts.words.lexicon.language
    theirs, at = words_under(language, "theirs"), words_under(language, "at_theirs")
    words = [raw.text for raw in facts.raws[:genus]]
    household = words_under(language, "household")
    if facts.has("fed", "clear", "flush", "repot"):  # 'hat ... gedüngt' has nothing
        theirs -= frozenset(settings_of(language).get("perfect", ()))
    someone = False
    for index, raw in enumerate(facts.raws[:genus]):
        if raw.after_break:
            someone = False
        if someone and raw.text in theirs:
            return True
        at_home = raw.text in household and _own(facts, range(max(index - 1, 0), index))
        if _is_other(facts, index) and not at_home:
            someone = True
            if not at.isdisjoint(words[max(index - 2, 0) : index]):
                return True
    return False
