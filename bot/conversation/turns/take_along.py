"""Export, import and being forgotten."""

from __future__ import annotations

import asyncio
import json
from collections.abc import Iterator
from dataclasses import replace
from typing import Any

from bot.conversation import answer as out
from bot.conversation.turn import Turn
from bot.dosing.plants import known_names
from bot.dosing.strength import MEDIA
from bot.records import forget as forgetting
from bot.records import memory, owners, transfer
from bot.records.errors import (
    BrokenFile,
    FileTooLarge,
    ForeignFile,
    ImportRefused,
    NewerFile,
)
from bot.records.transfer import Preview, Problem
from bot.reminders import rhythm

_GROWTH = (
    "growing",
    "new_roots",
    "new_leaves",
    "new_pseudobulbs",
    "flowering",
    "slow",
    "resting",
    "seedling",
)
_WATERS = ("tap", "rain", "reverse_osmosis", "distilled", "softened", "well")
_SHOWN = ("plant", "product", "water", "place", "reminder", "event")


def codes() -> dict[str, tuple[str, ...]]:
    """The canonical values an import is held to, by field."""
    return {
        "plant.medium": MEDIA,
        "plant.growth": _GROWTH,
        "plant.genus": known_names(),
        "product.form": ("powder", "liquid"),
        "water.kind": _WATERS,
    }


async def export(turn: Turn) -> out.Answer:
    """Everything of the owner as a file."""
    if turn.owner is None:
        return turn.say("export", "export-none")
    day = turn.today.isoformat()
    async with turn.records.reading() as session:
        counts = await forgetting.count_owned(session, turn.owner_id, undone=False)
        if turn.order.text == "csv":
            files = await transfer.export_csv(session, turn.owner_id)
            content = json.dumps(files, ensure_ascii=False)
            file = out.File(
                name=f"sinkside-{day}-csv.json",
                media_type="application/json",
                content=content,
                files=files,
            )
        else:
            content = await transfer.export_json(session, turn.owner_id)
            file = out.File(
                name=f"sinkside-{day}.json", media_type="application/json", content=content
            )
    return turn.tell(
        "export",
        [turn.words.say("export-done", what=_counted(counts, turn), whose=turn.whose)],
        file=file,
    )


def _counted(counts: dict[str, int], turn: Turn) -> str:
    shown = [turn.words.say(f"count-{t}", count=counts[t]) for t in _SHOWN if counts.get(t)]
    return turn.words.listed(shown) or turn.words.say("count-nothing")


async def forget(turn: Turn) -> out.Answer:
    """Ask before everything is deleted."""
    if turn.owner is None:
        return turn.say("forget", "forget-none")
    async with turn.records.reading() as session:
        counts = await forgetting.count_owned(session, turn.owner_id, undone=False)
    answer = turn.ask(
        "ask-forget", what=_counted(counts, turn), whose=turn.whose, choices=("yes", "no")
    )
    return answer.model_copy(update={"details": {"waiting": {"kind": "forget"}}})


async def forget_confirmed(turn: Turn) -> out.Answer:
    """Delete everything of the owner, and say what it was."""
    async with turn.records.writing() as session:
        counts = await forgetting.count_owned(session, turn.owner_id, undone=False)
        await forgetting.forget(session, turn.owner_id)
    said = turn.say("forget", "forgotten", what=_counted(counts, turn), whose=turn.whose)
    return said.model_copy(update={"details": {"forgotten": counts}})


async def take_in(turn: Turn) -> out.Answer:
    """Read an exported file, and ask before anything is written."""
    name = turn.order.text
    opener = turn.incoming.open_file
    try:
        text = await opener(name) if opener is not None and name else None
    except TimeoutError:
        return turn.ask("ask-import-late")
    if text is None:
        return turn.ask("ask-import-file", name=name[:60] or "none")
    preview = await _preview(turn, text)
    if isinstance(preview, out.Answer):
        return preview
    if preview.problems:
        problem = preview.problems[0]
        return turn.refuse(
            "refuse-import-problem",
            where=problem.where,
            count=len(preview.problems),
        )
    had = await _had(turn)
    what = _preview_counted(preview, turn)
    code = "ask-import-replace" if had else "ask-import"
    answer = turn.ask(code, what=what, had=had or "none", choices=("yes", "no"))
    waiting = {"kind": "import", "name": name, "replace": bool(had)}
    return answer.model_copy(
        update={"details": {"waiting": waiting, "counts": dict(preview.counts)}}
    )


async def _preview(turn: Turn, found: str | dict[str, str]) -> Preview | out.Answer:
    try:
        return await asyncio.to_thread(_read, found)
    except NewerFile:
        return turn.refuse("refuse-import-newer")
    except FileTooLarge as error:
        return turn.refuse("refuse-import-large", most=turn.words.number(error.most / 1e6, 0))
    except (BrokenFile, ForeignFile, ImportRefused):
        return turn.refuse("refuse-import-foreign")


def _read(found: str | dict[str, str]) -> Preview:
    """What a file holds, with a problem where a rhythm in it is none."""
    if isinstance(found, dict):
        preview = transfer.read_csv_export(found, codes=codes())
    else:
        preview = transfer.read_export(found, codes=codes())
    wrong = next(_unfit_rules(preview), None) if not preview.problems else None
    return preview if wrong is None else replace(preview, problems=(wrong,))


def _unfit_rules(preview: Preview) -> Iterator[Problem]:
    rules = [(f"reminders id {row['id']}", row["rule"]) for row in preview.rows["reminders"]]
    for row in preview.rows["events"]:
        for part in ("before", "after"):
            rule = row["payload"].get(part, {}).get("rule")
            rules.append((f"events id {row['id']}.payload.rule", rule))
    for where, rule in rules:
        try:
            rhythm.check(rule)
        except rhythm.UnfitRule as unfit:
            yield Problem(where, str(unfit))


async def _had(turn: Turn) -> str:
    """What would be replaced, in words; empty where there is nothing."""
    if turn.owner is None:
        return ""
    async with turn.records.reading() as session:
        counts = await forgetting.count_owned(session, turn.owner_id, undone=False)
    counts.pop("memory", None)
    return _counted(counts, turn) if counts else ""


def _preview_counted(preview: Preview, turn: Turn) -> str:
    singular = {
        "plants": "plant",
        "products": "product",
        "waters": "water",
        "places": "place",
        "reminders": "reminder",
        "events": "event",
    }
    return _counted({singular[k]: v for k, v in preview.counts.items()}, turn)


async def import_confirmed(turn: Turn, waiting: dict[str, Any]) -> out.Answer:
    """Write an import that was confirmed: all of it or nothing."""
    opener = turn.incoming.open_file
    try:
        text = await opener(str(waiting["name"])) if opener is not None else None
    except TimeoutError:
        return turn.ask("ask-import-late")  # and the question stays open
    preview = await _preview(turn, text) if text is not None else None
    # Only now: what is written keeps others from writing, and a file may be long in coming.
    await turn.wait_for(None)
    if preview is None:
        return turn.ask("ask-import-file", name=str(waiting["name"])[:60])
    if isinstance(preview, out.Answer):
        return preview
    async with turn.records.writing() as session:
        owner = await owners.find_or_add(
            session, turn.incoming.address, created_at=turn.incoming.said_at
        )
        await memory.clear(session, owner.id, turn.incoming.person)
        await transfer.import_export(session, owner.id, preview, replace=bool(waiting["replace"]))
    return turn.say("import", "imported", what=_preview_counted(preview, turn))
