"""What is counted while the program runs, as Prometheus reads it.

Counting is an addition in memory [well under a microsecond to a few]; what has to be asked of
the database is asked when somebody looks, at most once a second.
"""

from __future__ import annotations

import asyncio
import logging
import math
import time
from collections.abc import Awaitable, Callable

from prometheus_client import (
    CollectorRegistry,
    Counter,
    Gauge,
    Histogram,
    ProcessCollector,
    generate_latest,
)
from sqlalchemy.ext.asyncio import AsyncSession

from bot.records import Records
from bot.records.backlog import backlog

log = logging.getLogger("sinkside.operating")

#: What is shown is at most so old [s].
FRESH_S = 1.0
#: The database has so long to say how it stands [s].
PATIENCE_S = 5.0
#: From arrival to the promise of an answer [s].
_LATENCIES = (0.005, 0.01, 0.025, 0.05, 0.1, 0.25, 0.5, 1.0, 2.5, 5.0, 10.0, 30.0, 60.0)

#: When the first of all reminders comes, or should have come [ms since 1970]; None: none comes.
OldestPing = Callable[[AsyncSession], Awaitable[int | None]]


class Metrics:
    """The counters of one process, and how the database stands.

    Attributes
    ----------
    oldest_ping : asked for the lag of reminders; None where there are none yet
    """

    def __init__(self, oldest_ping: OldestPing | None = None) -> None:
        self.oldest_ping = oldest_ping
        self.registry = CollectorRegistry()
        ProcessCollector(registry=self.registry)
        self._count()
        self._stand()
        self._looked = -math.inf
        self._looking = asyncio.Lock()

    def _count(self) -> None:
        def counter(name: str, says: str, *labels: str) -> Counter:
            return Counter(f"sinkside_{name}", says, labels, registry=self.registry)

        self.taken_in = counter("updates_taken_in", "Updates that were delivered, again or not.")
        self.claims = counter(
            "claims", "Updates, letters and owners with something due it took.", "of"
        )
        self.claims_lost = counter("claims_lost", "Updates that another process took over.")
        self.done = counter("updates_done", "Updates that were worked on to the end.")
        self.answers = counter("answers", "Updates that were answered, by the answer.", "kind")
        self.latency = Histogram(
            "sinkside_answer_seconds",
            "From the arrival of an update to the promise of its answer.",
            buckets=_LATENCIES,
            registry=self.registry,
        )
        self.failures = counter("update_failures", "Tries of an update that failed.")
        self.given_up = counter("updates_given_up", "Updates that failed for the last time.")
        self.sends = counter("sends", "Requests that the messenger accepted.", "method")
        self.send_failures = counter("send_failures", "Requests that it did not, by why.", "kind")
        for kind in ("flood", "network", "given_up", "unreachable", "moved"):
            self.send_failures.labels(kind)  # there from the start, at 0
        for of in ("update", "letter", "due"):
            self.claims.labels(of)

    def _stand(self) -> None:
        def gauge(name: str, says: str) -> Gauge:
            return Gauge(f"sinkside_{name}", says, registry=self.registry)

        self._up = gauge("database_up", "1 where the database answers.")
        self._gauges = {
            "updates_waiting": gauge("updates_waiting", "Updates that are not done."),
            "oldest_update": gauge("oldest_update_seconds", "Age of the oldest of them."),
            "letters_waiting": gauge("letters_waiting", "Requests that are not sent."),
            "oldest_letter": gauge("oldest_letter_seconds", "Age of the oldest of them."),
            "letters_dead": gauge("letters_dead", "Requests that can never be sent."),
            "unreachable": gauge("chats_unreachable", "Chats that cannot be written to."),
        }
        self._oldest_ping = gauge("oldest_ping_seconds", "How late the oldest due ping is.")

    async def page(self, records: Records) -> bytes:
        """Everything, in the text format that is read."""
        async with self._looking:  # many that look at once ask the database once
            if time.monotonic() - self._looked >= FRESH_S:
                await self._look(records)
                self._looked = time.monotonic()
        return generate_latest(self.registry)

    async def _look(self, records: Records) -> None:
        try:
            values, late = await asyncio.wait_for(self._asked(records), PATIENCE_S)
        except Exception as error:  # the page tells the rest, and that the database is away
            log.warning("the database did not say how it stands: %s", type(error).__name__)
            self._up.set(0)
            values, late = dict.fromkeys(self._gauges, math.nan), math.nan
        else:
            self._up.set(1)
        for name, value in values.items():
            self._gauges[name].set(value)
        self._oldest_ping.set(late)

    async def _asked(self, records: Records) -> tuple[dict[str, float], float]:
        now = time.time()
        async with records.reading() as session:
            stands = await backlog(session)
            due_ms = None if self.oldest_ping is None else await self.oldest_ping(session)

        def age(since_ms: int | None) -> float:
            return 0.0 if since_ms is None else max(0.0, now - since_ms / 1000)

        values = {
            "updates_waiting": float(stands.updates),
            "oldest_update": age(stands.update_ms),
            "letters_waiting": float(stands.letters),
            "oldest_letter": age(stands.letter_ms),
            "letters_dead": float(stands.dead_letters),
            "unreachable": float(stands.unreachable),
        }
        return values, age(due_ms)
