"""The bot's clock: begins where it is set and runs so many times as fast as the wall's.

Every process on the machine reckons it from the same monotonic clock, so they agree.
"""

from __future__ import annotations

import ctypes
import gc
import time
from dataclasses import dataclass
from datetime import UTC, date, datetime, tzinfo
from typing import Any


@dataclass(frozen=True, slots=True)
class BotClock:
    """What the bot takes for the time.

    Attributes
    ----------
    base_s : what it showed at the beginning [s since 1970]
    begun_s : the beginning [s of the machine's monotonic clock]
    speed : seconds of the bot in one of the wall; 0: it stands
    """

    base_s: float
    begun_s: float
    speed: float

    def now_s(self) -> float:
        """The time [s since 1970]."""
        return self.at(time.monotonic())

    def at(self, monotonic_s: float) -> float:
        """What it shows at a moment of the machine's clock [s since 1970]."""
        return self.base_s + (monotonic_s - self.begun_s) * self.speed

    def now(self) -> datetime:
        """The time, with a zone."""
        return datetime.fromtimestamp(self.now_s(), UTC)

    def standing(self) -> BotClock:
        """A clock that shows what this one shows now, and goes on showing it."""
        return BotClock(self.now_s(), 0.0, 0.0)

    def as_text(self) -> str:
        """For the environment of a process."""
        return f"{self.base_s!r} {self.begun_s!r} {self.speed!r}"

    @classmethod
    def from_text(cls, text: str) -> BotClock:
        """The clock that `as_text` told of."""
        base, begun, speed = (float(part) for part in text.split())
        return cls(base, begun, speed)


def moved(clock: BotClock) -> None:
    """Make this whole process read the time from a clock; before anything of ours is imported.

    `time.time` and `time.time_ns` are replaced, and `now` and `utcnow` of `datetime` itself: every
    other way to ask for the day goes through these. The monotonic clock stays, and timeouts with
    it. libfaketime would do the same from outside, but it shortens the waits of an event loop by
    the same factor, which then spins.
    """
    monotonic = time.monotonic

    def now_s() -> float:
        return clock.at(monotonic())

    def now(cls: type[datetime], tz: tzinfo | None = None) -> datetime:
        return cls.fromtimestamp(now_s(), tz)

    def utcnow(cls: type[datetime]) -> datetime:
        return cls.fromtimestamp(now_s(), UTC).replace(tzinfo=None)

    time.time = now_s
    time.time_ns = lambda: int(now_s() * 1_000_000) * 1_000
    _replace(datetime, "now", classmethod(now))
    _replace(datetime, "utcnow", classmethod(utcnow))
    told = (datetime.now(UTC).timestamp(), datetime.now().timestamp(), time.time())
    if max(told) - min(told) > max(1.0, clock.speed) or date.today() != datetime.now().date():
        raise RuntimeError("this interpreter's clock cannot be moved")


def _replace(kind: type, name: str, value: Any) -> None:
    """Set an attribute of a type that is written in C (CPython only)."""
    (attributes,) = (d for d in gc.get_referents(kind.__dict__) if isinstance(d, dict))
    attributes[name] = value
    ctypes.pythonapi.PyType_Modified(ctypes.py_object(kind))
