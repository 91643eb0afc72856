"""The LALR parser over typed tokens, made total: a token that does not fit becomes unknown."""

from __future__ import annotations

import re
from collections.abc import Iterator
from functools import cache
from importlib import resources
from typing import Any

from lark import Lark, Tree, UnexpectedInput
from lark import Token as Terminal
from lark.lexer import Lexer

from grammar.words.scan import Token

#: Passes before all tokens of a type are given up at once, so that no text takes long.
_PATIENCE = 16
#: A terminal of lark whose value is our own token.
Parsed = Tree[Terminal]


class _Tokens(Lexer):
    """Hands our tokens to lark, which asks for a lexer."""

    def __init__(self, lexer_conf: Any) -> None:  # lark calls it so
        pass

    def lex(self, data: Any) -> Iterator[Terminal]:  # type: ignore[override]
        """One terminal a token, with its place in the list."""
        for place, token in enumerate(data):
            terminal = Terminal(token.type, token.value, start_pos=place)
            terminal.value = token  # set after: lark would make text of it
            yield terminal


@cache
def _source() -> str:
    return resources.files("grammar.request").joinpath("request.lark").read_text(encoding="utf-8")


@cache
def _lark() -> Lark:
    return Lark(_source(), parser="lalr", lexer=_Tokens, maybe_placeholders=False)


@cache
def terminals() -> frozenset[str]:
    """The token types that request.lark declares."""
    lines = re.findall(r"^%declare (.+)$", _source(), re.MULTILINE)
    return frozenset(name for line in lines for name in line.split())


def parse(tokens: list[Token]) -> Parsed:
    """The parts of a message as a flat tree.

    Parameters
    ----------
    tokens : terminals of request.lark in order

    Returns
    -------
    lark.Tree
        Children are the parts; each leaf is one of the tokens. Tokens that fit nowhere are
        retagged UNKNOWN, one at a time at first, so it ends in at most as many passes as there
        are tokens.
    """
    known = terminals()
    tokens = [t if t.type in known else t._replace(type="UNKNOWN") for t in tokens]
    for attempt in range(len(tokens) + 1):
        try:
            return _lark().parse(tokens)
        except UnexpectedInput as error:
            place = _culprit(error, tokens)
            if attempt < _PATIENCE:
                tokens[place] = tokens[place]._replace(type="UNKNOWN")
            else:
                tired = tokens[place].type
                tokens = [t._replace(type="UNKNOWN") if t.type == tired else t for t in tokens]
    raise AssertionError("every token unknown and still no parse")


def _culprit(error: UnexpectedInput, tokens: list[Token]) -> int:
    """The token at which the parser stopped, or the last one not yet given up."""
    place = getattr(error, "pos_in_stream", None)
    if not isinstance(place, int) or place >= len(tokens) or tokens[place].type == "UNKNOWN":
        bad = getattr(getattr(error, "token", None), "value", None)
        place = next((i for i, t in enumerate(tokens) if t is bad), len(tokens) - 1)
    while place > 0 and tokens[place].type == "UNKNOWN":
        place -= 1
    return place
