"""The commands as a person or a script calls them, in processes of their own."""

from __future__ import annotations

import json
import os
import sqlite3
import subprocess
import sys
from contextlib import closing
from pathlib import Path
from tempfile import TemporaryDirectory
from typing import Any

import pytest

ROOT = Path(__file__).resolve().parents[2]
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


def test_a_choice_is_taken_by_its_number_and_the_terminal_stays_plain_when_piped() -> None:
    lines = "add 3 phals in bark, 12 cm pots\n2\n5 l 20-20-20 powder, phals\n1\n99\nquit\n"
    done = sinkside("chat", "--lang", "en", send=lines.encode())
    text = done.stdout.decode()
    assert "1. yes   2. no   3. undo" in text
    assert "I do not ask again" in text  # 2 was 'no'
    assert "1. why" in text
    assert "- 1/4, as no strength or rhythm was said (" in text  # 1 was 'why'
    assert "\x1b" not in text  # no colours


def test_the_terminal_speaks_the_language_of_the_line() -> None:
    lines = "2 Liter, 20-20-20 Pulver, Rinde, halbe Stärke\n1\nquit\n"
    text = sinkside("chat", send=lines.encode()).stdout.decode()
    assert "20-20-20" in text
    assert "1. warum" in text
    assert "Dosis" in text or "Stärke" in text


def test_piped_chat_survives_what_is_no_text_and_an_endless_line() -> None:
    send = b"\xff\xfe broken bytes\n" + b"x" * 2_500_000 + b"\n" + LINE.encode() + b"\n"
    done = sinkside("chat", "--today", "2026-01-10", send=send)
    assert (done.returncode, done.stderr) == (0, b"")
    assert "0.47 g of 20-20-20 powder in 5 l\n" in done.stdout.decode()


def test_chat_answers_piped_lines_and_shows_what_is_behind_a_reply() -> None:
    done = sinkside("chat", send=f"help\n{LINE}\nmore\nwhy?\nquit\nnever read\n".encode())
    text = done.stdout.decode()
    assert done.returncode == 0
    assert "I plan a watering day" in text
    assert "0.47 g of 20-20-20 powder in 5 l" in text
    assert "- Keep concentrates away from children and pets" in text
    assert "- × 1/2 winter" in text
    assert "never read" not in text


def test_say_keeps_a_conversation_of_each_person_and_group(tmp_path: Path) -> None:
    url = f"sqlite:///{tmp_path / 'say.db'}"

    def say(*more: str, send: str) -> list[dict[str, Any]]:
        done = sinkside("say", "--json", "--database", url, *more, send=send.encode())
        assert done.returncode == 0
        return [json.loads(line) for line in done.stdout.decode().splitlines()]

    first = say("--as", "ana", send="add 2 phals in bark\nmy powder is 20-20-20, label 1 g/l\n")
    assert [a["kind"] for a in first] == ["plants", "products"]
    again = say("--as", "ana", "--today", "2026-06-14", send="2 l for the phals\nhalf that\n")
    assert [a["kind"] for a in again] == ["dose", "dose"]
    assert again[0]["dose"]["amount"] == pytest.approx(0.5)
    assert again[0]["dose"]["full_strength_source"] == "product"
    assert again[1]["dose"]["amount"] == pytest.approx(0.25)
    assert again[1]["understood"]["volume_l"] is None
    club = say("--as", "ana", "--group", "club", send="my plants\n\n")
    assert "no plants on record" in club[0]["reply"]
    assert len(club) == 2


def test_say_without_json_shows_what_a_person_sees(tmp_path: Path) -> None:
    url = f"sqlite:///{tmp_path / 'say.db'}"
    done = sinkside("say", "--as", "ana", "--database", url, send=b"add 2 phals in bark\n")
    assert done.stdout.decode().startswith("On record: 2 Phalaenopsis (bark).")


@pytest.mark.parametrize("arguments", [("say",), ("say", "--as", " "), ("say", "--as", "x" * 200)])
def test_say_needs_a_name(arguments: tuple[str, ...]) -> None:
    assert sinkside(*arguments, send=b"").returncode == 2


@pytest.mark.parametrize(
    "url", ["mysql://x", "sqlite:///:memory:", "nonsense", "sqlite:////dev/null/x.db"]
)
def test_a_database_that_cannot_serve_ends_with_2(url: str) -> None:
    done = sinkside("say", "--as", "ana", "--database", url, send=b"my plants\n")
    assert done.returncode == 2
    assert b"Traceback" not in done.stderr
    assert b"--database" in done.stderr


def test_a_database_of_a_newer_version_is_refused_and_not_touched(tmp_path: Path) -> None:
    file = tmp_path / "new.db"
    url = f"sqlite:///{file}"
    sinkside("say", "--as", "ana", "--database", url, send=b"add 2 phals in bark\n")
    with closing(sqlite3.connect(file)) as connection, connection:
        connection.execute("UPDATE records_version SET version_num = '0999'")
    before = file.read_bytes()
    done = sinkside("say", "--as", "ana", "--database", url, send=b"add a vanda\n")
    assert done.returncode == 2
    assert file.read_bytes() == before


def test_the_demo_shows_a_collection_and_a_plan() -> None:
    done = sinkside("chat", "--demo", send=b"my plants\nwhat's on today\nquit\n")
    text = done.stdout.decode()
    assert "17 plants" in text
    assert "Snowdrop (Phalaenopsis, sphagnum)" in text
    assert "Plan for today" in text


def test_chat_saves_an_export_and_takes_it_in(tmp_path: Path) -> None:
    def chat(name: str, lines: str) -> str:
        command = [sys.executable, "-m", "bot", "chat", "--database", f"sqlite:///{name}"]
        run = subprocess.run(
            [*command, "--today", "2026-06-14"],
            input=lines.encode(),
            capture_output=True,
            timeout=60,
            check=True,
            cwd=tmp_path,
            env={**os.environ, "XDG_DATA_HOME": str(tmp_path), "PYTHONPATH": str(ROOT)},
        )
        return run.stdout.decode()

    chat("a.db", "add 2 phals in bark called Twins\nfed Twins\nexport\nexport csv\n")
    exported = (tmp_path / "sinkside-2026-06-14.json").read_text(encoding="utf-8")
    for number, name in enumerate(("sinkside-2026-06-14.json", "sinkside-2026-06-14-csv")):
        said = chat(f"b{number}.db", f"import {name}\nyes\nexport\n")
        assert "Taken in: 1 entry of plants" in said
        copy = tmp_path / f"sinkside-2026-06-14-{number + 2}.json"
        assert copy.read_text(encoding="utf-8") == exported
