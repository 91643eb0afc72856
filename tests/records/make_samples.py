"""Writes the samples of old databases that are not stored yet.

Run it as `python -m tests.records.make_samples`. A sample that is stored is never written again:
it stands for databases that people have. A new migration needs one more; what it brings new is
added to the rows below, whose columns and tables are left out where a revision has none of them.

All of it is invented: Anna at the command line, Ben in the messenger, and a club of both.
What waits to be sent and what comes next is of the year 2099, so that it is never late.
"""

from __future__ import annotations

import json
import sqlite3
import tempfile
from collections.abc import Iterator
from contextlib import closing
from dataclasses import dataclass
from itertools import groupby
from pathlib import Path
from typing import Any

from alembic.script import ScriptDirectory
from sqlalchemy import Connection, create_engine, inspect

from bot.records import schema
from bot.records.names import fold

from .samples import FOLDER, SUMS, Sample, fill, shape_of, stored, upgrade_to

Values = dict[str, Any]

ANNA, BEN, CLUB = 1, 2, 3
BOT = "telegram:70001"
FAR_MS = 4_076_812_800_000  # 2099-03-10 08:00 UTC

#: As 0003 was when it was first used: no index and no column said whose a row is.
FIRST_FORM_OF_0003 = (
    "DROP INDEX ix_posted_answer",
    "DROP INDEX ix_posted_person",
    "ALTER TABLE posted DROP COLUMN person",
    "DROP INDEX ix_card_of",
    "ALTER TABLE card DROP COLUMN channel",
    "ALTER TABLE card DROP COLUMN external_id",
)

OWNERS: tuple[Values, ...] = (
    {
        "kind": "person", "channel": "terminal", "external_id": "anna", "language": "en",
        "zone": "Europe/Lisbon", "place_name": "Porto", "hemisphere": "north", "units": "metric",
        "scale_step_g": 0.1, "syringe_step_ml": 0.5, "spoon": False, "can_l": 5.0,
        "created_at": "2026-01-10 08:00:00.000000", "heard": "en",
        "quiet_from_min": 1320, "quiet_until_min": 450,
    },
    {
        "kind": "person", "channel": "telegram", "external_id": "4012",
        "created_at": "2026-01-12 19:30:00.250000", "heard": "de", "replaced": 2,
    },
    {
        "kind": "group", "channel": "telegram", "external_id": "-5077", "language": "en",
        "zone": "Europe/Berlin", "hemisphere": "north",
        "created_at": "2026-01-15 20:00:00.000000", "quiet": True,
    },
)  # fmt: skip

PLACES: tuple[Values, ...] = (
    {"owner_id": ANNA, "id": 1, "name": "kitchen"},
    {"owner_id": ANNA, "id": 2, "name": "Łazienka"},
    {"owner_id": CLUB, "id": 1, "name": "greenhouse"},
)

WATERS: tuple[Values, ...] = (
    {
        "owner_id": ANNA, "id": 1, "kind": "tap", "hardness_mg_l_caco3": 214.17764859033116,
        "ec_ms_cm": 0.52, "is_default": False, "present": True,
    },
    {
        "owner_id": ANNA, "id": 2, "name": "Barrel", "kind": "rain",
        "ions": {"ca": 2.5, "mg": 0.4}, "is_default": True, "present": True,
    },
    {"owner_id": BEN, "id": 1, "kind": "tap", "is_default": True, "present": True},
)  # fmt: skip

PRODUCTS: tuple[Values, ...] = (
    {
        "owner_id": ANNA, "id": 1, "name": "Blue tub", "form": "powder", "n": 20.0, "p2o5": 20.0,
        "k2o": 20.0, "n_nitrate": 5.5, "n_ammonium": 3.5, "n_urea": 11.0, "label_per_litre": 1.0,
        "label_unit": "g", "price": 12.5, "currency": "EUR", "pack_size": 500.0, "pack_unit": "g",
        "is_default": True, "added_on": "2026-01-10", "present": True, "trace_elements": True,
    },
    {
        "owner_id": ANNA, "id": 2, "form": "liquid", "n": 3.0, "p2o5": 1.0, "k2o": 2.0,
        "extras": {"cao": 1.5, "mgo": 0.5}, "label_per_litre": 5.0, "label_unit": "ml",
        "density_kg_l": 1.1, "is_default": False, "added_on": "2026-01-11",
        "removed_on": "2026-02-01", "present": True, "trace_elements": False,
    },
    {
        "owner_id": BEN, "id": 1, "form": "powder", "n": 13.0, "p2o5": 3.0, "k2o": 15.0,
        "label_per_litre": 1.0, "label_unit": "tsp", "is_default": True,
        "added_on": "2026-01-12", "present": True,
    },
)  # fmt: skip

PLANTS: tuple[Values, ...] = (
    {
        "owner_id": ANNA, "id": 1, "genus": "Phalaenopsis", "count": 3, "medium": "bark",
        "pot_cm": 12.0, "place_id": 1, "added_on": "2026-01-10", "present": True,
        "last_fed_on": "2026-03-02", "last_clear_on": "2026-03-12",
    },
    {
        "owner_id": ANNA, "id": 2, "name": "Red Ruby", "genus": "Cattleya", "count": 1,
        "medium": "bark", "pot_cm": 14.0, "water_ml": 350.0, "place_id": 2, "water_id": 2,
        "growth": "new_roots", "growth_since": "2026-02-20", "added_on": "2026-01-10",
        "present": True, "last_fed_on": "2026-03-02", "last_clear_on": "2026-03-12",
        "last_flush_on": "2026-02-14",
    },
    {
        "owner_id": ANNA, "id": 3, "name": "Żółty", "genus": "Oncidium", "detail": "dusk",
        "count": 1, "medium": "sphagnum", "added_on": "2026-01-11", "lost_on": "2026-02-25",
        "present": True,
    },
    {
        "owner_id": ANNA, "id": 4, "genus": "Vanda", "count": 1, "added_on": "2026-02-26",
        "present": False,
    },
    {
        "owner_id": BEN, "id": 1, "name": "Moss", "genus": "Paphiopedilum", "count": 1,
        "medium": "bark", "pot_cm": 10.0, "added_on": "2026-01-12", "present": True,
        "last_repot_on": "2026-01-12",
    },
    {
        "owner_id": CLUB, "id": 1, "genus": "Vanda", "count": 4, "place_id": 1,
        "added_on": "2026-01-15", "present": True, "last_fed_on": "2026-03-08",
        "last_clear_on": "2026-03-01",
    },
)  # fmt: skip


@dataclass(frozen=True, slots=True)
class Entry:
    """An entry of the log; its number follows from the entries of its owner before it.

    `reverses` and `beside` count back from it: the entry that it takes back, and the first
    entry of the utterance that it belongs to.
    """

    owner: int
    said_at: str
    kind: str
    about: Values
    details: Values | None = None
    change: dict[str, tuple[Any, Any]] | None = None
    reverses: int = 0
    beside: int = 0
    since: str = "0001"

    @property
    def payload(self) -> Values:
        """What the log keeps of it."""
        made: Values = {} if self.details is None else {"details": self.details}
        if self.change is not None:
            made["before"] = {name: values[0] for name, values in self.change.items()}
            made["after"] = {name: values[1] for name, values in self.change.items()}
        return made


THERE = {"present": (False, True)}
CHOSEN = {"is_default": (False, True)}


def _day(name: str, before: str | None, after: str | None) -> dict[str, tuple[Any, Any]]:
    return {f"last_{name}_on": (before, after)}


LOG: tuple[Entry, ...] = (
    Entry(ANNA, "2026-01-10 08:00:00.000000", "added", {"plant_id": 1},
          {"count": 3, "added_on": "2026-01-10", "genus": "Phalaenopsis", "medium": "bark",
           "pot_cm": 12.0, "place_id": 1}, THERE),
    Entry(ANNA, "2026-01-10 08:01:00.000000", "added", {"plant_id": 2},
          {"count": 1, "added_on": "2026-01-10", "name": "Ruby", "genus": "Cattleya",
           "medium": "bark", "pot_cm": 14.0, "place_id": 1}, THERE),
    Entry(ANNA, "2026-01-10 08:02:00.000000", "product", {"product_id": 1},
          {"added_on": "2026-01-10", "form": "powder", "n": 20.0, "p2o5": 20.0, "k2o": 20.0,
           "label_per_litre": 1.0, "label_unit": "g"}, THERE),
    Entry(ANNA, "2026-01-10 08:02:00.000000", "product", {"product_id": 1}, None, CHOSEN,
          beside=1),
    Entry(ANNA, "2026-01-10 08:03:00.125000", "water_source", {"water_id": 2},
          {"kind": "rain", "name": "Barrel"}, THERE),
    Entry(ANNA, "2026-01-10 08:03:00.125000", "water_source", {"water_id": 2}, None, CHOSEN,
          beside=1),
    Entry(ANNA, "2026-01-10 08:04:00.000000", "settings", {}, None,
          {"zone": (None, "Europe/Lisbon"), "place_name": (None, "Porto"),
           "hemisphere": (None, "north")}),
    Entry(ANNA, "2026-01-11 09:00:00.000000", "added", {"plant_id": 3},
          {"count": 1, "added_on": "2026-01-11", "name": "Żółty", "genus": "Oncidium",
           "medium": "sphagnum"}, THERE),
    Entry(ANNA, "2026-02-01 10:00:00.000000", "product", {"product_id": 2}, None,
          {"removed_on": (None, "2026-02-01")}),
    Entry(ANNA, "2026-02-14 10:00:00.000000", "flush", {"plant_id": 2}, {"volume_l": 1.5},
          _day("flush", None, "2026-02-14")),
    Entry(ANNA, "2026-02-16 10:00:00.000000", "reading", {"plant_id": 2},
          {"runoff_ec_ms_cm": 0.9}),
    Entry(ANNA, "2026-02-18 10:00:00.000000", "renamed", {"plant_id": 2}, None,
          {"name": ("Ruby", "Red Ruby")}),
    Entry(ANNA, "2026-02-18 10:01:00.000000", "moved", {"plant_id": 2}, None,
          {"place_id": (1, 2)}),
    Entry(ANNA, "2026-02-19 10:00:00.000000", "repot", {"plant_id": 2}, None,
          _day("repot", None, "2026-02-19")),
    Entry(ANNA, "2026-02-19 10:01:00.000000", "repot", {"plant_id": 2}, None,
          _day("repot", "2026-02-19", None), reverses=1),
    Entry(ANNA, "2026-02-20 07:45:00.000000", "growth", {"plant_id": 2}, None,
          {"growth": (None, "new_roots"), "growth_since": (None, "2026-02-20")}),
    Entry(ANNA, "2026-02-21 08:00:00.000000", "reminder", {"reminder_id": 1},
          {"kind": "flush", "rule": "FREQ=WEEKLY;INTERVAL=4", "start": "2026-02-28T09:00:00",
           "zone": "Europe/Lisbon", "target": {"everything": True}, "moved": False,
           "offered": True},
          {"due_ms": (None, 1_772_269_200_000), "due_local": (None, "2026-02-28T09:00:00"),
           "state": ("ended", "active")}, since="0004"),
    Entry(ANNA, "2026-02-25 18:00:00.000000", "lost", {"plant_id": 3}, None,
          {"lost_on": (None, "2026-02-25")}),
    Entry(ANNA, "2026-02-26 18:00:00.000000", "added", {"plant_id": 4},
          {"count": 1, "added_on": "2026-02-26", "genus": "Vanda"}, THERE),
    Entry(ANNA, "2026-02-26 18:00:30.000000", "added", {"plant_id": 4},
          {"count": 1, "added_on": "2026-02-26", "genus": "Vanda"},
          {"present": (True, False)}, reverses=1),
    Entry(ANNA, "2026-03-02 07:00:00.000000", "fed", {"plant_id": 1, "product_id": 1},
          {"volume_l": 5.0}, _day("fed", None, "2026-03-02")),
    Entry(ANNA, "2026-03-02 07:00:00.000000", "fed", {"plant_id": 2, "product_id": 1},
          {"volume_l": 5.0}, _day("fed", None, "2026-03-02"), beside=1),
    Entry(ANNA, "2026-03-05 07:00:00.000000", "clear", {"plant_id": 2, "water_id": 2}, None,
          _day("clear", None, "2026-03-05")),
    Entry(ANNA, "2026-03-12 07:15:00.000000", "clear", {"plant_id": 1}, None,
          _day("clear", None, "2026-03-12")),
    Entry(ANNA, "2026-03-12 07:15:00.000000", "clear", {"plant_id": 2}, None,
          _day("clear", "2026-03-05", "2026-03-12"), beside=1),
    Entry(BEN, "2026-01-12 19:30:00.250000", "added", {"plant_id": 1},
          {"count": 1, "added_on": "2026-01-12", "name": "Moss", "genus": "Paphiopedilum",
           "medium": "bark", "pot_cm": 10.0}, THERE),
    Entry(BEN, "2026-01-12 19:31:00.000000", "repot", {"plant_id": 1}, None,
          _day("repot", None, "2026-01-12")),
    Entry(BEN, "2026-02-01 19:00:00.000000", "reminder", {"reminder_id": 1},
          {"kind": "other", "text": "new labels", "start": "2026-02-02T18:00:00",
           "zone": "Europe/Berlin", "target": {}, "moved": False, "offered": False},
          {"due_ms": (None, 1_770_051_600_000), "due_local": (None, "2026-02-02T18:00:00"),
           "state": ("ended", "active")}, since="0004"),
    Entry(CLUB, "2026-01-15 20:00:00.000000", "added", {"plant_id": 1},
          {"count": 4, "added_on": "2026-01-15", "genus": "Vanda", "by": "4012"}, THERE),
    Entry(CLUB, "2026-03-01 20:00:00.000000", "clear", {"plant_id": 1}, {"by": "4012"},
          _day("clear", None, "2026-03-01")),
    Entry(CLUB, "2026-03-08 20:00:00.000000", "fed", {"plant_id": 1}, {"by": "4099"},
          _day("fed", None, "2026-03-08")),
)  # fmt: skip

MEMORY: tuple[Values, ...] = (
    {
        "owner_id": ANNA, "person": "anna", "said_at": "2026-03-12 07:15:00.000000",
        "request": {
            "plants": [2],
            "dose": {
                "said_at": "2026-03-12T07:15:00+00:00", "slots": {"volume_l": 5.0},
                "target": {}, "products": [], "asked": 0.25, "cut": 1.0,
                "why": [["1/4, as no strength or rhythm was said", "common practice, no source"]],
                "cautions": ["Wet the roots with clear water first."],
            },
        },
    },
    {
        "owner_id": CLUB, "person": "4012", "question": {"kind": "dose"},
        "asked_at": "2026-03-01 20:01:00.000000",
    },
)  # fmt: skip

REMINDERS: tuple[Values, ...] = (
    {
        "owner_id": ANNA, "id": 1, "channel": "terminal", "kind": "flush",
        "target": {"everything": True}, "rule": "FREQ=WEEKLY;INTERVAL=4",
        "start": "2026-02-28T09:00:00", "zone": "Europe/Lisbon", "state": "active",
        "due_ms": 1_774_688_400_000, "due_local": "2026-03-28T09:00:00", "moved": False,
        "offered": True, "created": "2026-02-21 08:00:00.000000",
    },
    {
        "owner_id": BEN, "id": 1, "channel": "telegram", "kind": "other", "text": "new labels",
        "target": {}, "start": "2026-02-02T18:00:00", "zone": "Europe/Berlin", "state": "ended",
        "moved": False, "offered": False, "created": "2026-02-01 19:00:00.000000",
    },
    {
        "owner_id": CLUB, "id": 1, "channel": "telegram", "person": "4012", "topic": 51,
        "kind": "look",
        "target": {"plants": [1]}, "start": "2099-03-10T09:00:00", "zone": "Europe/Berlin",
        "state": "active", "due_ms": FAR_MS, "due_local": "2099-03-10T09:00:00",
        "moved": False, "offered": False, "created": "2026-03-01 20:02:00.000000",
    },
)  # fmt: skip

PINGS: tuple[Values, ...] = (
    {"owner_id": ANNA, "id": 1, "reminder_id": 1, "due_ms": 1_772_269_200_000, "state": "done",
     "settled_ms": 1_772_270_000_000},
    {"owner_id": BEN, "id": 1, "reminder_id": 1, "due_ms": 1_770_051_600_000, "state": "sent",
     "message_id": 118},
)  # fmt: skip

POST: dict[str, tuple[Values, ...]] = {
    "inbox": (
        {"source": BOT, "update_id": 501, "lane": "", "received_ms": 1_773_000_000_000,
         "free_ms": 1_773_000_060_000, "tries": 1, "state": "done"},
        {"source": BOT, "update_id": 502, "lane": "4012:4012", "received_ms": FAR_MS,
         "body": {"update_id": 502, "message": {"message_id": 120, "date": 4_076_812_800,
                  "chat": {"id": 4012, "type": "private"}, "text": "my plants",
                  "from": {"id": 4012, "is_bot": False, "first_name": "Ben"}}},
         "free_ms": 0, "tries": 0, "state": "open"},
    ),
    "outbox": (
        {"source": BOT, "lane": "4012", "method": "sendMessage",
         "body": {"text": "Clear water today: Moss.", "chat_id": 4012},
         "answers": {"chat_id": 4012, "message_id": 119, "person": "4012", "kind": "noted"},
         "created_ms": FAR_MS, "free_ms": 0, "tries": 0, "state": "open", "rank": 0},
    ),
    "chat": (
        {"source": BOT, "chat_id": 4033, "unreachable_ms": 1_772_900_000_000},
    ),
    "posted": (
        {"source": BOT, "chat_id": 4012, "message_id": 115, "answer_id": 116, "person": "4012",
         "kind": "noted", "posted_ms": 1_773_000_000_500},
    ),
    "tap": (
        {"source": BOT, "chat_id": -5077, "message_id": 44, "data": "yes",
         "tapped_ms": 1_773_000_001_000},
    ),
    "card": (
        {"id": "q7Hk2mPz", "channel": "telegram", "external_id": "4012",
         "text": "0.5 g of 20-20-20 powder in 5 l", "kept_ms": 1_773_000_000_400},
    ),
    "pace": (
        {"source": BOT, "lane": "*", "free_ms": 1_773_000_000_533.5,
         "full_ms": 1_773_000_000_533.5},
        {"source": BOT, "lane": "4012", "free_ms": 1_773_000_001_500.0,
         "full_ms": 1_773_000_001_500.0},
    ),
}  # fmt: skip


def rows(revision: str) -> Iterator[tuple[str, Values]]:
    """All rows with the tables they are of, those that others point to first."""
    named = [("place", PLACES), ("product", PRODUCTS), ("water", WATERS), ("plant", PLANTS)]
    yield from (("owner", row) for row in OWNERS)
    for table, listed in named:
        for row in listed:
            key = {"name_key": fold(row["name"])} if "name" in row else {}
            yield table, {**row, **key}
    yield from (("reminder", row) for row in REMINDERS)
    yield from (("ping", row) for row in PINGS)
    yield from (("event", row) for row in _entries(revision))
    yield from (("memory", row) for row in MEMORY)
    for table, listed in POST.items():
        yield from ((table, row) for row in listed)


def _entries(revision: str) -> Iterator[Values]:
    numbers = dict.fromkeys((ANNA, BEN, CLUB), 0)
    for entry in LOG:
        if entry.since > revision:
            continue
        numbers[entry.owner] += 1
        number = numbers[entry.owner]
        yield {
            "owner_id": entry.owner, "id": number, "batch": number - entry.beside,
            "kind": entry.kind, "happened_on": entry.said_at[:10], "said_at": entry.said_at,
            **entry.about, "payload": entry.payload,
            **({"reverses": number - entry.reverses} if entry.reverses else {}),
        }  # fmt: skip


def written(value: object) -> str:
    """A value as both databases read it."""
    if value is None:
        return "NULL"
    if isinstance(value, bool):
        return "true" if value else "false"
    if isinstance(value, int | float):
        return repr(value)
    text = json.dumps(value) if isinstance(value, dict) else str(value)
    return "'" + text.replace("'", "''") + "'"


def inserts(connection: Connection, revision: str) -> Iterator[str]:
    """The statements that fill the tables as they are there."""
    there = inspect(connection)
    tables = {
        name: {column["name"] for column in there.get_columns(name)}
        for name in there.get_table_names()
    }
    for table, listed in groupby(rows(revision), key=lambda pair: pair[0]):
        known = [{name: row[name] for name in row if name in tables.get(table, ())}
                 for _, row in listed]  # fmt: skip
        if table in tables:
            used = list(dict.fromkeys(name for row in known for name in row))
            lines = [", ".join(written(row.get(name)) for name in used) for row in known]
            values = ",\n".join(f"({line})" for line in lines)
            yield f"INSERT INTO {table} ({', '.join(used)}) VALUES\n{values}"


def sample_of(name: str, file: Path) -> str:
    """The text of a sample; every statement was run on a new SQLite database."""
    revision = name.partition("_")[0]
    engine = create_engine(f"sqlite:///{file}")
    with engine.begin() as connection:
        upgrade_to(connection, revision)
        before = list(FIRST_FORM_OF_0003) if name == "0003_first" else []
        fill(connection, before)
        shape = shape_of(connection)
        filling = list(inserts(connection, revision))
        fill(connection, filling)
    engine.dispose()
    with closing(sqlite3.connect(file)) as look:
        assert look.execute("PRAGMA foreign_key_check").fetchall() == []
    lines = [
        f"-- Records at revision {name}, invented; stored once and never changed.",
        "-- For SQLite and PostgreSQL; instants are in UTC; a statement ends with its line.",
        *(f"-- table {line}" for line in shape),
        *(f"{statement};" for statement in [*before, *filling]),
    ]
    return "\n".join(lines) + "\n"


def main() -> None:
    """Write what is missing, and its checksum."""
    scripts = ScriptDirectory.from_config(schema.config()).walk_revisions()
    wanted = sorted({script.revision for script in scripts} | {"0003_first"})
    for name in sorted(set(wanted) - {sample.name for sample in stored()}):
        with tempfile.TemporaryDirectory() as folder:
            text = sample_of(name, Path(folder) / "sample.db")
        sample = Sample(FOLDER / f"{name}.sql")
        sample.path.write_text(text, encoding="utf-8")
        with SUMS.open("a", encoding="utf-8") as sums:
            sums.write(f"{sample.checksum()}  {sample.path.name}\n")
        print(f"{sample.path.name}: {len(text.encode())} bytes")


if __name__ == "__main__":
    main()
