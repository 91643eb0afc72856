"""A file to take in, made by somebody who means harm: refused, or as harmless as any."""

from __future__ import annotations

import contextlib
import json
import os
import threading
from datetime import UTC, datetime, timedelta
from pathlib import Path
from typing import Any

import pytest

from bot.channels import terminal
from bot.conversation import postbox as postbox_module
from bot.conversation import reminding
from bot.conversation.postbox import Postbox, Work
from bot.conversation.talk import Conversation
from bot.conversation.turns.take_along import codes
from bot.records import Records, errors, export_files, owners, transfer
from bot.records.kinds import OwnerKind
from bot.records.owners import Address
from tests.conversation.talking import START, Grower

from .hostile import PLANT, REMINDER, event, export, written

#: What is asked of records that came out of a file, the last to be rid of them.
ASKED = (
    "my plants", "what's on today", "5 l", "5 l 20-20-20 powder", "why", "how salty are my pots",
    "how salty is Ruby", "what did Ruby get since january", "my diary", "my shelf", "my settings",
    "my reminders", "my year", "calendar", "brown root tips on Ruby", "done", "undo", "undo",
    "export", "export csv",
)  # fmt: skip


def reminder(**changes: Any) -> dict[str, Any]:
    return {**REMINDER, **changes}


PRODUCT_OF_NOTHING = {
    "id": 1, "n": 20.0, "label_per_litre": 1e-300, "label_unit": "g", "is_default": True,
    "added_on": "2026-01-01", "present": True,
}  # fmt: skip


REFUSED = {
    "a zone that is none": export(settings={"zone": "Nowhere/Nope"}),
    "a zone that is a path": export(settings={"zone": "../../../etc/passwd"}),
    "a zone that is a file": export(settings={"zone": "/etc/localtime"}),
    "a zone to be undone to": export(
        events=[event(1, "settings", before={"zone": "Nope"}, after={"zone": "UTC"})]
    ),
    "a growth to be undone to": export(
        events=[event(1, "growth", before={"growth": "x"}, after={"growth": "growing"})]
    ),
    "due beyond the calendar": export(reminders=[reminder(due_ms=2**53 - 1)]),
    "an occurrence beyond the calendar": export(
        reminders=[reminder(due_local="9989-03-01T09:00:00")]
    ),
    "a start beyond the calendar": export(reminders=[reminder(start="9989-03-01T09:00:00")]),
    "a genus as long as a book": export(reminders=[reminder(target={"genera": ["x" * 50_000]})]),
    "a place as long as a book": export(reminders=[reminder(target={"place": "x" * 50_000})]),
    "more genera than there are": export(reminders=[reminder(target={"genera": ["x"] * 5_000})]),
    "a rule by the second": export(reminders=[reminder(rule="FREQ=SECONDLY")]),
    "a rule that never comes": export(
        reminders=[reminder(rule="FREQ=YEARLY;BYMONTH=2;BYMONTHDAY=30")]
    ),
    "a rule that is none": export(reminders=[reminder(rule="FREQ=WEEKLY;FOO=BAR")]),
    "a rule without end": export(reminders=[reminder(rule="FREQ=DAILY;INTERVAL=0")]),
    "a rule of large numbers": export(reminders=[reminder(rule=f"FREQ=DAILY;INTERVAL={9**40}")]),
    "a rule to be undone to": export(
        reminders=[reminder()],
        events=[{**event(1, "reminder", before={"rule": "FREQ=DAILY;INTERVAL=0"},
                         after={"rule": None}), "reminder_id": 1}],
    ),
    "half of the quiet hours": export(settings={"quiet_from_min": 5}),
    "words for figures": export(events=[event(1, details={"strength": "x"})]),
    "an analysis of one": export(events=[event(1, details={"analysis": [1]})]),
    "a reading in words": export(events=[event(1, "reading", details={"runoff_ec_ms_cm": "x"})]),
    "a figure beyond sense": export(events=[event(1, details={"n_mg_l": 1e300})]),
    "a name with a screen's orders": export(plants=[{**PLANT, "name": "\x1b[31mred"}]),
    "a name with a line of its own": export(plants=[{**PLANT, "name": "a\r\nBEGIN:VEVENT"}]),
    "a name that turns round": export(plants=[{**PLANT, "name": "a\u202eb"}]),
    "a count beyond sense": export(plants=[{**PLANT, "count": 10**30}]),
    "an owner of one's choice": export(plants=[{**PLANT, "owner_id": 1}]),
    "an address of one's choice": export(settings={"external_id": "1"}),
    "a scale finer than dust": export(settings={"scale_step_g": 1e-9}),
    "a syringe finer than dust": export(settings={"syringe_step_ml": 0}),
    "a can of a drop": export(settings={"can_l": 1e-9}),
    "a watering of a grain": export(plants=[{**PLANT, "water_ml": 1e-12}]),
    "a label of next to nothing": export(products=[PRODUCT_OF_NOTHING]),
    "somebody else's water": export(plants=[{**PLANT, "water_id": 7}]),
}  # fmt: skip


@pytest.mark.parametrize("name", REFUSED)
async def test_what_would_do_harm_is_refused_and_changes_nothing(
    sqlite_records: Records, name: str
) -> None:
    mira = Grower(sqlite_records, files={"x.json": json.dumps(REFUSED[name])})
    assert (await mira.says("import x.json")).kind == "refused"
    assert (await mira.says("yes")).kind != "import"
    assert "No plants" in (await mira.says("my plants")).reply


HARMLESS = {
    "a language that is a path": export(settings={"language": "../../x", "heard": "../x"}),
    "templates for names": export(
        settings={"place_name": "<b>{ $x }</b>"}, plants=[{**PLANT, "name": "{ $x } { -y }"}]
    ),
    "a rule a century old": export(
        reminders=[reminder(rule="FREQ=DAILY", start="1900-01-01T09:00:00")]
    ),
    "due since the beginning": export(reminders=[reminder(due_ms=1)]),
    "as many as may come": export(reminders=[reminder(id=n) for n in range(1, 201)]),
    "details that mean nothing": export(events=[event(1, details={"x": [{"y": None}], "z": "w"})]),
    "a rescue that is none": export(
        events=[event(1, "reading", details={"rescue": "{ x }", "no_feed_until": "never"})]
    ),
    "a log that does not fit": export(
        events=[event(1, "renamed", before={"name": "a"}, after={"name": "b"})]
    ),
}


@pytest.mark.parametrize("name", HARMLESS)
async def test_what_is_taken_in_can_be_asked_for_and_forgotten(
    sqlite_records: Records, name: str
) -> None:
    mira = Grower(sqlite_records, files={"x.json": json.dumps(HARMLESS[name])})
    assert (await mira.says("import x.json", "yes")).kind == "import"
    for line in ASKED:
        assert (await mira.says(line)).reply
    assert "Deleted" in (await mira.says("forget me", "yes")).reply


async def test_what_one_took_in_keeps_no_reminder_from_others(sqlite_records: Records) -> None:
    """What is due is reckoned for all at once: nobody's rule may stop it."""
    for number, contents in enumerate(HARMLESS.values()):
        evil = Grower(sqlite_records, f"evil{number}", files={"x.json": json.dumps(contents)})
        await evil.says("import x.json", "yes")
    mira = Grower(sqlite_records, files={"x.json": written(reminders=[just_due()])})
    await mira.says("import x.json", "yes")
    assert "Mira" in await reminded(sqlite_records)


def just_due() -> dict[str, Any]:
    """A reminder that came a minute ago by the clock."""
    local = datetime.now(UTC).replace(tzinfo=None, microsecond=0) - timedelta(minutes=1)
    due_ms = int(local.replace(tzinfo=UTC).timestamp() * 1000)
    said = local.isoformat()
    return reminder(start=said, due_local=said, due_ms=due_ms)


async def reminded(records: Records) -> list[str]:
    """Whom everything that is due is said to."""
    postbox = Postbox(records, Conversation(records), "test:1", "w")
    told: list[str] = []

    async def write(work: Work, chat: str, answer: Any, topic: int | None) -> list[Any]:
        told.append(chat)
        return []

    for _ in range(20):
        if not await postbox.remind(write, 50):
            break
    return told


async def test_what_cannot_be_reckoned_is_tried_again_and_holds_up_nobody(
    sqlite_records: Records, monkeypatch: pytest.MonkeyPatch
) -> None:
    """As records could be that no import of ours let in."""
    for name in ("Eve", "Mira"):
        one = Grower(sqlite_records, name, files={"x.json": written(reminders=[just_due()])})
        await one.says("import x.json", "yes")
    usual = reminding.reckon

    def reckon(owner: Any, now_ms: int) -> Any:
        if owner.address.external_id == "Eve":
            raise OverflowError("made up")
        return usual(owner, now_ms)

    monkeypatch.setattr(reminding, "reckon", reckon)
    assert await reminded(sqlite_records) == ["Mira"]
    monkeypatch.setattr(reminding, "reckon", usual)  # the fault is mended
    assert await reminded(sqlite_records) == []  # it is not yet tried again
    later = postbox_module.now_ms() + reminding.TRIED_AGAIN_MS
    monkeypatch.setattr(postbox_module, "now_ms", lambda: later)
    assert await reminded(sqlite_records) == ["Eve"]


async def test_what_cannot_be_said_keeps_nobody_from_an_answer(
    sqlite_records: Records, monkeypatch: pytest.MonkeyPatch
) -> None:
    mira = Grower(sqlite_records, files={"x.json": written(reminders=[reminder()])})
    await mira.says("import x.json", "yes")

    async def broken(*_: Any) -> None:
        raise KeyError("reminder-what")

    monkeypatch.setattr("bot.conversation.turns.reminders.pings.compose", broken)
    from dataclasses import replace

    incoming = replace(mira.incoming("my plants"), pulls=True)
    assert "Ruby" in (await Conversation(sqlite_records).answer(incoming)).reply


# --- before it is parsed -------------------------------------------------------------------------


@pytest.mark.parametrize(
    "text",
    [
        "[" * 100_000,
        '{"a":' * 100_000,
        '{"format":"sinkside-records","version":2,"plants":[' + "{}," * 20_000 + "{}]}",
        '{"format":"sinkside-records","version":2,"plants":[{"id":' + "9" * 5_000 + "}]}",
        '{"format":"sinkside-records","version":' + "9" * 4_000 + "}",
        '{"format":"sinkside-records","version":NaN}',
        '{"format":"sinkside-records","version":2,"plants":[{"pot_cm":1e999}]}',
        '{"format":"sinkside-records","version":2,"events":[{"payload":' + "[" * 900 + "]" * 900
        + "}]}",
        '{"format":"sinkside-records","format":"sinkside-records","version":2}',
        "\ufeff\ufeff{}",
        "\x00",
    ],
    ids=range(11),
)  # fmt: skip
async def test_a_text_made_to_choke_on_is_refused(sqlite_records: Records, text: str) -> None:
    answer = await Grower(sqlite_records, files={"x.json": text}).says("import x.json")
    assert answer.kind == "refused"


def test_rows_too_many_for_the_length_are_not_parsed(monkeypatch: pytest.MonkeyPatch) -> None:
    def parsed(*_: Any, **__: Any) -> None:
        raise AssertionError("it was parsed")

    monkeypatch.setattr(export_files.json, "loads", parsed)
    with pytest.raises(errors.BrokenFile):
        transfer.read_export('{"plants":[' + "{}," * 20_000 + "{}]}")
    monkeypatch.setattr(export_files, "MAX_CHARACTERS", 10)
    with pytest.raises(errors.FileTooLarge):
        transfer.read_export("x" * 11)
    with pytest.raises(errors.FileTooLarge):
        transfer.read_csv_export({"settings.csv": "x" * 11})


def test_brackets_within_names_are_no_rows() -> None:
    places = [{"id": n, "name": "{[" * 20 + str(n)} for n in range(1, 900)]
    assert transfer.read_export(written(places=places), codes=codes()).problems == ()


# --- a folder, a name ----------------------------------------------------------------------------


@pytest.mark.parametrize(
    "name", ["~nobody-of-this-name/x.json", "a\x00b", "x" * 5_000, "/dev/zero", "", "."]
)
def test_a_name_made_to_break_opens_nothing(
    name: str, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.chdir(tmp_path)
    assert terminal.opened(name) is None


def test_a_pipe_in_a_folder_is_not_waited_for(tmp_path: Path) -> None:
    os.mkfifo(tmp_path / "plants.csv")
    end = threading.Event()

    def answer_who_reads() -> None:  # so that this fails instead of waiting for ever
        while not end.wait(0.01):
            with contextlib.suppress(OSError):
                os.close(os.open(tmp_path / "plants.csv", os.O_WRONLY | os.O_NONBLOCK))

    answering = threading.Thread(target=answer_who_reads)
    answering.start()
    (tmp_path / "settings.csv").write_text("format,version\nsinkside-records,2\n")
    found = terminal.opened(str(tmp_path))
    end.set()
    answering.join()
    assert set(found or ()) == {"settings.csv"}


def test_a_file_too_large_is_not_read(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(terminal, "_LARGEST_FILE", 9)
    (tmp_path / "plants.csv").write_text("0123456789")
    assert terminal.opened(str(tmp_path)) is None
    assert terminal.opened(str(tmp_path / "plants.csv")) is None


async def test_a_csv_folder_with_other_files_is_foreign(sqlite_records: Records) -> None:
    files: Any = {"x": {"settings.csv": "format,version\nsinkside-records,2\n", "run.csv": "a\n"}}
    assert (await Grower(sqlite_records, files=files).says("import x")).kind == "refused"


async def test_an_import_goes_to_who_sends_it_whatever_it_says(sqlite_records: Records) -> None:
    await Grower(sqlite_records, "Tom").says("add a phal called Tomsplant in bark")
    mira = Grower(sqlite_records, files={"x.json": written(settings={"place_name": "Tom"})})
    await mira.says("import x.json", "yes")
    assert "Tomsplant" in (await Grower(sqlite_records, "Tom").says("my plants")).reply
    async with sqlite_records.reading() as session:
        owner = await owners.find(session, Address(OwnerKind.PERSON, "test", "Mira"))
    assert owner is not None
    assert owner.created_at >= START
