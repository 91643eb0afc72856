"""The commands as a person or a script calls them, in processes of their own."""

from __future__ import annotations

import json
import os
import subprocess
import sys
from tempfile import TemporaryDirectory

import pytest

LINE = "5 litres, 20-20-20 powder, sphagnum, winter, quarter strength"


def sinkside(*arguments: str, send: bytes | None = None) -> subprocess.CompletedProcess[bytes]:
    command = [sys.executable, "-m", "bot", *arguments]
    with TemporaryDirectory() as home:  # nothing of a test stays with the user
        return subprocess.run(
            command,
            input=send,
            capture_output=True,
            timeout=60,
            check=False,
            env={**os.environ, "XDG_DATA_HOME": home},
        )


def test_ask_answers_in_words() -> None:
    done = sinkside("ask", LINE)
    assert done.returncode == 0
    assert done.stdout.decode().startswith("0.47 g of 20-20-20 powder in 5 l\n")


def test_ask_json_is_one_object_on_one_line() -> None:
    done = sinkside("ask", "--json", LINE)
    assert done.stdout.count(b"\n") == 1
    answer = json.loads(done.stdout)
    assert answer["dose"]["amount"] == pytest.approx(0.46875)
    assert answer["dose"]["amount"] == answer["dose"]["per_litre"] * 5.0


def test_batch_answers_every_line_in_order_an_empty_one_too() -> None:
    send = f"{LINE}\n\n3 l 6 l 20-20-20 powder\n".encode() + b"\xff\xfe broken bytes\n"
    done = sinkside("ask", "--json", "--batch", send=send)
    kinds = [json.loads(line)["kind"] for line in done.stdout.decode().splitlines()]
    assert done.returncode == 0
    assert kinds[:3] == ["dose", "help", "ask"]
    assert len(kinds) == 4


def test_batch_survives_an_endless_line() -> None:
    send = b"x" * 2_500_000 + b"\n" + LINE.encode() + b"\n"
    done = sinkside("ask", "--json", "--batch", send=send)
    kinds = [json.loads(line)["kind"] for line in done.stdout.decode().splitlines()]
    assert kinds == ["refused", "dose"]


@pytest.mark.parametrize(
    "arguments",
    [
        ("ask",),
        ("ask", LINE, "--batch"),
        ("ask", "--today", "yesterday", LINE),
        ("ask", "--lang", "xx", LINE),
        ("nonsense",),
    ],
)
def test_unusable_arguments_end_with_2(arguments: tuple[str, ...]) -> None:
    assert sinkside(*arguments).returncode == 2


@pytest.mark.parametrize(
    ("arguments", "season_step"),
    [
        (("--today", "2026-01-15"), True),
        (("--today", "2026-07-15"), False),
        (("--today", "2026-07-15", "--south"), True),
    ],
)
def test_the_day_and_the_hemisphere_make_the_season(
    arguments: tuple[str, ...], season_step: bool
) -> None:
    done = sinkside("ask", "--json", *arguments, "6 l 20-20-20 powder")
    rules = [step["rule"] for step in json.loads(done.stdout)["why"]]
    assert ("season.winter" in rules) is season_step


def test_chat_answers_piped_lines_and_shows_what_is_behind_a_reply() -> None:
    done = sinkside("chat", send=f"help\n{LINE}\nmore\nwhy?\nquit\nnever read\n".encode())
    text = done.stdout.decode()
    assert done.returncode == 0
    assert "Tell me, and I remember" in text
    assert "0.47 g of 20-20-20 powder in 5 l" in text
    assert "- Keep concentrates away from children and pets" in text
    assert "- × 1/2 winter" in text
    assert "never read" not in text
