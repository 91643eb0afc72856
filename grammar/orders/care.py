"""What was given and how it went: the log, runoff, growth, repotting, and what is due."""

from __future__ import annotations

from dataclasses import replace

from grammar.lexicon import words_under
from grammar.order import Order, Target, When
from grammar.orders import asked, clauses, meant, others, reminding
from grammar.orders.facts import Facts
from grammar.orders.measured import figure
from grammar.rhythms.days import whole
from grammar.words.marks import Mark, longest

#: More than this no single pot takes at a watering [L].
MOST_A_POT_L = 1.5


def history(facts: Facts) -> Order | None:
    asks_last = (
        facts.has("last") and "?" in facts.folded.text and facts.has("fed", "flush", "clear")
    )
    logged = facts.has("log") and not facts.has("fed", "flush", "clear", "gave")
    asked_back = _asks_who(facts) or _asks_of_itself(facts)
    asked_back = asked_back and not facts.has("dose", "dose_word", "judge", "choose")
    asked_back = asked_back or _asks_how_much(facts)
    if not (facts.has("history") or logged or asks_last or asked_back) or facts.asks_dose:
        return None
    kinds = [k for k in ("flush", "clear", "fed") if facts.has(k)]
    if not kinds and facts.rest.mentions_feeding:
        kinds = ["fed"]
    repotted = "repot" if facts.has("repot") else None
    return Order(
        "history",
        target=facts.target,
        when=facts.when[0] or (_day_asked(facts) if asked_back else None),
        asks_kind=repotted or (kinds[0] if len(kinds) == 1 else None),
    )


def _asks_who(facts: Facts) -> bool:
    """'who got feed today', 'what got fed this week': asked of all that was given."""
    who = facts.starts("who", "which") or _who_in_a_plan(facts) is not None
    if not who or not facts.has("fed", "clear", "flush", "gave"):
        return False
    denied = facts.has("not_fed", "except") or any(t.type == "NOT" for t in facts.tokens)
    given = facts.has("fed", "flush") or _given(facts) is not None
    return given and not denied


def _asks_how_much(facts: Facts) -> bool:
    """'wie viel hab ich diesen Monat gedüngt': what was given, asked in the words of a dose."""
    size = facts.phrase_at(0, "how_much_got")
    places = facts.named | {i for i, _ in facts.genus_places}
    if size and places.intersection(range(size, size + 2)):  # not 'how much did you say for Ruby'
        return True
    done = facts.first("fed", "gave", "watered", "flush")
    if done is None:
        return False
    for index in range(done.at):
        size = facts.phrase_at(index, "how_much_did")
        known = facts.named | facts.when[1] | {i for i, _ in facts.genus_places}
        between = range(index + size, done.at)
        if size and all(i in known or facts.is_filler(i) for i in between):
            return True
    return False


def _who_in_a_plan(facts: Facts) -> Mark | None:
    """A phrase of the plan that begins with 'who': 'kto dziś', of 'kto dziś dostał nawóz'."""
    cue = facts.first("plan")
    if cue is None or cue.at or facts.raws[0].text not in facts.words.lexicon.orders.next:
        return None
    entry = facts.words.lexicon.orders.next[facts.raws[0].text].entry
    return cue if entry is not None and entry.value in ("who", "which") else None


def _day_asked(facts: Facts) -> When | None:
    """The day in such a phrase."""
    cue = _who_in_a_plan(facts)
    for index in range(cue.at, cue.end) if cue is not None else ():
        entry, _ = longest(facts.raws, index, facts.words.lexicon.orders)
        if entry is not None and entry.type == "WHEN" and entry.value.startswith("day "):
            return When("day", int(entry.value.split()[1]))
    return None


def _asks_of_itself(facts: Facts) -> bool:
    """'¿aboné las vandas ayer?': what was done, asked in the words that also tell it."""
    cue, text = facts.first("asks"), facts.folded.text
    if cue is None or "?" not in text:
        return False
    begins = max(text.rfind(sign, 0, text.rfind("?")) for sign in ".,;!¿\n")
    return facts.raws[cue.at].start > begins


def plan(facts: Facts) -> Order | None:
    another_day = facts.when[0] is not None and facts.only_a_day
    cue = facts.first("plan")
    stands = cue is not None and "plants" in cue.value.split() and facts.place is not None
    if stands and facts.when[0] is None:
        return None  # 'was steht auf dem Balkon?'
    with_can = facts.has("plan") and facts.only_a_volume and not facts.has("dose", "dose_word")
    asks_dose = facts.asks_dose and not with_can  # 'plan today, 10 l'
    when = not facts.has("plan") and _asks_when(facts)
    if not (facts.has("plan") or another_day or when) or asks_dose:
        return None
    day = facts.when[0] or (_day_in(facts, cue) if cue is not None else None)
    return Order("plan", target=facts.target, when=day, products=facts.products)


def _day_in(facts: Facts, cue: Mark) -> When | None:
    """A day that is part of the phrase for a plan: 'co jutro do zrobienia'."""
    for index in range(cue.at, cue.end):
        entry, size = longest(facts.raws[: cue.end], index, facts.words.lexicon.orders)
        kind, _, value = entry.value.partition(" ") if entry is not None else ("", "", "")
        if entry is not None and entry.type == "WHEN" and size and kind == "day" and value:
            return When(kind, int(value))
    return None


def _asks_when(facts: Facts) -> bool:
    """'when do the phals get feed again', 'whens the next feed'."""
    if not facts.rest.mentions_feeding or facts.has("repot", "choose", "dose", "dose_word"):
        return False
    return facts.starts_any("asks_when") and not facts.rest.unknown


def done(facts: Facts) -> Order | None:
    parts = facts.has("done") and facts.has("step")
    if not (facts.starts("done") or parts or _done_last(facts)) or facts.asks_dose:
        return None
    if meant.is_denied(facts, "done"):
        return Order("not_given")
    if others.given_to(facts):  # 'dałam falkę mamie'
        return None
    if facts.has("clear", "watered") and facts.target.named:
        return Order("two_things")  # 'done 1, and Ruby got only water'
    steps = tuple(
        n for i in range(len(facts.raws)) if (n := whole(facts.words, i)) is not None and n < 100
    )
    target = facts.target
    first = next((m.at for m in facts.found if m.type == "PLANT"), 0)
    if target.names and not target.excepts and _spares(facts, first - 1):
        target = replace(target, names=(), everything=True, not_names=target.names)
    return Order("done", target=target, steps=steps)


def _spares(facts: Facts, index: int) -> bool:
    """Whether a plant behind this word is not done: 'zrobione bez Hugo', 'all done but Hugo'."""
    but = words_under(facts.words.lexicon.language, "but")
    return facts.words.type_at(index) == "NOT" or (index >= 0 and facts.raws[index].text in but)


def _done_last(facts: Facts) -> bool:
    """'1 und 3 erledigt', in a language whose verb stands last."""
    done = facts.first("done")
    if done is None or done.end < len(facts.raws):
        return False
    if not reminding.verb_last(facts.words.lexicon.language):
        return False
    return all(whole(facts.words, i) is not None or facts.is_filler(i) for i in range(done.at))


def repot(facts: Facts) -> Order | None:
    if not facts.has("repot") or facts.asks_dose or facts.target.empty or facts.question:
        return None
    target = replace(facts.target, medium=None, place=None)
    if target.empty:
        target = replace(facts.target, medium=None)
    return Order("repot", target=target, when=facts.when[0])


def log(facts: Facts) -> Order | None:
    """What was given: feed, clear water or a flush; to some this, to others that."""
    facts = meant.told_of(facts)
    parts = clauses.given_apart(facts)
    if parts is None or clauses.feed_and_water(facts):
        return Order("two_things")
    orders: list[Order] = []
    verb = _given(facts) if parts and clauses.days_apart(facts) else None
    for part in parts:
        target = clauses.meant_by(part, orders[-1].target if orders else None)
        order = _log_one(part, target, verb)
        if order is None:
            return _log_one(facts, facts.target)
        orders.append(order)
    if not orders:
        one = _log_one(facts, facts.target)
        days = one is not None and one.verb != "not_given" and clauses.days_in_a_row(facts)
        return Order("two_things", text="days") if days else one
    given = [order for order in orders if order.verb != "not_given"] or orders[:1]
    return replace(given[0], also=tuple(given[1:]))  # 'Ruby watered, Hugo not fed'


def after_repotting(facts: Facts) -> Order | None:
    """'Repotted Ruby, when do I feed again': the repotting; 'after I repotted her': when."""
    cue = facts.first("repot")
    feeds = facts.rest.mentions_feeding or facts.has("fed", "plan")
    if cue is None or not feeds or facts.asks_dose or not facts.says_any("asks_when"):
        return None
    target = facts.target
    only_when = any(facts.phrase_at(i, "afterwards") for i in range(cue.at + 1))
    if only_when or target.empty or facts.starts_any("asks_when"):
        return Order("tell", text="repotted", target=target)
    return Order("repot", target=replace(target, medium=None), when=facts.when[0])


def _log_one(facts: Facts, target: Target, usual: str | None = None) -> Order | None:
    told = facts.starts("fed", "flush", "watered") or _day_and_done(facts)
    bare = target.empty and not facts.asks_dose and told
    if facts.question or facts.has("make_it") or (target.empty and not bare):
        return None
    put = asked.put_in(facts)
    dosed = facts.rest.volume_l is not None and facts.rest.analysis and not facts.starts("fed")
    if dosed and put is None:
        return None
    verb = _given(facts) or usual
    if verb is None and put is not None and facts.has("gave"):
        verb = "fed"  # 'Ruby got 2 g in 1 l'
    if verb == "fed" and facts.has("clear") and meant.not_done(facts, verb):
        verb = "clear"  # 'watered, not fed'
    if verb is None:
        return None
    if meant.not_done(facts, verb):
        return None if facts.asks_dose else Order("not_given")
    spared = facts.has("except") or facts.spared or target.excepts
    if verb == "fed" and not spared and any(t.type == "NOT" for t in facts.tokens):
        return None  # 'fed them not too strong'
    name = facts.new_name[0] or None
    order = Order(verb, target=target, when=facts.when[0], products=facts.products, name=name)
    if target.everything and facts.says_any("the_rest"):
        order = replace(order, standing="rest")
    if verb != "fed" or put is None:
        return order
    return replace(order, amount=put.amount, unit=put.unit, given=True)


def _day_and_done(facts: Facts) -> bool:
    """'gestern gespült', 'hoy regué', 'nicht gedüngt, nur gegossen': no plant stands in it."""
    last = reminding.verb_last(facts.words.lexicon.language)
    done = facts.first("fed", "watered", *(("flush", "clear") if last else ()))
    if done is None:
        return False
    end = done.at
    if facts.has("clear") and meant.not_done(facts, "fed"):
        end = next(m.at for m in facts.found if "clear" in m.value.split())
    denied = words_under(facts.words.lexicon.language, "denials")
    small = (i for i in range(end) if facts.raws[i].text not in denied)
    return all(i in facts.when[1] or facts.is_filler(i) or done.at <= i < done.end for i in small)


def given_in(facts: Facts) -> str | None:
    """What words of care say by themselves: fed, clear or flush."""
    said = facts.has("fed", "clear", "flush", "gave", "watered", "poured")
    return _given(facts) if said else None


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
    if _poured_so_much(facts):
        return "clear"
    gave_feed = facts.has("gave") and (facts.rest.mentions_feeding or facts.products)
    if facts.has("fed") or gave_feed or _day_of_a_feed(facts):
        return "fed"
    pure = facts.rest.water is not None or _water_given(facts)
    return "clear" if facts.has("gave") and pure and not facts.asks_dose else None


def _water_given(facts: Facts) -> bool:
    """'Ruby got today water': what was given, and not where some stands: 'water in the crown'."""
    ends = [i + 1 for i in range(len(facts.raws)) if facts.words.type_at(i) == "WATER_WORD"]
    fed = facts.rest.mentions_feeding or facts.rest.strength is not None
    return bool(ends) and not fed and facts.words.type_at(ends[-1]) not in ("IN", "TO", "OF")


def _poured_so_much(facts: Facts) -> bool:
    """'watered Ruby, 2 l', 'gave Ruby 2 l of clear water': how much is no can to be mixed."""
    if not facts.only_a_volume or facts.has("dose", "dose_word", "make_it", "fed"):
        return False
    if facts.rest.water is not None:
        return facts.has("gave")
    cue = facts.first("gave") or facts.first("clear")
    numbers = (i for i, raw in enumerate(facts.raws) if raw.kind == "number")
    return (
        facts.has("clear") and cue is not None and cue.at < next(numbers, 0)
    )  # '2 l for Ruby, wet moss' asks for a dose


def _day_of_a_feed(facts: Facts) -> bool:
    """'gestern 2 l blaue Dose an Ruby': a day that has been, a feed and its plants tell enough."""
    return bool(facts.been and facts.products and facts.target.named and not facts.has("dose"))


def runoff(facts: Facts) -> Order | None:
    in_pot = facts.rest.target_ec_ms_cm is not None and facts.says_any("in_the_pot")
    if not (facts.has("runoff") or in_pot) or facts.rest.analysis:
        return None
    if facts.rest.volume_l is not None:
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


def growth(facts: Facts) -> Order | None:
    if facts.rest.growth is None or facts.asks_dose or facts.question or facts.rest.regime:
        return None
    if facts.starts("show", "more") or facts.target.empty:
        return None
    if facts.has("add", "have", "choose") or facts.rest.mentions_feeding:
        return None
    gone = words_under(facts.words.lexicon.language, "cut_off")
    if facts.rest.growth == "flowering" and any(raw.text in gone for raw in facts.raws):
        return None  # 'cut Ruby's spike'
    return Order("growth", target=replace(facts.target, medium=None), when=facts.when[0])
