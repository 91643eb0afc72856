"""A file named in the messenger is one of the messenger's, never one of this machine."""

from __future__ import annotations

from pathlib import Path

import pytest

from tests.channels.chatting import IDA, MIRA, Chat, text
from tests.channels.loopback import Loopback

from .hostile import written


@pytest.mark.parametrize("line", ["import {}", "import file://{}", "import ../../../../..{}"])
async def test_no_file_of_the_machine_is_opened(
    chat: Chat, loopback: Loopback, tmp_path: Path, line: str
) -> None:
    file = tmp_path / "secret.json"
    file.write_text(written())
    sent = await chat.says(MIRA, line.format(file))
    assert "Take it in" not in text(sent)
    assert "Ruby" not in text(await chat.says(MIRA, "my plants"))


async def test_a_name_that_leads_to_a_path_opens_no_file_of_the_machine(
    chat: Chat, loopback: Loopback, tmp_path: Path
) -> None:
    """The messenger names where a file lies; that is an address of its own, whatever it says."""
    file = tmp_path / "secret.json"
    file.write_text(written())
    document = {"file_id": str(file), "file_unique_id": "f", "file_name": "x.json", "file_size": 9}
    await chat.says(MIRA, None, document=document)
    await chat.says(MIRA, "yes")
    assert "Ruby" not in text(await chat.says(MIRA, "my plants"))


async def test_in_a_group_nobody_takes_a_file_in(club: Chat, loopback: Loopback) -> None:
    loopback.files["f1"] = written().encode()
    document = {"file_id": "f1", "file_unique_id": "f", "file_name": "x.json", "file_size": 9}
    assert await club.says(IDA, None, document=document) == []
    await club.says(IDA, "/dose import f1.json")
    await club.says(IDA, "/dose yes")
    assert "Ruby" not in text(await club.says(IDA, "/plants"))


@pytest.mark.parametrize("name", ["x.exe", "x.json.exe", "", "x.csv"])
async def test_a_file_of_another_kind_is_not_fetched(
    chat: Chat, loopback: Loopback, name: str
) -> None:
    document = {"file_id": "f1", "file_unique_id": "f", "file_name": name, "file_size": 9}
    sent = await chat.says(MIRA, None, document=document)
    assert [r.method for r in sent] == ["sendMessage"]
    assert loopback.of("getFile") == []
