"""Links and buttons: nobody guesses another's, and none of them gives orders in one's name."""

from __future__ import annotations

from typing import Any

import pytest
from sqlalchemy import select

from bot.conversation import postbox
from bot.conversation.postbox import card_id
from bot.records import Records
from bot.records.kinds import OwnerKind
from bot.records.models import Card
from bot.records.owners import Address
from tests.channels.chatting import LINE, MIRA, TOM, Chat, Who, text


async def linked(chat: Chat, who: Who, query: str) -> str:
    """The payload of the link below a card that somebody posts."""
    value = {"id": "q1", "from": who.user, "query": query, "offset": ""}
    sent = await chat.pushes("inline_query", value)
    (result,) = sent[0].values["results"]
    url: str = result["reply_markup"]["inline_keyboard"][0][0]["url"]
    return url.partition("start=")[2]


def test_a_name_of_a_card_cannot_be_worked_out(monkeypatch: pytest.MonkeyPatch) -> None:
    mira = Address(OwnerKind.PERSON, "telegram", "11")
    name = card_id(LINE, mira)
    assert name == card_id(LINE, mira)
    assert len(name) * 4 >= 80  # bits
    assert name != card_id(LINE, Address(OwnerKind.PERSON, "telegram", "12"))
    assert name != card_id(LINE, Address(OwnerKind.GROUP, "telegram", "11"))
    assert len(postbox._KEY) >= 32
    monkeypatch.setattr(postbox, "_KEY", b"another process")
    assert name != card_id(LINE, mira)


async def test_who_asks_the_same_has_a_card_of_their_own(
    chat: Chat, sqlite_records: Records
) -> None:
    links = {await linked(chat, who, LINE) for who in (MIRA, TOM)}
    assert len(links) == 2
    async with sqlite_records.reading() as session:
        assert {c.external_id for c in await session.scalars(select(Card))} == {"11", "12"}


@pytest.mark.parametrize(
    "guess",
    ["d_" + "0" * 20, "q_%", "q__", "q_' OR 1=1", "s_../../x", "d_\x00", "d_" + "a" * 3000, "q_é"],
)
async def test_a_guessed_link_shows_nothing(chat: Chat, guess: str) -> None:
    await linked(chat, MIRA, LINE)
    sent = await chat.says(TOM, f"/start {guess}")
    assert "0.47 g" not in text(sent)


ORDERS = (
    "fed everything quarter 5 l 20-20-20 powder", "rename Ruby to Rob 5 l 20-20-20 powder quarter",
    "lost Ruby, 5 l 20-20-20 powder quarter", "undo 5 l 20-20-20 powder quarter phals",
    "forget me 5 l 20-20-20 powder", "my powder is 20-20-20, 5 l, quarter, label 1 g per litre",
    "my tap is 14 dH, 5 l 20-20-20 powder quarter", "done 5 l 20-20-20 powder, quarter",
    "5 l 20-20-20 powder quarter, language german", "yes 5 l 20-20-20 powder",
)  # fmt: skip


@pytest.mark.parametrize("order", ORDERS)
async def test_a_link_of_somebody_else_gives_no_orders(
    chat: Chat, sqlite_records: Records, order: str
) -> None:
    await chat.says(MIRA, "add a vanda called Ruby in bark")
    await chat.says(MIRA, "no")
    await chat.says(MIRA, "forget me")  # a question is open
    link = await linked(chat, TOM, order)
    before = (await listed(chat), await chat.says(MIRA, "my settings"))
    await chat.says(MIRA, f"/start {link}")
    after = (await listed(chat), await chat.says(MIRA, "my settings"))
    assert after[0] == before[0]
    assert text(after[1]) == text(before[1])
    assert "Ruby" in after[0]


async def listed(chat: Chat) -> str:
    """What somebody has, and what stands in their log."""
    said = [await chat.says(MIRA, line) for line in ("my plants", "my shelf", "my diary")]
    return "\n".join(map(text, said))


async def test_the_words_of_an_answer_are_no_order_either(chat: Chat, club: Chat) -> None:
    """The link to the details of a group's answer, changed to one that asks."""
    await chat.says(MIRA, "add a vanda called Ruby in bark")
    (sent,) = await club.says(TOM, f"/dose {LINE}, fed everything")
    url = sent.values["reply_markup"]["inline_keyboard"][0][0]["url"]
    name = url.partition("start=d_")[2]
    before = await listed(chat)
    for kind in ("q", "s"):
        await chat.says(MIRA, f"/start {kind}_{name}")
    assert "fed" not in (await listed(chat)).replace("feed", "")
    assert before.splitlines()[0] == (await listed(chat)).splitlines()[0]


async def test_a_followed_link_uses_ones_own_water_and_shelf(chat: Chat) -> None:
    link = await linked(chat, TOM, "5 l 20-20-20 powder, half, phals")
    await chat.says(MIRA, "my scale shows 0.01 g")
    sent = await chat.says(MIRA, f"/start {link}")
    assert "0.01 g scale" in text(sent)


async def test_anothers_button_and_a_made_up_one_do_nothing(chat: Chat, club: Chat) -> None:
    """In private; of groups tells tests/channels/test_groups.py."""
    await chat.says(MIRA, "add a vanda called Ruby in bark")
    asked = await chat.says(MIRA, "forget me")
    for who, data in ((TOM, ""), (MIRA, "c0.11.0"), (TOM, f"c0.{TOM.id}.1"), (MIRA, "c0")):
        sent: list[Any] = await chat.taps(who, asked[-1], "yes", data=data)
        assert [r.method for r in sent] == ["answerCallbackQuery"]
    assert "Ruby" in text(await chat.says(MIRA, "my plants"))
