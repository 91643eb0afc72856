"""Who got nothing: said alone nothing is logged, beside others they are spared."""

from __future__ import annotations

from collections import Counter

import pytest

from bot.records import Records
from tests.conversation.talking import Grower

START = (
    "add a phal called Hugo in bark, 12 cm pot", "add a vanda called Bella, bare root, balcony",
    "add a masdevallia called Ruby in moss, 8 cm pot",
)  # fmt: skip


@pytest.fixture
async def mira(sqlite_records: Records) -> Grower:
    mira = Grower(sqlite_records)
    await mira.says(*START)
    return mira


async def logged(mira: Grower) -> Counter[tuple[str, str]]:
    """How often each plant got what, by the log."""
    entries = ((await mira.says("log")).details or {})["entries"]
    names = {e["plant"]: e["name"] for e in entries if e["kind"] == "added"}
    return Counter((e["kind"], names[e["plant"]]) for e in entries if e["kind"] in ("fed", "clear"))


@pytest.mark.parametrize(
    "line",
    [
        "did not feed Hugo", "nobody got feed today", "no feed for Hugo today",
        "Hugo didn't get any fertilizer", "none of them got feed", "i should have fed Hugo",
        "hätte Hugo düngen sollen", "niemand hat heute Dünger bekommen",
        "Hugo bekam keinen Dünger", "nadie recibió abono hoy", "Hugo no recibió abono",
        "nikt nie dostał dziś nawozu", "Hugo nie dostał nawozu",
    ],
)  # fmt: skip
async def test_nothing_is_logged_and_no_dose_given(mira: Grower, line: str) -> None:
    answer = await mira.says(line)
    assert answer.dose is None
    assert answer.kind != "ask"
    assert await logged(mira) == Counter()


@pytest.mark.parametrize(
    ("line", "fed"),
    [
        ("fed Bella, didn't feed Hugo", {"Bella"}),
        ("didn't feed Hugo, fed Bella", {"Bella"}),
        ("fed all, no feed for Ruby", {"Bella", "Hugo"}),
        ("Bella got feed, Ruby got no feed", {"Bella"}),
        ("hab Bella gedüngt, Hugo bekam keinen Dünger", {"Bella"}),
        ("aboné a Bella, Hugo no recibió abono", {"Bella"}),
        ("nawiozłam Bellę, Hugo nie dostał nawozu", {"Bella"}),
    ],
)
async def test_who_got_nothing_is_spared(mira: Grower, line: str, fed: set[str]) -> None:
    await mira.says(line)
    assert await logged(mira) == Counter({("fed", name): 1 for name in fed})


async def test_a_dose_is_not_reckoned_for_who_gets_none(mira: Grower) -> None:
    spared = await mira.says("no feed for Ruby, 2 l for Bella, 20-20-20 powder")
    alone = await mira.says("2 l for Bella, 20-20-20 powder")
    assert spared.dose is not None
    assert alone.dose is not None
    assert spared.dose.amount == alone.dose.amount
    assert "Ruby" not in spared.reply
