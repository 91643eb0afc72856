"""The palette: readable on its own card, in light and dark chats, and for colour-blind eyes."""

from __future__ import annotations

from itertools import combinations

import pytest

from bot.pictures import look
from tests.pictures.seeing import SEEN_BY, apart, contrast, luminance

#: WCAG 2.2: 1.4.3 for text, 1.4.11 for graphics.
TEXT, GRAPHICS = 4.5, 3.0
#: Apart enough to be told from each other; ours: a difference of 2 to 3 is just seen.
TOLD_APART = 15.0


def test_the_formula_gives_the_known_ends() -> None:
    assert contrast("#000000", "#FFFFFF") == pytest.approx(21.0)
    assert contrast("#777777", "#FFFFFF") == pytest.approx(4.48, abs=0.005)  # a well-known pair
    assert luminance("#FF0000") == pytest.approx(0.2126)


@pytest.mark.parametrize("ground", look.GROUNDS)
@pytest.mark.parametrize("colour", look.TEXT_COLOURS)
def test_text_stands_out(colour: str, ground: str) -> None:
    assert contrast(colour, ground) >= TEXT


@pytest.mark.parametrize("ground", look.GROUNDS)
@pytest.mark.parametrize("meaning", look.MEANINGS)
def test_marks_stand_out(meaning: str, ground: str) -> None:
    assert contrast(look.MEANINGS[meaning], ground) >= GRAPHICS


@pytest.mark.parametrize("chat", ["#FFFFFF", "#000000", "#0E1621", "#212121"])
def test_the_frame_tells_the_card_from_the_chat(chat: str) -> None:
    assert contrast(look.FRAME, chat) >= GRAPHICS


def test_text_stands_out_on_the_band() -> None:
    assert contrast(look.INK, look.FEED_PALE) >= TEXT


@pytest.mark.parametrize("eyes", SEEN_BY)
@pytest.mark.parametrize(("one", "other"), list(combinations(look.MEANINGS, 2)))
def test_meanings_are_told_apart(one: str, other: str, eyes: str) -> None:
    assert apart(look.MEANINGS[one], look.MEANINGS[other], eyes) >= TOLD_APART


def test_red_and_green_would_not_be() -> None:
    assert (
        apart("#B0603F", "#6F7B3F", "deuteranopia")
        < TOLD_APART
        < apart("#B0603F", "#6F7B3F", "usual")
    )


def test_no_text_is_too_small_for_a_phone() -> None:
    shown_px = look.SMALL * 360 / look.WIDTH
    assert shown_px >= 11
