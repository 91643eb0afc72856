"""Invented people and what each does next; drawn from a seed, each from their own."""

from __future__ import annotations

import json
import random
from collections import Counter, deque
from collections.abc import Callable
from dataclasses import dataclass, field
from datetime import time as Clock
from typing import Any

from tests.soak.ledger import Sent, Wants
from tests.soak.life import Body, Group, Life
from tests.soak.phrases import GARBAGE, LANGUAGES, TOWNS, plant_name

#: Plants of who has the most of them.
MANY = 200
_NAMES = 13**3
#: A message is edited so soon after it was written [s of the bot's clock].
_EDITED_WITHIN_S = 20 * 3600
_STICKER = {
    "file_id": "s", "file_unique_id": "s", "type": "regular", "width": 9, "height": 9,
    "is_animated": False, "is_video": False,
}  # fmt: skip
_PHOTO = [{"file_id": "p", "file_unique_id": "p", "width": 9, "height": 9}]
_NO_TEXT: tuple[dict[str, Any], ...] = (
    {"sticker": _STICKER},
    {"photo": _PHOTO},
    {"voice": {"file_id": "v", "file_unique_id": "v", "duration": 2}},
    {"document": {"file_id": "d", "file_unique_id": "d", "file_name": "x.exe"}},
)
Act = Callable[[], None]


@dataclass
class Person:
    """Somebody, their plants, and what the bot must have on record of them."""

    body: Body
    life: Life
    group: Group | None
    seed: int
    town: str = "Porto"
    has_home: bool = False
    plants: list[str] = field(default_factory=list)
    log: Counter[tuple[str, str]] = field(default_factory=Counter)
    script: deque[Act] = field(default_factory=deque)
    has_feed: bool = False
    tasks: int = 0
    blocked: bool = False
    dose: tuple[dict[str, Any], Sent] | None = None
    group_dose: tuple[dict[str, Any], Sent, int | None] | None = None
    exported: bytes = b""
    group_ready_s: float = 0.0

    def __post_init__(self) -> None:
        self.random = random.Random(self.seed)
        self.words = self.body.words
        self._names = self.random.randrange(_NAMES)
        self.town = self.random.choice(self.words.towns)

    # --- how somebody begins ---

    def begin(self) -> None:
        """What they do first of all."""
        drawn = self.random.random()
        if drawn < 0.02:
            self.script += [self.bring_many]
        elif drawn < 0.27:
            self.script += [self.hello, self.home, self.add, self.add]
        elif drawn < 0.45:
            self.script += [self.add]
        elif drawn < 0.60:
            self.script += [self.hello, self.ask_dose]
        else:
            self.script += [self.ask_dose]

    def act(self) -> None:
        """Do the next thing."""
        if self.blocked:
            self.come_back()
        elif self.script:
            self.script.popleft()()
        else:
            acts, weights = zip(*self._possible(), strict=True)
            self.random.choices(acts, weights)[0]()

    def _possible(self) -> list[tuple[Act, float]]:
        """What they may do now, and how likely."""
        acts: list[tuple[Act, float]] = [
            (self.ask_dose, 20), (self.ask, 10), (self.add, 6), (self.garbage, 3),
            (self.no_text, 3), (self.forward, 2), (self.ask_inline, 4),
            (self.location, 0.1), (self.why, 3), (self.calendar, 1), (self.block, 0.7),
        ]  # fmt: skip
        if self.plants:
            acts += [(self.feed, 12), (self.water, 7), (self.history, 4), (self.slip, 3)]
            acts += [(self.hurry, 3), (self.export, 1), (self.year, 0.3), (self.move, 0.4)]
        acts += [(self.forget, 0.4)]
        if not self.has_feed:
            acts += [(self.product, 4)]
        if not self.has_home:
            acts += [(self.home, 4)]
        elif self.tasks < len(self.words.tasks):
            acts += [(self.remind_once, 16), (self.remind_daily, 8)]
        if self.dose is not None:
            acts += [(self.tap_dose, 8), (self.tap_stale, 2), (self.edit_dose, 6)]
        if self.body.pings:
            acts += [(self.answer_ping, 10)]
        if self.group is not None and not self.group.locked:
            acts += [(self.in_group, 30)]
        return acts

    # --- alone with the bot ---

    def hello(self) -> None:
        text = self.random.choice((self.words.hello, "/start", "/help"))
        self.life.say(self.body, text, "hello")

    def home(self) -> None:
        def then(_: Sent) -> None:
            self.has_home = True

        text = self.words.home.format(town=self.town)
        self.life.say(self.body, text, "home", fits=self.town, then=then)

    def add(self) -> None:
        self._names += 1
        name = plant_name(self._names)

        def then(_: Sent) -> None:
            self.plants.append(name)

        text = self.random.choice(self.words.add).format(name=name)
        self.life.say(self.body, text, "add a plant", fits=name, then=then)

    def bring_many(self) -> None:
        """Two hundred plants, from a file."""
        names = [plant_name(self._names + n) for n in range(1, MANY + 1)]
        self._names += MANY
        self._bring(collection(names), names, Counter())

    def _bring(
        self,
        content: bytes,
        names: list[str],
        log: Counter[tuple[str, str]],
        has_feed: bool = False,
    ) -> None:
        name = f"f{self.body.id}-{self.life.messenger.message_id()}"
        self.life.messenger.files[name] = content
        file = {"file_id": name, "file_unique_id": name, "file_name": "x.json",
                "file_size": len(content)}  # fmt: skip

        def then(sent: Sent) -> None:
            # It is not where the file could not be fetched: then they are told so.
            if any(sent.text.startswith(words.taken_in) for words in LANGUAGES):
                self.plants += names
                self.log += log
                self.has_feed = has_feed
            self.life.messenger.files.pop(name, None)

        def agree() -> None:
            self.life.say(self.body, self.words.yes, "yes to a file", then=then)

        self.script.appendleft(agree)
        self.life.say(self.body, None, "send a file", document=file)

    def ask_dose(self) -> None:
        litres = self._litres()
        text = self.words.dose.format(litres=litres)
        message: dict[str, Any] = {}

        def then(sent: Sent) -> None:
            self.dose = (message, sent)

        fits = f"{litres} l"
        message |= self.life.say(self.body, text, "ask for a dose", fits=fits, then=then)

    def _litres(self) -> str:
        whole, tenth = self.random.randint(2, 9), self.random.choice((3, 4, 6, 7))
        return f"{whole}{self.words.decimal}{tenth}"

    def edit_dose(self) -> None:
        assert self.dose is not None
        message, sent = self.dose
        self.dose = None
        if sent.method != "sendMessage" or self.is_old(message):
            return self.ask_dose()
        litres = self._litres()
        text = self.words.dose.format(litres=litres)
        if text == message["text"]:
            return self.ask_dose()
        fits = f"{litres} l"
        return self.life.edit(
            self.body, message, text, "edit a question", answer=sent.made, fits=fits
        )

    def is_old(self, message: dict[str, Any]) -> bool:
        """Whether an edit may get no answer any more: what answered what is kept for two days."""
        return bool(self.life.messenger.now() - int(message["date"]) > _EDITED_WITHIN_S)

    def tap_dose(self) -> None:
        """Press what stands below a dose; now and then twice."""
        assert self.dose is not None
        _, sent = self.dose
        self.dose = None
        data = _buttons(sent)
        if not data:
            return self.ask_dose()
        pressed = self.random.choice(data)
        self.life.tap(self.body, sent, pressed, "press a button")
        if self.random.random() < 0.3:
            again = "press it again"
            self.life.tap(self.body, sent, pressed, again, wants=Wants.NOTE)
        return None

    def tap_stale(self) -> None:
        assert self.dose is not None
        _, sent = self.dose
        data = _buttons(sent) or ["c0.1.1"]
        what = "press what is not there"
        self.life.tap(self.body, sent, data[0], what, wants=Wants.NOTE, stale=True)

    def why(self) -> None:
        self.life.say(self.body, self.words.why, "why")

    def ask(self) -> None:
        self.life.say(self.body, self.random.choice(self.words.asks), "ask for a list")

    def feed(self) -> None:
        self._care("fed", self.words.fed)

    def water(self) -> None:
        self._care("clear", self.words.watered)

    def _care(self, kind: str, phrase: str) -> None:
        name = self.random.choice(self.plants)

        def then(_: Sent) -> None:
            self.log[kind, name] += 1

        self.life.say(self.body, phrase.format(name=name), f"log: {kind}", fits=name, then=then)

    def hurry(self) -> None:
        """Two messages at once."""
        self.feed()
        self.water()

    def slip(self) -> None:
        """Log something and take it back."""
        name = self.random.choice(self.plants)

        def undo() -> None:
            self.life.say(self.body, self.words.undo, "undo", then=undone)

        def then(_: Sent) -> None:
            self.log["fed", name] += 1

        def undone(_: Sent) -> None:
            self.log["fed", name] -= 1

        self.script.appendleft(undo)
        self.life.say(self.body, self.words.fed.format(name=name), "log: fed", fits=name, then=then)

    def history(self) -> None:
        name = self.random.choice(self.plants)
        text = self.words.history.format(name=name)
        self.life.say(self.body, text, "ask what one got", fits=name)

    def product(self) -> None:
        def then(_: Sent) -> None:
            self.has_feed = True

        self.life.say(self.body, self.words.product, "add a feed", fits="20-20-20", then=then)

    def garbage(self) -> None:
        self.life.say(self.body, self.random.choice(GARBAGE), "garbage")

    def no_text(self) -> None:
        self.life.say(self.body, None, "no text", **self.random.choice(_NO_TEXT))

    def location(self) -> None:
        place = {"latitude": 41.16, "longitude": -8.62}
        self.life.say(self.body, None, "a place", location=place, fits="Porto")

    def forward(self) -> None:
        origin = {"type": "hidden_user", "sender_user_name": "x", "date": self.life.messenger.now()}
        litres = self._litres()
        text = self.words.dose.format(litres=litres)
        fits = f"{litres} l"
        self.life.say(self.body, text, "forward a question", forward_origin=origin, fits=fits)

    def ask_inline(self) -> None:
        text = self.words.dose.format(litres=self._litres())
        self.life.ask_inline(self.body, self.random.choice((text, "", "vand")), "inline")

    def calendar(self) -> None:
        live = any(p.chat_id == self.body.id and p.until_s is None and p.daily
                   for p in self.life.promises[-3000:])  # fmt: skip
        if live:
            self.life.say(self.body, self.words.calendar, "calendar", wants=Wants.FILE)
        else:
            self.ask()

    def year(self) -> None:
        self.life.say(self.body, self.words.year, "year", wants=Wants.PICTURE)

    def export(self) -> None:
        self.life.say(self.body, self.words.export, "export", wants=Wants.FILE)

    # --- reminders ---

    def remind_once(self) -> None:
        said, told = self._task()
        hours = self.random.randint(2, 30)
        text = self.words.once.format(hours=hours, task=said)
        said_s = self.life.messenger.now()

        def then(_: Sent) -> None:
            zone, due_s = TOWNS[self.town], said_s + 3600.0 * hours
            self.life.promise(self.body.id, told, said_s, zone=zone, once_s=due_s)

        self.life.say(self.body, text, "remind me once", fits=told, then=then)

    def remind_daily(self) -> None:
        said, told = self._task()
        at = Clock(self.random.randint(0, 23), self.random.randint(0, 59))
        text = self.words.daily.format(at=f"{at.hour}:{at.minute:02}", task=said)
        said_s = self.life.messenger.clock.now_s()

        def then(_: Sent) -> None:
            self.life.promise(self.body.id, told, said_s, zone=TOWNS[self.town], daily=at)

        self.life.say(self.body, text, "remind me daily", fits=told, then=then)

    def _task(self) -> tuple[str, str]:
        self.tasks += 1
        return self.words.tasks[self.tasks - 1]

    def answer_ping(self) -> None:
        """Press done or skip below a reminder."""
        shown = self.body.pings.pop()
        self.body.pings.clear()
        data = _buttons(shown)
        pressed = data[self.random.choice((0, 2))]
        self.life.tap(self.body, shown, pressed, "answer a reminder")

    # --- going and coming ---

    def block(self) -> None:
        """Block the bot; the messenger says so, or not."""
        self.blocked = True
        now = self.life.messenger.clock.now_s()
        self.life.messenger.blocked.add(self.body.id)
        self.life.away.setdefault(self.body.id, []).append((now, float("inf")))
        if self.random.random() < 0.7:
            self.life.membership(self.body, "kicked")
        self.body.ready_s += self.random.uniform(20, 200)

    def come_back(self) -> None:
        """Let the bot in again, and say something."""
        self.blocked = False
        self.life.messenger.blocked.discard(self.body.id)
        begun, _ = self.life.away[self.body.id][-1]
        self.life.away[self.body.id][-1] = (begun, self.life.messenger.clock.now_s())
        if self.random.random() < 0.5:
            self.life.membership(self.body, "member")
        self.life.say(self.body, "/start", "come back")

    def forget(self) -> None:
        """Have everything forgotten, and begin anew some time."""
        self.script.appendleft(self._yes_forget)
        self.life.say(self.body, self.words.forget, "forget me")

    def _yes_forget(self) -> None:
        self.life.forgotten(self.body.id)

        def then(sent: Sent) -> None:
            if any(sent.text.startswith(words.lapsed) for words in LANGUAGES):
                self.script.clear()  # the bot waited too long for the yes: all is still there
                return
            self.plants.clear()
            self.log.clear()
            self.body.pings.clear()
            self.has_home, self.has_feed = False, False
            self.dose, self.group_dose = None, None

        self.life.say(self.body, self.words.yes, "yes to forgetting", then=then)

    def move(self) -> None:
        """Export everything, have it forgotten and take it in again."""
        if self.tasks:  # reminders would go along
            return self.export()
        names, log, has_feed = list(self.plants), Counter(self.log), self.has_feed

        def back() -> None:
            self._bring(self.exported, names, log, has_feed)

        def then(sent: Sent) -> None:
            if sent.method == "sendDocument":
                self.exported = bytes(sent.values["document"])
                self.script.extendleft([back, self._yes_forget, self.forget_only])

        self.life.say(self.body, self.words.export, "export", wants=Wants.FILE, then=then)
        return None

    def forget_only(self) -> None:
        self.life.say(self.body, self.words.forget, "forget me")

    # --- in a group ---

    def in_group(self) -> None:
        """Talk in the group, to the bot or past it."""
        from tests.soak.groups import act_in_group

        act_in_group(self)


def _buttons(sent: Sent) -> list[str]:
    """The data of the buttons below a message."""
    rows = sent.values.get("reply_markup", {}).get("inline_keyboard", [])
    return [b["callback_data"] for row in rows for b in row if "callback_data" in b]


def collection(names: list[str]) -> bytes:
    """An export with so many plants, all added on one day."""
    on, said = "2026-10-01", "2026-10-01T08:00:00Z"
    plants, events = [], []
    for number, name in enumerate(names, 1):
        plant = {"genus": "Vanda", "count": 1, "added_on": on, "name": name}
        plants.append({**plant, "present": True, "id": number})
        payload = {"details": plant, "before": {"present": False}, "after": {"present": True}}
        events.append({
            "batch": number, "kind": "added", "on": on, "said_at": said, "plant_id": number,
            "payload": payload, "id": number,
        })  # fmt: skip
    whole = {
        "format": "sinkside-records", "version": 2, "settings": {}, "places": [], "waters": [],
        "products": [], "plants": plants, "reminders": [], "events": events,
    }  # fmt: skip
    return json.dumps(whole).encode()


def drawn(count: int, groups: int, seed: int, life: Life) -> tuple[list[Person], list[Group]]:
    """So many people in so many groups."""
    pick = random.Random(seed)
    clubs = [
        Group(-1_000_001 - n, topics=(None, 51, 52) if n % 3 == 0 else (None,))
        for n in range(groups)
    ]
    people = []
    for number in range(count):
        body = Body(100_001 + number, pick.choice(LANGUAGES))
        club = pick.choice(clubs) if clubs and pick.random() < 0.6 else None
        if club is not None and len(club.admins) < 2:
            club.admins.append(body.id)
            life.messenger.members[club.id, body.id] = "administrator"
        people.append(Person(body, life, club, seed * 1_000_003 + number))
        life.watchers[body.id] = body
    for club in clubs:
        life.watchers[club.id] = club
    return people, clubs
