"""Stock solutions, what may share a bottle, and mixes of feeds for a target."""

from __future__ import annotations

from dataclasses import dataclass, replace

from bot.conversation import answer as out
from bot.conversation.answering import WEAKEST
from bot.conversation.turn import Turn
from bot.conversation.turns.feeding import doses
from bot.conversation.turns.feeding.cautioning import with_cautions
from bot.conversation.turns.shelf import analysis_of, title
from bot.conversation.turns.standing.advice import genus_of
from bot.conversation.wording import Wording
from bot.dosing.blending import Blend, blend, goal
from bot.dosing.dose import ASSUMED_N_MG_L
from bot.dosing.plants import of_name
from bot.dosing.stock import (
    MOST_TIMES,
    Bottle,
    BottleLabel,
    NoSuchBottles,
    Part,
    Product,
    Ratio,
    bottle_label,
    bottles_for,
    clashes,
    keeps_days,
    strongest_stock,
)
from bot.dosing.strength import CEILINGS
from bot.records import models
from grammar import FeedSaid, Order

#: Stock that is made where no volume was said [L], and the most that a home keeps [L]; ours.
USUAL_STOCK_L, MOST_STOCK_L = 0.5, 20.0
#: Nitrogen of a mix where none was said [mg/L]: a quarter of the assumed full strength.
USUAL_N_MG_L = ASSUMED_N_MG_L / 4
_USUAL_RATIO = 100.0
#: Of full strength, where nothing was asked [1].
_USUAL_SHARE = 0.25
_SOLUBILITY = "solubilities: CRC Handbook of Chemistry and Physics; half of it is common practice"
_CLASHES = "solubility of gypsum and calcium and magnesium phosphates, after PHREEQC's database"
_ENOUGH = 0.01  # g/L of a mix below which a product is not worth weighing


def _dissolved(product: models.Product, turn: Turn) -> Product:
    """A product on the shelf as its label shows it."""
    return Product.of_label(title(product, turn), analysis_of(product), product.extras or {})


def _full_g_l(product: models.Product) -> float:
    """Full strength: the label's, or the assumed one [g/L]."""
    if product.label_per_litre is not None and product.label_unit == "g":
        return product.label_per_litre
    n = analysis_of(product)[0]
    return ASSUMED_N_MG_L / (10 * n) if n > 0 else 1.0


def _meant(turn: Turn) -> list[models.Product]:
    named = [turn.collection.product_named(n) for n in turn.order.products]
    found = [p for p in named if p is not None] + [_of_label(f) for f in turn.order.feeds]
    if not found and turn.reading.analysis is not None:
        reading = turn.reading
        feed = FeedSaid(reading.analysis or (0.0, 0.0, 0.0), reading.extras, reading.form)
        found = [p for p in turn.collection.products if analysis_of(p) == feed.analysis][:1]
        found = found or [_of_label(feed)]
    if not found and turn.collection.default_product is not None:
        found = [turn.collection.default_product]
    return found


def _of_label(feed: FeedSaid) -> models.Product:
    """A feed that was said by its numbers, as if it stood on the shelf; it is not put there."""
    n, p2o5, k2o = feed.analysis
    return models.Product(
        n=n, p2o5=p2o5, k2o=k2o, extras=feed.extras, form=feed.form, name=feed.name
    )


async def stock(turn: Turn) -> out.Answer:
    """How to make a stock solution."""
    meant = _meant(turn)
    if not meant:
        return turn.ask("ask-stock-product")
    liquid = next((p for p in meant if p.form == "liquid"), None)
    if liquid is not None:
        return turn.refuse("refuse-stock-liquid", product=title(liquid, turn))
    volume_l = turn.reading.volume_l or USUAL_STOCK_L
    if not 0.01 <= volume_l <= MOST_STOCK_L:
        return turn.refuse("refuse-stock-volume", most=turn.words.number(MOST_STOCK_L))
    ratio = turn.reading.label_rate
    aim = _aim(turn, meant)
    if aim.share < WEAKEST:
        return turn.refuse("refuse-target-zero")
    if len(meant) > 1 or (ratio is not None and ratio.unit == "ml"):
        times = 1000 / ratio.per_litre if ratio is not None else _USUAL_RATIO
        return _by_ratio(turn, meant, aim, times, volume_l)
    return _strongest(turn, meant[0], aim, volume_l)


@dataclass(frozen=True, slots=True)
class _Aim:
    """What the ready feed of a stock is to be.

    `g_l` is each product in it [g/L], `share` that of its own full strength [1]; `how` says what
    was asked: 'quarter' where nothing was, else 'share' (`value` of full strength), 'n' [mg/L] or
    'ec' [mS/cm]; `held` is the most nitrogen that plants or the label let it have [mg/L].
    """

    g_l: tuple[float, ...]
    share: float
    how: str = "quarter"
    value: float = _USUAL_SHARE
    of_last: bool = False
    held: float | None = None

    def values(self, words: Wording) -> dict[str, str]:
        """What a sentence needs to say it."""
        shown = words.factor(self.value) if self.how in ("share", "quarter") else ""
        return {"how": self.how, "value": shown or words.number(self.value)}


def _aim(turn: Turn, meant: list[models.Product]) -> _Aim:
    """What was asked of the feed, or of the last dose; held to the label and the plants."""
    reading = turn.reading
    said, of_last = (reading.strength, reading.target_n_mg_l, reading.target_ec_ms_cm), False
    if not any(said):
        said = doses.asked_last(turn)
        of_last = any(said)
    strength, n_mg_l, ec = said
    full = [_full_g_l(p) for p in meant]
    n_of_full = sum(10 * g * analysis_of(p)[0] for g, p in zip(full, meant, strict=True))
    share, how, value = _USUAL_SHARE / len(meant), "quarter", _USUAL_SHARE
    if n_mg_l and n_of_full > 0:
        share, how, value = n_mg_l / n_of_full, "n", n_mg_l
    elif ec and len(meant) == 1 and (found := _g_l_for_ec(turn, ec)) is not None:
        share, how, value = found / full[0], "ec", ec
    elif strength:
        share, how, value = strength / len(meant), "share", strength
    most = 1.0 / len(meant)
    if n_of_full > 0:
        most = min(1.0 if how == "n" else most, _ceiling(turn) / n_of_full)
    held = most * n_of_full if share > most * (1 + 1e-9) else None
    share = min(share, most)
    return _Aim(tuple(g * share for g in full), share, how, value, of_last, held)


def _g_l_for_ec(turn: Turn, ec_ms_cm: float) -> float | None:
    """Product for an EC in the water that is meant [g/L], None where that cannot be."""
    asked = Order("dose", products=turn.order.products)
    litre = replace(
        turn.reading, volume_l=1.0, label_rate=None, target_ec_ms_cm=ec_ms_cm, order=asked
    )
    found = doses.figures(turn, litre)
    return found.dose.per_litre if found is not None and found.dose.unit == "g" else None


def _strongest(turn: Turn, product: models.Product, aim: _Aim, volume_l: float) -> out.Answer:
    words, number = turn.words, turn.words.number
    dissolved = _dissolved(product, turn)
    limit = strongest_stock(dissolved)
    full = _full_g_l(product)
    grams = limit.g_l * volume_l
    aim_ml = 1000 * aim.g_l[0] / limit.g_l
    days = keeps_days(dissolved)
    name = title(product, turn)
    lines = [
        words.say(
            "stock-make", grams=number(grams, 1), product=name, volume=turn.words.volume(volume_l)
        ),
        words.say(
            "stock-use",
            use=words.significant(aim_ml),
            full=words.significant(1000 * full / limit.g_l),
            **aim.values(words),
        ),
        *_aim_lines(turn, aim),
        words.say("stock-cautions"),
    ]
    most = words.say("stock-why", g_l=number(limit.g_l, 0), cold=number(limit.coldest_c, 0))
    details = {
        "g_l": limit.g_l, "limited_by": limit.limited_by, "coldest_c": limit.coldest_c,
        "assumed": list(limit.assumed), "grams": grams, "volume_l": volume_l,
        "ml_per_litre_full": 1000 * full / limit.g_l, "keeps_days": days,
    }  # fmt: skip
    bottle = Bottle("B", (Part(dissolved, limit.g_l),), limit.g_l, days, limit.assumed)
    text = _label(turn, bottle_label(bottle, 1000 * volume_l, turn.today))
    lines.append(words.say("stock-for-the-bottle", label=text))
    answer = turn.tell("stock", lines, details={**details, "label": text})
    why = out.Why(rule="stock-most", factor=1.0, text=most, source=_SOLUBILITY)
    return with_cautions(
        turn, answer.model_copy(update={"why": [why, *_reasons(turn, "stock-limit", _SOLUBILITY)]})
    )


def _aim_lines(turn: Turn, aim: _Aim) -> list[str]:
    """Where the aim is from, where it was held, and what each of several products has of it."""
    words = turn.words
    lines = [words.say("stock-of-last")] if aim.of_last else []
    if aim.held is not None:
        held = words.number(aim.held, 0) if aim.held > 0 else "none"
        lines.append(words.say("stock-held", n=held))
    if len(aim.g_l) > 1:
        percent = words.number(100 * aim.share, 1)
        lines.append(words.say("stock-shares", count=len(aim.g_l), percent=percent))
    return lines


def _by_ratio(
    turn: Turn, meant: list[models.Product], aim: _Aim, times: float, volume_l: float
) -> out.Answer:
    """One bottle or two, each thinned by the same ratio, for what was asked."""
    feed = [Part(_dissolved(p, turn), g) for p, g in zip(meant, aim.g_l, strict=True)]
    words, number = turn.words, turn.words.number
    if not 1 < times <= MOST_TIMES:
        return turn.refuse("refuse-stock-ratio", most=number(MOST_TIMES, 0))
    try:
        bottles = bottles_for(feed, Ratio.one_in(times))
    except NoSuchBottles as error:
        if error.nearest is not None:
            return turn.refuse("refuse-stock-strong", times=number(error.nearest.times, 0))
        return turn.refuse("refuse-stock-clash", products=words.listed(list(error.keys)))
    lines = [
        words.say("stock-ratio", times=number(times, 0), bottles=len(bottles), **aim.values(words))
    ]
    for bottle in bottles:
        lines.append(
            words.say(
                "stock-bottle",
                name=bottle.name,
                what=_weighed(turn, bottle, volume_l),
                volume=turn.words.volume(volume_l),
                use=number(1000 / times, 1),
            )
        )
    lines += _aim_lines(turn, aim)
    lines.append(words.say("stock-ratio-means", times=number(times, 0)))
    lines.append(words.say("stock-cautions"))
    details = {
        "times": times,
        "g_l": list(aim.g_l),
        "bottles": [
            {"name": b.name, "grams": b.grams(volume_l), "volume_l": volume_l} for b in bottles
        ],
    }
    for bottle in bottles:
        text, made = _label(turn, bottle_label(bottle, 1000 * volume_l, turn.today)), bottle.name
        lines.append(words.say("stock-for-the-bottle", label=f"{made}: {text}"))
    turn = replace(turn, reading=replace(turn.reading, read_as=()))  # 1:100 is no label rate here
    answer = turn.tell("stock", lines, details=details)
    return with_cautions(
        turn, answer.model_copy(update={"why": _reasons(turn, "stock-apart", _CLASHES)})
    )


def _label(turn: Turn, label: BottleLabel) -> str:
    """The text of a label to print."""
    words = turn.words
    return words.say(
        "stock-label",
        what=words.listed(
            [words.say("grams-of", grams=_grams(g, words), name=name) for name, g in label.grams]
        ),
        volume=turn.words.volume(label.millilitres / 1000),
        made=words.date(label.made, "pattern-date-year"),
        use_by=words.date(label.use_by, "pattern-date-year"),
    )


def _grams(grams: float, words: Wording) -> str:
    """As a scale of tenths of a gram shows it."""
    return words.number(grams, 1) if grams >= 1 else words.significant(grams)


def _reasons(turn: Turn, code: str, source: str) -> list[out.Why]:
    return [out.Why(rule=code, factor=1.0, text=turn.words.say(f"why-{code}"), source=source)]


def _weighed(turn: Turn, bottle: Bottle, volume_l: float) -> str:
    return turn.words.listed(
        [
            turn.words.say("grams-of", grams=_grams(g, turn.words), name=key)
            for key, g in bottle.grams(volume_l).items()
        ]
    )


async def together(turn: Turn) -> out.Answer:
    """Whether products may share a bottle, and a can."""
    meant = _meant(turn)
    words = turn.words
    if len(meant) < 2:
        return turn.ask("ask-together")
    wrong = next((p for p in meant if not 0 < _printed_percent(p) <= 100), None)
    if wrong is not None:
        return turn.refuse("refuse-together-label", product=title(wrong, turn))
    names = words.listed([title(p, turn) for p in meant])
    if any(p.form == "liquid" for p in meant):
        return turn.say("stock", "together-liquid", products=names)
    products = [_dissolved(p, turn) for p in meant]
    found = clashes([Part(p, strongest_stock(p).g_l) for p in products])
    ready = clashes([Part(d, _full_g_l(p)) for d, p in zip(products, meant, strict=True)])
    lines = [words.say("together-no" if found else "together-yes", products=names)]
    lines += [
        words.say(
            f"clash-{c.code}", sure="yes" if c.sure else "no", products=words.listed(list(c.keys))
        )
        for c in found
    ]
    lines.append(words.say("together-can-no" if ready else "together-can"))
    details = {
        "bottle": [{"code": c.code, "sure": c.sure} for c in found],
        "can": [{"code": c.code, "sure": c.sure} for c in ready],
    }
    answer = turn.tell("stock", lines, details=details)
    return with_cautions(
        turn, answer.model_copy(update={"why": _reasons(turn, "stock-apart", _CLASHES)})
    )


def _printed_percent(product: models.Product) -> float:
    """All that a label shows [% of mass]."""
    return sum(analysis_of(product)) + sum((product.extras or {}).values())


# --- mixes -------------------------------------------------------------------------------------


async def mix(turn: Turn) -> out.Answer:
    """The mix of feeds on the shelf that best meets a target."""
    named = [turn.collection.product_named(n) for n in turn.order.products]
    shelf = [p for p in named if p is not None] or list(turn.collection.products)
    powders = [p for p in shelf if p.form != "liquid"][:6]
    if len(powders) < 2:
        return turn.ask("ask-mix-products")
    words, number = turn.words, turn.words.number
    volume_l = turn.reading.volume_l or (turn.owner.can_l if turn.owner else None) or 5.0
    wanted = turn.reading.target_n_mg_l or USUAL_N_MG_L
    n_mg_l = min(wanted, _ceiling(turn))
    products = {title(p, turn): p for p in powders}
    if n_mg_l <= 0 or not any(sum(analysis_of(p)) for p in powders):
        return turn.say("blend", "mix-none", n=number(n_mg_l, 0))
    found = blend([_dissolved(p, turn) for p in powders], goal(turn.order.text, n_mg_l))
    # Nitrogen may end a little over its target: nothing goes over the ceiling.
    brought = sum(10 * g * analysis_of(products[k])[0] for k, g in found.g_l.items())
    scale = min(1.0, _ceiling(turn) / brought) if brought > 0 else 1.0
    grams = {k: g * scale * volume_l for k, g in found.g_l.items() if g * scale > _ENOUGH}
    if not grams:
        return turn.say("blend", "mix-none", n=number(n_mg_l, 0))
    lines = [
        words.say(
            "mix-amounts",
            what=words.listed(
                [
                    words.say("grams-of", grams=words.significant(g), name=k)
                    for k, g in grams.items()
                ]
            ),
            volume=turn.words.volume(volume_l),
        ),
        words.say("mix-goal", goal=turn.order.text, n=number(brought * scale, 0)),
        _missed(turn, found),
    ]
    if wanted > n_mg_l:
        lines.insert(2, words.say("mix-held", n=number(n_mg_l, 0), wanted=number(wanted, 0)))
    lines += [words.say("mix-capped", element=symbol) for symbol in found.capped]
    lines.append(words.say("mix-cautions"))
    details = {
        "grams": grams, "volume_l": volume_l, "n_mg_l": brought * scale,
        "misses": {m.nutrient: {"wanted": m.wanted_mg_l, "brought": m.brought_mg_l * scale}
                   for m in found.misses},
        "capped": list(found.capped), "left_out": list(found.left_out),
    }  # fmt: skip
    answer = turn.tell("blend", lines, details=details)
    target = goal(turn.order.text, n_mg_l)
    why = [
        out.Why(rule=f"blend.{name}", factor=1.0, source=source,
                text=words.say("why-blend", nutrient=name, mg_l=number(target.mg_l[name], 0)))
        for name, source in target.sources.items()
    ]  # fmt: skip
    return with_cautions(turn, answer.model_copy(update={"why": why}))


def _ceiling(turn: Turn) -> float:
    """The nitrogen that the most sensitive of the plants meant bears [mg/L]."""
    said = [g for name in turn.reading.genera if (g := of_name(name)) is not None]
    own = [g for p in turn.collection.plants if (g := genus_of(p)) is not None]
    plants = said or own
    classes = [g.feeding_class for g in plants] or ["moderate"]
    return min(CEILINGS[c].n_mg_l for c in classes)


def _missed(turn: Turn, found: Blend) -> str:
    words, number = turn.words, turn.words.number
    short = [m for m in found.misses if m.brought_mg_l < 0.8 * m.wanted_mg_l and m.wanted_mg_l > 1]
    if not short:
        return words.say("mix-meets")
    what = [
        words.say(
            "mix-short-one",
            nutrient=m.nutrient,
            brought=number(m.brought_mg_l, 0),
            wanted=number(m.wanted_mg_l, 0),
        )
        for m in short[:3]
    ]
    return words.say("mix-short", what=words.listed(what))
