"""What somebody else does or says is none of what is asked for here."""

from __future__ import annotations

from grammar.request.doubts import told
from grammar.words.scan import Token
from grammar.words.tokens import Tokens, clauses

#: How much and how often somebody gives; a volume alone is that of the can.
_PRACTICE = frozenset({
    "PER", "EACH", "EVERY", "MASS_UNIT", "SPOON", "LOOSE_MEASURE", "CONCENTRATION_UNIT", "EC_UNIT",
    "FRACTION", "LEVEL", "MULTIPLE", "PERCENT", "VAGUE", "STRENGTH", "FULL", "REGIME",
    "OTHER_REGIME", "ANALYSIS", "GROWTH", "GROWING_VERB",
})  # fmt: skip


def hearsay(tokens: Tokens) -> Tokens:
    """'my friend gives 5 g per litre': her figures are shown, up to the next 'I' or comma."""
    if not any(_is_someone(token) for token in tokens):
        return tokens
    return [token for clause in clauses(tokens) for token in _heard(clause)]


def _heard(clause: Tokens) -> Tokens:
    someone = next((i for i, t in enumerate(clause) if _is_someone(t)), None)
    if someone is None:
        return clause
    start = next((i for i in range(someone, len(clause)) if _gives(clause[i])), None)
    if start is None or any(_is_own(t) for t in clause[someone:start]):
        return clause  # 'my friend and I use 5 g per litre'
    behind = range(start + 1, len(clause))
    end = next((i for i in behind if _is_own(clause[i])), len(clause))
    if any(t.type == "LABEL" for t in clause[start + 1 : end]):
        return clause  # 'my friend says the label has 2 g per litre'
    if all(t.type not in _PRACTICE for t in clause[start + 1 : end]):
        return clause  # 'my wife says it is 5 l': the can is ours as well
    # How theirs grow is none of ours either; 'says' of a label is not one behind a person.
    growth = ("GROWTH", "GROWING_VERB")
    said = [t._replace(type="UNKNOWN") if t.type in growth else t for t in clause[start:end]]
    said[0] = said[0]._replace(type="FILLER")
    return [*clause[:start], *told(said), *clause[end:]]


def _is_someone(token: Token) -> bool:
    return token.type == "FILLER" and token.value in ("someone", "someone_gives")


def _gives(token: Token) -> bool:
    """A word for what a person does or says; a label may say, too: 'recommends'."""
    if token.type == "LABEL":
        return token.value == "says" and len(token.raws) == 1
    # 'verb': of a person, see doubts.others
    return token.type == "FILLER" and (token.value.endswith("gives") or token.value == "verb")


def _is_own(token: Token) -> bool:
    return token.type == "PRESENT" or (
        token.type == "FILLER" and token.value in ("speaker", "feeding_own")
    )
