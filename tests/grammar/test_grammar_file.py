"""request.lark itself: no conflicts, and every terminal both used and produced."""

from __future__ import annotations

import re
from importlib import resources

from lark import Lark

from grammar.lexicon import load
from grammar.request.parser import _Tokens, terminals
from grammar.request.settling import settle
from grammar.words.scan import fold, raws_of, typed
from tests.grammar.told import messages

SOURCE = resources.files("grammar.request").joinpath("request.lark").read_text(encoding="utf-8")
#: Rarer than the fixtures.
MORE = ["alkalinity 4 dKH", "4 in pot", "13N-3P-15K", "13-3-15 + 2 MgO + te", "every 9 days",
        "hardness 14", "KH 5", "20 cm", "3 weeks", "2 l pot", "1:500", "weakly",
        "2 tsp", "scale 0.1 g", "label: per litre 2 ml"]  # fmt: skip


def test_grammar_has_no_shift_reduce_conflict() -> None:
    # strict mode raises on every conflict that lark would otherwise resolve in silence
    assert Lark(SOURCE, parser="lalr", lexer=_Tokens, maybe_placeholders=False, strict=True)


def test_every_declared_terminal_stands_in_a_rule() -> None:
    rules = re.sub(r"//.*|%declare.*", "", SOURCE)
    assert terminals() == set(re.findall(r"\b[A-Z][A-Z_0-9]+\b", rules))


def test_every_declared_terminal_is_produced_from_some_message() -> None:
    lexicon = load("en")
    texts = [m["text"] for f in ("en", "en_people", "en_traps") for m in messages(f"{f}.jsonl")]
    seen = set()
    for text in texts + MORE:
        folded = fold(text)
        seen |= {t.type for t in settle(typed(raws_of(folded, lexicon), folded, lexicon))}
    assert terminals() - seen == set()
