"""Files to take in: any JSON, any CSV, and a whole export with some values put in its place."""

from __future__ import annotations

import json
from collections.abc import Iterable
from functools import cache
from itertools import pairwise
from pathlib import Path
from typing import Any

from bot.conversation.turns.take_along import codes
from bot.records import Records, errors, owners, transfer
from tests.conversation.talking import Grower
from tests.fuzzing.cases import Case, Target
from tests.fuzzing.laws import hold, of_answer
from tests.fuzzing.room import COLLECTION, Room, export, state
from tests.security.test_import_files import ASKED, HARMLESS, REFUSED

DEMO = Path(__file__).parents[2] / "fixtures" / "demo" / "collection.json"
#: What a case is, by its mode: a document, CSV files, values to put into a whole export.
DOCUMENT, TABLES, CHANGES = range(3)
#: Begins the name of each of several files.
_FILE = "=="
_MOST_CHANGES = 4
_NEW = "2"  # who takes the file in and has nothing yet


@cache
def _room() -> Room:
    return Room("test", {1: COLLECTION})


def check(case: Case) -> None:
    """Take a file in: refused in a sentence, or as good as any other."""
    what = case.mode % 3
    if what == DOCUMENT:
        opened: Any = case.text
    elif what == TABLES:
        opened = _tables(case.text)
    else:
        opened = json.dumps(_changed(case.text))
    try:
        preview = (
            transfer.read_export(opened, codes=codes())
            if isinstance(opened, str)
            else transfer.read_csv_export(opened, codes=codes())
        )
        fits = not preview.problems
    except errors.ImportRefused:
        fits = False
    room = _room()
    room.run(_taken_in(room, opened, fits, asking=case.mode // 3))


async def _taken_in(room: Room, opened: Any, fits: bool, asking: int) -> None:
    async with room.thrown_away() as records:
        mira = Grower(records, _NEW, files={"x.json": opened})
        address = mira.incoming("").address
        answer = await mira.says("import x.json")
        of_answer(answer)
        if answer.kind != "ask":
            hold("it is refused", answer.kind == "refused", answer.kind, answer.reply)
            hold("in a sentence", len(answer.reply.splitlines()) == 1, answer.reply)
            hold("short enough to read", len(answer.reply) < 300, answer.reply)
            await mira.says("yes")
            hold("nothing of it is kept", not await _has(records, mira), opened)
            return
        hold("what is asked about is whole", fits, opened)
        hold("it was taken in", (await mira.says("yes")).kind == "import", opened)
        await state(records, address)
        text = await export(records, address)
        await _comes_back(records, text)
        for number in (asking, asking + 7, asking + 13):
            of_answer(await mira.says(ASKED[number % len(ASKED)]))
        of_answer(await mira.says("forget me", "yes"))
        hold("all of it can be forgotten", not await _has(records, mira))


async def _has(records: Records, who: Grower) -> bool:
    async with records.reading() as session:
        owner = await owners.find(session, who.incoming("").address)
        if owner is None:
            return False
        document = json.loads(await transfer.export_json(session, owner.id))
    return any(rows for name, rows in document.items() if isinstance(rows, list))


async def _comes_back(records: Records, text: str) -> None:
    """An export that was taken in gives itself."""
    other = Grower(records, "3", files={"x.json": text})
    answer = await other.says("import x.json", "yes")
    hold("an export is taken in", answer.kind == "import", answer.reply)
    again = await export(records, other.incoming("").address)
    hold("an export comes back as it was", again == text, text, again)


def _tables(text: str) -> dict[str, str]:
    """Files by name: a line with the name of each before it."""
    files: dict[str, str] = {}
    name = "settings.csv"
    for line in text.splitlines(keepends=True):
        if line.startswith(_FILE):
            name = line.strip("= \r\n")
        else:
            files[name] = files.get(name, "") + line
    return files


@cache
def _whole() -> str:
    """An export with something of everything."""
    room = _room()
    return room.run(export(room.records, room.of(1)))


def _changed(text: str) -> Any:
    """The whole export with other values in it: `plants.0.name=JSON`, one a line."""
    document = json.loads(_whole())
    for line in text.split("\n")[:_MOST_CHANGES]:
        way, _, raw = line.partition("=")
        try:
            value: Any = json.loads(raw)
        except (ValueError, RecursionError):
            value = raw
        _put(document, way.split("."), value)
    return document


def _put(at: Any, way: list[str], value: Any) -> None:
    """Put a value where a way leads; a step that leads nowhere is a new name, or left out."""
    for step, following in pairwise([*way, ""]):
        last = following == ""
        key: Any = int(step) % len(at) if isinstance(at, list) and step.isdecimal() and at else step
        if isinstance(at, list) and not isinstance(key, int):
            if last:
                at.append(value)
            return
        if not isinstance(at, dict | list):
            return
        inner = None if last else (at[key] if isinstance(at, list) else at.get(key))
        if not isinstance(inner, dict | list):
            at[key] = value
            return
        at = inner


def seeds() -> Iterable[Case]:
    """Whole exports, hostile ones, and some changes."""
    small = {"format": "sinkside-records", "version": 2}
    yield Case(DOCUMENT, json.dumps(small))
    for number, document in enumerate([*REFUSED.values(), *HARMLESS.values()]):
        text = json.dumps(document)
        if len(text) < 2_000:
            yield Case(DOCUMENT + 3 * (number % 20), text)
    yield Case(TABLES, "==settings.csv\nformat,version,zone\nsinkside-records,2,UTC\n")
    yield Case(
        TABLES,
        "==settings.csv\nformat,version\nsinkside-records,2\n==plants.csv\n"
        "id,name,count,added_on,present\n1,Ruby,2,2026-01-01,true\n",
    )
    for number, line in enumerate(CHANGED):
        yield Case(CHANGES + 3 * (number % 20), line)
    demo = json.loads(DEMO.read_text("utf-8"))
    for part, rows in demo.items():
        if isinstance(rows, list):
            yield Case(DOCUMENT, json.dumps({**small, part: rows[:2]}))


CHANGED = (
    "plants.0.count=3", "plants.1.name=\"=cmd\"", "plants.2.growth=\"resting\"", "settings.can_l=5",
    "settings.can_l=0.02", "plants.0.pot_cm=1e308", "plants.0.pot_cm=0.0001",
    "products.0.n=0\nproducts.0.p2o5=0",
    "products.0.label_per_litre=1e-300", "products.0.label_unit=\"tsp\"", "products.1.form=null",
    "products.1.density_kg_l=0.001", "products.0.extras={\"Ca\": 50}", "waters.0.ions={\"Ca\": 1}",
    "waters.0.hardness_mg_l_caco3=1e9", "events.0.payload={}", "events.3.on=\"1900-01-01\"",
    "events.9.payload.details={\"strength\": 0.5}", "events.9.kind=\"flush\"", "events.9.on=\"x\"",
    "reminders.0.rule=\"FREQ=DAILY;COUNT=3\"", "reminders.0.rule=\"FREQ=YEARLY;BYDAY=5MO\"",
    "reminders.0.start=\"2026-10-25T02:30:00\"", "reminders.0.zone=\"Pacific/Apia\"",
    "reminders.0.target={\"plants\": [1], \"genera\": [\"Vanda\"]}", "reminders.0.state=\"ended\"",
    "plants.0.last_fed_on=\"9999-12-31\"", "plants.0.water_ml=1e-9", "settings.units=\"us\"",
    "settings.scale_step_g=1e-9", "settings.syringe_step_ml=1e9", "settings.hemisphere=\"south\"",
    "plants.0.genus=\"Dendrobium nobile\"\nplants.0.medium=\"stone\"", "plants.x={\"id\": 9}",
    "events.2.payload.before.n=NaN", "places.0.name=\"\\ud800\"", "version=1", "format=\"x\"",
)  # fmt: skip


def words() -> Iterable[str]:
    """Names of fields, values, and pieces of JSON."""
    document = json.loads(_whole())
    for part, rows in document.items():
        yield part
        for row in rows if isinstance(rows, list) else [rows] if isinstance(rows, dict) else []:
            yield from (f"{part}.0.{name}=" for name in row)
            yield from (json.dumps({n: v}, ensure_ascii=False)[1:-1] for n, v in row.items())
    yield from ("null", "true", "false", "NaN", "Infinity", "1e999", "-1", "0", "1e-300", "[[[[",
                '{"a":', "\\ud800", "9" * 40, '""', "2026-02-30", "9999-12-31", "FREQ=SECONDLY",
                "FREQ=DAILY;INTERVAL=0", "BYMONTHDAY=31", "BYSETPOS=-1", "UNTIL=20260101T000000",
                "../../x", "'=", ";=", '"\r\n', "\x00", "==plants.csv\n", "\n")  # fmt: skip


TARGET = Target(check, seeds, words, longest=2_000)
