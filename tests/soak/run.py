"""A soak from its beginning to its report."""

from __future__ import annotations

import asyncio
import heapq
import random
import time
from collections.abc import AsyncIterator
from contextlib import asynccontextmanager
from dataclasses import dataclass
from datetime import UTC, datetime
from pathlib import Path

from bot.conversation.wording import languages, wording
from bot.records import open_records
from tests.soak.bots import Bots
from tests.soak.checking import held, still_open
from tests.soak.clock import BotClock
from tests.soak.ledger import Ledger
from tests.soak.life import Life
from tests.soak.messenger import Messenger, Weather
from tests.soak.people import Person, drawn
from tests.soak.report import Report, made_of
from tests.soak.weather import Event, plan

#: The bot's clock begins here: in these days Europe sets its clocks back (25 October 2026).
BEGIN = datetime(2026, 10, 23, 8, 0, tzinfo=UTC)
_WEIGH_S = 2.0
_TOLD_S = 60.0


@dataclass(frozen=True, slots=True)
class Asked:
    """What is to be soaked.

    Attributes
    ----------
    seconds : of the wall's clock, without what is waited for at the end
    least : it goes on until so much was done, however slow the machine
    speed : of the bot's clock
    rate : updates a second at most
    database : its URL
    folder : for logs
    events : what happens; None to draw it
    drain_s : how long is waited for what is open at the end
    claim_s : how long a claim holds; a minute, as in life
    pause_s : between an answer and what somebody does next, from and to
    most_open : nobody writes while so many wait for an answer: the machine sets the pace then
    talks : whether it tells how it goes
    """

    seconds: float
    people: int
    groups: int
    speed: float
    rate: float
    seed: int
    database: str
    folder: Path
    events: list[Event] | None = None
    least: int = 0
    drain_s: float = 240.0
    claim_s: float = 60.0
    pause_s: tuple[float, float] = (3.5, 11.0)
    most_open: int = 40
    talks: bool = False


@dataclass
class Soak:
    """One run."""

    asked: Asked
    clock: BotClock
    messenger: Messenger
    life: Life
    bots: Bots
    people: list[Person]
    begun_s: float

    # --- people ---

    async def _live(self) -> None:
        """Let people act, one update after another, at a steady rate."""
        asked, begun = self.asked, self.begun_s
        pick = random.Random(asked.seed + 1)
        waiting = iter(self.people)
        present: list[Person] = []
        due: list[tuple[float, int, Person]] = []
        next_s = begun
        while (now := time.monotonic()) < begun + asked.seconds or (
            self.life.counts.total() < asked.least
        ):
            open_now = len(self.life.open)
            if self.messenger.weather.away or open_now >= asked.most_open:
                # Where the messenger is away nobody's messages arrive either.
                await asyncio.sleep(0.05)
                continue
            passed = (now - begun) / asked.seconds
            person = self._due(due, now)
            if person is None and len(present) < min(1.0, passed / 0.85) * len(self.people):
                person = next(waiting, None)
                if person is not None:
                    person.begin()
                    present.append(person)
            if person is None:
                person = self._idle(present, now, pick)
            if person is not None:
                person.act()
                if person.script or person.blocked:
                    heapq.heappush(due, (person.body.ready_s, person.body.id, person))
            next_s = max(next_s + 1 / asked.rate, now - 1.0)
            await asyncio.sleep(max(0.0, next_s - time.monotonic()))
        self._present = present

    def _due(self, due: list[tuple[float, int, Person]], now: float) -> Person | None:
        """Somebody who is in the middle of something."""
        for _ in range(min(20, len(due))):
            if due[0][0] > now:
                return None
            _, number, person = heapq.heappop(due)
            if not person.body.open and person.body.ready_s <= now:
                return person
            heapq.heappush(due, (max(now + 0.5, person.body.ready_s), number, person))
        return None

    def _idle(self, present: list[Person], now: float, pick: random.Random) -> Person | None:
        """Anybody whom the bot owes nothing."""
        for _ in range(20 if present else 0):
            person = pick.choice(present)
            free = not person.body.open and person.body.ready_s <= now
            if free and not person.script and not person.blocked:
                return person
        return None

    # --- what happens ---

    async def _happens(self, events: list[Event]) -> None:
        running = []
        for event in events:
            await asyncio.sleep(max(0.0, self.begun_s + event.at_s - time.monotonic()))
            running.append(asyncio.create_task(self._one(event)))
        await asyncio.gather(*running)

    async def _one(self, event: Event) -> None:
        if event.what in ("kill", "end"):
            if event.name not in self.bots.running:
                return
            await (self.bots.kill if event.what == "kill" else self.bots.end)(event.name)
            self.life.ledger.kills = self.bots.kills
            if event.what == "kill":
                self.life.hold_back(self.bots.kills[-1])
            await asyncio.sleep(event.lasts_s)
            self.bots.start(event.name)
            return
        value = True if event.what == "away" else event.share
        setattr(self.messenger.weather, event.what, value)
        await asyncio.sleep(event.lasts_s)
        setattr(self.messenger.weather, event.what, False if event.what == "away" else 0.0)

    async def _weigh(self) -> None:
        told, shown = 0.0, 0
        while True:
            self.bots.weigh()
            wrong = [*self.life.ledger.misfits, *self.life.ledger.strays]
            if self.asked.talks and len(wrong) != shown:
                shown = len(wrong)
                (self.asked.folder / "wrong.txt").write_text("\n".join(wrong), "utf-8")
            if self.asked.talks and time.monotonic() - told >= _TOLD_S:
                told = time.monotonic()
                print(self._line(), flush=True)
            await asyncio.sleep(_WEIGH_S)

    def _line(self) -> str:
        ledger, life = self.life.ledger, self.life
        memory = " ".join(
            f"{n} {one.weighed[-1][1]:.0f} MB" for n, one in self.bots.running.items()
            if one.weighed
        )  # fmt: skip
        return (
            f"{time.monotonic() - self.begun_s:6.0f} s  {self.clock.now():%a %d %b %H:%M}  "
            f"updates {len(ledger.updates)} open {len(life.open)}  pings {len(life.pings)}  "
            f"repeats {len(ledger.repeats)} strays {len(ledger.strays)} "
            f"misfits {len(ledger.misfits)}  kills {len(self.bots.kills)}  {memory}"
        )

    # --- the end ---

    async def _drained(self) -> float:
        """Wait until nothing is open any more; returns how long it took [s]."""
        self.messenger.weather = Weather()
        begun = time.monotonic()
        while time.monotonic() < begun + self.asked.drain_s:
            await asyncio.sleep(1.0)
            if any(u.open for u in self.life.ledger.updates.values()):
                continue
            if await still_open(self.asked.database) == (0, 0):
                break
        return time.monotonic() - begun

    async def whole(self) -> Report:
        """Live, settle, end, and judge."""
        asked = self.asked
        events = asked.events if asked.events is not None else plan(asked.seconds, asked.seed)
        weighing = asyncio.create_task(self._weigh())
        happening = asyncio.create_task(self._happens(events))
        watching = asyncio.create_task(self.messenger.watch_itself())
        try:
            await self._live()
            await happening
            drained_s = await self._drained()
            self.bots.weigh()
            end_s = self.clock.now_s()
            long_lives = self.bots.long_lives(asked.seconds)
        finally:
            weighing.cancel()
            happening.cancel()
            watching.cancel()
            for name in list(self.bots.running):
                await self.bots.end(name)
        code, said = await asyncio.to_thread(self.bots.doctor)
        seen = {p.made for p in self.life.pings if p.made is not None}
        found = await held(asked.database, self._present, seen)
        return made_of(self, found, (code, said), end_s, drained_s, long_lives, events)


@asynccontextmanager
async def prepared(asked: Asked) -> AsyncIterator[Soak]:
    """The messenger is there, the tables are made, the processes run."""
    await (await open_records(asked.database)).close()
    clock = BotClock(BEGIN.timestamp(), time.monotonic(), asked.speed)
    messenger = Messenger(clock=clock)
    await messenger.start()
    names = ("ping-done", "ping-later", "ping-skip")
    labels = frozenset(tuple(wording(c).say(n) for n in names) for c in languages())
    notes = tuple(wording(c).say("ping-repeat") for c in languages())
    ledger = Ledger()
    life = Life(messenger, ledger, labels, notes, pause_s=asked.pause_s)
    messenger.told = life.told
    bots = Bots(messenger.url, asked.database, asked.folder, clock, asked.claim_s)
    people, _ = drawn(asked.people, asked.groups, asked.seed, life)
    for name in ("serve", "remind"):
        bots.start(name)
    try:
        yield Soak(asked, clock, messenger, life, bots, people, time.monotonic())
    finally:
        for one in bots.running.values():
            one.process.kill()
            one.process.wait()
        await messenger.stop()


async def soaked(asked: Asked) -> Report:
    """Run a soak and return what came of it."""
    async with prepared(asked) as soak:
        return await soak.whole()
