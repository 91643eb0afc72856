"""What must be answered, what was answered, and what of it is wrong. No I/O, no clock.

The promise that is held (bot/records/post.py, DEVELOPERS.md): every update is answered once, in
the order of its lane; after `kill -9` only what the messenger had accepted a moment before may
come again, at most as many answers as are on their way at once, and one reminder.
"""

from __future__ import annotations

from collections import Counter, defaultdict, deque
from collections.abc import Callable
from dataclasses import dataclass, field
from enum import StrEnum
from typing import Any

#: Requests of one process on their way at once: so many may be repeated after a kill.
MOST_ON_THEIR_WAY = 32
#: A request is written down as sent so soon after it was accepted [s] (ours): at once, but where
#: several processes wait for one file of SQLite on a busy machine the turn may be long in coming.
NOTED_WITHIN_S = 60.0
#: What was on the wire when a process was killed is accepted so long after it at most [s] (ours).
ON_THE_WIRE_S = 0.3
#: What a killed process had claimed goes out again within this time of its death [s]: a claim, a
#: start and a queue. Who was answered just before waits so long, lest the two be mixed up.
AGAIN_WITHIN_S = 100.0
#: Answers of a chat that are remembered, to tell a repeated one from another.
_REMEMBERED = 6
SAYING = ("sendMessage", "sendPhoto")


class Wants(StrEnum):
    """What an update gets."""

    NOTHING = "nothing"
    ANSWER = "an answer"
    FILE = "an answer and a file"
    PICTURE = "a picture"
    EDIT = "its answer edited"
    NOTE = "a note at the button"
    TAP = "a note at the button and an answer"
    CARDS = "cards"
    AT_MOST_ONE = "at most one answer"


@dataclass(slots=True)
class Update:
    """An update that was given to the bot.

    Attributes
    ----------
    number : its `update_id`
    chat_id : where it is answered
    replies_to : the message that the answer stands below, in a group
    key : of a button or an inline query, its id
    edits : the answer that is to be edited
    fits : something that its answer must say, empty for anything
    heard : told of the answer
    at_s : when it was given [monotonic]
    """

    number: int
    chat_id: int
    wants: Wants
    what: str
    at_s: float
    replies_to: int | None = None
    topic: int | None = None
    key: str = ""
    edits: int | None = None
    fits: str = ""
    heard: Callable[[Sent], None] | None = None
    said: int = 0
    noted: int = 0
    files: int = 0
    answered_s: float = 0.0
    closed: bool = False

    @property
    def open(self) -> bool:
        """Whether something is missing yet."""
        wants = self.wants
        if wants in (Wants.NOTHING, Wants.AT_MOST_ONE):
            return False
        says = wants not in (Wants.NOTE, Wants.CARDS)
        notes = wants in (Wants.NOTE, Wants.TAP, Wants.CARDS)
        return (says and not self.said) or (notes and not self.noted) or (
            wants is Wants.FILE and not self.files
        )  # fmt: skip


@dataclass(frozen=True, slots=True)
class Sent:
    """A request that the messenger accepted.

    `made` is the message it made, `at_s` when [monotonic].
    """

    method: str
    values: dict[str, Any]
    made: int | None
    at_s: float

    @property
    def chat_id(self) -> int:
        return int(self.values.get("chat_id", 0))

    @property
    def text(self) -> str:
        return str(self.values.get("text") or self.values.get("caption") or "")

    @property
    def below(self) -> int | None:
        """The message that it replies to."""
        found = self.values.get("reply_parameters", {}).get("message_id")
        return None if found is None else int(found)


@dataclass(frozen=True, slots=True)
class Repeat:
    """A request that came again: what it was, and when it came first and then [monotonic]."""

    what: str
    first_s: float
    again_s: float


@dataclass
class Ledger:
    """The account of a soak.

    Attributes
    ----------
    kills : when processes were killed [monotonic]
    repeats : answers that came twice; `judged` says which of them a kill excuses
    strays : answers to nothing that was asked
    misfits : answers that do not say what they must, or stand in another place
    """

    updates: dict[int, Update] = field(default_factory=dict)
    kills: list[float] = field(default_factory=list)
    repeats: list[Repeat] = field(default_factory=list)
    strays: list[str] = field(default_factory=list)
    misfits: list[str] = field(default_factory=list)
    _waiting: dict[tuple[int, int | None], deque[Update]] = field(
        default_factory=lambda: defaultdict(deque)
    )
    _edits: dict[tuple[int, int], deque[Update]] = field(default_factory=lambda: defaultdict(deque))
    _keys: dict[str, Update] = field(default_factory=dict)
    _last: dict[tuple[int, int | None], deque[tuple[str, float]]] = field(
        default_factory=lambda: defaultdict(lambda: deque(maxlen=_REMEMBERED))
    )
    _files: dict[int, deque[Update]] = field(default_factory=lambda: defaultdict(deque))
    _after_picture: dict[tuple[int, int | None], Update] = field(default_factory=dict)

    # --- what is asked ---

    def expect(self, update: Update) -> None:
        """Note an update that is given to the bot."""
        self.updates[update.number] = update
        if update.key:
            self._keys[update.key] = update
        if update.wants is Wants.EDIT:
            self._edits[update.chat_id, update.edits or 0].append(update)
        elif update.wants not in (Wants.NOTHING, Wants.NOTE, Wants.CARDS):
            self._waiting[update.chat_id, update.replies_to].append(update)
        if update.wants is Wants.FILE:
            self._files[update.chat_id].append(update)

    # --- what is answered ---

    def accepted(self, sent: Sent) -> None:
        """Note a request that is no reminder."""
        match sent.method:
            case "answerCallbackQuery":
                self._note(sent, str(sent.values["callback_query_id"]))
            case "answerInlineQuery":
                self._note(sent, str(sent.values["inline_query_id"]))
            case "editMessageText":
                self._said(self._edits[sent.chat_id, int(sent.values["message_id"])], sent)
            case "sendDocument":
                self._file(sent)
            case "sendMessage" | "sendPhoto":
                self._said(self._waiting[sent.chat_id, sent.below], sent)

    def _note(self, sent: Sent, key: str) -> None:
        update = self._keys.get(key)
        if update is None or update.wants not in (Wants.NOTE, Wants.TAP, Wants.CARDS):
            self.strays.append(f"{sent.method} to nothing that was asked")
            return
        update.noted += 1
        if update.noted > 1:
            self.repeats.append(Repeat(update.what, update.answered_s, sent.at_s))
        update.answered_s = update.answered_s or sent.at_s
        self._tell(update, sent)

    def _file(self, sent: Sent) -> None:
        waiting = self._files[sent.chat_id]
        if waiting:
            update = waiting.popleft()
            update.files += 1
            self._last[sent.chat_id, None].append((_name(sent), sent.at_s))
            self._tell(update, sent)
            return
        self._again_or_stray(sent, (sent.chat_id, None), _name(sent))

    def _said(self, waiting: deque[Update], sent: Sent) -> None:
        place = (sent.chat_id, sent.below)
        told = self._name_of(sent)
        first = self._first_of(place, told)
        picture = self._after_picture.pop(place, None)
        if picture is not None and sent.method == "sendMessage" and not waiting:
            picture.files += 1  # what was too long to stand below it
            return
        if not waiting or (first is not None and self._comes_again(waiting[0], sent, first)):
            self._again_or_stray(sent, place, told)
            return
        update = waiting.popleft()
        update.said += 1
        update.answered_s = sent.at_s
        self._last[place].append((told, sent.at_s))
        if update.wants is Wants.PICTURE and sent.method == "sendPhoto":
            self._after_picture[place] = update
        if update.fits and update.fits not in sent.text:
            self.misfits.append(f"{update.what}: {update.fits!r} is not in {sent.text[:300]!r}")
        elif update.topic != sent.values.get("message_thread_id") and sent.method in SAYING:
            self.misfits.append(f"{update.what}: in another topic")
        self._tell(update, sent)

    def _comes_again(self, next_up: Update, sent: Sent, first_s: float) -> bool:
        """Whether what was said before is said again, and not to the next question."""
        if next_up.fits:
            return next_up.fits not in sent.text
        return self._killed_between(first_s, sent.at_s)

    def _tell(self, update: Update, sent: Sent) -> None:
        if update.heard is not None:
            update.heard(sent)

    def _name_of(self, sent: Sent) -> str:
        edited = f"edit {sent.values['message_id']} " if sent.method == "editMessageText" else ""
        return edited + sent.text

    def _first_of(self, place: tuple[int, int | None], told: str) -> float | None:
        return next((at for text, at in reversed(self._last[place]) if text == told), None)

    def _again_or_stray(self, sent: Sent, place: tuple[int, int | None], told: str) -> None:
        first = self._first_of(place, told)
        if first is None:
            self.strays.append(f"{sent.method} to {sent.chat_id}: {sent.text[:200]!r}")
        else:
            self.repeats.append(Repeat(f"{sent.method}: {told[:60]}", first, sent.at_s))

    # --- the judgement ---

    def _killed_between(self, first_s: float, again_s: float) -> bool:
        begun_s = first_s - ON_THE_WIRE_S
        near = (k for k in self.kills if begun_s <= k <= min(again_s, first_s + NOTED_WITHIN_S))
        return any(again_s - k <= AGAIN_WITHIN_S for k in near)

    def lost(self, excused: Callable[[Update], bool] = lambda _: False) -> list[Update]:
        """Updates that were not answered."""
        return [u for u in self.updates.values() if u.open and not excused(u)]

    def doubled(self) -> tuple[list[Repeat], list[Repeat]]:
        """What came twice: what a kill excuses, and what nothing does."""
        excused, wrong = [], []
        by_kill: Counter[float] = Counter()
        for repeat in self.repeats:
            near = [
                k for k in self.kills
                if repeat.first_s - ON_THE_WIRE_S <= k
                and k <= min(repeat.again_s, repeat.first_s + NOTED_WITHIN_S)
                and by_kill[k] < MOST_ON_THEIR_WAY
            ]  # fmt: skip
            if near:
                by_kill[near[0]] += 1
                excused.append(repeat)
            else:
                wrong.append(repeat)
        return excused, wrong


def _name(sent: Sent) -> str:
    """A file by its size and beginning, as it stands in the ledger."""
    content = sent.values.get("document", b"")
    return f"file {len(content)} {content[:80]!r}"
