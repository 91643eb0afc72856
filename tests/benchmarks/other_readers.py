"""Other readers of text, in an environment of their own: run by bench_reading, imports none of us.

The first line of standard input is a JSON list of messages; a JSON list of the readers found here
comes back. Each further line names one: it goes over all messages, and the median time of the
processor [ms] comes back.
"""

from __future__ import annotations

import contextlib
import json
import statistics
import sys
import time
import warnings
from collections.abc import Callable
from typing import Any


def quantities() -> Callable[[str], Any]:
    from quantulum3 import parser

    return parser.parse


def ingredient() -> Callable[[str], Any]:
    from ingredient_parser import parse_ingredient

    return parse_ingredient


def ingredient_untagged() -> Callable[[str], Any]:
    """Where the data of its part-of-speech tagger is not here: with the tagger untrained.

    Everything else of it runs, so this is the least that it takes.
    """
    from ingredient_parser.en import _utils
    from nltk.tag import PerceptronTagger

    tagger = PerceptronTagger(load=False)
    tagger.classes = {"NN"}
    tagger.model.classes = tagger.classes
    tagger.tagdict.update(_utils.load_ingredient_tagdict())
    _utils._get_pos_tagger = lambda: tagger
    return ingredient()


def dates() -> Callable[[str], Any]:
    from dateparser.search import search_dates

    return lambda text: search_dates(text, languages=["en"])


def found() -> dict[str, Callable[[str], Any]]:
    """The readers that work here."""
    readers: dict[str, Callable[[str], Any]] = {}
    for name, make in (
        ("quantulum3", quantities),
        ("ingredient-parser-nlp", ingredient),
        ("ingredient-parser-nlp without its tagger", ingredient_untagged),
        ("dateparser", dates),
    ):
        if name.startswith("ingredient") and "ingredient-parser-nlp" in readers:
            continue
        with contextlib.suppress(Exception):
            reader = make()
            reader("2 cups of water on 3 May")
            readers[name] = reader
    return readers


def round_ms(reader: Callable[[str], Any], texts: list[str]) -> float:
    times = []
    for text in texts:
        start = time.process_time()
        with contextlib.suppress(Exception):  # some lines are not for them
            reader(text)
        times.append(1000 * (time.process_time() - start))
    return statistics.median(times)


def main() -> None:
    warnings.simplefilter("ignore")
    texts = json.loads(sys.stdin.readline())
    out = sys.stdout
    sys.stdout = sys.stderr  # what a library prints is none of ours
    readers = found()
    print(json.dumps(list(readers)), file=out, flush=True)
    for line in sys.stdin:
        print(round_ms(readers[line.strip()], texts), file=out, flush=True)


if __name__ == "__main__":
    main()
