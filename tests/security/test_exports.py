"""What is handed out: nothing in it is run by a spreadsheet, and it all comes back as it was."""

from __future__ import annotations

import csv
import io
import json
from collections.abc import Iterator
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.records import Records, export_files
from tests.conversation.talking import Grower

from .hostile import PLANT, REMINDER, event, export, written

#: OWASP, 'CSV Injection': what begins a formula, its full-width forms too.
STARTS = ("=", "+", "-", "@", "\t", "\r", "\n", "＝", "＋", "－", "＠")
NAMES = [
    "=1+1", "+1", "-2+3", "@SUM(A1)", "＝1", "＋1", "－1", "＠x", "'=1", "a;=1+1", ";@x", "a;'=1",
    ";;=1", "a;＝1", '=HYPERLINK("x")', '","=1+1', '";=1', "'", "''=", "a|=b", "ok",
]  # fmt: skip


def cells(files: dict[str, str]) -> Iterator[str]:
    """Every cell as a spreadsheet has it, whichever sign it takes to part them."""
    for text in files.values():
        for row in csv.reader(io.StringIO(text)):
            yield from row
        for line in text.splitlines():  # where `;` parts, our commas and quotes are text
            yield from line.split(";")


def named(name: str) -> dict[str, Any]:
    return export(
        plants=[{**PLANT, "name": name, "detail": f"x;{name}"}],
        places=[{"id": 1, "name": f"p;{name}"}],
        events=[event(1, details={"note": f"{name};{name}"})],
    )


def there_and_back(document: dict[str, Any]) -> tuple[dict[str, str], export_files.Contents]:
    contents = export_files.from_json_text(json.dumps(document))
    files = export_files.to_csv_texts(contents)
    return files, export_files.from_csv_texts(files)


@pytest.mark.parametrize("name", NAMES)
def test_no_cell_is_a_formula_and_the_name_comes_back(name: str) -> None:
    files, back = there_and_back(named(name))
    assert [c for c in cells(files) if c.startswith(STARTS)] == []
    assert back.lists["plants"][0]["name"] == name
    assert back.lists["plants"][0]["detail"] == f"x;{name}"
    assert back.lists["events"][0]["payload"] == {"details": {"note": f"{name};{name}"}}


@given(st.text(alphabet="=+-@＝＠';,\"a |\\", min_size=1, max_size=12))
def test_no_text_of_such_signs_is_a_formula(name: str) -> None:
    files, back = there_and_back(named(name))
    assert [c for c in cells(files) if c.startswith(STARTS)] == []
    assert back.lists["plants"][0]["name"] == name
    assert back.lists["events"][0]["payload"] == {"details": {"note": f"{name};{name}"}}


async def test_the_files_of_a_folder_have_names_of_ours_only(sqlite_records: Records) -> None:
    plants = [{**PLANT, "name": "../../etc/passwd"}]
    mira = Grower(sqlite_records, files={"x.json": written(plants=plants)})
    await mira.says("import x.json", "yes")
    answer = await mira.says("export csv")
    assert answer.file is not None
    assert set(answer.file.files or ()) == {
        "settings.csv", *(f"{name}.csv" for name in export_files.LISTS)
    }  # fmt: skip
    assert "/" not in answer.file.name


async def test_a_calendar_has_no_line_of_somebody_elses_making(sqlite_records: Records) -> None:
    """What the file itself is held to, tells tests/reminders/test_ics.py."""
    mira = Grower(sqlite_records)
    text = "look END:VEVENT;BEGIN:VALARM;X=1,\\n\u2028x: y"
    reminder = {**REMINDER, "kind": "other", "text": text.replace("\u2028", " ")}
    mira.files["x.json"] = written(
        plants=[{**PLANT, "name": "R;X=1:END:VEVENT"}], reminders=[reminder]
    )
    await mira.says("import x.json", "yes")
    answer = await mira.says("calendar")
    assert answer.file is not None
    assert "VALARM" in answer.file.content
    lines = answer.file.content.split("\r\n")
    assert "BEGIN:VEVENT" in lines
    assert not [line for line in lines if line.startswith(("BEGIN:VALARM", "X="))]
    assert "\n" not in "".join(lines)


async def test_an_export_of_one_holds_nothing_of_another(sqlite_records: Records) -> None:
    await Grower(sqlite_records, "Tom").says("add a phal called Tomsplant in bark")
    mira = Grower(sqlite_records)
    await mira.says("add a vanda called Ruby in bark")
    for line in ("export", "export csv"):
        file = (await mira.says(line)).file
        assert file is not None
        assert "Ruby" in file.content
        assert "Tomsplant" not in file.content
