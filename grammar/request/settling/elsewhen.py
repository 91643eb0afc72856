"""Months, seasons, states of growth and media of another time: 'bought in May', 'was in bark'.

What was, or will be, changes no dose of today: it is shown, and where the plant's growth hangs
on it, asked about.
"""

from __future__ import annotations

from grammar.words.scan import Token
from grammar.words.tokens import Tokens, broken, join, rewrite, type_at

_DATES = frozenset({"MONTH", "SEASON"})
_RANGES = frozenset({"TO", "MINUS", "AND", "OR"})
_SMALL = frozenset({"FILLER", "ARTICLE", "IN", "OF"})
#: May stand between what happened and when: 'bought the phals and their bark in May'.
_HAPPENED = _SMALL | {
    "GENUS", "PLANTS", "POT", "FORM", "ANALYSIS", "NUMBER", "MEDIUM", "PAST", "CONTAINER",
    "MASS_UNIT", "BETWEEN", "TO",
}  # fmt: skip
#: How far a word reaches.
_FAR = 8
_SAYING = frozenset({"FILLER", "NO_ANALYSIS", "OTHER_TASK"})
_ROLES = frozenset({"event", "since", "after", "ended", "was", "will", "from", "coming"})
#: 'vor dem Winter', 'po zimie', 'last year in May', 'de corteza a musgo'.
_TYPES = {
    "AGO": "after", "APIECE": "after", "PAST": "event", "OF": "from", "BETWEEN": "from", "TO": "to",
}  # fmt: skip
#: In every other state a plant may not want feed, or wants more: that is asked about.
_HARMLESS = frozenset({"flowering", "seedling"})
_GROWS = frozenset({"GROWTH", "GROWING_VERB"})


def traits(tokens: Tokens) -> Tokens:
    """'spring flowering dendrobium', 'a winter growing species': what it is like, not when it is.

    A 'winter rest' is believed: no feed is the safer way to be wrong.
    """
    return rewrite(tokens, _trait_at, ("SEASON",))


def _trait_at(tokens: Tokens, index: int) -> tuple[Tokens, int] | None:
    growth = tokens[index + 1] if index + 1 < len(tokens) else None
    if growth is None or growth.type not in ("GROWTH", "GROWING_VERB") or growth.after_break:
        return None
    if len(tokens[index].raws) + len(growth.raws) > 2 or type_at(tokens, index - 1) == "IN":
        return None  # 'in winter flowering', 'winter, no new growth'
    if growth.value == "resting":
        return None
    return [join(tokens[index : index + 2], "UNKNOWN", "trait")], 2


def elsewhen(tokens: Tokens) -> Tokens:
    """'winter is over', 'finished resting', 'moved from bark to moss': not how it is now."""
    roles = [_role(token) for token in tokens]
    if not any(roles) and not any(t.type == "UNKNOWN" for t in tokens):
        return tokens
    out: Tokens = []
    done = 0
    for index, token in enumerate(tokens):
        if index < done:
            continue
        found = None
        if token.type in _DATES:
            found = _date(tokens, roles, index)
        elif token.type == "GROWTH":
            found = _growth(tokens, roles, index)
        elif token.type == "GROWING_VERB":
            found = _grown(tokens, roles, index)
        elif token.type == "MEDIUM":
            found = _medium(tokens, roles, index)
        if found is None:
            out.append(token)
            continue
        start, end = found
        size = index - max(start, done)  # what stands before it was put out already
        kept = out[: len(out) - size]
        asked = token.type in _GROWS and token.value not in _HARMLESS
        type_, value = ("NEGATED", "GROWTH") if asked else ("UNKNOWN", "elsewhen")
        out = [*kept, join(tokens[index - size : end], type_, value)]
        done = end
    return out


def _role(token: Token) -> str:
    if token.type in _SAYING:
        return token.value if token.value in _ROLES else ""
    return _TYPES.get(token.type, "")


def _before(tokens: Tokens, roles: list[str], index: int, wanted: tuple[str, ...]) -> int | None:
    """Where such a word stands before, with small words between and no comma."""
    at = index - 1
    while at >= 0 and index - at <= _FAR and not tokens[at + 1].after_break:
        if roles[at] in wanted:
            return at
        if tokens[at].type not in _SMALL or roles[at] not in ("", "from"):
            return None
        at -= 1
    return None


def _ended(tokens: Tokens, roles: list[str], index: int) -> int | None:
    """Behind the word that says that it is over: 'winter is over'."""
    at = index + 1
    while at < len(tokens) and at - index <= _FAR and not tokens[at].after_break:
        if roles[at] in ("ended", "coming"):
            return None if type_at(tokens, at + 1) in _DATES else at + 1  # 'resting over winter'
        if tokens[at].type not in _SMALL or roles[at]:
            return None
        at += 1
    return None


def _happened(tokens: Tokens, roles: list[str], index: int) -> bool:
    """Whether something happened then: 'repotted the phal in May', 'im Mai gekauft'."""
    for step in (-1, 1):
        at = index
        while 0 <= at + step < len(tokens) and abs(at + step - index) <= _FAR:
            if tokens[at if step < 0 else at + 1].after_break:
                break
            at += step
            if roles[at] == "event":
                return True
            if tokens[at].type not in _HAPPENED:
                break
    return False


_PLANTED = frozenset({"GENUS", "PLANTS", "GROWTH", "GROWING_VERB"})


def _of_something(tokens: Tokens, roles: list[str], index: int) -> bool:
    """'the sale in May', 'my phals had rot in winter': the month of what is not known, or was."""
    at = index
    while at > 0 and tokens[at - 1].type in _SMALL and not tokens[at].after_break:
        at -= 1
    if tokens[at].after_break or not any(t.type == "IN" for t in tokens[at:index]):
        return False
    start = at
    while start > 0 and not tokens[start].after_break:
        start -= 1
    if "was" in roles[start:index]:
        return True
    strange = type_at(tokens, at - 1) == "UNKNOWN" and tokens[at - 1].raws[0].kind == "word"
    return strange and not any(t.type in _PLANTED for t in tokens[start:at])


def _date(tokens: Tokens, roles: list[str], index: int) -> tuple[int, int] | None:
    for step in (-1, 1):
        joined = type_at(tokens, index + step) in _RANGES
        if joined and type_at(tokens, index + 2 * step) in _DATES:
            return None  # 'from October to March'
    start = _before(tokens, roles, index, ("since", "after", "was", "coming"))
    if start is None:
        start = _before(tokens, roles, index, ("ended",))
        if start is not None and len(tokens[start].raws) == 1:
            start = None  # 'over winter', but 'coming out of winter'
    if start is None and type_at(tokens, index - 1) == "TO" and not tokens[index].after_break:
        start = index - 1  # 'until March'
    if start is not None:
        return start, index + 1
    end = _ended(tokens, roles, index)
    if end is not None:
        return index, end
    if not (_happened(tokens, roles, index) or _of_something(tokens, roles, index)):
        return None
    start = index
    while type_at(tokens, start - 1) in ("IN", "ARTICLE") and not tokens[start].after_break:
        start -= 1
    return start, index + 1


def _growth(tokens: Tokens, roles: list[str], index: int) -> tuple[int, int] | None:
    words: tuple[str, ...] = ("ended", "was", "will", "coming")
    if tokens[index].value in ("flowering", "seedling", "resting"):
        words += ("after",)
    start = _before(tokens, roles, index, words)
    if start is not None:
        return start, index + 1
    end = _ended(tokens, roles, index)
    return (index, end) if end is not None else None


def _grown(tokens: Tokens, roles: list[str], index: int) -> tuple[int, int] | None:
    """'finished growing', 'growing season is over'; but 'done, growing phals'."""
    start = _before(tokens, roles, index, ("ended",))
    if start is not None and type_at(tokens, index + 1) not in _GROWN:
        return start, index + 1
    end = _ended(tokens, roles, index)
    return (index, end) if end is not None else None


#: What somebody grows, or in what.
_GROWN = frozenset({"GENUS", "PLANTS", "MEDIUM", "NUMBER", "COUNT", "IN"})


def _medium(tokens: Tokens, roles: list[str], index: int) -> tuple[int, int] | None:
    at = index - 1
    while type_at(tokens, at) in ("IN", "ARTICLE", "GROWING_VERB"):
        at -= 1
    if at >= 0 and roles[at] == "was" and not broken(tokens, at + 1, index):
        return at, index + 1
    if at != index - 1 or at < 0 or roles[at] != "from":
        return None
    to = index + 1
    if type_at(tokens, to) not in ("TO", "IN"):
        return None
    while type_at(tokens, to) in ("TO", "IN", "ARTICLE"):
        to += 1
    if type_at(tokens, to) != "MEDIUM" or broken(tokens, index, to):
        return None
    return at, index + 1
