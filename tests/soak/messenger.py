"""The stand-in for the messenger, on the bot's clock: with blocked chats, faults and a judge."""

from __future__ import annotations

import asyncio
import random
import time
from collections import Counter, deque
from collections.abc import Callable
from dataclasses import dataclass, field
from typing import Any

from aiohttp import web

from tests.channels.loopback import A_MINUTE, A_SECOND, Loopback, Request, error, flood
from tests.soak.clock import BotClock
from tests.soak.ledger import Sent

#: What counts against the limits of a chat.
TO_CHATS = ("sendMessage", "sendPhoto", "sendDocument", "editMessageText")
_REMEMBERED = 400
#: It looks at its own loop so often, and calls it late from here on [s] (ours).
_BEAT_S, _LATE_S = 0.02, 0.05


@dataclass
class Weather:
    """What the messenger suffers from just now; shares are of all requests that send."""

    flood: float = 0.0
    broken: float = 0.0
    dropped: float = 0.0
    slow: float = 0.0
    away: bool = False
    repeats: float = 0.0


@dataclass
class Messenger(Loopback):
    """The server. `told` gets every request that it accepts.

    Attributes
    ----------
    blocked : chats that take nothing
    hurts : how often each fault struck
    too_fast : requests over the published limits
    unsure : those that came while its own loop was late, so that it cannot tell
    """

    clock: BotClock = field(default_factory=lambda: BotClock(time.time(), time.monotonic(), 1.0))
    told: Callable[[Sent], None] = lambda _: None
    weather: Weather = field(default_factory=Weather)
    blocked: set[int] = field(default_factory=set)
    hurts: Counter[str] = field(default_factory=Counter)
    too_fast: Counter[str] = field(default_factory=Counter)
    random: random.Random = field(default_factory=lambda: random.Random(5))
    _given: deque[dict[str, Any]] = field(default_factory=lambda: deque(maxlen=_REMEMBERED))
    unsure: int = 0
    _late: deque[tuple[float, float]] = field(default_factory=lambda: deque(maxlen=100))
    _all: deque[float] = field(default_factory=deque)
    _chats: dict[int, deque[float]] = field(default_factory=dict)

    def __post_init__(self) -> None:
        self.fail = self._struck

    async def watch_itself(self) -> None:
        """Note how late its own loop is: what comes in then was perhaps not sent so."""
        while True:
            meant = time.monotonic() + _BEAT_S
            await asyncio.sleep(_BEAT_S)
            late = time.monotonic() - meant
            if late > _LATE_S:
                self._late.append((meant, late))

    def now(self) -> int:
        """What it dates messages with [s since 1970]."""
        return int(self.clock.now_s())

    # --- faults ---

    def _struck(self, method: str, values: dict[str, Any]) -> web.Response | str | None:
        weather = self.weather
        if weather.away:
            self.hurts["away"] += 1
            return "drop"
        if method not in TO_CHATS:
            return None
        if int(values.get("chat_id", 0)) in self.blocked:
            self.hurts["403"] += 1
            return error(403, "Forbidden: bot was blocked by the user")
        if self._strikes("429", weather.flood):
            # It speaks of seconds, and the bot counts them on its own clock.
            return flood(int(self.random.randint(1, 5) * max(1.0, self.clock.speed)))
        if self._strikes("5xx", weather.broken):
            return error(self.random.choice((500, 502, 503)), "Internal Server Error")
        if self._strikes("dropped", weather.dropped):
            return "drop"
        return None

    def _strikes(self, name: str, share: float) -> bool:
        struck = share > 0 and self.random.random() < share
        self.hurts[name] += struck
        return struck

    # --- the server ---

    async def _served(self, method: str, values: dict[str, Any]) -> web.StreamResponse:
        # Slow to answer is not slow to count: what it holds up itself was not sent too fast.
        if method in TO_CHATS:
            self._judge(int(values["chat_id"]), time.monotonic())
            if self._strikes("slow", self.weather.slow):
                await asyncio.sleep(self.random.uniform(0.5, 3.0))
        before = len(self.accepted)
        made = await super()._served(method, values)
        for done in self.accepted[before:]:
            self.told(Sent(done.method, done.values, done.made, done.at))
        del self.accepted[before:]
        return made

    def message(self, done: Request) -> dict[str, Any]:
        """The message that a request made, dated by the bot's clock."""
        return {**super().message(done), "date": self.now()}

    async def _updates(self, values: dict[str, Any]) -> list[dict[str, Any]]:
        """What waits, and now and then something that was given out long ago."""
        updates = await super()._updates(values)
        known = {u["update_id"] for u in updates}
        if self._given and updates and self._strikes("given twice", self.weather.repeats):
            old = self.random.sample(list(self._given), min(20, len(self._given)))
            updates = [*(u for u in old if u["update_id"] not in known), *updates]
        self._given.extend(u for u in updates if u["update_id"] in known)
        return updates

    # --- the published limits ---

    def _judge(self, chat: int, now: float) -> None:
        """Count what comes faster than the messenger takes it, by the wall's clock."""
        self._all.append(now)
        while self._all[0] <= now - 1.0:
            self._all.popleft()
        if len(self._all) > A_SECOND:
            held_up = any(meant + late > now - 1.0 for meant, late in self._late)
            self.unsure += held_up
            self.too_fast["overall"] += not held_up
        times = self._chats.setdefault(chat, deque(maxlen=A_MINUTE + 1))
        # On a busy machine two meet on their way; three in a second were sent too fast.
        self.too_fast["chat"] += len(times) > 1 and now - times[-2] < 1.0
        times.append(now)
        if chat < 0 and len(times) > A_MINUTE:
            self.too_fast["group"] += now - times[0] < 60.0
